"""Rates of wear from inspections: what gaps and openings read at different hours tell of heel, faces and pip."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import hypot, inf

import numpy as np
from numpy.typing import ArrayLike, NDArray

from magview.physics.cam.setting import InternalTiming, internal_timing
from magview.physics.uncertainty.propagation import coverage_factor
from magview.physics.uncertainty.straight_line import StraightLine, straight_line
from magview.physics.wear.inspection import Inspection
from magview.spec.language import tr
from magview.spec.magneto import Magneto

Array = NDArray[np.float64]


@dataclass(frozen=True)
class Rate:
    """A rate from readings, with its interval [mm per 100 h]. It may come out below 0 where little has happened."""

    mm_per_100h: float
    low: float
    high: float
    probability: float
    """Of the interval [-]."""

    def scaled(self, factor: float) -> Rate:
        """The rate of something that goes with this one by a factor [-], such as heel wear = lift lost·A/K."""
        low, high = sorted((self.low * factor, self.high * factor))
        return Rate(self.mm_per_100h * factor, low, high, self.probability)


@dataclass(frozen=True)
class EstimatedRates:
    """Wear found by inspections."""

    closing: Rate
    """Rate at which the gap closes as the blades read it: lift lost at the contacts and growth of the pip."""
    lift: Rate | None
    """Lift lost at the contacts, what the heel loses less what the faces burn; None unless openings were read at two
    inspections."""
    heel: Rate | None
    """Wear at the heel if the faces did not burn; None without `lift` or the arm's length to the heel."""
    pip: Rate | None
    """Growth of the pip, what is left of `closing`; None without `lift`."""


def estimate_rates(
    magneto: Magneto, backplate_deg: float, inspections: Sequence[Inspection], probability: float = 0.95
) -> EstimatedRates:
    """Rates of wear from two or more inspections.

    Parameters
    ----------
    magneto : the magneto; its lift curve tells what a later opening has cost in lift.
    backplate_deg : the plate's setting [deg].
    inspections : what was read, in any order; hours must differ.
    probability : of the intervals [-].

    Raises
    ------
    ValueError : fewer than two different hours.

    Notes
    -----
    Gap readings alone cannot tell heel from pip, which both make the blade's gap smaller; the opening is moved by
    heel and faces only, against each other, and no reading tells these two apart.

    Slopes are those of `straight_line`, and so are their intervals.
    """
    hours = [seen.hours for seen in inspections]
    gaps = np.array([seen.gap_mm for seen in inspections])
    closes = _line(hours, -gaps, [seen.gap_half_width_mm for seen in inspections])
    closing = _rate(closes.slope, closes.slope_u, closes.factor(probability), probability)
    read = [seen for seen in inspections if seen.opening_error_deg is not None]
    if len({seen.hours for seen in read}) < 2:
        return EstimatedRates(closing, None, None, None)
    timing = internal_timing(magneto)
    errors = np.array([[seen.opening_error_deg for seen in read]], dtype=float)
    ends = errors + np.array([[0.0], [-1.0], [1.0]]) * [seen.opening_half_width_deg for seen in read]
    lift = _lift_at_opening(timing, backplate_deg, ends)
    loses = _line([s.hours for s in read], lift[0], np.abs(lift[2] - lift[1]) / 2)
    lost = _rate(loses.slope, loses.slope_u, loses.factor(probability), probability)
    arm = magneto.breaker.heel_arm_mm
    heel = lost.scaled(arm / magneto.breaker.contact_arm_mm) if arm else None
    # The two slopes come from different readings: independent (Welch–Satterthwaite, GUM G.4.1).
    u = hypot(closes.slope_u, loses.slope_u)
    dof = u**4 / spread if (spread := sum(x.slope_u**4 / x.dof for x in (closes, loses))) else inf
    pip = _rate(closes.slope - loses.slope, u, coverage_factor(probability, dof), probability)
    return EstimatedRates(closing, lost, heel, pip)


def hidden_mm_per_100h(magneto: Magneto, faces_mm_per_100h: float) -> float:
    """Heel wear that burning of the faces hides from the readings [mm per 100 h].

    Parameters
    ----------
    magneto : the magneto whose arm carries heel and contact.
    faces_mm_per_100h : what the faces burn [mm per 100 h].

    Returns
    -------
    What the heel wears besides `EstimatedRates.heel`; 0 without the arm's length to the heel.
    """
    arm = magneto.breaker.heel_arm_mm
    return faces_mm_per_100h * arm / magneto.breaker.contact_arm_mm if arm else 0.0


def _line(hours: Sequence[float], values: Array, half_widths: ArrayLike) -> StraightLine:
    line = straight_line(hours, values, half_widths)
    if line is None:
        raise ValueError(tr("a rate takes inspections at two different hours at least"))
    return line


def _rate(slope: float, u: float, factor: float, probability: float) -> Rate:
    """A rate [mm per 100 h] from a slope [mm/h], its standard uncertainty and a coverage factor [-]."""
    return Rate(100.0 * slope, 100.0 * (slope - factor * u), 100.0 * (slope + factor * u), probability)


def _lift_at_opening(timing: InternalTiming, backplate_deg: float, error_deg: Array) -> Array:
    """Lift of lobe 1 as new where it opens [mm]: the stop and all that is worn off."""
    before = timing.peaks_deg[0] + backplate_deg - timing.ratio * (timing.places_deg[0] + error_deg)
    return np.asarray(timing.scale[0] * timing.curve.lift_mm(-before))
