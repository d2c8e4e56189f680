"""The bench as a value: what is on it, and the actions a person can take."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace

from magview.physics.setting import Readings, internal_timing
from magview.spec.base import SpecError
from magview.spec.magneto import Magneto

ROTOR_LIMIT_DEG = 1e6
"""Some 2,800 turns either way: beyond it a rotor angle is a slip of the keyboard, not a position."""


@dataclass(frozen=True)
class BenchState:
    """Everything the bench shows, as one frozen value. Angles [deg], signs as in ``model.md`` §1."""

    magneto: Magneto
    rotor_deg: float = 0.0
    backplate_deg: float = 0.0
    screw_deg: float = 0.0


@dataclass(frozen=True)
class PlaceMagneto:
    """Put a magneto on the bench as it was designed to be set, with the rotor at the E-gap."""

    magneto: Magneto


@dataclass(frozen=True)
class TurnRotor:
    """Turn the rotor to an angle from the neutral before No. 1 fires [deg], positive in service."""

    to_deg: float


@dataclass(frozen=True)
class TurnBackplate:
    """Turn the backplate to an angle [deg], positive with cam rotation; it stops at the slot's end."""

    to_deg: float


@dataclass(frozen=True)
class TurnScrew:
    """Turn the contact screw to an angle [deg], positive = contacts closer; it stops at its travel's end."""

    to_deg: float


@dataclass(frozen=True)
class SetBoth:
    """Put backplate and contact screw where an adjustment says [deg]."""

    backplate_deg: float
    screw_deg: float


Action = PlaceMagneto | TurnRotor | TurnBackplate | TurnScrew | SetBoth


def new_bench(magneto: Magneto) -> BenchState:
    """A bench with this magneto at its designed setting, rotor at the E-gap.

    Raises SpecError where the cam cannot be followed (undercut); nothing is placed then.
    """
    internal_timing(magneto)
    return BenchState(
        magneto=magneto, rotor_deg=magneto.e_gap_deg, backplate_deg=magneto.designed_setting.backplate_deg
    )


def apply(state: BenchState, action: Action) -> BenchState:
    """The state after an action; a new value, the old one is left as it was.

    Raises
    ------
    SpecError : an angle is not finite or out of all reason, or a magneto cannot be placed.
    """
    match action:
        case PlaceMagneto(magneto):
            return new_bench(magneto)
        case TurnRotor(to_deg):
            limits = (-ROTOR_LIMIT_DEG, ROTOR_LIMIT_DEG)
            return replace(state, rotor_deg=_within(to_deg, limits, "the rotor's angle"))
        case TurnBackplate(to_deg):
            return replace(state, backplate_deg=_plate(state, to_deg))
        case TurnScrew(to_deg):
            return replace(state, screw_deg=_screw(state, to_deg))
        case SetBoth(backplate_deg, screw_deg):
            return replace(state, backplate_deg=_plate(state, backplate_deg), screw_deg=_screw(state, screw_deg))


def readings(state: BenchState) -> Readings:
    """What the present setting gives, lobe by lobe."""
    return internal_timing(state.magneto).readings(state.backplate_deg, state.screw_deg)


def _plate(state: BenchState, to_deg: float) -> float:
    return _within(to_deg, state.magneto.backplate.range_deg, "the backplate's angle")


def _screw(state: BenchState, to_deg: float) -> float:
    return _within(to_deg, state.magneto.contact_screw.range_deg, "the contact screw's angle")


def _within(value: float, limits: tuple[float, float], what: str) -> float:
    if not math.isfinite(value):
        raise SpecError(f"{what} is {value}; it must be a finite number of degrees")
    return min(max(float(value), limits[0]), limits[1])
