"""The flank that trials tell of: the file's own, scaled in lift and rise and moved along the plate, weighed by Bayes.

Nobody has the drawing of their own cam. With B(u) the file's cam degrees before the top at which the gap is the
share u of the whole lift, what is sought is

    b(g) = b_designed + shift + rise·(B(g/lift) − B(g_designed/lift)),

three unknown numbers. They are looked at on a fixed grid: each point of it is weighed by how likely the trials are
there, and every answer (the gap at a plate, its interval, the chance of being in limits) is a sum over the grid. So
intervals are neither assumed normal nor made from a slope, and a gap that lies between two blades is just that.
The errors of a trial lie along the plate: contacts set to open a little off the mark are a plate a little off.

References
----------
JCGM 101:2008, 6.4.2 (rectangular errors); JCGM 106:2012, 6 (the state of knowledge after measuring, by Bayes).
G. E. P. Box, G. C. Tiao, "A Bayesian approach to some outlier problems", Biometrika 55 (1968) 119–129: a reading is
with a small probability a blunder.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache
from itertools import permutations
from math import sqrt

import numpy as np
from numpy.typing import ArrayLike, NDArray

from magview.physics.trials.flank import Flank, scaled_magneto
from magview.physics.trials.trial import MAX_TRIALS, ReadingErrors, Trial
from magview.spec.base import SpecError
from magview.spec.cam import LawProfile
from magview.spec.language import tr, tr_n
from magview.spec.magneto import Condition, Magneto
from magview.spec.sources import noted

Array = NDArray[np.float64]

SCALE_SD = 0.115
"""Standard deviation of lift and rise about the file's [-]: of errors spread evenly over a fifth to each side."""
SHIFT_SCALE_DEG, SHIFT_FREEDOM = 1.5, 3.0
"""The index about the file's: Student's t of this scale [deg]; its tails let a file be far wrong."""
BLUNDER = 0.005
"""Probability, before it is looked at, that a trial is a slip of the hand that says nothing [-]."""
CLOSEST_DEG = 0.1
"""Plates read closer than this count as read so [deg]: the grid of lift and rise is no finer."""

_SCALES = np.linspace(-0.3, 0.3, 9) + 1.0
_STEPS = 800
"""Steps of the grid along the plate in the file's whole rise."""
_GAPS = 100


@dataclass(frozen=True)
class Prediction:
    """The gap at plate positions [mm], in their shape, with the interval that holds it at the stated probability."""

    gap_mm: Array
    low_mm: Array
    high_mm: Array
    probability: float


class _Spread:
    """Errors along the plate, each rectangular: probabilities on steps of the grid, and how many lie below."""

    def __init__(self, half_widths_deg: Sequence[float], step_deg: float) -> None:
        weights = np.ones(1)
        for half in half_widths_deg:
            count = int(np.ceil(half / step_deg + 0.5))
            edges = (np.arange(-count, count + 2) - 0.5) * step_deg
            within = np.clip(edges, -half, half) if half > 0 else np.sign(edges)
            weights = np.convolve(weights, np.diff(within))
        self.weights = weights / weights.sum()
        middle = len(weights) // 2
        self._edges = (np.arange(len(weights) + 1) - middle - 0.5) * step_deg
        self._below = np.r_[0.0, np.cumsum(self.weights)]

    def below(self, error_deg: Array) -> Array:
        """Probability of an error below [deg], any shape."""
        return np.interp(error_deg, self._edges, self._below)


@lru_cache(maxsize=8)
def _file_flank(magneto: Magneto) -> Flank:
    return Flank(magneto)


