"""What is on paper is what is on the sheet: every reading, every verdict, and nothing that is not text."""

from __future__ import annotations

import csv
import io
import json
import re

import pytest

from magview import __version__
from magview.job import judge
from magview.job.derived import dead_centre_deg
from magview.job.document import STATEMENT
from magview.job.history import drift_of
from magview.job.readings import csv_text, json_text, rows
from magview.job.sheet import CAUTIONS, STAGES, change, change_in, new_job, title_of
from tests.job.sheets import demo, fires, html_text, of_magneto
from tests.paper.html_reader import HtmlReader
from tests.wording import says


def test_every_reading_of_the_job_is_on_the_page():
    job = demo()
    cells = set(HtmlReader(html_text(job)).words)
    text = "\n".join(cells)
    told = [r for r in rows(job) if not r.field.startswith("uncertainty.")]
    assert len(told) > 60
    for row in told:
        if not row.field.startswith(("trials[", "lobes[")):
            assert row.label in cells or row.field == "text", row.label
        assert row.shown in cells, row
    for sure in (job.internal_timing.uncertainty.gap_mm, job.synchronising.uncertainty.left_btdc_deg):
        assert sure is not None and f"k = {sure.coverage_factor:.2f}" in text and sure.matters_most in cells
    # ± 0.0077 mm and 0.37° as propagation gave them.
    assert f"{job.internal_timing.uncertainty.gap_mm.expanded_uncertainty:.3f} mm" in text
    assert f"± {job.synchronising.uncertainty.left_btdc_deg.expanded_uncertainty:.2f}°" in text


def test_the_page_has_cautions_version_signature_lines_uncertainty_and_identities():
    job = demo()
    text = HtmlReader(html_text(job)).text
    assert all(caution in text for caution in CAUTIONS)
    assert f"magview {__version__}" in text and STATEMENT in text
    for words in ("Work done by", "Independent check by", "Licence no.", "Signature", "Date"):
        assert words in text
    for words in ("X-DEMO", "INVENTED-M1", "INVENTED-E7", "A. Person (invented)", "INVENTED FOR DEMONSTRATION"):
        assert words in text
    assert all(title_of(name) in text for name in STAGES)
    assert "As found: backplate" in text and "As left: backplate" in text


def test_drawings_stand_in_the_page_and_nothing_is_fetched():
    page = HtmlReader(html_text(demo()))
    assert sum(tag == "svg" for tag, _ in page.tags) == 4
    assert not {"script", "link", "img", "iframe", "object"} & {tag for tag, _ in page.tags}
    for _, attributes in page.tags:
        assert not {"src", "href", "onload", "onclick"} & set(attributes)
    outside = re.findall(r"https?://[^\"' <]+", html_text(demo()))
    assert set(outside) == {"http://www.w3.org/2000/svg"}  # the name of the format, which nothing loads


@pytest.mark.parametrize(("paper", "size"), [("a4", "size: A4"), ("letter", "size: letter")])
def test_paper_sizes(paper, size):
    assert size in html_text(demo(), paper)


def test_free_text_is_text():
    nasty = "</p><script>alert('x')</script> & <b onmouseover=\"y\"> \x00 \x1b[0m"
    job = change_in(demo(), "remarks", text=nasty, note=nasty, state="skipped", reason=nasty)
    job = change(job, title="<title>&")
    job = change_in(job, "aircraft", registration='"><svg/onload=1>')
    page = HtmlReader(html_text(job))
    tags = [tag for tag, _ in page.tags]
    # The only bold there is: what stands on the eight lines of the signatures.
    assert "script" not in tags and tags.count("b") == 8
    assert tags.count("title") == 1 + tags.count("svg")
    assert "<script>alert('x')</script> & <b onmouseover=\"y\">" in page.text
    assert "\x00" not in html_text(job) and "\x1b" not in html_text(job)


def test_verdicts_on_the_page_are_those_of_the_limits():
    job = demo()
    page = HtmlReader(html_text(job)).text
    assert says("Finished; as left, all readings that have limits are within them.") in page
    assert "OUT OF LIMITS" not in page and says("found out of limits") in page
    bad = change_in(job, "internal_timing", gap_mm=job.limits.gap_high_mm + 0.06)
    bad = change_in(bad, "ground_run", drop_right_rpm=130.0)
    page = HtmlReader(html_text(bad)).text
    assert (
        "OUT OF LIMITS OR NOT AS IT MUST BE: ground run: difference of the drops; ground run: drop, running on "
        in page
    )
    assert "setting, as left: largest gap" in page
    assert "CHANGED SINCE IT WAS SIGNED" in page


