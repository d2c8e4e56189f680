"""Crank, timing disc and No. 1 piston on screen, with where the contacts open."""

from __future__ import annotations

import math
from dataclasses import dataclass

from PySide6.QtCore import QEvent, QPointF, QRectF, QSizeF, Qt
from PySide6.QtGui import (
    QColor,
    QHelpEvent,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPen,
)
from PySide6.QtWidgets import QToolTip, QWidget

from magview.bench import actions as do
from magview.bench.lamp_words import play_words
from magview.bench.state import BenchState, Engaged, crank_deg, firing_btdc_deg
from magview.drawing.crank_end import PARENTS, CrankEnd, CrankPose, crank_end, crank_pose, engine_sense
from magview.drawing.crank_scene import DiscMark, crank_scene
from magview.drawing.scene import Frame, Scene
from magview.spec.language import marked, tr, unbroken
from magview.ui.kit.look import Look
from magview.ui.kit.pictured import Pictured
from magview.ui.kit.turns import Follower
from magview.ui.pictures.about_axis import AboutAxis, bearing_about
from magview.ui.pictures.picture_view import PictureView, step_factor
from magview.ui.pictures.scene import PictureScene
from magview.ui.pictures.scene_painter import ScenePainter

_ON_STROKE = {
    "intake": marked("on its intake stroke"),
    "compression": marked("on its compression stroke"),
    "power": marked("on its power stroke"),
    "exhaust": marked("on its exhaust stroke"),
}
_STROKES = {
    "intake": marked("intake stroke"),
    "compression": marked("compression stroke"),
    "power": marked("power stroke"),
    "exhaust": marked("exhaust stroke"),
}


@dataclass
class _Drag:
    round: AboutAxis
    crank: float
    gesture: int


