"""The coupling's planner, play and synchronising. Expected values: exhaustive search, limits."""

from __future__ import annotations

from dataclasses import asdict
from fractions import Fraction
from math import gcd, inf, lcm, nan

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from magview.bench.engine_words import move_outside_words, outside_words, speed_words
from magview.physics.engine.coupling import (
    Move,
    crank_advance_deg,
    finest_shift_deg,
    mesh,
    nearest_firings,
    plan,
    rotor_ahead_deg,
    rotor_shift,
    rotor_shift_deg,
    speed_mismatch,
    speed_ratio,
    synchronise,
)
from magview.physics.engine.meshing import meshings
from magview.spec.library import find_installation
from tests.counts import examples, swept

counts = st.integers(1, 400)
readings = st.decimals(-20, 60, places=1).map(float)


def bezout(a: int, b: int) -> tuple[int, int, int]:
    """g, x, y with a·x + b·y = g, the greatest common divisor: Euclid's algorithm (Knuth, TAOCP 1, 1.2.1 E)."""
    x, y, u, v = 1, 0, 0, 1
    while b:
        q, r = divmod(a, b)
        a, b, x, y, u, v = b, r, u, v, x - q * u, y - q * v
    return a, x, y


def fewest_teeth(nm: int, nd: int, steps: range) -> list[tuple[int, int]]:
    """For each step, of every pair with i/nm + j/nd = step/lcm within a turn of each face the one with the fewest
    teeth, then with the fewest at the disc."""
    g, x, y = bezout(nd, nm)  # i·nd + j·nm = step·g
    a, b = nd // g, nm // g
    step = np.array(steps)[:, None]
    i0 = step * x % b
    # All other pairs differ by (b, −a): those within a turn of the magneto's face are 2g of them.
    i = i0 + b * np.arange(-g - 1, g + 1)
    j = (step - i * a) // b
    assert (i * a + j * b == step).all() and (a * x + b * y) == 1
    teeth = np.where((abs(i) < nm) & (abs(j) < nd), 1000 * (abs(i) + abs(j)) + abs(j), 10**9)
    best = teeth.argmin(axis=1)[:, None]
    assert ((teeth == np.take_along_axis(teeth, best, 1)).sum(axis=1) == 1).all(), "two that are equally good"
    picked = (np.take_along_axis(teeth_of, best, 1)[:, 0].tolist() for teeth_of in (i, j))
    return list(zip(*picked, strict=True))


# ---------------------------------------------------------------------- planner


