"""The breaker end on screen: drawn from the bench's drawing, turned by hand, mouse or keyboard."""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import replace

from PySide6.QtCore import QEvent, QPointF, QRectF, QSizeF, Qt, Signal
from PySide6.QtGui import QColor, QCursor, QFontInfo, QFontMetricsF, QKeyEvent, QMouseEvent, QPainter, QPen
from PySide6.QtWidgets import QWidget

from magview.bench import actions as do
from magview.bench.events import nearest_event
from magview.bench.state import BenchState
from magview.bench.words import breaker_end_sense
from magview.drawing.breaker_end import PARENTS, STILL, BreakerEnd, ByEye, Pose, breaker_end
from magview.drawing.breaker_hero import Shown, breaker_scene
from magview.drawing.breaker_words import description, remark, to_scale
from magview.drawing.scene import Frame, Hand, Options, Scene, frame_of, hand_at
from magview.drawing.things import AS_PIXELS, Laid, laid_scene
from magview.spec.language import tr
from magview.ui.kit.look import Look
from magview.ui.kit.pictured import Pictured
from magview.ui.pictures.breaker_hands import (
    CALM_PX,
    HANDS,
    HANDS_OF_VALUES,
    LENS_FACTOR,
    PARTS_IN_HAND,
    SNAP_DEG,
    STEPS,
    STILL_PX,
    Drag,
    turning,
    value_of,
)
from magview.ui.pictures.picture_view import PictureView, bearing_about, step_factor
from magview.ui.pictures.scene import PictureScene
from magview.ui.pictures.scene_painter import ScenePainter

_LENS_PX = 90.0
"""Radius of the lens."""


