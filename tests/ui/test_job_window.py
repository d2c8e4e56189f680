"""The job sheet's window: every field entered, every step kept, every trouble said in a sentence."""

from __future__ import annotations

import errno
import os
import re
import subprocess
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QHeaderView, QInputDialog, QLabel, QLineEdit, QMessageBox

from magview.job.library import job_path, read_job
from magview.job.parts import Stage
from magview.job.sheet import STAGES, Job, change_in, new_job, sign
from magview.job.store import JobStore
from magview.spec.files import write_model
from magview.ui.job_kinds import HEAD_FIELDS, HEAD_PARTS, entries
from magview.ui.job_window import END, PAGES, PREVIEW
from tests.hands import click
from tests.job.sheets import demo
from tests.job_windows import choose_page, form_of, front, pick, press, tick, write

PARTS = ("", *HEAD_PARTS, *STAGES, "next_check")
NOT_TYPED = {"state", "reason", "uncertainty"}
"""Buttons set the first two; the third is computed, and noted from the bench as a whole."""


def model_of(part: str):
    return Job if part == "" else type(getattr(new_job(), part))


def value_in(path: Path, part: str, field: str):
    job = read_job(path)
    return getattr(job if part == "" else getattr(job, part), field)


# ---------------------------------------------------------------------- every field


@pytest.mark.parametrize("part", PARTS)
def test_every_field_of_every_part_can_be_entered_and_is_in_the_file_at_once(open_job, part):
    window = open_job()
    path = window.model.store.path
    known = {e.field: e for e in entries(part, model_of(part))}
    declared = set(HEAD_FIELDS) if part == "" else set(model_of(part).model_fields) - NOT_TYPED
    assert set(known) - NOT_TYPED == declared
    # Gaps first the smaller, then the larger, as a file must have them.
    for n, (field, entry) in enumerate(known.items(), 1):
        match entry.kind:
            case "number":
                # A decimal comma, but no part of a tooth.
                teeth = field.endswith("_teeth")
                write(window, part, field, f"{n}" if teeth else f"{n},25")
                assert value_in(path, part, field) == pytest.approx(n if teeth else n + 0.25)
            case "check":
                before = value_in(path, part, field)
                tick(window, part, field)
                assert value_in(path, part, field) is not before
            case "flag" | "choice":
                for value in reversed(entry.choices):
                    pick(window, part, field, value)
                    assert value_in(path, part, field) == value
            case "day":
                write(window, part, field, "2026-02-28")
                assert value_in(path, part, field) == "2026-02-28"
            case "line" | "text":
                write(window, part, field, "a few words")
                assert value_in(path, part, field) == "a few words"
            case "rows":
                _enter_rows(window, part, field)
    assert window.model.store.trouble is None


def _enter_rows(window, part: str, field: str) -> None:
    edit = form_of(window, part).edits[field]
    path = window.model.store.path
    for row in range(2):
        press(edit.add)
        for place, column in enumerate(edit.columns):
            edit.table.setCurrentCell(row, place)
            QTest.keyClick(edit.table, Qt.Key.Key_F2)
            editor = edit.table.viewport().focusWidget() or QApplication.focusWidget()
            editor.selectAll()
            QTest.keyClicks(editor, f"{row},{place + 1}")
            QTest.keyClick(editor, Qt.Key.Key_Return)
            QApplication.processEvents()
            assert edit.table.item(row, place).text().endswith(f"{row}.{place + 1}"), column
    found = getattr(getattr(read_job(path), part), field)
    assert len(found) == 2
    for row, model in enumerate(found):
        for place, column in enumerate(edit.columns):
            assert getattr(model, column.field) == pytest.approx(row + (place + 1) / 10)
    edit.table.setCurrentCell(0, 0)
    press(edit.drop)
    assert len(getattr(getattr(read_job(path), part), field)) == 1


