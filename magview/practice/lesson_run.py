"""A lesson under way, as a value: acts come in, and a step is judged when the hand lets go.

`act` does something and judges nothing; `judge` looks at how things stand then; `take` is both, for an act that is
over as soon as it is done. A step that is done waits for `go_on`.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from enum import Enum

from magview.bench import actions as bench
from magview.practice import actions as do
from magview.practice.apply import apply
from magview.practice.faults import begin
from magview.practice.instruments import light
from magview.practice.lesson import Lesson, LessonStep, Question, Until
from magview.practice.lesson_acts import CHANGES, wanted
from magview.practice.predicates import LASTING, Moment, holds, stands, turned_deg
from magview.practice.state import Practice, true_readings
from magview.spec.base import SpecError
from magview.spec.language import marked, tr

CHOICES = {
    "gap": (marked("closer"), marked("the same"), marked("wider")),
    "opening": (marked("earlier"), marked("the same"), marked("later")),
}
"""The answers to what becomes of a reading."""

_SAME_MM = 0.0015
_SAME_DEG = 0.05
"""A gap or an opening that changed by less did not change: nobody could see or measure it."""


class Stand(Enum):
    """Standing of a step."""

    WAITING = "waiting"
    PART_WAY = "part-way"
    WRONG = "wrong"
    DONE = "done"


@dataclass(frozen=True)
class LessonRun:
    """State of a lesson, and the room."""

    lesson: Lesson
    practice: Practice
    began: Practice
    """The room as the step found it."""
    answers: tuple[tuple[int | None, ...], ...]
    """By step and question: the place of the choice taken, from 0."""
    at: int = 0
    """Steps gone past."""
    stand: Stand = Stand.WAITING
    already: bool = False
    """Whether the step was so before anything was done."""
    seen: bool = False
    """Whether everything the step waits for was so at one act since it began."""
    steady_deg: float = 0.0
    """Degrees that the rotor has been turned while the lamp showed no change."""
    moments: tuple[Moment, ...] = ()
    """Acts since the hand last let go."""
    rights: tuple[tuple[int, ...], ...] = ()
    """The right answers of the steps that are done, by step."""
    before: LessonRun | None = None
    """The same before the last act of this step."""
    previous: LessonRun | None = None
    """The beginning of the step before."""
    deeds: tuple[tuple[do.Act, ...], ...] = ((),)
    """Deeds by step, up to the one in hand."""

    @property
    def step(self) -> LessonStep | None:
        """The step in hand; None when all are behind."""
        return self.lesson.steps[self.at] if self.at < len(self.lesson.steps) else None

    @property
    def done(self) -> bool:
        """Whether all steps are behind."""
        return self.step is None

    @property
    def step_done(self) -> bool:
        """Whether the step in hand is done and waits for `go_on`."""
        return self.stand is Stand.DONE

    @property
    def answered(self) -> bool:
        """Whether everything the step asks has been answered."""
        return self.step is None or None not in self.answers[self.at]

    @property
    def moment(self) -> Moment | None:
        """The last act and how things stood before the hand took hold."""
        if not self.moments:
            return None
        last = self.moments[-1]
        return replace(last, before=self.moments[0].before)

    @property
    def foretold(self) -> tuple[int, int]:
        """Guesses that were right, and guesses so far."""
        pairs = [
            pair
            for said, right in zip(self.answers, self.rights, strict=False)
            for pair in zip(said, right, strict=True)
        ]
        return sum(said == right for said, right in pairs), len(pairs)


def start_lesson(lesson: Lesson) -> LessonRun:
    """A lesson at its first step."""
    room = _room_of(lesson, 0, begin(lesson.exercise, lesson.seed))
    return _looked_at(LessonRun(lesson, room, room, tuple((None,) * len(step.ask) for step in lesson.steps)))


def _room_of(lesson: Lesson, at: int, room: Practice) -> Practice:
    """The room in which a step takes place: its own bench, or the one that the lesson stands at."""
    own = lesson.steps[at].exercise if at < len(lesson.steps) else None
    return begin(own, lesson.seed) if own is not None else room


def act(run: LessonRun, deed: do.Act, same: bool = False) -> LessonRun:
    """The lesson after an act, not judged yet. `same`: the hand goes on with what it was doing. Raises SpecError for
    an act that cannot be done, or not now."""
    if isinstance(deed, do.HandIn):
        raise SpecError(tr("a lesson is not handed in"))
    step = run.step
    pointed = isinstance(deed, do.PointAt)
    if run.step_done and not pointed:
        raise SpecError(tr("this step is done: press Next step"))
    if not run.answered and not pointed:
        raise SpecError(tr("answer first, a guess is good"))
    after = apply(run.practice, deed)
    steady = 0.0
    if light(after) is not None and light(after) == light(run.practice):
        steady = run.steady_deg + after.bench.rotor_deg - run.practice.bench.rotor_deg
    moment = Moment(run.practice, after, deed, run.began, steady)
    seen = run.seen or (step is not None and bool(step.until) and all(_holds(u, moment) for u in step.until))
    held = same and bool(run.moments)
    return replace(
        run, practice=after, steady_deg=steady, seen=seen, moments=(*(run.moments[:1] if held else ()), moment),
        before=run.before if held else run, deeds=(*run.deeds[:-1], (*run.deeds[-1], deed)),
    )  # fmt: skip


def judge(run: LessonRun) -> LessonRun:
    """The lesson as it stands now that the hand has let go."""
    step = run.step
    if step is None or run.step_done or not run.answered:
        return run
    if not step.until or (run.moments and _reached(run, step)):
        return _as_done(run)
    if not run.moments:
        return run
    return replace(run, stand=Stand.WRONG if wrong_kind(run) else Stand.PART_WAY)


def take(run: LessonRun, deed: do.Act) -> LessonRun:
    """The lesson after an act that is over as soon as it is done. Raises SpecError."""
    return judge(act(run, deed))


def answer(run: LessonRun, question: int, choice: int) -> LessonRun:
    """Answer a question of the step in hand; until the act it may be answered otherwise."""
    step = run.step
    if step is None or run.step_done or not 0 <= question < len(step.ask):
        return run
    if not 0 <= choice < len(choices_of(step.ask[question])):
        return run
    mine = list(run.answers[run.at])
    mine[question] = choice
    answers = (*run.answers[: run.at], tuple(mine), *run.answers[run.at + 1 :])
    return judge(replace(run, answers=answers))


def go_on(run: LessonRun) -> LessonRun:
    """The next step. Raises SpecError while this one is not done."""
    if run.step is None:
        return run
    if not run.step_done:
        raise SpecError(tr("this step is not done yet"))
    here = replace(
        run, practice=run.began, stand=Stand.WAITING, seen=False, moments=(), before=None,
        answers=(*run.answers[: run.at], (None,) * len(run.answers[run.at]), *run.answers[run.at + 1 :]),
        rights=run.rights[: run.at], deeds=(*run.deeds[:-1], ()),
    )  # fmt: skip
    room = _room_of(run.lesson, run.at + 1, run.practice)
    begun = replace(
        run, at=run.at + 1, practice=room, began=room, stand=Stand.WAITING, already=False, seen=False, steady_deg=0.0,
        moments=(), before=None, previous=here, deeds=(*run.deeds, ()),
    )  # fmt: skip
    return _looked_at(begun)


def back(run: LessonRun) -> LessonRun:
    """The beginning of this step, or of the one before where nothing was done in this one."""
    if run.before is not None or (run.stand is not Stand.WAITING and not run.already):
        return _begun_again(run)
    return run.previous if run.previous is not None else run


def resume(lesson: Lesson, deeds: Sequence[Sequence[do.Act]], answers: Sequence[Sequence[int | None]]) -> LessonRun:
    """The lesson at the step where it was left: what was done is done again, as far as it leads."""
    run = start_lesson(lesson)
    for acts, said in zip(deeds, answers, strict=False):
        begun = run
        try:
            for question, choice in enumerate(said):
                run = run if choice is None else answer(run, question, choice)
            for deed in acts:
                run = act(run, deed)
            run = go_on(judge(run))
        except SpecError:
            return begun
        if run.done:
            return begun
    return run


def undo(run: LessonRun) -> LessonRun:
    """The lesson before the last act of this step; itself where there was none."""
    if run.before is None:
        return run
    return replace(run.before, moments=(), answers=run.answers)


def choices_of(question: Question) -> tuple[str, ...]:
    """The answers to choose from, not yet read out."""
    return CHOICES[question.about] if question.about is not None else question.choices


def right_of(question: Question, before: Practice, after: Practice) -> int:
    """The place of the right answer, from 0: the bench's own where the question is about a reading."""
    if question.about is None:
        return (question.right or 1) - 1
    was, now = true_readings(before.bench), true_readings(after.bench)
    if question.about == "gap":
        by, same = float(now.max_gap_mm[0] - was.max_gap_mm[0]), _SAME_MM
    else:
        by, same = float(now.e_gap_error_deg[0] - was.e_gap_error_deg[0]), _SAME_DEG
    return 1 if abs(by) < same else 0 if by < 0 else 2


