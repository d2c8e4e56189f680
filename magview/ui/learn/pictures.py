"""The pictures of a lesson, with names and numbers: the bench's own."""

from __future__ import annotations

from PySide6.QtWidgets import QWidget

from magview.bench.blades import thickness_mm
from magview.drawing.contact_faces import faces_grade
from magview.practice.actions import TryBlades
from magview.practice.goals import DISC_TOLERANCE_DEG
from magview.practice.lesson import LessonStep, Pane
from magview.practice.screen_words import hidden_parts
from magview.practice.state import Practice
from magview.practice.tray import stop_in_no_1
from magview.ui.kit.look import Look
from magview.ui.learn.model import LessonModel
from magview.ui.learn.plot_pane import LessonPlot
from magview.ui.pictures.breaker_view import BreakerView
from magview.ui.pictures.contact_view import ContactView
from magview.ui.pictures.crank_view import CrankView
from magview.ui.pictures.drive_view import DriveView
from magview.ui.pictures.why_here_view import WhyHereView


class LessonPictures:
    """Every picture that a lesson shows, built once."""

    def __init__(self, model: LessonModel, look: Look) -> None:
        self._model = model
        self._hero = model.run.lesson.hero
        self.breaker = BreakerView(model, look)
        self.breaker.snaps = False
        self.contact = ContactView(model, self.breaker, look)
        self.contact.tries_limit = False
        self._views: dict[Pane, QWidget] = {"breaker": self.breaker, "contacts": self.contact}
        wanted = {step.show for step in model.run.lesson.steps}
        if "why-here" in wanted:
            self._views["why-here"] = WhyHereView(model, look)
        plots: tuple[Pane, ...] = ("window", "pull")
        self._views |= {name: LessonPlot(name, model, look) for name in plots if name in wanted}
        self.drive: DriveView | None = None
        self.crank: CrankView | None = None
        if model.practice.bench.engaged is not None:
            self.drive, self.crank = DriveView(model, look), CrankView(model, look)
            self._views |= {"drive": self.drive, "crank": self.crank}
        for view in self._views.values():
            view.setMinimumSize(120, 60)
        self.show_practice(model.practice)
        self._tell_after_guess()
        model.moved.connect(self.show_practice)
        model.judged.connect(self._tell_after_guess)
        model.acted.connect(self._acted)

    @property
    def names(self) -> tuple[Pane, ...]:
        """The pictures there are."""
        return tuple(self._views)

    @property
    def all(self) -> tuple[QWidget, ...]:
        """The pictures themselves."""
        return tuple(self._views.values())

    def view(self, name: Pane) -> QWidget:
        """A picture by its name; the breaker end for one that this lesson cannot have."""
        return self._views.get(name, self.breaker)

    def shown_beside(self, step: LessonStep) -> Pane:
        """The picture beside the one that is worked at."""
        if step.show is not None and step.show in self._views and step.show != self._hero:
            return step.show
        return "contacts" if self._hero == "breaker" else "breaker"

    def _acted(self, act: object, new: Practice, old: Practice) -> None:
        if isinstance(act, TryBlades):
            self.contact.blade_mm = thickness_mm(act.set, act.blades)
        self.show_practice(new)

    def _tell_after_guess(self) -> None:
        """Tell the worth of a tooth beside the coupling only once a question is answered: it is to be foretold."""
        answered = self._model.run.answered
        if self.drive is not None and self.drive.numbers != answered:
            self.drive.numbers = answered
            self.drive.viewport().update()

    def show_practice(self, practice: Practice) -> None:
        """Show what the bench's own state does not tell: what lies on, what is painted, how the disc sits."""
        hidden = hidden_parts(practice) - {"rotor scale", "plate scale"}
        if hidden != self.breaker.scene_of_parts.hidden:
            for view in (self.breaker, self.drive):
                if view is not None:
                    view.scene_of_parts.hide(hidden)
                    view.viewport().update()
            self.contact.viewport().update()
        self.breaker.set_eye(practice.eye_deg)
        self.contact.grade = faces_grade(practice.seat.faces)
        if self.drive is not None and self.crank is not None:
            self.drive.set_marked(practice.seat.marked)
            # A true crank angle beside a disc that is off tells where dead centre is, which is to be found.
            self.crank.numbers = abs(practice.disc_error_deg) <= DISC_TOLERANCE_DEG
            self.crank.set_disc_error(practice.disc_error_deg)
            self.crank.set_stop(stop_in_no_1(practice))
