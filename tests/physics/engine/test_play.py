"""Play between crank and rotor, and what friction holds: coming with rotation, back, and loaded against rotation."""

from __future__ import annotations

import json
from dataclasses import replace
from math import asin, cos, degrees, radians

import pytest
from hypothesis import given
from hypothesis import strategies as st

from magview.bench import actions as do
from magview.bench.apply import apply
from magview.bench.placing import new_bench
from magview.bench.state import crank_deg
from magview.physics.electric.magnet import STEP_S, rest_deg, swing
from magview.physics.engine.play import Play
from magview.spec.base import SpecError
from magview.spec.engine import Installation
from magview.spec.files import dump_json, parse_json, validate
from magview.spec.library import find_installation
from magview.spec.magneto import Detent

FREE = (float("-inf"), float("inf"))
TRAIN_CRANK_DEG, COUPLING_DEG = 2.0, 0.6


def on_engine(friction=0.0):
    """A seven-cylinder engine whose drive has 2° of crank of play, its magneto's coupling 0.6° of rotor."""
    item = find_installation("seven-radial-left")
    magneto = item.magneto.model_copy(
        update={
            "condition": item.magneto.condition.model_copy(update={"coupling_backlash_deg": COUPLING_DEG}),
            "detent": item.magneto.detent.model_copy(update={"friction_nm": friction}),
        }
    )
    return new_bench(item.model_copy(update={"magneto": magneto, "drive_play_deg": TRAIN_CRANK_DEG}))


def turned(state, by):
    return apply(state, do.TurnCrank(crank_deg(state) + by))


WHOLE = TRAIN_CRANK_DEG * 7 / 8 + COUPLING_DEG
"""All play as rotor degrees: the rotor turns 7/8 of the crank."""


def test_coming_with_rotation_leaves_no_play_and_turned_back_leaves_all_of_it():
    """Common practice: every reading ends coming with rotation."""
    state = turned(on_engine(), 10.0)
    here, rotor = crank_deg(state), state.rotor_deg
    assert state.engaged.play.deg == 0.0
    back = turned(turned(state, 10.0), -10.0)
    assert crank_deg(back) == pytest.approx(here)
    assert back.rotor_deg - rotor == pytest.approx(WHOLE), "at the same crank the rotor stands ahead by all the play"
    again = turned(turned(back, -10.0), 10.0)
    assert crank_deg(again) == pytest.approx(here) and again.rotor_deg == pytest.approx(rotor)


def test_friction_holds_the_rotor_while_the_crank_crosses_the_play():
    state = turned(on_engine(), 10.0)
    back = turned(state, -0.9 * WHOLE * 8 / 7)
    assert back.rotor_deg == pytest.approx(state.rotor_deg)
    assert back.engaged.train_deg == pytest.approx(TRAIN_CRANK_DEG * 7 / 8), "the drive train's play comes first"


def test_loading_the_train_against_rotation_takes_all_play_out():
    """TM 1-1500-204-23-1, General Aircraft Maintenance Manual, power plant (from memory): the drive train is loaded
    against rotation to take out its backlash."""
    state = turned(on_engine(), 10.0)
    back = turned(turned(state, 10.0), -10.0)
    loaded = apply(back, do.LoadTrain())
    assert crank_deg(loaded) == pytest.approx(crank_deg(back))
    assert loaded.rotor_deg == pytest.approx(state.rotor_deg) and loaded.engaged.play == Play()
    with pytest.raises(SpecError, match="no drive train to load"):
        apply(apply(back, do.MountMagneto(False)), do.LoadTrain())


def test_the_magnet_moves_the_rotor_through_the_coupling_s_play_alone_and_only_if_it_beats_friction():
    """Let go past neutral, the pull is against rotation: off the coupling's far side, not the train's."""
    for friction, moves in ((0.0, True), (10.0, False)):
        state = turned(turned(on_engine(friction), 20.0), -20.0)
        let_go = apply(state, do.SettleRotor())
        assert (let_go.rotor_deg < state.rotor_deg - 0.1) == moves
        assert state.rotor_deg - let_go.rotor_deg <= COUPLING_DEG + 1e-9
        assert let_go.engaged.train_deg == state.engaged.train_deg, "friction holds the train"
        assert crank_deg(let_go) == pytest.approx(crank_deg(state))


