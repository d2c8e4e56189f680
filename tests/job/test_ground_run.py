"""The ground run is judged on both sides, and a drop of nothing warns as loudly as a live lead does."""

from __future__ import annotations

import csv
import io
import json

import pytest

from magview.bench.conditions import Condition
from magview.bench.placing import new_bench
from magview.cli.main import main
from magview.job import from_bench, judge, status
from magview.job.document import document
from magview.job.readings import csv_text, json_text
from magview.job.sheet import Job, change, change_in, new_job
from magview.paper.blocks import Paragraph, Table
from magview.spec.base import SpecError
from magview.spec.engine import Engine
from magview.spec.files import dump_json, parse_json, validate, write_model
from magview.spec.library import find_engine, find_installation
from tests.job.sheets import demo, html_text, safe, signed
from tests.wording import says


def run(**fields: object) -> Job:
    """A finished sheet with these readings of the ground run, drops of 40 to 120 rpm allowed, 40 apart."""
    job = change_in(demo(), "limits", drop_low_rpm=40.0, drop_rpm=120.0, drop_difference_rpm=40.0)
    return signed(change_in(job, "ground_run", **fields))


def out(job: Job) -> list[str]:
    return [v.field for v in judge.progress(job).out]


@pytest.mark.parametrize(
    ("left", "right", "bad"),
    [
        (40.0, 75.0, []),
        (120.0, 80.0, []),
        (39.9, 75.0, ["drop_left_rpm"]),
        (75.0, 121.0, ["drop_right_rpm", "drop_difference_rpm"]),
        (60.0, 101.0, ["drop_difference_rpm"]),
        (0.0, 0.0, ["drop_left_rpm", "drop_right_rpm"]),
    ],
)
def test_drops_have_a_low_side_a_high_side_and_a_difference(left, right, bad):
    """A drop has two limits, and so has the difference of the two (FAA-H-8083-32B, ch. 4; common practice)."""
    assert out(run(drop_left_rpm=left, drop_right_rpm=right)) == bad


@pytest.mark.parametrize(("side", "other"), [("left", "right"), ("right", "left")])
@pytest.mark.parametrize("drop", [0.0, 10.0])
def test_no_drop_warns_on_screen_paper_csv_and_by_the_exit_code(side, other, drop, tmp_path, capsys):
    """No drop: the magneto switched off is probably not grounded, or the other one is timed far too early
    (FAA-H-8083-32B, ch. 4)."""
    job = run(**{f"drop_{side}_rpm": drop, f"drop_{other}_rpm": 45.0})
    (told,) = status.dangers(job)
    assert told.startswith("WARNING: NO PROPER DROP WHEN RUNNING ON " + side.upper())
    assert f"The {other} magneto is probably not grounded" in told and f"the {side} one fires far too early" in told
    assert "Keep clear of the propeller" in told and "Prove both switch leads again" in told
    framed = [b.text for b in document(job).blocks if isinstance(b, Paragraph) and b.kind == "warning"]
    assert framed.count(f"⚠ {told}") == 2, "on top, and over the readings themselves"
    assert html_text(job).count(told) == 2
    lines = list(csv.DictReader(io.StringIO(csv_text(job))))
    assert (lines[0]["stage"], lines[0]["field"], lines[0]["verdict"]) == ("ground_run", "warning", "WARNING")
    assert lines[0]["reading"] == told
    assert {ln["verdict"] for ln in lines if ln["field"] == f"drop_{side}_rpm"} == {"OUT OF LIMITS"}
    assert json.loads(json_text(job))["dangers"] == [told]
    path = tmp_path / "a-job.json"
    write_model(path, job)
    assert main(["sheet", str(path)]) == 1
    assert told in capsys.readouterr().out
    assert status.done_words(job, "ground_run") and not status.is_well(job, "ground_run")


def test_without_limits_a_drop_of_nothing_still_warns_and_others_are_not_called_right():
    job = change_in(run(drop_left_rpm=0.0, drop_right_rpm=60.0), "limits", drop_low_rpm=None, drop_rpm=None)
    assert len(status.dangers(job)) == 1
    shown = {r[0]: r[2:] for b in document(job).blocks if isinstance(b, Table) and len(b.head) == 4 for r in b.rows}
    assert shown["Drop, running on left"] == ("above 0 rpm", "OUT OF LIMITS")
    assert shown["Drop, running on right"] == ("", says("no limit given, not judged"))


