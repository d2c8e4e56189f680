"""The straightedge at its mark: which mark it is read against, how far off it is, and the glass that shows it.

The edge lies above the rim, so that an eye beside it does not see it where it is: an eye ahead of it sees it short.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np

from magview.drawing.breaker_end import BreakerLayout, Pose
from magview.drawing.scene import Glass, Group, Piece, Scene, Style, Word
from magview.drawing.shapes import Array, box, circle
from magview.spec.language import format_length, number, tr
from magview.spec.units import MM_PER_INCH

EDGE_HEIGHT_MM = 2.0
"""Height of the straightedge's edge above the rim."""

FAR_MM = 3.0
"""Further past a mark than this, degrees of the cam say more than millimetres at the rim."""


@dataclass(frozen=True)
class Sight:
    """The straightedge against the nearest rim mark."""

    lobe: int
    """Index of the lobe whose mark is nearest."""
    past_deg: float
    """Angle of the edge past it [cam deg]."""
    past_mm: float
    """The same along the rim, as a rule would read it; infinite from a quarter turn on."""

    def wordings(self, inches: bool) -> tuple[str, ...]:
        """The reading in words, from the longest to the shortest."""
        mark = self.lobe + 1
        if abs(self.past_mm) < (MM_PER_INCH * 0.0005 if inches else 0.005):  # it would be written as nought
            return tr("edge at mark {mark}", mark=mark), tr("at mark {mark}", mark=mark)
        if abs(self.past_mm) <= FAR_MM:
            away = format_length(abs(self.past_mm), inches, 3 if inches else 2)
        else:
            away = f"{number(abs(self.past_deg), 1)}°"
        sign = "+" if self.past_deg > 0 else "−"
        shortest = tr("mark {mark} {away}", mark=mark, away=f"{sign}{away}")
        if self.past_deg > 0:
            long = tr("edge {away} past mark {mark}", away=away, mark=mark)
            return long, tr("{away} past mark {mark}", away=away, mark=mark), shortest
        long = tr("edge {away} short of mark {mark}", away=away, mark=mark)
        return long, tr("{away} short of mark {mark}", away=away, mark=mark), shortest


def sight(layout: BreakerLayout, now: Pose) -> Sight:
    """Return where the straightedge is read."""
    edge = layout.step_bearing() + now.turns_deg["cam"]
    past = layout.sense * ((edge - layout.marks + 180.0) % 360.0 - 180.0)
    lobe = int(np.argmin(np.abs(past)))
    degrees = float(past[lobe])
    mm = layout.magneto.marks.radius_mm * math.tan(math.radians(degrees)) if abs(degrees) < 90.0 else math.inf
    return Sight(lobe, degrees, mm)


def seen_past_mm(eye_deg: float) -> float:
    """Distance past its place at which the edge seems to stand [mm], above 0 for an eye behind it, below ahead.

    The line of sight slopes from the eye through the edge down to the rim, away from the eye.
    """
    return EDGE_HEIGHT_MM * math.tan(math.radians(eye_deg))


def glass(layout: BreakerLayout, at: Sight, eye_deg: float, measured: bool = True) -> Glass:
    """Mark, tolerance and edge under a glass: the mark upright above, the bar from below; past is with rotation.

    Where nothing may be measured there is no tolerance, and no place under the edge where it truly is.
    """
    tolerance = layout.magneto.marks.tolerance_mm
    half = tolerance / 0.42
    side = float(layout.sense)
    band, mark = box(-tolerance, tolerance, -0.15 * half, half), np.array([(0.0, half), (0.0, -0.15 * half)])
    pieces = [
        *((Piece("tolerance", (band,), Style("good", "good", fill_alpha=0.28)),) if measured else ()),
        Piece("rim mark", (mark,), Style(line="ink", width_px=2.4), closed=False),
    ]
    seen = side * (at.past_mm + seen_past_mm(eye_deg))
    if abs(seen) < 1.2 * half:
        if eye_deg and measured:
            true = side * at.past_mm
            foot = np.array([(true, 0.25 * half), (true, -half)])
            pieces.append(Piece("straightedge", (foot,), Style(line="second_ink", dash=(3.0, 3.0)), closed=False))
        pieces += _bar(seen, side, half)
    else:
        pieces.append(Piece("straightedge", (_pointing(math.copysign(1.0, seen), half),), Style("ink")))
    words = [
        Word(
            str(at.lobe + 1),
            (-side * 0.55 * half, 0.52 * half),  # before the mark, as on the rim
            "paper",
            0.83,
            True,
            layer="moving",
            disc="ink",
            height_mm=0.36 * half,
        )
    ]
    if eye_deg:
        words.append(
            Word("◉", (-side * math.copysign(0.62 * half, eye_deg), -0.62 * half), "planned", layer="moving")
        )
    rim = Piece("rim", (circle((0.0, 0.0), half),), Style("rim"))
    group = Group("glass", "moving", (rim, *pieces), clip=circle((0.0, 0.0), half))
    scene = Scene("glass", (-half, -half, half, half), (group,), tuple(words))
    return Glass("bottom-right", scene, half, 34.0, 0.072, tells_factor=measured)


def _bar(at_mm: float, side: float, half: float) -> list[Piece]:
    """The straightedge's pointed end with its sight edge at a place across."""
    back = at_mm - 0.9 * side * half
    bar = np.array([(at_mm, 0.25 * half), (at_mm, -half), (back, -half), (back, -0.25 * half)])
    return [
        Piece("straightedge", (bar,), Style("steel_high", "steel_line", fill_alpha=0.75)),
        Piece("straightedge", (bar[:2],), Style(line="ink", width_px=2.4), closed=False),
    ]


def _pointing(way: float, half: float) -> Array:
    """An arrow to where the edge is, beyond the glass."""
    y, shaft, wing = -0.45 * half, 0.03 * half, 0.1 * half
    x = [way * half * share for share in (0.3, 0.68, 0.84)]
    return np.array([
        (x[0], y - shaft), (x[1], y - shaft), (x[1], y - wing), (x[2], y), (x[1], y + wing), (x[1], y + shaft),
        (x[0], y + shaft),
    ])  # fmt: skip
