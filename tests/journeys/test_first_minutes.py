"""The guide's first ten minutes, played by mouse and keys as they are written."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from magview.bench.placing import laid_out
from magview.bench.state import opening_deg, readings
from magview.drawing.breaker_end import breaker_end_sense
from magview.guide.pages import pages
from magview.practice import shelf
from magview.spec.library import first_shipped
from tests.hands import click, drag_rotor, what_is_due
from tests.windows import main_window

SAID = pages()["first-minutes"].source
CTRL, SHIFT, ALT = (
    Qt.KeyboardModifier.ControlModifier,
    Qt.KeyboardModifier.ShiftModifier,
    Qt.KeyboardModifier.AltModifier,
)


@pytest.fixture
def window(qtbot):
    """The window as the program opens it."""
    opened = main_window(laid_out(first_shipped()), first="start")
    opened.resize(1280, 660)
    opened.show()
    qtbot.waitUntil(opened.isVisible)
    opened.activateWindow()
    qtbot.waitUntil(opened.isActiveWindow)
    opened.furnish()
    what_is_due()
    yield opened
    for page in opened.places.open_pages:
        page.discard()
    opened.close()
    opened.deleteLater()


def press(window, key, modifiers=Qt.KeyboardModifier.NoModifier) -> None:
    QTest.keyClick(window.places.front.focusWidget() or window, key, modifiers)


def to_the_bench(window) -> None:
    press(window, Qt.Key.Key_5, CTRL)
    window.furnish()
    QTest.mouseClick(
        window.breaker.viewport(), Qt.MouseButton.LeftButton, pos=window.breaker.viewport().rect().center()
    )


def test_start(window):
    assert "It has three doors: **Learn**, **Practise** and **Work**. Each names the next thing behind it." in SAID
    page = window.places.front
    assert [frame.name.text() for frame in page.doors] == ["Learn", "Practise", "Work"]
    assert all(frame.thing.text() for frame in page.doors)
    assert "Press **L**: the first lesson begins." in SAID
    press(window, Qt.Key.Key_L)
    assert window.places.name == "learn" and shelf.lessons()[0].name in window.windowTitle()
    assert "Press **Ctrl+1**: you are at **Start** again. The door **Learn** says **Under way** now" in SAID
    lesson = window.places.front
    press(window, Qt.Key.Key_1, CTRL)
    assert window.places.front is page and page.doors[0].kicker.text() == "Under way"
    assert "its button goes on with the lesson. One button of the page is filled" in SAID
    assert [frame.button.filled for frame in page.doors].count(True) == 1
    click(page.doors[0].button)
    assert window.places.front is lesson
    assert "Press **Ctrl+5**: you are at the **Bench**" in SAID
    press(window, Qt.Key.Key_5, CTRL)
    assert window.places.name == "bench"
    assert f"ticks **{page.away.text().replace('&', '')}**" in SAID


def test_turn_it(window, qtbot):
    to_the_bench(window)
    state, breaker = (lambda: window.model.state), window.breaker
    assert "press **1**: the rotor is in hand. Turn it with **Up** and **Down**, a degree a step" in SAID
    QTest.keyClick(breaker, Qt.Key.Key_1)
    was = state().rotor_deg
    QTest.keyClick(breaker, Qt.Key.Key_Up)
    assert state().rotor_deg == pytest.approx(was + 1.0)
    QTest.keyClick(breaker, Qt.Key.Key_Up, SHIFT)
    assert state().rotor_deg == pytest.approx(was + 1.1)
    assert "The magneto lies on the bench, off its engine. Press **Space**: you let go." in SAID
    assert "The magnet pulls the rotor to neutral, as a real one does. **Space** again holds it." in SAID
    assert not state().engaged.mounted
    QTest.keyClick(breaker, Qt.Key.Key_Space)
    assert not state().held
    qtbot.waitUntil(lambda: abs(state().rotor_deg % 90.0) < 0.5, timeout=20_000)
    QTest.keyClick(breaker, Qt.Key.Key_Space)
    assert state().held

    assert "It catches where the contacts just open, at the top of a lobe, at the E-gap and at neutral." in SAID
    assert "With **Alt** it passes them." in SAID
    e_gap = state().magneto.e_gap_deg
    sense = breaker_end_sense(state().magneto)
    for modifiers, ends in ((Qt.KeyboardModifier.NoModifier, e_gap), (ALT, e_gap - 0.4)):
        QTest.keyClick(breaker, Qt.Key.Key_Home)
        for _ in range(6):
            QTest.keyClick(breaker, Qt.Key.Key_Down)
        start = state().rotor_deg
        assert abs(start - e_gap) > 3.0
        drag_rotor(breaker, sense * start, sense * (e_gap - 0.4), modifiers)
        assert state().rotor_deg == pytest.approx(ends, abs=0.02)

    assert "press **To opening**: the rotor goes where lobe 1 just opens the contacts." in SAID
    click(window.panel.setting.to_opening)
    assert state().rotor_deg == pytest.approx(opening_deg(state()), abs=1e-6)


def test_put_something_out_and_right_again(window):
    to_the_bench(window)
    state, breaker = (lambda: window.model.state), window.breaker
    begun = state().backplate_deg, state().screw_deg, state().lock_tight
    assert "press **Page Up** once. The opening comes two and a half degrees late; the gap stays as it was." in SAID
    before = readings(state())
    QTest.keyClick(breaker, Qt.Key.Key_2)
    QTest.keyClick(breaker, Qt.Key.Key_PageUp)
    late = readings(state())
    assert late.e_gap_error_deg[0] == pytest.approx(2.5) and late.max_gap_mm[0] == pytest.approx(before.max_gap_mm[0])
    assert "press **Page Down** once: ten degrees, contacts wider. The gap is larger, and they open earlier." in SAID
    QTest.keyClick(breaker, Qt.Key.Key_3)
    QTest.keyClick(breaker, Qt.Key.Key_PageDown)
    wider = readings(state())
    assert state().screw_deg == pytest.approx(-10.0)
    assert wider.max_gap_mm[0] > late.max_gap_mm[0] and wider.opens_deg[0] < late.opens_deg[0]

    assert "press **Show me, step by step**. The readings are right once the lock screw is tight" in SAID
    click(window.panel.do_it)
    show = window.panel.put_right.show_me
    turned = []
    while show.running:
        show.tick(0.5)
        turned.append(state().screw_deg)
    assert max(turned) == pytest.approx(3.0, abs=0.01)  # as far as tightening will carry it along
    right = readings(state())
    assert right.within_limits and right.e_gap_error_deg[0] == pytest.approx(0.0, abs=0.01)
    assert right.max_gap_mm[0] == pytest.approx(0.33, abs=1e-4)

    assert "**Ctrl+Z** goes back, step by step; **Ctrl+Shift+Z** goes forward again." in SAID

    def set_at() -> tuple[float, float, bool]:
        return state().backplate_deg, state().screw_deg, state().lock_tight

    for to, keys in ((begun, CTRL), (set_at(), CTRL | SHIFT)):
        for _ in range(8):
            if set_at() != to:
                press(window, Qt.Key.Key_Z, keys)
        assert set_at() == to
