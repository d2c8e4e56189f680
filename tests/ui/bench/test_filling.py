"""One picture in all the room of the bench's page, and back."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QPointF, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from magview.bench.actions import TurnRotor
from magview.ui.bench.filling import PICTURES
from tests.hands import on_picture


def target(picture):
    return picture.viewport() if hasattr(picture, "viewport") else picture


def seen(window):
    return [name for name in PICTURES if getattr(window, name).isVisible()]


def test_a_double_click_fills_the_page_with_any_picture_and_esc_puts_it_back(open_window):
    window = open_window("seven-radial-left", (1280, 660))
    page = window.bench_page
    for tab in (0, 1):
        window.tabs.setCurrentIndex(tab)
        pictures = page.pictures
        splitters = (pictures, page.split, pictures.above, pictures.row)
        before = seen(window), [size for splitter in splitters for size in splitter.sizes()]
        for name in before[0]:
            picture = getattr(window, name)
            angle = window.model.state.rotor_deg
            QTest.mouseDClick(target(picture), Qt.MouseButton.LeftButton, pos=picture.rect().center())
            QApplication.processEvents()
            assert seen(window) == [name]
            assert picture.size().width() >= page.width() - 4 and picture.size().height() >= page.height() - 4
            assert not window.tabs.isVisible()
            QTest.keyClick(QApplication.focusWidget(), Qt.Key.Key_Escape)
            QApplication.processEvents()
            assert seen(window) == before[0]
            shares = [size for splitter in splitters for size in splitter.sizes()]
            assert shares == pytest.approx(before[1], abs=5), "as wide as a splitter's handle"
            assert window.model.state.rotor_deg == angle, f"a double click on {name} turns nothing"


def test_hands_keys_lens_and_undo_work_in_a_large_picture(open_window):
    window = open_window("seven-radial", (1280, 660))
    view, model = window.breaker, window.model
    window.model.send(TurnRotor(0.0))
    QTest.mouseDClick(view.viewport(), Qt.MouseButton.LeftButton, pos=view.rect().center())
    QApplication.processEvents()
    rim = view.drawing.rim_mm * 1.065
    QTest.mousePress(view.viewport(), Qt.MouseButton.LeftButton, pos=on_picture(view, rim, 45.0).toPoint())
    for bearing in (50.0, 55.0, 65.0):
        QTest.mouseMove(view.viewport(), on_picture(view, rim, bearing).toPoint())
    QTest.mouseRelease(view.viewport(), Qt.MouseButton.LeftButton, pos=on_picture(view, rim, 65.0).toPoint())
    assert abs(model.state.rotor_deg) == pytest.approx(20.0, abs=1.0)
    QTest.keyClick(view, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    assert model.state.rotor_deg == 0.0
    QTest.keyClick(view, Qt.Key.Key_Up)
    assert model.state.rotor_deg == 1.0
    plain = view.grab().toImage()
    view.hold_lens(QPointF(view.width() / 2, view.height() / 2))
    assert view.grab().toImage() != plain
    view.hold_lens(None)
    QTest.mouseDClick(view.viewport(), Qt.MouseButton.LeftButton, pos=view.rect().center())
    assert window.tabs.isVisible()


def test_the_menu_lists_each_picture_and_the_other_side_of_the_coupling(open_window):
    window = open_window("seven-radial-left")
    view = next(menu for menu in window.bench_page.bar_menus() if menu.objectName() == "view")
    large = next(a.menu() for a in view.actions() if "large" in a.text())
    entries = [a for a in large.actions() if a.isCheckable()]
    assert len(entries) == len(PICTURES)
    for name, entry in zip(PICTURES, entries, strict=True):
        entry.trigger()
        assert seen(window) == [name] and entry.isChecked()
    entry.trigger()
    assert seen(window) != [name] and not entry.isChecked()
    window.breaker.setFocus()
    QTest.keyClick(window.breaker, Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier)
    assert seen(window) == ["breaker"]
    QTest.keyClick(window.breaker, Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier)
    other = window.drive.mirrored
    QTest.keyClick(window.breaker, Qt.Key.Key_E)
    assert window.drive.mirrored is not other
    assert any(a.shortcut().toString() == "E" for a in view.actions())


def test_plots_asked_for_end_a_large_picture(open_window):
    window = open_window("seven-radial")
    window.filling.show("strip")
    QTest.keyClick(window.strip, Qt.Key.Key_L, Qt.KeyboardModifier.ControlModifier)
    assert window.plots.isVisible() and not window.filling.shown
