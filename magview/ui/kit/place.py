"""The window's places, and the pages that stand in them: what a room offers, and what the window asks of it."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QEvent, Qt, QTimer, Signal
from PySide6.QtGui import QCloseEvent
from PySide6.QtWidgets import QMenu, QSizePolicy, QStackedWidget, QToolBar, QVBoxLayout, QWidget

from magview.spec.language import tr
from magview.ui.kit.cautions import CAUTION
from magview.ui.kit.look import Look


class Page(QWidget):
    """Widget that fills the window while it is in front. Its window title says what is open."""

    said = Signal(str)
    """One sentence for the foot of the window; an empty one takes away what stands there."""
    rearranged = Signal()
    """Other controls are in view."""
    closed = Signal(object)
    """This page is gone."""

    def __init__(self, look: Look) -> None:
        super().__init__()
        self.look = look
        self.tools: QToolBar | None = None
        """Tools in the window's bar, beside what is open."""
        self._content: QWidget | None = None
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)

    def fill(self, content: QWidget) -> None:
        """Show something else in place of what was there."""
        layout = self.layout()
        assert isinstance(layout, QVBoxLayout)
        if self._content is not None:
            layout.removeWidget(self._content)
            self._content.hide()
            self._content.deleteLater()
        self._content = content
        layout.insertWidget(0, content, 1)

    def changeEvent(self, event: QEvent) -> None:
        """Words of another size need other room, once each of them has it."""
        super().changeEvent(event)
        if event.type() in (QEvent.Type.ApplicationFontChange, QEvent.Type.FontChange):
            QTimer.singleShot(0, self, self.settle)

    def settle(self) -> None:
        """Share the room anew: the words have another size."""

    # -------------------------------------------------------------- what the window asks

    def take_keyboard(self) -> None:
        """Put the keyboard where it was on this page, or on the first thing that takes it."""
        takes = (w for w in self.findChildren(QWidget) if w.focusPolicy() & Qt.FocusPolicy.TabFocus and w.isVisible())
        widget = self.focusWidget() or next(takes, None)
        if widget is not None:
            widget.setFocus(Qt.FocusReason.OtherFocusReason)

    def heading(self) -> str:
        """Name of what is open, for the window's bar; empty where the tools say it."""
        return self.windowTitle()

    def bar_menus(self) -> Sequence[QMenu]:
        """The menus of this page. One named "file", "edit" or "view" takes the window's own entries, too."""
        return ()

    def help_words(self) -> str:
        """Keys and cautions."""
        return tr(CAUTION)

    def say(self, sentence: str) -> None:
        """Put one sentence where it is seen and does not stop the work."""
        self.said.emit(sentence)

    # -------------------------------------------------------------- closing

    def may_close(self) -> bool:
        """Whether nothing would be lost; asks if something would."""
        return True

    def discard(self) -> None:
        """Close and keep nothing."""
        self.close()

    def halt(self) -> None:
        """End what runs."""

    def closeEvent(self, event: QCloseEvent) -> None:
        """Work that is nowhere else is not lost by a click."""
        if not self.may_close():
            event.ignore()
            return
        self.halt()
        super().closeEvent(event)
        self.closed.emit(self)


class Stack(QStackedWidget):
    """Needs no more room than what is in front; what is behind has no say."""

    def __init__(self) -> None:
        super().__init__()
        self.currentChanged.connect(self._give_room)
        self.widgetRemoved.connect(self._give_room)

    def addWidget(self, widget: QWidget) -> int:
        """Behind what is in front, or in front if it is the first."""
        index = super().addWidget(widget)
        self._give_room()
        return index

    def _give_room(self) -> None:
        front = self.currentWidget()
        for i in range(self.count()):
            widget = self.widget(i)
            policy = QSizePolicy.Policy.Preferred if widget is front else QSizePolicy.Policy.Ignored
            if widget is not None and widget.sizePolicy().horizontalPolicy() != policy:
                widget.setSizePolicy(policy, policy)


class Place(Stack):
    """One of the window's places: a page to begin from, and the pages that were opened there.

    A page stays as it is while others are in front, until it is closed.
    """

    said = Signal(str)
    wanted = Signal(object)
    """This place is to come to the front."""
    turned = Signal(object)
    """Another page of this place is in front, or the page has another title."""
    rearranged = Signal()

    def __init__(self, look: Look) -> None:
        super().__init__()
        self.look = look
        self.open_pages: list[Page] = []
        """Pages under way here, the one looked at last at the end."""
        self._home: Page | None = None
        self.currentChanged.connect(self._turned)

    def build_home(self) -> Page:
        """The page to begin from."""
        raise NotImplementedError

    @property
    def home(self) -> Page:
        """The page to begin from, built now if it has not been seen."""
        if self._home is None:
            self._home = self.build_home()
            self._add(self._home)
        return self._home

    @property
    def front(self) -> Page:
        """The page in front."""
        page = self.currentWidget()
        return page if isinstance(page, Page) else self.home

    def go_home(self) -> None:
        """Turn to the page to begin from; what is under way stays."""
        self.setCurrentWidget(self.home)

    def show_page(self, page: Page) -> None:
        """Bring a page to the front, and this place with it."""
        if self.indexOf(page) < 0:
            self._add(page)
            page.closed.connect(self._page_closed)
        if page is not self._home:
            self.open_pages = [*(p for p in self.open_pages if p is not page), page]
        self.setCurrentWidget(page)
        self.wanted.emit(self)

    def under_way(self) -> list[tuple[str, object]]:
        """The titles of the open pages with the pages themselves, the one looked at last first."""
        return [(page.windowTitle(), page) for page in reversed(self.open_pages)]

    def go_on_with(self, page: object) -> None:
        """Bring one of the open pages to the front again."""
        if isinstance(page, Page) and page in self.open_pages:
            self.show_page(page)

    def may_close(self) -> bool:
        """Whether nothing would be lost; the first page that would lose something asks, in front."""
        for page in self.open_pages:
            if not page.may_close():
                self.show_page(page)
                return False
        return True

    def halt(self) -> None:
        """The window closes."""
        for page in list(self.open_pages):
            page.close()
        if self._home is not None:
            self._home.halt()

    def _add(self, page: Page) -> None:
        page.said.connect(self.said)
        page.rearranged.connect(self.rearranged)
        page.windowTitleChanged.connect(self._turned)
        self.addWidget(page)

    def _turned(self) -> None:
        self.turned.emit(self)

    def _page_closed(self, page: Page) -> None:
        self.open_pages = [p for p in self.open_pages if p is not page]
        if page is self.currentWidget():
            self.go_home()
        self.removeWidget(page)
        page.setParent(None)  # whoever looks through the window from now on would keep it
        page.deleteLater()
        self.turned.emit(self)
