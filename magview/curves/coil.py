"""Data of the plots of coil and magnet, as arrays and as tables."""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np

from magview.bench.state import BenchState, readings
from magview.curves.lift import Array, Table, turn_deg
from magview.physics.electric.coil import ContactCycle, contact_cycle, opening_energy_j
from magview.physics.electric.magnet import detent_torque_nm, rest_deg
from magview.spec.language import marked
from magview.spec.magneto import Magneto

COIL_WHY = marked(
    "The E-gap is the best opening where the spark is scarce: at the speed of starting. At running speed "
    "the current lags and the best moment comes later. But there is energy to spare, and a late opening "
    "only fires the engine late. The maker's E-gap governs. Below what a spark needs one may still jump: "
    "treat the propeller as live."
)

COIL_ASSUMPTIONS = marked(
    "Assumed: constant speed, linear core without losses, contacts that make and break at once, no load on the "
    "secondary while they are closed; illustrative unless the file's values are measured."
)

ASSUMED_RPM = (100.0, 2000.0)
"""Speeds of starting and running [rotor/min] where the file gives none; whoever shows them says so."""


@dataclass(frozen=True)
class Speeds:
    """The two speeds that a coil is looked at [rotor/min]."""

    starting_rpm: float
    running_rpm: float
    starting_assumed: bool = False
    running_assumed: bool = False
    """Whether the file does not give it."""


def speeds_of(magneto: Magneto) -> Speeds:
    """Starting and running speed of a magneto's file; assumed where it is silent."""
    coil = magneto.electrical
    start, run = (coil.starting_rpm, coil.running_rpm) if coil is not None else (None, None)
    # One given beyond the other's usual value keeps its distance.
    slow = start if start is not None else min(ASSUMED_RPM[0], (run or ASSUMED_RPM[1]) / 2)
    fast = run if run is not None else max(ASSUMED_RPM[1], 2 * slow)
    return Speeds(slow, fast, start is None, run is None)


def coil_cycle(state: BenchState, speed_rpm: float) -> ContactCycle:
    """Flux and current over a cam turn at a rotor speed [1/min]. ValueError without electrical values."""
    return contact_cycle(state.magneto, readings(state), speed_rpm, turn_deg(state.magneto))


@dataclass(frozen=True)
class EnergyCurve:
    """Energy in the coil as lobe 1 opens, against the opening error, with its present dwell.

    The plate carries opening and closing together, so the dwell stays what it is. Empty where lobe 1 never works.
    """

    error_deg: Array
    """Opening from the E-gap (n,) [rotor deg], positive late, half a span between neutral and register each way."""
    energy_j: Array
    """(n,) [J]"""

    @property
    def best_deg(self) -> float:
        """Return where most is left [rotor deg]. The top is flat: a few degrees to either side cost little."""
        return float(self.error_deg[int(self.energy_j.argmax())])

    def at_j(self, error_deg: float) -> float:
        """Energy at an opening error [J]."""
        return float(np.interp(error_deg, self.error_deg, self.energy_j))


def energy_curve(state: BenchState, speed_rpm: float) -> EnergyCurve:
    """Energy at opening of the present setting's lobe 1 at a rotor speed [1/min]."""
    magneto, result = state.magneto, readings(state)
    dwell = float(result.dwell_deg[0])
    if magneto.electrical is None or not math.isfinite(dwell):
        return EnergyCurve(np.empty(0), np.empty(0))
    half = 90.0 / magneto.poles
    errors = np.linspace(-half, half, 361)
    energy = opening_energy_j(magneto.electrical, magneto.poles, speed_rpm, magneto.e_gap_deg + errors, dwell)
    return EnergyCurve(errors, energy)


def coil_table(state: BenchState, *speeds_rpm: float) -> Table:
    """Flux and current over a cam turn at rotor speeds [1/min], as columns. ValueError without electrical values."""
    cycles = [(f"{speed:g}/min", coil_cycle(state, speed)) for speed in speeds_rpm]
    first = cycles[0][1]
    columns = [
        ("rotor angle past neutral [deg]", first.rotor_deg),
        ("static flux [Wb]", first.static_flux_wb),
        ("contacts closed", first.closed.astype(float)),
    ]
    for at, cycle in cycles:
        columns += [(f"resultant flux, {at} [Wb]", cycle.flux_wb), (f"primary current, {at} [A]", cycle.current_a)]
    return columns


def pulls(magneto: Magneto) -> bool:
    """Whether the file gives a magnet that pulls on the rotor."""
    return magneto.detent is not None and magneto.detent.torque_nm > 0.0


def detent_table(magneto: Magneto) -> Table:
    """The magnet's pull on the rotor over a turn, as columns. Empty without one."""
    if magneto.detent is None or not pulls(magneto):
        return []
    angles = np.linspace(0.0, 360.0, 1441)
    return [
        ("rotor angle past neutral [deg]", angles),
        (
            "torque of the magnet, positive with rotation [N m]",
            detent_torque_nm(magneto.detent, magneto.poles, angles),
        ),
    ]


def resting_places_deg(state: BenchState) -> tuple[float, float]:
    """The neutrals on either side of the full register nearest to the rotor [deg]: where it can come to rest."""
    pitch = 360.0 / state.magneto.poles
    below = pitch * math.floor(state.rotor_deg / pitch)
    return below, below + pitch


def falls_to_deg(state: BenchState) -> float:
    """Return where the rotor would come to rest if it were let go now, off the engine [deg]."""
    return rest_deg(state.magneto.poles, state.rotor_deg, (-math.inf, math.inf))
