"""The line through what one reading of a magneto did over its hours, and which readings drift."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from math import inf, sqrt

import numpy as np
from numpy.typing import NDArray

from magview.job.derived import opening_limit_deg, side_of, true_btdc_deg
from magview.job.judge import firing_limits_deg
from magview.job.sheet import Job
from magview.physics.uncertainty.instruments import one_reading
from magview.physics.uncertainty.straight_line import StraightLine, straight_line
from magview.spec.language import format_angle, format_length, marked

Array = NDArray[np.float64]

_HORIZON_H = 5_000
"""Longest time planned ahead."""


@dataclass(frozen=True)
class DriftReading:
    """A reading that drifts: its places on a sheet, as found and as left, its limits, and its words."""

    found: Callable[[Job], float | None]
    left: Callable[[Job], float | None]
    limits: Callable[[Job], tuple[float, float] | None]
    usual: float
    """Half-width of one reading where the sheet does not say [its unit]."""
    stated: Callable[[Job], float | None]
    """The same as the sheet says."""
    title: str
    """With the unit."""
    moved: str
    may_leave: str
    may_have_left: str
    """True where the last readings do not even say surely that it is within its limits."""
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


def _gap_limits(job: Job) -> tuple[float, float] | None:
    low, high = job.limits.gap_low_mm, job.limits.gap_high_mm
    return None if low is None or high is None else (low, high)


def _opening_limits(job: Job) -> tuple[float, float] | None:
    late = opening_limit_deg(job)
    return None if late is None else (-late, late)


READINGS = {
    "gap": DriftReading(
        lambda job: job.as_found.gap_mm,
        lambda job: job.internal_timing.gap_mm,
        _gap_limits,
        one_reading("blades-thou"),
        lambda job: job.reading_errors.gap_mm,
        marked("Largest gap [mm]"),
        marked(
            "The gap moved {change} in 100 h (± {spread}); after 100 h more, at {at} h, it should read {value}, "
            "between {low} and {high} 95 times in 100."
        ),
        marked("The gap may leave its limits from {hours} h on."),
        marked(
            "The gap may be out of its limits already at {hours} h: the last reading is too near a limit for how "
            "well it is read. Read it again with a finer instrument, or set it."
        ),
        _length,
        _length,
    ),
    "opening": DriftReading(
        lambda job: job.as_found.opening_error_deg,
        lambda job: job.internal_timing.opening_error_deg,
        _opening_limits,
        one_reading("rule-half-mm"),
        lambda job: job.reading_errors.opening_deg,
        marked("Opening from the E-gap [rotor °]"),
        marked(
            "The opening moved {change} in 100 h (± {spread}); after 100 h more, at {at} h, it should read {value}, "
            "between {low} and {high} 95 times in 100."
        ),
        marked("The opening may leave its limits from {hours} h on."),
        marked(
            "The opening may be out of its limits already at {hours} h: the last reading is too near a limit for how "
            "well it is read. Read it again with a finer instrument, or set it."
        ),
        _angle,
        _angle,
    ),
    "firing": DriftReading(
        lambda job: true_btdc_deg(job, "as_found", f"{side_of(job)}_btdc_deg"),
        lambda job: true_btdc_deg(job, "synchronising", f"{side_of(job)}_btdc_deg"),
        lambda job: firing_limits_deg(job, side_of(job)),
        one_reading("disc-1deg"),
        lambda job: job.reading_errors.firing_deg,
        marked("Fires before top dead centre [crank °]"),
        marked(
            "The firing moved {change} of crank in 100 h (± {spread}), positive earlier; after 100 h more, at {at} "
            "h, it should read {value} before top dead centre, between {low} and {high} 95 times in 100."
        ),
        marked("The firing may leave its limits from {hours} h on."),
        marked(
            "The firing may be out of its limits already at {hours} h: the last reading is too near a limit for how "
            "well it is read. Read it again with a finer instrument, or set it."
        ),
        _crank,
        _angle,
    ),
}
"""Names of the readings that drift; Drift has a line of each."""


@dataclass(frozen=True)
class DriftLine:
    """The course of a reading as a straight line, and what it says of later hours."""

    hours_h: tuple[float, ...]
    drift: tuple[float, ...]
    """Away from the first as-left reading, re-settings taken off [mm or deg]."""
    fit: StraightLine
    """Slope common to all settings, level of the last one."""
    last_h: float
    """Hours at which it was last read [h]."""
    factor: float
    """Coverage factor of the intervals (Student's t)."""
    reading_u: float
    """Standard uncertainty of a reading to come [mm or deg]."""

    def predict(self, hours_h: float | Array) -> tuple[Array, Array, Array]:
        """Value and prediction interval (low, high) of a reading taken at magneto hours ≥ the last [h], any shape."""
        value = self.fit.value(hours_h)
        away = self.factor * np.hypot(self.fit.value_u(hours_h), self.reading_u)
        return value, value - away, value + away

    def safe_until_h(self, low: float, high: float) -> float:
        """Magneto hours [h, whole hours after the last reading] up to which the true value keeps its limits.

        By the interval of the line itself, to either side: 97.5 % to each. `last_h` where the last readings lie no
        surer than that within the limits; infinity if it holds for as long as anybody plans.
        """
        hours = self.last_h + np.arange(_HORIZON_H + 1.0)
        value, away = self.fit.value(hours), self.factor * self.fit.value_u(hours)
        out = (value - away < low) | (value + away > high)
        return float(hours[max(int(np.argmax(out)) - 1, 0)]) if out.any() else inf


def half_width(job: Job, of: DriftReading) -> float:
    """Half-width of a sheet's readings [mm or deg]: as it says, else as is usual."""
    stated = of.stated(job)
    return of.usual if stated is None else stated


def line_of(jobs: Sequence[Job], of: DriftReading, probability: float) -> DriftLine | None:
    """The course of one reading, sheets by hours; None without two that frame a span of hours.

    A reading as left begins a new setting, whose level nobody knows; without one the setting goes on as found.
    """
    hours: list[float] = []
    drift: list[float] = []
    read: list[tuple[float, float, float, int]] = []  # hours, reading, half-width, setting
    setting = 0
    left: tuple[float, float] | None = None  # hours and reading as the last job left it
    for job in jobs:
        at, found, after, wide = job.magneto.hours_h, of.found(job), of.left(job), half_width(job, of)
        if at is None:
            continue
        if left is not None and found is not None and at > left[0]:
            if not hours:
                hours, drift = [left[0]], [0.0]
            drift.append(drift[-1] + found - left[1])
            hours.append(at)
        if found is not None:
            read.append((at, found, wide, setting))
        if after is not None:
            setting += 1
            read.append((at, float(after), wide, setting))
        # An untouched setting goes on as it was found.
        now = after if after is not None else found
        if now is not None:
            left = (at, float(now))
    if not read:
        return None
    h, y, wides, settings = zip(*read, strict=True)
    fit = straight_line(h, y, wides, settings)
    if fit is None:
        return None
    to_come = fit.scatter * wides[-1] / sqrt(3.0)
    return DriftLine(tuple(hours), tuple(drift), fit, h[-1], fit.factor(probability), to_come)
