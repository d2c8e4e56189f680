"""A tray's things and the blades of a set: taken by a click, by a key, or by dragging them away."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, QSize, QSizeF, Qt, Signal
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QKeyEvent, QMouseEvent, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QAbstractButton, QSizePolicy

from magview.bench.tray import NUMBERS, Item
from magview.drawing.scene import frame_of
from magview.drawing.things import thing_scene
from magview.spec.language import number, tr
from magview.ui.kit.look import Look
from magview.ui.pictures.breaker_hands import STILL_PX
from magview.ui.pictures.scene_painter import ScenePainter

UNITS = {"inch": "thou", "metric": "mm"}
"""Units that the blades of a set are marked in."""

_PALE = 0.35
"""Share of a thing in use that is still seen on the tray."""

LEAST_PX = 24
"""No target is smaller."""


class Liftable(QAbstractButton):
    """Something that is taken by a click, by a key, or by dragging it away."""

    lifted = Signal(bool)
    """It was taken; together with what is held, where Shift was down."""
    dragged = Signal(QPointF)
    """It is over a point of the screen now."""
    dropped = Signal(QPointF)

    def __init__(self, look: Look) -> None:
        super().__init__()
        self.look = look
        self._from: QPointF | None = None
        self._dragging = False
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setCursor(Qt.CursorShape.OpenHandCursor)
        look.changed.connect(self.update)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """It may become a drag."""
        if event.button() == Qt.MouseButton.LeftButton:
            self._from = event.position()
        super().mousePressEvent(event)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """Beyond a tremble it is a drag."""
        away = event.position() - self._from if self._from is not None else QPointF()
        if self._from is not None and not self._dragging and away.manhattanLength() > STILL_PX:
            self._dragging = True
            self.setDown(False)
            self.lifted.emit(_together(event.modifiers()))
        if self._dragging:
            self.dragged.emit(event.globalPosition())

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        """Put down where it is, or taken in hand."""
        was, self._dragging, self._from = self._dragging, False, None
        if was:
            self.setDown(False)
            self.dropped.emit(event.globalPosition())
            return
        if event.button() == Qt.MouseButton.LeftButton and self.rect().contains(event.position().toPoint()):
            self.setDown(False)
            self.lifted.emit(_together(event.modifiers()))

    def nextCheckState(self) -> None:
        """It is no switch."""

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Return and Space take it."""
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter, Qt.Key.Key_Space):
            self.lifted.emit(_together(event.modifiers()))
        else:
            event.ignore()


def _together(modifiers: Qt.KeyboardModifier) -> bool:
    return bool(modifiers & Qt.KeyboardModifier.ShiftModifier)


