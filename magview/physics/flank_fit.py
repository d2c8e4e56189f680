"""The flank that trials tell of: one moves the file's curve, two fix it locally, more fit its rise and its lift.

Nobody has the drawing of their own cam. What is sought is the file's own flank with its lift and its rise scaled and
its index shifted,

    b(g) = b_designed + shift + r(s_top − g) − r(s_top − gap_designed),   r and s_top of the scaled profile,

so what is found can be saved as a magneto file that reads the same. The errors of a trial lie mostly along the
plate: contacts set to open a little off the mark are a plate that stands a little off. Residuals are therefore taken
in cam degrees, where they are alike all along the flank, and a gap known to lie between two blades is an interval
of the plate, taken as one.

References
----------
JCGM 100:2008: rectangular errors (4.3.7), combination (5.1.2), expansion (6.2.1).
R. T. Birge, "The calculation of errors by the method of least squares", Phys. Rev. 40 (1932) 207–227: intervals are
widened when the trials scatter more than their errors allow.
"""

from __future__ import annotations

from collections.abc import Sequence
from contextlib import suppress
from math import exp, sqrt
from statistics import NormalDist
from typing import Any

import numpy as np
from numpy.typing import ArrayLike, NDArray

from magview.physics.flank import Flank, scaled_magneto
from magview.physics.trials import MAX_TRIALS, Budget, Doubt, Trial
from magview.spec.base import SpecError
from magview.spec.frozen import frozen
from magview.spec.language import number, tr
from magview.spec.magneto import Condition, LawProfile, Magneto
from magview.spec.sources import noted

Array = NDArray[np.float64]

OUTLIER = 4.0
"""A trial so many standard deviations off the curve is left out; a rectangular error never exceeds √3 of its own."""

_TAIL = 3.0
"""Standard deviations beyond which a trial's pull on the curve falls off (Cauchy loss)."""

_LOOSE = 10.0
"""How many times as loosely the index is held once a trial tells of it."""

_STEP = 1e-4
"""Step of the differences in ln(lift scale), ln(rise scale) [-] and shift [deg]."""


@frozen
class Prediction:
    """The gap at plate positions [mm], in their shape, with the interval that holds it at the stated probability."""

    gap_mm: Array
    low_mm: Array
    high_mm: Array
    probability: float


