"""Work: job sheets, new, opened, the shipped one, recent ones; and readings noted on them from the bench."""

from __future__ import annotations

import datetime
from functools import partial
from pathlib import Path

from PySide6.QtWidgets import QMenu

from magview.job.blank_form import blank_form
from magview.job.feeds import FEEDS, Feed, Source
from magview.job.instruments import FILE
from magview.job.library import job_path, shipped_jobs
from magview.job.limits_cards import FOLDER, CardShelf, take_card
from magview.job.sheet import new_job
from magview.job.store import JobStore
from magview.paper.sizes import PaperSize
from magview.spec.base import SpecError
from magview.spec.formats import ENDING, file_filter
from magview.spec.language import tr, tr_n
from magview.spec.limits import LimitsCard
from magview.ui.kit.asking import ask_open, ask_save, refuse
from magview.ui.kit.bench_model import BenchModel
from magview.ui.kit.home_page import HomePage
from magview.ui.kit.look import Look
from magview.ui.kit.place import Page, Place
from magview.ui.kit.settings import keep, kept_texts
from magview.ui.work.cards_page import CardsPage
from magview.ui.work.instruments import InstrumentsDialog, Shelf
from magview.ui.work.sheet_page import JobPage

_MAX_RECENT = 8
_RECENT = "recent-jobs"
"""Name of the setting that keeps the files of recent sheets."""


def spare_in(folder: Path | None) -> Path | None:
    """Folder of copies of sheets that could not be written to their files."""
    return None if folder is None else folder / "not-saved"


