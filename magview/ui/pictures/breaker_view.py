"""The breaker end in one's hands: turned by mouse, wheel or keyboard."""

from __future__ import annotations

import math

from PySide6.QtCore import QEvent, QPointF, Qt, Signal
from PySide6.QtGui import QCursor, QHelpEvent, QKeyEvent, QMouseEvent
from PySide6.QtWidgets import QToolTip, QWidget

from magview.bench import actions as do
from magview.bench.events import nearest_event
from magview.drawing.scene import LEAST_TARGET_PX, Hand, hand_at
from magview.spec.language import tr
from magview.ui.kit.look import Look
from magview.ui.kit.pictured import Pictured
from magview.ui.pictures.about_axis import AboutAxis
from magview.ui.pictures.breaker_hands import (
    HANDS,
    HANDS_OF_VALUES,
    LENS_FACTOR,
    SNAP_DEG,
    STEPS,
    STILL_PX,
    Drag,
    range_of,
    turning,
    value_of,
)
from magview.ui.pictures.breaker_picture import BreakerPicture
from magview.ui.pictures.picture_view import step_factor


class BreakerView(BreakerPicture):
    """The picture of the breaker end; drag, wheel and arrow keys turn the part in hand."""

    hand_changed = Signal(str)
    pointed = Signal(str)
    """A part was clicked and not moved: its name."""
    _drag: Drag | None = None

    def __init__(self, model: Pictured, look: Look, parent: QWidget | None = None, *, numbers: bool = True) -> None:
        super().__init__(model, look, parent, numbers=numbers)
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

    @property
    def dragging(self) -> bool:
        """Whether the pointer holds a part."""
        return self._drag is not None

    def take(self, hand: str) -> None:
        """Take a part in hand: "rotor", "plate" or "screw"."""
        if hand != self._hand:
            self._hand = hand
            self._picture.colour(self.look.theme, hand)
            self.show_state(self._model.state)
            self.hand_changed.emit(hand)

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
        moved = drag.round.moved(self._scene_point(event.position()), self.viewportTransform().m22())
        finer = 1.0 if self._lens is None else LENS_FACTOR
        drag.value += moved * drag.per_bearing / finer
        self._turn_to(drag, free=bool(event.modifiers() & Qt.KeyboardModifier.AltModifier))

    def _turn_to(self, drag: Drag, free: bool) -> None:
        value, self._snapped = drag.value, ""
        if drag.hand == "rotor" and self.snaps and not free:
            caught = nearest_event(self._model.state, value, SNAP_DEG)
            if caught is not None:
                value, self._snapped = caught
        if self._model.send(turning(drag.hand, value), drag.gesture):
            self._tell_stop(drag)
        self.viewport().update()

    def _tell_stop(self, drag: Drag) -> None:
        """Say once that a part which no longer follows the hand is at its stop."""
        stops = range_of(self._model.state, drag.hand)
        beyond = stops is not None and not stops[0] <= drag.value <= stops[1]
        if beyond and not drag.at_stop:
            part = tr(HANDS[drag.hand])
            self._model.refused.emit(tr("the {part} is at its stop: bring the hand back to turn it back", part=part))
        drag.at_stop = beyond

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

    def viewportEvent(self, event: QEvent) -> bool:
        """Name what is under the pointer where it rests: a screw, the straightedge, or what can be taken hold of."""
        if isinstance(event, QHelpEvent) and (name := self.name_at(QPointF(event.pos()))):
            QToolTip.showText(event.globalPos(), name, self.viewport())
            return True
        return super().viewportEvent(event)

    def name_at(self, position: QPointF) -> str:
        """Return the name of what is under a point [px], small things as broad as a finger; "" for none."""
        if part := self._small_at(position):
            return tr(part)
        hand = self._hand_at(position)
        return tr(HANDS[HANDS_OF_VALUES[hand.value]]) if hand is not None else ""

    def _small_at(self, position: QPointF) -> str:
        """The nearest screw that only a screwdriver turns, or the straightedge; "" for none."""
        hand, reach = self._hand_at(position), LEAST_TARGET_PX / 2
        if hand is not None and hand.part == "contact screw":
            reach = min(reach, self._away(position, QPointF(hand.centre[0], -hand.centre[1])))
        for part, group, at in self.drawing.screws:
            if self._away(position, self._picture.to_scene(group, at)) <= reach:
                return part
        if hand is not None and hand.part in ("contact screw", "cam"):
            return ""  # these are turned by hand, and come first
        within = LEAST_TARGET_PX / 2 / self.pixels_per_mm()
        return self._picture.line_at(self._scene_point(position), "straightedge", within)

    def _away(self, position: QPointF, place: QPointF) -> float:
        """Distance of a point [px] from a place in the scene."""
        out = position - self.viewportTransform().map(place)
        return math.hypot(out.x(), out.y())

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
        about = AboutAxis(centre, self._scene_point(position), self.viewportTransform().m22())
        value = value_of(self._model.state, hand)
        return Drag(hand, about, value, held.per_bearing, self._model.gesture())
