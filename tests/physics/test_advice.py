"""What to try next: towards the limits, within the slot, no farther than is sure, and honest about contradictions."""

from math import isnan

import numpy as np
import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from magview.physics.advice import STEP_SHARE, advise, contradictory, disagreements
from magview.physics.setting import InternalTiming
from magview.physics.trials import Budget, Trial
from magview.spec.library import find_magneto, shipped_names
from magview.spec.units import MM_PER_INCH
from tests.benchmarks.simulated_mechanics import Coverage, advised, bisection, counts, drawn, mechanic
from tests.magnetos import build, in_thousandths, magnetos
from tests.physics.test_trials import plate_at

few = settings(max_examples=15, suppress_health_check=[HealthCheck.too_slow])
SEVEN = in_thousandths()
THOU = 0.0254


def blades(*tried: tuple[float, float, float | None]) -> list[Trial]:
    """Plate, and blades in thousandths of an inch that pass and do not."""
    return [Trial.blades(b, go * THOU if go else None, None if no is None else no * THOU) for b, go, no in tried]


def check_sentences(advice) -> None:
    for text in (advice.reason, *advice.warnings):
        assert text.isprintable() and text[0].isupper() and text.endswith((".", ")"))
        assert "nan" not in text and "inf " not in text


# ---------------------------------------------------------------------- beginning and end


def test_it_begins_at_the_file_s_designed_plate():
    for name in shipped_names("magnetos"):
        magneto = find_magneto(name)
        advice = advise(magneto, [])
        assert (advice.outcome, advice.backplate_deg) == ("start", magneto.designed_setting.backplate_deg)
        assert advice.gap_mm == pytest.approx(magneto.designed_setting.gap_mm, abs=1e-9)
        assert isnan(advice.move_deg) and advice.low_mm < advice.gap_mm < advice.high_mm
        check_sentences(advice)


@pytest.mark.parametrize(
    ("go", "no_go", "done"),
    [(8, 9, True), (9, 10, True), (8, 10, True), (7, 9, False), (9, 11, False), (7, 8, False), (9, None, False)],
)
def test_it_is_done_when_the_blades_say_in_limits(go, no_go, done):
    """The shipped limits are 0.008 in to 0.010 in: a blade as thick as the limit is in limits."""
    assert SEVEN.gap_limits_mm == pytest.approx((0.008 * MM_PER_INCH, 0.010 * MM_PER_INCH))
    advice = advise(SEVEN, blades((1.0, go, no_go)))
    assert (advice.outcome == "done") is done
    if done:
        assert (advice.backplate_deg, advice.move_deg, advice.chance) == (1.0, 0.0, 1.0)
        assert (advice.low_mm, advice.high_mm) == pytest.approx((go * THOU, no_go * THOU))
    check_sentences(advice)


def test_only_the_last_trial_can_be_done():
    assert advise(SEVEN, blades((0.0, 8, 9), (2.0, 11, 12))).outcome == "move"


def test_a_gap_in_limits_with_the_opening_off_the_mark_is_not_done():
    """Rim radius 36 mm, tolerance 1/32 in: 1.26° of the rotor is the most (tan 1.26° · 36 = 0.79)."""
    for late, outcome in ((1.2, "done"), (-1.2, "done"), (1.4, "repeat"), (4.0, "move"), (-4.0, "move")):
        advice = advise(SEVEN, [Trial(0.0, 8 * THOU, 9 * THOU, opening_error_deg=late)])
        assert (advice.outcome == "done") is (outcome == "done")
        if outcome == "move":  # opening late hid a gap too wide, early one too narrow
            assert advice.move_deg * late < 0 or advice.outcome == "repeat"


# ---------------------------------------------------------------------- the next plate


@pytest.mark.parametrize("name", shipped_names("magnetos"))
def test_a_gap_too_small_wants_the_plate_with_rotation(name):
    """Re-set to open at the E-gap, turning the plate with rotation widens the gap (guide: theory-setting)."""
    magneto = find_magneto(name)
    low, high = magneto.gap_limits_mm
    for gap, sign in ((0.8 * low, 1), (1.2 * high, -1)):
        advice = advise(magneto, [Trial.reading(0.0, gap, 0.0127)])
        assert advice.outcome == "move" and advice.move_deg * sign > 0
        assert low < advice.gap_mm < high
        assert ("with cam" in advice.reason) is (sign > 0) and ("against cam" in advice.reason) is (sign < 0)


