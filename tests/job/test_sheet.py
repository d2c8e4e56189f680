"""The sheet: stages, states, verdicts, signature."""

from __future__ import annotations

import json

import pytest

from magview.job import derived, judge
from magview.job.checklists import checks as checks_of
from magview.job.judge import skip
from magview.job.library import job_path, read_job, shipped_jobs
from magview.job.readings import rows
from magview.job.sheet import (
    CAUTIONS,
    STAGES,
    change,
    change_in,
    new_job,
    open_again,
    signature_holds,
    stage_of,
    title_of,
)
from magview.job.signing import sign
from magview.spec.base import SpecError
from magview.spec.files import dump_json, write_model
from tests.job.sheets import demo, marked, on_bench, safe, signed


def refused(act) -> str:
    with pytest.raises(SpecError) as caught:
        act()
    text = str(caught.value)
    assert text.isprintable() and "pydantic" not in text.lower() and "input" not in text.lower()
    return text


def test_stages_stand_in_the_order_of_the_work():
    """Safe, leads proved, dead centre, marks: nothing is slackened before (common practice)."""
    assert STAGES == (
        "cautions", "switch_lead", "dead_centre", "marks", "as_found", "contacts", "internal_timing", "lobes",
        "tooth_shift", "synchronising", "closing", "ground_run", "remarks",
    )  # fmt: skip
    assert len({title_of(name) for name in STAGES}) == len(STAGES)


def test_a_sheet_says_the_cautions_of_the_trade():
    text = " ".join(CAUTIONS).lower()
    told = (
        "propeller as live", "either magneto", "fuel off", "mixture cut off", "throttle closed", "switch off",
        "both switch leads proved", "plugs out", "the spark stays", "hanging leads", "jumper", "wheels chocked",
        "manual", "licensed person", "training and planning aid", "invented",
    )  # fmt: skip
    for words in told:
        assert words in text


def test_a_sheet_survives_its_file_whole(tmp_path):
    job = demo()
    write_model(tmp_path / "a-job.json", job)
    assert read_job(tmp_path / "a-job.json") == job


def test_a_stage_is_skipped_only_with_a_reason():
    job = new_job()
    for short in ("  ", "x", "none", "no no no", "unserviceable", "aa bb cc", "12 34 56 78"):
        told = refused(lambda short=short: skip(job, "lobes", short))
        assert "two words and six different letters" in told
    assert "reason" in refused(lambda: change_in(job, "lobes", state="skipped"))
    skipped = skip(job, "lobes", "single lobe")
    assert stage_of(skipped, "lobes").state == "skipped"
    assert stage_of(open_again(skipped, "lobes"), "lobes").state == "open"
    assert "lobes" not in judge.progress(skipped).open


@pytest.mark.parametrize("name", ["cautions", "switch_lead"])
def test_making_safe_and_the_proof_of_the_leads_are_never_skipped(name):
    told = refused(lambda: skip(new_job(), name, "there is no time for it today"))
    assert title_of(name) in told and "cannot be skipped" in told and "can kill" in told


def test_a_file_with_a_stage_skipped_without_reason_is_refused(tmp_path):
    data = json.loads(dump_json(demo()))
    data["closing"] = {"state": "skipped"}
    path = tmp_path / "x-job.json"
    path.write_text(json.dumps(data), encoding="utf-8")
    assert "closing: reason is missing" in refused(lambda: read_job(path))


@pytest.mark.parametrize(
    ("part", "field", "value", "told"),
    [
        ("ground_run", "drop_left_rpm", "60", "ground_run.drop_left_rpm is"),
        ("ground_run", "drop_left_rpm", -1.0, "at least 0"),
        ("ground_run", "drop_left_rmp", 60.0, "did you mean drop_left_rpm?"),
        ("as_found", "gap_mm", float("nan"), "a finite number of millimetres"),
        ("next_check", "day", "2026-02-30", "is not a date"),
        ("magneto", "serial", "one\ntwo", "one line of text"),
        ("limits", "gap_low_mm", 0.5, "must not be above the largest"),
        ("internal_timing", "trials", ({"backplate_deg": 0.0, "gap_low_mm": 0.3, "gap_high_mm": 0.2},), "trials[0]"),
    ],
)
def test_what_cannot_be_entered_is_refused_by_name(part, field, value, told):
    job = demo()
    assert told in refused(lambda: change_in(job, part, **{field: value}))


