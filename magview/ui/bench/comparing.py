"""Comparing: a moment is kept, and everything shown afterwards has it as a ghost, with the differences in words."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Protocol

from PySide6.QtCore import QObject, Signal
from PySide6.QtWidgets import QLabel, QSizePolicy

from magview.bench.changes import effects
from magview.bench.state import BenchState
from magview.spec.language import tr
from magview.ui.kit.bench_model import BenchModel
from magview.ui.kit.look import Look
from magview.ui.pictures.breaker_view import BreakerView


class ShowsGhost(Protocol):
    """A picture that can show a moment kept behind the present one."""

    def set_ghost(self, state: BenchState | None) -> None:
        """Show this moment as a ghost; None for none."""


class Comparing(QObject):
    """The moment kept, its ghost in the pictures, and a line for their page that says the differences."""

    changed = Signal(bool)
    """A moment is kept now, or none any more."""

    def __init__(self, model: BenchModel, look: Look, breaker: BreakerView, others: Sequence[ShowsGhost]) -> None:
        super().__init__(breaker)
        self._model, self._breaker = model, breaker
        self._pictures: tuple[ShowsGhost, ...] = (breaker, *others)
        self.words = QLabel()
        self.words.setWordWrap(True)
        self.words.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Minimum)
        self.words.setAccessibleName(tr("Compared with the moment kept"))
        margin = breaker.fontMetrics().averageCharWidth()
        self.words.setContentsMargins(margin, 0, margin, 0)
        self.words.hide()
        model.changed.connect(self.show_state)
        look.changed.connect(self.show_words)

    @property
    def kept(self) -> BenchState | None:
        """The moment kept; None for none."""
        return self._breaker.ghost.state

    def keep(self, on: bool) -> None:
        """Keep the bench as it is now, or forget the moment kept."""
        state = self._model.state if on else None
        for picture in self._pictures:
            picture.set_ghost(state)
        self.show_words()
        self.changed.emit(on)

    def show_state(self, state: BenchState, old: BenchState | None = None) -> None:
        """Follow the bench while a moment is kept."""
        if self.kept is not None:
            self.show_words()

    def show_words(self) -> None:
        """Say the differences from the moment kept."""
        kept = self.kept
        self.words.setVisible(kept is not None)
        if kept is None:
            return
        told = effects(kept, self._model.state, numbers=self._breaker.numbers)
        words = " ".join(told) if told else tr("Opening and largest gap are the same.")
        text = tr("Dashed: the moment kept. Since then: {words}", words=words)
        if text != self.words.text():
            self.words.setText(text)