def test_the_aim_is_the_wanted_gap_or_the_middle_of_the_plates_in_limits():
    tried = blades((0.0, 6, 7))
    anywhere, wanted = advise(SEVEN, tried), advise(SEVEN, tried, wanted_mm=0.25)
    ends = anywhere.fit.plate_for_deg(SEVEN.gap_limits_mm)
    assert anywhere.backplate_deg == pytest.approx(ends.mean())
    assert wanted.gap_mm == pytest.approx(0.25)
    other = advise(SEVEN, tried, limits_mm=(0.2, 0.22))
    assert 0.2 < other.gap_mm < 0.22


@pytest.mark.parametrize(
    ("more", "told"),
    [
        ({"limits_mm": (0.3, 0.2)}, "low one first"),
        ({"limits_mm": (0.0, 0.2)}, "above 0"),
        ({"limits_mm": (float("nan"), 0.2)}, "above 0"),
        ({"wanted_mm": 0.3}, "the limits are"),
        ({"probability": 2.0}, "between 0 and 1"),
    ],
)
def test_what_cannot_be_wanted_is_refused(more, told):
    with pytest.raises(ValueError, match=told):
        advise(SEVEN, blades((0.0, 6, 7)), **more)


@few
@given(magnetos(), st.data())
def test_the_plate_stays_in_its_slot_and_near_what_was_tried(magneto, data):
    low, high = magneto.backplate.range_deg
    full = advise(magneto, []).fit.full_gap_mm
    made = data.draw(
        st.lists(
            st.tuples(st.floats(low, high), st.floats(0.02, 0.95), st.floats(0.005, 0.1)), min_size=1, max_size=4
        )
    )
    trials = [Trial.reading(b, share * full, within) for b, share, within in made]
    advice = advise(magneto, trials)
    assert low - 1e-9 <= advice.backplate_deg <= high + 1e-9
    assert advice.low_mm <= advice.gap_mm <= advice.high_mm and 0.0 <= advice.chance <= 1.0
    tried = advice.fit.tried_deg
    step = STEP_SHARE * advice.fit.file_rise_deg + advice.fit.budget.plate_deg
    assert min(tried[0], trials[-1].backplate_deg) - step - 1e-9 <= advice.backplate_deg
    assert advice.backplate_deg <= max(tried[1], trials[-1].backplate_deg) + step + 1e-9
    check_sentences(advice)


def test_a_move_too_far_stops_short_and_says_so():
    magneto = build(backplate={"range_deg": (-15.0, 15.0)}, gap_limits_mm=(0.24, 0.26))
    advice = advise(magneto, [Trial.reading(0.0, 0.02, 0.0127)])
    assert advice.limited and advice.outcome == "move"
    assert advice.move_deg == pytest.approx(STEP_SHARE * advice.fit.file_rise_deg)
    assert "too far from what was tried" in advice.reason
    near = advise(magneto, [Trial.reading(0.0, 0.22, 0.0127)])
    assert not near.limited and "too far" not in near.reason


def test_out_of_reach_is_said_with_the_nearest():
    """A slot that ends short of the limits; the true magneto itself cannot be adjusted there."""
    magneto = build(backplate={"range_deg": (-1.0, 1.0)}, gap_limits_mm=(0.38, 0.42))
    assert not InternalTiming(magneto).adjust(0.38).reachable
    timing = InternalTiming(magneto)
    gap = float(advise(magneto, []).fit.predict(1.0).gap_mm)
    assert plate_at(timing, gap) == pytest.approx(1.0)
    advice = advise(magneto, [Trial.reading(1.0, gap, 0.0127)], budget=Budget(0.2, 0.05))
    assert (advice.outcome, advice.backplate_deg) == ("unreachable", 1.0)
    assert advice.gap_mm == pytest.approx(gap, abs=0.01) and "end of the slot" in advice.reason
    check_sentences(advice)


@pytest.mark.parametrize(("slot", "beyond"), [((-3.0, 0.0), 0.95), ((-1.0, 3.0), 4.0), ((0.0, 3.0), -0.95)])
def test_whether_the_end_of_the_slot_will_do_is_judged_there(slot, beyond):
    """A cam that is the file's: limits about the gap of a plate beyond the slot cannot be had inside it."""
    gap = float(advise(build(), []).fit.predict(beyond).gap_mm)
    magneto = build(backplate={"range_deg": slot}, gap_limits_mm=(gap - 1e-3, gap + 1e-3))
    assert not any(InternalTiming(magneto).adjust(gap + off).reachable for off in (-1e-3, 0.0, 1e-3))
    advice = advise(magneto, [Trial.reading(0.0, 0.25)], budget=Budget(1e-4, 1e-4, 1e-4))
    end = min(max(beyond, slot[0]), slot[1])
    assert (advice.outcome, advice.backplate_deg) == ("unreachable", end)


