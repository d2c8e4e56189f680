"""Stroking and filling shapes: the pieces of a picture as Qt items that turn as groups."""

from __future__ import annotations

from collections.abc import Iterable

from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QBrush, QColor, QPainter, QPainterPath, QPainterPathStroker, QPen, QTransform
from PySide6.QtWidgets import QGraphicsItem, QGraphicsPathItem, QGraphicsScene

from magview.drawing.shapes import Array, Point, Shape, hatching
from magview.ui.kit.theme import PATTERNS, Theme

_WIDE = {"mark": 1.8, "index": 1.8, "straightedge": 1.4, "spring": 2.4, "scale": 1.0, "paint": 5.0}
_CORE = 0.6
"""Of the width of a painted mark, what is the paint; the rest is the dark edge that carries it on a light part."""
_THIN = 1.0
"""No wider: Qt strokes cosmetic pens of one pixel several times faster than any others."""


_Stroke = tuple[QPen, QBrush, QPainterPath, bool]
"""Way of painting a piece, and whether a hair aside."""

_HAND = 2.0
"""Width of the outline of the part in hand [px]."""

_ASIDE = QTransform.fromTranslate(0.8, 0.8)


def path_of(shape: Shape) -> QPainterPath:
    """The outline of a shape in scene coordinates: millimetres, y downwards."""
    path = QPainterPath()
    path.setFillRule(Qt.FillRule.OddEvenFill)
    for outline in shape.outlines:
        _trace(path, outline, shape.filled)
    return path


def _trace(path: QPainterPath, outline: Array, close: bool) -> None:
    points = outline.tolist()
    path.moveTo(points[0][0], -points[0][1])
    for x, y in points[1:]:
        path.lineTo(x, -y)
    if close:
        path.closeSubpath()


def _strokes(item: QGraphicsPathItem) -> list[_Stroke]:
    if not item.isVisible():
        return []
    pen, brush, path = item.pen(), item.brush(), item.path()
    paint = item.data(0)
    if paint is not None:
        core = QPen(pen)
        core.setColor(paint)
        core.setWidthF(_CORE * pen.widthF())
        return [(pen, brush, path, False), (core, QBrush(), path, False)]
    if pen.widthF() != _HAND:
        return [(pen, brush, path, False)]
    # Two lines of one pixel side by side look like one of two, and are stroked twice as fast.
    pen.setWidthF(_THIN)
    return [(pen, brush, path, False), (pen, QBrush(), path, True)]


def _hatch_path(shape: Shape, pitch: float) -> QPainterPath:
    path = QPainterPath()
    for bearing in PATTERNS[shape.material]:
        for (x0, y0), (x1, y1) in hatching(shape.outlines, bearing, pitch).tolist():
            path.moveTo(x0, -y0)
            path.lineTo(x1, -y1)
    return path


