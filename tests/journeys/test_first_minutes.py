"""The guide's first ten minutes, played by keys as they are written."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from magview.bench.state import readings
from magview.guide.pages import pages
from magview.spec.library import DEFAULT_MAGNETO, shipped_installation_of

SAID = pages()["first-minutes"].source


def test_each_step_does_what_the_page_says(open_window, qtbot):
    window = open_window(shipped_installation_of(DEFAULT_MAGNETO))  # as the program opens
    state, breaker = (lambda: window.model.state), window.breaker
    breaker.setFocus()
    assert "press **1**: the rotor is in hand. Turn it with **Up** and **Down**, a degree a step" in SAID
    QTest.keyClick(breaker, Qt.Key.Key_1)
    was = state().rotor_deg
    QTest.keyClick(breaker, Qt.Key.Key_Up)
    assert state().rotor_deg == pytest.approx(was + 1.0)
    QTest.keyClick(breaker, Qt.Key.Key_Up, Qt.KeyboardModifier.ShiftModifier)
    assert state().rotor_deg == pytest.approx(was + 1.1)
    assert "In the menu **Bench** clear **Magneto on the engine**, click into the picture again" in SAID
    assert window.menus.mount_action.text().replace("&", "") == "Magneto on the engine"
    window.menus.mount_action.trigger()
    QTest.mouseClick(breaker.viewport(), Qt.MouseButton.LeftButton, pos=breaker.viewport().rect().center())
    assert "press **Space**: you let go. The magnet pulls the rotor to neutral" in SAID
    QTest.keyClick(breaker, Qt.Key.Key_Space)
    assert not state().held
    qtbot.waitUntil(lambda: abs(state().rotor_deg % 90.0) < 0.5, timeout=20_000)
    QTest.keyClick(breaker, Qt.Key.Key_Space)
    assert state().held
    assert "then tick **Magneto on the engine** again" in SAID
    window.menus.mount_action.trigger()
    assert state().engaged.mounted

    assert "press **Page Up** once. The opening comes two and a half degrees late; the gap stays as it was." in SAID
    before = readings(state())
    QTest.keyClick(breaker, Qt.Key.Key_2)
    QTest.keyClick(breaker, Qt.Key.Key_PageUp)
    late = readings(state())
    assert late.e_gap_error_deg[0] == pytest.approx(2.5) and late.max_gap_mm[0] == pytest.approx(before.max_gap_mm[0])
    assert "press **Page Down** once: ten degrees, contacts wider. The gap is larger, and they open earlier." in SAID
    QTest.keyClick(breaker, Qt.Key.Key_3)
    QTest.keyClick(breaker, Qt.Key.Key_PageDown)
    wider = readings(state())
    assert state().screw_deg == pytest.approx(-10.0)
    assert wider.max_gap_mm[0] > late.max_gap_mm[0] and wider.opens_deg[0] < late.opens_deg[0]

    assert "press **Set it so**. The readings are right once the lock screw is tight" in SAID
    QTest.mouseClick(window.panel.do_it, Qt.MouseButton.LeftButton)
    assert state().screw_deg == pytest.approx(3.0, abs=0.01)  # as far as tightening will carry it along
    QTest.mouseClick(window.panel.lock, Qt.MouseButton.LeftButton)
    right = readings(state())
    assert right.within_limits and right.e_gap_error_deg[0] == pytest.approx(0.0, abs=0.01)
    assert right.max_gap_mm[0] == pytest.approx(0.33, abs=1e-4)
