"""Uncertainty of a computed quantity: inputs and linear propagation (guide: theory-uncertainty).

A model takes an array of shape (inputs, n), one row an input in the order they are listed, and gives (n,) or,
for several quantities at once, (quantities, n). Inputs are independent, or normal with a correlation matrix; what
shares a source is best written as a function of it. The same models and inputs go to
`magview.physics.uncertainty.monte_carlo`.

References
----------
JCGM 100:2008, *Guide to the expression of uncertainty in measurement* (GUM).
JCGM 101:2008, *Supplement 1: Propagation of distributions using a Monte Carlo method*.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from math import inf, isfinite, isinf, sqrt
from statistics import NormalDist
from typing import Literal

import numpy as np
from numpy.typing import NDArray

from magview.spec.language import tr

Array = NDArray[np.float64]
Model = Callable[[Array], Array]
Matrix = Array | Sequence[Sequence[float]]
Distribution = Literal["normal", "t", "rectangular", "triangular", "arcsine"]

_DIVISOR = {"rectangular": sqrt(3.0), "triangular": sqrt(6.0), "arcsine": sqrt(2.0)}
"""Half-width over standard uncertainty (GUM 4.3.7, 4.3.9; JCGM 101 6.4.6)."""

_STEP, _WIDE_STEP = 0.01, 0.1
"""Steps of the central differences, in standard uncertainties; the wide one is for second and third derivatives."""


@dataclass(frozen=True)
class Input:
    """One input quantity and what is known of it. Raises ValueError for numbers that make no distribution.

    Parameters
    ----------
    name : what it is, for people.
    estimate : its best estimate, the distribution's middle [unit].
    spread : standard uncertainty or half-width of the distribution [unit], ≥ 0; 0 = taken as exact.
    spread_is : which of the two it is; "normal" and "t" have no half-width.
    distribution : its form. "t" is the one to take with a spread found from few readings: the Monte Carlo draws
        from the scaled t distribution (JCGM 101 6.4.9), whose deviation is larger than `spread`.
    dof : degrees of freedom of the standard uncertainty [-], ≥ 1. Those of a bounded form say how well its
        bounds are known (GUM G.4.2); the Monte Carlo takes the bounds as they are.
    unit : of estimate and spread.
    source : where the spread comes from.
    """

    name: str
    estimate: float
    spread: float
    spread_is: Literal["standard uncertainty", "half-width"] = "standard uncertainty"
    distribution: Distribution = "normal"
    dof: float = inf
    unit: str = ""
    source: str = ""

    def __post_init__(self) -> None:
        if not (isfinite(self.estimate) and isfinite(self.spread) and self.spread >= 0.0):
            raise ValueError(
                tr(
                    "{name}: {estimate} ± {spread} is no estimate with a spread",
                    name=self.name,
                    estimate=self.estimate,
                    spread=self.spread,
                )
            )
        if not self.dof >= 1.0:
            raise ValueError(
                tr(
                    "{name}: {dof} degrees of freedom; there must be at least 1",
                    name=self.name,
                    dof=self.dof,
                )
            )
        if self.spread_is == "half-width" and self.distribution not in _DIVISOR:
            raise ValueError(
                tr(
                    "{name}: a {distribution} distribution has no half-width",
                    name=self.name,
                    distribution=self.distribution,
                )
            )
        if self.distribution == "t" and isinf(self.dof):
            raise ValueError(tr("{name}: a t distribution needs its degrees of freedom", name=self.name))

    @classmethod
    def between(cls, name: str, low: float, high: float, unit: str = "", source: str = "") -> Input:
        """An input known to lie between two values [unit] and no more: rectangular (GUM 4.3.7)."""
        return cls(name, (low + high) / 2, (high - low) / 2, "half-width", "rectangular", inf, unit, source)

    @property
    def standard_uncertainty(self) -> float:
        """u(x) [unit]."""
        return self.spread / _DIVISOR[self.distribution] if self.spread_is == "half-width" else self.spread

    def draw(self, rng: np.random.Generator, out: Array) -> None:
        """Fill `out`, shape (n,), with independent draws [unit]. An exact input uses no random numbers."""
        if self.spread == 0.0:
            out.fill(self.estimate)
            return
        width = self.standard_uncertainty * _DIVISOR.get(self.distribution, 1.0)
        middle = self.estimate
        match self.distribution:
            case "normal":
                rng.standard_normal(out=out)
            case "t":
                out[:] = rng.standard_t(self.dof, len(out))
            case "arcsine":
                np.sin(2 * np.pi * rng.random(len(out)), out=out)
            case "rectangular":
                rng.random(out=out)
                width, middle = 2 * width, middle - width
            case "triangular":
                rng.random(out=out)
                out += rng.random(len(out))
                middle -= width
        out *= width
        out += middle


@dataclass(frozen=True)
class Contribution:
    """One line of a budget."""

    input: Input
    sensitivity: float
    """∂f/∂x at the estimates [unit of the quantity per unit of the input]."""
    uncertainty: float
    """|∂f/∂x|·u(x) [unit of the quantity]."""
    share: float
    """Its own variance over the combined one [-]; what the lines leave of 1 is second order or correlation."""


@dataclass(frozen=True)
class Linear:
    """A quantity by the law of propagation (GUM 5.1.2, annex G), in the quantity's unit."""

    estimate: float
    """The model at the inputs' estimates."""
    standard_uncertainty: float
    """Combined, u_c."""
    dof: float
    """Effective, by Welch–Satterthwaite (GUM G.4.1) [-]."""
    probability: float
    """Of the interval [-]."""
    coverage_factor: float
    """k of the t distribution at `dof` [-], interpolated and not cut to a whole number (GUM G.4.1, note 1)."""
    expanded_uncertainty: float
    """U = k·u_c."""
    budget: tuple[Contribution, ...]
    """In the order of the inputs."""

    @property
    def interval(self) -> tuple[float, float]:
        """Estimate ± U."""
        return self.estimate - self.expanded_uncertainty, self.estimate + self.expanded_uncertainty

    @property
    def matters_most(self) -> Contribution:
        """The line with the largest share."""
        return max(self.budget, key=lambda line: line.share)

    def probability_between(self, low: float, high: float) -> float:
        """Probability [-] of lying between two values, as if distributed like the t of `coverage_factor`."""
        if self.standard_uncertainty == 0.0:
            return float(low <= self.estimate <= high)
        ends = [(end - self.estimate) / self.standard_uncertainty for end in (low, high)]
        if isinf(self.dof):
            below = [NormalDist().cdf(end) for end in ends]
        else:
            from scipy.special import stdtr  # loads slowly, and only few quantities need it

            below = [float(stdtr(self.dof, end)) for end in ends]
        return below[1] - below[0]


