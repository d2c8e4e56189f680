"""Writing an exercise: fields at the left, at the right what a seed draws and what the pupil reads."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import Any

from PySide6.QtCore import Qt, QTimer
from PySide6.QtGui import QCloseEvent
from PySide6.QtWidgets import (
    QCheckBox,
    QFileDialog,
    QFormLayout,
    QGridLayout,
    QGroupBox,
    QHBoxLayout,
    QLineEdit,
    QMessageBox,
    QPlainTextEdit,
    QPushButton,
    QScrollArea,
    QSpinBox,
    QSplitter,
    QTabWidget,
    QTextBrowser,
    QVBoxLayout,
    QWidget,
)

from magview.classroom.preview import advice, preview_html
from magview.practice.exercise import Exercise, Fault, Goal
from magview.practice.faults import MAX_SEED
from magview.practice.library import find_exercise, read_exercise, shipped_exercises
from magview.spec.base import SpecError
from magview.spec.engine import Installation
from magview.spec.files import read_bench_item, validate, write_model
from magview.spec.formats import ENDING
from magview.spec.language import marked, tr
from magview.spec.library import find_installation, find_magneto, shipped_names
from magview.spec.magneto import Magneto
from magview.ui.class_editor_rows import RowList
from magview.ui.class_room import ClassRoom
from magview.ui.class_window import ClassWindow
from magview.ui.inputs import NumberSpin, QuietCombo
from magview.ui.practice_controls import wrapped
from magview.ui.style import tint
from magview.ui.theme import Theme

_SOON_MS = 250
"""Typing is not interrupted by looking at every letter."""

_STARTS = ("mounted", "switch_on", "slack", "marked", "chocked", "plugs_out", "proved", "disc_at_zero")
_ON_ENGINE = ("mounted", "marked", "chocked", "plugs_out", "disc_at_zero")
_FILES = marked("Exercises (*.json);;All files (*)")


class ExerciseEditor(ClassWindow):
    """One exercise. What is not valid yet is said in one sentence and cannot be saved."""

    def __init__(self, room: ClassRoom) -> None:
        super().__init__(tr("Exercise editor"), room.main.theme)
        self.room = room
        self.exercise: Exercise | None = None
        """What the fields say; None while they say nothing valid."""
        self._saved: dict[str, Any] = {}
        self._quiet = False
        self._soon = QTimer(self)
        self._soon.setSingleShot(True)
        self._soon.setInterval(_SOON_MS)
        self._soon.timeout.connect(self.look)
        split = QSplitter(Qt.Orientation.Horizontal)
        self.tabs = QTabWidget()
        self.tabs.setDocumentMode(True)
        self.faults = RowList(tr("&Add a fault"), Fault(kind="opening", size=(1.0, 3.0), way="either"))
        self.goals = RowList(tr("A&dd a goal"), Goal(goal="opening", weight=4.0))
        for page, words in (
            (self._build_text(), tr("&Text")), (self._build_bench(), tr("&Magneto and tray")),
            (self.faults, tr("&Faults")), (self.goals, tr("&Goals")),
        ):  # fmt: skip
            area = QScrollArea()
            area.setWidgetResizable(True)
            area.setFrameShape(QScrollArea.Shape.NoFrame)
            area.setWidget(page)
            self.tabs.addTab(area, words)
        for rows in (self.faults, self.goals):
            rows.changed.connect(self._changed)
        split.addWidget(self.tabs)
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
        self._saved = self.data()

    # -------------------------------------------------------------- building

    def _build_text(self) -> QWidget:
        page = QWidget()
        form = QFormLayout(page)
        self.name = QLineEdit()
        self.name.setMaxLength(120)
        self.name.textChanged.connect(self._changed)
        self.level = QSpinBox()
        self.level.setRange(1, 5)
        self.level.valueChanged.connect(self._changed)
        self.minutes, self.needed = NumberSpin(5.0, 0.0, 600.0), NumberSpin(5.0, 1.0, 100.0, "%")
        for spin in (self.minutes, self.needed):
            spin.entered.connect(self._changed)
            spin.said.connect(self.say)
        form.addRow(tr("&Name"), self.name)
        form.addRow(tr("&Level, 1 to 5"), self.level)
        form.addRow(tr("M&inutes, a guide"), self.minutes)
        form.addRow(tr("Marks &needed"), self.needed)
        self.story, self.task, self.hints = (self._lines() for _ in range(3))
        form.addRow(tr("&Story: what is told of the case"), self.story)
        form.addRow(tr("Tas&k: what is to be done"), self.task)
        form.addRow(tr("&Hints, one a line"), self.hints)
        form.setRowWrapPolicy(QFormLayout.RowWrapPolicy.WrapLongRows)
        return page

    def _lines(self) -> QPlainTextEdit:
        edit = QPlainTextEdit()
        edit.setTabChangesFocus(True)
        edit.setMinimumHeight(3 * self.fontMetrics().height())
        edit.textChanged.connect(self._changed)
        return edit

    def _build_bench(self) -> QWidget:
        page = QWidget()
        column = QVBoxLayout(page)
        form = QFormLayout()
        self.bench = QuietCombo()
        self.bench.setAccessibleName(tr("Magneto, alone or on its engine"))
        self.bench.setSizeAdjustPolicy(QuietCombo.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        self.bench.setMinimumContentsLength(24)
        for name in shipped_names("magnetos"):
            self._offer(find_magneto(name))
        for name in shipped_names("installations"):
            self._offer(find_installation(name))
        self.bench.currentIndexChanged.connect(self._changed)
        whole = QWidget()
        row = QHBoxLayout(whole)
        row.setContentsMargins(0, 0, 0, 0)
        row.addWidget(self.bench, 1)
        row.addWidget(self._button(tr("From a fil&e…"), self._ask_bench))
        whole.setFocusProxy(self.bench)
        form.addRow(tr("Magnet&o"), whole)
        self.both = QCheckBox(tr("&Both magnetos of the engine"))
        self.both.toggled.connect(self._changed)
        form.addRow(self.both)
        self.rotor = self._combo(
            [(tr("at neutral"), "neutral"), (tr("anywhere"), "anywhere"), (tr("at the E-gap"), "e-gap")]
        )
        form.addRow(tr("&Rotor, off the engine"), self.rotor)
        column.addLayout(form)
        column.addWidget(self._build_start())
        column.addWidget(self._build_tray())
        column.addStretch(1)
        return page

    def _build_start(self) -> QGroupBox:
        box = QGroupBox(tr("As it is found"))
        grid = QGridLayout(box)
        words = (
            tr("magneto on the engine"), tr("switch on"), tr("screws slack"), tr("coupling marked"),
            tr("wheels chocked"), tr("spark plugs out"), tr("switch lead proved"), tr("disc at zero"),
        )  # fmt: skip
        self.start: dict[str, QCheckBox] = {}
        for i, (name, text) in enumerate(zip(_STARTS, words, strict=True)):
            check = self.start[name] = QCheckBox(text)
            check.toggled.connect(self._changed)
            grid.addWidget(check, i // 2, i % 2)
        return box

    def _build_tray(self) -> QGroupBox:
        box = QGroupBox(tr("On the tray"))
        form = QFormLayout(box)
        self.edge = self._combo([(tr("none"), None), ("1/32 in", "1/32 in"), ("0.5 mm", "0.5 mm")])
        form.addRow(tr("Straightedge"), self.edge)
        self.disc = self._combo([(tr("none"), None), *((f"{d:g}°", d) for d in (0.25, 0.5, 1.0, 2.0, 5.0))])
        form.addRow(tr("Crank disc, read to"), self.disc)
        self.tray: dict[str, QCheckBox] = {}
        for name, text in (
            ("lamp", tr("timing lamp")), ("inch", tr("blades in inches")), ("metric", tr("metric blades")),
            ("stop", tr("piston stop")), ("meter", tr("meter for the switch lead")),
        ):  # fmt: skip
            check = self.tray[name] = QCheckBox(text)
            check.toggled.connect(self._changed)
            form.addRow(check)
        return box

    def _build_preview(self) -> QWidget:
        whole = QWidget()
        column = QVBoxLayout(whole)
        row = QFormLayout()
        self.seed = QSpinBox()
        self.seed.setRange(0, 999_999_999)
        self.seed.setValue(1)
        self.seed.valueChanged.connect(self._changed)
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
        self.save = self._button(tr("Save &as…"), self.ask_save)
        self.to_set = self._button(tr("Into the class's &set"), self._to_set)
        for widget in (self.shipped, self._button(tr("&Open…"), self._ask_open)):
            row.addWidget(widget)
        row.addStretch(1)
        self.try_it = self._button(tr("Tr&y it"), self._try)
        for widget in (self.try_it, self.to_set, self.save):
            row.addWidget(widget)
        return row

    def _combo(self, options: list[tuple[str, Any]]) -> QuietCombo:
        box = QuietCombo()
        for words, data in options:
            box.addItem(words, data)
        box.currentIndexChanged.connect(self._changed)
        return box

    def _button(self, words: str, slot: Callable[[], object]) -> QPushButton:
        button = QPushButton(words)
        button.setAutoDefault(False)
        button.clicked.connect(slot)
        return button

    # -------------------------------------------------------------- fields and exercise

    def _offer(self, item: Magneto | Installation) -> int:
        """Put a magneto or an installation on the list, once."""
        for i in range(self.bench.count()):
            if self.bench.itemData(i) == item:
                return i
        words = (
            item.name
            if isinstance(item, Magneto)
            else tr("{magneto}, on {engine} ({position})",
                    magneto=item.magneto.name, engine=item.engine.name, position=_position(item))
        )  # fmt: skip
        self.bench.addItem(words, item)
        return self.bench.count() - 1

    def show_exercise(self, exercise: Exercise) -> None:
        """Fill the fields."""
        self._quiet = True
        self.name.setText(exercise.name)
        self.level.setValue(exercise.level)
        self.minutes.show_value(exercise.minutes)
        self.needed.show_value(exercise.pass_percent)
        self.story.setPlainText(exercise.story)
        self.task.setPlainText(exercise.task)
        self.hints.setPlainText("\n".join(exercise.hints))
        bench = exercise.installation or exercise.magneto
        assert bench is not None
        self.bench.setCurrentIndex(self._offer(bench))
        self.both.setChecked(exercise.both_sides)
        self.rotor.setCurrentIndex(self.rotor.findData(exercise.start.rotor))
        for name, check in self.start.items():
            check.setChecked(getattr(exercise.start, name))
        tray = exercise.tray
        self.edge.setCurrentIndex(self.edge.findData(tray.straightedge))
        if self.disc.findData(tray.disc_step_deg) < 0:
            self.disc.addItem(f"{tray.disc_step_deg:g}°", tray.disc_step_deg)
        self.disc.setCurrentIndex(self.disc.findData(tray.disc_step_deg))
        for name, check in self.tray.items():
            check.setChecked(name in tray.blades if name in ("inch", "metric") else getattr(tray, name))
        self.faults.show_entries(exercise.faults)
        self.goals.show_entries(exercise.goals)
        self._quiet = False
        self.look()

    def data(self) -> dict[str, Any]:
        """What the fields say, as an exercise's file has it."""
        bench = self.bench.currentData()
        alone = isinstance(bench, Magneto)
        tray = {name: check.isChecked() for name, check in self.tray.items()}
        return {
            "format": "magview-exercise/1",
            "name": self.name.text().strip(),
            "level": self.level.value(),
            "story": self.story.toPlainText().strip(),
            "task": self.task.toPlainText().strip(),
            "hints": tuple(line.strip() for line in self.hints.toPlainText().splitlines() if line.strip()),
            "minutes": self.minutes.exact,
            "pass_percent": self.needed.exact,
            "magneto": bench if alone else None,
            "installation": None if alone else bench,
            "both_sides": self.both.isChecked() and not alone,
            "start": {
                "rotor": self.rotor.currentData(),
                **{name: check.isChecked() for name, check in self.start.items()},
            },
            "tray": {
                "straightedge": self.edge.currentData(),
                "disc_step_deg": self.disc.currentData(),
                "blades": tuple(unit for unit in ("inch", "metric") if tray.pop(unit)),
                **tray,
            },
            "faults": self.faults.entries(),
            "goals": self.goals.entries(),
        }

    def _changed(self) -> None:
        if not self._quiet:
            self._soon.start()

    def look(self) -> None:
        """Check what the fields say, and show what it would be."""
        self._soon.stop()
        alone = isinstance(self.bench.currentData(), Magneto)
        self.both.setEnabled(not alone)
        for name in _ON_ENGINE:
            self.start[name].setEnabled(not alone)
        self.rotor.setEnabled(alone or not self.start["mounted"].isChecked())
        try:
            exercise = validate(Exercise, self.data(), tr("this exercise"))
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
        tint(self.problem, self.theme.good if self.exercise is not None else self.theme.bad, bold=True)

    def set_theme(self, theme: Theme) -> None:
        """Change colours."""
        super().set_theme(theme)
        self._colour()

    # -------------------------------------------------------------- files

    def _begin_from(self, index: int) -> None:
        name = self.shipped.itemData(index)
        self.shipped.setCurrentIndex(0)
        if name is not None:
            self._replace(lambda: find_exercise(name))

    def _ask_open(self) -> None:
        self.ask_file(tr("Open an exercise"), tr(_FILES), self.open_path)

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
            self._saved = self.data()

        if self.unsaved:
            self._ask_unsaved(go_on)
        else:
            go_on()

    def _ask_bench(self) -> None:
        self.ask_file(tr("Magneto or installation"), tr("JSON (*.json);;All files (*)"), self.open_bench)

    def open_bench(self, path: Path) -> None:
        """Put a file's magneto or installation into the exercise, or say why not."""
        try:
            self.bench.setCurrentIndex(self._offer(read_bench_item(path)))
        except SpecError as error:
            self.say(str(error))

    def ask_save(self) -> None:
        """Ask where, and write the exercise there."""
        path, _ = QFileDialog.getSaveFileName(self, tr("Save the exercise"), f"exercise{ENDING}", tr(_FILES))
        if path:
            self.save_path(Path(path))

    def save_path(self, path: Path) -> bool:
        """Write the exercise; False, and said why, where that cannot be."""
        self.look()
        if self.exercise is None:
            self.say(tr("An exercise that is not valid yet is not saved"))
            return False
        try:
            write_model(path, self.exercise)
        except SpecError as error:
            self.say(str(error))
            return False
        self._saved = self.data()
        self.say(tr("Saved {file}.", file=path.name))
        return True

    def _to_set(self) -> None:
        self.look()
        if self.exercise is not None:
            from magview.ui.class_maker import ClassMaker

            maker = self.room.open("make")
            assert isinstance(maker, ClassMaker)
            maker.add_exercise(self.exercise)

    def _try(self) -> None:
        self.look()
        if self.exercise is not None:
            self.room.main.practice.begin(self.exercise, self.seed.value())

    # -------------------------------------------------------------- closing

    @property
    def unsaved(self) -> bool:
        """Whether the fields hold work that is in no file."""
        return self.data() != self._saved

    def closeEvent(self, event: QCloseEvent) -> None:
        """Work that is nowhere else is not lost by a click."""
        if self.unsaved:
            event.ignore()
            self._ask_unsaved(self.discard)
            return
        super().closeEvent(event)

    def discard(self) -> None:
        """Close and keep nothing."""
        self._saved = self.data()
        self.close()

    def _ask_unsaved(self, go_on: Callable[[], None]) -> None:
        box = QMessageBox(self)
        box.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        box.setIcon(QMessageBox.Icon.Question)
        box.setWindowTitle("magview")
        box.setText(tr("This exercise has not been saved."))
        box.addButton(tr("&Save…"), QMessageBox.ButtonRole.AcceptRole).clicked.connect(self.ask_save)
        box.addButton(tr("Go on &without saving"), QMessageBox.ButtonRole.DestructiveRole).clicked.connect(go_on)
        box.addButton(tr("&Back to the editor"), QMessageBox.ButtonRole.RejectRole)
        box.open()

    def halt(self) -> None:
        """Nothing is looked at any more."""
        self._soon.stop()


def _position(item: Installation) -> str:
    return {"left": tr("left"), "right": tr("right"), "single": tr("single")}[item.position]
