"""Trials and the flank they tell of: exact where the trials are, honest where they are not.

Truth comes from `InternalTiming`, whose own tests rest on brute-force geometry; the statistics from scipy's
distributions and from repeating the experiment.
"""

import json
import re
from math import inf

import numpy as np
import pytest
from hypothesis import HealthCheck, assume, given, settings
from hypothesis import strategies as st

from magview.bench.advice_words import plate_words
from magview.physics.cam.setting import InternalTiming
from magview.physics.trials.flank import Flank, scaled_magneto
from magview.physics.trials.flank_fit import fit_flank, fitted_magneto
from magview.physics.trials.trial import MAX_TRIALS, PlateScale, ReadingErrors, ScaleKind, Trial
from magview.spec.base import SpecError
from magview.spec.files import dump_json, validate
from magview.spec.library import find_magneto, shipped_names
from magview.spec.magneto import Magneto
from tests.counts import examples
from tests.magnetos import build, magnetos, plain
from tests.physics.trials.plates import plate_at

few = settings(max_examples=examples(8), suppress_health_check=[HealthCheck.too_slow])
PERFECT = ReadingErrors(0.0, 0.0, 0.0)
"""As close as the grid of the fit is fine."""


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


def perfect_trials(timing: InternalTiming, shares: list[float]) -> list[Trial]:
    designed = timing.magneto.designed_setting.gap_mm
    return [Trial.reading(plate_at(timing, designed * s), designed * s) for s in shares]


# ---------------------------------------------------------------------- reading the plate


def test_a_radian_of_slot_is_as_long_as_its_radius():
    assert PlateScale.slot(30.0).to_deg(30.0) == pytest.approx(180 / np.pi)
    assert PlateScale.slot(18.0).to_deg(-np.pi) == pytest.approx(-10.0)  # 18 mm · 10° = π mm
    assert PlateScale.slot(18.0).from_deg(-10.0) == pytest.approx(-np.pi)
    assert PlateScale.slot(18.0).slot_radius_mm == pytest.approx(18.0)


def test_scale_marks_are_counted():
    marks = PlateScale.marks(0.5)
    assert [marks.to_deg(n) for n in (-3, 0, 4)] == [-1.5, 0.0, 2.0]
    assert [marks.from_deg(b) for b in (-1.5, 0, 2)] == [-3, 0, 4]


def test_a_plate_is_told_in_the_unit_in_which_it_is_read():
    assert plate_words(PlateScale(), 1.4) == "+1.40°"
    assert plate_words(PlateScale.slot(180 / np.pi), -2.0) == "-2.00 mm along the slot"
    assert plate_words(PlateScale.marks(0.5), 2.0, signed=False) == "4.00 marks"


@pytest.mark.parametrize(
    ("scale", "error_deg", "step_deg"),
    [
        (PlateScale(), 0.1, 0.1),
        (PlateScale(), 0.25, 0.2),
        (PlateScale(), 0.09, 0.05),
        (PlateScale.marks(0.5), 0.125, 0.1),  # a quarter of a mark: steps of a fifth
        (PlateScale.slot(180 / np.pi), 0.5, 0.5),
    ],
)
def test_plates_are_advised_in_the_roundest_steps_that_can_be_read(scale, error_deg, step_deg):
    assert scale.step_deg(ReadingErrors(plate_deg=error_deg)) == pytest.approx(step_deg)


@pytest.mark.parametrize("bad", [0.0, -1.0, inf, float("nan")])
@pytest.mark.parametrize("make", [PlateScale.slot, PlateScale.marks, lambda v: PlateScale(ScaleKind.DEGREES, v)])
def test_a_scale_that_cannot_be_is_refused(make, bad):
    with pytest.raises(ValueError, match="must be above 0"):
        make(bad)


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
        (lambda: ReadingErrors(-1.0), "0 or more"),
        (lambda: ReadingErrors(inf), "0 or more"),
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
    assert ReadingErrors(0.0, 0.0, 0.0).blade_mm == 0.0


@pytest.mark.parametrize(
    "make",
    [
        lambda: Trial(3600.1, 0.1, 0.2),
        lambda: Trial(0.0, 0.1, 0.2, -45.1),
        lambda: Trial(0.0, 0.1, 1000.1),
        lambda: Trial(0.0, 1000.1, inf),
        lambda: Trial(0.0, 0.0, inf),
        lambda: Trial.reading(0.0, 0.2, inf),
        lambda: ReadingErrors(0.1, -1e-9),
        lambda: ReadingErrors(0.1, 0.1, -1e-9),
    ],
)
def test_a_hair_beyond_the_bounds_of_a_trial_is_refused(make):
    with pytest.raises(ValueError, match=r"must|says nothing"):
        make()