def wrong_kind(run: LessonRun) -> str:
    """Return in which way the last act was wrong: "part", "undid", "way" or "other"; "" where it was not."""
    step, moment = run.step, run.moment
    if step is None or moment is None:
        return ""
    if isinstance(moment.act, do.PointAt):
        return "part" if any(u.that == "pointed-at" for u in step.until) else ""
    if undone(run):
        return "undid"
    if any(_away(u, run, moment) for u in step.until):
        return "way"
    asked = any(wanted(u, moment.act) for u in step.until)
    return "other" if isinstance(moment.act, CHANGES) and not asked else ""


_PASSING = ("rotor-near", "crank-near", "lamp-shows", "turned")
"""Places one goes through again and again while turning: to leave it undoes nothing."""


def undone(run: LessonRun) -> list[Until]:
    """Return what stood before the last act and does not any more."""
    moment = run.moment
    if run.step is None or moment is None:
        return []
    lasting = [u for u in run.step.until if u.that in LASTING and u.that not in _PASSING]
    return [u for u in lasting if _stands(u, moment.before) and not _stands(u, moment.after)]


def turned_so_far(until: Until, run: LessonRun, room: Practice) -> float:
    """Return how far screw or plate is turned in a room [deg], since as found or since the step began."""
    since = turned_deg(run.began, until.what or "") if until.that == "turned-here" else 0.0
    return turned_deg(room, until.what or "") - since


