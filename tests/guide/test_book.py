"""The guide as one HTML file, and formulas within it."""

from __future__ import annotations

import re

import pytest

from magview.guide.book import book
from magview.guide.page_blocks import formula, page_blocks
from magview.guide.pages import Page, pages
from magview.paper.html import blocks_html, document_html, words_html
from tests.paper.html_reader import HtmlReader


def formula_html(text: str) -> str:
    return words_html(formula(text))


def page_html(source: str) -> str:
    return blocks_html(page_blocks(Page("x", "X", source, ()), str, str))


@pytest.fixture(scope="module")
def html() -> str:
    return document_html(book())


def test_it_is_one_file_that_needs_nothing_else(html):
    read = HtmlReader(html)
    assert read.values("src") and all(s.startswith("data:image/png;base64,") for s in read.values("src"))
    assert all(link.startswith("#") for link in read.values("href"))
    assert not re.search(r"https?:|@import|<script|<link|url\(", html)


def test_every_link_in_it_leads_somewhere_in_it(html):
    read = HtmlReader(html)
    assert len(set(read.values("id"))) == len(read.values("id"))
    assert {link[1:] for link in read.values("href")} <= set(read.values("id"))
    assert set(pages()) <= set(read.values("id"))
    assert len(read.values("alt")) == len(read.values("src"))


@pytest.mark.parametrize(("paper", "size"), [("a4", "A4"), ("letter", "letter")])
def test_it_prints_on_the_paper_asked_for(paper, size):
    assert f"@page {{ size: {size};" in document_html(book(paper))


def test_formulas_are_words_with_raised_and_lowered_parts():
    assert formula_html("s_top = K·x^2") == "<i>s</i><sub>top</sub> = <i>K</i>·<i>x</i><sup>2</sup>"
    assert formula_html("i_{max, L} < √a") == "<i>i</i><sub>max, <i>L</i></sub> &lt; √<i>a</i>"
    assert formula_html("a   b") == "<i>a</i>\u2003<i>b</i>"
    assert formula_html("sin e") == "sin <i>e</i>"


def test_stress_and_formula_between_asterisks_are_told_apart():
    html = page_html("# X\n\nswitched *off*, where *c·e* and *N_m* and *d* *Is it?*")
    assert "<em>off</em>" in html and "<em>Is it?</em>" in html
    assert "<i>c</i>·<i>e</i>" in html and "<i>N</i><sub><i>m</i></sub>" in html and "<em><i>" not in html


def test_a_page_cannot_bring_html_of_its_own():
    assert "<script" not in page_html("# X\n\n<script>alert(1)</script>")
