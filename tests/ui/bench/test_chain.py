"""The Engine page after an act: what the lamp should read, what stops the plan, what was moved, the four verdicts."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from magview.bench.actions import MoveTeeth, ReadLamp, TurnBackplate, TurnScrew, ViewSide
from magview.bench.conditions import Condition
from magview.bench.state import firing_btdc_deg
from magview.ui.kit.signs import Sign
from tests.wording import says


@pytest.fixture
def window(open_window):
    found = open_window("seven-radial-left")
    found.tabs.setCurrentIndex(1)
    return found


def wanted(window) -> float:
    return window.model.state.engaged.left.wanted_btdc_deg


def type_in(spin, text: str) -> None:
    spin.setFocus()
    spin.selectAll()
    QTest.keyClicks(spin.lineEdit(), text)
    QTest.keyClick(spin.lineEdit(), Qt.Key.Key_Return)


def test_contacts_set_anew_grey_the_moves_until_the_lamp_was_read(window):
    panel, model = window.timing, window.model
    model.send(ReadLamp("left", wanted(window) - 4.0))
    assert (
        panel.plan.table.isEnabled() and panel.plan.print.isEnabled() and not panel.plan.expect.reads_so.isEnabled()
    )
    model.send(TurnBackplate(0.7))
    # Turned with rotation 0.7°, on a rotor at 7/8 of the crank: 0.8° less (plain gearing).
    should = wanted(window) - 4.8
    assert f"It should now read {should:.2f}°" in panel.lamp.warning.text()
    assert f"{wanted(window) - 4.0:.2f}° is out of date" in panel.lamp.warning.text()
    assert not panel.plan.table.isEnabled() and not panel.plan.print.isEnabled()
    panel.plan.table.selectRow(0)
    assert panel.plan.chosen is None and not panel.plan.next.isEnabled()
    QTest.mouseClick(panel.plan.expect.reads_so, Qt.MouseButton.LeftButton)
    assert model.state.engaged.left.reads_btdc_deg == pytest.approx(should)
    assert panel.plan.table.isEnabled() and panel.plan.print.isEnabled()
    assert "⚠ Left" not in panel.lamp.warning.text()  # the right one still is to be read


def test_after_a_move_the_page_says_what_to_read_and_doubts_another(window):
    panel, model = window.timing, window.model
    model.send(ReadLamp("left", wanted(window) - 4.0))
    model.send(MoveTeeth(3, -3))
    should = firing_btdc_deg(model.state, "left")
    assert f"should now read {should:.2f}°" in panel.plan.expect.should.text()
    type_in(panel.lamp.reads["left"], f"{wanted(window) - 4.0:.2f}")
    assert "Stop" in panel.lamp.warning.text() and "no tooth was moved" in panel.lamp.warning.text()
    tick = panel.plan.first.ticks["reading"]
    assert tick.isVisible() and not panel.plan.table.isEnabled()
    tick.click()
    assert panel.plan.table.isEnabled() and "Stop" not in panel.lamp.warning.text()
    assert tick.isVisible() and tick.isChecked()
    tick.click()
    assert not panel.plan.table.isEnabled()
    model.store.undo()
    assert tick.isChecked() and panel.plan.table.isEnabled()


def test_moves_of_a_quarter_turn_are_not_shown_before_three_ticks(window):
    panel = window.timing
    type_in(panel.lamp.reads["left"], f"{wanted(window) - 91.0:.1f}")
    assert panel.plan.table.row_count() == 0 and "No moves" in panel.plan.verdict.text()
    shown = [check for check, box in panel.plan.first.ticks.items() if box.isVisible()]
    assert shown == ["stroke", "mark", "finger"]
    for check in shown:
        assert panel.plan.table.row_count() == 0
        panel.plan.first.ticks[check].click()
    assert panel.plan.table.row_count() > 0 and panel.plan.table.isEnabled()


@pytest.mark.parametrize(("off", "told"), [(-5.0, False), (-5.5, True), (6.0, True)])
def test_above_five_degrees_the_moves_stand_under_what_to_look_at(window, off, told):
    panel = window.timing
    window.model.send(ReadLamp("left", wanted(window) + off))
    QApplication.processEvents()
    assert panel.plan.first.words.isVisible() is told
    assert panel.plan.table.isEnabled() and panel.plan.table.row_count() > 0
    if told:
        assert "stroke, mark and finger first" in panel.plan.first.words.text()
        assert panel.plan.first.y() < panel.plan.table.y()


def test_the_piston_is_told_with_its_side_of_the_top(window):
    window.model.send(ReadLamp("left", -10.0))
    piston = window.timing.conditions.box(Condition.PISTON).shown
    assert piston.figure == "10.00° after TDC" and piston.sign is Sign.OUT
    assert "on the power stroke" in piston.words and "before top dead centre, ±" in piston.words


def test_a_reading_is_explained_without_touching_the_bench(window):
    box, model = window.timing.moved, window.model
    model.send(ReadLamp("left", wanted(window)))
    before = model.state
    coupling = before.engaged.installation.coupling
    step = 360 * (1 / coupling.magneto_teeth - 1 / coupling.drive_teeth) * 8 / 7
    type_in(box.reads, f"{wanted(window) + 2 * step:.2f}")
    assert model.state is before
    lines = box.found.text().splitlines()
    assert lines[1].startswith("1. Teeth were moved") and says("{count} teeth with rotation", count=2) in lines[1]
    assert "slipped on the crank" in lines[-1]
    model.send(MoveTeeth(2, -2))
    assert "1. Nothing need have moved" in box.found.text()


def signs(box) -> dict:
    return {condition: box.box(condition).shown.sign for condition in Condition}


def test_the_four_verdicts_follow_the_bench(window):
    box, model = window.timing.conditions, window.model
    assert signs(box) == {**dict.fromkeys(Condition, Sign.IN), Condition.PISTON: Sign.UNKNOWN}, "nobody read the lamp"
    model.send(ReadLamp("left", wanted(window) - 4.0))
    assert signs(box) == {**dict.fromkeys(Condition, Sign.IN), Condition.PISTON: Sign.OUT}
    assert "compression stroke" in box.box(Condition.PISTON).toolTip()
    model.send(ReadLamp("right", wanted(window)))
    model.send(ViewSide("right"))
    assert signs(box) == dict.fromkeys(Condition, Sign.IN)
    model.send(TurnBackplate(0.7))
    piston = box.box(Condition.PISTON).shown
    assert piston.sign is Sign.UNKNOWN and "out of date" in piston.name
    assert piston.figure == f"expect {wanted(window) - 0.8:.2f}°"  # 0.7° of rotor at 7/8 of the crank
    model.send(TurnScrew(60.0))
    assert Sign.IN not in signs(box).values()
    assert "never open" in window.timing.moved.found.text()
