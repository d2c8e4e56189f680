"""Part names round a picture: two columns at its sides, leader lines, no two names on one another."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass


@dataclass(frozen=True)
class Label:
    """A name with its leader line [px], y downwards; `x, y` is the end of the line at the name."""

    text: str
    x: float
    y: float
    left: bool
    """Whether the name stands at the left side, written leftwards from (x, y)."""
    tip_x: float
    tip_y: float
    """Point of its leader [px]."""


def arrange(
    tips: Mapping[str, tuple[float, float]], left_x: float, right_x: float, top: float, bottom: float, pitch: float
) -> list[Label]:
    """Place names in two columns.

    Parameters
    ----------
    tips : where each name points [px].
    left_x, right_x : where the columns' inner edges stand [px].
    top, bottom : the height the columns may use [px].
    pitch : least distance between two names [px]; it shrinks only when the column is full.

    Notes
    -----
    Names keep the order of what they point at, so that leader lines of one column do not cross much, and each
    goes to the nearer side while the columns stay balanced.
    """
    ordered = sorted(tips.items(), key=lambda item: item[1][0])
    half = len(ordered) // 2
    labels: list[Label] = []
    for left, column, x in ((True, ordered[:half], left_x), (False, ordered[half:], right_x)):
        column.sort(key=lambda item: item[1][1])
        heights = _spread([tip[1] for _, tip in column], top, bottom, pitch)
        labels += [Label(text, x, y, left, tip[0], tip[1]) for (text, tip), y in zip(column, heights, strict=True)]
    return labels


def _spread(wanted: list[float], top: float, bottom: float, pitch: float) -> list[float]:
    """Heights as near to the wanted ones as the pitch allows, in order, between top and bottom."""
    if not wanted:
        return []
    pitch = min(pitch, (bottom - top) / max(1, len(wanted) - 1))
    heights: list[float] = []
    for i, y in enumerate(wanted):
        low = top + i * pitch if not heights else heights[-1] + pitch
        heights.append(max(y, low))
    limit = bottom
    for i in range(len(heights) - 1, -1, -1):
        heights[i] = min(heights[i], limit)
        limit = heights[i] - pitch
    return heights
