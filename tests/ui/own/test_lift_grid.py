"""Readings of the lift typed and pasted into the grid, and the magneto that comes of them."""

from __future__ import annotations

from math import cos, radians

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QLineEdit

from tests.wording import says

TOP_MM = 0.5
"""A lobe of one cosine, 40° to either side, whose top is this by construction."""
ROWS = [(a, TOP_MM / 2 * (1 + cos(radians(a * 180 / 40))) if abs(a) < 40 else 0.0) for a in range(-52, 53, 4)]


def type_in(dialog, *cells):
    """Type cells one after the other, each ended by Return."""
    for cell in cells:
        QTest.keyClicks(dialog.grid, cell[:1])
        editor = dialog.grid.findChildren(QLineEdit)[-1]
        QTest.keyClicks(editor, cell[1:])
        QTest.keyClick(editor, Qt.Key.Key_Return)  # and on without waiting, as fast fingers do


def test_a_lift_typed_and_pasted_keeps_name_engine_and_coupling(open_window):
    window = open_window("seven-radial-left")
    before = window.model.state
    dialog = window.import_lift()
    assert not dialog.place_button.isEnabled()
    type_in(dialog, "-60", "0", "-56", "o,0")
    assert dialog.grid.rows() == (("-60", "0"), ("-56", "o,0"))
    assert dialog.bad.count() == 1 and "o,0" in dialog.bad.item(0).text()
    assert dialog.grid.cells.headerData(1, Qt.Orientation.Vertical) == "✗ 2"
    dialog.grid.go_to(1, 1)
    type_in(dialog, "0,0")
    assert dialog.bad.count() == 0 and dialog.grid.currentIndex().row() == 2
    QGuiApplication.clipboard().setText("\n".join(f"{a}\t{s:.4f}".replace(".", ",") for a, s in ROWS))
    QTest.keyClick(dialog.grid, Qt.Key.Key_V, Qt.KeyboardModifier.ControlModifier)
    assert len(dialog.grid.rows()) == 2 + len(ROWS)
    assert dialog.lift is not None and len(dialog._smooth.getData()[0]) > 100  # noqa: SLF001
    assert max(dialog.lift.profile.contact_lift_mm) == pytest.approx(TOP_MM, abs=0.005)
    QTest.mouseClick(dialog.place_button, Qt.MouseButton.LeftButton)
    after = window.model.state
    assert after.magneto.cam.profile.kind == "measured" and after.magneto.name == before.magneto.name
    assert after.engaged.installation.engine == before.engaged.installation.engine
    assert after.engaged.installation.coupling == before.engaged.installation.coupling
    window.model.undo()
    assert window.model.state.magneto == before.magneto


def test_nothing_typed_is_lost_and_every_bad_cell_is_named(open_window):
    window = open_window("seven-radial")
    dialog = window.import_lift()
    QGuiApplication.clipboard().setText("0;1\n1;two\n;3\n4;5 ells\n")
    dialog.paste(QGuiApplication.clipboard().text())
    assert dialog.bad.count() == 3 and not dialog.place_button.isEnabled()
    assert dialog.answer.text().endswith(".")
    dialog.bad.itemActivated.emit(dialog.bad.item(2))
    assert (dialog.grid.currentIndex().row(), dialog.grid.currentIndex().column()) == (3, 1)
    rows = dialog.grid.rows()
    QTest.keyClick(dialog.grid, Qt.Key.Key_Delete)
    assert dialog.grid.rows()[3] == ("4", "")
    QTest.keyClick(dialog.grid, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    assert dialog.grid.rows() == rows
    dialog.reject()
    again = window.import_lift()
    assert again.grid.rows() == rows
    again.grid.fill(())
    asked = says("type an angle and its reading in each row, or paste both columns of a table")
    assert again.answer.text() == f"{asked[0].upper()}{asked[1:]}."
    again.reject()
