"""The bar under the menus: at the left what is open and its tools, at the right the places."""

from __future__ import annotations

from functools import partial

from PySide6.QtCore import QEvent, Signal
from PySide6.QtGui import QFontInfo
from PySide6.QtWidgets import QButtonGroup, QFrame, QHBoxLayout, QSizePolicy, QToolBar, QToolButton

from magview.spec.language import tr
from magview.ui.kit.elided import Elided
from magview.ui.kit.place import Page
from magview.ui.shell.places import PLACES

_HEIGHT = 3.2
"""Height of the bar [em]."""


class PlaceBar(QFrame):
    """Says what is open, and goes to the places."""

    chosen = Signal(str)
    """The place to go to."""
    home_wanted = Signal()
    """Back to the page that the place begins from."""

    def __init__(self) -> None:
        super().__init__()
        self._shown: tuple[Page, QToolBar] | None = None
        """The page in front with its tools, which go back to it when another comes."""
        self._row = QHBoxLayout(self)
        self._row.setContentsMargins(6, 0, 6, 0)
        self._row.setSpacing(4)
        self.back = QToolButton()
        self.back.setAutoRaise(True)
        self.back.clicked.connect(self.home_wanted)
        self.title = Elided()
        self.title.setAccessibleName(tr("What is open"))
        self._row.addWidget(self.back)
        self._row.addWidget(self.title, 1)
        self._row.addStretch(0)
        self.buttons: dict[str, QToolButton] = {}
        group = QButtonGroup(self)
        for number, (name, words) in enumerate(PLACES.items(), 1):
            button = QToolButton()
            button.setText(tr(words))
            button.setToolTip(tr("{place} (Ctrl+{number})", place=tr(words), number=number))
            button.setAccessibleName(tr(words))
            button.setCheckable(True)
            button.setAutoRaise(True)
            button.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Expanding)
            button.clicked.connect(partial(self._chosen, name))
            group.addButton(button)
            self._row.addWidget(button)
            self.buttons[name] = button
        self._fit()

    def show_place(self, name: str, page: Page, home: bool) -> None:
        """Show what is in front: its place, the page with its tools, and whether the place begins there."""
        words, title = tr(PLACES[name]), page.heading()
        self.buttons[name].setChecked(True)
        self.back.setVisible(not home)
        self.back.setText(f"◂ {words}")
        self.back.setToolTip(tr("Back to where {place} begins; this page stays open", place=words))
        self.title.setText(title)
        self.title.setToolTip(title)
        self.title.setVisible(bool(title))
        if self._shown is not None and self._shown[1] is not page.tools:
            owner, tools = self._shown
            self._shown = None
            self._row.removeWidget(tools)
            tools.setParent(owner)
            tools.hide()
        if self._shown is None and page.tools is not None:
            self._shown = page, page.tools
            self._row.insertWidget(2, page.tools)
            page.tools.show()

    def changeEvent(self, event: QEvent) -> None:
        """Type of another size needs a bar of another height."""
        super().changeEvent(event)
        if event.type() in (QEvent.Type.FontChange, QEvent.Type.ApplicationFontChange):
            self._fit()

    def _fit(self) -> None:
        self.setFixedHeight(round(_HEIGHT * QFontInfo(self.font()).pixelSize()))

    def _chosen(self, name: str, _: bool = True) -> None:
        self.chosen.emit(name)
