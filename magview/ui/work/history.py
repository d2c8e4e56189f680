"""Earlier sheets of the same magneto: side by side, how it drifts, when to look again."""

from __future__ import annotations

import datetime
from pathlib import Path

from PySide6.QtCore import Signal
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import (
    QGroupBox,
    QHBoxLayout,
    QLabel,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from magview.bench.wear_words import usual_words
from magview.job.history import Drift, Found, drift_of, earlier_jobs, reminder
from magview.job.sheet import Job, title_of
from magview.spec.language import tr
from magview.ui.kit.asking import ask_folder
from magview.ui.kit.bench_model import BenchModel
from magview.ui.kit.look import Look
from magview.ui.kit.table import Table
from magview.ui.kit.worker import Progress, ShouldStop, Worker
from magview.ui.work.form import Form
from magview.ui.work.model import JobModel
from magview.ui.work.page import Page

_COLUMNS = 8
"""Of the table of earlier sheets, at the most: all share the width."""


class HistoryPage(Page):
    """A folder is read beside the window; what it holds of this magneto is shown."""

    opened = Signal(object)
    """The file of an earlier sheet, to be opened."""
    said = Signal(str)

    def __init__(self, model: JobModel, bench: BenchModel, look: Look) -> None:
        super().__init__(tr("Earlier sheets of the same magneto"))
        self.model, self._bench, self.look = model, bench, look
        self._folder: Path | None = None
        self.found: list[Found] = []
        """Earlier sheets, as they were last read."""
        self._looked: tuple[Path, str, str] | None = None
        """Folder, type and serial number that were last looked for."""
        self._sheet: QWidget | None = None
        self.worker = Worker(self)
        self.worker.finished.connect(self._read)
        self.worker.failed.connect(self._failed)
        row = QHBoxLayout()
        self.where = QLabel()
        self.where.setWordWrap(True)
        self.choose, self.again = QPushButton(tr("Another folder…")), QPushButton(tr("Look again"))
        self.choose.clicked.connect(self._choose)
        self.again.clicked.connect(self.search)
        row.addWidget(self.where, 1)
        for button in (self.choose, self.again):
            button.setAutoDefault(False)
            row.addWidget(button)
        self.column.addLayout(row)
        self.column.addWidget(self._build_errors())
        self.reminder, self.told, self.refused = QLabel(), QLabel(), QLabel()
        font = self.reminder.font()
        font.setBold(True)
        self.reminder.setFont(font)
        self.table = Table(tr("Earlier sheets of the same magneto"), (), wide=range(_COLUMNS), wraps=True)
        self.table.setToolTip(tr("Double-click, or Return, opens a sheet"))
        self.table.opened.connect(self._opened)
        self.table.show_at_most(8)
        for widget in (self.reminder, self.told, self.table, self.refused):
            if isinstance(widget, QLabel):
                widget.setWordWrap(True)
            self.column.addWidget(widget)
        self.column.addStretch(1)
        model.changed.connect(self._changed)
        look.changed.connect(self._show_usual)

    def _build_errors(self) -> QGroupBox:
        """Build fields for how well readings were taken; what is left empty is taken as usual, and that is said."""
        box = QGroupBox(tr(title_of("reading_errors")))
        column = QVBoxLayout(box)
        self.errors = Form(self.model, "reading_errors", self.look)
        self.usual = QLabel()
        self.usual.setWordWrap(True)
        column.addWidget(self.errors)
        column.addWidget(self.usual)
        self._show_usual()
        return box

    def _show_usual(self) -> None:
        empty = tr("Left empty: blades in steps of 0.001 in, a rule to 0.5 mm, a disc to 1°.")
        self.usual.setText(f"{empty} {usual_words()}")

    # -------------------------------------------------------------- reading

    @property
    def folder(self) -> Path:
        """Return where earlier sheets are looked for: beside this one until another folder is chosen."""
        return self._folder or self.model.store.path.parent

    def _choose(self) -> None:
        folder = ask_folder(self, tr("Earlier sheets"), self.folder)
        if folder is not None:
            self.look_in(folder)

    def look_in(self, folder: Path) -> None:
        """Look for sheets of this magneto in a folder."""
        self._folder = folder
        self.search()

    def search(self) -> None:
        """Read the folder beside the window."""
        job, folder, own = self.model.job, self.folder, self.model.store.path
        self._looked = (folder, job.magneto.type, job.magneto.serial)
        self.where.setText(tr("Looking in {folder}…", folder=folder))

        def work(progress: Progress, should_stop: ShouldStop) -> tuple[list[Found], list[str]]:
            return earlier_jobs(folder, job, without=own)

        self.worker.start(work)

    def _read(self, result: tuple[list[Found], list[str]]) -> None:
        self.found, refused = result
        self.where.setText(
            tr("{count} earlier sheets of this magneto in {folder}.", count=len(self.found), folder=self.folder)
        )
        self.refused.setText("\n".join(tr("Passed over: {sentence}.", sentence=s) for s in refused))
        if self.isVisible():
            self._show()

    def _failed(self, sentence: str) -> None:
        self.found = []
        self.where.setText(f"{sentence[0].upper()}{sentence[1:]}.")
        self.refused.setText("")
        if self.isVisible():
            self._show()

    def again_later(self) -> None:
        """The sheet lies in another folder now: read that when it is looked at."""
        self._looked = None

    def showEvent(self, event: QShowEvent) -> None:
        """Seen: read, unless that was done for this magneto and folder."""
        super().showEvent(event)
        magneto = self.model.job.magneto
        if self._looked != (self.folder, magneto.type, magneto.serial):
            self.search()
        else:
            self._show()

    def _changed(self, job: Job, old: Job) -> None:
        if self.isVisible():
            self._show()

    # -------------------------------------------------------------- showing

    @property
    def drift(self) -> Drift | None:
        """This sheet and the earlier ones as one course; None as long as there are no earlier ones."""
        return drift_of([*(f.job for f in self.found), self.model.job]) if self.found else None

    def due(self) -> str:
        """The reminder of the next check, once it is due; else nothing."""
        return reminder(self.model.job, datetime.date.today().isoformat(), drift=self.drift) or ""

    def _show(self) -> None:
        drift = drift_of([*(f.job for f in self.found), self.model.job])
        urgent = [sentence for sentence in (self.due(), drift.late_check) if sentence]
        self.reminder.setText("\n".join(f"⚠ {sentence}" for sentence in urgent))
        self.reminder.setVisible(bool(urgent))
        self.told.setText("\n".join(drift.sentences))
        self.told.setVisible(bool(drift.sentences))
        head, lines = drift.table
        self.table.set_heads([tr(h) for h in head])
        self.table.fill(lines, [self._path_of(job) for job in drift.jobs])
        self._plot(drift if len(drift.jobs) > 1 else None)

    def _path_of(self, job: Job) -> str:
        return next((str(f.path) for f in self.found if f.job is job), "")

    def _plot(self, drift: Drift | None) -> None:
        """The plots come with the first earlier sheet: their library takes a while to load."""
        if self._sheet is None:
            if drift is None:
                return
            from magview.ui.work.drift_sheet import DriftSheet

            sheet = self._sheet = DriftSheet(self._bench, self.look)
            sheet.said.connect(self.said)
            sheet.setMinimumHeight(15 * self.fontMetrics().height())
            self.column.insertWidget(self.column.count() - 2, sheet, 1)
            sheet.show()
        self._sheet.setVisible(drift is not None)
        self._sheet.show_drift(drift)  # type: ignore[attr-defined]

    def _opened(self, path: object) -> None:
        if isinstance(path, str) and path:
            self.opened.emit(Path(path))

    def halt(self) -> None:
        """The window closes."""
        self.worker.cancel()
