"""A page's Markdown as blocks, for paper, browsers and the window alike.

Formulas are words of Unicode with raised and lowered parts, not pictures: they can be searched, selected and
read aloud, and follow size and colours of the text. ``_x`` and ``_{xyz}`` lower, ``^x`` and ``^{xyz}`` raise; single
letters stand in italics. They are written in a fence named ``formula`` and, within a line, between asterisks.
"""

from __future__ import annotations

import re
import struct
from collections.abc import Callable, Iterator
from pathlib import Path

from markdown_it.token import Token

from magview.guide.pages import Page, anchor_of, guide_folder, parser, plain
from magview.paper.blocks import Block, Heading, Items, Paragraph, Picture, Pictures, Run, Style, Table, Words

_PART = re.compile(r"([_^])(?:\{([^}]*)\}|(\w+))|([^_^]+)|([_^])")
_LETTER = re.compile(r"(?<![^\W\d_])([^\W\d_])(?![^\W\d_])")
_WIDEST_PX, _TALLEST_PX, _SHARE = 600.0, 430.0, 0.8
"""Largest picture [1/96 in], and how much smaller than on the screen one is."""

_STYLES: dict[str, Style] = {"strong": "strong", "em": "em"}

Address = Callable[[str], str]


def page_blocks(page: Page, link: Address, anchor: Address) -> list[Block]:
    """The blocks of a page.

    `link` turns ``page.md``, ``page.md#anchor`` or ``#anchor`` into an address, `anchor` the anchor of a heading into
    one of the whole document; the page's own is empty.
    """
    found: list[Block] = []
    items, cells, rows = list[Words](), list[Words](), list[tuple[Words, ...]]()
    tokens = parser().parse(page.source)
    for i, token in enumerate(tokens):
        match token.type:
            case "inline":
                words, opener = tuple(_runs(token.children or [], link)), tokens[i - 1]
                if opener.type in ("th_open", "td_open"):
                    cells.append(words)
                elif tokens[i - 2].type == "list_item_open":
                    items.append(words)
                elif opener.type == "heading_open":
                    own = "" if opener.tag == "h1" else anchor_of(plain(token))
                    found.append(Heading(words, int(opener.tag[1]), anchor=anchor(own)))
                else:
                    found.append(_paragraph(token, words, framed=tokens[i - 2].type == "blockquote_open"))
            case "fence":
                text, is_formula = token.content.rstrip(), token.info == "formula"
                found.append(Paragraph(formula(text), "formula") if is_formula else Paragraph(text, "code"))
            case "bullet_list_close" | "ordered_list_close":
                found.append(Items(tuple(items), "bullet" if token.type == "bullet_list_close" else "number"))
                items = []
            case "tr_close":
                rows.append(tuple(cells))
                cells = []
            case "table_close":
                found.append(Table(rows[0], tuple(rows[1:])))
                rows = []
    return found


def formula(text: str) -> tuple[Run, ...]:
    """A formula's letters with their looks.

    Examples
    --------
    >>> [(run.text, run.styles) for run in formula("K·x^2")]
    [('K', ('i',)), ('·', ()), ('x', ('i',)), ('2', ('sup',))]
    """
    found = []
    text = re.sub(" {2,}", "\u2003", text)  # a gap between two formulas of a line stays one
    for sign, braced, word, rest, alone in _PART.findall(text):
        shifted: dict[str, tuple[Style, ...]] = {"_": ("sub",), "^": ("sup",)}
        around = shifted.get(sign, ())
        for i, part in enumerate(_LETTER.split(rest or braced or word or alone)):
            if part:
                found.append(Run(part, (*around, "i") if i % 2 else around))
    return tuple(found)


def _runs(children: list[Token], link: Address) -> Iterator[Run]:
    """The letters of a line of Markdown; formulas between asterisks with raised and lowered parts."""
    styles, address, in_formula = list[Style](), "", False
    for i, token in enumerate(children):
        name = token.type.removesuffix("_open").removesuffix("_close")
        if token.type == "em_open" and _is_formula(children[i + 1].content):
            in_formula = True
        elif token.type == "em_close" and in_formula:
            in_formula = False
        elif name in _STYLES:
            styles = [*styles, _STYLES[name]] if token.nesting > 0 else styles[:-1]
        elif name == "link":
            address = link(str(token.attrs["href"])) if token.nesting > 0 else ""
        elif in_formula:
            yield from formula(token.content)
        elif token.type in ("softbreak", "hardbreak"):
            yield Run(" ", tuple(styles), address)
        elif token.content:
            yield Run(token.content, (*styles, "code") if name == "code_inline" else tuple(styles), address)


def _is_formula(text: str) -> bool:
    """Whether what stands between asterisks is a formula, and not words that are stressed."""
    return bool(re.search(r"[_^=·]", text)) or all(len(word) == 1 for word in re.findall(r"[^\W\d_]+", text))


def _paragraph(token: Token, words: Words, framed: bool) -> Block:
    """A paragraph, or the picture that it holds."""
    for child in token.children or ():
        if child.type == "image":
            path = guide_folder() / str(child.attrs["src"])
            return Pictures((Picture(_width_mm(path), png=path, told=child.content),))
    return Paragraph(words, "caution" if framed else "plain")


def _width_mm(path: Path) -> float:
    with path.open("rb") as file:
        width, height = struct.unpack(">II", file.read(24)[16:])  # where a PNG says its size
    return float(min(_WIDEST_PX, width * _SHARE, _TALLEST_PX * width / height) * 25.4 / 96)
