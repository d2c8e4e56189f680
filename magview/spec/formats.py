"""The files we write: what each is called, and what a file says it is."""

from __future__ import annotations

from pathlib import Path

from magview.spec.base import SpecError
from magview.spec.files import read_json
from magview.spec.language import marked, tr

ENDING = ".magview.json"
"""What a file's name ends in so that a desktop knows whose it is; `.json` alone belongs to everybody."""

KINDS = {
    "magneto": marked("Magneto"),
    "engine": marked("Engine"),
    "installation": marked("Magneto on its engine"),
    "exercise": marked("Exercise"),
    "lesson": marked("Lesson"),
    "attempt": marked("Attempt at an exercise"),
    "class": marked("Set of exercises for a class"),
    "job": marked("Job sheet of a magneto"),
}
"""Kinds of file a person keeps, as in ``"format": "magview-KIND/1"``, and what a desktop calls them."""


def kind_of(path: Path) -> str:
    """What kind of file it says it is: a key of `KINDS`, or "bench" for what the program keeps of its own.

    Raises SpecError where it cannot be read, or is none of ours. Whether it is a good one its reader says.
    """
    data = read_json(path)
    found = data.get("format") if isinstance(data, dict) else None
    if isinstance(found, str) and found.startswith("magview-"):
        kind = found.removeprefix("magview-").split("/")[0]
        if kind in KINDS or kind == "bench":
            return kind
    known = ", ".join(f'"magview-{kind}/1"' for kind in KINDS)
    raise SpecError(
        tr("{file}: is not a file of this program; its format must be one of {known}", file=path.name, known=known)
    )
