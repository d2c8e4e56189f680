"""Around the work: attempts kept and found again, handing in, looking back, choosing, and how it all looks."""

from __future__ import annotations

from itertools import product
from pathlib import Path

import pytest
from PySide6.QtCore import QEvent, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import (
    QAbstractButton,
    QApplication,
    QCheckBox,
    QLabel,
    QMessageBox,
    QPushButton,
    QTabWidget,
    QWidget,
)
from shiboken6 import isValid

from magview.bench import actions as bench
from magview.practice import actions as do
from magview.practice.attempt import Session, read_attempt
from magview.practice.library import find_exercise
from magview.ui.kit.look import PROJECTED
from magview.ui.kit.theme import DARK, HIGH_CONTRAST, LIGHT
from magview.ui.practice.choice import Choice
from magview.ui.practice.place import PracticePlace, attempts_in
from tests.counts import sampled
from tests.hands import click, what_is_due
from tests.practice.trainee import Trainee

ALL = "both-everything-wrong"


def place_in(main, folder):
    """A place to practise that keeps what it finds again in a folder, in front of the window's own places."""
    place = PracticePlace(main.look, folder)
    main.places.addWidget(place)
    main.places.setCurrentWidget(place)
    return place


@pytest.fixture
def window(open_practice):
    window = open_practice(ALL)
    window.model.take_propeller(True)
    return window


# ---------------------------------------------------------------------- keeping, files, the end


def test_the_clock_runs_on_where_an_attempt_is_gone_on_with(open_practice):
    from magview.ui.practice.model import AttemptModel

    session = Session(find_exercise("gap-wrong"), 1)
    session.send(do.InspectContacts(), 95.0)
    model = AttemptModel(Session.resume(session.attempt), iter((2.0, 3.5)).__next__)
    model.do(do.InspectContacts())
    model.do(do.InspectContacts())
    assert [e.at_s for e in model.session.attempt.events] == [95.0, 97.0, 98.5]


def test_an_attempt_is_kept_as_it_is_done_and_offered_after_a_kill(open_window, open_practice, tmp_path, qtbot):
    keeper = attempts_in(tmp_path)
    window = open_practice("gap-wrong", keeper=keeper)
    window.model.do(bench.TightenLock(False))
    qtbot.waitUntil(lambda: any(tmp_path.glob("attempt-*.json")), timeout=3000)
    kept = window.attempt
    room = place_in(open_window(), tmp_path)
    assert room.recover() is None, "its program lives"
    # A killed program leaves the file and no lock that is held.
    file = next(tmp_path.glob("attempt-*.json"))
    left = tmp_path / "left"
    left.mkdir()
    (left / file.name).write_bytes(file.read_bytes())
    room = place_in(room.window(), left)
    box = room.recover()
    assert "The gap is wrong" in box.text()
    go_on = next(b for b in box.buttons() if "Go on" in b.text())
    click(go_on)
    again = room.open_pages[0]
    assert again.attempt.events == kept.events
    again.discard()
    assert not any(left.glob("attempt-*.json")), "closed as it should, nothing is left to be found"
    assert room.open_pages == []


def test_closing_unsaved_work_asks_and_saving_ends_that(window, tmp_path):
    window.model.do(do.Chock(True))
    window.close()
    assert window.isVisible()
    box = window.findChild(QMessageBox)
    assert "has not been saved" in box.text()
    box.done(0)
    path = tmp_path / "attempt.json"
    assert window.save_path(path)
    assert read_attempt(path) == window.attempt
    window.close()
    assert not window.isVisible()


def test_what_was_handed_in_closes_without_a_question(window):
    window.model.do(do.HandIn())
    assert window.may_close() and window.findChild(QMessageBox) is None


def test_an_attempt_that_cannot_be_written_is_refused_in_a_sentence(window, tmp_path):
    assert not window.save_path(tmp_path / "no folder" / "attempt.json")
    box = window.findChild(QMessageBox)
    assert "cannot be written" in box.text()
    box.done(0)


