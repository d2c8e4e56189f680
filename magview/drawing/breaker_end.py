"""The breaker end as a drawing: rotor and pole shoes behind, cam, breaker arm, contacts, backplate, rim.

Everything that the file gives is drawn in true proportion and stands where the physics puts it. What no
file gives (rotor, pole shoes, thickness of parts) is plain, and the picture says so. Bearings are as seen
from the breaker end; `sense` is +1 where the cam turns clockwise seen from there, `rotor_sense` where the rotor does.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import cached_property, lru_cache

import numpy as np
from numpy.typing import NDArray

from magview.bench.state import TOUCHING_MM, BenchState
from magview.bench.words import breaker_end_sense, cam_sense
from magview.drawing.shapes import (
    Point,
    Shape,
    arc,
    arc_slot,
    band,
    circle,
    cross_slot,
    point,
    polar,
    polar_point,
    wrap,
)
from magview.physics.cam.breaker import Linkage, linkage
from magview.physics.cam.setting import InternalTiming, drawn_timing
from magview.spec.breaker import EccentricScrew
from magview.spec.magneto import Magneto

Array = NDArray[np.float64]

PARENTS: dict[str, str | None] = {
    "case": None,
    "plate": None,
    "case-front": None,
    "stop": "plate",
    "screw": "plate",
    "rotor": None,
    "cam": None,
    "arm": "plate",
    "plate-front": "plate",
    "front": None,
}
"""Groups in drawing order, each with what carries it."""

STILL = ("case", "plate", "case-front", "stop", "screw", "front")
"""Groups that stand still while the rotor turns; the others are drawn on top of them."""

RING = (1.025, 1.105)
"""The rotor's poles, as shares of the rim's radius; …"""
SHOES = (1.125, 1.195)
"""… and the pole shoes round it."""
POLE_HALF, SHOE_HALF = 0.37, 0.25
"""Half the width of a pole and of a shoe, as shares of the poles' pitch: neutral and E-gap fit between the shoes."""
MARKS = (0.915, 0.998)
"""Inner and outer end of a rim mark, as shares of the rim's radius."""

_CAM_POINTS = 360
"""A degree apart: the straight pieces lie within half a micron of the outline."""


@dataclass(frozen=True, eq=False)
class BreakerEnd:
    """The drawing of one magneto: pieces at their zero position, and where each group turns about."""

    shapes: tuple[Shape, ...]
    origins: dict[str, Point]
    anchors: dict[str, tuple[str, Point]]
    """Points of the parts' names: part → (group, point [mm])."""
    screws: tuple[tuple[str, str, Point], ...]
    """Screws that a screwdriver turns: name, group, middle [mm]."""
    rim_mm: float
    """Radius of the housing's rim."""
    extent_mm: float
    """Half the side of the square that holds the picture."""
    plain: bool
    """Whether the arm is drawn in plain proportions because the file leaves them out."""
    contact: Point
    """Middle of the fixed contact's face with plate and screw at 0."""
    mark_numbers: tuple[Point, ...]
    """Place of the number of each rim mark [mm]: a little before its mark, lobe 1 first."""


@dataclass(frozen=True)
class Pose:
    """Angle of each group from its zero position [bearing deg]."""

    turns_deg: dict[str, float]
    lift_mm: float
    """Contact lift the cam offers; below the stop the heel hangs clear."""
    stop_mm: float
    gap_mm: float
    """The gap now, as no instrument could tell it from nothing: 0 within half a micron."""

    @property
    def just_touching(self) -> bool:
        """Whether the contacts are at the very place where they part or meet."""
        return abs(self.lift_mm - self.stop_mm) <= TOUCHING_MM


@dataclass(frozen=True)
class ByEye:
    """The setting as an eye sees it without an instrument: never truer than it can, and rightly open or closed."""

    ahead_deg: float = 0.0
    """Angle that the rotor seems further on than it is."""
    nearer_mm: float = 0.0
    """Distance that the fixed contact seems nearer to the arm."""
    open: bool = False
    """Whether light is seen between the contacts."""


LEAST_SEEN_MM = 0.03
"""Contacts that are seen to be open are drawn so far apart at least."""


def pose(state: BenchState, exaggeration: float = 1.0) -> Pose:
    """Return where everything stands for a state; the one link between numbers and picture.

    `exaggeration` [-] draws the gap so many times its size by lifting the arm further; `gap_mm` stays the true one.
    """
    return pose_at(state.magneto, state.rotor_deg, state.backplate_deg, state.screw_deg, exaggeration)


