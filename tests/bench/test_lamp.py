"""One chain from contacts to crank: what the lamp should read is known after every act; others are doubted.

What the lamp reads is found here a second way: the crank is turned with rotation until the drawn contacts part.
"""

from __future__ import annotations

import json
import math
from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from magview.bench.actions import (
    CheckFirst,
    MoveTeeth,
    ReadLamp,
    SetBoth,
    TightenLock,
    TurnBackplate,
    TurnCrank,
    ViewSide,
)
from magview.bench.apply import apply
from magview.bench.lamp import (
    Standing,
    explanations,
    foretold,
    look_first,
    may_plan,
    questions,
    slack_deg,
    standing,
    unanswered,
)
from magview.bench.lamp_words import explanation_words, should_read_words, standing_words
from magview.bench.placing import new_bench
from magview.bench.saved import dump_state, load_state
from magview.bench.state import BenchState, firing_btdc_deg, gap_now_mm, opening_deg
from magview.bench.timing import timing_error
from magview.job.shift_plan import plan_of
from magview.physics.cam.setting import internal_timing
from magview.physics.engine.lamp import Cause
from magview.physics.uncertainty.instruments import instrument
from magview.spec.base import SpecError
from magview.spec.library import find_installation, shipped_names
from tests.counts import examples
from tests.magnetos import build
from tests.wording import says

INSTALLATIONS = {name: find_installation(name) for name in shipped_names("installations")}


def bench(name: str = "seven-radial-left") -> BenchState:
    return new_bench(INSTALLATIONS[name])


def wanted(name: str = "seven-radial-left") -> float:
    return INSTALLATIONS[name].engine.firing_btdc_deg.left


def lamp(state: BenchState, near_btdc_deg: float) -> float:
    """The crank turned with rotation until the gap opens, halved to a ten-thousandth of a degree."""

    def open_at(crank: float) -> bool:
        led_in = apply(apply(state, TurnCrank(crank - 60.0)), TurnCrank(crank))
        return gap_now_mm(led_in) > 0.0

    closed, opened = -near_btdc_deg - 3.0, -near_btdc_deg + 3.0
    assert not open_at(closed) and open_at(opened)
    while opened - closed > 1e-4:
        middle = (closed + opened) / 2
        closed, opened = (closed, middle) if open_at(middle) else (middle, opened)
    return -opened


@pytest.mark.parametrize("name", INSTALLATIONS)
@settings(max_examples=examples(5), deadline=None)
@given(plate=st.floats(-1, 1), gap=st.floats(0, 1), teeth=st.integers(-3, 3), off=st.floats(-3, 3))
def test_after_setting_and_shift_the_lamp_reads_what_it_should(name, plate, gap, teeth, off):
    """Contacts half a micron apart still count as touching, so the lamp opens a hair late."""
    state = apply(bench(name), ReadLamp("left", wanted(name) + off))
    state = apply(state, ViewSide("left"))
    low, high = state.magneto.gap_limits_mm
    to = internal_timing(state.magneto).adjust(low + gap * (high - low))
    state = apply(state, SetBoth(to.backplate_deg + plate, to.screw_deg))
    state = apply(state, MoveTeeth(teeth, -teeth))
    should = foretold(state, "left").btdc_deg
    assert lamp(state, should) == pytest.approx(should, abs=0.1)


@given(plate=st.floats(-3, 3), poles=st.sampled_from([2, 4]), e_gap=st.floats(6, 16))
def test_on_magnetos_nobody_tuned_to_the_plate_moves_the_reading_by_the_gears(plate, poles, e_gap):
    """The plate turns the arm about the cam, which is on the rotor: a degree of plate is a degree of opening."""
    lobes = tuple(360.0 / poles * n for n in range(poles))
    cam = {**build().model_dump(mode="python")["cam"], "lobe_peaks_deg": lobes}
    magneto = build(poles=poles, e_gap_deg=e_gap, cam=cam)
    installation = INSTALLATIONS["seven-radial-left"].model_copy(update={"magneto": magneto})
    state = apply(new_bench(installation), ReadLamp("left", 20.0))
    moved = apply(state, TurnBackplate(plate))
    assert foretold(moved, "left").btdc_deg == pytest.approx(20.0 - plate * 8 / 7, abs=1e-9)
    old = abs(plate * 8 / 7) > 0.005
    assert (standing(moved, "left") is Standing.OUT_OF_DATE) == old
    assert may_plan(moved, "left") != old


