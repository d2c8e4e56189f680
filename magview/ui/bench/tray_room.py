"""Room of the tray beside the bench's pictures: there before the tray is, so that nothing moves when it comes."""

from __future__ import annotations

from PySide6.QtCore import QEvent, Signal
from PySide6.QtGui import QFontInfo, QResizeEvent
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from magview.ui.kit.settings import keep, kept_text

_AWAY = "bench-tray"
"""Name of the setting that says whether the tray was put away."""

_WIDE_EM = 4.2


class _Both(QWidget):
    """A widget that passes on when it has another size."""

    resized = Signal()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """By now what is in it has its new size too."""
        super().resizeEvent(event)
        self.resized.emit()


class TrayRoom(QWidget):
    """A column of fixed width; put away it is remembered so."""

    shared = Signal()
    """Sent when its neighbour has another width."""

    def __init__(self) -> None:
        super().__init__()
        self.wanted = kept_text(_AWAY) != "away"
        """Whether the tray is to be seen where there is a use for it."""
        self._column = QVBoxLayout(self)
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

    def _size_up(self) -> None:
        self.setFixedWidth(round(_WIDE_EM * QFontInfo(self.font()).pixelSize()))
