"""A box that nobody ticked is an empty box on paper, and not a no; files of earlier programs stay what they were."""

from __future__ import annotations

import csv
import io
import json

import pytest

from magview.job import judge
from magview.job.document import document
from magview.job.library import read_job
from magview.job.readings import csv_text, json_text
from magview.job.sheet import change_in, new_job, signature_holds
from magview.paper.blocks import Table
from magview.spec.files import dump_json
from tests.job.sheets import demo, signed_earlier
from tests.wording import says


def printed(job, label: str) -> str:
    """What stands beside a label on paper."""
    (cell,) = [row[1] for b in document(job).blocks if isinstance(b, Table) for row in b.rows if row[0] == label]
    return cell


@pytest.mark.parametrize(
    ("stage", "field", "label"),
    [
        ("cautions", "wheels_chocked", says("Wheels chocked, or aircraft tied down")),
        ("closing", "safety_wired", "Safety wire fitted"),
        ("marks", "disc_marked", "Disc marked"),
        ("internal_timing", "read_after_tightening", says("Read again after tightening")),
    ],
)
def test_yes_no_and_nothing_are_three_things(stage, field, label):
    job = new_job()
    assert printed(job, label) == "☐"
    assert printed(change_in(job, stage, **{field: True}), label) == "yes"
    assert printed(change_in(job, stage, **{field: False}), label) == "no"
    lines = csv.DictReader(io.StringIO(csv_text(job)))
    assert [ln["value"] for ln in lines if (ln["stage"], ln["field"]) == (stage, field)] == [""]
    (row,) = [r for r in json.loads(json_text(job))["readings"] if (r["stage"], r["field"]) == (stage, field)]
    assert row["value"] is None
    # To be confirmed: neither nothing nor a no will do.
    for value in (None, False):
        assert any(label.lower() in lack for lack in judge.missing(change_in(demo(), stage, **{field: value}), stage))


def test_a_file_and_a_signature_of_before_stand(tmp_path):
    """Earlier programs left out of the file what was not ticked, and signed without it."""
    job = signed_earlier(change_in(new_job("old"), "cautions", wheels_chocked=True))
    data = json.loads(dump_json(job))
    assert data["cautions"] == {"wheels_chocked": True}
    path = tmp_path / "old-job.json"
    path.write_text(json.dumps(data), encoding="utf-8")
    assert signature_holds(read_job(path)) is True
    data["cautions"]["switch_off"] = False
    path.write_text(json.dumps(data), encoding="utf-8")
    assert read_job(path).cautions.switch_off is False
    assert read_job(path).cautions.plugs_out is None
