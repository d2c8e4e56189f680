"""The drive end on screen: the coupling's teeth, moved one at a time by drag, key or button.

It is seen from the magneto's drive end or as one stands at the engine; a wide picture shows both side by side.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace

from PySide6.QtCore import QEvent, QPointF, QRectF, QSizeF, Qt
from PySide6.QtGui import QColor, QCursor, QFontInfo, QKeyEvent, QMouseEvent, QPainter, QPen
from PySide6.QtWidgets import QToolButton, QWidget

from magview.bench import actions as do
from magview.bench.state import BenchState, Engaged, crank_deg, same_but_worn
from magview.bench.tooth_steps import coupling_words, marks_words
from magview.bench.words import direction_word, drive_end_sense
from magview.drawing.coupling_scene import PAINT, coupling_scene
from magview.drawing.drive_end import EXTENT_MM, PARENTS, drive_end, drive_pose
from magview.drawing.scene import Frame, Options, Scene, frame_of
from magview.physics.engine.coupling import Move
from magview.spec.language import marked, tr
from magview.ui.kit.look import Look
from magview.ui.kit.pictured import Pictured
from magview.ui.pictures.breaker_hands import LENS_FACTOR
from magview.ui.pictures.picture_view import PictureView, bearing_about, step_factor
from magview.ui.pictures.scene import PictureScene
from magview.ui.pictures.scene_painter import ScenePainter

WIDE = 2.0
"""So much wider than high, the picture shows both views."""

_FACES = marked("Both faces of the disc: drive flange outside, magneto flange inside.")

_PARTS = {"flange": marked("drive flange"), "disc": marked("disc"), "hub": marked("magneto flange")}

_BUTTON_PX = 24.0
_LENS_PX = 90.0


@dataclass
class _Drag:
    group: str
    last_bearing: float
    turned: float
    """Angle that the pointer has gone round since the press [bearing deg]."""
    start: tuple[int, int]
    start_crank: float
    gesture: int


@dataclass(frozen=True)
class _Pane:
    """A view of the coupling, where it is painted, and its frame within that."""

    room: QRectF
    scene: Scene
    frame: Frame


class DriveView(PictureView):
    """The coupling. Drag a flange or the disc; arrow keys move teeth; E turns the view round."""

    def __init__(self, model: Pictured, look: Look, parent: QWidget | None = None, *, numbers: bool = True) -> None:
        self._picture = PictureScene(PARENTS)
        super().__init__(self._picture, look, (), tuple(PARENTS), parent)
        self._model = model
        self._painters = ScenePainter(look.theme), ScenePainter(look.theme)
        self.numbers = numbers
        self.to_scale = False
        self._marked, self._aside = True, 0.0
        self._coupling: object = None
        self._drag: _Drag | None = None
        self._preview: Move | None = None
        self._hovering = ""
        self._lens: QPointF | None = None
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMouseTracking(True)
        self.setMinimumSize(190, 190)
        self.setAccessibleName(tr("Drive end of the magneto: the toothed coupling"))
        self.turn_round_button = self._build_button()
        self.show_state(model.state)
        model.changed.connect(self.show_state)

    def _build_button(self) -> QToolButton:
        button = QToolButton(self.viewport())
        button.setText("⇄")
        button.setAccessibleName(tr("See the coupling from the other side"))
        button.setToolTip(tr("See it from the magneto, or as one stands at the engine (E)"))
        button.setFocusPolicy(Qt.FocusPolicy.NoFocus)  # the key does the same
        button.setAutoRaise(True)
        button.setMinimumSize(int(_BUTTON_PX), int(_BUTTON_PX))
        button.adjustSize()
        button.clicked.connect(self.turn_round)
        return button

    # -------------------------------------------------------------- showing

    @property
    def scene_of_parts(self) -> PictureScene:
        """The scene of the coupling's parts."""
        return self._picture

    @property
    def picture(self) -> Scene:
        """Scene of the present state, as painted, or the first of two."""
        return self._scene(self.mirrored, self._room(0).size())

    @property
    def shows_both(self) -> bool:
        """Whether both views stand side by side."""
        port = self.viewport()
        return self.zoom == 1.0 and port.width() >= WIDE * port.height() and self._model.state.engaged is not None

    def _room(self, which: int) -> QRectF:
        port = QRectF(self.viewport().rect())
        if not self.shows_both:
            return port
        half = port.width() / 2
        return QRectF(which * half, 0.0, half, port.height())

    def _scene(self, at_engine: bool, size: QSizeF) -> Scene:
        em, hidden = float(QFontInfo(self.font()).pixelSize()), self._picture.hidden
        if not self._marked:
            hidden |= {PAINT}
        options = Options(self.numbers, hovering=self._hovering, hidden=hidden)
        room_em = max(size.width(), 1.0) / em, max(size.height(), 1.0) / em

        def draw(state: BenchState) -> Scene:
            return coupling_scene(state, options, self._preview, at_engine, room_em, self._aside)

        state = self._model.state
        drawn_with = at_engine, hidden, self.numbers, self._preview, self._aside
        return self.ghost.over(draw(state), state, draw, *drawn_with)

    def panes(self) -> Iterator[_Pane]:
        """The view that is chosen, and in a wide picture the other at its right."""
        to_pixels, room = self.viewportTransform(), self._room(0)
        yield _Pane(room, self.picture, Frame(to_pixels.m22(), to_pixels.dx(), to_pixels.dy(), self.mirrored))
        if self.shows_both:
            room = self._room(1)
            scene = self._scene(not self.mirrored, room.size())
            em = float(QFontInfo(self.font()).pixelSize())
            yield _Pane(room, scene, frame_of(scene, room.width(), room.height(), em))

    def show_state(self, state: BenchState, old: BenchState | None = None) -> None:
        """Show a state; the outlines are rebuilt only for other tooth counts."""
        engaged = state.engaged
        here = (engaged, state.rotor_deg)
        if old is not None and here == (old.engaged, old.rotor_deg) and same_but_worn(state.magneto, old.magneto):
            return  # nothing at this end has moved
        coupling = engaged.installation.disc if engaged else None
        if old is not None and self._reference(state) != self._reference(old):
            self.preview(None)  # a move planned for another magneto or reading would mislead
        if coupling != self._coupling:
            self._coupling = coupling
            shapes = drive_end(coupling) if coupling else ()
            self._picture.build(shapes, dict.fromkeys(PARENTS, (0.0, 0.0)), self.look.theme)
            self.fit()
        if engaged is not None:
            self._picture.turn(drive_pose(state, engaged).aside(self._aside).turns_deg)
        self._describe(state, engaged)
        self.viewport().update()

    def _describe(self, state: BenchState, engaged: Engaged | None) -> None:
        if engaged is None:
            self.setAccessibleDescription(tr("This magneto is not on an engine."))
            return
        sense = drive_end_sense(state.magneto)
        seen = tr("Seen from the drive end, rotation {way}.", way=self._way(state))
        if self.mirrored:
            way = tr("anticlockwise") if sense > 0 else tr("clockwise")
            seen = tr("Seen as one stands at the engine, rotation {way}.", way=way)
        words = tr("No marks on it.")
        if self._marked:
            words = f"{coupling_words(engaged)} {marks_words(engaged.mounting)}"
        planned = f" {self.picture.description}" if self._preview is not None else ""
        self.setAccessibleDescription(f"{seen} {words}{planned}")

    def set_aside(self, degrees: float) -> None:
        """Draw the whole coupling turned by so much, so that paint says nothing of where the crank stands."""
        self._aside = degrees
        self.show_state(self._model.state)

    def set_marked(self, marked: bool) -> None:
        """Whether paint stands across the coupling."""
        self._marked = marked
        self.show_state(self._model.state)

    @property
    def at_engine(self) -> bool:
        """Whether it is seen as one stands at the engine."""
        return self.mirrored

    def turn_round(self) -> None:
        """See it from the other side: from the magneto's drive end, or as one stands at the engine."""
        self.mirrored = not self.mirrored
        self.fit()
        self.show_state(self._model.state)

    @staticmethod
    def _reference(state: BenchState) -> object:
        """Position that a previewed move counts from."""
        engaged = state.engaged
        at = engaged and engaged.mounting
        return engaged and at and (engaged.side, engaged.installation, at.phase_deg, at.wanted_btdc_deg)

    @property
    def previewed(self) -> tuple[int, int] | None:
        """The teeth (magneto flange, disc) of the move that is shown, or None."""
        move = self._preview
        return None if move is None else (move.magneto_teeth, move.disc_teeth)

    def preview(self, move: Move | None) -> None:
        """Show a move, step by step, with where it would bring the painted marks; None shows none."""
        if move == self._preview:
            return
        self._preview = move
        self.fit()
        self._describe(self._model.state, self._model.state.engaged)
        self.viewport().update()

    @staticmethod
    def _way(state: BenchState) -> str:
        return direction_word(1, state.magneto.rotation, "drive end")

    def look_changed(self) -> None:
        """Other colours or thicker lines."""
        for painter in self._painters:
            painter.set_theme(self.look.theme)
        super().look_changed()

    def fit(self) -> None:
        """Show the whole picture in the room there is."""
        e = 4 * EXTENT_MM
        self.setSceneRect(QRectF(-2 * e, -2 * e, 4 * e, 4 * e))
        port, room = QRectF(self.viewport().rect()), self._room(0)
        em = float(QFontInfo(self.font()).pixelSize())
        whole = frame_of(self.picture, room.width(), room.height(), em)
        side = -whole.scale if self.mirrored else whole.scale
        middle = QPointF((port.width() / 2 - whole.left) / side, (port.height() / 2 - whole.top) / whole.scale)
        self.frame(max(whole.scale, 0.1), middle)
        self.turn_round_button.adjustSize()
        self.turn_round_button.move(port.toRect().width() - self.turn_round_button.width() - 4, 4)
        self.turn_round_button.setVisible(self._model.state.engaged is not None and not self.shows_both)

    def zoom_by(self, factor: float, at: QPointF | None = None) -> None:
        """Zoom about a point of the view [px]; from near by, one view has all the room."""
        both = self.shows_both
        super().zoom_by(factor, at)
        if both != self.shows_both:
            self.fit()

    def whole(self) -> None:
        """Show the whole picture again."""
        super().whole()
        self.fit()

    # -------------------------------------------------------------- painting

    def paint_picture(self, painter: QPainter, ratio: float) -> None:
        """Paint the scene, or both, where zoom and pan have it; the lens over it while it is held."""
        for pane, brush in zip(self.panes(), self._painters, strict=False):
            scene, size = pane.scene, pane.room.size()
            brush.line_factor = self.line_factor
            painter.save()
            painter.translate(pane.room.topLeft())
            painter.setClipRect(QRectF(QPointF(0.0, 0.0), size))
            if self._model.state.engaged is None:
                scene = replace(scene, words=())  # they are written below on as many lines as they need
            brush.paint(painter, scene, size, self.font(), pane.frame, ratio)
            if self._lens is not None and pane.room.contains(self._lens):
                at = self._lens - pane.room.topLeft()
                brush.lens(painter, scene, size, self.font(), at, LENS_FACTOR, _LENS_PX, pane.frame)
            painter.restore()
        if self._model.state.engaged is None:
            painter.setFont(self.font())
            painter.setPen(QColor(self.look.theme.text))
            painter.drawText(
                self.viewport().rect().adjusted(20, 20, -20, -20),
                Qt.AlignmentFlag.AlignCenter | Qt.TextFlag.TextWordWrap,
                tr("This magneto is not on an engine. Open an installation to time it to one."),
            )

    def paint_part(self, painter: QPainter, part: str, outline: QPen) -> None:
        """Paint one part of the first picture again, alone."""
        pane = next(self.panes())
        self._painters[0].paint_part(painter, pane.scene, part, pane.frame)

    def hold_lens(self, at: QPointF | None) -> None:
        """Hold the lens over a point [px], ten times as large; the crank is ten times finer there. None: put it away.

        Where numbers are hidden there is none.
        """
        self._lens = at if self.numbers and self._model.state.engaged is not None else None
        self.viewport().update()

    # -------------------------------------------------------------- hands on

    def _scene_point(self, at: QPointF) -> QPointF:
        """The point of the picture under a pixel, of whichever picture lies there."""
        if self.shows_both and at.x() >= self._room(1).left():
            _, other = self.panes()
            x, y = other.frame.back(at.x() - other.room.left(), at.y())
            return QPointF(x, -y)
        return super()._scene_point(at)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Take hold of a flange or the disc; the middle button holds the lens."""
        super().mousePressEvent(event)
        if event.button() == Qt.MouseButton.MiddleButton and self.zoom == 1.0:
            self.hold_lens(event.position())
        engaged = self._model.state.engaged
        shape = self._picture.shape_at(self._scene_point(event.position()))
        if event.button() != Qt.MouseButton.LeftButton or engaged is None or shape is None:
            return
        at = engaged.mounting
        self._drag = _Drag(
            shape.group,
            self._bearing(event),
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
        bearing = self._bearing(event)
        finer = 1.0 if self._lens is None else LENS_FACTOR
        drag.turned += ((bearing - drag.last_bearing + 180.0) % 360.0 - 180.0) / finer
        drag.last_bearing = bearing
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
        shape = self._picture.shape_at(self._scene_point(at)) if self._model.state.engaged is not None else None
        self.viewport().setCursor(Qt.CursorShape.OpenHandCursor if shape else Qt.CursorShape.ArrowCursor)
        self.viewport().setToolTip(tr(_PARTS[shape.group]) if shape else tr(_FACES))
        self._light_up(_PARTS[shape.group] if shape else "")

    def _light_up(self, part: str) -> None:
        if part != self._hovering:
            self._hovering = part
            self.viewport().update()

    def leaveEvent(self, event: QEvent) -> None:
        """Nothing is pointed at any more."""
        super().leaveEvent(event)
        self._light_up("")

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        """Let go."""
        super().mouseReleaseEvent(event)
        if event.button() == Qt.MouseButton.MiddleButton:
            self.hold_lens(None)
        if event.button() == Qt.MouseButton.LeftButton:
            self._drag = None

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Left, Right: magneto flange on the disc; Up, Down: disc on the drive flange; Page keys: crank; E turns the
        view round; L holds the lens."""
        engaged = self._model.state.engaged
        teeth = {
            Qt.Key.Key_Right: (1, 0), Qt.Key.Key_Left: (-1, 0), Qt.Key.Key_Up: (0, 1), Qt.Key.Key_Down: (0, -1),
        }  # fmt: skip
        crank = {Qt.Key.Key_PageUp: 1.0, Qt.Key.Key_PageDown: -1.0}
        key = Qt.Key(event.key())
        if engaged is not None and key in teeth:
            i, j = teeth[key]
            at = engaged.mounting
            self._model.send(do.MoveTeeth(at.magneto_teeth + i, at.disc_teeth + j))
        elif engaged is not None and key in crank:
            self.turn(crank[key] * step_factor(event.modifiers()))
        elif engaged is not None and key == Qt.Key.Key_E:
            self.turn_round()
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

    def _bearing(self, event: QMouseEvent) -> float:
        return bearing_about(QPointF(0.0, 0.0), self._scene_point(event.position()))
