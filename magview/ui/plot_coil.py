"""What the coil makes of the opening, and how the magnet pulls the rotor."""

from __future__ import annotations

import math
from collections.abc import Iterator

import numpy as np
import pyqtgraph as pg
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLabel, QSlider

from magview.bench.curves import Table, cycle_deg, setting_of
from magview.bench.curves_coil import (
    COIL_ASSUMPTIONS,
    coil_cycle,
    coil_table,
    detent_table,
    energy_curve,
    falls_to_deg,
    pulls,
    resting_places_deg,
)
from magview.bench.state import BenchState, readings
from magview.physics.magnet import detent_torque_nm
from magview.spec.language import marked, number, tr
from magview.spec.units import format_angle
from magview.ui.plot_sheet import PlotSheet

_SLOWEST_RPM, _FASTEST_RPM = 10.0, 4000.0
"""A rotor turned by hand, and one at full speed."""

_SLIDER_STEPS = 200

_WITH = marked("rotor {rotor}: {torque} N m with rotation")
_AGAINST = marked("rotor {rotor}: {torque} N m against rotation")
_SWINGS_ON = marked("Let go, the rotor swings on, with rotation, {angle} to neutral.")
_SWINGS_BACK = marked("Let go, the rotor swings back, against rotation, {angle} to neutral.")
_OFF_SWINGS_ON = marked("Let go, off the engine, the rotor swings on, with rotation, {angle} to neutral.")
_OFF_SWINGS_BACK = marked("Let go, off the engine, the rotor swings back, against rotation, {angle} to neutral.")


