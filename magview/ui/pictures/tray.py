"""The tray on screen: things with their numbers, and the blades of a set side by side; taken by key, click or drag.

The tray knows what lies where by the items it is shown, and tells what a hand does with them; what comes of it is
somebody else's. Begin reading at `Tray`.
"""

from __future__ import annotations

from collections.abc import Sequence
from functools import partial

from PySide6.QtCore import QEvent, QPoint, QPointF, QRectF, QSize, QSizeF, Qt, Signal
from PySide6.QtGui import (
    QColor,
    QFont,
    QFontInfo,
    QFontMetricsF,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPaintEvent,
    QPen,
    QResizeEvent,
)
from PySide6.QtWidgets import (
    QAbstractButton,
    QFrame,
    QHBoxLayout,
    QLabel,
    QScrollArea,
    QSizePolicy,
    QVBoxLayout,
    QWidget,
)

from magview.bench.tray import NUMBERS, Item, RightHand, Thing
from magview.drawing.scene import frame_of
from magview.drawing.things import thing_scene
from magview.spec.language import number, tr
from magview.ui.kit.inputs import QuietCombo
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

    def __init__(self, item: Item, look: Look, painter: ScenePainter) -> None:
        super().__init__(look)
        self.item, self.held = item, False
        self._painter = painter
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
        return QSize(6 * em, 5 * em)

    def minimumSizeHint(self) -> QSize:
        """The picture needs some."""
        em = self.fontMetrics().height()
        return QSize(3 * em, 3 * em)

    def paintEvent(self, event: QPaintEvent) -> None:
        """The card."""
        theme, painter = self.look.theme, QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        lit = self.held or self.hasFocus()
        painter.setPen(QPen(QColor(theme.hand if lit else theme.hair), 2.0 if lit else 1.0))
        painter.setBrush(QColor(theme.hand_fill if self.held else theme.base))
        painter.drawRoundedRect(QRectF(self.rect()).adjusted(1.5, 1.5, -1.5, -1.5), 4.0, 4.0)
        line = float(self.fontMetrics().height())
        room = QRectF(4.0, 4.0, self.width() - 8.0, max(10.0, self.height() - line - 9.0))
        quiet = bool(self.item.on or self.item.why_not)
        painter.save()
        painter.setOpacity(_PALE if quiet else 1.0)
        painter.translate(room.topLeft())
        size = QSizeF(room.size())
        scene = thing_scene(self.item.thing)
        self._painter.over(painter, scene, size, self.font(), frame_of(scene, size.width(), size.height(), line))
        painter.restore()
        told = self.item.on or self.item.why_not
        if told:
            font = QFont(self.font())
            font.setBold(bool(self.item.on))
            painter.setFont(font)
            painter.setPen(QColor(theme.hand if self.item.on else theme.faint))
            middle = Qt.AlignmentFlag.AlignCenter | Qt.TextFlag.TextWordWrap
            painter.drawText(room, int(middle), told)
            painter.setFont(self.font())
        self._paint_name(painter, line)

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


class _Sideways(QScrollArea):
    """A row that scrolls sideways where it is wider than its room."""

    def __init__(self, row: QWidget) -> None:
        super().__init__()
        self.setWidget(row)
        self.setWidgetResizable(True)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.horizontalScrollBar().rangeChanged.connect(self.refit)

    def refit(self) -> None:
        """Take room for the bar where there is one."""
        bar = self.horizontalScrollBar()
        room = bar.sizeHint().height() if bar.maximum() > 0 else 0
        row = self.widget()
        assert row is not None
        self.setFixedHeight(row.minimumSizeHint().height() + room)

    def minimumSizeHint(self) -> QSize:
        """Room for a few."""
        return QSize(4 * LEAST_PX, LEAST_PX)


