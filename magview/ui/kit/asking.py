"""Asking where a file is or belongs, and saying why one could not be used: alike in every window."""

from __future__ import annotations

import re
from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QFileDialog, QMessageBox, QWidget

from magview.spec.formats import ENDING
from magview.spec.language import marked, tr

Answer = tuple[str, QMessageBox.ButtonRole, Callable[[], object] | None]
"""A button's words, what it stands for, and what it does; None for one that only closes the box."""

ACCEPT, DESTROY, REJECT = (
    QMessageBox.ButtonRole.AcceptRole,
    QMessageBox.ButtonRole.DestructiveRole,
    QMessageBox.ButtonRole.RejectRole,
)

_PICTURES = marked("SVG (*.svg);;PDF (*.pdf);;PNG (*.png)")
_LAST_FOLDER = "last_folder"
"""The application keeps here where a file was last chosen."""


def _beside(name: str | Path) -> str:
    """A name without a folder belongs where a file was last chosen."""
    application = QApplication.instance()
    folder = application.property(_LAST_FOLDER) if application is not None else None
    return str(name) if not folder or Path(name).is_absolute() else str(Path(folder) / name)


def _chosen(path: str) -> Path | None:
    application = QApplication.instance()
    if path and application is not None:
        application.setProperty(_LAST_FOLDER, str(Path(path).parent))
    return Path(path) if path else None


def ask_save(parent: QWidget, title: str, name: str | Path, kinds: str, *, asks_itself: bool = False) -> Path | None:
    """Ask where something is to be saved; None if nowhere, or if what stands there is to stay.

    A name without an ending gets that of the kind chosen. `asks_itself`: what saves asks before it replaces a file.
    """
    options = QFileDialog.Option.DontConfirmOverwrite if asks_itself else QFileDialog.Option(0)
    path, kind = QFileDialog.getSaveFileName(parent, title, _beside(name), kinds, "", options)
    found = _chosen(path)
    if found is None or found.suffix:
        return found
    ending = re.search(r"\*((?:\.\w+)+)", kind)
    own = ENDING if str(name).endswith(ENDING) else Path(name).suffix
    whole = found.with_name(found.name + (ending.group(1) if ending else own))
    # The dialog asked about the name as it was typed, not about this one.
    if whole.exists() and not asks_itself and not may_replace(parent, whole):
        return None
    return whole


def may_replace(parent: QWidget, path: Path) -> bool:
    """Ask whether a file may be replaced."""
    buttons = QMessageBox.StandardButton
    text = tr("{name} is there already. Replace it?", name=path.name)
    return QMessageBox.question(parent, "magview", text, buttons.Yes | buttons.No, buttons.No) == buttons.Yes


def ask_open(parent: QWidget, title: str, kinds: str, start: str | Path = "") -> Path | None:
    """Ask which file is to be opened; None if none."""
    return _chosen(QFileDialog.getOpenFileName(parent, title, _beside(start), kinds)[0])


def ask_folder(parent: QWidget, title: str, start: str | Path = "") -> Path | None:
    """Ask which folder is meant; None if none."""
    folder = QFileDialog.getExistingDirectory(parent, title, str(start))
    return Path(folder) if folder else None


def ask_picture(parent: QWidget) -> Path | None:
    """Ask where a picture is to be saved; None if nowhere."""
    return ask_save(parent, tr("Save the picture"), "picture.svg", tr(_PICTURES))


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