def _away(until: Until, run: LessonRun, moment: Moment) -> bool:
    if until.that not in ("turned", "turned-here") or not wanted(until, moment.act):
        return False
    before, after = (turned_so_far(until, run, room) for room in (moment.before, moment.after))
    way = until.value or 0.0
    return (after - before) * way < 0 and after * way < 0


def _holds(until: Until, moment: Moment) -> bool:
    return holds(until.that, moment, until.what, until.value, until.within) == until.yes


def _stands(until: Until, room: Practice) -> bool:
    return stands(until.that, room, until.what, until.value, until.within) == until.yes


def unmet(run: LessonRun) -> list[Until]:
    """Return what the step in hand still waits for."""
    step = run.step
    if step is None:
        return []
    moment = run.moment or Moment(run.practice, run.practice, bench.HoldRotor(), run.began, run.steady_deg)
    return [u for u in step.until if not _holds(u, moment)]


def _reached(run: LessonRun, step: LessonStep) -> bool:
    lasting = [u for u in step.until if u.that in LASTING]
    here = [u for u in step.until if u.that == "turned-here"]
    moment = run.moment
    if not all(_stands(u, run.practice) for u in lasting):
        return False
    if here and (moment is None or not all(_holds(u, moment) for u in here)):
        return False
    return run.seen or len(lasting) + len(here) == len(step.until)


def _as_done(run: LessonRun, already: bool = False) -> LessonRun:
    assert run.step is not None
    right = tuple(right_of(question, run.began, run.practice) for question in run.step.ask)
    return replace(run, stand=Stand.DONE, already=already, rights=(*run.rights[: run.at], right))


def _looked_at(run: LessonRun) -> LessonRun:
    """A step that is so already when its turn comes is done, and says so; one that asks something is asked first."""
    step = run.step
    if step is None or step.ask or not step.until:
        return run
    so = all(u.that in LASTING and _stands(u, run.practice) for u in step.until)
    return _as_done(run, already=True) if so else run


def _begun_again(run: LessonRun) -> LessonRun:
    cleared = replace(
        run, practice=run.began, stand=Stand.WAITING, already=False, seen=False, steady_deg=0.0, moments=(),
        before=None, rights=run.rights[: run.at], deeds=(*run.deeds[:-1], ()),
        answers=(*run.answers[: run.at], (None,) * len(run.answers[run.at]), *run.answers[run.at + 1 :]),
    )  # fmt: skip
    return _looked_at(cleared)
