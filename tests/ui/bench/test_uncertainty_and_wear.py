"""How sure the setting is, and what wear will do to it, through the real window."""

from __future__ import annotations

import math
import re
import threading

import numpy as np
import pytest
import shiboken6
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QAbstractButton, QApplication, QLabel

from magview.bench.actions import PlaceMagneto, SetBoth, TurnBackplate, WearHeel
from magview.bench.state import readings
from magview.bench.sureness import percent_words, read_internal
from magview.bench.wear_words import expectation_words
from magview.physics.uncertainty.instruments import instrument
from magview.physics.uncertainty.measurement import judge_linear
from magview.physics.uncertainty.setting_uncertainty import InternalReadings, internal_measurement
from magview.spec.library import find_magneto
from magview.spec.units import MM_PER_THOU
from magview.ui.kit.worker import Worker
from tests.hands import what_is_due
from tests.magnetos import on_the_published_coupling
from tests.wording import says


@pytest.fixture
def panel(open_window):
    window = open_window(on_the_published_coupling())
    window.tabs.setCurrentIndex(4)
    window.panel_of("uncertainty").details_button.setChecked(True)
    return window, window.panel_of("uncertainty")


@pytest.fixture
def wear(open_window):
    window = open_window(on_the_published_coupling())
    window.tabs.setCurrentIndex(5)
    return window, window.panel_of("wear")


def click(button):
    QTest.mouseClick(button, Qt.MouseButton.LeftButton)
    QApplication.processEvents()


# ---------------------------------------------------------------------- how sure


def test_the_bench_is_read_as_the_instruments_allow(panel):
    window, page = panel
    window.model.send(TurnBackplate(2.0))
    click(page.take)
    true = readings(window.model.state)
    # 1/32 in by 25.4 mm an inch; blades in thousandths: the thickest that passes.
    division = 25.4 / 32
    assert page.offset.exact == pytest.approx(round(float(true.mark_offset_mm) / division) * division)
    thou = page.blade.exact / MM_PER_THOU
    assert thou == pytest.approx(round(thou))
    assert 0.0 <= float(true.max_gap_mm[0]) - page.blade.exact < MM_PER_THOU


def test_the_first_level_says_what_to_do_and_the_standards_are_one_level_down(open_window):
    window = open_window(on_the_published_coupling())
    window.tabs.setCurrentIndex(4)
    page = window.panel_of("uncertainty")
    first = [label.text() for label in page.findChildren(QLabel) if label.isVisible()]
    assert page.act.isVisible() and page.act.text() in first
    jargon = ("k =", "variance", "JCGM", "Monte Carlo", "linear")
    assert [text for text in first if any(word in text for word in jargon)] == []
    click(page.details_button)
    assert page.answer.isVisible() and "k =" in page.answer.text()
    assert "variance" in page.matters.text() and "JCGM" in page.agreement.text()
    page.blade.show_value(12 * MM_PER_THOU)  # beyond 0.010 in, the largest gap allowed there
    page.blade.entered.emit(12 * MM_PER_THOU)
    assert page.act.text() == says("✗ Out of limits, as far as was read: set it again.")


def test_finer_instruments_leave_less_doubt(panel):
    window, page = panel
    before = {o.quantity.key: o.linear.expanded_uncertainty for o in window.judging.outcomes}
    page.tools["rule"].setCurrentIndex(page.tools["rule"].findData("rule-64ths"))
    page.tools["blade"].setCurrentIndex(page.tools["blade"].findData("blades-0.01mm"))
    after = {o.quantity.key: o.linear.expanded_uncertainty for o in window.judging.outcomes}
    assert after["opening_error"] < before["opening_error"]
    assert after["gap"] < before["gap"]


def test_what_is_typed_is_judged(panel):
    window, page = panel
    page.blade.setFocus()
    page.blade.selectAll()
    QTest.keyClicks(page.blade, "12 thou")
    QTest.keyClick(page.blade, Qt.Key.Key_Return)
    expected = judge_linear(
        internal_measurement(
            window.model.state.magneto,
            InternalReadings(page.offset.exact, 12 * MM_PER_THOU, 0.0, instruments=page.chosen_tools()),
        )
    )
    shown = window.judging.outcomes
    assert [o.linear.estimate for o in shown] == [o.linear.estimate for o in expected]
    weakest = min(o.probability_in_limits for o in expected)
    assert percent_words(weakest) in page.overall.text()
    assert weakest < 0.05  # 0.012 in is beyond 0.010 in, the widest gap allowed


