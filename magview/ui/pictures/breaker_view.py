"""The breaker end on screen: drawn from the bench's drawing, turned by hand, mouse or keyboard."""

from __future__ import annotations

import math

from PySide6.QtCore import QLineF, QPointF, QRectF, Qt, Signal
from PySide6.QtGui import (
    QColor,
    QFont,
    QFontMetricsF,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPen,
)
from PySide6.QtWidgets import QWidget

from magview.bench.actions import HoldRotor, LetGo
from magview.bench.events import nearest_event
from magview.bench.state import BenchState
from magview.bench.words import breaker_end_sense, direction_word
from magview.drawing.breaker_end import PARENTS, STILL, BreakerEnd, Pose, breaker_end, pose
from magview.drawing.labels import arrange
from magview.drawing.shapes import Point
from magview.spec.language import format_angle, format_length, tr
from magview.ui.kit.look import Look
from magview.ui.kit.pictured import Pictured
from magview.ui.pictures.breaker_hands import (
    CALM_PX,
    GROUP_HANDS,
    HANDS,
    PLATE_PARTS,
    SNAP_DEG,
    STEPS,
    STILL_PX,
    Drag,
    turning,
    value_of,
)
from magview.ui.pictures.picture_view import PictureView, bearing_about, fill, step_factor
from magview.ui.pictures.scene import PictureScene

