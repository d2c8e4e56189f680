"""Instruments chosen for a stage through the window: typed, kept, offered again."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from tests.job_windows import choose_page
from tests.wording import says


def click(button):
    QTest.mouseClick(button, Qt.MouseButton.LeftButton)


def test_instruments_are_typed_once_and_offered_at_the_next_stage(open_job):
    window = open_job()
    window.model.step(lambda job: job.model_copy(update={"day": "2026-11-25"}), "day")
    choose_page(window, "as_found")
    dialog = window.choose_instruments("as_found")
    cells = {0: "Blades 17", 1: "K-12", 2: "31.13.2026"}
    for column, text in cells.items():
        dialog.table.item(0, column).setText(text)
    click(dialog.take)
    assert dialog.isVisible() and "31.13.2026" in dialog.said.text()
    dialog.table.item(0, 2).setText("30 Jun 2026")
    click(dialog.take)
    job = window.model.job
    assert job.as_found.instruments == "Blades 17" and job.instruments[0].due == "2026-06-30"
    form = window.page.form
    window.model.set_value("as_found", "gap_mm", 0.33, "gap")
    assert says("by {instrument}", instrument="Blades 17") in form.verdicts["gap_mm"].text()
    assert any("2026-06-30" in label.text() for label in form._told), "overdue is said on the screen"  # noqa: SLF001
    choose_page(window, "internal_timing")
    assert window.page.again.text() == says("As before: {instruments}", instruments="Blades 17")
    click(window.page.again)
    assert window.model.job.internal_timing.instruments == "Blades 17"
    assert not window.page.again.isVisible()
    again = window.choose_instruments("contacts")
    assert again.table.item(0, 0).text() == "Blades 17", "the list is kept"
    assert again.table.item(0, 0).checkState() == Qt.CheckState.Checked
    again.reject()
