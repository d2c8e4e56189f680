"""One shaft, seen from the side: engine, coupling, rotor, gears, distributor, cam and breaker, cut open.

A scheme: diameters and distances are plain, angles and numbers of teeth are true. The drive end is at the left, the
breaker end at the right, and the reader sees the near side. Bearings are clockwise as seen from the breaker end.
Begin reading at `shaft_scene`.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass
from functools import lru_cache

import numpy as np

from magview.bench.state import BenchState, Engaged
from magview.bench.words import breaker_end_sense
from magview.drawing.breaker_end import breaker_layout, pose
from magview.drawing.drive_end import drive_pose
from magview.drawing.scene import (
    CornerLine,
    CornerWords,
    Group,
    Hatch,
    LinearGradient,
    Options,
    Piece,
    Scene,
    Style,
    Word,
)
from magview.drawing.shapes import Array
from magview.spec.language import tr

BOX = (-106.0, -42.0, 92.0, 58.0)
"""What must be seen [mm]: with room for the names below and the window above."""

DRIVE_FLANGE, DISC, MAGNETO_FLANGE = (-92.0, -82.0), (-82.0, -71.0), (-71.0, -60.0)
ROTOR, GEARS, FINGER, PLATE, CAM = (-40.0, -6.0), (10.0, 18.0), (27.0, 31.0), (56.0, 59.0), (63.0, 71.0)
"""Where the parts lie along the shaft [mm]."""

DISC_RADIUS, ROTOR_RADIUS, CAM_RADIUS, FINGER_RADIUS = 18.0, 17.0, 9.0, 17.0
AXLES = 25.0
"""From the rotor's shaft up to the distributor's [mm]."""

PINION_TEETH = 20
"""Of the gear on the rotor's shaft; no file gives them. The other gear's follow from the drive's ratio."""

AT_NO_1_DEG = 3.0
"""So near to its electrode the finger is said to be at No. 1 [finger deg]."""

_TOOTH_MM = 4.0


@dataclass(frozen=True)
class Angles:
    """Bearings of everything that turns [deg clockwise as seen from the breaker end]."""

    rotor: float
    cam: float
    """Of lobe 1's top."""
    pinion: float
    finger: float
    drive_flange: float = 0.0
    disc: float = 0.0
    magneto_flange: float = 0.0


def rotor_turns_per_crank_turn(state: BenchState) -> float:
    """The drive's ratio [-]; without an engine that of a four-stroke engine with a cylinder for each spark."""
    if state.engaged is not None:
        return state.engaged.ratio
    magneto = state.magneto
    return len(magneto.cam.lobe_peaks_deg) * magneto.cam.turns_per_rotor_turn / magneto.poles


def angles_of(state: BenchState) -> Angles:
    """Where everything that turns stands, each part by its own ratio."""
    magneto, now = state.magneto, pose(state)
    sense, rotor = breaker_end_sense(magneto), now.turns_deg["rotor"]
    twice = 2.0 * rotor_turns_per_crank_turn(state)
    from_e_gap = rotor - sense * magneto.e_gap_deg
    finger = -from_e_gap / twice  # at No. 1 when the rotor stands at the E-gap; gears turn the other way round
    mesh = 0.0 if finger_teeth(state) % 2 else 180.0 / PINION_TEETH
    cam = breaker_layout(magneto).lobe_bearing() + now.turns_deg["cam"]
    if state.engaged is None:
        return Angles(rotor, cam, from_e_gap + mesh, finger)
    marks = drive_pose(state, state.engaged)  # bearings as seen from the drive end
    return Angles(rotor, cam, from_e_gap + mesh, finger, -marks.flange, -marks.disc, -marks.hub)


def finger_teeth(state: BenchState) -> int:
    """Teeth of the distributor's gear."""
    return round(2 * PINION_TEETH * rotor_turns_per_crank_turn(state))


def at_no_1(angles: Angles) -> bool:
    """Whether the finger stands at No. 1's electrode."""
    return abs((angles.finger + 180.0) % 360.0 - 180.0) < AT_NO_1_DEG


def two_shafts(state: BenchState) -> bool:
    """Whether the cam is not on the rotor's shaft but on the distributor's."""
    return abs(state.magneto.cam.turns_per_rotor_turn - 1.0) > 1e-6


