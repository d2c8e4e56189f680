"""Every reading of a sheet as one list: what tables, reports, CSV and JSON are made of."""

from __future__ import annotations

import json
from collections.abc import Iterator
from dataclasses import asdict, dataclass
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
from magview.job.parts import Sure, Uncertainty, title_in
from magview.job.requirements import earlier_rules
from magview.job.sheet import STAGES, Job, stage_of, title_of
from magview.job.words import UNITS, digits_for, limits_words, shown, unit_of
from magview.spec import tables
from magview.spec.base import Model
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
class Row:
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


def rows(job: Job) -> list[Row]:
    """Every reading that was taken, and what follows from readings, in the sheet's order."""
    judged: _Judged = {(v.stage, v.field): v for v in judge.verdicts(job)}
    judged |= dict.fromkeys(judge.unjudged(job), Judged.NO_LIMIT)
    judged |= dict.fromkeys(judge.outdated(job), Judged.OUT_OF_DATE)
    return [row for name in STAGES for row in _of_stage(job, name, judged)]


_Judged = dict[tuple[str, str], judge.Verdict | Judged]


def _of_stage(job: Job, name: str, judged: _Judged) -> Iterator[Row]:
    stage, rotation = stage_of(job, name), rotation_of(job)
    not_asked = {f for f, info in type(stage).model_fields.items() if is_check(info)} - set(checks(stage))
    for field, label, value in _walk(stage, ""):
        if value is None and field in not_asked:
            continue
        yield _row(name, field, label, value, judged.get((name, field)), rotation)
    for field, label, derived in _derived(job, name):
        if derived is not None:
            yield _row(name, field, label, derived, judged.get((name, field)), rotation)


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


def _derived(job: Job, name: str) -> tuple[tuple[str, str, float | None], ...]:
    match name:
        case "dead_centre":
            timed = 1 if job.installation is None else job.installation.engine.timing_cylinder
            return (
                (
                    "true_centre_deg",
                    tr("Disc at true top dead centre of No. {cylinder}", cylinder=timed),
                    dead_centre_deg(job),
                ),
                (
                    "link_rod_deg",
                    tr("Of this, correction for the link rod of No. {cylinder}", cylinder=timed),
                    link_rod_deg(job),
                ),
                ("disc_zero_deg", tr("Added to every later reading of the disc"), disc_zero_deg(job) or None),
            )
        case "synchronising":
            return (("difference_deg", tr("Left error less right error"), timing_difference_deg(job)),)
        case "ground_run":
            return (("drop_difference_rpm", tr("Difference of the drops"), drop_difference_rpm(job)),)
    return ()


def _walk(model: Model, where: str) -> Iterator[tuple[str, str, Any]]:
    for field, info in type(model).model_fields.items():
        value, label = getattr(model, field), title_in(info, field)
        if isinstance(model, Stage) and field in _OF_THE_STAGE:
            continue
        if isinstance(value, Uncertainty):
            for quantity, told in type(value).model_fields.items():
                sure = getattr(value, quantity)
                if sure is not None:
                    yield from _sure(f"{where}{field}.{quantity}", title_in(told, quantity), sure)
        elif isinstance(value, tuple):
            for i, item in enumerate(value):
                for inner, name, found in _walk(item, f"{where}{field}[{i}]."):
                    label = (
                        tr("Trial {number}: {reading}", number=i + 1, reading=inside(name))
                        if field == "trials"
                        else tr("Lobe {number}: {reading}", number=i + 1, reading=inside(name))
                    )
                    yield inner, label, found
        elif (value is not None or is_check(info)) and value != "":
            yield f"{where}{field}", label, value


def _sure(place: str, label: str, sure: Sure) -> Iterator[tuple[str, str, Any]]:
    unit = next(u for u in UNITS if place.endswith(u))
    yield f"{place}.value{unit}", tr("{label}: best estimate", label=label), sure.value
    words = tr("{label}: expanded uncertainty", label=label)
    yield f"{place}.expanded_uncertainty{unit}", words, sure.expanded_uncertainty
    yield f"{place}.coverage_factor", tr("{label}: coverage factor", label=label), sure.coverage_factor
    words = tr("{label}: probability in limits", label=label)
    yield f"{place}.probability_in_limits", words, sure.probability_in_limits


def _row(
    stage: str,
    field: str,
    label: str,
    value: Any,
    found: judge.Verdict | Judged | None,
    rotation: Rotation | None,
) -> Row:
    verdict = found if isinstance(found, judge.Verdict) else None
    low, high = (None, None) if verdict is None else (verdict.low, verdict.high)
    words = found if isinstance(found, Judged) else judged_words(verdict)
    digits = digits_for(value, low, high)
    told, counted = shown(field, value, digits, rotation), None
    if verdict is not None and verdict.wanted is None and isinstance(verdict.value, float) and verdict.value != value:
        counted = verdict.value
        told = tr("{read}; {true} by true top dead centre", read=told, true=shown(field, counted, digits))
    limits = limits_words(field, low, high, digits) if verdict is not None else ""
    return Row(stage, field, label, value, unit_of(field), low, high, words, told, limits, counted)


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
