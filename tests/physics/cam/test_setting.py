"""Internal timing: what plate and screw do, and finding the setting back, over magnetos of every kind."""

import re
from dataclasses import fields

import numpy as np
import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st
from scipy.optimize import brentq

from magview.bench.reach_words import out_of_reach_words
from magview.physics.cam.setting import InternalTiming, ObstacleKind, Readings, internal_timing
from magview.spec.breaker import EccentricScrew
from magview.spec.library import find_magneto, shipped_names
from magview.spec.magneto import Condition, Magneto
from tests.counts import examples
from tests.magnetos import build, magnetos, plain
from tests.wording import says

few = settings(max_examples=examples(60), deadline=None)
shares = st.floats(0.0, 1.0)


def screw_span(magneto: Magneto) -> tuple[float, float]:
    """The part of the screw's range about 0 in which the stop moves one way."""
    low, high = magneto.contact_screw.range_deg
    return (max(low, -90.0), min(high, 90.0)) if isinstance(magneto.contact_screw, EccentricScrew) else (low, high)


def within(bounds: tuple[float, float], share: float) -> float:
    return bounds[0] + share * (bounds[1] - bounds[0])


# ---------------------------------------------------------------------- what the hands do


@few
@given(magnetos(), shares, shares, shares)
def test_plate_alone_moves_the_opening_and_never_the_gap(magneto, share, one, other):
    timing = InternalTiming(magneto)
    b1, b2 = within(magneto.backplate.range_deg, one), within(magneto.backplate.range_deg, other)
    screw = within(magneto.contact_screw.range_deg, share)
    first, second = timing.readings(b1, screw), timing.readings(b2, screw)
    np.testing.assert_array_equal(first.max_gap_mm, second.max_gap_mm)
    shift = (b2 - b1) / magneto.cam.turns_per_rotor_turn  # with rotation: later
    expected = np.where(np.isnan(first.opens_deg), np.nan, shift)
    np.testing.assert_allclose(second.opens_deg - first.opens_deg, expected, atol=1e-9)
    np.testing.assert_allclose(second.dwell_deg, first.dwell_deg, atol=1e-9)


@few
@given(magnetos(), shares, shares)
def test_screw_alone_moves_both(magneto, one, other):
    """Contacts closer: every lobe's gap narrower by what the stop moved, opening later, closing sooner."""
    timing = InternalTiming(magneto)
    assume(abs(one - other) > 1e-3)
    apart, close = (within(screw_span(magneto), s) for s in sorted((one, other)))
    wide, narrow = timing.readings(0.0, apart), timing.readings(0.0, close)
    works = np.isfinite(wide.opens_deg) & np.isfinite(narrow.opens_deg)
    assume(works.any())
    assert np.all(narrow.max_gap_mm[works] < wide.max_gap_mm[works])
    assert np.all(narrow.opens_deg[works] > wide.opens_deg[works])
    assert np.all(narrow.closes_deg[works] < wide.closes_deg[works])


@few
@given(magnetos(), shares, shares)
def test_reset_to_open_at_the_e_gap_the_plate_widens_with_rotation(magneto, one, other):
    timing = InternalTiming(magneto)
    assume(abs(one - other) > 0.01)
    plates = [within(magneto.backplate.range_deg, s) for s in sorted((one, other))]
    gaps = []
    for plate in plates:

        def late(screw: float, plate: float = plate) -> float:
            return float(timing.readings(plate, screw).e_gap_error_deg[0])

        span = np.linspace(*screw_span(magneto), 101)
        errors = timing.readings(plate, span).e_gap_error_deg[:, 0]
        crossing = np.flatnonzero((errors[:-1] < 0) & (errors[1:] > 0))
        assume(len(crossing) == 1)
        screw = brentq(late, span[crossing[0]], span[crossing[0] + 1], xtol=1e-10)
        gaps.append(float(timing.readings(plate, screw).max_gap_mm[0]))
    assert gaps[0] < gaps[1]


