"""Plot of what the coil makes of the opening, and of how the magnet pulls the rotor."""

from __future__ import annotations

import math
from collections.abc import Iterator
from typing import Literal, get_args

import numpy as np
import pyqtgraph as pg
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLabel, QSlider

from magview.bench.state import BenchState, readings
from magview.curves.coil import (
    COIL_ASSUMPTIONS,
    COIL_WHY,
    EnergyCurve,
    coil_cycle,
    coil_table,
    detent_table,
    energy_curve,
    falls_to_deg,
    pulls,
    resting_places_deg,
    speeds_of,
)
from magview.curves.lift import Array, Table, cycle_deg, setting_of
from magview.physics.electric.coil import ContactCycle
from magview.physics.electric.magnet import detent_torque_nm
from magview.spec.language import marked, number, tr
from magview.spec.magneto import Electrical
from magview.ui.plots.sheet import PlotSheet

_SLOWEST_RPM, _FASTEST_RPM = 10.0, 4000.0
"""A rotor turned by hand, and one at full speed."""

_SLIDER_STEPS = 200

Which = Literal["starting", "running"]
_LINE: dict[Which, str] = {"starting": "present", "running": "stop"}
"""Told apart by strokes too."""

_SPEEDS: dict[Which, tuple[str, str]] = {
    "starting": (marked("Starting"), marked("Speed of the rotor at starting")),
    "running": (marked("Running"), marked("Speed of the rotor when the engine runs")),
}

_LEAST_MJ = 1e-3
"""Less is drawn as this: the scale of energy is logarithmic."""

_WITH = marked("rotor {rotor:deg}: {torque:.3g} N m with rotation")
_AGAINST = marked("rotor {rotor:deg}: {torque:.3g} N m against rotation")
_SWINGS_ON = marked("Let go, the rotor swings on, with rotation, {angle:deg} to neutral.")
_SWINGS_BACK = marked("Let go, the rotor swings back, against rotation, {angle:deg} to neutral.")
_OFF_SWINGS_ON = marked("Let go, off the engine, the rotor swings on, with rotation, {angle:deg} to neutral.")
_OFF_SWINGS_BACK = marked("Let go, off the engine, the rotor swings back, against rotation, {angle:deg} to neutral.")


