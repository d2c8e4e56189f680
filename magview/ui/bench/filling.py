"""One picture in all the room of the bench's page: by a double click or from the menu; Esc puts it back."""

from __future__ import annotations

from typing import Protocol

from PySide6.QtCore import QEvent, QObject, Qt, Signal
from PySide6.QtGui import QKeyEvent, QMouseEvent
from PySide6.QtWidgets import QAbstractScrollArea, QApplication, QSplitter, QWidget

from magview.spec.language import marked
from magview.ui.bench.page_tabs import PageTabs
from magview.ui.bench.pictures import BenchPictures
from magview.ui.kit.look import Look
from magview.ui.plots.pane import PlotPane

PICTURES = {
    "breaker": marked("&Breaker end"),
    "contact": marked("&Why the contacts part"),
    "drive": marked("&Drive end"),
    "shaft": marked("One &shaft"),
    "strip": marked("Why &here"),
    "crank": marked("&Crank and piston"),
}
"""The page's pictures by their names, with the words of their entries in menus."""


class PicturePage(Protocol):
    """A page of pictures with calculators beside and plots below."""

    look: Look
    tabs: PageTabs
    pictures: BenchPictures
    split: QSplitter

    @property
    def plots(self) -> PlotPane:
        """The plots below the pictures."""

    @property
    def plots_wanted(self) -> bool:
        """Whether the plots stand below the pictures when all are shown."""

    def settle(self) -> None:
        """Share out the room again."""


class Filling(QObject):
    """Hides all but one picture of a page, and shows the others again."""

    changed = Signal(str)
    """The picture that fills the page by its name; "" for none."""

    def __init__(self, widget: QWidget, page: PicturePage) -> None:
        super().__init__(widget)
        self._page, self._widget = page, widget
        self.shown = ""
        """The picture that fills the page by its name; "" for none."""
        self._tabs_were = True
        page.look.changed.connect(self._look_changed)
        widget.installEventFilter(self)
        for name in PICTURES:
            _target(self.picture(name)).installEventFilter(self)

    def picture(self, name: str) -> QWidget:
        """A picture by its name."""
        picture = getattr(self._page.pictures, name)
        assert isinstance(picture, QWidget)
        return picture

    def in_hand(self) -> str:
        """The picture that has the keyboard, or else the largest in view."""
        focused = QApplication.focusWidget()
        held = next((name for name in PICTURES if self.picture(name) is focused), "")
        return held or ("breaker" if self.picture("breaker").isVisibleTo(self._widget) else "drive")

    def show(self, name: str) -> None:
        """Fill the page with a picture; "" brings all back."""
        if name == self.shown:
            return
        page, before = self._page, self.shown
        if not before:
            self._tabs_were = page.tabs.isVisibleTo(self._widget)
        self.shown = name
        page.tabs.setVisible(not name and self._tabs_were)
        if not name:
            for container in self._containers:
                container.show()
            for each in PICTURES:
                self.picture(each).show()
            page.plots.setVisible(page.plots_wanted)
        page.settle()
        for splitter in (*self._containers, page.pictures, page.split):
            splitter.refresh()  # what has just been shown has its least size now, and takes a share
        page.settle()
        self.picture(name or before).setFocus()
        self.changed.emit(name)

    def arrange(self) -> None:
        """Hide what is not the picture that fills the page, and what held it alone."""
        page, shown = self._page, self.picture(self.shown)
        for name in PICTURES:
            self.picture(name).setVisible(name == self.shown)
        page.plots.hide()
        for container in self._containers:
            container.setVisible(container.isAncestorOf(shown))

    def _look_changed(self) -> None:
        """The page has shown its calculators, or hidden them, for a class."""
        if self.shown:
            self._tabs_were = self._page.look.line_factor == 1.0
            self._page.tabs.hide()

    @property
    def _containers(self) -> tuple[QSplitter, ...]:
        """The splitters of several pictures, from the inside out."""
        pictures = self._page.pictures
        return pictures.beside, pictures.row, pictures.above

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """A double click on a picture; Esc anywhere on the page while one fills it."""
        if event.type() == QEvent.Type.MouseButtonDblClick and isinstance(event, QMouseEvent):
            name = next((n for n in PICTURES if _target(self.picture(n)) is watched), "")
            if name and event.button() == Qt.MouseButton.LeftButton:
                self.show("" if self.shown else name)
        elif self.shown and watched is self._widget and _is_escape(event):
            if event.type() == QEvent.Type.ShortcutOverride:
                event.accept()  # before an entry of a menu that answers to it
                return True
            if event.type() == QEvent.Type.KeyPress:
                self.show("")
                return True
        return super().eventFilter(watched, event)


def _is_escape(event: QEvent) -> bool:
    return isinstance(event, QKeyEvent) and event.key() == Qt.Key.Key_Escape


def _target(picture: QWidget) -> QWidget:
    """Return the widget that a picture's mouse events go to."""
    return picture.viewport() if isinstance(picture, QAbstractScrollArea) else picture
