"""The planner's moves: previewed under the pointer, chosen, and stepped through one tooth at a time."""

from __future__ import annotations

from functools import partial

from PySide6.QtCore import QEvent, QObject, QPointF, Signal
from PySide6.QtGui import QHideEvent, QMouseEvent, QMoveEvent, QWheelEvent
from PySide6.QtWidgets import (
    QGroupBox,
    QHBoxLayout,
    QLabel,
    QMenu,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from magview.bench.actions import MoveTeeth
from magview.bench.engine_words import outside_words
from magview.bench.lamp import may_plan, unanswered
from magview.bench.state import BenchState, Engaged, Mounting, readings
from magview.bench.timing import timing_plan
from magview.bench.tooth_steps import ToothStep, far_apart, step_words, steps_between
from magview.bench.words import direction_word, short_words, teeth_words
from magview.physics.engine.coupling import Move, nearest_firings
from magview.spec.language import format_angle, marked, tr, tr_n
from magview.spec.magneto import Rotation
from magview.ui.bench.look_first import LookFirst
from magview.ui.kit.bench_model import BenchModel
from magview.ui.kit.steady_label import SteadyLabel
from magview.ui.kit.table import Table
from magview.ui.kit.theme import Theme

_POINT = marked("Point at a move to see where it brings the marks; choose one to step through it.")
_MADE = marked(
    "The move is made. Check the marks, tighten, and read the lamp again, approaching with rotation; "
    "enter what it says as the new reading."
)


def _to_go(steps: int, step: ToothStep, rotation: Rotation, mounting: Mounting) -> str:
    count = tr_n("{count} single step to go.", "{count} single steps to go.", count=steps)
    return f"{count} {step_words(step, rotation, mounting)}"


class PlanBox(QGroupBox):
    """The list of moves for the magneto in view, best first."""

    previewed = Signal(object)
    """The move the pointer was moved over, else the one chosen while it is stepped through; None for none."""

    print_wanted = Signal(str)
    """The plan on paper of a size, "a4" or "letter"."""

    def __init__(self, model: BenchModel, parent: QWidget | None = None) -> None:
        super().__init__(tr("Moves that would put it right, best first"), parent)
        self._model = model
        self._moves: list[Move] = []
        self._steps: list[ToothStep] = []
        self._may_plan = True
        """Whether teeth may be planned from the reading as it is."""
        self._target: tuple[int, int] | None = None
        self._counts_from: object = None
        """The side and reading that the chosen move counts from."""
        self._pointed: int | None = None
        """The row the pointer was moved over and still is on."""
        self._pointer: QPointF | None = None
        """Last place of the pointer on the screen [px]."""
        column = QVBoxLayout(self)
        self.verdict = QLabel()
        self.verdict.setWordWrap(True)
        heads = (tr("Flange"), tr("Disc"), tr("Fires at"), tr("Off by"))
        self.table = Table(tr("Moves of the coupling, best first"), heads, wide=range(4), numbers=range(4))
        self.table.verticalHeader().show()
        self.table.show_at_most(5)
        self.table.setMouseTracking(True)
        # The table's own signal tells also of rows that slide under a resting pointer, and nobody of their leaving.
        self.table.installEventFilter(self)
        self.table.viewport().installEventFilter(self)
        self.table.verticalScrollBar().valueChanged.connect(self.forget_pointer)
        self.table.row_chosen.connect(self._chosen)
        self.words = SteadyLabel()
        self.next = QPushButton(tr("Move the ne&xt tooth"))
        self.next.clicked.connect(self._next_step)
        self.print = QPushButton(tr("Pri&nt the plan"))
        self.print.setToolTip(tr("The chosen move, or the first, on one page: drawings, single steps to be ticked"))
        papers = QMenu(self.print)
        for text, paper in ((tr("Print to PDF, &A4…"), "a4"), (tr("Print to PDF, &Letter…"), "letter")):
            papers.addAction(text).triggered.connect(partial(self._print, paper))
        self.print.setMenu(papers)
        self.viewpoint = QLabel()
        self.viewpoint.setWordWrap(True)
        self.first = LookFirst(model)
        for widget in (self.first, self.verdict, self.viewpoint, self.table, self.words):
            column.addWidget(widget)
        row = QHBoxLayout()
        row.addWidget(self.next, 1)
        row.addWidget(self.print)
        column.addLayout(row)

    @property
    def chosen(self) -> Move | None:
        """The move that is chosen; None if none is."""
        return next((m for m in self._moves if (m.magneto_teeth, m.disc_teeth) == self._target), None)

    def show_plan(self, state: BenchState, engaged: Engaged, theme: Theme) -> None:
        """Show the moves for a state; greyed while the lamp has to be read again, none while something is asked."""
        self._pointed = None  # another state, another list: a row means another move
        self.first.show_questions(state, engaged, theme)
        self._may_plan = may_plan(state, engaged.side)
        self._moves = [] if unanswered(state, engaged.side) else timing_plan(state, engaged.side)
        self.table.setEnabled(self._may_plan)
        tolerance = engaged.installation.engine.timing_tolerance_deg
        outside = outside_words(self._moves, tolerance) if self._moves else None
        rotation = state.magneto.rotation
        if unanswered(state, engaged.side):
            self.verdict.setText(tr("No moves are shown yet."))
        elif not self._moves:
            self.verdict.setText(tr("There is no reading to plan from."))
        elif not self._may_plan:
            self.verdict.setText(tr("The moves wait: read the lamp again, then plan from what it reads."))
        elif outside:
            near = [format_angle(m.result_btdc_deg) for m in nearest_firings(self._moves)]
            self.verdict.setText(
                tr(
                    "✗ Nothing reaches it within tolerance: {outside}. Nearest on either side: {first} or {second}.",
                    outside=outside,
                    first=near[0],
                    second=near[1],
                )
                if len(near) == 2
                else tr("✗ Nothing reaches it within tolerance: {outside}.", outside=outside)
            )
        else:
            good = readings(state).within_limits
            # With the contacts set wrongly the reading is not worth planning from.
            self.verdict.setText(
                tr("✓ The first is within ±{tolerance}° of crank.", tolerance=tolerance)
                if good
                else tr(
                    "By the present reading the first would come within ±{tolerance}° of crank; set the "
                    "contacts first, read the lamp again, then plan.",
                    tolerance=tolerance,
                )
            )
        along, against = (direction_word(s, rotation, "drive end") for s in (1, -1))
        self.viewpoint.setText(
            tr(
                "Teeth of the magneto flange on the disc, and of the disc on the drive flange, from as "
                "found; with rotation is {along}, against is {against} seen from the drive end.",
                along=along,
                against=against,
            )
        )
        self.table.blockSignals(True)
        rows, tips = [], []
        for move in self._moves:
            rows.append(
                (
                    short_words(move.magneto_teeth),
                    short_words(move.disc_teeth),
                    format_angle(move.result_btdc_deg),
                    format_angle(move.residual_deg, True),
                )
            )
            tip = "; ".join((
                tr("Magneto flange {teeth}", teeth=teeth_words(move.magneto_teeth, rotation, "drive end")),
                tr("disc {teeth}", teeth=teeth_words(move.disc_teeth, rotation, "drive end")),
            ))  # fmt: skip
            tips.append(tip)
        self.table.fill(rows, tips=tips)
        self.table.blockSignals(False)
        self._mark_target(state, engaged)

    def _mark_target(self, state: BenchState, engaged: Engaged) -> None:
        """Keep the chosen move chosen while it is stepped through, and say the next step."""
        at = (engaged.mounting.magneto_teeth, engaged.mounting.disc_teeth)
        counts_from = (
            engaged.installation,
            engaged.side,
            engaged.mounting.phase_deg,
            engaged.mounting.wanted_btdc_deg,
        )
        if counts_from != self._counts_from:
            self._counts_from, self._target = counts_from, None
            self.table.scrollToTop()
        row = next((n for n, m in enumerate(self._moves) if (m.magneto_teeth, m.disc_teeth) == self._target), None)
        if row is None or not self._may_plan:
            row = self._target = None
        self.table.blockSignals(True)
        self.table.choose_row(-1 if row is None else row)
        self.table.blockSignals(False)
        self._steps = steps_between(at, self._target) if self._target is not None else []
        if not self._steps and self.next.hasFocus():
            self.table.setFocus()  # or the keyboard would jump to some other field, and the panel with it
        self.next.setEnabled(bool(self._steps))
        self.print.setEnabled(bool(self._moves) and self._may_plan)
        rotation = state.magneto.rotation
        if self._target is None:
            self.words.setText(tr(_POINT))
        elif self._steps:
            self.words.setText(_to_go(len(self._steps), self._steps[0], rotation, engaged.mounting))
        else:
            self.words.setText(tr(_MADE))
        longest = (
            _to_go(88, ToothStep(face, way, at.magneto_teeth, at.disc_teeth), rotation, at)
            for at in far_apart(engaged)
            for face in ("magneto flange", "disc")
            for way in (1, -1)
        )
        self.words.keep_room_for((tr(_POINT), tr(_MADE), *longest))
        self._tell()

    def _print(self, paper: str) -> None:
        self.print_wanted.emit(paper)

    def _next_step(self) -> None:
        if self._steps:
            step = self._steps[0]
            self._model.send(MoveTeeth(step.magneto_teeth, step.disc_teeth))

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
            self.previewed.emit(self.chosen if self._steps else None)

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
