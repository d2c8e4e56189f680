"""A door: picture, name, the next thing with its bar, and one button that answers to a letter."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from PySide6.QtCore import QRectF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QFont, QFontInfo, QFontMetrics, QMouseEvent, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QHBoxLayout, QLabel, QPushButton, QSizePolicy, QVBoxLayout, QWidget

from magview.spec.language import tr
from magview.ui.kit.elided import Elided
from magview.ui.kit.key_button import KeyButton
from magview.ui.kit.look import Look
from magview.ui.start.doors import Segment, Told
from magview.ui.start.pictures import DoorPicture

_NAME, _THING = 1.83, 1.25
"""Size of a door's name and of the next thing, against other words."""


@dataclass(frozen=True)
class Door:
    """The fixed part of a door."""

    name: str
    text: str
    letter: str
    picture: str
    """The name of its picture (`pictures.PICTURES`)."""
    go: Callable[[], object]
    more: Sequence[tuple[str, Callable[[], object]]] = ()
    """More that can be begun here, as links."""


class Bar(QWidget):
    """A bar of a door's things, piece by piece; beside it the count says the same in words."""

    def __init__(self, look: Look) -> None:
        super().__init__()
        self._look = look
        self.pieces: tuple[Segment, ...] = ()
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def sizeHint(self) -> QSize:
        """As thin as a line, as wide as there is room."""
        em = QFontInfo(self.font()).pixelSize()
        return QSize(10 * em, em)

    def show_pieces(self, pieces: tuple[Segment, ...]) -> None:
        """Show other pieces."""
        self.pieces = pieces
        counts = {kind: pieces.count(kind) for kind in Segment}
        told = (f"{count} {tr(kind.value)}" for kind, count in counts.items() if count)
        self.setAccessibleName(", ".join(told))
        self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        """A piece for each thing: filled where done, taller for the next one, with a sign where there is danger."""
        if not self.pieces:
            return
        theme, painter = self._look.theme, QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        em = QFontInfo(self.font()).pixelSize()
        step = self.width() / len(self.pieces)
        wide, high, middle = step - min(0.3 * em, 0.25 * step), 0.6 * em, self.height() / 2
        for i, piece in enumerate(self.pieces):
            tall = high if piece in (Segment.DONE, Segment.OPEN) else 0.95 * em
            colour = {Segment.DONE: theme.good, Segment.NOW: theme.hand, Segment.DANGER: theme.warn}.get(piece)
            painter.setPen(Qt.PenStyle.NoPen if colour else QPen(QColor(theme.hair), 1.0))
            painter.setBrush(QColor(colour or theme.base))
            painter.drawRoundedRect(
                QRectF(i * step, middle - tall / 2, wide, tall).adjusted(0.5, 0.5, -0.5, -0.5), 2, 2
            )
        painter.end()


class Hair(QWidget):
    """A thin line between what a door is and what is next behind it."""

    def __init__(self, look: Look) -> None:
        super().__init__()
        self._look = look
        self.setFixedHeight(9)

    def paintEvent(self, event: QPaintEvent) -> None:
        """The line, in the middle."""
        painter = QPainter(self)
        painter.setPen(QColor(self._look.theme.grid))
        painter.drawLine(0, 4, self.width(), 4)
        painter.end()


class Link(QPushButton):
    """Words that lead somewhere, underlined so that they can be told without their colour."""

    def __init__(self, look: Look, words: str = "", bold: bool = False) -> None:
        super().__init__(words)
        self.setToolTip(words)  # whole, where there is no room for all of it
        self._look, self._bold = look, bold
        self.setFlat(True)
        self.setAutoDefault(False)
        self.setCursor(Qt.CursorShape.PointingHandCursor)
        self.setSizePolicy(QSizePolicy.Policy.Maximum, QSizePolicy.Policy.Fixed)

    def _written(self) -> QFont:
        font = QFont(self.font())
        font.setBold(self._bold)
        font.setUnderline(True)
        return font

    def sizeHint(self) -> QSize:
        """Its words, and no less than a hand needs."""
        bold = QFont(self.font())
        bold.setBold(self._bold)
        em = QFontInfo(bold).pixelSize()
        wide = QFontMetrics(bold).horizontalAdvance(self.text())
        return QSize(min(wide, 20 * em) + 10, max(24, 2 * em))

    def minimumSizeHint(self) -> QSize:
        """A few letters."""
        return QSize(4 * QFontInfo(self.font()).pixelSize(), self.sizeHint().height())

    def paintEvent(self, event: QPaintEvent) -> None:
        """As much of the words as there is room for, and a frame where the keyboard is."""
        theme, painter = self._look.theme, QPainter(self)
        painter.setFont(self._written())
        painter.setPen(QColor(theme.hand))
        words = painter.fontMetrics().elidedText(self.text(), Qt.TextElideMode.ElideRight, self.width() - 6)
        painter.drawText(self.rect().adjusted(3, 0, -3, 0), Qt.AlignmentFlag.AlignVCenter, words)
        if self.hasFocus():
            painter.setPen(QPen(QColor(theme.hand), 2.0))
            painter.drawRect(self.rect().adjusted(1, 1, -1, -1))
        painter.end()