def test_a_reading_keeps_the_setting_it_was_taken_at():
    state = apply(bench(), TurnBackplate(0.7))
    read = apply(state, ReadLamp("left", 23.0)).engaged.left
    assert read.read_opening_deg(0.875) == pytest.approx(opening_deg(state), abs=1e-9)
    later = apply(apply(state, ReadLamp("left", 23.0)), TurnBackplate(-1.0)).engaged.left
    assert later.read_opening_deg(0.875) == pytest.approx(opening_deg(state), abs=1e-9)


def test_creep_of_the_lock_screw_makes_a_reading_out_of_date():
    state = apply(bench("four-opposed-left"), ReadLamp("left", 24.0))
    tight = apply(state, TightenLock(True))
    assert state.magneto.condition.screw_creep_deg and standing(tight, "left") is Standing.OUT_OF_DATE
    assert "out of date" in standing_words(tight, "left") and "should now read" in standing_words(tight, "left")


def test_read_again_it_stands():
    state = apply(apply(bench(), ReadLamp("left", wanted() - 4)), TurnBackplate(1.4))
    assert standing(state, "left") is Standing.OUT_OF_DATE and not may_plan(state, "left")
    read = apply(state, ReadLamp("left", round(foretold(state, "left").btdc_deg, 1)))
    assert standing(read, "left") is Standing.STANDS and may_plan(read, "left")
    assert standing_words(read, "left") == "" == should_read_words(read, "left")


def test_the_wrong_way_is_named_and_stops_the_plan():
    state = apply(apply(bench(), ReadLamp("left", wanted() - 4)), MoveTeeth(3, -3))
    assert "should now read" in should_read_words(state, "left")
    there, coupling = firing_btdc_deg(state, "left"), INSTALLATIONS["seven-radial-left"].coupling
    step = 360 * (1 / coupling.magneto_teeth - 1 / coupling.drive_teeth) * 8 / 7
    wrong = apply(state, ReadLamp("left", there - 6 * step))
    assert standing(wrong, "left") is Standing.CONTRADICTED and not may_plan(wrong, "left")
    words = standing_words(wrong, "left")
    assert (
        words.startswith("✗ Stop")
        and "the wrong way" in words
        and says("{count} teeth against rotation", count=3) in words
    )
    # Typed anew with nothing done in between, it is judged as before.
    again = apply(wrong, ReadLamp("left", there + 0.3))
    assert standing(again, "left") is Standing.STANDS
    assert standing(apply(again, ReadLamp("left", there - 5)), "left") is Standing.CONTRADICTED
    # Who has read it again and seen the same may go on from there; then it is a reading like any other.
    sure = apply(wrong, CheckFirst("left", "reading", True))
    assert standing(sure, "left") is Standing.STANDS and may_plan(sure, "left")
    assert standing(apply(sure, ReadLamp("left", 10.0)), "left") is Standing.STANDS
    assert not may_plan(apply(sure, CheckFirst("left", "reading", False)), "left")


def test_a_first_reading_contradicts_nothing():
    state = apply(apply(bench(), MoveTeeth(2, 0)), ReadLamp("left", 3.0))
    assert state.engaged.left.foretold is None and standing(state, "left") is Standing.STANDS


def test_a_quarter_turn_out_is_asked_about_before_teeth():
    state = apply(bench(), ReadLamp("left", wanted() - 90.5))
    assert questions(state, "left") == ("stroke", "mark", "finger") and not may_plan(state, "left")
    with pytest.raises(SpecError, match="stroke, mark and finger"):
        plan_of(state, "left")
    for check in ("finger", "stroke", "mark"):
        assert not may_plan(state, "left")
        state = apply(state, CheckFirst("left", check, True))
    assert may_plan(state, "left") and plan_of(state, "left").move.residual_deg is not None
    assert unanswered(apply(state, ReadLamp("left", wanted() - 91.0)), "left"), "another reading is asked about anew"
    near = apply(bench(), ReadLamp("left", wanted() - 90.0))
    assert not questions(near, "left") and look_first(near, "left") and may_plan(near, "left")
    assert not look_first(apply(bench(), ReadLamp("left", wanted() - 5.0)), "left")
    assert look_first(apply(bench(), ReadLamp("left", wanted() - 5.1)), "left")


