"""Crank, timing disc and piston of No. 1 as a scene, for screen, file and paper: one drawing.

Seen from the propeller end. What a mark of the disc means, such as where the contacts open, is told by who draws it.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import lru_cache

import numpy as np

from magview.drawing.crank_end import PARENTS, CrankEnd, CrankPose, crank_end, crank_pose, disc_point, engine_sense
from magview.drawing.scene import Group, Hatch, Piece, Scene, Style, Turn, Word
from magview.drawing.shapes import Point, box, polar_point
from magview.physics.engine.crank import piston_drop_mm
from magview.spec.engine import Engine

_STYLES = {
    "timing-disc": Style("panel", "steel_line"), "scale": Style(line="second_ink"),
    "mark": Style(line="ink", width_px=1.6), "arm": Style("steel", "steel_line"),
    "housing": Style("case", "case_line", hatch=Hatch((45.0,), 2.2, 0.3)), "pointer": Style("ink", "ink"),
    "bracket": Style("steel_high", "steel_line"), "cam": Style("rim", "steel_line"),
    "screw": Style("steel_low", "steel_line"),
}  # fmt: skip
_READINGS_EM, _READINGS_AT = 0.75, 0.8
_READINGS_ROOM = 0.3
"""Readings stand at this share of the disc's radius; they are left out where one is longer than that share."""
_ACROSS, _NAMES_AT = 0.95, 1.12
"""Half the length of a line across the cylinder, and where its name stands [half strokes]."""
_STOP_HALF, _STOP_OUT = 0.13, 0.24
"""Half the breadth of a piston stop, and how far its head stands out of the cylinder [half strokes]."""


@dataclass(frozen=True)
class DiscMark:
    """A reading of the disc that is marked, with the piston's place then."""

    btdc_deg: float
    """Before No. 1's firing top dead centre [crank deg]."""
    name: str
    role: str
    above: bool
    """Side of the cylinder that its name stands on."""
    dash: tuple[float, ...] = ()


def crank_scene(
    engine: Engine, crank_deg: float, marks: Sequence[DiscMark] = (), *,
    disc_error_deg: float = 0.0, stop_deg: float | None = None, description: str = "",
) -> Scene:  # fmt: skip
    """No. 1 of an engine with the crank at an angle from its firing top dead centre [crank deg].

    `disc_error_deg`: what the disc reads at top dead centre. `stop_deg`: a piston stop is in the plug hole, which
    meets the piston so far from top dead centre [crank deg]; None for none.
    """
    drawing, now = crank_end(engine), crank_pose(engine, crank_deg)
    sense = engine_sense(engine)
    turns = _turns(now, sense * disc_error_deg)
    kept = _pieces(engine)
    groups = [Group(name, "ground" if name == "case" else "moving", kept[name], turns[name]) for name in PARENTS]
    if stop_deg is not None:
        groups.append(Group("stop", "moving", tuple(_stop(engine, drawing, now, stop_deg))))
    groups.append(Group("marks", "moving", tuple(_mark_pieces(engine, drawing, marks, crank_deg))))
    words = [
        Word(str(abs(reading)), polar_point(_READINGS_AT * drawing.disc_mm, bearing), "second_ink", _READINGS_EM,
             layer="moving", room_mm=_READINGS_ROOM * drawing.disc_mm)
        for reading in range(-150, 181, 30)
        for bearing in (90.0 + sense * (reading + crank_deg - disc_error_deg),)
    ]  # fmt: skip
    for mark in marks:
        up = _NAMES_AT if mark.above else -_NAMES_AT
        at = crown_mm(engine, drawing, mark.btdc_deg), up * drawing.unit_mm
        words.append(Word(mark.name, at, mark.role, align="right", layer="moving", paper=True))
    return Scene("crank", drawing.box, tuple(groups), tuple(words), description=description)


def crown_mm(engine: Engine, drawing: CrankEnd, btdc_deg: float) -> float:
    """Place of the piston's crown along the cylinder with the crank so far before top dead centre [mm]."""
    return drawing.unit_mm * 1.35 + engine.rod_mm - float(piston_drop_mm(engine, -btdc_deg))


@lru_cache(maxsize=16)
def _pieces(engine: Engine) -> dict[str, tuple[Piece, ...]]:
    """The parts by their groups, made once for an engine."""
    shapes = crank_end(engine).shapes
    return {
        group: tuple(
            Piece(s.part, s.outlines, _STYLES[s.material], closed=s.filled) for s in shapes if s.group == group
        )
        for group in PARENTS
    }


def _turns(now: CrankPose, disc_error_deg: float) -> dict[str, tuple[Turn, ...]]:
    along = float(np.degrees(np.arctan2(now.piston[0] - now.pin[0], now.piston[1] - now.pin[1])))
    return {
        "case": (), "front": (),
        "disc": (Turn(now.crank_turn_deg - disc_error_deg),),
        "web": (Turn(now.crank_turn_deg),),
        "rod": (Turn(along - 90.0), *_shifted(now.pin)),
        "piston": _shifted(now.piston),
    }  # fmt: skip


def _shifted(by: Point) -> tuple[Turn, Turn]:
    """A shift [mm] as two half turns."""
    return Turn(180.0), Turn(180.0, (by[0] / 2, by[1] / 2))


def _mark_pieces(engine: Engine, drawing: CrankEnd, marks: Sequence[DiscMark], crank_deg: float) -> Iterator[Piece]:
    disc, half = drawing.disc_mm, _ACROSS * drawing.unit_mm
    for mark in marks:
        ray = np.array([disc_point(engine, share * disc, mark.btdc_deg, crank_deg) for share in (0.42, 1.02)])
        x = crown_mm(engine, drawing, mark.btdc_deg)
        across = np.array([(x, -half), (x, half)])
        yield Piece("", (ray, across), Style(line=mark.role, width_px=2.2, dash=mark.dash), closed=False)


def _stop(engine: Engine, drawing: CrankEnd, now: CrankPose, stop_deg: float) -> Iterator[Piece]:
    """A stop screwed in as deep as it goes: a piston that stands higher holds it out."""
    unit, tip = drawing.unit_mm, crown_mm(engine, drawing, stop_deg)
    tip = max(tip, now.piston[0] + 0.35 * unit)
    head, half = drawing.box[2], _STOP_HALF * unit
    steel = Style("steel_high", "steel_line", 1.3)
    yield Piece("piston stop", (box(tip, head, -half, half),), steel)
    yield Piece("piston stop", (box(head - _STOP_OUT * unit, head, -2.2 * half, 2.2 * half),),
                Style("bronze", "bronze_line", 1.3))  # fmt: skip
