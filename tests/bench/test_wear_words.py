"""Wear in words, against the lever: w at the heel takes w·K/A off the lift (guide: theory-setting)."""

from __future__ import annotations

import re
from dataclasses import replace

import pytest

from magview.bench.actions import TurnBackplate, WearHeel
from magview.bench.apply import apply
from magview.bench.placing import new_bench
from magview.bench.state import readings
from magview.bench.wear_words import expectation_words, lasting_words, leaving_words, rate_words
from magview.physics.wear.inspection import Inspection
from magview.physics.wear.prediction import WearRates
from magview.physics.wear.rates import estimate_rates
from magview.spec.language import lengths_in
from magview.spec.library import find_installation
from tests.magnetos import in_thousandths
from tests.wording import says

LEVER = 27.5 / 17.0
"""Contact arm over heel arm of the seven-cylinder practice magneto."""
GAP_MM, LEAST_MM = 0.2286, 0.2032
"""Its designed gap, and the least allowed."""


@pytest.fixture
def bench():
    return new_bench(in_thousandths())


def test_without_wear_it_stays_as_it_is(bench):
    told = expectation_words(bench, WearRates(0.0), 100.0)
    assert told == says(
        "After {hours} h: opens at the E-gap, largest gap {gap:length}; within limits.", hours=100, gap=0.229
    )
    lengths_in("in")
    assert "largest gap 0.0090 in;" in expectation_words(bench, WearRates(0.0), 100.0)


def test_a_worn_heel_opens_late_and_narrow_as_the_same_bench_worn_by_hand(bench):
    told = expectation_words(bench, WearRates(0.02), 100.0)
    found = re.fullmatch(r"After 100 h: opens ([\d.]+)° late, largest gap ([\d.]+) mm; out of limits\.", told)
    assert found is not None
    assert float(found[2]) == pytest.approx(GAP_MM - 0.02 * LEVER, abs=6e-4)
    by_hand = readings(apply(bench, WearHeel(0.02)))
    assert float(found[1]) == pytest.approx(float(by_hand.e_gap_error_deg[0]), abs=6e-3)


def test_early_is_said_as_early(bench):
    told = expectation_words(apply(bench, TurnBackplate(-0.5)), WearRates(0.0), 50.0)
    assert told.startswith("After 50 h: opens 0.50° early") and "within limits" in told
    # 3° at the 36 mm rim is 1.9 mm beside the mark, 0.79 mm is allowed.
    assert "early" in (out := expectation_words(apply(bench, TurnBackplate(-3.0)), WearRates(0.0), 50.0))
    assert "out of limits" in out


def test_a_heel_worn_past_the_lobe_opens_no_more(bench):
    told = expectation_words(bench, WearRates(0.4), 100.0)
    assert told == says("After {hours} h the contacts would not open and close any more.", hours=100)


def test_a_pip_is_what_the_blade_does_not_find(bench):
    told = expectation_words(bench, WearRates(0.0, 0.05), 100.0)
    assert "within limits" in told, "the true gap is as it was"
    assert f"A blade would find {GAP_MM - 0.05:.3f} mm: it rides on the pip, 0.050 mm high" in told


def test_the_first_limit_to_go_is_told_with_its_hours(bench):
    """The gap has 0.2286 − 0.2032 mm to lose, the blade's the same less what the pip takes."""
    told = leaving_words(bench, WearRates(0.01, 0.01))
    hours = {limit: float(h) for limit, h in re.findall(r"([a-z ]+?) after (\d+) h", told)}
    room = GAP_MM - LEAST_MM
    gap, blade = 100 * room / (0.01 * LEVER), 100 * room / (0.01 * LEVER + 0.01)
    assert hours[" gap too small"] == pytest.approx(gap, abs=0.6)
    assert next(h for limit, h in hours.items() if "blade gap" in limit) == pytest.approx(blade, abs=0.6)
    assert told.startswith("Leaves its limits at these rates: ") and list(hours.values()) == sorted(hours.values())
    assert any("never opens" in limit for limit in hours) and not any("early" in limit for limit in hours)


