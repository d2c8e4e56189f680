"""The strip under the pictures: core flux, primary current and energy at break over the rotor's angle.

A cursor stands where the rotor stands; dragging it, or the arrow keys, turns the rotor. The spark at the right is as
long as the energy.
"""

from __future__ import annotations

import math
from dataclasses import replace
from typing import TypeVar

import numpy as np
from PySide6.QtCore import QLineF, QPointF, QRectF, QSize, Qt
from PySide6.QtGui import (
    QBrush,
    QColor,
    QFontInfo,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPaintEvent,
    QPen,
    QPixmap,
    QPolygonF,
)
from PySide6.QtWidgets import QWidget

from magview.bench.actions import TurnRotor
from magview.bench.state import BenchState, readings
from magview.curves.coil import COIL_WHY
from magview.curves.why_here import WhyHere, why_here
from magview.drawing.shapes import Array
from magview.spec.language import marked, tr
from magview.ui.kit.look import Look
from magview.ui.kit.pictured import Pictured
from magview.ui.pictures.ghost import Ghost
from magview.ui.pictures.picture_view import step_factor
from magview.ui.pictures.scene_colours import scene_colours
from magview.ui.pictures.scheme_view import SchemeView

_LANES = (
    (marked("core flux"), marked("dashed: the magnet alone"), "flux", 0.30),
    (marked("primary current"), marked("contacts closed: shaded"), "opening", 0.30),
    (marked("energy at break"), marked("if the contacts opened there"), "lift", 0.40),
)
"""Words, hint, colour's role and share of the height of each curve, from the top down."""

_FULL_SPARK_SHARE = 2.4
"""The spark has its full length at so many times the energy that a spark needs."""

_ZIGZAGS = 9

