"""The job sheet as PDF: pages laid out here, drawings as vectors, text that can be selected, fonts embedded.

Needs no display: any Qt platform will do, "offscreen" too.
"""

from __future__ import annotations

import os
import sys
from collections.abc import Callable
from functools import partial
from pathlib import Path

from PySide6.QtCore import QBuffer, QByteArray, QIODevice, QPointF, QRectF, QSizeF, Qt
from PySide6.QtGui import (
    QColor,
    QFont,
    QGuiApplication,
    QPainter,
    QPdfWriter,
    QPen,
    QTextLayout,
    QTextOption,
)
from PySide6.QtSvg import QSvgRenderer

from magview import __version__
from magview.job.document import Block, Figures, Heading, Paragraph, SignatureLines, Table, document, footer
from magview.job.history import Drift
from magview.job.report import Paper, printable
from magview.job.sheet import Job
from magview.spec.files import STANDARD
from magview.spec.language import tr
from magview.ui.pictures.export import prepare, written_beside

_DPI = 600
_MM = _DPI / 25.4
_MARGIN_MM = 15.0
_BODY, _SMALL = 8.5, 7.5
_HEADINGS = {1: 15.0, 2: 11.0, 3: 9.5}

MM, BODY = _MM, _BODY
"""Dots of a millimetre, and points of the type, for pages with blocks of their own."""

_Draw = Callable[[QPainter], None]


def print_pdf(job: Job, path: Path, paper: Paper = "a4", drift: Drift | None = None) -> int:
    """Write a sheet as PDF; returns the number of pages. Raises SpecError where it cannot be written."""
    return save_pages(path, pdf_bytes(job, paper, drift))


def save_pages(path: Path, made: tuple[bytes, int]) -> int:
    """Write the bytes of a PDF, whole or not at all; returns its number of pages. Raises SpecError."""
    data, pages = made
    if path == STANDARD:
        sys.stdout.buffer.write(data)
        return pages
    with written_beside(path) as temporary:
        temporary.write_bytes(data)
    return pages


def pdf_bytes(job: Job, paper: Paper = "a4", drift: Drift | None = None) -> tuple[bytes, int]:
    """A sheet as the bytes of a PDF, and its number of pages. Raises SpecError where there is no font."""
    title = job.title or tr("Magneto job sheet")
    return pages_pdf(title, footer(job), paper, partial(_lay_out, job=job, drift=drift))


def pages_pdf(
    title: str, foot: str, paper: Paper, lay_out: Callable[[QPdfWriter, QSizeF], Layout], grey: bool = False
) -> tuple[bytes, int]:
    """Pages as the bytes of a PDF, and their number. `lay_out` puts on them what there is, given writer and size of a
    page [dots]; `grey`: no colour is written at all. Raises SpecError where there is no font."""
    app = application()
    buffer = QBuffer()
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    writer = QPdfWriter(buffer)
    size = prepare(writer, paper, _DPI)
    if grey:
        writer.setColorModel(QPdfWriter.ColorModel.Grayscale)
    writer.setTitle(printable(title))
    writer.setCreator(f"magview {__version__}")
    layout = lay_out(writer, size)
    layout.paint(writer, printable(foot))
    buffer.close()
    del app
    return bytes(buffer.data().data()), len(layout.pages)


class PrintedPages:
    """The pages as they would be printed, for showing them. Raises SpecError where there is no font."""

    def __init__(self, job: Job, paper: Paper = "a4", drift: Drift | None = None) -> None:
        # The writer is what lines are measured for; nothing is written.
        self._buffer = QBuffer()
        self._buffer.open(QIODevice.OpenModeFlag.WriteOnly)
        self._writer = QPdfWriter(self._buffer)
        self._foot = printable(footer(job))
        self.size = prepare(self._writer, paper, _DPI)
        """Of a page, in the units that `paint` draws in."""
        self._layout = _lay_out(self._writer, self.size, job, drift)

    def __len__(self) -> int:
        return len(self._layout.pages)

    def paint(self, painter: QPainter, number: int) -> None:
        """Draw a page, the first being 1, in black on whatever paper is there."""
        self._layout.paint_page(painter, number, self._foot)


