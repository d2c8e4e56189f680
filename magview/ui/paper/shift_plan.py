"""The tooth-shift plan as PDF, on one page."""

from __future__ import annotations

from functools import partial
from pathlib import Path

from PySide6.QtCore import QSizeF
from PySide6.QtGui import QPdfWriter

from magview.job.document import Block
from magview.job.report import Paper
from magview.job.shift_plan import ShiftPlan, shift_document
from magview.ui.paper.pdf import Layout, pages_pdf, save_pages

_TRIED = (
    (0.46, False),
    (0.42, False),
    (0.38, False),
    (0.34, False),
    (0.34, True),
    (0.28, True),
    (0.22, True),
    (0.18, True),
)
"""Share of the page's width that a picture takes, and whether the rest is tight: the first that leaves one page."""


def print_shift(plan: ShiftPlan, path: Path, paper: Paper = "a4") -> int:
    """Write a plan as PDF; returns the number of pages. Raises SpecError where it cannot be written."""
    return save_pages(path, shift_pdf(plan, paper))


def shift_pdf(plan: ShiftPlan, paper: Paper = "a4") -> tuple[bytes, int]:
    """A plan as the bytes of a PDF, and its number of pages: one, but for moves of some twenty steps and more.

    Raises SpecError where there is no font.
    """
    for width, tight in _TRIED:
        lay_out = partial(_lay_out, blocks=shift_document(plan, width, tight))
        data, pages = pages_pdf(plan.title, plan.foot, paper, lay_out, grey=True)
        if pages == 1:
            break
    return data, pages


def _lay_out(writer: QPdfWriter, size: QSizeF, blocks: tuple[Block, ...]) -> Layout:
    layout = Layout(writer, size)
    for block, following in zip(blocks, (*blocks[1:], None), strict=True):
        layout.add(block, following)
    return layout
