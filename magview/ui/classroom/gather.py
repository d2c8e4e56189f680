"""Gathering a class: a folder marked beside the window and looked at from all sides, while files go on arriving."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QFileSystemWatcher, QTimer
from PySide6.QtWidgets import (
    QFormLayout,
    QHBoxLayout,
    QLineEdit,
    QProgressBar,
    QTabWidget,
    QWidget,
)

from magview.classroom.gather import LOOKED, Cancelled, Gatherer
from magview.classroom.results import Result, State, attempt_in
from magview.classroom.sets import ClassSet, open_set
from magview.classroom.summary import (
    AttemptEntry,
    PupilLine,
    Summary,
    attempt_heads,
    attempt_row,
    error_heads,
    error_row,
    pupil_heads,
    pupil_row,
    step_heads,
    step_row,
    summarise,
    summary_csv,
)
from magview.spec.base import SpecError
from magview.spec.files import read_json, write_text
from magview.spec.formats import file_filter
from magview.spec.language import marked, tr
from magview.ui.classroom.kept import ClassKept
from magview.ui.classroom.page import ClassPage, push_button
from magview.ui.kit.asking import ask_folder, ask_open, ask_save
from magview.ui.kit.look import Look
from magview.ui.kit.settings import keep, kept_text
from magview.ui.kit.table import Table
from magview.ui.kit.worker import Progress, ShouldStop, Worker
from magview.ui.practice.controls import wrapped
from magview.ui.practice.page import PracticePage

LOOK_MS = 5_000
"""Interval at which a folder is looked at again: a network's folder does not say when something arrives."""

BELIEVED = marked(
    "Marks, dangers, and faults found and missed are worked out here from the acts in each file. Names and times are "
    "believed as the pupils' machines wrote them."
)


