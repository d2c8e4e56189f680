"""The job sheet: stages at the left, the page of one at the right, cautions at the foot, always saved."""

from __future__ import annotations

from collections.abc import Sequence
from functools import partial
from pathlib import Path

from PySide6.QtCore import QEvent, Qt, QTimer, Signal
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import (
    QInputDialog,
    QLabel,
    QMenu,
    QMessageBox,
    QSplitter,
    QStackedWidget,
    QToolBar,
    QVBoxLayout,
    QWidget,
)

from magview.job.danger import dangers
from magview.job.feeds import Feed, Source, noted
from magview.job.history import Drift, identity
from magview.job.offered import as_before
from magview.job.photographs import amiss
from magview.job.read_with import last_used, names_in, with_instruments
from magview.job.requirements import skip_refusal
from magview.job.sheet import NEVER_SKIPPED, STAGES, Job
from magview.job.store import JobStore
from magview.paper.sizes import PaperSize
from magview.spec.formats import ENDING, file_filter
from magview.spec.language import tr
from magview.ui.kit import place
from magview.ui.kit.asking import ACCEPT, DESTROY, REJECT, ask, refuse
from magview.ui.kit.bench_model import BenchModel
from magview.ui.kit.cautions import CAUTION
from magview.ui.kit.look import Look
from magview.ui.kit.strip import Foot
from magview.ui.work.bars import Banner, Contents, Danger, StageBar
from magview.ui.work.end_page import EndPage
from magview.ui.work.history import HistoryPage
from magview.ui.work.instruments import InstrumentsDialog, Shelf, used_last
from magview.ui.work.menus import JobMenus
from magview.ui.work.model import HEAD, JobModel, part_title
from magview.ui.work.page import HeadPage, Page, StagePage
from magview.ui.work.preview import PreviewPage
from magview.ui.work.reports import Reports, help_words

END, HISTORY, PREVIEW = "end", "history", "preview"
PAGES = (HEAD, *STAGES, END, HISTORY, PREVIEW)


