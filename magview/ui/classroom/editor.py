"""Writing an exercise: fields at the left, at the right what a seed draws and what the pupil reads."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import Any

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtWidgets import (
    QFormLayout,
    QHBoxLayout,
    QSpinBox,
    QSplitter,
    QTextBrowser,
    QVBoxLayout,
    QWidget,
)

from magview.classroom.preview import advice, preview_html
from magview.forms.draft import made
from magview.practice.exercise import Exercise
from magview.practice.faults import MAX_SEED
from magview.practice.library import find_exercise, read_exercise, shipped_exercises
from magview.spec.base import SpecError
from magview.spec.files import read_bench_item, write_model
from magview.spec.formats import ENDING, file_filter
from magview.spec.language import tr
from magview.ui.classroom.editor_fields import ExerciseFields
from magview.ui.classroom.kept import ClassKept
from magview.ui.classroom.page import ClassPage, push_button
from magview.ui.kit.asking import ACCEPT, DESTROY, REJECT, ask, ask_save
from magview.ui.kit.inputs import QuietCombo
from magview.ui.kit.look import Look
from magview.ui.kit.style import tint
from magview.ui.practice.controls import wrapped

_SOON_MS = 250
"""Typing is not interrupted by looking at every letter."""


class ExerciseEditor(ClassPage):
    """One exercise. What is not valid yet is said in one sentence and cannot be saved."""

    for_the_set = Signal(object)
    """Put this exercise at the end of the class's set."""

    def __init__(self, room: ClassKept, look: Look) -> None:
        super().__init__(tr("Exercise editor"), look)
        self.room = room
        self.exercise: Exercise | None = None
        """Exercise that the fields say; None while they say nothing valid."""
        self._saved: dict[str, Any] = {}
        self._soon = QTimer(self)
        self._soon.setSingleShot(True)
        self._soon.setInterval(_SOON_MS)
        self._soon.timeout.connect(self.check)
        look.changed.connect(self._colour)
        split = QSplitter(Qt.Orientation.Horizontal)
        self.fields = ExerciseFields()
        self.fields.changed.connect(self._look_soon)
        self.fields.bench_file.clicked.connect(self._ask_bench)
        split.addWidget(self.fields)
        split.addWidget(self._build_preview())
        split.setSizes([800, 440])
        split.setStretchFactor(0, 3)
        split.setStretchFactor(1, 2)
        for i in (0, 1):
            split.setCollapsible(i, False)
        self.column.addWidget(split, 1)
        self.problem = wrapped()
        self.problem.setAccessibleName(tr("Whether the exercise is valid"))
        self.column.addWidget(self.problem)
        self.column.addWidget(self.message)
        self.column.addLayout(self._build_foot())
        self.show_exercise(find_exercise("gap-wrong"))
        self._saved = self.fields.data()

    # -------------------------------------------------------------- building

    def _build_preview(self) -> QWidget:
        whole = QWidget()
        column = QVBoxLayout(whole)
        row = QFormLayout()
        self.seed = QSpinBox()
        self.seed.setRange(0, 999_999_999)
        self.seed.setValue(1)
        self.seed.valueChanged.connect(self._look_soon)
        row.addRow(tr("&Preview of seed"), self.seed)
        column.addLayout(row)
        self.preview = QTextBrowser()
        self.preview.setAccessibleName(tr("Preview"))
        column.addWidget(self.preview, 1)
        return whole

    def _build_foot(self) -> QHBoxLayout:
        row = QHBoxLayout()
        self.shipped = QuietCombo()
        self.shipped.setAccessibleName(tr("Begin from a shipped exercise"))
        self.shipped.addItem(tr("Begin from a shipped one…"), None)
        for name in shipped_exercises():
            self.shipped.addItem(find_exercise(name).name, name)
        self.shipped.activated.connect(self._begin_from)
        self.save = push_button(tr("Save &as…"), self.ask_save)
        self.to_set = push_button(tr("Into the class's &set"), self._to_set)
        for widget in (self.shipped, push_button(tr("&Open…"), self._ask_open)):
            row.addWidget(widget)
        row.addStretch(1)
        self.try_it = push_button(tr("Tr&y it"), self._try)
        for widget in (self.try_it, self.to_set, self.save):
            row.addWidget(widget)
        return row

    # -------------------------------------------------------------- whether it is valid

    def show_exercise(self, exercise: Exercise) -> None:
        """Fill the fields, and look at them at once."""
        self.fields.show_exercise(exercise)
        self.check()

    def _look_soon(self) -> None:
        self._soon.start()

    def check(self) -> None:
        """Check what the fields say, and show what it would be."""
        self._soon.stop()
        self.fields.fit_bench()
        try:
            exercise = made(Exercise, self.fields.data())
            html = preview_html(exercise, min(self.seed.value(), MAX_SEED - 1))
        except SpecError as error:
            self.exercise = None
            self.problem.setText(tr("Not valid yet: {why}.", why=str(error).rstrip(".")))
        else:
            self.exercise = exercise
            told = advice(exercise)
            self.problem.setText(tr("Valid. {advice}", advice=" ".join(told)) if told else tr("Valid."))
            at = self.preview.verticalScrollBar().value()
            self.preview.setHtml(html)
            self.preview.verticalScrollBar().setValue(at)
        self._colour()
        for button in (self.save, self.to_set, self.try_it):
            button.setEnabled(self.exercise is not None)

    def _colour(self) -> None:
        tint(self.problem, self.look.theme.good if self.exercise is not None else self.look.theme.bad, bold=True)

    # -------------------------------------------------------------- files

    def _begin_from(self, index: int) -> None:
        name = self.shipped.itemData(index)
        self.shipped.setCurrentIndex(0)
        if name is not None:
            self._replace(lambda: find_exercise(name))

    def _ask_open(self) -> None:
        self.ask_file(tr("Open an exercise"), file_filter(tr("Exercises")), self.open_path)

    def open_path(self, path: Path) -> None:
        """Show a file's exercise, or say why not."""
        self._replace(lambda: read_exercise(path))

    def _replace(self, find: Callable[[], Exercise]) -> None:
        """Show another exercise; unsaved work is asked for first."""
        try:
            exercise = find()
        except SpecError as error:
            self.say(str(error))
            return

        def go_on() -> None:
            self.say("")
            self.show_exercise(exercise)
            self._saved = self.fields.data()

        if self.unsaved:
            self._ask_unsaved(go_on)
        else:
            go_on()

    def _ask_bench(self) -> None:
        self.ask_file(tr("Magneto or installation"), file_filter(tr("Magnetos and installations")), self.open_bench)

    def open_bench(self, path: Path) -> None:
        """Put a file's magneto or installation into the exercise, or say why not."""
        try:
            self.fields.bench.setCurrentIndex(self.fields.offer(read_bench_item(path)))
        except SpecError as error:
            self.say(str(error))

    def ask_save(self) -> None:
        """Ask where, and write the exercise there."""
        path = ask_save(self, tr("Save the exercise"), f"exercise{ENDING}", file_filter(tr("Exercises")))
        if path is not None:
            self.save_path(path)

    def save_path(self, path: Path) -> bool:
        """Write the exercise; False, and said why, where that cannot be."""
        self.check()
        if self.exercise is None:
            self.say(tr("An exercise that is not valid yet is not saved"))
            return False
        try:
            write_model(path, self.exercise)
        except SpecError as error:
            self.say(str(error))
            return False
        self._saved = self.fields.data()
        self.say(tr("Saved {file}.", file=path.name))
        return True

    def _to_set(self) -> None:
        self.check()
        if self.exercise is not None:
            self.for_the_set.emit(self.exercise)

    def _try(self) -> None:
        self.check()
        if self.exercise is not None:
            self.room.practice.begin(self.exercise, self.seed.value())

    # -------------------------------------------------------------- closing

    @property
    def unsaved(self) -> bool:
        """Whether the fields hold work that is in no file."""
        return self.fields.data() != self._saved

    def may_close(self) -> bool:
        """Work that is nowhere else is not lost by a click."""
        if self.unsaved:
            self._ask_unsaved(self.discard)
            return False
        return True

    def discard(self) -> None:
        """Close and keep nothing."""
        self._saved = self.fields.data()
        self.close()

    def _ask_unsaved(self, go_on: Callable[[], None]) -> None:
        ask(
            self,
            tr("This exercise has not been saved."),
            (tr("&Save…"), ACCEPT, self.ask_save),
            (tr("Go on &without saving"), DESTROY, go_on),
            (tr("&Back to the editor"), REJECT, None),
        )

    def halt(self) -> None:
        """Nothing is looked at any more."""
        self._soon.stop()
