"""The fields of an exercise, a tab for each kind: text, magneto and tray, faults, goals."""

from __future__ import annotations

from typing import Any

from PySide6.QtCore import Signal
from PySide6.QtWidgets import (
    QCheckBox,
    QFormLayout,
    QGridLayout,
    QGroupBox,
    QHBoxLayout,
    QLineEdit,
    QPlainTextEdit,
    QScrollArea,
    QSpinBox,
    QTabWidget,
    QVBoxLayout,
    QWidget,
)

from magview.bench.lead_words import LAMPS
from magview.practice.exercise import Exercise
from magview.practice.exercise_parts import Fault, Goal
from magview.spec.engine import Installation
from magview.spec.language import tr
from magview.spec.library import find_installation, find_magneto, shipped_names
from magview.spec.magneto import Magneto
from magview.ui.classroom.editor_rows import RowList
from magview.ui.classroom.editor_story import StoryFields
from magview.ui.classroom.window import push_button
from magview.ui.kit.inputs import NumberSpin, QuietCombo

_STARTS = ("mounted", "switch_on", "slack", "marked", "chocked", "plugs_out", "made_safe", "proved", "disc_at_zero")
_ON_ENGINE = ("mounted", "marked", "chocked", "plugs_out", "made_safe", "disc_at_zero")