class FlankFit:
    """The flank after some trials, made by `fit_flank`. Plate in cam degrees, gap on lobe 1 in millimetres."""

    def __init__(self, problem: _Problem, parameters: Array, covariance: Array, outliers: tuple[int, ...]) -> None:
        self.magneto, self.trials = problem.magneto, problem.trials
        self.budget, self.doubt = problem.budget, problem.doubt
        self.outliers = outliers
        """Indices of the trials left out: they lie off the curve of the others."""
        self.misfits = problem.misfits(parameters)
        """How far each trial lies off the curve, in its own standard deviations [-]; positive = gap too large."""
        self.lift_scale, self.rise_scale = exp(parameters[0]), exp(parameters[1])
        """Factors of the file's lift and rise [-]."""
        self.shift_deg = float(parameters[2])
        """Plate for the file's designed gap, less the file's [cam deg]."""
        sd = np.sqrt(np.diag(covariance))
        self.lift_scale_sd, self.rise_scale_sd = float(self.lift_scale * sd[0]), float(self.rise_scale * sd[1])
        self.shift_sd_deg = float(sd[2])
        self.covariance = covariance
        """Of ln(lift scale), ln(rise scale) [-] and shift [cam deg], shape (3, 3)."""
        self._flank = problem.flank(parameters)
        self._beside = [problem.beside(parameters, axis) for axis in (0, 1)]
        kept = [p for i, p in enumerate(problem.plates.tolist()) if i not in outliers]
        self.file_rise_deg = problem.flank(np.zeros(3)).curve.reach_deg[0]
        """How far the file's lift reaches before the top [cam deg]."""
        self.tried_deg = (min(kept), max(kept)) if kept else None
        """Lowest and highest plate of the trials kept, as they opened [deg]; None with none."""

    @property
    def full_gap_mm(self) -> float:
        """The gap of contacts that never close: the whole lift [mm]."""
        return float(self._flank.scale * self._flank.curve.top_mm)

    def predict(self, backplate_deg: ArrayLike, probability: float = 0.95, as_set: bool = False) -> Prediction:
        """The gap with the contacts set to open at the E-gap.

        Parameters
        ----------
        backplate_deg : plate [deg], any shape; positions outside the slot are computed all the same.
        probability : that the interval holds the gap [-], 0 < probability < 1.
        as_set : add the errors of setting, as the next trial will have them; else the curve's own alone.

        Returns
        -------
        Gaps and the ends of their intervals [mm], in the shape of `backplate_deg`.

        Raises
        ------
        ValueError : the probability is none.

        Notes
        -----
        The interval is the curve moved along the plate: it never falls below 0 nor exceeds the lift.
        """
        if not 0.0 < probability < 1.0:
            raise ValueError(
                tr(
                    "the probability is {probability}; it must lie between 0 and 1",
                    probability=number(probability, "g"),
                )
            )
        plate = np.asarray(backplate_deg, dtype=float) - self.shift_deg
        gap = self._flank.gap_mm(plate)
        sd = self.plate_sd_deg(gap, as_set)
        reach = NormalDist().inv_cdf((1.0 + probability) / 2) * sd
        return Prediction(gap, self._flank.gap_mm(plate - reach), self._flank.gap_mm(plate + reach), probability)

    def plate_for_deg(self, gap_mm: ArrayLike) -> Array:
        """Plate [deg] for gaps [mm], any shape, whether in the slot or not; NaN for gaps no plate gives."""
        gap = np.asarray(gap_mm, dtype=float)
        plate = self._flank.plate_deg(gap) + self.shift_deg
        return np.asarray(np.where((gap > 0) & (gap < self.full_gap_mm), plate, np.nan))

    def designed_gap_mm(self, backplate_deg: float) -> float:
        """The gap [mm] there with lobe 1 as new, for a designed setting at this plate [deg]."""
        as_new = Flank(self._flank.magneto.model_copy(update={"condition": Condition()}))
        return float(as_new.gap_mm(backplate_deg - self.shift_deg))

    def plate_sd_deg(self, gap_mm: ArrayLike, as_set: bool = False) -> Array:
        """Standard deviation of the plate for gaps [mm], any shape [deg]; `as_set`: errors of setting included."""
        gap = np.clip(np.asarray(gap_mm, dtype=float), 1e-3 * self.full_gap_mm, 0.999 * self.full_gap_mm)
        here = self._flank.plate_deg(gap)
        gradient = np.stack(
            [(flank.plate_deg(gap) - here) / step for flank, step in self._beside] + [np.ones_like(here)], axis=-1
        )
        variance = np.einsum("...i,ij,...j->...", gradient, self.covariance, gradient)
        setting = self.budget.setting_deg(self.magneto)[1] if as_set else 0.0
        return np.asarray(np.sqrt(variance + setting**2))

    def chance(self, backplate_deg: float, limits_mm: tuple[float, float]) -> float:
        """Probability [-] that a gap set with the plate there [deg] lies within limits [mm]."""
        sd = float(self.plate_sd_deg(self._flank.gap_mm(backplate_deg - self.shift_deg), as_set=True))
        low, high = (self._flank.plate_deg(np.array(limits_mm)) + self.shift_deg - backplate_deg) / max(sd, 1e-9)
        return NormalDist().cdf(float(high)) - NormalDist().cdf(float(low))


