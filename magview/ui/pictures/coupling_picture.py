"""The drive end on screen without its hands: one view or both, a planned move, and moves shown as they are made."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import replace

from PySide6.QtCore import QPointF, QRectF, QSizeF, Qt
from PySide6.QtGui import QColor, QFontInfo, QPainter, QPen
from PySide6.QtWidgets import QToolButton, QWidget

from magview.bench.state import BenchState, Engaged, same_but_worn
from magview.bench.tooth_steps import coupling_words, marks_words
from magview.bench.words import direction_word, drive_end_sense
from magview.drawing.coupling_motion import TeethMotion
from magview.drawing.coupling_scene import PAINT, after_move, coupling_scene
from magview.drawing.drive_end import EXTENT_MM, PARENTS, DrivePose, drive_end, drive_pose
from magview.drawing.scene import Frame, Options, Scene, frame_of
from magview.physics.engine.coupling import Move
from magview.spec.language import tr
from magview.ui.kit.look import Look
from magview.ui.kit.pictured import Pictured
from magview.ui.kit.turns import Follower
from magview.ui.pictures.breaker_hands import LENS_FACTOR
from magview.ui.pictures.drive_motion import HOLD_MS, DriveMotion
from magview.ui.pictures.drive_panes import WIDE, KeptScenes, Pane, room_of
from magview.ui.pictures.picture_view import PictureView
from magview.ui.pictures.scene import PictureScene
from magview.ui.pictures.scene_painter import ScenePainter

_BUTTON_PX = 24.0
_LENS_PX = 90.0


class CouplingPicture(PictureView):
    """The coupling, seen from the magneto's drive end or as one stands at the engine; wide, both side by side."""

    def __init__(self, model: Pictured, look: Look, parent: QWidget | None = None, *, numbers: bool = True) -> None:
        self._picture = PictureScene(PARENTS)
        super().__init__(self._picture, look, (), tuple(PARENTS), parent)
        self._model = model
        self._painters = ScenePainter(look.theme), ScenePainter(look.theme)
        self.numbers = numbers
        self.to_scale = False
        self._marked, self._aside = True, 0.0
        self._coupling: object = None
        self._preview: Move | None = None
        self._hovering = ""
        self._playing = False
        """Whether the planned move is being shown, which nobody has made."""
        self._lens: QPointF | None = None
        self._kept, self.motion = KeptScenes(), DriveMotion(self)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMouseTracking(True)
        self.setMinimumSize(190, 190)
        self.setAccessibleName(tr("Drive end of the magneto: the toothed coupling"))
        self.turn_round_button = self._build_button(
            "⇄", tr("See the coupling from the other side"),
            tr("See it from the magneto, or as one stands at the engine (E)"), self.turn_round,
        )  # fmt: skip
        self.play_button = self._build_button(
            "▶", tr("Show the planned move"), tr("Show the move as it is made: A, then B (space bar)"), self.play,
        )  # fmt: skip
        self.play_button.hide()
        self.motion.moved.connect(self.viewport().update)
        self.show_state(model.state)
        self.follower = Follower(self.viewport(), model, self.show_state)

    def _build_button(self, sign: str, name: str, tip: str, act: Callable[[], None]) -> QToolButton:
        button = QToolButton(self.viewport())
        button.setText(sign)
        button.setAccessibleName(name)
        button.setToolTip(tip)
        button.setFocusPolicy(Qt.FocusPolicy.NoFocus)  # the key does the same
        button.setAutoRaise(True)
        button.setMinimumSize(int(_BUTTON_PX), int(_BUTTON_PX))
        button.adjustSize()
        button.clicked.connect(act)
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

    def light(self, part: str) -> None:
        """Light a part up, wherever it was pointed at."""
        self._hovering = part
        self.viewport().update()

    @property
    def scenes_built(self) -> int:
        """Number of times that a coupling had to be drawn."""
        return self._kept.built

    @property
    def shows_both(self) -> bool:
        """Whether both views stand side by side."""
        port = self.viewport()
        return self.zoom == 1.0 and port.width() >= WIDE * port.height() and self._model.state.engaged is not None

    def _room(self, which: int) -> QRectF:
        return room_of(QRectF(self.viewport().rect()), which, self.shows_both)

    def _scene(self, at_engine: bool, size: QSizeF) -> Scene:
        em, hidden = float(QFontInfo(self.font()).pixelSize()), self._picture.hidden
        if not self._marked:
            hidden |= {PAINT}
        options = Options(self.numbers, hidden=hidden)
        room_em = max(size.width(), 1.0) / em, max(size.height(), 1.0) / em
        state, shown = self._model.state, self.motion.shown
        drawn_with = at_engine, hidden, self.numbers, self._preview, self._aside, room_em

        def draw(state: BenchState, shown: DrivePose | None = None) -> Scene:
            return coupling_scene(state, options, self._preview, at_engine, room_em, self._aside, shown)

        def build() -> Scene:
            return self.ghost.over(draw(state, shown), state, draw, *drawn_with)

        key = drawn_with, shown, state.engaged, state.rotor_deg, state.magneto, self.ghost.state
        return self._kept.scene(at_engine, key, self._hovering, build)

    def panes(self) -> Iterator[Pane]:
        """The view that is chosen, and in a wide picture the other at its right."""
        to_pixels, room = self.viewportTransform(), self._room(0)
        yield Pane(room, self.picture, Frame(to_pixels.m22(), to_pixels.dx(), to_pixels.dy(), self.mirrored))
        if self.shows_both:
            room = self._room(1)
            scene = self._scene(not self.mirrored, room.size())
            em = float(QFontInfo(self.font()).pixelSize())
            yield Pane(room, scene, frame_of(scene, room.width(), room.height(), em))

    def show_state(self, state: BenchState, old: BenchState | None = None) -> None:
        """Show a state; the outlines are rebuilt only for other tooth counts."""
        engaged = state.engaged
        here = (engaged, state.rotor_deg)
        if old is not None and here == (old.engaged, old.rotor_deg) and same_but_worn(state.magneto, old.magneto):
            return  # nothing at this end has moved
        coupling = engaged.installation.coupling if engaged else None
        self._show_moved(state, old)
        if old is not None and self._reference(state) != self._reference(old):
            self.preview(None)  # a move planned for another magneto or reading would mislead
        if coupling != self._coupling:
            self._coupling = coupling
            shapes = drive_end(coupling) if coupling else ()
            self._picture.build(shapes, dict.fromkeys(PARENTS, (0.0, 0.0)), self.look.theme)
            self.fit()
        if engaged is not None and coupling is not None:
            self._picture.turn(drive_pose(state, engaged).aside(self._aside).turns_deg)
        self._describe(state, engaged)
        self.repaint_soon()

    def _show_moved(self, state: BenchState, old: BenchState | None) -> None:
        """Teeth moved are shown going to their new places from where they are seen."""
        was, engaged = old.engaged if old is not None else None, state.engaged
        seen = self.motion.shown if self.motion.running and not self._playing else None
        self._playing = False
        if old is None or was is None or engaged is None or self._still(was, engaged):
            self.motion.stop()
            return
        assert engaged.installation.coupling is not None
        start = seen or drive_pose(old, was)
        self.motion.start(TeethMotion(engaged.installation.coupling, start, drive_pose(state, engaged)))

    def _still(self, was: Engaged, now: Engaged) -> bool:
        """Whether no tooth is to be shown moving: none was moved, another coupling is shown, or motion is reduced."""
        before, after = was.mounting, now.mounting
        if now.installation.coupling is None or self._model.reduced_motion or not self.isVisible():
            return True
        same = was.installation is now.installation and was.side == now.side and before.phase_deg == after.phase_deg
        return not same or before.marks_apart == after.marks_apart

    def play(self) -> None:
        """Show the planned move as it is made, and then the parts as they are; with reduced motion its end alone."""
        engaged, move = self._model.state.engaged, self._preview
        if engaged is None or move is None or engaged.installation.coupling is None:
            return
        if self.motion.shown is not None and self._playing:
            self._playing = False
            self.motion.stop()
            return
        now, after = drive_pose(self._model.state, engaged), after_move(self._model.state, engaged, move)
        motion, self._playing = TeethMotion(engaged.installation.coupling, now, after), True
        if self._model.reduced_motion:
            self.motion.show_end(motion)
        else:
            self.motion.start(motion, HOLD_MS)

    def _describe(self, state: BenchState, engaged: Engaged | None) -> None:
        if engaged is None:
            self.setAccessibleDescription(tr("This magneto is not on an engine."))
            return
        sense = drive_end_sense(state.magneto)
        seen = tr("Seen from the drive end, rotation {way}.", way=self._way(state))
        if self.mirrored:
            way = tr("anticlockwise") if sense > 0 else tr("clockwise")
            seen = tr("Seen as one stands at the engine, rotation {way}.", way=way)
        if not engaged.installation.toothed:
            self.setAccessibleDescription(f"{seen} {self.picture.description}")
            return
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
        if self._playing:
            self._playing = False
            self.motion.stop()
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
        engaged = self._model.state.engaged
        for button, row in ((self.turn_round_button, 0), (self.play_button, 1)):
            button.adjustSize()
            button.move(port.toRect().width() - button.width() - 4, 4 + row * (button.height() + 2))
        self.turn_round_button.setVisible(engaged is not None and not self.shows_both)
        self.play_button.setVisible(
            engaged is not None and engaged.installation.toothed and self._preview is not None
        )

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

    def _scene_point(self, at: QPointF) -> QPointF:
        """The point of the picture under a pixel, of whichever picture lies there."""
        if self.shows_both and at.x() >= self._room(1).left():
            _, other = self.panes()
            x, y = other.frame.back(at.x() - other.room.left(), at.y())
            return QPointF(x, -y)
        return super()._scene_point(at)
