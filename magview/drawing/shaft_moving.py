"""Turning parts of the shaft's section, drawn for one instant: coupling, rotor, gears, finger, window, cam."""

from __future__ import annotations

import math
from collections.abc import Iterator

import numpy as np

from magview.bench.state import BenchState, Engaged
from magview.bench.words import cam_sense
from magview.drawing.breaker_end import pose
from magview.drawing.scene import (
    Options,
    Piece,
    Style,
    Word,
)
from magview.drawing.shaft_layout import (
    AXLES,
    BOX,
    CAM,
    CAM_RADIUS,
    DISC,
    DISC_RADIUS,
    DRIVE_FLANGE,
    FINGER,
    FINGER_RADIUS,
    GEARS,
    IDLER_TEETH,
    MAGNETO_FLANGE,
    PINION_TEETH,
    ROTOR,
    ROTOR_RADIUS,
    Angles,
    at_no_1,
    drum,
    finger_teeth,
    has_idler,
    lit,
    near_bearings,
    near_heights,
    rotor_turns_per_crank_turn,
)
from magview.drawing.shapes import box
from magview.spec.language import tr

_TOOTH_MM = 4.0


class Moving:
    """Everything that turns, drawn for one instant."""

    def __init__(self, state: BenchState, angles: Angles, up: float) -> None:
        self.state, self.angles, self.up = state, angles, up
        self.gear_radii = self._gear_radii()

    def _gear_radii(self) -> tuple[float, float, float]:
        """Of pinion, idler and the finger's gear, by their teeth from axle to axle; 0 where there is none."""
        twice = 2.0 * rotor_turns_per_crank_turn(self.state)
        between = IDLER_TEETH / PINION_TEETH if has_idler(self.state.magneto) else 0.0
        pinion = AXLES / (1.0 + 2.0 * between + twice)
        return pinion, between * pinion, twice * pinion

    def pieces(self) -> Iterator[Piece]:
        if self.state.engaged is not None:
            yield from self._coupling(self.state.engaged)
        yield from self._rotor()
        yield from self._gears()
        yield from self._finger()
        yield from self._window()
        yield from self._cam()

    def _coupling(self, engaged: Engaged) -> Iterator[Piece]:
        coupling, a, r = engaged.installation.coupling, self.angles, DISC_RADIUS
        if coupling is None:  # slots or gears: plain, with the paint that shows its turning
            yield from drum("drive flange", (DRIVE_FLANGE[0], MAGNETO_FLANGE[1]), r, "drive")
            yield stripe("paint", (DRIVE_FLANGE[0], MAGNETO_FLANGE[1]), r, a.drive_flange)
            return
        drive = np.array(joint(coupling.drive_teeth, a.disc, r, DISC[0], _TOOTH_MM))
        magneto = np.array(joint(coupling.magneto_teeth, a.disc, r, DISC[1], -_TOOTH_MM))
        x0, x1 = DRIVE_FLANGE[0], MAGNETO_FLANGE[1]
        for part, role, outline in (
            ("drive flange", "drive", np.vstack([[(x0, -r)], drive, [(x0, r)]])),
            ("disc", "disc", np.vstack([drive, magneto[::-1]])),
            ("magneto flange", "hub", np.vstack([magneto, [(x1, r), (x1, -r)]])),
        ):
            yield Piece(part, (outline,), Style(role))
            yield lit(part, outline, r, f"{role}_line")
        yield stripe("paint", (x0, DRIVE_FLANGE[1] - 4.6), r, a.drive_flange)
        yield stripe("paint", (DISC[0] + 0.6, DISC[1] - 0.6), r, a.disc)
        yield stripe("paint", (MAGNETO_FLANGE[0] + 4.6, x1), r, a.magneto_flange)

    def _rotor(self) -> Iterator[Piece]:
        poles, r = self.state.magneto.poles, ROTOR_RADIUS
        yield Piece("rotor", (box(*ROTOR, -r, r),), Style("steel_low", "steel_line"))
        for i in range(poles):
            half = 0.37 * 360.0 / poles
            middle = self.angles.rotor + 360.0 * i / poles
            heights = near_heights(middle - half, middle + half, r)
            if heights is not None:
                name = ("north", "south")[i % 2]
                yield Piece("rotor", (box(*ROTOR, *heights),), Style(name, f"{name}_line"))
        yield lit("rotor", box(*ROTOR, -r, r), r, "steel_line")

    def _gears(self) -> Iterator[Piece]:
        (small, between, large), a = self.gear_radii, self.angles
        for radius, middle, teeth, turned in (
            (small, 0.0, PINION_TEETH, a.pinion), (between, small + between, IDLER_TEETH, a.idler),
            (large, AXLES, finger_teeth(self.state), a.finger),
        ):  # fmt: skip
            if not radius:
                continue
            yield from drum("gears", GEARS, radius, "steel", middle)
            heights = [middle + radius * math.cos(b) for b in near_bearings(teeth, turned)]
            lines = tuple(np.array([(GEARS[0], y), (GEARS[1], y)]) for y in heights)
            if lines:
                yield Piece("gears", lines, Style(line="steel_line"), closed=False)
        yield stripe("paint", GEARS, large, a.finger, AXLES)

    def _finger(self) -> Iterator[Piece]:
        bearing = math.radians(self.angles.finger)
        tip, near = AXLES + FINGER_RADIUS * math.cos(bearing), on_near_side(bearing)
        yield from drum("finger", FINGER, 6.0, "fibre", AXLES)
        blade = box(FINGER[0] + 0.6, FINGER[1] - 0.4, min(AXLES, tip), max(AXLES, tip))
        yield Piece(
            "finger", (blade,), Style("bronze", "bronze_line") if near else Style(line="bronze_line", dash=(3, 2))
        )

    def _window(self) -> Iterator[Piece]:
        """The timing window, and above it what is seen in it."""
        opening = box(GEARS[0] - 1, GEARS[1] + 0.8, 49, 52)
        yield Piece("timing-window", (opening,), Style("planned_fill", "planned", 1.4))
        x0, x1, y0, y1 = WINDOW
        yield Piece("timing-window", (box(x0, x1, y0, y1),), Style("panel", "planned", 1.4))
        yield Piece(
            "timing-window", (np.array([(opening[1, 0], 50.5), (x0, 53.0)]),), Style(line="planned"), closed=False
        )
        pitch = 360.0 / finger_teeth(self.state)
        for i, middle in window_teeth(self.angles.finger, finger_teeth(self.state)):
            half = 0.27 * pitch * _WINDOW_SCALE
            left, right = max(middle - half, x0 + 0.4), min(middle + half, x1 - 0.4)
            if right > left:
                yield Piece(
                    "timing-window", (box(left, right, y0 + 1.0, y1 - 1.0),),
                    Style("paint" if i == 0 else "steel", "paint_line" if i == 0 else "steel_line"),
                )  # fmt: skip
        tick = sum(WINDOW[:2]) / 2
        ticks = tuple(np.array([(tick, a), (tick, b)]) for a, b in ((y1 - 1.4, y1 + 1.0), (y0 + 1.4, y0 - 1.0)))
        yield Piece("timing-window", ticks, Style(line="planned", width_px=2.0), closed=False)

    def _cam(self) -> Iterator[Piece]:
        magneto, up, r = self.state.magneto, self.up, CAM_RADIUS
        sense, lobes = cam_sense(magneto), magneto.cam.lobe_peaks_deg
        yield from drum("cam", CAM, r, "steel", up)
        half = min(22.0, 84.0 / len(lobes))
        for peak in lobes:
            middle = self.angles.cam - sense * peak
            heights = near_heights(middle - half, middle + half, r)
            if heights is not None:
                yield Piece("cam", (box(*CAM, up + heights[0], up + heights[1]),), Style("lift_fill"))
        yield Piece("cam", (box(*CAM, up - r, up + r),), Style(line="steel_line"))
        yield Piece("cam", (box(71, 74, up - 5, up + 5),), Style("steel_high", "steel_line"))
        lifted = 1.1 if pose(self.state).gap_mm else 0.0
        yield Piece("heel", (box(64.5, 69.5, up + 9.2, up + 14 + lifted),), Style("fibre", "fibre_line"))
        yield Piece(
            "breaker arm", (box(62.5, 71.5, up + 13 + lifted, up + 18 + lifted),), Style("steel_high", "steel_line")
        )
        contact = Style("contact", "contact_line")
        yield Piece("contacts", (box(72, 76, up + 14.6 + lifted, up + 16.6 + lifted),), contact)
        yield Piece("contacts", (box(72, 76, up + 12.2, up + 14.2),), contact)

    def words(self, options: Options) -> Iterator[Word]:
        poles = self.state.magneto.poles
        for i in range(poles):
            half, middle = 0.37 * 360.0 / poles, self.angles.rotor + 360.0 * i / poles
            heights = near_heights(middle - half, middle + half, ROTOR_RADIUS)
            if heights is not None and heights[1] - heights[0] > 4.0:
                at = sum(ROTOR) / 2, (heights[0] + heights[1]) / 2
                yield Word("NS"[i % 2], at, ("north_line", "south_line")[i % 2], bold=True, layer="moving")
        _, x1, y0, y1 = WINDOW
        at_1 = at_no_1(self.angles) and options.numbers
        marks = self.state.magneto.distributor
        mark = marks.window_mark if marks is not None else None
        at_mark = tr("{mark} in window: No. 1", mark=mark) if mark else tr("mark in window: No. 1")
        yield Word(
            at_mark if at_1 else tr("timing window, seen from above"), (x1 + 2.0, (y0 + y1) / 2),
            "good" if at_1 else "second_ink", 0.92, at_1, "left", "moving", paper=True, room_mm=BOX[2] - x1 - 2.0,
            shorter=tr("No. 1 ✓") if at_1 else tr("window"),
        )  # fmt: skip


