"""Shipped lessons and exercises by their headings alone: a list of them needs no model, and is read in no time."""

from __future__ import annotations

import json
from functools import cache
from typing import TYPE_CHECKING, Any, NamedTuple

from magview.spec.library import resources

if TYPE_CHECKING:  # their models take long to make
    from magview.practice.exercise import Exercise
    from magview.practice.lesson import Lesson


class Heading(NamedTuple):
    """One file on the shelf."""

    id: str
    """Its short name, by which progress is kept."""
    number: int
    """A lesson's place in the course; an exercise's level."""
    name: str
    steps: int
    minutes: float


@cache
def lessons() -> tuple[Heading, ...]:
    """The lessons, in the order they build on one another."""
    return _read("lessons")


@cache
def exercises() -> tuple[Heading, ...]:
    """The exercises, easiest first."""
    return _read("exercises")


def shipped_id(item: Exercise | Lesson) -> str:
    """The short name of a shipped exercise or lesson; "" for one that does not ship, whatever it is called."""
    from magview.practice.lesson import Lesson
    from magview.practice.library import find_exercise, find_lesson

    shelf, find = (lessons(), find_lesson) if isinstance(item, Lesson) else (exercises(), find_exercise)
    return next((found.id for found in shelf if found.name == item.name and find(found.id) == item), "")


def _read(kind: str) -> tuple[Heading, ...]:
    found = (_heading(path.stem, json.loads(path.read_bytes())) for path in (resources() / kind).glob("*.json"))
    return tuple(sorted(found, key=lambda heading: (heading.number, heading.id)))


def _heading(name: str, data: dict[str, Any]) -> Heading:
    number = data["number"] if "number" in data else data["level"]
    minutes = data["minutes"] if "minutes" in data else data["exercise"]["minutes"]
    return Heading(name, number, data["name"], len(data.get("steps", ())), minutes)
