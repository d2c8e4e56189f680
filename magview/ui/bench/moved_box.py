"""A lamp reading that nobody expected: what was moved? Explanations, best first."""

from __future__ import annotations

from PySide6.QtWidgets import QGridLayout, QLabel

from magview.bench.apply import LAMP_LIMIT_DEG
from magview.bench.lamp import explanations, foretold, slack_deg
from magview.bench.lamp_words import explanation_words, place_words
from magview.bench.state import BenchState
from magview.spec.language import tr
from magview.ui.kit.bench_model import BenchModel
from magview.ui.kit.inputs import BtdcSpin
from magview.ui.kit.look import Look
from magview.ui.kit.section import Section


class MovedBox(Section):
    """A reading in, explanations out; nothing of the bench is changed by asking."""

    def __init__(self, model: BenchModel, look: Look) -> None:
        super().__init__(tr("It now reads something else: what was moved?"), look)
        self._model = model
        grid = QGridLayout()
        grid.setContentsMargins(0, 0, 0, 0)
        self.body.addLayout(grid)
        grid.setColumnStretch(1, 1)
        label = QLabel(tr("It now rea&ds"))
        self.reads = BtdcSpin(0.5, -LAMP_LIMIT_DEG, LAMP_LIMIT_DEG)
        self.reads.setAccessibleName(tr("The lamp now reads, to be explained"))
        self.reads.refuse_beyond()
        self.reads.said.connect(self._said)
        label.setBuddy(self.reads)
        grid.addWidget(label, 0, 0)
        grid.addWidget(self.reads, 0, 1)
        self.found = QLabel()
        self.found.setWordWrap(True)
        self.found.setAccessibleName(tr("What explains the reading, best first"))
        grid.addWidget(self.found, 1, 0, 1, 2)
        self._asked: float | None = None
        self.reads.entered.connect(self._entered)
        self.reads.confirmed.connect(self._entered)

    def show_explanations(self, state: BenchState) -> None:
        """Explain the reading asked about, by the bench as it is now."""
        engaged = state.engaged
        if engaged is None:
            return
        should = foretold(state, engaged.side).btdc_deg
        if should != should:
            self.found.setText(tr("With this setting the contacts never open and close: there is no timing to read."))
            return
        if self._asked is None:
            self.reads.show_value(should)
            self.found.setText(tr("By what is entered it should read {should}.", should=place_words(should)))
            return
        lines = [
            tr(
                "It should read {should}. Two readings may be {slack:deg} apart.",
                should=place_words(should),
                slack=slack_deg(engaged.installation),
            )
        ]
        found = explanations(state, engaged.side, self._asked)
        lines += [f"{place}. {_sentence(explanation_words(one))}" for place, one in enumerate(found, 1)]
        self.found.setText("\n".join(lines))

    def _entered(self, value: float) -> None:
        self._asked = value
        self.show_explanations(self._model.state)

    def _said(self, sentence: str) -> None:
        with self._model.asked_by(self.reads):
            self._model.refused.emit(sentence)


def _sentence(words: str) -> str:
    return words[0].upper() + words[1:]
