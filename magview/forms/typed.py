"""Reading what is typed for an entry, writing it back, and its limits in words."""

from __future__ import annotations

import re
from collections.abc import Callable
from functools import partial
from typing import Any

from magview.bench.words import teeth_of
from magview.forms.entry import Entry, Kind, Value
from magview.spec.base import SpecError
from magview.spec.fields import Sign
from magview.spec.language import marked, tr
from magview.spec.parse import (
    late_or_early,
    parse_angle_deg,
    parse_btdc_deg,
    parse_day,
    parse_disc_deg,
    parse_force_n,
    parse_length_mm,
    parse_number,
    parse_sided,
)
from magview.spec.units import MM_PER_INCH

_SIGNED = (Sign.LATE, Sign.WITH_ROTATION, Sign.CLOSER, Sign.AFTER_ZERO)
"""Written with a plus, too."""


def read(entry: Entry, text: str, inches: bool = False) -> Value | None:
    """The value of what was typed; None for nothing.

    A bare number is in the unit shown; decimal points and commas are alike. Lists are separated by semicolons,
    spaces or hyphens, whole numbers by commas too. Raises SpecError with one sentence.
    """
    text = text.strip()
    if not text:
        return None
    match entry.kind:
        case Kind.NUMBER:
            return _reader(entry, inches)(text)
        case Kind.WHOLE:
            return teeth_of(text) if entry.unit == "teeth" else _whole(parse_number(text, entry.unit))
        case Kind.NUMBERS:
            return tuple(_reader(entry, inches)(part) for part in _parts(text))
        case Kind.WHOLES:
            return tuple(_whole(parse_number(part)) for part in re.split(r"[\s,;–-]+", text.strip(" -–,;")))
        case Kind.DAY:
            return parse_day(text)
        case _:
            return text


def _reader(entry: Entry, inches: bool) -> Callable[[str], float]:
    """Return the function that reads one number of an entry."""
    if entry.is_length:
        read_one: Callable[[str], float] = partial(parse_length_mm, default_unit="in" if inches else "mm")
    elif entry.quantity.sign is Sign.BEFORE_TOP:
        return parse_btdc_deg
    elif entry.quantity.sign is Sign.AFTER_ZERO:
        return parse_disc_deg
    elif entry.is_angle:
        read_one = parse_angle_deg
    elif entry.unit == "N":
        return parse_force_n
    else:
        return lambda text: parse_number(text, entry.unit) / entry.quantity.scale
    return partial(_sided, read_one) if entry.quantity.sign is Sign.LATE else read_one


def _sided(read_one: Callable[[str], float], text: str) -> float:
    return parse_sided(text, read_one, *late_or_early())


def _whole(value: float) -> float | int:
    # Anything else is refused by the file's model, at its field.
    return int(value) if value.is_integer() and abs(value) < 1e9 else value


_BETWEEN = re.compile(r"""(?<=[\d°"mnu])(?:\s+(?:to|[–—-])\s+|[–—-](?=[\d.,]))""")
"""From one end of a range to the other: "0.30 to 0.36", "0.30-0.36mm"; a sign has a space before it alone."""


def _parts(text: str) -> list[str]:
    """Pieces of a list. "0,5" is one number with a decimal comma; "0, 5", "0;5", "0-5" and "0 to 5" are two."""
    text = _BETWEEN.sub("; ", text)
    # A unit that stands apart from its number belongs to it.
    parts = text.split(";") if ";" in text else re.split(r",\s+|\s+(?=[-+−.\d])", text)
    pieces = [p.strip().rstrip(",") for p in parts if p.strip()]
    for piece in pieces:
        if piece.count(",") > 1 or ("," in piece and "." in piece):
            raise SpecError(
                tr(
                    "“{piece}” is not one number: separate the values by semicolons, such as 0; 90.5; 180",
                    piece=piece[:40],
                )
            )
    return pieces


# ---------------------------------------------------------------------- written back


def written(entry: Entry, value: Value | None, inches: bool = False) -> str:
    """A value as it is shown for typing on, exact and with its unit; text that could not be read as it was typed."""
    if value is None:
        return ""
    if isinstance(value, str):
        return value
    if isinstance(value, tuple):
        if entry.kind is Kind.WHOLES:
            return "-".join(f"{v:g}" for v in value)
        scale = MM_PER_INCH if inches and entry.is_length else 1.0
        return "; ".join(f"{v / scale:.10g}" for v in value)
    if entry.is_length:
        return f"{value / MM_PER_INCH:.6g} in" if inches else f"{value:.10g} mm"
    if entry.is_angle:
        return f"{value:.10g}°"
    return f"{value * entry.quantity.scale:.10g} {entry.unit}".strip()


