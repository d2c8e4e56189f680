"""Cam and breaker arm: the exact contact lift s(φ) of an oscillating follower with a round heel.

φ is cam degrees turned past the top of the lobe: negative on the rise, which meets the heel first.
The pitch curve (the profile offset by the heel's radius) makes iteration unnecessary: a pitch-curve point
at radius R and cam-frame angle β meets the heel at φ = α(R) − β, with α from the triangle cam centre –
pivot – heel (guide: theory-breaker).
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache

import numpy as np
from numpy.typing import ArrayLike, NDArray

from magview.physics.cam.curve import RisingCubic
from magview.physics.cam.motion import motion
from magview.spec.base import SpecError
from magview.spec.breaker import Breaker
from magview.spec.cam import LawProfile, MeasuredProfile
from magview.spec.language import tr

Array = NDArray[np.float64]

MAX_UNDERCUT_MM = 0.001
"""A heel too large for the flank's hollow rides over it; more than this at the contacts is refused."""

_KNOTS_PER_FLANK = 512


@dataclass(frozen=True)
class Linkage:
    """The triangle cam centre – pivot – heel centre and the contact on the arm. Lengths in millimetres.

    `sense` is +1 when the turning cam passes the pivot first and then the heel ("behind"), else −1.
    `plain` marks proportions that a file with a measured profile left out.
    """

    pivot_distance_mm: float
    heel_arm_mm: float
    contact_arm_mm: float
    heel_radius_mm: float
    base_pitch_radius_mm: float
    sense: int
    plain: bool = False

    def heel_angle_rad(self, radius: ArrayLike) -> Array:
        """Angle α at the cam centre from the pivot to the heel [rad], positive with cam rotation.

        `radius`: distance R of the heel's centre from the cam's [mm], |D − A| < R < D + A, any shape.
        """
        r, d, a = np.asarray(radius, dtype=float), self.pivot_distance_mm, self.heel_arm_mm
        return np.asarray(self.sense * np.arccos((r * r + d * d - a * a) / (2 * r * d)))

    def arm_angle_rad(self, radius: ArrayLike) -> Array:
        """Angle γ at the pivot from the cam centre to the heel [rad], always positive. `radius` [mm] as above."""
        r, d, a = np.asarray(radius, dtype=float), self.pivot_distance_mm, self.heel_arm_mm
        return np.asarray(np.arccos((a * a + d * d - r * r) / (2 * a * d)))

    def radius_mm(self, arm_angle_rad: ArrayLike) -> Array:
        """Distance R of the heel's centre from the cam's [mm] at arm angle γ [rad], any shape."""
        d, a = self.pivot_distance_mm, self.heel_arm_mm
        return np.asarray(np.sqrt(a * a + d * d - 2 * a * d * np.cos(arm_angle_rad)))

    def lift_mm(self, radius: ArrayLike) -> Array:
        """Contact lift [mm] with the heel's centre at `radius` [mm], any shape: arc K·(γ − γ at the base circle)."""
        closed = self.arm_angle_rad(self.base_pitch_radius_mm)
        return np.asarray(self.contact_arm_mm * (self.arm_angle_rad(radius) - closed))

    def arm_angle_at_lift_rad(self, lift_mm: ArrayLike) -> Array:
        """Arm angle γ [rad] at a contact lift [mm], any shape; negative lifts are the arm dropped below the base."""
        closed = self.arm_angle_rad(self.base_pitch_radius_mm)
        return np.asarray(closed + np.asarray(lift_mm, dtype=float) / self.contact_arm_mm)


def linkage(profile: LawProfile | MeasuredProfile, breaker: Breaker) -> Linkage:
    """The linkage of a file; what a measured profile leaves out is filled with plain proportions."""
    sense = -1 if breaker.pivot == "ahead" else 1
    d, a, rho = breaker.pivot_distance_mm, breaker.heel_arm_mm, breaker.heel_radius_mm
    if isinstance(profile, LawProfile):
        assert d is not None and a is not None and rho is not None  # the file model saw to it
        return Linkage(d, a, breaker.contact_arm_mm, rho, profile.base_radius_mm + rho, sense)
    arm = a if a is not None else 0.6 * breaker.contact_arm_mm
    distance = d if d is not None else 1.18 * arm
    heel = rho if rho is not None else 0.09 * arm
    # Within what the arm reaches, whatever the lengths; 0.65 of the arm with none given.
    base = abs(distance - arm) + 0.47 * min(distance, arm)
    return Linkage(distance, arm, breaker.contact_arm_mm, heel, base, sense, plain=None in (d, a, rho))


