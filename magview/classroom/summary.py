"""Summary of a class: a folder's results counted per pupil, per step, and by the commonest errors.

What counts is each pupil's latest attempt at each exercise; earlier ones and copies are listed and not counted.
"""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import datetime

from magview.classroom.names import normal
from magview.classroom.results import Error, Result, State, StepResult
from magview.classroom.sets import ClassSet, set_id, work_id
from magview.classroom.words import ERRORS, danger_words, fault_words, state_words, step_words
from magview.spec.base import SpecError
from magview.spec.language import tr
from magview.spec.tables import csv_text


@dataclass(frozen=True)
class AttemptEntry:
    """One attempt of the folder, and what there is to say about it."""

    result: Result
    counts: bool
    """Whether it is the pupil's latest at this exercise, of this set, and no copy."""
    notes: tuple[str, ...]

    @property
    def found(self) -> int:
        """Faults dealt with."""
        return sum(f.found is True for f in self.result.faults)

    @property
    def missed(self) -> int:
        """Faults asked for and not dealt with."""
        return sum(f.found is False for f in self.result.faults)


@dataclass(frozen=True)
class PupilLine:
    """One pupil over all exercises."""

    name: str
    key: str
    done: int
    passed: int
    percent: float | None
    """Mean of the attempts that count; None where there is none."""
    minutes: float
    found: int
    missed: int
    dangers: int
    weakest: str
    """The step with the smallest share of its marks, in words; "" where nothing is missing."""


@dataclass(frozen=True)
class StepLine:
    """One step of one exercise over the class."""

    exercise: str
    step: str
    count: int
    share: float
    """Mean part of its marks, 0…1."""
    wrong: int
    near: int
    unproved: int
    numbered: bool = True
    """Whether the exercise has its number in the set in front."""


@dataclass(frozen=True)
class ErrorLine:
    """Something that goes wrong, in how many of the attempts that count, and whose."""

    words: str
    count: int
    pupils: tuple[str, ...]


@dataclass(frozen=True)
class Summary:
    """A folder as an instructor looks at it."""

    entries: tuple[AttemptEntry, ...]
    pupils: tuple[PupilLine, ...]
    steps: tuple[StepLine, ...]
    errors: tuple[ErrorLine, ...]
    missing: tuple[str, ...]
    """Pupils of the list who have handed in nothing."""

    @property
    def counted(self) -> list[AttemptEntry]:
        """The attempts that count."""
        return [e for e in self.entries if e.counts]


def summarise(results: Sequence[Result], of: ClassSet | None = None) -> Summary:
    """Count a folder's results; with a set, only attempts of it count, and each is held against it."""
    marked = sorted((r for r in results if r.state is State.MARKED), key=_when)
    name = set_id(of) if of is not None else ""
    notes: dict[str, list[str]] = defaultdict(list)
    latest: dict[tuple[str, str], Result] = {}
    acts: dict[str, Result] = {}
    works: dict[int, str] = {}
    for result in marked:
        told = notes[result.file]
        first = acts.setdefault(result.acts_id, result)
        if first is not result:
            told.append(
                tr("a copy of {file}", file=first.file)
                if first.key == result.key
                else tr("the same acts, to the second, as {pupil} in {file}", pupil=first.pupil, file=first.file)
            )
        if of is not None:
            if result.set != name:
                told.append(tr("of another set") if result.set else tr("saved by hand, not handed in with a class"))
                continue
            told += _against(result, of, works)
        if first is result or first.key != result.key:
            latest[result.key, f"{result.number}/{result.work}"] = result
    counting = {r.file for r in latest.values()}
    for result in results:
        if result.why:
            notes[result.file].append(result.why)
        elif result.state is State.MARKED and result.file not in counting and not notes[result.file]:
            notes[result.file].append(tr("there is a later attempt"))
    entries = tuple(AttemptEntry(r, r.file in counting, tuple(notes[r.file])) for r in results)
    counted = [e for e in entries if e.counts]
    pupils = _pupils(counted)
    here = {p.key for p in pupils}
    missing = tuple(n for n in (of.pupils if of is not None else ()) if normal(n) not in here)
    return Summary(entries, pupils, _steps(counted), _errors(counted), missing)


def _natural(key: str) -> list[tuple[int, int | str]]:
    """Pupil 2 stands before pupil 10."""
    return [(0, int(word)) if word.isdigit() and word.isascii() else (1, word) for word in key.split()]


def _against(result: Result, of: ClassSet, works: dict[int, str]) -> list[str]:
    """Differences from the set: exercise, seed, pupils."""
    told = []
    try:
        if result.number not in works:
            works[result.number] = work_id(of.exercise(result.number))
        seed = of.seed_of(result.number, result.pupil)
    except SpecError as error:
        return [str(error)]
    if works[result.number] != result.work:
        told.append(tr("its exercise is not the set's"))
    if seed != result.seed:
        told.append(tr("its fault was not drawn for this pupil"))
    if of.pupils and result.key not in {normal(n) for n in of.pupils}:
        told.append(tr("not on the list of pupils"))
    return told


def _when(result: Result) -> tuple[float, str]:
    try:
        return datetime.fromisoformat(result.at).timestamp(), result.file
    except ValueError:
        return 0.0, result.file


