"""The class's windows: joining, handing in where the folder is away, making a set, gathering, writing an exercise."""

from __future__ import annotations

import sys

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QMessageBox, QPushButton, QWidget

from magview.classroom.code import plain
from magview.classroom.key import answer_key, key_rows
from magview.classroom.results import result_of
from magview.classroom.sets import code_of, read_set, set_of_code, write_set
from magview.practice.actions import HandIn
from magview.practice.attempt import write_attempt
from magview.practice.exercise_parts import Fault
from magview.practice.faults import drawn
from magview.practice.library import find_exercise, read_exercise, shipped_exercises
from magview.practice.story import story
from magview.spec.files import parse_json
from magview.ui.classroom.room import ClassRoom
from magview.ui.kit.theme import DARK, LIGHT
from tests.classroom.attempts import a_set, class_folder, done, handed
from tests.counts import sampled
from tests.hands import click

OF = a_set("gap-wrong", "switch-lead", each_their_own=True)


@pytest.fixture
def room(open_window, tmp_path, qtbot):
    """The class of a main window, kept in a folder of the test's own; what it opens is closed again."""
    window = open_window()
    room = window.places._classes = ClassRoom(window.practice, tmp_path / "home")  # noqa: SLF001
    yield room
    for practice in list(window.practice.attempts):
        practice.discard()
    for opened in list(room.pages.values()):
        getattr(opened, "discard", opened.close)()
    room.halt()


def joined(room, qtbot, folder, name="Zoe", code=None):
    desk = room.open("join")
    qtbot.waitUntil(desk.isActiveWindow)
    for field, words in ((desk.code, code or code_of(OF)), (desk.name.lineEdit(), name), (desk.folder, str(folder))):
        field.setFocus()
        field.selectAll()
        QTest.keyClicks(field, words)
    return desk


def arrived(room, qtbot):
    qtbot.waitUntil(lambda: not room.courier.busy, timeout=20_000)


# ---------------------------------------------------------------------- a pupil


def choose(combo, value):
    """Choose from a list as a hand does."""
    place = combo.values.index(value)
    combo.setCurrentIndex(place)
    combo.activated.emit(place)


def type_over(line, text):
    """Type over what stands in a field."""
    line.setFocus()
    line.selectAll()
    QTest.keyClicks(line, text)


def test_a_code_and_a_name_lead_to_the_exercise_and_handing_in_to_the_folder(room, qtbot, tmp_path):
    share = tmp_path / "share"
    share.mkdir()
    desk = joined(room, qtbot, share, code=plain(code_of(OF)).lower())
    QTest.keyClick(desk.folder, Qt.Key.Key_Return)
    (window,) = room.practice.attempts
    assert window.attempt.seed == OF.seed_of(1, "zoe")
    assert desk.exercises.words(0, 1) == "under way"
    assert desk.begin() is window  # not a second time
    window.model.do(HandIn())
    arrived(room, qtbot)
    (path,) = share.iterdir()
    result = result_of(path.read_bytes(), path.name, parse_json)
    assert (result.state, result.pupil, result.number) == ("marked", "Zoe", 1)
    assert path.name in desk.exercises.words(0, 1)
    window.close()  # and does not ask: the attempt stands in the folder
    qtbot.waitUntil(lambda: not room.practice.attempts)
    assert room.courier.outbox.waiting() == []


def test_what_cannot_be_written_is_kept_said_and_tried_again(room, qtbot, tmp_path):
    share = tmp_path / "away"
    desk = joined(room, qtbot, share)
    click(desk.start)
    (window,) = room.practice.attempts
    window.model.do(HandIn())
    arrived(room, qtbot)
    assert "Kept on this machine" in desk.exercises.words(0, 1)
    assert "Kept on this machine" in window.window().statusBar().currentMessage()
    assert not desk.again.isHidden()
    window.close()
    room.open("join")
    share.mkdir()
    click(desk.again)
    arrived(room, qtbot)
    assert len(list(share.iterdir())) == 1
    assert "Handed in" in desk.exercises.words(0, 1)
    assert desk.again.isHidden()


def test_what_an_earlier_session_left_is_delivered(room, qtbot, tmp_path):
    share = tmp_path / "away"
    name, text = handed(OF, 1, "Zoe", done(OF, 1, "Zoe", "idle"))
    room.courier.outbox.hand_in(share, name, text)
    share.mkdir()
    room.deliver_waiting()
    arrived(room, qtbot)
    assert [p.name for p in share.iterdir()] == [name]


def test_closing_the_program_loses_nothing_that_was_handed_in(room, qtbot, tmp_path):
    """Several are handed in at once, and the program ends before the first is written."""
    share = tmp_path / "share"
    share.mkdir()
    from magview.ui.classroom.delivery import Place

    for number in (1, 2):
        place = Place(OF, number, "Zoe", share)
        room.courier.hand_in(place, done(OF, number, "Zoe", "idle"))
    room.halt()
    assert len(list(share.iterdir())) == 2


