"""Timing of each magneto: lamp readings, timing wanted, and how far each is out."""

from __future__ import annotations

import math
from functools import partial

from PySide6.QtWidgets import QButtonGroup, QGridLayout, QHBoxLayout, QLabel, QRadioButton, QWidget

from magview.bench.actions import Action, ReadLamp, ViewSide, WantTiming
from magview.bench.apply import BTDC_LIMIT_DEG, LAMP_LIMIT_DEG
from magview.bench.engine_words import speed_words
from magview.bench.lamp import Standing, standing
from magview.bench.lamp_words import btdc_words, standing_words, teeth_moved_longest, teeth_moved_words
from magview.bench.state import BenchState, Engaged, Side, firing_btdc_deg, mounting_of, readings
from magview.bench.timing import TimingError, timing_error, timing_verdict
from magview.spec.language import format_angle, marked, tr
from magview.ui.kit.bench_model import BenchModel
from magview.ui.kit.gauge import Gauge, Measured
from magview.ui.kit.inputs import AngleSpin, BtdcSpin
from magview.ui.kit.look import Look
from magview.ui.kit.notice import Notice
from magview.ui.kit.section import Section
from magview.ui.kit.signs import Sign
from magview.ui.kit.steady_label import SteadyLabel
from magview.ui.kit.style import tint

SIDES: tuple[Side, Side] = ("left", "right")

_SIDE_WORDS = {"left": marked("Left"), "right": marked("Right")}

_EARLY = marked("{crank:deg} of crank early = {rotor:deg} of rotor.")
_LATE = marked("{crank:deg} of crank late = {rotor:deg} of rotor.")


class LampBox(Section):
    """A row for each magneto of the engine: the lamp's reading in, the error out; below them the timing wanted."""

    def __init__(self, model: BenchModel, look: Look) -> None:
        super().__init__(tr("Lamp reads, crank before TDC"), look)
        self._model = model
        grid = QGridLayout()
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setVerticalSpacing(3)
        self.body.addLayout(grid)
        self.sides = QButtonGroup(self)
        self.radio: dict[Side, QRadioButton] = {}
        self.reads: dict[Side, AngleSpin] = {}
        self.wanted: dict[Side, AngleSpin] = {}
        self.now: dict[Side, Gauge] = {}
        wishes = QHBoxLayout()
        for row, side in enumerate(SIDES):
            radio = QRadioButton(tr(_SIDE_WORDS[side]))
            radio.setToolTip(tr("Show this magneto's coupling"))
            self.sides.addButton(radio, row)
            reads, wanted = (BtdcSpin(0.5, -limit, limit) for limit in (LAMP_LIMIT_DEG, BTDC_LIMIT_DEG))
            left = side == "left"
            reads.setAccessibleName(tr("left magneto, lamp reads") if left else tr("right magneto, lamp reads"))
            wanted.setAccessibleName(tr("left magneto, wanted") if left else tr("right magneto, wanted"))
            now = Gauge(tr("left magneto fires now") if left else tr("right magneto fires now"), look, flat=True)
            for column, widget in enumerate((radio, reads, now)):
                grid.addWidget(widget, row, column)
            wishes.addWidget(wanted)
            self.radio[side], self.reads[side], self.wanted[side], self.now[side] = radio, reads, wanted, now
        grid.addWidget(QLabel(tr("Wanted")), 2, 0)
        grid.addLayout(wishes, 2, 1, 1, 2)
        wishes.addStretch(1)
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
        grid.setColumnStretch(2, 1)
        self.error = SteadyLabel()
        self.warning = Notice(look)
        self.body.addWidget(self.error)
        self.body.addWidget(self.warning)

    # -------------------------------------------------------------- showing

    def show_timing(self, state: BenchState, engaged: Engaged) -> None:
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
            words = "–" if math.isnan(fires) else _off_words(fires - wanted)
            ends = format_angle(low), format_angle(high)
            at = "–" if math.isnan(fires) else format_angle(fires)
            self.now[side].name = (
                tr("left magneto fires now at {angle},", angle=at)
                if side == "left"
                else tr("right magneto fires now at {angle},", angle=at)
            )
            self.now[side].show_value(Measured(fires, low, high, words, ends, sign))
        self._show_entries(engaged)
        self._strike_out(state)
        wanted = mounting_of(engaged, engaged.side).wanted_btdc_deg
        self.note.setText(tr("wanted {wanted} ± {allowed}°", wanted=btdc_words(wanted), allowed=allowed))
        self._show_warning(state, engaged)
        self._show_error(state, engaged)

    def _show_entries(self, engaged: Engaged) -> None:
        for side, mounting in zip(SIDES, (engaged.left, engaged.right), strict=True):
            self.reads[side].show_value(mounting.reads_btdc_deg)
            self.wanted[side].show_value(mounting.wanted_btdc_deg)

    def _strike_out(self, state: BenchState) -> None:
        """A reading that is not where it fires now is struck through in its field, and says why."""
        for side in SIDES:
            field = self.reads[side]
            old = standing(state, side) in (Standing.OUT_OF_DATE, Standing.TEETH_MOVED)
            why = teeth_moved_words(state, side) or standing_words(state, side) if old else ""
            font = field.font()
            if font.strikeOut() != old:
                font.setStrikeOut(old)
                field.setFont(font)
            field.setToolTip(why)
            field.setAccessibleDescription(why)

    def _show_warning(self, state: BenchState, engaged: Engaged) -> None:
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
        self.warning.say("\n".join(warnings))

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
        moved = teeth_moved_words(state, engaged.side)
        tint(self.error, self._look.theme.warn if moved else self._look.theme.text, bold=bool(moved))
        if moved:
            self.error.setText(moved)
        elif abs(error.crank_deg) < 0.005:
            self.error.setText(_of_side(engaged, tr("At the timing wanted.")))
        else:
            self.error.setText(_of_side(engaged, _error_words(error)))
        widest = (TimingError(e, e, 0.0, 0.0, 0.0) for e in (88.88, -88.88))
        longest = teeth_moved_longest(engaged)
        self.error.keep_room_for((longest, *(_of_side(engaged, _error_words(e)) for e in widest)))

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

    def _side_chosen(self, which: int) -> None:
        self._model.send(ViewSide(SIDES[which]))


def _off_words(crank_deg_: float) -> str:
    if abs(crank_deg_) < 0.005:
        return tr("as wanted")
    angle = abs(crank_deg_)
    return tr("{angle:deg} early", angle=angle) if crank_deg_ > 0 else tr("{angle:deg} late", angle=angle)


def _error_words(error: TimingError) -> str:
    late_or_early = _EARLY if error.crank_deg > 0 else _LATE
    return tr(late_or_early, crank=abs(error.crank_deg), rotor=abs(error.rotor_deg))


def _of_side(engaged: Engaged, text: str) -> str:
    if engaged.installation.position == "single":
        return text
    return tr("Left: {line}", line=text) if engaged.side == "left" else tr("Right: {line}", line=text)
