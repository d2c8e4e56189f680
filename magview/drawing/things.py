"""The things of a tray as small pictures, ten wide and seven high, and those that are in use where they are.

Nothing here is to any scale. What a light shows it is told; it knows no magneto.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from functools import lru_cache
from typing import Literal

import numpy as np

from magview.bench.tray import Thing
from magview.drawing.scene import Frame, Group, Piece, Scene, Style, Word
from magview.drawing.shapes import Array, Point, box, circle, polar, rotate, wrap
from magview.spec.language import tr

WIDE, HIGH = 10.0, 7.0
"""The box of each small picture."""

Burns = Literal["", "dark", "light", "low", "high"]
"""Ways that a timing light shows: not at all, burning or not, or buzzing low or high."""


def burning(buzzer: bool, burns: bool) -> Burns:
    """Look of a light that burns or not, or of a buzzer that buzzes high or low."""
    if buzzer:
        return "high" if burns else "low"
    return "light" if burns else "dark"


_STEEL = Style("steel_high", "steel_line")
_LINE = Style(line="steel_line")
_WIRE = Style(line="bad", width_px=2.2)
_EARTH = Style(line="second_ink", width_px=2.2)


@lru_cache(maxsize=16)
def thing_scene(thing: Thing) -> Scene:
    """A thing as it lies on the tray."""
    pieces = _PICTURES[thing]()
    return Scene(str(thing), (0.0, 0.0, WIDE, HIGH), (Group("thing", "moving", pieces),))


def _straightedge() -> tuple[Piece, ...]:
    bar = np.array([(0.4, 1.6), (9.0, 4.6), (9.6, 3.7), (1.4, 0.9)])
    return Piece("", (bar,), _STEEL), Piece("", (bar[:2],), Style(line="ink", width_px=2.2), closed=False)


def _lamp() -> tuple[Piece, ...]:
    return (*_lamp_at((5.0, 3.4), 1.0, ""), *_leads((3.9, 1.6), (6.1, 1.6)))


def _leads(left: Point, right: Point) -> tuple[Piece, ...]:
    drop = np.array([(0.0, 0.0), (-0.5, -0.7), (-0.3, -1.3)])
    return (
        Piece("", (drop + np.array(left),), _WIRE, closed=False),
        Piece("", (drop * np.array((-1.0, 1.0)) + np.array(right),), _EARTH, closed=False),
    )


def _lamp_at(at: Point, size: float, burns: Burns) -> tuple[Piece, ...]:
    """A light about a point: rays where it burns, waves where it buzzes."""
    x, y = at
    bulb, middle = circle((x, y + 1.7 * size), 0.95 * size, 40), np.array((x, y + 1.7 * size))
    lit = burns in ("light", "high")
    glow = (
        (Piece("", (circle((x, y + 1.7 * size), 2.2 * size, 40),), Style("paint", fill_alpha=0.25)),) if lit else ()
    )
    rays = tuple(
        np.array([middle + polar(1.2 * size, b), middle + polar(1.7 * size, b)])
        for b in (-75.0, -50.0, -25.0, 0.0, 25.0, 50.0, 75.0)
    )
    waves = tuple(
        np.array([middle + polar(r * size, b) for b in range(-50, 51, 10)])
        for r in {"low": (1.3,), "high": (1.3, 1.6, 1.9)}.get(burns, ())
    )
    return (
        *glow,
        Piece("", (bulb,), Style("paint" if lit else "panel", "steel_line", 1.3)),
        Piece("", (_zigzag(middle, size),), _LINE, closed=False),
        Piece(
            "", (box(x - 0.5 * size, x + 0.5 * size, y + 0.55 * size, y + 0.9 * size),), Style("steel", "steel_line")
        ),
        Piece(
            "", (box(x - 1.2 * size, x + 1.2 * size, y - 1.8 * size, y + 0.55 * size),), Style("steel", "steel_line")
        ),
        *((Piece("", rays, Style(line="opening", width_px=2.0), closed=False),) if burns == "light" else ()),
        *((Piece("", waves, Style(line="opening", width_px=1.6), closed=False),) if waves else ()),
    )


def _zigzag(middle: Array, size: float) -> Array:
    points = np.array([(-0.4, -0.2), (-0.2, 0.25), (0.0, -0.2), (0.2, 0.25), (0.4, -0.2)])
    return np.asarray(middle + size * points)


def _blades() -> tuple[Piece, ...]:
    leaves = tuple(
        rotate(wrap([((5.0, 1.2), 0.42), ((5.0, 6.0), 0.42)]), bearing, (5.0, 1.2))
        for bearing in (-70.0, -42.0, -14.0, 14.0, 42.0, 70.0)
    )
    return (
        *(Piece("", (leaf,), _STEEL) for leaf in leaves),
        Piece("", (circle((5.0, 1.2), 0.55, 32),), Style("steel_low", "steel_line")),
    )


def _meter() -> tuple[Piece, ...]:
    dial = np.array([np.array((5.0, 4.6)) + polar(1.3, float(b)) for b in range(-55, 56, 10)])
    needle = np.array([(5.0, 4.6), (4.2, 5.7)])
    return (
        Piece("", (box(2.9, 7.1, 1.6, 6.8),), Style("steel_low", "steel_line")),
        Piece("", (box(3.4, 6.6, 4.3, 6.4),), Style("panel", "steel_line")),
        Piece("", (dial,), _LINE, closed=False),
        Piece("", (needle,), Style(line="bad", width_px=1.6), closed=False),
        *_leads((3.4, 1.6), (6.6, 1.6)),
    )


def _jumper() -> tuple[Piece, ...]:
    t = np.linspace(0.0, 1.0, 30)[:, None]
    ends = np.array([(1.6, 1.2), (4.0, 8.6), (6.2, -2.0), (8.4, 5.4)])
    wire = (1 - t) ** 3 * ends[0] + 3 * t * (1 - t) ** 2 * ends[1] + 3 * t**2 * (1 - t) * ends[2] + t**3 * ends[3]
    return (
        Piece("", (wire,), Style(line="good", width_px=2.4), closed=False),
        *_clip((1.6, 1.2), 220.0, "good"),
        *_clip((8.4, 5.4), 40.0, "good"),
    )


def _clip(at: Point, bearing: float, role: str, size: float = 1.0) -> tuple[Piece, ...]:
    """A spring clip whose jaws point along a bearing, the wire at its other end."""
    jaw = np.array([(-0.35, 0.0), (-0.3, 0.9), (0.0, 2.0), (0.3, 0.9), (0.35, 0.0)]) * size + np.array(at)
    return (Piece("", (rotate(jaw, bearing, at),), Style(role, "steel_line")),)


def _screwdrivers() -> tuple[Piece, ...]:
    pieces: list[Piece] = []
    for at, role in (((3.6, 3.0), "planned_fill"), ((6.4, 3.0), "opening_fill")):
        x, y = at
        blade, grip = box(x - 0.14, x + 0.14, y - 2.8, y), wrap([((x, y + 0.4), 0.5), ((x, y + 2.6), 0.5)])
        pieces += [
            Piece("", (rotate(blade, 35.0, at),), _STEEL),
            Piece("", (rotate(grip, 35.0, at),), Style(role, "steel_line")),
        ]  # fmt: skip
    return tuple(pieces)


def _stop() -> tuple[Piece, ...]:
    threads = tuple(np.array([(4.3, y), (5.7, y + 0.3)]) for y in (2.4, 3.0, 3.6, 4.2))
    return (
        Piece("", (box(3.6, 6.4, 5.0, 6.6),), Style("bronze", "bronze_line")),
        Piece("", (box(4.3, 5.7, 2.2, 5.0),), _STEEL),
        Piece("", threads, _LINE, closed=False),
        Piece("", (wrap([((5.0, 0.6), 0.3), ((5.0, 2.2), 0.3)]),), _STEEL),
    )


def _disc() -> tuple[Piece, ...]:
    middle = (5.0, 3.4)
    ticks = tuple(
        np.array([np.array(middle) + polar(2.6, float(b)), np.array(middle) + polar(3.0, float(b))])
        for b in range(0, 360, 15)
    )
    pointer = np.array([(4.6, 6.9), (5.4, 6.9), (5.0, 6.1)])
    return (
        Piece("", (circle(middle, 3.1, 72),), Style("panel", "steel_line")),
        Piece("", ticks, _LINE, closed=False),
        Piece("", (circle(middle, 0.6, 32),), _STEEL),
        Piece("", (pointer,), Style("ink")),
    )


_PICTURES = {
    Thing.STRAIGHTEDGE: _straightedge,
    Thing.LAMP: _lamp,
    Thing.BLADES: _blades,
    Thing.METER: _meter,
    Thing.JUMPER: _jumper,
    Thing.SCREWDRIVER: _screwdrivers,
    Thing.STOP: _stop,
    Thing.DISC: _disc,
}


# ---------------------------------------------------------------------- in use, over the picture


@dataclass(frozen=True)
class Laid:
    """Things clipped on or held at the breaker end now."""

    lamp: Burns = ""
    jumper: bool = False
    blades: str = ""
    """The blades held at the contacts, as they are marked; empty for none."""
    went: bool = False
    """Whether they went between them."""
    meter: str = ""
    """Display of a meter that reads at the primary terminal or its lead; empty for none."""


def laid_scene(
    laid: Laid, contacts: Point, rim: Point, size: tuple[float, float], em: float, left: Point | None = None
) -> Scene:
    """Return the things in use, in the picture's own pixels: x to the right, y up from its upper edge.

    `contacts` and `rim` are where clips go; a light and a jumper hang at the picture's right, a meter at its left,
    clipped to `left` where that is given.
    """
    pieces: list[Piece] = []
    words: list[Word] = []
    wide, high = size
    a, b = np.array(contacts), np.array(rim)
    if laid.lamp:
        at = (wide - 3.6 * em, -0.62 * high)
        pieces += [*_lamp_at(at, 1.15 * em, laid.lamp), *_hung(a, (at[0] - 1.2 * em, at[1]), _WIRE, em)]
        pieces += [*_hung(b, (at[0] - 1.2 * em, at[1] - 1.4 * em), _EARTH, em)]
        pieces += [*_clip((float(a[0]), float(a[1])), 250.0, "bad", 0.55 * em)]
        pieces += [*_clip((float(b[0]), float(b[1])), 250.0, "second_ink", 0.55 * em)]
    if laid.jumper:
        ends = (wide - 3.4 * em, -0.3 * high), (wide - 0.8 * em, -0.46 * high)
        wire = _curve(np.array(ends[0]), np.array(ends[1]), 2.0 * em)
        pieces += [Piece("", (wire,), Style(line="good", width_px=2.4), closed=False)]
        pieces += [*_clip(ends[0], 300.0, "good", 0.55 * em), *_clip(ends[1], 120.0, "good", 0.55 * em)]
        at = ends[1][0], ends[1][1] - 1.6 * em
        words.append(Word(tr("jumper"), at, "good", layer="moving", align="right"))
    if laid.meter:
        pieces += _meter_at(em, high, b if left is None else np.array(left))
        words.append(Word(laid.meter, (0.6 * em, -0.53 * high - 3.2 * em), bold=True, layer="moving", align="left",
                          paper=True))  # fmt: skip
    if laid.blades:
        away = 0.0 if laid.went else 1.0 * em
        leaf = wrap([((0.0, -away), 0.42 * em), ((0.0, -away - 6.0 * em), 0.62 * em)]) + a
        pieces.append(Piece("", (rotate(leaf, -52.0, contacts),), Style("planned_fill", "planned", 1.6)))
        x, y = rotate(np.array((0.0, -away - 3.6 * em)), -52.0) + a
        words.append(Word(laid.blades, (float(x), float(y)), "planned", bold=True, layer="moving"))
    return Scene("laid", (0.0, -high, wide, 0.0), (Group("laid", "moving", tuple(pieces)),), tuple(words))


def _meter_at(em: float, high: float, rim: Array) -> tuple[Piece, ...]:
    """A meter at the picture's left, its second lead clipped to the rim."""
    x, y = 2.4 * em, -0.53 * high
    put = tuple(
        replace(p, outlines=tuple((o - (5.0, 4.2)) * 0.5 * em + (x, y) for o in p.outlines)) for p in _meter()
    )
    clip = _clip((float(rim[0]), float(rim[1])), 250.0, "second_ink", 0.55 * em)
    return (*put, *_hung(rim, (x + 0.8 * em, y - 1.3 * em), _EARTH, em), *clip)


def _hung(start: Array, end: Sequence[float], style: Style, em: float) -> tuple[Piece, ...]:
    return (Piece("", (_curve(start, np.array(end), 1.6 * em),), style, closed=False),)


def _curve(start: Array, end: Array, sag: float) -> Array:
    t = np.linspace(0.0, 1.0, 24)[:, None]
    middle = (start + end) / 2 + np.array((0.0, -sag))
    return np.asarray((1 - t) ** 2 * start + 2 * t * (1 - t) * middle + t**2 * end)


AS_PIXELS = Frame(1.0, 0.0, 0.0)
"""The frame of a scene that is in pixels."""
