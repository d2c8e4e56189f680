"""Tabs of the calculator's pages: the first ones always, the others behind More and while they are in front."""

from __future__ import annotations

from functools import partial

from PySide6.QtCore import Qt
from PySide6.QtGui import QAction
from PySide6.QtWidgets import QMenu, QTabWidget, QToolButton, QWidget

from magview.spec.language import tr

ALWAYS = 3
"""So many tabs are always there: Internal, Engine, Switch lead."""


class PageTabs(QTabWidget):
    """A tab that is chosen from More stands beside the others until one goes elsewhere."""

    def __init__(self) -> None:
        super().__init__()
        self.setDocumentMode(True)
        self.tabBar().setExpanding(False)
        self.more = QToolButton()
        self.more.setText(tr("&More"))
        self.more.setAccessibleName(tr("More pages"))
        self.more.setToolTip(tr("Trials, how sure the setting is, wear, and plots"))
        self.more.setPopupMode(QToolButton.ToolButtonPopupMode.InstantPopup)
        self.more.setAutoRaise(True)
        self._menu = QMenu(self.more)
        self.more.setMenu(self._menu)
        self.more.hide()
        self.setCornerWidget(self.more, Qt.Corner.TopRightCorner)
        self.currentChanged.connect(self._show_tabs)

    def add_page(self, page: QWidget, title: str, meaning: str) -> None:
        """Add a page; from the fourth on it is reached by More."""
        index = self.addTab(page, title)
        self.setTabToolTip(index, meaning)
        if index >= ALWAYS:
            self._menu.addAction(title).triggered.connect(partial(self._go, index))
            self.more.show()
            self._show_tabs()

    def add_action(self, action: QAction) -> None:
        """Add something else behind More."""
        self._menu.addSeparator()
        self._menu.addAction(action)

    def _go(self, index: int) -> None:
        self.setTabVisible(index, True)
        self.setCurrentIndex(index)

    def _show_tabs(self, _index: int = 0) -> None:
        for index in range(ALWAYS, self.count()):
            self.setTabVisible(index, index == self.currentIndex())
