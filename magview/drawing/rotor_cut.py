"""The cut through rotor, pole shoes, core and coil, from the breaker end, with the flux that runs through the iron.

A scheme: shapes are plain, the rotor's angle, the poles and which way the flux runs are true. The ribbon is the
resultant flux, as wide as it is strong; the dashed outline is the magnet's alone. Begin reading at `rotor_cut_scene`.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from functools import lru_cache
from itertools import pairwise

import numpy as np

from magview.bench.state import BenchState
from magview.bench.words import breaker_end_sense
from magview.curves.why_here import core_flux
from magview.drawing.scene import CornerLine, CornerWords, Group, Hatch, Options, Piece, Scene, Style, Turn, Word
from magview.drawing.shapes import Array, Point, arc, band, box, circle, polar
from magview.spec.language import tr

BOX, BARE_BOX = (-42.0, -28.5, 62.0, 63.0), (-42.0, -28.5, 42.0, 63.0)
"""Room that must be seen, with names beside it and without [mm]."""
RIBBON_MM = 7.2
"""Width of the ribbon at the greatest flux."""

POLE_HALF, SHOE_HALF = 0.37, 0.27
"""Half the width of a pole and of a shoe's face, as shares of the poles' pitch."""

LEAST_FLUX = 0.02
"""Less of the greatest flux than this is drawn as none."""

_ROTOR, _SHOE = (9.0, 19.8), (20.8, 28.5)


def leaving_deg(poles: int, flux: float, sense: int) -> float:
    """Bearing of the shoe through which the flux leaves the rotor, so the one a north pole lies under [deg]."""
    return math.copysign(180.0 / poles, -flux * sense)


def rotor_cut_scene(state: BenchState, options: Options = Options()) -> Scene:  # noqa: B008  (a frozen value)
    """The cut for the rotor where it stands, at the speed of starting."""
    magneto = state.magneto
    sense, poles = breaker_end_sense(magneto), magneto.poles
    flux, alone = core_flux(state)
    turned = Turn(sense * state.rotor_deg)
    return Scene(
        name="rotor-cut",
        box=BOX if options.names else BARE_BOX,
        margins_em=(0.3, 1.8),
        groups=(
            Group("iron", "ground", _iron(poles, magneto.capacitor_uf is not None)),
            Group("rotor", "moving", _rotor(poles), (turned,)),
            Group("flux", "moving", tuple(_flux(poles, turned.bearing_deg, flux, alone, sense))),
        ),
        words=(*_letters(poles, turned.bearing_deg), *_words(flux, options)),
        corners=(
            CornerWords("bottom-right", (
                CornerLine((tr("cut, seen from the breaker end"), tr("from the breaker end"), ""), "second_ink", 0.9),
            )),
        ),
        assumed="" if magneto.electrical is not None and not magneto.assumed else tr("assumed"),
        lit=options.hovering,
        description=_description(flux, options),
    )  # fmt: skip


# ---------------------------------------------------------------------- iron


def legs(poles: int, side: int) -> Array:
    """Outline of the leg from a shoe up to the core, at the right (+1) or the left (−1) [mm]."""
    points: list[tuple[float, float]]
    if poles == 2:
        points = [(24, 11), (27, 14), (27, 56), (38, 56), (38, -9), (24, -11)]
    else:
        points = [(14, 22.5), (27, 34), (27, 56), (38, 56), (38, 18), (26.6, 10.2), (22, 9.8)]
    return np.array(points, dtype=float) * (side, 1.0)


def ribbon_path(poles: int) -> Array:
    """The middle of the iron from the shoe at the right through the core to the shoe at the left (n, 2) [mm]."""
    start = polar(20.0, 180.0 / poles)
    half = [start, (32.5, 0.0), (32.5, 51.0)] if poles == 2 else [start, (24, 24), (32.5, 30), (32.5, 51)]
    right = np.array(half, dtype=float)
    return np.vstack([right, right[::-1] * (-1.0, 1.0)])


@lru_cache(maxsize=8)
def _iron(poles: int, capacitor: bool) -> tuple[Piece, ...]:
    """The iron with a shoe's face for each pole: one on either leg, the others joined to them behind the rotor."""
    core, half = Style("core", "core_line"), SHOE_HALF * 360.0 / poles
    pieces = []
    for side in (1, -1):
        middle = side * 180.0 / poles
        pieces.append(Piece("pole shoe", (legs(poles, side),), core))
        pieces.append(Piece("pole shoe", (band(*_SHOE, middle - half, middle + half),), core))
    behind = Style("core", "core_line", dash=(4.0, 3.0), fill_alpha=0.55)
    for i in range(1, poles - 1):
        middle = (i + 0.5) * 360.0 / poles
        pieces.append(Piece("pole shoe", (band(*_SHOE, middle - half, middle + half),), behind))
    pieces.append(Piece("core", (box(-38, 38, 46, 56),), Style("core", "core_line", hatch=Hatch((90.0,), 2.0))))
    winding = Style("coil", "coil_line", hatch=Hatch((0.0,), 2.2))
    pieces.append(Piece("coil", (box(-21, 21, 41, 61),), winding))
    if capacitor:
        wire = np.array([(-21.0, 59.5), (-25.0, 59.5)])
        pieces.append(Piece("primary", (wire,), Style(line="opening", width_px=2.0), closed=False))
        pieces.append(Piece("capacitor", (box(-36, -25, 57, 62),), Style("steel_high", "steel_line")))
        plates = tuple(np.array([(x, 57.8), (x, 61.2)]) for x in (-31.3, -29.7))
        pieces.append(Piece("capacitor", plates, Style(line="ink", width_px=1.6), closed=False))
    return tuple(pieces)


