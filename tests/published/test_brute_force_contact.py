"""Contact lift against plain geometry: a polygon of the whole cam, a disc for the heel, shapely for the distance.

Nothing in ``tests.reference`` is shared with the package: motion laws are integrated from their accelerations,
and the arm is lowered on the cam until the heel's centre is one heel radius away from the polygon.
"""

from itertools import product

import numpy as np
import pytest
from scipy.optimize import brentq

from magview.physics.cam.breaker import MAX_UNDERCUT_MM, lift_curve
from magview.physics.cam.setting import internal_timing
from magview.spec.base import SpecError
from tests.counts import THOROUGH, sampled
from tests.magnetos import from_mechanism, random_mechanism
from tests.reference import LAWS, Mechanism

PIVOTS = {"behind": 1, "ahead": -1}
each_law = pytest.mark.parametrize("law", LAWS)
each_pivot = pytest.mark.parametrize("pivot", PIVOTS)
some_laws_and_pivots = pytest.mark.parametrize(("law", "pivot"), sampled(product(LAWS, PIVOTS), 4))
"""Each of both in the thorough run."""


def curve(m: Mechanism):
    magneto = from_mechanism(m)
    return lift_curve(magneto.cam.profile, magneto.breaker)


def curve_or_none(m: Mechanism):
    try:
        return curve(m)
    except SpecError:
        return None


def random_cams(law: str, pivot: str, count: int, taken: bool = True):
    """Mechanisms with their curve; with ``taken`` false those whose heel the package refuses, with None."""
    rng = np.random.default_rng([LAWS.index(law), PIVOTS[pivot] + 1])
    while count:
        m = random_mechanism(rng, law, PIVOTS[pivot])
        own = curve_or_none(m)
        if (own is not None) == taken:
            count -= 1
            yield m, own


def hidden_lift(m: Mechanism, step_deg: float) -> float:
    """Most lift [mm] by which the heel clears points of the flank, riding over a hollow or falling off a cliff.

    Brute force where a heel laid to the flank would bite deepest into the cam, and at every 20th point.
    """
    worst = 0.0
    for rising in (True, False):
        cam_deg, lift, bite = m.bite(np.linspace(0, 1, 301), rising, step_deg)
        if np.isnan(bite).any():
            return np.inf
        tried = np.r_[np.argsort(bite)[-6:], 0:301:20]
        worst = max(worst, float((m.brute_lift(cam_deg[tried], step_deg) - lift[tried]).max()))
    return worst


@each_law
@each_pivot
def test_lift_is_that_of_disc_on_polygon(law, pivot):
    """17 cams a case, 204 in all (or 36), one to nine lobes; eight angles each, five on lobe 1, three anywhere."""
    rng = np.random.default_rng(8)
    for m, own in random_cams(law, pivot, 17 if THOROUGH else 3):
        before, after = own.reach_deg
        cam_deg = np.r_[rng.uniform(-before, after, 5), rng.uniform(-180, 180, 3)]
        timing = internal_timing(from_mechanism(m))
        found = timing.lift_mm(cam_deg + timing.first_peak_deg, 0.0)
        # The polygon lies up to some hundredths of a thousandth inside the cam; an undercut may hide 1 µm.
        np.testing.assert_allclose(found, m.brute_lift(cam_deg, 0.06), atol=5e-5, err_msg=repr(m))


@some_laws_and_pivots
def test_refused_heels_do_ride_over_the_hollow_and_the_others_do_not(law, pivot):
    for taken in (True, False):
        for m, _ in random_cams(law, pivot, 2 if THOROUGH else 1, taken):
            assert (hidden_lift(m, 0.1) <= MAX_UNDERCUT_MM) == taken, m


