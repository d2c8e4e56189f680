"""A magneto on its engine: crank, rotor, teeth and lamp hang together as they do on the aircraft."""

from __future__ import annotations

import dataclasses
from dataclasses import replace
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from magview.bench.actions import (
    MoveTeeth,
    PaintMarks,
    PlaceMagneto,
    ReadLamp,
    TurnBackplate,
    TurnCrank,
    TurnRotor,
    TurnScrew,
    ViewSide,
    WantTiming,
)
from magview.bench.apply import apply
from magview.bench.placing import new_bench
from magview.bench.state import BenchState, crank_deg, firing_btdc_deg, opening_deg
from magview.bench.timing import both_plan, both_words, synchronising, timing_error, timing_plan, timing_verdict
from magview.bench.tooth_steps import coupling_words, marks_words, step_words, steps_between
from magview.drawing.drive_end import drive_pose
from magview.spec.base import SpecError
from magview.spec.library import find_installation, shipped_names
from tests.magnetos import in_thousandths, on_the_published_coupling

INSTALLATIONS = {name: find_installation(name) for name in shipped_names("installations")}


def bench(name: str = "") -> BenchState:
    """A shipped installation, or the published coupling."""
    return new_bench(INSTALLATIONS[name] if name else on_the_published_coupling())


@pytest.mark.parametrize("name", INSTALLATIONS)
def test_a_new_bench_fires_as_wanted_with_the_rotor_at_the_e_gap(name):
    state = bench(name)
    engine = INSTALLATIONS[name].engine
    assert firing_btdc_deg(state, "left") == pytest.approx(engine.firing_btdc_deg.left, abs=1e-9)
    assert firing_btdc_deg(state, "right") == pytest.approx(engine.firing_btdc_deg.right, abs=1e-9)
    # The rotor stands where the contacts open, so the crank stands where it fires.
    assert crank_deg(state) == pytest.approx(-firing_btdc_deg(state, state.engaged.side), abs=1e-9)
    assert timing_verdict(state, "left")
    assert timing_verdict(state, "right")


@given(st.floats(-700, 700))
def test_the_rotor_goes_with_the_crank_by_the_gears(crank):
    state = bench()
    turned = apply(state, TurnCrank(crank))
    assert crank_deg(turned) == pytest.approx(crank, abs=1e-9)
    # Seven cylinders, four poles: the rotor turns 7/8 of the crank (cylinders/(2·poles), textbooks, from memory);
    # turned back, it first stays behind by the coupling's backlash of 0.4° (common practice: approach with rotation).
    step = 0.875 * (crank - crank_deg(state))
    taken_up = min(max(-step, 0.0), 0.4)
    assert turned.rotor_deg - state.rotor_deg == pytest.approx(step + taken_up, abs=1e-9)


def test_the_published_vernier_step_moves_rotor_and_firing_together():
    """19 and 20 teeth: one step is 1/380 of a turn (a technical article on magneto couplings)."""
    state = apply(bench(), ReadLamp("left", 22.0))
    moved = apply(state, MoveTeeth(1, -1))
    assert moved.rotor_deg - state.rotor_deg == pytest.approx(360 / 380, abs=1e-9)
    assert firing_btdc_deg(moved, "left") - 22.0 == pytest.approx(
        float(Fraction(360, 380) * Fraction(8, 7)), abs=1e-9
    )
    assert crank_deg(moved) == pytest.approx(crank_deg(state), abs=1e-9), "the crank must stay where it is"
    assert firing_btdc_deg(moved, "right") == pytest.approx(25.0), "the other magneto must not move"


def test_a_new_reading_is_the_new_as_found():
    state = apply(apply(bench(), ReadLamp("left", 22.0)), MoveTeeth(2, -2))
    read = apply(state, ReadLamp("left", 24.0))
    assert (read.engaged.left.magneto_teeth, read.engaged.left.disc_teeth) == (0, 0)
    assert firing_btdc_deg(read, "left") == pytest.approx(24.0)
    assert crank_deg(read) == pytest.approx(crank_deg(state))


def test_setting_the_contacts_late_makes_it_fire_late():
    """Turning the plate with rotation opens later; by the gears, 1° of rotor is 8/7° of crank."""
    state = bench()
    late = apply(state, TurnBackplate(1.4))
    assert firing_btdc_deg(late, "left") == pytest.approx(25.0 - 1.4 * 8 / 7, abs=1e-9)
    assert opening_deg(late) == pytest.approx(11.0 + 1.4)


