"""The switch lead's circuit as a scene, for screen, file and paper: one drawing, with the instruments at it.

A lamp is a circle with a cross and a meter one with its unit, as in IEC 60617. What is not there is not drawn: no
meter at a lead whose plug is in, no tab where the magneto has none. Begin reading at `lead_scene`.
"""

from __future__ import annotations

from collections.abc import Iterator

import numpy as np

from magview.bench.lead_words import lamp_words, lead_meter_words, lead_words, terminal_meter_words
from magview.bench.state import BenchState
from magview.drawing.lead_picture import FOOT, HEIGHT, RAIL, WALL_X, WIDTH, LeadPicture, lead_picture
from magview.drawing.scene import CornerLine, CornerWords, Group, Piece, Scene, Style, Word
from magview.drawing.shapes import Array, Point, arc, circle

_STYLES = {
    "wire": Style(line="ink", width_px=1.4), "part": Style(line="ink", width_px=2.2),
    "fault": Style(line="bad", width_px=2.6), "ground": Style(line="ink", width_px=1.6),
}  # fmt: skip

LAMP, METER = (40.5, 30.0), (WALL_X + 13.2, 35.0)
"""Middles of the timing light, which is clipped to the terminal, and of the meter at a pulled lead."""
_RADIUS = 2.8
_UP = 1.3
"""From the foot of a word to its middle."""


def lead_scene(state: BenchState, *, instruments: bool = True) -> Scene:
    """The circuit of a state, with timing light and meter or without."""
    picture = lead_picture(state)
    pieces = [Piece(line.kind, (line.points,), _STYLES[line.kind], closed=False) for line in picture.strokes]
    words = [Word(text, (x, y + _UP), align="left", layer="moving") for text, (x, y) in picture.words]
    told = CornerWords("bottom-left", tuple(
        CornerLine((text,)) for text in (lamp_words(state), terminal_meter_words(state), lead_meter_words(state))
    ))  # fmt: skip
    if instruments:
        pieces += _lamp(state, picture)
        if not state.lead.plug_in:
            pieces += _meter()
            words.append(Word("Ω", METER, bold=True, layer="moving"))
    return Scene(
        name="lead",
        box=(0.0, 0.0, WIDTH, HEIGHT),
        groups=(Group("circuit", "moving", tuple(pieces)),),
        words=tuple(words),
        corners=(told,) if instruments else (),
        margins_em=(0.3, 4.6) if instruments else (0.0, 0.0),
        description=lead_words(state)[0],
    )


def _lamp(state: BenchState, picture: LeadPicture) -> Iterator[Piece]:
    """The timing light between the terminal's side and ground, filled while it burns; a buzzer has a dome instead."""
    x, y = LAMP
    yield from _joined(x, RAIL, y, FOOT)
    fill = "paint" if picture.lamp_lit else "paper"
    if state.lamp_kind == "buzzer":
        dome = arc(_RADIUS, -90.0, 90.0) + np.array(LAMP)
        yield Piece("lamp", (dome,), Style(fill, "ink", 1.8))
        return
    yield Piece("lamp", (circle((x, y), _RADIUS),), Style(fill, "ink", 1.8))
    arm = _RADIUS * np.sqrt(0.5)
    cross = tuple(np.array([(x - arm, y - s * arm), (x + arm, y + s * arm)]) for s in (1.0, -1.0))
    yield Piece("lamp", cross, Style(line="ink", width_px=1.4), closed=False)


def _meter() -> Iterator[Piece]:
    """A meter from the plug of a pulled lead to the case."""
    x, y = METER
    yield from _joined(x, RAIL - 2.5, y, y - 9.0)
    yield Piece("meter", (circle((x, y), _RADIUS),), Style("paper", "ink", 1.8))


def _joined(x: float, top: float, middle: float, foot: float) -> Iterator[Piece]:
    """Two thin wires, dashed because they are clipped on, and a ground below."""
    clipped = Style(line="second_ink", width_px=1.2, dash=(4.0, 3.0))
    for ends in ((top, middle + _RADIUS), (middle - _RADIUS, foot)):
        yield Piece("clip", (_line((x, ends[0]), (x, ends[1])),), clipped, closed=False)
    for half, down in ((2.0, 0.0), (1.3, 1.5), (0.6, 3.0)):
        yield Piece("clip", (_line((x - half, foot - down), (x + half, foot - down)),),
                    Style(line="second_ink", width_px=1.4), closed=False)  # fmt: skip


def _line(start: Point, end: Point) -> Array:
    return np.array([start, end], dtype=float)
