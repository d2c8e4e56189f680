"""Gap and opening over the running hours to come."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Protocol

import numpy as np
import pyqtgraph as pg
from PySide6.QtCore import SignalInstance

from magview.bench.state import BenchState
from magview.bench.wear_words import expectation_words, firing_of, leaving_words
from magview.curves.lift import Table, opening_limit_deg, setting_of
from magview.curves.wear import engine_limits_deg, wear_course, wear_table
from magview.physics.wear.prediction import Course, WearRates
from magview.spec.language import marked, tr
from magview.ui.kit.inputs import NumberSpin
from magview.ui.plots.sheet import PlotSheet


class Outlook(Protocol):
    """Wear rates and the hours to look ahead, as they are chosen beside the plot."""

    @property
    def rates(self) -> WearRates:
        """Wear of heel and faces and growth of the pip."""

    @property
    def hours(self) -> NumberSpin:
        """Hours to the next inspection."""

    @property
    def rates_changed(self) -> SignalInstance:
        """Rates or hours are others."""


class WearSheet(PlotSheet):
    """The true gap, what a blade would find, and the opening, against hours; rates stand beside the bench."""

    title = marked("Wear")

    def build(self) -> Iterator[None]:
        """Two plots with the next inspection marked."""
        self._gap_plot = self.add_plot(0, 0, tr("running hours from now [h]"), tr("largest gap [mm]"))
        yield
        self._error_plot = self.add_plot(0, 1, tr("running hours from now [h]"), tr("opens late [rotor deg]"))
        self._gap, self._blade = self.curve(self._gap_plot), self.curve(self._gap_plot)
        self._error = self.curve(self._error_plot)
        self.legend(self._gap_plot, [(self._gap, tr("true gap")), (self._blade, tr("what a blade finds"))])
        self._limits = [[pg.InfiniteLine(angle=0) for _ in range(2)] for _ in range(2)]
        self._engine = [pg.InfiniteLine(angle=0) for _ in range(2)]
        for item in self._engine:
            self._error_plot.addItem(item)
        self.legend(
            self._error_plot, [(self._error, tr("opening")), (self._engine_sample(), tr("the engine's limits"))]
        )
        self._next = [pg.InfiniteLine(angle=90) for _ in range(2)]
        self._seen = [pg.ScatterPlotItem(size=10, symbol="d") for _ in range(2)]
        for plot, limits, line, seen in zip(self.plots, self._limits, self._next, self._seen, strict=True):
            for item in (*limits, line, seen):
                plot.addItem(item)
        self._word = self.word(self._gap_plot, (0.0, 1.0))
        self._panel: Outlook | None = None

    def follow(self, panel: Outlook) -> None:
        """Take rates and hours from there."""
        self._panel = panel
        panel.rates_changed.connect(self.again)
        self.again()

    def colour(self) -> None:
        """Solid is true, dashed is what a blade says; limits are dash-dotted."""
        theme = self.look.theme
        self._gap.setPen(self.pen(theme.ink("lift")))
        self._blade.setPen(self.pen(theme.hand, "designed"))
        self._error.setPen(self.pen(theme.ink("current")))
        for line in (line for limits in self._limits for line in limits):
            line.setPen(self.pen(theme.good, "limit"))
        for line in (*self._engine, self._sample):
            line.setPen(self.pen(theme.bad, "limit"))
        for line in self._next:
            line.setPen(self.pen(theme.line, "before"))
        for seen in self._seen:
            seen.setBrush(pg.mkBrush(theme.hand))
            seen.setPen(pg.mkPen(theme.line))
        self._word.setColor(theme.text)

    def _engine_sample(self) -> pg.PlotDataItem:
        """A stroke for the legend, which cannot show an endless line."""
        self._sample = self.curve(self._error_plot, kept=False)
        return self._sample

    def _course(self, state: BenchState) -> Course | None:
        if self._panel is None:
            return None
        return wear_course(state, self._panel.rates, 2.5 * self._panel.hours.exact)

    def refresh(self, state: BenchState, old: BenchState | None) -> None:
        """The curves change with setting, rates and hours."""
        if old is not None and (setting_of(old), firing_of(old)) == (setting_of(state), firing_of(state)):
            return
        found = self._course(state)
        if found is None or self._panel is None:
            return
        per_mm, hours = self.per_mm, found.hours
        self._gap_plot.setLabel("left", tr("largest gap [{unit}]", unit=self.length_unit))
        self._gap.setData(hours, found.gap_mm[:, 0] * per_mm)
        self._blade.setData(hours, found.blade_gap_mm[:, 0] * per_mm)
        error = found.opening_error_deg[:, 0]
        self._error.setData(hours, error, connect="finite")
        bound = opening_limit_deg(state.magneto)
        gap_limits = [v * per_mm for v in state.magneto.gap_limits_mm]
        for limits, values in zip(self._limits, (gap_limits, (-bound, bound)), strict=True):
            for line, value in zip(limits, values, strict=True):
                line.setValue(value)
        engine = engine_limits_deg(state)
        for line, value in zip(self._engine, engine or (0.0, 0.0), strict=True):
            line.setVisible(engine is not None)
            line.setValue(value)
        for line in self._next:
            line.setValue(self._panel.hours.exact)
        for plot in self.plots:
            plot.setXRange(0.0, float(hours[-1]), padding=0.0)
        gaps = np.concatenate([found.blade_gap_mm[:, 0], found.gap_mm[:, 0]]) * per_mm
        low, high = min(gaps.min(), gap_limits[0]), max(gaps.max(), gap_limits[1])
        self._gap_plot.setYRange(low - 0.1 * (high - low), high + 0.35 * (high - low), padding=0.0)
        there = error[np.isfinite(error)]
        low, high = min([-bound, *there, *(engine or ())]), max([bound, *there, *(engine or ())])
        self._error_plot.setYRange(low - 0.1 * (high - low), high + 0.35 * (high - low), padding=0.0)
        self._word.setText(" " + tr("next inspection"))
        self._word.setPos(self._panel.hours.exact, float(self._gap_plot.viewRange()[1][0]))
        self._show_seen(state)

    def _show_seen(self, state: BenchState) -> None:
        """Inspections lie before now: the last of them stands at 0."""
        last = max((seen.hours for seen in state.inspections), default=0.0)
        recent = [seen for seen in state.inspections if seen.hours == last]
        self._seen[0].setData([0.0] * len(recent), [seen.gap_mm * self.per_mm for seen in recent])
        told = [seen.opening_error_deg for seen in recent if seen.opening_error_deg is not None]
        self._seen[1].setData([0.0] * len(told), told)

    def words_at(self, plot: int, x: float, y: float) -> str:
        """Say what to expect at the hours under the pointer."""
        if self._panel is None or x < 0:
            return ""
        return expectation_words(self.model.state, self._panel.rates, round(x))

    def table(self) -> Table:
        """The course over the hours."""
        found = self._course(self.model.state)
        return wear_table(found, self.model.state) if found is not None else []

    def summary(self) -> str:
        """Say what leaves its limits first."""
        return leaving_words(self.model.state, self._panel.rates) if self._panel else ""
