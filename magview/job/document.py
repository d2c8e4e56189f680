"""The sheet as a document to print: cautions, dangers, identities, drawings, every stage, and lines to sign on."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

from magview import __version__
from magview.bench.sureness import percent_words, value_words
from magview.job import judge, status
from magview.job.history import Drift
from magview.job.paper_pictures import BREAKER_MM, pictures
from magview.job.parts import LENGTH, OPENING, PLATE, Signature, Sure, Uncertainty, title_in
from magview.job.photographs import read_photograph
from magview.job.read_with import overdue, stages_of
from magview.job.readings import ReadingRow, label_of, rows, unjudged_words
from magview.job.sheet import CAUTIONS, STAGES, Job, stage_of, title_of
from magview.job.stages import InternalTiming, Lobes
from magview.job.words import shown
from magview.paper.blocks import (
    Block,
    Document,
    Heading,
    Paragraph,
    Picture,
    Pictures,
    SignatureLines,
    Table,
    working_foot,
)
from magview.paper.sizes import PaperSize
from magview.spec.base import SpecError
from magview.spec.fields import about
from magview.spec.language import format_length, inside, marked, tr

STATEMENT = marked(
    "How sure the readings are: each may be out by the half-width of the instrument or habit it was "
    "taken with, all values within it equally likely. These were propagated linearly (JCGM "
    "100:2008); the interval stated is the expanded uncertainty with its coverage factor k, and "
    "holds the true value 95 times in 100 unless stated otherwise. It does not allow for mistakes, "
    "nor for a magneto that differs from the file it was compared with."
)

_PHOTOGRAPH_MM = 80.0
"""Width of a photograph on paper: two stand side by side."""

POSITIONS = {"left": marked("left"), "right": marked("right"), "single": marked("single")}
"""Sides of the magnetos, in words."""


def document(job: Job, size: PaperSize = "a4", drift: Drift | None = None, folder: Path | None = None) -> Document:
    """The whole sheet; with `drift`, earlier sheets of the same magneto are shown, too.

    `folder`: the sheet's own, where its photographs are; without it they are only named.
    """
    of = " · ".join(t for t in (job.magneto.type, job.magneto.serial, job.aircraft.registration, job.day) if t)
    title = tr("Magneto job sheet")
    return Document(job.title or title, working_foot(of or title), tuple(_blocks(job, drift, folder)), size)


def cautions(*first: str) -> Paragraph:
    """Steps of making safe before the magneto is touched, after `first`."""
    numbered = (f"{i}. {tr(caution)}" for i, caution in enumerate(CAUTIONS, 1))
    return Paragraph(" ".join((*first, tr("Cautions."), *numbered)), "caution")


def _blocks(job: Job, drift: Drift | None, folder: Path | None) -> Iterator[Block]:
    yield Heading(job.title or tr("Magneto job sheet"), 1)
    if job.invented:
        yield Paragraph(tr("INVENTED FOR DEMONSTRATION: no such aircraft, engine, magneto or person."), "warning")
    yield from (Paragraph(sentence, "warning") for sentence in status.earlier(job))
    yield cautions()
    yield from _dangers(job)
    yield _identities(job)
    yield from _verdict(job)
    found = {name: [row for row in rows(job) if row.stage == name] for name in STAGES}
    yield from pictures(job)
    for place, name in enumerate(STAGES, 1):
        yield from _stage(job, place, name, found[name])
        if name == "marks":
            yield from _photographs(job, folder)
    yield from _instruments(job)
    if any(row.field.startswith("uncertainty.") for stage in found.values() for row in stage):
        yield Paragraph(tr(STATEMENT), "small")
    if drift is not None:
        yield from _drift(drift)
    yield from _end(job)


def _dangers(job: Job) -> Iterator[Block]:
    yield from (Paragraph(f"⚠ {sentence}", "warning") for sentence in status.dangers(job))


def _identities(job: Job) -> Table:
    def line(*texts: str) -> str:
        return ", ".join(t for t in texts if t)

    def hours(value: float | None, words: str) -> str:
        return "" if value is None else tr(words, hours=value)

    a, e, m = job.aircraft, job.engine, job.magneto
    lines = (
        (tr("Aircraft"), line(a.registration, a.type, hours(a.hours_h, marked("{hours} h total")))),
        (
            tr("Engine"),
            line(
                e.type,
                e.serial and tr("serial {serial}", serial=e.serial),
                hours(e.hours_h, marked("{hours} h since overhaul")),
            ),
        ),
        (
            tr("Magneto"),
            line(
                m.type,
                m.serial and tr("serial {serial}", serial=m.serial),
                tr(POSITIONS[m.position]),
                hours(m.hours_h, marked("{hours} h since overhaul")),
            ),
        ),
        (tr("Date"), job.day),
        (tr("Manual"), job.cautions.manual),
        (tr("Limits"), job.limits.source and tr("taken from: {source}", source=job.limits.source)),
        (
            tr("Next check"),
            line(hours(job.next_check.hours_h, marked("{hours} h of the magneto")), job.next_check.day),
        ),
        (tr("Program"), tr("magview {version}", version=__version__)),
    )
    return Table((), tuple((what, text or "–") for what, text in lines), (1.0, 5.0))


def _verdict(job: Job) -> Iterator[Block]:
    found = judge.progress(job)
    if found.out:
        what = "; ".join(sorted({f"{inside(title_of(v.stage))}: {_label(job, v)}" for v in found.out}))
        yield Paragraph(tr("OUT OF LIMITS OR NOT AS IT MUST BE: {what}.", what=what), "warning")
    if found.doubtful:
        where = ", ".join(inside(title_of(n)) for n in found.doubtful)
        yield Paragraph(tr("TO BE CLEARED UP: see {stages}.", stages=where), "warning")
    if found.open or found.missing:
        words = (
            [tr("open: {stages}", stages=", ".join(inside(title_of(n)) for n in found.open))] if found.open else []
        )
        words += [tr("missing in {stage}", stage=inside(m)) for m in found.missing]
        yield Paragraph(tr("NOT FINISHED: {words}.", words="; ".join(words)), "warning")
    if found.signature is False:
        yield Paragraph(tr("CHANGED SINCE IT WAS SIGNED: the signature does not cover this sheet."), "warning")
    if found.passed:
        yield Paragraph(tr("Finished; as left, all readings that have limits are within them."))
    not_judged = unjudged_words(job)
    if not_judged:
        yield Paragraph(not_judged)


def _label(job: Job, verdict: judge.Verdict) -> str:
    return inside(label_of(job, verdict.stage, verdict.field))


# ---------------------------------------------------------------------- stages


def _stage(job: Job, place: int, name: str, found: list[ReadingRow]) -> Iterator[Block]:
    stage = stage_of(job, name)
    yield Heading(f"{place}. {title_of(name)}", mark=status.state_of(job, name))
    yield from (Paragraph(f"⚠ {sentence}", "warning") for sentence in status.dangers_in(job, name))
    if stage.state == "skipped":
        yield Paragraph(tr("Skipped: {reason}", reason=stage.reason))
    plain = [r for r in found if not r.field.startswith(("trials[", "lobes[", "uncertainty.")) and r.field != "text"]
    if plain:
        yield _readings(plain)
    yield from (Paragraph(tr("TO BE CLEARED UP: {what}", what=d), "warning") for d in status.doubts(job, name))
    yield from (Paragraph(sentence) for sentence in status.follows(job, name))
    if isinstance(stage, InternalTiming) and stage.trials:
        yield _trials(stage)
    if isinstance(stage, Lobes) and stage.lobes:
        yield _lobes(stage, found)
    uncertainty = getattr(stage, "uncertainty", None)
    if isinstance(uncertainty, Uncertainty):
        yield from _uncertainty(uncertainty)
    yield from (Paragraph(row.shown) for row in found if row.field == "text")
    if stage.note:
        yield Paragraph(tr("Note: {note}", note=stage.note))
    if stage.by:
        yield Paragraph(tr("Done by: {by}", by=stage.by), "small")
    if not found and stage.state != "skipped":
        yield Paragraph(tr("Nothing entered."), "small")


def _photographs(job: Job, folder: Path | None) -> Iterator[Block]:
    shown: list[Picture] = []
    for number, photograph in enumerate(job.photographs, 1):
        words = tr("Photograph {number}: {caption}", number=number, caption=photograph.caption or photograph.name)
        if folder is None:
            yield Paragraph(tr("{photograph} (not looked for here)", photograph=words), "small")
            continue
        try:
            data = read_photograph(folder, photograph)
        except SpecError as error:
            yield Paragraph(tr("PHOTOGRAPH {number}: {reason}.", number=number, reason=error), "warning")
            continue
        shown.append(Picture(_PHOTOGRAPH_MM, jpeg=data, caption=words, told=words))
    yield from (Pictures(tuple(shown[at : at + 2])) for at in range(0, len(shown), 2))


def _readings(found: list[ReadingRow]) -> Table:
    return Table(
        (tr("Reading"), tr("Value"), tr("Limits"), tr("Verdict")),
        tuple((_named(r), r.shown, r.limits_shown, r.verdict and tr(r.verdict)) for r in found),
        (3.4, 2.9, 2.6, 1.6),
        frozenset(i for i, r in enumerate(found) if r.verdict.failed),
    )


def _named(row: ReadingRow) -> str:
    return tr("{reading} (by {instrument})", reading=row.label, instrument=row.read_by) if row.read_by else row.label


def _instruments(job: Job) -> Iterator[Block]:
    if not job.instruments:
        return
    late = {sentence for name in STAGES for sentence in overdue(job, name)}
    yield Heading(tr("Instruments"))
    yield Table(
        (tr("Instrument"), tr("For"), tr("Calibration no."), tr("Due"), tr("Read at")),
        tuple(
            (i.name, tr(dict(about(type(i), "use").choices)[i.use]), i.number or "–", i.due or "–",
             ", ".join(title_of(name) for name in stages_of(job, i)))
            for i in job.instruments
        ),
        (2.0, 1.6, 1.6, 1.2, 3.6),
        frozenset(n for n, i in enumerate(job.instruments) if any(s.startswith(f"{i.name}:") for s in late)),
    )  # fmt: skip
    yield from (Paragraph(tr("OVERDUE: {what}", what=sentence), "warning") for sentence in sorted(late))


def _trials(stage: InternalTiming) -> Table:
    lines = []
    for i, t in enumerate(stage.trials, 1):
        low, high = (shown(LENGTH, t.gap_low_mm), "" if t.gap_high_mm is None else shown(LENGTH, t.gap_high_mm))
        opened = shown(OPENING, t.opening_error_deg)
        lines.append((str(i), shown(PLATE, t.backplate_deg), low, high or tr("no blade refused"), opened))
    head = (tr("Trial"), tr("Backplate"), tr("Gap at least"), tr("Gap at most"), tr("Opening from the E-gap"))
    return Table(head, tuple(lines), (0.6, 1.0, 2.1, 2.1, 1.5))


def _lobes(stage: Lobes, found: list[ReadingRow]) -> Table:
    by = {r.field: r for r in found}
    lines, bad = [], set()
    for i, _ in enumerate(stage.lobes):
        cells = [by.get(f"lobes[{i}].{f}") for f in ("opening_error_deg", "gap_mm", "dwell_deg")]
        verdicts = [c.verdict for c in cells if c is not None and c.verdict]
        failed = [v for v in verdicts if v.failed]
        if failed:
            bad.add(i)
        told = tr(failed[0] if failed else verdicts[0]) if verdicts else ""
        lines.append((str(i + 1), *(c.shown if c is not None else "–" for c in cells), told))
    limits = "; ".join(
        tr(words, limits=by[f].limits_shown)
        for words, f in (
            (marked("opening {limits}"), "lobes[0].opening_error_deg"),
            (marked("gap {limits}"), "lobes[0].gap_mm"),
        )
        if f in by and by[f].limits_shown
    )
    head = (
        tr("Lobe"),
        tr("Opening from its place"),
        tr("Largest gap"),
        tr("Contacts closed"),
        tr("Verdict ({limits})", limits=limits) if limits else tr("Verdict"),
    )
    return Table(head, tuple(lines), (0.6, 1.6, 2.1, 1.5, 2.6), frozenset(bad))


def _uncertainty(found: Uncertainty) -> Iterator[Block]:
    lines = []
    for field, info in type(found).model_fields.items():
        sure: Sure | None = getattr(found, field)
        if sure is not None:
            lines.append((title_in(info, field), *_sure_cells(sure, about(type(found), field).quantity.unit)))
    if lines:
        head = (
            tr("How sure"),
            tr("Best estimate ± expanded uncertainty"),
            tr("Limits"),
            tr("Likely in limits"),
            tr("What matters most"),
        )
        yield Table(head, tuple(lines), (1.8, 3.2, 2.0, 1.0, 2.0))


def _sure_cells(sure: Sure, unit: str) -> tuple[str, ...]:
    figures = (sure.value, sure.expanded_uncertainty, sure.low, sure.high)
    if unit == "mm":
        value, spread, *_ = (tr("{length:mm} = {length:in}", length=figure) for figure in figures)
        _, _, low, high = (format_length(figure, False) for figure in figures)
    else:
        value, spread, low, high = (value_words(figure, unit) for figure in figures)
    percent = percent_words(sure.coverage_probability)
    return (
        tr(
            "{value} ± {spread} (k = {k:.2f}, {percent})",
            value=value,
            spread=spread,
            k=sure.coverage_factor,
            percent=percent,
        ),
        tr("{low} to {high}", low=low, high=high),
        percent_words(sure.probability_in_limits),
        sure.matters_most,
    )


# ---------------------------------------------------------------------- history and end


def _drift(drift: Drift) -> Iterator[Block]:
    yield Heading(tr("Earlier sheets of this magneto"))
    head, lines = drift.table
    yield Table(head, lines, (1.4, *(1.0 for _ in head[1:])))
    drawn = drift.figures()
    if drawn:
        yield Pictures(tuple(Picture(BREAKER_MM, svg, caption=caption) for svg, caption in drawn))
    if drift.late_check:
        yield Paragraph(f"⚠ {drift.late_check}", "warning")
    for sentence in drift.sentences:
        yield Paragraph(sentence)


def signature_lines(signature: Signature | None) -> tuple[SignatureLines, SignatureLines]:
    """Lines for whoever did the work, and for another person who checked it, as far as they are filled in."""
    s = signature
    who, licence, day = ("", "", "") if s is None else (s.who, s.licence_no, s.day)
    second, second_licence = ("", "") if s is None else (s.checked_by, s.checked_licence_no)
    return (
        SignatureLines(
            ((tr("Work done by"), who), (tr("Licence no."), licence), (tr("Date"), day), (tr("Signature"), ""))
        ),
        SignatureLines(
            (
                (tr("Independent check by"), second),
                (tr("Licence no."), second_licence),
                (tr("Date"), ""),
                (tr("Signature"), ""),
            )
        ),
    )


def _end(job: Job) -> Iterator[Block]:
    yield Heading(tr("Signature"))
    yield from signature_lines(job.signature)
    yield Paragraph(tr("This sheet is a training and planning aid. It is no release to service."), "small")
    if job.signature is not None:
        words = tr("The signature covers the sheet with the digest {covers}.", covers=job.signature.covers)
        yield Paragraph(words, "small")