_LEAST_POINTS = 6.0
"""Smaller type is read by nobody."""


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
        self.numbers = numbers
        self._drawing: BreakerEnd | None = None
        self.now: Pose = pose(model.state)
        """Where everything stands in the picture."""
        self._names = True
        self._hand = "rotor"
        self._drag: Drag | None = None
        self._exaggeration = 1.0
        self._snapped = ""
        self._outlined = ""
        self._named: frozenset[str] | None = None
        self._still: QPointF | None = None
        self._fixed = ""
        """Where the button went down, as long as the pointer has not moved away."""
        self.snaps = numbers
        """Whether a dragged rotor catches at contacts just open, top of lobe, E-gap and neutral."""
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
        """The drawing shown."""
        assert self._drawing is not None
        return self._drawing

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
        now = self.now = pose(state, self._exaggeration)
        self._picture.turn(now.turns_deg)
        if self.follows_contacts and self.zoom > 1.0:
            self.look_at(self._picture.to_scene("stop", drawing.contact))
        self.setAccessibleDescription(self._description(state, now))
        self.viewport().update()

    def _description(self, state: BenchState, now: Pose) -> str:
        seen = (
            tr("Seen from the drive end, through the magneto, rotation {way}.", way=self._way(state))
            if self.mirrored
            else tr("Seen from the breaker end, rotation {way}.", way=self._way(state))
        )
        in_hand = tr("In hand: {part}.", part=tr(HANDS[self._hand]))
        if not self.numbers:
            return f"{seen} {tr('Rotor held.') if state.held else tr('Rotor let go.')} {in_hand}"
        places = {
            "rotor": format_angle(state.rotor_deg),
            "backplate": format_angle(state.backplate_deg, True),
            "screw": format_angle(state.screw_deg, True),
            "contacts": tr("contacts closed")
            if now.gap_mm <= 0
            else tr("contacts open {gap}", gap=format_length(now.gap_mm, self.look.inches)),
        }
        stands = (
            tr(
                "Rotor {rotor} past neutral, held; backplate {backplate}, contact screw {screw}; {contacts}.",
                **places,
            )
            if state.held
            else tr(
                "Rotor {rotor} past neutral, let go; backplate {backplate}, contact screw {screw}; {contacts}.",
                **places,
            )
        )
        return f"{seen} {stands} {in_hand}"

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

    def set_named(self, parts: frozenset[str] | None) -> None:
        """Write no names but these; None: all."""
        self._named = parts
        self.viewport().update()

    def look_changed(self) -> None:
        """Other colours, thicker lines, or another unit of length."""
        super().look_changed()
        self.show_state(self._model.state)

    def set_exaggeration(self, factor: float) -> None:
        """Draw the gap larger than it is, 1 = true; the picture says so."""
        self._exaggeration = factor
        self.show_state(self._model.state)

    @property
    def exaggeration(self) -> float:
        """How much larger than true the gap is drawn."""
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

    def _way(self, state: BenchState) -> str:
        return direction_word(1, state.magneto.rotation, "drive end" if self.mirrored else "breaker end")

    def _head(self) -> str:
        state = self._model.state
        words = [
            tr("Seen through from the drive end") if self.mirrored else tr("Breaker end"),
            tr("turns {way}", way=self._way(state)),
        ]
        if self._exaggeration != 1.0:
            words.append(tr("gap drawn {factor}×", factor=self._exaggeration))
        if not state.held:
            driven = state.engaged is not None and state.engaged.mounted
            words.append(tr("rotor let go, but the engine holds it") if driven else tr("rotor free"))
        return " · ".join(words)

    def _foot(self) -> str:
        ratio = self._model.state.magneto.cam.turns_per_rotor_turn
        if self._exaggeration != 1.0:
            return tr(
                "The gap is drawn {factor} times its size, the arm lifted with it off the cam.",
                factor=self._exaggeration,
            )
        if self.drawing.plain:
            return tr("Arm and heel in plain proportions: this magneto's file gives only the measured lift.")
        if ratio != 1.0:
            return tr(
                "Cam on the distributor shaft, {ratio:.4g} turn a rotor turn; drawn on the rotor's axis.",
                ratio=ratio,
            )
        return tr("Rotor and pole shoes are diagrammatic; cam, arm, contacts and marks are to scale.")

    def fit(self) -> None:
        """Show the whole picture in the room there is."""
        if self._drawing is None:
            return
        e = self._drawing.extent_mm
        self.setSceneRect(QRectF(-2 * e, -2 * e, 4 * e, 4 * e))
        # A line more at the head: neutral and E-gap are written above the drawing.
        head = self.words_height(self._head()) + 0.7 * QFontMetricsF(self.font()).height()
        foot = self.foot_height(self._foot())
        width, height = self.viewport().width(), self.viewport().height()
        margin = 2 * self._name_width() if self._names_fit() else 0.0
        size = max(40.0, min(width - margin, height - head - foot))
        self.frame(size / (2 * e), QPointF(0.0, (foot - head) / 2 * (2 * e) / size))

    def _name_width(self) -> float:
        return max(self.word_width(f"{tr(name)}  ") for name in self.drawing.anchors) + 8.0

    def _names_fit(self) -> bool:
        # On a small picture the names would take more room than the mechanism.
        return self._names and self.viewport().width() >= 4.4 * self._name_width()

    # -------------------------------------------------------------- words over the picture

    def edges(self) -> tuple[str, str]:
        """The viewpoint; what is drawn true and what is not."""
        return self._head(), self._foot()

    def paint_edges(self, painter: QPainter) -> None:
        """The words of the edges, and the numbers of the rim marks, which stand as still."""
        super().paint_edges(painter)
        font = QFont(painter.font())
        font.setPointSizeF(max(_LEAST_POINTS, 0.8 * font.pointSizeF()))
        painter.setFont(font)
        painter.setPen(QColor(self.look.theme.text))
        metrics = painter.fontMetrics()
        for lobe, place in enumerate(self.drawing.mark_numbers, 1):
            at = self.pixel(*place)
            box = metrics.tightBoundingRect(str(lobe))
            painter.drawText(at - QPointF(box.center()), str(lobe))
        painter.setFont(self.font())

    def paint_words(self, painter: QPainter) -> None:
        """Scales, pole letters and the names of the parts."""
        state, drawing = self._model.state, self.drawing
        metrics = QFontMetricsF(self.font())
        self._paint_rotor_words(painter, state, drawing)
        if self._names_fit():
            self._paint_names(painter, drawing, metrics)
        if self._outlined in drawing.anchors:
            group, point = drawing.anchors[self._outlined]
            at = self.viewportTransform().map(self._picture.to_scene(group, point))
            painter.setPen(QPen(QColor(self.look.theme.hand), 3.0))
            painter.drawEllipse(at, 1.1 * metrics.height(), 1.1 * metrics.height())
        if self._snapped:
            painter.setPen(QColor(self.look.theme.hand))
            at = QPointF(self.viewport().width() / 2 + 8, self.words_height(self._head()) + metrics.height())
            self.paint_on_paper(painter, at, tr("at: {place}", place=tr(self._snapped)))

    def _paint_rotor_words(self, painter: QPainter, state: BenchState, drawing: BreakerEnd) -> None:
        sense, r = breaker_end_sense(state.magneto), drawing.extent_mm / 1.56
        painter.setPen(QColor(self.look.theme.text))
        places = ((0.0, tr("neutral")), (sense * state.magneto.e_gap_deg, tr("E-gap"))) if self.numbers else ()
        for bearing, text in places:
            # Each word leans away from the other, so that they never meet.
            away = -sense if bearing == 0.0 else sense
            away = -away if self.mirrored else away
            at = self._pixel(bearing, 1.5 * r)
            width = self.word_width(text)
            self.text(painter, at.x() + (2 if away > 0 else -width - 2), at.y() + 2, text)
        poles, ascent = state.magneto.poles, painter.fontMetrics().ascent()
        for i in range(poles):
            at = self._pixel(i * 360.0 / poles + sense * state.rotor_deg + 360.0 / poles * 0.2, 1.1 * r)
            letter = "S" if i % 2 else "N"
            self.text(painter, at.x() - self.word_width(letter) / 2, at.y() + ascent / 2 - 1, letter)

    def _pixel(self, bearing: float, radius: float) -> QPointF:
        b = math.radians(bearing)
        return self.pixel(radius * math.sin(b), radius * math.cos(b))

    def _paint_names(self, painter: QPainter, drawing: BreakerEnd, metrics: QFontMetricsF) -> None:
        tips = {}
        inside = QRectF(self.viewport().rect())
        to_pixels = self.viewportTransform()
        for name, (group, point) in drawing.anchors.items():
            at = to_pixels.map(self._picture.to_scene(group, point))
            if inside.contains(at):
                tips[tr(name)] = (at.x(), at.y())
        width, height, line = self.viewport().width(), self.viewport().height(), metrics.height()
        column = self._name_width()
        labels = arrange(tips, column, width - column, 2.2 * line, height - 3 * line, 1.25 * line)
        if self._named is not None:  # each in the place it has among all of them
            labels = [label for label in labels if label.text in self._named]
        painter.setPen(QPen(QColor(self.look.theme.faint), 1))
        painter.drawLines([QLineF(label.x, label.y, label.tip_x, label.tip_y) for label in labels])
        tips_px = [QRectF(round(label.tip_x) - 1, round(label.tip_y) - 1, 3, 3) for label in labels]
        fill(painter, tips_px, QColor(self.look.theme.faint))
        ascent = metrics.ascent()
        painter.setPen(QColor(self.look.theme.text))
        for label in labels:
            x = label.x - self.word_width(label.text) - 4 if label.left else label.x + 4
            place = QPointF(x, label.y + ascent / 2 - 1)
            if self.zoom > 1.0:  # the columns stand over the mechanism then
                self.paint_on_paper(painter, place, label.text)
            else:
                self.text(painter, place.x(), place.y(), label.text)

    # -------------------------------------------------------------- hands on

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Take hold of what is under the pointer."""
        super().mousePressEvent(event)
        if event.button() != Qt.MouseButton.LeftButton:
            return
        self._still = event.position()
        hand = self._hand_at(event.position())
        if hand is None:
            shape = self._picture.shape_at(self._scene_point(event.position()))
            self._fixed = shape.part if shape is not None else ""
            return
        self.take(hand)
        self._drag = self._start_drag(hand, event.position())
        self._model.stop()
        self._model.grip(hand == "rotor")
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
        if drag is None:
            if not event.buttons():
                hand = self._hand_at(event.position())
                self.viewport().setCursor(Qt.CursorShape.OpenHandCursor if hand else Qt.CursorShape.ArrowCursor)
            return
        bearing = bearing_about(drag.centre, self._scene_point(event.position()))
        moved = (bearing - drag.last_bearing + 180.0) % 360.0 - 180.0
        drag.last_bearing = bearing
        # Near the axis a pixel would be a wild turn: there the hand is slower than the pointer.
        radius = self._radius(drag.centre, event.position())
        near = min(radius, drag.last_radius) / CALM_PX[drag.hand]
        drag.last_radius = radius
        drag.value += moved * drag.per_bearing * min(1.0, near)
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
        if event.button() == Qt.MouseButton.LeftButton and self._still is not None:
            self._point_at(self._still)
        if event.button() == Qt.MouseButton.LeftButton and self._drag is not None:
            self._drag, self._snapped = None, ""
            self._model.grip(False)
            self.viewport().update()

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        """Put a part back: rotor to the E-gap, plate to its designed place, screw to its middle."""
        hand = self._hand_at(event.position())
        if event.button() != Qt.MouseButton.LeftButton or hand is None or not self.numbers:
            return
        magneto = self._model.state.magneto
        home = {"rotor": magneto.e_gap_deg, "plate": magneto.designed_setting.backplate_deg, "screw": 0.0}[hand]
        self._model.send(turning(hand, home))

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Arrows turn the part in hand; 1, 2, 3 take rotor, backplate, contact screw; Space holds or lets go."""
        steps = {Qt.Key.Key_Up: 1.0, Qt.Key.Key_Right: 1.0, Qt.Key.Key_Down: -1.0, Qt.Key.Key_Left: -1.0,
                 Qt.Key.Key_PageUp: 10.0, Qt.Key.Key_PageDown: -10.0}  # fmt: skip
        hands = {Qt.Key.Key_1: "rotor", Qt.Key.Key_2: "plate", Qt.Key.Key_3: "screw"}
        key = Qt.Key(event.key())
        if key in steps:
            self.turn(steps[key] * step_factor(event.modifiers()))
        elif key in hands:
            self.take(hands[key])
        elif key == Qt.Key.Key_Space:
            self._model.send(LetGo() if self._model.state.held else HoldRotor())
        else:
            super().keyPressEvent(event)

    def turn(self, steps: float) -> None:
        """Turn the part in hand by a number of its steps."""
        self._model.stop()
        value = value_of(self._model.state, self._hand) + steps * STEPS[self._hand]
        self._model.send(turning(self._hand, value))

    def _point_at(self, position: QPointF) -> None:
        self._still = None
        part = self._picture.part_at(self._scene_point(position), STILL_PX / self.transform().m22())
        if part:
            self.pointed.emit(part)

    def _hand_at(self, position: QPointF) -> str | None:
        shape = self._picture.shape_at(self._scene_point(position))
        if shape is None:
            return None
        if shape.group in GROUP_HANDS:
            return GROUP_HANDS[shape.group]
        return "plate" if shape.part in PLATE_PARTS and shape.group != "case" else None

    def _start_drag(self, hand: str, position: QPointF) -> Drag:
        state = self._model.state
        sense = float(breaker_end_sense(state.magneto))
        centre, per_bearing = QPointF(0.0, 0.0), sense
        if hand == "screw":
            origin: Point = self.drawing.origins["screw"]
            centre = self._picture.to_scene("screw", origin)
            per_bearing = 1.0 if state.magneto.contact_screw.positive_is_clockwise else -1.0
        elif hand == "rotor":
            shape = self._picture.shape_at(self._scene_point(position))
            if shape is not None and shape.group == "cam":
                # Held by the cam, the rotor turns by what the gears make of it.
                per_bearing = sense / state.magneto.cam.turns_per_rotor_turn
        bearing = bearing_about(centre, self._scene_point(position))
        radius = self._radius(centre, position)
        return Drag(hand, centre, bearing, radius, value_of(state, hand), per_bearing, self._model.gesture())

    def _radius(self, centre: QPointF, position: QPointF) -> float:
        out = self.viewportTransform().map(centre) - position
        return math.hypot(out.x(), out.y())
