"""Hidden numbers from a seed, alike on every machine and whatever else is drawn.

A draw is a pure function of the seed and of the name of what is drawn: the first 53 bits of the SHA-256 of
``seed/name/name…`` in UTF-8, as a fraction of 2⁵³. Nothing hangs on the order of draws, so that adding a fault
to an exercise leaves the others as they were.
"""

from __future__ import annotations

from hashlib import sha256

_BITS = 53
"""Bits that a double holds exactly: the division below rounds nothing."""


def uniform(seed: int, *names: str) -> float:
    """A number from 0 up to but without 1, for a seed and the names of what is drawn."""
    digest = sha256("/".join((str(seed), *names)).encode()).digest()
    return (int.from_bytes(digest[:8], "big") >> (64 - _BITS)) / (1 << _BITS)


def between(seed: int, low: float, high: float, *names: str) -> float:
    """A number between two bounds, rounded to a millionth so that it reads alike wherever it is written."""
    return round(low + (high - low) * uniform(seed, *names), 6)


def whole(seed: int, low: int, high: int, *names: str) -> int:
    """A whole number from `low` to `high`, both included."""
    return low + int((high - low + 1) * uniform(seed, *names))
