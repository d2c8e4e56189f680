"""A sentence that must not be overlooked, in a frame of amber with a bar at its edge."""

from __future__ import annotations

from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QLabel

from magview.ui.kit.look import Look

_BAR = 5.0
"""Width of the bar [px]."""


class Notice(QLabel):
    """Words in a frame; without words it is not there."""

    def __init__(self, look: Look) -> None:
        super().__init__()
        self._look = look
        self.setWordWrap(True)
        self.setAlignment(Qt.AlignmentFlag.AlignTop)
        self.setContentsMargins(12, 5, 7, 5)
        self.hide()
        look.changed.connect(self.update)

    def say(self, words: str) -> None:
        """Say something; nothing takes it away."""
        self.setText(words)
        self.setVisible(bool(words))

    def paintEvent(self, event: QPaintEvent) -> None:
        """Frame and bar, and the words."""
        theme, painter = self._look.theme, QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(QPen(QColor(theme.warn), 1.3))
        painter.setBrush(QColor(theme.base))
        painter.drawRoundedRect(QRectF(self.rect()).adjusted(1, 1, -1, -1), 4.0, 4.0)
        painter.fillRect(QRectF(1.0, 4.0, _BAR, self.height() - 8.0), QColor(theme.warn))
        painter.end()
        super().paintEvent(event)
