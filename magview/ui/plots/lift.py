"""Contact lift and gap against the rotor's angle, and the readings of every lobe."""

from __future__ import annotations

import math
from collections.abc import Iterator

import numpy as np
import pyqtgraph as pg
from PySide6.QtGui import QBrush, QColor

from magview.bench.state import BenchState, readings, same_but_worn
from magview.curves.lift import (
    Setting,
    Table,
    cycle_deg,
    designed_setting,
    lift_curves,
    lift_table,
    lobe_table,
    open_spans_deg,
    opening_limit_deg,
    setting_of,
)
from magview.spec.language import marked, tr
from magview.ui.plots.sheet import PlotSheet

_KINDS = (marked("present"), marked("designed"), marked("before"))
"""Gaps that are drawn, in the order of the legend."""


class LiftSheet(PlotSheet):
    """Lift with the stop's level, and the gap that is left of it, over a turn of the cam."""

    title = marked("Lift and gap")

    def build(self) -> Iterator[None]:
        """Two plots side by side, with one cursor."""
        x = tr("rotor past neutral [deg]")
        self._lift_plot = self.add_plot(0, 0, x, tr("contact lift [mm]"), cursor=True)
        yield
        self._gap_plot = self.add_plot(0, 1, x, tr("gap [mm]"), cursor=True)
        self._gap_plot.setXLink(self._lift_plot)
        yield
        self._open = []
        for plot in self.plots:
            bars = pg.BarGraphItem(x0=[], x1=[], y0=[], y1=[])
            bars.setZValue(-20)
            plot.addItem(bars, ignoreBounds=True)
            self._open.append(bars)
        self._lift = self.curve(self._lift_plot)
        self._stop = pg.InfiniteLine(angle=0)
        self._lift_plot.addItem(self._stop)
        self._gaps = {kind: self.curve(self._gap_plot) for kind in _KINDS}
        self._limits = [pg.InfiniteLine(angle=0), pg.InfiniteLine(angle=0)]
        for line in self._limits:
            self._gap_plot.addItem(line)
        self._e_gaps = [pg.InfiniteLine(angle=90) for _ in range(2)]
        for plot, line in zip(self.plots, self._e_gaps, strict=True):
            plot.addItem(line, ignoreBounds=True)
        self._words = {
            "stop": self.word(self._lift_plot, (1.0, 1.0)),
            "open": self.word(self._lift_plot, (0.5, 1.0)),
            "e-gap": self.word(self._lift_plot, (0.0, 0.0)),
            "limits": self.word(self._gap_plot, (1.0, 1.0)),
        }
        yield
        self.legend(self._gap_plot, [(self._gaps[kind], tr(kind)) for kind in _KINDS])

    def colour(self) -> None:
        """Solid is present, dashed designed, dotted before."""
        theme = self.look.theme
        self._lift.setPen(self.pen(theme.ink("lift")))
        self._gaps["present"].setPen(self.pen(theme.ink("lift")))
        self._gaps["designed"].setPen(self.pen(theme.line, "designed"))
        self._gaps["before"].setPen(self.pen(theme.faint, "before"))
        self._stop.setPen(self.pen(theme.bad, "stop"))
        for line in self._limits:
            line.setPen(self.pen(theme.good, "limit"))
        for line in self._e_gaps:
            line.setPen(self.pen(theme.faint, "limit"))
        shade = QColor(theme.ink("lift"))
        shade.setAlpha(34)
        for bars in self._open:
            bars.setOpts(brush=shade, pen=self.pen(theme.faint, "before"))
        for word in self._words.values():
            word.setColor(theme.text)

    def refresh(self, state: BenchState, old: BenchState | None) -> None:
        """The curves change with the setting alone; the cursor goes with the rotor."""
        setting = setting_of(state)
        if old is not None and setting_of(old) == setting:
            return
        unit, per_mm = self.length_unit, self.per_mm
        self._lift_plot.setLabel("left", tr("contact lift [{unit}]", unit=unit))
        self._gap_plot.setLabel("left", tr("gap [{unit}]", unit=unit))
        now = lift_curves(setting)
        self._lift.setData(now.rotor_deg, now.lift_mm * per_mm)
        self._gaps["present"].setData(now.rotor_deg, now.gap_mm * per_mm)
        designed = lift_curves(designed_setting(state.magneto))
        self._gaps["designed"].setData(designed.rotor_deg, designed.gap_mm * per_mm)
        before = self.before()
        if before is None:
            self._gaps["before"].setData([], [])
        else:
            was = lift_curves(before)
            self._gaps["before"].setData(was.rotor_deg, was.gap_mm * per_mm)
        self._stop.setValue(setting.stop_mm * per_mm)
        low, high = state.magneto.gap_limits_mm
        for line, limit in zip(self._limits, (low, high), strict=True):
            line.setValue(limit * per_mm)
        whole, first = cycle_deg(state.magneto), float(setting.timing.places_deg[0])
        for line in self._e_gaps:
            line.setValue(first)
        for plot in self.plots:
            self.turn_axis(plot, whole)
        top = max(float(now.lift_mm.max()), setting.stop_mm) * per_mm
        bottom = min(0.0, float(now.lift_mm.min()) * per_mm)
        self._lift_plot.setYRange(bottom, 1.18 * top, padding=0.0)
        tallest = max(float(now.gap_mm.max()), float(designed.gap_mm.max()), high) * per_mm
        self._gap_plot.setYRange(0.0, 1.35 * tallest, padding=0.0)
        spans = open_spans_deg(state)
        starts, ends = np.array(spans).reshape(-1, 2).T
        for bars, foot, head in zip(self._open, (bottom, 0.0), (1.18 * top, 1.35 * tallest), strict=True):
            over = 0.1 * (head - foot)  # foot and head of the bars are out of sight
            bars.setOpts(x0=starts, x1=ends, y0=foot - over, y1=head + over)
        self._say("stop", tr("stop: contacts touch"), whole, setting.stop_mm * per_mm)
        self._say("limits", tr("limits of the largest gap"), whole, high * per_mm)
        self._say("e-gap", f" {tr('E-gap')}", first, 1.18 * top)
        longest = max(spans, key=lambda s: s[1] - s[0], default=None)
        self._words["open"].setVisible(longest is not None)
        if longest is not None:
            self._say("open", tr("open"), sum(longest) / 2, bottom)

    def _say(self, key: str, text: str, x: float, y: float) -> None:
        self._words[key].setText(text)
        self._words[key].setPos(x, y)

    def before(self) -> Setting | None:
        """The setting before the last change of it, on the same magneto."""
        was = self.model.store.before_last(setting_of)
        if was is None or not same_but_worn(was.magneto, self.model.state.magneto):
            return None
        return setting_of(was)

    def words_at(self, plot: int, x: float, y: float) -> str:
        """Lift and gap at an angle."""
        setting = setting_of(self.model.state)
        lift = float(setting.timing.lift_mm(x, setting.backplate_deg))
        gap = max(lift - setting.stop_mm, 0.0)
        what = tr("gap {gap:length}", gap=gap) if gap > 0 else tr("closed")
        return tr(
            "rotor {rotor:deg}: lift {lift:length}, {what}",
            rotor=x,
            lift=lift,
            what=what,
        )

    def clicked_at(self, plot: int, x: float, y: float) -> None:
        """Turn the rotor there."""
        self.turn_to(x, None)

    def table(self) -> Table:
        """The curves."""
        return lift_table(setting_of(self.model.state), self.before())

    def summary(self) -> str:
        """Opening and largest gap of lobe 1."""
        result = readings(self.model.state)
        if math.isnan(result.opens_deg[0]):
            return (
                tr("The contacts never open on lobe 1.")
                if result.max_gap_mm[0] <= 0.0
                else tr("The contacts never close.")
            )
        return tr(
            "Contacts open at {opens:deg} and close at {closes:deg} of rotor; largest gap {max_gap:length}.",
            opens=result.opens_deg[0],
            closes=result.closes_deg[0],
            max_gap=float(result.max_gap_mm[0]),
        )


