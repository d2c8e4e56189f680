"""A document as PDF: pictures as vectors, text that can be selected, fonts embedded.

Needs no display: any Qt platform will do, "offscreen" too.
"""

from __future__ import annotations

import os
import sys
from pathlib import Path

from PySide6.QtCore import QBuffer, QIODevice
from PySide6.QtGui import QGuiApplication, QPainter, QPdfWriter

from magview import __version__
from magview.paper.blocks import Document, printable
from magview.ui.paper.layout import DPI, Layout
from magview.ui.pictures.export import prepare, written_beside


def print_pdf(path: Path, *documents: Document) -> int:
    """Write a document as PDF, whole or not at all; returns the number of pages.

    Of several documents the first that takes one page is written, or the last. Raises SpecError where the file
    cannot be written or there is no font.
    """
    data, pages = pdf_bytes(*documents)
    with written_beside(path) as temporary:
        temporary.write_bytes(data)
    return pages


def pdf_bytes(*documents: Document, most: int = 1) -> tuple[bytes, int]:
    """A document as the bytes of a PDF, and its number of pages.

    Of several the first of at most `most` pages, or the last.
    """
    for document in documents:
        pages = PrintedPages(document)
        if len(pages) <= most:
            break
    return pages.written(), len(pages)


class PrintedPages:
    """The pages as they are printed, to be shown or written. Raises SpecError where there is no font."""

    def __init__(self, document: Document) -> None:
        app = application()
        self._buffer = QBuffer()
        self._buffer.open(QIODevice.OpenModeFlag.WriteOnly)
        # The writer is what lines are measured for, also where nothing is written.
        self._writer = QPdfWriter(self._buffer)
        self.size = prepare(self._writer, document.size, DPI)
        """Of a page, in the units that `paint` draws in."""
        if document.grey:
            self._writer.setColorModel(QPdfWriter.ColorModel.Grayscale)
        self._writer.setTitle(printable(document.title))
        self._writer.setCreator(f"magview {__version__}")
        self._layout = Layout(self._writer, self.size, document)
        self._app = app  # the last to go

    def __len__(self) -> int:
        return len(self._layout.pages)

    def paint(self, painter: QPainter, number: int) -> None:
        """Draw a page, the first being 1, in black on whatever paper is there."""
        self._layout.paint(painter, number)

    def written(self) -> bytes:
        """All pages as the bytes of a PDF."""
        painter = QPainter(self._writer)
        for number in range(1, len(self) + 1):
            if number > 1:
                self._writer.newPage()
            self.paint(painter, number)
        painter.end()
        self._buffer.close()
        return bytes(self._buffer.data().data())


def application() -> QGuiApplication:
    """The running Qt application, or one that needs no display."""
    running = QGuiApplication.instance()
    if isinstance(running, QGuiApplication):
        return running
    if sys.platform.startswith("linux"):
        os.environ["QT_QPA_PLATFORM"] = "offscreen"
    return QGuiApplication(["magview"])
