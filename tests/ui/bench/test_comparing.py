"""A moment is kept, and everything shown has it as a ghost until it is forgotten."""

from __future__ import annotations

import re

from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from magview.bench.actions import MoveTeeth, PlaceMagneto, TurnScrew
from magview.bench.state import readings
from magview.spec.library import find_magneto

PICTURES = ("breaker", "contact", "drive", "shaft", "strip")


def images(window):
    QApplication.processEvents()
    return {name: getattr(window, name).grab().toImage() for name in PICTURES}


def test_a_key_keeps_a_ghost_in_every_picture_and_forgets_it(open_window):
    window = open_window("seven-radial-left")
    model, words = window.model, window.comparing.words
    QTest.keyClick(window.breaker, Qt.Key.Key_K)
    assert window.menus.compare_action.isChecked() and "are the same" in words.text()
    before = readings(model.state)
    model.send(TurnScrew(12.0))
    model.send(MoveTeeth(1, 0))
    after = readings(model.state)
    later = float(after.e_gap_error_deg[0] - before.e_gap_error_deg[0])
    wider = float(after.max_gap_mm[0] - before.max_gap_mm[0])
    way = "later" if later > 0 else "earlier"
    assert f"open {abs(later):.2f}° of rotor {way}" in words.text()
    assert wider < 0 and f"{-wider:.3f} mm narrower" in words.text(), "the screw closes"
    assert words.isVisible()
    compared = images(window)
    QTest.keyClick(window.breaker, Qt.Key.Key_K)
    assert not words.isVisible() and window.comparing.kept is None
    plain = images(window)
    assert [name for name in PICTURES if compared[name] == plain[name]] == []


def test_a_ghost_is_of_the_magneto_it_was_taken_from(open_window):
    window = open_window("seven-radial")
    window.menus.compare_action.trigger()
    window.model.send(PlaceMagneto(find_magneto("nine-radial")))
    assert "Another magneto" in window.comparing.words.text()
    with_it = images(window)
    window.menus.compare_action.trigger()
    without = images(window)
    assert all(with_it[name].size() != without[name].size() or with_it[name] == without[name] for name in ("drive",))
    assert not re.search("before", window.breaker.accessibleDescription())


def test_hidden_numbers_are_not_told_by_the_line(open_window):
    window = open_window("seven-radial")
    window.menus.compare_action.trigger()
    window.model.send(TurnScrew(12.0))
    window.breaker.numbers = False
    window.comparing.show_words()
    assert not re.search(r"\d", window.comparing.words.text()) and "narrower" in window.comparing.words.text()
