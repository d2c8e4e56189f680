"""Top dead centre by a stop, in a cylinder with a link rod as well, against a mechanism written for this test alone.

That top dead centre lies halfway between the two stop readings is common practice for a rod on the crank pin. For
link rods no table is cited: here the pins are points of the complex plane, found from the rods' lengths, and the
places of stop and top are sought with scipy's scalar methods (any text on the dynamics of radial engines has the
figure). Rotation of an engine is given from the rear in many manuals, from the propeller in others: seen from the
other end a turn is the other way round, which is plain geometry.
"""

from __future__ import annotations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from magview.drawing.crank_end import engine_sense
from magview.job import derived
from magview.job.readings import rows
from magview.job.sheet import change, change_in, new_job
from magview.physics.engine.crank import true_tdc_from_stops
from magview.physics.engine.dead_centre import (
    has_link_rod,
    stop_middle_deg,
    stop_reach_deg,
    tdc_from_stops,
    timing_centre_deg,
)
from magview.physics.uncertainty.measurement import judge_linear
from magview.physics.uncertainty.setting_uncertainty import EngineReadings, engine_measurement
from magview.spec.base import SpecError
from magview.spec.engine import Engine
from magview.spec.library import find_installation
from tests.counts import examples
from tests.published.pins import Pins, radial


@given(
    cylinders=st.sampled_from([3, 5, 7, 9]),
    timing=st.integers(1, 9),
    master=st.integers(1, 9),
    drop=st.floats(4.0, 40.0),
    zero=st.floats(0.0, 360.0),
)
@settings(max_examples=examples(80), deadline=None)
def test_the_top_by_a_stop_is_the_mechanisms_own(cylinders, timing, master, drop, zero):
    engine = radial(cylinders, (timing - 1) % cylinders + 1, (master - 1) % cylinders + 1)
    pins = Pins(engine, engine.timing_cylinder)
    top, (before, after) = pins.top(), pins.stops(drop)
    # A disc that counts with rotation, from anywhere; and one that counts degrees before.
    found = tdc_from_stops(engine, (after + zero) % 360, (before + zero) % 360)
    assert abs((found - top - zero + 180) % 360 - 180) < 2e-5
    found = tdc_from_stops(engine, (zero - before) % 360, (zero - after) % 360, counts="before")
    assert abs((found - zero + top + 180) % 360 - 180) < 2e-5
    assert stop_middle_deg(engine, after - before) == pytest.approx((after + before) / 2 - top, abs=2e-5)


def test_halfway_is_off_where_a_link_rod_meets_the_stop():
    """It matters: with these rods the middle lies a fifth of a degree of crank off the top."""
    engine = radial(timing=2)
    pins = Pins(engine, 2)
    before, after = pins.stops(25.0)
    off = (before + after) / 2 - pins.top()
    assert 0.15 < abs(off) < 0.25
    assert has_link_rod(engine) and not has_link_rod(radial(timing=1))
    # On the master rod halfway is exact, as common practice has it.
    assert tdc_from_stops(radial(timing=1), 340.0, 24.0) == true_tdc_from_stops(340.0, 24.0) == 2.0


def timed_to(engine: Engine):
    """A shipped installation of seven cylinders on this engine."""
    return find_installation("seven-radial-left").model_copy(update={"engine": engine})


@pytest.mark.parametrize("cylinder", range(1, 8))
def test_the_sheet_allows_for_the_link_rod_and_says_which(cylinder):
    engine = radial(timing=cylinder)
    pins = Pins(engine, cylinder)
    before, after = (angle - pins.top() for angle in pins.stops(25.0))
    job = change(new_job(), installation=timed_to(engine))
    job = change_in(job, "dead_centre", first_stop_deg=before + 3.0, second_stop_deg=after + 3.0)
    assert derived.dead_centre_deg(job) == pytest.approx(3.0, abs=2e-5)
    told = {row.field: row for row in rows(job) if row.stage == "dead_centre"}
    assert told["true_centre_deg"].label == f"Disc at true top dead centre of No. {cylinder}"
    if cylinder == 1:
        assert "link_rod_deg" not in told
    else:
        assert told["link_rod_deg"].value == pytest.approx(-(before + after) / 2, abs=2e-5)
        assert told["link_rod_deg"].label.endswith(f"link rod of No. {cylinder}")


@pytest.mark.parametrize("cylinder", [1, 3, 5])
def test_how_sure_a_firing_is_counts_from_the_link_rods_own_top(cylinder):
    engine = radial(timing=cylinder)
    pins = Pins(engine, cylinder)
    before, after = (angle - pins.top() for angle in pins.stops(25.0))
    fires = []
    for stops in ((2.0 - before, 2.0 - after), ((after - before) / 2, (before - after) / 2)):  # the disc: before, +
        found = judge_linear(engine_measurement(timed_to(engine), EngineReadings(stops, 22.0)))[0].linear
        fires.append(found)
    # The disc reads 2° at the true top; or, set by halves, its zero stands at the middle.
    middle = (before + after) / 2  # past the top
    assert fires[1].estimate - fires[0].estimate == pytest.approx(2.0 - middle, abs=3e-5)
    assert fires[0].standard_uncertainty == pytest.approx(fires[1].standard_uncertainty)


@given(timing=st.integers(1, 7), reach=st.floats(5.0, 70.0))
@settings(max_examples=examples(40), deadline=None)
def test_a_stop_is_met_at_one_depth_on_both_sides(timing, reach):
    engine = radial(timing=timing)
    pins, top = Pins(engine, timing), Pins(engine, timing).top()
    after, before = stop_reach_deg(engine, reach)
    assert after == reach
    assert pins.height(top + after) == pytest.approx(pins.height(top - before), abs=2e-5)


def test_the_timing_cylinders_own_top_counts_from_cylinder_1s():
    engine = radial(timing=4)
    first, fourth = Pins(engine, 1).top(), Pins(engine, 4).top()
    assert abs((timing_centre_deg(engine) - (fourth - first) + 180) % 360 - 180) < 2e-5
    assert timing_centre_deg(radial(timing=1)) == 0.0


def test_an_engine_without_that_cylinder_is_refused():
    with pytest.raises(SpecError, match="timing_cylinder is 8; the engine has 7 cylinders"):
        radial(timing=8)


@pytest.mark.parametrize("typed", ["clockwise", "anticlockwise"])
def test_rotation_is_converted_from_the_end_it_was_read_at(typed):
    other = {"clockwise": "anticlockwise", "anticlockwise": "clockwise"}[typed]
    rear = radial(rotation=typed, rotation_seen_from="rear")
    assert (rear.rotation_from("rear"), rear.rotation_from("propeller")) == (typed, other)
    silent = radial(rotation=typed)
    assert (silent.rotation_from("propeller"), silent.rotation_from("rear")) == (typed, other)
    # The pictures of the crank are seen from the propeller end.
    assert engine_sense(rear) == -engine_sense(silent) == (1 if other == "clockwise" else -1)
