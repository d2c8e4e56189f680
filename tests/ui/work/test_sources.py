"""From the bench to the sheet by one press each, and earlier sheets beside this one."""

from __future__ import annotations

import datetime
import threading

import numpy as np
import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from magview.bench.actions import (
    GrowPip,
    MoveTeeth,
    NoteTrial,
    PaintMarks,
    PullPlug,
    ReadLamp,
    SetBoth,
    SwitchIgnition,
    TightenClamps,
    TightenLock,
    TurnCrank,
    TurnRotor,
    WearHeel,
)
from magview.job import history
from magview.job.feeds import FEEDS
from magview.job.library import read_job
from magview.job.sheet import change_in
from magview.physics.trials.trial import Trial
from magview.spec.files import write_model
from magview.ui.work.sheet_page import HISTORY, PAGES
from tests.job.sheets import fires, of_magneto
from tests.job_windows import choose_page, form_of, press, write
from tests.wording import says


def feed(window, key: str):
    """Press a feed's button on the page that shows its result."""
    wanted = next(f for f in FEEDS if f.key == key)
    choose_page(window, wanted.page)
    press(window.page.feeds.buttons[key])
    assert window.page_name == wanted.page
    return read_job(window.model.store.path)


def main_of(window):
    return window.window()


def entered(spin, text: str) -> None:
    spin.setFocus()
    spin.selectAll()
    QTest.keyClicks(spin.lineEdit(), text)
    QTest.keyClick(spin.lineEdit(), Qt.Key.Key_Return)


# ---------------------------------------------------------------------- what the bench has


def test_setting_as_found_and_as_left(open_job):
    window = open_job()
    bench = main_of(window).model
    for action in (
        WearHeel(0.03),
        GrowPip(0.02),
        SetBoth(2.5, -6.0),
        ReadLamp("left", 22.0),
        ReadLamp("right", 24.5),
    ):
        bench.send(action)
    job = feed(window, "found")
    found = job.as_found
    # What was set and read is what stands there; the rest is the bench's, tested in tests/job/test_from_bench.py.
    assert (found.backplate_deg, found.screw_deg, found.heel_wear_mm, found.pip_height_mm) == (2.5, -6.0, 0.03, 0.02)
    assert (found.left_btdc_deg, found.right_btdc_deg) == pytest.approx((22.0, 24.5))
    form = form_of(window, "as_found")
    assert form.edits["left_btdc_deg"].text() == "22" and form.edits["backplate_deg"].text() == "+2.5"
    assert window.bar.said.text() == says("✓ Noted from the bench: {what}.", what="As found")
    assert window.model.store.undo_name == says("{what}, from the bench", what="As found")

    for action in (SetBoth(0.0, -5.6), TightenLock(True), TightenClamps(True)):
        bench.send(action)
    job = feed(window, "left")
    assert job.internal_timing.backplate_deg == 0.0 and job.internal_timing.read_after_tightening
    assert job.as_found == found, "as found stays as it was found"
    job = feed(window, "left-read")
    # Blades go in steps of a thousandth of an inch unless others are chosen: the largest that passes.
    thou = job.internal_timing.gap_mm / 0.0254
    assert thou == pytest.approx(round(thou))
    assert job.internal_timing.instruments and job.internal_timing.opening_error_deg is None
    job = feed(window, "contacts")
    assert (job.contacts.heel_wear_mm, job.contacts.pip_height_mm) == (0.03, 0.02)
    job = feed(window, "lobes")
    assert len(job.lobes.lobes) == len(bench.state.magneto.cam.lobe_peaks_deg) == 4
    job = feed(window, "planned")
    assert job.internal_timing.planned_gap_mm == main_of(window).panel.wanted.exact
    assert job.internal_timing.planned_backplate_deg is not None


def test_magneto_and_limits(open_job):
    window = open_job()
    job = feed(window, "bench")
    low, high = main_of(window).model.state.magneto.gap_limits_mm
    assert (job.limits.gap_low_mm, job.limits.gap_high_mm) == (low, high)
    assert job.installation is not None
    assert "On the bench: Seven-cylinder" in window.page.described.text()


