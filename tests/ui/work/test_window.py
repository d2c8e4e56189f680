"""The job sheet as a whole: stages, signature, preview and reports, keyboard, small screens."""

from __future__ import annotations

from pathlib import Path

import pytest
from pypdf import PdfReader
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QFileDialog, QHeaderView, QInputDialog, QLineEdit, QMessageBox

from magview.job.checklists import checks
from magview.job.library import read_job
from magview.job.sheet import STAGES, change_in, title_of
from magview.spec.files import write_model
from magview.ui.work.sheet_page import END, PAGES, PREVIEW
from tests.counts import sampled
from tests.job.sheets import demo, safe, signed
from tests.job_windows import choose_page, press, tick, write
from tests.ui.paper.pdf_reader import bare
from tests.wording import says

# ---------------------------------------------------------------------- stages


def test_states_of_stages_in_words_and_signs(open_job):
    window = open_job()

    def state(name: str) -> str:
        return window.contents.list.item(PAGES.index(name)).text().splitlines()[1].strip()

    assert {state(name) for name in STAGES} == {"○ not begun"}
    assert window.contents.progress.text() == says("{come} of {count} stages done or skipped", come=0, count=13)
    choose_page(window, "cautions")
    press(window.bar.done)
    assert "“Make safe” is not done yet; missing: propeller treated as live" in window.bar.said.text()
    for field in checks(window.model.job.cautions):
        tick(window, "cautions", field)
    assert state("cautions") == says("◐ nothing missing; not marked done")
    press(window.bar.done)
    assert state("cautions") == "✓ done" and window.page_name == "switch_lead"
    # Proof of both leads comes before everything else, and no reason takes its place.
    choose_page(window, "ground_run")
    write(window, "ground_run", "run_rpm", "1700")
    press(window.bar.done)
    assert "comes after “Prove both switch leads”: do that first" in window.bar.said.text()
    assert state("ground_run").startswith("◐ begun; 5 missing")
    for name in ("cautions", "switch_lead"):
        choose_page(window, name)
        press(window.bar.skip)
        assert not window.findChildren(QInputDialog)
        assert f"“{title_of(name)}” cannot be skipped" in window.bar.said.text()
    # Another stage is skipped for a reason that says something.
    choose_page(window, "lobes")
    for short in ("   ", "none"):
        _skip(window, short)
        assert "at least two words and six different letters" in window.bar.said.text()
    _skip(window, "No lobe but one")
    assert state("lobes") == "→ skipped: No lobe but one"
    assert read_job(window.model.store.path).lobes.state == "skipped"
    choose_page(window, "lobes")
    assert "No lobe" in window.bar.missing.text()
    press(window.bar.again)
    assert state("lobes") == "○ not begun"
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
    assert "Not done yet: Make safe, Prove both switch leads" in page.told.text()
    press(page.sign_button)
    assert "A signature takes a name and a date" in page.refusal.text()
    for field, text in (("who", "A. Person"), ("licence_no", "X-1")):
        page.edits[field].setFocus()
        QTest.keyClicks(page.edits[field], text)
    press(page.today)
    press(page.sign_button)
    assert "cannot be signed before “Make safe” and “Prove both switch leads”" in page.refusal.text()
    window.model.store.commit(safe(window.model.job), "made safe")
    page.edits["checked_by"].setFocus()
    QTest.keyClicks(page.edits["checked_by"], "a. person")
    press(page.sign_button)
    assert "is by the person who signs" in page.refusal.text() and read_job(window.model.store.path).signature is None
    page.edits["checked_by"].clear()
    press(page.sign_button)
    job = read_job(window.model.store.path)
    assert (job.signature.who, job.signature.licence_no) == ("A. Person", "X-1") and job.signature.day
    assert page.signed.text() == says("✓ Signed; the sheet is as it was signed.")
    write(window, "remarks", "text", "one more word")
    choose_page(window, END)
    assert page.signed.text() == says("✗ Changed since it was signed.")
    assert says("✗ changed since signed") in window.contents.list.item(PAGES.index(END)).text()
    press(page.sign_button)
    assert page.signed.text().startswith("✓")
    press(page.clear_button)
    assert read_job(window.model.store.path).signature is None
    assert page.edits["who"].text() == ""


def test_a_finished_sheet_says_so(open_job, tmp_path):
    job = change_in(demo(), "remarks", text="mine")
    path = tmp_path / "b-job.json"
    write_model(path, signed(job))
    window = open_job(path=path)
    choose_page(window, END)
    assert window.page.told.text().startswith("✓ Finished")


# ---------------------------------------------------------------------- on paper


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
    return len(PdfReader(path).pages)


# ---------------------------------------------------------------------- for everybody


@pytest.mark.parametrize("name", sampled(PAGES, 3))
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


def test_at_150_percent_of_1280_by_720_no_page_scrolls_sideways(open_job, tmp_path):
    path = tmp_path / "b-job.json"
    write_model(path, demo())
    window = open_job(path=path, size=(853, 480))
    for name in PAGES:
        choose_page(window, name)
        QApplication.processEvents()
        assert window.page.horizontalScrollBar().maximum() == 0, name
    assert window.width() <= 853


def test_the_blank_form_is_printed_from_where_work_begins_and_its_place_is_told(open_job, tmp_path, monkeypatch):
    main = open_job().window()
    home, told = main.work.home, []
    main.work.said.connect(told.append)
    for paper, size in (("A4", (595, 842)), ("Letter", (612, 792))):
        path = tmp_path / f"form-{paper}.pdf"
        monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_, path=path: (str(path), ""))
        (button,) = [b for b in home.buttons if b.text().replace("&", "").endswith(f"pencil, {paper}…")]
        main.work.show_page(home)
        QTest.mouseClick(button, Qt.MouseButton.LeftButton)
        pages = PdfReader(path).pages
        assert [round(float(x)) for x in pages[0].mediabox[2:]] == list(size)
        assert told[-1] == says("✓ Printed {count} pages to {file}.", count=len(pages), file=path.name)
        whole = bare("".join(page.extract_text() for page in pages))
        assert "LEFT" in whole and "RIGHT" in whole and all(bare(title_of(name)) in whole for name in STAGES)


def test_f3_shows_the_stage_that_makes_it_live_and_f2_the_stages(open_job):
    window = open_job()
    choose_page(window, "ground_run")
    QTest.keyClick(window, Qt.Key.Key_F3)
    assert window.page_name == "switch_lead", "nothing is known: the leads are to be proved"
    write(window, "ground_run", "drop_left_rpm", "0")
    choose_page(window, "as_found")
    QTest.keyClick(window, Qt.Key.Key_F3)
    assert window.page_name == "ground_run"
    window.bar.done.setFocus()
    assert not window.contents.list.hasFocus()
    QTest.keyClick(window, Qt.Key.Key_F2)
    assert window.contents.list.hasFocus()
    QTest.keyClick(window.contents.list, Qt.Key.Key_Up)
    assert window.page_name == "closing"


def test_the_list_of_stages_stays_where_it_is_while_readings_go_out(open_job):
    window = open_job()
    contents = window.contents
    QApplication.processEvents()
    top = contents.list.y()
    write(window, "ground_run", "drop_left_rpm", "0")
    QApplication.processEvents()
    assert "1 reading out" in contents.progress.text()
    assert contents.list.y() == top
