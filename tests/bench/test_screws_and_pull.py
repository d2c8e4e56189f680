"""Screws that lock and creep, a rotor that is pulled, backlash that is taken up."""

from __future__ import annotations

import pytest

from magview.bench import actions as do
from magview.bench.apply import apply
from magview.bench.placing import new_bench
from magview.bench.state import circuit_now, crank_deg, gap_now_mm, opening_deg
from magview.spec.base import SpecError
from tests.magnetos import in_thousandths, on_the_published_coupling


def after(state, *sequence):
    for action in sequence:
        state = apply(state, action)
    return state


def test_a_tight_screw_does_not_turn_and_the_attempt_is_explained():
    state = after(new_bench(in_thousandths()), do.TightenLock(True), do.TightenClamps(True))
    with pytest.raises(SpecError, match="lock screw is tight: slacken it"):
        apply(state, do.TurnScrew(5.0))
    with pytest.raises(SpecError, match="clamp screws are tight: slacken them"):
        apply(state, do.TurnBackplate(1.0))
    with pytest.raises(SpecError, match="tight"):
        apply(state, do.SetBoth(1.0, 5.0))
    slack = after(state, do.TightenLock(False), do.TightenClamps(False), do.SetBoth(1.0, 5.0))
    assert (slack.backplate_deg, slack.screw_deg) == (1.0, 5.0)


def test_tightening_the_lock_screw_shifts_what_was_set_once():
    """Common practice: check again after tightening. The seven-cylinder magneto's screw creeps −3°."""
    state = new_bench(in_thousandths())
    tight = apply(state, do.TightenLock(True))
    assert tight.screw_deg == -3.0
    assert opening_deg(tight) < opening_deg(state), "creeping wider, the contacts open earlier"
    assert apply(tight, do.TightenLock(True)).screw_deg == -3.0
    assert apply(tight, do.TightenLock(False)).screw_deg == -3.0


def test_let_go_off_the_engine_it_falls_to_neutral_held_it_stays():
    state = new_bench(in_thousandths())
    assert after(state, do.Advance(4000)).rotor_deg == 11.0
    fallen = after(state, do.LetGo(), *[do.Advance(4000)] * 5)
    assert fallen.rotor_deg == pytest.approx(0.0, abs=0.01)
    assert after(state, do.SettleRotor()).rotor_deg == 0.0
    caught = after(state, do.LetGo(), do.Advance(20), do.HoldRotor())
    assert 0.0 < caught.rotor_deg < 11.0
    assert after(caught, do.Advance(4000)).rotor_deg == caught.rotor_deg


def test_on_the_engine_the_magnet_can_only_take_up_the_play():
    state = new_bench(on_the_published_coupling())  # backlash 0.4° of rotor
    crank = crank_deg(state)
    # Turned with rotation, the drive is against the rotor: it cannot fall back. Its neutral lies behind it.
    pushed = after(state, do.TurnRotor(12.0), do.LetGo(), *[do.Advance(4000)] * 3)
    assert pushed.rotor_deg == pytest.approx(12.0, abs=1e-9)
    # Turned back against rotation, it hangs ahead by the play, and the magnet pulls it down through it.
    back = after(state, do.TurnRotor(10.0))
    assert back.engaged.play_deg == pytest.approx(0.4)
    settled = after(back, do.LetGo(), *[do.Advance(4000)] * 3)
    assert settled.rotor_deg == pytest.approx(9.6, abs=1e-6)
    assert crank_deg(settled) == pytest.approx(crank_deg(back), abs=1e-9)
    assert crank_deg(state) == crank


def test_the_same_rotor_angle_from_either_side_is_another_crank_angle():
    """Common practice: approach every reading in the direction of rotation, so that backlash is taken up."""
    state = new_bench(on_the_published_coupling())
    forward = after(state, do.TurnRotor(5.0), do.TurnRotor(11.0))
    backward = after(state, do.TurnRotor(20.0), do.TurnRotor(11.0))
    assert crank_deg(forward) - crank_deg(backward) == pytest.approx(0.4 / 0.875)


def test_off_the_engine_rotor_and_crank_are_free_and_refitting_brings_them_together():
    state = new_bench(on_the_published_coupling())
    off = after(state, do.MountMagneto(False), do.TurnRotor(50.0), do.TurnCrank(-10.0))
    assert off.rotor_deg == 50.0
    assert crank_deg(off) == -10.0
    on = apply(off, do.MountMagneto(True))
    assert crank_deg(on) == pytest.approx(-10.0)
    assert on.rotor_deg == pytest.approx(11.0 + 0.875 * (25.0 - 10.0))


def test_the_circuit_sees_the_contacts():
    state = after(new_bench(in_thousandths()), do.SwitchIgnition(True), do.TurnRotor(25.0))
    assert gap_now_mm(state) > 0.1
    assert not circuit_now(state).lamp_sees_closed
    assert circuit_now(apply(state, do.SwitchIgnition(False))).lamp_sees_closed
    assert circuit_now(after(state, do.PullPlug(True))).grounded
    assert circuit_now(after(state, do.PullPlug(True), do.SetLeadFault("tab", True))).live_though_off
