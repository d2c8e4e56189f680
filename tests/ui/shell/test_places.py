"""One window, six places: gone to by mouse and keys, each kept as it was left; and what is not in front is dead."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QAccessible
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QMessageBox

from magview.practice.actions import LayStraightedge, TurnRotor
from magview.practice.library import find_exercise, find_lesson
from magview.ui.shell.places import PLACES
from tests.hands import click

CTRL = Qt.KeyboardModifier.ControlModifier


def press(window, key, modifiers=Qt.KeyboardModifier.NoModifier) -> None:
    QTest.keyClick(window.places.front.focusWidget() or window, key, modifiers)


def menus(window) -> list[str]:
    return [action.text().replace("&", "") for action in window.menuBar().actions()]


@pytest.mark.parametrize("size", [(1280, 720), (853, 480)])
def test_every_place_is_gone_to_by_key_and_by_button_and_fits(open_window, size):
    window = open_window(size=size)
    for number, name in enumerate(PLACES, 1):
        press(window, Qt.Key(Qt.Key.Key_0 + number), CTRL)
        QApplication.processEvents()
        assert window.places.name == name and window.bar.buttons[name].isChecked()
        assert window.size().toTuple() == size, name
    for name, button in window.bar.buttons.items():
        click(button)
        assert window.places.name == name
        assert QAccessible.queryAccessibleInterface(button).text(QAccessible.Text.Name) == PLACES[name]
        assert button.visibleRegion().boundingRect().width() == button.width(), "nothing of it is cut off"


def test_a_place_keeps_what_it_was_doing(open_window):
    window = open_window()
    lesson = window.learn.begin(find_lesson("plate-and-screw"))
    lesson.model.do(TurnRotor(20.0))
    told = lesson.strip.feedback.head
    for name in ("bench", "guide", "work", "learn"):
        window.places.go(name)
    assert window.places.front is lesson and lesson.strip.feedback.head == told != ""
    assert "Plate and screw" in window.windowTitle() and "Plate and screw" in window.bar.title.text()


def test_keys_and_menus_of_what_is_not_in_front_are_dead(open_window):
    window = open_window("seven-radial-left")
    held = window.model.state.held
    assert "Bench" in menus(window) and "Attempt" not in menus(window)
    page = window.practice.begin(find_exercise("gap-wrong"), 7)
    assert "Attempt" in menus(window) and "Bench" not in menus(window)
    page.pictures.breaker.setFocus()
    press(window, Qt.Key.Key_H)
    press(window, Qt.Key.Key_L, CTRL)
    assert window.model.state.held is held and not window.menus.plots_action.isChecked()
    window.places.go("bench")
    window.breaker.setFocus()
    press(window, Qt.Key.Key_H)
    assert window.model.state.held is not held


def test_a_second_exercise_gives_the_first_one_not_up(open_window):
    window = open_window()
    first = window.practice.begin(find_exercise("gap-wrong"), 7)
    first.model.do(LayStraightedge(True))
    done = len(first.attempt.events)
    assert done > 0
    second = window.practice.begin(find_exercise("pips"), 8)
    assert window.places.front is second
    click(window.bar.back)
    home = window.practice.home
    assert window.places.front is home and not window.bar.back.isVisible()
    listed = home.lists[0]
    assert [listed.item(i).text() for i in range(listed.count())] == [second.windowTitle(), first.windowTitle()]
    listed.setFocus()
    listed.setCurrentRow(1)
    QTest.keyClick(listed, Qt.Key.Key_Return)
    assert window.places.front is first and len(first.attempt.events) == done


def test_the_window_does_not_close_over_unsaved_work(open_window):
    window = open_window()
    attempt = window.practice.begin(find_exercise("gap-wrong"), 7)
    attempt.model.do(LayStraightedge(True))
    window.places.go("bench")
    assert not window.close() and window.isVisible()
    assert window.places.front is attempt, "what would be lost is in front"
    (box,) = attempt.findChildren(QMessageBox)
    assert "has not been saved" in box.text()
    box.close()
