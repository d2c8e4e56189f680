"""Trials and the flank they tell of: exact where the trials are, honest where they are not.

Truth comes from `InternalTiming`, whose own tests rest on brute-force geometry; the statistics from scipy's
distributions and from repeating the experiment.
"""

import json
import re
from math import inf, sqrt

import numpy as np
import pytest
from hypothesis import HealthCheck, assume, given, settings
from hypothesis import strategies as st
from scipy.stats import norm

from magview.physics.flank import Flank, scaled_magneto
from magview.physics.flank_fit import deviance_root, fit_flank, fitted_magneto
from magview.physics.setting import InternalTiming
from magview.physics.trials import (
    MAX_TRIALS,
    Budget,
    Doubt,
    Trial,
    marks_from_plate_deg,
    plate_deg_from_marks,
    plate_deg_from_slot_mm,
    slot_mm_from_plate_deg,
)
from magview.spec.base import SpecError
from magview.spec.files import dump_json, validate
from magview.spec.library import find_magneto, shipped_names
from magview.spec.magneto import Magneto
from tests.magnetos import build, magnetos, plain

few = settings(max_examples=15, suppress_health_check=[HealthCheck.too_slow])
PERFECT = Budget(1e-6, 1e-6, 0.0)


def truth(name: str, lift: float, rise: float, index: float) -> InternalTiming:
    """A shipped file as it would be drawn with other lift, rise and index; written out apart from the fit's way."""
    data = json.loads(dump_json(find_magneto(name)))
    profile = data["cam"]["profile"]
    if profile["kind"] == "law":
        profile["lift_mm"] *= lift
        profile["rise_deg"] *= rise
    else:
        profile["contact_lift_mm"] = [s * lift for s in profile["contact_lift_mm"]]
        profile["angle_deg"] = [a * rise if a < 0 else a for a in profile["angle_deg"]]
    data["designed_setting"]["backplate_deg"] += index
    return InternalTiming(validate(Magneto, tuples(data), "test"))


def tuples(value):
    if isinstance(value, dict):
        return {k: tuples(v) for k, v in value.items()}
    return tuple(tuples(v) for v in value) if isinstance(value, list) else value


def plate_at(timing: InternalTiming, gap: float) -> float:
    """Where the plate stands when lobe 1 opens at the E-gap with this gap, out of any slot too."""
    wide = timing.magneto.model_copy(
        update={
            "backplate": timing.magneto.backplate.model_copy(update={"range_deg": (-300.0, 300.0)}),
            "contact_screw": build(
                contact_screw={
                    "kind": "threaded",
                    "lead_mm": 100.0,
                    "range_deg": (-3000.0, 3000.0),
                    "positive_is_clockwise": True,
                }
            ).contact_screw,
        }
    )
    found = InternalTiming(wide).adjust(gap)
    assert found.reachable, found.reason
    return found.backplate_deg


def perfect_trials(timing: InternalTiming, shares: list[float]) -> list[Trial]:
    designed = timing.magneto.designed_setting.gap_mm
    return [Trial.reading(plate_at(timing, designed * s), designed * s) for s in shares]


# ---------------------------------------------------------------------- reading the plate


def test_a_radian_of_slot_is_as_long_as_its_radius():
    assert plate_deg_from_slot_mm(30.0, 30.0) == pytest.approx(180 / np.pi)
    assert plate_deg_from_slot_mm(-np.pi, 18.0) == pytest.approx(-10.0)  # 18 mm · 10° = π mm
    assert slot_mm_from_plate_deg(-10.0, 18.0) == pytest.approx(-np.pi)


def test_scale_marks_are_counted():
    np.testing.assert_allclose(plate_deg_from_marks([-3, 0, 4], 0.5), [-1.5, 0, 2])
    np.testing.assert_allclose(marks_from_plate_deg([-1.5, 0, 2], 0.5), [-3, 0, 4])