def test_a_single_magneto_has_no_drop_to_warn_of():
    job = change_in(run(drop_left_rpm=0.0, drop_right_rpm=None), "magneto", position="single")
    assert status.dangers(job) == () and "drop_left_rpm" not in out(job)


def test_smooth_or_rough_is_asked_and_points_to_its_cause():
    """Sudden and rough: plug or lead. Slow and smooth: timing (FAA-H-8083-32B, ch. 4; common practice)."""
    job = change_in(safe(), "ground_run", drop_left_rpm=60.0, drop_right_rpm=60.0, dead_cut_checked=True)
    with pytest.raises(SpecError, match="missing: on left it runs, on right it runs"):
        judge.finish(job, "ground_run")
    rough = run(runs_left="rough")
    assert out(rough) == ["runs_left"]
    assert status.follows(rough, "ground_run") == (
        says("On {side} it runs rough: that points to a plug or its lead. Look there first.", side="left"),
    )
    late = run(drop_left_rpm=130.0, drop_right_rpm=100.0)
    assert status.follows(late, "ground_run") == (
        says("On {side} the drop is large and smooth: that points to late timing.", side="left"),
    )
    assert status.follows(run(), "ground_run") == ()
    assert any(isinstance(b, Paragraph) and "points to late timing" in b.text for b in document(late).blocks)


def test_an_engine_that_the_switch_does_not_stop_is_live():
    (told,) = status.dangers(run(dead_cut_checked=False))
    assert "FIRES ON WITH THE SWITCH OFF" in told and "Keep clear" in told


# ---------------------------------------------------------------------- other dangers


@pytest.mark.parametrize("stroke", ["intake", "power", "exhaust"])
def test_a_stroke_other_than_compression_is_out_of_limits_loudly(stroke):
    """Piston on its compression stroke when No. 1 fires (FAA-H-8083-32B, ch. 4); early by a turn it kicks back."""
    job = signed(change_in(demo(), "dead_centre", stroke=stroke))
    assert out(job) == ["stroke"] and not judge.progress(job).passed
    (told,) = status.dangers(job)
    assert "NOT ON ITS COMPRESSION STROKE" in told and "kick back" in told
    line = next(ln for ln in csv.DictReader(io.StringIO(csv_text(job))) if ln["field"] == "stroke")
    assert line["verdict"] == "NOT AS IT MUST BE"
    assert status.dangers(demo()) == () and demo().dead_centre.stroke == "compression"


@pytest.mark.parametrize(
    ("part", "field", "words"),
    [
        ("switch_lead", "other_meter_grounded_switch_off", "THE OTHER MAGNETO IS LIVE"),
        ("switch_lead", "other_lamp_grounded_switch_off", "THE OTHER MAGNETO IS LIVE"),
        ("closing", "lead_grounded_switch_off", "THIS MAGNETO IS LIVE"),
        ("closing", "other_lead_grounded_switch_off", "THE OTHER MAGNETO IS LIVE"),
    ],
)
def test_either_lead_is_a_danger_before_the_work_and_after_closing(part, field, words):
    job = change_in(demo(), part, **{field: False})
    (told,) = status.dangers(job)
    assert words in told and f"⚠ {told}" in [b.text for b in document(job).blocks if isinstance(b, Paragraph)]
    assert field in out(job)


def test_a_lead_that_stays_grounded_with_the_switch_on_is_found_at_closing():
    job = change_in(demo(), "closing", lead_grounded_switch_on=True)
    assert out(job) == ["lead_grounded_switch_on"] and status.dangers(job) == ()


