"""Over a lesson's pictures: the step, what is asked, and what came of it. Its height is the same whatever it says."""

from __future__ import annotations

from functools import partial

from PySide6.QtCore import QEvent, Qt, Signal
from PySide6.QtWidgets import QFrame, QHBoxLayout, QLabel, QPushButton, QSizePolicy, QVBoxLayout, QWidget

from magview.practice.lesson import LessonStep
from magview.practice.lesson_run import Stand, choices_of
from magview.practice.lesson_words import how_words, question_words, stand_words
from magview.spec.language import tr
from magview.ui.kit.look import Look
from magview.ui.learn.model import LessonModel
from magview.ui.learn.strip_parts import ActLabel, Chip, Dots, Feedback, NextButton, em_of

HEIGHT_EM = 15.2
_STEPS_EM, _ACT_EM, _HOW_EM, _QUESTION_EM, _FEEDBACK_EM = 1.8, 2.5, 4.0, 3.2, 4.4
_SHORT_ACT = 120
"""An act longer than this many letters, of a lesson written otherwise, is told below its title."""


class Asked(QWidget):
    """A question over its answers, in room that it keeps while nothing is asked."""

    chosen = Signal(int)

    def __init__(self, look: Look) -> None:
        super().__init__()
        self.words = QLabel()
        self.chips = [Chip(look, key) for key in (1, 2, 3)]
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(1)
        column.addWidget(self.words)
        row = QHBoxLayout()
        row.setSpacing(6)
        for choice, chip in enumerate(self.chips):
            chip.clicked.connect(partial(self._clicked, choice))
            row.addWidget(chip, 1)
        column.addLayout(row)

    def _clicked(self, choice: int, _: bool = False) -> None:
        self.chosen.emit(choice)

    def size_up(self, em: float) -> None:
        """As high as the type asks."""
        self.setFixedHeight(round(_QUESTION_EM * em))
        for chip in self.chips:
            chip.setFixedHeight(round(1.9 * em))