def test_the_monte_carlo_runs_beside_the_window_and_agrees(panel, qtbot):
    window, page = panel
    click(page.draw_button)
    assert page.worker.busy
    assert page.cancel_button.isEnabled()
    qtbot.waitUntil(lambda: not page.worker.busy, timeout=30_000)
    drawn = window.judging.judgement
    assert drawn is not None
    for outcome in drawn.outcomes:
        # Two ways to one answer: within five standard errors of a mean of 200,000 draws.
        spread = outcome.drawn.standard_uncertainty / math.sqrt(200_000)
        assert outcome.drawn.mean == pytest.approx(outcome.linear.estimate, abs=5 * spread + 0.02)
    assert "by Monte Carlo" in page.overall.text()
    assert page.better.text().startswith("With ")


def test_a_monte_carlo_can_be_cancelled_and_a_new_reading_ends_it(panel, qtbot):
    window, page = panel
    page.draws.setCurrentIndex(1)
    click(page.draw_button)
    click(page.cancel_button)
    assert not page.worker.busy
    assert window.judging.judgement is None
    click(page.draw_button)
    page.tools["rule"].setCurrentIndex(0)
    assert not page.worker.busy
    assert window.judging.judgement is None
    assert page.draw_button.isEnabled()


def test_the_window_can_be_closed_in_the_midst(panel):
    window, page = panel
    page.draws.setCurrentIndex(1)
    click(page.draw_button)
    window.close()
    assert not page.worker.busy


def test_timing_to_the_engine_is_judged_with_the_disc(panel):
    window, page = panel
    page.what.setCurrentIndex(1)
    keys = [o.quantity.key for o in window.judging.outcomes]
    assert keys == ["left", "right", "difference"]
    left = window.judging.outcomes[0].linear
    # The lamp answers a little after the contacts part, which the estimate allows for: at most half a degree.
    assert left.estimate == pytest.approx(25.0, abs=0.5)
    assert not page.offset.isVisible()
    assert page.first_stop.isVisible()


def test_a_magneto_without_an_engine_says_so(panel):
    window, page = panel
    page.what.setCurrentIndex(1)
    window.model.send(PlaceMagneto(find_magneto("four-opposed")))
    assert "open an installation" in page.overall.text()
    assert not page.draw_button.isEnabled()
    page.what.setCurrentIndex(0)
    assert page.draw_button.isEnabled()


def test_the_budget_is_drawn_and_adds_up(panel):
    window, _ = panel
    window.show_plots(True)
    sheet = window.plots.choose("budget")
    table = dict(sheet.table())
    assert table["share of the variance [1]"].sum() == pytest.approx(1.0)
    contribution = table["contribution [deg]"]
    assert np.sqrt((contribution**2).sum()) == pytest.approx(sheet.outcome.linear.standard_uncertainty)
    assert sheet.summary().startswith("Opening from the E-gap")


def test_the_budget_stands_in_a_table_the_largest_share_first(panel):
    window, page = panel
    weakest = min(window.judging.outcomes, key=lambda o: o.probability_in_limits)
    shares = sorted((line.share for line in weakest.linear.budget), reverse=True)
    assert page.budget.row_count() == len(shares)
    assert [page.budget.words(row, 3) for row in range(3)] == [percent_words(s) for s in shares[:3]]
    assert page.budget.words(0, 0) == weakest.matters_most.input.name


def test_a_setting_that_never_opens_is_not_judged(panel):
    window, page = panel
    window.model.send(WearHeel(1.9))
    click(page.take)
    assert "never open" in page.overall.text()
    with pytest.raises(ValueError, match="never open"):
        read_internal(window.model.state, (instrument("rule-32nds"),))


def test_a_single_magneto_has_no_right_hand_reading_even_where_nothing_could_be_read(open_window):
    window = open_window("traced-six-single")
    window.tabs.setCurrentIndex(4)
    page = window.panel_of("uncertainty")
    page.what.setCurrentIndex(1)
    page.what.setCurrentIndex(0)
    window.model.send(SetBoth(7.0, 999.0))
    assert math.isnan(float(readings(window.model.state).e_gap_error_deg[0]))
    page.what.setCurrentIndex(1)
    assert "never open" in page.overall.text()
    page.tools["disc"].setCurrentIndex(1)
    assert [o.quantity.key for o in window.judging.outcomes] == ["left"]


def test_wear_leaves_what_was_read(panel):
    window, page = panel
    page.blade.setFocus()
    page.blade.selectAll()
    QTest.keyClicks(page.blade, "8 thou")
    QTest.keyClick(page.blade, Qt.Key.Key_Return)
    window.model.send(WearHeel(0.02))
    assert page.blade.exact == pytest.approx(8 * MM_PER_THOU)
    window.model.send(PlaceMagneto(find_magneto("four-opposed")))
    assert page.blade.exact != pytest.approx(8 * MM_PER_THOU)


