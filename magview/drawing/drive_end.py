"""The drive end as a drawing: two toothed flanges with the disc between them, seen from the drive end.

The two faces of the disc are drawn one inside the other, so that both are seen at once: its drive face
outside, in the slots of the drive's flange; its magneto face inside, round the magneto's flange. Every part
has its true number of teeth. Slots and teeth are numbered from the painted mark, in the direction of rotation.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache

import numpy as np

from magview.bench.state import BenchState, Engaged, Mounting, crank_deg
from magview.bench.words import drive_end_sense
from magview.drawing.scene import LEAST_TARGET_PX
from magview.drawing.shapes import Array, Shape, circle, polar
from magview.spec.engine import Coupling

PARENTS: dict[str, str | None] = {"flange": None, "disc": None, "hub": None}
"""Groups in drawing order: the drive's flange, the disc, the magneto's flange."""

DRIVE_MM, DISC_OUT_MM, DISC_IN_MM, HUB_MM = 44.0, 33.5, 20.5, 6.5
"""Radii of the drawing: outside of the drive flange, middle of either ring of teeth, hole of the hub."""

EXTENT_MM = 50.0

NUMBER_RADII_MM = {"flange": 38.5, "disc-out": 29.0, "disc-in": 25.0, "hub": 16.0}
"""Places of the numbers of slots and teeth."""

_HALF_TOOTH_MM = 2.0


@dataclass(frozen=True)
class DrivePose:
    """Bearings of the three painted marks, and so of the three parts [deg clockwise from the top]."""

    flange: float
    disc: float
    hub: float

    def aside(self, degrees: float) -> DrivePose:
        """All of it turned by so much [deg clockwise]."""
        return DrivePose(self.flange + degrees, self.disc + degrees, self.hub + degrees)

    @property
    def turns_deg(self) -> dict[str, float]:
        """The bearings by the drawing's groups [deg clockwise from the top]."""
        return {"flange": self.flange, "disc": self.disc, "hub": self.hub}


def ring_at(radius_mm: float, pixels_per_mm: float, shown: str) -> str:
    """The ring of a toothed coupling that a hand at a radius takes: none is narrower than a finger's target.

    `shown`: the group drawn there; "" outside the coupling. Returns the group, or "" beyond the reach of all.
    """
    half = LEAST_TARGET_PX / 2 / pixels_per_mm
    middle = (DISC_IN_MM + DISC_OUT_MM) / 2
    if abs(radius_mm - middle) <= half:
        return "disc"
    if not shown and radius_mm > DRIVE_MM:
        return "flange" if radius_mm <= max(DRIVE_MM, middle + 3.0 * half) else ""
    return shown


def drive_pose(state: BenchState, engaged: Engaged, mounting: Mounting | None = None) -> DrivePose:
    """Return where the marks stand with the crank where it is, for the present teeth or for others."""
    at = mounting or engaged.mounting
    coupling, sense = engaged.installation.coupling, drive_end_sense(state.magneto)
    flange = engaged.ratio * crank_deg(state)
    if coupling is None:
        return DrivePose(sense * flange, sense * flange, sense * flange)
    magneto_teeth, disc_teeth = at.marks_apart
    disc = flange + 360.0 * disc_teeth / coupling.drive_teeth
    hub = disc + 360.0 * magneto_teeth / coupling.magneto_teeth
    return DrivePose(sense * flange, sense * disc, sense * hub)


@lru_cache(maxsize=16)
def drive_end(coupling: Coupling) -> tuple[Shape, ...]:
    """The pieces of a coupling with all marks at the top."""
    drive, magneto = coupling.drive_teeth, coupling.magneto_teeth
    flange = (circle((0, 0), DRIVE_MM, 180), toothed(drive, DISC_OUT_MM, 1))
    disc = (toothed(drive, DISC_OUT_MM, 0), toothed(magneto, DISC_IN_MM, 0, inward=True))
    hub = (toothed(magneto, DISC_IN_MM, -1, inward=True), circle((0, 0), HUB_MM, 72))
    return (
        Shape("drive flange", "flange", "drive-flange", flange),
        _mark("flange", DISC_OUT_MM + 3.0, DRIVE_MM),
        Shape("disc", "disc", "disc", disc),
        _mark("disc", DISC_IN_MM + 2.6, DISC_OUT_MM - 2.6),
        Shape("magneto flange", "hub", "magneto-flange", hub),
        _mark("hub", HUB_MM, DISC_IN_MM - 3.0),
    )


def _mark(group: str, inner: float, outer: float) -> Shape:
    return Shape("painted mark", group, "paint", (np.array([polar(inner, 0.0), polar(outer, 0.0)]),), filled=False)


def toothed(teeth: int, radius: float, outside: int, inward: bool = False) -> Array:
    """A closed toothed outline, a tooth of the disc in the middle of bearing 0.

    `outside`: 0 the disc itself, 1 what lies round it, −1 what lies within it, each set off by a hair.
    Flanks narrow towards the tip, so that a tooth drops into its slot. `inward`: the disc's teeth point to
    the middle.
    """
    hair = min(0.25, 0.1 * np.pi * radius / teeth)
    gap = outside * hair
    tip, root = (radius - _HALF_TOOTH_MM, radius + _HALF_TOOTH_MM)
    if not inward:
        tip, root = root, tip
    pitch = 360.0 / teeth
    clear = np.degrees(abs(gap) / radius)  # slots are wider than teeth on either side
    broad, narrow = min(0.29 * pitch, 20.0) + clear, min(0.2 * pitch, 14.0) + clear
    # One tooth: its four corners, then the root on its circle, or a coarse coupling would look like a polygon.
    rest = np.linspace(broad, pitch - broad, max(2, int(pitch / 3)) + 1)[1:-1]
    radii = np.array([root + gap, tip + gap, tip + gap, root + gap, *(root + gap,) * len(rest)])
    bearings = np.array([-broad, -narrow, narrow, broad, *rest])
    middles = pitch * np.arange(teeth)[:, None]
    return polar(np.tile(radii, teeth), (middles + bearings).ravel())
