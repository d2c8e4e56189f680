"""Reasons of refusals beside the control that asked: the status bar says them too, but far away."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject, QPoint, Qt
from PySide6.QtGui import QKeyEvent, QMouseEvent, QPalette
from PySide6.QtWidgets import QApplication, QFrame, QLabel, QWidget

from magview.ui.kit.pictured import Pictured

_ASIDE = 8
"""Least distance from the panel's edges [px]."""

_ENDING = (Qt.Key.Key_Return, Qt.Key.Key_Enter, Qt.Key.Key_Tab, Qt.Key.Key_Backtab)
_HANDLED = (QEvent.Type.KeyPress, QEvent.Type.MouseButtonPress, QEvent.Type.Wheel)
"""Events of a hand at a control: the sentence about the entry before it is then out of date."""


class Callout(QLabel):
    """A slip of paper laid over a panel. The next thing done takes it away, or a click, or going elsewhere."""

    def __init__(self, panel: QWidget, model: Pictured) -> None:
        super().__init__(panel)
        self._panel, self._model = panel, model
        self._beside: QWidget | None = None
        self.hide()
        self.setWordWrap(True)
        self.setMargin(4)
        self.setFrameStyle(QFrame.Shape.Box | QFrame.Shadow.Plain)
        self.setAutoFillBackground(True)
        self.setBackgroundRole(QPalette.ColorRole.ToolTipBase)
        self.setForegroundRole(QPalette.ColorRole.ToolTipText)
        model.refused.connect(self._refused)
        model.changed.connect(self._done)
        application = QApplication.instance()
        assert isinstance(application, QApplication)
        application.focusChanged.connect(self._gone_elsewhere)

    def _refused(self, sentence: str) -> None:
        control = self._model.asker
        if not isinstance(control, QWidget) or not self._panel.isAncestorOf(control):
            self.hide()
            return
        if self._beside is not control:
            if self._beside is not None:
                self._beside.removeEventFilter(self)
            control.installEventFilter(self)
        self._beside = control
        at = control.mapTo(self._panel, QPoint(0, control.height() + 2))
        self.lay_at(sentence, at, control.height() + 4)

    def lay_at(self, sentence: str, at: QPoint, spared: int = 0) -> None:
        """Say a sentence at a point of the panel, or above it, the height of what was asked for left free [px]."""
        self.setText(f"✗ {sentence[0].upper()}{sentence[1:].rstrip('.')}.")
        frame = 2 * (self.margin() + self.frameWidth())
        one_line = self.fontMetrics().horizontalAdvance(self.text()) + frame + 2
        width = min(one_line, self._widest(), self._panel.width() - 2 * _ASIDE)
        self.resize(width, self.heightForWidth(width))
        if at.y() + self.height() > self._panel.height():
            at.setY(max(0, at.y() - spared - self.height()))
        at.setX(max(_ASIDE, min(at.x(), self._panel.width() - _ASIDE - width)))
        self.move(at)
        self.raise_()
        self.show()

    def _widest(self) -> int:
        return self._panel.width()

    def _done(self, new: object, old: object) -> None:
        self.hide()

    def _gone_elsewhere(self, old: QWidget | None, new: QWidget | None) -> None:
        beside = self._beside
        if new is not None and beside is not None and new is not beside and not beside.isAncestorOf(new):
            self.hide()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """The control is used again: an entry that is taken need not change anything the model tells of."""
        # The key that ends an entry is the one that brought the sentence.
        ends = isinstance(event, QKeyEvent) and event.key() in _ENDING
        if event.type() in _HANDLED and not ends:
            self.hide()
        return super().eventFilter(watched, event)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Read, and put away."""
        self.hide()
