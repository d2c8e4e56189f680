"""A picture that is to no scale and takes no hands of a graphics view: it can be drawn into a file all the same."""

from __future__ import annotations

from PySide6.QtCore import QSize
from PySide6.QtWidgets import QWidget

from magview.bench.state import BenchState
from magview.ui.kit.look import Look
from magview.ui.kit.pictured import Pictured
from magview.ui.kit.turns import Follower
from magview.ui.pictures.scene_painter import ScenePainter


class SchemeView(QWidget):
    """Base of shaft, strip and switch lead."""

    def __init__(self, model: Pictured, look: Look, parent: QWidget | None = None, *, numbers: bool = True) -> None:
        super().__init__(parent)
        self.model, self.look, self.numbers, self.to_scale = model, look, numbers, False
        self.follower: Follower | None = None
        """Has it show the model's state in its turn; None for a picture that shows each at once."""
        self._painters: tuple[ScenePainter, ...] = ()
        """The painters of its scenes, if it has some."""

    def show_state(self, state: BenchState, old: BenchState | None = None) -> None:
        """Show a state."""

    def picture_size(self) -> QSize:
        """Size of the picture [px]."""
        return self.size()

    def pixels_per_mm(self) -> float:
        """No scale."""
        return 0.0

    def draw_lines(self, factor: float) -> None:
        """Draw lines this much thicker than the look has them: a file is finer than the screen."""
        for painter in self._painters:
            painter.line_factor = factor * self.look.line_factor

    def stand_in(self, model: Pictured) -> Pictured:
        """Show another model's state from now on, unseen until the next repaint; returns the former model."""
        if self.follower is not None:
            self.follower.catch_up()
        former, self.model = self.model, model
        self.show_state(model.state)
        return former
