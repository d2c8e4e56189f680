"""The door to the guided editor: opens its window, keeps its drafts, puts what it made on the bench."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Qt, QTimer

from magview.bench.actions import PlaceInstallation, PlaceMagneto
from magview.own.files import keeper
from magview.spec.base import SpecError
from magview.spec.language import tr
from magview.spec.magneto import Magneto
from magview.ui.kit.asking import refuse
from magview.ui.own.model import OwnModel
from magview.ui.own.window import OwnWindow

if TYPE_CHECKING:
    from magview.ui.shell.window import MainWindow


class OwnRoom(QObject):
    """One set of drafts for the whole program; its window may be closed and opened again."""

    def __init__(self, window: MainWindow, folder: Path | None) -> None:
        super().__init__(window)
        self._main = window
        self.window: OwnWindow | None = None
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

    def open(self) -> OwnWindow:
        """Show the editor, opened now or brought to the front."""
        if self.window is not None:
            self.window.raise_()
            self.window.activateWindow()
            return self.window
        main = self._main
        window = self.window = OwnWindow(self.model, main.look)
        window.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        window.closed.connect(self._closed)
        window.files.bench = main.model.state
        main.model.changed.connect(self._bench_changed)
        window.files.bench_wanted.connect(self._place)
        window.resize(main.size())
        window.show()
        if self._found:
            self._found = False
            window.say(tr("The drafts are as you left them."))
        return window

    def close(self) -> None:
        """The program ends: what no file holds is left to be found again, the rest forgotten."""
        if self.window is not None:
            self.window.close()
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
        self._main.model.changed.disconnect(self._bench_changed)
        self.window = None

    def _bench_changed(self, state: object, old: object) -> None:
        if self.window is not None:
            self.window.files.bench = self._main.model.state

    def _place(self, item: object) -> None:
        main, window = self._main, self.window
        refusals: list[str] = []
        main.model.refused.connect(refusals.append)
        main.model.send(PlaceMagneto(item) if isinstance(item, Magneto) else PlaceInstallation(item))  # type: ignore[arg-type]
        main.model.refused.disconnect(refusals.append)
        if refusals and window is not None:
            refuse(window, refusals[0])
            return
        main.say(tr("What you drafted is on the bench; Undo brings the former back."))
        main.raise_()
        main.activateWindow()
