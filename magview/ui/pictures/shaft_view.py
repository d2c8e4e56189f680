"""One shaft on screen: the section from engine to cam, and beside it, or above, the cut through the rotor.

Pointing at a part lights it up, and says which, so that the other pictures light theirs.
"""

from __future__ import annotations

from PySide6.QtCore import QEvent, QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QFontInfo, QMouseEvent, QPainter, QPaintEvent
from PySide6.QtWidgets import QWidget

from magview.bench.state import BenchState
from magview.drawing.rotor_cut import rotor_cut_scene
from magview.drawing.scene import Frame, Options, Scene, frame_of, inside
from magview.drawing.shaft_layout import PART_NAMES
from magview.drawing.shaft_section import shaft_scene
from magview.spec.language import tr
from magview.ui.kit.look import Look
from magview.ui.kit.pictured import Pictured
from magview.ui.kit.turns import Follower
from magview.ui.pictures.ghost import Ghost
from magview.ui.pictures.scene_painter import ScenePainter
from magview.ui.pictures.scheme_view import SchemeView

WIDE = 2.0
"""So much wider than high, the cut stands beside the section; else above it."""

_CUT_HEIGHT = 0.46
"""The cut's share of the height where it stands above."""


class ShaftView(SchemeView):
    """Section and cut of the magneto on the bench."""

    pointed = Signal(str)
    """The part under the pointer; "" where there is none."""

    def __init__(self, model: Pictured, look: Look, parent: QWidget | None = None, *, numbers: bool = True) -> None:
        super().__init__(model, look, parent, numbers=numbers)
        self._painters = ScenePainter(look.theme), ScenePainter(look.theme)
        self._scenes: tuple[Scene, Scene] | None = None
        self._drawn: BenchState | None = None
        """The state that they are of."""
        self.ghosts = Ghost(), Ghost()
        """The moment that section and cut are compared with."""
        self._hovering = ""
        self.setMouseTracking(True)
        self.setMinimumSize(160, 90)
        self.setAttribute(Qt.WidgetAttribute.WA_OpaquePaintEvent)  # what lies behind need not be painted first
        self.setAccessibleName(tr("One shaft: engine, coupling, rotor, gears, distributor, cam"))
        self.follower = Follower(self, model, self.show_state)
        look.changed.connect(self._look_changed)
        self.show_state(model.state)

    def sizeHint(self) -> QSize:
        """Room for both with the main names."""
        return QSize(760, 230)

    # -------------------------------------------------------------- showing

    def show_state(self, state: BenchState, old: BenchState | None = None) -> None:
        """Draw a state."""
        self.setAccessibleDescription(" ".join(scene.description for scene in self.scenes()))
        if self.follower is None or not self.follower.painting:
            self.update()

    def scenes(self) -> tuple[Scene, Scene]:
        """Section and cut as they stand."""
        at = self.model.state
        if self._scenes is None or self._drawn is not at:
            options = Options(numbers=self.numbers, hovering=self._hovering)
            self._drawn = at
            self._scenes = (
                self.ghosts[0].over(shaft_scene(at, options), at, lambda then: shaft_scene(then, options)),
                self.ghosts[1].over(rotor_cut_scene(at, options), at, lambda then: rotor_cut_scene(then, options)),
            )
        return self._scenes

    def set_ghost(self, state: BenchState | None) -> None:
        """Compare with a moment; None: with none any more."""
        for ghost in self.ghosts:
            ghost.state = state
        self._scenes = None
        self.update()

    def light(self, part: str) -> None:
        """Light a part up, wherever it was pointed at."""
        if part != self._hovering:
            self._hovering = part
            self._scenes = None
            self.update()

    def _look_changed(self) -> None:
        for painter in self._painters:
            painter.set_theme(self.look.theme)
            painter.line_factor = self.look.line_factor
        self.update()

    # -------------------------------------------------------------- painting

    def rooms(self) -> tuple[QRectF, QRectF]:
        """Return where section and cut stand."""
        width, height = float(self.width()), float(self.height())
        if width > WIDE * height:
            side = min(1.15 * height, 0.4 * width)
            return QRectF(0.0, 0.0, width - side, height), QRectF(width - side, 0.0, side, height)
        above = _CUT_HEIGHT * height
        return QRectF(0.0, above, width, height - above), QRectF(0.0, 0.0, width, above)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Both scenes, each in its room."""
        if self.follower is not None:
            self.follower.catch_up(painting=True)
        painter = QPainter(self)
        painter.fillRect(self.rect(), self._painters[0].colour("paper"))
        self.paint_picture(painter, self.devicePixelRatioF())
        painter.end()

    def paint_picture(self, painter: QPainter, ratio: float) -> None:
        """Both scenes, with so many pixels of the device for each of ours; 0 on paper: only lines."""
        for scene, brush, room in zip(self.scenes(), self._painters, self.rooms(), strict=True):
            painter.save()
            painter.translate(room.topLeft())
            brush.paint(painter, scene, room.size(), self.font(), None, ratio)
            painter.restore()

    # -------------------------------------------------------------- pointing

    def part_at(self, at: QPointF) -> str:
        """The named part under a place."""
        em = float(QFontInfo(self.font()).pixelSize())
        for scene, room in zip(self.scenes(), self.rooms(), strict=True):
            if room.contains(at):
                frame = frame_of(scene, room.width(), room.height(), em)
                return _part_at(scene, frame, at - room.topLeft())
        return ""

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """Light up what is pointed at."""
        part = self.part_at(event.position())
        if part != self._hovering:
            self.light(part)
            self.setToolTip(tr(PART_NAMES[part]) if part in PART_NAMES else "")
            self.pointed.emit(part)

    def leaveEvent(self, event: QEvent) -> None:
        """Nothing is pointed at."""
        self.light("")
        self.pointed.emit("")


def _part_at(scene: Scene, frame: Frame, at: QPointF) -> str:
    """The part drawn last at a place of a picture."""
    place = frame.back(at.x(), at.y())
    for group in reversed(scene.groups):
        for piece in reversed(group.pieces):
            if piece.part and piece.closed and any(inside(group.put(outline), place) for outline in piece.outlines):
                return piece.part
    return ""
