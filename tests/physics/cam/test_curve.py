"""The rising cubic, its inverse, and the lift curve of a measured profile."""

import numpy as np
import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from magview.physics.cam.breaker import LiftCurve, lift_curve, linkage
from magview.physics.cam.curve import RisingCubic
from magview.spec.breaker import Breaker
from magview.spec.cam import MeasuredProfile
from tests.counts import examples
from tests.magnetos import build, law_profile, plain
from tests.reference import Mechanism

steps = st.floats(1e-4, 10.0)


@st.composite
def curves(draw: st.DrawFn) -> RisingCubic:
    n = draw(st.integers(1, 12))
    x, y = (np.cumsum([draw(st.floats(-5, 5)), *(draw(steps) for _ in range(n))]) for _ in range(2))
    return RisingCubic(x, y, np.array([draw(st.floats(-1.0, 1e6)) for _ in range(n + 1)]))


@settings(max_examples=examples(200), deadline=None)
@given(curves())
def test_curve_rises_through_its_knots_whatever_the_slopes(curve):
    np.testing.assert_allclose(curve(curve.x), curve.y, rtol=1e-14, atol=1e-13)
    x = np.unique(np.r_[np.linspace(curve.x[0], curve.x[-1], 500), curve.x])
    assert np.all(np.diff(curve(x)) >= -1e-13)
    assert curve(curve.x[0] - 1.0) == curve.y[0] and curve(curve.x[-1] + 1.0) == pytest.approx(curve.y[-1], rel=1e-14)


@given(curves(), st.floats(-0.2, 1.2))
def test_one_number_and_many_give_the_same(curve, share):
    x = float(curve.x[0] + share * (curve.x[-1] - curve.x[0]))
    assert curve.of_one(x) == pytest.approx(float(curve(np.array([x]))[0]), rel=1e-14, abs=1e-13)


@settings(max_examples=examples(200), deadline=None)
@given(curves(), st.lists(st.floats(0, 1), min_size=1, max_size=20))
def test_inverse_answers_an_x_at_which_the_curve_has_that_y(curve, shares):
    """y is met to 1e-9 of its piece; where the curve runs level many x share one y, so x itself is not compared."""
    y = np.minimum(curve.y[0] + np.array(shares) * (curve.y[-1] - curve.y[0]), curve.y[-1])
    x = curve.inverse(y)
    assert np.all((curve.x[0] <= x) & (x <= curve.x[-1]))
    np.testing.assert_allclose(curve(x), y, atol=1e-9 * np.diff(curve.y).max())
    assert np.all(np.diff(curve.inverse(np.sort(y))) >= -1e-7)


@given(curves())
def test_outside_the_knots_and_nan_have_no_inverse(curve):
    outside = [curve.y[0] - 1e-9, curve.y[-1] + 1e-9, np.nan, np.inf, -np.inf]
    assert np.isnan(curve.inverse(outside)).all()
    assert np.isfinite(curve.inverse([curve.y[0], curve.y[-1]])).all()
    assert np.isnan(curve(np.nan))


def test_a_cubic_is_reproduced_exactly():
    """Limit case: Hermite pieces with true slopes of a cubic are that cubic."""
    x = np.array([0.0, 0.7, 1.1, 2.0])
    curve = RisingCubic(x, x**3 + x, 3 * x**2 + 1)
    at = np.linspace(0, 2, 301)
    np.testing.assert_allclose(curve(at), at**3 + at, atol=1e-14)
    np.testing.assert_allclose(curve.inverse(at**3 + at), at, atol=1e-14)


def test_inverse_keeps_shape_and_order_over_its_blocks():
    x = np.linspace(0.0, 3.0, 40)
    curve = RisingCubic(x, np.expm1(x), np.exp(x))
    for size in (0, 1, (1 << 14) - 1, 1 << 14, (1 << 14) + 1, 40_000):
        y = np.random.default_rng(size).uniform(-0.1, curve.y[-1] + 0.1, size)
        whole = curve.inverse(y)
        assert whole.shape == y.shape
        np.testing.assert_array_equal(whole[-3:], [curve.inverse(v) for v in y[-3:]])
    grid = np.full((3, 4, 5), 1.0)
    assert curve.inverse(grid).shape == grid.shape
    assert curve.inverse(1.0).shape == ()
    # Hermite error h⁴/384·max|y⁗|, over the slope, which is e^x as well.
    np.testing.assert_allclose(
        curve.inverse(np.expm1(0.123 + x[:-2])), 0.123 + x[:-2], atol=(3 / 39) ** 4 / 384 * 1.1
    )


@pytest.mark.parametrize(
    ("x", "y"), [([0.0, 0.0], [0.0, 1.0]), ([0.0, 1.0], [1.0, 1.0]), ([0.0], [0.0]), ([0.0, 1.0], [0.0, np.nan])]
)
def test_knots_that_do_not_rise_are_refused(x, y):
    with pytest.raises(ValueError, match="must increase"):
        RisingCubic(np.array(x), np.array(y), np.zeros(len(x)))


# ---------------------------------------------------------------------- measured profiles


