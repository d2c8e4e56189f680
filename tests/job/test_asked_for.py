"""What a stage asks for before it is done, and what it says of readings that nothing judges."""

from __future__ import annotations

import json

import pytest

from magview.bench.placing import new_bench
from magview.cli.main import main
from magview.job import from_bench, judge
from magview.job.document import document
from magview.job.readings import csv_text, unjudged_words
from magview.job.requirements import earlier_rules
from magview.job.sheet import Job, change_in, new_job
from magview.paper.blocks import Paragraph, Table
from magview.spec.base import SpecError
from magview.spec.files import dump_json, parse_json, validate, write_model
from magview.spec.library import find_installation, find_magneto
from tests.job.sheets import demo, safe, signed, signed_earlier
from tests.wording import says


def test_a_ground_run_is_not_done_before_the_switch_was_seen_to_stop_it():
    job = change_in(
        safe(), "ground_run", drop_left_rpm=50.0, drop_right_rpm=60.0, runs_left="smooth", runs_right="smooth"
    )  # fmt: skip
    with pytest.raises(SpecError, match="stops firing with the switch off"):
        judge.finish(job, "ground_run")
    for said in (True, False):
        assert judge.finish(change_in(job, "ground_run", dead_cut_checked=said), "ground_run")


def test_plugs_are_refitted_before_the_closing_checks_are_done():
    with pytest.raises(SpecError, match="spark plugs refitted and torqued"):
        judge.finish(change_in(demo(), "closing", state="open", plugs_refitted=None), "closing")


@pytest.mark.parametrize("position", ["left", "right", "single"])
def test_on_an_engine_the_timing_is_read_as_found(position):
    job = from_bench.take_bench(safe(), new_bench(find_installation("seven-radial-left")))
    job = change_in(change_in(job, "magneto", position=position), "as_found", mark_offset_mm=0.0, gap_mm=0.23)
    own, other = ("right", "left") if position == "right" else ("left", "right")
    with pytest.raises(SpecError, match=f"missing: {own} fires$"):
        judge.finish(change_in(job, "as_found", **{f"{other}_btdc_deg": 25.0}), "as_found")
    assert judge.finish(change_in(job, "as_found", **{f"{own}_btdc_deg": 25.0}), "as_found")


def test_off_the_engine_there_is_no_timing_to_ask_for():
    job = from_bench.take_bench(safe(), new_bench(find_magneto("seven-radial")))
    assert judge.finish(change_in(job, "as_found", mark_offset_mm=0.0, gap_mm=0.23), "as_found")


def test_a_sheet_signed_before_this_was_asked_stays_finished():
    """As an earlier program left it: done and signed without the newer fields."""
    data = json.loads(dump_json(demo()))
    for stage, field in (("closing", "plugs_refitted"), ("ground_run", "dead_cut_checked")):
        del data[stage][field]
    del data["signature"]
    job = signed_earlier(validate(Job, parse_json(json.dumps(data).encode(), "old"), "old"))
    assert judge.progress(job).finished and judge.progress(job).passed
    assert earlier_rules(job) == (
        "close, prove leads again: spark plugs refitted and torqued as the manual says",
        "ground run: stops firing with the switch off, at idle",
    )
    # Changed since, it is asked for like any other.
    changed = change_in(job, "remarks", text="once more")
    told = " ".join(judge.progress(changed).missing)
    assert "spark plugs refitted" in told and "switch off" in told
    # And a stage that is open is never done without, signed or not.
    opened = signed_earlier(change_in(job, "closing", state="open"))
    with pytest.raises(SpecError, match="spark plugs refitted"):
        judge.finish(opened, "closing")


def test_readings_without_a_limit_are_named_as_not_judged(tmp_path, capsys):
    job = change_in(demo(), "limits", drop_low_rpm=None, drop_rpm=None, drop_difference_rpm=None)
    assert judge.unjudged(demo()) == () and unjudged_words(demo()) == ""
    assert judge.unjudged(job) == (
        ("ground_run", "drop_left_rpm"), ("ground_run", "drop_right_rpm"), ("ground_run", "drop_difference_rpm"),
    )  # fmt: skip
    told = unjudged_words(job)
    assert told == (
        "Not judged, for no limit was given: ground run: drop, running on left, drop, running on right, "
        "difference of the drops. No smallest drop was given: only a drop of nothing was looked for."
    )
    blocks = document(job).blocks
    assert told in [b.text for b in blocks if isinstance(b, Paragraph)]
    cells = {row[0]: row[3] for b in blocks if isinstance(b, Table) and len(b.head) == 4 for row in b.rows}
    assert cells["Drop, running on left"] == says("no limit given, not judged")
    assert csv_text(job).count("no limit given, not judged") == 3
    path = tmp_path / "a-job.json"
    write_model(path, signed(job))
    assert main(["sheet", str(path)]) == 0
    assert told in capsys.readouterr().out
    # Nothing read, nothing to say.
    assert judge.unjudged(new_job()) == ()
