"""Words for the three doors: read from progress and job sheets, never kept. Without Qt's widgets."""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum
from pathlib import Path
from typing import TYPE_CHECKING

from magview.practice import shelf
from magview.practice.progress import ExerciseMark, Progress
from magview.spec.base import SpecError
from magview.spec.formats import stem_of
from magview.spec.language import marked, tr

if TYPE_CHECKING:  # loaded where there is a job to tell of
    from magview.job.sheet import Job


class Segment(Enum):
    """One piece of a door's bar: its words, which a screen reader tells."""

    DONE = marked("done")
    NOW = marked("next")
    DANGER = marked("in danger")
    OPEN = marked("open")


@dataclass(frozen=True)
class Told:
    """Words of one door: a line above the next thing, the thing, a line below it, a bar, and the button's words."""

    kicker: str
    title: str
    line: str
    button: str
    bar: tuple[Segment, ...] = ()
    count: str = ""
    warns: bool = False
    more: str = ""
    """The line in full, as its tip."""
    when: str = ""
    """Time of the last work at it."""


_LOST = {
    "danger": marked("Last time {percent} of 100: a dangerous act."),
    "e-gap": marked("Last time {percent} of 100: marks lost on the E-gap."),
    "opening": marked("Last time {percent} of 100: marks lost on the opening."),
    "gap": marked("Last time {percent} of 100: marks lost on the gap."),
    "contacts": marked("Last time {percent} of 100: marks lost on the contacts."),
    "disc-zero": marked("Last time {percent} of 100: marks lost on the disc's zero."),
    "timing": marked("Last time {percent} of 100: marks lost on the firing."),
    "synchronised": marked("Last time {percent} of 100: left and right apart."),
    "lead": marked("Last time {percent} of 100: marks lost on the switch lead."),
    "marks": marked("Last time {percent} of 100: marks lost on paint marks."),
    "secured": marked("Last time {percent} of 100: marks lost on the screws."),
    "reading": marked("Last time {percent} of 100: marks lost on a reading."),
}
_DANGERS = {
    "live": marked("this magneto is live"),
    "other-live": marked("the other magneto is live"),
    "live-lead-pulled": marked("live with its lead pulled"),
    "no-drop": marked("no proper drop of speed"),
    "switch-does-not-stop": marked("the switch does not stop it"),
    "wrong-stroke": marked("the wrong stroke"),
    "not-safe": marked("not made safe"),
}
"""A danger on a sheet in a few words; the whole warning is the tip."""


def learn_door(progress: Progress, at: tuple[str, int] | None = None) -> Told:
    """The lesson that is open in the window, at a step counted from 0, else the next one."""
    lessons = shelf.lessons()
    done = [progress.lesson(found.id).done for found in lessons]
    count = tr("{done} of {all}", done=sum(done), all=len(lessons))
    ours = [found for found in lessons if at is not None and found.id == at[0]]
    found = ours[0] if ours else progress.next_lesson(lessons)
    when = max((progress.lesson(each.id).when for each in lessons), default="")
    bar = _bar(done, lessons.index(found) if found is not None else -1)
    if found is None:
        again, last = lessons[0], tr("Each can be gone through again.")
        return Told(tr("All lessons are done"), tr(again.name), last, tr("Lesson 1 again"), bar, count, when=when)
    title = tr("{number}  {name}", number=found.number, name=tr(found.name))
    mark = progress.lesson(found.id)
    if at is not None and ours and at[1] < found.steps:
        step = at[1] + 1
        line = tr("You stopped at step {step} of {steps}.", step=step, steps=found.steps)
        return Told(tr("Under way"), title, line, tr("Go on with step {step}", step=step), bar, count, when=when)
    begin = tr("Start lesson {number}", number=found.number)
    if mark.at:
        line = tr("You left it at step {step} of {steps}.", step=mark.at + 1, steps=found.steps)
        return Told(tr("Next lesson"), title, line, begin, bar, count, when=when)
    line = tr("{steps} short steps. About {minutes:.0f} minutes.", steps=found.steps, minutes=found.minutes)
    return Told(tr("Next lesson") if any(done) else tr("Begin here"), title, line, begin, bar, count, when=when)


