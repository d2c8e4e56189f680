"""The drafts of one's own: kept, found again, and worked on in one editor."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QObject, QTimer, Signal

from magview.bench.state import BenchState
from magview.own.files import keeper
from magview.spec.base import SpecError
from magview.spec.language import tr
from magview.ui.kit.asking import refuse
from magview.ui.kit.look import Look
from magview.ui.own.editor import OwnPage
from magview.ui.own.model import OwnModel


class OwnRoom(QObject):
    """One set of drafts for the whole program; its page may be closed and opened again."""

    opened = Signal(object)
    """This page is to come to the front."""
    bench_wanted = Signal(object)
    """Put this magneto or installation on the bench."""

    def __init__(self, look: Look, folder: Path | None, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._look = look
        self._bench: BenchState | None = None
        self.page: OwnPage | None = None
        self.model = OwnModel(parent=self)
        self._keeper = keeper(folder) if folder is not None else None
        self._keep_soon = QTimer(self)
        self._keep_soon.setSingleShot(True)
        self._keep_soon.setInterval(1000)
        self._keep_soon.timeout.connect(self.keep)
        found = self._keeper.recover() if self._keeper is not None else None
        self._found = found is not None
        if found is not None:
            self.model.restore(found)
        self.model.changed.connect(self._keep_later)

    def open(self) -> OwnPage:
        """Show the editor, opened now or brought to the front."""
        page = self.page
        if page is None:
            page = self.page = OwnPage(self.model, self._look)
            page.closed.connect(self._closed)
            page.files.bench = self._bench
            page.files.bench_wanted.connect(self.bench_wanted)
        self.opened.emit(page)
        if self._found:
            self._found = False
            page.say(tr("The drafts are as you left them."))
        return page

    def set_bench(self, state: BenchState, old: BenchState | None = None) -> None:
        """Take what is on the bench now, to begin a draft from."""
        self._bench = state
        if self.page is not None:
            self.page.files.bench = state

    def refuse(self, sentence: str) -> None:
        """Say in the editor why the bench did not take a draft."""
        if self.page is not None:
            refuse(self.page, sentence)

    def close(self) -> None:
        """The program ends: what no file holds is left to be found again, the rest forgotten."""
        if self.page is not None:
            self.page.close()
        self._keep_soon.stop()
        if self._keeper is None:
            return
        if self.model.any_unsaved:
            self.keep()
            self._keeper.leave()
        else:
            self._keeper.forget()

    def keep(self) -> None:
        """Keep the drafts for after a kill, or say once why they cannot be."""
        if self._keeper is None:
            return
        try:
            self._keeper.keep(self.model.own)
        except SpecError as error:
            self.model.said.emit(tr("The drafts cannot be kept for after a crash: {reason}", reason=error))

    def _keep_later(self) -> None:
        if self._keeper is not None and not self._keep_soon.isActive():
            self._keep_soon.start()

    def _closed(self) -> None:
        self.page = None
