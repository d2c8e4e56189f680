"""Lessons gone through and exercises tried on this computer, by their ids
(``magview-progress/1``).

Read `Progress` for the facts; `ProgressBook` keeps them in one small file.
"""

from __future__ import annotations

import contextlib
import datetime
import hashlib
from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING, Annotated, Any, Literal

from pydantic import Field

from magview.practice.shelf import Heading
from magview.spec.base import Model, SpecError
from magview.spec.fields import may_say
from magview.spec.files import dump_json, read_json, validate, write_text
from magview.spec.language import marked, tr

if TYPE_CHECKING:  # its model takes long to make, and Start reads progress first
    from magview.practice.exercise import Exercise

FILE = "progress.json"
DAMAGED = "progress-damaged.json"
"""A file that could not be read is put aside under this name, and never written over."""

AFTER_DAYS = (1.0, 3.0, 7.0, 21.0)
"""Days after which an exercise that failed comes back, each time it was passed in between; then it is left alone."""

MOST_SHOWN = 4000

_Id = Annotated[str, Field(min_length=1, max_length=120)]
_At = Annotated[str, Field(max_length=40)]
_Count = Annotated[int, Field(ge=0, le=1_000_000)]
_Percent = Annotated[float, Field(ge=0.0, le=100.0)]


class LessonMark(Model):
    """Progress in one lesson."""

    at: _Count = may_say(marked("Step"), marked("Steps done when it was left."), 0)
    done: bool = may_say(marked("Done"), marked("Whether it was ever gone through to its end."), False)
    when: _At = may_say(marked("When"), marked("When it was last worked at."), "")
    deeds: Annotated[tuple[tuple[dict[str, Any], ...], ...], Field(max_length=60)] = may_say(
        marked("Done so far"), marked("The acts of each step behind, as an attempt has them."), ()
    )
    answers: Annotated[tuple[tuple[int | None, ...], ...], Field(max_length=60)] = may_say(
        marked("Answers"), marked("The choices taken, by step and question, from 0."), ()
    )


class ExerciseMark(Model):
    """Outcome of the attempts at an exercise."""

    tries: _Count = may_say(marked("Tries"), marked("Attempts handed in."), 0)
    best: _Percent = may_say(marked("Best"), marked("The most marks of an attempt."), 0.0)
    last: _Percent = may_say(marked("Last"), marked("The marks of the last attempt."), 0.0)
    passed: bool = may_say(marked("Passed"), marked("Whether it was ever passed."), False)
    passed_last: bool = may_say(marked("Passed last"), marked("Whether the last attempt was passed."), False)
    lost: Annotated[str, Field(max_length=40)] = may_say(
        marked("Lost"), marked("The goal that lost most marks last, or “danger”."), ""
    )
    when: _At = may_say(marked("When"), marked("When it was last handed in."), "")
    again: _Count = may_say(
        marked("Again"),
        marked("Where it once failed: 1 until it is passed, then one more each time it is passed when it came back."),
        0,
    )


class Progress(Model):
    """Lessons and exercises by their ids. One that ships no more stays, and counts nowhere."""

    format: Literal["magview-progress/1"] = "magview-progress/1"
    lessons: Annotated[dict[_Id, LessonMark], Field(max_length=2000)] = Field(default_factory=dict)
    exercises: Annotated[dict[_Id, ExerciseMark], Field(max_length=2000)] = Field(default_factory=dict)
    shown: Annotated[dict[_Id, _At], Field(max_length=MOST_SHOWN)] = Field(default_factory=dict)
    """Codes whose truth was shown here (`shown_key`), and when."""

    def lesson(self, name: str) -> LessonMark:
        """Mark of a lesson."""
        return self.lessons.get(name) or LessonMark()

    def exercise(self, name: str) -> ExerciseMark:
        """Mark of an exercise."""
        return self.exercises.get(name) or ExerciseMark()

    def next_lesson(self, shelf: tuple[Heading, ...]) -> Heading | None:
        """The lesson left in the middle last, else the first one not done; None when all are done."""
        open_ones = [found for found in shelf if not self.lesson(found.id).done]
        begun = [found for found in open_ones if self.lesson(found.id).at]
        return max(begun, key=lambda found: self.lesson(found.id).when, default=next(iter(open_ones), None))

    def next_exercise(self, shelf: tuple[Heading, ...], now: str = "") -> Heading | None:
        """The exercise that was not passed last time, the latest such; else one that is due to come back; else the
        first not passed; None if all are."""
        failed = [f for f in shelf if self.exercise(f.id).tries and not self.exercise(f.id).passed_last]
        back = self.due(shelf, now or _now())
        fresh = next((found for found in shelf if not self.exercise(found.id).passed), None)
        return max(failed, key=lambda found: self.exercise(found.id).when, default=back or fresh)

    def due(self, shelf: tuple[Heading, ...], now: str) -> Heading | None:
        """The exercise that failed once, was passed since, and is due to come back; the one overdue longest."""
        at = _moment(now)
        overdue = {f: at - due for f in shelf if (due := _due(self.exercise(f.id))) is not None and due <= at}
        return max(overdue, key=overdue.__getitem__, default=None)


