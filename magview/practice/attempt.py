"""An attempt as a value: exercise, seed, and everything that was done, with its time. The same events give the
same states; nothing else is kept.

``magview-attempt/1`` holds the exercise itself, so that an attempt can be marked where its exercise is not.
"""

from __future__ import annotations

import json
import math
import re
from collections.abc import Callable
from dataclasses import dataclass, fields
from functools import cache, partial
from itertools import pairwise
from pathlib import Path
from typing import Any

from pydantic import TypeAdapter, ValidationError

from magview import __version__
from magview.practice import actions as do
from magview.practice.apply import apply
from magview.practice.exercise import Exercise
from magview.practice.faults import begin
from magview.practice.instruments import light
from magview.practice.state import Practice
from magview.spec.base import SpecError
from magview.spec.files import dump_json, read_json, validate, write_text
from magview.spec.language import any_of, marked, tr

FORMAT = "magview-attempt/1"
MAX_EVENTS = 10_000
"""A few hours of work; turning of one kind in one gesture is one event."""

MAX_NAME = 120

RULES = 2
"""Version of the rules for acts and marks: raised whenever an attempt could replay or be marked
otherwise than before. An attempt under earlier rules is shown and never marked again."""


@dataclass(frozen=True)
class Event:
    """One act, and when it was done [s] since the attempt began."""

    at_s: float
    act: do.Act


@dataclass(frozen=True)
class Attempt:
    """An attempt: exercise, trainee and acts."""

    exercise: Exercise
    seed: int
    trainee: str = ""
    version: str = __version__
    """The program it was done with: another may see it otherwise."""
    events: tuple[Event, ...] = ()
    rules: int = RULES
    """`RULES` of the program it was begun with."""
    truth_known: bool = False
    """Whether the truth of its code had been shown where it was done: it counts as practice."""

    def states(self) -> list[Practice]:
        """Every state of the attempt: as found, and after each event. Raises SpecError where one cannot follow;
        under earlier rules the states end there instead."""
        states = [begin(self.exercise, self.seed)]
        for i, event in enumerate(self.events):
            try:
                states.append(apply(states[-1], event.act))
            except SpecError as error:
                if self.rules < RULES:
                    break
                raise SpecError(f"events[{i}]: {error}") from error
        return states

    @property
    def handed_in(self) -> bool:
        """Whether it is done."""
        return bool(self.events) and isinstance(self.events[-1].act, do.HandIn)


Listener = Callable[[Practice, Practice], None]

_BySoMuch = do.TurnRotor | do.TurnPropeller | do.TurnPlate | do.TurnScrew | do.TurnDisc


class Session:
    """An attempt under way: one way in (`send`), one way out (`subscribe`). There is no undo: hands have none."""

    def __init__(self, exercise: Exercise, seed: int, trainee: str = "", truth_known: bool = False) -> None:
        self._truth_known = truth_known
        self._states = [begin(exercise, seed)]
        self._events: list[Event] = []
        self._gesture: object = None
        self._listeners: list[Listener] = []
        self._trainee = one_line(trainee)
        self._rules = RULES

    @classmethod
    def resume(cls, attempt: Attempt) -> Session:
        """Go on with an attempt that was kept. Raises SpecError where its events cannot follow one another."""
        session = cls(attempt.exercise, attempt.seed, attempt.trainee, attempt.truth_known)
        session._states, session._rules = attempt.states(), attempt.rules
        session._events = list(attempt.events[: len(session._states) - 1])
        return session

    @property
    def practice(self) -> Practice:
        """The present state."""
        return self._states[-1]

    @property
    def states(self) -> tuple[Practice, ...]:
        """Every state so far, as found first."""
        return tuple(self._states)

    @property
    def attempt(self) -> Attempt:
        """The attempt so far, to keep, mark or replay."""
        first = self._states[0]
        return Attempt(
            first.exercise,
            first.seed,
            self._trainee,
            __version__,
            tuple(self._events),
            self._rules,
            self._truth_known,
        )

    def subscribe(self, listener: Listener) -> None:
        """Have `listener(new, old)` called after each act."""
        self._listeners.append(listener)

    def send(self, act: do.Act, at_s: float, gesture: object = None) -> Practice:
        """Do something at a time [s] since the beginning. Raises SpecError for what cannot be done; nothing then is.

        Turning of one kind and way sent with the same gesture (a drag) is one event, as long as the lamp shows
        no change.
        """
        last_s = self._events[-1].at_s if self._events else 0.0
        if not math.isfinite(at_s):
            raise SpecError(tr("the time is {at_s}; it must be a number of seconds", at_s=at_s))
        at_s = max(at_s, last_s)
        if len(self._events) >= MAX_EVENTS - 1 and not isinstance(act, do.HandIn):
            raise SpecError(tr("the record is full at {most} acts: hand in", most=MAX_EVENTS))
        old = self._states[-1]
        new = apply(old, act)
        if not self._merge(act, new, gesture):
            self._events.append(Event(at_s, act))
            self._states.append(new)
        self._gesture = gesture
        for listener in self._listeners:
            listener(self._states[-1], old)
        return self._states[-1]

    def _merge(self, act: do.Act, new: Practice, gesture: object) -> bool:
        if gesture is None or gesture != self._gesture or len(self._states) < 2:
            return False
        event, before = self._events[-1], self._states[-2]
        last = event.act
        if not (isinstance(act, _BySoMuch) and isinstance(last, _BySoMuch) and type(last) is type(act)):
            return False
        if last.by_deg * act.by_deg < 0 or not light(before) == light(self._states[-1]) == light(new):
            return False
        try:
            whole = type(last)(last.by_deg + act.by_deg)
            merged = apply(before, whole)
        except SpecError:
            return False
        self._events[-1], self._states[-1] = Event(event.at_s, whole), merged
        return True


