"""Four at one instant on the Internal page: at every E-gap, at none, unknown, and with the contacts set anew."""

from __future__ import annotations

import pytest
from PySide6.QtWidgets import QApplication

from magview.bench.actions import MountMagneto, ReadLamp, TurnBackplate, TurnRotor
from magview.bench.conditions import Condition
from magview.ui.kit.signs import Sign
from tests.counts import sampled

PISTON, MAGNET, CONTACTS, FINGER = Condition


def sign(window, condition: Condition) -> Sign:
    return window.panel.conditions.box(condition).shown.sign


@pytest.mark.parametrize("turn", sampled(range(-8, 9), 4))
def test_the_magnet_knows_every_e_gap_and_the_finger_no_1_alone(open_window, turn):
    """Four poles: an E-gap every 90° of rotor. The finger turns once in two turns of a crank 8/7 as fast."""
    window = open_window("seven-radial-left")
    window.model.send(ReadLamp("left", window.model.state.engaged.left.wanted_btdc_deg))
    e_gap = window.model.state.magneto.e_gap_deg
    window.model.send(TurnRotor(e_gap + 90.0 * turn))
    assert sign(window, MAGNET) is sign(window, CONTACTS) is Sign.IN
    at_no_1 = turn % 7 == 0  # 7 openings of 90° are two turns of the crank
    assert (sign(window, FINGER) is Sign.IN) is at_no_1
    assert (sign(window, PISTON) is Sign.IN) is at_no_1
    lobe_1 = turn % 4 == 0  # at another lobe another cylinder fires, and nothing is asked of No. 1
    if not at_no_1:
        assert sign(window, FINGER) is sign(window, PISTON) is (Sign.OUT if lobe_1 else Sign.NONE)
    window.model.send(TurnRotor(e_gap + 90.0 * turn + 30.0))
    assert sign(window, MAGNET) is sign(window, CONTACTS) is Sign.NONE, "nothing is asked between two openings"
    assert window.panel.conditions.box(MAGNET).shown.figure == "30.00° late"
    assert "30.00° of rotor past the E-gap" in window.panel.conditions.box(MAGNET).toolTip()


def test_what_nobody_knows_is_not_right(open_window):
    window = open_window("seven-radial-left")
    wanted = window.model.state.engaged.left.wanted_btdc_deg
    window.model.send(TurnRotor(window.model.state.magneto.e_gap_deg))
    assert sign(window, PISTON) is Sign.UNKNOWN, "nobody has read the lamp"
    window.model.send(ReadLamp("left", wanted))
    assert sign(window, PISTON) is Sign.IN and not window.panel.lamp.isVisible()
    window.model.send(TurnBackplate(0.7))
    assert sign(window, PISTON) is Sign.UNKNOWN
    # 0.7° of rotor later, at 7/8 of the crank.
    assert window.panel.lamp.isVisible() and f"should now read {wanted - 0.8:.2f}°" in window.panel.lamp.text()


def test_off_the_engine_nobody_knows_the_piston(open_window):
    window = open_window("seven-radial-left")
    window.model.send(ReadLamp("left", window.model.state.engaged.left.wanted_btdc_deg))
    window.model.send(MountMagneto(False))
    window.model.send(TurnRotor(window.model.state.magneto.e_gap_deg))
    assert sign(window, PISTON) is Sign.UNKNOWN
    assert window.panel.conditions.box(PISTON).shown.figure == "not on the engine"


def test_no_figure_is_cut_short_in_a_small_window(open_window):
    window = open_window("seven-radial-left", (1280, 660))
    for angle in (0.0, -20.0, 20.0, 44.0):
        window.model.send(TurnRotor(angle))
        for box in window.panel.conditions.four.boxes:
            assert box.figure_width() <= box.figure_room(), box.shown.figure


def test_without_an_engine_piston_and_finger_are_not_known(open_window):
    window = open_window("seven-radial")
    assert [sign(window, condition) for condition in Condition] == [Sign.UNKNOWN, Sign.IN, Sign.IN, Sign.UNKNOWN]
    assert "Piston No. 1: no engine, not known" in window.panel.conditions.box(PISTON).accessibleName()


def test_the_breaker_end_is_large_enough_in_the_smallest_usual_window(open_window):
    """At least 455 × 400 px of a client area of 1280 × 660; the row below keeps its room."""
    window = open_window("seven-radial-left", (1280, 660))
    QApplication.processEvents()
    assert window.breaker.width() >= 455
    assert window.breaker.height() >= 400
    assert window.pictures.row.height() >= 176
    window.resize(1920, 1040)
    QApplication.processEvents()
    assert window.breaker.width() >= 1.12 * window.breaker.height() - 1
    assert window.breaker.height() >= 600
