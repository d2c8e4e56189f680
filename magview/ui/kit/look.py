"""Look of everything on screen: theme, unit of length, size of type, thickness of lines."""

from __future__ import annotations

from PySide6.QtCore import QObject, Signal

from magview.spec.language import lengths_in
from magview.ui.kit.theme import Theme, system_theme

PROJECTED = 1.6
"""Type and lines on a projector, against the desk."""


class Look(QObject):
    """One for the whole program, made by the application and passed in. Widgets read it and follow `changed`."""

    changed = Signal()

    def __init__(self, theme: Theme | None = None, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._theme = theme or system_theme()
        self._inches, self._text_percent, self._line_factor = False, 100, 1.0

    @property
    def theme(self) -> Theme:
        """The colours."""
        return self._theme

    @theme.setter
    def theme(self, theme: Theme) -> None:
        if theme != self._theme:
            self._theme = theme
            self.changed.emit()

    @property
    def inches(self) -> bool:
        """Whether lengths are shown in inches, not in millimetres."""
        return self._inches

    @inches.setter
    def inches(self, inches: bool) -> None:
        if inches != self._inches:
            self._inches = inches
            lengths_in("in" if inches else "mm")
            self.changed.emit()

    @property
    def text_percent(self) -> int:
        """The size of type as a share of the desktop's own [%]."""
        return self._text_percent

    @text_percent.setter
    def text_percent(self, percent: int) -> None:
        if percent != self._text_percent:
            self._text_percent = percent
            self.changed.emit()

    @property
    def line_factor(self) -> float:
        """Thickness of lines against usual, for the back row of a class; type grows with them."""
        return self._line_factor

    @line_factor.setter
    def line_factor(self, factor: float) -> None:
        if factor != self._line_factor:
            self._line_factor = factor
            self.changed.emit()

    @property
    def text_factor(self) -> float:
        """The size of type against the desktop's own, with what the back row needs."""
        return self._text_percent / 100.0 * self._line_factor