def test_no_stage_is_finished_before_the_aircraft_is_safe_and_both_leads_are_proved():
    job = change_in(new_job(), "as_found", mark_offset_mm=0.0, gap_mm=0.23)
    assert "“Make safe” and “Prove both switch leads”" in refused(lambda: judge.finish(job, "as_found"))
    ready = change_in(safe(), "as_found", mark_offset_mm=0.0, gap_mm=0.23)
    assert stage_of(judge.finish(ready, "as_found"), "as_found").state == "done"
    # A confirmation taken back later counts, too.
    later = change_in(ready, "cautions", nobody_in_arc=None)
    assert "comes after “Make safe”: do that first" in refused(lambda: judge.finish(later, "as_found"))


def test_either_magneto_makes_the_propeller_live_so_both_leads_are_proved():
    job = change_in(safe(), "switch_lead", state="open", other_meter_grounded_switch_on=None)
    assert refused(lambda: judge.finish(job, "switch_lead")).endswith(
        "missing: other magneto: meter or lamp, switch on"
    )
    by_lamp = change_in(job, "switch_lead", other_lamp_grounded_switch_on=False)
    assert judge.finish(by_lamp, "switch_lead").switch_lead.state == "done"
    # An engine with one magneto has one lead.
    assert judge.finish(change_in(job, "magneto", position="single"), "switch_lead").switch_lead.state == "done"
    closing = change_in(demo(), "closing", state="open", other_lead_grounded_switch_off=None)
    assert "other magneto's lead again, switch off" in refused(lambda: judge.finish(closing, "closing"))


def test_what_is_slackened_is_marked_before():
    job = change_in(safe(), "internal_timing", mark_offset_mm=0.0, gap_mm=0.23, read_after_tightening=True)
    assert "comes after “Paint marks”" in refused(lambda: judge.finish(job, "internal_timing"))
    assert judge.finish(marked(job), "internal_timing").internal_timing.state == "done"
    without = skip(job, "marks", "splined drive, nothing to mark")
    assert judge.finish(without, "internal_timing").internal_timing.state == "done"


def test_a_magneto_on_a_bench_is_made_safe_as_such_and_has_no_engine_stages():
    """On a bench the high tension is the danger: outlets grounded, no vapour near (common practice)."""
    job = change_in(new_job(), "cautions", place="bench")
    told = refused(lambda: judge.finish(job, "cautions"))
    assert "test gap" in told and "vapour" in told and "chocked" not in told
    job = change_in(on_bench(), "as_found", mark_offset_mm=0.0, gap_mm=0.23)
    assert judge.finish(job, "as_found").as_found.state == "done"
    for name in ("dead_centre", "marks", "tooth_shift", "synchronising", "closing", "ground_run"):
        assert "says that it is on a bench" in refused(lambda name=name: judge.finish(job, name))


def test_a_stage_that_lacks_readings_is_not_done_and_says_what_is_missing():
    job = safe()
    assert "missing: straightedge from the rim mark, largest gap" in refused(lambda: judge.finish(job, "as_found"))
    assert "nuts torqued" in refused(lambda: judge.finish(job, "closing"))
    run = change_in(job, "ground_run", drop_left_rpm=50.0, runs_left="smooth")
    assert "missing: drop, running on right, on right it runs" in refused(lambda: judge.finish(run, "ground_run"))
    # A single magneto has no drop: there is no other to run on.
    single = change_in(change_in(job, "magneto", position="single"), "ground_run", dead_cut_checked=True)
    assert judge.finish(single, "ground_run").ground_run.state == "done"


