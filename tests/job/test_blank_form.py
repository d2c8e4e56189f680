"""The blank form: every field of the sheet in the sheet's order, and one side of paper for each group."""

import re

import pytest

from magview.job.blank_form import GROUPS, asked, blank_form
from magview.job.entries import HEAD_PARTS, entries_in
from magview.job.sheet import STAGES, Job, title_of
from magview.paper.blocks import BOX, HATCHED, Heading, Paragraph, Table, letters
from magview.paper.html import document_html
from magview.paper.text import plain_text
from tests.paper.html_reader import HtmlReader
from tests.wording import says


def _labels(form):
    """Everything that is asked for, in order, without its unit."""
    for block in form.blocks:
        if isinstance(block, Heading) and block.level == 3:
            yield letters(block.text)
        elif isinstance(block, Table):
            for row in block.rows:
                step = 1 if block.head and len(row) == 3 else 2
                for cell in row[::step] if step == 2 else row[:1]:
                    if cell and cell != HATCHED and not cell.isdigit():
                        yield re.sub(r" \[[^\]]*\]$", "", letters(cell))


def test_parts_and_their_order_are_those_of_the_sheet():
    parts = [part for group in GROUPS for part in group]
    assert [p for p in parts if p in STAGES] == list(STAGES)
    assert parts[: 1 + len(HEAD_PARTS)] == ["", *HEAD_PARTS]


@pytest.mark.parametrize("part", ["", *HEAD_PARTS, *STAGES])
def test_every_field_of_the_window_is_asked_for_once_and_in_its_order(part):
    model = Job if not part else Job.model_fields[part].annotation
    window = [e.name for e in entries_in(part, model) if e.name not in ("invented", "uncertainty")]
    on_paper = [e.name for e in asked(part)]
    missing = [name for name in window if name not in on_paper]
    # The column says whose it is, and what one sheet says of the other magneto is the other column.
    assert all(name in ("position", "side") or name.startswith("other_") for name in missing)
    assert [name for name in window if name in on_paper] == on_paper


def test_labels_stand_on_paper_in_the_sheets_order():
    found, at = list(_labels(blank_form())), 0
    for part in (p for group in GROUPS for p in group):
        if part:
            at = found.index(title_of(part), at)
        for entry in asked(part):
            if entry.kind.name not in ("ROWS",) and entry.name not in ("note", "by", "text"):
                at = found.index(entry.label, at)


def test_what_names_a_side_is_hatched_on_the_other_and_a_jumper_is_looked_for_on_both():
    rows = {row[0]: row[1:] for b in blank_form().blocks if isinstance(b, Table) for row in b.rows if len(row) == 3}
    one_sided = {label.split(" fires")[0]: cells for label, cells in rows.items() if HATCHED in cells}
    assert one_sided == {"Left": ("", HATCHED), "Right": (HATCHED, "")}
    assert rows["No jumper left on: with one the magneto is dead"] == (BOX, BOX)


@pytest.mark.parametrize("size", ["a4", "letter"])
def test_each_group_has_one_side_of_paper(size, qapp):
    from magview.ui.paper.pdf import pdf_bytes

    _, pages = pdf_bytes(blank_form(size))
    assert pages == len(GROUPS)


def test_lengths_are_asked_for_in_the_unit_chosen():
    def units(form):
        return {u for b in form.blocks if isinstance(b, Table) for row in (b.head, *b.rows) for c in row
                for u in re.findall(r"\[(mm|in)\b", letters(c))}  # fmt: skip

    assert units(blank_form()) == {"mm"}
    assert units(blank_form(inches=True)) == {"in"}


def test_nothing_is_read_before_both_leads_are_proved_and_paper_says_so():
    texts = [(type(b), letters(b.text)) for b in blank_form().blocks if isinstance(b, Heading | Paragraph)]
    at = texts.index((Heading, title_of("dead_centre")))
    warning = says("WARNING: Do not go on until making safe is done and the leads of both magnetos are proved.")
    assert texts[at - 1] == (Paragraph, warning)
    assert texts.index((Heading, title_of("switch_lead"))) < at


def test_a_hand_reads_the_gap_before_the_scales_of_plate_and_screw():
    names = [entry.name for entry in asked("as_found")]
    assert names.index("gap_mm") < names.index("finger_at_no_1") < names.index("backplate_deg")


def test_a_browser_hatches_what_is_not_asked_and_a_reader_says_so():
    cells = [cell for b in blank_form().blocks if isinstance(b, Table) for row in b.rows for cell in row]
    page = HtmlReader(document_html(blank_form()))
    marked = [tag for tag, attributes in page.tags if dict(attributes).get("class") == "hatched"]
    assert len(marked) == cells.count(HATCHED) > 4 and HATCHED not in page.text
    assert HATCHED not in plain_text(blank_form()) and says("not asked") in plain_text(blank_form())
