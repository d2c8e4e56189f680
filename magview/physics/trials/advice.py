"""Advice on the next trial: plate position, the gap to expect, and when to stop."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from enum import StrEnum
from math import ceil, floor, inf, isfinite, nan, radians, tan

import numpy as np
from numpy.typing import NDArray

from magview.physics.trials.flank_fit import FlankFit, fit_flank
from magview.physics.trials.trial import DEGREES, PlateScale, ReadingErrors, Trial, plate_text
from magview.spec.language import tr
from magview.spec.magneto import Magneto
from magview.spec.units import MM_PER_INCH

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
    """Where to put the plate; where it is, when done."""
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
    reason: str
    """One to three sentences."""
    warnings: tuple[str, ...]
    """Warnings about the trials, sentences."""
    fit: FlankFit


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
            return self._make(Outcome.START, designed.backplate_deg, self._start_words)
        if trials and self._in_limits(trials[-1]):
            return self._done(trials[-1])
        told, plates = self._told_limits(), self._plates()
        chances = self.fit.chance(plates, told)
        best = int(chances.argmax())
        if not trials:
            return self._make(Outcome.START, float(plates[best]), self._start_words)
        # Too large at the slot's near end or too small at its far one, plate and opening exact.
        over = 1.0 - float(self.fit.below([told[1]], plates[:1])[0, 0])
        short = float(self.fit.below([told[0]], plates[-1:])[0, 0])
        if 1.0 - over - short < HOPELESS:
            return self._make(Outcome.UNREACHABLE, float(plates[0 if over > short else -1]), self._unreachable_words)
        apart = np.abs(plates[:, None] - np.array([t.backplate_deg for t in trials]))
        times = (apart <= self.scale.step_deg(self.fit.errors) / 2 + 1e-9).sum(axis=1)
        at_end = best in (0, len(plates) - 1) and times[best] > 0
        # Once at a plate the opening may be set again; a plate not tried is worth half as much again and more.
        worth = np.where(times == 0, 0.0 if at_end else 1.0, np.where(times == 1, 0.5, 0.0)) * chances
        at = int(worth.argmax())
        if worth[at] < HOPELESS:
            return self._make(Outcome.UNREACHABLE, float(plates[best]), self._unreachable_words)
        if times[at]:
            return self._make(Outcome.REPEAT, float(plates[at]), self._repeat_words)
        return self._make(Outcome.MOVE, float(plates[at]), self._move_words)

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

    def _make(self, outcome: Outcome, plate: float, words: Callable[[Advice], str]) -> Advice:
        fit = self.fit
        there = fit.predict(plate, self.probability, as_set=True)
        made = Advice(
            outcome=outcome,
            backplate_deg=plate,
            move_deg=plate - fit.trials[-1].backplate_deg if fit.trials else nan,
            gap_mm=float(there.gap_mm),
            low_mm=float(there.low_mm),
            high_mm=float(there.high_mm),
            probability=self.probability,
            chance=float(fit.chance([plate], self._told_limits())[0]),
            reason="",
            warnings=disagreements(fit),
            fit=fit,
        )
        reason = words(made)
        if outcome != Outcome.DONE and fit.contradictory and len(fit.trials) > 1:
            reason = f"{tr('The trials contradict each other; clear that up before going on.')} {reason}"
        return replace(made, reason=reason)

    def _done(self, last: Trial) -> Advice:
        made = self._make(Outcome.DONE, last.backplate_deg, self._done_words)
        return replace(made, gap_mm=last.middle_mm, low_mm=last.gap_low_mm, high_mm=last.gap_high_mm, chance=1.0)

    # ------------------------------------------------------------------ words

    def _done_words(self, _: Advice) -> str:
        last = self.fit.trials[-1]
        words = tr("Done: the gap, {span}, is in limits.", span=_span(last.gap_low_mm, last.gap_high_mm))
        if len(self.fit.trials) - 1 in self.fit.outliers:
            return f"{words} {tr('It is not what the other trials lead to expect, so try the blades once more.')}"
        return words

    def _start_words(self, made: Advice) -> str:
        return tr(
            "Start with the plate at {plate} and the contacts set to open at the E-gap. By the file the gap should "
            "be {gap}; no trial has tested the file yet.",
            plate=self._at(made.backplate_deg),
            gap=_both(made.gap_mm),
        )

    def _move_words(self, made: Advice) -> str:
        places = {"turn": self._by(abs(made.move_deg)), "plate": self._at(made.backplate_deg)}
        words = (
            tr("Turn the plate {turn} with cam rotation, to {plate}.", **places)
            if made.move_deg > 0
            else tr("Turn the plate {turn} against cam rotation, to {plate}.", **places)
        )
        words = f"{words} {self._expected(made)}"
        if made.backplate_deg in self.fit.magneto.backplate.range_deg:
            return f"{words} {tr('That is the end of the slot; the gap may just come into limits there.')}"
        return words

    def _repeat_words(self, made: Advice) -> str:
        last, plate = self.fit.trials[-1], self._at(made.backplate_deg)
        if abs(made.move_deg) > 1e-9 + self.scale.step_deg(self.fit.errors) / 2:
            words = tr("Turn the plate back to {plate} and set the opening again, closer to the mark.", plate=plate)
        elif self.limits[0] + 1e-9 < last.gap_high_mm and last.gap_low_mm < self.limits[1] - 1e-9:
            words = tr(
                "The gap, {span}, may be in limits, but the blades cannot tell. Leave the plate at {plate}. Try "
                "finer blades, or set the opening again, closer to the mark.",
                span=_span(last.gap_low_mm, last.gap_high_mm),
                plate=plate,
            )
        else:
            words = tr("Leave the plate at {plate} and set the opening again, closer to the mark.", plate=plate)
        why = tr("An opening off the mark by no more than you said explains the gap found there.")
        return f"{words} {why} {self._expected(made)}"

    def _unreachable_words(self, made: Advice) -> str:
        slot = self.fit.magneto.backplate.range_deg
        if made.backplate_deg not in slot:
            return tr(
                "Plate, opening and blades are not read closely enough for these limits: at best the blades say “in "
                "limits” {chance:.0f} times in 100. Read the opening closer to the mark, or use finer blades.",
                chance=100 * made.chance,
            )
        aim = self.fit.plate_for_deg([self.limits[int(made.backplate_deg == slot[0])]])[0]
        words = tr(
            "The gap cannot be brought into limits within the slot, {low} to {high}.",
            low=self._at(slot[0]),
            high=self._at(slot[1]),
        )
        if isfinite(aim) and not slot[0] <= aim <= slot[1]:
            words = f"{words} {tr('That would take about {aim}.', aim=self._at(aim))}"
        nearest = tr("The nearest is the end of the slot at {plate}.", plate=self._at(made.backplate_deg))
        return f"{words} {nearest} {self._expected(made)}"

    def _expected(self, made: Advice) -> str:
        return tr(
            "The gap should be {gap}; {probability} times in 100 it will be {span}.",
            gap=_both(made.gap_mm),
            probability=100 * self.probability,
            span=_span(made.low_mm, made.high_mm),
        )

    def _at(self, plate_deg: float) -> str:
        return plate_text(self.scale, plate_deg)

    def _by(self, turn_deg: float) -> str:
        return plate_text(self.scale, turn_deg, signed=False)


def disagreements(fit: FlankFit) -> tuple[str, ...]:
    """Warnings about the trials, sentences; empty when nothing is odd."""
    said = [
        tr("Trial {trial} does not fit the others and hardly counts: its gap is too large; check it.", trial=i + 1)
        if fit.trials[i].middle_mm > float(fit.predict(fit.plates[i]).gap_mm)
        else tr(
            "Trial {trial} does not fit the others and hardly counts: its gap is too small; check it.", trial=i + 1
        )
        for i in fit.outliers
    ]
    if fit.contradictory and len(fit.trials) == 1:
        said.append(
            tr("Trial 1 is far from anything this file can give: check it, and that this is the file for this cam.")
        )
    elif fit.contradictory:
        first, second = sorted(np.argsort(fit.slip)[-2:].tolist())
        said.append(
            tr(
                "Trials {first} and {second} cannot both be right, if they were read as closely as you said. Check "
                "that the clamp screws hold, that lobe 1 was used, which blades were, and that this is the file "
                "for this cam. Then repeat one of the two.",
                first=first + 1,
                second=second + 1,
            )
        )
    return tuple(said)


def _both(mm: float) -> str:
    return tr("{mm:mm} ({inches:.4f} in)", mm=mm, inches=mm / MM_PER_INCH)


def _span(low_mm: float, high_mm: float) -> str:
    if not isfinite(high_mm):
        return tr("above {length}", length=_both(low_mm))
    if high_mm - low_mm < 5e-4:
        return _both(low_mm)
    return tr(
        "{low:.3f} to {high:mm} ({low_in:.4f} to {high_in:.4f} in)",
        low=low_mm,
        high=high_mm,
        low_in=low_mm / MM_PER_INCH,
        high_in=high_mm / MM_PER_INCH,
    )
