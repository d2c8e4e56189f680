"""The Engine page as a whole: its states, its keys, and the same figures on page, picture, paper and command line."""

from __future__ import annotations

import re

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QFontInfo
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from magview.bench.actions import MoveTeeth, ReadLamp, TurnBackplate, TurnCrank, WantTiming
from magview.bench.state import firing_btdc_deg
from magview.cli.main import main
from magview.job.shift_plan import plan_of, shift_documents
from magview.paper.blocks import Heading, Table
from magview.ui.kit.signs import Sign


@pytest.fixture
def window(open_window):
    found = open_window("seven-radial-left")
    found.tabs.setCurrentIndex(1)
    return found


def late(window, degrees: float) -> float:
    """Read the left lamp so much late; the reading."""
    reads = window.model.state.engaged.left.wanted_btdc_deg - degrees
    window.model.send(ReadLamp("left", reads))
    QApplication.processEvents()
    return reads


def press(widget, key: Qt.Key, times: int = 1) -> None:
    for _ in range(times):
        QTest.keyClick(widget, key)


def test_the_figures_are_the_same_on_page_picture_paper_and_command_line(window, capsys):
    reads = late(window, 4.0)
    plan = window.timing.plan
    plan.table.setFocus()
    press(plan.table, Qt.Key.Key_Down)
    move = plan.chosen
    disc, flange, arrow, expect = (plan.table.words(0, column) for column in range(4))
    # By the gears alone: 17 and 18 teeth, the rotor at 7/8 of the crank.
    i, j = move.magneto_teeth, move.disc_teeth
    result = reads + 360.0 * (i / 17 + j / 18) * 8 / 7
    assert expect == f"{result:.2f}° ✓" and arrow == f"{reads:.2f}° → {result:.2f}°"
    assert (disc, flange) == (f"{abs(j)} against", f"{i} with") and j < 0 < i
    assert plan.expect.angle.text() == f"{result:.2f}°"
    picture = window.drive.picture
    told = " ".join(line.wordings[0] for corner in picture.corners for line in corner.lines)
    assert f"expect {result:.2f}°" in told
    assert re.search(rf"A\s+disc {abs(j)} ", told) and re.search(rf"B\s+count {i} with rotation", told)
    assert main(["shift", "seven-radial-left", "--reads", f"{reads:g}"]) == 0
    line = next(line for line in capsys.readouterr().out.splitlines() if line.startswith("   1 "))
    assert f"{result:.2f}°" in line and f"A {abs(j)} teeth against rotation" in line
    assert f"; B {i} teeth with rotation" in line and line.index("A ") < line.index("; B ")
    blocks = next(iter(shift_documents(plan_of(window.model.state, "left", move)))).blocks
    assert any(f"{result:.2f}° before top dead centre" in str(b.text) for b in blocks if isinstance(b, Heading))
    (heads,) = (b.head for b in blocks if isinstance(b, Table))
    assert heads == (f"A disc: {abs(j)} AGAINST rotation", f"B magneto flange: {i} WITH rotation")


def test_up_and_down_choose_m_moves_a_tooth_and_one_button_all_of_them(window):
    late(window, 4.0)
    plan, model = window.timing.plan, window.model
    assert plan.table.rows.heads[:2] == ["A disc", "B magneto flange"]
    plan.table.setFocus()
    press(plan.table, Qt.Key.Key_Down, 2)
    second = plan.chosen
    press(plan.table, Qt.Key.Key_Up)
    first = plan.chosen
    assert first != second and plan.next.text() == "Move tooth 1 of 6"
    way = []
    for place in range(2, 5):
        press(plan.table, Qt.Key.Key_M)
        QApplication.processEvents()
        at = model.state.engaged.left
        way.append((at.magneto_teeth, at.disc_teeth))
        assert plan.next.text() == f"Move tooth {place} of 6"
    assert plan.expect.should.text().startswith("Half-way no reading counts.")
    assert way == [(0, -1), (0, -2), (0, -3)], "all of A, then B"
    assert plan.steps.heading.text() == "Next: B, with the magneto off"
    before = model.state
    QTest.mouseClick(plan.steps.all, Qt.MouseButton.LeftButton)
    at = model.state.engaged.left
    assert (at.magneto_teeth, at.disc_teeth) == (first.magneto_teeth, first.disc_teeth)
    model.undo()
    assert model.state == before, "all at once is one step back"


def test_right_as_it_stands_the_teeth_are_left_alone_but_only_once_the_lamp_was_read(window):
    plan = window.timing.plan
    assert "leave the teeth alone" not in plan.verdict.text() and plan.table.isHidden()
    late(window, 0.5)
    assert plan.verdict.text() == "✓ Right: leave the teeth alone." and plan.table.isHidden()
    late(window, 1.5)
    assert not plan.table.isHidden()


