"""Words that stand in bold in the guide, and those of them that are keys."""

from __future__ import annotations

import re

from magview.guide.pages import pages, parser


def tokens(name: str):
    for token in parser().parse(pages()[name].source):
        yield token
        yield from token.children or ()


def bold(name: str) -> list[str]:
    found, inside = [], False
    for token in tokens(name):
        if token.type in ("strong_open", "strong_close"):
            inside = token.type == "strong_open"
            found += [""] if inside else []
        elif inside:
            found[-1] += token.content
    return found


KEY = re.compile(
    r"(?:(?:Ctrl|Shift|Alt)\+)*(?:Ctrl|Shift|Alt|F\d+|[A-Z0-9+\-.]|PgUp|PgDown|Up|Down|Left|Right|Page Up|Page Down"
    r"|Space|Tab|Return|Home|Esc)"
)