@pytest.mark.parametrize("most", [16, swept(40)])
def test_every_meshing_of_every_coupling_up_to_forty_teeth_once_by_the_fewest_teeth(most: int) -> None:
    """Against residues: i/nm + j/nd takes each multiple of 1/lcm of a turn (Bézout's identity, number theory)."""
    for nm in range(1, most + 1):
        for nd in range(1, most + 1):
            unit, g = lcm(nm, nd), gcd(nm, nd)
            pairs = [(m.magneto_teeth, m.disc_teeth) for m in meshings(nm, nd, Fraction(0), 2000)]
            steps = range(-((unit - 1) // 2), unit // 2 + 1)
            # Half a turn to either side holds each residue of a turn once: none is missing, none is there twice.
            assert sorted((i * nd + j * nm) // g for i, j in pairs) == list(steps), (nm, nd)
            assert sorted(pairs) == sorted(fewest_teeth(nm, nd, steps)), (nm, nd)


@pytest.mark.parametrize(("nm", "nd"), [(1, 1), (1, 13), (12, 1), (7, 7), (12, 18), (16, 20), (19, 20), (23, 18)])
@pytest.mark.parametrize(
    ("k", "reads", "wanted"), [("7/8", "22.0", "25.0"), ("3/2", "25.3", "25.3"), ("1", "90", "-90")]
)
def test_a_plan_is_that_of_a_search_over_every_pair_of_teeth(nm, nd, k, reads, wanted) -> None:
    """Every pair within a turn of each face is tried; what carries the rotor beyond half a turn moves the finger."""
    best: dict[Fraction, tuple[int, int, int, int]] = {}
    for i in range(-nm + 1, nm):
        for j in range(-nd + 1, nd):
            shift = Fraction(i, nm) + Fraction(j, nd)
            if -Fraction(1, 2) < shift <= Fraction(1, 2):
                best[shift] = min(best.get(shift, (999, 0, 0, 0)), (abs(i) + abs(j), abs(j), i, j))
    ratio, change = Fraction(k), Fraction(wanted) - Fraction(reads)
    ranked = sorted((abs(360 * s / ratio - change), teeth, disc, s, i, j) for s, (teeth, disc, i, j) in best.items())
    moves = plan(nm, nd, float(ratio), float(reads), float(wanted), most=2000)
    assert [(m.magneto_teeth, m.disc_teeth) for m in moves] == [(i, j) for *_, i, j in ranked]
    assert [abs(m.residual_deg) for m in moves] == [float(away) for away, *_ in ranked]


def test_a_move_that_half_the_teeth_of_a_face_do_not_hold() -> None:
    """Plain arithmetic: 9/19 − 10/20 = −1/38 of a turn, which at 7/8 is 10.827° of crank."""
    first = plan(19, 20, 0.875, 35.83, 25.0, most=1)[0]
    assert (first.magneto_teeth, first.disc_teeth) == (9, -10)
    assert first.rotor_shift_deg == pytest.approx(-360 / 38)
    assert first.residual_deg == pytest.approx(10.83 - 360 / 38 * 8 / 7)
    assert round(first.residual_deg, 2) == 0.0


@settings(deadline=None, max_examples=examples(50))
@given(nm=counts, nd=counts, k=st.sampled_from([0.875, 1.0, 1.125, 1.5, 7 / 12]), reads=readings, wanted=readings)
def test_the_best_of_a_large_coupling_is_within_half_a_finest_step(nm, nd, k, reads, wanted) -> None:
    """Multiples of 1/lcm of a turn lie that far from any timing within half a turn of the rotor."""
    rotor = abs(reads - wanted) * k
    first = plan(nm, nd, k, reads, wanted, most=1)[0]
    assert abs(first.residual_deg) <= (finest_shift_deg(nm, nd) / 2 + max(rotor - 180.0, 0.0)) / k + 1e-9
    assert abs(first.magneto_teeth) < nm and abs(first.disc_teeth) < nd


@settings(deadline=None, max_examples=examples(50))
@given(nm=counts, nd=counts, reads=readings, wanted=readings, most=st.integers(1, 60))
def test_a_list_is_as_long_as_asked_for_and_adds_up(nm, nd, reads, wanted, most) -> None:
    moves = plan(nm, nd, 0.875, reads, wanted, most)
    assert len(moves) == len({m.rotor_shift_deg for m in moves}) == min(most, lcm(nm, nd))
    assert [abs(m.residual_deg) for m in moves] == sorted(abs(m.residual_deg) for m in moves)
    for m in moves:
        assert -180.0 < m.rotor_shift_deg <= 180.0
        assert m.result_btdc_deg - wanted == pytest.approx(m.residual_deg, abs=1e-9)
        assert m.result_btdc_deg - reads == pytest.approx(m.crank_advance_deg, abs=1e-9)
        assert m.crank_advance_deg * 0.875 == pytest.approx(m.rotor_shift_deg, abs=1e-9)
        assert m.rotor_shift_deg == pytest.approx(360 * (m.magneto_teeth / nm + m.disc_teeth / nd), abs=1e-9)
    if most > 1:
        assert plan(nm, nd, 0.875, reads, wanted, most - 1) == moves[: most - 1]


def test_the_two_nearest_firings_are_one_on_either_side() -> None:
    # Ten teeth on each face, k = 1: steps of 36° of crank from 22°. Wanted 30°: 22° is 8° late, 58° is 28° early.
    moves = plan(10, 10, 1.0, 22.0, 30.0)
    assert [m.result_btdc_deg for m in nearest_firings(moves)] == [22.0, 58.0]
    # One tooth on each face: nothing but 22°.
    assert [m.result_btdc_deg for m in nearest_firings(plan(1, 1, 1.0, 22.0, 25.0))] == [22.0]
    # The old list named 22° twice here: sixteen pairs of teeth, four shifts.
    four = nearest_firings(plan(4, 4, 0.875, 22.0, 25.0))
    assert [m.result_btdc_deg for m in four] == pytest.approx([22.0, 22.0 + 90.0 / 0.875])


@given(nm=counts, nd=counts, reads=readings, wanted=readings)
def test_the_nearest_firings_are_neighbours(nm, nd, reads, wanted) -> None:
    near = nearest_firings(plan(nm, nd, 1.0, reads, wanted, most=12))
    if len(near) == 2:
        low, high = sorted(m.residual_deg for m in near)
        assert low <= 0 < high
        assert high - low == pytest.approx(finest_shift_deg(nm, nd), abs=1e-9)


def test_ties_are_real_ties() -> None:
    # 36 and 36 teeth, k = 1: steps of 10° of crank, and 5° asked for. In binary 8.2 − 3.2 is not quite 5.
    assert 8.2 - 3.2 != 5.0
    moves = plan(36, 36, 1.0, 8.2, 3.2, most=2)
    # Neither side is the nearer, so the teeth moved decide: no move at all comes first.
    assert [(m.magneto_teeth, m.disc_teeth, m.residual_deg) for m in moves] == [(0, 0, 5.0), (-1, 0, -5.0)]


def test_of_pairs_with_as_many_teeth_the_one_with_fewer_at_the_disc_is_shown() -> None:
    moves = plan(20, 20, 1.0, 0.0, 18.0, most=1)
    assert [(m.magneto_teeth, m.disc_teeth, m.residual_deg) for m in moves] == [(1, 0, 0.0)]


def test_timing_that_reads_right_needs_no_move() -> None:
    assert plan(19, 20, 0.875, 25.0, 25.0)[0] == Move(0, 0, 0.0, 0.0, 25.0, 0.0)


def test_a_ratio_that_no_decimal_writes_is_still_exact() -> None:
    # k = 7/12: one of 12 teeth is 30° of rotor, 360/7° of crank.
    first = plan(1, 12, 7 / 12, 0.0, 51.4, most=1)[0]
    assert first.crank_advance_deg == 360 / 7
    assert first == plan(1, 12, Fraction(7, 12), 0.0, 51.4, most=1)[0]


@pytest.mark.parametrize("ratio", [0.7071, 1.2345, 0.876, 19.99])
def test_a_ratio_near_no_gear_s_fraction_is_taken_as_written(ratio: float) -> None:
    """One tooth each way on 19 and 20 is 360/380 of a degree of the rotor, over the ratio on the crank."""
    assert crank_advance_deg(19, 20, 1, -1, ratio) == pytest.approx(360 / 380 / ratio, rel=1e-12)


def test_a_move_is_the_command_lines_record() -> None:
    first = plan(19, 20, 0.875, 22.0, 25.0, most=1)[0]
    assert list(asdict(first)) == [
        "magneto_teeth",
        "disc_teeth",
        "rotor_shift_deg",
        "crank_advance_deg",
        "result_btdc_deg",
        "residual_deg",
    ]
    assert all(type(v) is (int if k.endswith("_teeth") else float) for k, v in asdict(first).items())


@pytest.mark.parametrize(
    ("arguments", "what"),
    [
        ((0, 20, 0.875, 22.0, 25.0, 5), "0 teeth at the magneto"),
        ((19, 401, 0.875, 22.0, 25.0, 5), "401 teeth at the drive"),
        ((19, 20, 0.0, 22.0, 25.0, 5), "rotor turns 0 times"),
        ((19, 20, nan, 22.0, 25.0, 5), "rotor turns nan times"),
        ((19, 20, 0.875, nan, 25.0, 5), "reading is nan"),
        ((19, 20, 0.875, 22.0, inf, 5), "wanted timing is inf"),
        ((19, 20, 0.875, 22.0, 25.0, 0), "at least 1 move"),
    ],
)
def test_numbers_out_of_bounds_are_refused(arguments: tuple[int, int, float, float, float, int], what: str) -> None:
    with pytest.raises(ValueError, match=what):
        plan(*arguments)


def test_a_best_move_outside_the_tolerance_is_said_to_be() -> None:
    # One tooth on each side: no move at all, so 3° late stays 3° late.
    moves = plan(1, 1, 1.0, 22.0, 25.0)
    assert "3.00° of crank late" in outside_words(moves, 1.0)
    assert "3.00° of crank early" in outside_words(plan(1, 1, 1.0, 25.0, 22.0), 1.0)
    assert outside_words(moves, 3.0) == ""


def test_what_is_said_of_one_move_is_not_said_of_the_coupling() -> None:
    # 17 and 18 teeth, k = 1: a step is 360/306 of a degree of crank; the third best is a step off, on one side.
    best, second, third = plan(17, 18, 1.0, 25.1, 25.0, most=3)
    assert outside_words([best, second, third], 0.5) == ""
    assert move_outside_words(best, 0.5) == ""
    words = move_outside_words(third, 0.5)
    assert f"the magneto then fires {360 / 306 + 0.1:.2f}° of crank early, outside the tolerance of 0.5°" in words
    assert "coupling" not in words


def test_a_residual_just_outside_does_not_read_as_the_tolerance() -> None:
    words = move_outside_words(plan(1, 1, 1.0, 26.001, 25.0)[0], 1.0)
    assert "1.001° of crank early, outside the tolerance of 1°" in words


# ---------------------------------------------------------------------- shifts and meshing


@given(nm=counts, nd=counts, i=st.integers(-400, 400), j=st.integers(-400, 400))
def test_shifts_are_whole_multiples_of_the_finest(nm: int, nd: int, i: int, j: int) -> None:
    steps = rotor_shift(nm, nd, i, j) * lcm(nm, nd)
    assert steps.denominator == 1
    assert rotor_shift_deg(nm, nd, i, j) == pytest.approx(int(steps) * finest_shift_deg(nm, nd), abs=1e-9)
    assert crank_advance_deg(nm, nd, i, j, 1.5) == pytest.approx(rotor_shift_deg(nm, nd, i, j) / 1.5, abs=1e-9)


@given(nm=st.integers(1, 40), nd=st.integers(1, 40), i=st.integers(-80, 80), j=st.integers(-80, 80))
def test_slots_stand_where_their_teeth_are(nm: int, nd: int, i: int, j: int) -> None:
    meshed = mesh(nm, nd, i, j)
    assert sorted(meshed.magneto_slots) == list(range(nm))
    assert sorted(meshed.drive_slots) == list(range(nd))
    for tooth, slot in enumerate(meshed.magneto_slots):
        apart = meshed.magneto_deg + 360 * slot / nm - (meshed.disc_deg + 360 * tooth / nm)
        assert (apart + 180) % 360 - 180 == pytest.approx(0, abs=1e-9)
    for tooth, slot in enumerate(meshed.drive_slots):
        apart = 360 * slot / nd - (meshed.disc_deg + 360 * tooth / nd)
        assert (apart + 180) % 360 - 180 == pytest.approx(0, abs=1e-9)


def test_marks_stand_in_line_before_the_first_move() -> None:
    meshed = mesh(19, 20, 0, 0)
    assert (meshed.disc_deg, meshed.magneto_deg) == (0.0, 0.0)
    assert (meshed.magneto_slots[0], meshed.drive_slots[0]) == (0, 0)
    moved = mesh(19, 20, 1, -1)
    # The flange's mark is now one tooth further on the disc, the disc's mark one slot back on the drive.
    assert moved.magneto_slots[1] == 0
    assert moved.drive_slots[0] == 19


# ---------------------------------------------------------------------- drive


def test_speed_mismatch_names_the_ratio_that_is_needed() -> None:
    installation = find_installation("seven-radial-left")
    assert speed_mismatch(installation) is None
    wrong = installation.model_copy(update={"rotor_turns_per_crank_turn": 1.5})
    assert "is 1.5; 7 cylinders and 4 poles need 7/8, which is 0.875" in speed_words(wrong)
    # 7 cylinders on 6 poles would be 7/12; three decimals stand for it.
    six_poles = installation.model_copy(
        update={
            "magneto": installation.magneto.model_copy(update={"poles": 6}),
            "rotor_turns_per_crank_turn": 0.583,
        }
    )
    assert speed_mismatch(six_poles) is None


def test_no_engine_has_no_speed_ratio() -> None:
    with pytest.raises(ValueError, match="0 poles"):
        speed_ratio(7, 0)


def test_play_is_taken_up_with_rotation() -> None:
    assert rotor_ahead_deg(0.4, inf, 0.4) == 0.0
    assert rotor_ahead_deg(0.0, -inf, 0.4) == 0.4
    # Turned back by less than the play the rotor stands; by more, it follows.
    assert rotor_ahead_deg(0.0, -0.3, 0.4) == pytest.approx(0.3)
    assert rotor_ahead_deg(0.3, -0.3, 0.4) == pytest.approx(0.4)
    assert rotor_ahead_deg(0.4, 0.1, 0.4) == pytest.approx(0.3)
    assert rotor_ahead_deg(0.0, -5.0, 0.0) == 0.0


@given(
    steps=st.lists(st.floats(-3, 3), min_size=1, max_size=30), play=st.floats(0, 1), last=st.sampled_from([-9.0, 9.0])
)
def test_a_long_enough_approach_forgets_what_was_before(steps: list[float], play: float, last: float) -> None:
    ahead, drive = 0.0, 0.0
    for step in steps:
        before, ahead, drive = ahead + drive, rotor_ahead_deg(ahead, step, play), drive + step
        moved = ahead + drive - before
        assert 0.0 <= ahead <= play
        assert moved * step >= -1e-12  # the rotor never moves against the drive
        assert abs(moved) <= abs(step) + 1e-12
    assert rotor_ahead_deg(ahead, last, play) == (0.0 if last > 0 else play)


# ---------------------------------------------------------------------- synchronising

angles = st.floats(-30, 60)


def test_a_wanted_stagger_is_not_an_error() -> None:
    result = synchronise(
        24.5,
        20.5,
        wanted_left_deg=24.0,
        wanted_right_deg=20.0,
        timing_tolerance_deg=1.0,
        synchronising_tolerance_deg=1.0,
    )
    assert (result.left_error_deg, result.right_error_deg, result.difference_deg) == (0.5, 0.5, 0.0)
    assert result.left_ok and result.right_ok and result.synchronised


@pytest.mark.parametrize(
    ("left", "right", "verdicts"),
    [
        (25.9, 24.2, (True, True, False)),  # each within 1°, together 1.7° apart
        (27.0, 26.8, (False, False, True)),  # both early, but alike
        (25.1, 24.1, (True, True, True)),  # 1.0° apart to the last bit: at the limit passes
        (26.2, 25.4, (False, True, True)),
    ],
)
def test_verdicts(left: float, right: float, verdicts: tuple[bool, bool, bool]) -> None:
    result = synchronise(
        left,
        right,
        wanted_left_deg=25.0,
        wanted_right_deg=25.0,
        timing_tolerance_deg=1.0,
        synchronising_tolerance_deg=1.0,
    )
    assert (result.left_ok, result.right_ok, result.synchronised) == verdicts
    assert result.difference_deg == pytest.approx(left - right)  # positive: the left is the earlier


@given(left=angles, right=angles, wanted_left=angles, wanted_right=angles)
def test_exchanging_left_and_right_exchanges_the_verdicts(
    left: float, right: float, wanted_left: float, wanted_right: float
) -> None:
    tolerances = {"timing_tolerance_deg": 1.0, "synchronising_tolerance_deg": 1.0}
    one = synchronise(left, right, wanted_left_deg=wanted_left, wanted_right_deg=wanted_right, **tolerances)
    other = synchronise(right, left, wanted_left_deg=wanted_right, wanted_right_deg=wanted_left, **tolerances)
    assert one.difference_deg == -other.difference_deg
    assert (one.left_error_deg, one.left_ok) == (other.right_error_deg, other.right_ok)
    assert one.synchronised == other.synchronised


def test_a_reading_that_is_no_number_is_refused() -> None:
    with pytest.raises(ValueError, match="right magneto's reading is nan"):
        synchronise(
            25.0,
            nan,
            wanted_left_deg=25.0,
            wanted_right_deg=25.0,
            timing_tolerance_deg=1.0,
            synchronising_tolerance_deg=1.0,
        )
