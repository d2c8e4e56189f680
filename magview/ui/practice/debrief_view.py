"""After the hand-in: marks, truth, own readings, time line, a shorter way; and the pictures of any moment again."""

from __future__ import annotations

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtWidgets import (
    QHBoxLayout,
    QLabel,
    QPushButton,
    QSlider,
    QSplitter,
    QTabWidget,
    QVBoxLayout,
    QWidget,
)

from magview.practice.attempt import Attempt
from magview.practice.debrief import Debrief
from magview.practice.report import clock_words, sections
from magview.practice.screen_words import seen
from magview.spec.language import marked, tr
from magview.ui.kit.cards import Card, Cards
from magview.ui.kit.look import Look
from magview.ui.kit.signs import Sign
from magview.ui.kit.style import tint
from magview.ui.kit.table import Table
from magview.ui.practice.controls import wrapped
from magview.ui.practice.model import ReplayModel
from magview.ui.practice.pictures import Pictures

_STEP_MS = 700
"""Time for which the replay shows each act."""

_SHORT = 12
"""Columns with no longer words than this [letters] take just the room they need."""

_TABS = {
    marked("Marks"): marked("Mar&ks"),
    marked("True values"): marked("Tr&uth"),
    marked("Own readings"): marked("&Readings"),
    marked("An efficient path"): marked("P&ath"),
}


class DebriefView(QWidget):
    """The verdict over everything, dangers first; the replay at the left, the sheets at the right."""

    said = Signal(str)

    def __init__(self, attempt: Attempt, told: Debrief, look: Look) -> None:
        super().__init__()
        self.attempt, self.told, self.look = attempt, told, look
        self.model = ReplayModel(told.replay.states[-1], self)
        self.model.refused.connect(self.said)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(8, 4, 8, 4)
        self.verdict, self.dangers = wrapped(told.marking.verdict), wrapped()
        self.verdict.setAccessibleName(tr("Verdict"))
        layout.addWidget(self.verdict)
        layout.addWidget(self.dangers)
        self._list_dangers()
        self._build_timeline()
        split = QSplitter(Qt.Orientation.Horizontal)
        split.addWidget(self._build_replay())
        split.addWidget(self._build_sheets())
        for i, stretch in enumerate((3, 2)):
            split.setStretchFactor(i, stretch)
            split.setCollapsible(i, False)
        split.setSizes([600, 620])
        layout.addWidget(split, 1)
        head = QLabel(tr("&Time line"))
        head.setBuddy(self.timeline)
        layout.addWidget(head)
        layout.addWidget(self.timeline)
        self._timer = QTimer(self)
        self._timer.setInterval(_STEP_MS)
        self._timer.timeout.connect(self._forward)
        self._colour()
        look.changed.connect(self._colour)
        self._scrubbed(self.slider.value())

    def _list_dangers(self) -> None:
        lines = [
            f"⚠ {clock_words(d.at_s)} – "
            + (tr("{danger} ({times} times)", danger=d.text, times=d.times) if d.times > 1 else d.text)
            for d in self.told.marking.dangers
        ]
        if self.told.other_version:
            lines.append(self.told.other_version)
        self.dangers.setText("\n".join(lines))
        self.dangers.setVisible(bool(lines))

    def _build_replay(self) -> QWidget:
        side = QWidget()
        column = QVBoxLayout(side)
        column.setContentsMargins(0, 0, 0, 0)
        states = self.told.replay.states
        self.pictures = Pictures(self.model, states[-1], self.look, inside=True, engine=True)
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
        return side

    def _build_timeline(self) -> None:
        self.timeline = Cards(tr("Time line"), self.look)
        self.timeline.setToolTip(tr("Choose a card to see that moment; Return plays on from there"))
        self.timeline.show_cards([
            Card(clock_words(line.at_s), str(number), line.words, line.danger, Sign.OUT if line.danger else Sign.NONE)
            for number, line in enumerate(self.told.timeline, 1)
        ])  # fmt: skip
        self.timeline.card_chosen.connect(self._card_chosen)
        self.timeline.opened.connect(self._play_from)

    def _build_sheets(self) -> QTabWidget:
        self.tabs = QTabWidget()
        self.tabs.setDocumentMode(True)
        self.sheets: dict[str, Table] = {}
        for title, heads, rows in sections(self.attempt, self.told):
            key = next((key for key in _TABS if title in (key, tr(key))), None)
            if key is not None:
                long = [n for n in range(len(heads)) if max((len(row[n]) for row in rows), default=0) > _SHORT]
                self.sheets[key] = Table(title, heads, wide=long, wraps=True)
                self.sheets[key].fill(rows)
                self.tabs.addTab(self.sheets[key], tr(_TABS[key]))
                self.tabs.setTabToolTip(self.tabs.count() - 1, title)
        return self.tabs

    def _colour(self) -> None:
        theme = self.look.theme
        verdict = theme.good if self.told.marking.passed else theme.bad
        tint(self.verdict, verdict if self.told.marking.marked else theme.text, bold=True)
        tint(self.dangers, theme.bad, bold=True)

    def halt(self) -> None:
        """The window closes: the replay stops."""
        self._timer.stop()

    # -------------------------------------------------------------- replay

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
        self.timeline.choose_card(index - 1)

    def _card_chosen(self, place: int) -> None:
        if place >= 0:
            self.slider.setValue(place + 1)

    def _play_from(self, place: int) -> None:
        self.slider.setValue(place + 1)
        if not self._timer.isActive():
            self._play()

    def _play(self) -> None:
        if self._timer.isActive():
            self._pause()
            return
        if self.slider.value() == self.slider.maximum():
            self.slider.setValue(0)
        self.play.setText(tr("&Pause"))
        self._timer.start()

    def _pause(self) -> None:
        self._timer.stop()
        self.play.setText(tr("Pla&y"))

    def _forward(self) -> None:
        self.slider.setValue(self.slider.value() + 1)
        if self.slider.value() == self.slider.maximum():
            self._pause()