@pytest.mark.parametrize(
    ("code", "name", "says"),
    [
        ("KAAJ-R6D4", "Zoe", "mistyped"),
        ("KAA9", "Zoe", "digits 2 to 7"),
        ("", "Zoe", "code first"),
        (None, "", "name or number"),
    ],
)
def test_what_is_missing_is_said_where_it_is_missing(room, qtbot, tmp_path, code, name, says):
    desk = joined(room, qtbot, tmp_path, name, " " if code == "" else code)
    desk.begin()
    assert says in desk.message.text()
    assert not room.practice.attempts


def test_a_saved_attempt_is_handed_in_from_its_file(room, qtbot, tmp_path):
    share = tmp_path / "share"
    share.mkdir()
    desk = joined(room, qtbot, share)
    desk.read_code()
    path = tmp_path / "mine.json"
    write_attempt(path, done(OF, 2, "Zoe", "idle"))
    desk.hand_in_path(path)
    arrived(room, qtbot)
    assert len(list(share.iterdir())) == 1
    write_attempt(path, done(a_set("pips"), 1, "Zoe", "idle"))
    desk.hand_in_path(path)
    assert "not in this set" in desk.message.text()


def test_a_sets_file_brings_own_exercises_and_names(room, qtbot, tmp_path):
    own = OF.model_copy(
        update={"exercises": (OF.exercises[0].model_copy(update={"name": "Own"}),), "pupils": ("Max",)}
    )
    write_set(tmp_path / "set.json", own)
    desk = room.open("join")
    desk.open_path(tmp_path / "set.json")
    assert "Own" in desk.exercises.words(0, 0)
    assert desk.name.findText("Max") >= 0
    (tmp_path / "set.json").write_text("{}")
    desk.open_path(tmp_path / "set.json")
    assert "set.json" in desk.message.text()
    assert "Own" in desk.exercises.words(0, 0)  # what was open stays


def test_the_cheat_is_spoken_of_plainly(room):
    words = [w.text() for w in room.open("join").findChildren(QWidget) if hasattr(w, "text")]
    assert any("no protection against a determined cheat" in w for w in words)


# ---------------------------------------------------------------------- an instructor


def test_the_code_follows_every_setting(room, qtbot):
    maker = room.open("make")
    assert maker.code.isHidden()
    assert "Add an exercise" in maker.why.text()
    type_over(maker.fields.settings.edits["seed"], "77")
    maker.fields.add_exercise(find_exercise("pips"))
    maker.fields.add_exercise(find_exercise("gap-wrong"))
    seen = {maker.code.text()}
    fields, edits = maker.fields, maker.fields.settings.edits
    for change in (
        lambda: choose(edits["each_their_own"], True), lambda: click(edits["hints"]),
        lambda: choose(edits["units"], "inch"), lambda: type_over(edits["minutes"], "30"),
        lambda: type_over(edits["seed"], "78"), lambda: click(fields.up), lambda: click(fields.drop),
    ):  # fmt: skip
        change()
        assert set_of_code(maker.code.text()) == maker.made().model_copy(update={"title": "", "pupils": ()})
        seen.add(maker.code.text())
    assert len(seen) == 8
    assert room.set == maker.made()


def test_a_set_is_saved_opened_and_found_again(room, tmp_path):
    maker = room.open("make")
    maker.fields.show_set(OF.model_copy(update={"title": "Tuesday", "pupils": ("Zoë", "7")}))
    maker.save_path(tmp_path / "set.json")
    assert read_set(tmp_path / "set.json") == maker.made()
    maker.fields.settings.give("pupils", ("Zoë", "zoe"))
    assert "cannot be told apart" in maker.why.text()
    assert not maker.save.isEnabled()
    maker.open_path(tmp_path / "set.json")
    assert maker.made().title == "Tuesday"
    maker.close()
    assert ClassRoom(room.practice, room.folder).set == read_set(tmp_path / "set.json")


def test_the_key_is_shown_and_saved(room, qtbot, tmp_path):
    maker = room.open("make")
    maker.fields.show_set(OF.model_copy(update={"pupils": ("Zoë", "Max")}))
    maker.tabs.setCurrentIndex(1)
    qtbot.waitUntil(lambda: maker.key.rows.rowCount() > 0, timeout=20_000)
    assert maker.key.rows.rowCount() == len(key_rows(answer_key(maker.made())))
    for suffix in ("txt", "csv"):
        maker.save_key_path(tmp_path / f"key.{suffix}")
        assert "Zoë" in (tmp_path / f"key.{suffix}").read_text("utf-8")
    maker.fields.settings.give("pupils", ())
    qtbot.waitUntil(lambda: "name the pupils" in maker.key_why.text())


