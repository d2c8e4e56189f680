"""Where a run stops: found by sampling the gap and by counting poles, a second way to each."""

from __future__ import annotations

import math
from itertools import pairwise

import numpy as np
import pytest

from magview.bench.actions import TurnBackplate, TurnRotor, WearHeel
from magview.bench.apply import apply
from magview.bench.events import KINDS, events_deg, nearest_event, next_event, run_step
from magview.bench.placing import new_bench
from magview.bench.state import gap_now_mm
from magview.physics.cam.setting import internal_timing
from magview.spec.library import find_magneto, shipped_names


def at(name, rotor_deg, *actions):
    state = new_bench(find_magneto(name))
    for action in (*actions, TurnRotor(rotor_deg)):
        state = apply(state, action)
    return state


def gap(state, rotor_deg):
    return gap_now_mm(apply(state, TurnRotor(rotor_deg)))


@pytest.mark.parametrize("name", shipped_names("magnetos"))
def test_just_before_the_contacts_open_there_is_no_gap_and_just_after_there_is(name):
    state = at(name, 1.0, TurnBackplate(0.7))
    opens, closes = next_event(state, "contacts just open"), next_event(state, "contacts just close")
    assert gap(state, opens - 0.3) == 0.0 < gap(state, opens + 0.6)
    assert gap(state, closes - 0.6) > 0.0 == gap(state, closes + 0.3)


@pytest.mark.parametrize("name", shipped_names("magnetos"))
def test_at_the_top_of_a_lobe_the_gap_is_as_wide_as_it_gets(name):
    state = at(name, 1.0, TurnBackplate(-0.5))
    top = next_event(state, "top of lobe")
    angles = np.linspace(top - 40.0, top + 40.0, 2001)
    widest = internal_timing(state.magneto).gap_mm(angles, state.backplate_deg, state.screw_deg).max()
    assert gap(state, top) == pytest.approx(widest, abs=1e-9)


def test_neutrals_come_with_the_poles_and_e_gaps_with_the_lobes():
    """Four poles: a neutral each 90°; the file's E-gap, 11°, past each of them."""
    state = at("seven-radial", 3.0)
    assert next_event(state, "neutral") == pytest.approx(90.0)
    assert next_event(state, "neutral", forward=False) == pytest.approx(0.0)
    assert next_event(state, "E-gap") == pytest.approx(11.0)
    assert next_event(state, "E-gap", forward=False) == pytest.approx(11.0 - 90.0)


@pytest.mark.parametrize("kind", KINDS)
@pytest.mark.parametrize("forward", [True, False])
def test_from_one_event_it_goes_on_to_the_next_and_a_turn_of_the_cam_has_as_many_as_lobes(kind, forward):
    """The nine-cylinder cam makes 4/9 of a turn a rotor turn: nine sparks in 810° of rotor, and nine neutrals."""
    state = at("nine-radial", 2.0)
    places = [state.rotor_deg]
    for _ in range(10):
        places.append(next_event(apply(state, TurnRotor(places[-1])), kind, forward))
    assert all((after > before) == forward and after != before for before, after in pairwise(places))
    assert abs(places[10] - places[1]) == pytest.approx(810.0)


def test_contacts_that_never_open_are_nothing_to_run_to():
    state = at("seven-radial", 20.0, WearHeel(0.5))
    assert gap(state, 25.0) == 0.0
    assert next_event(state, "contacts just open") is None
    assert run_step(state, 5.0, "contacts just close") == (25.0, False), "it runs on"
    assert nearest_event(state, 11.2, 0.5) == (pytest.approx(11.0), "E-gap")


def test_a_strange_event_is_refused_with_those_there_are():
    with pytest.raises(ValueError, match="“dawn” is not something to stop at") as told:
        next_event(at("seven-radial", 0.0), "dawn")
    assert all(kind in str(told.value) for kind in KINDS)


def test_a_run_ends_at_its_goal_and_not_past_it():
    state = at("seven-radial", 3.0)
    assert run_step(state, 5.0, "E-gap") == (8.0, False)
    assert run_step(state, 20.0, "E-gap") == (pytest.approx(11.0), True)
    assert run_step(state, -20.0, "neutral") == (pytest.approx(0.0, abs=1e-9), True)
    assert run_step(state, -20.0, None) == (-17.0, False)


def test_the_nearest_event_is_found_from_either_side_within_reach():
    state = at("seven-radial", 0.0)
    assert nearest_event(state, 359.6, 0.5) == (pytest.approx(360.0), "neutral")
    assert nearest_event(state, 90.4, 0.5) == (pytest.approx(90.0), "neutral")
    assert nearest_event(state, 45.0, 0.5) is None
    # The plate 1° with rotation opens 1° later: between the two it is the nearer that counts.
    late = at("seven-radial", 0.0, TurnBackplate(1.0))
    assert nearest_event(late, 11.9, 5.0) == (pytest.approx(12.0), "contacts just open")
    assert nearest_event(late, 11.1, 5.0) == (pytest.approx(11.0), "E-gap")


def test_each_kind_lists_its_angles_within_one_period():
    state = at("four-opposed", 0.0)
    for kind in KINDS:
        angles, period = events_deg(state, kind)
        assert np.ptp(angles) < period and math.isfinite(period)
        assert len(angles) * 180.0 == pytest.approx(period), "two poles, two lobes: one event each half turn"
