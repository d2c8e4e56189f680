"""Boxes that each say a name, a figure and a sign: two beside one another, or one below the other in large type."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import QEvent, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFont, QFontInfo, QFontMetricsF, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QGridLayout, QSizePolicy, QWidget

from magview.spec.language import tr
from magview.ui.kit.look import Look
from magview.ui.kit.signs import Sign

ONE_COLUMN = 1.5
"""From this size of type on, against the desktop's own, boxes stand one below the other."""

_HEIGHT, _WIDTH = 3.3, 14.0
"""Of a box, the width at least [em]."""
_SIGN_EM = 1.2
"""Room for the sign beside the figure."""


@dataclass(frozen=True)
class Boxed:
    """The words and the sign of a box."""

    name: str
    figure: str
    sign: Sign
    words: str
    """All of it, for the pointer and for who cannot see it."""


class JudgedBox(QWidget):
    """One box. Its fill repeats what its sign says."""

    def __init__(self, look: Look) -> None:
        super().__init__()
        self._look = look
        self.shown: Boxed | None = None
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        look.changed.connect(self.update)

    def show_value(self, shown: Boxed) -> None:
        """Show something."""
        if shown == self.shown:
            return
        self.shown = shown
        said = tr("{name}: {figure}, {verdict}", name=shown.name, figure=shown.figure, verdict=shown.sign.words)
        self.setAccessibleName(said)
        self.setAccessibleDescription(shown.words)
        self.setToolTip(f"{shown.name}: {shown.words}")
        self.update()

    @property
    def _em(self) -> float:
        return float(QFontInfo(self.font()).pixelSize())

    def sizeHint(self) -> QSize:
        """Two lines."""
        return QSize(round(_WIDTH * self._em), round(_HEIGHT * self._em))

    def minimumSizeHint(self) -> QSize:
        """The same."""
        return self.sizeHint()

    def changeEvent(self, event: QEvent) -> None:
        """Type of another size needs other room."""
        super().changeEvent(event)
        if event.type() == QEvent.Type.FontChange:
            self.updateGeometry()

    @property
    def _bold(self) -> QFont:
        bold = QFont(self.font())
        bold.setBold(True)
        return bold

    @property
    def _inner(self) -> QRectF:
        em = self._em
        return QRectF(self.rect()).adjusted(0.6 * em, 0.3 * em, -0.6 * em, -0.3 * em)

    def figure_width(self) -> float:
        """Width of the whole figure [px]."""
        return QFontMetricsF(self._bold).horizontalAdvance(self.shown.figure) if self.shown is not None else 0.0

    def figure_room(self) -> float:
        """Width there is for it; a longer one is cut short [px]."""
        return self._inner.width() - _SIGN_EM * self._em

    def paintEvent(self, event: QPaintEvent) -> None:
        """Fill and outline, the name small, the figure bold, the sign at the right."""
        shown, theme, em = self.shown, self._look.theme, self._em
        if shown is None:
            return
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        plain = shown.sign is Sign.NONE
        painter.setPen(QPen(QColor(theme.hair if plain else shown.sign.colour(theme)), 1.3))
        painter.setBrush(QColor(theme.good_fill if shown.sign is Sign.IN else theme.base))
        painter.drawRoundedRect(QRectF(self.rect()).adjusted(1, 1, -1, -1), 4.0, 4.0)
        small, bold = QFont(self.font()), self._bold
        small.setPointSizeF(0.84 * small.pointSizeF())
        inner = self._inner
        painter.setFont(bold)
        painter.setPen(QColor(shown.sign.colour(theme)))
        at_right = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter
        painter.drawText(inner, at_right, shown.sign.mark)
        inner.setRight(inner.right() - _SIGN_EM * em)
        painter.setPen(QColor(theme.text))
        figure = QFontMetricsF(bold).elidedText(shown.figure, Qt.TextElideMode.ElideRight, inner.width())
        painter.drawText(inner, Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignBottom, figure)
        painter.setFont(small)
        painter.setPen(QColor(theme.faint))
        painter.drawText(inner, Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignTop, shown.name)


class JudgedBoxes(QWidget):
    """Boxes side by side."""

    def __init__(self, look: Look) -> None:
        super().__init__()
        self._look = look
        self.boxes: list[JudgedBox] = []
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._grid.setSpacing(4)
        self._columns = 0
        look.changed.connect(self._arrange)

    def show_values(self, values: Sequence[Boxed]) -> None:
        """Show these; there are as many each time."""
        while len(self.boxes) < len(values):
            self.boxes.append(JudgedBox(self._look))
            self._columns = 0
        for box, value in zip(self.boxes, values, strict=True):
            box.show_value(value)
        self._arrange()

    @property
    def columns(self) -> int:
        """Number of boxes beside one another."""
        return self._columns

    def _arrange(self) -> None:
        columns = 1 if self._look.text_factor >= ONE_COLUMN else 2
        if columns == self._columns:
            return
        self._columns = columns
        for place, box in enumerate(self.boxes):
            self._grid.addWidget(box, place // columns, place % columns)
        for column in (0, 1):
            self._grid.setColumnStretch(column, int(column < columns))
