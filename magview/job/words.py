"""A reading in words for people: both units of length, signs as early or late, limits as their reading is written."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from magview.bench.engine_words import disc_words
from magview.bench.sureness import percent_words
from magview.bench.verdict import mark_words
from magview.bench.words import teeth_words, way_words
from magview.spec.fields import Quantity, Sign
from magview.spec.language import format_angle, marked, number, tr
from magview.spec.magneto import Rotation
from magview.spec.units import DEG_DIGITS, INCH_DIGITS, MM_DIGITS, digits_beside, length_digits


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


FACTOR, CHANCE = Quantity("k"), Quantity("%", scale=100.0)
"""A coverage factor and a probability."""


def shown(quantity: Quantity, value: Any, digits: Digits = _USUAL, rotation: Rotation | None = None) -> str:
    """A reading for people: both length units, words for signs; teeth also as seen, where the rotation is known."""
    if value is None:
        return "☐"
    if isinstance(value, bool):
        return tr("yes") if value else tr("no")
    if isinstance(value, str):
        return value
    match quantity.unit:
        case "mm":
            length = _length(abs(value), digits)
            return mark_words(length, value) if quantity.sign is Sign.LATE else _length(value, digits)
        case "°":
            return _angle(quantity, value, digits)
        case "teeth" if value == 0 and quantity.sign is Sign.PLAIN:
            return tr("in line")
        case "teeth":
            return way_words(value) if rotation is None else teeth_words(value, rotation, "drive end")
        case "%":
            return percent_words(value)
        case "k":
            return tr("k = {factor:.2f}", factor=value)
    return f"{number(value)} {quantity.unit}".strip()


def _angle(quantity: Quantity, degrees: float, digits: Digits) -> str:
    match quantity.sign:
        case Sign.BEFORE_TOP:
            side = (
                marked("{angle:.{digits}deg} before top dead centre")
                if degrees >= 0
                else marked("{angle:.{digits}deg} after top dead centre")
            )
            return tr(side, angle=abs(degrees), digits=digits.deg)
        case Sign.AFTER_ZERO:
            return disc_words(degrees, digits.deg)
        case Sign.LATE:
            return _early_or_late(degrees, digits)
    signed = quantity.sign in (Sign.WITH_ROTATION, Sign.CLOSER, Sign.EITHER)
    return format_angle(degrees, signed, digits.deg)


def limits_words(
    quantity: Quantity,
    low: float | None,
    high: float | None,
    digits: Digits = _USUAL,
    above_nothing: bool = False,
) -> str:
    """Limits as their reading is written; nothing where there are none. A drop is always to be above nothing."""
    if above_nothing and low is None:
        if high is None:
            return tr("above 0 rpm")
        return tr("above 0 rpm, at most {limit}", limit=_plain(quantity, high, digits))
    if low is None and high is None:
        return ""
    if low is None or high is None:
        return (
            tr("at most {limit}", limit=_plain(quantity, high, digits))
            if low is None
            else tr("at least {limit}", limit=_plain(quantity, low, digits))
        )
    if low == -high:
        return tr("within ±{limit}", limit=_plain(quantity, high, digits))
    return tr("{low} to {high}", low=_plain(quantity, low, digits), high=_plain(quantity, high, digits))


def _plain(quantity: Quantity, value: float | None, digits: Digits) -> str:
    """A limit without words for its sign."""
    assert value is not None
    return shown(Quantity(quantity.unit, quantity.of), value, digits)


def _length(mm: float, digits: Digits) -> str:
    return tr("{length:.{mm}mm} = {length:.{inch}in}", length=mm, mm=digits.mm, inch=digits.inch)


def _early_or_late(degrees: float, digits: Digits) -> str:
    text = format_angle(abs(degrees), digits=digits.deg)
    if text == format_angle(0.0, digits=digits.deg):
        return text
    return tr("{angle} late", angle=text) if degrees > 0 else tr("{angle} early", angle=text)