@pytest.mark.parametrize(("law", "pivot"), sampled(product(LAWS, PIVOTS), 2))
def test_the_largest_heel_taken_misses_one_micrometre(law, pivot):
    """The limit between taken and refused, found by bisection on the heel, lies at 1 µm of hidden lift."""

    def cam(heel: float) -> Mechanism:
        return Mechanism(law, 12.0, 1.1, 24.0, 3.0, 31.0, 21.0, 18.0, 27.0, heel, PIVOTS[pivot])

    taken, refused = 0.2, 12.0
    while refused - taken > 1e-5 * taken:
        heel = (taken + refused) / 2
        taken, refused = (taken, heel) if curve_or_none(cam(heel)) is None else (heel, refused)
    with pytest.raises(SpecError, match=r"breaker\.heel_radius_mm: .* misses 0\.001\d* mm of lift"):
        curve(cam(refused))
    m = cam(taken)
    own = curve(m)
    assert hidden_lift(m, 0.02) == pytest.approx(MAX_UNDERCUT_MM, rel=0.05)
    before, after = own.reach_deg
    # Though the foot of a flank may be hidden, the curve begins at the base circle.
    assert own.before_top_deg(0.0) == pytest.approx(before) and own.after_top_deg(0.0) == pytest.approx(after)
    cam_deg = np.linspace(-before - 0.5, after + 0.5, 100)
    np.testing.assert_allclose(own.lift_mm(cam_deg), m.brute_lift(cam_deg, 0.02), atol=1.1 * MAX_UNDERCUT_MM)


@some_laws_and_pivots
def test_inverse_of_each_flank_is_found_by_brentq(law, pivot):
    """r(s) and f(s) to 1e-6° between 1e-4 and 1 − 1e-4 of the top lift.

    Nearer to the ends the flank runs level, so the angle is badly conditioned: an error δs shows as δs/s′. A
    nanometre is far below any contact, so what is asked there is the lift: s at the angle found, to 1e-7 of the
    top. At the very top a law with a level fourth derivative hides 1e-3° in the last bit; 1e-5° is asked.
    """
    for m, own in random_cams(law, pivot, 4):
        for rising in (True, False):
            cam_deg, _ = m.tangent(np.linspace(0, 1, 2001), rising)
            # Where a hollow is hidden, though by less than 1 µm, not every tangent point is touched.
            if np.all(np.diff(-cam_deg if rising else cam_deg) < 0):
                check_inverse(m, rising, own)


def check_inverse(m: Mechanism, rising: bool, own) -> None:
    inverse, top = (own.before_top_deg if rising else own.after_top_deg), own.top_mm

    def from_top(x: float) -> float:
        return float(m.tangent(x, rising)[0]) * (-1 if rising else 1)

    def lift(x: float) -> float:
        return float(m.tangent(x, rising)[1])

    for level in top * np.array([1e-4, 0.01, 0.3, 0.7, 0.99, 1 - 1e-4]):
        x = brentq(lambda x, level=level: lift(x) - level, 0, 1, xtol=1e-15)
        assert inverse(level) == pytest.approx(from_top(x), abs=1e-6)
    for level in top * np.array([1e-9, 1e-6, 1 - 1e-6, 1 - 1e-9]):
        angle = float(inverse(level))
        x = brentq(lambda x, angle=angle: from_top(x) - angle, 0, 1, xtol=1e-15)
        assert lift(x) == pytest.approx(level, abs=1e-7 * top)
    assert inverse(0.0) == pytest.approx(from_top(0.0), abs=1e-9)
    assert inverse(top) == pytest.approx(m.dwell / 2, abs=1e-5)
    assert np.isnan(inverse([-1e-9, top + 1e-9])).all()


def test_opening_and_closing_are_found_by_lowering_the_arm():
    """Brute force both ways: the cam angles at which the disc on the polygon lifts the contacts by s₀."""
    m = Mechanism("modified-sine", 9.0, 0.4, 30.0, 5.0, 35.0, 20.0, 17.0, 27.0, 1.8, -1, (0.0, 85.0, 190.0))
    timing = internal_timing(from_mechanism(m))
    level = float(timing.stop_mm(20.0))

    def open_by(cam_deg: float) -> float:
        return float(m.brute_lift(np.array([cam_deg]), 0.02)[0]) - level

    read = timing.readings(3.0, 20.0)
    for i, peak in enumerate(m.peaks):
        opens = timing.first_peak_deg + 3.0 + brentq(open_by, peak - 30, peak, xtol=1e-6)
        closes = timing.first_peak_deg + 3.0 + brentq(open_by, peak, peak + 35, xtol=1e-6)
        # Slope of the flank here about 0.02 mm/°, polygon 1e-6 mm inside.
        assert read.opens_deg[i] == pytest.approx(opens, abs=2e-4)
        assert read.closes_deg[i] == pytest.approx(closes, abs=2e-4)
