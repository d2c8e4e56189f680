"""The plots as a whole: what is not there, what everybody is told, and what it costs."""

from __future__ import annotations

import gc
import math
import weakref

import pytest
from PySide6.QtCore import QEvent, QSize
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QApplication, QLabel, QPushButton, QSlider, QSpinBox

from magview.bench import actions as do
from magview.bench.placing import new_bench
from magview.bench.state import readings
from magview.spec.library import find_installation, shipped_names
from magview.ui.kit.bench_model import BenchModel
from magview.ui.kit.look import Look
from magview.ui.kit.theme import THEMES
from magview.ui.plots.sheet import PlotSheet
from tests.counts import swept
from tests.hands import what_is_due
from tests.plot_hands import click
from tests.plot_windows import SHEETS, settle
from tests.windows import workbench
from tests.wording import says

# ---------------------------------------------------------------------- what is not there


def test_a_magneto_without_coil_pull_engine_or_heel_arm(open_plots, tmp_path):
    window, _ = open_plots("coil", "traced-six")
    sheets = {name: window.plots.choose(name) for name in SHEETS}
    QApplication.processEvents()
    assert "no coil" in sheets["coil"].summary()
    assert not any(slider.isEnabled() for slider in sheets["coil"].speeds.values())
    assert "no pull" in sheets["pull"].summary()
    assert "No timing" in sheets["coupling"].summary()
    assert not any(spin.isEnabled() for spin in sheets["coupling"].teeth.values())
    assert not sheets["window"].wear.isEnabled()
    assert "no heel arm" in sheets["window"].worn.text()
    for name in ("coil", "pull", "coupling"):
        window.plots.choose(name)
        assert sheets[name].table() == []
        for plot in range(len(sheets[name].plots)):
            assert isinstance(sheets[name].words_at(plot, 0.3, 0.3), str)
        sheets[name].save_to(tmp_path / "never.csv")
        assert "no values" in window.statusBar().currentMessage()


@pytest.mark.parametrize("name", ["seven-radial-left", swept("nine-radial-left"), swept("four-opposed-left")])
def test_contacts_that_never_open_and_ones_that_never_close(open_plots, name, tmp_path):
    window, plots = open_plots("lift", name)
    window.model.send(do.WearHeel(5.0))
    assert math.isnan(readings(window.model.state).opens_deg[0])
    for sheet in SHEETS:
        shown = window.plots.choose(sheet)
        QApplication.processEvents()
        assert shown.canvas.accessibleDescription()
        assert "nan" not in shown.canvas.accessibleDescription().lower()
        assert "–" not in shown.canvas.accessibleDescription()
        for plot in range(len(shown.plots)):
            x, y = (sum(r) / 2 for r in shown.plots[plot].viewRange())
            assert "nan" not in shown.words_at(plot, x, y).lower()
            click(shown, plot, x, y)
        shown.save_to(tmp_path / f"{sheet}.svg")
    window.model.send(do.WearHeel(0.0))
    magneto = window.model.state.magneto
    screw = magneto.contact_screw
    reach = {"throw_mm": 3.0} if screw.kind == "eccentric" else {"lead_mm": 3.0}
    wide = screw.model_copy(update=reach)
    window.model.send(do.PlaceMagneto(magneto.model_copy(update={"contact_screw": wide})))
    window.model.send(do.TurnScrew(magneto.contact_screw.range_deg[0]))
    for sheet in SHEETS:
        shown = window.plots.choose(sheet)
        QApplication.processEvents()
        assert "nan" not in shown.canvas.accessibleDescription().lower()
    assert plots.summary() == says("The contacts never close.")


def test_a_pull_of_nothing_is_no_pull(open_plots):
    window, plots = open_plots("pull")
    magneto = window.model.state.magneto
    limp = magneto.detent.model_copy(update={"torque_nm": 0.0})
    window.model.send(do.PlaceMagneto(magneto.model_copy(update={"detent": limp})))
    assert "no pull" in plots.summary()
    assert plots.table() == []


def test_placing_every_magneto_while_every_sheet_is_open(open_plots):
    window, _ = open_plots("lift")
    for name in (*shipped_names("magnetos"), "seven-radial"):
        window.place(name)
        for sheet in SHEETS:
            window.plots.choose(sheet)
            QApplication.processEvents()


