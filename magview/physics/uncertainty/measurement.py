"""Measuring with real instruments: what was read, what follows from it, and how sure that is.

Guide: theory-uncertainty.

The models of internal timing and of timing to the engine are in `magview.physics.uncertainty.setting_uncertainty`.
"""

from __future__ import annotations

from collections.abc import Callable
from copy import deepcopy
from dataclasses import dataclass, replace

import numpy as np

from magview.physics.uncertainty.instruments import Instrument, Role, finer
from magview.physics.uncertainty.monte_carlo import Agreement, Cancelled, MonteCarlo, compare, sample, summarise
from magview.physics.uncertainty.propagation import Contribution, Input, Linear, Model, propagate_each
from magview.spec.language import tr

TRIALS = 200_000
"""The least that JCGM 101 7.2.2 advises for intervals of 95 %."""

_HAIR = 1e-9
"""A reading at the very limit must not fail for the last bit."""


@dataclass(frozen=True)
class Quantity:
    """The quantity measured, with its limits [unit]."""

    key: str
    name: str
    unit: str
    low: float
    high: float


@dataclass(frozen=True)
class Reading:
    """One input of a measurement and what it was read with."""

    input: Input
    tool: Instrument | None
    """None for what no instrument of the list gives."""
    size: float
    """Unit of the instrument's half-width: 1, or the play or creep [deg] that it is a share of."""


@dataclass(frozen=True, eq=False)
class Measurement:
    """A measurement model with its readings: what `judge` and `judge_linear` take."""

    readings: tuple[Reading, ...]
    quantities: tuple[Quantity, ...]
    model: Model
    """Rows of inputs → rows of quantities."""

    @property
    def inputs(self) -> tuple[Input, ...]:
        """The inputs alone, in the order of the model's rows."""
        return tuple(reading.input for reading in self.readings)

    def using(self, other: Instrument) -> Measurement:
        """The same finding had it been read with another instrument of its role: best estimates as they are,
        other half-widths. Raises ValueError for a role that was not needed."""
        if not any(r.tool is not None and r.tool.role == other.role for r in self.readings):
            raise ValueError(tr("nothing was read with an instrument for {role}", role=other.role))
        exchanged = (
            Reading(_input(r.input.name, r.input.estimate, other, r.size), other, r.size)
            if r.tool is not None and r.tool.role == other.role
            else r
            for r in self.readings
        )
        return replace(self, readings=tuple(exchanged))


@dataclass(frozen=True)
class Outcome:
    """One quantity: its value, how sure it is, and why."""

    quantity: Quantity
    linear: Linear
    drawn: MonteCarlo | None
    """None until a Monte Carlo was run."""
    agreement: Agreement | None
    probability_in_limits: float
    """By Monte Carlo where there is one, else by the linear result [-]."""

    @property
    def matters_most(self) -> Contribution:
        """The reading with the largest share of the variance."""
        return self.linear.matters_most


@dataclass(frozen=True)
class Judgement:
    """All quantities of a measurement by both ways."""

    measurement: Measurement
    outcomes: tuple[Outcome, ...]
    """In the order of the measurement's quantities."""
    probability_in_limits: float
    """Of all quantities together, by Monte Carlo [-]."""

    @property
    def weakest(self) -> Outcome:
        """The quantity that is least sure to be in its limits."""
        return min(self.outcomes, key=lambda outcome: outcome.probability_in_limits)


@dataclass(frozen=True)
class Improvement:
    """The same readings with one instrument exchanged; both drawn from the same random numbers."""

    was: Instrument
    instead: Instrument
    before: Judgement
    after: Judgement


# ---------------------------------------------------------------------- judging


def judge_linear(measurement: Measurement, probability: float = 0.95) -> tuple[Outcome, ...]:
    """All quantities by linear propagation alone: at once, for every change of a reading.

    Parameters
    ----------
    measurement : what was read, with what.
    probability : of the expanded uncertainty [-].
    """
    linear = propagate_each(measurement.model, measurement.inputs, probability)
    return tuple(
        Outcome(q, result, None, None, result.probability_between(q.low - _HAIR, q.high + _HAIR))
        for q, result in zip(measurement.quantities, linear, strict=True)
    )


