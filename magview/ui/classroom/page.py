"""Frame of the pages of the class, with a line for sentences."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from pathlib import Path

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeySequence
from PySide6.QtWidgets import (
    QMenu,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from magview.spec.language import tr
from magview.ui.kit.asking import ask_open
from magview.ui.kit.look import Look
from magview.ui.kit.menu_maker import MenuMaker
from magview.ui.kit.place import Page
from magview.ui.practice.controls import wrapped


def push_button(words: str, slot: Callable[[], object] | None = None) -> QPushButton:
    """A button that does something when it is pressed, and not when Return is pressed elsewhere."""
    button = QPushButton(words)
    button.setAutoDefault(False)
    if slot is not None:
        button.clicked.connect(slot)
    return button


class ClassPage(Page):
    """A page of the class. What it says stands on it, and stays."""

    page_wanted = Signal(str)
    """Another page of the class is to come to the front: "join", "make", "gather" or "editor"."""

    def __init__(self, title: str, look: Look) -> None:
        super().__init__(look)
        self.setWindowTitle(title)
        whole = QWidget()
        self.column = QVBoxLayout(whole)
        self.fill(whole)
        self.message = wrapped()
        self.message.setAccessibleName("")
        self.message.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        self._menus = MenuMaker(self)
        self._menus.act(
            self._menus.menu(tr("&File"), "file"), tr("&Close"), self.close, QKeySequence.StandardKey.Close
        )

    def bar_menus(self) -> Sequence[QMenu]:
        """To close it."""
        return self._menus.made

    def say(self, sentence: str) -> None:
        """Put one sentence where it is seen and does not stop the work."""
        # A file's name in front stays as it is written.
        named = sentence.split(" ", 1)[0].endswith(":")
        self.message.setText(sentence if named else sentence[:1].upper() + sentence[1:])

    def ask_file(self, title: str, kinds: str, then: Callable[[Path], object]) -> None:
        """Ask for a file to open; nothing happens where none is chosen."""
        path = ask_open(self, title, kinds)
        if path is not None:
            then(path)
