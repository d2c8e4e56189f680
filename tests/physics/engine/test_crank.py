"""Pistons, dead centres and firing. The rods are stated here a second time, as points at fixed distances."""

from __future__ import annotations

import cmath
from math import cos, degrees, hypot, nan, pi, radians, sin, sqrt

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.optimize import brentq, minimize_scalar

from magview.bench.engine_words import firing_order_words
from magview.physics.cam.setting import internal_timing
from magview.physics.engine.crank import (
    compensated_lobe_peaks_deg,
    crank_slider_mm,
    firing_order_mismatch,
    firing_table,
    firing_with_cam,
    piston_drop_mm,
    strokes,
    top_dead_centre_deg,
    true_tdc_from_stops,
)
from magview.physics.engine.dead_centre import disc_zero_error_deg
from magview.spec.base import SpecError
from magview.spec.engine import Engine
from magview.spec.files import validate
from magview.spec.library import find_engine, find_installation, find_magneto, shipped_names
from magview.spec.magneto import Magneto
from tests.counts import examples


def odd_radial_order(n: int) -> tuple[int, ...]:
    return tuple(range(1, n + 1, 2)) + tuple(range(2, n + 1, 2))


def radial(
    n: int,
    stroke: float = 150.0,
    rod: float = 270.0,
    master: int = 1,
    knuckle: float = 60.0,
    link: float = 210.0,
    angles: tuple[float, ...] | None = None,
) -> Engine:
    data = {
        "format": "magview-engine/1",
        "name": f"{n} in a row",
        "cylinders": n,
        "arrangement": "radial",
        "firing_order": odd_radial_order(n),
        "firing_btdc_deg": {"left": 25.0, "right": 28.0},
        "timing_tolerance_deg": 1.0,
        "synchronising_tolerance_deg": 1.0,
        "stroke_mm": stroke,
        "rod_mm": rod,
        "rotation": "clockwise",
        "articulation": {
            "master_cylinder": master,
            "knuckle_radius_mm": knuckle,
            "link_rod_mm": link,
            "knuckle_angles_deg": angles,
        },
    }
    return validate(Engine, data, "test")


@st.composite
def radials(draw: st.DrawFn) -> Engine:
    n = draw(st.sampled_from([3, 5, 7, 9, 11]))
    stroke = draw(st.floats(60, 200))
    knuckle = draw(st.floats(0, 0.6)) * stroke
    link = (stroke / 2 + knuckle) * draw(st.floats(1.15, 2.0))
    rod = stroke / 2 * draw(st.floats(2.5, 5.0))
    given_angles = draw(st.booleans())
    angles = tuple(360.0 * c / n + draw(st.floats(-4, 4)) for c in range(n)) if given_angles else None
    return radial(n, stroke, rod, draw(st.integers(1, n)), knuckle, link, angles)


# ---------------------------------------------------------------------- the rods, stated again


