"""The whole guide as one document: its contents, then page after page."""

from __future__ import annotations

import re
from functools import partial

from magview import __version__
from magview.guide.page_blocks import page_blocks
from magview.guide.pages import chapters
from magview.paper.blocks import Block, Contents, Document, Heading, NewPage
from magview.paper.sizes import PaperSize

TITLE = "The magview guide"


def book(size: PaperSize = "a4") -> Document:
    """The guide as a document."""
    blocks: list[Block] = [Heading(TITLE, 1)]
    for chapter in chapters():
        pages = tuple((page.title, page.name) for page in chapter.pages)
        blocks += [Heading(chapter.title), Contents(pages)]
    for chapter in chapters():
        for page in chapter.pages:
            blocks += [NewPage(), *page_blocks(page, partial(_link, page.name), partial(_anchor, page.name))]
    return Document(TITLE, f"{TITLE} · magview {__version__}", tuple(blocks), size, "book")


def _anchor(page: str, anchor: str) -> str:
    """The anchor, in the one document, of a page's section."""
    return f"{page}.{anchor}" if anchor else page


def _link(here: str, target: str) -> str:
    match = re.fullmatch(r"(?:([\w-]+)\.md)?(?:#([\w-]+))?", target)
    return target if match is None else f"#{_anchor(match[1] or here, match[2] or '')}"
