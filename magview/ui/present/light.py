"""Over a picture, for a class: one part named, ringed, or alone in the light while all others are dimmed."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QPainter, QPen

from magview.drawing.shapes import Point
from magview.ui.kit.look import Look
from magview.ui.pictures.picture_view import PictureView
from magview.ui.pictures.scene import PictureScene

Anchors = Callable[[], Mapping[str, tuple[str, Point]]]

_VEIL = 205
"""Cover of what is not in the light, of 255."""


class Light:
    """Light of a presenter on one picture; while it shows nothing the picture does not know of it."""

    def __init__(self, view: PictureView, anchors: Anchors, look: Look) -> None:
        self._view, self._anchors, self.look = view, anchors, look
        self.part, self.name, self.told, self.dims = "", "", "", False

    def show(self, part: str, name: str, told: str, dims: bool) -> None:
        """Name a part; write a sentence along the foot; `dims`: nothing but this part stays in the light."""
        self.part, self.name, self.told, self.dims = part, name, told, dims
        self._view.over = self.paint if part or told or dims else None
        self._view.viewport().update()

    def clear(self) -> None:
        """Show nothing."""
        self.show("", "", "", False)

    def tip(self) -> QPointF | None:
        """Return where the part is [px]."""
        place = self._anchors().get(self.part)
        scene = self._view.scene()
        if place is None or not isinstance(scene, PictureScene):
            return None
        return self._view.viewportTransform().map(scene.to_scene(*place))

    def paint(self, painter: QPainter) -> None:
        """Veil, part, ring and name, in the view's pixels."""
        port = QRectF(self._view.viewport().rect())
        scene, tip = self._view.scene(), self.tip()
        if self.dims:
            veil = QColor(self.look.theme.paper)
            veil.setAlpha(_VEIL)
            painter.fillRect(port, veil)
        self._paint_told(painter, port)
        if tip is None or not isinstance(scene, PictureScene):
            return
        line = QFontMetricsF(self._view.font()).height()
        if self.dims:
            outline = QPen(QColor(self.look.theme.hand), 3.0)
            outline.setCosmetic(True)
            self._view.paint_part(painter, self.part, outline)
        else:
            painter.setPen(QPen(QColor(self.look.theme.hand), 3.0))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawEllipse(tip, 1.1 * line, 1.1 * line)
        self._paint_name(painter, port, tip, line)

    def _paint_name(self, painter: QPainter, port: QRectF, tip: QPointF, line: float) -> None:
        font = QFont(self._view.font())
        font.setBold(True)
        font.setPointSizeF(1.2 * font.pointSizeF())
        metrics = QFontMetricsF(font)
        size = metrics.boundingRect(self.name).size()
        box = QRectF(0, 0, size.width() + 16, metrics.height() + 6)
        # Above and towards the middle, so that it stays in the picture and off what it names.
        right = tip.x() < port.center().x()
        x = tip.x() + 1.6 * line if right else tip.x() - 1.6 * line - box.width()
        y = tip.y() - 1.8 * line - box.height()
        x = min(max(x, port.left() + 4), port.right() - box.width() - 4)
        y = tip.y() + 1.8 * line if y < port.top() + 4 else y
        box.moveTo(x, y)
        painter.setPen(QPen(QColor(self.look.theme.text), 2.0))
        near = QPointF(min(max(tip.x(), box.left()), box.right()), box.bottom() if y < tip.y() else box.top())
        painter.drawLine(tip, near)
        painter.setBrush(QColor(self.look.theme.paper))
        painter.drawRect(box)
        painter.setFont(font)
        painter.drawText(box, Qt.AlignmentFlag.AlignCenter, self.name)
        painter.setFont(self._view.font())

    def _paint_told(self, painter: QPainter, port: QRectF) -> None:
        if not self.told:
            return
        flags = int(Qt.TextFlag.TextWordWrap | Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignBottom)
        box = QFontMetricsF(self._view.font()).boundingRect(port.adjusted(10, 0, -10, -5), flags, self.told)
        # Over the whole of what the picture says there, or half a line of it would look out.
        said = self._view.foot_height(self._view.viewport().toolTip())
        top = min(box.top() - 5, port.bottom() - said - 4)
        painter.fillRect(
            QRectF(port.left(), top, port.width(), port.bottom() - top + 1), QColor(self.look.theme.paper)
        )
        painter.setPen(QColor(self.look.theme.text))
        painter.drawText(port.adjusted(10, 0, -10, -5), flags, self.told)
