"""Model of a lesson, the ``magview-lesson/1`` file; `lesson_run` goes through one.

A lesson is a practice room and a list of steps. Each step says one act and names the conditions that make it done;
it may ask beforehand for a guess. A lesson may show true numbers: it teaches, it does not mark.
"""

from __future__ import annotations

from typing import Annotated, Literal, Self

from pydantic import Field, model_validator

from magview.practice.exercise import Exercise
from magview.practice.predicates import NEEDS, WHATS
from magview.spec.base import Model, Name, Text
from magview.spec.fields import may_say
from magview.spec.language import marked, tr

Predicate = Literal[
    "pointed-at",
    "rotor-near",
    "rotor-let-go",
    "turned",
    "turned-here",
    "act",
    "said",
    "blade",
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
    "disc-near",
    "marked",
    "nuts-tight",
    "magneto-on",
    "timing-in-limits",
    "wrote",
]


class Until(Model):
    """A predicate by its name, with what it needs (`predicates.NEEDS` says which)."""

    that: Predicate = Field(title=marked("Predicate"), description=marked("The condition that ends the step."))
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


class Question(Model):
    """A guess asked for before the act, or a question by itself. `about` leaves the answer to the bench."""

    about: Literal["gap", "opening"] | None = may_say(
        marked("About"), marked("The reading that the act changes, or not; the bench then knows the answer.")
    )
    ask: Annotated[str, Field(max_length=120)] = may_say(marked("Question"), marked("The question."), "")
    choices: Annotated[tuple[Name, ...], Field(max_length=3)] = may_say(
        marked("Choices"), marked("The answers to choose from."), ()
    )
    right: Annotated[int, Field(ge=1, le=3)] | None = may_say(
        marked("Right answer"), marked("Its place among the choices, 1 for the first.")
    )

    @model_validator(mode="after")
    def _has_one_answer(self) -> Self:
        if self.about is not None:
            if self.ask or self.choices or self.right is not None:
                raise ValueError(tr("ask, choices and right are not for a question about gap or opening"))
            return self
        if not self.ask or len(self.choices) < 2 or self.right is None or self.right > len(self.choices):
            raise ValueError(tr("a question needs ask, 2 or 3 choices, and right, the place of one of them"))
        return self


Pane = Literal["contacts", "why-here", "breaker", "drive", "crank", "window", "pull"]
"""Pictures that can stand in a lesson: the contacts magnified, flux and energy over the angle, the three ends, the
adjustment window and the magnet's pull."""


class LessonStep(Model):
    """One thing to do, or with no `until` one thing to answer."""

    title: Name = Field(title=marked("Title"), description=marked("The step in a few words."))
    text: Text = Field(title=marked("Text"), description=marked("The one act, beginning with its verb."))
    how: Annotated[str, Field(max_length=200)] = may_say(
        marked("How"), marked("By which hand, key or control it is done."), ""
    )
    ask: Annotated[tuple[Question, ...], Field(max_length=2)] = may_say(
        marked("Asked before"), marked("The prediction, made before the act."), ()
    )
    exercise: Exercise | None = may_say(
        marked("Goes on elsewhere"), marked("Another bench, on which the lesson goes on from this step.")
    )
    until: Annotated[tuple[Until, ...], Field(max_length=6)] = may_say(
        marked("Until"), marked("All must hold when the hand lets go; left out, the step is done when answered."), ()
    )
    done: Text = may_say(marked("Done"), marked("Why it is so, said when it is done."), "")
    hint: Text = may_say(marked("Hint"), marked("Said when it is asked for."), "")
    show: Pane | None = may_say(marked("Shows"), marked("The picture beside that shows why."))

    @model_validator(mode="after")
    def _waits_for_something(self) -> Self:
        if not self.until and not self.ask:
            raise ValueError(tr("until is missing: a step waits for an act, or asks something"))
        return self


class Lesson(Model):
    """A lesson as its file describes it."""

    format: Literal["magview-lesson/1"]
    number: Annotated[int, Field(ge=1, le=999)] = Field(
        title=marked("Number"), description=marked("Its place among the lessons.")
    )
    name: Name = Field(title=marked("Name"), description=marked("Name of the lesson."))
    text: Text = Field(title=marked("Text"), description=marked("Its one idea, told before it begins."))
    hero: Pane = may_say(marked("Large picture"), marked("The exercise worked at."), "breaker")
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
