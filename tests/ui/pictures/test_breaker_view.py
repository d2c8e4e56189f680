"""The picture, driven with real mouse and key events, says what the numbers say."""

from __future__ import annotations

import math

import numpy as np
import pytest
from PySide6.QtCore import QEvent, QPoint, QPointF, Qt
from PySide6.QtTest import QTest

from magview.bench.actions import TurnBackplate, TurnRotor, TurnScrew
from magview.bench.state import readings
from magview.drawing.contacts_closeup import FACTOR
from magview.physics.cam.setting import internal_timing
from magview.spec.library import shipped_names
from tests.hands import on_picture, send_mouse


def drag(view, start: QPointF, end: QPointF, steps: int = 12) -> None:
    """Press, move in steps, release: what a hand does."""
    send_mouse(view, QEvent.Type.MouseButtonPress, start)
    for i in range(1, steps + 1):
        send_mouse(view, QEvent.Type.MouseMove, start + (end - start) * (i / steps))
    send_mouse(view, QEvent.Type.MouseButtonRelease, end)


def test_dragging_the_rotor_turns_it_by_the_pointers_angle(open_window):
    window = open_window("seven-radial")
    view, radius = window.breaker, window.breaker.drawing.rim_mm * 1.065
    before = window.model.state.rotor_deg
    # This magneto turns clockwise seen from the breaker end; its first pole stands at bearing 11°.
    drag(view, on_picture(view, radius, 11.0), on_picture(view, radius, 31.0))
    assert window.model.state.rotor_deg - before == pytest.approx(20.0, abs=0.01)


def test_dragging_against_the_pictures_mirror(open_window):
    """The nine-cylinder magneto turns anticlockwise seen from here: the same drag turns it back."""
    window = open_window("nine-radial")
    view, radius = window.breaker, window.breaker.drawing.rim_mm * 1.065
    before = window.model.state.rotor_deg
    drag(view, on_picture(view, radius, -8.0), on_picture(view, radius, 12.0))
    assert window.model.state.rotor_deg - before == pytest.approx(-20.0, abs=0.01)


def test_dragging_the_cam_keeps_the_drag_point_under_the_pointer(open_window):
    """On the distributor shaft the cam turns 4/9 as fast as the rotor: 10° of cam are 22.5° of rotor."""
    window = open_window("nine-radial")
    view, before = window.breaker, window.model.state.rotor_deg
    drag(view, on_picture(view, 15.0, 180.0), on_picture(view, 15.0, 200.0))
    assert window.model.state.rotor_deg - before == pytest.approx(20.0 * 9 / 4, abs=0.3)


@pytest.mark.parametrize("name", shipped_names("magnetos"))
def test_dragging_the_plate_stops_at_its_slot_and_comes_back_with_the_pointer(open_window, name):
    window = open_window(name)
    view, magneto = window.breaker, window.model.state.magneto
    radius = 0.6 * magneto.marks.radius_mm
    bearing = magneto.breaker.pivot_bearing_deg or -60.0
    sense = 1 if magneto.rotation == "anticlockwise" else -1
    if magneto.cam.turns_against_rotor:
        sense = -sense  # the plate is turned with the cam
    start = bearing + sense * 200.0  # bare plate
    port = view.viewport()
    QTest.mousePress(port, Qt.MouseButton.LeftButton, pos=on_picture(view, radius, start).toPoint())
    for d in range(0, 41, 2):
        QTest.mouseMove(port, on_picture(view, radius, start + sense * d).toPoint())
    assert window.model.state.backplate_deg == magneto.backplate.range_deg[1]
    for d in range(40, -1, -2):
        QTest.mouseMove(port, on_picture(view, radius, start + sense * d).toPoint())
    QTest.mouseRelease(port, Qt.MouseButton.LeftButton)
    assert window.model.state.backplate_deg == pytest.approx(magneto.designed_setting.backplate_deg, abs=0.5)


