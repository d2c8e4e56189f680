"""Every reading of a sheet as one list: what tables, reports, CSV and JSON are made of."""

from __future__ import annotations

import csv
import io
import json
from collections.abc import Iterator
from dataclasses import asdict
from typing import Any, Literal

from magview import __version__
from magview.bench.sureness import percent_words
from magview.bench.verdict import mark_words
from magview.bench.words import teeth_words, way_words
from magview.job import judge
from magview.job.parts import Stage, Sure, Uncertainty, title_in
from magview.job.sheet import STAGES, Job, stage_of, title_of
from magview.spec.base import Model
from magview.spec.frozen import frozen
from magview.spec.language import in_english, inside, marked, number, tr
from magview.spec.magneto import Rotation
from magview.spec.units import (
    DEG_DIGITS,
    INCH_DIGITS,
    MM_DIGITS,
    digits_beside,
    format_angle,
    format_length,
    length_digits,
)

_OF_THE_STAGE = frozenset(Stage.model_fields)
_UNITS = {"_mm": "mm", "_deg": "deg", "_rpm": "rpm", "_h": "h", "_teeth": "teeth", "_n": "N"}

Judged = Literal["", "in limits", "OUT OF LIMITS", "found out of limits", "as it must be", "NOT AS IT MUST BE"]


@frozen
class Row:
    """One reading. Numbers at full precision in the field's own unit; `shown` is for people."""

    stage: str
    field: str
    label: str
    value: float | int | bool | str
    unit: str
    low: float | None
    high: float | None
    verdict: Judged
    shown: str
    limits_shown: str


def rows(job: Job) -> list[Row]:
    """Every reading that was taken, and what follows from readings, in the sheet's order."""
    judged = {(v.stage, v.field): v for v in judge.verdicts(job)}
    return [row for name in STAGES for row in _of_stage(job, name, judged)]


def _of_stage(job: Job, name: str, judged: dict[tuple[str, str], judge.Verdict]) -> Iterator[Row]:
    stage, rotation = stage_of(job, name), rotation_of(job)
    for field, label, value in _walk(stage, ""):
        yield _row(name, field, label, value, judged.get((name, field)), rotation)
    for field, label, derived in _derived(job, name):
        if derived is not None:
            yield _row(name, field, label, derived, judged.get((name, field)), rotation)


def rotation_of(job: Job) -> Rotation | None:
    """Which way the magneto turns, seen from the drive end; None where the sheet does not say which magneto it is."""
    return None if job.described is None else job.described.rotation


def _derived(job: Job, name: str) -> tuple[tuple[str, str, float | None], ...]:
    match name:
        case "dead_centre":
            return (("true_centre_deg", tr("Disc at true top dead centre"), judge.dead_centre_deg(job)),)
        case "synchronising":
            return (("difference_deg", tr("Left error less right error"), judge.timing_difference_deg(job)),)
        case "ground_run":
            return (("drop_difference_rpm", tr("Difference of the drops"), judge.drop_difference_rpm(job)),)
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
        elif value is not None and value != "":
            yield f"{where}{field}", label, value


def _sure(place: str, label: str, sure: Sure) -> Iterator[tuple[str, str, Any]]:
    unit = next(u for u in _UNITS if place.endswith(u))
    yield f"{place}.value{unit}", tr("{label}: best estimate", label=label), sure.value
    words = tr("{label}: expanded uncertainty", label=label)
    yield f"{place}.expanded_uncertainty{unit}", words, sure.expanded_uncertainty
    yield f"{place}.coverage_factor", tr("{label}: coverage factor", label=label), sure.coverage_factor
    words = tr("{label}: probability in limits", label=label)
    yield f"{place}.probability_in_limits", words, sure.probability_in_limits


def _row(
    stage: str, field: str, label: str, value: Any, verdict: judge.Verdict | None, rotation: Rotation | None
) -> Row:
    low, high = (None, None) if verdict is None else (verdict.low, verdict.high)
    digits = _digits(value, low, high)
    return Row(
        stage, field, label, value, unit_of(field), low, high, judged_words(verdict),
        shown(field, value, digits, rotation), limits_words(field, low, high, digits),
    )  # fmt: skip


def judged_words(verdict: judge.Verdict | None) -> Judged:
    """A verdict in words, not yet read out; what was found is only noted."""
    if verdict is None:
        return ""
    if verdict.wanted is not None:
        return marked("as it must be") if verdict.ok else marked("NOT AS IT MUST BE")
    if verdict.ok:
        return marked("in limits")
    return marked("OUT OF LIMITS") if verdict.as_left else marked("found out of limits")


# ---------------------------------------------------------------------- words


def unit_of(field: str) -> str:
    """The unit that a field's name ends in."""
    return next((unit for suffix, unit in _UNITS.items() if field.endswith(suffix)), "")


_CHOICES = {
    "intake": marked("intake"),
    "compression": marked("compression"),
    "power": marked("power"),
    "exhaust": marked("exhaust"),
    "left": marked("left"),
    "right": marked("right"),
}
"""Readings that are one of a few words."""


