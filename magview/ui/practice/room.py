"""The door to practice: chooses, opens and finds again; its windows stand beside the workbench."""

from __future__ import annotations

import contextlib
import json
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Qt
from PySide6.QtWidgets import QMessageBox

from magview.bench.autosave import Keeper
from magview.practice.attempt import Attempt, Session, dump_attempt, read_attempt
from magview.practice.exercise import Exercise
from magview.practice.lesson import Lesson, start_lesson
from magview.spec.base import SpecError
from magview.spec.files import read_json, write_text
from magview.spec.formats import file_filter
from magview.spec.language import marked, tr
from magview.ui.kit.asking import ACCEPT, DESTROY, ask, ask_open, refuse
from magview.ui.practice.choice import MOST_LETTERS, Choice, Chosen
from magview.ui.practice.model import AttemptModel, LessonModel, PracticeModel
from magview.ui.practice.window import PracticeWindow

if TYPE_CHECKING:
    from magview.ui.shell.window import MainWindow

_NAME = "trainee.json"

ATTEMPTS = marked("Attempts")


def attempts_in(folder: Path) -> Keeper[Attempt]:
    """Attempts kept while they are done."""
    return Keeper(folder, "attempt", dump_attempt, read_attempt)


class PracticeRoom(QObject):
    """Opens practice windows. They share the workbench's colours and size of type."""

    def __init__(self, window: MainWindow, folder: Path | None) -> None:
        super().__init__(window)
        self._window, self._folder = window, folder
        self.windows: list[PracticeWindow] = []
        """Those that are open."""
        self._trainee = self._recall()

    def choose(self, lessons: bool) -> Choice:
        """Show what there is; what is chosen begins."""
        choice = Choice(lessons, self._window, self._trainee)
        choice.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        choice.begun.connect(self._begun)
        choice.open()
        return choice

    def _begun(self, chosen: Chosen) -> None:
        if isinstance(chosen.item, Lesson):
            self.begin_lesson(chosen.item)
        else:
            self._remember(chosen.trainee)
            self.begin(chosen.item, chosen.code, chosen.trainee)

    def _recall(self) -> str:
        """The name last given here; "" where there is none."""
        if self._folder is None:
            return ""
        try:
            data = read_json(self._folder / _NAME)
        except SpecError:
            return ""
        name = data.get("trainee") if isinstance(data, dict) else None
        return name[:MOST_LETTERS] if isinstance(name, str) and name.isprintable() else ""

    def _remember(self, trainee: str) -> None:
        """Keep the name for the next exercise; where that cannot be, it is asked for again."""
        if trainee == self._trainee:
            return
        self._trainee = trainee
        if self._folder is not None:
            with contextlib.suppress(SpecError, OSError):
                self._folder.mkdir(parents=True, exist_ok=True)
                write_text(self._folder / _NAME, json.dumps({"trainee": trainee}, ensure_ascii=False))

    def begin(self, exercise: Exercise, code: int, trainee: str = "") -> PracticeWindow | None:
        """Open a window on an exercise as found."""
        try:
            session = Session(exercise, code, trainee)
        except SpecError as error:
            refuse(self._window, str(error))
            return None
        return self._open(AttemptModel(session))

    def begin_lesson(self, lesson: Lesson) -> PracticeWindow | None:
        """Open a window on a lesson's first step."""
        try:
            run = start_lesson(lesson)
        except SpecError as error:
            refuse(self._window, str(error))
            return None
        return self._open(LessonModel(run))

    def ask_attempt(self) -> None:
        """Ask for an attempt's file."""
        path = ask_open(self._window, tr("Open an attempt"), file_filter(tr(ATTEMPTS)))
        if path is not None:
            self.open_path(path)

    def open_path(self, path: Path) -> PracticeWindow | None:
        """Go on with an attempt from its file, or look at its debrief if it was handed in."""
        try:
            return self.go_on(read_attempt(path))
        except SpecError as error:
            refuse(self._window, str(error) if path.name in str(error) else f"{path.name}: {error}")
            return None

    def go_on(self, attempt: Attempt, kept: Keeper[Attempt] | None = None) -> PracticeWindow:
        """Open a window on an attempt as it stands."""
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
            self._window,
            tr("An attempt at “{name}” was under way when the program ended.", name=tr(attempt.exercise.name)),
            (tr("&Go on with it"), ACCEPT, partial(self.go_on, attempt, keeper)),
            (tr("&Discard it"), DESTROY, keeper.forget),
        )

    def _open(self, model: PracticeModel, kept: Keeper[Attempt] | None = None) -> PracticeWindow:
        main = self._window
        keeper = kept
        if keeper is None and self._folder is not None and isinstance(model, AttemptModel):
            keeper = attempts_in(self._folder)
        window = PracticeWindow(model, main.look, keeper)
        window.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        main.projected.connect(window.project)
        window.projector_wanted.connect(main.project)
        window.closed.connect(self._closed)
        self.windows.append(window)
        window.resize(main.size())
        window.show()
        return window

    def _closed(self, window: object) -> None:
        self.windows = [w for w in self.windows if w is not window]
