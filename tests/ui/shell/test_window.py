"""The window around the pictures: files, units, themes, and that nothing is cut off."""

from __future__ import annotations

import json
import math
import sys

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLabel, QMessageBox, QPushButton, QWidget

from magview.bench.actions import SetBoth, TightenClamps, TightenLock, TurnBackplate, TurnScrew
from magview.bench.advised import ORDERS
from magview.spec.files import read_magneto
from magview.spec.library import resources, shipped_names
from tests.counts import sampled
from tests.wording import says


def message(window) -> str:
    boxes = window.findChildren(QMessageBox)
    assert boxes, "no message was shown"
    text = boxes[-1].text()
    boxes[-1].close()
    return text


@pytest.mark.parametrize("name", shipped_names("magnetos"))
def test_every_shipped_magneto_can_be_chosen(open_window, name):
    window = open_window("four-opposed" if name != "four-opposed" else "seven-radial")
    window.menus.magnetos.setFocus()
    index = window.menus.magnetos.findData(name)
    window.menus.magnetos.setCurrentIndex(index)
    window.menus.magnetos.activated.emit(index)
    state = window.model.state
    assert state.magneto.name == window.menus.magnetos.currentText()
    assert state.magneto.name in window.windowTitle()
    assert window.panel.overall.text().startswith("✓")
    assert window.panel.lobes.row_count() == len(state.magneto.cam.lobe_peaks_deg)


def test_a_file_opens_and_saves_and_comes_back_equal(open_window, tmp_path):
    window = open_window("nine-radial")
    path = tmp_path / "mine.json"
    window.save_path(path)
    assert read_magneto(path) == window.model.state.magneto
    window.place("seven-radial")
    window.open_path(path)
    assert window.model.state.magneto.name == "Nine-cylinder practice magneto"


def test_a_bad_file_is_refused_in_one_sentence_and_the_bench_stays(open_window, tmp_path):
    window = open_window("seven-radial")
    before = window.model.state
    data = json.loads((resources() / "magnetos" / "seven-radial.json").read_text(encoding="utf-8"))
    data["cam"]["profile"]["lift_mm"] = "0.3 in"
    path = tmp_path / "bad.json"
    path.write_text(json.dumps(data), encoding="utf-8")
    window.open_path(path)
    text = message(window)
    assert "bad.json" in text
    assert "cam.profile.lift_mm" in text
    assert "\n" not in text
    assert window.model.state is before


def test_a_cam_that_undercuts_is_refused_when_opened(open_window, tmp_path):
    window = open_window("seven-radial")
    data = json.loads((resources() / "magnetos" / "nine-radial.json").read_text(encoding="utf-8"))
    data["breaker"]["heel_radius_mm"] = 20.0
    data["breaker"]["heel_arm_mm"] = 26.0
    data["breaker"]["pivot_distance_mm"] = 45.0
    path = tmp_path / "hollow.json"
    path.write_text(json.dumps(data), encoding="utf-8")
    window.open_path(path)
    assert "heel_radius_mm" in message(window)
    assert window.model.state.magneto.name == "Seven-cylinder practice magneto"


def test_a_place_that_cannot_be_written_is_said(open_window, tmp_path):
    window = open_window("seven-radial")
    window.save_path(tmp_path / "nowhere" / "x.json")
    assert "x.json" in message(window)


def test_shown_step_by_step_it_comes_to_the_gap_asked_for(open_window):
    """Each act is one step back; without motion all of them are done at once."""
    window = open_window("seven-radial")
    model, store = window.model, window.model.store
    model.reduced_motion = True
    model.send(TurnBackplate(-3.0))
    model.send(TurnScrew(9.0))
    assert window.panel.overall.text().startswith("✗")
    before = model.state
    QTest.mouseClick(window.panel.do_it, Qt.MouseButton.LeftButton)
    assert window.panel.overall.text() == "✓ Within limits"
    assert window.panel.advice.text().startswith("Nothing to turn:")
    assert model.state.lock_tight and model.state.clamps_tight
    for _ in ("clamps tight", "plate", "lock tight", "screw"):
        assert model.state != before
        store.undo()
    assert model.state == before


