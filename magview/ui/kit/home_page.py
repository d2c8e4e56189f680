"""The page a place begins from: what can be begun, what is under way, and what was worked on lately."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import partial

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import (
    QHBoxLayout,
    QLabel,
    QListWidget,
    QListWidgetItem,
    QPushButton,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from magview.spec.language import tr
from magview.ui.kit.look import Look
from magview.ui.kit.place import Page
from magview.ui.kit.strip import Foot

_DATA = Qt.ItemDataRole.UserRole
Listed = Callable[[], Sequence[tuple[str, object]]]
"""Words and what stands behind them, asked each time the page is seen."""


class Chooser(QListWidget):
    """Things by their names; Return or a double click chooses one."""

    picked = Signal(object)

    def __init__(self, name: str, listed: Listed) -> None:
        super().__init__()
        self.setAccessibleName(name)
        self._listed = listed
        self.itemActivated.connect(self._picked)
        self.again()

    def again(self) -> None:
        """List what there is now."""
        self.clear()
        for words, behind in self._listed():
            item = QListWidgetItem(words)
            item.setData(_DATA, behind)
            self.addItem(item)
        if not self.count():
            item = QListWidgetItem(tr("nothing yet"))
            item.setFlags(Qt.ItemFlag.NoItemFlags)
            self.addItem(item)

    def _picked(self, item: QListWidgetItem) -> None:
        self.picked.emit(item.data(_DATA))


class HomePage(Page):
    """Buttons at the left, lists at the right."""

    def __init__(self, look: Look, title: str, acts: Sequence[tuple[str, Callable[[], object]]]) -> None:
        """The first of `acts` is the one to begin with."""
        super().__init__(look)
        self.setWindowTitle(title)
        whole = QWidget()
        column, row = QVBoxLayout(whole), QHBoxLayout()
        em = self.fontMetrics().height()
        column.setContentsMargins(2 * em, em, 2 * em, em)
        column.addLayout(row, 1)
        column.addWidget(Foot(look))
        row.setSpacing(2 * em)
        left, self._right = QVBoxLayout(), QVBoxLayout()
        self.buttons: list[QPushButton] = []
        for words, slot in acts:
            button = QPushButton(words)
            button.setAutoDefault(False)
            button.setMinimumHeight(2 * em)
            button.clicked.connect(partial(_do, slot))
            left.addWidget(button)
            self.buttons.append(button)
        left.addStretch(1)
        left.setContentsMargins(0, 0, 0, 0)
        acting, area = QWidget(), QScrollArea()  # many acts in large type in a low window have no room at once
        acting.setLayout(left)
        area.setWidgetResizable(True)
        area.setFrameShape(QScrollArea.Shape.NoFrame)
        area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        area.setWidget(acting)
        area.setMinimumWidth(acting.minimumSizeHint().width())
        row.addWidget(area, 1)
        row.addLayout(self._right, 2)
        self.lists: list[Chooser] = []
        self.fill(whole)

    def list(self, title: str, listed: Listed, slot: Callable[[object], object]) -> Chooser:
        """Put a list on the page."""
        label, chooser = QLabel(title), Chooser(title, listed)
        label.setBuddy(chooser)
        chooser.picked.connect(slot)
        self._right.addWidget(label)
        self._right.addWidget(chooser, 1)
        self.lists.append(chooser)
        return chooser

    def showEvent(self, event: QShowEvent) -> None:
        """Seen again: things have changed meanwhile."""
        super().showEvent(event)
        for chooser in self.lists:
            chooser.again()


def _do(slot: Callable[[], object], _: bool = False) -> None:
    slot()
