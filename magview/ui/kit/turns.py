"""Taking turns: pictures beside the one in hand follow a change one at a time, so that the hand never waits for all.

A zero timer runs once in each turn of the event loop, after what the hand did and what that repaints. Who waits is
served first come, first served; a state that came meanwhile is not shown twice, and the last one always is.
"""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QObject, QTimerEvent
from PySide6.QtWidgets import QWidget
from shiboken6 import isValid

from magview.bench.state import BenchState, same_but_worn
from magview.ui.kit.pictured import Pictured


class Turns(QObject):
    """The queue of a model's followers."""

    def __init__(self, model: Pictured) -> None:
        super().__init__(model)
        self._waiting: list[Follower] = []
        self._timer = 0

    @classmethod
    def of(cls, model: Pictured) -> Turns:
        """The one queue of a model."""
        return model.findChild(cls) or cls(model)

    def ask(self, follower: Follower) -> None:
        """Have a follower catch up when its turn comes."""
        if follower not in self._waiting:
            self._waiting.append(follower)
        if not self._timer:
            self._timer = self.startTimer(0)

    def timerEvent(self, event: QTimerEvent) -> None:
        """Serve the first that is seen."""
        served = False
        while self._waiting and not served:
            follower = self._waiting.pop(0)
            served = isValid(follower) and follower.serve()
        if not self._waiting and self._timer:
            self.killTimer(self._timer)
            self._timer = 0


class Follower(QObject):
    """Has a view show its model's state in its turn."""

    def __init__(
        self, surface: QWidget, model: Pictured, show: Callable[[BenchState, BenchState | None], None]
    ) -> None:
        """`surface`: the widget that is painted; `show`: is given the present state and the one shown before."""
        super().__init__(surface)
        self._surface = surface
        self._model, self._show = model, show
        self._shown: BenchState | None = None
        self.painting = False
        """Whether it catches up because it is being painted: that shows it, and no repaint need be asked for."""
        model.changed.connect(self._changed)

    @property
    def behind(self) -> bool:
        """Whether the view shows an earlier state."""
        return self._shown is not None

    def serve(self) -> bool:
        """Have the view painted, whereupon it catches up; whether anybody sees it. Hidden, it waits to be shown."""
        if not self.behind or not self._surface.isVisible():
            return False
        self._surface.update()
        return True

    def catch_up(self, *, painting: bool = False) -> None:
        """Show the present state now."""
        shown, self._shown = self._shown, None
        if shown is None:
            return
        self.painting = painting
        try:
            self._show(self._model.state, shown)
        finally:
            self.painting = False

    def _changed(self, state: BenchState, old: BenchState) -> None:
        if self._shown is None:
            self._shown = old
        if _refitted(state, old):
            self.catch_up()
        else:
            Turns.of(self._model).ask(self)


def _refitted(state: BenchState, old: BenchState) -> bool:
    """Whether more was done than turning or setting: such acts are single, and shown at once."""
    now, was = state.engaged, old.engaged
    if not same_but_worn(state.magneto, old.magneto) or (now is None) != (was is None):
        return True
    if now is was or now is None or was is None:
        return False
    return now.installation is not was.installation or now.side != was.side or now.mounting != was.mounting