class CrankView(PictureView):
    """No. 1 of the engine lying on its side; drag or wheel turns the crank, and the magneto with it."""

    def __init__(self, model: Pictured, look: Look, parent: QWidget | None = None, *, numbers: bool = True) -> None:
        self._picture = PictureScene(PARENTS)
        super().__init__(self._picture, look, ("case",), tuple(g for g in PARENTS if g != "case"), parent)
        self._model = model
        self.numbers, self._disc_error = numbers, 0.0
        self._stop_deg: float | None = None
        self._painter = ScenePainter(look.theme)
        self._drawing: CrankEnd | None = None
        self._now: tuple[BenchState, CrankPose] | None = None
        """The pose of a state."""
        self._drag: _Drag | None = None
        self._fitted: tuple[tuple[object, ...], str] | None = None
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMouseTracking(True)
        self.setMinimumSize(190, 120)
        self.setAccessibleName(tr("Crank, timing disc and piston of No. 1"))
        self.show_state(model.state)
        self.follower = Follower(self.viewport(), model, self.show_state)

    # -------------------------------------------------------------- showing

    def show_state(self, state: BenchState, old: BenchState | None = None) -> None:
        """Show a state; the outlines are rebuilt only for another engine."""
        engaged = state.engaged
        drawing = crank_end(engaged.installation.engine) if engaged else None
        now = self._pose(engaged) if engaged else None
        if drawing is not self._drawing or (drawing is None and old is None):
            self._drawing = drawing
            self._picture.build(
                drawing.shapes if drawing else (), dict.fromkeys(PARENTS, (0.0, 0.0)), self.look.theme
            )
            self.fit()
        if engaged is not None and now is not None:
            error = engine_sense(engaged.installation.engine) * self._disc_error
            self._picture.turn({"disc": now.crank_turn_deg - error, "web": now.crank_turn_deg})
            self._picture.move("rod", now.pin)
            along = bearing_about(QPointF(now.pin[0], -now.pin[1]), QPointF(now.piston[0], -now.piston[1]))
            self._picture.turn({"rod": along - 90.0})
            self._picture.move("piston", now.piston)
        self.setAccessibleDescription(self._words(state, engaged) if engaged else tr("No engine."))
        self.repaint_soon()

    def look_changed(self) -> None:
        """Other colours, thicker lines, or another unit of length."""
        self._painter.set_theme(self.look.theme)
        super().look_changed()
        self.show_state(self._model.state)

    def set_disc_error(self, degrees: float) -> None:
        """Draw the disc put on wrong: what it reads at No. 1's top dead centre [crank deg]."""
        if degrees != self._disc_error:
            self._disc_error = degrees
            self.show_state(self._model.state)

    def set_stop(self, reach_deg: float | None) -> None:
        """Draw a piston stop in the plug hole that meets the piston so far from top dead centre [crank deg]."""
        if reach_deg != self._stop_deg:
            self._stop_deg = reach_deg
            self.repaint_soon()

    def _pose(self, engaged: Engaged) -> CrankPose:
        """Of the model's state, which the picture may not have followed yet: its words are of that."""
        state = self._model.state
        if self._now is None or self._now[0] is not state:
            self._now = state, crank_pose(engaged.installation.engine, crank_deg(state))
        return self._now[1]

    def _words(self, state: BenchState, engaged: Engaged) -> str:
        if not self.numbers:
            return tr("Seen from the propeller end. No. 1 cut open; its stroke is felt at the plug hole.")
        now = self._pose(engaged)
        degrees = abs(now.btdc_deg)
        where = (
            tr("{degrees:.1deg} before top dead centre", degrees=degrees)
            if now.btdc_deg >= 0
            else tr("{degrees:.1deg} after top dead centre", degrees=degrees)
        )
        return tr(
            "No. 1 {stroke}, {where}, piston {drop:length} down.",
            stroke=tr(_ON_STROKE[now.stroke]),
            where=where,
            drop=now.drop_mm,
        )

    def _short_words(self, engaged: Engaged, drop: bool = True) -> str:
        now = self._pose(engaged)
        degrees = abs(now.btdc_deg)
        where = (
            tr("{degrees:.1deg} BTDC", degrees=degrees)
            if now.btdc_deg >= 0
            else tr("{degrees:.1deg} ATDC", degrees=degrees)
        )
        stroke = tr(_STROKES[now.stroke])
        if not drop:
            return tr("No. 1: {stroke}, {where}", stroke=stroke, where=where)
        return tr(
            "No. 1: {stroke}, {where}, piston {drop:length} down",
            stroke=stroke,
            where=where,
            drop=now.drop_mm,
        )

    def _head(self) -> str:
        engaged = self._model.state.engaged
        if engaged is None:
            return tr("No engine")
        way = tr("clockwise") if engine_sense(engaged.installation.engine) > 0 else tr("anticlockwise")
        return f"{tr('Propeller end')} · {way}"

    def _foot(self) -> str:
        """All there is to say; what of it stands on the picture depends on the room."""
        return self._foots()[0]

    def _foots(self) -> tuple[str, ...]:
        """Words along the lower edge, from all of them to the least that must be said: the warning comes first."""
        engaged = self._model.state.engaged
        if engaged is None or self._drawing is None:
            return ("",)
        if not self.numbers:
            return (tr("No. 1 cut open. Its stroke is felt at the plug hole."),)
        words, where = self._short_words(engaged), self._short_words(engaged, drop=False)
        rod = () if self._drawing.true_rod else (tr("rod drawn on the crank pin"),)
        choices: list[tuple[str, ...]] = [(words, *rod), (where, *rod), (where,)]
        if warning := play_words(self._model.state):
            short = tr("Against rotation: play of {play:deg} not taken up", play=engaged.play.deg)
            choices = [*((warning, *parts) for parts in choices), (short, where), (warning,), (short,)]
        return tuple("; ".join(parts) for parts in choices)

    def shown_foot(self) -> str:
        """The most of it that leaves the picture its room; never nothing: the last is cut short with its dots."""
        port = self.viewport()
        key = (self._model.state, self.look.inches, self.numbers, port.width(), port.height(), self.font().key())
        if self._fitted is None or self._fitted[0] != key:
            self._fitted = key, self._fitting(max(0.24 * port.height(), self.words_height("M")))
        return self._fitted[1]

    def _fitting(self, room: float) -> str:
        choices = [unbroken(text) for text in self._foots()]
        for text in choices:
            if self.words_height(text) <= room:
                return text
        words = choices[-1].split(" ")
        while len(words) > 1 and self.words_height(" ".join(words) + " …") > room:
            words.pop()
        return " ".join(words) + " …"

    def foot_height(self, text: str) -> float:
        """Height of the words along the lower edge [px]."""
        return self.words_height(self.shown_foot()) if text else 0.0

    def paint_foot(self, painter: QPainter, text: str) -> None:
        """As much as there is room for along the lower edge; all of it on the pointer."""
        if self.viewport().toolTip() != text:
            self.viewport().setToolTip(text)
        warns = self.numbers and bool(play_words(self._model.state))
        painter.setPen(QColor(self.look.theme.text if warns else self.look.theme.faint))
        self._paint_block(painter, self.shown_foot(), Qt.AlignmentFlag.AlignBottom)

    def fit(self) -> None:
        """Show the whole picture in the room there is."""
        if self._drawing is None:
            return
        left, bottom, right, top = self._drawing.box
        wide, high = right - left, top - bottom
        self.setSceneRect(QRectF(left - wide, -top - high, 3 * wide, 3 * high))
        head, foot = self.words_height(self._head()), self.foot_height(self._foot())
        scale = min((self.viewport().width() - 12) / wide, (self.viewport().height() - head - foot) / high)
        scale = max(scale, 0.05)
        self.frame(scale, QPointF((left + right) / 2, -(top + bottom) / 2 + (foot - head) / 2 / scale))

    # -------------------------------------------------------------- words over the picture

    @property
    def picture(self) -> Scene:
        """Scene of the present state, as painted; there is none without an engine."""
        state = self._model.state
        assert state.engaged is not None
        return crank_scene(
            state.engaged.installation.engine, crank_deg(state), self._marks(state, state.engaged),
            disc_error_deg=self._disc_error, stop_deg=self._stop_deg, description=self._words(state, state.engaged),
        )  # fmt: skip

    def _marks(self, state: BenchState, engaged: Engaged) -> tuple[DiscMark, ...]:
        """Readings at which the contacts should open, and at which they do."""
        if not self.numbers:
            return ()
        wanted, opens = engaged.mounting.wanted_btdc_deg, firing_btdc_deg(state, engaged.side)
        marks = (
            DiscMark(wanted, tr("wanted"), "planned", above=True, dash=(3.0, 2.0)),
            DiscMark(opens, tr("opens"), "ink", above=False),
        )
        return tuple(mark for mark in marks if not math.isnan(mark.btdc_deg))

    def paint_picture(self, painter: QPainter, ratio: float) -> None:
        """Paint the scene, then viewpoint and stroke; the words must be those of the parts as they stand."""
        if self.follower is not None:
            self.follower.catch_up()
        size = QSizeF(self.viewport().size())
        if self._model.state.engaged is None:
            painter.fillRect(QRectF(QPointF(), size), QColor(self.look.theme.paper))
        else:
            self._painter.line_factor = self.line_factor
            self._painter.paint(painter, self.picture, size, self.font(), self._frame(), ratio)
        painter.setFont(self.font())
        self.paint_head(painter, self._head())
        if self._model.state.engaged is not None:
            self.paint_foot(painter, self._foot())

    def paint_part(self, painter: QPainter, part: str, outline: QPen) -> None:
        """Paint one part of the scene again, alone."""
        if self._model.state.engaged is not None:
            self._painter.paint_part(painter, self.picture, part, self._frame())

    def _frame(self) -> Frame:
        to_pixels = self.viewportTransform()
        return Frame(to_pixels.m22(), to_pixels.dx(), to_pixels.dy(), self.mirrored)

    # -------------------------------------------------------------- hands on

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Take hold of the crank or its disc."""
        super().mousePressEvent(event)
        if event.button() == Qt.MouseButton.LeftButton and self._held_at(event.position()):
            self._drag = _Drag(self._about(event), crank_deg(self._model.state), self._model.gesture())
            self.viewport().setCursor(Qt.CursorShape.ClosedHandCursor)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """The crank follows the pointer."""
        super().mouseMoveEvent(event)
        engaged = self._model.state.engaged
        if self._drag is None or engaged is None:
            if not event.buttons():
                held = self._held_at(event.position())
                self.viewport().setCursor(Qt.CursorShape.OpenHandCursor if held else Qt.CursorShape.ArrowCursor)
            return
        moved = self._drag.round.moved(self._scene_point(event.position()), self.pixels_per_mm())
        self._drag.crank += moved * engine_sense(engaged.installation.engine)
        self._model.send(do.TurnCrank(self._drag.crank), self._drag.gesture)

    def _held_at(self, position: QPointF) -> str:
        """Name of what a hand takes at a point [px], as a file has it: crank or timing disc; "" for none."""
        shape = self._picture.shape_at(self._scene_point(position))
        return shape.part if shape is not None and shape.group in ("disc", "web") else ""

    def viewportEvent(self, event: QEvent) -> bool:
        """Name what is under the pointer where it rests on a part."""
        if isinstance(event, QHelpEvent):
            shape = self._picture.shape_at(self._scene_point(QPointF(event.pos())))
            if shape is not None and shape.part:
                QToolTip.showText(event.globalPos(), tr(shape.part), self.viewport())
                return True
        return super().viewportEvent(event)

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        """Let go."""
        super().mouseReleaseEvent(event)
        if event.button() == Qt.MouseButton.LeftButton and self._drag is not None:
            self._drag = None
            self._model.grip(False)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Arrows turn the crank 1°, Page keys 10°, with Shift a tenth of it."""
        steps = {Qt.Key.Key_Up: 1.0, Qt.Key.Key_Right: 1.0, Qt.Key.Key_Down: -1.0, Qt.Key.Key_Left: -1.0,
                 Qt.Key.Key_PageUp: 10.0, Qt.Key.Key_PageDown: -10.0}  # fmt: skip
        key = Qt.Key(event.key())
        if key in steps:
            self.turn(steps[key] * step_factor(event.modifiers()))
        else:
            super().keyPressEvent(event)

    def turn(self, steps: float) -> None:
        """Turn the crank by degrees."""
        self._model.turn_crank(steps)

    def _about(self, event: QMouseEvent) -> AboutAxis:
        return AboutAxis(QPointF(0.0, 0.0), self._scene_point(event.position()), self.pixels_per_mm())
