"""Worksheets and answer key of a whole set: one copy where all have the same, one for each pupil where not."""

from __future__ import annotations

from collections.abc import Iterable

from magview.classroom.key import answer_key as key_entries
from magview.classroom.key import key_rows
from magview.classroom.sets import ClassSet
from magview.classroom.worksheet import (
    ClassPaper,
    PaperBlock,
    Whose,
    answer_key,
    footing,
    parts_sheet,
    shown,
    together,
)
from magview.classroom.worksheet import worksheet as one_worksheet
from magview.job.document import Heading, Paragraph, Table
from magview.spec.base import SpecError
from magview.spec.language import tr


def set_worksheets(of: ClassSet, code: str = "", pupils: Iterable[str] = (), *, hints: bool = False) -> ClassPaper:
    """The worksheets of a set, pupil by pupil; of one where all have the same, `pupils` puts their names on copies.

    Raises SpecError where each has their own fault and nobody is named.
    """
    names = _names(of, pupils)
    papers = [
        one_worksheet(
            of.exercise(number), of.seed_of(number, name), Whose(name, code, number), hints=hints and of.hints
        )
        for name in names
        for number in range(1, len(of.exercises) + 1)
    ]
    return together(of.title or tr("Worksheets"), papers)


def set_key(of: ClassSet, code: str = "", pupils: Iterable[str] = ()) -> ClassPaper:
    """The answer key of a set: every sheet filled in, or, where each has their own fault, what each has, in tables.

    Raises SpecError where each has their own fault and nobody is named.
    """
    title = tr("Answer key: {title}", title=of.title) if of.title else tr("Answer key")
    numbers = range(1, len(of.exercises) + 1)
    if not of.each_their_own:
        whose = [Whose(class_code=code, number=number) for number in numbers]
        return together(title, [answer_key(of.exercise(w.number or 1), of.seed_of(w.number or 1), w) for w in whose])
    blocks: list[PaperBlock] = [Heading(title, 1)]
    if code:
        blocks.append(Paragraph(tr("Class code {code}.", code=code)))
    entries = key_entries(of, _names(of, pupils))
    for number in numbers:
        blocks.append(Heading(tr("{number}. {exercise}", number=number, exercise=of.exercise(number).name)))
        rows = [row[1:] for entry in entries if entry.number == number for row in key_rows([entry])]
        head = (tr("Pupil"), tr("Magneto"), tr("What"), tr("Answer"))
        blocks.append(Table(head, tuple(_once(rows)), (1.3, 0.8, 2.4, 3.0)))
    # The parts are alike for all: once for each magneto.
    benches = {shown(exercise).magneto.name: shown(exercise) for exercise in of.exercises}
    keys = [parts_sheet(bench, key=True) for bench in benches.values()]
    return together(title, [ClassPaper(title, footing(title), tuple(blocks)), *keys])


def _names(of: ClassSet, pupils: Iterable[str]) -> list[str]:
    names = list(pupils)
    if not of.each_their_own:
        return names or [""]
    names = names or list(of.pupils)
    if not names:
        raise SpecError(tr("Each pupil of this set has a fault of their own: name the pupils the sheets are for"))
    return names


def _once(rows: Iterable[tuple[str, ...]]) -> Iterable[tuple[str, ...]]:
    """Rows with a name only where it is another than above."""
    last = ""
    for name, *rest in rows:
        yield ("" if name == last else name, *rest)
        last = name
