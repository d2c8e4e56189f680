"""The next act of a chosen move: A, then B, tooth by tooth or all at once, and the plan on paper."""

from __future__ import annotations

from dataclasses import replace
from functools import partial

from PySide6.QtCore import QRectF, Signal
from PySide6.QtGui import QColor, QKeySequence, QPainter, QPaintEvent, QPen, QShortcut
from PySide6.QtWidgets import QHBoxLayout, QLabel, QMenu, QPushButton, QVBoxLayout, QWidget

from magview.bench.actions import MoveTeeth
from magview.bench.planned import act_words
from magview.bench.state import BenchState, Engaged
from magview.bench.tooth_steps import ToothStep, far_apart, marks_words, step_words, steps_between
from magview.physics.engine.coupling import Move
from magview.spec.language import marked, tr, tr_n
from magview.ui.kit.bench_model import BenchModel
from magview.ui.kit.look import Look
from magview.ui.kit.steady_label import SteadyLabel
from magview.ui.kit.style import tint

_KEY = QKeySequence("M")
_POINT = marked("Point at a move to see where it brings the marks; choose one to step through it.")
_MADE = marked(
    "The move is made. Check the marks, tighten, and read the lamp again, approaching with rotation; "
    "enter what it says as the new reading."
)


class NextBox(QWidget):
    """The act to be done next, and the buttons that do it on the bench."""

    print_wanted = Signal(str)
    """The plan on paper, "a4" or "letter", as one large "screen", or as "html"."""

    def __init__(self, model: BenchModel, look: Look) -> None:
        super().__init__()
        self._model, self._look = model, look
        self._steps: list[ToothStep] = []
        self._target: tuple[int, int] | None = None
        self.heading, self.act = QLabel(), SteadyLabel()
        self.words = SteadyLabel()
        self.next, self.all = QPushButton(), QPushButton()
        self.all.setToolTip(tr("Make the whole move on the bench; one step back undoes it"))
        self.next.clicked.connect(self._next_step)
        self.all.clicked.connect(self._whole)
        self.print = QPushButton(tr("Pri&nt plan"))
        self.print.setToolTip(tr("The chosen move, or the first, on one page or one large screen"))
        papers = QMenu(self.print)
        for text, paper in (
            (tr("Print to PDF, &A4…"), "a4"),
            (tr("Print to PDF, &Letter…"), "letter"),
            (tr("As one large &screen"), "screen"),
            (tr("Save for a &tablet…"), "html"),
        ):
            papers.addAction(text).triggered.connect(partial(self._print, paper))
        self.print.setMenu(papers)
        # A button's own shortcut clicks it a tenth of a second later, and a quick second press is lost.
        QShortcut(_KEY, self).activated.connect(self._next_step)
        column = QVBoxLayout(self)
        column.setContentsMargins(8, 3, 8, 4)
        column.setSpacing(1)
        for widget in (self.heading, self.act, self.words):
            column.addWidget(widget)
        row = QHBoxLayout()
        row.addWidget(self.next, 1)
        row.addWidget(self.all)
        row.addWidget(self.print)
        column.addLayout(row)
        look.changed.connect(self._colour)
        self._colour()

    @property
    def to_go(self) -> int:
        """Single steps that are still to be made."""
        return len(self._steps)

    def show_next(self, state: BenchState, engaged: Engaged, move: Move | None, may_plan: bool) -> None:
        """Show the next act of the chosen move; `may_plan`: the reading is worth planning from."""
        at = engaged.mounting
        self._target = None if move is None else (move.magneto_teeth, move.disc_teeth)
        here = at.magneto_teeth, at.disc_teeth
        self._steps = [] if self._target is None else steps_between(here, self._target)
        all_of_it = 0 if self._target is None else abs(self._target[0]) + abs(self._target[1])
        rotation = state.magneto.rotation
        self.next.setEnabled(bool(self._steps))
        self.all.setEnabled(len(self._steps) > 1)
        self.all.setText(tr_n("{count} tooth at once", "All {count} at once", count=max(len(self._steps), 1)))
        self.next.setText(tr("Move the ne&xt tooth"))
        self.next.setToolTip(tr("Move one tooth on the bench (M)"))
        self.heading.setText(tr("Next"))
        self.act.setText(" ")  # without any text a label keeps no room
        if not may_plan:
            self.heading.setText(tr("Next: read the lamp again"))
            self.words.setText("")
        elif move is None:
            self.words.setText(tr(_POINT))
        elif not self._steps:
            self.words.setText(tr(_MADE))
        else:
            step = self._steps[0]
            place = all_of_it - len(self._steps) + 1
            if place > 0:  # else the teeth were moved elsewhere meanwhile, and the way is longer
                self.next.setText(tr("Move tooth {place} of {all}", place=place, all=all_of_it))
            off = tr("Next: A, with the magneto off") if step.face == "disc" else tr("Next: B, with the magneto off")
            self.heading.setText(off)
            self.act.setText("\n".join(act_words(at, move, rotation)))
            after = replace(at, magneto_teeth=step.magneto_teeth, disc_teeth=step.disc_teeth)
            self.words.setText(tr("After this tooth: {marks}", marks=marks_words(after)))
            self.next.setToolTip(f"{step_words(step, rotation, at)} (M)")
        longest = (tr("After this tooth: {marks}", marks=marks_words(far)) for far in far_apart(engaged))
        teeth = engaged.installation.disc
        most = Move(-teeth.magneto_teeth // 2, -teeth.drive_teeth // 2, 0.0, 0.0, 0.0, 0.0)
        self.act.keep_room_for(("\n".join(act_words(replace(at, disc_teeth=0), most, rotation)),))
        self.words.keep_room_for((tr(_POINT), tr(_MADE), *longest))

    def _colour(self) -> None:
        theme = self._look.theme
        tint(self.heading, theme.faint)
        tint(self.act, theme.text, bold=True)
        self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        """The colour of what is planned, and its outline."""
        theme, painter = self._look.theme, QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(QPen(QColor(theme.hand), 1.3))
        painter.setBrush(QColor(theme.hand_fill))
        painter.drawRoundedRect(QRectF(self.rect()).adjusted(1, 1, -1, -1), 4.0, 4.0)

    def _print(self, paper: str) -> None:
        self.print_wanted.emit(paper)

    def _next_step(self) -> None:
        if self._steps:
            step = self._steps[0]
            self._model.send(MoveTeeth(step.magneto_teeth, step.disc_teeth))

    def _whole(self) -> None:
        if self._target is not None:
            self._model.send(MoveTeeth(*self._target))
