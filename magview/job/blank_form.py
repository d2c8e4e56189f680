"""The job sheet as a blank form for the pencil: both magnetos of an engine, from the sheet's own stages and fields.

Nothing is laid out twice: stages come from `sheet.STAGES`, fields from `entries.entries_in`, as in the window.
So what was written on paper is entered in the same order.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import chain

from magview.forms.entry import Entry, Kind, entry_of
from magview.forms.typed import unit_words
from magview.job.document import signature_lines
from magview.job.entries import HEAD_PARTS, OF_A_STAGE, entries_in
from magview.job.sheet import CAUTIONS, Job, title_of
from magview.paper.blocks import (
    BOX,
    HATCHED,
    Block,
    Document,
    Heading,
    NewPage,
    Paragraph,
    Table,
    WriteLines,
    working_foot,
)
from magview.paper.sizes import PaperSize
from magview.spec.base import Model
from magview.spec.language import tr

GROUPS: tuple[tuple[str, ...], ...] = (
    ("", *HEAD_PARTS, "cautions"),
    ("switch_lead", "dead_centre", "marks"),
    ("as_found", "contacts"),
    ("internal_timing",),
    ("lobes", "tooth_shift", "synchronising"),
    ("closing", "ground_run", "next_check", "remarks"),
)
"""Parts of the sheet on one side of paper each; "" is the sheet itself."""

_OF_EACH = (
    "magneto", "switch_lead", "marks", "as_found", "contacts", "internal_timing", "lobes", "tooth_shift", "closing",
)  # fmt: skip
"""Parts that each magneto has of its own; all others are of the engine."""

_TOLD_BY_THE_COLUMN = {"magneto": ("position",), "tooth_shift": ("side",)}
_ASKED_OF_BOTH = ("finger_at_no_1",)
"""Of each magneto, within what is of the engine."""

_OF_THE_DEMONSTRATION = ("invented",)
_ROW_MM = 7.2
"""For a pencil; a side takes its group on Letter, too."""
_ON_ONE_ROW = 3
_LINES = {"trials": 4, "lobes": 9}
"""Empty rows of a table within a stage."""


def blank_form(size: PaperSize = "a4", *, inches: bool = False) -> Document:
    """The form, one side of paper for each group of stages; lengths are asked for in inches or millimetres."""
    title = tr("Magneto job sheet, both magnetos")
    return Document(title, working_foot(title), tuple(_blocks(title, inches)), size, grey=True)


def asked(part: str) -> tuple[Entry, ...]:
    """The fields of a part that stand on the form, in the sheet's order.

    Not there is what the column says by itself, what follows from readings, and what a sheet of one magneto says of
    the other.
    """
    model = Job if not part else Job.model_fields[part].annotation
    assert isinstance(model, type) and issubclass(model, Model)
    left_out = (*_OF_THE_DEMONSTRATION, *_TOLD_BY_THE_COLUMN.get(part, ()))
    return tuple(
        entry
        for entry in entries_in(part, model)
        if entry.kind is not Kind.TOLD and entry.name not in left_out and not entry.name.startswith("other_")
    )


def _blocks(title: str, inches: bool) -> Iterator[Block]:
    yield Heading(title, 1)
    yield Paragraph(
        tr("Blank form for the pencil: a training and planning aid, no release to service. The manual governs."),
        "small",
    )
    yield Paragraph(tr("WARNING: {caution}", caution=tr(CAUTIONS[0])), "warning")
    for number, group in enumerate(GROUPS):
        if number:
            yield NewPage()
        for part in group:
            if part == "dead_centre":
                yield Paragraph(
                    tr("WARNING: Do not go on until making safe is done and the leads of both magnetos are proved."),
                    "warning",
                )
            if part:
                yield Heading(title_of(part), 3)
            yield from (_of_each if part in _OF_EACH else _of_the_engine)(part, inches)
    yield from signature_lines(None)


def _of_the_engine(part: str, inches: bool) -> Iterator[Block]:
    """Fields beside one another, read across; a line for what is long."""
    fields = asked(part)
    if part == "remarks":
        yield WriteLines(1)
        fields = fields[1:]
    yield _across(fields, inches, 2 if len(fields) > _ON_ONE_ROW else len(fields))


def _across(fields: Sequence[Entry], inches: bool, count: int) -> Table:
    """So many fields in a row."""
    cells = [
        (
            _label(entry, inches),
            tr("L  {place}\nR  {place}", place=_place(entry)) if entry.name in _ASKED_OF_BOTH else _place(entry),
        )
        for entry in fields
    ]
    cells += [(HATCHED, HATCHED)] * (-len(cells) % count)
    rows = tuple(tuple(chain(*cells[at : at + count])) for at in range(0, len(cells), count))
    return Table((), rows, (2.6, 2.0) * count, to_fill=True, row_mm=_ROW_MM)


def _of_each(part: str, inches: bool) -> Iterator[Block]:
    """A column for each magneto; what was noted, and by whom, once."""
    head = ("", tr("LEFT"), tr("RIGHT"))
    rows: list[tuple[str, str, str]] = []
    fields = asked(part)
    for entry in fields:
        if entry.name in OF_A_STAGE:
            continue
        if entry.kind is Kind.ROWS:
            if rows:
                yield _columns(head, rows)
                rows = []
            yield _rows_of(entry, inches)
            continue
        place, side = _place(entry), _side_named(entry.name)
        left, right = (place if side in ("", of) else HATCHED for of in ("left", "right"))
        rows.append((_label(entry, inches), left, right))
    yield _columns(head, rows)
    once = [entry for entry in fields if entry.name in OF_A_STAGE]
    if once:
        yield _across(once, inches, len(once))


def _columns(head: tuple[str, str, str], rows: list[tuple[str, str, str]]) -> Table:
    return Table(head, tuple(rows), (4.0, 2.6, 2.6), to_fill=True, row_mm=_ROW_MM)


def _rows_of(entry: Entry, inches: bool) -> Table:
    """Rows within a stage: trials, or lobes, of both magnetos side by side."""
    assert entry.row is not None
    fields = [_label(entry_of(entry.row, name), inches) for name in entry.row.model_fields]
    head = (
        entry.label,
        *(tr("LEFT: {field}", field=f) for f in fields),
        *(tr("RIGHT: {field}", field=f) for f in fields),
    )
    rows = tuple((str(n), *[""] * (2 * len(fields))) for n in range(1, _LINES[entry.name] + 1))
    return Table(head, rows, (0.9, *[1.0] * (2 * len(fields))), to_fill=True, row_mm=_ROW_MM)


def _label(entry: Entry, inches: bool) -> str:
    unit = unit_words(entry, inches) if entry.kind in (Kind.NUMBER, Kind.WHOLE) else ""
    return tr("{field} [{unit}]", field=entry.label, unit=unit) if unit else entry.label


def _place(entry: Entry) -> str:
    """Boxes to tick where there is a choice, else room to write."""
    if entry.kind is Kind.TICK:
        return BOX
    return "  ".join(f"{BOX}\N{NO-BREAK SPACE}{tr(words)}" for value, words in entry.choices if value is not None)


def _side_named(field: str) -> str:
    """The magneto that a field is of, by its name; "" for either."""
    return next((side for side in ("left", "right") if field.startswith(f"{side}_")), "")
