"""A document as plain text: every word, in order, one line a row."""

from __future__ import annotations

from magview.job.document import document
from magview.paper.blocks import BOX, Document, Heading, Items, Paragraph, Run, SignatureLines, Table, WriteLines
from magview.paper.text import plain_text
from tests.job.sheets import demo
from tests.paper.words import texts_of


def text_of(*blocks, **kwargs) -> list[str]:
    return plain_text(Document("t", "foot", blocks), **kwargs).splitlines()


def test_headings_stand_apart_and_can_be_underlined():
    blocks = Heading("Name", 1), Paragraph("words"), Heading((Run("Mar"), Run("ks")), mark="done")
    assert text_of(*blocks) == ["Name", "", "words", "", "Marks – done"]
    assert text_of(*blocks, underline="=")[-1] == "=" * len("Marks – done")


def test_rows_have_the_head_before_each_cell_or_stand_in_columns():
    assert text_of(Table(("", "What", "When"), (("1", "lamp", "0:30"),))) == ["1.; What: lamp; When: 0:30"]
    assert text_of(Table((), (("Engine", "x"), ("Magneto", "y")))) == ["Engine   x", "Magneto  y"]
    assert text_of(Table(("What",), ())) == ["none"]


def test_lists_and_lines_to_sign():
    assert text_of(Items(("a",)), Items(("b",), "number"), Items(("c",), "tick")) == ["• a", "1. b", f"{BOX} 1. c"]
    assert text_of(SignatureLines((("Name", "A. Person"),)), WriteLines(3)) == ["Name: A. Person"]


def test_every_word_of_a_sheet_is_told():
    told = document(demo())
    text = plain_text(told)
    assert all(words in text for words in texts_of(told) if words not in (told.foot, "Reading", "Value"))
    assert "Reading: " in text
