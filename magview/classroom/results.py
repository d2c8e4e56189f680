"""An attempt from a folder, marked: everything tables and plots need, free of language, and small enough to keep.

What is recomputed from the acts: marks, dangers, faults found and missed, whether exercise and seed are the set's.
What is believed from the file: who it was, when it was handed in, and the times at which acts were done.
"""

from __future__ import annotations

import json
import re
from collections.abc import Callable
from dataclasses import dataclass, replace
from enum import StrEnum
from hashlib import sha256
from typing import Any

from pydantic import TypeAdapter

from magview.bench.state import Side
from magview.classroom.handed import FORMAT, handed_in_of
from magview.classroom.key import faults_of
from magview.classroom.names import normal
from magview.classroom.sets import work_id
from magview.practice.actions import HandIn
from magview.practice.attempt import RULES, Attempt, Event, unplayed_attempt
from magview.practice.evidence import evidence
from magview.practice.exercise import Exercise
from magview.practice.exercise_parts import FaultKind, GoalKind, Written
from magview.practice.marking import MarkingRow, mark_evidence
from magview.spec.base import SpecError
from magview.spec.files import validate
from magview.spec.language import tr


class State(StrEnum):
    """Result of a file: marked, or why it was passed over."""

    MARKED = "marked"
    EARLIER = "earlier"
    """Made with an earlier version."""
    NEWER = "newer"
    """Made with a newer version."""
    UNFINISHED = "unfinished"
    DAMAGED = "damaged"


class Error(StrEnum):
    """Error in a step."""

    WRONG = "wrong"
    NEAR = "near"
    """Nearly right."""
    UNPROVED = "unproved"
    """Right, not proved by instruments."""


@dataclass(frozen=True)
class StepResult:
    """One row of the rubric."""

    goal: GoalKind
    reading: Written | None
    side: Side | None
    """Side of the magneto, where there are two."""
    weight: float
    got: float
    error: Error | None
    """Error in the step; None for full marks."""

    @property
    def name(self) -> str:
        """Key that distinguishes it from the other steps of its exercise."""
        return "/".join(part for part in (self.goal, self.reading, self.side) if part)


@dataclass(frozen=True)
class FaultFound:
    """A fault that was there, and whether it was dealt with."""

    kind: FaultKind
    side: Side | None
    found: bool | None
    """Put right, or written down rightly; None where the exercise asks for neither, or it was drawn so small that
    all was in order as found."""


@dataclass(frozen=True)
class Danger:
    """A dangerous act: its kind as in `practice.evidence`, and how often."""

    kind: str
    times: int


@dataclass(frozen=True)
class Result:
    """One file of the folder."""

    file: str
    digest: str
    """SHA-256 of its bytes."""
    state: State
    why: str = ""
    """One sentence for a file that was passed over."""
    pupil: str = ""
    key: str = ""
    """The pupil's normalised name."""
    set: str = ""
    """The set's identity; "" for an attempt saved by hand."""
    number: int = 0
    exercise: str = ""
    work: str = ""
    """Id of the work drawn and marked, `sets.work_id`."""
    seed: int = 0
    at: str = ""
    """Time of handing in, ISO 8601."""
    version: str = ""
    percent: float = 0.0
    passed: bool = False
    seconds: float = 0.0
    """From the first act to the last, by the pupil's clock."""
    acts: int = 0
    acts_id: str = ""
    """Two attempts with the same are one, whoever's name is on them."""
    steps: tuple[StepResult, ...] = ()
    faults: tuple[FaultFound, ...] = ()
    dangers: tuple[Danger, ...] = ()


_ADAPTER: TypeAdapter[Result] = TypeAdapter(Result)


def dump_result(result: Result) -> str:
    """A result as one line of JSON."""
    return _ADAPTER.dump_json(result, exclude_defaults=True).decode()


def load_result(text: str | bytes) -> Result:
    """A result from its line. Raises ValueError for one that is damaged."""
    return _ADAPTER.validate_json(text)


# ---------------------------------------------------------------------- marking


def attempt_in(data: Any, source: str) -> Attempt:
    """The attempt in a file's parsed JSON, handed in with a class or saved by hand; its events are not replayed.
    Raises SpecError."""
    return _parts(data, source)[0]


def result_of(raw: bytes, file: str, parse: Callable[[bytes, str], Any]) -> Result:
    """Mark a file's bytes. Never raises for what a file may hold: what is amiss is in the result."""
    digest = sha256(raw).hexdigest()
    data = None
    try:
        data = parse(raw, file)
        attempt, head = _parts(data, file)
        if not attempt.handed_in:
            return replace(
                _headed(attempt, head, file, digest),
                state=State.UNFINISHED,
                why=tr("{file}: is not handed in yet", file=file),
            )
        headed = _headed(attempt, head, file, digest)
        if attempt.rules < RULES:
            return replace(
                headed,
                state=State.EARLIER,
                why=tr("{file}: made with an earlier version, not marked again", file=file),
            )
        return _marked(attempt, headed)
    except SpecError as error:
        return Result(file, digest, State.NEWER if _newer(data) else State.DAMAGED, str(error))
    except (ArithmeticError, ValueError, AssertionError, LookupError) as error:
        # Acts that no window would have sent may lead anywhere; one odd file must not stop a class.
        return Result(
            file,
            digest,
            State.DAMAGED,
            tr("{file}: cannot be marked: {reason}", file=file, reason=type(error).__name__),
        )


