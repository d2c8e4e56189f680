"""Exercises and lessons: reading their files, and finding the shipped ones."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import Any, Literal, TypeVar

from magview.practice.exercise import Exercise
from magview.practice.lesson import Lesson
from magview.spec.base import SpecError
from magview.spec.files import name_of, read_installation, read_json, read_magneto, validate
from magview.spec.formats import is_ours, names_file
from magview.spec.language import marked, tr
from magview.spec.library import Kind as Part
from magview.spec.library import resources, shipped_names

Kind = Literal["exercises", "lessons"]
T = TypeVar("T")


def read_exercise(path: Path) -> Exercise:
    """Read a ``magview-exercise/1`` file. Its magneto or installation is embedded, the short name of a shipped one,
    or a path sought beside it. Raises SpecError with one sentence for anything amiss."""
    return validate(Exercise, with_parts(read_json(path), path), name_of(path))


def read_lesson(path: Path) -> Lesson:
    """Read a ``magview-lesson/1`` file; its bench as an exercise's. Raises SpecError."""
    data = read_json(path)
    data = _with_bench(data, path)
    if isinstance(data, dict) and isinstance(data.get("steps"), tuple):
        data = {**data, "steps": tuple(_with_bench(step, path) for step in data["steps"])}
    return validate(Lesson, data, name_of(path))


def _with_bench(data: Any, path: Path) -> Any:
    if isinstance(data, dict) and isinstance(data.get("exercise"), dict):
        return {**data, "exercise": with_parts(data["exercise"], path)}
    return data


def shipped_exercises() -> list[str]:
    """Short names of the shipped exercises, easiest first."""
    return sorted(_shipped("exercises"), key=lambda name: (find_exercise(name).level, name))


def shipped_lessons() -> list[str]:
    """Short names of the shipped lessons, in the order they build on one another."""
    return sorted(_shipped("lessons"), key=lambda name: (find_lesson(name).number, name))


def find_exercise(name: str) -> Exercise:
    """An exercise by the short name of a shipped one or by a file's path. Raises SpecError."""
    return _find(name, "exercises", read_exercise)


def find_lesson(name: str) -> Lesson:
    """A lesson by the short name of a shipped one or by a file's path. Raises SpecError."""
    return _find(name, "lessons", read_lesson)


def with_parts(data: Any, path: Path) -> Any:
    """An exercise's data with the magneto or installation it names in its place. Raises SpecError."""
    if not isinstance(data, dict):
        return data
    data = dict(data)
    parts: tuple[tuple[str, Part, Callable[[Path], Any]], ...] = (
        ("magneto", "magnetos", read_magneto),
        ("installation", "installations", read_installation),
    )
    for field, kind, read in parts:
        name = data.get(field)
        if not isinstance(name, str):
            continue
        shipped = shipped_names(kind)
        if name not in shipped and not is_ours(name):
            known = ", ".join(shipped)
            raise SpecError(
                tr(
                    "{file}: {field} is “{given}”; it must be a file's path or one of {known}",
                    file=path.name,
                    field=field,
                    given=name[:60],
                    known=known,
                )
            )
        data[field] = read(resources() / kind / f"{name}.json" if name in shipped else path.parent / name)
    return data


def _shipped(kind: Kind) -> list[str]:
    return sorted(p.stem for p in (resources() / kind).glob("*.json"))


_UNKNOWN: dict[Kind, str] = {
    "exercises": marked("“{name}” is neither a file nor one of the shipped exercises: {known}"),
    "lessons": marked("“{name}” is neither a file nor one of the shipped lessons: {known}"),
}


def _find(name: str, kind: Kind, read: Callable[[Path], T]) -> T:
    if name in _shipped(kind):
        return read(resources() / kind / f"{name}.json")
    if not names_file(name):
        raise SpecError(
            tr(_UNKNOWN[kind], name=name[:60], known=", ".join(_shipped(kind))),
        )
    return read(Path(name))