def shaft_scene(state: BenchState, options: Options = Options()) -> Scene:  # noqa: B008  (a frozen value)
    """The section of a magneto, with its engine's side where it is on one."""
    angles, up = angles_of(state), AXLES if two_shafts(state) else 0.0
    parts = _Moving(state, angles, up)
    return Scene(
        name="shaft",
        box=BOX,
        groups=(
            Group("housing", "ground", _still(up, state.engaged is not None)),
            Group("distributor", "ground", _distributor(state.engaged)),
            Group("turning", "moving", tuple(parts.pieces())),
        ),
        words=(*_names(state, up, options), *parts.words(options)),
        corners=(_title(state),),
        lit=options.hovering,
        description=_description(state, angles),
    )


# ---------------------------------------------------------------------- what stands still


def box(x0: float, x1: float, y0: float, y1: float) -> Array:
    """A rectangle's corners [mm]."""
    return np.array([(x0, y0), (x1, y0), (x1, y1), (x0, y1)])


def drum(part: str, x: tuple[float, float], radius: float, role: str, middle: float = 0.0) -> tuple[Piece, Piece]:
    """A round part seen from the side, and the light that falls on it from above."""
    outline = box(*x, middle - radius, middle + radius)
    return Piece(part, (outline,), Style(role)), lit(part, outline, radius, f"{role}_line", middle)


def lit(part: str, outline: Array, radius: float, line: str, middle: float = 0.0) -> Piece:
    """The light on a round part, with its outline."""
    stops = ((0.0, "shadow", 0.2), (0.3, "light", 0.25), (0.55, "shadow", 0.0), (1.0, "shadow", 0.3))
    light = LinearGradient((0.0, middle + radius), (0.0, middle - radius), stops)
    return Piece(part, (outline,), Style(line=line, gradient=light))


@lru_cache(maxsize=8)
def _still(up: float, on_engine: bool) -> tuple[Piece, ...]:
    wall = Style("case", "case_line", hatch=Hatch((45.0,), 1.6))
    right = ((50, 56, up + 8, 52), (50, 56, -24, up - 8))
    walls = (
        (-52, -47, 8, 52), (-52, -47, -24, -8), (-52, 56, -27, -24), (-47, GEARS[0] - 1, 49, 52),
        (GEARS[1] + 0.8, 50, 49, 52), *right, (-1, 5, 8, 24), (-1, 5, -24, -8),
    )  # fmt: skip
    pieces = [Piece("housing", (box(*b),), wall) for b in walls]
    if on_engine:
        engine = Style("case", "hair", hatch=Hatch((45.0,), 1.6))
        pieces += [Piece("engine", (box(-104, -100, *y),), engine) for y in ((9.0, 24.0), (-24.0, -9.0))]
        pieces.extend(drum("engine", (-104, DRIVE_FLANGE[0]), 7.0, "drive"))
    pieces.extend(drum("shaft", (MAGNETO_FLANGE[1], 26.0 if up else 74.0), 4.4, "steel"))
    if up:
        pieces.extend(drum("shaft", (30.0, 74.0), 3.4, "steel", up))
    for x0, x1, middle in ((-52.0, -47.0, 0.0), (-1.0, 5.0, 0.0), (50.0, 56.0, up)):
        for y0, y1 in ((4.4, 8.0), (-8.0, -4.4)):
            b = box(x0, x1, middle + y0, middle + y1)
            pieces.append(Piece("bearing", (b,), Style("panel", "steel_line")))
            pieces.append(Piece("bearing", (b[[0, 2]], b[[1, 3]]), Style(line="steel_line"), closed=False))
    core = Style("core", "core_line", hatch=Hatch((0.0,), 2.0))
    for y0, y1 in ((17.8, 22.0), (-22.0, -17.8)):
        pieces.append(Piece("pole shoe", (box(ROTOR[0] + 1, ROTOR[1] - 1, y0, y1),), core))
    middle = sum(ROTOR) / 2
    winding = Style("coil", "coil_line", hatch=Hatch((90.0,), 1.4))
    pieces.append(Piece("coil", (box(middle - 14, middle + 14, 26, 46),), winding))
    pieces.append(Piece("core", (box(middle - 6, middle + 6, 31, 41),), core))
    high = np.array([(middle + 14, 44), (7.5, 44), (7.5, AXLES + 4), (FINGER[0] + 2, AXLES + 4)])
    pieces.append(Piece("high tension", (high,), Style(line="flux", width_px=2.0, dash=(1.5, 1.2)), closed=False))
    top = up + (21.0 if up else 28.0)
    first = [(middle + 14, 28.0), (7.5, 28.0), (7.5, top)] if up else [(middle + 14, 28.0)]
    low = np.array([*first, (77.6, top), (77.6, up + 13.2), (76.0, up + 13.2)])
    pieces.append(Piece("primary", (low,), Style(line="opening", width_px=2.0), closed=False))
    for y0, y1 in ((-23.0, -9.0), (9.0, 23.0)):
        pieces.append(Piece("backplate", (box(*PLATE, up + y0, up + y1),), Style("plate", "plate_line")))
    cover = np.array([(56.0, up + 24.5), (79.5, up + 24.5), (79.5, up - 23.0), (56.0, up - 23.0)])
    pieces.append(Piece("cover", (cover,), Style(line="hair", width_px=1.2, dash=(4.0, 3.0)), closed=False))
    return tuple(pieces)


