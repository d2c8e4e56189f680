"""Targets of the pointer in every place at the smallest usual size: large enough to hit, and named."""

from __future__ import annotations

import numpy as np
import pytest
from PySide6.QtCore import QEvent, QPointF, Qt, QTimer
from PySide6.QtGui import QHelpEvent, QMouseEvent
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractSpinBox,
    QApplication,
    QComboBox,
    QLabel,
    QPushButton,
    QStatusBar,
    QToolButton,
    QToolTip,
    QWidget,
)

from magview.practice.library import find_exercise, find_lesson
from magview.ui.bench.panes import PANELS
from magview.ui.shell.places import PLACES

LEAST_PX = 24
"""Smallest target in both directions: target size (minimum) of the Web Content Accessibility Guidelines 2.2."""


def settled() -> None:
    """Let layouts come to rest."""
    for _ in range(4):
        QApplication.processEvents()


def fronts(window):
    """Every place with its pages, one after another in front."""
    for place in PLACES:
        window.places.go(place)
        settled()
        yield place
        if place == "bench":
            for at, name in enumerate(PANELS):
                window.tabs.setCurrentIndex(at)
                settled()
                yield f"bench, {name}"
        elif place == "learn":
            window.learn.begin(find_lesson("plate-and-screw"))
            settled()
            yield "a lesson"
        elif place == "practise":
            page = window.practice.begin(find_exercise("gap-wrong"), 7)
            settled()
            yield "an exercise"
            page.kept_elsewhere()
        elif place == "work":
            window.work.open_shipped()
            settled()
            yield "a job sheet"


def label_of(widget: QWidget) -> str:
    """The name that someone at a widget is given: its own text, its accessible name, its tool tip or its label."""
    text = widget.text() if isinstance(widget, QAbstractButton) else ""
    labels = [label.text() for label in widget.window().findChildren(QLabel) if label.buddy() is widget]
    return (text or widget.accessibleName() or widget.toolTip() or "".join(labels)).strip()


def faults(box: QWidget) -> list[str]:
    """Controls in sight that are too small to hit, or have no name."""
    found = []
    for kind in (QAbstractButton, QAbstractSpinBox, QComboBox):
        for widget in box.findChildren(kind):
            if not widget.isVisible() or widget.visibleRegion().isEmpty():
                continue
            about = f"{type(widget).__name__} {label_of(widget)!r} in {type(widget.parentWidget()).__name__}"
            if min(widget.width(), widget.height()) < LEAST_PX:
                found.append(f"{about}: {widget.width()} × {widget.height()} px")
            if not label_of(widget):
                found.append(f"{about}: no name")
    return found


def test_everything_to_press_is_large_enough_and_named(open_window, qtbot):
    window = open_window("seven-radial-left", (1280, 660))
    found = {page: short for page in fronts(window) if (short := faults(window))}
    window.places.go("bench")
    window.plots.wait()
    timers = [t for t in window.findChildren(QTimer) if not isinstance(t.parent(), QStatusBar)]
    qtbot.waitUntil(lambda: not any(timer.isActive() for timer in timers))
    assert not found, "\n".join(f"{page}: {text}" for page, short in found.items() for text in short)


@pytest.mark.parametrize(("size", "name", "wrong"), [((23, 40), "Turn", 1), ((40, 40), "", 1), ((24, 24), "Turn", 0)])
def test_small_and_nameless_controls_are_found(qtbot, size, name, wrong):
    box = QWidget()
    qtbot.addWidget(box)
    for button in (QPushButton(name, box), QToolButton(box)):
        button.setToolTip(name)
        button.setFixedSize(*size)
    box.show()
    assert len(faults(box)) == 2 * wrong


def rest_on(view, at: QPointF) -> str:
    """Move the pointer onto a picture and let it rest there; the name that then appears."""
    where, none = at.toPoint(), Qt.MouseButton.NoButton
    held = QPointF(view.viewport().mapToGlobal(where)), none, none, Qt.KeyboardModifier.NoModifier
    QApplication.sendEvent(view.viewport(), QMouseEvent(QEvent.Type.MouseMove, at, *held))
    QApplication.sendEvent(
        view.viewport(), QHelpEvent(QEvent.Type.ToolTip, where, view.viewport().mapToGlobal(where))
    )
    text = QToolTip.text()
    QToolTip.hideText()
    return text


def hand_cursor(view) -> bool:
    """Whether the pointer shows that something can be taken hold of."""
    return view.viewport().cursor().shape() == Qt.CursorShape.OpenHandCursor


