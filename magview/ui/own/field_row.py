"""One entry of the guided editor on screen: what it is, what may be typed, where it comes from, why it is refused."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QEvent, Signal
from PySide6.QtGui import QFocusEvent, QKeyEvent, QKeySequence
from PySide6.QtWidgets import (
    QFileDialog,
    QFrame,
    QGridLayout,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QPlainTextEdit,
    QPushButton,
    QWidget,
)

from magview.own.compare import shipped_item
from magview.own.drafts import OWN, SHIPPED, Note, shipped_kind
from magview.own.entry import LISTS, Entry, Value, read_entry, same_value, write_entry
from magview.own.fields import ORIGINS, Kind
from magview.own.limits import allowed_words
from magview.spec.base import SpecError
from magview.spec.language import tr
from magview.ui.kit.inputs import QuietCombo
from magview.ui.kit.look import Look
from magview.ui.kit.style import tint

_FILTER = "JSON (*.json)"
_ELSEWHERE = "\0"
_SHARES = (21, 22, 33)
"""Of the row's width: label, field, source [letters, where there is room]."""


class EntryLine(QLineEdit):
    """A line for typing. Once it has nothing of its own to undo, undoing is the window's."""

    def event(self, event: QEvent) -> bool:
        """Leave Undo and Redo to the window where the line has none."""
        if event.type() == QEvent.Type.ShortcutOverride and isinstance(event, QKeyEvent):
            idle = event.matches(QKeySequence.StandardKey.Undo) and not self.isUndoAvailable()
            idle = idle or (event.matches(QKeySequence.StandardKey.Redo) and not self.isRedoAvailable())
            if idle:
                event.ignore()
                return False
        return super().event(event)

    def put(self, text: str) -> None:
        """Show a text; what is being typed is not wiped by it."""
        if text != self.text() and not (self.hasFocus() and self.isModified()):
            self.setText(text)
            self.setCursorPosition(0)


class EntryText(QPlainTextEdit):
    """Several lines for typing; done when the keyboard leaves."""

    finished = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.setTabChangesFocus(True)
        self.setFrameStyle(QFrame.Shape.Box | QFrame.Shadow.Plain)  # an outline that is seen on dark, too
        self.setFixedHeight(4 * self.fontMetrics().lineSpacing())

    def focusOutEvent(self, event: QFocusEvent) -> None:
        """What was typed counts now."""
        super().focusOutEvent(event)
        self.finished.emit()


