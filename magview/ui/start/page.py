"""Three doors, each with one button that goes on where the work stopped; below them what was worked on lately."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import partial
from itertools import pairwise

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtGui import QFontInfo, QKeySequence, QShortcut, QShowEvent
from PySide6.QtWidgets import QCheckBox, QHBoxLayout, QLabel, QVBoxLayout, QWidget

from magview.spec.language import tr
from magview.ui.kit.elided import Elided
from magview.ui.kit.look import Look
from magview.ui.kit.place import Page
from magview.ui.kit.settings import put_start_away, start_put_away
from magview.ui.kit.strip import Foot
from magview.ui.kit.style import tint
from magview.ui.start.door import Door, DoorFrame, Link
from magview.ui.start.doors import Told
from magview.ui.start.recent import Item

Facts = Callable[[bool], tuple[Sequence[Told], Sequence[Item]]]
"""Words for the doors, and things worked on lately; the argument: whether files may be read, which takes time."""


class StartPage(Page):
    """The doors. What stands on them is asked anew each time the page is seen."""

    picked = Signal(object)
    """A thing chosen among those worked on lately, as `recent.Item`."""

    def __init__(
        self,
        look: Look,
        doors: Sequence[Door],
        facts: Facts,
        lists: Sequence[tuple[str, Callable[[], object]]],
    ) -> None:
        super().__init__(look)
        self.setWindowTitle(tr("Start"))
        self._facts = facts
        whole, row, self._below = QWidget(), QHBoxLayout(), QHBoxLayout()
        column = QVBoxLayout(whole)
        self._row, self._column = row, column
        self.doors = [DoorFrame(door, look) for door in doors]
        for frame in self.doors:
            frame.opened.connect(partial(self._open, frame.door.go))
            row.addWidget(frame, 1)
            key = QShortcut(QKeySequence(frame.door.letter), self)
            key.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
            key.activated.connect(partial(self._open, frame.door.go))
        self.recent_label = QLabel(tr("Recent"))
        self.recent: list[QWidget] = []
        self._recent = QHBoxLayout()
        self._below.addWidget(self.recent_label)
        self._below.addLayout(self._recent, 1)
        self.lists = [self._list(words, go) for words, go in lists]
        self.away = QCheckBox(tr("Open on the &bench from now on"))
        self.away.setToolTip(tr("Start stays one key away: Ctrl+1."))
        self.away.clicked.connect(put_start_away)
        self._below.addWidget(self.away)
        column.addLayout(row, 1)
        column.addLayout(self._below)
        column.addWidget(Foot(look))
        self.fill(whole)
        self.settle()

    def _list(self, words: str, go: Callable[[], object]) -> Link:
        link = Link(self.look, words)
        link.clicked.connect(partial(self._open, go))
        self._below.addWidget(link)
        return link

    def _order(self) -> list[QWidget]:
        """The order of Tab: the doors, what else they offer, recent things, lists."""
        doors: list[QWidget] = [frame.button for frame in self.doors]
        links: list[QWidget] = [link for frame in self.doors for link in frame.links]
        recent = [widget for widget in self.recent if isinstance(widget, Link)]
        return [*doors, *links, *recent, *self.lists, self.away]

    @staticmethod
    def _open(go: Callable[[], object], _: bool = False) -> None:
        go()

    # -------------------------------------------------------------- showing

    def take_keyboard(self) -> None:
        """On the button of what to do next, where the keyboard was nowhere."""
        if self.focusWidget() is None:
            next((f.button for f in self.doors if f.button.filled), self.doors[0].button).setFocus()
        else:
            super().take_keyboard()

    def showEvent(self, event: QShowEvent) -> None:
        """Seen again: the work has gone on meanwhile. Job sheets are read after the first picture."""
        super().showEvent(event)
        self.tell(False)
        QTimer.singleShot(0, self, partial(self.tell, True))

    def tell(self, read: bool = True) -> None:
        """Show what is next behind each door."""
        told, items = self._facts(read)
        latest = max(range(len(told)), key=lambda i: (told[i].when, -i))
        waits = next((frame.button for frame in self.doors if frame.button.filled), None)
        for i, (frame, words) in enumerate(zip(self.doors, told, strict=True)):
            frame.tell(words, i == latest)
        if waits is not None and self.focusWidget() is waits:
            self.doors[latest].button.setFocus()
        self.away.setChecked(start_put_away())
        self._show_recent(items)

    def _show_recent(self, items: Sequence[Item]) -> None:
        while self._recent.count():
            self._recent.takeAt(0)
        for widget in self.recent:
            widget.hide()
            widget.deleteLater()
        self.recent = []
        gap, room = self._recent.spacing(), self._room_for_recent()
        for item in items:  # as many as can be read whole, and whatever is damaged
            widgets = self._item(item)
            room -= sum(widget.sizeHint().width() + gap for widget in widgets)
            if room >= 0 or item.warns or item.kind == "copy":
                self.recent += widgets
        if not items:
            self.recent.append(QLabel(tr("nothing yet")))
        for widget in self.recent:
            self._recent.addWidget(widget)
        self._recent.addStretch(1)
        self._colour_recent(items)
        order = self._order()
        for one, next_one in pairwise(order):
            QWidget.setTabOrder(one, next_one)

    def _room_for_recent(self) -> int:
        """Width that the lists and the box at the right leave [px]."""
        beside = (self.recent_label, *self.lists, self.away)
        taken = sum(widget.sizeHint().width() + self._below.spacing() for widget in beside)
        edges = self._column.contentsMargins()
        return self.width() - edges.left() - edges.right() - taken

    def heading(self) -> str:
        """The program's name: the place says itself at the right."""
        return "magview"

    def _item(self, item: Item) -> list[QWidget]:
        name: QWidget
        if item.kind:
            name = Link(self.look, item.name, bold=True)
            name.clicked.connect(partial(self.picked.emit, item))
        else:
            name = QLabel(item.name)
        name.setToolTip(str(item.key) if item.kind in ("job", "copy") else item.name)
        if not item.aside:
            return [name]
        aside = Elided()
        aside.setText(item.aside)
        aside.setToolTip(item.aside)
        return [name, aside]

    def _colour_recent(self, items: Sequence[Item]) -> None:
        warns = any(item.warns for item in items)
        for widget in (self.recent_label, *self.recent):
            if isinstance(widget, QLabel):
                tint(widget, self.look.theme.warn if warns and widget in self.recent[:2] else self.look.theme.faint)

    def settle(self) -> None:
        """Share the room anew: the words have another size."""
        em = QFontInfo(self.font()).pixelSize()
        self._column.setContentsMargins(2 * em, round(0.8 * em), 2 * em, round(0.4 * em))
        self._column.setSpacing(round(0.4 * em))
        self._row.setSpacing(round(1.4 * em))
        self._below.setSpacing(em)
        self._recent.setSpacing(round(0.6 * em))
