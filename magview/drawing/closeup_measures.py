"""Measures of the close-up: the lever, the heel's climb, the gap, the blade in it, and the sum of them.

Every measure carries its own end points and the true length it shows, so that both can be held against each other.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from functools import cached_property

import numpy as np

from magview.drawing.breaker_end import BreakerLayout, Pose
from magview.drawing.breaker_pieces import screws
from magview.drawing.scene import Carrier, Measure, Piece, Style, Term, Turn, Word
from magview.drawing.shapes import Array, Point, point, polar_point
from magview.spec.language import format_length, number, tr
from magview.spec.units import MM_PER_INCH


@dataclass(frozen=True, eq=False)
class Closeup:
    """Places of everything in the close-up, heights drawn `factor` times as large."""

    layout: BreakerLayout
    now: Pose
    factor: float

    @cached_property
    def up_deg(self) -> float:
        """The turn of the whole picture that puts the heel over the cam."""
        return upright_deg(self.layout)

    @property
    def worn_mm(self) -> float:
        """Wear of the heel, as drawn."""
        return self.factor * self.layout.magneto.condition.heel_wear_mm

    @property
    def side(self) -> int:
        """+1 where the pivot is left of the heel, −1 where right."""
        return self.layout.sense * self.layout.arms.sense

    @property
    def held_mm(self) -> float:
        """The contact lift that the arm is held at: the cam's, or where the closed contacts hold it."""
        return max(self.now.lift_mm, self.now.stop_mm + self.now.gap_mm)

    @property
    def lever(self) -> float:
        """Contact arm over heel arm [-]."""
        return self.layout.arms.contact_arm_mm / self.layout.arms.heel_arm_mm

    def arm_turn(self, lift_mm: float) -> Turn:
        """The arm's turn at a true contact lift, as it is drawn."""
        arms = self.layout.arms
        turn = -self.side * math.degrees(self.factor * lift_mm / arms.contact_arm_mm)
        return Turn(turn, screws(self.layout)["pivot"])

    @cached_property
    def _at_stop(self) -> Carrier:
        return Carrier.of((self.arm_turn(self.now.stop_mm), Turn(self.now.turns_deg["plate"]), Turn(self.up_deg)))

    @cached_property
    def _at_held(self) -> Carrier:
        return Carrier.of((self.arm_turn(self.held_mm), Turn(self.now.turns_deg["plate"]), Turn(self.up_deg)))

    def of_arm(self, points: Array, parting: bool = False) -> Array:
        """Points carried by the arm, where the picture has them now, or as the contacts part."""
        return (self._at_stop if parting else self._at_held).put(points)

    def on_arm(self, along: float, out: float, parting: bool = False) -> Array:
        """A point so far along the arm and out from the contacts' line [mm], now, or as the contacts part."""
        return self.of_arm(self.layout.at(along, out), parting)

    @property
    def base_mm(self) -> float:
        """Radius of the base circle."""
        return self.layout.arms.base_pitch_radius_mm - self.layout.arms.heel_radius_mm

    @cached_property
    def opening_mm(self) -> float:
        """Radius at which the heel's tip is as the contacts part, as drawn; a worn tip stands further out."""
        arms = self.layout.arms
        pitch = float(arms.radius_mm(arms.arm_angle_at_lift_rad(self.factor * self.now.stop_mm)))
        return pitch - arms.heel_radius_mm + self.worn_mm

    @cached_property
    def heel(self) -> Array:
        """Middle of the heel's rounding where it is now."""
        return self.of_arm(self.layout.heel_centre())

    @property
    def touches(self) -> bool:
        """Whether the cam carries the heel."""
        return self.now.lift_mm >= self.now.stop_mm


def upright_deg(layout: BreakerLayout) -> float:
    """By how much the picture is turned [deg clockwise], so that the heel stands over the cam."""
    x, y = layout.heel_centre().tolist()
    return -math.degrees(math.atan2(x, y)) - 4.0 * layout.sense * layout.arms.sense


def _between(start: Point, end: Point, share: float) -> Point:
    return start[0] + share * (end[0] - start[0]), start[1] + share * (end[1] - start[1])


def measures(close: Closeup, inches: bool) -> tuple[Measure, ...]:
    """Lever, heel and gap."""
    return (*_levers(close, inches), _heel(close, inches), *_gap(close, inches))