class Points:
    """The mechanism as points in the plane (complex, mm); `crank` is the crank pin's direction [rad]."""

    def __init__(self, engine: Engine) -> None:
        link = engine.articulation
        assert link is not None
        self.n, self.r, self.rod = engine.cylinders, engine.stroke_mm / 2, engine.rod_mm
        self.radius, self.link, self.master = link.knuckle_radius_mm, link.link_rod_mm, link.master_cylinder
        self.angles = link.knuckle_angles_deg

    def axis(self, cylinder: int) -> complex:
        return cmath.exp(2j * pi * (cylinder - 1) / self.n)

    def master_piston(self, crank: float) -> complex:
        pin, axis = cmath.rect(self.r, crank), self.axis(self.master)
        # The one point of the axis, outwards of the pin, at the rod's length from the pin.
        outwards = (pin * axis.conjugate()).real
        return axis * brentq(lambda x: abs(x * axis - pin) - self.rod, outwards, outwards + 2 * self.rod, xtol=1e-13)

    def knuckle(self, crank: float, cylinder: int) -> complex:
        pin = cmath.rect(self.r, crank)
        along = (self.master_piston(crank) - pin) / self.rod
        angle = (
            cmath.phase(self.axis(cylinder) / self.axis(self.master))
            if self.angles is None
            else radians(self.angles[cylinder - 1])
        )
        return pin + self.radius * along * cmath.exp(1j * angle)

    def piston(self, crank: float, cylinder: int) -> complex:
        if cylinder == self.master:
            return self.master_piston(crank)
        axis, knuckle = self.axis(cylinder), self.knuckle(crank, cylinder)
        outwards = (knuckle * axis.conjugate()).real
        x = brentq(lambda x: abs(x * axis - knuckle) - self.link, outwards, outwards + 2 * self.link, xtol=1e-13)
        return axis * x

    def height(self, crank: float, cylinder: int) -> float:
        return abs(self.piston(crank, cylinder))

    def top(self, cylinder: int) -> float:
        """The highest position by a general-purpose minimiser, from a coarse search all round."""
        coarse = max(np.linspace(0, 2 * pi, 120, endpoint=False), key=lambda a: self.height(a, cylinder))
        found = minimize_scalar(
            lambda a: -self.height(a, cylinder),
            bounds=(coarse - 0.06, coarse + 0.06),
            method="bounded",
            options={"xatol": 1e-11},
        )
        return float(found.x)

    def sharp_top(self, cylinder: int) -> float:
        """The same place where the link rod's line passes through the master rod's instantaneous centre.

        There the knuckle moves square to its rod, so the piston stands. A minimiser cannot see 1e-6° because
        the top is flat; this condition crosses zero steeply.
        """
        near = self.top(cylinder)

        def moment(crank: float) -> float:
            if cylinder == self.master:
                return (cmath.rect(1, crank) / self.axis(cylinder)).imag
            # Centre: on the crank's line, level with the master piston square to its axis. Scaled by the
            # cosine so that it stays finite.
            frame = (cmath.rect(1, crank) / self.axis(self.master)).real
            centre = abs(self.master_piston(crank)) * cmath.rect(1, crank)
            knuckle = self.knuckle(crank, cylinder)
            rod = self.piston(crank, cylinder) - knuckle
            return (rod.conjugate() * (centre - knuckle * frame)).imag

        return float(brentq(moment, near - 1e-4, near + 1e-4, xtol=1e-15))


def turned(deg: float) -> float:
    return (deg + 180.0) % 360.0 - 180.0


@settings(deadline=None, max_examples=examples(60))
@given(engine=radials())
def test_true_centres_against_points_at_fixed_distances(engine: Engine) -> None:
    points, found = Points(engine), top_dead_centre_deg(engine)
    first, first_sharp = points.top(1), points.sharp_top(1)
    for cylinder in range(1, engine.cylinders + 1):
        # The minimiser's own noise: heights rounded to about 1e-13 mm on a top of radius r.
        assert turned(found[cylinder - 1] - degrees(points.top(cylinder) - first)) == pytest.approx(0, abs=5e-5)
        sharp = degrees(points.sharp_top(cylinder) - first_sharp)
        assert turned(found[cylinder - 1] - sharp) == pytest.approx(0, abs=1e-9)


@settings(deadline=None, max_examples=examples(40))
@given(engine=radials(), crank=st.floats(0, 720))
def test_piston_drop_against_points_at_fixed_distances(engine: Engine, crank: float) -> None:
    points = Points(engine)
    first = points.sharp_top(1)
    cylinders = np.arange(1, engine.cylinders + 1)
    found = piston_drop_mm(engine, crank, cylinders)
    for cylinder in cylinders:
        top = points.height(points.sharp_top(cylinder), cylinder)
        assert found[cylinder - 1] == pytest.approx(top - points.height(first + radians(crank), cylinder), abs=1e-9)


