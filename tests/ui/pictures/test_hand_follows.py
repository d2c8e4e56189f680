"""A drag of so many pixels at a radius turns what is held by the angle that the hand went round the axis."""

from __future__ import annotations

import math

import pytest
from PySide6.QtCore import QEvent, QPointF
from PySide6.QtWidgets import QApplication

from magview.bench import actions as do
from magview.bench.state import crank_deg
from tests.hands import send_mouse


@pytest.fixture
def window(open_window):
    window = open_window("seven-radial-left", (1280, 660))
    for _ in range(4):
        QApplication.processEvents()
    window.breaker.snaps = False
    return window


def across(view, centre: QPointF, radius: float, bearing: float, pixels: int) -> None:
    """Drag at a right angle to the radius [px], clockwise, a pixel at a time."""
    b = math.radians(bearing)
    start = centre + QPointF(radius * math.sin(b), -radius * math.cos(b))
    along = QPointF(math.cos(b), math.sin(b))
    send_mouse(view, QEvent.Type.MouseButtonPress, start)
    for n in range(1, pixels + 1):
        send_mouse(view, QEvent.Type.MouseMove, start + along * n)
    send_mouse(view, QEvent.Type.MouseButtonRelease, start + along * pixels)


def test_the_backplate_follows_the_hand_at_every_radius(window):
    view, model = window.breaker, window.model
    half = max(h.outline[:, 0].max() for h in view.picture.hands if h.part == "backplate")
    out = half * view.viewportTransform().m22()
    for radius, bearing, pixels in (
        (45.0, 0.0, 4),
        (out - 12.0, 90.0, 9),
        (0.6 * out, 215.0, 1),
        (out - 5.0, 300.0, 5),
    ):
        model.send(do.TurnBackplate(0.0))
        across(view, view.pixel(0.0, 0.0), radius, bearing, pixels)
        assert abs(model.state.backplate_deg) == pytest.approx(math.degrees(math.atan(pixels / radius)), abs=0.02)


def test_the_rotor_follows_the_hand_by_its_ring_and_its_cam(window):
    view, model = window.breaker, window.model
    for radius, bearing in ((1.065 * view.drawing.rim_mm * view.viewportTransform().m22(), 60.0), (12.0, 30.0)):
        model.send(do.TurnRotor(5.0))
        across(view, view.pixel(0.0, 0.0), radius, bearing, 3)
        assert abs(model.state.rotor_deg - 5.0) == pytest.approx(math.degrees(math.atan(3 / radius)), abs=0.02)


def test_the_contact_screw_follows_the_hand_about_its_own_axis(window):
    view, model = window.breaker, window.model
    (screw,) = (h for h in view.picture.hands if h.part == "contact screw")
    for radius, pixels in ((6.0, 2), (10.0, 5)):
        model.send(do.TurnScrew(0.0))
        across(view, view.pixel(*screw.centre), radius, 90.0, pixels)
        assert abs(model.state.screw_deg) == pytest.approx(math.degrees(math.atan(pixels / radius)), abs=0.05)


def test_through_the_axis_nothing_jumps(window):
    """A hand drawn straight across the cam's middle comes out on the other side without having turned anything."""
    view, model = window.breaker, window.model
    model.send(do.TurnRotor(5.0))
    middle = view.pixel(0.0, 0.0)
    send_mouse(view, QEvent.Type.MouseButtonPress, middle - QPointF(15.0, 0.0))
    for x in range(-14, 16):
        send_mouse(view, QEvent.Type.MouseMove, middle + QPointF(float(x), 0.0))
    send_mouse(view, QEvent.Type.MouseButtonRelease, middle + QPointF(15.0, 0.0))
    assert model.state.rotor_deg == pytest.approx(5.0, abs=0.01)


def test_a_part_at_its_stop_says_so_once_and_follows_back(window):
    view, model, said = window.breaker, window.model, []
    model.refused.connect(said.append)
    low, high = model.state.magneto.backplate.range_deg
    middle, radius = view.pixel(0.0, 0.0), 90.0

    def at(bearing: float) -> QPointF:
        b = math.radians(bearing)
        return middle + QPointF(radius * math.sin(b), -radius * math.cos(b))

    model.send(do.TurnBackplate(0.0))
    send_mouse(view, QEvent.Type.MouseButtonPress, at(0.0))
    for bearing in range(1, 31):
        send_mouse(view, QEvent.Type.MouseMove, at(bearing))
    assert model.state.backplate_deg in (low, high)
    assert said == ["the backplate is at its stop: bring the hand back to turn it back"]
    for bearing in range(29, 1, -1):
        send_mouse(view, QEvent.Type.MouseMove, at(bearing))
    assert abs(model.state.backplate_deg) == pytest.approx(2.0, abs=0.02)
    send_mouse(view, QEvent.Type.MouseButtonRelease, at(2.0))


def test_crank_and_drive_flange_follow_the_hand(window):
    view, model = window.crank, window.model
    view.resize(420, 260)
    view.fit()
    disc = view._drawing.disc_mm * view.pixels_per_mm()  # noqa: SLF001
    before = crank_deg(model.state)
    across(view, view.pixel(0.0, 0.0), 0.8 * disc, 270.0, 4)
    assert abs(crank_deg(model.state) - before) == pytest.approx(math.degrees(math.atan(4 / (0.8 * disc))), abs=0.02)

    drive, ratio = window.drive, model.state.engaged.ratio
    radius = next(
        r for r in range(200, 20, -2)
        if (s := drive.scene_of_parts.shape_at(drive._scene_point(drive.pixel(0.0, 0.0) + QPointF(0.0, -r))))  # noqa: SLF001
        and s.group == "flange"
    ) - 4  # fmt: skip
    before = crank_deg(model.state)
    across(drive, drive.pixel(0.0, 0.0), radius, 0.0, 5)
    turned = abs(crank_deg(model.state) - before) * ratio
    assert turned == pytest.approx(math.degrees(math.atan(5 / radius)), abs=0.02)


def test_the_disc_goes_on_by_a_tooth_when_the_hand_has_gone_half_of_one(window):
    drive, model = window.drive, window.model
    pitch = 360.0 / model.state.engaged.installation.disc.drive_teeth
    radius = next(
        r for r in range(20, 200, 2)
        if (s := drive.scene_of_parts.shape_at(drive._scene_point(drive.pixel(0.0, 0.0) + QPointF(0.0, -r))))  # noqa: SLF001
        and s.group == "disc"
    ) + 2  # fmt: skip
    half = math.tan(math.radians(pitch / 2)) * radius
    before = model.state.engaged.mounting.disc_teeth
    across(drive, drive.pixel(0.0, 0.0), radius, 0.0, math.floor(half - 0.5))
    assert model.state.engaged.mounting.disc_teeth == before
    across(drive, drive.pixel(0.0, 0.0), radius, 0.0, math.ceil(half + 0.5))
    assert abs(model.state.engaged.mounting.disc_teeth - before) == 1