class CoilSheet(PlotSheet):
    """Flux, primary current and energy at opening, at the speed of starting and at running speed together."""

    title = marked("Coil")

    def build(self) -> Iterator[None]:
        """Three plots, and a slider for each of the two speeds."""
        x = tr("rotor past neutral [deg]")
        self._flux_plot = self.add_plot(0, 0, x, tr("core flux [mWb]"), cursor=True)
        yield
        self._current_plot = self.add_plot(0, 1, x, tr("primary current [A]"), cursor=True)
        yield
        energy = self._energy_plot = self.add_plot(0, 2, tr("opens past the E-gap [rotor deg]"), tr("energy [mJ]"))
        yield
        self._current_plot.setXLink(self._flux_plot)
        self._note = self.canvas.addLabel("", row=1, col=0, colspan=3, justify="left")
        self._static = self.curve(self._flux_plot)
        self._flux = {which: self.curve(self._flux_plot) for which in _LINE}
        self._current = {which: self.curve(self._current_plot) for which in _LINE}
        self._energy = {which: self.curve(energy) for which in _LINE}
        self.legend(self._flux_plot, [(self._static, tr("magnet alone"))])
        self._need, self._e_gap = pg.InfiniteLine(angle=0), pg.InfiniteLine(angle=90, pos=0.0)
        self._here = pg.ScatterPlotItem(size=10, symbol="o")
        self._best = pg.ScatterPlotItem(size=10, symbol="t")
        for item in (self._e_gap, self._need, self._best, self._here):
            energy.addItem(item)
        lines = [(self._energy[which], tr(_SPEEDS[which][0])) for which in _LINE]
        self.legend(energy, [*lines, (self._best, tr("about best"))])
        self.canvas.ci.layout.setColumnStretchFactor(2, 3)
        for column in (0, 1):
            self.canvas.ci.layout.setColumnStretchFactor(column, 2)
        self._words = {
            "starting": self.word(energy, (1.0, 1.0)),
            "running": self.word(energy, (0.0, 0.0)),
            "need": self.word(energy, (0.5, 0.0)),
            "none": self.word(energy),
        }
        self._of: Electrical | None = None
        self.rpm: dict[Which, float] = {"starting": 0.0, "running": 0.0}
        """Speeds of the rotor [1/min]."""
        self._assumed: set[Which] = set()
        self.speeds: dict[Which, QSlider] = {}
        self.speed_labels: dict[Which, QLabel] = {}
        for which, (name, long_name) in _SPEEDS.items():
            label, slider = QLabel(f"{tr(name)} "), QSlider(Qt.Orientation.Horizontal)
            slider.setRange(0, _SLIDER_STEPS)
            slider.setMinimumWidth(90)
            slider.setAccessibleName(tr(long_name))
            slider.setToolTip(tr("From turning by hand to full speed"))
            label.setBuddy(slider)
            value = self.speed_labels[which] = QLabel()
            self.speeds[which] = slider
            for widget in (label, slider, value):
                self.controls.addWidget(widget)
            self.controls.addSpacing(10)
        self._set_speeds()
        for which, slider in self.speeds.items():
            slider.valueChanged.connect(self._starting_set if which == "starting" else self._running_set)

    # -------------------------------------------------------------- speeds

    def _set_speeds(self) -> None:
        """As the magneto's file has them, exactly; the sliders stand as near as they can."""
        found, self._of = speeds_of(self.model.state.magneto), self.model.state.magneto.electrical
        self.rpm = {"starting": found.starting_rpm, "running": found.running_rpm}
        given: dict[Which, bool] = {"starting": not found.starting_assumed, "running": not found.running_assumed}
        self._assumed = {which for which, there in given.items() if not there}
        for which, slider in self.speeds.items():
            share = math.log(self.rpm[which] / _SLOWEST_RPM, _FASTEST_RPM / _SLOWEST_RPM)
            blocked = slider.blockSignals(True)
            slider.setValue(round(_SLIDER_STEPS * share))
            slider.blockSignals(blocked)

    def _starting_set(self, step: int) -> None:
        self._speed_set("starting", step)

    def _running_set(self, step: int) -> None:
        self._speed_set("running", step)

    def _speed_set(self, which: Which, step: int) -> None:
        self.rpm[which] = float(_SLOWEST_RPM * (_FASTEST_RPM / _SLOWEST_RPM) ** (step / _SLIDER_STEPS))
        self._assumed.discard(which)
        self.again()

    # -------------------------------------------------------------- looks

    def colour(self) -> None:
        """Strokes tell the speeds apart; dashed is what the magnet alone would drive."""
        theme = self.look.theme
        self._static.setPen(self.pen(theme.ink("flux"), "designed"))
        for which, line in _LINE.items():
            for curves, idea in ((self._flux, "flux"), (self._current, "current"), (self._energy, "lift")):
                curves[which].setPen(self.pen(theme.ink(idea), line))
        self._e_gap.setPen(self.pen(theme.faint, "before"))
        self._need.setPen(self.pen(theme.bad, "limit"))
        for spots, colour in ((self._here, theme.hand), (self._best, theme.good)):
            spots.setBrush(pg.mkBrush(colour))
            spots.setPen(pg.mkPen(theme.line))
        self._note.setText(
            f"{tr(COIL_WHY)} {tr(COIL_ASSUMPTIONS)}",
            color=theme.text,
            size=f"{0.85 * self.font().pointSizeF():.1f}pt",
        )
        self._wrap_note()
        for word in self._words.values():
            word.setColor(theme.text)

    def resized(self) -> None:
        """The note takes as many lines as it needs."""
        self._wrap_note()
        super().resized()

    def _wrap_note(self) -> None:
        self._note.item.setTextWidth(max(self.canvas.width() - 30, 100))
        self._note.updateMin()
        self._note.setMinimumWidth(0)

    # -------------------------------------------------------------- showing

    def refresh(self, state: BenchState, old: BenchState | None) -> None:
        """The curves change with the setting and the speeds."""
        if old is not None and setting_of(old) == setting_of(state):
            return
        if state.magneto.electrical != self._of:
            self._set_speeds()
        has = state.magneto.electrical is not None
        for which, label in self.speed_labels.items():
            rpm = self.rpm[which]
            assumed = which in self._assumed
            label.setText(tr("{rpm:.0f} /min, assumed", rpm=rpm) if assumed else tr("{rpm:.0f} /min", rpm=rpm))
            label.setVisible(has)
        self._words["none"].setVisible(not has)
        for slider in self.speeds.values():
            slider.setEnabled(has)
        if has:
            self._show_turn(state, {which: coil_cycle(state, self.rpm[which]) for which in _LINE})
        else:
            self._words["none"].setText(tr("This magneto's file gives no coil."))
            for curve in (self._static, *self._flux.values(), *self._current.values()):
                curve.setData([], [])
        self._show_energy(state, {which: energy_curve(state, self.rpm[which]) for which in _LINE})

    def _show_turn(self, state: BenchState, cycles: dict[Which, ContactCycle]) -> None:
        static = cycles["starting"].static_flux_wb
        self._static.setData(cycles["starting"].rotor_deg, 1e3 * static)
        for which, cycle in cycles.items():
            self._flux[which].setData(cycle.rotor_deg, 1e3 * cycle.flux_wb)
            self._current[which].setData(cycle.rotor_deg, cycle.current_a)
        for plot in (self._flux_plot, self._current_plot):
            self.turn_axis(plot, cycle_deg(state.magneto))
        top = 1e3 * max(float(np.abs(flux).max()) for flux in (static, *(c.flux_wb for c in cycles.values())))
        self._flux_plot.setYRange(-1.1 * top, 1.5 * top, padding=0.0)
        most = max(1e-6, *(float(np.abs(cycle.current_a).max()) for cycle in cycles.values()))
        self._current_plot.setYRange(-1.1 * most, 1.1 * most, padding=0.0)

    def _show_energy(self, state: BenchState, curves: dict[Which, EnergyCurve]) -> None:
        works = len(curves["starting"].error_deg) > 0
        coil, error = state.magneto.electrical, float(readings(state).e_gap_error_deg[0])
        need = coil.spark_energy_mj if coil is not None else None
        shown = works and math.isfinite(error)
        self._e_gap.setVisible(works)
        self._need.setVisible(works and need is not None)
        self._words["need"].setVisible(works and need is not None)
        for which, curve in curves.items():
            self._energy[which].setData(curve.error_deg, _level(curve.energy_j))
            self._words[which].setVisible(shown)
            if shown:
                now = curve.at_j(error)
                self._words[which].setText(f" {tr('now {energy:.3g} mJ', energy=1e3 * now)} ")
                self._words[which].setPos(error, float(_level(now)))
        best = [(c.best_deg, float(_level(c.energy_j.max()))) for c in curves.values()] if works else []
        self._best.setData([at for at, _ in best], [level for _, level in best])
        here = [float(_level(c.at_j(error))) for c in curves.values()] if shown else []
        self._here.setData([error] * len(here), here)
        if not works:
            return
        left, right = float(curves["starting"].error_deg[0]), float(curves["starting"].error_deg[-1])
        self._energy_plot.setXRange(left, right, padding=0.0)
        least = min(1e3 * float(curves["starting"].energy_j.max()), need or math.inf)
        low, high = float(_level(1.5e-4 * least)), float(_level(12.0 * curves["running"].energy_j.max()))
        self._energy_plot.setYRange(low, max(high, low + 1.0), padding=0.0)
        self._energy_plot.getAxis("left").setTicks([_ticks(low, max(high, low + 1.0))])
        if need is not None:
            self._need.setValue(float(_level(1e-3 * need)))
            self._words["need"].setText(tr("a spark needs {energy:.3g} mJ", energy=need))
            self._words["need"].setPos(0.0, float(_level(1e-3 * need)))

    def words_at(self, plot: int, x: float, y: float) -> str:
        """Flux, current or energy at the pointer, at both speeds."""
        state = self.model.state
        if state.magneto.electrical is None:
            return ""
        if plot == 2:
            curves = [energy_curve(state, self.rpm[which]) for which in _LINE]
            if not len(curves[0].error_deg):
                return ""
            start, run = (1e3 * curve.at_j(x) for curve in curves)
            return tr(
                "opening {angle:+deg} from the E-gap leaves {start:.3g} mJ at starting, {run:.3g} mJ when running",
                angle=x,
                start=start,
                run=run,
            )
        cycles = [coil_cycle(state, self.rpm[which]) for which in _LINE]
        n = int(np.abs(cycles[0].rotor_deg - x).argmin())
        at = float(cycles[0].rotor_deg[n])
        if plot == 1:
            start, run = (float(cycle.current_a[n]) for cycle in cycles)
            return tr(
                "rotor {rotor:deg}: {start:+.3g} A at starting, {run:+.3g} A when running",
                rotor=at,
                start=start,
                run=run,
            )
        start, run, alone = (
            float(1e3 * flux[n]) for flux in (*(c.flux_wb for c in cycles), cycles[0].static_flux_wb)
        )
        return tr(
            "rotor {rotor:deg}: core flux {start:+.3g} mWb at starting, {run:+.3g} when running; the magnet alone "
            "{alone:+.3g}",
            rotor=at,
            start=start,
            run=run,
            alone=alone,
        )

    def clicked_at(self, plot: int, x: float, y: float) -> None:
        """Turn the rotor there."""
        if plot < 2:
            self.turn_to(x, None)

    def table(self) -> Table:
        """Flux and current over a cam turn, at both speeds."""
        state = self.model.state
        return coil_table(state, *(self.rpm[which] for which in _LINE)) if state.magneto.electrical else []

    def summary(self) -> str:
        """The energy at the present opening, at the E-gap and at the best opening, at both speeds."""
        state = self.model.state
        curves = {which: energy_curve(state, self.rpm[which]) for which in _LINE}
        coil = state.magneto.electrical
        if coil is None or not len(curves["starting"].error_deg):
            return tr("There is no coil to show, or the contacts never work.")
        error, said = float(readings(state).e_gap_error_deg[0]), []
        for which in get_args(Which):
            curve = curves[which]
            said.append(
                tr(
                    _SUMMARY[which],
                    rpm=self.rpm[which],
                    now=1e3 * curve.at_j(error),
                    at=1e3 * curve.at_j(0.0),
                    best=1e3 * float(curve.energy_j.max()),
                    angle=curve.best_deg,
                )
            )
        if coil.spark_energy_mj is not None:
            said.append(tr("A spark needs {energy:.3g} mJ.", energy=coil.spark_energy_mj))
        return " ".join(said)