class JobPage(place.Page):
    """One job sheet. All it knows is in the store; what is done here is in the file at once."""

    new_wanted = Signal()
    open_wanted = Signal()
    path_wanted = Signal(object)
    """Another sheet is to be begun, asked for, or opened from this file."""
    looked_at = Signal(object)
    """This page is in front now."""

    def __init__(
        self,
        store: JobStore,
        bench: BenchModel,
        source: Source,
        look: Look,
        fixed: bool = False,
        shelf: Shelf | None = None,
    ) -> None:
        """`fixed`: the sheet ships with the program and is only looked at; `shelf`: instruments of one's own."""
        super().__init__(look)
        self._shelf = shelf or Shelf(None)
        self._source = source
        self.model = JobModel(store, fixed, self)
        self.reports = Reports(self, self)
        self._pages: dict[str, Page] = {}
        self._identity: object = None
        self._refusing = False
        self.history = HistoryPage(self.model, bench, look)
        self.preview = PreviewPage(self.model)
        self.contents = Contents(self.model, PAGES)
        self.stack = QStackedWidget()
        self.bar, self.banner, self.danger = (
            StageBar(self.model, look),
            Banner(self.model, self),
            Danger(self.model, look),
        )
        self.saved = QLabel()
        self._lay_out()
        self.menus = JobMenus(self, self, look)
        self.tools = QToolBar(tr("Job sheet"))
        self.tools.addWidget(self.saved)
        self.model.changed.connect(self._changed)
        self.model.refused.connect(self._refused)
        self.model.righted.connect(self._righted)
        self._changed(self.model.job)
        self.show_page(HEAD)

    # -------------------------------------------------------------- building

    def _lay_out(self) -> None:
        for page in PAGES:
            self._pages[page] = self._build(page)
            self.stack.addWidget(self._pages[page])
        right = QWidget()
        column = QVBoxLayout(right)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(self.stack, 1)
        column.addWidget(self.bar)
        self.split = QSplitter(Qt.Orientation.Horizontal)
        self.split.addWidget(self.contents)
        self.split.addWidget(right)
        for i, stretch in enumerate((0, 1)):
            self.split.setStretchFactor(i, stretch)
            self.split.setCollapsible(i, False)
        self.caution = Foot(self.look, f"⚠ {tr(CAUTION)}")
        self.caution.setContentsMargins(8, 4, 8, 4)
        whole = QWidget()
        column = QVBoxLayout(whole)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(self.danger)
        column.addWidget(self.banner)
        column.addWidget(self.split, 1)
        column.addWidget(self.caution)
        self.fill(whole)
        self.contents.chosen.connect(self._chosen)
        self.bar.done_wanted.connect(self.finish_stage)
        self.bar.skip_wanted.connect(self.ask_skip)
        self.bar.open_wanted.connect(self.open_stage)
        self.bar.next_wanted.connect(partial(self.go, 1))
        self.banner.retry_wanted.connect(self.model.retry)
        self.banner.save_as_wanted.connect(self.ask_save_as)
        self.banner.reload_wanted.connect(self.ask_reload)
        self.history.opened.connect(self.path_wanted)
        self.history.said.connect(self.answer)
        self.history.worker.finished.connect(self._history_read)
        self.preview.print_wanted.connect(self.ask_pdf)

    def _build(self, page: str) -> Page:
        if page == HISTORY:
            return self.history
        if page == PREVIEW:
            return self.preview
        if page == END:
            return EndPage(self.model, self.look)
        made = HeadPage(self.model, self.look) if page == HEAD else StagePage(self.model, page, self.look)
        made.feed_wanted.connect(self.note)
        if isinstance(made, StagePage):
            made.instruments_wanted.connect(self.choose_instruments)
        return made

    # -------------------------------------------------------------- pages

    @property
    def page_name(self) -> str:
        """The page in front."""
        return PAGES[self.stack.currentIndex()]

    @property
    def page(self) -> Page:
        """The page in front, itself."""
        return self._pages[self.page_name]

    def show_page(self, name: str) -> None:
        """Bring a page to the front."""
        self.contents.choose(name)

    def go(self, by: int) -> None:
        """The next page, or the one before."""
        self.show_page(PAGES[max(0, min(len(PAGES) - 1, self.stack.currentIndex() + by))])

    def go_to_stages(self) -> None:
        """Put the keys on the list of stages."""
        self.contents.list.setFocus(Qt.FocusReason.ShortcutFocusReason)

    def go_to_danger(self) -> None:
        """Show the stage that gives cause for the first warning; where there is none, the proof of the leads."""
        found = dangers(self.model.job)
        self.show_page(found[0].stage if found else NEVER_SKIPPED[-1])

    def _chosen(self, name: str) -> None:
        self.page.finish()
        if name == PREVIEW:
            self.print_earlier()
        self.bar.show_page(name if name in STAGES else None)
        self.stack.setCurrentWidget(self._pages[name])

    # -------------------------------------------------------------- showing

    def _changed(self, job: Job, old: Job | None = None) -> None:
        store = self.model.store
        self.setWindowTitle(tr("{name} – job sheet", name=job.title or store.path.name))
        if store.read_only is not None:
            self.saved.setText(tr("Read only: {file}", file=store.path.name))
        elif store.trouble is not None:
            self.saved.setText(tr("✗ Not saved"))
        else:
            self.saved.setText(tr("✓ Saved in {file}", file=store.path.name))
        if old is not None and job != old:
            self._righted()
        if old is None or job.next_check != old.next_check:
            self._show_late()
        if identity(job) != self._identity:
            self._identity = identity(job)
            if self._identity is not None:
                QTimer.singleShot(0, self, self.history.search)

    def _history_read(self) -> None:
        self.contents.tell(HISTORY, tr("{count} found", count=len(self.history.found)))
        self._show_late()
        due = self.history.due()
        if due and not self.history.isVisible():
            self.answer(due)

    def _show_late(self) -> None:
        end, drift = self._pages[END], self.history.drift
        assert isinstance(end, EndPage)
        end.show_late(drift.late_check if drift is not None else "")

    def answer(self, sentence: str) -> None:
        """Put one sentence under the page, where it stays until something else is done."""
        self._refusing = False
        self.bar.say(f"{sentence[:1].upper()}{sentence[1:]}")

    def _refused(self, sentence: str) -> None:
        self.answer(sentence)
        self._refusing = True

    def _righted(self) -> None:
        """Remove the refusal of what was put right."""
        if self._refusing:
            self.answer("")

    def changeEvent(self, event: QEvent) -> None:
        """In front again: has somebody changed the file meanwhile?"""
        super().changeEvent(event)
        if event.type() == QEvent.Type.ActivationChange and self.isActiveWindow() and self.isVisible():
            self._seen_again()

    def showEvent(self, event: QShowEvent) -> None:
        """Brought to the front, among other pages."""
        super().showEvent(event)
        self._seen_again()

    def _seen_again(self) -> None:
        self.looked_at.emit(self)
        self.check_file()

    def check_file(self) -> None:
        """Say that another program changed the file; where this page only reads, show what it made of it."""
        store = self.model.store
        if not store.changed_on_disk():
            self.banner.show_conflict(False)
        elif store.read_only is not None:
            self.model.reload()
        else:
            self.banner.show_conflict(True)

    # -------------------------------------------------------------- the work

    def note(self, feed: Feed) -> bool:
        """Note what the bench has, and show it; or say in one sentence why it has nothing."""
        self.page.finish()
        self.show_page(feed.page)
        name = tr("{what}, from the bench", what=feed.words)
        sentence = self.model.commit(lambda job: noted(job, feed, self._source), name)
        self.answer(sentence or tr("✓ Noted from the bench: {what}.", what=feed.words))
        return not sentence

    def choose_instruments(self, stage: str) -> InstrumentsDialog:
        """Ask which instruments a stage was read with; those of the stage, else those used last, are ticked."""
        self.page.finish()
        job = self.model.job
        known = names_in(job, stage) or tuple(i.name for i in last_used(job, stage)) or tuple(used_last())
        dialog = InstrumentsDialog(self._shelf, self.look, part_title(stage), known, self)
        name = tr("{stage}: instruments", stage=part_title(stage))
        dialog.chosen.connect(lambda found: self.model.step(lambda job: with_instruments(job, stage, found), name))
        dialog.open()
        return dialog

    def undo(self) -> None:
        """Go back one step, and say which."""
        self.page.finish()
        name = self.model.store.undo_name
        self.model.undo()
        if name is not None:
            self.answer(tr("Undone: {step}.", step=name))

    def redo(self) -> None:
        """Go forward one step, and say which."""
        name = self.model.store.redo_name
        self.model.redo()
        if name is not None:
            self.answer(tr("Done again: {step}.", step=name))

    def finish_stage(self) -> None:
        """Mark the stage in front as done, and go on to the next page; or say what is missing."""
        self.page.finish()
        who = as_before(self.model.job, self.page_name) if self.page_name in STAGES else ""
        if self.page_name in STAGES and self.model.finish(self.page_name):
            done = self.page_name
            self._go_on()
            self.bar.say_done(self.model.job, done, who)

    def _go_on(self) -> None:
        """The next page, and the keyboard on its first entry, where the work goes on."""
        self.go(1)
        forms = self.page.forms()
        edits = [edit for edit in forms[0].edits.values() if edit.isEnabled()] if forms else []
        if edits:
            edits[0].setFocus(Qt.FocusReason.TabFocusReason)

    def ask_skip(self) -> None:
        """Ask for a reason, and skip the stage in front."""
        if self.page_name not in STAGES:
            return
        if self.page_name in NEVER_SKIPPED:
            self._refused(skip_refusal(self.model.job, self.page_name, ""))
            return
        dialog = QInputDialog(self)
        dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        dialog.setWindowTitle(tr("Skip a stage"))
        dialog.setLabelText(tr("Why is “{stage}” skipped?", stage=part_title(self.page_name)))
        dialog.setOkButtonText(tr("Skip it"))
        dialog.resize(60 * self.fontMetrics().averageCharWidth(), dialog.sizeHint().height())
        dialog.textValueSelected.connect(partial(self._skip, self.page_name))
        dialog.open()

    def _skip(self, stage: str, reason: str) -> None:
        if self.model.skip(stage, reason):
            if self.page_name == stage:
                self._go_on()
            self.answer(tr("Skipped: {stage}.", stage=part_title(stage)))

    def open_stage(self) -> None:
        """Open the stage in front again."""
        if self.page_name in STAGES and self.model.open_again(self.page_name):
            self.answer(tr("Opened again; its readings stand."))

    # -------------------------------------------------------------- the file

    def ask_save_as(self) -> None:
        """Ask where, and go on there."""
        path = self.reports.ask_path(tr("Save the job sheet as"), f"-job{ENDING}", file_filter(tr("Job sheets")))
        if path is not None:
            self.save_as(path)

    def save_as(self, path: Path) -> None:
        """Go on in another file, history and all."""
        self.page.finish()
        if self.model.save_as(path):
            self.history.again_later()
            wrong = amiss(self.model.job.photographs, path.parent)
            told = (tr("Saved; from now on in {file}.", file=path.name), *(f"✗ {sentence}." for sentence in wrong))
            self.answer(" ".join(told))

    def ask_reload(self) -> None:
        """Take what is in the file; first ask, if something here is not in it."""
        if self.model.store.trouble is None:
            self._reload()
            return
        ask(
            self,
            tr("Reload the sheet from its file?"),
            (tr("&Reload"), ACCEPT, self._reload),
            (tr("&Keep what is here"), REJECT, None),
            more=tr("Entries that are not in the file are given up; save them elsewhere first."),
        )

    def _reload(self) -> None:
        self.model.reload()
        self.check_file()

    def may_close(self) -> bool:
        """Take what is being typed; what is not in the file is not lost by a click."""
        self.page.finish()
        if self.model.store.trouble is not None:
            self._ask_close(self.model.store.trouble)
            return False
        return True

    def _ask_close(self, trouble: str) -> None:
        ask(
            self,
            tr("Not saved: {sentence}.", sentence=trouble),
            (tr("&Save as…"), ACCEPT, self.ask_save_as),
            (tr("Close &without saving"), DESTROY, self.discard),
            (tr("&Go on"), REJECT, None),
            icon=QMessageBox.Icon.Warning,
        )

    def discard(self) -> None:
        """Close, and give up what is not in the file."""
        self.model.store.trouble = None
        self.close()

    def halt(self) -> None:
        """End what runs, and let go of the file."""
        for page in self._pages.values():
            page.halt()
        self.model.store.close()

    # -------------------------------------------------------------- reports, looks

    def ask_pdf(self, paper: str) -> None:
        """Ask where, and print there."""
        self.page.finish()
        self.reports.ask_pdf(paper)

    def ask_html(self) -> None:
        """Ask where, and write the sheet as HTML."""
        self.reports.ask_html()

    def ask_csv(self) -> None:
        """Ask where, and write the readings as a table."""
        self.reports.ask_csv()

    def ask_json(self) -> None:
        """Ask where, and write the readings for programs."""
        self.reports.ask_json()

    def print_earlier(self, _: bool = True) -> None:
        """Whether earlier sheets are printed, too."""
        self.preview.show_drift(self.drift)
        if self.preview.isVisible():
            self.preview.show_pages()

    def refuse(self, sentence: str) -> None:
        """Say why something could not be done."""
        refuse(self, sentence)

    def finish(self) -> None:
        """Take what is being typed."""
        self.page.finish()

    @property
    def drift(self) -> Drift | None:
        """Earlier sheets to go into the report; None if there are none, or they are not wanted."""
        return self.history.drift if self.menus.with_earlier.isChecked() else None

    @property
    def paper(self) -> PaperSize:
        """The paper chosen for printing."""
        return self.preview.chosen_paper

    def new_job(self) -> None:
        """Begin another sheet; this one stays."""
        self.new_wanted.emit()

    def open_job(self) -> None:
        """Open another sheet; this one stays."""
        self.open_wanted.emit()

    def bar_menus(self) -> Sequence[QMenu]:
        """The file, its steps, its stages, the bench's readings, reports."""
        return self.menus.made

    def help_words(self) -> str:
        """Keys, what is saved when, cautions."""
        return help_words()
