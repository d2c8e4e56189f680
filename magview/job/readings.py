"""Every reading of a sheet as one list: what tables, reports, CSV and JSON are made of."""

from __future__ import annotations

import json
from collections.abc import Iterator
from dataclasses import asdict, dataclass, replace
from enum import StrEnum
from typing import Any

from magview import __version__
from magview.job import judge, status
from magview.job.checklists import Stage, checks, is_check
from magview.job.danger import dangers
from magview.job.derived import (
    dead_centre_deg,
    disc_zero_deg,
    drop_difference_rpm,
    link_rod_deg,
    timing_difference_deg,
)
from magview.job.parts import SPEED, Sure, Uncertainty, title_in
from magview.job.read_with import read_by
from magview.job.requirements import earlier_rules
from magview.job.sheet import STAGES, Job, stage_of, title_of
from magview.job.words import CHANCE, FACTOR, digits_for, limits_words, shown
from magview.spec import tables
from magview.spec.base import Model
from magview.spec.fields import Quantity, Sign, about
from magview.spec.language import in_english, inside, marked, tr
from magview.spec.magneto import Rotation

_OF_THE_STAGE = frozenset(Stage.model_fields)


class Judged(StrEnum):
    """Verdicts on a reading, in the words of tables of readings; `tr` translates them."""

    NOT = ""
    NO_LIMIT = marked("no limit given, not judged")
    OUT_OF_DATE = marked("OUT OF DATE, NOT JUDGED")
    IN_LIMITS = marked("in limits")
    OUT_OF_LIMITS = marked("OUT OF LIMITS")
    FOUND_OUT_OF_LIMITS = marked("found out of limits")
    AS_IT_MUST_BE = marked("as it must be")
    NOT_AS_IT_MUST_BE = marked("NOT AS IT MUST BE")

    @property
    def good(self) -> bool:
        """Whether the reading is as it should be."""
        return self in (Judged.IN_LIMITS, Judged.AS_IT_MUST_BE)

    @property
    def bad(self) -> bool:
        """Whether the work as left fails."""
        return self in (Judged.OUT_OF_LIMITS, Judged.NOT_AS_IT_MUST_BE, Judged.OUT_OF_DATE)

    @property
    def failed(self) -> bool:
        """Whether the reading fails, as found or as left."""
        return self.bad or self is Judged.FOUND_OUT_OF_LIMITS


@dataclass(frozen=True)
class ReadingRow:
    """One reading. Numbers at full precision in the field's own unit; `shown` is for people."""

    stage: str
    field: str
    label: str
    value: float | int | bool | str | None
    """None of a check that nobody has answered: its box is shown, and empty."""
    unit: str
    low: float | None
    high: float | None
    verdict: Judged
    shown: str
    limits_shown: str
    judged_value: float | None = None
    """The value judged where it is not the reading itself: the disc's reading, its zero corrected."""
    read_by: str = ""
    """Names of the instruments that it was taken with."""


def rows(job: Job) -> list[ReadingRow]:
    """Every reading that was taken, and what follows from readings, in the sheet's order."""
    judged: _Judged = {(v.stage, v.field): v for v in judge.verdicts(job)}
    judged |= dict.fromkeys(judge.unjudged(job), Judged.NO_LIMIT)
    judged |= dict.fromkeys(judge.outdated(job), Judged.OUT_OF_DATE)
    return [row for name in STAGES for row in _of_stage(job, name, judged)]


_Judged = dict[tuple[str, str], judge.Verdict | Judged]
_UNITS = {"°": "deg", "k": "", "%": ""}
"""Units as tables for programs write them, where they do it in another way."""


@dataclass(frozen=True)
class _Taken:
    """A reading as it was taken, or follows from others."""

    field: str
    label: str
    value: Any
    quantity: Quantity
    choices: tuple[tuple[Any, str], ...] = ()


def _of_stage(job: Job, name: str, judged: _Judged) -> Iterator[ReadingRow]:
    stage, rotation = stage_of(job, name), rotation_of(job)
    not_asked = {f for f, info in type(stage).model_fields.items() if is_check(info)} - set(checks(stage))
    for taken in (*_walk(stage, ""), *_derived(job, name)):
        if taken.value is not None or taken.field not in not_asked:
            row = _row(name, taken, judged.get((name, taken.field)), rotation)
            yield replace(row, read_by=read_by(job, name, taken.field))


