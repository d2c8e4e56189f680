"""The bench as a value: what is on it, and the actions a person can take."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from typing import Literal

from magview.physics.coupling import rotor_shift_deg
from magview.physics.setting import Readings, internal_timing
from magview.spec.base import SpecError
from magview.spec.engine import Installation
from magview.spec.magneto import Magneto

ROTOR_LIMIT_DEG = 1e6
"""Some 2,800 turns either way: beyond it a rotor angle is a slip of the keyboard, not a position."""

BTDC_LIMIT_DEG = 90.0
"""A lamp reading further from top dead centre belongs to another stroke."""

Side = Literal["left", "right"]


@dataclass(frozen=True)
class Mounting:
    """One magneto's place on the engine. Teeth positive with rotation, counted from as found."""

    phase_deg: float
    """Rotor angle with No. 1 at top dead centre and the teeth as found [rotor deg]: what the lamp told."""
    wanted_btdc_deg: float
    magneto_teeth: int = 0
    disc_teeth: int = 0


@dataclass(frozen=True)
class Engaged:
    """A magneto on its engine: two mountings, of which one is in view. Both share the coupling's teeth."""

    installation: Installation
    left: Mounting
    right: Mounting
    side: Side

    @property
    def mounting(self) -> Mounting:
        """The mounting in view."""
        return self.left if self.side == "left" else self.right

    @property
    def ratio(self) -> float:
        """Rotor turns per crank turn."""
        return self.installation.rotor_turns_per_crank_turn


@dataclass(frozen=True)
class BenchState:
    """Everything the bench shows, as one frozen value. Angles [deg], signs as in ``model.md`` §1."""

    magneto: Magneto
    rotor_deg: float = 0.0
    backplate_deg: float = 0.0
    screw_deg: float = 0.0
    engaged: Engaged | None = None


# ---------------------------------------------------------------------- actions


@dataclass(frozen=True)
class PlaceMagneto:
    """Put a magneto on the bench as it was designed to be set, with the rotor at the E-gap."""

    magneto: Magneto


@dataclass(frozen=True)
class PlaceInstallation:
    """Put a magneto on the bench together with its engine and coupling, timed as wanted."""

    installation: Installation


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


@dataclass(frozen=True)
class TurnCrank:
    """Turn the crank to an angle from No. 1's firing top dead centre [crank deg]; the rotor goes with it."""

    to_deg: float


@dataclass(frozen=True)
class ReadLamp:
    """Enter where the lamp says a magneto fires [crank deg BTDC]; its teeth count as found from here."""

    side: Side
    btdc_deg: float


@dataclass(frozen=True)
class WantTiming:
    """Say where a magneto should fire [crank deg BTDC]."""

    side: Side
    btdc_deg: float


@dataclass(frozen=True)
class MoveTeeth:
    """Move the coupling to a position from as found: magneto flange on the disc, disc on the drive flange."""

    magneto_teeth: int
    disc_teeth: int


@dataclass(frozen=True)
class ViewSide:
    """Look at the other magneto's coupling."""

    side: Side


Action = (
    PlaceMagneto | PlaceInstallation | TurnRotor | TurnBackplate | TurnScrew | SetBoth
    | TurnCrank | ReadLamp | WantTiming | MoveTeeth | ViewSide
)  # fmt: skip


def new_bench(item: Magneto | Installation) -> BenchState:
    """A bench with a magneto at its designed setting, rotor at the E-gap; on its engine, timed as wanted.

    Raises SpecError where the cam cannot be followed (undercut); nothing is placed then.
    """
    magneto = item if isinstance(item, Magneto) else item.magneto
    internal_timing(magneto)
    state = BenchState(
        magneto=magneto, rotor_deg=magneto.e_gap_deg, backplate_deg=magneto.designed_setting.backplate_deg
    )
    if isinstance(item, Magneto):
        return state
    wanted, ratio = item.engine.firing_btdc_deg, item.rotor_turns_per_crank_turn
    opens = opening_deg(state)
    left = Mounting(opens + ratio * wanted.left, wanted.left)
    right = Mounting(opens + ratio * wanted.right, wanted.right)
    side: Side = "right" if item.position == "right" else "left"
    return replace(state, engaged=Engaged(item, left, right, side))


def apply(state: BenchState, action: Action) -> BenchState:
    """The state after an action; a new value, the old one is left as it was.

    Raises
    ------
    SpecError : an angle is not finite or out of all reason, a magneto cannot be placed, or there is no engine
        for an action that needs one.
    """
    match action:
        case PlaceMagneto(magneto):
            return new_bench(magneto)
        case PlaceInstallation(installation):
            return new_bench(installation)
        case TurnRotor(to_deg):
            limits = (-ROTOR_LIMIT_DEG, ROTOR_LIMIT_DEG)
            return replace(state, rotor_deg=_within(to_deg, limits, "the rotor's angle"))
        case TurnBackplate(to_deg):
            return replace(state, backplate_deg=_plate(state, to_deg))
        case TurnScrew(to_deg):
            return replace(state, screw_deg=_screw(state, to_deg))
        case SetBoth(backplate_deg, screw_deg):
            return replace(state, backplate_deg=_plate(state, backplate_deg), screw_deg=_screw(state, screw_deg))
        case _:
            return _apply_to_engine(state, action)