class FieldRow(QWidget):
    """An entry: its label, its field, its source; its meaning and limits below; a refusal below that."""

    entered = Signal(str, object)
    """Path and value (None for nothing) that the user gave."""
    noted = Signal(str, object)
    """Field and note that the user gave."""
    worked_out = Signal(str)
    """The user wants this entry worked out from others."""

    def __init__(self, kind: Kind, entry: Entry, look: Look, works_out: str = "") -> None:
        super().__init__()
        self.kind, self.entry, self.look = kind, entry, look
        self._value: Value | None = None
        self._note, self._inches, self._needed = Note(), False, not entry.optional
        grid = QGridLayout(self)
        grid.setContentsMargins(0, 2, 0, 6)
        grid.setVerticalSpacing(2)
        label = QLabel(tr(entry.label))
        label.setWordWrap(True)
        self._label = label
        self.field = self._build_field()
        self.field.setAccessibleName(tr(entry.label))
        self.field.setAccessibleDescription(tr(entry.meaning))
        label.setBuddy(self.field)
        grid.addWidget(label, 0, 0)
        grid.addWidget(self.field, 0, 1, 1, 2 if entry.form in ("file", "text", "lines") else 1)
        self._grid, self._sources = grid, QWidget()
        self.origin: QuietCombo | None = None
        self.source: EntryLine | None = None
        if entry.path not in ("name", "notes") and entry.end != 1 and entry.form != "file":
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

    def _build_field(self) -> QLineEdit | QPlainTextEdit | QuietCombo:
        entry = self.entry
        if entry.form in ("choice", "file"):
            combo = QuietCombo()
            combo.addItem(tr("choose…"), None)
            for value, words in self._choices():
                combo.addItem(words, value)
            combo.activated.connect(self._chosen)
            combo.setMinimumContentsLength(14)
            combo.setSizeAdjustPolicy(QuietCombo.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
            return combo
        if entry.form == "lines" or (entry.path.startswith("cam.profile.") and entry.form in LISTS):
            text = EntryText()
            text.finished.connect(self._typed)
            return text
        line = EntryLine()
        line.editingFinished.connect(self._typed)
        return line

    def _choices(self) -> list[tuple[str | bool, str]]:
        if self.entry.form == "choice":
            return [(value, tr(words)) for value, words in self.entry.choices]
        part: Kind = "magneto" if self.entry.path == "magneto" else "engine"
        mine = tr("the magneto in this window") if part == "magneto" else tr("the engine in this window")
        shipped = [(f"{SHIPPED}{n}", str(getattr(shipped_item(part, n), "name", n))) for n in shipped_kind(part)]
        return [(OWN, mine), *shipped, (_ELSEWHERE, tr("a file…"))]

    def _build_source(self) -> QWidget:
        box = QWidget()
        row = QHBoxLayout(box)
        row.setContentsMargins(0, 0, 0, 0)
        origin, source = self.origin, self.source = QuietCombo(), EntryLine()
        origin.addItem(tr("where from?"), None)
        for value, words in ORIGINS:
            origin.addItem(tr(words), value)
        origin.setAccessibleName(tr("Source of: {field}", field=tr(self.entry.label)))
        origin.activated.connect(self._source_given)
        origin.setMinimumContentsLength(13)
        origin.setSizeAdjustPolicy(QuietCombo.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        source.setPlaceholderText(tr("page, instrument, who"))
        source.setMaxLength(200)
        source.setAccessibleName(tr("Note on the source of: {field}", field=tr(self.entry.label)))
        source.editingFinished.connect(self._source_given)
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
        told = [tr(entry.meaning), tr(entry.why), allowed_words(self.kind, entry, self._inches)]
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
            text = write_entry(self.entry, value, inches)
            if isinstance(field, EntryLine):
                field.put(text)
            elif isinstance(field, QPlainTextEdit) and not field.hasFocus() and field.toPlainText() != text:
                field.setPlainText(text)
        if self.origin is not None and self.source is not None:
            self.origin.setCurrentIndex(self.origin.findData(note.origin))
            self.source.put(note.text)
            self.source.setEnabled(note.origin is not None)
        self.refusal.setText(tr("⚠ {sentence}.", sentence=refusal) if refusal else "")
        self.refusal.setVisible(bool(refusal))
        tint(self.refusal, self.look.theme.bad, bold=True)
        name = tr(self.entry.label)
        self._label.setText(tr("{field} – still needed", field=name) if needed and value is None else name)
        told = tr("Refused: {sentence}", sentence=refusal) if refusal else tr(self.entry.meaning)
        self.field.setAccessibleDescription(told)

    def _show_choice(self, combo: QuietCombo, value: Value | None) -> None:
        held = [combo.itemData(i) for i in range(combo.count())]
        # True is not 1 here: a choice is found by what it is, too.
        place = next((i for i, h in enumerate(held) if h == value and type(h) is type(value)), -1)
        if place < 0 and isinstance(value, str) and self.entry.form == "file":
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
        """What is being typed counts now, as if the keyboard had left."""
        if not isinstance(self.field, QuietCombo):
            self._typed()
        if self.source is not None and self.source.isModified():
            self._source_given()

    def _typed(self) -> None:
        field = self.field
        assert isinstance(field, QLineEdit | QPlainTextEdit)
        text = field.text() if isinstance(field, QLineEdit) else field.toPlainText()
        if isinstance(field, QLineEdit):
            field.setModified(False)
        if same_value(self.entry, text, self._value, self._inches):
            return
        try:
            value = read_entry(self.entry, text, self._inches)
        except SpecError:
            value = text.strip()  # kept as it was typed; the draft says at its field why it cannot be taken
        self.entered.emit(self.entry.path, value)

    def _chosen(self, index: int) -> None:
        assert isinstance(self.field, QuietCombo)
        value = self.field.itemData(index)
        if value == _ELSEWHERE:
            self._show_choice(self.field, self._value)
            self._ask_file()
            return
        self.entered.emit(self.entry.path, value)

    def _ask_file(self) -> None:
        path, _ = QFileDialog.getOpenFileName(self, tr(self.entry.label), "", _FILTER)
        if path:
            self.entered.emit(self.entry.path, str(Path(path).resolve()))

    def _source_given(self) -> None:
        assert self.origin is not None and self.source is not None
        self.source.setModified(False)
        origin = self.origin.currentData()
        note = Note(origin, self.source.text().strip() if origin is not None else "")
        if note != self._note:
            self.noted.emit(self.entry.field, note)