class LiftCurve:
    """Contact lift of one lobe as new, and its inverse on each flank.

    Parameters
    ----------
    rise, fall : lift [mm] against minus the distance from the top [cam deg], one curve a flank.
    """

    def __init__(self, rise: RisingCubic, fall: RisingCubic) -> None:
        self._rise, self._fall = rise, fall
        self.top_mm = float(rise.y[-1])
        """Lift at the top of the lobe [mm]."""
        self.reach_deg = (-float(rise.x[0]), -float(fall.x[0]))
        """Reach of the lift before and after the top [cam deg]."""

    def lift_mm(self, cam_deg: ArrayLike) -> Array:
        """Contact lift [mm] at cam degrees past the top (negative: before it), any shape; 0 off the lobe."""
        if isinstance(cam_deg, float):
            return np.asarray(self._rise.of_one(cam_deg) if cam_deg < 0 else self._fall.of_one(-cam_deg))
        phi = np.asarray(cam_deg, dtype=float)
        return np.asarray(np.where(phi < 0, self._rise(phi), self._fall(-phi)))

    def before_top_deg(self, lift_mm: ArrayLike) -> Array:
        """r(s): cam degrees before the top at which the rise reaches a lift [mm], any shape; NaN outside 0…top."""
        return -self._rise.inverse(lift_mm)

    def after_top_deg(self, lift_mm: ArrayLike) -> Array:
        """f(s): cam degrees after the top at which the fall comes down to a lift [mm], any shape; NaN outside
        0…top."""
        return -self._fall.inverse(lift_mm)


@lru_cache(maxsize=64)
def lift_curve(profile: LawProfile | MeasuredProfile, breaker: Breaker) -> LiftCurve:
    """The contact-lift curve of a lobe.

    Raises
    ------
    SpecError : the heel is too large for the hollow of the flank (undercut above MAX_UNDERCUT_MM).
    """
    if isinstance(profile, MeasuredProfile):
        return _measured_curve(profile)
    arms = linkage(profile, breaker)
    rise = _flank(profile, arms, profile.rise_deg, rising=True)
    fall = _flank(profile, arms, profile.fall_deg, rising=False)
    return LiftCurve(rise, fall)


def pitch_contact(
    arms: Linkage, beta_rad: ArrayLike, radius_mm: ArrayLike, slope_mm: ArrayLike
) -> tuple[Array, Array, Array]:
    """Return where the heel touches the points of a cam profile given in polar form. All shapes (n,).

    Parameters
    ----------
    arms : the linkage the cam works.
    beta_rad : cam-frame angle β of the profile points [rad], positive with cam rotation.
    radius_mm : radius r(β) of the profile there [mm].
    slope_mm : its derivative dr/dβ [mm/rad].

    Returns
    -------
    Cam angle φ [rad] at which each point touches the heel, counted from β = 0 pointing at the pivot; distance
    R of the heel's centre from the cam's [mm]; its rate dR/dφ [mm/rad].

    Notes
    -----
    Every point is answered as if it did touch: where φ runs backwards along the profile, the profile is hollower
    than the heel and another point touches instead.
    """
    r, dr = np.asarray(radius_mm, dtype=float), np.asarray(slope_mm, dtype=float)
    rho, q = arms.heel_radius_mm, np.hypot(r, dr)
    tilt = np.arctan2(-rho * dr / q, r + rho * r / q)  # from the profile point's direction to the pitch point's
    pitch = np.hypot(rho * dr / q, r + rho * r / q)
    alpha = arms.heel_angle_rad(pitch)
    phi = alpha - (np.asarray(beta_rad, dtype=float) + tilt)
    # dR/dβ along the pitch curve, whose tangent is the profile's; curvature cancels.
    radial = dr * np.cos(tilt) + r * np.sin(tilt)
    d_radius = pitch * radial / (r * np.cos(tilt) - dr * np.sin(tilt))
    d, a = arms.pivot_distance_mm, arms.heel_arm_mm
    d_alpha = -(pitch**2 - d * d + a * a) / (2 * pitch**2 * d * np.sin(alpha))
    with np.errstate(divide="ignore"):
        rate = d_radius / (d_alpha * d_radius - 1)
    return phi, pitch, rate


