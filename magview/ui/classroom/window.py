"""What the windows of the class share: a frame, a line for sentences, tables that sort, and the colours."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from pathlib import Path

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QPersistentModelIndex, QSortFilterProxyModel, Qt, Signal
from PySide6.QtGui import QCloseEvent, QKeySequence, QShortcut
from PySide6.QtWidgets import (
    QAbstractItemView,
    QFileDialog,
    QHeaderView,
    QPushButton,
    QTableView,
    QVBoxLayout,
    QWidget,
)

from magview.ui.kit.look import Look
from magview.ui.practice.controls import wrapped

Cell = str | float | None
_SORT = Qt.ItemDataRole.UserRole
_DISPLAY = Qt.ItemDataRole.DisplayRole


def push_button(words: str, slot: Callable[[], object] | None = None) -> QPushButton:
    """A button that does something when it is pressed, and not when Return is pressed elsewhere."""
    button = QPushButton(words)
    button.setAutoDefault(False)
    if slot is not None:
        button.clicked.connect(slot)
    return button


class ClassWindow(QWidget):
    """A window beside the workbench."""

    closed = Signal(object)

    def __init__(self, title: str, look: Look) -> None:
        super().__init__(None, Qt.WindowType.Window)
        self.look = look
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(f"{title} – magview")
        self.column = QVBoxLayout(self)
        self.message = wrapped()
        self.message.setAccessibleName("")
        self.message.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        QShortcut(QKeySequence(QKeySequence.StandardKey.HelpContents), self, self._open_guide)

    def say(self, sentence: str) -> None:
        """Put one sentence where it is seen and does not stop the work."""
        # A file's name in front stays as it is written.
        named = sentence.split(" ", 1)[0].endswith(":")
        self.message.setText(sentence if named else sentence[:1].upper() + sentence[1:])

    def ask_file(self, title: str, kinds: str, then: Callable[[Path], object]) -> None:
        """Ask for a file to open; nothing happens where none is chosen."""
        path, _ = QFileDialog.getOpenFileName(self, title, "", kinds)
        if path:
            then(Path(path))

    def _open_guide(self) -> None:
        from magview.ui.kit.guide_context import open_guide

        open_guide(self)

    def closeEvent(self, event: QCloseEvent) -> None:
        """Gone."""
        self.halt()
        super().closeEvent(event)
        self.closed.emit(self)

    def halt(self) -> None:
        """End what is running."""


class Rows(QAbstractTableModel):
    """A table of words and numbers, with any object behind each row."""

    def __init__(self, heads: Sequence[str], parent: QWidget) -> None:
        super().__init__(parent)
        self._heads = list(heads)
        self._rows: list[Sequence[Cell]] = []
        self._behind: list[object] = []

    def fill(self, rows: Sequence[Sequence[Cell]], behind: Sequence[object]) -> None:
        """Show other rows."""
        self.beginResetModel()
        self._rows, self._behind = list(rows), list(behind)
        self.endResetModel()

    def behind(self, row: int) -> object:
        """What stands behind a row."""
        return self._behind[row]

    def rowCount(self, parent: QModelIndex | QPersistentModelIndex = QModelIndex()) -> int:  # noqa: B008
        """Rows."""
        return 0 if parent.isValid() else len(self._rows)

    def columnCount(self, parent: QModelIndex | QPersistentModelIndex = QModelIndex()) -> int:  # noqa: B008
        """Columns."""
        return 0 if parent.isValid() else len(self._heads)

    def data(self, index: QModelIndex | QPersistentModelIndex, role: int = _DISPLAY) -> object:
        """A cell: as words, by its value for sorting, whole as its tip."""
        if not index.isValid():
            return None
        cell = self._rows[index.row()][index.column()]
        if role == _SORT:
            return -1.0 if cell is None else cell
        if role == Qt.ItemDataRole.TextAlignmentRole and not isinstance(cell, str):
            return int(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
        if role in (_DISPLAY, Qt.ItemDataRole.ToolTipRole):
            if cell is None:
                return ""
            return cell if isinstance(cell, str) else f"{cell:.10g}"
        return None

    def headerData(self, section: int, orientation: Qt.Orientation, role: int = _DISPLAY) -> object:
        """Heads of the columns; rows have none."""
        if orientation == Qt.Orientation.Horizontal and role == _DISPLAY:
            return self._heads[section]
        return None


class SortedTable(QTableView):
    """A table that sorts by the head that is clicked; Return or a double click opens a row."""

    opened = Signal(object)
    """What stands behind the row."""

    def __init__(self, name: str, heads: Sequence[str], wide: Sequence[int] = ()) -> None:
        """`wide`: columns that take what room there is."""
        super().__init__()
        self.setAccessibleName(name)
        self.rows = Rows(heads, self)
        self.sorter = QSortFilterProxyModel(self)
        self.sorter.setSortRole(_SORT)
        self.sorter.setSortCaseSensitivity(Qt.CaseSensitivity.CaseInsensitive)
        self.sorter.setSortLocaleAware(True)
        self.sorter.setSourceModel(self.rows)
        self.setModel(self.sorter)
        self.setSortingEnabled(True)
        self.sorter.sort(-1)
        self.horizontalHeader().setSortIndicator(-1, Qt.SortOrder.AscendingOrder)
        self.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.setTabKeyNavigation(False)
        self.setWordWrap(False)
        self.verticalHeader().hide()
        self.verticalHeader().setDefaultSectionSize(round(1.6 * self.fontMetrics().height()))
        self._wide = tuple(wide)
        self.activated.connect(self._activated)

    def fill(self, rows: Sequence[Sequence[Cell]], behind: Sequence[object]) -> None:
        """Show other rows, sorted as before; what was chosen stays chosen."""
        chosen = self.chosen()
        self.rows.fill(rows, behind)
        header = self.horizontalHeader()
        if rows:
            # By a sample: measuring thousands of cells takes longer than marking what is new.
            header.setResizeContentsPrecision(40)
            self.resizeColumnsToContents()
        for column in self._wide:
            header.setSectionResizeMode(column, QHeaderView.ResizeMode.Stretch)
        if chosen in behind:
            self.choose(chosen)

    def chosen(self) -> object:
        """What stands behind the row that is chosen; None where none is."""
        index = self.currentIndex()
        return self.rows.behind(self.sorter.mapToSource(index).row()) if index.isValid() else None

    def choose(self, behind: object) -> None:
        """Choose the row of something."""
        for row in range(self.rows.rowCount()):
            if self.rows.behind(row) == behind:
                self.setCurrentIndex(self.sorter.mapFromSource(self.rows.index(row, 0)))
                return

    def _activated(self, index: QModelIndex) -> None:
        self.opened.emit(self.rows.behind(self.sorter.mapToSource(index).row()))
