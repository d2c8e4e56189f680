"""Panels and pictures side by side."""

from __future__ import annotations

from collections.abc import Callable
from typing import Protocol

from PySide6.QtCore import QEvent, QObject, QSize, Qt
from PySide6.QtGui import QResizeEvent, QShowEvent
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


_REFIT = {QEvent.Type.ShowToParent, QEvent.Type.HideToParent, QEvent.Type.FontChange, QEvent.Type.LayoutRequest}
"""Events of a pinned notice that change the room it needs."""


class TallPanel(QScrollArea):
    """A panel that scrolls up and down only: it is always as wide as its words need.

    It is built when it is first seen, so that the window does not wait for panels behind others.
    """

    def __init__(self, build: Callable[[], Panel]) -> None:
        super().__init__()
        self._build = build
        self._panel: QWidget | None = None
        self._pinned: QWidget | None = None
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
            pinned = getattr(panel, "pinned", None)
            if isinstance(pinned, QWidget):
                self._pin(pinned)
        return self._panel

    def showEvent(self, event: QShowEvent) -> None:
        """Seen for the first time, it is built."""
        self.panel()
        super().showEvent(event)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Words have changed: give them the width they need."""
        if watched is self._pinned:
            if event.type() in _REFIT:
                self._place_pinned()
        elif event.type() == QEvent.Type.LayoutRequest:
            self._widen()
        return super().eventFilter(watched, event)

    def _widen(self) -> None:
        if self._panel is None:
            return
        needed = self._panel.minimumSizeHint().width() + self.verticalScrollBar().sizeHint().width()
        # It does not shrink again while the type stays, so that the pictures do not jump while numbers change.
        self.setMinimumWidth(max(self.minimumWidth(), needed))

    def _pin(self, pinned: QWidget) -> None:
        """Keep a panel's notice at the foot, outside the rows: when it comes none of them moves."""
        shown = not pinned.isHidden()
        pinned.setParent(self)
        pinned.setVisible(shown)
        self._pinned = pinned
        pinned.installEventFilter(self)
        self._place_pinned()

    def _place_pinned(self) -> None:
        pinned = self._pinned
        if pinned is None:
            return
        wide = self.width() - 16 - self.verticalScrollBar().sizeHint().width()
        high = pinned.heightForWidth(wide) if not pinned.isHidden() else 0
        self.setViewportMargins(0, 0, 0, high + 4 if high else 0)
        pinned.setGeometry(8, self.height() - high - 2, wide, high)

    def event(self, event: QEvent) -> bool:
        """A pinned notice says something longer or shorter."""
        if event.type() == QEvent.Type.LayoutRequest:
            self._place_pinned()
        return super().event(event)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """A pinned notice keeps to the foot."""
        super().resizeEvent(event)
        self._place_pinned()

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