def test_magnetos_meant_to_fire_apart_are_not_said_to_fire_together(open_window):
    window = open_window("four-opposed-right")
    window.tabs.setCurrentIndex(4)
    page = window.panel_of("uncertainty")
    page.what.setCurrentIndex(1)
    wanted = window.model.state.engaged.installation.engine.firing_btdc_deg
    assert wanted.left - wanted.right == 4.0
    assert "Left less right, beyond the 4° wanted: 0.00°" in page.answer.text()


@pytest.mark.parametrize(("share", "words"), [(0.0, "under 1 %"), (1.0, "over 99 %"), (0.5, "50 %")])
def test_nothing_is_certain(share, words):
    assert percent_words(share) == words


# ---------------------------------------------------------------------- wear


def test_what_is_expected_is_what_the_bench_then_shows(wear):
    window, page = wear
    page.hours.setValue(150)
    expected = page.expected.text()
    click(page.wear_button)
    state = window.model.state
    assert state.magneto.condition.heel_wear_mm == pytest.approx(1.5 * page.heel.exact)
    assert state.magneto.condition.pip_height_mm == pytest.approx(1.5 * page.pip.exact)
    assert state.magneto.condition.face_burn_mm == pytest.approx(1.5 * page.faces.exact)
    result = readings(state)
    assert f"{float(result.max_gap_mm[0]):.3f} mm" in expected
    assert f"{float(result.e_gap_error_deg[0]):.2f}° late" in expected
    assert f"{float(result.blade_gap_mm[0]):.3f} mm" in expected
    window.model.undo()
    assert window.model.state.magneto.condition.heel_wear_mm == 0.0
    assert window.model.state.magneto.condition.pip_height_mm == 0.0
    assert window.model.state.magneto.condition.face_burn_mm == 0.0


def test_rates_are_found_back_from_inspections(wear):
    """Wear the bench by known rates, inspect it twice, and the rates lie in the intervals told."""
    window, page = wear
    page.at.setValue(0)
    page.take_from_bench()
    page.note()
    page.hours.setValue(200)
    page.wear_bench()
    page.at.setValue(200)
    page.take_from_bench()
    page.note()
    assert len(window.model.state.inspections) == 2
    assert page.use_button.isEnabled()
    breaker, found = window.model.state.magneto.breaker, page._heel_rate  # noqa: SLF001
    hidden = page.faces.exact * breaker.heel_arm_mm / breaker.contact_arm_mm
    assert found.low <= page.heel.exact - hidden <= found.high, "what the faces burn hides as much of the heel's wear"
    click(page.use_button)
    assert page.heel.exact == pytest.approx(max(0.0, found.mm_per_100h + hidden))
    page.table.selectRow(0)
    click(page.drop_button)
    assert [seen.hours for seen in window.model.state.inspections] == [200.0]
    window.model.undo()
    assert len(window.model.state.inspections) == 2


def test_inspections_of_another_setting_are_marked_and_give_no_rates_to_use(wear):
    window, page = wear
    page.at.setValue(0)
    page.note()
    page.wear_bench()
    page.take_from_bench()
    page.note()
    assert page.use_button.isEnabled() and not page.outdated.isVisible()

    def marked() -> list[bool]:
        return [page.table.words(row, 0).startswith("✗") for row in range(page.table.row_count())]

    assert marked() == [False, False], "wear is what inspections are for"
    window.model.send(TurnBackplate(window.model.state.backplate_deg + 1.0))
    assert marked() == [True, True] and page.outdated.isVisible() and not page.use_button.isEnabled()
    page.note()
    assert marked() == [True, True, False]
    for _ in range(2):
        page.table.selectRow(0)
        click(page.drop_button)
    assert marked() == [False] and not page.outdated.isVisible()
    for _ in range(4):  # struck out, struck out, noted, turned
        window.model.undo()
    assert marked() == [False, False] and page.use_button.isEnabled()


def test_wear_of_a_magneto_without_a_heel_arm_is_by_pips_alone(wear):
    window, page = wear
    window.model.send(PlaceMagneto(find_magneto("traced-six")))
    if window.model.state.magneto.breaker.heel_arm_mm is None:
        assert not page.heel.isEnabled()
        assert page.rates.heel_mm_per_100h == 0.0
    click(page.wear_button)
    assert window.model.state.magneto.condition.pip_height_mm > 0.0