@few
@given(magnetos(worn=False))
def test_designed_setting_opens_at_the_e_gap_with_the_designed_gap(magneto):
    read = InternalTiming(magneto).readings(magneto.designed_setting.backplate_deg, 0.0)
    assert read.opens_deg[0] == pytest.approx(magneto.e_gap_deg, abs=1e-9)
    np.testing.assert_allclose(read.e_gap_error_deg, 0, atol=1e-9)
    np.testing.assert_allclose(read.max_gap_mm, magneto.designed_setting.gap_mm, atol=1e-12)
    if not magneto.compensated:  # a spark at every reversal of the flux
        spaces = np.diff(np.r_[read.opens_deg, read.opens_deg[0] + 360.0 * len(read.opens_deg) / magneto.poles])
        np.testing.assert_allclose(spaces, 360.0 / magneto.poles, atol=1e-9)


# ---------------------------------------------------------------------- condition


def timing_of(**condition) -> InternalTiming:
    return InternalTiming(build(condition=condition))


def test_heel_wear_opens_later_and_narrows_the_gap_by_the_arm_s_ratio():
    new, worn = timing_of().readings(1.0, 5.0), timing_of(heel_wear_mm=0.05).readings(1.0, 5.0)
    np.testing.assert_allclose(new.max_gap_mm - worn.max_gap_mm, 0.05 * 27.0 / 17.0, atol=1e-12)
    assert np.all(worn.opens_deg > new.opens_deg)
    assert np.all(worn.closes_deg < new.closes_deg)


def test_lobe_errors_touch_their_own_lobe():
    new = timing_of().readings(1.0, 5.0)
    moved = timing_of(lobe_angle_error_deg=(0.0, 0.0, 0.5, 0.0)).readings(1.0, 5.0)
    np.testing.assert_allclose(moved.opens_deg - new.opens_deg, [0, 0, 0.5, 0], atol=1e-12)
    np.testing.assert_allclose(moved.e_gap_error_deg - new.e_gap_error_deg, [0, 0, 0.5, 0], atol=1e-12)
    np.testing.assert_allclose(moved.dwell_deg - new.dwell_deg, [0, 0, 0.5, -0.5], atol=1e-12)
    higher = timing_of(lobe_lift_error_mm=(0.0, 0.02, 0.0, 0.0)).readings(1.0, 5.0)
    np.testing.assert_allclose(higher.max_gap_mm - new.max_gap_mm, [0, 0.02, 0, 0], atol=1e-12)
    assert higher.opens_deg[1] < new.opens_deg[1]


def test_pip_hides_its_height_from_the_blade():
    read = timing_of(pip_height_mm=0.04).readings(0.0, 0.0)
    np.testing.assert_allclose(read.max_gap_mm - read.blade_gap_mm, 0.04, atol=1e-12)
    assert timing_of(pip_height_mm=5.0).readings(0.0, 0.0).blade_gap_mm.max() == 0


def test_compensated_cam_is_judged_on_lobe_1():
    peaks = {"lobe_peaks_deg": (0.0, 88.0, 181.0, 269.0)}
    cam = {**plain()["cam"], **peaks}
    marks = {"radius_mm": 36.0, "tolerance_mm": 0.3}
    for late, passes in ((0, False), (2, True)):
        errors = tuple(3.0 * (i == late) for i in range(4))
        timing = InternalTiming(build(cam=cam, marks=marks, condition={"lobe_angle_error_deg": errors}))
        read = timing.readings(0.0, 0.0)
        # Each lobe against its own place: opens − place is the error put in, one rotor turn per cam turn.
        np.testing.assert_allclose(read.e_gap_error_deg, errors, atol=1e-9)
        assert bool(read.within_limits) is passes


# ---------------------------------------------------------------------- shape of the readings


