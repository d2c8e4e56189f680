"""The coupling and the crank under the hand."""

from __future__ import annotations

import math

import pytest
from PySide6.QtCore import QPointF, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QPushButton

from magview.bench.actions import PlaceMagneto, TurnCrank, TurnRotor
from magview.bench.state import crank_deg, firing_btdc_deg
from magview.drawing.drive_end import DRIVE_MM, drive_pose
from magview.spec.library import find_magneto
from magview.ui.kit.signs import Sign
from tests.magnetos import on_the_published_coupling


def at(view, radius: float, bearing: float) -> QPointF:
    b = math.radians(bearing)
    return view.pixel(radius * math.sin(b), radius * math.cos(b))


def drag_round(view, radius: float, start: float, turn: float) -> None:
    port = view.viewport()
    QTest.mousePress(port, Qt.MouseButton.LeftButton, pos=at(view, radius, start).toPoint())
    for i in range(1, 25):
        QTest.mouseMove(port, at(view, radius, start + turn * i / 24).toPoint())
    QTest.mouseRelease(port, Qt.MouseButton.LeftButton, pos=at(view, radius, start + turn).toPoint())


@pytest.mark.parametrize("name", ["seven-radial-left", "nine-radial-left"])
@pytest.mark.parametrize("teeth", [1, -2])
def test_dragging_disc_and_flange_moves_whole_teeth(open_window, name, teeth):
    window = open_window(name)
    window.tabs.setCurrentIndex(1)
    view, model = window.drive, window.model
    coupling = model.state.engaged.installation.coupling
    sense = 1 if model.state.magneto.rotation == "clockwise" else -1
    # The disc between its two rings of teeth, then the hub, each turned by a little more than whole teeth.
    drag_round(view, 27.0, 100.0, sense * teeth * 360 / coupling.drive_teeth * 1.1)
    assert model.state.engaged.mounting.disc_teeth == teeth
    drag_round(view, 12.0, 200.0, -sense * teeth * 360 / coupling.magneto_teeth * 1.1)
    assert model.state.engaged.mounting.magneto_teeth == -teeth
    # What the picture shows: the marks stand apart by those teeth.
    pose = drive_pose(model.state, model.state.engaged)
    assert sense * (pose.disc - pose.flange) == pytest.approx(teeth * 360 / coupling.drive_teeth)


def test_dragging_the_drive_flange_turns_the_crank(open_window):
    window = open_window(on_the_published_coupling())
    window.tabs.setCurrentIndex(1)
    before = crank_deg(window.model.state)
    drag_round(window.drive, (DRIVE_MM + 36.0) / 2, 90.0, -21.0)  # anticlockwise: with this one's rotation
    assert crank_deg(window.model.state) - before == pytest.approx(21.0 / 0.875, abs=0.8)


def test_dragging_the_timing_disc_turns_the_crank_and_the_rotor(open_window):
    window = open_window("four-opposed-left", size=(1600, 900))
    window.tabs.setCurrentIndex(1)
    view, model = window.crank, window.model
    before, rotor = crank_deg(model.state), model.state.rotor_deg
    sense = 1 if model.state.engaged.installation.engine.rotation == "clockwise" else -1
    disc = model.state.engaged.installation.engine.stroke_mm / 2 * 1.2
    drag_round(view, disc, 200.0, sense * 30.0)
    assert crank_deg(model.state) - before == pytest.approx(30.0, abs=2.0)
    assert model.state.rotor_deg - rotor == pytest.approx(crank_deg(model.state) - before)


def test_arrow_keys_move_teeth_and_page_keys_the_crank(open_window):
    window = open_window(on_the_published_coupling())
    view, model = window.drive, window.model
    view.setFocus()
    QTest.keyClick(view, Qt.Key.Key_Right)
    QTest.keyClick(view, Qt.Key.Key_Down)
    mounting = model.state.engaged.mounting
    assert (mounting.magneto_teeth, mounting.disc_teeth) == (1, -1)
    before = crank_deg(model.state)
    QTest.keyClick(view, Qt.Key.Key_PageUp)
    assert crank_deg(model.state) == pytest.approx(before + 1.0)
    window.crank.setFocus()
    QTest.keyClick(window.crank, Qt.Key.Key_Left, Qt.KeyboardModifier.ShiftModifier)
    assert crank_deg(model.state) == pytest.approx(before + 0.9)


def test_what_the_pictures_say_aloud(open_window):
    window = open_window(on_the_published_coupling())
    window.model.send(TurnCrank(-25.0))
    assert "compression stroke, 25.0° before top dead centre" in window.crank.accessibleDescription()
    assert "19 teeth at the magneto, 20 at the drive" in window.drive.accessibleDescription()
    assert "drive end" in window.drive.accessibleDescription()