@pytest.mark.parametrize(
    ("typed", "mm"), [("9 thou", 9 * 0.0254), ("0,23", 0.23), ("0.009in", 0.2286), (" .25 mm ", 0.25)]
)
def test_lengths_are_typed_with_their_units(open_job, typed, mm):
    # 1 in = 25.4 mm exactly (international yard and pound agreement, 1959).
    window = open_job()
    write(window, "as_found", "gap_mm", typed)
    assert value_in(window.model.store.path, "as_found", "gap_mm") == pytest.approx(mm, abs=1e-12)


def test_what_is_no_value_is_said_beside_it_and_stays_typed(open_job):
    window = open_job()
    form = form_of(window, "as_found")
    for typed, words in (
        ("wide", "is not a length"), ("3 kg", "is not a unit"), ("-1", "-1 is outside 0 to 1000"),
        ("1200", "is outside 0 to 1000"),
    ):  # fmt: skip
        write(window, "as_found", "gap_mm", typed)
        assert form.edits["gap_mm"].text() == typed
        assert words in form.verdicts["gap_mm"].text()
        assert words in window.bar.said.text()
        assert value_in(window.model.store.path, "as_found", "gap_mm") is None
    # Another entry does not wipe it, and Escape does.
    write(window, "as_found", "screw_deg", "-2,5°")
    assert form.edits["gap_mm"].text() == "1200"
    form.edits["gap_mm"].setFocus()
    QTest.keyClick(form.edits["gap_mm"], Qt.Key.Key_Escape)
    assert form.edits["gap_mm"].text() == ""
    write(window, "marks", "disc_from_drive_teeth", "1,5")
    assert "whole number of teeth" in form_of(window, "marks").verdicts["disc_from_drive_teeth"].text()
    write(window, "", "day", "28.2.2026")
    assert "is not a date; write it as" in form_of(window, "").verdicts["day"].text()
    write(window, "limits", "gap_high_mm", "0.2")
    write(window, "limits", "gap_low_mm", "0.3")
    assert "must not be above" in form_of(window, "limits").verdicts["gap_low_mm"].text()


def test_a_reading_left_as_it_was_shown_keeps_its_last_bit(open_job):
    window = open_job()
    window.model.step(lambda job: change_in(job, "as_found", gap_mm=0.22863456789), "x")
    form = form_of(window, "as_found")
    steps = len(window.model.store.steps)
    write(window, "as_found", "gap_mm", form.edits["gap_mm"].text())
    assert value_in(window.model.store.path, "as_found", "gap_mm") == 0.22863456789
    assert len(window.model.store.steps) == steps
    write(window, "as_found", "gap_mm", "")
    assert value_in(window.model.store.path, "as_found", "gap_mm") is None, "an empty field was not read"


def test_the_verdict_stands_beside_the_reading_while_it_is_typed(open_job):
    window = open_job()
    write(window, "limits", "gap_low_mm", "0,2")
    write(window, "limits", "gap_high_mm", "0,26")
    form = form_of(window, "internal_timing")
    edit, verdict = form.edits["gap_mm"], form.verdicts["gap_mm"]
    edit.setFocus()
    QTest.keyClicks(edit, "0,2")
    assert "✓ in limits" in verdict.text() and "0.200 mm" in verdict.text()
    QTest.keyClicks(edit, "7")
    assert "✗ OUT OF LIMITS" in verdict.text()
    assert value_in(window.model.store.path, "internal_timing", "gap_mm") is None, "still being typed"
    QTest.keyClick(edit, Qt.Key.Key_Return)
    assert value_in(window.model.store.path, "internal_timing", "gap_mm") == 0.27
    assert "✗ OUT OF LIMITS" in verdict.text()
    assert "✗ begun; out of limits" in window.contents.list.item(PAGES.index("internal_timing")).text()
    # As found it need not be in limits: a mark of another shape, and no verdict on the work.
    write(window, "as_found", "gap_mm", "0,27")
    assert "△ found out of limits" in form_of(window, "as_found").verdicts["gap_mm"].text()
    assert "out of limits" not in window.contents.list.item(PAGES.index("as_found")).text()


