"""The pictures of any moment of an attempt again, with their numbers."""

from __future__ import annotations

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QSlider, QVBoxLayout, QWidget

from magview.practice.debrief import Debrief
from magview.practice.report import clock_words
from magview.practice.screen_words import seen
from magview.spec.language import tr
from magview.ui.kit.look import Look
from magview.ui.practice.controls import wrapped
from magview.ui.practice.model import ReplayModel
from magview.ui.practice.pictures import Pictures

_STEP_MS = 700
"""Time for which the replay shows each act."""


class ReplayPane(QWidget):
    """Pictures, a slider through the moments, and a button that plays them."""

    moved = Signal(int)
    """Another moment is shown, by its place in the replay."""

    def __init__(self, told: Debrief, look: Look) -> None:
        super().__init__()
        self.told = told
        states = told.replay.states
        self.model = ReplayModel(states[-1], self)
        column = QVBoxLayout(self)
        column.setContentsMargins(8, 0, 8, 0)
        self.pictures = Pictures(self.model, states[-1], look, inside=True, engine=True)
        column.addWidget(self.pictures, 1)
        row = QHBoxLayout()
        self.play = QPushButton(tr("Pla&y"))
        self.play.setAutoDefault(False)
        self.play.clicked.connect(self._play)
        self.slider = QSlider(Qt.Orientation.Horizontal)
        self.slider.setRange(0, len(states) - 1)
        self.slider.setValue(len(states) - 1)
        self.slider.setAccessibleName(tr("Moment of the attempt"))
        self.slider.valueChanged.connect(self._scrubbed)
        row.addWidget(self.play)
        row.addWidget(self.slider, 1)
        column.addLayout(row)
        self.moment = wrapped()
        self.moment.setMinimumHeight(round(2.2 * self.fontMetrics().height()))
        self.moment.setAlignment(Qt.AlignmentFlag.AlignTop)
        column.addWidget(self.moment)
        self._timer = QTimer(self)
        self._timer.setInterval(_STEP_MS)
        self._timer.timeout.connect(self._forward)
        self._scrubbed(self.slider.value())

    @property
    def playing(self) -> bool:
        """Whether it runs."""
        return self._timer.isActive()

    def go_to(self, index: int) -> None:
        """Show a moment."""
        self.slider.setValue(index)

    def play_from(self, index: int) -> None:
        """Show a moment, and go on from there."""
        self.slider.setValue(index)
        if not self._timer.isActive():
            self._play()

    def pause(self) -> None:
        """Stop where it is."""
        self._timer.stop()
        self.play.setText(tr("Pla&y"))

    def _scrubbed(self, index: int) -> None:
        replay = self.told.replay
        self.model.show(replay.states[index])
        self.pictures.show_practice(replay.states[index])
        what = tr("As found") if index == 0 else self.told.timeline[index - 1].words
        now = seen(replay.states[index])
        told = [f"{clock_words(replay.times_s[index])} – {what}"]
        if now.lamp != tr("not connected"):
            told.append(tr("lamp {lamp}", lamp=now.lamp))
        if now.disc and now.disc != tr("no disc on the crank"):
            told.append(tr("disc {disc}", disc=now.disc))
        self.moment.setText(" · ".join(told))
        self.slider.setAccessibleDescription(self.moment.text())
        self.moved.emit(index)

    def _play(self) -> None:
        if self._timer.isActive():
            self.pause()
            return
        if self.slider.value() == self.slider.maximum():
            self.slider.setValue(0)
        self.play.setText(tr("&Pause"))
        self._timer.start()

    def _forward(self) -> None:
        self.slider.setValue(self.slider.value() + 1)
        if self.slider.value() == self.slider.maximum():
            self.pause()
