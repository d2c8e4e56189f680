"""What to try next: from the trials so far to the next plate position, what gap to expect, and when to stop."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from itertools import permutations
from math import isfinite, nan, radians, tan
from typing import Literal

import numpy as np

from magview.physics.flank_fit import FlankFit, fit_flank
from magview.physics.trials import Budget, Doubt, Trial
from magview.spec.frozen import frozen
from magview.spec.language import marked, number, tr
from magview.spec.magneto import Magneto
from magview.spec.units import MM_PER_INCH

Outcome = Literal["start", "move", "repeat", "done", "unreachable"]

STEP_SHARE = 0.15
"""The plate goes no farther beyond what has been tried than this share of the file's rise."""


@frozen
class Advice:
    """The next move. Plate in cam degrees, positive with cam rotation; gaps on lobe 1 in millimetres."""

    outcome: Outcome
    """"start": no trial yet. "move": turn the plate. "repeat": the plate is right, set the opening again. "done": the
    gap is in limits. "unreachable": not in limits anywhere in the slot; the plate is the nearest to it."""
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
    """Probability that it will be in limits [-]."""
    limited: bool
    """The move stops short, so as not to go far beyond what has been tried."""
    reason: str
    """One or two sentences."""
    warnings: tuple[str, ...]
    """What is odd about the trials, sentences."""
    fit: FlankFit


def advise(
    magneto: Magneto,
    trials: Sequence[Trial],
    limits_mm: tuple[float, float] | None = None,
    wanted_mm: float | None = None,
    budget: Budget | None = None,
    doubt: Doubt | None = None,
    probability: float = 0.95,
) -> Advice:
    """The next plate position from the trials so far; the last trial is where the plate is now.

    Parameters
    ----------
    magneto : the file to begin with.
    trials : as for `fit_flank`, in the order they were made.
    limits_mm : the largest gap allowed, low and high [mm]; None = the file's.
    wanted_mm : gap to aim for [mm], within the limits; None = whatever is likeliest to be in limits.
    budget, doubt : as for `fit_flank`.
    probability : of the interval stated for the gap [-].

    Notes
    -----
    The plate never leaves its slot. It goes at most STEP_SHARE of the rise beyond the plates tried, and the
    reason says so when that stops it.

    Raises
    ------
    ValueError : limits out of order, a wanted gap outside them, or what `fit_flank` refuses.
    """
    limits = magneto.gap_limits_mm if limits_mm is None else limits_mm
    if not 0.0 < limits[0] < limits[1] < 1000.0:
        raise ValueError(
            tr(
                "the limits are {low} to {high} mm; they must be above 0, the low one first",
                low=number(limits[0], "g"),
                high=number(limits[1], "g"),
            )
        )
    if wanted_mm is not None and not limits[0] <= wanted_mm <= limits[1]:
        raise ValueError(
            tr(
                "the wanted gap is {wanted} mm; the limits are {low} to {high} mm",
                wanted=number(wanted_mm, "g"),
                low=number(limits[0], "g"),
                high=number(limits[1], "g"),
            )
        )
    fit = fit_flank(magneto, trials, budget, doubt)
    return _Adviser(fit, limits, wanted_mm, probability).advice()


