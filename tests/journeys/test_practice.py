"""Whole exercises solved at the real window by its instruments alone, and a lesson by the keyboard alone."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from magview.physics.engine.crank import true_tdc_from_stops
from tests.counts import sampled
from tests.journeys.hands_on_window import WindowHands
from tests.journeys.window_trainee import WindowTrainee
from tests.wording import says


@pytest.mark.parametrize("name", sampled(["several-teeth-out", "creeping-screw"], 1))
def test_an_exercise_is_solved_to_full_marks_at_the_window(open_practice, name):
    window = open_practice(name, 11)
    WindowTrainee(window).work()
    QApplication.processEvents()
    told = window.debrief.told
    assert window.debrief.verdict.text() == says("Passed with {percent} %.", percent=100)
    assert all(row.full for row in told.marking.rows) and not told.marking.dangers


class Keys:
    """The keyboard and nothing else: Tab from field to field, Space, arrows, Alt with a letter."""

    def __init__(self, window, qtbot) -> None:
        self.window, self.qtbot = window, qtbot

    def tab(self, number: int) -> None:
        QTest.keyClick(self.window, getattr(Qt.Key, f"Key_{number}"), Qt.KeyboardModifier.AltModifier)
        self.qtbot.waitUntil(lambda: self.window.tabs.currentIndex() == number - 1)

    def to(self, widget) -> None:
        """Tab until it has the keyboard."""
        for _ in range(120):
            if QApplication.focusWidget() is widget:
                return
            QTest.keyClick(QApplication.focusWidget() or self.window, Qt.Key.Key_Tab)
        raise AssertionError(f"Tab never comes to {widget}")

    def press(self, widget) -> None:
        self.to(widget)
        QTest.keyClick(widget, Qt.Key.Key_Space)

    def choose(self, combo, data) -> None:
        self.to(combo)
        QTest.keyClick(combo, Qt.Key.Key_Home)
        for _ in range(combo.findData(data)):
            QTest.keyClick(combo, Qt.Key.Key_Down)

    def type(self, field, words: str) -> None:
        self.to(field)
        field.selectAll()
        QTest.keyClicks(field, words)
        QTest.keyClick(field, Qt.Key.Key_Return)


def test_top_dead_centre_is_learnt_by_keyboard_alone(open_practice, qtbot):
    window = open_practice("top-dead-centre")
    keys, strip = Keys(window, qtbot), window.strip
    hands = WindowHands.__new__(WindowHands)  # for its eyes alone
    hands.window = window

    def step() -> str:
        return strip.title.text()

    assert step().startswith("Step 1 of ") and step().endswith("Chocks")
    keys.tab(3)
    keys.press(window.work.plugs)  # not what was asked for: the lesson waits, and says so
    assert step().startswith("Step 1") and strip.answer.text().startswith("✗ Not yet")
    keys.press(window.work.chocks)
    assert step().endswith("The rest of the list")
    for box in window.work.safe.values():
        keys.press(box)
    assert step().endswith("The jumper")
    keys.press(window.work.jumper)
    # What is done already need not be done again.
    assert window.work.plugs.isChecked()
    assert strip.answer.text().endswith("so already.")
    assert step().endswith("The stop")
    keys.tab(2)
    keys.press(window.turning.at_propeller)
    keys.press(window.tray.stop)
    if not window.tray.stop.isChecked():
        assert "too high" in strip.answer.text()
        keys.type(window.turning.amount, "120")
        keys.press(window.turning.with_)
        keys.press(window.tray.stop)
    assert step().endswith("From one side")
    keys.choose(window.turning.until, "stop")
    keys.press(window.turning.with_)
    one = hands.disc()
    assert step().endswith("From the other")
    keys.press(window.turning.against)
    other = hands.disc()
    assert step().endswith("Write it down")
    zero = (true_tdc_from_stops(one, other) + 180.0) % 360.0 - 180.0
    keys.tab(4)
    keys.choose(window.notebook.kind, "disc-zero")
    keys.type(window.notebook.value, f"{zero:.2f}")
    assert step().endswith("Set the disc")
    keys.tab(2)
    keys.type(window.tray.disc.amount, f"{abs(zero):.2f}")
    keys.press(window.tray.disc.less if zero > 0 else window.tray.disc.more)
    assert step().endswith("Stop out")
    keys.press(window.tray.stop)
    assert step().endswith("Jumper off")
    keys.tab(3)
    keys.press(window.work.jumper)
    assert step().endswith("done")
    assert strip.words.text().startswith("What you have learnt: ")
    noticed = [s.done for s in window.model.run.lesson.steps if s.done]
    assert noticed and all(line in strip.words.text() for line in noticed)


def test_the_parts_are_learnt_by_pointing(open_practice):
    """A click on each part in the picture; a wrong one is named and the lesson waits."""
    from PySide6.QtCore import QEvent

    from tests.hands import send_mouse

    window = open_practice("what-the-parts-are", size=(1920, 1080))
    breaker, strip = window.pictures.breaker, window.strip

    def point(part: str) -> None:
        group, at = breaker.drawing.anchors[part]
        place = breaker.viewportTransform().map(breaker.scene_of_parts.to_scene(group, at))
        for kind in (QEvent.Type.MouseButtonPress, QEvent.Type.MouseButtonRelease):
            send_mouse(breaker, kind, place)

    point("cam")
    assert strip.answer.text() == "✗ That is the cam. The step waits for the rotor to be pointed at."
    for lesson_step in window.model.run.lesson.steps:
        assert window.model.run.step is lesson_step
        point(lesson_step.until[0].what)
    assert window.model.run.done
    assert window.model.state.rotor_deg == pytest.approx(window.model.state.magneto.e_gap_deg), (
        "pointing turns nothing"
    )
