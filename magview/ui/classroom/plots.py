"""A class as plots: marks, marks against time, steps, faults found and missed. pyqtgraph is loaded here alone."""

from __future__ import annotations

from collections import Counter
from pathlib import Path

import numpy as np
import pyqtgraph as pg
from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtGui import QBrush, QColor, QResizeEvent
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from magview.classroom.summary import AttemptEntry, Summary
from magview.classroom.words import fault_words
from magview.spec.base import SpecError
from magview.spec.language import tr
from magview.ui.kit.asking import ask_save
from magview.ui.kit.look import Look
from magview.ui.pictures.export import written_beside
from magview.ui.plots.export import plot_image, write_plot_svg
from magview.ui.practice.controls import wrapped

_BIN = 10.0
"""Width of a bar of marks [%]."""


class ClassPlots(QWidget):
    """Four plots of one summary. A point that is clicked is an attempt."""

    chosen = Signal(object)
    """The entry of a point that was clicked."""
    said = Signal(str)

    def __init__(self, look: Look) -> None:
        super().__init__()
        self.look = look
        self._summary: Summary | None = None
        self.canvas = pg.GraphicsLayoutWidget()
        self.canvas.setAccessibleName(tr("Plots of the class"))
        self.told = wrapped()
        save = QPushButton(tr("Save plots…"))
        save.setAutoDefault(False)
        save.clicked.connect(self._ask_save)
        foot = QHBoxLayout()
        foot.addWidget(self.told, 1)
        foot.addWidget(save)
        column = QVBoxLayout(self)
        column.setContentsMargins(4, 2, 4, 2)
        column.addWidget(self.canvas, 1)
        column.addLayout(foot)
        self.marks, self.times = self._plot(0, 0), self._plot(0, 1)
        self.steps, self.faults = self._plot(1, 0), self._plot(1, 1)
        for column_number in (0, 1):
            self.canvas.ci.layout.setColumnStretchFactor(column_number, 1)
        self.points = pg.ScatterPlotItem(size=9, hoverable=True)
        self.points.sigClicked.connect(self._clicked)
        self._colour()
        look.changed.connect(self._colour)

    def _bars_that_fit(self) -> int:
        """As many as have room for their words: about half the height, less titles and axis."""
        line = self.fontMetrics().height()
        return max(2, int((self.canvas.height() / 2 - 6 * line) / (1.15 * line)))

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Another height has room for another number of bars."""
        super().resizeEvent(event)
        if self._summary is not None and event.size().height() != event.oldSize().height():
            QTimer.singleShot(0, self, self._again)

    def _again(self) -> None:
        if self._summary is not None:
            self.show_summary(self._summary)

    def _plot(self, row: int, column: int) -> pg.PlotItem:
        plot = self.canvas.addPlot(row, column)
        plot.setMenuEnabled(False)
        plot.hideButtons()
        plot.setMouseEnabled(False, False)
        for side in ("left", "bottom"):
            plot.getAxis(side).enableAutoSIPrefix(False)
        return plot

    def _colour(self) -> None:
        theme = self.look.theme
        self.canvas.setBackground(theme.paper)
        for plot in (self.marks, self.times, self.steps, self.faults):
            for side in ("left", "bottom"):
                axis = plot.getAxis(side)
                axis.setPen(theme.line)
                axis.setTextPen(theme.text)
                axis.setStyle(tickFont=self.font())
        if self._summary is not None:
            self.show_summary(self._summary)

    def show_summary(self, summary: Summary) -> None:
        """Show a class."""
        self._summary = summary
        for plot in (self.marks, self.times, self.steps, self.faults):
            plot.clear()
        counted = summary.counted
        self._show_marks(counted)
        self._show_times(counted)
        self._show_steps(summary)
        self._show_faults(counted)
        passed = sum(e.result.passed for e in counted)
        self.told.setText(
            tr("{count} attempts of {pupils} pupils count; {passed} passed. ● passed, × not passed.",
               count=len(counted), pupils=len(summary.pupils), passed=passed)
        )  # fmt: skip
        self.canvas.setAccessibleDescription(self.told.text())

    def _label(self, plot: pg.PlotItem, x: str, y: str, title: str) -> None:
        for side, words in (("bottom", x), ("left", y)):
            plot.setLabel(side, words, color=self.look.theme.text)
        plot.setTitle(title, color=self.look.theme.text, size=f"{self.font().pointSizeF():g}pt")

    def _show_marks(self, counted: list[AttemptEntry]) -> None:
        percents = np.array([e.result.percent for e in counted])
        counts, edges = np.histogram(np.minimum(percents, 100.0 - 1e-9), np.arange(0.0, 100.0 + _BIN, _BIN))
        self.marks.addItem(
            pg.BarGraphItem(
                x=edges[:-1] + _BIN / 2, height=counts, width=0.85 * _BIN, **self._ink(self.look.theme.hand)
            )
        )
        self.marks.setXRange(0.0, 100.0)
        self.marks.setYRange(0.0, max(1.0, float(counts.max(initial=0))))
        self._label(self.marks, tr("marks [%]"), tr("attempts"), tr("Marks"))

    def _show_times(self, counted: list[AttemptEntry]) -> None:
        self.points.setData(
            x=[e.result.seconds / 60.0 for e in counted],
            y=[e.result.percent for e in counted],
            data=counted,
            symbol=["o" if e.result.passed else "x" for e in counted],
            brush=[pg.mkBrush(self.look.theme.good if e.result.passed else self.look.theme.bad) for e in counted],
            pen=pg.mkPen(self.look.theme.line),
        )
        self.times.addItem(self.points)
        self.times.setYRange(0.0, 100.0)
        self.times.enableAutoRange(axis="x")
        self._label(self.times, tr("minutes, by the pupils' clocks"), tr("marks [%]"), tr("Marks against time"))

    def _show_steps(self, summary: Summary) -> None:
        worst = sorted(summary.steps, key=lambda s: s.share)[: self._bars_that_fit()]
        names = [f"{s.exercise.split()[0]} {s.step}" if s.numbered else s.step for s in worst]
        self._bars(self.steps, names, [[100.0 * s.share for s in worst]], [self.look.theme.hand])
        self.steps.setXRange(0.0, 100.0)
        self._label(self.steps, tr("mean marks [%]"), "", tr("Steps, the weakest above"))

    def _show_faults(self, counted: list[AttemptEntry]) -> None:
        found: Counter[str] = Counter()
        missed: Counter[str] = Counter()
        for entry in counted:
            for fault in entry.result.faults:
                if fault.found is not None:
                    (found if fault.found else missed)[fault_words(fault)] += 1
        names = sorted({*found, *missed}, key=lambda n: -missed[n])[: self._bars_that_fit()]
        stacks = [[float(c[n]) for n in names] for c in (missed, found)]
        self._bars(self.faults, names, stacks, [self.look.theme.bad, self.look.theme.good])
        self.faults.enableAutoRange(axis="x")
        self._label(self.faults, tr("missed (hatched), then found"), "", tr("Faults"))

    def _bars(self, plot: pg.PlotItem, names: list[str], stacks: list[list[float]], colours: list[str]) -> None:
        """Lying bars, the first name on top; several stacks stand behind one another."""
        rows = np.arange(len(names), dtype=float)
        start = np.zeros(len(names))
        for i, (lengths, colour) in enumerate(zip(stacks, colours, strict=True)):
            hatched = len(stacks) > 1 and i == 0
            ink = self._ink(colour, Qt.BrushStyle.BDiagPattern if hatched else Qt.BrushStyle.SolidPattern)
            plot.addItem(pg.BarGraphItem(x0=start, y=rows, width=np.array(lengths), height=0.7, **ink))
            start = start + np.array(lengths)
        plot.getViewBox().invertY(True)
        plot.setYRange(-0.6, max(1, len(names)) - 0.4, padding=0.0)
        short = [n if len(n) <= 34 else f"{n[:33]}…" for n in names]
        plot.getAxis("left").setTicks([list(zip(rows.tolist(), short, strict=True))])

    def _ink(self, colour: str, style: Qt.BrushStyle = Qt.BrushStyle.SolidPattern) -> dict[str, object]:
        return {"brush": QBrush(QColor(colour), style), "pen": pg.mkPen(self.look.theme.line)}

    def _clicked(self, item: object, points: list[pg.SpotItem], event: object = None) -> None:
        if len(points):
            self.chosen.emit(points[0].data())

    def _ask_save(self) -> None:
        kinds = "SVG (*.svg);;PNG (*.png)"
        path = ask_save(self, tr("Save the plots"), "class.svg", kinds)
        if path is not None:
            self.save_path(path)

    def save_path(self, path: Path) -> None:
        """Write the plots, as SVG where the name says so, else as PNG."""
        try:
            with written_beside(path) as beside:
                if path.suffix.lower() == ".svg":
                    write_plot_svg(self.canvas, beside, tr("Plots of the class"))
                else:
                    plot_image(self.canvas, self.look.theme.paper, 2.0).save(str(beside))
        except SpecError as error:
            self.said.emit(str(error))
            return
        self.said.emit(tr("Saved {file}.", file=path.name))
