"""The store: holds the present state, takes actions, keeps the history, and notifies its listeners."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from magview.bench import actions, apply, describe
from magview.bench.state import BenchState
from magview.spec.history import History, Step

MAX_EVENTS = 20_000
"""Events a journal holds, some 7 MB: five minutes of turning without a pause, a day of work by hand."""

Listener = Callable[[BenchState, BenchState], None]


@dataclass(frozen=True)
class Undo:
    """Go back one step."""


@dataclass(frozen=True)
class Redo:
    """Go forward again one step."""


if TYPE_CHECKING:
    Event = actions.Action | Undo | Redo


class Store:
    """The owner of the present state. Listeners get (new, old), once a change, never for no change.

    Actions sent with the same gesture (one drag, one run) are one step of the history. Time that passes is
    part of the step before it.
    """

    def __init__(self, state: BenchState) -> None:
        self._first = self._state = state
        self._listeners: list[Listener] = []
        self._history: History[BenchState] = History()
        self._journal: list[tuple[Event, object]] = []

    @property
    def state(self) -> BenchState:
        """The present state."""
        return self._state

    @property
    def first(self) -> BenchState:
        """The state the journal begins with: the store's own first one, until there are too many events."""
        return self._first

    @property
    def journal(self) -> Sequence[tuple[Event, object]]:
        """The events since `first`, undoing included, each with its gesture: sent again, they give the same state."""
        return tuple(self._journal)

    def before_last(self, key: Callable[[BenchState], object]) -> BenchState | None:
        """The state before the last step that changed what `key` looks at; None if none did."""
        now = key(self._state)
        for step in reversed(self._history.steps[: self._history.done]):
            if key(step.before) != now:
                return step.before
        return None

    @property
    def undo_name(self) -> str | None:
        """Name of the step that would be undone; None if there is none."""
        return self._history.undo_name

    @property
    def redo_name(self) -> str | None:
        """Name of the step that would be redone; None if there is none."""
        return self._history.redo_name

    def subscribe(self, listener: Listener) -> None:
        """Have `listener(new, old)` called after each change."""
        self._listeners.append(listener)

    def send(self, action: actions.Action, gesture: object = None) -> None:
        """Take an action. Raises SpecError for one that cannot be taken; the state then stands."""
        old, new = self._state, apply.apply(self._state, action)
        if new == old:
            # −0.0 equals 0.0 and is written otherwise: what is no step must not change what is kept.
            self._state = replace(old, touched=new.touched) if new.touched != old.touched else old
            return
        self._remember(action, gesture, old, new)
        self._record(action, gesture, old)
        self._set(new, old)

    def undo(self) -> None:
        """Go back one step, if there is one."""
        if step := self._history.last:
            self._history = self._history.undo()
            self._record(Undo(), None, self._state)
            self._set(step.before, self._state)

    def redo(self) -> None:
        """Go forward again one step, if there is one."""
        if step := self._history.next:
            self._history = self._history.redo()
            self._record(Redo(), None, self._state)
            self._set(step.after, self._state)

    def _remember(self, action: actions.Action, gesture: object, old: BenchState, new: BenchState) -> None:
        if isinstance(action, actions.Advance):
            # Time is never a step of its own, or a rotor that swings after an undo would bury what can be redone.
            self._history = self._history.amend(new)
            return
        joined = self._history.joins(gesture)
        name = describe.describe(action, joined.before if joined else old, new)
        self._history = self._history.take(Step(name, old, new, gesture=gesture))

    def _record(self, event: Event, gesture: object, before: BenchState) -> None:
        if len(self._journal) >= MAX_EVENTS:  # hours of turning: the record begins anew from here
            self._first, self._journal = before, []
        self._journal.append((event, gesture))

    def _set(self, new: BenchState, old: BenchState) -> None:
        self._state = new
        for listener in self._listeners:
            listener(new, old)