class FlankFit:
    """The flank after some trials, made by `fit_flank`. Plate in cam degrees, gap on lobe 1 in millimetres."""

    def __init__(self, magneto: Magneto, trials: Sequence[Trial], errors: ReadingErrors) -> None:
        self.magneto, self.trials, self.errors = magneto, tuple(trials), errors
        self._file = file = _file_flank(magneto)
        self._lift, self._rise = (scale.ravel() for scale in np.meshgrid(_SCALES, _SCALES))
        self._step = step = file.curve.reach_deg[0] / _STEPS
        mark, plate = errors.mark_deg(magneto), max(errors.plate_deg, CLOSEST_DEG)
        beside = magneto.designed_setting.backplate_deg + np.array([-0.05, 0.05])
        slope = float(np.diff(file.gap_mm(beside))[0]) / 0.1
        self._setting = _Spread((mark, plate), step)
        self._reading = _Spread((mark, plate, errors.blade_mm / max(slope, 1e-4)), step)
        self.plates = np.array([t.plate_as_opened_deg(magneto) for t in self.trials])
        self._weigh()

    # ------------------------------------------------------------------ the grid

    def _places(self, gap_mm: ArrayLike) -> Array:
        """Plate [deg] for gaps [mm], shape (n,), less the shift, for every lift and rise: shape (scales, n)."""
        gap, file = np.asarray(gap_mm, dtype=float), self._file
        designed = self.magneto.designed_setting
        lift = self._lift[:, None]
        top = file.curve.top_mm
        level = top - np.maximum(gap, 0.0) / (lift * file.scale)
        before = np.where(level > 0, file.curve.before_top_deg(np.where(level > 0, level, top)), np.inf)
        before = np.where(gap > 0, before, -np.inf)
        as_designed = file.curve.before_top_deg(np.maximum(top - designed.gap_mm / lift, 0.0))
        return np.asarray(designed.backplate_deg - file.late_deg + self._rise[:, None] * (before - as_designed))

    def _weigh(self) -> None:
        """The weight of every scale and shift, and of every trial being a blunder."""
        step = self._step
        spans = [
            (self._places([t.gap_low_mm]), self._places([t.gap_high_mm]), plate)
            for t, plate in zip(self.trials, self.plates.tolist(), strict=True)
        ]
        ends = [-12.0, 12.0] + [
            plate - float(end) for *both, plate in spans for e in both for end in e[np.isfinite(e)]
        ]
        first, last = np.floor(max(min(ends), -40.0) / step) - 40, np.ceil(min(max(ends), 40.0) / step) + 40
        shifts = np.arange(first, last + 1) * step
        log_prior = -0.5 * ((self._lift - 1.0) ** 2 + (self._rise - 1.0) ** 2)[:, None] / SCALE_SD**2 - (
            (SHIFT_FREEDOM + 1) / 2
        ) * np.log1p((shifts / SHIFT_SCALE_DEG) ** 2 / SHIFT_FREEDOM)
        clean = np.zeros_like(log_prior)
        log_weight, slips = log_prior.copy(), []
        for low, high, plate in spans:
            off = shifts - plate
            low, high = np.clip(low, -1e3, 1e3), np.clip(high, -1e3, 1e3)
            wider = np.maximum(step - (high - low), 0.0) / 2  # a plain value is a step of the grid wide
            likely = self._reading.below(high + off + wider) - self._reading.below(low + off - wider)
            # A slip reads anything that the lobe can give.
            reach = self._file.curve.reach_deg[0]
            slip = (np.clip(high, -reach, reach) - np.clip(low, -reach, reach) + step) / (2 * reach)
            both = (1 - BLUNDER) * likely + BLUNDER * slip
            slips.append(BLUNDER * slip / both)
            log_weight += np.log(both)
            with np.errstate(divide="ignore"):
                clean += np.log((1 - BLUNDER) * likely) - np.log(both)
        weight = np.exp(log_weight - log_weight.max())
        weight /= weight.sum()
        self.slip = np.array([float((weight * s).sum()) for s in slips])
        """Probability that each trial is a blunder [-]."""
        self.agree = float((weight * np.exp(clean)).sum())
        """Probability that no trial is a blunder [-]."""
        below = np.cumsum(weight.sum(axis=0))
        low, high = np.searchsorted(below, [5e-4, 1 - 5e-4])  # the rest costs time and says nothing
        kept = slice(low, high + 1)
        self._shifts, self._weight = shifts[kept], weight[:, kept] / weight[:, kept].sum()
        self._set_means()

    def _set_means(self) -> None:
        by_scale, by_shift = self._weight.sum(axis=1), self._weight.sum(axis=0)

        def mean(values: Array, weight: Array) -> tuple[float, float]:
            middle = float(values @ weight)
            return middle, sqrt(max(float((values - middle) ** 2 @ weight), 0.0))

        self.lift_scale, self.lift_scale_sd = mean(self._lift, by_scale)
        self.rise_scale, self.rise_scale_sd = mean(self._rise, by_scale)
        self.shift_deg, self.shift_sd_deg = mean(self._shifts, by_shift)

    # ------------------------------------------------------------------ what it answers

    @property
    def full_gap_mm(self) -> float:
        """The gap of contacts that never close: the whole lift [mm]."""
        return self.lift_scale * self._file.scale * self._file.curve.top_mm

    @property
    def contradictory(self) -> bool:
        """Whether the trials more likely than not fit neither one another nor the file, and none can be named."""
        return not self.outliers and self.agree < 0.5

    @property
    def outliers(self) -> tuple[int, ...]:
        """Indices of the trials that more likely than not are blunders; none where that were more than a third."""
        found = np.flatnonzero(self.slip > 0.5)
        return tuple(found.tolist()) if 3 * len(found) <= len(self.trials) else ()

    def below(self, gap_mm: ArrayLike, backplate_deg: ArrayLike, as_set: bool = False) -> Array:
        """Probability that the gap is at most `gap_mm` with the plate there.

        Parameters
        ----------
        gap_mm : gaps [mm], shape (n,).
        backplate_deg : plates [deg], shape (m,), in the slot or not.
        as_set : with the errors of plate and opening, as the next trial will have them; else with both exact.

        Returns
        -------
        Probabilities [-], shape (n, m).
        """
        gaps, plates = np.atleast_1d(np.asarray(gap_mm, float)), np.atleast_1d(np.asarray(backplate_deg, float))
        step, spread = self._step, self._setting.weights if as_set else np.ones(1)
        pad = len(spread) + 2
        first = int(np.floor(plates.min() / step)) - pad
        count = int(np.ceil(plates.max() / step)) + pad + 1 - first
        places = np.rint(np.clip(self._places(gaps) / step, -1e6, 1e6)).astype(np.intp)
        shifts = np.rint(self._shifts / step).astype(np.intp)
        where = np.clip(places[:, :, None] + (shifts - first)[None, None, :], 0, count - 1)
        where += count * np.arange(len(gaps))[None, :, None]
        weight = np.broadcast_to(self._weight[:, None, :], where.shape)
        mass = np.bincount(where.ravel(), weight.ravel(), count * len(gaps)).reshape(len(gaps), count)
        # The gap is at most g where the plate that gives g stands no less far with rotation.
        above = np.cumsum(mass[:, ::-1], axis=1)[:, ::-1] - mass / 2
        if as_set:
            ends = [(0, 0), (len(spread) // 2,) * 2]
            above = np.stack([np.convolve(a, spread, "valid") for a in np.pad(above, ends, "edge")])
        at = plates / step - first
        left = np.floor(at).astype(np.intp)
        share = at - left
        return np.asarray(above[:, left] * (1 - share) + above[:, left + 1] * share)

    def predict(self, backplate_deg: ArrayLike, probability: float = 0.95, as_set: bool = False) -> Prediction:
        """The gap with the contacts set to open at the E-gap.

        Parameters
        ----------
        backplate_deg : plate [deg], any shape; positions outside the slot are computed all the same.
        probability : that the interval holds the gap [-], 0 < probability < 1.
        as_set : add the errors of setting, as the next trial will have them; else the curve's own alone.

        Returns
        -------
        Gaps (as likely too large as too small; the file's own before any trial) and the ends of their intervals
        [mm], in the shape of `backplate_deg`. Between two trials on both sides of a limit the interval is never
        wider than what they bracket, for the gap grows with the plate.

        Raises
        ------
        ValueError : the probability is none.
        """
        if not 0.0 < probability < 1.0:
            raise ValueError(
                tr(
                    "the probability is {probability}; it must lie between 0 and 1",
                    probability=probability,
                )
            )
        plates = np.asarray(backplate_deg, dtype=float)
        flat = plates.ravel()
        gaps = np.linspace(1e-6, _SCALES[-1] * self._file.scale * self._file.curve.top_mm, _GAPS)
        rough = self.below(gaps, flat, as_set)
        # Once more where it matters, that the steps do not widen what is narrow.
        some = np.flatnonzero(((rough > 1e-3) & (rough < 1 - 1e-3)).any(axis=1))
        first, last = (some[0], some[-1]) if len(some) else (0, len(gaps) - 1)
        gaps = np.linspace(gaps[max(first - 1, 0)], gaps[min(last + 1, len(gaps) - 1)], _GAPS)
        below = self.below(gaps, flat, as_set)
        at = [(1 - probability) / 2, 0.5, (1 + probability) / 2]
        low, gap, high = np.array([np.interp(at, column, gaps) for column in below.T]).T
        if not self.trials:
            gap = self._file.gap_mm(flat)
            low, high = np.minimum(low, gap), np.maximum(high, gap)
        for one, other in self._brackets():
            ends = self.trials[one].gap_low_mm, self.trials[other].gap_high_mm
            wider = (self.plates[one] < flat) & (flat < self.plates[other]) & (high - low > ends[1] - ends[0])
            low, gap, high = (np.where(wider, np.clip(v, *ends), v) for v in (low, gap, high))
        gap, low, high = (v.reshape(plates.shape) for v in (gap, low, high))
        return Prediction(gap, low, high, probability)

    def plate_for_deg(self, gap_mm: ArrayLike) -> Array:
        """Plate [deg] for gaps [mm], shape (n,), in the slot or not: the mean; NaN where most cams never give it."""
        places, weight = self._places(np.asarray(gap_mm, float)), self._weight.sum(axis=1)[:, None]
        finite = np.isfinite(places)
        share = (weight * finite).sum(axis=0)
        mean = (weight * np.where(finite, places, 0.0)).sum(axis=0) / np.maximum(share, 1e-9)
        return np.asarray(np.where(share > 0.5, mean + self.shift_deg, np.nan))

    def _brackets(self) -> list[tuple[int, int]]:
        """Pairs of trials on both sides of a limit, the second further with rotation; blunders left out."""
        kept = [i for i in range(len(self.trials)) if i not in self.outliers]
        return [
            (i, j)
            for i, j in permutations(kept, 2)
            if self.plates[i] < self.plates[j]
            and any(
                self.trials[i].gap_high_mm <= limit <= self.trials[j].gap_low_mm
                for limit in self.magneto.gap_limits_mm
            )
        ]

    def chance(self, backplate_deg: ArrayLike, limits_mm: tuple[float, float], as_set: bool = True) -> Array:
        """Probability [-] that the gap with the plate there [deg], shape (m,), lies within limits [mm]."""
        low, high = self.below(np.array(limits_mm), backplate_deg, as_set)
        return np.asarray(np.clip(high - low, 0.0, 1.0))


def fit_flank(magneto: Magneto, trials: Sequence[Trial], errors: ReadingErrors | None = None) -> FlankFit:
    """The flank that the trials tell of.

    Parameters
    ----------
    magneto : the file to begin with; its lobe 1 as its condition has it.
    trials : none to MAX_TRIALS, in the order they were made.
    errors : how well the person reads; None = plain values for hands.

    Raises
    ------
    ValueError : too many trials.
    SpecError : the file's own cam undercuts.
    """
    if len(trials) > MAX_TRIALS:
        raise ValueError(tr("{count} trials are given; at most {most} are used", count=len(trials), most=MAX_TRIALS))
    return FlankFit(magneto, trials, errors or ReadingErrors())


def fitted_magneto(fit: FlankFit, name: str | None = None) -> Magneto:
    """A magneto file of one's own: the file with lift, rise and index as the trials tell them.

    Parameters
    ----------
    fit : from `fit_flank`.
    name : of the magneto; None = the file's, with how many trials it was fitted from.

    Notes
    -----
    Where the lobes leave no room for the rise found, the file's rise stays and the lift takes its place. Where the
    designed gap would lie outside the slot, the designed setting is the slot's end with the gap there, and the
    contact screw's 0 moves with it.

    Raises
    ------
    SpecError : no file can hold it, with the reason, or the trials contradict one another or the file.
    """
    if fit.contradictory:
        raise SpecError(tr("the trials contradict one another or the file: check them before a file is made of them"))
    magneto, used = fit.magneto, len(fit.trials) - len(fit.outliers)
    trials = tr_n("{count} trial", "{count} trials", count=used)
    title = name or tr("{name}, fitted from {trials}", name=magneto.name[: 118 - len(trials) - 15], trials=trials)
    found = tr(
        "Fitted from {trials}: lift × {lift_scale:.3f} ± {lift_spread:.3f}, rise × {rise_scale:.3f} ± "
        "{rise_spread:.3f}, index {index:+deg} ± {index_spread:deg} (one standard deviation; mostly the steepness "
        "is known, lift over rise). Law of motion, dwell and fall are the first file's.",
        trials=trials,
        lift_scale=fit.lift_scale,
        lift_spread=fit.lift_scale_sd,
        rise_scale=fit.rise_scale,
        rise_spread=fit.rise_scale_sd,
        index=fit.shift_deg,
        index_spread=fit.shift_sd_deg,
    )
    changed = (
        ("lift_mm", "rise_deg") if isinstance(magneto.cam.profile, LawProfile) else ("angle_deg", "contact_lift_mm")
    )
    fields = (*(f"cam.profile.{name}" for name in changed), "designed_setting")
    parts = {
        "name": title,
        "notes": f"{found}\n{magneto.notes}".strip()[:4000],
        "sources": noted(magneto.sources, fields, "measured", tr("fitted from {trials}", trials=trials)),
    }

    def designed(lift: float, rise: float) -> Magneto:
        own, (low, high) = magneto.designed_setting, magneto.backplate.range_deg
        plate, gap = own.backplate_deg + fit.shift_deg, own.gap_mm
        if not low <= plate <= high:
            as_new = scaled_magneto(magneto.model_copy(update={"condition": Condition()}), lift, rise)
            gap = float(Flank(as_new).gap_mm(min(max(plate, low), high) - fit.shift_deg))
            plate = min(max(plate, low), high)
        return scaled_magneto(magneto, lift, rise, designed_setting={"backplate_deg": plate, "gap_mm": gap}, **parts)

    try:
        return designed(fit.lift_scale, fit.rise_scale)
    except SpecError:
        if fit.rise_scale <= 1.0:
            raise
        return designed(fit.lift_scale / fit.rise_scale, 1.0)
