"""The pull of the magnet on the rotor: detent torque, and the damped swing of a rotor let go (guide: theory-coil)."""

from __future__ import annotations

from math import asin, copysign, degrees, radians, sin

import numpy as np
from numpy.typing import ArrayLike, NDArray

from magview.spec.magneto import Detent

Array = NDArray[np.float64]

STEP_S = 0.0005
"""Fixed step of the swing [s]: a hundredth of the shortest period of the shipped magnetos. Being fixed, it
makes a replay equal to the last bit."""

MAX_SPEED_DEG_S = 1e6
"""A spin faster than any magneto's; it keeps absurd files from overflowing."""


def detent_torque_nm(detent: Detent, poles: int, rotor_deg: ArrayLike) -> Array:
    """Torque of the magnet on the rotor [N·m], positive with rotation: −torque·sin(poles·θ).

    Parameters
    ----------
    detent : the magnet's pull.
    poles : number of poles [-].
    rotor_deg : rotor angle from neutral [deg], any shape.

    Notes
    -----
    A free rotor holds itself at neutral (FAA-H-8083-32, ch. 4, bench timing steps); neutral lies
    360/(2·poles) from full register, where the rotor balances but does not rest.
    """
    angle = np.radians(poles * np.asarray(rotor_deg, dtype=float))
    return np.asarray(-detent.torque_nm * np.sin(angle))


def swing(
    detent: Detent, poles: int, rotor_deg: float, speed_deg_s: float, steps: int, limits_deg: tuple[float, float]
) -> tuple[float, float]:
    """Let the rotor go for a number of fixed steps.

    Parameters
    ----------
    detent, poles : the magnet.
    rotor_deg, speed_deg_s : where the rotor is [deg] and how fast it turns [deg/s], positive with rotation.
    steps : steps of STEP_S to take [-].
    limits_deg : where the coupling stops it [deg]; infinite off the engine. A stop takes all speed.

    Returns
    -------
    Rotor angle [deg] and speed [deg/s] afterwards.

    Notes
    -----
    J θ″ = −torque·sin(poles·θ) − damping·θ′ ∓ friction, classical fourth-order Runge–Kutta. Dry friction acts against
    the motion; where the rotor stops, or comes to turn the other way, it stays unless the pull exceeds it.
    """
    inertia, pull, drag = detent.inertia_kg_m2, detent.torque_nm, detent.damping_nms
    dry = detent.friction_nm
    # A stiff damper would outrun the fixed step; no rotor stops faster than in one step.
    drag = min(drag, inertia / STEP_S)
    theta, omega, h = radians(rotor_deg), radians(speed_deg_s), STEP_S
    low, high = radians(limits_deg[0]), radians(limits_deg[1])
    top = radians(MAX_SPEED_DEG_S)

    against = 0.0

    def acceleration(angle: float, speed: float) -> float:
        return (-pull * sin(poles * angle) - drag * speed - against) / inertia

    for _ in range(steps):
        if dry:
            push = -pull * sin(poles * theta)
            if omega == 0.0 and abs(push) <= dry:
                break
            against = copysign(dry, omega if omega != 0.0 else push)
        before = omega
        a1 = acceleration(theta, omega)
        w2 = omega + h / 2 * a1
        a2 = acceleration(theta + h / 2 * omega, w2)
        w3 = omega + h / 2 * a2
        a3 = acceleration(theta + h / 2 * w2, w3)
        w4 = omega + h * a3
        a4 = acceleration(theta + h * w3, w4)
        theta += h / 6 * (omega + 2 * w2 + 2 * w3 + w4)
        omega += h / 6 * (a1 + 2 * a2 + 2 * a3 + a4)
        omega = min(max(omega, -top), top)
        if dry and before * omega < 0.0:
            omega = 0.0
        if not low <= theta <= high:
            theta, omega = min(max(theta, low), high), 0.0
    return degrees(theta), degrees(omega)


def rest_deg(poles: int, rotor_deg: float, limits_deg: tuple[float, float], held: float = 0.0) -> float:
    """Return where a rotor let go slowly comes to rest [deg]: the neutral it falls to, or what holds it before.

    Parameters
    ----------
    poles : number of poles [-].
    rotor_deg : where it was let go [deg].
    limits_deg : where the coupling stops it [deg]; infinite off the engine.
    held : dry friction as a share of the greatest pull [-]. Where the pull is less than that, it stays.

    Notes
    -----
    At full register itself, without friction, it falls back, against rotation.
    """
    if held and abs(sin(radians(poles * rotor_deg))) <= held:
        return rotor_deg
    pitch = 360.0 / poles
    steps = rotor_deg / pitch
    neutral = pitch * float(np.ceil(steps - 0.5))
    if held:
        neutral += copysign(degrees(asin(held)) / poles, rotor_deg - neutral)
    return min(max(neutral, limits_deg[0]), limits_deg[1])


def friction_share(detent: Detent) -> float:
    """Dry friction as a share of the greatest pull [-]; 1 and more: it stays wherever it is let go."""
    return detent.friction_nm / detent.torque_nm if detent.torque_nm else 1.0
