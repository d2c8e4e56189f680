"""Things worked on lately, the newest first; files that cannot be read stand before them."""

from __future__ import annotations

import datetime
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from pathlib import Path

from magview.practice import shelf
from magview.practice.progress import Progress
from magview.spec.formats import stem_of
from magview.spec.language import tr

MOST = 3
"""Things named, beside those that are damaged."""


@dataclass(frozen=True)
class Item:
    """A thing by its name, with what became of it, and what opens it."""

    name: str
    aside: str
    kind: str
    """"lesson", "exercise", "job", "copy", or "" for what only is told."""
    key: str | Path = ""
    when: str = ""
    warns: bool = False


def recent(progress: Progress, jobs: Sequence[tuple[Path, str]], now: datetime.datetime) -> list[Item]:
    """Lessons, exercises and job sheets; `jobs` with the times they were last written, in ISO's form."""
    found: list[Item] = []
    for heading in shelf.lessons():
        lesson = progress.lesson(heading.id)
        if lesson.when:
            state = tr("step {step} of {steps}", step=lesson.at + 1, steps=heading.steps) if lesson.at else tr("done")
            found.append(_item(tr(heading.name), state, "lesson", heading.id, lesson.when, now))
    for heading in shelf.exercises():
        mark = progress.exercise(heading.id)
        if mark.when:
            state = tr("{percent} of 100", percent=round(mark.last))
            found.append(_item(tr(heading.name), state, "exercise", heading.id, mark.when, now))
    found += [_item(stem_of(path), tr("job sheet"), "job", path, when, now) for path, when in jobs]
    return sorted(found, key=lambda item: item.when, reverse=True)[:MOST]


def _item(name: str, state: str, kind: str, key: str | Path, when: str, now: datetime.datetime) -> Item:
    return Item(name, tr("{day}, {state}", day=day_words(when, now), state=state), kind, key, when)


def damaged(path: Path, copy: Path | None) -> list[Item]:
    """A file that cannot be read, whose link says why, and the copy that the program kept of it."""
    told = [Item(tr("△ {file}", file=path.name), tr("cannot be read"), "job", path, warns=True)]
    if copy is not None:
        told.append(Item(tr("open the copy"), "", "copy", copy))
    return told


def damaged_progress(path: Path) -> Item:
    """Progress that could not be read and begins anew."""
    words = tr("your progress could not be read and begins anew")
    return Item(tr("△ {file}", file=path.name), words, "", warns=True)


def day_words(when: str, now: datetime.datetime) -> str:
    """A day as people say it: today, yesterday, else its date."""
    try:
        day = datetime.datetime.fromisoformat(when).date()
    except ValueError:
        return "–"
    gone = (now.date() - day).days
    words: dict[int, Callable[[], str]] = {0: lambda: tr("today"), 1: lambda: tr("yesterday")}
    return words[gone]() if gone in words else day.isoformat()
