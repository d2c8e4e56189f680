"""The bench as a value: what is on it, and what a state says."""

from __future__ import annotations

import math
from dataclasses import dataclass, field, replace
from functools import lru_cache
from typing import Literal

from magview.physics.cam.setting import InternalTiming, Readings, internal_timing
from magview.physics.electric.circuit import PRIMARY_OHM, Circuit, Lead, circuit
from magview.physics.engine.coupling import rotor_shift_deg
from magview.physics.engine.lamp import Foretold, lamp_after_deg
from magview.physics.engine.play import Play
from magview.physics.engine.timing_light import LampKind, lamp_burns
from magview.physics.trials.trial import HowRead, Trial
from magview.physics.wear.inspection import Inspection
from magview.spec.base import SpecError
from magview.spec.engine import Installation
from magview.spec.language import tr
from magview.spec.magneto import Magneto

Side = Literal["left", "right"]
By = Literal["setting", "wear", "pip", "lead", "crank"]
"""Parts of the bench that hands can set."""
Check = Literal["reading", "stroke", "mark", "finger"]
"""Checks that a person can note for a reading of the lamp."""

TOUCHING_MM = 0.0005
"""Half a micron is no gap to any instrument; contacts just touching must not read "open 0.000"."""


@dataclass(frozen=True)
class Mounting:
    """One magneto's place on the engine. Teeth positive with rotation, counted from as found."""

    phase_deg: float
    """Rotor angle with No. 1 at top dead centre and the teeth as found [rotor deg], by the lamp."""
    wanted_btdc_deg: float
    reads_btdc_deg: float
    """The reading as it was entered [crank deg BTDC]; setting the contacts anew makes it out of date.

    Together with the phase it holds the internal setting that it was taken at: `read_opening_deg`.
    """
    magneto_teeth: int = 0
    disc_teeth: int = 0
    painted_magneto_teeth: int = 0
    """Teeth the flange had been moved since its mark was painted, when the lamp was last read."""
    painted_disc_teeth: int = 0
    lamp_read: bool = False
    """Whether `reads_btdc_deg` was entered; a new bench begins with the timing wanted."""
    painted: bool = False
    """Whether marks were painted."""
    foretold: Foretold | None = None
    """Expected reading of the lamp when it was last read, by the reading before and the acts since."""
    checked: tuple[Check, ...] = ()
    """Checks noted for this reading."""

    @property
    def marks_apart(self) -> tuple[int, int]:
        """Distances of the painted marks now: magneto flange from the disc, disc from the drive flange [teeth]."""
        return self.painted_magneto_teeth + self.magneto_teeth, self.painted_disc_teeth + self.disc_teeth

    def read_opening_deg(self, rotor_turns_per_crank_turn: float) -> float:
        """The setting that the lamp was read at: where the lobe in play opened the contacts then [rotor deg]."""
        return self.phase_deg - rotor_turns_per_crank_turn * self.reads_btdc_deg


@dataclass(frozen=True)
class Engaged:
    """A magneto and its engine: two mountings, of which one is in view. Both share the coupling's teeth."""

    installation: Installation
    left: Mounting
    right: Mounting
    side: Side
    off_crank_deg: float | None = None
    """Angle at which the crank was left while the magneto is off the engine [crank deg]; None while it is on."""
    play_deg: float = 0.0
    """Lead of the rotor over the drive's flange within the coupling's backlash [rotor deg]."""
    train_deg: float = 0.0
    """Lead of the drive's flange over the crank within the play of the drive train [rotor deg]."""

    @property
    def play(self) -> Play:
        """Both, from crank to rotor."""
        return Play(self.train_deg, self.play_deg)

    @property
    def train_play_deg(self) -> float:
        """The whole play of the drive train [rotor deg]."""
        return self.installation.drive_play_deg * self.ratio

    @property
    def mounting(self) -> Mounting:
        """The mounting in view."""
        return self.left if self.side == "left" else self.right

    @property
    def mounted(self) -> bool:
        """Whether the magneto is on the engine."""
        return self.off_crank_deg is None

    @property
    def ratio(self) -> float:
        """Rotor turns per crank turn [-]."""
        return self.installation.rotor_turns_per_crank_turn


