"""Trials and lobes on the job sheet: a table whose rows are typed, added and struck out."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from PySide6.QtCore import Qt
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

from magview.job.readings import Row
from magview.spec.language import tr
from magview.ui.kit.look import Look
from magview.ui.work.edits import number_of, typed_words
from magview.ui.work.kinds import Entry, entries, unit_words

if TYPE_CHECKING:
    from magview.ui.work.model import JobModel


class RowsEdit(QWidget):
    """Rows of numbers. A row that lacks something is kept here, and said, until it is whole; then all are noted."""

    def __init__(self, model: JobModel, entry: Entry, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        assert entry.row is not None
        self._model, self._entry, self._row, self.look = model, entry, entry.row, look
        self.columns = entries(entry.field, entry.row)
        self._needed = {n for n, info in entry.row.model_fields.items() if info.is_required()}
        self._seen: tuple[Any, ...] | None = None
        self._cells: list[dict[str, float | None]] = []
        self._wrong: dict[tuple[int, str], str] = {}
        self.table = QTableWidget(0, len(self.columns) + 1)
        self.table.setAccessibleName(entry.words)
        self.table.setTabKeyNavigation(False)
        self.table.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectItems)
        self.table.horizontalHeader().setSectionResizeMode(QHeaderView.ResizeMode.Stretch)
        self.table.horizontalHeader().setDefaultAlignment(
            Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag(Qt.TextFlag.TextWordWrap)
        )
        self.table.setWordWrap(True)
        self.table.itemChanged.connect(self._typed)
        trials = entry.field == "trials"
        self.add = QPushButton(tr("Add a trial") if trials else tr("Add a lobe"))
        self.drop = QPushButton(tr("Strike out the chosen trial") if trials else tr("Strike out the chosen lobe"))
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
        self._say("")
        look.changed.connect(self._fill)

    # -------------------------------------------------------------- showing

    def show_job(self) -> None:
        """Show the rows of the sheet; rows being written stay as long as those do not change."""
        found = getattr(getattr(self._model.job, self._entry.part), self._entry.field)
        if found != self._seen:
            self._seen, self._wrong = found, {}
            self._say("")
            self._cells = [{c.field: getattr(row, c.field) for c in self.columns} for row in found]
        self._fill()

    def _fill(self) -> None:
        writable = self._model.writable
        blocked = self.table.blockSignals(True)
        titles = [
            tr("{field} [{unit}]", field=c.words, unit=unit_words(c.field, self.look.inches)) for c in self.columns
        ]
        self.table.setHorizontalHeaderLabels([*titles, tr("Verdict")])
        self.table.setColumnHidden(len(self.columns), self._entry.field == "trials")
        self.table.setRowCount(len(self._cells))
        for i, cells in enumerate(self._cells):
            for place, column in enumerate(self.columns):
                words = typed_words(column.field, cells[column.field], self.look.inches)
                item = QTableWidgetItem(self._wrong.get((i, column.field), words))
                if not writable:
                    item.setFlags(item.flags() & ~Qt.ItemFlag.ItemIsEditable)
                self.table.setItem(i, place, item)
            item = QTableWidgetItem(self._verdict(i))
            item.setFlags(item.flags() & ~Qt.ItemFlag.ItemIsEditable)
            self.table.setItem(i, len(self.columns), item)
        self.table.blockSignals(blocked)
        self.add.setEnabled(writable)
        self.drop.setEnabled(writable and bool(self._cells))
        line = self.fontMetrics().height()
        self.table.verticalHeader().setDefaultSectionSize(round(1.6 * line))
        head = round(2.7 * line)
        self.table.horizontalHeader().setFixedHeight(head)
        self.table.setFixedHeight(head + round(1.6 * line) * max(2, min(9, len(self._cells))) + 4)

    def _verdict(self, i: int) -> str:
        from magview.ui.work.form import verdict_of

        found = self._model.rows()
        told: list[Row] = [
            row for c in self.columns
            if (row := found.get((self._entry.part, f"{self._entry.field}[{i}].{c.field}"))) is not None
            and row.verdict
        ]  # fmt: skip
        worst = next((row for row in told if row.verdict not in ("in limits", "as it must be")), None)
        return verdict_of(worst or (told[0] if told else None)).partition(" (")[0]

    # -------------------------------------------------------------- entering

    def _typed(self, item: QTableWidgetItem) -> None:
        column = self.columns[item.column()]
        place = (item.row(), column.field)
        try:
            value = number_of(column.field, item.text(), self.look.inches)
        except ValueError as error:
            self._wrong[place] = item.text()
            self._say(str(error))
            return
        self._wrong.pop(place, None)
        now = self._cells[item.row()][column.field]
        if item.text() != typed_words(column.field, now, self.look.inches):
            self._cells[item.row()][column.field] = value
            blocked = self.table.blockSignals(True)
            item.setText(typed_words(column.field, value, self.look.inches))
            self.table.blockSignals(blocked)
        self._note()

    def _add_row(self) -> None:
        self._cells.append(
            {c.field: None if c.field in self._needed else self._row.model_fields[c.field].default
             for c in self.columns}
        )  # fmt: skip
        self._note()
        self._fill()
        self.table.setCurrentCell(len(self._cells) - 1, 0)
        self.table.setFocus()

    def _drop_row(self) -> None:
        row = self.table.currentRow()
        self._cells.pop(row if row >= 0 else -1)
        self._wrong = {}
        self._note()
        self._fill()

    def _note(self) -> None:
        """Note all rows, if each is whole."""
        one = tr("Trial") if self._entry.field == "trials" else tr("Lobe")
        if self._wrong:
            return
        for i, cells in enumerate(self._cells):
            for column in self.columns:
                value = cells[column.field]
                if value is None and column.field in self._needed:
                    self._say(tr("{row} {number} waits for: {field}", row=one, number=i + 1, field=column.words))
                    return
                if value is not None and not (column.low or 0.0) <= value <= (column.high or 0.0):
                    low, high = (typed_words(column.field, e, self.look.inches) for e in (column.low, column.high))
                    self._say(
                        tr("{row} {number}, {field}: outside {low} to {high}, not taken",
                           row=one, number=i + 1, field=column.words, low=low, high=high)
                    )  # fmt: skip
                    return
        made = tuple(self._cells)
        entry = self._entry
        sentence = self._model.set_value(entry.part, entry.field, made, entry.words)
        self._say(sentence)
        if not sentence:
            self._seen = getattr(getattr(self._model.job, entry.part), entry.field)

    def _say(self, sentence: str) -> None:
        if sentence:
            self._model.hold(self._entry.part, self._entry.field, self._entry.words)
        else:
            self._model.let_go(self._entry.part, self._entry.field)
        self.said.setText(f"✗ {sentence}" if sentence else "")
        self.said.setVisible(bool(sentence))
