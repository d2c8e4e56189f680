"""The sign of a degree disc is the same wherever it is typed, and is said in words before it is kept."""

from __future__ import annotations

import pytest

from magview.bench.engine_words import disc_words
from magview.forms.entry import entry_of
from magview.forms.typed import read, rounded
from magview.job.entries import beside
from magview.job.stages import DeadCentre
from magview.practice.state import Note
from magview.practice.words import note_words
from magview.spec.base import SpecError
from magview.spec.parse import parse_disc_deg


@pytest.mark.parametrize(
    ("typed", "after", "words"),
    [
        ("+2", 2.0, "2° after the disc's zero"),
        ("2 after", 2.0, "2° after the disc's zero"),
        ("-2.5°", -2.5, "2.5° before the disc's zero"),
        ("2.5° before", -2.5, "2.5° before the disc's zero"),
        ("2,5 BTDC", -2.5, "2.5° before the disc's zero"),
        ("0", 0.0, "0°, the disc's zero"),
    ],
)
def test_a_crank_angle_is_positive_the_way_the_engine_turns(typed, after, words):
    assert parse_disc_deg(typed) == after and disc_words(after) == words
    stop = entry_of(DeadCentre, "first_stop_deg")
    assert read(stop, typed) == after
    shown, _, side = beside(stop, after).partition("°")
    assert float(shown) == abs(after) and side == words.partition("°")[2]
    assert read(stop, rounded(stop, after, False)) == after


def test_a_minus_and_a_side_are_refused_in_one_sentence():
    with pytest.raises(SpecError, match="has a minus and the word before: write one or the other"):
        parse_disc_deg("-2 before")


def test_readings_kept_by_older_programs_mean_what_they_did():
    """A notebook keeps degrees before the disc's zero, a job sheet degrees after it."""
    assert note_words(Note("disc-zero", "left", 2.0)).endswith("2° before the disc's zero")
    assert note_words(Note("disc-zero", "left", -3.25)).endswith("3.25° after the disc's zero")