def _newer(data: Any) -> bool:
    """Whether a newer program wrote it: the file, or the attempt in it."""
    if not isinstance(data, dict):
        return False
    number = re.fullmatch(r"magview-(?:handed-in|attempt)/(\d{1,6})", str(data.get("format")))
    return (number is not None and int(number[1]) > 1) or _newer(data.get("attempt"))


def _parts(data: Any, source: str) -> tuple[Attempt, dict[str, Any]]:
    head: dict[str, Any] = {}
    if isinstance(data, dict) and str(data.get("format")).startswith(FORMAT.split("/")[0]):
        handed = handed_in_of(data, source)
        head = {"pupil": handed.pupil, "set": handed.set, "number": handed.number, "at": handed.handed_in_at}
        data = data["attempt"]
    return unplayed_attempt(data, source, _exercise), head


def _headed(attempt: Attempt, head: dict[str, Any], file: str, digest: str) -> Result:
    pupil = head.pop("pupil", attempt.trainee)
    acts = json.dumps([attempt.seed, [(e.at_s, repr(e.act)) for e in attempt.events]])
    return Result(
        file,
        digest,
        State.MARKED,
        pupil=pupil,
        key=normal(pupil),
        exercise=attempt.exercise.name,
        work=work_id(attempt.exercise),
        seed=attempt.seed,
        version=attempt.version,
        seconds=attempt.events[-1].at_s - attempt.events[0].at_s if attempt.events else 0.0,
        acts=len(attempt.events),
        acts_id=sha256(acts.encode("utf-8", "surrogatepass")).hexdigest()[:16],
        **head,
    )


def _marked(attempt: Attempt, result: Result) -> Result:
    found = evidence(attempt)
    marking = mark_evidence(found)
    two = attempt.exercise.both_sides
    return replace(
        result,
        percent=marking.percent,
        passed=marking.passed,
        steps=tuple(_step(row, two) for row in marking.rows),
        faults=tuple(_found(attempt.exercise, attempt.seed, marking.rows)),
        dangers=tuple(Danger(d.kind, d.times) for d in marking.dangers),
    )


def _step(row: MarkingRow, two: bool) -> StepResult:
    assert row.goal is not None and row.judged is not None
    error: Error | None = None
    if not row.full:
        error = Error.UNPROVED if row.judged.right else Error.NEAR if row.judged.near else Error.WRONG
    alone = not two or row.goal.goal == "synchronised" or "disc-zero" in (row.goal.goal, row.goal.reading)
    return StepResult(row.goal.goal, row.goal.reading, None if alone else row.side, row.weight, row.got, error)


SHOWN_BY: dict[str, tuple[str, ...]] = {
    "opening": ("opening",),
    "plate": ("opening",),
    "gap": ("gap",),
    "creep": ("gap", "opening"),
    "lobe-low": ("gap",),
    "pip": ("contacts",),
    "backlash": ("timing", "firing"),
    "teeth": ("timing", "firing"),
    "disc-teeth": ("timing", "firing"),
    "vernier": ("timing", "firing"),
    "wrong-stroke": ("timing", "firing"),
    "rotor-at-neutral": ("timing", "firing"),
    "disc-zero": ("disc-zero", "timing"),
    "lead": ("lead",),
    "contacts": ("contacts",),
    "dry-felt": ("secured",),
}
"""By which goals and readings it shows that a fault was dealt with; the first that the exercise has counts."""


def _found(exercise: Exercise, seed: int, rows: tuple[MarkingRow, ...]) -> list[FaultFound]:
    two = exercise.both_sides
    idle = Attempt(exercise, seed, events=(Event(0.0, HandIn()),))
    before = mark_evidence(evidence(idle)).rows
    told = []
    for fault in faults_of(exercise, seed, sound=False):
        shown = None
        for wanted in SHOWN_BY[fault.kind]:
            about = [
                (was, now)
                for was, now in zip(before, rows, strict=True)
                if now.goal is not None
                and wanted in (now.goal.goal, now.goal.reading)
                and (now.side == fault.side or fault.kind == "disc-zero")
            ]
            # A part in order as found, small as the fault was drawn, leaves nothing to deal with.
            about = [(was, now) for was, now in about if was.judged is not None and not was.judged.right]
            if about:
                shown = any(now.judged is not None and now.judged.right for _, now in about)
                break
        told.append(FaultFound(fault.kind, fault.side if two and fault.kind != "disc-zero" else None, shown))
    return told


# ---------------------------------------------------------------------- exercises, read once for a whole class


def _exercise(data: Any, source: str) -> Exercise:
    text = json.dumps(data, sort_keys=True)
    known = _SEEN.get(text)
    if known is None:
        known = validate(Exercise, data, source)
        if len(_SEEN) >= _MAX_SEEN:
            _SEEN.clear()
        _SEEN[text] = known
    return known


_MAX_SEEN = 64
_SEEN: dict[str, Exercise] = {}
