"""Lengths and angles as people write them.

Inch: 25.4 mm exactly (international yard and pound agreement, 1959; NIST SP 811).
"""

import re
from datetime import date
from fractions import Fraction

import pytest
from hypothesis import example, given
from hypothesis import strategies as st

from magview.spec.base import SpecError
from magview.spec.language import format_angle, format_length
from magview.spec.parse import (
    late_or_early,
    parse_angle_deg,
    parse_day,
    parse_force_n,
    parse_length_mm,
    parse_number,
    parse_sided,
)
from magview.spec.units import digits_beside, length_digits
from tests.wording import says

INCH = Fraction(254, 10)


@pytest.mark.parametrize(
    ("text", "mm"),
    [
        ("0.23mm", Fraction(23, 100)),
        ("0.23 mm", Fraction(23, 100)),
        ("0,23 mm", Fraction(23, 100)),
        (" .23mm ", Fraction(23, 100)),
        (",23MM", Fraction(23, 100)),
        ("5. mm", Fraction(5)),
        ("1in", INCH),
        ("0.009in", INCH * 9 / 1000),
        ('0.009"', INCH * 9 / 1000),
        ("9 thou", INCH * 9 / 1000),
        ("9Thou", INCH * 9 / 1000),
        ("230 µm", Fraction(23, 100)),
        ("230 μm", Fraction(23, 100)),  # the Greek letter, which half of the keyboards give
        ("230um", Fraction(23, 100)),
        ("+1 mm", Fraction(1)),
        ("-1 mm", Fraction(-1)),
        ("−1 mm", Fraction(-1)),
        ("0 in", Fraction(0)),
    ],
)
def test_length_is_exact_to_the_last_bit_or_two(text, mm):
    assert parse_length_mm(text) == pytest.approx(float(mm), rel=3e-16, abs=0)


@pytest.mark.parametrize("thou", range(1, 41))
def test_a_blade_in_thousandths_is_the_same_in_inches(thou):
    assert parse_length_mm(f"{thou} thou") == pytest.approx(parse_length_mm(f"{thou / 1000}in"), rel=4e-16)


@pytest.mark.parametrize("text", ["0.23", "9", " 1,5 ", "-3"])
def test_a_missing_unit_is_an_error_that_says_so(text):
    with pytest.raises(ValueError, match=r"has no unit: write one, such as 0\.33mm, 0\.013in or 13thou"):
        parse_length_mm(text)
    assert parse_length_mm(text, "mm") == float(text.replace(",", "."))
    assert parse_length_mm(text, "in") == pytest.approx(float(text.replace(",", ".")) * 25.4)


def test_a_given_unit_beats_the_default():
    assert parse_length_mm("1 mm", "in") == 1.0


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("5 cm", says("“{unit}” is not a unit of length: use {known}", unit="cm", known="mm, in")),
        ("5 furlongs", "“furlongs” is not a unit of length"),
        ("5 °", "“°” is not a unit of length"),
        ("mm", "is not a length"),
        ("", "is not a length"),
        ("about 5 mm", "is not a length"),
        ("1.2.3 mm", "is not a length"),
        ("1,234.5 mm", "is not a length"),
        ("1 00 mm", "is not a length"),
        ("1-2 mm", "is not"),
        ("--1 mm", "is not a length"),
        ("1/ in", "is not"),
        ("nan mm", "is not a length"),
        ("inf mm", "is not a length"),
        ("0x10 mm", "is not"),
        ("5 mm 3", "is not a length"),
        ("9" * 400 + " mm", "is too large"),
    ],
)
def test_what_is_no_length_is_refused_in_one_sentence(text, told):
    with pytest.raises(ValueError, match=re.escape(told)) as caught:
        parse_length_mm(text)
    assert len(str(caught.value)) < 200


@pytest.mark.parametrize(
    ("text", "deg"), [("1.5°", 1.5), ("1,5", 1.5), ("-3 deg", -3.0), ("−3°", -3.0), ("22", 22.0)]
)
def test_angles(text, deg):
    assert parse_angle_deg(text) == deg


@pytest.mark.parametrize("text", ["5 mm", "1 rad", "", "°", "12°30"])
def test_what_is_no_angle_is_refused(text):
    with pytest.raises(ValueError, match="angle"):
        parse_angle_deg(text)


@given(st.text(max_size=60))
@example("\u00a0")
def test_any_text_is_taken_or_refused_in_one_printable_sentence(text):
    for parse in (parse_length_mm, parse_angle_deg):
        told = ""
        try:
            assert abs(parse(text)) < float("inf")
        except ValueError as error:
            told = str(error)
        assert told.isprintable()


@given(st.floats(-1000, 1000))
def test_what_is_shown_reads_back(mm):
    assert parse_length_mm(format_length(mm, inches=False)) == pytest.approx(mm, abs=0.000501)
    assert parse_length_mm(format_length(mm, inches=True)) == pytest.approx(mm, abs=0.0000501 * 25.4)
    assert parse_angle_deg(format_angle(mm)) == pytest.approx(mm, abs=0.00501)


@pytest.mark.parametrize("tiny", [-1e-9, -0.0, 0.0, 1e-9])
def test_nothing_is_shown_as_minus_nought(tiny):
    assert format_length(tiny, inches=False) == "0.000 mm"
    assert format_length(tiny, inches=True) == "0.0000 in"
    assert format_angle(tiny) == "0.00°"
    assert format_angle(tiny, signed=True) == "+0.00°"


