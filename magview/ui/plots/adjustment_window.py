"""The adjustment window: every setting of backplate and contact screw, what is in limits, and the way there."""

from __future__ import annotations

import math
import time
from collections.abc import Iterator

import numpy as np
import pyqtgraph as pg
from PySide6.QtCore import QRectF, Qt, QTimer
from PySide6.QtGui import QColor
from PySide6.QtWidgets import QLabel, QSlider

from magview.bench.actions import SetBoth, WearHeel
from magview.bench.state import BenchState, same_but_worn
from magview.curves.adjustment_window import crossings, telling_screw_span, window_map, window_table
from magview.curves.lift import Table, opening_limit_deg, round_levels, setting_of
from magview.physics.cam.adjustment_map import AdjustmentMap, way_deg
from magview.physics.cam.setting import internal_timing
from magview.spec.language import format_length, marked, number, tr
from magview.spec.magneto import Magneto
from magview.ui.plots.sheet import PlotSheet

_CONTOURS = 9
_MOST_PIXELS = 400
"""Along either side: finer than this no eye tells the map from its limits, which are drawn as lines besides."""

_MOST_TRAIL = 200
_SLIDER_STEPS_PER_MM = 500
_MOST_COST_S = 0.1
_SHARE = 4
"""While the wear slider is dragged the map takes a quarter of the time at most: the bench keeps its own pace."""


