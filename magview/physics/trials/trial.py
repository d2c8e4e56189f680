"""Trials: the largest gap read at a place of the plate, with the opening at the E-gap (guide: theory-trials).

A trial (plate b, gap g) is a point on the curve b(g); `flank_fit` draws the curve through them and `advice` names the
next plate position. Here: what a trial is, in what its plate is read, and how closely it is read.
Lengths in millimetres; plate in cam degrees, positive with cam rotation.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum
from math import atan, degrees, floor, inf, isfinite, log10

from magview.spec.language import marked, tr
from magview.spec.magneto import Magneto

MAX_TRIALS = 200
"""More than anyone makes on one magneto; it bounds the work."""

# ---------------------------------------------------------------------- what is read on the plate


def _positive(value: float, words: str) -> None:
    if not (isfinite(value) and value > 0):
        raise ValueError(tr(words, value=value))


class ScaleKind(StrEnum):
    """In what the plate is read."""

    DEGREES = "degrees"
    SLOT = "slot"
    MARKS = "marks"


@dataclass(frozen=True)
class PlateScale:
    """In what the plate is read: degrees, millimetres along the slot's arc, or marks of a scale.

    Raises ValueError for a unit that is not above 0 degrees.
    """

    kind: ScaleKind = ScaleKind.DEGREES
    deg_per_unit: float = 1.0
    """Degrees of plate in a degree, a millimetre or a mark."""

    def __post_init__(self) -> None:
        _positive(self.deg_per_unit, marked("the angle between two marks is {value}; it must be above 0"))

    @classmethod
    def slot(cls, radius_mm: float) -> PlateScale:
        """Millimetres along a slot of this radius [mm]. Raises ValueError for a radius that is not above 0."""
        _positive(radius_mm, marked("the radius of the slot is {value}; it must be above 0"))
        return cls(ScaleKind.SLOT, degrees(1.0 / radius_mm))

    @classmethod
    def marks(cls, deg_per_mark: float) -> PlateScale:
        """Marks so far apart [deg]. Raises ValueError for an angle that is not above 0."""
        return cls(ScaleKind.MARKS, deg_per_mark)

    def to_deg(self, reading: float) -> float:
        """Plate [deg] from a reading in this unit; signs stay."""
        return reading * self.deg_per_unit

    def from_deg(self, backplate_deg: float) -> float:
        """Reading in this unit for a plate [deg]; signs stay."""
        return backplate_deg / self.deg_per_unit

    @property
    def slot_radius_mm(self) -> float:
        """The slot's radius [mm], where the unit is a millimetre along it."""
        return degrees(1.0 / self.deg_per_unit)

    def step_deg(self, errors: ReadingErrors) -> float:
        """The roundest step of this unit that is no coarser than the plate's reading error [deg]."""
        fine = max(errors.plate_deg / self.deg_per_unit, 0.01)
        tens = 10.0 ** floor(log10(fine))
        return float(tens * max(m for m in (1.0, 2.0, 5.0) if m * tens <= fine * (1 + 1e-9))) * self.deg_per_unit


DEGREES = PlateScale()


# ---------------------------------------------------------------------- trials, their errors, the file's doubts


@dataclass(frozen=True)
class Trial:
    """One trial: the plate, the largest gap found on lobe 1 as an interval, and the opening if it was read.

    Raises ValueError for a plate beyond ±3600°, a gap that is negative or beyond 1000 mm, the low end above the
    high one, and an interval that says nothing (0 to infinity).
    """

    backplate_deg: float
    """Angle of the plate [deg], positive with cam rotation."""
    gap_low_mm: float
    gap_high_mm: float
    """The gap lies between these [mm]; 0 and infinity where no blade was the limit; equal for a plain reading."""
    opening_error_deg: float = 0.0
    """Reading of the straightedge with the contacts just opening [rotor deg, positive late]; 0 = at the mark."""

    def __post_init__(self) -> None:
        if not abs(self.backplate_deg) <= 3600.0:
            raise ValueError(
                tr(
                    "the plate stands at {backplate}°; it must lie within ±3600°",
                    backplate=self.backplate_deg,
                )
            )
        if not abs(self.opening_error_deg) <= 45.0:
            raise ValueError(
                tr(
                    "the opening is {opening_error}° off; it must lie within ±45°",
                    opening_error=self.opening_error_deg,
                )
            )
        low, high = self.gap_low_mm, self.gap_high_mm
        if not (0.0 <= low <= high and low <= 1000.0 and (high <= 1000.0 or high == inf) and high > 0.0):
            raise ValueError(
                tr(
                    "the gap is given as {low} to {high} mm; it must be above 0, within 1000 mm, low end first",
                    low=low,
                    high=high,
                )
            )
        if low == 0.0 and high == inf:
            raise ValueError(
                tr("a gap of 0 mm or more says nothing; give the blade that passes or the one that does not")
            )

    @classmethod
    def reading(cls, backplate_deg: float, gap_mm: float, within_mm: float = 0.0) -> Trial:
        """A trial at a plate [deg] whose gap is a value [mm], known to ± `within_mm` [mm].

        Raises ValueError for a width below 0, or for what no trial can be.
        """
        if not (isfinite(within_mm) and within_mm >= 0.0):
            raise ValueError(tr("the gap is known to within {within} mm; it must be 0 or more", within=within_mm))
        return cls(backplate_deg, max(0.0, gap_mm - within_mm) if gap_mm > 0 else gap_mm, gap_mm + within_mm)

    @classmethod
    def blades(cls, backplate_deg: float, go_mm: float | None, no_go_mm: float | None) -> Trial:
        """A trial by blades [mm]: the thickest that passes and the thinnest that does not; None for none."""
        return cls(backplate_deg, 0.0 if go_mm is None else go_mm, inf if no_go_mm is None else no_go_mm)

    def plate_as_opened_deg(self, magneto: Magneto) -> float:
        """The plate at which the same gap would open exactly at the E-gap [deg]: late by e is a plate c·e too far."""
        return self.backplate_deg - magneto.cam.turns_per_rotor_turn * self.opening_error_deg

    @property
    def middle_mm(self) -> float:
        """One gap to stand for the interval [mm]: its middle, or its one end."""
        return (self.gap_low_mm + self.gap_high_mm) / 2 if isfinite(self.gap_high_mm) else self.gap_low_mm


@dataclass(frozen=True)
class ReadingErrors:
    """Half-widths of a person's readings in one trial, the truth evenly within (JCGM 101:2008, 6.4.2).

    Raises ValueError for what is not a number of 0 or more.
    """

    mark_mm: float = 0.2
    """Straightedge from the rim mark when the contacts open [mm]: held by hand, sighted by eye (common practice)."""
    plate_deg: float = 0.1
    """Reading of the plate [cam deg]."""
    blade_mm: float = 0.005
    """Feel of the blade, or error of the gauge [mm]: drag judged by one blade (common practice)."""

    def __post_init__(self) -> None:
        if not all(isfinite(v) and v >= 0 for v in (self.mark_mm, self.plate_deg, self.blade_mm)):
            raise ValueError(tr("the errors of a trial must be numbers, 0 or more"))

    def mark_deg(self, magneto: Magneto) -> float:
        """The mark's share along the plate [cam deg]: the edge lies along the cam's step."""
        return degrees(atan(self.mark_mm / magneto.marks.radius_mm))


@dataclass(frozen=True)
class HowRead:
    """Way of reading trials: the unit of the plate, and how closely everything is read."""

    scale: PlateScale = DEGREES
    errors: ReadingErrors = ReadingErrors()