@few
@given(magnetos(), st.lists(shares, min_size=2, max_size=3), st.lists(shares, min_size=3, max_size=4))
def test_arrays_equal_a_loop_of_scalars(magneto, plates, screws):
    timing = InternalTiming(magneto)
    b = np.array([within(magneto.backplate.range_deg, s) for s in plates])
    sigma = np.array([within(magneto.contact_screw.range_deg, s) for s in screws])
    grid = timing.readings(b[:, None], sigma)
    error, gap = timing.opening_and_gap(b[:, None], sigma)
    assert error.shape == gap.shape == (len(b), len(sigma))
    for i, j in np.ndindex(len(b), len(sigma)):
        alone = timing.readings(b[i], sigma[j])
        for field in fields(Readings):
            np.testing.assert_array_equal(getattr(grid, field.name)[i, j], getattr(alone, field.name), field.name)
        np.testing.assert_allclose(error[i, j], alone.e_gap_error_deg[0], atol=1e-11)
        np.testing.assert_allclose(gap[i, j], alone.max_gap_mm[0], atol=1e-14)


def test_contacts_that_never_open_or_never_close_read_nan():
    screw = {"kind": "threaded", "lead_mm": 1.0, "range_deg": (-720.0, 720.0), "positive_is_clockwise": True}
    timing = InternalTiming(build(contact_screw=screw, condition={"lobe_lift_error_mm": (0.0, 0.1, 0.0, 0.0)}))
    shut = timing.readings(0.0, 400.0)
    assert np.isnan(shut.opens_deg).all() and np.isnan(shut.closes_deg).all() and np.isnan(shut.dwell_deg).all()
    assert (shut.max_gap_mm == 0).all() and not shut.within_limits and np.isnan(shut.mark_offset_mm)
    ajar = timing.readings(0.0, -400.0)
    assert np.isnan(ajar.opens_deg).all() and np.isnan(ajar.dwell_deg).all() and not ajar.within_limits
    assert (ajar.max_gap_mm > timing.curve.top_mm).all()
    # Stop exactly at the base circle: the limit counts as never closing.
    edge = {
        "kind": "measured",
        "angle_deg": (-30.0, -9.0, 0.0, 9.0, 30.0),
        "contact_lift_mm": (0.0, 0.1, 0.5, 0.1, 0.0),
    }
    traced = InternalTiming(build(cam={**plain()["cam"], "profile": edge}, contact_screw=screw))
    assert traced.stop_mm(-90.0) == 0.0 and np.isnan(traced.readings(0.0, -90.0).opens_deg).all()
    # Only the high lobe still opens: closed for the rest of the turn.
    lone = timing.readings(0.0, 360.0 * (0.25 + 0.05))
    assert np.isnan(lone.opens_deg).tolist() == [True, False, True, True]
    assert lone.dwell_deg[1] == pytest.approx(360.0 - (lone.closes_deg[1] - lone.opens_deg[1]), abs=1e-9)
    assert np.isnan(timing.gap_mm(np.nan, 0.0, 0.0))


@few
@given(magnetos(), shares, shares)
def test_closed_and_open_spans_add_up_to_the_turn(magneto, plate, screw):
    timing = InternalTiming(magneto)
    read = timing.readings(within(magneto.backplate.range_deg, plate), within(screw_span(magneto), screw))
    works = np.isfinite(read.opens_deg)
    assume(works.any())
    spans = read.dwell_deg[works] + read.closes_deg[works] - read.opens_deg[works]
    assert spans.sum() == pytest.approx(360.0 / magneto.cam.turns_per_rotor_turn, abs=1e-8)
    assert np.all(read.closes_deg[works] >= read.opens_deg[works])


@few
@given(magnetos(), shares, shares, st.integers(-2, 2))
def test_gap_is_nought_at_opening_and_closing_and_largest_at_the_top(magneto, plate, screw, turns):
    timing = InternalTiming(magneto)
    b, sigma = within(magneto.backplate.range_deg, plate), within(screw_span(magneto), screw)
    read = timing.readings(b, sigma)
    works = np.isfinite(read.opens_deg) & (read.max_gap_mm > 1e-3 * timing.curve.top_mm)
    works &= float(timing.stop_mm(sigma)) + timing.wear_lift_mm > 1e-3 * timing.curve.top_mm
    assume(works.any())
    turn = turns * 360.0 / timing.ratio
    opens, closes = read.opens_deg[works] + turn, read.closes_deg[works] + turn
    tops = (timing.peaks_deg[works] + b) / timing.ratio + turn
    hair = 1e-4 / timing.ratio
    for edge, out in ((opens, -hair), (closes, hair)):
        np.testing.assert_allclose(timing.gap_mm(edge, b, sigma), 0, atol=1e-9)
        assert np.all(timing.gap_mm(edge + out, b, sigma) == 0)
        assert np.all(timing.gap_mm(edge - out, b, sigma) > 0)
    np.testing.assert_allclose(timing.gap_mm(tops, b, sigma), read.max_gap_mm[works], atol=1e-12)
    scan = timing.gap_mm(np.linspace(0, 360 / timing.ratio, 2001), b, sigma)
    assert scan.max() <= read.max_gap_mm.max() + 1e-12


