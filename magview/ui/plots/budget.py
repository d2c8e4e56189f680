"""Plot of which reading matters most, and of how likely the setting is within its limits."""

from __future__ import annotations

from collections.abc import Iterator

import numpy as np
import pyqtgraph as pg
from PySide6.QtWidgets import QLabel

from magview.bench.state import BenchState
from magview.bench.sureness import outcome_words, percent_words
from magview.curves.budget import budget_table, density_curve
from magview.curves.lift import Table
from magview.physics.uncertainty.measurement import Outcome
from magview.spec.language import marked, tr
from magview.ui.kit.inputs import QuietCombo
from magview.ui.plots.judging import Judging
from magview.ui.plots.sheet import PlotSheet

_MOST_ROWS = 14
_BINS = 60


class BudgetSheet(PlotSheet):
    """The budget as bars, and the distribution with its limits. What is measured is chosen beside the bench."""

    title = marked("Uncertainty budget")
    long_names = True
    judging: Judging

    def build(self) -> Iterator[None]:
        """Two plots, and the choice of quantity."""
        self._bars_plot = self.add_plot(0, 0, tr("share of the variance [%]"), "")
        yield
        self._spread_plot = self.add_plot(0, 1, "", tr("how often, per unit"))
        self._bars = pg.BarGraphItem(x0=[0.0], y=[0.0], height=0.6, width=[0.0])
        self._bars_plot.addItem(self._bars)
        self._bars_plot.getViewBox().invertY(True)
        self._linear = self.curve(self._spread_plot)
        self._drawn = pg.PlotCurveItem([0.0, 0.0], [0.0], stepMode="center", fillLevel=0.0)
        self._spread_plot.addItem(self._drawn)
        self._limits = [pg.InfiniteLine(angle=90), pg.InfiniteLine(angle=90)]
        for line in self._limits:
            self._spread_plot.addItem(line)
        self.legend(self._spread_plot, [(self._linear, tr("linear")), (self._drawn, tr("Monte Carlo"))])
        self._none = self.word(self._spread_plot, (0.0, 0.0))
        label = QLabel(f"{tr('&Quantity')} ")
        self.quantity = QuietCombo()
        self.quantity.setAccessibleName(tr("Quantity whose budget is shown"))
        label.setBuddy(self.quantity)
        self.quantity.currentIndexChanged.connect(self.again)
        self.controls.addWidget(label)
        self.controls.addWidget(self.quantity)

    def follow(self, judging: Judging) -> None:
        """Show what is judged there."""
        self.judging = judging
        judging.changed.connect(self._judged)
        self._judged()

    def _judged(self) -> None:
        names = [outcome.quantity.name for outcome in self.judging.outcomes]
        if names != [self.quantity.itemText(i) for i in range(self.quantity.count())]:
            blocked = self.quantity.blockSignals(True)
            self.quantity.clear()
            self.quantity.addItems(names)
            self.quantity.blockSignals(blocked)
        self.again()

    @property
    def outcome(self) -> Outcome | None:
        """The quantity shown."""
        judging = getattr(self, "judging", None)
        index = self.quantity.currentIndex()
        return judging.outcomes[index] if judging and 0 <= index < len(judging.outcomes) else None

    def colour(self) -> None:
        """Bars and steps are filled, the linear result is a line."""
        theme = self.look.theme
        self._bars.setOpts(brush=pg.mkBrush(theme.hand), pen=pg.mkPen(theme.line))
        self._linear.setPen(self.pen(theme.line))
        fill = pg.mkColor(theme.hand)
        fill.setAlpha(90)
        self._drawn.setBrush(pg.mkBrush(fill))
        self._drawn.setPen(self.pen(theme.hand))
        for line in self._limits:
            line.setPen(self.pen(theme.good, "limit"))
        self._none.setColor(theme.text)

    def refresh(self, state: BenchState, old: BenchState | None) -> None:
        """The bench changes nothing here; the judging does."""
        if old is not None:
            return
        outcome = self.outcome
        shown = outcome is not None
        for item in (self._bars, self._linear, self._drawn, *self._limits, self.quantity):
            item.setVisible(shown)
        self._none.setVisible(not shown)
        if outcome is None:
            self._none.setText(tr("Choose readings and instruments on the Uncertainty page."))
            self._none.setPos(0.0, 1.0)
            return
        self._show_budget(outcome)
        self._show_spread(outcome)

    def _show_budget(self, outcome: Outcome) -> None:
        lines = sorted(outcome.linear.budget, key=lambda line: -line.share)[:_MOST_ROWS]
        lines = [line for line in lines if line.share > 0.0005]
        rows = np.arange(len(lines), dtype=float)
        self._bars.setOpts(
            x0=np.zeros(len(lines)), y=rows, height=0.6, width=np.array([100 * i.share for i in lines])
        )
        self._bars_plot.getAxis("left").setTicks([[(float(i), line.input.name) for i, line in enumerate(lines)]])
        self._bars_plot.setXRange(0.0, 100.0, padding=0.02)
        self._bars_plot.setYRange(-0.6, max(len(lines), 1) - 0.4, padding=0.0)

    def _show_spread(self, outcome: Outcome) -> None:
        q, drawn = outcome.quantity, outcome.drawn
        factor, unit = (self.per_mm, self.length_unit) if q.unit == "mm" else (1.0, q.unit)
        x, y = density_curve(outcome)
        self._linear.setData(x * factor, y / factor)
        self._spread_plot.setLabel("bottom", f"{tr(q.name)} [{unit}]")
        for line, limit in zip(self._limits, (q.low, q.high), strict=True):
            line.setValue(limit * factor)
        tallest = float(y.max()) / factor if len(y) else 1.0
        ends = [q.low * factor, q.high * factor, *(x[[0, -1]] * factor if len(x) else ())]
        if drawn is None:
            self._drawn.setData([0.0, 0.0], [0.0])
        else:
            values = drawn.values[np.isfinite(drawn.values)]
            counts, edges = np.histogram(values, bins=_BINS, density=True)
            self._drawn.setData(edges * factor, counts / factor)
            tallest = max(tallest, float(counts.max()) / factor)
        room = 0.08 * (max(ends) - min(ends))
        self._spread_plot.setXRange(min(ends) - room, max(ends) + room, padding=0.0)
        self._spread_plot.setYRange(0.0, 1.3 * tallest, padding=0.0)

    def words_at(self, plot: int, x: float, y: float) -> str:
        """The line of the budget under the pointer."""
        outcome = self.outcome
        if outcome is None:
            return ""
        if plot == 1:
            return outcome_words(outcome)
        lines = sorted(outcome.linear.budget, key=lambda line: -line.share)
        row = round(y)
        if not 0 <= row < len(lines):
            return ""
        line = lines[row]
        return tr(
            "{name}: {share} of the variance; {source}",
            name=line.input.name,
            share=percent_words(line.share),
            source=line.input.source,
        )

    def table(self) -> Table:
        """The budget as numbers."""
        return budget_table(self.outcome) if self.outcome is not None else []

    def summary(self) -> str:
        """Say what it comes to."""
        return outcome_words(self.outcome) if self.outcome is not None else tr("Nothing is judged yet.")
