"""Start: the doors to the three places where one learns, practises and works."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial

from magview.spec.language import tr
from magview.ui.kit.look import Look
from magview.ui.kit.place import Page, Place
from magview.ui.learn.place import LearnPlace
from magview.ui.practice.place import PracticePlace
from magview.ui.start.page import Door, StartPage
from magview.ui.work.place import WorkPlace


class StartPlace(Place):
    """One page, which is as new each time it is seen."""

    def __init__(self, look: Look, learn: LearnPlace, practice: PracticePlace, work: WorkPlace) -> None:
        super().__init__(look)
        self._learn, self._practice, self._work = learn, practice, work

    def build_home(self) -> Page:
        """The doors."""
        doors = (
            Door(
                tr("Learn"),
                tr("Short lessons, step by step, with names and numbers on the pictures."),
                partial(self._words, self._learn, tr("Start &lesson 1")),
                partial(self._go_on, self._learn, self._learn.begin_first),
            ),
            Door(
                tr("Practise"),
                tr("A magneto with hidden faults, real instruments, and a debrief at the end."),
                partial(self._words, self._practice, tr("&Begin an exercise…")),
                partial(self._go_on, self._practice, self._practice.choose),
            ),
            Door(
                tr("Work"),
                tr("A job sheet for a real magneto, stage by stage, saved at every entry."),
                partial(self._words, self._work, tr("&New job sheet…")),
                partial(self._go_on, self._work, self._work.ask_new),
            ),
        )
        page = StartPage(self.look, doors, self._work.recent_named)
        page.picked.connect(self._work.open_recent)
        return page

    @staticmethod
    def _words(place: Place, begin: str) -> str:
        if not place.open_pages:
            return begin
        return tr("Go on: {title}", title=place.open_pages[-1].windowTitle())

    @staticmethod
    def _go_on(place: Place, begin: Callable[[], object]) -> None:
        """Bring what is under way to the front, or begin."""
        if place.open_pages:
            place.show_page(place.open_pages[-1])
        else:
            begin()
