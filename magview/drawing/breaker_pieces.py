"""Pieces of the breaker end: what one magneto keeps from frame to frame, at its zero position, group by group.

Cam, arm, contacts and marks are to scale; rotor, pole shoes and thicknesses are plain, as no file gives them.
"""

from __future__ import annotations

from functools import lru_cache

import numpy as np

from magview.drawing.breaker_end import (
    CLAMPS_DEG,
    MARKS,
    POLE_HALF,
    RING,
    SHOE_HALF,
    SHOES,
    BreakerLayout,
    cam_outline_mm,
)
from magview.drawing.scene import Gradient, Hatch, Piece, Style
from magview.drawing.shapes import Array, Point, arc, arc_slot, band, circle, polar, polar_point, rotate, wrap

BAR_MM = 3.0
"""Width of the straightedge at the usual size of arm."""

CLAMP_HEAD, PIVOT_HEAD, LOCK_HEAD, CONTACT_HEAD, POST_HEAD = 2.5, 1.9, 1.8, 2.8, 1.4
"""Radii of the screws' heads, in units of the arm's size."""

Kept = dict[str, tuple[Piece, ...]]


def steel(line: str = "steel_line", width_px: float = 1.0) -> Style:
    """The look of a plain steel part."""
    return Style("steel_high", line, width_px)


def point(xy: Array) -> Point:
    """A point as two plain numbers."""
    return float(xy[0]), float(xy[1])


def screw_head(part: str, centre: Point, radius: float, slot_deg: float | None = None) -> tuple[Piece, ...]:
    """A domed head with its shadow; with a slot along a bearing, or without one where the slot turns by itself."""
    x, y = centre
    light = Gradient((x - 0.4 * radius, y + 0.4 * radius), 1.8 * radius, ((0.0, "steel_high"), (1.0, "steel_low")))
    shade = (x + 0.12 * radius, y - 0.18 * radius)
    pieces: tuple[Piece, ...] = (
        Piece("", (circle(shade, radius, 48),), Style("shadow", fill_alpha=0.14)),
        Piece(part, (circle(centre, radius, 48),), Style("steel", "steel_line", gradient=light)),
    )
    return pieces if slot_deg is None else (*pieces, slot(part, centre, radius, slot_deg))


def slot(part: str, centre: Point, radius: float, bearing_deg: float) -> Piece:
    """The slot across a screw's head."""
    along, across = polar(0.78 * radius, bearing_deg), polar(0.12 * radius, bearing_deg + 90.0)
    corners = np.array([-along - across, along - across, along + across, -along + across]) + np.array(centre)
    return Piece(part, (corners,), Style("steel_line"))


@lru_cache(maxsize=16)
def screws(layout: BreakerLayout) -> dict[str, Point]:
    """Middles of contact screw and lock screw with the plate at 0."""
    k, arm = layout.size, layout.arms.contact_arm_mm
    return {
        "contact screw": point(layout.at(arm + 9.5 * k, -0.5 * k)),
        "lock screw": point(layout.at(arm + 5.2 * k, -3.2 * k)),
        "pivot": polar_point(layout.arms.pivot_distance_mm, layout.pivot_bearing),
        "post": point(layout.at(-6.0 * k, 3.0 * k)),
    }


def clamps(layout: BreakerLayout) -> list[Point]:
    """Middles of the clamp screws."""
    return [polar_point(layout.slot_radius, layout.turned(b)) for b in CLAMPS_DEG]


def tolerance_deg(layout: BreakerLayout) -> float:
    """Half the width of a rim mark's tolerance [cam deg]."""
    marks = layout.magneto.marks
    return float(np.degrees(np.arctan2(marks.tolerance_mm, marks.radius_mm)))


@lru_cache(maxsize=8)
def breaker_pieces(layout: BreakerLayout) -> Kept:
    """All groups of a magneto's breaker end, built once."""
    return {
        "case": _case(layout),
        "plate": _plate(layout),
        "clamps": tuple(
            p for c in clamps(layout) for p in screw_head("clamp screw", c, CLAMP_HEAD * layout.size, 30.0)
        ),
        "bracket": () if layout.eccentric else bracket_pieces(layout),
        "stop": _stop(layout),
        "screws": _screws(layout),
        "contact screw": _contact_screw_slot(layout),
        "rotor": _rotor(layout),
        "chevrons": (_chevrons(layout),),
        "cam": _cam(layout),
        "straightedge": _straightedge(layout),
        "arm": arm_pieces(layout),
        "pivots": _pivots(layout),
    }