def test_an_angle_after_top_dead_centre_is_looked_at_first(window):
    window.model.send(ReadLamp("left", -25.0))
    QApplication.processEvents()
    plan = window.timing.plan
    assert plan.first.words.isVisible() and "stroke, mark and finger first" in plan.first.words.text()
    assert plan.table.row_count() > 0


def test_a_reading_out_of_date_is_said_loudly_and_confirmed_by_a_button(window):
    late(window, 4.0)
    window.model.send(TurnBackplate(0.7))
    QApplication.processEvents()
    timing, plan = window.timing, window.timing.plan
    expected = firing_btdc_deg(window.model.state, "left")
    assert timing.lamp.warning.isVisible() and f"{expected:.2f}°" in timing.lamp.warning.text()
    assert not plan.table.isEnabled() and plan.steps.heading.text() == "Next: read the lamp again"
    assert plan.expect.angle.text() == f"{expected:.2f}°"
    QTest.mouseClick(plan.expect.reads_so, Qt.MouseButton.LeftButton)
    assert plan.table.isEnabled() and "Left, " not in timing.lamp.warning.text()


def test_play_not_taken_up_is_said_wherever_an_angle_of_the_crank_stands(open_window):
    from magview.bench.actions import PlaceInstallation

    window = open_window("seven-radial-left")
    installation = window.model.state.engaged.installation
    window.model.send(PlaceInstallation(installation.model_copy(update={"drive_play_deg": 2.0})))
    window.model.send(TurnCrank(-40.0))
    window.model.send(TurnCrank(-60.0))
    assert "play of" in window.panel.conditions.words.text()
    window.tabs.setCurrentIndex(1)
    assert window.timing.crank.play.isVisible() and "no angle of the crank counts" in window.timing.crank.play.text()
    assert "play of" in window.timing.conditions.words.text()
    window.model.send(TurnCrank(-20.0))
    assert not window.timing.crank.play.isVisible()


@pytest.mark.parametrize("size", [(1280, 660), (1920, 1000)])
def test_the_pages_are_as_wide_as_drafted_and_nothing_scrolls_sideways(open_window, size):
    window = open_window("seven-radial-left", size)
    window.model.send(ReadLamp("left", 20.0))
    em = QFontInfo(window.font()).pixelSize()
    for index in range(window.tabs.count()):
        window.tabs.setCurrentIndex(index)
        for _ in range(3):
            QApplication.processEvents()
        page = window.tabs.currentWidget()
        assert page.widget().minimumSizeHint().width() <= page.viewport().width()
        if index < 2:
            assert window.tabs.width() <= 33.0 * em


def test_the_order_of_the_pages_and_more(open_window):
    window = open_window("seven-radial-left")
    tabs = window.tabs
    seen = [tabs.tabText(i).replace("&", "") for i in range(tabs.count()) if tabs.isTabVisible(i)]
    assert seen == ["Internal", "Engine", "Switch lead"]
    entries = [action for action in tabs.more.menu().actions() if not action.isSeparator()]
    assert [action.text().replace("&", "") for action in entries] == ["Trials", "How sure", "Wear", "Plots"]
    entries[1].trigger()
    assert tabs.currentWidget() is window.bench_page._panes["uncertainty"]  # noqa: SLF001
    assert tabs.isTabVisible(tabs.currentIndex())
    tabs.setCurrentIndex(0)
    assert not tabs.isTabVisible(4)


def test_boxes_stand_one_below_the_other_in_large_type(window):
    four = window.timing.conditions.four
    assert four.columns == 2
    window.look.text_percent = 150
    QApplication.processEvents()
    assert four.columns == 1 and len({box.x() for box in four.boxes}) == 1


def test_nothing_within_tolerance_names_the_nearest_on_either_side(window):
    late(window, 4.0)
    window.model.send(WantTiming("left", 27.7))
    installation = window.model.state.engaged.installation
    coupling = installation.coupling.model_copy(update={"magneto_teeth": 17, "drive_teeth": 17})
    from magview.bench.actions import PlaceInstallation

    window.model.send(PlaceInstallation(installation.model_copy(update={"coupling": coupling})))
    late(window, 4.0)
    # One tooth of 17 is 21.18° of rotor, 24.20° of crank: leave it 4° late, or a tooth on, 20.2° early.
    text = window.timing.plan.verdict.text()
    wanted = window.model.state.engaged.left.wanted_btdc_deg
    assert f"nearest {wanted - 4.0:.2f}° or {wanted - 4.0 + 360 / 17 * 8 / 7:.2f}°, swing it or set it" in text
    assert window.timing.plan.table.words(0, 3).endswith(Sign.OUT.mark)
    window.model.send(MoveTeeth(1, 0))
    assert firing_btdc_deg(window.model.state, "left") == pytest.approx(wanted - 4.0 + 360 / 17 * 8 / 7)
    plan = window.timing.plan
    assert not plan.table.isEnabled(), "no move of the plan was under way"
    window.model.send(MoveTeeth(0, 0))
    assert plan.table.isEnabled(), "as found again, the reading counts"