def measured(angle, lift) -> LiftCurve:
    profile = MeasuredProfile(
        kind="measured", angle_deg=tuple(map(float, angle)), contact_lift_mm=tuple(map(float, lift))
    )
    return lift_curve(profile, Breaker(contact_arm_mm=25.0))


@st.composite
def traces(draw: st.DrawFn) -> tuple[np.ndarray, np.ndarray, float, float]:
    """Angles, lifts, and first and last angle of the level top."""
    up, down = (np.cumsum([draw(st.floats(0.01, 1)) for _ in range(draw(st.integers(2, 9)))]) for _ in range(2))
    level, rise, fall, top = (draw(st.floats(*b)) for b in ((0.1, 8), (2, 60), (2, 60), (0.01, 2)))
    first, last = -draw(st.floats(0, 1)) * level, 0.0
    last = first + level
    assume(last >= 0)
    before = first - rise + rise * np.linspace(0, 1, len(up) + 1)
    after = last + fall * np.linspace(0, 1, len(down) + 1)
    lift = np.r_[0, 0, up[:-1] / up[-1] * top, top, top, (1 - down[:-1] / down[-1]) * top, 0, 0]
    return np.r_[before[0] - 5, before, after, after[-1] + 3], lift, first, last


@settings(max_examples=examples(150), deadline=None)
@given(traces())
def test_measured_lift_passes_its_points_and_stays_between_them(trace):
    angle, lift, first, last = trace
    curve = measured(angle, lift)
    np.testing.assert_allclose(curve.lift_mm(angle), lift, atol=1e-13)
    assert curve.top_mm == lift.max()
    assert curve.reach_deg == (-angle[1], angle[-2])
    fine = np.linspace(angle[0], angle[-1], 1501)
    found = curve.lift_mm(fine)
    assert found.min() >= 0 and found.max() <= curve.top_mm + 1e-15
    assert np.all(np.diff(found[fine <= first]) >= -1e-13) and np.all(np.diff(found[fine >= last]) <= 1e-13)
    # The top is level from its first to its last point, and the flanks are left at its ends.
    np.testing.assert_allclose(curve.lift_mm(np.linspace(first, last, 9)), curve.top_mm, rtol=1e-15)
    assert curve.before_top_deg(curve.top_mm) == pytest.approx(-first, abs=1e-6)
    assert curve.after_top_deg(curve.top_mm) == pytest.approx(last, abs=1e-6)
    np.testing.assert_allclose(curve.before_top_deg(0.0), -angle[1], atol=1e-6)
    inner = lift[(angle > angle[1]) & (angle < first)]
    np.testing.assert_allclose(curve.before_top_deg(inner), -angle[(angle > angle[1]) & (angle < first)], atol=1e-6)


def test_a_law_cam_traced_with_a_gauge_behaves_as_the_law_cam():
    """Second method: points taken from brute-force geometry every degree, then read as a measured profile."""
    m = Mechanism("modified-sine", 9.0, 0.4, 30.0, 6.0, 34.0, 20.0, 17.0, 27.0, 1.8, 1, (0.0, 90.0))
    law = lift_curve(
        build(cam=plain()["cam"] | {"profile": law_profile(m)}).cam.profile, Breaker(**plain()["breaker"])
    )
    before, after = law.reach_deg
    angle = np.r_[-before, np.arange(-32, 38), after]
    lift = np.clip(m.brute_lift(angle), 0, None)
    level = np.abs(angle) <= 3
    lift[level] = lift[level].max()
    lift[[0, -1]] = 0.0
    traced = measured(angle, lift)
    cam_deg = np.linspace(-before, after, 500)
    # Shape-preserving slopes are of second order: 1° steps of a 30° rise leave at most (1/30)²/8 of 0.6 mm.
    np.testing.assert_allclose(traced.lift_mm(cam_deg), law.lift_mm(cam_deg), atol=1e-4)


@settings(max_examples=examples(150))
@given(*[st.one_of(st.none(), st.floats(0.001, 1000.0)) for _ in range(3)], st.floats(0.001, 1000.0))
def test_plain_proportions_close_the_drawn_triangle(distance, arm, heel, contact_arm):
    """Whatever a measured profile's file leaves out, the arm that is drawn reaches the base circle."""
    breaker = Breaker(
        contact_arm_mm=contact_arm, pivot_distance_mm=distance, heel_arm_mm=arm, heel_radius_mm=heel, pivot="ahead"
    )
    profile = MeasuredProfile(
        kind="measured", angle_deg=(-20.0, -10.0, 0.0, 10.0, 20.0), contact_lift_mm=(0.0, 0.1, 0.3, 0.1, 0.0)
    )
    arms = linkage(profile, breaker)
    assert arms.plain is (None in (distance, arm, heel))
    base = arms.base_pitch_radius_mm
    assert np.isfinite(arms.arm_angle_rad(base)) and np.isfinite(arms.heel_angle_rad(base))
    gamma = arms.arm_angle_rad(base)
    assert arms.radius_mm(gamma) == pytest.approx(base, rel=1e-6)
    assert arms.lift_mm(base) == pytest.approx(0.0, abs=1e-9)
    assert arms.arm_angle_at_lift_rad(0.0) == pytest.approx(gamma)