def _case(layout: BreakerLayout) -> tuple[Piece, ...]:
    magneto, r, plate = layout.magneto, layout.rim_outer, layout.plate
    pitch = 360.0 / magneto.poles
    pieces = []
    for i in range(magneto.poles):
        middle, half = (i + 0.5) * pitch, SHOE_HALF * pitch
        hatch = Hatch((middle + 90.0,), 0.035 * r) if i % 2 else None
        style = Style("shoe_b" if i % 2 else "shoe", "case_line", hatch=hatch)
        pieces.append(Piece("pole shoe", (band(SHOES[0] * r, SHOES[1] * r, middle - half, middle + half),), style))
    rounded = Gradient((0.0, 0.0), r, ((0.86, "rim_shade"), (0.885, "rim"), (0.975, "rim"), (1.0, "rim_shade")))
    inner = circle((0.0, 0.0), 1.01 * plate, 180)
    pieces.append(Piece("rim", (circle((0.0, 0.0), r, 180), inner), Style("rim", "case_line", gradient=rounded)))
    pieces.append(Piece("", (inner,), Style("rim_shade", "case_line")))
    tolerance = tolerance_deg(layout)
    for bearing in layout.marks.tolist():
        ends = np.array([polar(MARKS[0] * r, bearing), polar(MARKS[1] * r, bearing)])
        around = band(MARKS[0] * r, MARKS[1] * r, bearing - tolerance, bearing + tolerance)
        pieces.append(Piece("tolerance", (around,), Style("good", fill_alpha=0.24)))
        pieces.append(Piece("rim mark", (ends,), Style(line="ink", width_px=2.0), closed=False))
    for bearing, width in ((0.0, 1.2), (layout.rotor_sense * magneto.e_gap_deg, 2.2)):  # neutral and E-gap
        tick = np.array([polar(0.998 * SHOES[0] * r, bearing), polar(0.995 * SHOES[1] * r, bearing)])
        pieces.append(Piece("rotor scale", (tick,), Style(line="ink", width_px=width), closed=False))
    low, high = magneto.backplate.range_deg
    zero = layout.turned(layout.pointer_deg)
    ticks = [
        np.array([polar(1.015 * plate, zero + d), polar((1.045 if d % 5 else 1.075) * plate, zero + d)])
        for d in range(int(np.ceil(low)), int(np.floor(high)) + 1)
    ]
    pieces.append(Piece("plate scale", tuple(ticks), Style(line="ink"), closed=False))
    return tuple(pieces)


def _plate(layout: BreakerLayout) -> tuple[Piece, ...]:
    k, plate = layout.size, layout.plate
    low, high = layout.magneto.backplate.range_deg
    slots = [
        arc_slot(layout.slot_radius, layout.turned(b - high), layout.turned(b - low), 1.5 * k) for b in CLAMPS_DEG
    ]
    hole = circle((0.0, 0.0), layout.lobe_top + 1.6 * k, 120)
    light = Gradient((-0.28 * plate, 0.42 * plate), 1.5 * plate, ((0.0, "plate"), (1.0, "plate_shade")))
    zero = layout.turned(layout.pointer_deg)
    pointer = np.array([
        polar(0.99 * plate, zero), polar(0.93 * plate, zero - 1.5), polar(0.93 * plate, zero + 1.5)
    ])  # fmt: skip
    return (
        Piece("", (hole,), Style("case")),
        Piece(
            "backplate",
            (circle((0.0, 0.0), plate, 180), hole, *slots),
            Style("plate", "plate_line", gradient=light),
        ),
        Piece("plate scale", (pointer,), Style("ink")),
    )


def bracket_outline(layout: BreakerLayout) -> Array:
    """The bracket that carries the fixed contact and its two screws."""
    k, at, both = layout.size, layout.at(layout.arms.contact_arm_mm, -3.2 * layout.size), screws(layout)
    return wrap([(point(at), 2.0 * k), (both["lock screw"], 2.6 * k), (both["contact screw"], 3.0 * k)])


def contact_blocks(layout: BreakerLayout) -> tuple[Array, Array]:
    """The fixed and the moving contact, face to face at the contacts' line."""
    k, arm = layout.size, layout.arms.contact_arm_mm
    return layout.block(arm, -1.1 * k, 0.0, 2.3 * k), layout.block(arm, 0.0, 1.1 * k, 2.3 * k)