@lru_cache(maxsize=8)
def _distributor(engaged: Engaged | None) -> tuple[Piece, ...]:
    """The block, cut, with the electrodes on its near half; without an engine their number is not known."""
    pieces = [
        Piece("distributor", (box(32.5, 48.5, 7, 46.5),), Style("fibre", "fibre_line")),
        *drum("distributor", (GEARS[0], 32.5), 2.6, "steel", AXLES),
    ]
    for y, _ in electrodes(engaged):
        pieces.append(Piece("electrode", (box(31.4, 36, y - 1.2, y + 1.2),), Style("bronze", "bronze_line")))
    return tuple(pieces)


def electrodes(engaged: Engaged | None) -> Iterator[tuple[float, int]]:
    """Height [mm] and cylinder of each electrode on the near side; No. 1 alone where there is no engine.

    The finger turns against the rotor, so the order of firing goes round against it too.
    """
    if engaged is None:
        yield AXLES + FINGER_RADIUS, 1
        return
    order = engaged.installation.engine.firing_order
    sense = breaker_end_sense(engaged.installation.magneto)
    for i in range(len(order)):
        bearing = math.radians(360.0 * i / len(order))
        if i == 0 or math.sin(bearing) <= 1e-6:
            yield AXLES + FINGER_RADIUS * math.cos(bearing), order[(-sense * i) % len(order)]


# ---------------------------------------------------------------------- what turns


class _Moving:
    """Everything that turns, drawn for one instant."""

    def __init__(self, state: BenchState, angles: Angles, up: float) -> None:
        self.state, self.angles, self.up = state, angles, up
        self.gear_radii = self._gear_radii()

    def _gear_radii(self) -> tuple[float, float]:
        twice = 2.0 * rotor_turns_per_crank_turn(self.state)
        return AXLES / (1.0 + twice), AXLES * twice / (1.0 + twice)

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
        (small, large), a = self.gear_radii, self.angles
        for radius, middle, teeth, turned in (
            (small, 0.0, PINION_TEETH, a.pinion), (large, AXLES, finger_teeth(self.state), a.finger),
        ):  # fmt: skip
            yield from drum("gears", GEARS, radius, "steel", middle)
            heights = [middle + radius * math.cos(b) for b in _near(teeth, turned)]
            lines = tuple(np.array([(GEARS[0], y), (GEARS[1], y)]) for y in heights)
            if lines:
                yield Piece("gears", lines, Style(line="steel_line"), closed=False)
        yield stripe("paint", GEARS, large, a.finger, AXLES)

    def _finger(self) -> Iterator[Piece]:
        bearing = math.radians(self.angles.finger)
        tip, near = AXLES + FINGER_RADIUS * math.cos(bearing), math.sin(bearing) < 0.08
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
        sense, lobes = breaker_end_sense(magneto), magneto.cam.lobe_peaks_deg
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
        yield Word(
            tr("mark in window: No. 1") if at_1 else tr("timing window, seen from above"), (x1 + 1.5, (y0 + y1) / 2),
            "good" if at_1 else "second_ink", 0.92, at_1, "left", "moving", room_mm=BOX[2] - x1 - 2.0,
            shorter=tr("No. 1 ✓") if at_1 else tr("window"),
        )  # fmt: skip


WINDOW = (20.0, 41.0, 50.0, 57.5)
"""Where the view into the timing window is drawn [mm]: left, right, bottom, top."""
_WINDOW_SCALE = 0.45
"""Millimetres of that view for each degree of the gear."""


def window_teeth(finger_deg: float, teeth: int) -> Iterator[tuple[int, float]]:
    """Teeth in the timing window: which from the painted one, and where its middle stands [mm along the shaft]."""
    middle = (WINDOW[0] + WINDOW[1]) / 2
    for i in range(teeth):
        bearing = (finger_deg + 360.0 * i / teeth + 180.0) % 360.0 - 180.0
        if abs(bearing) < 28.0:
            yield i, middle + bearing * _WINDOW_SCALE


