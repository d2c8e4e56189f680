"""Entry fields: what people type, in either decimal sign, with or without a unit."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QEvent, QLocale, Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from magview.ui.kit.inputs import AngleSpin, LengthSpin, NumberSpin
from magview.ui.kit.look import Look
from magview.ui.kit.theme import LIGHT
from tests.wording import says


@pytest.fixture(params=["C", "de_DE"])
def locale(request):
    before = QLocale()
    QLocale.setDefault(QLocale(request.param))
    yield request.param
    QLocale.setDefault(before)


def type_into(spin, text: str) -> None:
    spin.selectAll()
    for sign in text:  # QTest.keyClicks aborts on ° and −, which real keyboards do send
        QApplication.sendEvent(spin, QKeyEvent(QEvent.Type.KeyPress, 0, Qt.KeyboardModifier.NoModifier, sign))
    QTest.keyClick(spin.lineEdit(), Qt.Key.Key_Return)


@pytest.mark.parametrize(
    ("text", "degrees"), [("1.5", 1.5), ("1,5", 1.5), ("-2.25°", -2.25), ("−2", -2.0), ("3 deg", 3.0), ("99", 6.0)]
)
def test_an_angle_is_read_as_written_and_held_to_its_range(qtbot, locale, text, degrees):
    spin = AngleSpin(0.25, -6.0, 6.0)
    qtbot.addWidget(spin)
    got = []
    spin.entered.connect(got.append)
    type_into(spin, text)
    assert got[-1] == pytest.approx(degrees)


@pytest.mark.parametrize(
    ("text", "mm"),
    [("9 thou", 0.2286), ("0.009in", 0.2286), ("0,23 mm", 0.23), ("0.3", 0.3), (".25", 0.25)],
)
def test_a_length_is_read_with_its_unit(qtbot, locale, text, mm):
    look = Look(LIGHT)
    spin = LengthSpin(0.01, 0.0, 5.0, look)
    qtbot.addWidget(spin)
    got = []
    spin.entered.connect(got.append)
    type_into(spin, text)
    assert got[-1] == pytest.approx(mm)


@pytest.mark.parametrize("text", ["abc", "nan", "inf", "1.5 kg", "--", "1e999"])
def test_nonsense_goes_back_to_what_it_was(qtbot, text):
    spin = AngleSpin(0.25, -6.0, 6.0)
    qtbot.addWidget(spin)
    spin.show_value(1.25)
    got, said = [], []
    spin.entered.connect(got.append)
    spin.said.connect(said.append)
    type_into(spin, text)
    assert not got
    assert said, "an entry that is not taken must be answered"
    assert spin.exact == 1.25
    assert spin.text() == "+1.25°"


def test_the_exact_value_survives_showing_and_stepping(qtbot):
    spin = AngleSpin(0.25, -6.0, 6.0)
    qtbot.addWidget(spin)
    got = []
    spin.entered.connect(got.append)
    spin.show_value(1.2345678)
    assert not got
    assert spin.exact == 1.2345678
    spin.stepUp()
    assert got == [pytest.approx(1.4845678)]


def test_in_inches_a_bare_number_is_inches_and_the_value_stays(qtbot):
    look = Look(LIGHT)
    spin = LengthSpin(0.01, 0.0, 5.0, look)
    qtbot.addWidget(spin)
    spin.show_value(0.2286)
    look.inches = True
    assert spin.text() == "0.0090 in"
    assert spin.exact == 0.2286
    got = []
    spin.entered.connect(got.append)
    type_into(spin, "0.01")
    assert got[-1] == pytest.approx(0.254)


def test_an_entry_beyond_the_range_is_said_to_be_held(qtbot):
    spin = AngleSpin(0.25, -6.0, 6.0)
    qtbot.addWidget(spin)
    said = []
    spin.said.connect(said.append)
    type_into(spin, "9")
    assert said == [
        says(
            "{text} is outside {low} to {high}: {taken} is taken", text=9, low="-6.00°", high="+6.00°", taken="+6.00°"
        )
    ]
    assert spin.exact == 6.0


def test_the_wheel_turns_only_the_field_that_has_the_keyboard(open_window):
    """Scrolling a panel must not change what the pointer passes over."""
    from PySide6.QtCore import QPoint, QPointF

    window = open_window("seven-radial-left")
    window.panel.plate.setFocus()
    where = QPointF(window.panel.plate.mapTo(window, QPoint(10, 8)))
    QTest.wheelEvent(window.windowHandle(), where, QPoint(0, -120))
    assert window.model.state.backplate_deg == -0.25
    window.breaker.setFocus()
    for field in (window.menus.units, window.menus.magnetos, window.panel.setting.run_to, window.panel.plate):
        before = field.text() if hasattr(field, "text") else field.currentText()
        where = QPointF(field.mapTo(window, QPoint(10, 8)))
        QTest.wheelEvent(window.windowHandle(), where, QPoint(0, -120))
        assert (field.text() if hasattr(field, "text") else field.currentText()) == before


@pytest.mark.parametrize(
    ("text", "hours"), [("62,5", 62.5), ("62.5 h", 62.5), ("1e2h", 100.0), ("−3", 0.0), ("1e9", 500.0)]
)
def test_a_number_is_read_in_either_decimal_sign_and_held_to_its_range(qtbot, locale, text, hours):
    spin = NumberSpin(25.0, 0.0, 500.0, "h", 1)
    qtbot.addWidget(spin)
    spin.show_value(25.0)
    type_into(spin, text)
    assert spin.exact == hours
    assert spin.text() == f"{hours:g} h"


@pytest.mark.parametrize("text", ["1,000.5", "9 thou", "nan", "abc"])
def test_what_is_no_number_leaves_the_number_as_it_was(qtbot, locale, text):
    spin = NumberSpin(1.0, -10.0, 10.0)
    qtbot.addWidget(spin)
    spin.show_value(2.5)
    said: list[str] = []
    spin.said.connect(said.append)
    type_into(spin, text)
    assert spin.exact == 2.5
    assert said == [f"“{text}” is not a number: write one such as 1.5"]
