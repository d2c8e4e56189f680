"""Trials: what the plate and the blades said, and what to try next."""

from __future__ import annotations

import math
from collections.abc import Sequence
from pathlib import Path

from PySide6.QtCore import QSignalBlocker, Qt, Signal
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

from magview.bench.actions import DropTrial, NoteTrial, ReadTrials, TurnBackplate
from magview.bench.advice_words import advice_words, disagreement_words, plate_words
from magview.bench.state import BenchState, readings
from magview.bench.sureness import NEVER_OPENS
from magview.physics.trials.advice import Advice, Outcome, advise
from magview.physics.trials.flank_fit import fitted_magneto
from magview.physics.trials.trial import HowRead, PlateScale, ReadingErrors, ScaleKind, Trial
from magview.physics.uncertainty.instruments import INSTRUMENTS, Role, passing_blade_mm
from magview.spec.base import SpecError
from magview.spec.files import write_model
from magview.spec.formats import ENDING, file_filter
from magview.spec.language import format_angle, format_length, marked, tr
from magview.spec.units import MM_PER_THOU
from magview.ui.kit.asking import ask_save
from magview.ui.kit.bench_model import BenchModel
from magview.ui.kit.inputs import AngleSpin, LengthSpin, NumberSpin, QuantitySpin, QuietCombo
from magview.ui.kit.look import Look
from magview.ui.kit.strip import Foot
from magview.ui.kit.style import tint
from magview.ui.kit.table import Table

_COLUMNS = (marked("Plate"), marked("Gap"), marked("Opened"))
_SCALES = {
    ScaleKind.DEGREES: marked("Degrees"),
    ScaleKind.SLOT: marked("Millimetres along the slot"),
    ScaleKind.MARKS: marked("Scale marks"),
}
_PLATE_READ = {ScaleKind.DEGREES: 0.1, ScaleKind.SLOT: 0.25, ScaleKind.MARKS: 0.25}
"""Half-width of the plate's reading in each, until somebody says otherwise (common practice): a tenth of a degree,
half a millimetre by rule, a quarter of the way between two marks."""