def test_handles_of_the_breaker_end_can_be_hit_and_are_named(open_window):
    window = open_window("seven-radial-left", (1280, 660))
    view = window.breaker
    settled()
    scale = view.viewportTransform().m22()
    for hand in view.picture.hands:
        name = "rotor" if hand.part == "cam" else hand.part
        if hand.part == "rotor":  # a ring: over the breadth of a target at the top
            radii = np.hypot(*hand.outline.T)
            at = view.pixel(0.0, float(radii.min() + radii.max()) / 2)
            ways = [(0, 0), (0, 11), (0, -11)]
        elif hand.part == "backplate":  # at its edge, beside the dial
            at = view.pixel(0.0, float(hand.outline[:, 1].max()) - 12.0 / scale)
            ways = [(0, 0), (0, 11), (0, -11), (11, 0), (-11, 0)]
        else:
            middle = (hand.outline.min(axis=0) + hand.outline.max(axis=0)) / 2
            at = view.pixel(float(middle[0]), float(middle[1]))
            ways = [(0, 0), (0, 11), (0, -11), (11, 0), (-11, 0)]
        for x, y in ways:
            assert rest_on(view, at + QPointF(x, y)) == name, (hand.part, x, y)
            assert hand_cursor(view), (hand.part, x, y)


def across(view, at: QPointF, reach: int = 11) -> set[str]:
    """Names about a point, over the breadth of a target."""
    ways = [(0, 0), (0, reach), (0, -reach), (reach, 0), (-reach, 0)]
    return {rest_on(view, at + QPointF(x, y)) for x, y in ways}


def test_screws_and_straightedge_can_be_hit_and_are_named(open_window):
    """Where two targets meet, each has what is nearer to it: lock screw and contact screw stand close together."""
    window = open_window("seven-radial-left", (1280, 660))
    view = window.breaker
    settled()
    places = [
        (part, view.viewportTransform().map(view.scene_of_parts.to_scene(group, at)))
        for part, group, at in view.drawing.screws
    ]
    (contact,) = (hand for hand in view.picture.hands if hand.part == "contact screw")
    screw = view.pixel(*contact.centre)
    for part, at in places:
        if part == "clamp screw":
            assert across(view, at) == {part}
            continue
        apart = at - screw
        length = float(np.hypot(apart.x(), apart.y()))
        towards = apart / length
        assert length >= LEAST_PX - 4, "the two targets all but clear each other"
        assert rest_on(view, at) == part
        assert rest_on(view, at + towards * 11.0) == part
        assert rest_on(view, at - towards * (length / 2 - 1.0)) == part
        assert rest_on(view, screw + towards * (length / 2 - 1.0)) == "contact screw"
    outer, inner = (view.place_of("step"), view.pixel(0.0, 0.0))
    along = outer - inner
    along /= float(np.hypot(along.x(), along.y()))
    on_it = inner + along * 75.0
    normal = QPointF(-along.y(), along.x())
    for off in (0.0, 11.0, -11.0):
        assert rest_on(view, on_it + normal * off) == "straightedge", off
    assert rest_on(view, on_it + normal * 16.0) == "backplate"


def test_rings_of_the_coupling_are_as_broad_as_a_target(open_window):
    view = open_window("seven-radial-left", (1280, 660)).drive
    settled()
    middle, held = view.pixel(0.0, 0.0), {}
    for radius in range(0, 140):
        rest_on(view, middle - QPointF(float(radius), 0.0))
        if hand_cursor(view):
            name = view.viewport().toolTip().split(":")[0]
            held[name] = held.get(name, 0) + 1
    assert set(held) == {"drive flange", "disc", "magneto flange"}
    assert min(held.values()) >= LEAST_PX, held


def test_crank_and_timing_disc_are_named_and_can_be_hit(open_window):
    window = open_window("seven-radial-left", (1280, 660))
    window.tabs.setCurrentIndex(list(PANELS).index("timing"))
    settled()
    view = window.crank
    middle = view.pixel(0.0, 0.0)
    assert across(view, middle) == {"crank"}
    disc = view._drawing.disc_mm * view.pixels_per_mm()  # noqa: SLF001
    assert disc >= LEAST_PX
    at = middle - QPointF(disc - 13.0, 0.0)
    assert across(view, at) <= {"timing disc", "crank"}
    assert hand_cursor(view)


def test_parts_of_the_coupling_are_named_under_the_pointer(open_window):
    view = open_window("seven-radial-left", (1280, 660)).drive
    settled()
    port, names = view.viewport(), set()
    for x in range(0, port.width(), 8):
        at = QPointF(x, port.height() / 2)
        rest_on(view, at)
        if hand_cursor(view):
            names.add(port.toolTip().split(":")[0])
    assert {"drive flange", "disc"} <= names or {"magneto flange", "disc"} <= names
