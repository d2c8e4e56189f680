"""Heel wear and contact pips against running hours: what a setting becomes, and when it leaves its limits.

Wear w at the heel lowers every lift at the contacts by w·K/A (``model.md`` §4): later opening, smaller gap. A pip
leaves the gap as it is and takes its height off what a feeler blade finds. Both are taken to grow evenly, as
running-in or a dry felt would not (common practice: an average over the hours between two inspections).
"""

from __future__ import annotations

from collections.abc import Sequence
from math import inf, isfinite, sqrt
from typing import Literal

import numpy as np
from numpy.typing import ArrayLike, NDArray

from magview.physics.inspection import Inspection
from magview.physics.setting import InternalTiming, internal_timing
from magview.physics.uncertainty import coverage_factor
from magview.spec.frozen import frozen
from magview.spec.language import marked, number, tr
from magview.spec.magneto import Magneto

Array = NDArray[np.float64]
Flags = NDArray[np.bool_]
Limit = Literal["opens late", "opens early", "gap too small", "gap too wide", "blade gap too small", "never opens"]

_HAIR_MM = 1e-9
"""A reading at the very limit must not fail for the last bit."""


@frozen
class WearRates:
    """How fast heel and pip grow [mm per 100 h], ≥ 0. Raises ValueError for anything else."""

    heel_mm_per_100h: float
    pip_mm_per_100h: float = 0.0

    def __post_init__(self) -> None:
        for words, rate in (
            (marked("heel wear is {rate} mm per 100 h; it must be 0 or more"), self.heel_mm_per_100h),
            (marked("the pip's growth is {rate} mm per 100 h; it must be 0 or more"), self.pip_mm_per_100h),
        ):
            if not (isfinite(rate) and rate >= 0.0):
                raise ValueError(tr(words, rate=number(rate)))


@frozen
class Course:
    """A setting over the hours. Arrays have the hours' shape plus (lobes,), in firing order."""

    hours: Array
    """Running hours since it was set [h], their own shape."""
    opening_error_deg: Array
    """Rotor degrees from where the lobe should open, positive late; NaN where it never does."""
    gap_mm: Array
    """The true widest gap."""
    blade_gap_mm: Array
    """The thickest blade that passes: too small by the pip."""
    pip_mm: Array
    """The blade's error, the hours' shape."""
    timing_ok: Flags
    gap_ok: Flags
    """Of the true gap."""
    blade_ok: Flags
    """What a feeler blade would say of the gap."""
    within_limits: Flags
    """The hours' shape: every lobe's true gap, and every judged lobe's opening."""


@frozen
class Leaving:
    """When one limit is first left."""

    limit: Limit
    hours: float
    """Running hours since it was set [h]: 0 if it was outside from the start, infinity if it never leaves."""
    lobe: int
    """The first lobe to do so, by firing order from 1; 0 if none does."""


def course(magneto: Magneto, backplate_deg: float, screw_deg: float, rates: WearRates, hours: ArrayLike) -> Course:
    """What a setting becomes.

    Parameters
    ----------
    magneto : the magneto, its condition as it was when it was set.
    backplate_deg, screw_deg : the setting [deg].
    rates : wear of the heel and growth of the pip from then on.
    hours : running hours since it was set [h], any shape, ≥ 0.

    Raises
    ------
    ValueError : hours below 0 or not finite, or heel wear of a magneto whose file does not say where the heel sits.
    """
    at = np.asarray(hours, dtype=float)
    if not np.all((at >= 0.0) & np.isfinite(at)):
        raise ValueError(tr("hours since the setting must be 0 or more, and finite"))
    timing, condition = internal_timing(magneto), magneto.condition
    lost = (timing.wear_lift_mm + _lift_rate(magneto, rates) * at)[..., None]
    stop = timing.stop_mm(screw_deg)
    level = (stop + lost) / timing.scale
    level = np.where(level > 0.0, level, np.nan)
    opens = (timing.peaks_deg - timing.curve.before_top_deg(level) + backplate_deg) / timing.ratio
    gap = np.maximum(timing.curve.top_mm + timing.lift_errors_mm - lost - stop, 0.0)
    error = opens - timing.places_deg
    pip = condition.pip_height_mm + rates.pip_mm_per_100h / 100.0 * at
    blade = np.maximum(gap - pip[..., None], 0.0)
    low, high = magneto.gap_limits_mm
    timing_ok = np.abs(timing.mark_offset_mm(error)) <= magneto.marks.tolerance_mm
    gap_ok = (gap >= low - _HAIR_MM) & (gap <= high + _HAIR_MM)
    return Course(
        hours=at,
        opening_error_deg=error,
        gap_mm=gap,
        blade_gap_mm=blade,
        pip_mm=pip,
        timing_ok=timing_ok,
        gap_ok=gap_ok,
        blade_ok=(blade >= low - _HAIR_MM) & (blade <= high + _HAIR_MM),
        within_limits=np.asarray(gap_ok.all(axis=-1) & timing_ok[..., _judged(magneto)].all(axis=-1)),
    )


