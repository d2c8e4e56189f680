"""A table whose rows are typed, added and struck out; the columns are the fields of the rows' model."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import Any

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import (
    QAbstractItemView,
    QHBoxLayout,
    QHeaderView,
    QLabel,
    QPushButton,
    QTableWidget,
    QTableWidgetItem,
    QVBoxLayout,
    QWidget,
)

from magview.forms.entry import Entry, entry_of
from magview.forms.typed import outside, read, rounded, unit_words
from magview.spec.language import tr
from magview.ui.kit.look import Look


@dataclass(frozen=True)
class RowWords:
    """Words for a row and its buttons, in the present language."""

    one: str
    add: str
    drop: str


class RowsEdit(QWidget):
    """Rows of numbers. A row that lacks something is kept here, and said, until it is whole; then all are told."""

    entered = Signal(object)
    """All rows, each a dictionary, once every one is whole."""
    waits = Signal(str)
    """One sentence: why the rows are not taken yet; nothing once they are."""

    def __init__(
        self,
        entry: Entry,
        look: Look,
        words: RowWords,
        verdict: Callable[[int], str] | None = None,
        parent: QWidget | None = None,
    ) -> None:
        """`verdict`: what is said of a row in a last column; None leaves it away."""
        super().__init__(parent)
        assert entry.row is not None
        self._words, self._verdict, self.look = words, verdict, look
        self.columns = tuple(entry_of(entry.row, name) for name in entry.row.model_fields)
        self._seen: tuple[Any, ...] | None = None
        self._cells: list[dict[str, Any]] = []
        self._wrong: dict[tuple[int, str], str] = {}
        self._writable = True
        self.table = QTableWidget(0, len(self.columns) + 1)
        self.table.setAccessibleName(entry.label)
        self.table.setTabKeyNavigation(False)
        self.table.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectItems)
        self.table.horizontalHeader().setSectionResizeMode(QHeaderView.ResizeMode.Stretch)
        self.table.horizontalHeader().setDefaultAlignment(
            Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag(Qt.TextFlag.TextWordWrap)
        )
        self.table.setWordWrap(True)
        self.table.itemChanged.connect(self._typed)
        self.add, self.drop = QPushButton(words.add), QPushButton(words.drop)
        self.add.clicked.connect(self._add_row)
        self.drop.clicked.connect(self._drop_row)
        self.said = QLabel()
        self.said.setWordWrap(True)
        buttons = QHBoxLayout()
        for button in (self.add, self.drop):
            button.setAutoDefault(False)
            buttons.addWidget(button)
        buttons.addStretch(1)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self.table)
        column.addLayout(buttons)
        column.addWidget(self.said)
        self.setFocusProxy(self.table)
        self.say("")
        look.changed.connect(self._fill)

    # -------------------------------------------------------------- showing

    def show_value(self, found: tuple[Any, ...]) -> None:
        """Show rows; rows being written stay as long as those do not change."""
        if found != self._seen:
            self._seen, self._wrong = found, {}
            self.say("")
            self._cells = [{c.name: getattr(row, c.name) for c in self.columns} for row in found]
        self._fill()

    def set_writable(self, writable: bool) -> None:
        """Let rows be written, or only read."""
        self._writable = writable
        self._fill()

    def taken(self, rows: tuple[Any, ...]) -> None:
        """Take what was typed as the value."""
        self._seen = rows

    def _fill(self) -> None:
        blocked = self.table.blockSignals(True)
        titles = [
            tr("{field} [{unit}]", field=c.label, unit=unit_words(c, self.look.inches)) for c in self.columns
        ]  # fmt: skip
        self.table.setHorizontalHeaderLabels([*titles, tr("Verdict")])
        self.table.setColumnHidden(len(self.columns), self._verdict is None)
        self.table.setRowCount(len(self._cells))
        for i, cells in enumerate(self._cells):
            for place, column in enumerate(self.columns):
                words = rounded(column, cells[column.name], self.look.inches)
                item = QTableWidgetItem(self._wrong.get((i, column.name), words))
                if not self._writable:
                    item.setFlags(item.flags() & ~Qt.ItemFlag.ItemIsEditable)
                self.table.setItem(i, place, item)
            item = QTableWidgetItem(self._verdict(i) if self._verdict is not None else "")
            item.setFlags(item.flags() & ~Qt.ItemFlag.ItemIsEditable)
            self.table.setItem(i, len(self.columns), item)
        self.table.blockSignals(blocked)
        self.add.setEnabled(self._writable)
        self.drop.setEnabled(self._writable and bool(self._cells))
        line = self.fontMetrics().height()
        self.table.verticalHeader().setDefaultSectionSize(round(1.6 * line))
        head = round(2.7 * line)
        self.table.horizontalHeader().setFixedHeight(head)
        self.table.setFixedHeight(head + round(1.6 * line) * max(2, min(9, len(self._cells))) + 4)

    # -------------------------------------------------------------- entering

    def _typed(self, item: QTableWidgetItem) -> None:
        column = self.columns[item.column()]
        place = (item.row(), column.name)
        try:
            value = read(column, item.text(), self.look.inches)
        except ValueError as error:
            self._wrong[place] = item.text()
            self.say(str(error))
            return
        self._wrong.pop(place, None)
        now = self._cells[item.row()][column.name]
        if item.text() != rounded(column, now, self.look.inches):
            self._cells[item.row()][column.name] = value
            blocked = self.table.blockSignals(True)
            item.setText(rounded(column, value, self.look.inches))  # type: ignore[arg-type]
            self.table.blockSignals(blocked)
        self._tell()

    def _add_row(self) -> None:
        self._cells.append({c.name: None if c.about.required else c.about.default for c in self.columns})
        self._tell()
        self._fill()
        self.table.setCurrentCell(len(self._cells) - 1, 0)
        self.table.setFocus()

    def _drop_row(self) -> None:
        row = self.table.currentRow()
        self._cells.pop(row if row >= 0 else -1)
        self._wrong = {}
        self._tell()
        self._fill()

    def _tell(self) -> None:
        """Tell all rows, if each is whole."""
        if self._wrong:
            return
        for i, cells in enumerate(self._cells):
            for column in self.columns:
                value = cells[column.name]
                place = {"row": self._words.one, "number": i + 1, "field": column.label}
                if value is None and column.about.required:
                    self.say(tr("{row} {number} waits for: {field}", **place))
                    return
                sentence = outside(column, value, self.look.inches)
                if sentence:
                    self.say(tr("{row} {number}, {field}: {sentence}", **place, sentence=sentence))
                    return
        self.say("")
        self.entered.emit(tuple(dict(cells) for cells in self._cells))

    def say(self, sentence: str) -> None:
        """Say below the table why its rows are not taken; nothing once they are."""
        self.said.setText(f"✗ {sentence}" if sentence else "")
        self.said.setVisible(bool(sentence))
        self.waits.emit(sentence)
