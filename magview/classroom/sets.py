"""A class's set of exercises: in order, with the seed and the settings; as a code, or as a ``magview-class/1`` file.

A code carries shipped exercises, seed and settings; exercises of one's own and the list of pupils travel in a file.
Both name the same set: `set_id` depends on what is drawn and marked alone, not on title, texts or pupils.
"""

from __future__ import annotations

import json
import secrets
from collections.abc import Sequence
from dataclasses import dataclass
from functools import cache
from hashlib import sha256
from pathlib import Path
from typing import Annotated, Any, Literal, Self

from pydantic import Field, model_validator

from magview.classroom.code import ALPHABET, CHECKS, MOST, Bits, checked, symbols_of
from magview.classroom.names import normal, pupil_key, seed_for
from magview.practice.exercise import Exercise
from magview.practice.exercise_parts import Tray
from magview.practice.library import find_exercise, read_exercise, shipped_exercises, with_parts
from magview.spec.base import Model, Name, SpecError
from magview.spec.fields import Choices, Quantity, may_say
from magview.spec.files import STANDARD, dump_json, name_of, read_json, validate, write_text
from magview.spec.formats import is_ours
from magview.spec.language import marked, tr
from magview.spec.library import resources

Units = Literal["own", "metric", "inch"]
UNITS: tuple[Units, ...] = ("own", "metric", "inch")

_VERSION = 1
_SEED_BITS, _EXERCISE_BITS, _CONTENT_BITS, _COUNT_BITS, _MINUTES_BITS = 20, 10, 12, 4, 8
MAX_SEED = 2**_SEED_BITS - 1
MAX_MINUTES = 2**_MINUTES_BITS - 1
MAX_IN_CODE = 9
"""Exercises in a code: a tenth would make it longer than can be checked."""

_HEAD_SYMBOLS = 10
_TEXTS = {"name", "story", "story_by_way", "task", "hints", "minutes"}
"""Texts of an exercise: changing one leaves the draw and the marks as they were."""


class ClassSet(Model):
    """The exercises of a class."""

    format: Literal["magview-class/1"] = "magview-class/1"
    title: Annotated[str, Field(max_length=120, pattern=r"^[^\p{Cc}]*$")] = may_say(
        marked("Title"), marked("Name of this set, as the class is told it."), ""
    )
    seed: Annotated[int, Field(ge=0, le=MAX_SEED)] = Field(
        title=marked("Number"), description=marked("The same number draws the same faults.")
    )
    each_their_own: Annotated[
        bool,
        Choices(
            ((False, marked("the same for everyone")), (True, marked("one of their own for each pupil"))),
        ),
    ] = may_say(
        marked("Faults"),
        marked("A fault of their own for each pupil, drawn from seed and name; else the same for all."),
        False,
    )
    hints: bool = may_say(
        marked("Hints may be asked for"), marked("Whether the exercises' hints may be asked for."), True
    )
    units: Annotated[
        Units,
        Choices(
            (
                ("own", marked("as the exercise has them")),
                ("metric", marked("metric, too")),
                ("inch", marked("in inches, too")),
            )
        ),
    ] = may_say(
        marked("Blades, edge"),
        marked("A straightedge of this unit, and blades of it beside the exercise's own."),
        "own",
    )
    minutes: Annotated[int, Field(ge=1, le=MAX_MINUTES), Quantity("min")] | None = may_say(
        marked("Minutes"),
        marked("Shown to the pupils as a guide; time is not marked. Left out: as the exercise says."),
    )
    exercises: Annotated[tuple[Exercise, ...], Field(min_length=1, max_length=40)] = Field(
        title=marked("Exercises"), description=marked("In the order they are worked at.")
    )
    pupils: Annotated[tuple[Name, ...], Field(max_length=500)] = may_say(
        marked("Pupils, one name or number a line"),
        marked("Not in the code; for the answer key, and to see who is missing."),
        (),
    )

    @model_validator(mode="after")
    def _pupils_differ(self) -> Self:
        seen: dict[str, str] = {}
        for i, name in enumerate(self.pupils):
            key = normal(name)
            if not key:
                raise ValueError(
                    tr("pupils[{i}] is “{name}”, which has neither a letter nor a digit", i=i, name=name)
                )
            if key in seen:
                raise ValueError(
                    tr(
                        "pupils has “{one}” and “{other}”, who cannot be told apart; "
                        "capitals, accents and spaces do not count",
                        one=seen[key],
                        other=name,
                    )
                )
            seen[key] = name
        return self

    def exercise(self, number: int) -> Exercise:
        """Exercise `number` (from 1) as the class gets it: with the set's settings. Raises SpecError for no such."""
        return _with_settings(self._own(number), self)

    def seed_of(self, number: int, pupil: str = "") -> int:
        """The seed of an exercise for a pupil. Raises SpecError where each has their own and nobody is named."""
        self._own(number)
        return seed_for(self.seed, number, pupil_key(pupil) if self.each_their_own else "")

    def _own(self, number: int) -> Exercise:
        if not 1 <= number <= len(self.exercises):
            raise SpecError(
                tr("exercise {number} is not in this set, which has {count}",
                   number=number, count=len(self.exercises))
            )  # fmt: skip
        return self.exercises[number - 1]


