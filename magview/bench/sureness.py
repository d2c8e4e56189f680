"""Uncertainty of a setting: readings of the bench by instruments, and a measurement in words.

Guide: theory-uncertainty.
"""

from __future__ import annotations

import math
from collections.abc import Sequence

from magview.bench.state import BenchState, firing_btdc_deg, readings
from magview.physics.uncertainty.instruments import Instrument, Role, instruments, passing_blade_mm
from magview.physics.uncertainty.measurement import Improvement, Outcome
from magview.physics.uncertainty.monte_carlo import Agreement
from magview.physics.uncertainty.setting_uncertainty import EngineReadings, InternalReadings
from magview.spec.base import SpecError
from magview.spec.language import format_angle, format_length, marked, tr

INTERNAL_ROLES: tuple[Role, ...] = (
    "rule", "straightedge", "blade", "feel", "opening", "rotor turning", "lead-in", "tightening",
)  # fmt: skip
ENGINE_ROLES: tuple[Role, ...] = ("disc", "opening", "crank turning", "lead-in")

ROLE_WORDS: dict[Role, str] = {
    "rule": marked("Reading the offset"),
    "straightedge": marked("Straightedge"),
    "blade": marked("Feeler blades"),
    "feel": marked("Drag of the blade"),
    "opening": marked("Opening shown by"),
    "rotor turning": marked("Turning the rotor"),
    "crank turning": marked("Turning the crank"),
    "disc": marked("Crank disc"),
    "lead-in": marked("Play"),
    "tightening": marked("Tightening"),
}
"""Label of a role beside its list of instruments."""


NEVER_OPENS = marked("with this setting the contacts never open and close, so there is nothing to read")


def tool_for(role: Role, tools: Sequence[Instrument]) -> Instrument:
    """The instrument of a role, the coarsest of the list where none is chosen."""
    return next((tool for tool in tools if tool.role == role), instruments(role)[0])


def read_internal(state: BenchState, tools: Sequence[Instrument]) -> InternalReadings:
    """Readings of lobe 1 by these instruments, as it is set now. Raises SpecError where it never opens."""
    result = readings(state)
    offset = float(result.mark_offset_mm)
    if not math.isfinite(offset):
        raise SpecError(tr(NEVER_OPENS))
    division = 2.0 * tool_for("rule", tools).half_width
    step = 2.0 * tool_for("blade", tools).half_width
    return InternalReadings(
        mark_offset_mm=round(offset / division) * division,
        # The thickest blade that passes.
        blade_mm=passing_blade_mm(float(result.blade_gap_mm[0]), step),
        screw_deg=state.screw_deg,
        instruments=tuple(tool_for(role, tools) for role in INTERNAL_ROLES),
    )


def read_engine(state: BenchState, tools: Sequence[Instrument]) -> EngineReadings:
    """Readings of both magnetos on a disc set to zero at top dead centre, with a stop at 40° to either side.

    Raises SpecError without an engine or where the contacts never open.
    """
    if state.engaged is None:
        raise SpecError(tr("this magneto is not on an engine: open an installation first"))
    single = state.engaged.installation.position == "single"
    left, right = firing_btdc_deg(state, "left"), firing_btdc_deg(state, "right")
    if not math.isfinite(left):
        raise SpecError(tr(NEVER_OPENS))
    division = 2.0 * tool_for("disc", tools).half_width
    return EngineReadings(
        stop_deg=(40.0, -40.0),
        left_deg=round(left / division) * division,
        right_deg=None if single else round(right / division) * division,
        gap_mm=float(readings(state).max_gap_mm[0]),
        instruments=tuple(tool_for(role, tools) for role in ENGINE_ROLES),
    )


def value_words(value: float, unit: str) -> str:
    """A value [mm if so, else deg] with its unit, to as many places as such a measurement can have."""
    if unit == "mm":
        return format_length(value)
    return format_angle(value)


def percent_words(probability: float) -> str:
    """A probability [-] as people say it: never 0 % or 100 %, which instruments do not tell, nor draws that end."""
    percent = 100.0 * probability
    if percent < 0.5:
        return tr("under 1 %")
    if percent > 99.5:
        return tr("over 99 %")
    return tr("{percent:.0f} %", percent=percent)


def outcome_words(outcome: Outcome) -> str:
    """One quantity: value, expanded uncertainty, limits, and how likely it is within them."""
    q, linear = outcome.quantity, outcome.linear
    value = value_words(linear.estimate, q.unit)
    spread = value_words(linear.expanded_uncertainty, q.unit)
    low, high = (value_words(v, q.unit) for v in (q.low, q.high))
    return tr(
        "{name}: {value} ± {spread} (k = {k:.2f}); limits {low} to {high}: {percent} likely within them.",
        name=f"{q.name[0].upper()}{q.name[1:]}",
        value=value,
        spread=spread,
        k=linear.coverage_factor,
        low=low,
        high=high,
        percent=percent_words(outcome.probability_in_limits),
    )


def matters_words(outcome: Outcome) -> str:
    """The reading that matters most for a quantity."""
    line = outcome.matters_most
    return tr(
        "What matters most: {name}, {share} of the variance ({source}).",
        name=line.input.name,
        share=percent_words(line.share),
        source=line.input.source,
    )


def improvement_words(found: Improvement) -> str:
    """The gain by a better instrument."""
    before, after = found.before.probability_in_limits, found.after.probability_in_limits
    return tr(
        "With {instead} instead of {was}: {after} likely all in limits, now {before}.",
        instead=tr(found.instead.name),
        was=tr(found.was.name),
        after=percent_words(after),
        before=percent_words(before),
    )


_AGREEMENT = {
    (True, True): marked(
        "linear and Monte Carlo agree: the ends of their intervals differ by {worst:.2g} at most, where "
        "{tolerance:.2g} is allowed"
    ),
    (True, False): marked(
        "linear and Monte Carlo agree: the ends of their intervals differ by {worst:.2g} at most, where "
        "{tolerance:.2g} is allowed; more trials are needed to be sure"
    ),
    (False, True): marked(
        "linear and Monte Carlo disagree: the ends of their intervals differ by {worst:.2g} at most, where "
        "{tolerance:.2g} is allowed"
    ),
    (False, False): marked(
        "linear and Monte Carlo disagree: the ends of their intervals differ by {worst:.2g} at most, where "
        "{tolerance:.2g} is allowed; more trials are needed to be sure"
    ),
}
"""By whether they agree, and whether there were trials enough to say so."""


def agreement_words(found: Agreement) -> str:
    """Whether the linear interval stands the comparison with the Monte Carlo's."""
    worst = max(found.low_difference, found.high_difference)
    return tr(_AGREEMENT[found.agree, found.enough_trials], worst=worst, tolerance=found.tolerance)