def test_switch_lead_by_meter_and_lamp(open_job):
    window = open_job()
    bench = main_of(window).model
    bench.send(TurnRotor(26.0))  # contacts open
    for on in (True, False):  # the switch is tried
        bench.send(SwitchIgnition(on))
    job = feed(window, "lead")
    assert job.switch_lead.lamp_grounded_switch_off is True
    for action in (PullPlug(True), SwitchIgnition(True)):
        bench.send(action)
    job = feed(window, "lead")
    assert job.switch_lead.meter_grounded_switch_on is False
    bench.send(PullPlug(False))
    bench.send(TurnRotor(5.0))  # closed: the lamp sees the contacts, not the lead
    feed(window, "lead")
    assert "open the contacts" in window.bar.said.text()


def test_stops_and_stroke(open_job):
    window = open_job()
    main = main_of(window)
    feed(window, "stops")
    assert "No stop readings were entered yet" in window.bar.said.text()
    assert read_job(window.model.store.path).dead_centre.first_stop_deg is None
    main.tabs.setCurrentIndex(1)
    entered(main.timing.stop.stops[0], "41,5")
    feed(window, "stops")
    assert "No stop readings" in window.bar.said.text(), "one is only what the field began with"
    entered(main.timing.stop.stops[1], "-38.5")
    job = feed(window, "stops")
    assert (job.dead_centre.first_stop_deg, job.dead_centre.second_stop_deg) == (41.5, -38.5)
    # Before the dead centre it fires at, No. 1 is on its compression stroke.
    main.model.send(TurnCrank(-30.0))
    assert feed(window, "stroke").dead_centre.stroke == "compression"


def test_trials_and_uncertainty(open_job):
    window = open_job()
    main = main_of(window)
    feed(window, "trials")
    assert "No trial has been made" in window.bar.said.text()
    for plate, go in ((2.5, 0.3175), (1.2, 0.2667)):
        main.model.send(NoteTrial(Trial.blades(plate, go, go + 0.0127)))
    main.model.send(NoteTrial(Trial.blades(0.3, 0.2286, None)))
    job = feed(window, "trials")
    assert [(t.backplate_deg, t.gap_low_mm, t.gap_high_mm) for t in job.internal_timing.trials] == [
        (2.5, 0.3175, pytest.approx(0.3302)), (1.2, 0.2667, pytest.approx(0.2794)), (0.3, 0.2286, None),
    ]  # fmt: skip
    table = form_of(window, "internal_timing").edits["trials"].table
    assert [table.item(2, c).text() for c in range(3)] == ["+0.3", "0.2286", ""]

    for action in (SetBoth(0.5, 0.0), ReadLamp("left", 24.0), ReadLamp("right", 25.0)):
        main.model.send(action)
    job = feed(window, "sure-internal")
    sure = job.internal_timing.uncertainty.gap_mm
    assert sure is not None and sure.expanded_uncertainty > 0
    shown = [label.text() for label in form_of(window, "internal_timing")._told]  # noqa: SLF001
    assert any("likely within" in text for text in shown)
    feed(window, "sure-engine")
    assert "does not show timing to the engine" in window.bar.said.text()
    main.panel_of("uncertainty").what.setCurrentIndex(1)
    job = feed(window, "sure-engine")
    assert job.synchronising.uncertainty.left_btdc_deg is not None
    choose_page(window, "internal_timing")
    press(window.page.form.strike)
    assert read_job(window.model.store.path).internal_timing.uncertainty.gap_mm is None