def test_gathering_sorts_cancels_and_saves(room, qtbot, tmp_path):
    folder = tmp_path / "in"
    room.set = class_folder(folder, 9, ("gap-wrong", "switch-lead"))
    gather = room.open("gather")
    gather.folder.setText(str(folder))
    gather.gather()
    gather.cancel()
    assert "kept for the next time" in gather.message.text()
    assert gather.summary is None
    gather.gather()
    qtbot.waitUntil(lambda: gather.summary is not None, timeout=60_000)
    table = gather.attempts
    for order in (Qt.SortOrder.AscendingOrder, Qt.SortOrder.DescendingOrder):
        table.sortByColumn(2, order)
        marks = [float(table.words(y, 2)) for y in range(9)]
        assert marks == sorted(marks, reverse=order == Qt.SortOrder.DescendingOrder)
    gather.save_path(tmp_path / "out.csv")
    assert len((tmp_path / "out.csv").read_text("utf-8").splitlines()) == 10
    (folder / "bad.json").write_text("{")
    qtbot.waitUntil(lambda: len(gather.summary.entries) == 10, timeout=20_000)
    assert "1 were passed over" in gather.message.text()


def test_the_plots_show_the_class_and_lead_to_an_attempt(room, qtbot, tmp_path):
    folder = tmp_path / "in"
    room.set = class_folder(folder, 8, ("gap-wrong", "switch-lead"))
    gather = room.open("gather")
    gather.folder.setText(str(folder))
    gather.gather()
    qtbot.waitUntil(lambda: gather.summary is not None, timeout=60_000)
    gather.tabs.setCurrentIndex(4)
    plots = gather.plots
    x, y = plots.points.getData()
    counted = gather.summary.counted
    assert sorted(y.tolist()) == sorted(e.result.percent for e in counted)
    assert x.tolist() == [e.result.seconds / 60.0 for e in counted]
    plots._clicked(plots.points, [plots.points.points()[3]])  # noqa: SLF001
    assert gather.attempts.chosen() == counted[3]
    for suffix in ("svg", "png"):
        plots.save_path(tmp_path / f"plots.{suffix}")
        assert (tmp_path / f"plots.{suffix}").stat().st_size > 1000
    for theme in (DARK, LIGHT):
        gather.look.theme = theme


def test_a_folder_that_is_away_is_said_and_looked_for_again(room, qtbot, tmp_path):
    gather = room.open("gather")
    click(gather.start)
    assert "Choose the folder" in gather.message.text()
    gather.folder.setText(str(tmp_path / "gone"))
    gather.gather()
    qtbot.waitUntil(lambda: "cannot be read" in gather.message.text())
    (tmp_path / "gone").mkdir()
    gather._again()  # noqa: SLF001  # as the clock does
    qtbot.waitUntil(lambda: gather.summary is not None)


# ---------------------------------------------------------------------- writing an exercise


def test_what_is_no_number_stays_in_its_field_and_is_refused_beside_it(room, qtbot):
    editor = room.open("editor")
    qtbot.waitUntil(editor.isActiveWindow)
    minutes = editor.fields.text.edits["minutes"]
    type_over(minutes, "soon")
    QTest.keyClick(minutes, Qt.Key.Key_Tab)
    assert minutes.text() == "soon"
    assert "“soon” is not a number" in editor.fields.text.refusals["minutes"].text()
    editor.check()
    assert editor.exercise is None and not editor.save.isEnabled()
    type_over(minutes, "7,5")
    editor.check()
    assert editor.exercise.minutes == 7.5 and not editor.fields.text.refusals["minutes"].text()


def test_the_story_goes_on_by_the_way_that_was_drawn(room, tmp_path):
    editor = room.open("editor")
    editor.show_exercise(find_exercise("one-lobe-low"))
    by_way = editor.fields.by_way
    plus, minus, fault = (by_way.edits[name] for name in ("plus", "minus", "fault"))
    assert not plus.isVisibleTo(editor) and by_way.story() is None
    choose(fault, "opening")
    assert plus.isVisibleTo(editor) and editor.unsaved
    QTest.keyClicks(plus, "It is weak and hot.")
    QTest.keyClicks(minus, "It kicks back.")
    assert editor.save_path(tmp_path / "own.json"), editor.problem.text()
    written = read_exercise(tmp_path / "own.json")
    # Common practice: late is weak and hot, early kicks back. The file says plus for what opens late.
    told = {drawn(written, seed, "left").opening > 0: story(written, seed) for seed in range(20)}
    assert told[True].endswith(" It is weak and hot.") and told[False].endswith(" It kicks back.")
    choose(fault, None)
    assert editor.save_path(tmp_path / "own.json") and read_exercise(tmp_path / "own.json").story_by_way is None


