"""A second, independent way to the contact lift: plain geometry, nothing taken from magview.

The motion laws are integrated from the shapes of their accelerations, the cam is a polygon, and the heel is
brought down on it with shapely. Angles in degrees unless a name ends in ``_rad``, lengths in millimetres.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field
from functools import cache
from math import pi

import numpy as np
import shapely
from numpy.polynomial import Chebyshev
from numpy.typing import NDArray

Array = NDArray[np.float64]
Shape = Callable[[Array], Array]

# Where each piece of the acceleration ends, and its shape (any scale): the verbal definitions of the laws.
ACCELERATIONS: dict[str, list[tuple[float, Shape]]] = {
    "harmonic": [(1, lambda x: np.cos(pi * x))],
    "cycloidal": [(1, lambda x: np.sin(2 * pi * x))],
    "polynomial-345": [(1, lambda x: x * (1 - x) * (1 - 2 * x))],
    "polynomial-4567": [(1, lambda x: x**2 * (1 - x) ** 2 * (1 - 2 * x))],
    "modified-sine": [
        (1 / 8, lambda x: np.sin(4 * pi * x)),
        (7 / 8, lambda x: np.cos(4 * pi / 3 * (x - 1 / 8))),
        (1, lambda x: np.sin(4 * pi * x)),
    ],
    "modified-trapezoid": [
        (1 / 8, lambda x: np.sin(4 * pi * x)),
        (3 / 8, np.ones_like),
        (5 / 8, lambda x: np.cos(4 * pi * (x - 3 / 8))),
        (7 / 8, lambda x: -np.ones_like(x)),
        (1, lambda x: np.sin(4 * pi * x)),
    ],
}
LAWS = tuple(ACCELERATIONS)


@cache
def _integrated(law: str) -> tuple[list[float], list[Chebyshev], list[Chebyshev], float]:
    """Ends of the pieces, velocity and displacement on each, and the displacement in all."""
    start, speed, travel = 0.0, 0.0, 0.0
    ends, speeds, travels = [], [], []
    for end, shape in ACCELERATIONS[law]:
        velocity = Chebyshev.interpolate(shape, 40, domain=[start, end]).integ(lbnd=start) + speed
        displacement = velocity.integ(lbnd=start) + travel
        start, speed, travel = end, velocity(end), displacement(end)
        ends.append(end)
        speeds.append(velocity)
        travels.append(displacement)
    return ends, speeds, travels, travel


def law(name: str, x: Array) -> tuple[Array, Array]:
    """Displacement 0…1 and velocity of a motion law at 0 ≤ x ≤ 1, any shape."""
    ends, speeds, travels, total = _integrated(name)
    x = np.asarray(x, dtype=float)
    where = [x <= end for end in ends]
    return np.select(where, [s(x) for s in travels]) / total, np.select(where, [v(x) for v in speeds]) / total


@dataclass(frozen=True)
class Mechanism:
    """A cam with equal lobes and its arm. ``side`` +1: the turning cam passes the pivot, then the heel."""

    law: str
    base: float
    lift: float
    rise: float
    dwell: float
    fall: float
    distance: float
    arm: float
    contact_arm: float
    heel: float
    side: int
    peaks: tuple[float, ...] = (0.0,)
    _cache: dict[float, shapely.Polygon] = field(default_factory=dict, compare=False, repr=False)

    def flank(self, x: Array, rising: bool) -> tuple[Array, Array, Array]:
        """Cam-frame angle [rad], radius and dr/dβ of lobe 1's flank; x = 0 at its foot, 1 at its top."""
        f, v = law(self.law, x)
        width, sign = (self.rise, 1.0) if rising else (self.fall, -1.0)
        # The rise meets the heel first, so it lies ahead of the top in the direction of rotation.
        beta = sign * np.radians(self.dwell / 2 + (1 - x) * width)
        return beta, self.base + self.lift * f, -sign * self.lift * v / np.radians(width)

    def polygon(self, step_deg: float) -> shapely.Polygon:
        """The whole cam, lobe 1's top at angle 0, later lobes behind it; vertices on the profile.

        `step_deg` apart on the flanks (never fewer than 400 to one), 0.1° on the arcs.
        """
        if step_deg not in self._cache:
            beta, radius = [], []
            for peak, following in zip(self.peaks, (*self.peaks[1:], 360.0), strict=True):
                fore, lead = (self._lobe_side(rising, step_deg) for rising in (True, False))
                foot = -self.dwell / 2 - self.fall
                gap = following - peak - self.dwell - self.rise - self.fall
                arc = np.radians(np.linspace(foot, foot - gap, 2 + int(gap / 0.1))[1:-1])
                beta.append(np.r_[fore[0], lead[0][::-1], arc] - np.radians(peak))
                radius.append(np.r_[fore[1], lead[1][::-1], np.full_like(arc, self.base)])
            b, r = np.concatenate(beta), np.concatenate(radius)
            self._cache[step_deg] = shapely.Polygon(np.column_stack([r * np.cos(b), r * np.sin(b)]))
        return self._cache[step_deg]

    def _lobe_side(self, rising: bool, step_deg: float) -> tuple[Array, Array]:
        """Angle and radius from a flank's foot to just short of the middle of the dwell."""
        width = self.rise if rising else self.fall
        beta, radius, _ = self.flank(np.linspace(0, 1, max(400, int(width / step_deg))), rising)
        flat = np.linspace(beta[-1], 0.0, 2 + int(self.dwell / 0.1))[1:-1]
        return np.r_[beta, flat], np.r_[radius, np.full_like(flat, self.base + self.lift)]

    def arm_angle_rad(self, radius: Array) -> Array:
        """Angle at the pivot between the cam's centre and the heel's (law of cosines)."""
        return np.arccos((self.arm**2 + self.distance**2 - radius**2) / (2 * self.arm * self.distance))

    def heel_centre(self, arm_angle_rad: Array) -> Array:
        """The heel's centre as a complex number; cam at 0, pivot on the real axis, rotation anticlockwise."""
        return self.distance - self.arm * np.exp(-1j * self.side * np.asarray(arm_angle_rad))

    def brute_lift(self, cam_deg: Array, step_deg: float = 0.1) -> Array:
        """Contact lift with the cam turned ``cam_deg`` (n,) past lobe 1's top: the arm is lowered on the cam.

        Each round keeps the outermost of 16 steps of the arm in which the heel bites into the cam.
        """
        base, top = self.arm_angle_rad(np.array([self.base, self.base + self.lift]) + self.heel)
        turned = np.radians(cam_deg) + np.angle(self.heel_centre(top))
        cam = self.polygon(step_deg)
        low = np.full(np.shape(cam_deg), base - 0.02 * (top - base))
        high = np.full(np.shape(cam_deg), top + 0.02 * (top - base))
        for _ in range(3):
            arm = np.linspace(low, high, 17, axis=-1)
            # The cam stands still and the arm is carried round it: the same thing, and one polygon does.
            heel = self.heel_centre(arm) * np.exp(-1j * turned)[..., None]
            space = shapely.distance(shapely.points(heel.real, heel.imag), cam) - self.heel
            bites = space < 0
            last = np.where(bites.any(axis=-1), 16 - np.argmax(bites[..., ::-1], axis=-1), 0)
            last = np.minimum(last, 15)[..., None]
            low, high = (np.take_along_axis(arm, last + k, axis=-1)[..., 0] for k in (0, 1))
        inner, outer = (np.take_along_axis(space, last + k, axis=-1)[..., 0] for k in (0, 1))
        return self.contact_arm * (low - (high - low) * inner / (outer - inner) - base)

    def tangent(self, x: Array | float, rising: bool) -> tuple[Array, Array]:
        """Cam degrees past lobe 1's top and contact lift if the heel touched lobe 1 at flank points x."""
        return self._turned(self._tangent_centre(x, rising))

    def bite(self, x: Array, rising: bool, step_deg: float) -> tuple[Array, Array, Array]:
        """`tangent`, and how deep the heel so placed would reach into some other part of the cam."""
        centre = self._tangent_centre(x, rising)
        space = shapely.distance(shapely.points(centre.real, centre.imag), self.polygon(step_deg))
        cam_deg, lift = self._turned(centre)
        return cam_deg, lift, np.where(np.isnan(lift), np.nan, self.heel - space)

    def _tangent_centre(self, x: Array | float, rising: bool) -> NDArray[np.complex128]:
        beta, r, slope = self.flank(np.asarray(x), rising)
        along = (slope + 1j * r) * np.exp(1j * beta)
        return np.asarray(r * np.exp(1j * beta) + self.heel * along / abs(along) / 1j)

    def _turned(self, centre: NDArray[np.complex128]) -> tuple[Array, Array]:
        with np.errstate(invalid="ignore"):  # NaN: further in than the arm can reach
            arm = self.arm_angle_rad(abs(centre))
        closed, top = self.arm_angle_rad(np.array([self.base, self.base + self.lift]) + self.heel)
        turned = np.degrees(np.angle(self.heel_centre(arm) / centre) - np.angle(self.heel_centre(top)))
        # The middle of the base circle is the place to cut the turn.
        middle = (self.fall - self.rise) / 2
        return (turned - middle + 180) % 360 - 180 + middle, self.contact_arm * (arm - closed)
