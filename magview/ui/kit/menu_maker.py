"""Entries of menus, for every window that has a menu bar."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QObject
from PySide6.QtGui import QAction, QActionGroup, QKeySequence
from PySide6.QtWidgets import QMainWindow, QMenu

from magview.spec.language import marked, tr

TEXT_SIZES = (100, 125, 150, 200)
"""Shares of the desktop's own size of type [%]."""

COLOURS = {
    "light": marked("Light colours"),
    "dark": marked("Dark colours"),
    "high contrast": marked("High contrast colours"),
}
"""What the menus call the themes."""


class MenuMaker(QObject):
    """Builds entries for a window."""

    def __init__(self, window: QMainWindow) -> None:
        super().__init__(window)
        self.window = window

    def act(
        self,
        menu: QMenu,
        text: str,
        slot: Callable[[], object] | None,
        key: QKeySequence | QKeySequence.StandardKey | None,
    ) -> QAction:
        """An entry of a menu."""
        action = QAction(text, self.window)
        if key is not None:
            action.setShortcut(key)
        if slot is not None:
            action.triggered.connect(slot)
        menu.addAction(action)
        return action

    def guide(self, menu: QMenu) -> QAction:
        """F1: the guide, at the page about what this window shows."""
        return self.act(menu, tr("&Guide"), self._open_guide, QKeySequence.StandardKey.HelpContents)

    def _open_guide(self) -> None:
        from magview.ui.kit.guide_context import open_guide

        open_guide(self.window)

    def check(
        self, menu: QMenu, text: str, slot: Callable[[bool], object], on: bool, key: QKeySequence | None
    ) -> QAction:
        """An entry that is so or not."""
        action = self.act(menu, text, None, key)
        action.setCheckable(True)
        action.setChecked(on)
        action.triggered.connect(slot)
        return action

    def choice(
        self, menu: QMenu, options: list[tuple[str, object]], chosen: object, slot: Callable[[QAction], object]
    ) -> QActionGroup:
        """Entries of which one is chosen; each holds its data."""
        group = QActionGroup(self.window)
        for text, data in options:
            action = self.act(menu, text, None, None)
            action.setCheckable(True)
            action.setChecked(data == chosen)
            action.setData(data)
            group.addAction(action)
        group.triggered.connect(slot)
        return group
