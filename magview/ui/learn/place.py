"""Learn: lessons chosen and gone through; which were done, and where one was, is remembered."""

from __future__ import annotations

from functools import partial
from weakref import WeakKeyDictionary

from PySide6.QtCore import Qt, QTimer

from magview.practice.attempt import dump_act, read_act
from magview.practice.lesson import Lesson
from magview.practice.lesson_run import LessonRun, resume
from magview.practice.library import find_lesson
from magview.practice.progress import LessonMark, ProgressBook
from magview.practice.shelf import Heading, lessons, shipped_id
from magview.spec.base import SpecError
from magview.spec.language import tr
from magview.ui.kit.asking import refuse
from magview.ui.kit.home_page import HomePage
from magview.ui.kit.look import Look
from magview.ui.kit.place import Page, Place
from magview.ui.learn.model import LessonModel
from magview.ui.learn.page import LessonPage
from magview.ui.practice.choice import Choice, Chosen


class LearnPlace(Place):
    """Lessons under way stay at their step until they are closed; one that is done is under way no more."""

    def __init__(self, look: Look, progress: ProgressBook | None = None) -> None:
        super().__init__(look)
        self._progress = progress or ProgressBook()
        self._ids: WeakKeyDictionary[Page, str] = WeakKeyDictionary()
        """The lessons of the pages, by their short names."""
        self._over: LessonPage | None = None
        """A lesson that is done and still looked at."""
        self.currentChanged.connect(self._turned_away)

    def build_home(self) -> Page:
        """Build the course with its ticks, and what is under way."""
        acts = ((tr("&Next lesson"), self.begin_next), (tr("&Choose a lesson…"), self.choose))
        home = HomePage(self.look, tr("Learn"), acts)
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
        """Go on with a lesson that is under way in the window, or open a page on its first step."""
        for page in self._not_done:
            if page.model.run.lesson == lesson:
                self.show_page(page)
                return page
        try:
            run = self._left_at(lesson)
        except SpecError as error:
            refuse(self, str(error))
            return None
        page = LessonPage(LessonModel(run), self.look)
        self._ids[page] = shipped_id(lesson)
        page.model.judged.connect(partial(self._note, page.model, self._ids[page]))
        page.finished.connect(partial(self._finished, page))
        page.more.connect(partial(self._on_from, self._ids[page]))
        page.closed.connect(self._left)
        self.show_page(page)
        return page

    def begin_named(self, name: str) -> None:
        """Go on with a shipped lesson that is under way in the window, or begin it."""
        self.begin(find_lesson(name))

    def begin_next(self) -> None:
        """Begin with the lesson that comes next, or with the first where all are done."""
        found = self._progress.read().next_lesson(lessons()) or lessons()[0]
        self.begin_named(found.id)

    def under_way_at(self) -> tuple[str, int] | None:
        """The shipped lesson that is under way in the window, and its step counted from 0; None without one."""
        pages = [page for page in self._not_done if self._ids.get(page)]
        return (self._ids[pages[-1]], pages[-1].step_at) if pages else None

    @property
    def _not_done(self) -> list[LessonPage]:
        return [page for page in self.open_pages if isinstance(page, LessonPage) and not page.lesson_done]

    def _note(self, model: LessonModel, name: str) -> None:
        run = model.run
        if not run.done and self._progress.read().lesson(name).at == run.at:
            return
        deeds = tuple(tuple(dump_act(deed) for deed in done) for done in run.deeds[: run.at])
        left = LessonMark(deeds=deeds, answers=run.answers[: run.at])
        self._progress.note_lesson(name, run.at, len(run.lesson.steps), left)

    def _left_at(self, lesson: Lesson) -> LessonRun:
        """The lesson where it was left, or at its first step. Raises SpecError for one that cannot begin."""
        mark = self._progress.read().lesson(shipped_id(lesson))
        try:
            deeds = [[read_act(deed) for deed in done] for done in mark.deeds]
        except SpecError:  # kept by another version of the program
            deeds = []
        return resume(lesson, deeds, mark.answers)

    def _begun(self, chosen: Chosen) -> None:
        if isinstance(chosen.item, Lesson):
            self.begin(chosen.item)

    def _shipped(self) -> list[tuple[str, object]]:
        now = self._progress.read()
        return [(_listed(found, now.lesson(found.id)), found.id) for found in lessons()]

    def _begin_shipped(self, name: object) -> None:
        self.begin_named(str(name))

    # -------------------------------------------------------------- one lesson after another

    def _finished(self, page: LessonPage) -> None:
        """The lesson stays to be looked at, and is under way no more."""
        self.open_pages = [p for p in self.open_pages if p is not page]
        self._over = page

    def _left(self, page: object) -> None:
        if self._over is page:
            self._over = None

    def _turned_away(self, _: int = 0) -> None:
        over = self._over
        if over is not None and self.currentWidget() is not over:
            self._over = None
            QTimer.singleShot(0, over, over.close)

    def _on_from(self, name: str) -> None:
        names = [found.id for found in lessons()]
        place = names.index(name) + 1 if name in names else len(names)
        if place < len(names):
            self.begin_named(names[place])
        else:
            self.go_home()

    def halt(self) -> None:
        """The window closes."""
        if self._over is not None:
            self._over.close()
        super().halt()


def _listed(found: Heading, mark: LessonMark) -> str:
    """A lesson in the list: ticked when done, where one was, and the minutes it takes."""
    words = tr(
        "{number}. {name}, {minutes:.0f} minutes", number=found.number, name=tr(found.name), minutes=found.minutes
    )
    if mark.at:
        return tr("… {lesson}, left at step {step} of {steps}", lesson=words, step=mark.at + 1, steps=found.steps)
    return f"✓ {words}" if mark.done else f"    {words}"