@few
@given(magnetos(), st.floats(-1.0, 1.0), st.floats(0.3, 0.7))
def test_an_opening_off_the_mark_is_a_plate_off_its_place(magneto, late, share):
    """Move the plate by c·e, the screw left alone: the opening moves by e, the gap not (guide: theory-setting)."""
    timing = InternalTiming(magneto)
    gap = share * magneto.designed_setting.gap_mm
    right = plate_at(timing, gap)
    ratio = magneto.cam.turns_per_rotor_turn
    trial = Trial(right + ratio * late, gap, gap, opening_error_deg=late)
    assert trial.plate_as_opened_deg(magneto) == pytest.approx(right, abs=1e-9)


@few
@given(magnetos(worn=False), st.floats(0.05, 3.0))
def test_the_mark_s_error_along_the_plate_is_what_reads_so_at_the_rim(magneto, mark):
    rotor = ReadingErrors(mark).mark_deg(magneto) / magneto.cam.turns_per_rotor_turn
    assert InternalTiming(magneto).mark_offset_mm(rotor) == pytest.approx(mark, rel=1e-9)


# ---------------------------------------------------------------------- the fit


@few
@given(magnetos(), st.lists(st.floats(0.1, 1.3), min_size=3, max_size=6))
def test_with_no_trial_it_is_the_file_wear_and_lobe_errors_included(magneto, shares):
    timing, fit = InternalTiming(magneto), fit_flank(magneto, [])
    gaps = np.array(shares) * magneto.designed_setting.gap_mm
    assume(gaps.max() < 0.98 * fit.full_gap_mm)
    plates = np.array([plate_at(timing, g) for g in gaps])
    np.testing.assert_allclose(fit.predict(plates).gap_mm, gaps, atol=1e-8)
    np.testing.assert_allclose(Flank(magneto).gap_mm(plates), gaps, atol=1e-8)


@pytest.mark.parametrize("name", shipped_names("magnetos"))
def test_one_trial_moves_the_file_s_curve_to_go_through_it(name):
    magneto = find_magneto(name)
    gap = 1.2 * magneto.designed_setting.gap_mm
    wrong = plate_at(InternalTiming(magneto), gap) + 1.3
    fit = fit_flank(magneto, [Trial.reading(wrong, gap)], PERFECT)
    assert fit.predict(wrong).gap_mm == pytest.approx(gap, abs=0.004)
    assert fit.shift_deg == pytest.approx(1.3, abs=0.2)
    beside = fit.predict(wrong - 1.3)
    assert beside.low_mm < Flank(magneto).gap_mm(wrong - 1.3 - 1.3) < beside.high_mm


SCALES = [(1.15, 0.9, 1.3), (0.85, 1.15, -1.0), (1.1, 1.1, 0.0), (0.8, 0.85, 2.0)]


@pytest.mark.parametrize("name", shipped_names("magnetos"))
@pytest.mark.parametrize("wrong", SCALES)
def test_two_exact_trials_fix_the_flank_between_them(name, wrong):
    true = truth(name, *wrong)
    fit = fit_flank(find_magneto(name), perfect_trials(true, [0.8, 1.2]), PERFECT)
    designed = true.magneto.designed_setting.gap_mm
    for share in (0.85, 1.0, 1.15):
        gap = float(fit.predict(plate_at(true, share * designed)).gap_mm)
        assert gap == pytest.approx(share * designed, abs=0.03 * designed)


def test_the_opening_as_read_is_taken_into_account():
    """Trials that were set off the mark and say so tell as much as those that were not."""
    true = truth("nine-radial", 0.9, 1.1, -0.7)
    exact = perfect_trials(true, [0.5, 0.9, 1.3])
    off = [
        Trial(t.backplate_deg + true.ratio * late, t.gap_low_mm, t.gap_high_mm, late)
        for t, late in zip(exact, (1.0, -2.0, 0.5), strict=True)
    ]
    one, other = (fit_flank(find_magneto("nine-radial"), t) for t in (exact, off))
    assert (one.lift_scale, one.shift_deg) == pytest.approx((other.lift_scale, other.shift_deg), abs=1e-3)


