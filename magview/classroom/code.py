"""Numbers as characters that survive a blackboard, and a check that finds what was mistyped.

The alphabet is base 32 of RFC 4648, section 6: the letters A to Z and the digits 2 to 7, without its padding. Case
does not matter; the digits 0, 1 and 8, which the alphabet leaves out, are read as the letters O, I and B that they
are taken for; hyphens and spaces are passed over. Two characters of the same alphabet close the code: a Reed–Solomon
code over GF(32) (Reed and Solomon 1960, J. SIAM 8, 300–304), shortened, with roots 1 and α. Its distance is three:
any one or two wrong characters are found, and so is every swap of two.
"""

from __future__ import annotations

import unicodedata
from collections.abc import Sequence

from magview.spec.base import SpecError
from magview.spec.language import tr

ALPHABET = "ABCDEFGHIJKLMNOPQRSTUVWXYZ234567"
CHECKS = 2
MOST = 31
"""Characters in all: α has this order, and beyond it two errors could cancel."""

_GROUP = 4
_READ_AS = str.maketrans({"0": "O", "1": "I", "8": "B"})
_PASSED_OVER = " -\t\u2010\u2011\u2012\u2013\u2014\u2212.\u00a0"
_POLYNOMIAL = 0b100101
"""x⁵ + x² + 1, primitive."""


def _powers() -> list[int]:
    found, value = [], 1
    for _ in range(MOST):
        found.append(value)
        value <<= 1
        if value > MOST:
            value ^= _POLYNOMIAL
    return found


_EXP = _powers()
_LOG = {value: power for power, value in enumerate(_EXP)}


def _times(a: int, b: int) -> int:
    return _EXP[(_LOG[a] + _LOG[b]) % MOST] if a and b else 0


def _syndromes(symbols: Sequence[int]) -> tuple[int, int]:
    """The word's value at 1 and at α; the last symbol has power 0. Both are nought for a word of the code."""
    at_one = at_alpha = 0
    for symbol in symbols:
        at_one ^= symbol
        at_alpha = _times(at_alpha, _EXP[1]) ^ symbol
    return at_one, at_alpha


def checked(symbols: Sequence[int]) -> str:
    """Symbols (0…31 each, at most 29) as a code in groups of four, its two checks last."""
    if len(symbols) > MOST - CHECKS:
        raise ValueError(tr("{count} symbols; at most {most} can be checked", count=len(symbols), most=MOST - CHECKS))
    at_one, at_alpha = _syndromes([*symbols, 0, 0])
    # c₁ + c₀ = S(1) and α·c₁ + c₀ = S(α)
    both = at_one ^ at_alpha
    divisor = _LOG[_EXP[1] ^ 1]
    first = _EXP[(_LOG[both] - divisor) % MOST] if both else 0
    text = "".join(ALPHABET[s] for s in (*symbols, first, at_one ^ first))
    return "-".join(text[i : i + _GROUP] for i in range(0, len(text), _GROUP))


def plain(text: str) -> str:
    """A code as typed, without what is passed over, in the alphabet's own letters."""
    wide = unicodedata.normalize("NFKC", text).upper()
    return "".join(c for c in wide if c not in _PASSED_OVER).translate(_READ_AS)


def symbols_of(text: str) -> list[int]:
    """The symbols of a code as typed, without its checks. Raises SpecError for one that was mistyped."""
    letters = plain(text)
    if not letters:
        raise SpecError(tr("No code was given; it looks like KAAJ-R6D3-BJQA-VP7J"))
    for place, letter in enumerate(letters, start=1):
        if letter not in ALPHABET:
            raise SpecError(
                tr("Character {place} of the code is “{letter}”; codes have the letters A to Z and the digits 2 to 7",
                   place=place, letter=letter)
            )  # fmt: skip
    if not CHECKS < len(letters) <= MOST:
        raise SpecError(
            tr("The code has {count} characters; codes have at most {most}", count=len(letters), most=MOST)
            if len(letters) > MOST
            else tr("The code is cut short: it has {count} characters", count=len(letters))
        )
    symbols = [ALPHABET.index(letter) for letter in letters]
    if _syndromes(symbols) != (0, 0):
        raise SpecError(tr("The code “{code}” was mistyped: its check characters do not fit", code=text.strip()[:60]))
    return symbols[:-CHECKS]


class Bits:
    """Whole numbers put behind one another, most significant bit first, as symbols of five bits."""

    def __init__(self, symbols: Sequence[int] = ()) -> None:
        self._value, self._left = 0, 5 * len(symbols)
        for symbol in symbols:
            self._value = self._value << 5 | symbol

    def put(self, value: int, bits: int) -> None:
        """Add a number at the end. Raises ValueError for one that needs more bits."""
        if not 0 <= value < 1 << bits:
            raise ValueError(tr("{value} does not fit {bits} bits", value=value, bits=bits))
        self._value, self._left = self._value << bits | value, self._left + bits

    def take(self, bits: int) -> int:
        """Take a number from the front. Raises ValueError where fewer bits are left."""
        if bits > self._left:
            raise ValueError(tr("{left} bits are left, {wanted} are wanted", left=self._left, wanted=bits))
        self._left -= bits
        found, self._value = self._value >> self._left, self._value & ((1 << self._left) - 1)
        return found

    @property
    def left(self) -> int:
        """Bits not taken yet."""
        return self._left

    def symbols(self) -> list[int]:
        """The bits written, filled up with zeros to whole symbols."""
        fill = -self._left % 5
        value, count = self._value << fill, (self._left + fill) // 5
        return [value >> 5 * (count - 1 - i) & 31 for i in range(count)]
