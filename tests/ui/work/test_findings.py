"""What a mechanic at the job sheet must not be told, and must be told, by real keys and clicks."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QInputDialog, QLineEdit

from magview.job.checklists import checks
from magview.job.derived import lamp_should_read_deg
from magview.job.feeds import FEEDS
from magview.job.judge import progress, verdicts
from magview.job.library import read_job
from magview.job.sheet import change_in
from magview.spec.files import write_model
from magview.ui.work.sheet_page import END, PAGES
from tests.job.sheets import demo, marked, safe, signed_earlier
from tests.job_windows import choose_page, form_of, front, pick, press, tick, write
from tests.wording import says


def colour(label) -> str:
    return label.palette().windowText().color().name()


def state(window, name: str) -> str:
    return window.contents.list.item(PAGES.index(name)).text().splitlines()[1].strip()


def made_safe(window) -> None:
    """Made safe, and the other magneto's lead proved."""
    job = safe(window.model.job)
    own = {"meter_grounded_switch_off": None, "meter_grounded_switch_on": None}
    window.model.store.commit(change_in(job, "switch_lead", state="open", **own), "made safe")


def ready(window) -> None:
    """Made safe, both leads proved, the coupling marked."""
    window.model.store.commit(marked(safe(window.model.job)), "ready")


# ---------------------------------------------------------------------- a magneto that is live


def test_a_magneto_live_with_the_switch_off_is_a_loud_danger_on_every_page(open_job):
    window = open_job()
    made_safe(window)
    assert not window.danger.isVisible()
    pick(window, "switch_lead", "meter_grounded_switch_on", False)
    pick(window, "switch_lead", "meter_grounded_switch_off", False)
    words = window.danger.words
    assert window.danger.isVisible() and words.text().startswith(
        "⚠ WARNING: THIS MAGNETO IS LIVE WITH THE SWITCH OFF"
    )
    assert words.font().bold() and colour(words) == window.look.theme.bad
    assert window.bar.missing.text().startswith("✗ Nothing is missing, but 1 reading out of limits or not as it must")
    press(window.bar.done)
    # Recorded as done, and never in green.
    assert read_job(window.model.store.path).switch_lead.state == "done"
    assert window.bar.said.text() == (
        "✗ Prove both switch leads is marked as done, with 1 reading out of limits or not as it must be."
    )
    assert colour(window.bar.said) == window.look.theme.bad
    assert state(window, "switch_lead") == "✗ done, but 1 reading out of limits or not as it must be"
    for name in PAGES:
        choose_page(window, name)
        assert window.danger.isVisible(), name
    choose_page(window, "switch_lead")
    assert window.bar.missing.text() == "✗ Done, but 1 reading out of limits or not as it must be."
    pick(window, "switch_lead", "meter_grounded_switch_off", True)
    assert not window.danger.isVisible() and window.bar.missing.text() == "✓ Done."


def test_done_with_readings_found_out_of_limits_is_not_plainly_done(open_job, tmp_path):
    job = change_in(demo(), "as_found", state="open")
    write_model(tmp_path / "b-job.json", change_in(job, "as_found", gap_mm=0.05))
    window = open_job(path=tmp_path / "b-job.json")
    form_of(window, "as_found")
    count = sum(v.stage == "as_found" and not v.ok for v in verdicts(window.model.job))
    press(window.bar.done)
    assert window.bar.said.text() == f"✓ Done: As found; {count} readings found out of limits."
    assert colour(window.bar.said) != window.look.theme.good
    assert state(window, "as_found") == f"△ done; {count} readings found out of limits"
    choose_page(window, "as_found")
    assert window.bar.missing.text() == f"△ Done; {count} readings found out of limits."
    assert not [v for v in progress(window.model.job).out if v.stage == "as_found"], "it is not judged by that"


# ---------------------------------------------------------------------- only what was read


