"""The gauge: where limits, pointer and own reading are painted, and what is said of them."""

from __future__ import annotations

from dataclasses import replace

import pytest
from PySide6.QtGui import QAccessible, QColor, QImage
from pytestqt.qtbot import QtBot

from magview.ui.kit.gauge import Gauge, Measured
from magview.ui.kit.look import Look
from magview.ui.kit.signs import Sign
from magview.ui.kit.theme import LIGHT, THEMES

GAP = Measured(0.365, 0.300, 0.360, "0.365 mm", ("0.300", "0.360"), Sign.OUT)


@pytest.fixture
def gauge(qtbot: QtBot) -> Gauge:
    shown = Gauge("largest gap", Look(LIGHT))
    qtbot.addWidget(shown)
    shown.show_value(GAP)
    shown.resize(400, shown.sizeHint().height())
    shown.show()
    return shown


def columns(picture: QImage, colour: str) -> list[int]:
    """The columns [px] in which a colour is painted below the line of words."""
    wanted = QColor(colour)
    top = picture.height() // 4
    return [
        x
        for x in range(picture.width())
        if any(picture.pixelColor(x, y) == wanted for y in range(top, picture.height()))
    ]


def test_it_says_number_limits_and_verdict(gauge: Gauge) -> None:
    seen = QAccessible.queryAccessibleInterface(gauge)
    assert seen is not None
    assert seen.text(QAccessible.Text.Name) == "largest gap 0.365 mm, limits 0.300 to 0.360, out"
    gauge.show_value(replace(GAP, own=(0.33, 0.36), own_words="0.33 goes, 0.36 does not"))
    assert seen.text(QAccessible.Text.Name).endswith("out; own reading 0.33 goes, 0.36 does not")


def test_values_stand_in_proportion_and_beyond_the_scale_at_its_end(gauge: Gauge) -> None:
    low, middle, high = (gauge.x_of(value) for value in (0.300, 0.330, 0.360))
    assert middle == pytest.approx((low + high) / 2)
    assert gauge.x_of(0.390) - high == pytest.approx(middle - low)
    assert 0 < gauge.x_of(-5.0) < low and high < gauge.x_of(5.0) < gauge.width()
    assert gauge.x_of(5.0) == gauge.x_of(50.0)


def test_zone_and_pointer_are_painted_where_the_numbers_are(gauge: Gauge) -> None:
    picture = gauge.grab().toImage()
    zone = columns(picture, LIGHT.good_fill)
    assert zone[0] == pytest.approx(gauge.x_of(0.300), abs=3) and zone[-1] == pytest.approx(gauge.x_of(0.360), abs=3)
    pointer = columns(picture, LIGHT.bad)
    assert (pointer[0] + pointer[-1]) / 2 == pytest.approx(gauge.x_of(0.365), abs=1.5)
    gauge.show_value(replace(GAP, value=0.31, words="0.310 mm", sign=Sign.IN))
    picture = gauge.grab().toImage()
    assert columns(picture, LIGHT.bad) == [], "no value out is shown"
    pointer = columns(picture, LIGHT.text)
    assert (pointer[0] + pointer[-1]) / 2 == pytest.approx(gauge.x_of(0.31), abs=1.5)


def test_the_own_reading_is_a_bracket_from_what_goes_to_what_does_not(gauge: Gauge) -> None:
    assert columns(gauge.grab().toImage(), LIGHT.hand) == []
    gauge.show_value(replace(GAP, own=(0.33, 0.36)))
    gauge.resize(400, gauge.sizeHint().height())
    bracket = columns(gauge.grab().toImage(), LIGHT.hand)
    assert bracket[0] == pytest.approx(gauge.x_of(0.33), abs=2)
    assert bracket[-1] == pytest.approx(gauge.x_of(0.36), abs=2)


@pytest.mark.parametrize("value", [None, float("nan")])
def test_what_has_no_value_has_no_pointer(gauge: Gauge, value: float | None) -> None:
    gauge.show_value(replace(GAP, value=value, words="–", sign=Sign.NONE))
    picture = gauge.grab().toImage()
    assert columns(picture, LIGHT.bad) == [] and columns(picture, LIGHT.text) == []
    assert columns(picture, LIGHT.good_fill)


def test_room_grows_with_the_type_and_with_an_own_reading(gauge: Gauge) -> None:
    plain = gauge.sizeHint().height()
    gauge.show_value(replace(GAP, own=(0.33, 0.36)))
    assert gauge.sizeHint().height() > plain
    font = gauge.font()
    font.setPointSizeF(2 * font.pointSizeF())
    gauge.setFont(font)
    assert gauge.sizeHint().height() > 1.8 * plain


@pytest.mark.parametrize("theme", THEMES.values(), ids=lambda t: t.name)
def test_it_takes_the_colours_of_every_theme(gauge: Gauge, theme: object) -> None:
    gauge._look.theme = theme  # type: ignore[assignment]  # noqa: SLF001
    picture = gauge.grab().toImage()
    assert columns(picture, theme.good_fill) and columns(picture, theme.bad)  # type: ignore[attr-defined]


def test_a_flat_one_takes_one_line_and_says_the_same(qtbot: QtBot, gauge: Gauge) -> None:
    flat = Gauge("largest gap", Look(LIGHT), flat=True)
    qtbot.addWidget(flat)
    flat.show_value(GAP)
    flat.resize(200, flat.sizeHint().height())
    assert flat.words == gauge.words and flat.height() < 0.7 * gauge.height()
    pointer = [x for x in columns(flat.grab().toImage(), LIGHT.bad) if x < flat.x_of(5.0) + 8]
    assert (pointer[0] + pointer[-1]) / 2 == pytest.approx(flat.x_of(0.365), abs=1.5)


def test_signs_differ_without_any_colour() -> None:
    assert len({sign.mark for sign in Sign}) == len(Sign) == len({sign.words for sign in Sign})
