"""A class's attempts, made by scripted trainees: some do everything, some stop half-way, some are careless."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from pathlib import Path

from magview.bench import actions as bench
from magview.classroom.handed import dump_handed_in, file_name, new_token
from magview.classroom.sets import ClassSet, set_id
from magview.practice import actions as do
from magview.practice.attempt import Attempt
from magview.practice.library import find_exercise
from tests.practice.hands import Hands
from tests.practice.trainee import Trainee

START = datetime(2026, 3, 2, 9, 0, tzinfo=UTC)


def a_set(*names: str, **settings) -> ClassSet:
    """A set of shipped exercises."""
    exercises = tuple(find_exercise(n) for n in names or ("gap-wrong",))
    return ClassSet(**{"seed": 4711, "exercises": exercises, **settings})


def done(of: ClassSet, number: int, pupil: str, how: str = "well") -> Attempt:
    """An attempt that is handed in: done "well", or "idle" (nothing but a look), or "slack" (a screw left loose)."""
    exercise, seed = of.exercise(number), of.seed_of(number, pupil)
    if how == "well":
        return Trainee(exercise, seed).work()
    hands = Hands(exercise, seed)
    if how == "slack":
        hands.act(bench.TightenLock(False))
        hands.act(do.TurnScrew(10.0))
    hands.act(do.InspectContacts())
    hands.act(do.HandIn())
    return hands.session.attempt


def handed(of: ClassSet, number: int, pupil: str, attempt: Attempt, minute: int = 0) -> tuple[str, str]:
    """Name and text of the file."""
    at, token = START + timedelta(minutes=minute), new_token()
    return file_name(attempt, number, pupil, at, token), dump_handed_in(attempt, set_id(of), number, pupil, at, token)


def class_folder(folder: Path, count: int, names: tuple[str, ...] = ("gap-wrong", "pips", "switch-lead")) -> ClassSet:
    """Fill a folder with so many attempts, each pupil with faults of their own."""
    of = a_set(*names, each_their_own=True)
    folder.mkdir(parents=True, exist_ok=True)
    for i in range(count):
        number, pupil = i % len(names) + 1, f"Pupil {i // len(names) + 1}"
        how = "idle" if i % 11 == 5 else "slack" if i % 7 == 3 else "well"
        name, text = handed(of, number, pupil, done(of, number, pupil, how), i)
        (folder / name).write_text(text, encoding="utf-8")
    return of
