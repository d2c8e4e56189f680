"""The planner's moves: previewed under the pointer, chosen, and stepped through one tooth at a time."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject, QPointF, Signal
from PySide6.QtGui import QHideEvent, QMouseEvent, QMoveEvent, QWheelEvent
from PySide6.QtWidgets import QLabel

from magview.bench.lamp import may_plan
from magview.bench.planned import Planned, Stage, plan_words, planned, seen_words
from magview.bench.state import BenchState, Engaged, firing_btdc_deg
from magview.bench.tooth_steps import steps_between
from magview.bench.words import teeth_words
from magview.physics.engine.coupling import Move
from magview.spec.language import tr
from magview.ui.bench.expect_box import ExpectBox
from magview.ui.bench.look_first import LookFirst
from magview.ui.bench.moves_table import MovesTable
from magview.ui.bench.next_box import NextBox
from magview.ui.kit.bench_model import BenchModel
from magview.ui.kit.look import Look
from magview.ui.kit.section import Section
from magview.ui.kit.style import tint


class PlanBox(Section):
    """The list of moves for the magneto in view, best first; the next act; the reading to be expected."""

    previewed = Signal(object)
    """The move the pointer was moved over, else the one chosen while it is stepped through; None for none."""

    print_wanted = Signal(str)
    """The plan on paper, "a4" or "letter", as one large "screen", or as "html"."""

    def __init__(self, model: BenchModel, look: Look) -> None:
        super().__init__(tr("Moves"), look)
        self._model = model
        self.note.setText(tr("best first; each keeps the crank still"))
        self._plan: Planned | None = None
        self._may_plan = True
        """Whether teeth may be planned from the reading as it is."""
        self._target: tuple[int, int] | None = None
        self._counts_from: object = None
        """The side and reading that the chosen move counts from."""
        self._pointed: int | None = None
        """The row the pointer was moved over and still is on."""
        self._pointer: QPointF | None = None
        """The pointer's last place on the screen [px]."""
        self.verdict, self.viewpoint = QLabel(), QLabel()
        self.verdict.setWordWrap(True)
        self.viewpoint.setWordWrap(True)
        self.table = MovesTable(look)
        self.table.setMouseTracking(True)
        # The table's own signal tells also of rows that slide under a resting pointer, and nobody of their leaving.
        self.table.installEventFilter(self)
        self.table.viewport().installEventFilter(self)
        self.table.verticalScrollBar().valueChanged.connect(self.forget_pointer)
        self.table.row_chosen.connect(self._chosen)
        self.first, self.steps, self.expect = LookFirst(model), NextBox(model, look), ExpectBox(model, look)
        self.steps.print_wanted.connect(self.print_wanted)
        self.words, self.next, self.print = self.steps.words, self.steps.next, self.steps.print
        for widget in (self.first, self.verdict, self.table, self.steps, self.expect, self.viewpoint):
            self.body.addWidget(widget)

    @property
    def _moves(self) -> tuple[Move, ...]:
        return () if self._plan is None else self._plan.moves

    @property
    def chosen(self) -> Move | None:
        """The move that is chosen; None if none is."""
        return next((m for m in self._moves if (m.magneto_teeth, m.disc_teeth) == self._target), None)

    def show_plan(self, state: BenchState, engaged: Engaged) -> None:
        """Show the moves for a state; greyed while the lamp has to be read again, none while something is asked."""
        self._pointed = None  # another state, another list: a row means another move
        toothed = engaged.installation.toothed
        self.note.setVisible(toothed)
        if not toothed:
            self._show_no_teeth(state, engaged)
            return
        theme, side = self._look.theme, engaged.side
        self.first.show_questions(state, engaged, theme)
        plan = self._plan = planned(state, side, self._under_way(engaged))
        self._may_plan = plan.stage is not Stage.TEETH_MOVED and may_plan(state, side)
        self.verdict.show()
        self.table.setEnabled(self._may_plan)
        self.table.setVisible(bool(plan.moves))
        self.viewpoint.setVisible(bool(plan.moves))
        self.steps.setVisible(bool(plan.moves))
        self.verdict.setText(plan_words(state, plan))
        bad, right = plan.stage is Stage.UNREACHABLE, plan.stage is Stage.RIGHT
        tint(self.verdict, theme.bad if bad else theme.good if right else theme.text, bold=bad or right)
        rotation = state.magneto.rotation
        self.viewpoint.setText(seen_words(rotation))
        self.table.blockSignals(True)
        tips = [
            "; ".join((
                tr("A disc {teeth}", teeth=teeth_words(move.disc_teeth, rotation, "engine")),
                tr("B magneto flange {teeth}", teeth=teeth_words(move.magneto_teeth, rotation, "engine")),
            ))
            for move in plan.moves
        ]  # fmt: skip
        found = firing_btdc_deg(state, side, as_found=True)
        self.table.show_moves(plan, found, engaged.mounting.wanted_btdc_deg, tips)
        self.table.blockSignals(False)
        self._mark_target(state, engaged)

    def _under_way(self, engaged: Engaged) -> bool:
        """Whether the teeth stand on the way of the move that was chosen here, its end included."""
        if self._target is None or self._counted_from(engaged) != self._counts_from:
            return False
        at = engaged.mounting
        on_the_way = [(0, 0), *((s.magneto_teeth, s.disc_teeth) for s in steps_between((0, 0), self._target))]
        return (at.magneto_teeth, at.disc_teeth) in on_the_way

    @staticmethod
    def _counted_from(engaged: Engaged) -> object:
        mounting = engaged.mounting
        return engaged.installation, engaged.side, mounting.phase_deg, mounting.wanted_btdc_deg

    def _show_no_teeth(self, state: BenchState, engaged: Engaged) -> None:
        """Without a toothed disc there is nothing to plan; the reading to be expected stays."""
        self._plan = self._target = None
        self.setTitle(tr("The lamp's next reading"))
        for widget in (self.first, self.verdict, self.table, self.viewpoint, self.steps):
            widget.hide()
        self.expect.show_expected(state, engaged, None, made=True)
        self._tell()

    def _mark_target(self, state: BenchState, engaged: Engaged) -> None:
        """Keep the chosen move chosen while it is stepped through, and say the next step."""
        counts_from = self._counted_from(engaged)
        if counts_from != self._counts_from:
            self._counts_from, self._target = counts_from, None
            self.table.scrollToTop()
        row = next((n for n, m in enumerate(self._moves) if (m.magneto_teeth, m.disc_teeth) == self._target), None)
        if row is None or not self._may_plan:
            row = self._target = None
        self.table.blockSignals(True)
        self.table.choose_row(-1 if row is None else row)
        self.table.blockSignals(False)
        self.steps.show_next(state, engaged, self.chosen, self._may_plan)
        if not self.steps.to_go and self.next.hasFocus():
            self.table.setFocus()  # or the keyboard would jump to some other field, and the panel with it
        self.print.setEnabled(bool(self._moves) and self._may_plan)
        self.expect.show_expected(state, engaged, self.chosen, made=not self.steps.to_go)
        self._tell()

    def _chosen(self, row: int) -> None:
        engaged = self._model.state.engaged
        if row >= 0 and engaged is not None:
            move = self._moves[row]
            self._target = (move.magneto_teeth, move.disc_teeth)
            self._pointed = None
            self._mark_target(self._model.state, engaged)

    # -------------------------------------------------------------- the pointer

    def _tell(self) -> None:
        """Say what is to be previewed now."""
        if self._may_plan and self._pointed is not None and self._pointed < len(self._moves):
            self.previewed.emit(self._moves[self._pointed])
        else:
            self.previewed.emit(self.chosen if self.steps.to_go else None)

    def forget_pointer(self) -> None:
        """Forget what the pointer was over: it has moved away from under it, or is hidden."""
        if self._pointed is not None:
            self._pointed = None
            self._tell()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """A row is previewed once the pointer itself is moved over it, until it leaves or the list moves."""
        if watched is self.table:
            if event.type() in (QEvent.Type.Move, QEvent.Type.Resize):
                self.forget_pointer()
        elif isinstance(event, QMouseEvent) and event.type() == QEvent.Type.MouseMove:
            # Qt also tells a pointer at rest of what comes to lie under it.
            if event.globalPosition() != self._pointer:
                self._pointer = event.globalPosition()
                row = self.table.rowAt(event.position().toPoint().y())
                self._pointed = row if row >= 0 else None
                self._tell()
        elif isinstance(event, QWheelEvent):
            self._pointer = event.globalPosition()
            self.forget_pointer()
        elif event.type() == QEvent.Type.Leave:
            self.forget_pointer()
        return super().eventFilter(watched, event)

    def moveEvent(self, event: QMoveEvent) -> None:
        """Words above have grown: the rows are elsewhere."""
        super().moveEvent(event)
        self.forget_pointer()

    def hideEvent(self, event: QHideEvent) -> None:
        """Another page is in front."""
        super().hideEvent(event)
        self.forget_pointer()
