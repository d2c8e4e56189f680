"""Reason of a refusal, told at the thing it had hold of: two short lines in the colour of a warning."""

from __future__ import annotations

from PySide6.QtCore import QPoint, QPointF
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QWidget

from magview.ui.kit.callout import Callout
from magview.ui.kit.look import Look
from magview.ui.kit.pictured import Pictured
from magview.ui.pictures.breaker_hands import PARTS_IN_HAND
from magview.ui.pictures.breaker_view import BreakerView

_ASIDE_PX = 14


class HandCallout(Callout):
    """Over a picture: beside a lit place that was refused, or where a hand was as it turned a part."""

    def __init__(self, view: BreakerView, model: Pictured, look: Look) -> None:
        self._view, self._look = view, look
        super().__init__(view.viewport(), model)

    def _refused(self, sentence: str) -> None:
        control = self._model.asker
        if control is not None and control is not self._view:
            super()._refused(sentence)  # beside a lit place, or nothing here if it was asked for elsewhere
            return
        if not (self._view.hasFocus() or self._view.dragging):
            self.hide()
            return
        self._beside: QWidget | None = None
        self.lay_at(sentence, self._at())

    def _widest(self) -> int:
        """About two lines for a usual sentence."""
        return 42 * self.fontMetrics().averageCharWidth()

    def _at(self) -> QPoint:
        touched = self._view.touched
        where: QPointF = touched if touched is not None else self._view.place_of(PARTS_IN_HAND[self._view.hand])
        return where.toPoint() + QPoint(_ASIDE_PX, _ASIDE_PX)

    def paintEvent(self, event: QPaintEvent) -> None:
        """A bold edge in the colour of a warning; the sign is in the words."""
        super().paintEvent(event)
        painter = QPainter(self)
        painter.setPen(QPen(QColor(self._look.theme.warn), 3.0))
        painter.drawRect(self.rect().adjusted(1, 1, -2, -2))