class _Problem:
    """The least-squares problem: misfits of the trials, and what holds lift, rise and index near the file's."""

    def __init__(self, magneto: Magneto, trials: Sequence[Trial], budget: Budget, doubt: Doubt) -> None:
        self.magneto, self.trials, self.budget, self.doubt = magneto, tuple(trials), budget, doubt
        self._flanks: dict[tuple[float, float], Flank | None] = {(0.0, 0.0): Flank(magneto)}
        own = self.flank(np.zeros(3))
        self.plates = np.array([t.plate_as_opened_deg(magneto) for t in trials])
        self.low = np.array([t.gap_low_mm for t in trials])
        self.high = np.array([t.gap_high_mm for t in trials])
        self.middle = np.array([t.middle_mm for t in trials])
        slope = own.slope_mm_per_deg(self.middle)
        setting_sd = budget.setting_deg(magneto)[1]
        self.sd = np.maximum(np.hypot(setting_sd, budget.blade_mm / sqrt(3) / slope), 1e-6)
        # Held so loosely once trials tell of it that the curve goes through them, yet never runs away.
        index_sd = doubt.index_deg / sqrt(3) * (_LOOSE if trials else 1.0)
        self.prior_sd = np.array([doubt.lift / sqrt(3), doubt.rise / sqrt(3), index_sd])

    def only(self, kept: Sequence[int]) -> _Problem:
        """The problem with some of the trials; curves already computed are shared."""
        part = object.__new__(_Problem)
        part.__dict__ = dict(self.__dict__, trials=tuple(self.trials[i] for i in kept))
        for name in ("plates", "low", "high", "middle", "sd"):
            setattr(part, name, getattr(self, name)[list(kept)])
        return part

    def _find(self, lift: float, rise: float) -> Flank | None:
        if (lift, rise) not in self._flanks:
            found = None
            if max(abs(lift), abs(rise)) <= 1.0:  # beyond it is a cam nothing like the file's
                with suppress(SpecError):
                    found = Flank(scaled_magneto(self.magneto, exp(lift), exp(rise)))
            if len(self._flanks) > 500:
                self._flanks = {(0.0, 0.0): self._flanks[0.0, 0.0]}
            self._flanks[lift, rise] = found
        return self._flanks[lift, rise]

    def flank(self, parameters: Array) -> Flank:
        found = self._find(float(parameters[0]), float(parameters[1]))
        assert found is not None  # the solver steps back from cams that cannot be
        return found

    def beside(self, parameters: Array, axis: int) -> tuple[Flank, float]:
        """The curve a small step off along lift (0) or rise (1), on a side where there is a cam, and the step."""
        for step in (_STEP, -_STEP):
            moved = parameters[:2] + step * np.eye(2)[axis]
            found = self._find(float(moved[0]), float(moved[1]))
            if found is not None:
                return found, step
        return self.flank(parameters), 1.0

    def misfits(self, parameters: Array) -> Array:
        """Per trial [its standard deviations]: positive = the gap is larger than the curve's. NaN for no such cam."""
        found = self._find(float(parameters[0]), float(parameters[1]))
        return np.full(len(self.trials), np.nan) if found is None else self._misfits(found, parameters[2])

    def _misfits(self, flank: Flank, shift: float) -> Array:
        base = self.plates - shift
        return deviance_root(
            (flank.plate_deg(self.low) - base) / self.sd, (flank.plate_deg(self.high) - base) / self.sd
        )

    def residuals(self, parameters: Array) -> Array:
        return np.concatenate([self.misfits(parameters), parameters / self.prior_sd])

    def jacobian(self, parameters: Array) -> Array:
        here = self.misfits(parameters)
        columns = []
        for axis in (0, 1):
            flank, step = self.beside(parameters, axis)
            columns.append((self._misfits(flank, parameters[2]) - here) / step)
        ahead, behind = (self._misfits(self.flank(parameters), parameters[2] + d) for d in (_STEP, -_STEP))
        columns.append((ahead - behind) / (2 * _STEP))
        return np.vstack([np.stack(columns, axis=-1).reshape(-1, 3), np.diag(1.0 / self.prior_sd)])

    def loss(self, z: Array) -> Array:
        """Cauchy for the trials, so that a wrong one pulls little; plain squares for what holds the file's values."""
        n, c2 = len(self.trials), _TAIL**2
        spread = 1.0 + z[:n] / c2
        out = np.zeros((3, len(z)))
        out[0], out[1] = z, 1.0
        out[:, :n] = c2 * np.log(spread), 1.0 / spread, -1.0 / (c2 * spread**2)
        return out

    def solve(self) -> Array:
        """The parameters of least cost, sought from the index of the likeliest trial and from plain least squares."""
        shifts = [0.0, *(self.plates - self.flank(np.zeros(3)).plate_deg(np.maximum(self.middle, 1e-3))).tolist()]
        start = min((np.array([0.0, 0.0, shift]) for shift in shifts), key=self.cost)
        # Plain squares see far trials, which the tails of the robust loss hide from a start that does not suit them.
        plain = self._descend(start, "linear")
        if np.abs(self.misfits(plain)).max() < 1.0:  # the two losses are all but the same there
            return plain
        return min((self._descend(begin, self.loss) for begin in (start, plain)), key=self.cost)

    def cost(self, parameters: Array) -> float:
        return float(self.loss(self.residuals(parameters) ** 2)[0].sum())

    def _descend(self, start: Array, loss: Any) -> Array:
        from scipy.optimize import least_squares  # loads slowly, and only trials need it

        found = least_squares(
            self.residuals, start, self.jacobian, loss=loss, x_scale=self.prior_sd, ftol=1e-9, max_nfev=60
        )
        return np.asarray(found.x)


