"""A number in a filled disc: the same on a card and on the plot it belongs to."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QFont, QPainter

from magview.ui.kit.theme import Theme


def paint_badge(painter: QPainter, at: QPointF, number: int, theme: Theme, em: float) -> None:
    """Paint a number centred at a point; `em` is the size of type round it [px]."""
    radius = 0.75 * em
    painter.save()
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(QColor(theme.hand))
    painter.drawEllipse(at, radius, radius)
    font = QFont(painter.font())
    font.setPixelSize(max(8, round((0.95 if number < 10 else 0.8) * em)))
    font.setBold(True)
    painter.setFont(font)
    painter.setPen(QColor(theme.on_hand))
    box = QRectF(at.x() - radius, at.y() - radius, 2 * radius, 2 * radius)
    painter.drawText(box, Qt.AlignmentFlag.AlignCenter, str(number))
    painter.restore()