def test_inches(open_job):
    window = open_job()
    write(window, "as_found", "gap_mm", "0,254")
    window.menus.inches_action.trigger()
    form = form_of(window, "as_found")
    assert form.edits["gap_mm"].text() == "0.0100" and "[in]" in form.labels["gap_mm"].text()
    write(window, "as_found", "gap_mm", "0,02")
    assert value_in(window.model.store.path, "as_found", "gap_mm") == pytest.approx(0.508)


def test_what_follows_from_readings_is_shown_and_cannot_be_typed(open_job):
    window = open_job()
    write(window, "dead_centre", "first_stop_deg", "40")
    write(window, "dead_centre", "second_stop_deg", "-36")
    form = form_of(window, "dead_centre")
    # Halfway between the stops (common practice).
    assert [label.text() for label in form.findChildren(QLabel)].count("2.00°") == 1


# ---------------------------------------------------------------------- stages


def test_states_of_stages_in_words_and_signs(open_job):
    window = open_job()

    def state(name: str) -> str:
        return window.contents.list.item(PAGES.index(name)).text().splitlines()[1].strip()

    assert {state(name) for name in STAGES} == {"○ not begun"}
    assert window.contents.progress.text() == "0 of 13 stages done or skipped"
    choose_page(window, "cautions")
    press(window.bar.done)
    assert "Cautions and making safe is not done yet; missing: propeller treated as live" in window.bar.said.text()
    for field in [e.field for e in entries("cautions", model_of("cautions")) if e.kind == "check"]:
        tick(window, "cautions", field)
    assert state("cautions") == "◐ nothing missing; not marked done"
    press(window.bar.done)
    assert state("cautions") == "✓ done" and window.page_name == "switch_lead"
    # Proof of the lead comes before everything else, or is skipped for a reason.
    choose_page(window, "ground_run")
    write(window, "ground_run", "run_rpm", "1700")
    press(window.bar.done)
    assert "comes after switch-lead proof" in window.bar.said.text()
    assert state("ground_run").startswith("◐ begun; 3 missing")
    choose_page(window, "switch_lead")
    _skip(window, "   ")
    assert "can be skipped only with a reason" in window.bar.said.text()
    _skip(window, "No lead: magneto on the bench")
    assert state("switch_lead") == "→ skipped: No lead: magneto on the bench"
    assert read_job(window.model.store.path).switch_lead.state == "skipped"
    choose_page(window, "switch_lead")
    assert "No lead" in window.bar.missing.text()
    press(window.bar.again)
    assert state("switch_lead") == "○ not begun"
    # Marked as done, then a confirmation taken back: something is missing again.
    tick(window, "cautions", "wheels_chocked")
    assert state("cautions") == "✗ done, but 1 missing"
    assert "missing in 1" in window.contents.progress.text()


def _skip(window, reason: str) -> None:
    press(window.bar.skip)
    dialog = next(d for d in window.findChildren(QInputDialog) if d.isVisible())
    QTest.keyClicks(dialog.findChild(QLineEdit), reason)
    QTest.keyClick(dialog, Qt.Key.Key_Return)
    QApplication.processEvents()


def test_the_cautions_are_in_sight_on_every_page_and_first(open_job):
    window = open_job()
    for name in PAGES:
        choose_page(window, name)
        assert window.caution.isVisible() and "propeller as live" in window.caution.text()
    assert PAGES[1] == "cautions" == STAGES[0]


