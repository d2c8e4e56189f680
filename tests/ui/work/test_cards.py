"""A limits card made with keys alone, kept, opened again and put onto a sheet."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QMessageBox

from magview.job.limits_cards import FIELDS
from magview.spec.files import write_model
from magview.ui.work.card_plan import CardPlanDialog
from tests.cards import TYPED, a_card
from tests.wording import says


def click(button):
    QTest.mouseClick(button, Qt.MouseButton.LeftButton)


def test_a_card_is_typed_kept_and_begins_a_sheet(open_window, qtbot, tmp_path, monkeypatch):
    main = open_window()
    main.resize(1280, 660)
    page = main.work.open_cards()
    click(page.keep_button)
    assert "Registration" in page.said_here.text() and page.form.data()["rotation"] is None
    assert page.form.edits["rotation"].currentText() == says("not chosen yet"), "a way round is never chosen for one"
    for name, text in zip(FIELDS, TYPED, strict=True):
        edit = page.form.edits[name]
        edit.setFocus()
        if text is None:
            QTest.keyClick(edit, Qt.Key.Key_Down)
        else:
            QTest.keyClicks(edit, text)
            QTest.keyClick(edit, Qt.Key.Key_Tab)
    gap, good = page.form.edits["gap_limits_mm"], page.form.edits["gap_limits_mm"].text()
    gap.setFocus()
    gap.selectAll()
    QTest.keyClicks(gap, "narrow")
    click(page.keep_button)
    assert not page.shelf.cards() and gap.text() == "narrow" and page.form.refusals["gap_limits_mm"].text()
    asked = page.form.entries["gap_limits_mm"].label
    assert page.said_here.text().endswith(says("“{field}” could not be read: put it right first", field=asked))
    gap.selectAll()
    QTest.keyClicks(gap, good)
    click(page.keep_button)
    assert page.shelf.cards() == [a_card()], page.said_here.text()
    assert page.list.item(0).text() == "X-ABC" and not page.changed
    bottom = page.form.edits["synchronising_tolerance_deg"]
    area = page.form.parentWidget()
    assert bottom.mapTo(area, bottom.rect().bottomLeft()).y() <= area.height(), "the whole card is seen at once"

    click(page.plan_button)
    dialog = page.findChild(CardPlanDialog)
    assert not dialog.print_button.isEnabled()
    QTest.keyClicks(dialog.reads, "20")
    # Two steps of one tooth with and one against: 2 · 360° · (1/11 − 1/12) / 1.5 of crank.
    assert "23.64°" in dialog.told.text() and dialog.print_button.isEnabled()
    dialog.reads.selectAll()
    QTest.keyClicks(dialog.reads, "80 ATDC")
    assert dialog.plan is None and dialog.told.text().startswith("✗"), "looked at first"
    dialog.checked.setChecked(True)
    assert dialog.plan is not None
    dialog.reject()

    sheet = tmp_path / "job.magview.json"
    monkeypatch.setattr("magview.ui.work.place.ask_save", lambda *_, **__: sheet)
    click(page.sheet_button)
    begun = main.work.sheets[-1]
    assert begun.model.job.limits.left_btdc_deg == 23.0 and begun.model.job.aircraft.registration == "X-ABC"
    begun.discard()
    main.work.new(tmp_path / "other.magview.json")
    assert main.work.sheets[-1].model.job.limits.source == "", "the next sheet is its own"
    main.work.sheets[-1].discard()

    main.work.open_cards()
    click(page.new_button)
    assert page.form.data()["registration"] in ("", None)
    other = tmp_path / "passed-on.magview.json"
    write_model(other, a_card(e_gap_deg=8.0))
    page.open_path(other)
    assert page.form.data()["e_gap_deg"] == 8.0 and page.changed
    click(page.keep_button)
    assert "X-ABC" in page.said_here.text() and page.shelf.cards() == [a_card()], "no card is replaced unasked"
    click(page.new_button)
    box = page.findChild(QMessageBox)
    assert box is not None and page.form.data()["e_gap_deg"] == 8.0, "what was typed is asked about"
    box.reject()
    page.list.itemActivated.emit(page.list.item(0))
    asked = next(box for box in page.findChildren(QMessageBox) if box.isVisible())
    click(next(button for button in asked.buttons() if button.text() == says("&Put them away")))
    assert page.form.data()["e_gap_deg"] == 9.5
    page.form.give("e_gap_deg", 10.0)
    click(page.keep_button)
    assert page.shelf.cards()[0].e_gap_deg == 10.0, "the chosen card is changed"
    (tmp_path / "bad.json").write_text("{", encoding="utf-8")
    page.open_path(tmp_path / "bad.json")
    assert page.said_here.text().startswith("✗") and page.form.data()["e_gap_deg"] == 10.0
