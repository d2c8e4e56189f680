"""Painting a scene: what stands still is kept as pixmaps, what moves is drawn from kept paths, words come last.

The painter knows roles and lines, nothing of magnetos. Begin reading at `ScenePainter.paint`.
"""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import replace
from weakref import WeakKeyDictionary

import numpy as np
from PySide6.QtCore import QPointF, QRectF, QSizeF, Qt
from PySide6.QtGui import (
    QBrush,
    QColor,
    QFont,
    QGradient,
    QLinearGradient,
    QPainter,
    QPainterPath,
    QPen,
    QPixmap,
    QPolygonF,
    QRadialGradient,
    QTransform,
)

from magview.drawing.place_names import Placed, place_names
from magview.drawing.scene import (
    Frame,
    Glass,
    Gradient,
    Group,
    Layer,
    LinearGradient,
    Measure,
    Piece,
    Scene,
    Style,
    Turn,
    frame_of,
    glass_radius,
    pieces_of,
)
from magview.drawing.shapes import Array, Point, hatching
from magview.ui.kit.theme import Theme
from magview.ui.pictures.scene_colours import scene_colours
from magview.ui.pictures.scene_words import SceneWords

_LAYERS: tuple[Layer, ...] = ("ground", "plate")
"""Layers that are kept as pixmaps, from the bottom up."""


