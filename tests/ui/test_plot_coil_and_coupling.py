"""The sheets of coil and coupling: the speed, other teeth, where the magneto fires."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from magview.bench import actions as do


def test_the_speed_slider_changes_the_energy(open_plots):
    window, plots = open_plots("coil")
    slow, state = plots.summary(), window.model.state
    QTest.keyClick(plots.speed, Qt.Key.Key_PageUp)
    QTest.keyClick(plots.speed, Qt.Key.Key_PageUp)
    assert plots.rpm > 110.0
    assert plots.summary() != slow
    assert f"{plots.rpm:.0f} /min" == plots.speed_label.text()
    assert window.model.state is state, "a question of the plot alone"
    _, energy = plots._energy.getData()  # noqa: SLF001
    assert f"{plots._here.getData()[1][0]:.3g} mJ" in plots.summary()  # noqa: SLF001
    assert energy.max() >= plots._here.getData()[1][0]  # noqa: SLF001


def test_other_teeth_are_only_asked_about(open_plots):
    window, plots = open_plots("coupling")
    state, real = window.model.state, len(plots.table()[0][1])
    plots.teeth["magneto"].setValue(37)
    assert window.model.state is state
    assert len(plots.table()[0][1]) > real
    window.model.send(do.MoveTeeth(1, -1))
    assert plots.teeth["magneto"].value() == 37, "the question stands"
    window.place("nine-radial")
    coupling = window.model.state.engaged.installation.coupling
    assert plots.teeth["magneto"].value() == coupling.magneto_teeth
    assert plots.teeth["drive"].value() == coupling.drive_teeth
    window.plots.choose("lift")
    window.place("seven-radial")
    window.plots.choose("coupling")
    assert plots.teeth["magneto"].value() == window.model.state.engaged.installation.coupling.magneto_teeth


def test_the_square_stands_where_the_magneto_fires(open_plots):
    window, plots = open_plots("coupling")
    panel_before = plots._now.getData()[0][0]  # noqa: SLF001
    window.model.send(do.MoveTeeth(1, -1))
    moved = plots._now.getData()[0][0]  # noqa: SLF001
    engaged = window.model.state.engaged
    teeth = engaged.installation.coupling
    vernier = 360.0 * (1 / teeth.magneto_teeth - 1 / teeth.drive_teeth) / engaged.ratio  # model.md §6
    assert moved - panel_before == pytest.approx(vernier, abs=1e-9)
