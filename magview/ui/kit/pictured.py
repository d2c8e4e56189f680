"""Model that pictures show: a state, one signal when it changes, and hands to turn it with."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from itertools import count

from PySide6.QtCore import QObject, Signal

from magview.bench import actions as do
from magview.bench.state import BenchState, crank_deg


class Pictured(QObject):
    """Pictures read `state`, send actions, and repaint on `changed(new, old)`: of the bench, or of practice."""

    changed = Signal(object, object)
    refused = Signal(str)
    reduced_motion = False
    """Whether nothing is to be shown moving that need not move."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._gestures = count(1)
        self.asker: QObject | None = None
        """The control whose wish is being tried: a refusal is told beside it. None for a picture's own."""

    @property
    def state(self) -> BenchState:
        """The present state."""
        raise NotImplementedError

    def send(self, action: do.Action, gesture: object = None) -> bool:
        """Take an action; False, with `refused` emitted, where it cannot be taken."""
        raise NotImplementedError

    @contextmanager
    def asked_by(self, control: QObject) -> Iterator[None]:
        """Credit a control with what is sent or refused meanwhile."""
        self.asker = control
        try:
            yield
        finally:
            self.asker = None

    def gesture(self) -> int:
        """A name for one drag or one run: what is sent with it is one step of the history."""
        return next(self._gestures)

    def turn_crank(self, degrees: float) -> None:
        """Turn the crank on by so much [crank deg], where there is one."""
        if self.state.engaged is not None:
            self.send(do.TurnCrank(crank_deg(self.state) + degrees))

    def grip(self, gripped: bool) -> None:
        """A hand is on the rotor while it is dragged."""

    def stop(self) -> None:
        """End a run where it is."""