def rounded(entry: Entry, value: float | int | None, inches: bool) -> str:
    """A reading as a field beside its unit shows it: rounded as its instruments are, signed where a sign says which
    way."""
    if value is None:
        return ""
    if entry.is_length:
        return f"{value / MM_PER_INCH:.4f}" if inches else f"{round(value, 4) + 0.0:.10g}"
    signed = entry.quantity.sign in _SIGNED
    if entry.is_angle:
        near = round(value, 2) + 0.0
        return f"{near:+.10g}" if near and signed else f"{near:.10g}"
    if entry.unit == "teeth":
        return f"{value:+d}" if value else "0"
    return f"{value * entry.quantity.scale:.10g}"


# ---------------------------------------------------------------------- unit and limits in words

_UNITS = {
    ("mm", "", Sign.LATE): marked("mm, + late"),
    ("in", "", Sign.LATE): marked("in, + late"),
    ("°", "crank", Sign.BEFORE_TOP): marked("crank ° before top dead centre"),
    ("°", "rotor", Sign.LATE): marked("°, + late"),
    ("°", "plate", Sign.WITH_ROTATION): marked("°, + with rotation"),
    ("°", "screw", Sign.CLOSER): marked("°, + closer"),
    ("°", "crank", Sign.AFTER_ZERO): marked("crank °, + after the disc's zero"),
    ("°", "crank", Sign.PLAIN): marked("crank °"),
    ("teeth", "", Sign.WITH_ROTATION): marked("teeth, + with rotation"),
    ("teeth", "", Sign.PLAIN): marked("teeth"),
    ("mm", "", Sign.PLAIN): marked("mm"),
    ("in", "", Sign.PLAIN): marked("in"),
    ("rpm", "", Sign.PLAIN): marked("rpm"),
    ("h", "", Sign.PLAIN): marked("h"),
    ("min", "", Sign.PLAIN): marked("min"),
}


def unit_words(entry: Entry, inches: bool = False) -> str:
    """The unit as it stands in a label, and which way is positive."""
    unit = "in" if inches and entry.is_length else entry.unit
    return tr(_UNITS.get((unit, entry.quantity.of, entry.quantity.sign), unit))


def bounds(entry: Entry) -> dict[str, float]:
    """The bounds of an entry's numbers in the file's unit: any of "ge", "gt", "le", "lt"; of each value of a list."""
    return {name: end for name, end in entry.about.bounds.items() if name in ("ge", "gt", "le", "lt")}


def allowed(entry: Entry, inches: bool = False) -> str:
    """The bounds as a sentence; nothing for what has none."""
    found = bounds(entry)
    low, high = found.get("ge", found.get("gt")), found.get("le", found.get("lt"))
    if low is None or high is None or (entry.is_angle and high >= 3600.0):
        return ""  # ten turns either way is no limit that anybody meets
    a, b = _end(entry, low, inches), _end(entry, high, inches)
    if "gt" in found and "lt" in found:
        return tr("Allowed: between {low} and {high}, neither included.", low=a, high=b)
    if "gt" in found:
        return tr("Allowed: above {low}, up to {high}.", low=a, high=b)
    if "lt" in found:
        return tr("Allowed: {low} and more, below {high}.", low=a, high=b)
    return tr("Allowed: {low} to {high}.", low=a, high=b)


def _end(entry: Entry, value: float, inches: bool) -> str:
    if entry.is_length:
        return f"{value / MM_PER_INCH:.4g} in" if inches else f"{value:g} mm"
    if entry.is_angle:
        return f"{value:g}°"
    plain = f"{value * entry.quantity.scale:.10f}".rstrip("0").rstrip(".")  # a millionth as people write it
    return f"{plain} {entry.unit}".strip()


def outside(entry: Entry, value: Any, inches: bool = False) -> str:
    """Say why a number is none that a field takes, one sentence with the unit shown; nothing where it is one."""
    found = bounds(entry)
    low, high = found.get("ge", found.get("gt")), found.get("le", found.get("lt"))
    if not isinstance(value, float | int) or isinstance(value, bool) or low is None or high is None:
        return ""
    above = low < value if "gt" in found else low <= value
    if above and (value < high if "lt" in found else value <= high):
        return ""
    whole = type(value)
    return tr(
        "{typed} is outside {low} to {high} and was not taken; write one such as {example}",
        typed=rounded(entry, value, inches),
        low=rounded(entry, whole(low), inches),
        high=rounded(entry, whole(high), inches),
        example=rounded(entry, whole(_example(low, high)), inches),
    )


def _example(low: float, high: float) -> float:
    """A number of a size that people write."""
    return next((e for e in (25.0, 1.5, 0.3) if low < e < high), (low + high) / 2)
