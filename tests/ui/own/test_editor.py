"""The guided editor through the real window: mouse and keys, from a basis to the bench."""

from __future__ import annotations

import json
from itertools import product

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLabel, QLineEdit, QMessageBox, QPlainTextEdit

from magview.bench.actions import NoteTrial
from magview.bench.state import readings
from magview.forms.entry import Kind
from magview.own.fields import KINDS, entries, pages_of
from magview.physics.trials.trial import Trial
from magview.spec.files import dump_json, read_installation, read_magneto, write_text
from magview.spec.library import find_engine, find_magneto
from magview.ui.guide.page import GuidePage
from magview.ui.kit.inputs import QuietCombo
from magview.ui.kit.theme import DARK
from magview.ui.own.room import OwnRoom
from tests.counts import sampled
from tests.hands import click
from tests.wording import says


@pytest.fixture
def editor(open_window, qtbot):
    window = open_window("seven-radial-left", first=lambda window: window.draft_own())
    own = window.own.page
    qtbot.waitUntil(own.isVisible)
    own.activateWindow()
    qtbot.waitUntil(own.isActiveWindow)
    return window, own


def room_in(window, folder):
    """Drafts kept in a folder, whose editor opens on the bench's place."""
    room = OwnRoom(window.look, folder, window)
    room.opened.connect(window.places.bench.show_page)
    return room


def begin(own, basis):
    own.bases.setCurrentIndex(own.bases.findData(basis))
    click(own.begin_button)


def row_of(own, path):
    own.go_to(path)
    QApplication.processEvents()
    return own.page().rows[path]


def type_in(own, path, text):
    field = row_of(own, path).field
    assert field.hasFocus()
    QTest.keyClick(field, Qt.Key.Key_A, Qt.KeyboardModifier.ControlModifier)
    QTest.keyClicks(field, text) if text else QTest.keyClick(field, Qt.Key.Key_Delete)
    QTest.keyClick(field, Qt.Key.Key_Tab)


def choose(combo, data):
    """As with the keyboard: down to it, and Return."""
    combo.setFocus()
    QTest.keyClick(combo, Qt.Key.Key_Home)
    for _ in range(combo.findData(data)):
        QTest.keyClick(combo, Qt.Key.Key_Down)
    assert combo.currentData() == data
    combo.activated.emit(combo.currentIndex())  # offscreen a closed list tells of a key only by its index


def test_a_magneto_of_ones_own_from_a_basis_to_the_bench(editor, tmp_path):
    window, own = editor
    begin(own, "seven-radial")
    type_in(own, "name", "Left magneto, shed")
    type_in(own, "e_gap_deg", "12,5")
    type_in(own, "gap_limits_mm[0]", "0,008 in")
    type_in(own, "gap_limits_mm[1]", "12 thou")
    row = row_of(own, "e_gap_deg")
    choose(row.origin, "manual")
    row.source.setFocus()
    QTest.keyClicks(row.source, "page 12")
    QTest.keyClick(row.source, Qt.Key.Key_Tab)
    assert own.menus.bench_action.isEnabled()
    own.menus.bench_action.trigger()
    magneto = window.model.state.magneto
    assert magneto.name == "Left magneto, shed" and magneto.e_gap_deg == 12.5
    assert magneto.gap_limits_mm == pytest.approx((0.2032, 0.3048))
    assert [s.note for s in magneto.sources if s.field == "e_gap_deg"] == ["page 12"]
    assert readings(window.model.state).opens_deg[0] == pytest.approx(12.5), "as designed it opens at the E-gap"
    # Saved, it is a file like any other.
    own.files.save_to("magneto", tmp_path / "mine")
    assert read_magneto(tmp_path / "mine.magview.json") == magneto
    assert not own.model.unsaved("magneto")


