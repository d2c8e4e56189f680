"""Teeth and angles before top dead centre as mechanics write them."""

from __future__ import annotations

import pytest

from magview.bench.words import short_words, teeth_of, way_words
from magview.cli.main import main
from magview.spec.base import SpecError
from magview.spec.language import speak_through
from magview.spec.parse import parse_btdc_deg


@pytest.mark.parametrize(
    ("typed", "teeth"),
    [
        ("3", 3), ("+3", 3), ("-3", -3), ("−3", -3), (" 3 ", 3), ("0", 0), ("3.0", 3), ("3,0", 3), ("3 teeth", 3),
        ("3 with", 3), ("3 against", -3), ("3 With", 3), ("3against", -3), ("1 tooth with rotation", 1),
        ("3 teeth against rotation", -3), ("3 with rotation", 3), ("3 against rotation", -3), ("0 with", 0),
    ],
)  # fmt: skip
def test_teeth_are_whole_numbers_with_the_way_round(typed, teeth):
    assert teeth_of(typed) == teeth


@pytest.mark.parametrize(
    "typed", ["1.5", "1,5", "1.5 teeth", "-3 against", "+3 with", "3 up", "three", "with", "3 mm"]
)
def test_what_is_no_number_of_teeth_is_refused_with_examples_that_are(typed):
    with pytest.raises(SpecError, match="not a whole number of teeth") as refused:
        teeth_of(typed)
    told = str(refused.value)
    examples = told.partition("such as ")[2].removesuffix(" (rotation)").replace(" or ", ", ").split(", ")
    assert [teeth_of(example) for example in examples] == [3, -3, 3, -3]


def test_what_is_shown_can_be_typed():
    for count in range(-12, 13):
        assert teeth_of(short_words(count)) == count
        assert count == 0 or teeth_of(way_words(count)) == count


def test_the_way_round_is_taken_in_the_windows_language_too():
    words = {"{count} with": "{count} mit", "{count} against": "{count} gegen", "BTDC": "v. OT"}
    speak_through(lambda text: words.get(text, text), ",")
    try:
        assert (teeth_of("3 mit"), teeth_of("3 gegen"), teeth_of("3 against")) == (3, -3, -3)
        assert parse_btdc_deg("22,5 v. OT") == parse_btdc_deg("22.5 BTDC") == 22.5
    finally:
        speak_through(None)


@pytest.mark.parametrize(
    ("typed", "degrees"),
    [
        ("22", 22.0), ("22 BTDC", 22.0), ("22° BTDC", 22.0), ("22btdc", 22.0), ("22,5 BTDC", 22.5), ("-3", -3.0),
        ("3 ATDC", -3.0), ("3.5° atdc", -3.5), ("0 ATDC", 0.0), ("22 deg BTDC", 22.0), ("1.5°", 1.5),
    ],
)  # fmt: skip
def test_angles_before_and_after_top_dead_centre(typed, degrees):
    assert parse_btdc_deg(typed) == degrees


@pytest.mark.parametrize("typed", ["-3 ATDC", "-22 BTDC", "BTDC", "22 BDC", "22 mm BTDC", ""])
def test_what_is_no_angle_before_top_dead_centre_is_refused(typed):
    with pytest.raises(SpecError):
        parse_btdc_deg(typed)


def test_the_command_takes_them(capsys):
    def moves(*argv):
        assert main(["shift", "seven-radial-left", *argv, "--json"]) == 0
        return capsys.readouterr().out

    assert moves("--reads", "22 BTDC", "--wanted", "25° BTDC") == moves("--reads", "22", "--wanted", "25")
    assert moves("--reads", "2 ATDC") == moves("--reads=-2")
