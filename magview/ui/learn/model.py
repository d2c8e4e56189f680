"""A lesson as a Qt object: acts in, judged when the hand lets go; turning until something happens is seen."""

from __future__ import annotations

from PySide6.QtCore import QElapsedTimer, QObject, QTimer, Signal

from magview.bench.actions import Action
from magview.bench.state import BenchState, crank_deg
from magview.practice import actions as acts
from magview.practice import lesson_run
from magview.practice.apply import apply
from magview.practice.instruments import shows_open
from magview.practice.lesson_run import LessonRun, go_on, judge
from magview.practice.state import Practice
from magview.spec.base import SpecError
from magview.ui.practice.model import PracticeModel

_FRAME_MS = 16
_SETTLED_MS = 400
"""So long after the last nudge of the wheel the hand has let go."""

SPEEDS = {"slow": 40.0, "medium": 120.0, "fast": 400.0}
"""Speeds at which turning until something happens runs [rotor or crank deg/s]."""


class LessonModel(PracticeModel):
    """A lesson under way."""

    judged = Signal()
    """The hand has let go, a guess was made, or the lesson went on: how the step stands is to be said anew."""
    moved = Signal(object)
    """The room as it looks while something turns by itself."""
    opened = Signal()
    """The timing lamp has just shown the contacts opening."""

    def __init__(self, run: LessonRun, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.run = run
        self.refusal = ""
        """Reason for which the last act was refused; "" where it was not."""
        self.speed = "medium"
        self._gesture: object = None
        self._from_picture = False
        self._turning: _Turning | None = None
        self._since = QElapsedTimer()
        self._frames = QTimer(self)
        self._frames.setInterval(_FRAME_MS)
        self._frames.timeout.connect(self._frame)
        self._settle = QTimer(self)
        self._settle.setSingleShot(True)
        self._settle.setInterval(_SETTLED_MS)
        self._settle.timeout.connect(self.let_go)
        self.refused.connect(self._refused)

    @property
    def practice(self) -> Practice:
        """The room now."""
        return self._turning.shown if self._turning is not None else self.run.practice

    @property
    def teaches(self) -> bool:
        """A lesson may show what an attempt hides."""
        return True

    @property
    def at_propeller(self) -> bool:
        """A lesson turns the propeller once the step says so."""
        return True

    @property
    def turning(self) -> bool:
        """Whether something turns by itself."""
        return self._turning is not None

    # -------------------------------------------------------------- acts

    def send(self, action: Action, gesture: object = None) -> bool:
        """Take an action of a picture; a nudge by key or wheel is judged when no other follows at once."""
        self._from_picture = True
        try:
            return super().send(action, gesture)
        finally:
            self._from_picture = False

    def do(self, act: acts.Act, gesture: object = None) -> bool:
        """Do something; False, with `refused` emitted, where it cannot be done."""
        self.stop()
        if isinstance(act, acts.TurnUntil | acts.TurnToReading) and not self.reduced_motion:
            return self._begin_turning(act)
        return self._do_now(act, gesture)

    def _do_now(self, act: acts.Act, gesture: object = None) -> bool:
        pending = self._gesture is not None and gesture != self._gesture
        if pending:
            self.let_go()
        self.refusal = ""
        if not super().do(act, gesture):
            return False
        self._gesture = gesture
        if gesture is None and not (self._from_picture and isinstance(act, _NUDGES)):
            self.let_go()
        elif gesture is None:
            self._settle.start()
        return True

    def _do(self, act: acts.Act, gesture: object) -> None:
        before = self.run.practice
        self.run = lesson_run.act(self.run, act, same=gesture is not None and gesture == self._gesture)
        self._tell_opening(before, self.run.practice)

    def _tell_opening(self, before: Practice, after: Practice) -> None:
        if (shows_open(before), shows_open(after)) == (False, True):
            self.opened.emit()

    def grip(self, gripped: bool) -> None:
        """The hand takes hold, or lets go: then the step is judged."""
        if not gripped:
            self.let_go()

    def let_go(self) -> None:
        """Judge what was done."""
        self._settle.stop()
        self._gesture = None
        if not self.refusal:
            self.run = judge(self.run)
            self.judged.emit()

    def _refused(self, sentence: str) -> None:
        self.refusal = sentence
        self.judged.emit()

    # -------------------------------------------------------------- going about the lesson

    def answer(self, question: int, choice: int) -> None:
        """Guess."""
        self._now(lesson_run.answer(self.run, question, choice))

    def go_on(self) -> None:
        """To the next step, if this one is done."""
        if self.run.step_done:
            self._now(go_on(self.run))

    def go_back(self) -> None:
        """To the beginning of this step, or of the one before."""
        self._now(lesson_run.back(self.run))

    def undo(self) -> None:
        """Take the last act of this step back."""
        self._now(lesson_run.undo(self.run))

    def _now(self, run: LessonRun) -> None:
        self.stop()
        old, self.run, self.refusal, self._gesture = self.run, run, "", None
        if run.practice is not old.practice:
            self.changed.emit(run.practice.bench, old.practice.bench)
            self.moved.emit(run.practice)
        self.judged.emit()

    # -------------------------------------------------------------- turning until something happens

    def _begin_turning(self, act: acts.TurnUntil | acts.TurnToReading) -> bool:
        start = self.run.practice
        try:
            end = lesson_run.act(self.run, act).practice
        except SpecError as error:
            self.refused.emit(str(error))
            return False
        by_crank = start.mounted or (isinstance(act, acts.TurnUntil) and act.what == "stop")
        way = _place(end.bench, by_crank) - _place(start.bench, by_crank)
        if abs(way) < 1.0:
            return self._do_now(act)
        self.refusal = ""
        self._turning = _Turning(act, start, way, by_crank)
        self._since.start()
        self._frames.start()
        return True

    def _frame(self) -> None:
        self.tick(self._since.restart() / 1000.0)

    def tick(self, seconds: float) -> None:
        """Let time pass: what the timer does each frame."""
        turning = self._turning
        if turning is None:
            return
        turning.gone += SPEEDS[self.speed] * min(seconds, 0.1)
        if turning.gone >= abs(turning.way):
            self._turning = None
            self._frames.stop()
            self._do_now(turning.act)
            return
        before = turning.shown
        turning.shown = apply(turning.start, turning.so_far())
        self.changed.emit(turning.shown.bench, before.bench)
        self.moved.emit(turning.shown)
        self._tell_opening(before, turning.shown)

    def stop(self) -> None:
        """A hand stops what turns by itself where it is."""
        turning, self._turning = self._turning, None
        self._frames.stop()
        if turning is not None and turning.gone > 0.0:
            self._do_now(turning.so_far())

    def halt(self) -> None:
        """Nothing runs any more."""
        self._turning = None
        self._frames.stop()
        self._settle.stop()


_NUDGES = (acts.TurnRotor, acts.TurnPropeller, acts.TurnPlate, acts.TurnScrew)


def _place(bench: BenchState, crank: bool) -> float:
    return crank_deg(bench) if crank else bench.rotor_deg


class _Turning:
    """Something that turns by itself."""

    def __init__(self, act: acts.Act, start: Practice, way: float, by_crank: bool) -> None:
        self.act, self.start, self.way, self._by_crank = act, start, way, by_crank
        self.gone, self.shown = 0.0, start

    def so_far(self) -> acts.Act:
        """The turn up to now, as a hand makes it."""
        by = self.gone if self.way > 0 else -self.gone
        return acts.TurnPropeller(by) if self._by_crank else acts.TurnRotor(by)
