"""The fields of an exercise, a tab for each kind: text, magneto and tray, faults, goals."""

from __future__ import annotations

from typing import Any

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QFormLayout, QGroupBox, QHBoxLayout, QScrollArea, QTabWidget, QVBoxLayout, QWidget

from magview.practice.exercise import Exercise
from magview.practice.exercise_parts import Fault, Goal, Start, Tray
from magview.spec.engine import Installation
from magview.spec.fields import about
from magview.spec.language import tr
from magview.spec.library import find_installation, find_magneto, shipped_names
from magview.spec.magneto import Magneto
from magview.ui.classroom.editor_rows import FormList, StoryForm
from magview.ui.classroom.page import push_button
from magview.ui.kit.inputs import QuietCombo
from magview.ui.kit.model_form import ModelForm

_ON_ENGINE = ("mounted", "marked", "chocked", "plugs_out", "made_safe", "disc_at_zero")


class ExerciseFields(QTabWidget):
    """Fields of an exercise's file; whether it is valid is for others to say."""

    changed = Signal()
    """Something else is in a field."""

    def __init__(self) -> None:
        super().__init__()
        self._quiet = False
        self._kept: Exercise | None = None
        self.setDocumentMode(True)
        self.text = ModelForm(Exercise, ("name", "level", "minutes", "pass_percent", "story", "task", "hints"))
        self.by_way = StoryForm()
        self.sides = ModelForm(Exercise, ("both_sides",))
        self.start, self.tray = ModelForm(Start), ModelForm(Tray)
        self.manual = ModelForm(Exercise, ("felt_drops", "dressing_allowed"))
        self.faults = FormList(tr("&Add a fault"), Fault(kind="opening", size=(1.0, 3.0), way="either"))
        self.goals = FormList(tr("A&dd a goal"), Goal(goal="opening", weight=4.0))
        for page, words in (
            (_column(self.text, self.by_way), tr("&Text")), (self._build_bench(), tr("&Magneto and tray")),
            (self.faults, tr("&Faults")), (self.goals, tr("&Goals")),
        ):  # fmt: skip
            area = QScrollArea()
            area.setWidgetResizable(True)
            area.setFrameShape(QScrollArea.Shape.NoFrame)
            area.setWidget(page)
            self.addTab(area, words)
        for form in (self.text, self.by_way, self.sides, self.start, self.tray, self.manual, self.faults, self.goals):
            form.changed.connect(self._changed)

    def _build_bench(self) -> QWidget:
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
        chosen = QWidget()
        QFormLayout(chosen).addRow(tr("Magnet&o"), whole)
        return _column(
            chosen,
            self.sides,
            _box(tr(about(Exercise, "start").label), self.start),
            _box(tr(about(Exercise, "tray").label), self.tray),
            _box(tr("What this manual says"), self.manual),
        )

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
        for form in (self.text, self.sides, self.manual):
            form.show_value(exercise)
        self.by_way.show_story(exercise.story_by_way)
        bench = exercise.installation or exercise.magneto
        assert bench is not None
        self.bench.setCurrentIndex(self.offer(bench))
        self.start.show_value(exercise.start)
        self.tray.show_value(exercise.tray)
        self.faults.show_value(exercise.faults)
        self.goals.show_value(exercise.goals)
        self._quiet = False
        self.changed.emit()

    def data(self) -> dict[str, Any]:
        """Return what the fields say, as an exercise's file has it."""
        bench = self.bench.currentData()
        alone = isinstance(bench, Magneto)
        return {
            "format": "magview-exercise/1",
            # A new one goes by the new rules.
            "rules": 2 if self._kept is None else self._kept.rules,
            **self.text.data(),
            **self.manual.data(),
            "story_by_way": self.by_way.story(),
            "magneto": bench if alone else None,
            "installation": None if alone else bench,
            "both_sides": self.sides.values["both_sides"] and not alone,
            "start": self.start.data(),
            "tray": self.tray.data(),
            "faults": self.faults.data(),
            "goals": self.goals.data(),
        }

    def fit_bench(self) -> None:
        """Offer what there is only on an engine, or only off it, there alone."""
        alone = isinstance(self.bench.currentData(), Magneto)
        self.sides.setEnabled(not alone)
        for name in _ON_ENGINE:
            self.start.edits[name].setEnabled(not alone)
        self.start.edits["rotor"].setEnabled(alone or not self.start.values["mounted"])

    def _changed(self) -> None:
        if not self._quiet:
            self.changed.emit()


def _column(*widgets: QWidget) -> QWidget:
    whole = QWidget()
    column = QVBoxLayout(whole)
    for widget in widgets:
        column.addWidget(widget)
    column.addStretch(1)
    return whole


def _box(title: str, form: ModelForm) -> QGroupBox:
    box = QGroupBox(title)
    QVBoxLayout(box).addWidget(form)
    return box


def _position(item: Installation) -> str:
    return tr(dict(about(Installation, "position").choices)[item.position])
