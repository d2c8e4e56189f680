"""A reading in words for people: both units of length, signs as early or late, limits as their reading is written."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache
from typing import Any

from magview.bench.sureness import percent_words
from magview.bench.verdict import mark_words
from magview.bench.words import teeth_words, way_words
from magview.job import checklists, stages
from magview.spec.base import Model
from magview.spec.fields import about
from magview.spec.language import format_angle, marked, number, tr
from magview.spec.magneto import Rotation
from magview.spec.units import DEG_DIGITS, INCH_DIGITS, MM_DIGITS, digits_beside, length_digits

UNITS = {"_mm": "mm", "_deg": "deg", "_rpm": "rpm", "_h": "h", "_teeth": "teeth", "_n": "N"}
"""Units by the ending of a field's name."""


def unit_of(field: str) -> str:
    """The unit that a field's name ends in."""
    return next((unit for suffix, unit in UNITS.items() if field.endswith(suffix)), "")


@cache
def _choices() -> dict[str, dict[Any, str]]:
    """What the readings that are one of a few words are called, by field."""
    fields = (
        about(stage, name)
        for room in (checklists, stages)
        for stage in vars(room).values()
        if isinstance(stage, type) and issubclass(stage, Model)
        for name in stage.model_fields
    )
    return {field.name: dict(field.choices) for field in fields if field.choices}


@dataclass(frozen=True)
class Digits:
    """Those after the decimal sign that a reading and its limits are written with."""

    mm: int = MM_DIGITS
    inch: int = INCH_DIGITS
    deg: int = DEG_DIGITS


_USUAL = Digits()


def digits_for(value: Any, low: float | None, high: float | None) -> Digits:
    """As many as tell a reading from the limit it is beyond."""
    if value is None or isinstance(value, bool | str) or (low is None and high is None):
        return _USUAL
    return Digits(
        length_digits(value, low, high, False),
        length_digits(value, low, high, True),
        digits_beside(value, low, high, DEG_DIGITS),
    )


_SIGNED = ("backplate_deg", "screw_deg", "error_deg", "difference_deg", "zero_deg")


def shown(field: str, value: Any, digits: Digits = _USUAL, rotation: Rotation | None = None) -> str:
    """A reading for people: both length units, words for signs; teeth also as seen, where the rotation is known."""
    if value is None:
        return "☐"
    if isinstance(value, bool):
        return tr("yes") if value else tr("no")
    if isinstance(value, str):
        words = _choices().get(field, {}).get(value)
        return tr(words) if words is not None else value
    unit = unit_of(field)
    if unit == "mm":
        return (
            _length(value, digits) if "mark_offset" not in field else mark_words(_length(abs(value), digits), value)
        )
    if unit == "deg":
        if "btdc" in field and "." not in field:
            side = (
                marked("{angle:.{digits}deg} before top dead centre")
                if value >= 0
                else marked("{angle:.{digits}deg} after top dead centre")
            )
            return tr(side, angle=abs(value), digits=digits.deg)
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
        return tr("k = {factor:.2f}", factor=value)
    return f"{number(value)} {unit}".strip()


def limits_words(field: str, low: float | None, high: float | None, digits: Digits = _USUAL) -> str:
    """Limits in the words of their reading; nothing where there are none. A drop is always to be above nothing."""
    if field in ("drop_left_rpm", "drop_right_rpm") and low is None:
        if high is None:
            return tr("above 0 rpm")
        return tr("above 0 rpm, at most {limit}", limit=_plain(field, high, digits))
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
    return tr("{length:.{mm}mm} = {length:.{inch}in}", length=mm, mm=digits.mm, inch=digits.inch)


def _early_or_late(degrees: float, digits: Digits) -> str:
    text = format_angle(abs(degrees), digits=digits.deg)
    if text == format_angle(0.0, digits=digits.deg):
        return text
    return tr("{angle} late", angle=text) if degrees > 0 else tr("{angle} early", angle=text)