# ---------------------------------------------------------------------- as text


def name_of(act: type[do.Act]) -> str:
    """Name of a kind of act in a file: TurnRotor is "turn-rotor"."""
    return re.sub(r"(?<!^)([A-Z])", r"-\1", act.__name__).lower()


_KINDS: dict[str, type[Any]] = {name_of(kind): kind for kind in do.ACTS}


@cache
def _checker(name: str) -> TypeAdapter[Any]:
    return TypeAdapter(_KINDS[name])


def dump_attempt(attempt: Attempt) -> str:
    """The attempt as the text of a file, to the last bit."""
    data = {
        "format": FORMAT,
        "exercise": json.loads(dump_json(attempt.exercise)),
        "seed": attempt.seed,
        "trainee": attempt.trainee,
        "version": attempt.version,
        "rules": attempt.rules,
        **({"truth_known": True} if attempt.truth_known else {}),
        "events": [_dump_event(e) for e in attempt.events],
    }
    return json.dumps(data, ensure_ascii=False, allow_nan=False) + "\n"


def write_attempt(path: Path, attempt: Attempt) -> None:
    """Write an attempt's file atomically. Raises SpecError; the old file then stands."""
    write_text(path, dump_attempt(attempt))


def read_attempt(path: Path) -> Attempt:
    """Read a ``magview-attempt/1`` file. Raises SpecError, in one sentence, for anything amiss: also for events
    that cannot follow one another."""
    return attempt_of(read_json(path), path.name)


def attempt_of(data: Any, source: str) -> Attempt:
    """An attempt from parsed JSON (lists as tuples). Raises SpecError naming `source`."""
    attempt = unplayed_attempt(data, source)
    try:
        attempt.states()
    except SpecError as error:
        raise SpecError(f"{source}: {error}") from error
    return attempt


def unplayed_attempt(data: Any, source: str, exercise_of: Callable[[Any, str], Exercise] | None = None) -> Attempt:
    """An attempt from parsed JSON whose events have not been seen to follow one another: for those who replay it
    anyway. `exercise_of` reads the exercise, where many attempts share one. Raises SpecError naming `source`."""
    if not isinstance(data, dict):
        raise SpecError(tr("{source}: holds no attempt; it must be one JSON object in braces", source=source))
    if data.get("format") != FORMAT:
        newer = re.fullmatch(r"magview-attempt/(\d{1,6})", str(data.get("format")))
        places = {"source": source, "found": _show(data.get("format")), "wanted": FORMAT}
        if newer and int(newer[1]) > 1:
            raise SpecError(
                tr(
                    "{source}: format is {found} (a newer magview wrote it; it is left as it was); "
                    'it must be "{wanted}"',
                    **places,
                )
            )
        raise SpecError(tr('{source}: format is {found}; it must be "{wanted}"', **places))
    wanted = {"format", "exercise", "seed", "trainee", "version", "events"}
    for name in sorted(wanted ^ (set(data) - {"rules", "truth_known"})):
        words = (
            marked("{source}: {name} is missing")
            if name in wanted
            else marked("{source}: {name} is not a known name")
        )
        raise SpecError(tr(words, source=source, name=str(name)[:60]))
    for name in ("trainee", "version"):
        if not isinstance(data[name], str) or len(data[name]) > MAX_NAME:
            raise SpecError(
                tr(
                    "{source}: {name} is {found}; it must be text of at most {most} characters",
                    source=source,
                    name=name,
                    found=_show(data[name]),
                    most=MAX_NAME,
                )
            )
    rules = data.get("rules", 1)
    if isinstance(rules, bool) or not isinstance(rules, int) or not 1 <= rules <= RULES:
        raise SpecError(
            tr(
                "{source}: rules is {found}; it must be a whole number from 1 to {most}, which this program knows",
                source=source,
                found=_show(rules),
                most=RULES,
            )
        )
    known = data.get("truth_known", False)
    if not isinstance(known, bool):
        raise SpecError(
            tr("{source}: truth_known is {found}; it must be true or false", source=source, found=_show(known))
        )
    events = data["events"]
    if not isinstance(events, tuple) or len(events) > MAX_EVENTS:
        raise SpecError(tr("{source}: events must be a list of at most {most}", source=source, most=MAX_EVENTS))
    read_exercise = exercise_of or partial(validate, Exercise)
    exercise = read_exercise(data["exercise"], ": ".join((source, "exercise")))
    read = tuple(_event(e, f"{source}: events[{i}]") for i, e in enumerate(events))
    for i, (before, after) in enumerate(pairwise(read)):
        if after.at_s < before.at_s:
            raise SpecError(
                tr(
                    "{source}: events[{i}].at_s is {at_s}; time does not run backwards",
                    source=source,
                    i=i + 1,
                    at_s=after.at_s,
                )
            )
    return Attempt(exercise, data["seed"], one_line(data["trainee"]), one_line(data["version"]), read, rules, known)