_SUMMARY: dict[Which, str] = {
    "starting": marked(
        "At starting, {rpm:.0f} rotor turns a minute, the present opening leaves {now:.3g} mJ, the E-gap {at:.3g} "
        "mJ; the most, {best:.3g} mJ, about {angle:+deg} from the E-gap."
    ),
    "running": marked(
        "When running, {rpm:.0f} rotor turns a minute, the present opening leaves {now:.3g} mJ, the E-gap {at:.3g} "
        "mJ; the most, {best:.3g} mJ, about {angle:+deg} from the E-gap."
    ),
}


def _level(energy_j: float | Array) -> Array:
    """Return where an energy [J] stands on the logarithmic scale of millijoules."""
    return np.asarray(np.log10(np.maximum(1e3 * np.asarray(energy_j), _LEAST_MJ)))


def _ticks(low: float, high: float) -> list[tuple[float, str]]:
    """Round energies on that scale, with their numbers [mJ]."""
    values = [f * 10.0**power for power in range(math.floor(low), math.ceil(high) + 1) for f in (1.0, 2.0, 5.0)]
    return [(level, number(v, "g")) for v in values if low <= (level := math.log10(v)) <= high]


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
        self.note = self.word(plot, (0.0, 1.0))
        self.legend(
            plot,
            [(self._rests, tr("rests: neutral")), (self._balances, tr("balances but does not rest: full register"))],
        )

    def span_deg(self, state: BenchState) -> float:
        """The magnet repeats with the rotor's turn, not with the cam's."""
        return 360.0

    def colour(self) -> None:
        """Discs rest, crosses only balance; rings mark the two nearest places."""
        theme = self.look.theme
        self._torque.setPen(self.pen(theme.hand))
        self._zero.setPen(self.pen(theme.line))
        self._rests.setBrush(pg.mkBrush(theme.good))
        self._rests.setPen(pg.mkPen(theme.line))
        self._balances.setBrush(pg.mkBrush(theme.bad))
        self._balances.setPen(pg.mkPen(theme.line))
        self._two.setBrush(pg.mkBrush(None))
        self._two.setPen(pg.mkPen(theme.hand, width=2))
        self.note.setColor(theme.text)

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
            self.note.setPos(0.0, -1.6 * top)
        if not pulls(magneto):
            self.note.setText(tr("This magneto's file gives no pull."))
            self._two.setData([], [])
            return
        places = [p % 360.0 for p in resting_places_deg(state)]
        self._two.setData(places, [0.0, 0.0])
        self.note.setText(self.summary())

    def words_at(self, plot: int, x: float, y: float) -> str:
        """The pull at the pointer."""
        detent = self.model.state.magneto.detent
        if detent is None or not pulls(self.model.state.magneto):
            return ""
        torque = float(detent_torque_nm(detent, self.model.state.magneto.poles, x))
        words = _WITH if torque > 0 else _AGAINST
        return tr(words, rotor=x, torque=abs(torque))

    def clicked_at(self, plot: int, x: float, y: float) -> None:
        """Turn the rotor there."""
        self.turn_to(x, None)

    def table(self) -> Table:
        """The pull over a turn."""
        return detent_table(self.model.state.magneto)

    def summary(self) -> str:
        """Say where the rotor would go."""
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
        return tr(words, angle=abs(goes - state.rotor_deg))