def judge(
    measurement: Measurement,
    rng: np.random.Generator,
    trials: int = TRIALS,
    probability: float = 0.95,
    *,
    significant_digits: int = 1,
    progress: Callable[[float], None] | None = None,
    should_stop: Callable[[], bool] | None = None,
) -> Judgement | Cancelled:
    """All quantities both ways, and the probability that the setting is in its limits.

    Parameters
    ----------
    measurement : what was read, with what.
    rng : where the randomness comes from.
    trials : number of draws [-].
    probability : of the intervals [-].
    significant_digits : digits of an uncertainty that matter, for the comparison of both ways [-].
    progress, should_stop : as for `magview.physics.uncertainty.propagation.monte_carlo`.
    """
    values = sample(measurement.model, measurement.inputs, trials, rng, progress=progress, should_stop=should_stop)
    if isinstance(values, Cancelled):
        return values
    outcomes, inside = [], np.ones(trials, dtype=bool)
    for outcome, row in zip(judge_linear(measurement, probability), values, strict=True):
        q, drawn = outcome.quantity, summarise(row, probability)
        good = (row >= q.low - _HAIR) & (row <= q.high + _HAIR)
        inside &= good
        agreement = compare(outcome.linear, drawn, significant_digits)
        outcomes.append(Outcome(q, outcome.linear, drawn, agreement, float(good.mean())))
    return Judgement(measurement, tuple(outcomes), float(inside.mean()))


def better_instrument(measurement: Measurement, outcome: Outcome) -> Instrument | None:
    """The next finer instrument for the role with the largest share of a quantity's variance.

    Inputs read with the same instrument count together; a role already at its finest is passed over. None if
    nothing can be read better.
    """
    shares: dict[Instrument, float] = {}
    for reading, line in zip(measurement.readings, outcome.linear.budget, strict=True):
        if reading.tool is not None:
            shares[reading.tool] = shares.get(reading.tool, 0.0) + line.share
    for tool in sorted(shares, key=lambda t: -shares[t]):
        better = finer(tool)
        if better is not None and shares[tool] > 0.0:
            return better
    return None


def improve(
    measurement: Measurement,
    rng: np.random.Generator,
    trials: int = TRIALS,
    probability: float = 0.95,
    *,
    instead: Instrument | None = None,
    significant_digits: int = 1,
    progress: Callable[[float], None] | None = None,
    should_stop: Callable[[], bool] | None = None,
) -> Improvement | Cancelled | None:
    """The same readings by another instrument.

    Parameters
    ----------
    measurement : what was read, with what.
    rng : where the randomness comes from; it is advanced by one of the two runs.
    trials, probability : as for `judge`.
    instead : the other instrument; left out: the one that `better_instrument` names for the weakest quantity.
    significant_digits, progress, should_stop : as for `judge`; each of the two runs is half the progress.

    Returns
    -------
    Both judgements; None where no finer instrument would help.

    Raises
    ------
    ValueError : nothing was read with an instrument of `instead`'s role.
    """
    if instead is not None:
        measurement.using(instead)  # refused before the work, not after half of it
    same = deepcopy(rng)

    def run(what: Measurement, source: np.random.Generator, start: float) -> Judgement | Cancelled:
        report = None if progress is None else lambda done: progress(start + done / 2)
        found = judge(
            what,
            source,
            trials,
            probability,
            significant_digits=significant_digits,
            progress=report,
            should_stop=should_stop,
        )
        return Cancelled(start + found.done / 2) if isinstance(found, Cancelled) else found

    before = run(measurement, rng, 0.0)
    if isinstance(before, Cancelled):
        return before
    other = instead or better_instrument(measurement, before.weakest)
    if other is None:
        return None
    after = run(measurement.using(other), same, 0.5)
    if isinstance(after, Cancelled):
        return after
    was = next(r.tool for r in measurement.readings if r.tool is not None and r.tool.role == other.role)
    return Improvement(was, other, before, after)


# ---------------------------------------------------------------------- reading


def take_reading(
    tools: tuple[Instrument, ...], role: Role, name: str, reading: float = 0.0, size: float = 1.0
) -> Reading:
    """A reading by the instrument of a role, in the instrument's unit.

    Parameters
    ----------
    tools : those given, one of each role.
    role : whose reading it is.
    name : what the reading is called in the budget.
    reading : what is read, before the instrument's offset [its unit].
    size : what an instrument "of the play" or "of the creep" is a share of [deg]; 1 for all others.

    Raises
    ------
    ValueError : there is no instrument of the role, or more than one.
    """
    found = [tool for tool in tools if tool.role == role]
    if len(found) != 1:
        raise ValueError(
            tr("{count} instruments are given for {role}; there must be one", count=len(found), role=role)
        )
    (tool,) = found
    return Reading(_input(name, reading + tool.offset * size, tool, size), tool, size)


def _input(name: str, estimate: float, tool: Instrument, size: float) -> Input:
    half = tool.half_width * abs(size)
    unit = tool.unit if tool.unit in ("mm", "deg") else "deg"
    return Input(
        name, estimate, half, "half-width", "rectangular", unit=unit, source=f"{tr(tool.name)}: {tr(tool.basis)}"
    )