def _flank(profile: LawProfile, arms: Linkage, width_deg: float, rising: bool) -> RisingCubic:
    """One flank: lift against minus the cam degrees between it and the top."""
    side = -1.0 if rising else 1.0
    x = np.linspace(0.0, 1.0, _KNOTS_PER_FLANK + 1)
    f, v, _ = motion(profile.law, x)
    # Cam-frame angles run against cam degrees past the top: what meets the heel later lies further back.
    beta = -side * np.radians(profile.dwell_deg / 2 + (1 - x) * width_deg)
    r = profile.base_radius_mm + profile.lift_mm * f
    with np.errstate(invalid="ignore"):  # NaN where a steep flank leads out of the arm's reach: refused below
        cam, pitch, rate = pitch_contact(arms, beta, r, side * profile.lift_mm * v / np.radians(width_deg))
        s, gamma = arms.lift_mm(pitch), arms.arm_angle_rad(pitch)
    s[0] = 0.0  # the base circle, to the last bit
    phi = cam - arms.heel_angle_rad(pitch[-1])
    d_gamma = pitch / (arms.heel_arm_mm * arms.pivot_distance_mm * np.sin(gamma))
    slope = arms.contact_arm_mm * d_gamma * rate
    u, s, m = _outermost(-side * np.degrees(phi), s, -side * np.radians(slope))
    return RisingCubic(u, s, m)


def _outermost(u: Array, s: Array, slope: Array) -> tuple[Array, Array, Array]:
    """Keep the branch the heel touches where the pitch curve runs backwards; refuse a real undercut."""
    if np.all(np.diff(u) > 0) and np.all(np.diff(s) > 0):
        return u, s, slope
    low, high = np.minimum(u[:-1], u[1:]), np.maximum(u[:-1], u[1:])
    with np.errstate(divide="ignore", invalid="ignore"):
        t = (u[:, None] - u[:-1]) / np.diff(u)
        branches = s[:-1] + t * np.diff(s)
    touched = (low < u[:, None]) & (u[:, None] < high)
    envelope = np.maximum(0.0, np.where(touched, branches, -np.inf).max(axis=1))
    # Past the last knot of the flank the lobe's dwell holds the heel up.
    envelope = np.where(u > u[-1], s[-1], envelope)
    hidden = float((np.maximum(envelope, s) - s).max())
    if not hidden <= MAX_UNDERCUT_MM:
        missed = (
            tr("{hidden:.4g} mm of lift", hidden=hidden) if np.isfinite(hidden) else tr("a part of it altogether")
        )
        raise SpecError(
            tr(
                "breaker.heel_radius_mm: the heel cannot follow the cam's flank, which is too hollow for "
                "its radius or too steep for its arm: it misses {missed}, where at most "
                "{most} mm is allowed; a smaller heel, a longer rise_deg or fall_deg, or "
                "another law would fit",
                missed=missed,
                most=MAX_UNDERCUT_MM,
            )
        )
    keep = [len(u) - 1]
    for i in range(len(u) - 2, -1, -1):
        if s[i] >= envelope[i] - 1e-12 and u[i] < u[keep[-1]] and 0.0 <= s[i] < s[keep[-1]]:
            keep.append(i)
    if s[keep[-1]] > 0.0:  # the foot of the flank was hidden: the base circle leads up to what shows
        keep.append(0)
        u = u.copy()
        u[0] = min(u[0], u[keep[-2]] - 1e-6)
    order = keep[::-1]
    return u[order], s[order], slope[order]


def _measured_curve(profile: MeasuredProfile) -> LiftCurve:
    # A library's shape-preserving slopes; loaded here because few magnetos need it and it loads slowly.
    from scipy.interpolate import PchipInterpolator

    first, last = profile.flank_indices
    angle = np.array(profile.angle_deg[first : last + 1])
    lift = np.array(profile.contact_lift_mm[first : last + 1])
    slope = PchipInterpolator(angle, lift).derivative()(angle)
    top = lift.max()
    up, down = int(np.argmax(lift)), len(lift) - 1 - int(np.argmax(lift[::-1] == top))
    rise = RisingCubic(angle[: up + 1], lift[: up + 1], slope[: up + 1])
    fall = RisingCubic(-angle[down:][::-1], lift[down:][::-1], -slope[down:][::-1])
    return LiftCurve(rise, fall)