@given(
    st.lists(st.floats(-20.0, 20.0), max_size=20),
    st.floats(0.0, 5.0),
    st.floats(0.0, 5.0),
)
def test_play_is_never_more_than_there_is_and_the_rotor_never_moves_against_the_hand(steps, train, coupling):
    play, rotor = Play(), 0.0
    for step in steps:
        after = play.turned(step, train, coupling)
        assert 0.0 <= after.flange_ahead_deg <= train and 0.0 <= after.rotor_ahead_deg <= coupling
        moved = step + after.deg - play.deg
        assert moved * step >= -1e-9 and abs(moved) <= abs(step) + 1e-9
        play, rotor = after, rotor + moved
    assert play.turned(1000.0, train, coupling) == Play()
    assert play.turned(-1000.0, train, coupling) == Play(train, coupling)


def test_an_installation_that_says_nothing_has_the_play_of_its_coupling_alone():
    assert find_installation("seven-radial-left").drive_play_deg == 0.0
    state = on_engine()
    silent = replace(
        state,
        engaged=replace(
            state.engaged, installation=state.engaged.installation.model_copy(update={"drive_play_deg": 0.0})
        ),
    )
    back = turned(turned(silent, 10.0), -10.0)
    assert back.engaged.play == Play(0.0, COUPLING_DEG)


# ---------------------------------------------------------------------- dry friction against the magnet


def test_a_rotor_rests_where_the_pull_no_longer_beats_friction():
    """torque·sin(poles·θ) = friction: 0.5 of 1 N·m with four poles holds at 30°/4 = 7.5°."""
    assert rest_deg(4, 20.0, FREE, 0.5) == pytest.approx(degrees(asin(0.5)) / 4)
    assert rest_deg(4, -20.0, FREE, 0.5) == pytest.approx(-7.5)
    assert rest_deg(4, 5.0, FREE, 0.5) == 5.0
    assert rest_deg(4, 22.5, FREE, 1.0) == 22.5
    assert rest_deg(4, 44.9, FREE, 0.5) == 44.9, "near full register nothing pulls"


def test_the_swing_stops_within_the_band_that_friction_holds():
    detent = Detent(torque_nm=1.0, inertia_kg_m2=1e-4, damping_nms=0.02, friction_nm=0.3)
    angle, speed = swing(detent, 4, 20.0, 0.0, round(2.0 / STEP_S), FREE)
    assert speed == 0.0 and abs(angle) <= degrees(asin(0.3)) / 4 + 1e-6
    assert swing(detent, 4, 2.0, 0.0, 100, FREE) == pytest.approx((2.0, 0.0))
    # Friction takes energy at a steady rate: half a swing from rest loses friction times its arc.
    loose = Detent(torque_nm=1.0, inertia_kg_m2=1e-3, damping_nms=0.0, friction_nm=0.05)
    start, lowest, at = 20.0, 20.0, (20.0, 0.0)
    for _ in range(2000):
        at = swing(loose, 4, *at, 1, FREE)
        lowest = min(lowest, at[0])
        if at[1] >= 0.0 and at[0] < 0.0:
            break

    def energy(deg):
        return -cos(radians(4 * deg)) / 4.0

    assert energy(start) - energy(lowest) == pytest.approx(0.05 * radians(start - lowest), rel=0.02)


@pytest.mark.parametrize("value", [-0.1, 90.1])
def test_play_that_no_drive_has_is_refused_in_one_sentence(value):
    data = json.loads(dump_json(find_installation("seven-radial-left")))
    read = parse_json(json.dumps({**data, "drive_play_deg": value}).encode(), "this file")
    with pytest.raises(SpecError, match="drive_play_deg is"):
        validate(Installation, read, "this file")
    assert "drive_play_deg" not in data, "silent as older files are"
