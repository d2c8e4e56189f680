"""The commands ``magview sheet``, ``magview limits`` and ``magview schema``, thin."""

from __future__ import annotations

import argparse
import sys
from pathlib import Path
from typing import TYPE_CHECKING, Any

from magview.cli.streams import words_stream, write_out, write_pdf
from magview.paper.sizes import PAPERS
from magview.spec.base import SpecError
from magview.spec.language import marked, tr

if TYPE_CHECKING:  # the other commands, and the window, do not wait for the job sheet
    from magview.job.history import Drift
    from magview.job.sheet import Job

PASS, FAIL = 0, 1

KINDS = (
    "magneto", "engine", "installation", "job", "instruments", "limits", "exercise", "lesson", "class", "handed-in",
)  # fmt: skip


def add_commands(commands: argparse._SubParsersAction[Any]) -> None:
    """Put both commands beside the others."""
    sheet = commands.add_parser("sheet", help=tr("Tell how a job sheet stands; write it as PDF, HTML, CSV or JSON."))
    sheet.add_argument(
        "job",
        metavar="JOB",
        nargs="?",
        help=tr("Take this job sheet: a file, or the shipped one (seven-radial-left)."),
    )
    sheet.add_argument(
        "--blank", metavar="OUT", help=tr("Write a blank form for the pencil, both magnetos, as PDF or HTML.")
    )
    for kind in ("pdf", "html", "csv"):
        words = tr("Write it as {kind}, such as sheet.{ending}.", kind=kind.upper(), ending=kind)
        sheet.add_argument(f"--{kind}", metavar="OUT", help=words)
    sheet.add_argument(
        "--json-readings", metavar="OUT", help=tr("Write its readings as JSON, such as readings.json.")
    )
    sheet.add_argument(
        "--paper", choices=PAPERS, default="a4", help=tr("Choose the size of paper of PDF and HTML: a4 or letter.")
    )
    sheet.add_argument(
        "--history",
        metavar="FOLDER",
        help=tr("Add earlier sheets of the same magneto from this folder, and how its readings drift."),
    )
    sheet.add_argument("--json", action="store_true", help=tr("Print its readings as JSON, for programs."))
    sheet.set_defaults(run=run_sheet)

    card = commands.add_parser("limits", help=tr("Tell what a limits card says; print it as a card."))
    card.add_argument("card", metavar="CARD", help=tr("Take this limits card: a file."))
    card.add_argument(
        "--pdf", metavar="OUT", help=tr("Write it as {kind}, such as sheet.{ending}.", kind="PDF", ending="pdf")
    )
    card.add_argument("--paper", choices=PAPERS, default="a4", help=tr("Choose the size of paper: a4 or letter."))
    card.add_argument("--json", action="store_true", help=tr("Print the card as JSON, for programs."))
    card.set_defaults(run=run_limits)

    schema = commands.add_parser("schema", help=tr("Print the JSON Schema of a kind of file."))
    schema.add_argument(
        "kind", choices=KINDS, metavar="KIND", help=tr("Choose the kind: {kinds}.", kinds=", ".join(KINDS))
    )
    schema.set_defaults(run=run_schema)


_SIGNED = {
    None: marked("not signed"),
    True: marked("signed"),
    False: marked("CHANGED SINCE IT WAS SIGNED"),
}


def run_schema(arguments: argparse.Namespace) -> int:
    """Print a schema."""
    if arguments.kind in ("exercise", "lesson", "class", "handed-in"):
        from magview.classroom import schema as of_class

        sys.stdout.write(of_class.schema_text(arguments.kind))
        return PASS
    from magview.job.schema import schema_text

    sys.stdout.write(schema_text(arguments.kind))
    return PASS


def run_limits(arguments: argparse.Namespace) -> int:
    """Say what a limits card says; print it where that was asked for."""
    from magview.job.limits_cards import card_document, card_text
    from magview.spec.files import dump_json
    from magview.spec.limits import read_limits

    stream = words_stream(arguments.pdf, json_wanted=arguments.json)
    card = read_limits(Path(arguments.card))
    if arguments.pdf:
        write_pdf(Path(arguments.pdf), card_document(card, arguments.paper))
    stream.write(dump_json(card) if arguments.json else f"{card_text(card)}\n")
    return PASS


