"""Wear and drift: rates, what they come to by the next inspection, and rates from inspections."""

from __future__ import annotations

import math
from functools import partial

from PySide6.QtCore import Signal
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import (
    QFormLayout,
    QGroupBox,
    QHBoxLayout,
    QLabel,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from magview.bench.actions import BurnFaces, DropInspection, GrowPip, NoteInspection, WearHeel
from magview.bench.state import BenchState, outdated_inspections, readings
from magview.bench.sureness import NEVER_OPENS
from magview.bench.wear_words import (
    expectation_words,
    firing_of,
    lasting_words,
    leaving_words,
    rate_words,
    usual_words,
)
from magview.physics.uncertainty.instruments import one_reading, passing_blade_mm
from magview.physics.wear.inspection import MAX_HOURS, Inspection
from magview.physics.wear.prediction import USUAL_RATES, WearRates, worn
from magview.physics.wear.rates import Rate, estimate_rates, hidden_mm_per_100h
from magview.spec.language import format_angle, format_length, marked, number, tr
from magview.spec.units import MM_PER_THOU
from magview.ui.kit.bench_model import BenchModel
from magview.ui.kit.inputs import AngleSpin, LengthSpin, NumberSpin
from magview.ui.kit.look import Look
from magview.ui.kit.strip import Foot
from magview.ui.kit.table import Table

_COLUMNS = (marked("Hours"), marked("Blade gap"), marked("Opens late"))


class WearPanel(QWidget):
    """Rates above, what they come to in the middle, inspections below."""

    rates_changed = Signal()

    def __init__(self, model: BenchModel, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._model, self.look = model, look
        column = QVBoxLayout(self)
        column.setContentsMargins(8, 4, 8, 4)
        column.addWidget(self._build_rates())
        column.addWidget(self._build_inspections())
        column.addWidget(Foot(look))
        column.addStretch(1)
        model.changed.connect(self._changed)
        look.changed.connect(self._show)
        self._show()

    def _build_rates(self) -> QGroupBox:
        box = QGroupBox(tr("Wear from now on"))
        form = QFormLayout(box)
        self.heel, self.faces, self.pip = (LengthSpin(0.001, 0.0, 2.0, self.look) for _ in range(3))
        self.heel.setToolTip(
            tr("Off the heel of the breaker arm in 100 running hours: it opens later, the gap closes")
        )
        self.pip.setToolTip(tr("A pip on one contact in 100 running hours: the blade finds less than the true gap"))
        self.faces.setToolTip(
            tr("Burnt off both contact faces in 100 running hours: it opens earlier, the gap widens")
        )
        self.heel.show_value(USUAL_RATES.heel_mm_per_100h)
        self.faces.show_value(USUAL_RATES.faces_mm_per_100h)
        self.pip.show_value(USUAL_RATES.pip_mm_per_100h)
        self.hours = NumberSpin(25.0, 1.0, 10_000.0, "h", 1)
        self.hours.show_value(100.0)
        form.addRow(tr("Heel, i&n 100 h"), self.heel)
        form.addRow(tr("Faces burnt, in 100 h"), self.faces)
        form.addRow(tr("Pip, in 100 h"), self.pip)
        form.addRow(tr("Next inspection &after"), self.hours)
        # A rate stays invented until its own field is entered, or inspections give it.
        self._invented = {self.heel: tr("heel"), self.faces: tr("faces"), self.pip: tr("pip")}
        self.invented = QLabel()
        self.expected, self.leaves, self.lasts = QLabel(), QLabel(), QLabel()
        for label in (self.invented, self.expected, self.leaves, self.lasts):
            label.setWordWrap(True)
            form.addRow(label)
        self.wear_button = QPushButton(tr("Wear the bench by the&se hours"))
        self.wear_button.setToolTip(tr("See on the bench what those hours would do to it"))
        self.wear_button.clicked.connect(self.wear_bench)
        form.addRow("", self.wear_button)
        for rate in tuple(self._invented):
            for given in (rate.entered, rate.confirmed):
                given.connect(partial(self._given, rate))
        for spin in (self.heel, self.faces, self.pip, self.hours):
            spin.entered.connect(self._show)
            spin.said.connect(self._model.refused)
        return box

    def _build_inspections(self) -> QGroupBox:
        box = QGroupBox(tr("Inspections of this setting"))
        column = QVBoxLayout(box)
        self.table = Table(tr("Inspections"), [tr(column) for column in _COLUMNS], wide=range(len(_COLUMNS)))
        self.table.setMaximumHeight(150)
        form = QFormLayout()
        self.at = NumberSpin(25.0, 0.0, MAX_HOURS, "h", 1)
        self.at.show_value(0.0)
        self.gap, self.late = LengthSpin(0.01, 0.0, 10.0, self.look), AngleSpin(0.25, -45.0, 45.0)
        self.gap.setToolTip(tr("The thickest blade that passed, and half a step more"))
        self.late.setToolTip(tr("How far past the E-gap it opened, in degrees of rotor"))
        self.gap_error, self.late_error = LengthSpin(0.001, 0.001, 1.0, self.look), AngleSpin(0.05, 0.05, 20.0)
        self.gap_error.show_value(one_reading("blades-thou"))
        self.late_error.show_value(round(one_reading("rule-half-mm"), 2))
        usual = usual_words()
        for error in (self.gap_error, self.late_error):
            error.setToolTip(tr("How far this reading may be out to either side. {usual}", usual=usual))
        for spin in (self.at, self.gap, self.gap_error, self.late, self.late_error):
            spin.said.connect(self._model.refused)
        form.addRow(tr("At, since it was set"), self.at)
        form.addRow(tr("Gap by blades"), self.gap)
        form.addRow(tr("Gap read to, either way"), self.gap_error)
        form.addRow(tr("Opened late by"), self.late)
        form.addRow(tr("Opening read to, either way"), self.late_error)
        row = QHBoxLayout()
        take, note = QPushButton(tr("From the &bench")), QPushButton(tr("N&ote"))
        self.drop_button = QPushButton(tr("Stri&ke out"))
        take.clicked.connect(self.take_from_bench)
        note.clicked.connect(self.note)
        self.drop_button.clicked.connect(self.drop)
        for button in (take, note, self.drop_button):
            row.addWidget(button)
        self.outdated = QLabel(
            tr(
                "✗ Plate or screw was turned since: what was read before tells nothing of this setting; "
                "strike it out."
            )
        )
        self.found = QLabel()
        for label in (self.outdated, self.found):
            label.setWordWrap(True)
        self.use_button = QPushButton(tr("&Use these rates"))
        self.use_button.clicked.connect(self.use_rates)
        column.addWidget(self.table)
        column.addLayout(form)
        column.addLayout(row)
        column.addWidget(self.outdated)
        column.addWidget(self.found)
        column.addWidget(self.use_button)
        self.take_from_bench()
        return box

    # -------------------------------------------------------------- showing

    @property
    def rates(self) -> WearRates:
        """The rates in the fields; a magneto whose file gives no heel arm wears by pips alone."""
        can = self._model.state.magneto.breaker.heel_arm_mm is not None
        return WearRates(self.heel.exact if can else 0.0, self.pip.exact, self.faces.exact)

    def _changed(self, state: BenchState, old: BenchState) -> None:
        def key(s: BenchState) -> object:
            return s.magneto, s.backplate_deg, s.screw_deg, s.inspections, firing_of(s)

        if key(state) == key(old):
            return
        if self.isVisible():
            self._show()
        elif state.inspections != old.inspections:
            self.rates_changed.emit()  # a setting the plot hears of by itself

    def showEvent(self, event: QShowEvent) -> None:
        """While it was hidden no words were made: a screw that is dragged must not wait for them."""
        self._show()
        super().showEvent(event)

    def _show(self, _: object = None) -> None:
        state, rates = self._model.state, self.rates
        self.heel.setEnabled(state.magneto.breaker.heel_arm_mm is not None)
        self._show_invented()
        self.expected.setText(expectation_words(state, rates, self.hours.exact))
        self.leaves.setText(leaving_words(state, rates))
        self.lasts.setText(lasting_words(state, rates))
        self._show_inspections(state)
        self.rates_changed.emit()

    def _given(self, rate: LengthSpin, _: float = 0.0) -> None:
        """The person's own rate, or one that inspections gave."""
        self._invented.pop(rate, None)
        self._show_invented()

    def _show_invented(self) -> None:
        self.invented.setText(
            tr("⚠ Invented rates: {rates}. Enter your own, or let inspections give them.",
               rates=", ".join(self._invented.values()))
        )  # fmt: skip
        self.invented.setVisible(bool(self._invented))

    def _show_inspections(self, state: BenchState) -> None:
        outdated = outdated_inspections(state)
        rows = []
        for seen, old in zip(state.inspections, outdated, strict=True):
            late = "–" if seen.opening_error_deg is None else format_angle(seen.opening_error_deg, True)
            hours = f"✗ {number(seen.hours)} h" if old else f"{number(seen.hours)} h"
            rows.append((hours, format_length(seen.gap_mm), late))
        old_words = tr("Read of another setting than the present one")
        self.table.fill(rows, tips=[old_words if old else "" for old in outdated])
        self.outdated.setVisible(any(outdated))
        self.drop_button.setEnabled(bool(state.inspections))
        self._estimate(state)

    def _estimate(self, state: BenchState) -> None:
        self._heel_rate: Rate | None = None
        self._pip_rate: Rate | None = None
        self._hidden_mm_per_100h = 0.0
        try:
            found = estimate_rates(state.magneto, state.backplate_deg, state.inspections)
        except ValueError:
            self.found.setText(tr("Two inspections at different hours give rates."))
            self.use_button.setEnabled(False)
            return
        self._heel_rate, self._pip_rate = found.heel, found.pip
        self._hidden_mm_per_100h = hidden_mm_per_100h(state.magneto, self.faces.exact)
        self.found.setText(rate_words(found))
        self.use_button.setEnabled(found.heel is not None and not any(outdated_inspections(state)))

    # -------------------------------------------------------------- hands on

    def take_from_bench(self) -> None:
        """Take what blades in steps of a thousandth of an inch and the mark would say of the bench now."""
        result = readings(self._model.state)
        error = float(result.e_gap_error_deg[0])
        if not math.isfinite(error):
            self._model.refused.emit(tr(NEVER_OPENS))
            return
        blade = passing_blade_mm(float(result.blade_gap_mm[0]), MM_PER_THOU)
        self.gap.show_value(blade + MM_PER_THOU / 2)
        self.late.show_value(round(error, 1))

    def note(self) -> None:
        """Put the inspection on the list."""
        seen = Inspection(self.at.exact, self.gap.exact, self.gap_error.exact, self.late.exact, self.late_error.exact)
        if self._model.send(NoteInspection(seen)):
            self.at.show_value(min(self.at.exact + self.hours.exact, MAX_HOURS))

    def drop(self) -> None:
        """Strike out the inspection that is chosen, or the last."""
        row = self.table.chosen_row()
        last = len(self._model.state.inspections) - 1
        self._model.send(DropInspection(row if 0 <= row <= last else last))

    def use_rates(self) -> None:
        """Put the rates found into the fields."""
        for spin, rate, hidden in (
            (self.heel, self._heel_rate, self._hidden_mm_per_100h),
            (self.pip, self._pip_rate, 0.0),
        ):
            if rate is not None:
                spin.show_value(max(0.0, rate.mm_per_100h + hidden))
                self._given(spin)
        self._show()

    def wear_bench(self) -> None:
        """Wear the magneto on the bench by the hours to the next inspection."""
        try:
            after = worn(self._model.state.magneto, self.rates, self.hours.exact).condition
        except ValueError as error:
            self._model.refused.emit(str(error))
            return
        gesture = self._model.gesture()
        if after.heel_wear_mm != self._model.state.magneto.condition.heel_wear_mm:
            self._model.send(WearHeel(after.heel_wear_mm), gesture)
        if after.face_burn_mm != self._model.state.magneto.condition.face_burn_mm:
            self._model.send(BurnFaces(after.face_burn_mm), gesture)
        self._model.send(GrowPip(after.pip_height_mm), gesture)

    def halt(self) -> None:
        """Nothing runs here."""