@pytest.mark.parametrize("name", sampled(shipped_exercises(), 3))
def test_every_shipped_exercise_passes_through_the_fields_unchanged(room, name, tmp_path):
    editor = room.open("editor")
    editor.show_exercise(find_exercise(name))
    assert editor.exercise == find_exercise(name)
    assert editor.save_path(tmp_path / "own.json")
    assert read_exercise(tmp_path / "own.json") == find_exercise(name)
    assert not editor.unsaved


def test_what_is_not_valid_is_said_and_not_saved(room, qtbot, tmp_path):
    editor = room.open("editor")
    editor.fields.faults.add(Fault(kind="teeth", size=(1.0, 2.0)))
    editor.check()
    assert "needs an installation" in editor.problem.text()
    assert not editor.save.isEnabled()
    assert not editor.save_path(tmp_path / "x.json")
    assert not (tmp_path / "x.json").exists()
    form = editor.fields.faults.forms[-1]
    click(form.parentWidget().findChild(QPushButton))
    qtbot.waitUntil(lambda: editor.exercise is not None)
    editor.fields.goals.show_value(())
    editor.check()
    assert "“Goals” is" in editor.problem.text()


def test_decimal_commas_are_taken_and_the_preview_follows(room, qtbot):
    editor = room.open("editor")
    qtbot.waitUntil(editor.isActiveWindow)
    editor.fields.setCurrentIndex(2)
    form = next(f for f in editor.fields.faults.forms if f.values["kind"] == "opening")
    for end in ("size[0]", "size[1]"):
        type_over(form.edits[end], "2,5")
        QTest.keyClick(form.edits[end], Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: "2.50° of rotor" in editor.preview.toPlainText())
    editor.fields.setCurrentIndex(0)
    type_over(editor.fields.text.edits["name"], "A case of my own")
    qtbot.waitUntil(lambda: "A case of my own" in editor.preview.toPlainText())


def test_unsaved_work_is_asked_for(room, qtbot, tmp_path):
    editor = room.open("editor")
    type_over(editor.fields.text.edits["name"], "Mine")
    editor.close()
    box = editor.findChild(QMessageBox)
    assert editor.isVisible()
    click(next(b for b in box.buttons() if "Back" in b.text()))
    editor.open_path(tmp_path / "gone.json")
    assert "cannot be read" in editor.message.text()
    assert editor.fields.text.edits["name"].text() == "Mine"


def test_an_exercise_goes_into_the_set_and_is_tried(room, qtbot):
    editor = room.open("editor")
    type_over(editor.fields.text.edits["name"], "Mine")
    click(editor.to_set)
    maker = room.pages["make"]
    assert "Mine" in maker.fields.chosen.item(0).text()
    assert "needs its file" in maker.why.text()
    editor.activateWindow()
    click(editor.try_it)
    assert room.practice.attempts[0].model.practice.exercise.name == "Mine"


# ---------------------------------------------------------------------- for everybody


@pytest.mark.parametrize("what", ["join", "make", "gather", "editor"])
def test_all_is_reached_by_keyboard_and_has_a_name(room, qtbot, what):
    from PySide6.QtWidgets import QAbstractSpinBox, QApplication, QCheckBox, QComboBox, QLabel, QLineEdit

    window = room.open(what)
    qtbot.waitUntil(window.isActiveWindow)
    wanted = [
        w
        for w in window.findChildren(QWidget)
        if isinstance(w, QPushButton | QComboBox | QCheckBox | QLineEdit | QAbstractSpinBox)
        and w.isVisible() and w.isEnabled() and not isinstance(w.parent(), QAbstractSpinBox | QComboBox)
    ]  # fmt: skip
    buddies = {label.buddy() for label in window.findChildren(QLabel)}
    proxied = {b.focusProxy() for b in buddies if b is not None}
    unnamed = [
        w for w in wanted
        if not isinstance(w, QPushButton | QCheckBox) and not w.accessibleName() and w not in buddies | proxied
    ]  # fmt: skip
    assert not unnamed
    reached = set()
    for _ in range(200):
        reached.add(QApplication.focusWidget())
        QTest.keyClick(QApplication.focusWidget() or window, Qt.Key.Key_Tab)
    assert not [w for w in wanted if w not in reached and w.focusProxy() not in reached]


@pytest.mark.skipif(not sys.platform.startswith("linux"), reason="the XDG folders are Linux's")
def test_without_a_folder_it_is_kept_where_the_rest_is(room, tmp_path, monkeypatch):
    """XDG Base Directory Specification 0.8: data in XDG_DATA_HOME, whatever name Qt gives the program."""
    monkeypatch.setenv("XDG_DATA_HOME", str(tmp_path / "data"))
    assert ClassRoom(room.practice).folder == tmp_path / "data" / "magview" / "class"
