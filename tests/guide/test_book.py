"""The guide as one HTML file, and formulas within it."""

from __future__ import annotations

import re
from html.parser import HTMLParser

import pytest

from magview.guide.book import book
from magview.guide.page_blocks import formula, page_blocks
from magview.guide.pages import Page, pages
from magview.paper.html import blocks_html, document_html, words_html


def formula_html(text: str) -> str:
    return words_html(formula(text))


def page_html(source: str) -> str:
    return blocks_html(page_blocks(Page("x", "X", source, ()), str, str))


class Reader(HTMLParser):
    VOID = ("meta", "img", "br", "col")

    def __init__(self, text: str) -> None:
        super().__init__()
        self.ids: list[str] = []
        self.links: list[str] = []
        self.sources: list[str] = []
        self.open: list[str] = []
        self.alts = 0
        self.feed(text)

    def handle_starttag(self, tag, attrs):
        given = dict(attrs)
        self.ids += [given["id"]] if "id" in given else []
        self.links += [given["href"]] if "href" in given else []
        self.sources += [given["src"]] if "src" in given else []
        self.alts += bool(given.get("alt"))
        if tag not in self.VOID:
            self.open.append(tag)

    def handle_startendtag(self, tag, attrs):
        self.handle_starttag(tag, attrs)

    def handle_endtag(self, tag):
        assert self.open and self.open.pop() == tag, f"</{tag}> closes nothing"


@pytest.fixture(scope="module")
def html() -> str:
    return document_html(book())


def test_it_is_one_file_that_needs_nothing_else(html):
    read = Reader(html)
    assert read.sources and all(s.startswith("data:image/png;base64,") for s in read.sources)
    assert all(link.startswith("#") for link in read.links)
    assert not re.search(r"https?:|@import|<script|<link|url\(", html)


def test_every_link_in_it_leads_somewhere_in_it(html):
    read = Reader(html)
    assert len(set(read.ids)) == len(read.ids)
    assert {link[1:] for link in read.links} <= set(read.ids)
    assert set(pages()) <= set(read.ids)
    assert read.open == [] and read.alts == len(read.sources)


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