def pose_at(
    magneto: Magneto, rotor_deg: float, backplate_deg: float, screw_deg: float, exaggeration: float = 1.0,
    by_eye: ByEye | None = None,
) -> Pose:  # fmt: skip
    """Return where everything stands with rotor, backplate and contact screw at these angles [deg].

    `by_eye`: as an eye has it.
    """
    timing = drawn_timing(magneto)
    sense, arms = cam_sense(magneto), linkage(magneto.cam.profile, magneto.breaker)
    lift = float(timing.lift_mm(rotor_deg, backplate_deg))
    stop = float(timing.stop_mm(screw_deg))
    if by_eye is not None:
        stop += by_eye.nearer_mm
    held = max(lift, stop)  # closed contacts hold the arm; the heel then hangs clear of the cam
    if by_eye is not None:
        held = max(held, stop + LEAST_SEEN_MM) if by_eye.open else stop

    def arm_turn(at_mm: float) -> float:
        return -sense * arms.sense * float(np.degrees(at_mm / arms.contact_arm_mm))

    head = 1 if magneto.contact_screw.positive_is_clockwise else -1
    return Pose(
        turns_deg={
            "case": 0.0,
            "case-front": 0.0,
            "front": 0.0,
            "plate-front": 0.0,
            "rotor": breaker_end_sense(magneto) * rotor_deg,
            "cam": sense * timing.ratio * rotor_deg,
            "plate": sense * backplate_deg,
            "arm": arm_turn(stop + exaggeration * (held - stop)),
            "stop": arm_turn(stop),
            "screw": head * screw_deg,
        },
        lift_mm=lift,
        stop_mm=stop,
        gap_mm=held - stop if held - stop > TOUCHING_MM else 0.0,
    )


@lru_cache(maxsize=16)
def breaker_end(magneto: Magneto) -> BreakerEnd:
    """The drawing of a magneto, built once; worn, all but its heel are the very shapes that it has unworn."""
    condition = magneto.condition
    as_new = condition.model_copy(update={"heel_wear_mm": 0.0, "pip_height_mm": 0.0, "face_burn_mm": 0.0})
    if condition == as_new:
        return breaker_layout(magneto).draw()
    unworn = magneto.model_copy(update={"condition": as_new})
    drawing, heel = breaker_end(unworn), breaker_layout(unworn).heel(condition.heel_wear_mm)
    return replace(drawing, shapes=tuple(heel if shape.part == "heel" else shape for shape in drawing.shapes))


@lru_cache(maxsize=4)
def breaker_layout(magneto: Magneto) -> BreakerLayout:
    """Return where the parts of a magneto lie, built once."""
    return BreakerLayout(magneto)


