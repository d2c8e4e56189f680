"""What was entered once is offered again: by whom, and the manual."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from magview.job.checklists import checks
from magview.job.sheet import change_in
from magview.ui.kit.settings import keep_inches, kept_inches
from tests.job_windows import choose_page
from tests.wording import says


def type_in(line, text):
    line.setFocus()
    line.selectAll()
    QTest.keyClicks(line, text)
    QTest.keyClick(line, Qt.Key.Key_Return)


def test_who_did_it_and_the_manual_are_entered_once(open_job):
    window = open_job()
    ticked = dict.fromkeys(checks(window.model.job.cautions), True)
    window.model.step(lambda job: change_in(job, "cautions", place="engine", **ticked), "ticks")
    choose_page(window, "cautions")
    form = window.page.form
    type_in(form.edits["by"], "A. Person")
    type_in(form.edits["manual"], "Practice manual, rev. 3")
    window.finish_stage()
    sound = {f"{of}meter_grounded_switch_{way}": way == "off" for of in ("", "other_") for way in ("off", "on")}
    window.model.step(lambda job: change_in(job, "switch_lead", **sound), "leads")
    choose_page(window, "switch_lead")
    assert window.model.job.switch_lead.by == "", "nothing is entered by itself"
    window.finish_stage()
    assert window.model.job.switch_lead.by == "A. Person"
    assert says("{said} Done by {who}, as before.", said="", who="A. Person").strip() in window.bar.said.text()
    choose_page(window, "")
    source = next(form for form in window.page.forms() if form.part == "limits").edits["source"]
    source.setFocus()
    QApplication.processEvents()
    assert source.placeholderText() == says("Down: {first}", first="Practice manual, rev. 3")
    QTest.keyClick(source, Qt.Key.Key_Down)
    popup = source.completer().popup()
    assert popup.isVisible()
    QTest.keyClick(popup, Qt.Key.Key_Down)
    QTest.keyClick(popup, Qt.Key.Key_Return)
    assert window.model.job.limits.source == "Practice manual, rev. 3"


def test_the_unit_of_lengths_is_kept():
    assert not kept_inches()
    keep_inches(True)
    assert kept_inches()
    keep_inches(False)
    assert not kept_inches()
