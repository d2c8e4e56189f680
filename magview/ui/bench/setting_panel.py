"""The calculator beside the picture: setting, readings with verdicts, lobes, and what would put it right."""

from __future__ import annotations

from collections.abc import Iterable
from functools import partial

from PySide6.QtCore import QEvent, Qt, Signal
from PySide6.QtWidgets import (
    QCheckBox,
    QFormLayout,
    QGridLayout,
    QGroupBox,
    QHBoxLayout,
    QLabel,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from magview.bench.actions import (
    Action,
    HoldRotor,
    LetGo,
    SetBoth,
    TightenClamps,
    TightenLock,
    TurnBackplate,
    TurnRotor,
    TurnScrew,
)
from magview.bench.advised import ORDERS, Advised, advised, advised_steps, advised_words
from magview.bench.apply import ROTOR_LIMIT_DEG
from magview.bench.events import KINDS
from magview.bench.lamp import Standing, standing
from magview.bench.lamp_words import standing_words
from magview.bench.state import BenchState, readings, same_but_worn
from magview.bench.verdict import blade_words, faults, judged_words, mark_words, never_words
from magview.curves.lift import opening_limit_deg
from magview.physics.cam.setting import Readings
from magview.spec.language import format_angle, format_length, marked, number, tr
from magview.spec.units import length_digits
from magview.ui.bench.bench_warning import BenchWarning
from magview.ui.kit.bench_model import BenchModel
from magview.ui.kit.callout import Callout
from magview.ui.kit.gauge import Gauge, Measured
from magview.ui.kit.inputs import AngleSpin, LengthSpin, QuietCombo
from magview.ui.kit.look import Look
from magview.ui.kit.signs import Sign
from magview.ui.kit.steps import Steps
from magview.ui.kit.strip import Foot
from magview.ui.kit.style import tint
from magview.ui.kit.table import Table

_RUNS = {"contacts just open": marked("just open"), "contacts just close": marked("just close")}
"""Shorter words for what a run stops at."""


class SettingPanel(QWidget):
    """Spin boxes that send actions, and labels that show what physics says of the state."""

    hand_wanted = Signal(str)
    """A spin box got the keyboard: its part is now in hand."""

    def __init__(self, model: BenchModel, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._model, self.look = model, look
        self._advised: Advised | None = None
        layout = QVBoxLayout(self)
        layout.setContentsMargins(8, 4, 8, 4)
        layout.addWidget(self._build_setting())
        layout.addWidget(self._build_readings())
        layout.addWidget(self._build_advice())
        layout.addWidget(self._build_lobes())
        layout.addWidget(BenchWarning(model))
        layout.addWidget(Foot(look))
        layout.addStretch(1)
        self.callout = Callout(self, model)
        self._placed(model.state)
        self.show_state(model.state)
        model.changed.connect(self.show_state)
        look.changed.connect(self._show_again)

    # -------------------------------------------------------------- building

    def _build_setting(self) -> QGroupBox:
        box = QGroupBox(tr("Setting"))
        form = QFormLayout(box)
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
        to_e_gap = QPushButton(tr("To the E-gap"))
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
        return box

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

    def _build_readings(self) -> QGroupBox:
        box = QGroupBox(tr("Readings, lobe 1"))
        column = QVBoxLayout(box)
        self.gauges = {
            "error": Gauge(tr("From the E-gap"), self.look),
            "gap": Gauge(tr("Largest gap"), self.look),
            "mark": Gauge(tr("Straightedge off mark"), self.look),
        }
        for gauge in self.gauges.values():
            column.addWidget(gauge)
        grid = QGridLayout()
        grid.setColumnStretch(1, 1)
        self._values: dict[str, QLabel] = {}
        for row, (key, name) in enumerate((("opens", tr("Contacts open at")), ("dwell", tr("Closed for (dwell)")))):
            value = self._values[key] = QLabel()
            value.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
            value.setAccessibleName(name)
            grid.addWidget(QLabel(name), row, 0)
            grid.addWidget(value, row, 1)
        column.addLayout(grid)
        self.overall = QLabel()
        self.overall.setWordWrap(True)
        self.overall.setAlignment(Qt.AlignmentFlag.AlignTop)
        column.addWidget(self.overall)
        return box

    def _build_advice(self) -> QGroupBox:
        box = QGroupBox(tr("What would put it right"))
        column = QVBoxLayout(box)
        row = QHBoxLayout()
        self.wanted = LengthSpin(0.01, 0.0, 5.0, self.look)
        label = QLabel(tr("For a l&argest gap of"))
        label.setBuddy(self.wanted)
        row.addWidget(label)
        row.addWidget(self.wanted, 1)
        self.advice = Steps(self.look, tr("Set it so"))
        self.do_it = self.advice.button
        self.advice.show_me.connect(self._set_both)
        column.addLayout(row)
        column.addWidget(self.advice)
        self.orders = QLabel(tr(ORDERS))
        self.orders.setWordWrap(True)
        column.addWidget(self.orders)
        self.lamp = QLabel()
        self.lamp.setWordWrap(True)
        column.addWidget(self.lamp)
        self.wanted.entered.connect(self._wanted_entered)
        self.wanted.said.connect(partial(self._said, self.wanted))
        return box

    def _build_lobes(self) -> QGroupBox:
        box = QGroupBox(tr("Every lobe, in firing order"))
        column = QVBoxLayout(box)
        heads = (tr("Opens"), tr("Error"), tr("Closes"), tr("Dwell"), tr("Gap"))
        self.lobes = Table(tr("Readings of every lobe"), heads, wide=range(5), numbers=range(5))
        self.lobes.setToolTip(tr("Rotor degrees; the gap is the largest, at the top of the lobe"))
        self.lobes.verticalHeader().show()
        self.lobes.show_at_most(9)
        column.addWidget(self.lobes)
        return box

    # -------------------------------------------------------------- showing

    def show_state(self, state: BenchState, old: BenchState | None = None) -> None:
        """Follow the bench to its new state."""
        if old is not None and not same_but_worn(old.magneto, state.magneto):
            self._placed(state)
        self.rotor.show_value(state.rotor_deg)
        self.plate.show_value(state.backplate_deg)
        self.screw.show_value(state.screw_deg)
        self.hold.setChecked(state.held)
        self.lock.setChecked(state.lock_tight)
        self.clamps.setChecked(state.clamps_tight)
        setting = (state.magneto, state.backplate_deg, state.screw_deg)
        if old is None or setting != (old.magneto, old.backplate_deg, old.screw_deg):
            result = readings(state)
            self._show_readings(state, result)
            self._show_lobes(state, result)
        told = (*setting, state.lock_tight, state.clamps_tight)
        if old is None or told != (
            old.magneto, old.backplate_deg, old.screw_deg, old.lock_tight, old.clamps_tight
        ):  # fmt: skip
            self._show_advice(state)
        if old is None or (*setting, state.engaged) != (old.magneto, old.backplate_deg, old.screw_deg, old.engaged):
            self._show_lamp(state)

    def _show_again(self) -> None:
        self.show_state(self._model.state)

    def halt(self) -> None:
        """Nothing runs here."""

    def _placed(self, state: BenchState) -> None:
        """Another magneto: its slot, its screw, its gap, its lobes."""
        for spin, label, (low, high) in (
            (self.plate, self.plate_range, state.magneto.backplate.range_deg),
            (self.screw, self.screw_range, state.magneto.contact_screw.range_deg),
        ):
            blocked = spin.blockSignals(True)
            spin.setRange(low, high)
            spin.blockSignals(blocked)
            label.setText(tr("{low:+g}° to {high:+g}°", low=low, high=high))
        self.wanted.show_value(state.magneto.designed_setting.gap_mm)
        self.fit_rows()

    def changeEvent(self, event: QEvent) -> None:
        """Type of another size needs other room."""
        super().changeEvent(event)
        if event.type() == QEvent.Type.FontChange:
            self.fit_rows()

    def fit_rows(self) -> None:
        """Room for every lobe, and for the longest advice, at the present size of type."""
        # The hint of the spin box asks for room for a million degrees.
        self.rotor.setMinimumWidth(self.fontMetrics().horizontalAdvance("+0000.00°") + 34)
        # Nothing below the verdict and the advice jumps while a part is dragged.
        self.overall.setMinimumHeight(2 * self.fontMetrics().height() + 2)
        creeps = self._model.state.magneto.condition.screw_creep_deg != 0.0
        self.advice.setMinimumHeight((10 if creeps else 8) * self.fontMetrics().height())

    def _show_readings(self, state: BenchState, result: Readings) -> None:
        marks, limits, inches = state.magneto.marks, state.magneto.gap_limits_mm, self.look.inches
        error, gap, off = (float(v) for v in (result.e_gap_error_deg[0], result.max_gap_mm[0], result.mark_offset_mm))
        never = never_words(result)
        timed = Sign.IN if result.timing_ok[0] else Sign.OUT
        angle = abs(error)
        late = tr("{angle:deg} late", angle=angle) if error > 0 else tr("{angle:deg} early", angle=angle)
        late = never or (tr("at it") if abs(error) < 0.005 else late)
        allowed = opening_limit_deg(state.magneto)
        ends = format_angle(-allowed, True), format_angle(allowed, True)
        self.gauges["error"].show_value(Measured(error, -allowed, allowed, late, ends, timed))

        digits = length_digits(gap, *limits, inches)
        blade = float(result.blade_gap_mm[0])
        words = format_length(gap, digits=digits)
        if blade < gap:
            words = tr("{gap} (blade {blade:length})", gap=words, blade=blade)
        ends = _ends(format_length(v, digits=digits) for v in limits)
        sign = Sign.IN if result.gap_ok[0] else Sign.OUT
        self.gauges["gap"].show_value(Measured(gap, *limits, words, ends, sign))

        allowed, digits = marks.tolerance_mm, length_digits(abs(off), None, marks.tolerance_mm, inches)
        words = mark_words(format_length(abs(off), digits=digits), off)
        ends = _ends(f"{sign}{format_length(allowed, digits=digits)}" for sign in "-+")
        marked_by = Sign.NONE if never else timed  # there is nothing to hold the straightedge against
        self.gauges["mark"].show_value(Measured(off, -allowed, allowed, words, ends, marked_by))

        self._values["opens"].setText(never or tr("{opens:deg} of rotor", opens=result.opens_deg[0]))
        self._values["dwell"].setText(format_angle(result.dwell_deg[0]))
        self._show_overall(state, result)

    def _show_overall(self, state: BenchState, result: Readings) -> None:
        found, judged = faults(state.magneto, result), judged_words(state.magneto)
        if found:
            text, colour = tr("✗ Out of limits: {faults}", faults="; ".join(found)), self.look.theme.bad
        else:
            text, colour = tr("✓ Within limits"), self.look.theme.good
        if short := blade_words(state.magneto, result):
            text, colour = f"{text}. {short}" if found else short, self.look.theme.bad
        text += f" ({judged})" if judged else ""
        self.overall.setText(text)
        tint(self.overall, colour, bold=True)

    def _show_lobes(self, state: BenchState, result: Readings) -> None:
        inches, limits = self.look.inches, state.magneto.gap_limits_mm
        gaps = [float(gap) for gap in result.max_gap_mm]
        self.lobes.fill([
            (
                format_angle(result.opens_deg[row]),
                format_angle(result.e_gap_error_deg[row], True),
                format_angle(result.closes_deg[row]),
                format_angle(result.dwell_deg[row]),
                format_length(gap, inches, length_digits(gap, *limits, inches)),
            )
            for row, gap in enumerate(gaps)
        ])  # fmt: skip

    def _show_advice(self, state: BenchState) -> None:
        self._advised = advised(state, self.wanted.exact)
        self.do_it.setEnabled(self._advised.reachable)
        steps = advised_steps(state, self._advised)
        self.advice.show_steps(steps, "" if steps else advised_words(state, self._advised))

    def _show_lamp(self, state: BenchState) -> None:
        """Show what setting the contacts does to the lamp's reading: said here too, where it is done."""
        engaged = state.engaged
        old = engaged is not None and standing(state, engaged.side) is Standing.OUT_OF_DATE
        self.lamp.setText(standing_words(state, engaged.side) if engaged is not None and old else "")
        self.lamp.setVisible(old)
        tint(self.lamp, self.look.theme.bad, bold=True)

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

    def _wanted_entered(self, value: float) -> None:
        self._show_advice(self._model.state)

    def _to_e_gap(self) -> None:
        self._model.send(TurnRotor(self._model.state.magneto.e_gap_deg))

    def _to_opening(self) -> None:
        opens = float(readings(self._model.state).opens_deg[0])
        if opens == opens:
            self._model.send(TurnRotor(opens))
        else:
            self._said(self.to_opening, tr("With this setting lobe 1 never opens or never closes the contacts."))

    def _set_both(self) -> None:
        if self._advised is not None and self._advised.reachable:
            self._send(SetBoth(self._advised.backplate_deg, self._advised.screw_deg), self.do_it)


def _ends(limits: Iterable[str]) -> tuple[str, str]:
    """Two limits without their unit, which stands once, behind the value."""
    low, high = (words.split()[0] for words in limits)
    return low, high