@pytest.mark.parametrize("bad", [0.0, -1.0, inf, float("nan")])
@pytest.mark.parametrize(
    "convert", [plate_deg_from_slot_mm, slot_mm_from_plate_deg, plate_deg_from_marks, marks_from_plate_deg]
)
def test_a_scale_that_cannot_be_is_refused(convert, bad):
    with pytest.raises(ValueError, match="must be above 0"):
        convert(1.0, bad)


# ---------------------------------------------------------------------- what a trial is


def test_blades_and_readings_give_intervals():
    assert (Trial.blades(1.0, 0.2, 0.25).gap_low_mm, Trial.blades(1.0, 0.2, 0.25).gap_high_mm) == (0.2, 0.25)
    assert (Trial.blades(0, None, 0.1).gap_low_mm, Trial.blades(0, 0.5, None).gap_high_mm) == (0.0, inf)
    near = Trial.reading(0.0, 0.2, 0.01)
    assert (near.gap_low_mm, near.gap_high_mm) == pytest.approx((0.19, 0.21))
    assert Trial.reading(0.0, 0.005, 0.01).gap_low_mm == 0.0
    assert Trial.blades(0.0, 0.2, 0.3).middle_mm == pytest.approx(0.25)
    assert Trial.blades(0.0, 0.2, None).middle_mm == 0.2


@pytest.mark.parametrize(
    ("make", "told"),
    [
        (lambda: Trial(float("nan"), 0.1, 0.2), "must lie within ±3600°"),
        (lambda: Trial(4000.0, 0.1, 0.2), "must lie within ±3600°"),
        (lambda: Trial(0.0, 0.1, 0.2, 60.0), "must lie within ±45°"),
        (lambda: Trial(0.0, 0.2, 0.1), "low end first"),
        (lambda: Trial(0.0, -0.1, 0.1), "above 0"),
        (lambda: Trial(0.0, 0.0, 0.0), "above 0"),
        (lambda: Trial(0.0, float("nan"), 0.1), "above 0"),
        (lambda: Trial(0.0, 0.1, 2000.0), "within 1000 mm"),
        (lambda: Trial.blades(0.0, None, None), "says nothing"),
        (lambda: Trial.reading(0.0, -0.1), "above 0"),
        (lambda: Trial.reading(0.0, 0.1, -1.0), "0 or more"),
        (lambda: Budget(-1.0), "0 or more"),
        (lambda: Budget(inf), "0 or more"),
        (lambda: Doubt(lift=0.0), "above 0"),
        (lambda: Doubt(index_deg=100.0), "at most 90"),
        (lambda: fit_flank(build(), [Trial(0, 0.1, 0.2)] * (MAX_TRIALS + 1)), "at most 200"),
        (lambda: fit_flank(build(), []).predict(0.0, 1.0), "between 0 and 1"),
    ],
)
def test_what_cannot_be_is_refused(make, told):
    with pytest.raises(ValueError, match=told):
        make()


def test_the_bounds_of_a_trial_themselves_are_allowed():
    for plate in (-3600.0, 3600.0):
        assert Trial(plate, 0.1, 0.2, plate / 80.0).opening_error_deg == plate / 80.0  # ±45°
    for low, high in ((1000.0, 1000.0), (1000.0, inf), (1.0, inf), (0.0, 0.5), (1e-9, inf), (0.2, 0.2)):
        assert (Trial(0.0, low, high).gap_low_mm, Trial(0.0, low, high).gap_high_mm) == (low, high)
    assert Trial.reading(0.0, 0.2, 0.0).gap_low_mm == 0.2
    assert Budget(0.0, 0.0, 0.0).blade_mm == 0.0
    for share, index in ((1.0, 90.0), (1e-6, 1e-6), (0.5, 0.5)):
        assert Doubt(share, share, index).index_deg == index


