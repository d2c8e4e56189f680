"""Setting: rotor, backplate and contact screw as they stand, their screws, and what turns the rotor."""

from __future__ import annotations

from functools import partial

from PySide6.QtCore import QEvent
from PySide6.QtWidgets import QCheckBox, QFormLayout, QHBoxLayout, QLabel, QPushButton, QWidget

from magview.bench.actions import (
    Action,
    HoldRotor,
    LetGo,
    TightenClamps,
    TightenLock,
    TurnBackplate,
    TurnRotor,
    TurnScrew,
)
from magview.bench.apply import ROTOR_LIMIT_DEG
from magview.bench.events import KINDS
from magview.bench.state import BenchState, readings, same_but_worn
from magview.spec.language import marked, number, tr
from magview.ui.kit.bench_model import BenchModel
from magview.ui.kit.inputs import AngleSpin, QuietCombo
from magview.ui.kit.look import Look
from magview.ui.kit.section import Section

_RUNS = {"contacts just open": marked("just open"), "contacts just close": marked("just close")}
"""Shorter words for what a run stops at."""


class SettingBox(Section):
    """Spin boxes and buttons that send actions."""

    def __init__(self, model: BenchModel, look: Look) -> None:
        super().__init__(tr("Setting"), look)
        self._model = model
        form = QFormLayout()
        form.setContentsMargins(0, 0, 0, 0)
        form.setVerticalSpacing(4)
        self.body.addLayout(form)
        self.rotor = AngleSpin(1.0, -ROTOR_LIMIT_DEG, ROTOR_LIMIT_DEG)
        self.plate = AngleSpin(0.25, -1.0, 1.0)
        self.screw = AngleSpin(1.0, -1.0, 1.0)
        self.rotor.setToolTip(tr("From the neutral before No. 1 fires, positive as it turns in service"))
        self.plate.setToolTip(tr("Positive with cam rotation; it stops at the end of its slot"))
        self.screw.setToolTip(
            tr(
                "Positive brings the contacts closer. Dragged in the picture it follows one to one from 40 pixels "
                "out; at its head about a sixth, for fine setting"
            )
        )
        self.hold = QCheckBox(tr("Hol&d"))
        self.hold.setToolTip(tr("Let go, and the magnet pulls the rotor to where it wants it"))
        self.hold.clicked.connect(self._hold_clicked)
        to_e_gap = self.to_e_gap = QPushButton(tr("To the E-gap"))
        to_e_gap.clicked.connect(self._to_e_gap)
        opens = self.to_opening = QPushButton(tr("To &opening"))
        opens.clicked.connect(self._to_opening)
        self.plate_range, self.screw_range = QLabel(), QLabel()
        self.clamps, self.lock = QCheckBox(tr("clamp screws")), QCheckBox(tr("lock screw"))
        self.clamps.setAccessibleName(tr("Clamp screws of the backplate tight"))
        self.clamps.setToolTip(tr("Clamp screws: the plate turns only while they are slack"))
        self.lock.setAccessibleName(tr("Lock screw of the contact screw tight"))
        self.lock.setToolTip(
            tr("Lock screw: the contact screw turns only while it is slack; tightening can shift it")
        )
        self.clamps.clicked.connect(self._clamps_clicked)
        self.lock.clicked.connect(self._lock_clicked)
        beside: tuple[tuple[str, AngleSpin, list[QWidget]], ...] = (
            (tr("Rotor"), self.rotor, [self.hold]),
            (tr("&Backplate"), self.plate, [self.plate_range]),
            (tr("Contact &screw"), self.screw, [self.screw_range]),
        )
        for spin in (self.rotor, self.plate, self.screw):
            spin.said.connect(partial(self._said, spin))
        for name, spin, extra in beside:
            row = QHBoxLayout()
            row.addWidget(spin, 1)
            for widget in extra:
                row.addWidget(widget)
            label = QLabel(name)
            label.setBuddy(spin)
            form.addRow(label, row)
        tight = QHBoxLayout()
        tight.addWidget(self.clamps)
        tight.addWidget(self.lock)
        tight.addStretch(1)
        form.addRow(tr("Tight"), tight)
        go = QHBoxLayout()
        go.addWidget(to_e_gap)
        go.addWidget(opens)
        form.addRow(tr("Go"), go)
        form.addRow(tr("Turn"), self._build_run())
        self.rotor.entered.connect(self._rotor_entered)
        # The value that the field began with, typed all the same, is set as much as anything else.
        for signal in (self.plate.entered, self.plate.confirmed):
            signal.connect(self._plate_entered)
        for signal in (self.screw.entered, self.screw.confirmed):
            signal.connect(self._screw_entered)
        self.fit_rows()
        self.show_state(model.state)

    def _build_run(self) -> QHBoxLayout:
        self.run_to, self.run_speed = QuietCombo(), QuietCombo()
        self.run_to.setAccessibleName(tr("Run until"))
        for kind in KINDS:
            self.run_to.addItem(tr(_RUNS.get(kind, kind)), kind)
        self.run_to.addItem(tr("on and on"), None)
        self.run_speed.setAccessibleName(tr("Speed of the run"))
        for speed in (5.0, 20.0, 60.0, -20.0):
            self.run_speed.addItem(f"{number(speed)}°/s", speed)
        self.run_speed.setCurrentIndex(1)
        self.run_to.setSizeAdjustPolicy(QuietCombo.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        self.run_to.setMinimumContentsLength(9)
        self.run_speed.setSizeAdjustPolicy(QuietCombo.SizeAdjustPolicy.AdjustToContents)
        self.run = QPushButton(tr("Ru&n"))
        self.run.clicked.connect(self._run_clicked)
        self._model.ran.connect(self._run_ended)
        row = QHBoxLayout()
        row.addWidget(self.run_to, 2)
        row.addWidget(self.run_speed, 1)
        row.addWidget(self.run)
        return row

    def show_state(self, state: BenchState, old: BenchState | None = None) -> None:
        """Show a state."""
        if old is None or not same_but_worn(old.magneto, state.magneto):
            self._placed(state)
        self.rotor.show_value(state.rotor_deg)
        self.plate.show_value(state.backplate_deg)
        self.screw.show_value(state.screw_deg)
        self.hold.setChecked(state.held)
        self.lock.setChecked(state.lock_tight)
        self.clamps.setChecked(state.clamps_tight)

    def _placed(self, state: BenchState) -> None:
        """Another magneto: its slot and its screw."""
        for spin, label, (low, high) in (
            (self.plate, self.plate_range, state.magneto.backplate.range_deg),
            (self.screw, self.screw_range, state.magneto.contact_screw.range_deg),
        ):
            blocked = spin.blockSignals(True)
            spin.setRange(low, high)
            spin.blockSignals(blocked)
            label.setText(tr("{low:+g}° to {high:+g}°", low=low, high=high))

    def changeEvent(self, event: QEvent) -> None:
        """Type of another size needs other room."""
        super().changeEvent(event)
        if event.type() == QEvent.Type.FontChange and hasattr(self, "rotor"):
            self.fit_rows()

    def fit_rows(self) -> None:
        """Room for the rotor's angle at the present size of type."""
        # The hint of the spin box asks for room for a million degrees.
        self.rotor.setMinimumWidth(self.fontMetrics().horizontalAdvance("+0000.00°") + 34)

    # -------------------------------------------------------------- sending

    def _rotor_entered(self, value: float) -> None:
        self._model.stop()
        self._send(TurnRotor(value), self.rotor)

    def _plate_entered(self, value: float) -> None:
        self._send(TurnBackplate(value), self.plate)

    def _screw_entered(self, value: float) -> None:
        self._send(TurnScrew(value), self.screw)

    def _send(self, action: Action, asker: QWidget) -> None:
        with self._model.asked_by(asker):
            if not self._model.send(action):
                self.show_state(self._model.state)  # what was typed did not happen

    def _said(self, asker: QWidget, sentence: str) -> None:
        with self._model.asked_by(asker):
            self._model.refused.emit(sentence)

    def _hold_clicked(self, held: bool) -> None:
        self._model.send(HoldRotor() if held else LetGo())

    def _clamps_clicked(self, tight: bool) -> None:
        self._model.send(TightenClamps(tight))

    def _lock_clicked(self, tight: bool) -> None:
        self._model.send(TightenLock(tight))

    def _run_clicked(self) -> None:
        if self._model.running:
            self._model.stop()
        else:
            self.run.setText(tr("Stop"))
            with self._model.asked_by(self.run):
                self._model.run(self.run_speed.currentData(), self.run_to.currentData())

    def _run_ended(self, came_to: str) -> None:
        self.run.setText(tr("Ru&n"))

    def _to_e_gap(self) -> None:
        self._model.send(TurnRotor(self._model.state.magneto.e_gap_deg))

    def _to_opening(self) -> None:
        opens = float(readings(self._model.state).opens_deg[0])
        if opens == opens:
            self._model.send(TurnRotor(opens))
        else:
            self._said(self.to_opening, tr("With this setting lobe 1 never opens or never closes the contacts."))