def test_bad_values_are_refused_at_their_field_and_kept_as_typed(editor):
    _, own = editor
    begin(own, "seven-radial")
    for text, told in (("breit", "“breit” is not a length"), ("60", "“Pivot to heel” is 60"), ("-3", "at least")):
        type_in(own, "breaker.heel_arm_mm", text)
        row = own.page().rows["breaker.heel_arm_mm"]
        assert row.refusal.isVisible() and told in row.refusal.text()
        assert row.field.text().startswith(text), "nothing is lost"
        assert "Refused" in row.field.accessibleDescription()
        assert not own.menus.save_action.isEnabled() and not own.menus.bench_action.isEnabled()
        assert own.list.currentItem().text().startswith("⚠")
        others = [r for p, r in own.page().rows.items() if p != "breaker.heel_arm_mm"]
        assert not any(r.refusal.isVisible() for r in others)
    assert "last was complete" in own.pictures.state_label.text()
    type_in(own, "breaker.heel_arm_mm", "17,5 mm")
    assert not own.page().rows["breaker.heel_arm_mm"].refusal.isVisible()
    assert own.pictures.bench.state.magneto.breaker.heel_arm_mm == 17.5, "drawn"


def test_what_is_missing_is_found_page_by_page(editor):
    _, own = editor
    assert own.list.item(0).text().endswith("3 needed")
    asked_for = []
    for _ in range(3):
        click(own.next_gap)
        field = QApplication.focusWidget()
        asked_for.append(field.accessibleName())
        if isinstance(field, QLineEdit):
            QTest.keyClicks(field, "4" if "Poles" in field.accessibleName() else "Mine")
            QTest.keyClick(field, Qt.Key.Key_Tab)
        else:
            choose(field, "clockwise")
    assert asked_for == ["Name", "Rotation", says("Poles of the rotor")]
    assert own.list.item(0).text() == "✓ What it is"
    click(own.next_gap)
    assert own.list.currentRow() == 1, "on to the next page"
    assert "Nothing to draw" in own.pictures.state_label.text()


@pytest.mark.parametrize("kind", KINDS)
def test_every_entry_has_a_field_a_name_and_its_words(editor, kind):
    _, own = editor
    own.show_kind(kind)
    seen = {}
    for i in range(len(pages_of(kind))):
        own.list.setCurrentRow(i)
        seen |= own.page().rows
    assert set(seen) == set(entries(kind))
    for path, row in seen.items():
        assert isinstance(row.field, QLineEdit | QPlainTextEdit | QuietCombo)
        assert row.field.accessibleName() == entries(kind)[path].label
        assert row.field.focusPolicy() & Qt.FocusPolicy.TabFocus
        assert entries(kind)[path].meaning in row.words.text()
        entry = entries(kind)[path]
        if entry.kind in (Kind.NUMBER, Kind.WHOLE) and not entry.is_angle:  # angles may have no limit to be told
            assert entry.unit in row.words.text()


