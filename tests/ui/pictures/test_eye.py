"""The eye over the straightedge: drawn ahead, it sees the edge short, whichever way the cam turns."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QEvent, QPointF, Qt
from PySide6.QtGui import QMouseEvent
from PySide6.QtWidgets import QApplication

from magview.bench.actions import TurnRotor
from magview.ui.pictures.eye import Eye


def drag(eye: Eye, by: QPointF) -> None:
    left, none = Qt.MouseButton.LeftButton, Qt.MouseButton.NoButton
    start = eye.mapToGlobal(QPointF(15.0, 15.0))
    for kind, at, button, held in (
        (QEvent.Type.MouseButtonPress, start, left, left),
        (QEvent.Type.MouseMove, start + by, none, left),
        (QEvent.Type.MouseButtonRelease, start + by, left, none),
    ):
        event = QMouseEvent(kind, eye.mapFromGlobal(at), at, button, held, Qt.KeyboardModifier.NoModifier)
        QApplication.sendEvent(eye, event)


@pytest.mark.parametrize("mirrored", [False, True])
@pytest.mark.parametrize("name", ["seven-radial", "nine-radial"])
def test_an_eye_dragged_the_way_the_edge_goes_is_ahead_of_it(open_window, name, mirrored):
    """The nine-cylinder's cam turns against its rotor; the way is taken from the edge's own motion."""
    window = open_window(name, (1280, 660))
    view, model = window.breaker, window.model
    view.set_mirrored(mirrored)
    eye = Eye(view, window.look, 45.0)
    eye.show_at(0.0, True)
    QApplication.processEvents()
    before = view.place_of("step")
    model.send(TurnRotor(model.state.rotor_deg + 1.0))
    way = view.place_of("step") - before
    way /= (way.x() ** 2 + way.y() ** 2) ** 0.5
    drag(eye, way * 15.0)
    assert eye.deg < -5.0, "ahead is negative, and sees the edge short"
    eye.show_at(0.0, True)
    drag(eye, way * -15.0)
    assert eye.deg > 5.0
    eye.deleteLater()
