"""Asking where a file is or belongs, and saying why one could not be used: alike in every window."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFileDialog, QMessageBox, QWidget

from magview.spec.language import marked, tr

Answer = tuple[str, QMessageBox.ButtonRole, Callable[[], object] | None]
"""A button's words, what it stands for, and what it does; None for one that only closes the box."""

ACCEPT, DESTROY, REJECT = (
    QMessageBox.ButtonRole.AcceptRole,
    QMessageBox.ButtonRole.DestructiveRole,
    QMessageBox.ButtonRole.RejectRole,
)

_PICTURES = marked("SVG (*.svg);;PDF (*.pdf);;PNG (*.png)")


def ask_picture(parent: QWidget) -> Path | None:
    """Where a picture is to be saved; None if nowhere."""
    path, kind = QFileDialog.getSaveFileName(parent, tr("Save the picture"), "picture.svg", tr(_PICTURES))
    if not path:
        return None
    target = Path(path)
    return target if target.suffix else target.with_suffix(f".{kind.split('.')[-1].rstrip(')')}")


def refuse(parent: QWidget, sentence: str) -> None:
    """Say in one sentence why something could not be done; nothing waits for the answer."""
    box = QMessageBox(QMessageBox.Icon.Warning, "magview", sentence, QMessageBox.StandardButton.Ok, parent)
    box.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
    box.open()


def ask(
    parent: QWidget,
    text: str,
    *answers: Answer,
    more: str = "",
    icon: QMessageBox.Icon = QMessageBox.Icon.Question,
) -> QMessageBox:
    """Ask something with a button for each answer; nothing waits for it. `more` explains in smaller type.

    Return takes what accepts; where nothing does, what rejects.
    """
    box = QMessageBox(icon, "magview", text, QMessageBox.StandardButton.NoButton, parent)
    box.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
    box.setInformativeText(more)
    for words, role, does in answers:
        button = box.addButton(words, role)
        if does is not None:
            button.clicked.connect(does)
        if role == REJECT and all(other != ACCEPT for _, other, _ in answers):
            box.setDefaultButton(button)
    box.open()
    return box
