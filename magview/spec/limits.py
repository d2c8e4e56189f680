"""Limits card: one aircraft's limits as its manual gives them, for planning teeth and writing a job sheet.

It becomes a magneto known by its manual on an engine; what a card does not say is noted there as assumed.
"""

from __future__ import annotations

import re
from pathlib import Path
from typing import Annotated, Literal, Self

from pydantic import Field, model_validator

from magview.spec.base import Length, Model, Name
from magview.spec.engine import Btdc, Coupling, Engine, FiringBtdc, Installation, Tolerance
from magview.spec.fields import Quantity, said
from magview.spec.files import name_of, read_json, validate
from magview.spec.language import marked, tr
from magview.spec.magneto import WAYS_ROUND, Magneto, Rotation
from magview.spec.sources import Source

_RIM_MM, _STROKE_MM, _ROD_MM, _PLATE_DEG = 40.0, 100.0, 200.0, (-10.0, 10.0)
"""Parts that a file must have and no card gives: noted as assumed, reckoned with nowhere."""


# fmt: off
class LimitsCard(Model):
    """Limits of one aircraft's magnetos, as its manual gives them (``magview-limits/1``)."""

    format: Literal["magview-limits/1"]
    registration: Annotated[Name, said(
        marked("Registration"),
        marked("The aircraft's registration: the card is found by it."),
        marked("One line of up to 120 characters."))]
    manual: Annotated[Name, said(
        marked("Manual, page, revision"),
        marked("Where the limits stand, so that somebody else can look them up."),
        marked("One line of up to 120 characters, such as Ignition manual, page 12, revision C."))]
    rotation: Annotated[Rotation, WAYS_ROUND, said(
        marked("Rotation, from the drive end"),
        marked("Which way the rotor turns in service, seen from the drive end."),
        marked("Clockwise or anticlockwise."))]
    cylinders: Annotated[int, Field(ge=1, le=36), said(
        marked("Cylinders"), marked("How many cylinders the engine has."), marked("A whole number."))]
    rotor_turns_per_crank_turn: Annotated[float, Field(ge=0.05, le=20.0), said(
        marked("Rotor turns per crank turn"),
        marked("How fast the drive turns the rotor; cylinders over twice the poles, for a spark a pole."),
        marked("Above 0, such as 1.5 for six cylinders and two poles."))]
    e_gap_deg: Annotated[float, Field(gt=0.0, lt=90.0), Quantity("°", "rotor"), said(
        marked("E-gap"),
        marked("Rotor degrees past neutral at which the contacts should open."),
        marked("Above 0 and short of full register, half of the way to the next neutral."))]
    mark_tolerance_mm: Annotated[Length, said(
        marked("Tolerance at the marks"),
        marked("How far beside the mark the straightedge may point when the contacts open."),
        marked("Above 0."))]
    gap_limits_mm: Annotated[tuple[Length, ...], Field(min_length=2, max_length=2), said(
        marked("Gap, smallest and largest"),
        marked("Between which the largest gap must lie: two numbers with a space between them."),
        marked("The smaller one first, such as 0.25 0.35."))]
    magneto_teeth: Annotated[int, Field(ge=1, le=400), said(
        marked("Teeth on the magneto's side"),
        marked("Teeth of the disc's face that the magneto's flange sits in."),
        marked("A whole number."))]
    drive_teeth: Annotated[int, Field(ge=1, le=400), said(
        marked("Teeth on the drive's side"),
        marked("Teeth of the disc's face that the drive's flange sits in."),
        marked("A whole number."))]
    left_btdc_deg: Annotated[Btdc, said(
        marked("Left should fire"),
        marked("Where the left magneto, or a single one, should fire."),
        marked("Larger is earlier."))]
    right_btdc_deg: Annotated[Btdc | None, said(
        marked("Right should fire"),
        marked("Where the right magneto should fire. Left empty: as the left one."),
        marked("Larger is earlier."))] = None
    timing_tolerance_deg: Annotated[Tolerance, said(
        marked("Timing tolerance"),
        marked("How far off its timing either magneto may fire, either way."),
        marked("Above 0: no reading is ever exact."))]
    synchronising_tolerance_deg: Annotated[Tolerance, said(
        marked("Synchronising tolerance"),
        marked("How far apart the two magnetos may fire, beyond a wanted stagger."),
        marked("Above 0: no reading is ever exact."))]
    # fmt: on

    @property
    def right_deg(self) -> float:
        """Timing of the right magneto [crank deg before top dead centre]."""
        return self.left_btdc_deg if self.right_btdc_deg is None else self.right_btdc_deg

    @property
    def poles(self) -> int:
        """Poles of the rotor, for a spark at each: cylinders over twice the turns per crank turn."""
        return round(self.cylinders / (2.0 * self.rotor_turns_per_crank_turn))

    @model_validator(mode="after")
    def _fits(self) -> Self:
        low, high = self.gap_limits_mm
        if not low < high:
            words = marked("gap_limits_mm is {low:g} to {high:g}; the smaller one comes first, such as 0.25 0.35")
            raise ValueError(tr(words, low=low, high=high))
        exact = self.cylinders / (2.0 * self.rotor_turns_per_crank_turn)
        if self.poles not in range(2, 13, 2) or abs(exact - self.poles) > 1e-3 * self.poles:
            words = marked(
                "rotor_turns_per_crank_turn is {ratio:g}; with {cylinders} cylinders and a spark at each pole it is "
                "cylinders over twice the poles, such as {such:g} for four poles"
            )
            raise ValueError(
                tr(words, ratio=self.rotor_turns_per_crank_turn, cylinders=self.cylinders, such=self.cylinders / 8)
            )
        if not self.e_gap_deg < 180.0 / self.poles:
            words = marked(
                "e_gap_deg is {e_gap:g}; with {poles} poles it must be below {most:g}, where full register lies, "
                "such as 10"
            )
            raise ValueError(tr(words, e_gap=self.e_gap_deg, poles=self.poles, most=180.0 / self.poles))
        return self


