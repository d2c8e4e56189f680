"""Undo and redo, for any value that is replaced and never changed in place."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Generic, TypeVar

T = TypeVar("T")

MAX_STEPS = 2_000
"""Steps that can be undone; older ones are forgotten."""


@dataclass(frozen=True)
class Step(Generic[T]):
    """One step of a history: its name, and the values before and after it.

    `at` is the time it was taken, where that is kept. Steps of one `gesture` (a drag, a run) are one step.
    """

    name: str
    before: T
    after: T
    at: str = ""
    gesture: object = None


@dataclass(frozen=True)
class History(Generic[T]):
    """The steps taken, oldest first: `done` of them stand, those after them were undone and can be redone.

    A history is a value: each method returns another one and leaves this one as it is.
    """

    steps: tuple[Step[T], ...] = ()
    done: int = 0

    @property
    def last(self) -> Step[T] | None:
        """The step that would be undone; None if there is none."""
        return self.steps[self.done - 1] if self.done else None

    @property
    def next(self) -> Step[T] | None:
        """The step that would be redone; None if there is none."""
        return self.steps[self.done] if self.done < len(self.steps) else None

    @property
    def undo_name(self) -> str | None:
        """The name of the step that would be undone; None if there is none."""
        return self.last.name if self.last else None

    @property
    def redo_name(self) -> str | None:
        """The name of the step that would be redone; None if there is none."""
        return self.next.name if self.next else None

    def joins(self, gesture: object) -> Step[T] | None:
        """The last step if an action of this gesture goes on with it; None if the action begins a new step."""
        last = None if self.next else self.last
        return last if last is not None and gesture is not None and last.gesture == gesture else None

    def take(self, step: Step[T]) -> History[T]:
        """Add a step; steps that were undone are forgotten. A gesture that ends where it began leaves no step."""
        steps = self.steps[: self.done]
        if joined := self.joins(step.gesture):
            steps, step = steps[:-1], replace(step, before=joined.before)
        if step.before != step.after:
            steps = (*steps, step)[-MAX_STEPS:]
        return History(steps, len(steps))

    def amend(self, after: T) -> History[T]:
        """Count a change as part of the last step, unless no step stands or steps can be redone."""
        if self.last is None or self.next:
            return self
        return replace(self, steps=(*self.steps[:-1], replace(self.last, after=after)))

    def undo(self) -> History[T]:
        """The history after its last step was undone."""
        return replace(self, done=max(0, self.done - 1))

    def redo(self) -> History[T]:
        """The history after its next step was redone."""
        return replace(self, done=min(len(self.steps), self.done + 1))

    def shorter(self, count: int) -> History[T]:
        """Forget `count` steps: the oldest that stand, or the last to be redone where none stands."""
        past = min(count, self.done)
        return History(self.steps[past:] if past else self.steps[:-count], self.done - past)
