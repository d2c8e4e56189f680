"""Layout of the shaft's section: where its parts lie, how they stand turned, and how round parts are drawn.

Bearings are clockwise as seen from the breaker end. The reader sees the near side: bearings with a negative sine.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass

import numpy as np

from magview.bench.state import BenchState
from magview.bench.words import breaker_end_sense, cam_sense
from magview.drawing.breaker_end import breaker_layout, pose
from magview.drawing.drive_end import drive_pose
from magview.drawing.scene import (
    LinearGradient,
    Piece,
    Style,
)
from magview.drawing.shapes import Array, box
from magview.spec.language import marked
from magview.spec.magneto import Magneto

BOX = (-109.0, -42.0, 92.0, 58.0)
"""Room that must be seen [mm]: with the names below and the window above."""

DRIVE_FLANGE, DISC, MAGNETO_FLANGE = (-92.0, -82.0), (-82.0, -71.0), (-71.0, -60.0)
ROTOR, GEARS, FINGER, PLATE, CAM = (-40.0, -6.0), (10.0, 18.0), (27.0, 31.0), (56.0, 59.0), (63.0, 71.0)
"""Places of the parts along the shaft [mm]."""

DISC_RADIUS, ROTOR_RADIUS, CAM_RADIUS, FINGER_RADIUS = 18.0, 17.0, 9.0, 17.0
AXLES = 25.0
"""From the rotor's shaft up to the distributor's [mm]."""

PINION_TEETH = 20
"""Of the gear on the rotor's shaft; no file gives them. The other gear's follow from the drive's ratio."""

IDLER_TEETH = 12
"""Of the gear between the two, where the distributor's shaft turns the rotor's way."""

AT_NO_1_DEG = 3.0
"""So near to its electrode the finger is said to be at No. 1 [finger deg]."""


@dataclass(frozen=True)
class Angles:
    """Bearings of everything that turns [deg clockwise as seen from the breaker end]."""

    rotor: float
    cam: float
    """Of lobe 1's top."""
    pinion: float
    finger: float
    idler: float
    """Of the gear between pinion and the finger's, where there is one."""
    drive_flange: float = 0.0
    disc: float = 0.0
    magneto_flange: float = 0.0


def rotor_turns_per_crank_turn(state: BenchState) -> float:
    """The drive's ratio [-]; without an engine that of a four-stroke engine, with a cylinder for each spark where the
    cam is not on the finger's shaft, which goes round once in two crank turns."""
    if state.engaged is not None:
        return state.engaged.ratio
    magneto = state.magneto
    if magneto.cam.on_distributor:
        return 1.0 / (2.0 * magneto.cam.turns_per_rotor_turn)
    return len(magneto.cam.lobe_peaks_deg) * magneto.cam.turns_per_rotor_turn / magneto.poles


def angles_of(state: BenchState) -> Angles:
    """Return where everything that turns stands, each part by its own ratio."""
    magneto, now = state.magneto, pose(state)
    rotor, teeth = now.turns_deg["rotor"], finger_teeth(state)
    from_e_gap = rotor - breaker_end_sense(magneto) * magneto.e_gap_deg
    along = 1.0 if has_idler(magneto) else -1.0
    # At No. 1 when the rotor stands at the E-gap.
    finger = along * from_e_gap / (2.0 * rotor_turns_per_crank_turn(state))
    # Where two gears touch, a tooth of one stands in a gap of the other: half a pitch more for an even number.
    idler = 0.5 * (1 + teeth) * 360.0 / IDLER_TEETH - from_e_gap * PINION_TEETH / IDLER_TEETH
    mesh = 0.5 * (IDLER_TEETH - teeth if has_idler(magneto) else 1 + teeth) % 1.0 * 360.0 / PINION_TEETH
    cam = breaker_layout(magneto).lobe_bearing() + now.turns_deg["cam"]
    if state.engaged is None:
        return Angles(rotor, cam, from_e_gap + mesh, finger, idler)
    marks = drive_pose(state, state.engaged)  # bearings as seen from the drive end
    return Angles(rotor, cam, from_e_gap + mesh, finger, idler, -marks.flange, -marks.disc, -marks.hub)


