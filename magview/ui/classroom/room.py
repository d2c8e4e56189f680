"""The door to the class: opens its windows, carries what pupils hand in, and keeps where things were."""

from __future__ import annotations

import contextlib
import json
from pathlib import Path
from typing import TYPE_CHECKING, Literal

from PySide6.QtCore import QObject

from magview.classroom.outbox import Outbox
from magview.classroom.sets import ClassSet, read_set, write_set
from magview.spec.base import SpecError
from magview.spec.files import read_json, write_text
from magview.ui.classroom.delivery import Courier
from magview.ui.classroom.window import ClassWindow
from magview.upkeep import places

if TYPE_CHECKING:
    from magview.ui.shell.window import MainWindow

What = Literal["join", "make", "gather", "editor"]


class ClassRoom(QObject):
    """Opens the class's windows, one of each kind; they share the workbench's colours."""

    def __init__(self, window: MainWindow, folder: Path | None = None) -> None:
        """`folder`: where this machine keeps what waits, and the marks; left out: the person's own place."""
        super().__init__(window)
        self.main = window
        self.folder = folder or places.class_folder()
        self.courier = Courier(Outbox(self.folder / "outbox"), self)
        self.windows: dict[str, ClassWindow] = {}
        """Those that are open, by kind."""
        self.set: ClassSet | None = None
        """The set an instructor made or opened last, for gathering; kept for the next session."""
        with contextlib.suppress(SpecError):
            self.set = read_set(self.folder / "set.json")

    def open(self, what: What) -> ClassWindow:
        """Open a window, or bring it to the front."""
        found = self.windows.get(what)
        if found is None:
            found = self.windows[what] = self._build(what)
            found.closed.connect(self._closed)
            size = self.main.size()
            found.resize(size if what != "join" else size * 0.62)
        found.show()
        found.raise_()
        found.activateWindow()
        return found

    def _build(self, what: What) -> ClassWindow:
        match what:
            case "join":
                from magview.ui.classroom.desk import ClassDesk

                return ClassDesk(self)
            case "make":
                from magview.ui.classroom.maker import ClassMaker

                return ClassMaker(self)
            case "gather":
                from magview.ui.classroom.gather import GatherWindow

                return GatherWindow(self)
            case "editor":
                from magview.ui.classroom.editor import ExerciseEditor

                return ExerciseEditor(self)

    def _closed(self, window: object) -> None:
        self.windows = {name: w for name, w in self.windows.items() if w is not window}

    def deliver_waiting(self) -> None:
        """Try again what an earlier session could not deliver."""
        self.courier.retry()

    def halt(self) -> None:
        """The program ends."""
        for window in list(self.windows.values()):
            window.close()
        self.courier.halt()

    # -------------------------------------------------------------- what is remembered

    def recall(self, name: str) -> str:
        """A text kept from an earlier session; "" where there is none."""
        return self._kept().get(name, "")

    def remember(self, **values: str) -> None:
        """Keep texts for the next session; where that cannot be, they are asked for again."""
        kept = {**self._kept(), **values}
        try:
            self.folder.mkdir(parents=True, exist_ok=True)
            write_text(self.folder / "class.json", json.dumps(kept, ensure_ascii=False))
        except (SpecError, OSError):
            return

    def keep_set(self) -> None:
        """Keep the set for the next session."""
        if self.set is not None:
            with contextlib.suppress(SpecError, OSError):
                self.folder.mkdir(parents=True, exist_ok=True)
                write_set(self.folder / "set.json", self.set)

    def _kept(self) -> dict[str, str]:
        try:
            data = read_json(self.folder / "class.json")
        except SpecError:
            return {}
        return {k: v for k, v in data.items() if isinstance(v, str)} if isinstance(data, dict) else {}