def test_of_several_tops_the_highest_is_the_true_one() -> None:
    # A short master rod and a wide knuckle circle: some pistons rise more than once a turn.
    engine = radial(7, stroke=40.0, rod=21.5, master=3, knuckle=80.0, link=104.0)
    crank = np.linspace(0.0, 720.0, 7201)
    top, humps = top_dead_centre_deg(engine), 0
    for cylinder in range(1, 8):
        drop = piston_drop_mm(engine, crank, cylinder)
        humps += int(((np.diff(drop)[:-1] < 0) & (np.diff(drop)[1:] >= 0)).sum()) > 2
        assert float(piston_drop_mm(engine, top[cylinder - 1], cylinder)) == pytest.approx(0, abs=1e-9)
        # No reading anywhere lies above it; `piston_drop_mm` has a floor of 0, which a lower top would hit widely.
        assert int((drop == 0.0).sum()) <= 3
    assert humps  # the case is what it says


# ---------------------------------------------------------------------- dead centres


@pytest.mark.parametrize("master", [1, 4])
def test_no_knuckle_radius_gives_even_spacing(master: int) -> None:
    engine = radial(9, master=master, knuckle=0.0)
    places = top_dead_centre_deg(engine)[np.array(engine.firing_order) - 1]
    assert places == pytest.approx(np.arange(9) * 80.0, abs=1e-9)


@pytest.mark.parametrize("name", ["four-opposed", "six-inline"])
def test_rods_on_the_crank_pins_are_evenly_spaced(name: str) -> None:
    engine = find_engine(name)
    n = engine.cylinders
    places = top_dead_centre_deg(engine)[np.array(engine.firing_order) - 1]
    assert places == pytest.approx(np.arange(n) * 720.0 / n, abs=0)
    assert piston_drop_mm(engine, places, np.array(engine.firing_order)) == pytest.approx(np.zeros(n), abs=1e-9)


def test_centres_are_mirror_images_about_the_master() -> None:
    # Cylinder 1 the master: what turns forwards past one side is what turns backwards past the other.
    engine = radial(9)
    top = top_dead_centre_deg(engine)
    for cylinder in range(2, 10):
        assert turned(top[cylinder - 1] + top[10 - cylinder]) == pytest.approx(0, abs=1e-9)
    assert np.abs(top - np.round(top / 40.0) * 40.0).max() > 1.0  # and not even


@settings(deadline=None, max_examples=examples(30))
@given(engine=radials())
def test_each_cylinder_fires_once_a_cycle_in_the_firing_order(engine: Engine) -> None:
    top = top_dead_centre_deg(engine)
    assert top[0] == 0.0
    assert np.all((top >= 0.0) & (top < 720.0))
    assert firing_order_mismatch(engine) is None
    even = np.arange(engine.cylinders) * 720.0 / engine.cylinders
    assert np.abs(top[np.array(engine.firing_order) - 1] - even).max() < 180.0


def test_an_order_that_one_crank_pin_cannot_fire_is_named() -> None:
    # In the natural order, and with but two neighbours of the right order exchanged.
    for order in ((1, 2, 3, 4, 5, 6, 7), (1, 5, 3, 7, 2, 4, 6)):
        engine = radial(7).model_copy(update={"firing_order": order})
        assert "cannot fire in that place" in firing_order_words(engine)
        assert np.all((top_dead_centre_deg(engine) >= 0.0) & (top_dead_centre_deg(engine) < 720.0))
    assert firing_order_mismatch(find_engine("six-inline")) is None


def test_crank_and_rod() -> None:
    # Textbook limits: r + l at the top, l − r at the bottom, √(l² − r²) square to the rod's axis.
    assert crank_slider_mm([0.0, 180.0, 90.0], 60.0, 100.0) == pytest.approx([160.0, 40.0, 80.0])
    # A second statement: the law of cosines between crank and cylinder.
    a = np.array([13.0, 77.0, 200.0])
    x = crank_slider_mm(a, 60.0, 100.0)
    assert np.sqrt(60.0**2 + x**2 - 2 * 60.0 * x * np.cos(np.radians(a))) == pytest.approx([100.0] * 3)


