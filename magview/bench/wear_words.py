"""Wear in words: what to expect at the next inspection, and what leaves its limits first."""

from __future__ import annotations

import math

from magview.bench.state import BenchState, firing_btdc_deg
from magview.physics.cam.setting import internal_timing
from magview.physics.uncertainty.instruments import Role, instruments, one_reading
from magview.physics.wear.prediction import Firing, Limit, WearRates, course, lasting, leavings
from magview.physics.wear.rates import EstimatedRates, Rate
from magview.spec.language import format_angle, format_length, marked, tr

_NEVER_H = 10_000.0
"""Beyond it nobody plans."""


_EXPECTED = {
    (0, True): marked("After {hours} h: opens at the E-gap, largest gap {gap:length}; within limits."),
    (0, False): marked("After {hours} h: opens at the E-gap, largest gap {gap:length}; out of limits."),
    (1, True): marked("After {hours} h: opens {angle:deg} late, largest gap {gap:length}; within limits."),
    (1, False): marked("After {hours} h: opens {angle:deg} late, largest gap {gap:length}; out of limits."),
    (-1, True): marked("After {hours} h: opens {angle:deg} early, largest gap {gap:length}; within limits."),
    (-1, False): marked("After {hours} h: opens {angle:deg} early, largest gap {gap:length}; out of limits."),
}
"""By late (1) or early (−1), and within limits."""

_LIMITS: dict[Limit, tuple[str, str]] = {
    Limit.OPENS_LATE: (marked("opens late"), marked("opens late after {hours:.0f} h")),
    Limit.OPENS_EARLY: (marked("opens early"), marked("opens early after {hours:.0f} h")),
    Limit.GAP_TOO_SMALL: (marked("gap too small"), marked("gap too small after {hours:.0f} h")),
    Limit.GAP_TOO_WIDE: (marked("gap too wide"), marked("gap too wide after {hours:.0f} h")),
    Limit.BLADE_GAP_TOO_SMALL: (marked("blade gap too small"), marked("blade gap too small after {hours:.0f} h")),
    Limit.NEVER_OPENS: (marked("never opens"), marked("never opens after {hours:.0f} h")),
    Limit.NEVER_CLOSES: (marked("never closes"), marked("never closes after {hours:.0f} h")),
    Limit.FIRES_LATE: (
        marked("fires too late for the engine"),
        marked("fires too late for the engine after {hours:.0f} h"),
    ),
    Limit.FIRES_EARLY: (
        marked("fires too early for the engine"),
        marked("fires too early for the engine after {hours:.0f} h"),
    ),
}
"""A limit left already, and to be left."""


def firing_of(state: BenchState) -> Firing | None:
    """Demand of the engine on the magneto in view; None off an engine, or where it never opens."""
    engaged = state.engaged
    if engaged is None or not engaged.mounted:
        return None
    fires = firing_btdc_deg(state, engaged.side)
    if math.isnan(fires):
        return None
    tolerance = engaged.installation.engine.timing_tolerance_deg
    return Firing(fires - engaged.mounting.wanted_btdc_deg, tolerance, engaged.ratio)


def expectation_words(state: BenchState, rates: WearRates, hours: float) -> str:
    """Expected readings of lobe 1 after some more hours [h]."""
    found = course(state.magneto, state.backplate_deg, state.screw_deg, rates, hours)
    error, gap, blade = (float(v[0]) for v in (found.opening_error_deg, found.gap_mm, found.blade_gap_mm))
    if math.isnan(error):
        return tr("After {hours} h the contacts would not open and close any more.", hours=hours)
    way = 0 if abs(error) < 0.005 else 1 if error > 0 else -1
    words = tr(
        _EXPECTED[way, bool(found.within_limits)],
        hours=hours,
        angle=abs(error),
        gap=gap,
    )
    if firing := firing_of(state):
        words += " " + _crank_words(state, firing, error)
    if gap - blade > 0.0005:
        words += " " + tr(
            "A blade would find {gap:length}: it rides on the pip, {pip:length} high, and the true gap is wider.",
            gap=blade,
            pip=float(found.pip_mm),
        )
    return words


_ENGINE = {
    (True, True): marked(
        "It fires {change:deg} of crank later than now: {early:deg} early, ±{tolerance:deg} allowed."
    ),
    (True, False): marked(
        "It fires {change:deg} of crank later than now: {early:deg} late, ±{tolerance:deg} allowed."
    ),
    (False, True): marked(
        "It fires {change:deg} of crank earlier than now: {early:deg} early, ±{tolerance:deg} allowed."
    ),
    (False, False): marked(
        "It fires {change:deg} of crank earlier than now: {early:deg} late, ±{tolerance:deg} allowed."
    ),
}
"""By later than now, and early for the engine."""


