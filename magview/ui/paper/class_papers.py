"""Worksheets, answer keys and handouts as PDF: the job sheet's pages with tables to write into."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QRectF, QSizeF, Qt
from PySide6.QtGui import QColor, QPainter, QPdfWriter, QPen

from magview.classroom.worksheet import ClassPaper, FillTable, NewPage, PaperBlock, Steps, WriteLines
from magview.job.document import Figures, Heading, Paragraph, SignatureLines, Table
from magview.job.report import Paper
from magview.ui.paper.pdf import BODY, MM, Layout, pages_pdf, save_pages

_ROW_MM = 8.5
"""Height of a row to write into: a ruled exercise book's."""


def print_paper(paper: ClassPaper, path: Path, size: Paper = "a4") -> int:
    """Write a class's paper as PDF; returns the number of pages. Raises SpecError where it cannot be written."""
    return save_pages(path, paper_pdf(paper, size))


def paper_pdf(paper: ClassPaper, size: Paper = "a4") -> tuple[bytes, int]:
    """A class's paper as the bytes of a PDF in greys, and its number of pages. Raises SpecError without fonts."""

    def lay_out(writer: QPdfWriter, page: QSizeF) -> ClassLayout:
        layout = ClassLayout(writer, page)
        for block, following in zip(paper.blocks, (*paper.blocks[1:], None), strict=True):
            layout.add(block, following)
        return layout

    return pages_pdf(paper.title, paper.foot, size, lay_out, grey=True)


class ClassLayout(Layout):
    """Blocks to write into, besides those of the job sheet."""

    def add(self, block: PaperBlock, following: PaperBlock | None = None) -> None:
        """Put a block below what is there already."""
        match block:
            case NewPage():
                self._page()
            case FillTable():
                self._fill_table(block)
            case Steps():
                self._steps(block)
            case WriteLines():
                self._write_lines(block)
            case Heading() if isinstance(following, Paragraph) and following.kind == "small":
                self._heading(block, 30 * MM)  # the table that follows the note, too
            case Heading() | Paragraph() | Table() | Figures() | SignatureLines():
                super().add(block, following if isinstance(following, Figures) else None)

    def _fill_table(self, table: FillTable) -> None:
        whole = sum(table.weights)
        widths = [self._width * w / whole for w in table.weights]
        self._fill_row(table.head, widths, bold=True, keep=_ROW_MM * MM)
        page = len(self.pages)
        for row in table.rows:
            if self._y + self._row_height(row, widths, bold=False) > self._bottom:
                self._page()
            if len(self.pages) != page:
                page = len(self.pages)
                self._fill_row(table.head, widths, bold=True, keep=0.0)
            self._fill_row(row, widths, bold=False, keep=0.0)
        self._y += 2.5 * MM

    def _row_height(self, cells: tuple[str, ...], widths: list[float], bold: bool) -> float:
        font = self._font(BODY, bold)
        tallest = max(self._lines(c, w - 3 * MM, font)[1] for c, w in zip(cells, widths, strict=True)) + 1.5 * MM
        return tallest if bold else max(tallest, _ROW_MM * MM)

    def _fill_row(self, cells: tuple[str, ...], widths: list[float], bold: bool, keep: float) -> None:
        height = self._row_height(cells, widths, bold)
        self._room(height + keep)
        x = self._left
        for cell, width in zip(cells, widths, strict=True):
            words, tall = self._lines(cell, width - 3 * MM, self._font(BODY, bold))
            self._text(words, x + 1.5 * MM, self._y + (height - tall) / 2)
            self._box(QRectF(x, self._y, width, height), 0.35 if bold else 0.2)
            x += width
        self._y += height

    def _steps(self, steps: Steps) -> None:
        side = 3.2 * MM
        for number, line in enumerate(steps.lines, 1):
            words, tall = self._lines(line, self._width - 13 * MM, self._font(BODY))
            self._room(tall + 1.5 * MM)
            self._box(QRectF(self._left, self._y + 0.3 * MM, side, side), 0.25)
            mark, _ = self._lines(f"{number}.", 8 * MM, self._font(BODY))
            self._text(mark, self._left + 5 * MM, self._y)
            self._text(words, self._left + 12 * MM, self._y)
            self._y += max(tall, side) + 1.2 * MM
        self._y += 1.0 * MM

    def _write_lines(self, lines: WriteLines) -> None:
        for _ in range(lines.count):
            self._room(9 * MM)
            self._y += 9 * MM
            self._rule(self._left, self._y, self._width, 0.2)
        self._y += 3 * MM

    def _box(self, where: QRectF, mm: float) -> None:
        def draw(painter: QPainter) -> None:
            painter.setPen(QPen(QColor("#000000"), mm * MM))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawPolygon([where.topLeft(), where.topRight(), where.bottomRight(), where.bottomLeft()])

        self._later(draw)