def test_every_check_must_be_confirmed():
    job = new_job()
    checks = checks_of(job.cautions)
    assert {"fuel_off", "mixture_cut_off", "throttle_closed", "switch_off", "plugs_out", "hanging_leads_clear",
            "wheels_chocked", "nobody_in_arc"} < set(checks)  # fmt: skip
    for field in checks:
        lacking = change_in(job, "cautions", **(dict.fromkeys(checks, True) | {field: False}))
        with pytest.raises(SpecError):
            judge.finish(lacking, "cautions")


# ---------------------------------------------------------------------- verdicts


def ok(job, stage, field):
    return next(v.ok for v in judge.verdicts(job) if (v.stage, v.field) == (stage, field))


@pytest.mark.parametrize(
    ("stage", "field", "inside", "outside"),
    [
        # Limits of the sheet below: gap 0.20 to 0.26, mark ± 0.8, timing 25 ± 1, drops 100 and 40.
        ("as_found", "gap_mm", 0.20, 0.1999),
        ("internal_timing", "gap_mm", 0.26, 0.2601),
        ("internal_timing", "mark_offset_mm", -0.8, -0.81),
        ("as_found", "left_btdc_deg", 24.0, 23.99),
        ("synchronising", "right_btdc_deg", 26.0, 26.01),
        ("ground_run", "drop_left_rpm", 100.0, 101.0),
    ],
)
def test_readings_are_judged_by_the_sheets_own_limits_ends_included(stage, field, inside, outside):
    job = change_in(
        new_job(), "limits", gap_low_mm=0.20, gap_high_mm=0.26, mark_tolerance_mm=0.8, left_btdc_deg=25.0,
        right_btdc_deg=25.0, timing_tolerance_deg=1.0, drop_rpm=100.0,
    )  # fmt: skip
    assert ok(change_in(job, stage, **{field: inside}), stage, field)
    assert not ok(change_in(job, stage, **{field: outside}), stage, field)
    assert not [v for v in judge.verdicts(job) if v.stage == stage]  # nothing read, nothing judged


def test_a_reading_without_a_limit_has_no_verdict():
    assert not judge.verdicts(change_in(new_job(), "as_found", gap_mm=9.0))


def test_a_wanted_stagger_is_no_difference():
    job = change_in(
        new_job(), "limits", left_btdc_deg=25.0, right_btdc_deg=28.0, synchronising_tolerance_deg=1.0
    )  # fmt: skip
    # 25.5 − 28.2 is 2.7 apart, 0.3 from the stagger of 3.
    job = change_in(job, "synchronising", left_btdc_deg=25.5, right_btdc_deg=28.2)
    assert derived.timing_difference_deg(job) == pytest.approx(0.3)
    assert ok(job, "synchronising", "difference_deg")


@pytest.mark.parametrize(
    ("field", "good"),
    [
        ("meter_grounded_switch_off", True),
        ("meter_grounded_switch_on", False),
        ("lamp_grounded_plug_out", True),
        ("lamp_grounded_switch_off", True),
        ("lamp_grounded_switch_on", False),
    ],
)
def test_the_switch_lead_is_safe_only_grounded_when_off(field, good):
    assert ok(change_in(new_job(), "switch_lead", **{field: good}), "switch_lead", field)
    assert not ok(change_in(new_job(), "switch_lead", **{field: not good}), "switch_lead", field)


def test_top_dead_centre_is_halfway_between_the_stops():
    job = change_in(new_job(), "dead_centre", first_stop_deg=41.5, second_stop_deg=-38.5)
    assert derived.dead_centre_deg(job) == pytest.approx(1.5)
    assert derived.dead_centre_deg(change_in(job, "dead_centre", second_stop_deg=41.5)) is None


