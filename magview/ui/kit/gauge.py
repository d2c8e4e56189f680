"""One gauge everywhere: a scale with its limits, a value or the truth above it, an own reading below."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QEvent, QLineF, QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFont, QFontInfo, QFontMetricsF, QPainter, QPaintEvent, QPen, QPolygonF
from PySide6.QtWidgets import QSizePolicy, QWidget

from magview.spec.language import tr, with_minus
from magview.ui.kit.look import Look
from magview.ui.kit.signs import Sign

_BEYOND = 1.33
"""Reach of the scale past each limit, as a share of what lies between them."""
_VALUE = 8.4
"""Room for value and sign behind a flat gauge's scale [em]."""
_WORDS = 17.0
"""Room for any value and its sign beside the name, so that nothing moves while a value changes [em]."""


@dataclass(frozen=True)
class Measured:
    """A value against limits. All numbers are in one unit, whichever; words and ends say it."""

    value: float | None
    """None, and not a number, stand nowhere on the scale."""
    low: float
    high: float
    words: str
    """The value with its unit."""
    ends: tuple[str, str]
    """The limits, without their unit."""
    sign: Sign = Sign.NONE
    own: tuple[float, float] | None = None
    """Bounds that a reading of one's own gives for the value."""
    own_words: str = ""
    before: float | None = None
    """The value before the act; None where nothing was done."""