def _apply_to_engine(
    state: BenchState, action: TurnCrank | ReadLamp | WantTiming | MoveTeeth | ViewSide
) -> BenchState:
    engaged = state.engaged
    if engaged is None:
        raise SpecError("this magneto is not on an engine: open an installation first")
    match action:
        case TurnCrank(to_deg):
            limits = (-ROTOR_LIMIT_DEG / 20, ROTOR_LIMIT_DEG / 20)
            return _with_crank(state, engaged, _within(to_deg, limits, "the crank's angle"))
        case ReadLamp(side, btdc_deg):
            opens = opening_deg(state)
            if math.isnan(opens):
                raise SpecError("with this setting the contacts never open and close, so the lamp tells no timing")
            reads = _within(btdc_deg, (-BTDC_LIMIT_DEG, BTDC_LIMIT_DEG), "the lamp's reading")
            found = replace(
                _mounting(engaged, side), phase_deg=opens + engaged.ratio * reads, magneto_teeth=0, disc_teeth=0
            )
            return _with_mounting(state, engaged, side, found)
        case WantTiming(side, btdc_deg):
            wanted = _within(btdc_deg, (-BTDC_LIMIT_DEG, BTDC_LIMIT_DEG), "the wanted timing")
            return _with_mounting(state, engaged, side, replace(_mounting(engaged, side), wanted_btdc_deg=wanted))
        case MoveTeeth(magneto_teeth, disc_teeth):
            coupling = engaged.installation.coupling
            if abs(magneto_teeth) > coupling.magneto_teeth or abs(disc_teeth) > coupling.drive_teeth:
                raise SpecError("a whole turn of teeth brings the coupling back to where it was, with the finger off")
            moved = replace(engaged.mounting, magneto_teeth=magneto_teeth, disc_teeth=disc_teeth)
            return _with_mounting(state, engaged, engaged.side, moved)
        case ViewSide(side):
            return _with_crank(state, replace(engaged, side=side), crank_deg(state))


# ---------------------------------------------------------------------- what a state says


def readings(state: BenchState) -> Readings:
    """What the present setting gives, lobe by lobe."""
    return internal_timing(state.magneto).readings(state.backplate_deg, state.screw_deg)


def opening_deg(state: BenchState) -> float:
    """Rotor angle at which lobe 1 opens the contacts now [rotor deg]; NaN if it never does."""
    timing = internal_timing(state.magneto)
    error, _ = timing.opening_and_gap(state.backplate_deg, state.screw_deg)
    return float(error) + float(timing.places_deg[0])


def shift_deg(engaged: Engaged, side: Side) -> float:
    """How far the teeth moved carry the rotor ahead of as found [rotor deg]."""
    mounting, coupling = _mounting(engaged, side), engaged.installation.coupling
    return rotor_shift_deg(coupling.magneto_teeth, coupling.drive_teeth, mounting.magneto_teeth, mounting.disc_teeth)


def crank_deg(state: BenchState) -> float:
    """Crank angle from No. 1's firing top dead centre [crank deg]: the rotor's, by coupling and gears.

    Raises SpecError without an engine.
    """
    engaged = _engaged(state)
    return (state.rotor_deg - engaged.mounting.phase_deg - shift_deg(engaged, engaged.side)) / engaged.ratio


def firing_btdc_deg(state: BenchState, side: Side, as_found: bool = False) -> float:
    """Where a magneto fires No. 1 now, or with its teeth as found [crank deg BTDC]; NaN if it never opens.

    Raises SpecError without an engine.
    """
    engaged = _engaged(state)
    shift = 0.0 if as_found else shift_deg(engaged, side)
    return (_mounting(engaged, side).phase_deg + shift - opening_deg(state)) / engaged.ratio


def _engaged(state: BenchState) -> Engaged:
    if state.engaged is None:
        raise SpecError("this magneto is not on an engine")
    return state.engaged


def _mounting(engaged: Engaged, side: Side) -> Mounting:
    return engaged.left if side == "left" else engaged.right


def _with_crank(state: BenchState, engaged: Engaged, crank: float) -> BenchState:
    rotor = engaged.mounting.phase_deg + shift_deg(engaged, engaged.side) + engaged.ratio * crank
    return replace(state, engaged=engaged, rotor_deg=rotor)


def _with_mounting(state: BenchState, engaged: Engaged, side: Side, mounting: Mounting) -> BenchState:
    """The crank stays where it is; what was done to the coupling moves the rotor."""
    changed = replace(engaged, left=mounting) if side == "left" else replace(engaged, right=mounting)
    return _with_crank(state, changed, crank_deg(state))


def _plate(state: BenchState, to_deg: float) -> float:
    return _within(to_deg, state.magneto.backplate.range_deg, "the backplate's angle")


def _screw(state: BenchState, to_deg: float) -> float:
    return _within(to_deg, state.magneto.contact_screw.range_deg, "the contact screw's angle")


def _within(value: float, limits: tuple[float, float], what: str) -> float:
    if not math.isfinite(value):
        raise SpecError(f"{what} is {value}; it must be a finite number of degrees")
    return min(max(float(value), limits[0]), limits[1])