class ScenePainter:
    """Paints scenes of one picture, whose kept pieces it remembers, at any size and on any device."""

    def __init__(self, theme: Theme) -> None:
        self._line_factor = 1.0
        self._paths: WeakKeyDictionary[Piece, QPainterPath] = WeakKeyDictionary()
        self._hatchings: WeakKeyDictionary[Piece, QPainterPath] = WeakKeyDictionary()
        self._kept: dict[Layer, tuple[object, QPixmap]] = {}
        self._placed: tuple[object, tuple[Placed, ...]] = (None, ())
        self.set_theme(theme)

    @property
    def line_factor(self) -> float:
        """Thickness of lines against usual, for the back row of a class or a device that is finer than the screen."""
        return self._line_factor

    @line_factor.setter
    def line_factor(self, factor: float) -> None:
        if factor != self._line_factor:
            self._line_factor = factor
            self._tools.clear()
            self._pens.clear()

    def set_theme(self, theme: Theme) -> None:
        """Take another look's colours."""
        self._colours = {role: QColor(colour) for role, colour in scene_colours(theme).items()}
        self._shades: dict[tuple[str, float], QColor] = {}
        self._tools: dict[Style, tuple[QPen, QBrush]] = {}
        self._pens: dict[tuple[str, float, float, tuple[float, ...]], QPen] = {}
        self._kept.clear()

    def colour(self, role: str, alpha: float = 1.0) -> QColor:
        """A role's colour."""
        colour = self._shades.get((role, alpha))
        if colour is None:
            colour = self._shades[role, alpha] = QColor(self._colours[role])
            colour.setAlphaF(alpha)
        return colour

    # ------------------------------------------------------------------ the whole picture

    def paint(
        self,
        painter: QPainter,
        scene: Scene,
        size: QSizeF,
        font: QFont,
        frame: Frame | None = None,
        ratio: float = 1.0,
    ) -> None:
        """Paint a scene over a painter's area from (0, 0) on; `ratio`: pixels of the device for each of ours.

        Without a frame the whole scene is fitted. With a ratio of 0 nothing is kept as pixels: for paper.
        """
        words = SceneWords(painter, font, self.colour, size)
        whole = frame_of(scene, size.width(), size.height(), words.em)
        frame = frame if frame is not None else whole
        zoomed = frame.scale > 1.001 * whole.scale
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        if ratio:
            self._paint_kept(painter, scene, size, font, frame, ratio)
        else:
            painter.fillRect(QRectF(QPointF(0.0, 0.0), size), self.colour("paper"))
            for layer in _LAYERS:
                self._paint_layer(painter, words, scene, layer, frame)
        self._paint_layer(painter, words, scene, "moving", frame)
        self._paint_measures(painter, words, scene.measures, frame)
        self.paint_names(painter, words, scene, size, frame)
        for glass in () if zoomed else scene.glasses:  # from near by, the edge is seen at its mark itself
            self._paint_glass(painter, words, glass, size, frame)
        words.corners(replace(scene, round_mm=0.0) if zoomed else scene, size, frame, paper=zoomed)
        words.total(scene.total, size)
        if scene.assumed:
            words.across(scene.assumed, size)

    def over(self, painter: QPainter, scene: Scene, size: QSizeF, font: QFont, frame: Frame) -> None:
        """Paint what moves of a scene over what is there already: groups and words, and nothing kept."""
        self._paint_layer(painter, SceneWords(painter, font, self.colour, size), scene, "moving", frame)

    def lens(
        self,
        painter: QPainter,
        scene: Scene,
        size: QSizeF,
        font: QFont,
        at: QPointF,
        factor: float,
        radius: float,
        frame: Frame | None = None,
    ) -> None:
        """Paint what lies under a point, so many times larger, in a round glass about it; words keep their size."""
        words = SceneWords(painter, font, self.colour, size)
        frame = frame if frame is not None else frame_of(scene, size.width(), size.height(), words.em)
        x, y = frame.back(at.x(), at.y())
        side = -frame.scale if frame.mirrored else frame.scale
        near = Frame(
            frame.scale * factor, at.x() - factor * side * x, at.y() + factor * frame.scale * y, frame.mirrored
        )
        round_glass = QPainterPath()
        round_glass.addEllipse(at, radius, radius)
        painter.save()
        painter.setClipPath(round_glass)
        painter.fillPath(round_glass, self.colour("paper"))
        for layer in (*_LAYERS, "moving"):
            for group in scene.groups:
                if group.layer == layer:
                    self._paint_group(painter, group, near)
        painter.restore()
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.setPen(self._pen("ink", 2.0))
        painter.drawEllipse(at, radius, radius)
        words.beside(f"{factor:g}×", QPointF(at.x() + 0.62 * radius, at.y() - 0.62 * radius))

    # ------------------------------------------------------------------ layers

    def _paint_kept(
        self, painter: QPainter, scene: Scene, size: QSizeF, font: QFont, frame: Frame, ratio: float
    ) -> None:
        """Paint what stands still. Each kept layer holds all below it, so that a frame copies one picture."""
        key: tuple[object, ...] = (frame, size.width(), size.height(), ratio, font.key(), self.line_factor)
        below = QPixmap()
        for layer in _LAYERS:
            groups = [group for group in scene.groups if group.layer == layer]
            said = tuple(word for word in scene.words if word.layer == layer)
            marked = {scene.lit, scene.in_hand} - {""}
            lit = {p.part for g in groups for p in g.pieces if p.part in marked} if marked else marked
            key = (key, tuple((group.pieces, group.turns) for group in groups), said, lit)
            known, pixmap = self._kept.get(layer, (None, below))
            if key != known:
                pixmap = below.copy() if not below.isNull() else self._blank(size, ratio)
                still = QPainter(pixmap)
                still.setRenderHint(QPainter.RenderHint.Antialiasing)
                self._paint_layer(still, SceneWords(still, font, self.colour, size), scene, layer, frame)
                still.end()
                self._kept[layer] = key, pixmap
            below = pixmap
        painter.drawPixmap(0, 0, below)

    def _blank(self, size: QSizeF, ratio: float) -> QPixmap:
        pixmap = QPixmap((size * ratio).toSize())
        pixmap.setDevicePixelRatio(ratio)
        pixmap.fill(self.colour("paper"))
        return pixmap

    def _paint_layer(self, painter: QPainter, words: SceneWords, scene: Scene, layer: Layer, frame: Frame) -> None:
        for group in scene.groups:
            if group.layer == layer:
                self._paint_group(painter, group, frame, scene.lit, scene.in_hand)
        for word in scene.words:
            if word.layer == layer:
                words.word(word, frame)

    def _paint_group(self, painter: QPainter, group: Group, frame: Frame, lit: str = "", in_hand: str = "") -> None:
        if not group.pieces:
            return
        base = base_of(frame)
        outer = painter.worldTransform()
        if group.clip is not None:
            painter.save()
            painter.setTransform(base * outer)
            painter.setClipPath(_path((group.clip,), True), Qt.ClipOperation.IntersectClip)
        painter.setTransform(turned(group.turns) * base * outer)
        for piece in group.pieces:
            pen, brush = self.tools_of(piece.style)
            painter.setPen(pen)
            painter.setBrush(brush)
            painter.drawPath(self.path_of(piece))
            if piece.style.hatch is not None:
                pen = self._pen(piece.style.line, 1.0, piece.style.hatch.alpha)
                painter.setPen(pen)
                painter.drawPath(self._hatching_of(piece))
        for part, width in ((in_hand, 1.6), (lit, 2.4)):
            if part:
                painter.setPen(self._pen("planned", width))
                painter.setBrush(Qt.BrushStyle.NoBrush)
                for path in (self.path_of(piece) for piece in group.pieces if piece.part == part):
                    painter.drawPath(path)
        if group.clip is not None:
            painter.restore()
        painter.setTransform(outer)

    def paint_part(self, painter: QPainter, scene: Scene, part: str, frame: Frame) -> None:
        """Paint one part again, alone, with a bold outline."""
        for group, piece in pieces_of(scene, part):
            self._paint_group(painter, replace(group, pieces=(piece,)), frame, part)

    def path_of(self, piece: Piece) -> QPainterPath:
        """A piece's outline, kept as long as the piece is."""
        path = self._paths.get(piece)
        if path is None:
            path = self._paths[piece] = _path(piece.outlines, piece.closed)
        return path

    def _hatching_of(self, piece: Piece) -> QPainterPath:
        path = self._hatchings.get(piece)
        hatch = piece.style.hatch
        if path is None and hatch is not None:
            lines = [hatching(piece.outlines, bearing, hatch.pitch_mm) for bearing in hatch.bearings]
            path = self._hatchings[piece] = _path(np.concatenate(lines), False)
        return path if path is not None else QPainterPath()

    def tools_of(self, style: Style) -> tuple[QPen, QBrush]:
        """Pen and brush of a style."""
        tools = self._tools.get(style)
        if tools is None:
            pen = self._pen(style.line, style.width_px, style.line_alpha, style.dash)
            brush = QBrush()
            if style.gradient is not None:
                brush = QBrush(self._gradient(style.gradient))
            elif style.fill:
                brush = QBrush(self.colour(style.fill, style.fill_alpha), Qt.BrushStyle.SolidPattern)
            if len(self._tools) > 400:
                self._tools.clear()
            tools = self._tools[style] = pen, brush
        return tools

    def _pen(self, role: str, width_px: float, alpha: float = 1.0, dash: tuple[float, ...] = ()) -> QPen:
        if not role:
            return QPen(Qt.PenStyle.NoPen)
        kept = self._pens.get((role, width_px, alpha, dash))
        if kept is not None:
            return kept
        if len(self._pens) > 400:
            self._pens.clear()
        pen = self._pens[role, width_px, alpha, dash] = QPen(self.colour(role, alpha), width_px * self.line_factor)
        pen.setCosmetic(True)
        # Flat and bevelled: on lines this fine it looks the same as round, and costs far less to stroke.
        pen.setCapStyle(Qt.PenCapStyle.FlatCap)
        pen.setJoinStyle(Qt.PenJoinStyle.BevelJoin)
        if dash:
            pen.setDashPattern(list(dash))
        return pen

    def _gradient(self, light: Gradient | LinearGradient) -> QGradient:
        if isinstance(light, LinearGradient):
            along = QLinearGradient(_qt(light.start), _qt(light.end))
            for at, role, alpha in light.stops:
                along.setColorAt(at, self.colour(role, alpha))
            return along
        gradient = QRadialGradient(_qt(light.centre), light.radius_mm)
        for at, role in light.stops:
            gradient.setColorAt(at, self.colour(role))
        return gradient

    # ------------------------------------------------------------------ measures, names, glass

    def _paint_measures(
        self, painter: QPainter, words: SceneWords, measures: Iterable[Measure], frame: Frame
    ) -> None:
        for measure in measures:
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.setPen(
                self._pen(measure.witness_role, 1.0, dash=(2.0, 3.0) if measure.witness_role == "hair" else ())
            )
            for start, end in measure.witnesses:
                painter.drawLine(_at(frame, start), _at(frame, end))
            a, b = _at(frame, measure.start), _at(frame, measure.end)
            if math.hypot(b.x() - a.x(), b.y() - a.y()) > 8.0:
                self._paint_arrow(painter, a, b, measure)
            if measure.text:
                at = (a + b) / 2 if measure.words_at is None else _at(frame, measure.words_at)
                words.on_paper((measure.text, measure.shorter), at, measure.role, measure.align)

    def _paint_arrow(self, painter: QPainter, a: QPointF, b: QPointF, measure: Measure) -> None:
        size = 9.0 if measure.width_px > 2.0 else 8.0
        way = math.atan2(b.y() - a.y(), b.x() - a.x())
        ahead = QPointF(math.cos(way), math.sin(way)) * (0.8 * size)
        painter.setPen(self._pen(measure.role, measure.width_px))
        painter.drawLine(a + ahead if measure.both_heads else a, b - ahead)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QBrush(self.colour(measure.role), Qt.BrushStyle.SolidPattern))
        ends = ((b, way), (a, way + math.pi)) if measure.both_heads else ((b, way),)
        for tip, angle in ends:
            barbs = [tip - QPointF(math.cos(angle + o), math.sin(angle + o)) * size for o in (-0.38, 0.38)]
            painter.drawPolygon(QPolygonF([tip, *barbs]))
        painter.setBrush(Qt.BrushStyle.NoBrush)

    def placed(self, words: SceneWords, scene: Scene, size: QSizeF, frame: Frame) -> tuple[Placed, ...]:
        """Return where the names of a scene stand; kept as long as its plan and the picture's size are the same."""
        if scene.plan is None:
            return ()
        key = (id(scene.plan), size.width(), size.height(), frame, words.em, scene.lit)
        if self._placed[0] != key:
            sides = size.width(), size.height()
            asked = scene.lit if any(name.part == scene.lit for name in scene.plan.names) else ""
            self._plan = scene.plan  # held, so that its id is no other's
            self._placed = key, place_names(scene.plan, frame, sides, words.em, words.width, asked)
        return self._placed[1]

    def paint_names(self, painter: QPainter, words: SceneWords, scene: Scene, size: QSizeF, frame: Frame) -> None:
        """Write the names of the parts beside them, each with its leader."""
        for place in self.placed(words, scene, size, frame):
            name = place.name
            text, role = scene.readings.get(name.part, (name.text, name.role))
            tip = _at(frame, scene.tips[name.part][place.place])
            if place.leader is not None:
                painter.setPen(self._pen(role if name.bold else "second_ink", 1.2 if name.bold else 1.0))
                painter.drawLine(QPointF(place.leader[0], place.leader[1]), tip)
                if not name.bold:
                    painter.setPen(Qt.PenStyle.NoPen)
                    painter.setBrush(QBrush(self.colour("second_ink"), Qt.BrushStyle.SolidPattern))
                    painter.drawEllipse(tip, 2.0, 2.0)
                    painter.setBrush(Qt.BrushStyle.NoBrush)
            left, top, right, bottom = place.box
            at = QPointF((left + right) / 2, (top + bottom) / 2)
            words.name(text, at, role, name.bold or name.part == scene.lit, paper=place.over)

    def _paint_glass(self, painter: QPainter, words: SceneWords, glass: Glass, size: QSizeF, outer: Frame) -> None:
        radius = glass_radius(glass, size.width(), size.height())
        x = size.width() - radius - 10.0 if "right" in glass.corner else radius + 10.0
        y = size.height() - radius - 10.0 - glass.above_em * words.em if "bottom" in glass.corner else radius + 10.0
        frame = Frame(radius / glass.half_mm, x, y, outer.mirrored)
        for group in glass.scene.groups:
            self._paint_group(painter, group, frame)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.setPen(self._pen("second_ink", 1.8))
        painter.drawEllipse(QPointF(x, y), radius, radius)
        for word in glass.scene.words:
            words.word(word, frame)
        if glass.tells_factor:
            at = QPointF(x + (-0.66 if frame.mirrored else 0.66) * radius, y - 0.38 * radius)
            words.small(f"{frame.scale / outer.scale:.0f}×", at, "second_ink", 0.32 * radius)


def base_of(frame: Frame) -> QTransform:
    """From a scene's millimetres, y down, to pixels."""
    side = -frame.scale if frame.mirrored else frame.scale
    return QTransform(side, 0.0, 0.0, frame.scale, frame.left, frame.top)


def turned(turns: Iterable[Turn]) -> QTransform:
    """Several turns as one, y down."""
    whole = QTransform()
    for turn in turns:
        x, y = turn.about
        whole = whole * QTransform().translate(x, -y).rotate(turn.bearing_deg).translate(-x, y)
    return whole


def _path(outlines: Iterable[Array], close: bool) -> QPainterPath:
    path = QPainterPath()
    path.setFillRule(Qt.FillRule.OddEvenFill)
    for outline in outlines:
        points = outline.tolist()
        path.moveTo(points[0][0], -points[0][1])
        for x, y in points[1:]:
            path.lineTo(x, -y)
        if close:
            path.closeSubpath()
    return path


def _qt(point: Point) -> QPointF:
    return QPointF(point[0], -point[1])


def _at(frame: Frame, point: Point) -> QPointF:
    return QPointF(*frame.at(point))