def test_the_show_turns_smoothly_and_a_hand_ends_it(open_window):
    window = open_window("seven-radial")
    model, panel = window.model, window.panel
    model.send(SetBoth(0.0, 9.0))
    QTest.mouseClick(panel.do_it, Qt.MouseButton.LeftButton)
    show = panel.put_right.show_me
    assert show.running and panel.do_it.text() == "Stop"
    angles = []
    for _ in range(10):
        show.tick(0.1)
        angles.append(model.state.screw_deg)
    assert angles == sorted(angles, reverse=True) and 3.0 < angles[-1] < angles[0] < 9.0
    steps = panel.advice.text()
    assert steps.startswith("Turn the contact screw 6.00°"), "the list stays as it was while it is shown"
    panel.clamps.click()
    assert not show.running and panel.do_it.text() == "Show me, step by step"
    assert model.state.screw_deg == angles[-1]
    assert panel.advice.text() != steps


@pytest.mark.parametrize("name", sampled(shipped_names("magnetos"), 2))
@pytest.mark.parametrize("tight", [False, True])
def test_the_acts_shown_end_within_limits_with_both_screws_tight(open_window, name, tight):
    """By the bench itself: set, tightened, read; the screw lands where the adjustment of a screw at rest has it."""
    window = open_window(name)
    panel = window.panel
    window.model.reduced_motion = True
    window.model.send(SetBoth(-3.0, 9.0))
    for box in (panel.clamps, panel.lock):
        if tight:
            box.click()
    panel.do_it.click()
    state = window.model.state
    assert state.lock_tight
    assert state.clamps_tight
    assert panel.overall.text().startswith("✓")
    assert state.screw_deg == pytest.approx(0.0, abs=1e-6), "the designed gap stands with the screw at 0"
    assert panel.advice.text().startswith("Nothing to turn:")
    before = state
    panel.do_it.click()
    assert window.model.state == before, "what is tight and right is left alone"


def test_only_the_plate_is_out_and_the_tight_lock_screw_stays_tight(open_window):
    window = open_window("seven-radial")
    window.model.reduced_motion = True
    for action in (SetBoth(2.0, 3.0), TightenLock(True)):
        window.model.send(action)
    assert "lock screw" not in window.panel.advice.text()
    window.panel.do_it.click()
    assert window.panel.overall.text().startswith("✓")
    assert window.model.state.screw_deg == pytest.approx(0.0, abs=1e-9)


def test_the_first_screen_does_not_contradict_itself(open_window):
    """In limits, with a slack lock screw that will creep: both in one sentence, and the acts before tightening."""
    window = open_window("seven-radial")
    panel = window.panel
    told = panel.overall.text()
    assert told.startswith(
        "✓ Right as it stands; the lock screw is slack and tightening it moves the contact screw -3"
    )
    assert "Within limits" not in told and panel.put_right.title() == "Before the lock screw is tightened"
    assert "Tighten the lock screw: that brings the contact screw from +3.00° to +0.00°." in panel.advice.text()
    window.model.send(TurnScrew(3.0))
    assert panel.advice.text().startswith(
        "Nothing to turn: tightening the lock screw brings the contact screw to +0.00°"
    )
    panel.lock.click()
    assert panel.overall.text() == "✓ Within limits"


def test_the_advice_to_slacken_goes_as_soon_as_it_is_done(open_window):
    window = open_window("seven-radial")
    for action in (SetBoth(-3.0, 9.0), TightenLock(True), TightenClamps(True)):
        window.model.send(action)
    advice = window.panel.advice
    # Gap by the screw first, so that the plate, which leaves it alone, ends the work in one pass.
    assert advice.text().startswith("Slacken the lock screw. Turn the contact screw")
    assert "Slacken the clamp screws. Turn the backplate" in advice.text()
    window.panel.lock.click()
    assert advice.text().startswith("Turn the contact screw") and "Slacken the clamp screws" in advice.text()
    window.panel.clamps.click()
    assert "lacken" not in advice.text()
    window.panel.clamps.click()
    assert "Slacken the clamp screws." in advice.text()
    assert ORDERS in window.panel.put_right.orders.text()


def test_a_screw_that_would_have_to_stand_beyond_its_travel_is_said(open_window):
    """The screw's travel ends at −150°; for −148° it would have to be set at −152°, against a creep of 4°."""
    window = open_window("four-opposed")
    magneto = window.model.state.magneto
    gap = magneto.designed_setting.gap_mm + magneto.contact_screw.lead_mm * 148.0 / 360.0
    window.panel.wanted.setValue(gap)
    assert "stand at -152.00°, 2.00° beyond the end of its travel" in window.panel.advice.text()
    assert not window.panel.do_it.isEnabled()


