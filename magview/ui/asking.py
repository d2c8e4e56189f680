"""Asking where a file is or belongs, and saying why one could not be used: alike in every window."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFileDialog, QMessageBox, QWidget

from magview.spec.language import marked, tr

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
