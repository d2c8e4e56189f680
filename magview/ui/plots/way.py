"""The way taken, from as found to handed in: on the adjustment window, or the firing after each move."""

from __future__ import annotations

import math
from collections.abc import Sequence

import numpy as np
from PySide6.QtCore import QLineF, QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFont, QFontInfo, QFontMetricsF, QPainter, QPaintEvent, QPen, QPolygonF
from PySide6.QtWidgets import QWidget

from magview.curves.lift import round_levels
from magview.curves.setting_path import SettingPath
from magview.practice.way import FiringSteps
from magview.spec.language import format_length, number, tr, tr_n
from magview.ui.kit.badge import paint_badge
from magview.ui.kit.look import Look

_DASHED, _DOTTED = (6.0, 3.0), (1.5, 3.0)
_Span = tuple[float, float]


class WayPlot(QWidget):
    """One picture that the keyboard can stop at; what it shows is its accessible description."""

    def __init__(self, look: Look) -> None:
        super().__init__()
        self._look = look
        self.shown: SettingPath | FiringSteps | None = None
        self.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        self.setAccessibleName(tr("Your path"))
        look.changed.connect(self.update)

    def show_way(self, way: SettingPath | FiringSteps) -> None:
        """Show another way."""
        self.shown = way
        self.setAccessibleDescription(words_of(way))
        self.setToolTip(words_of(way))
        self.update()

    def sizeHint(self) -> QSize:
        """Room for words at every side."""
        em = QFontInfo(self.font()).pixelSize()
        return QSize(30 * em, 22 * em)

    def minimumSizeHint(self) -> QSize:
        """As small as it can be read."""
        em = QFontInfo(self.font()).pixelSize()
        return QSize(22 * em, 14 * em)

    # -------------------------------------------------------------- places

    @property
    def _em(self) -> float:
        return float(QFontInfo(self.font()).pixelSize())

    def _field(self) -> QRectF:
        em = self._em
        return QRectF(self.rect()).adjusted(5.2 * em, 0.8 * em, -1.2 * em, -3.6 * em)

    def _spans(self) -> tuple[_Span, _Span]:
        if isinstance(self.shown, SettingPath):
            way = self.shown
            points = [p for leg in way.legs for p in (leg.start, leg.end)] + [*way.short, way.found, way.left]
            plates = [p[0] for p in points] + way.within[:, 0].tolist()
            margin = max(0.3, 0.1 * (max(plates) - min(plates)))
            return (min(plates) - margin, max(plates) + margin), (float(way.early[0, 1]), float(way.early[-1, 1]))
        assert self.shown is not None
        errors = [e for e in self.shown.errors_deg if math.isfinite(e)]
        most = max([2.0 * self.shown.allowed_deg, *(abs(e) for e in errors)])
        return (-0.4, max(1, len(self.shown.errors_deg) - 1) + 0.6), (-1.12 * most, 1.12 * most)

    def place_of(self, x: float, y: float) -> QPointF:
        """The pixel of a point of the plot."""
        (left, right), (low, high) = self._spans()
        field = self._field()
        return QPointF(
            field.left() + (x - left) / (right - left) * field.width(),
            field.bottom() - (y - low) / (high - low) * field.height(),
        )

    # -------------------------------------------------------------- painting

    def paintEvent(self, event: QPaintEvent) -> None:
        """Field, limits, ways, numbers; outlined where the keyboard is."""
        theme, painter = self._look.theme, QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.fillRect(self.rect(), QColor(theme.paper))
        if self.shown is None:
            return
        small = QFont(self.font())
        small.setPointSizeF(0.92 * small.pointSizeF())
        painter.setFont(small)
        field = self._field()
        painter.fillRect(field, QColor(theme.base))
        self._grid(painter)
        painter.save()
        painter.setClipRect(field)
        if isinstance(self.shown, SettingPath):
            self._limits(painter, self.shown)
            self._short(painter, self.shown)
        painter.restore()
        if isinstance(self.shown, SettingPath):
            self._legs(painter, self.shown)
        else:
            self._steps(painter, self.shown)
        if self.hasFocus():
            painter.setPen(QPen(QColor(theme.hand), 2.0))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRect(QRectF(self.rect()).adjusted(1, 1, -1, -1))
        painter.end()

    def _grid(self, painter: QPainter) -> None:
        (left, right), (low, high) = self._spans()
        theme, em, field, setting = self._look.theme, self._em, self._field(), isinstance(self.shown, SettingPath)
        across = round_levels(left, right) if setting else np.array([])
        for x in across.tolist():
            self._line(painter, QColor(theme.grid), (x, low), (x, high))
            self._word(painter, theme.faint, QPointF(self.place_of(x, low).x(), field.bottom() + 0.9 * em), _deg(x))
        for y in round_levels(low, high).tolist():
            self._line(painter, QColor(theme.grid), (left, y), (right, y))
            at = QPointF(field.left() - 0.5 * em, self.place_of(left, y).y())
            self._word(painter, theme.faint, at, _deg(y), -1)
        painter.setPen(QColor(theme.hair))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawRect(field)
        below = tr("backplate, with rotation →") if setting else tr("moves, as the cards are numbered →")
        self._word(painter, theme.faint, QPointF(field.center().x(), field.bottom() + 2.5 * em), below)
        painter.save()
        painter.translate(0.9 * em, field.center().y())
        painter.rotate(-90)
        beside = tr("contact screw, closer →") if setting else tr("fires early, crank degrees →")
        self._word(painter, theme.faint, QPointF(0, 0), beside)
        painter.restore()

    def _limits(self, painter: QPainter, way: SettingPath) -> None:
        theme, field, em = self._look.theme, self._field(), self._em
        (left, right), _ = self._spans()
        painter.setPen(QPen(QColor(theme.good), 1.6))
        painter.setBrush(QColor(theme.good_fill))
        if len(way.within):
            painter.drawPolygon(QPolygonF([self.place_of(x, y) for x, y in way.within.tolist()]))
        pen = _pen(theme.good, 1.2, _DASHED)
        for line in (way.early, way.late):
            painter.setPen(pen)
            finite = line[np.isfinite(line).all(axis=1)]
            painter.drawPolyline(QPolygonF([self.place_of(x, y) for x, y in finite.tolist()]))
        for line, words, way_out in ((way.early, tr("early"), -1), (way.late, tr("late"), 1)):
            inside = [p for p in map(lambda q: self.place_of(*q), line.tolist()) if field.contains(p)]
            if inside:
                at = max(inside, key=QPointF.y) if way_out < 0 else min(inside, key=QPointF.y)
                away = QPointF(0.6 * em * way_out, -0.9 * em if way_out < 0 else 0.9 * em)
                self._word(painter, theme.good, at + away, words, way_out)
        for screw, gap in way.gap_lines:
            painter.setPen(pen)
            painter.drawLine(QLineF(self.place_of(left, screw), self.place_of(right, screw)))
            at = self.place_of(left, screw) + QPointF(0.5 * em, -0.8 * em)
            self._word(painter, theme.good, at, tr("gap {gap}", gap=format_length(gap)), 1)

    def _short(self, painter: QPainter, way: SettingPath) -> None:
        if len(way.short) < 2:
            return
        beside = QPointF(0.45 * self._em, -0.25 * self._em)  # not under the way taken
        painter.setPen(_pen(self._look.theme.faint, 1.7, _DOTTED))
        painter.drawPolyline(QPolygonF([self.place_of(*p) + beside for p in way.short]))
        corner = self.place_of(*way.short[0]) + beside, self.place_of(*way.short[1]) + beside
        at = QLineF(*corner).pointAt(0.3) + QPointF(0.7 * self._em, 0.0)
        self._word(painter, self._look.theme.faint, at, tr("short way"), 1)

    def _legs(self, painter: QPainter, way: SettingPath) -> None:
        theme, em = self._look.theme, self._em
        for leg in way.legs:
            colour = theme.warn if leg.carried else theme.hand
            self._arrow(painter, colour, self.place_of(*leg.start), self.place_of(*leg.end))
            if leg.carried:
                middle = (self.place_of(*leg.start) + self.place_of(*leg.end)) / 2
                self._word(painter, theme.warn, middle - QPointF(0.7 * em, 0), tr("lock screw"), -1)
        found = self.place_of(*way.found)
        painter.setPen(QPen(QColor(theme.base), 1.5))
        painter.setBrush(QColor(theme.hand))
        painter.drawEllipse(found, 0.45 * em, 0.45 * em)
        self._named(painter, theme.hand, found, tr("as found"))
        if way.legs:
            self._cross_or_tick(painter, self.place_of(*way.left), _inside(way))
        taken: set[int] = set()
        for leg in way.legs:
            if leg.number and leg.number not in taken:
                taken.add(leg.number)
                start, end = self.place_of(*leg.start), self.place_of(*leg.end)
                line = QLineF(start, end)
                aside = QLineF(QPointF(0, 0), QPointF(line.dy(), -line.dx()))
                aside.setLength(1.1 * em)
                paint_badge(painter, (start + end) / 2 + aside.p2(), leg.number, theme, em)

    def _steps(self, painter: QPainter, way: FiringSteps) -> None:
        theme, em = self._look.theme, self._em
        (left, right), _ = self._spans()
        band = QRectF(self.place_of(left, way.allowed_deg), self.place_of(right, -way.allowed_deg))
        painter.setPen(_pen(theme.good, 1.2, _DASHED))
        painter.setBrush(QColor(theme.good_fill))
        painter.drawRect(band)
        places = [self.place_of(i, error) for i, error in enumerate(way.errors_deg)]
        off = [not math.isfinite(error) for error in way.errors_deg]
        for i in range(1, len(places)):
            if not (off[i - 1] or off[i]):
                self._arrow(painter, theme.hand, places[i - 1], places[i])
        for i, at in enumerate(places):
            if off[i]:
                continue
            if i == 0:
                painter.setPen(QPen(QColor(theme.base), 1.5))
                painter.setBrush(QColor(theme.hand))
                painter.drawEllipse(at, 0.45 * em, 0.45 * em)
                self._named(painter, theme.hand, at, tr("as found"))
            else:
                paint_badge(painter, at + QPointF(0, -1.2 * em), way.numbers[i], theme, em)
        if len(places) > 1 and not off[-1]:
            self._cross_or_tick(painter, places[-1], abs(way.errors_deg[-1]) <= way.allowed_deg)

    # -------------------------------------------------------------- strokes

    def _line(self, painter: QPainter, colour: QColor, start: _Span, end: _Span) -> None:
        painter.setPen(QPen(colour, 1.0))
        painter.drawLine(QLineF(self.place_of(*start), self.place_of(*end)))

    def _arrow(self, painter: QPainter, colour: str, start: QPointF, end: QPointF) -> None:
        line = QLineF(start, end)
        painter.setPen(QPen(QColor(colour), 2.4))
        painter.drawLine(line)
        if line.length() < 0.5 * self._em:
            return
        back = QLineF(end, start)
        back.setLength(0.75 * self._em)
        wings = []
        for turn in (24.0, -24.0):
            wing = QLineF(back)
            wing.setAngle(back.angle() + turn)
            wings.append(wing.p2())
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor(colour))
        painter.drawPolygon(QPolygonF([end, *wings]))

    def _cross_or_tick(self, painter: QPainter, at: QPointF, right: bool) -> None:
        theme, em = self._look.theme, self._em
        colour = theme.good if right else theme.bad
        painter.setPen(QPen(QColor(colour), 2.6))
        r = 0.42 * em
        if right:
            painter.drawPolyline(
                QPolygonF([at + QPointF(-r, 0), at + QPointF(-0.2 * r, r), at + QPointF(1.3 * r, -r)])
            )
        else:
            painter.drawLine(QLineF(at + QPointF(-r, -r), at + QPointF(r, r)))
            painter.drawLine(QLineF(at + QPointF(-r, r), at + QPointF(r, -r)))
        self._named(painter, colour, at + QPointF(0, 1.3 * em), tr("handed in"))

    def _named(self, painter: QPainter, colour: str, at: QPointF, words: str) -> None:
        """Bold words beside a point, on the side that has the room."""
        font, plain = QFont(painter.font()), QFont(painter.font())
        font.setBold(True)
        painter.setFont(font)
        wide = QFontMetricsF(font).horizontalAdvance(words)
        left = at.x() - wide - 0.9 * self._em > self._field().left()
        away = -0.9 * self._em if left else 0.9 * self._em
        self._word(painter, colour, at + QPointF(away, 0), words, -1 if left else 1)
        painter.setFont(plain)

    def _word(self, painter: QPainter, colour: str, at: QPointF, words: str, side: int = 0) -> None:
        """Words centred on a point, or ending (−1) or beginning (1) there."""
        metrics = QFontMetricsF(painter.font())
        wide = metrics.horizontalAdvance(words)
        left = at.x() - (wide / 2 if side == 0 else wide if side < 0 else 0.0)
        painter.setPen(QColor(colour))
        painter.drawText(QPointF(left, at.y() + (metrics.ascent() - metrics.descent()) / 2), words)


