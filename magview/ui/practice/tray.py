"""The tray: straightedge, lamp, blades, meter, disc and stop, each with its small controls."""

from __future__ import annotations

from typing import Literal

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QGridLayout, QGroupBox, QHBoxLayout, QLabel, QPushButton, QSlider, QVBoxLayout

from magview.bench.lead_words import LAMPS
from magview.practice import actions as do
from magview.practice.instruments import BLADES, MAX_BLADES, MAX_EYE_DEG
from magview.practice.state import Practice
from magview.spec.language import number, tr
from magview.ui.kit.inputs import QuietCombo
from magview.ui.kit.look import Look
from magview.ui.practice.controls import ByRow, PracticePanel, wrapped
from magview.ui.practice.model import PracticeModel

_UNITS = {"inch": "thou", "metric": "mm"}
_ACROSS = 6
"""Blades in a row."""


class BladeBox(QGroupBox):
    """The blades of a set in a row: pick one, or up to three to hold together, and try them."""

    def __init__(self, model: PracticeModel) -> None:
        super().__init__(tr("Feeler blades"))
        self._model = model
        column = QVBoxLayout(self)
        self.sets = QuietCombo()
        self.sets.setAccessibleName(tr("Set of blades"))
        for kind in model.practice.exercise.tray.blades:
            self.sets.addItem(tr("Thousandths of an inch") if kind == "inch" else tr("Millimetres"), kind)
        self.sets.currentIndexChanged.connect(self._set_chosen)
        column.addWidget(self.sets)
        self._grid = QGridLayout()
        self._grid.setSpacing(3)
        column.addLayout(self._grid)
        self.blades: dict[float, QPushButton] = {}
        row = QHBoxLayout()
        self.held = QLabel()
        self.try_them, self.put_back = QPushButton(tr("&Try them")), QPushButton(tr("Put &back"))
        self.try_them.clicked.connect(self._try)
        self.put_back.clicked.connect(self._put_back)
        row.addWidget(self.held, 1)
        for button in (self.try_them, self.put_back):
            button.setAutoDefault(False)
            row.addWidget(button)
        column.addLayout(row)
        self._set_chosen(0)

    @property
    def kind(self) -> Literal["inch", "metric"]:
        """The set in hand."""
        return "metric" if self.sets.currentData() == "metric" else "inch"

    @property
    def picked(self) -> tuple[float, ...]:
        """The blades held together."""
        return tuple(blade for blade, button in self.blades.items() if button.isChecked())

    def _set_chosen(self, index: int) -> None:
        for button in self.blades.values():
            self._grid.removeWidget(button)
            button.deleteLater()
        self.blades = {}
        unit = _UNITS[self.kind]
        for i, blade in enumerate(BLADES[self.kind]):
            button = QPushButton(number(blade))
            button.setCheckable(True)
            button.setAutoDefault(False)
            button.setAccessibleName(tr("Blade {blade}", blade=f"{number(blade)} {unit}"))
            button.setMinimumWidth(button.fontMetrics().horizontalAdvance("0.000") + 10)
            button.clicked.connect(self._picked)
            self.blades[float(blade)] = button
            self._grid.addWidget(button, i // _ACROSS, i % _ACROSS)
        self._picked()

    def _picked(self) -> None:
        picked = self.picked
        for button in self.blades.values():
            button.setEnabled(button.isChecked() or len(picked) < MAX_BLADES)
        words = " + ".join(number(blade) for blade in picked)
        self.held.setText(
            tr("In hand: {blades}", blades=f"{words} {_UNITS[self.kind]}") if picked else tr("Pick up to three")
        )
        self.try_them.setEnabled(bool(picked))

    def _try(self) -> None:
        with self._model.asked_by(self.try_them):
            self._model.do(do.TryBlades(self.picked, self.kind))

    def _put_back(self) -> None:
        for button in self.blades.values():
            button.setChecked(False)
        self._picked()


class TrayPanel(PracticePanel):
    """Panel of what lies ready; what the exercise does not give is not there."""

    def __init__(self, model: PracticeModel, look: Look) -> None:
        super().__init__(model, look)
        tray, engine = model.practice.exercise.tray, model.practice.bench.engaged is not None
        layout = QVBoxLayout(self)
        layout.setContentsMargins(8, 4, 8, 4)
        self.eye = QSlider(Qt.Orientation.Horizontal)
        if tray.straightedge is not None:
            layout.addWidget(self._build_edge(tray.straightedge))
        if tray.lamp or tray.meter:
            layout.addWidget(self._build_lamp(tray.lamp, tray.meter))
        self.blades: BladeBox | None = None
        if tray.blades:
            self.blades = BladeBox(model)
            layout.addWidget(self.blades)
        if engine:
            layout.addWidget(self._build_disc(tray.disc_step_deg is not None, tray.stop))
        if not (tray.straightedge or tray.lamp or tray.blades or tray.meter or engine):
            layout.addWidget(wrapped(tr("There is nothing on the tray: eyes and hands are enough here.")))
        layout.addStretch(1)
        self.show_practice(model.practice)

    def _build_edge(self, divisions: str) -> QGroupBox:
        box = QGroupBox(tr("Straightedge, marks of {divisions}", divisions=tr(divisions)))
        column = QVBoxLayout(box)
        row = QHBoxLayout()
        self.edge = self.check(tr("Laid along the &step"), do.LayStraightedge, lambda p: p.edge_laid)
        self.square = self.button(tr("Look s&quare over it"), lambda: do.Sight(0.0))
        row.addWidget(self.edge, 1)
        row.addWidget(self.square)
        column.addLayout(row)
        row = QHBoxLayout()
        self.eye.setRange(-round(MAX_EYE_DEG), round(MAX_EYE_DEG))
        self.eye.setPageStep(5)
        self.eye.setAccessibleName(tr("From where the eye looks over the straightedge"))
        self.eye.setToolTip(tr("Behind, square over the edge, ahead"))
        # While dragged it is one look; a key or a click is one of its own.
        self.eye.setTracking(False)
        self.eye.valueChanged.connect(self._looked)
        for widget, stretch in ((QLabel(tr("behind")), 0), (self.eye, 1), (QLabel(tr("ahead")), 0)):
            row.addWidget(widget, stretch)
        column.addLayout(row)
        return box

    def _build_lamp(self, lamp: bool, meter: bool) -> QGroupBox:
        box = QGroupBox(tr("Electrical"))
        grid = QGridLayout(box)
        if lamp:
            self.lamp = self.check(tr("Lamp a&cross the contacts"), do.ConnectLamp, lambda p: p.lamp_on)
            self.lamp.setToolTip(tr("A light made for magnetos: it tells open from closed with the coil connected"))
            grid.addWidget(self.lamp, 0, 0)
        if meter:
            self.meter = self.button(tr("Meter the &lead to the case"), do.MeterLead)
            self.meter.setToolTip(tr("From the pulled plug of the switch lead to the case"))
            self.meter_terminal = self.button(tr("Meter the te&rminal to the case"), do.MeterTerminal)
            self.meter_terminal.setToolTip(tr("From the magneto's terminal: the winding is always beside the rest"))
            self.meter_switch = self.button(tr("Meter the switch alon&e"), do.MeterSwitch)
            self.meter_switch.setToolTip(tr("The lead taken off the switch for the reading, its plug pulled"))
            for i, button in enumerate((self.meter, self.meter_terminal, self.meter_switch), start=1):
                grid.addWidget(button, i // 2, i % 2)
        if lamp:
            kind = self.model.practice.exercise.tray.lamp_kind
            grid.addWidget(wrapped(tr("The timing light: {kind}.", kind=tr(LAMPS[kind]))), 2, 0, 1, 2)
            if kind == "plain":
                self.coil = self.check(tr("Coil taken off the contacts"), do.TakeCoilOff, lambda p: p.seat.coil_off)
                grid.addWidget(self.coil, 3, 0, 1, 2)
        return box

    def _build_disc(self, disc: bool, stop: bool) -> QGroupBox:
        box = QGroupBox(tr("Crank"))
        column = QVBoxLayout(box)
        if disc:
            self.disc = ByRow(
                tr("Disc on the cra&nk"), 1.0, 180.0, (tr("reads later"), tr("reads earlier")), self._turn_disc
            )
            self.disc.setToolTip(
                tr("Turn the disc on the crank, so that it reads earlier or later under its pointer")
            )
            column.addWidget(self.disc)
        row, cylinder = QHBoxLayout(), self.model.practice.timing_cylinder
        if stop:
            self.stop = self.check(tr("Piston st&op in No. {n}", n=cylinder), do.FitStop, lambda p: p.stop_fitted)
            row.addWidget(self.stop)
        row.addStretch(1)
        self.thumb = self.button(tr("Th&umb over the plug hole of No. {n}", n=cylinder), do.FeelCompression)
        row.addWidget(self.thumb)
        column.addLayout(row)
        return box

    def show_practice(self, practice: Practice) -> None:
        """Show a room."""
        super().show_practice(practice)
        if practice.exercise.tray.straightedge is not None:
            self.square.setEnabled(practice.edge_laid)
            self.eye.setEnabled(practice.edge_laid)
            blocked = self.eye.blockSignals(True)
            self.eye.setValue(-round(practice.eye_deg))  # the slider goes with rotation, from behind to ahead
            self.eye.blockSignals(blocked)

    def _looked(self, value: int) -> None:
        self.model.do(do.Sight(0.0 - value))

    def _turn_disc(self, by_deg: float) -> None:
        with self.model.asked_by(self.disc):
            self.model.do(do.TurnDisc(by_deg))