@pytest.mark.parametrize("name", ["seven-radial", "nine-radial", "four-opposed"])
def test_turning_the_screws_head_in_its_closing_direction_closes_the_contacts(open_window, name):
    window = open_window(name)
    view, model = window.breaker, window.model
    centre = view.mapFromScene(view.scene_of_parts.to_scene("screw", view.drawing.origins["screw"]))
    arm = 40.0  # from here on the part follows the pointer fully
    start = QPointF(centre) + QPointF(0, -arm)
    clockwise = QPointF(centre) + QPointF(arm, 0)
    port = view.viewport()
    QTest.mousePress(port, Qt.MouseButton.LeftButton, pos=centre)
    QTest.mouseMove(port, start.toPoint())
    for i in range(1, 7):
        QTest.mouseMove(port, (start + (clockwise - start) * (i / 6)).toPoint())
    QTest.mouseRelease(port, Qt.MouseButton.LeftButton, pos=clockwise.toPoint())
    turned = model.state.screw_deg
    assert abs(turned) > 20.0
    assert (turned > 0) == model.state.magneto.contact_screw.positive_is_clockwise


def test_the_gap_drawn_is_the_gap_computed(open_window):
    """Distance between the drawn faces, in pixels over the view's own scale, against the physics."""
    for name in shipped_names("magnetos"):
        window = open_window(name)
        timing = internal_timing(window.model.state.magneto)
        window.model.send(TurnScrew(-5.0))
        for rotor in np.linspace(0.0, 60.0, 13):
            window.model.send(TurnRotor(float(rotor)))
            fixed, moving = window.contact.faces()
            drawn = math.hypot(fixed.x() - moving.x(), fixed.y() - moving.y()) / window.contact.pixels_per_mm()
            state = window.model.state
            computed = float(timing.gap_mm(rotor, state.backplate_deg, state.screw_deg))
            # The gap is an arc round the pivot, so many times as long; the drawn distance its chord: 2 K sin(gap/2K).
            arm = state.magneto.breaker.contact_arm_mm
            assert drawn == pytest.approx(2 * arm * math.sin(FACTOR * computed / (2 * arm)), abs=1e-9)


def test_wheel_and_arrow_keys_turn_the_part_in_hand(open_window):
    window = open_window("seven-radial")
    view, model = window.breaker, window.model
    view.setFocus()
    QTest.keyClick(view, Qt.Key.Key_Up)
    assert model.state.rotor_deg == pytest.approx(12.0)
    QTest.keyClick(view, Qt.Key.Key_Down, Qt.KeyboardModifier.ShiftModifier)
    assert model.state.rotor_deg == pytest.approx(11.9)
    QTest.keyClick(view, Qt.Key.Key_2)
    QTest.keyClick(view, Qt.Key.Key_PageUp)
    assert model.state.backplate_deg == pytest.approx(2.5)
    QTest.keyClick(view, Qt.Key.Key_3)
    QTest.wheelEvent(window.windowHandle(), QPointF(view.mapTo(window, QPoint(100, 100))), QPoint(0, -240))
    assert model.state.screw_deg == pytest.approx(-2.0)
    QTest.keyClick(view, Qt.Key.Key_Left)
    assert model.state.screw_deg == pytest.approx(-3.0)


def test_the_pictures_description_says_the_state(open_window):
    window = open_window("four-opposed")
    window.model.send(TurnBackplate(-2.0))
    text = window.breaker.accessibleDescription()
    assert "breaker end" in text
    assert "-2.00°" in text
    window.menus.units.setCurrentIndex(1)
    window.model.send(TurnRotor(40.0))
    assert " in." in window.breaker.accessibleDescription()


def test_readings_follow_a_drag(open_window):
    window = open_window("seven-radial")
    window.model.send(TurnBackplate(2.0))
    expected = readings(window.model.state)
    assert window.panel.lobes.words(0, 0) == f"{expected.opens_deg[0]:.2f}°"
    assert window.panel.lobes.words(3, 1) == f"{expected.e_gap_error_deg[3]:+.2f}°"
