"""Model of a lesson (``magview-lesson/1``), and its run: it waits for the act, not for a click on Next.

A lesson is a practice room and a list of steps. Each step says what to do and names what must be true, or must
have been done, for the next to begin. A lesson may show true numbers: it teaches, it does not mark.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated, Literal, Self

from pydantic import Field, model_validator

from magview.practice import actions as do
from magview.practice.apply import apply
from magview.practice.exercise import Exercise
from magview.practice.faults import begin
from magview.practice.predicates import LASTING, NEEDS, WHATS, Moment, holds, stands
from magview.practice.state import Practice
from magview.spec.base import Model, Name, SpecError, Text
from magview.spec.fields import may_say
from magview.spec.language import marked, tr

Predicate = Literal[
    "pointed-at",
    "rotor-near",
    "rotor-let-go",
    "turned",
    "act",
    "said",
    "lamp-connected",
    "lamp-shows",
    "contacts-seen-opening",
    "edge-laid",
    "edge-square",
    "lock-tight",
    "clamps-tight",
    "opening-at-mark",
    "gap-in-limits",
    "switch-on",
    "plug-out",
    "jumper-on",
    "made-safe",
    "chocked",
    "plugs-out",
    "proved",
    "stop-fitted",
    "stop-met",
    "disc-at-zero",
    "crank-near",
    "marked",
    "nuts-tight",
    "magneto-on",
    "timing-in-limits",
    "wrote",
]


class Until(Model):
    """A predicate by its name, with what it needs (`predicates.NEEDS` says which)."""

    that: Predicate = Field(title=marked("Predicate"), description=marked("What is to become true."))
    what: Annotated[str, Field(min_length=1, max_length=60)] | None = may_say(
        marked("Of what"), marked("The part, the reading or the control, where the predicate needs one.")
    )
    value: Annotated[float, Field(ge=-720.0, le=720.0)] | None = may_say(
        marked("Value"), marked("The number to be reached, where the predicate needs one.")
    )
    within: Annotated[float, Field(gt=0.0, le=90.0)] | None = may_say(
        marked("Within"), marked("How near to the value it must be.")
    )
    yes: bool = may_say(marked("True"), marked("False waits for the opposite, as of a state."), True)

    @model_validator(mode="after")
    def _has_what_it_needs(self) -> Self:
        for name in ("what", "value", "within"):
            needed, given = name in NEEDS[self.that], getattr(self, name) is not None
            if needed != given:
                raise ValueError(
                    tr("{name} is missing, which {that} needs", name=name, that=self.that)
                    if needed
                    else tr("{name} is not for {that}", name=name, that=self.that)
                )
        known = WHATS.get(self.that)
        if known is not None and self.what not in known:
            raise ValueError(
                tr(
                    "what is {what}; for {that} it must be {known}",
                    what=self.what,
                    that=self.that,
                    known=", ".join(known),
                )
            )
        return self


class LessonStep(Model):
    """One thing to do."""

    title: Name = Field(title=marked("Title"), description=marked("The step in a few words."))
    text: Text = Field(title=marked("Text"), description=marked("What is to be done, and how."))
    until: Annotated[tuple[Until, ...], Field(min_length=1, max_length=6)] = Field(
        title=marked("Until"), description=marked("All must hold at once for the next step to begin.")
    )
    done: Text = may_say(marked("Done"), marked("What to notice, said when it is done."), "")
    hint: Text = may_say(marked("Hint"), marked("Said when it is asked for."), "")


class Lesson(Model):
    """A lesson as its file describes it."""

    format: Literal["magview-lesson/1"]
    number: Annotated[int, Field(ge=1, le=999)] = Field(
        title=marked("Number"), description=marked("Its place among the lessons.")
    )
    name: Name = Field(title=marked("Name"), description=marked("What the lesson is called."))
    text: Text = Field(title=marked("Text"), description=marked("What it teaches, told before it begins."))
    seed: Annotated[int, Field(ge=0, lt=2**53)] = may_say(
        marked("Seed"), marked("Everything hidden in its exercise is drawn from it."), 0
    )
    exercise: Exercise = Field(
        title=marked("Exercise"),
        description=marked("Where it takes place; its goals are what the lesson is about."),
    )
    steps: Annotated[tuple[LessonStep, ...], Field(min_length=1, max_length=60)] = Field(
        title=marked("Steps"), description=marked("One act each, in order.")
    )


@dataclass(frozen=True)
class LessonRun:
    """A lesson under way, as a value: where it stands, and the room."""

    lesson: Lesson
    practice: Practice
    at: int = 0
    """Steps done, or so already when their turn came."""

    @property
    def step(self) -> LessonStep | None:
        """The step that waits; None when all are done."""
        return self.lesson.steps[self.at] if self.at < len(self.lesson.steps) else None

    @property
    def done(self) -> bool:
        """Whether all steps are done."""
        return self.step is None


def start_lesson(lesson: Lesson) -> LessonRun:
    """A lesson at the first step that is not so already."""
    room = begin(lesson.exercise, lesson.seed)
    return LessonRun(lesson, room, _past_what_is_so(lesson, room, 0))


def _past_what_is_so(lesson: Lesson, room: Practice, at: int) -> int:
    """The first step from one on that a room leaves something to do in."""
    while at < len(lesson.steps) and all(
        u.that in LASTING and stands(u.that, room, u.what, u.value, u.within) == u.yes for u in lesson.steps[at].until
    ):
        at += 1
    return at


def take(run: LessonRun, act: do.Act) -> LessonRun:
    """The lesson after an act, one step on where the act is what it waited for, and past steps that then are so
    already. Raises SpecError for an act that cannot be done."""
    if isinstance(act, do.HandIn):
        raise SpecError(tr("a lesson is not handed in"))
    after = apply(run.practice, act)
    step = run.step
    moment = Moment(run.practice, after, act)
    reached = step is not None and all(
        holds(u.that, moment, u.what, u.value, u.within) == u.yes for u in step.until
    )  # fmt: skip
    return LessonRun(run.lesson, after, _past_what_is_so(run.lesson, after, run.at + 1) if reached else run.at)