@lru_cache(maxsize=8)
def _rotor(poles: int) -> tuple[Piece, ...]:
    half, pitch = POLE_HALF * 360.0 / poles, 360.0 / poles
    pieces = [Piece("rotor", (circle((0, 0), 14.0),), Style("steel_low", "steel_line"))]
    for i in range(poles):
        inner = np.array([polar(_ROTOR[0], i * pitch + 0.8 * half), polar(_ROTOR[0], i * pitch - 0.8 * half)])
        name = ("north", "south")[i % 2]
        outline = np.vstack([arc(_ROTOR[1], i * pitch - half, i * pitch + half), inner])
        pieces.append(Piece("rotor", (outline,), Style(name, f"{name}_line")))
    index = np.array([polar(_ROTOR[1], 0.0), polar(16.8, -4.0), polar(16.8, 4.0)])
    pieces += [
        Piece("rotor", (circle((0, 0), 4.4),), Style("steel_high", "steel_line")),
        Piece("rotor", (index,), Style("ink")),
    ]
    return tuple(pieces)


# ---------------------------------------------------------------------- flux


def _flux(poles: int, rotor_bearing: float, flux: float, alone: float, sense: int) -> Iterator[Piece]:
    middle = ribbon_path(poles)
    if abs(alone) > LEAST_FLUX:
        outline = ribbon(middle, abs(alone) * RIBBON_MM)
        yield Piece("flux", (outline,), Style(line="flux", width_px=1.2, dash=(4.0, 3.0)))
    if abs(flux) > LEAST_FLUX:
        width = abs(flux) * RIBBON_MM
        along = middle if leaving_deg(poles, flux, sense) > 0 else middle[::-1]
        yield Piece("flux", (ribbon(middle, width),), Style("flux", fill_alpha=0.47))
        for start, end in pairwise(along):
            if np.hypot(*(end - start)) > 12.0:
                yield Piece("flux", (_head(0.42 * start + 0.58 * end, end - start, max(4.0, width)),), Style("flux"))
    leak = max(0.0, 1.0 - abs(alone))
    if leak > 0.25:
        yield from _short_ways(poles, rotor_bearing, leak)


