"""A sheet signed under earlier rules opens, keeps its signature, and says first what would not be signed now."""

from __future__ import annotations

import json

import pytest

from magview.cli.main import main
from magview.job import judge, status
from magview.job.document import document
from magview.job.library import read_job
from magview.job.readings import as_plain, csv_text
from magview.job.requirements import earlier_rules
from magview.job.sheet import Job, change, change_in, signature_holds
from magview.job.signing import sign
from magview.paper.blocks import Heading, Paragraph
from magview.spec.files import dump_json, write_model
from tests.job.sheets import demo, signed_earlier
from tests.wording import says

NEW = {
    "cautions": ("place", "fuel_off", "mixture_cut_off", "throttle_closed", "hanging_leads_clear", "nobody_in_arc"),
    "switch_lead": ("other_meter_grounded_switch_off", "other_meter_grounded_switch_on"),
    "dead_centre": ("disc_reset",),
    "synchronising": ("finger_at_no_1",),
    "closing": (
        "instruments_off", "no_jumper_left", "lead_grounded_switch_off", "lead_grounded_switch_on",
        "other_lead_grounded_switch_off", "other_lead_grounded_switch_on", "chocks_decided",
    ),
    "ground_run": ("runs_left", "runs_right"),
    "limits": ("drop_low_rpm",),
}  # fmt: skip
"""What sheets of the first rules had not."""


def old(**parts: dict[str, object]) -> Job:
    """The shipped sheet as an earlier program would have written and signed it."""
    job = demo()
    for part, fields in NEW.items():
        job = change_in(job, part, **dict.fromkeys(fields))
    for part, values in parts.items():
        job = change_in(job, part, **values)
    return signed_earlier(job)


def test_it_opens_keeps_its_signature_and_says_so_first(tmp_path, capsys):
    path = tmp_path / "old-job.json"
    write_model(path, old())
    assert "rules" not in json.loads(path.read_text(encoding="utf-8"))["signature"]
    job = read_job(path)
    assert signature_holds(job) is True and judge.progress(job).passed
    (told,) = status.earlier(job)
    assert told.startswith("Signed under earlier rules: make safe: 5 entries; prove both switch leads: other magneto")
    for words in ("disc then set to zero", "close, prove leads again: 7 entries", "ground run: on left it runs"):
        assert words in told
    blocks = [b for b in document(job).blocks if isinstance(b, Heading | Paragraph)]
    assert blocks[2] == Paragraph(told, "warning"), "after the title and that all is invented"
    assert main(["sheet", str(path)]) == 0
    assert capsys.readouterr().out.splitlines()[2] == told
    assert csv_text(job).splitlines()[1].startswith(",note,")
    assert len(as_plain(job)["signed_under_earlier_rules"]) == 6


@pytest.mark.parametrize(
    ("parts", "words"),
    [
        ({"cautions": {"state": "skipped", "reason": "x"}}, "make safe: skipped"),
        (
            {"switch_lead": {"state": "skipped", "reason": "no lead to prove here"}},
            "prove both switch leads: skipped",
        ),
        ({"lobes": {"state": "skipped", "reason": "x"}}, "every lobe: skipped for too short a reason"),
    ],
)
def test_what_could_be_skipped_then_is_told(parts, words):
    job = old(**parts)
    assert words in earlier_rules(job) and judge.progress(job).finished


def test_a_check_by_the_same_person_is_told():
    job = old()
    for name, licence, words in (
        ("a. person", "X-2", "is by the person who signs"), ("B. Person", "X-1", "has the licence number of"),
    ):  # fmt: skip
        both = {**job.signature.model_dump(), "checked_by": name, "checked_licence_no": licence}
        assert words in " ".join(earlier_rules(change(job, signature=both)))


def test_changed_or_signed_anew_it_is_held_to_the_present_rules():
    job = change_in(old(), "remarks", text="once more")
    assert earlier_rules(job) == () and status.earlier(job) == ()
    assert len(judge.progress(job).missing) == 6
    unsafe = change_in(old(cautions={"state": "skipped", "reason": "x"}), "remarks", text="once more")
    assert any(says("it was skipped, which is not allowed") in words for words in judge.progress(unsafe).missing)
    assert any("“Make safe”" in words for words in status.dangers(unsafe))
    new = sign(demo(), "A. Person", "X-1", "2026-11-25")
    assert new.signature.rules == 2 and earlier_rules(new) == () and "Signed under" not in dump_json(new)


def test_dangers_are_no_matter_of_rules():
    job = old(ground_run={"drop_left_rpm": 0.0})
    assert signature_holds(job) and status.earlier(job) and len(status.dangers(job)) == 1
    assert not judge.progress(job).passed
