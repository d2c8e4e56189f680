"""The three kinds of file that a guided editor makes, and their entries page by page, as a person measures.

What an entry is called, means and may be stands in the file's model.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache
from typing import Literal

from magview.forms.entry import Entry, entries_of
from magview.spec.base import Model
from magview.spec.engine import Engine, Installation
from magview.spec.language import marked
from magview.spec.magneto import Magneto

Kind = Literal["magneto", "engine", "installation"]

KINDS: tuple[Kind, ...] = ("magneto", "engine", "installation")
MODELS: dict[Kind, type[Model]] = {"magneto": Magneto, "engine": Engine, "installation": Installation}


@dataclass(frozen=True)
class Page:
    """Entries that are measured in one go."""

    title: str
    lead: str
    """Tools and papers to have at hand, one or two sentences."""
    paths: tuple[str, ...]
    """Entries; the name of a part, or of a range, stands for all that it has, in the file's order."""


_MAGNETO: tuple[Page, ...] = (
    Page(
        marked("What it is"),
        marked("From the data plate and the maker's manual; no tools yet."),
        ("known", "name", "notes", "rotation", "poles"),
    ),
    Page(
        marked("E-gap and limits"),
        marked("From the maker's current manual, which governs; radius of the rim marks by calliper."),
        ("e_gap_deg", "gap_limits_mm", "marks"),
    ),
    Page(
        marked("Cam and lobes"),
        marked("Degree disc on the cam, dial gauge at the heel or at the contacts."),
        (
            "cam.lobe_peaks_deg",
            "cam.turns_per_rotor_turn",
            "cam.shaft",
            "cam.turns_against_rotor",
            "cam.profile.kind",
            "cam.profile.base_radius_mm",
            "cam.profile.lift_mm",
            "cam.profile.rise_deg",
            "cam.profile.dwell_deg",
            "cam.profile.fall_deg",
            "cam.profile.law",
            "cam.profile.angle_deg",
            "cam.profile.contact_lift_mm",
        ),
    ),
    Page(
        marked("Breaker arm"),
        marked("Calliper or rule on the arm, taken out. With a traced lift only the contact arm is needed."),
        (
            "breaker.contact_arm_mm",
            "breaker.heel_arm_mm",
            "breaker.pivot_distance_mm",
            "breaker.heel_radius_mm",
            "breaker.pivot",
            "breaker.pivot_bearing_deg",
        ),
    ),
    Page(
        marked("Contacts and screw"),
        marked("Dial gauge on the fixed contact while the screw is turned, lock screw slack."),
        (
            "contact_screw.kind",
            "contact_screw.throw_mm",
            "contact_screw.lead_mm",
            "contact_screw.range_deg[0]",
            "contact_screw.range_deg[1]",
            "contact_screw.positive_is_clockwise",
        ),
    ),
    Page(
        marked("Plate and setting"),
        marked("The scale on the plate, and the gap by blades when the contacts open exactly at the E-gap."),
        ("backplate", "designed_setting"),
    ),
    Page(
        marked("Pull of the magnet"),
        marked("Spring balance on an arm at the drive shaft. Not known? Leave all three empty."),
        ("detent",),
    ),
    Page(
        marked("Coil"),
        marked("Bridge and ohmmeter at the primary. Not known? Leave all empty; the last three may always be."),
        ("electrical",),
    ),
    Page(
        marked("Switch lead, capacitor, distributor"),
        marked("From the maker's manual. Do not find out by pulling the lead: not known counts as live."),
        ("grounding_tab", "lead_terminal", "capacitor_uf", "distributor"),
    ),
    Page(
        marked("Condition"),
        marked("Wear and damage. New or not known? Leave it empty."),
        ("condition",),
    ),
)

_ENGINE: tuple[Page, ...] = (
    Page(
        marked("Cylinders and firing order"),
        marked("From the engine's data plate and the maker's manual."),
        ("name", "cylinders", "arrangement", "rotation", "rotation_seen_from", "firing_order", "timing_cylinder"),
    ),
    Page(
        marked("Timing wanted"),
        marked("From the maker's current manual, which governs."),
        ("firing_btdc_deg", "timing_tolerance_deg", "synchronising_tolerance_deg"),
    ),
    Page(
        marked("Drops at the ground run"),
        marked("From the manual. Not given there? Leave all empty: a job sheet then warns only of no drop at all."),
        ("drop_rpm", "drop_difference_rpm"),
    ),
    Page(
        marked("Stroke and rod"),
        marked("From the manual; they tell how far the piston stands down at the timing."),
        ("stroke_mm", "rod_mm"),
    ),
    Page(
        marked("Link rods"),
        marked("For a radial engine with a master rod. None, or not known? Leave all empty."),
        ("articulation",),
    ),
)

_INSTALLATION: tuple[Page, ...] = (
    Page(
        marked("Magneto and engine"),
        marked("The two that belong together: those in this window, shipped ones, or files of yours."),
        ("magneto", "engine", "position"),
    ),
    Page(
        marked("Coupling and drive"),
        marked("Count the teeth on both faces of the coupling's disc; paint a mark before you begin."),
        (
            "adjusted_by",
            "coupling",
            "impulse_coupling",
            "rotor_turns_per_crank_turn",
            "drive_play_deg",
            "crank_turns_per_propeller_turn",
        ),
    ),
)

_PAGES: dict[Kind, tuple[Page, ...]] = {"magneto": _MAGNETO, "engine": _ENGINE, "installation": _INSTALLATION}


def _within(path: str, name: str) -> bool:
    return path == name or path.startswith((f"{name}.", f"{name}["))


def on_page(kind: Kind, page: Page) -> dict[str, Entry]:
    """The entries of a page by their path, in the order they are measured."""
    of_model = entries_of(MODELS[kind])
    return {path: entry for name in page.paths for path, entry in of_model.items() if _within(path, name)}


def pages_of(kind: Kind) -> tuple[Page, ...]:
    """The pages of a kind of file."""
    return _PAGES[kind]


@cache
def entries(kind: Kind) -> dict[str, Entry]:
    """All entries of a kind of file by their path, in the order of the pages."""
    return {path: entry for page in pages_of(kind) for path, entry in on_page(kind, page).items()}
