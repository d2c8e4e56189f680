"""Numbered steps, each one act, and one button that shows how."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QEvent, QPointF, Qt, Signal
from PySide6.QtGui import QColor, QFont, QFontInfo, QPainter, QPaintEvent
from PySide6.QtWidgets import QGridLayout, QLabel, QPushButton, QSizePolicy, QWidget

from magview.spec.language import tr
from magview.ui.kit.look import Look

_TARGET = 24
"""Least height of what is to be hit (WCAG 2.2, 2.5.8) [px]."""


class _Number(QWidget):
    """A number in a filled disc."""

    def __init__(self, look: Look) -> None:
        super().__init__()
        self._look, self._number = look, ""
        self._size_up()
        look.changed.connect(self.update)

    def _size_up(self) -> None:
        size = round(1.7 * QFontInfo(self.font()).pixelSize())
        self.setFixedSize(size, size)

    def changeEvent(self, event: QEvent) -> None:
        """As large as the words beside it."""
        super().changeEvent(event)
        if event.type() == QEvent.Type.FontChange:
            self._size_up()

    def show_number(self, number: int, at: int = -1) -> None:
        """Show a number, or how far things have come while they are at one of the steps: done, or under way."""
        here = number - 1
        self._number = "✓" if here < at else "▶" if here == at else str(number)
        self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        """Disc and number."""
        theme, painter = self._look.theme, QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor(theme.hand))
        radius = self.width() / 2
        painter.drawEllipse(QPointF(radius, radius), radius, radius)
        font = QFont(self.font())
        font.setBold(True)
        painter.setFont(font)
        painter.setPen(QColor(theme.on_hand))
        painter.drawText(self.rect(), Qt.AlignmentFlag.AlignCenter, self._number)


class Steps(QWidget):
    """Steps one below the other; without any, one sentence that says why there are none."""

    show_me = Signal()
    """Whoever works wants to be shown."""

    def __init__(self, look: Look, button: str, parent: QWidget | None = None) -> None:
        """`button`: what the button that shows how says."""
        super().__init__(parent)
        self._look = look
        self._steps: tuple[str, ...] = ()
        self._rows: list[tuple[_Number, QLabel]] = []
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._grid.setColumnStretch(1, 1)
        self.instead = QLabel()
        self.instead.setWordWrap(True)
        self.instead.setAlignment(Qt.AlignmentFlag.AlignTop)
        self.button = QPushButton(button)
        self.button.setAutoDefault(False)
        self.button.setMinimumHeight(_TARGET)
        self.button.clicked.connect(self.show_me)
        self._grid.addWidget(self.instead, 0, 0, 1, 2)
        self._grid.addWidget(self.button, 1, 0, 1, 2, Qt.AlignmentFlag.AlignLeft)
        self._grid.setRowStretch(2, 1)

    def show_steps(self, steps: Sequence[str], instead: str = "") -> None:
        """Show these steps; where there are none, what is said instead."""
        self._steps = tuple(steps)
        self.instead.setText(instead)
        self.instead.setVisible(not steps)
        self.button.setVisible(bool(steps))
        while len(self._rows) < len(steps):
            self._add_row()
        for place, (number, label) in enumerate(self._rows):
            there = place < len(steps)
            number.setVisible(there)
            label.setVisible(there)
            if there:
                label.setText(steps[place])
                label.setAccessibleName(tr("Step {number}: {act}", number=place + 1, act=steps[place]))

    def point_at(self, step: int) -> None:
        """Mark a step, from 0, as the one that is being done, and those before it as done; −1 marks none."""
        for place, (number, label) in enumerate(self._rows):
            number.show_number(place + 1, step)
            under_way = place == step and place < len(self._steps)
            label.setAccessibleDescription(tr("being done") if under_way else "")

    def _add_row(self) -> None:
        number, label = _Number(self._look), QLabel()
        number.show_number(len(self._rows) + 1)
        label.setWordWrap(True)
        label.setAlignment(Qt.AlignmentFlag.AlignTop)
        label.setContentsMargins(0, (number.height() - label.fontMetrics().height()) // 2, 0, 0)
        label.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        label.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Minimum)
        row = len(self._rows) + 1
        self._grid.addWidget(number, row, 0, Qt.AlignmentFlag.AlignTop)
        self._grid.addWidget(label, row, 1)
        self._grid.addWidget(self.button, row + 1, 0, 1, 2, Qt.AlignmentFlag.AlignLeft)
        self._grid.setRowStretch(row + 1, 0)
        self._grid.setRowStretch(row + 2, 1)  # what room is left over lies below
        self._rows.append((number, label))

    def text(self) -> str:
        """The steps, or what is said instead, as one text."""
        return " ".join(self._steps) or self.instead.text()