def test_handing_in_is_asked_once_and_ends_in_the_debrief(window, tmp_path):
    window.model.do(do.TurnPropeller(10.0))  # no chocks, nothing proved
    click(window.hand_in)
    box = window.findChild(QMessageBox)
    assert box.text() == "Hand in now?" and window.debrief is None
    click(next(b for b in box.buttons() if "Hand in" in b.text()))
    QApplication.processEvents()
    view = window.debrief
    assert view is not None and view.isVisible() and not window.split.isVisible()
    assert view.verdict.text().endswith("not passed, a dangerous act")
    assert view.verdict.accessibleDescription().startswith("Not passed: turned the propeller")
    assert view.dangers.text().startswith("⚠") and view.dangers.isVisible()
    assert not window.menus.hand_in_action.isVisible() and window.menus.debrief_action.isVisible()
    for name in ("debrief.txt", "debrief.csv"):
        window.save_debrief_path(tmp_path / name)
        assert "no chocks" in (tmp_path / name).read_text(encoding="utf-8")


@pytest.fixture
def looked_back(open_window):
    """A whole job handed in, opened again from its events."""
    trainee = Trainee(find_exercise("several-teeth-out"), 5)
    room = place_in(open_window(), None)
    window = room.go_on(trainee.work())
    QApplication.processEvents()
    yield window
    window.discard()


# ---------------------------------------------------------------------- looks


def cut(window) -> list[str]:
    """Words that have less room than they need; a button's frame needs some pixels more."""

    def needs(widget) -> int:
        if isinstance(widget, QPushButton):
            return widget.fontMetrics().horizontalAdvance(widget.text().replace("&", "")) + 8
        return widget.minimumSizeHint().width()

    return [
        w.text()
        for w in window.findChildren(QWidget)
        if isinstance(w, QLabel | QPushButton | QCheckBox)
        and w.isVisible()
        and (w.width() < needs(w) or w.height() < w.minimumSizeHint().height())
    ]


@pytest.mark.parametrize(
    ("name", "size"),
    sampled(product([ALL, "measure-the-gap"], [(853, 480), (1280, 720), (1920, 1080)]), 4),
)
def test_nothing_is_cut_off(open_practice, qtbot, name, size):
    """853 × 480 is what 1280 × 720 leaves at 150 %."""
    window = open_practice(name, size=size)
    for i in range(window.tabs.count()):
        window.tabs.setCurrentIndex(i)
        what_is_due(2)
        assert not cut(window)
    assert window.window().size().toTuple() == size


def letters(window) -> list[str]:
    """Letters that Alt reaches now, menus and tabs included."""
    from PySide6.QtGui import QKeySequence

    shown = [w for w in window.findChildren(QLabel) if w.isVisible() and w.buddy() is not None]
    shown += [w for w in window.findChildren(QAbstractButton) if w.isVisible()]
    texts = [w.text() for w in shown] + [a.text() for a in window.window().menuBar().actions()]
    for tabs in window.findChildren(QTabWidget):
        texts += [tabs.tabText(i) for i in range(tabs.count())]
    keys = [QKeySequence.mnemonic(t).toString() for t in texts]
    return [key for key in keys if key]


@pytest.mark.parametrize("name", [ALL])
def test_no_letter_stands_for_two_things(open_practice, name):
    window = open_practice(name, size=(1920, 1080))
    for i in range(window.tabs.count()):
        window.tabs.setCurrentIndex(i)
        QApplication.processEvents()
        found = letters(window)
        assert len(found) > 10 and len(found) == len(set(found)), sorted(found)


def test_no_letter_stands_for_two_things_in_the_debrief(looked_back):
    QApplication.processEvents()
    found = letters(looked_back)
    assert len(found) > 6 and len(found) == len(set(found)), sorted(found)


def test_colours_reach_every_part(window):
    for theme in (DARK, HIGH_CONTRAST, LIGHT):
        window.look.theme = theme
        assert all(
            panel.look.theme is theme for panel in (*window.panels, window.sight, window.hands, window.notebook)
        )


