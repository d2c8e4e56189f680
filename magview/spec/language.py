"""The words people read: the language, decimal sign and unit of length they are written in.

Everything people read goes through `tr`, from here upwards; only the window knows Qt, so it brings the translator.
Places of a sentence take the formats of Python, and these for quantities, which write the unit too:

    {gap:length}    a length [mm] in the unit in force: 0.330 mm or 0.0130 in
    {gap:mm}        a length [mm] in millimetres, whatever is in force; {gap:in} in inches
    {angle:deg}     an angle [deg]: 12.50°
    {angle:+deg}    with its sign; {gap:.4mm} with four digits after the decimal sign

A float without a format is written as shortly as it can be: {tolerance} of 0.5 is "0.5".
"""

from __future__ import annotations

import math
import re
import string
from collections.abc import Callable, Iterator, Mapping, Sequence
from contextlib import contextmanager
from dataclasses import dataclass, field
from functools import lru_cache
from numbers import Real
from typing import Any, Literal, TypeVar

from magview.spec.units import DEG_DIGITS, INCH_DIGITS, MM_DIGITS, MM_PER_INCH

T = TypeVar("T", bound=str)
LengthUnit = Literal["mm", "in"]

NO_VALUE = "–"
"""Written where there is no number."""

_translate: Callable[[str], str] | None = None
_decimal_point = "."
_length_unit: LengthUnit = "mm"

_QUANTITY = re.compile(r"(?P<sign>\+?)(?:\.(?P<digits>\d+))?(?P<quantity>length|mm|in|deg)")


@lru_cache(maxsize=2000)
def _parsed(text: str) -> tuple[tuple[str, str | None, str | None, str | None], ...]:
    """A sentence's places: the same sentences are written over and over."""
    return tuple(string.Formatter().parse(text))


@lru_cache(maxsize=200)
def _quantity_asked(format_spec: str) -> re.Match[str] | None:
    return _QUANTITY.fullmatch(format_spec)


class _Formatter(string.Formatter):
    """Fills the places of a sentence with numbers and quantities as the language writes them."""

    def fill(self, text: str, values: Mapping[str, Any]) -> str:
        """As `vformat`, which takes a sentence apart each time; what is more than `{name:format}` is left to it."""
        parts = []
        for literal, name, format_spec, conversion in _parsed(text):
            parts.append(literal)
            if name is None:
                continue
            if conversion or "{" in (format_spec or "") or not name.isidentifier():
                return self.vformat(text, (), values)
            parts.append(self.format_field(values[name], format_spec or ""))
        return "".join(parts)

    def format_field(self, value: Any, format_spec: str) -> str:
        asked = _quantity_asked(format_spec)
        if asked is not None:
            return _quantity(value, asked["quantity"], asked["sign"], asked["digits"])
        text = format(value, format_spec or ("g" if isinstance(value, float) else ""))
        if isinstance(value, float) and "-" in text and not any(digit in text for digit in "123456789"):
            text = format(0.0, format_spec or "g")  # what is written as nought has no minus sign
        return text.replace(".", _decimal_point) if isinstance(value, Real) else text


_formatter = _Formatter()


def _quantity(value: float, quantity: str, sign: str, digits: str | None) -> str:
    if not math.isfinite(value):
        return NO_VALUE
    if quantity == "length":
        quantity = _length_unit
    if quantity == "in":
        value = value / MM_PER_INCH
    usual = {"mm": MM_DIGITS, "in": INCH_DIGITS, "deg": DEG_DIGITS}[quantity]
    number = _formatter.format_field(float(value), f"{sign or '-'}z.{digits or usual}f")
    return (
        f"{number}°"
        if quantity == "deg"
        else tr("{length} in", length=number)
        if quantity == "in"
        else f"{number} mm"
    )


def tr(text: str, /, **values: object) -> str:
    """The text in the present language, its `{name}` places filled with the values.

    Written as one literal of whole words, so that it can be collected for translators; parts of a sentence glued
    together cannot be put in another order.
    """
    if _translate is not None:
        text = _translate(text)
    return _formatter.fill(text, values) if values else text


def tr_n(one: str, many: str, /, *, count: int, **values: object) -> str:
    """The text for one thing or the text for several, as `count` says; both may hold the place `{count}`."""
    return tr(one if abs(count) == 1 else many, count=count, **values)


def marked(text: T, /) -> T:
    """The text as it stands, collected for translators: for tables made at import, which `tr` reads out later."""
    return text


@dataclass(frozen=True)
class Message:
    """A sentence that is kept and shown later: it is put into words, in the language then spoken, by `str`."""

    text: str
    values: Mapping[str, object] = field(default_factory=dict)

    def __str__(self) -> str:
        return tr(self.text, **self.values)


def number(value: float, digits: int | str = "g") -> str:
    """A bare number for reading, as on a scale; within a sentence the place's own format does it.

    `digits` are those after the decimal sign, or a format such as "+.2f" or ".4g".
    """
    return _formatter.format_field(value, f".{digits}f" if isinstance(digits, int) else digits)


def format_length(mm: float, inches: bool | None = None, digits: int | None = None) -> str:
    """A length [mm] with its unit; `inches`: None is the unit in force. See `{gap:length}` above."""
    unit = "length" if inches is None else "in" if inches else "mm"
    return _quantity(mm, unit, "", None if digits is None else str(digits))


def format_angle(deg: float, signed: bool = False, digits: int = DEG_DIGITS) -> str:
    """An angle [deg] with its sign of degrees; `signed` keeps the plus."""
    return _quantity(deg, "deg", "+" if signed else "", str(digits))


def with_minus(text: str) -> str:
    """A text whose negative numbers have the minus of typography in place of a hyphen, as painted and printed."""
    return re.sub(r"(?<![\w.,])-(?=\d)", "−", text) if "-" in text else text


def unbroken(text: str) -> str:
    """A text in which no line ends between a number and its unit of length."""
    return re.sub(r"(?<=\d) (?=(?:mm|in)\b)", "\u00a0", text)


def alternatives(items: Sequence[str]) -> str:
    """At least one thing, the last after an "or": "a, b or c"."""
    *others, last = items
    return tr("{others} or {last}", others=", ".join(others), last=last) if others else last


def any_of(items: Sequence[str]) -> str:
    """At least one thing, with "or" between: "a or b or c"."""
    first, *others = items
    for other in others:
        first = tr("{first} or {other}", first=first, other=other)
    return first


def together(items: Sequence[str]) -> str:
    """At least one thing, with "and" between: "a and b and c"."""
    first, *others = items
    for other in others:
        first = tr("{first} and {other}", first=first, other=other)
    return first


def speak_through(translate: Callable[[str], str] | None, decimal_point: str = ".") -> None:
    """Take the translator of the window's language and its decimal sign; None is English."""
    global _translate, _decimal_point
    _translate = translate
    _decimal_point = decimal_point


def length_unit() -> LengthUnit:
    """The unit that lengths are written in."""
    return _length_unit


def lengths_in(unit: LengthUnit) -> None:
    """Write lengths in this unit from now on."""
    global _length_unit
    _length_unit = unit


@contextmanager
def in_english() -> Iterator[None]:
    """English, its decimal point and millimetres for a while: for files that machines read."""
    was, unit = (_translate, _decimal_point), _length_unit
    speak_through(None)
    lengths_in("mm")
    try:
        yield
    finally:
        speak_through(*was)
        lengths_in(unit)


def inside(title: str) -> str:
    """A title within a sentence: English begins it small; other languages have it as it stands."""
    return title if _translate is not None else title[:1].lower() + title[1:]
