"""The guide's pages: Markdown files in the order of a small index, cut into sections at their headings."""

from __future__ import annotations

import re
import unicodedata
from dataclasses import dataclass
from functools import cache
from itertools import pairwise
from pathlib import Path

from markdown_it import MarkdownIt
from markdown_it.token import Token

from magview.spec.library import resources

_LOWERED = re.compile(r"(?<=[^\W_])[_^]\{?(\w+)\}?")
"""A formula's raised or lowered part, within a line."""


@dataclass(frozen=True)
class Section:
    """The text under one heading, up to the next."""

    page: str
    """Name of the page: its file without the ending."""
    page_title: str
    anchor: str
    """Of the heading; empty for the page's own."""
    title: str
    text: str
    """Plain words, for searching."""

    @property
    def address(self) -> str:
        """Address: ``page`` or ``page#anchor``."""
        return f"{self.page}#{self.anchor}" if self.anchor else self.page


@dataclass(frozen=True)
class Page:
    """One page as written."""

    name: str
    title: str
    source: str
    sections: tuple[Section, ...]


@dataclass(frozen=True)
class Chapter:
    """Pages that belong together."""

    title: str
    pages: tuple[Page, ...]


@cache
def parser() -> MarkdownIt:
    """CommonMark and tables; no raw HTML, so that a page can hold nothing but what is shown."""
    return MarkdownIt("commonmark", {"html": False}).enable("table")


def guide_folder() -> Path:
    """The folder of pages; pictures lie in it, too."""
    return resources() / "guide"


def anchor_of(heading: str) -> str:
    """The anchor of a heading: its words in small letters, accents folded, joined by hyphens.

    Examples
    --------
    >>> anchor_of("Gap, opening & dwell")
    'gap-opening-dwell'
    """
    return "-".join(re.findall(r"[a-z0-9]+", folded(heading)))


def folded(text: str) -> str:
    """Small letters without accents, as words are compared."""
    apart = unicodedata.normalize("NFKD", text.casefold())
    return "".join(c for c in apart if not unicodedata.combining(c))


@cache
def chapters() -> tuple[Chapter, ...]:
    """The whole guide, in the order of ``index.md``: a heading a chapter, a link a page."""
    found: list[Chapter] = []
    title, pages = "", list[Page]()
    tokens = parser().parse((guide_folder() / "index.md").read_text(encoding="utf-8"))
    for before, token in pairwise(tokens):
        if before.type == "heading_open" and before.tag == "h2":
            if pages:
                found.append(Chapter(title, tuple(pages)))
            title, pages = plain(token), []
        for child in token.children or ():
            if child.type == "link_open":
                pages.append(_read(str(child.attrs["href"]).removesuffix(".md")))
    return (*found, Chapter(title, tuple(pages)))


@cache
def pages() -> dict[str, Page]:
    """Every page by its name, in reading order."""
    return {page.name: page for chapter in chapters() for page in chapter.pages}


def plain(token: Token) -> str:
    """The words of an inline token, without their marks."""
    words = []
    for child in token.children or ():
        if child.type == "text":
            words.append(_LOWERED.sub(r"\1", child.content))
        elif child.type in ("code_inline", "image"):
            words.append(child.content)
        elif child.type in ("softbreak", "hardbreak"):
            words.append(" ")
    return "".join(words)


def _read(name: str) -> Page:
    source = (guide_folder() / f"{name}.md").read_text(encoding="utf-8")
    tokens = parser().parse(source)
    title = next(plain(after) for token, after in pairwise(tokens) if token.tag == "h1")
    sections: list[Section] = []
    heading, anchor, words = title, "", list[str]()
    for i, token in enumerate(tokens):
        if token.type == "inline" and tokens[i - 1].type == "heading_open":
            if tokens[i - 1].tag != "h1":
                sections.append(Section(name, title, anchor, heading, " ".join(words)))
                heading, words = plain(token), []
                anchor = anchor_of(heading)
        elif token.type == "inline":
            words.append(plain(token))
        elif token.type in ("fence", "code_block"):
            words.append(re.sub(r"[_{}^]", "", token.content) if token.info == "formula" else token.content)
    sections.append(Section(name, title, anchor, heading, " ".join(words)))
    return Page(name, title, source, tuple(sections))
