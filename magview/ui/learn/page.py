"""A lesson: the practice room with a step above it, and with names and numbers on the pictures."""

from __future__ import annotations

from magview.practice.actions import PointAt
from magview.spec.language import tr
from magview.ui.kit.look import Look
from magview.ui.learn.lesson_view import LessonPanel, LessonStrip
from magview.ui.practice.controls import PracticePanel
from magview.ui.practice.model import LessonModel
from magview.ui.practice.page import PracticePage


class LessonPage(PracticePage):
    """One lesson. It counts nowhere, and nothing of it is kept."""

    def __init__(self, model: LessonModel, look: Look) -> None:
        self._lesson = model
        super().__init__(model, look)
        self.lesson_strip.part.connect(self.pictures.breaker.point_out)
        self.lesson_strip.part.emit(self.lesson_strip.step_part())
        self.pictures.breaker.pointed.connect(self._pointed)

    def name(self) -> str:
        """Name of what is learnt."""
        return self._lesson.run.lesson.name

    @property
    def step_at(self) -> int:
        """The step that waits, counted from 0."""
        return self._lesson.run.at

    @property
    def lesson_done(self) -> bool:
        """Whether all steps are done."""
        return self._lesson.run.done

    def first_panel(self) -> tuple[str, PracticePanel]:
        """All steps."""
        self.lesson = LessonPanel(self._lesson, self.look)
        return tr("&1 Lesson"), self.lesson

    def build_strip(self) -> PracticePanel:
        """The step that waits."""
        self.lesson_strip = LessonStrip(self._lesson, self.look)
        return self.lesson_strip

    def keep_room(self, roomy: bool) -> None:
        """Whether there is room for the longest step."""
        self.lesson_strip.keep_room(roomy)

    def _pointed(self, part: str) -> None:
        self.model.do(PointAt(part))