class BreakerView(PictureView):
    """The picture of the breaker end; drag, wheel and arrow keys turn the part in hand."""

    hand_changed = Signal(str)
    pointed = Signal(str)
    """A part was clicked and not moved: its name."""

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
        self._drag: Drag | None = None
        self._exaggeration = 1.0
        self._snapped = ""
        self._outlined = ""
        self._eye_deg = 0.0
        self._hovering = ""
        """The part the pointer is over."""
        self._named: frozenset[str] | None = None
        self._still: QPointF | None = None
        self._was_free = False
        """Whether no hand held the rotor before the drag."""
        self._fixed = ""
        """Place where the button went down, as long as the pointer has not moved away."""
        self.snaps = numbers
        """Whether a dragged rotor catches at contacts just open, top of lobe, E-gap and neutral."""
        self.lets_go = False
        """Whether a rotor that no hand held before a drag is let go of with the mouse."""
        self.touched: QPointF | None = None
        """Last place of a hand [px]; None where keys turned what is in hand."""
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
            hovering=self._outlined or (hand if self._drag is not None else self._hovering),
            in_hand=hand if self.hasFocus() else "",
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

    def take(self, hand: str) -> None:
        """Take a part in hand: "rotor", "plate" or "screw"."""
        if hand != self._hand:
            self._hand = hand
            self._picture.colour(self.look.theme, hand)
            self.show_state(self._model.state)
            self.hand_changed.emit(hand)

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
        clips = self.place_of("contacts"), self.place_of("ground")
        ends = [(at.x(), -at.y()) for at in clips]
        em = float(QFontInfo(self.font()).pixelSize())
        scene = laid_scene(laid, ends[0], ends[1], (size.width(), size.height()), em)
        self._painter.over(painter, scene, size, self.font(), AS_PIXELS)

    @property
    def dragging(self) -> bool:
        """Whether the pointer holds a part."""
        return self._drag is not None

    @property
    def sense(self) -> int:
        """+1 where the rotor turns clockwise seen from the breaker end."""
        return breaker_end_sense(self._model.state.magneto)

    def place_of(self, part: str) -> QPointF:
        """Return the place of a part in the picture now [px]; "ground" is the rim, clear of the marks."""
        if part == "ground":
            angle = math.radians(135.0)
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

    # -------------------------------------------------------------- hands on

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Take hold of what is under the pointer."""
        super().mousePressEvent(event)
        self.touched = event.position()
        if event.button() == Qt.MouseButton.MiddleButton and self.zoom == 1.0:
            self.hold_lens(event.position())
        if event.button() != Qt.MouseButton.LeftButton:
            return
        self._still = event.position()
        hand = self._hand_at(event.position())
        if hand is None:
            shape = self._picture.shape_at(self._scene_point(event.position()))
            self._fixed = shape.part if shape is not None else ""
            return
        self._drag = self._start_drag(hand, event.position())
        self._was_free = not self._model.state.held
        self.take(self._drag.hand)
        self._model.stop()
        self._model.grip(self._drag.hand == "rotor")
        self.viewport().setCursor(Qt.CursorShape.ClosedHandCursor)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """Turn what is held by as much as the pointer turns about its axis."""
        super().mouseMoveEvent(event)
        drag = self._drag
        if self._still is not None and (event.position() - self._still).manhattanLength() > STILL_PX:
            self._still = None
            if drag is None and self._fixed:
                part, self._fixed = self._fixed, ""  # once for each drag
                self._model.refused.emit(
                    tr(
                        "what is there ({part}) stays: drag the rotor, the backplate or the contact screw",
                        part=tr(part),
                    )
                )
        if self._lens is not None:
            self.hold_lens(event.position())
        if drag is not None:
            self.touched = event.position()
        else:
            if not event.buttons():
                self._hover(event.position())
            return
        bearing = bearing_about(drag.centre, self._scene_point(event.position()))
        moved = (bearing - drag.last_bearing + 180.0) % 360.0 - 180.0
        drag.last_bearing = bearing
        # Near the axis a pixel would be a wild turn: there the hand is slower than the pointer.
        radius = self._radius(drag.centre, event.position())
        near = min(radius, drag.last_radius) / CALM_PX[drag.hand]
        drag.last_radius = radius
        finer = 1.0 if self._lens is None else LENS_FACTOR
        drag.value += moved * drag.per_bearing * min(1.0, near) / finer
        self._turn_to(drag, free=bool(event.modifiers() & Qt.KeyboardModifier.AltModifier))

    def _turn_to(self, drag: Drag, free: bool) -> None:
        value, self._snapped = drag.value, ""
        if drag.hand == "rotor" and self.snaps and not free:
            caught = nearest_event(self._model.state, value, SNAP_DEG)
            if caught is not None:
                value, self._snapped = caught
        self._model.send(turning(drag.hand, value), drag.gesture)
        self.viewport().update()

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        """Let go; a rotor that is not held is now the magnet's."""
        super().mouseReleaseEvent(event)
        self._fixed = ""
        if event.button() == Qt.MouseButton.MiddleButton:
            self.hold_lens(None)
        if event.button() == Qt.MouseButton.LeftButton and self._still is not None:
            self._point_at(self._still)
        if event.button() == Qt.MouseButton.LeftButton and self._drag is not None:
            turned, self._drag, self._snapped = self._drag, None, ""
            self._model.grip(False)
            engaged = self._model.state.engaged
            driven = engaged is not None and engaged.mounted
            if self.lets_go and turned.hand == "rotor" and self._was_free and self._model.state.held and not driven:
                self._model.send(do.LetGo())  # a hand that did not hold it before does not hold it after
            self.viewport().update()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Arrows turn the part in hand, Home puts it back; 1, 2, 3 or R, B, S take rotor, backplate, contact screw;
        Space holds or lets go; L holds the lens."""
        steps = {Qt.Key.Key_Up: 1.0, Qt.Key.Key_Right: 1.0, Qt.Key.Key_Down: -1.0, Qt.Key.Key_Left: -1.0,
                 Qt.Key.Key_PageUp: 10.0, Qt.Key.Key_PageDown: -10.0}  # fmt: skip
        hands = {Qt.Key.Key_1: "rotor", Qt.Key.Key_2: "plate", Qt.Key.Key_3: "screw",
                 Qt.Key.Key_R: "rotor", Qt.Key.Key_B: "plate", Qt.Key.Key_S: "screw"}  # fmt: skip
        key = Qt.Key(event.key())
        if key in steps:
            self.turn(steps[key] * step_factor(event.modifiers()))
        elif key in hands:
            self.take(hands[key])
        elif key == Qt.Key.Key_Home and self.numbers:
            self.put_back()
        elif key == Qt.Key.Key_L and not event.isAutoRepeat():
            self.hold_lens(QPointF(self.viewport().mapFromGlobal(QCursor.pos())))
        elif key == Qt.Key.Key_Space:
            self._model.send(do.LetGo() if self._model.state.held else do.HoldRotor())
        else:
            super().keyPressEvent(event)

    def keyReleaseEvent(self, event: QKeyEvent) -> None:
        """Put the lens away."""
        if event.key() == Qt.Key.Key_L and not event.isAutoRepeat():
            self.hold_lens(None)
        super().keyReleaseEvent(event)

    def turn(self, steps: float) -> None:
        """Turn the part in hand by a number of its steps."""
        self.touched = None
        self._model.stop()
        value = value_of(self._model.state, self._hand) + steps * STEPS[self._hand]
        self._model.send(turning(self._hand, value))

    def put_back(self) -> None:
        """Put the part in hand back: rotor to the E-gap, plate to its designed place, screw to its middle."""
        magneto = self._model.state.magneto
        home = {"rotor": magneto.e_gap_deg, "plate": magneto.designed_setting.backplate_deg, "screw": 0.0}
        self._model.send(turning(self._hand, home[self._hand]))

    def _point_at(self, position: QPointF) -> None:
        self._still = None
        part = self._picture.part_at(self._scene_point(position), STILL_PX / self.transform().m22())
        if part:
            self.pointed.emit(part)

    def leaveEvent(self, event: QEvent) -> None:
        """Nothing is pointed at any more."""
        super().leaveEvent(event)
        self._light_up("")

    def _hover(self, position: QPointF) -> None:
        """Show what can be taken hold of, and light up what is pointed at."""
        hand = self._hand_at(position)
        self.viewport().setCursor(Qt.CursorShape.OpenHandCursor if hand else Qt.CursorShape.ArrowCursor)
        shape = self._picture.shape_at(self._scene_point(position))
        part = hand.part if hand is not None and hand.part == "contact screw" else shape.part if shape else ""
        self._light_up(part)

    def _light_up(self, part: str) -> None:
        if part != self._hovering:
            self._hovering = part
            self.viewport().update()
            self.lit.emit(part)

    def _hand_at(self, position: QPointF) -> Hand | None:
        at = self._scene_point(position)
        return hand_at(self.picture, (at.x(), -at.y()), self.viewportTransform().m22())

    def _start_drag(self, held: Hand, position: QPointF) -> Drag:
        centre, hand = QPointF(held.centre[0], -held.centre[1]), HANDS_OF_VALUES[held.value]
        bearing, radius = bearing_about(centre, self._scene_point(position)), self._radius(centre, position)
        value = value_of(self._model.state, hand)
        return Drag(hand, centre, bearing, radius, value, held.per_bearing, self._model.gesture())

    def _radius(self, centre: QPointF, position: QPointF) -> float:
        out = self.viewportTransform().map(centre) - position
        return math.hypot(out.x(), out.y())
