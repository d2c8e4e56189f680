"""Choosing an exercise or a lesson: the shipped ones with what they are about, or one from a file."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

from PySide6.QtCore import QRandomGenerator, Signal
from PySide6.QtWidgets import (
    QDialog,
    QDialogButtonBox,
    QFormLayout,
    QLineEdit,
    QListWidget,
    QListWidgetItem,
    QVBoxLayout,
    QWidget,
)

from magview.practice.exercise import Exercise
from magview.practice.lesson import Lesson
from magview.practice.library import find_exercise, find_lesson, shipped_exercises, shipped_lessons
from magview.practice.story import story
from magview.spec.base import SpecError
from magview.spec.formats import file_filter
from magview.spec.language import tr
from magview.ui.kit.asking import ask_open
from magview.ui.practice.controls import wrapped

MOST_LETTERS = 120
"""Of a trainee's name."""
_MOST_CODE = 2**53 - 1


@dataclass(frozen=True)
class Chosen:
    """Choice of an exercise, with the code that draws the faults and the trainee's name."""

    item: Exercise | Lesson
    code: int
    trainee: str


def drawn_code() -> int:
    """A code at random."""
    return QRandomGenerator.global_().bounded(1_000_000)


class Choice(QDialog):
    """A list at the left of what it is about; Return or a double click begins."""

    begun = Signal(object)
    """Sent with what was chosen, as `Chosen`."""

    def __init__(self, lessons: bool, parent: QWidget | None = None, trainee: str = "") -> None:
        super().__init__(parent)
        self.setWindowTitle(tr("Lessons") if lessons else tr("New exercise"))
        layout = QVBoxLayout(self)
        self.list = QListWidget()
        self.list.setAccessibleName(self.windowTitle())
        self._find = find_lesson if lessons else find_exercise
        for name in shipped_lessons() if lessons else shipped_exercises():
            self._add(name, name)
        self.about = wrapped()
        self.about.setMinimumHeight(5 * self.fontMetrics().height())
        layout.addWidget(self.list, 1)
        layout.addWidget(self.about)
        form = QFormLayout()
        form.setHorizontalSpacing(12)
        self.trainee, self.code = QLineEdit(trainee), QLineEdit()
        self.trainee.setMaxLength(MOST_LETTERS)
        self.trainee.setPlaceholderText(tr("kept in the attempt's file"))
        self.code.setPlaceholderText(tr("left empty: drawn at random; the same code gives the same faults"))
        if not lessons:
            form.addRow(tr("&Trainee"), self.trainee)
            form.addRow(tr("&Code"), self.code)
        self.problem = wrapped()
        self.problem.hide()
        layout.addLayout(form)
        layout.addWidget(self.problem)
        buttons = QDialogButtonBox()
        self.begin = buttons.addButton(tr("&Begin"), QDialogButtonBox.ButtonRole.AcceptRole)
        self.from_file = buttons.addButton(tr("From a &file…"), QDialogButtonBox.ButtonRole.ActionRole)
        buttons.addButton(QDialogButtonBox.StandardButton.Cancel)
        self.begin.setDefault(True)
        buttons.accepted.connect(self._begin)
        buttons.rejected.connect(self.reject)
        self.from_file.clicked.connect(self._ask_file)
        layout.addWidget(buttons)
        self.list.currentRowChanged.connect(self._show)
        self.list.itemDoubleClicked.connect(self._begin)
        self.list.setCurrentRow(0)
        self.resize(560, 520)

    def _add(self, name: str, source: str) -> None:
        found = self._find(source)
        if isinstance(found, Lesson):
            words = f"{found.number}. {tr(found.name)}"
        else:
            words = tr("Level {level} · {name}", level=found.level, name=tr(found.name))
        item = QListWidgetItem(words)
        item.setData(256, found)
        self.list.addItem(item)

    def _show(self, row: int) -> None:
        item = self._item()
        if isinstance(item, Lesson):
            self.about.setText(f"{tr(item.text)} {tr('{steps} steps.', steps=len(item.steps))}")
        elif item is not None:
            self.about.setText(
                f"{story(item, None)} {tr(item.task)} {tr('About {minutes} minutes.', minutes=item.minutes)}"
            )

    def _item(self) -> Exercise | Lesson | None:
        current = self.list.currentItem()
        found = current.data(256) if current is not None else None
        return found if isinstance(found, Exercise | Lesson) else None

    def _ask_file(self) -> None:
        path = ask_open(self, self.windowTitle(), file_filter(tr("Exercises and lessons")))
        if path is not None:
            self.add_file(path)

    def add_file(self, path: Path) -> None:
        """Put a file's exercise or lesson on the list and choose it, or say in one sentence why not."""
        try:
            self._add(path.stem, str(path))
        except SpecError as error:
            self._say(str(error))
            return
        self.list.setCurrentRow(self.list.count() - 1)

    def _begin(self) -> None:
        item, text = self._item(), self.code.text().strip()
        if item is None:
            return
        code = drawn_code()
        if text:
            if not (text.isascii() and text.isdigit() and int(text) <= _MOST_CODE):
                self._say(tr("A code is a whole number, such as 4711."))
                return
            code = int(text)
        self.accept()
        self.begun.emit(Chosen(item, code, self.trainee.text()))

    def _say(self, sentence: str) -> None:
        self.problem.setText(sentence)
        self.problem.show()
