"""Close-up of the contacts on screen: cam, heel and contacts with heights drawn larger, and their sum."""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtCore import QPointF, QSizeF
from PySide6.QtGui import QFontInfo, QPainter, QWheelEvent
from PySide6.QtWidgets import QWidget

from magview.bench.state import BenchState
from magview.drawing.breaker_end import PARENTS, STILL
from magview.drawing.breaker_hero import Shown
from magview.drawing.contact_faces import Grade
from magview.drawing.contacts_closeup import closeup_scene
from magview.drawing.scene import Frame, Options, Scene, frame_of
from magview.spec.language import tr
from magview.spec.units import MM_PER_THOU
from magview.ui.kit.look import Look
from magview.ui.kit.pictured import Pictured
from magview.ui.kit.turns import Follower
from magview.ui.pictures.breaker_view import BreakerView
from magview.ui.pictures.picture_view import PictureView
from magview.ui.pictures.scene_painter import ScenePainter

_USUAL_EM = 22.0
"""A pane of so many ems, or higher, has room for the sum below the mechanism."""


class ContactView(PictureView):
    """The close-up beside a breaker end, whose parts it shows."""

    def __init__(self, model: Pictured, breaker: BreakerView, look: Look, parent: QWidget | None = None) -> None:
        moving = tuple(g for g in PARENTS if g not in STILL)
        super().__init__(breaker.scene_of_parts, look, STILL, moving, parent)
        self._model, self._breaker, self._painter = model, breaker, ScenePainter(look.theme)
        self.numbers = breaker.numbers
        self.to_scale = False
        self.blade_mm: float | None = None
        """The feeler blade that is tried; None for the gap's upper limit, or for none in a lesson."""
        self.tries_limit = True
        """Whether the upper limit's blade is shown where no other is tried."""
        self.grade: Grade | None = None
        """Look of the faces as found; None where nobody has looked."""
        self.setMinimumHeight(110)
        self.setAccessibleName(tr("Contacts, magnified"))
        self.show_state(model.state)
        self.follower = Follower(self.viewport(), model, self.show_state)

    def show_state(self, state: BenchState, old: BenchState | None = None) -> None:
        """Follow the contacts."""
        gap = self._breaker.now.gap_mm
        words = tr("Contacts closed.") if gap <= 0 else tr("Contacts open {gap:length}.", gap=gap)
        self.setAccessibleDescription(words if self.numbers else tr("No measure in practice: try blades."))
        self.repaint_soon()

    def look_changed(self) -> None:
        """Other colours or another unit."""
        self._painter.set_theme(self.look.theme)
        self.show_state(self._model.state)

    def wheelEvent(self, event: QWheelEvent) -> None:
        """Try the next thicker or thinner feeler blade; where numbers are hidden, none is tried here."""
        if not self.numbers:
            event.ignore()
            return
        step = MM_PER_THOU if self.look.inches else 0.01
        tried = self.blade_mm if self.blade_mm is not None else self._model.state.magneto.gap_limits_mm[1]
        nearest = round(tried / step) + (1 if event.angleDelta().y() > 0 else -1)
        self.blade_mm = min(max(nearest, 1), 200) * step
        self.viewport().update()
        event.accept()

    @property
    def picture(self) -> Scene:
        """Scene of the present state, as painted."""
        options = Options(self.numbers, self.look.inches)
        state = self._model.state
        shown = replace(self._breaker.shown(state), exaggeration=1.0)
        blade_mm = self.blade_mm if self.blade_mm is not None or self.tries_limit else 0.0
        scene = closeup_scene(shown, options, blade_mm, self.grade)
        scene = self.ghost.over(scene, state, lambda then: closeup_scene(Shown.of(then), options), self.numbers)
        return scene

    def _em(self) -> float:
        return float(QFontInfo(self.font()).pixelSize())

    def _frame(self, scene: Scene) -> Frame:
        port = self.viewport()
        return frame_of(scene, port.width(), port.height(), self._em())

    def pixels_per_mm(self) -> float:
        """Scale of the view now; heights are drawn so many times larger besides as the picture says."""
        return self._frame(self.picture).scale

    def faces(self) -> tuple[QPointF, QPointF]:
        """Middles of the fixed and the moving contact's face [px]."""
        scene, corners = self.picture, []
        for name in ("stop", "arm"):
            group = scene.group(name)
            piece = next(piece for piece in group.pieces if piece.part == "contacts")
            block = self._frame(scene).of(group.put(piece.outlines[0]))
            corners.append((block[2:] if name == "stop" else block[:2]).mean(axis=0).tolist())
        return QPointF(*corners[0]), QPointF(*corners[1])

    def paint_picture(self, painter: QPainter, ratio: float) -> None:
        """Paint the scene in the room there is."""
        self._painter.line_factor = self.line_factor
        self._painter.paint(painter, self.picture, QSizeF(self.viewport().size()), self.font(), None, ratio)