def run_sheet(arguments: argparse.Namespace) -> int:
    """Write what was asked for, and say how the sheet stands. Exit code 1 for one that is unfinished or out."""
    if arguments.blank:
        from magview.job.blank_form import blank_form

        form = blank_form(arguments.paper)
        if Path(arguments.blank).suffix.lower() in (".html", ".htm"):
            from magview.paper.html import document_html

            write_out(arguments.blank, document_html(form))
        else:
            write_pdf(Path(arguments.blank), form)
        if arguments.job is None:
            return PASS
    if arguments.job is None:
        raise SpecError(tr("no job sheet is given; name one, such as seven-radial-left, or ask for --blank form.pdf"))
    from magview.job import judge
    from magview.job.document import document
    from magview.job.library import job_path, read_job
    from magview.job.readings import csv_text, json_text
    from magview.paper.html import document_html

    outputs = (arguments.pdf, arguments.html, arguments.csv, arguments.json_readings)
    stream = words_stream(*outputs, json_wanted=arguments.json)
    path = job_path(arguments.job)
    job = read_job(path)
    drift = _drift(job, arguments.history, path)
    printed = document(job, arguments.paper, drift, path.parent)
    if arguments.html:
        write_out(arguments.html, document_html(printed))
    if arguments.csv:
        write_out(arguments.csv, csv_text(job))
    if arguments.json_readings:
        write_out(arguments.json_readings, json_text(job))
    if arguments.pdf:
        write_pdf(Path(arguments.pdf), printed, or_html=True)
    stream.write(json_text(job) if arguments.json else _text(job, drift))
    return PASS if judge.progress(job).passed else FAIL


def _drift(job: Job, folder: str | None, path: Path) -> Drift | None:
    if folder is None:
        return None
    from magview.job.history import drift_of, earlier_jobs

    found, refused = earlier_jobs(Path(folder), job, without=path)
    for sentence in refused:
        sys.stderr.write(f"magview: {tr('passed over: {why}', why=sentence)}\n")
    return drift_of([*(f.job for f in found), job])


def _text(job: Job, drift: Drift | None) -> str:
    from magview.job import judge, status
    from magview.job.readings import rows, unjudged_words
    from magview.job.sheet import CAUTIONS, STAGES, stage_of, title_of
    from magview.spec.language import inside

    found = judge.progress(job)
    lines = [job.title or tr("Magneto job sheet")]
    lines += [tr("Invented for demonstration.")] if job.invented else []
    lines += status.earlier(job)
    lines += status.dangers(job)
    for number, name in enumerate(STAGES, 1):
        stage = stage_of(job, name)
        reason = f": {stage.reason.splitlines()[0]}" if stage.state == "skipped" else ""
        lines.append(f"  {number:>2}  {title_of(name):<28} {status.state_of(job, name)}{reason}")
    by = {(row.stage, row.field): row for row in rows(job)}
    for row in (by[v.stage, v.field] for v in found.out):
        limits = f" ({row.limits_shown})" if row.limits_shown else ""
        lines.append(f"  {tr(row.verdict)}: {title_of(row.stage)}, {inside(row.label)}: {row.shown}{limits}")
    lines += [f"  {tr('MISSING: {what}', what=sentence)}" for sentence in found.missing]
    lines += [f"  {sentence}" for name in STAGES for sentence in status.follows(job, name) if name == "ground_run"]
    lines += [
        f"  {tr('TO BE CLEARED UP: {what}', what=sentence)}"
        for name in found.doubtful
        for sentence in status.doubts(job, name)
    ]
    lines += [f"  {sentence}" for sentence in (unjudged_words(job),) if sentence]
    finished = tr("Finished") if found.finished else tr("Not finished")
    signed = tr(_SIGNED[found.signature])
    if found.out:
        out = status.out_words(len(found.out))
        lines.append(f"  {tr('{finished}; {signed}, with {out}.', finished=finished, signed=signed, out=out)}")
    else:
        lines.append(f"  {tr('{finished}; {signed}.', finished=finished, signed=signed)}")
    lines += [f"  {sentence}" for sentence in (() if drift is None else drift.sentences)]
    return "\n".join([*lines, *CAUTIONS, ""])