class TrayThing(Liftable):
    """One thing: its picture, number and name; pale where it is in use, with the reason where it does not belong."""

    def __init__(self, item: Item, look: Look, painter: ScenePainter, slim: bool = False) -> None:
        super().__init__(look)
        self.item, self.held = item, False
        self._painter, self._slim = painter, slim
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.show_item(item, False)

    def show_item(self, item: Item, held: bool) -> None:
        """Show how it lies now."""
        if (item, held) == (self.item, self.held) and self.accessibleName():
            return
        self.item, self.held = item, held
        self.setAccessibleName(tr("{number}: {thing}", number=NUMBERS[item.thing], thing=item.name))
        told = tr("in hand") if held else item.on or item.why_not or tr("on the tray")
        words = f"{told}; {item.remark}" if item.remark else told
        self.setAccessibleDescription(words)
        self.setToolTip(f"{item.name}: {words}")
        self.setCursor(Qt.CursorShape.ArrowCursor if item.why_not else Qt.CursorShape.OpenHandCursor)
        self.update()

    def sizeHint(self) -> QSize:
        """Room for its picture and, where it can be had, its name."""
        em = self.fontMetrics().height()
        return QSize(3 * em, 2 * em) if self._slim else QSize(6 * em, 5 * em)

    def minimumSizeHint(self) -> QSize:
        """The picture needs some."""
        em = self.fontMetrics().height()
        return QSize(LEAST_PX, max(LEAST_PX, 2 * em)) if self._slim else QSize(3 * em, 3 * em)

    def paintEvent(self, event: QPaintEvent) -> None:
        """The card."""
        theme, painter = self.look.theme, QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        lit = self.held or self.hasFocus()
        painter.setPen(QPen(QColor(theme.hand if lit else theme.hair), 2.0 if lit else 1.0))
        painter.setBrush(QColor(theme.hand_fill if self.held else theme.base))
        painter.drawRoundedRect(QRectF(self.rect()).adjusted(1.5, 1.5, -1.5, -1.5), 4.0, 4.0)
        line = float(self.fontMetrics().height())
        foot = 0.0 if self._slim else line
        room = QRectF(4.0, 4.0, self.width() - 8.0, max(10.0, self.height() - foot - 9.0))
        quiet = bool(self.item.on or self.item.why_not)
        painter.save()
        painter.setOpacity(_PALE if quiet else 1.0)
        painter.translate(room.topLeft())
        size = QSizeF(room.size())
        scene = thing_scene(self.item.thing)
        self._painter.over(painter, scene, size, self.font(), frame_of(scene, size.width(), size.height(), line))
        painter.restore()
        told = self.item.on or self.item.why_not
        if told and self._slim:
            self._paint_sign(painter)
        elif told:
            font = QFont(self.font())
            font.setBold(bool(self.item.on))
            painter.setFont(font)
            painter.setPen(QColor(theme.hand if self.item.on else theme.faint))
            middle = Qt.AlignmentFlag.AlignCenter | Qt.TextFlag.TextWordWrap
            painter.drawText(room, int(middle), told)
            painter.setFont(self.font())
        self._paint_name(painter, line)

    def _paint_sign(self, painter: QPainter) -> None:
        """In so little room a tick says that it is in use, a bar that it does not belong here."""
        theme, side = self.look.theme, 0.5 * self.fontMetrics().height()
        right, top = self.width() - side - 6.0, 6.0
        painter.setPen(QPen(QColor(theme.hand if self.item.on else theme.faint), 2.0))
        if self.item.on:
            at = ((0.0, 0.55), (0.4, 1.0), (1.0, 0.1))
            painter.drawPolyline([QPointF(right + side * x, top + side * y) for x, y in at])
        else:
            painter.drawLine(QPointF(right, top + side), QPointF(right + side, top))

    def _paint_name(self, painter: QPainter, line: float) -> None:
        theme, metrics = self.look.theme, QFontMetricsF(self.font())
        key = str(NUMBERS[self.item.thing])
        side = metrics.horizontalAdvance(key) + 7.0
        foot = QRectF(5.0, self.height() - line - 4.0, self.width() - 10.0, line)
        badge = QRectF(5.0, 5.0, side, line - 1.0)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.setPen(QPen(QColor(theme.hair), 1.0))
        painter.drawRoundedRect(badge, 3.0, 3.0)
        painter.setPen(QColor(theme.text))
        painter.drawText(badge, int(Qt.AlignmentFlag.AlignCenter), key)
        if self._slim:
            return  # hovering names it
        name = metrics.elidedText(self.item.name, Qt.TextElideMode.ElideRight, foot.width())
        painter.setPen(QColor(theme.faint if self.item.why_not else theme.text))
        painter.drawText(foot, int(Qt.AlignmentFlag.AlignCenter), name)


class Leaf(Liftable):
    """One feeler blade, as it is marked."""

    def __init__(self, blade: float, kind: str, look: Look) -> None:
        super().__init__(look)
        self.blade, self.held = blade, False
        self.setText(number(blade))
        self.setAccessibleName(tr("Blade {blade}", blade=f"{number(blade)} {UNITS[kind]}"))
        self.setToolTip(tr("Drag it between the contacts. Shift and a click hold it together with others"))
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def sizeHint(self) -> QSize:
        """As wide as its number, and a hand's target at least."""
        metrics = self.fontMetrics()
        return QSize(max(LEAST_PX, metrics.horizontalAdvance(self.text()) + 6), max(LEAST_PX, metrics.height() + 8))

    def minimumSizeHint(self) -> QSize:
        """No smaller."""
        return self.sizeHint()

    def show_held(self, held: bool) -> None:
        """Show whether it is in hand."""
        if held != self.held:
            self.held = held
            self.setAccessibleDescription(tr("in hand") if held else "")
            self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        """A strip of steel, rounded at its end."""
        theme, painter = self.look.theme, QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        lit = self.held or self.hasFocus()
        painter.setPen(QPen(QColor(theme.hand if lit else theme.hair), 2.0 if lit else 1.0))
        painter.setBrush(QColor(theme.hand_fill if self.held else theme.button))
        painter.drawRoundedRect(QRectF(self.rect()).adjusted(1.0, 1.0, -1.0, -1.0), 4.0, 4.0)
        painter.setPen(QColor(theme.text))
        painter.drawText(QRectF(self.rect()), int(Qt.AlignmentFlag.AlignCenter), self.text())
