"""Faults and goals of an exercise, a form each; a form shows only the fields that its kind has."""

from __future__ import annotations

from typing import Any, get_args

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QFrame, QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from magview.practice.exercise_parts import (
    FAULT_LIMITS,
    FAULT_UNITS,
    LEADS,
    READING_UNITS,
    WAYS,
    ContactGrade,
    Fault,
    Goal,
    StoryByWay,
    fields_of_fault,
    fields_of_goal,
)
from magview.spec.language import tr
from magview.ui.kit.forms import ChoiceEdit, TicksEdit
from magview.ui.kit.model_form import ModelForm


class FaultForm(ModelForm):
    """One hidden fault: kind, magneto, size from and to, way, how likely."""

    def __init__(self) -> None:
        super().__init__(Fault)
        self.changed.connect(self._fit)

    def _fit(self) -> None:
        kind = self.values["kind"]
        self.show_only(fields_of_fault(kind, self.values["among"]))
        among, way = self.edits["among"], self.edits["way"]
        assert isinstance(among, TicksEdit) and isinstance(way, ChoiceEdit)
        among.offer(get_args(ContactGrade) if kind == "contacts" else LEADS)
        for i, words in enumerate(WAYS.get(kind, ())):
            way.setItemText(i, tr(words))
        if kind in FAULT_LIMITS:
            most, unit = FAULT_LIMITS[kind]
            told = tr("At most {most:g} {unit}", most=most, unit=tr(unit))
            for end in ("size[0]", "size[1]"):
                self.edits[end].setToolTip(told)
                self.edits[end].setAccessibleDescription(told)
                self.name_unit(end, tr(FAULT_UNITS[kind]))

    def data(self) -> dict[str, Any]:
        """The fault as the file has it; what one of is drawn of another kind is left out."""
        data = super().data()
        allowed = get_args(ContactGrade) if data["kind"] == "contacts" else tuple(LEADS)
        return data | {"among": tuple(value for value in data["among"] if value in allowed)}


class GoalForm(ModelForm):
    """One goal: what it is, its weight, the magneto, and what its kind has besides."""

    def __init__(self) -> None:
        super().__init__(Goal)
        self.changed.connect(self._fit)

    def _fit(self) -> None:
        reading = self.values["reading"]
        self.show_only(fields_of_goal(self.values["goal"], reading))
        if reading in READING_UNITS:
            self.name_unit("within", tr(READING_UNITS[reading]))


class StoryForm(ModelForm):
    """A kind of fault, or none, and what is told for each of its ways and where it was not drawn."""

    def __init__(self) -> None:
        super().__init__(StoryByWay)
        fault = self.edits["fault"]
        assert isinstance(fault, ChoiceEdit)
        fault.insert_nothing(tr("nothing"))
        self.changed.connect(self._fit)
        self.show_story(None)

    def show_story(self, told: StoryByWay | None) -> None:
        """Show what is told; None where the story does not go on."""
        self.show_value({"fault": None, "plus": "", "minus": "", "none": ""} if told is None else told)

    def story(self) -> dict[str, Any] | None:
        """Return the file's story; None where the story does not go on."""
        return self.data() if self.values["fault"] is not None else None

    def _fit(self) -> None:
        kind = self.values["fault"]
        ways = WAYS.get(kind, ())
        for name, way in zip(("plus", "minus"), ways, strict=False):
            self.labels[name].setText(tr("If {way}", way=tr(way)))
        if not ways:
            self.labels["plus"].setText(tr("If drawn"))
        self.show_only(("fault", "plus", *(("minus",) if ways else ()), "none") if kind is not None else ("fault",))


class FormList(QWidget):
    """Forms of one kind under one another, a button to take each away, and one for one more."""

    changed = Signal()

    def __init__(self, more: str, fresh: Fault | Goal) -> None:
        super().__init__()
        self._fresh = fresh
        self.forms: list[FaultForm | GoalForm] = []
        self._frames: list[QFrame] = []
        column = QVBoxLayout(self)
        column.setContentsMargins(4, 4, 4, 4)
        self._column = QVBoxLayout()
        column.addLayout(self._column)
        self.more = QPushButton(more)
        self.more.setAutoDefault(False)
        self.more.clicked.connect(self._add_fresh)
        foot = QHBoxLayout()
        foot.addWidget(self.more)
        foot.addStretch(1)
        column.addLayout(foot)
        column.addStretch(1)

    def show_value(self, items: tuple[Fault, ...] | tuple[Goal, ...]) -> None:
        """Show other forms."""
        while self.forms:
            self._take(self.forms[-1])
        for item in items:
            self.add(item)

    def data(self) -> tuple[dict[str, Any], ...]:
        """Return the rows as the file has them."""
        return tuple(form.data() for form in self.forms)

    def add(self, item: Fault | Goal) -> None:
        """Add one form."""
        form = FaultForm() if isinstance(item, Fault) else GoalForm()
        form.show_value(item)
        form.changed.connect(self.changed)
        frame = QFrame()
        frame.setFrameShape(QFrame.Shape.StyledPanel)
        row = QHBoxLayout(frame)
        row.addWidget(form, 1)
        button = QPushButton("✕")
        button.setAccessibleName(tr("Remove this row"))
        button.setToolTip(tr("Remove this row"))
        button.setMaximumWidth(3 * self.fontMetrics().height())
        button.setAutoDefault(False)
        button.clicked.connect(lambda: self._remove(form))
        row.addWidget(button)
        self.forms.append(form)
        self._frames.append(frame)
        self._column.addWidget(frame)

    def _add_fresh(self) -> None:
        self.add(self._fresh)
        self.changed.emit()

    def _remove(self, form: FaultForm | GoalForm) -> None:
        self._take(form)
        self.changed.emit()

    def _take(self, form: FaultForm | GoalForm) -> None:
        frame = self._frames.pop(self.forms.index(form))
        self.forms.remove(form)
        self._column.removeWidget(frame)
        frame.hide()
        frame.deleteLater()
