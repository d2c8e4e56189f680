"""A red strip that stays as long as what is dangerous; and the standing warning at the foot of a page."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QLineF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QLabel, QSizePolicy, QVBoxLayout, QWidget

from magview.spec.language import tr
from magview.ui.kit.cautions import CAUTION
from magview.ui.kit.look import Look
from magview.ui.kit.style import tint


class Strip(QWidget):
    """Over the whole width of a page. It has no button to close it: it goes with what it tells of."""

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._look = look
        self.words, self.notes = QLabel(), QLabel()
        self.words.setAccessibleName(tr("Danger"))
        self.notes.setAccessibleName(tr("Note"))
        column = QVBoxLayout(self)
        line = self.fontMetrics().height()
        column.setContentsMargins(line, line // 2, line // 2, line // 2)
        for label in (self.words, self.notes):
            label.setWordWrap(True)
            label.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Minimum)
            column.addWidget(label)
        look.changed.connect(self._colour)
        self._colour()
        self.show_causes(())

    def show_causes(self, dangers: Sequence[str], notes: Sequence[str] = ()) -> None:
        """Say what is dangerous now, and what is to be known besides; with neither the strip is gone."""
        self.words.setText("\n".join(f"⚠ {sentence}" for sentence in dangers))
        self.notes.setText("\n".join(notes))
        for label, told in ((self.words, dangers), (self.notes, notes)):
            label.setVisible(bool(told))
        self.setVisible(bool(dangers or notes))
        self.update()

    def _colour(self) -> None:
        theme = self._look.theme
        tint(self.words, theme.bad, bold=True)
        tint(self.notes, theme.text)
        self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        """Red where there is danger, with a bar at the edge for who sees no red."""
        theme, painter = self._look.theme, QPainter(self)
        danger = bool(self.words.text())
        painter.fillRect(self.rect(), QColor(theme.bad_fill if danger else theme.hand_fill))
        bar = QRectF(0, 0, 0.5 * self.fontMetrics().height(), self.height())
        painter.fillRect(bar, QColor(theme.bad if danger else theme.hand))


class Foot(QLabel):
    """The standing warning, quiet, under a hair line."""

    def __init__(self, look: Look, words: str = "", parent: QWidget | None = None) -> None:
        super().__init__(words or tr(CAUTION), parent)
        self._look = look
        self.setWordWrap(True)
        self.setObjectName("caution")
        self.setContentsMargins(0, round(0.5 * self.fontMetrics().height()), 0, 0)

    def paintEvent(self, event: QPaintEvent) -> None:
        """The words, and the line over them."""
        super().paintEvent(event)
        painter = QPainter(self)
        painter.setPen(QPen(QColor(self._look.theme.hair), 1.0, Qt.PenStyle.SolidLine))
        painter.drawLine(QLineF(0.5, 0.5, self.width() - 0.5, 0.5))
