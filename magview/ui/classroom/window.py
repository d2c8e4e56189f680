"""What the windows of the class share: a frame, a line for sentences, and the colours."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QCloseEvent, QKeySequence, QShortcut
from PySide6.QtWidgets import (
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from magview.ui.kit.asking import ask_open
from magview.ui.kit.look import Look
from magview.ui.practice.controls import wrapped


def push_button(words: str, slot: Callable[[], object] | None = None) -> QPushButton:
    """A button that does something when it is pressed, and not when Return is pressed elsewhere."""
    button = QPushButton(words)
    button.setAutoDefault(False)
    if slot is not None:
        button.clicked.connect(slot)
    return button


class ClassWindow(QWidget):
    """A window beside the workbench."""

    closed = Signal(object)

    def __init__(self, title: str, look: Look) -> None:
        super().__init__(None, Qt.WindowType.Window)
        self.look = look
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(f"{title} – magview")
        self.column = QVBoxLayout(self)
        self.message = wrapped()
        self.message.setAccessibleName("")
        self.message.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        QShortcut(QKeySequence(QKeySequence.StandardKey.HelpContents), self, self._open_guide)

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

    def _open_guide(self) -> None:
        from magview.ui.kit.guide_context import open_guide

        open_guide(self)

    def closeEvent(self, event: QCloseEvent) -> None:
        """Gone."""
        self.halt()
        super().closeEvent(event)
        self.closed.emit(self)

    def halt(self) -> None:
        """End what is running."""