def ribbon(middle: Array, width: float) -> Array:
    """Outline of a ribbon about a line of points (n, 2), mitred at its corners [mm]."""
    steps = np.diff(middle, axis=0)
    across = np.stack([-steps[:, 1], steps[:, 0]], axis=1) / np.hypot(steps[:, 0], steps[:, 1])[:, None]
    at = np.vstack([across[:1], across[:-1] + across[1:], across[-1:]])
    at /= np.hypot(at[:, 0], at[:, 1])[:, None]
    beside = np.vstack([across[:1], across])
    at *= (width / 2) / np.sum(at * beside, axis=1)[:, None]
    return np.vstack([middle + at, (middle - at)[::-1]])


def _short_ways(poles: int, rotor_bearing: float, leak: float) -> Iterator[Piece]:
    """Near neutral the flux takes the short way through each shoe's face, always from a north to a south pole."""
    pitch = 360.0 / poles
    for side in (1, -1):
        middle = side * 180.0 / poles
        before = math.floor((middle - rotor_bearing) / pitch)
        from_north = before % 2 == 0
        shares = (0.30, 0.70) if from_north else (0.70, 0.30)
        low, high = middle - 0.235 * pitch, middle + 0.235 * pitch
        start, end = (min(max(rotor_bearing + (before + s) * pitch, low), high) for s in shares)
        if abs(end - start) < 0.155 * pitch:
            continue
        line = arc(23.2, min(start, end), max(start, end), 3.0)
        yield Piece("flux", (line,), Style(line="flux", width_px=1.5 + 2.0 * leak, line_alpha=0.67), closed=False)
        tip, behind = polar(23.2, end), polar(23.2, end - math.copysign(4.0, end - start))
        yield Piece("flux", (_head(tip, tip - behind, 2.0 + 2.0 * leak),), Style("flux"))


def _head(tip_near: Array, along: Array, size: float) -> Array:
    """An arrow's head about a point, `size` long [mm]."""
    way = along / np.hypot(*along)
    side = np.array([-way[1], way[0]])
    return np.array([tip_near + way * size * 0.6, tip_near - way * size * 0.4 + side * size * 0.5,
                     tip_near - way * size * 0.4 - side * size * 0.5])  # fmt: skip


# ---------------------------------------------------------------------- words


def _letters(poles: int, rotor_bearing: float) -> Iterator[Word]:
    for i in range(poles):
        x, y = polar(14.6, rotor_bearing + i * 360.0 / poles).tolist()
        name = ("north", "south")[i % 2]
        yield Word("NS"[i % 2], (x, y), f"{name}_line", bold=True, layer="moving")


def _words(flux: float, options: Options) -> Iterator[Word]:
    if options.numbers:
        yield Word(flux_words(flux), (0.0, 51.0), bold=True, layer="moving", paper=True)
    if not options.names:
        return
    for place, text in _named():
        yield Word(text, (45.0, place[1]), align="left", layer="moving", room_mm=17.0, leads_to=place)


def _named() -> tuple[tuple[Point, str], ...]:
    """Name the parts, and say where each leader begins [mm]."""
    return (
        ((20.0, 59.0), tr("coil")),
        ((36.0, 51.0), tr("core")),
        ((36.0, 30.0), tr("pole shoe")),
        ((18.0, 0.0), tr("rotor")),
    )


def flux_words(flux: float) -> str:
    """The core's flux in words, as a share of the greatest over a turn."""
    if abs(flux) <= LEAST_FLUX:
        return tr("core flux 0")
    return tr("core flux {share:+.0f} %", share=100.0 * flux)


def _description(flux: float, options: Options) -> str:
    if not options.numbers:
        return tr("Rotor, pole shoes, core and coil, cut, seen from the breaker end.")
    return tr("Rotor, pole shoes, core and coil, cut, seen from the breaker end: {flux}.", flux=flux_words(flux))