def test_limits_that_the_slot_s_end_may_just_reach_are_tried_there():
    magneto = build(backplate={"range_deg": (-1.0, 1.0)}, gap_limits_mm=(0.3, 0.32))
    advice = advise(magneto, [Trial.reading(0.0, 0.255, 0.0127)])
    assert (advice.outcome, advice.backplate_deg) == ("move", 1.0)
    assert "end of the slot" in advice.reason
    again = advise(magneto, [Trial.reading(1.0, 0.285, 0.0127)])
    assert again.outcome == "repeat" and "end of the slot" in again.reason


def test_a_plate_that_is_right_is_left_and_the_opening_set_again():
    tried = blades((1.0, 9, 10), (1.0, 8, 9), (1.0, 9, 10), (1.0, 7, 8))
    advice = advise(SEVEN, tried)
    assert (advice.outcome, advice.move_deg) == ("repeat", 0.0)
    assert "set the opening again" in advice.reason
    unsure = advise(SEVEN, blades((0.0, 7.5, 8.5), (0.0, 9, 9.5), (0.0, 7.5, 10.5)))
    assert unsure.outcome == "repeat" and "blades cannot tell" in unsure.reason


def test_it_learns_perfect_trials_need_three_at_the_most():
    rng = np.random.default_rng(4)
    for k in range(12):
        m = mechanic(rng, shipped_names("magnetos")[k % 4], 0.0)
        trials = []
        while len(trials) < 10:
            advice = advise(m.file, trials, budget=Budget(0.01, 0.01))
            if advice.outcome in ("done", "unreachable"):
                break
            gap = m.gap_mm(advice.backplate_deg)
            assert advice.low_mm <= gap <= advice.high_mm or not trials
            trials.append(Trial.reading(advice.backplate_deg, gap))
        assert advice.outcome == ("done" if m.reachable else "unreachable")
        assert len(trials) <= 3 + advice.limited


# ---------------------------------------------------------------------- contradictions


def test_two_gaps_at_one_plate_are_a_contradiction_only_beyond_the_tolerance():
    """1/32 in on a rim of 36 mm is 1.26° of plate, and two trials may differ by twice that; a thousandth is 0.6°."""
    apart = advise(SEVEN, blades((0.0, 4, 5), (0.0, 13, 14)))
    assert contradictory(apart.fit)
    assert any("Trials 1 and 2 stood at the same plate" in w and "repeat one of the two" in w for w in apart.warnings)
    assert apart.reason.startswith("The trials contradict each other")
    near = advise(SEVEN, blades((0.0, 5, 6), (0.0, 7, 8)))
    assert not contradictory(near.fit)
    assert any("explain it: set them closer to the mark" in w for w in near.warnings)
    assert advise(SEVEN, blades((0.0, 5, 6), (0.0, 5, 6))).warnings == ()
    for advice in (apart, near):
        check_sentences(advice)


@pytest.mark.parametrize("order", [(0, 1, 2), (2, 1, 0), (1, 2, 0)])
def test_trials_that_agree_are_not_remarked_on(order):
    """Read off the file's own curve, in any order: nothing is odd about them."""
    plates = [(-1.0, 0.0, 1.0)[i] for i in order]
    gaps = advise(build(), []).fit.predict(plates).gap_mm
    trials = [Trial.reading(b, float(g), 1e-4) for b, g in zip(plates, gaps, strict=True)]
    for budget in (None, Budget(0.1, 0.05)):
        fit = advise(build(), trials, budget=budget).fit
        assert disagreements(fit) == () and not contradictory(fit)


@pytest.mark.parametrize(("apart_deg", "contradict"), [(2.1, False), (3.4, True)])
def test_two_openings_at_either_end_of_the_tolerance_explain_as_much_plate(apart_deg, contradict):
    """0.8 mm at 36 mm is 1.27° of cam, the plate is read to 0.1°: twice their sum, 2.75°, and not their deviation."""
    gaps = advise(build(), []).fit.predict([-apart_deg / 2, apart_deg / 2]).gap_mm
    fit = advise(build(), [Trial.reading(0.0, float(g)) for g in gaps]).fit
    assert contradictory(fit) is contradict


@pytest.mark.parametrize("probability", [0.5, 0.99])
def test_the_sentence_states_the_interval_of_the_probability_asked_for(probability):
    advice = advise(SEVEN, blades((1.0, 7, 8)), probability=probability)
    assert advice.probability == probability
    assert (
        f"{100 * probability:g} times in 100 it will be {advice.low_mm:.3f} to {advice.high_mm:.3f} mm"
        in advice.reason
    )