@frozen
class _Adviser:
    fit: FlankFit
    limits: tuple[float, float]
    wanted_mm: float | None
    probability: float

    def advice(self) -> Advice:
        trials, fit = self.fit.trials, self.fit
        if trials and self._in_limits(trials[-1]):
            return self._done(trials[-1])
        aim = self._aim_deg()
        low, high = fit.magneto.backplate.range_deg
        nearest = min(max(aim, low), high)
        plate = nearest
        if fit.tried_deg is not None:
            step = STEP_SHARE * fit.file_rise_deg
            plate = min(max(plate, fit.tried_deg[0] - step), fit.tried_deg[1] + step)
            plate = min(max(plate, low), high)
        limited = abs(plate - nearest) > fit.budget.plate_deg
        if not limited:
            plate = nearest
            if plate != aim and not self._may_be_in_limits(plate):
                return self._make("unreachable", plate, self._unreachable_words(aim, plate))
        if not trials:
            return self._make("start", plate, self._start_words(plate))
        now = trials[-1].backplate_deg
        if self._as_good(now, plate):
            return self._make("repeat", now, self._repeat_words(trials[-1], at_end=plate != aim))
        return self._make("move", plate, self._move_words(plate, now, aim, limited), limited)

    # ------------------------------------------------------------------ judging

    def _in_limits(self, trial: Trial) -> bool:
        magneto = self.fit.magneto
        # A hair of slack, as for readings: a blade as thick as the limit is in limits.
        gap_ok = self.limits[0] - 1e-9 <= trial.gap_low_mm and trial.gap_high_mm <= self.limits[1] + 1e-9
        off = magneto.marks.radius_mm * tan(radians(magneto.cam.turns_per_rotor_turn * trial.opening_error_deg))
        return gap_ok and abs(off) <= magneto.marks.tolerance_mm + 1e-9

    def _aim_deg(self) -> float:
        """The plate for the wanted gap; without one the middle of the plates whose gap is in limits."""
        designed = self.fit.magneto.designed_setting
        if self.wanted_mm is None and not self.fit.trials and self.limits[0] <= designed.gap_mm <= self.limits[1]:
            return designed.backplate_deg
        gaps = np.array(self.limits if self.wanted_mm is None else [self.wanted_mm])
        # A gap above the whole lift asks for a plate off the lobe: beyond any slot, and so said.
        return float(self.fit.plate_for_deg(np.minimum(gaps, 0.999 * self.fit.full_gap_mm)).mean())

    def _may_be_in_limits(self, plate: float) -> bool:
        there = self.fit.predict(plate, self.probability)
        return bool(there.high_mm >= self.limits[0] and there.low_mm <= self.limits[1])

    def _as_good(self, now: float, plate: float) -> bool:
        """Whether a move is not worth its while: smaller than it can be read, or no likelier to end in limits."""
        there = self.fit.chance(plate, self.limits)
        return abs(plate - now) <= max(self.fit.budget.plate_deg, 1e-6) or (
            there > 0.05 and self.wanted_mm is None and self.fit.chance(now, self.limits) > 0.97 * there
        )

    def _make(self, outcome: Outcome, plate: float, reason: str, limited: bool = False) -> Advice:
        fit = self.fit
        if outcome != "done" and contradictory(fit):
            reason = f"{tr('The trials contradict each other; clear that up before going on.')} {reason}"
        there = fit.predict(plate, self.probability, as_set=True)
        return Advice(
            outcome=outcome,
            backplate_deg=plate,
            move_deg=plate - fit.trials[-1].backplate_deg if fit.trials else nan,
            gap_mm=float(there.gap_mm),
            low_mm=float(there.low_mm),
            high_mm=float(there.high_mm),
            probability=self.probability,
            chance=fit.chance(plate, self.limits),
            limited=limited,
            reason=reason,
            warnings=disagreements(fit),
            fit=fit,
        )

    def _done(self, last: Trial) -> Advice:
        words = tr("Done: the gap, {span}, is in limits.", span=_span(last.gap_low_mm, last.gap_high_mm))
        if len(self.fit.trials) - 1 in self.fit.outliers:
            words = f"{words} {tr('It is not what the other trials lead to expect, so try the blades once more.')}"
        made = self._make("done", last.backplate_deg, words)
        return replace(made, gap_mm=last.middle_mm, low_mm=last.gap_low_mm, high_mm=last.gap_high_mm, chance=1.0)

    # ------------------------------------------------------------------ words

    def _expected(self, plate: float) -> str:
        there = self.fit.predict(plate, self.probability, as_set=True)
        low, high = float(there.low_mm), float(there.high_mm)
        return tr(
            "{gap}; {probability} times in 100 it will be {span}",
            gap=_both(float(there.gap_mm)),
            probability=number(100 * self.probability, "g"),
            span=_span(low, high),
        )

    def _start_words(self, plate: float) -> str:
        return tr(
            "Start with the plate at {plate}° and the contacts set to open at the E-gap: by the file "
            "the gap should be {expected}.",
            plate=number(plate, "+.2f"),
            expected=self._expected(plate),
        )

    def _move_words(self, plate: float, now: float, aim: float, limited: bool) -> str:
        places = {
            "turn": number(abs(plate - now), 2),
            "plate": number(plate, "+.2f"),
            "expected": self._expected(plate),
        }
        words = (
            tr("Turn the plate {turn}° with cam rotation, to {plate}°: the gap should be {expected}.", **places)
            if plate > now
            else tr(
                "Turn the plate {turn}° against cam rotation, to {plate}°: the gap should be {expected}.", **places
            )
        )
        if limited:
            more = tr(
                "The aim is about {aim}°, but that is too far from what was tried to be sure of.",
                aim=number(aim, "+.2f"),
            )
            return f"{words} {more}"
        if plate != aim:
            return f"{words} {tr('That is the end of the slot; the gap may just come into limits there.')}"
        return words

    def _unreachable_words(self, aim: float, plate: float) -> str:
        low, high = self.fit.magneto.backplate.range_deg
        return tr(
            "The gap cannot be brought into limits within the slot ({low}° to {high}°): that would "
            "take about {aim}°. The nearest is the end of the slot at {plate}°, where the gap should "
            "be {expected}.",
            low=number(low, "g"),
            high=number(high, "g"),
            aim=number(aim, "+.2f"),
            plate=number(plate, "+.2f"),
            expected=self._expected(plate),
        )

    def _repeat_words(self, last: Trial, at_end: bool) -> str:
        if self.limits[0] + 1e-9 < last.gap_high_mm and last.gap_low_mm < self.limits[1] - 1e-9:
            return tr(
                "The gap, {span}, may be in limits, but the blades cannot tell: the plate is right "
                "where it is, so try finer blades, or set the opening again, closer to the mark.",
                span=_span(last.gap_low_mm, last.gap_high_mm),
            )
        expected = self._expected(last.backplate_deg)
        if at_end:
            return tr(
                "Leave the plate at the end of the slot and set the opening again, closer to the mark: an opening "
                "off the mark but within the tolerance explains this gap, which should be {expected}.",
                expected=expected,
            )
        return tr(
            "Leave the plate at {plate}° and set the opening again, closer to the mark: an opening off "
            "the mark but within the tolerance explains this gap, which should be {expected}.",
            plate=number(last.backplate_deg, "+.2f"),
            expected=expected,
        )