def test_one_wide_lobe_lifts_all_the_way_round():
    """A lobe may reach more than half a turn to one side of its top."""
    profile = {**plain()["cam"]["profile"], "rise_deg": 250.0, "dwell_deg": 10.0, "fall_deg": 60.0}
    cam = {"turns_per_rotor_turn": 1.0, "lobe_peaks_deg": (0.0,), "profile": profile}
    timing = InternalTiming(build(cam=cam, designed_setting={"backplate_deg": 0.0, "gap_mm": 0.6}))
    read = timing.readings(0.0, 0.0)
    around = timing.gap_mm(np.linspace(read.opens_deg[0], read.closes_deg[0], 400)[1:-1], 0.0, 0.0)
    assert np.all(around > 0)
    assert read.closes_deg[0] - read.opens_deg[0] > 180


@given(st.floats(-400, 400), st.floats(0.3, 2.0), st.floats(5, 80))
def test_mark_offset_is_the_tangent_of_the_cam_angle_and_odd(error, ratio, radius):
    """guide: theory-setting: radius·tan(c·error). Beyond a quarter turn of the cam the straightedge meets no rim."""
    cam = {**plain()["cam"], "turns_per_rotor_turn": ratio}
    timing = InternalTiming(build(cam=cam, marks={"radius_mm": radius, "tolerance_mm": 0.8}))
    offset = float(timing.mark_offset_mm(error))
    if abs(error * ratio) >= 90:
        assert np.isnan(offset)
    else:
        assert offset == pytest.approx(radius * np.tan(np.radians(error * ratio)), rel=1e-12)
        assert offset == -timing.mark_offset_mm(-error)


# ---------------------------------------------------------------------- and back


@few
@given(magnetos(), shares)
def test_adjustment_reads_back_the_gap_asked_for_and_no_error(magneto, share):
    timing = InternalTiming(magneto)
    top = timing.curve.top_mm + timing.lift_errors_mm[0]
    wanted = top * (0.01 + 0.98 * share)
    found = timing.adjust(wanted)
    assume(found.reachable)
    read = timing.readings(found.backplate_deg, found.screw_deg)
    assert read.e_gap_error_deg[0] == pytest.approx(0, abs=1e-6)
    assert read.max_gap_mm[0] == pytest.approx(wanted, abs=1e-9)
    assert found.nearest_gap_mm == wanted and found.obstacles == ()
    for value, (low, high) in (
        (found.backplate_deg, magneto.backplate.range_deg),
        (found.screw_deg, magneto.contact_screw.range_deg),
    ):
        assert low - 1e-8 <= value <= high + 1e-8


def reachable_gaps(timing: InternalTiming) -> np.ndarray:
    """By trying the screw all along its travel and asking where the plate would have to stand."""
    screw = np.linspace(*timing.magneto.contact_screw.range_deg, 20_001)
    read = timing.readings(0.0, screw)
    plate = -read.e_gap_error_deg[:, 0] * timing.ratio
    low, high = timing.magneto.backplate.range_deg
    return np.sort(read.max_gap_mm[(low <= plate) & (plate <= high), 0])


