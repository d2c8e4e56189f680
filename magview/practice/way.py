"""Way from the state as found to the state as left: on the adjustment window, or by the firing after each move."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise

from magview.bench.state import Side
from magview.curves.setting_path import Leg, SettingPath, setting_path
from magview.practice.advice import setting_wanted
from magview.practice.folded import Folded, Kind
from magview.practice.goals import timing_error_deg
from magview.practice.state import Practice, view

_LEAST_DEG = 0.02
"""Turns of plate or screw shorter than this are not drawn."""


@dataclass(frozen=True)
class FiringSteps:
    """Firing after each numbered card [crank deg early]; the first as found, without a number."""

    numbers: tuple[int, ...]
    errors_deg: tuple[float, ...]
    """Not finite while the magneto is off the engine."""
    allowed_deg: float


def way(cards: Sequence[Folded], first: Practice, left: Practice, side: Side) -> SettingPath | FiringSteps | None:
    """The way of one magneto; None where the exercise asks for no setting."""
    goals = {goal.goal for goal in first.exercise.goals}
    if goals & {"gap", "opening"}:
        return _setting_way(cards, first, left, side)
    return _firing_way(cards, first, side) if "timing" in goals else None


def _setting_way(cards: Sequence[Folded], first: Practice, left: Practice, side: Side) -> SettingPath:
    found = view(first, side).bench
    legs: list[Leg] = []
    for card in cards:
        if card.side != side:
            continue
        stops = _corners(card)
        legs += [Leg(a, b, card.number, card.kind is Kind.TIGHTEN) for a, b in pairwise(stops) if a != b]
    wanted, start = setting_wanted(found), (found.backplate_deg, found.screw_deg)
    short = [start]
    if wanted is not None:
        screw = wanted.screw_deg + found.magneto.condition.screw_creep_deg
        short += [(start[0], screw), (wanted.backplate_deg, screw)]
    return setting_path(view(left, side).bench, legs, short, start)


def _corners(card: Folded) -> list[tuple[float, float]]:
    """Settings at the card's beginning and end; between them each change of hand from plate to screw."""
    places = [card.before, *(step.after for step in card.steps)]
    settings = [(room.bench.backplate_deg, room.bench.screw_deg) for room in places if room.side == card.side]
    kept = [settings[0]]
    for here, then in pairwise(settings):
        moved = abs(then[0] - here[0]) >= _LEAST_DEG or abs(then[1] - here[1]) >= _LEAST_DEG
        if not moved:
            continue
        straight = len(kept) > 1 and _along_one(kept[-2], kept[-1], then)
        if straight:
            kept[-1] = then
        else:
            kept.append(then)
    return kept


def _along_one(a: tuple[float, float], b: tuple[float, float], c: tuple[float, float]) -> bool:
    return any(math.isclose(a[i], b[i], abs_tol=1e-9) and math.isclose(b[i], c[i], abs_tol=1e-9) for i in (0, 1))


def _firing_way(cards: Sequence[Folded], first: Practice, side: Side) -> FiringSteps | None:
    engaged = first.bench.engaged
    assert engaged is not None
    numbers, errors = [0], [timing_error_deg(view(first, side))]
    for card in cards:
        if card.number and card.side == side:
            numbers.append(card.number)
            errors.append(timing_error_deg(view(card.after, side)))
    return FiringSteps(tuple(numbers), tuple(errors), engaged.installation.engine.timing_tolerance_deg)
