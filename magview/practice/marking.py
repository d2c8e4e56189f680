"""Marking: the true state as left, and the steps taken, against a rubric that can be read.

Every row says what counts, its weight, what was got, and why. A thing put right and proved by instruments
since the last act that could have changed it gets its whole weight; right but not proved gets half (no credit for
luck); near the limit gets half if it was looked at and a quarter if not. Extra checks cost nothing. A dangerous
act is named first, and no attempt that holds one is passed.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, replace

from magview.bench.actions import TurnBackplate, TurnScrew
from magview.bench.apply import apply
from magview.bench.state import Mounting, Side
from magview.practice import actions as do
from magview.practice.attempt import RULES, Attempt
from magview.practice.draws import between
from magview.practice.evidence import Danger, Evidence, evidence
from magview.practice.exercise_parts import Goal
from magview.practice.goals import judge
from magview.practice.judged import Judged
from magview.practice.state import Practice, view
from magview.spec.language import marked, tr

UNPROVED, NEAR_PROVED, NEAR = 0.5, 0.5, 0.25
"""Parts of a row's weight: right but not proved; nearly right and looked at; nearly right."""


@dataclass(frozen=True)
class MarkingRow:
    """One line of the rubric."""

    what: str
    weight: float
    got: float
    evidence: str
    goal: Goal | None = None
    """The part of the exercise it judges, and…"""
    side: Side | None = None
    """…on which magneto."""
    judged: Judged | None = None
    """The condition it was found in."""

    @property
    def full(self) -> bool:
        """Whether nothing is missing."""
        return self.got >= self.weight - 1e-9


@dataclass(frozen=True)
class Marking:
    """An attempt marked."""

    dangers: tuple[Danger, ...]
    """Dangerous acts, in the order they were first done."""
    rows: tuple[MarkingRow, ...]
    percent: float
    """Of the rubric's weight, to a tenth."""
    passed: bool
    verdict: str
    marked: bool = True
    """Whether marks were given: an attempt under earlier rules is not marked again."""

    @property
    def lost(self) -> str:
        """The kind of the goal that lost most marks, or "danger"; "" where none was lost."""
        if self.dangers:
            return "danger"
        worst = max(self.rows, key=lambda row: row.weight - row.got, default=None)
        return worst.goal.goal if worst is not None and worst.goal is not None and not worst.full else ""


def mark(attempt: Attempt, states: Sequence[Practice] | None = None) -> Marking:
    """Mark an attempt, handed in or not: what is not done counts as it stands.

    `states` are the attempt's own, where they are at hand (`Session.states`). Raises SpecError for an attempt that
    cannot be replayed.
    """
    return mark_evidence(evidence(attempt, states)) if attempt.rules == RULES else not_marked(attempt.version)


def not_marked(version: str) -> Marking:
    """Sentence instead of marks for an attempt made under earlier rules with a version of the program."""
    words = tr("Made with an earlier version ({version}), not marked again. The mark it had stands.", version=version)
    return Marking((), (), 0.0, False, words, marked=False)


def mark_evidence(found: Evidence) -> Marking:
    """Mark an attempt whose steps have been walked."""
    exercise = found.first.exercise
    left = after_run(found.last)
    dangers = sorted([*found.dangers.values(), *_left_dangerous(found)], key=lambda d: (d.index, d.kind))
    rows = [row for goal in exercise.goals for row in _rows(found, left, goal)]
    weight = sum(row.weight for row in rows)
    percent = round(100.0 * sum(row.got for row in rows) / weight, 1)
    enough = percent >= exercise.pass_percent
    if dangers:
        verdict = tr("Not passed: {danger}.", danger=dangers[0].text)
    elif not enough:
        verdict = tr(
            "Not passed: {percent} % of the marks, and {pass_percent} % are needed.",
            percent=percent,
            pass_percent=exercise.pass_percent,
        )
    else:
        verdict = tr("Passed with {percent} %.", percent=percent)
    return Marking(tuple(dangers), tuple(rows), percent, enough and not dangers, verdict)


