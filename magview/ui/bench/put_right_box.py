"""Numbered steps that put a setting right, and the button that shows them on the bench."""

from __future__ import annotations

from functools import partial

from PySide6.QtCore import QEvent
from PySide6.QtWidgets import QHBoxLayout, QLabel, QWidget

from magview.bench.advised import ORDERS, Act, advised, advised_acts, advised_words, slack_words
from magview.bench.state import BenchState, readings
from magview.bench.verdict import faults
from magview.spec.language import tr
from magview.ui.bench.show_me import ShowMe
from magview.ui.kit.bench_model import BenchModel
from magview.ui.kit.inputs import LengthSpin
from magview.ui.kit.look import Look
from magview.ui.kit.section import Section
from magview.ui.kit.steps import Steps


class PutRightBox(Section):
    """The gap wanted in, numbered acts out."""

    def __init__(self, model: BenchModel, look: Look) -> None:
        super().__init__(tr("To put it right"), look)
        self._model = model
        self._acts: tuple[Act, ...] = ()
        row = QHBoxLayout()
        self.wanted = LengthSpin(0.01, 0.0, 5.0, look)
        label = QLabel(tr("For a l&argest gap of"))
        label.setBuddy(self.wanted)
        row.addWidget(label)
        row.addWidget(self.wanted, 1)
        self.steps = Steps(look, tr("Show me, step by step"))
        self.steps.show_me.connect(self._clicked)
        self.orders = QLabel(tr(ORDERS))
        self.orders.setWordWrap(True)
        self.body.addLayout(row)
        self.body.addWidget(self.steps)
        self.body.addWidget(self.orders)
        self.show_me = ShowMe(model, self)
        self.show_me.at_act.connect(self.steps.point_at)
        self.show_me.ended.connect(self._ended)
        self.wanted.entered.connect(self._wanted_entered)
        self.wanted.said.connect(partial(self._said, self.wanted))
        self.fit_rows()

    def placed(self, state: BenchState) -> None:
        """Another magneto: its designed gap."""
        self.show_me.stop()
        self.wanted.show_value(state.magneto.designed_setting.gap_mm)
        self.fit_rows()

    def show_advice(self, state: BenchState) -> None:
        """Show the acts from here; while they are shown on the bench they stay as they were."""
        if self.show_me.running:
            return
        plan = advised(state, self.wanted.exact)
        self._acts = advised_acts(state, plan)
        in_limits = not faults(state.magneto, readings(state))
        if slack_words(state):
            self.setTitle(tr("Before the lock screw is tightened"))
        elif in_limits and self._acts:
            self.setTitle(tr("To come to the gap wanted, opening at the E-gap"))
        else:
            self.setTitle(tr("To put it right"))
        self.steps.button.setEnabled(plan.reachable)
        self.steps.show_steps([act.words for act in self._acts], "" if self._acts else advised_words(state, plan))

    def changeEvent(self, event: QEvent) -> None:
        """Type of another size needs other room."""
        super().changeEvent(event)
        if event.type() == QEvent.Type.FontChange and hasattr(self, "steps"):
            self.fit_rows()

    def fit_rows(self) -> None:
        """Nothing below the advice jumps while a part is dragged: room for the most acts there can be."""
        self.steps.setMinimumHeight(12 * self.fontMetrics().height())

    def halt(self) -> None:
        """End what is shown."""
        self.show_me.stop()

    def _clicked(self) -> None:
        if self.show_me.running:
            self.show_me.stop()
            return
        self.steps.button.setText(tr("Stop"))
        with self._model.asked_by(self.steps.button):
            self.show_me.start(self._acts)

    def _ended(self) -> None:
        self.steps.button.setText(tr("Show me, step by step"))
        self.steps.point_at(-1)
        self.show_advice(self._model.state)

    def _wanted_entered(self, value: float) -> None:
        self.show_me.stop()
        self.show_advice(self._model.state)

    def _said(self, asker: QWidget, sentence: str) -> None:
        with self._model.asked_by(asker):
            self._model.refused.emit(sentence)
