"""Words that widen nothing: cut short where there is no room for them, whole as their tip."""

from __future__ import annotations

from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QPainter, QPaintEvent
from PySide6.QtWidgets import QLabel, QSizePolicy


class Elided(QLabel):
    """A title that is cut short where there is no room for it; whole as its tip."""

    def __init__(self) -> None:
        super().__init__()
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Preferred)

    def minimumSizeHint(self) -> QSize:
        """Nothing more than a few letters."""
        return QSize(6 * self.fontMetrics().averageCharWidth(), super().minimumSizeHint().height())

    def paintEvent(self, event: QPaintEvent) -> None:
        """As much as there is room for."""
        painter = QPainter(self)
        painter.setPen(self.palette().color(self.foregroundRole()))
        text = self.fontMetrics().elidedText(self.text(), Qt.TextElideMode.ElideRight, self.width())
        painter.drawText(self.rect(), int(Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft), text)
        painter.end()
