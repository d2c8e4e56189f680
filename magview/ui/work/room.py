"""The door to job sheets: new, open, the shipped one, recent ones; and what the workbench has for them."""

from __future__ import annotations

import datetime
import json
from collections.abc import Sequence
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING, cast

from PySide6.QtCore import QObject, Qt
from PySide6.QtWidgets import QMenu

from magview.bench.state import BenchState
from magview.bench.sureness import INTERNAL_ROLES
from magview.job.library import job_path, shipped_jobs
from magview.job.sheet import new_job
from magview.job.store import JobStore
from magview.physics.engine.coupling import Move
from magview.physics.uncertainty.instruments import Instrument, instrument
from magview.physics.uncertainty.measurement import Outcome
from magview.spec.base import SpecError
from magview.spec.files import read_json, write_text
from magview.spec.formats import ENDING, file_filter
from magview.spec.language import tr
from magview.ui.kit.asking import ask_open, ask_save, refuse
from magview.ui.work.sources import FEEDS, Feed
from magview.ui.work.window import JobWindow

if TYPE_CHECKING:
    from magview.ui.bench.uncertainty_panel import UncertaintyPanel
    from magview.ui.shell.window import MainWindow

_MOST_RECENT = 8


class Workbench:
    """What the main window can be asked for. Its pages are built when they are asked."""

    def __init__(self, window: MainWindow) -> None:
        self._window = window

    @property
    def state(self) -> BenchState:
        """The bench as it stands."""
        return self._window.model.state

    @property
    def _uncertainty(self) -> UncertaintyPanel:
        return cast("UncertaintyPanel", self._window.panel_of("uncertainty"))

    @property
    def tools(self) -> Sequence[Instrument]:
        """The instruments chosen for reading the internal timing."""
        return tuple(instrument(self._uncertainty.tools[role].currentData()) for role in INTERNAL_ROLES)

    @property
    def outcomes(self) -> Sequence[Outcome]:
        """How sure the measurement on the Uncertainty page is."""
        assert self._uncertainty is not None
        return self._window.judging.outcomes

    @property
    def stops(self) -> tuple[float, float] | None:
        """The stop readings of the Engine page; None until both were entered."""
        return self._window.timing.stop.read

    @property
    def move(self) -> Move | None:
        """The move chosen in the planner's list."""
        return self._window.timing.plan.chosen

    @property
    def wanted_gap_mm(self) -> float:
        """The gap wanted on the Internal page [mm]."""
        return self._window.panel.wanted.exact


class JobRoom(QObject):
    """Opens job sheets in windows that share the workbench's colours and size of type."""

    def __init__(self, window: MainWindow, folder: Path | None) -> None:
        """`folder`: each person's own place for what programs keep; without one nothing is kept there."""
        super().__init__(window)
        self._window, self._folder = window, folder
        self._workbench = Workbench(window)
        self.windows: list[JobWindow] = []
        """Those that are open, the one looked at last at the end."""

    # -------------------------------------------------------------- opening

    def ask_new(self) -> None:
        """Ask where a new sheet is to be kept: it is in its file from the first entry on."""
        day = datetime.date.today().isoformat()
        name = self._beside() / f"magneto-{day}-job{ENDING}"
        # An existing file is never replaced, so there is nothing for the dialog to confirm.
        title = tr("Where is the new job sheet to be kept?")
        path = ask_save(self._parent, title, name, file_filter(tr("Job sheets")), asks_itself=True)
        if path is not None:
            self.new(path)

    def new(self, path: Path) -> JobWindow | None:
        """Begin a sheet, dated today."""
        try:
            store = JobStore.create(path, new_job(day=datetime.date.today().isoformat()), spare=self._spare)
        except SpecError as error:
            refuse(self._parent, str(error))
            return None
        return self._open(store)

    def ask_open(self) -> None:
        """Ask for a sheet's file."""
        kinds = file_filter(tr("Job sheets"))
        path = ask_open(self._parent, tr("Open a job sheet"), kinds, self._beside())
        if path is not None:
            self.open_path(path)

    def open_path(self, path: Path) -> JobWindow | None:
        """Go on with a sheet; one that is open already comes to the front."""
        for window in self.windows:
            if window.model.store.path == path.resolve():
                self._front(window)
                return window
        try:
            store = JobStore.open(path, spare=self._spare)
        except SpecError as error:
            refuse(self._parent, str(error))
            return None
        return self._open(store)

    def open_shipped(self) -> JobWindow | None:
        """Look at the shipped sheet. It is kept as it is: to work on it, save it under a name of one's own."""
        path = job_path(shipped_jobs()[0])
        try:
            store = JobStore.open(path)
        except SpecError as error:
            refuse(self._parent, str(error))
            return None
        store.close()
        store.read_only = tr(
            "this sheet ships with the program and stays as it is; save it under a name of your own to work on it"
        )
        return self._open(store, fixed=True)

    def _open(self, store: JobStore, fixed: bool = False) -> JobWindow:
        main = self._window
        window = JobWindow(store, main.model, self._workbench, main.look, fixed)
        window.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        window.new_wanted.connect(self.ask_new)
        window.open_wanted.connect(self.ask_open)
        window.path_wanted.connect(self.open_path)
        window.looked_at.connect(self._looked_at)
        window.closed.connect(self._closed)
        self.windows.append(window)
        if not fixed:
            self._remember(store.path)
        window.resize(main.size())
        window.show()
        return window

    def _front(self, window: JobWindow) -> None:
        window.show()
        window.raise_()
        window.activateWindow()

    def _looked_at(self, window: JobWindow) -> None:
        if window in self.windows:
            self.windows.remove(window)
            self.windows.append(window)

    def _closed(self, window: JobWindow) -> None:
        self._remember(window.model.store.path)
        self.windows = [w for w in self.windows if w is not window]

    @property
    def _parent(self) -> MainWindow | JobWindow:
        """The window that asks: the sheet in front, or the workbench."""
        front = self.windows[-1] if self.windows else None
        return front if front is not None and front.isActiveWindow() else self._window

    @property
    def _spare(self) -> Path | None:
        return None if self._folder is None else self._folder / "not-saved"

    def _beside(self) -> Path:
        recent = self.recent()
        return recent[0].parent if recent else Path.home()

    # -------------------------------------------------------------- from the bench

    def note(self, feed: Feed) -> None:
        """Note something on the sheet looked at last, and show it there."""
        if not self.windows:
            self._window.say(tr("No job sheet is open: open one, or begin a new one, from the Job menu."))
            return
        window = self.windows[-1]
        self._front(window)
        window.note(feed)

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
        if self._folder is None:
            return []
        try:
            found = read_json(self._folder / "recent-jobs.json")
        except SpecError:  # none yet, or a list that somebody damaged: then there is none
            return []
        names = found if isinstance(found, list | tuple) else ()
        return [Path(n) for n in names if isinstance(n, str) and Path(n).is_file()][:_MOST_RECENT]

    def _remember(self, path: Path) -> None:
        if self._folder is None or path.parent == job_path(shipped_jobs()[0]).parent:
            return
        names = [str(path), *(str(p) for p in self.recent() if p != path)][:_MOST_RECENT]
        try:
            self._folder.mkdir(parents=True, exist_ok=True)
            write_text(self._folder / "recent-jobs.json", json.dumps(names, ensure_ascii=False))
        except (SpecError, OSError):
            return  # the list is a convenience; the sheet itself is where it belongs
