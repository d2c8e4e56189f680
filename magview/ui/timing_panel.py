"""Timing to the engine: lamp readings, teeth, the planner's moves, synchronising, top dead centre."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject, Qt, Signal
from PySide6.QtWidgets import (
    QAbstractItemView,
    QButtonGroup,
    QGridLayout,
    QGroupBox,
    QHBoxLayout,
    QHeaderView,
    QLabel,
    QPushButton,
    QRadioButton,
    QTableWidget,
    QTableWidgetItem,
    QVBoxLayout,
    QWidget,
)

from magview.bench.actions import BTDC_LIMIT_DEG, MoveTeeth, ReadLamp, TurnCrank, ViewSide, WantTiming
from magview.bench.state import BenchState, Engaged, Side, crank_deg, firing_btdc_deg
from magview.bench.timing import synchronising, timing_error, timing_plan, timing_verdict
from magview.bench.tooth_steps import ToothStep, coupling_words, marks_words, step_words, steps_between
from magview.bench.words import direction_word, teeth_words
from magview.physics.coupling import Move, outside_tolerance
from magview.physics.engine import firing_order_mismatch, true_tdc_from_stops
from magview.spec.base import SpecError
from magview.spec.units import format_angle, format_length
from magview.ui.inputs import AngleSpin
from magview.ui.model import BenchModel
from magview.ui.style import tint
from magview.ui.theme import Theme

SIDES: tuple[Side, Side] = ("left", "right")

MAKING_SAFE = (
    "Before turning the crank: switch off, switch lead grounded and proved, plugs out, wheels chocked, nobody in the "
    "propeller's arc. Paint marks on disc, both flanges and engine before taking anything apart; move one tooth at a "
    "time; approach every reading in the direction of rotation, so that backlash is taken up. The maker's current "
    "manual and local rules govern."
)


class TimingPanel(QWidget):
    """Entries that send actions, and what physics says of the timing."""

    previewed = Signal(object)
    """The move under the pointer, or None."""

    def __init__(self, model: BenchModel, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._model, self._theme, self._inches = model, theme, False
        self._moves: list[Move] = []
        self._steps: list[ToothStep] = []
        self._target: tuple[int, int] | None = None
        layout = QVBoxLayout(self)
        layout.setContentsMargins(8, 4, 8, 4)
        self.none = QLabel("This magneto is not on an engine. Open an installation to time it to one.")
        self.none.setWordWrap(True)
        layout.addWidget(self.none)
        builders = (
            self._build_lamp, self._build_teeth, self._build_plan, self._build_synchronising, self._build_stop
        )  # fmt: skip
        self._boxes = [build() for build in builders]
        for box in self._boxes:
            layout.addWidget(box)
        safe = QLabel(MAKING_SAFE)
        safe.setWordWrap(True)
        layout.addWidget(safe)
        layout.addStretch(1)
        self.show_state(model.state)
        model.changed.connect(self.show_state)

    # -------------------------------------------------------------- building

    def _build_lamp(self) -> QGroupBox:
        box = QGroupBox("Where it fires, crank degrees before top dead centre")
        grid = QGridLayout(box)
        for column, text in enumerate(("Magneto", "Lamp reads", "Wanted", "Fires now")):
            grid.addWidget(QLabel(text), 0, column)
        self.sides = QButtonGroup(self)
        self.radio: dict[Side, QRadioButton] = {}
        self.reads: dict[Side, AngleSpin] = {}
        self.wanted: dict[Side, AngleSpin] = {}
        self.now: dict[Side, QLabel] = {}
        for row, side in enumerate(SIDES, start=1):
            radio = QRadioButton(f"&{side.capitalize()}")
            radio.setToolTip("Show this magneto's coupling")
            self.sides.addButton(radio, row)
            reads, wanted = (AngleSpin(0.5, -BTDC_LIMIT_DEG, BTDC_LIMIT_DEG) for _ in range(2))
            reads.setAccessibleName(f"{side} magneto, lamp reads")
            wanted.setAccessibleName(f"{side} magneto, wanted")
            now = QLabel()
            now.setAccessibleName(f"{side} magneto fires now")
            for column, widget in enumerate((radio, reads, wanted, now)):
                grid.addWidget(widget, row, column)
            self.radio[side], self.reads[side], self.wanted[side], self.now[side] = radio, reads, wanted, now
        self.reads["left"].entered.connect(self._left_read)
        self.reads["right"].entered.connect(self._right_read)
        self.wanted["left"].entered.connect(self._left_wanted)
        self.wanted["right"].entered.connect(self._right_wanted)
        self.sides.idClicked.connect(self._side_chosen)
        grid.setColumnStretch(3, 1)
        self.error = QLabel()
        self.error.setWordWrap(True)
        grid.addWidget(self.error, 3, 0, 1, 4)
        row_box = QHBoxLayout()
        self.crank = AngleSpin(1.0, -7200.0, 7200.0)
        self.crank.setToolTip("Crank from No. 1's firing top dead centre, positive the way the engine turns")
        label = QLabel("Cran&k")
        label.setBuddy(self.crank)
        to_firing, to_tdc = QPushButton("To fi&ring"), QPushButton("To &TDC")
        to_firing.clicked.connect(self._to_firing)
        to_tdc.clicked.connect(self._to_tdc)
        self.crank.entered.connect(self._crank_entered)
        row_box.addWidget(label)
        row_box.addWidget(self.crank, 1)
        row_box.addWidget(to_firing)
        row_box.addWidget(to_tdc)
        grid.addLayout(row_box, 4, 0, 1, 4)
        return box

    def _build_teeth(self) -> QGroupBox:
        box = QGroupBox("Teeth moved from as found")
        grid = QGridLayout(box)
        self.teeth: dict[str, QLabel] = {}
        self.step_buttons: dict[tuple[str, int], QPushButton] = {}
        for row, (key, name) in enumerate((("magneto", "Magneto flange on the disc"), ("disc", "Disc on the drive"))):
            grid.addWidget(QLabel(name), row, 0)
            value = QLabel()
            value.setAccessibleName(name)
            value.setAlignment(Qt.AlignmentFlag.AlignCenter)
            against, along = QPushButton("−1"), QPushButton("+1")
            against.setAccessibleName(f"{name}: one tooth against rotation")
            along.setAccessibleName(f"{name}: one tooth with rotation")
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
        back = QPushButton("&As found")
        back.clicked.connect(self._as_found)
        grid.addWidget(back, 3, 0, Qt.AlignmentFlag.AlignLeft)
        return box

    def _build_plan(self) -> QGroupBox:
        box = QGroupBox("Moves that would put it right, best first")
        column = QVBoxLayout(box)
        self.verdict = QLabel()
        self.verdict.setWordWrap(True)
        self.plan = QTableWidget(0, 4)
        self.plan.setHorizontalHeaderLabels(["Flange", "Disc", "Fires at", "Off by"])
        self.plan.setAccessibleName("Moves of the coupling, best first")
        self.plan.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.plan.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        self.plan.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.plan.setTabKeyNavigation(False)
        self.plan.horizontalHeader().setSectionResizeMode(QHeaderView.ResizeMode.Stretch)
        self.plan.verticalHeader().setSectionResizeMode(QHeaderView.ResizeMode.Fixed)
        self.plan.setMouseTracking(True)
        self.plan.viewport().installEventFilter(self)
        self.plan.cellEntered.connect(self._hovered)
        self.plan.itemSelectionChanged.connect(self._chosen)
        self.words = QLabel()
        self.words.setWordWrap(True)
        self.words.setAlignment(Qt.AlignmentFlag.AlignTop)
        self.next = QPushButton("Move the ne&xt tooth")
        self.next.clicked.connect(self._next_step)
        self.viewpoint = QLabel()
        self.viewpoint.setWordWrap(True)
        for widget in (self.verdict, self.viewpoint, self.plan, self.words, self.next):
            column.addWidget(widget)
        return box

    def _build_synchronising(self) -> QGroupBox:
        self.synchronising_box = QGroupBox("Synchronising")
        column = QVBoxLayout(self.synchronising_box)
        self.synchronising = QLabel()
        self.synchronising.setWordWrap(True)
        column.addWidget(self.synchronising)
        return self.synchronising_box

    def _build_stop(self) -> QGroupBox:
        box = QGroupBox("Top dead centre from two stop readings")
        grid = QGridLayout(box)
        self.stops = [AngleSpin(0.5, 0.0, 360.0) for _ in range(2)]
        for column, (spin, text) in enumerate(zip(self.stops, ("First", "Second"), strict=True)):
            label = QLabel(text)
            label.setBuddy(spin)
            grid.addWidget(label, 0, 2 * column)
            grid.addWidget(spin, 0, 2 * column + 1)
            spin.entered.connect(self._stop_entered)
        self.stops[0].show_value(340.0)
        self.stops[1].show_value(24.0)
        self.tdc = QLabel()
        self.tdc.setWordWrap(True)
        self.tdc.setAccessibleName("Top dead centre on the disc")
        grid.addWidget(self.tdc, 1, 0, 1, 4)
        self._stop_entered()
        return box

    # -------------------------------------------------------------- showing

    def show_state(self, state: BenchState, old: BenchState | None = None) -> None:
        """Show a state."""
        engaged = state.engaged
        self.none.setVisible(engaged is None)
        for box in self._boxes:
            box.setVisible(engaged is not None)
        if engaged is None:
            return
        crank = crank_deg(state)
        self.crank.show_value(((crank + 360.0) % 720.0) - 360.0)
        if old is not None and self._same_timing(state, old):
            return
        single = engaged.installation.position == "single"
        self.synchronising_box.setVisible(not single)
        for side in SIDES:
            shown = not single or side == "left"
            for widget in (self.radio[side], self.reads[side], self.wanted[side], self.now[side]):
                widget.setVisible(shown)
            self.radio[side].setText("Single" if single else f"&{side.capitalize()}")
            self.radio[side].setChecked(engaged.side == side)
            mounting = engaged.left if side == "left" else engaged.right
            self.reads[side].show_value(firing_btdc_deg(state, side, as_found=True))
            self.wanted[side].show_value(mounting.wanted_btdc_deg)
            verdict = timing_verdict(state, side)
            mark, colour = ("✓", self._theme.good) if verdict else ("✗", self._theme.bad)
            self.now[side].setText(f"{mark} {format_angle(firing_btdc_deg(state, side))}")
            tint(self.now[side], colour, bold=True)
        self._show_error(state, engaged)
        self._show_teeth(state, engaged)
        self._show_plan(state, engaged)
        self._show_synchronising(state)

    @staticmethod
    def _same_timing(state: BenchState, old: BenchState) -> bool:
        def key(s: BenchState) -> object:
            return s.magneto, s.backplate_deg, s.screw_deg, s.engaged

        return key(state) == key(old)

    def set_inches(self, inches: bool) -> None:
        """Write lengths in inches or millimetres."""
        self._inches = inches
        self.show_state(self._model.state)

    def set_theme(self, theme: Theme) -> None:
        """Change the verdicts' colours."""
        self._theme = theme
        self.show_state(self._model.state)

    def _show_error(self, state: BenchState, engaged: Engaged) -> None:
        error = timing_error(state, engaged.side)
        if error is None:
            self.error.setText("With this setting the contacts never open and close: there is no timing to read.")
            return
        tolerance = engaged.installation.engine.timing_tolerance_deg
        if abs(error.crank_deg) < 0.005:
            text = "At the timing wanted."
        else:
            way = "early" if error.crank_deg > 0 else "late"
            text = (
                f"{abs(error.crank_deg):.2f}° of crank {way} = {abs(error.rotor_deg):.2f}° of rotor = "
                f"{format_length(abs(error.piston_mm), self._inches)} of piston travel."
            )
        self.error.setText(f"{text} Tolerance ±{tolerance:g}° of crank.")

    def _show_teeth(self, state: BenchState, engaged: Engaged) -> None:
        at = engaged.mounting
        self.teeth["magneto"].setText(_short_words(at.magneto_teeth))
        self.teeth["disc"].setText(_short_words(at.disc_teeth))
        seen = direction_word(1, state.magneto.rotation, "drive end")
        self.coupling.setText(
            f"{coupling_words(engaged)} With rotation is {seen} seen from the drive end. "
            f"{marks_words((at.magneto_teeth, at.disc_teeth))}"
        )

    def _show_plan(self, state: BenchState, engaged: Engaged) -> None:
        self._moves = timing_plan(state, engaged.side)
        tolerance = engaged.installation.engine.timing_tolerance_deg
        outside = outside_tolerance(self._moves, tolerance) if self._moves else None
        rotation = state.magneto.rotation
        if not self._moves:
            self.verdict.setText("There is no reading to plan from.")
        elif outside:
            nearest = " or ".join(f"{m.result_btdc_deg:.2f}°" for m in self._moves[:2])
            self.verdict.setText(f"✗ Nothing reaches it within tolerance: {outside}. The nearest two: {nearest}.")
        else:
            self.verdict.setText(f"✓ The first is within ±{tolerance:g}° of crank.")
        with_, against = (direction_word(s, rotation, "drive end") for s in (1, -1))
        self.viewpoint.setText(
            f"Teeth of the magneto flange on the disc, and of the disc on the drive flange, from as found; with "
            f"rotation is {with_}, against is {against} seen from the drive end."
        )
        self.plan.blockSignals(True)
        self.plan.setRowCount(len(self._moves))
        for row, move in enumerate(self._moves):
            texts = (
                _short_words(move.magneto_teeth),
                _short_words(move.disc_teeth),
                format_angle(move.result_btdc_deg),
                format_angle(move.residual_deg, True),
            )
            tip = "; ".join((
                f"Magneto flange {teeth_words(move.magneto_teeth, rotation, 'drive end')}",
                f"disc {teeth_words(move.disc_teeth, rotation, 'drive end')}",
            ))  # fmt: skip
            for column, text in enumerate(texts):
                item = QTableWidgetItem(text)
                item.setTextAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
                item.setToolTip(tip)
                self.plan.setItem(row, column, item)
        self.plan.blockSignals(False)
        self.fit_rows()
        self._mark_target(state, engaged)

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
        self.words.setMinimumHeight(5 * line)
        row = round(1.4 * self.fontMetrics().height())
        self.plan.verticalHeader().setDefaultSectionSize(row)
        shown = row * min(5, max(1, len(self._moves)))
        self.plan.setFixedHeight(self.plan.horizontalHeader().sizeHint().height() + shown + 4)

    def _mark_target(self, state: BenchState, engaged: Engaged) -> None:
        """Keep the chosen move chosen while it is stepped through, and say the next step."""
        at = (engaged.mounting.magneto_teeth, engaged.mounting.disc_teeth)
        row = next((n for n, m in enumerate(self._moves) if (m.magneto_teeth, m.disc_teeth) == self._target), None)
        if row is None:
            self._target = None
        self.plan.blockSignals(True)
        if row is None:
            self.plan.clearSelection()
        else:
            self.plan.selectRow(row)
        self.plan.blockSignals(False)
        self._steps = steps_between(at, self._target) if self._target is not None else []
        self.next.setEnabled(bool(self._steps))
        if self._target is None:
            self.words.setText("Point at a move to see where it brings the marks; choose one to step through it.")
        elif self._steps:
            self.words.setText(
                f"{len(self._steps)} single steps to go. {step_words(self._steps[0], state.magneto.rotation)}"
            )
        else:
            self.words.setText(
                "The move is made. Check the marks, tighten, and read the lamp again, approaching with rotation; "
                "enter what it says as the new reading."
            )

    def _show_synchronising(self, state: BenchState) -> None:
        result = synchronising(state)
        engaged = state.engaged
        if result is None or engaged is None:
            self.synchronising.setText("–")
            return
        tolerance = engaged.installation.engine.synchronising_tolerance_deg
        stagger = engaged.left.wanted_btdc_deg - engaged.right.wanted_btdc_deg
        mark = "✓" if result.synchronised else "✗"
        apart = abs(result.difference_deg)
        early = "left" if result.difference_deg > 0 else "right"
        which = "together" if apart < 0.005 else f"{apart:.2f}° apart, {early} early"
        wanted = "the same for both" if abs(stagger) < 0.005 else f"staggered by {abs(stagger):.2f}°"
        text = f"{mark} Left and right are {which} (allowed {tolerance:g}°); wanted timing is {wanted}."
        mismatch = firing_order_mismatch(engaged.installation.engine)
        self.synchronising.setText(f"{text} Take care: {mismatch}." if mismatch else text)

    # -------------------------------------------------------------- sending

    def _left_read(self, value: float) -> None:
        self._model.send(ReadLamp("left", value))

    def _right_read(self, value: float) -> None:
        self._model.send(ReadLamp("right", value))

    def _left_wanted(self, value: float) -> None:
        self._model.send(WantTiming("left", value))

    def _right_wanted(self, value: float) -> None:
        self._model.send(WantTiming("right", value))

    def _side_chosen(self, which: int) -> None:
        self._target = None
        self._model.send(ViewSide(SIDES[which - 1]))

    def _crank_entered(self, value: float) -> None:
        self._model.send(TurnCrank(value))

    def _to_firing(self) -> None:
        engaged = self._model.state.engaged
        if engaged is not None:
            fires = firing_btdc_deg(self._model.state, engaged.side)
            if fires == fires:
                self._model.send(TurnCrank(-fires))

    def _to_tdc(self) -> None:
        self._model.send(TurnCrank(0.0))

    def _magneto_back(self) -> None:
        self._step(-1, 0)

    def _magneto_on(self) -> None:
        self._step(1, 0)

    def _disc_back(self) -> None:
        self._step(0, -1)

    def _disc_on(self) -> None:
        self._step(0, 1)

    def _as_found(self) -> None:
        self._model.send(MoveTeeth(0, 0))

    def _step(self, magneto: int, disc: int) -> None:
        engaged = self._model.state.engaged
        if engaged is not None:
            at = engaged.mounting
            self._model.send(MoveTeeth(at.magneto_teeth + magneto, at.disc_teeth + disc))

    def _next_step(self) -> None:
        if self._steps:
            step = self._steps[0]
            self._model.send(MoveTeeth(step.magneto_teeth, step.disc_teeth))

    def _chosen(self) -> None:
        rows = self.plan.selectionModel().selectedRows()
        engaged = self._model.state.engaged
        if rows and engaged is not None:
            move = self._moves[rows[0].row()]
            self._target = (move.magneto_teeth, move.disc_teeth)
            self._mark_target(self._model.state, engaged)
            self.previewed.emit(move)

    def _hovered(self, row: int, column: int) -> None:
        self.previewed.emit(self._moves[row])

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """The preview goes when the pointer leaves the list, back to the chosen move if there is one."""
        if event.type() == QEvent.Type.Leave:
            chosen = next((m for m in self._moves if (m.magneto_teeth, m.disc_teeth) == self._target), None)
            self.previewed.emit(chosen if self._steps else None)
        return super().eventFilter(watched, event)

    def _stop_entered(self, value: float = 0.0) -> None:
        first, second = (spin.exact for spin in self.stops)
        try:
            middle = true_tdc_from_stops(first, second)
        except (ValueError, SpecError) as error:
            self.tdc.setText(f"{str(error)[0].upper()}{str(error)[1:]}.")
            return
        self.tdc.setText(
            f"True top dead centre is at {middle:.2f}° on the disc. Set the pointer to zero there. (Halfway is exact "
            "for a rod on the crank pin; use the master rod's cylinder where rods are articulated.)"
        )


def _short_words(teeth: int) -> str:
    """Teeth for a narrow column: "3 with", "1 against"."""
    return f"{abs(teeth)} {'with' if teeth > 0 else 'against'}" if teeth else "0"