@few
@given(magnetos(), st.floats(0.0, 1.3))
def test_unreachable_gap_is_answered_with_the_nearest(magneto, share):
    timing = InternalTiming(magneto)
    wanted = share * (timing.curve.top_mm + timing.lift_errors_mm[0])
    found, gaps = timing.adjust(wanted), reachable_gaps(timing)
    if found.reachable:
        return
    assert np.isnan(found.backplate_deg) and np.isnan(found.screw_deg)
    assert "nan" not in out_of_reach_words(found)
    if np.isnan(found.nearest_gap_mm):
        assert gaps.size == 0
        return
    nearest = found.nearest_gap_mm
    assert timing.adjust(nearest).reachable
    said = re.search(r"nearest gap that can be had is ([\d.]+) mm", out_of_reach_words(found))
    assert said is not None and timing.adjust(float(said[1])).reachable, "what is said must not be refused"
    # The screw was tried in steps; no gap found lies nearer to the one asked for.
    step = np.ptp(timing.stop_mm(np.linspace(*magneto.contact_screw.range_deg, 20_001))) / 5000
    between = (min(wanted, nearest) + 1e-6 < gaps) & (gaps < max(wanted, nearest) - 1e-6)
    assert not between.any()
    assert gaps.size == 0 or np.abs(gaps - nearest).min() < step + 1e-5


@few
@given(magnetos(), st.floats(0.0, 1.3) | st.just(0.0), st.floats(-9.0, 9.0) | st.just(0.0))
def test_the_nearest_gap_can_be_set_where_tightening_carries_the_screw(magneto, share, creep):
    timing, (low, high) = InternalTiming(magneto), magneto.contact_screw.range_deg
    found = timing.adjust(share * timing.curve.top_mm, creep)
    if not found.reachable:
        if np.isnan(found.nearest_gap_mm):
            return
        found = timing.adjust(found.nearest_gap_mm, creep)
        assert found.reachable
    for stands in (found.screw_deg, found.screw_deg - creep):
        assert low - 1e-6 <= stands <= high + 1e-6
    assert float(timing.readings(found.backplate_deg, found.screw_deg).e_gap_error_deg[0]) == pytest.approx(
        0, abs=1e-6
    )


def test_the_nearest_gap_at_the_full_throw_is_one_that_is_accepted():
    """Designed gap ± the throw of 0.1 mm: in binary many of these sums lie a last bit beyond the throw."""
    screw = {**plain()["contact_screw"], "throw_mm": 0.1, "range_deg": (-120.0, 120.0)}
    for thousandths in range(120, 200):
        gap = thousandths / 1000
        designed = {"backplate_deg": 0.0, "gap_mm": gap}
        timing = InternalTiming(build(contact_screw=screw, designed_setting=designed))
        for wanted, nearest in ((gap + 0.15, gap + 0.1), (gap - 0.11, gap - 0.1)):
            found = timing.adjust(wanted)
            assert not found.reachable and found.nearest_gap_mm == pytest.approx(nearest, abs=1e-9)
            assert timing.adjust(found.nearest_gap_mm).reachable, gap


@pytest.mark.parametrize(("lobes_moved_deg", "where"), [(-22.0, "dwell"), (-29.0, "past"), (25.0, "foot")])
def test_no_gap_is_offered_where_the_whole_slot_misses_the_flank(lobes_moved_deg, where):
    """All lobes made early or late by so much that, at the E-gap, the heel rides no rise anywhere in the slot."""
    profile = {**plain()["cam"]["profile"], "dwell_deg": 20.0}
    timing = InternalTiming(
        build(
            cam={**plain()["cam"], "profile": profile},
            backplate={"range_deg": (-1.0, 1.0)},
            condition={"lobe_angle_error_deg": (lobes_moved_deg,) * 4},
        )
    )
    assert reachable_gaps(timing).size == 0, where
    for wanted in (0.0, 0.1, 0.4):
        found = timing.adjust(wanted)
        assert not found.reachable and np.isnan(found.nearest_gap_mm)
        assert says("no gap within reach opens at the E-gap") in out_of_reach_words(found)