def after_run(practice: Practice) -> Practice:
    """Effect of the first run on a magneto left with screws slack: what holds nothing, moves."""
    for side in practice.sides:
        practice = _shaken(view(practice, side))
    return practice


def _shaken(room: Practice) -> Practice:
    state, seed, side = room.bench, room.seed, room.side
    if not state.lock_tight:
        state = apply(state, TurnScrew(state.screw_deg - between(seed, 8.0, 14.0, side, "shaken", "screw")))
    if not state.clamps_tight:
        state = apply(state, TurnBackplate(state.backplate_deg - between(seed, 2.0, 4.0, side, "shaken", "plate")))
    engaged = state.engaged
    if engaged is not None and engaged.mounted and not room.seat.nuts_tight:
        at, slip = engaged.mounting, engaged.ratio * between(seed, 2.0, 4.0, side, "shaken", "nuts")
        slipped: Mounting = replace(at, phase_deg=at.phase_deg - slip)
        engaged = replace(engaged, left=slipped) if side == "left" else replace(engaged, right=slipped)
        state = replace(state, engaged=engaged)
    return replace(room, bench=state)


_SLACK = {
    ("lock",): marked("handed in with the lock screw slack"),
    ("clamps",): marked("handed in with the clamp screws slack"),
    ("nuts",): marked("handed in with the nuts slack"),
    ("lock", "clamps"): marked("handed in with the lock screw and the clamp screws slack"),
    ("lock", "nuts"): marked("handed in with the lock screw and the nuts slack"),
    ("clamps", "nuts"): marked("handed in with the clamp screws and the nuts slack"),
    ("lock", "clamps", "nuts"): marked("handed in with the lock screw and the clamp screws and the nuts slack"),
}


def _left_dangerous(found: Evidence) -> list[Danger]:
    """Dangers left at the end."""
    last, step = found.last, found.steps[-1]
    if not isinstance(step.act, do.HandIn):
        return []
    kinds = {goal.goal for goal in last.exercise.goals}
    dangers = []
    for side in last.sides:
        room = view(last, side)
        slack = []
        if kinds & {"opening", "gap", "timing", "secured"}:
            slack += ["lock"] * (not room.bench.lock_tight) + ["clamps"] * (not room.bench.clamps_tight)
        if room.mounted and not room.seat.nuts_tight:
            slack.append("nuts")
        if slack:
            text = tr(_SLACK[tuple(slack)])
            dangers.append(Danger(f"slack-{side}", step.at_s, step.index, text))
        if room.bench.lead.jumper:
            text = tr("handed in with the jumper on: this magneto gives no spark")
            dangers.append(Danger(f"jumper-{side}", step.at_s, step.index, text))
        if room.mounted and room.bench.lead.switch_on and kinds & {"timing", "secured", "lead"}:
            dangers.append(Danger(f"switch-{side}", step.at_s, step.index, tr("handed in with the switch on")))
    return dangers


def _rows(found: Evidence, left: Practice, goal: Goal) -> list[MarkingRow]:
    alone = goal.goal in ("disc-zero", "synchronised") or goal.reading == "disc-zero"
    sides: tuple[Side, ...] = left.sides if goal.side is None and not alone else (goal.side or left.sides[0],)
    weight = goal.weight / len(sides)
    found_so = [(side, judge(found, left, goal, side)) for side in sides]
    return [replace(_row(judged, weight), goal=goal, side=side, judged=judged) for side, judged in found_so]


def _row(judged: Judged, weight: float) -> MarkingRow:
    if judged.share is not None:
        part = judged.share
    elif judged.right:
        part = 1.0 if judged.proved else UNPROVED
    elif judged.near:
        part = NEAR_PROVED if judged.proved else NEAR
    else:
        part = 0.0
    assert math.isfinite(part)
    return MarkingRow(judged.what, weight, weight * part, judged.evidence)
