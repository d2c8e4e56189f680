"""Scene of the contacts as they part: cam, heel, arm and contacts with heights drawn larger by a factor it tells.

The cam is the one that lifts the heel so many times as far; the arm swings by as much, so heel and cam meet in the
picture as they do in the magneto. What is measured is the true length: heel up × lever − free travel = gap.
Begin reading at `closeup_scene`.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache

import numpy as np

from magview.bench.state import TOUCHING_MM
from magview.drawing.breaker_end import BreakerLayout, Pose, breaker_layout, cam_outline_mm
from magview.drawing.breaker_hero import Shown
from magview.drawing.breaker_pieces import (
    PIVOT_HEAD,
    arm_bar,
    arm_pieces,
    bracket_outline,
    cam_in_picture,
    contact_blocks,
    lobes_over_base,
    screw_head,
    screws,
    shank_pieces,
)
from magview.drawing.closeup_measures import Closeup, blade, circles, measures, total, upright_deg
from magview.drawing.contact_faces import Grade, face_glass, pip_outline
from magview.drawing.scene import CornerLine, CornerWords, Group, Options, Piece, Scene, Style, Turn
from magview.drawing.shapes import Array, circle, rotate
from magview.spec.language import format_length, number, tr

_BELOW_AXIS = 1.05
"""So much of the base circle's radius is seen below the cam's axis: the whole circle, with the hole in its middle."""

FACTOR = 8.0
"""Magnification of heights; at twelve times a cam of nine lobes would undercut."""

PIP_SEEN_MM = 0.05
"""Height at which every pip is drawn for an eye [mm]: it sees that there is one, and not how high."""


def closeup_scene(
    shown: Shown, options: Options = Options(), blade_mm: float | None = None, grade: Grade | None = None,  # noqa: B008
) -> Scene:  # fmt: skip
    """Heel and contacts at one instant, a feeler blade tried in the gap, and the faces as they were found.

    Parameters
    ----------
    blade_mm : the blade tried [mm]; the upper limit of the gap if none is given; 0 for no blade.
    grade : how the faces look; None where nobody has looked.
    """
    layout, now = breaker_layout(shown.magneto), shown.pose
    close = Closeup(layout, now, FACTOR)
    tried = blade_mm if blade_mm is not None else float(shown.magneto.gap_limits_mm[1])
    tells = options.numbers and not shown.assumed
    pieces, touching = blade(close, tried if tells else None, options.inches)
    return Scene(
        name="closeup",
        box=_box(layout),
        groups=_groups(close, pieces, options, shown.by_eye is not None),
        words=(*touching, *circles(close, options.numbers)),
        corners=_corners(),
        measures=measures(close, options.inches) if tells else (),
        total=total(close, options.inches) if tells else (),
        glasses=() if grade is None else (face_glass(grade, "bottom-right" if close.side > 0 else "bottom-left"),),
        margins_em=(2.7 if close.side > 0 else 3.8, 2.9),  # there the blade comes in from under the title
        assumed=tr("assumed") if shown.assumed else "",
        lit=options.hovering,
        description=_description(now, options, tells),
    )


def _corners() -> tuple[CornerWords, ...]:
    factor = number(FACTOR)
    scale = (
        tr("heights {factor}×, so slopes too steep; heel turned up", factor=factor),
        tr("heights {factor}×, so slopes too steep", factor=factor),
        tr("heights {factor}×", factor=factor),
        f"{factor}×",
    )
    return (
        CornerWords("top-left", (CornerLine((tr("Why the contacts part"), tr("Contacts")), size=1.17, bold=True),)),
        CornerWords("top-right", (CornerLine(scale, "second_ink", bold=True),)),
    )


def _description(now: Pose, options: Options, tells: bool) -> str:
    if not tells:
        return tr("Heel and contacts, heights drawn {factor} times as large.", factor=FACTOR)
    if not now.gap_mm:
        return tr("Heel and contacts, heights drawn {factor} times as large. Contacts closed.", factor=FACTOR)
    return tr(
        "Heel and contacts, heights drawn {factor} times as large. The gap is {gap}.",
        factor=FACTOR, gap=format_length(now.gap_mm, options.inches),
    )  # fmt: skip


# ---------------------------------------------------------------------- pieces


@dataclass(frozen=True, eq=False)
class _Kept:
    """Pieces of one magneto kept from frame to frame."""

    cam: tuple[Piece, ...]
    as_new: tuple[Piece, ...]
    """The outline the cam had before it was worn or filed low, where it differs."""
    core: tuple[Piece, ...]
    bracket: tuple[Piece, ...]
    stop: tuple[Piece, ...]
    arm: tuple[Piece, ...]
    ghost: tuple[Piece, ...]
    worn: tuple[Piece, ...]
    """Wear of the heel."""
    pivot: tuple[Piece, ...]


def high_cam_mm(layout: BreakerLayout, factor: float) -> Array:
    """The outline of a cam that lifts the contacts so many times as far, where the picture has it at rotor 0."""
    timing, arms = layout.timing, layout.arms
    return cam_in_picture(layout, cam_outline_mm(timing, arms, factor))


@lru_cache(maxsize=8)
def _kept(layout: BreakerLayout, by_eye: bool) -> _Kept:
    magneto = layout.magneto
    k, places = layout.size, screws(layout)
    outline, base = high_cam_mm(layout, FACTOR), layout.arms.base_pitch_radius_mm - layout.arms.heel_radius_mm
    fixed, _ = contact_blocks(layout)
    heel = layout.heel(0.0).outlines
    worn = magneto.condition.heel_wear_mm > 0.0
    lobes = lobes_over_base(outline, base, 0.02)
    bracket = Piece("bracket", (bracket_outline(layout),), Style("bracket", "bracket_line"))
    contact = Piece("contacts", (fixed,), Style("contact", "contact_line", 1.3))
    pip = magneto.condition.pip_height_mm
    seen = PIP_SEEN_MM if by_eye else pip
    outline_of_pip = pip_outline(layout, seen * FACTOR)
    mound = (Piece("contacts", (outline_of_pip,), Style("contact", "contact_line", 1.3)),) if pip else ()
    dashed = Style(line="hair", dash=(4.0, 3.0))
    return _Kept(
        cam=(
            Piece("cam", (outline,), Style("steel")),
            *((Piece("cam", lobes, Style("lift_fill")),) if lobes else ()),
            Piece("cam", (outline,), Style(line="steel_line", width_px=1.6)),
        ),
        as_new=_as_new(layout),
        core=(
            Piece("cam", (circle((0.0, 0.0), 0.4 * base),), Style("steel_high", "steel_line")),
            Piece("base circle", (circle((0.0, 0.0), base, 180),),
                  Style(line="second_ink", width_px=1.2, dash=(4.0, 3.0))),
        ),
        bracket=() if layout.eccentric else (bracket,),
        stop=(*shank_pieces(layout), *((bracket,) if layout.eccentric else ()), contact, *mound),
        arm=arm_pieces(layout, spring=False, wear_factor=FACTOR),
        ghost=(
            Piece("", (arm_bar(layout),), dashed),
            Piece("", (contact_blocks(layout)[1],), dashed),
        ),
        worn=(Piece("heel", heel, Style(line="bad", width_px=1.2, dash=(3.0, 2.0))),) if worn else (),
        pivot=screw_head("pivot", places["pivot"], PIVOT_HEAD * k),
    )  # fmt: skip


def _as_new(layout: BreakerLayout) -> tuple[Piece, ...]:
    magneto, condition = layout.magneto, layout.magneto.condition
    if not (any(condition.lobe_lift_error_mm) or any(condition.lobe_angle_error_deg)):
        return ()
    unworn = condition.model_copy(update={"lobe_lift_error_mm": (), "lobe_angle_error_deg": ()})
    outline = high_cam_mm(breaker_layout(magneto.model_copy(update={"condition": unworn})), FACTOR)
    now = high_cam_mm(layout, FACTOR)
    apart = np.abs(np.hypot(*outline.T) - np.hypot(*now.T)) > 0.02
    runs = np.split(np.arange(len(apart)), np.flatnonzero(np.diff(apart.astype(int))) + 1)
    lines = tuple(outline[run] for run in runs if apart[run[0]] and len(run) > 1)
    style = Style(line="bad", width_px=1.2, dash=(3.0, 2.0))
    return (Piece("cam", lines, style, closed=False),) if lines else ()


@lru_cache(maxsize=8)
def _box(layout: BreakerLayout) -> tuple[float, float, float, float]:
    k, arm = layout.size, layout.arms.contact_arm_mm
    base = layout.arms.base_pitch_radius_mm - layout.arms.heel_radius_mm
    corners = [
        layout.at(-3.2 * k, 0.0), layout.at(arm, 9.5 * k), layout.at(arm + 13.5 * k, 3.0),
        layout.at(arm + 13.5 * k, -4.0), np.zeros(2),
    ]  # fmt: skip
    points = rotate(np.array(corners), upright_deg(layout))
    left, right = min(points[:, 0].min(), -1.25 * base), max(points[:, 0].max(), 1.25 * base)
    return float(left), -_BELOW_AXIS * base, float(right), float(points[:, 1].max() + 3.0 * k)


def _groups(close: Closeup, tried: tuple[Piece, ...], options: Options, by_eye: bool) -> tuple[Group, ...]:
    kept, now = _kept(close.layout, by_eye), close.now
    up, plate, cam = Turn(close.up_deg), Turn(now.turns_deg["plate"]), Turn(now.turns_deg["cam"])
    stop, held = close.arm_turn(now.stop_mm), close.arm_turn(close.held_mm)
    opening = Piece(
        "opening circle", (circle((0.0, 0.0), close.opening_mm, 180),),
        Style(line="opening", width_px=1.6, dash=(6.0, 2.0, 1.4, 2.0)),
    )  # fmt: skip
    apart = now.gap_mm > TOUCHING_MM
    # Where the contacts part is a reading of its own: without numbers neither circle nor ghost is drawn.
    opens, ghost = ((opening,), kept.ghost) if options.numbers else ((), ())
    groups = (
        Group("bracket", "plate", kept.bracket, (plate, up)),
        Group("stop", "plate", kept.stop, (stop, plate, up)),
        Group("cam", "moving", (*kept.cam, *kept.as_new), (cam, up)),
        Group("core", "moving", (*kept.core, *opens), (up,)),
        Group("ghost", "moving", ghost if apart else (), (stop, plate, up)),
        Group("arm", "moving", (*kept.worn, *kept.arm), (held, plate, up)),
        Group("pivot", "moving", kept.pivot, (plate, up)),
        Group("blade", "moving", tried if apart else ()),
    )
    return tuple(
        Group(g.name, g.layer, tuple(p for p in g.pieces if p.part not in options.hidden), g.turns)
        if options.hidden
        else g
        for g in groups
    )
