"""Hands on a sheet of plots: where a value stands, clicks, drags and the wheel."""

from __future__ import annotations

import numpy as np
from PySide6.QtCore import QEvent, QPoint, QPointF, Qt
from PySide6.QtGui import QMouseEvent, QWheelEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from tests.hands import send_mouse


def pixel(plots, plot: int, x: float, y: float) -> QPointF:
    """Where a value of one of the plots stands on the canvas [px]."""
    scene = plots.plots[plot].getViewBox().mapViewToScene(QPointF(x, y))
    return QPointF(plots.canvas.viewportTransform().map(scene))


def middle(plots, plot: int) -> float:
    """Half-way up a plot."""
    low, high = plots.plots[plot].viewRange()[1]
    return (low + high) / 2


def click(plots, plot: int, x: float, y: float, double: bool = False) -> None:
    """Press and release; `double`: twice, as Qt tells it."""
    at = pixel(plots, plot, x, y)
    send_mouse(plots.canvas, QEvent.Type.MouseMove, at)
    kinds = [QEvent.Type.MouseButtonPress, QEvent.Type.MouseButtonRelease]
    if double:
        kinds += [QEvent.Type.MouseButtonDblClick, QEvent.Type.MouseButtonRelease]
    for kind in kinds:
        send_mouse(plots.canvas, kind, at)
    QApplication.processEvents()


def move_held(plots, at: QPointF) -> None:
    """Move with the left button down; the library takes no more than a hundred moves a second."""
    QTest.qWait(12)
    port = plots.canvas.viewport()
    there = QPointF(port.mapToGlobal(at.toPoint()))
    left, none = Qt.MouseButton.LeftButton, Qt.MouseButton.NoButton
    event = QMouseEvent(QEvent.Type.MouseMove, at, there, none, left, Qt.KeyboardModifier.NoModifier)
    QApplication.sendEvent(port, event)


def drag(plots, plot: int, start: float, end: float) -> None:
    """Drag from one x to another, half-way up."""
    places = [pixel(plots, plot, x, middle(plots, plot)) for x in np.linspace(start, end, 11)]
    send_mouse(plots.canvas, QEvent.Type.MouseMove, places[0])
    send_mouse(plots.canvas, QEvent.Type.MouseButtonPress, places[0])
    for at in places:
        move_held(plots, at)
    send_mouse(plots.canvas, QEvent.Type.MouseButtonRelease, places[-1])
    QApplication.processEvents()


def steps_done(window) -> int:
    """Undo everything, count, and do it again."""
    count = 0
    while window.model.store.undo_name is not None:
        window.model.undo()
        count += 1
    for _ in range(count):
        window.model.redo()
    return count


def wheel(plots, at: QPointF, notches: int) -> None:
    """Turn the mouse wheel over a place."""
    port = plots.canvas.viewport()
    event = QWheelEvent(
        at, QPointF(port.mapToGlobal(at.toPoint())), QPoint(0, 0), QPoint(0, 120 * notches), Qt.MouseButton.NoButton,
        Qt.KeyboardModifier.NoModifier, Qt.ScrollPhase.NoScrollPhase, False,
    )  # fmt: skip
    QApplication.sendEvent(port, event)
    QApplication.processEvents()
