"""Articulated rods and the compensated cam against a kinematics of the test's own.

Points are complex numbers, every answer is found by a scalar search, no formula is shared with the program. Method:
loop closure of a slider-crank and of the link rods pinned to its big end, as any text on the dynamics of radial
engines sets it up. What a compensated cam is for: FAA-H-8083-32B, ch. 4 (one lobe for each cylinder, spaced for each
piston's own position). The engines are invented, in proportions that a radial engine could have.
"""

from __future__ import annotations

import cmath
import math
from typing import Any

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.optimize import brentq

from magview.physics.cam.setting import internal_timing
from magview.physics.engine.crank import (
    compensated_lobe_peaks_deg,
    firing_with_cam,
    piston_drop_mm,
    top_dead_centre_deg,
)
from magview.spec.engine import Engine
from magview.spec.files import validate
from tests.counts import examples
from tests.magnetos import build

ORDERS = {
    3: (1, 2, 3),
    5: (1, 3, 5, 2, 4),
    7: (1, 3, 5, 7, 2, 4, 6),
    9: (1, 3, 5, 7, 9, 2, 4, 6, 8),
}
"""Odd single-row radials: every other cylinder (FAA-H-8083-32B, ch. 1)."""

CLOSE = 1e-6
"""Searches by value find a maximum to about half the digits: degrees are compared to this, lengths to 1e-9 mm."""


def radial(**changes: Any) -> dict[str, Any]:
    data: dict[str, Any] = {
        "format": "magview-engine/1",
        "name": "Test radial",
        "cylinders": 9,
        "arrangement": "radial",
        "firing_order": ORDERS[9],
        "firing_btdc_deg": {"left": 21.0, "right": 21.0},
        "timing_tolerance_deg": 1.0,
        "synchronising_tolerance_deg": 1.0,
        "stroke_mm": 131.0,
        "rod_mm": 259.0,
        "rotation": "clockwise",
        "articulation": {"master_cylinder": 1, "knuckle_radius_mm": 67.0, "link_rod_mm": 192.0},
    }
    return {**data, **changes}


class Linkage:
    """The mechanism in the plane, the crank at 0, angles in the direction of rotation [rad], lengths [mm]."""

    def __init__(self, engine: Engine) -> None:
        link = engine.articulation
        assert link is not None
        self.n, self.crank, self.rod = engine.cylinders, engine.stroke_mm / 2, engine.rod_mm
        self.master, self.knuckle, self.link = link.master_cylinder, link.knuckle_radius_mm, link.link_rod_mm
        self.order = engine.firing_order
        self.given = link.knuckle_angles_deg

    def axis(self, cylinder: int) -> complex:
        return cmath.rect(1.0, 2 * math.pi * (cylinder - 1) / self.n)

    def knuckle_at(self, cylinder: int) -> float:
        """The pin's angle from the master rod; where the file is silent, that between the two cylinders' axes."""
        if self.given:
            return math.radians(self.given[cylinder - 1])
        return 2 * math.pi * (cylinder - self.master) / self.n

    def along(self, axis: complex, pin: complex, rod: float) -> float:
        """How far out on an axis the piston pin is that a rod of this length holds: the outer of two places."""
        foot = (pin * axis.conjugate()).real
        return float(brentq(lambda x: abs(x * axis - pin) - rod, foot, foot + rod + 1.0, xtol=1e-13, rtol=1e-15))

    def piston(self, cylinder: int, turn: float) -> float:
        """Height of a piston pin above the crank's centre, the crank pin at this angle."""
        pin = cmath.rect(self.crank, turn)
        master = self.axis(self.master) * self.along(self.axis(self.master), pin, self.rod)
        if cylinder == self.master:
            return abs(master)
        knuckle = pin + cmath.rect(self.knuckle, cmath.phase(master - pin) + self.knuckle_at(cylinder))
        return self.along(self.axis(cylinder), knuckle, self.link)

    def top(self, cylinder: int) -> float:
        """Where the piston is highest: the best of a grid round the turn, then where the heights to both sides of it
        are alike, so near that the curve is even there."""
        grid, step = np.linspace(0.0, 2 * math.pi, 72, endpoint=False), 1e-4
        best = float(grid[int(np.argmax([self.piston(cylinder, a) for a in grid]))])

        def rises(a: float) -> float:
            return self.piston(cylinder, a + step) - self.piston(cylinder, a - step)

        pitch = 2 * math.pi / 72
        return float(brentq(rises, best - pitch, best + pitch, xtol=1e-13))

    def drop(self, cylinder: int, turn: float) -> float:
        return self.piston(cylinder, self.top(cylinder)) - self.piston(cylinder, turn)

    def at_drop(self, cylinder: int, below: float) -> float:
        """The crank pin's angle at which the piston, rising, is so far below its top."""
        top = self.top(cylinder)
        high = self.piston(cylinder, top)
        return float(
            brentq(lambda a: high - self.piston(cylinder, a) - below, top - math.radians(150.0), top, xtol=1e-13)
        )


def near(angle: float, wanted: float, turn: float = 360.0) -> float:
    return (angle - wanted + turn / 2) % turn - turn / 2