class WorkPlace(Place):
    """Job sheets stand here side by side. Each is in its file at once: beginning another one loses nothing."""

    def __init__(self, look: Look, bench: BenchModel, source: Source, folder: Path | None) -> None:
        """`folder`: each person's own place for what programs keep; without one nothing is kept there."""
        super().__init__(look)
        self._bench, self._source, self._folder = bench, source, folder
        self._shelf = Shelf(None if folder is None else folder.parent / FILE)
        self._cards = CardShelf(None if folder is None else folder.parent / FOLDER)

        self._limits: LimitsCard | None = None
        """The card whose limits the sheet that is asked for begins with."""

    def build_home(self) -> Page:
        """Sheets to begin, open or look at, those under way, and those worked on lately."""
        acts = (
            (tr("&New job sheet…"), self.ask_new),
            (tr("&Open job sheet…"), self.ask_open),
            (tr("Look at the &shipped job sheet"), self.open_shipped),
            (tr("Limits &cards"), self.open_cards),
            (tr("&Instruments of your own…"), self.edit_instruments),
            (tr("Blank form for the pencil, &A4…"), partial(self.ask_blank, "a4")),
            (tr("Blank form for the pencil, &Letter…"), partial(self.ask_blank, "letter")),
        )
        home = HomePage(self.look, tr("Work"), acts)
        home.list(tr("&Under way"), self.under_way, self.go_on_with)
        home.list(tr("&Recent job sheets"), self.recent_named, self.open_recent)
        return home

    # -------------------------------------------------------------- opening

    def ask_new(self) -> None:
        """Ask where a new sheet is to be kept: it is in its file from the first entry on."""
        day = datetime.date.today().isoformat()
        name = self._beside() / f"magneto-{day}-job{ENDING}"
        # An existing file is never replaced, so there is nothing for the dialog to confirm.
        title = tr("Where is the new job sheet to be kept?")
        path = ask_save(self, title, name, file_filter(tr("Job sheets")), asks_itself=True)
        if path is not None:
            self.new(path)

    def new(self, path: Path) -> JobPage | None:
        """Begin a sheet, dated today."""
        try:
            job = new_job(day=datetime.date.today().isoformat())
            job = job if self._limits is None else take_card(job, self._limits)
            store = JobStore.create(path, job, spare=self._spare)
        except SpecError as error:
            refuse(self, str(error))
            return None
        return self._open(store)

    def ask_open(self) -> None:
        """Ask for a sheet's file."""
        kinds = file_filter(tr("Job sheets"))
        path = ask_open(self, tr("Open a job sheet"), kinds, self._beside())
        if path is not None:
            self.open_path(path)

    def open_path(self, path: Path) -> JobPage | None:
        """Go on with a sheet; one that is open already comes to the front."""
        for page in self.sheets:
            if page.model.store.path == path.resolve():
                self.show_page(page)
                return page
        try:
            store = JobStore.open(path, spare=self._spare)
        except SpecError as error:
            refuse(self, str(error))
            return None
        return self._open(store)

    def open_shipped(self) -> JobPage | None:
        """Look at the shipped sheet. It is kept as it is: to work on it, save it under a name of one's own."""
        path = job_path(shipped_jobs()[0])
        try:
            store = JobStore.open(path)
        except SpecError as error:
            refuse(self, str(error))
            return None
        store.close()
        store.read_only = tr(
            "this sheet ships with the program and stays as it is; save it under a name of your own to work on it"
        )
        return self._open(store, fixed=True)

    def ask_blank(self, paper: PaperSize) -> Path | None:
        """Ask where, and print the blank form there; None if nowhere."""
        from magview.ui.paper.pdf import print_pdf

        name = self._beside() / f"magneto-blank-form-{paper}.pdf"
        path = ask_save(self, tr("Print the blank form to PDF"), name, tr("PDF (*.pdf)"))
        if path is None:
            return None
        try:
            pages = print_pdf(path, blank_form(paper, inches=self.look.inches))
        except SpecError as error:
            refuse(self, str(error))
            return None
        self.said.emit(
            tr_n(
                "✓ Printed {count} page to {file}.", "✓ Printed {count} pages to {file}.", count=pages, file=path.name
            )
        )
        return path

    def edit_instruments(self) -> InstrumentsDialog:
        """Show the list of instruments that sheets choose from."""
        dialog = InstrumentsDialog(self._shelf, self.look, parent=self.home.window())
        dialog.open()
        return dialog

    # -------------------------------------------------------------- limits cards

    def open_cards(self) -> CardsPage:
        """Show the limits cards."""
        page = next((p for p in self.open_pages if isinstance(p, CardsPage)), None)
        if page is None:
            page = CardsPage(self.look, self._cards)
            page.sheet_wanted.connect(self.ask_new_with)
        self.show_page(page)
        return page

    def open_card(self, path: Path) -> None:
        """Show a card's file among the limits cards."""
        self.open_cards().open_path(path)

    def ask_new_with(self, card: LimitsCard) -> None:
        """Ask where a new sheet is to be kept, and begin it with a card's limits."""
        self._limits = card
        self.ask_new()
        self._limits = None

    # -------------------------------------------------------------- opening, as both do

    def _open(self, store: JobStore, fixed: bool = False) -> JobPage:
        page = JobPage(store, self._bench, self._source, self.look, fixed, self._shelf)
        page.new_wanted.connect(self.ask_new)
        page.open_wanted.connect(self.ask_open)
        page.path_wanted.connect(self.open_path)
        page.looked_at.connect(self._looked_at)
        page.closed.connect(self._sheet_closed)
        if not fixed:
            self._remember(store.path)
        self.show_page(page)
        return page

    def _looked_at(self, page: JobPage) -> None:
        if page in self.open_pages:
            self.open_pages = [*(p for p in self.open_pages if p is not page), page]

    def _sheet_closed(self, page: JobPage) -> None:
        self._remember(page.model.store.path)

    @property
    def sheets(self) -> list[JobPage]:
        """The sheets that are open, the one looked at last at the end."""
        return [page for page in self.open_pages if isinstance(page, JobPage)]

    @property
    def _spare(self) -> Path | None:
        return spare_in(self._folder)

    def _beside(self) -> Path:
        recent = self.recent()
        return recent[0].parent if recent else Path.home()

    # -------------------------------------------------------------- from the bench

    def note(self, feed: Feed) -> None:
        """Note something on the sheet looked at last, and show it there."""
        if not self.sheets:
            self.said.emit(tr("No job sheet is open: open one, or begin a new one, from the Job menu."))
            return
        page = self.sheets[-1]
        self.show_page(page)
        page.note(feed)

    def fill(self, notes: QMenu, recent: QMenu) -> None:
        """Fill the two menus as they are looked at."""
        notes.clear()
        page = FEEDS[0].page
        for feed in FEEDS:
            if feed.page != page:
                notes.addSeparator()
                page = feed.page
            action = notes.addAction(feed.words)
            action.setStatusTip(tr(feed.tip))
            action.triggered.connect(partial(self.note, feed))
        recent.clear()
        for path in self.recent():
            action = recent.addAction(path.name)
            action.setStatusTip(str(path))
            action.triggered.connect(partial(self.open_path, path))
        recent.setEnabled(bool(recent.actions()))

    # -------------------------------------------------------------- recent sheets

    def recent(self) -> list[Path]:
        """Sheets worked on lately that are still there, the latest first."""
        return [Path(name) for name in kept_texts(_RECENT) if Path(name).is_file()][:_MAX_RECENT]

    def recent_named(self) -> list[tuple[str, object]]:
        """Recent sheets by the names of their files."""
        return [(path.name, path) for path in self.recent()]

    def open_recent(self, path: object) -> None:
        """Open a sheet that was worked on lately."""
        if isinstance(path, Path):
            self.open_path(path)

    def _remember(self, path: Path) -> None:
        if path.parent != job_path(shipped_jobs()[0]).parent:
            keep(_RECENT, [str(path), *(str(p) for p in self.recent() if p != path)][:_MAX_RECENT])
