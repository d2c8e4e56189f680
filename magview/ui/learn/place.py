"""Learn: lessons chosen and gone through."""

from __future__ import annotations

from functools import partial
from weakref import WeakKeyDictionary

from PySide6.QtCore import Qt

from magview.practice.lesson import Lesson, start_lesson
from magview.practice.library import find_lesson, shipped_lessons
from magview.practice.progress import ProgressBook
from magview.practice.shelf import shipped_id
from magview.spec.base import SpecError
from magview.spec.language import tr
from magview.ui.kit.asking import refuse
from magview.ui.kit.home_page import HomePage
from magview.ui.kit.look import Look
from magview.ui.kit.place import Page, Place
from magview.ui.learn.page import LessonPage
from magview.ui.practice.choice import Choice, Chosen
from magview.ui.practice.model import LessonModel


class LearnPlace(Place):
    """Lessons under way stay at their step until they are closed."""

    def __init__(self, look: Look, progress: ProgressBook | None = None) -> None:
        super().__init__(look)
        self._progress = progress or ProgressBook()
        self._ids: WeakKeyDictionary[Page, str] = WeakKeyDictionary()
        """The lessons of the pages, by their short names."""

    def build_home(self) -> Page:
        """Lessons to begin, and those under way."""
        home = HomePage(self.look, tr("Learn"), ((tr("&Choose a lesson…"), self.choose),))
        home.list(tr("&Lessons"), self._shipped, self._begin_shipped)
        home.list(tr("&Under way"), self.under_way, self.go_on_with)
        return home

    def choose(self) -> Choice:
        """Show the lessons there are; what is chosen begins."""
        choice = Choice(True, self)
        choice.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        choice.begun.connect(self._begun)
        choice.open()
        return choice

    def begin(self, lesson: Lesson) -> LessonPage | None:
        """Open a page on a lesson's first step."""
        try:
            run = start_lesson(lesson)
        except SpecError as error:
            refuse(self, str(error))
            return None
        model = LessonModel(run)
        page = LessonPage(model, self.look)
        self._ids[page] = shipped_id(lesson)
        model.acted.connect(partial(self._note, model, self._ids[page]))
        self.show_page(page)
        return page

    def begin_named(self, name: str) -> None:
        """Go on with a shipped lesson that is under way in the window, or begin it."""
        open_one = next((p for p in reversed(self._not_done) if self._ids.get(p) == name), None)
        if open_one is not None:
            self.show_page(open_one)
        else:
            self.begin(find_lesson(name))

    def under_way_at(self) -> tuple[str, int] | None:
        """The shipped lesson that is under way in the window, and its step counted from 0; None without one."""
        pages = [page for page in self._not_done if self._ids.get(page)]
        return (self._ids[pages[-1]], pages[-1].step_at) if pages else None

    @property
    def _not_done(self) -> list[LessonPage]:
        return [page for page in self.open_pages if isinstance(page, LessonPage) and not page.lesson_done]

    def _note(self, model: LessonModel, name: str, *_: object) -> None:
        self._progress.note_lesson(name, model.run.at, len(model.run.lesson.steps))

    def _begun(self, chosen: Chosen) -> None:
        if isinstance(chosen.item, Lesson):
            self.begin(chosen.item)

    @staticmethod
    def _shipped() -> list[tuple[str, object]]:
        lessons = [find_lesson(name) for name in shipped_lessons()]
        return [(f"{lesson.number}. {tr(lesson.name)}", lesson) for lesson in lessons]

    def _begin_shipped(self, lesson: object) -> None:
        if isinstance(lesson, Lesson):
            self.begin(lesson)
