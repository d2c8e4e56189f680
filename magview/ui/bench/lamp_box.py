"""Timing of each magneto: lamp readings, timing wanted, what is out of tolerance, and the crank."""

from __future__ import annotations

import math
from functools import partial

from PySide6.QtCore import QEvent
from PySide6.QtWidgets import (
    QButtonGroup,
    QGridLayout,
    QGroupBox,
    QHBoxLayout,
    QLabel,
    QPushButton,
    QRadioButton,
    QWidget,
)

from magview.bench.actions import Action, ReadLamp, TurnCrank, ViewSide, WantTiming
from magview.bench.apply import BTDC_LIMIT_DEG, LAMP_LIMIT_DEG
from magview.bench.engine_words import speed_words
from magview.bench.lamp import Standing, foretold, standing
from magview.bench.lamp_words import NOT_READ, should_read_words, should_words, standing_words
from magview.bench.state import BenchState, Engaged, Side, crank_deg, firing_btdc_deg, mounting_of, readings
from magview.bench.timing import TimingError, timing_error, timing_verdict
from magview.spec.language import format_angle, marked, tr
from magview.ui.kit.bench_model import BenchModel
from magview.ui.kit.gauge import Gauge, Measured
from magview.ui.kit.inputs import AngleSpin, BtdcSpin, CrankSpin
from magview.ui.kit.look import Look
from magview.ui.kit.signs import Sign
from magview.ui.kit.steady_label import SteadyLabel
from magview.ui.kit.style import tint
from magview.ui.kit.theme import Theme

SIDES: tuple[Side, Side] = ("left", "right")

_SIDE_WORDS = {"left": marked("Left"), "right": marked("Right")}

_EARLY = marked("{crank:deg} of crank early = {rotor:deg} of rotor = {piston:length} of piston travel.")
_LATE = marked("{crank:deg} of crank late = {rotor:deg} of rotor = {piston:length} of piston travel.")
_PISTON = {
    (True, True): marked("Piston of No. 1: fires {fires:length} before its top, wanted {wanted:length} before it."),
    (True, False): marked("Piston of No. 1: fires {fires:length} before its top, wanted {wanted:length} after it."),
    (False, True): marked("Piston of No. 1: fires {fires:length} after its top, wanted {wanted:length} before it."),
    (False, False): marked("Piston of No. 1: fires {fires:length} after its top, wanted {wanted:length} after it."),
}
"""By whether it fires, and is wanted, before top dead centre."""