@pytest.mark.parametrize("profile", ["law", "measured"])
def test_a_gap_of_nought_is_no_setting_in_which_contacts_open(profile):
    """At the very top of a lobe the last bit decides whether contacts touch; a hair below it they open."""
    angle = np.linspace(-20.0, 20.0, 41)
    for top in np.linspace(0.3, 0.7, 40):
        lift = tuple((top * np.cos(np.pi * angle / 40.0) ** 2).tolist())
        measured = {"kind": "measured", "angle_deg": tuple(angle.tolist()), "contact_lift_mm": lift}
        by_law = {
            **plain()["cam"]["profile"],
            "lift_mm": float(top),
            "dwell_deg": 0.0,
            "rise_deg": 26.0,
            "fall_deg": 26.0,
        }
        timing = InternalTiming(
            build(
                cam={
                    "turns_per_rotor_turn": 2 / 3,
                    "lobe_peaks_deg": tuple(60.0 * lobe for lobe in range(6)),
                    "profile": measured if profile == "measured" else by_law,
                },
                backplate={"range_deg": (-60.0, 60.0)},
                contact_screw={**plain()["contact_screw"], "throw_mm": 1.0, "range_deg": (-90.0, 90.0)},
            )
        )
        found = timing.adjust(0.0)
        assert not found.reachable and [o.kind for o in found.obstacles] == [ObstacleKind.NEVER_OPENS]
        assert 0.0 < found.nearest_gap_mm < 1e-5
        nearest = timing.adjust(found.nearest_gap_mm)
        assert nearest.reachable
        read = timing.readings(nearest.backplate_deg, nearest.screw_deg)
        assert float(read.e_gap_error_deg[0]) == pytest.approx(0.0, abs=1e-6)


@pytest.mark.parametrize("wanted", [0.02, 0.55])
def test_nearest_gap_counts_wear_and_lobe_1_s_own_height(wanted):
    condition = {"heel_wear_mm": 0.03, "lobe_lift_error_mm": (0.08, 0.0, 0.0, -0.02)}
    timing = InternalTiming(build(backplate={"range_deg": (-1.0, 1.0)}, condition=condition))
    gaps, found = reachable_gaps(timing), timing.adjust(wanted)
    assert not found.reachable
    assert found.nearest_gap_mm == pytest.approx(gaps[np.abs(gaps - wanted).argmin()], abs=5e-5)


def test_eccentric_past_its_dead_centre_is_used_where_its_travel_allows():
    """−15° is outside the travel, but 195° lifts the stop as much."""
    screw = {**plain()["contact_screw"], "range_deg": (-10.0, 200.0)}
    timing = InternalTiming(build(contact_screw=screw, backplate={"range_deg": (-30.0, 30.0)}))
    found = timing.adjust(float(timing.readings(0.0, 195.0).max_gap_mm[0]))
    assert found.reachable and found.screw_deg == pytest.approx(195.0, abs=1e-9)


@pytest.mark.parametrize("travel", [(-20.0, 280.0), (-280.0, 20.0), (-95.0, 100.0)])
def test_an_eccentric_that_turns_over_its_dead_centres_reaches_its_whole_throw(travel):
    """Designed for 0.25 mm with a throw of 0.05 mm: 0.20 mm to 0.30 mm, at odd quarter turns inside the travel."""
    screw = {**plain()["contact_screw"], "throw_mm": 0.05, "range_deg": travel}
    timing = InternalTiming(build(contact_screw=screw, backplate={"range_deg": (-30.0, 30.0)}))
    assert timing.adjust(0.39).nearest_gap_mm == pytest.approx(0.30, abs=1e-9)
    assert timing.adjust(0.11).nearest_gap_mm == pytest.approx(0.20, abs=1e-9)


def test_an_eccentric_at_its_dead_centre_is_the_end_of_neither_slot_nor_travel():
    """Its travel goes on to ±120°, yet a quarter turn moves the contact as far as it can go."""
    screw = {**plain()["contact_screw"], "throw_mm": 0.03, "range_deg": (-120.0, 120.0)}
    timing = InternalTiming(build(contact_screw=screw))
    found = timing.adjust(0.4)
    assert not found.reachable and [o.kind for o in found.obstacles] == [ObstacleKind.THROW]
    assert found.nearest_gap_mm == pytest.approx(float(timing.readings(0.0, -90.0).max_gap_mm[0]), abs=1e-6)
    assert found.nearest_at is None and out_of_reach_words(found).endswith(" in)")


@pytest.mark.parametrize("gap", [-0.1, float("nan"), float("inf")])
def test_adjust_refuses_what_is_no_gap(gap):
    with pytest.raises(ValueError, match="it must be 0 or more"):
        timing_of().adjust(gap)


