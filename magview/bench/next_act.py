"""Next act for a measured setting: leave it, read it again more finely, or set it. Guide: theory-uncertainty.

The chance that all is within limits decides; without a Monte Carlo its floor does: one less the sum of all doubts
(Boole's inequality), which holds however the quantities depend on one another.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum

from magview.bench.sureness import ROLE_WORDS, value_words
from magview.physics.uncertainty.instruments import Instrument
from magview.physics.uncertainty.measurement import (
    Judgement,
    Measurement,
    Outcome,
    better_instrument,
    judge_linear,
)
from magview.spec.language import marked, tr

SURE = 0.95
"""Chance from which a setting is good enough, and doubt from which it is out."""


class Act(Enum):
    """Next act."""

    LEAVE = "leave"
    READ_AGAIN = "read-again"
    SET_NEARER = "set-nearer"
    """No finer instrument would tell: the quantity lies too near a limit."""
    SET = "set"


@dataclass(frozen=True)
class NextAct:
    """Next act, and for which quantity."""

    act: Act
    weakest: Outcome
    tools: tuple[Instrument, ...] = ()
    """Finer instruments, the one that helps most first; with all of them the same finding would be good enough."""
    alone: bool = False
    """Whether each quantity alone is sure enough, and all of them together are not."""


def least_chance(outcomes: tuple[Outcome, ...]) -> float:
    """Floor of the chance that all quantities are within limits [-]."""
    return max(0.0, 1.0 - sum(1.0 - outcome.probability_in_limits for outcome in outcomes))


def next_act(measurement: Measurement, outcomes: tuple[Outcome, ...], judgement: Judgement | None = None) -> NextAct:
    """Next act for a measurement with its outcomes, by the Monte Carlo where there is one."""
    weakest = min(outcomes, key=lambda outcome: outcome.probability_in_limits)
    chance = judgement.probability_in_limits if judgement is not None else least_chance(outcomes)
    if chance >= SURE:
        return NextAct(Act.LEAVE, weakest)
    q, estimate = weakest.quantity, weakest.linear.estimate
    if weakest.probability_in_limits <= 1.0 - SURE or not q.low <= estimate <= q.high:
        return NextAct(Act.SET, weakest)
    alone = weakest.probability_in_limits >= SURE
    tools = _enough(measurement, weakest)
    return NextAct(Act.READ_AGAIN if tools else Act.SET_NEARER, weakest, tools, alone)


def _enough(measurement: Measurement, weakest: Outcome) -> tuple[Instrument, ...]:
    """Finer instruments with which the same finding would be good enough; none where the finest are not."""
    found: dict[str, Instrument] = {}
    while (tool := better_instrument(measurement, weakest)) is not None:
        found[tool.role] = tool
        measurement = measurement.using(tool)
        outcomes = judge_linear(measurement)
        if least_chance(outcomes) >= SURE:
            return tuple(found.values())
        weakest = min(outcomes, key=lambda outcome: outcome.probability_in_limits)
    return ()


HEADS = {
    Act.LEAVE: marked("✓ Good enough: leave it."),
    Act.READ_AGAIN: marked("▲ Not sure enough yet: read it again."),
    Act.SET_NEARER: marked("▲ Too near a limit to be sure: set it nearer to the middle."),
    Act.SET: marked("✗ Out of limits, as far as was read: set it again."),
}


def act_words(found: NextAct) -> str:
    """The act, in one sentence or two: with what to read again, or to which limits to set."""
    q = found.weakest.quantity
    low, high = value_words(q.low, q.unit), value_words(q.high, q.unit)
    name = f"{q.name[0].upper()}{q.name[1:]}"
    match found.act:
        case Act.LEAVE:
            return tr("The readings prove the setting. Touching it again can only make it worse.")
        case Act.READ_AGAIN:
            steps = "; ".join(f"{tr(ROLE_WORDS[tool.role])}: {tr(tool.name)}" for tool in found.tools)
            told = tr("{name}, read again like this. {steps}.", name=name, steps=steps)
            return f"{told} {tr(_ALONE)}" if found.alone else told
        case Act.SET_NEARER:
            return tr("{name}: limits {low} to {high}. Finer instruments would not settle it.",
                      name=name, low=low, high=high)  # fmt: skip
        case Act.SET:
            value = value_words(found.weakest.linear.estimate, q.unit)
            return tr("{name}: {value}; limits {low} to {high}.", name=name, value=value, low=low, high=high)


_ALONE = marked("Each reading alone is sure enough, all of them together are not.")


def matters_plainly(found: NextAct) -> str:
    """The reading that matters most, without a number."""
    return tr("The reading that matters most: {name}.", name=found.weakest.matters_most.input.name)
