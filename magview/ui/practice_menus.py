"""Menus of a practice window: the attempt, and how it looks."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtWidgets import QApplication

from magview.ui.menu_maker import TEXT_SIZES, MenuMaker
from magview.ui.practice_sight import CAUTION
from magview.ui.theme import THEMES

if TYPE_CHECKING:
    from magview.ui.picture_view import PictureView
    from magview.ui.practice_window import PracticeWindow

_HELP = (
    "Drag rotor, backplate and contact screw in the picture, or take one in hand with 1, 2, 3 and turn it with the "
    "arrow keys or the wheel: finer with Shift. Everything else is a button at the right; Alt and the underlined "
    "letter reaches it, Alt with 1 to 4 the tabs. Nothing here shows a true value: read the instruments. There is no "
    "undo."
)


class PracticeMenus(MenuMaker):
    """What hangs in a practice window's menu bar."""

    def __init__(self, window: PracticeWindow) -> None:
        super().__init__(window)
        self.window: PracticeWindow = window
        keys = QKeySequence.StandardKey
        attempt, view, help_menu = (window.menuBar().addMenu(t) for t in ("Atte&mpt", "&View", "&Help"))
        marked = not window.model.teaches
        self.save_action = self.act(attempt, "&Save attempt as…", window.save_file, keys.Save)
        self.hand_in_action = self.act(attempt, "&Hand in…", window.ask_hand_in, None)
        self.debrief_action = self.act(attempt, "Save &debrief…", window.save_debrief, None)
        self.save_action.setVisible(marked)
        self.hand_in_action.setVisible(marked)
        self.debrief_action.setVisible(False)
        attempt.addSeparator()
        for i, words in enumerate(("breaker end", "contacts", "drive end", "crank")[: len(window.views())]):
            action = self.act(attempt, f"Save picture of the {words}…", self._export_chosen, None)
            action.setData(i)
        attempt.addSeparator()
        self.act(attempt, "&Close", window.close, keys.Close)
        names = self.check(view, "&Names of parts", self._name_parts, not marked, None)
        names.setShortcut(QKeySequence("Ctrl+N"))
        view.addSeparator()
        self.act(view, "Zoom &in", self._zoom_in, keys.ZoomIn)
        self.act(view, "Zoom &out", self._zoom_out, keys.ZoomOut)
        self.act(view, "&Whole picture", self._zoom_whole, QKeySequence("Ctrl+0"))
        view.addSeparator()
        self.choice(
            view, [(f"{name.capitalize()} colours", name) for name in THEMES], window.theme.name, self._theme_chosen
        )
        self.choice(view.addMenu("&Text size"), [(f"{n} %", n) for n in TEXT_SIZES], 100, self._text_chosen)
        self.projector_action = self.check(
            view, "&Projector mode", window.projector_wanted.emit, False, QKeySequence("F11")
        )
        self.guide(help_menu)
        self.act(help_menu, "&Keys and cautions", self._help, None)

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

    def _zoomed(self) -> PictureView:
        focused = QApplication.focusWidget()
        views = self.window.views()
        return next((v for v in views if v is focused), views[0])

    def _zoom_in(self) -> None:
        self._zoomed().zoom_by(1.25)

    def _zoom_out(self) -> None:
        self._zoomed().zoom_by(0.8)

    def _zoom_whole(self) -> None:
        self._zoomed().whole()

    def _theme_chosen(self, action: QAction) -> None:
        self.window.theme_wanted.emit(THEMES[action.data()])

    def _text_chosen(self, action: QAction) -> None:
        self.window.text_wanted.emit(action.data())

    def _help(self) -> None:
        from PySide6.QtCore import Qt
        from PySide6.QtWidgets import QMessageBox

        box = QMessageBox(self.window)
        box.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        box.setWindowTitle("Keys and cautions")
        box.setText("Practice")
        box.setInformativeText(f"{_HELP}\n\n{CAUTION}")
        box.open()