def leavings(magneto: Magneto, backplate_deg: float, screw_deg: float, rates: WearRates) -> tuple[Leaving, ...]:
    """When each limit is first left, soonest first; closed form, so that nothing is searched for.

    Parameters
    ----------
    magneto : the magneto, its condition as it was when it was set.
    backplate_deg, screw_deg : the setting [deg].
    rates : wear of the heel and growth of the pip from then on.

    Notes
    -----
    "blade gap too small" is what a feeler blade would report, sooner than the true gap by the pip. "opens late"
    holds no lobe that never opens: that limit has its own line. Raises ValueError as `course` does.
    """
    timing, (low, high) = internal_timing(magneto), magneto.gap_limits_mm
    rate, pip_rate = _lift_rate(magneto, rates), rates.pip_mm_per_100h / 100.0
    start = course(magneto, backplate_deg, screw_deg, rates, 0.0)
    gap, error, judged = start.gap_mm, start.opening_error_deg, _judged(magneto)
    # How far before its top a lobe opens when it is just as late as is allowed…
    late = float(np.degrees(np.arctan(magneto.marks.tolerance_mm / magneto.marks.radius_mm))) / timing.ratio
    before = timing.peaks_deg + backplate_deg - timing.ratio * (timing.places_deg + late)
    # …and the lift there, less the stop and what is worn already: what may still wear off.
    left = timing.scale * timing.curve.lift_mm(-before) - timing.wear_lift_mm - float(timing.stop_mm(screw_deg))
    # A lobe that is not yet late at its very top stays in time until it never opens.
    always = np.isnan(error) | (before <= timing.curve.before_top_deg(timing.curve.top_mm))
    left = np.where(always, inf, np.where(start.timing_ok, np.maximum(left, 0.0), left))
    found = [
        _first("opens late", left[judged], rate),
        _first("opens early", np.where(~start.timing_ok & (error < 0.0), -1.0, inf)[judged], 0.0),
        _first("gap too small", _room(gap, low), rate),
        _first("gap too wide", np.where(~start.gap_ok & (gap > high), -1.0, inf), 0.0),
        _first("blade gap too small", _room(start.blade_gap_mm, low), rate + pip_rate),
        _first("never opens", np.where(gap > 0.0, gap, -1.0), rate),
    ]
    return tuple(sorted(found, key=lambda leaving: leaving.hours))


def worn(magneto: Magneto, rates: WearRates, hours: float) -> Magneto:
    """The magneto after so many hours [h], for the bench: its file's condition with the wear added.

    Raises ValueError as `course` does, and for wear that no file may hold (10 mm).
    """
    _lift_rate(magneto, rates)
    now = magneto.condition
    heel = now.heel_wear_mm + rates.heel_mm_per_100h / 100.0 * hours
    pip = now.pip_height_mm + rates.pip_mm_per_100h / 100.0 * hours
    if not (hours >= 0.0 and max(heel, pip) <= 10.0):
        raise ValueError(
            tr(
                "after {hours} h the heel would have lost {heel} mm and the pip be {pip} mm high",
                hours=number(hours, "g"),
                heel=number(heel, ".3g"),
                pip=number(pip, ".3g"),
            )
        )
    condition = now.model_copy(update={"heel_wear_mm": heel, "pip_height_mm": pip})
    return magneto.model_copy(update={"condition": condition})


# ---------------------------------------------------------------------- rates from inspections


@frozen
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