class BreakerLayout:
    """Places of the parts with plate, screw and rotor at 0, in the picture's millimetres."""

    def __init__(self, magneto: Magneto) -> None:
        self.magneto = magneto
        self.timing: InternalTiming = drawn_timing(magneto)
        self.arms: Linkage = linkage(magneto.cam.profile, magneto.breaker)
        self.sense = cam_sense(magneto)
        self.rotor_sense = breaker_end_sense(magneto)
        bearing = magneto.breaker.pivot_bearing_deg
        self.pivot_bearing = bearing if bearing is not None else -60.0
        self.size = magneto.breaker.contact_arm_mm / 27.5  # thickness of parts goes with the arm
        self.rim = magneto.marks.radius_mm
        arms = self.arms
        self.closed = float(arms.arm_angle_rad(arms.base_pitch_radius_mm))
        top = float(arms.radius_mm(arms.arm_angle_at_lift_rad(self.timing.curve.top_mm)))
        self.lobe_top = top - arms.heel_radius_mm
        self.bend = self._bend()
        reach = np.linalg.norm(self.at(arms.contact_arm_mm + 9.5 * self.size, 0.0)) + 4.0 * self.size
        # A file may give rim marks inside the mechanism; the plate must still carry what is on it.
        self.plate = max(0.87 * self.rim, float(reach), arms.pivot_distance_mm + 5.0 * self.size)
        self.rim_outer = max(self.rim, self.plate * 1.08)
        self.marks_bearing = self.pivot_bearing - 38.0 * self.sense
        """Of lobe 1's rim mark; each other stands as much further on as its lobe should open later [cam deg]."""
        places = self.timing.places_deg
        self.marks = self.marks_bearing + self.sense * self.timing.ratio * (places - places[0])

    # -------------------------------------------------------------- frame

    @property
    def number_radius(self) -> float:
        """Middle of the rim, where it is clear of the plate and its scale."""
        return (1.01 * self.plate + self.rim_outer) / 2

    def at(self, along: float, out: float, angle_rad: float | None = None) -> Array:
        """A point on the arm: so far from the pivot, so far out from the contact's line [mm], plate at 0."""
        g = self.closed + self.bend if angle_rad is None else angle_rad
        s = self.arms.sense
        x = self.arms.pivot_distance_mm - along * np.cos(g) + out * np.sin(g)
        y = s * (along * np.sin(g) + out * np.cos(g))
        return np.asarray(x * polar(1.0, self.pivot_bearing) + y * polar(1.0, self.pivot_bearing + 90.0 * self.sense))

    def _bend(self) -> float:
        """Outward bend of the arm between heel and contact [rad] that keeps the fixed contact off the cam."""
        self.bend = 0.0
        need = (8.5 if not self.eccentric else 5.5) * self.size
        for degrees in range(4, 60):
            inner = self.at(self.arms.contact_arm_mm, -need, self.closed + np.radians(degrees))
            if np.linalg.norm(inner) >= self.lobe_top + 1.2 * self.size:
                return float(np.radians(degrees))
        return float(np.radians(60.0))

    @property
    def eccentric(self) -> bool:
        """Whether the contact screw turns an eccentric."""
        return isinstance(self.magneto.contact_screw, EccentricScrew)

    def turned(self, degrees: float) -> float:
        """A bearing so far on from the pivot the way the cam turns."""
        return self.pivot_bearing + self.sense * degrees

    # -------------------------------------------------------------- drawing

    def draw(self) -> BreakerEnd:
        k, contact_arm = self.size, self.arms.contact_arm_mm
        screw = point(self.at(contact_arm + 9.5 * k, -0.5 * k))
        pivot = polar_point(self.arms.pivot_distance_mm, self.pivot_bearing)
        shapes = [
            *self._magnet(),
            *self._case(),
            *self._plate(screw),
            *self._cam(),
            *self._arm(pivot),
            *self._front(),
        ]
        face = self.at(contact_arm, 0.0)
        return BreakerEnd(
            shapes=tuple(shapes),
            origins={group: (0.0, 0.0) for group in PARENTS} | {"arm": pivot, "stop": pivot, "screw": screw},
            anchors=self.anchors(),
            screws=(
                ("lock screw", *self.anchors()["lock screw"]),
                *(("clamp screw", "case", polar_point(self.slot_radius, self.turned(b))) for b in CLAMPS_DEG),
            ),
            rim_mm=self.rim_outer,
            extent_mm=1.32 * self.rim_outer,
            plain=self.arms.plain,
            contact=point(face),
            mark_numbers=tuple(
                polar_point(self.number_radius, b - NUMBER_BEFORE_DEG * self.sense) for b in self.marks
            ),
        )

    def anchors(self) -> dict[str, tuple[str, Point]]:
        """Points of the parts' names: part → (group, point [mm])."""
        k, contact_arm = self.size, self.arms.contact_arm_mm
        screw, slot = point(self.at(contact_arm + 9.5 * k, -0.5 * k)), self.turned(CLAMPS_DEG[0])
        pivot = polar_point(self.arms.pivot_distance_mm, self.pivot_bearing)
        return {
            "rotor": ("rotor", polar_point(sum(RING) / 2 * self.rim_outer, 0.0)),
            "pole shoe": ("case", polar_point(sum(SHOES) / 2 * self.rim_outer, 180.0 / self.magneto.poles)),
            "cam": ("cam", polar_point(self.lobe_top * 0.84, self.lobe_bearing())),
            "step": ("cam", polar_point(self.lobe_top * 0.5, self.step_bearing())),
            "rim mark": ("case", polar_point(self.rim * 0.985, self.marks_bearing)),
            "backplate": ("plate", polar_point(self.plate * 0.72, self.turned(205.0))),
            "clamp screw": ("case", polar_point(self.slot_radius, slot)),
            "pivot": ("plate", pivot),
            "breaker arm": ("arm", point(self.at(0.55 * contact_arm, 2.4 * k))),
            "heel": ("arm", point(self.heel_centre())),
            "spring": ("arm", point(self.at(0.3 * contact_arm, 6.2 * k))),
            "contacts": ("stop", point(self.at(contact_arm, -0.6 * k))),
            "lock screw": ("plate", point(self.at(contact_arm + 5.2 * k, -3.2 * k))),
            "contact screw": ("plate", screw),
        }

    def _magnet(self) -> list[Shape]:
        """Rotor and pole shoes, plain: full register is a pole centred on a shoe, neutral half-way between."""
        poles, r = self.magneto.poles, self.rim_outer
        pitch = 360.0 / poles
        shapes = [
            Shape("pole shoe", "case", f"shoe-{'ab'[i % 2]}", (
                band(SHOES[0] * r, SHOES[1] * r, (i + 0.5 - SHOE_HALF) * pitch, (i + 0.5 + SHOE_HALF) * pitch),
            )) for i in range(poles)
        ]  # fmt: skip
        shapes += [
            Shape("rotor", "rotor", "south" if i % 2 else "north", (
                band(RING[0] * r, RING[1] * r, (i - POLE_HALF) * pitch, (i + POLE_HALF) * pitch),
            )) for i in range(poles)
        ]  # fmt: skip
        index = np.array([polar(RING[0] * r, 0.0), polar(RING[1] * r, 0.0)])
        return [*shapes, Shape("rotor", "rotor", "index", (index,), filled=False)]

    def _case(self) -> list[Shape]:
        """The housing's rim with a mark for each lobe, neutral and E-gap ticks outside, clamp screws."""
        r, shapes = self.rim_outer, []
        shapes.append(
            Shape("rim", "case", "housing", (circle((0, 0), r, 180), circle((0, 0), self.plate * 1.01, 180)))
        )
        marks = [np.array([polar(self.rim * 0.9, b), polar(self.rim, b)]) for b in self.marks]
        shapes.append(Shape("rim mark", "case", "mark", tuple(marks), filled=False))
        ticks = [
            np.array([polar(SHOES[0] * r, b), polar(SHOES[1] * r, b)])
            for b in (0.0, self.rotor_sense * self.magneto.e_gap_deg)
        ]
        return [*shapes, Shape("rotor scale", "case", "mark", tuple(ticks), filled=False)]

    @property
    def slot_radius(self) -> float:
        """From the middle to the clamp screws."""
        return self.plate - 4.2 * self.size

    def _plate(self, screw: Point) -> list[Shape]:
        k = self.size
        low, high = self.magneto.backplate.range_deg
        width = 1.5 * k
        slots = [arc_slot(self.slot_radius, self.turned(b - high), self.turned(b - low), width) for b in CLAMPS_DEG]
        hole = circle((0, 0), self.lobe_top + 1.6 * k)
        shapes = [Shape("backplate", "plate", "plate", (circle((0, 0), self.plate, 180), hole, *slots))]
        clamps = [polar(self.slot_radius, self.turned(b)) for b in CLAMPS_DEG]
        for c in clamps:
            shapes.append(Shape("clamp screw", "case-front", "screw", (circle(point(c), 2.3 * k),)))
            shapes.append(Shape("clamp screw", "case-front", "slot", (cross_slot(point(c), 1.9 * k, 0.3 * k),)))
        zero = self.turned(self.pointer_deg)
        pointer = np.array([polar(self.plate * 0.94, zero), polar(self.plate, zero)])
        shapes.append(Shape("backplate", "plate", "mark", (pointer,), filled=False))
        scale = [
            np.array([polar(self.plate * 1.015, zero + d), polar(self.plate * (1.05 if d % 5 else 1.075), zero + d)])
            for d in range(int(np.ceil(low)), int(np.floor(high)) + 1)
        ]
        shapes.append(Shape("plate scale", "case", "scale", tuple(scale), filled=False))
        return shapes + self._fixed_contact(screw)

    @cached_property
    def pointer_deg(self) -> float:
        """Place of the plate's scale [deg on from the pivot]: as near to its usual place as marks leave room."""
        marks = self.sense * (self.marks - self.pivot_bearing)
        taken = np.concatenate([marks, marks - NUMBER_BEFORE_DEG])

        def suits(at: float) -> tuple[float, float]:
            clear = float(np.abs((taken - at + 180.0) % 360.0 - 180.0).min())
            return min(clear, _SCALE_CLEAR_DEG), -abs(at - _POINTER_DEG)

        return float(max(np.arange(150.0, 251.0).tolist(), key=suits))

    def _fixed_contact(self, screw: Point) -> list[Shape]:
        k, arm = self.size, self.arms.contact_arm_mm
        lock = point(self.at(arm + 5.2 * k, -3.2 * k))
        bracket = wrap([(point(self.at(arm, -3.2 * k)), 2.0 * k), (lock, 2.6 * k), (screw, 3.0 * k)])
        carrier = "stop" if self.eccentric else "plate"
        shapes = [Shape("contacts", carrier, "bracket", (bracket,))]
        if not self.eccentric:
            shank = self.block(arm, -8.0 * k, -1.1 * k, 0.9 * k)
            nut = self.block(arm, -6.6 * k, -5.2 * k, 1.9 * k)
            shapes += [
                Shape("contact screw", "stop", "screw", (shank,)),
                Shape("lock screw", "stop", "screw", (nut,)),
            ]
        shapes.append(Shape("contacts", "stop", "contact", (self.block(arm, -1.1 * k, 0.0, 2.3 * k),)))
        shapes.append(Shape("lock screw", "plate-front", "screw", (circle(lock, 1.7 * k),)))
        shapes.append(Shape("lock screw", "plate-front", "slot", (cross_slot(lock, 1.4 * k, 0.25 * k),)))
        shapes.append(Shape("contact screw", "screw", "eccentric" if self.eccentric else "screw", (
            circle(screw, 2.5 * k),
        )))  # fmt: skip
        shapes.append(Shape("contact screw", "screw", "slot", (cross_slot(screw, 2.1 * k, 0.3 * k),)))
        return shapes

    def block(self, along: float, inner: float, outer: float, half: float) -> Array:
        """A rectangle across the contacts' line: so far from the pivot, between two heights, of half a width [mm]."""
        corners = [(-half, inner), (half, inner), (half, outer), (-half, outer)]
        return np.array([self.at(along + a, out) for a, out in corners])

    def heel_centre(self) -> Array:
        """Middle of the heel's rounding with the arm on the base circle."""
        return self.at(self.arms.heel_arm_mm, 0.0, self.closed)

    def heel(self, wear_mm: float) -> Shape:
        """The arm's rubbing block: all that wear changes."""
        k, arm = self.size, self.arms.contact_arm_mm
        radius = max(self.arms.heel_radius_mm - wear_mm, 0.1)
        root = point(self.at(min(self.arms.heel_arm_mm, 0.8 * arm), 2.4 * k))
        return Shape("heel", "arm", "fibre", (wrap([(point(self.heel_centre()), radius), (root, 2.2 * k)]),))

    def _arm(self, pivot: Point) -> list[Shape]:
        k, arm = self.size, self.arms.contact_arm_mm
        tip = point(self.at(arm, 2.5 * k))
        bar = wrap([(pivot, 3.0 * k), (point(self.at(0.6 * arm, 2.6 * k)), 1.7 * k), (tip, 1.5 * k)])
        t = np.linspace(0.0, 1.0, 40)[:, None]
        ends = [self.at(0.82 * arm, 4.2 * k), self.at(0.25 * arm, 8.5 * k), self.at(-6.0 * k, 3.0 * k)]
        leaf = (1 - t) ** 2 * ends[0] + 2 * t * (1 - t) * ends[1] + t**2 * ends[2]
        post = point(ends[2])
        return [
            self.heel(0.0),
            Shape("breaker arm", "arm", "arm", (bar,)),
            Shape("contacts", "arm", "contact", (self.block(arm, 0.0, 1.1 * k, 2.3 * k),)),
            Shape("spring", "arm", "spring", (leaf,), filled=False),
            Shape("pivot", "plate-front", "screw", (circle(pivot, 1.7 * k),)),
            Shape("spring", "plate-front", "screw", (circle(post, 1.4 * k),)),
        ]

    # -------------------------------------------------------------- cam

    def lobe_bearing(self) -> float:
        """Bearing of lobe 1's top with the rotor at 0."""
        return self.turned(self.heel_at_top_deg - self.timing.first_peak_deg)

    @cached_property
    def heel_at_top_deg(self) -> float:
        """Angle from the pivot's direction at which the heel meets a lobe's top [cam deg]."""
        top = self.arms.radius_mm(self.arms.arm_angle_at_lift_rad(self.timing.curve.top_mm))
        return float(np.degrees(self.arms.heel_angle_rad(top)))

    def step_bearing(self) -> float:
        """Bearing of the cam's step, where the straightedge is read, with the rotor at 0."""
        return self.marks_bearing - self.sense * self.timing.ratio * self.magneto.e_gap_deg

    def _cam(self) -> list[Shape]:
        outline = cam_outline_mm(self.timing, self.arms)
        radius, back = np.hypot(outline[:, 0], outline[:, 1]), np.degrees(np.arctan2(outline[:, 1], outline[:, 0]))
        # Cam-frame angles count from lobe 1's top in the direction of rotation.
        cam = polar(radius, self.lobe_bearing() + self.sense * back)
        step = self.step_bearing()
        boss = self.lobe_top * 0.55
        raised = arc(boss, step, step + 180.0)
        first = polar(self.lobe_top * 0.8, self.lobe_bearing())
        return [
            Shape("cam", "cam", "cam", (cam,)),
            Shape("cam", "cam", "mark", (circle(point(first), 0.5 * self.size),)),
            Shape("step", "cam", "boss", (circle((0, 0), boss),)),
            Shape("step", "cam", "step", (raised,)),
        ]

    def _front(self) -> list[Shape]:
        """The straightedge along the step, and the arrow of rotation round the outside."""
        step, r = self.step_bearing(), self.rim_outer
        # One end alone reaches the rim, so that it is plain against which mark the edge is read.
        ends = [polar(self.rim, step), polar(_FAR_END * self.rim, step + 180.0)]
        start = 180.0 - 24.0 * self.rotor_sense
        end = 180.0 + 24.0 * self.rotor_sense
        shaft = arc(1.25 * r, start, end)
        tip = polar(1.25 * r, end + 3.0 * self.rotor_sense)
        head = np.array(
            [polar(1.225 * r, end - 2.0 * self.rotor_sense), tip, polar(1.275 * r, end - 2.0 * self.rotor_sense)]
        )
        return [
            Shape("straightedge", "cam", "straightedge", (np.array(ends),), filled=False),
            Shape("direction of rotation", "front", "mark", (shaft, head), filled=False),
        ]


