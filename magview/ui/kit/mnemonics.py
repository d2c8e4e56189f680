"""Alt and a letter: no two that are seen together share one, whatever the language makes of their words."""

from __future__ import annotations

from collections.abc import Callable, Iterator

from PySide6.QtCore import Qt
from PySide6.QtGui import QKeySequence
from PySide6.QtWidgets import QAbstractButton, QLabel, QMenu, QMenuBar, QTabBar, QToolButton, QWidget

Said = tuple[str, Callable[[str], object]]
"""A text with an "&", and what gives it another."""


def spoken(window: QWidget) -> Iterator[Said]:
    """What is seen of a window and answers to Alt: its menu bar first, then tabs, then everything else."""
    shown = [w for w in window.findChildren(QWidget) if w.isVisible()]
    for bar in shown:
        if isinstance(bar, QMenuBar):
            yield from ((action.text(), action.setText) for action in bar.actions())
    for tabs in shown:
        if isinstance(tabs, QTabBar):
            for i in range(tabs.count()):
                yield tabs.tabText(i), lambda text, tabs=tabs, i=i: tabs.setTabText(i, text)  # type: ignore[misc]
    for widget in shown:
        if (isinstance(widget, QAbstractButton) and not isinstance(widget, QToolButton)) or (
            isinstance(widget, QLabel) and widget.buddy() is not None and widget.buddy().isVisible()
        ):
            yield widget.text(), widget.setText


def entries(menu: QMenu) -> Iterator[Said]:
    """The entries of a menu."""
    return ((action.text(), action.setText) for action in menu.actions())


def letter(text: str) -> str:
    """The letter that a text answers to; nothing if it has none."""
    return QKeySequence.mnemonic(text).toString().rpartition("+")[2]


def settle(said: Iterator[Said]) -> None:
    """Give a text whose letter is taken another of its own letters, or none where all are taken."""
    taken: set[str] = set()
    later = []
    for text, give in said:
        own = letter(text)
        if own and own in taken:
            later.append((text, give))
        elif own:
            taken.add(own)
    for text, give in later:
        bare = text.replace("&&", "\0").replace("&", "")
        # A letter that begins a word is found soonest.
        starts = sorted(range(len(bare)), key=lambda i, bare=bare: (i > 0 and bare[i - 1].isalnum(), i))  # type: ignore[misc]
        place = next((i for i in starts if bare[i].isalpha() and bare[i].upper() not in taken), None)
        if place is not None:
            taken.add(bare[place].upper())
            bare = f"{bare[:place]}&{bare[place:]}"
        give(bare.replace("\0", "&&"))


def settle_window(window: QWidget) -> None:
    """Settle what is seen of a window, and each of its menus."""
    settle(spoken(window))
    for bar in window.findChildren(QMenuBar, options=Qt.FindChildOption.FindDirectChildrenOnly):
        for action in bar.actions():
            if isinstance(menu := action.menu(), QMenu):
                settle(entries(menu))
