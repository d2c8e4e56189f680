"""The fields of a model one below the other, with labels, limits and refusals as the model declares them."""

from __future__ import annotations

from collections.abc import Iterable
from functools import partial
from typing import Any

from pydantic import BaseModel
from PySide6.QtCore import Signal
from PySide6.QtWidgets import QFormLayout, QLabel, QVBoxLayout, QWidget

from magview.forms.entry import Entry, Kind, entry_of
from magview.forms.typed import outside, read, written
from magview.spec.fields import about
from magview.spec.language import tr
from magview.ui.kit.forms import CheckEdit, ChoiceEdit, Edit, LineEdit, TextEdit, edit_of

_LINES = 5
"""Height of a field for several lines."""


class ModelForm(QWidget):
    """Fields of one model. They hold a file's data, whole or not: whether it is valid is for others to say."""

    changed = Signal()
    """Something else is in a field."""

    def __init__(self, model: type[BaseModel], names: Iterable[str] | None = None, tall: str = "") -> None:
        """`names`: the fields shown, in this order; left out: all. `tall`: the one that takes the height there is."""
        super().__init__()
        self._tall = tall
        form = QFormLayout(self)
        form.setContentsMargins(0, 0, 0, 0)
        form.setRowWrapPolicy(QFormLayout.RowWrapPolicy.WrapLongRows)
        self._form, self._model = form, model
        asked = [entry for name in names or model.model_fields for entry in _with_ends(entry_of(model, name))]
        self.entries = {entry.path: entry for entry in asked}
        self.values: dict[str, Any] = {path: entry.about.default for path, entry in self.entries.items()}
        self.edits: dict[str, Edit] = {}
        self.labels: dict[str, QLabel] = {}
        self.refusals: dict[str, QLabel] = {}
        self._wholes: dict[str, QWidget] = {}
        self._hidden: set[str] = set()
        for entry in self.entries.values():
            self._add(entry)

    # -------------------------------------------------------------- building

    def _add(self, entry: Entry) -> None:
        name = entry.path
        edit = self.edits[name] = self._edit(entry)
        edit.setAccessibleName(entry.label)
        edit.setAccessibleDescription(entry.meaning)
        edit.setToolTip(entry.meaning)
        edit.entered.connect(partial(self._entered, name))
        if isinstance(edit, LineEdit | TextEdit):
            edit.wrong.connect(partial(self._refuse, name))
        if isinstance(edit, LineEdit):
            edit.setPlaceholderText(tr("may be left out") if entry.about.optional else "")
            edit.textEdited.connect(partial(self._typed, name))
        if isinstance(edit, TextEdit):
            edit.textChanged.connect(partial(self._text_typed, name))
        whole = self._wholes[name] = QWidget()
        column = QVBoxLayout(whole)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(edit)
        refusal = self.refusals[name] = QLabel()
        refusal.setWordWrap(True)
        refusal.hide()
        column.addWidget(refusal)
        whole.setFocusProxy(edit)
        if isinstance(edit, CheckEdit):
            self._form.addRow(whole)
            return
        label = self.labels[name] = QLabel(entry.label)
        label.setWordWrap(True)
        label.setBuddy(edit)
        self._form.addRow(label, whole)

    def _edit(self, entry: Entry) -> Edit:
        edit = edit_of(entry, partial(self._read, entry), partial(self._written, entry))
        if isinstance(edit, ChoiceEdit):
            edit.setSizeAdjustPolicy(ChoiceEdit.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
            edit.setMinimumContentsLength(min(24, max(len(words) for _, words in entry.options)))
        elif isinstance(edit, TextEdit) and entry.name != self._tall:
            edit.setFixedHeight(_LINES * self.fontMetrics().lineSpacing())
        return edit

    def _read(self, entry: Entry, text: str) -> Any:
        if entry.kind is Kind.TEXTS:
            return tuple(" ".join(line.split()) for line in text.splitlines() if line.strip())
        value = read(entry, text)
        sentence = outside(entry, value)
        if sentence:
            raise ValueError(sentence)
        # Nothing at all is a default where there is one, and an empty text.
        return value if value is not None else "" if entry.kind in (Kind.LINE, Kind.TEXT) else entry.about.default

    def _written(self, entry: Entry, value: Any) -> str:
        return "\n".join(value) if entry.kind is Kind.TEXTS and value is not None else written(entry, value)

    # -------------------------------------------------------------- showing

    def show_value(self, item: BaseModel | dict[str, Any]) -> None:
        """Show what a model, or a file's data, has."""
        for name, edit in self.edits.items():
            entry = self.entries[name]
            held = item.get(name, self.values[name]) if isinstance(item, dict) else getattr(item, entry.name)
            held = held if entry.end is None else held[entry.end]
            self.values[name] = held
            self._say(name, "")
            edit.taken()
            blocked = edit.blockSignals(True)
            edit.show_value(held)
            edit.blockSignals(blocked)
        self.changed.emit()

    def give(self, name: str, value: Any) -> None:
        """Give a field a value, as if it had been entered."""
        self._entered(name, value)

    def show_only(self, names: Iterable[str]) -> None:
        """Show these fields; the others are hidden and count as left out."""
        wanted = set(names)
        shown = {path for path, entry in self.entries.items() if entry.name in wanted}
        self._hidden = set(self.edits) - shown
        for name, whole in self._wholes.items():
            self._form.setRowVisible(whole, name in shown)

    def name_unit(self, name: str, unit: str) -> None:
        """Name the unit in a field's label, where the field's own declaration cannot know it."""
        words = tr("{field} [{unit}]", field=self.entries[name].label, unit=unit)
        self.labels[name].setText(words)
        self.edits[name].setAccessibleName(words)

    def data(self) -> dict[str, Any]:
        """Return what the fields hold, as a file has it; text that was no number stands as it was typed."""
        data: dict[str, Any] = {}
        for path, value in self.values.items():
            entry = self.entries[path]
            if path in self._hidden:
                data[entry.name] = about(self._model, entry.name).default
            elif entry.end is None:
                data[path] = value
            else:
                data[entry.name] = (*data.get(entry.name, ()), value)
        return data

    # -------------------------------------------------------------- entering

    def _entered(self, name: str, value: Any) -> None:
        self._say(name, "")
        edit = self.edits[name]
        edit.taken()
        edit.show_value(value)
        self._hold(name, value)

    def _typed(self, name: str, text: str) -> None:
        """Take what is typed at every key; it is refused only when the keyboard leaves."""
        try:
            value = self._read(self.entries[name], text)
        except ValueError:
            value = text.strip()
        else:
            self._say(name, "")
        self._hold(name, value)

    def _text_typed(self, name: str) -> None:
        edit = self.edits[name]
        assert isinstance(edit, TextEdit)
        if edit.isModified():
            self._typed(name, edit.text())

    def _hold(self, name: str, value: Any) -> None:
        if self.values[name] != value or type(self.values[name]) is not type(value):
            self.values[name] = value
            self.changed.emit()

    def _refuse(self, name: str, sentence: str) -> None:
        self._say(name, f"✗ {sentence}")

    def _say(self, name: str, words: str) -> None:
        label = self.refusals[name]
        label.setText(words)
        label.setVisible(bool(words))


def _with_ends(entry: Entry) -> tuple[Entry, ...]:
    """The entries of a field: both ends of a range are typed apart."""
    ends = entry.about.ends
    return tuple(Entry(f"{entry.path}[{i}]", end, entry.optional) for i, end in enumerate(ends)) or (entry,)
