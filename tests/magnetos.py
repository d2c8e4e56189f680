"""Invented magnetos for the tests: from the independent mechanism of ``tests.reference``, or by hypothesis."""

from __future__ import annotations

import json
from typing import Any

import numpy as np
from hypothesis import assume
from hypothesis import strategies as st

from magview.bench.actions import Action
from magview.bench.apply import apply
from magview.bench.placing import new_bench
from magview.bench.state import BenchState
from magview.spec.engine import Coupling, FiringBtdc, Installation
from magview.spec.files import dump_json, parse_json, validate
from magview.spec.library import find_installation, find_magneto
from magview.spec.magneto import Magneto
from tests.reference import LAWS, Mechanism


def plain(**changes: Any) -> dict[str, Any]:
    """The contents of a plain file (lists as tuples), with top-level parts replaced or, by None, left out."""
    data: dict[str, Any] = {
        "format": "magview-magneto/1",
        "name": "Test magneto",
        "rotation": "clockwise",
        "poles": 4,
        "e_gap_deg": 10.0,
        "gap_limits_mm": (0.1, 0.4),
        "marks": {"radius_mm": 36.0, "tolerance_mm": 0.8},
        "cam": {
            "turns_per_rotor_turn": 1.0,
            "lobe_peaks_deg": (0.0, 90.0, 180.0, 270.0),
            "profile": {
                "kind": "law",
                "base_radius_mm": 9.0,
                "lift_mm": 0.4,
                "rise_deg": 30.0,
                "dwell_deg": 5.0,
                "fall_deg": 35.0,
                "law": "cycloidal",
            },
        },
        "breaker": {
            "pivot": "behind",
            "pivot_distance_mm": 20.0,
            "heel_arm_mm": 17.0,
            "contact_arm_mm": 27.0,
            "heel_radius_mm": 1.8,
            "pivot_bearing_deg": -60.0,
        },
        "contact_screw": {
            "kind": "eccentric",
            "throw_mm": 0.5,
            "range_deg": (-60.0, 60.0),
            "positive_is_clockwise": True,
        },
        "backplate": {"range_deg": (-8.0, 8.0)},
        "designed_setting": {"backplate_deg": 0.0, "gap_mm": 0.25},
    }
    data.update(changes)
    return {k: v for k, v in data.items() if v is not None}


def build(**changes: Any) -> Magneto:
    """The model of `plain`; SpecError as for a file."""
    return validate(Magneto, plain(**changes), "test")


def law_profile(m: Mechanism) -> dict[str, Any]:
    """The profile of a mechanism's cam, as a file gives it."""
    return {
        "kind": "law",
        "base_radius_mm": m.base,
        "lift_mm": m.lift,
        "rise_deg": m.rise,
        "dwell_deg": m.dwell,
        "fall_deg": m.fall,
        "law": m.law,
    }


def from_mechanism(m: Mechanism) -> Magneto:
    """The magneto file of a mechanism; its cam turns with the rotor."""
    gap = 0.4 * m.contact_arm * float(np.diff(m.arm_angle_rad(m.base + m.heel + np.array([0.0, m.lift])))[0])
    return build(
        cam={
            "turns_per_rotor_turn": 1.0,
            "lobe_peaks_deg": m.peaks,
            "profile": law_profile(m),
        },
        breaker={
            "pivot": "behind" if m.side > 0 else "ahead",
            "pivot_distance_mm": m.distance,
            "heel_arm_mm": m.arm,
            "contact_arm_mm": m.contact_arm,
            "heel_radius_mm": m.heel,
            "pivot_bearing_deg": 0.0,
        },
        designed_setting={"backplate_deg": 0.0, "gap_mm": gap},
    )


