"""The bench's place: the bench itself, and the guided editor for files of one's own."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

from magview.bench import actions as do
from magview.bench.autosave import Autosave
from magview.spec.language import marked, tr
from magview.spec.magneto import Magneto
from magview.ui.bench.page import BenchPage
from magview.ui.kit.bench_model import BenchModel
from magview.ui.kit.look import Look
from magview.ui.kit.place import Page, Place

if TYPE_CHECKING:  # loaded when it is first asked for
    from magview.ui.own.room import OwnRoom

WORDS = marked("Bench")


class BenchPlace(Place):
    """The bench is there from the start; drafts stand beside it while they are worked on."""

    def __init__(self, model: BenchModel, look: Look, autosave: Autosave | None = None) -> None:
        super().__init__(look)
        self._folder = autosave.folder if autosave is not None else None
        self._own: OwnRoom | None = None
        self.page = BenchPage(model, look, autosave)
        self.page.own_wanted.connect(self.draft_own)
        self.go_home()

    def build_home(self) -> Page:
        """The bench."""
        return self.page

    @property
    def own(self) -> OwnRoom:
        """The drafts of one's own, and the editor that works on them."""
        if self._own is None:
            from magview.ui.own.room import OwnRoom

            model = self.page.model
            self._own = OwnRoom(self.look, self._folder, self)
            self._own.set_bench(model.state)
            model.changed.connect(self._own.set_bench)
            self._own.opened.connect(self.show_page)
            self._own.bench_wanted.connect(self._put)
        return self._own

    def draft_own(self) -> None:
        """Open the guided editor."""
        self.own.open()

    def halt(self) -> None:
        """The window closes: drafts that no file holds are left to be found again."""
        super().halt()
        if self._own is not None:
            self._own.close()

    @property
    def kept_in(self) -> Path | None:
        """Return the folder for what the program finds again."""
        return self._folder

    def _put(self, item: object) -> None:
        model, own = self.page.model, self.own
        refusals: list[str] = []
        model.refused.connect(refusals.append)
        model.send(do.PlaceMagneto(item) if isinstance(item, Magneto) else do.PlaceInstallation(item))  # type: ignore[arg-type]
        model.refused.disconnect(refusals.append)
        if refusals:
            own.refuse(refusals[0])
            return
        self.show_page(self.page)
        self.said.emit(tr("Your draft is on the bench; Undo brings the former back."))
