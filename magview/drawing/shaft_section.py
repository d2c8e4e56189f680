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

from magview.bench.drive_words import adjusted_words
from magview.bench.state import BenchState, Engaged
from magview.drawing.scene import (
    CornerLine,
    CornerWords,
    Group,
    Hatch,
    Options,
    Piece,
    Scene,
    Style,
    Word,
)
from magview.drawing.shaft_layout import (
    AXLES,
    BOX,
    DISC,
    DISC_RADIUS,
    DRIVE_FLANGE,
    FINGER,
    FINGER_RADIUS,
    GEARS,
    MAGNETO_FLANGE,
    PLATE,
    ROTOR,
    Angles,
    angles_of,
    at_no_1,
    drum,
    finger_sense,
    two_shafts,
)
from magview.drawing.shaft_moving import Moving
from magview.drawing.shapes import box
from magview.spec.language import tr


def shaft_scene(state: BenchState, options: Options = Options()) -> Scene:  # noqa: B008  (a frozen value)
    """The section of a magneto, with its engine's side where it is on one."""
    angles, up = angles_of(state), AXLES if two_shafts(state) else 0.0
    parts = Moving(state, angles, up)
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
        assumed=tr("cam assumed") if state.magneto.assumed else "",
        lit=options.hovering,
        description=_description(state, angles),
    )


# ---------------------------------------------------------------------- what stands still


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
        pieces.extend(drum("shaft", (50.0, 74.0), 3.4, "steel", up))  # driven by gears of its own
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

    The finger comes to them in the order of firing, so that goes round the way the finger turns.
    """
    if engaged is None:
        yield AXLES + FINGER_RADIUS, 1
        return
    order = engaged.installation.engine.firing_order
    sense = finger_sense(engaged.installation.magneto)
    for i in range(len(order)):
        bearing = math.radians(360.0 * i / len(order))
        if i == 0 or math.sin(bearing) <= 1e-6:
            yield AXLES + FINGER_RADIUS * math.cos(bearing), order[(sense * i) % len(order)]


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
    coupling = None if engaged is None else engaged.installation.coupling
    if coupling is not None:
        for x, teeth in ((DISC[0] - 2, coupling.drive_teeth), (DISC[1] + 2, coupling.magneto_teeth)):
            yield Word(str(teeth), (x, DISC_RADIUS + 3.5), bold=True)
    for y, cylinder in electrodes(engaged):
        yield Word(str(cylinder), (38.0, y), "fibre_line", 0.92, cylinder == 1, "left")
    if not options.names:
        return
    middle = sum(ROTOR) / 2
    yield Word(tr("high tension"), (middle + 15.5, 46.2), "flux", 0.92, align="left", room_mm=14.5)
    yield Word(tr("primary"), (middle + 15.5, 30.2), "opening", 0.92, align="left", room_mm=14.5)
    yield Word(tr("coil"), (middle - 10.0, 36.0), "coil_line", bold=True, room_mm=7.5)
    yield Word(tr("core"), (middle, 36.0), "core_line", room_mm=9.5)
    yield Word(tr("near side; angles true"), (BOX[0] + 2.0, 43.0), "second_ink", 0.92, align="left", room_mm=51.0,
               shorter=tr("angles true"))  # fmt: skip
    for name in names_below(engaged is not None, up, coupling is not None):
        at = name.x, _NAMES_AT - _ROW * name.row
        yield Word(name.text, at, room_mm=name.room_mm, leads_to=(name.x, name.y))


@dataclass(frozen=True)
class NameBelow:
    """A part's name under the section."""

    text: str
    x: float
    """Place of the part along the shaft [mm]."""
    y: float
    """Down to where the leader comes up [mm]."""
    row: int
    room_mm: float


def names_below(on_engine: bool, up: float, toothed: bool = True) -> tuple[NameBelow, ...]:
    """Names in two rows, each under its part and in order along the shaft: leaders are upright and never cross."""
    middle = sum(ROTOR) / 2
    coupling: tuple[NameBelow, ...] = (
        NameBelow(tr("engine"), -97.0, -25.0, 0, 18.0), NameBelow(tr("drive flange"), -89.0, -19.0, 1, 23.0),
        NameBelow(tr("disc"), -76.5, -19.0, 0, 18.0), NameBelow(tr("magneto flange"), -61.5, -19.0, 1, 30.0),
    ) if toothed else (
        NameBelow(tr("engine"), -97.0, -25.0, 0, 18.0), NameBelow(tr("drive"), -76.5, -19.0, 1, 40.0),
    )  # fmt: skip
    coupling = coupling if on_engine else ()
    return (
        *coupling,
        NameBelow(tr("rotor"), middle, -18.0, 0, 40.0),
        NameBelow(tr("gears"), 14.0, -9.0, 0, 22.0),
        NameBelow(tr("distributor"), 38.0, 6.0, 0, 25.0),
        NameBelow(tr("backplate"), 57.5, up - 23.5, 1, 40.0),
        NameBelow(tr("cam, breaker"), 70.0, up - 9.5, 0, 37.0),
    )


def _description(state: BenchState, angles: Angles) -> str:
    where = tr("the finger stands at No. 1") if at_no_1(angles) else tr("the finger is not at No. 1")
    if state.engaged is None:
        return tr("The magneto cut along its shaft, without an engine; {where}.", where=where)
    coupling = state.engaged.installation.coupling
    if coupling is None:
        how = adjusted_words(state.engaged.installation)
        return f"{tr('The magneto cut along its shaft, at the left the engine; {where}.', where=where)} {how}"
    return tr(
        "The magneto cut along its shaft, at the left the engine and the coupling with {drive} and {magneto} teeth; "
        "{where}.",
        drive=coupling.drive_teeth, magneto=coupling.magneto_teeth, where=where,
    )  # fmt: skip
