"""Drawings as SVG text, for paper: light greys and hatching, so that black and white loses nothing.

Turns and moves are worked into the points, so that any viewer shows the same, however little of SVG it knows.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from html import escape

import numpy as np

from magview.bench.state import BenchState
from magview.curves.lift import round_levels
from magview.drawing.breaker_end import breaker_layout
from magview.drawing.breaker_hero import Shown, breaker_scene
from magview.drawing.labels import Label, arrange
from magview.drawing.scene import Frame, Options, Word
from magview.drawing.scene_svg import disc, path, scene_body, stroked, words
from magview.drawing.shapes import Array, Point, point, rotate
from magview.spec.language import number, tr


def breaker_svg(state: BenchState, title: str, width: int = 372, names: bool = True) -> str:
    """The breaker end of a state, as seen from there, with the names of its parts."""
    margin = 77.0 if names else 4.0
    side = width - 2 * margin
    height = side + 16.0
    body, tips = breaker_body(state, side, (width / 2, height / 2), 9.0 if names else 10.0)
    if names:
        body += _names(tips, margin, width - margin, height)
    return svg(width, height, title, body)


def breaker_body(
    state: BenchState, side: float, middle: tuple[float, float], em: float,
    wanted: Callable[[Word], bool] = lambda word: True,
) -> tuple[str, dict[str, tuple[float, float]]]:  # fmt: skip
    """Return the breaker end as large as a square of a side about a point [px], and where its names point.

    `em`: size of usual type [px]; `wanted`: which words of the picture are written.
    """
    scene = breaker_scene(Shown.of(state), Options(names=False))
    frame = Frame(side / (scene.box[2] - scene.box[0]), *middle)
    anchors = breaker_layout(state.magneto).anchors()
    tips = {name: frame.at(point(scene.group(group).put(np.array(at)))) for name, (group, at) in anchors.items()}
    return scene_body(scene, frame, em, wanted), tips


# ---------------------------------------------------------------------- pieces


class Places:
    """Places of groups: each turned about its own origin, then carried by its parent."""

    def __init__(
        self,
        parents: Mapping[str, str | None],
        origins: Mapping[str, Point],
        turns_deg: Mapping[str, float],
        moved: Mapping[str, Point] | None = None,
    ) -> None:
        self._parents, self._origins, self._turns, self._moved = parents, origins, turns_deg, moved or {}
        self.order = list(parents)

    def put(self, group: str | None, points: Array) -> Array:
        """Points (n, 2) of a group [mm] where they stand in the picture [mm]."""
        while group is not None:
            points = rotate(points, self._turns.get(group, 0.0), self._origins[group])
            points = points + np.array(self._moved.get(group, (0.0, 0.0)))
            group = self._parents[group]
        return points


def leader(label: Label, width: float) -> str:
    """The line from a name to its part, with a dot at its end."""
    line = f"M{label.x:.1f} {label.y:.1f}L{label.tip_x:.1f} {label.tip_y:.1f}"
    return stroked(line, width) + disc(label.tip_x, label.tip_y, 3.0 * width, "#000000", "#ffffff", width)


def _names(tips: Mapping[str, tuple[float, float]], left: float, right: float, height: float) -> str:
    text = ""
    for label in arrange(dict(tips), left, right, 10.0, height - 10.0, 15.0):
        text += leader(label, 0.5)
        anchor, x = ("end", label.x - 3) if label.left else ("start", label.x + 3)
        text += words(x, label.y + 3.5, tr(label.text), anchor)
    return text


def svg(width: float, height: float, title: str, body: str) -> str:
    """A whole picture from its pieces [px]."""
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" width="{width:g}" height="{height:.0f}" '
        f'viewBox="0 0 {width:g} {height:.0f}" fill-rule="evenodd" role="img">'
        f"<title>{escape(title)}</title>\n{body}</svg>"
    )


# ---------------------------------------------------------------------- plots


@dataclass(frozen=True, eq=False)
class Plot:
    """Readings over hours: (x, y, filled) each; limits; a band ahead as x, middle, low, high."""

    title: str
    along: str
    points: list[tuple[float, float, bool]]
    limits: tuple[float, float] | None
    band: tuple[Array, Array, Array, Array] | None


def plot_svg(plot: Plot, width: int = 372, height: int = 230) -> str:
    """A plot of readings over hours."""
    left, right, top, bottom = 58.0, 12.0, 24.0, 36.0
    xs = [p[0] for p in plot.points] + ([] if plot.band is None else plot.band[0].tolist())
    ys = [p[1] for p in plot.points] + list(plot.limits or ())
    if plot.band is not None:
        ys += [*plot.band[2].tolist(), *plot.band[3].tolist()]
    (x0, x1), (y0, y1) = _span(xs), _span(ys)
    across, up = (width - left - right) / (x1 - x0), (height - top - bottom) / (y1 - y0)

    def at(x: Array, y: Array) -> Array:
        return np.column_stack([left + across * (x - x0), height - bottom - up * (y - y0)])

    body = words(left, 14, plot.title) + words(width - right, height - 6, plot.along, "end")
    body += _line(at(np.array([x0, x0, x1]), np.array([y1, y0, y0])), 1.0)
    for ticks, flat in ((round_levels(x0, x1), True), (round_levels(y0, y1), False)):
        for v in ticks.tolist():
            x, y = (at(np.array([v]), np.array([y0])) if flat else at(np.array([x0]), np.array([v])))[0].tolist()
            body += _line(np.array([(x, y), (x, y + 4) if flat else (x - 4, y)]), 0.8)
            body += words(x, y + 15, number(v), "middle", 9) if flat else words(x - 6, y + 3, number(v), "end", 9)
    if plot.band is not None:
        x, middle, low, high = plot.band
        outline = np.concatenate([at(x, low), at(x[::-1], high[::-1])])
        body += stroked(path(outline, True), 0.0, fill="#dddddd", colour="none")
        body += _line(at(x, middle), 1.0)
    for limit in plot.limits or ():
        body += _line(at(np.array([x0, x1]), np.array([limit, limit])), 1.0, "7 4")
    for px, py, filled in plot.points:
        x, y = at(np.array([px]), np.array([py]))[0].tolist()
        fill = "#000000" if filled else "#ffffff"
        body += disc(x, y, 3.6, fill, "#000000", 1.2)
    return svg(width, height, plot.title, body)


def _span(values: list[float]) -> tuple[float, float]:
    low, high = min(values), max(values)
    room = 0.06 * (high - low) or 0.06 * abs(high) or 1.0
    return low - room, high + room


def _line(points: Array, width: float, dash: str = "") -> str:
    return stroked(path(points, False), width, dash=dash)
