"""A tooth-shift plan as one large screen beside the engine: the next step alone, in black on white."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QByteArray, QRect, QRectF, Qt
from PySide6.QtGui import QColor, QFont, QFontMetrics, QKeyEvent, QPainter, QPaintEvent
from PySide6.QtSvg import QSvgRenderer
from PySide6.QtWidgets import QDialog, QPushButton, QSizePolicy, QVBoxLayout, QWidget

from magview.job.shift_html import ShiftStep
from magview.spec.language import tr

_WRAPPED = int(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignTop | Qt.TextFlag.TextWordWrap)
_LEAST_PX = 12
_ROOM = 16


class StepView(QWidget):
    """One step, in the largest type that the room allows."""

    def __init__(self) -> None:
        super().__init__()
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self._title, self._words = "", ""
        self._drawings: list[QSvgRenderer] = []

    def show_step(self, step: ShiftStep) -> None:
        """Show a step; a screen reader is told its words."""
        self._title, self._words = step.title, "\n".join(step.words)
        self._drawings = [QSvgRenderer(QByteArray(drawn.encode("utf-8"))) for drawn in step.drawings]
        self.setAccessibleName(step.title)
        self.setAccessibleDescription(self._words)
        self.update()

    def fitted(self) -> tuple[int, QRect, QRect, QRect]:
        """Size of type [px], and the places of title, drawings and words."""
        inside = self.rect().adjusted(_ROOM, _ROOM, -_ROOM, -_ROOM)
        drawn = round(0.52 * inside.height()) if self._drawings else 0
        for size in range(max(_LEAST_PX, inside.height() // 14), _LEAST_PX - 1, -1):
            title = self._measured(size * 5 // 4, inside, self._title, bold=True)
            words = self._measured(size, inside, self._words)
            if title.height() + drawn + words.height() + 2 * _ROOM <= inside.height():
                break
        title.moveTopLeft(inside.topLeft())
        picture = QRect(inside.left(), title.bottom() + _ROOM, inside.width(), drawn)
        words.moveTopLeft(picture.bottomLeft())
        words.translate(0, _ROOM)
        return size, title, picture, words

    @staticmethod
    def _measured(size: int, inside: QRect, text: str, *, bold: bool = False) -> QRect:
        room = QRect(0, 0, inside.width(), 100000)
        return QFontMetrics(_font(size, bold)).boundingRect(room, _WRAPPED, text)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Title, drawings, words."""
        painter = QPainter(self)
        painter.fillRect(self.rect(), QColor("white"))
        painter.setPen(QColor("black"))
        size, title, picture, words = self.fitted()
        painter.setFont(_font(size * 5 // 4, True))
        painter.drawText(title.adjusted(0, 0, self.width(), 0), _WRAPPED, self._title)
        painter.setFont(_font(size, False))
        wide = QRect(words.left(), words.top(), self.width() - 2 * _ROOM, words.height())
        painter.drawText(wide, _WRAPPED, self._words)
        for drawn in self._drawings:
            of = drawn.defaultSize()
            scale = min(picture.width() / of.width(), picture.height() / of.height())
            drawn.render(painter, QRectF(picture.left(), picture.top(), of.width() * scale, of.height() * scale))


class ShiftScreen(QDialog):
    """Steps one after the other: the button goes on, Left or Backspace goes back, Esc closes."""

    def __init__(self, parent: QWidget, title: str, steps: Sequence[ShiftStep]) -> None:
        super().__init__(parent)
        self.setWindowTitle(title)
        self._steps, self.at = tuple(steps), 0
        self.view, self.forward = StepView(), QPushButton()
        font = self.forward.font()
        font.setPixelSize(32)
        font.setBold(True)
        self.forward.setFont(font)
        self.forward.setMinimumHeight(84)
        self.forward.clicked.connect(self._forward)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(self.view, 1)
        column.addWidget(self.forward)
        self.forward.setFocus()
        self._show()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Go back and on by key."""
        if event.key() in (Qt.Key.Key_Left, Qt.Key.Key_Backspace):
            self.at = max(0, self.at - 1)
            self._show()
        elif event.key() == Qt.Key.Key_Right and self.at + 1 < len(self._steps):
            self._forward()
        else:
            super().keyPressEvent(event)

    def _forward(self) -> None:
        if self.at + 1 == len(self._steps):
            self.accept()
            return
        self.at += 1
        self._show()

    def _show(self) -> None:
        self.view.show_step(self._steps[self.at])
        last = self.at + 1 == len(self._steps)
        place = tr("{place} of {all}", place=self.at + 1, all=len(self._steps))
        self.forward.setText(f"{tr('Close') if last else tr('Next')} · {place}")


def _font(size: int, bold: bool) -> QFont:
    font = QFont()
    font.setPixelSize(size)
    font.setBold(bold)
    return font
