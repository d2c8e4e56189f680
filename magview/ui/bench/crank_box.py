"""The crank: its place by number, and the ways to firing and to top dead centre, coming with rotation."""

from __future__ import annotations

from PySide6.QtCore import QEvent
from PySide6.QtWidgets import QHBoxLayout, QLabel, QPushButton

from magview.bench.actions import TurnCrank
from magview.bench.lamp_words import play_words
from magview.bench.state import BenchState, crank_deg, firing_btdc_deg
from magview.spec.language import tr
from magview.ui.kit.bench_model import BenchModel
from magview.ui.kit.inputs import CrankSpin
from magview.ui.kit.look import Look
from magview.ui.kit.notice import Notice
from magview.ui.kit.section import Section


class CrankBox(Section):
    """The crank's angle, and a warning while it is worth nothing."""

    def __init__(self, model: BenchModel, look: Look) -> None:
        super().__init__(tr("Crank"), look)
        self._model = model
        row = QHBoxLayout()
        self.crank = CrankSpin(1.0, -360.0, 360.0)
        self.crank.setToolTip(tr("Crank from No. 1's firing top dead centre, positive the way the engine turns"))
        label = QLabel(tr("Cran&k"))
        label.setBuddy(self.crank)
        to_firing, to_tdc = QPushButton(tr("To firing")), QPushButton(tr("To TDC"))
        to_firing.clicked.connect(self._to_firing)
        to_tdc.clicked.connect(self._to_tdc)
        self.crank.entered.connect(self._crank_entered)
        self.crank.said.connect(self._said)
        for widget, stretch in ((label, 0), (self.crank, 1), (to_firing, 0), (to_tdc, 0)):
            row.addWidget(widget, stretch)
        self.play = Notice(look)
        self.body.addLayout(row)
        self.body.addWidget(self.play)
        self.fit_rows()

    def show_crank(self, state: BenchState) -> None:
        """Show where the crank stands."""
        self.crank.show_value(_one_cycle(crank_deg(state)))
        play = play_words(state)
        self.play.say(tr("⚠ {play}: no angle of the crank counts.", play=play) if play else "")

    def changeEvent(self, event: QEvent) -> None:
        """Type of another size needs other room."""
        super().changeEvent(event)
        if event.type() == QEvent.Type.FontChange and hasattr(self, "crank"):
            self.fit_rows()

    def fit_rows(self) -> None:
        """Room for any angle at the present size of type."""
        self.crank.setMinimumWidth(self.fontMetrics().horizontalAdvance(self.crank.textFromValue(-300.0)) + 34)

    def _said(self, sentence: str) -> None:
        with self._model.asked_by(self.crank):
            self._model.refused.emit(sentence)

    def _crank_entered(self, value: float) -> None:
        # The box shows one cycle; the crank goes on from where it is, not back by whole turns.
        crank = crank_deg(self._model.state)
        self._model.send(TurnCrank(crank + value - _one_cycle(crank)))

    def _to_firing(self) -> None:
        engaged = self._model.state.engaged
        if engaged is not None:
            fires = firing_btdc_deg(self._model.state, engaged.side)
            if fires == fires:
                self._approach(-fires)

    def _to_tdc(self) -> None:
        self._approach(0.0)

    def _approach(self, crank: float) -> None:
        """Turn it with rotation, as every reading should be taken, so that the coupling's play is taken up."""
        gesture = self._model.gesture()
        now = crank_deg(self._model.state)
        goal = now + _one_cycle(crank - now)
        if goal < now + 1e-9:
            self._model.send(TurnCrank(goal - 20.0), gesture)
        self._model.send(TurnCrank(goal), gesture)


def _one_cycle(crank_deg_: float) -> float:
    """A crank angle within the cycle about No. 1's firing top dead centre [crank deg], −360…360."""
    return (crank_deg_ + 360.0) % 720.0 - 360.0
