"""The right hand: what it holds, the lit places where that can go, and what comes of letting go there.

It joins a tray to a picture. Who owns both says where things can go (`Source`) and does what is done with them.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from functools import partial
from typing import Protocol

from PySide6.QtCore import QEvent, QObject, QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QKeyEvent, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QAbstractButton, QWidget

from magview.bench.tray import NAMES, NUMBERS, Item, RightHand, Spot, Thing, item_of
from magview.spec.language import number, tr
from magview.ui.kit.look import Look
from magview.ui.kit.pictured import Pictured
from magview.ui.pictures.breaker_view import BreakerView
from magview.ui.pictures.tray import Tray
from magview.ui.pictures.tray_things import UNITS

_RING_PX = 34
"""Size of the lit place at a part."""

_STEP_EM = 2.1

_NEAR_CAM = 0.6
"""Share of the rim's radius within which a straightedge let go of is meant for the step."""


class Source(Protocol):
    """Questions of the right hand to who owns the tray."""

    def items(self) -> Sequence[Item]:
        """Everything on the tray now."""

    def put(self, hand: RightHand, spot: str, kind: str) -> bool:
        """Put what is in hand at a place; False where it cannot be done."""

    def take_back(self, thing: Thing) -> bool:
        """Put a thing that is in use back on the tray."""

    def choose(self, thing: Thing) -> bool:
        """Take in the left hand what is turned where it is, such as a disc; False for what is held in the right."""


class SpotButton(QAbstractButton):
    """A lit place in the picture, where what is in hand can go: a ring at a part, or words at the picture's side."""

    def __init__(self, spot: Spot, look: Look, parent: QWidget) -> None:
        super().__init__(parent)
        self.spot, self.look, self.over = spot, look, False
        self.setText(spot.words)
        self.setAccessibleName(tr("Put it here: {place}", place=spot.words))
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setCursor(Qt.CursorShape.PointingHandCursor)

    def sizeHint(self) -> QSize:
        """A ring with its words below it, or the words alone."""
        metrics = self.fontMetrics()
        wide, high = metrics.horizontalAdvance(self.text()) + 16, metrics.height() + 8
        return QSize(max(wide, _RING_PX + 4), high + (_RING_PX + 4 if self.spot.part else 0))

    def aim(self) -> QPointF:
        """The point of this widget that stands over the part."""
        return QPointF(self.width() / 2, _RING_PX / 2 + 2 if self.spot.part else self.height() / 2)

    def light(self, over: bool) -> None:
        """Show whether what is in hand is over it."""
        if over != self.over:
            self.over = over
            self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        """The ring, and the words on paper."""
        theme, painter = self.look.theme, QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        chosen = self.over or self.hasFocus() or self.underMouse()
        words = QRectF(self.rect()).adjusted(1, 1, -1, -1)
        if self.spot.part:
            painter.setPen(QPen(QColor(theme.hand), 3.0 if chosen else 2.0, Qt.PenStyle.DashLine))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawEllipse(self.aim(), _RING_PX / 2, _RING_PX / 2)
            words.setTop(_RING_PX + 6)
        painter.setPen(QPen(QColor(theme.hand), 2.0 if chosen else 1.0))
        painter.setBrush(QColor(theme.hand_fill if chosen else theme.base))
        painter.drawRoundedRect(words, 4.0, 4.0)
        painter.setPen(QColor(theme.text))
        painter.drawText(words, int(Qt.AlignmentFlag.AlignCenter), self.text())