class TrialsPanel(QWidget):
    """The next trial above, those made in the middle, the advice below."""

    advised = Signal()
    """Another trial, or another magneto: the advice is new."""
    said = Signal(str)
    """One sentence about what was done."""
    _came_stale = Signal()

    def __init__(self, model: BenchModel, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._model, self.look = model, look
        self._advice: Advice | None = None
        self._refusal = ""
        self._stale = True
        """Whether the bench has changed since the advice was made."""
        self._queued = False
        column = QVBoxLayout(self)
        column.setContentsMargins(8, 4, 8, 4)
        column.addWidget(self._build_trial())
        column.addWidget(self._build_reading())
        column.addWidget(self._build_list())
        column.addWidget(self._build_advice())
        column.addWidget(Foot(look))
        column.addStretch(1)
        self._show_reading(model.state.trials_read)
        self.take_from_bench()
        model.changed.connect(self._changed)
        look.changed.connect(self._show)
        # A fit takes a while: made once the bench has taken all that one move sends it, and only if somebody looks.
        self._came_stale.connect(self._catch_up, Qt.ConnectionType.QueuedConnection)
        self._show()

    # -------------------------------------------------------------- building

    def _build_trial(self) -> QGroupBox:
        box = QGroupBox(tr("A trial: set to open at the E-gap"))
        form = self._form = QFormLayout(box)
        self.plate = AngleSpin(0.25, -3600.0, 3600.0)
        self.along = LengthSpin(0.1, -500.0, 500.0, self.look)
        self.marks = NumberSpin(1.0, -1000.0, 1000.0)
        self.marks.show_value(0.0)
        self.go, self.no_go = LengthSpin(0.01, 0.0, 10.0, self.look), LengthSpin(0.01, 0.0, 10.0, self.look)
        self.go.setToolTip(tr("The thickest blade that passes at the top of lobe 1; 0 if none does"))
        self.no_go.setToolTip(tr("The thinnest blade that does not pass; 0 if every blade did"))
        self.opened = AngleSpin(0.25, -45.0, 45.0)
        self.opened.setToolTip(tr("How far past the E-gap the contacts opened, if the straightedge showed it"))
        for name, spin in (
            (tr("Plate, with rotation +"), self.plate), (tr("Along the slot"), self.along),
            (tr("Marks, with rotation +"), self.marks),
            (tr("&Blade that passes"), self.go), (tr("Blade that does n&ot"), self.no_go),
            (tr("Opened late by"), self.opened),
        ):  # fmt: skip
            form.addRow(name, spin)
            if isinstance(spin, QuantitySpin):
                spin.said.connect(self._model.refused)
        row = QHBoxLayout()
        take, note = QPushButton(tr("Fro&m the bench")), QPushButton(tr("&Note the trial"))
        take.setToolTip(tr("The plate as it stands, and what blades in steps of a thousandth of an inch would find"))
        take.clicked.connect(self.take_from_bench)
        note.clicked.connect(self.note)
        self.note_button = note
        row.addWidget(take)
        row.addWidget(note)
        form.addRow(row)
        return box

    def _build_reading(self) -> QGroupBox:
        box = QGroupBox(tr("How it is read"))
        form = self._reading_form = QFormLayout(box)
        self.scale = QuietCombo()
        self.scale.addItems([tr(scale) for scale in _SCALES.values()])
        self.scale.currentIndexChanged.connect(self._scale_chosen)
        self.radius, self.per_mark = LengthSpin(1.0, 1.0, 500.0, self.look), AngleSpin(0.25, 0.01, 90.0)
        self.radius.show_value(30.0)
        self.per_mark.show_value(1.0)
        self.plate_error = NumberSpin(0.05, 0.0, 90.0)
        self.mark_error, self.blade_error = (
            LengthSpin(0.05, 0.0, 10.0, self.look),
            LengthSpin(0.001, 0.0, 1.0, self.look),
        )
        self.straightedge = self._instruments("straightedge", self.mark_error)
        self.feel = self._instruments("feel", self.blade_error)
        self.plate_error.setToolTip(tr("How far a plate read may be off, to either side, in the unit it is read in"))
        self.mark_error.setToolTip(tr("How far the rim mark may be from the straightedge when they seem to meet"))
        self.blade_error.setToolTip(tr("How far the gap may be from the blade that just passes"))
        form.addRow(tr("Plate rea&d in"), self.scale)
        for name, widget in (
            (tr("Slot's radius"), self.radius), (tr("Between two marks"), self.per_mark),
            (tr("Plate read to ±"), self.plate_error),
            (tr("Opening shown by"), self.straightedge), (tr("Opening read to ±"), self.mark_error),
            (tr("Blades judged by"), self.feel), (tr("Blades felt to ±"), self.blade_error),
        ):  # fmt: skip
            form.addRow(name, widget)
            if isinstance(widget, QuantitySpin):
                widget.said.connect(self._model.refused)
                widget.entered.connect(self._reading_entered)
        return box

    def _instruments(self, role: Role, error: LengthSpin) -> QuietCombo:
        """A choice of instruments that fills in how closely they read; the figure may be changed."""
        combo = QuietCombo()
        for instrument in INSTRUMENTS:
            if instrument.role == role:
                combo.addItem(tr(instrument.name), instrument.half_width)
        combo.addItem(tr("as entered below"), None)

        def chosen(_: int) -> None:
            if (half := combo.currentData()) is not None:
                error.show_value(half)
                self._reading_entered()

        combo.activated.connect(chosen)
        return combo

    def _build_list(self) -> QGroupBox:
        box = QGroupBox(tr("Trials made"))
        column = QVBoxLayout(box)
        self.table = Table(tr("Trials made"), [tr(column) for column in _COLUMNS], wide=(1,))
        self.table.setMinimumHeight(110)
        self.table.setMaximumHeight(170)
        self.drop_button = QPushButton(tr("Stri&ke out"))
        self.drop_button.setToolTip(tr("Strike out the trial that is chosen, or the last"))
        self.drop_button.clicked.connect(self.drop)
        column.addWidget(self.table)
        column.addWidget(self.drop_button)
        return box

    def _build_advice(self) -> QGroupBox:
        box = QGroupBox(tr("What to do next"))
        column = QVBoxLayout(box)
        self.chance, self.reason, self.warnings = QLabel(), QLabel(), QLabel()
        for label in (self.chance, self.reason, self.warnings):
            label.setWordWrap(True)
            column.addWidget(label)
        row = QHBoxLayout()
        self.turn_button = QPushButton(tr("T&urn the plate there"))
        self.save_button = QPushButton(tr("&Save what was found…"))
        self.turn_button.setToolTip(
            tr("Turn the plate on the bench; then set the contacts to open at the E-gap again")
        )
        self.save_button.setToolTip(
            tr("Save a magneto file of your own, with lift, rise and index as the trials tell")
        )
        self.turn_button.clicked.connect(self.turn)
        self.save_button.clicked.connect(self.save)
        row.addWidget(self.turn_button)
        row.addWidget(self.save_button)
        column.addLayout(row)
        return box

    # -------------------------------------------------------------- the trial

    @property
    def _kind(self) -> ScaleKind:
        return tuple(_SCALES)[self.scale.currentIndex()]

    @property
    def _scale(self) -> PlateScale:
        match self._kind:
            case ScaleKind.SLOT:
                return PlateScale.slot(self.radius.exact)
            case ScaleKind.MARKS:
                return PlateScale.marks(self.per_mark.exact)
        return PlateScale()

    def _scale_chosen(self, _: int) -> None:
        self.plate_error.show_value(_PLATE_READ[self._kind])
        self._reading_entered()

    def _reading_entered(self, _: float = 0.0) -> None:
        scale = self._scale
        errors = ReadingErrors(self.mark_error.exact, scale.to_deg(self.plate_error.exact), self.blade_error.exact)
        self._model.send(ReadTrials(HowRead(scale, errors)))

    def _show_reading(self, how: HowRead) -> None:
        kind, errors = how.scale.kind, how.errors
        with QSignalBlocker(self.scale):
            self.scale.setCurrentIndex(tuple(_SCALES).index(kind))
        if kind is ScaleKind.SLOT:
            self.radius.show_value(how.scale.slot_radius_mm)
        if kind is ScaleKind.MARKS:
            self.per_mark.show_value(how.scale.deg_per_unit)
        self.plate_error.show_value(how.scale.from_deg(errors.plate_deg))
        for combo, spin, value in (
            (self.straightedge, self.mark_error, errors.mark_mm), (self.feel, self.blade_error, errors.blade_mm)
        ):  # fmt: skip
            spin.show_value(value)
            known = [i for i in range(combo.count() - 1) if abs(combo.itemData(i) - value) < 1e-9]
            combo.setCurrentIndex(known[0] if known else combo.count() - 1)
        for of, form, widget in (
            (ScaleKind.DEGREES, self._form, self.plate),
            (ScaleKind.SLOT, self._form, self.along), (ScaleKind.SLOT, self._reading_form, self.radius),
            (ScaleKind.MARKS, self._form, self.marks), (ScaleKind.MARKS, self._reading_form, self.per_mark),
        ):  # fmt: skip
            form.setRowVisible(widget, of is kind)

    @property
    def plate_deg(self) -> float:
        """The plate as it was read [deg], positive with cam rotation."""
        read = {ScaleKind.DEGREES: self.plate, ScaleKind.SLOT: self.along, ScaleKind.MARKS: self.marks}[self._kind]
        return self._scale.to_deg(read.exact)

    def take_from_bench(self) -> None:
        """Read plate, blades and opening of the bench as it stands."""
        state = self._model.state
        result = readings(state)
        if not math.isfinite(float(result.e_gap_error_deg[0])):
            self._model.refused.emit(tr(NEVER_OPENS))
            return
        passes = passing_blade_mm(float(result.blade_gap_mm[0]), MM_PER_THOU)
        for scale, spin in (
            (PlateScale(), self.plate),
            (PlateScale.slot(self.radius.exact), self.along),
            (PlateScale.marks(self.per_mark.exact), self.marks),
        ):
            spin.show_value(scale.from_deg(state.backplate_deg))
        self.go.show_value(passes)
        self.no_go.show_value(passes + MM_PER_THOU)
        error = float(result.e_gap_error_deg[0])
        # Within the marks' tolerance nobody sees it.
        self.opened.show_value(0.0 if bool(result.timing_ok[0]) else round(error, 1))

    def note(self) -> None:
        """Put the trial on the list, or say why it cannot be one."""
        if self.no_go.exact and self.go.exact >= self.no_go.exact:
            self._model.refused.emit(tr("the blade that passes must be thinner than the one that does not"))
            return
        try:
            trial = Trial(self.plate_deg, self.go.exact, self.no_go.exact or math.inf, self.opened.exact)
        except ValueError as error:
            self._model.refused.emit(str(error))
            return
        self._model.send(NoteTrial(trial))

    def drop(self) -> None:
        """Strike out the trial that is chosen, or the last."""
        row, last = self.table.chosen_row(), len(self._model.state.trials) - 1
        self._model.send(DropTrial(row if 0 <= row <= last else last))

    # -------------------------------------------------------------- advice

    def _changed(self, state: BenchState, old: BenchState) -> None:
        if state.trials_read != old.trials_read:
            self._show_reading(state.trials_read)
        if (state.magneto, state.trials, state.trials_read) == (old.magneto, old.trials, old.trials_read):
            return
        self._stale = True
        self._show_list(state, ())
        if not self._queued:
            self._queued = True
            self._came_stale.emit()

    def _catch_up(self) -> None:
        self._queued = False
        if self.isVisible():
            self._show()
        else:
            self.advised.emit()  # a plot may be looking where this page is not

    def showEvent(self, event: QShowEvent) -> None:
        """While it was hidden no advice was made."""
        if self._stale:
            self._show()
        super().showEvent(event)

    @property
    def last_advice(self) -> Advice | None:
        """The advice as it was last made; the bench may have changed since."""
        return self._advice

    @property
    def advice(self) -> Advice | None:
        """Advice from the trials so far, made now if the bench has changed; None where nothing can be said."""
        if self._stale:
            self._stale = False
            state = self._model.state
            try:
                self._advice = advise(
                    state.magneto, state.trials, errors=state.trials_read.errors, scale=state.trials_read.scale
                )
            except ValueError as error:
                self._advice, self._refusal = None, str(error)
        return self._advice

    def _show(self) -> None:
        state, advice = self._model.state, self.advice
        self._show_list(state, advice.fit.outliers if advice is not None else ())
        if advice is None:
            self.reason.setText(tr("No advice: {refusal}.", refusal=self._refusal))
        for widget in (self.chance, self.warnings):
            widget.setVisible(advice is not None)
        for button in (self.turn_button, self.save_button):
            button.setEnabled(advice is not None)
        if advice is not None:
            self.save_button.setEnabled(bool(state.trials))
            self.turn_button.setEnabled(advice.outcome in (Outcome.START, Outcome.MOVE, Outcome.UNREACHABLE))
            done = advice.outcome is Outcome.DONE
            self.chance.setText(
                tr("✓ Done")
                if done
                else tr("{chance:.0f} % likely that the blades say “in limits” there", chance=100 * advice.chance)
            )
            tint(
                self.chance, self.look.theme.good if done or advice.chance >= 0.5 else self.look.theme.text, bold=True
            )
            self.reason.setText(advice_words(advice))
            warnings = disagreement_words(advice.fit)
            self.warnings.setText("\n".join(f"⚠ {w}" for w in warnings))
            self.warnings.setVisible(bool(warnings))
        self.advised.emit()

    def _show_list(self, state: BenchState, out: Sequence[int]) -> None:
        rows = []
        for row, trial in enumerate(state.trials):
            low, high = (format_length(v) for v in (trial.gap_low_mm, trial.gap_high_mm))
            gap = (
                tr("over {low}", low=low)
                if math.isinf(trial.gap_high_mm)
                else tr("{low} to {high}", low=low.split()[0], high=high)
            )
            opened = (
                tr("at the mark") if trial.opening_error_deg == 0 else format_angle(trial.opening_error_deg, True)
            )
            mark = " ⚠" if row in out else ""
            rows.append((plate_words(state.trials_read.scale, trial.backplate_deg), gap + mark, opened))
        self.table.fill(rows)
        self.drop_button.setEnabled(bool(state.trials))

    def turn(self) -> None:
        """Turn the plate where the advice says."""
        if self.advice is not None:
            self._model.send(TurnBackplate(self.advice.backplate_deg))

    def save(self) -> None:
        """Ask where, and write the magneto that the trials tell of."""
        path = ask_save(self, tr("Save what was found"), f"my-magneto{ENDING}", file_filter(tr("Magneto")))
        if path is not None:
            self.save_to(path)

    def save_to(self, path: Path) -> None:
        """Write the magneto that the trials tell of; a failure is one sentence."""
        if self.advice is None:
            return
        try:
            write_model(path, fitted_magneto(self.advice.fit))
        except SpecError as error:
            self._model.refused.emit(str(error))
            return
        self.said.emit(tr("Saved {name}: open it from the File menu.", name=path.name))

    # -------------------------------------------------------------- looks

    def halt(self) -> None:
        """Nothing runs here."""