def test_undo_and_redo_take_fields_back_and_forth(editor):
    _, own = editor
    begin(own, "seven-radial")
    type_in(own, "e_gap_deg", "9")
    type_in(own, "marks.radius_mm", "40")
    own.activateWindow()
    QTest.keyClick(own.page().rows["marks.tolerance_mm"].field, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    assert own.model.own.magneto.values["marks.radius_mm"] == 36.0
    assert own.page().rows["marks.radius_mm"].field.text() == "36 mm"
    own.menus.undo_action.trigger()
    assert own.model.own.magneto.values["e_gap_deg"] == 11.0
    own.menus.redo_action.trigger()
    own.menus.redo_action.trigger()
    assert own.model.own.magneto.values["marks.radius_mm"] == 40.0
    own.menus.undo_action.trigger()
    own.menus.undo_action.trigger()
    own.menus.undo_action.trigger()
    assert own.model.own.empty and not own.menus.undo_action.isEnabled()


def test_a_rounding_is_never_written_back(editor):
    """A length shown in inches to six figures keeps its value when the keyboard only passes through."""
    _, own = editor
    begin(own, "seven-radial")
    was = own.model.own.magneto.values["marks.tolerance_mm"]
    own.units.setCurrentIndex(1)
    row = row_of(own, "marks.tolerance_mm")
    assert row.field.text().endswith(" in") and float(row.field.text()[:-3]) * 25.4 != was
    QTest.keyClick(row.field, Qt.Key.Key_Tab)
    assert own.model.own.magneto.values["marks.tolerance_mm"] == was
    type_in(own, "marks.radius_mm", "1,5")
    assert own.model.own.magneto.values["marks.radius_mm"] == pytest.approx(38.1)


def test_only_what_belongs_to_the_kind_of_screw_is_asked(editor):
    _, own = editor
    begin(own, "seven-radial")
    row = row_of(own, "contact_screw.kind")
    rows = own.page().rows
    assert rows["contact_screw.throw_mm"].isVisible() and not rows["contact_screw.lead_mm"].isVisible()
    choose(row.field, "threaded")
    assert rows["contact_screw.lead_mm"].isVisible() and not rows["contact_screw.throw_mm"].isVisible()
    assert not own.menus.save_action.isEnabled()
    type_in(own, "contact_screw.lead_mm", "0.75")
    assert own.model.checked("magneto").item.contact_screw.lead_mm == 0.75
    choose(row_of(own, "contact_screw.kind").field, "eccentric")
    assert own.model.checked("magneto").item.contact_screw.throw_mm == 0.5, "the first is still known"


def test_the_comparison_names_the_nearest_and_what_differs(editor):
    _, own = editor
    begin(own, "seven-radial")
    type_in(own, "e_gap_deg", "10")
    bar = own.pictures.tabBar()
    at = bar.tabRect(own.pictures.indexOf(own.pictures.comparison)).center()
    QTest.mouseClick(bar, Qt.MouseButton.LeftButton, pos=at)
    table, told = own.pictures.fields, own.pictures.compared
    assert [table.words(0, c) for c in range(3)] == ["E-gap", "10°", "11°"] and table.row_count() == 1
    assert [told.words(0, c) for c in range(3)] == [says("Lobe 1 opens, past neutral"), "10.00°", "11.00°"]
    assert find_magneto("seven-radial").name in own.pictures.compared_label.text()


def test_nothing_is_overwritten_unasked(editor, tmp_path):
    _, own = editor
    begin(own, "seven-radial")
    target = tmp_path / "there.json"
    target.write_text("somebody's", encoding="utf-8")
    box = own.files.save_to("magneto", target)
    assert isinstance(box, QMessageBox) and "there.json" in box.text()
    click(next(b for b in box.buttons() if "Leave" in b.text()))
    assert target.read_text(encoding="utf-8") == "somebody's"
    box = own.files.save_to("magneto", target)
    click(next(b for b in box.buttons() if "Replace" in b.text()))
    assert read_magneto(target).name == find_magneto("seven-radial").name
    own.activateWindow()
    # One's own file is written again without a question, until another program has changed it.
    type_in(own, "e_gap_deg", "12")
    assert own.files.save_to("magneto", target) is None and read_magneto(target).e_gap_deg == 12.0
    target.write_text("changed elsewhere", encoding="utf-8")
    box = own.files.save_to("magneto", target)
    assert box is not None
    box.close()
    # A folder that is not there is one sentence.
    own.files.save_to("magneto", tmp_path / "no" / "where.json")
    refusals = [b for b in own.findChildren(QMessageBox) if "cannot be written" in b.text()]
    assert refusals
    refusals[0].close()


def test_files_are_opened_and_refused(editor, tmp_path):
    _, own = editor
    path = tmp_path / "e.json"
    write_text(path, dump_json(find_engine("nine-radial")))
    own.files.open_path(path)
    assert own.kind == "engine" and own.model.checked("engine").item == find_engine("nine-radial")
    assert own.model.file_of("engine") == path and not own.model.unsaved("engine")
    (tmp_path / "bad.json").write_text('{"format": "magview-engine/1"}', encoding="utf-8")
    own.files.open_path(tmp_path / "bad.json")
    box = next(b for b in own.findChildren(QMessageBox) if "bad.json" in b.text())
    box.close()
    assert own.model.checked("engine").item == find_engine("nine-radial"), "left as it was"


def test_the_lift_comes_from_a_table_marked_measured(editor, tmp_path):
    """A lobe of a plain sine traced every 2°: the top is 0.5 mm by construction."""
    from math import cos, radians

    _, own = editor
    begin(own, "traced-six")
    table = tmp_path / "lobe.csv"
    rows = [f"{a};{0.25 * (1 + cos(radians(a * 180 / 40))):.4f}".replace(".", ",") for a in range(-40, 41, 2)]
    pad = [f"{a};0" for a in range(-60, -40, 2)], [f"{a};0" for a in range(42, 62, 2)]
    table.write_text("\n".join([*pad[0], *rows, *pad[1]]), encoding="utf-8")
    dialog = own.files.table_from(table)
    assert not dialog.place_button.isEnabled() and not dialog.save_button.isVisible()
    dialog.unit.setCurrentIndex(1)
    assert dialog.place_button.isEnabled(), dialog.answer.text()
    click(dialog.place_button)
    draft = own.model.own.magneto
    assert draft.values["cam.profile.kind"] == "measured"
    assert max(draft.values["cam.profile.contact_lift_mm"]) == pytest.approx(0.5, abs=0.005)
    assert draft.notes["cam.profile.contact_lift_mm"].origin == "measured"
    assert "lobe.csv" in draft.notes["cam.profile.contact_lift_mm"].text


def test_a_table_goes_with_a_draft_that_has_nothing_yet(editor, tmp_path):
    _, own = editor
    profile = find_magneto("traced-six").cam.profile
    table = tmp_path / "lobe.csv"
    both = zip(profile.angle_deg, profile.contact_lift_mm, strict=True)
    table.write_text("\n".join(f"{a} {s}" for a, s in both), encoding="utf-8")
    dialog = own.files.table_from(table)
    dialog.unit.setCurrentIndex(1)
    click(dialog.place_button)
    assert max(own.model.own.magneto.values["cam.profile.contact_lift_mm"]) == pytest.approx(0.64, abs=0.01)


def test_trials_of_the_bench_fill_in_the_lift(editor):
    window, own = editor
    begin(own, "seven-radial")
    own.list.setCurrentRow(2)
    click(own.page().trials_button)
    assert "no trials" in own.window().statusBar().currentMessage()
    for plate, low, high in ((0.0, 0.2794, 0.3048), (1.5, 0.3556, 0.381)):
        window.model.send(NoteTrial(Trial(plate, low, high)))
    click(own.page().trials_button)
    draft = own.model.own.magneto
    assert draft.values["cam.profile.lift_mm"] > 0.36, "every gap was larger than the file's"
    assert draft.notes["cam.profile.lift_mm"].origin == "measured"
    assert own.page().rows["cam.profile.lift_mm"].origin.currentData() == "measured"


def test_what_can_be_worked_out_is_one_press(editor):
    _, own = editor
    type_in(own, "poles", "4")
    row = row_of(own, "cam.lobe_peaks_deg")
    click(row.work_button)
    assert own.model.own.magneto.values["cam.lobe_peaks_deg"] == pytest.approx((0, 90, 180, 270))
    own.show_kind("installation")
    click(row_of(own, "rotor_turns_per_crank_turn").work_button)
    assert "not complete" in own.window().statusBar().currentMessage()


def test_drafts_outlive_a_kill_and_a_close(open_window, qtbot, tmp_path):
    window = open_window("seven-radial-left")
    room = room_in(window, tmp_path)
    own = room.open()
    begin(own, "nine-radial")
    type_in(own, "e_gap_deg", "8,4")
    type_in(own, "marks.radius_mm", "wide")
    qtbot.waitUntil(lambda: any("wide" in p.read_text(encoding="utf-8") for p in tmp_path.glob("own-*.json")))
    # A killed program leaves its file and no lock that is held.
    (left,) = tmp_path.glob("own-*.json")
    other = tmp_path / "found"
    other.mkdir()
    (other / left.name).write_bytes(left.read_bytes())
    again = room_in(window, other)
    shown = again.open()
    assert "as you left" in shown.window().statusBar().currentMessage()
    assert again.model.own == room.model.own
    assert row_of(shown, "marks.radius_mm").field.text() == "wide"
    # Closed with work that no file holds, it is found again; saved, it is forgotten.
    again.close()
    third = room_in(window, other)
    assert third.model.own == room.model.own
    third.model.give("magneto", "marks.radius_mm", 42.0)
    third.model.write("magneto", tmp_path / "saved.json")
    third.close()
    assert not list(other.glob("own-*.json"))
    room.close()


def test_the_window_closed_and_opened_again_has_its_drafts(editor, qtbot):
    window, own = editor
    type_in(own, "name", "Mine")
    own.close()
    QApplication.processEvents()
    assert window.own.page is None
    window.draft_own()
    assert window.own.page.page().rows["name"].field.text() == "Mine"


def test_the_window_follows_the_workbench_in_colours(editor):
    window, own = editor
    begin(own, "seven-radial")
    window.look.theme = DARK
    assert own.look.theme is DARK
    row = own.page().rows["name"]
    assert row.words.palette().color(row.words.foregroundRole()).name() == DARK.faint


@pytest.mark.parametrize(("kind", "size"), sampled(product(KINDS, [(1280, 720), (853, 480)]), 3))
def test_nothing_is_cut_off(editor, kind, size):
    _, own = editor
    basis = {"magneto": "nine-radial", "engine": "nine-radial", "installation": "nine-radial-left"}[kind]
    QApplication.processEvents()
    own.window().resize(*size)
    own.show_kind(kind)
    begin(own, basis)
    for i in range(own.list.count()):
        own.list.setCurrentRow(i)
        QApplication.processEvents()
        page = own.page()
        assert own.window().size().toTuple() == size
        assert page.widget().width() <= page.viewport().width()
        for label in page.findChildren(QLabel):
            if label.isVisible():
                assert label.height() >= label.heightForWidth(label.width()), label.text()
        for row in page.rows.values():
            if row.isVisible():
                right = row.field.mapTo(page.widget(), QPoint(row.field.width(), 0)).x()
                assert right <= page.viewport().width()


def test_installations_take_their_parts_by_file_or_from_this_window(editor, tmp_path):
    window, own = editor
    begin(own, "traced-six")
    own.files.save_to("magneto", tmp_path / "m.json")
    own.show_kind("installation")
    begin(own, "traced-six-single")
    own.model.give("installation", "magneto", str(tmp_path / "m.json"))
    own.files.save_to("installation", tmp_path / "both.json")
    assert json.loads((tmp_path / "both.json").read_text(encoding="utf-8"))["magneto"] == "m.json"
    window.open_path(tmp_path / "both.json")
    assert window.model.state.engaged.installation == read_installation(tmp_path / "both.json")
    choose(row_of(own, "magneto").field, "own")
    own.files.save_to("installation", tmp_path / "whole.json")
    assert isinstance(json.loads((tmp_path / "whole.json").read_text(encoding="utf-8"))["magneto"], dict)


def test_the_guide_opens_at_the_editors_page_and_the_drafts_stay(editor):
    window, own = editor
    own.list.setFocus()
    QTest.keyClick(own.list, Qt.Key.Key_F1)
    guide = window.places.front
    assert isinstance(guide, GuidePage) and guide.address.startswith("own-magneto")
    QTest.keyClick(guide.search, Qt.Key.Key_Escape)
    assert window.places.front is own
