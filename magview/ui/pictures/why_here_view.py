"""The strip under the pictures: core flux, primary current and energy at break over the rotor's angle.

A cursor stands where the rotor stands; dragging it, or the arrow keys, turns the rotor. The spark at the right is as
long as the energy.
"""

from __future__ import annotations

from dataclasses import replace

import numpy as np
from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QKeyEvent, QMouseEvent, QPainter, QPaintEvent, QPixmap
from PySide6.QtWidgets import QWidget

from magview.bench.actions import TurnRotor
from magview.bench.state import BenchState, readings
from magview.curves.coil import COIL_WHY
from magview.curves.why_here import WhyHere, why_here
from magview.spec.language import tr
from magview.ui.kit.look import Look
from magview.ui.kit.pictured import Pictured
from magview.ui.pictures.ghost import Ghost
from magview.ui.pictures.picture_view import step_factor
from magview.ui.pictures.scheme_view import SchemeView
from magview.ui.pictures.why_here_painter import WhyHerePainter
from magview.ui.pictures.why_here_room import WhyHereRoom


class WhyHereView(SchemeView):
    """Picture of why the contacts open where they do, drawn for the lobe at work."""

    def __init__(self, model: Pictured, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(model, look, parent)
        self.strip: WhyHere | None = None
        """The curves shown; None where there are none."""
        self.ghost = Ghost()
        """The moment it is compared with."""
        self._was: WhyHere | None = None
        """The curves of the moment kept, for the lobe that is shown."""
        self._key: object = None
        self._still: tuple[object, QPixmap] = (None, QPixmap())
        self._gesture: int | None = None
        self._before: float | None = None
        """Angle of the rotor before it was last taken hold of."""
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMinimumSize(160, 90)
        self.setMouseTracking(True)
        self.setAttribute(Qt.WidgetAttribute.WA_OpaquePaintEvent)  # what lies behind need not be painted first
        self.setAccessibleName(tr("Why here: flux, current and energy over the rotor's angle"))
        self.show_state(model.state)
        model.changed.connect(self.show_state)
        look.changed.connect(self.update)

    def sizeHint(self) -> QSize:
        """Room for three curves and their names."""
        return QSize(440, 200)

    # -------------------------------------------------------------- showing

    def show_state(self, state: BenchState, old: BenchState | None = None) -> None:
        """Show a state; the curves are computed anew only where setting or lobe are others."""
        strip = self.strip
        key = state.magneto, state.backplate_deg, state.screw_deg
        moved = old is None or state.rotor_deg != old.rotor_deg or key != self._key
        if not moved:
            return
        if key != self._key or strip is None or not self._covers(strip, state.rotor_deg):
            self.strip, self._key = why_here(state), key
            self._take_ghost(state)
        self.setAccessibleDescription(self._description(state))
        self.setToolTip("" if self.strip is None else self._usual_tip(self.strip))
        self.update()

    def set_ghost(self, state: BenchState | None) -> None:
        """Compare with a moment; None: with none any more."""
        self.ghost.state = state
        self._take_ghost(self.model.state)
        self.update()

    def _take_ghost(self, now: BenchState) -> None:
        then = self.ghost.of(now)
        self._was = None if then is None else why_here(replace(then, rotor_deg=now.rotor_deg))

    @staticmethod
    def _covers(strip: WhyHere, rotor_deg: float) -> bool:
        """Whether the lobe shown is still the one at work."""
        return bool(strip.rotor_deg[0] <= strip.cursor_deg(rotor_deg) <= strip.rotor_deg[-1])

    def _description(self, state: BenchState) -> str:
        strip = self.strip
        if strip is None:
            return self._why_empty(state)
        flux, _, current = strip.now(state.rotor_deg)
        return tr(
            "Rotor {rotor:+.1f}° from neutral: core flux {flux:+.0f} %, primary current {current:.1f} A. "
            "The contacts open at {opens:+.1f}° and break {energy:.0f} mJ; most is to be found about {low:+.0f}° to "
            "{high:+.0f}°. {speeds}",
            rotor=strip.cursor_deg(state.rotor_deg), flux=100.0 * flux, current=current, opens=strip.opens_deg,
            energy=strip.broken_mj, low=strip.best_span_deg[0], high=strip.best_span_deg[1],
            speeds=self._speeds(strip),
        )  # fmt: skip

    @staticmethod
    def _speeds(strip: WhyHere) -> str:
        """The speed that is drawn and what running makes of it; which of them the file does not give."""
        slow, fast = strip.speeds.starting_rpm, strip.speeds.running_rpm
        text = tr(
            "Drawn for starting, {slow:.0f} rotor turns a minute; running, at {fast:.0f}, it is {energy:.0f} mJ.",
            slow=slow, fast=fast, energy=strip.broken_running_mj,
        )  # fmt: skip
        if strip.speeds.starting_assumed or strip.speeds.running_assumed:
            text = f"{text} {tr('Speeds that the file does not give are assumed.')}"
        return text

    @staticmethod
    def _why_empty(state: BenchState) -> str:
        if state.magneto.assumed:
            return tr("This magneto is known by its manual only: where its contacts open is not computed.")
        if state.magneto.electrical is None:
            return tr("This magneto's file has no electrical values: flux, current and energy are not known.")
        if readings(state).max_gap_mm.max() > 0.0:
            return tr("The contacts stay open: bring them closer with the contact screw.")
        return tr("The contacts stay closed: bring them wider with the contact screw.")

    # -------------------------------------------------------------- painting

    @property
    def room(self) -> WhyHereRoom | None:
        """The places of values; None if there are no curves."""
        return None if self.strip is None else WhyHereRoom(self.strip, self.width(), self.height(), self._em)

    @property
    def _em(self) -> float:
        return float(self.fontMetrics().height()) * 0.8

    def paintEvent(self, event: QPaintEvent) -> None:
        """The curves, kept as pixels, and the cursor over them."""
        ratio = self.devicePixelRatioF()
        key = self.strip, self._was, self.size(), ratio, self.look.theme, self.look.line_factor, self.font().key()
        if self._still[0] != key or self.strip is None:
            pixmap = QPixmap(self.size() * ratio)
            pixmap.setDevicePixelRatio(ratio)
            still = QPainter(pixmap)
            self._paint_still(still)
            still.end()
            self._still = key, pixmap
        painter = QPainter(self)
        painter.drawPixmap(0, 0, self._still[1])
        self._paint_cursor(painter)
        if self.hasFocus():
            WhyHerePainter(painter, self.look, self._em).paint_frame(QRectF(self.rect()))

    def paint_picture(self, painter: QPainter, ratio: float) -> None:
        """Paint all of it anew, as lines."""
        self._paint_still(painter)
        self._paint_cursor(painter)

    def _paint_still(self, painter: QPainter) -> None:
        painter.setFont(self.font())
        ink = WhyHerePainter(painter, self.look, self._em)
        state, room, box = self.model.state, self.room, QRectF(self.rect())
        ink.fill(box)
        ink.paint_title()
        if room is None:
            ink.paint_empty(box, self._why_empty(state))
        else:
            ink.paint_curves(room, state.magneto.e_gap_deg, self._was)

    def _paint_cursor(self, painter: QPainter) -> None:
        room = self.room
        if room is not None:
            painter.setFont(self.font())
            WhyHerePainter(painter, self.look, self._em).paint_cursor(room, self.model.state.rotor_deg)

    # -------------------------------------------------------------- hands

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Take the cursor to where the pointer is."""
        if self.strip is not None and event.button() == Qt.MouseButton.LeftButton:
            self._gesture, self._before = self.model.gesture(), self.model.state.rotor_deg
            self.model.grip(True)
            self._turn_to(event.position().x())

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        """A double click is about the picture: the rotor goes back to where it stood before the first press."""
        if event.button() == Qt.MouseButton.LeftButton and self._before is not None:
            self.model.send(TurnRotor(self._before))

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """Turn the rotor with the cursor."""
        if self._gesture is not None:
            self._turn_to(event.position().x())
        else:
            self.setToolTip(self.tip_at(event.position()))

    def tip_at(self, at: QPointF) -> str:
        """The thing pointed at in words, else the speeds."""
        room = self.room
        if room is None:
            return ""
        strip, area, near = room.strip, room.area, 5.0
        if area.adjusted(-near, 0.0, near, 0.0).contains(at):
            angle = room.angle_at(at.x())
            magnet = float(np.interp(angle, strip.rotor_deg, strip.magnet_flux))
            low, high = (room.x_of(end) for end in strip.best_span_deg)
            if abs(at.x() - room.x_of(strip.cursor_deg(self.model.state.rotor_deg))) <= near:
                return tr("Rotor now: drag it")
            if low - near <= at.x() <= high + near and abs(at.y() - room.lane(2).top()) <= near:
                return tr("Opened within this bar, the energy is within a tenth of the most")
            if abs(at.x() - room.x_of(strip.opens_deg)) <= near:
                return tr("The contacts open here")
            if abs(at.x() - room.x_of(0.0)) <= near:
                return tr("Neutral: the magnet drives no flux through the core")
            if abs(at.y() - room.flux_y(magnet)) <= near:
                return tr("Dashed: the flux of the magnet alone")
            if strip.needed_mj is not None and abs(at.y() - room.energy_y(strip.needed_mj)) <= near:
                return tr("Dashed: the energy that a spark needs")
            if any(start <= angle <= end for start, end in strip.closed_spans_deg):
                return tr("Shaded: the contacts are closed")
        return self._usual_tip(strip)

    def _usual_tip(self, strip: WhyHere) -> str:
        return f"{self._speeds(strip)} {tr(COIL_WHY)}"

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        """Let the cursor go."""
        if self._gesture is not None:
            self._gesture = None
            self.model.grip(False)

    def _turn_to(self, x: float) -> None:
        room = self.room
        if room is None:
            return
        strip = room.strip
        low, high = float(strip.rotor_deg[0]), float(strip.rotor_deg[-1])
        angle = float(np.clip(room.angle_at(x), low, high))
        self.model.send(TurnRotor(angle + strip.lobe.neutral_deg), self._gesture)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """The arrow keys turn the rotor by a degree, ten times finer with Shift, coarser with Alt."""
        way = {Qt.Key.Key_Left: -1.0, Qt.Key.Key_Right: 1.0}.get(Qt.Key(event.key()))
        if way is None or self.strip is None:
            super().keyPressEvent(event)
            return
        self.model.send(TurnRotor(self.model.state.rotor_deg + way * step_factor(event.modifiers())))
