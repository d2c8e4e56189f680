"""Finding words in the page that is shown."""

from __future__ import annotations

from PySide6.QtGui import QTextCursor, QTextDocument
from PySide6.QtWidgets import QCheckBox, QHBoxLayout, QLabel, QLineEdit, QPushButton, QTextEdit, QWidget

from magview.spec.language import tr


class FindBar(QWidget):
    """A line to type in, next and previous; after the last place comes the first again, and it says so."""

    def __init__(self, page: QTextEdit) -> None:
        super().__init__()
        self._page = page
        self.line = QLineEdit()
        self.line.setPlaceholderText(tr("Find in this page"))
        self.line.setAccessibleName(tr("Find in this page"))
        self.line.textChanged.connect(self._typed)
        self.line.returnPressed.connect(self.find_next)
        self.case = QCheckBox(tr("Match &case"))
        self.says = QLabel()
        before, after, done = QPushButton(tr("&Previous")), QPushButton(tr("Ne&xt")), QPushButton(tr("C&lose"))
        before.clicked.connect(self.find_previous)
        after.clicked.connect(self.find_next)
        done.clicked.connect(self.end)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        for widget in (self.line, before, after, self.case, self.says, done):
            row.addWidget(widget)
        row.setStretch(0, 1)

    def begin(self) -> None:
        """Come up with the keyboard."""
        self.show()
        self.line.setFocus()
        self.line.selectAll()

    def end(self) -> None:
        """Go away; the keyboard is the page's."""
        self.hide()
        self._page.setFocus()

    def find_next(self) -> None:
        """The next place in this page."""
        self._find(False)

    def find_previous(self) -> None:
        """The place before it."""
        self._find(True)

    def _typed(self) -> None:
        cursor = self._page.textCursor()
        cursor.setPosition(cursor.selectionStart())
        self._page.setTextCursor(cursor)
        self._find(False)

    def _find(self, backward: bool) -> None:
        text = self.line.text()
        self.says.clear()
        if not text:
            return
        flags = QTextDocument.FindFlag(0)
        if backward:
            flags |= QTextDocument.FindFlag.FindBackward
        if self.case.isChecked():
            flags |= QTextDocument.FindFlag.FindCaseSensitively
        if self._page.find(text, flags):
            return
        self._page.moveCursor(QTextCursor.MoveOperation.End if backward else QTextCursor.MoveOperation.Start)
        found = self._page.find(text, flags)
        self.says.setText(tr("From the other end") if found else tr("Not on this page"))
