"""Practice as a Qt object: acts in, one signal out, time by a real clock. There is no undo: hands have none."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QElapsedTimer, QObject, Signal

from magview.bench.actions import Action
from magview.bench.easing import Eased
from magview.bench.state import BenchState
from magview.practice.actions import Act, TurnPropeller, TurnToReading, TurnUntil, from_bench
from magview.practice.attempt import Session
from magview.practice.state import Practice
from magview.practice.turning import eased
from magview.spec.base import SpecError
from magview.spec.language import marked, tr
from magview.ui.kit.pictured import Pictured

AT_THE_PROPELLER = marked("put a hand on the propeller first, and treat it as live: nobody else in its arc")


class PracticeModel(Pictured):
    """Model of every practice room: the pictures' state is the room's bench, and every act may be refused."""

    acted = Signal(object, object, object)
    """The act, the room after it, the room before."""
    propeller = Signal(bool)
    """Whether a hand is on the propeller."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._at_propeller = False

    @property
    def practice(self) -> Practice:
        """The room now."""
        raise NotImplementedError

    @property
    def teaches(self) -> bool:
        """Whether true numbers may be shown: a lesson teaches, an attempt is marked."""
        return False

    @property
    def state(self) -> BenchState:
        """The magneto in view."""
        return self.practice.bench

    @property
    def at_propeller(self) -> bool:
        """Whether a hand is on the propeller; without one it does not turn."""
        return self._at_propeller

    def take_propeller(self, on: bool) -> None:
        """Put a hand on the propeller, or step out of its arc."""
        self._at_propeller = on
        self.propeller.emit(on)

    def send(self, action: Action, gesture: object = None) -> bool:
        """Take an action of the bench's pictures, as the act of a hand that it stands for."""
        try:
            act = from_bench(self.practice, action)
        except SpecError as error:
            self.refused.emit(str(error))
            return False
        return act is None or self.do(act, gesture)

    def do(self, act: Act, gesture: object = None) -> bool:
        """Do something; False, with `refused` emitted, where it cannot be done."""
        old = self.practice
        if not self.at_propeller and _by_propeller(old, act):
            self.refused.emit(tr(AT_THE_PROPELLER))
            return False
        try:
            self._do(act, gesture)
        except SpecError as error:
            self.refused.emit(str(error))
            return False
        self.changed.emit(self.practice.bench, old.bench)
        self.acted.emit(act, self.practice, old)
        return True

    def ease(self, part: Eased, forward: bool) -> bool:
        """Turn backplate or contact screw slowly until the lamp changes, or to its end."""
        try:
            act = eased(self.practice, part, forward)
        except SpecError as error:
            self.refused.emit(str(error))
            return False
        return self.do(act)

    def _do(self, act: Act, gesture: object) -> None:
        raise NotImplementedError


class AttemptModel(PracticeModel):
    """An attempt under way. `clock` gives the seconds since it was opened; what was done before counts on."""

    def __init__(
        self, session: Session, clock: Callable[[], float] | None = None, parent: QObject | None = None
    ) -> None:
        super().__init__(parent)
        self.session = session
        self._timer = QElapsedTimer()
        self._timer.start()
        self._clock = clock or self._seconds
        events = session.attempt.events
        self._before_s = events[-1].at_s if events else 0.0

    @property
    def practice(self) -> Practice:
        """The room now."""
        return self.session.practice

    def _seconds(self) -> float:
        return self._timer.elapsed() / 1000.0

    def _do(self, act: Act, gesture: object) -> None:
        self.session.send(act, self._before_s + self._clock(), gesture)


class ReplayModel(Pictured):
    """A room that is looked at again and cannot be touched."""

    def __init__(self, practice: Practice, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.practice = practice

    @property
    def state(self) -> BenchState:
        """The magneto in view then."""
        return self.practice.bench

    def show(self, practice: Practice) -> None:
        """Look at another moment."""
        old, self.practice = self.practice, practice
        self.changed.emit(practice.bench, old.bench)

    def send(self, action: Action, gesture: object = None) -> bool:
        """Do an act; nothing done is undone."""
        self.refused.emit(tr("this is a replay: nothing in it can be changed"))
        return False


def _by_propeller(practice: Practice, act: Act) -> bool:
    if isinstance(act, TurnUntil):
        return practice.mounted or act.what == "stop"
    return isinstance(act, TurnPropeller | TurnToReading)
