"""What all pictures on the bench share: a fitted, antialiased view with words painted over it."""

from __future__ import annotations

import math

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QFocusEvent, QFontMetricsF, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QFrame, QGraphicsView, QWidget

from magview.ui.picture import PictureScene
from magview.ui.theme import Theme


def bearing_about(centre: QPointF, point: QPointF) -> float:
    """Bearing of a scene point about another [deg clockwise from the top]."""
    return math.degrees(math.atan2(point.x() - centre.x(), centre.y() - point.y()))


class PictureView(QGraphicsView):
    """A still view of a picture scene: antialiased, no scroll bars, fitted by its owner."""

    def __init__(self, scene: PictureScene, parent: QWidget | None = None) -> None:
        super().__init__(scene, parent)
        self.setRenderHint(QPainter.RenderHint.Antialiasing)
        # The words over the picture are painted with it, so that none is left behind when it turns.
        self.setViewportUpdateMode(QGraphicsView.ViewportUpdateMode.FullViewportUpdate)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint the scene, then the words over it in the widget's own pixels."""
        super().paintEvent(event)
        painter = QPainter(self.viewport())
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setFont(self.font())
        self.paint_words(painter)
        painter.end()

    def paint_words(self, painter: QPainter) -> None:
        """What stands over the picture, in pixels."""

    def pixel(self, x_mm: float, y_mm: float) -> QPointF:
        """Where a point of the picture [mm, y up] stands [px], without rounding to whole pixels."""
        return self.viewportTransform().map(QPointF(x_mm, -y_mm))

    def focusInEvent(self, event: QFocusEvent) -> None:
        """Show where the keyboard is."""
        super().focusInEvent(event)
        self.viewport().update()

    def focusOutEvent(self, event: QFocusEvent) -> None:
        """Show that the keyboard has gone."""
        super().focusOutEvent(event)
        self.viewport().update()

    # -------------------------------------------------------------- words

    def paint_head(self, painter: QPainter, text: str, theme: Theme) -> None:
        """The viewpoint, top left, on as many lines as it needs."""
        painter.setPen(QColor(theme.text))
        self._paint_block(painter, text, theme, Qt.AlignmentFlag.AlignTop)

    def paint_foot(self, painter: QPainter, text: str, theme: Theme) -> None:
        """What must be said about the picture, along its lower edge."""
        painter.setPen(QColor(theme.faint))
        self._paint_block(painter, text, theme, Qt.AlignmentFlag.AlignBottom)

    def words_height(self, *blocks: str) -> float:
        """Height that blocks of words take at the view's width [px]."""
        return sum(self._block(text, Qt.AlignmentFlag.AlignTop).height() + 4.0 for text in blocks)

    def _block(self, text: str, edge: Qt.AlignmentFlag) -> QRectF:
        room = QRectF(self.viewport().rect()).adjusted(8, 3, -8, -3)
        flags = edge | Qt.AlignmentFlag.AlignLeft | Qt.TextFlag.TextWordWrap
        return QFontMetricsF(self.font()).boundingRect(room, int(flags), text)

    def _paint_block(self, painter: QPainter, text: str, theme: Theme, edge: Qt.AlignmentFlag) -> None:
        box = self._block(text, edge)
        paper = QColor(theme.paper)
        paper.setAlpha(225)
        painter.fillRect(box.adjusted(-4, -1, 4, 1), paper)
        painter.drawText(box, int(edge | Qt.AlignmentFlag.AlignLeft | Qt.TextFlag.TextWordWrap), text)

    def paint_focus(self, painter: QPainter, theme: Theme) -> None:
        """A frame while the keyboard is here."""
        if self.hasFocus():
            painter.setPen(QPen(QColor(theme.hand), 2))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRect(self.viewport().rect().adjusted(1, 1, -1, -1))

    def paint_on_paper(self, painter: QPainter, at: QPointF, text: str, theme: Theme) -> None:
        """Words that stay readable whatever part lies behind them; `at` is the start of their base line."""
        box = QFontMetricsF(painter.font()).boundingRect(text).translated(at).adjusted(-4, -1, 4, 1)
        paper = QColor(theme.paper)
        paper.setAlpha(225)
        painter.fillRect(box, paper)
        painter.drawText(at, text)
