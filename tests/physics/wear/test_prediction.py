"""Wear against hours: against readings of magnetos worn by as much, searched roots and simulated inspections."""

import math

import numpy as np
import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st
from scipy.optimize import brentq

from magview.physics.cam.setting import InternalTiming
from magview.physics.wear.inspection import Inspection
from magview.physics.wear.prediction import (
    Firing,
    WearRates,
    course,
    lasting,
    leavings,
    worn,
)
from magview.spec.library import find_magneto
from tests.counts import examples
from tests.magnetos import magnetos
from tests.physics.wear.steady import RATES, RATIO, steady

few = settings(max_examples=examples(40), deadline=None)


# ---------------------------------------------------------------------- course


@few
@given(magnetos(), st.floats(0.0, 1.0), st.floats(0.0, 1.0), st.floats(0.0, 0.05), st.floats(0.0, 0.05))
def test_course_is_the_readings_of_magnetos_worn_by_as_much(magneto, share, other, heel, pip):
    assume(magneto.breaker.heel_arm_mm is not None)
    low, high = magneto.backplate.range_deg
    plate, screw = low + share * (high - low), (other - 0.5) * 0.2 * magneto.contact_screw.range_deg[1]
    rates, hours = WearRates(heel, pip), np.array([0.0, 40.0, 300.0, 2500.0])
    found = course(magneto, plate, screw, rates, hours)
    for n, at in enumerate(hours):
        read = InternalTiming(worn(magneto, rates, float(at))).readings(plate, screw)
        np.testing.assert_allclose(found.gap_mm[n], read.max_gap_mm, atol=1e-12)
        np.testing.assert_allclose(found.blade_gap_mm[n], read.blade_gap_mm, atol=1e-12)
        np.testing.assert_allclose(found.opening_error_deg[n], read.e_gap_error_deg, atol=1e-7)
        np.testing.assert_array_equal(found.gap_ok[n], read.gap_ok)
        np.testing.assert_array_equal(found.timing_ok[n], read.timing_ok)
        assert found.within_limits[n] == read.within_limits


def test_wear_opens_later_and_closes_the_gap_by_the_arm_s_ratio():
    hours = np.linspace(0.0, 200.0, 21)
    found = course(steady(), 0.0, 0.0, RATES, hours)
    assert found.gap_mm.shape == found.opening_error_deg.shape == (21, 4)
    assert found.within_limits.shape == found.pip_mm.shape == (21,)
    np.testing.assert_allclose(found.gap_mm[:, 0], 0.25 - 0.0002 * RATIO * hours, atol=1e-12)
    assert np.all(np.diff(found.opening_error_deg[:, 0]) > 0)


def test_the_blade_is_wrong_by_the_pip():
    """0.03 mm of pip at 200 h: the blade says 0.157 mm and out of limits long before the true gap is."""
    found = course(steady(condition={"pip_height_mm": 0.01}), 0.0, 0.0, WearRates(0.0, 0.015), [0.0, 200.0, 400.0])
    np.testing.assert_allclose(found.pip_mm, [0.01, 0.04, 0.07])
    np.testing.assert_allclose(found.gap_mm[:, 0], 0.25)
    np.testing.assert_allclose(found.blade_gap_mm[:, 0], [0.24, 0.21, 0.18])
    assert found.gap_ok.all()
    assert found.within_limits.all()


@pytest.mark.parametrize(("gap", "beyond"), [(0.2, -1e-5), (0.3, 1e-5)])
def test_a_gap_at_the_very_limit_is_in_limits(gap, beyond):
    """Set to 0.2 mm or 0.3 mm where these are the limits; a hundredth of a micrometre further is out."""
    for off, ok in ((0.0, True), (beyond, False)):
        setting = {"backplate_deg": 0.0, "gap_mm": gap + off}
        found = course(steady(designed_setting=setting), 0.0, 0.0, WearRates(0.0), 0.0)
        assert (found.gap_ok[0], found.within_limits) == (ok, ok)


def test_pips_do_not_move_the_opening():
    with_pips, without = (course(steady(), 0.0, 0.0, WearRates(0.02, pip), [100.0]) for pip in (0.05, 0.0))
    np.testing.assert_array_equal(with_pips.opening_error_deg, without.opening_error_deg)