# ---------------------------------------------------------------------- propagation


def propagate(
    model: Model,
    inputs: Sequence[Input],
    probability: float = 0.95,
    *,
    sensitivities: Sequence[float] | None = None,
    second_order: bool = False,
    correlation: Matrix | None = None,
) -> Linear:
    """Propagate uncertainty through a model of one quantity by its slopes.

    Parameters
    ----------
    model : the model; it is asked for all points at once.
    inputs : the inputs, in the order of the model's rows.
    probability : of the expanded uncertainty's interval [-], 0…1.
    sensitivities : ∂f/∂x of each input where they are known; left out: central differences.
    second_order : add the next terms of the variance's expansion (GUM 5.1.2, note), which are right for normal
        inputs. Degrees of freedom stay those of the first-order terms, as in GUM H.1.
    correlation : of the inputs [-], shape (inputs, inputs) (GUM 5.2.2); left out: independent. Correlated inputs
        come from the same readings and count as one component with their common degrees of freedom
        (R. Willink, Metrologia 44, 2007, 340–349).

    Raises
    ------
    ValueError : a probability outside 0…1, second-order terms that leave no variance or stand beside correlations,
        or a matrix that is none of correlations.
    """
    given = None if sensitivities is None else [sensitivities]
    (result,) = propagate_each(
        model, inputs, probability, sensitivities=given, second_order=second_order, correlation=correlation
    )
    return result


def propagate_each(
    model: Model,
    inputs: Sequence[Input],
    probability: float = 0.95,
    *,
    sensitivities: Sequence[Sequence[float]] | None = None,
    second_order: bool = False,
    correlation: Matrix | None = None,
) -> tuple[Linear, ...]:
    """As `propagate`, for a model of several quantities: one result each.

    Parameters
    ----------
    model, inputs, probability : as for `propagate`.
    sensitivities : ∂f/∂x, shape (quantities, inputs); left out: central differences.
    second_order, correlation : as for `propagate`.
    """
    r = correlations(inputs, correlation)
    if second_order and correlation is not None:
        raise ValueError(tr("second-order terms are for independent inputs"))
    x = np.array([item.estimate for item in inputs])
    u = np.array([item.standard_uncertainty for item in inputs])
    steps = np.diag(_STEP * u)
    points = x + np.concatenate([np.zeros((1, len(x))), steps, -steps])
    values = np.atleast_2d(model(points.T))
    if sensitivities is None:
        half = (values[:, 1 : len(x) + 1] - values[:, len(x) + 1 :]) / 2
        with np.errstate(invalid="ignore", divide="ignore"):
            slopes = np.where(u > 0.0, half / (_STEP * u), 0.0)
    else:
        slopes = np.array(sensitivities, dtype=float)
    more = _second_order(model, x, u) if second_order else np.zeros(len(values))
    return tuple(
        _combine(inputs, float(y[0]), c, float(extra), probability, r)
        for y, c, extra in zip(values, slopes, more, strict=True)
    )


