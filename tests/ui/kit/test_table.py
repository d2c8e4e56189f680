"""The table to be read: sorting, choosing, opening, copying, and what a screen reader hears."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QAccessible, QGuiApplication
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from magview.ui.kit.table import Table

ROWS = (("b", 10.0), ("a", 9.0), ("c", None))


@pytest.fixture
def table(qtbot: QtBot) -> Table:
    shown = Table("Letters", ("letter", "number"), wide=(0,), sortable=True)
    qtbot.addWidget(shown)
    shown.fill(ROWS, ("second", "first", "third"))
    shown.show()
    return shown


def column(table: Table, number: int) -> list[str]:
    return [table.words(row, number) for row in range(table.row_count())]


def test_it_sorts_by_value_and_not_by_words(table: Table) -> None:
    assert column(table, 0) == ["b", "a", "c"], "as filled in, until a head is clicked"
    table.sortByColumn(1, Qt.SortOrder.AscendingOrder)
    assert column(table, 1) == ["", "9", "10"]
    table.sortByColumn(0, Qt.SortOrder.DescendingOrder)
    assert column(table, 0) == ["c", "b", "a"]


def test_the_row_chosen_is_told_as_filled_in_and_stays_chosen(table: Table) -> None:
    told: list[int] = []
    table.row_chosen.connect(told.append)
    table.sortByColumn(0, Qt.SortOrder.AscendingOrder)
    table.choose("second")
    assert told == [0] and table.chosen() == "second" and table.words(table.currentIndex().row(), 0) == "b"
    table.fill([("z", 1.0), *ROWS], ("new", "second", "first", "third"))
    assert table.chosen() == "second" and table.chosen_row() == 1
    table.choose_row(-1)
    assert table.chosen() is None and told[-1] == -1


def test_return_opens_and_tab_goes_on(table: Table, qtbot: QtBot) -> None:
    opened: list[object] = []
    table.opened.connect(opened.append)
    with qtbot.waitActive(table):
        table.activateWindow()
    table.setFocus()
    table.choose("first")
    QTest.keyClick(table, Qt.Key.Key_Down)
    QTest.keyClick(table, Qt.Key.Key_Return)
    assert opened == ["third"]
    QTest.keyClick(table, Qt.Key.Key_Tab)
    assert table.chosen() == "third", "Tab does not wander through cells"


def test_it_copies_the_chosen_row_or_all(table: Table) -> None:
    QTest.keyClick(table, Qt.Key.Key_C, Qt.KeyboardModifier.ControlModifier)
    assert QGuiApplication.clipboard().text() == "letter\tnumber\nb\t10\na\t9\nc\t"
    table.choose("first")
    QTest.keyClick(table, Qt.Key.Key_C, Qt.KeyboardModifier.ControlModifier)
    assert QGuiApplication.clipboard().text() == "letter\tnumber\na\t9"


def test_a_screen_reader_hears_the_head_with_each_cell(table: Table) -> None:
    seen = QAccessible.queryAccessibleInterface(table)
    assert seen is not None and seen.text(QAccessible.Text.Name) == "Letters"
    assert table.model().index(1, 1).data(Qt.ItemDataRole.AccessibleTextRole) == "number: 9"
    assert table.model().index(2, 1).data(Qt.ItemDataRole.AccessibleTextRole) == "number: –"


def test_it_is_as_tall_as_its_rows_up_to_a_number(table: Table) -> None:
    table.show_at_most(2)
    two = table.height()
    table.fill([*ROWS, *ROWS], range(6))
    assert table.height() == two
    table.fill(ROWS[:1], ("second",))
    assert table.height() < two
