"""Nothing that the bench reckons, or only begins with, comes to stand on a sheet as a reading."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import partial

import pytest

from magview.bench.actions import GrowPip, MoveTeeth, PaintMarks, ReadLamp, SetBoth
from magview.bench.apply import apply
from magview.bench.state import BenchState
from magview.bench.sureness import ENGINE_ROLES, read_engine, tool_for
from magview.job import from_bench, judge
from magview.job.feeds import FEEDS, noted
from magview.job.sheet import change_in, new_job
from magview.physics.uncertainty.measurement import judge_linear
from magview.physics.uncertainty.setting_uncertainty import engine_measurement
from magview.spec.base import SpecError
from magview.spec.library import find_installation
from tests.job.sheets import marked, safe
from tests.magnetos import bench_after

FILE = find_installation("seven-radial-left")


bench = partial(bench_after, FILE)


@dataclass
class Untouched:
    """What a sheet can ask a workbench for on which nobody has laid a hand."""

    state: BenchState
    tools: Sequence[object] = ()
    outcomes: Sequence[object] = ()
    stops: tuple[float, float] | None = None
    move: object = None
    wanted_gap_mm: float = 0.23


COMPUTED = {"bench", "planned"}
"""Feeds of what is no reading: the files' own limits, and what is called planned on the sheet."""


@pytest.mark.parametrize("feed", [f for f in FEEDS if f.key not in COMPUTED], ids=lambda f: f.key)
def test_a_bench_nobody_has_touched_has_no_reading_to_give(feed):
    tools = tuple(tool_for(role, ()) for role in ENGINE_ROLES)
    outcomes = judge_linear(engine_measurement(FILE, read_engine(bench(), tools)))
    with pytest.raises(SpecError) as refused:
        noted(new_job(), feed, Untouched(bench(), outcomes=outcomes if feed.key == "sure-engine" else ()))
    assert str(refused.value).isprintable()


def test_only_the_magneto_that_was_read_is_noted():
    job = from_bench.as_found(new_job(), bench(SetBoth(1.0, 0.0), ReadLamp("left", 22.0)))
    assert job.as_found.left_btdc_deg == 22.0 and job.as_found.right_btdc_deg is None
    assert job.as_found.pip_height_mm is None and job.as_found.heel_wear_mm is None
    job = from_bench.synchronising(new_job(), bench(ReadLamp("right", 24.0)))
    assert job.synchronising.left_btdc_deg is None and job.synchronising.right_btdc_deg == 24.0
    # What was typed on the sheet is not wiped by a bench that has nothing.
    typed = change_in(new_job(), "as_found", right_btdc_deg=26.0, heel_wear_mm=0.1)
    found = from_bench.timing_found(typed, bench(ReadLamp("left", 22.0))).as_found
    assert (found.left_btdc_deg, found.right_btdc_deg, found.heel_wear_mm, found.gap_mm) == (22.0, 26.0, 0.1, None)
    worn = from_bench.contacts(typed, bench(GrowPip(0.02))).contacts
    assert (worn.pip_height_mm, worn.heel_wear_mm) == (0.02, None)


def test_a_tooth_shift_is_not_done_before_the_lamp_was_read_again():
    job = marked(safe())
    state = bench(ReadLamp("left", 22.0))
    job = from_bench.tooth_plan(job, state, "left")
    job = from_bench.tooth_result(job, apply(state, MoveTeeth(3, -3)), "left")
    with pytest.raises(SpecError, match="missing: fires, afterwards"):
        judge.finish(job, "tooth_shift")
    assert from_bench.synchronising(job, apply(state, ReadLamp("left", 25.0))).synchronising.left_btdc_deg == 25.0
    with pytest.raises(SpecError, match="no reading of the lamp stands"):
        from_bench.synchronising(job, apply(state, MoveTeeth(3, -3)))
    with pytest.raises(SpecError, match="no reading of the lamp stands"):
        from_bench.tooth_plan(job, apply(state, SetBoth(0.5, 0.0)), "left")


def test_how_sure_is_said_only_of_the_magneto_that_was_read():
    state = bench(ReadLamp("right", 24.0))
    tools = tuple(tool_for(role, ()) for role in ENGINE_ROLES)
    outcomes = judge_linear(engine_measurement(FILE, read_engine(state, tools)))
    found = from_bench.uncertainty(new_job(), from_bench.of_readings(state, outcomes)).synchronising.uncertainty
    assert found.right_btdc_deg is not None and found.left_btdc_deg is None and found.difference_deg is None


def test_marks_are_noted_as_painted_only_where_they_were():
    job = from_bench.marks(new_job(), bench(PaintMarks()))
    assert job.marks.disc_marked and job.marks.magneto_from_disc_teeth == 0
    with pytest.raises(SpecError, match="no marks were painted"):
        from_bench.marks(new_job(), bench(ReadLamp("left", 22.0)))
