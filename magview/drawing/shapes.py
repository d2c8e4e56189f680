"""Plain outlines for the pictures: arrays of points in millimetres, x to the right, y up.

Bearings are degrees clockwise from the top, as a person facing the picture says them.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike, NDArray

Array = NDArray[np.float64]
Point = tuple[float, float]
Circle = tuple[Point, float]


@dataclass(frozen=True, eq=False)
class Shape:
    """One drawn piece: outlines (n, 2) [mm] filled by the odd-even rule, so that inner ones are holes."""

    part: str
    """Name of the part, in words of the trade; empty for plain decoration."""
    group: str
    """Group that it moves with; see the picture's groups."""
    material: str
    outlines: tuple[Array, ...]
    filled: bool = True


def polar(radius: ArrayLike, bearing_deg: ArrayLike) -> Array:
    """Points (…, 2) at a radius [mm] and bearing [deg clockwise from the top]; shapes broadcast."""
    if isinstance(radius, float) and isinstance(bearing_deg, float):  # single points make up most of a picture
        bearing = math.radians(bearing_deg)
        return np.array((radius * math.sin(bearing), radius * math.cos(bearing)))
    b = np.radians(np.asarray(bearing_deg, dtype=float))
    return np.stack(np.broadcast_arrays(radius * np.sin(b), radius * np.cos(b)), axis=-1)


def point(xy: Array) -> Point:
    """One place [mm] as a pair of plain numbers."""
    return float(xy[0]), float(xy[1])


def polar_point(radius: float, bearing_deg: float) -> Point:
    """One place at a radius [mm] and bearing [deg clockwise from the top]."""
    return point(polar(float(radius), float(bearing_deg)))


def box(x0: float, x1: float, y0: float, y1: float) -> Array:
    """A rectangle's corners (4, 2) [mm]."""
    return np.array([(x0, y0), (x1, y0), (x1, y1), (x0, y1)], dtype=float)


def rotate(points: Array, bearing_deg: float, about: Point = (0.0, 0.0)) -> Array:
    """Points [mm], shape (…, 2), turned clockwise by an angle [deg] about a point [mm]."""
    b = np.radians(bearing_deg)
    turn = np.array([[np.cos(b), np.sin(b)], [-np.sin(b), np.cos(b)]])
    return np.asarray((points - np.array(about)) @ turn.T + np.array(about))


def arc(radius: float, start_deg: float, end_deg: float, step_deg: float = 2.0) -> Array:
    """Points (n, 2) along an arc between two bearings [deg], either way round."""
    n = max(2, int(np.ceil(abs(end_deg - start_deg) / step_deg)) + 1)
    return polar(radius, np.linspace(start_deg, end_deg, n))


def circle(centre: Point, radius: float, points: int = 72) -> Array:
    """A closed circle (points, 2) [mm]."""
    return np.asarray(polar(radius, np.linspace(0.0, 360.0, points, endpoint=False)) + np.array(centre))


def band(inner: float, outer: float, start_deg: float, end_deg: float) -> Array:
    """A closed ring sector (n, 2) between two radii [mm] and two bearings [deg]."""
    return np.concatenate([arc(outer, start_deg, end_deg), arc(inner, end_deg, start_deg)])


def arc_slot(radius: float, start_deg: float, end_deg: float, half_width: float) -> Array:
    """A curved slot with round ends, outline (n, 2) [mm]: radius of its middle line and half its width [mm], centres
    of its ends at two bearings [deg]."""
    start, end = sorted((start_deg, end_deg))
    cap = np.linspace(0.0, 180.0, 13)
    head = polar(half_width, end + cap) + polar(radius, end)
    tail = polar(half_width, start + 180.0 + cap) + polar(radius, start)
    return np.concatenate([
        arc(radius + half_width, start, end), head, arc(radius - half_width, end, start), tail
    ])  # fmt: skip


def wrap(circles: Sequence[Circle]) -> Array:
    """The band drawn tight round some discs: convex hull (n, 2) [mm] of their outlines."""
    points = sorted(np.concatenate([circle(centre, radius, 48) for centre, radius in circles]).tolist())

    def half(ordered: list[list[float]]) -> list[list[float]]:
        chain: list[list[float]] = []
        for p in ordered:
            while len(chain) > 1 and _turn(chain[-2], chain[-1], p) <= 0:
                chain.pop()
            chain.append(p)
        return chain[:-1]

    return np.array(half(points) + half(points[::-1]))


def hatching(outlines: Sequence[Array], bearing_deg: float, pitch: float) -> Array:
    """Parallel lines (n, 2, 2) [mm] across what closed outlines enclose by the odd-even rule.

    They run along a bearing [deg] and stand a pitch [mm] apart, counted from the zero of the outlines, so that
    neighbours of one pattern hatch alike and the lines turn with their piece.
    """
    turned = [rotate(outline, -bearing_deg) for outline in outlines]  # lines run along y now
    starts = np.concatenate(turned)
    ends = np.concatenate([np.roll(outline, -1, axis=0) for outline in turned])
    low, high = starts[:, 0].min(), starts[:, 0].max()
    lines = pitch * np.arange(math.ceil(low / pitch), math.floor(high / pitch) + 1)
    line, edge = np.nonzero((starts[:, 0] < lines[:, None]) != (ends[:, 0] < lines[:, None]))
    x, a, b = lines[line], starts[edge], ends[edge]
    y = a[:, 1] + (x - a[:, 0]) * (b[:, 1] - a[:, 1]) / (b[:, 0] - a[:, 0])
    # A line enters and leaves a closed outline by turns: along each, crossings pair off.
    crossings = np.stack([x, y], axis=1)[np.lexsort((y, line))]
    return rotate(crossings, bearing_deg).reshape(-1, 2, 2)


def _turn(a: list[float], b: list[float], c: list[float]) -> float:
    return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])


def cross_slot(centre: Point, radius: float, half_width: float) -> Array:
    """The slot across a screw's head, along bearing 0: a closed rectangle (4, 2) [mm]."""
    x, y = centre
    return box(x - half_width, x + half_width, y - radius, y + radius)
