"""One entry of the guided editor, and how its text is read and written."""

from __future__ import annotations

import re
from dataclasses import dataclass
from typing import Literal

from magview.spec.base import SpecError
from magview.spec.language import tr
from magview.spec.parse import parse_angle_deg, parse_length_mm, parse_number
from magview.spec.units import MM_PER_INCH

Form = Literal["text", "lines", "length", "angle", "number", "whole", "choice", "angles", "lengths", "order", "file"]

Value = float | int | bool | str | tuple[float, ...]
"""What a draft holds for an entry. Text where a number belongs is text that could not be read; it is kept."""

NUMERIC: tuple[Form, ...] = ("length", "angle", "number", "whole", "angles", "lengths", "order")
LISTS: tuple[Form, ...] = ("angles", "lengths", "order")


@dataclass(frozen=True)
class Entry:
    """A field of a file as it is asked for. Words are marked for translation, shown through `tr`."""

    path: str
    """Names in the file joined by points; "[0]" and "[1]" are the two ends of a range."""
    form: Form
    label: str
    meaning: str
    """One sentence of the trade."""
    why: str
    """What is allowed and why, one sentence; bounds of the numbers themselves come from the file's model."""
    unit: str = ""
    choices: tuple[tuple[str | bool, str], ...] = ()
    optional: bool = False
    only: tuple[str, tuple[str, ...]] | None = None
    """Asked for only while another entry holds one of these."""

    @property
    def field(self) -> str:
        """The file's own field: both ends of a range are one."""
        return self.path.partition("[")[0]

    @property
    def end(self) -> int | None:
        """Which end of a range it is; None where it is no range."""
        return int(self.path[-2]) if self.path.endswith("]") else None


@dataclass(frozen=True)
class Page:
    """What is measured in one go."""

    title: str
    lead: str
    """What to have at hand, one or two sentences."""
    entries: tuple[Entry, ...]


def read_entry(entry: Entry, text: str, inches: bool = False) -> Value | None:
    """The value of what was typed; None for nothing.

    A bare number is in the unit shown; decimal points and commas are alike. Lists are separated by semicolons or
    spaces, whole numbers by commas or hyphens too. Raises SpecError with one sentence.
    """
    text = text.strip()
    if not text:
        return None
    match entry.form:
        case "length":
            return parse_length_mm(text, "in" if inches else "mm")
        case "angle":
            return parse_angle_deg(text)
        case "number":
            return parse_number(text, entry.unit)
        case "whole":
            return _whole(parse_number(text))
        case "angles":
            return tuple(parse_angle_deg(part) for part in _parts(text))
        case "lengths":
            return tuple(parse_length_mm(part, "in" if inches else "mm") for part in _parts(text))
        case "order":
            return tuple(_whole(parse_number(part)) for part in re.split(r"[\s,;–-]+", text.strip(" -–,;")))
        case _:
            return text


def _whole(value: float) -> float | int:
    # Anything else is refused by the file's model, at its field.
    return int(value) if value.is_integer() and abs(value) < 1e9 else value


def _parts(text: str) -> list[str]:
    """Pieces of a list. "0,5" is one number with a decimal comma, "0, 5" and "0;5" are two."""
    # A unit that stands apart from its number belongs to it.
    parts = text.split(";") if ";" in text else re.split(r",\s+|\s+(?=[-+−.\d])", text)
    pieces = [p.strip().rstrip(",") for p in parts if p.strip()]
    for piece in pieces:
        if piece.count(",") > 1 or ("," in piece and "." in piece):
            raise SpecError(
                tr("“{piece}” is not one number: separate the values by semicolons, such as 0; 90.5; 180",
                   piece=piece[:40])
            )  # fmt: skip
    return pieces


def write_entry(entry: Entry, value: Value | None, inches: bool = False) -> str:
    """A value as it is shown for typing on; text that could not be read as it was typed."""
    if value is None:
        return ""
    if isinstance(value, str):
        return value
    if isinstance(value, tuple):
        if entry.form == "order":
            return "-".join(f"{v:g}" for v in value)
        scale = MM_PER_INCH if inches and entry.form == "lengths" else 1.0
        return "; ".join(f"{v / scale:.10g}" for v in value)
    match entry.form:
        case "length":
            return f"{value / MM_PER_INCH:.6g} in" if inches else f"{value:.10g} mm"
        case "angle":
            return f"{value:.10g}°"
        case _:
            return f"{value:.10g} {entry.unit}".strip()


def same_value(entry: Entry, text: str, value: Value | None, inches: bool) -> bool:
    """Whether a text is what is shown for a value anyway: a rounding must not be written back."""
    return text.strip() == write_entry(entry, value, inches).strip()
