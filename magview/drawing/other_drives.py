"""The drive end of a magneto that no toothed disc times: a slotted flange, or a gear. Begin at `other_drive_scene`.

Only what the file gives is true: the travel of the slots, the gear's number of teeth. Where the magneto stands in its
slots no file says; the studs are drawn in their middle.
"""

from __future__ import annotations

import math
from collections.abc import Iterator

import numpy as np

from magview.bench.drive_words import adjusted_words
from magview.bench.state import BenchState, Engaged
from magview.bench.words import drive_end_sense
from magview.drawing.drive_end import drive_pose, toothed
from magview.drawing.scene import CornerLine, CornerWords, Group, Options, Piece, Scene, Style, Turn, Word
from magview.drawing.shapes import arc, arc_slot, circle, polar, polar_point
from magview.spec.engine import Geared, SlottedFlange
from magview.spec.language import tr

_BOX = 46.0
_FLANGE, _SLOT, _GEAR, _SHAFT = 40.0, 31.0, 30.0, 9.0
"""Radii [mm]: flange, middle of its slots, gear, shaft."""
_ARROW = 36.5


def other_drive_scene(state: BenchState, engaged: Engaged, options: Options, at_engine: bool) -> Scene:
    """The drive end as it is adjusted; seen from there, or mirrored, as one stands at the engine."""
    how, turn = engaged.installation.adjusted_by, Turn(drive_pose(state, engaged).hub)
    clockwise = (drive_end_sense(state.magneto) > 0) != at_engine
    groups: tuple[Group, ...] = ()
    words: tuple[Word, ...] = ()
    name = short = ""
    told: list[tuple[str, ...]] = []
    if isinstance(how, SlottedFlange):
        groups = (
            Group("flange", "ground", tuple(_flange(how.travel_deg))),
            Group("shaft", "moving", tuple(_shaft()), (turn,)),
        )
        name, short = tr("Slotted flange: the magneto is swung in its slots"), tr("Slotted flange")
        words = tuple(
            Word(sign, polar_point(_ARROW, 90.0 + way * (how.travel_deg / 2 + 7.0)), "planned", 1.0, True)
            for sign, way in (("+", drive_end_sense(state.magneto)), ("−", -drive_end_sense(state.magneto)))
        )
        told = [
            (tr("− against rotation: fires earlier"), tr("− earlier")),
            (tr("+ with rotation: fires later"), tr("+ later")),
        ]
        if options.numbers:
            travel = how.travel_deg, how.travel_deg / engaged.ratio
            told.append((
                tr("slots {rotor:.1f}° long, {crank:.1f}° of crank", rotor=travel[0], crank=travel[1]),
                tr("slots {crank:.1f}° of crank", crank=travel[1]),
            ))  # fmt: skip
    elif isinstance(how, Geared):
        gear = Piece("magneto flange", (toothed(how.teeth, _GEAR, 0),), Style("hub", "hub_line"))
        groups = (Group("shaft", "moving", (gear, *_shaft(), _paint()), (turn,)),)
        name, short = tr("Geared drive: one tooth is a fixed angle"), tr("Geared drive")
        told = [(tr("{count} teeth", count=how.teeth),)]
        if options.numbers:
            one = 360.0 / how.teeth
            told.append((
                tr("one tooth: {rotor:.1f}° of rotor, {crank:.1f}° of crank", rotor=one, crank=one / engaged.ratio),
                tr("one tooth: {crank:.1f}° of crank", crank=one / engaged.ratio),
            ))  # fmt: skip
    sign = "↻" if clockwise else "↺"
    way = tr("turns clockwise") if clockwise else tr("turns anticlockwise")
    side = tr("Engine side") if at_engine else tr("Drive end")
    return Scene(
        name="coupling",
        box=(-_BOX, -_BOX, _BOX, _BOX),
        mirrored=at_engine,
        groups=groups,
        words=words,
        corners=(
            CornerWords("top-left", (
                CornerLine((f"{side} · {way}", f"{side} {sign}", sign), bold=True),
                CornerLine((name, short), "second_ink", 0.92),
            )),
            CornerWords("bottom-left", tuple(CornerLine(wordings, size=0.92) for wordings in told)),
        ),
        margins_em=(3.9, 1.4 * len(told) + 0.6),
        round_mm=_FLANGE + 1.0,
        lit=options.hovering,
        description=adjusted_words(engaged.installation) if options.numbers else f"{name}.",
    )  # fmt: skip


def _flange(travel_deg: float) -> Iterator[Piece]:
    """The magneto's flange with a slot at either side, as long as its travel, a stud in the middle of each."""
    half = travel_deg / 2
    slots = [arc_slot(_SLOT, middle - half, middle + half, 2.6) for middle in (90.0, 270.0)]
    outline = (circle((0.0, 0.0), _FLANGE, 180), circle((0.0, 0.0), _SHAFT + 1.0, 72), *slots)
    yield Piece("magneto flange", outline, Style("hub", "hub_line"))
    for middle in (90.0, 270.0):
        yield Piece("stud", (circle(polar_point(_SLOT, middle), 2.2, 36),), Style("steel_high", "steel_line"))
    line = arc(_ARROW, 90.0 - half - 2.0, 90.0 + half + 2.0)
    yield Piece("", (line,), Style(line="planned", width_px=2.2), closed=False)
    for end, way in ((90.0 + half + 2.0, 1.0), (90.0 - half - 2.0, -1.0)):
        back = end - way * math.degrees(3.0 / _ARROW)
        head = np.array([polar(_ARROW, end), polar(_ARROW + 1.5, back), polar(_ARROW - 1.5, back)])
        yield Piece("", (head,), Style("planned"))


def _shaft() -> Iterator[Piece]:
    yield Piece("shaft", (circle((0.0, 0.0), _SHAFT, 72),), Style("steel", "steel_line"))
    key = np.array([(-1.2, _SHAFT - 3.4), (1.2, _SHAFT - 3.4), (1.2, _SHAFT), (-1.2, _SHAFT)])
    yield Piece("shaft", (key,), Style("steel_low", "steel_line"))


def _paint() -> Piece:
    """A mark on the gear, by which its turning is seen."""
    bar = np.array([(-0.9, 14.0), (0.9, 14.0), (0.9, 25.0), (-0.9, 25.0)])
    return Piece("painted mark", (bar,), Style("paint", "paint_line"))