def rotation_of(job: Job) -> Rotation | None:
    """Rotation of the magneto, seen from the drive end; None where the sheet does not say which magneto it is."""
    return None if job.described is None else job.described.rotation


def label_of(job: Job, stage: str, field: str) -> str:
    """The title of a reading that was taken."""
    return next(row.label for row in rows(job) if (row.stage, row.field) == (stage, field))


def unjudged_words(job: Job) -> str:
    """A sentence on the readings as left that have no limit; "" where there are none."""
    named: dict[str, list[str]] = {}
    for stage, field in judge.unjudged(job):
        if stage != "as_found" and field != "reads_btdc_deg":
            named.setdefault(stage, []).append(inside(label_of(job, stage, field)))
    what = "; ".join(f"{inside(title_of(stage))}: {', '.join(fields)}" for stage, fields in named.items())
    told = [tr("Not judged, for no limit was given: {what}.", what=what)] if what else []
    dropped = judge.drops(job)
    if dropped and job.limits.drop_low_rpm is None:
        told.append(tr("No smallest drop was given: only a drop of nothing was looked for."))
    return " ".join(told)


def _derived(job: Job, name: str) -> Iterator[_Taken]:
    crank, signed = Quantity("°", "crank"), Quantity("°", "crank", Sign.EITHER)
    found: tuple[_Taken, ...] = ()
    match name:
        case "dead_centre":
            timed = 1 if job.installation is None else job.installation.engine.timing_cylinder
            centre = tr("Disc at true top dead centre of No. {cylinder}", cylinder=timed)
            rod = tr("Of this, correction for the link rod of No. {cylinder}", cylinder=timed)
            added = tr("Added to every later reading of the disc")
            found = (
                _Taken("true_centre_deg", centre, dead_centre_deg(job), crank),
                _Taken("link_rod_deg", rod, link_rod_deg(job), crank),
                _Taken("disc_zero_deg", added, disc_zero_deg(job) or None, signed),
            )
        case "synchronising":
            words = tr("Left error less right error")
            found = (_Taken("difference_deg", words, timing_difference_deg(job), signed),)
        case "ground_run":
            words = tr("Difference of the drops")
            found = (_Taken("drop_difference_rpm", words, drop_difference_rpm(job), SPEED),)
    return (taken for taken in found if taken.value is not None)


def _walk(model: Model, where: str) -> Iterator[_Taken]:
    for field, info in type(model).model_fields.items():
        value, label, known = getattr(model, field), title_in(info, field), about(type(model), field)
        if isinstance(model, Stage) and field in _OF_THE_STAGE:
            continue
        if isinstance(value, Uncertainty):
            for quantity, told in type(value).model_fields.items():
                sure = getattr(value, quantity)
                if sure is not None:
                    of = about(type(value), quantity).quantity
                    yield from _sure(f"{where}{field}.{quantity}", title_in(told, quantity), sure, of)
        elif isinstance(value, tuple):
            for i, item in enumerate(value):
                for taken in _walk(item, f"{where}{field}[{i}]."):
                    words = (
                        marked("Trial {number}: {reading}")
                        if field == "trials"
                        else marked("Lobe {number}: {reading}")
                    )
                    yield replace(taken, label=tr(words, number=i + 1, reading=inside(taken.label)))
        elif (value is not None or is_check(info)) and value != "":
            yield _Taken(f"{where}{field}", label, value, known.quantity, known.choices)


def _sure(place: str, label: str, sure: Sure, of: Quantity) -> Iterator[_Taken]:
    unit, spread = _UNITS.get(of.unit, of.unit), Quantity(of.unit, of.of)
    value = spread if of.sign is Sign.BEFORE_TOP else of
    yield _Taken(f"{place}.value_{unit}", tr("{label}: best estimate", label=label), sure.value, value)
    words = tr("{label}: expanded uncertainty", label=label)
    yield _Taken(f"{place}.expanded_uncertainty_{unit}", words, sure.expanded_uncertainty, spread)
    words = tr("{label}: coverage factor", label=label)
    yield _Taken(f"{place}.coverage_factor", words, sure.coverage_factor, FACTOR)
    words = tr("{label}: probability in limits", label=label)
    yield _Taken(f"{place}.probability_in_limits", words, sure.probability_in_limits, CHANCE)