def test_reason_names_what_is_in_the_way_and_by_how_much():
    """Against two root searches of the readings: where the screw and then the plate would have to stand."""
    timing = InternalTiming(build(backplate={"range_deg": (-1.0, 1.0)}))
    wanted = 0.35
    screw = brentq(lambda s: float(timing.readings(0.0, s).max_gap_mm[0]) - wanted, -89, 89, xtol=1e-12)
    plate = -float(timing.readings(0.0, screw).e_gap_error_deg[0])
    found = timing.adjust(wanted)
    assert not found.reachable
    (obstacle,) = found.obstacles
    assert obstacle.kind is ObstacleKind.PLATE and obstacle.limits_deg == (-1.0, 1.0)
    assert obstacle.value == pytest.approx(plate, abs=1e-6)
    words = out_of_reach_words(found)
    assert f"backplate would stand at {plate:.2f}°, {plate - 1:.2f}° beyond the end of its slot (-1° to 1°)" in words
    assert found.nearest_at is ObstacleKind.PLATE and "with the backplate at the end of its slot" in words
    said = float(re.search(r"nearest gap that can be had is ([\d.]+) mm", words)[1])
    assert said == pytest.approx(found.nearest_gap_mm, abs=1e-4)
    assert timing.adjust(said).reachable, "what is offered must not be refused"
    tight = {**plain()["contact_screw"], "range_deg": (-5.0, 5.0)}
    found = InternalTiming(build(contact_screw=tight)).adjust(wanted)
    words = out_of_reach_words(found)
    assert f"contact screw would stand at {screw:.2f}°, {-5 - screw:.2f}° beyond the end of its travel" in words
    never = timing.adjust(timing.curve.top_mm)
    assert [o.kind for o in never.obstacles] == [ObstacleKind.NEVER_CLOSES]
    assert "lobe 1 lifts the contacts 0." in out_of_reach_words(never)
    short = InternalTiming(build(contact_screw={**plain()["contact_screw"], "throw_mm": 0.05})).adjust(wanted)
    assert "eccentric does not reach" in out_of_reach_words(short)


@pytest.mark.parametrize("name", shipped_names("magnetos"))
def test_lift_at_one_angle_and_at_many_are_the_same(name):
    magneto = find_magneto(name)
    lobes = len(magneto.cam.lobe_peaks_deg)
    worn = magneto.model_copy(
        update={
            "condition": Condition(
                lobe_lift_error_mm=tuple(-0.01 * i for i in range(lobes)),
                lobe_angle_error_deg=tuple(0.2 * (-1) ** i for i in range(lobes)),
                heel_wear_mm=0.05 if magneto.breaker.heel_arm_mm else 0.0,
            )
        }
    )
    timing = internal_timing(worn)
    angles = np.linspace(-400.0, 800.0, 2401)
    many = timing.lift_mm(angles, 1.3)
    one = [float(timing.lift_mm(float(a), 1.3)) for a in angles]
    np.testing.assert_allclose(one, many, rtol=0, atol=1e-12)


def test_burnt_faces_widen_the_gap_and_open_earlier():
    """Common practice. What the faces have lost, the gap has gained, on every lobe; the cam stands where it stood."""
    new = InternalTiming(build()).readings(0.0, 0.0)
    burnt = InternalTiming(build(condition={"face_burn_mm": 0.03}))
    read = burnt.readings(0.0, 0.0)
    np.testing.assert_allclose(read.max_gap_mm - new.max_gap_mm, 0.03, atol=1e-12)
    assert np.all(read.e_gap_error_deg < new.e_gap_error_deg)
    np.testing.assert_array_equal(burnt.peaks_deg, InternalTiming(build()).peaks_deg)
    # Set right again, with the screw closer by what is gone: all as new.
    to = burnt.adjust(float(new.max_gap_mm[0]))
    assert to.reachable and to.screw_deg > 0.0
    np.testing.assert_allclose(burnt.readings(to.backplate_deg, to.screw_deg).opens_deg, new.opens_deg, atol=1e-9)