class PictureScene(QGraphicsScene):
    """A scene of shapes in groups; turning a group repaints what it moves, nothing else is rebuilt."""

    def __init__(self, parents: dict[str, str | None]) -> None:
        super().__init__()
        self._parents = parents
        self._groups: dict[str, QGraphicsPathItem] = {}
        self._items: list[tuple[QGraphicsPathItem, Shape]] = []
        self._drawn: dict[str, list[QGraphicsPathItem]] = {}
        self._strokes: dict[str, list[_Stroke]] = {}
        self.version = 0
        """Counts rebuilding and colouring: what a kept picture depends on besides."""
        self._hatchings: list[tuple[QGraphicsPathItem, str]] = []
        self._hatched: dict[QGraphicsPathItem, QGraphicsPathItem] = {}
        self._pitch = 1.0
        self._hidden: frozenset[str] = frozenset()
        self.line_factor = 1.0
        """Thickness of lines against usual, for the back row of a class."""

    def build(self, shapes: tuple[Shape, ...], origins: dict[str, Point], theme: Theme) -> None:
        """Replace all shapes."""
        self.clear()
        self._groups, self._items, self._drawn = {}, [], {}
        for order, (name, parent) in enumerate(self._parents.items()):
            group = QGraphicsPathItem(self._groups[parent] if parent else None)
            group.setZValue(order)
            x, y = origins[name]
            group.setTransformOriginPoint(QPointF(x, -y))
            group.setFlag(QGraphicsItem.GraphicsItemFlag.ItemHasNoContents)
            if parent is None:
                self.addItem(group)
            self._groups[name] = group
        self._hatchings, self._hatched = [], {}
        # Some ninety lines across the whole picture, about as fine as a pencil's.
        self._pitch = max((float(abs(o).max()) for shape in shapes for o in shape.outlines), default=1.0) / 26.0
        for shape in shapes:
            path = path_of(shape)
            item = QGraphicsPathItem(path, self._groups[shape.group])
            self._items.append((item, shape))
            self._drawn.setdefault(shape.group, []).append(item)
            if shape.filled and shape.material in PATTERNS:
                hatch = QGraphicsPathItem(_hatch_path(shape, self._pitch), self._groups[shape.group])
                self._hatchings.append((hatch, shape.material))
                self._hatched[item] = hatch
                self._drawn[shape.group].append(hatch)
        self.hide(self._hidden)
        self.colour(theme, None)

    def hide(self, parts: frozenset[str]) -> None:
        """Leave parts out of the picture by their names: what is not there, or must not be seen yet."""
        self._hidden = parts
        for item, shape in self._items:
            item.setVisible(shape.part not in parts)
        self._gather()

    @property
    def hidden(self) -> frozenset[str]:
        """Parts left out."""
        return self._hidden

    def _gather(self) -> None:
        self.version += 1
        self._strokes = {group: [s for item in items for s in _strokes(item)] for group, items in self._drawn.items()}

    def reshape(self, shapes: tuple[Shape, ...], groups: Iterable[str]) -> bool:
        """Give some pieces of these groups other outlines, where nothing else differs; False, undone, otherwise."""
        if len(shapes) != len(self._items):
            return False
        other = [n for n, (shape, (_, old)) in enumerate(zip(shapes, self._items, strict=True)) if shape is not old]
        for n in other:
            new, old = shapes[n], self._items[n][1]
            if new.group not in groups or (new.group, new.material, new.filled) != (
                old.group,
                old.material,
                old.filled,
            ):
                return False
        for n in other:
            item, shape = self._items[n][0], shapes[n]
            self._items[n] = item, shape
            item.setPath(path_of(shape))
            if item in self._hatched:
                self._hatched[item].setPath(_hatch_path(shape, self._pitch))
        for group in {shapes[n].group for n in other}:
            self._strokes[group] = [s for item in self._drawn[group] for s in _strokes(item)]
        return True

    def colour(self, theme: Theme, in_hand: str | None) -> None:
        """Give every piece its material's colours; the group in hand gets a bolder outline."""
        self.setBackgroundBrush(QColor(theme.paper))
        for item, shape in self._items:
            fill, line = theme.material(shape.material)
            width = _WIDE.get(shape.material, _THIN)
            if shape.filled and shape.group == in_hand:
                line, width = QColor(theme.hand), _HAND
            pen = QPen(line, width * self.line_factor)
            pen.setCosmetic(True)
            # Bevelled: on outlines this fine it looks the same as round, and costs far less to stroke.
            pen.setJoinStyle(Qt.PenJoinStyle.BevelJoin)
            if shape.material == "straightedge":
                pen.setStyle(Qt.PenStyle.DashLine)
            if shape.material == "paint":
                item.setData(0, fill)
            item.setPen(pen)
            # With its style: of a colour alone, PySide asks whether it is a gradient, and builds 200 names of those.
            item.setBrush(QBrush(fill, Qt.BrushStyle.SolidPattern) if shape.filled else QBrush())
        for hatch, material in self._hatchings:
            pen = QPen(theme.hatching(material), _THIN * self.line_factor)
            pen.setCosmetic(True)
            hatch.setPen(pen)
        self._gather()

    def paint(self, painter: QPainter, base: QTransform, groups: Iterable[str]) -> None:
        """Fill and stroke some groups, in their order, with a painter in the view's pixels.

        The scene's own painting looks for what is exposed and keeps states item by item; with some forty pieces
        that cover the view it costs more than it saves.
        """
        for group in groups:
            where = self._groups[group].sceneTransform() * base if group in self._groups else base
            painter.setTransform(where)
            for pen, brush, path, aside in self._strokes.get(group, ()):
                painter.setPen(pen)
                painter.setBrush(brush)
                if aside:
                    painter.setTransform(where * _ASIDE)
                    painter.drawPath(path)
                    painter.setTransform(where)
                else:
                    painter.drawPath(path)
        painter.resetTransform()

    def paint_part(self, painter: QPainter, base: QTransform, part: str, outline: QPen) -> None:
        """Paint one part again, alone, its outline with a pen of its own; `base` as in `paint`."""
        for item, shape in sorted(self._items, key=lambda pair: self._depth(pair[1])):
            if shape.part != part or not item.isVisible():
                continue
            painter.setTransform(self._groups[shape.group].sceneTransform() * base)
            hatched = self._hatched.get(item)
            for pen, brush, path, _ in (*_strokes(item), *(() if hatched is None else _strokes(hatched))):
                painter.setPen(pen)
                painter.setBrush(brush)
                painter.drawPath(path)
            painter.setPen(outline)
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawPath(item.path())
        painter.resetTransform()

    def turns(self, groups: Iterable[str]) -> tuple[float, ...]:
        """Angles of some groups, those that carry them included: what a kept picture depends on."""
        return tuple(self._groups[g].rotation() for g in groups if g in self._groups)

    def move(self, group: str, point: Point) -> None:
        """Put a group's zero at a point [mm, y up]."""
        self._groups[group].setPos(QPointF(point[0], -point[1]))

    def turn(self, turns_deg: dict[str, float]) -> None:
        """Turn each group to its bearing [deg clockwise], as Qt's own rotation is."""
        for name, degrees in turns_deg.items():
            group = self._groups[name]
            if group.rotation() != degrees:
                group.setRotation(degrees)

    def to_scene(self, group: str, point: Point) -> QPointF:
        """Return where a point of a group [mm, y up] stands in the scene now."""
        return self._groups[group].mapToScene(QPointF(point[0], -point[1]))

    def shape_at(self, position: QPointF) -> Shape | None:
        """The topmost filled shape at a scene position."""
        for item, shape in reversed(sorted(self._items, key=lambda pair: self._depth(pair[1]))):
            if shape.filled and item.contains(item.mapFromScene(position)):
                return shape
        return None

    def part_at(self, position: QPointF, reach: float) -> str:
        """The part a hand points at: a line within reach [mm] before what is filled behind it; "" for none."""
        for item, shape in reversed(sorted(self._items, key=lambda pair: self._depth(pair[1]))):
            if shape.filled or not shape.part or not item.isVisible() or shape.material not in ("mark", "spring"):
                continue
            stroker = QPainterPathStroker()
            stroker.setWidth(2 * reach)
            if stroker.createStroke(item.path()).contains(item.mapFromScene(position)):
                return shape.part
        shape_there = self.shape_at(position)
        return shape_there.part if shape_there is not None else ""

    def line_at(self, position: QPointF, part: str, reach: float) -> str:
        """A part drawn as a line, where it is shown and within reach [mm] of a scene position; else ""."""
        stroker = QPainterPathStroker()
        stroker.setWidth(2 * reach)
        for item, shape in self._items:
            there = shape.part == part and item.isVisible()
            if there and stroker.createStroke(item.path()).contains(item.mapFromScene(position)):
                return part
        return ""

    def _depth(self, shape: Shape) -> int:
        return list(self._parents).index(shape.group)
