"""Signs into words, for every combination of sign, rotation and viewpoint (common practice)."""

from __future__ import annotations

import pytest

from magview.bench.words import (
    Viewpoint,
    direction_word,
    move_words,
    plate_move,
    screw_move,
    setting_moves,
    short_words,
    teeth_words,
)
from magview.physics.engine.coupling import plan
from magview.spec.library import find_magneto
from magview.spec.magneto import Rotation


@pytest.mark.parametrize(
    ("sign", "rotation", "viewpoint", "word"),
    [
        (1, "clockwise", "drive end", "clockwise"),
        (1, "clockwise", "breaker end", "anticlockwise"),
        (1, "anticlockwise", "drive end", "anticlockwise"),
        (1, "anticlockwise", "breaker end", "clockwise"),
        (-1, "clockwise", "drive end", "anticlockwise"),
        (-1, "clockwise", "breaker end", "clockwise"),
        (-1, "anticlockwise", "drive end", "clockwise"),
        (-1, "anticlockwise", "breaker end", "anticlockwise"),
        (0, "clockwise", "drive end", ""),
        (0.25, "anticlockwise", "drive end", "anticlockwise"),
        (-0.25, "anticlockwise", "drive end", "clockwise"),
    ],
)
def test_direction_words(sign: float, rotation: Rotation, viewpoint: Viewpoint, word: str) -> None:
    assert direction_word(sign, rotation, viewpoint) == word


def test_teeth_words_name_number_way_and_viewpoint() -> None:
    assert teeth_words(1, "anticlockwise", "drive end") == (
        "1 tooth with rotation (anticlockwise seen from the drive end)"
    )
    assert teeth_words(-3, "anticlockwise", "breaker end") == (
        "3 teeth against rotation (anticlockwise seen from the breaker end)"
    )
    assert teeth_words(0, "clockwise", "drive end") == "not moved"


@pytest.mark.parametrize(
    ("reads", "rotation", "viewpoint", "flange", "disc"),
    [
        # Late: the rotor must go forward. Early: back. 19/20 teeth, k = 7/8: one step is 1.08° of crank.
        (23.9, "clockwise", "drive end", "with rotation (clockwise", "against rotation (anticlockwise"),
        (23.9, "clockwise", "breaker end", "with rotation (anticlockwise", "against rotation (clockwise"),
        (23.9, "anticlockwise", "drive end", "with rotation (anticlockwise", "against rotation (clockwise"),
        (23.9, "anticlockwise", "breaker end", "with rotation (clockwise", "against rotation (anticlockwise"),
        (26.1, "clockwise", "drive end", "against rotation (anticlockwise", "with rotation (clockwise"),
        (26.1, "clockwise", "breaker end", "against rotation (clockwise", "with rotation (anticlockwise"),
        (26.1, "anticlockwise", "drive end", "against rotation (clockwise", "with rotation (anticlockwise"),
        (26.1, "anticlockwise", "breaker end", "against rotation (anticlockwise", "with rotation (clockwise"),
    ],
)
def test_words_of_the_move_for_late_and_early_firing(
    reads: float, rotation: Rotation, viewpoint: Viewpoint, flange: str, disc: str
) -> None:
    first = plan(19, 20, 0.875, reads, 25.0, most=1)[0]
    disc_words, flange_words = move_words(first, rotation, viewpoint)
    assert flange_words == f"1 tooth {flange} seen from the {viewpoint})"
    assert disc_words == f"1 tooth {disc} seen from the {viewpoint})"
    assert (first.crank_advance_deg > 0) == (reads < 25.0)


def test_moves_name_amount_direction_and_viewpoint() -> None:
    seven = find_magneto("seven-radial")  # anticlockwise from the drive end
    assert plate_move(seven, 1.5) == "turn the backplate 1.50° with rotation (clockwise seen from the breaker end)"
    assert "against rotation (anticlockwise" in plate_move(seven, -1.5)
    assert screw_move(seven, 3.0) == "turn the contact screw 3.00° clockwise (contacts closer)"
    assert screw_move(find_magneto("nine-radial"), 3.0).endswith("3.00° anticlockwise (contacts closer)")


def test_only_moves_that_hands_can_make_are_told() -> None:
    seven = find_magneto("seven-radial")
    assert setting_moves(seven, 0.004, -0.004) == []
    assert setting_moves(seven, -1.0, 2.0) == [screw_move(seven, 2.0), plate_move(seven, -1.0)]
    assert setting_moves(seven, 0.0, 2.0) == [screw_move(seven, 2.0)]


def test_teeth_in_a_narrow_column() -> None:
    assert [short_words(n) for n in (3, -1, 0)] == ["3 with", "1 against", "0"]