@dataclass(frozen=True)
class BenchState:
    """Everything the bench shows, as one frozen value. Angles [deg], signs as in guide: theory-setting."""

    magneto: Magneto
    rotor_deg: float = 0.0
    backplate_deg: float = 0.0
    screw_deg: float = 0.0
    engaged: Engaged | None = None
    held: bool = True
    """Whether a hand holds the rotor; let go, it swings to where the magnet wants it."""
    speed_deg_s: float = 0.0
    """Speed at which a rotor let go swings [rotor deg/s]."""
    clock_steps: int = 0
    """The state's own clock, in steps of the swing; it runs while the rotor is the magnet's."""
    lock_tight: bool = False
    """Lock screw of the contact screw."""
    clamps_tight: bool = False
    """Clamp screws of the backplate."""
    lead: Lead = field(default_factory=Lead)
    """The switch lead of the magneto in view."""
    other_lead: Lead = field(default_factory=Lead)
    """Switch lead of the engine's other magneto: one switch, two leads."""
    lamp_kind: LampKind = "open"
    """Kind of timing light across the contacts. The coil stays connected on the bench."""
    trials: tuple[Trial, ...] = ()
    """Trials of the largest gap on this magneto, in the order they were made."""
    trials_read: HowRead = field(default_factory=HowRead)
    """In what the plate is read at trials, and how closely plate, opening and blades are."""
    inspections: tuple[Inspection, ...] = ()
    """Inspections of this setting over its hours, in the order they were noted."""
    inspected_at: tuple[tuple[float, float], ...] = ()
    """Backplate and contact screw when each of them was noted [deg]."""
    touched: frozenset[By] = field(default=frozenset(), compare=False)
    """Parts set by hands since the magneto was put here, even to the same value; the rest is as a bench begins.

    No part of what makes two benches the same: setting anew what is so already is no step.
    """


# ---------------------------------------------------------------------- what a state says


def same_but_worn(one: Magneto, other: Magneto) -> bool:
    """Whether two magnetos differ in nothing but their condition."""
    return one is other or all(
        getattr(one, name) == getattr(other, name) for name in type(one).model_fields if name != "condition"
    )


def readings(state: BenchState) -> Readings:
    """Readings of the present setting, lobe by lobe."""
    return _readings(internal_timing(state.magneto), state.backplate_deg, state.screw_deg)


@lru_cache(maxsize=32)
def _readings(timing: InternalTiming, backplate_deg: float, screw_deg: float) -> Readings:
    """Computed once for a setting: while the rotor turns, everything that is shown asks for them again."""
    return timing.readings(backplate_deg, screw_deg)


def outdated_inspections(state: BenchState) -> tuple[bool, ...]:
    """For each inspection whether it was noted of another setting: plate or screw were turned since."""
    return tuple(at != (state.backplate_deg, state.screw_deg) for at in state.inspected_at)


def opening_deg(state: BenchState) -> float:
    """Rotor angle at which lobe 1 opens the contacts now [rotor deg]; NaN if it never does."""
    timing = internal_timing(state.magneto)
    error, _ = timing.opening_and_gap(state.backplate_deg, state.screw_deg)
    return float(error) + float(timing.places_deg[0])


def shift_deg(engaged: Engaged, side: Side) -> float:
    """Angle by which the teeth moved carry the rotor ahead of as found [rotor deg]."""
    mounting, coupling = mounting_of(engaged, side), engaged.installation.coupling
    if coupling is None:
        return 0.0
    return rotor_shift_deg(coupling.magneto_teeth, coupling.drive_teeth, mounting.magneto_teeth, mounting.disc_teeth)


def crank_deg(state: BenchState) -> float:
    """Crank angle from No. 1's firing top dead centre [crank deg]: the rotor's, by coupling and gears.

    Raises SpecError without an engine.
    """
    engaged = _engaged(state)
    if engaged.off_crank_deg is not None:
        return engaged.off_crank_deg
    drive = state.rotor_deg - engaged.mounting.phase_deg - shift_deg(engaged, engaged.side) - engaged.play.deg
    return drive / engaged.ratio


