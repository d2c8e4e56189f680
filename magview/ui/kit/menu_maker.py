"""Menus and their entries, for pages and windows."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QObject
from PySide6.QtGui import QAction, QActionGroup, QKeySequence
from PySide6.QtWidgets import QMenu, QWidget

from magview.spec.language import marked, tr

TEXT_SIZES = (100, 125, 150, 200)
"""Shares of the desktop's own size of type [%]."""

COLOURS = {
    "light": marked("Light colours"),
    "dark": marked("Dark colours"),
    "high contrast": marked("High contrast colours"),
}
"""Names of the themes in the menus."""


class MenuMaker(QObject):
    """Builds menus for a page or a window."""

    def __init__(self, owner: QWidget) -> None:
        super().__init__(owner)
        self._owner = owner
        self.made: list[QMenu] = []
        """The menus, in the order of the menu bar."""

    def menu(self, title: str, name: str = "") -> QMenu:
        """A menu of the menu bar; `name` tells one that several pages have."""
        menu = QMenu(title, self._owner)
        menu.setObjectName(name)
        self.made.append(menu)
        return menu

    def act(
        self,
        menu: QMenu,
        text: str,
        slot: Callable[[], object] | None,
        key: QKeySequence | QKeySequence.StandardKey | None,
    ) -> QAction:
        """An entry of a menu."""
        action = QAction(text, self._owner)
        if key is not None:
            action.setShortcut(key)
        if slot is not None:
            action.triggered.connect(slot)
        menu.addAction(action)
        return action

    def act_redo(self, menu: QMenu, slot: Callable[[], object]) -> QAction:
        """The entry that does a step again, with the keys of every desktop: one of them is in the guide."""
        action = self.act(menu, tr("&Redo"), slot, None)
        action.setShortcuts([QKeySequence("Ctrl+Shift+Z"), QKeySequence("Ctrl+Y")])
        return action

    def check(
        self, menu: QMenu, text: str, slot: Callable[[bool], object] | None, on: bool, key: QKeySequence | None
    ) -> QAction:
        """An entry that is so or not."""
        action = self.act(menu, text, None, key)
        action.setCheckable(True)
        action.setChecked(on)
        if slot is not None:
            action.triggered.connect(slot)
        return action

    def choice(
        self, menu: QMenu, options: list[tuple[str, object]], chosen: object, slot: Callable[[QAction], object]
    ) -> QActionGroup:
        """Entries of which one is chosen; each holds its data."""
        group = QActionGroup(self._owner)
        for text, data in options:
            action = self.act(menu, text, None, None)
            action.setCheckable(True)
            action.setChecked(data == chosen)
            action.setData(data)
            group.addAction(action)
        group.triggered.connect(slot)
        return group
