"""Two moments compared in words: hands first, then results, with the signs that the trade knows."""

from __future__ import annotations

import re
from dataclasses import replace

import pytest

from magview.bench.actions import PlaceMagneto, TurnBackplate, TurnScrew
from magview.bench.apply import apply, new_bench
from magview.bench.changes import changes
from magview.spec.library import find_installation, find_magneto, shipped_names


@pytest.fixture
def bench():
    return new_bench(find_installation("seven-radial-left"))


def test_nothing_has_changed(bench):
    assert changes(bench, bench) == []


@pytest.mark.parametrize("name", shipped_names("magnetos"))
def test_the_plate_with_rotation_opens_later_and_leaves_the_gap(name):
    """Common practice: the backplate shifts the opening alone, by its own angle over the cam's gearing."""
    before = new_bench(find_magneto(name))
    after = apply(before, TurnBackplate(before.backplate_deg + 0.5))
    hand, result = [c for c in changes(before, after) if "limits" not in c]
    assert hand == "The backplate was turned 0.50° with rotation."
    found = re.fullmatch(r"The contacts open ([\d.]+)° of rotor later\.", result)
    assert found is not None
    assert float(found[1]) == pytest.approx(0.5 / before.magneto.cam.turns_per_rotor_turn, abs=0.006)


def test_the_screw_closer_opens_later_and_less_wide(bench):
    told = " ".join(changes(bench, apply(bench, TurnScrew(4.0))))
    assert "contacts closer" in told and "later" in told and "narrower" in told
    back = " ".join(changes(apply(bench, TurnScrew(4.0)), bench))
    assert "contacts wider" in back and "earlier" in back and "is 0." in back and "wider: " in back


def test_a_setting_out_of_its_limits_is_said_both_ways(bench):
    wrong = apply(bench, TurnBackplate(bench.backplate_deg + 3.0))
    assert "It is out of its limits now." in changes(bench, wrong)
    assert "It is within its limits now." in changes(wrong, bench)


def test_without_numbers_there_is_no_digit(bench):
    after = apply(apply(bench, TurnScrew(-6.0)), TurnBackplate(1.5))
    after = replace(
        after, rotor_deg=after.rotor_deg - 30.0, lock_tight=True, lead=replace(after.lead, switch_on=True)
    )
    told = changes(bench, after, numbers=False)
    assert len(told) >= 6 and not re.search(r"\d", " ".join(told))
    assert "The rotor was turned against rotation." in told and "The switch is on." in told


def test_lengths_in_inches(bench):
    (told,) = [c for c in changes(bench, apply(bench, TurnScrew(-6.0)), inches=True) if "gap" in c]
    assert "mm" not in told and re.search(r"\d (?:in|thou)\b", told)


def test_another_magneto_is_all_there_is_to_say(bench):
    after = apply(bench, PlaceMagneto(find_magneto("traced-six")))
    assert changes(bench, after) == ["Another magneto is on the bench: " + after.magneto.name + "."]
