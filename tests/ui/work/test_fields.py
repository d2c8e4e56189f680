"""The job sheet: every field entered, what is no value said beside it, verdicts while typing."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLabel

from magview.forms.entry import Kind
from magview.job.checklists import Stage
from magview.job.entries import HEAD_FIELDS, HEAD_PARTS, entries_in
from magview.job.library import read_job
from magview.job.sheet import STAGES, change_in
from magview.ui.work.sheet_page import PAGES
from tests.counts import sampled
from tests.job_windows import form_of, model_of, pick, press, tick, value_in, write
from tests.wording import says

PARTS = ("", *HEAD_PARTS, *STAGES, "next_check")
NOT_TYPED = {"state", "reason", "uncertainty"}
"""Buttons set the first two; the third is computed, and noted from the bench as a whole."""


@pytest.mark.parametrize("part", sampled(PARTS, 2))
def test_every_field_of_every_part_can_be_entered_and_is_in_the_file_at_once(open_job, part):
    window = open_job()
    path = window.model.store.path
    known = {e.name: e for e in entries_in(part, model_of(part))}
    declared = set(HEAD_FIELDS) if part == "" else set(model_of(part).model_fields) - NOT_TYPED
    assert set(known) - NOT_TYPED == declared
    # Gaps first the smaller, then the larger, as a file must have them.
    for n, (field, entry) in enumerate(known.items(), 1):
        match entry.kind:
            case Kind.NUMBER | Kind.WHOLE:
                # A decimal comma, but no part of a tooth.
                teeth = field.endswith("_teeth")
                write(window, part, field, f"{n}" if teeth else f"{n},25")
                assert value_in(path, part, field) == pytest.approx(n if teeth else n + 0.25)
            case Kind.TICK:
                before = value_in(path, part, field)
                tick(window, part, field)
                assert value_in(path, part, field) is not before
            case Kind.CHOICE:
                for value, _ in reversed(entry.options):
                    pick(window, part, field, value)
                    assert value_in(path, part, field) == value
            case Kind.DAY:
                write(window, part, field, "2026-02-28")
                assert value_in(path, part, field) == "2026-02-28"
            case Kind.LINE | Kind.TEXT:
                write(window, part, field, "a few words")
                assert value_in(path, part, field) == "a few words"
            case Kind.ROWS:
                _enter_rows(window, part, field)
    assert window.model.store.trouble is None


def _enter_rows(window, part: str, field: str) -> None:
    edit = form_of(window, part).edits[field]
    path = window.model.store.path
    for row in range(2):
        press(edit.add)
        for place, column in enumerate(edit.columns):
            edit.table.setCurrentCell(row, place)
            first, *rest = f"{row},{place + 1}"
            QTest.keyClick(edit.table, first)  # typing opens the cell; F2 is the list of stages here
            editor = edit.table.viewport().focusWidget() or QApplication.focusWidget()
            QTest.keyClicks(editor, "".join(rest))
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
    ("typed", "mm"), sampled([("9 thou", 9 * 0.0254), ("0,23", 0.23), ("0.009in", 0.2286), (" .25 mm ", 0.25)], 2)
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
    write(window, "", "day", "30.2.2026")
    assert "is not a date: write it as" in form_of(window, "").verdicts["day"].text()
    write(window, "", "day", "28.2.2026")
    assert window.model.job.day == "2026-02-28"
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
    assert says("✗ begun; out of limits") in window.contents.list.item(PAGES.index("internal_timing")).text()
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


def test_all_stage_fields_have_an_entry_of_some_kind():
    """A declaration that no entry is known for must be seen here, and not at a user's."""
    for name in STAGES:
        fields = set(model_of(name).model_fields) - {"state", "reason"}
        assert {e.name for e in entries_in(name, model_of(name))} == fields
    assert set(Stage.model_fields) == {"state", "reason", "note", "by"}