def test_a_pulled_lead_without_a_tab_is_safe_by_a_jumper_alone():
    """Pulling the lead of a magneto without a grounding tab makes it live (common practice)."""
    job = change_in(demo(), "switch_lead", lamp_grounded_plug_out=False)
    assert len(status.dangers(job)) == 1
    assert len(status.dangers(change_in(job, "switch_lead", jumper_fitted=False))) == 1
    assert status.dangers(change_in(job, "switch_lead", jumper_fitted=True)) == ()
    with pytest.raises(SpecError, match="no jumper left on"):
        judge.finish(change_in(demo(), "closing", state="open", no_jumper_left=None), "closing")


@pytest.mark.parametrize(
    ("part", "field"), [("cautions", "fuel_off"), ("switch_lead", "other_meter_grounded_switch_on")]
)
def test_work_that_stands_on_a_sheet_no_longer_safe_warns(part, field):
    assert status.dangers(new_job()) == ()
    job = change_in(demo(), part, **{field: None})
    (told,) = status.dangers(job)
    assert "WORK STANDS ON THIS SHEET" in told and "Treat the propeller as live" in told


def test_four_things_agree_when_no_1_fires():
    """Piston, magnet, contacts and finger at one instant (FAA-H-8083-32B, ch. 4)."""
    condition = Condition
    assert set(judge.conditions(demo()).values()) == {True}
    for part, fields, wrong in (
        ("dead_centre", {"stroke": "exhaust"}, condition.PISTON),
        ("synchronising", {"left_btdc_deg": 5.0}, condition.PISTON),
        ("internal_timing", {"mark_offset_mm": 3.0}, condition.MAGNET),
        ("internal_timing", {"opening_error_deg": -4.0}, condition.CONTACTS),
        ("synchronising", {"finger_at_no_1": False}, condition.FINGER),
    ):
        job = change_in(demo(), part, **fields)
        assert [c for c, holds in judge.conditions(job).items() if holds is False] == [wrong]
        unread = change_in(demo(), part, **dict.fromkeys(fields))
        assert judge.conditions(unread)[wrong] is None
    (told,) = status.follows(change_in(demo(), "synchronising", finger_at_no_1=False), "synchronising")
    assert told.count("✓") == 3 and "✗ finger" in told
    assert set(judge.conditions(new_job()).values()) == {None} and status.follows(new_job(), "synchronising") == ()


def test_a_magneto_whose_file_names_no_tab_is_said_to_be_live_with_its_lead_pulled():
    item = demo().installation
    for tab, told in ((True, 0), (False, 1), (None, 1)):
        magneto = item.magneto.model_copy(update={"grounding_tab": tab})
        job = change(demo(), installation=item.model_copy(update={"magneto": magneto}))
        assert len(status.follows(job, "switch_lead")) == told
    assert "makes this magneto live" in status.follows(new_job(), "switch_lead")[0]


# ---------------------------------------------------------------------- the engine's file


def test_limits_of_the_drops_come_from_the_engines_file():
    item = find_installation("seven-radial-left")
    engine = item.engine.model_copy(update={"drop_rpm": (35.0, 90.0), "drop_difference_rpm": 25.0})
    bench = new_bench(item.model_copy(update={"engine": engine}))
    limits = from_bench.take_bench(new_job(), bench).limits
    assert (limits.drop_low_rpm, limits.drop_rpm, limits.drop_difference_rpm) == (35.0, 90.0, 25.0)
    silent = item.engine.model_copy(update={"drop_rpm": None, "drop_difference_rpm": None})
    typed = change_in(new_job(), "limits", drop_rpm=110.0)
    assert (
        from_bench.take_bench(typed, new_bench(item.model_copy(update={"engine": silent}))).limits.drop_rpm == 110.0
    )


@pytest.mark.parametrize(
    ("drops", "told"), [([120, 40], "must be above 0 and below"), ([0, 90], "above 0"), ([-5, 90], "at least 0")]
)
def test_drops_that_cannot_be_are_refused(drops, told):
    data = json.loads(dump_json(find_engine("seven-radial"))) | {"drop_rpm": drops}
    with pytest.raises(SpecError, match=told):
        validate(Engine, parse_json(json.dumps(data).encode(), "engine"), "engine")
    data["drop_rpm"] = [40, 120]
    assert validate(Engine, parse_json(json.dumps(data).encode(), "engine"), "engine").drop_rpm == (40.0, 120.0)
