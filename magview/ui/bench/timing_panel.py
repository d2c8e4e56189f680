"""Timing to the engine: lamp readings, teeth, the planner's moves, synchronising, top dead centre."""

from __future__ import annotations

from itertools import pairwise

from PySide6.QtCore import Signal
from PySide6.QtGui import QMoveEvent, QShowEvent
from PySide6.QtWidgets import QLabel, QVBoxLayout, QWidget

from magview.bench.drive_words import adjusted_words, impulse_words, propeller_words
from magview.bench.engine_words import firing_order_words
from magview.bench.four_conditions import four_at_opening
from magview.bench.lamp_words import NOT_READ
from magview.bench.state import BenchState, firing_btdc_deg, mounting_of
from magview.bench.timing import both_words, synchronising
from magview.physics.engine.coupling import Move
from magview.spec.language import marked, tr
from magview.ui.bench.conditions_box import ConditionsBox
from magview.ui.bench.crank_box import CrankBox
from magview.ui.bench.lamp_box import SIDES, LampBox
from magview.ui.bench.moved_box import MovedBox
from magview.ui.bench.plan_box import PlanBox
from magview.ui.bench.stop_box import StopBox
from magview.ui.bench.teeth_box import TeethBox
from magview.ui.kit.bench_model import BenchModel
from magview.ui.kit.callout import Callout
from magview.ui.kit.look import Look
from magview.ui.kit.section import Section

MAKING_SAFE = marked(
    "Before turning the crank: fuel off, mixture cut off, throttle closed, switch off, each switch lead grounded and "
    "proved, plugs out, hanging plug leads grounded or kept clear, wheels chocked, nobody in the propeller's arc. "
    "Paint marks on disc, both flanges and engine before taking anything apart; move one tooth at a "
    "time. End every reading coming with rotation: a crank turned back brings the play of the whole drive into it. "
    "The maker's current manual and local rules govern."
)

_TITLES = {
    "single": (marked("Teeth moved from as found"), marked("Moves")),
    "left": (marked("Teeth moved from as found, left magneto"), marked("Moves for the left")),
    "right": (marked("Teeth moved from as found, right magneto"), marked("Moves for the right")),
}
"""Of the teeth and of the plan, by the magneto in view."""