def test_nothing_wears_nothing_leaves(bench):
    assert leaving_words(bench, WearRates(0.0)) == says(
        "At these rates nothing leaves its limits within {hours:.0f} h.", hours=10000
    )
    # A millionth of a millimetre in 100 h takes 10 000 h many times over.
    assert "nothing leaves" in leaving_words(bench, WearRates(1e-6))


def test_a_setting_out_of_limits_is_to_be_set_first(bench):
    late = apply(bench, TurnBackplate(3.0))
    assert leaving_words(late, WearRates(0.01)) == says(
        "Out of limits already: {limits}. Set it first.", limits="opens late"
    )
    assert "opens early" in leaving_words(apply(bench, TurnBackplate(-3.0)), WearRates(0.01))


def test_rates_from_blades_alone_ask_for_the_opening_too(bench):
    """0.02 mm less in 100 h, exactly read: the blade gap closes by that, and heel and pip cannot be told apart."""
    seen = [Inspection(0.0, 0.23, 0.0), Inspection(100.0, 0.21, 0.0)]
    told = rate_words(estimate_rates(bench.magneto, 0.0, seen))
    assert told.startswith("The blade gap closes by 0.020 mm per 100 h (0.020 mm to 0.020 mm, 95 times in 100).")
    assert told.endswith("Note where it opened, too, to tell the heel's part from the pip's.")


def test_with_openings_the_heel_and_the_pip_have_their_parts(bench):
    """The bench worn by hand: 0.02 mm off the heel takes 0.0324 mm off the gap, and a pip takes 0.01 mm more."""
    worn = readings(apply(bench, WearHeel(0.02)))
    late = float(worn.e_gap_error_deg[0])
    seen = [
        Inspection(0.0, GAP_MM, 0.001, 0.0, 0.01),
        Inspection(200.0, GAP_MM - 0.02 * LEVER - 0.01, 0.001, late, 0.01),
    ]
    rates = estimate_rates(bench.magneto, 0.0, seen)
    found = re.search(r"the heel wears ([\d.]+) mm .*the pip grows ([\d.]+) mm", rate_words(rates))
    assert found is not None
    assert (float(found[1]), float(found[2])) == pytest.approx((0.01, 0.005), abs=6e-4)
    lengths_in("in")
    assert " in per 100 h" in rate_words(rates) and "mm" not in rate_words(rates)
    assert "Note where it opened" in rate_words(replace(rates, pip=None))


def test_on_the_engine_wear_is_told_in_crank_degrees_against_its_tolerance():
    """A later opening by Δ of rotor fires Δ/k later; the seven-cylinder engine's rotor turns 7/8 of its crank."""
    bench = new_bench(find_installation("seven-radial-left"))
    told = expectation_words(bench, WearRates(0.02), 100.0)
    found = re.search(r"opens ([\d.]+)° late.*It fires ([\d.]+)° of crank later than now: ([\d.]+)° late", told)
    assert found is not None
    assert float(found[2]) == pytest.approx(float(found[1]) / (7 / 8), abs=0.012)
    assert found[2] == found[3], "timed as wanted to begin with"
    tolerance = bench.engaged.installation.engine.timing_tolerance_deg
    assert (says("Out of the engine's tolerance.") in told) == (float(found[3]) > tolerance)
    assert "fires too late for the engine after" in leaving_words(bench, WearRates(0.005))
    assert "fires too early for the engine after" in leaving_words(bench, WearRates(0.0, 0.0, 0.005))
    early = expectation_words(bench, WearRates(0.0, 0.0, 0.02), 100.0)
    assert "of crank earlier than now" in early


def test_which_gap_lasts_longest_is_computed(bench):
    low, high = (f"{v:.3f} mm" for v in bench.magneto.gap_limits_mm)
    assert lasting_words(bench, WearRates(0.01)).endswith(f"{high} lasts longest.")
    assert lasting_words(bench, WearRates(0.0, 0.0, 0.01)).endswith(f"{low} lasts longest.")
    assert lasting_words(bench, WearRates(0.0)) == ""


def test_lasting_says_that_it_goes_by_the_true_gap(bench):
    """With a growing pip a blade finds the gap too small first; each sentence says which gap it means."""
    rates = WearRates(0.001, 0.01)
    assert "blade gap too small after" in leaving_words(bench, rates)
    assert "by the true gap it would last: " in lasting_words(bench, rates)