@pytest.mark.parametrize(
    "make",
    [
        lambda: Trial(3600.1, 0.1, 0.2),
        lambda: Trial(0.0, 0.1, 0.2, -45.1),
        lambda: Trial(0.0, 0.1, 1000.1),
        lambda: Trial(0.0, 1000.1, inf),
        lambda: Trial(0.0, 0.0, inf),
        lambda: Trial.reading(0.0, 0.2, inf),
        lambda: Budget(0.1, -1e-9),
        lambda: Budget(0.1, 0.1, -1e-9),
        lambda: Doubt(lift=1.001),
        lambda: Doubt(rise=0.0),
        lambda: Doubt(rise=1.001),
        lambda: Doubt(index_deg=0.0),
        lambda: Doubt(index_deg=90.001),
    ],
)
def test_a_hair_beyond_the_bounds_of_a_trial_is_refused(make):
    with pytest.raises(ValueError, match=r"must|says nothing"):
        make()


@few
@given(magnetos(), st.floats(-1.0, 1.0), st.floats(0.3, 0.7))
def test_an_opening_off_the_mark_is_a_plate_off_its_place(magneto, late, share):
    """Move the plate by c·e with the screw left alone: the opening moves by e, the gap not."""
    timing = InternalTiming(magneto)
    gap = share * magneto.designed_setting.gap_mm
    right = plate_at(timing, gap)
    ratio = magneto.cam.turns_per_rotor_turn
    trial = Trial(right + ratio * late, gap, gap, opening_error_deg=late)
    assert trial.plate_as_opened_deg(magneto) == pytest.approx(right, abs=1e-9)


@few
@given(magnetos(worn=False), st.floats(0.05, 3.0))
def test_the_mark_s_tolerance_along_the_plate_is_what_reads_so_at_the_rim(magneto, mark):
    largest, sd = Budget(mark, 0.0).setting_deg(magneto)
    rotor = largest / magneto.cam.turns_per_rotor_turn
    assert InternalTiming(magneto).mark_offset_mm(rotor) == pytest.approx(mark, rel=1e-9)
    assert sd == pytest.approx(largest / sqrt(3), rel=1e-12)  # rectangular: JCGM 100:2008, 4.3.7


def test_mark_and_plate_at_their_worst_add_up():
    """Both the same way is the largest error; independent, their squares add (JCGM 100:2008, 5.1.2)."""
    # A mark off by as much as its radius stands at 45°.
    largest, sd = Budget(36.0, 28.0).setting_deg(build(marks={"radius_mm": 36.0, "tolerance_mm": 0.8}))
    assert largest == pytest.approx(45.0 + 28.0)
    assert sd == pytest.approx(53.0 / sqrt(3))  # 28, 45, 53: right-angled


# ---------------------------------------------------------------------- lobe 1's flank


def straight(top_mm: float, rise_deg: float = 20.0) -> Flank:
    """A traced flank that rises straight: knots on a line have slopes on it, but at the very top."""
    x = np.r_[np.linspace(-rise_deg, 0.0, 11), np.linspace(4.0, 40.0, 10)]
    lift = top_mm * np.interp(x, [-rise_deg, 0.0, 40.0], [0.0, 1.0, 0.0])
    cam = plain()["cam"]
    profile = {"kind": "measured", "angle_deg": tuple(x), "contact_lift_mm": tuple(lift)}
    designed = {"backplate_deg": 3.0, "gap_mm": top_mm / 2}
    return Flank(build(cam={**cam, "profile": profile}, designed_setting=designed))


def test_the_plate_for_the_whole_lift_is_where_the_lobe_begins():
    """Half the lift is 10° before the top, its foot 20°: the plate stands 10° beyond the designed 3°."""
    np.testing.assert_allclose(straight(0.5).plate_deg([0.25, 0.5, 0.75]), [3.0, 13.0, 23.0], atol=1e-9)


@pytest.mark.parametrize("top_mm", [0.5, 2.0])
def test_the_slope_about_gaps_at_the_foot_and_beyond_is_the_foot_s(top_mm):
    """A gap as large as the lift or larger lies where the curve is level; its errors are judged on the flank."""
    slope = straight(top_mm).slope_mm_per_deg(top_mm * np.array([0.5, 0.97, 1.0, 1.5, 100.0]))
    np.testing.assert_allclose(slope, top_mm / 20.0, rtol=1e-6)


