"""While the hand turns the rotor, the other pictures take turns; when it rests, all show the same state."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QEvent, QObject, QPoint, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from magview.bench.actions import TurnRotor

IN_TURN = ("contact", "drive", "shaft")


class Paints(QObject):
    """States that pictures were painted in, by their names."""

    def __init__(self, window) -> None:
        super().__init__()
        self.window, self.states = window, {}
        self.pictures = {}
        for name in ("breaker", "strip", *IN_TURN):
            picture = getattr(window, name)
            target = picture.viewport() if hasattr(picture, "viewport") else picture
            self.pictures[target] = name
            target.installEventFilter(self)

    def eventFilter(self, watched, event) -> bool:
        if event.type() == QEvent.Type.Paint:
            self.states.setdefault(self.pictures[watched], []).append(self.window.model.state)
        return False

    def taken(self) -> set[str]:
        """Pictures painted since this was last asked."""
        painted = set(self.states)
        self.states = {}
        return painted


@pytest.fixture
def window(open_window, qtbot):
    window = open_window("seven-radial-left", (1280, 720))
    assert all(getattr(window, name).isVisible() for name in IN_TURN)
    qtbot.waitUntil(lambda: not any(getattr(window, name).follower.behind for name in IN_TURN))
    return window


def test_a_hand_on_the_rotor_waits_for_one_other_picture_at_most(window):
    paints = Paints(window)
    port = window.breaker.viewport()
    at = window.breaker.pixel(0.0, window.breaker.drawing.rim_mm * 1.065).toPoint()
    QTest.mousePress(port, Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier, at)
    QApplication.processEvents()
    seen = []
    for step in range(1, 19):
        paints.taken()
        QTest.mouseMove(port, at + QPoint(4 * step, step))
        QApplication.processEvents()
        seen.append(paints.taken())
    assert window.model.state.rotor_deg != 0.0
    moved = seen[3:]  # the first turns paint what was pressed
    assert all({"breaker", "strip"} <= painted for painted in moved), "what is turned, and its curves, at once"
    assert all(len(painted & set(IN_TURN)) <= 1 for painted in moved), "one other in each turn"
    for name in IN_TURN:
        assert sum(name in painted for painted in moved) >= len(moved) // 4, f"{name} is not forgotten"
    QTest.mouseRelease(port, Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier, at + QPoint(72, 18))


@pytest.mark.parametrize("turns", [1, 2, 3, 4])
def test_when_the_hand_rests_every_picture_shows_the_same_state(window, qtbot, turns):
    paints, gesture = Paints(window), window.model.gesture()
    for step in range(turns):
        window.model.send(TurnRotor(20.0 + 3.0 * step), gesture)
        QApplication.processEvents()
    qtbot.waitUntil(lambda: not any(getattr(window, name).follower.behind for name in IN_TURN))
    QApplication.processEvents()
    last = {name: states[-1] for name, states in paints.states.items()}
    assert set(last) == {"breaker", "strip", *IN_TURN}
    assert all(state is window.model.state for state in last.values())
    paints.taken()
    for _ in range(5):
        QApplication.processEvents()
    assert not paints.taken(), "and then nothing is painted"


def test_a_picture_painted_for_another_reason_shows_the_present_state(window):
    window.model.send(TurnRotor(20.0))
    assert window.drive.follower.behind
    early = window.drive.grab().toImage()
    assert not window.drive.follower.behind
    QApplication.processEvents()
    assert window.drive.grab().toImage() == early


def test_teeth_moved_are_shown_at_once(window):
    window.model.reduced_motion = True
    window.drive.setFocus()
    before = window.drive.accessibleDescription()
    QTest.keyClick(window.drive, Qt.Key.Key_Right)
    assert not window.drive.follower.behind
    assert window.drive.accessibleDescription() != before
