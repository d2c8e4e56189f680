"""The sheets of coil and coupling: the speed, other teeth, where the magneto fires."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from magview.bench import actions as do


def test_both_speeds_are_the_files_and_each_has_its_slider(open_plots):
    window, plots = open_plots("coil")
    coil, state = window.model.state.magneto.electrical, window.model.state
    assert plots.rpm == {"starting": coil.starting_rpm, "running": coil.running_rpm}
    labels = [plots.speed_labels[which].text() for which in ("starting", "running")]
    assert labels == [f"{coil.starting_rpm:.0f} /min", f"{coil.running_rpm:.0f} /min"]
    for which in ("starting", "running"):
        before, other = plots.summary(), "running" if which == "starting" else "starting"
        kept = plots.rpm[other]
        QTest.keyClick(plots.speeds[which], Qt.Key.Key_PageUp)
        assert plots.rpm[which] > getattr(coil, f"{which}_rpm")
        assert plots.rpm[other] == kept
        assert plots.summary() != before
        assert plots.speed_labels[which].text() == f"{plots.rpm[which]:.0f} /min"
    assert window.model.state is state, "a question of the plot alone"
    window.place("four-opposed")
    assert plots.rpm["starting"] == window.model.state.magneto.electrical.starting_rpm, "another file, its own speeds"
    without = coil.model_copy(update={"starting_rpm": None, "spark_energy_mj": None})
    window.model.send(do.PlaceMagneto(state.magneto.model_copy(update={"electrical": without})))
    assert plots.speed_labels["starting"].text() == "100 /min, assumed"
    assert plots.speed_labels["running"].text() == f"{coil.running_rpm:.0f} /min"
    assert not plots._need.isVisible() and "needs" not in plots.summary()  # noqa: SLF001


@pytest.mark.parametrize("name", ["seven-radial-left", "nine-radial-left", "four-opposed-left"])
def test_energies_stand_at_their_numbers_on_the_scale(open_plots, name):
    """The drawn levels against the axis's own numbers: logarithms are taken back, and the need is the file's."""
    window, plots = open_plots("coil", name)
    axis = plots._energy_plot.getAxis("left")  # noqa: SLF001
    ticks = [tick for levels in axis._tickLevels for tick in levels]  # noqa: SLF001
    assert {text for _, text in ticks} >= {"10", "20", "50"}
    for level, text in ticks:
        assert 10.0**level == pytest.approx(float(text))
    need = window.model.state.magneto.electrical.spark_energy_mj
    assert 10.0 ** plots._need.value() == pytest.approx(need)  # noqa: SLF001
    assert f"a spark needs {need:g} mJ" in plots._words["need"].toPlainText()  # noqa: SLF001
    for which, level in zip(("starting", "running"), plots._here.getData()[1], strict=True):  # noqa: SLF001
        now = 10.0**level
        assert f"now {now:.3g} mJ" in plots._words[which].toPlainText()  # noqa: SLF001
        assert f"{now:.3g} mJ" in plots.summary()
        _, drawn = plots._energy[which].getData()  # noqa: SLF001
        assert drawn.max() >= level
        low, high = plots._energy_plot.viewRange()[1]  # noqa: SLF001
        assert low < level < high


def test_why_there_is_said_beside_the_plot(open_plots):
    _, plots = open_plots("coil")
    said = plots._note.text  # noqa: SLF001
    for words in ("at the speed of starting", "energy to spare", "only fires the engine late", "propeller as live"):
        assert words in said


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
    vernier = 360.0 * (1 / teeth.magneto_teeth - 1 / teeth.drive_teeth) / engaged.ratio  # guide: theory-coupling
    assert moved - panel_before == pytest.approx(vernier, abs=1e-9)
