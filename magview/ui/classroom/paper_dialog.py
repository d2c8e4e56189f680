"""Choosing what to print for a class: a worksheet, its key, parts to name, or pictures of the bench as it stands."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

from PySide6.QtWidgets import (
    QCheckBox,
    QDialog,
    QDialogButtonBox,
    QFormLayout,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QVBoxLayout,
    QWidget,
)

from magview.bench.state import BenchState
from magview.classroom.drawings import Labels, has
from magview.classroom.worksheet import answer_key, handout, parts_sheet, worksheet
from magview.drawing.captions import ENDS, End
from magview.paper.blocks import Document
from magview.paper.sizes import PaperSize
from magview.practice.library import find_exercise, shipped_exercises
from magview.spec.base import SpecError
from magview.spec.formats import file_filter
from magview.spec.language import marked, tr, tr_n
from magview.ui.kit.asking import ask_open, ask_save
from magview.ui.kit.inputs import QuietCombo
from magview.ui.paper.pdf import print_pdf
from magview.ui.practice.controls import wrapped

_KINDS = {
    "worksheet": marked("Worksheet of an exercise"),
    "key": marked("Answer key of an exercise"),
    "parts": marked("Name the parts: sheet"),
    "parts-key": marked("Name the parts: key"),
    "handout": marked("Pictures of the bench as it stands"),
}
_LABELS: dict[Labels, str] = {
    "names": marked("Names"),
    "blanks": marked("Numbers, with lines to write on"),
    "answers": marked("Numbers, filled in"),
    "none": marked("Nothing"),
}
_SIZES: dict[PaperSize, str] = {"a4": marked("A4"), "letter": marked("Letter")}
_MOST_SEED = 2**53 - 1


class PaperDialog(QDialog):
    """Dialog that asks what to print, and where the PDF goes."""

    def __init__(self, state: BenchState, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._state = state
        self.setWindowTitle(tr("Paper for a class"))
        self.kind, self.exercise = QuietCombo(), QuietCombo()
        for kind, text in _KINDS.items():
            self.kind.addItem(tr(text), kind)
        for name in shipped_exercises():
            found = find_exercise(name)
            self.exercise.addItem(tr("Level {level} · {name}", level=found.level, name=found.name), name)
        self.code = QLineEdit("0")
        self.hints = QCheckBox(tr("With the exercise's &hints"))
        self.parts = QCheckBox(tr("With pictures whose &parts are to be named"))
        self.parts.setChecked(True)
        self.pictures = {end: QCheckBox(tr(title)) for end, title in ENDS.items() if has(state, end)}
        self.labels = QuietCombo()
        for labels, text in _LABELS.items():
            self.labels.addItem(tr(text), labels)
        self.told = QCheckBox(tr("With what there is to sa&y of each part"))
        self.paper_size = QuietCombo()
        for size, text in _SIZES.items():
            self.paper_size.addItem(tr(text), size)
        self.problem = wrapped()
        self.problem.hide()
        self._lay_out()
        self.kind.currentIndexChanged.connect(self._show_kind)
        self.labels.currentIndexChanged.connect(self._show_kind)
        self._show_kind()

    def _lay_out(self) -> None:
        layout, self._form = QVBoxLayout(self), QFormLayout()
        self._form.addRow(tr("&What"), self.kind)
        self._row = QWidget()
        row = QHBoxLayout(self._row)
        row.setContentsMargins(0, 0, 0, 0)
        row.addWidget(self.exercise, 1)
        buttons = QDialogButtonBox()
        self.from_file = buttons.addButton(tr("From a &file…"), QDialogButtonBox.ButtonRole.ActionRole)
        self.from_file.setAutoDefault(False)
        row.addWidget(buttons)
        self._form.addRow(tr("&Exercise"), self._row)
        self._form.addRow(tr("&Code"), self.code)
        label = self._form.labelForField(self._row)
        if isinstance(label, QLabel):
            label.setBuddy(self.exercise)
        self.exercise.setAccessibleName(tr("Exercise"))
        self._form.addRow("", self.hints)
        self._form.addRow("", self.parts)
        for i, (end, check) in enumerate(self.pictures.items()):
            check.setChecked(end == "breaker")
            self._form.addRow(tr("Pictures") if i == 0 else "", check)
        self._form.addRow(tr("Beside the &parts"), self.labels)
        self._form.addRow("", self.told)
        self._form.addRow(tr("Paper si&ze"), self.paper_size)
        layout.addLayout(self._form)
        layout.addWidget(self.problem)
        below = QDialogButtonBox()
        self.save = below.addButton(tr("&Save as PDF…"), QDialogButtonBox.ButtonRole.AcceptRole)
        below.addButton(tr("Close"), QDialogButtonBox.ButtonRole.RejectRole)
        self.save.setDefault(True)
        below.accepted.connect(self._ask)
        below.rejected.connect(self.reject)
        self.from_file.clicked.connect(self._ask_exercise)
        layout.addStretch(1)
        layout.addWidget(below)

    def _show_kind(self) -> None:
        """Only what the kind of paper asks for."""
        kind = self.kind.currentData()
        of_exercise, pictures = kind in ("worksheet", "key"), kind == "handout"
        for row in (self._row, self.code, self.parts):
            self._form.setRowVisible(row, of_exercise)
        self._form.setRowVisible(self.hints, kind == "worksheet")
        for check in (*self.pictures.values(), self.labels):
            self._form.setRowVisible(check, pictures)
        self._form.setRowVisible(self.told, pictures and self.labels.currentData() == "names")
        self.problem.hide()
        self.adjustSize()

    # -------------------------------------------------------------- what is printed

    def paper(self) -> Document:
        """Return the paper chosen. Raises SpecError, in one sentence, for what cannot be printed."""
        kind = self.kind.currentData()
        if kind in ("parts", "parts-key"):
            return parts_sheet(self._state, key=kind == "parts-key")
        if kind == "handout":
            ends: tuple[End, ...] = tuple(end for end, check in self.pictures.items() if check.isChecked())
            if not ends:
                raise SpecError(tr("Choose at least one picture."))
            return handout(self._state, ends, self.labels.currentData(), told=self.told.isChecked())
        exercise, seed = find_exercise(self.exercise.currentData()), self._seed()
        if kind == "key":
            return answer_key(exercise, seed, parts=self.parts.isChecked())
        return worksheet(exercise, seed, hints=self.hints.isChecked(), parts=self.parts.isChecked())

    def _seed(self) -> int:
        text = self.code.text().strip()
        if not (text.isascii() and text.isdigit() and int(text) <= _MOST_SEED):
            raise SpecError(tr("A code is a whole number, such as 4711."))
        return int(text)

    def save_as(self, path: Path) -> bool:
        """Write what is chosen; False, said in the dialog, where that cannot be done."""
        try:
            pages = print_pdf(path, replace(self.paper(), size=self.paper_size.currentData()))
        except SpecError as error:
            self._say(str(error))
            return False
        self._say(tr_n("Saved {file}: {count} page.", "Saved {file}: {count} pages.", file=path.name, count=pages))
        return True

    def add_file(self, path: Path) -> None:
        """Put a file's exercise on the list and choose it, or say in one sentence why not."""
        try:
            found = find_exercise(str(path))
        except SpecError as error:
            self._say(str(error))
            return
        self.exercise.addItem(tr("Level {level} · {name}", level=found.level, name=found.name), str(path))
        self.exercise.setCurrentIndex(self.exercise.count() - 1)

    def _ask(self) -> None:
        try:
            self.paper()  # what cannot be printed is said before a place is asked for
        except SpecError as error:
            self._say(str(error))
            return
        name = f"{self.kind.currentData()}.pdf"
        path = ask_save(self, self.windowTitle(), name, tr("PDF (*.pdf)"))
        if path is not None:
            self.save_as(path)

    def _ask_exercise(self) -> None:
        files = file_filter(tr("Exercises"))
        path = ask_open(self, self.windowTitle(), files)
        if path is not None:
            self.add_file(path)

    def _say(self, sentence: str) -> None:
        self.problem.setText(sentence)
        self.problem.show()
