"""True top dead centre from two readings of the disc against a positive stop."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QGridLayout, QGroupBox, QLabel, QWidget

from magview.physics.engine.crank import true_tdc_from_stops
from magview.physics.engine.dead_centre import has_link_rod, link_rod_correction_deg, tdc_from_stops
from magview.spec.engine import Engine
from magview.spec.language import tr
from magview.ui.kit.inputs import AngleSpin


class StopBox(QGroupBox):
    """Two readings in, the disc's reading at top dead centre out."""

    said = Signal(str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(tr("Top dead centre from two stop readings"), parent)
        grid = QGridLayout(self)
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
            middle = (
                true_tdc_from_stops(first, second)
                if self._engine is None
                else tdc_from_stops(self._engine, first, second)
            )
        except ValueError as error:
            self.tdc.setText(f"{str(error)[0].upper()}{str(error)[1:]}.")
            return
        if min(first, second) < 0 and middle > 180.0:  # a disc numbered both ways from zero, before it negative
            middle -= 360.0
        opposite = (middle + 180.0) % 360.0
        example = f"{tr('Example readings; enter your own.')} " if self.read is None else ""
        self.tdc.setText(
            example
            + tr(
                "True top dead centre is at {middle:deg} on the disc; set the pointer to zero there. (Disc "
                "numbered 0 to 360°, or to both sides with what is before zero negative. If the stop was "
                "met about bottom dead centre, the top is at {opposite:deg}. {rod})",
                middle=middle,
                opposite=opposite,
                rod=self._rod_words(first, second),
            )
        )

    def show_engine(self, engine: Engine | None) -> None:
        """Go by an engine's timing cylinder and rods."""
        if engine is not self._engine:
            self._engine = engine
            self._stop_entered()

    def _rod_words(self, first: float, second: float) -> str:
        if self._engine is None:
            return tr("Exact for a rod on the crank pin; a link rod needs a small correction.")
        cylinder = self._engine.timing_cylinder
        if has_link_rod(self._engine):
            return tr(
                "The stop belongs in No. {cylinder}, the timing cylinder: halfway, and {correction:+deg} for its "
                "link rod.",
                cylinder=cylinder,
                correction=link_rod_correction_deg(self._engine, first, second),
            )
        return tr(
            "The stop belongs in No. {cylinder}, the timing cylinder: there the middle is exact.", cylinder=cylinder
        )