def test_a_careful_hand_makes_the_same_gaps_a_contradiction():
    tried = blades((0.0, 5, 6), (0.0, 7, 8))
    assert contradictory(advise(SEVEN, tried, budget=Budget(0.1, 0.05)).fit)


def test_a_gap_that_falls_with_the_plate_is_named():
    falling = blades(*[(b, 12 - 1.6 * b, 13 - 1.6 * b) for b in range(5)])
    advice = advise(SEVEN, falling)
    assert any("gap of trial 5 is smaller than that of trial 1" in w for w in advice.warnings)
    assert contradictory(advice.fit)
    rising = advise(SEVEN, blades(*[(b, 5 + 1.6 * b, 6 + 1.6 * b) for b in range(5)]))
    assert rising.warnings == ()
    assert advice.fit.shift_sd_deg > 2 * rising.fit.shift_sd_deg


def test_a_gap_that_falls_a_little_is_put_down_to_the_openings():
    """0.002 in less at a plate 0.3° further; two openings within 1.26° each way are worth up to 2.5° of plate."""
    trials = blades((0.0, 10, 11), (0.3, 8, 9))
    fit = advise(SEVEN, trials).fit
    (told,) = disagreements(fit)
    assert not contradictory(fit)
    assert told.startswith("The gap of trial 2 is smaller than that of trial 1, though its plate stands further with")
    assert told.endswith("openings off the mark but within the tolerance explain it: set them closer to the mark.")


def test_a_gap_that_no_blade_was_too_thick_for_is_told_as_open():
    advice = advise(SEVEN, blades((0.0, 8, None)))
    assert advice.outcome == "repeat" and "above 0.203 mm (0.0080 in)" in advice.reason
    check_sentences(advice)


def test_a_gap_in_limits_that_the_others_do_not_lead_to_is_done_with_a_doubt():
    """Five trials as the file foretells them, then at the slot's far end, where 0.33 mm are due, 0.2159 mm."""
    timing = InternalTiming(SEVEN)
    good = [Trial.reading(timing.adjust(gap).backplate_deg, gap, 0.003) for gap in (0.16, 0.19, 0.27, 0.3, 0.32)]
    advice = advise(SEVEN, [*good, *blades((5.5, 8, 9))])
    assert advice.outcome == "done" and advice.fit.outliers == (5,)
    assert advice.reason.endswith("so try the blades once more.")
    assert "once more" not in advise(SEVEN, blades((0.0, 8, 9))).reason


def test_a_trial_left_out_is_named_and_explained_once():
    advice = advise(SEVEN, blades((0, 5, 6), (1, 6, 7), (2, 14, 15), (2, 7, 8)))
    assert [w for w in advice.warnings if "Trial 3 does not fit the others" in w and "larger" in w]
    assert len(advice.warnings) == 1
    assert disagreements(advice.fit) == advice.warnings


def test_a_file_of_another_cam_is_suspected():
    magneto = SEVEN
    steep = [Trial.reading(b, 0.05 + 0.09 * b) for b in np.linspace(0.0, 5.0, 6)]
    advice = advise(magneto, steep, budget=Budget(0.1, 0.05))
    assert any("check that this is the file for this cam" in w for w in advice.warnings)


# ---------------------------------------------------------------------- simulated mechanics, few of them


def test_simulated_mechanics_do_better_with_advice_and_intervals_hold():
    """32 mechanics; the figures of 500 are printed by tests/benchmarks/simulated_mechanics.py."""
    hands = drawn(32, 2, 25.4 / 64)
    with_advice, without = counts(hands, advised, 3), counts(hands, bisection, 3)
    assert with_advice.mean() < without.mean()
    assert with_advice.max() < 15
    coverage = Coverage()
    for i, m in enumerate(hands):
        m.rng = np.random.default_rng([5, i])
        coverage.watch(m, most=2)
    for what in ("curve", "next trial"):
        # 64 intervals each: binomial spread 0.03 at 0.95 and 0.06 at 0.68, three times that is allowed.
        assert coverage.share(what, 0.95) > 0.86
        assert 0.5 < coverage.share(what, 0.68) < 0.86


def test_the_mechanic_s_magneto_is_the_one_the_bench_would_show():
    """The simulation's own short way to the gap against the readings of guide: theory-setting."""
    m = mechanic(np.random.default_rng(6), "nine-radial", 0.0)
    for plate in (-1.5, 0.0, 2.0):
        gap = m.gap_mm(plate)
        assert plate_at(m.true, gap) == pytest.approx(plate, abs=1e-9)
    assert m.gap_mm(0.0, late_cam_deg=0.4) == pytest.approx(m.gap_mm(-0.4))