@frozen
class EstimatedRates:
    """What inspections say of wear."""

    closing: Rate
    """How fast the gap closes as the blades read it: lift lost at the contacts and growth of the pip together."""
    heel: Rate | None
    """Wear at the heel; None unless openings were read at two inspections and the file says where the heel sits."""
    pip: Rate | None
    """Growth of the pip, what is left of `closing`; None where openings were not read at two inspections."""


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
    the heel only.

    The slope is the median of the slopes of all pairs, which one wrong reading in five does not carry away. Its
    interval is that of a straight line through rectangular readings, widened where their scatter about the line is
    larger than their half-widths explain (ratio of Birge, from the median deviation).

    References
    ----------
    H. Theil, Proc. K. Ned. Akad. Wet. A 53 (1950); P. K. Sen, "Estimates of the regression coefficient based on
    Kendall's tau", J. Amer. Statist. Assoc. 63 (1968) 1379–1389. R. T. Birge, "The calculation of errors by the
    method of least squares", Phys. Rev. 40 (1932) 207–227.
    """
    hours = np.array([seen.hours for seen in inspections])
    gaps = np.array([seen.gap_mm for seen in inspections])
    halves = np.array([seen.gap_half_width_mm for seen in inspections])
    closing = _slope(hours, -gaps, halves, probability)
    read = [seen for seen in inspections if seen.opening_error_deg is not None]
    if len({seen.hours for seen in read}) < 2:
        return EstimatedRates(closing, None, None)
    timing = internal_timing(magneto)
    errors = np.array([[seen.opening_error_deg for seen in read]], dtype=float)
    ends = errors + np.array([[0.0], [-1.0], [1.0]]) * [seen.opening_half_width_deg for seen in read]
    lift = _lift_at_opening(timing, backplate_deg, ends)
    lost = _slope(np.array([s.hours for s in read]), lift[0], np.abs(lift[2] - lift[1]) / 2, probability)
    arm = magneto.breaker.heel_arm_mm
    heel = lost.scaled(arm / magneto.breaker.contact_arm_mm) if arm else None
    pip = closing.mm_per_100h - lost.mm_per_100h
    # The two slopes come from different readings: their half-intervals add in square.
    away = sqrt((closing.high - closing.low) ** 2 + (lost.high - lost.low) ** 2) / 2
    return EstimatedRates(closing, heel, Rate(pip, pip - away, pip + away, probability))


def _slope(hours: Array, values: Array, half_widths: Array, probability: float) -> Rate:
    """Median slope [per 100 h] and its interval; see `estimate_rates`."""
    i, j = np.triu_indices(len(hours), 1)
    apart = hours[j] - hours[i]
    differ = apart != 0.0
    if not differ.any():
        raise ValueError(tr("a rate takes inspections at two different hours at least"))
    slope = float(np.median((values[j] - values[i])[differ] / apart[differ]))
    about = hours - hours.mean()
    u = half_widths / sqrt(3.0)
    u_slope = sqrt(float(((about * u) ** 2).sum())) / float((about**2).sum())
    rest = values - slope * hours
    rest = rest - np.median(rest)
    if len(hours) > 2:
        # The median deviation of a normal scatter is 0.6745 of its standard deviation; two constants were fitted.
        scatter = float(np.median(np.abs(rest))) / 0.6745 * sqrt(len(hours) / (len(hours) - 2))
        u_scatter = scatter / sqrt(float((about**2).sum()))
        u_slope = max(u_slope, u_scatter)
    away = coverage_factor(probability) * u_slope
    return Rate(100.0 * slope, 100.0 * (slope - away), 100.0 * (slope + away), probability)


def _lift_at_opening(timing: InternalTiming, backplate_deg: float, error_deg: Array) -> Array:
    """Lift of lobe 1 as new where it opens [mm]: the stop and all that is worn off."""
    before = timing.peaks_deg[0] + backplate_deg - timing.ratio * (timing.places_deg[0] + error_deg)
    return np.asarray(timing.scale[0] * timing.curve.lift_mm(-before))


def _lift_rate(magneto: Magneto, rates: WearRates) -> float:
    """Lift lost at the contacts [mm/h]."""
    arm = magneto.breaker.heel_arm_mm
    if arm is None:
        if rates.heel_mm_per_100h:
            raise ValueError(tr("breaker.heel_arm_mm is missing in the magneto's file: it tells what heel wear does"))
        return 0.0
    return rates.heel_mm_per_100h / 100.0 * magneto.breaker.contact_arm_mm / arm


def _judged(magneto: Magneto) -> slice:
    return slice(0, 1) if magneto.compensated else slice(None)


def _room(gap_mm: Array, low_mm: float) -> Array:
    room = gap_mm - low_mm
    return np.where(np.abs(room) <= _HAIR_MM, 0.0, room)


def _first(limit: Limit, left: Array, rate: float) -> Leaving:
    """When the first lobe uses up what it has left [mm] at a rate [mm/h]; below 0 it is outside already."""
    lobe = int(np.argmin(left))
    least = float(left[lobe])
    if least < 0.0:
        return Leaving(limit, 0.0, lobe + 1)
    hours = least / rate if rate > 0.0 else inf
    return Leaving(limit, hours, lobe + 1 if isfinite(hours) else 0)