def _moment(text: str) -> float:
    """Seconds since 1970 of a time as it is kept; 0 for one that cannot be read."""
    try:
        return datetime.datetime.fromisoformat(text).timestamp()
    except (ValueError, OSError, OverflowError):
        return 0.0


def _due(mark: ExerciseMark) -> float | None:
    """Moment from which an exercise is to come back; None where it never failed or sits by now."""
    if not mark.passed_last or not 2 <= mark.again <= len(AFTER_DAYS) + 1:
        return None
    return _moment(mark.when) + 86400.0 * AFTER_DAYS[mark.again - 2]


def shown_key(exercise: Exercise, seed: int) -> str:
    """Key of a code of an exercise as it is now: an exercise that was changed draws another truth."""
    return hashlib.sha256(f"{dump_json(exercise)}{seed}".encode()).hexdigest()[:24]


def _now() -> str:
    return datetime.datetime.now().astimezone().isoformat(timespec="seconds")


def _again(old: ExerciseMark, passed: bool, now: str) -> int:
    """Step to which an exercise that once failed has come; a pass before it is due is no further step."""
    if not passed:
        return 1
    due = _due(old)
    step = old.again == 1 or (due is not None and due <= _moment(now))
    return old.again + 1 if step else old.again


class ProgressBook:
    """Progress kept in a file, read anew each time: another window may have written it. Without a file it is kept as
    long as the program runs."""

    def __init__(self, path: Path | None = None, now: Callable[[], str] = _now) -> None:
        self.path, self._now = path, now
        self.damaged: Path | None = None
        """A file put aside because it could not be read."""
        self.trouble = ""
        """One sentence while progress cannot be written."""
        self._progress = Progress()
        self._listeners: list[Callable[[], None]] = []

    def read(self) -> Progress:
        """The progress as it stands. A damaged file is put aside, and progress begins anew."""
        if self.path is not None:
            aside = self.path.with_name(DAMAGED)
            if self.path.exists():
                try:
                    self._progress = validate(Progress, read_json(self.path), self.path.name)
                except SpecError:
                    self._progress = Progress()
                    with contextlib.suppress(OSError):
                        if not aside.exists():
                            self.path.replace(aside)
            self.damaged = aside if aside.exists() else None
        return self._progress

    def subscribe(self, listener: Callable[[], None]) -> None:
        """Have a function called after each change."""
        self._listeners.append(listener)

    def note_lesson(self, name: str, at: int, steps: int, left: LessonMark | None = None) -> None:
        """A lesson stands at a step, counted from 0; at the number of its steps it is done. "" is kept nowhere.
        `left`: what was done and answered on the way, so that it can be gone on with."""
        old = self.read().lesson(name)
        done = at >= steps
        way = (left.deeds, left.answers) if left is not None and not done else ((), ())
        mark = LessonMark(at=0 if done else at, done=done or old.done, when=self._now(), deeds=way[0], answers=way[1])
        if name and (mark.at, mark.done) != (old.at, old.done):
            self._keep(lessons={**self._progress.lessons, name: mark})

    def note_exercise(self, name: str, percent: float, passed: bool, lost: str = "") -> None:
        """An attempt was handed in; `lost`: the kind of the goal that lost most, or "danger". "" is kept nowhere."""
        if not name:
            return
        old = self.read().exercise(name)
        mark = ExerciseMark(
            tries=old.tries + 1,
            best=max(old.best, percent),
            last=percent,
            passed=passed or old.passed,
            passed_last=passed,
            lost=lost,
            when=self._now(),
            again=_again(old, passed, self._now()),
        )
        self._keep(exercises={**self._progress.exercises, name: mark})

    def truth_shown(self, exercise: Exercise, seed: int) -> bool:
        """Whether the truth of this code has been shown on this computer."""
        return shown_key(exercise, seed) in self.read().shown

    def note_shown(self, exercise: Exercise, seed: int) -> None:
        """The truth of a code is shown; of very many the oldest are forgotten."""
        shown = {**self.read().shown, shown_key(exercise, seed): self._now()}
        kept = sorted(shown, key=lambda key: (shown[key], key))[-MOST_SHOWN:]
        self._keep(shown={key: shown[key] for key in kept})

    def _keep(self, **changed: object) -> None:
        self._progress = self._progress.model_copy(update=changed)
        self.trouble = ""
        if self.path is not None:
            try:
                self.path.parent.mkdir(parents=True, exist_ok=True)
                write_text(self.path, dump_json(self._progress))
            except (SpecError, OSError) as error:
                self.trouble = tr("Your progress cannot be kept: {reason}.", reason=error)
        for listener in self._listeners:
            listener()