class CoilSheet(PlotSheet):
    """Flux, primary current, and the energy left for the spark against where the contacts open."""

    title = marked("Coil")

    def build(self) -> Iterator[None]:
        """Three plots, and a slider for the rotor's speed."""
        x = tr("rotor past neutral [deg]")
        self._flux_plot = self.add_plot(0, 0, x, tr("core flux [mWb]"), cursor=True)
        yield
        self._current_plot = self.add_plot(0, 1, x, tr("primary current [A]"), cursor=True)
        yield
        self._energy_plot = self.add_plot(0, 2, tr("opens late [rotor deg]"), tr("energy at opening [mJ]"))
        yield
        self._current_plot.setXLink(self._flux_plot)
        self._note = self.canvas.addLabel(tr(COIL_ASSUMPTIONS), row=1, col=0, colspan=3, justify="left")
        self._static, self._flux = self.curve(self._flux_plot), self.curve(self._flux_plot)
        self._current, self._energy = self.curve(self._current_plot), self.curve(self._energy_plot)
        self.legend(self._flux_plot, [(self._flux, tr("resultant")), (self._static, tr("static"))])
        self._here = pg.ScatterPlotItem(size=12, symbol="o")
        self._best = pg.InfiniteLine(angle=90)
        self._energy_plot.addItem(self._best)
        self._energy_plot.addItem(self._here)
        self._words = {
            "now": self.word(self._energy_plot, (0.0, 1.0)),
            "best": self.word(self._energy_plot, (0.5, 1.0)),
            "none": self.word(self._flux_plot),
        }
        self._words["best"].setText(tr("best here"))
        label = QLabel(f"{tr('Rotor speed')} ")
        self.speed = QSlider(Qt.Orientation.Horizontal)
        self.speed.setRange(0, _SLIDER_STEPS)
        self.speed.setMinimumWidth(150)
        self.speed.setAccessibleName(tr("Speed of the rotor"))
        self.speed.setToolTip(tr("From turning by hand to full speed"))
        self.speed_label = QLabel()
        label.setBuddy(self.speed)
        for widget in (label, self.speed, self.speed_label):
            self.controls.addWidget(widget)
        self.speed.setValue(round(_SLIDER_STEPS * math.log(100.0 / _SLOWEST_RPM, _FASTEST_RPM / _SLOWEST_RPM)))
        self.speed.valueChanged.connect(self.again)

    @property
    def rpm(self) -> float:
        """Speed of the rotor [1/min]."""
        share = self.speed.value() / _SLIDER_STEPS
        return float(_SLOWEST_RPM * (_FASTEST_RPM / _SLOWEST_RPM) ** share)

    def colour(self) -> None:
        """Solid what flows, dashed what the magnet alone would drive."""
        theme = self.theme
        self._static.setPen(self.pen(theme.line, "designed"))
        self._flux.setPen(self.pen(theme.hand))
        self._current.setPen(self.pen(theme.hand))
        self._energy.setPen(self.pen(theme.hand))
        self._best.setPen(self.pen(theme.faint, "limit"))
        self._here.setBrush(pg.mkBrush(theme.hand))
        self._here.setPen(pg.mkPen(theme.line))
        self._note.setText(
            tr(COIL_ASSUMPTIONS),
            color=theme.text,
            size=f"{0.85 * self.font().pointSizeF():.1f}pt",
        )
        self._wrap_note()
        for word in self._words.values():
            word.setColor(theme.text)

    def resized(self) -> None:
        """The assumptions take as many lines as they need."""
        self._wrap_note()
        super().resized()

    def _wrap_note(self) -> None:
        self._note.item.setTextWidth(max(self.canvas.width() - 30, 100))
        self._note.updateMin()
        self._note.setMinimumWidth(0)

    def refresh(self, state: BenchState, old: BenchState | None) -> None:
        """The curves change with the setting and the speed."""
        if old is not None and setting_of(old) == setting_of(state):
            return
        self.speed_label.setText(f"{number(self.rpm, 0)} /min")
        has = state.magneto.electrical is not None
        self._words["none"].setVisible(not has)
        self.speed.setEnabled(has)
        if not has:
            self._words["none"].setText(tr("This magneto's file gives no coil."))
            for curve in (self._static, self._flux, self._current, self._energy):
                curve.setData([], [])
            self._here.setData([], [])
            self._best.setVisible(False)
            self._words["now"].setVisible(False)
            self._words["best"].setVisible(False)
            return
        cycle = coil_cycle(state, self.rpm)
        self._static.setData(cycle.rotor_deg, 1e3 * cycle.static_flux_wb)
        self._flux.setData(cycle.rotor_deg, 1e3 * cycle.flux_wb)
        self._current.setData(cycle.rotor_deg, cycle.current_a)
        whole = cycle_deg(state.magneto)
        self.turn_axis(self._flux_plot, whole)
        self.turn_axis(self._current_plot, whole)
        top = 1e3 * max(float(np.abs(cycle.flux_wb).max()), float(np.abs(cycle.static_flux_wb).max()))
        self._flux_plot.setYRange(-1.1 * top, 1.5 * top, padding=0.0)
        most = max(float(np.abs(cycle.current_a).max()), 1e-6)
        self._current_plot.setYRange(-1.1 * most, 1.1 * most, padding=0.0)
        errors, energy = energy_curve(state, self.rpm)
        self._energy.setData(errors, 1e3 * energy)
        error = float(readings(state).e_gap_error_deg[0])
        now = 1e3 * float(cycle.opening_energy_j[0])
        shown = math.isfinite(error) and math.isfinite(now)
        self._words["now"].setVisible(shown)
        self._here.setData([error] if shown else [], [now] if shown else [])
        self._best.setVisible(len(errors) > 0)
        self._words["best"].setVisible(len(errors) > 0)
        if len(errors):
            self._energy_plot.setXRange(float(errors[0]), float(errors[-1]), padding=0.0)
            self._energy_plot.setYRange(0.0, 1.2e3 * max(float(energy.max()), 1e-9), padding=0.0)
            best = float(errors[int(energy.argmax())])
            self._best.setValue(best)
            self._words["best"].setPos(best, 0.0)
        if shown:
            self._words["now"].setText(" " + tr("now {energy} mJ", energy=number(now, ".3g")))
            self._words["now"].setPos(error, now)

    def words_at(self, plot: int, x: float, y: float) -> str:
        """Flux, current or energy at the pointer."""
        state = self.model.state
        if state.magneto.electrical is None:
            return ""
        if plot == 2:
            errors, energy = energy_curve(state, self.rpm)
            if not len(errors):
                return ""
            return tr(
                "opening {angle} from the E-gap leaves {energy} mJ",
                angle=format_angle(x, True),
                energy=number(1000.0 * np.interp(x, errors, energy), ".3g"),
            )
        cycle = coil_cycle(state, self.rpm)
        n = int(np.abs(cycle.rotor_deg - x).argmin())
        return tr(
            "rotor {rotor}: flux {flux} mWb (static {static}), current {current} A",
            rotor=format_angle(float(cycle.rotor_deg[n])),
            flux=number(1000.0 * cycle.flux_wb[n], "+.3g"),
            static=number(1000.0 * cycle.static_flux_wb[n], "+.3g"),
            current=number(cycle.current_a[n], "+.3g"),
        )

    def clicked_at(self, plot: int, x: float, y: float) -> None:
        """Turn the rotor there."""
        if plot < 2:
            self.turn_to(x, None)

    def table(self) -> Table:
        """Flux and current over a cam turn."""
        return coil_table(self.model.state, self.rpm) if self.model.state.magneto.electrical else []

    def summary(self) -> str:
        """The energy at the present opening and at the E-gap."""
        state = self.model.state
        errors, energy = energy_curve(state, self.rpm)
        if not len(errors):
            return tr("There is no coil to show, or the contacts never work.")
        error = float(readings(state).e_gap_error_deg[0])
        now, at = (1e3 * float(np.interp(e, errors, energy)) for e in (error, 0.0))
        return tr(
            "At {rpm} turns a minute the present opening leaves {now} mJ, the E-gap {at} mJ.",
            rpm=number(self.rpm, 0),
            now=number(now, ".3g"),
            at=number(at, ".3g"),
        )


