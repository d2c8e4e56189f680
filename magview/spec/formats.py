"""The files we write: what each is called, and what a file says it is."""

from __future__ import annotations

import os
from pathlib import Path

from magview.spec.base import SpecError
from magview.spec.files import STANDARD, read_json
from magview.spec.language import marked, tr

ENDINGS = (".magview.json", ".magview")
"""Endings of file names by which a desktop knows the program's files. All are read; the first is written."""

ENDING = ENDINGS[0]
READ = (*ENDINGS, ".json")
"""Endings that are read where a file is named; `.json` alone belongs to everybody."""

KINDS = {
    "magneto": marked("Magneto"),
    "engine": marked("Engine"),
    "installation": marked("Magneto on its engine"),
    "exercise": marked("Exercise"),
    "lesson": marked("Lesson"),
    "attempt": marked("Attempt at an exercise"),
    "class": marked("Set of exercises for a class"),
    "job": marked("Job sheet of a magneto"),
    "limits": marked("Limits card of an aircraft"),
}
"""Kinds of file a person keeps, as in ``"format": "magview-KIND/1"``, and what a desktop calls them."""


def is_ours(name: str) -> bool:
    """Whether a file's name ends as one that is read."""
    return name.lower().endswith(READ)


def names_file(name: str) -> bool:
    """Whether what was typed names a file rather than a shipped one: `-`, an ending that is read, or a file there."""
    return name == str(STANDARD) or is_ours(name) or os.path.exists(name)


def stem_of(path: Path) -> str:
    """A file's name without its ending."""
    ending = next((e for e in READ if path.name.lower().endswith(e)), path.suffix)
    return path.name[: len(path.name) - len(ending)] or path.name


def with_ending(path: Path) -> Path:
    """Return the path for a file whose name may have been typed without an ending."""
    return path if path.suffix else path.with_name(f"{path.name}{ENDING}")


def file_filter(what: str) -> str:
    """Filter of a file dialog: the files that are read, called `what`, or all files."""
    return f"{what} ({' '.join(f'*{ending}' for ending in READ)});;{tr('All files')} (*)"


def kind_of(path: Path) -> str:
    """The kind that a file declares: a key of `KINDS`, or "bench" for work that the program keeps.

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