def _near(count: int, turned_deg: float) -> Iterator[float]:
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


def stripe(part: str, x: tuple[float, float], radius: float, bearing_deg: float, middle: float = 0.0) -> Piece:
    """A painted stripe along a drum: filled on the near side, an outline on the far one."""
    bearing = math.radians(bearing_deg)
    half = max(0.45, 1.1 * abs(math.sin(bearing)))
    y = middle + radius * math.cos(bearing)
    near = math.sin(bearing) < 0.02
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


# ---------------------------------------------------------------------- words


def _title(state: BenchState) -> CornerWords:
    name = tr("Two shafts") if two_shafts(state) else tr("One shaft")
    return CornerWords("top-left", (
        CornerLine((name,), size=1.17, bold=True),
    ))  # fmt: skip


_NAMES_AT, _ROW = -31.5, 6.0
"""Height of the upper row of names below the section, and how far below it the other is [mm]."""


def _names(state: BenchState, up: float, options: Options) -> Iterator[Word]:
    """Names in the section and below it."""
    engaged = state.engaged
    if engaged is not None:
        coupling = engaged.installation.coupling
        for x, teeth in ((DISC[0] - 2, coupling.drive_teeth), (DISC[1] + 2, coupling.magneto_teeth)):
            yield Word(str(teeth), (x, DISC_RADIUS + 3.5), bold=True)
    for y, cylinder in electrodes(engaged):
        yield Word(str(cylinder), (38.0, y), "fibre_line", 0.92, cylinder == 1, "left")
    if not options.names:
        return
    middle = sum(ROTOR) / 2
    yield Word(tr("high tension"), (middle + 15.5, 46.2), "flux", 0.92, align="left", room_mm=14.5)
    yield Word(tr("primary"), (middle + 15.5, 30.2), "opening", 0.92, align="left", room_mm=14.5)
    yield Word(tr("coil"), (middle, 43.6), "coil_line", 1.0, True, room_mm=9.5)
    yield Word(tr("core"), (middle, 36.0), "core_line", room_mm=9.5)
    yield Word(tr("near side; angles true"), (BOX[0] + 2.0, 43.0), "second_ink", 0.92, align="left", room_mm=51.0,
               shorter=tr("angles true"))  # fmt: skip
    for name in names_below(engaged is not None, up):
        at = name.x, _NAMES_AT - _ROW * name.row
        yield Word(name.text, at, room_mm=name.room_mm, leads_to=(name.x, name.y))


@dataclass(frozen=True)
class NameBelow:
    """A part's name under the section."""

    text: str
    x: float
    """Where the part is along the shaft [mm]."""
    y: float
    """Down to where the leader comes up [mm]."""
    row: int
    room_mm: float


def names_below(on_engine: bool, up: float) -> tuple[NameBelow, ...]:
    """Names in two rows, each under its part and in order along the shaft: leaders are upright and never cross."""
    middle = sum(ROTOR) / 2
    coupling = (
        NameBelow(tr("engine"), -97.0, -25.0, 0, 18.0), NameBelow(tr("drive flange"), -89.0, -19.0, 1, 26.0),
        NameBelow(tr("disc"), -76.5, -19.0, 0, 18.0), NameBelow(tr("magneto flange"), -61.5, -19.0, 1, 38.0),
    ) if on_engine else ()  # fmt: skip
    return (
        *coupling,
        NameBelow(tr("rotor"), middle, -18.0, 0, 40.0),
        NameBelow(tr("gears"), 14.0, -9.0, 0, 22.0),
        NameBelow(tr("distributor"), 38.0, 6.0, 0, 30.0),
        NameBelow(tr("backplate"), 57.5, up - 23.5, 1, 40.0),
        NameBelow(tr("cam, breaker"), 70.0, up - 9.5, 0, 42.0),
    )


def _description(state: BenchState, angles: Angles) -> str:
    where = tr("the finger stands at No. 1") if at_no_1(angles) else tr("the finger is not at No. 1")
    if state.engaged is None:
        return tr("The magneto cut along its shaft, without an engine; {where}.", where=where)
    coupling = state.engaged.installation.coupling
    return tr(
        "The magneto cut along its shaft, at the left the engine and the coupling with {drive} and {magneto} teeth; "
        "{where}.",
        drive=coupling.drive_teeth, magneto=coupling.magneto_teeth, where=where,
    )  # fmt: skip
