"""Trials: "opening at the E-gap with the plate here, the largest gap is so much" (guide: theory-trials).

A trial (plate b, gap g) is a point on the curve b(g) of guide: theory-setting; `flank_fit` draws the curve through them and
`advice` names the next plate position. Here: what a trial is, how it is read, and how far it and the file may be off.
Lengths in millimetres; plate in cam degrees, positive with cam rotation.
"""

from __future__ import annotations

from math import atan, degrees, hypot, inf, isfinite, sqrt

import numpy as np
from numpy.typing import ArrayLike, NDArray

from magview.spec.frozen import frozen
from magview.spec.language import marked, number, tr
from magview.spec.magneto import Magneto

Array = NDArray[np.float64]

MAX_TRIALS = 200
"""More than anyone makes on one magneto; it bounds the work."""

# ---------------------------------------------------------------------- what is read on the plate


def plate_deg_from_slot_mm(along_mm: ArrayLike, radius_mm: float) -> Array:
    """Plate angle [deg] from a movement along the slot's arc [mm], any shape, at a radius [mm]; signs stay.

    Raises ValueError for a radius that is not above 0.
    """
    _positive(radius_mm, marked("the radius of the slot is {value}; it must be above 0"))
    return np.asarray(np.degrees(np.asarray(along_mm, dtype=float) / radius_mm))


def slot_mm_from_plate_deg(backplate_deg: ArrayLike, radius_mm: float) -> Array:
    """Movement along the slot's arc [mm] at a radius [mm] for a plate angle [deg], any shape; signs stay.

    Raises ValueError for a radius that is not above 0.
    """
    _positive(radius_mm, marked("the radius of the slot is {value}; it must be above 0"))
    return np.asarray(np.radians(np.asarray(backplate_deg, dtype=float)) * radius_mm)


def plate_deg_from_marks(marks: ArrayLike, deg_per_mark: float) -> Array:
    """Plate angle [deg] from a reading in scale marks [-], any shape, each so many degrees [deg] from the next.

    Raises ValueError for an angle between marks that is not above 0.
    """
    _positive(deg_per_mark, marked("the angle between two marks is {value}; it must be above 0"))
    return np.asarray(np.asarray(marks, dtype=float) * deg_per_mark)


def marks_from_plate_deg(backplate_deg: ArrayLike, deg_per_mark: float) -> Array:
    """Reading in scale marks [-], each so many degrees [deg] from the next, for a plate angle [deg], any shape.

    Raises ValueError for an angle between marks that is not above 0.
    """
    _positive(deg_per_mark, marked("the angle between two marks is {value}; it must be above 0"))
    return np.asarray(np.asarray(backplate_deg, dtype=float) / deg_per_mark)


def _positive(value: float, words: str) -> None:
    if not (isfinite(value) and value > 0):
        raise ValueError(tr(words, value=number(value)))


# ---------------------------------------------------------------------- trials, their errors, the file's doubts


@frozen
class Trial:
    """One trial: the plate, the largest gap found on lobe 1 as an interval, and the opening if it was read.

    Raises ValueError for a plate beyond ±3600°, a gap that is negative or beyond 1000 mm, the low end above the
    high one, and an interval that says nothing (0 to infinity).
    """

    backplate_deg: float
    """Where the plate stood [deg], positive with cam rotation."""
    gap_low_mm: float
    gap_high_mm: float
    """The gap lies between these [mm]; 0 and infinity where no blade was the limit; equal for a plain reading."""
    opening_error_deg: float = 0.0
    """What the straightedge showed with the contacts just opening [rotor deg, positive late]; 0 = at the mark."""

    def __post_init__(self) -> None:
        if not abs(self.backplate_deg) <= 3600.0:
            raise ValueError(
                tr(
                    "the plate stands at {backplate}°; it must lie within ±3600°",
                    backplate=number(self.backplate_deg, "g"),
                )
            )
        if not abs(self.opening_error_deg) <= 45.0:
            raise ValueError(
                tr(
                    "the opening is {opening_error}° off; it must lie within ±45°",
                    opening_error=number(self.opening_error_deg, "g"),
                )
            )
        low, high = self.gap_low_mm, self.gap_high_mm
        if not (0.0 <= low <= high and low <= 1000.0 and (high <= 1000.0 or high == inf) and high > 0.0):
            raise ValueError(
                tr(
                    "the gap is given as {low} to {high} mm; it must be above 0, within 1000 mm, low end first",
                    low=number(low, "g"),
                    high=number(high, "g"),
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
            raise ValueError(
                tr("the gap is known to within {within} mm; it must be 0 or more", within=number(within_mm, "g"))
            )
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


@frozen
class Budget:
    """The largest errors of one trial: half-widths of rectangular distributions (JCGM 100:2008, 4.3.7)."""

    mark_mm: float
    """Straightedge from the rim mark when the contacts open [mm]."""
    plate_deg: float = 0.1
    """Reading of the plate [deg]."""
    blade_mm: float = 0.003
    """Feel of the blade, or error of the gauge [mm]."""

    def __post_init__(self) -> None:
        if not all(isfinite(v) and v >= 0 for v in (self.mark_mm, self.plate_deg, self.blade_mm)):
            raise ValueError(tr("the errors of a trial must be numbers, 0 or more"))

    @classmethod
    def of(cls, magneto: Magneto) -> Budget:
        """The file's own tolerance at the marks, and plain values for plate and blade."""
        return cls(magneto.marks.tolerance_mm)

    def setting_deg(self, magneto: Magneto) -> tuple[float, float]:
        """What mark and plate together are worth along the plate [cam deg]: largest, and standard deviation.

        The mark's part is atan(mark/radius): the edge lies along the cam's step.
        """
        mark = degrees(atan(self.mark_mm / magneto.marks.radius_mm))
        return mark + self.plate_deg, hypot(mark, self.plate_deg) / sqrt(3)


@frozen
class Doubt:
    """How far the file may be off, before any trial: half-widths of rectangular distributions.

    These keep lift and rise near the file's until trials say otherwise. The index has no such hold once one
    trial gives the gap from both sides: then the curve goes through it.
    """

    lift: float = 0.2
    rise: float = 0.2
    """Fractions of the file's lift and rise [-]."""
    index_deg: float = 2.0
    """Plate for the designed gap [cam deg]."""

    def __post_init__(self) -> None:
        if not (0 < self.lift <= 1 and 0 < self.rise <= 1 and 0 < self.index_deg <= 90):
            raise ValueError(tr("doubt in lift and rise must be above 0 and at most 1, in the index at most 90°"))