@frozen
class Digits:
    """Those after the decimal sign that a reading and its limits are written with."""

    mm: int = MM_DIGITS
    inch: int = INCH_DIGITS
    deg: int = DEG_DIGITS


_USUAL = Digits()


def _digits(value: Any, low: float | None, high: float | None) -> Digits:
    """As many as tell a reading from the limit it is beyond."""
    if isinstance(value, bool | str) or (low is None and high is None):
        return _USUAL
    return Digits(
        length_digits(value, low, high, False),
        length_digits(value, low, high, True),
        digits_beside(value, low, high, DEG_DIGITS),
    )


_SIGNED = ("backplate_deg", "screw_deg", "error_deg", "difference_deg")


def shown(field: str, value: Any, digits: Digits = _USUAL, rotation: Rotation | None = None) -> str:
    """A reading for people: both length units, words for signs; teeth also as seen, where the rotation is known."""
    if isinstance(value, bool):
        return tr("yes") if value else tr("no")
    if isinstance(value, str):
        return tr(_CHOICES[value]) if field in ("stroke", "side") else value
    unit = unit_of(field)
    if unit == "mm":
        return (
            _length(value, digits) if "mark_offset" not in field else mark_words(_length(abs(value), digits), value)
        )
    if unit == "deg":
        if "btdc" in field and "." not in field:
            angle = format_angle(abs(value), digits=digits.deg)
            return (
                tr("{angle} before top dead centre", angle=angle)
                if value >= 0
                else tr("{angle} after top dead centre", angle=angle)
            )
        if field.endswith(("error_deg", "error_deg.value_deg")):
            return _early_or_late(value, digits)
        return format_angle(value, field.endswith(_SIGNED), digits.deg)
    if unit == "teeth":
        if value == 0 and "_from_" in field:
            return tr("in line")
        return way_words(value) if rotation is None else teeth_words(value, rotation, "drive end")
    if field.endswith("probability_in_limits"):
        return percent_words(value)
    if field.endswith("coverage_factor"):
        return f"k = {number(value, 2)}"
    return f"{number(value)} {unit}".strip()


def limits_words(field: str, low: float | None, high: float | None, digits: Digits = _USUAL) -> str:
    """Limits in the words of their reading; nothing where there are none."""
    if low is None and high is None:
        return ""
    if low is None or high is None:
        return (
            tr("at most {limit}", limit=_plain(field, high, digits))
            if low is None
            else tr("at least {limit}", limit=_plain(field, low, digits))
        )
    if low == -high:
        return tr("within ±{limit}", limit=_plain(field, high, digits))
    return tr("{low} to {high}", low=_plain(field, low, digits), high=_plain(field, high, digits))


def _plain(field: str, value: float | None, digits: Digits) -> str:
    assert value is not None
    unit = unit_of(field)
    if unit == "mm":
        return _length(value, digits)
    return format_angle(value, digits=digits.deg) if unit == "deg" else f"{number(value)} {unit}".strip()


def _length(mm: float, digits: Digits) -> str:
    return f"{format_length(mm, False, digits.mm)} = {format_length(mm, True, digits.inch)}"


def _early_or_late(degrees: float, digits: Digits) -> str:
    text = format_angle(abs(degrees), digits=digits.deg)
    if text == format_angle(0.0, digits=digits.deg):
        return text
    return tr("{angle} late", angle=text) if degrees > 0 else tr("{angle} early", angle=text)


# ---------------------------------------------------------------------- files


def csv_text(job: Job) -> str:
    """All readings as CSV (RFC 4180): full precision, a line each, the unit in its own column."""
    out = io.StringIO()
    writer = csv.writer(out, lineterminator="\r\n")
    writer.writerow(("stage", "field", "reading", "value", "unit", "low", "high", "verdict"))
    for row in _in_english(job):
        writer.writerow((
            row.stage, row.field, _safe(row.label), _cell(row.value), row.unit, _cell(row.low), _cell(row.high),
            row.verdict,
        ))  # fmt: skip
    return out.getvalue()


def _in_english(job: Job) -> list[Row]:
    with in_english():
        return rows(job)


def _cell(value: float | int | bool | str | None) -> str:
    if value is None:
        return ""
    if isinstance(value, bool):
        return "true" if value else "false"
    return _safe(value) if isinstance(value, str) else repr(value)


def _safe(text: str) -> str:
    # A spreadsheet would take such text for a formula and run it.
    return f"'{text}" if text[:1] in ("=", "+", "-", "@", "\t", "\r") else text


def json_text(job: Job) -> str:
    """All readings with limits and verdicts, and how far the sheet has come, as JSON."""
    return json.dumps(as_plain(job), indent=2, ensure_ascii=False, allow_nan=False) + "\n"


def as_plain(job: Job) -> dict[str, Any]:
    """What `json_text` writes, as plain values."""
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
        "open": list(found.open),
        "missing": list(found.missing),
        "signature_holds": found.signature,
        "finished": found.finished,
        "passed": found.passed,
    }