def finger_sense(magneto: Magneto) -> int:
    """+1 where the finger turns clockwise seen from the breaker end: with a cam on its shaft, else by outer gears."""
    return cam_sense(magneto) if magneto.cam.on_distributor else -breaker_end_sense(magneto)


def has_idler(magneto: Magneto) -> bool:
    """Whether a gear stands between the rotor's and the finger's: the finger turns the rotor's way."""
    return finger_sense(magneto) == breaker_end_sense(magneto)


def finger_teeth(state: BenchState) -> int:
    """Teeth of the distributor's gear."""
    return round(2 * PINION_TEETH * rotor_turns_per_crank_turn(state))


def at_no_1(angles: Angles) -> bool:
    """Whether the finger stands at No. 1's electrode."""
    return abs((angles.finger + 180.0) % 360.0 - 180.0) < AT_NO_1_DEG


def two_shafts(state: BenchState) -> bool:
    """Whether the cam is not on the rotor's shaft but on the distributor's."""
    return state.magneto.cam.on_distributor


def drum(part: str, x: tuple[float, float], radius: float, role: str, middle: float = 0.0) -> tuple[Piece, Piece]:
    """A round part seen from the side, and the light that falls on it from above."""
    outline = box(*x, middle - radius, middle + radius)
    return Piece(part, (outline,), Style(role)), lit(part, outline, radius, f"{role}_line", middle)


def lit(part: str, outline: Array, radius: float, line: str, middle: float = 0.0) -> Piece:
    """The light on a round part, with its outline."""
    stops = ((0.0, "shadow", 0.2), (0.3, "light", 0.25), (0.55, "shadow", 0.0), (1.0, "shadow", 0.3))
    light = LinearGradient((0.0, middle + radius), (0.0, middle - radius), stops)
    return Piece(part, (outline,), Style(line=line, gradient=light))


def near_bearings(count: int, turned_deg: float) -> Iterator[float]:
    """Bearings of evenly spread lines that lie on the near side [rad]."""
    for i in range(count):
        bearing = math.radians(turned_deg + 360.0 * i / count)
        if math.sin(bearing) < 0.0:
            yield bearing


def near_heights(start_deg: float, end_deg: float, radius: float) -> tuple[float, float] | None:
    """Lowest and highest place [mm] of what an arc of bearings shows on the near side; None where it is behind."""
    bearings = np.radians(np.linspace(start_deg, end_deg, 33))
    seen = bearings[np.sin(bearings) <= 1e-9]
    if len(seen) < 2:
        return None
    heights = radius * np.cos(seen)
    return float(heights.min()), float(heights.max())


PART_NAMES = {
    "backplate": marked("backplate"),
    "bearing": marked("bearing"),
    "breaker arm": marked("breaker arm"),
    "cam": marked("cam"),
    "capacitor": marked("capacitor"),
    "coil": marked("coil"),
    "contacts": marked("contacts"),
    "core": marked("core"),
    "disc": marked("disc"),
    "distributor": marked("distributor"),
    "drive flange": marked("drive flange"),
    "electrode": marked("electrode of a cylinder"),
    "engine": marked("engine"),
    "finger": marked("distributor finger"),
    "flux": marked("flux through the core"),
    "gears": marked("gears"),
    "heel": marked("heel"),
    "housing": marked("housing"),
    "magneto flange": marked("magneto flange"),
    "paint": marked("paint mark"),
    "pole shoe": marked("pole shoe"),
    "rotor": marked("rotor"),
    "shaft": marked("shaft"),
    "timing-window": marked("timing window"),
}
"""Names of the parts of section and cut for whoever points at them."""
