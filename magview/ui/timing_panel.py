"""Timing to the engine: lamp readings, teeth, the planner's moves, synchronising, top dead centre."""

from __future__ import annotations

from PySide6.QtCore import QEvent, Qt, Signal
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import (
    QButtonGroup,
    QGridLayout,
    QGroupBox,
    QHBoxLayout,
    QLabel,
    QPushButton,
    QRadioButton,
    QVBoxLayout,
    QWidget,
)

from magview.bench.actions import Action, MoveTeeth, PaintMarks, ReadLamp, TurnCrank, ViewSide, WantTiming
from magview.bench.apply import BTDC_LIMIT_DEG
from magview.bench.state import BenchState, Engaged, Side, crank_deg, firing_btdc_deg, readings
from magview.bench.timing import synchronising, timing_error, timing_verdict
from magview.bench.tooth_steps import coupling_words, marks_words
from magview.bench.words import direction_word, short_words
from magview.physics.coupling import speed_mismatch
from magview.physics.engine import firing_order_mismatch
from magview.spec.language import marked, number, tr
from magview.spec.units import format_angle, format_length
from magview.ui.inputs import AngleSpin, BtdcSpin
from magview.ui.model import BenchModel
from magview.ui.plan_box import PlanBox
from magview.ui.stop_box import StopBox
from magview.ui.style import tint
from magview.ui.theme import Theme

SIDES: tuple[Side, Side] = ("left", "right")

MAKING_SAFE = marked(
    "Before turning the crank: switch off, switch lead grounded and proved, plugs out, wheels chocked, nobody in the "
    "propeller's arc. Paint marks on disc, both flanges and engine before taking anything apart; move one tooth at a "
    "time; approach every reading in the direction of rotation, so that backlash is taken up. The maker's current "
    "manual and local rules govern."
)

_SIDE_WORDS = {"left": marked("Left"), "right": marked("Right")}

_TITLES = {
    "single": (marked("Teeth moved from as found"), marked("Moves that would put it right, best first")),
    "left": (
        marked("Teeth moved from as found, left magneto"),
        marked("Moves that would put it right, best first, left magneto"),
    ),
    "right": (
        marked("Teeth moved from as found, right magneto"),
        marked("Moves that would put it right, best first, right magneto"),
    ),
}
"""Of the teeth and of the plan, by the magneto in view."""

_EARLY = marked("{crank}° of crank early = {rotor}° of rotor = {piston} of piston travel.")
_LATE = marked("{crank}° of crank late = {rotor}° of rotor = {piston} of piston travel.")


