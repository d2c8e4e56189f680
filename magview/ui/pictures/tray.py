"""The tray on screen: things with their numbers, and the blades of a set; taken by key, click or drag.

The tray knows what lies where by the items it is shown, and tells what a hand does with them; what comes of it is
somebody else's. It lies below a picture, or slim beside one. Begin reading at `Tray`.
"""

from __future__ import annotations

from collections.abc import Sequence
from functools import partial

from PySide6.QtCore import QEvent, QPoint, QPointF, QSize, Qt, Signal
from PySide6.QtGui import QFont, QFontInfo, QKeyEvent, QResizeEvent
from PySide6.QtWidgets import QBoxLayout, QFrame, QHBoxLayout, QLabel, QScrollArea, QSizePolicy, QVBoxLayout, QWidget

from magview.bench.tray import NUMBERS, Item, RightHand, Thing
from magview.spec.language import tr
from magview.ui.kit.inputs import QuietCombo
from magview.ui.kit.look import Look
from magview.ui.pictures.scene_painter import ScenePainter
from magview.ui.pictures.tray_things import LEAST_PX, Leaf, TrayThing


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


class _Upright(QScrollArea):
    """A column that scrolls where it is higher than its room."""

    def __init__(self, column: QWidget) -> None:
        super().__init__()
        self.setWidget(column)
        self.setWidgetResizable(True)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)

    def minimumSizeHint(self) -> QSize:
        """Room for one."""
        return QSize(LEAST_PX, LEAST_PX)


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

    left = Signal()
    """The keyboard wants to go back to the picture."""

    def __init__(
        self,
        items: Sequence[Item],
        kinds: Sequence[str],
        look: Look,
        blades: dict[str, Sequence[float]],
        slim: bool = False,
    ) -> None:
        """`kinds`: the sets of blades that lie ready, `blades` what each holds; `slim`: one column, without names."""
        super().__init__()
        self.look, self._blades, self._slim = look, blades, slim
        self.setAccessibleName(tr("Tray"))
        self._painter = ScenePainter(look.theme)
        look.changed.connect(self._recolour)
        self.sets = QuietCombo()
        self.sets.setAccessibleName(tr("Set of blades"))
        for kind in kinds:
            self.sets.addItem(tr("Blades, thou") if kind == "inch" else tr("Blades, mm"), kind)
        self.title, self.hint = QLabel(tr("Tray")), QLabel()
        self.things: dict[Thing, TrayThing] = {}
        for item in items:
            thing = self.things[item.thing] = TrayThing(item, look, self._painter, slim)
            thing.lifted.connect(partial(self._lifted, item.thing))
            thing.dragged.connect(self._dragged)
            thing.dropped.connect(self._dropped)
        self.leaves: dict[float, Leaf] = {}
        leaves = QWidget()
        self._row: QBoxLayout = QVBoxLayout(leaves) if slim else QHBoxLayout(leaves)
        self._row.setContentsMargins(0, 0, 0, 0)
        self._row.setSpacing(2)
        if slim:
            self._lay_column(leaves)
        else:
            self._lay_rows(leaves, bool(kinds))
        self.sets.currentIndexChanged.connect(self._set_chosen)
        if kinds:
            self._lay_blades()
        self._size_up()

    def _lay_column(self, leaves: QWidget) -> None:
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Expanding)
        column = QVBoxLayout(self)
        column.setContentsMargins(3, 3, 3, 3)
        column.setSpacing(2)
        for thing in self.things.values():
            thing.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
            column.addWidget(thing)
        column.addWidget(_Upright(leaves), 1)
        for away in (self.title, self.hint, self.sets):
            away.setParent(self)
            away.hide()

    def _lay_rows(self, leaves: QWidget, blades: bool) -> None:
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Fixed)
        column = QVBoxLayout(self)
        column.setContentsMargins(8, 4, 8, 6)
        column.setSpacing(4)
        head = QHBoxLayout()
        font = QFont(self.title.font())
        font.setBold(True)
        self.title.setFont(font)
        self.hint.setText(tr("drag a thing onto the magneto, or press its number, then Enter"))
        self.hint.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
        head.addWidget(self.title)
        head.addWidget(self.hint, 1)
        column.addLayout(head)
        row = QHBoxLayout()
        row.setSpacing(4)
        for thing in self.things.values():
            row.addWidget(thing, 1)
        column.addLayout(row, 1)
        blades_row, room = QHBoxLayout(), _Sideways(leaves)
        blades_row.addWidget(self.sets)
        blades_row.addWidget(room, 1)
        self._blade_room = room
        if blades:
            column.addLayout(blades_row)
        else:
            for away in (self.sets, room):
                away.setParent(self)
                away.hide()

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
        if self._slim:
            return
        self._blade_room.refit()
        needed = self.fontMetrics().horizontalAdvance(f"{self.title.text()} {self.hint.text()}")
        self.hint.setVisible(self.width() > needed + 60)

    def _size_up(self) -> None:
        if not self._slim:  # whoever gives it a column says how wide
            self.setFixedHeight(round((12.6 if self.leaves else 9.8) * QFontInfo(self.font()).pixelSize()))

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
        if not self._slim:
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

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """With the keyboard on the tray, arrows go along it, a number takes a thing, and Esc goes back."""
        key = Qt.Key(event.key())
        thing = next((t for t, n in NUMBERS.items() if event.text() == str(n)), None)
        if thing in self.things:
            self.take(thing)
        elif key in (Qt.Key.Key_Up, Qt.Key.Key_Left):
            self.focusNextPrevChild(False)
        elif key in (Qt.Key.Key_Down, Qt.Key.Key_Right):
            self.focusNextPrevChild(True)
        elif key == Qt.Key.Key_Escape:
            self.left.emit()
        else:
            super().keyPressEvent(event)

    def take_keyboard(self) -> None:
        """Put the keyboard on the first thing."""
        next(iter(self.things.values())).setFocus(Qt.FocusReason.ShortcutFocusReason)

    def over(self, at: QPointF) -> bool:
        """Whether a point of the screen is on the tray."""
        inside: QPoint = self.mapFromGlobal(at).toPoint()
        return self.rect().contains(inside)

    def widget_of(self, thing: Thing) -> QWidget:
        """A thing's card."""
        return self.things[thing]