def test_hours_of_any_shape():
    one = course(steady(), 0.0, 0.0, RATES, 100.0)
    assert one.gap_mm.shape == (4,)
    grid = course(steady(), 0.0, 0.0, RATES, [[0.0, 100.0], [200.0, 300.0]])
    np.testing.assert_array_equal(grid.hours, [[0.0, 100.0], [200.0, 300.0]])
    assert grid.gap_mm.shape == (2, 2, 4)
    np.testing.assert_array_equal(grid.gap_mm[0, 1], one.gap_mm)


# ---------------------------------------------------------------------- leaving the limits


def by_limit(*args):
    return {leaving.limit: leaving for leaving in leavings(*args)}


def test_hours_until_the_gap_is_too_small_are_a_division():
    found = by_limit(steady(), 0.0, 0.0, RATES)
    assert found["gap too small"].hours == pytest.approx(0.05 / (0.0002 * RATIO), rel=1e-9)
    assert found["blade gap too small"].hours == pytest.approx(0.05 / (0.0002 * RATIO + 0.00015), rel=1e-9)
    assert found["never opens"].hours == pytest.approx(0.25 / (0.0002 * RATIO), rel=1e-9)
    assert math.isinf(found["gap too wide"].hours)
    assert math.isinf(found["opens early"].hours)
    assert found["gap too wide"].lobe == 0


@few
@given(magnetos(), st.floats(0.0, 1.0), st.floats(1e-3, 0.05))
def test_hours_are_those_that_a_search_on_worn_magnetos_finds(magneto, share, heel):
    """Just before, the limit holds; just after, it does not; for the opening the crossing is searched as well."""
    assume(magneto.breaker.heel_arm_mm is not None)
    low, high = magneto.backplate.range_deg
    plate, rates = low + share * (high - low), WearRates(heel)
    found = by_limit(magneto, plate, 0.0, rates)
    judged = slice(0, 1) if magneto.compensated else slice(None)
    tolerance = magneto.marks.tolerance_mm

    def read(hours):
        return InternalTiming(worn(magneto, rates, hours)).readings(plate, 0.0)

    def late(hours):
        timing = InternalTiming(worn(magneto, rates, hours))
        return (
            float(np.nanmax(timing.mark_offset_mm(timing.readings(plate, 0.0).e_gap_error_deg[judged]))) - tolerance
        )

    for limit, holds in (
        ("gap too small", lambda r: bool(np.all(r.max_gap_mm >= magneto.gap_limits_mm[0]))),
        ("never opens", lambda r: bool(np.all(r.max_gap_mm > 0))),
    ):
        hours = found[limit].hours
        if hours > 0.01:
            assert holds(read(hours - 1e-3))
        assert not holds(read(hours + 1e-3))
    hours, dead = found["opens late"].hours, found["never opens"].hours
    if 1.0 < hours < dead - 1.0:
        assert brentq(late, 0.0, min(hours * 1.05 + 1.0, dead - 1e-6), xtol=1e-9) == pytest.approx(hours, abs=1e-3)
    elif hours == 0.0:
        assert late(0.0) > -1e-9
    else:
        assert late(min(hours, dead) - 1e-3) < 1e-6


def test_the_first_to_leave_comes_first_and_names_its_lobe():
    magneto = steady(condition={"lobe_lift_error_mm": (0.0, 0.0, -0.03, 0.0)})
    found = leavings(magneto, 0.0, 0.0, WearRates(0.02))
    hours = [leaving.hours for leaving in found]
    assert hours == sorted(hours)
    gap = next(leaving for leaving in found if leaving.limit == "gap too small")
    assert gap.lobe == 3
    assert gap.hours == pytest.approx(0.02 / (0.0002 * RATIO), rel=1e-9)


@pytest.mark.parametrize(
    ("plate", "screw", "limit"),
    [(3.0, 0.0, "opens late"), (-3.0, 0.0, "opens early"), (0.0, 8.0, "gap too small"), (0.0, -8.0, "gap too wide")],
)
def test_a_limit_left_from_the_start(plate, screw, limit):
    assert by_limit(steady(), plate, screw, RATES)[limit].hours == 0.0
    assert by_limit(steady(), 0.0, 0.0, RATES)[limit].hours > 0.0


def test_a_compensated_cam_is_judged_on_lobe_one():
    """All lobes but the first open late by far; only the first counts, and the gap is every lobe's."""
    late = (0.0, *(2.0,) * 8)
    magneto = find_magneto("nine-radial")
    assert magneto.compensated
    off = magneto.model_copy(
        update={"condition": magneto.condition.model_copy(update={"lobe_angle_error_deg": late})}
    )
    assert by_limit(off, 0.0, 0.0, RATES)["opens late"] == by_limit(magneto, 0.0, 0.0, RATES)["opens late"]
    assert course(off, 0.0, 0.0, RATES, 0.0).within_limits
    assert not course(off, 0.0, 0.0, RATES, 0.0).timing_ok[1:].any()


