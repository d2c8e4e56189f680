"""Gap, opening and firing of one magneto over its hours: found, left, where they drift to, and the limits."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence

import numpy as np
import pyqtgraph as pg

from magview.bench.state import BenchState
from magview.curves.lift import Table
from magview.job.drift_line import READINGS, DriftLine, DriftReading
from magview.job.history import Drift
from magview.job.sheet import Job
from magview.spec.language import format_angle, format_length, marked, tr
from magview.ui.kit.bench_model import BenchModel
from magview.ui.kit.look import Look
from magview.ui.plots.sheet import PlotSheet

_STEPS = 40
_AHEAD = (
    marked("at {hours} h: gap {value}, between {low} and {high} 95 times in 100"),
    marked("at {hours} h: opening {value}, between {low} and {high} 95 times in 100"),
    marked("at {hours} h: fires {value} before top dead centre, between {low} and {high} 95 times in 100"),
)


class DriftSheet(PlotSheet):
    """Three plots over the magneto's hours. Open signs: as found; full ones: as left; dashed: prediction, dotted: its
    interval; dash-dotted: limits."""

    title = marked("Drift of gap and timing")

    def __init__(self, model: BenchModel, look: Look) -> None:
        super().__init__(model, look)
        self._drift: Drift | None = None
        while self.build_on():
            pass

    def build(self) -> Iterator[None]:
        """A plot for each reading."""
        hours = tr("magneto hours [h]")
        names = (tr("largest gap [mm]"), tr("opens late [rotor deg]"), tr("fires BTDC [crank deg]"))
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
        # Half of the signs in each: three plots side by side are narrow.
        self.legend(self.plots[0], [(self._found[0], tr("found")), (self._left[0], tr("left"))])
        self.legend(self.plots[1], [(self._lines[1], tr("predicted")), (self._bands[1][0], tr("interval"))])

    def colour(self) -> None:
        """Told apart by strokes and signs as well as by colour."""
        theme = self.look.theme
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
        for n, (name, reading) in enumerate(READINGS.items()):
            line = None if drift is None else getattr(drift, name)
            self._show_plot(n, jobs, reading, line)

    def _show_plot(self, n: int, jobs: Sequence[Job], reading: DriftReading, line: DriftLine | None) -> None:
        plot, per = self.plots[n], self.per_mm if n == 0 else 1.0
        limits = reading.limits(jobs[-1]) if jobs else None
        found, left = points(jobs, reading.found), points(jobs, reading.left)
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
        """Say what should be read at the hours under the pointer."""
        line = None if self._drift is None else getattr(self._drift, tuple(READINGS)[plot])
        if line is None or x < line.last_h:
            return ""
        read = [float(v) for v in line.predict(x)]
        value, low, high = (format_length(v) if plot == 0 else format_angle(v, signed=plot == 1) for v in read)
        return tr(_AHEAD[plot], hours=round(x), value=value, low=low, high=high)

    def table(self) -> Table:
        """The readings as columns."""
        drift = self._drift
        if drift is None:
            return []

        def column(read: Callable[[Job], float | None]) -> np.ndarray:
            return np.array([_number(read(job)) for job in drift.jobs])

        gap, opening, firing = READINGS.values()
        return [
            (tr("magneto hours [h]"), column(lambda job: job.magneto.hours_h)),
            (tr("largest gap found [mm]"), column(gap.found)),
            (tr("largest gap left [mm]"), column(gap.left)),
            (tr("opening found [rotor deg]"), column(opening.found)),
            (tr("opening left [rotor deg]"), column(opening.left)),
            (tr("fires found [crank deg BTDC]"), column(firing.found)),
            (tr("fires left [crank deg BTDC]"), column(firing.left)),
        ]

    def summary(self) -> str:
        """Say what the sheets foretell."""
        return "" if self._drift is None else " ".join(self._drift.sentences)


def points(jobs: Sequence[Job], read: Callable[[Job], float | None]) -> list[tuple[float, float]]:
    """Hours and reading of every sheet that has both."""
    return [
        (job.magneto.hours_h, value)
        for job in jobs
        if job.magneto.hours_h is not None and (value := read(job)) is not None
    ]


def _number(value: float | None) -> float:
    return float("nan") if value is None else float(value)