def _row(stage: str, taken: _Taken, found: judge.Verdict | Judged | None, rotation: Rotation | None) -> ReadingRow:
    value, of = taken.value, taken.quantity
    verdict = found if isinstance(found, judge.Verdict) else None
    low, high = (None, None) if verdict is None else (verdict.low, verdict.high)
    words = found if isinstance(found, Judged) else judged_words(verdict)
    digits = digits_for(value, low, high)
    choice = dict(taken.choices).get(value) if isinstance(value, str) else None
    told, counted = shown(of, value, digits, rotation) if choice is None else tr(choice), None
    if verdict is not None and verdict.wanted is None and isinstance(verdict.value, float) and verdict.value != value:
        counted = verdict.value
        told = tr("{read}; {true} by true top dead centre", read=told, true=shown(of, counted, digits))
    drop = taken.field in ("drop_left_rpm", "drop_right_rpm")
    limits = limits_words(of, low, high, digits, above_nothing=drop) if verdict is not None else ""
    unit = _UNITS.get(of.unit, of.unit)
    return ReadingRow(stage, taken.field, taken.label, value, unit, low, high, words, told, limits, counted)


def judged_words(verdict: judge.Verdict | None) -> Judged:
    """A verdict as it is written; what was found is only noted."""
    if verdict is None:
        return Judged.NOT
    if verdict.wanted is not None:
        return Judged.AS_IT_MUST_BE if verdict.ok else Judged.NOT_AS_IT_MUST_BE
    if verdict.ok:
        return Judged.IN_LIMITS
    return Judged.OUT_OF_LIMITS if verdict.as_left else Judged.FOUND_OUT_OF_LIMITS


# ---------------------------------------------------------------------- files


def csv_text(job: Job) -> str:
    """All readings as comma-separated values: a line each, the unit in its own column."""
    with in_english():
        notes = [("", "note", words, "", "", "", "", "NOTE", "") for words in status.earlier(job)]
        warnings = [
            (found.stage, "warning", status.danger_words(found), "", "", "", "", "WARNING", "")
            for found in dangers(job)
        ]
        read = [
            (r.stage, r.field, r.label, r.value, r.unit, r.low, r.high, r.verdict, r.judged_value) for r in rows(job)
        ]
    head = ("stage", "field", "reading", "value", "unit", "low", "high", "verdict", "judged_value")
    return tables.csv_text([head, *notes, *warnings, *read])


def json_text(job: Job) -> str:
    """All readings with limits and verdicts, and how far the sheet has come, as JSON."""
    return json.dumps(as_plain(job), indent=2, ensure_ascii=False, allow_nan=False) + "\n"


def as_plain(job: Job) -> dict[str, Any]:
    """The readings that `json_text` writes, as plain values."""
    with in_english():
        return _as_plain(job)


def _as_plain(job: Job) -> dict[str, Any]:
    found = judge.progress(job)
    return {
        "program": f"magview {__version__}",
        "title": job.title,
        "day": job.day,
        "aircraft": job.aircraft.model_dump(mode="json"),
        "engine": job.engine.model_dump(mode="json"),
        "magneto": job.magneto.model_dump(mode="json"),
        "stages": {
            name: {"title": title_of(name), "state": stage_of(job, name).state, "reason": stage_of(job, name).reason}
            for name in STAGES
        },
        "readings": [
            {k: v for k, v in asdict(row).items() if k not in ("shown", "limits_shown")} for row in rows(job)
        ],
        "signed_under_earlier_rules": list(earlier_rules(job)),
        "dangers": list(status.dangers(job)),
        "open": list(found.open),
        "missing": list(found.missing),
        "doubtful": list(found.doubtful),
        "signature_holds": found.signature,
        "finished": found.finished,
        "passed": found.passed,
    }
