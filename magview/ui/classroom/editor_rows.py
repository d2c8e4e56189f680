"""Faults and goals of an exercise as rows of fields; each row says what its file entry is."""

from __future__ import annotations

from typing import Any, get_args

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QCheckBox, QGridLayout, QHBoxLayout, QLabel, QPushButton, QSpinBox, QVBoxLayout, QWidget

from magview.practice.exercise_parts import (
    FAULT_LIMITS,
    FAULTS,
    GOALS,
    GRADES,
    LEADS,
    READINGS,
    ContactGrade,
    Fault,
    Goal,
    GoalKind,
    LeadFault,
    Written,
)
from magview.spec.language import marked, tr
from magview.ui.kit.inputs import NumberSpin, QuietCombo

_UNITS = {
    "opening": marked("rotor °"),
    "gap": marked("mm"),
    "plate": marked("°"),
    "creep": marked("°"),
    "lobe-low": marked("mm"),
    "pip": marked("mm"),
    "backlash": marked("rotor °"),
    "teeth": marked("teeth"),
    "disc-teeth": marked("teeth"),
    "vernier": marked("steps"),
    "disc-zero": marked("crank °"),
    "contacts": marked("mm"),
}
WAYS = {
    "opening": (marked("late"), marked("early")),
    "gap": (marked("too wide"), marked("too narrow")),
    "plate": (marked("with cam rotation"), marked("against cam rotation")),
    "creep": (marked("closer"), marked("wider")),
    "teeth": (marked("early"), marked("late")),
    "disc-teeth": (marked("early"), marked("late")),
    "vernier": (marked("early"), marked("late")),
    "disc-zero": (marked("plus"), marked("minus")),
}
"""In words, each fault's two ways: plus, minus."""
_AMONG: dict[str, tuple[str, ...]] = {"lead": get_args(LeadFault), "contacts": get_args(ContactGrade)}
"""What one is drawn of, by the kind of fault."""
_WITHIN = {"opening": marked("mm"), "gap": marked("mm"), "firing": marked("°"), "disc-zero": marked("°")}


