"""Worksheets and answer key of a whole set: one copy where all have the same, one for each pupil where not."""

from __future__ import annotations

from collections.abc import Iterable

from magview.classroom.key import answer_key as key_entries
from magview.classroom.key import key_heads, key_rows
from magview.classroom.sets import ClassSet
from magview.classroom.worksheet import (
    Whose,
    answer_key,
    class_paper,
    parts_sheet,
    shown,
    together,
)
from magview.classroom.worksheet import worksheet as one_worksheet
from magview.paper.blocks import Block, Document, Heading, Paragraph, Table
from magview.spec.base import SpecError
from magview.spec.language import tr


def set_worksheets(of: ClassSet, code: str = "", pupils: Iterable[str] = (), *, hints: bool = False) -> Document:
    """The worksheets of a set, pupil by pupil; of one where all have the same, `pupils` puts their names on copies.

    Raises SpecError where each has their own fault and nobody is named.
    """
    papers = []
    for name in _names(of, pupils):
        for number, first in _numbered(of):
            whose = Whose(name, code, number)
            exercise, seed = of.exercise(number), of.seed_of(number, name)
            papers.append(one_worksheet(exercise, seed, whose, hints=hints and of.hints, parts=first))
    return together(of.title or tr("Worksheets"), papers)


def _numbered(of: ClassSet) -> Iterable[tuple[int, bool]]:
    """The exercises' numbers, and whether each is the first of its magneto: its parts are named once."""
    seen: set[str] = set()
    for number, exercise in enumerate(of.exercises, 1):
        name = f"{exercise.unit.name}/{exercise.installation is not None}"
        yield number, name not in seen
        seen.add(name)


def set_key(of: ClassSet, code: str = "", pupils: Iterable[str] = ()) -> Document:
    """The answer key of a set: every sheet filled in, or, where each has their own fault, what each has, in tables.

    Raises SpecError where each has their own fault and nobody is named.
    """
    title = tr("Answer key: {title}", title=of.title) if of.title else tr("Answer key")
    if not of.each_their_own:
        keys = [
            answer_key(of.exercise(n), of.seed_of(n), Whose(class_code=code, number=n), parts=first)
            for n, first in _numbered(of)
        ]
        return together(title, keys)
    blocks: list[Block] = [Heading(title, 1)]
    if code:
        blocks.append(Paragraph(tr("Class code {code}.", code=code)))
    entries = key_entries(of, _names(of, pupils))
    for number, _ in _numbered(of):
        blocks.append(Heading(tr("{number}. {exercise}", number=number, exercise=of.exercise(number).name)))
        # Which of two magnetos it is, only where there are two.
        columns = (1, 2, 3, 4) if of.exercise(number).both_sides else (1, 3, 4)
        heads, shares = key_heads(), (0.0, 1.3, 0.8, 2.6, 3.2)
        rows = [[row[c] for c in columns] for entry in entries if entry.number == number for row in key_rows([entry])]
        head, weights = tuple(heads[c] for c in columns), tuple(shares[c] for c in columns)
        blocks.append(Table(head, tuple(_once(rows)), weights))
    keys = [parts_sheet(shown(of.exercise(number)), key=True) for number, first in _numbered(of) if first]
    return together(title, [class_paper(title, blocks), *keys])


def _names(of: ClassSet, pupils: Iterable[str]) -> list[str]:
    names = list(pupils)
    if not of.each_their_own:
        return names or [""]
    names = names or list(of.pupils)
    if not names:
        raise SpecError(tr("Each pupil of this set has a fault of their own: name the pupils the sheets are for"))
    return names


def _once(rows: Iterable[list[str]]) -> Iterable[tuple[str, ...]]:
    """Rows with a name only where it is another than above."""
    last = ""
    for name, *rest in rows:
        yield ("" if name == last else name, *rest)
        last = name