def practise_door(progress: Progress, under_way: str | None = None) -> Told:
    """The attempt that is open in the window, by the name of its exercise, else the exercise to do next."""
    exercises = shelf.exercises()
    passed = [progress.exercise(found.id).passed for found in exercises]
    count = tr("{done} of {all} passed", done=sum(passed), all=len(exercises))
    found = progress.next_exercise(exercises)
    when = max((progress.exercise(each.id).when for each in exercises), default="")
    bar = _bar(passed, exercises.index(found) if found is not None else -1)
    if under_way is not None:
        line = tr("Not handed in yet.")
        return Told(tr("Under way"), under_way, line, tr("Go on"), bar, count, when=when)
    if found is None:
        hardest = exercises[-1]
        line = tr("Every exercise is passed.")
        return Told(tr("Once more"), tr(hardest.name), line, tr("Begin"), bar, count, when=when)
    mark = progress.exercise(found.id)
    if mark.tries and not mark.passed_last:
        return Told(tr("Worth another go"), tr(found.name), _lost(mark), tr("Begin"), bar, count, when=when)
    if mark.passed_last:
        line = tr("It failed once and was passed since. Does it still go?")
        return Told(tr("Worth another go"), tr(found.name), line, tr("Begin"), bar, count, when=when)
    line = tr("Level {level}. About {minutes:.0f} minutes.", level=found.number, minutes=found.minutes)
    kicker = tr("Next exercise") if any(passed) else tr("The easiest")
    return Told(kicker, tr(found.name), line, tr("Begin"), bar, count, when=when)


def _lost(mark: ExerciseMark) -> str:
    words = _LOST.get(mark.lost, marked("Last time {percent} of 100."))
    return tr(words, percent=round(mark.last))


def no_job() -> Told:
    """Work, where no sheet was begun yet."""
    title, line = (
        tr("A job sheet, or a shift plan alone"),
        tr("A plan needs teeth and the lamp, no drawing."),
    )
    return Told(tr("No job yet"), title, line, tr("New job sheet…"))


def unread_job(path: Path) -> Told:
    """A sheet that is about to be read."""
    return Told(tr("Open job"), stem_of(path), "", tr("Open the job sheet"))


def job_door(job: Job, path: Path, when: str = "") -> Told:
    """The sheet worked on last, as it stands in its file or in the window."""
    from magview.job.danger import dangers
    from magview.job.sheet import STAGES, stage_of, title_of
    from magview.job.status import danger_words

    title = job.title or job.aircraft.registration or stem_of(path)
    found = dangers(job)
    risky = {danger.stage for danger in found}
    states = [stage_of(job, name).state for name in STAGES]
    at = next((i for i, state in enumerate(states) if state == "open"), -1)
    bar = tuple(
        Segment.DANGER
        if name in risky
        else Segment.NOW
        if i == at
        else Segment.OPEN
        if states[i] == "open"
        else Segment.DONE
        for i, name in enumerate(STAGES)
    )
    count = tr("{done} of {all}", done=sum(state != "open" for state in states), all=len(STAGES))
    signed = job.signature is not None
    kicker = tr("Last job") if signed else tr("Open job")
    button = tr("Open the job sheet") if signed or at < 0 else tr("Open stage {stage}", stage=at + 1)
    if found:
        stage = STAGES.index(found[0].stage) + 1
        line = tr("△ Danger at stage {stage}: {what}.", stage=stage, what=tr(_DANGERS[found[0].kind.value]))
        told = "\n".join(danger_words(danger) for danger in found)
        return Told(kicker, title, line, button, bar, count, warns=True, more=told, when=when)
    if signed:
        return Told(kicker, title, tr("Signed."), button, bar, count, when=when)
    line = tr("To be signed.") if at < 0 else tr("Stage {stage}: {name}.", stage=at + 1, name=title_of(STAGES[at]))
    return Told(kicker, title, line, button, bar, count, when=when)


def read_job_door(path: Path, when: str = "") -> Told | None:
    """The sheet in a file; None where it cannot be read."""
    from magview.job.library import read_job

    try:
        return job_door(read_job(path), path, when)
    except SpecError:
        return None


def _bar(done: list[bool], now: int) -> tuple[Segment, ...]:
    return tuple(Segment.DONE if each else Segment.NOW if i == now else Segment.OPEN for i, each in enumerate(done))
