"""How panels and pictures are put side by side."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject, Qt
from PySide6.QtWidgets import QScrollArea, QSplitter, QWidget


class TallPanel(QScrollArea):
    """A panel that scrolls up and down only: it is always as wide as its words need."""

    def __init__(self, panel: QWidget) -> None:
        super().__init__()
        self._panel, self._font = panel, panel.font()
        self.setWidget(panel)
        self.setWidgetResizable(True)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setFrameShape(QScrollArea.Shape.NoFrame)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        panel.installEventFilter(self)
        self._widen()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Words have changed: give them the width they need."""
        if event.type() == QEvent.Type.LayoutRequest:
            self._widen()
        return super().eventFilter(watched, event)

    def _widen(self) -> None:
        needed = self._panel.minimumSizeHint().width() + self.verticalScrollBar().sizeHint().width()
        # It does not shrink again while the type stays, so that the pictures do not jump while numbers change.
        if self._panel.font() != self._font:
            self._font = self._panel.font()
            self.setMinimumWidth(needed)
        self.setMinimumWidth(max(self.minimumWidth(), needed))


def column(upper: QWidget, lower: QWidget) -> QSplitter:
    """Two pictures one above the other, the upper one the larger."""
    pair = QSplitter(Qt.Orientation.Vertical)
    pair.addWidget(upper)
    pair.addWidget(lower)
    pair.setStretchFactor(0, 5)
    pair.setStretchFactor(1, 2)
    pair.setCollapsible(0, False)
    pair.setSizes([500, 200])
    return pair
