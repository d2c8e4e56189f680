"""The guide's Markdown as blocks: nothing is lost on the way."""

from __future__ import annotations

import re

import pytest

from magview.guide.book import TITLE, book
from magview.guide.page_blocks import page_blocks
from magview.guide.pages import Page, pages
from magview.paper.blocks import Document, Heading, Items, NewPage, Paragraph, Picture, Pictures, Run, Table, letters
from tests.paper.words import texts_of


def blocks(source: str):
    return page_blocks(Page("x", "X", source, ()), lambda target: f"to {target}", lambda anchor: f"at {anchor}")


@pytest.mark.parametrize("name", list(pages()))
def test_every_word_of_a_page_is_in_its_blocks(name):
    page = pages()[name]
    found = texts_of(Document("", "", tuple(page_blocks(page, str, str))))
    words = re.findall(r"\w+", " ".join(found))
    # The search's own reading of the same page, which does not know blocks.
    told = " ".join(f"{s.title} {s.text}" for s in page.sections)
    expected = re.findall(r"\w+", told)
    assert not set(expected) - set(words) and len(words) >= len(expected)


def test_each_piece_of_markdown_is_its_block():
    found = blocks(
        "# A\n\nsee **bold** and [there](b.md#c), `code`\nnext\n\n## B `x`\n\n> **Take care.** Hot.\n\n"
        "- one\n- two\n\n1. first\n\n| k | v |\n|---|---|\n| a | *b* |\n\n```formula\nx_1 = 2\n```\n\n```\ncmd\n```\n"
    )
    assert found == [
        Heading((Run("A"),), 1, anchor="at "),
        Paragraph((
            Run("see "), Run("bold", ("strong",)), Run(" and "), Run("there", (), "to b.md#c"), Run(", "),
            Run("code", ("code",)), Run(" "), Run("next"),
        )),
        Heading((Run("B "), Run("x", ("code",))), 2, anchor="at b-x"),
        Paragraph((Run("Take care.", ("strong",)), Run(" Hot.")), "caution"),
        Items(((Run("one"),), (Run("two"),))),
        Items(((Run("first"),),), "number"),
        Table(((Run("k"),), (Run("v"),)), (((Run("a"),), (Run("b", ("i",)),)),)),
        Paragraph((Run("x", ("i",)), Run("1", ("sub",)), Run(" = 2")), "formula"),
        Paragraph("cmd", "code"),
    ]  # fmt: skip


def test_pictures_are_no_larger_than_a_page_has_room_for():
    pictures = [p for b in book().blocks if isinstance(b, Pictures) for p in b.pictures]
    assert len(pictures) > 20 and all(isinstance(p, Picture) and p.png and p.png.is_file() for p in pictures)
    assert all(20.0 < p.width_mm < 160.0 and len(p.told) > 8 for p in pictures)


def test_the_book_has_every_page_on_a_new_one_in_the_order_of_its_contents():
    found = book("letter")
    titles = [letters(b.text) for b in found.blocks if isinstance(b, Heading) and b.level == 1]
    assert titles == [TITLE, *(p.title for p in pages().values())] and found.size == "letter"
    assert sum(isinstance(b, NewPage) for b in found.blocks) == len(pages())