class LampBox(QGroupBox):
    """A row for each magneto of the engine, and the crank."""

    def __init__(self, model: BenchModel, look: Look) -> None:
        super().__init__(tr("Where it fires, crank degrees before top dead centre"))
        self._model = model
        grid = QGridLayout(self)
        for column, text in enumerate((tr("Magneto"), tr("Lamp reads"), tr("Wanted"), tr("Fires now"))):
            grid.addWidget(QLabel(text), 0, column)
        self.sides = QButtonGroup(self)
        self.radio: dict[Side, QRadioButton] = {}
        self.reads: dict[Side, AngleSpin] = {}
        self.wanted: dict[Side, AngleSpin] = {}
        self.now: dict[Side, Gauge] = {}
        for row, side in enumerate(SIDES, start=1):
            radio = QRadioButton(tr(_SIDE_WORDS[side]))
            radio.setToolTip(tr("Show this magneto's coupling"))
            self.sides.addButton(radio, row)
            reads, wanted = (BtdcSpin(0.5, -limit, limit) for limit in (LAMP_LIMIT_DEG, BTDC_LIMIT_DEG))
            left = side == "left"
            reads.setAccessibleName(tr("left magneto, lamp reads") if left else tr("right magneto, lamp reads"))
            wanted.setAccessibleName(tr("left magneto, wanted") if left else tr("right magneto, wanted"))
            now = Gauge(tr("left magneto fires now") if left else tr("right magneto fires now"), look, flat=True)
            for column, widget in enumerate((radio, reads, wanted, now)):
                grid.addWidget(widget, row, column)
            self.radio[side], self.reads[side], self.wanted[side], self.now[side] = radio, reads, wanted, now
        for spin in (*self.reads.values(), *self.wanted.values()):
            spin.refuse_beyond()  # 221 for 22.1 must not be planned from as 90
            spin.said.connect(partial(self._said, spin))
        # A lamp may say just what the field began with: typed, that is a reading like any other.
        for signal in (self.reads["left"].entered, self.reads["left"].confirmed):
            signal.connect(self._left_read)
        for signal in (self.reads["right"].entered, self.reads["right"].confirmed):
            signal.connect(self._right_read)
        self.wanted["left"].entered.connect(self._left_wanted)
        self.wanted["right"].entered.connect(self._right_wanted)
        self.sides.idClicked.connect(self._side_chosen)
        grid.setColumnStretch(3, 1)
        self.warning = QLabel()
        self.warning.setWordWrap(True)
        grid.addWidget(self.warning, 6, 0, 1, 4)
        self.should = SteadyLabel()
        self.reads_so = QPushButton(tr("It reads s&o"))
        self.reads_so.setToolTip(tr("Enter as the new reading what the lamp should now read, once it was read again"))
        self.reads_so.clicked.connect(self._reads_so)
        should_row = QHBoxLayout()
        should_row.addWidget(self.should, 1)
        should_row.addWidget(self.reads_so)
        grid.addLayout(should_row, 5, 0, 1, 4)
        self.error = SteadyLabel()
        grid.addWidget(self.error, 3, 0, 1, 4)
        row_box = QHBoxLayout()
        self.crank = CrankSpin(1.0, -360.0, 360.0)
        self.crank.setToolTip(tr("Crank from No. 1's firing top dead centre, positive the way the engine turns"))
        label = QLabel(tr("Cran&k"))
        label.setBuddy(self.crank)
        to_firing, to_tdc = QPushButton(tr("To firing")), QPushButton(tr("To TDC"))
        to_firing.clicked.connect(self._to_firing)
        to_tdc.clicked.connect(self._to_tdc)
        self.crank.entered.connect(self._crank_entered)
        self.crank.said.connect(partial(self._said, self.crank))
        row_box.addWidget(label)
        row_box.addWidget(self.crank, 1)
        row_box.addWidget(to_firing)
        row_box.addWidget(to_tdc)
        grid.addLayout(row_box, 4, 0, 1, 4)
        self.fit_rows()

    # -------------------------------------------------------------- showing

    def show_crank(self, state: BenchState) -> None:
        """Show where the crank stands."""
        self.crank.show_value(_one_cycle(crank_deg(state)))

    def show_timing(self, state: BenchState, engaged: Engaged, theme: Theme) -> None:
        """Show readings and verdicts."""
        single, allowed = engaged.installation.position == "single", engaged.installation.engine.timing_tolerance_deg
        for side in SIDES:
            shown = not single or side == "left"
            for widget in (self.radio[side], self.reads[side], self.wanted[side], self.now[side]):
                widget.setVisible(shown)
            self.radio[side].setText(tr("Single") if single else tr(_SIDE_WORDS[side]))
            self.radio[side].setChecked(engaged.side == side)
            fires, wanted = firing_btdc_deg(state, side), mounting_of(engaged, side).wanted_btdc_deg
            low, high = wanted - allowed, wanted + allowed
            sign = Sign.IN if timing_verdict(state, side) else Sign.OUT
            words = "–" if math.isnan(fires) else format_angle(fires)
            ends = format_angle(low), format_angle(high)
            self.now[side].show_value(Measured(fires, low, high, words, ends, sign))
        self._show_entries(engaged)
        self._show_warning(state, engaged, theme)
        self._show_error(state, engaged)

    def _show_entries(self, engaged: Engaged) -> None:
        for side, mounting in zip(SIDES, (engaged.left, engaged.right), strict=True):
            self.reads[side].show_value(mounting.reads_btdc_deg)
            self.wanted[side].show_value(mounting.wanted_btdc_deg)

    def _show_warning(self, state: BenchState, engaged: Engaged, theme: Theme) -> None:
        """Show what stands in the way of timing to the engine."""
        warnings = []
        if not readings(state).within_limits:
            warnings.append(
                tr("⚠ The internal timing is out of limits: put that right first, no tooth makes up for it.")
            )
        mismatch = speed_words(engaged.installation)
        if mismatch:
            warnings.append(tr("⚠ The installation does not fit together: {mismatch}.", mismatch=mismatch))
        if not engaged.mounted:
            warnings.append(tr("The magneto is off the engine: all this holds once it is refitted by its marks."))
        warnings += self._of_readings(state, engaged)
        self.warning.setText("\n".join(warnings))
        self.warning.setVisible(bool(warnings))
        tint(self.warning, theme.bad, bold=True)
        should = should_read_words(state, engaged.side)
        read = mounting_of(engaged, engaged.side).lamp_read
        quiet = tr("Nothing was moved since the lamp was read.") if read else tr(NOT_READ)
        self.should.setText(should or quiet)
        self.should.keep_room_for((should_words(LAMP_LIMIT_DEG),))
        self.reads_so.setEnabled(bool(should))

    @staticmethod
    def _of_readings(state: BenchState, engaged: Engaged) -> list[str]:
        """Say what is wrong with the readings, of the magneto in view first."""
        single = engaged.installation.position == "single"
        sides = SIDES[:1] if single else sorted(SIDES, key=lambda side: side != engaged.side)
        if standing(state, engaged.side) is Standing.OUT_OF_DATE and not single:
            # The other's is out of date with it: it is told once that one is looked at.
            both = tr("Both magnetos are shown with this one's internal setting.")
            return [f"{standing_words(state, engaged.side)} {both}"]
        return [words for side in sides if (words := standing_words(state, side))]

    def _show_error(self, state: BenchState, engaged: Engaged) -> None:
        error = timing_error(state, engaged.side)
        if error is None:
            self.error.setText(tr("With this setting the contacts never open and close: there is no timing to read."))
            return
        if abs(error.crank_deg) < 0.005:
            self.error.setText(_of_side(engaged, tr("At the timing wanted.")))
        else:
            self.error.setText(_of_side(engaged, _error_words(error)))
        far = engaged.installation.engine.stroke_mm - 0.001
        widest = (TimingError(e, e, far, far, -far) for e in (88.88, -88.88))
        self.error.keep_room_for(_of_side(engaged, _error_words(e)) for e in widest)

    def changeEvent(self, event: QEvent) -> None:
        """Type of another size needs other room."""
        super().changeEvent(event)
        if event.type() == QEvent.Type.FontChange:
            self.fit_rows()

    def fit_rows(self) -> None:
        """Room for words that change, at the present size of type."""
        self.crank.setMinimumWidth(self.fontMetrics().horizontalAdvance(self.crank.textFromValue(-300.0)) + 34)

    # -------------------------------------------------------------- sending

    def _said(self, spin: QWidget, sentence: str) -> None:
        with self._model.asked_by(spin):
            self._model.refused.emit(sentence)

    def _left_read(self, value: float) -> None:
        self._enter("left", ReadLamp("left", value))

    def _right_read(self, value: float) -> None:
        self._enter("right", ReadLamp("right", value))

    def _left_wanted(self, value: float) -> None:
        self._enter("left", WantTiming("left", value))

    def _right_wanted(self, value: float) -> None:
        self._enter("right", WantTiming("right", value))

    def _enter(self, side: Side, action: Action) -> None:
        """Enter a reading, and bring its magneto into view."""
        engaged = self._model.state.engaged
        if engaged is not None and engaged.side != side:
            self._model.send(ViewSide(side))
        if not self._model.send(action) and engaged is not None:
            self._show_entries(engaged)

    def _reads_so(self) -> None:
        engaged = self._model.state.engaged
        if engaged is not None:
            self._model.send(ReadLamp(engaged.side, foretold(self._model.state, engaged.side).btdc_deg))

    def _side_chosen(self, which: int) -> None:
        self._model.send(ViewSide(SIDES[which - 1]))

    def _crank_entered(self, value: float) -> None:
        # The box shows one cycle; the crank goes on from where it is, not back by whole turns.
        crank = crank_deg(self._model.state)
        self._model.send(TurnCrank(crank + value - _one_cycle(crank)))

    def _to_firing(self) -> None:
        engaged = self._model.state.engaged
        if engaged is not None:
            fires = firing_btdc_deg(self._model.state, engaged.side)
            if fires == fires:
                self._approach(-fires)

    def _to_tdc(self) -> None:
        self._approach(0.0)

    def _approach(self, crank: float) -> None:
        """With rotation, as every reading should be, so that the coupling's play is taken up."""
        gesture = self._model.gesture()
        now = crank_deg(self._model.state)
        goal = now + _one_cycle(crank - now)
        if goal < now + 1e-9:
            self._model.send(TurnCrank(goal - 20.0), gesture)
        self._model.send(TurnCrank(goal), gesture)


def _error_words(error: TimingError) -> str:
    off = tr(
        _EARLY if error.crank_deg > 0 else _LATE,
        crank=abs(error.crank_deg),
        rotor=abs(error.rotor_deg),
        piston=abs(error.piston_mm),
    )
    piston = tr(
        _PISTON[error.fires_mm >= 0.0, error.wanted_mm >= 0.0],
        fires=abs(error.fires_mm),
        wanted=abs(error.wanted_mm),
    )
    return f"{off} {piston}"


def _of_side(engaged: Engaged, text: str) -> str:
    tolerance = engaged.installation.engine.timing_tolerance_deg
    text = f"{text} {tr('Tolerance ±{tolerance}° of crank.', tolerance=tolerance)}"
    if engaged.installation.position == "single":
        return text
    return tr("Left: {line}", line=text) if engaged.side == "left" else tr("Right: {line}", line=text)


def _one_cycle(crank_deg_: float) -> float:
    """A crank angle within the cycle about No. 1's firing top dead centre [crank deg], −360…360."""
    return (crank_deg_ + 360.0) % 720.0 - 360.0