def test_an_unfinished_sheet_says_what_is_open_and_why_a_stage_was_skipped():
    page = HtmlReader(html_text(judge.skip(new_job("half"), "lobes", "the cam is out"))).text
    assert "NOT FINISHED: open: make safe" in page
    assert "Skipped: the cam is out" in page and "Nothing entered." in page


def test_a_cam_that_cannot_be_drawn_costs_the_drawing_only():
    job = demo()
    magneto = job.installation.magneto
    # A sharp, high, short lobe hollows the flank more than any heel can follow.
    profile = magneto.cam.profile.model_copy(update={"lift_mm": 4.0, "rise_deg": 9.0, "fall_deg": 9.0})
    broken = magneto.model_copy(update={"cam": magneto.cam.model_copy(update={"profile": profile})})
    page = HtmlReader(
        html_text(change(job, installation=job.installation.model_copy(update={"magneto": broken})))
    ).text
    assert "No drawings:" in page and f"{job.as_found.gap_mm:.3f} mm" in page


# ---------------------------------------------------------------------- CSV and JSON


def test_csv_reads_back_to_the_last_bit():
    job = demo()
    lines = list(csv.DictReader(io.StringIO(csv_text(job), newline="")))
    by = {(line["stage"], line["field"]): line for line in lines}
    assert len(by) == len(lines) == len(rows(job))
    gap = by["internal_timing", "gap_mm"]
    assert float(gap["value"]) == job.internal_timing.gap_mm
    assert (gap["unit"], float(gap["low"]), float(gap["high"]), gap["verdict"]) == (
        "mm", *job.installation.magneto.gap_limits_mm, "in limits"
    )  # fmt: skip
    assert by["cautions", "plugs_out"]["value"] == "true"
    assert by["tooth_shift", "moved_disc_teeth"]["value"] == str(job.tooth_shift.moved_disc_teeth)
    assert float(by["lobes", "lobes[3].dwell_deg"]["value"]) == job.lobes.lobes[3].dwell_deg
    assert by["as_found", "left_btdc_deg"]["verdict"] == says("found out of limits")
    assert csv_text(job).count("\r\n") == len(lines) + 1


def test_csv_gives_a_spreadsheet_no_formula():
    job = change_in(demo(), "remarks", text='=HYPERLINK("x")')
    (cell,) = [ln["value"] for ln in csv.DictReader(io.StringIO(csv_text(job))) if ln["field"] == "text"]
    assert cell == '\'=HYPERLINK("x")'


def test_json_of_the_readings():
    job = demo()
    data = json.loads(json_text(job))
    by = {(r["stage"], r["field"]): r for r in data["readings"]}
    assert by["as_found", "gap_mm"]["value"] == job.as_found.gap_mm
    assert by["dead_centre", "true_centre_deg"]["value"] == dead_centre_deg(job) == 1.5
    assert (data["passed"], data["finished"], data["open"], data["signature_holds"]) == (True, True, [], True)
    assert data["magneto"]["serial"] == "INVENTED-M1"


def test_an_empty_sheet_has_its_papers_too():
    job = new_job()
    assert HtmlReader(html_text(job)).text.count("Nothing entered.") >= 3
    assert json.loads(json_text(job))["passed"] is False
    assert csv_text(job).startswith("stage,field,reading,value,unit,low,high,verdict,judged_value\r\n")


def test_earlier_sheets_are_drawn_with_their_drift():
    drift = drift_of(
        [of_magneto(100.0, None, 0.25, day="2025-01-01"), of_magneto(200.0, 0.23, 0.25, day="2026-01-01")]
    )
    page = HtmlReader(html_text(of_magneto(200.0, 0.23, 0.25), "a4", drift))
    assert says("Earlier sheets of this magneto") in page.text and "2025-01-01" in page.text
    assert sum(tag == "svg" for tag, _ in page.tags) == 2


def test_the_firing_is_drawn_where_it_was_read():
    sheets = [
        fires(of_magneto(100.0, None, 0.25), None, 25.0), fires(of_magneto(200.0, 0.23, 0.25), 24.5, 25.0)
    ]  # fmt: skip
    page = HtmlReader(html_text(sheets[-1], "a4", drift_of(sheets)))
    assert sum(tag == "svg" for tag, _ in page.tags) == 3
    assert "Fires before top dead centre [crank °] over the magneto's hours" in page.text