@st.composite
def engines(draw: st.DrawFn) -> Engine:
    """Three to nine cylinders, any of them the master, knuckle pins at even or at given angles."""
    n = draw(st.sampled_from(sorted(ORDERS)))
    stroke = draw(st.floats(90.0, 170.0))
    rod = stroke * draw(st.floats(1.7, 2.3))
    knuckle = stroke * draw(st.floats(0.3, 0.55))
    master = draw(st.integers(1, n))
    articulation: dict[str, Any] = {
        "master_cylinder": master,
        "knuckle_radius_mm": knuckle,
        "link_rod_mm": rod - knuckle,
    }
    if draw(st.booleans()):
        # Pins moved a little off their even places, as engines have them that even the pistons' travel out.
        off = [draw(st.floats(-3.0, 3.0)) for _ in range(n)]
        articulation["knuckle_angles_deg"] = tuple(
            0.0 if c == master else (360.0 * (c - master) / n + off[c - 1]) for c in range(1, n + 1)
        )
    data = radial(cylinders=n, firing_order=ORDERS[n], stroke_mm=stroke, rod_mm=rod, articulation=articulation)
    return validate(Engine, data, "test")


@settings(max_examples=examples(20))
@given(engines())
def test_true_centres(engine):
    """Of each cylinder, from cylinder 1's own; where a cylinder fires is known to the nearer of two turns."""
    mechanism, found = Linkage(engine), top_dead_centre_deg(engine)
    first = mechanism.top(1)
    for cylinder in range(1, engine.cylinders + 1):
        assert near(float(found[cylinder - 1]), math.degrees(mechanism.top(cylinder) - first)) == pytest.approx(
            0.0, abs=CLOSE
        )
    places = [engine.firing_order.index(c) * 720.0 / engine.cylinders for c in range(1, engine.cylinders + 1)]
    assert all(abs(near(float(f), p, 720.0)) < 720.0 / engine.cylinders for f, p in zip(found, places, strict=True))


@settings(max_examples=examples(20))
@given(engines(), st.floats(-360.0, 360.0))
def test_how_far_each_piston_is_down(engine, crank):
    mechanism = Linkage(engine)
    turn = mechanism.top(1) + math.radians(crank)
    for cylinder in range(1, engine.cylinders + 1):
        expected = mechanism.drop(cylinder, turn)
        assert float(piston_drop_mm(engine, crank, cylinder)) == pytest.approx(expected, abs=1e-6)


@settings(max_examples=examples(15))
@given(engines(), st.floats(8.0, 35.0))
def test_lobes_of_a_compensated_cam(engine, btdc):
    """Every cylinder fires with its piston as far below its top as No. 1's; half the crank's degrees on the cam."""
    mechanism, found = Linkage(engine), compensated_lobe_peaks_deg(engine, btdc)
    below = mechanism.drop(1, mechanism.top(1) - math.radians(btdc))
    assert found[0] == 0.0 and np.all(np.diff(found) > 0)
    start = math.degrees(mechanism.at_drop(1, below))
    for lobe, cylinder in enumerate(engine.firing_order):
        fires = math.degrees(mechanism.at_drop(cylinder, below)) - start
        assert near(2.0 * float(found[lobe]), fires) == pytest.approx(0.0, abs=CLOSE)


def test_a_compensated_magneto_on_its_engine():
    """From the lobes' places of this kinematics, through a magneto built of them and set as designed, back to the
    pistons: at every opening each piston stands as far below its top as No. 1's; an even cam's do not."""
    engine = validate(Engine, radial(), "test")
    mechanism, btdc, k = Linkage(engine), 21.0, 9 / 8
    below = mechanism.drop(1, mechanism.top(1) - math.radians(btdc))
    fires = [math.degrees(mechanism.at_drop(c, below)) for c in engine.firing_order]
    peaks = [((f - fires[0]) % 360.0) / 2 for f in fires]
    for i in range(1, 9):  # the cam turns once in two turns of the crank
        while peaks[i] < peaks[i - 1]:
            peaks[i] += 180.0
    profile = {
        "kind": "law", "base_radius_mm": 17.0, "lift_mm": 0.4, "rise_deg": 12.0, "dwell_deg": 2.0, "fall_deg": 12.0,
        "law": "cycloidal",
    }  # fmt: skip

    def firing(lobes: list[float]):
        cam = {"turns_per_rotor_turn": 4 / 9, "lobe_peaks_deg": tuple(lobes), "profile": profile}
        breaker = {
            "pivot": "ahead", "pivot_distance_mm": 27.0, "heel_arm_mm": 19.0, "contact_arm_mm": 29.0,
            "heel_radius_mm": 1.6, "pivot_bearing_deg": 0.0,
        }  # fmt: skip
        magneto = build(
            cam=cam, breaker=breaker, e_gap_deg=8.0, designed_setting={"backplate_deg": 0.0, "gap_mm": 0.2}
        )
        opens = internal_timing(magneto).readings(0.0, 0.0).opens_deg
        return magneto, firing_with_cam(engine, magneto, k, btdc, opens)

    magneto, found = firing(peaks)
    assert magneto.compensated
    np.testing.assert_allclose(found.piston_drop_mm, below, atol=1e-5)
    for cylinder in range(1, 10):
        own = math.degrees(mechanism.top(cylinder) - mechanism.at_drop(cylinder, below))
        assert float(found.btdc_deg[cylinder - 1]) == pytest.approx(own, abs=CLOSE)
    _, even = firing([40.0 * i for i in range(9)])
    spread = [mechanism.drop(c, mechanism.top(1) + math.radians(float(even.crank_deg[c - 1]))) for c in range(1, 10)]
    np.testing.assert_allclose(even.piston_drop_mm, spread, atol=1e-6)
    assert max(spread) - min(spread) > 0.5, "an even cam on link rods fires some pistons higher than others"
