"""Gap and opening of one magneto over its hours: found, left, where they drift to, and the limits."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

import numpy as np
import pyqtgraph as pg

from magview.bench.curves import Table
from magview.bench.state import BenchState
from magview.job.history import Drift, Line
from magview.job.judge import opening_limit_deg
from magview.job.sheet import Job
from magview.spec.language import marked, tr
from magview.spec.units import format_angle, format_length
from magview.ui.model import BenchModel
from magview.ui.plot_sheet import PlotSheet
from magview.ui.theme import Theme

_FIELDS = ("gap_mm", "opening_error_deg")
_STEPS = 40


class DriftSheet(PlotSheet):
    """Two plots over the magneto's hours. Open signs: as found; full ones: as left; dashed: prediction, dotted: its
    interval; dash-dotted: limits."""

    title = marked("Drift of gap and timing")

    def __init__(self, model: BenchModel, theme: Theme) -> None:
        super().__init__(model, theme)
        self._drift: Drift | None = None
        while self.build_on():
            pass

    def build(self) -> Iterator[None]:
        """Both plots."""
        hours = tr("magneto hours [h]")
        names = (tr("largest gap [mm]"), tr("opens late [rotor deg]"))
        for column, name in enumerate(names):
            self.add_plot(0, column, hours, name)
        yield
        self._found, self._left, self._lines, self._bands, self._limits = [], [], [], [], []
        for plot in self.plots:
            self._found.append(pg.ScatterPlotItem(size=11, symbol="o"))
            self._left.append(pg.ScatterPlotItem(size=9, symbol="d"))
            self._lines.append(self.curve(plot, kept=False))
            self._bands.append([self.curve(plot, kept=False) for _ in range(2)])
            self._limits.append([pg.InfiniteLine(angle=0) for _ in range(2)])
            for item in (self._found[-1], self._left[-1], *self._limits[-1]):
                plot.addItem(item)
        self.legend(
            self.plots[0],
            [(self._found[0], tr("found")), (self._left[0], tr("left")), (self._lines[0], tr("predicted")),
             (self._bands[0][0], tr("interval"))],
        )  # fmt: skip

    def colour(self) -> None:
        """Told apart by strokes and signs as well as by colour."""
        theme = self.theme
        for n in range(len(self.plots)):
            self._found[n].setBrush(pg.mkBrush(theme.paper))
            self._found[n].setPen(pg.mkPen(theme.hand, width=2))
            self._left[n].setBrush(pg.mkBrush(theme.hand))
            self._left[n].setPen(pg.mkPen(theme.line))
            self._lines[n].setPen(self.pen(theme.hand, "designed"))
            for band in self._bands[n]:
                band.setPen(self.pen(theme.bad, "before"))
            for limit in self._limits[n]:
                limit.setPen(self.pen(theme.good, "limit"))

    def show_drift(self, drift: Drift | None) -> None:
        """Show the course of a magneto's sheets."""
        self._drift = drift
        self.again()

    def refresh(self, state: BenchState, old: BenchState | None) -> None:
        """The bench changes nothing here."""
        if old is not None:
            return
        drift = self._drift
        jobs = () if drift is None else drift.jobs
        self.plots[0].setLabel("left", tr("largest gap [{unit}]", unit=self.length_unit))
        for n, field in enumerate(_FIELDS):
            per = self.per_mm if n == 0 else 1.0
            line = None if drift is None else drift.gap if n == 0 else drift.opening
            limits = _limits(jobs[-1], n) if jobs else None
            self._show_plot(n, jobs, field, line, limits, per)

    def _show_plot(
        self,
        n: int,
        jobs: Sequence[Job],
        field: str,
        line: Line | None,
        limits: tuple[float, float] | None,
        per: float,
    ) -> None:
        plot = self.plots[n]
        found, left = points(jobs, "as_found", field), points(jobs, "internal_timing", field)
        for item, values in ((self._found[n], found), (self._left[n], left)):
            item.setData([h for h, _ in values], [per * v for _, v in values])
        seen = [h for h, _ in (*found, *left)]
        heights = [per * v for _, v in (*found, *left)]
        first, last = (min(seen), max(seen)) if seen else (0.0, 100.0)
        end = last + max(50.0, 0.4 * (last - first))
        if line is not None and line.last_h <= end:
            ahead = np.linspace(line.last_h, end, _STEPS)
            value, low, high = line.predict(ahead)
            self._lines[n].setData(ahead, per * value)
            for band, edge in zip(self._bands[n], (low, high), strict=True):
                band.setData(ahead, per * edge)
            heights += [per * float(low.min()), per * float(high.max())]
        else:
            for curve in (self._lines[n], *self._bands[n]):
                curve.setData([], [])
        for item, limit in zip(self._limits[n], limits or (0.0, 0.0), strict=True):
            item.setVisible(limits is not None)
            item.setValue(per * limit)
        heights += [per * v for v in limits or ()]
        plot.setXRange(first - 0.05 * (end - first), end, padding=0.0)
        low_end, high_end = (min(heights), max(heights)) if heights else (0.0, 1.0)
        room = (high_end - low_end) or 1.0
        plot.setYRange(low_end - 0.1 * room, high_end + 0.3 * room, padding=0.0)

    def words_at(self, plot: int, x: float, y: float) -> str:
        """What should be read at the hours under the pointer."""
        drift = self._drift
        line = None if drift is None else drift.gap if plot == 0 else drift.opening
        if line is None or x < line.last_h:
            return ""
        value, low, high = (float(v) for v in line.predict(x))
        if plot == 0:
            words = tuple(format_length(v, self.inches) for v in (value, low, high))
            text = tr("at {hours} h: gap {value}, between {low} and {high} 95 times in 100",
                      hours=round(x), value=words[0], low=words[1], high=words[2])  # fmt: skip
        else:
            words = tuple(format_angle(v, True) for v in (value, low, high))
            text = tr("at {hours} h: opening {value}, between {low} and {high} 95 times in 100",
                      hours=round(x), value=words[0], low=words[1], high=words[2])  # fmt: skip
        return text

    def table(self) -> Table:
        """The readings as columns."""
        drift = self._drift
        if drift is None:
            return []

        def column(stage: str, field: str) -> np.ndarray:
            return np.array([_number(getattr(getattr(job, stage), field)) for job in drift.jobs])

        return [
            (tr("magneto hours [h]"), np.array([_number(job.magneto.hours_h) for job in drift.jobs])),
            (tr("largest gap found [mm]"), column("as_found", "gap_mm")),
            (tr("largest gap left [mm]"), column("internal_timing", "gap_mm")),
            (tr("opening found [rotor deg]"), column("as_found", "opening_error_deg")),
            (tr("opening left [rotor deg]"), column("internal_timing", "opening_error_deg")),
        ]

    def summary(self) -> str:
        """What the sheets foretell."""
        return "" if self._drift is None else " ".join(self._drift.sentences)


def points(jobs: Sequence[Job], stage: str, field: str) -> list[tuple[float, float]]:
    """Hours and reading of every sheet that has both."""
    return [
        (job.magneto.hours_h, value)
        for job in jobs
        if job.magneto.hours_h is not None and (value := getattr(getattr(job, stage), field)) is not None
    ]


def _limits(job: Job, n: int) -> tuple[float, float] | None:
    if n == 0:
        low, high = job.limits.gap_low_mm, job.limits.gap_high_mm
        return None if low is None or high is None else (low, high)
    late = opening_limit_deg(job)
    return None if late is None else (-late, late)


def _number(value: float | None) -> float:
    return float("nan") if value is None else float(value)
