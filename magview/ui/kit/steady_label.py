"""Words that change while somebody works with what stands below them."""

from __future__ import annotations

from collections.abc import Iterable

from PySide6.QtCore import QRect, Qt
from PySide6.QtWidgets import QLabel


class SteadyLabel(QLabel):
    """Wrapped words with room for the longest they may become, so that nothing below moves with them."""

    def __init__(self) -> None:
        super().__init__()
        self.setWordWrap(True)
        self.setAlignment(Qt.AlignmentFlag.AlignTop)
        self._longest: tuple[str, ...] = ()

    def keep_room_for(self, longest: Iterable[str]) -> None:
        """Be as tall as the tallest of these texts at least, at any width and size of type."""
        texts = tuple(longest)
        if texts != self._longest:
            self._longest = texts
            self.updateGeometry()

    def heightForWidth(self, width: int) -> int:
        """The height of the words, or of the tallest there is room for [px]."""
        metrics, room = self.fontMetrics(), QRect(0, 0, width, 10_000)
        tallest = (metrics.boundingRect(room, Qt.TextFlag.TextWordWrap, text).height() for text in self._longest)
        return max(super().heightForWidth(width), *tallest, 0)