@pytest.mark.parametrize("error_mm", [-0.06, 0.0, 0.06])
def test_the_slope_is_that_of_the_lobe_as_it_is(error_mm):
    """Against plates that `InternalTiming` finds for gaps a little less and a little more."""
    magneto = build(condition={"lobe_lift_error_mm": (error_mm, 0.0, 0.0, 0.0)})
    timing, gaps, step = InternalTiming(magneto), np.array([0.1, 0.2, 0.28]), 1e-4
    run = [plate_at(timing, g + step) - plate_at(timing, g - step) for g in gaps]
    np.testing.assert_allclose(Flank(magneto).slope_mm_per_deg(gaps), 2 * step / np.array(run), rtol=1e-3)


# ---------------------------------------------------------------------- the fit


@few
@given(magnetos(), st.lists(st.floats(0.1, 1.3), min_size=3, max_size=6))
def test_with_no_trial_it_is_the_file_wear_and_lobe_errors_included(magneto, shares):
    timing, fit = InternalTiming(magneto), fit_flank(magneto, [])
    gaps = np.array(shares) * magneto.designed_setting.gap_mm
    assume(gaps.max() < 0.98 * fit.full_gap_mm)
    plates = np.array([plate_at(timing, g) for g in gaps])
    np.testing.assert_allclose(fit.plate_for_deg(gaps), plates, atol=1e-8)
    np.testing.assert_allclose(fit.predict(plates).gap_mm, gaps, atol=1e-8)
    assert (fit.lift_scale, fit.rise_scale, fit.shift_deg, fit.tried_deg) == (1.0, 1.0, 0.0, None)


@pytest.mark.parametrize("name", shipped_names("magnetos"))
def test_one_trial_moves_the_file_s_curve_to_go_through_it(name):
    magneto = find_magneto(name)
    gap = 1.2 * magneto.designed_setting.gap_mm
    wrong = plate_at(InternalTiming(magneto), gap) + 1.3
    fit = fit_flank(magneto, [Trial.reading(wrong, gap)])
    assert fit.predict(wrong).gap_mm == pytest.approx(gap, rel=0.01)
    exact = fit_flank(magneto, [Trial.reading(wrong, gap)], PERFECT)
    gaps = np.array([0.7, 1.0, 1.2]) * magneto.designed_setting.gap_mm
    moved = exact.plate_for_deg(gaps) - fit_flank(magneto, []).plate_for_deg(gaps)
    np.testing.assert_allclose(moved, 1.3, atol=0.02)  # the shape is the file's: nothing speaks against it
    assert exact.predict(wrong).gap_mm == pytest.approx(gap, abs=1e-6)


SCALES = [(1.15, 0.9, 1.3), (0.85, 1.15, -1.0), (1.1, 1.1, 0.0), (0.8, 0.85, 2.0)]


@pytest.mark.parametrize("name", shipped_names("magnetos"))
@pytest.mark.parametrize("wrong", SCALES)
def test_two_exact_trials_fix_the_flank_between_them(name, wrong):
    true = truth(name, *wrong)
    fit = fit_flank(find_magneto(name), perfect_trials(true, [0.6, 1.4]), PERFECT)
    designed = true.magneto.designed_setting.gap_mm
    for share, tolerance in ((0.6, 1e-6), (1.4, 1e-6), (0.8, 0.03), (1.0, 0.03), (1.2, 0.03)):
        gap = float(fit.predict(plate_at(true, share * designed)).gap_mm)
        assert gap == pytest.approx(share * designed, abs=tolerance * designed)


@pytest.mark.parametrize("name", shipped_names("magnetos"))
@pytest.mark.parametrize("wrong", SCALES)
def test_four_exact_trials_find_rise_lift_and_index(name, wrong):
    true = truth(name, *wrong)
    fit = fit_flank(find_magneto(name), perfect_trials(true, [0.4, 0.8, 1.2, 1.6]), PERFECT)
    assert (fit.lift_scale, fit.rise_scale, fit.shift_deg) == pytest.approx(wrong, abs=2e-3)
    assert fit.outliers == ()
    designed = true.magneto.designed_setting.gap_mm
    for share in (0.5, 1.0, 1.5):
        assert fit.predict(plate_at(true, share * designed)).gap_mm == pytest.approx(share * designed, abs=1e-5)