Value = TypeVar("Value", float, Array)
"""One value or all of a curve's: a curve has well over a thousand, drawn anew at each step of a drag."""


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
        self.setToolTip("" if self.strip is None else f"{self._speeds(self.strip)} {tr(COIL_WHY)}")
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

    # -------------------------------------------------------------- layout

    @property
    def _em(self) -> float:
        return float(self.fontMetrics().height()) * 0.8

    def plot_area(self) -> QRectF:
        """Return where the curves are drawn."""
        em, wide = self._em, self.width() > 42 * self._em
        left, right = (9.0, 8.6) if wide else (6.4, 6.6)
        return QRectF(left * em, 2.3 * em, self.width() - (left + right) * em, self.height() - 4.2 * em)

    def lane(self, index: int) -> QRectF:
        """The room of one curve."""
        area = self.plot_area()
        top = area.top() + sum(share for *_, share in _LANES[:index]) * area.height()
        return QRectF(area.left(), top + 3.0, area.width(), _LANES[index][3] * area.height() - 6.0)

    def x_of(self, angle_deg: Value) -> Value:
        """Return where an angle from the neutral stands, or where many do."""
        area, strip = self.plot_area(), self.strip
        assert strip is not None
        low, high = float(strip.rotor_deg[0]), float(strip.rotor_deg[-1])
        return area.left() + (angle_deg - low) / (high - low) * area.width()

    def angle_at(self, x: float) -> float:
        """The angle from the neutral at a place."""
        area, strip = self.plot_area(), self.strip
        assert strip is not None
        low, high = float(strip.rotor_deg[0]), float(strip.rotor_deg[-1])
        return low + (x - area.left()) / area.width() * (high - low)

    def _top_mj(self, strip: WhyHere) -> float:
        return max(1.18 * float(strip.energy_mj.max()), 1.2 * (strip.needed_mj or 0.0)) or 1.0

    def flux_y(self, share: Value) -> Value:
        """Return where a share of the greatest flux stands."""
        lane = self.lane(0)
        return lane.bottom() - (share / 1.02 + 1.0) / 2.0 * lane.height()

    def current_y(self, current_a: Value) -> Value:
        """Return where a current stands."""
        lane, strip = self.lane(1), self.strip
        assert strip is not None
        return lane.bottom() - current_a / (1.12 * float(strip.current_a.max()) or 1.0) * lane.height()

    def energy_y(self, energy_mj: Value) -> Value:
        """Return where an energy stands."""
        lane, strip = self.lane(2), self.strip
        assert strip is not None
        return lane.bottom() - energy_mj / self._top_mj(strip) * lane.height()

    # -------------------------------------------------------------- painting

    def _colour(self, role: str, alpha: float = 1.0) -> QColor:
        colour = QColor(scene_colours(self.look.theme)[role])
        colour.setAlphaF(alpha)
        return colour

    def _pen(self, role: str, width: float, dash: tuple[float, ...] = (), alpha: float = 1.0) -> QPen:
        pen = QPen(self._colour(role, alpha), width * self.look.line_factor)
        if dash:
            pen.setDashPattern(list(dash))
        return pen

    def paintEvent(self, event: QPaintEvent) -> None:
        """The curves, kept as pixels, and the cursor over them."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        ratio = self.devicePixelRatioF()
        key = self.strip, self._was, self.size(), ratio, self.look.theme, self.look.line_factor, self.font().key()
        if self._still[0] != key or self.strip is None:
            pixmap = QPixmap(self.size() * ratio)
            pixmap.setDevicePixelRatio(ratio)
            pixmap.fill(self._colour("paper"))
            still = QPainter(pixmap)
            still.setRenderHint(QPainter.RenderHint.Antialiasing)
            still.setFont(self.font())
            self._paint_still(still)
            still.end()
            self._still = key, pixmap
        painter.drawPixmap(0, 0, self._still[1])
        if self.strip is not None:
            self._paint_cursor(painter, self.strip)
        if self.hasFocus():
            painter.setPen(self._pen("planned", 2.0))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRect(QRectF(self.rect()).adjusted(1, 1, -1, -1))

    def paint_picture(self, painter: QPainter, ratio: float) -> None:
        """Paint all of it anew, as lines."""
        painter.fillRect(self.rect(), self._colour("paper"))
        painter.setFont(self.font())
        self._paint_still(painter)
        if self.strip is not None:
            self._paint_cursor(painter, self.strip)

    def _write(
        self, painter: QPainter, box: QRectF, text: str, role: str, flags: Qt.AlignmentFlag, *,
        bold: bool = False, small: bool = False,
    ) -> None:  # fmt: skip
        font = self.font()
        font.setBold(bold)
        if small:
            font.setPixelSize(max(10, round(0.88 * QFontInfo(font).pixelSize())))
        painter.setFont(font)
        painter.setPen(self._colour(role))
        painter.drawText(box, int(flags) | int(Qt.TextFlag.TextWordWrap), text)

    def _paint_still(self, painter: QPainter) -> None:
        strip, em = self.strip, self._em
        left = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter
        self._write(painter, QRectF(em, 0.2 * em, 12 * em, 1.9 * em), tr("Why here"), "ink", left, bold=True)
        if strip is None:
            box = QRectF(self.rect()).adjusted(em, 2 * em, -em, -em)
            self._write(painter, box, self._why_empty(self.model.state), "second_ink", Qt.AlignmentFlag.AlignCenter)
            return
        area = self.plot_area()
        self._paint_title(painter, strip)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(self._colour("opening_fill", 0.18))
        for start, end in strip.closed_spans_deg:
            painter.drawRect(QRectF(QPointF(self.x_of(start), area.top()), QPointF(self.x_of(end), area.bottom())))
        self._paint_places(painter, strip, area)
        angles = self.x_of(strip.rotor_deg)
        self._paint_curve(
            painter, _points(angles, self.flux_y(strip.magnet_flux)), self._pen("flux", 1.2, (4.0, 3.0))
        )
        self._paint_curve(painter, _points(angles, self.flux_y(strip.flux)), self._pen("flux", 2.0))
        self._paint_filled(
            painter, _points(angles, self.current_y(strip.current_a)), "opening", self.lane(1).bottom()
        )
        breaks = self.x_of(strip.break_deg)
        self._paint_filled(painter, _points(breaks, self.energy_y(strip.energy_mj)), "lift", self.lane(2).bottom())
        if strip.needed_mj is not None:
            y = self.energy_y(strip.needed_mj)
            painter.setPen(self._pen("bad", 1.3, (6.0, 3.0)))
            painter.drawLine(QLineF(area.left(), y, area.right(), y))
            box = QRectF(area.left() + 4, y - 1.5 * em, 12 * em, 1.4 * em)
            self._write(painter, box, tr("a spark needs"), "bad", left, small=True)
        low, high = strip.best_span_deg  # the top is flat: about here, not at a point
        y = self.lane(2).top() + 1.0
        painter.setPen(self._pen("lift", 3.0))
        painter.drawLine(QLineF(self.x_of(low), y, self.x_of(high), y))
        self._paint_ghost(painter, area)
        x = self.x_of(strip.opens_deg)
        painter.setPen(self._pen("opening", 1.4))
        painter.drawLine(QLineF(x, area.top(), x, area.bottom()))
        painter.setPen(self._pen("panel", 1.5))
        painter.setBrush(self._colour("lift"))
        painter.drawEllipse(QPointF(x, self.energy_y(strip.broken_mj)), 4.5, 4.5)
        self._paint_names(painter, area)

    def _paint_ghost(self, painter: QPainter, area: QRectF) -> None:
        """Draw the opening at the moment kept, with the current and the energy there, dashed and hollow."""
        was = self._was
        if was is None:
            return
        pen = self._pen("second_ink", 1.3, (5.0, 3.0))
        painter.save()
        painter.setClipRect(area)
        self._paint_curve(painter, _points(self.x_of(was.rotor_deg), self.current_y(was.current_a)), pen)
        x = self.x_of(was.opens_deg)
        painter.drawLine(QLineF(x, area.top(), x, area.bottom()))
        painter.setPen(self._pen("second_ink", 1.6))
        painter.drawEllipse(QPointF(x, self.energy_y(was.broken_mj)), 5.5, 5.5)
        painter.restore()

    def _paint_title(self, painter: QPainter, strip: WhyHere) -> None:
        """The speed, in as many words as there is room for; whether it is assumed is always said."""
        em, speed, assumed = self._em, strip.speeds.starting_rpm, strip.speeds.starting_assumed
        right = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter
        if self.width() > 52 * em:
            text = tr("starting, {speed:.0f} turns a minute of the rotor", speed=speed)
            if assumed:
                text = tr("starting, {speed:.0f} turns a minute of the rotor, assumed", speed=speed)
            box = QRectF(self.width() - 30 * em, 0.2 * em, 29 * em, 1.2 * em)
            self._write(painter, box, text, "second_ink", right, small=True)
            return
        text = tr("speed assumed") if assumed else tr("at {speed:.0f}/min", speed=speed)
        box = QRectF(self.width() - 10 * em, 0.2 * em, 9.5 * em, 1.2 * em)
        self._write(painter, box, text, "second_ink", right, small=True)

    def _paint_places(self, painter: QPainter, strip: WhyHere, area: QRectF) -> None:
        """Neutral, E-gap, and the scale below."""
        em = self._em
        for angle, text, bold in (
            (0.0, tr("neutral"), False), (self.model.state.magneto.e_gap_deg, tr("E-gap"), True),
        ):  # fmt: skip
            x = self.x_of(angle)
            painter.setPen(self._pen("ink", 1.6) if bold else self._pen("hair", 1.0, (4.0, 3.0)))
            painter.drawLine(QLineF(x, area.top(), x, area.bottom()))
            width = 8 * em
            box = QRectF(x + 3 if bold else x - width - 3, area.top() - 1.3 * em, width, 1.2 * em)
            side = Qt.AlignmentFlag.AlignLeft if bold else Qt.AlignmentFlag.AlignRight
            flags = side | Qt.AlignmentFlag.AlignVCenter
            self._write(painter, box, text, "ink" if bold else "second_ink", flags, bold=bold, small=True)
        painter.setPen(self._pen("hair", 1.0, alpha=0.5))
        for index in range(len(_LANES)):
            painter.drawLine(QLineF(area.left(), self.lane(index).bottom(), area.right(), self.lane(index).bottom()))
        painter.drawLine(QLineF(area.left(), self.flux_y(0.0), area.right(), self.flux_y(0.0)))
        span = float(strip.rotor_deg[-1] - strip.rotor_deg[0])
        step = 10 * max(
            1, math.ceil(5.5 * em / area.width() * span / 10.0)
        )  # so far apart that no number meets another
        for angle in range(-9 * step, 9 * step + 1, step):
            if strip.rotor_deg[0] <= angle <= strip.rotor_deg[-1]:
                x = self.x_of(angle)
                painter.setPen(self._pen("hair", 1.0))
                painter.drawLine(QLineF(x, area.bottom(), x, area.bottom() + 4))
                text = tr("0° rotor") if angle == 0 else tr("{angle:+d}°", angle=angle)
                box = QRectF(x - 4 * em, area.bottom() + 0.35 * em, 8 * em, 1.3 * em)
                self._write(painter, box, text, "second_ink", Qt.AlignmentFlag.AlignCenter, small=True)

    def _paint_names(self, painter: QPainter, area: QRectF) -> None:
        em, wide = self._em, self.width() > 42 * self._em
        for index, (name, hint, role, _) in enumerate(_LANES):
            lane = self.lane(index)
            flags = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter
            hinted = wide and lane.height() > 5 * em
            box = QRectF(em, lane.top(), area.left() - 1.6 * em, lane.height() * (0.5 if hinted else 1.0))
            self._write(painter, box, tr(name), role, flags, bold=True)
            if hinted:
                box = QRectF(em, lane.center().y(), area.left() - 1.6 * em, lane.height() / 2)
                self._write(painter, box, tr(hint), "second_ink", Qt.AlignmentFlag.AlignLeft, small=True)

    @staticmethod
    def _paint_curve(painter: QPainter, points: list[QPointF], pen: QPen) -> None:
        painter.setPen(pen)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawPolyline(points)

    def _paint_filled(self, painter: QPainter, points: list[QPointF], role: str, base: float) -> None:
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QBrush(self._colour(f"{role}_fill", 0.5)))
        painter.drawPolygon([QPointF(points[0].x(), base), *points, QPointF(points[-1].x(), base)])
        self._paint_curve(painter, points, self._pen(role, 2.0))

    def _paint_cursor(self, painter: QPainter, strip: WhyHere) -> None:
        area, em = self.plot_area(), self._em
        rotor = self.model.state.rotor_deg
        flux, _, current = strip.now(rotor)
        x = min(max(self.x_of(strip.cursor_deg(rotor)), area.left()), area.right())
        painter.setPen(self._pen("planned", 2.0))
        painter.drawLine(QLineF(x, area.top(), x, area.bottom()))
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(self._colour("planned"))
        tip = QPointF(x, area.bottom() - 1)
        painter.drawPolygon(QPolygonF([tip, tip + QPointF(-5, 8), tip + QPointF(5, 8)]))
        painter.setPen(self._pen("panel", 1.5))
        for role, y in (("flux", self.flux_y(flux)), ("opening", self.current_y(current))):
            painter.setBrush(self._colour(role))
            painter.drawEllipse(QPointF(x, y), 4.0, 4.0)
        left = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter
        beside = area.right() + 0.7 * em
        for index, text, role in (
            (0, tr("{flux:+.0f} %", flux=100.0 * flux), "flux"),
            (1, tr("{current:.1f} A", current=current), "opening"),
        ):  # fmt: skip
            lane = self.lane(index)
            self._write(painter, QRectF(beside, lane.top(), 8 * em, lane.height()), text, role, left, bold=True)
        self._paint_spark(painter, strip, beside, strip.sparks(rotor))

    def spark_length(self, strip: WhyHere) -> float:
        """Length of the spark as drawn: in proportion to the energy, up to its room [px]."""
        full = self.width() - self.plot_area().right() - 2.2 * self._em
        whole = _FULL_SPARK_SHARE * strip.needed_mj if strip.needed_mj else self._top_mj(strip)
        return full * min(1.0, strip.broken_mj / whole)

    def _paint_spark(self, painter: QPainter, strip: WhyHere, x: float, lit: bool) -> None:
        em, lane = self._em, self.lane(2)
        y, length = lane.center().y() - 0.6 * em, self.spark_length(strip)
        painter.setPen(self._pen("steel_line", 1.0))
        painter.setBrush(self._colour("steel"))
        painter.drawRect(QRectF(x - 3, y - 0.5 * em, 4, em))
        painter.drawRect(QRectF(x + length - 1, y - 0.5 * em, 4, em))
        swing = [0.0, *(0.42 * em * (1 if i % 2 else -1) for i in range(1, _ZIGZAGS)), 0.0]
        line = QPolygonF([QPointF(x + length * i / _ZIGZAGS, y + dy) for i, dy in enumerate(swing)])
        painter.setBrush(Qt.BrushStyle.NoBrush)
        if lit:
            painter.setPen(self._pen("paint", 5.0, alpha=0.6))
            painter.drawPolyline(line)
        painter.setPen(self._pen("lift", 2.0 if lit else 1.3))
        painter.drawPolyline(line)
        role, text = "lift", tr("{energy:.0f} mJ", energy=strip.broken_mj)
        if strip.enough is not None:
            role = "good" if strip.enough else "bad"
            text = f"{text} {'✓' if strip.enough else '✗'}"
        box = QRectF(x, y + 0.6 * em, 8 * em, 1.6 * em)
        self._write(painter, box, text, role, Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter, bold=True)

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

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        """Let the cursor go."""
        if self._gesture is not None:
            self._gesture = None
            self.model.grip(False)

    def _turn_to(self, x: float) -> None:
        strip = self.strip
        if strip is None:
            return
        low, high = float(strip.rotor_deg[0]), float(strip.rotor_deg[-1])
        angle = float(np.clip(self.angle_at(x), low, high))
        self.model.send(TurnRotor(angle + strip.lobe.neutral_deg), self._gesture)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """The arrow keys turn the rotor by a degree, ten times finer with Shift, coarser with Alt."""
        way = {Qt.Key.Key_Left: -1.0, Qt.Key.Key_Right: 1.0}.get(Qt.Key(event.key()))
        if way is None or self.strip is None:
            super().keyPressEvent(event)
            return
        self.model.send(TurnRotor(self.model.state.rotor_deg + way * step_factor(event.modifiers())))


def _points(xs: Array, ys: Array) -> list[QPointF]:
    return [QPointF(x, y) for x, y in zip(xs.tolist(), ys.tolist(), strict=True)]
