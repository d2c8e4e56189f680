"""Uncertainty by propagation of distributions: the Monte Carlo way of `magview.physics.uncertainty.propagation`.

References
----------
JCGM 101:2008, *Supplement 1 to the GUM: Propagation of distributions using a Monte Carlo method*.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from math import nan, sqrt

import numpy as np

from magview.physics.uncertainty.propagation import Array, Input, Linear, Matrix, Model, correlations
from magview.spec.language import tr

_CHUNK = 1 << 15
"""Trials at a time: the inputs of a chunk stay in the processor's cache, and stopping takes milliseconds."""


@dataclass(frozen=True)
class MonteCarlo:
    """A quantity by propagation of distributions (JCGM 101 clause 7), in the quantity's unit.

    Trials in which the model gave no number (NaN) count as outside any limits; all else is of the others.
    """

    trials: int
    failed: int
    """Trials in which the model gave no number."""
    mean: float
    standard_uncertainty: float
    """Standard deviation of the values; NaN of fewer than two."""
    probability: float
    """Of both intervals [-]."""
    symmetric: tuple[float, float]
    """Interval with as much probability below as above it."""
    shortest: tuple[float, float]
    """The narrowest interval with that probability."""
    endpoint_error: tuple[float, float]
    """Standard errors of the ends of `symmetric` from the number of trials."""
    values: Array = field(repr=False, compare=False)
    """As drawn, shape (trials,); NaN where the model gave no number."""

    def probability_between(self, low: float, high: float) -> float:
        """Share of the trials between two values [-]."""
        return float(np.count_nonzero((self.values >= low) & (self.values <= high)) / self.trials)


@dataclass(frozen=True)
class Cancelled:
    """A run that was stopped before its end."""

    done: float
    """Share of the trials that had been drawn [-]."""


@dataclass(frozen=True)
class Agreement:
    """Whether the linear interval stands the comparison with the Monte Carlo's (JCGM 101 clause 8)."""

    agree: bool
    tolerance: float
    """δ: half a unit in the last meaningful digit of the standard uncertainty [unit of the quantity]."""
    low_difference: float
    high_difference: float
    """|difference| of the interval's ends [unit of the quantity]; agreement is both ≤ δ."""
    enough_trials: bool
    """Whether the ends are known well enough to say so: standard error ≤ δ/5 (JCGM 101 8.2 b)."""


def monte_carlo(
    model: Model,
    inputs: Sequence[Input],
    trials: int,
    rng: np.random.Generator,
    probability: float = 0.95,
    *,
    correlation: Matrix | None = None,
    progress: Callable[[float], None] | None = None,
    should_stop: Callable[[], bool] | None = None,
) -> MonteCarlo | Cancelled:
    """Propagate the inputs' distributions through a model of one quantity.

    Parameters
    ----------
    model : the model, asked for some thousand trials at a time.
    inputs : the inputs, in the order of the model's rows.
    trials : number of draws [-]; JCGM 101 7.2.2 advises 10⁴/(1 − probability) or more.
    rng : where the randomness comes from.
    probability : of the intervals [-], 0…1.
    correlation : of the inputs [-], as for `magview.physics.uncertainty.propagation.propagate` (JCGM 101 6.4.8).
    progress : called with the share done [-], 0…1, after each chunk; what it raises comes through.
    should_stop : asked before each chunk; true ends the run.

    Raises
    ------
    ValueError : too few trials for an interval of this probability.
    """
    values = sample(model, inputs, trials, rng, correlation=correlation, progress=progress, should_stop=should_stop)
    return values if isinstance(values, Cancelled) else summarise(values[0], probability)


def sample(
    model: Model,
    inputs: Sequence[Input],
    trials: int,
    rng: np.random.Generator,
    *,
    correlation: Matrix | None = None,
    progress: Callable[[float], None] | None = None,
    should_stop: Callable[[], bool] | None = None,
) -> Array | Cancelled:
    """Draw the quantities of a model: shape (quantities, trials), each in its unit. Parameters as for `monte_carlo`.

    Input by input within each chunk of 32,768 trials, so that the same generator gives the same values. Raises
    ValueError for less than one trial.
    """
    if trials < 1:
        raise ValueError(tr("a Monte Carlo of {trials} trials tells nothing; it takes at least 1", trials=trials))
    r = correlations(inputs, correlation)
    x = np.empty((len(inputs), min(_CHUNK, trials)))
    values = np.empty((0, trials))
    for start in range(0, trials, _CHUNK):
        if should_stop is not None and should_stop():
            return Cancelled(start / trials)
        end = min(start + _CHUNK, trials)
        for item, row in zip(inputs, x, strict=True):
            item.draw(rng, row[: end - start])
        if r is not None:
            _correlate(inputs, r, x[:, : end - start])
        y = np.atleast_2d(model(x[:, : end - start]))
        if start == 0:
            values = np.empty((len(y), trials))
        values[:, start:end] = y
        if progress is not None:
            progress(end / trials)
    return values