def shank_pieces(layout: BreakerLayout) -> tuple[Piece, ...]:
    """Shank and lock nut of a threaded contact screw; nothing for an eccentric."""
    if layout.eccentric:
        return ()
    k, arm = layout.size, layout.arms.contact_arm_mm
    shank = layout.block(arm, -8.0 * k, -1.1 * k, 0.9 * k)
    nut = layout.block(arm, -6.6 * k, -5.2 * k, 1.9 * k)
    return Piece("contact screw", (shank,), steel()), Piece("lock screw", (nut,), steel())


def bracket_pieces(layout: BreakerLayout) -> tuple[Piece, ...]:
    """The bracket with its shadow."""
    k, bracket = layout.size, bracket_outline(layout)
    return (
        Piece("", (bracket + np.array([0.5 * k, -0.7 * k]),), Style("shadow", fill_alpha=0.16)),
        Piece("bracket", (bracket,), Style("bracket", "bracket_line")),
    )


def _stop(layout: BreakerLayout) -> tuple[Piece, ...]:
    """Draw the parts that the contact screw moves: an eccentric moves the bracket with it."""
    return (
        *(bracket_pieces(layout) if layout.eccentric else ()),
        *shank_pieces(layout),
        Piece("contacts", (contact_blocks(layout)[0],), Style("contact", "contact_line")),
    )


def _screws(layout: BreakerLayout) -> tuple[Piece, ...]:
    k, both = layout.size, screws(layout)
    ring = Piece("contact screw", (circle(both["contact screw"], 0.78 * CONTACT_HEAD * k, 48),),
                 Style(line="steel_line", line_alpha=0.5))  # fmt: skip
    return (
        *screw_head("lock screw", both["lock screw"], LOCK_HEAD * k, 50.0),
        *screw_head("contact screw", both["contact screw"], CONTACT_HEAD * k),
        ring,
    )


def _contact_screw_slot(layout: BreakerLayout) -> tuple[Piece, ...]:
    return (slot("contact screw", screws(layout)["contact screw"], CONTACT_HEAD * layout.size, 0.0),)


def _rotor(layout: BreakerLayout) -> tuple[Piece, ...]:
    poles, r = layout.magneto.poles, layout.rim_outer
    pitch = 360.0 / poles
    half = POLE_HALF * pitch
    pieces = []
    for i in range(poles):
        name = ("north", "south")[i % 2]
        outline = band(RING[0] * r, RING[1] * r, i * pitch - half, i * pitch + half)
        pieces.append(Piece("rotor", (outline,), Style(name, f"{name}_line")))
    index = np.array([polar(1.012 * RING[1] * r, 0.0), polar(RING[0] * r, -1.7), polar(RING[0] * r, 1.7)])
    pieces.append(Piece("rotor", (index,), Style("ink")))
    return tuple(pieces)


def _chevrons(layout: BreakerLayout) -> Piece:
    """Chevrons along the poles: they show the way the rotor turns."""
    poles, r = layout.magneto.poles, layout.rim_outer
    pitch, middle, half = 360.0 / poles, (RING[0] + RING[1]) / 2 * r, 0.22 * (RING[1] - RING[0]) * r
    heads = []
    for i in range(poles):
        for off in (-26.0, -23.6, -21.2, 21.2, 23.6, 26.0):
            b = i * pitch + off * pitch / 90.0
            ahead = b + 1.5 * layout.rotor_sense
            heads.append(np.array([polar(middle + half, b), polar(middle, ahead), polar(middle - half, b)]))
    return Piece("", tuple(heads), Style(line="second_ink"), closed=False)


def lobes_over_base(outline: Array, base_mm: float, least_mm: float = 0.004) -> tuple[Array, ...]:
    """Parts of a cam's outline over its base circle, lobe by lobe: closed crescents."""
    radius = np.hypot(outline[:, 0], outline[:, 1])
    over = radius > base_mm + least_mm
    if over.all() or not over.any():
        return (outline,) if over.any() else ()
    first = int(np.argmin(over))  # begin on the base circle, so that no lobe is cut in two
    points, radius, over = np.roll(outline, -first, axis=0), np.roll(radius, -first), np.roll(over, -first)
    edges = np.flatnonzero(np.diff(over.astype(int))) + 1
    if over[-1]:
        edges = np.append(edges, len(over))
    crescents = []
    for start, stop in zip(edges[::2], edges[1::2], strict=True):
        run = points[start:stop]
        foot = run[::-1] * (base_mm / radius[start:stop][::-1, None])
        crescents.append(np.concatenate([run, foot]))
    return tuple(crescents)


