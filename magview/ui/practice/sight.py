"""The timing lamp as a sign, and the caution that stands wherever a propeller is turned."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QWidget

from magview.spec.language import marked, tr
from magview.ui.kit.look import Look

CAUTION = marked(
    "Treat the propeller as live: fuel off, mixture cut off, throttle closed, switch off and each lead proved, plugs "
    "out, hanging leads grounded, wheels chocked, nobody in its arc. Plugs out alone is not enough."
)


class Lamp(QWidget):
    """The timing lamp: light has rays, dark is crossed, unconnected is dotted; the word stands beside it."""

    def __init__(self, look: Look) -> None:
        super().__init__()
        self.look, self.shows = look, tr("not connected")
        self._size_up()
        self.setAccessibleName(tr("Timing lamp"))
        look.changed.connect(self.update)

    def _size_up(self) -> None:
        size = round(1.7 * self.fontMetrics().height())
        self.setFixedSize(size, size)

    def changeEvent(self, event: QEvent) -> None:
        """It is as large as the words beside it."""
        super().changeEvent(event)
        if event.type() == QEvent.Type.FontChange:
            self._size_up()

    def show_words(self, words: str) -> None:
        """Show "lit", "dark" or "not connected"."""
        self.shows = words
        self.setAccessibleDescription(words)
        self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw it."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        size = float(min(self.width(), self.height()))
        middle, radius = QPointF(size / 2, size / 2), 0.27 * size
        pen = QPen(QColor(self.look.theme.text), 1.6)
        if self.shows == tr("not connected"):
            pen.setStyle(Qt.PenStyle.DotLine)
        painter.setPen(pen)
        if self.shows == tr("lit"):
            painter.setBrush(QColor("#ffd83d"))
            for dx, dy in ((1, 0), (0, 1), (0.7, 0.7), (0.7, -0.7)):
                for way in (1.0, -1.0):
                    out = QPointF(dx, dy) * way
                    painter.drawLine(middle + out * (1.3 * radius), middle + out * (1.75 * radius))
        painter.drawEllipse(middle, radius, radius)
        if self.shows == tr("dark"):
            box = QRectF(middle.x() - 0.7 * radius, middle.y() - 0.7 * radius, 1.4 * radius, 1.4 * radius)
            painter.drawLine(box.topLeft(), box.bottomRight())
            painter.drawLine(box.topRight(), box.bottomLeft())
        painter.end()