def deviance_root(low: Array, high: Array) -> Array:
    """Signed square root of the deviance of a normal error known to lie in an interval [-].

    Parameters
    ----------
    low, high : ends of the interval in standard deviations [-], shape (n,), low ≤ high, infinite for none.

    Returns
    -------
    ±√(2 ln(largest P/P)) with P = Φ(high) − Φ(low) against the same interval centred on 0; shape (n,). The sign is
    that of the interval's middle. It is the error itself where the ends meet, and 0 well inside an open interval.
    """
    from scipy.special import log_ndtr

    out = np.empty_like(low)
    upper, lower = np.isinf(high), np.isinf(low)
    one = upper | lower
    satisfied = np.where(upper, -low, high)[one]
    out[one] = np.sqrt(-2.0 * log_ndtr(satisfied)) * np.where(upper, 1.0, -1.0)[one]
    middle, half = (high[~one] + low[~one]) / 2, (high[~one] - low[~one]) / 2
    off = np.abs(middle)

    def log_p(at: Array, w: Array) -> Array:
        near, far = log_ndtr(w - at), log_ndtr(-w - at)
        return np.asarray(near + np.log1p(-np.exp(np.minimum(far - near, -1e-300))))

    w = np.maximum(half, 1e-3)  # below it the interval is a point, and the difference of Φ loses its digits
    density = np.exp(-(w**2) / 2) / sqrt(2 * np.pi)
    steep = np.sqrt(2 * w * density / -np.expm1(log_ndtr(-w) + np.log(2.0)))
    with np.errstate(divide="ignore"):
        root = np.sqrt(np.maximum(2 * (log_p(np.zeros_like(w), w) - log_p(off, w)), 0.0))
    root = np.where(off < 1e-2, steep * off, root)
    out[~one] = np.sign(middle) * np.where(half < 1e-3, off, root)
    return out


def fit_flank(
    magneto: Magneto, trials: Sequence[Trial], budget: Budget | None = None, doubt: Doubt | None = None
) -> FlankFit:
    """The flank that the trials tell of, by robust least squares.

    Parameters
    ----------
    magneto : the file to begin with; its lobe 1 as its condition has it.
    trials : none to MAX_TRIALS, in the order they were made.
    budget : errors of a trial; None = the file's mark tolerance, with plain values for plate and blade.
    doubt : how far the file may be off; None = lift and rise by a fifth, index by 2°.

    Notes
    -----
    With no trial the answer is the file's flank and its doubt. With one it is moved to go through the trial; further
    ones bend it as far as their errors allow, and rise and lift are told apart by the third. The law of the cam's
    motion and its dwell stay the file's. A trial more than OUTLIER standard deviations off is left out if no more
    than one in three are and the rest agree. When the scatter is greater than the errors explain, all intervals grow.

    Raises
    ------
    ValueError : too many trials.
    SpecError : the file's own cam undercuts.
    """
    if len(trials) > MAX_TRIALS:
        raise ValueError(tr("{count} trials are given; at most {most} are used", count=len(trials), most=MAX_TRIALS))
    problem = _Problem(magneto, trials, budget or Budget.of(magneto), doubt or Doubt())
    if not trials:
        return FlankFit(problem, np.zeros(3), np.diag(problem.prior_sd**2), ())
    parameters = problem.solve()
    outliers: tuple[int, ...] = ()
    off = np.flatnonzero(np.abs(problem.misfits(parameters)) > OUTLIER)
    if 0 < 3 * len(off) <= len(trials):
        rest = problem.only([i for i in range(len(trials)) if i not in off])
        without = rest.solve()
        # Left out only where the rest agree: among trials that all contradict each other none can be named.
        if _scatter(rest, without)[1] > 0.01:
            parameters, outliers = without, tuple(off.tolist())
    kept = problem.only([i for i in range(len(trials)) if i not in outliers])
    return FlankFit(problem, parameters, _scatter(kept, parameters)[0], outliers)


