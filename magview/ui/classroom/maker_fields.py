"""The fields of a class's set: exercises to choose from, those chosen in order, and the settings."""

from __future__ import annotations

from typing import Any

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import (
    QCheckBox,
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
    QVBoxLayout,
    QWidget,
)

from magview.classroom.sets import MOST_MINUTES, MOST_SEED, UNITS, ClassSet, new_seed
from magview.practice.exercise import Exercise
from magview.practice.library import find_exercise, shipped_exercises
from magview.practice.story import story
from magview.spec.base import SpecError
from magview.spec.language import tr
from magview.ui.classroom.window import push_button
from magview.ui.kit.inputs import QuietCombo
from magview.ui.practice.controls import wrapped

_HELD = Qt.ItemDataRole.UserRole


class SetFields(QWidget):
    """What a set's file says, as fields."""

    changed = Signal()
    """Something else is in a field."""

    def __init__(self) -> None:
        super().__init__()
        self._quiet = False
        self._build()
        self._draw()

    # -------------------------------------------------------------- building

    def _build(self) -> None:
        grid = QGridLayout(self)
        self.shipped, self.chosen = QListWidget(), QListWidget()
        self.shipped.setAccessibleName(tr("Exercises there are"))
        self.chosen.setAccessibleName(tr("Exercises of the set, in order"))
        for name in shipped_exercises():
            self._list(self.shipped, find_exercise(name))
        self.shipped.itemActivated.connect(self.add)
        self.add_button = push_button(tr("A&dd ▶"), self.add)
        self.file_button = push_button(tr("From a &file…"))
        self.edit_button = push_button(tr("&Write one…"))
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

    def _build_settings(self) -> QGroupBox:
        box = QGroupBox(tr("Settings"))
        form = QFormLayout(box)
        self.set_title = QLineEdit()
        self.set_title.setMaxLength(120)
        self.set_title.textChanged.connect(self._changed)
        self.own = QuietCombo()
        self.own.addItems([tr("the same for everyone"), tr("one of their own for each pupil")])
        self.own.currentIndexChanged.connect(self._changed)
        self.hints = QCheckBox(tr("&Hints may be asked for"))
        self.hints.setChecked(True)
        self.hints.toggled.connect(self._changed)
        self.units = QuietCombo()
        for words, unit in zip(
            (tr("as the exercise has them"), tr("metric, too"), tr("in inches, too")), UNITS, strict=True
        ):
            self.units.addItem(words, unit)
        self.units.setToolTip(tr("A straightedge of this unit, and blades of it beside the exercise's own"))
        self.units.currentIndexChanged.connect(self._changed)
        self.minutes = QSpinBox()
        self.minutes.setRange(0, MOST_MINUTES)
        self.minutes.setSpecialValueText(tr("as the exercise says"))
        self.minutes.setToolTip(tr("Shown to the pupils as a guide; time is not marked"))
        self.minutes.valueChanged.connect(self._changed)
        self.seed = QSpinBox()
        self.seed.setRange(0, MOST_SEED)
        self.seed.setToolTip(tr("The same number draws the same faults"))
        self.seed.valueChanged.connect(self._changed)
        self.pupils = QPlainTextEdit()
        self.pupils.setPlaceholderText(tr("one name or number a line"))
        self.pupils.setTabChangesFocus(True)
        self.pupils.setAccessibleName(tr("Pupils"))
        self.pupils.textChanged.connect(self._changed)
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

    # -------------------------------------------------------------- the list

    def _list(self, where: QListWidget, exercise: Exercise) -> None:
        item = QListWidgetItem(tr("Level {level} · {name}", level=exercise.level, name=tr(exercise.name)))
        item.setData(_HELD, exercise)
        where.addItem(item)

    def _tell(self, item: QListWidgetItem | None) -> None:
        if item is not None:
            exercise = item.data(_HELD)
            self.tale.setText(f"{story(exercise, None)} {tr(exercise.task)}")

    def add(self) -> None:
        """Put the exercise that is chosen at the end of the set."""
        item = self.shipped.currentItem()
        if item is not None:
            self.add_exercise(item.data(_HELD))

    def add_exercise(self, exercise: Exercise) -> None:
        """Put an exercise at the end of the set."""
        self._list(self.chosen, exercise)
        self.chosen.setCurrentRow(self.chosen.count() - 1)
        self._changed()

    def remove(self) -> None:
        """Take the chosen exercise out of the set."""
        self.chosen.takeItem(self.chosen.currentRow())
        self._changed()

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
        self._changed()

    def _draw(self) -> None:
        self.seed.setValue(new_seed())

    # -------------------------------------------------------------- fields and set

    def data(self) -> dict[str, Any]:
        """What the fields say, as a set's file has it. Raises SpecError where no exercise is chosen."""
        if not self.chosen.count():
            raise SpecError(tr("Add an exercise: a set has one at least"))
        return {
            "format": "magview-class/1",
            "title": self.set_title.text().strip(),
            "seed": self.seed.value(),
            "each_their_own": self.own.currentIndex() == 1,
            "hints": self.hints.isChecked(),
            "units": self.units.currentData(),
            "minutes": self.minutes.value() or None,
            "exercises": tuple(self.chosen.item(i).data(_HELD) for i in range(self.chosen.count())),
            "pupils": tuple(
                " ".join(line.split()) for line in self.pupils.toPlainText().splitlines() if line.strip()
            ),
        }

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
        self.changed.emit()

    def _changed(self) -> None:
        if not self._quiet:
            self.changed.emit()


def _label(words: str, buddy: QWidget) -> QLabel:
    label = QLabel(words)
    label.setBuddy(buddy)
    label.setWordWrap(True)
    return label
