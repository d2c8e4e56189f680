"""One way in, one way out: the store holds the present state, takes actions, tells who listens."""

from __future__ import annotations

from collections.abc import Callable

from magview.bench.state import Action, BenchState, apply

Listener = Callable[[BenchState, BenchState], None]


class Store:
    """The owner of the present state. Listeners get (new, old), once a change, never for no change."""

    def __init__(self, state: BenchState) -> None:
        self._state = state
        self._listeners: list[Listener] = []

    @property
    def state(self) -> BenchState:
        """The present state."""
        return self._state

    def subscribe(self, listener: Listener) -> None:
        """Have `listener(new, old)` called after each change."""
        self._listeners.append(listener)

    def send(self, action: Action) -> None:
        """Take an action. Raises SpecError for one that cannot be taken; the state then stands."""
        old, new = self._state, apply(self._state, action)
        if new == old:
            return
        self._state = new
        for listener in self._listeners:
            listener(new, old)
