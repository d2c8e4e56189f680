"""Exercises whose contacts have a grade, and attempts at them."""

from __future__ import annotations

from magview.practice import actions as do
from magview.practice.attempt import Attempt, Event
from magview.practice.exercise import Exercise
from magview.spec.files import validate
from magview.spec.library import find_magneto


def exercise(**changes) -> Exercise:
    data = {
        "format": "magview-exercise/1",
        "rules": 2,
        "name": "Test",
        "level": 1,
        "story": "Found so.",
        "task": "Decide.",
        "minutes": 5.0,
        "magneto": find_magneto("seven-radial"),
        "start": {"switch_on": True},
        "tray": {"lamp": True, "straightedge": "0.5 mm", "blades": ("metric",)},
        "goals": ({"goal": "contacts", "weight": 1.0},),
        **changes,
    }
    return validate(Exercise, data, "test")


def with_grade(grade: str, *manual: str, **changes) -> Exercise:
    size = (0.05, 0.06) if grade == "mound" else (0.0, 0.0)
    fault = {"kind": "contacts", "among": (grade,), "size": size}
    return exercise(faults=(fault,), dressing_allowed=manual, **changes)


def done(on: Exercise, *acts: do.Act) -> Attempt:
    return Attempt(on, 3, events=tuple(Event(float(i), act) for i, act in enumerate((*acts, do.HandIn()))))


LOOK, LEAVE = do.InspectContacts(), do.LeaveAsIs("contacts")
