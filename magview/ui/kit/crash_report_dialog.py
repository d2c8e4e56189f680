"""Reports of the program's own faults: shown, saved elsewhere, deleted; sent nowhere."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtGui import QFontDatabase
from PySide6.QtWidgets import (
    QComboBox,
    QDialog,
    QDialogButtonBox,
    QLabel,
    QPlainTextEdit,
    QVBoxLayout,
    QWidget,
)

from magview.spec.base import SpecError
from magview.spec.files import read_bytes, write_text
from magview.spec.language import tr
from magview.ui.kit.asking import ask_save
from magview.upkeep.reports import kept, offered


class ReportDialog(QDialog):
    """The reports of a folder, newest first, each to be read, saved elsewhere or deleted."""

    def __init__(self, folder: Path, parent: QWidget | None = None, *, after_fault: bool = False) -> None:
        """`after_fault`: say that there is something new, and why it is shown."""
        super().__init__(parent)
        self._folder = folder
        self.setWindowTitle(tr("Fault reports"))
        layout = QVBoxLayout(self)
        what = (
            tr("When the program ran last, something in it went wrong. A report of it was kept.")
            if after_fault
            else tr("The error in the program itself.")
        )
        told = tr(
            "Reports stay on this computer and are sent nowhere; they hold no names and no words you "
            "typed. Whoever looks after the program can make use of one: save it, and hand it on if you wish."
        )
        self.words = QLabel(f"{what}\n{told}")
        self.words.setWordWrap(True)
        self.choice = QComboBox()
        self.choice.setAccessibleName(tr("Report"))
        self.text = QPlainTextEdit()
        self.text.setReadOnly(True)
        self.text.setAccessibleName(tr("What the report says"))
        self.text.setTabChangesFocus(True)
        self.text.setFont(QFontDatabase.systemFont(QFontDatabase.SystemFont.FixedFont))
        self.text.setLineWrapMode(QPlainTextEdit.LineWrapMode.NoWrap)
        self.answer = QLabel()
        self.answer.setWordWrap(True)
        self.answer.hide()
        buttons = QDialogButtonBox()
        self.save_button = buttons.addButton(tr("&Save as…"), QDialogButtonBox.ButtonRole.ActionRole)
        self.delete_button = buttons.addButton(tr("&Delete"), QDialogButtonBox.ButtonRole.DestructiveRole)
        self.close_button = buttons.addButton(tr("&Close"), QDialogButtonBox.ButtonRole.RejectRole)
        self.close_button.setDefault(True)
        for widget in (self.words, self.choice, self.text, self.answer, buttons):
            layout.addWidget(widget, 1 if widget is self.text else 0)
        self.choice.currentIndexChanged.connect(self._show)
        self.save_button.clicked.connect(self._ask_where)
        self.delete_button.clicked.connect(self.delete)
        buttons.rejected.connect(self.reject)
        self._fill()
        width = 76 * self.text.fontMetrics().averageCharWidth()
        room = self.screen().availableGeometry()
        self.resize(min(width, round(0.9 * room.width())), min(32 * self.fontMetrics().height(), room.height() - 80))
        self.close_button.setFocus(Qt.FocusReason.OtherFocusReason)

    def _fill(self) -> None:
        self.choice.blockSignals(True)
        self.choice.clear()
        for path in kept(self._folder):
            day, hour = path.stem.split("-")[1:3]
            self.choice.addItem(f"{day[:4]}-{day[4:6]}-{day[6:]} {hour[:2]}:{hour[2:4]}:{hour[4:]}", offered(path))
        self.choice.blockSignals(False)
        self._show()

    def _path(self) -> Path | None:
        path = self.choice.currentData()
        return path if isinstance(path, Path) else None

    def _show(self) -> None:
        path = self._path()
        for widget in (self.choice, self.save_button, self.delete_button):
            widget.setEnabled(path is not None)
        if path is None:
            self.text.setPlainText(tr("There is no report."))
            return
        try:
            self.text.setPlainText(read_bytes(path).decode("utf-8", errors="replace"))
        except SpecError as error:
            self._answer(str(error))

    def _ask_where(self) -> None:
        path = ask_save(self, tr("Save the report"), "magview-report.txt", "*.txt")
        if path is not None:
            self.save(path)

    def save(self, path: Path) -> None:
        """Write the report that is shown somewhere else."""
        try:
            write_text(path, self.text.toPlainText())
        except SpecError as error:
            self._answer(str(error))
            return
        self._answer(tr("Saved {file}.", file=path.name))

    def delete(self) -> None:
        """Delete the report that is shown."""
        path = self._path()
        if path is None:
            return
        try:
            path.unlink(missing_ok=True)
        except OSError as error:
            self._answer(tr("{file}: cannot be deleted: {reason}", file=path.name, reason=error.strerror or error))
            return
        self._fill()
        self._answer(tr("Deleted."))

    def _answer(self, sentence: str) -> None:
        self.answer.setText(sentence)
        self.answer.setVisible(bool(sentence))