def coverage_factor(probability: float, dof: float = inf) -> float:
    """k [-] such that ±k·u holds a given probability: the t distribution's (GUM G.3.2), normal at dof = ∞.

    Parameters
    ----------
    probability : [-], between 0 and 1.
    dof : degrees of freedom [-], ≥ 1; a broken number is interpolated.

    Raises
    ------
    ValueError : a number outside these bounds.
    """
    if not 0.0 < probability < 1.0 or not dof >= 1.0:
        raise ValueError(
            tr(
                "no coverage factor for a probability of {probability} and {dof} degrees of freedom",
                probability=probability,
                dof=dof,
            )
        )
    if isinf(dof):
        return NormalDist().inv_cdf((1 + probability) / 2)
    from scipy.special import stdtrit  # loads slowly, and only few quantities need it

    return float(stdtrit(dof, (1 + probability) / 2))


def correlations(inputs: Sequence[Input], given: Matrix | None) -> Array | None:
    """The correlation matrix, seen to be one; None for independent inputs.

    Raises ValueError for another shape, a diagonal that is not 1, no symmetry, a negative variance of some
    combination, and for correlated inputs that are not normal or differ in their degrees of freedom.
    """
    if given is None:
        return None
    r = np.asarray(given, dtype=float)
    if (
        r.shape != (len(inputs), len(inputs))
        or not np.array_equal(r, r.T)
        or (np.diag(r) != 1.0).any()
        or np.linalg.eigvalsh(r).min() < -1e-9
    ):
        raise ValueError(tr("these are no correlations: a symmetric matrix with 1 on its diagonal is needed"))
    for i, j in zip(*np.nonzero(np.triu(r, 1)), strict=True):
        if inputs[i].distribution != "normal" or inputs[j].distribution != "normal" or inputs[i].dof != inputs[j].dof:
            raise ValueError(
                tr(
                    "{one} and {other} are correlated: both must be normal, with the same degrees of freedom",
                    one=inputs[i].name,
                    other=inputs[j].name,
                )
            )
    return r


def _components(signed: Array, inputs: Sequence[Input], r: Array) -> Iterator[tuple[float, float]]:
    """Variance and degrees of freedom of each group of inputs that hang together by correlation."""
    left = set(range(len(inputs)))
    while left:
        group, grown = {left.pop()}, set[int]()
        while grown != group:
            grown = set(group)
            group |= {int(j) for i in grown for j in np.flatnonzero(r[i])}
        left -= group
        rows = sorted(group)
        yield float(signed[rows] @ r[np.ix_(rows, rows)] @ signed[rows]), inputs[rows[0]].dof


def _combine(
    inputs: Sequence[Input], y: float, slopes: Array, extra: float, probability: float, r: Array | None
) -> Linear:
    signed = slopes * np.array([item.standard_uncertainty for item in inputs])
    parts = [abs(float(part)) for part in signed]
    matrix = np.eye(len(inputs)) if r is None else r
    first = max(float(signed @ matrix @ signed), 0.0)
    variance = first + extra
    if variance < 0.0:
        raise ValueError(tr("the second-order terms leave no variance: the expansion does not hold for this model"))
    doubt = (
        sum((part / first) ** 2 / dof for part, dof in _components(signed, inputs, matrix)) if first > 0.0 else 0.0
    )
    dof = 1.0 / doubt if doubt > 0.0 else inf
    u, k = sqrt(variance), coverage_factor(probability, dof)
    budget = tuple(
        Contribution(item, float(c), part, part**2 / variance if variance > 0.0 else 0.0)
        for item, c, part in zip(inputs, slopes, parts, strict=True)
    )
    return Linear(y, u, dof, probability, k, k * u, budget)


def _second_order(model: Model, x: Array, u: Array) -> Array:
    """Σᵢⱼ (½ fᵢⱼ² + fᵢ fᵢⱼⱼ) uᵢ² uⱼ² of each quantity (GUM 5.1.2, note)."""
    spread = np.flatnonzero(u > 0.0)
    m, step = len(spread), _WIDE_STEP
    moves = (step * np.diag(u))[spread]
    side = np.array([-1.0, 0.0, 1.0])
    one = side[:, None, None, None, None] * moves[:, None, :]
    other = side[:, None, None, None] * moves[None, :, :]
    points = x + one + other  # side of i, side of j, i, j, input
    f = np.atleast_2d(model(points.reshape(-1, len(x)).T)).reshape(-1, 3, 3, m, m)
    mixed = (f[:, 2, 2] - f[:, 2, 0] - f[:, 0, 2] + f[:, 0, 0]) / (4 * step**2)
    bend = f[:, :, 2] - 2 * f[:, :, 1] + f[:, :, 0]
    third = (bend[:, 2] - bend[:, 0]) / (2 * step**3)
    first = (f[:, 2, 1] - f[:, 0, 1]) / (2 * step)
    return np.asarray((mixed**2 / 2 + first * third).sum(axis=(1, 2)))
