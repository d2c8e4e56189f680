"""The class: its pages, one of each kind, put into the place where one practises."""

from __future__ import annotations

from pathlib import Path
from typing import Literal, cast

from magview.practice.exercise import Exercise
from magview.ui.classroom.kept import ClassKept
from magview.ui.classroom.page import ClassPage
from magview.ui.practice.place import PracticePlace

What = Literal["join", "make", "gather", "editor"]


class ClassRoom(ClassKept):
    """Opens the pages of the class."""

    def __init__(self, practice: PracticePlace, folder: Path | None = None) -> None:
        super().__init__(practice, folder)
        self.pages: dict[str, ClassPage] = {}
        """Those that are open, by kind."""

    def open(self, what: What) -> ClassPage:
        """Open a page, or bring it to the front."""
        found = self.pages.get(what)
        if found is None:
            found = self.pages[what] = self._build(what)
            found.closed.connect(self._closed)
            found.page_wanted.connect(self.open)
        self.practice.show_page(found)
        return found

    def _build(self, what: What) -> ClassPage:
        look = self.practice.look
        match what:
            case "join":
                from magview.ui.classroom.desk import ClassDesk

                return ClassDesk(self, look)
            case "make":
                from magview.ui.classroom.maker import ClassMaker

                return ClassMaker(self, look)
            case "gather":
                from magview.ui.classroom.gather import GatherPage

                return GatherPage(self, look)
            case "editor":
                from magview.ui.classroom.editor import ExerciseEditor

                editor = ExerciseEditor(self, look)
                editor.for_the_set.connect(self._add_to_set)
                return editor

    def _add_to_set(self, exercise: Exercise) -> None:
        from magview.ui.classroom.maker import ClassMaker

        cast(ClassMaker, self.open("make")).fields.add_exercise(exercise)

    def _closed(self, page: object) -> None:
        self.pages = {name: p for name, p in self.pages.items() if p is not page}

    def deliver_waiting(self) -> None:
        """Try again what an earlier session could not deliver."""
        self.courier.retry()

    def halt(self) -> None:
        """The program ends."""
        self.courier.halt()