def test_a_lamp_that_says_what_the_field_began_with_is_a_reading(open_job):
    window = open_job()
    main = window.window()
    main.tabs.setCurrentIndex(1)
    window.note(next(f for f in FEEDS if f.key == "found"))
    assert "the setting it began with" in window.bar.said.text()
    assert read_job(window.model.store.path).as_found.left_btdc_deg is None
    spin = main.timing.lamp.reads["left"]
    typed = spin.text()
    spin.setFocus()
    spin.selectAll()
    QTest.keyClicks(spin.lineEdit(), typed)
    QTest.keyClick(spin.lineEdit(), Qt.Key.Key_Return)
    window.note(next(f for f in FEEDS if f.key == "found"))
    found = read_job(window.model.store.path).as_found
    assert (found.left_btdc_deg, found.right_btdc_deg, found.gap_mm) == (25.0, None, None)
    # Only looked at, and left: nobody has read anything.
    right = main.timing.lamp.reads["right"]
    right.setFocus()
    QTest.keyClick(right.lineEdit(), Qt.Key.Key_Tab)
    window.note(next(f for f in FEEDS if f.key == "found"))
    assert read_job(window.model.store.path).as_found.right_btdc_deg is None
    # A plate that stands where the bench began, typed in as such.
    main.tabs.setCurrentIndex(0)
    plate = main.panel.plate
    typed = plate.text()
    plate.setFocus()
    plate.selectAll()
    QTest.keyClicks(plate.lineEdit(), typed)
    QTest.keyClick(plate.lineEdit(), Qt.Key.Key_Return)
    window.note(next(f for f in FEEDS if f.key == "found"))
    found = read_job(window.model.store.path).as_found
    assert found.backplate_deg == main.model.state.backplate_deg and found.gap_mm is not None


# ---------------------------------------------------------------------- timing


def test_fires_as_typed_in_wanted_and_yet_out_of_the_sheets_limits(open_job):
    window = open_job()
    ready(window)
    for field, text in (("left_btdc_deg", "25"), ("timing_tolerance_deg", "1")):
        write(window, "limits", field, text)
    write(window, "tooth_shift", "result_btdc_deg", "22")
    verdict = form_of(window, "tooth_shift").verdicts["result_btdc_deg"]
    assert verdict.text() == "✗ OUT OF LIMITS (24.00° to 26.00°)", "Wanted is blank, and the limits judge"
    write(window, "tooth_shift", "wanted_btdc_deg", "22")
    assert verdict.text() == "✗ OUT OF LIMITS (24.00° to 26.00°)"
    told = [label.text() for label in form_of(window, "tooth_shift")._told]  # noqa: SLF001
    assert any(text.startswith("✗ The timing wanted") for text in told)
    write(window, "tooth_shift", "wanted_btdc_deg", "25,5")
    assert not any("wanted" in label.text() for label in form_of(window, "tooth_shift")._told)  # noqa: SLF001


def test_a_contradictory_tooth_shift_is_said_and_not_done_in_green(open_job):
    window = open_job()
    ready(window)
    window.note(next(f for f in FEEDS if f.key == "bench"))
    for field, text in (
        ("reads_btdc_deg", "22"), ("wanted_btdc_deg", "25"), ("planned_magneto_teeth", "3"),
        ("planned_disc_teeth", "-3"), ("moved_magneto_teeth", "3"), ("moved_disc_teeth", "3"),
        ("result_btdc_deg", "25.2"),
    ):  # fmt: skip
        write(window, "tooth_shift", field, text)
    told = [label.text() for label in form_of(window, "tooth_shift")._told]  # noqa: SLF001
    assert any(text.startswith("✗ Teeth and readings contradict each other") for text in told)
    press(window.bar.done)
    assert window.bar.said.text().startswith(
        "✗ Tooth shift, lamp again is marked as done, with 1 point to be cleared up"
    )
    assert colour(window.bar.said) == window.look.theme.bad
    assert state(window, "tooth_shift").startswith("✗ done, but 1 point to be cleared up")


# ---------------------------------------------------------------------- boxes, requirements


def test_a_tick_taken_away_leaves_nothing_answered(open_job):
    window = open_job()
    tick(window, "cautions", "wheels_chocked")
    assert read_job(window.model.store.path).cautions.wheels_chocked is True
    tick(window, "cautions", "wheels_chocked")
    assert read_job(window.model.store.path).cautions.wheels_chocked is None
    tick(window, "", "invented")
    tick(window, "", "invented")
    assert read_job(window.model.store.path).invented is False


def test_a_drop_without_a_limit_is_not_judged_and_says_so(open_job):
    window = open_job()
    write(window, "ground_run", "drop_left_rpm", "60")
    verdict = form_of(window, "ground_run").verdicts["drop_left_rpm"]
    assert verdict.text() == "– no limit given, not judged" and colour(verdict) == window.look.theme.text
    choose_page(window, END)
    assert window.page.unjudged.isVisible()
    assert "no limit was given: ground run: drop, running on left" in window.page.unjudged.text()
    write(window, "limits", "drop_rpm", "100")
    form_of(window, "ground_run")
    assert verdict.text().startswith("✓ in limits")
    choose_page(window, END)
    assert window.page.unjudged.text() == says("No smallest drop was given: only a drop of nothing was looked for.")
    write(window, "limits", "drop_low_rpm", "40")
    choose_page(window, END)
    assert not window.page.unjudged.isVisible()