def test_signing_and_what_is_missing(open_job):
    window = open_job()
    choose_page(window, END)
    page = window.page
    assert "Not done yet: Cautions and making safe, Switch-lead proof" in page.told.text()
    press(page.sign_button)
    assert "A signature takes a name and a date" in page.refusal.text()
    for field, text in (("who", "A. Person"), ("licence_no", "X-1")):
        page.edits[field].setFocus()
        QTest.keyClicks(page.edits[field], text)
    press(page.today)
    press(page.sign_button)
    job = read_job(window.model.store.path)
    assert (job.signature.who, job.signature.licence_no) == ("A. Person", "X-1") and job.signature.day
    assert page.signed.text() == "✓ Signed; the sheet is as it was signed."
    write(window, "remarks", "text", "one more word")
    choose_page(window, END)
    assert page.signed.text() == "✗ Changed since it was signed."
    assert "✗ changed since signed" in window.contents.list.item(PAGES.index(END)).text()
    press(page.sign_button)
    assert page.signed.text().startswith("✓")
    press(page.clear_button)
    assert read_job(window.model.store.path).signature is None
    assert page.edits["who"].text() == ""


def test_a_finished_sheet_says_so(open_job, tmp_path):
    job = change_in(demo(), "remarks", text="mine")
    path = tmp_path / "b-job.json"
    write_model(path, sign(job, "A. Person", "X-1", "2026-11-25"))
    window = open_job(path=path)
    choose_page(window, END)
    assert window.page.told.text().startswith("✓ Finished")


# ---------------------------------------------------------------------- kept safely


def full_disk(*_args):
    raise OSError(errno.ENOSPC, os.strerror(errno.ENOSPC))


def test_a_full_disk_is_said_and_nothing_is_lost(open_job, monkeypatch):
    window = open_job()
    path = window.model.store.path
    write(window, "ground_run", "run_rpm", "1600")
    assert window.saved.text() == "✓ Saved in a-job.json" and not window.banner.isVisible()
    with monkeypatch.context() as broken:
        broken.setattr(os, "fsync", full_disk)
        write(window, "ground_run", "run_rpm", "1700")
        assert window.banner.isVisible()
        assert window.banner.words.text().startswith("✗ Not saved: a-job.json")
        assert os.strerror(errno.ENOSPC) in window.banner.words.text()
        assert window.saved.text() == "✗ Not saved"
        assert form_of(window, "ground_run").edits["run_rpm"].text() == "1700"
        press(window.banner.retry)
        assert window.banner.isVisible()
        # It cannot be closed by a click as if nothing were the matter.
        window.close()
        assert window.isVisible()
        box = window.findChild(QMessageBox)
        assert "Not saved" in box.text()
        click(next(b for b in box.buttons() if "Go on" in b.text()))
        assert value_in(path, "ground_run", "run_rpm") == 1600.0
    press(window.banner.retry)
    assert not window.banner.isVisible()
    assert value_in(path, "ground_run", "run_rpm") == 1700.0


def test_saved_elsewhere_while_the_disk_is_full(open_job, monkeypatch, tmp_path):
    window = open_job()
    with monkeypatch.context() as broken:
        broken.setattr(os, "fsync", full_disk)
        write(window, "ground_run", "run_rpm", "1700")
    other = tmp_path / "other-job.json"
    window.save_as(other)
    assert not window.banner.isVisible() and window.saved.text() == "✓ Saved in other-job.json"
    write(window, "ground_run", "drop_left_rpm", "60")
    assert (value_in(other, "ground_run", "run_rpm"), value_in(other, "ground_run", "drop_left_rpm")) == (
        1700.0,
        60.0,
    )


def test_a_file_changed_by_another_program_is_not_written_over(open_job):
    window = open_job()
    path = window.model.store.path
    write(window, "ground_run", "run_rpm", "1600")
    theirs = change_in(read_job(path), "ground_run", run_rpm=1500.0)
    path.write_text(path.read_text(encoding="utf-8").replace("1600.0", "1500.0"), encoding="utf-8")
    window.check_file()
    assert "was changed by another program" in window.banner.words.text() and window.banner.reload.isVisible()
    write(window, "ground_run", "run_rpm", "1700")
    assert "was changed by another program and is left as it is" in window.banner.words.text()
    assert value_in(path, "ground_run", "run_rpm") == theirs.ground_run.run_rpm == 1500.0
    press(window.banner.reload)
    box = window.findChild(QMessageBox)
    click(next(b for b in box.buttons() if "Reload" in b.text()))
    assert not window.banner.isVisible()
    assert form_of(window, "ground_run").edits["run_rpm"].text() == "1500"