def test_the_opening_as_read_is_taken_into_account():
    """Trials that were set off the mark and say so tell as much as those that were not."""
    true = truth("nine-radial", 0.9, 1.1, -0.7)
    exact = perfect_trials(true, [0.5, 0.9, 1.3, 1.6])
    ratio = true.ratio
    off = [
        Trial(t.backplate_deg + ratio * late, t.gap_low_mm, t.gap_high_mm, late)
        for t, late in zip(exact, (1.0, -2.0, 0.5, -0.5), strict=True)
    ]
    fit = fit_flank(find_magneto("nine-radial"), off, PERFECT)
    assert (fit.lift_scale, fit.rise_scale, fit.shift_deg) == pytest.approx((0.9, 1.1, -0.7), abs=2e-3)


def test_the_stated_spread_is_that_of_the_repeated_experiment():
    """Second method: the experiment made again and again (JCGM 101:2008), against the linear propagation."""
    magneto, rng = find_magneto("seven-radial"), np.random.default_rng(3)
    timing, budget = InternalTiming(magneto), Budget(0.4, 0.1, 0.002)
    gaps = magneto.designed_setting.gap_mm * np.array([0.5, 0.7, 0.9, 1.1, 1.3, 1.5])
    plates = [plate_at(timing, g) for g in gaps]
    largest = np.degrees(np.arctan(0.4 / magneto.marks.radius_mm))
    shifts, said = [], []
    for _ in range(60):
        off = rng.uniform(-largest, largest, len(gaps)) + rng.uniform(-0.1, 0.1, len(gaps))
        trials = [Trial.reading(b + d, g) for b, d, g in zip(plates, off, gaps, strict=True)]
        fit = fit_flank(magneto, trials, budget)
        shifts.append(fit.shift_deg)
        said.append(fit.shift_sd_deg)
    # 60 repeats know a spread to about a tenth; twice that is allowed, and the hold on lift and rise.
    assert np.mean(said) == pytest.approx(np.std(shifts), rel=0.25)
    assert abs(np.mean(shifts)) < 3 * np.std(shifts) / sqrt(60)


def test_a_wide_interval_is_no_value_in_its_middle():
    """Go 0.01 mm below the true gap, no-go a quarter of a millimetre above: the middles lie far off the curve."""
    magneto = find_magneto("seven-radial")
    timing, designed = InternalTiming(magneto), magneto.designed_setting.gap_mm
    tight = Trial.reading(plate_at(timing, designed), designed)
    wide = [Trial.blades(plate_at(timing, g), g - 0.01, g + 0.25) for g in (0.8 * designed, 1.1 * designed)]
    fit = fit_flank(magneto, [tight, *wide], Budget(0.2, 0.05))
    middles = [Trial.reading(t.backplate_deg, t.middle_mm) for t in wide]
    faked = fit_flank(magneto, [tight, *middles], Budget(0.2, 0.05))
    assert abs(fit.predict(tight.backplate_deg).gap_mm - designed) < 0.006
    assert np.all(np.abs(fit.misfits) < 1.5)
    assert np.abs(faked.misfits).max() > 4.0  # as values they would contradict the tight one


def test_one_blade_alone_tells_a_bound_and_no_more():
    magneto = find_magneto("seven-radial")
    wider = fit_flank(magneto, [Trial.blades(0.0, 0.4, None)])
    there = wider.predict(0.0)
    assert there.gap_mm > 0.35
    assert there.high_mm - there.gap_mm > 0.1  # nothing said how much wider
    content = fit_flank(magneto, [Trial.blades(0.0, 0.05, None)])
    assert abs(content.shift_deg) < 0.2  # the file agrees, so nothing moves
    none_goes = fit_flank(magneto, [Trial.blades(0.0, None, 0.0254)])
    assert none_goes.predict(0.0).gap_mm < 0.05