def test_a_drop_of_nothing_is_as_loud_as_a_live_lead(open_job):
    window = open_job()
    write(window, "ground_run", "drop_right_rpm", "0")
    words = window.danger.words
    assert window.danger.isVisible() and words.text().startswith(
        "⚠ WARNING: NO PROPER DROP WHEN RUNNING ON RIGHT: 0 rpm"
    )
    assert words.font().bold() and colour(words) == window.look.theme.bad
    verdict = form_of(window, "ground_run").verdicts["drop_right_rpm"]
    assert verdict.text() == "✗ OUT OF LIMITS (above 0 rpm)" and colour(verdict) == window.look.theme.bad
    for name in PAGES:
        choose_page(window, name)
        assert window.danger.isVisible(), name
    write(window, "ground_run", "drop_right_rpm", "60")
    assert not window.danger.isVisible()


def test_a_sheet_signed_under_earlier_rules_says_so_on_every_page(open_job, tmp_path):
    write_model(tmp_path / "old-job.json", signed_earlier(change_in(demo(), "ground_run", runs_left=None)))
    window = open_job(path=tmp_path / "old-job.json")
    for name in PAGES:
        choose_page(window, name)
        assert window.danger.notes.isVisible() and not window.danger.words.isVisible(), name
    assert window.danger.notes.text().startswith("Signed under earlier rules: ground run: on left it runs.")
    write(window, "remarks", "text", "changed")
    assert not window.danger.isVisible()


def test_a_lamp_reading_of_before_the_setting_is_not_judged(open_job, tmp_path):
    job = change_in(demo(), "as_found", opening_error_deg=2.4)
    job = change_in(job, "tooth_shift", state="open", reads_btdc_deg=job.as_found.left_btdc_deg)
    write_model(tmp_path / "b-job.json", job)
    window = open_job(path=tmp_path / "b-job.json")
    verdict = form_of(window, "tooth_shift").verdicts["reads_btdc_deg"]
    assert verdict.text() == "✗ OUT OF DATE, NOT JUDGED" and colour(verdict) == window.look.theme.bad
    press(window.bar.done)
    should = f"which should now say {lamp_should_read_deg(job):.2f}° before top dead centre"
    assert should in window.bar.said.text()
    assert read_job(window.model.store.path).tooth_shift.state == "open"


# ---------------------------------------------------------------------- as mechanics write


def test_teeth_and_angles_as_mechanics_write_them(open_job):
    window = open_job()
    path = window.model.store.path
    for field, typed, value in (
        ("moved_magneto_teeth", "3 with", 3), ("moved_disc_teeth", "3 against", -3),
        ("reads_btdc_deg", "22 BTDC", 22.0), ("result_btdc_deg", "2 ATDC", -2.0),
    ):  # fmt: skip
        write(window, "tooth_shift", field, typed)
        assert getattr(read_job(path).tooth_shift, field) == value
    write(window, "tooth_shift", "moved_disc_teeth", "1.5")
    told = form_of(window, "tooth_shift").verdicts["moved_disc_teeth"].text()
    assert "not a whole number of teeth" in told and "3 with or 3 against" in told
    # At the bench as well.
    main = window.window()
    main.tabs.setCurrentIndex(1)
    spin = main.timing.lamp.reads["left"]
    spin.setFocus()
    spin.selectAll()
    QTest.keyClicks(spin.lineEdit(), "22 BTDC")
    QTest.keyClick(spin.lineEdit(), Qt.Key.Key_Return)
    assert main.model.state.engaged.left.reads_btdc_deg == 22.0


# ---------------------------------------------------------------------- refusals


