"""An eye's picture tells no true place: not even a program that knew each drawn length exactly would find one."""

from __future__ import annotations

import math

import numpy as np
import pytest

from magview.drawing.breaker_end import ByEye, breaker_layout
from magview.drawing.breaker_glass import sight
from magview.drawing.breaker_hero import Shown
from magview.drawing.contacts_closeup import closeup_scene
from magview.practice import actions as do
from magview.practice.apply import apply
from magview.practice.by_eye import by_eye
from magview.practice.faults import begin
from magview.practice.library import find_exercise
from magview.practice.state import true_gap_mm

SEEDS = 200
HALF_A_BLADE_STEP_MM = 0.025
EDGE_MM = 0.25


def worst_in_95_of_100(errors: list[float]) -> float:
    """How near the best guess comes in 95 of 100: what is off on the average is taken off first."""
    found = np.array(errors)
    return float(np.percentile(np.abs(found - np.median(found)), 95))


@pytest.mark.parametrize("name", ["gap-wrong", "opens-early-or-late"])
def test_drawn_lengths_find_neither_gap_nor_edge(name):
    gaps, edges = [], []
    for seed in range(SEEDS):
        room = begin(find_exercise(name), seed)
        room = apply(room, do.TurnUntil("widest"))
        shown = Shown.of(room.bench, by_eye=by_eye(room))
        layout = breaker_layout(shown.magneto)
        gaps.append(shown.pose.gap_mm - true_gap_mm(room.bench))
        ahead = sight(layout, shown.pose).past_deg - sight(layout, Shown.of(room.bench).pose).past_deg
        edges.append(math.radians((ahead + 180.0) % 360.0 - 180.0) * shown.magneto.marks.radius_mm)
    assert worst_in_95_of_100(gaps) >= HALF_A_BLADE_STEP_MM
    assert worst_in_95_of_100(edges) >= EDGE_MM


def test_open_and_closed_are_drawn_as_they_are():
    room = begin(find_exercise("gap-wrong"), 3)
    seen = set()
    for _ in range(40):
        room = apply(room, do.TurnRotor(7.0))
        drawn = Shown.of(room.bench, by_eye=by_eye(room)).pose.gap_mm > 0.0
        assert drawn == (true_gap_mm(room.bench) > 0.0)
        seen.add(drawn)
    assert seen == {True, False}


def test_a_pip_is_drawn_for_an_eye_as_one_and_not_as_high_as_it_is():
    """Two magnetos whose pips differ look the same to an eye; with measures they do not."""
    unit = find_exercise("gap-wrong").unit

    def mound(pip_mm: float, by_eye: ByEye | None) -> np.ndarray:
        worn = unit.condition.model_copy(update={"pip_height_mm": pip_mm})
        shown = Shown(unit.model_copy(update={"condition": worn}), by_eye=by_eye)
        pieces = [p for p in closeup_scene(shown).group("stop").pieces if p.part == "contacts"]
        assert len(pieces) == 2, "the contact, and the pip on it"
        return pieces[1].outlines[0]

    assert np.allclose(mound(0.03, ByEye()), mound(0.11, ByEye()))
    assert not np.allclose(mound(0.03, None), mound(0.11, None))