class Tray(QFrame):
    """Things that lie ready: a number, a click or a drag takes one. In use it is pale, and comes back by a click."""

    taken = Signal(object)
    """A thing was taken in hand."""
    blade_taken = Signal(float, bool)
    """A blade was taken: alone, or together with those held."""
    back_wanted = Signal(object)
    """A thing that is in use is wanted back."""
    refused = Signal(object)
    """A thing was asked for that does not belong here."""
    dragged = Signal(QPointF)
    dropped = Signal(QPointF)
    kind_chosen = Signal(str)
    """Another set of blades is in hand."""

    def __init__(
        self, items: Sequence[Item], kinds: Sequence[str], look: Look, blades: dict[str, Sequence[float]]
    ) -> None:
        """`kinds`: the sets of blades that lie ready, `blades` what each holds."""
        super().__init__()
        self.look, self._blades = look, blades
        self.setAccessibleName(tr("Tray"))
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Fixed)
        self._painter = ScenePainter(look.theme)
        look.changed.connect(self._recolour)
        column = QVBoxLayout(self)
        column.setContentsMargins(8, 4, 8, 6)
        column.setSpacing(4)
        head = QHBoxLayout()
        title = self.title = QLabel(tr("Tray"))
        font = QFont(title.font())
        font.setBold(True)
        title.setFont(font)
        self.hint = QLabel(tr("drag a thing onto the magneto, or press its number, then Enter"))
        self.hint.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
        head.addWidget(title)
        head.addWidget(self.hint, 1)
        self.sets = QuietCombo()
        self.sets.setAccessibleName(tr("Set of blades"))
        for kind in kinds:
            self.sets.addItem(tr("Blades, thou") if kind == "inch" else tr("Blades, mm"), kind)
        column.addLayout(head)
        self.things: dict[Thing, TrayThing] = {}
        row = QHBoxLayout()
        row.setSpacing(4)
        for item in items:
            thing = self.things[item.thing] = TrayThing(item, look, self._painter)
            thing.lifted.connect(partial(self._lifted, item.thing))
            thing.dragged.connect(self._dragged)
            thing.dropped.connect(self._dropped)
            row.addWidget(thing, 1)
        column.addLayout(row, 1)
        self.leaves: dict[float, Leaf] = {}
        blades_row, leaves = QHBoxLayout(), QWidget()
        self._row = QHBoxLayout(leaves)
        self._row.setContentsMargins(0, 0, 0, 0)
        self._row.setSpacing(2)
        self._blade_room = _Sideways(leaves)
        blades_row.addWidget(self.sets)
        blades_row.addWidget(self._blade_room, 1)
        if kinds:
            column.addLayout(blades_row)
        else:
            for away in (self.sets, self._blade_room):
                away.setParent(self)
                away.hide()
        self.sets.currentIndexChanged.connect(self._set_chosen)
        if kinds:
            self._lay_blades()
        self._size_up()

    # -------------------------------------------------------------- showing

    @property
    def kind(self) -> str:
        """The set of blades in view; empty where there is none."""
        return str(self.sets.currentData() or "")

    def show_items(self, items: Sequence[Item], hand: RightHand) -> None:
        """Show how everything lies now, and what is in hand."""
        for item in items:
            self.things[item.thing].show_item(item, hand.thing is item.thing)
        for blade, leaf in self.leaves.items():
            leaf.show_held(hand.thing is Thing.BLADES and blade in hand.blades)

    def _recolour(self) -> None:
        self._painter.set_theme(self.look.theme)
        self.update()

    def changeEvent(self, event: QEvent) -> None:
        """Type of another size needs other room."""
        super().changeEvent(event)
        if event.type() == QEvent.Type.FontChange:
            self._size_up()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Words that say how it is used, where there is room for all of them."""
        super().resizeEvent(event)
        needed = self.fontMetrics().horizontalAdvance(f"{self.title.text()} {self.hint.text()}")
        self.hint.setVisible(self.width() > needed + 60)

    def _size_up(self) -> None:
        em = QFontInfo(self.font()).pixelSize()
        self.setFixedHeight(round((12.6 if self.leaves else 9.8) * em))

    # -------------------------------------------------------------- blades

    def _set_chosen(self) -> None:
        self._lay_blades()
        self.kind_chosen.emit(self.kind)

    def _lay_blades(self) -> None:
        for leaf in self.leaves.values():
            self._row.removeWidget(leaf)
            leaf.deleteLater()
        self.leaves = {}
        for blade in self._blades[self.kind]:
            leaf = self.leaves[float(blade)] = Leaf(float(blade), self.kind, self.look)
            leaf.lifted.connect(partial(self.blade_taken.emit, float(blade)))
            leaf.dragged.connect(self._dragged)
            leaf.dropped.connect(self._dropped)
            self._row.addWidget(leaf, 1)
        self._blade_room.refit()

    # -------------------------------------------------------------- hands

    def take(self, thing: Thing) -> None:
        """As a click on a thing does."""
        item = self.things[thing].item
        if item.why_not:
            self.refused.emit(thing)
        elif item.on and not item.spots and thing is not Thing.DISC:
            self.back_wanted.emit(thing)
        else:
            self.taken.emit(thing)

    def _lifted(self, thing: Thing, together: bool) -> None:
        self.take(thing)

    def _dragged(self, at: QPointF) -> None:
        self.dragged.emit(at)

    def _dropped(self, at: QPointF) -> None:
        self.dropped.emit(at)

    def over(self, at: QPointF) -> bool:
        """Whether a point of the screen is on the tray."""
        inside: QPoint = self.mapFromGlobal(at).toPoint()
        return self.rect().contains(inside)

    def widget_of(self, thing: Thing) -> QWidget:
        """A thing's card."""
        return self.things[thing]