def test_without_wear_nothing_leaves():
    assert all(math.isinf(leaving.hours) for leaving in leavings(steady(), 0.0, 0.0, WearRates(0.0)))


def test_contacts_that_never_opened_need_no_wear_for_it():
    found = by_limit(steady(), 0.0, 40.0, WearRates(0.0))
    assert (found["never opens"].hours, found["gap too small"].hours) == (0.0, 0.0)
    assert not course(steady(), 0.0, 40.0, WearRates(0.0), 0.0).timing_ok.any()


# ---------------------------------------------------------------------- both ways


def test_burnt_faces_open_earlier_and_wider_by_what_they_lost():
    """Common practice: heel wear closes the gap and opens late, burnt faces widen it and open early."""
    hours = np.linspace(0.0, 200.0, 21)
    rates = WearRates(0.0, faces_mm_per_100h=0.01)
    found = course(steady(), 0.0, 0.0, rates, hours)
    np.testing.assert_allclose(found.gap_mm[:, 0], 0.25 + 0.0001 * hours, atol=1e-12)
    assert np.all(np.diff(found.opening_error_deg[:, 0]) < 0)
    left = by_limit(steady(), 0.0, 0.0, rates)
    assert left["gap too wide"].hours == pytest.approx(0.05 / 0.0001, rel=1e-9)
    assert math.isinf(left["gap too small"].hours) and math.isinf(left["opens late"].hours)


def test_heel_and_faces_that_go_alike_leave_gap_and_opening_where_they_are():
    found = course(steady(), 0.0, 0.0, WearRates(0.01, 0.0, 0.01 * RATIO), [0.0, 1000.0])
    np.testing.assert_allclose(found.gap_mm[0], found.gap_mm[1])
    np.testing.assert_allclose(found.opening_error_deg[0], found.opening_error_deg[1], atol=1e-9)


@few
@given(magnetos(), st.floats(0.3, 0.7), st.floats(0.0, 0.02), st.floats(0.0, 0.05))
def test_with_faces_the_hours_are_still_those_at_which_a_worn_magneto_leaves(magneto, share, heel, faces):
    assume(magneto.breaker.heel_arm_mm is not None)
    low, high = magneto.backplate.range_deg
    plate, rates = low + share * (high - low), WearRates(heel, 0.0, faces)
    judged, bounds = slice(0, 1) if magneto.compensated else slice(None), magneto.gap_limits_mm

    def within(limit, hours):
        read = InternalTiming(worn(magneto, rates, hours)).readings(plate, 0.0)
        error, ok = read.e_gap_error_deg[judged], read.timing_ok[judged]
        return {
            "opens late": not np.any(~ok & (error > 0)),
            "opens early": not np.any(~ok & (error < 0)),
            "gap too small": np.all(read.max_gap_mm >= bounds[0]),
            "gap too wide": np.all(read.max_gap_mm <= bounds[1]),
            "blade gap too small": np.all(read.blade_gap_mm >= bounds[0]),
            "never opens": np.all(read.max_gap_mm > 0),
            "never closes": not np.all(np.isnan(read.opens_deg)),
        }[limit]

    found = by_limit(magneto, plate, 0.0, rates)
    ends = {"never opens", "never closes"}
    works_until = min(found[limit].hours for limit in ends)
    for limit, leaving in found.items():
        if 1.0 < leaving.hours < 5000.0:
            assert within(limit, leaving.hours - 0.1), limit
            # Contacts that no longer work have no opening that could be early or late.
            if limit in ends or not limit.startswith("opens") or leaving.hours + 0.1 < works_until:
                assert not within(limit, leaving.hours + 0.1), limit


