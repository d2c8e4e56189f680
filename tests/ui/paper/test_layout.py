"""Blocks on pages: what stays together, how wide columns are, and where headings stand."""

from __future__ import annotations

import pytest
from PySide6.QtGui import QPageSize

from magview.paper.blocks import (
    Contents,
    Document,
    Heading,
    Items,
    NewPage,
    Paragraph,
    Picture,
    Pictures,
    Run,
    SignatureLines,
    Table,
    WriteLines,
)
from magview.ui.paper.pdf import PrintedPages, pdf_bytes
from tests.ui.paper.pdf_reader import Pdf, bare

SQUARE = '<svg xmlns="http://www.w3.org/2000/svg" width="100" height="100"><rect width="90" height="90"/></svg>'


def pages_of(*blocks, **kwargs) -> list[str]:
    """The words of each page, the foot left out."""
    pdf = Pdf(pdf_bytes(Document("title", "FOOT", blocks, **kwargs))[0])
    return [pdf.text(n).split("FOOT")[0] for n in range(len(pdf.pages))]


def above(lines: int) -> Table:
    return Table((), tuple((f"above {i}",) for i in range(lines)), (1.0,))


def rows(count: int) -> Table:
    return Table(("Reading", "Value"), tuple((f"row {i};", "x") for i in range(count)), (1.0, 1.0))


@pytest.mark.parametrize("lines", [0, 20, 40, 45, 48, 50])
def test_a_table_that_a_page_holds_is_not_split_from_its_heading(qapp, lines):
    pages = pages_of(above(lines), Heading("1. Stage"), rows(8))
    (page,) = [text for text in pages if "1.Stage" in text]
    assert all(f"row{i};" in page for i in range(8))


def test_a_longer_table_begins_where_there_is_room_and_repeats_its_head(qapp):
    pages = pages_of(above(10), rows(120))
    assert "row0;" in pages[0] and len(pages) > 2
    assert [text.count("ReadingValue") for text in pages] == [1] * len(pages)
    whole = "".join(pages)
    assert all(whole.count(f"row{i};") == 1 for i in range(120))


def test_a_row_longer_than_a_page_loses_nothing(qapp):
    table = Table(("What", "Why"), (("before", "x"), ("long", "line\n" * 200), ("after", "y")), (1.0, 3.0))
    pages = pages_of(above(30), table)
    whole = "".join(pages)
    assert whole.count("line") == 200 and len(pages) == 4
    assert whole.index("beforex") < whole.index("long") < whole.index("aftery")


@pytest.mark.parametrize("lines", range(50, 62))
@pytest.mark.parametrize(
    "following",
    [
        (Paragraph("word " * 60),),
        (Pictures((Picture(80.0, SQUARE, caption="below it"),)),),
        (Paragraph("how it is read", "small"), Table(("A",), (("",),), (1.0,), to_fill=True)),
        (Heading("Another", 3), Paragraph("word")),
    ],
)
def test_no_heading_is_the_last_thing_on_a_page(qapp, lines, following):
    for text in pages_of(above(lines), Heading("Strand"), *following):
        assert not text.endswith(("Strand", "Another"))


def test_columns_without_weights_are_as_wide_as_their_words(qapp):
    long = "many words in a row that go over more than one line of the page, " * 4
    table = Table(("Field", "What it is"), (("a_name_of_one_piece", long), ("b", "short")))
    (text,) = pages_of(table)
    assert "a_name_of_one_piece" in text and bare(long) in text
    # A narrow table takes no more of the page than it needs, so that its columns can be read together.
    layout = PrintedPages(Document("t", "", (table,)))._layout  # noqa: SLF001
    narrow = layout._widths(Table(("Key", "Act"), (("A", "on"), ("B", "off"))))  # noqa: SLF001
    assert sum(narrow) < 0.3 * layout._width  # noqa: SLF001
    crowded = layout._widths(Table(("w" * 90, "v" * 90), ()))  # noqa: SLF001
    assert sum(crowded) == pytest.approx(layout._width)  # noqa: SLF001


def test_contents_tell_the_page_of_each_heading(qapp):
    pages = pages_of(
        Contents((("One", "one"), ("Two", "two"))),
        NewPage(), Heading("One", 1, anchor="one"), Paragraph("text"),
        NewPage(), NewPage(), Heading("Two", 1, anchor="two"),
    )  # fmt: skip
    assert pages == ["One2Two3", "Onetext", "Two"], "no page is left empty"


def test_every_kind_of_block_is_printed_on_both_papers(qapp):
    words = (Run("plain "), Run("bold", ("strong",)), Run(" 😀 x", ("i",)), Run("max", ("sub",)), Run("2", ("sup",)))
    blocks = (
        Heading("Heading", mark="state"), Paragraph(words), Paragraph("note text", "note"),
        Paragraph("take care", "caution"), Paragraph("danger", "warning"), Paragraph("f = x", "formula"),
        Paragraph("magview --help", "code"), Items(("first", "second"), "number"), Items(("dot",)),
        Items(("tick me",), "tick"), Table(("L", "R"), (("a", "1.5"),), align="lr"),
        Table(("Fill",), (("",), ("filled",)), (1.0,), to_fill=True),
        Pictures((Picture(40.0, SQUARE, caption="seen"),)),
        SignatureLines((("Name", "A. Person"), ("Date", ""))), WriteLines(2),
    )  # fmt: skip
    for size, kind in (("a4", QPageSize.PageSizeId.A4), ("letter", QPageSize.PageSizeId.Letter)):
        document = Document("title", "FOOT", blocks, size)
        (text,) = pages_of(*blocks, size=size)
        for told in (
            "Headingstate", "plainbold", "xmax2", "notetext", "takecare", "danger", "f=x", "magview--help", "1.first",
            "2.second", "•dot", "1.tickme", "LRa1.5", "Fillfilled", "seen", "A.PersonName",
        ):  # fmt: skip
            assert told in text, told
        points = QPageSize(kind).sizePoints()
        printed = PrintedPages(document).size
        assert printed.height() / printed.width() == pytest.approx(points.height() / points.width(), rel=0.002)


def test_pictures_that_do_not_fit_beside_one_another_stand_below(qapp):
    layout = PrintedPages(Document("t", "", ()))._layout  # noqa: SLF001
    three = Pictures(tuple(Picture(86.0, SQUARE) for _ in range(3)))
    assert [len(row) for row in layout._rows_of(three)] == [2, 1]  # noqa: SLF001
    for row in layout._rows_of(three):  # noqa: SLF001
        assert sum(p.width for p in row) <= layout._width  # noqa: SLF001


def test_of_several_documents_the_first_that_takes_one_page_is_written(qapp):
    made = [Document(f"t{n}", "FOOT", (above(n),)) for n in (130, 90, 20, 5)]
    data, pages = pdf_bytes(*made)
    assert pages == 1 and "above19" in Pdf(data).whole
    assert pdf_bytes(*made[:2])[1] == 2, "else the last"


def test_lines_to_sign_on_stay_together_with_their_heading(qapp):
    work, check = SignatureLines((("Work", ""), ("Date", ""))), SignatureLines((("Check", ""), ("Day", "")))
    firsts = set()
    for count in range(22, 29):  # from room for both on the first page to none
        pages = pages_of(WriteLines(count), Heading("Signed"), work, check)
        (signed,) = [text for text in pages if "Signed" in text]
        assert "Work" in signed and "Check" in signed, count
        firsts.add(signed is pages[0])
    assert firsts == {True, False}