WINDOW = (20.0, 41.0, 50.0, 57.5)
"""Frame of the view into the timing window [mm]: left, right, bottom, top."""
_WINDOW_SCALE = 0.45
"""Millimetres of that view for each degree of the gear."""


def on_near_side(bearing: float) -> bool:
    """Whether a bearing [rad] is on the side towards the eye; the edge counts, whatever the rounding."""
    return math.sin(bearing) < 1e-9


def window_teeth(finger_deg: float, teeth: int) -> Iterator[tuple[int, float]]:
    """Teeth in the timing window: which from the painted one, and where its middle stands [mm along the shaft]."""
    middle = (WINDOW[0] + WINDOW[1]) / 2
    for i in range(teeth):
        bearing = (finger_deg + 360.0 * i / teeth + 180.0) % 360.0 - 180.0
        if abs(bearing) < 28.0:
            yield i, middle + bearing * _WINDOW_SCALE


def stripe(part: str, x: tuple[float, float], radius: float, bearing_deg: float, middle: float = 0.0) -> Piece:
    """A painted stripe along a drum: filled on the near side, an outline on the far one."""
    bearing = math.radians(bearing_deg)
    half = max(0.45, 1.1 * abs(math.sin(bearing)))
    y = middle + radius * math.cos(bearing)
    near = on_near_side(bearing)
    look = Style("paint", "paint_line") if near else Style(line="paint_line", dash=(2.0, 2.0))
    return Piece(part, (box(*x, y - half, y + half),), look)


def joint(teeth: int, turned_deg: float, radius: float, x: float, depth: float) -> list[tuple[float, float]]:
    """The joint of two toothed faces along the near side, from the bottom up: a tooth reaches `depth` to the left."""
    quarter = 90.0 / teeth
    edges = sorted(
        ((turned_deg + 360.0 * i / teeth + side * quarter - 180.0) % 360.0, side)
        for i in range(teeth)
        for side in (-1, 1)
    )
    seen = [(angle, side) for angle, side in edges if 0.0 < angle < 180.0]
    now = depth if seen and seen[0][1] > 0 else 0.0
    points = [(x - now, -radius)]
    for angle, side in seen:
        y = -radius * math.cos(math.radians(angle))
        points.append((x - now, y))
        now = depth if side < 0 else 0.0
        points.append((x - now, y))
    points.append((x - now, radius))
    return points
