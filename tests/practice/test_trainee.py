"""Every shipped exercise can be solved with its instruments alone: a scripted trainee gets full marks."""

from __future__ import annotations

import pytest

from magview.practice.actions import HandIn
from magview.practice.library import find_exercise, shipped_exercises
from magview.practice.marking import mark
from tests.counts import THOROUGH, examples
from tests.practice.trainee import Trainee

SEEDS = range(50 if THOROUGH else 4)


@pytest.mark.parametrize("name", shipped_exercises())
def test_solved_by_instruments_whatever_the_seed(name):
    exercise = find_exercise(name)
    for seed in SEEDS:
        trainee = Trainee(exercise, seed)
        attempt = trainee.work()
        marking = mark(attempt, trainee.hands.session.states)
        short = [row for row in marking.rows if not row.full]
        assert marking.percent == 100.0 and marking.passed and not short, (seed, marking.verdict, short)


@pytest.mark.parametrize("name", shipped_exercises())
def test_handing_in_what_was_found_passes_nowhere(name):
    """There is something to do in every exercise, whatever is drawn."""
    exercise = find_exercise(name)
    for seed in range(examples(20)):
        trainee = Trainee(exercise, seed)
        trainee.hands.act(HandIn())
        assert not mark(trainee.hands.session.attempt).passed


def test_enough_is_shipped():
    names = shipped_exercises()
    assert len(names) >= 12
    assert [find_exercise(n).level for n in names] == sorted(find_exercise(n).level for n in names)
    assert {find_exercise(n).level for n in names} == {1, 2, 3, 4, 5}
    kinds = {fault.kind for n in names for fault in find_exercise(n).faults}
    assert {
        "opening",
        "gap",
        "plate",
        "creep",
        "lobe-low",
        "contacts",
        "dry-felt",
        "teeth",
        "disc-zero",
        "lead",
    } <= kinds
    assert {"wrong-stroke", "rotor-at-neutral", "backlash", "vernier"} <= kinds
    assert any(find_exercise(n).both_sides for n in names)
