"""Hidden draws: what they are, stated a second time from the standard library alone."""

from __future__ import annotations

import hashlib

import pytest
from hypothesis import given
from hypothesis import strategies as st

from magview.practice.draws import between, uniform, whole
from magview.practice.exercise import Exercise
from magview.practice.faults import begin, drawn
from magview.practice.library import find_exercise, shipped_exercises
from magview.spec.base import SpecError

SEEDS = range(50)


def by_hand(text: str) -> float:
    """The first 53 bits of SHA-256 as a fraction, bit by bit from the hexadecimal digits."""
    bits = "".join(f"{int(c, 16):04b}" for c in hashlib.sha256(text.encode("utf-8")).hexdigest())
    return sum(2.0**-i for i, bit in enumerate(bits[:53], start=1) if bit == "1")


@given(st.integers(0, 2**53 - 1), st.lists(st.text(min_size=1, max_size=8), min_size=1, max_size=4))
def test_a_draw_is_the_hash_of_seed_and_names(seed, names):
    try:
        "/".join(names).encode()
    except UnicodeEncodeError:
        return
    assert uniform(seed, *names) == by_hand("/".join([str(seed), *names]))


def test_known_answer():
    """SHA-256 of "abc" is a test vector of FIPS 180-4, appendix B: ba7816bf 8f01cfea …"""
    assert by_hand("abc") == (0xBA7816BF8F01CFEA >> 11) / 2**53
    assert hashlib.sha256(b"abc").hexdigest().startswith("ba7816bf8f01cfea")


def test_draws_fill_their_range_evenly():
    """Mean and variance of a uniform law, 1/2 and 1/12, within five standard errors."""
    values = [uniform(seed, "left", "gap", "size") for seed in range(4000)]
    mean = sum(values) / len(values)
    assert abs(mean - 0.5) < 5 * (1 / 12 / 4000) ** 0.5
    assert abs(sum((v - mean) ** 2 for v in values) / 4000 - 1 / 12) < 0.01
    assert {whole(seed, 1, 3, "x") for seed in range(100)} == {1, 2, 3}
    assert all(2.0 <= between(seed, 2.0, 5.0, "y") <= 5.0 for seed in range(200))


@pytest.mark.parametrize("name", shipped_exercises())
def test_every_size_lies_in_its_range_and_hangs_on_nothing_else(name):
    exercise = find_exercise(name)
    fields = {"lobe-low": "lobe_low", "disc-zero": "disc_zero", "disc-teeth": "disc_teeth", "contacts": "pip"}
    reversed_faults = exercise.model_copy(update={"faults": exercise.faults[::-1]})
    for fault in exercise.faults:
        alone: Exercise = exercise.model_copy(update={"faults": (fault,)})
        for seed in SEEDS:
            for side in exercise.sides:
                if fault.side not in (None, side) or (fault.kind != "contacts" and not fault.sized):
                    continue
                if fault.kind == "contacts" and drawn(exercise, seed, side).contacts != "mound":
                    assert drawn(exercise, seed, side).pip == 0.0
                    continue
                field = fields.get(fault.kind, fault.kind)
                size = getattr(drawn(exercise, seed, side), field)
                assert size == getattr(drawn(alone, seed, side), field)
                assert size == getattr(drawn(reversed_faults, seed, side), field)
                assert fault.size[0] <= abs(size) <= fault.size[1] or (size == 0 and fault.chance < 1)
                assert {"plus": size >= 0, "minus": size <= 0}.get(fault.way, True)


@pytest.mark.parametrize("name", shipped_exercises())
def test_the_same_seed_gives_the_same_room_and_another_seed_another(name):
    exercise = find_exercise(name)
    rooms = [begin(exercise, seed) for seed in (1, 1, 2)]
    assert rooms[0] == rooms[1] != rooms[2]


@pytest.mark.parametrize("seed", [-1, 2**53, 1.5, True, "7"])
def test_what_is_no_seed_is_refused(seed):
    with pytest.raises(SpecError, match="seed"):
        begin(find_exercise("find-the-e-gap"), seed)
