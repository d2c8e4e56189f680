"""Menus of the practice room: the attempt, and how it is seen."""

from __future__ import annotations

from typing import Protocol

from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtWidgets import QApplication, QWidget

from magview.spec.language import marked, tr
from magview.ui.pictures.menus import PictureMenuMaker
from magview.ui.pictures.picture_view import PictureView
from magview.ui.practice.pictures import Pictures
from magview.ui.practice.sight import CAUTION

_HELP = marked(
    "Drag cam, backplate and contact screw in the picture, or take one in hand with R, B, S and turn it with the "
    "arrow keys or the wheel: finer with Shift. Space holds the rotor or lets it go. The keys 1 to 8 take a thing"
    " from the tray, Enter puts it at the lit place; the arrow keys choose another blade or place, Esc puts it "
    "back; or drag it there. L holds the lens. N is the notebook, H a hint, Ctrl+Return hands in. Nothing here "
    "shows a true value: read the instruments. There is no undo."
)

_PICTURES = (
    marked("Save picture of the breaker end…"),
    marked("Save picture of the contacts…"),
    marked("Save picture of the drive end…"),
    marked("Save picture of the crank…"),
)
"""As the window's views follow one another."""


def help_words() -> str:
    """Keys and cautions of the practice room."""
    return f"{tr(_HELP)}\n\n{tr(CAUTION)}"


class AttemptWork(Protocol):
    """Page as its menus see it."""

    @property
    def pictures_shown(self) -> Pictures:
        """The pictures in view."""

    def save_file(self) -> None:
        """Ask where, and write the attempt there."""

    def ask_hand_in(self) -> None:
        """Ask once, and hand in."""

    def save_debrief(self) -> None:
        """Ask where, and write the debrief there."""

    def export_file(self, view: PictureView) -> None:
        """Ask where, and save a picture there."""


class PracticeMenus(PictureMenuMaker):
    """Menus of an attempt or a lesson while it is in front."""

    def __init__(self, page: QWidget, work: AttemptWork, counts: bool) -> None:
        """`counts`: whether it is handed in and marked."""
        super().__init__(page)
        self._work = work
        keys = QKeySequence.StandardKey
        attempt, view = self.menu(tr("Atte&mpt")), self.menu(tr("&View"), "view")
        self.save_action = self.act(attempt, tr("&Save attempt as…"), work.save_file, keys.Save)
        self.hand_in_action = self.act(attempt, tr("&Hand in…"), work.ask_hand_in, None)
        self.debrief_action = self.act(attempt, tr("Save &debrief…"), work.save_debrief, None)
        self.save_action.setVisible(counts)
        self.hand_in_action.setVisible(counts)
        self.debrief_action.setVisible(False)
        attempt.addSeparator()
        for i, words in enumerate(_PICTURES[: len(work.pictures_shown.views)]):
            action = self.act(attempt, tr(words), self._export_chosen, None)
            action.setData(i)
        attempt.addSeparator()
        self.act(attempt, tr("&Close"), page.close, keys.Close)
        names = self.check(view, tr("&Names of parts"), self._name_parts, not counts, None)
        names.setShortcut(QKeySequence("Ctrl+N"))
        view.addSeparator()
        self.zooming(view)

    def handed_in(self) -> None:
        """The truth is out."""
        self.hand_in_action.setVisible(False)
        self.debrief_action.setVisible(True)

    def _export_chosen(self) -> None:
        action = self.sender()
        assert isinstance(action, QAction)
        self._work.export_file(self._work.pictures_shown.views[action.data()])

    def _name_parts(self, on: bool) -> None:
        self._work.pictures_shown.breaker.set_names(on)

    def zoomed(self) -> PictureView:
        """The picture in hand, or the breaker end."""
        focused = QApplication.focusWidget()
        views = self._work.pictures_shown.views
        return next((v for v in views if v is focused), views[0])
