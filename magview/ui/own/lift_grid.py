"""Grid of angles and readings to type into: Return goes on to the next cell, columns of a table can be pasted."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QAbstractTableModel, QEvent, QModelIndex, QObject, QPersistentModelIndex, Qt, Signal
from PySide6.QtGui import QColor, QGuiApplication, QKeyEvent, QKeySequence
from PySide6.QtWidgets import (
    QAbstractItemDelegate,
    QAbstractItemView,
    QHeaderView,
    QStyledItemDelegate,
    QTableView,
    QWidget,
)

from magview.spec.language import tr
from magview.spec.lift_cells import BadCell, Row
from magview.spec.lift_table import MAX_ROWS
from magview.ui.kit.look import Look

_AnyIndex = QModelIndex | QPersistentModelIndex
_NOWHERE = QModelIndex()
_STEPS_KEPT = 50
_LEAST_SHOWN = 12
"""Rows shown at least, empty ones included, so that the grid looks like one."""


class LiftRows(QAbstractTableModel):
    """Cells as written, with empty rows below them; a cell that cannot be read has its sentence."""

    typed = Signal(int, int, str)
    """Row, column and text of a cell just written."""

    def __init__(self, look: Look, parent: QWidget) -> None:
        super().__init__(parent)
        self._look = look
        self.heads = ("", "")
        self.rows: tuple[Row, ...] = ()
        self._bad: dict[tuple[int, int], str] = {}
        self._bad_rows: set[int] = set()

    def show_rows(self, rows: Sequence[Row]) -> None:
        """Show other rows; empty ones at the end are dropped."""
        kept = [(angle, reading) for angle, reading in rows[:MAX_ROWS]]
        while kept and not any(cell.strip() for cell in kept[-1]):
            kept.pop()
        was, now = self.rowCount(), self._count(kept)
        if now > was:
            self.beginInsertRows(_NOWHERE, was, now - 1)
            self.rows = tuple(kept)
            self.endInsertRows()
        elif now < was:
            self.beginRemoveRows(_NOWHERE, now, was - 1)
            self.rows = tuple(kept)
            self.endRemoveRows()
        self.rows = tuple(kept)
        self.dataChanged.emit(self.index(0, 0), self.index(now - 1, 1))

    def mark(self, bad: Sequence[BadCell]) -> None:
        """Mark the cells that cannot be read."""
        self._bad = {(cell.row, cell.column): cell.sentence for cell in bad}
        self._bad_rows = {cell.row for cell in bad}
        self.dataChanged.emit(self.index(0, 0), self.index(self.rowCount() - 1, 1))
        self.headerDataChanged.emit(Qt.Orientation.Vertical, 0, self.rowCount() - 1)

    def name_columns(self, heads: tuple[str, str]) -> None:
        """Name both columns."""
        if heads != self.heads:
            self.heads = heads
            self.headerDataChanged.emit(Qt.Orientation.Horizontal, 0, 1)

    @staticmethod
    def _count(rows: Sequence[Row]) -> int:
        return min(MAX_ROWS, max(_LEAST_SHOWN, len(rows) + 1))

    def text(self, row: int, column: int) -> str:
        """Text of a cell."""
        return self.rows[row][column] if row < len(self.rows) else ""

    def rowCount(self, parent: _AnyIndex = _NOWHERE) -> int:
        """Rows that are written, and empty ones to go on with."""
        return 0 if parent.isValid() else self._count(self.rows)

    def columnCount(self, parent: _AnyIndex = _NOWHERE) -> int:
        """Angle and reading."""
        return 0 if parent.isValid() else 2

    def flags(self, index: _AnyIndex) -> Qt.ItemFlag:
        """Every cell can be written."""
        return super().flags(index) | Qt.ItemFlag.ItemIsEditable

    def data(self, index: _AnyIndex, role: int = Qt.ItemDataRole.DisplayRole) -> object:
        """A cell as written; for a screen reader with its column and with why it cannot be read."""
        place = (index.row(), index.column())
        match role:
            case Qt.ItemDataRole.DisplayRole | Qt.ItemDataRole.EditRole:
                return self.text(*place)
            case Qt.ItemDataRole.ForegroundRole if place in self._bad:
                return QColor(self._look.theme.bad)
            case Qt.ItemDataRole.ToolTipRole:
                return self._bad.get(place)
            case Qt.ItemDataRole.TextAlignmentRole:
                return int(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
            case Qt.ItemDataRole.AccessibleTextRole:
                return f"{self.heads[place[1]]}: {self.text(*place)}. {self._bad.get(place, '')}"
        return None

    def setData(self, index: _AnyIndex, value: object, role: int = Qt.ItemDataRole.EditRole) -> bool:
        """Tell what was written; whoever owns the rows shows them."""
        if role != Qt.ItemDataRole.EditRole or str(value).strip() == self.text(index.row(), index.column()):
            return False
        self.typed.emit(index.row(), index.column(), str(value).strip())
        return True

    def headerData(
        self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole
    ) -> object:
        """Names of the columns; numbers of the rows, with a cross where a row cannot be read."""
        if role != Qt.ItemDataRole.DisplayRole:
            return None
        if orientation == Qt.Orientation.Horizontal:
            return self.heads[section]
        return f"✗ {section + 1}" if section in self._bad_rows else str(section + 1)


class _Cells(QStyledItemDelegate):
    """Takes a cell at its Return, at once: what is typed fast must not run into the cell before."""

    def eventFilter(self, editor: QObject, event: QEvent) -> bool:
        """Take what stands in the cell, and close it."""
        pressed = isinstance(event, QKeyEvent) and event.type() == QEvent.Type.KeyPress
        if pressed and event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):  # type: ignore[attr-defined]
            self.commitData.emit(editor)
            self.closeEditor.emit(editor, QStyledItemDelegate.EndEditHint.SubmitModelCache)
            return True
        return super().eventFilter(editor, event)


class LiftGrid(QTableView):
    """Typing, pasting, copying, clearing and undoing in the grid; `edited` tells of each."""

    edited = Signal()
    """The rows are others now."""
    pasted = Signal(str)
    """Text from the clipboard that is to be cut into columns."""

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.cells = LiftRows(look, self)
        self._steps: list[tuple[Row, ...]] = []
        self.setModel(self.cells)
        self.setItemDelegate(_Cells(self))
        self.cells.typed.connect(lambda row, column, text: self.put(row, column, [[text]]))
        self.setAccessibleName(tr("Angles and readings"))
        self.setTabKeyNavigation(False)
        self.setEditTriggers(
            QAbstractItemView.EditTrigger.AnyKeyPressed
            | QAbstractItemView.EditTrigger.DoubleClicked
            | QAbstractItemView.EditTrigger.EditKeyPressed
        )
        self.horizontalHeader().setSectionResizeMode(QHeaderView.ResizeMode.Stretch)
        letters = self.fontMetrics()
        self.verticalHeader().setDefaultSectionSize(round(1.5 * letters.height()))
        self.setMinimumWidth(38 * letters.averageCharWidth())
        self.setCurrentIndex(self.cells.index(0, 0))

    def rows(self) -> tuple[Row, ...]:
        """Rows as written."""
        return self.cells.rows

    def fill(self, rows: Sequence[Row]) -> None:
        """Other rows, as one step that can be undone."""
        before = self.cells.rows
        self.cells.show_rows(rows)
        if self.cells.rows != before:
            self._steps = [*self._steps, before][-_STEPS_KEPT:]
            self.edited.emit()

    def put(self, row: int, column: int, cells: Sequence[Sequence[str]]) -> None:
        """Put a block of cells where its first one is said to be; what does not fit at the right is left away."""
        rows = [list(r) for r in self.cells.rows]
        rows += [["", ""] for _ in range(row + len(cells) - len(rows))]
        for i, written in enumerate(cells):
            for j, text in enumerate(written[: 2 - column]):
                rows[row + i][column + j] = text
        self.fill([(angle, reading) for angle, reading in rows])

    def undo(self) -> None:
        """Take the last step back."""
        if self._steps:
            self.cells.show_rows(self._steps.pop())
            self.edited.emit()

    def go_to(self, row: int, column: int) -> None:
        """Take the keyboard to a cell."""
        index = self.cells.index(row, column)
        self.setCurrentIndex(index)
        self.scrollTo(index)
        self.setFocus()

    def closeEditor(self, editor: QWidget, hint: QAbstractItemDelegate.EndEditHint) -> None:
        """Return goes on: from the angle to its reading, from there to the next row's angle."""
        place = self.currentIndex().row(), self.currentIndex().column()
        super().closeEditor(editor, hint)
        if hint == QAbstractItemDelegate.EndEditHint.SubmitModelCache:
            self._go_on(*place)

    def _go_on(self, row: int, column: int) -> None:
        after = (row, 1) if column == 0 else (min(row + 1, self.cells.rowCount() - 1), 0)
        self.setCurrentIndex(self.cells.index(*after))

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Paste, copy, clear, undo; Return goes on."""
        keys = QKeySequence.StandardKey
        if event.matches(keys.Paste):
            self.pasted.emit(QGuiApplication.clipboard().text())
        elif event.matches(keys.Copy):
            QGuiApplication.clipboard().setText(self.copied())
        elif event.matches(keys.Undo):
            self.undo()
        elif event.key() in (Qt.Key.Key_Delete, Qt.Key.Key_Backspace):
            self._clear()
        elif event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and self.currentIndex().isValid():
            self._go_on(self.currentIndex().row(), self.currentIndex().column())
        else:
            super().keyPressEvent(event)
            return
        event.accept()

    def copied(self) -> str:
        """The cells chosen, with tabs between columns."""
        chosen = {(i.row(), i.column()) for i in self.selectedIndexes()}
        lines = [
            "\t".join(self.cells.text(row, column) for column in (0, 1) if (row, column) in chosen)
            for row in sorted({row for row, _ in chosen})
        ]
        return "\n".join(lines)

    def _clear(self) -> None:
        chosen = {(i.row(), i.column()) for i in self.selectedIndexes()}
        rows = [
            ("" if (i, 0) in chosen else angle, "" if (i, 1) in chosen else reading)
            for i, (angle, reading) in enumerate(self.cells.rows)
        ]
        self.fill(rows)
