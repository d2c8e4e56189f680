"""The two large numbers of a tooth-shift plan with their arrows, as one stands at the engine, in black and white."""

from __future__ import annotations

import numpy as np

from magview.bench.shift_plan import FACE_PARTS, FACE_SIDES, FACES, Face, ShiftPlan, with_or_against
from magview.drawing.scene import Frame
from magview.drawing.scene_svg import path, stroked, words
from magview.drawing.shapes import arc, polar
from magview.drawing.svg import svg
from magview.spec.language import tr, tr_n

PX_A_MM = 4.0
WIDTH_MM, HEIGHT_MM = 180.0, 59.0
_BOX_MM = 88.0
POINT_PX = PX_A_MM * 25.4 / 72.0
"""A point of type [px]."""
LEAST_PT = 14.0
"""Of all that is read at arm's length."""
_DIGIT_EM = 0.729
"""Height of a digit in DejaVu Sans."""
DIGIT_MM = 22.0
"""Height of the two numbers."""
_WIDE_EM = 0.66
"""Width of a bold letter on average."""


def boxes_svg(plan: ShiftPlan) -> str:
    """Both boxes side by side."""
    body = "".join(_box(plan, face, n * (WIDTH_MM - _BOX_MM)) for n, face in enumerate(FACES))
    return svg(WIDTH_MM * PX_A_MM, HEIGHT_MM * PX_A_MM, tr("Teeth to move, as you stand at the engine"), body)


def box_svg(plan: ShiftPlan, face: Face) -> str:
    """One box alone."""
    return svg(_BOX_MM * PX_A_MM, HEIGHT_MM * PX_A_MM, tr(FACE_PARTS[face]), _box(plan, face, 0.0))


def _box(plan: ShiftPlan, face: Face, left: float) -> str:
    teeth, side = plan.teeth(face), tr(FACE_SIDES[face])
    text = _rectangle(left + 0.4, 0.4, _BOX_MM - 0.8, HEIGHT_MM - 0.8, "none", 3.0)
    text += _rectangle(left + 3.5, 3.5, 10.0, 10.0, "#000000", 1.0)
    text += _line(left + 8.5, 11.3, face, 22.0, anchor="middle", colour="#ffffff")
    text += _line(left + 16.0, 8.6, side, LEAST_PT, _BOX_MM - 18.0)
    text += _line(
        left + 16.0, 14.6, tr("face with {teeth} teeth", teeth=plan.of_face(face)), LEAST_PT, 70.0, bold=False
    )
    number = str(abs(teeth))
    big = DIGIT_MM / _DIGIT_EM
    big = min(big, 40.0 / (0.7 * len(number)))
    text += words(
        (left + 25.0) * PX_A_MM, 45.0 * PX_A_MM, number, "middle", big * PX_A_MM, bold=True
    )  # fmt: skip
    text += turn_arrow(plan.clockwise(teeth, "engine"), left + 25.0, 39.5, 21.0, 6.0)
    count = tr_n("{count} tooth", "{count} teeth", count=abs(teeth))
    told = [*_wrapped(tr(FACE_PARTS[face])), *_wrapped(count if teeth else ""), *_wrapped(with_or_against(teeth))]
    for n, line in enumerate(told):
        text += _line(left + 49.0, 20.5 + 6.2 * n, line, LEAST_PT + 1.0, _BOX_MM - 50.0)
    if teeth and plan.rotation is not None:
        seen = f"{plan.way(teeth, 'engine')} {plan.sign(teeth, 'engine')}"
        text += _line(left + 3.5, 51.6, seen, LEAST_PT, _BOX_MM - 6.0)
        if face == "B":
            hand = tr("magneto in your hand, drive end towards you: {sign}", sign=plan.sign(teeth, "drive end"))
            text += _line(left + 3.5, 56.8, hand, 9.0, _BOX_MM - 6.0, bold=False)
    return text


def turn_arrow(sense: int, x: float, y: float, radius: float, line_px: float) -> str:
    """An arrow over a number [mm], `sense` +1 clockwise, −1 anticlockwise; nothing for 0."""
    if not sense:
        return ""
    frame = Frame(PX_A_MM, x * PX_A_MM, y * PX_A_MM)
    end = 52.0 * sense
    shaft = arc(radius, min(-end, 0.72 * end), max(-end, 0.72 * end))
    base = 0.72 * end
    head = np.array([polar(radius - 3.2, base), polar(radius, end + 4.0 * sense), polar(radius + 3.2, base)])
    return stroked(path(frame.of(shaft), False), line_px) + stroked(path(frame.of(head), True), 1.0, fill="#000000")


def _wrapped(text: str) -> list[str]:
    """Two words in two lines, where there is a blank."""
    return text.rsplit(" ", 1) if len(text) > 12 else [text] if text else []


def _rectangle(x: float, y: float, wide: float, high: float, fill: str, line_px: float) -> str:
    at = f"M{x * PX_A_MM:.1f} {y * PX_A_MM:.1f}h{wide * PX_A_MM:.1f}v{high * PX_A_MM:.1f}h{-wide * PX_A_MM:.1f}Z"
    return stroked(at, line_px, fill=fill)


def _line(
    x: float, y: float, text: str, points: float, room_mm: float = 0.0, *,
    bold: bool = True, anchor: str = "start", colour: str = "",
) -> str:  # fmt: skip
    size = points * POINT_PX
    if room_mm and text:
        size = min(size, room_mm * PX_A_MM / (_WIDE_EM * len(text)))
    return words(x * PX_A_MM, y * PX_A_MM, text, anchor, size, bold=bold, colour=colour)
