"""The plots and the rotor: the cursor follows it and turns it; clicks, keys, values under the pointer."""

from __future__ import annotations

from itertools import product

import numpy as np
import pytest
from PySide6.QtCore import QEvent, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from magview.bench import actions as do
from magview.bench.state import gap_now_mm, readings
from tests.counts import sampled
from tests.hands import send_mouse
from tests.plot_hands import click, drag, middle, move_held, pixel, steps_done


@pytest.mark.parametrize(
    ("sheet", "name"), sampled(product(["lift", "coil", "pull"], ["seven-radial-left", "nine-radial-left"]), 3)
)
def test_turning_the_rotor_moves_the_cursor(open_plots, sheet, name):
    window, plots = open_plots(sheet, name)
    whole = 360.0 if sheet == "pull" else 360.0 / window.model.state.magneto.cam.turns_per_rotor_turn
    for angle in (33.0, 500.0, -10.0, 1234.5):
        window.model.send(do.TurnRotor(angle))
        assert [line.value() for line in plots.cursors] == [pytest.approx(angle % whole)] * len(plots.cursors)


def test_dragging_the_cursor_turns_the_rotor_in_one_step_that_can_be_undone(open_plots):
    window, plots = open_plots("lift")
    window.model.send(do.TurnRotor(380.0))  # the second turn: it must stay in it
    before = steps_done(window)
    drag(plots, 1, 20.0, 27.0)
    state = window.model.state
    assert state.rotor_deg == pytest.approx(387.0, abs=1.0)  # a pixel is about a degree here
    assert steps_done(window) == before + 1
    assert plots.cursors[0].value() == pytest.approx(state.rotor_deg - 360.0)
    # The curve under the cursor reads what the panel and the picture read.
    x, y = plots._gaps["present"].getData()  # noqa: SLF001
    under = float(np.interp(plots.cursors[1].value(), x, y))
    assert under == pytest.approx(gap_now_mm(state), abs=2e-3)
    assert under > 0.1
    assert f"open {gap_now_mm(state):.3f} mm" in window.breaker.accessibleDescription()
    window.model.undo()
    assert window.model.state.rotor_deg == 380.0


def test_a_cursor_in_the_hand_holds_the_rotor_against_the_magnet(open_plots):
    window, plots = open_plots("pull", "seven-radial")  # off the engine
    window.model.send(do.TurnRotor(30.0))
    at = pixel(plots, 0, 30.0, middle(plots, 0))
    send_mouse(plots.canvas, QEvent.Type.MouseMove, at)
    send_mouse(plots.canvas, QEvent.Type.MouseButtonPress, at)
    for x in (31.0, 33.0, 36.0):
        move_held(plots, pixel(plots, 0, x, middle(plots, 0)))
    held_at = window.model.state.rotor_deg
    window.model.send(do.LetGo())
    window.model.tick(0.1)
    assert window.model.state.rotor_deg == held_at
    send_mouse(plots.canvas, QEvent.Type.MouseButtonRelease, pixel(plots, 0, 36.0, middle(plots, 0)))
    window.model.tick(0.1)
    assert window.model.state.rotor_deg < held_at, "let go, it falls back"
    window.model.send(do.HoldRotor())


def test_a_drag_past_the_ends_stays_in_the_turn(open_plots):
    window, plots = open_plots("lift")
    window.model.send(do.TurnRotor(355.0))
    drag(plots, 0, 355.0, 420.0)
    assert 359.9 < window.model.state.rotor_deg < 360.0
    assert 359.9 < plots.cursors[0].value() < 360.0


def test_a_click_turns_the_rotor_there_and_keys_turn_it_on(open_plots):
    window, plots = open_plots("lift")
    click(plots, 0, 200.0, middle(plots, 0))
    there = window.model.state.rotor_deg
    assert there == pytest.approx(200.0, abs=1.0)  # a pixel is about a degree
    plots.canvas.setFocus()
    QTest.keyClick(plots.canvas, Qt.Key.Key_Right)
    assert window.model.state.rotor_deg == pytest.approx(there + 1.0)
    QTest.keyClick(plots.canvas, Qt.Key.Key_Left, Qt.KeyboardModifier.ShiftModifier)
    assert window.model.state.rotor_deg == pytest.approx(there + 0.9)


def test_a_click_on_a_lobe_turns_the_rotor_to_where_it_opens(open_plots):
    window, plots = open_plots("lobes")
    click(plots, 0, 3.0, middle(plots, 0))
    assert window.model.state.rotor_deg == pytest.approx(float(readings(window.model.state).opens_deg[2]) % 360.0)


def test_values_under_the_pointer_are_those_of_the_bench(open_plots):
    window, plots = open_plots("lift")
    at = pixel(plots, 1, 30.0, middle(plots, 1))
    send_mouse(plots.canvas, QEvent.Type.MouseMove, at)
    QApplication.processEvents()
    angle = float(plots.reading.text().split("rotor ")[1].split("°")[0])
    assert angle == pytest.approx(30.0, abs=1.0)
    window.model.send(do.TurnRotor(angle))
    assert f"gap {gap_now_mm(window.model.state):.3f} mm" in plots.reading.text()