class ExerciseFields(QTabWidget):
    """What an exercise's file says, as fields; whether it is valid is for others to say."""

    changed = Signal()
    """Something else is in a field."""
    said = Signal(str)
    """Why a number is not taken."""

    def __init__(self) -> None:
        super().__init__()
        self._quiet = False
        self._kept: Exercise | None = None
        self.setDocumentMode(True)
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
            self.addTab(area, words)
        for rows in (self.faults, self.goals):
            rows.changed.connect(self._changed)

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
            spin.said.connect(self.said)
        form.addRow(tr("&Name"), self.name)
        form.addRow(tr("&Level, 1 to 5"), self.level)
        form.addRow(tr("M&inutes, a guide"), self.minutes)
        form.addRow(tr("Marks &needed"), self.needed)
        self.story, self.task, self.hints = (self._lines() for _ in range(3))
        form.addRow(tr("&Story: what is told of the case"), self.story)
        self.by_way = StoryFields()
        self.by_way.changed.connect(self._changed)
        form.addRow(self.by_way)
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
            self.offer(find_magneto(name))
        for name in shipped_names("installations"):
            self.offer(find_installation(name))
        self.bench.currentIndexChanged.connect(self._changed)
        whole = QWidget()
        row = QHBoxLayout(whole)
        row.setContentsMargins(0, 0, 0, 0)
        row.addWidget(self.bench, 1)
        self.bench_file = push_button(tr("From a fil&e…"))
        row.addWidget(self.bench_file)
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
        column.addWidget(self._build_manual())
        column.addStretch(1)
        return page

    def _build_start(self) -> QGroupBox:
        box = QGroupBox(tr("As it is found"))
        grid = QGridLayout(box)
        words = (
            tr("magneto on the engine"), tr("switch on"), tr("screws slack"), tr("coupling marked"),
            tr("wheels chocked"), tr("spark plugs out"), tr("fuel, mixture, throttle, leads seen to"),
            tr("switch lead proved"), tr("disc at zero"),
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
        self.edge = self._combo([(tr("none"), None), ("1/64 in", "1/64 in"), ("0.5 mm", "0.5 mm")])
        form.addRow(tr("Straightedge"), self.edge)
        self.disc = self._combo([(tr("none"), None), *((f"{d:g}°", d) for d in (0.25, 0.5, 1.0, 2.0, 5.0))])
        form.addRow(tr("Crank disc, read to"), self.disc)
        kinds = [(f"{tr(words)[:1].upper()}{tr(words)[1:]}", kind) for kind, words in LAMPS.items()]
        self.lamp_kind = self._combo(kinds)
        self.lamp_kind.setSizeAdjustPolicy(QuietCombo.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        self.lamp_kind.setMinimumContentsLength(24)
        form.addRow(tr("Timing light"), self.lamp_kind)
        self.tray: dict[str, QCheckBox] = {}
        for name, text in (
            ("lamp", tr("timing lamp")), ("inch", tr("blades in inches")), ("metric", tr("metric blades")),
            ("stop", tr("piston stop")), ("meter", tr("meter for the switch lead")),
        ):  # fmt: skip
            check = self.tray[name] = QCheckBox(text)
            check.toggled.connect(self._changed)
            form.addRow(check)
        return box

    def _build_manual(self) -> QGroupBox:
        box = QGroupBox(tr("What this manual says"))
        form = QFormLayout(box)
        self.felt = QSpinBox()
        self.felt.setRange(0, 20)
        self.felt.setSpecialValueText(tr("not asked for"))
        self.felt.valueChanged.connect(self._changed)
        form.addRow(tr("Drops of oil for a dry felt"), self.felt)
        self.dressing: dict[str, QCheckBox] = {}
        for name, text in (("light", tr("light marks may be dressed")), ("mound", tr("a mound may be dressed"))):
            check = self.dressing[name] = QCheckBox(text)
            check.toggled.connect(self._changed)
            form.addRow(check)
        return box

    def _combo(self, options: list[tuple[str, Any]]) -> QuietCombo:
        box = QuietCombo()
        for words, data in options:
            box.addItem(words, data)
        box.currentIndexChanged.connect(self._changed)
        return box

    # -------------------------------------------------------------- fields and exercise

    def offer(self, item: Magneto | Installation) -> int:
        """Put a magneto or an installation on the list, once; returns its place there."""
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
        self._kept = exercise
        self.name.setText(exercise.name)
        self.level.setValue(exercise.level)
        self.minutes.show_value(exercise.minutes)
        self.needed.show_value(exercise.pass_percent)
        self.story.setPlainText(exercise.story)
        self.by_way.show_entry(exercise.story_by_way)
        self.task.setPlainText(exercise.task)
        self.hints.setPlainText("\n".join(exercise.hints))
        bench = exercise.installation or exercise.magneto
        assert bench is not None
        self.bench.setCurrentIndex(self.offer(bench))
        self.both.setChecked(exercise.both_sides)
        self.rotor.setCurrentIndex(self.rotor.findData(exercise.start.rotor))
        for name, check in self.start.items():
            check.setChecked(getattr(exercise.start, name))
        tray = exercise.tray
        self.edge.setCurrentIndex(self.edge.findData(tray.straightedge))
        if self.disc.findData(tray.disc_step_deg) < 0:
            self.disc.addItem(f"{tray.disc_step_deg:g}°", tray.disc_step_deg)
        self.disc.setCurrentIndex(self.disc.findData(tray.disc_step_deg))
        self.lamp_kind.setCurrentIndex(self.lamp_kind.findData(tray.lamp_kind))
        for name, check in self.tray.items():
            check.setChecked(name in tray.blades if name in ("inch", "metric") else getattr(tray, name))
        self.felt.setValue(exercise.felt_drops or 0)
        for name, check in self.dressing.items():
            check.setChecked(name in exercise.dressing_allowed)
        self.faults.show_entries(exercise.faults)
        self.goals.show_entries(exercise.goals)
        self._quiet = False
        self.changed.emit()

    def data(self) -> dict[str, Any]:
        """What the fields say, as an exercise's file has it."""
        bench = self.bench.currentData()
        alone = isinstance(bench, Magneto)
        tray = {name: check.isChecked() for name, check in self.tray.items()}
        return {
            "format": "magview-exercise/1",
            # A new one goes by the new rules.
            "rules": 2 if self._kept is None else self._kept.rules,
            "name": self.name.text().strip(),
            "level": self.level.value(),
            "story": self.story.toPlainText().strip(),
            "story_by_way": self.by_way.entry(),
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
            "felt_drops": self.felt.value() or None,
            "dressing_allowed": tuple(name for name, check in self.dressing.items() if check.isChecked()),
            "tray": {
                "straightedge": self.edge.currentData(),
                "disc_step_deg": self.disc.currentData(),
                "blades": tuple(unit for unit in ("inch", "metric") if tray.pop(unit)),
                "lamp_kind": self.lamp_kind.currentData(),
                **tray,
            },
            "faults": self.faults.entries(),
            "goals": self.goals.entries(),
        }

    def fit_bench(self) -> None:
        """What there is only on an engine, or only off it, can be chosen there alone."""
        alone = isinstance(self.bench.currentData(), Magneto)
        self.both.setEnabled(not alone)
        for name in _ON_ENGINE:
            self.start[name].setEnabled(not alone)
        self.rotor.setEnabled(alone or not self.start["mounted"].isChecked())

    def _changed(self) -> None:
        if not self._quiet:
            self.changed.emit()


def _position(item: Installation) -> str:
    return {"left": tr("left"), "right": tr("right"), "single": tr("single")}[item.position]