# ---------------------------------------------------------------------- for everybody, and at no cost


def test_everything_has_a_name_and_the_picture_is_told(open_plots):
    window, _ = open_plots(SHEETS[0])
    for sheet in SHEETS:
        plots = window.plots.choose(sheet)
        settle()
        assert plots.canvas.accessibleName() == plots.title
        assert len(plots.canvas.accessibleDescription()) > 20
        for widget in plots.findChildren(QSlider) + plots.findChildren(QSpinBox):
            assert widget.accessibleName()
            assert any(label.buddy() is widget for label in plots.findChildren(QLabel))
        assert all(button.text() and button.toolTip() for button in plots.findChildren(QPushButton))


def test_the_description_follows_the_bench(open_plots):
    window, plots = open_plots("lift")
    window.model.send(do.TurnBackplate(1.0))
    opens = float(readings(window.model.state).opens_deg[0])
    assert f"open at {opens:.2f}°" in plots.canvas.accessibleDescription()


def test_sheets_that_are_not_seen_do_no_work(open_plots, monkeypatch):
    window, _ = open_plots("lift")
    sheets = {name: window.plots.choose(name) for name in SHEETS}
    window.plots.choose("lift")
    QApplication.processEvents()
    calls: list[str] = []
    for name, sheet in sheets.items():
        monkeypatch.setattr(sheet, "refresh", lambda *_, name=name: calls.append(name))
    window.model.send(do.TurnRotor(40.0))
    window.model.send(do.TurnBackplate(1.0))
    assert calls == ["lift", "lift"]
    calls.clear()
    window.show_plots(False)
    window.model.send(do.TurnBackplate(2.0))
    assert calls == []
    window.show_plots(True)
    QApplication.processEvents()
    assert calls == ["lift"], "what was missed is caught up with once"
    calls.clear()
    window.plots.choose("pull")
    QApplication.processEvents()
    assert calls == ["pull"]


def test_before_is_of_the_same_magneto(open_plots):
    window, plots = open_plots("lift")
    assert plots.before() is None
    window.model.send(do.TurnBackplate(1.0))
    assert plots.before().backplate_deg == 0.0
    assert [name for name, _ in plots.table()][-1] == "gap before [mm]"
    window.place("four-opposed")
    assert plots.before() is None


def test_windows_with_plots_do_not_pile_up(qtbot):
    """Opened and closed, a window leaves none of its plots behind: neither whole ones nor one half built."""
    gone = []
    for front in ("coupling", "pull", "window"):
        window = workbench()(BenchModel(new_bench(find_installation("seven-radial-left"))), Look(THEMES["light"]))
        window.furnish()
        window.plots.wait()
        window.show()
        window.show_plots(True)  # begins to build the first sheet
        gone.append(weakref.ref(window.plots.choose(front)))
        gone += [weakref.ref(sheet) for sheet in window.plots.findChildren(PlotSheet)]
        assert len(gone) == 3, "one of them begun and left"
        for _ in range(10):  # what Qt still owes a call keeps what it would call
            settle()
        window.close()
        window.deleteLater()
        del window
        QApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete.value)
        QApplication.processEvents()
        gc.collect()
        assert [ref for ref in gone if ref() is not None] == []
        gone.clear()


def test_words_under_the_pointer_do_not_widen_the_window(open_plots):
    window, sheet = open_plots("window")
    before, canvas = sheet.minimumSizeHint(), sheet.canvas.size()
    sheet.reading.setText("opens-late-" * 40 + " and more words" * 20)
    QApplication.processEvents()
    assert sheet.minimumSizeHint() == before
    assert sheet.canvas.size() == canvas
    assert window.width() == 1280


def test_a_sheet_that_is_resized_half_built_waits(open_window):
    window = open_window("seven-radial-left")
    window.show_plots(True)
    sheet = window.plots._begin("coil")  # noqa: SLF001
    QApplication.sendEvent(sheet, QResizeEvent(QSize(300, 200), QSize(100, 100)))
    what_is_due()  # the resizing has had its turn, and found nothing to fit
    assert window.plots.choose("coil").table()
