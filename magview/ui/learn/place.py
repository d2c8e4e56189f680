"""Learn: lessons chosen and gone through."""

from __future__ import annotations

from PySide6.QtCore import Qt

from magview.practice.lesson import Lesson, start_lesson
from magview.practice.library import find_lesson, shipped_lessons
from magview.spec.base import SpecError
from magview.spec.language import tr
from magview.ui.kit.asking import refuse
from magview.ui.kit.home_page import HomePage
from magview.ui.kit.place import Page, Place
from magview.ui.learn.page import LessonPage
from magview.ui.practice.choice import Choice, Chosen
from magview.ui.practice.model import LessonModel


class LearnPlace(Place):
    """Lessons under way stay at their step until they are closed."""

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
        page = LessonPage(LessonModel(run), self.look)
        self.show_page(page)
        return page

    def begin_first(self) -> None:
        """Begin with the first lesson."""
        self.begin(find_lesson(shipped_lessons()[0]))

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
