"""A mechanic's job through the real window: the lamp says 22°, 25° is wanted."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest

from magview.bench.state import firing_btdc_deg
from magview.physics.engine.coupling import plan
from magview.ui.kit.signs import Sign
from tests.magnetos import on_the_published_coupling


def test_read_22_want_25_take_the_first_move_and_step_it(open_window, qtbot):
    window = open_window(on_the_published_coupling())
    window.tabs.setCurrentIndex(1)
    panel = window.timing
    panel.lamp.reads["left"].setFocus()
    panel.lamp.reads["left"].selectAll()
    QTest.keyClicks(panel.lamp.reads["left"].lineEdit(), "22")
    QTest.keyClick(panel.lamp.reads["left"].lineEdit(), Qt.Key.Key_Return)
    assert panel.lamp.now["left"].shown.sign is Sign.OUT

    # Point at the first move: its marks are shown dotted, nothing has moved yet.
    first = panel.plan.table.visualRect(panel.plan.table.model().index(0, 0)).center()
    window.findChild(type(window.tabs)).currentWidget().ensureWidgetVisible(panel.plan.table)
    QTest.mouseMove(panel.plan.table.viewport(), first + QPoint(0, 40))
    QTest.mouseMove(panel.plan.table.viewport(), first)
    assert window.model.state.engaged.mounting.magneto_teeth == 0

    # Choose it and step through it, one tooth a press.
    QTest.mouseClick(panel.plan.table.viewport(), Qt.MouseButton.LeftButton, pos=first)
    expected = plan(19, 20, 0.875, 22.0, 25.0, most=1)[0]
    presses = 0
    while panel.plan.next.isEnabled():
        assert "Check the marks" in panel.plan.words.text()
        before = window.model.state.engaged.mounting
        QTest.mouseClick(panel.plan.next, Qt.MouseButton.LeftButton)
        after = window.model.state.engaged.mounting
        moved = abs(after.magneto_teeth - before.magneto_teeth) + abs(after.disc_teeth - before.disc_teeth)
        assert moved == 1
        presses += 1
        assert presses <= 20
    assert presses == abs(expected.magneto_teeth) + abs(expected.disc_teeth)

    told = panel.lamp.now["left"].accessibleName()
    assert told.startswith(f"left magneto fires now at {expected.result_btdc_deg:.2f}°, ") and "limits 24" in told
    assert panel.lamp.now["left"].shown.sign is Sign.IN
    assert firing_btdc_deg(window.model.state, "left") == pytest.approx(expected.result_btdc_deg, abs=1e-9)
    assert "read the lamp again" in panel.plan.words.text()

    # The lamp, read again, is the new as found: nothing is left to do, and the paint stays where it is.
    marks = window.model.state.engaged.mounting.marks_apart
    panel.lamp.reads["left"].setFocus()
    panel.lamp.reads["left"].selectAll()
    QTest.keyClicks(panel.lamp.reads["left"].lineEdit(), "25.2")
    QTest.keyClick(panel.lamp.reads["left"].lineEdit(), Qt.Key.Key_Return)
    assert not panel.plan.next.isEnabled()
    assert "choose one to step through it" in panel.plan.words.text()
    assert window.model.state.engaged.mounting.marks_apart == marks
