"""Names and readings round the parts of the breaker end: what they say, what they point at, what they keep off."""

from __future__ import annotations

import math
from functools import lru_cache

import numpy as np

from magview.drawing.breaker_end import BreakerLayout, Pose
from magview.drawing.breaker_pieces import (
    CLAMP_HEAD,
    CONTACT_HEAD,
    LOCK_HEAD,
    arm_bar,
    bracket_outline,
    clamps,
    contact_blocks,
    leaf_points,
    screws,
    shank_pieces,
)
from magview.drawing.scene import Name, Obstacle, Options, Plan
from magview.drawing.shapes import Point, circle, point, polar, polar_point, rotate
from magview.spec.language import format_length, tr
from magview.spec.magneto import Magneto

_STEP_DEG = 2.0
"""Names keep their places while the plate turns by less than this."""

Texts = tuple[tuple[str, str], ...]
"""Parts to be named, most important first, each with its words."""


def texts(magneto: Magneto, tells_gap: bool, options: Options) -> Texts:
    """Names of the parts in the order of importance; the part pointed at comes first."""
    lobes = len(magneto.cam.lobe_peaks_deg)
    named = {
        "heel": tr("heel"),
        "contact screw": tr("contact screw"),
        "lock screw": tr("lock screw"),
        "pivot": tr("pivot"),
        "spring": tr("spring"),
        "cam": tr("cam, lobes 1–{last}", last=lobes) if lobes > 1 else tr("cam"),
        "clamp screw": tr("clamp screw"),
        "backplate": tr("backplate"),
    }
    # Named on being pointed at or told of only: there is no room for all, and they show what they are.
    others = {
        "contacts": tr("contacts"),
        "step": tr("step"),
        "rim mark": tr("rim mark"),
        "rotor": tr("rotor"),
        "pole shoe": tr("pole shoe"),
    }
    asked = {options.hovering} | (options.named or frozenset())
    usual = named if options.names and options.named is None else {}
    shown = usual | {part: text for part, text in (named | others).items() if part in asked}
    gap = {"gap": format_length(0.0, options.inches)} if tells_gap else {}
    return tuple((gap | shown).items())


def readings_at_parts(now: Pose, tells_gap: bool, options: Options) -> dict[str, tuple[str, str]]:
    """Text and role of what is read at a part now."""
    if not tells_gap:
        return {}
    if now.gap_mm:
        return {"gap": (format_length(now.gap_mm, options.inches), "lift")}
    return {"gap": (tr("touching") if now.just_touching else tr("closed"), "second_ink")}


def naming(layout: BreakerLayout, backplate_deg: float, wanted: Texts) -> tuple[Plan, dict[str, tuple[Point, ...]]]:
    """The plan of all names, kept while the plate hardly turns, and where each of them points now."""
    kept_deg = _STEP_DEG * round(backplate_deg / _STEP_DEG)
    plan = _plan(layout, kept_deg, wanted)
    return plan, {name.part: _places(layout, name.part, layout.sense * backplate_deg) for name in plan.names}


_OVER = {
    "gap": frozenset({"contacts", "bracket"}),
    "contact screw": frozenset({"bracket", "contact screw"}),
    "lock screw": frozenset({"bracket", "lock screw"}),
    "pivot": frozenset({"breaker arm", "pivot"}),
    "heel": frozenset({"heel"}),
    "spring": frozenset({"spring"}),
    "cam": frozenset({"cam"}),
    "clamp screw": frozenset({"clamp screw"}),
    "backplate": frozenset[str](),
    "contacts": frozenset({"contacts", "bracket"}),
    "step": frozenset({"cam"}),
}
"""Parts that a name's leader may cross on its way."""

_AT_WORST = {"gap": frozenset({"breaker arm"}), "heel": frozenset({"breaker arm"})}
"""Parts that the leaders of the two that matter most may cross besides, where there is no other way."""


@lru_cache(maxsize=32)
def _plan(layout: BreakerLayout, backplate_deg: float, wanted: Texts) -> Plan:
    turned = layout.sense * backplate_deg
    names = tuple(
        Name(
            part, text, text, _places(layout, part, turned),
            _OVER.get(part, frozenset()), _AT_WORST.get(part, frozenset()),
            role="lift" if part == "gap" else "second_ink" if part == "backplate" else "ink",
            bold=part == "gap", leader=part != "backplate", reach_em=3.0 if part == "backplate" else 9.0,
        ) for part, text in wanted
    )  # fmt: skip
    return Plan(names, _obstacles(layout, turned), 0.985 * layout.plate)


