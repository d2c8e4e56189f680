"""Signs into words, for every combination of sign, rotation and viewpoint (common practice)."""

from __future__ import annotations

import pytest

from magview.bench.words import plate_move, screw_move, turning_word
from magview.spec.library import find_magneto


@pytest.mark.parametrize(
    ("sign", "rotation", "viewpoint", "word"),
    [
        (1, "clockwise", "drive end", "clockwise"),
        (-1, "clockwise", "drive end", "anticlockwise"),
        (1, "clockwise", "breaker end", "anticlockwise"),
        (-1, "clockwise", "breaker end", "clockwise"),
        (1, "anticlockwise", "drive end", "anticlockwise"),
        (-1, "anticlockwise", "drive end", "clockwise"),
        (1, "anticlockwise", "breaker end", "clockwise"),
        (-1, "anticlockwise", "breaker end", "anticlockwise"),
    ],
)
def test_the_word_for_a_turn(sign, rotation, viewpoint, word):
    assert turning_word(sign, rotation, viewpoint) == word


def test_moves_name_amount_direction_and_viewpoint():
    seven = find_magneto("seven-radial")  # anticlockwise from the drive end
    assert plate_move(seven, 1.5) == "turn the backplate 1.50° with rotation (clockwise seen from the breaker end)"
    assert "against rotation (anticlockwise" in plate_move(seven, -1.5)
    assert screw_move(seven, 3.0) == "turn the contact screw 3.0° clockwise (contacts closer)"
    assert screw_move(find_magneto("nine-radial"), 3.0).endswith("3.0° anticlockwise (contacts closer)")
