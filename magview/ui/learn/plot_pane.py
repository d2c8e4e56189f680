"""A plot beside a lesson's picture: it shows why, and no hand works at it."""

from __future__ import annotations

import importlib
from typing import TYPE_CHECKING, cast

from PySide6.QtCore import Qt
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import QVBoxLayout, QWidget

from magview.spec.language import tr
from magview.ui.kit.look import Look
from magview.ui.learn.model import LessonModel
from magview.ui.plots.pane import SHEETS

if TYPE_CHECKING:
    from magview.ui.plots.coil import PullSheet


class LessonPlot(QWidget):
    """One of the bench's sheets without its controls, built when it is first seen."""

    def __init__(self, name: str, model: LessonModel, look: Look) -> None:
        super().__init__()
        self._name, self._model, self._look = name, model, look
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 0, 0, 0)
        self.setAccessibleName(tr(SHEETS[name][0]))
        self.sheet: QWidget | None = None

    def showEvent(self, event: QShowEvent) -> None:
        """Build the sheet, if that is not done yet."""
        super().showEvent(event)
        if self.sheet is not None:
            return
        _, module, kind = SHEETS[self._name]
        made = getattr(importlib.import_module(f"magview.ui.plots.{module}"), kind)(self._model, self._look, self)
        while made.build_on():
            pass
        for part in made.findChildren(QWidget, options=Qt.FindChildOption.FindDirectChildrenOnly):
            part.setVisible(part is made.canvas)
        made.canvas.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
        made.canvas.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.sheet = made
        self._column.addWidget(made)
        if self._name == "pull":
            self._model.judged.connect(self._say_after_guess)
            self._say_after_guess()

    def _say_after_guess(self) -> None:
        """Tell where the rotor swings once that is asked and answered: before, it is for the learner to foretell."""
        run = self._model.run
        cast("PullSheet", self.sheet).note.setVisible(run.step is not None and bool(run.step.ask) and run.answered)