def test_the_engine_s_tolerance_is_in_crank_degrees_by_the_gears():
    """A later opening by Δ rotor degrees fires Δ/k crank degrees later: 0.5° late of ±1° leaves 0.5·k to go."""
    magneto, k = steady(marks={"radius_mm": 36.0, "tolerance_mm": 5.0}), 7 / 8
    now = InternalTiming(magneto).readings(0.0, 0.0)

    def moved(rates, early, limit):
        found = {x.limit: x for x in leavings(magneto, 0.0, 0.0, rates, Firing(early, 1.0, k))}
        then = InternalTiming(worn(magneto, rates, found[limit].hours)).readings(0.0, 0.0)
        return float(then.opens_deg[0] - now.opens_deg[0]) / k

    heel, faces = WearRates(0.005), WearRates(0.0, 0.0, 0.005)
    assert moved(heel, -0.5, "fires late") == pytest.approx(0.5, abs=1e-6)
    assert moved(heel, 0.25, "fires late") == pytest.approx(1.25, abs=1e-6)
    assert moved(faces, 0.25, "fires early") == pytest.approx(-0.75, abs=1e-6)
    out = {x.limit: x for x in leavings(magneto, 0.0, 0.0, heel, Firing(-1.5, 1.0, k))}
    assert out["fires late"].hours == 0.0 and math.isinf(out["fires early"].hours)


def test_which_gap_lasts_longest_depends_on_what_wears():
    """By the gap's limits alone: closing, the largest gap has furthest to go; widening, the smallest."""
    gaps, wide = (0.2, 0.25, 0.3), steady(marks={"radius_mm": 36.0, "tolerance_mm": 5.0})
    closing = [one.hours for one in lasting(wide, gaps, WearRates(0.01))]
    widening = [one.hours for one in lasting(wide, gaps, WearRates(0.0, 0.0, 0.01))]
    assert closing[0] == pytest.approx(0.0, abs=1e-6) and closing[2] > closing[1]
    assert widening[2] == pytest.approx(0.0, abs=1e-6) and widening[0] > widening[1]
    # Where the marks go first, a larger gap gains nothing by its room: all leave by the opening.
    narrow = lasting(steady(marks={"radius_mm": 36.0, "tolerance_mm": 0.05}), (0.24, 0.27), WearRates(0.01))
    assert {one.limit for one in narrow} == {"opens late"}


# ---------------------------------------------------------------------- refused


def test_a_file_that_does_not_say_where_the_heel_sits():
    magneto = find_magneto("traced-six")
    assert magneto.breaker.heel_arm_mm is None
    for refuse in (
        lambda: course(magneto, 0.0, 0.0, RATES, 10.0),
        lambda: leavings(magneto, 0.0, 0.0, RATES),
        lambda: worn(magneto, RATES, 10.0),
    ):
        with pytest.raises(ValueError, match="heel_arm_mm"):
            refuse()
    pips = course(magneto, 0.0, 0.0, WearRates(0.0, 0.1), [0.0, 100.0])
    np.testing.assert_allclose(pips.gap_mm[0] - pips.blade_gap_mm[1], 0.1)


def test_rates_hours_and_wear_out_of_bounds():
    for rates in ((-0.1, 0.0), (0.0, -0.1), (math.nan, 0.0), (0.0, math.inf)):
        with pytest.raises(ValueError, match="0 or more"):
            WearRates(*rates)
    for hours in (-1.0, [0.0, math.nan], math.inf):
        with pytest.raises(ValueError, match="0 or more"):
            course(steady(), 0.0, 0.0, RATES, hours)
    for hours in (-1.0, 1e9):
        with pytest.raises(ValueError, match="would have lost"):
            worn(steady(), RATES, hours)


def test_inspections_out_of_bounds():
    """The bounds as the sentences state them are still allowed; a hair beyond is not."""
    for hours, gap, half, error, width in (
        (0.0, 0.0, 0.0, 0.0, 0.0),
        (100_000.0, 100.0, 100.0, 90.0, 90.0),
        (1.0, 0.3, 0.01, -90.0, 0.0),
        (1.0, 0.3, 0.01, None, 0.0),
    ):
        assert Inspection(hours, gap, half, error, width).opening_error_deg == error
    for sentence, bad in (
        ("hours lie between 0 and 100000", ({"hours": -1e-9}, {"hours": 100_000.1}, {"hours": math.nan})),
        ("the gap is .* between 0 and 100", ({"gap_mm": -1e-9}, {"gap_mm": 100.001}, {"gap_mm": math.nan})),
        ("gap's half-width .* between 0 and 100", ({"gap_half_width_mm": -1e-9}, {"gap_half_width_mm": 100.001})),
        ("opening's error .* within 90°", ({"opening_error_deg": -90.001}, {"opening_error_deg": 90.001})),
        ("opening's half-width .* within 90°", ({"opening_half_width_deg": 90.001},)),
    ):
        for changes in bad:
            with pytest.raises(ValueError, match=sentence):
                Inspection(**({"hours": 1.0, "gap_mm": 0.3, "gap_half_width_mm": 0.01} | changes))
