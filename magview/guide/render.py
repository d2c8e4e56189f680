"""A page as HTML, for browsers and for Qt's text: one rendering, with what differs between them as data.

Formulas are words of Unicode with raised and lowered parts, not pictures: they can be searched, selected and
read aloud, and follow size and colours of the text. ``_x`` and ``_{xyz}`` lower, ``^x`` and ``^{xyz}`` raise; single
letters stand in italics. They are written in a fence named ``formula`` and, within a line, between asterisks.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import dataclass
from html import escape

from markdown_it.token import Token

from magview.guide.pages import Page, anchor_of, parser, plain

_PART = re.compile(r"([_^])(?:\{([^}]*)\}|(\w+))|([^_^]+)|([_^])")
_LETTER = re.compile(r"(?<![^\W\d_])([^\W\d_])(?![^\W\d_])")
CAUTION = "Take care."
"""The words that a caution begins with."""


@dataclass(frozen=True)
class Way:
    """How links, anchors and pictures of a page become addresses."""

    link: Callable[[str], str]
    """From ``page.md``, ``page.md#anchor`` or ``#anchor`` to an address."""
    anchor: Callable[[str], str]
    """From an anchor of the page to one of the whole; the page's own is empty."""
    picture: Callable[[str], str]
    """From a picture's name to its address."""
    framed: bool = False
    """Qt's text draws frames and grounds round tables only: cautions and formulas are put into one."""


def formula_html(text: str) -> str:
    """A formula's lines as HTML.

    Examples
    --------
    >>> formula_html("s_top = K·x^2")
    '<i>s</i><sub>top</sub> = <i>K</i>·<i>x</i><sup>2</sup>'
    """
    out = []
    text = re.sub(" {2,}", "\u2003", text)  # a gap between two formulas of a line stays one
    for sign, braced, word, rest, alone in _PART.findall(text):
        inner = _LETTER.sub(r"<i>\1</i>", escape(rest or braced or word or alone, quote=False))
        tag = {"_": "sub", "^": "sup"}.get(sign)
        out.append(f"<{tag}>{inner}</{tag}>" if tag else inner)
    return "".join(out)


def page_html(page: Page, way: Way) -> str:
    """The page's body as HTML: no head, no style."""
    markdown = parser()
    tokens = markdown.parse(page.source)
    out: list[Token] = []
    caution = _Framing("caution", way.framed)
    for i, token in enumerate(tokens):
        if token.type == "heading_open":
            out += [token, _html(_anchor(way, "" if token.tag == "h1" else anchor_of(plain(tokens[i + 1]))))]
        elif token.type == "fence" and token.info == "formula":
            lines = "<br/>".join(formula_html(line) for line in token.content.rstrip().splitlines())
            frame = _Framing("formula", way.framed)
            out.append(_html(f"{frame.begin}{lines}{frame.end}"))
        elif token.type == "blockquote_open":
            out.append(_html(caution.begin))
        elif token.type == "blockquote_close":
            out.append(_html(caution.end))
        else:
            if token.type == "inline":
                token.children = _inline(token.children or [], way)
            out.append(token)
    return str(markdown.renderer.render(out, markdown.options, {}))


@dataclass(frozen=True)
class _Framing:
    kind: str
    framed: bool

    @property
    def begin(self) -> str:
        if self.framed:
            return f'<table class="{self.kind}" width="100%" cellpadding="8" cellspacing="0"><tr><td>'
        return f'<div class="{self.kind}"{" role=note" if self.kind == "caution" else ""}>'

    @property
    def end(self) -> str:
        return "</td></tr></table>\n" if self.framed else "</div>\n"


def _anchor(way: Way, anchor: str) -> str:
    name = escape(way.anchor(anchor))
    return f'<a name="{name}"></a>' if way.framed else f'<a id="{name}"></a>'


def _html(text: str) -> Token:
    return Token("html_block", "", 0, content=text)


def _is_formula(text: str) -> bool:
    """Whether what stands between asterisks is a formula, and not words that are stressed."""
    return bool(re.search(r"[_^=·]", text)) or all(len(word) == 1 for word in re.findall(r"[^\W\d_]+", text))


def _inline(children: list[Token], way: Way) -> list[Token]:
    """Links and pictures get their addresses, formulas between asterisks their raised and lowered parts."""
    out, depth = [], 0
    for i, token in enumerate(children):
        if token.type == "link_open":
            token.attrs["href"] = way.link(str(token.attrs["href"]))
        elif token.type == "image":
            token.attrs["src"] = way.picture(str(token.attrs["src"]))
        if token.type == "em_open" and _is_formula(children[i + 1].content):
            depth = 1
        elif depth and token.type == "em_close":
            depth = 0
        elif depth:
            out.append(Token("html_inline", "", 0, content=formula_html(token.content)))
        else:
            out.append(token)
    return out