def firing_btdc_deg(state: BenchState, side: Side, as_found: bool = False) -> float:
    """Return where a magneto fires No. 1 now, or with its teeth as found [crank deg BTDC]; NaN if it never opens.

    Raises SpecError without an engine.
    """
    engaged = _engaged(state)
    opens, mounting = opening_deg(state), mounting_of(engaged, side)
    if math.isnan(opens):
        return math.nan
    return lamp_after_deg(
        mounting.reads_btdc_deg,
        engaged.ratio,
        opening_change_deg=opens - mounting.read_opening_deg(engaged.ratio),
        rotor_shift_deg=0.0 if as_found else shift_deg(engaged, side),
    )


_SAME_DEG = 1e-6
"""A reading goes through the rotor's angle and back; a millionth of a degree is no change of the timing."""


def lamp_reading_deg(state: BenchState, side: Side, as_found: bool = False) -> float | None:
    """Reading of the lamp [crank deg BTDC], while nothing that it depends on has been changed since.

    None for what was never read, or is no reading any more because contacts or, unless `as_found`, teeth were moved.
    Raises SpecError without an engine.
    """
    mounting = mounting_of(_engaged(state), side)
    fires = firing_btdc_deg(state, side, as_found)
    stands = mounting.lamp_read and abs(fires - mounting.reads_btdc_deg) < _SAME_DEG
    return mounting.reads_btdc_deg if stands else None


def gap_now_mm(state: BenchState) -> float:
    """Gap between the contacts as the rotor stands [mm]; 0 while they touch."""
    timing = internal_timing(state.magneto)
    gap = float(timing.gap_mm(state.rotor_deg, state.backplate_deg, state.screw_deg))
    return gap if gap > TOUCHING_MM else 0.0


def circuit_now(state: BenchState) -> Circuit:
    """Present state of the primary circuit and its instruments."""
    return circuit_with(state, gap_now_mm(state) <= 0.0)


def lamp_burns_now(state: BenchState) -> bool:
    """Whether the timing light burns, or for a buzzer buzzes high."""
    return lamp_burns(state.lamp_kind, circuit_now(state).lamp_sees_closed, coil_connected=True)


def circuit_with(state: BenchState, contacts_closed: bool) -> Circuit:
    """The same with the contacts as given. A file that does not say that there is a grounding tab has none."""
    electrical = state.magneto.electrical
    ohm = PRIMARY_OHM if electrical is None else electrical.resistance_ohm
    return circuit(state.lead, contacts_closed, state.magneto.grounding_tab is True, ohm)


def other_circuit(state: BenchState) -> Circuit | None:
    """Circuit of the engine's other magneto, its contacts open; None where there is no other.

    Both are alike but for their leads.
    """
    engaged = state.engaged
    if engaged is None or engaged.installation.position == "single":
        return None
    return circuit_with(replace(state, lead=state.other_lead), contacts_closed=False)


def swing_limits_deg(state: BenchState) -> tuple[float, float]:
    """Limits of the swing of a rotor let go [rotor deg]: within the coupling's play on the engine, freely off it."""
    engaged = state.engaged
    if engaged is None or not engaged.mounted:
        return -math.inf, math.inf
    behind = state.rotor_deg - engaged.play_deg
    return behind, behind + state.magneto.condition.coupling_backlash_deg


def with_play(engaged: Engaged, play: Play) -> Engaged:
    """The same with drive train and coupling elsewhere in their play."""
    return replace(engaged, play_deg=play.rotor_ahead_deg, train_deg=play.flange_ahead_deg)


def mounting_of(engaged: Engaged, side: Side) -> Mounting:
    """The left or the right mounting."""
    return engaged.left if side == "left" else engaged.right


def _engaged(state: BenchState) -> Engaged:
    if state.engaged is None:
        raise SpecError(tr("this magneto is not on an engine"))
    return state.engaged
