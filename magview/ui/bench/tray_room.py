"""Room of the tray beside the bench's pictures: there before the tray is, so that nothing moves when it comes."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QSize, Signal
from PySide6.QtGui import QFontInfo, QResizeEvent
from PySide6.QtWidgets import QHBoxLayout, QLayout, QVBoxLayout, QWidget

from magview.ui.kit.settings import keep, kept_text

_AWAY = "bench-tray"
"""Name of the setting that says whether the tray was put away."""

_WIDE_EM = 4.2

_LEAST_EM = 3.6
"""Least width at which things can be seen; a small window with a wide page may leave less."""


class _Both(QWidget):
    """A widget that passes on when it has another size."""

    resized = Signal()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """By now what is in it has its new size too."""
        super().resizeEvent(event)
        self.resized.emit()


class TrayRoom(QWidget):
    """A column of one width, or a little less in a small window; put away it is remembered so."""

    shared = Signal()
    """Sent when its neighbour has another width."""

    def __init__(self) -> None:
        super().__init__()
        self.wanted = kept_text(_AWAY) != "away"
        """Whether the tray is to be seen where there is a use for it."""
        self._tray: QWidget | None = None
        self._column = QVBoxLayout(self)
        self._column.setSizeConstraint(QLayout.SizeConstraint.SetNoConstraint)
        self._column.setContentsMargins(0, 0, 0, 0)
        self._size_up()
        self.setVisible(self.wanted)

    def beside(self, widget: QWidget) -> QWidget:
        """Return a widget that holds the tray's room, and another widget beside it."""
        both = _Both()
        both.resized.connect(self.shared)
        row = QHBoxLayout(both)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(0)
        row.addWidget(self)
        row.addWidget(widget, 1)
        return both

    def fill(self, tray: QWidget) -> None:
        """Put the tray here."""
        self._tray = tray
        self._column.addWidget(tray)

    def show_tray(self, shown: bool) -> None:
        """Show the tray, or put it away, from now on."""
        self.wanted = shown
        keep(_AWAY, "" if shown else "away")
        self._set_shown(shown)

    def follow(self, filling: str) -> None:
        """A picture that fills the page has the tray's room too."""
        self._set_shown(self.wanted and not filling)

    def _set_shown(self, shown: bool) -> None:
        self.setVisible(shown)
        both = self.parentWidget()
        layout = both.layout() if both is not None else None
        if layout is not None:
            layout.activate()
        self.shared.emit()

    def changeEvent(self, event: QEvent) -> None:
        """Type of another size needs other room."""
        super().changeEvent(event)
        if event.type() == QEvent.Type.FontChange:
            self._size_up()

    def sizeHint(self) -> QSize:
        """All the width that it may have."""
        return QSize(self.maximumWidth(), super().sizeHint().height())

    def _size_up(self) -> None:
        self.setMinimumWidth(0)
        self.setMaximumWidth(round(_WIDE_EM * QFontInfo(self.font()).pixelSize()))

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Show the tray whole or not at all."""
        super().resizeEvent(event)
        if self._tray is not None:
            self._tray.setVisible(self.width() >= _LEAST_EM * QFontInfo(self.font()).pixelSize())

    def minimumSizeHint(self) -> QSize:
        """None of its own: the page comes first."""
        return QSize(0, 0)