class PullSheet(PlotSheet):
    """The magnet's pull on the rotor over a turn, with the places where it rests."""

    title = marked("Pull of the magnet")

    def build(self) -> Iterator[None]:
        """One plot."""
        plot = self._plot = self.add_plot(
            0, 0, tr("rotor past neutral [deg]"), tr("torque with rotation [N m]"), cursor=True
        )
        yield
        self._torque = self.curve(plot)
        self._zero = pg.InfiniteLine(angle=0, pos=0.0)
        self._rests, self._balances = pg.ScatterPlotItem(size=11, symbol="o"), pg.ScatterPlotItem(size=11, symbol="x")
        self._two = pg.ScatterPlotItem(size=17, symbol="o")
        for item in (self._zero, self._two, self._rests, self._balances):
            plot.addItem(item)
        self._note = self.word(plot, (0.0, 1.0))
        self.legend(
            plot,
            [(self._rests, tr("rests: neutral")), (self._balances, tr("balances but does not rest: full register"))],
        )

    def span_deg(self, state: BenchState) -> float:
        """The magnet repeats with the rotor's turn, not with the cam's."""
        return 360.0

    def colour(self) -> None:
        """Discs rest, crosses only balance; rings mark the two nearest places."""
        theme = self.theme
        self._torque.setPen(self.pen(theme.hand))
        self._zero.setPen(self.pen(theme.line))
        self._rests.setBrush(pg.mkBrush(theme.good))
        self._rests.setPen(pg.mkPen(theme.line))
        self._balances.setBrush(pg.mkBrush(theme.bad))
        self._balances.setPen(pg.mkPen(theme.line))
        self._two.setBrush(pg.mkBrush(None))
        self._two.setPen(pg.mkPen(theme.hand, width=2))
        self._note.setColor(theme.text)

    def refresh(self, state: BenchState, old: BenchState | None) -> None:
        """The curve belongs to the magneto; the note to where the rotor stands."""
        magneto = state.magneto
        if old is None or old.magneto != magneto:
            table = detent_table(magneto)
            angles, torque = (table[0][1], table[1][1]) if table else (np.empty(0), np.empty(0))
            self._torque.setData(angles, torque)
            step = 360.0 / magneto.poles
            neutrals = step * np.arange(magneto.poles + 1 if pulls(magneto) else 0)
            self._rests.setData(neutrals, np.zeros_like(neutrals))
            registers = neutrals[:-1] + step / 2
            self._balances.setData(registers, np.zeros_like(registers))
            top = max(float(np.abs(torque).max()), 1e-6) if len(torque) else 1.0
            self.turn_axis(self._plot, 360.0)
            self._plot.setXRange(0.0, 360.0, padding=0.02)
            self._plot.setYRange(-1.6 * top, 1.5 * top, padding=0.0)
            self._note.setPos(0.0, -1.6 * top)
        if not pulls(magneto):
            self._note.setText(tr("This magneto's file gives no pull."))
            self._two.setData([], [])
            return
        places = [p % 360.0 for p in resting_places_deg(state)]
        self._two.setData(places, [0.0, 0.0])
        self._note.setText(self.summary())

    def words_at(self, plot: int, x: float, y: float) -> str:
        """The pull at the pointer."""
        detent = self.model.state.magneto.detent
        if detent is None or not pulls(self.model.state.magneto):
            return ""
        torque = float(detent_torque_nm(detent, self.model.state.magneto.poles, x))
        words = _WITH if torque > 0 else _AGAINST
        return tr(words, rotor=format_angle(x), torque=number(abs(torque), ".3g"))

    def clicked_at(self, plot: int, x: float, y: float) -> None:
        """Turn the rotor there."""
        self.turn_to(x, None)

    def table(self) -> Table:
        """The pull over a turn."""
        return detent_table(self.model.state.magneto)

    def summary(self) -> str:
        """Where the rotor would go."""
        state = self.model.state
        if not pulls(state.magneto):
            return tr("This magneto's file gives no pull.")
        goes = falls_to_deg(state)
        if abs(goes - state.rotor_deg) < 0.005:
            return tr("The rotor stands at neutral: it stays there by itself.")
        on = goes > state.rotor_deg
        if state.engaged is not None and state.engaged.mounted:
            words = _OFF_SWINGS_ON if on else _OFF_SWINGS_BACK
        else:
            words = _SWINGS_ON if on else _SWINGS_BACK
        return tr(words, angle=format_angle(abs(goes - state.rotor_deg)))
