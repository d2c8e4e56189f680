"""Places for names round the parts of a scene: nearest free place first, no leader over a leader, a word or a part.

A name stands on no part and on no other word. Where there is no room a name is left out; a part pointed at is named
all the same, over whatever lies there. Everything here is in pixels, y down; the caller says how wide words are.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from magview.drawing.scene import Frame, Name, Plan
from magview.drawing.shapes import Array

Measure = Callable[[str, float, bool], float]
"""Width of a text [px], by its words, its size [px] and whether it is bold."""

Box = tuple[float, float, float, float]
"""Left, top, right, bottom [px]."""
Line = tuple[float, float, float, float]

_CELL = 2.0
"""Parts are painted into a grid so fine [px]."""
_AIR = 3.0
"""Least space between a word and anything else [px]."""
_TURNS = np.radians(np.arange(0.0, 360.0, 12.0))


@dataclass(frozen=True)
class Placed:
    """A name in its place: the box of its widest text, and its leader from there to the part, if it has one."""

    name: Name
    box: Box
    leader: Line | None
    place: int = 0
    """Place it points at, of the name's own."""
    over: bool = False
    """Whether it stands over parts, because it was asked for and there is no room beside them."""


def place_names(
    plan: Plan, frame: Frame, size: tuple[float, float], em: float, measure: Measure, asked: str = ""
) -> tuple[Placed, ...]:
    """Places for the names of a plan in a picture [px]; `asked`: the part that is named even without room for it.

    Asking for a name moves no other: it comes where the others have left room, or over the parts.
    """
    grid = _Grid(plan, frame, size)
    placed: list[Placed] = []
    for name in plan.names:
        found = _nearest(name, plan, grid, frame, em, measure, placed, size)
        if found is not None:
            placed.append(found)
    for name in plan.names:
        if name.part == asked and all(place.name is not name for place in placed):
            placed.append(_over_parts(name, grid, frame, size, em, measure, placed))
    return tuple(placed)


class _Grid:
    """Map of the parts: a bit for each part in cells of a few pixels."""

    def __init__(self, plan: Plan, frame: Frame, size: tuple[float, float]) -> None:
        parts = sorted({obstacle.part for obstacle in plan.obstacles} - {""})
        self._bits = {part: 1 << (i + 1) for i, part in enumerate(parts)} | {"": 1}
        self.rows, self.columns = (math.ceil(side / _CELL) + 1 for side in (size[1], size[0]))
        self.cells = np.zeros((self.rows, self.columns), dtype=np.int64)
        for obstacle in plan.obstacles:
            self._fill(frame.of(obstacle.outline) / _CELL, self._bits[obstacle.part])
        taken = np.zeros((self.rows + 1, self.columns + 1), dtype=np.int64)
        taken[1:, 1:] = (self.cells != 0).cumsum(axis=0).cumsum(axis=1)
        self._sums = taken

    def _fill(self, outline: Array, bit: int) -> None:
        low = np.maximum(np.floor(outline.min(axis=0)).astype(int), 0)
        high = np.minimum(np.ceil(outline.max(axis=0)).astype(int) + 1, (self.columns, self.rows))
        if (high <= low).any():
            return
        x = np.arange(low[0], high[0])[None, :, None]
        y = np.arange(low[1], high[1])[:, None, None] + 1e-6
        x0, y0 = outline[:, 0], outline[:, 1]
        x1, y1 = np.roll(x0, -1), np.roll(y0, -1)
        with np.errstate(divide="ignore", invalid="ignore"):
            crosses = ((y0 > y) != (y1 > y)) & (x < x0 + (y - y0) * (x1 - x0) / (y1 - y0))
        filled = crosses.sum(axis=2) % 2 == 1
        self.cells[low[1] : high[1], low[0] : high[0]] |= np.where(filled, bit, 0)

    def free(self, boxes: Array) -> NDArray[np.bool_]:
        """Return the boxes (n, 4) [px] that have no part in them."""
        left, top = (np.clip(np.floor(boxes[:, i] / _CELL).astype(int), 0, n) for i, n in self._ends(0))
        right, bottom = (np.clip(np.ceil(boxes[:, i] / _CELL).astype(int) + 1, 0, n) for i, n in self._ends(2))
        s = self._sums
        return np.asarray(s[bottom, right] - s[top, right] - s[bottom, left] + s[top, left] == 0)

    def _ends(self, first: int) -> tuple[tuple[int, int], tuple[int, int]]:
        return (first, self.columns), (first + 1, self.rows)

    def crossed(self, line: Line, may: frozenset[str]) -> bool:
        """Whether a line crosses a part that it may not."""
        allowed = 1
        for part in may:
            allowed |= self._bits.get(part, 0)
        x0, y0, x1, y1 = line
        steps = np.linspace(0.0, 1.0, max(2, math.ceil(math.hypot(x1 - x0, y1 - y0) / 1.5)))
        columns = np.clip(np.rint((x0 + steps * (x1 - x0)) / _CELL).astype(int), 0, self.columns - 1)
        rows = np.clip(np.rint((y0 + steps * (y1 - y0)) / _CELL).astype(int), 0, self.rows - 1)
        return bool((self.cells[rows, columns] & ~allowed).any())