def test_a_wrong_trial_is_found_and_left_out():
    true = truth("seven-radial", 1.05, 0.95, 0.5)
    rng = np.random.default_rng(8)
    trials = [
        Trial.reading(t.backplate_deg + rng.uniform(-0.3, 0.3), t.gap_low_mm, 0.0127)
        for t in perfect_trials(true, [0.5, 0.7, 0.9, 1.1, 1.3, 1.5])
    ]
    budget = Budget(0.3, 0.1)
    wrong = list(trials)
    wrong[2] = Trial.reading(trials[2].backplate_deg, 2 * trials[2].middle_mm, 0.0127)
    fit, clean = (fit_flank(find_magneto("seven-radial"), t, budget) for t in (wrong, trials))
    assert fit.outliers == (2,)
    assert fit.misfits[2] > 4 and np.abs(np.delete(fit.misfits, 2)).max() < 2
    assert clean.outliers == ()
    plates = np.linspace(-3, 3, 13)
    assert np.abs(fit.predict(plates).gap_mm - clean.predict(plates).gap_mm).max() < 0.012


@pytest.mark.parametrize(
    ("wrong", "of", "left_out"), [((1,), 3, True), ((0, 4), 6, True), ((1,), 2, False), ((0, 4), 5, False)]
)
def test_one_in_three_and_no_more_may_be_left_out(wrong, of, left_out):
    """On a cam that is known, where each trial tells of the index alone: the wrong ones lie 20 deviations off."""
    magneto = find_magneto("seven-radial")
    trials = perfect_trials(InternalTiming(magneto), np.linspace(0.6, 1.2, of).tolist())
    for i in wrong:
        trials[i] = Trial.reading(trials[i].backplate_deg + 20 * 0.3 / sqrt(3), trials[i].middle_mm)
    budget = Budget(0.0, plate_deg=0.3, blade_mm=0.0)
    fit = fit_flank(magneto, trials, budget, Doubt(lift=1e-6, rise=1e-6, index_deg=10.0))
    assert fit.outliers == (wrong if left_out else ())


def test_the_fit_is_the_least_of_its_cost_tails_and_hold_together():
    """On a known cam the cost has one unknown, the index s, and can be written out and looked through.

    Σ 9 ln(1 + ((b − s)/σ)²/9) for plates b off the file's curve, Cauchy's loss of scale 3, and (s/hold)².
    """
    magneto = find_magneto("seven-radial")
    off, sd, hold = np.array([0.0, 0.1, 1.0]), 0.5 / sqrt(3), 10 * 0.05 / sqrt(3)
    exact = perfect_trials(InternalTiming(magneto), [0.7, 0.9, 1.1])
    trials = [Trial.reading(t.backplate_deg + b, t.middle_mm) for t, b in zip(exact, off, strict=True)]
    doubt = Doubt(lift=1e-6, rise=1e-6, index_deg=0.05)
    fit = fit_flank(magneto, trials, Budget(0.0, plate_deg=0.5, blade_mm=0.0), doubt)
    s = np.linspace(-1.0, 2.0, 30_001)
    cost = (9 * np.log1p(((off[:, None] - s) / sd) ** 2 / 9)).sum(axis=0) + (s / hold) ** 2
    assert fit.outliers == ()
    assert fit.shift_deg == pytest.approx(s[np.argmin(cost)], abs=5e-4)


def test_trials_that_all_contradict_each_other_widen_everything_and_blame_none():
    magneto = find_magneto("seven-radial")
    agree, quarrel = (
        fit_flank(magneto, [Trial.reading(0.0, g, 0.0127) for g in gaps])
        for gaps in ((0.23, 0.24, 0.22), (0.1, 0.23, 0.36))
    )
    assert quarrel.outliers == ()
    assert quarrel.shift_sd_deg > 2 * agree.shift_sd_deg