def test_plain_engine_drops_as_crank_and_rod_say() -> None:
    engine = find_engine("six-inline")
    r, rod = engine.stroke_mm / 2, engine.rod_mm
    for cylinder, top in enumerate(top_dead_centre_deg(engine), start=1):
        a = radians(37.0)
        expected = r + rod - (r * cos(a) + sqrt(rod**2 - (r * sin(a)) ** 2))
        for crank in (top - 37.0, top + 37.0, top + 397.0):
            assert float(piston_drop_mm(engine, crank, cylinder)) == pytest.approx(expected, abs=1e-9)


@pytest.mark.parametrize("cylinder", [0, 8, -1])
def test_no_such_cylinder(cylinder: int) -> None:
    with pytest.raises(ValueError, match=f"no cylinder {cylinder}; the engine has 1 to 7"):
        piston_drop_mm(find_engine("seven-radial"), 0.0, cylinder)


# ---------------------------------------------------------------------- positive stop


@pytest.mark.parametrize(
    ("first", "second", "middle"),
    [(340, 30, 5), (30, 340, 5), (330, 20, 355), (350, 10, 0), (40, 60, 50), (-20, 30, 5), (9, 188, 98.5)],
)  # fmt: skip
def test_halfway_between_stops(first: float, second: float, middle: float) -> None:
    assert true_tdc_from_stops(first, second) == pytest.approx(middle, abs=1e-12)


def test_zero_error_of_the_disc_is_signed() -> None:
    assert disc_zero_error_deg(None, 340.0, 30.0) == pytest.approx(5.0)
    assert disc_zero_error_deg(None, 330.0, 20.0) == pytest.approx(-5.0)
    assert disc_zero_error_deg(None, 100.0, 260.0) == pytest.approx(-180.0)


@given(tdc=st.floats(0, 360, exclude_max=True), half=st.floats(0.1, 89.9))
def test_stops_find_the_centre_they_were_set_about(tdc: float, half: float) -> None:
    found = true_tdc_from_stops((tdc - half) % 360, (tdc + half) % 360)
    assert 0.0 <= found < 360.0
    assert turned(found - tdc) == pytest.approx(0, abs=1e-9)


@pytest.mark.parametrize(("first", "second"), [(0.0, 180.0), (256.4, 76.4), (270.0, 90.0), (nan, 5.0)])
def test_stops_with_two_middles_are_refused(first: float, second: float) -> None:
    with pytest.raises(ValueError, match="no middle"):
        true_tdc_from_stops(first, second)


@pytest.mark.parametrize(("first", "second"), [(7.0, 7.0), (0.0, 360.0)])
def test_the_same_reading_twice_is_no_pair(first: float, second: float) -> None:
    with pytest.raises(ValueError, match="both stop readings"):
        true_tdc_from_stops(first, second)


def test_the_stop_is_exact_for_the_master_rod_alone() -> None:
    engine = radial(9)

    def stop_error(cylinder: int) -> float:
        top = float(top_dead_centre_deg(engine)[cylinder - 1])

        def above(a: float) -> float:
            return float(piston_drop_mm(engine, top + a, cylinder)) - 20.0

        return (brentq(above, -90.0, 0.0) + brentq(above, 0.0, 90.0)) / 2

    assert stop_error(1) == pytest.approx(0, abs=1e-9)
    assert abs(stop_error(4)) > 0.1


# ---------------------------------------------------------------------- strokes


def test_strokes_of_a_cycle() -> None:
    engine = find_engine("four-opposed")  # 1-3-2-4
    crank = [0.0, 90.0, 180.0, 270.0, 360.0, 450.0, 540.0, 630.0]
    assert " ".join(strokes(engine, crank)) == ("power power exhaust exhaust intake intake compression compression")
    assert strokes(engine, -1.0).item() == "compression"
    # As cylinder 1 is fired, 3 comes up next, 2 is at the top between exhaust and intake, 4 was fired before.
    assert " ".join(strokes(engine, 10.0, [1, 3, 2, 4])) == "power compression intake exhaust"