class TimingPanel(QWidget):
    """Entries that send actions, and what physics says of the timing."""

    previewed = Signal(object)
    """The move to preview, as the plan says, or None."""

    def __init__(self, model: BenchModel, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._model, self.look = model, look
        layout = QVBoxLayout(self)
        layout.setContentsMargins(8, 4, 8, 4)
        layout.setSpacing(9)
        self.none = QLabel(tr("This magneto is not on an engine. Open an installation to time it to one."))
        self.none.setWordWrap(True)
        layout.addWidget(self.none)
        self.adjusted, self.impulse, self.propeller = QLabel(), QLabel(), QLabel()
        for words in (self.impulse, self.adjusted, self.propeller):
            words.setWordWrap(True)
            layout.addWidget(words)
        first = QLabel(
            tr("⚠ Treat the propeller as live: make safe by the list at the foot. Plugs out alone ends no danger.")
        )
        first.setWordWrap(True)
        layout.addWidget(first)
        self.plan, self.stop = PlanBox(model, look), StopBox(look)
        self.plan.previewed.connect(self.previewed)
        self.stop.said.connect(model.refused)
        self.lamp, self.crank, self.teeth = LampBox(model, look), CrankBox(model, look), TeethBox(model, look)
        self.conditions, self.moved = ConditionsBox(look, tr("when the contacts open")), MovedBox(model, look)
        self._boxes = [
            self.lamp, self.plan, self.teeth, self.conditions, self.crank, self._build_synchronising(), self.moved,
            self.stop,
        ]  # fmt: skip
        for box in self._boxes:
            layout.addWidget(box)
        safe = QLabel(tr(MAKING_SAFE))
        safe.setWordWrap(True)
        layout.addWidget(safe)
        layout.addStretch(1)
        self._order_tabs()
        self.callout = Callout(self, model)
        self._stale = False
        self.show_state(model.state)
        model.changed.connect(self._changed)
        look.changed.connect(self._show_again)

    # -------------------------------------------------------------- building

    def _build_synchronising(self) -> Section:
        self.synchronising_box = Section(tr("Synchronising"), self.look)
        self.synchronising = QLabel()
        self.synchronising.setWordWrap(True)
        self.synchronising_box.body.addWidget(self.synchronising)
        return self.synchronising_box

    def _order_tabs(self) -> None:
        """From reading to reading, then the moves and the next act: what is done most comes first."""
        stops = (
            self.lamp.reads["left"], self.lamp.reads["right"], self.plan.table, self.plan.next, self.plan.steps.all,
            self.plan.print, self.plan.expect.reads_so, *self.lamp.radio.values(), *self.lamp.wanted.values(),
            self.crank.crank,
        )  # fmt: skip
        for one, then in pairwise(stops):
            QWidget.setTabOrder(one, then)

    # -------------------------------------------------------------- showing

    def _changed(self, state: BenchState, old: BenchState) -> None:
        """While another panel is in front, nothing is planned for this one."""
        if self.isVisible() and not self._stale:
            self.show_state(state, old)
        else:
            self._stale = True

    def showEvent(self, event: QShowEvent) -> None:
        """Catch up with what changed meanwhile."""
        super().showEvent(event)
        self._catch_up()

    def _catch_up(self) -> None:
        if self._stale:
            self._stale = False
            self.show_state(self._model.state)

    def chosen_move(self) -> Move | None:
        """The move chosen in the plan as it is now, also while another panel is in front; None if none is."""
        self._catch_up()
        return self.plan.chosen

    def moveEvent(self, event: QMoveEvent) -> None:
        """The page is scrolled: other rows of the moves lie under the pointer."""
        super().moveEvent(event)
        self.plan.forget_pointer()

    def show_state(self, state: BenchState, old: BenchState | None = None) -> None:
        """Follow the bench to its new state."""
        engaged = state.engaged
        self.none.setVisible(engaged is None)
        for box in self._boxes:
            box.setVisible(engaged is not None)
        for words, text in (
            (self.adjusted, adjusted_words), (self.impulse, impulse_words), (self.propeller, propeller_words)
        ):  # fmt: skip
            words.setText(text(engaged.installation) if engaged else "")
            words.setVisible(bool(words.text()))
        if engaged is None:
            return
        self.crank.show_crank(state)
        self.stop.show_engine(engaged.installation.engine)
        if old is not None and self._same_timing(state, old):
            return
        single = engaged.installation.position == "single"
        self.synchronising_box.setVisible(not single)
        self.lamp.show_timing(state, engaged)
        toothed = engaged.installation.toothed
        for box in (self.teeth, self.moved):
            box.setVisible(toothed)
        if toothed:
            self.teeth.show_teeth(state, engaged)
        teeth, moves = _TITLES["single" if single else engaged.side]
        self.teeth.setTitle(tr(teeth))
        self.plan.setTitle(tr(moves))
        self.plan.show_plan(state, engaged)
        read = mounting_of(engaged, engaged.side).lamp_read
        by = tr("By the readings entered.") if read else tr(NOT_READ)
        look = f"{by} {tr('At the engine look at each of the four yourself.')}"
        self.conditions.show_four(state, four_at_opening(state, engaged.side), look)
        self.moved.show_explanations(state)
        self._show_synchronising(state)

    @staticmethod
    def _same_timing(state: BenchState, old: BenchState) -> bool:
        def key(s: BenchState) -> object:
            return s.magneto, s.backplate_deg, s.screw_deg, s.engaged

        return key(state) == key(old)

    def _show_again(self) -> None:
        self.show_state(self._model.state)

    def halt(self) -> None:
        """Nothing runs here."""

    def _show_synchronising(self, state: BenchState) -> None:
        result = synchronising(state)
        engaged = state.engaged
        if result is None or engaged is None:
            self.synchronising.setText("–")
            return
        tolerance = engaged.installation.engine.synchronising_tolerance_deg
        left, right = (firing_btdc_deg(state, side) for side in SIDES)
        wanted = _apart(engaged.left.wanted_btdc_deg - engaged.right.wanted_btdc_deg)
        mark = "✓" if result.synchronised else "✗"
        text = tr(
            "Left fires {left:deg}, right {right:deg} before top dead centre: {apart}. Wanted: {wanted}. "
            "That is {difference:deg} from it, {tolerance}° allowed.",
            left=left,
            right=right,
            apart=_apart(left - right),
            wanted=wanted,
            difference=abs(result.difference_deg),
            tolerance=tolerance,
        )
        mismatch = firing_order_words(engaged.installation.engine)
        words = f"{mark} {text}"
        if mismatch:
            words = f"{words} {tr('Take care: {mismatch}.', mismatch=mismatch)}"
        both = both_words(state)
        self.synchronising.setText(f"{words}\n{both}" if both else words)


def _apart(left_less_right_deg: float) -> str:
    if abs(left_less_right_deg) < 0.005:
        return tr("both together")
    angle = abs(left_less_right_deg)
    return (
        tr("left {angle:deg} earlier", angle=angle)
        if left_less_right_deg > 0
        else tr("right {angle:deg} earlier", angle=angle)
    )
