"""Panels and pictures side by side."""

from __future__ import annotations

from collections.abc import Callable
from typing import Protocol

from PySide6.QtCore import QEvent, QObject, QSize, Qt
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import QScrollArea, QSplitter, QWidget

_FRAME = QSize(16, 60)
"""Room for what the desktop puts round a window: its frame and title, which nobody knows before it is shown [px]."""


def first_size(room: QSize) -> QSize:
    """Size of a window on a screen that leaves this room: all of it is seen, with its foot line [px]."""
    return QSize(1280, 720).boundedTo(room - _FRAME)


class Panel(Protocol):
    """Widget that the window holds and tells of changes."""

    def halt(self) -> None:
        """The window closes: end what is running."""


class TallPanel(QScrollArea):
    """A panel that scrolls up and down only: it is always as wide as its words need.

    It is built when it is first seen, so that the window does not wait for panels behind others.
    """

    def __init__(self, build: Callable[[], Panel]) -> None:
        super().__init__()
        self._build = build
        self._panel: QWidget | None = None
        self.setWidgetResizable(True)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setFrameShape(QScrollArea.Shape.NoFrame)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)

    def panel(self) -> QWidget:
        """The panel, built now if it has not been."""
        if self._panel is None:
            panel = self._build()
            assert isinstance(panel, QWidget)
            self._panel = panel
            self.setWidget(self._panel)
            self._panel.installEventFilter(self)
            self._widen()
        return self._panel

    def showEvent(self, event: QShowEvent) -> None:
        """Seen for the first time, it is built."""
        self.panel()
        super().showEvent(event)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Words have changed: give them the width they need."""
        if event.type() == QEvent.Type.LayoutRequest:
            self._widen()
        return super().eventFilter(watched, event)

    def _widen(self) -> None:
        if self._panel is None:
            return
        needed = self._panel.minimumSizeHint().width() + self.verticalScrollBar().sizeHint().width()
        # It does not shrink again while the type stays, so that the pictures do not jump while numbers change.
        self.setMinimumWidth(max(self.minimumWidth(), needed))

    def refit(self) -> None:
        """Type of another size: take just the width that is needed now."""
        if self._panel is not None:
            layout = self._panel.layout()
            if layout is not None:
                layout.invalidate()
                layout.activate()
        self.setMinimumWidth(0)
        self._widen()


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
