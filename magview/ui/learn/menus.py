"""Menus of a lesson: going about it, and how it is seen."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import Protocol

from PySide6.QtGui import QKeySequence
from PySide6.QtWidgets import QApplication, QWidget

from magview import __version__
from magview.spec.base import SpecError
from magview.spec.language import marked, tr
from magview.ui.kit.asking import ask_picture, refuse
from magview.ui.learn.model import LessonModel
from magview.ui.learn.pictures import LessonPictures
from magview.ui.learn.strip import LessonStrip
from magview.ui.pictures.menus import PictureMenuMaker
from magview.ui.pictures.picture_view import PictureView
from magview.ui.practice.sight import CAUTION

_HELP = marked(
    "Each step says one act. Drag the rotor, the backplate or the contact screw, or take one in hand with 1, 2, 3. "
    "Then turn it with the arrow keys or the wheel: finer with Shift. Where something is asked first, 1, 2 and 3 "
    "answer. A step is judged when the hand lets go. Return goes on, H gives a hint, Ctrl+Z takes an act back."
)


def help_words() -> str:
    """Keys and cautions of a lesson."""
    return f"{tr(_HELP)}\n\n{tr(CAUTION)}"


class LessonWork(Protocol):
    """Work that the menus ask of the page."""

    model: LessonModel
    strip: LessonStrip
    pictures: LessonPictures

    def views(self) -> tuple[PictureView, ...]:
        """Pictures in view."""

    def say(self, sentence: str) -> None:
        """Put a sentence at the foot of the window."""


class LessonMenus(PictureMenuMaker):
    """Menus that hang in the bar while a lesson is in front."""

    def __init__(self, page: QWidget, work: LessonWork, close: Callable[[], object]) -> None:
        super().__init__(page)
        self._page, self._work = page, work
        keys = QKeySequence.StandardKey
        lesson, view = self.menu(tr("&Lesson")), self.menu(tr("&View"), "view")
        self.act(lesson, tr("&Undo act"), work.model.undo, keys.Undo)
        self.act(lesson, tr("&Back"), work.model.go_back, QKeySequence("Alt+Left"))
        self.act(lesson, tr("&Hint"), work.strip.tell_hint, None)
        lesson.addSeparator()
        self.act(lesson, tr("&Save picture…"), self._ask_export, None)
        lesson.addSeparator()
        self.act(lesson, tr("&Close"), close, keys.Close)
        names = self.check(view, tr("&Names of parts"), work.pictures.breaker.set_names, True, None)
        names.setShortcut(QKeySequence("Ctrl+N"))
        view.addSeparator()
        self.zooming(view)

    def zoomed(self) -> PictureView:
        """The picture in hand, or the breaker end."""
        focused = QApplication.focusWidget()
        return next((v for v in self._work.views() if v is focused), self._work.pictures.breaker)

    def _ask_export(self) -> None:
        target = ask_picture(self._page)
        if target is not None:
            self.export(self.zoomed(), target)

    def export(self, view: PictureView, path: Path) -> None:
        """Save a picture as it is seen."""
        from magview.ui.pictures.export import export_picture

        aid = tr("magview {version}: a training aid.", version=__version__)
        try:
            export_picture(view, path, f"{self._page.windowTitle()}. {view.accessibleDescription()} {aid}")
        except SpecError as error:
            refuse(self._page, str(error))
            return
        self._work.say(tr("Saved {name}.", name=path.name))