@pytest.mark.parametrize("name", ["nine-radial", "seven-radial", "six-inline"])
def test_pistons_go_down_on_power_and_intake(name: str) -> None:
    engine = find_engine(name)
    crank = np.arange(0.5, 720.0, 1.0)
    for cylinder in range(1, engine.cylinders + 1):
        drop = piston_drop_mm(engine, np.array([crank, crank + 1e-3]), cylinder)
        down = drop[1] > drop[0]
        assert (np.isin(strokes(engine, crank, cylinder), ["power", "intake"]) == down).all()
        fired = top_dead_centre_deg(engine)[cylinder - 1]
        around = strokes(engine, [fired - 1.0, fired, fired + 359.0], cylinder)
        assert " ".join(around) == "compression power exhaust"


# ---------------------------------------------------------------------- firing


def test_firing_table_is_each_magnetos_btdc_before_each_centre() -> None:
    engine = radial(9)
    table = firing_table(engine)
    top = top_dead_centre_deg(engine)
    for side, btdc in (("left", 25.0), ("right", 28.0)):
        fires = table["left" if side == "left" else "right"]
        assert fires[0] == 720.0 - btdc
        assert np.all((fires >= 0.0) & (fires < 720.0))
        assert (fires + btdc) % 720.0 == pytest.approx(top, abs=1e-9)


@settings(deadline=None, max_examples=examples(40))
@given(engine=radials(), btdc=st.floats(5, 45))
def test_compensated_lobes_fire_all_at_the_same_piston_position(engine: Engine, btdc: float) -> None:
    n, k = engine.cylinders, engine.cylinders / 8
    peaks = compensated_lobe_peaks_deg(engine, btdc)
    assert peaks[0] == 0.0
    assert np.all(np.diff(peaks) > 0.0) and peaks[-1] < 360.0
    magneto = with_cam(find_magneto("nine-radial"), peaks, 0.5 / k)
    fired = firing_with_cam(engine, magneto, k, btdc)
    assert fired.btdc_deg[0] == pytest.approx(btdc, abs=1e-9)
    assert fired.piston_drop_mm == pytest.approx([fired.piston_drop_mm[0]] * n, abs=1e-9)
    assert fired.btdc_deg.min() > 0.0


def with_cam(magneto: Magneto, peaks: np.ndarray, ratio: float) -> Magneto:
    cam = magneto.cam.model_copy(
        update={"lobe_peaks_deg": tuple(float(p) for p in peaks), "turns_per_rotor_turn": ratio}
    )
    return magneto.model_copy(update={"cam": cam})


def test_compensation_vanishes_without_a_knuckle_circle() -> None:
    engine = radial(7, knuckle=0.0, rod=210.0, link=210.0)
    assert compensated_lobe_peaks_deg(engine, 25.0) == pytest.approx(np.arange(7) * 360.0 / 7, abs=1e-9)
    assert compensated_lobe_peaks_deg(engine, -8.0, 1.0) == pytest.approx(np.arange(7) * 720.0 / 7, abs=1e-9)


def test_compensation_at_top_dead_centre_is_the_centres_own_spacing() -> None:
    engine = radial(9)
    expected = top_dead_centre_deg(engine)[np.array(engine.firing_order) - 1] / 2
    # A piston stands still at the top, so its position tells the angle only to about 1e-6°.
    assert compensated_lobe_peaks_deg(engine, 0.0) == pytest.approx(expected, abs=1e-5)


def test_timing_beyond_the_quarter_turn_is_refused() -> None:
    with pytest.raises(ValueError, match="within ±90°"):
        compensated_lobe_peaks_deg(radial(9), 120.0)


