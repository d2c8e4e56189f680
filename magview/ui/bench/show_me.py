"""Acts of the advice, carried out on the bench one after the other as a hand would: slowly enough to be seen."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from PySide6.QtCore import QElapsedTimer, QObject, QTimer, Signal

from magview.bench.actions import Action, TurnBackplate, TurnScrew
from magview.bench.advised import Act
from magview.bench.state import BenchState
from magview.ui.kit.bench_model import FRAME_MS, BenchModel

_TURN_S, _PAUSE_S = 1.2, 0.7
"""A turn of plate or screw takes this long, and so much lies between two acts [s]."""


class ShowMe(QObject):
    """Each act is one step of the history. A hand on the bench ends the show where it is."""

    at_act = Signal(int)
    """The act that is being shown, from 0; as many as there are once the last is done."""
    ended = Signal()

    def __init__(self, model: BenchModel, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._model = model
        self._acts: Sequence[Act] = ()
        self._place, self._gone_s, self._from_deg, self._gesture = 0, 0.0, 0.0, 0
        self._sending = False
        self._timer = QTimer(self)
        self._timer.setInterval(FRAME_MS)
        self._timer.timeout.connect(self._frame)
        self._since = QElapsedTimer()
        model.changed.connect(self._changed)

    @property
    def running(self) -> bool:
        """Whether something is being shown."""
        return bool(self._acts)

    def start(self, acts: Sequence[Act]) -> None:
        """Show these acts; without motion all of them are done at once."""
        self._acts = tuple(acts)
        self._place = -1
        if self._model.reduced_motion:
            for act in self._acts:
                if act.action is not None and not self._send(act.action, None):
                    break
            self.stop()
            return
        self._since.start()
        self._next()
        if self.running:
            self._timer.start()

    def stop(self) -> None:
        """End it where it is."""
        self._timer.stop()
        if self._acts:
            self._acts = ()
            self.ended.emit()

    def tick(self, seconds: float) -> None:
        """Let time pass: what the timer does each frame."""
        if not self.running:
            return
        self._gone_s += seconds
        share = min(self._gone_s / _TURN_S, 1.0)
        for action in _part(self._acts[self._place].action, self._from_deg, share):
            if not self._send(action, self._gesture):
                self.stop()
                return
        if self._gone_s >= _TURN_S + _PAUSE_S:
            self._next()

    def _next(self) -> None:
        self._place += 1
        self._gone_s = 0.0
        if self._place == len(self._acts):
            self.stop()
            return
        self._gesture = self._model.gesture()
        self._from_deg = _stands(self._model.state, self._acts[self._place].action)
        self.at_act.emit(self._place)

    def _send(self, action: Action, gesture: int | None) -> bool:
        self._sending = True
        try:
            return self._model.send(action, gesture)
        finally:
            self._sending = False

    def _changed(self, state: BenchState, old: BenchState) -> None:
        """Other hands are on the bench; a rotor that swings by itself is none."""
        if self.running and not self._sending and _hands(state) != _hands(old):
            self.stop()

    def _frame(self) -> None:
        self.tick(min(self._since.restart() / 1000.0, 0.1))


def _part(action: Action | None, from_deg: float, share: float) -> Iterator[Action]:
    """An action as far as it has come: a turn goes on smoothly, anything else is done at once."""
    match action:
        case TurnScrew(to_deg):
            yield TurnScrew(to_deg if share == 1.0 else from_deg + share * (to_deg - from_deg))
        case TurnBackplate(to_deg):
            yield TurnBackplate(to_deg if share == 1.0 else from_deg + share * (to_deg - from_deg))
        case None:
            return
        case _:
            yield action


def _stands(state: BenchState, action: Action | None) -> float:
    return state.backplate_deg if isinstance(action, TurnBackplate) else state.screw_deg


def _hands(state: BenchState) -> object:
    rotor = state.rotor_deg if state.held else None
    return (
        state.magneto, state.backplate_deg, state.screw_deg, state.lock_tight, state.clamps_tight, state.held, rotor,
        state.lead,
    )  # fmt: skip