def test_one_reading_off_a_straight_flank_leaves_what_its_errors_leave():
    """Plate ± 1° evenly, slope 0.02 mm/deg as filed: the gap at that plate is ± 0.02 mm, 95 of 100 within 0.019.

    The rectangular distribution of JCGM 101:2008, 6.4.2; lift and rise hardly matter at the plate that was tried.
    """
    x = np.r_[np.linspace(-25.0, 0.0, 11), np.linspace(4.0, 40.0, 10)]
    cam = plain()["cam"]
    profile = {"kind": "measured", "angle_deg": tuple(x),
               "contact_lift_mm": tuple(0.5 * np.interp(x, [-25.0, 0.0, 40.0], [0.0, 1.0, 0.0]))}  # fmt: skip
    magneto = build(cam={**cam, "profile": profile}, designed_setting={"backplate_deg": 0.0, "gap_mm": 0.25})
    there = fit_flank(magneto, [Trial.reading(0.0, 0.25)], ReadingErrors(0.0, 1.0, 0.0)).predict(0.0)
    assert there.gap_mm == pytest.approx(0.25, abs=0.001)
    # Steeper and flatter flanks than the file's, by a sixth each way, add hardly anything to it.
    assert there.low_mm == pytest.approx(0.231, abs=0.003)
    assert there.high_mm == pytest.approx(0.269, abs=0.003)


def test_one_blade_alone_tells_a_bound_and_no_more():
    magneto = find_magneto("seven-radial")
    wider = fit_flank(magneto, [Trial.blades(0.0, 0.4, None)]).predict(0.0)
    assert wider.gap_mm > 0.39
    assert wider.high_mm - wider.gap_mm > 0.03  # nothing said how much wider
    content = fit_flank(magneto, [Trial.blades(0.0, 0.05, None)])
    assert abs(content.shift_deg) < 0.2  # the file agrees, so nothing moves
    assert fit_flank(magneto, [Trial.blades(0.0, None, 0.0254)]).predict(0.0).gap_mm < 0.03


def test_a_wrong_trial_is_found_and_hardly_counts():
    true = truth("seven-radial", 1.05, 0.95, 0.5)
    trials = perfect_trials(true, [0.5, 0.7, 0.9, 1.1, 1.3])
    wrong = [*trials[:2], Trial.reading(trials[2].backplate_deg, 1.7 * trials[2].middle_mm, 0.0127), *trials[3:]]
    fit, clean = (fit_flank(find_magneto("seven-radial"), t) for t in (wrong, trials))
    assert fit.outliers == (2,) and fit.slip[2] > 0.9
    assert clean.outliers == () and clean.agree > 0.9
    plates = np.linspace(-3, 3, 13)
    assert np.abs(fit.predict(plates).gap_mm - clean.predict(plates).gap_mm).max() < 0.006


def test_trials_that_contradict_each_other_widen_everything_and_blame_none():
    magneto = find_magneto("seven-radial")
    agree, quarrel = (
        fit_flank(magneto, [Trial.reading(0.0, g, 0.0127) for g in gaps]) for gaps in ((0.32, 0.33), (0.25, 0.39))
    )
    assert quarrel.outliers == ()
    assert quarrel.agree < 0.1 < 0.9 < agree.agree
    assert quarrel.shift_sd_deg > 2 * agree.shift_sd_deg


@pytest.mark.parametrize("mark_mm", [0.1, 1.5])
def test_between_trials_on_both_sides_of_a_limit_no_more_is_foretold_than_they_bracket(mark_mm):
    """The gap grows with the plate; with openings as far off as 1.5 mm at the rim nothing else would hold it."""
    magneto = find_magneto("seven-radial")
    low, high = magneto.gap_limits_mm
    trials = [Trial.blades(-0.5, low - 0.02, low - 0.01), Trial.blades(0.5, high + 0.01, high + 0.02)]
    fit = fit_flank(magneto, trials, ReadingErrors(mark_mm))
    for as_set in (False, True):
        there = fit.predict(np.linspace(-0.49, 0.49, 21), as_set=as_set)
        assert (there.high_mm - there.low_mm).max() <= high - low + 0.04 + 1e-9
        assert np.all(there.low_mm <= there.gap_mm) and np.all(there.gap_mm <= there.high_mm)
    beside = fit.predict(0.51, as_set=True)
    assert (beside.high_mm - beside.low_mm > high - low + 0.04) == (mark_mm > 1.0)


