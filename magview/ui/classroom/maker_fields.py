"""The fields of a class's set: exercises to choose from, those chosen in order, and the settings."""

from __future__ import annotations

from typing import Any

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import (
    QGridLayout,
    QGroupBox,
    QHBoxLayout,
    QLabel,
    QListWidget,
    QListWidgetItem,
    QVBoxLayout,
    QWidget,
)

from magview.classroom.sets import ClassSet, new_seed
from magview.practice.exercise import Exercise
from magview.practice.library import find_exercise, shipped_exercises
from magview.practice.story import story
from magview.spec.base import SpecError
from magview.spec.language import tr
from magview.ui.classroom.page import push_button
from magview.ui.kit.model_form import ModelForm
from magview.ui.practice.controls import wrapped

_SETTINGS = ("title", "each_their_own", "units", "minutes", "seed", "hints", "pupils")
_HELD = Qt.ItemDataRole.UserRole


class SetFields(QWidget):
    """Fields of a set's file."""

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
        column = QVBoxLayout(box)
        self.settings = ModelForm(ClassSet, _SETTINGS, tall="pupils")
        self.settings.give("hints", True)
        self.settings.changed.connect(self._changed)
        column.addWidget(self.settings, 1)
        column.addWidget(push_button(tr("Draw ane&w"), self._draw))
        return box

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
        self.settings.give("seed", new_seed())

    # -------------------------------------------------------------- fields and set

    def data(self) -> dict[str, Any]:
        """Return what the fields say, as a set's file has it. Raises SpecError where no exercise is chosen."""
        if not self.chosen.count():
            raise SpecError(tr("Add an exercise: a set has one at least"))
        return {
            "format": "magview-class/1",
            **self.settings.data(),
            "exercises": tuple(self.chosen.item(i).data(_HELD) for i in range(self.chosen.count())),
        }

    def show_set(self, of: ClassSet) -> None:
        """Show a set that was made before."""
        self._quiet = True
        self.chosen.clear()
        for exercise in of.exercises:
            self._list(self.chosen, exercise)
        self.chosen.setCurrentRow(0)
        self.settings.show_value(of)
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