@few
@given(magnetos(), st.data())
def test_whatever_is_tried_the_answer_is_finite_and_in_order(magneto, data):
    full = fit_flank(magneto, []).full_gap_mm
    plate = st.floats(-20.0, 20.0)
    blades = st.tuples(st.floats(0.0, 1.5 * full), st.one_of(st.just(inf), st.floats(0.01, 0.5)))
    made = data.draw(st.lists(st.tuples(plate, blades), min_size=1, max_size=5))
    trials = [Trial(b, low, low + more) for b, (low, more) in made if low > 0 or more < inf]
    fit = fit_flank(magneto, trials)
    assert 0.3 < fit.lift_scale < 3 and 0.3 < fit.rise_scale < 3  # held: it never runs away
    assert np.isfinite([fit.shift_deg, fit.shift_sd_deg, fit.lift_scale_sd, fit.rise_scale_sd]).all()
    plates = np.linspace(-30, 30, 61)
    narrow, wide, as_set = (fit.predict(plates, p, s) for p, s in ((0.5, False), (0.95, False), (0.95, True)))
    chain = [as_set.low_mm, wide.low_mm, narrow.low_mm, narrow.gap_mm, narrow.high_mm, wide.high_mm, as_set.high_mm]
    assert np.all(np.diff(chain, axis=0) >= -1e-12)
    assert as_set.low_mm.min() >= 0 and as_set.high_mm.max() <= fit.full_gap_mm + 1e-12
    assert np.all(np.diff(wide.gap_mm) >= -1e-12)  # the gap never falls as the plate goes with rotation
    assert 0.0 <= fit.chance(0.0, magneto.gap_limits_mm) <= 1.0


# ---------------------------------------------------------------------- the misfit of an interval


@given(st.floats(-6, 6), st.floats(0.002, 8))
def test_deviance_root_is_the_likelihood_ratio_of_the_interval(middle, half):
    ours = float(deviance_root(np.array([middle - half]), np.array([middle + half]))[0])
    best, here = (norm.cdf(half) - norm.cdf(-half), norm.cdf(-abs(middle) + half) - norm.cdf(-abs(middle) - half))
    assert ours * abs(ours) == pytest.approx(np.sign(middle) * 2 * np.log(best / here), rel=1e-4, abs=1e-5)


@pytest.mark.parametrize("half", [0.002, 0.1, 1.0, 3.0])
@pytest.mark.parametrize("middle", [-0.009, 0.003, 0.009, 0.02])
def test_deviance_root_of_an_interval_all_but_centred(middle, half):
    """The deviance is then of the order of the middle's square, and must be right as a share of that."""
    ours = float(deviance_root(np.array([middle - half]), np.array([middle + half]))[0])
    best, here = (norm.cdf(m + half) - norm.cdf(m - half) for m in (0.0, middle))
    assert ours == pytest.approx(np.sign(middle) * sqrt(2 * np.log(best / here)), rel=1e-3)


def test_deviance_root_at_its_limits():
    point = np.array([-3.0, 0.0, 2.0, 80.0])
    np.testing.assert_allclose(deviance_root(point, point), point, atol=1e-12)
    open_end = deviance_root(np.array([-8.0, 0.0, 3.0, -inf, -inf]), np.array([inf, inf, inf, 8.0, -3.0]))
    # Φ(8) ≈ 1: nothing amiss; Φ(0) = 1/2; Φ(−3) from the normal table, 0.0013499.
    expected = [0, sqrt(2 * np.log(2)), sqrt(-2 * np.log(0.0013499)), 0, -sqrt(-2 * np.log(0.0013499))]
    np.testing.assert_allclose(open_end, expected, atol=1e-4)


# ---------------------------------------------------------------------- a file of one's own