class Gauge(QWidget):
    """A name, the value and its sign in one line; below it the scale."""

    def __init__(self, name: str, look: Look, parent: QWidget | None = None, *, flat: bool = False) -> None:
        """`flat`: on one line, the value behind the scale; whoever stands beside it says the name and the limits."""
        super().__init__(parent)
        self.name, self._look, self._flat = name, look, flat
        self._shown: Measured | None = None
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setAccessibleName(name)
        look.changed.connect(self.update)

    @property
    def shown(self) -> Measured | None:
        """Values that the gauge shows."""
        return self._shown

    def show_value(self, measured: Measured) -> None:
        """Move the needle to a value measured anew."""
        if measured == self._shown:
            return
        taller = self._shown is None or (self._shown.own is None) != (measured.own is None)
        self._shown = measured
        self.setAccessibleName(self.words)
        if taller:
            self.updateGeometry()
        self.update()

    @property
    def words(self) -> str:
        """All that the gauge shows, for who cannot see it."""
        shown = self._shown
        if shown is None:
            return self.name
        said = tr(
            "{name} {value}, limits {low} to {high}, {verdict}",
            name=self.name, value=shown.words, low=shown.ends[0], high=shown.ends[1], verdict=shown.sign.words,
        )  # fmt: skip
        return tr("{gauge}; own reading {words}", gauge=said, words=shown.own_words) if shown.own_words else said

    # -------------------------------------------------------------- measures

    @property
    def _em(self) -> float:
        return float(QFontInfo(self.font()).pixelSize())

    @property
    def _small(self) -> QFont:
        font = QFont(self.font())
        font.setPointSizeF(0.84 * font.pointSizeF())
        return font

    def sizeHint(self) -> QSize:
        """A line of words, the scale, and the limits below it."""
        em, own = self._em, self._shown is not None and self._shown.own is not None
        if self._flat:
            return QSize(round(14 * em), round((3.0 if own else 2.0) * em))
        height = self._bar().bottom() + (1.0 if own else 0.25) * em + QFontMetricsF(self._small).height()
        return QSize(round(18 * em), round(height + 0.3 * em))

    def minimumSizeHint(self) -> QSize:
        """As narrow as the name and any value allow."""
        if self._flat:
            return QSize(round(11 * self._em), self.sizeHint().height())
        wide = QFontMetricsF(self.font()).horizontalAdvance(self.name) + _WORDS * self._em
        return QSize(round(wide), self.sizeHint().height())

    def changeEvent(self, event: QEvent) -> None:
        """Type of another size needs other room."""
        super().changeEvent(event)
        if event.type() == QEvent.Type.FontChange:
            self.updateGeometry()

    def _bar(self) -> QRectF:
        em = self._em
        if self._flat:
            return QRectF(0.5 * em, 0.85 * em, self.width() - (1.0 + _VALUE) * em, 0.5 * em)
        top = QFontMetricsF(self.font()).height() + 0.7 * em
        return QRectF(0.5 * em, top, self.width() - em, 0.5 * em)

    def x_of(self, value: float) -> float:
        """Return where a value stands along the gauge [px]; beyond the scale it stands at the scale's end."""
        shown, bar = self._shown, self._bar()
        assert shown is not None
        margin = _BEYOND * (shown.high - shown.low)
        low, high = shown.low - margin, shown.high + margin
        share = (value - low) / (high - low) if high > low else 0.5
        return bar.left() + min(max(share, 0.0), 1.0) * bar.width()

    # -------------------------------------------------------------- painting

    def paintEvent(self, event: QPaintEvent) -> None:
        """Name, value and sign; scale, limits, pointer, own reading."""
        shown, theme = self._shown, self._look.theme
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        self._paint_words(painter)
        if shown is None:
            return
        bar = self._bar()
        painter.setPen(QPen(QColor(theme.hair), 1.0))
        painter.setBrush(QColor(theme.grid))
        painter.drawRoundedRect(bar, 3.0, 3.0)
        painter.setPen(QPen(QColor(theme.good), 1.3))
        painter.setBrush(QColor(theme.good_fill))
        left, right = self.x_of(shown.low), self.x_of(shown.high)
        painter.drawRect(QRectF(left, bar.top() - 1, right - left, bar.height() + 2))
        if shown.own is not None:
            self._paint_own(painter, shown.own)
        if shown.before is not None and shown.before == shown.before:
            self._paint_before(painter, shown.before, shown.value)
        if shown.value is not None and shown.value == shown.value:
            in_or_plain = shown.sign in (Sign.IN, Sign.NONE)
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(QColor(theme.text if in_or_plain else shown.sign.colour(theme)))
            painter.drawPolygon(self._pointer(shown.value))
        if not self._flat:
            self._paint_ends(painter, left, right)

    def _pointer(self, value: float) -> QPolygonF:
        at, bar, em = self.x_of(value), self._bar(), self._em
        tip, top, half = bar.top() + 0.75 * bar.height(), bar.top() - 0.5 * em, 0.42 * em
        return QPolygonF([QPointF(at, tip), QPointF(at - half, top), QPointF(at + half, top)])

    def _paint_before(self, painter: QPainter, before: float, now: float | None) -> None:
        """A hollow pointer where the value was, and an arrow from it to where it is."""
        theme, em = self._look.theme, self._em
        painter.setPen(QPen(QColor(theme.text), 1.2))
        painter.setBrush(QColor(theme.base))
        painter.drawPolygon(self._pointer(before))
        start, end = self.x_of(before), self.x_of(before if now is None or now != now else now)
        if abs(end - start) < 1.2 * em:
            return
        way = 1.0 if end > start else -1.0
        y, tip = self._bar().top() - 0.2 * em, end - 0.55 * em * way
        painter.setPen(QPen(QColor(theme.hand), 1.6))
        painter.drawLine(QLineF(start + 0.5 * em * way, y, tip, y))
        for side in (-1.0, 1.0):
            painter.drawLine(QLineF(tip, y, tip - 0.35 * em * way, y + 0.28 * em * side))

    def _paint_words(self, painter: QPainter) -> None:
        shown, theme, metrics = self._shown, self._look.theme, QFontMetricsF(self.font())
        line = QRectF(0.0, 0.0, self.width(), metrics.height())
        if self._flat:
            line.moveTop(self._bar().center().y() - metrics.height() / 2)
        else:
            painter.setPen(QColor(theme.faint))
            painter.drawText(line, Qt.AlignmentFlag.AlignLeft, self.name)
        if shown is None:
            return
        bold = QFont(self.font())
        bold.setBold(True)
        painter.setFont(bold)
        painter.setPen(QColor(shown.sign.colour(theme)))
        painter.drawText(line, Qt.AlignmentFlag.AlignRight, shown.sign.mark)
        painter.setPen(QColor(theme.text))
        painter.drawText(
            line.adjusted(0, 0, -1.7 * self._em, 0), Qt.AlignmentFlag.AlignRight, with_minus(shown.words)
        )

    def _paint_own(self, painter: QPainter, own: tuple[float, float]) -> None:
        theme, bar, em = self._look.theme, self._bar(), self._em
        low, high = (self.x_of(value) for value in own)
        y = bar.bottom() + 0.42 * em
        painter.setPen(QPen(QColor(theme.hand), 2.4, c=Qt.PenCapStyle.FlatCap))
        painter.drawLine(QLineF(low, y, high, y))
        painter.setPen(QPen(QColor(theme.hand), 1.6))
        for x in (low, high):
            painter.drawLine(QLineF(x, y - 4, x, y + 4))
        painter.setBrush(QColor(theme.base))
        painter.drawEllipse(QPointF((low + high) / 2, y), 0.34 * em, 0.34 * em)

    def _paint_ends(self, painter: QPainter, left: float, right: float) -> None:
        shown = self._shown
        assert shown is not None
        font, metrics = self._small, QFontMetricsF(self._small)
        painter.setFont(font)
        painter.setPen(QColor(self._look.theme.faint))
        y = self._bar().bottom() + (1.0 if shown.own is not None else 0.25) * self._em
        ends = [with_minus(words) for words in shown.ends]
        widths = [metrics.horizontalAdvance(words) for words in ends]
        # Apart from one another, and not off the gauge, however narrow it is.
        first = max(0.0, min(left - widths[0] / 2, (left + right) / 2 - widths[0] - 2))
        second = min(self.width() - widths[1], max(right - widths[1] / 2, first + widths[0] + 4))
        for x, words in ((first, ends[0]), (second, ends[1])):
            painter.drawText(QPointF(x, y + metrics.ascent()), words)
