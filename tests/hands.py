"""A hand on the mouse, for tests of pictures."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QPointF, Qt
from PySide6.QtGui import QMouseEvent
from PySide6.QtWidgets import QApplication, QGraphicsView


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