class LessonStrip(QFrame):
    """Above the pictures, always in view."""

    more = Signal()
    """On to the next lesson."""

    def __init__(self, model: LessonModel, look: Look) -> None:
        super().__init__()
        self.model, self.look = model, look
        self.hinted = False
        self.dots, self.act, self.how = Dots(look), ActLabel(), QLabel()
        self.how.setWordWrap(True)
        self.how.setAlignment(Qt.AlignmentFlag.AlignTop | Qt.AlignmentFlag.AlignLeft)
        self.how.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Fixed)
        self.asked = [Asked(look), Asked(look)]
        for number, asked in enumerate(self.asked):
            asked.chosen.connect(partial(model.answer, number))
        self.feedback = Feedback(look)
        self.next = NextButton(look)
        self.next.clicked.connect(self._next)
        self.back, self.hint, self.undo = (_link(words) for words in (tr("Back"), tr("Hint"), tr("Undo act")))
        self.back.clicked.connect(model.go_back)
        self.undo.clicked.connect(model.undo)
        self.hint.clicked.connect(self.tell_hint)
        self._lay_out()
        self._size_up()
        model.judged.connect(self._judged)
        look.changed.connect(self.show_run)
        self.show_run()

    def _lay_out(self) -> None:
        self._outer = QVBoxLayout(self)
        above, left, right = QHBoxLayout(), QVBoxLayout(), QVBoxLayout()
        left.setSpacing(2)
        right.setSpacing(3)
        for widget in (self.dots, self.act, self.how):
            left.addWidget(widget)
        left.addStretch(1)
        for asked in self.asked:
            right.addWidget(asked)
        right.addStretch(1)
        above.setSpacing(14)
        above.addLayout(left, 46)
        above.addLayout(right, 54)
        self._outer.addLayout(above, 1)
        below, beside, links = QHBoxLayout(), QVBoxLayout(), QHBoxLayout()
        below.addWidget(self.feedback, 1)
        beside.setSpacing(2)
        beside.addWidget(self.next)
        for link in (self.back, self.hint, self.undo):
            links.addWidget(link)
        beside.addLayout(links)
        below.addLayout(beside)
        self._outer.addLayout(below)

    def changeEvent(self, event: QEvent) -> None:
        """Type of another size needs other room."""
        super().changeEvent(event)
        if event.type() == QEvent.Type.FontChange and hasattr(self, "_outer"):
            self._size_up()

    def _size_up(self) -> None:
        em = em_of(self)
        self._outer.setContentsMargins(round(1.2 * em), round(0.6 * em), round(1.2 * em), round(0.6 * em))
        self._outer.setSpacing(round(0.4 * em))
        self.setFixedHeight(round(HEIGHT_EM * em))
        self.dots.setFixedHeight(round(_STEPS_EM * em))
        self.act.setFixedHeight(round(_ACT_EM * em))
        self.how.setFixedHeight(round(_HOW_EM * em))
        for asked in self.asked:
            asked.size_up(em)
        self.feedback.setFixedHeight(round(_FEEDBACK_EM * em))
        self.next.setFixedHeight(round(2.4 * em))
        self.next.setFixedWidth(round(15 * em))
        for link in (self.back, self.hint, self.undo):
            link.setFixedHeight(max(24, round(1.9 * em)) if em < 14 else round(1.9 * em))

    # -------------------------------------------------------------- showing

    def _judged(self) -> None:
        self.hinted = False
        self.show_run()

    def show_run(self) -> None:
        """Show how the lesson stands."""
        run = self.model.run
        step, steps = run.step, run.lesson.steps
        title = tr(step.title) if step is not None else ""
        self.dots.show_step(run.at, len(steps), run.step_done, title)
        act, how = (
            _act_and_how(step, how_words(run))
            if step is not None
            else (tr("{name}: done", name=tr(run.lesson.name)), "")
        )
        self.act.setText(act)
        self.act.setAccessibleName(act)
        self.how.setText(how)
        self.how.setToolTip(how)
        for number, asked in enumerate(self.asked):
            self._show_question(number, asked)
        self._say()
        onward = tr("Next lesson") if step is None else tr("Next step") if run.at + 1 < len(steps) else tr("Finish")
        self.next.show_words(onward, run.step_done or step is None)
        self.hint.setEnabled(step is not None and bool(step.hint))
        self.undo.setEnabled(run.before is not None)
        self.back.setEnabled(run.previous is not None or run.before is not None)

    def _show_question(self, number: int, asked: Asked) -> None:
        run = self.model.run
        there = run.step is not None and number < len(run.step.ask)
        asked.words.setText("")
        asked.setEnabled(there)
        for chip in asked.chips:
            chip.setVisible(False)
        if run.step is None or not there:
            return
        question, mine = run.step.ask[number], run.answers[run.at][number]
        asked.words.setText(f"<b>{question_words(question)}</b>")
        for choice, (chip, words) in enumerate(zip(asked.chips, choices_of(question), strict=False)):
            chip.setVisible(True)
            right = run.rights[run.at][number] == choice if run.step_done else None
            chip.show_answer(tr(words), mine == choice, right)

    def _say(self) -> None:
        run, refusal = self.model.run, self.model.refusal
        if self.hinted and run.step is not None:
            self.feedback.show_words("?", "hand", tr("Hint"), tr(run.step.hint))
        elif refusal and run.step_done:
            head, more = stand_words(run)
            said = f"{refusal[0].upper()}{refusal[1:].rstrip('.')}."
            self.feedback.show_words("✓", "good", said, f"{head} {more}".strip())
        elif refusal:
            self.feedback.show_words("△", "warn", f"{refusal[0].upper()}{refusal[1:].rstrip('.')}.", "")
        else:
            head, more = stand_words(run)
            sign, role = _SIGNS[run.stand] if run.step is not None else ("✓", "good")
            if not head and not run.answered:
                head, more = "", tr("Guess first: choose an answer above, or press its number.")
            self.feedback.show_words(sign if head else "", role, head, more)

    def tell_hint(self) -> None:
        """Say the hint in the place of what came of it."""
        self.hinted = True
        self._say()

    def _next(self) -> None:
        if self.model.run.done:
            self.more.emit()
        else:
            self.model.go_on()


_SIGNS = {
    Stand.WAITING: ("", "faint"),
    Stand.PART_WAY: ("…", "faint"),
    Stand.WRONG: ("✗", "bad"),
    Stand.DONE: ("✓", "good"),
}
"""Sign and colour of how a step stands."""


def _act_and_how(step: LessonStep, how: str) -> tuple[str, str]:
    """The act, and how to do it; a long act of a lesson written otherwise stands below its title."""
    if len(step.text) <= _SHORT_ACT:
        return tr(step.text), how
    return tr(step.title), tr(step.text)


def _link(words: str) -> QPushButton:
    button = QPushButton(words)
    button.setFlat(True)
    button.setAutoDefault(False)
    return button