def test_a_second_writer_only_reads_and_says_so(open_job, tmp_path):
    path = tmp_path / "held-job.json"
    other = JobStore.create(path, new_job("held"))
    window = open_job(path=path)
    assert "Read only: held-job.json is open in another window or program" in window.banner.words.text()
    assert window.saved.text() == "Read only: held-job.json"
    form = form_of(window, "ground_run")
    assert form.edits["run_rpm"].isReadOnly() and not form.edits["dead_cut_checked"].isEnabled()
    assert not window.menus.undo_action.isEnabled() and not window.bar.done.isEnabled()
    # What is changed there is seen here on coming back; once it is closed there, it can be changed here.
    other.commit(change_in(other.job, "ground_run", run_rpm=1650.0), "rpm")
    window.check_file()
    assert form.edits["run_rpm"].text() == "1650"
    assert window.model.store.read_only is not None
    other.close()
    press(window.banner.reload)
    assert not window.banner.isVisible()
    write(window, "ground_run", "run_rpm", "1700")
    assert value_in(path, "ground_run", "run_rpm") == 1700.0


def test_the_same_file_is_opened_once(open_job):
    window = open_job()
    main_room = window.model  # the same window comes to the front, no second one
    again = open_job(path=window.model.store.path)
    assert again is window and again.model is main_room


