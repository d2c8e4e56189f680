"""Standard cam motion laws, normalised: displacement 0→1 over x = 0→1, with velocity and acceleration.

Peak factors (cam design handbooks, e.g. Norton, *Cam Design and Manufacturing Handbook*, ch. 2 and 3;
recomputed in ``tests/published``): harmonic π/2, π²/2; cycloidal 2, 2π; 3-4-5 polynomial 1.875, 10/√3;
4-5-6-7 polynomial 2.1875, 7.5132; modified trapezoid 2, 8π/(2+π); modified sine 4π/(4+π), 4π²/(4+π).
"""

from __future__ import annotations

from collections.abc import Callable
from math import pi

import numpy as np
from numpy.typing import NDArray

from magview.spec.cam import Law

Array = NDArray[np.float64]
Motion = tuple[Array, Array, Array]


def motion(law: Law, x: Array) -> Motion:
    """Displacement f(x) [-], velocity f′(x) [-] and acceleration f″(x) [-] of a motion law.

    Parameters
    ----------
    law : name of the law.
    x : any shape, 0 ≤ x ≤ 1 [-]; outside it is held at the nearer end.

    Notes
    -----
    All laws are symmetric, f(x) = 1 − f(1 − x); the halves are computed as one.

    Examples
    --------
    >>> [float(round(v[0], 6)) for v in motion("harmonic", np.array([0.5]))]
    [0.5, 1.570796, 0.0]
    """
    x = np.clip(np.asarray(x, dtype=float), 0.0, 1.0)
    second_half = x > 0.5
    f, v, a = _FIRST_HALF[law](np.where(second_half, 1.0 - x, x))
    return np.where(second_half, 1.0 - f, f), v, np.where(second_half, -a, a)


def _harmonic(x: Array) -> Motion:
    return (1 - np.cos(pi * x)) / 2, pi / 2 * np.sin(pi * x), pi**2 / 2 * np.cos(pi * x)


def _cycloidal(x: Array) -> Motion:
    turn = 2 * pi * x
    return x - np.sin(turn) / (2 * pi), 1 - np.cos(turn), 2 * pi * np.sin(turn)


def _polynomial_345(x: Array) -> Motion:
    return (
        x**3 * (10 + x * (-15 + 6 * x)),
        x**2 * (30 + x * (-60 + 30 * x)),
        x * (60 + x * (-180 + 120 * x)),
    )


def _polynomial_4567(x: Array) -> Motion:
    return (
        x**4 * (35 + x * (-84 + x * (70 - 20 * x))),
        x**3 * (140 + x * (-420 + x * (420 - 140 * x))),
        x**2 * (420 + x * (-1680 + x * (2100 - 840 * x))),
    )


def _modified_sine(x: Array) -> Motion:
    # A quarter wave up to x = 1/8, then a half wave three times as long.
    k = 1 / (4 + pi)
    early = x < 0.125
    fast, slow = 4 * pi * x, (pi + 4 * pi * x) / 3
    return (
        np.where(early, k * (pi * x - np.sin(fast) / 4), k * (2 + pi * x - 2.25 * np.sin(slow))),
        np.where(early, k * pi * (1 - np.cos(fast)), k * pi * (1 - 3 * np.cos(slow))),
        4 * pi**2 * k * np.where(early, np.sin(fast), np.sin(slow)),
    )


def _modified_trapezoid(x: Array) -> Motion:
    # Acceleration: a sine up to 1/8, level to 3/8, a cosine to the middle; integrated piece by piece.
    peak = 8 * pi / (2 + pi)
    w = 4 * pi
    v1, y1 = peak / w, peak / w * (1 / 8 - 1 / w)
    v2, y2 = v1 + peak / 4, y1 + v1 / 4 + peak / 32
    pieces = [x < 0.125, x < 0.375]
    u, z = x - 0.125, x - 0.375
    return (
        np.select(
            pieces,
            [peak / w * (x - np.sin(w * x) / w), y1 + v1 * u + peak * u**2 / 2],
            y2 + v2 * z + peak / w**2 * (1 - np.cos(w * z)),
        ),
        np.select(pieces, [peak / w * (1 - np.cos(w * x)), v1 + peak * u], v2 + peak / w * np.sin(w * z)),
        np.select(pieces, [peak * np.sin(w * x), np.full_like(x, peak)], peak * np.cos(w * z)),
    )


_FIRST_HALF: dict[Law, Callable[[Array], Motion]] = {
    "harmonic": _harmonic,
    "cycloidal": _cycloidal,
    "polynomial-345": _polynomial_345,
    "polynomial-4567": _polynomial_4567,
    "modified-sine": _modified_sine,
    "modified-trapezoid": _modified_trapezoid,
}