def test_what_is_not_there_is_a_dash():
    for value in (float("nan"), float("inf"), float("-inf")):
        assert format_length(value, inches=False) == format_length(value, inches=True) == format_angle(value) == "–"


def test_signs_and_digits():
    assert format_length(0.2286, inches=True) == "0.0090 in"
    assert format_length(0.2286, inches=False) == "0.229 mm"
    assert format_angle(1.5, signed=True) == "+1.50°"
    assert format_angle(-1.5, signed=True) == "-1.50°"


@given(st.floats(0.15, 0.3), st.floats(1e-8, 2e-3), st.booleans(), st.booleans())
@example(0.254, 1e-4, True, False)
def test_what_is_out_of_limits_never_reads_as_its_limit(limit, beyond, over, inches):
    """What a reader compares are the numbers as written, read back as plain decimals."""
    value = limit + beyond if over else limit - beyond
    low, high = (limit - 0.05, limit) if over else (limit, limit + 0.05)
    digits = length_digits(value, low, high, inches)
    shown, least, most = (float(format_length(v, inches, digits).split()[0]) for v in (value, low, high))
    assert shown > most if over else shown < least


@given(st.floats(0.0, 1.0))
def test_what_is_within_limits_has_the_usual_digits(share):
    assert length_digits(0.2032 + share * 0.0508, 0.2032, 0.254, False) == 3
    assert length_digits(0.2032 + share * 0.0508, 0.2032, 0.254, True) == 4
    assert digits_beside(float("nan"), 0.0, 1.0, 2) == 2


def test_a_bare_number_may_have_its_own_unit_and_no_other():
    assert parse_number(" 1,5 ") == parse_number("1.5 H", "H") == parse_number("1.5", "H") == 1.5
    assert parse_number("−2e3") == -2000.0
    for text, unit in (("1.5 mm", "H"), ("1.5 H", ""), ("H", "H"), ("", ""), ("1.5.2", ""), ("nan", "")):
        with pytest.raises(SpecError, match=r"is not a number: write one such as 1\.5"):
            parse_number(text, unit)
    with pytest.raises(SpecError, match=r"^“1e999” is too large$"):
        parse_number("1e999")
    with pytest.raises(SpecError, match=r"such as 1\.5 H$"):
        parse_number("many", "H")


@pytest.mark.parametrize(
    ("text", "mm"),
    [("1/32 in", INCH / 32), ('1/64"', INCH / 64), ("1 1/4 in", INCH * 5 / 4), ("-1/2 mm", -0.5), ("3/4mm", 0.75)],
)
def test_fractions_are_read_as_on_a_rule(text, mm):
    assert parse_length_mm(text) == pytest.approx(float(mm), rel=1e-15)


def test_a_fraction_of_nothing_is_refused():
    with pytest.raises(ValueError, match="too large"):
        parse_length_mm("1/0 in")


@pytest.mark.parametrize("text", ["1 234,5", "1\u202f234.5", "1\u00a0234,5"])
def test_groups_of_three_may_be_set_apart_by_a_space(text):
    """ISO 80000-1, 7.3.1: a small gap, never a point or comma, separates groups of three."""
    assert parse_number(text) == 1234.5


@pytest.mark.parametrize("text", ["12 34,5", "1 2345", "1,234,5"])
def test_other_groups_are_refused(text):
    with pytest.raises(ValueError, match="not a number"):
        parse_number(text)


@pytest.mark.parametrize(
    ("text", "newtons"),
    # NIST SP 811, appendix B.8: ounce-force 2.780139 E-01 N, pound-force 4.448222 E+00 N, gram-force 9.80665 E-03 N.
    [("24 oz", 24 * 0.2780139), ("1 lb", 4.448222), ("680 g", 680 * 9.80665e-3), ("6,7 N", 6.7), ("6.7", 6.7)],
)
def test_forces_in_the_units_of_spring_balances(text, newtons):
    assert parse_force_n(text) == pytest.approx(newtons, rel=1e-6)


def test_a_force_in_another_unit_is_refused():
    with pytest.raises(ValueError, match="is not a unit of force"):
        parse_force_n("3 bar")


@pytest.mark.parametrize(
    ("text", "deg"),
    [("1,5 late", 1.5), ("1.5° past", 1.5), ("2 early", -2.0), ("0.5° Short", -0.5), ("-1", -1.0), ("0 early", 0.0)],
)
def test_sides_are_said_in_words(text, deg):
    assert parse_sided(text, parse_angle_deg, *late_or_early()) == deg


def test_a_minus_and_a_word_are_one_too_many():
    with pytest.raises(ValueError, match="write one or the other"):
        parse_sided("-1 late", parse_angle_deg, *late_or_early())


@pytest.mark.parametrize(
    "text", ["2026-11-05", "5.11.2026", "5 Nov 2026", "05 November 2026", "Nov 5, 2026", "5-Nov-2026"]
)
def test_days_as_people_write_them(text):
    assert parse_day(text) == "2026-11-05" == date(2026, 11, 5).isoformat()


def test_strokes_that_could_be_two_days_are_refused_and_others_not():
    assert parse_day("25/11/2026") == parse_day("11/25/2026") == "2026-11-25"
    assert parse_day("7/7/2026") == "2026-07-07" and parse_day(" ") == ""
    with pytest.raises(ValueError, match="could be 2026-05-06 or 2026-06-05"):
        parse_day("05/06/2026")
    for text in ("31.2.2026", "yesterday", "26-11-25"):
        with pytest.raises(ValueError, match="is not a date"):
            parse_day(text)
