"""The second half of the job, in a process of its own: ``python -m tests.journeys.job_next_day SHEET PDF``."""

from __future__ import annotations

import os
import sys
from pathlib import Path

os.environ["QT_QPA_PLATFORM"] = "offscreen"

from PySide6.QtCore import Qt  # noqa: E402, RUF100
from PySide6.QtTest import QTest  # noqa: E402, RUF100
from PySide6.QtWidgets import QApplication, QFileDialog, QInputDialog, QLineEdit  # noqa: E402, RUF100

from magview.job.checklists import checks  # noqa: E402, RUF100
from magview.job.derived import lamp_should_read_deg  # noqa: E402, RUF100
from magview.job.library import read_job  # noqa: E402, RUF100
from magview.ui.work.sheet_page import END  # noqa: E402, RUF100
from tests.job_windows import choose_page, form_of, pick, press, tick, write  # noqa: E402, RUF100
from tests.journeys.job_hands import Mechanic, chosen_file, open_bench, wait_for  # noqa: E402, RUF100
from tests.magnetos import on_the_published_coupling  # noqa: E402, RUF100


def main() -> None:
    path, pdf = (Path(a) for a in sys.argv[1:3])
    app = QApplication([])
    hands = Mechanic(open_bench(on_the_published_coupling()))
    QFileDialog.getOpenFileName = chosen_file(path)
    QFileDialog.getSaveFileName = chosen_file(pdf)
    hands.menu(hands.main, Qt.Key.Key_J, Qt.Key.Key_O)
    sheet = hands.sheet
    hands.at_sheet()

    # Yesterday's last step is taken back, and done again.
    assert read_job(path).internal_timing.note == "Set twice."
    assert sheet.menus.undo_action.text() == "&Undo: Setting, as left: Note"
    QTest.keyClick(sheet, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    assert read_job(path).internal_timing.note == ""
    QTest.keyClick(sheet, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier | Qt.KeyboardModifier.ShiftModifier)
    assert read_job(path).internal_timing.note == "Set twice."

    # The bench is set as the sheet says it was left, and the lamp read again.
    left = read_job(path).internal_timing
    panel = hands.main.panel
    hands.spin(panel.plate, f"{left.backplate_deg}")
    hands.spin(panel.screw, f"{left.screw_deg}".replace(".", ","))
    hands.note("lobes")
    hands.done("lobes")
    hands.at_bench()
    hands.tab("timing")
    timing = hands.main.timing
    hands.spin(timing.lamp.reads["right"], "24,5")
    # The contacts were set anew, so that the lamp reads something else than yesterday: as an engine would have it, to
    # half a degree. The last one read is the one in view, and planned for.
    should = lamp_should_read_deg(read_job(path))
    hands.spin(timing.lamp.reads["left"], f"{round(2 * should) / 2:g}".replace(".", ","))

    # Teeth: planned, moved one at a time, read again.
    hands.note("teeth")
    hands.at_bench()
    hands.main.tabs.currentWidget().ensureWidgetVisible(timing.plan.table)
    first = timing.plan.table.visualRect(timing.plan.table.model().index(0, 0)).center()
    QTest.mouseClick(timing.plan.table.viewport(), Qt.MouseButton.LeftButton, pos=first)
    presses = 0
    while timing.plan.next.isEnabled():
        hands.button(timing.plan.next)
        presses += 1
        assert presses <= 40
    hands.note("moved")
    job = read_job(path)
    moved = abs(job.tooth_shift.moved_magneto_teeth) + abs(job.tooth_shift.moved_disc_teeth)
    assert presses == moved > 0
    # The reading of yesterday would not do.
    write(sheet, "tooth_shift", "reads_btdc_deg", f"{job.as_found.left_btdc_deg:g}")
    verdict = form_of(sheet, "tooth_shift").verdicts["reads_btdc_deg"]
    assert verdict.text() == "✗ OUT OF DATE, NOT JUDGED", verdict.text()
    QTest.keyClick(sheet, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    # Where it fires now is read, not reckoned: the stage waits for it.
    press(sheet.bar.done)
    assert "missing: fires, afterwards" in sheet.bar.said.text(), sheet.bar.said.text()
    write(sheet, "tooth_shift", "result_btdc_deg", "25")
    assert "✓ in limits" in form_of(sheet, "tooth_shift").verdicts["result_btdc_deg"].text()
    hands.done("tooth_shift")
    hands.at_bench()
    hands.tab("timing")
    hands.spin(timing.lamp.reads["left"], "25")
    hands.note("sync")
    pick(sheet, "synchronising", "finger_at_no_1", True)
    hands.done("synchronising")

    # Closing checks, ground run, remarks; the run is put off, for a reason, and then made after all.
    for field in checks(sheet.model.job.closing):
        tick(sheet, "closing", field)
    press(sheet.bar.done)
    assert "missing: lead proved again, switch off: grounded" in sheet.bar.said.text(), sheet.bar.said.text()
    for field in ("lead_grounded_switch_off", "other_lead_grounded_switch_off"):
        pick(sheet, "closing", field, True)
        pick(sheet, "closing", field.replace("off", "on"), False)
    hands.done("closing")
    choose_page(sheet, "ground_run")
    press(sheet.bar.skip)
    dialog = next(d for d in sheet.findChildren(QInputDialog) if d.isVisible())
    QTest.keyClicks(dialog.findChild(QLineEdit), "Rain all day long")
    QTest.keyClick(dialog.findChild(QLineEdit), Qt.Key.Key_Return)
    assert read_job(path).ground_run.reason == "Rain all day long"
    choose_page(sheet, "ground_run")
    press(sheet.bar.again)
    for field, text in (("run_rpm", "1700"), ("drop_left_rpm", "60"), ("drop_right_rpm", "130")):
        write(sheet, "ground_run", field, text)
    assert "✗ OUT OF LIMITS" in form_of(sheet, "ground_run").verdicts["drop_right_rpm"].text()
    write(sheet, "ground_run", "drop_right_rpm", "75")
    for field, value in (("runs_left", "smooth"), ("runs_right", "smooth"), ("dead_cut_checked", True)):
        pick(sheet, "ground_run", field, value)
    hands.done("ground_run")
    write(sheet, "remarks", "text", "Gap to be looked at again at the next check.")
    hands.done("remarks")

    # Next check and signature.
    write(sheet, "next_check", "hours_h", "462")
    choose_page(sheet, END)
    page = sheet.page
    assert page.told.text() == "○ Not signed."
    for field, text in (("who", "A. Person (invented)"), ("licence_no", "X-0000"), ("day", "2026-10-15")):
        page.ensureWidgetVisible(page.edits[field])
        page.edits[field].setFocus()
        QTest.keyClicks(page.edits[field], text)
    page.ensureWidgetVisible(page.sign_button)
    press(page.sign_button)
    assert page.told.text().startswith("✓ Finished"), page.told.text()

    # Print, by the menu.
    hands.menu(sheet, Qt.Key.Key_R, Qt.Key.Key_A)
    assert sheet.bar.said.text().startswith("✓ Printed"), sheet.bar.said.text()
    sheet.close()
    wait_for(lambda: not hands.main.work.sheets)
    hands.main.close()
    del app


if __name__ == "__main__":
    main()