def test_looking_at_the_other_magneto_keeps_the_crank():
    state = apply(apply(bench(), ReadLamp("right", 21.0)), TurnCrank(-30.0))
    other = apply(state, ViewSide("right"))
    assert crank_deg(other) == pytest.approx(-30.0)
    assert other.rotor_deg != pytest.approx(state.rotor_deg)
    assert apply(other, ViewSide("left")).rotor_deg == pytest.approx(state.rotor_deg)


def test_the_error_three_ways():
    state = apply(bench("four-opposed-left"), ReadLamp("left", 20.0))
    error = timing_error(state, "left")
    engine = INSTALLATIONS["four-opposed-left"].engine
    assert error.crank_deg == pytest.approx(20.0 - engine.firing_btdc_deg.left)
    assert error.rotor_deg == pytest.approx(error.crank_deg)  # four cylinders, two poles: rotor at crank speed
    # Crank and rod, x = r cos a + √(l² − r² sin² a) (Heywood, ch. 2).
    r, rod = engine.stroke_mm / 2, engine.rod_mm

    def height(btdc: float) -> float:
        import math

        a = math.radians(btdc)
        return r * math.cos(a) + math.sqrt(rod**2 - (r * math.sin(a)) ** 2)

    assert error.piston_mm == pytest.approx(height(engine.firing_btdc_deg.left) - height(20.0), abs=1e-9)


def test_staggered_magnetos_are_in_step_when_each_is_as_wanted():
    state = bench("four-opposed-left")
    assert state.engaged.left.wanted_btdc_deg != state.engaged.right.wanted_btdc_deg
    assert synchronising(state).synchronised
    apart = apply(state, ReadLamp("right", state.engaged.right.wanted_btdc_deg + 2.0))
    assert synchronising(apart).difference_deg == pytest.approx(-2.0)
    assert not synchronising(apart).synchronised


def test_the_plan_is_made_from_as_found_whatever_was_moved_since():
    state = apply(bench(), ReadLamp("left", 22.0))
    before = timing_plan(state, "left")
    after = timing_plan(apply(state, MoveTeeth(3, -3)), "left")
    assert before == after
    best = before[0]
    made = apply(state, MoveTeeth(best.magneto_teeth, best.disc_teeth))
    assert firing_btdc_deg(made, "left") == pytest.approx(best.result_btdc_deg, abs=1e-9)
    assert timing_verdict(made, "left")


def test_contacts_that_never_open_give_no_timing():
    state = apply(bench(), TurnScrew(60.0))
    assert timing_error(state, "left") is None
    assert timing_plan(state, "left") == []
    assert synchronising(state) is None
    assert not timing_verdict(state, "left")
    with pytest.raises(SpecError, match="never open"):
        apply(state, ReadLamp("left", 22.0))


@pytest.mark.parametrize(
    "action", [TurnCrank(1.0), ReadLamp("left", 20.0), WantTiming("left", 20.0), MoveTeeth(1, 0), ViewSide("right")]
)
def test_without_an_engine_what_needs_one_is_refused(action):
    bare = apply(bench(), PlaceMagneto(bench().magneto))
    with pytest.raises(SpecError, match="installation"):
        apply(bare, action)


engine_actions = st.one_of(
    st.builds(TurnCrank, st.floats()),
    st.builds(ReadLamp, st.sampled_from(["left", "right"]), st.floats()),
    st.builds(WantTiming, st.sampled_from(["left", "right"]), st.floats()),
    st.builds(MoveTeeth, st.integers(-30, 30), st.integers(-30, 30)),
    st.builds(ViewSide, st.sampled_from(["left", "right"])),
    st.builds(TurnRotor, st.floats()),
    st.builds(TurnScrew, st.floats()),
)


@given(st.lists(engine_actions, max_size=25))
def test_any_actions_leave_a_legal_state_or_are_refused(sequence):
    state = bench()
    for action in sequence:
        before = state
        try:
            state = apply(state, action)
        except SpecError:
            assert state is before
        assert dataclasses.is_dataclass(state)
        assert abs(crank_deg(state)) < 3e6
        for side in ("left", "right"):
            timing_error(state, side)
            timing_plan(state, side, most=1)


