"""Teeth moved on the bench, and what then becomes of the lamp's reading and the moves planned from it."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from magview.bench.actions import MoveTeeth, ReadLamp, TurnBackplate
from magview.bench.conditions import Condition
from magview.ui.kit.signs import Sign

A_TOOTH = 360.0 / 18 * 8 / 7
"""Crank degrees of one tooth of 18, the rotor at 7/8 of the crank."""


@pytest.fixture
def window(open_window):
    found = open_window("seven-radial-left", (1280, 660))
    found.model.send(ReadLamp("left", 27.0))
    return found


def told(window) -> str:
    return " ".join(line.wordings[0] for corner in window.drive.picture.corners for line in corner.lines)


def test_a_reading_made_with_the_teeth_as_found_waits_until_it_is_confirmed(window):
    window.tabs.setCurrentIndex(1)
    timing, plan = window.timing, window.timing.plan
    place = plan.mapTo(window, plan.rect().topLeft())
    window.model.send(MoveTeeth(0, -1))
    QApplication.processEvents()
    expected = f"{27.0 - A_TOOTH:.2f}°"
    assert timing.lamp.reads["left"].font().strikeOut() and not timing.lamp.reads["right"].font().strikeOut()
    assert "read with the teeth as found" in timing.lamp.error.text() and expected in timing.lamp.error.text()
    assert not plan.table.isEnabled() and plan.steps.heading.text() == "Next: read the lamp again"
    assert plan.mapTo(window, plan.rect().topLeft()) == place, "nothing moves under the pointer"
    assert timing.conditions.box(Condition.PISTON).shown.sign is Sign.UNKNOWN
    QTest.mouseClick(plan.expect.reads_so, Qt.MouseButton.LeftButton)
    assert plan.table.isEnabled() and not timing.lamp.reads["left"].font().strikeOut()
    assert plan.table.words(0, 2).startswith(expected), "counted from the new reading"


def test_the_internal_page_says_both_parts_and_its_rows_stay(window):
    rows = [box.mapTo(window, box.rect().topLeft()) for box in window.panel.conditions.four.boxes]
    window.model.send(MoveTeeth(1, 0))
    QApplication.processEvents()
    assert window.panel.lamp.isVisible() and "teeth as found" in window.panel.lamp.text()
    window.model.send(TurnBackplate(0.7))
    QApplication.processEvents()
    teeth, setting = 360.0 / 17 * 8 / 7, 0.7 * 8 / 7
    text = window.panel.lamp.text()
    assert f"teeth moved: {teeth:.2f}° earlier" in text and f"setting: {setting:.2f}° later" in text
    assert f"in all {teeth - setting:.2f}° of crank earlier" in text
    assert [box.mapTo(window, box.rect().topLeft()) for box in window.panel.conditions.four.boxes] == rows
    lamp = window.panel.lamp
    assert lamp.height() >= lamp.heightForWidth(lamp.width()) and window.rect().contains(
        lamp.mapTo(window, lamp.rect().bottomRight())
    )


def test_the_coupling_s_caption_tells_what_a_tooth_does(window):
    """In the small picture of the internal page, its words beside it, and in the large one of the engine page."""
    assert f"One tooth, of crank: A {A_TOOTH:.2f}°" in told(window)
    window.tabs.setCurrentIndex(1)
    QApplication.processEvents()
    assert f"One tooth: A disc {A_TOOTH:.2f}°" in told(window)
    window.model.send(MoveTeeth(0, -1))
    assert f"A disc 1 against: {A_TOOTH:.2f}° of crank later" in told(window)
    assert "dashed: as found" in told(window)
    window.model.send(MoveTeeth(1, -1))
    both = (360 / 17 - 360 / 18) * 8 / 7
    assert f"A disc 1 against, B magneto flange 1 with: {both:.2f}° of crank earlier" in told(window)


def test_the_next_act_and_the_reading_expected_are_in_view_in_a_small_window(window):
    window.tabs.setCurrentIndex(1)
    window.model.send(ReadLamp("left", 23.0))
    for _ in range(3):
        QApplication.processEvents()
    plan = window.timing.plan
    port = window.tabs.currentWidget().viewport()
    for button in (plan.next, plan.print, plan.expect.reads_so):
        assert port.rect().contains(button.mapTo(port, button.rect().bottomRight())), button.text()