def new_seed() -> int:
    """A seed nobody can guess from another."""
    return secrets.randbelow(MAX_SEED + 1)


def set_id(of: ClassSet) -> str:
    """Sixteen hexadecimal digits that name a set: alike for its code and its file, whatever title and texts say."""
    return sha256(_canonical(of).encode()).hexdigest()[:16]


def _with_settings(exercise: Exercise, of: ClassSet) -> Exercise:
    changed: dict[str, Any] = {}
    if not of.hints:
        changed["hints"] = ()
    if of.minutes is not None:
        changed["minutes"] = float(of.minutes)
    if of.units != "own":
        changed["tray"] = _tray_in(exercise.tray, of.units == "inch")
    return exercise.model_copy(update=changed)


def _tray_in(tray: Tray, inch: bool) -> Tray:
    changed: dict[str, Any] = {}
    if tray.straightedge is not None:
        changed["straightedge"] = "1/64 in" if inch else "0.5 mm"
    if tray.blades:
        # Those of the exercise stay: a gap may be too narrow for the other unit's blades to prove.
        changed["blades"] = tuple(dict.fromkeys(("inch" if inch else "metric", *tray.blades)))
    return tray.model_copy(update=changed)


def _marked(exercise: Exercise) -> dict[str, Any]:
    """Parts of an exercise that are drawn and marked."""
    return exercise.model_dump(mode="json", exclude_none=True, exclude_defaults=True, exclude=_TEXTS)


def _canonical(of: ClassSet) -> str:
    said = [of.seed, of.each_their_own, of.hints, of.units, of.minutes, [_marked(e) for e in of.exercises]]
    return json.dumps(said, sort_keys=True, separators=(",", ":"))


def work_id(exercise: Exercise) -> str:
    """Sixteen hexadecimal digits, alike for exercises that draw and mark alike, whatever they say."""
    text = json.dumps(_marked(exercise), sort_keys=True, separators=(",", ":"))
    return sha256(text.encode()).hexdigest()[:16]


# ---------------------------------------------------------------------- as a code


def why_no_code(of: ClassSet) -> str:
    """One sentence: why a set cannot travel as a code and needs its file; "" where it can."""
    if len(of.exercises) > MAX_IN_CODE:
        return tr("A code holds {most} exercises at most; this set needs its file", most=MAX_IN_CODE)
    if _shipped_as(of.exercises) is None:
        own = next((e.name for e in of.exercises if _shipped_as((e,)) is None), of.exercises[0].name)
        return tr("“{exercise}” is not a shipped exercise; this set needs its file", exercise=own)
    return ""


def code_of(of: ClassSet) -> str:
    """A set as a code. Raises SpecError where it needs its file."""
    shipped = _shipped_as(of.exercises)
    if shipped is None or len(of.exercises) > MAX_IN_CODE:
        raise SpecError(why_no_code(of))
    bits = Bits()
    bits.put(_VERSION, 2)
    bits.put(of.each_their_own, 1)
    bits.put(of.hints, 1)
    bits.put(UNITS.index(of.units), 2)
    bits.put(of.minutes or 0, _MINUTES_BITS)
    bits.put(len(of.exercises), _COUNT_BITS)
    bits.put(of.seed, _SEED_BITS)
    bits.put(_content([known_by for _, known_by in shipped]), _CONTENT_BITS)
    for name, _ in shipped:
        bits.put(_number_of(name), _EXERCISE_BITS)
    return checked(bits.symbols())


