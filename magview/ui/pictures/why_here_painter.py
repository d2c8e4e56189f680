"""Painting of the strip: its curves and words, the cursor, and the spark."""

from __future__ import annotations

import math

from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QBrush, QColor, QFont, QFontInfo, QFontMetricsF, QPainter, QPen, QPolygonF

from magview.curves.why_here import WhyHere
from magview.drawing.shapes import Array
from magview.spec.language import tr, with_minus
from magview.ui.kit.look import Look
from magview.ui.pictures.scene_colours import scene_colours
from magview.ui.pictures.why_here_room import LANES, WhyHereRoom

_LEFT = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter

_ZIGZAGS = 9


class WhyHerePainter:
    """The strip's lines and words with a painter; `em` is the height of a letter [px]."""

    def __init__(self, painter: QPainter, look: Look, em: float) -> None:
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        self._painter, self._look, self._em, self._font = painter, look, em, painter.font()

    def _colour(self, role: str, alpha: float = 1.0) -> QColor:
        colour = QColor(scene_colours(self._look.theme)[role])
        colour.setAlphaF(alpha)
        return colour

    def _pen(self, role: str, width: float, dash: tuple[float, ...] = (), alpha: float = 1.0) -> QPen:
        pen = QPen(self._colour(role, alpha), width * self._look.line_factor)
        if dash:
            pen.setDashPattern(list(dash))
        return pen

    def fill(self, box: QRectF) -> None:
        """Fill the picture with paper."""
        self._painter.fillRect(box, self._colour("paper"))

    def paint_frame(self, box: QRectF) -> None:
        """Paint the frame of the picture that has the keyboard."""
        self._painter.setPen(self._pen("planned", 2.0))
        self._painter.setBrush(Qt.BrushStyle.NoBrush)
        self._painter.drawRect(box.adjusted(1, 1, -1, -1))

    def _write(
        self, box: QRectF, text: str, role: str, flags: Qt.AlignmentFlag, *, bold: bool = False, small: bool = False
    ) -> None:
        painter, font = self._painter, QFont(self._font)
        font.setBold(bold)
        if small:
            font.setPixelSize(_small_px(font))
        painter.setFont(font)
        painter.setPen(self._colour(role))
        painter.drawText(box, int(flags) | int(Qt.TextFlag.TextWordWrap), with_minus(text))

    def paint_title(self) -> None:
        """Name the picture."""
        em = self._em
        self._write(QRectF(em, 0.2 * em, 12 * em, 1.9 * em), tr("Why here"), "ink", _LEFT, bold=True)

    def paint_empty(self, room: QRectF, why: str) -> None:
        """Say why there are no curves."""
        em = self._em
        self._write(room.adjusted(em, 2 * em, -em, -em), why, "second_ink", Qt.AlignmentFlag.AlignCenter)

    def paint_curves(self, room: WhyHereRoom, e_gap_deg: float, was: WhyHere | None) -> None:
        """Paint all that stands still while the rotor turns; dashed, the curves of another moment."""
        painter, em, strip, area = self._painter, self._em, room.strip, room.area
        self._paint_speed(room)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(self._colour("opening_fill", 0.18))
        for start, end in strip.closed_spans_deg:
            painter.drawRect(QRectF(QPointF(room.x_of(start), area.top()), QPointF(room.x_of(end), area.bottom())))
        self._paint_places(room, e_gap_deg)
        angles = room.x_of(strip.rotor_deg)
        self._paint_curve(_points(angles, room.flux_y(strip.magnet_flux)), self._pen("flux", 1.2, (4.0, 3.0)))
        self._paint_curve(_points(angles, room.flux_y(strip.flux)), self._pen("flux", 2.0))
        self._paint_filled(_points(angles, room.current_y(strip.current_a)), "opening", room.lane(1).bottom())
        breaks = room.x_of(strip.break_deg)
        self._paint_filled(_points(breaks, room.energy_y(strip.energy_mj)), "lift", room.lane(2).bottom())
        if strip.needed_mj is not None:
            y = room.energy_y(strip.needed_mj)
            painter.setPen(self._pen("bad", 1.3, (6.0, 3.0)))
            painter.drawLine(QLineF(area.left(), y, area.right(), y))
            needs = tr("a spark needs"), tr("needed")
            self._write_fitting(area.left() + 4, y - 0.8 * em, self._first_line(room, e_gap_deg), needs, "bad")
        low, high = strip.best_span_deg  # the top is flat: about here, not at a point
        y = room.lane(2).top() + 1.0
        painter.setPen(self._pen("lift", 3.0))
        painter.drawLine(QLineF(room.x_of(low), y, room.x_of(high), y))
        best = tr("within a tenth of the most"), tr("about here")
        self._write_fitting(room.x_of(high) + 4, y + 0.4 * em, area.right() + em, best, "lift")
        if was is not None:
            self._paint_ghost(room, was)
        x = room.x_of(strip.opens_deg)
        painter.setPen(self._pen("opening", 1.4))
        painter.drawLine(QLineF(x, area.top(), x, area.bottom()))
        painter.setPen(self._pen("panel", 1.5))
        painter.setBrush(self._colour("lift"))
        painter.drawEllipse(QPointF(x, room.energy_y(strip.broken_mj)), 4.5, 4.5)
        self._write_fitting(x + 5, room.lane(1).center().y(), area.right(), (tr("open here"),), "opening")
        self._paint_remarks(room, self._first_line(room, e_gap_deg))
        self._paint_names(room)

    @staticmethod
    def _first_line(room: WhyHereRoom, e_gap_deg: float) -> float:
        """The first upright line, over which no word is written [px]."""
        return min(room.x_of(angle) for angle in (0.0, room.strip.opens_deg, e_gap_deg))

    def _paint_remarks(self, room: WhyHereRoom, end: float) -> None:
        """Name the dashed curve and the shaded angle, at the left, where no curve runs."""
        em, strip, lane = self._em, room.strip, room.lane(0)
        low = float(strip.magnet_flux[0]) < 0.0
        y = lane.top() + 0.8 * em if low else lane.bottom() - 0.8 * em
        alone = tr("dashed: magnet alone"), tr("magnet alone")
        self._write_fitting(room.area.left() + 4, y, end, alone, "flux")
        if strip.closed_spans_deg:
            start, stop = (room.x_of(angle) for angle in strip.closed_spans_deg[-1])
            hump = room.x_of(float(strip.break_deg[0]))  # the energy's curve begins here
            closed = tr("contacts closed"), tr("closed")
            y = room.lane(2).bottom() - 0.8 * em
            self._write_fitting(max(start, room.area.left()) + 4, y, min(stop, end, hump), closed, "opening")

    def _write_fitting(self, x: float, y: float, end: float, wordings: tuple[str, ...], role: str) -> None:
        """The first of the wordings for which there is room up to a place, or none: hovering tells it."""
        font = QFont(self._font)
        font.setPixelSize(_small_px(font))
        metrics = QFontMetricsF(font)
        text = next((t for t in wordings if x + metrics.horizontalAdvance(t) + 3 <= end), None)
        if text is not None:
            box = QRectF(x, y - self._em, metrics.horizontalAdvance(text) + 4, 2 * self._em)
            self._write(box, text, role, _LEFT, small=True)

    def _paint_ghost(self, room: WhyHereRoom, was: WhyHere) -> None:
        """Draw the opening at the moment kept, with the current and the energy there, dashed and hollow."""
        painter, area = self._painter, room.area
        pen = self._pen("second_ink", 1.3, (5.0, 3.0))
        painter.save()
        painter.setClipRect(area)
        self._paint_curve(_points(room.x_of(was.rotor_deg), room.current_y(was.current_a)), pen)
        x = room.x_of(was.opens_deg)
        painter.drawLine(QLineF(x, area.top(), x, area.bottom()))
        painter.setPen(self._pen("second_ink", 1.6))
        painter.drawEllipse(QPointF(x, room.energy_y(was.broken_mj)), 5.5, 5.5)
        painter.restore()

    def _paint_speed(self, room: WhyHereRoom) -> None:
        """The speed, in as many words as there is room for; whether it is assumed is always said."""
        em, speeds = self._em, room.strip.speeds
        speed, assumed = speeds.starting_rpm, speeds.starting_assumed
        right = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter
        if room.width > 52 * em:
            text = tr("starting, {speed:.0f} turns a minute of the rotor", speed=speed)
            if assumed:
                text = tr("starting, {speed:.0f} turns a minute of the rotor, assumed", speed=speed)
            box = QRectF(room.width - 30 * em, 0.2 * em, 29 * em, 1.2 * em)
            self._write(box, text, "second_ink", right, small=True)
            return
        text = tr("speed assumed") if assumed else tr("at {speed:.0f}/min", speed=speed)
        box = QRectF(room.width - 10 * em, 0.2 * em, 9.5 * em, 1.2 * em)
        self._write(box, text, "second_ink", right, small=True)

    def _paint_places(self, room: WhyHereRoom, e_gap_deg: float) -> None:
        """Neutral, E-gap, and the scale below."""
        painter, em, strip, area = self._painter, self._em, room.strip, room.area
        for angle, text, bold in (
            (0.0, tr("neutral"), False), (e_gap_deg, tr("E-gap"), True),
        ):  # fmt: skip
            x = room.x_of(angle)
            painter.setPen(self._pen("ink", 1.6) if bold else self._pen("hair", 1.0, (4.0, 3.0)))
            painter.drawLine(QLineF(x, area.top(), x, area.bottom()))
            width = 8 * em
            box = QRectF(x + 3 if bold else x - width - 3, area.top() - 1.3 * em, width, 1.2 * em)
            side = Qt.AlignmentFlag.AlignLeft if bold else Qt.AlignmentFlag.AlignRight
            flags = side | Qt.AlignmentFlag.AlignVCenter
            self._write(box, text, "ink" if bold else "second_ink", flags, bold=bold, small=True)
        painter.setPen(self._pen("hair", 1.0, alpha=0.5))
        for index in range(len(LANES)):
            painter.drawLine(QLineF(area.left(), room.lane(index).bottom(), area.right(), room.lane(index).bottom()))
        painter.drawLine(QLineF(area.left(), room.flux_y(0.0), area.right(), room.flux_y(0.0)))
        span = float(strip.rotor_deg[-1] - strip.rotor_deg[0])
        step = 10 * max(
            1, math.ceil(5.5 * em / area.width() * span / 10.0)
        )  # so far apart that no number meets another
        for angle in range(-9 * step, 9 * step + 1, step):
            if strip.rotor_deg[0] <= angle <= strip.rotor_deg[-1]:
                x = room.x_of(angle)
                painter.setPen(self._pen("hair", 1.0))
                painter.drawLine(QLineF(x, area.bottom(), x, area.bottom() + 4))
                text = tr("0° rotor") if angle == 0 else tr("{angle:+d}°", angle=angle)
                box = QRectF(x - 4 * em, area.bottom() + 0.35 * em, 8 * em, 1.3 * em)
                self._write(box, text, "second_ink", Qt.AlignmentFlag.AlignCenter, small=True)

    def _paint_names(self, room: WhyHereRoom) -> None:
        em, area = self._em, room.area
        for index, (name, hint, role, _) in enumerate(LANES):
            lane = room.lane(index)
            hinted = room.wide and lane.height() > 5 * em
            box = QRectF(em, lane.top(), area.left() - 1.6 * em, lane.height() * (0.5 if hinted else 1.0))
            self._write(box, tr(name), role, _LEFT, bold=True)
            if hinted:
                box = QRectF(em, lane.center().y(), area.left() - 1.6 * em, lane.height() / 2)
                self._write(box, tr(hint), "second_ink", Qt.AlignmentFlag.AlignLeft, small=True)

    def _paint_curve(self, points: list[QPointF], pen: QPen) -> None:
        self._painter.setPen(pen)
        self._painter.setBrush(Qt.BrushStyle.NoBrush)
        self._painter.drawPolyline(points)

    def _paint_filled(self, points: list[QPointF], role: str, base: float) -> None:
        painter = self._painter
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QBrush(self._colour(f"{role}_fill", 0.5)))
        painter.drawPolygon([QPointF(points[0].x(), base), *points, QPointF(points[-1].x(), base)])
        self._paint_curve(points, self._pen(role, 2.0))

    def paint_cursor(self, room: WhyHereRoom, rotor_deg: float) -> None:
        """Paint the cursor, the values under it and the spark over what stands still."""
        painter, em, strip, area = self._painter, self._em, room.strip, room.area
        flux, _, current = strip.now(rotor_deg)
        x = min(max(room.x_of(strip.cursor_deg(rotor_deg)), area.left()), area.right())
        painter.setPen(self._pen("planned", 2.0))
        painter.drawLine(QLineF(x, area.top(), x, area.bottom()))
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(self._colour("planned"))
        tip = QPointF(x, area.bottom() - 1)
        painter.drawPolygon(QPolygonF([tip, tip + QPointF(-5, 8), tip + QPointF(5, 8)]))
        painter.setPen(self._pen("panel", 1.5))
        for role, y in (("flux", room.flux_y(flux)), ("opening", room.current_y(current))):
            painter.setBrush(self._colour(role))
            painter.drawEllipse(QPointF(x, y), 4.0, 4.0)
        beside = area.right() + 0.7 * em
        for index, text, role in (
            (0, tr("{flux:+.0f} %", flux=100.0 * flux), "flux"),
            (1, _current_words(current, strip.breaks(rotor_deg)), "opening"),
        ):  # fmt: skip
            lane = room.lane(index)
            self._write(QRectF(beside, lane.top(), 8 * em, lane.height()), text, role, _LEFT, bold=True)
        self._paint_spark(room, beside, strip.sparks(rotor_deg))

    def _paint_spark(self, room: WhyHereRoom, x: float, lit: bool) -> None:
        painter, em, strip, lane = self._painter, self._em, room.strip, room.lane(2)
        y, length = lane.center().y() - 0.6 * em, room.spark_length
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
        self._write(box, text, role, _LEFT, bold=True)


def _small_px(font: QFont) -> int:
    return max(10, round(0.88 * QFontInfo(font).pixelSize()))


def _current_words(current_a: float, breaks: bool) -> str:
    """The current, or while the contacts just touch, the break of it."""
    return tr("{current:.1f} A → 0", current=current_a) if breaks else tr("{current:.1f} A", current=current_a)


def _points(xs: Array, ys: Array) -> list[QPointF]:
    return [QPointF(x, y) for x, y in zip(xs.tolist(), ys.tolist(), strict=True)]
