"""The drive end on screen: the coupling's teeth, moved one at a time by drag, key or button.

It is seen from the magneto's drive end or as one stands at the engine; a wide picture shows both side by side.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from PySide6.QtCore import QEvent, QPointF, Qt
from PySide6.QtGui import QCursor, QKeyEvent, QMouseEvent
from PySide6.QtWidgets import QWidget

from magview.bench import actions as do
from magview.bench.state import crank_deg
from magview.bench.tooth_steps import tooth_of_disc_words, tooth_of_flange_words
from magview.bench.words import drive_end_sense
from magview.drawing.drive_end import ring_at
from magview.spec.language import marked, tr
from magview.ui.kit.look import Look
from magview.ui.kit.pictured import Pictured
from magview.ui.pictures.about_axis import AboutAxis
from magview.ui.pictures.breaker_hands import LENS_FACTOR
from magview.ui.pictures.coupling_picture import CouplingPicture
from magview.ui.pictures.picture_view import step_factor

_FACES = marked("Both faces of the disc: drive flange outside, magneto flange inside.")

_PARTS = {"flange": marked("drive flange"), "disc": marked("disc"), "hub": marked("magneto flange")}


@dataclass
class _Drag:
    group: str
    round: AboutAxis
    turned: float
    """Angle that the pointer has gone round since the press [bearing deg]."""
    start: tuple[int, int]
    start_crank: float
    gesture: int


class DriveView(CouplingPicture):
    """The coupling. Drag a flange or the disc; arrow keys move teeth; E turns the view round."""

    def __init__(self, model: Pictured, look: Look, parent: QWidget | None = None, *, numbers: bool = True) -> None:
        super().__init__(model, look, parent, numbers=numbers)
        self._drag: _Drag | None = None

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Take hold of a flange or the disc; the middle button holds the lens."""
        super().mousePressEvent(event)
        if event.button() == Qt.MouseButton.MiddleButton and self.zoom == 1.0:
            self.hold_lens(event.position())
        engaged = self._model.state.engaged
        group = self._group_at(event.position())
        if event.button() != Qt.MouseButton.LeftButton or engaged is None or not group:
            return
        at = engaged.mounting
        self._drag = _Drag(
            group,
            AboutAxis(QPointF(0.0, 0.0), self._scene_point(event.position()), self.pixels_per_mm()),
            0.0,
            (at.magneto_teeth, at.disc_teeth),
            crank_deg(self._model.state),
            self._model.gesture(),
        )
        self.viewport().setCursor(Qt.CursorShape.ClosedHandCursor)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """Whole teeth follow the pointer; the drive flange turns the crank."""
        super().mouseMoveEvent(event)
        if self._lens is not None:
            self.hold_lens(event.position())
        drag, state, engaged = self._drag, self._model.state, self._model.state.engaged
        if drag is None or engaged is None:
            self._hover(event.position())
            return
        finer = 1.0 if self._lens is None else LENS_FACTOR
        drag.turned += drag.round.moved(self._scene_point(event.position()), self.pixels_per_mm()) / finer
        turned = drag.turned * drive_end_sense(state.magneto)
        coupling, (i, j) = engaged.installation.disc, drag.start
        if drag.group == "flange":
            self._model.send(do.TurnCrank(drag.start_crank + turned / engaged.ratio), drag.gesture)
        elif drag.group == "disc":
            self._model.send(do.MoveTeeth(i, j + round(turned * coupling.drive_teeth / 360.0)), drag.gesture)
        else:
            self._model.send(do.MoveTeeth(i + round(turned * coupling.magneto_teeth / 360.0), j), drag.gesture)

    def _hover(self, at: QPointF) -> None:
        """Light up and name what can be taken hold of."""
        group = self._group_at(at)
        self.viewport().setCursor(Qt.CursorShape.OpenHandCursor if group else Qt.CursorShape.ArrowCursor)
        self.viewport().setToolTip(self._tip(group) if group else tr(_FACES))
        self._light_up(_PARTS[group] if group else "")

    def _group_at(self, position: QPointF) -> str:
        """The group that a hand takes at a point [px]; "" for none."""
        engaged, at = self._model.state.engaged, self._scene_point(position)
        if engaged is None:
            return ""
        shape = self._picture.shape_at(at)
        shown = shape.group if shape is not None else ""
        if not engaged.installation.toothed:
            return shown
        return ring_at(math.hypot(at.x(), at.y()), self.pixels_per_mm(), shown)

    def _tip(self, part: str) -> str:
        """The part, and what a tooth of it is worth: degrees of the coupling, which the tooth counts say anyway."""
        name, engaged = tr(_PARTS[part]), self._model.state.engaged
        if engaged is None or not engaged.installation.toothed or part == "flange":
            return name
        words = tooth_of_disc_words(engaged) if part == "disc" else tooth_of_flange_words(engaged)
        return f"{name}: {words}"

    def _light_up(self, part: str) -> None:
        if part != self._hovering:
            self.light(part)
            self.lit.emit(part)

    def leaveEvent(self, event: QEvent) -> None:
        """Nothing is pointed at any more."""
        super().leaveEvent(event)
        self._light_up("")

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        """Let go."""
        super().mouseReleaseEvent(event)
        if event.button() == Qt.MouseButton.MiddleButton:
            self.hold_lens(None)
        if event.button() == Qt.MouseButton.LeftButton and self._drag is not None:
            self._drag = None
            self._model.grip(False)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Left, Right: magneto flange on the disc; Up, Down: disc on the drive flange; Page keys: crank; E turns the
        view round; the space bar shows the planned move; L holds the lens."""
        engaged = self._model.state.engaged
        teeth = {
            Qt.Key.Key_Right: (1, 0), Qt.Key.Key_Left: (-1, 0), Qt.Key.Key_Up: (0, 1), Qt.Key.Key_Down: (0, -1),
        }  # fmt: skip
        crank = {Qt.Key.Key_PageUp: 1.0, Qt.Key.Key_PageDown: -1.0}
        key = Qt.Key(event.key())
        if engaged is not None and engaged.installation.toothed and key in teeth:
            i, j = teeth[key]
            at = engaged.mounting
            self._model.send(do.MoveTeeth(at.magneto_teeth + i, at.disc_teeth + j))
        elif engaged is not None and key in crank:
            self.turn(crank[key] * step_factor(event.modifiers()))
        elif engaged is not None and key == Qt.Key.Key_E:
            self.turn_round()
        elif key == Qt.Key.Key_Space and self._preview is not None:
            self.play()
        elif key == Qt.Key.Key_L and not event.isAutoRepeat():
            self.hold_lens(QPointF(self.viewport().mapFromGlobal(QCursor.pos())))
        else:
            super().keyPressEvent(event)

    def keyReleaseEvent(self, event: QKeyEvent) -> None:
        """Put the lens away."""
        if event.key() == Qt.Key.Key_L and not event.isAutoRepeat():
            self.hold_lens(None)
        super().keyReleaseEvent(event)

    def turn(self, steps: float) -> None:
        """Turn the crank by degrees."""
        self._model.turn_crank(steps)
