"""What the plots of coil and magnet show, as arrays and as tables."""

from __future__ import annotations

import math

import numpy as np

from magview.bench.curves import Array, Table, turn_deg
from magview.bench.state import BenchState, readings
from magview.physics.coil import ContactCycle, contact_cycle, opening_energy_j
from magview.physics.magnet import detent_torque_nm, rest_deg
from magview.spec.language import marked
from magview.spec.magneto import Magneto

COIL_ASSUMPTIONS = marked(
    "Assumed: constant speed, linear core without losses, contacts that make and break at once, no load on the "
    "secondary while they are closed; illustrative unless the file's values are measured. At running speed this "
    "model's best opening lies past the E-gap: the maker's E-gap governs."
)


def coil_cycle(state: BenchState, speed_rpm: float) -> ContactCycle:
    """Flux and current over a cam turn at a rotor speed [1/min]. ValueError without electrical values."""
    return contact_cycle(state.magneto, readings(state), speed_rpm, turn_deg(state.magneto))


def energy_curve(state: BenchState, speed_rpm: float) -> tuple[Array, Array]:
    """Opening error (n,) [rotor deg] and energy left in the coil then (n,) [J], with lobe 1's present dwell.

    The plate carries opening and closing together, so the dwell stays what it is. Empty where it never works.
    """
    magneto, result = state.magneto, readings(state)
    dwell = float(result.dwell_deg[0])
    if magneto.electrical is None or not math.isfinite(dwell):
        return np.empty(0), np.empty(0)
    half = 90.0 / magneto.poles
    errors = np.linspace(-half, half, 361)
    energy = opening_energy_j(magneto.electrical, magneto.poles, speed_rpm, magneto.e_gap_deg + errors, dwell)
    return errors, energy


def coil_table(state: BenchState, speed_rpm: float) -> Table:
    """Flux and current over a cam turn at a rotor speed [1/min], as columns. ValueError without electrical values."""
    cycle = coil_cycle(state, speed_rpm)
    return [
        ("rotor angle past neutral [deg]", cycle.rotor_deg),
        ("static flux [Wb]", cycle.static_flux_wb),
        ("resultant flux [Wb]", cycle.flux_wb),
        ("primary current [A]", cycle.current_a),
        ("contacts closed", cycle.closed.astype(float)),
    ]


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
    """Where the rotor would come to rest if it were let go now, off the engine [deg]."""
    return rest_deg(state.magneto.poles, state.rotor_deg, (-math.inf, math.inf))
