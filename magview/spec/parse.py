"""Lengths, angles, forces and days as people write them: ``0.33 mm``, ``1/64 in``, ``1,5° late``, ``24 oz``."""

from __future__ import annotations

import datetime
import math
import re
from collections.abc import Callable
from dataclasses import dataclass

from magview.spec.base import SpecError
from magview.spec.language import marked, tr
from magview.spec.units import MM_PER_INCH, MM_PER_THOU

NEWTONS_PER_KGF = 9.80665
"""[N/kgf] exact: standard acceleration of free fall, 3rd CGPM, 1901 (NIST SP 811, appendix B)."""

_KG_PER_OUNCE = 0.028349523125
"""[kg/oz] exact: a sixteenth of the international pound (NIST SP 811, appendix B)."""

# Both decimal signs are taken: half of the mechanics' keyboards have a comma on the number pad. Groups of three may
# be set apart by a space, which no decimal sign is; a point or comma never is a separator of groups.
_GROUPED = r"\d{1,3}(?:[ \u00a0\u2009\u202f]\d{3})+(?:[.,]\d*)?"
_DECIMAL = r"(?:\d+(?:[.,]\d*)?|[.,]\d+)(?:[eE][-+]?\d+)?"
_FRACTION = r"(?:(?P<whole>\d+)[\s+-])?\s*(?P<upper>\d+)\s*/\s*(?P<lower>\d+)"
_QUANTITY = re.compile(
    rf"\s*(?P<sign>[-+−]?)\s*(?:{_FRACTION}|(?P<digits>{_GROUPED}|{_DECIMAL}))\s*(?P<unit>[^\s\d.,]*)\s*"
)


def _value(match: re.Match[str]) -> float:
    """The number of a quantity; infinite where nothing divides it."""
    if match["digits"] is not None:
        size = float(re.sub(r"[ \u00a0\u2009\u202f]", "", match["digits"]).replace(",", "."))
    else:
        lower = int(match["lower"])
        size = int(match["whole"] or 0) + int(match["upper"]) / lower if lower else math.inf
    return -size if match["sign"] in ("-", "−") else size


@dataclass(frozen=True)
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
    unit = match["unit"].lower().replace("μ", "µ") or default
    if unit is None:
        raise SpecError(tr(kind.no_unit, text=text.strip()[:40]))
    if unit not in kind.units:
        raise SpecError(tr(kind.wrong_unit, unit=match["unit"][:20], known=", ".join(kind.units)))
    value = _value(match) * kind.units[unit]
    if not math.isfinite(value):
        raise SpecError(tr("“{text}” is too large", text=text.strip()[:40]))
    return value


def parse_length_mm(text: str, default_unit: str | None = None) -> float:
    """Read a length with its unit.

    Parameters
    ----------
    text : a number and a unit: mm, in, thou, µm; a decimal point, a decimal comma or a fraction.
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


def parse_sided(text: str, read: Callable[[str], float], plus: tuple[str, ...], minus: tuple[str, ...]) -> float:
    """Read a quantity with `read`, with a minus or with a word for its side: "1.5° late", "0.8 mm short".

    `plus`, `minus`: the words of either side, in any language. Raises ValueError with one sentence.
    """
    bare = text.strip()
    for word in sorted((*plus, *minus), key=len, reverse=True):
        if bare.casefold().endswith(word.casefold()):
            value = read(bare[: len(bare) - len(word)])
            if value < 0.0 or bare.startswith(("-", "−")):
                raise SpecError(
                    tr("“{text}” has a minus and the word {word}: write one or the other", text=bare[:40], word=word)
                )
            return value if word in plus else 0.0 - value
    return read(text)


def parse_disc_deg(text: str) -> float:
    """Read where a degree disc stands [deg]: "2 after", "3° before"; a bare number is positive after its zero.

    So it is for every crank angle: positive is the way the engine turns. Raises ValueError with one sentence.
    """
    after, before = (tr("after"), "after", tr("ATDC"), "ATDC"), (tr("before"), "before", tr("BTDC"), "BTDC")
    return parse_sided(text, parse_angle_deg, after, before)


def late_or_early() -> tuple[tuple[str, ...], tuple[str, ...]]:
    """Words for an opening past the E-gap and short of it, in the window's language and in English."""
    return (tr("late"), tr("past"), "late", "past"), (tr("early"), tr("short"), "early", "short")


_FORCE = _Kind(
    {
        "n": 1.0, "kg": NEWTONS_PER_KGF, "g": NEWTONS_PER_KGF / 1000.0,
        "oz": _KG_PER_OUNCE * NEWTONS_PER_KGF, "lb": 16.0 * _KG_PER_OUNCE * NEWTONS_PER_KGF,
    },
    marked("“{text}” is not a force: write a number and a unit, such as 7 N, 700 g or 25 oz"),
    marked("“{text}” has no unit: write one, such as 7 N, 700 g or 25 oz"),
    marked("“{unit}” is not a unit of force: use {known}"),
)  # fmt: skip


def parse_force_n(text: str) -> float:
    """Read a force [N]; a bare number is in newtons, a weight pulls as it does at standard gravity.

    Raises ValueError with one sentence.
    """
    return _parse(text, _FORCE, "n")


_DAYS = ("%Y-%m-%d", "%d.%m.%Y", "%d %b %Y", "%d %B %Y", "%d-%b-%Y", "%b %d %Y", "%B %d %Y")
_SLASHED = ("%d/%m/%Y", "%m/%d/%Y")


def parse_day(text: str) -> str:
    """Read a calendar day as people write it; returns it as ISO 8601 does, "" for nothing.

    A day with strokes that could be two days is refused. Raises ValueError with one sentence.

    Examples
    --------
    >>> parse_day("25 Nov 2026"), parse_day("25.11.2026"), parse_day("11/25/2026")
    ('2026-11-25', '2026-11-25', '2026-11-25')
    """
    bare = " ".join(text.replace(",", " ").split())
    if not bare:
        return ""
    found = {day for form in (*_DAYS, *_SLASHED) if (day := _day(bare, form))}
    if len(found) == 1:
        return found.pop()
    if found:
        one, other = sorted(found)
        raise SpecError(
            tr("“{text}” could be {one} or {other}: write it as one of these", text=bare, one=one, other=other)
        )
    raise SpecError(tr("“{text}” is not a date: write it as 2026-11-25 or 25 Nov 2026", text=bare[:40]))


def _day(text: str, form: str) -> str | None:
    try:
        return datetime.datetime.strptime(text, form).date().isoformat()
    except ValueError:
        return None


def _sides_of_tdc() -> tuple[tuple[str, float], ...]:
    """Notations of either side of top dead centre, in the window's language and in the trade's English."""
    return ((tr("BTDC"), 1.0), (tr("ATDC"), -1.0), ("BTDC", 1.0), ("ATDC", -1.0))


def parse_number(text: str, unit: str = "") -> float:
    """Read a bare number, or one with this unit. Raises ValueError with one sentence."""
    match = _QUANTITY.fullmatch(text)
    if match is None or match["unit"] not in ("", unit):
        raise SpecError(
            tr(
                "“{text}” is not a number: write one such as {example}",
                text=text.strip()[:40],
                example=f"1.5 {unit}".strip(),
            )
        )
    value = _value(match)
    if not math.isfinite(value):
        raise SpecError(tr("“{text}” is too large", text=text.strip()[:40]))
    return value
