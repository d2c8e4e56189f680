"""The story of a case, and the sentences that follow from the way in which a fault was drawn."""

from __future__ import annotations

from magview.practice.exercise import Exercise
from magview.practice.faults import drawn
from magview.spec.language import tr


def story(exercise: Exercise, seed: int | None) -> str:
    """The story in the present language. Without a seed, what hangs on the draw is left out."""
    by_way = exercise.story_by_way
    if by_way is None or seed is None:
        return tr(exercise.story)
    field = by_way.fault.replace("-", "_")
    sizes = [float(getattr(drawn(exercise, seed, side), field) or 0.0) for side in exercise.sides]
    size = next((s for s in sizes if s), 0.0)
    told = by_way.plus if size > 0 else by_way.minus if size < 0 else by_way.none
    return f"{tr(exercise.story)} {tr(told)}" if told else tr(exercise.story)
