"""Wear in words: what to expect at the next inspection, and what leaves its limits first."""

from __future__ import annotations

import math

from magview.bench.state import BenchState
from magview.physics.wear import EstimatedRates, Limit, Rate, WearRates, course, leavings
from magview.spec.language import marked, number, tr
from magview.spec.units import format_angle, format_length

_NEVER_H = 10_000.0
"""Beyond it nobody plans."""


_EXPECTED = {
    (0, True): marked("After {hours} h: opens at the E-gap, largest gap {gap}; within limits."),
    (0, False): marked("After {hours} h: opens at the E-gap, largest gap {gap}; out of limits."),
    (1, True): marked("After {hours} h: opens {angle} late, largest gap {gap}; within limits."),
    (1, False): marked("After {hours} h: opens {angle} late, largest gap {gap}; out of limits."),
    (-1, True): marked("After {hours} h: opens {angle} early, largest gap {gap}; within limits."),
    (-1, False): marked("After {hours} h: opens {angle} early, largest gap {gap}; out of limits."),
}
"""By late (1) or early (−1), and within limits."""

_LIMITS: dict[Limit, tuple[str, str]] = {
    "opens late": (marked("opens late"), marked("opens late after {hours} h")),
    "opens early": (marked("opens early"), marked("opens early after {hours} h")),
    "gap too small": (marked("gap too small"), marked("gap too small after {hours} h")),
    "gap too wide": (marked("gap too wide"), marked("gap too wide after {hours} h")),
    "blade gap too small": (marked("blade gap too small"), marked("blade gap too small after {hours} h")),
    "never opens": (marked("never opens"), marked("never opens after {hours} h")),
}
"""A limit left already, and to be left."""


def expectation_words(state: BenchState, rates: WearRates, hours: float, inches: bool) -> str:
    """What lobe 1 will read after so many more hours [h]."""
    found = course(state.magneto, state.backplate_deg, state.screw_deg, rates, hours)
    error, gap, blade = (float(v[0]) for v in (found.opening_error_deg, found.gap_mm, found.blade_gap_mm))
    if math.isnan(error):
        return tr("After {hours} h the contacts would not open and close any more.", hours=number(hours, "g"))
    way = 0 if abs(error) < 0.005 else 1 if error > 0 else -1
    words = tr(
        _EXPECTED[way, bool(found.within_limits)],
        hours=number(hours),
        angle=format_angle(abs(error)),
        gap=format_length(gap, inches),
    )
    if gap - blade > 0.0005:
        more = tr(
            "A blade would find {gap}: it rides on the pip, {pip} high, and the true gap is wider.",
            gap=format_length(blade, inches),
            pip=format_length(float(found.pip_mm), inches),
        )
        return f"{words} {more}"
    return words


def leaving_words(state: BenchState, rates: WearRates) -> str:
    """Which limit is left first, and when."""
    soonest = leavings(state.magneto, state.backplate_deg, state.screw_deg, rates)
    out = [tr(_LIMITS[leaving.limit][0]) for leaving in soonest if leaving.hours == 0.0]
    if out:
        return tr("Out of limits already: {limits}. Set it first.", limits=", ".join(out))
    told = [
        tr(_LIMITS[leaving.limit][1], hours=number(leaving.hours, 0))
        for leaving in soonest
        if leaving.hours <= _NEVER_H
    ]
    if not told:
        hours = f"{_NEVER_H:,.0f}".replace(",", " ")
        return tr("At these rates nothing leaves its limits within {hours} h.", hours=hours)
    return tr("Leaves its limits: {limits}.", limits="; ".join(told))


def rate_words(found: EstimatedRates, inches: bool) -> str:
    """Rates from inspections, each with its interval."""

    def of(rate: Rate) -> str:
        value, low, high = (format_length(v, inches) for v in (rate.mm_per_100h, rate.low, rate.high))
        return tr(
            "{value} per 100 h ({low} to {high}, {probability} times in 100)",
            value=value,
            low=low,
            high=high,
            probability=number(100 * rate.probability, 0),
        )

    words = tr("The blade gap closes by {rate}.", rate=of(found.closing))
    if found.heel is not None and found.pip is not None:
        more = tr("Of that the heel wears {heel}, and the pip grows {pip}.", heel=of(found.heel), pip=of(found.pip))
    else:
        more = tr("Note where it opened, too, to tell the heel's part from the pip's.")
    return f"{words} {more}"
