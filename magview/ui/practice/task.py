"""The task in few words, its limits and the hints; and all papers beside it: case, what counts, data sheet."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFormLayout, QGroupBox, QPushButton, QVBoxLayout

from magview.practice.exercise import Exercise
from magview.practice.paper import goal_words, limit_lines, paper_lines
from magview.practice.state import Practice
from magview.practice.story import story
from magview.spec.language import tr
from magview.ui.kit.look import Look
from magview.ui.kit.style import tint
from magview.ui.practice.controls import PracticePanel, wrapped
from magview.ui.practice.model import PracticeModel


class TaskPanel(PracticePanel):
    """Paper: nothing on it depends on how the magneto was found."""

    def __init__(self, model: PracticeModel, look: Look) -> None:
        super().__init__(model, look)
        exercise = model.practice.exercise
        layout = QVBoxLayout(self)
        layout.setContentsMargins(4, 2, 4, 0)
        layout.setSpacing(3)
        self.name, self.task, self.limits = wrapped(tr(exercise.name)), wrapped(tr(exercise.task)), wrapped()
        self.limits.setText("\n".join(limit_lines(exercise)))
        self.limits.setAccessibleName(tr("Limits"))
        if not self.limits.text():
            self.limits.hide()
        for label in (self.name, self.task, self.limits):
            layout.addWidget(label)
        self._hints, self._told = exercise.hints, 0
        self.hint, self.hints = QPushButton(), wrapped()
        self.hints.setAccessibleName(tr("Hints"))
        self.hints.setTextInteractionFlags(
            Qt.TextInteractionFlag.TextSelectableByMouse | Qt.TextInteractionFlag.TextSelectableByKeyboard
        )
        self.hint.setAutoDefault(False)
        self.hint.clicked.connect(self._tell)
        layout.addWidget(self.hint)
        layout.addWidget(self.hints)
        self._name_hint()
        self.show_practice(model.practice)

    def show_practice(self, practice: Practice) -> None:
        """Paper stays as it is."""
        tint(self.name, self.look.theme.text, bold=True)
        tint(self.limits, self.look.theme.faint)

    def _tell(self) -> None:
        self._told += 1
        self.hints.setText("\n".join(f"{i}. {tr(hint)}" for i, hint in enumerate(self._hints[: self._told], start=1)))
        self._name_hint()

    def _name_hint(self) -> None:
        left = len(self._hints) - self._told
        if left == 0:
            words = tr("No more hints")
        else:
            words = tr("A &hint ({left} left)" if self._told == 0 else "Another &hint ({left} left)", left=left)
        self.hint.setText(words)
        self.hints.setVisible(self._told > 0)
        if left == 0 and self.hint.hasFocus():
            self.hints.setFocus()  # a button put out of use would hand the keyboard on, down to Hand in
        self.hint.setEnabled(left > 0)


class PapersPanel(PracticePanel):
    """The case, what counts, and the data sheet."""

    def __init__(self, model: PracticeModel, look: Look) -> None:
        super().__init__(model, look)
        exercise = model.practice.exercise
        layout = QVBoxLayout(self)
        layout.setContentsMargins(4, 4, 4, 4)
        layout.addWidget(wrapped(story(exercise, model.practice.seed)))
        if not model.teaches:
            layout.addWidget(_what_counts(exercise))
            guide = tr("About {minutes} minutes. Time is a guide and is not marked.", minutes=exercise.minutes)
            layout.addWidget(wrapped(guide))
        sheet = QGroupBox(tr("Data sheet"))
        form = QFormLayout(sheet)
        form.setVerticalSpacing(2)
        for what, words in paper_lines(exercise):
            form.addRow(what, wrapped(words))
        layout.addWidget(sheet)
        layout.addStretch(1)


def _what_counts(exercise: Exercise) -> QGroupBox:
    done = QGroupBox(tr("What counts"))
    column = QVBoxLayout(done)
    for line in goal_words(exercise):
        column.addWidget(wrapped(f"• {line[0].upper()}{line[1:]}"))
    column.addWidget(
        wrapped(
            tr(
                "{percent} % are needed, and no dangerous act. Right, and proved by instruments "
                "since the last act that could have changed it, counts whole; right but not proved, half.",
                percent=exercise.pass_percent,
            )
        )
    )
    return done