def summarise(values: Array, probability: float = 0.95) -> MonteCarlo:
    """Summary of the drawn values of one quantity, shape (trials,), in their unit; NaN is a failed trial.

    Intervals of a probability [-] by rank (JCGM 101 7.7): of q = pM values. Raises ValueError for too few values for
    them.
    """
    found = values[np.isfinite(values)]
    count = len(found)
    held = int(probability * count + 0.5)
    spare = count - held
    if not 0.0 < probability < 1.0 or (count > 0 and (spare < 1 or held < 1)):
        raise ValueError(
            tr(
                "{count} values are too few for an interval of probability {probability}",
                count=count,
                probability=probability,
            )
        )
    if count == 0:
        nothing = (nan, nan)
        return MonteCarlo(len(values), len(values), nan, nan, probability, nothing, nothing, nothing, values)
    # The ends of the interval lie among the `spare` lowest and highest values: only those are put in order.
    parted = np.partition(found, (spare - 1, held)) if spare <= held else np.sort(found)
    low, high = np.sort(parted[:spare]), np.sort(parted[held:])
    rank = (spare + 1) // 2 - 1
    tightest = int(np.argmin(high - low))
    # One standard deviation of a rank to either side.
    away = max(1, round(sqrt((rank + 1) * (1 - (rank + 1) / count))))
    before, after = max(rank - away, 0), min(rank + away, spare - 1)
    return MonteCarlo(
        trials=len(values),
        failed=len(values) - count,
        mean=float(found.mean()),
        standard_uncertainty=float(found.std(ddof=1)) if count > 1 else nan,
        probability=probability,
        symmetric=(float(low[rank]), float(high[rank])),
        shortest=(float(low[tightest]), float(high[tightest])),
        endpoint_error=(float(low[after] - low[before]) / 2, float(high[after] - high[before]) / 2),
        values=values,
    )


def numerical_tolerance(standard_uncertainty: float, significant_digits: int = 2) -> float:
    """δ (JCGM 101 7.9.2): half a unit in the last of so many digits of a standard uncertainty, in its unit.

    Raises ValueError unless the standard uncertainty is above 0.

    Examples
    --------
    >>> numerical_tolerance(0.00035)
    5e-06
    """
    if not standard_uncertainty > 0.0:
        raise ValueError(
            tr(
                "a standard uncertainty of {uncertainty} has no digits",
                uncertainty=standard_uncertainty,
            )
        )
    exponent = int(f"{standard_uncertainty:.{significant_digits - 1}e}".split("e")[1])
    return float(f"5e{exponent - significant_digits}")


def compare(linear: Linear, drawn: MonteCarlo, significant_digits: int = 2) -> Agreement:
    """Hold the linear interval against the Monte Carlo's symmetric one (JCGM 101 8.1).

    Parameters
    ----------
    linear, drawn : the same quantity both ways, with the same probability.
    significant_digits : digits of the standard uncertainty that matter [-], 1 or 2.

    Raises
    ------
    ValueError : the probabilities differ.
    """
    if linear.probability != drawn.probability:
        raise ValueError(
            tr(
                "intervals of {probability} and {other} cannot be compared",
                probability=linear.probability,
                other=drawn.probability,
            )
        )
    u = drawn.standard_uncertainty
    tolerance = numerical_tolerance(u, significant_digits) if u > 0.0 else 0.0
    low, high = (abs(a - b) for a, b in zip(linear.interval, drawn.symmetric, strict=True))
    return Agreement(
        agree=low <= tolerance and high <= tolerance,
        tolerance=tolerance,
        low_difference=low,
        high_difference=high,
        enough_trials=max(drawn.endpoint_error) <= tolerance / 5,
    )


def _correlate(inputs: Sequence[Input], r: Array, x: Array) -> None:
    """Mix independent normal rows so that they have the correlations `r`; rows of their own stay as drawn."""
    rows = np.flatnonzero((r != np.eye(len(r))).any(axis=1))
    if not len(rows):
        return
    middle = np.array([[inputs[i].estimate] for i in rows.tolist()])
    u = np.array([[inputs[i].standard_uncertainty or 1.0] for i in rows.tolist()])
    # Of a matrix that is just semidefinite the square root exists where Cholesky's factor may not.
    values, vectors = np.linalg.eigh(r[np.ix_(rows, rows)])
    root = vectors * np.sqrt(np.clip(values, 0.0, None)) @ vectors.T
    x[rows] = middle + u * (root @ ((x[rows] - middle) / u))
