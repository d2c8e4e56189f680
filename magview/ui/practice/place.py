"""Practise: exercises chosen, worked at, found again, and looked back on."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace
from functools import partial
from pathlib import Path

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QMessageBox

from magview.bench.autosave import Keeper
from magview.practice import shelf
from magview.practice.attempt import Attempt, Session, dump_attempt, read_attempt
from magview.practice.exercise import Exercise
from magview.practice.library import find_exercise
from magview.practice.progress import ProgressBook
from magview.practice.shelf import shipped_id
from magview.practice.state import Practice
from magview.spec.base import SpecError
from magview.spec.formats import file_filter
from magview.spec.language import marked, tr
from magview.ui.kit.asking import ACCEPT, DESTROY, ask, ask_open, refuse
from magview.ui.kit.home_page import HomePage
from magview.ui.kit.look import Look
from magview.ui.kit.place import Page, Place
from magview.ui.kit.settings import keep, kept_text
from magview.ui.practice.choice import MOST_LETTERS, Choice, Chosen, drawn_code
from magview.ui.practice.model import AttemptModel
from magview.ui.practice.page import PracticePage

_TRAINEE = "trainee"
"""Name of the setting that keeps the name last given here."""

ATTEMPTS = marked("Attempts")


def attempts_in(folder: Path) -> Keeper[Attempt]:
    """Attempts kept while they are done."""
    return Keeper(folder, "attempt", dump_attempt, read_attempt)


class PracticePlace(Place):
    """Attempts stand here side by side: beginning another one gives none up."""

    lesson_wanted = Signal(str)
    """A lesson is asked for, by its short name."""

    def __init__(self, look: Look, folder: Path | None, progress: ProgressBook | None = None) -> None:
        super().__init__(look)
        self._folder, self._progress = folder, progress or ProgressBook()
        self.more: Sequence[tuple[str, Callable[[], object]]] = ()
        """Functions that begin something else here, by their words."""

    def build_home(self) -> Page:
        """Exercises to begin, and attempts under way."""
        acts = (
            (tr("New &exercise…"), self.choose),
            (tr("&Open attempt…"), self.ask_attempt),
            *self.more,
        )
        home = HomePage(self.look, tr("Practise"), acts)
        home.list(tr("&Under way"), self.under_way, self.go_on_with)
        return home

    @property
    def attempts(self) -> list[PracticePage]:
        """The attempts that are open, the one looked at last at the end."""
        return [page for page in self.open_pages if isinstance(page, PracticePage)]

    def choose(self) -> Choice:
        """Show the exercises there are; what is chosen begins."""
        choice = Choice(False, self, kept_text(_TRAINEE)[:MOST_LETTERS])
        choice.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        choice.begun.connect(self._begun)
        choice.open()
        return choice

    def _begun(self, chosen: Chosen) -> None:
        if isinstance(chosen.item, Exercise):
            keep(_TRAINEE, chosen.trainee)
            self.begin(chosen.item, chosen.code, chosen.trainee)

    def begin_named(self, name: str) -> PracticePage | None:
        """Begin a shipped exercise with faults drawn at random, under the name last given here."""
        return self.begin(find_exercise(name), drawn_code(), kept_text(_TRAINEE)[:MOST_LETTERS])

    @property
    def not_handed_in(self) -> list[PracticePage]:
        """The attempts that are open and not handed in, the one looked at last at the end."""
        return [page for page in self.attempts if page.debrief is None]

    def begin(self, exercise: Exercise, code: int, trainee: str = "") -> PracticePage | None:
        """Open a page on an exercise as found."""
        try:
            known = self._progress.truth_shown(exercise, code)
            session = Session(exercise, code, trainee, known)
        except SpecError as error:
            refuse(self, str(error))
            return None
        return self._open(AttemptModel(session))

    def ask_attempt(self) -> None:
        """Ask for an attempt's file."""
        path = ask_open(self, tr("Open an attempt"), file_filter(tr(ATTEMPTS)))
        if path is not None:
            self.open_path(path)

    def open_path(self, path: Path) -> PracticePage | None:
        """Go on with an attempt from its file, or look at its debrief if it was handed in."""
        try:
            return self.go_on(read_attempt(path))
        except SpecError as error:
            refuse(self, str(error) if path.name in str(error) else f"{path.name}: {error}")
            return None

    def go_on(self, attempt: Attempt, kept: Keeper[Attempt] | None = None) -> PracticePage:
        """Open a page on an attempt as it stands. One whose truth was shown since it was left says so in the end."""
        if not attempt.handed_in and self._progress.truth_shown(attempt.exercise, attempt.seed):
            attempt = replace(attempt, truth_known=True)
        return self._open(AttemptModel(Session.resume(attempt)), kept)

    def recover(self) -> QMessageBox | None:
        """Offer the newest attempt that a killed program left, if there is one."""
        if self._folder is None:
            return None
        keeper = attempts_in(self._folder)
        attempt = keeper.recover()
        if attempt is None:
            return None
        return ask(
            self,
            tr("An attempt at “{name}” was under way when the program ended.", name=tr(attempt.exercise.name)),
            (tr("&Go on with it"), ACCEPT, partial(self.go_on, attempt, keeper)),
            (tr("&Discard it"), DESTROY, keeper.forget),
        )

    def _open(self, model: AttemptModel, kept: Keeper[Attempt] | None = None) -> PracticePage:
        keeper = kept
        if keeper is None and self._folder is not None:
            keeper = attempts_in(self._folder)
        page = PracticePage(model, self.look, keeper)
        model.acted.connect(partial(self._note, page))
        page.begin_wanted.connect(self._once_more)
        page.next_wanted.connect(self.begin_next)
        page.lesson_wanted.connect(self.lesson_wanted)
        self.show_page(page)
        return page

    def _once_more(self, attempt: Attempt, same: bool) -> None:
        self.begin(attempt.exercise, attempt.seed if same else drawn_code(), attempt.trainee)

    def begin_next(self) -> PracticePage | None:
        """Begin the exercise that is worth doing next."""
        exercises = shelf.exercises()
        return self.begin_named((self._progress.read().next_exercise(exercises) or exercises[-1]).id)

    def _note(self, page: PracticePage, _act: object, new: Practice, _old: Practice) -> None:
        if not new.handed_in or page.debrief is None:
            return
        told = page.debrief.told
        self._progress.note_shown(new.exercise, new.seed)
        if told.marking.marked and not told.truth_known:
            marking = told.marking
            self._progress.note_exercise(shipped_id(new.exercise), marking.percent, marking.passed, marking.lost)
