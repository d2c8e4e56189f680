"""Trials against the plate: the file's curve, the curve through the trials with its interval, and the next move."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Protocol

import numpy as np
import pyqtgraph as pg
from PySide6.QtCore import SignalInstance

from magview.bench.actions import TurnBackplate
from magview.bench.advice_words import advice_words
from magview.bench.state import BenchState
from magview.curves.lift import Table
from magview.curves.trials import trials_curve, trials_table
from magview.physics.trials.advice import Advice, Outcome
from magview.spec.language import marked, tr
from magview.ui.plots.sheet import PlotSheet


class Adviser(Protocol):
    """Adviser of what to try next, worked out beside the plot."""

    @property
    def advice(self) -> Advice | None:
        """The advice for the bench as it stands."""

    @property
    def last_advice(self) -> Advice | None:
        """The advice as it was last made."""

    @property
    def advised(self) -> SignalInstance:
        """The advice is new."""


class TrialsSheet(PlotSheet):
    """Largest gap against the plate, with the contacts set to open at the E-gap each time."""

    title = marked("Trials")

    def build(self) -> Iterator[None]:
        """One plot."""
        plot = self._plot = self.add_plot(0, 0, tr("backplate, positive with rotation [deg]"), tr("largest gap [mm]"))
        yield
        self._file, self._fit = self.curve(plot), self.curve(plot)
        self._low, self._high = self.curve(plot), self.curve(plot)
        self._band = pg.FillBetweenItem(self._low, self._high)
        plot.addItem(self._band)
        self._limits = [pg.InfiniteLine(angle=0) for _ in range(2)]
        self._spans, self._made = pg.PlotCurveItem(connect="pairs"), pg.ScatterPlotItem(size=11)
        self._next = pg.ScatterPlotItem(size=16, symbol="+")
        for item in (*self._limits, self._spans, self._made, self._next):
            plot.addItem(item)
        self.legend(
            plot,
            [
                (self._fit, tr("through the trials")),
                (self._file, tr("as the file has it")),
                (self._low, tr("19 times in 20")),
            ],
        )
        self._word = self.word(plot, (0.5, 1.0))
        self._panel: Adviser | None = None

    def follow(self, panel: Adviser) -> None:
        """Show what is advised there."""
        self._panel = panel
        panel.advised.connect(self.again)
        self.again()

    @property
    def _advice(self) -> Advice | None:
        """The advice that is drawn; a new one is told of by the panel."""
        return self._panel.last_advice if self._panel is not None else None

    def colour(self) -> None:
        """Solid what the trials tell, dashed the file, dotted the interval; limits are dash-dotted."""
        theme = self.look.theme
        self._fit.setPen(self.pen(theme.hand))
        self._file.setPen(self.pen(theme.line, "designed"))
        self._low.setPen(self.pen(theme.hand, "before"))
        self._high.setPen(self.pen(theme.hand, "before"))
        fill = pg.mkColor(theme.hand)
        fill.setAlpha(40)
        self._band.setBrush(fill)
        self._spans.setPen(pg.mkPen(theme.line, width=2))
        self._next.setPen(pg.mkPen(theme.hand, width=2))
        self._word.setColor(theme.text)
        for line in self._limits:
            line.setPen(self.pen(theme.good, "limit"))

    def refresh(self, state: BenchState, old: BenchState | None) -> None:
        """The trials change this, and so does another magneto; both come through the advice."""
        if old is not None:
            return
        advice, per_mm = self._panel.advice if self._panel is not None else None, self.per_mm
        if advice is None:
            return
        curve = trials_curve(advice)
        self._plot.setLabel("left", tr("largest gap [{unit}]", unit=self.length_unit))
        self._file.setData(curve.backplate_deg, curve.file_mm * per_mm, connect="finite")
        for item, values in ((self._fit, curve.gap_mm), (self._low, curve.low_mm), (self._high, curve.high_mm)):
            item.setData(curve.backplate_deg, values * per_mm)
        limits = [v * per_mm for v in state.magneto.gap_limits_mm]
        for line, limit in zip(self._limits, limits, strict=True):
            line.setValue(limit)
        self._show_trials(advice)
        self._plot.setXRange(float(curve.backplate_deg[0]), float(curve.backplate_deg[-1]), padding=0.0)
        top = max(limits[1], float(np.nanmax(curve.high_mm)) * per_mm)
        self._plot.setYRange(0.0, 1.25 * top, padding=0.0)
        done = advice.outcome is Outcome.DONE
        self._next.setData([advice.backplate_deg], [advice.gap_mm * per_mm])
        self._word.setText(tr("here: done") if done else tr("next"))
        self._word.setPos(advice.backplate_deg, advice.high_mm * per_mm)

    def _show_trials(self, advice: Advice) -> None:
        trials, per_mm = advice.fit.trials, self.per_mm
        most = advice.fit.full_gap_mm
        plates = advice.fit.plates
        ends = np.array([(t.gap_low_mm, min(t.gap_high_mm, most)) for t in trials]).reshape(-1, 2) * per_mm
        self._spans.setData(np.repeat(plates, 2), ends.ravel())
        out = [i in advice.fit.outliers for i in range(len(trials))]
        self._made.setData(
            x=plates,
            y=ends.mean(axis=1),
            symbol=["x" if left else "o" for left in out],
            brush=[pg.mkBrush(self.look.theme.bad if left else self.look.theme.hand) for left in out],
            pen=pg.mkPen(self.look.theme.line),
        )

    def words_at(self, plot: int, x: float, y: float) -> str:
        """The gap to expect with the plate under the pointer."""
        if self._advice is None:
            return ""
        there = self._advice.fit.predict(x, as_set=True)
        return tr(
            "plate {plate:+deg}: expect {gap:length}, 19 times in 20 between {low:length} and {high:length}",
            plate=x,
            gap=float(there.gap_mm),
            low=float(there.low_mm),
            high=float(there.high_mm),
        )

    def clicked_at(self, plot: int, x: float, y: float) -> None:
        """Turn the plate there."""
        self.model.send(TurnBackplate(x))

    def table(self) -> Table:
        """The curves."""
        advice = self._panel.advice if self._panel is not None else None
        return trials_table(trials_curve(advice)) if advice is not None else []

    def summary(self) -> str:
        """Say what to do next."""
        return advice_words(self._advice) if self._advice is not None else ""
