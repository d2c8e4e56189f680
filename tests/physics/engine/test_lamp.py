"""What the lamp reads after contacts and teeth were moved, and what explains a reading that nobody expected.

The arithmetic is that of gears: where the rotor turns k times for each turn of the crank, a degree of rotor is 1/k
degree of crank (plain gearing; k = cylinders/(2·poles) for a four-stroke engine, textbooks, from memory).
"""

from __future__ import annotations

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from magview.physics.engine.lamp import Cause, Elsewhere, Foretold, explain, lamp_after_deg

PLAIN = {"uncertainty_deg": 0.9, "magneto_teeth": 19, "drive_teeth": 20, "rotor_turns_per_crank_turn": 0.875}
"""Teeth of a published coupling (“Magneto coupling”, technical torque articles): one step is 1/380 of a turn."""

STEP_DEG = float(Fraction(360, 380) * Fraction(8, 7))


def causes(reads: float, foretold: Foretold, **more) -> list[Cause]:
    return [found.cause for found in explain(reads, foretold, **(PLAIN | more))]


def test_opening_later_reads_less_and_teeth_with_rotation_read_more():
    # Seven cylinders, four poles: 7/8, so 0.875° of rotor is 1° of crank.
    assert lamp_after_deg(20.0, 0.875, opening_change_deg=0.875) == pytest.approx(19.0)
    assert lamp_after_deg(20.0, 0.875, opening_change_deg=-0.875) == pytest.approx(21.0)
    assert lamp_after_deg(20.0, 0.875, rotor_shift_deg=0.875) == pytest.approx(21.0)
    # Nine cylinders, four poles: 9/8.
    assert lamp_after_deg(20.0, 1.125, opening_change_deg=1.125, rotor_shift_deg=-2.25) == pytest.approx(17.0)


@pytest.mark.parametrize(("before", "ratio"), [(20.0, 0.0), (20.0, -1.0), (float("nan"), 1.0)])
def test_what_no_lamp_reads_is_refused(before, ratio):
    with pytest.raises(ValueError, match=r"above 0|finite"):
        lamp_after_deg(before, ratio)


def test_what_is_within_two_readings_needs_no_explanation():
    assert causes(27.5, Foretold(27.0)) == [Cause.NOTHING]
    assert causes(27.5, Foretold(27.0, 3, -3, 0.5), play_deg=0.5) == [Cause.NOTHING]


@pytest.mark.parametrize(
    ("truly", "cause"),
    [
        ((-3, 3), Cause.WRONG_WAY),
        ((0, 0), Cause.NOT_MOVED),
        ((3, 0), Cause.ONE_FACE),
        ((0, -3), Cause.ONE_FACE),
        ((-3, -3), Cause.WRONG_WAY),
        ((3, 3), Cause.WRONG_WAY),
        ((2, -3), Cause.MISCOUNTED),
        ((3, -2), Cause.MISCOUNTED),
    ],
)
def test_a_move_made_wrongly_is_the_likeliest(truly, cause):
    """Three steps were to be made from 23°; what was made in truth comes from the tooth counts alone."""
    made = 23.0 + 3 * STEP_DEG
    rotor = Fraction(360 * truly[0], 19) + Fraction(360 * truly[1], 20)
    reads = 23.0 + float(rotor * Fraction(8, 7))
    first = explain(reads, Foretold(made, 3, -3), **PLAIN)[0]
    assert (first.cause, first.magneto_teeth, first.disc_teeth) == (cause, *truly)
    assert first.reads_btdc_deg == pytest.approx(reads, abs=1e-9)
    assert first.left_deg == pytest.approx(0.0, abs=1e-9)


def test_unequal_teeth_on_the_faces_exchanged_are_the_wrong_face():
    rotor = Fraction(360 * -1, 19) + Fraction(360 * 2, 20)  # 2 and −1 were meant
    reads = 20.0 + float(rotor * Fraction(8, 7))
    meant = 20.0 + float((Fraction(720, 19) - Fraction(360, 20)) * Fraction(8, 7))
    assert causes(reads, Foretold(meant, 2, -1))[0] is Cause.WRONG_FACE


def test_contacts_that_were_not_set_anew_after_all():
    """Meant to open 1.4° of rotor later, which is 1.6° of crank less; the lamp reads as before."""
    assert causes(20.0, Foretold(18.4, opening_deg=1.4))[0] is Cause.CONTACTS_AS_BEFORE


def test_led_in_against_rotation_reads_too_early_by_the_play():
    assert causes(27.0 + 2.0, Foretold(27.0), play_deg=2.0)[0] is Cause.AGAINST_ROTATION
    assert Cause.AGAINST_ROTATION not in causes(27.0 - 2.0, Foretold(27.0), play_deg=2.0)


def test_steps_of_the_vernier_come_before_a_slipped_disc():
    """Two steps of the coupling are 2.17° of crank; anything at all could be a slipped disc."""
    found = explain(27.0 + 2 * STEP_DEG, Foretold(27.0), **PLAIN)
    assert (found[0].cause, found[0].magneto_teeth, found[0].disc_teeth) == (Cause.TEETH, 2, -2)
    assert found[-1].cause is Cause.DISC and found[-1].amount_deg == pytest.approx(2 * STEP_DEG)


def test_the_contacts_explain_only_what_plate_and_screw_could_do():
    room = {"opening_room_deg": (-3.0, 3.0)}
    # 3° of rotor are 3.43° of crank.
    opening = next(e for e in explain(30.4, Foretold(27.0), **PLAIN, **room) if e.cause is Cause.OPENING)
    assert opening.amount_deg == pytest.approx(-3.4 * 0.875)
    assert Cause.OPENING not in causes(30.5, Foretold(27.0), **room)


def test_another_opening_is_named_with_its_lobe():
    other = Elsewhere(Cause.OTHER_STROKE, -24.4, 4)
    first = explain(-24.0, Foretold(27.0), **PLAIN, elsewhere=[other])[0]
    assert (first.cause, first.lobe) == (Cause.OTHER_STROKE, 4)


@given(
    reads=st.floats(-180, 180), should=st.floats(-90, 90), i=st.integers(-8, 8), j=st.integers(-8, 8),
    opening=st.floats(-5, 5), play=st.floats(0, 3), slack=st.floats(0.1, 3),
)  # fmt: skip
def test_every_explanation_explains(reads, should, i, j, opening, play, slack):
    found = explain(
        reads, Foretold(should, i, j, opening), slack, 19, 20, 0.875, opening_room_deg=(-4, 4), play_deg=play
    )
    assert found, "a slipped disc explains anything"
    for one in found:
        assert abs(reads - one.reads_btdc_deg - one.left_deg) < 1e-9
        assert abs(one.left_deg) <= slack + 1e-6
    assert (found[0].cause is Cause.NOTHING) == (len(found) == 1 and abs(reads - should) <= slack + 1e-9)
