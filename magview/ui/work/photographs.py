"""Photographs of the paint marks: added, named, taken off the sheet; a missing or changed one is said."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QIcon, QPixmap, QShowEvent
from PySide6.QtWidgets import QHBoxLayout, QLabel, QListWidget, QListWidgetItem, QPushButton, QVBoxLayout, QWidget

from magview.job.photographs import MAX_PHOTOGRAPHS, Photograph, attach, read_photograph
from magview.job.sheet import Job, change
from magview.spec.base import SpecError
from magview.spec.language import tr
from magview.ui.kit.asking import ask_open
from magview.ui.kit.forms import LineEdit
from magview.ui.kit.look import Look
from magview.ui.kit.style import tint
from magview.ui.work.model import JobModel, plain
from magview.ui.work.photo_reading import reduced

_SHOWN = 150
"""Longer side of a photograph in the list [px]."""


class PhotographBox(QWidget):
    """Small pictures side by side, with a line for the words under the chosen one."""

    def __init__(self, model: JobModel, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.model, self.look = model, look
        self._stale = True
        title = QLabel(tr("Photographs of the marks"))
        self.list = QListWidget()
        self.list.setAccessibleName(title.text())
        self.list.setViewMode(QListWidget.ViewMode.IconMode)
        self.list.setIconSize(QSize(_SHOWN, _SHOWN * 3 // 4))
        self.list.setMovement(QListWidget.Movement.Static)
        self.list.setResizeMode(QListWidget.ResizeMode.Adjust)
        self.list.setWordWrap(True)
        self.list.setMinimumHeight(_SHOWN * 3 // 4 + 4 * self.fontMetrics().height())
        self.add, self.drop = QPushButton(tr("Add a &photograph…")), QPushButton(tr("Take it &off the sheet"))
        self.caption = LineEdit()
        self.caption.setPlaceholderText(tr("Words under the chosen one"))
        self.caption.setAccessibleName(self.caption.placeholderText())
        self.said = QLabel()
        self.said.setWordWrap(True)
        row = QHBoxLayout()
        for button in (self.add, self.drop):
            button.setAutoDefault(False)
            row.addWidget(button)
        row.addWidget(self.caption, 1)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(title)
        column.addWidget(self.list)
        column.addLayout(row)
        column.addWidget(self.said)
        self.add.clicked.connect(self.ask)
        self.drop.clicked.connect(self.take_off)
        self.list.currentRowChanged.connect(self._chosen)
        self.caption.entered.connect(self._named)
        model.changed.connect(self._changed)

    # -------------------------------------------------------------- showing

    def _changed(self, job: Job, old: Job) -> None:
        if self.isVisible():
            self.show_job()
        else:
            self._stale = True

    def showEvent(self, event: QShowEvent) -> None:
        """Seen: the files are looked at, for they may have been changed meanwhile."""
        super().showEvent(event)
        self.show_job()

    def show_job(self) -> None:
        """Show the photographs as they are beside the sheet."""
        at, wrong = self.list.currentRow(), []
        blocked = self.list.blockSignals(True)
        self.list.clear()
        for number, photograph in enumerate(self.model.job.photographs, 1):
            item = QListWidgetItem(f"{number}. {photograph.caption or photograph.name}")
            try:
                seen = QPixmap()
                seen.loadFromData(read_photograph(self.model.store.path.parent, photograph), "JPG")
                item.setIcon(QIcon(seen.scaled(self.list.iconSize(), Qt.AspectRatioMode.KeepAspectRatio)))
            except SpecError as error:
                item.setText(f"✗ {item.text()}")
                wrong.append(str(error))
            self.list.addItem(item)
        self.list.setCurrentRow(min(max(at, 0), self.list.count() - 1))
        self.list.blockSignals(blocked)
        self._say(wrong)
        writable = self.model.writable
        self.add.setEnabled(writable and len(self.model.job.photographs) < MAX_PHOTOGRAPHS)
        self.caption.setReadOnly(not writable)
        self._chosen(self.list.currentRow())

    def _chosen(self, row: int) -> None:
        there = 0 <= row < len(self.model.job.photographs)
        self.drop.setEnabled(there and self.model.writable)
        self.caption.setEnabled(there)
        self.caption.show_value(self.model.job.photographs[row].caption if there else "")

    def _say(self, sentences: list[str]) -> None:
        self.said.setText("\n".join(f"✗ {sentence[:1].upper()}{sentence[1:]}." for sentence in sentences))
        self.said.setVisible(bool(sentences))
        tint(self.said, self.look.theme.bad)

    # -------------------------------------------------------------- doing

    def ask(self) -> None:
        """Ask for a photograph."""
        path = ask_open(self, tr("Add a photograph"), tr("Photographs (*.jpg *.jpeg *.png *.webp)"))
        if path is not None:
            self.add_from(path)

    def add_from(self, path: Path) -> None:
        """Put a small copy beside the sheet, and it on the sheet; or say in one sentence why not."""
        try:
            if not self.model.writable:
                raise SpecError(self.model.store.read_only or "")
            photograph = attach(self.model.store.path, reduced(path))
        except SpecError as error:
            self._say([plain(error)])
            return
        self._step(tr("photograph added"), lambda all_: (*all_, photograph))
        self.list.setCurrentRow(self.list.count() - 1)

    def take_off(self) -> None:
        """Take the chosen one off the sheet; its file stays, so that undo brings it back."""
        row = self.list.currentRow()
        self._step(tr("photograph taken off"), lambda all_: (*all_[:row], *all_[row + 1 :]))

    def _named(self, text: str) -> None:
        row = self.list.currentRow()
        if not 0 <= row < len(self.model.job.photographs):
            return

        def named(all_: tuple[Photograph, ...]) -> tuple[Photograph, ...]:
            return (*all_[:row], all_[row].model_copy(update={"caption": text}), *all_[row + 1 :])

        self.caption.taken()
        self._step(tr("caption of a photograph"), named)

    def _step(self, what: str, make: Callable[[tuple[Photograph, ...]], tuple[Photograph, ...]]) -> None:
        def made(job: Job) -> Job:
            return change(job, photographs=tuple(p.model_dump() for p in make(job.photographs)))

        sentence = self.model.commit(made, what)
        if sentence:
            self._say([sentence])
