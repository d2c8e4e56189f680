"""The breaker end as it is shown: drawn from the bench's drawing, with lens, names and things in use; no hands."""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import replace

from PySide6.QtCore import QPointF, QRectF, QSizeF, Qt
from PySide6.QtGui import QColor, QFontInfo, QFontMetricsF, QPainter, QPen
from PySide6.QtWidgets import QWidget

from magview.bench.state import BenchState
from magview.bench.words import breaker_end_sense, cam_sense
from magview.drawing.breaker_end import PARENTS, STILL, BreakerEnd, ByEye, Pose, breaker_end
from magview.drawing.breaker_hero import Shown, breaker_scene
from magview.drawing.breaker_words import description, remark, to_scale
from magview.drawing.scene import Frame, Options, Scene, frame_of
from magview.drawing.things import AS_PIXELS, Laid, laid_scene
from magview.spec.language import tr
from magview.ui.kit.look import Look
from magview.ui.kit.pictured import Pictured
from magview.ui.pictures.breaker_hands import HANDS, LENS_FACTOR, PARTS_IN_HAND
from magview.ui.pictures.picture_view import PictureView
from magview.ui.pictures.scene import PictureScene
from magview.ui.pictures.scene_painter import ScenePainter

_LENS_PX = 90.0
"""Radius of the lens."""