class TimingPanel(QWidget):
    """Entries that send actions, and what physics says of the timing."""

    previewed = Signal(object)
    """The move under the pointer, or None."""

    def __init__(self, model: BenchModel, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._model, self._theme, self._inches = model, theme, False
        layout = QVBoxLayout(self)
        layout.setContentsMargins(8, 4, 8, 4)
        self.none = QLabel(tr("This magneto is not on an engine. Open an installation to time it to one."))
        self.none.setWordWrap(True)
        layout.addWidget(self.none)
        first = QLabel(tr("⚠ Treat the propeller as live: switch off, lead proved, plugs out, wheels chocked."))
        first.setWordWrap(True)
        layout.addWidget(first)
        self.plan, self.stop = PlanBox(model), StopBox()
        self.plan.previewed.connect(self.previewed)
        self.stop.said.connect(model.refused)
        self._boxes = [
            self._build_lamp(), self._build_teeth(), self.plan, self._build_synchronising(), self.stop
        ]  # fmt: skip
        for box in self._boxes:
            layout.addWidget(box)
        safe = QLabel(tr(MAKING_SAFE))
        safe.setWordWrap(True)
        layout.addWidget(safe)
        layout.addStretch(1)
        self.fit_rows()
        self._stale = False
        self.show_state(model.state)
        model.changed.connect(self._changed)

    # -------------------------------------------------------------- building

    def _build_lamp(self) -> QGroupBox:
        box = QGroupBox(tr("Where it fires, crank degrees before top dead centre"))
        grid = QGridLayout(box)
        for column, text in enumerate((tr("Magneto"), tr("Lamp reads"), tr("Wanted"), tr("Fires now"))):
            grid.addWidget(QLabel(text), 0, column)
        self.sides = QButtonGroup(self)
        self.radio: dict[Side, QRadioButton] = {}
        self.reads: dict[Side, AngleSpin] = {}
        self.wanted: dict[Side, AngleSpin] = {}
        self.now: dict[Side, QLabel] = {}
        for row, side in enumerate(SIDES, start=1):
            radio = QRadioButton(tr(_SIDE_WORDS[side]))
            radio.setToolTip(tr("Show this magneto's coupling"))
            self.sides.addButton(radio, row)
            reads, wanted = (BtdcSpin(0.5, -BTDC_LIMIT_DEG, BTDC_LIMIT_DEG) for _ in range(2))
            left = side == "left"
            reads.setAccessibleName(tr("left magneto, lamp reads") if left else tr("right magneto, lamp reads"))
            wanted.setAccessibleName(tr("left magneto, wanted") if left else tr("right magneto, wanted"))
            now = QLabel()
            now.setAccessibleName(tr("left magneto fires now") if left else tr("right magneto fires now"))
            for column, widget in enumerate((radio, reads, wanted, now)):
                grid.addWidget(widget, row, column)
            self.radio[side], self.reads[side], self.wanted[side], self.now[side] = radio, reads, wanted, now
        for spin in (*self.reads.values(), *self.wanted.values()):
            spin.said.connect(self._model.refused)
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
        grid.addWidget(self.warning, 5, 0, 1, 4)
        self.error = QLabel()
        self.error.setWordWrap(True)
        grid.addWidget(self.error, 3, 0, 1, 4)
        row_box = QHBoxLayout()
        self.crank = AngleSpin(1.0, -360.0, 360.0)
        self.crank.setToolTip(tr("Crank from No. 1's firing top dead centre, positive the way the engine turns"))
        label = QLabel(tr("Cran&k"))
        label.setBuddy(self.crank)
        to_firing, to_tdc = QPushButton(tr("To firing")), QPushButton(tr("To TDC"))
        to_firing.clicked.connect(self._to_firing)
        to_tdc.clicked.connect(self._to_tdc)
        self.crank.entered.connect(self._crank_entered)
        self.crank.said.connect(self._model.refused)
        row_box.addWidget(label)
        row_box.addWidget(self.crank, 1)
        row_box.addWidget(to_firing)
        row_box.addWidget(to_tdc)
        grid.addLayout(row_box, 4, 0, 1, 4)
        return box

    def _build_teeth(self) -> QGroupBox:
        self.teeth_box = box = QGroupBox(tr("Teeth moved from as found"))
        grid = QGridLayout(box)
        self.teeth: dict[str, QLabel] = {}
        self.step_buttons: dict[tuple[str, int], QPushButton] = {}
        for row, (key, name) in enumerate(
            (("magneto", tr("Magneto flange on the disc")), ("disc", tr("Disc on the drive")))
        ):
            grid.addWidget(QLabel(name), row, 0)
            value = QLabel()
            value.setAccessibleName(name)
            value.setAlignment(Qt.AlignmentFlag.AlignCenter)
            against, along = QPushButton("−1"), QPushButton("+1")
            against.setAccessibleName(tr("{name}: one tooth against rotation", name=name))
            along.setAccessibleName(tr("{name}: one tooth with rotation", name=name))
            for button, way in ((against, -1), (along, 1)):
                self.step_buttons[key, way] = button
            grid.addWidget(against, row, 1)
            grid.addWidget(value, row, 2)
            grid.addWidget(along, row, 3)
            self.teeth[key] = value
        self.step_buttons["magneto", -1].clicked.connect(self._magneto_back)
        self.step_buttons["magneto", 1].clicked.connect(self._magneto_on)
        self.step_buttons["disc", -1].clicked.connect(self._disc_back)
        self.step_buttons["disc", 1].clicked.connect(self._disc_on)
        grid.setColumnStretch(2, 1)
        self.coupling = QLabel()
        self.coupling.setWordWrap(True)
        grid.addWidget(self.coupling, 2, 0, 1, 4)
        back = QPushButton(tr("&As found"))
        back.clicked.connect(self._as_found)
        grid.addWidget(back, 3, 0, Qt.AlignmentFlag.AlignLeft)
        paint = QPushButton(tr("Paint new &marks"))
        paint.setToolTip(tr("Marks in line across drive flange, disc and magneto flange, as they stand now"))
        paint.clicked.connect(self._paint)
        grid.addWidget(paint, 3, 1, 1, 3, Qt.AlignmentFlag.AlignRight)
        return box

    def _build_synchronising(self) -> QGroupBox:
        self.synchronising_box = QGroupBox(tr("Synchronising"))
        column = QVBoxLayout(self.synchronising_box)
        self.synchronising = QLabel()
        self.synchronising.setWordWrap(True)
        column.addWidget(self.synchronising)
        return self.synchronising_box

    # -------------------------------------------------------------- showing

    def _changed(self, state: BenchState, old: BenchState) -> None:
        """While another panel is in front, nothing is planned for this one."""
        if self.isVisible() and not self._stale:
            self.show_state(state, old)
        else:
            self._stale = True

    def showEvent(self, event: QShowEvent) -> None:
        """Catch up with what changed meanwhile."""
        super().showEvent(event)
        if self._stale:
            self._stale = False
            self.show_state(self._model.state)

    def show_state(self, state: BenchState, old: BenchState | None = None) -> None:
        """Show a state."""
        engaged = state.engaged
        self.none.setVisible(engaged is None)
        for box in self._boxes:
            box.setVisible(engaged is not None)
        if engaged is None:
            return
        crank = crank_deg(state)
        self.crank.show_value(_one_cycle(crank))
        if old is not None and self._same_timing(state, old):
            return
        single = engaged.installation.position == "single"
        self.synchronising_box.setVisible(not single)
        for side in SIDES:
            shown = not single or side == "left"
            for widget in (self.radio[side], self.reads[side], self.wanted[side], self.now[side]):
                widget.setVisible(shown)
            self.radio[side].setText(tr("Single") if single else tr(_SIDE_WORDS[side]))
            self.radio[side].setChecked(engaged.side == side)
            mounting = engaged.left if side == "left" else engaged.right
            self.reads[side].show_value(mounting.reads_btdc_deg)
            self.wanted[side].show_value(mounting.wanted_btdc_deg)
            verdict = timing_verdict(state, side)
            mark, colour = ("✓", self._theme.good) if verdict else ("✗", self._theme.bad)
            self.now[side].setText(f"{mark} {format_angle(firing_btdc_deg(state, side))}")
            tint(self.now[side], colour, bold=True)
        self._show_warning(state, engaged)
        self._show_error(state, engaged)
        self._show_teeth(state, engaged)
        self.plan.show_plan(state, engaged)
        self._show_synchronising(state)

    @staticmethod
    def _same_timing(state: BenchState, old: BenchState) -> bool:
        def key(s: BenchState) -> object:
            return s.magneto, s.backplate_deg, s.screw_deg, s.engaged

        return key(state) == key(old)

    def halt(self) -> None:
        """Nothing runs here."""

    def set_inches(self, inches: bool) -> None:
        """Write lengths in inches or millimetres."""
        self._inches = inches
        self.show_state(self._model.state)

    def set_theme(self, theme: Theme) -> None:
        """Change the verdicts' colours."""
        self._theme = theme
        self.show_state(self._model.state)

    def _show_warning(self, state: BenchState, engaged: Engaged) -> None:
        """What stands in the way of timing to the engine."""
        warnings = []
        if not readings(state).within_limits:
            warnings.append(
                tr("⚠ The internal timing is out of limits: put that right first, no tooth makes up for it.")
            )
        mismatch = speed_mismatch(engaged.installation)
        if mismatch:
            warnings.append(tr("⚠ The installation does not fit together: {mismatch}.", mismatch=mismatch))
        if not engaged.mounted:
            warnings.append(tr("The magneto is off the engine: all this holds once it is refitted by its marks."))
        found = firing_btdc_deg(state, engaged.side, as_found=True)
        if abs(found - engaged.mounting.reads_btdc_deg) > 0.005:
            warnings.append(
                tr(
                    "The contacts were set anew since the lamp was read: with the teeth as found it would "
                    "now read {found}. Both magnetos are shown with this one's internal setting.",
                    found=format_angle(found),
                )
            )
        self.warning.setText(" ".join(warnings))
        self.warning.setVisible(bool(warnings))
        tint(self.warning, self._theme.bad)

    def _show_error(self, state: BenchState, engaged: Engaged) -> None:
        error = timing_error(state, engaged.side)
        if error is None:
            self.error.setText(tr("With this setting the contacts never open and close: there is no timing to read."))
            return
        tolerance = engaged.installation.engine.timing_tolerance_deg
        if abs(error.crank_deg) < 0.005:
            text = tr("At the timing wanted.")
        else:
            text = tr(
                _EARLY if error.crank_deg > 0 else _LATE,
                crank=number(abs(error.crank_deg), 2),
                rotor=number(abs(error.rotor_deg), 2),
                piston=format_length(abs(error.piston_mm), self._inches),
            )
        text = f"{text} {tr('Tolerance ±{tolerance}° of crank.', tolerance=number(tolerance))}"
        if engaged.installation.position != "single":
            text = tr("Left: {line}", line=text) if engaged.side == "left" else tr("Right: {line}", line=text)
        self.error.setText(text)

    def _show_teeth(self, state: BenchState, engaged: Engaged) -> None:
        at = engaged.mounting
        teeth, moves = _TITLES["single" if engaged.installation.position == "single" else engaged.side]
        self.teeth_box.setTitle(tr(teeth))
        self.plan.setTitle(tr(moves))
        self.teeth["magneto"].setText(short_words(at.magneto_teeth))
        self.teeth["disc"].setText(short_words(at.disc_teeth))
        seen = direction_word(1, state.magneto.rotation, "drive end")
        self.coupling.setText(
            f"{coupling_words(engaged)} {tr('With rotation is {way} seen from the drive end.', way=seen)} "
            f"{marks_words(at)}"
        )

    def changeEvent(self, event: QEvent) -> None:
        """Type of another size needs other room."""
        super().changeEvent(event)
        if event.type() == QEvent.Type.FontChange:
            self.fit_rows()

    def fit_rows(self) -> None:
        """Room for the first moves, and for words that change, at the present size of type."""
        line = self.fontMetrics().height()
        self.crank.setMinimumWidth(self.fontMetrics().horizontalAdvance("+0000.00°") + 34)
        self.error.setMinimumHeight(2 * line)
        for button in self.step_buttons.values():
            button.setFixedWidth(self.fontMetrics().horizontalAdvance("  +1  ") + 16)

    def _show_synchronising(self, state: BenchState) -> None:
        result = synchronising(state)
        engaged = state.engaged
        if result is None or engaged is None:
            self.synchronising.setText("–")
            return
        tolerance = engaged.installation.engine.synchronising_tolerance_deg
        left, right = (firing_btdc_deg(state, side) for side in SIDES)
        wanted = _apart(engaged.left.wanted_btdc_deg - engaged.right.wanted_btdc_deg)
        mark = "✓" if result.synchronised else "✗"
        text = tr(
            "Left fires {left}°, right {right}° before top dead centre: {apart}. Wanted: {wanted}. "
            "That is {difference}° from it, {tolerance}° allowed.",
            left=number(left, 2),
            right=number(right, 2),
            apart=_apart(left - right),
            wanted=wanted,
            difference=number(abs(result.difference_deg), 2),
            tolerance=number(tolerance),
        )
        mismatch = firing_order_mismatch(engaged.installation.engine)
        words = f"{mark} {text}"
        if mismatch:
            words = f"{words} {tr('Take care: {mismatch}.', mismatch=mismatch)}"
        self.synchronising.setText(words)

    # -------------------------------------------------------------- sending

    def _left_read(self, value: float) -> None:
        self._enter("left", ReadLamp("left", value))

    def _right_read(self, value: float) -> None:
        self._enter("right", ReadLamp("right", value))

    def _left_wanted(self, value: float) -> None:
        self._enter("left", WantTiming("left", value))

    def _right_wanted(self, value: float) -> None:
        self._enter("right", WantTiming("right", value))

    def _enter(self, side: Side, action: Action) -> None:
        """What is entered for a magneto brings that magneto into view."""
        engaged = self._model.state.engaged
        if engaged is not None and engaged.side != side:
            self._model.send(ViewSide(side))
        if not self._model.send(action):
            self.show_state(self._model.state)

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

    def _magneto_back(self) -> None:
        self._step(-1, 0)

    def _magneto_on(self) -> None:
        self._step(1, 0)

    def _disc_back(self) -> None:
        self._step(0, -1)

    def _disc_on(self) -> None:
        self._step(0, 1)

    def _paint(self) -> None:
        self._model.send(PaintMarks())

    def _as_found(self) -> None:
        self._model.send(MoveTeeth(0, 0))

    def _step(self, magneto: int, disc: int) -> None:
        engaged = self._model.state.engaged
        if engaged is not None:
            at = engaged.mounting
            self._model.send(MoveTeeth(at.magneto_teeth + magneto, at.disc_teeth + disc))


def _one_cycle(crank_deg_: float) -> float:
    """A crank angle within the cycle about No. 1's firing top dead centre [crank deg], −360…360."""
    return (crank_deg_ + 360.0) % 720.0 - 360.0


def _apart(left_less_right_deg: float) -> str:
    if abs(left_less_right_deg) < 0.005:
        return tr("both together")
    angle = number(abs(left_less_right_deg), 2)
    return (
        tr("left {angle}° earlier", angle=angle)
        if left_less_right_deg > 0
        else tr("right {angle}° earlier", angle=angle)
    )