def random_mechanism(rng: np.random.Generator, law: str, side: int) -> Mechanism:
    """A cam and arm of any sound proportions, one to nine lobes at unequal spacing; it may undercut."""
    while True:
        base, lift = rng.uniform(5, 20), rng.uniform(0.2, 1.5)
        heel = float(np.exp(rng.uniform(np.log(0.2), np.log(8))))
        distance = base + lift + rng.uniform(1, 20)
        arm = distance * rng.uniform(0.4, 1.5)
        if not abs(distance - arm) + 0.5 < base + heel < base + heel + lift < distance + arm - 0.5:
            continue
        lobes = int(rng.integers(1, 10))
        slots = rng.dirichlet(np.full(lobes, 20.0)) * 360.0
        rise, dwell, fall = rng.dirichlet([6, 1, 6]) * min(slots) * rng.uniform(0.4, 1.0)
        peaks = tuple(float(p) for p in np.r_[0.0, np.cumsum(slots)[:-1]])
        dwell = float(dwell if rng.random() < 0.7 else 0.0)
        if min(rise, fall) < 2:
            continue
        contact_arm = arm * rng.uniform(1.0, 2.0)
        return Mechanism(
            law,
            base,
            lift,
            float(rise),
            dwell,
            float(fall),
            distance,
            float(arm),
            float(contact_arm),
            heel,
            side,
            peaks,
        )


@st.composite
def magnetos(draw: st.DrawFn, worn: bool = True) -> Magneto:
    """Sound magnetos of every kind: law or measured lift, compensated or not, both screws, any ratio, wear."""

    def number(low: float, high: float) -> float:
        return draw(st.floats(low, high))

    lobes, poles = draw(st.integers(1, 9)), draw(st.sampled_from([2, 4, 6, 8]))
    if draw(st.booleans()):
        slots, ratio = np.full(lobes, 360.0 / lobes), poles / lobes
    else:
        slots = np.array([number(0.8, 1.2) for _ in range(lobes)])
        slots, ratio = slots / slots.sum() * 360.0, number(0.3, 2.0)
    span = float(min(slots)) * number(0.5, 0.95)
    shares = np.array([number(1.0, 2.0), draw(st.sampled_from([0.0, 0.7])), number(1.0, 2.0)])
    rise, dwell, fall = (float(v) for v in shares / shares.sum() * span)
    breaker, profile, top = _law_parts(number, draw, rise, dwell, fall)
    if draw(st.booleans()):
        profile = _traced(number, rise, dwell, fall, top)
    gap = top * number(0.25, 0.75)
    assume(gap > 0.002)
    low_b, high_b = -number(0.5, 12.0), number(0.5, 12.0)
    condition: dict[str, Any] = {}
    if worn and draw(st.booleans()):
        # Small enough to leave the designed setting working: the lobes still open and let the contacts close.
        spare = min(gap, top - gap)
        error = (float(min(slots)) - span) * 0.4
        condition = {
            "heel_wear_mm": 0.3 * spare * number(0.0, 1.0) * breaker["heel_arm_mm"] / breaker["contact_arm_mm"],
            "pip_height_mm": number(0.0, 0.2),
            "lobe_angle_error_deg": tuple(number(-1, 1) * min(error, 5.0) for _ in range(lobes)),
            "lobe_lift_error_mm": tuple(number(-0.3, 0.3) * spare for _ in range(lobes)),
        }
    return build(
        poles=poles,
        e_gap_deg=number(5.0, 14.0),
        cam={
            "turns_per_rotor_turn": ratio,
            "lobe_peaks_deg": tuple(float(p) for p in np.r_[0.0, np.cumsum(slots)[:-1]]),
            "profile": profile,
        },
        breaker=breaker,
        contact_screw=_screw(number, draw, top),
        backplate={"range_deg": (low_b, high_b)},
        designed_setting={"backplate_deg": number(low_b / 2, high_b / 2), "gap_mm": gap},
        condition=condition,
    )


