"""Easing backplate or contact screw round until something is seen to change: small steps, as a careful hand makes."""

from __future__ import annotations

from collections.abc import Callable
from typing import Literal, TypeVar

Eased = Literal["plate", "screw"]

STEPS_DEG: dict[Eased, float] = {"plate": 0.05, "screw": 0.5}
"""Size of one step of each [deg]: either moves the contacts by a few thousandths of a millimetre."""

_MOST = 4000
"""Steps after which a hand gives up; stops end the travel long before."""

T = TypeVar("T")


def ease(room: T, step: Callable[[T], T], sees: Callable[[T], object]) -> T:
    """A room after so many steps as it takes until what is seen differs, or until a step changes nothing more."""
    before = sees(room)
    for _ in range(_MOST):
        after = step(room)
        if after == room:
            break
        room = after
        if sees(room) != before:
            break
    return room
