"""Checks before teeth are planned: questions with a tick each, and the reading that is to be confirmed."""

from __future__ import annotations

from PySide6.QtWidgets import QCheckBox, QLabel, QVBoxLayout, QWidget

from magview.bench.actions import CheckFirst
from magview.bench.lamp import CHECKS, Standing, look_first, questions, standing
from magview.bench.lamp_words import CHECK_WORDS, LOOK_FIRST, LOOK_FIRST_WHY, unanswered_words
from magview.bench.state import BenchState, Check, Engaged
from magview.spec.language import tr
from magview.ui.kit.bench_model import BenchModel
from magview.ui.kit.style import tint
from magview.ui.kit.theme import Theme


class LookFirst(QWidget):
    """Says what to look at; shown for a large error, and for a reading that the acts before it contradict."""

    def __init__(self, model: BenchModel) -> None:
        super().__init__()
        self._model = model
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        self.words = QLabel()
        self.words.setWordWrap(True)
        self.why = QLabel(tr(LOOK_FIRST_WHY))
        self.why.setWordWrap(True)
        column.addWidget(self.words)
        column.addWidget(self.why)
        self.ticks: dict[Check, QCheckBox] = {}
        for check in CHECKS:
            box = QCheckBox(tr(CHECK_WORDS[check]))
            box.clicked.connect(self._ticked)
            column.addWidget(box)
            self.ticks[check] = box

    def show_questions(self, state: BenchState, engaged: Engaged, theme: Theme) -> None:
        """Show what is to be looked at for the magneto in view; nothing where nothing is."""
        asked = set(questions(state, engaged.side))
        doubted = standing(state, engaged.side) is Standing.CONTRADICTED
        if doubted or (engaged.mounting.foretold is not None and "reading" in engaged.mounting.checked):
            asked.add("reading")
        for check, box in self.ticks.items():
            box.setVisible(check in asked)
            box.setChecked(check in engaged.mounting.checked)
        large = look_first(state, engaged.side)
        words = [tr(LOOK_FIRST)] if large else []
        if refused := unanswered_words(state, engaged.side):
            words.append(refused)
        self.words.setText(" ".join(words))
        self.words.setVisible(bool(words))
        self.why.setVisible(large)
        tint(self.words, theme.bad, bold=True)
        self.setVisible(bool(words) or bool(asked))

    def _ticked(self) -> None:
        engaged = self._model.state.engaged
        if engaged is None:
            return
        for check, box in self.ticks.items():
            if box.isChecked() != (check in engaged.mounting.checked):
                self._model.send(CheckFirst(engaged.side, check, box.isChecked()))