def test_teeth_marks_and_synchronising(open_job):
    window = open_job()
    main = main_of(window)
    for action in (ReadLamp("left", 22.0), ReadLamp("right", 24.5), PaintMarks()):
        main.model.send(action)
    job = feed(window, "marks")
    assert job.marks.disc_marked and not job.marks.engine_marked and job.marks.magneto_from_disc_teeth == 0
    job = feed(window, "teeth")
    shift = job.tooth_shift
    assert (shift.reads_btdc_deg, shift.wanted_btdc_deg, shift.side) == (pytest.approx(22.0), 25.0, "left")
    # The second move of the list, if that is the one chosen there.
    main.tabs.setCurrentIndex(1)
    main.timing.plan.table.selectRow(1)
    other = feed(window, "teeth").tooth_shift
    assert (other.planned_magneto_teeth, other.planned_disc_teeth) != (
        shift.planned_magneto_teeth, shift.planned_disc_teeth,
    )  # fmt: skip
    main.model.send(MoveTeeth(shift.planned_magneto_teeth, shift.planned_disc_teeth))
    job = feed(window, "moved")
    assert job.tooth_shift.moved_magneto_teeth == shift.planned_magneto_teeth
    assert job.tooth_shift.result_btdc_deg is None
    assert job.tooth_shift.planned_btdc_deg == pytest.approx(other.planned_btdc_deg)
    # The lamp is read again, on the engine.
    main.model.send(ReadLamp("left", 24.9))
    job = feed(window, "sync")
    assert job.synchronising.left_btdc_deg == pytest.approx(24.9)
    assert job.synchronising.right_btdc_deg == pytest.approx(24.5)


# ---------------------------------------------------------------------- nothing to feed


def test_a_bench_with_nothing_to_feed_says_so_and_changes_nothing(open_job):
    window = open_job("seven-radial")  # a magneto alone
    main = main_of(window)
    before = window.model.store.path.read_bytes()
    if main.model.state.engaged is None:
        for key in ("stroke", "marks", "teeth", "moved", "sync"):
            feed(window, key)
            assert "not on an engine" in window.bar.said.text(), key
    # A plate and screw so set that the contacts never open.
    main.model.send(SetBoth(0.0, main.model.state.magneto.contact_screw.range_deg[1]))
    for key in ("found", "found-read", "left", "lobes"):
        feed(window, key)
        assert "never open and close" in window.bar.said.text(), key
    assert window.model.store.path.read_bytes() == before


def test_another_magneto_on_the_bench_is_not_noted_as_this_one(open_job):
    window = open_job()
    main = main_of(window)
    feed(window, "bench")
    feed(window, "found")
    before = read_job(window.model.store.path)
    main.place("four-opposed")
    feed(window, "found")
    assert (
        "The bench has “" in window.bar.said.text() and "this sheet is of “Seven-cylinder" in window.bar.said.text()
    )
    assert read_job(window.model.store.path) == before
    assert feed(window, "bench").described.name == main.model.state.magneto.name


def test_from_the_main_windows_menu(open_job, open_window, qtbot):
    window = open_job()
    main = main_of(window)
    main.places.go("bench")
    menu = next(a.menu() for a in main.menuBar().actions() if a.text() == "&Job")
    menu.aboutToShow.emit()
    notes = main.menus.notes_menu
    assert [a.text() for a in notes.actions() if not a.isSeparator()] == [f.words for f in FEEDS]
    main.model.send(SetBoth(0.5, 0.0))
    next(a for a in notes.actions() if a.text() == "As found").trigger()
    assert window.page_name == "as_found" and window.bar.said.text().startswith("✓ Noted")
    window.close()
    next(a for a in notes.actions() if a.text() == "As found").trigger()
    assert "No job sheet is open" in main.statusBar().currentMessage()


def test_every_feed_is_in_both_menus_and_on_a_page(open_job):
    window = open_job()
    assert [a.text() for a in window.menus.note_actions] == [f.words for f in FEEDS]
    for wanted in FEEDS:
        choose_page(window, wanted.page)
        assert window.page.feeds.buttons[wanted.key].isVisible()
    assert len({f.key for f in FEEDS}) == len(FEEDS) and {f.page for f in FEEDS} <= set(PAGES)


# ---------------------------------------------------------------------- recent, earlier sheets