class DoorFrame(QWidget):
    """One door. A click anywhere on it is a click on its button."""

    opened = Signal()

    def __init__(self, door: Door, look: Look) -> None:
        super().__init__()
        self.door, self._look = door, look
        self.told: Told | None = None
        self.setCursor(Qt.CursorShape.PointingHandCursor)
        em = QFontInfo(self.font()).pixelSize()
        whole, column = QVBoxLayout(self), QVBoxLayout()
        whole.setContentsMargins(2, 2, 2, 2)
        whole.setSpacing(0)
        column.setContentsMargins(round(1.5 * em), em, round(1.5 * em), round(1.2 * em))
        column.setSpacing(round(0.35 * em))
        self.picture = DoorPicture(door.picture, look)
        whole.addWidget(self.picture, 1)
        whole.addLayout(column)
        self.name, self.text = QLabel(door.name), Elided()
        self.kicker, self.thing, self.line, self.count = QLabel(), Elided(), Elided(), QLabel()
        self.text.setText(door.text)
        self.text.setToolTip(door.text)
        self.bar = Bar(look)
        row = QHBoxLayout()
        row.setSpacing(em)
        row.addWidget(self.bar, 1)
        self.count.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Preferred)
        row.addWidget(self.count)
        self.button = KeyButton(look, door.letter)
        self.button.clicked.connect(self.opened)
        self.links = [self._link(words, go) for words, go in door.more]
        also = QWidget()
        also.setFixedHeight(max(24, 2 * em))  # as high where there is nothing else
        links = QHBoxLayout(also)
        links.setContentsMargins(0, 0, 0, 0)
        links.setSpacing(em)
        for link in self.links:
            links.addWidget(link)
        links.addStretch(1)
        for widget in (self.name, self.text, Hair(look), self.kicker, self.thing, self.line):
            column.addWidget(widget)
        column.addLayout(row)
        column.addWidget(also)
        column.addWidget(self.button)
        look.changed.connect(self._colour)
        self._colour()

    def _link(self, words: str, go: Callable[[], object]) -> Link:
        link = Link(self._look, words)
        link.clicked.connect(lambda: go())
        return link

    def tell(self, told: Told, filled: bool) -> None:
        """Show what is next here, and whether it is what to do next of all."""
        self.told = told
        for label, words in ((self.kicker, told.kicker), (self.thing, told.title), (self.count, told.count)):
            label.setText(words)
        self.line.setText(told.line)
        self.thing.setToolTip(told.title)
        self.line.setToolTip(told.more or told.line)
        self.bar.show_pieces(told.bar)
        self.button.setText(told.button)
        self.button.filled = filled
        self.button.setAccessibleName(told.button)
        self.button.setAccessibleDescription(" ".join((self.door.name, told.kicker, told.title, told.line)))
        self._colour()

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        """The whole door opens."""
        if event.button() == Qt.MouseButton.LeftButton and self.rect().contains(event.position().toPoint()):
            self.opened.emit()

    def paintEvent(self, event: QPaintEvent) -> None:
        """A card; heavier in the hand's colour where to go on."""
        theme, painter = self._look.theme, QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        filled = self.button.filled
        painter.setPen(QPen(QColor(theme.hand if filled else theme.hair), 2.0 if filled else 1.0))
        painter.setBrush(QColor(theme.base))
        painter.drawRoundedRect(QRectF(self.rect()).adjusted(1, 1, -1, -1), 6, 6)
        painter.end()

    def _colour(self) -> None:
        theme, warns = self._look.theme, self.told is not None and self.told.warns
        paints = (
            (self.name, theme.text, _NAME, True),
            (self.text, theme.faint, 1.0, False),
            (self.kicker, theme.faint, 1.0, False),
            (self.thing, theme.text, _THING, True),
            (self.line, theme.warn if warns else theme.faint, 1.0, warns),
            (self.count, theme.faint, 0.92, False),
        )
        for label, colour, size, bold in paints:
            palette, font = label.palette(), QFont()
            palette.setColor(label.foregroundRole(), QColor(colour))
            font.setPointSizeF(size * font.pointSizeF())
            font.setBold(bold)
            label.setPalette(palette)
            label.setFont(font)
        self.update()
