"""Lamp, crank and teeth on the Engine page: what is said of them agrees, and stays while it is true."""

from __future__ import annotations

from fractions import Fraction

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from magview.bench.actions import ReadLamp, TurnCrank, TurnScrew, ViewSide
from magview.bench.state import crank_deg, firing_btdc_deg
from magview.ui.kit.inputs import CrankSpin
from tests.magnetos import on_the_published_coupling


@pytest.fixture
def window(open_window):
    found = open_window(on_the_published_coupling())
    found.tabs.setCurrentIndex(1)
    return found


def test_crank_and_lamp_name_the_same_place_alike(window):
    lamp, crank = window.timing.lamp, window.timing.crank
    window.model.send(TurnCrank(-25.0))
    assert lamp.reads["left"].exact == 25.0 and "before TDC" in lamp.title()
    assert crank.crank.text() == "25.00° before TDC"
    window.model.send(TurnCrank(12.5))
    assert crank.crank.text() == "12.50° after TDC"
    window.model.send(TurnCrank(0.0))
    assert crank.crank.text() == "0.00°"


@pytest.mark.parametrize(
    ("typed", "crank"),
    [
        ("-30", -30.0),
        ("30", 30.0),
        ("30° before TDC", -30.0),
        ("7,5 after TDC", 7.5),
        ("22 BTDC", -22.0),
        ("2° ATDC", 2.0),
    ],
)
def test_the_crank_goes_where_it_is_sent(window, typed, crank):
    spin = window.timing.crank.crank
    spin.setFocus()
    spin.selectAll()
    QTest.keyClicks(spin.lineEdit(), typed)
    QTest.keyClick(spin.lineEdit(), Qt.Key.Key_Return)
    assert crank_deg(window.model.state) == pytest.approx(crank)


@pytest.mark.parametrize("value", [-340.25, -0.5, 0.0, 0.004, 25.0, 360.0])
def test_what_the_crank_shows_it_reads_back(qtbot, value):
    spin = CrankSpin(1.0, -360.0, 360.0)
    qtbot.addWidget(spin)
    spin.show_value(1.0)
    assert spin.valueFromText(spin.textFromValue(value)) == pytest.approx(value, abs=0.005)


def test_a_red_value_stays_explained_until_its_own_lamp_is_read(window):
    lamp, model = window.timing.lamp, window.model
    model.send(TurnScrew(8.0))  # the contacts set anew: both readings are out of date
    assert "set anew" in lamp.warning.text()
    model.send(ReadLamp("left", 25.0))
    would = firing_btdc_deg(model.state, "right", as_found=True)
    assert would != pytest.approx(25.0, abs=0.1) and lamp.now["right"].shown.words == f"{25.0 - would:.2f}° late"
    assert lamp.warning.isVisible()
    assert "Right, 25.00° is out of date" in lamp.warning.text() and f"{would:.2f}°" in lamp.warning.text()
    model.send(ViewSide("right"))
    assert "set anew" in lamp.warning.text() and f"{would:.2f}°" in lamp.warning.text()
    model.send(ReadLamp("right", 25.0))
    assert "set anew" not in lamp.warning.text()
    model.send(ViewSide("left"))
    assert "set anew" not in lamp.warning.text()


def test_what_one_tooth_does_is_told(window):
    text = window.timing.teeth.degrees.text()
    ratio = Fraction(7, 8)
    for rotor in (Fraction(360, 19), Fraction(360, 20), Fraction(360, 19) - Fraction(360, 20)):
        rounded = [f"{float(d):.3f}".rstrip("0").rstrip(".") for d in (rotor, rotor / ratio)]
        assert rounded[0] in text and rounded[1] in text


def test_what_nobody_has_read_says_so(window):
    """A new bench begins right; that is no reading, and the page does not take it for one."""
    timing = window.timing
    assert "has not been read yet" in timing.plan.expect.should.text()
    assert "has not been read yet" in timing.conditions.words.text()
    assert timing.stop.tdc.text().startswith("Example readings")
    window.model.send(ReadLamp("left", 22.0))
    assert "not been read" not in timing.plan.expect.should.text() + timing.conditions.words.text()
    for spin, reading in zip(timing.stop.stops, ("341", "25"), strict=True):
        spin.setFocus()
        spin.selectAll()
        QTest.keyClicks(spin.lineEdit(), reading)
        QTest.keyClick(spin, Qt.Key.Key_Return)
    assert not timing.stop.tdc.text().startswith("Example")