def test_recent_sheets(open_window, tmp_path):
    main = open_window()
    room = main.work
    room._folder = tmp_path / "place"  # noqa: SLF001
    for name in ("a", "b"):
        room.new(tmp_path / f"{name}-job.json").close()
    main.fill_job_menus()
    assert [a.text() for a in main.menus.recent_jobs.actions()] == ["b-job.json", "a-job.json"]
    (tmp_path / "b-job.json").unlink()
    main.fill_job_menus()
    assert [a.text() for a in main.menus.recent_jobs.actions()] == ["a-job.json"]
    main.menus.recent_jobs.actions()[0].trigger()
    room.sheets[-1].close()


def test_earlier_sheets_side_by_side_drift_and_reminder(open_job, tmp_path, qtbot, monkeypatch):
    # Left at 0.25 mm each time and found 0.01 mm smaller after every 100 h: it moves −0.01 mm in 100 h. Read to
    # ±0.005 mm, which keeps it surely within 0.20 mm to 0.26 mm for now.
    for n, hours in enumerate((100.0, 200.0, 300.0)):
        made = of_magneto(hours, None if n == 0 else 0.24, 0.25, day=f"202{n}-05-01")
        made = change_in(made, "reading_errors", gap_mm=0.005)
        write_model(tmp_path / f"{n}-job.json", made)
    write_model(tmp_path / "other-job.json", change_in(of_magneto(50.0, 0.2, 0.3), "magneto", serial="N 8"))
    (tmp_path / "broken-job.json").write_text("{", encoding="utf-8")
    now = of_magneto(400.0, 0.24, 0.25, day="2026-05-01")
    now = change_in(now, "reading_errors", gap_mm=0.005)
    now = change_in(now, "next_check", day=(datetime.date.today() + datetime.timedelta(days=3)).isoformat())
    write_model(tmp_path / "now-job.json", now)
    threads = []
    really = history.earlier_jobs

    def noted(*args, **kwargs):
        threads.append(threading.current_thread())
        return really(*args, **kwargs)

    monkeypatch.setattr("magview.ui.work.history.earlier_jobs", noted)
    window = open_job(path=tmp_path / "now-job.json")
    qtbot.waitUntil(lambda: bool(window.history.found) and not window.history.worker.busy)
    assert threads and threading.main_thread() not in threads
    # A reminder without being asked: due in three days.
    assert "in 3 days" in window.bar.said.text()
    assert "3 found" in window.contents.list.item(PAGES.index(HISTORY)).text()
    choose_page(window, HISTORY)
    page = window.history
    assert [page.table.words(r, 1) for r in range(4)] == ["100", "200", "300", "400"]
    assert "Passed over: broken-job.json" in page.refused.text()
    assert "The gap moved -0.010 mm in 100 h" in page.told.text().replace("−", "-")
    assert "in 3 days" in page.reminder.text() and page.reminder.isVisible()
    sheet = page._sheet  # noqa: SLF001
    assert sheet.isVisible()
    qtbot.waitUntil(lambda: len(sheet._left[0].getData()[0]) == 4)  # noqa: SLF001
    assert list(sheet._found[0].getData()[0]) == [200.0, 300.0, 400.0]  # noqa: SLF001
    assert list(sheet._left[0].getData()[1]) == pytest.approx([0.25] * 4)  # noqa: SLF001
    hours, value = sheet._lines[0].getData()  # noqa: SLF001
    # Straight on from where it was left: 0.25 − 0.0001 per hour.
    assert np.allclose(value, 0.25 - 1e-4 * (np.asarray(hours) - 400.0), atol=1e-9)
    low, high = (band.getData()[1] for band in sheet._bands[0])  # noqa: SLF001
    assert np.all(low < value) and np.all(value < high)
    assert [line.value() for line in sheet._limits[0]] == [0.2, 0.26]  # noqa: SLF001
    words = sheet.words_at(0, 500.0, 0.24)
    assert "at 500 h: gap 0.240 mm, between" in words
    assert sheet.words_at(2, 500.0, 25.0) == "", "nobody read the lamp"
    out = tmp_path / "drift.csv"
    sheet.save_to(out)
    assert out.read_text(encoding="utf-8").startswith("magneto hours [h],largest gap found [mm]")
    # They go into the printed sheet unless that is not wanted.
    assert window.drift is not None
    window.menus.with_earlier.trigger()
    assert window.drift is None
    # Another folder, and a sheet that cannot be told apart.
    (tmp_path / "empty").mkdir()
    page.look_in(tmp_path / "empty")
    qtbot.waitUntil(lambda: not page.worker.busy)
    assert page.found == [] and not sheet.isVisible()
    write(window, "magneto", "serial", "")
    choose_page(window, HISTORY)
    qtbot.waitUntil(lambda: not page.worker.busy)
    assert "no serial number on this sheet" in page.where.text()


