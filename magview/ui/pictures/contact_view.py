"""The contacts magnified: the same drawing under a glass, with the gap's measure."""

from __future__ import annotations

import math

from PySide6.QtCore import QLineF, QPointF
from PySide6.QtGui import QColor, QFontMetricsF, QPainter, QPen, QWheelEvent
from PySide6.QtWidgets import QWidget

from magview.bench.state import BenchState
from magview.drawing.breaker_end import PARENTS, STILL
from magview.spec.language import format_length, number, tr
from magview.ui.kit.look import Look
from magview.ui.kit.pictured import Pictured
from magview.ui.pictures.breaker_view import BreakerView
from magview.ui.pictures.picture_view import PictureView

_FACE_SHARE = 0.5
"""Share of the view's width that a contact's face takes."""


class ContactView(PictureView):
    """A second view of the breaker end's scene, anchored to the fixed contact and turned to stand upright."""

    def __init__(self, model: Pictured, breaker: BreakerView, look: Look, parent: QWidget | None = None) -> None:
        moving = tuple(g for g in PARENTS if g not in STILL)
        super().__init__(breaker.scene_of_parts, look, STILL, moving, parent)
        self._model, self._breaker = model, breaker
        self.numbers = breaker.numbers
        self.setMinimumHeight(110)
        self.setAccessibleName(tr("Contacts, magnified"))
        self.show_state(model.state)
        model.changed.connect(self.show_state)

    def show_state(self, state: BenchState, old: BenchState | None = None) -> None:
        """Follow the contacts."""
        gap = self._breaker.now.gap_mm
        words = (
            tr("Contacts closed.")
            if gap <= 0
            else tr("Contacts open {gap}.", gap=format_length(gap, self.look.inches))
        )
        self.setAccessibleDescription(words if self.numbers else tr("No measure in practice: try blades."))
        self._aim()
        self.viewport().update()

    def look_changed(self) -> None:
        """Other colours or another unit; the parts are coloured by the view they belong to."""
        self.show_state(self._model.state)

    def wheelEvent(self, event: QWheelEvent) -> None:
        """The glass stays on the contacts: the wheel is not for it."""
        event.ignore()

    def pixels_per_mm(self) -> float:
        """Scale of the view now."""
        drawing = self._breaker.drawing
        usual = min(_FACE_SHARE * self.viewport().width(), 2.6 * self.viewport().height()) / (
            2 * drawing.contact_half_mm
        )
        # A gap drawn larger than it is must still be seen whole.
        gap = self._breaker.now.gap_mm * self._breaker.exaggeration
        return min(usual, 0.45 * self.viewport().height() / max(gap, 1e-6))

    def faces(self) -> tuple[QPointF, QPointF]:
        """Middles of the fixed and the moving contact's face [px]."""
        scene, drawing = self._breaker.scene_of_parts, self._breaker.drawing
        fixed = self.mapFromScene_f(scene.to_scene("stop", drawing.contact))
        moving = self.mapFromScene_f(scene.to_scene("arm", drawing.contact))
        return fixed, moving

    def mapFromScene_f(self, point: QPointF) -> QPointF:
        """As mapFromScene, without rounding to whole pixels: a gap may be a few pixels wide."""
        return self.viewportTransform().map(point)

    def fit(self) -> None:
        """Keep the contacts in the middle."""
        self._aim()

    def _aim(self) -> None:
        scene, drawing = self._breaker.scene_of_parts, self._breaker.drawing
        contact = scene.to_scene("stop", drawing.contact)
        x, y = drawing.contact
        dx, dy = drawing.opening
        ahead = scene.to_scene("stop", (x + dx, y + dy)) - contact
        self.resetTransform()
        # Opening points up: a feeler blade slides in from the side.
        self.rotate(-math.degrees(math.atan2(ahead.x(), -ahead.y())))
        scale = self.pixels_per_mm()
        self.scale(scale, scale)
        self.centerOn((contact + scene.to_scene("arm", drawing.contact)) / 2)

    def paint_words(self, painter: QPainter) -> None:
        """The gap's measure between the faces, the scale, and whether the contacts are open."""
        if not self.numbers:
            self.paint_head(painter, f"{tr('Contacts')} · {tr('breaker end, magnified')}")
            return
        metrics = QFontMetricsF(self.font())
        gap = self._breaker.now.gap_mm
        state = (
            tr("Contacts closed") if gap <= 0 else tr("Contacts open {gap}", gap=format_length(gap, self.look.inches))
        )
        drawn = self._breaker.exaggeration
        words = [state, tr("breaker end, magnified")]
        if drawn != 1.0:
            words.append(tr("gap drawn {factor}×", factor=drawn))
        self.paint_head(painter, " · ".join(words))
        fixed, moving = self.faces()
        side = self.pixels_per_mm() * self._breaker.drawing.contact_half_mm + 14
        painter.setPen(QPen(QColor(self.look.theme.text), 1.4))
        for face in (fixed, moving):
            painter.drawLine(QLineF(face.x() + side - 10, face.y(), face.x() + side + 34, face.y()))
        x = fixed.x() + side + 24
        for tip, way in ((moving.y(), -1.0), (fixed.y(), 1.0)):
            painter.drawLine(QLineF(x, tip, x, tip + way * 22))
            painter.drawLine(QLineF(x, tip, x - 4, tip + way * 7))
            painter.drawLine(QLineF(x, tip, x + 4, tip + way * 7))
        middle = (fixed.y() + moving.y()) / 2
        text = format_length(gap, self.look.inches)
        room = self.viewport().width() - x - 16
        left = x + 12 if metrics.horizontalAdvance(text) < room else x - 12 - metrics.horizontalAdvance(text)
        self.paint_on_paper(painter, QPointF(left, middle + metrics.ascent() / 2 - 1), text)
        self._paint_scale(painter, metrics)

    def _paint_scale(self, painter: QPainter, metrics: QFontMetricsF) -> None:
        length = 0.254 if self.look.inches else 0.5
        text = f"{number(0.01, 3)} in" if self.look.inches else f"{number(0.5)} mm"
        wide = length * self.pixels_per_mm()
        y = self.viewport().height() - 10.0
        painter.setPen(QPen(QColor(self.look.theme.text), 1.5))
        painter.drawLine(QLineF(10, y, 10 + wide, y))
        for x in (10.0, 10.0 + wide):
            painter.drawLine(QLineF(x, y - 4, x, y + 4))
        self.paint_on_paper(painter, QPointF(18 + wide, y + metrics.ascent() / 2 - 2), text)
