"""A part of a page: its title, a note at the right of it, and what stands below."""

from __future__ import annotations

from PySide6.QtCore import QEvent, Qt
from PySide6.QtWidgets import QHBoxLayout, QLabel, QVBoxLayout, QWidget

from magview.ui.kit.look import Look
from magview.ui.kit.style import tint

_GAP = 3
"""Between the title and what stands below, and between its rows [px]."""


class Section(QWidget):
    """A group without a frame, so that a narrow page keeps its width for what it says."""

    def __init__(self, title: str, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._look = look
        self.title_label, self.note = QLabel(title), QLabel()
        self.note.setAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
        self.title_label.setWordWrap(True)
        self.setAccessibleName(title)
        head = QHBoxLayout()
        head.addWidget(self.title_label, 1)
        head.addWidget(self.note)
        self.body = QVBoxLayout(self)
        self.body.setContentsMargins(0, 0, 0, 0)
        self.body.setSpacing(_GAP)
        self.body.addLayout(head)
        look.changed.connect(self._colour)
        self._colour()

    def title(self) -> str:
        """The title."""
        return self.title_label.text()

    def setTitle(self, title: str) -> None:
        """Give it another title."""
        self.title_label.setText(title)
        self.setAccessibleName(title)

    def changeEvent(self, event: QEvent) -> None:
        """The title is as large as all type, and bold."""
        super().changeEvent(event)
        if event.type() == QEvent.Type.FontChange:
            self._colour()

    def _colour(self) -> None:
        tint(self.title_label, self._look.theme.text, bold=True)
        tint(self.note, self._look.theme.faint)
