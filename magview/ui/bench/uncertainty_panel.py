"""Uncertainty of a setting: readings, instruments, the odds of being within limits, and what would improve them."""

from __future__ import annotations

import numpy as np
from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QFormLayout,
    QGroupBox,
    QHBoxLayout,
    QLabel,
    QProgressBar,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from magview.bench.next_act import HEADS, Act, act_words, matters_plainly, next_act
from magview.bench.state import BenchState
from magview.bench.sureness import (
    ENGINE_ROLES,
    INTERNAL_ROLES,
    ROLE_WORDS,
    agreement_words,
    improvement_words,
    matters_words,
    outcome_words,
    percent_words,
    read_engine,
    read_internal,
    value_words,
)
from magview.physics.uncertainty.instruments import Instrument, Role, instrument, instruments
from magview.physics.uncertainty.measurement import (
    Improvement,
    Judgement,
    Measurement,
    Outcome,
    better_instrument,
    improve,
    judge,
)
from magview.physics.uncertainty.monte_carlo import Cancelled
from magview.physics.uncertainty.setting_uncertainty import (
    EngineReadings,
    InternalReadings,
    engine_measurement,
    internal_measurement,
)
from magview.spec.base import SpecError
from magview.spec.language import marked, tr
from magview.ui.kit.bench_model import BenchModel
from magview.ui.kit.inputs import AngleSpin, LengthSpin, QuietCombo
from magview.ui.kit.look import Look
from magview.ui.kit.strip import Foot
from magview.ui.kit.style import tint
from magview.ui.kit.table import Table
from magview.ui.kit.worker import Progress, ShouldStop, Worker
from magview.ui.plots.judging import Judging

_BUDGET = (marked("Reading"), marked("Uncertainty"), marked("Comes to"), marked("Share"))
_DRAWS = (200_000, 1_000_000)
_SEED = 101
"""The draws are the same each time, so that the same readings give the same answer."""