def _length(mm: float, inches: bool, digits: int) -> str:
    """A length without its unit."""
    return number(mm / MM_PER_INCH, digits + 1) if inches else number(mm, digits)


def _levers(close: Closeup, inches: bool) -> tuple[Measure, ...]:
    layout, arms = close.layout, close.layout.arms
    k, contact = layout.size, arms.contact_arm_mm
    out = 7.5 * k
    ends = [point(close.on_arm(a, out)) for a in (0.0, contact)]
    feet = [point(close.on_arm(a, 1.2 * k)) for a in (0.0, contact)]
    unit = tr("in") if inches else "mm"
    long = Measure(
        "contact_arm", ends[0], ends[1], f"{_length(contact, inches, 1 + inches)} {unit}", "second_ink", contact,
        witnesses=((ends[0], feet[0]), (ends[1], feet[1])),
    )  # fmt: skip
    if arms.plain:
        return (long,)
    # The heel's lever lies along its own line, from the pivot to the middle of the heel's rounding.
    pivot, heel = np.array(screws(layout)["pivot"]), layout.heel_centre()
    along = (heel - pivot) / np.hypot(*(heel - pivot))
    across = np.array([along[1], -along[0]])
    if np.dot(across, layout.at(0.0, 1.0) - layout.at(0.0, 0.0)) < 0:
        across = -across
    inner = [point(close.of_arm(p + 4.6 * k * across)) for p in (pivot, heel)]
    joined = [point(close.of_arm(p)) for p in (pivot, heel)]
    short = Measure(
        "heel_arm", inner[0], inner[1], _length(arms.heel_arm_mm, inches, 1 + inches), "second_ink", arms.heel_arm_mm,
        words_at=_between(inner[0], inner[1], 0.62), witnesses=((inner[0], joined[0]), (inner[1], joined[1])),
    )  # fmt: skip
    return long, short


def _heel(close: Closeup, inches: bool) -> Measure:
    """Measure the heel's height over the base circle, or its distance from the cam where it hangs clear."""
    layout, now, arms = close.layout, close.now, close.layout.arms
    climb, free = now.lift_mm / close.lever, now.stop_mm / close.lever
    outwards = close.heel / np.hypot(*close.heel)
    aside = np.array([outwards[1], -outwards[0]]) * close.side
    tip = float(np.hypot(*close.heel)) - arms.heel_radius_mm + close.worn_mm
    low = close.base_mm + close.worn_mm  # a worn heel's tip stands so much higher on the base circle's arm
    if close.touches:
        shows, role = climb, "lift"
        text = tr("heel up {length}", length=format_length(climb, inches)) if not arms.plain else tr("heel up")
    else:
        low, shows, role = low + close.factor * climb, free - climb, "opening"
        text = tr("free {length} at the heel", length=format_length(shows, inches)) if not arms.plain else tr("free")
    off = 4.6 * layout.size

    def at(radius: float, beside: float) -> Point:
        return point(outwards * radius + aside * beside)

    return Measure(
        "heel", at(low, off), at(tip, off), text, role, shows, close.factor, both_heads=False, width_px=2.4,
        words_at=at(low - 0.1 * layout.size, off + 1.3), align="right" if close.side < 0 else "left",
        witness_role=role, shorter="" if arms.plain else format_length(shows, inches),
        witnesses=((at(low, 3.0), at(low, off + 1.0)), (at(tip, 0.9), at(tip, off + 1.0))),
    )  # fmt: skip


def _gap(close: Closeup, inches: bool) -> tuple[Measure, ...]:
    """Between the middles of the faces, from where the contacts part."""
    now, layout = close.now, close.layout
    if not now.gap_mm:
        return ()
    k, arm = layout.size, layout.arms.contact_arm_mm
    fixed, moving = (close.on_arm(arm, 0.0, parting) for parting in (True, False))
    edges = tuple(
        (point(close.on_arm(arm - 1.0 * k, 0.0, parting)), point(close.on_arm(arm + 1.0 * k, 0.0, parting)))
        for parting in (True, False)
    )
    gap = Measure(
        "gap", point(fixed), point(moving), "", "lift", now.gap_mm, close.factor, width_px=2.2, witnesses=edges,
        witness_role="lift",
    )  # fmt: skip
    return (gap,)


# ---------------------------------------------------------------------- blade


