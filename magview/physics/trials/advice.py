"""Advice on the next trial: plate position, the gap to expect, and when to stop."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from enum import StrEnum
from math import ceil, floor, inf, isfinite, nan, radians, tan

import numpy as np
from numpy.typing import NDArray

from magview.physics.trials.flank_fit import FlankFit, fit_flank
from magview.physics.trials.trial import DEGREES, PlateScale, ReadingErrors, Trial
from magview.spec.language import tr
from magview.spec.magneto import Magneto

Array = NDArray[np.float64]

HOPELESS = 0.05
"""A smaller chance counts as none [-]."""


class Outcome(StrEnum):
    """The next act."""

    START = "start"
    """No trial yet: the plate to begin at."""
    MOVE = "move"
    """Turn the plate."""
    REPEAT = "repeat"
    """Leave the plate, set the opening again, closer to the mark: once at a plate."""
    DONE = "done"
    """The gap is in limits."""
    UNREACHABLE = "unreachable"
    """Not in limits anywhere in the slot; the plate is the nearest to it."""


@dataclass(frozen=True)
class Advice:
    """The next move. Plate in cam degrees, positive with cam rotation; gaps on lobe 1 in millimetres."""

    outcome: Outcome
    backplate_deg: float
    """Angle to put the plate at; where it is, when done."""
    move_deg: float
    """From where the plate is [deg]; NaN before the first trial."""
    gap_mm: float
    """The gap to expect there; what the blades said when done."""
    low_mm: float
    high_mm: float
    """It lies between these with `probability` [-], errors of setting included; the blades' own when done."""
    probability: float
    chance: float
    """Probability that the blades will say that it is in limits [-]."""
    limits_mm: tuple[float, float]
    """The largest gap allowed, low and high."""
    scale: PlateScale
    """In what the plate is read."""
    fit: FlankFit
    """The trials as they fit together: those that stand out, and whether they contradict one another."""


def advise(
    magneto: Magneto,
    trials: Sequence[Trial],
    limits_mm: tuple[float, float] | None = None,
    errors: ReadingErrors | None = None,
    scale: PlateScale = DEGREES,
    probability: float = 0.95,
) -> Advice:
    """The next plate position from the trials so far; the last trial is where the plate is now.

    Parameters
    ----------
    magneto : the file to begin with.
    trials : as for `fit_flank`, in the order they were made.
    limits_mm : the largest gap allowed, low and high [mm]; None = the file's.
    errors : as for `fit_flank`.
    scale : in what the plate is read; plates advised are whole steps of what can be read there.
    probability : of the interval stated for the gap [-].

    Notes
    -----
    The plate advised is the one where the blades are likeliest to say "in limits", never outside the slot. A
    plate that was tried is advised again once, with the opening set closer to the mark, where no other is as good.

    Raises
    ------
    ValueError : limits out of order, or what `fit_flank` refuses.
    """
    limits = magneto.gap_limits_mm if limits_mm is None else limits_mm
    if not 0.0 < limits[0] < limits[1] < 1000.0:
        raise ValueError(
            tr(
                "the limits are {low} to {high} mm; they must be above 0, the low one first",
                low=limits[0],
                high=limits[1],
            )
        )
    return _Adviser(fit_flank(magneto, trials, errors), limits, scale, probability).advice()


@dataclass(frozen=True)
class _Adviser:
    fit: FlankFit
    limits: tuple[float, float]
    scale: PlateScale
    probability: float

    def advice(self) -> Advice:
        trials, designed = self.fit.trials, self.fit.magneto.designed_setting
        if not trials and self.limits[0] <= designed.gap_mm <= self.limits[1]:
            return self._make(Outcome.START, designed.backplate_deg)
        if trials and self._in_limits(trials[-1]):
            return self._done(trials[-1])
        told, plates = self._told_limits(), self._plates()
        chances = self.fit.chance(plates, told)
        best = int(chances.argmax())
        if not trials:
            return self._make(Outcome.START, float(plates[best]))
        # Too large at the slot's near end or too small at its far one, plate and opening exact.
        over = 1.0 - float(self.fit.below([told[1]], plates[:1])[0, 0])
        short = float(self.fit.below([told[0]], plates[-1:])[0, 0])
        if 1.0 - over - short < HOPELESS:
            return self._make(Outcome.UNREACHABLE, float(plates[0 if over > short else -1]))
        apart = np.abs(plates[:, None] - np.array([t.backplate_deg for t in trials]))
        times = (apart <= self.scale.step_deg(self.fit.errors) / 2 + 1e-9).sum(axis=1)
        at_end = best in (0, len(plates) - 1) and times[best] > 0
        # Once at a plate the opening may be set again; a plate not tried is worth half as much again and more.
        worth = np.where(times == 0, 0.0 if at_end else 1.0, np.where(times == 1, 0.5, 0.0)) * chances
        at = int(worth.argmax())
        if worth[at] < HOPELESS:
            return self._make(Outcome.UNREACHABLE, float(plates[best]))
        if times[at]:
            return self._make(Outcome.REPEAT, float(plates[at]))
        return self._make(Outcome.MOVE, float(plates[at]))

    # ------------------------------------------------------------------ judging

    def _plates(self) -> Array:
        """The plates of the slot that can be told apart, its ends included [deg]."""
        low, high = self.fit.magneto.backplate.range_deg
        step = self.scale.step_deg(self.fit.errors)
        inner = step * np.arange(ceil(low / step + 1e-9), floor(high / step - 1e-9) + 1)
        return np.array([low, *inner.tolist(), high])

    def _in_limits(self, trial: Trial) -> bool:
        magneto = self.fit.magneto
        # A hair of slack, as for readings: a blade as thick as the limit is in limits.
        gap_ok = self.limits[0] - 1e-9 <= trial.gap_low_mm and trial.gap_high_mm <= self.limits[1] + 1e-9
        off = magneto.marks.radius_mm * tan(radians(magneto.cam.turns_per_rotor_turn * trial.opening_error_deg))
        return gap_ok and abs(off) <= magneto.marks.tolerance_mm + 1e-9

    def _told_limits(self) -> tuple[float, float]:
        """The gaps between blades both in limits, counted in the narrowest step of the trials; else the limits."""
        low, high = self.limits
        widths = [(t.gap_high_mm - t.gap_low_mm, t.gap_low_mm) for t in self.fit.trials if isfinite(t.gap_high_mm)]
        step, start = min((w for w in widths if w[0] > 1e-6), default=(inf, 0.0))
        first = start + step * ceil((low - start) / step - 1e-6) if isfinite(step) else low
        last = start + step * floor((high - start) / step + 1e-6) if isfinite(step) else high
        return (first, last) if first < last - 1e-9 else (low, high)

    def _make(self, outcome: Outcome, plate: float) -> Advice:
        fit = self.fit
        there = fit.predict(plate, self.probability, as_set=True)
        return Advice(
            outcome=outcome,
            backplate_deg=plate,
            move_deg=plate - fit.trials[-1].backplate_deg if fit.trials else nan,
            gap_mm=float(there.gap_mm),
            low_mm=float(there.low_mm),
            high_mm=float(there.high_mm),
            probability=self.probability,
            chance=float(fit.chance([plate], self._told_limits())[0]),
            limits_mm=self.limits,
            scale=self.scale,
            fit=fit,
        )

    def _done(self, last: Trial) -> Advice:
        made = self._make(Outcome.DONE, last.backplate_deg)
        return replace(made, gap_mm=last.middle_mm, low_mm=last.gap_low_mm, high_mm=last.gap_high_mm, chance=1.0)