def test_a_refusal_goes_with_its_correction_and_till_then_nothing_is_said_to_be_whole(open_job):
    window = open_job()
    ready(window)
    for field, text in (("first_stop_deg", "41"), ("second_stop_deg", "-39")):
        write(window, "dead_centre", field, text)
    pick(window, "dead_centre", "disc_reset", False)
    pick(window, "dead_centre", "stroke", "compression")
    assert window.bar.missing.text() == says("✓ Nothing is missing.")
    write(window, "dead_centre", "second_stop_deg", "about 39")
    assert "is not an angle" in window.bar.said.text()
    assert window.bar.missing.text().startswith("✗ Not taken yet: Disc at the stop, the other way.")
    press(window.bar.done)
    assert read_job(window.model.store.path).dead_centre.state == "open"
    assert "Not taken yet" in window.bar.said.text() or "is not an angle" in window.bar.said.text()
    # Put right: what was said of it goes, here and beside it.
    write(window, "dead_centre", "second_stop_deg", "-38.5")
    assert window.bar.said.text() == "" and not window.bar.said.isVisible()
    assert "✗" not in form_of(window, "dead_centre").verdicts["second_stop_deg"].text()
    assert window.bar.missing.text() == says("✓ Nothing is missing.")
    # Put back by Escape, or typed back as it was.
    for undo in ("Escape", "-38.5"):
        write(window, "dead_centre", "second_stop_deg", "wide")
        assert window.bar.missing.text().startswith("✗ Not taken yet")
        if undo == "Escape":
            line = form_of(window, "dead_centre").edits["second_stop_deg"]
            line.setFocus()
            QTest.keyClick(line, Qt.Key.Key_Escape)
        else:
            write(window, "dead_centre", "second_stop_deg", undo)
        assert window.bar.said.text() == "" and window.bar.missing.text() == says("✓ Nothing is missing.")
    # A step taken back shows what the sheet has, and nothing waits.
    write(window, "dead_centre", "second_stop_deg", "wide")
    window.undo()
    assert form_of(window, "dead_centre").edits["second_stop_deg"].text() == "-39"
    assert window.bar.missing.text() == says("✓ Nothing is missing.")


def test_teeth_refused_and_corrected_leave_no_message(open_job):
    window = open_job()
    write(window, "tooth_shift", "moved_disc_teeth", "1.5")
    assert "whole number of teeth" in window.bar.said.text()
    write(window, "tooth_shift", "moved_disc_teeth", "3 against")
    assert window.bar.said.text() == ""
    # What a stage was said to lack goes when it is entered.
    press(window.bar.done)
    assert window.bar.said.text()
    write(window, "tooth_shift", "reads_btdc_deg", "22")
    assert window.bar.said.text() == ""


def test_rows_not_taken_are_told_at_the_foot(open_job):
    window = open_job()
    table = form_of(window, "internal_timing").edits["trials"]
    press(table.add)
    assert window.bar.missing.text().startswith("✗ Not taken yet: Trials")
    window.page.ensureWidgetVisible(table.drop)
    press(table.drop)
    assert window.bar.missing.text().startswith("Still missing")


# ---------------------------------------------------------------------- where the work goes on


def test_after_done_and_after_skipping_the_next_pages_first_entry_has_the_keyboard(open_job, qtbot):
    window = open_job()
    choose_page(window, "cautions")
    for field in checks(window.model.job.cautions):
        tick(window, "cautions", field)
    press(window.bar.done)
    assert window.page_name == "switch_lead"
    assert form_of(window, "switch_lead").edits["meter_grounded_switch_off"].hasFocus()
    window.model.store.commit(safe(window.model.job), "both leads proved")
    choose_page(window, "dead_centre")
    press(window.bar.skip)
    dialog = next(d for d in window.findChildren(QInputDialog) if d.isVisible())
    QTest.keyClicks(dialog.findChild(QLineEdit), "single magneto, splined")
    QTest.keyClick(dialog, Qt.Key.Key_Return)
    assert window.page_name == "marks" and window.bar.said.text() == "Skipped: Top dead centre, stroke."
    front(qtbot, window)
    qtbot.waitUntil(form_of(window, "marks").edits["drive_flange_marked"].hasFocus)


def test_the_marks_labels_say_with_rotation_once_and_one_reading_is_one(open_job):
    window = open_job()
    label = form_of(window, "marks").labels["magneto_from_disc_teeth"].text()
    assert label == "Magneto flange's mark from the disc's, with rotation [teeth]"
    assert form_of(window, "tooth_shift").labels["moved_disc_teeth"].text().endswith("[teeth, + with rotation]")
    pick(window, "switch_lead", "meter_grounded_switch_off", False)
    assert window.contents.progress.text().endswith("; 1 reading out")
    pick(window, "switch_lead", "meter_grounded_switch_on", True)
    assert window.contents.progress.text().endswith("; 2 readings out")
