"""What can hurt somebody is said first and loudest, and a stage is never said to be done when it is not well."""

from __future__ import annotations

import json

import pytest

from magview.cli.main import main
from magview.job import judge, status
from magview.job.document import document
from magview.job.readings import json_text
from magview.job.sheet import change_in, new_job
from magview.paper.blocks import Heading, Paragraph
from magview.spec.files import write_model
from tests.job.sheets import demo, safe, signed


@pytest.mark.parametrize(
    ("field", "words"),
    [
        ("meter_grounded_switch_off", "LIVE WITH THE SWITCH OFF"),
        ("lamp_grounded_switch_off", "LIVE WITH THE SWITCH OFF"),
        ("lamp_grounded_plug_out", "LIVE WITH ITS SWITCH LEAD PULLED"),
    ],
)
def test_a_lead_that_does_not_ground_is_a_danger_on_every_paper(field, words, capsys, tmp_path):
    """An open switch lead leaves the magneto live with the switch off (FAA-H-8083-32B, ch. 4)."""
    job = safe(**{field: False})
    (told,) = status.dangers(job)
    assert (
        words in told and "Stop" in told and "clear of the propeller" in told and "before anything is turned" in told
    )
    framed = [b.text for b in document(job).blocks if isinstance(b, Paragraph) and b.kind == "warning"]
    assert framed.count(f"⚠ {told}") == 2, "on top, and over the readings themselves"
    assert framed[0] == f"⚠ {told}"
    assert json.loads(json_text(job))["dangers"] == [told]
    path = tmp_path / "a-job.json"
    write_model(path, job)
    assert main(["sheet", str(path)]) == 1
    assert told in capsys.readouterr().out


@pytest.mark.parametrize("job", [safe(), demo(), new_job("empty"), safe(meter_grounded_switch_on=True)])
def test_a_magneto_that_the_switch_grounds_is_no_danger(job):
    assert status.dangers(job) == ()


def test_two_readings_that_say_the_same_warn_once_and_only_a_better_reading_silences_them():
    job = safe(meter_grounded_switch_off=False, lamp_grounded_switch_off=False)
    assert len(status.dangers(job)) == 1
    assert status.dangers(change_in(job, "remarks", text="no time")) == status.dangers(job)
    mended = change_in(job, "switch_lead", meter_grounded_switch_off=True, lamp_grounded_switch_off=True)
    assert status.dangers(mended) == ()


def heading(job, words: str) -> str:
    return next(b.mark for b in document(job).blocks if isinstance(b, Heading) and words in b.text)


def test_done_is_said_with_what_is_out():
    assert heading(safe(), "Prove both switch leads") == "done"
    one = safe(meter_grounded_switch_off=False)
    assert heading(one, "Prove both switch leads") == "done, with 1 reading out of limits or not as it must be"
    two = safe(meter_grounded_switch_off=False, meter_grounded_switch_on=True)
    assert heading(two, "Prove both switch leads") == "done, with 2 readings out of limits or not as they must be"
    assert status.out_in(two, "switch_lead") == status.Out(2, 0)
    found = change_in(demo(), "as_found", gap_mm=0.05)
    count = sum(v.stage == "as_found" and not v.ok for v in judge.verdicts(found))
    assert heading(found, ". As found").endswith(f"{count} readings found out of limits") and count > 1
    lacking = change_in(demo(), "closing", safety_wired=False)
    assert heading(lacking, "Close, prove leads again").startswith("done, with 1 missing")


def test_the_command_says_fields_by_their_words_and_never_simply_finished(capsys, tmp_path):
    job = change_in(demo(), "ground_run", dead_cut_checked=False, drop_left_rpm=140.0)
    path = tmp_path / "a-job.json"
    write_model(path, signed(job))
    assert main(["sheet", str(path)]) == 1
    out = capsys.readouterr().out
    assert "NOT AS IT MUST BE: Ground run, stops firing with the switch off, at idle: no\n" in out
    assert "OUT OF LIMITS: Ground run, drop, running on left: 140 rpm (40 rpm to 120 rpm)\n" in out
    assert "dead_cut" not in out and "False" not in out and "_rpm" not in out
    # Two drops of 140 and 75 rpm differ by 65, and 40 is the most.
    assert "Finished; signed, with 3 readings out of limits or not as they must be.\n" in out
    write_model(path, signed(change_in(job, "ground_run", drop_left_rpm=75.0)))
    assert main(["sheet", str(path)]) == 1
    assert "Finished; signed, with 1 reading out of limits or not as it must be.\n" in capsys.readouterr().out
