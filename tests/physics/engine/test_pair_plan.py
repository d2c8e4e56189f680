"""Both magnetos planned together. Expected values: every pair tried, in fractions; small cases by hand."""

from __future__ import annotations

from fractions import Fraction
from math import nan

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from magview.physics.engine.coupling import synchronise
from magview.physics.engine.pair_plan import PairPlan, PairReading, plan_pair
from tests.counts import examples

few = st.integers(1, 12)
readings = st.decimals(10, 40, places=1).map(float)
tolerances = st.decimals("0.1", 4, places=1).map(float)


def every_move(reading: PairReading) -> list[tuple[Fraction, int, int]]:
    """Every pair of teeth within a turn of each face and half a turn of the rotor: error [crank deg], teeth."""
    nm, nd, ratio = reading.magneto_teeth, reading.drive_teeth, Fraction(reading.rotor_turns_per_crank_turn)
    change = Fraction(str(reading.wanted_btdc_deg)) - Fraction(str(reading.reads_btdc_deg))
    found = []
    for i in range(1 - nm, nm):
        for j in range(1 - nd, nd):
            shift = Fraction(i, nm) + Fraction(j, nd)
            if -1 < 2 * shift <= 1:
                found.append((360 * shift / ratio - change, i, j))
    return found


def best_of_every_pair(left: PairReading, right: PairReading, timing: Fraction, together: Fraction):
    """Magnetos that are moved though within tolerance, largest share of a tolerance, teeth: the smallest of these."""
    ranked = []
    for a, i, j in every_move(left):
        for b, m, n in every_move(right):
            share = max(abs(a) / timing, abs(b) / timing, abs(a - b) / together)
            if share <= 1:
                disturbed = sum(
                    abs(Fraction(str(of.wanted_btdc_deg)) - Fraction(str(of.reads_btdc_deg))) <= timing
                    and moved != (0, 0)
                    for of, moved in ((left, (i, j)), (right, (m, n)))
                )
                ranked.append((disturbed, share, abs(i) + abs(j) + abs(m) + abs(n)))
    return min(ranked, default=None)


@settings(deadline=None, max_examples=examples(120))
@given(
    left=st.builds(
        PairReading, few, few, st.sampled_from([Fraction(7, 8), Fraction(1), Fraction(3, 2)]), readings, readings
    ),
    right=st.builds(PairReading, few, few, st.sampled_from([Fraction(7, 8), Fraction(1)]), readings, readings),
    timing=tolerances,
    together=tolerances,
)
def test_no_pair_is_better(left: PairReading, right: PairReading, timing: float, together: float) -> None:
    limits = Fraction(str(timing)), Fraction(str(together))
    best, found = best_of_every_pair(left, right, *limits), plan_pair(left, right, timing, together)
    assert (found is None) == (best is None)
    if found is None or best is None:
        return
    result = judged(left, right, found, timing, together)
    assert result.left_ok and result.right_ok and result.synchronised
    shares = (
        abs(found.left.residual_deg) / timing,
        abs(found.right.residual_deg) / timing,
        abs(found.difference_deg) / together,
    )
    assert max(shares) == pytest.approx(float(best[1]), abs=1e-12)
    moved = (found.left.magneto_teeth, found.left.disc_teeth, found.right.magneto_teeth, found.right.disc_teeth)
    assert sum(map(abs, moved)) <= best[2]


def judged(left: PairReading, right: PairReading, found: PairPlan, timing: float, together: float):
    return synchronise(
        found.left.result_btdc_deg,
        found.right.result_btdc_deg,
        wanted_left_deg=left.wanted_btdc_deg,
        wanted_right_deg=right.wanted_btdc_deg,
        timing_tolerance_deg=timing,
        synchronising_tolerance_deg=together,
    )


def test_the_best_of_each_alone_may_be_too_far_apart() -> None:
    """Ten teeth on each face, k = 1: steps of 36°. The left comes to 17° late or 19° early, the right to 17° early or
    19° late: the best of each alone are 34° apart, 17° late and 19° late only 2°."""
    left, right = PairReading(10, 10, 1.0, -28.0, 25.0), PairReading(10, 10, 1.0, 78.0, 25.0)
    found = plan_pair(left, right, 20.0, 5.0)
    assert found is not None
    assert sorted((found.left.residual_deg, found.right.residual_deg)) in ([-19.0, -17.0], [17.0, 19.0])
    assert abs(found.difference_deg) == 2.0
    assert plan_pair(left, right, 18.0, 5.0) is None


def test_a_magneto_that_is_right_is_left_alone() -> None:
    """Steps of 10°, ±4° allowed: the right reads 3° late, the left 13°: one tooth, and both are 3° late together."""
    found = plan_pair(PairReading(36, 36, 1.0, 12.0, 25.0), PairReading(36, 36, 1.0, 22.0, 25.0), 4.0, 1.0)
    assert found is not None
    assert (found.left.magneto_teeth, found.left.residual_deg) == (1, -3.0)
    assert (found.right.magneto_teeth, found.right.disc_teeth, found.right.residual_deg) == (0, 0, -3.0)
    assert found.difference_deg == 0.0


def test_two_within_their_own_tolerance_are_brought_together_by_moving_one() -> None:
    """17 and 18 teeth, k = 1, steps of 360/306 = 1.18°: 0.9° early and 0.9° late are 1.8° apart, 1° allowed."""
    found = plan_pair(PairReading(17, 18, 1.0, 25.9, 25.0), PairReading(17, 18, 1.0, 24.1, 25.0), 1.0, 1.0)
    assert found is not None
    moved = [m for m in (found.left, found.right) if (m.magneto_teeth, m.disc_teeth) != (0, 0)]
    assert len(moved) == 1 and abs(found.difference_deg) == pytest.approx(1.8 - 360 / 306)


def test_a_stagger_that_is_wanted_is_kept() -> None:
    found = plan_pair(PairReading(36, 36, 1.0, 14.0, 24.0), PairReading(36, 36, 1.0, 10.0, 20.0), 1.0, 1.0)
    assert found is not None
    assert (found.left.result_btdc_deg, found.right.result_btdc_deg, found.difference_deg) == (24.0, 20.0, 0.0)


@pytest.mark.parametrize("tolerances", [(0.0, 1.0), (1.0, nan), (1.0, -1.0)])
def test_a_tolerance_that_is_none_is_refused(tolerances) -> None:
    reading = PairReading(17, 18, 1.0, 20.0, 25.0)
    with pytest.raises(ValueError, match="must be above 0"):
        plan_pair(reading, reading, *tolerances)


def test_readings_that_the_planner_refuses_are_refused() -> None:
    good = PairReading(17, 18, 1.0, 20.0, 25.0)
    with pytest.raises(ValueError, match="401 teeth"):
        plan_pair(good, PairReading(401, 18, 1.0, 20.0, 25.0), 1.0, 1.0)
    with pytest.raises(ValueError, match="reading is nan"):
        plan_pair(PairReading(17, 18, 1.0, nan, 25.0), good, 1.0, 1.0)
