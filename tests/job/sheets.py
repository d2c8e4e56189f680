"""Sheets for the tests."""

from __future__ import annotations

from pathlib import Path

from magview.job import judge
from magview.job.checklists import checks
from magview.job.document import document
from magview.job.history import Drift
from magview.job.library import job_path, read_job
from magview.job.sheet import Job, change, change_in, digest, new_job, without_history
from magview.job.signing import sign
from magview.job.store import JobStore
from magview.paper.html import document_html
from magview.paper.sizes import PaperSize


def html_text(job: Job, size: PaperSize = "a4", drift: Drift | None = None) -> str:
    """A sheet as HTML."""
    return document_html(document(job, size, drift))


def demo() -> Job:
    """The shipped finished sheet."""
    return without_history(read_job(job_path("seven-radial-left")))


def safe(job: Job | None = None, **lead: bool) -> Job:
    """A sheet made safe, both leads proved with these readings besides sound ones, both stages done."""
    job = new_job("safe") if job is None else job
    job = change_in(job, "cautions", state="open", place="engine")
    job = judge.finish(change_in(job, "cautions", **dict.fromkeys(checks(job.cautions), True)), "cautions")
    sound = {f"{of}meter_grounded_switch_{way}": way == "off" for of in ("", "other_") for way in ("off", "on")}
    return judge.finish(change_in(job, "switch_lead", **(sound | lead)), "switch_lead")


def on_bench(job: Job | None = None) -> Job:
    """A sheet of a magneto off its engine, made safe as such."""
    job = change_in(new_job("bench") if job is None else job, "cautions", place="bench")
    job = judge.finish(change_in(job, "cautions", **dict.fromkeys(checks(job.cautions), True)), "cautions")
    return judge.finish(job, "switch_lead")


def marked(job: Job) -> Job:
    """The sheet with all parts of the coupling marked, that stage done."""
    fields = ("drive_flange_marked", "disc_marked", "magneto_flange_marked", "engine_marked")
    return judge.finish(change_in(job, "marks", **dict.fromkeys(fields, True)), "marks")


def signed(job: Job) -> Job:
    """The sheet signed by one person."""
    return sign(job, "A. Person", "", "2026-11-25")


def signed_earlier(job: Job) -> Job:
    """The sheet signed as the first rules had it, whatever is on it."""
    signature = {"who": "A. Person", "licence_no": "X-1", "day": "2026-10-14", "covers": digest(job)}
    return change(job, signature=signature)


def of_magneto(hours: float, found: float | None, left: float, *, opens_found: float = 0.0, day: str = "") -> Job:
    """A sheet of one magneto with its hours, the gap found and left [mm], and the opening found [deg]; left at 0."""
    job = change_in(new_job("check", day), "magneto", type="Practice", serial="N 7", hours_h=hours)
    job = change_in(job, "limits", gap_low_mm=0.2, gap_high_mm=0.26)
    job = change_in(job, "as_found", gap_mm=found, opening_error_deg=opens_found if found is not None else None)
    return change_in(job, "internal_timing", gap_mm=left, opening_error_deg=0.0)


def drop(store: JobStore, rpm: float) -> None:
    """A step that any sheet can take."""
    store.commit(change_in(store.job, "ground_run", drop_left_rpm=rpm), f"drop {rpm:g}")


def rpm_in(path: Path) -> float | None:
    """What that step left in the file."""
    return read_job(path).ground_run.drop_left_rpm


def sentence(text: str | None) -> str:
    """One sentence for people."""
    assert text is not None
    assert text.isprintable() and len(text) < 600 and "Errno" not in text
    return text


def fires(job: Job, found: float | None, left: float | None, side: str = "left") -> Job:
    """The sheet with where its magneto was found to fire, and was left [crank deg before top dead centre]."""
    job = change_in(job, "magneto", position=side)
    job = change_in(job, "limits", **{f"{side}_btdc_deg": 25.0}, timing_tolerance_deg=1.0)
    job = change_in(job, "as_found", **{f"{side}_btdc_deg": found})
    return change_in(job, "synchronising", **{f"{side}_btdc_deg": left})
