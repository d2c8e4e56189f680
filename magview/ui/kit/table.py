"""A table to be read: rows that can be chosen, copied, and where it helps sorted."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import (
    QAbstractTableModel,
    QEvent,
    QModelIndex,
    QPersistentModelIndex,
    QSortFilterProxyModel,
    Qt,
    QTimer,
    Signal,
)
from PySide6.QtGui import QGuiApplication, QKeyEvent, QKeySequence, QResizeEvent
from PySide6.QtWidgets import QAbstractItemView, QHeaderView, QTableView, QWidget

Cell = str | float | None
_SORT = Qt.ItemDataRole.UserRole
_DISPLAY = Qt.ItemDataRole.DisplayRole
_RIGHT = int(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
_AnyIndex = QModelIndex | QPersistentModelIndex
_NOWHERE = QModelIndex()
_DIGITS_ALIKE = str.maketrans("123456789", "000000000")


def _words(cell: Cell) -> str:
    return "" if cell is None else cell if isinstance(cell, str) else f"{cell:.10g}"


class Rows(QAbstractTableModel):
    """Words and numbers in rows, with any object behind each row."""

    def __init__(self, heads: Sequence[str], parent: QWidget) -> None:
        super().__init__(parent)
        self.heads = list(heads)
        self._rows: list[Sequence[Cell]] = []
        self._behind: Sequence[object] = ()
        self._tips: Sequence[str] = ()
        self.numbers: tuple[int, ...] = ()
        """Columns whose words are numbers: they stand at the right."""

    def fill(self, rows: Sequence[Sequence[Cell]], behind: Sequence[object], tips: Sequence[str]) -> None:
        """Show other rows; `tips`: what a row says besides, one for each or none at all."""
        same_size = len(rows) == len(self._rows)
        if not same_size:
            self.beginResetModel()
        self._rows, self._behind, self._tips = list(rows), behind, tips
        if not same_size:
            self.endResetModel()
        elif rows:
            self.dataChanged.emit(self.index(0, 0), self.index(len(rows) - 1, len(self.heads) - 1))

    def shape(self) -> tuple[tuple[str, ...], ...]:
        """Heads and cells with all digits alike: tables of one shape need columns of one width."""
        return (*self.heads,), *(tuple(_words(cell).translate(_DIGITS_ALIKE) for cell in row) for row in self._rows)

    def behind(self, row: int) -> object:
        """Return the object behind a row."""
        return self._behind[row] if self._behind else None

    def rename(self, heads: Sequence[str]) -> None:
        """Other heads, as many as before or not."""
        self.beginResetModel()
        self.heads, self._rows = list(heads), []
        self.endResetModel()

    def rowCount(self, parent: _AnyIndex = _NOWHERE) -> int:
        """Number of rows; a table has no rows below rows."""
        return 0 if parent.isValid() else len(self._rows)

    def columnCount(self, parent: _AnyIndex = _NOWHERE) -> int:
        """Number of columns; a table has none below its rows."""
        return 0 if parent.isValid() else len(self.heads)

    def data(self, index: _AnyIndex, role: int = _DISPLAY) -> object:
        """A cell: as words, by its value for sorting, with its head for a screen reader, whole as its tip."""
        if not index.isValid():
            return None
        cell = self._rows[index.row()][index.column()]
        words = _words(cell)
        if role == _DISPLAY:
            return words
        if role == _SORT:
            return -1.0 if cell is None else cell
        if role == Qt.ItemDataRole.TextAlignmentRole:
            return _RIGHT if not isinstance(cell, str) or index.column() in self.numbers else None
        if role == Qt.ItemDataRole.AccessibleTextRole:
            return f"{self.heads[index.column()]}: {words or '–'}"
        if role == Qt.ItemDataRole.ToolTipRole:
            return self._tips[index.row()] if self._tips else words
        return None

    def headerData(self, section: int, orientation: Qt.Orientation, role: int = _DISPLAY) -> object:
        """Heads of the columns, and the numbers of the rows."""
        if role != _DISPLAY:
            return None
        return self.heads[section] if orientation == Qt.Orientation.Horizontal else str(section + 1)


class Table(QTableView):
    """Return or a double click opens a row, Ctrl+C copies what is chosen, Tab goes on to the next field."""

    opened = Signal(object)
    """Object behind the row."""
    row_chosen = Signal(int)
    """A row as filled in; −1 for none."""

    def __init__(
        self,
        name: str,
        heads: Sequence[str],
        *,
        wide: Sequence[int] = (),
        numbers: Sequence[int] = (),
        sortable: bool = False,
        wraps: bool = False,
        tall: float = 1.6,
    ) -> None:
        """`wide`: columns that take what room there is; `numbers`: columns that stand at the right; `tall`: height of
        a row [lines of type]."""
        super().__init__()
        self._shape: tuple[tuple[str, ...], ...] = ()
        self.setAccessibleName(name)
        self.rows = Rows(heads, self)
        self.rows.numbers = tuple(numbers)
        self._sorter = QSortFilterProxyModel(self)
        self._sorter.setSortRole(_SORT)
        self._sorter.setSortCaseSensitivity(Qt.CaseSensitivity.CaseInsensitive)
        self._sorter.setSortLocaleAware(True)
        self._sorter.setSourceModel(self.rows)
        self.setModel(self._sorter)
        if sortable:
            self.setSortingEnabled(True)
            self._sorter.sort(-1)
            self.horizontalHeader().setSortIndicator(-1, Qt.SortOrder.AscendingOrder)
        self.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.setTabKeyNavigation(False)
        self.setWordWrap(wraps)
        self.verticalHeader().hide()
        self._wide, self._wraps, self._tall = tuple(wide), wraps, tall
        self._most: int | None = None
        self.activated.connect(self._activated)
        self.selectionModel().selectionChanged.connect(self._selected)
        self._lay_out()

    # -------------------------------------------------------------- filling

    def fill(self, rows: Sequence[Sequence[Cell]], behind: Sequence[object] = (), tips: Sequence[str] = ()) -> None:
        """Show other rows, sorted as before; what was chosen stays chosen."""
        chosen = self.chosen()
        self.rows.fill(rows, behind, tips)
        shape = self.rows.shape()
        if shape != self._shape:  # while something is dragged only digits change, and all are as wide
            self._shape = shape
            self._lay_out()
        if chosen is not None and chosen in behind:
            self.choose(chosen)

    def set_heads(self, heads: Sequence[str]) -> None:
        """Name the columns, another number of them if need be; the rows are to be filled in again."""
        if self.rows.heads != list(heads):
            self.rows.rename(heads)

    def show_at_most(self, rows: int) -> None:
        """Be just as tall as the rows there are, up to this number of them."""
        self._most = rows
        self._lay_out()

    def _lay_out(self) -> None:
        header, line = self.horizontalHeader(), round(self._tall * self.fontMetrics().height())
        self.verticalHeader().setDefaultSectionSize(line)
        if self.rows.rowCount():
            # By a sample: measuring thousands of cells takes longer than marking what is new.
            header.setResizeContentsPrecision(40)
            self.resizeColumnsToContents()
        for column in self._wide:
            if column < self.rows.columnCount():
                header.setSectionResizeMode(column, QHeaderView.ResizeMode.Stretch)
        self._fit_rows()

    def _fit_rows(self) -> None:
        """Rows as tall as their words, and the table as tall as its rows, where it is to be."""
        if self._wraps:
            self.resizeRowsToContents()
        if self._most is not None:
            shown = [self.rowHeight(row) for row in range(min(self._most, self.rows.rowCount()))]
            height = sum(shown) or self.verticalHeader().defaultSectionSize()
            self.setFixedHeight(self.horizontalHeader().sizeHint().height() + height + 2 * self.frameWidth() + 2)

    # -------------------------------------------------------------- reading

    def row_count(self) -> int:
        """Number of rows."""
        return self.rows.rowCount()

    def words(self, row: int, column: int) -> str:
        """The words of a cell, by the row's place on the screen."""
        return str(self._sorter.index(row, column).data())

    def chosen_row(self) -> int:
        """The row that is chosen, as filled in; −1 where none is."""
        rows = self.selectionModel().selectedRows()
        return self._sorter.mapToSource(rows[0]).row() if rows else -1

    def chosen(self) -> object:
        """Return the object behind the row that is chosen; None where none is."""
        row = self.chosen_row()
        return self.rows.behind(row) if row >= 0 else None

    def choose_row(self, row: int) -> None:
        """Choose a row as filled in; none by −1."""
        if row < 0:
            self.clearSelection()
        else:
            self.setCurrentIndex(self._sorter.mapFromSource(self.rows.index(row, 0)))
            self.selectRow(self.currentIndex().row())

    def choose(self, behind: object) -> None:
        """Choose the row of something."""
        for row in range(self.rows.rowCount()):
            if self.rows.behind(row) == behind:
                self.choose_row(row)
                return

    def copied(self) -> str:
        """The chosen row, or all of them where none is chosen, under the heads, with tabs between the cells."""
        chosen = self.selectionModel().selectedRows()
        rows = [index.row() for index in chosen] or list(range(self.row_count()))
        columns = range(self.rows.columnCount())
        lines = [self.rows.heads, *([self.words(row, n) for n in columns] for row in rows)]
        return "\n".join("\t".join(cell.replace("\n", " ") for cell in line) for line in lines)

    # -------------------------------------------------------------- hands

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Words are broken anew."""
        super().resizeEvent(event)
        if self._wraps and event.size().width() != event.oldSize().width():
            QTimer.singleShot(0, self, self._fit_rows)

    def changeEvent(self, event: QEvent) -> None:
        """Type of another size needs other room."""
        super().changeEvent(event)
        if event.type() == QEvent.Type.FontChange:
            QTimer.singleShot(0, self, self._lay_out)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Copy whole rows, not the one cell that Qt would."""
        if event.matches(QKeySequence.StandardKey.Copy):
            QGuiApplication.clipboard().setText(self.copied())
            event.accept()
            return
        super().keyPressEvent(event)

    def _activated(self, index: QModelIndex) -> None:
        self.opened.emit(self.rows.behind(self._sorter.mapToSource(index).row()))

    def _selected(self) -> None:
        self.row_chosen.emit(self.chosen_row())