def _lay_out(writer: QPdfWriter, size: QSizeF, job: Job, drift: Drift | None) -> Layout:
    layout = Layout(writer, size)
    blocks = document(job, drift)
    for block, following in zip(blocks, (*blocks[1:], None), strict=True):
        layout.add(block, following)
    return layout


def application() -> QGuiApplication:
    """The running Qt application, or one that needs no display."""
    running = QGuiApplication.instance()
    if isinstance(running, QGuiApplication):
        return running
    if sys.platform.startswith("linux"):
        os.environ["QT_QPA_PLATFORM"] = "offscreen"
    return QGuiApplication(["magview"])


class Layout:
    """Blocks onto pages: what is drawn where, so that the number of pages is known when the first is drawn."""

    def __init__(self, writer: QPdfWriter, size: QSizeF) -> None:
        self._writer, self._size = writer, size
        self._left, self._top = _MARGIN_MM * _MM, _MARGIN_MM * _MM
        self._width = size.width() - 2 * self._left
        self._bottom = size.height() - (_MARGIN_MM + 5.0) * _MM
        self.pages: list[list[_Draw]] = [[]]
        self._y = self._top

    def add(self, block: Block, following: Block | None = None) -> None:
        """Put a block below what is there already; a heading stays with what follows it."""
        match block:
            case Heading():
                self._heading(block, self._with_heading(following))
            case Paragraph():
                self._paragraph(block)
            case Table():
                self._table(block)
            case Figures():
                self._figures(block)
            case SignatureLines():
                self._signature(block)

    def _with_heading(self, following: Block | None) -> float:
        """What stands on one page with a heading: a drawing; a table, where a page holds both; else a few lines."""
        if isinstance(following, Figures):
            return self._tall(following)
        whole = self._whole(following) if isinstance(following, Table) else 0.0
        return whole if 0.0 < whole < self._bottom - self._top - 15 * _MM else 18 * _MM

    def _whole(self, table: Table) -> float:
        """How high a table is that is not split."""
        widths = self._widths(table)
        head = self._height(table.head, widths, True) if table.head else 0.0
        return head + sum(self._height(row, widths, i in table.bad) for i, row in enumerate(table.rows)) + 1.5 * _MM

    def _widths(self, table: Table) -> list[float]:
        whole = sum(table.weights)
        return [self._width * w / whole for w in table.weights]

    def paint(self, writer: QPdfWriter, foot: str) -> None:
        """Draw all pages, each with its foot."""
        painter = QPainter(writer)
        for number in range(1, len(self.pages) + 1):
            if number > 1:
                writer.newPage()
            self.paint_page(painter, number, foot)
        painter.end()

    def paint_page(self, painter: QPainter, number: int, foot: str) -> None:
        """Draw one page, the first being 1."""
        for draw in self.pages[number - 1]:
            draw(painter)
        self._foot(painter, f"{foot} · {tr('page {page} of {pages}', page=number, pages=len(self.pages))}")

    # -------------------------------------------------------------- places

    def _page(self) -> None:
        self.pages.append([])
        self._y = self._top

    def _room(self, height: float) -> None:
        """A new page unless so much fits on this one."""
        if self._y + height > self._bottom and self._y > self._top:
            self._page()

    def _skip(self, mm: float) -> None:
        if self._y > self._top:
            self._y += mm * _MM

    def _later(self, draw: _Draw) -> None:
        self.pages[-1].append(draw)

    # -------------------------------------------------------------- text

    def _font(self, points: float, bold: bool = False) -> QFont:
        font = QFont("DejaVu Sans")
        font.setStyleHint(QFont.StyleHint.SansSerif)
        font.setPointSizeF(points)
        font.setBold(bold)
        return font

    def _lines(self, text: str, width: float, font: QFont) -> tuple[QTextLayout, float]:
        layout = QTextLayout(printable(text).replace("\n", "\u2028"), font, self._writer)
        option = QTextOption()
        option.setWrapMode(QTextOption.WrapMode.WrapAtWordBoundaryOrAnywhere)
        layout.setTextOption(option)
        layout.beginLayout()
        height = 0.0
        while (line := layout.createLine()).isValid():
            line.setLineWidth(width)
            line.setPosition(QPointF(0.0, height))
            height += line.height()
        layout.endLayout()
        return layout, height

    def _text(self, layout: QTextLayout, x: float, y: float, first: int = 0, last: int | None = None) -> None:
        """Draw the lines of a layout from its `first` to before its `last`, the first at (x, y)."""
        last = layout.lineCount() if last is None else last
        above = layout.lineAt(first).position().y() if first < last else 0.0

        def draw(painter: QPainter) -> None:
            painter.setPen(QColor("#000000"))
            for i in range(first, last):
                layout.lineAt(i).draw(painter, QPointF(x, y - above))

        self._later(draw)

    # -------------------------------------------------------------- blocks

    def _heading(self, heading: Heading, with_it: float) -> None:
        self._skip(4.0 if heading.level == 2 else 2.0)
        # A state may take several words: it has the right half, on as many lines as it needs.
        mark, marked = self._lines(heading.mark, self._width * 0.45, self._font(_BODY))
        wide = max(mark.lineAt(i).naturalTextWidth() for i in range(mark.lineCount())) if heading.mark else 0.0
        own = min(self._width * 0.8, self._width - wide - 3 * _MM)
        layout, height = self._lines(heading.text, own, self._font(_HEADINGS[heading.level], True))
        height = max(height, marked) if heading.mark else height
        self._room(height + 1.0 * _MM + with_it)
        self._text(layout, self._left, self._y)
        if heading.mark:
            self._text(mark, self._left + self._width - wide, self._y)
        self._y += height
        if heading.level == 2:
            self._rule(self._left, self._y, self._width, 0.4)
        self._y += 1.0 * _MM

    def _paragraph(self, paragraph: Paragraph) -> None:
        framed = paragraph.kind in ("caution", "warning")
        inset = 2.0 * _MM if framed else 0.0
        size = _SMALL if paragraph.kind == "small" else _BODY
        font = self._font(size, paragraph.kind == "warning")
        layout, height = self._lines(paragraph.text, self._width - 2 * inset, font)
        if framed and height + 2 * inset < self._bottom - self._top:
            self._room(height + 2 * inset)
            self._frame(self._y, height + 2 * inset, 0.9 if paragraph.kind == "warning" else 0.4)
            self._text(layout, self._left + inset, self._y + inset)
            self._y += height + 2 * inset + 1.5 * _MM
            return
        start = 0
        while start < layout.lineCount():
            end, used = start, 0.0
            while end < layout.lineCount() and self._y + used + layout.lineAt(end).height() <= self._bottom:
                used += layout.lineAt(end).height()
                end += 1
            if end == start:
                self._page()
                continue
            self._text(layout, self._left, self._y, start, end)
            self._y, start = self._y + used, end
        self._y += 1.2 * _MM

    def _table(self, table: Table) -> None:
        widths = self._widths(table)
        if table.head:
            self._row(table.head, widths, bold=True, heavy=True, keep=8 * _MM)
        page = len(self.pages)
        for i, row in enumerate(table.rows):
            height = self._height(row, widths, i in table.bad)
            if self._y + height > self._bottom:
                self._page()
            if len(self.pages) != page and table.head:
                page = len(self.pages)
                self._row(table.head, widths, bold=True, heavy=True, keep=0.0)
            self._row(row, widths, bold=i in table.bad, heavy=False, keep=0.0)
        self._y += 1.5 * _MM

    def _height(self, cells: tuple[str, ...], widths: list[float], bold: bool) -> float:
        font = self._font(_BODY, bold)
        return max(self._lines(c, w - 2 * _MM, font)[1] for c, w in zip(cells, widths, strict=True)) + 1.0 * _MM

    def _row(self, cells: tuple[str, ...], widths: list[float], bold: bool, heavy: bool, keep: float) -> None:
        font = self._font(_BODY, bold)
        laid = [self._lines(cell, width - 2 * _MM, font) for cell, width in zip(cells, widths, strict=True)]
        height = max(h for _, h in laid) + 1.0 * _MM
        self._room(height + keep)
        if bold and not heavy:
            self._shade(self._y, height)
        x = self._left
        for (layout, _), width in zip(laid, widths, strict=True):
            self._text(layout, x + 0.6 * _MM, self._y + 0.5 * _MM)
            x += width
        self._y += height
        self._rule(self._left, self._y, self._width, 0.3 if heavy else 0.1)

    def _laid(self, figures: Figures) -> list[tuple[QSvgRenderer, float, QTextLayout, float]]:
        """Each drawing with its height, and its caption with its own."""
        width, laid = self._width * figures.width, []
        for text, caption in figures.pictures:
            renderer = QSvgRenderer(QByteArray(text.encode("utf-8")))
            size = renderer.defaultSize()
            laid.append(
                (
                    renderer,
                    width * size.height() / max(1, size.width()),
                    *self._lines(caption, width, self._font(_SMALL)),
                )
            )
        return laid

    def _tall(self, figures: Figures) -> float:
        laid = self._laid(figures)
        return max(d[1] for d in laid) + max(d[3] for d in laid) + 2.5 * _MM

    def _figures(self, figures: Figures) -> None:
        laid, width = self._laid(figures), self._width * figures.width
        gap = (self._width - width * len(laid)) / len(laid)
        tallest, x = max(d[1] for d in laid), self._left + gap / 2
        tall = self._tall(figures)
        self._room(tall)
        for renderer, height, words, _ in laid:
            self._picture(renderer, QRectF(x, self._y, width, height))
            self._text(words, x, self._y + tallest + 1.0 * _MM)
            x += width + gap
        self._y += tall

    def _picture(self, renderer: QSvgRenderer, where: QRectF) -> None:
        self._later(lambda painter: renderer.render(painter, where))

    def _signature(self, signature: SignatureLines) -> None:
        gap = 4.0 * _MM
        count = len(signature.lines)
        width = (self._width - gap * (count - 1)) / count
        filled = [self._lines(text, width, self._font(_BODY, True)) for _, text in signature.lines]
        tall = max(9.0 * _MM, max(h for _, h in filled) + 3 * _MM)
        self._room(tall + 6 * _MM)
        line = self._y + tall
        for i, (what, _) in enumerate(signature.lines):
            x = self._left + i * (width + gap)
            self._text(filled[i][0], x, line - filled[i][1] - 0.5 * _MM)
            self._rule(x, line, width, 0.25)
            self._text(self._lines(what, width, self._font(_SMALL))[0], x, line + 0.5 * _MM)
        self._y = line + 5 * _MM

    # -------------------------------------------------------------- lines

    def _rule(self, x: float, y: float, width: float, mm: float) -> None:
        def draw(painter: QPainter) -> None:
            painter.setPen(QPen(QColor("#000000"), mm * _MM))
            painter.drawLine(QPointF(x, y), QPointF(x + width, y))

        self._later(draw)

    def _frame(self, y: float, height: float, mm: float) -> None:
        where = QRectF(self._left, y, self._width, height)

        def draw(painter: QPainter) -> None:
            painter.setPen(QPen(QColor("#000000"), mm * _MM))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRect(where)

        self._later(draw)

    def _shade(self, y: float, height: float) -> None:
        where = QRectF(self._left, y, self._width, height)
        self._later(lambda painter: painter.fillRect(where, QColor("#e8e8e8")))

    def _foot(self, painter: QPainter, text: str) -> None:
        layout, _ = self._lines(text, self._width, self._font(_SMALL))
        y = self._size.height() - (_MARGIN_MM + 2.0) * _MM
        painter.setPen(QPen(QColor("#000000"), 0.1 * _MM))
        painter.drawLine(QPointF(self._left, y), QPointF(self._left + self._width, y))
        for i in range(layout.lineCount()):
            layout.lineAt(i).draw(painter, QPointF(self._left, y + 1.0 * _MM))
