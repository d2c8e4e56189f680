"""A whole internal timing through the real window: once by mouse alone, once by keyboard alone.

The magneto comes with the plate off and the contacts set late; its lock screw creeps when it is tightened,
so that what was set must be checked again (common practice).
"""

from __future__ import annotations

import math

import pytest
from PySide6.QtCore import QEvent, QPoint, QPointF, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from magview.bench.actions import SetBoth, TurnRotor
from tests.hands import send_mouse
from tests.magnetos import in_thousandths


def turn_by_mouse(view, centre: QPointF, grip: float, start: float, turn: float) -> None:
    """Grip near the centre, draw the pointer out for a finer hand, go round, let go."""

    def place(radius: float, bearing: float) -> QPointF:
        b = math.radians(bearing)
        return centre + QPointF(radius * math.sin(b), -radius * math.cos(b))

    send_mouse(view, QEvent.Type.MouseButtonPress, place(grip, start))
    for radius in (grip, 2 * grip, 150.0):
        send_mouse(view, QEvent.Type.MouseMove, place(radius, start))
    for i in range(1, 11):
        send_mouse(view, QEvent.Type.MouseMove, place(150.0, start + turn * i / 10))
    send_mouse(view, QEvent.Type.MouseButtonRelease, place(150.0, start + turn))


def click(widget) -> None:
    QTest.mouseClick(widget, Qt.MouseButton.LeftButton, pos=QPoint(8, widget.height() // 2))


@pytest.fixture
def wrongly_set(open_window):
    window = open_window(in_thousandths())
    window.model.send(SetBoth(-3.0, 9.0))
    window.model.send(TurnRotor(-20.0))
    assert window.panel.overall.text().startswith("✗")
    return window


def test_by_mouse_alone(wrongly_set):
    window = wrongly_set
    view, panel = window.breaker, window.panel
    middle = view.pixel(0.0, 0.0)

    # Rotor to the E-gap: near it, it catches. (This magneto turns clockwise seen from the breaker end.)
    rotor = view.drawing.rim_mm * 1.065 * view.transform().m22()
    turn_by_mouse(view, middle, rotor, -20.0, 30.7)
    assert window.model.state.rotor_deg == 11.0

    # The straightedge is short of the mark and the gap too small: plate with rotation, screw wider.
    turn_by_mouse(view, middle, 20.0 * view.transform().m22(), 150.0, 3.0)
    assert window.model.state.backplate_deg == pytest.approx(0.0, abs=0.1)
    screw = view.viewportTransform().map(view.scene_of_parts.to_scene("screw", view.drawing.origins["screw"]))
    turn_by_mouse(view, screw, 3.0, 30.0, -9.0)  # anticlockwise: contacts wider
    assert window.model.state.screw_deg == pytest.approx(0.0, abs=0.5)
    assert panel.overall.text().startswith("✓")

    # Tighten, and look again: the lock screw has crept 3°, and the gap is too large now.
    click(panel.clamps)
    click(panel.lock)
    assert panel.overall.text().startswith("✗")
    click(panel.lock)
    turn_by_mouse(view, screw, 3.0, 30.0, 6.0)  # allow for the creep
    click(panel.lock)
    assert window.model.state.lock_tight
    assert window.model.state.clamps_tight
    assert panel.overall.text().startswith("✓")


def tab_to(window, widget) -> None:
    for _ in range(60):
        if widget.hasFocus():
            return
        QTest.keyClick(QApplication.focusWidget() or window, Qt.Key.Key_Tab)
    raise AssertionError(f"Tab does not lead to {widget.accessibleName() or widget}")


def press(key: Qt.Key, times: int = 1, modifiers=Qt.KeyboardModifier.NoModifier) -> None:
    for _ in range(times):
        QTest.keyClick(QApplication.focusWidget(), key, modifiers)


def test_by_keyboard_alone(wrongly_set):
    window = wrongly_set
    view, panel = window.breaker, window.panel
    tab_to(window, view)
    press(Qt.Key.Key_PageUp, 3)
    press(Qt.Key.Key_Up)
    assert window.model.state.rotor_deg == pytest.approx(11.0)
    press(Qt.Key.Key_2)
    press(Qt.Key.Key_Up, 12)  # a quarter of a degree each
    press(Qt.Key.Key_3)
    press(Qt.Key.Key_Down, 9)
    assert window.model.state.backplate_deg == pytest.approx(0.0)
    assert window.model.state.screw_deg == pytest.approx(0.0)
    assert panel.overall.text().startswith("✓")

    tab_to(window, panel.clamps)
    press(Qt.Key.Key_Space)
    tab_to(window, panel.lock)
    press(Qt.Key.Key_Space)
    assert panel.overall.text().startswith("✗"), "the lock screw has crept"
    press(Qt.Key.Key_Space)
    tab_to(window, view)
    press(Qt.Key.Key_Up, 6)
    tab_to(window, panel.lock)
    press(Qt.Key.Key_Space)
    assert window.model.state.lock_tight
    assert window.model.state.clamps_tight
    assert panel.overall.text().startswith("✓")
