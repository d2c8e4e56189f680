"""Crank, timing disc and No. 1 piston as a drawing, lying on its side: the cylinder points to the right.

Seen from the propeller end, which is the engine's drive end and the viewpoint of its `rotation`. Crank,
rod and piston travel are in true proportion; piston and cylinder bore are plain.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache

import numpy as np

from magview.drawing.shapes import Array, Point, Shape, circle, polar, polar_point, wrap
from magview.physics.engine.crank import piston_drop_mm, strokes
from magview.spec.engine import Engine

PARENTS: dict[str, str | None] = {"case": None, "disc": None, "web": None, "rod": None, "piston": None, "front": None}
"""Groups in drawing order."""

_TDC_BEARING = 90.0


@dataclass(frozen=True, eq=False)
class CrankEnd:
    """The drawing of an engine's No. 1, in half strokes: sizes scale with `unit_mm`."""

    shapes: tuple[Shape, ...]
    box: tuple[float, float, float, float]
    """Left, bottom, right, top of the picture [mm]."""
    unit_mm: float
    """Half the stroke."""
    disc_mm: float
    """Radius of the timing disc."""
    true_rod: bool
    """Whether No. 1's rod sits on the crank pin, so that the rod drawn is its own."""


@dataclass(frozen=True)
class CrankPose:
    """Places of crank, rod and piston."""

    crank_turn_deg: float
    """The disc from its zero position [bearing deg]."""
    pin: Point
    piston: Point
    """Piston pin [mm]."""
    drop_mm: float
    stroke: str
    btdc_deg: float
    """Before No. 1's firing top dead centre, −360…360; negative is after it."""


def engine_sense(engine: Engine) -> int:
    """+1 where the engine turns clockwise seen from the propeller end."""
    return 1 if engine.rotation_from("propeller") == "clockwise" else -1


def crank_pose(engine: Engine, crank_deg: float) -> CrankPose:
    """Return where No. 1 stands with the crank at an angle from its firing top dead centre [crank deg]."""
    turn, half = engine_sense(engine) * crank_deg, engine.stroke_mm / 2
    drop = float(piston_drop_mm(engine, crank_deg))
    pin = polar(half, _TDC_BEARING + turn)
    return CrankPose(
        crank_turn_deg=turn,
        pin=(float(pin[0]), float(pin[1])),
        piston=(half + engine.rod_mm - drop, 0.0),
        drop_mm=drop,
        stroke=str(strokes(engine, crank_deg)),
        btdc_deg=360.0 - (crank_deg + 360.0) % 720.0,
    )


def disc_point(engine: Engine, radius_mm: float, btdc_deg: float, crank_deg: float) -> Array:
    """Place of a reading of the timing disc [mm], shape (2,), y upwards: under the pointer when the crank is
    that far before top dead centre [crank deg].

    `crank_deg` is where the crank is now, from No. 1's firing top dead centre [deg].
    """
    return polar(radius_mm, _TDC_BEARING + engine_sense(engine) * (btdc_deg + crank_deg))


@lru_cache(maxsize=16)
def crank_end(engine: Engine) -> CrankEnd:
    """The drawing of an engine's No. 1, built once."""
    half, rod = engine.stroke_mm / 2, engine.rod_mm
    disc, bore, crown, skirt = 1.5 * half, 0.78 * half, 0.35 * half, 0.5 * half
    sense = engine_sense(engine)
    head = half + rod + crown + 0.12 * half
    wall = 0.12 * half
    inner_end = head - engine.stroke_mm - crown - skirt
    walls = [
        np.array([(inner_end, s * bore), (head, s * bore), (head, s * (bore + wall)), (inner_end, s * (bore + wall))])
        for s in (1.0, -1.0)
    ]
    cover = np.array([
        (head, -bore - wall), (head + wall, -bore - wall), (head + wall, bore + wall), (head, bore + wall),
    ])  # fmt: skip
    ticks: list[Array] = []
    longer: list[Array] = []
    for reading in range(-180, 180, 5):
        bearing = _TDC_BEARING + sense * reading
        inner = disc * (0.9 if reading % 30 == 0 else 0.95)
        (longer if reading % 30 == 0 else ticks).append(np.array([polar(inner, bearing), polar(disc, bearing)]))
    web = wrap([((0.0, 0.0), 0.34 * half), (polar_point(half, _TDC_BEARING), 0.26 * half)])
    # The rod lies along +x from its big end at the origin and is turned about the crank pin.
    shank = wrap([((0.0, 0.0), 0.17 * half), ((rod, 0.0), 0.12 * half)])
    piston = np.array([(-skirt, -bore), (crown, -bore), (crown, bore), (-skirt, bore)])
    rings = [np.array([(crown * f, -bore), (crown * f, bore)]) for f in (0.35, 0.55, 0.75)]
    pointer = np.array([(disc * 1.02, 0.0), (disc * 1.14, 0.07 * half), (disc * 1.14, -0.07 * half)])
    link = engine.articulation
    return CrankEnd(
        shapes=(
            Shape("timing disc", "disc", "timing-disc", (circle((0, 0), disc, 180),)),
            Shape("timing disc", "disc", "scale", tuple(ticks), filled=False),
            Shape("timing disc", "disc", "mark", tuple(longer), filled=False),
            Shape("crank", "web", "arm", (web,)),
            Shape("cylinder", "case", "housing", (*walls, cover)),
            Shape("pointer", "front", "pointer", (pointer,)),
            Shape("connecting rod", "rod", "bracket", (shank,)),
            Shape("piston", "piston", "cam", (piston,)),
            Shape("piston", "piston", "scale", tuple(rings), filled=False),
            Shape("piston pin", "piston", "screw", (circle((0.0, 0.0), 0.1 * half),)),
        ),
        box=(-disc * 1.12, -disc * 1.08, head + 3 * wall, disc * 1.08),
        unit_mm=half,
        disc_mm=disc,
        true_rod=link is None or link.master_cylinder == 1 or link.knuckle_radius_mm == 0.0,
    )