@few
@given(magnetos(), st.data())
def test_whatever_is_tried_the_answer_is_finite_and_in_order(magneto, data):
    full = fit_flank(magneto, []).full_gap_mm
    plate = st.floats(-20.0, 20.0)
    blades = st.tuples(st.floats(0.0, 1.5 * full), st.one_of(st.just(inf), st.floats(0.01, 0.5)))
    made = data.draw(st.lists(st.tuples(plate, blades), min_size=1, max_size=5))
    trials = [Trial(b, low, low + more) for b, (low, more) in made if low > 0 or more < inf]
    fit = fit_flank(magneto, trials)
    assert 0.6 < fit.lift_scale < 1.4 and 0.6 < fit.rise_scale < 1.4
    assert np.isfinite([fit.shift_deg, fit.shift_sd_deg, fit.lift_scale_sd, fit.rise_scale_sd]).all()
    plates = np.linspace(-30, 30, 61)
    for as_set in (False, True):
        narrow, wide = (fit.predict(plates, p, as_set) for p in (0.5, 0.95))
        chain = [wide.low_mm, narrow.low_mm, narrow.gap_mm, narrow.high_mm, wide.high_mm]
        assert np.all(np.diff(chain, axis=0) >= -2e-3)  # two grids of gaps
        assert wide.low_mm.min() >= 0 and wide.high_mm.max() <= 1.31 * full
    below = fit.below(np.linspace(0.01, full, 9), plates, as_set=True)
    assert np.all((below >= -1e-9) & (below <= 1 + 1e-9))
    assert np.all(np.diff(below, axis=0) >= -1e-9)  # larger gaps hold more
    assert np.all(np.diff(below, axis=1) <= 1e-9)  # the gap grows as the plate goes with rotation


# ---------------------------------------------------------------------- a file of one's own


@pytest.mark.parametrize("name", shipped_names("magnetos"))
def test_the_fitted_file_gives_the_trials_back(name):
    true = truth(name, 1.1, 0.92, 0.8)
    trials = perfect_trials(true, [0.5, 0.9, 1.3])
    fit = fit_flank(find_magneto(name), trials, PERFECT)
    own = fitted_magneto(fit)
    again = validate(Magneto, tuples(json.loads(dump_json(own))), "test")
    assert again == own
    timing = InternalTiming(own)
    for trial in trials:
        assert plate_at(timing, trial.gap_low_mm) == pytest.approx(trial.backplate_deg, abs=0.25)
    assert own.name.endswith("fitted from 3 trials") and "Fitted from 3 trials" in own.notes
    assert fitted_magneto(fit, "Mine").name == "Mine"


@few
@given(magnetos(), st.floats(0.6, 1.2), st.floats(-0.5, 0.5))
def test_the_fitted_file_of_any_magneto_is_a_file(magneto, share, off):
    gap = share * magneto.designed_setting.gap_mm
    fit = fit_flank(magneto, [Trial.reading(plate_at(InternalTiming(magneto), gap) + off, gap, 0.0127)])
    plate = plate_at(InternalTiming(fitted_magneto(fit)), gap)
    assert 0.1 < fit.below([gap], [plate])[0, 0] < 0.9
    # Where the lobe flattens, where the average cam gives the gap is not where cams give it on average.
    if gap < 0.75 * fit.full_gap_mm:
        assert plate == pytest.approx(float(fit.plate_for_deg([gap])[0]), abs=0.3)


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
        assert plate_at(InternalTiming(own), gap) == pytest.approx(float(fit.plate_for_deg([gap])[0]), abs=0.3)


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
    """Four lobes of 90° leave no room for a longer rise; the file takes a lower lift instead."""
    cam = plain()["cam"]
    tight = build(cam={**cam, "profile": {**cam["profile"], "rise_deg": 40.0, "dwell_deg": 10.0, "fall_deg": 40.0}})
    gaps = [0.15, 0.2, 0.25, 0.3]
    timing = InternalTiming(tight)
    trials = [Trial.reading(plate_at(timing, g) * 1.2, g) for g in gaps]
    own = fitted_magneto(fit_flank(tight, trials))
    assert own.cam.profile.rise_deg <= 40.0
    assert own.cam.profile.lift_mm < tight.cam.profile.lift_mm
