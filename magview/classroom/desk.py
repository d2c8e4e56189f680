"""A pupil's place in the class: which exercise of which set, and the file that is handed in at the end."""

from __future__ import annotations

from datetime import datetime

from magview.classroom.handed import dump_handed_in, file_name, new_token
from magview.classroom.names import pupil_key
from magview.classroom.sets import ClassSet, set_id, work_id
from magview.practice.attempt import Attempt, Session, one_line
from magview.spec.base import SpecError
from magview.spec.language import tr


def begin(of: ClassSet, number: int, pupil: str) -> Session:
    """An attempt at exercise `number` (from 1) for a pupil. Raises SpecError for no such exercise, and no name."""
    pupil_key(pupil)
    return Session(of.exercise(number), of.seed_of(number, pupil), pupil)


def place_of(of: ClassSet, attempt: Attempt) -> int:
    """Number of an attempt's exercise in a set, from 1. Raises SpecError for an attempt at another."""
    work = work_id(attempt.exercise)
    for number in range(1, len(of.exercises) + 1):
        if work_id(of.exercise(number)) == work:
            return number
    raise SpecError(
        tr("“{exercise}” is not in this set, or was done with other settings", exercise=attempt.exercise.name)
    )


def prepare(of: ClassSet, number: int, pupil: str, attempt: Attempt, at: datetime | None = None) -> tuple[str, str]:
    """Name and text of the file to hand in, with a token of its own. Raises SpecError for an attempt that is not
    handed in, and for a name that is none."""
    name, token = one_line(pupil), new_token()
    pupil_key(name)
    when = at or datetime.now().astimezone()
    text = dump_handed_in(attempt, set_id(of), number, name, when, token)
    return file_name(attempt, number, name, when, token), text