def set_of_code(text: str) -> ClassSet:
    """The set that a code names. Raises SpecError, in one sentence, for one mistyped, newer, or of exercises that
    this program does not have or has otherwise."""
    symbols = symbols_of(text)
    bits = Bits(symbols)
    version = bits.take(2)
    if version > _VERSION:
        raise SpecError(tr("This code was made by a newer magview, which is needed to use it"))
    wanted = SpecError(tr("This is no class code: it looks like KAAJ-R6D3-BJQA-VP7J"))
    if version != _VERSION or len(symbols) < _HEAD_SYMBOLS:
        raise wanted
    own, hints, units, minutes, count = (bits.take(n) for n in (1, 1, 2, _MINUTES_BITS, _COUNT_BITS))
    if units >= len(UNITS) or not count or len(symbols) != _HEAD_SYMBOLS + count * _EXERCISE_BITS // 5:
        raise wanted
    seed, content = bits.take(_SEED_BITS), bits.take(_CONTENT_BITS)
    known = {_number_of(name): name for edition in _editions() for name in edition}
    names = [known.get(bits.take(_EXERCISE_BITS)) for _ in range(count)]
    if None in names:
        raise SpecError(
            tr("Exercise {number} of this code is not shipped with this magview; both sides need the same version",
               number=names.index(None) + 1)
        )  # fmt: skip
    for edition in _editions():
        revisions = [edition.get(str(name)) for name in names]
        if None not in revisions and _content([r.work_id for r in revisions if r]) == content:
            exercises = tuple(r.exercise for r in revisions if r)
            break
    else:
        raise SpecError(
            tr("This code was made with another version of its exercises; both sides need the same magview")
        )
    return ClassSet(
        seed=seed,
        each_their_own=bool(own),
        hints=bool(hints),
        units=UNITS[units],
        minutes=minutes or None,
        exercises=exercises,
    )


def _shipped_as(exercises: tuple[Exercise, ...]) -> list[tuple[str, str]] | None:
    """Short name and work id of each in the latest edition that has them all; None where none has."""
    for edition in _editions():
        found = [
            next(((name, r.work_id) for name, r in edition.items() if r.exercise == exercise), None)
            for exercise in exercises
        ]
        if None not in found:
            return [f for f in found if f]
    return None


def _number_of(name: str) -> int:
    """Id of a shipped exercise in a code: a hash, so that one more shipped leaves old codes as they were."""
    return int.from_bytes(sha256(f"magview-exercise/{name}".encode()).digest()[:2], "big") >> 16 - _EXERCISE_BITS


def _content(work_ids: Sequence[str]) -> int:
    return int.from_bytes(sha256("/".join(work_ids).encode()).digest()[:2], "big") >> 16 - _CONTENT_BITS


@dataclass(frozen=True)
class Revision:
    """A shipped exercise as some edition of the library had it, and what that edition's codes know it by."""

    exercise: Exercise
    work_id: str


@cache
def _editions() -> tuple[dict[str, Revision], ...]:
    """The shipped exercises by short name: as they are now, then as earlier editions had them, latest first.

    ``exercises/old/EDITION/NAME.WORK_ID.json`` is the last edition's text of an exercise that was changed after it;
    an exercise without a file in an edition was then as the next one has it. The work id stands in the name, for a
    field that came later may say in the file what silence meant before.
    """
    editions = [{name: Revision(e, work_id(e)) for name in shipped_exercises() for e in [find_exercise(name)]}]
    folders = [folder for folder in (resources() / "exercises" / "old").glob("*") if folder.name.isdigit()]
    for folder in sorted(folders, key=lambda f: int(f.name), reverse=True):
        old = {}
        for path in sorted(folder.glob("*.json")):
            name, known_by = path.stem.rsplit(".", 1)
            old[name] = Revision(read_exercise(path), known_by)
        editions.append({**editions[-1], **old})
    return tuple(editions)


# ---------------------------------------------------------------------- as a file


def read_set(path: Path) -> ClassSet:
    """Read a ``magview-class/1`` file. An exercise is embedded, the short name of a shipped one, or a path sought
    beside it. Raises SpecError with one sentence for anything amiss."""
    data = read_json(path)
    if isinstance(data, dict) and isinstance(data.get("exercises"), tuple):
        data = {**data, "exercises": tuple(_entry(e, path) for e in data["exercises"])}
    return validate(ClassSet, data, name_of(path))


def _entry(entry: Any, path: Path) -> Any:
    if not isinstance(entry, str):
        return with_parts(entry, path)
    try:
        return find_exercise(entry) if entry in shipped_exercises() else read_exercise(path.parent / entry)
    except SpecError as error:
        raise SpecError(f"{path.name}: {error}") from error


def write_set(path: Path, of: ClassSet) -> None:
    """Write a set's file atomically. Raises SpecError; the old file then stands."""
    write_text(path, dump_json(of))


def open_set(text: str) -> ClassSet:
    """A set by its code or by the path of its file. Raises SpecError."""
    path = Path(text.strip())
    if path == STANDARD or is_ours(path.name) or path.is_file():
        return read_set(path)
    return set_of_code(text)


assert len(ALPHABET) == 32 and _HEAD_SYMBOLS * 5 == 6 + _MINUTES_BITS + _COUNT_BITS + _SEED_BITS + _CONTENT_BITS
assert _HEAD_SYMBOLS + MAX_IN_CODE * _EXERCISE_BITS // 5 + CHECKS <= MOST