class LobeSheet(PlotSheet):
    """Opening error and largest gap of every lobe against the limits."""

    title = marked("Lobes")

    def build(self) -> Iterator[None]:
        """Two plots with a point for each lobe."""
        self._plots = [self.add_plot(0, 0, tr("lobe, in firing order"), tr("opens late [rotor deg]"))]
        yield
        self._plots.append(self.add_plot(0, 1, tr("lobe, in firing order"), tr("largest gap [mm]")))
        yield
        self._stems, self._points, self._limits, self._bounds = [], [], [], []
        for plot in self._plots:
            stem = pg.PlotCurveItem(connect="pairs")
            points = pg.ScatterPlotItem(size=11)
            limits = [pg.InfiniteLine(angle=0), pg.InfiniteLine(angle=0)]
            for item in (stem, points, *limits):
                plot.addItem(item)
            self._stems.append(stem)
            self._points.append(points)
            self._limits.append(limits)
            self._bounds.append(self.word(plot, (1.0, 1.0)))
        self._zero = pg.InfiniteLine(angle=0, pos=0.0)
        self._plots[0].addItem(self._zero)

    def colour(self) -> None:
        """A disc is within limits, a cross is not, a ring is not judged."""
        for stem, limits, word in zip(self._stems, self._limits, self._bounds, strict=True):
            stem.setPen(self.pen(self.look.theme.faint))
            word.setColor(self.look.theme.text)
            for line in limits:
                line.setPen(self.pen(self.look.theme.good, "limit"))
        self._zero.setPen(self.pen(self.look.theme.line))

    def refresh(self, state: BenchState, old: BenchState | None) -> None:
        """A point for each lobe."""
        if old is not None and setting_of(old) == setting_of(state):
            return
        result, magneto = readings(state), state.magneto
        unit, per_mm = self.length_unit, self.per_mm
        self._plots[1].setLabel("left", tr("largest gap [{unit}]", unit=unit))
        bound = opening_limit_deg(magneto)
        low, high = (v * per_mm for v in magneto.gap_limits_mm)
        # Only the first lobe of a compensated cam is judged; the others are shown against their own place.
        judged = np.arange(len(result.opens_deg)) < (1 if magneto.compensated else len(result.opens_deg))
        word = tr("at the mark: judged on lobe 1") if magneto.compensated else tr("at the mark")
        self._show_lobes(0, result.e_gap_error_deg, result.timing_ok, judged, (-bound, bound), 0.0, word)
        self._show_lobes(1, result.max_gap_mm * per_mm, result.gap_ok, judged | True, (low, high), low, tr("limits"))

    def _show_lobes(
        self,
        n: int,
        values: np.ndarray,
        good: np.ndarray,
        judged: np.ndarray,
        limits: tuple[float, float],
        foot: float,
        word: str,
    ) -> None:
        lobes = np.arange(1, len(values) + 1, dtype=float)
        there = np.isfinite(values)
        stems = np.column_stack([np.full(there.sum(), foot), values[there]]).ravel()
        self._stems[n].setData(np.repeat(lobes[there], 2), stems)
        self._points[n].setData(
            x=lobes[there],
            y=values[there],
            symbol=["o" if ok else "x" for ok in (good | ~judged)[there]],
            brush=[self._brush(ok, counts) for ok, counts in zip(good[there], judged[there], strict=True)],
            pen=pg.mkPen(self.look.theme.line),
        )
        for line, limit in zip(self._limits[n], limits, strict=True):
            line.setValue(limit)
        low, high = min([*limits, *values[there]]), max([*limits, *values[there]])
        room = 0.25 * (high - low)
        self._plots[n].setYRange(low - room, high + room, padding=0.0)
        self._plots[n].setXRange(0.5, len(values) + 0.5, padding=0.0)
        self._plots[n].getAxis("bottom").setTicks([[(float(i), str(int(i))) for i in lobes]])
        self._bounds[n].setText(word)
        self._bounds[n].setPos(len(values) + 0.5, limits[1])

    def _brush(self, good: bool, judged: bool) -> QBrush:
        return QBrush(QColor(self.look.theme.good if good else self.look.theme.bad)) if judged else QBrush()

    def words_at(self, plot: int, x: float, y: float) -> str:
        """Say what the lobe under the pointer reads."""
        result = readings(self.model.state)
        lobe = round(x)
        if not 1 <= lobe <= len(result.opens_deg):
            return ""
        error = float(result.e_gap_error_deg[lobe - 1])
        opens = (
            tr("never works the contacts") if math.isnan(error) else tr("{error:+deg} from its place", error=error)
        )
        return tr(
            "lobe {lobe}: {opens}, largest gap {max_gap:length}",
            lobe=lobe,
            opens=opens,
            max_gap=float(result.max_gap_mm[lobe - 1]),
        )

    def clicked_at(self, plot: int, x: float, y: float) -> None:
        """Turn the rotor to where that lobe opens the contacts."""
        result = readings(self.model.state)
        lobe = round(x)
        if 1 <= lobe <= len(result.opens_deg) and math.isfinite(result.opens_deg[lobe - 1]):
            self.turn_to(float(result.opens_deg[lobe - 1]) % cycle_deg(self.model.state.magneto), None)

    def table(self) -> Table:
        """The readings of every lobe."""
        return lobe_table(self.model.state)

    def summary(self) -> str:
        """Say how many lobes are within limits."""
        result = readings(self.model.state)
        return tr(
            "{good} of {lobes} lobes have their largest gap within limits.",
            good=int(np.sum(result.gap_ok)),
            lobes=len(result.gap_ok),
        )
