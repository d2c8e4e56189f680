"""The timing is judged by the sheet's limits, and teeth and readings must go together."""

from __future__ import annotations

import pytest

from magview.job import judge, standing
from magview.job.document import Paragraph, document
from magview.job.sheet import change_in, new_job, skip


def sheet(**shift):
    """A sheet made safe, whose left magneto is to fire at 25° ± 1° and its right one at 28° ± 1°."""
    job = skip(skip(new_job("teeth"), "cautions", "x"), "switch_lead", "x")
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
    assert judged(job, "result_btdc_deg") is None and standing.doubts(job, "tooth_shift") == ()


def test_a_timing_wanted_outside_the_limits_is_remarked_on():
    job = sheet(wanted_btdc_deg=22.0)
    (told,) = standing.doubts(job, "tooth_shift")
    assert "22.00° before top dead centre" in told and "24.00° to 26.00°" in told
    framed = [b.text for b in document(job) if isinstance(b, Paragraph) and b.kind == "warning"]
    assert f"TO BE CLEARED UP: {told}" in framed
    for within in (24.0, 25.0, 26.0, None):
        assert standing.doubts(sheet(wanted_btdc_deg=within), "tooth_shift") == ()
    done = sheet(
        wanted_btdc_deg=22.0, reads_btdc_deg=21.0, moved_magneto_teeth=4, moved_disc_teeth=-4, result_btdc_deg=25.3
    )
    done = judge.finish(done, "tooth_shift")
    assert standing.state_of(done, "tooth_shift").startswith("done, with 1 point to be cleared up")
    assert judge.progress(done).doubtful == ("tooth_shift",) and not standing.is_well(done, "tooth_shift")
