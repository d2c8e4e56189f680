"""Three doors, each with one button that goes on where the work stopped, and the job sheets worked on lately."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from PySide6.QtCore import Signal
from PySide6.QtGui import QFont, QShowEvent
from PySide6.QtWidgets import QFrame, QHBoxLayout, QLabel, QPushButton, QVBoxLayout, QWidget

from magview.spec.language import tr
from magview.ui.kit.home_page import Chooser, Listed
from magview.ui.kit.look import Look
from magview.ui.kit.place import Page
from magview.ui.kit.strip import Foot


@dataclass(frozen=True)
class Door:
    """Door: its words, and what its button does."""

    title: str
    text: str
    button: Callable[[], str]
    """The words on the button, asked each time the page is seen."""
    go: Callable[[], object]


class DoorFrame(QFrame):
    """Frame with the words and the button of a door."""

    def __init__(self, door: Door) -> None:
        super().__init__()
        self._door = door
        self.setFrameShape(QFrame.Shape.StyledPanel)
        em = self.fontMetrics().height()
        column = QVBoxLayout(self)
        column.setContentsMargins(em, em, em, em)
        column.setSpacing(em // 2)
        title, text = QLabel(door.title), QLabel(door.text)
        font = QFont()
        font.setPointSizeF(font.pointSizeF() * 1.6)
        title.setFont(font)
        text.setWordWrap(True)
        self.button = QPushButton()
        self.button.setAutoDefault(False)
        self.button.setMinimumHeight(2 * em)
        self.button.clicked.connect(self._go)
        for widget in (title, text):
            column.addWidget(widget)
        column.addStretch(1)
        column.addWidget(self.button)
        self.again()

    def again(self) -> None:
        """Write what the button says now."""
        self.button.setText(self._door.button())

    def _go(self) -> None:
        self._door.go()


class StartPage(Page):
    """The doors, and below them what was worked on lately."""

    picked = Signal(object)
    """Sent with what was chosen among the things worked on lately."""

    def __init__(self, look: Look, doors: tuple[Door, ...], recent: Listed) -> None:
        super().__init__(look)
        self.setWindowTitle(tr("Start"))
        whole = QWidget()
        column = QVBoxLayout(whole)
        em = self.fontMetrics().height()
        column.setContentsMargins(2 * em, em, 2 * em, em // 2)
        row = QHBoxLayout()
        row.setSpacing(em)
        self.doors = [DoorFrame(door) for door in doors]
        for frame in self.doors:
            row.addWidget(frame, 1)
        label = QLabel(tr("&Recent job sheets"))
        self.recent = Chooser(tr("Recent job sheets"), recent)
        self.recent.picked.connect(self.picked)
        label.setBuddy(self.recent)
        column.addLayout(row, 3)
        column.addWidget(label)
        column.addWidget(self.recent, 1)
        column.addWidget(Foot(look))
        self.fill(whole)

    def showEvent(self, event: QShowEvent) -> None:
        """Seen again: the work has gone on meanwhile."""
        super().showEvent(event)
        for frame in self.doors:
            frame.again()
        self.recent.again()