def words_of(way: SettingPath | FiringSteps) -> str:
    """The picture in one sentence."""
    if isinstance(way, SettingPath):
        moves = len({leg.number for leg in way.legs if leg.number})
        told = tr_n("{count} move of plate or screw", "{count} moves of plate or screw", count=moves)
        inside = tr("it ends within both limits") if _inside(way) else tr("it ends outside the limits")
        return f"{told}; {inside}."
    told = tr_n("{count} move", "{count} moves", count=len(way.errors_deg) - 1)
    last = way.errors_deg[-1]
    if not math.isfinite(last):
        return tr("{moves}; the magneto is off the engine.", moves=told)
    words = _deg(abs(last))
    return (
        tr("{moves}; it fires {angle} of crank early.", moves=told, angle=words)
        if last >= 0
        else tr("{moves}; it fires {angle} of crank late.", moves=told, angle=words)
    )


def _inside(way: SettingPath) -> bool:
    """Whether the last setting lies within the outline of both limits."""
    if not len(way.within):
        return False
    outline = QPolygonF([QPointF(x, y) for x, y in way.within.tolist()])
    return outline.containsPoint(QPointF(*way.left), Qt.FillRule.OddEvenFill)


def _deg(value: float) -> str:
    return f"{number(round(value, 3))}°".replace("-", "−")


def _pen(colour: str, width: float, dashes: Sequence[float]) -> QPen:
    pen = QPen(QColor(colour), width)
    pen.setDashPattern(list(dashes))
    return pen