def _places(layout: BreakerLayout, part: str, turned_deg: float) -> tuple[Point, ...]:
    """Return where a name may point with the plate turned [deg clockwise], the best place first."""
    places, on_plate = _at_zero(layout)[part]
    if not on_plate:
        return places
    b = math.radians(turned_deg)
    c, s = math.cos(b), math.sin(b)
    return tuple((c * x + s * y, c * y - s * x) for x, y in places)


@lru_cache(maxsize=16)
def _at_zero(layout: BreakerLayout) -> dict[str, tuple[tuple[Point, ...], bool]]:
    """Return where each name may point with the plate at 0, and whether that turns with the plate."""
    k, arms, both = layout.size, layout.arms, screws(layout)
    cam = polar(0.86 * layout.lobe_top, layout.turned(layout.heel_at_top_deg + 150.0))
    bare = (262.0, 240.0, 200.0, 180.0, 150.0, 120.0, 215.0, 100.0, 280.0)
    arm, rim = arms.contact_arm_mm, layout.rim_outer
    return {
        "gap": ((point(layout.at(arm + 1.9 * k, 0.0)), point(layout.at(arm, 0.0))), True),
        "heel": ((point(layout.at(arms.heel_arm_mm, -0.2 * k, layout.closed)),), True),
        "contact screw": ((both["contact screw"],), True),
        "lock screw": ((both["lock screw"],), True),
        "pivot": ((both["pivot"],), True),
        "spring": (tuple(point(leaf_points(layout)[i]) for i in (30, 24, 34)), True),
        "cam": ((point(cam),), False),
        "clamp screw": (tuple(clamps(layout)[i] for i in (1, 0, 2)), False),
        "contacts": ((point(layout.at(arm, -0.6 * k)),), True),
        "step": ((polar_point(0.5 * layout.lobe_top, layout.pivot_bearing + 180.0),), False),
        "rim mark": ((polar_point(0.95 * rim, float(layout.marks[0])),), False),
        "rotor": ((polar_point(1.065 * rim, layout.turned(90.0)),), False),
        "pole shoe": ((polar_point(1.16 * rim, 180.0 / layout.magneto.poles),), False),
        "backplate": (tuple(polar_point(0.66 * layout.plate, layout.turned(b)) for b in bare), False),
    }


def _obstacles(layout: BreakerLayout, turned_deg: float) -> tuple[Obstacle, ...]:
    k, both = layout.size, screws(layout)
    fixed, moving = contact_blocks(layout)
    heel = layout.heel(0.0).outlines[0]
    swing = -layout.sense * layout.arms.sense * np.degrees(1.0 / layout.arms.contact_arm_mm)
    up, stop = swing * layout.timing.curve.top_mm, swing * layout.timing.stop_at_zero_mm
    held = [("contacts", fixed), *((piece.part, piece.outlines[0]) for piece in shank_pieces(layout))]
    held += [("bracket", bracket_outline(layout))] if layout.eccentric else []
    arm, lifted = arm_bar(layout), [rotate(o, float(up), both["pivot"]) for o in (arm_bar(layout), moving)]
    screw = "contact screw"
    on_plate = [
        ("breaker arm", arm), ("breaker arm", lifted[0]), ("heel", heel),
        ("contacts", moving), ("contacts", lifted[1]),
        *((part, rotate(outline, float(stop), both["pivot"])) for part, outline in held),
        *(() if layout.eccentric else (("bracket", bracket_outline(layout)),)),
        ("lock screw", circle(both["lock screw"], (LOCK_HEAD + 0.4) * k, 24)),
        (screw, circle(both["contact screw"], (CONTACT_HEAD + 0.4) * k, 24)),
        ("pivot", circle(both["pivot"], 2.0 * k, 24)),
        ("spring", circle(both["post"], 1.7 * k, 24)),
        *(("spring", circle(point(p), 0.8 * k, 12)) for p in leaf_points(layout)[::3]),
    ]  # fmt: skip
    obstacles = [Obstacle(part, rotate(outline, turned_deg)) for part, outline in on_plate]
    obstacles.append(Obstacle("cam", circle((0.0, 0.0), layout.lobe_top)))
    obstacles.append(Obstacle("", circle((0.0, 0.0), layout.lobe_top + 1.7 * k)))
    for centre in clamps(layout):
        obstacles.append(Obstacle("clamp screw", circle(centre, CLAMP_HEAD * k, 24)))
        obstacles.append(Obstacle("", circle(centre, 4.4 * k, 24)))
    pointer = polar(0.96 * layout.plate, layout.turned(layout.pointer_deg) + turned_deg)
    obstacles.append(Obstacle("", circle(point(pointer), 2.6 * k, 24)))
    return tuple(obstacles)
