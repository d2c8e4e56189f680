"""A debrief as a document, as text to keep, and as a table."""

from __future__ import annotations

from collections.abc import Callable

from magview.paper.blocks import Block, Document, Heading, Paragraph, Table, working_foot
from magview.paper.text import plain_text
from magview.practice.attempt import Attempt
from magview.practice.debrief import Debrief
from magview.practice.readings import UNITS, OwnReading
from magview.practice.words import note_words
from magview.spec.language import number, tr
from magview.spec.tables import csv_text


def clock_words(seconds: float) -> str:
    """A time since the beginning as minutes and seconds."""
    whole = round(seconds)
    return f"{whole // 60}:{whole % 60:02d}"


def error_words(reading: OwnReading, write: Callable[[float, int | str], str] = number) -> str:
    """Written less true, with its unit; "" for a finding in words."""
    if reading.error is None:
        return ""
    unit = UNITS[reading.note.kind]
    return f"{write(reading.error, '+.3f')}{'' if unit == '°' else ' '}{unit}"


def sections(
    attempt: Attempt, told: Debrief, write: Callable[[float, int | str], str] = number
) -> list[tuple[str, list[str], list[list[str]]]]:
    """The debrief as tables: title, heads, rows; `write` writes the numbers that stand in cells of their own."""
    marking = told.marking
    return [
        (tr("Dangerous acts"), [tr("When"), tr("What"), tr("Times")], [
            [clock_words(d.at_s), d.text, str(d.times)] for d in marking.dangers
        ]),
        (tr("Marks"), [tr("What"), tr("Weight"), tr("Got"), tr("Why")], [
            [r.what, write(r.weight, "g"), write(round(r.got, 2), "g"), r.evidence] for r in marking.rows
        ]),
        (tr("True values"), [tr("What"), tr("As found"), tr("As left"), tr("Wanted")], [
            [t.what, t.as_found, t.as_left, t.wanted] for t in told.truths
        ]),
        (tr("Own readings"), [tr("When"), tr("Written"), tr("True then"), tr("Off by")], [
            [clock_words(r.at_s), note_words(r.note), r.true_text, error_words(r, write)] for r in told.readings
        ]),
        (tr("Time line"), [tr("When"), tr("What"), tr("Danger")], [
            [clock_words(line.at_s), line.words, line.danger] for line in told.timeline
        ]),
        (tr("An efficient path"), ["", tr("What")], [[str(i), words] for i, words in enumerate(told.path, start=1)]),
    ]  # fmt: skip


def debrief_document(attempt: Attempt, told: Debrief) -> Document:
    """The whole debrief."""
    title, code = tr(attempt.exercise.name), tr("Code {seed}, {time} minutes.", seed=attempt.seed,
                                                time=clock_words(told.seconds))  # fmt: skip
    first = (attempt.trainee, told.marking.verdict, code, told.other_version)
    blocks: list[Block] = [Heading(title, 1), *(Paragraph(words) for words in first if words)]
    for name, heads, rows in sections(attempt, told):
        blocks += [Heading(name), Table(tuple(heads), tuple(map(tuple, rows)))]
    return Document(title, working_foot(title), tuple(blocks))


def debrief_text(attempt: Attempt, told: Debrief) -> str:
    """The whole debrief, plain."""
    return plain_text(debrief_document(attempt, told), underline="=")


def debrief_csv(attempt: Attempt, told: Debrief) -> str:
    """The same as comma-separated values, one section after the other, the section's title first in each row."""
    percent = told.marking.percent if told.marking.marked else ""
    lines: list[list[object]] = [["exercise", attempt.exercise.name, "trainee", attempt.trainee, "percent", percent]]
    for title, heads, rows in sections(attempt, told, lambda value, form: format(value, str(form))):
        lines.append(["", *heads])
        lines += ([title, *row] for row in rows)
    return csv_text(lines)