def test_a_gap_just_out_of_limits_does_not_read_as_the_limit(open_window):
    """The eccentric moves the contact by throw·sin σ, so a gap of 0.36012 mm needs the σ of that sine."""
    window = open_window("seven-radial")
    magneto = window.model.state.magneto
    move = magneto.designed_setting.gap_mm - 0.36012
    window.model.send(TurnScrew(math.degrees(math.asin(move / magneto.contact_screw.throw_mm))))
    assert window.panel.gauges["gap"].accessibleName() == "Largest gap 0.3601 mm, limits 0.3000 to 0.3600, out"
    assert window.panel.lobes.words(0, 4) == "0.3601 mm"


def test_an_opening_that_never_comes_is_out_as_the_verdict_says(open_window):
    """The screw turned back by 60° lowers the stop by 0.433 mm: 0.763 mm of gap, and the contacts stay open."""
    window = open_window("seven-radial")
    window.model.send(TurnScrew(-60.0))
    assert window.panel.overall.text().startswith("✗")
    said = window.panel.gauges["error"].accessibleName()
    assert says("never: they stay open") in said and said.endswith(", out")
    window.panel.gauges["error"].grab()


def test_out_of_reach_says_so_and_cannot_be_set(open_window):
    window = open_window("seven-radial")
    window.panel.wanted.setValue(0.55)
    assert "nearest gap" in window.panel.advice.text()
    assert not window.panel.do_it.isEnabled()


@pytest.mark.parametrize("name", shipped_names("magnetos"))
@pytest.mark.parametrize("size", [(1280, 720), (853, 480)])
def test_no_words_are_cut_off(open_window, name, size):
    """At 1280×720, and at the 853×480 that 150 % leaves of it."""
    window = open_window(name, size)
    QApplication.processEvents()
    cut = [
        w.text()
        for w in window.panel.findChildren(QWidget)
        if isinstance(w, QLabel | QPushButton)
        and w.isVisible()
        and (w.width() < w.minimumSizeHint().width() or w.height() < w.minimumSizeHint().height())
    ]
    assert not cut
    assert window.width() <= size[0] + 1, "the window does not fit the screen"


def test_no_page_pushes_the_window_off_a_small_screen(open_window):
    """At 853×480, what 150 % leaves of 1280×720, each page looked at: one that is too wide hides readings."""
    window = open_window("nine-radial-left", (853, 480))
    for index in range(window.tabs.count()):
        window.tabs.setCurrentIndex(index)
        QApplication.processEvents()
        assert window.width() <= 854, window.tabs.tabText(index)


def test_everything_has_a_name_for_a_screen_reader(open_window):
    from PySide6.QtGui import QAccessible
    from PySide6.QtWidgets import QAbstractSpinBox, QComboBox, QGraphicsView, QTableWidget

    window = open_window("seven-radial")
    for kind in (QAbstractSpinBox, QPushButton, QComboBox, QGraphicsView, QTableWidget):
        for widget in window.findChildren(kind):
            if widget.isVisible():
                named = QAccessible.queryAccessibleInterface(widget).text(QAccessible.Text.Name)
                assert named, f"{widget} has no accessible name"


def test_colours_change_everywhere(open_window):
    window = open_window("seven-radial")
    light = window.breaker.grab().toImage().pixelColor(4, 300).lightness()
    dark = next(a for a in window.menus.theme_actions.actions() if a.data() == "dark")
    dark.trigger()
    assert window.breaker.grab().toImage().pixelColor(4, 300).lightness() < light - 100


@pytest.mark.skipif(sys.version_info >= (3, 12), reason="None is immortal from Python 3.12 on")
def test_qt_calls_do_not_eat_references_to_none(qapp):
    """One PySide6 release aborts the process after some thousand calls; the requirement keeps it out."""
    widget = QWidget()
    before = sys.getrefcount(None)
    for _ in range(20_000):
        widget.setEnabled(True)
    assert sys.getrefcount(None) > before - 1000
    widget.deleteLater()


@pytest.mark.parametrize("page", ["setting", "trials", "uncertainty"])
def test_pages_that_send_hands_to_a_magneto_carry_the_cautions(open_window, page):
    window = open_window("seven-radial-left")
    said = " ".join(label.text() for label in window.panel_of(page).findChildren(QLabel, "caution"))
    for words in ("propeller as live", "switch off", "plugs out", "wheels chocked", "current manual", "licensed"):
        assert words in said
