"""A whole job on the seven-cylinder installation: begun in one process, finished, signed and printed in another."""

from __future__ import annotations

import os
import re
import subprocess
import sys
import unicodedata
from pathlib import Path

import pytest
from pypdf import PdfReader
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QFileDialog

from magview.job.checklists import checks
from magview.job.judge import progress
from magview.job.library import read_job
from magview.job.sheet import CAUTIONS, STAGES, stage_of, title_of
from tests.job_windows import form_of, pick, press, tick, write
from tests.journeys.job_hands import Mechanic, chosen_file
from tests.magnetos import on_the_published_coupling

ROOT = Path(__file__).parents[2]


@pytest.mark.process
def test_a_job_from_the_first_caution_to_the_printed_signature(open_window, tmp_path, monkeypatch):
    path, pdf = tmp_path / "left-job.json", tmp_path / "left.pdf"
    main = open_window(on_the_published_coupling())
    hands = Mechanic(main)
    monkeypatch.setattr(QFileDialog, "getSaveFileName", chosen_file(path))
    hands.menu(main, Qt.Key.Key_J, Qt.Key.Key_N)
    sheet = hands.sheet
    hands.at_sheet()
    _begin(hands)
    _make_safe(hands)
    _as_found(hands)
    _set(hands)
    write(sheet, "internal_timing", "note", "Set twice.")
    sheet.close()
    assert not main.work.sheets
    assert [n for n in STAGES if stage_of(read_job(path), n).state == "done"] == list(STAGES[:7])

    # The next day, another process.
    done = subprocess.run(
        [sys.executable, "-m", "tests.journeys.job_next_day", str(path), str(pdf)],
        capture_output=True, text=True, timeout=240, check=False, cwd=ROOT,
        env={**os.environ, "QT_QPA_PLATFORM": "offscreen"},
    )  # fmt: skip
    assert done.returncode == 0, done.stderr[-3000:]
    job = read_job(path)
    assert progress(job).passed
    # Undo reaches back over both sessions: every step is in the file, the first of them from the first day.
    assert job.history.done == len(job.history.steps) > 40
    _check_pdf(pdf, job)


def _begin(hands: Mechanic) -> None:
    sheet = hands.sheet
    write(sheet, "", "title", "Left magneto, 100 h")
    tick(sheet, "", "invented")
    for part, field, text in (
        ("aircraft", "registration", "X-DEMO"), ("aircraft", "hours_h", "1840"), ("engine", "serial", "INVENTED-E7"),
        ("magneto", "type", "Seven-cylinder practice magneto"), ("magneto", "serial", "INVENTED-M1"),
        ("magneto", "hours_h", "412,5"),
    ):  # fmt: skip
        write(sheet, part, field, text)
    hands.note("bench")
    for field, text in (("drop_low_rpm", "40"), ("drop_rpm", "100"), ("drop_difference_rpm", "40")):
        write(sheet, "limits", field, text)


def _make_safe(hands: Mechanic) -> None:
    sheet = hands.sheet
    pick(sheet, "cautions", "place", "engine")
    for field in checks(sheet.model.job.cautions):
        tick(sheet, "cautions", field)
    write(sheet, "cautions", "manual", "Practice manual, revision 0")
    hands.done("cautions")
    # Lead: the contacts open, then meter and lamp with the plug in and out, the switch off and on.
    hands.at_bench()
    hands.spin(hands.main.panel.rotor, "26")
    hands.tab("lead")
    for _ in range(2):  # the switch is tried, on and off again
        hands.box(hands.main.lead.switch)
    hands.note("lead")
    hands.box(hands.main.lead.plug)
    hands.note("lead")
    hands.box(hands.main.lead.switch)
    hands.note("lead")
    form = form_of(sheet, "switch_lead")
    assert form.verdicts["meter_grounded_switch_on"].text() == "✓ as it must be"
    # Either magneto makes the propeller live: the right one's lead is read with a meter, too.
    for field, grounded in (("other_meter_grounded_switch_off", True), ("other_meter_grounded_switch_on", False)):
        pick(sheet, "switch_lead", field, grounded)
    hands.done("switch_lead")
    hands.box(hands.main.lead.switch)
    hands.box(hands.main.lead.plug)
    # True top dead centre, and the stroke ahead of it.
    hands.tab("timing")
    for spin, text in zip(hands.main.timing.stop.stops, ("41,5", "-38,5"), strict=True):
        hands.main.tabs.currentWidget().ensureWidgetVisible(spin)
        hands.spin(spin, text)
    hands.note("stops")
    hands.spin(hands.main.timing.crank.crank, "-30")
    hands.note("stroke")
    assert read_job(sheet.model.store.path).dead_centre.stroke == "compression"
    press(sheet.bar.done)
    assert "missing: disc then set to zero" in sheet.bar.said.text()
    pick(sheet, "dead_centre", "disc_reset", True)
    hands.done("dead_centre")
    # Marks, before anything is slackened.
    hands.at_bench()
    timing = hands.main.timing
    paint = next(b for b in timing.findChildren(type(timing.plan.next)) if "marks" in b.text())
    hands.button(paint)
    hands.note("marks")
    tick(sheet, "marks", "engine_marked")
    hands.done("marks")


