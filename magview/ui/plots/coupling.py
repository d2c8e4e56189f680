"""Every timing the coupling can reach near the wanted one, on a number line."""

from __future__ import annotations

import math
from collections.abc import Iterator

import numpy as np
import pyqtgraph as pg
from PySide6.QtGui import QColor
from PySide6.QtWidgets import QLabel, QSpinBox

from magview.bench.state import BenchState, Engaged, firing_btdc_deg
from magview.bench.words import short_words
from magview.curves.coupling import shift_table, shifts_near
from magview.curves.lift import Table
from magview.physics.engine.coupling import MAX_TEETH, Move, teeth_moved
from magview.spec.language import format_angle, marked, tr
from magview.ui.plots.sheet import PlotSheet

_EARLY = marked("{fires} BTDC, {off} early: A disc {disc}, B magneto flange {magneto}")
_LATE = marked("{fires} BTDC, {off} late: A disc {disc}, B magneto flange {magneto}")


class CouplingSheet(PlotSheet):
    """A stem for each reachable timing: how near it comes, and how many teeth it takes."""

    title = marked("Coupling")

    def build(self) -> Iterator[None]:
        """One plot, and the tooth counts as a question of "what if"."""
        plot = self._plot = self.add_plot(
            0, 0, tr("fires [crank deg BTDC], earlier to the right"), tr("teeth moved, both faces")
        )
        yield
        self._band = pg.LinearRegionItem(movable=False)
        self._band.setZValue(-20)
        plot.addItem(self._band, ignoreBounds=True)
        self._stems = pg.PlotCurveItem(connect="pairs")
        self._tips, self._now = pg.ScatterPlotItem(size=9), pg.ScatterPlotItem(size=15, symbol="s")
        self._wanted = pg.InfiniteLine(angle=90)
        for item in (self._stems, self._wanted, self._now, self._tips):
            plot.addItem(item)
        self._word = {name: self.word(plot, (0.5, 1.0)) for name in ("wanted", "best", "now", "none")}
        self._word["now"].setAnchor((0.5, 1.35))  # clear of its square
        self._moves: list[Move] = []
        self.teeth: dict[str, QSpinBox] = {}
        self._asked_of: tuple[int, int] | None = None
        """The coupling that "what if" is asked of: another one's own counts come first."""
        for name, text in (("magneto", f"{tr('Teeth: magneto')} "), ("drive", f" {tr('drive')} ")):
            label, spin = QLabel(text), QSpinBox()
            spin.setRange(1, MAX_TEETH)
            spin.setAccessibleName(
                tr("Teeth at the magneto, what if") if name == "magneto" else tr("Teeth at the drive, what if")
            )
            spin.setToolTip(tr("What if the disc had other teeth: the installation stays as it is"))
            label.setBuddy(spin)
            spin.valueChanged.connect(self.again)
            self.controls.addWidget(label)
            self.controls.addWidget(spin)
            self.teeth[name] = spin

    def colour(self) -> None:
        """Discs lie within the tolerance, crosses outside it; the square is where the coupling stands."""
        theme = self.look.theme
        shade = QColor(theme.good)
        shade.setAlpha(46)
        self._band.setBrush(shade)
        for edge in self._band.lines:
            edge.setPen(self.pen(theme.good, "limit"))
        self._stems.setPen(self.pen(theme.faint))
        self._wanted.setPen(self.pen(theme.line, "designed"))
        self._now.setBrush(pg.mkBrush(None))
        self._now.setPen(pg.mkPen(theme.hand, width=2))
        for word in self._word.values():
            word.setColor(theme.text)

    def refresh(self, state: BenchState, old: BenchState | None) -> None:
        """Plan anew when reading, wish, teeth or setting have changed."""
        if old is not None and _timing(old) == _timing(state):
            return
        engaged = state.engaged
        if engaged is not None and not engaged.installation.toothed:
            for spin in self.teeth.values():
                spin.setEnabled(False)
            self._show_none(engaged)
            return
        if engaged is not None and _counts(engaged) != self._asked_of:
            self._asked_of = _counts(engaged)
            for spin, count in zip(self.teeth.values(), self._asked_of, strict=True):
                blocked = spin.blockSignals(True)
                spin.setValue(count)
                spin.blockSignals(blocked)
        found = firing_btdc_deg(state, engaged.side, as_found=True) if engaged else math.nan
        for spin in self.teeth.values():
            spin.setEnabled(engaged is not None)
        if engaged is None or math.isnan(found):
            self._show_none(engaged)
            return
        tolerance = engaged.installation.engine.timing_tolerance_deg
        wanted = engaged.mounting.wanted_btdc_deg
        reach = max(3.0 * tolerance, abs(found - wanted) + tolerance, 2.0)
        counts = (self.teeth["magneto"].value(), self.teeth["drive"].value())
        self._moves = shifts_near(*counts, engaged.ratio, round(found, 9), wanted, reach)
        self._show_moves(engaged, wanted, tolerance, reach)
        now = firing_btdc_deg(state, engaged.side)
        real = counts == _counts(engaged)
        at = engaged.mounting
        moved = abs(at.magneto_teeth) + abs(at.disc_teeth)
        self._now.setData([now] if real else [], [moved] if real else [])
        self._word["now"].setVisible(real)
        self._word["now"].setText(tr("now"))
        self._word["now"].setPos(now, moved)
        if real and self._moves:  # one word where both would stand
            best = self._best()
            there = abs(best.result_btdc_deg - now) < 1e-6 and teeth_moved(best) == moved
            self._word["best"].setVisible(not there)
            self._word["now"].setText(tr("now, nearest") if there else tr("now"))

    def _show_none(self, engaged: Engaged | None) -> None:
        self._moves = []
        for item in (self._stems, self._tips, self._now):
            item.setData([], [])
        for word in self._word.values():
            word.setVisible(False)
        self._word["none"].setText(
            tr("This magneto is not on an engine: open an installation.") if engaged is None
            else tr("No toothed disc: there are no teeth to plan.") if not engaged.installation.toothed
            else tr("The contacts never open and close: there is no timing to plan from.")
        )  # fmt: skip
        self._word["none"].setPos(0.5, 0.5)
        self._word["none"].setVisible(True)
        self._plot.setXRange(0.0, 1.0)
        self._plot.setYRange(0.0, 1.0)

    def _show_moves(self, engaged: Engaged, wanted: float, tolerance: float, reach: float) -> None:
        x = np.array([m.result_btdc_deg for m in self._moves])
        teeth = np.array([float(teeth_moved(m)) for m in self._moves])
        self._stems.setData(np.repeat(x, 2), np.column_stack([np.zeros_like(teeth), teeth]).ravel())
        good = [abs(m.residual_deg) <= tolerance + 1e-9 for m in self._moves]
        self._tips.setData(
            x=x,
            y=teeth,
            symbol=["o" if ok else "x" for ok in good],
            brush=[pg.mkBrush(self.look.theme.good if ok else self.look.theme.bad) for ok in good],
            pen=pg.mkPen(self.look.theme.line),
        )
        self._band.setRegion((wanted - tolerance, wanted + tolerance))
        self._wanted.setValue(wanted)
        top = float(teeth.max()) if len(teeth) else 1.0
        self._plot.setXRange(wanted - reach, wanted + reach, padding=0.0)
        self._plot.setYRange(-0.06 * max(top, 1.0), 1.3 * max(top, 1.0), padding=0.0)
        for name, word in self._word.items():
            word.setVisible(name == "wanted" or (name == "best" and bool(self._moves)))
        self._word["wanted"].setText(tr("wanted {wanted:deg} ± {tolerance}°", wanted=wanted, tolerance=tolerance))
        self._word["wanted"].setAnchor((0.5, 0.0))
        self._word["wanted"].setPos(wanted, 1.3 * max(top, 1.0))
        if self._moves:
            best = self._best()
            self._word["best"].setText(tr("nearest"))
            self._word["best"].setPos(best.result_btdc_deg, teeth_moved(best))

    def _best(self) -> Move:
        return min(self._moves, key=lambda m: (abs(m.residual_deg), teeth_moved(m)))

    def _nearest(self, x: float) -> Move | None:
        return min(self._moves, key=lambda m: abs(m.result_btdc_deg - x), default=None)

    def words_at(self, plot: int, x: float, y: float) -> str:
        """The move whose stem is nearest."""
        move = self._nearest(x)
        if move is None:
            return ""
        return tr(
            _EARLY if move.residual_deg > 0 else _LATE,
            fires=format_angle(move.result_btdc_deg),
            off=format_angle(abs(move.residual_deg)),
            magneto=short_words(move.magneto_teeth),
            disc=short_words(move.disc_teeth),
        )

    def table(self) -> Table:
        """The reachable timings."""
        return shift_table(self._moves) if self._moves else []

    def summary(self) -> str:
        """Say how many there are, and which is the nearest."""
        if not self._moves:
            return tr("No timing can be planned.")
        best = self._best()
        nearest = self.words_at(0, best.result_btdc_deg, 0.0)
        return tr(
            "{moves} timings near the wanted one; the nearest: {nearest}.", moves=len(self._moves), nearest=nearest
        )


def _counts(engaged: Engaged) -> tuple[int, int]:
    coupling = engaged.installation.disc
    return coupling.magneto_teeth, coupling.drive_teeth


def _timing(state: BenchState) -> object:
    engaged = state.engaged
    teeth = engaged and (engaged.installation, engaged.left, engaged.right, engaged.side)
    return state.magneto, state.backplate_deg, state.screw_deg, teeth
