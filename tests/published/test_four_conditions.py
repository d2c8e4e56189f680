"""The four conditions of a magneto timed to its engine, over one full engine cycle of every installation.

Source: FAA-H-8083-32B, *Aviation Maintenance Technician Handbook – Powerplant*, ch. 4 (internal timing, and
timing to the engine): when No. 1 is to fire, its piston stands at its degrees on compression, the magnet at
the E-gap, the contacts just open, and the distributor's finger points at the outlet of No. 1. A four-stroke engine
fires each cylinder once in two turns of the crank, so the four agree at one instant in 720° and at no other.

Where the openings fall over the cycle is worked out here from the numbers of cylinders alone.
"""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from magview.bench.actions import MoveTeeth, ReadLamp, TurnBackplate, TurnCrank, ViewSide
from magview.bench.apply import apply
from magview.bench.conditions import Condition, conditions, conditions_at_opening
from magview.bench.placing import new_bench
from magview.spec.library import find_installation, shipped_names
from tests.counts import sampled

INSTALLATIONS = {name: find_installation(name) for name in shipped_names("installations")}
EVEN = [name for name, i in INSTALLATIONS.items() if not i.magneto.compensated]
"""Those whose sparks are evenly spaced."""
SIDES = [(name, side) for name, i in INSTALLATIONS.items() for side in ("left", "right")]


def on_side(name: str, side: str):
    """A bench timed as wanted, the play taken up with rotation."""
    return apply(new_bench(INSTALLATIONS[name]), ViewSide(side))


def led_in(state, crank: float):
    """The crank at a place, come to with rotation, so that the drive's play is taken up (common practice)."""
    return apply(apply(state, TurnCrank(crank - 30.0)), TurnCrank(crank))


def met(state) -> dict[Condition, bool]:
    return {verdict.condition: verdict.met for verdict in conditions(state)}


@pytest.mark.parametrize(("name", "side"), sampled(SIDES, 5))
def test_all_four_agree_at_one_place_of_the_cycle_and_nowhere_else(name, side):
    state, installation = on_side(name, side), INSTALLATIONS[name]
    wanted = getattr(installation.engine.firing_btdc_deg, side)
    tolerance, ratio = installation.engine.timing_tolerance_deg, installation.rotor_turns_per_crank_turn
    assert all(v.met for v in conditions(led_in(state, -wanted)))
    state = apply(state, TurnCrank(-360.0 - wanted))
    for crank in np.arange(-360.0, 360.0, 1.0) - wanted:  # with rotation, from one exhaust stroke to the next
        state = apply(state, TurnCrank(float(crank)))
        away = abs(crank + wanted)
        if away * ratio <= 0.2 and away <= tolerance:
            assert all(v.met for v in conditions(state))
        elif away * ratio > 0.3:  # further than a hand stops from an opening
            assert not all(v.met for v in conditions(state)), crank


@pytest.mark.parametrize(("name", "side"), [(name, side) for name, side in SIDES if name in EVEN])
def test_at_each_spark_of_the_cycle_only_no_1_s_has_the_finger_at_no_1(name, side):
    """720°/n apart, the contacts open and the magnet is at the E-gap, for the cylinders in the firing order."""
    state, engine = on_side(name, side), INSTALLATIONS[name].engine
    wanted, n = getattr(engine.firing_btdc_deg, side), engine.cylinders
    outlets = []
    for spark in range(n):
        state = led_in(state, -wanted + spark * 720.0 / n)
        found = conditions(state)
        assert met(state)[Condition.MAGNET] and met(state)[Condition.CONTACTS]
        outlets.append(found[3].number)
        assert met(state)[Condition.FINGER] == (spark == 0) == met(state)[Condition.PISTON]
    assert outlets == list(engine.firing_order)


@pytest.mark.parametrize(("name", "side"), SIDES)
def test_the_same_degrees_on_the_exhaust_stroke_are_the_wrong_stroke(name, side):
    """The piston stands as high 360° later; the finger, at half the crank's speed, then points to the other side."""
    wanted = getattr(INSTALLATIONS[name].engine.firing_btdc_deg, side)
    piston, _, _, finger = conditions(led_in(on_side(name, side), 360.0 - wanted))
    assert not piston.met and piston.stroke.value == "exhaust"
    assert not finger.met
    assert abs(abs(finger.value) - 180.0) < 1e-6


def test_one_thing_wrong_is_one_verdict_wrong():
    """Fired late by the coupling only the piston is wrong; set late inside, the magnet with it (the same chapter)."""
    name = "seven-radial-left"
    engine = INSTALLATIONS[name].engine
    late = apply(on_side(name, "left"), ReadLamp("left", engine.firing_btdc_deg.left - 4.0))
    verdicts = conditions_at_opening(late, "left")
    assert [v.met for v in verdicts] == [False, True, True, True]
    assert verdicts[0].value == pytest.approx(engine.firing_btdc_deg.left - 4.0)
    inside = apply(on_side(name, "left"), TurnBackplate(4.0))
    assert [v.met for v in conditions_at_opening(inside, "left")] == [False, False, True, True]
    assert conditions_at_opening(inside, "left")[1].value == pytest.approx(4.0)


@pytest.mark.parametrize("name", INSTALLATIONS)
def test_a_cylinder_s_worth_of_teeth_turns_the_finger_away_from_no_1_at_its_degrees(name):
    """As many teeth as come nearest to a spark's distance: crank at its degrees, the finger at a neighbour."""
    state = on_side(name, "left")
    coupling, engine = INSTALLATIONS[name].coupling, INSTALLATIONS[name].engine
    teeth = round(720.0 / engine.cylinders * state.engaged.ratio / 360.0 * coupling.magneto_teeth)
    assert 0 < teeth < coupling.magneto_teeth
    moved = led_in(apply(state, MoveTeeth(teeth, 0)), -engine.firing_btdc_deg.left)
    assert not conditions(moved)[3].met
    assert conditions(moved)[3].number == engine.firing_order[1 % engine.cylinders]


def test_the_judged_instant_does_not_hang_on_where_the_crank_stands():
    state = on_side("nine-radial-left", "left")
    there = conditions_at_opening(state, "left")
    assert conditions_at_opening(apply(state, TurnCrank(123.0)), "left") == there
    assert conditions_at_opening(replace(state, rotor_deg=5.0), "left") == there