def cam_in_picture(layout: BreakerLayout, outline: Array) -> Array:
    """A cam's outline as `cam_outline_mm` gives it, turned to where it lies with the rotor at 0."""
    radius = np.hypot(outline[:, 0], outline[:, 1])
    back = np.degrees(np.arctan2(outline[:, 1], outline[:, 0]))
    return polar(radius, layout.lobe_bearing() + layout.sense * back)


def _cam(layout: BreakerLayout) -> tuple[Piece, ...]:
    outline = cam_in_picture(layout, cam_outline_mm(layout.timing, layout.arms))
    base = layout.arms.base_pitch_radius_mm - layout.arms.heel_radius_mm
    boss, step = 0.55 * layout.lobe_top, layout.step_bearing()
    raised = arc(boss, step, step + layout.sense * 180.0)  # from the step on, with rotation
    lobes = lobes_over_base(outline, base)
    return (
        Piece("cam", (outline,), Style("steel")),
        *((Piece("cam", lobes, Style("lift")),) if lobes else ()),
        Piece("cam", (outline,), Style(line="steel_line")),
        Piece("step", (circle((0.0, 0.0), boss),), steel()),
        Piece("step", (raised,), Style("steel_low", "steel_line")),
    )


def straightedge_outline(layout: BreakerLayout) -> Array:
    """The bar: its sight edge along the step, a pointed end over the marks, a square one far off."""
    r, side = layout.rim_outer, -layout.sense * BAR_MM * layout.size
    bar = np.array([(0.0, r), (0.0, -0.965 * r), (side, -0.965 * r), (side, 0.93 * r)])
    return rotate(bar, layout.step_bearing())


def _straightedge(layout: BreakerLayout) -> tuple[Piece, ...]:
    bar = straightedge_outline(layout)
    ridge = bar[:2] + 0.45 * (bar[2] - bar[1])
    return (
        Piece("straightedge", (bar,), Style("steel_high", "steel_line", fill_alpha=0.6)),
        Piece("straightedge", (ridge,), Style(line="steel_line", line_alpha=0.35), closed=False),
        Piece("straightedge", (bar[:2],), Style(line="ink", width_px=2.2), closed=False),
    )


def arm_bar(layout: BreakerLayout) -> Array:
    """The breaker arm from its pivot past the contacts."""
    k, arm = layout.size, layout.arms.contact_arm_mm
    return wrap([
        (screws(layout)["pivot"], 3.0 * k),
        (point(layout.at(0.6 * arm, 2.6 * k)), 1.7 * k),
        (point(layout.at(arm, 2.5 * k)), 1.5 * k),
    ])  # fmt: skip


@lru_cache(maxsize=16)
def leaf_points(layout: BreakerLayout) -> Array:
    """The leaf spring from the arm to its post."""
    k, arm = layout.size, layout.arms.contact_arm_mm
    t = np.linspace(0.0, 1.0, 40)[:, None]
    ends = [layout.at(0.82 * arm, 4.2 * k), layout.at(0.25 * arm, 8.5 * k), layout.at(-6.0 * k, 3.0 * k)]
    return np.asarray((1 - t) ** 2 * ends[0] + 2 * t * (1 - t) * ends[1] + t**2 * ends[2])


def arm_pieces(layout: BreakerLayout, spring: bool = True, wear_factor: float = 1.0) -> tuple[Piece, ...]:
    """The arm with its heel, worn by so many times what it is, its contact, and its spring."""
    k = layout.size
    heel = layout.heel(wear_factor * layout.magneto.condition.heel_wear_mm).outlines
    fibre = Style("fibre", "fibre_line", 1.2, hatch=Hatch((45.0, -45.0), 0.9 * k))
    leaf = Piece("spring", (leaf_points(layout),), Style(line="second_ink", width_px=2.2), closed=False)
    return (
        *((leaf,) if spring else ()),
        Piece("heel", heel, fibre),
        Piece("breaker arm", (arm_bar(layout),), steel(width_px=1.2)),
        Piece("contacts", (contact_blocks(layout)[1],), Style("contact", "contact_line")),
    )


def _pivots(layout: BreakerLayout) -> tuple[Piece, ...]:
    k, places = layout.size, screws(layout)
    return (
        *screw_head("pivot", places["pivot"], PIVOT_HEAD * k, 20.0),
        *screw_head("spring", places["post"], POST_HEAD * k, 70.0),
    )
