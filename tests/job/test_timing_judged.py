"""The timing is judged by the sheet's limits, and teeth and readings must go together."""

from __future__ import annotations

import pytest

from magview.bench.placing import new_bench
from magview.job import from_bench, judge, status
from magview.job.document import document
from magview.job.sheet import change, change_in
from magview.paper.blocks import Paragraph
from tests.job.sheets import demo, marked, safe, signed
from tests.magnetos import on_the_published_coupling
from tests.wording import says


def sheet(**shift):
    """A sheet made safe, whose left magneto is to fire at 25° ± 1° and its right one at 28° ± 1°."""
    job = marked(safe())
    job = change_in(job, "limits", left_btdc_deg=25.0, right_btdc_deg=28.0, timing_tolerance_deg=1.0)
    return change_in(job, "tooth_shift", **shift)


def judged(job, field: str):
    return next((v for v in judge.verdicts(job) if (v.stage, v.field) == ("tooth_shift", field)), None)


@pytest.mark.parametrize("wanted", [22.0, 25.0, None])
@pytest.mark.parametrize(
    ("side", "fires", "low", "high", "ok"),
    [
        ("left", 22.0, 24.0, 26.0, False),
        ("left", 26.0, 24.0, 26.0, True),
        ("right", 26.0, 27.0, 29.0, False),
        ("right", 29.0, 27.0, 29.0, True),
    ],
)
def test_the_limits_judge_whatever_is_wanted(wanted, side, fires, low, high, ok):
    job = sheet(side=side, wanted_btdc_deg=wanted, reads_btdc_deg=fires, result_btdc_deg=fires)
    for field, as_left in (("reads_btdc_deg", False), ("result_btdc_deg", True)):
        verdict = judged(job, field)
        assert (verdict.low, verdict.high, verdict.ok, verdict.as_left) == (low, high, ok, as_left)


def test_without_a_limit_nothing_is_judged_by_what_is_wanted():
    job = change_in(sheet(wanted_btdc_deg=22.0, result_btdc_deg=22.0), "limits", left_btdc_deg=None)
    assert judged(job, "result_btdc_deg") is None and status.doubts(job, "tooth_shift") == ()


def test_a_timing_wanted_outside_the_limits_is_remarked_on():
    job = sheet(wanted_btdc_deg=22.0)
    (told,) = status.doubts(job, "tooth_shift")
    assert says("{angle:deg} before top dead centre", angle=22.0) in told and "24.00° to 26.00°" in told
    framed = [b.text for b in document(job).blocks if isinstance(b, Paragraph) and b.kind == "warning"]
    assert f"TO BE CLEARED UP: {told}" in framed
    for within in (24.0, 25.0, 26.0, None):
        assert status.doubts(sheet(wanted_btdc_deg=within), "tooth_shift") == ()
    done = sheet(
        wanted_btdc_deg=22.0, reads_btdc_deg=21.0, moved_magneto_teeth=4, moved_disc_teeth=-4, result_btdc_deg=25.3
    )
    done = judge.finish(done, "tooth_shift")
    assert status.state_of(done, "tooth_shift").startswith("done, with 1 point to be cleared up")
    assert judge.progress(done).doubtful == ("tooth_shift",) and not status.is_well(done, "tooth_shift")


# ---------------------------------------------------------------------- teeth against readings


def moved(i, j, before, after, **more):
    job = from_bench.take_bench(sheet(), new_bench(on_the_published_coupling()))
    return change_in(
        job, "tooth_shift", reads_btdc_deg=before, wanted_btdc_deg=25.0, moved_magneto_teeth=i, moved_disc_teeth=j,
        result_btdc_deg=after, **more,
    )  # fmt: skip


STEP = 360 / 380 / 0.875
"""One step (+1, −1) of 19 and 20 teeth at 0.875 turns of the rotor to one of the crank [crank deg]."""


@pytest.mark.parametrize(
    ("i", "j", "after"),
    [
        (3, -3, 22.0 + 3 * STEP),
        # Within the tolerance of 1° and a step, either way.
        (3, -3, 22.0 + 4 * STEP + 0.99),
        (3, -3, 22.0 + 2 * STEP - 0.99),
        (0, 0, 22.0),
        (-2, 2, 22.0 - 2 * STEP),
    ],
)
def test_teeth_that_account_for_the_readings_go_unremarked(i, j, after):
    assert status.doubts(moved(i, j, 22.0, after), "tooth_shift") == ()


@pytest.mark.parametrize(
    ("i", "j", "after"),
    [
        (3, 3, 25.2),  # planned +3 and −3
        (-3, 3, 25.2),
        (3, -3, 22.0 + 4 * STEP + 1.01),
        (3, -3, 22.0 + 2 * STEP - 1.01),
        (0, 0, 25.0),
    ],
)
def test_teeth_and_readings_that_contradict_each_other_are_not_plainly_done(i, j, after):
    job = moved(i, j, 22.0, after, planned_magneto_teeth=3, planned_disc_teeth=-3)
    (told,) = status.doubts(job, "tooth_shift")
    if (i, j) == (-3, 3):  # planned and written so, and fired as if moved the other way
        assert "Likeliest: the teeth were moved the wrong way" in told
    assert told.startswith("Teeth and readings contradict each other")
    assert f"to {abs(22 + (i / 19 + j / 20) * 360 / 0.875):.2f}°" in told
    done = judge.finish(job, "tooth_shift")
    assert says("{count} point to be cleared up", count=1) in status.state_of(done, "tooth_shift")
    assert judge.progress(done).doubtful == ("tooth_shift",)
    assert any(isinstance(b, Paragraph) and b.kind == "warning" and told in b.text for b in document(done).blocks)
    # Where the coupling is not known, nothing can be said.
    assert status.doubts(change(job, installation=None), "tooth_shift") == ()


def test_a_sheet_that_contradicts_itself_has_not_passed():
    job = demo()
    assert judge.progress(job).passed
    wrong = change_in(job, "tooth_shift", moved_disc_teeth=-job.tooth_shift.moved_disc_teeth)
    wrong = signed(wrong)
    found = judge.progress(wrong)
    assert found.finished and not found.out and not found.passed