def _candidates(name: Name, at: Array, em: float, width: float) -> Array:
    """Middles (n, 2) of places round a point [px]."""
    out = np.arange(1.6, name.reach_em, 0.5) if name.leader else np.arange(0.0, name.reach_em, 0.75)
    rings, turns = np.meshgrid(out, _TURNS, indexing="ij")
    x = np.cos(turns) * (rings * em + 0.36 * width * np.abs(np.cos(turns)))
    y = np.sin(turns) * rings * em
    return np.stack([x.ravel(), y.ravel()], axis=-1) + at


def _nearest(
    name: Name,
    plan: Plan,
    grid: _Grid,
    frame: Frame,
    em: float,
    measure: Measure,
    placed: list[Placed],
    size: tuple[float, float],
) -> Placed | None:
    """The nearest free place of the best of its places; by a way to be taken at worst, if there is no other."""
    for may in (name.over, name.over | name.at_worst) if name.at_worst else (name.over,):
        for place in range(len(name.places)):
            found = _near(name, place, may, plan, grid, frame, em, measure, placed, size)
            if found is not None:
                return found
    return None


def _near(
    name: Name, place: int, may: frozenset[str], plan: Plan, grid: _Grid, frame: Frame, em: float, measure: Measure,
    placed: list[Placed], size: tuple[float, float],
) -> Placed | None:  # fmt: skip
    at = frame.of(np.array(name.places[place]))
    reach = np.array(_half_size(name, em, measure))
    middles = _candidates(name, at, em, 2 * float(reach[0]))
    boxes = np.concatenate([middles - reach, middles + reach], axis=1)
    centre, radius = np.array([frame.left, frame.top]), plan.within_mm * frame.scale
    corner = np.maximum(np.abs(boxes[:, :2] - centre), np.abs(boxes[:, 2:] - centre))
    good = (np.hypot(corner[:, 0], corner[:, 1]) <= radius) & grid.free(boxes + np.array([-_AIR, -_AIR, _AIR, _AIR]))
    good &= (boxes[:, :2] >= _AIR).all(axis=1) & (boxes[:, 2:] <= np.array(size) - _AIR).all(axis=1)
    for other in placed:
        left, top, right, bottom = other.box
        air = _AIR + 1.0
        good &= (
            (boxes[:, 0] > right + air) | (boxes[:, 2] < left - air)
            | (boxes[:, 1] > bottom + air) | (boxes[:, 3] < top - air)
        )  # fmt: skip
    order = np.flatnonzero(good)
    length = np.hypot(*(middles[order] - at).T)
    for i in order[np.argsort(length, kind="stable")].tolist():
        x0, y0, x1, y1 = boxes[i].tolist()
        box: Box = (x0, y0, x1, y1)
        if not name.leader:
            if any(o.leader is not None and _meets(o.leader, box) for o in placed):
                continue
            return Placed(name, box, None, place)
        leader = leader_of(box, float(at[0]), float(at[1]))
        if not grid.crossed(leader, may) and _clear(leader, box, placed):
            return Placed(name, box, leader, place)
    return None