def disagreements(fit: FlankFit) -> tuple[str, ...]:
    """What is odd about the trials, as sentences; empty when nothing is."""
    said = [
        tr(
            "Trial {trial} does not fit the others and is left out: its gap is larger than any opening "
            "within the tolerance explains; check it.",
            trial=i + 1,
        )
        if fit.misfits[i] > 0
        else tr(
            "Trial {trial} does not fit the others and is left out: its gap is smaller than any opening "
            "within the tolerance explains; check it.",
            trial=i + 1,
        )
        for i in fit.outliers
    ]
    worst = max(_fallen(fit), default=None)
    if worst is not None:
        excess, i, j = worst
        same = abs(fit.trials[i].backplate_deg - fit.trials[j].backplate_deg) <= fit.budget.plate_deg
        said.append(_fallen_words(i + 1, j + 1, same, excess > _explained_deg(fit)))
    for words, scale, doubt in (
        (_OTHER_LIFT, fit.lift_scale, fit.doubt.lift),
        (_OTHER_RISE, fit.rise_scale, fit.doubt.rise),
    ):
        if abs(np.log(scale)) > 1.5 * doubt:
            said.append(tr(words, scale=number(scale, 2)))
    return tuple(said)


_OTHER_LIFT = marked("The trials ask for {scale} times the file's lift: check that this is the file for this cam.")
_OTHER_RISE = marked("The trials ask for {scale} times the file's rise: check that this is the file for this cam.")


def _fallen_words(ahead: int, behind: int, same: bool, contradict: bool) -> str:
    """What is odd about two trials, and what to do."""
    if same:
        places = {"first": min(ahead, behind), "second": max(ahead, behind)}
        if contradict:
            return tr(
                "Trials {first} and {second} stood at the same plate and give different gaps, more than openings "
                "within the tolerance explain: check that the clamping screws hold, that lobe 1 was used, and which "
                "blades were, and repeat one of the two.",
                **places,
            )
        return tr(
            "Trials {first} and {second} stood at the same plate and give different gaps; openings off the mark but "
            "within the tolerance explain it: set them closer to the mark.",
            **places,
        )
    places = {"behind": behind, "ahead": ahead}
    if contradict:
        return tr(
            "The gap of trial {behind} is smaller than that of trial {ahead}, though its plate stands further with "
            "rotation, more than openings within the tolerance explain: check that the clamping screws hold, that "
            "lobe 1 was used, and which blades were, and repeat one of the two.",
            **places,
        )
    return tr(
        "The gap of trial {behind} is smaller than that of trial {ahead}, though its plate stands further with "
        "rotation; openings off the mark but within the tolerance explain it: set them closer to the mark.",
        **places,
    )


def contradictory(fit: FlankFit) -> bool:
    """Whether some of the trials that were kept cannot all be true, whatever the cam."""
    return max(_fallen(fit), default=(0.0,))[0] > _explained_deg(fit)


def _explained_deg(fit: FlankFit) -> float:
    """What two openings within the tolerance, one early and one late, are worth along the plate [deg]."""
    return 2 * fit.budget.setting_deg(fit.magneto)[0]


def _fallen(fit: FlankFit) -> list[tuple[float, int, int]]:
    """Pairs whose gap falls though the plate stands no less far: how much plate is missing [deg], and indices."""
    found = []
    kept = [i for i in range(len(fit.trials)) if i not in fit.outliers]
    for i, j in permutations(kept, 2):
        one, other = fit.trials[i], fit.trials[j]
        ahead = other.plate_as_opened_deg(fit.magneto) - one.plate_as_opened_deg(fit.magneto)
        fall = one.gap_low_mm - other.gap_high_mm - 2 * fit.budget.blade_mm
        if ahead >= -1e-9 and fall > 0:
            ends = fit.plate_for_deg([one.gap_low_mm, other.gap_high_mm])
            width = float(ends[0] - ends[1]) if np.isfinite(ends).all() else fit.file_rise_deg
            found.append((ahead + width, i, j))
    return found


def _both(mm: float) -> str:
    return tr("{mm} mm ({inches} in)", mm=number(mm, 3), inches=number(mm / MM_PER_INCH, 4))


def _span(low_mm: float, high_mm: float) -> str:
    if not isfinite(high_mm):
        return tr("above {length}", length=_both(low_mm))
    if high_mm - low_mm < 5e-4:
        return _both(low_mm)
    return tr(
        "{low} to {high} mm ({low_in} to {high_in} in)",
        low=number(low_mm, 3),
        high=number(high_mm, 3),
        low_in=number(low_mm / MM_PER_INCH, 4),
        high_in=number(high_mm / MM_PER_INCH, 4),
    )