def blade(close: Closeup, thick_mm: float | None, inches: bool) -> tuple[tuple[Piece, ...], tuple[Word, ...]]:
    """A feeler blade in the gap, as thick as the heights are drawn, or stopped before it, with what it says.

    A blade passes if it is no thicker than the gap without the pip. None: no blade is tried.
    """
    now, layout = close.now, close.layout
    if not thick_mm or not now.gap_mm:
        return (), ()
    k, arm = layout.size, layout.arms.contact_arm_mm
    pip = layout.magneto.condition.pip_height_mm
    goes = thick_mm <= now.gap_mm - pip
    start, end = (close.on_arm(a, 0.0, True) for a in (arm - 2.6 * k, arm + 9.0 * k))
    along = (end - start) / np.hypot(*(end - start))
    up = close.on_arm(arm, 1.0, True) - close.on_arm(arm, 0.0, True)
    thick = up * thick_mm * close.factor
    if goes:
        rest = up * (now.gap_mm - pip - thick_mm) * close.factor / 2 + up * pip * close.factor
        corners = [start + rest, end + rest + 0.25 * (end - start)]
    else:
        aside = along * (5.3 if close.side > 0 else 4.2) * k
        corners = [start + aside, end + aside + 0.06 * (end - start)]
    outline = np.array([corners[0], corners[1], corners[1] + thick, corners[0] + thick])
    piece = Piece("blade", (outline,), Style("planned_fill", "planned", 1.2))
    share = 0.62 if goes else 0.5
    middle = corners[1] * share + corners[0] * (1 - share) + thick / 2
    size = format_length(thick_mm, inches, 3 if inches else 2)
    text = tr("{blade} goes", blade=size) if goes else tr("{blade} stops", blade=size)
    bearing = math.degrees(math.atan2(-along[1], along[0]))
    bearing = bearing if abs(bearing) <= 90.0 else bearing - math.copysign(180.0, bearing)
    room = float(np.hypot(*(corners[1] - corners[0])))
    word = Word(
        text, point(middle), "planned", bold=True, layer="moving", bearing_deg=bearing or 1e-3,
        room_mm=(0.55 if goes else 0.9) * room, shorter=size,
    )  # fmt: skip
    return (piece,), (word,)


# ---------------------------------------------------------------------- circles and sum


def circles(close: Closeup, opening: bool) -> tuple[Word, ...]:
    """Names of the opening circle, if it is drawn, and the base circle, at the free side of the cam."""
    side = close.side
    named = (
        (close.opening_mm, 285.0, tr("opening circle"), "opening", 5.4),
        (close.base_mm, 277.0, tr("base circle"), "second_ink", 3.4),
    )
    return tuple(
        Word(text, polar_point(radius, side * bearing), role, layer="moving",
             margin="left" if side > 0 else "right", up_em=up)
        for radius, bearing, text, role, up in (named if opening else named[1:])
    )  # fmt: skip


def total(close: Closeup, inches: bool) -> tuple[Term, ...]:
    """heel up × lever − free = gap, in the unit chosen, in digits that agree with one another."""
    now, arms = close.now, close.layout.arms
    digits = 3 + inches
    unit = MM_PER_INCH if inches else 1.0

    def told(mm: float) -> str:
        return number(mm / unit, digits)

    gap = format_length(now.gap_mm, inches) if now.gap_mm else tr("closed")
    if now.just_touching:
        gap = tr("just touching")
    free = Term("−", told(now.stop_mm), (tr("free at the contacts"), tr("free")), "opening")
    if now.stop_mm < 0.0:  # the contacts stand apart on the base circle
        free = Term("+", told(-now.stop_mm), (tr("apart already"), tr("apart already")), "opening")
    rest = (
        free,
        Term("=", gap, (tr("gap at the faces' middle"), tr("gap")), "lift"),
    )
    if arms.plain:
        traced = tr("lift at the contacts, traced")
        return Term("", told(now.lift_mm), (traced, traced), "lift"), *rest
    lever = f"{_length(arms.contact_arm_mm, inches, 1 + inches)}/{_length(arms.heel_arm_mm, inches, 1 + inches)}"
    return (
        # A digit more: multiplied by the lever, it must still give the last one of the difference.
        Term("", number(now.lift_mm / close.lever / unit, digits + 1), (tr("heel up"), tr("heel up")), "lift"),
        Term("×", lever, (tr("lever"), tr("lever")), "ink"),
        *rest,
    )