class Row(QWidget):
    """Fields in a row, with a button that takes it away."""

    changed = Signal()
    removed = Signal(object)

    def __init__(self) -> None:
        super().__init__()
        lines = QVBoxLayout(self)
        lines.setContentsMargins(0, 0, 0, 0)
        self.fields, self.below = QHBoxLayout(), QHBoxLayout()
        lines.addLayout(self.fields)
        lines.addLayout(self.below)
        self.below.setContentsMargins(2 * self.fontMetrics().height(), 0, 0, self.fontMetrics().height() // 2)

    def entry(self) -> dict[str, Any]:
        """What the file has for it."""
        raise NotImplementedError

    def combo(self, name: str, options: list[tuple[str, object]], where: QHBoxLayout | None = None) -> QuietCombo:
        """A choice of this row."""
        box = QuietCombo()
        box.setAccessibleName(name)
        box.setToolTip(name)
        for words, data in options:
            box.addItem(words, data)
        box.currentIndexChanged.connect(self.changed)
        box.setSizeAdjustPolicy(QuietCombo.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        box.setMinimumContentsLength(min(18, max(len(words) for words, _ in options) or 12))
        (where or self.fields).addWidget(box)
        return box

    def number(
        self, name: str, step: float, most: float, places: int = 3, where: QHBoxLayout | None = None
    ) -> NumberSpin:
        """A number of this row, from nought."""
        spin = NumberSpin(step, 0.0, most, places=places)
        spin.setAccessibleName(name)
        spin.setToolTip(name)
        spin.entered.connect(self.changed)
        spin.setMinimumWidth(self.fontMetrics().horizontalAdvance("000.000") + 2 * self.fontMetrics().height())
        (where or self.fields).addWidget(spin)
        return spin

    def finish(self) -> None:
        """The button at the end."""
        self.fields.addStretch(1)
        button = QPushButton("✕")
        button.setAccessibleName(tr("Remove this row"))
        button.setToolTip(tr("Remove this row"))
        button.setMaximumWidth(3 * self.fontMetrics().height())
        button.setAutoDefault(False)
        button.clicked.connect(self._remove)
        self.fields.addWidget(button)

    def _remove(self) -> None:
        self.removed.emit(self)


def _sides() -> list[tuple[str, object]]:
    return [(tr("each magneto"), None), (tr("left"), "left"), (tr("right"), "right")]


class FaultRow(Row):
    """One hidden fault: kind, magneto, size from and to, way, how likely."""

    def __init__(self, fault: Fault) -> None:
        super().__init__()
        self.kind = self.combo(tr("Fault"), [(tr(words), kind) for kind, words in FAULTS.items()])
        self.side = self.combo(tr("On which magneto"), _sides())
        self.low = self.number(tr("Size from"), 0.1, 45.0)
        self.high = self.number(tr("Size to"), 0.1, 45.0)
        self.unit = QLabel()
        self.fields.addWidget(self.unit)
        self.way = self.combo(tr("Which way"), [("", "plus"), ("", "minus"), (tr("either"), "either")], self.below)
        self.lobe = QSpinBox()
        self.lobe.setRange(0, 36)
        self.lobe.setSpecialValueText(tr("any lobe"))
        self.lobe.setPrefix(tr("lobe "))
        self.lobe.setAccessibleName(tr("Which lobe"))
        self.lobe.valueChanged.connect(self.changed)
        self.below.addWidget(self.lobe)
        self.among: dict[str, QCheckBox] = {}
        self._order: tuple[str, ...] = fault.among
        leads = QGridLayout()
        self.below.addLayout(leads)
        for name, words in {**LEADS, **GRADES}.items():
            box = self.among[name] = QCheckBox(tr(words))
            box.toggled.connect(self.changed)
            leads.addWidget(box, (len(self.among) - 1) // 4, (len(self.among) - 1) % 4)
        self.chance = self.number(tr("How likely it is there [%]"), 5.0, 100.0, places=1, where=self.below)
        self.below.addWidget(QLabel(tr("% likely")))
        self.below.addStretch(1)
        self.finish()
        self.show_fault(fault)
        self.kind.currentIndexChanged.connect(self._kind_chosen)

    def show_fault(self, fault: Fault) -> None:
        """Show a fault."""
        self.kind.setCurrentIndex(self.kind.findData(fault.kind))
        self.side.setCurrentIndex(self.side.findData(fault.side))
        self.low.show_value(fault.size[0])
        self.high.show_value(fault.size[1])
        self._kind_chosen()
        self.way.setCurrentIndex(self.way.findData(fault.way))
        self.lobe.setValue(fault.lobe or 0)
        # One of them is drawn by its place on the list: a file's order is kept.
        self._order = (*fault.among, *(lead for lead in self.among if lead not in fault.among))
        for lead, box in self.among.items():
            box.setChecked(lead in fault.among)
        self.chance.show_value(100.0 * fault.chance)

    def _kind_chosen(self) -> None:
        """Show the fields that the kind has."""
        kind = self.kind.currentData()
        sized, way = kind in FAULT_LIMITS, WAYS.get(kind)
        for widget in (self.low, self.high, self.unit):
            widget.setVisible(sized)
        if sized:
            most = FAULT_LIMITS[kind][0]
            self.unit.setText(tr(_UNITS[kind]))
            self.high.setToolTip(tr("Size to, at most {most} {unit}", most=f"{most:g}", unit=tr(_UNITS[kind])))
        self.way.setVisible(way is not None)
        if way is not None:
            for i, words in enumerate(way):
                self.way.setItemText(i, tr(words))
        self.lobe.setVisible(kind == "lobe-low")
        for name, box in self.among.items():
            box.setVisible(name in _AMONG.get(kind, ()))
        self.changed.emit()

    def entry(self) -> dict[str, Any]:
        """What the file has for it."""
        kind = self.kind.currentData()
        among = tuple(n for n in self._order if n in _AMONG.get(kind, ()) and self.among[n].isChecked())
        sized = kind in FAULT_LIMITS and (kind != "contacts" or "mound" in among)
        return {
            "kind": kind,
            "side": self.side.currentData(),
            "size": (self.low.exact, self.high.exact) if sized else (0.0, 0.0),
            "way": self.way.currentData() if kind in WAYS else "plus",
            "chance": self.chance.exact / 100.0,
            "lobe": (self.lobe.value() or None) if kind == "lobe-low" else None,
            "among": among,
        }


class GoalRow(Row):
    """One thing that counts: what, with which weight, on which magneto."""

    def __init__(self, goal: Goal) -> None:
        super().__init__()
        kinds = [kind for kind in get_args(GoalKind) if kind != "reading"]
        options: list[tuple[str, object]] = [(tr(GOALS[kind]), (kind, None)) for kind in kinds]
        options += [(tr(READINGS[kind]), ("reading", kind)) for kind in get_args(Written)]
        self.goal = self.combo(tr("What counts"), options)
        self.side = self.combo(tr("On which magneto"), _sides())
        self.fields.addWidget(QLabel(tr("weight")))
        self.weight = self.number(tr("Weight among the marks"), 1.0, 100.0, places=1)
        self.every = QCheckBox(tr("on every lobe"))
        self.every.toggled.connect(self.changed)
        self.below.addWidget(self.every)
        self.within = self.number(tr("How near to the truth it must be"), 0.1, 100.0, where=self.below)
        self.unit = QLabel()
        self.below.addWidget(self.unit)
        self.below.addStretch(1)
        self.finish()
        self.goal.setCurrentIndex(options.index(next(o for o in options if o[1] == (goal.goal, goal.reading))))
        self.side.setCurrentIndex(self.side.findData(goal.side))
        self.weight.show_value(goal.weight)
        self.every.setChecked(goal.every_lobe)
        self.within.show_value(goal.within or 0.0)
        self._goal_chosen()
        self.goal.currentIndexChanged.connect(self._goal_chosen)

    def _goal_chosen(self) -> None:
        """Show the fields that the goal has."""
        goal, reading = self.goal.currentData()
        self.every.setVisible(goal in ("gap", "opening"))
        for widget in (self.within, self.unit):
            widget.setVisible(reading in _WITHIN)
        if reading in _WITHIN:
            self.unit.setText(tr("{unit} allowed", unit=tr(_WITHIN[reading])))
        self.changed.emit()

    def entry(self) -> dict[str, Any]:
        """What the file has for it."""
        goal, reading = self.goal.currentData()
        return {
            "goal": goal,
            "weight": self.weight.exact,
            "side": self.side.currentData(),
            "every_lobe": goal in ("gap", "opening") and self.every.isChecked(),
            "reading": reading,
            "within": self.within.exact if reading in _WITHIN else None,
        }


class RowList(QWidget):
    """Rows under one another, and a button for one more."""

    changed = Signal()

    def __init__(self, more: str, fresh: Fault | Goal) -> None:
        super().__init__()
        self._fresh = fresh
        self.rows: list[Row] = []
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

    def show_entries(self, entries: tuple[Fault, ...] | tuple[Goal, ...]) -> None:
        """Show other rows."""
        while self.rows:
            self._take(self.rows[-1])
        for entry in entries:
            self.add(entry)

    def entries(self) -> tuple[dict[str, Any], ...]:
        """What the file has for them."""
        return tuple(row.entry() for row in self.rows)

    def add(self, entry: Fault | Goal) -> Row:
        """One row more."""
        row: Row = FaultRow(entry) if isinstance(entry, Fault) else GoalRow(entry)
        row.changed.connect(self.changed)
        row.removed.connect(self._remove)
        self.rows.append(row)
        self._column.addWidget(row)
        return row

    def _add_fresh(self) -> None:
        self.add(self._fresh)
        self.changed.emit()

    def _remove(self, row: Row) -> None:
        self._take(row)
        self.changed.emit()

    def _take(self, row: Row) -> None:
        self.rows.remove(row)
        self._column.removeWidget(row)
        row.hide()
        row.deleteLater()
