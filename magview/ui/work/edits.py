"""Entries of the job sheet: each takes one kind of value, and nothing at all for what was not read.

What is typed stays in the field until it is a value; a refusal is one sentence beside it and wipes nothing.
"""

from __future__ import annotations

from functools import partial
from typing import Any

from magview.bench.words import teeth_of
from magview.job.words import shown, unit_of
from magview.spec.parse import (
    late_or_early,
    parse_angle_deg,
    parse_btdc_deg,
    parse_force_n,
    parse_length_mm,
    parse_number,
    parse_sided,
)
from magview.spec.units import MM_PER_INCH

_SIGNED = ("backplate_deg", "screw_deg", "error_deg")
_SIDED = ("error_deg", "mark_offset_mm")
"""Fields of which a side is said: past the E-gap or short of it."""


def typed_words(field: str, value: float | int | None, inches: bool) -> str:
    """A number as a field shows it: rounded as its instruments are, without its unit."""
    if value is None:
        return ""
    unit = unit_of(field)
    if unit == "mm":
        return f"{value / MM_PER_INCH:.4f}" if inches else f"{round(value, 4) + 0.0:.10g}"
    if unit == "deg":
        rounded = round(value, 2) + 0.0
        return f"{rounded:+.10g}" if rounded and field.endswith(_SIGNED) else f"{rounded:.10g}"
    if unit == "teeth":
        return f"{value:+d}" if value else "0"
    return f"{value:.10g}"


def number_of(field: str, text: str, inches: bool) -> float | int | None:
    """What was typed, in the field's own unit; None for nothing. Raises ValueError with one sentence."""
    if not text.strip():
        return None
    unit = unit_of(field)
    if unit == "mm":
        read = partial(parse_length_mm, default_unit="in" if inches else "mm")
        return parse_sided(text, read, *late_or_early()) if field.endswith(_SIDED) else read(text)
    if unit == "deg":
        if field.endswith("btdc_deg"):
            return parse_btdc_deg(text)
        return (
            parse_sided(text, parse_angle_deg, *late_or_early()) if field.endswith(_SIDED) else parse_angle_deg(text)
        )
    if unit == "N":
        return parse_force_n(text)
    return teeth_of(text) if unit == "teeth" else parse_number(text, unit)


def meaning(field: str, value: Any) -> str:
    """A reading in words that the bare number lacks: the other unit of length, early or late, the way round."""
    if value is None or isinstance(value, bool | str) or unit_of(field) not in ("mm", "deg", "teeth"):
        return ""
    if field.endswith("btdc_deg"):
        return shown(field, value) if value < 0 else ""  # the label says "before"
    if unit_of(field) == "deg" and not field.endswith("error_deg"):
        return ""
    return shown(field, value)
