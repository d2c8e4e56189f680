"""State shared by the pages of the class: the courier, the set in hand, and texts kept between sessions."""

from __future__ import annotations

import contextlib
from pathlib import Path

from PySide6.QtCore import QObject

from magview.classroom.outbox import Outbox
from magview.classroom.sets import ClassSet, read_set, write_set
from magview.spec.base import SpecError
from magview.ui.classroom.delivery import Courier
from magview.ui.practice.place import PracticePlace
from magview.upkeep import places


class ClassKept(QObject):
    """One for the whole program."""

    def __init__(self, practice: PracticePlace, folder: Path | None = None) -> None:
        """`practice`: where exercises are worked at. `folder`: where this machine keeps what waits, and the marks;
        left out: the person's own place."""
        super().__init__(practice)
        self.practice = practice
        self.folder = folder or places.class_folder()
        self.courier = Courier(Outbox(self.folder / "outbox"), self)
        self.set: ClassSet | None = None
        """The set an instructor made or opened last, for gathering; kept for the next session."""
        with contextlib.suppress(SpecError):
            self.set = read_set(self.folder / "set.json")

    def keep_set(self) -> None:
        """Keep the set for the next session."""
        if self.set is not None:
            with contextlib.suppress(SpecError, OSError):
                self.folder.mkdir(parents=True, exist_ok=True)
                write_set(self.folder / "set.json", self.set)