def test_the_firing_over_the_hours_is_drawn_and_told(open_job, tmp_path, qtbot):
    # Left at 25.2° and found at 24.9° after every 100 h: 0.3° later in 100 h.
    for n in range(4):
        made = fires(of_magneto(100.0 * n, None, 0.25), 24.9 if n else None, 25.2)
        write_model(tmp_path / f"{n}-job.json", made)
    window = open_job(path=tmp_path / "3-job.json", size=(853, 480))
    choose_page(window, HISTORY)
    qtbot.waitUntil(lambda: window.history.table.row_count() == 4)
    sheet = window.history._sheet  # noqa: SLF001
    qtbot.waitUntil(lambda: len(sheet._left[2].getData()[0]) == 4)  # noqa: SLF001
    assert list(sheet._found[2].getData()[1]) == pytest.approx([24.9] * 3)  # noqa: SLF001
    hours, value = sheet._lines[2].getData()  # noqa: SLF001
    assert np.allclose(value, 25.2 - 3e-3 * (np.asarray(hours) - 300.0), atol=1e-9)
    # 25° ± 1° by the sheet's limits.
    assert [line.value() for line in sheet._limits[2]] == [24.0, 26.0]  # noqa: SLF001
    assert "at 400 h: fires 24.90° before top dead centre, between" in sheet.words_at(2, 400.0, 25.0)
    assert [name for name, _ in sheet.table()][-2:] == ["fires found [crank deg BTDC]", "fires left [crank deg BTDC]"]
    assert window.page.horizontalScrollBar().maximum() == 0


def test_an_earlier_sheet_opens_by_return(open_job, tmp_path, qtbot):
    write_model(tmp_path / "0-job.json", of_magneto(100.0, None, 0.25))
    write_model(tmp_path / "now-job.json", of_magneto(200.0, 0.24, 0.25))
    window = open_job(path=tmp_path / "now-job.json")
    main = main_of(window)
    choose_page(window, HISTORY)
    qtbot.waitUntil(lambda: window.history.table.row_count() == 2)
    window.history.table.setFocus()
    window.history.table.choose_row(0)
    QTest.keyClick(window.history.table, Qt.Key.Key_Return)
    assert [w.model.store.path.name for w in main.work.sheets] == ["now-job.json", "0-job.json"]


def test_how_well_it_is_read_is_entered_beside_the_drift_and_narrows_it(open_job, tmp_path, qtbot):
    write_model(tmp_path / "0-job.json", of_magneto(100.0, None, 0.25))
    write_model(tmp_path / "now-job.json", of_magneto(200.0, 0.24, 0.25))
    window = open_job(path=tmp_path / "now-job.json")
    choose_page(window, HISTORY)
    page = window.history
    qtbot.waitUntil(lambda: page.table.row_count() == 2)
    assert "The gap may be out of its limits already at 200 h" in page.told.text(), "0.25 of 0.26 mm, by blades"
    assert "blades in steps of 0.001 in ±0.015 mm" in page.usual.text()
    edit = page.errors.edits["gap_mm"]
    edit.setFocus()
    edit.selectAll()
    QTest.keyClicks(edit, "0.003")
    QTest.keyClick(edit, Qt.Key.Key_Tab)
    assert window.model.job.reading_errors.gap_mm == 0.003
    assert "already" not in page.told.text() and "The gap may leave its limits from" in page.told.text()