class BreakerPicture(PictureView):
    """The picture of the breaker end, with names, numbers, lens, and what is laid on it."""

    def __init__(self, model: Pictured, look: Look, parent: QWidget | None = None, *, numbers: bool = True) -> None:
        self._picture = PictureScene(PARENTS)
        moving = tuple(g for g in PARENTS if g not in STILL)
        super().__init__(self._picture, look, STILL, moving, parent)
        self._model = model
        self._painter = ScenePainter(look.theme)
        self._lens: QPointF | None = None
        """Centre of the lens, while it is held [px]."""
        self.numbers = numbers
        self._drawing: BreakerEnd | None = None
        self.now: Pose = Shown.of(model.state).pose
        """Places of everything in the picture."""
        self._names = True
        self._hand = "rotor"
        self.rings_hand = True
        """Whether the part in hand is outlined; not where a click is to light up one part alone."""
        self._exaggeration = 1.0
        self._snapped = ""
        self._outlined = ""
        self._eye_deg = 0.0
        self._hovering = ""
        """The part the pointer is over."""
        self._named: frozenset[str] | None = None
        self.eyes: Callable[[], ByEye] | None = None
        """Picture that an eye has, where nothing true may be measured in the picture."""
        self.laid: Callable[[], Laid] | None = None
        """Things in use at the breaker end, if anybody knows."""
        self.follows_contacts = False
        """Whether a magnified picture keeps the contacts in its middle."""
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMouseTracking(True)
        self.setMinimumSize(220, 220)
        self.setAccessibleName(tr("Breaker end of the magneto"))
        self.show_state(model.state)
        model.changed.connect(self.show_state)

    # -------------------------------------------------------------- showing

    @property
    def scene_of_parts(self) -> PictureScene:
        """The scene, for a second view of the same drawing."""
        return self._picture

    @property
    def drawing(self) -> BreakerEnd:
        """Return where the parts are, for pointing at them."""
        assert self._drawing is not None
        return self._drawing

    @property
    def picture(self) -> Scene:
        """Scene of the present state, as painted."""
        state = self._model.state
        hand = PARTS_IN_HAND[self._hand]
        options = Options(
            self.numbers, self.look.inches, self._names, self._named,
            hovering=self._outlined or (hand if self.dragging and self.rings_hand else self._hovering),
            in_hand=hand if self.hasFocus() and self.rings_hand else "",
            hidden=self._picture.hidden, still_motion=self._model.reduced_motion, mirrored=self.mirrored,
            remark=remark(self._model.state), eye_deg=self._eye_deg,
        )  # fmt: skip
        scene, factor = breaker_scene(self.shown(), options), self._exaggeration
        drawn_with = factor, options.hidden, options.numbers, self.mirrored
        return self.ghost.over(scene, state, lambda then: breaker_scene(Shown.of(then, factor), options), *drawn_with)

    def shown(self, state: BenchState | None = None) -> Shown:
        """Return all that the pictures are drawn of, of another state than the present one where one is given."""
        eyes = self.eyes() if self.eyes is not None else None
        return Shown.of(state or self._model.state, self._exaggeration, eyes)

    @property
    def hand(self) -> str:
        """The part in hand: "rotor", "plate" or "screw"."""
        return self._hand

    def show_state(self, state: BenchState, old: BenchState | None = None) -> None:
        """Show a state; the outlines are rebuilt only for another magneto."""
        drawing = breaker_end(state.magneto)
        if drawing is not self._drawing:
            self._drawing = drawing
            # Wear changes a moving piece alone, and has to follow a slider.
            if not self._picture.reshape(drawing.shapes, self._moving_groups):
                self._picture.build(drawing.shapes, drawing.origins, self.look.theme)
                self._picture.colour(self.look.theme, self._hand)
                self.fit()
        now = self.now = self.shown().pose
        self._picture.turn(now.turns_deg)
        if self.follows_contacts and self.zoom > 1.0:
            self.look_at(self._picture.to_scene("stop", drawing.contact))
        gap_mm = now.gap_mm if self.numbers else None
        self.setAccessibleDescription(description(state, gap_mm, tr(HANDS[self._hand]), self.mirrored))
        self.viewport().update()

    def point_out(self, part: str) -> None:
        """Put a ring round a part named in words elsewhere; "" for none."""
        self._outlined = part
        self.viewport().update()

    def group_in_hand(self) -> str:
        """The part in hand is drawn bolder."""
        return self._hand

    def set_names(self, shown: bool) -> None:
        """Show or hide the names of the parts."""
        self._names = shown
        self.fit()
        self.viewport().update()

    def set_eye(self, eye_deg: float) -> None:
        """Look over the straightedge from an angle [deg]: 0 square on, positive from behind it."""
        if eye_deg != self._eye_deg:
            self._eye_deg = eye_deg
            self.viewport().update()

    def set_named(self, parts: frozenset[str] | None) -> None:
        """Write no names but these; None: all."""
        self._named = parts
        self.viewport().update()

    def look_changed(self) -> None:
        """Other colours, thicker lines, or another unit of length."""
        self._painter.set_theme(self.look.theme)
        super().look_changed()
        self.show_state(self._model.state)

    def set_exaggeration(self, factor: float) -> None:
        """Draw the gap larger than it is, 1 = true; the picture says so."""
        self._exaggeration = factor
        self.show_state(self._model.state)

    @property
    def exaggeration(self) -> float:
        """Scale at which the gap is drawn."""
        return self._exaggeration

    def set_mirrored(self, mirrored: bool) -> None:
        """Look from the drive end, through the magneto, or from the breaker end."""
        self.mirrored = mirrored
        self.fit()
        self.show_state(self._model.state)

    def fit(self) -> None:
        """Show the whole picture in the room there is."""
        if self._drawing is None:
            return
        e = self._drawing.extent_mm
        self.setSceneRect(QRectF(-2 * e, -2 * e, 4 * e, 4 * e))
        port = self.viewport()
        whole = frame_of(self.picture, port.width(), port.height(), float(QFontInfo(self.font()).pixelSize()))
        self.frame(whole.scale, QPointF(0.0, 0.0))
        words = to_scale(self._model.state.magneto, self._exaggeration, self.drawing.plain)
        if port.toolTip() != words:
            port.setToolTip(words)

    # -------------------------------------------------------------- painting

    def paint_picture(self, painter: QPainter, ratio: float) -> None:
        """Paint the scene where zoom and pan have it; the lens over it while it is held."""
        scene, size = self.picture, QSizeF(self.viewport().size())
        if not ratio:
            scene = replace(scene, in_hand="", lit="")  # of the screen alone: where keyboard and pointer are
        self._painter.line_factor = self.line_factor
        self._painter.paint(painter, scene, size, self.font(), self._frame(), ratio)
        if self.laid is not None:
            self._paint_laid(painter, self.laid(), size)
        if self._snapped:
            metrics = QFontMetricsF(self.font())
            painter.setFont(self.font())
            painter.setPen(QColor(self.look.theme.hand))
            at = QPointF(self.viewport().width() / 2 + 8, 2.2 * metrics.height())
            self.paint_on_paper(painter, at, tr("at: {place}", place=tr(self._snapped)))
        if self._lens is not None:
            self._painter.lens(painter, scene, size, self.font(), self._lens, LENS_FACTOR, _LENS_PX, self._frame())

    def _paint_laid(self, painter: QPainter, laid: Laid, size: QSizeF) -> None:
        if laid == Laid():
            return
        clips = self.place_of("contacts"), self.place_of("ground"), self.place_of("ground-left")
        ends = [(at.x(), -at.y()) for at in clips]
        em = float(QFontInfo(self.font()).pixelSize())
        scene = laid_scene(laid, ends[0], ends[1], (size.width(), size.height()), em, ends[2])
        self._painter.over(painter, scene, size, self.font(), AS_PIXELS)

    @property
    def dragging(self) -> bool:
        """Whether the pointer holds a part."""
        return False

    @property
    def sense(self) -> int:
        """+1 where the rotor turns clockwise seen from the breaker end."""
        return breaker_end_sense(self._model.state.magneto)

    @property
    def edge_sense(self) -> int:
        """+1 where cam and straightedge turn clockwise seen from the breaker end: the rotor's way or against it."""
        return cam_sense(self._model.state.magneto)

    def place_of(self, part: str) -> QPointF:
        """Return the place of a part in the picture now [px]; "ground" is the rim, clear of the marks."""
        if part.startswith("ground"):
            angle = math.radians(135.0 if part == "ground" else 238.0)
            rim = 0.96 * self.drawing.rim_mm
            return self.pixel(rim * math.sin(angle), rim * math.cos(angle))
        group, point = self.drawing.anchors[part]
        at = self._picture.to_scene(group, point)
        return self.viewportTransform().map(at)

    def paint_part(self, painter: QPainter, part: str, outline: QPen) -> None:
        """Paint one part of the scene again, alone."""
        self._painter.paint_part(painter, self.picture, part, self._frame())

    def _frame(self) -> Frame:
        to_pixels = self.viewportTransform()
        return Frame(to_pixels.m22(), to_pixels.dx(), to_pixels.dy(), self.mirrored)

    def hold_lens(self, at: QPointF | None) -> None:
        """Hold the lens over a point [px], ten times as large; hands are ten times finer there. None: put it away."""
        self._lens = at
        self.viewport().update()
