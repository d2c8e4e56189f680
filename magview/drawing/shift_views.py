"""The coupling of a tooth-shift plan from either side, from teeth alone: paint as found, and where it belongs."""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np

from magview.bench.shift_plan import ShiftPlan
from magview.bench.words import Viewpoint
from magview.drawing.drive_end import DISC_IN_MM, DISC_OUT_MM, DRIVE_MM, EXTENT_MM, HUB_MM, toothed
from magview.drawing.scene import Frame
from magview.drawing.scene_svg import disc, path, stroked, words
from magview.drawing.shapes import arc, circle, polar, rotate
from magview.drawing.shift_boxes import POINT_PX, PX_A_MM, WIDTH_MM
from magview.drawing.svg import svg
from magview.spec.language import marked, tr

VIEWS: tuple[Viewpoint, ...] = ("engine", "drive end")
_NAME_PT = 10.0
_TITLES: dict[Viewpoint, str] = {
    "engine": marked("As you stand at the engine, magneto off"),
    "drive end": marked("Magneto in your hands, drive end towards you"),
}
_ALONG_A, _ALONG_B = 29.5, 14.5


@dataclass(frozen=True)
class PaintBearings:
    """Bearings of the paint in a view [deg clockwise], the drive flange's at 0."""

    disc_found: float
    flange_found: float
    disc_wanted: float
    flange_wanted: float


def paint_bearings(plan: ShiftPlan, viewpoint: Viewpoint) -> PaintBearings:
    """The paint as found and as wanted, as seen."""
    sense = plan.clockwise(1, viewpoint)
    disc_pitch, flange_pitch = sense * 360.0 / plan.drive_teeth, sense * 360.0 / plan.magneto_teeth
    found = plan.disc_from_drive * disc_pitch
    wanted = found + plan.move.disc_teeth * disc_pitch
    return PaintBearings(
        found, found + plan.flange_from_disc * flange_pitch, wanted, wanted + plan.count_b * flange_pitch
    )


def views_svg(plan: ShiftPlan, high_mm: float) -> str:
    """Both views side by side, each so high, the parts named between them; the plan's rotation must be known."""
    radius = high_mm / 2
    scale = PX_A_MM * radius / EXTENT_MM
    middles = (radius, WIDTH_MM - radius)
    text = ""
    for viewpoint, x, left, anchor in zip(VIEWS, middles, (0.0, WIDTH_MM), ("start", "end"), strict=True):
        text += _view(plan, viewpoint, Frame(scale, x * PX_A_MM, radius * PX_A_MM))
        sign = plan.sign(1, viewpoint)
        told = f"{tr(_TITLES[viewpoint])} {sign}"
        size = min(_NAME_PT * POINT_PX, 88.0 * PX_A_MM / (0.66 * len(told)))
        text += words(left * PX_A_MM, (high_mm + 4.5) * PX_A_MM, told, anchor, size, bold=True)
    names = (
        (tr("drive flange"), 41.0, 100.0),
        (tr("disc, face A: {teeth} teeth", teeth=plan.drive_teeth), 31.0, 104.0),
        (tr("disc, face B: {teeth} teeth", teeth=plan.magneto_teeth), 22.5, 112.0),
        (tr("magneto flange"), 12.0, 128.0),
    )
    room = WIDTH_MM - 2 * high_mm - 6.0
    for n, (name, at_mm, bearing) in enumerate(names):
        y = radius + (n - 1.0) * 7.0
        size = min(_NAME_PT * POINT_PX, room * PX_A_MM / (0.62 * len(name)))
        half = 0.31 * size * len(name)
        text += words(WIDTH_MM / 2 * PX_A_MM, y * PX_A_MM, name, "middle", size)
        for way, x in ((1.0, middles[0]), (-1.0, middles[1])):
            end = polar(at_mm, way * bearing) * scale
            to_x, to_y = x * PX_A_MM + float(end[0]), radius * PX_A_MM - float(end[1])
            from_x = WIDTH_MM / 2 * PX_A_MM - way * (half + 3.0)
            line = f"M{from_x:.1f} {y * PX_A_MM - 0.3 * size:.1f}L{to_x:.1f} {to_y:.1f}"
            text += stroked(line, 2.6, colour="#ffffff") + stroked(line, 0.8) + disc(to_x, to_y, 2.4, "#000000")
    return svg(WIDTH_MM * PX_A_MM, (high_mm + 6.0) * PX_A_MM, tr("The coupling from both sides"), text)


def _view(plan: ShiftPlan, viewpoint: Viewpoint, frame: Frame) -> str:
    at, text = paint_bearings(plan, viewpoint), ""
    for outline, fill in (
        (circle((0.0, 0.0), DRIVE_MM, 180), "#ffffff"),
        (rotate(toothed(plan.drive_teeth, DISC_OUT_MM, 0), at.disc_found), "#e6e6e6"),
        (rotate(toothed(plan.magneto_teeth, DISC_IN_MM, 0, inward=True), at.disc_found), "#ffffff"),
        (circle((0.0, 0.0), HUB_MM, 72), "#ffffff"),
    ):
        text += stroked(path(frame.of(outline), True), 1.0, fill=fill)
    for inner, outer, wanted in ((24.5, 30.5, at.disc_wanted), (8.0, 12.5, at.flange_wanted)):
        text += _bar(frame, inner, outer, wanted, wanted=True)
    text += _bar(frame, 38.0, DRIVE_MM, 0.0) + _bar(frame, 24.5, 30.5, at.disc_found)
    text += _bar(frame, 8.0, 12.5, at.flange_found)
    text += _count(frame, "A", _ALONG_A, at.disc_found, at.disc_wanted, abs(plan.move.disc_teeth))
    return text + _count(frame, "B", _ALONG_B, at.disc_wanted, at.flange_wanted, abs(plan.count_b))


def _bar(frame: Frame, inner: float, outer: float, bearing: float, *, wanted: bool = False) -> str:
    line = path(frame.of(np.array([polar(inner, bearing), polar(outer, bearing)])), False)
    if wanted:
        return stroked(line, 6.0) + stroked(line, 3.6, colour="#ffffff")
    return stroked(line, 9.0, colour="#ffffff") + stroked(line, 5.0)


def _count(frame: Frame, letter: str, radius: float, start: float, end: float, teeth: int) -> str:
    if not teeth:
        return ""
    way = math.copysign(1.0, end - start)
    short = math.degrees(2.4 / radius)
    line = arc(radius, min(start, end - way * short), max(start, end - way * short))
    tip = np.array([
        polar(radius - 1.6, end - way * short), polar(radius, end), polar(radius + 1.6, end - way * short),
    ])  # fmt: skip
    at_mm = radius + 9.0 if radius > 20.0 else radius  # outside the disc, where it hides no tooth
    x, y = frame.of(polar(at_mm, (start + end) / 2)[None])[0].tolist()
    size = 8.0 * POINT_PX
    text = stroked(path(frame.of(line), False), 2.4) + stroked(path(frame.of(tip), True), 0.8, fill="#000000")
    text += disc(x, y, 0.95 * size, "#ffffff", "#000000", 1.2)
    return text + words(x, y + 0.36 * size, f"{letter}{teeth}", "middle", size, bold=True)
