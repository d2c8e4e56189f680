"""Moves of the coupling shown as they are made, tooth by tooth; with reduced motion only how it ends."""

from __future__ import annotations

from PySide6.QtCore import QObject, QVariantAnimation, Signal

from magview.drawing.coupling_motion import TeethMotion
from magview.drawing.drive_end import DrivePose

HOLD_MS = 1200.0
"""A planned move that is shown stands so long at its end."""


class DriveMotion(QObject):
    """Runs one move at a time; `shown` is how the parts stand meanwhile."""

    moved = Signal()

    def __init__(self, parent: QObject) -> None:
        super().__init__(parent)
        self.shown: DrivePose | None = None
        """None while nothing moves: the parts stand as the bench has them."""
        self.clock = QVariantAnimation(self)
        self.clock.valueChanged.connect(self._tick)
        self.clock.finished.connect(self.stop)
        self._motion: TeethMotion | None = None

    @property
    def running(self) -> bool:
        """Whether a move is being shown."""
        return self._motion is not None

    def start(self, motion: TeethMotion, hold_ms: float = 0.0) -> None:
        """Show a move from its start, and so long at its end."""
        self.stop()
        total = motion.total_ms + hold_ms
        if total <= 0.0:
            return
        self._motion, self.shown = motion, motion.at(0.0)
        self.clock.setStartValue(0.0)
        self.clock.setEndValue(total)
        self.clock.setDuration(round(total))
        self.clock.start()

    def show_end(self, motion: TeethMotion) -> None:
        """Show how a move ends, and nothing moving."""
        self.stop()
        self.shown = motion.end
        self.moved.emit()

    def stop(self) -> None:
        """Show the parts as the bench has them."""
        was = self.shown
        self._motion, self.shown = None, None
        self.clock.stop()
        if was is not None:
            self.moved.emit()

    def _tick(self, ms: float) -> None:
        if self._motion is not None:
            self.shown = self._motion.at(ms)
            self.moved.emit()
