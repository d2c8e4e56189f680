"""Blocks of a document: headings, paragraphs, tables, pictures, lists and lines to write on."""

from __future__ import annotations

import re
from dataclasses import dataclass
from pathlib import Path
from typing import Literal

from magview import __version__
from magview.paper.sizes import PaperSize
from magview.spec.language import tr

BOX = "☐"
"""A box to tick, within words."""

HATCHED = "▨"
"""A cell of a table to fill that nothing is written into: it is hatched."""

Style = Literal["strong", "em", "i", "code", "sub", "sup"]
"""Look of letters, by the names of HTML."""


@dataclass(frozen=True)
class Run:
    """Letters that look alike; `styles` from the outermost to the innermost, `link` an address or nothing."""

    text: str
    styles: tuple[Style, ...] = ()
    link: str = ""


Words = str | tuple[Run, ...]
"""A text: plain, or with letters that look different."""


def runs(words: Words) -> tuple[Run, ...]:
    """A text as runs."""
    return (Run(words),) if isinstance(words, str) else words


def letters(words: Words) -> str:
    """A text without its looks."""
    return words if isinstance(words, str) else "".join(run.text for run in words)


def printable(text: str) -> str:
    """Text with each control character replaced by one sign; line breaks and tabs stay."""
    return re.sub(r"[^\n\t\x20-\x7e\xa0-\ud7ff\ue000-\ufffd\U00010000-\U0010ffff]", "\ufffd", text)


@dataclass(frozen=True)
class Heading:
    """A line above what follows; level 1 is the title of a document or of a page of the guide."""

    text: Words
    level: int = 2
    mark: str = ""
    """Words at its right: the state of a stage."""
    anchor: str = ""
    """Name that links and contents use."""


ParagraphKind = Literal["plain", "small", "note", "caution", "warning", "formula", "code"]


@dataclass(frozen=True)
class Paragraph:
    """Words; notes, cautions and warnings stand in a frame, formulas and code on a ground."""

    text: Words
    kind: ParagraphKind = "plain"


@dataclass(frozen=True)
class Items:
    """A list; "tick" is numbered, each with a box to tick."""

    items: tuple[Words, ...]
    kind: Literal["bullet", "number", "tick"] = "bullet"


@dataclass(frozen=True)
class Table:
    """Rows of cells, all as long as `head`, which may be empty."""

    head: tuple[Words, ...]
    rows: tuple[tuple[Words, ...], ...]
    weights: tuple[float, ...] = ()
    """The columns' shares of the width; left out, they follow the words."""
    bad: frozenset[int] = frozenset()
    """Rows that must catch the eye."""
    align: str = ""
    """A letter for each column, "l" or "r"; left out, all are "l"."""
    to_fill: bool = False
    """Ruled, with rows high enough for a hand; "" is a blank, `HATCHED` is not asked."""
    row_mm: float = 8.5
    """Least height of a row to fill: an exercise book's."""


@dataclass(frozen=True)
class Picture:
    """A drawing as SVG, a picture in a PNG file, or a photograph, so wide on paper."""

    width_mm: float
    svg: str = ""
    png: Path | None = None
    jpeg: bytes = b""
    """A photograph, where it is one."""
    caption: str = ""
    told: str = ""
    """Description of a PNG or a photograph for those who do not see it; an SVG brings its own title."""


@dataclass(frozen=True)
class Pictures:
    """Pictures side by side."""

    pictures: tuple[Picture, ...]


@dataclass(frozen=True)
class SignatureLines:
    """Lines to sign on: (what, what is filled in already)."""

    lines: tuple[tuple[str, str], ...]


@dataclass(frozen=True)
class WriteLines:
    """Empty lines to write on."""

    count: int


@dataclass(frozen=True)
class Contents:
    """A list of headings: (words, anchor), on paper with their page numbers."""

    entries: tuple[tuple[str, str], ...]


@dataclass(frozen=True)
class NewPage:
    """Break of the page: the next block begins on a new one."""


Block = Heading | Paragraph | Items | Table | Pictures | SignatureLines | WriteLines | Contents | NewPage


@dataclass(frozen=True)
class Document:
    """Blocks under a title, for a size of paper."""

    title: str
    foot: str
    """Words at the foot of every page, before its number."""
    blocks: tuple[Block, ...]
    size: PaperSize = "a4"
    setting: Literal["form", "book"] = "form"
    """Close, as forms are set, or with room, as is read."""
    grey: bool = False
    """Without any colour."""


def working_foot(title: str) -> str:
    """The foot of what is taken to the magneto."""
    return tr("{sheet} · magview {version} · treat the propeller as live", sheet=title, version=__version__)
