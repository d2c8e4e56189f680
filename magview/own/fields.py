"""What a guided editor asks for: every field of the file models as an entry, page by page as a person measures."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache
from typing import Literal

from magview.own.engine_fields import ENGINE_PAGES, INSTALLATION_PAGES
from magview.own.entry import Entry, Page
from magview.own.magneto_fields import MAGNETO_PAGES
from magview.spec.base import Model
from magview.spec.engine import Engine, Installation
from magview.spec.language import marked
from magview.spec.magneto import Magneto
from magview.spec.sources import Origin

Kind = Literal["magneto", "engine", "installation"]

KINDS: tuple[Kind, ...] = ("magneto", "engine", "installation")
MODELS: dict[Kind, type[Model]] = {"magneto": Magneto, "engine": Engine, "installation": Installation}
PAGES: dict[Kind, tuple[Page, ...]] = {
    "magneto": MAGNETO_PAGES,
    "engine": ENGINE_PAGES,
    "installation": INSTALLATION_PAGES,
}

ORIGINS: tuple[tuple[Origin, str], ...] = (
    ("manual", marked("maker's manual")),
    ("measured", marked("measured")),
    ("worked-out", marked("worked out")),
    ("assumed", marked("assumed")),
    ("shipped", marked("from a shipped file")),
)


@dataclass(frozen=True)
class Part:
    """A part of a file that may be left out as a whole; begun, it must be finished."""

    path: str
    needed: tuple[str, ...]
    """Entries it must have once one of them is there."""


PARTS: dict[Kind, tuple[Part, ...]] = {
    "magneto": (
        Part("detent", ("detent.torque_nm", "detent.inertia_kg_m2", "detent.damping_nms")),
        Part(
            "electrical",
            tuple(
                f"electrical.{n}"
                for n in ("coil_turns", "inductance_h", "resistance_ohm", "peak_flux_wb", "third_harmonic")
            ),
        ),
    ),
    "engine": (
        Part(
            "articulation",
            ("articulation.master_cylinder", "articulation.knuckle_radius_mm", "articulation.link_rod_mm"),
        ),
    ),
    "installation": (),
}


@cache
def entries(kind: Kind) -> dict[str, Entry]:
    """All entries of a kind of file by their path, in the order of the pages."""
    return {entry.path: entry for page in PAGES[kind] for entry in page.entries}


def pages_of(kind: Kind) -> tuple[Page, ...]:
    """The pages of a kind of file."""
    return PAGES[kind]
