"""Menus of a practice window: the attempt, and how it looks."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtWidgets import QApplication

from magview.spec.language import marked, tr
from magview.ui.kit.menu_maker import COLOURS, TEXT_SIZES
from magview.ui.kit.theme import THEMES
from magview.ui.pictures.menus import PictureMenuMaker
from magview.ui.practice.sight import CAUTION

if TYPE_CHECKING:
    from magview.ui.pictures.picture_view import PictureView
    from magview.ui.practice.window import PracticeWindow

_HELP = marked(
    "Drag rotor, backplate and contact screw in the picture, or take one in hand with 1, 2, 3 and turn it with the "
    "arrow keys or the wheel: finer with Shift. Everything else is a button at the right; Alt and the underlined "
    "letter reaches it, Alt with 1 to 4 the tabs. Nothing here shows a true value: read the instruments. There is no "
    "undo."
)

_PICTURES = (
    marked("Save picture of the breaker end…"),
    marked("Save picture of the contacts…"),
    marked("Save picture of the drive end…"),
    marked("Save picture of the crank…"),
)
"""As the window's views follow one another."""


class PracticeMenus(PictureMenuMaker):
    """What hangs in a practice window's menu bar."""

    def __init__(self, window: PracticeWindow) -> None:
        super().__init__(window)
        self.window: PracticeWindow = window
        keys = QKeySequence.StandardKey
        attempt, view, help_menu = (window.menuBar().addMenu(t) for t in (tr("Atte&mpt"), tr("&View"), tr("&Help")))
        counts = not window.model.teaches
        self.save_action = self.act(attempt, tr("&Save attempt as…"), window.save_file, keys.Save)
        self.hand_in_action = self.act(attempt, tr("&Hand in…"), window.ask_hand_in, None)
        self.debrief_action = self.act(attempt, tr("Save &debrief…"), window.save_debrief, None)
        self.save_action.setVisible(counts)
        self.hand_in_action.setVisible(counts)
        self.debrief_action.setVisible(False)
        attempt.addSeparator()
        for i, words in enumerate(_PICTURES[: len(window.views())]):
            action = self.act(attempt, tr(words), self._export_chosen, None)
            action.setData(i)
        attempt.addSeparator()
        self.act(attempt, tr("&Close"), window.close, keys.Close)
        names = self.check(view, tr("&Names of parts"), self._name_parts, not counts, None)
        names.setShortcut(QKeySequence("Ctrl+N"))
        view.addSeparator()
        self.zooming(view)
        view.addSeparator()
        self.choice(
            view,
            [(tr(COLOURS[name]), name) for name in THEMES],
            window.look.theme.name,
            self._theme_chosen,
        )
        self.choice(view.addMenu(tr("&Text size")), [(f"{n} %", n) for n in TEXT_SIZES], 100, self._text_chosen)
        self.projector_action = self.check(view, tr("&Projector mode"), self._project, False, QKeySequence("F11"))
        self.guide(help_menu)
        self.act(help_menu, tr("&Keys and cautions"), self._help, None)

    def handed_in(self) -> None:
        """The truth is out."""
        self.hand_in_action.setVisible(False)
        self.debrief_action.setVisible(True)

    def _export_chosen(self) -> None:
        action = self.sender()
        assert isinstance(action, QAction)
        self.window.export_file(self.window.views()[action.data()])

    def _name_parts(self, on: bool) -> None:
        self.window.pictures_shown.breaker.set_names(on)

    def zoomed(self) -> PictureView:
        """The picture in hand, or the breaker end."""
        focused = QApplication.focusWidget()
        views = self.window.views()
        return next((v for v in views if v is focused), views[0])

    def _theme_chosen(self, action: QAction) -> None:
        self.window.look.theme = THEMES[action.data()]

    def _text_chosen(self, action: QAction) -> None:
        self.window.look.text_percent = action.data()

    def _project(self, on: bool) -> None:
        self.window.projector_wanted.emit(on)  # itself it would be given no argument

    def _help(self) -> None:
        from PySide6.QtCore import Qt
        from PySide6.QtWidgets import QMessageBox

        box = QMessageBox(self.window)
        box.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        box.setWindowTitle(tr("Keys and cautions"))
        box.setText(tr("Practice"))
        box.setInformativeText(f"{tr(_HELP)}\n\n{tr(CAUTION)}")
        box.open()