def _law_parts(number: Any, draw: st.DrawFn, rise: float, dwell: float, fall: float) -> tuple[Any, Any, float]:
    """Breaker, profile and contact lift at the top, with a lift low enough for the heel to follow the flanks."""
    base, heel = number(7.0, 18.0), number(0.5, 3.0)
    hollow = 0.08 * np.radians(min(rise, fall)) ** 2 * base * (1 + base / heel)
    lift = number(0.3, 1.0) * min(1.0, float(hollow))
    distance = base + lift + number(2.0, 12.0)
    arm = distance * number(0.7, 1.1)
    contact_arm = arm * number(1.1, 1.8)
    reach = np.array([base, base + lift]) + heel
    gamma = np.arccos((arm**2 + distance**2 - reach**2) / (2 * arm * distance))
    breaker = {
        "pivot": draw(st.sampled_from(["behind", "ahead"])),
        "pivot_distance_mm": distance,
        "heel_arm_mm": arm,
        "contact_arm_mm": contact_arm,
        "heel_radius_mm": heel,
        "pivot_bearing_deg": 0.0,
    }
    profile = {
        "kind": "law",
        "base_radius_mm": base,
        "lift_mm": lift,
        "rise_deg": rise,
        "dwell_deg": dwell,
        "fall_deg": fall,
        "law": draw(st.sampled_from(LAWS)),
    }
    return breaker, profile, float(contact_arm * (gamma[1] - gamma[0]))


def _traced(number: Any, rise: float, dwell: float, fall: float, top: float) -> dict[str, Any]:
    """A lift traced at uneven steps, as a dial gauge would give it."""
    up, down = (np.cumsum([number(0.3, 1.0) for _ in range(8)]) for _ in range(2))
    steps, drops = up / up[-1], down / down[-1]
    level = [-dwell / 2, dwell / 2] if dwell else [0.0]
    angle = [-dwell / 2 - rise, *(-dwell / 2 - rise * (1 - steps[:-1])), *level, *(dwell / 2 + fall * drops)]
    lift = [0.0, *(top * steps[:-1] ** 1.5), *([top] * len(level)), *(top * (1 - drops[:-1]) ** 1.5), 0.0]
    return {
        "kind": "measured",
        "angle_deg": tuple(float(a) for a in angle),
        "contact_lift_mm": tuple(float(v) for v in lift),
    }


def _screw(number: Any, draw: st.DrawFn, top: float) -> dict[str, Any]:
    if draw(st.booleans()):
        return {
            "kind": "eccentric",
            "throw_mm": max(0.01, top * number(0.2, 1.5)),
            "range_deg": (-number(20.0, 200.0), number(20.0, 200.0)),
            "positive_is_clockwise": draw(st.booleans()),
        }
    return {
        "kind": "threaded",
        "lead_mm": max(0.01, top * number(0.5, 3.0)),
        "range_deg": (-number(20.0, 400.0), number(20.0, 400.0)),
        "positive_is_clockwise": draw(st.booleans()),
    }


def bench_after(item: Magneto | Installation, *actions: Action) -> BenchState:
    """A new bench on which this was done."""
    state = new_bench(item)
    for action in actions:
        state = apply(state, action)
    return state


def in_thousandths() -> Magneto:
    """The shipped seven-cylinder mechanism with limits of common practice: 8 to 10 thou, 1/32 in at the rim."""
    data = find_magneto("seven-radial").model_dump()
    data["gap_limits_mm"] = (0.2032, 0.254)
    data["marks"] = {"radius_mm": 36.0, "tolerance_mm": 25.4 / 32}
    data["designed_setting"] = {"backplate_deg": 0.0, "gap_mm": 0.2286}
    return validate(Magneto, data, "test")


def on_the_published_coupling(side: str = "left") -> Installation:
    """That magneto on seven cylinders that fire 25° before top dead centre (common practice), over the published
    coupling of 19 and 20 teeth."""
    shipped = find_installation(f"seven-radial-{side}")
    engine = shipped.engine.model_copy(update={"firing_btdc_deg": FiringBtdc(left=25.0, right=25.0)})
    return shipped.model_copy(
        update={
            "magneto": in_thousandths(),
            "engine": engine,
            "coupling": Coupling(magneto_teeth=19, drive_teeth=20),
        }
    )


def by_manual(magneto: Magneto) -> Magneto:
    """The same, known by its manual only."""
    data = json.loads(dump_json(magneto)) | {"known": "manual", "sources": []}
    for part in ("breaker", "contact_screw", "designed_setting"):
        del data[part]
    del data["cam"]["profile"]
    return validate(Magneto, parse_json(json.dumps(data).encode(), "it"), "it")
