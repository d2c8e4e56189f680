"""A document as HTML: balanced, self-contained, every word in it, and none of it markup."""

from __future__ import annotations

import re

import pytest

from magview.guide.pages import guide_folder
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
from magview.paper.html import blocks_html, document_html, words_html
from tests.paper.html_reader import HtmlReader
from tests.paper.words import texts_of

SVG = '<svg xmlns="http://www.w3.org/2000/svg" width="10" height="10"><path d="M0 0L9 9"/></svg>'
PNG = next((guide_folder() / "pictures").glob("*.png"))
NASTY = "</p><script>alert('x')</script> & \"quoted\" \x00\x1b"
EVERY = (
    Heading("Title", 1, anchor="top"), Heading((Run("Stage "), Run("one", ("em",))), 2, "done", "one"),
    Contents((("Stage one", "one"),)), Paragraph((Run("see "), Run("above", ("strong",), "#top"))),
    Paragraph("a note", "note"), Paragraph("take care", "caution"), Paragraph("danger", "warning"),
    Paragraph("small print", "small"), Paragraph("f = x\ng = y", "formula"),
    Paragraph("magview --help\n  more", "code"), Items(("dot",)), Items(("first",), "number"),
    Items(("tick",), "tick"),
    Table(("What", "How much"), (("gap", "0.3"), ("bad gap", "0.9")), (1.0, 2.0), frozenset((1,)), "lr"),
    Table((), (("no", "head"),)), Table(("Fill",), (("",),), to_fill=True),
    Pictures((Picture(50.0, SVG, caption="drawn"), Picture(60.0, png=PNG, told="photographed"))),
    SignatureLines((("Name", "A. Person"),)), WriteLines(3), NewPage(),
)  # fmt: skip


@pytest.mark.parametrize("setting", ["form", "book"])
def test_every_block_is_in_one_file_that_fetches_nothing(setting):
    document = Document("Title", "the foot", EVERY, "letter", setting)
    text = document_html(document)
    read = HtmlReader(text)
    whole = "".join(read.words)
    assert all(words in whole or words in read.values("alt") for words in texts_of(document))
    assert all(source.startswith("data:image/png;base64,") for source in read.values("src"))
    assert {link[1:] for link in read.values("href")} == {"top", "one"} <= set(read.values("id"))
    assert "@page { size: letter;" in text and not re.search(r"<script|<link|@import|url\(", text)
    assert set(re.findall(r"https?://[^\"' <]+", text)) == {"http://www.w3.org/2000/svg"}
    assert read.names.count("svg") == 1 and read.values("alt") == ["photographed"]


def test_rows_that_must_catch_the_eye_numbers_and_blanks_are_marked():
    read = HtmlReader(blocks_html(EVERY))
    assert [tag for tag, given in read.tags if given.get("class") == "bad"] == ["tr"]
    assert [tag for tag, given in read.tags if given.get("class") == "r"] == ["th", "td", "td"]
    assert [tag for tag, given in read.tags if given.get("class") == "to-fill"] == ["table"]
    assert sum(given.get("class") == "line" for _, given in read.tags) == 3
    roles = [given.get("class") for _, given in read.tags if given.get("role") == "note"]
    assert roles == ["note", "caution", "warning"]


@pytest.mark.parametrize("qt", [False, True])
def test_words_are_never_markup(qt):
    blocks = (
        Heading(NASTY, 2, NASTY), Paragraph(NASTY), Paragraph(NASTY, "warning"), Items((NASTY,)),
        Table((NASTY,), ((NASTY,),)), SignatureLines(((NASTY, NASTY),)), Contents(((NASTY, "x"),)),
        Pictures((Picture(10.0, SVG, caption=NASTY), Picture(10.0, png=PNG, told=NASTY))),
    )  # fmt: skip
    text = blocks_html(blocks, qt=qt)
    assert "script" not in HtmlReader(text).names
    assert "\x00" not in text and "\x1b" not in text


def test_qts_text_gets_names_frames_as_tables_and_pictures_by_name():
    read = HtmlReader(blocks_html(EVERY, qt=True))
    assert read.values("src") == [f"pictures/{PNG.name}"] and "one" in read.values("name")
    framed = [given["class"] for tag, given in read.tags if tag == "table" and "cellpadding" in given]
    assert framed == ["note", "caution", "warning", "formula"]
    assert ("br", {}) in read.tags, "lines of a formula stay lines"


def test_looks_that_runs_share_are_opened_once():
    words = (Run("a", ("strong",)), Run("b", ("strong", "code")), Run("c", ("code",), "#x"), Run("d"))
    assert words_html(words) == '<strong>a<code>b</code></strong><a href="#x"><code>c</code></a>d'