def _crank_words(state: BenchState, firing: Firing, error_deg: float) -> str:
    """Effect of an opening error [rotor deg] on the engine's timing, against the engine's own tolerance."""
    now, _ = internal_timing(state.magneto).opening_and_gap(state.backplate_deg, state.screw_deg)
    later = (error_deg - float(now)) / firing.rotor_turns_per_crank_turn
    early = firing.early_deg - later
    ok = abs(early) <= firing.tolerance_deg + 1e-9
    words = tr(
        _ENGINE[later >= 0.0, early >= 0.0],
        change=abs(later),
        early=abs(early),
        tolerance=firing.tolerance_deg,
    )
    return words if ok else f"{words} " + tr("Out of the engine's tolerance.")


def leaving_words(state: BenchState, rates: WearRates) -> str:
    """The limit that is left first, the magneto's or the engine's, and when."""
    soonest = leavings(state.magneto, state.backplate_deg, state.screw_deg, rates, firing_of(state))
    out = [tr(_LIMITS[leaving.limit][0]) for leaving in soonest if leaving.hours == 0.0]
    if out:
        return tr("Out of limits already: {limits}. Set it first.", limits=", ".join(out))
    told = [tr(_LIMITS[leaving.limit][1], hours=leaving.hours) for leaving in soonest if leaving.hours <= _NEVER_H]
    if not told:
        return tr("At these rates nothing leaves its limits within {hours:.0f} h.", hours=_NEVER_H)
    return tr("Leaves its limits at these rates: {limits}. Look well before.", limits="; ".join(told))


def lasting_words(state: BenchState, rates: WearRates) -> str:
    """Say how long the smallest, the middle and the largest gap allowed would last, and which lasts longest."""
    low, high = state.magneto.gap_limits_mm
    found = lasting(state.magneto, (low, (low + high) / 2, high), rates, firing_of(state))
    if len(found) < 2 or not any(math.isfinite(one.hours) for one in found):
        return ""
    told = ", ".join(
        tr("{gap:length}: {hours:.0f} h", gap=one.gap_mm, hours=one.hours)
        if one.hours <= _NEVER_H
        else tr("{gap:length}: more than {hours:.0f} h", gap=one.gap_mm, hours=_NEVER_H)
        for one in found
    )
    words = tr("Set to open at the E-gap, by the true gap it would last: {gaps}.", gaps=told)
    best = max(found, key=lambda one: min(one.hours, _NEVER_H))
    near = min(best.hours, _NEVER_H)
    alike = [one for one in found if min(one.hours, _NEVER_H) > 0.95 * near]
    if len(alike) == len(found):
        return f"{words} " + tr("The gap makes little difference.")
    return f"{words} " + tr("{gap:length} lasts longest.", gap=best.gap_mm)


def rate_words(found: EstimatedRates) -> str:
    """Rates from inspections, each with its interval."""

    def of(rate: Rate) -> str:
        value, low, high = (format_length(v) for v in (rate.mm_per_100h, rate.low, rate.high))
        return tr(
            "{value} per 100 h ({low} to {high}, {probability:.0f} times in 100)",
            value=value,
            low=low,
            high=high,
            probability=100 * rate.probability,
        )

    words = tr("The blade gap closes by {rate}.", rate=of(found.closing))
    if found.heel is not None and found.pip is not None:
        more = tr(
            "Of that the heel wears {heel} if the faces do not burn, and the pip grows {pip}.",
            heel=of(found.heel),
            pip=of(found.pip),
        )
    else:
        more = tr("Note where it opened, too, to tell the heel's part from the pip's.")
    return f"{words} {more}"


def usual_words() -> str:
    """Say how well readings are taken to be read where a sheet does not tell, instrument by instrument."""

    def of(role: Role) -> str:
        told = []
        for tool in instruments(role):
            wide = one_reading(tool.key)
            told.append(f"{tr(tool.name)} ±{format_length(wide) if role == 'blade' else format_angle(wide)}")
        return ", ".join(told)

    return tr(
        "Usual are: gap with {blades}; opening with straightedge and {rules}; firing with lamp and {discs}.",
        blades=of("blade"),
        rules=of("rule"),
        discs=of("disc"),
    )