def _pupils(counted: Iterable[AttemptEntry]) -> tuple[PupilLine, ...]:
    by_pupil: dict[str, list[AttemptEntry]] = defaultdict(list)
    for entry in counted:
        by_pupil[entry.result.key].append(entry)
    lines = []
    for key, entries in by_pupil.items():
        results = [e.result for e in entries]
        lines.append(
            PupilLine(
                results[-1].pupil,
                key,
                len(results),
                sum(r.passed for r in results),
                round(sum(r.percent for r in results) / len(results), 1),
                sum(r.seconds for r in results) / 60.0,
                sum(e.found for e in entries),
                sum(e.missed for e in entries),
                sum(d.times for r in results for d in r.dangers),
                _weakest(s for r in results for s in r.steps),
            )
        )
    return tuple(sorted(lines, key=lambda p: _natural(p.key)))


def _weakest(steps: Iterable[StepResult]) -> str:
    got: dict[str, float] = defaultdict(float)
    weight: dict[str, float] = defaultdict(float)
    for step in steps:
        words = step_words(step)
        got[words] += step.got
        weight[words] += step.weight
    share, words = min(((got[w] / weight[w], w) for w in weight), default=(1.0, ""))
    return words if share < 1.0 - 1e-9 else ""


def _steps(counted: Iterable[AttemptEntry]) -> tuple[StepLine, ...]:
    by_step: dict[tuple[int, str, str], list[StepResult]] = defaultdict(list)
    for entry in counted:
        result = entry.result
        for step in result.steps:
            by_step[result.number, result.exercise, step_words(step)].append(step)
    lines = []
    for (number, exercise, words), steps in sorted(by_step.items(), key=lambda item: item[0][0]):
        title = tr("{number}. {name}", number=number, name=exercise) if number else exercise
        errors = Counter(s.error for s in steps)
        share = sum(s.got / s.weight for s in steps) / len(steps)
        lines.append(
            StepLine(
                title,
                words,
                len(steps),
                share,
                errors[Error.WRONG],
                errors[Error.NEAR],
                errors[Error.UNPROVED],
                number > 0,
            )
        )
    return tuple(lines)


def _errors(counted: Iterable[AttemptEntry]) -> tuple[ErrorLine, ...]:
    who: dict[str, dict[str, str]] = defaultdict(dict)
    count: Counter[str] = Counter()
    for entry in counted:
        result = entry.result
        told = {tr(ERRORS[s.error], step=step_words(s)) for s in result.steps if s.error is not None}
        told |= {tr("DANGER: {what}", what=danger_words(d.kind)) for d in result.dangers}
        told |= {tr("missed: {fault}", fault=fault_words(f)) for f in result.faults if f.found is False}
        for words in told:
            who[words][result.key] = result.pupil
            count[words] += 1
    lines = (
        ErrorLine(words, n, tuple(who[words][k] for k in sorted(who[words], key=_natural)))
        for words, n in count.items()
    )
    return tuple(sorted(lines, key=lambda line: (-line.count, line.words)))


# ---------------------------------------------------------------------- as tables


def attempt_heads() -> list[str]:
    """The heads of `attempt_row`."""
    return [
        tr("Pupil"), tr("Exercise"), tr("Marks %"), tr("Verdict"), tr("Minutes"), tr("Acts"), tr("Found"),
        tr("Missed"), tr("Dangers"), tr("Handed in"), tr("Counts"), tr("Remarks"), tr("File"),
    ]  # fmt: skip


def when_words(at: str) -> str:
    """A time of handing in by this machine's clock, to the minute, so that it also sorts as text."""
    try:
        return f"{datetime.fromisoformat(at).astimezone():%Y-%m-%d %H:%M}"
    except (ValueError, OverflowError):
        return at


def attempt_row(entry: AttemptEntry) -> list[str | float | None]:
    """One attempt as cells; numbers as numbers, None where there is nothing to say."""
    r, marked = entry.result, entry.result.state is State.MARKED
    name = tr("{number}. {name}", number=r.number, name=r.exercise) if r.number else r.exercise
    return [
        r.pupil, name, r.percent if marked else None, state_words(r), round(r.seconds / 60.0, 1) if marked else None,
        r.acts if marked else None, entry.found if marked else None, entry.missed if marked else None,
        sum(d.times for d in r.dangers) if marked else None, when_words(r.at),
        tr("yes") if entry.counts else tr("no"), "; ".join(entry.notes), r.file,
    ]  # fmt: skip


def pupil_heads() -> list[str]:
    """The heads of `pupil_row`."""
    return [
        tr("Pupil"), tr("Marks %"), tr("Done"), tr("Passed"), tr("Minutes"), tr("Found"), tr("Missed"),
        tr("Dangers"), tr("Weakest step"),
    ]  # fmt: skip


def pupil_row(p: PupilLine) -> list[str | float | None]:
    """One pupil as cells."""
    return [p.name, p.percent, p.done, p.passed, round(p.minutes, 1), p.found, p.missed, p.dangers, p.weakest]


def step_heads() -> list[str]:
    """The heads of `step_row`."""
    return [
        tr("Exercise"), tr("Step"), tr("Marks %"), tr("Attempts"), tr("Wrong"), tr("Nearly right"),
        tr("Right, not proved"),
    ]  # fmt: skip


def step_row(s: StepLine) -> list[str | float | None]:
    """One step as cells."""
    return [s.exercise, s.step, round(100.0 * s.share, 1), s.count, s.wrong, s.near, s.unproved]


def error_heads() -> list[str]:
    """The heads of `error_row`."""
    return [tr("What goes wrong"), tr("Attempts"), tr("Pupils")]


def error_row(e: ErrorLine) -> list[str | float | None]:
    """One error as cells."""
    return [e.words, e.count, ", ".join(e.pupils)]


def summary_csv(summary: Summary) -> str:
    """Every attempt, one a row, as comma-separated values."""
    return csv_text([attempt_heads(), *(attempt_row(e) for e in summary.entries)])
