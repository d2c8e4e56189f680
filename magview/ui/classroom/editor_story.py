"""The fields of what a story tells besides, by the way in which a fault was drawn."""

from __future__ import annotations

from typing import Any

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QFormLayout, QLabel, QLineEdit, QWidget

from magview.practice.exercise_parts import FAULTS, StoryByWay
from magview.spec.language import marked, tr
from magview.ui.classroom.editor_rows import WAYS
from magview.ui.kit.inputs import QuietCombo

_PRESENT = (marked("drawn"), "")
"""The one way of a fault without a sign."""


class StoryFields(QWidget):
    """A kind of fault, or none, and a line for each of its ways and for where it was not drawn."""

    changed = Signal()

    def __init__(self) -> None:
        super().__init__()
        form = QFormLayout(self)
        form.setContentsMargins(0, 0, 0, 0)
        form.setRowWrapPolicy(QFormLayout.RowWrapPolicy.WrapLongRows)
        self.fault = QuietCombo()
        self.fault.addItem(tr("nothing"), None)
        for kind in WAYS:
            self.fault.addItem(tr(FAULTS[kind]), kind)
        form.addRow(tr("Story &goes on by the way of"), self.fault)
        self.plus, self.minus, self.none = QLineEdit(), QLineEdit(), QLineEdit()
        self._labels = [QLabel() for _ in range(3)]
        for label, line in zip(self._labels, (self.plus, self.minus, self.none), strict=True):
            line.setMaxLength(4000)
            label.setBuddy(line)
            form.addRow(label, line)
            line.textChanged.connect(self.changed)
        self.fault.currentIndexChanged.connect(self._fault_chosen)
        self._fault_chosen()

    def show_entry(self, told: StoryByWay | None) -> None:
        """Fill the fields."""
        kind = None if told is None else told.fault
        if self.fault.findData(kind) < 0 and kind is not None:
            self.fault.addItem(tr(FAULTS[kind]), kind)
        self.fault.setCurrentIndex(self.fault.findData(kind))
        for name in ("plus", "minus", "none"):
            getattr(self, name).setText("" if told is None else getattr(told, name))

    def entry(self) -> dict[str, Any] | None:
        """What the file has for it; None where the story does not go on."""
        kind = self.fault.currentData()
        if kind is None:
            return None
        told = {name: getattr(self, name).text().strip() for name in ("plus", "minus", "none")}
        return {"fault": kind, **told}

    def _fault_chosen(self) -> None:
        kind = self.fault.currentData()
        plus, minus = WAYS.get(kind, _PRESENT)
        words = (
            tr("If {way}", way=tr(plus)),
            tr("If {way}", way=tr(minus)) if minus else "",
            tr("If it was not drawn"),
        )
        lines = (self.plus, self.minus, self.none)
        for label, line, text in zip(self._labels, lines, words, strict=True):
            label.setText(text)
            for widget in (label, line):
                widget.setVisible(kind is not None and bool(text))
        self.changed.emit()
