"""The warning of high tension: off the engine too, while nothing grounds the primary."""

from __future__ import annotations

from PySide6.QtWidgets import QLabel, QWidget

from magview.bench.lead_words import WORK_OFF_THE_ENGINE
from magview.bench.state import BenchState, circuit_now
from magview.spec.language import tr
from magview.ui.kit.bench_model import BenchModel


class BenchWarning(QLabel):
    """Shown while the magneto is off the engine with its primary open: then a rotor that snaps makes kilovolts."""

    def __init__(self, model: BenchModel, parent: QWidget | None = None) -> None:
        super().__init__(tr(WORK_OFF_THE_ENGINE), parent)
        self.setWordWrap(True)
        self.setObjectName("caution")
        self.show_state(model.state)
        model.changed.connect(self.show_state)

    def show_state(self, state: BenchState, old: BenchState | None = None) -> None:
        """Follow the bench to its new state."""
        on_engine = state.engaged is not None and state.engaged.mounted
        self.setVisible(not on_engine and circuit_now(state).live)