def one_line(text: str) -> str:
    """A name as one printable line."""
    return "".join(c if c.isprintable() else " " for c in text)[:MAX_NAME].strip()


def dump_act(act: do.Act) -> dict[str, Any]:
    """An act as a file has it."""
    return {key: value for key, value in _dump_event(Event(0.0, act)).items() if key != "at_s"}


def read_act(data: dict[str, Any]) -> do.Act:
    """An act out of a file. Raises SpecError."""
    return _event({**data, "at_s": 0.0}, "deeds").act


def _dump_event(event: Event) -> dict[str, Any]:
    given = {f.name: (getattr(event.act, f.name), str(f.type)) for f in fields(event.act)}
    values = {name: _plain(value, kind) for name, (value, kind) in given.items() if value is not None}
    return {"at_s": float(event.at_s), "do": name_of(type(event.act)), **values}


def _plain(value: Any, kind: str) -> Any:
    """A field as JSON has it; a whole number given for a real one is written as it will be read."""
    if isinstance(value, tuple):
        return [float(v) for v in value]
    return float(value) if kind.startswith("float") else value


def _event(data: Any, where: str) -> Event:
    if not isinstance(data, dict):
        raise SpecError(tr("{where} must be an object in braces", where=where))
    rest = dict(data)
    at_s, name = rest.pop("at_s", None), rest.pop("do", None)
    if isinstance(at_s, bool) or not isinstance(at_s, int | float) or not 0.0 <= at_s < 1e9:
        raise SpecError(
            tr("{where}.at_s is {found}; it must be a number of seconds from 0 on", where=where, found=_show(at_s))
        )
    kind = _KINDS.get(name) if isinstance(name, str) else None
    if kind is None:
        raise SpecError(
            tr("{where}.do is {found}, which is no act this program knows", where=where, found=_show(name))
        )
    known = {f.name: f for f in fields(kind)}
    for field in rest:
        if field not in known:
            raise SpecError(
                tr("{where}.{field} is not a known name of {name}", where=where, field=str(field)[:60], name=name)
            )
    try:
        # As JSON, where alone a strict reader takes objects and lists for what they stand for.
        return Event(float(at_s), _checker(str(name)).validate_json(json.dumps(rest), strict=True))
    except ValidationError as error:
        first = error.errors()[0]
        field = ".".join(str(p) for p in first["loc"] if p in known) or "it"
        if first["type"] in ("missing", "missing_argument"):
            raise SpecError(tr("{where}.{field} is missing", where=where, field=field)) from error
        words, places = _allowed(kind, field)
        raise SpecError(tr(words, where=where, field=field, found=_show(rest.get(field)), **places)) from error


def _allowed(kind: type[do.Act], field: str) -> tuple[str, dict[str, str]]:
    """The sentence for a field that holds something else, not yet read out, and its own places."""
    hint = str(next((f.type for f in fields(kind) if f.name == field), "")).replace("'", '"')
    if hint.startswith("Literal["):
        allowed = any_of([p.strip() for p in hint[8:-1].split(",")])
        return marked("{where}.{field} is {found}; it must be {allowed}"), {"allowed": allowed}
    if "float" in hint and hint not in _HINTS:
        return marked("{where}.{field} is {found}; it must be a number"), {}
    return _HINTS.get(hint, marked("{where}.{field} is {found}; it must be what the act takes")), {}


_HINTS = {
    "bool": marked("{where}.{field} is {found}; it must be true or false"),
    "int": marked("{where}.{field} is {found}; it must be a whole number"),
    "str": marked("{where}.{field} is {found}; it must be text"),
    "tuple[float, ...]": marked("{where}.{field} is {found}; it must be a list"),
}


def _show(value: Any) -> str:
    text = repr(value) if not isinstance(value, str) else f'"{value}"'
    return text if len(text) <= 60 else f"{text[:57]}…"