def _over_parts(
    name: Name, grid: _Grid, frame: Frame, size: tuple[float, float], em: float, measure: Measure,
    placed: list[Placed],
) -> Placed:  # fmt: skip
    """The nearest place within the picture that is on no other word and no part; on a part where all are taken."""
    x, y = frame.of(np.array(name.places[0])).tolist()
    half = np.array(_half_size(name, em, measure))
    middles = _candidates(name, np.array([x, y]), em, 2 * float(half[0]))
    middles = np.clip(middles, half + _AIR, np.array(size) - half - _AIR)
    half += _AIR
    boxes = np.concatenate([middles - half, middles + half], axis=1)
    on_word = np.array([any(_boxes_meet((a, b, c, d), o.box) for o in placed) for a, b, c, d in boxes.tolist()])
    left, top, right, bottom = boxes[int(np.argmin(2 * on_word + ~grid.free(boxes)))].tolist()
    box: Box = (left + _AIR, top + _AIR, right - _AIR, bottom - _AIR)
    return Placed(name, box, leader_of(box, x, y), over=True)


def _half_size(name: Name, em: float, measure: Measure) -> tuple[float, float]:
    size = em + 1.0 if name.bold else em
    return measure(name.widest, size, name.bold) / 2, 0.4 * size


def leader_of(box: Box, x: float, y: float) -> Line:
    """From the side of a word's box that faces a point to the point."""
    left, top, right, bottom = box
    cx, cy = (left + right) / 2, (top + bottom) / 2
    dx, dy = x - cx, y - cy
    share = min(
        ((right - left) / 2 + 3.0) / abs(dx) if abs(dx) > 1e-6 else math.inf,
        ((bottom - top) / 2 + 4.0) / abs(dy) if abs(dy) > 1e-6 else math.inf,
        1.0,
    )
    return cx + dx * share, cy + dy * share, x, y


def _clear(leader: Line, box: Box, placed: list[Placed]) -> bool:
    """Whether a leader and its word keep off all other words and leaders."""
    for other in placed:
        if _meets(leader, other.box):
            return False
        if other.leader is not None and (_meets(other.leader, box) or lines_cross(leader, other.leader)):
            return False
    return True


def lines_cross(a: Line, b: Line) -> bool:
    """Whether two lines between their ends have a point in common."""

    def side(line: Line, x: float, y: float) -> float:
        return (line[2] - line[0]) * (y - line[1]) - (line[3] - line[1]) * (x - line[0])

    return (
        side(a, b[0], b[1]) * side(a, b[2], b[3]) <= 0.0 and side(b, a[0], a[1]) * side(b, a[2], a[3]) <= 0.0
    )  # fmt: skip


def _meets(line: Line, box: Box) -> bool:
    """Whether a line touches a box with a little air round it."""
    left, top, right, bottom = box[0] - _AIR, box[1] - _AIR, box[2] + _AIR, box[3] + _AIR
    if any(left <= line[i] <= right and top <= line[i + 1] <= bottom for i in (0, 2)):
        return True
    sides: tuple[Line, ...] = (
        (left, top, right, top), (right, top, right, bottom),
        (right, bottom, left, bottom), (left, bottom, left, top),
    )  # fmt: skip
    return any(lines_cross(line, edge) for edge in sides)


def _boxes_meet(a: Box, b: Box) -> bool:
    return a[0] < b[2] and b[0] < a[2] and a[1] < b[3] and b[1] < a[3]
