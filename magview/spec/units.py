"""Units of length and how many digits readings are written with."""

from __future__ import annotations

MM_PER_INCH = 25.4
"""[mm/in] exact: international yard and pound agreement, 1959 (NIST SP 811, appendix B)."""

MM_DIGITS, INCH_DIGITS, DEG_DIGITS = 3, 4, 2
"""Digits after the decimal sign that readings are written with."""

MM_PER_THOU = MM_PER_INCH / 1000.0

_MAX_DIGITS = 11
_HAIR = 1e-9
"""A billionth beyond a limit is judged within it."""


def digits_beside(value: float, low: float | None, high: float | None, digits: int, hair: float = _HAIR) -> int:
    """Return the digits for value and limits, so that a value outside them also reads as outside.

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
    for places in range(digits, _MAX_DIGITS):
        under = low is not None and value < low - hair and round(value, places) >= round(low, places)
        over = high is not None and value > high + hair and round(value, places) <= round(high, places)
        if not (under or over):
            return places
    return _MAX_DIGITS


def length_digits(mm: float, low: float | None, high: float | None, inches: bool) -> int:
    """`digits_beside` for a length and its limits [mm], in the unit it is written in."""
    unit = MM_PER_INCH if inches else 1.0
    ends = [None if end is None else end / unit for end in (low, high)]
    return digits_beside(mm / unit, ends[0], ends[1], INCH_DIGITS if inches else MM_DIGITS, _HAIR / unit)
