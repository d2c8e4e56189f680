"""One goal of the debrief: sign, points, a gauge with one's own reading against the truth, one sentence of cause."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QFocusEvent, QFontInfo, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QGridLayout, QLabel, QSizePolicy, QWidget

from magview.bench.state import Side
from magview.practice.told_goals import GoalTold
from magview.spec.language import tr
from magview.ui.kit.gauge import Gauge, Measured
from magview.ui.kit.look import Look
from magview.ui.kit.signs import Sign
from magview.ui.kit.style import tint
from magview.ui.practice.controls import wrapped

_SCORE = 15.0
"""Room for points and one's own reading [em]."""


class ScoreBar(QWidget):
    """Share of the points as a bar; the words beside it say the same."""

    def __init__(self, look: Look, share: float, full: bool) -> None:
        super().__init__()
        self._look, self.share, self._full = look, share, full
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def sizeHint(self) -> QSize:
        """As high as a letter."""
        em = QFontInfo(self.font()).pixelSize()
        return QSize(7 * em, em)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Fill as much of the bar as was got."""
        theme, painter, em = self._look.theme, QPainter(self), QFontInfo(self.font()).pixelSize()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        box = QRectF(0.5, self.height() / 2 - 0.3 * em, self.width() - 1, 0.6 * em)
        painter.setPen(QPen(QColor(theme.hair), 1.0))
        painter.setBrush(QColor(theme.grid))
        painter.drawRoundedRect(box, 3, 3)
        if self.share > 0:
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(QColor(theme.good if self._full else theme.bad))
            painter.drawRoundedRect(QRectF(box.left(), box.top(), self.share * box.width(), box.height()), 3, 3)
        painter.end()


class GoalRow(QWidget):
    """The keyboard stops at it; whoever cannot see it hears it whole."""

    looked_at = Signal(str)
    """The magneto that the goal is of."""

    def __init__(self, goal: GoalTold, look: Look) -> None:
        super().__init__()
        self.goal, self._look = goal, look
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Maximum)
        self.sign = Sign.IN if goal.full else Sign.OUT
        grid = QGridLayout(self)
        grid.setContentsMargins(4, 3, 4, 3)
        grid.setVerticalSpacing(1)
        grid.setHorizontalSpacing(8)
        grid.setColumnStretch(1, 1)
        self.mark, self.cause = QLabel(self.sign.mark), wrapped(goal.cause)
        self.points = QLabel(points_words(goal))
        self.points.setAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
        self.own = QLabel(goal.gauge.own_words if goal.gauge is not None else "")
        self.own.setWordWrap(True)
        self.own.setAlignment(Qt.AlignmentFlag.AlignTop | Qt.AlignmentFlag.AlignLeft)
        grid.addWidget(self.mark, 0, 0, Qt.AlignmentFlag.AlignTop)
        grid.addWidget(ScoreBar(look, goal.got / goal.of if goal.of else 0.0, goal.full), 0, 2)
        grid.addWidget(self.points, 0, 3)
        self.gauge: Gauge | None = None
        self._title: QLabel | None = None
        shown = goal.gauge
        if shown is None:
            self._title = QLabel(goal.what)
            self._title.setWordWrap(True)
            grid.addWidget(self._title, 0, 1)
        else:
            self.gauge = Gauge(goal.what, look)
            within = shown.low <= shown.value <= shown.high
            sign = Sign.IN if within else Sign.OUT
            self.gauge.show_value(
                Measured(
                    shown.value, shown.low, shown.high, shown.words, shown.ends, sign, shown.own, shown.own_words
                )
            )
            grid.addWidget(self.gauge, 0, 1, 2, 1)
            grid.addWidget(self.own, 1, 2, 1, 2)
        grid.addWidget(self.cause, 2, 1, 1, 3)
        told = [goal.what, self.points.text(), self.sign.words, goal.cause]
        if self.gauge is not None:
            told.insert(1, self.gauge.words)
        self.setAccessibleName("; ".join(told))
        self._colour()
        look.changed.connect(self._colour)
        self._fit()

    def _fit(self) -> None:
        em, layout = QFontInfo(self.font()).pixelSize(), self.layout()
        assert isinstance(layout, QGridLayout)
        self.own.setFixedWidth(round(_SCORE * em))
        self.points.setFixedWidth(round(0.45 * _SCORE * em))
        if self.gauge is not None:
            self.gauge.setMinimumWidth(18 * em)  # beside a bar to scroll by, too
        layout.setColumnMinimumWidth(2, round(0.5 * _SCORE * em))

    def changeEvent(self, event: QEvent) -> None:
        """Type of another size needs other room."""
        super().changeEvent(event)
        if event.type() == QEvent.Type.FontChange:
            self._fit()

    def _colour(self) -> None:
        theme = self._look.theme
        tint(self.mark, self.sign.colour(theme), bold=True)
        tint(self.points, self.sign.colour(theme), bold=True)
        tint(self.own, theme.hand)
        if self._title is not None:
            tint(self._title, theme.text, bold=True)

    def focusInEvent(self, event: QFocusEvent) -> None:
        """Its magneto's path is shown."""
        super().focusInEvent(event)
        side: Side | None = self.goal.row.side
        if side is not None:
            self.looked_at.emit(side)
        self.update()

    def focusOutEvent(self, event: QFocusEvent) -> None:
        """The outline goes."""
        super().focusOutEvent(event)
        self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        """An outline while the keyboard is here."""
        if self.hasFocus():
            painter = QPainter(self)
            painter.setPen(QPen(QColor(self._look.theme.hand), 2.0))
            painter.drawRoundedRect(QRectF(self.rect()).adjusted(1, 1, -1, -1), 4, 4)
            painter.end()


def points_words(goal: GoalTold) -> str:
    """Points got, of how many."""
    return tr("{got:.0f} of {points:.0f}", got=goal.got, points=goal.of)