def test_rates_are_said_to_be_invented_until_they_are_entered(wear):
    _, page = wear
    assert page.invented.isVisible() and "Invented rates: heel, faces, pip." in page.invented.text()
    page.heel.setValue(0.006)
    assert "Invented rates: faces, pip." in page.invented.text()
    page.faces.setFocus()
    page.faces.selectAll()
    QTest.keyClicks(page.faces, page.faces.text())
    QTest.keyClick(page.faces, Qt.Key.Key_Return)
    assert "Invented rates: pip." in page.invented.text(), "the same value, entered, is the person's own"
    page.pip.setValue(0.001)
    assert page.invented.isHidden()


def test_hours_take_a_decimal_comma(wear):
    window, page = wear
    for spin in (page.hours, page.at):
        spin.setFocus()
        spin.selectAll()
        QTest.keyClicks(spin, "62,5 h")
        QTest.keyClick(spin, Qt.Key.Key_Return)
        assert spin.exact == 62.5
    assert "After 62.5 h" in page.expected.text()
    page.note()
    assert window.model.state.inspections[0].hours == 62.5
    assert page.at.exact == 125.0


def test_contacts_that_never_open_make_no_inspection(wear):
    window, page = wear
    gap, late = page.gap.exact, page.late.exact
    window.model.send(WearHeel(1.9))
    assert math.isnan(float(readings(window.model.state).e_gap_error_deg[0]))
    page.take_from_bench()
    assert "never open" in window.statusBar().currentMessage()
    assert (page.gap.exact, page.late.exact) == (gap, late)


def test_words_wait_until_somebody_looks(wear):
    window, page = wear
    before = page.expected.text()
    window.tabs.setCurrentIndex(0)
    window.model.send(TurnBackplate(2.0))
    assert page.expected.text() == before
    window.tabs.setCurrentIndex(5)
    expected = expectation_words(window.model.state, page.rates, page.hours.exact)
    assert page.expected.text() == expected != before


@pytest.mark.parametrize(("tab", "plot"), [(3, "trials"), (4, "budget"), (5, "wear")])
def test_no_two_things_in_sight_answer_to_the_same_letter(open_window, tab, plot):
    window = open_window(on_the_published_coupling())
    window.show_plots(True)
    window.tabs.setCurrentIndex(tab)
    window.plots.choose(plot)
    window.panel_of("uncertainty").details_button.setChecked(True)
    pane = window.tabs.currentWidget()
    texts = [action.text() for action in window.menuBar().actions()]
    texts += [window.tabs.tabText(i) for i in range(window.tabs.count())]
    for root in (pane, window.plots):
        texts += [b.text() for b in root.findChildren(QAbstractButton) if b.isVisible()]
        texts += [label.text() for label in root.findChildren(QLabel) if label.isVisible() and label.buddy()]
    letters = [letter.lower() for text in texts for letter in re.findall("&([^&])", text)]
    assert len(letters) > 15
    assert sorted(letters) == sorted(set(letters))


def test_the_wear_plot_follows_rates_and_hours(wear):
    window, page = wear
    window.show_plots(True)
    sheet = window.plots.choose("wear")
    first = dict(sheet.table())["largest gap [mm]"]
    page.heel.setValue(0.05)
    second = dict(sheet.table())["largest gap [mm]"]
    assert second[-1] < first[-1]
    assert second[0] == first[0]


# ---------------------------------------------------------------------- long work


def test_work_reports_finishes_fails_and_is_cancelled(qtbot):
    worker = Worker()
    heard: list[object] = []
    worker.progressed.connect(heard.append)
    worker.finished.connect(heard.append)
    worker.failed.connect(heard.append)

    def good(progress, should_stop):
        progress(0.5)
        return "done"

    worker.start(good)
    qtbot.waitUntil(lambda: not worker.busy)
    assert heard == [0.5, "done"]

    def bad(progress, should_stop):
        raise ValueError("no such thing")

    worker.start(bad)
    qtbot.waitUntil(lambda: not worker.busy)
    assert heard[-1] == "no such thing"

    def endless(progress, should_stop):
        while not should_stop():
            pass
        return "never heard"

    worker.start(endless)
    worker.cancel()
    what_is_due()
    assert heard[-1] == "no such thing"


def test_work_outlives_the_window_it_was_for_without_a_word(qtbot):
    """pytest turns an exception of a thread into a failure of the test."""
    worker, go_on = Worker(), threading.Event()

    def work(progress, _):
        go_on.wait(10)
        progress(0.5)

    worker.start(work)
    thread = worker._thread  # noqa: SLF001
    shiboken6.delete(worker)
    go_on.set()
    thread.join(10)
    assert not thread.is_alive()
