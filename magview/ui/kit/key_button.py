"""A button that says which key presses it."""

from __future__ import annotations

from PySide6.QtCore import QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFont, QFontInfo, QFontMetrics, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QPushButton, QSizePolicy

from magview.spec.language import tr
from magview.ui.kit.look import Look


class KeyButton(QPushButton):
    """A button with the key it answers to; the one to press next is filled."""

    def __init__(self, look: Look, letter: str, words: str = "") -> None:
        super().__init__(words)
        self._look, self._letter = look, letter
        self.filled = False
        self.setAutoDefault(False)
        self.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Fixed)
        self.setToolTip(tr("Key {letter}", letter=letter))

    def sizeHint(self) -> QSize:
        """As high as a hand needs."""
        return QSize(0, round(2.8 * QFontInfo(self.font()).pixelSize()))

    minimumSizeHint = sizeHint

    def paintEvent(self, event: QPaintEvent) -> None:
        """Words and key, in the middle."""
        theme, painter = self._look.theme, QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        edge = theme.hand if self.filled or self.hasFocus() else theme.hair
        fill = theme.hand if self.filled else theme.hand_fill if self.isDown() or self.underMouse() else theme.paper
        painter.setPen(QPen(QColor(edge), 1.0))
        painter.setBrush(QColor(fill))
        painter.drawRoundedRect(QRectF(self.rect()).adjusted(1, 1, -1, -1), 4, 4)
        ink = QColor(theme.on_hand if self.filled else theme.text)
        if self.hasFocus():
            painter.setPen(QPen(ink if self.filled else QColor(theme.hand), 2.0))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRoundedRect(QRectF(self.rect()).adjusted(4, 4, -4, -4), 3, 3)
        em = QFontInfo(self.font()).pixelSize()
        font = QFont(self.font())
        font.setPointSizeF(1.15 * font.pointSizeF())
        font.setBold(self.filled)
        painter.setFont(font)
        painter.setPen(ink)
        cap = max(1.6 * em, QFontMetrics(self.font()).horizontalAdvance(self._letter) + 0.9 * em)
        room = self.width() - cap - 3 * em
        words = painter.fontMetrics().elidedText(self.text(), Qt.TextElideMode.ElideRight, round(room))
        wide = painter.fontMetrics().horizontalAdvance(words)
        left = (self.width() - wide - cap - 0.6 * em) / 2
        box = QRectF(left, 0, wide + em, self.height())
        painter.drawText(box, Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft, words)
        key = QRectF(left + wide + 0.6 * em, (self.height() - 1.6 * em) / 2, cap, 1.6 * em)
        painter.setPen(QPen(ink, 1.0))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawRoundedRect(key, 3, 3)
        font.setBold(False)
        painter.setFont(font)
        painter.drawText(key, Qt.AlignmentFlag.AlignCenter, self._letter)
        painter.end()
