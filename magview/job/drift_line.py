"""The robust line through what one reading of a magneto did over its hours, and which readings drift."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from math import inf, sqrt

import numpy as np
from numpy.typing import NDArray

from magview.job.judge import firing_limits_deg, opening_limit_deg
from magview.job.sheet import Job
from magview.physics.uncertainty import coverage_factor
from magview.spec.frozen import frozen
from magview.spec.language import marked
from magview.spec.units import format_angle, format_length

Array = NDArray[np.float64]

_HORIZON_H = 5_000
"""Nobody plans further ahead."""

GAP_HALF_WIDTH_MM = 0.0127
"""Of one gap reading: half of a step of 0.001 in blades."""

OPENING_HALF_WIDTH_DEG = 0.5
"""Of one opening reading: rule and straightedge by hand (common practice)."""

FIRING_HALF_WIDTH_DEG = 0.5
"""Of one firing reading: lamp and timing disc by hand [crank deg] (common practice)."""


@frozen
class Reading:
    """What drifts: where a sheet has it, as found and as left, between what it should lie, and its words."""

    found: Callable[[Job], float | None]
    left: Callable[[Job], float | None]
    limits: Callable[[Job], tuple[float, float] | None]
    half_width: float
    """Of one reading [its unit]."""
    title: str
    """With the unit."""
    moved: str
    may_leave: str
    words: Callable[[float | None], str]
    """A value, and…"""
    change_words: Callable[[float | None], str]
    """…a change of it, with its sign."""


def _length(mm: float | None) -> str:
    return "–" if mm is None else format_length(mm, False)


def _angle(deg: float | None) -> str:
    return "–" if deg is None else format_angle(deg, True)


def _crank(deg: float | None) -> str:
    return "–" if deg is None else format_angle(deg)


def side_of(job: Job) -> str:
    """Which of the engine's two places the magneto has; a single one stands in the left one's."""
    return "right" if job.magneto.position == "right" else "left"


def _gap_limits(job: Job) -> tuple[float, float] | None:
    low, high = job.limits.gap_low_mm, job.limits.gap_high_mm
    return None if low is None or high is None else (low, high)


def _opening_limits(job: Job) -> tuple[float, float] | None:
    late = opening_limit_deg(job)
    return None if late is None else (-late, late)


READINGS = {
    "gap": Reading(
        lambda job: job.as_found.gap_mm,
        lambda job: job.internal_timing.gap_mm,
        _gap_limits,
        GAP_HALF_WIDTH_MM,
        marked("Largest gap [mm]"),
        marked(
            "The gap moved {change} in 100 h (± {spread}); after 100 h more, at {at} h, it should read {value}, "
            "between {low} and {high} 95 times in 100."
        ),
        marked("The gap may leave its limits from {hours} h on."),
        _length,
        _length,
    ),
    "opening": Reading(
        lambda job: job.as_found.opening_error_deg,
        lambda job: job.internal_timing.opening_error_deg,
        _opening_limits,
        OPENING_HALF_WIDTH_DEG,
        marked("Opening from the E-gap [rotor °]"),
        marked(
            "The opening moved {change} in 100 h (± {spread}); after 100 h more, at {at} h, it should read {value}, "
            "between {low} and {high} 95 times in 100."
        ),
        marked("The opening may leave its limits from {hours} h on."),
        _angle,
        _angle,
    ),
    "firing": Reading(
        lambda job: getattr(job.as_found, f"{side_of(job)}_btdc_deg"),
        lambda job: getattr(job.synchronising, f"{side_of(job)}_btdc_deg"),
        lambda job: firing_limits_deg(job, side_of(job)),
        FIRING_HALF_WIDTH_DEG,
        marked("Fires before top dead centre [crank °]"),
        marked(
            "The firing moved {change} of crank in 100 h (± {spread}), positive earlier; after 100 h more, at {at} "
            "h, it should read {value} before top dead centre, between {low} and {high} 95 times in 100."
        ),
        marked("The firing may leave its limits from {hours} h on."),
        _crank,
        _angle,
    ),
}
"""What drifts, by name; Drift has a line of each."""


@frozen
class Line:
    """A robust straight line through the course of drift, and what it says of later hours.

    Slope: median of the slopes of all pairs (Theil 1950, Sen 1968). Spread of a reading: 1.4826 × the median
    deviation from the line, for the two constants fitted, but no less than the half-width of the instrument allows.
    """

    hours_h: tuple[float, ...]
    drift: tuple[float, ...]
    """Away from the first as-left reading, re-settings taken off [mm or deg]."""
    slope_per_h: float
    slope_uncertainty_per_h: float
    reading_uncertainty: float
    factor: float
    """Coverage factor of the intervals (t distribution)."""
    last_h: float
    last_left: float
    """The reading as last left [mm or deg]: what is predicted starts here."""

    def predict(self, hours_h: float | Array) -> tuple[Array, Array, Array]:
        """Value and prediction interval (low, high) of a reading taken at magneto hours ≥ the last [h], any shape."""
        ahead = np.asarray(hours_h, dtype=float) - self.last_h
        value = self.last_left + self.slope_per_h * ahead
        # Of the value as left, of the line, and of the reading to come.
        away = self.factor * np.sqrt(2 * self.reading_uncertainty**2 + (ahead * self.slope_uncertainty_per_h) ** 2)
        return value, value - away, value + away

    def leaves_at_h(self, low: float, high: float) -> float:
        """Magneto hours [h, whole] from which a reading may be outside limits, by the interval; infinity if never.

        The limits are those of the value without the interval's share at the start: a reading that is unsure from the
        first hour on tells nothing of drift, so only what drift adds is counted.
        """
        hours = self.last_h + np.arange(_HORIZON_H + 1.0)
        value, down, up = self.predict(hours)
        start = up[0] - value[0]
        out = (down + start < low) | (up - start > high)
        return float(hours[int(np.argmax(out))]) if out.any() else inf


def line_of(jobs: Sequence[Job], of: Reading, probability: float) -> Line | None:
    """The course of one reading; None without two sheets that frame a span of hours."""
    hours: list[float] = []
    drift: list[float] = []
    left: tuple[float, float] | None = None  # hours and reading as the last job left it
    for job in jobs:
        at, found, after = job.magneto.hours_h, of.found(job), of.left(job)
        if at is None:
            continue
        if left is not None and found is not None and at > left[0]:
            if not hours:
                hours, drift = [left[0]], [0.0]
            drift.append(drift[-1] + found - left[1])
            hours.append(at)
        # An untouched setting goes on as it was found.
        now = after if after is not None else found
        if now is not None:
            left = (at, float(now))
    if len(hours) < 2 or left is None:
        return None
    h, y = np.array(hours), np.array(drift)
    i, j = np.triu_indices(len(h), 1)
    slope = float(np.median((y[j] - y[i])[h[j] > h[i]] / (h[j] - h[i])[h[j] > h[i]]))
    rest = y - slope * h
    reading = of.half_width / sqrt(3.0)
    if len(h) > 2:
        spread = 1.4826 * float(np.median(np.abs(rest - np.median(rest)))) * sqrt(len(h) / (len(h) - 2))
        reading = max(reading, spread)
    across = sqrt(float(((h - h.mean()) ** 2).sum()))
    # With two points all that is known of the spread is the instrument's half-width.
    factor = coverage_factor(probability, len(h) - 2 if len(h) > 2 else inf)
    return Line(tuple(hours), tuple(drift), slope, reading / across, reading, factor, left[0], left[1])
