"""An instructor's set: exercises in order, settings, the code in large type, and the answer key."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtGui import QFont, QGuiApplication
from PySide6.QtWidgets import QHBoxLayout, QLabel, QTabWidget, QVBoxLayout, QWidget

from magview.classroom.key import KeyRow, answer_key, key_csv, key_heads, key_rows, key_text
from magview.classroom.sets import ClassSet, code_of, read_set, why_no_code, write_set
from magview.forms.draft import made
from magview.practice.library import read_exercise
from magview.spec.base import SpecError
from magview.spec.files import write_text
from magview.spec.formats import ENDING, file_filter
from magview.spec.language import tr
from magview.ui.classroom.kept import ClassKept
from magview.ui.classroom.maker_fields import SetFields
from magview.ui.classroom.page import ClassPage, push_button
from magview.ui.kit.asking import ask_save
from magview.ui.kit.look import Look
from magview.ui.kit.table import Table
from magview.ui.kit.worker import Progress, ShouldStop, Worker
from magview.ui.practice.controls import wrapped

_CODE_SIZE = 2.2
"""The code's type against the window's."""


class ClassMaker(ClassPage):
    """Everything in it makes one set; its code follows each change."""

    def __init__(self, room: ClassKept, look: Look) -> None:
        super().__init__(tr("Class set"), look)
        self.room = room
        self._worker = Worker(self)
        self._worker.finished.connect(self._key_made)
        self._worker.failed.connect(self._key_why)
        self.tabs = QTabWidget()
        self.tabs.setDocumentMode(True)
        self.fields = SetFields()
        self.fields.file_button.clicked.connect(self._ask_exercise)
        self.fields.edit_button.clicked.connect(self._edit)
        self.tabs.addTab(self.fields, tr("&Set"))
        self.tabs.addTab(self._build_key(), tr("Answer &key"))
        self.tabs.currentChanged.connect(self._show_key)
        self.column.addWidget(self._build_code())
        self.column.addWidget(self.tabs, 1)
        self.column.addWidget(self.message)
        if room.set is not None:
            self.fields.show_set(room.set)
        self.fields.changed.connect(self.changed)
        self.changed()

    # -------------------------------------------------------------- building

    def _build_code(self) -> QWidget:
        whole = QWidget()
        row = QHBoxLayout(whole)
        row.setContentsMargins(0, 0, 0, 0)
        self.code = QLabel()
        self.code.setAccessibleName(tr("Class code"))
        self.code.setTextInteractionFlags(
            Qt.TextInteractionFlag.TextSelectableByMouse | Qt.TextInteractionFlag.TextSelectableByKeyboard
        )
        font = QFont(self.font())
        font.setPointSizeF(font.pointSizeF() * _CODE_SIZE)
        font.setBold(True)
        font.setFixedPitch(True)
        self.code.setFont(font)
        self.why = wrapped()
        self.copy = push_button(tr("Co&py"), self._copy)
        self.save, self.open = push_button(tr("Save set &as…"), self._ask_save), push_button(
            tr("&Open set…"), self._ask_open
        )  # fmt: skip
        self.gather = push_button(tr("&Gather…"), self._gather)
        words = QVBoxLayout()
        words.addWidget(self.code)
        words.addWidget(self.why)
        row.addLayout(words, 1)
        for button in (self.copy, self.open, self.save, self.gather):
            row.addWidget(button)
        return whole

    def _build_key(self) -> QWidget:
        whole = QWidget()
        column = QVBoxLayout(whole)
        self.key = Table(tr("Answer key"), key_heads(), wide=(3, 4), sortable=True)
        self.key_why = wrapped()
        column.addWidget(self.key_why)
        column.addWidget(self.key, 1)
        row = QHBoxLayout()
        row.addWidget(wrapped(tr("For the instructor: it tells every hidden fault.")), 1)
        row.addWidget(push_button(tr("Save &key…"), self._ask_key))
        column.addLayout(row)
        return whole

    # -------------------------------------------------------------- exercises from elsewhere

    def _ask_exercise(self) -> None:
        self.ask_file(tr("Exercise from a file"), file_filter(tr("Exercises")), self.add_file)

    def add_file(self, path: Path) -> None:
        """Put a file's exercise at the end of the set, or say why not."""
        try:
            self.fields.add_exercise(read_exercise(path))
        except SpecError as error:
            self.say(str(error))

    def _edit(self) -> None:
        self.page_wanted.emit("editor")

    def _gather(self) -> None:
        self.page_wanted.emit("gather")

    # -------------------------------------------------------------- the set

    def made(self) -> ClassSet:
        """The set as it stands. Raises SpecError for one that is none."""
        return made(ClassSet, self.fields.data())

    def changed(self) -> None:
        """Make code and key anew."""
        self.say("")
        try:
            of = self.made()
            why = why_no_code(of)
            code = "" if why else code_of(of)
        except SpecError as error:
            of, why, code = None, str(error), ""
        self.room.set = of
        self.code.setText(code)
        self.code.setVisible(bool(code))
        self.why.setText(why if of is None or why else self._kept_back(of))
        self.copy.setEnabled(bool(code))
        self.save.setEnabled(of is not None)
        self._show_key()

    def _kept_back(self, of: ClassSet) -> str:
        return (
            tr("Title and pupils are not in the code; they travel in the set's file.")
            if of.title or of.pupils
            else ""
        )

    def _show_key(self) -> None:
        """Only when it is looked at, and beside the window: a key for hundreds of pupils takes seconds."""
        of = self.room.set
        if self.tabs.currentIndex() != 1:
            return
        self.key.fill([], [])
        if of is None:
            self._key_why(tr("There is no set yet."))
            return
        self._key_why(tr("The key is being made…"))

        def work(progress: Progress, should_stop: ShouldStop) -> list[KeyRow]:
            return key_rows(answer_key(of))

        self._worker.start(work)

    def _key_made(self, rows: list[KeyRow]) -> None:
        self.key.fill(rows, list(range(len(rows))))
        self._key_why("")

    def _key_why(self, why: str) -> None:
        self.key_why.setText(why)
        self.key_why.setVisible(bool(why))

    def halt(self) -> None:
        """Nothing is worked at for a window that is gone."""
        self._worker.cancel()
        self.room.keep_set()

    def _copy(self) -> None:
        QGuiApplication.clipboard().setText(self.code.text())
        self.say(tr("The code is on the clipboard."))

    # -------------------------------------------------------------- files

    def _ask_open(self) -> None:
        self.ask_file(tr("Open a set"), file_filter(tr("Class sets")), self.open_path)

    def open_path(self, path: Path) -> None:
        """Show a file's set, or say why not."""
        try:
            self.fields.show_set(read_set(path))
        except SpecError as error:
            self.say(str(error))

    def _ask_save(self) -> None:
        path = ask_save(self, tr("Save the set"), f"class{ENDING}", file_filter(tr("Class sets")))
        if path is not None:
            self.save_path(path)

    def save_path(self, path: Path) -> None:
        """Write the set."""
        self._write(path, lambda: write_set(path, self.made()))

    def _ask_key(self) -> None:
        kinds = tr("Text (*.txt);;Table (*.csv)")
        path = ask_save(self, tr("Save the answer key"), "answer-key.txt", kinds)
        if path is not None:
            self.save_key_path(path)

    def save_key_path(self, path: Path) -> None:
        """Write the key, as a table where the name ends in .csv, else as text."""

        def write() -> None:
            of = self.made()
            entries = answer_key(of)
            table = path.suffix.lower() == ".csv"
            write_text(path, key_csv(entries) if table else key_text(of, entries, self.code.text()))

        self._write(path, write)

    def _write(self, path: Path, write: Callable[[], None]) -> None:
        try:
            write()
        except SpecError as error:
            self.say(str(error))
            return
        self.say(tr("Saved {file}.", file=path.name))
