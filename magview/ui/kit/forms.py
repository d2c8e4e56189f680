"""Fields for typing, ticking and choosing, one for each kind of entry (`forms.entry.Kind`).

Each takes one kind of value, and nothing at all for what was not read. What is typed stays in the field until it is a
value; a refusal is one sentence beside it and wipes nothing.
"""

from __future__ import annotations

import datetime
from collections.abc import Callable, Iterable
from typing import Any

from PySide6.QtCore import QEvent, QObject, QSize, Qt, Signal
from PySide6.QtGui import QFocusEvent, QKeyEvent, QKeySequence
from PySide6.QtWidgets import (
    QCheckBox,
    QFrame,
    QHBoxLayout,
    QLineEdit,
    QPlainTextEdit,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from magview.forms.entry import LISTS, Entry, Kind
from magview.spec.language import tr
from magview.spec.parse import parse_day
from magview.ui.kit.inputs import QuietCombo

_LONG_LIST = 1000
"""A list that may be longer than this is given several lines."""


class _OwnUndo(QObject):
    """Ctrl+Z takes back what is being typed; once that is done it takes back the sheet's last step."""

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Let the window have the key while nothing is being typed."""
        if event.type() == QEvent.Type.ShortcutOverride and isinstance(event, QKeyEvent):
            keys = QKeySequence.StandardKey
            modified = isinstance(watched, LineEdit | TextEdit) and watched.isModified()
            if not modified and (event.matches(keys.Undo) or event.matches(keys.Redo)):
                event.ignore()
                return True
        return False


def _tell(field: LineEdit | TextEdit, parse: Callable[[str], Any], shown: str) -> bool:
    """Tell the value that was typed, or why it is none.

    False where it was typed back to what was shown: a rounding is not written back.
    """
    if field.text().strip() == shown.strip():
        field.setModified(False)
        return False
    try:
        value = parse(field.text())
    except ValueError as error:
        field.wrong.emit(str(error))
    else:
        field.entered.emit(value)
    return True


class LineEdit(QLineEdit):
    """A line of text, or a number as people write it; told once it is whole."""

    entered = Signal(object)
    """Sent with the field's text when it was left or Return was pressed, and only if it was changed."""
    typing = Signal(object)
    """Sent with the text at every key."""
    wrong = Signal(str)
    """One sentence: what was typed is no value."""

    def __init__(
        self, parse: Callable[[str], Any] = str, words: Callable[[Any], str] = str, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._parse, self._words = parse, words
        self._value: Any = None
        self.letters = 0
        """Number of average letters to leave room for, where there is room; 0: as any field."""
        self._own_undo = _OwnUndo(self)
        self.installEventFilter(self._own_undo)
        self.editingFinished.connect(self.finish)
        self.textEdited.connect(self._typed)

    def show_value(self, value: Any) -> None:
        """Show a value; what is being typed is not wiped by it."""
        if self.isModified() and value == self._value:
            return
        self._value = value
        self.setText(self._words(value))
        self.setCursorPosition(0)
        self.setModified(False)

    def taken(self) -> None:
        """Take what was typed as the value."""
        self.setModified(False)

    def sizeHint(self) -> QSize:
        """As wide as its text may become, if the page has room."""
        hint = super().sizeHint()
        wide = self.letters * self.fontMetrics().averageCharWidth()
        return QSize(max(hint.width(), wide), hint.height())

    def _typed(self, text: str) -> None:
        try:
            self.typing.emit(self._parse(text))
        except ValueError:
            self.typing.emit(self._value)

    def finish(self) -> None:
        """Tell what was typed, if anything was."""
        if self.isModified() and not _tell(self, self._parse, self._words(self._value)):
            self.typing.emit(self._value)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Escape puts back what was there."""
        if event.key() == Qt.Key.Key_Escape and self.isModified():
            self.setModified(False)
            self.setText(self._words(self._value))
            self.typing.emit(self._value)
            return
        super().keyPressEvent(event)


class DayEdit(QWidget):
    """A calendar day, typed as 2026-11-25, or today by a button."""

    entered = Signal(object)
    """Day in its line, or today."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.line = LineEdit(parse_day)
        self.line.setPlaceholderText(tr("year-month-day"))
        self.today = QPushButton(tr("Today"))
        self.today.setAutoDefault(False)
        self.today.clicked.connect(self._today)
        self.line.entered.connect(self.entered)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.addWidget(self.line, 1)
        row.addWidget(self.today)
        self.setFocusProxy(self.line)

    def setAccessibleName(self, name: str) -> None:
        """Name the day for the field that has the keyboard."""
        super().setAccessibleName(name)
        self.line.setAccessibleName(name)

    def show_value(self, value: str) -> None:
        """Show a day."""
        self.line.show_value(value)

    def taken(self) -> None:
        """Take what was typed as the value."""
        self.line.taken()

    def _today(self) -> None:
        self.line.entered.emit(datetime.date.today().isoformat())


class TextEdit(QPlainTextEdit):
    """Several lines, of text or of what else is read from them; Tab goes on to the next field."""

    entered = Signal(object)
    """Sent with the field's text when it was left, and only if it was changed."""
    wrong = Signal(str)
    """One sentence: what was typed is no value."""

    def __init__(
        self, parse: Callable[[str], Any] = str, words: Callable[[Any], str] = str, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._parse, self._words = parse, words
        self._value: Any = None
        self._own_undo = _OwnUndo(self)
        self.installEventFilter(self._own_undo)
        self.setTabChangesFocus(True)
        # A frame in the text's colour: the style's own is lost on a dark window.
        self.setFrameStyle(QFrame.Shape.Box | QFrame.Shadow.Plain)

    def text(self) -> str:
        """Return the field's text, as of a line."""
        return self.toPlainText()

    def isModified(self) -> bool:
        """Whether something was typed, as of a line."""
        return self.document().isModified()

    def setModified(self, modified: bool) -> None:
        """Count what the field holds as typed or as shown, as of a line."""
        self.document().setModified(modified)

    def show_value(self, value: Any) -> None:
        """Show a value; what is being typed is not wiped by it."""
        if self.isModified() and value == self._value:
            return
        self._value = value
        if self.text() != self._words(value):
            self.setPlainText(self._words(value))
        self.setModified(False)

    def taken(self) -> None:
        """Take what was typed as the value."""
        self.setModified(False)

    def finish(self) -> None:
        """Tell what was typed, if anything was."""
        if self.isModified():
            _tell(self, self._parse, self._words(self._value))

    def focusOutEvent(self, event: QFocusEvent) -> None:
        """Left: told."""
        super().focusOutEvent(event)
        if event.reason() != Qt.FocusReason.PopupFocusReason:
            self.finish()


class CheckEdit(QCheckBox):
    """To be confirmed, or not."""

    entered = Signal(object)

    def __init__(self, text: str, off: bool | None = False, parent: QWidget | None = None) -> None:
        """`off`: what a tick taken away leaves; None is nothing answered."""
        super().__init__(text, parent)
        self._off = off
        self.clicked.connect(self._clicked)

    def _clicked(self, on: bool) -> None:
        self.entered.emit(True if on else self._off)

    def show_value(self, value: bool | None) -> None:
        """Show whether it is so."""
        self.setChecked(bool(value))

    def taken(self) -> None:
        """Nothing more to do."""


class ChoiceEdit(QuietCombo):
    """One of a few values."""

    entered = Signal(object)

    def __init__(self, choices: tuple[tuple[Any, str], ...], parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.values = tuple(value for value, _ in choices)
        self.addItems([words for _, words in choices])
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.activated.connect(self._chosen)

    def insert_nothing(self, words: str) -> None:
        """Offer nothing, too: first on the list, in words of its own."""
        self.values = (None, *self.values)
        self.insertItem(0, words)

    def _chosen(self, index: int) -> None:
        self.entered.emit(self.values[index])

    def show_value(self, value: Any) -> None:
        """Show a choice."""
        self.setCurrentIndex(next(i for i, v in enumerate(self.values) if v is value or v == value))

    def taken(self) -> None:
        """Nothing more to do."""


class TicksEdit(QWidget):
    """Several of a few values, each with its tick; a file's order is kept."""

    entered = Signal(object)

    def __init__(self, choices: tuple[tuple[Any, str], ...]) -> None:
        super().__init__()
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        self.boxes: dict[Any, QCheckBox] = {}
        self._order: tuple[Any, ...] = ()
        for value, words in choices:
            box = self.boxes[value] = QCheckBox(words)
            box.clicked.connect(self._clicked)
            column.addWidget(box)

    def show_value(self, values: tuple[Any, ...]) -> None:
        """Tick these, and no others."""
        # One of them is drawn by its place on the list.
        self._order = (*values, *(value for value in self.boxes if value not in values))
        for value, box in self.boxes.items():
            box.setChecked(value in values)

    def offer(self, values: Iterable[Any]) -> None:
        """Show only these."""
        shown = set(values)
        for value, box in self.boxes.items():
            box.setVisible(value in shown)

    def taken(self) -> None:
        """Nothing more to do."""

    def _clicked(self) -> None:
        self.entered.emit(tuple(value for value in self._order if self.boxes[value].isChecked()))


Edit = LineEdit | DayEdit | TextEdit | CheckEdit | ChoiceEdit | TicksEdit


def edit_of(entry: Entry, parse: Callable[[str], Any], words: Callable[[Any], str]) -> Edit:
    """The field that an entry is given in. `parse` and `words` read and write what is typed."""
    match entry.kind:
        case Kind.TICK:
            return CheckEdit(entry.label, None if entry.about.optional else False)
        case Kind.CHOICE:
            return ChoiceEdit(entry.options)
        case Kind.CHOICES:
            return TicksEdit(tuple((value, tr(told)) for value, told in entry.choices))
        case Kind.DAY:
            return DayEdit()
        case Kind.TEXT | Kind.TEXTS:
            return TextEdit(parse, words)
        case _ if entry.kind in LISTS and entry.about.bounds.get("max_length", 0) > _LONG_LIST:
            return TextEdit(parse, words)
        case _:
            return LineEdit(parse, words)