class RightHandOverPicture(QObject):
    """Keeps what is in hand, and shows where it can go."""

    changed = Signal()

    def __init__(self, tray: Tray, view: BreakerView, model: Pictured, source: Source, look: Look) -> None:
        super().__init__(tray)
        self.tray, self.view, self.model, self._source, self._look = tray, view, model, source, look
        self.hand = RightHand()
        self.spots: list[SpotButton] = []
        self.refusal = ""
        """Reason that the last thing asked for does not belong here, in words."""
        tray.taken.connect(self.take)
        tray.blade_taken.connect(self.take_blade)
        tray.back_wanted.connect(self._take_back)
        tray.refused.connect(self._refuse)
        tray.dragged.connect(self._dragged)
        tray.dropped.connect(self._dropped)
        tray.kind_chosen.connect(self.put_away)
        view.viewport().installEventFilter(self)
        model.changed.connect(self._moved)
        self.show()

    # -------------------------------------------------------------- taking

    def press(self, digit: int) -> None:
        """As the key of a number does."""
        thing = next((t for t, n in NUMBERS.items() if n == digit), None)
        if thing is not None and thing in self.tray.things:
            self.tray.take(thing)

    def take(self, thing: Thing) -> None:
        """Take a thing; of blades the one last held, or the middle one of the set."""
        if self._source.choose(thing):
            self.put_away()
            return
        if thing is Thing.BLADES:
            leaves = list(self.tray.leaves)
            last = getattr(self, "_last", None)
            self.take_blade(last if last in leaves else leaves[len(leaves) // 2], False)
            return
        self._hold(self.hand.taking(thing))

    def take_blade(self, blade: float, together: bool) -> None:
        """Take a blade: in place of what was held, or together with it."""
        self._last = blade
        self._hold(self.hand.taking_blade(blade, together))

    def put_away(self) -> None:
        """Put what is in hand back on the tray."""
        self._hold(RightHand())

    def _hold(self, hand: RightHand) -> None:
        had_keyboard = any(spot.hasFocus() for spot in self.spots)
        self.hand = hand
        self._light_places()
        self.show()
        if self.spots:
            self.spots[0].setFocus(Qt.FocusReason.OtherFocusReason)
        elif had_keyboard:
            self.view.setFocus(Qt.FocusReason.OtherFocusReason)

    def _take_back(self, thing: Thing) -> None:
        with self.model.asked_by(self.tray.widget_of(thing)):
            self._source.take_back(thing)
        self.show()

    def _refuse(self, thing: Thing) -> None:
        item = item_of(self._source.items(), thing)
        assert item is not None
        with self.model.asked_by(self.tray.widget_of(thing)):
            self.model.refused.emit(tr("{thing}: {reason}", thing=item.name, reason=item.why_not))

    # -------------------------------------------------------------- showing

    def words(self) -> str:
        """Return the things in hand, in words; empty for nothing."""
        hand = self.hand
        if hand.thing is None:
            return ""
        if hand.thing is Thing.BLADES:
            blades = f"{' + '.join(number(b) for b in hand.blades)} {UNITS[self.tray.kind]}"
            if len(hand.blades) == 1:
                return tr("blade {blade}", blade=blades)
            return tr("stack {blades}", blades=blades)
        return tr(NAMES[hand.thing]).lower()

    def show(self) -> None:
        """Show how things lie now."""
        self.tray.show_items(self._source.items(), self.hand)
        self.changed.emit()

    def _moved(self) -> None:
        item = item_of(self._source.items(), self.hand.thing) if self.hand.thing is not None else None
        if item is not None and item.spots and [s.spot for s in self.spots] != list(item.spots):
            focused = next((i for i, s in enumerate(self.spots) if s.hasFocus()), None)
            self._light_places()
            if focused is not None and focused < len(self.spots):
                self.spots[focused].setFocus(Qt.FocusReason.OtherFocusReason)
        self.show()
        self._place()

    def _light_places(self) -> None:
        for old in self.spots:
            old.removeEventFilter(self)
            old.hide()
            old.deleteLater()
        self.spots = []
        item = item_of(self._source.items(), self.hand.thing) if self.hand.thing is not None else None
        for spot in item.spots if item is not None else ():
            button = SpotButton(spot, self._look, self.view.viewport())
            button.installEventFilter(self)
            button.clicked.connect(partial(self._put, spot.name))
            button.adjustSize()
            button.show()
            self.spots.append(button)
        self._place()

    def _place(self) -> None:
        port, aside = self.view.viewport(), 0
        for button in self.spots:
            if button.spot.part:
                at = self.view.place_of(button.spot.part) - button.aim()
            else:
                line = self.view.fontMetrics().height()
                at = QPointF(8.0, port.height() - (aside + 1) * _STEP_EM * line - 8.0)
                aside += 1
            x = min(max(at.x(), 0.0), max(0.0, port.width() - button.width()))
            y = min(max(at.y(), 0.0), max(0.0, port.height() - button.height()))
            button.move(round(x), round(y))

    # -------------------------------------------------------------- putting

    def _put(self, spot: str) -> bool:
        button = next((s for s in self.spots if s.spot.name == spot), None)
        hand = self.hand
        with self.model.asked_by(button or self.view):
            done = self._source.put(hand, spot, self.tray.kind)
        stays = hand.thing in (Thing.BLADES, Thing.METER, Thing.SCREWDRIVER)
        if done and not stays:
            self.put_away()
        else:
            self.show()
        return done

    def _dragged(self, at: QPointF) -> None:
        over = self._spot_at(at)
        for spot in self.spots:
            spot.light(spot is over)

    def _dropped(self, at: QPointF) -> None:
        over = self._spot_at(at)
        if over is not None:
            over.light(False)
            self._put(over.spot.name)
        elif self.tray.over(at) or not self.spots:
            self.put_away()
        else:
            self._refuse_place()

    def _refuse_place(self) -> None:
        """Say where what was let go of belongs; it stays in hand."""
        assert self.hand.thing is not None
        places = ", ".join(tr("“{place}”", place=spot.spot.words) for spot in self.spots)
        with self.model.asked_by(self.spots[0]):
            self.model.refused.emit(
                tr(
                    "{thing} does not go there: let go at a lit place, {places}",
                    thing=tr(NAMES[self.hand.thing]), places=places,
                )
            )  # fmt: skip

    def _spot_at(self, at: QPointF) -> SpotButton | None:
        near = [s for s in self.spots if s.rect().adjusted(-6, -6, 6, 6).contains(s.mapFromGlobal(at).toPoint())]
        return near[0] if near else self._spot_across(at)

    def _spot_across(self, at: QPointF) -> SpotButton | None:
        """The step's place for a straightedge let go of near the cam: it lies from the middle out to the rim."""
        if self.hand.thing is not Thing.STRAIGHTEDGE or not self.spots:
            return None
        out = self.view.viewport().mapFromGlobal(at) - self.view.pixel(0.0, 0.0)
        near = _NEAR_CAM * self.view.drawing.rim_mm * self.view.pixels_per_mm()
        return self.spots[0] if math.hypot(out.x(), out.y()) <= near else None

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Keys at a lit place: other places, other blades, putting it back. A picture of another size moves them."""
        if event.type() == QEvent.Type.Resize and watched is self.view.viewport():
            self._place()
        if isinstance(watched, SpotButton) and isinstance(event, QKeyEvent) and event.type() == QEvent.Type.KeyPress:
            return self._key(watched, event)
        return False

    def _key(self, spot: SpotButton, event: QKeyEvent) -> bool:
        key = Qt.Key(event.key())
        ways = {Qt.Key.Key_Right: 1, Qt.Key.Key_Up: 1, Qt.Key.Key_Left: -1, Qt.Key.Key_Down: -1}
        if key in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self._put(spot.spot.name)
        elif key == Qt.Key.Key_Escape:
            self.put_away()
        elif key in ways and self.hand.thing is Thing.BLADES:
            self._hold(self.hand.beside(tuple(self.tray.leaves), ways[key]))
            self._last = self.hand.blades[0]
        elif key in ways and len(self.spots) > 1:
            at = self.spots.index(spot)
            self.spots[(at + ways[key]) % len(self.spots)].setFocus(Qt.FocusReason.OtherFocusReason)
        else:
            return False
        return True