def _scatter(problem: _Problem, parameters: Array) -> tuple[Array, float]:
    """Covariance of the parameters, shape (3, 3), and how likely scatter as great as the trials' is [-].

    From the curvature at the least cost; wider by Birge's ratio when the scatter is unlikely.
    """
    from scipy.special import chdtrc

    misfits = problem.misfits(parameters)
    jacobian = problem.jacobian(parameters)[: len(misfits)]
    information = jacobian.T @ jacobian
    covariance = np.linalg.inv(information + np.diag(problem.prior_sd**-2))
    used = float(np.trace(covariance @ information))
    freedom, squares = max(len(misfits) - used, 0.5), float(misfits @ misfits)
    likely = float(chdtrc(freedom, squares))
    return np.asarray(covariance * (max(1.0, squares / freedom) if likely < 0.05 else 1.0)), likely


def fitted_magneto(fit: FlankFit, name: str | None = None) -> Magneto:
    """A magneto file of one's own: the file with lift, rise and index as the trials tell them.

    Parameters
    ----------
    fit : from `fit_flank`.
    name : of the magneto; None = the file's, with how many trials it was fitted from.

    Notes
    -----
    Its readings at any plate are the fit's. Where the designed gap would lie outside the slot, the designed setting
    is the slot's end with the gap there, and the contact screw's 0 moves with it.

    Raises
    ------
    SpecError : no file can hold it, with the reason.
    """
    magneto, used = fit.magneto, len(fit.trials) - len(fit.outliers)
    trials = tr("1 trial") if used == 1 else tr("{count} trials", count=used)
    designed = magneto.designed_setting
    low, high = magneto.backplate.range_deg
    plate, gap = designed.backplate_deg + fit.shift_deg, designed.gap_mm
    if not low <= plate <= high:
        plate = min(max(plate, low), high)
        gap = fit.designed_gap_mm(plate)
    title = name or tr("{name}, fitted from {trials}", name=magneto.name[: 118 - len(trials) - 15], trials=trials)
    spread = NormalDist().inv_cdf(0.975)
    found = tr(
        "Fitted from {trials}: lift × {lift_scale} ± {lift_spread}, rise × {rise_scale} ± {rise_spread}, "
        "index {index}° ± {index_spread}° (95 in 100). Law of motion, dwell and fall are the first "
        "file's.",
        trials=trials,
        lift_scale=number(fit.lift_scale, 3),
        lift_spread=number(spread * fit.lift_scale_sd, 3),
        rise_scale=number(fit.rise_scale, 3),
        rise_spread=number(spread * fit.rise_scale_sd, 3),
        index=number(fit.shift_deg, "+.2f"),
        index_spread=number(spread * fit.shift_sd_deg, 2),
    )
    changed = (
        ("lift_mm", "rise_deg") if isinstance(magneto.cam.profile, LawProfile) else ("angle_deg", "contact_lift_mm")
    )
    fields = (*(f"cam.profile.{name}" for name in changed), "designed_setting")
    return scaled_magneto(
        magneto,
        fit.lift_scale,
        fit.rise_scale,
        name=title,
        notes=f"{found}\n{magneto.notes}".strip()[:4000],
        designed_setting={"backplate_deg": plate, "gap_mm": gap},
        sources=noted(magneto.sources, fields, "measured", tr("fitted from {trials}", trials=trials)),
    )
