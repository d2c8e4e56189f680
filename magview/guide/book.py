"""The whole guide as one HTML file that needs nothing else: style and pictures are in it, nothing is fetched."""

from __future__ import annotations

import base64
import re
from functools import partial
from html import escape
from typing import Literal

from magview import __version__
from magview.guide.pages import Page, chapters, guide_folder
from magview.guide.render import Way, page_html

Paper = Literal["a4", "letter"]

TITLE = "The magview guide"

_STYLE = """
:root { color-scheme: light dark; --text: #16191d; --paper: #fff; --soft: #f1f2f4; --line: #8a929b;
        --link: #1a5fa8; --bad: #b3261e; }
@media (prefers-color-scheme: dark) { :root { --text: #e8eaed; --paper: #17191c; --soft: #26292d; --line: #767e87;
        --link: #6aaeff; --bad: #ff9d94; } }
body { color: var(--text); background: var(--paper); font: 1rem/1.55 system-ui, "DejaVu Sans", sans-serif;
       max-width: 46rem; margin: 0 auto; padding: 1rem; }
a { color: var(--link); }
h1, h2, h3 { line-height: 1.25; }
section > h1 { border-top: 2px solid var(--line); padding-top: 1rem; margin-top: 3rem; }
img { max-width: 100%; height: auto; border: 1px solid var(--line); background: #fff; }
table { border-collapse: collapse; }
th, td { border: 1px solid var(--line); padding: .25rem .5rem; text-align: left; vertical-align: top; }
code, pre { font-family: "DejaVu Sans Mono", ui-monospace, monospace; font-size: .92em; }
pre { background: var(--soft); padding: .6rem; overflow-x: auto; white-space: pre-wrap; }
.caution { border: 2px solid var(--bad); padding: 0 1rem; margin: 1rem 0; }
.formula { background: var(--soft); padding: .6rem 1rem; margin: 1rem 0; font-family: "DejaVu Serif", serif;
           overflow-x: auto; }
footer { border-top: 1px solid var(--line); margin-top: 3rem; font-size: .85rem; }
@media print { body { max-width: none; padding: 0; color: #000; background: #fff; }
  section { break-before: page; } h1, h2, h3 { break-after: avoid; }
  img, tr, .caution, .formula { break-inside: avoid; }
  section > h1 { border: 0; margin-top: 0; } }
"""


def book_html(paper: Paper = "a4") -> str:
    """The guide as HTML; `paper` is the size it prints on."""
    parts = [page_html(page, _way(page)) for chapter in chapters() for page in chapter.pages]
    return (
        f'<!DOCTYPE html>\n<html lang="en"><head><meta charset="utf-8"/><title>{TITLE}</title>'
        f'<meta name="viewport" content="width=device-width, initial-scale=1"/>'
        f"<style>@page {{ size: {'letter' if paper == 'letter' else 'A4'}; margin: 18mm; }}{_STYLE}</style></head>"
        f"<body><h1>{TITLE}</h1><nav>{contents_html()}</nav><main>"
        + "".join(f"<section>{part}</section>\n" for part in parts)
        + f"</main><footer>magview {__version__}</footer></body></html>\n"
    )


def contents_html() -> str:
    """The list of pages and their sections, with links."""
    lines = []
    for chapter in chapters():
        lines.append(f"<h2>{escape(chapter.title)}</h2>\n<ul>")
        for page in chapter.pages:
            lines.append(f'<li><a href="#{page.name}">{escape(page.title)}</a></li>')
        lines.append("</ul>")
    return "\n".join(lines)


def _way(page: Page) -> Way:
    return Way(partial(_link, page.name), partial(book_anchor, page.name), _data)


def book_anchor(page: str, anchor: str) -> str:
    """The anchor, in the one file, of a page's section."""
    return f"{page}.{anchor}" if anchor else page


def _link(here: str, target: str) -> str:
    match = re.fullmatch(r"(?:([\w-]+)\.md)?(?:#([\w-]+))?", target)
    return target if match is None else f"#{book_anchor(match[1] or here, match[2] or '')}"


def _data(name: str) -> str:
    raw = (guide_folder() / name).read_bytes()
    return f"data:image/png;base64,{base64.b64encode(raw).decode('ascii')}"