@pytest.mark.parametrize("size", [(1280, 720), (1600, 900), (853, 480)])
def test_play_not_taken_up_is_warned_of_on_the_picture_itself(open_window, size):
    """Coming back to the E-gap from beyond it leaves the seven-cylinder coupling's play of 0.4° untaken."""
    window = open_window(on_the_published_coupling(), size)
    window.model.send(TurnRotor(27.15))
    assert "rotation" not in window.crank.shown_foot()
    next(b for b in window.panel.findChildren(QPushButton) if b.text() == "To the E-gap").click()
    QApplication.processEvents()
    view = window.crank
    shown = view.shown_foot()
    assert shown.lower().partition(":")[0].partition(",")[0].endswith("against rotation"), "the warning stands first"
    image = view.grab().toImage()
    foot = range(int(image.height() - view.foot_height(shown)), image.height() - 3)
    inked = [y for y in foot if any(image.pixelColor(x, y).lightness() < 90 for x in range(8, view.width() - 8))]
    assert len(inked) > 6, "and it is written there"
    assert "play of 0.40° of rotor not taken up" in view.viewport().toolTip()
    assert "piston" in view.viewport().toolTip()


@pytest.mark.parametrize("size", [(1280, 720), (853, 480)])
def test_the_caption_of_the_crank_follows_a_change_of_magneto_and_undo(open_window, size):
    """Which stands where with its crank is worked out here from the slider-crank, not asked of the picture."""
    window = open_window("seven-radial-left", size)
    view, model = window.crank, window.model

    def says_where_it_stands() -> None:
        QApplication.processEvents()
        view.grab()
        engine, crank = model.state.engaged.installation.engine, crank_deg(model.state)
        before = 360.0 - (crank + 360.0) % 720.0
        where = f"{abs(before):.1f}° {'BTDC' if before >= 0 else 'ATDC'}"
        r, rod, a = engine.stroke_mm / 2, engine.rod_mm, math.radians(crank)
        drop = r + rod - r * math.cos(a) - math.sqrt(rod**2 - (r * math.sin(a)) ** 2)
        whole = view.viewport().toolTip()
        assert where in whole
        assert where in view.shown_foot() or view.shown_foot().endswith(" …"), "cut short where there is no room"
        assert engine.articulation is None or engine.articulation.master_cylinder == 1, "its rod is on the pin"
        assert f"piston {drop:.3f} mm down" in whole
        assert f"{abs(before):.1f}°" in view.accessibleDescription()

    says_where_it_stands()
    for name in ("nine-radial", "four-opposed", "seven-radial"):
        window.place(name)
        model.send(TurnRotor(model.state.rotor_deg + 17.3))
        window.place("traced-six")
        says_where_it_stands()
        window.place(name)
        says_where_it_stands()
    for _ in range(9):
        model.undo()
        says_where_it_stands()
    for _ in range(9):
        model.redo()
        says_where_it_stands()


def test_without_an_engine_the_bench_says_so(open_window):
    window = open_window(on_the_published_coupling())
    window.tabs.setCurrentIndex(1)
    window.model.send(PlaceMagneto(find_magneto("four-opposed")))
    assert window.timing.none.isVisible()
    assert not window.timing.plan.isVisible()
    QTest.keyClick(window.drive, Qt.Key.Key_Right)
    drag_round(window.drive, 27.0, 100.0, 40.0)
    assert window.model.state.engaged is None
    window.grab()


def test_readings_and_picture_follow_every_control(open_window):
    window = open_window(on_the_published_coupling())
    window.tabs.setCurrentIndex(1)
    panel, model = window.timing, window.model
    panel.lamp.reads["left"].setValue(22.0)
    assert firing_btdc_deg(model.state, "left") == pytest.approx(22.0)
    assert "3.00° of crank late" in panel.lamp.error.text()
    QTest.mouseClick(panel.teeth.step_buttons["magneto", 1], Qt.MouseButton.LeftButton)
    QTest.mouseClick(panel.teeth.step_buttons["disc", -1], Qt.MouseButton.LeftButton)
    assert panel.lamp.now["left"].shown.words == "23.08°"
    panel.lamp.wanted["left"].setValue(23.0)
    assert panel.lamp.now["left"].shown.sign is Sign.IN
    QTest.mouseClick(panel.lamp.radio["right"], Qt.MouseButton.LeftButton)
    assert model.state.engaged.side == "right"
    panel.lamp.crank.setValue(-40.0)
    assert crank_deg(model.state) == pytest.approx(-40.0)
    panel.stop.stops[0].setValue(350.0)
    panel.stop.stops[1].setValue(14.0)
    assert "at 2.00° on the disc" in panel.stop.tdc.text()
    panel.stop.stops[1].setValue(170.0)
    assert "180° apart" in panel.stop.tdc.text()


def test_nothing_within_tolerance_is_said_with_the_nearest_two(open_window):
    from magview.bench.actions import PlaceInstallation

    window = open_window(on_the_published_coupling())
    window.tabs.setCurrentIndex(1)
    installation = window.model.state.engaged.installation
    coarse = installation.model_copy(
        update={"coupling": installation.coupling.model_copy(update={"magneto_teeth": 10, "drive_teeth": 10})}
    )
    window.model.send(PlaceInstallation(coarse))
    window.timing.lamp.reads["left"].setValue(22.0)
    text = window.timing.plan.verdict.text()
    assert "Nothing reaches it within tolerance" in text
    # Ten teeth on both faces: 36° of rotor a tooth, so the nearest is to leave it, the next a tooth away.
    assert "22.00° or" in text