class WindowSheet(PlotSheet):
    """Backplate against contact screw. The plate carries the opening along; the screw moves opening and gap."""

    title = marked("Adjustment window")

    def build(self) -> Iterator[None]:
        """One plot, and a slider that wears the heel."""
        plot = self._plot = self.add_plot(
            0, 0, tr("backplate, positive with rotation [deg]"), tr("contact screw [deg]")
        )
        yield
        plot.setMouseEnabled(x=True, y=True)
        plot.sigRangeChanged.connect(self._range_changed)
        plot.getViewBox().sigRangeChangedManually.connect(self._zoomed_by_hand)
        self._image = pg.ImageItem(axisOrder="row-major")
        self._image.setZValue(-30)
        plot.addItem(self._image)
        self._errors, self._on_mark, self._edges = (self.curve(plot, kept=False) for _ in range(3))
        self._gaps, self._gap_edges = self.curve(plot, kept=False), self.curve(plot, kept=False)
        yield
        self._error_words = [self.word(plot, (0.5, 1.0)) for _ in range(_CONTOURS)]
        self._gap_words = [self.word(plot, (0.0, 0.5)) for _ in range(_CONTOURS)]
        self._trail, self._way = self.curve(plot, kept=False), self.curve(plot, kept=False)
        self._stripes = np.empty((0, 0), dtype=bool)
        self._here, self._there = pg.ScatterPlotItem(size=13, symbol="o"), pg.ScatterPlotItem(size=15, symbol="+")
        for point in (self._there, self._here):
            point.setZValue(70)  # no word hides where you are
            plot.addItem(point)
        self._inside = self.word(plot, (0.5, 1.0))
        self._been: list[tuple[float, float]] = []
        self._magneto: Magneto | None = None
        self._placing = self._zoomed = False
        self._gesture: int | None = None
        self._mapped_at, self._map_cost_s = -math.inf, 0.0
        self._map_soon = QTimer(self)
        self._map_soon.setSingleShot(True)
        self._map_soon.timeout.connect(self._map_wanted)
        self._click_set: BenchState | None = None
        label = QLabel(f"{tr('Heel worn')} ")
        self.wear = QSlider(Qt.Orientation.Horizontal)
        self.wear.setRange(0, _SLIDER_STEPS_PER_MM // 2)
        self.wear.setMinimumWidth(150)
        self.wear.setAccessibleName(tr("Heel wear"))
        self.wear.setToolTip(
            tr("Wear the heel and see the window move: what is set now opens later, with a smaller gap")
        )
        label.setBuddy(self.wear)
        self.worn = QLabel()
        for widget in (label, self.wear, self.worn):
            self.controls.addWidget(widget)
        self.wear.sliderPressed.connect(self._grip)
        self.wear.sliderReleased.connect(self._let_go)
        self.wear.valueChanged.connect(self._wear_wanted)

    def colour(self) -> None:
        """Dash-dotted green bounds what is in limits; the way to go is dashed, where you were is dotted."""
        theme = self.look.theme
        self._errors.setPen(self.pen(theme.faint))
        self._gaps.setPen(self.pen(theme.faint, "before"))
        self._on_mark.setPen(self.pen(theme.line))
        for item in (self._edges, self._gap_edges):
            item.setPen(self.pen(theme.good, "limit"))
        self._trail.setPen(self.pen(theme.hand, "before"))
        self._way.setPen(self.pen(theme.hand, "designed"))
        self._here.setBrush(pg.mkBrush(theme.hand))
        self._here.setPen(pg.mkPen(theme.line))
        self._there.setPen(pg.mkPen(theme.hand, width=2))
        for word in (*self._error_words, *self._gap_words):
            word.setColor(theme.text)
            word.fill = pg.mkBrush(QColor(theme.paper))
        self._inside.setColor(theme.text)

    # -------------------------------------------------------------- showing

    def refresh(self, state: BenchState, old: BenchState | None) -> None:
        """The map changes with the magneto alone; the point with the setting."""
        if old is None or old.magneto != state.magneto:
            if self._magneto is None or not same_but_worn(self._magneto, state.magneto):
                self._been.clear()
                self._whole(state)
            self._magneto = state.magneto
            self._show_wear(state)
            self._map_wanted()
        if old is not None and setting_of(old) == setting_of(state):
            return
        here = (state.backplate_deg, state.screw_deg)
        low, high = self._plot.viewRange()[1]
        if not self._zoomed and not low <= here[1] <= high:
            self._whole(state)
            self._show_map(state)
        if not self._been or self._been[-1] != here:
            self._been.append(here)
            del self._been[:-_MOST_TRAIL]
        self._here.setData([here[0]], [here[1]])
        self._trail.setData(*np.array(self._been).T)
        self._show_way(state)

    def _map_wanted(self) -> None:
        """Now; while the slider is dragged not for every step of it, so that the bench keeps its own frame rate."""
        due_ms = 1000 * (self._mapped_at + _SHARE * self._map_cost_s - time.monotonic())
        if self.wear.isSliderDown() and due_ms > 0:
            if not self._map_soon.isActive():
                self._map_soon.start(math.ceil(due_ms))
        else:
            self._show_map(self.model.state)

    def _show_wear(self, state: BenchState) -> None:
        wear = state.magneto.condition.heel_wear_mm
        can = state.magneto.breaker.heel_arm_mm is not None
        self.wear.setEnabled(can)
        self.worn.setText(format_length(wear) if can else tr("(no heel arm in the file)"))
        if not self.wear.isSliderDown():
            blocked = self.wear.blockSignals(True)
            self.wear.setValue(round(wear * _SLIDER_STEPS_PER_MM))
            self.wear.blockSignals(blocked)

    def _pixels(self) -> tuple[int, int]:
        box = self._plot.getViewBox().size()
        wide, high = (max(40, min(_MOST_PIXELS, round(side))) for side in (box.width(), box.height()))
        return wide, high

    def _whole(self, state: BenchState) -> None:
        """Show the slot, and of the travel what matters; the wheel zooms from there."""
        self._placing, self._zoomed = True, False
        (left, right), (low, high) = state.magneto.backplate.range_deg, state.magneto.contact_screw.range_deg
        self._plot.setLimits(xMin=left, xMax=right, yMin=low, yMax=high)
        self._plot.setXRange(left, right, padding=0.0)
        self._plot.setYRange(*telling_screw_span(state), padding=0.0)
        self._placing = False

    def _range_changed(self) -> None:
        if self.isVisible() and not self._placing:
            self._show_map(self.model.state)

    def _zoomed_by_hand(self) -> None:
        self._zoomed = True

    def _show_map(self, state: BenchState) -> None:
        self._map_soon.stop()
        self._mapped_at = time.monotonic()
        if self.wear.isSliderDown():
            QTimer.singleShot(1, self, self._map_painted)
        (left, right), (low, high) = self._plot.viewRange()
        found = window_map(state, *self._pixels(), (left, right), (low, high))
        self._image.setImage(self._picture(found), autoLevels=False, levels=None)
        self._image.setRect(QRectF(left, low, right - left, high - low))
        screw, on_mark, ratio = found.screw_deg, found.e_gap_backplate_deg, internal_timing(state.magneto).ratio
        self._on_mark.setData(on_mark, screw, connect="finite")
        bound = opening_limit_deg(state.magneto) * ratio
        self._along(self._edges, found, np.array([-bound, bound]))
        self._contours(found, ratio)
        self._gap_contours(state, found)
        rows, columns = np.nonzero(found.within_limits.T)
        self._inside.setVisible(rows.size > 0)
        if rows.size:
            # At the foot, right of the middle: clear of the way to go, which ends in the middle.
            row = rows[int(0.02 * rows.size)]
            across = columns[rows == row]
            self._inside.setText(tr("in limits"))
            self._inside.setPos(found.backplate_deg[across[int(0.5 * across.size)]], screw[row])

    def _map_painted(self) -> None:
        self._map_cost_s = min(time.monotonic() - self._mapped_at, _MOST_COST_S)

    def _picture(self, found: AdjustmentMap) -> np.ndarray:
        """A pixel a setting: paper where nothing is in limits, hatched where one is, full where both are."""
        good, paper = QColor(self.look.theme.good), QColor(self.look.theme.paper)
        ground = np.array([paper.redF(), paper.greenF(), paper.blueF()])
        tint = ground + 0.3 * (np.array([good.redF(), good.greenF(), good.blueF()]) - ground)
        tints = np.rint(255.0 * np.array([ground, tint])).astype(np.uint8)
        wide, high = found.within_limits.shape
        if self._stripes.shape != (high, wide):
            self._stripes = np.add.outer(np.arange(high), np.arange(wide)) % 10 < 2
        full = (self._stripes & found.lobe_1_ok.T) | found.within_limits.T
        return tints.take(full.view(np.uint8), axis=0)

    def _contours(self, found: AdjustmentMap, ratio: float) -> None:
        """Lines of equal opening error: the line that opens at the E-gap, moved along the plate."""
        there = np.isfinite(found.e_gap_backplate_deg)
        plates, box = found.backplate_deg, self._plot.getViewBox()
        middle = int(np.flatnonzero(there).mean()) if there.any() else 0
        base = found.e_gap_backplate_deg[middle] if there.any() else math.nan
        # Room for half a word at the right, for a gap's name besides at the left, and for a line between words.
        wide = self.fontMetrics().horizontalAdvance(tr("gap {gap}", gap="0.00 mm") + " ")
        word = wide / max(box.width(), 1.0) * (plates[-1] - plates[0])
        low, high = float(plates[0] + 1.5 * word - base), float(plates[-1] - 0.5 * word - base)
        most = max(2, min(_CONTOURS - 1, int(box.width() / (1.8 * wide))))
        levels = round_levels(low / ratio, high / ratio, most)
        levels = levels[levels != 0.0]
        self._along(self._errors, found, levels * ratio)
        for n, word in enumerate(self._error_words):
            word.setVisible(n < len(levels))
            if n < len(levels):
                angle = f"{number(abs(levels[n]))}°"
                word.setText(tr("{angle} late", angle=angle) if levels[n] > 0 else tr("{angle} early", angle=angle))
                word.setPos(base + levels[n] * ratio, found.screw_deg[middle])

    def _along(self, curve: pg.PlotCurveItem, found: AdjustmentMap, asides: np.ndarray) -> None:
        """The line that opens at the E-gap, so far aside along the plate [cam deg], with gaps between the lines."""
        line, screws = np.append(found.e_gap_backplate_deg, np.nan), np.append(found.screw_deg, np.nan)
        curve.setData(np.add.outer(asides, line).ravel(), np.tile(screws, len(asides)), connect="finite")

    def _gap_contours(self, state: BenchState, found: AdjustmentMap) -> None:
        """Lines of equal largest gap: level, as the plate does not move it."""
        per_mm = self.per_mm
        gaps, screws = np.asarray(found.gap_mm)[0], found.screw_deg
        limits = [crossings(screws, gaps, limit) for limit in state.magneto.gap_limits_mm]
        self._level(self._gap_edges, np.concatenate(limits))
        levels = round_levels(float(gaps.min()) * per_mm, float(gaps.max()) * per_mm, _CONTOURS - 1)
        levels = levels[levels > 0.0]
        at = [crossings(screws, gaps, level / per_mm) for level in levels]
        self._level(self._gaps, np.concatenate([np.empty(0), *at]))
        for n, word in enumerate(self._gap_words):
            shown = n < len(levels) and at[n].size > 0
            word.setVisible(shown)
            if shown:
                word.setText(tr("gap {gap}", gap=f"{number(levels[n])} {self.length_unit}"))
                word.setPos(found.backplate_deg[0], at[n][0])

    def _level(self, curve: pg.PlotCurveItem, screws: np.ndarray) -> None:
        """Lines across the slot at these screw angles."""
        left, right = self._plot.viewRange()[0]
        curve.setData(np.tile([left, right], len(screws)), np.repeat(screws, 2), connect="pairs")

    def _show_way(self, state: BenchState) -> None:
        magneto = state.magneto
        target = internal_timing(magneto).adjust(magneto.designed_setting.gap_mm)
        if not target.reachable:
            self._way.setData([], [])
            self._there.setData([], [])
            return
        self._way.setData(*np.array(way_deg(state.backplate_deg, state.screw_deg, target)).T)
        self._there.setData([target.backplate_deg], [target.screw_deg])

    # -------------------------------------------------------------- hands on

    def _grip(self) -> None:
        self._gesture = self.model.gesture()

    def _let_go(self) -> None:
        self._gesture = None
        if self._map_soon.isActive():
            self._show_map(self.model.state)

    def _wear_wanted(self, value: int) -> None:
        self.model.send(WearHeel(value / _SLIDER_STEPS_PER_MM), self._gesture)

    def words_at(self, plot: int, x: float, y: float) -> str:
        """Say what the setting under the pointer would read."""
        error, gap = internal_timing(self.model.state.magneto).opening_and_gap(x, y)
        opens = tr("never works the contacts")
        if math.isfinite(error):
            off = abs(float(error))
            opens = tr("opens {off:deg} late", off=off) if error > 0 else tr("opens {off:deg} early", off=off)
        return tr(
            "plate {plate:+deg}, screw {screw:+deg}: {opens}, largest gap {gap:length}",
            plate=x,
            screw=y,
            opens=opens,
            gap=float(gap),
        )

    def double_clicked(self) -> None:
        """The first view again. What the click before set, when a double click begins with one, is taken back."""
        if self._click_set is self.model.state:
            self.model.undo()
        self._click_set = None
        self._whole(self.model.state)
        self._show_map(self.model.state)

    def clicked_at(self, plot: int, x: float, y: float) -> None:
        """Set plate and screw there."""
        before = self.model.state
        self.model.send(SetBoth(x, y))
        self._click_set = self.model.state if self.model.state is not before else None

    def table(self) -> Table:
        """A coarse map."""
        return window_table(self.model.state)

    def summary(self) -> str:
        """Say where the setting is."""
        state = self.model.state
        return tr("You are at {place}.", place=self.words_at(0, state.backplate_deg, state.screw_deg))