class GatherPage(ClassPage):
    """Pupils, attempts, steps, errors and plots of one folder."""

    def __init__(self, room: ClassKept, look: Look) -> None:
        super().__init__(tr("Class gathered"), look)
        self.room = room
        self.summary: Summary | None = None
        self._set: ClassSet | None = room.set
        self._folder: Path | None = None
        self._gatherer = Gatherer(room.folder / "marks.jsonl")
        self._worker = Worker(self)
        self._worker.progressed.connect(self._progressed)
        self._worker.finished.connect(self._gathered)
        self._worker.failed.connect(self._failed)
        self._watcher = QFileSystemWatcher(self)
        self._watcher.directoryChanged.connect(self._arrived)
        self._look = QTimer(self)
        self._look.setInterval(LOOK_MS)
        self._look.timeout.connect(self._again)
        self._soon = QTimer(self)
        self._soon.setSingleShot(True)
        self._soon.setInterval(300)
        self._soon.timeout.connect(self._again)
        self._build_form()
        self._build_tables()
        self.column.addWidget(self.message)
        self._build_foot()
        self._show_busy(False)

    # -------------------------------------------------------------- building

    def _build_form(self) -> None:
        self.folder, self.set_field = QLineEdit(kept_text("class/gathered")), QLineEdit()
        self.folder.setPlaceholderText(tr("the folder the class hands in to"))
        self.folder.returnPressed.connect(self.gather)
        self.set_field.setPlaceholderText(
            tr("the set made in this session")
            if self._set is not None
            else tr("a code, or a set's file; may be left out")
        )
        self.set_field.editingFinished.connect(self._read_set)
        self.start, self.stop = push_button(tr("&Gather"), self.gather), push_button(tr("C&ancel"), self.cancel)
        self.bar = QProgressBar()
        self.bar.setRange(0, 1000)
        self.bar.setAccessibleName(tr("Progress"))
        form = QFormLayout()
        form.addRow(tr("&Folder"), self._row(self.folder, push_button(tr("&Choose…"), self._ask_folder), self.start))
        form.addRow(
            tr("Se&t"), self._row(self.set_field, push_button(tr("&Open…"), self._ask_set), self.bar, self.stop)
        )
        self.column.addLayout(form)

    def _row(self, field: QLineEdit, *beside: QWidget) -> QWidget:
        whole = QWidget()
        row = QHBoxLayout(whole)
        row.setContentsMargins(0, 0, 0, 0)
        row.addWidget(field, 1)
        for widget in beside:
            row.addWidget(widget)
        whole.setFocusProxy(field)
        return whole

    def _build_tables(self) -> None:
        self.pupils = Table(tr("Pupils"), pupil_heads(), wide=(8,), sortable=True)
        self.attempts = Table(tr("Attempts"), attempt_heads(), sortable=True)
        self.steps = Table(tr("Steps"), step_heads(), wide=(1,), sortable=True)
        self.errors = Table(tr("What goes wrong"), error_heads(), wide=(2,), sortable=True)
        self.pupils.opened.connect(self._open_pupil)
        self.attempts.opened.connect(self._open_entry)
        self.tabs = QTabWidget()
        self.tabs.setDocumentMode(True)
        for table, words in (
            (self.pupils, tr("&Pupils")), (self.attempts, tr("Atte&mpts")), (self.steps, tr("&Steps")),
            (self.errors, tr("&What goes wrong")),
        ):  # fmt: skip
            self.tabs.addTab(table, words)
        self.plots: QWidget | None = None
        self.tabs.addTab(QWidget(), tr("P&lots"))
        self.tabs.currentChanged.connect(self._tab)
        self.column.addWidget(self.tabs, 1)

    def _build_foot(self) -> None:
        row = QHBoxLayout()
        row.addWidget(wrapped(tr(BELIEVED)), 1)
        self.replay = push_button(tr("&Replay"), self.open_chosen)
        self.replay.setToolTip(tr("The debrief of the attempt that is chosen, with its replay"))
        self.save = push_button(tr("Save as CS&V…"), self._ask_save)
        row.addWidget(self.replay)
        row.addWidget(self.save)
        self.column.addLayout(row)

    # -------------------------------------------------------------- gathering

    def gather(self) -> None:
        """Mark the folder, and go on looking at it."""
        text = self.folder.text().strip()
        if not text:
            self.say(tr("Choose the folder the class hands in to first"))
            return
        folder = Path(text).expanduser()
        if folder != self._folder:
            if self._watcher.directories():
                self._watcher.removePaths(self._watcher.directories())
            if folder.is_dir():
                self._watcher.addPath(str(folder))
            self._folder, self.summary = folder, None
        self._read_set()
        self._work()

    def _work(self, quiet: bool = False) -> None:
        """`quiet`: nothing is shown of it unless there is something new to mark."""
        folder, of, gatherer = self._folder, self._set, self._gatherer
        assert folder is not None

        def work(progress: Progress, should_stop: ShouldStop) -> Summary | None:
            try:
                return summarise(gatherer.gather(folder, progress, should_stop), of)
            except Cancelled:
                return None

        self._look.stop()
        self._worker.start(work)
        if not quiet:
            self._show_busy(True)

    def cancel(self) -> None:
        """Stop; what is marked by now need not be marked again."""
        self._worker.cancel()
        self._look.stop()
        self._show_busy(False)
        self.say(tr("Cancelled. The marks so far are kept for the next time."))

    def _arrived(self, path: str) -> None:
        self._soon.start()

    def _again(self) -> None:
        if self._folder is not None and not self._worker.busy:
            self._work(quiet=True)

    def _progressed(self, share: float) -> None:
        if self.bar.isHidden() and LOOKED < share < 1.0:
            self._show_busy(True)
        self.bar.setValue(round(1000 * share))

    def _gathered(self, summary: Summary | None) -> None:
        self._show_busy(False)
        if summary is None:
            return
        self._look.start()
        keep("class/gathered", str(self._folder))
        if self.summary is None or summary != self.summary:
            self._show(summary)

    def _failed(self, sentence: str) -> None:
        self._show_busy(False)
        self._look.start()  # a share that is away comes back
        self.say(sentence)

    def _show_busy(self, busy: bool) -> None:
        self.stop.setEnabled(busy)
        self.bar.setVisible(busy)
        if not busy:
            self.bar.setValue(0)
        for button in (self.replay, self.save):
            button.setEnabled(self.summary is not None)

    # -------------------------------------------------------------- showing

    def _show(self, summary: Summary) -> None:
        self.summary = summary
        self.pupils.fill([pupil_row(p) for p in summary.pupils], summary.pupils)
        self.attempts.fill([attempt_row(e) for e in summary.entries], summary.entries)
        self.steps.fill([step_row(s) for s in summary.steps], summary.steps)
        self.errors.fill([error_row(e) for e in summary.errors], summary.errors)
        told = [
            tr("{count} attempts count, of {files} files.", count=len(summary.counted), files=len(summary.entries))
        ]
        over = [e for e in summary.entries if e.result.state is not State.MARKED]
        if over:
            told.append(tr("{count} were passed over; the table of attempts says why.", count=len(over)))
        if summary.missing:
            told.append(tr("Nothing from: {names}.", names=", ".join(summary.missing)))
        self.say(" ".join(told))
        self._show_busy(self._worker.busy)
        self._show_plots()

    def _tab(self, index: int) -> None:
        if index == self.tabs.count() - 1 and self.plots is None:
            from magview.ui.classroom.plots import ClassPlots

            plots = self.plots = ClassPlots(self.look)
            plots.chosen.connect(self._point_out)
            plots.said.connect(self.say)
            words = self.tabs.tabText(index)
            self.tabs.removeTab(index)
            self.tabs.addTab(plots, words)
            self.tabs.setCurrentIndex(self.tabs.count() - 1)
        self._show_plots()

    def _show_plots(self) -> None:
        from_plots = self.plots
        if from_plots is not None and self.summary is not None and self.tabs.currentWidget() is from_plots:
            from_plots.show_summary(self.summary)  # type: ignore[attr-defined]

    def _point_out(self, entry: AttemptEntry) -> None:
        self.attempts.choose(entry)
        self.say(tr("{pupil}, {exercise}: {percent} % in {minutes} minutes. Replay shows how.",
                    pupil=entry.result.pupil, exercise=entry.result.exercise, percent=f"{entry.result.percent:g}",
                    minutes=f"{entry.result.seconds / 60:.1f}"))  # fmt: skip

    def _open_pupil(self, pupil: PupilLine) -> None:
        """A pupil's attempts: the first of them is chosen."""
        if self.summary is not None:
            mine = next((e for e in self.summary.counted if e.result.key == pupil.key), None)
            self.tabs.setCurrentWidget(self.attempts)
            self.attempts.choose(mine)

    def _open_entry(self, entry: AttemptEntry) -> None:
        self.open_replay(entry.result)

    def open_chosen(self) -> None:
        """The replay of the attempt that is chosen."""
        entry = self.attempts.chosen()
        if isinstance(entry, AttemptEntry):
            self.open_replay(entry.result)
        else:
            self.tabs.setCurrentWidget(self.attempts)
            self.say(tr("Choose an attempt first"))

    def open_replay(self, result: Result) -> PracticePage | None:
        """The debrief of one attempt, with its replay."""
        if result.state is not State.MARKED or self._folder is None:
            self.say(result.why or tr("there is nothing to replay"))
            return None
        try:
            return self.room.practice.go_on(attempt_in(read_json(self._folder / result.file), result.file))
        except SpecError as error:
            self.say(str(error))
            return None

    # -------------------------------------------------------------- files

    def _read_set(self) -> None:
        text = self.set_field.text().strip()
        try:
            found = open_set(text) if text else self.room.set
        except SpecError as error:
            self.say(str(error))
            return
        if found != self._set:
            self._set, self.summary = found, None
            if self._folder is not None:
                self._work()

    def _ask_folder(self) -> None:
        path = ask_folder(self, tr("The class's folder"), self.folder.text())
        if path is not None:
            self.folder.setText(str(path))
            self.gather()

    def _ask_set(self) -> None:
        path = ask_open(self, tr("Open a set"), file_filter(tr("Class sets")))
        if path is not None:
            self.set_field.setText(str(path))
            self._read_set()

    def _ask_save(self) -> None:
        path = ask_save(self, tr("Save the attempts"), "class.csv", tr("Tables (*.csv)"))
        if path is not None:
            self.save_path(path)

    def save_path(self, path: Path) -> None:
        """Write every attempt as CSV."""
        if self.summary is None:
            return
        try:
            write_text(path, summary_csv(self.summary))
        except SpecError as error:
            self.say(str(error))
            return
        self.say(tr("Saved {file}.", file=path.name))

    def halt(self) -> None:
        """The window closes: nothing is looked at any more."""
        self._look.stop()
        self._soon.stop()
        self._worker.cancel()