class UncertaintyPanel(QWidget):
    """Next act above, then readings and instruments; the figures behind it are one level down."""

    def __init__(self, model: BenchModel, look: Look, judging: Judging, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._model, self.look, self._judging = model, look, judging
        self.worker = Worker(self)
        self._improvement: Improvement | None = None
        column = QVBoxLayout(self)
        column.setContentsMargins(8, 4, 8, 4)
        column.addWidget(self._build_act())
        column.addWidget(self._build_readings())
        column.addWidget(self._build_instruments())
        self.details_button = QPushButton(tr("&Details"))
        self.details_button.setToolTip(tr("Values with their uncertainty, shares, Monte Carlo"))
        self.details_button.setCheckable(True)
        column.addWidget(self.details_button)
        self.details = self._build_details()
        self.details_button.toggled.connect(self.details.setVisible)
        self.details.hide()
        column.addWidget(self.details)
        column.addWidget(Foot(look))
        column.addStretch(1)
        self.worker.progressed.connect(self._progressed)
        self.worker.finished.connect(self._drawn)
        self.worker.failed.connect(self._failed)
        judging.changed.connect(self._show)
        model.changed.connect(self._state_changed)
        look.changed.connect(self._show)
        self._what_chosen(0)

    # -------------------------------------------------------------- building

    def _build_readings(self) -> QGroupBox:
        box = QGroupBox(tr("What was read"))
        form = self._form = QFormLayout(box)
        self.what = QuietCombo()
        self.what.addItems([tr("Internal timing"), tr("Timing to the engine")])
        self.what.currentIndexChanged.connect(self._what_chosen)
        form.addRow(tr("&Measurement"), self.what)
        self.offset, self.blade = LengthSpin(0.1, -50.0, 50.0, self.look), LengthSpin(0.01, 0.0, 10.0, self.look)
        self.offset.setToolTip(tr("Straightedge from the rim mark, positive past it: the contacts open late"))
        self.blade.setToolTip(tr("The thickest blade that passes the largest gap"))
        self.first_stop, self.second_stop = AngleSpin(0.5, -360.0, 360.0), AngleSpin(0.5, -360.0, 360.0)
        self.left, self.right = AngleSpin(0.5, -360.0, 360.0), AngleSpin(0.5, -360.0, 360.0)
        rows = (
            (tr("Straightedge off mark"), self.offset), (tr("Blade that passes"), self.blade),
            (tr("Disc at the first stop"), self.first_stop), (tr("Disc at the second stop"), self.second_stop),
            (tr("Disc, left opens"), self.left), (tr("Disc, right opens"), self.right),
        )  # fmt: skip
        for name, spin in rows:
            form.addRow(name, spin)
            spin.entered.connect(self._entered)
            spin.said.connect(self._model.refused)
        self.take = QPushButton(tr("Take from the &bench"))
        self.take.setToolTip(tr("What these instruments would read of the bench as it stands"))
        self.take.clicked.connect(self.take_from_bench)
        form.addRow("", self.take)
        self._kinds: tuple[list[QWidget], list[QWidget]] = (
            [self.offset, self.blade],
            [self.first_stop, self.second_stop, self.left, self.right],
        )
        return box

    def _build_instruments(self) -> QGroupBox:
        box = QGroupBox(tr("With what"))
        form = self._tool_form = QFormLayout(box)
        self.tools: dict[Role, QuietCombo] = {}
        usual = {"rule": "rule-32nds", "blade": "blades-thou", "opening": "lamp", "lead-in": "led-in",
                 "tightening": "after-tightening"}  # fmt: skip
        for role in dict.fromkeys((*INTERNAL_ROLES, *ENGINE_ROLES)):
            combo = QuietCombo()
            for tool in instruments(role):
                combo.addItem(tr(tool.name), tool.key)
                combo.setItemData(combo.count() - 1, tr(tool.basis), Qt.ItemDataRole.ToolTipRole)
            combo.setCurrentIndex(max(0, combo.findData(usual.get(role))))
            combo.currentIndexChanged.connect(self._entered)
            form.addRow(tr(ROLE_WORDS[role]), combo)
            self.tools[role] = combo
        return box

    def _build_act(self) -> QGroupBox:
        box = QGroupBox(tr("What to do"))
        column = QVBoxLayout(box)
        self.act, self.how_to, self.overall, self.which = QLabel(), QLabel(), QLabel(), QLabel()
        for label in (self.act, self.how_to, self.overall, self.which):
            label.setWordWrap(True)
            column.addWidget(label)
        return box

    def _build_details(self) -> QGroupBox:
        box = QGroupBox(tr("How sure it is"))
        column = QVBoxLayout(box)
        self.answer, self.matters, self.agreement, self.better = QLabel(), QLabel(), QLabel(), QLabel()
        row = QHBoxLayout()
        self.draws = QuietCombo()
        self.draws.setAccessibleName(tr("Number of Monte Carlo draws"))
        for count in _DRAWS:
            self.draws.addItem(f"{count:,}".replace(",", " "), count)
        self.draw_button, self.cancel_button = QPushButton(tr("M&onte Carlo")), QPushButton(tr("Ca&ncel"))
        self.draw_button.setToolTip(tr("Draw every reading at random within what its instrument allows, and count"))
        self.draw_button.clicked.connect(self.draw)
        self.cancel_button.clicked.connect(self._cancel)
        self.bar = QProgressBar()
        self.bar.setRange(0, 100)
        self.bar.setAccessibleName(tr("Progress of the Monte Carlo"))
        for widget in (self.draws, self.draw_button, self.cancel_button):
            row.addWidget(widget)
        heads = [tr(column) for column in _BUDGET]
        self.budget = Table(tr("Uncertainty budget of the least sure quantity"), heads, wide=(0,), numbers=(1, 2, 3))
        self.budget.show_at_most(20)
        for label in (self.answer, self.matters, self.agreement, self.better):
            label.setWordWrap(True)
            column.addWidget(label)
        column.addLayout(row)
        column.addWidget(self.bar)
        column.addWidget(self.budget)
        self._busy(False)
        return box

    # -------------------------------------------------------------- what was read

    def _what_chosen(self, index: int) -> None:
        for kind, widgets in enumerate(self._kinds):
            for widget in widgets:
                self._form.setRowVisible(widget, kind == index)
        roles = ENGINE_ROLES if index else INTERNAL_ROLES
        for role, combo in self.tools.items():
            self._tool_form.setRowVisible(combo, role in roles)
        self.take_from_bench()

    def chosen_tools(self) -> tuple[Instrument, ...]:
        """The instruments chosen, for the roles this measurement needs."""
        roles = ENGINE_ROLES if self.what.currentIndex() else INTERNAL_ROLES
        return tuple(instrument(self.tools[role].currentData()) for role in roles)

    def take_from_bench(self) -> None:
        """Read the bench with the chosen instruments."""
        try:
            if self.what.currentIndex():
                self._show_engine(read_engine(self._model.state, self.chosen_tools()))
            else:
                found = read_internal(self._model.state, self.chosen_tools())
                self.offset.show_value(found.mark_offset_mm)
                self.blade.show_value(found.blade_mm)
        except SpecError as error:
            self._give_up()
            self._judging.set(None, str(error))
            return
        self._entered()

    def _show_engine(self, found: EngineReadings) -> None:
        self.first_stop.show_value(found.stop_deg[0])
        self.second_stop.show_value(found.stop_deg[1])
        self.left.show_value(found.left_deg or 0.0)
        self._form.setRowVisible(self.right, found.right_deg is not None)
        self.right.show_value(found.right_deg or 0.0)

    def _entered(self, _: object = None) -> None:
        """Judge what stands in the fields."""
        self._give_up()
        try:
            self._judging.set(self._measurement())
        except ValueError as error:
            self._judging.set(None, str(error))

    def _measurement(self) -> Measurement:
        state, tools = self._model.state, self.chosen_tools()
        if not self.what.currentIndex():
            return internal_measurement(
                state.magneto,
                InternalReadings(self.offset.exact, self.blade.exact, state.screw_deg, instruments=tools),
            )
        if state.engaged is None:
            raise SpecError(tr("this magneto is not on an engine: open an installation first"))
        both = state.engaged.installation.position != "single"
        read = EngineReadings(
            (self.first_stop.exact, self.second_stop.exact),
            self.left.exact,
            self.right.exact if both else None,
            instruments=tools,
        )
        installation = state.engaged.installation.model_copy(update={"magneto": state.magneto})
        return engine_measurement(installation, read)

    def _state_changed(self, state: BenchState, old: BenchState) -> None:
        """Another magneto makes other readings; a turn of the rotor makes none."""
        was = old.magneto.model_copy(update={"condition": state.magneto.condition})
        if state.magneto != was or (state.engaged is None) != (old.engaged is None):
            self.take_from_bench()
        elif state.magneto != old.magneto or (state.screw_deg != old.screw_deg and not self.what.currentIndex()):
            self._entered()  # worn or screwed closer: what was read stands

    # -------------------------------------------------------------- what follows

    def _show(self) -> None:
        found = self._judging
        self.draw_button.setEnabled(found.measurement is not None)
        for label in (self.answer, self.matters, self.agreement, self.better, self.budget):
            label.setVisible(found.measurement is not None)
        for label in (self.act, self.how_to, self.which):
            label.setVisible(found.measurement is not None)
        if found.measurement is None:
            self.overall.setText(found.why_not[:1].upper() + found.why_not[1:] + ".")
            return
        weakest = min(found.outcomes, key=lambda outcome: outcome.probability_in_limits)
        self._show_act(found.measurement, weakest)
        self.answer.setText("\n".join(outcome_words(o) for o in found.outcomes))
        self.matters.setText(matters_words(weakest))
        self._show_budget(weakest)
        said = [
            f"{tr(o.quantity.name)}: {agreement_words(o.agreement)}"
            for o in found.outcomes
            if o.agreement is not None
        ]
        apart = [o for o in found.outcomes if o.agreement is not None and not o.agreement.agree]
        if apart:
            said.append(tr("where they disagree, go by the Monte Carlo"))
        self.agreement.setText(
            "\n".join(f"{s[0].upper()}{s[1:]}." for s in said)
            or tr("Linear propagation (JCGM 100); the Monte Carlo (JCGM 101) checks it.")
        )
        tool = better_instrument(found.measurement, weakest)
        if self._improvement is not None:
            self.better.setText(improvement_words(self._improvement))
        else:
            self.better.setText(
                tr("Next to improve: {name}.", name=tr(tool.name))
                if tool
                else tr("No finer instrument on the list would help.")
            )

    def _show_act(self, measurement: Measurement, weakest: Outcome) -> None:
        """The next act, and the chance that it goes by."""
        found, theme = self._judging, self.look.theme
        following = next_act(measurement, found.outcomes, found.judgement)
        self.act.setText(tr(HEADS[following.act]))
        colours = {Act.LEAVE: theme.good, Act.SET: theme.bad}
        tint(self.act, colours.get(following.act, theme.text), bold=True)
        self.how_to.setText(act_words(following))
        self.which.setText(matters_plainly(following))
        self.which.setVisible(following.act is not Act.LEAVE)
        chance = percent_words(
            found.judgement.probability_in_limits if found.judgement else weakest.probability_in_limits
        )
        if found.judgement:
            self.overall.setText(tr("{chance} likely within limits (by Monte Carlo)", chance=chance))
        elif len(found.outcomes) == 1:
            self.overall.setText(tr("{chance} likely within limits", chance=chance))
        else:
            name = tr(weakest.quantity.name)
            self.overall.setText(
                tr("{chance} likely within limits ({name}, the least sure of them)", chance=chance, name=name)
            )

    def _show_budget(self, outcome: Outcome) -> None:
        """The lines of the budget, the largest share first; lengths in the unit chosen."""
        lines = sorted(outcome.linear.budget, key=lambda line: -line.share)
        unit = outcome.quantity.unit
        self.budget.fill([
            (
                line.input.name,
                value_words(line.input.standard_uncertainty, line.input.unit),
                value_words(line.uncertainty, unit),
                percent_words(line.share),
            )
            for line in lines
        ])  # fmt: skip

    def draw(self) -> None:
        """Run the Monte Carlo, with the chosen instruments and with the next better one."""
        measurement = self._judging.measurement
        if measurement is None:
            return
        trials = int(self.draws.currentData())

        def work(progress: Progress, should_stop: ShouldStop) -> Improvement | Judgement | Cancelled | None:
            rng = np.random.default_rng(_SEED)
            better = improve(measurement, rng, trials, progress=progress, should_stop=should_stop)
            if better is not None:
                return better
            again = np.random.default_rng(_SEED)
            return judge(measurement, again, trials, progress=progress, should_stop=should_stop)

        self._busy(True)
        self.worker.start(work)

    def _drawn(self, result: Improvement | Judgement) -> None:
        self._busy(False)
        self._improvement = result if isinstance(result, Improvement) else None
        self._judging.drawn(result.before if isinstance(result, Improvement) else result)

    def _failed(self, sentence: str) -> None:
        self._busy(False)
        self._model.refused.emit(sentence)

    def _progressed(self, share: float) -> None:
        self.bar.setValue(round(100 * share))

    def _cancel(self) -> None:
        self.worker.cancel()
        self._busy(False)

    def _give_up(self) -> None:
        self._improvement = None
        if self.worker.busy:
            self._cancel()

    def _busy(self, on: bool) -> None:
        self.bar.setVisible(on)
        self.bar.setValue(0)
        self.cancel_button.setEnabled(on)
        self.draw_button.setEnabled(not on)

    # -------------------------------------------------------------- looks

    def halt(self) -> None:
        """The window closes."""
        self.worker.cancel()