def test_undo_and_redo_by_keys_also_across_sessions(open_job, qtbot):
    window = open_job()
    path = window.model.store.path
    for text in ("1600", "1700"):
        write(window, "ground_run", "run_rpm", text)
    assert window.menus.undo_action.text() == "&Undo: Ground run: Engine speed"
    edit = form_of(window, "ground_run").edits["run_rpm"]
    edit.setFocus()
    # While something is being typed Ctrl+Z takes that back…
    QTest.keyClicks(edit, "9")
    QTest.keyClick(edit, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    assert edit.text() == "1700" and value_in(path, "ground_run", "run_rpm") == 1700.0
    QTest.keyClick(edit, Qt.Key.Key_Escape)
    window.close()
    # …and a step of the sheet otherwise, in another session, too.
    window = open_job(path=path)
    front(qtbot, window)
    edit = form_of(window, "ground_run").edits["run_rpm"]
    edit.setFocus()
    QTest.keyClick(edit, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    assert edit.text() == "1600" and value_in(path, "ground_run", "run_rpm") == 1600.0
    assert "Undone: Ground run: Engine speed" in window.bar.said.text()
    both = Qt.KeyboardModifier.ControlModifier | Qt.KeyboardModifier.ShiftModifier
    QTest.keyClick(edit, Qt.Key.Key_Z, both)
    assert edit.text() == "1700" and value_in(path, "ground_run", "run_rpm") == 1700.0
    for _ in range(2):
        QTest.keyClick(edit, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    assert edit.text() == ""
    assert not window.menus.undo_action.isEnabled()


def test_the_shipped_sheet_is_looked_at_and_stays_as_it_is(open_window, tmp_path, qtbot):
    main = open_window("seven-radial-left")
    shipped = job_path("seven-radial-left")
    before, beside = shipped.read_bytes(), sorted(shipped.parent.iterdir())
    window = main.jobs.open_shipped()
    front(qtbot, window)
    assert "ships with the program" in window.banner.words.text() and not window.banner.reload.isVisible()
    window.model.reload()
    assert not window.model.writable
    window.save_as(tmp_path / "mine-job.json")
    assert window.model.writable and not window.banner.isVisible()
    write(window, "remarks", "note", "mine")
    assert read_job(tmp_path / "mine-job.json").remarks.note == "mine"
    assert shipped.read_bytes() == before and sorted(shipped.parent.iterdir()) == beside
    window.close()


def test_a_new_sheet_takes_no_file_that_is_there_already(open_window, tmp_path):
    main = open_window()
    path = tmp_path / "there-job.json"
    path.write_text("theirs", encoding="utf-8")
    assert main.jobs.new(path) is None
    assert "is there already" in main.findChild(QMessageBox).text()
    assert path.read_text(encoding="utf-8") == "theirs"
    assert main.jobs.open_path(path) is None  # and is no job sheet either


def test_reports_do_not_take_the_sheets_place(open_job):
    window = open_job()
    before = window.model.store.path.read_bytes()
    window.reports.pdf(window.model.store.path, "a4")
    assert "is the job sheet itself" in window.findChild(QMessageBox).text()
    assert window.model.store.path.read_bytes() == before


def test_preview_has_the_pages_that_are_printed(open_job, tmp_path):
    path = tmp_path / "b-job.json"
    write_model(path, demo())
    window = open_job(path=path)
    choose_page(window, PREVIEW)
    out = tmp_path / "out.pdf"
    window.reports.pdf(out, "a4")
    assert len(window.preview.sheets) == _pages(out) > 1
    sheet = window.preview.sheets[0]
    picture = sheet.grab().toImage()
    ink = sum(
        picture.pixelColor(x, y).lightness() < 100
        for x in range(0, picture.width(), 2) for y in range(0, picture.height(), 2)
    )  # fmt: skip
    assert 0.002 < 4 * ink / (picture.width() * picture.height()) < 0.3, "words and lines on white"
    assert "Left magneto" in window.preview.inner.accessibleDescription()
    assert sheet.height() / sheet.width() == pytest.approx(297 / 210, abs=0.005)  # ISO 216
    window.preview.paper.setCurrentIndex(1)
    assert window.preview.sheets[0].height() / window.preview.sheets[0].width() == pytest.approx(11 / 8.5, abs=0.005)


def _pages(path: Path) -> int:
    told = subprocess.run(["pdfinfo", str(path)], capture_output=True, text=True, check=True).stdout
    return int(re.search(r"Pages:\s+(\d+)", told)[1])


@pytest.mark.parametrize("name", PAGES)
def test_by_keyboard_and_for_a_screen_reader(open_job, name):
    from PySide6.QtGui import QAccessible
    from PySide6.QtWidgets import QAbstractItemView, QCheckBox, QComboBox, QLineEdit, QPlainTextEdit, QPushButton

    window = open_job()
    choose_page(window, name)
    for kind in (QLineEdit, QPlainTextEdit, QComboBox, QCheckBox, QPushButton, QAbstractItemView):
        for widget in window.findChildren(kind):
            if not widget.isVisible() or widget.objectName().startswith("qt_") or isinstance(widget, QHeaderView):
                continue
            found = QAccessible.queryAccessibleInterface(widget).text(QAccessible.Text.Name)
            assert found, widget
            assert widget.focusPolicy() & Qt.FocusPolicy.TabFocus, found


def test_all_stage_fields_have_an_entry_of_some_kind():
    """A declaration that no entry is known for must be seen here, and not at a user's."""
    for name in STAGES:
        fields = set(model_of(name).model_fields) - {"state", "reason"}
        assert {e.field for e in entries(name, model_of(name))} == fields
    assert set(Stage.model_fields) == {"state", "reason", "note", "by"}


def test_at_150_percent_of_1280_by_720_no_page_scrolls_sideways(open_job, tmp_path):
    path = tmp_path / "b-job.json"
    write_model(path, demo())
    window = open_job(path=path, size=(853, 480))
    for name in PAGES:
        choose_page(window, name)
        QApplication.processEvents()
        assert window.page.horizontalScrollBar().maximum() == 0, name
    assert window.width() <= 853
