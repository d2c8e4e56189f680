"""Things taken away from a job sheet: PDF, HTML, tables; and its help."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import Protocol

from PySide6.QtCore import QObject, Qt
from PySide6.QtGui import QCursor, QGuiApplication
from PySide6.QtWidgets import QWidget

from magview.job.document import document
from magview.job.history import Drift
from magview.job.readings import csv_text, json_text
from magview.job.sheet import CAUTIONS
from magview.paper.blocks import Document
from magview.paper.html import document_html
from magview.paper.sizes import PaperSize
from magview.spec.base import SpecError
from magview.spec.files import write_text
from magview.spec.formats import stem_of
from magview.spec.language import tr, tr_n
from magview.ui.kit.asking import ask_save
from magview.ui.work.model import JobModel


class Sheet(Protocol):
    """Sheet's page as these actions see it."""

    model: JobModel

    @property
    def drift(self) -> Drift | None:
        """Earlier sheets to go into the report; None if there are none, or they are not wanted."""

    @property
    def paper(self) -> PaperSize:
        """The paper chosen for printing."""

    def finish(self) -> None:
        """Take what is being typed."""

    def answer(self, sentence: str) -> None:
        """Say what came of it."""

    def refuse(self, sentence: str) -> None:
        """Say why it could not be done."""


class Reports(QObject):
    """Asks where, writes, and says so."""

    def __init__(self, page: QWidget, sheet: Sheet) -> None:
        super().__init__(page)
        self._page, self._sheet = page, sheet

    def ask_path(self, title: str, ending: str, kinds: str) -> Path | None:
        """Ask where something is to be written, beside the sheet unless another folder is chosen; None if nowhere."""
        path = self._sheet.model.store.path
        stem = stem_of(path).removesuffix("-job")
        return ask_save(self._page, title, path.with_name(f"{stem}{ending}"), kinds)

    # -------------------------------------------------------------- asking

    def ask_pdf(self, paper: str) -> None:
        """Ask where, and print there."""
        path = self.ask_path(tr("Print the job sheet to PDF"), ".pdf", tr("PDF (*.pdf)"))
        if path is not None:
            self.pdf(path, "letter" if paper == "letter" else "a4")

    def ask_html(self) -> None:
        """Ask where, and write the sheet as one HTML file."""
        path = self.ask_path(tr("Save the job sheet as HTML"), ".html", tr("HTML (*.html)"))
        if path is not None:
            self._write(path, lambda: document_html(self._document(self._sheet.paper)))

    def ask_csv(self) -> None:
        """Ask where, and write the readings as a table."""
        path = self.ask_path(tr("Save the readings"), ".csv", tr("Table (*.csv)"))
        if path is not None:
            self._write(path, lambda: csv_text(self._sheet.model.job))

    def ask_json(self) -> None:
        """Ask where, and write the readings for programs."""
        path = self.ask_path(tr("Save the readings"), "-readings.json", tr("Readings (*.json)"))
        if path is not None:
            self._write(path, lambda: json_text(self._sheet.model.job))

    # -------------------------------------------------------------- writing

    def _document(self, size: PaperSize) -> Document:
        model = self._sheet.model
        return document(model.job, size, self._sheet.drift, model.store.path.parent)

    def pdf(self, path: Path, paper: PaperSize) -> None:
        """Print the sheet."""
        from magview.ui.paper.pdf import print_pdf

        if self._is_own(path):
            return
        QGuiApplication.setOverrideCursor(QCursor(Qt.CursorShape.WaitCursor))
        try:
            pages = print_pdf(path, self._document(paper))
        except SpecError as error:
            self._sheet.refuse(str(error))
            return
        finally:
            QGuiApplication.restoreOverrideCursor()
        self._sheet.answer(
            tr_n(
                "✓ Printed {count} page to {file}.", "✓ Printed {count} pages to {file}.", count=pages, file=path.name
            )
        )

    def _write(self, path: Path, text: Callable[[], str]) -> None:
        self._sheet.finish()
        if self._is_own(path):
            return
        try:
            write_text(path, text())
        except SpecError as error:
            self._sheet.refuse(str(error))
            return
        self._sheet.answer(tr("✓ Saved {file}.", file=path.name))

    def _is_own(self, path: Path) -> bool:
        """A report must not take the place of the sheet itself."""
        if path.resolve() != self._sheet.model.store.path:
            return False
        self._sheet.refuse(tr("{file} is the job sheet itself; choose another name", file=path.name))
        return True


def help_words() -> str:
    """Keys, what is saved when, cautions."""
    keys = tr(
        "Ctrl+Page Down and Ctrl+Page Up turn the pages, Ctrl+Return marks a stage as done. F2 goes to the list of "
        "stages, F3 to the stage that makes the magneto live. Every change is in "
        "the file at once; Ctrl+Z takes the last one back, also after the sheet was closed and opened again, and "
        "Ctrl+Shift+Z does it again. Numbers take a decimal point or comma and their unit: 13 thou, 0,33 mm. "
        "Escape puts back what stood in a field; an empty one was not read."
    )
    return "\n\n".join((keys, "\n".join(tr(text) for text in CAUTIONS)))
