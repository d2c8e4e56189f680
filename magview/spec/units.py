"""Lengths and angles as people write them: ``0.33 mm``, ``0.013in``, ``13 thou``, ``1.5°``."""

from __future__ import annotations

import math
import re

from magview.spec.base import SpecError
from magview.spec.frozen import frozen
from magview.spec.language import marked, number, tr

MM_PER_INCH = 25.4
"""[mm/in] exact: international yard and pound agreement, 1959 (NIST SP 811, appendix B)."""

MM_DIGITS, INCH_DIGITS, DEG_DIGITS = 3, 4, 2
"""Digits after the decimal sign that readings are written with."""

MM_PER_THOU = MM_PER_INCH / 1000.0

# Both decimal signs are taken: half of the mechanics' keyboards have a comma on the number pad.
_QUANTITY = re.compile(r"\s*([-+−]?(?:\d+(?:[.,]\d*)?|[.,]\d+)(?:[eE][-+]?\d+)?)\s*([^\s\d.,]*)\s*")


@frozen
class _Kind:
    """A kind of quantity: its units, and what is said to somebody who wrote something else."""

    units: dict[str, float]
    no_quantity: str
    no_unit: str
    wrong_unit: str


_LENGTH = _Kind(
    {"mm": 1.0, "in": MM_PER_INCH, '"': MM_PER_INCH, "thou": MM_PER_THOU, "µm": 0.001, "um": 0.001},
    marked("“{text}” is not a length: write a number and a unit, such as 0.33mm, 0.013in or 13thou"),
    marked("“{text}” has no unit: write one, such as 0.33mm, 0.013in or 13thou"),
    marked("“{unit}” is not a unit of length: use {known}"),
)
_ANGLE = _Kind(
    {"°": 1.0, "deg": 1.0},
    marked("“{text}” is not an angle: write a number and a unit, such as 1.5°"),
    marked("“{text}” has no unit: write one, such as 1.5°"),
    marked("“{unit}” is not a unit of angle: use {known}"),
)


def _parse(text: str, kind: _Kind, default: str | None) -> float:
    match = _QUANTITY.fullmatch(text)
    if match is None:
        raise SpecError(tr(kind.no_quantity, text=text[:40]))
    digits, unit = match[1].replace(",", ".").replace("−", "-"), match[2].lower().replace("μ", "µ") or default
    if unit is None:
        raise SpecError(tr(kind.no_unit, text=text.strip()[:40]))
    if unit not in kind.units:
        raise SpecError(tr(kind.wrong_unit, unit=match[2][:20], known=", ".join(kind.units)))
    value = float(digits) * kind.units[unit]
    if not math.isfinite(value):
        raise SpecError(tr("“{text}” is too large", text=text.strip()[:40]))
    return value


def parse_length_mm(text: str, default_unit: str | None = None) -> float:
    """Read a length with its unit.

    Parameters
    ----------
    text : a number and a unit: mm, in, thou, µm; a decimal point or a decimal comma.
    default_unit : the unit of a bare number; None makes a bare number an error.

    Returns
    -------
    The length [mm].

    Raises
    ------
    ValueError : one sentence saying what is wrong and what is allowed.
    """
    return _parse(text, _LENGTH, default_unit)


def parse_angle_deg(text: str) -> float:
    """Read an angle [deg]; the degree sign may be left out. Raises ValueError with one sentence."""
    return _parse(text, _ANGLE, "deg")


def parse_btdc_deg(text: str) -> float:
    """Read a crank angle before top dead centre [deg]: "22", "22° BTDC"; "3 ATDC" is −3.

    Raises ValueError with one sentence.
    """
    bare = text.strip()
    for words, sign in _sides_of_tdc():
        if bare.casefold().endswith(words.casefold()):
            angle = parse_angle_deg(bare[: len(bare) - len(words)])
            if angle < 0.0 or bare.startswith(("-", "−")):
                break
            return sign * angle + 0.0
    else:
        return parse_angle_deg(text)
    raise SpecError(
        tr("“{text}” has a minus and a side of top dead centre: write one or the other", text=text.strip()[:40])
    )


def _sides_of_tdc() -> tuple[tuple[str, float], ...]:
    """How either side of top dead centre is written, in the window's language and as the trade does in English."""
    return ((tr("BTDC"), 1.0), (tr("ATDC"), -1.0), ("BTDC", 1.0), ("ATDC", -1.0))


def parse_number(text: str, unit: str = "") -> float:
    """Read a bare number, or one with this unit. Raises ValueError with one sentence."""
    match = _QUANTITY.fullmatch(text)
    if match is None or match[2] not in ("", unit):
        raise SpecError(
            tr(
                "“{text}” is not a number: write one such as {example}",
                text=text.strip()[:40],
                example=f"1.5 {unit}".strip(),
            )
        )
    value = float(match[1].replace(",", ".").replace("−", "-"))
    if not math.isfinite(value):
        raise SpecError(tr("“{text}” is too large", text=text.strip()[:40]))
    return value


_MOST_DIGITS = 11
_HAIR = 1e-9
"""A billionth beyond a limit is judged within it."""


def digits_beside(value: float, low: float | None, high: float | None, digits: int, hair: float = _HAIR) -> int:
    """How many digits to write value and limits with, so that one outside them also reads as outside.

    Rounded alike, 0.3601 beside a limit of 0.36 would read as the limit itself and yet be out of limits.

    Parameters
    ----------
    value : what is judged. low, high : its limits in the same unit, None where there is none.
    digits : those after the decimal sign that are usual.
    hair : how far beyond a limit is still judged within it.

    Returns
    -------
    `digits`, or as many more as tell them apart, 11 at most.

    Examples
    --------
    >>> digits_beside(0.36012, 0.3, 0.36, 3), digits_beside(0.3599, 0.3, 0.36, 3)
    (4, 3)
    """
    for places in range(digits, _MOST_DIGITS):
        under = low is not None and value < low - hair and round(value, places) >= round(low, places)
        over = high is not None and value > high + hair and round(value, places) <= round(high, places)
        if not (under or over):
            return places
    return _MOST_DIGITS


def length_digits(mm: float, low: float | None, high: float | None, inches: bool) -> int:
    """`digits_beside` for a length and its limits [mm], in the unit it is written in."""
    unit = MM_PER_INCH if inches else 1.0
    ends = [None if end is None else end / unit for end in (low, high)]
    return digits_beside(mm / unit, ends[0], ends[1], INCH_DIGITS if inches else MM_DIGITS, _HAIR / unit)


def format_length(mm: float, inches: bool, digits: int | None = None) -> str:
    """Write a length [mm] for reading: millimetres to 0.001, or inches to 0.0001, or to so many `digits`."""
    if not math.isfinite(mm):
        return "–"
    places = digits if digits is not None else INCH_DIGITS if inches else MM_DIGITS
    # + 0.0 turns −0.0 into 0.0.
    if inches:
        return tr("{length} in", length=number(round(mm / MM_PER_INCH, places) + 0.0, places))
    return f"{number(round(mm, places) + 0.0, places)} mm"


def format_angle(deg: float, signed: bool = False, digits: int = DEG_DIGITS) -> str:
    """Write an angle [deg] for reading, to 0.01° or to so many `digits`; `signed` keeps the plus."""
    if not math.isfinite(deg):
        return "–"
    rounded = round(deg, digits) + 0.0
    return f"{number(rounded, f'+.{digits}f' if signed else digits)}°"