def test_what_was_found_out_of_limits_does_not_fail_the_work_as_left():
    job = demo()
    assert judge.progress(job).passed
    worse = change_in(job, "as_found", gap_mm=0.05)
    assert not judge.progress(worse).out
    failed = change_in(job, "internal_timing", gap_mm=0.05)
    assert [(v.stage, v.field) for v in judge.progress(failed).out] == [("internal_timing", "gap_mm")]
    assert not judge.progress(failed).passed


def test_lobes_are_judged_one_by_one():
    job = demo()
    lobes = list(job.lobes.lobes)
    lobes[2] = lobes[2].model_copy(update={"opening_error_deg": 2.0})
    found = judge.progress(change_in(job, "lobes", lobes=tuple(lobes))).out
    assert [v.field for v in found] == ["lobes[2].opening_error_deg"]


# ---------------------------------------------------------------------- signature


def test_a_signature_covers_what_was_signed_and_no_more():
    job = signed(change_in(safe(), "remarks", text="a"))
    assert signature_holds(job) is True
    assert signature_holds(change_in(job, "remarks", text="b")) is False
    assert signature_holds(change_in(change_in(job, "remarks", text="b"), "remarks", text="a")) is True
    assert signature_holds(new_job()) is None
    assert signature_holds(change(job, signature=None)) is None
    refused(lambda: sign(job, "  ", "", "2026-11-25"))
    refused(lambda: sign(job, "A", "", ""))


def test_nothing_is_signed_before_it_is_safe():
    told = refused(lambda: signed(new_job()))
    assert "cannot be signed before “Make safe” and “Prove both switch leads”" in told
    told = refused(lambda: signed(change_in(safe(), "switch_lead", other_meter_grounded_switch_off=None)))
    assert "cannot be signed before “Prove both switch leads”" in told


@pytest.mark.parametrize(
    ("name", "licence", "words"),
    [
        ("a.  person", "X-2", "by the person who signs"),
        ("A. Person", "", "by the person who signs"),
        ("B. Person", "", "no licence number"),
        ("B. Person", " x-1 ", "the licence number of the person who signs"),
        ("", "X-2", "no name"),
    ],
)
def test_the_independent_check_is_by_another_person_with_another_licence(name, licence, words):
    """An independent check is made by somebody else (common practice)."""
    told = refused(lambda: sign(safe(), "A. Person", "X-1", "2026-11-25", name, licence))
    assert words in told and "another person" in told
    assert signature_holds(sign(safe(), "A. Person", "X-1", "2026-11-25", "B. Person", "X-2"))
    assert signature_holds(sign(safe(), "A. Person", "X-1", "2026-11-25"))


def test_the_shipped_job_is_finished_signed_and_plainly_invented():
    assert shipped_jobs() == ["seven-radial-left"]
    job = read_job(job_path("seven-radial-left"))
    assert judge.progress(job).passed
    assert job.invented and "invented" in job.remarks.text.lower()
    assert all(stage_of(job, name).state == "done" for name in STAGES)


def test_a_reading_just_out_of_limits_does_not_read_as_its_limit():
    sheet = change_in(new_job(), "limits", gap_low_mm=0.2032, gap_high_mm=0.254, left_btdc_deg=25.0)
    sheet = change_in(sheet, "limits", timing_tolerance_deg=1.0)
    sheet = change_in(sheet, "internal_timing", gap_mm=0.25412)
    sheet = change_in(sheet, "synchronising", left_btdc_deg=26.003)
    told = {(r.stage, r.field): r for r in rows(sheet)}
    gap, fires = told["internal_timing", "gap_mm"], told["synchronising", "left_btdc_deg"]
    assert gap.verdict == fires.verdict == "OUT OF LIMITS"
    assert (gap.shown, gap.limits_shown) == (
        "0.2541 mm = 0.010005 in",
        "0.2032 mm = 0.008000 in to 0.2540 mm = 0.010000 in",
    )
    assert (fires.shown, fires.limits_shown) == ("26.003° before top dead centre", "24.000° to 26.000°")
