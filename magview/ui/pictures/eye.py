"""The eye that looks over the straightedge: dragged to one side or the other, or by the arrow keys."""

from __future__ import annotations

import math

from PySide6.QtCore import QEvent, QObject, QPointF, Qt, Signal
from PySide6.QtGui import QColor, QKeyEvent, QMouseEvent, QPainter, QPainterPath, QPaintEvent, QPen
from PySide6.QtWidgets import QWidget

from magview.spec.language import tr
from magview.ui.kit.look import Look
from magview.ui.pictures.breaker_view import BreakerView

_SIZE_PX = 30
_PX_A_DEG = 1.5
_BEYOND = 1.06
"""Distance from the middle, of the rim's radius."""


class Eye(QWidget):
    """It stands beyond the straightedge's reading end: on the edge's own line it looks square over it."""

    looked = Signal(float)
    """An eye that has come to rest [deg]: 0 square, positive from behind, negative from ahead."""

    def __init__(self, view: BreakerView, look: Look, most_deg: float) -> None:
        super().__init__(view.viewport())
        self._view, self.look, self._most = view, look, most_deg
        self.deg = 0.0
        self._grip: float | None = None
        self.setFixedSize(_SIZE_PX, _SIZE_PX)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setCursor(Qt.CursorShape.OpenHandCursor)
        self.setAccessibleName(tr("Eye over the straightedge"))
        self.setToolTip(
            tr("Drag the eye along the rim. On the edge's own line it looks square over it; Home brings it there")
        )
        view.viewport().installEventFilter(self)
        self.hide()

    def show_at(self, deg: float, laid: bool) -> None:
        """Stand where the eye is; away where no straightedge is laid on."""
        self.deg = deg
        self.setVisible(laid)
        self._place()

    def _line(self) -> tuple[QPointF, QPointF]:
        """The point beyond the edge [px], and the way there that the edge goes with rotation."""
        drawing, now = self._view.drawing, self._view.now
        group, step = drawing.anchors["step"]
        turned = now.turns_deg[group]
        bearing = math.degrees(math.atan2(step[0], step[1])) + turned
        rim = _BEYOND * drawing.rim_mm

        def at(b: float) -> QPointF:
            r = math.radians(b)
            return self._view.pixel(rim * math.sin(r), rim * math.cos(r))

        sense = self._view.edge_sense
        ahead = at(bearing + sense) - at(bearing - sense)
        length = math.hypot(ahead.x(), ahead.y()) or 1.0
        return at(bearing), ahead / length

    def _place(self) -> None:
        if not self.isVisibleTo(self._view):
            return
        at, ahead = self._line()
        # From ahead is a negative angle: the eye then stands further on with rotation.
        middle = at - ahead * (self.deg * _PX_A_DEG) - QPointF(_SIZE_PX / 2, _SIZE_PX / 2)
        port = self._view.viewport()
        x = min(max(middle.x(), 0.0), port.width() - _SIZE_PX)
        y = min(max(middle.y(), 0.0), port.height() - _SIZE_PX)
        self.move(round(x), round(y))

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """It stays at the edge when the picture is drawn anew."""
        if event.type() in (QEvent.Type.Paint, QEvent.Type.Resize):
            self._place()
        return False

    def paintEvent(self, event: QPaintEvent) -> None:
        """An eye."""
        theme, painter = self.look.theme, QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        lit = self.hasFocus() or self._grip is not None
        painter.setPen(QPen(QColor(theme.hand), 2.4 if lit else 1.6))
        painter.setBrush(QColor(theme.hand_fill if lit else theme.base))
        lid = QPainterPath(QPointF(3.0, 15.0))
        lid.quadTo(QPointF(15.0, 2.0), QPointF(27.0, 15.0))
        lid.quadTo(QPointF(15.0, 28.0), QPointF(3.0, 15.0))
        painter.drawPath(lid)
        painter.setBrush(QColor(theme.hand))
        painter.drawEllipse(QPointF(15.0, 15.0), 4.0, 4.0)

    # -------------------------------------------------------------- hands

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Take hold of it."""
        if event.button() == Qt.MouseButton.LeftButton:
            self._grip = self.deg
            self.setCursor(Qt.CursorShape.ClosedHandCursor)
            self.update()

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """Along the rim."""
        if self._grip is None:
            return
        at, ahead = self._line()
        away = QPointF(self._view.viewport().mapFromGlobal(event.globalPosition())) - at
        self._go(-(away.x() * ahead.x() + away.y() * ahead.y()) / _PX_A_DEG)

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        """While it was dragged it was one look."""
        grip, self._grip = self._grip, None
        self.setCursor(Qt.CursorShape.OpenHandCursor)
        self.update()
        if grip is not None and grip != self.deg:
            self.looked.emit(self.deg)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Arrows by five degrees, one with Shift; Home looks square."""
        step = 1.0 if event.modifiers() & Qt.KeyboardModifier.ShiftModifier else 5.0
        ways = {Qt.Key.Key_Left: 1.0, Qt.Key.Key_Down: 1.0, Qt.Key.Key_Right: -1.0, Qt.Key.Key_Up: -1.0}
        key = Qt.Key(event.key())
        if key == Qt.Key.Key_Home:
            self._go(0.0)
        elif key in ways:
            self._go(self.deg + step * ways[key])
        else:
            event.ignore()
            return
        self.looked.emit(self.deg)

    def _go(self, deg: float) -> None:
        near = 0.0 if abs(deg) < 1.5 else deg
        self.deg = min(max(round(near, 1), -self._most), self._most)
        self._view.set_eye(self.deg)
        self._place()
        self.update()
