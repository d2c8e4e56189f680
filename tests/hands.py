"""A hand on the mouse, for tests of pictures and of the practice window."""

from __future__ import annotations

import math

from PySide6.QtCore import QEvent, QEventLoop, QPoint, QPointF, Qt, QTimer
from PySide6.QtGui import QMouseEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QCheckBox, QGraphicsView


def send_mouse(
    view: QGraphicsView,
    kind: QEvent.Type,
    where: QPointF,
    modifiers: Qt.KeyboardModifier = Qt.KeyboardModifier.NoModifier,
) -> None:
    """A left-button event with the position not rounded to whole pixels, as a real pointer's on a fine screen."""
    moving = kind == QEvent.Type.MouseMove
    button = Qt.MouseButton.NoButton if moving else Qt.MouseButton.LeftButton
    held = Qt.MouseButton.NoButton if kind == QEvent.Type.MouseButtonRelease else Qt.MouseButton.LeftButton
    port = view.viewport()
    event = QMouseEvent(kind, where, QPointF(port.mapToGlobal(where.toPoint())), button, held, modifiers)
    QApplication.sendEvent(port, event)


def on_picture(view, radius: float, bearing: float) -> QPointF:
    """The pixel at a radius [mm] and bearing [deg clockwise from the top] of a picture."""
    b = math.radians(bearing)
    return view.pixel(radius * math.sin(b), radius * math.cos(b))


def drag_rotor(view, start: float, end: float, modifiers=Qt.KeyboardModifier.NoModifier, release=True) -> None:
    """Drag the rotor from a bearing to another, in ten moves."""
    radius = view.drawing.rim_mm * 1.065
    send_mouse(view, QEvent.Type.MouseButtonPress, on_picture(view, radius, start), modifiers)
    for i in range(1, 11):
        send_mouse(view, QEvent.Type.MouseMove, on_picture(view, radius, start + (end - start) * i / 10), modifiers)
    if release:
        send_mouse(view, QEvent.Type.MouseButtonRelease, on_picture(view, radius, end), modifiers)


def what_is_due(turns: int = 1) -> None:
    """Let the event loop do all that is to come at once or in a millisecond; a turn more for what that sets going."""
    for _ in range(turns):
        loop = QEventLoop()
        QTimer.singleShot(2, loop.quit)  # timers end in the order of their times
        loop.exec()


def timers_at_rest(qtbot, widget) -> None:
    """Wait until no part of a widget waits to do something once."""
    qtbot.waitUntil(lambda: not any(t.isActive() and t.isSingleShot() for t in widget.findChildren(QTimer)))
    what_is_due()


def click(widget) -> None:
    """As a hand does: on the box of a check box, in the middle of anything else."""
    at = QPoint(8, widget.height() // 2) if isinstance(widget, QCheckBox) else widget.rect().center()
    QTest.mouseClick(widget, Qt.MouseButton.LeftButton, pos=at)


def drag(widget, target) -> None:
    """Take something with the left button and let it go in the middle of what `target` then gives."""
    start = widget.rect().center()
    QTest.mousePress(widget, Qt.MouseButton.LeftButton, pos=start)
    for way in (QPoint(0, -6), QPoint(0, -14)):
        move_mouse(widget, start + way)
    over = target()
    end = widget.mapFromGlobal(over.mapToGlobal(over.rect().center()))
    move_mouse(widget, end)
    QTest.mouseRelease(widget, Qt.MouseButton.LeftButton, pos=end)


def move_mouse(widget, at: QPoint) -> None:
    """With the left button down."""
    left, none = Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier
    where = QPointF(at), QPointF(widget.mapToGlobal(at))
    QApplication.sendEvent(widget, QMouseEvent(QEvent.Type.MouseMove, *where, Qt.MouseButton.NoButton, left, none))


def last_act(window):
    """What a practice window has just recorded."""
    return window.attempt.events[-1].act


def show(window, panel) -> None:
    """Bring a practice window's panel to the front."""
    tabs = window.tabs
    tabs.setCurrentIndex(next(i for i in range(tabs.count()) if tabs.widget(i).isAncestorOf(panel)))