def test_a_piston_that_does_not_come_down_so_far_is_named() -> None:
    # Cylinder 1 is the master; a knuckle a long way round gives cylinder 2 hardly any stroke at first.
    engine = radial(3, stroke=40.0, rod=21.0, knuckle=300.0, link=330.0, angles=(0.0, 280.0, 240.0))
    with pytest.raises(ValueError, match="does not reach"):
        compensated_lobe_peaks_deg(engine, 90.0)


def test_an_uncompensated_cam_fires_evenly() -> None:
    engine, magneto = radial(7), find_magneto("seven-radial")
    fired = firing_with_cam(engine, magneto, 0.875, 25.0)
    order = np.array(engine.firing_order) - 1
    # Four lobes serve seven cylinders: the fifth spark is lobe 1 again, a rotor turn later.
    assert (fired.crank_deg[order] + 25.0) % 720.0 == pytest.approx(np.arange(7) * 720.0 / 7, abs=1e-9)
    assert fired.btdc_deg - 25.0 == pytest.approx(
        top_dead_centre_deg(engine) - ((fired.crank_deg + 25.0) % 720.0), abs=1e-9
    )


def test_a_cam_turning_more_slowly_than_the_rotor_fires_evenly_too() -> None:
    # Four lobes at half rotor speed, three rotor turns a cycle: six sparks, the last two by lobes 1 and 2 again.
    engine = find_engine("six-inline")
    magneto = with_cam(find_magneto("traced-six"), np.arange(4) * 90.0, 0.5)
    fired = firing_with_cam(engine, magneto, 1.5, 26.0)
    assert fired.btdc_deg == pytest.approx([26.0] * 6, abs=1e-9)


def test_a_lobe_that_opens_late_fires_its_cylinders_late() -> None:
    engine, magneto = find_engine("four-opposed"), find_magneto("four-opposed")
    fired = firing_with_cam(engine, magneto, 1.0, 24.0, opens_deg=[13.0, 195.0])
    # Two lobes at k = 1: lobe 2 fires the second and fourth of 1-3-2-4, here 2° of rotor and crank late.
    assert fired.btdc_deg == pytest.approx([24.0, 24.0, 22.0, 22.0])
    even = firing_with_cam(engine, magneto, 1.0, 24.0)
    assert (fired.crank_deg - even.crank_deg) % 720.0 == pytest.approx([0.0, 0.0, 2.0, 2.0])


def test_the_readings_of_a_setting_are_taken_as_they_are() -> None:
    installation = find_installation("nine-radial-left")
    engine, magneto = installation.engine, installation.magneto
    opens = internal_timing(magneto).readings(1.0, 0.0).opens_deg
    fired = firing_with_cam(engine, magneto, 1.125, 25.0, opens)
    # The plate moves all lobes alike; No. 1 is timed to the engine, so nothing is left of it.
    as_new = firing_with_cam(engine, magneto, 1.125, 25.0)
    assert fired.btdc_deg == pytest.approx(as_new.btdc_deg, abs=1e-9)


@pytest.mark.parametrize(
    ("k", "opens", "what"),
    [(1.5, None, "12 sparks in two crank turns; the engine needs 7"), (0.875, [1.0], "4 lobes")],
)
def test_a_cam_that_does_not_fit_is_refused(k: float, opens: list[float] | None, what: str) -> None:
    with pytest.raises(ValueError, match=what):
        firing_with_cam(radial(7), find_magneto("seven-radial"), k, 25.0, opens)


# ---------------------------------------------------------------------- what is shipped


@pytest.mark.parametrize("name", shipped_names("engines"))
def test_shipped_engines_can_fire_in_their_order(name: str) -> None:
    assert firing_order_mismatch(find_engine(name)) is None


def test_a_link_too_short_to_reach_is_refused_by_the_file() -> None:
    # What the square roots here rely on.
    with pytest.raises(SpecError, match="link_rod_mm"):
        radial(7, stroke=140.0, knuckle=60.0, link=hypot(70.0, 60.0))
