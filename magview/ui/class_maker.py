"""An instructor's set: exercises in order, settings, the code in large type, and the answer key."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtGui import QFont, QGuiApplication
from PySide6.QtWidgets import (
    QCheckBox,
    QFileDialog,
    QFormLayout,
    QGridLayout,
    QGroupBox,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QListWidget,
    QListWidgetItem,
    QPlainTextEdit,
    QSpinBox,
    QTabWidget,
    QVBoxLayout,
    QWidget,
)

from magview.classroom.key import KeyRow, answer_key, key_csv, key_heads, key_rows, key_text
from magview.classroom.sets import (
    MOST_MINUTES,
    MOST_SEED,
    UNITS,
    ClassSet,
    code_of,
    new_seed,
    read_set,
    why_no_code,
    write_set,
)
from magview.practice.exercise import Exercise
from magview.practice.library import find_exercise, read_exercise, shipped_exercises
from magview.spec.base import SpecError
from magview.spec.files import validate, write_text
from magview.spec.formats import ENDING
from magview.spec.language import tr
from magview.ui.class_room import ClassRoom
from magview.ui.class_window import ClassWindow, SortedTable, push_button
from magview.ui.inputs import QuietCombo
from magview.ui.practice_controls import wrapped
from magview.ui.worker import Progress, ShouldStop, Worker

_HELD = Qt.ItemDataRole.UserRole
_CODE_SIZE = 2.2
"""The code's type against the window's."""


class ClassMaker(ClassWindow):
    """Everything in it makes one set; its code follows each change."""

    def __init__(self, room: ClassRoom) -> None:
        super().__init__(tr("Class set"), room.main.theme)
        self.room = room
        self._quiet = True
        self._worker = Worker(self)
        self._worker.finished.connect(self._key_made)
        self._worker.failed.connect(self._key_why)
        self.tabs = QTabWidget()
        self.tabs.setDocumentMode(True)
        self.tabs.addTab(self._build_set(), tr("&Set"))
        self.tabs.addTab(self._build_key(), tr("Answer &key"))
        self.tabs.currentChanged.connect(self._show_key)
        self.column.addWidget(self._build_code())
        self.column.addWidget(self.tabs, 1)
        self.column.addWidget(self.message)
        self.seed.setValue(new_seed())
        self._quiet = False
        if room.set is not None:
            self.show_set(room.set)
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

    def _build_set(self) -> QWidget:
        whole = QWidget()
        grid = QGridLayout(whole)
        self.shipped, self.chosen = QListWidget(), QListWidget()
        self.shipped.setAccessibleName(tr("Exercises there are"))
        self.chosen.setAccessibleName(tr("Exercises of the set, in order"))
        for name in shipped_exercises():
            self._list(self.shipped, find_exercise(name))
        self.shipped.itemActivated.connect(self.add)
        self.add_button = push_button(tr("A&dd ▶"), self.add)
        self.file_button = push_button(tr("From a &file…"), self._ask_exercise)
        self.edit_button = push_button(tr("&Write one…"), self._edit)
        self.up, self.down = push_button(tr("&Up"), self._up), push_button(tr("Do&wn"), self._down)
        self.drop = push_button(tr("&Remove"), self.remove)
        middle = QVBoxLayout()
        middle.addStretch(1)
        for button in (self.add_button, self.up, self.down, self.drop):
            middle.addWidget(button)
        middle.addStretch(1)
        grid.addWidget(_label(tr("&Exercises"), self.shipped), 0, 0)
        grid.addWidget(_label(tr("&In this set, in order"), self.chosen), 0, 2)
        grid.addWidget(self.shipped, 1, 0)
        grid.addLayout(middle, 1, 1)
        grid.addWidget(self.chosen, 1, 2)
        self.tale = wrapped()
        self.tale.setMinimumHeight(round(4.2 * self.fontMetrics().height()))
        self.tale.setAlignment(Qt.AlignmentFlag.AlignTop)
        for where in (self.shipped, self.chosen):
            where.currentItemChanged.connect(self._tell)
        self.shipped.setCurrentRow(0)
        foot = QHBoxLayout()
        foot.addWidget(self.file_button)
        foot.addWidget(self.edit_button)
        foot.addStretch(1)
        grid.addWidget(self.tale, 2, 0, 1, 3)
        grid.addLayout(foot, 3, 0, 1, 3)
        grid.addWidget(self._build_settings(), 0, 3, 4, 1)
        grid.setColumnStretch(0, 3)
        grid.setColumnStretch(2, 3)
        grid.setColumnStretch(3, 2)
        return whole

    def _build_settings(self) -> QGroupBox:
        box = QGroupBox(tr("Settings"))
        form = QFormLayout(box)
        self.set_title = QLineEdit()
        self.set_title.setMaxLength(120)
        self.set_title.textChanged.connect(self.changed)
        self.own = QuietCombo()
        self.own.addItems([tr("the same for everyone"), tr("one of their own for each pupil")])
        self.own.currentIndexChanged.connect(self.changed)
        self.hints = QCheckBox(tr("&Hints may be asked for"))
        self.hints.setChecked(True)
        self.hints.toggled.connect(self.changed)
        self.units = QuietCombo()
        for words, unit in zip(
            (tr("as the exercise has them"), tr("metric, too"), tr("in inches, too")), UNITS, strict=True
        ):
            self.units.addItem(words, unit)
        self.units.setToolTip(tr("A straightedge of this unit, and blades of it beside the exercise's own"))
        self.units.currentIndexChanged.connect(self.changed)
        self.minutes = QSpinBox()
        self.minutes.setRange(0, MOST_MINUTES)
        self.minutes.setSpecialValueText(tr("as the exercise says"))
        self.minutes.setToolTip(tr("Shown to the pupils as a guide; time is not marked"))
        self.minutes.valueChanged.connect(self.changed)
        self.seed = QSpinBox()
        self.seed.setRange(0, MOST_SEED)
        self.seed.setToolTip(tr("The same number draws the same faults"))
        self.seed.valueChanged.connect(self.changed)
        self.pupils = QPlainTextEdit()
        self.pupils.setPlaceholderText(tr("one name or number a line"))
        self.pupils.setTabChangesFocus(True)
        self.pupils.setAccessibleName(tr("Pupils"))
        self.pupils.textChanged.connect(self.changed)
        form.addRow(tr("&Title"), self.set_title)
        form.addRow(tr("Fau&lts"), self.own)
        form.addRow(tr("&Blades, edge"), self.units)
        form.addRow(tr("&Minutes"), self.minutes)
        form.addRow(tr("&Number"), self._beside_seed())
        form.addRow(self.hints)
        form.addRow(_label(tr("Pu&pils (not in the code; for the key, and to see who is missing)"), self.pupils))
        form.addRow(self.pupils)
        return box

    def _beside_seed(self) -> QWidget:
        whole = QWidget()
        row = QHBoxLayout(whole)
        row.setContentsMargins(0, 0, 0, 0)
        row.addWidget(self.seed, 1)
        row.addWidget(push_button(tr("Draw ane&w"), self._draw))
        whole.setFocusProxy(self.seed)
        return whole

    def _build_key(self) -> QWidget:
        whole = QWidget()
        column = QVBoxLayout(whole)
        self.key = SortedTable(tr("Answer key"), key_heads(), wide=(3, 4))
        self.key_why = wrapped()
        column.addWidget(self.key_why)
        column.addWidget(self.key, 1)
        row = QHBoxLayout()
        row.addWidget(wrapped(tr("For the instructor: it tells every hidden fault.")), 1)
        row.addWidget(push_button(tr("Save &key…"), self._ask_key))
        column.addLayout(row)
        return whole

    # -------------------------------------------------------------- the list

    def _list(self, where: QListWidget, exercise: Exercise) -> None:
        item = QListWidgetItem(tr("Level {level} · {name}", level=exercise.level, name=tr(exercise.name)))
        item.setData(_HELD, exercise)
        where.addItem(item)

    def _tell(self, item: QListWidgetItem | None) -> None:
        if item is not None:
            exercise = item.data(_HELD)
            self.tale.setText(f"{tr(exercise.story)} {tr(exercise.task)}")

    def add(self) -> None:
        """Put the exercise that is chosen at the end of the set."""
        item = self.shipped.currentItem()
        if item is not None:
            self.add_exercise(item.data(_HELD))

    def add_exercise(self, exercise: Exercise) -> None:
        """Put an exercise at the end of the set."""
        self._list(self.chosen, exercise)
        self.chosen.setCurrentRow(self.chosen.count() - 1)
        self.changed()

    def remove(self) -> None:
        """Take the chosen exercise out of the set."""
        self.chosen.takeItem(self.chosen.currentRow())
        self.changed()

    def _up(self) -> None:
        self._move(-1)

    def _down(self) -> None:
        self._move(1)

    def _move(self, by: int) -> None:
        row = self.chosen.currentRow()
        if row < 0 or not 0 <= row + by < self.chosen.count():
            return
        item = self.chosen.takeItem(row)
        self.chosen.insertItem(row + by, item)
        self.chosen.setCurrentRow(row + by)
        self.changed()

    def _ask_exercise(self) -> None:
        self.ask_file(tr("Exercise from a file"), tr("Exercises (*.json);;All files (*)"), self.add_file)

    def add_file(self, path: Path) -> None:
        """Put a file's exercise at the end of the set, or say why not."""
        try:
            self.add_exercise(read_exercise(path))
        except SpecError as error:
            self.say(str(error))

    def _edit(self) -> None:
        self.room.open("editor")

    def _draw(self) -> None:
        self.seed.setValue(new_seed())

    def _gather(self) -> None:
        self.room.open("gather")

    # -------------------------------------------------------------- the set

    def made(self) -> ClassSet:
        """The set as it stands. Raises SpecError for one that is none."""
        names = tuple(" ".join(line.split()) for line in self.pupils.toPlainText().splitlines() if line.strip())
        if not self.chosen.count():
            raise SpecError(tr("Add an exercise: a set has one at least"))
        data = {
            "format": "magview-class/1",
            "title": self.set_title.text().strip(),
            "seed": self.seed.value(),
            "each_their_own": self.own.currentIndex() == 1,
            "hints": self.hints.isChecked(),
            "units": self.units.currentData(),
            "minutes": self.minutes.value() or None,
            "exercises": tuple(self.chosen.item(i).data(_HELD) for i in range(self.chosen.count())),
            "pupils": names,
        }
        return validate(ClassSet, data, tr("this set"))

    def show_set(self, of: ClassSet) -> None:
        """Show a set that was made before."""
        self._quiet = True
        self.chosen.clear()
        for exercise in of.exercises:
            self._list(self.chosen, exercise)
        self.chosen.setCurrentRow(0)
        self.set_title.setText(of.title)
        self.seed.setValue(of.seed)
        self.own.setCurrentIndex(int(of.each_their_own))
        self.hints.setChecked(of.hints)
        self.units.setCurrentIndex(UNITS.index(of.units))
        self.minutes.setValue(of.minutes or 0)
        self.pupils.setPlainText("\n".join(of.pupils))
        self._quiet = False
        self.changed()

    def changed(self) -> None:
        """Make code and key anew."""
        if self._quiet:
            return
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
        self.ask_file(tr("Open a set"), tr("Class sets (*.json);;All files (*)"), self.open_path)

    def open_path(self, path: Path) -> None:
        """Show a file's set, or say why not."""
        try:
            self.show_set(read_set(path))
        except SpecError as error:
            self.say(str(error))

    def _ask_save(self) -> None:
        path, _ = QFileDialog.getSaveFileName(self, tr("Save the set"), f"class{ENDING}", tr("Class sets (*.json)"))
        if path:
            self.save_path(Path(path))

    def save_path(self, path: Path) -> None:
        """Write the set."""
        self._write(path, lambda: write_set(path, self.made()))

    def _ask_key(self) -> None:
        kinds = tr("Text (*.txt);;Table (*.csv)")
        path, _ = QFileDialog.getSaveFileName(self, tr("Save the answer key"), "answer-key.txt", kinds)
        if path:
            self.save_key_path(Path(path))

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


def _label(words: str, buddy: QWidget) -> QLabel:
    label = QLabel(words)
    label.setBuddy(buddy)
    label.setWordWrap(True)
    return label