def _as_found(hands: Mechanic) -> None:
    main, sheet = hands.main, hands.sheet
    hands.tab("setting")
    hands.spin(main.panel.plate, "2,5")
    hands.spin(main.panel.screw, "-6")
    hands.tab("timing")
    hands.spin(main.timing.lamp.reads["left"], "22")
    hands.spin(main.timing.lamp.reads["right"], "24,5")
    hands.note("found")
    found = read_job(sheet.model.store.path).as_found
    assert (found.backplate_deg, found.screw_deg) == (2.5, -6.0)
    assert (found.left_btdc_deg, found.right_btdc_deg) == pytest.approx((22.0, 24.5))
    assert "△ found out of limits" in form_of(sheet, "as_found").verdicts["left_btdc_deg"].text()
    hands.done("as_found")
    for field in ("pip_height_mm", "heel_wear_mm"):
        write(sheet, "contacts", field, "0")
    for field in ("clean", "aligned", "felt_oiled"):
        pick(sheet, "contacts", field, True)
    hands.done("contacts")


def _set(hands: Mechanic) -> None:
    main, sheet = hands.main, hands.sheet
    # A trial; then the setting that the bench proposes, which allows for what tightening carries along.
    hands.tab("trials")
    trials = main.panel_of("trials")
    hands.button(trials.note_button)
    hands.note("trials")
    hands.tab("setting")
    hands.note("planned")
    main.model.reduced_motion = True
    hands.button(main.panel.do_it)  # it tightens both screws, too
    hands.note("left")
    form = form_of(sheet, "internal_timing")
    assert "✓ in limits" in form.verdicts["gap_mm"].text()
    assert form.edits["read_after_tightening"].isChecked()
    assert len(read_job(sheet.model.store.path).internal_timing.trials) == 1
    # One slip, taken back by the key.
    write(sheet, "internal_timing", "gap_mm", "12 thou")
    assert read_job(sheet.model.store.path).internal_timing.gap_mm == pytest.approx(12 * 0.0254)
    assert "✗ OUT OF LIMITS" in form.verdicts["gap_mm"].text()
    QTest.keyClick(sheet, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    assert "✓ in limits" in form.verdicts["gap_mm"].text()
    hands.tab("uncertainty")
    hands.button(main.panel_of("uncertainty").take)
    hands.note("sure-internal")
    press(sheet.bar.done)


def _check_pdf(pdf: Path, job) -> None:
    text = "\n".join(page.extract_text() for page in PdfReader(pdf).pages)
    words = " ".join(unicodedata.normalize("NFKC", text).split())  # ligatures apart
    for sentence in CAUTIONS:
        assert " ".join(sentence.split()) in words
    for name in STAGES:
        assert re.search(rf"\d+\. {re.escape(title_of(name))}\s+done", words), name
    for wanted in (
        "Left magneto, 100 h", "X-DEMO", "INVENTED-M1", "A. Person (invented)", "X-0000", "2026-10-15", "Set twice.",
        "Finished; as left, all readings that have limits are within them", "1700 rpm", "60 rpm", "75 rpm", "462 h",
        "22.00° before top dead", "Gap to be looked at again at the next check.", job.signature.covers[:40],
        "INVENTED FOR DEMONSTRATION",
    ):  # fmt: skip
        assert wanted in words, wanted
    assert "Rain" not in words and "OUT OF LIMITS" not in words and "NOT FINISHED" not in words