@given(st.tuples(st.integers(-9, 9), st.integers(-9, 9)), st.tuples(st.integers(-9, 9), st.integers(-9, 9)))
def test_steps_are_single_teeth_and_lead_there(start, end):
    at = start
    for step in steps_between(start, end):
        moved = (step.magneto_teeth - at[0], step.disc_teeth - at[1])
        assert sorted(map(abs, moved)) == [0, 1]
        assert moved[0 if step.face == "magneto flange" else 1] == step.teeth
        at = (step.magneto_teeth, step.disc_teeth)
    assert at == end
    assert len(steps_between(start, end)) == abs(end[0] - start[0]) + abs(end[1] - start[1])


def test_all_of_a_comes_before_b_also_when_taken_up_again_in_the_middle():
    at, way = (0, 0), []
    while at != (3, -3):
        step = steps_between(at, (3, -3))[0]
        at = (step.magneto_teeth, step.disc_teeth)
        way.append(at)
    assert way == [(0, -1), (0, -2), (0, -3), (1, -3), (2, -3), (3, -3)]


def test_the_paint_stays_on_the_metal_when_the_lamp_is_read_again():
    moved = apply(apply(bench(), ReadLamp("left", 22.0)), MoveTeeth(3, -3))
    read = apply(moved, ReadLamp("left", 25.2))
    assert read.engaged.mounting.marks_apart == (3, -3)
    assert drive_pose(read, read.engaged).turns_deg == drive_pose(moved, moved.engaged).turns_deg
    painted = apply(read, PaintMarks())
    assert painted.engaged.mounting.marks_apart == (0, 0)
    assert firing_btdc_deg(painted, "left") == pytest.approx(25.2)
    assert painted.rotor_deg == read.rotor_deg


def test_the_words_of_a_step_name_face_way_viewpoint_and_marks():
    # Seen from the drive end it turns anticlockwise, so clockwise as one stands at the engine.
    a, b = (steps_between((0, 0), (3, -3))[place] for place in (0, 3))
    mounting = bench().engaged.mounting
    words = step_words(a, "anticlockwise", mounting)
    assert words.startswith("A: move the disc 1 tooth against rotation (anticlockwise as you stand at the engine) on")
    assert "disc 1 tooth against rotation from the drive flange's mark" in words
    words = step_words(b, "anticlockwise", mounting)
    assert words.startswith("B: move the magneto flange 1 tooth with rotation (clockwise as you stand at the engine)")
    assert "magneto flange 1 tooth with rotation from the disc's mark" in words
    assert "in line with the drive flange's mark" in marks_words(replace(mounting, magneto_teeth=1))


@pytest.mark.parametrize("name", INSTALLATIONS)
def test_the_drawn_marks_stand_apart_by_the_teeth_moved(name):
    installation = INSTALLATIONS[name]
    coupling = installation.coupling
    state = apply(bench(name), MoveTeeth(2, -3))
    pose = drive_pose(state, state.engaged)
    sense = 1 if installation.magneto.rotation == "clockwise" else -1
    assert sense * (pose.disc - pose.flange) == pytest.approx(-3 * 360 / coupling.drive_teeth)
    assert sense * (pose.hub - pose.disc) == pytest.approx(2 * 360 / coupling.magneto_teeth)


def test_the_coupling_is_told_by_its_teeth_the_drive_first():
    assert coupling_words(bench().engaged) == "20 teeth at the drive, 19 at the magneto."


def test_without_an_engine_there_is_nothing_to_synchronise():
    alone = new_bench(in_thousandths())
    assert synchronising(alone) is None
    with pytest.raises(SpecError, match="not on an engine"):
        timing_error(alone, "left")


def test_both_magnetos_are_brought_right_together_by_the_moves_named():
    """Made on the bench, the pair is within every tolerance of the engine; then nothing more is said."""
    state = bench()
    engine, wanted = state.engaged.installation.engine, state.engaged.installation.engine.firing_btdc_deg
    assert both_words(state) == ""
    for act in (ReadLamp("left", wanted.left - 4.0), ReadLamp("right", wanted.right + 5.0)):
        state = apply(state, act)
    found, said = both_plan(state), both_words(state)
    assert found is not None
    for side, move in (("left", found.left), ("right", found.right)):
        assert f"it then fires {move.result_btdc_deg:.2f}°" in said
        for act in (ViewSide(side), MoveTeeth(move.magneto_teeth, move.disc_teeth)):
            state = apply(state, act)
        assert abs(firing_btdc_deg(state, side) - getattr(wanted, side)) <= engine.timing_tolerance_deg
    result = synchronising(state)
    assert abs(result.difference_deg) <= engine.synchronising_tolerance_deg and result.synchronised
    assert both_words(state) == ""
