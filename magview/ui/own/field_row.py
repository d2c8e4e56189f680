"""One entry of the guided editor on screen: what it is, what may be typed, where it comes from, why it is refused."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import Signal
from PySide6.QtWidgets import (
    QGridLayout,
    QHBoxLayout,
    QLabel,
    QPushButton,
    QWidget,
)

from magview.forms.entry import Entry, Kind, Value
from magview.forms.typed import allowed, read, written
from magview.own.compare import shipped_item
from magview.own.drafts import OWN, SHIPPED, Note, shipped_kind
from magview.own.fields import Kind as OwnKind
from magview.spec.formats import file_filter
from magview.spec.language import tr
from magview.spec.sources import ORIGINS
from magview.ui.kit.asking import ask_open
from magview.ui.kit.forms import LineEdit, TextEdit, edit_of
from magview.ui.kit.inputs import QuietCombo
from magview.ui.kit.look import Look
from magview.ui.kit.style import tint

_ELSEWHERE = "\0"
_SHARES = (21, 22, 33)
"""Of the row's width: label, field, source [letters, where there is room]."""


class FieldRow(QWidget):
    """An entry: its label, its field, its source; its meaning and limits below; a refusal below that."""

    entered = Signal(str, object)
    """Path and value (None for nothing) that the user gave."""
    noted = Signal(str, object)
    """Field and note that the user gave."""
    worked_out = Signal(str)
    """The user wants this entry worked out from others."""

    def __init__(self, entry: Entry, look: Look, works_out: str = "") -> None:
        super().__init__()
        self.entry, self.look = entry, look
        self._value: Value | None = None
        self._note, self._inches, self._needed = Note(), False, not entry.optional
        grid = QGridLayout(self)
        grid.setContentsMargins(0, 2, 0, 6)
        grid.setVerticalSpacing(2)
        label = QLabel(entry.label)
        label.setWordWrap(True)
        self._label = label
        self.field = self._build_field()
        self.field.setAccessibleName(entry.label)
        self.field.setAccessibleDescription(entry.meaning)
        label.setBuddy(self.field)
        grid.addWidget(label, 0, 0)
        grid.addWidget(self.field, 0, 1, 1, 2 if entry.kind in (Kind.FILE, Kind.LINE, Kind.TEXT) else 1)
        self._grid, self._sources = grid, QWidget()
        self.origin: QuietCombo | None = None
        self.source: LineEdit | None = None
        if entry.path not in ("name", "notes") and entry.end != 1 and entry.kind is not Kind.FILE:
            self._sources = self._build_source()
            grid.addWidget(self._sources, 0, 2)
        for column, share in enumerate(_SHARES):
            grid.setColumnStretch(column, share)
        self.words = QLabel()
        self.words.setWordWrap(True)
        grid.addWidget(self.words, 2, 0, 1, 3)
        self.refusal = QLabel()
        self.refusal.setWordWrap(True)
        self.refusal.hide()
        grid.addWidget(self.refusal, 3, 0, 1, 3)
        self._colour()
        look.changed.connect(self._colour)
        if works_out:
            grid.addLayout(self._build_working_out(tr(works_out)), 4, 0, 1, 3)
        self.set_narrow(False)
        self._explain()

    # -------------------------------------------------------------- building

    def _build_field(self) -> LineEdit | TextEdit | QuietCombo:
        entry = self.entry
        if entry.kind in (Kind.CHOICE, Kind.FILE):
            combo = QuietCombo()
            combo.addItem(tr("choose…"), None)
            for value, words in self._choices():
                combo.addItem(words, value)
            combo.activated.connect(self._chosen)
            combo.setMinimumContentsLength(14)
            combo.setSizeAdjustPolicy(QuietCombo.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
            return combo
        field = edit_of(entry, self._read, self._written)
        assert isinstance(field, LineEdit | TextEdit)
        if isinstance(field, TextEdit):
            field.setFixedHeight(4 * self.fontMetrics().lineSpacing())
        field.entered.connect(lambda value: self._give(value))
        # Kept as it was typed; the draft says at its field why it cannot be taken.
        field.wrong.connect(lambda _: self._give(field.text().strip()))
        return field

    def _read(self, text: str) -> Value | None:
        return read(self.entry, text, self._inches)

    def _written(self, value: Value | None) -> str:
        return written(self.entry, value, self._inches)

    def _give(self, value: object) -> None:
        assert isinstance(self.field, LineEdit | TextEdit)
        self.field.taken()
        self.entered.emit(self.entry.path, value)

    def _choices(self) -> list[tuple[str | bool, str]]:
        if self.entry.kind is Kind.CHOICE:
            return [(value, tr(words)) for value, words in self.entry.choices]
        part: OwnKind = "magneto" if self.entry.path == "magneto" else "engine"
        mine = tr("the magneto in this window") if part == "magneto" else tr("the engine in this window")
        shipped = [(f"{SHIPPED}{n}", str(getattr(shipped_item(part, n), "name", n))) for n in shipped_kind(part)]
        return [(OWN, mine), *shipped, (_ELSEWHERE, tr("a file…"))]

    def _build_source(self) -> QWidget:
        box = QWidget()
        row = QHBoxLayout(box)
        row.setContentsMargins(0, 0, 0, 0)
        origin, source = self.origin, self.source = QuietCombo(), LineEdit()
        origin.addItem(tr("where from?"), None)
        for value, words in ORIGINS:
            origin.addItem(tr(words), value)
        origin.setAccessibleName(tr("Source of: {field}", field=self.entry.label))
        origin.activated.connect(self._source_given)
        origin.setMinimumContentsLength(13)
        origin.setSizeAdjustPolicy(QuietCombo.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        source.setPlaceholderText(tr("page, instrument, who"))
        source.setMaxLength(200)
        source.setAccessibleName(tr("Note on the source of: {field}", field=self.entry.label))
        source.entered.connect(self._source_given)
        row.addWidget(origin, 1)
        row.addWidget(source, 1)
        return box

    def _build_working_out(self, how: str) -> QHBoxLayout:
        row = QHBoxLayout()
        button = self.work_button = QPushButton(tr("Work it out"))
        button.setAutoDefault(False)
        button.setAccessibleDescription(how)
        button.clicked.connect(lambda: self.worked_out.emit(self.entry.path))
        words = QLabel(how)
        words.setWordWrap(True)
        row.setSpacing(self.fontMetrics().averageCharWidth())
        row.addWidget(button)
        row.addWidget(words, 1)
        return row

    def _explain(self) -> None:
        entry = self.entry
        told = [entry.meaning, entry.rule, allowed(entry, self._inches)]
        if not self._needed:
            told.append(tr("May be left out."))
        self.words.setText(" ".join(t for t in told if t))
        tint(self.words, self.look.theme.faint)

    # -------------------------------------------------------------- showing

    def show_value(self, value: Value | None, note: Note, refusal: str, needed: bool, inches: bool) -> None:
        """Show the entry as its draft has it; what is being typed stays."""
        if (inches, needed) != (self._inches, self._needed):
            self._inches, self._needed = inches, needed
            self._explain()
        self._value, self._note = value, note
        field = self.field
        if isinstance(field, QuietCombo):
            self._show_choice(field, value)
        else:
            field.show_value(value)
        if self.origin is not None and self.source is not None:
            self.origin.setCurrentIndex(self.origin.findData(note.origin))
            self.source.show_value(note.text)
            self.source.setEnabled(note.origin is not None)
        self.refusal.setText(tr("⚠ {sentence}.", sentence=refusal) if refusal else "")
        self.refusal.setVisible(bool(refusal))
        tint(self.refusal, self.look.theme.bad, bold=True)
        name = self.entry.label
        self._label.setText(tr("{field} – still needed", field=name) if needed and value is None else name)
        told = tr("Refused: {sentence}", sentence=refusal) if refusal else self.entry.meaning
        self.field.setAccessibleDescription(told)

    def _show_choice(self, combo: QuietCombo, value: Value | None) -> None:
        held = [combo.itemData(i) for i in range(combo.count())]
        # True is not 1 here: a choice is found by what it is, too.
        place = next((i for i, h in enumerate(held) if h == value and type(h) is type(value)), -1)
        if place < 0 and isinstance(value, str) and self.entry.kind is Kind.FILE:
            combo.insertItem(combo.count() - 1, Path(value).name, value)
            place = combo.count() - 2
            combo.setItemData(place, value)
            combo.setToolTip(value)
        combo.setCurrentIndex(max(place, 0))

    def set_narrow(self, narrow: bool) -> None:
        """Put the source below the field where there is no room beside it."""
        letter = self.fontMetrics().averageCharWidth()
        for column, share in enumerate(_SHARES):
            self._grid.setColumnMinimumWidth(column, 0 if narrow else share * letter)
        if self.origin is not None:
            self._grid.removeWidget(self._sources)
            place = (1, 1, 1, 2) if narrow else (0, 2, 1, 1)
            self._grid.addWidget(self._sources, *place)

    def _colour(self) -> None:
        theme = self.look.theme
        tint(self._label, theme.text, bold=True)
        tint(self.words, theme.faint)
        tint(self.refusal, theme.bad, bold=True)

    # -------------------------------------------------------------- taking

    def commit(self) -> None:
        """Take what is being typed, as if the keyboard had left."""
        if not isinstance(self.field, QuietCombo):
            self.field.finish()
        if self.source is not None:
            self.source.finish()

    def _chosen(self, index: int) -> None:
        assert isinstance(self.field, QuietCombo)
        value = self.field.itemData(index)
        if value == _ELSEWHERE:
            self._show_choice(self.field, self._value)
            self._ask_file()
            return
        self.entered.emit(self.entry.path, value)

    def _ask_file(self) -> None:
        path = ask_open(self, self.entry.label, file_filter(tr("Files")))
        if path is not None:
            self.entered.emit(self.entry.path, str(path.resolve()))

    def _source_given(self, _: object = None) -> None:
        assert self.origin is not None and self.source is not None
        self.source.taken()
        origin = self.origin.currentData()
        note = Note(origin, self.source.text().strip() if origin is not None else "")
        if note != self._note:
            self.noted.emit(self.entry.field, note)