@pytest.mark.parametrize("name", shipped_names("magnetos"))
def test_the_fitted_file_reads_as_the_fit_does_and_the_trials_are(name):
    true = truth(name, 1.1, 0.92, 0.8)
    trials = perfect_trials(true, [0.5, 0.9, 1.3])
    fit = fit_flank(find_magneto(name), trials, PERFECT)
    own = fitted_magneto(fit)
    again = validate(Magneto, tuples(json.loads(dump_json(own))), "test")
    assert again == own
    timing = InternalTiming(own)
    for trial in trials:
        assert plate_at(timing, trial.gap_low_mm) == pytest.approx(trial.backplate_deg, abs=1e-4)
    for gap in np.array([0.4, 1.0, 1.6]) * own.designed_setting.gap_mm:
        assert plate_at(timing, float(gap)) == pytest.approx(float(fit.plate_for_deg(gap)), abs=1e-8)
    assert own.name.endswith("fitted from 3 trials") and "Fitted from 3 trials" in own.notes
    assert fitted_magneto(fit, "Mine").name == "Mine"


@few
@given(magnetos(), st.floats(0.6, 1.2), st.floats(-0.5, 0.5))
def test_the_fitted_file_of_any_magneto_is_a_file(magneto, share, off):
    gap = share * magneto.designed_setting.gap_mm
    fit = fit_flank(magneto, [Trial.reading(plate_at(InternalTiming(magneto), gap) + off, gap, 0.0127)])
    own = fitted_magneto(fit)
    assert plate_at(InternalTiming(own), gap) == pytest.approx(float(fit.plate_for_deg(gap)), abs=1e-6)


@pytest.mark.parametrize("name", ["seven-radial", "traced-six"])
def test_the_fitted_file_notes_as_measured_what_it_changed_and_no_more(name):
    magneto = find_magneto(name)
    own = fitted_magneto(fit_flank(magneto, perfect_trials(truth(name, 1.1, 0.92, 0.8), [0.5, 0.9, 1.3]), PERFECT))
    was, now = dict(magneto.cam.profile), dict(own.cam.profile)
    changed = {f"cam.profile.{field}" for field in was if was[field] != now[field]}
    assert len(changed) == 2
    assert {s.field for s in own.sources if s.note == "fitted from 3 trials"} == changed | {"designed_setting"}
    assert {s.origin for s in own.sources if s.field in changed} == {"measured"}


def test_a_designed_setting_out_of_the_slot_is_brought_to_its_end():
    magneto = find_magneto("seven-radial")
    fit = fit_flank(magneto, [Trial.reading(5.0, 0.1, 0.01)])
    assert magneto.designed_setting.backplate_deg + fit.shift_deg > 6.0
    own = fitted_magneto(fit)
    assert own.designed_setting.backplate_deg == 6.0
    for gap in (0.08, 0.1, 0.2):
        assert plate_at(InternalTiming(own), gap) == pytest.approx(float(fit.plate_for_deg(gap)), abs=1e-8)


def test_a_very_long_name_is_still_a_name():
    magneto = build(name="x" * 120)
    assert len(fitted_magneto(fit_flank(magneto, [Trial(0.0, 0.2, 0.25)])).name) <= 120


def test_a_cam_that_cannot_be_scaled_so_is_refused_in_one_sentence():
    # Below the gap, lobes overlap, out of reach, a rise of 0.03° where 0.5° is the least of a file.
    for lift, rise in ((0.3, 1.0), (1.0, 3.0), (1000.0, 1.0), (1.0, 1e-3)):
        with pytest.raises(SpecError) as caught:
            scaled_magneto(build(), lift, rise)
        told = str(caught.value)
        assert told.isprintable() and not re.search("pydantic|Value error|Input should", told)


def test_lobes_foot_to_foot_still_fit():
    """Four lobes of 90° leave no room for a longer rise; the fit takes the lift that explains the trials."""
    cam = plain()["cam"]
    tight = build(cam={**cam, "profile": {**cam["profile"], "rise_deg": 40.0, "dwell_deg": 10.0, "fall_deg": 40.0}})
    gaps = [0.15, 0.2, 0.25, 0.3]
    trials = [Trial.reading(plate_at(InternalTiming(tight), g) * 1.3, g) for g in gaps]
    fit = fit_flank(tight, trials, Budget(0.1, 0.05))
    assert fit.rise_scale <= 1.0 + 1e-9
    fitted_magneto(fit)