def test_everything_has_a_name_and_can_be_reached_by_key(window):
    from PySide6.QtWidgets import QAbstractButton, QAbstractSlider, QAbstractSpinBox, QComboBox, QLineEdit, QScrollBar

    for kind in (QAbstractButton, QAbstractSlider, QAbstractSpinBox, QComboBox, QLineEdit):
        for widget in window.findChildren(kind):
            if isinstance(widget, QScrollBar) or isinstance(widget.parent(), QAbstractSpinBox | QComboBox):
                continue
            if widget.objectName().startswith("qt_") or type(widget).__name__ in ("QToolButton",):
                continue
            from PySide6.QtGui import QAccessible

            name = QAccessible.queryAccessibleInterface(widget).text(QAccessible.Text.Name)
            assert name, widget
            assert widget.focusPolicy() & Qt.FocusPolicy.TabFocus, name


def test_from_the_menu_to_an_exercise_and_a_lesson(open_window, qtbot):
    main = open_window()
    for lessons in (False, True):
        menu = next(a.menu() for a in main.menuBar().actions() if a.text() == "&Practice")
        menu.actions()[1 if lessons else 0].trigger()
        choice = next(c for c in main.findChildren(Choice) if c.isVisible())
        if not lessons:
            QTest.keyClicks(choice.code, "4711")
            QTest.keyClicks(choice.trainee, "A. Trainee")
        QTest.keyClick(choice.list, Qt.Key.Key_Down)
        QTest.keyClick(choice.list, Qt.Key.Key_Return)
        window = (main.learn if lessons else main.practice).open_pages[-1]
        if not lessons:
            assert (window.attempt.seed, window.attempt.trainee) == (4711, "A. Trainee")
        main.look.theme = DARK
        assert window.look.theme is DARK
        main.look.theme = LIGHT
        window.discard()
    assert main.places.open_pages == []


def test_a_strange_code_and_a_strange_file_are_refused_in_a_sentence(open_window, tmp_path):
    main = open_window()
    choice = main.practice.choose()
    choice.code.setText("fault")
    click(choice.begin)
    assert "whole number" in choice.problem.text() and choice.isVisible()
    path = Path(tmp_path / "strange.json")
    path.write_text("{}", encoding="utf-8")
    choice.add_file(path)
    assert "strange.json" in choice.problem.text()
    choice.reject()
    assert main.practice.open_path(path) is None
    box = main.findChild(QMessageBox)
    assert "strange.json" in box.text()
    box.done(0)


def test_the_debrief_changes_size_type_and_colours_once_the_room_is_gone(window):
    window.model.do(do.HandIn())
    QApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete.value)  # as the event loop does soon after
    assert not isValid(window.split)
    font = QApplication.font()
    larger = QApplication.font()
    larger.setPointSizeF(1.5 * font.pointSizeF())
    try:
        window.window().resize(1600, 900)
        QApplication.setFont(larger)
        QApplication.processEvents()
    finally:
        QApplication.setFont(font)
    window.look.line_factor = PROJECTED
    window.look.theme = DARK
    QApplication.processEvents()
    assert window.debrief.width() > 1500


def test_the_trainees_name_is_remembered(open_window, tmp_path, qtbot):
    main = open_window()
    room = place_in(main, tmp_path)
    choice = room.choose()
    assert choice.trainee.text() == ""
    label = next(w for w in choice.findChildren(QLabel) if w.buddy() is choice.trainee)
    choice.trainee.setText("Zoë T.")
    qtbot.waitUntil(choice.isVisible)
    words = label.x() + label.fontMetrics().horizontalAdvance(label.text().replace("&", ""))
    assert choice.trainee.x() - words >= 8, "the label does not touch its field"
    click(choice.begin)
    window = room.open_pages[-1]
    assert window.attempt.trainee == "Zoë T."
    window.discard()
    for again in (room, place_in(main, tmp_path)):
        choice = again.choose()
        assert choice.trainee.text() == "Zoë T."
        choice.reject()