def test_there_is_nothing_else_to_look_at():
    with pytest.raises(SpecError, match="nothing to look at first"):
        apply(bench(), CheckFirst("left", "weather", True))


def test_the_exhaust_stroke_is_told_from_the_compression_stroke():
    """Seven cylinders, four poles: a turn of the crank is 315° of rotor, half a spark's distance off.

    So the lamp changes 360/7° of crank away from where it does on compression (plain arithmetic).
    """
    state = apply(bench(), ReadLamp("left", wanted()))
    found = explanations(state, "left", wanted() - 360 / 7)
    assert found[0].cause is Cause.OTHER_STROKE and "exhaust stroke" in explanation_words(found[0])
    # The opening before it on the same stroke is another cylinder's, 720/7° of crank earlier.
    assert explanations(state, "left", wanted() + 720 / 7)[0].cause is Cause.OTHER_CYLINDER


def test_a_low_lobe_is_told_by_its_number():
    magneto = INSTALLATIONS["seven-radial-left"].magneto
    worn = magneto.condition.model_copy(update={"lobe_angle_error_deg": (0.0, 0.0, 2.0, 0.0)})
    installation = INSTALLATIONS["seven-radial-left"].model_copy(
        update={"magneto": magneto.model_copy(update={"condition": worn})}
    )
    state = apply(new_bench(installation), ReadLamp("left", 25.0))
    # The cam is on the rotor: 2° late there are 16/7° of crank.
    first = explanations(state, "left", 25.0 - 16 / 7)[0]
    assert (first.cause, first.lobe) == (Cause.OTHER_LOBE, 3)


@pytest.mark.parametrize("name", INSTALLATIONS)
def test_what_two_readings_may_be_apart_holds_as_often_as_it_says(name):
    """Two readings with a disc to 1° and a propeller turned by hand: even spreads of ±0.5° and ±0.25° (GUM 4.3.7)."""
    assert (instrument("disc-1deg").half_width, instrument("crank-hand").half_width) == (0.5, 0.25)
    rng = np.random.default_rng(20)
    disc, turning = rng.uniform(-0.5, 0.5, (2, 100_000)), rng.uniform(-0.25, 0.25, (2, 100_000))
    apart = np.abs(np.diff(disc + turning, axis=0))
    assert 0.93 <= float(np.mean(apart <= slack_deg(INSTALLATIONS[name]))) <= 0.98


def test_the_piston_s_side_of_the_top_is_not_lost():
    """Crank and rod, x = r cos a + √(l² − r² sin² a) (Heywood, ch. 2): as far past the top is not "no travel"."""
    name = "four-opposed-left"
    engine = INSTALLATIONS[name].engine
    state = apply(bench(name), ReadLamp("left", -wanted(name)))
    r, rod, a = engine.stroke_mm / 2, engine.rod_mm, math.radians(wanted(name))
    below = r + rod - r * math.cos(a) - math.sqrt(rod**2 - (r * math.sin(a)) ** 2)
    error = timing_error(state, "left")
    assert error.fires_mm == pytest.approx(-below, abs=1e-9)
    assert error.wanted_mm == pytest.approx(below, abs=1e-9)
    assert error.piston_mm == pytest.approx(-2 * below, abs=1e-9)


def test_a_bench_kept_before_readings_remembered_acts_still_opens(tmp_path):
    state = apply(apply(bench(), ReadLamp("left", 22.0)), TurnBackplate(1.0))
    data = json.loads(dump_state(state))
    for side in ("left", "right"):
        del data["state"]["engaged"][side]["foretold"], data["state"]["engaged"][side]["checked"]
    path = tmp_path / "bench-old.json"
    path.write_text(json.dumps(data), encoding="utf-8")
    found = load_state(path)
    assert found == replace(state, touched=found.touched)
    assert standing(found, "left") is Standing.OUT_OF_DATE


def test_what_was_foretold_and_checked_is_kept(tmp_path):
    state = apply(apply(bench(), ReadLamp("left", 22.0)), MoveTeeth(3, -3))
    state = apply(apply(state, ReadLamp("left", 12.0)), CheckFirst("left", "finger", True))
    path = tmp_path / "bench-new.json"
    path.write_text(dump_state(state), encoding="utf-8")
    assert load_state(path).engaged.left == state.engaged.left