def read_limits(path: Path) -> LimitsCard:
    """Read a ``magview-limits/1`` file; raise SpecError with one sentence for anything amiss."""
    return validate(LimitsCard, read_json(path), name_of(path))


def installation_of(card: LimitsCard, position: Literal["left", "right", "single"] = "left") -> Installation:
    """The magneto of a card, known by its manual, on its engine; what the card does not say is noted as assumed."""
    note = card.manual
    magneto = validate(
        Magneto,
        {
            "format": "magview-magneto/1",
            "name": card.registration,
            "known": "manual",
            "rotation": card.rotation,
            "poles": card.poles,
            "e_gap_deg": card.e_gap_deg,
            "gap_limits_mm": card.gap_limits_mm,
            "marks": {"radius_mm": _RIM_MM, "tolerance_mm": card.mark_tolerance_mm},
            "cam": {
                "turns_per_rotor_turn": 1.0,
                "lobe_peaks_deg": tuple(360.0 * i / card.poles for i in range(card.poles)),
            },
            "backplate": {"range_deg": _PLATE_DEG},
            "sources": (
                *_from("manual", note, "rotation", "e_gap_deg", "gap_limits_mm", "marks.tolerance_mm"),
                *_from("worked-out", "", "poles"),
                *_from("assumed", "", "marks.radius_mm", "cam.lobe_peaks_deg", "cam.turns_per_rotor_turn",
                       "backplate.range_deg"),
            ),
        },
        note,
    )  # fmt: skip
    engine = Engine(
        format="magview-engine/1",
        name=card.registration,
        cylinders=card.cylinders,
        arrangement="inline",
        firing_order=tuple(range(1, card.cylinders + 1)),
        firing_btdc_deg=FiringBtdc(left=card.left_btdc_deg, right=card.right_deg),
        timing_tolerance_deg=card.timing_tolerance_deg,
        synchronising_tolerance_deg=card.synchronising_tolerance_deg,
        stroke_mm=_STROKE_MM,
        rod_mm=_ROD_MM,
        rotation="clockwise",
        sources=(
            *_from("manual", note, "cylinders", "firing_btdc_deg", "timing_tolerance_deg",
                   "synchronising_tolerance_deg"),
            *_from("assumed", "", "arrangement", "firing_order", "stroke_mm", "rod_mm", "rotation"),
        ),
    )  # fmt: skip
    return Installation(
        format="magview-installation/1",
        magneto=magneto,
        engine=engine,
        coupling=Coupling(magneto_teeth=card.magneto_teeth, drive_teeth=card.drive_teeth),
        rotor_turns_per_crank_turn=card.rotor_turns_per_crank_turn,
        position=position,
        sources=_from("manual", note, "coupling", "rotor_turns_per_crank_turn"),
    )


def _from(origin: Literal["manual", "worked-out", "assumed"], note: str, *fields: str) -> tuple[Source, ...]:
    return tuple(Source(field=name, origin=origin, note=note) for name in fields)


def file_stem(card: LimitsCard) -> str:
    """A name for a card's file, from its registration."""
    return re.sub(r"[^\w-]+", "-", card.registration).strip("-")[:60] or "card"
