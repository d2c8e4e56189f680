"""Wear in words: what to expect at the next inspection, and what leaves its limits first."""

from __future__ import annotations

import math

from magview.bench.state import BenchState
from magview.physics.wear import EstimatedRates, Rate, WearRates, course, leavings
from magview.spec.units import format_angle, format_length

_NEVER_H = 10_000.0
"""Beyond it nobody plans."""


def expectation_words(state: BenchState, rates: WearRates, hours: float, inches: bool) -> str:
    """What lobe 1 will read after so many more hours [h]."""
    found = course(state.magneto, state.backplate_deg, state.screw_deg, rates, hours)
    error, gap, blade = (float(v[0]) for v in (found.opening_error_deg, found.gap_mm, found.blade_gap_mm))
    if math.isnan(error):
        return f"After {hours:g} h the contacts would not open and close any more."
    side = "late" if error > 0 else "early"
    opens = "at the E-gap" if abs(error) < 0.005 else f"{format_angle(abs(error))} {side}"
    verdict = "within limits" if bool(found.within_limits) else "out of limits"
    words = f"After {hours:g} h: opens {opens}, largest gap {format_length(gap, inches)}; {verdict}."
    if gap - blade > 0.0005:
        words += (
            f" A blade would find {format_length(blade, inches)}: it rides on the pip, "
            f"{format_length(float(found.pip_mm), inches)} high, and the true gap is wider."
        )
    return words


def leaving_words(state: BenchState, rates: WearRates) -> str:
    """Which limit is left first, and when."""
    soonest = leavings(state.magneto, state.backplate_deg, state.screw_deg, rates)
    out = [leaving.limit for leaving in soonest if leaving.hours == 0.0]
    if out:
        return f"Out of limits already: {', '.join(out)}. Set it first."
    told = [f"{leaving.limit} after {leaving.hours:.0f} h" for leaving in soonest if leaving.hours <= _NEVER_H]
    if not told:
        return f"At these rates nothing leaves its limits within {_NEVER_H:,.0f} h.".replace(",", " ")
    return f"Leaves its limits: {'; '.join(told)}."


def rate_words(found: EstimatedRates, inches: bool) -> str:
    """Rates from inspections, each with its interval."""

    def of(rate: Rate) -> str:
        value, low, high = (format_length(v, inches) for v in (rate.mm_per_100h, rate.low, rate.high))
        return f"{value} per 100 h ({low} to {high}, {100 * rate.probability:.0f} times in 100)"

    words = f"The blade gap closes by {of(found.closing)}."
    if found.heel is not None and found.pip is not None:
        words += f" Of that the heel wears {of(found.heel)}, and the pip grows {of(found.pip)}."
    else:
        words += " Note where it opened, too, to tell the heel's part from the pip's."
    return words
