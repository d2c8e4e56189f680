"""Comparing: a moment is kept, and everything shown afterwards has it as a ghost, with the differences in words."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal
from PySide6.QtWidgets import QLabel, QSizePolicy, QVBoxLayout

from magview.bench.changes import effects
from magview.bench.state import BenchState
from magview.spec.language import tr

if TYPE_CHECKING:
    from magview.ui.bench.page import BenchPage


class Comparing(QObject):
    """The moment kept on a page, its ghost in the pictures, and a line below them that says what is different."""

    changed = Signal(bool)
    """A moment is kept now, or none any more."""

    def __init__(self, page: BenchPage) -> None:
        super().__init__(page)
        self._page = page
        self.words = QLabel()
        self.words.setWordWrap(True)
        self.words.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Minimum)
        self.words.setAccessibleName(tr("Compared with the moment kept"))
        margin = page.fontMetrics().averageCharWidth()
        self.words.setContentsMargins(margin, 0, margin, 0)
        self.words.hide()
        layout = page.layout()
        assert isinstance(layout, QVBoxLayout)
        layout.insertWidget(1, self.words)
        page.model.changed.connect(self.show_state)
        page.look.changed.connect(self.show_words)

    @property
    def kept(self) -> BenchState | None:
        """The moment kept; None for none."""
        return self._page.breaker.ghost.state

    def keep(self, on: bool) -> None:
        """Keep the bench as it is now, or forget the moment kept."""
        page, state = self._page, self._page.model.state if on else None
        pictures = (page.breaker, page.contact, page.drive, page.shaft, page.strip)
        for picture in pictures:
            if picture is not None:
                picture.set_ghost(state)
        self.show_words()
        self.changed.emit(on)

    def show_state(self, state: BenchState, old: BenchState | None = None) -> None:
        """Say what is different now."""
        if self.kept is not None:
            self.show_words()

    def show_words(self) -> None:
        """What is different now, in words."""
        kept = self.kept
        self.words.setVisible(kept is not None)
        if kept is None:
            return
        told = effects(kept, self._page.model.state, numbers=self._page.breaker.numbers)
        words = " ".join(told) if told else tr("Opening and largest gap are the same.")
        text = tr("Dashed: the moment kept. Since then: {words}", words=words)
        if text != self.words.text():
            self.words.setText(text)
