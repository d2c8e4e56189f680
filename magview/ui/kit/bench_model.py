"""The store as a Qt object: one `changed` signal, refusals as sentences, and time that passes."""

from __future__ import annotations

from PySide6.QtCore import QElapsedTimer, QObject, QTimer, Signal

from magview.bench import actions as do
from magview.bench.events import next_event, run_step
from magview.bench.state import BenchState, swing_limits_deg
from magview.bench.store import Store
from magview.physics.electric.magnet import STEP_S, friction_share, rest_deg
from magview.spec.base import SpecError
from magview.spec.language import tr
from magview.ui.kit.pictured import Pictured

FRAME_MS = 16
_MOST_STEPS = round(0.1 / STEP_S)
"""After a pause of the screen the clock does not catch up by more than this."""


class BenchModel(Pictured):
    """Owns the present state; views read `state`, send actions, and repaint on `changed(new, old)`."""

    ran = Signal(str)
    """A run has ended: what it came to, or nothing if it was stopped."""

    def __init__(self, state: BenchState, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._store = Store(state)
        self._store.subscribe(self._tell)
        self._gripped = False
        self._run: tuple[float, str | None, int] | None = None
        self.reduced_motion = False
        """No swinging and no running on screen: the end is shown at once."""
        self._timer = QTimer(self)
        self._timer.setInterval(FRAME_MS)
        self._timer.timeout.connect(self._frame)
        self._since = QElapsedTimer()

    @property
    def state(self) -> BenchState:
        """The present state."""
        return self._store.state

    @property
    def store(self) -> Store:
        """The store, for its history."""
        return self._store

    @property
    def running(self) -> bool:
        """Whether the rotor is being run."""
        return self._run is not None

    def send(self, action: do.Action, gesture: object = None) -> bool:
        """Take an action; False, with `refused` emitted, where it cannot be taken."""
        if isinstance(action, do.LetGo) and self.reduced_motion:
            action = do.SettleRotor()
        if self._run is not None and gesture != self._run[2] and isinstance(action, do.MovesRotor):
            self.stop()  # a hand on it ends the run
        try:
            self._store.send(action, gesture)
        except SpecError as error:
            self.refused.emit(str(error))
            return False
        return True

    def undo(self) -> None:
        """Go back one step."""
        self.stop()
        self._store.undo()

    def redo(self) -> None:
        """Go forward again one step."""
        self.stop()
        self._store.redo()

    def grip(self, gripped: bool) -> None:
        """A hand is on the rotor while it is dragged: the magnet waits."""
        self._gripped = gripped
        self._pace()

    def run(self, speed_deg_s: float, stop_at: str | None) -> None:
        """Turn the rotor slowly, positive with rotation, until it comes to a kind of event."""
        if stop_at is not None and next_event(self.state, stop_at) is None:
            self.refused.emit(tr("with this setting there is no “{place}” to run to", place=tr(stop_at)))
            self.ran.emit("")
            return
        self._run = (speed_deg_s, stop_at, self.gesture())
        if self.reduced_motion and stop_at is not None:
            to, reached = run_step(self.state, 360.0 * 10 * (1 if speed_deg_s >= 0 else -1), stop_at)
            if reached:
                self.send(do.TurnRotor(to), self._run[2])
            self._end_run(stop_at if reached else "")
            return
        self._pace()

    def stop(self) -> None:
        """End a run where it is."""
        if self._run is not None:
            self._end_run("")

    def halt(self) -> None:
        """The window closes: time stands still."""
        self.stop()
        self._timer.stop()

    def _end_run(self, came_to: str) -> None:
        self._run = None
        self._pace()
        self.ran.emit(came_to)

    def _tell(self, new: BenchState, old: BenchState) -> None:
        self._pace()
        self.changed.emit(new, old)

    def _swinging(self) -> bool:
        state = self.state
        detent = state.magneto.detent
        if state.held or self._gripped or self._run is not None or detent is None or detent.torque_nm == 0.0:
            return False
        share = friction_share(detent)
        rest = rest_deg(state.magneto.poles, state.rotor_deg, swing_limits_deg(state), share)
        return abs(state.speed_deg_s) > 0.05 or abs(state.rotor_deg - rest) > 0.005

    def _pace(self) -> None:
        """The timer runs only while something moves."""
        wanted = self._run is not None or self._swinging()
        if wanted and not self._timer.isActive():
            self._since.start()
            self._timer.start()
        elif not wanted and self._timer.isActive():
            self._timer.stop()

    def _frame(self) -> None:
        self.tick(self._since.restart() / 1000.0)

    def tick(self, seconds: float) -> None:
        """Let time pass: what the timer does each frame."""
        if self._run is not None:
            speed, stop_at, gesture = self._run
            to, reached = run_step(self.state, speed * min(seconds, 0.1), stop_at)
            self.send(do.TurnRotor(to), gesture)
            if reached:
                self._end_run(stop_at or "")
        elif self._swinging():
            if self.reduced_motion:
                self.send(do.SettleRotor())
            else:
                self.send(do.Advance(max(1, min(round(seconds / STEP_S), _MOST_STEPS))))