CLAMPS_DEG = (165.0, 235.0, 292.0)
"""Clamp screws, degrees on from the pivot in the direction of rotation: clear of arm and contacts."""

_POINTER_DEG, _SCALE_CLEAR_DEG = 200.0, 14.0
"""Usual place of the plate's scale [deg on from the pivot], and how far from any mark and number."""

_FAR_END = 0.45
"""Reach of the straightedge beyond the cam's centre, as a share of the rim's radius."""

NUMBER_BEFORE_DEG = 6.5
"""A mark's number stands so far before it, so that the edge never covers both at once."""


def cam_outline_mm(timing: InternalTiming, arms: Linkage, factor: float = 1.0) -> Array:
    """The cam's outline (n, 2) [mm], first lobe's top on +x, angles in the direction of rotation.

    With a factor it is the cam that lifts the contacts so many times as far.

    It is the pitch curve, taken from the contact lift itself, moved in by the heel's radius; so what is
    drawn lifts the contacts as computed, measured profiles and lobe errors included.
    """
    phi = np.linspace(0.0, 360.0, _CAM_POINTS, endpoint=False)
    rotor = (phi + timing.first_peak_deg) / timing.ratio
    lift = factor * (timing.lift_mm(rotor, 0.0) + timing.wear_lift_mm)
    radius = arms.radius_mm(arms.arm_angle_at_lift_rad(lift))
    top = arms.radius_mm(arms.arm_angle_at_lift_rad(timing.curve.top_mm))
    beta = arms.heel_angle_rad(radius) - arms.heel_angle_rad(top) - np.radians(phi)
    pitch = radius * np.exp(1j * beta)
    ahead, behind = np.roll(pitch, -1), np.roll(pitch, 1)
    along = (ahead - behind) / np.abs(ahead - behind)
    profile = pitch - arms.heel_radius_mm * along * 1j  # β runs backwards, so the outside is on the left
    return np.column_stack([profile.real, profile.imag])
