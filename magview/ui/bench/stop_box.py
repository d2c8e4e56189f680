"""True top dead centre from two readings of the disc against a positive stop."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QGridLayout, QLabel

from magview.bench.engine_words import stop_words
from magview.spec.engine import Engine
from magview.spec.language import tr
from magview.ui.kit.inputs import AngleSpin
from magview.ui.kit.look import Look
from magview.ui.kit.section import Section


class StopBox(Section):
    """Two readings in, the disc's reading at top dead centre out."""

    said = Signal(str)

    def __init__(self, look: Look) -> None:
        super().__init__(tr("Top dead centre from two stop readings"), look)
        grid = QGridLayout()
        grid.setContentsMargins(0, 0, 0, 0)
        self.body.addLayout(grid)
        self.stops = [AngleSpin(0.5, -360.0, 360.0) for _ in range(2)]
        for column, (spin, text) in enumerate(zip(self.stops, (tr("First"), tr("Second")), strict=True)):
            label = QLabel(text)
            label.setBuddy(spin)
            grid.addWidget(label, 0, 2 * column)
            grid.addWidget(spin, 0, 2 * column + 1)
            spin.lineEdit().textEdited.connect(self._typed)
            spin.entered.connect(self._typed)
            spin.entered.connect(self._stop_entered)
            spin.said.connect(self.said)
        self._engine: Engine | None = None
        self._entered: set[object] = set()
        self.stops[0].show_value(340.0)
        self.stops[1].show_value(24.0)
        self.tdc = QLabel()
        self.tdc.setWordWrap(True)
        self.tdc.setAccessibleName(tr("Top dead centre on the disc"))
        grid.addWidget(self.tdc, 1, 0, 1, 4)
        self._stop_entered()

    @property
    def read(self) -> tuple[float, float] | None:
        """Both readings [deg]; None as long as one of them is only what the field began with."""
        return (self.stops[0].exact, self.stops[1].exact) if len(self._entered) == len(self.stops) else None

    def _typed(self) -> None:
        sender = self.sender()
        self._entered.update(spin for spin in self.stops if sender in (spin, spin.lineEdit()))

    def _stop_entered(self, value: float = 0.0) -> None:
        first, second = (spin.exact for spin in self.stops)
        try:
            words = stop_words(self._engine, first, second)
        except ValueError as error:
            self.tdc.setText(f"{str(error)[0].upper()}{str(error)[1:]}.")
            return
        example = f"{tr('Example readings; enter your own.')} " if self.read is None else ""
        self.tdc.setText(example + words)

    def show_engine(self, engine: Engine | None) -> None:
        """Go by an engine's timing cylinder and rods."""
        if engine is not self._engine:
            self._engine = engine
            self._stop_entered()
