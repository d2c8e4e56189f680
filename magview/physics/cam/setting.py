"""Internal timing: from backplate and contact screw to opening angle and largest gap, and back.

Guide: theory-setting.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum
from functools import lru_cache
from math import asin, ceil, degrees, floor, isfinite, nan

import numpy as np
from numpy.typing import ArrayLike, NDArray

from magview.physics.cam.breaker import lift_curve
from magview.spec.base import SpecError
from magview.spec.breaker import EccentricScrew
from magview.spec.language import tr
from magview.spec.magneto import Magneto

Array = NDArray[np.float64]

_HAIR_MM = 1e-6
"""The least gap in which contacts open, and the least lift at which they close: at nought they only just touch."""

Flags = NDArray[np.bool_]


@dataclass(frozen=True)
class Readings:
    """Readings of a setting, lobe by lobe in firing order. Arrays have the settings' shape plus (lobes,).

    Rotor degrees from the neutral before No. 1 fires; positive errors open late. NaN where a lobe never
    opens the contacts or never lets them close.
    """

    opens_deg: Array
    closes_deg: Array
    max_gap_mm: Array
    blade_gap_mm: Array
    """The thickest feeler blade that passes: the largest gap less the pip on the contacts."""
    e_gap_error_deg: Array
    dwell_deg: Array
    """Rotor degrees the contacts stay closed before this lobe opens them."""
    mark_offset_mm: Array
    """Lobe 1: straightedge from the rim mark when the contacts open, in the settings' shape."""
    timing_ok: Flags
    gap_ok: Flags
    within_limits: Flags
    """Settings' shape, bool: every lobe's gap in limits, and every judged lobe's opening at the mark."""


class ObstacleKind(Enum):
    """Kind of what keeps a gap with the opening at the E-gap out of reach."""

    NEVER_OPENS = "never-opens"
    """A gap of 0: the contacts only touch."""
    NEVER_CLOSES = "never-closes"
    """The gap takes all of the lift."""
    THROW = "throw"
    """The contact screw's eccentric does not reach that far."""
    PLATE = "plate"
    """The backplate would stand beyond its slot."""
    SCREW = "screw"
    """The contact screw would stand beyond its travel."""
    CREEP = "creep"
    """The contact screw would, before tightening carries it along."""


@dataclass(frozen=True)
class Obstacle:
    """One thing that keeps a gap out of reach: where the part would stand [deg] of its limits [deg].

    For `NEVER_CLOSES` the value is lobe 1's whole lift [mm].
    """

    kind: ObstacleKind
    value: float = nan
    limits_deg: tuple[float, float] = (nan, nan)


@dataclass(frozen=True)
class Adjustment:
    """Places of backplate and contact screw for a gap; both NaN where obstacles keep it out of reach."""

    gap_mm: float
    """The largest gap asked for."""
    backplate_deg: float
    screw_deg: float
    nearest_gap_mm: float
    """The reachable gap nearest to the one asked for [mm]; NaN if there is none."""
    obstacles: tuple[Obstacle, ...] = ()
    nearest_at: ObstacleKind | None = None
    """The part at whose end of travel the nearest gap stands: `PLATE`, `SCREW` or neither."""

    @property
    def reachable(self) -> bool:
        """Whether plate and screw can be set so."""
        return not self.obstacles


def internal_timing(magneto: Magneto) -> InternalTiming:
    """The internal timing of a magneto, built once.

    Raises SpecError for a cam that undercuts, and for a magneto known by its manual only.
    """
    if magneto.assumed:
        raise SpecError(
            tr(
                "{magneto} is known by its manual only: without cam, arm and screw nothing of its setting can be "
                "computed; give its profile to use it here",
                magneto=magneto.name,
            )
        )
    return drawn_timing(magneto)


@lru_cache(maxsize=64)
def drawn_timing(magneto: Magneto) -> InternalTiming:
    """The same for pictures, which say what is assumed."""
    return InternalTiming(magneto)


class InternalTiming:
    """Opening angle and largest gap of a magneto for any backplate rotation and contact-screw setting."""

    def __init__(self, magneto: Magneto) -> None:
        cam, condition = magneto.cam, magneto.condition
        self.magneto = magneto
        self.curve = lift_curve(cam.profile, magneto.breaker)
        self.ratio = cam.turns_per_rotor_turn
        self.lobes = len(cam.lobe_peaks_deg)
        as_new = self.curve.top_mm - magneto.designed_setting.gap_mm
        # Burnt faces meet so much later: the stop stands lower, the gap is wider and opens earlier.
        self.stop_at_zero_mm = as_new - condition.face_burn_mm
        arm = magneto.breaker.heel_arm_mm
        # Wear at the heel shows at the contacts by the arm's ratio.
        self.wear_lift_mm = condition.heel_wear_mm * magneto.breaker.contact_arm_mm / arm if arm else 0.0
        zeros = (0.0,) * self.lobes
        self.lift_errors_mm = np.array(condition.lobe_lift_error_mm or zeros)
        self.scale = 1.0 + self.lift_errors_mm / self.curve.top_mm
        opening = float(self.curve.before_top_deg(as_new))
        self.first_peak_deg = self.ratio * magneto.e_gap_deg + opening - magneto.designed_setting.backplate_deg
        """Φ₁ [cam deg]: where lobe 1's top meets the heel with the plate at 0, as new."""
        self.peaks_deg = (
            self.first_peak_deg + np.array(cam.lobe_peaks_deg) + np.array(condition.lobe_angle_error_deg or zeros)
        )
        self._peaks, self._scales = self.peaks_deg.tolist(), self.scale.tolist()
        sparks = (
            np.array(cam.lobe_peaks_deg) / self.ratio
            if magneto.compensated
            else np.arange(self.lobes) * 360.0 / magneto.poles
        )
        self.places_deg = magneto.e_gap_deg + sparks
        """Rotor degrees at which each lobe should open."""

    # ------------------------------------------------------------------ forwards

    def stop_mm(self, screw_deg: ArrayLike) -> Array:
        """s₀: contact lift at which the contacts just touch [mm], at screw angles [deg], any shape."""
        screw = self.magneto.contact_screw
        sigma = np.asarray(screw_deg, dtype=float)
        if isinstance(screw, EccentricScrew):
            return np.asarray(self.stop_at_zero_mm + screw.throw_mm * np.sin(np.radians(sigma)))
        return np.asarray(self.stop_at_zero_mm + screw.lead_mm * sigma / 360.0)

    def opening_and_gap(self, backplate_deg: ArrayLike, screw_deg: ArrayLike) -> tuple[Array, Array]:
        """Opening error [rotor deg, positive late] and largest gap [mm] of lobe 1; shapes broadcast.

        The short way for maps of many settings; `readings` gives every lobe.
        """
        stop = self.stop_mm(screw_deg)
        level = (stop + self.wear_lift_mm) / self.scale[0]
        before = self.curve.before_top_deg(np.where(level > 0, level, np.nan))
        plate = np.asarray(backplate_deg, dtype=float)
        error = (self.peaks_deg[0] - before + plate) / self.ratio - self.places_deg[0]
        gap = self.curve.top_mm + self.lift_errors_mm[0] - self.wear_lift_mm - stop
        return error, np.broadcast_to(np.maximum(gap, 0.0), error.shape)

    def readings(self, backplate_deg: ArrayLike, screw_deg: ArrayLike) -> Readings:
        """The readings of a setting.

        Parameters
        ----------
        backplate_deg : plate from its middle [deg], positive with cam rotation.
        screw_deg : contact screw from its middle [deg], positive = contacts closer. Shapes broadcast.

        Notes
        -----
        Settings outside the slot or the screw's range are computed all the same; the bench keeps them out.
        """
        plate, stop = np.broadcast_arrays(np.asarray(backplate_deg, dtype=float), self.stop_mm(screw_deg))
        plate, stop = plate[..., None], stop[..., None]
        level = (stop + self.wear_lift_mm) / self.scale
        # At or below the base circle the contacts never close; the curve itself answers NaN above the top.
        level = np.where(level > 0, level, np.nan)
        opens = (self.peaks_deg - self.curve.before_top_deg(level) + plate) / self.ratio
        closes = (self.peaks_deg + self.curve.after_top_deg(level) + plate) / self.ratio
        gap = np.maximum(self.curve.top_mm + self.lift_errors_mm - self.wear_lift_mm - stop, 0.0)
        error = opens - self.places_deg
        mark = self.mark_offset_mm(error)
        limits, marks = self.magneto.gap_limits_mm, self.magneto.marks
        judged = slice(0, 1) if self.magneto.compensated else slice(None)
        timing_ok = np.abs(mark) <= marks.tolerance_mm
        # A hair of slack: a gap asked for at the very limit must not fail for the last bit.
        gap_ok = (gap >= limits[0] - 1e-9) & (gap <= limits[1] + 1e-9)
        return Readings(
            opens_deg=opens,
            closes_deg=closes,
            max_gap_mm=gap,
            blade_gap_mm=np.maximum(gap - self.magneto.condition.pip_height_mm, 0.0),
            e_gap_error_deg=error,
            dwell_deg=self._dwell(opens, closes),
            mark_offset_mm=mark[..., 0],
            timing_ok=timing_ok,
            gap_ok=gap_ok,
            within_limits=gap_ok.all(axis=-1) & timing_ok[..., judged].all(axis=-1),
        )

    def mark_offset_mm(self, error_deg: ArrayLike) -> Array:
        """Distance at the rim between straightedge and mark [mm] for an E-gap error [rotor deg], any shape.

        Positive past the mark, for a late opening. radius·tan(cam angle); NaN from a quarter turn of the cam on,
        where the edge meets the rim nowhere.
        """
        cam = np.asarray(error_deg, dtype=float) * self.ratio
        with np.errstate(invalid="ignore"):
            cam = np.where(np.abs(cam) < 90.0, cam, np.nan)
        return np.asarray(self.magneto.marks.radius_mm * np.tan(np.radians(cam)))

    def lift_mm(self, rotor_deg: ArrayLike, backplate_deg: float) -> Array:
        """Contact lift over the base circle as new [mm] at rotor angles [deg], any shape, wear included."""
        if isinstance(rotor_deg, float) and isfinite(rotor_deg):
            return np.asarray(self._lift_of_one(rotor_deg, backplate_deg))
        cam = self.ratio * np.asarray(rotor_deg, dtype=float)[..., None] - backplate_deg - self.peaks_deg
        # Cut the turn half-way round the base circle: a single wide lobe may reach more than 180° to one side.
        before, after = self.curve.reach_deg
        middle = (after - before) / 2
        cam = (cam - middle + 180.0) % 360.0 - 180.0 + middle
        # The lobe that lifts most at this angle carries the heel.
        return np.asarray((self.curve.lift_mm(cam) * self.scale).max(axis=-1) - self.wear_lift_mm)

    def _lift_of_one(self, rotor_deg: float, backplate_deg: float) -> float:
        """As `lift_mm`, in plain numbers: a frame of the picture waits for it."""
        before, after = self.curve.reach_deg
        middle = (after - before) / 2
        most = 0.0
        for peak, scale in zip(self._peaks, self._scales, strict=True):
            cam = (self.ratio * rotor_deg - backplate_deg - peak - middle + 180.0) % 360.0 - 180.0 + middle
            if -before < cam < after:
                most = max(most, float(self.curve.lift_mm(cam)) * scale)
        return most - self.wear_lift_mm

    def gap_mm(self, rotor_deg: ArrayLike, backplate_deg: float, screw_deg: float) -> Array:
        """Gap between the contacts [mm] at rotor angles [deg], any shape; 0 while they touch."""
        lift = self.lift_mm(rotor_deg, backplate_deg)
        return np.asarray(np.maximum(lift - self.stop_mm(screw_deg), 0.0))

    def _dwell(self, opens: Array, closes: Array) -> Array:
        # Lobes that do not work the contacts (NaN) are passed over: the span runs back to the last that did.
        previous = np.roll(closes, 1, axis=-1)
        previous[..., 0] -= 360.0 / self.ratio
        for _ in range(self.lobes - 1):
            gone = np.isnan(previous)
            if not gone.any():
                break
            back = np.roll(previous, 1, axis=-1)
            back[..., 0] -= 360.0 / self.ratio
            previous = np.where(gone, back, previous)
        return np.asarray(opens - previous)

    # ------------------------------------------------------------------ backwards

    def adjust(self, gap_mm: float, screw_creep_deg: float = 0.0) -> Adjustment:
        """Find plate and screw for this largest gap on lobe 1 with its opening exactly at the E-gap.

        Closed form, on lobe 1's own flank as worn. A gap [mm] out of reach is answered with the nearest one, and so
        is a gap of 0, in which the contacts only touch and never open. The
        screw's place is where it stands when tight; it is set so much before it as tightening then carries it
        [deg, positive = closer], and that, too, must lie within its travel.
        Raises ValueError for one below 0 or that is no number.
        """
        if not isfinite(gap_mm) or gap_mm < 0:
            raise ValueError(tr("the gap is {gap} mm; it must be 0 or more", gap=gap_mm))
        travel = self._travel_deg(screw_creep_deg)
        backplate, screw = self._solve(gap_mm, travel)
        low_b, high_b = self.magneto.backplate.range_deg
        low_s, high_s = self.magneto.contact_screw.range_deg
        top = self.curve.top_mm + self.lift_errors_mm[0]
        found = []
        if gap_mm < _HAIR_MM / 2:
            found.append(Obstacle(ObstacleKind.NEVER_OPENS))
        elif gap_mm >= top:
            found.append(Obstacle(ObstacleKind.NEVER_CLOSES, float(top)))
        elif np.isnan(screw):
            found.append(Obstacle(ObstacleKind.THROW))
        else:
            if _outside(backplate, low_b, high_b):
                found.append(Obstacle(ObstacleKind.PLATE, backplate, (low_b, high_b)))
            if _outside(screw, low_s, high_s):
                found.append(Obstacle(ObstacleKind.SCREW, screw, (low_s, high_s)))
            elif _outside(screw - screw_creep_deg, low_s, high_s):
                found.append(Obstacle(ObstacleKind.CREEP, screw - screw_creep_deg, (low_s, high_s)))
        if not found:
            return Adjustment(gap_mm, backplate, screw, gap_mm)
        nearest = self._nearest_gap(gap_mm, travel)
        end = None if np.isnan(nearest) else self._end_at(nearest, travel)
        return Adjustment(gap_mm, np.nan, np.nan, nearest, tuple(found), end)

    def _travel_deg(self, creep_deg: float) -> tuple[float, float]:
        """Range of the screw when tight [deg], so that it can be set before tightening carries it there."""
        low, high = self.magneto.contact_screw.range_deg
        return max(low, low + creep_deg), min(high, high + creep_deg)

    def _solve(self, gap_mm: float, travel_deg: tuple[float, float]) -> tuple[float, float]:
        stop = float(self.curve.top_mm + self.lift_errors_mm[0] - self.wear_lift_mm - gap_mm)
        level = float((stop + self.wear_lift_mm) / self.scale[0])
        before = float(self.curve.before_top_deg(level if level > 0 else nan))
        backplate = self.ratio * self.places_deg[0] - self.peaks_deg[0] + before
        return float(backplate), self._screw_at(stop, travel_deg)

    def _screw_at(self, stop_mm: float, travel_deg: tuple[float, float]) -> float:
        """Screw angle [deg] for a stop level, the one within range if any; NaN beyond the eccentric's throw."""
        screw, move = self.magneto.contact_screw, stop_mm - self.stop_at_zero_mm
        if not isinstance(screw, EccentricScrew):
            return float(move / screw.lead_mm * 360.0)
        sine = move / screw.throw_mm
        if abs(sine) > 1.0 + 1e-9:
            return np.nan
        # At the full throw the last bit must not refuse what is offered as the nearest.
        angle, (low, high) = degrees(asin(min(max(sine, -1.0), 1.0))), travel_deg
        turns = [a + 360.0 * k for a in (angle, 180.0 - angle) for k in range(-10, 11)]
        inside = [a for a in turns if low <= a <= high]
        return min(inside, key=abs) if inside else angle

    def _end_at(self, gap_mm: float, travel_deg: tuple[float, float]) -> ObstacleKind | None:
        """Part that stands at an end of its travel with a gap; None if neither does."""
        plate, screw = self._solve(gap_mm, travel_deg)
        for value, limits, part in (
            (plate, self.magneto.backplate.range_deg, ObstacleKind.PLATE),
            (screw, travel_deg, ObstacleKind.SCREW),
        ):
            if min(abs(value - end) for end in limits) < 1e-6:
                return part
        return None

    def _nearest_gap(self, gap_mm: float, travel_deg: tuple[float, float]) -> float:
        """The gap nearest to the one asked for within plate, screw and lift; NaN if none."""
        # Plate: opening at the E-gap with the plate at b asks for the lift found r before the top.
        target = self.peaks_deg[0] - self.ratio * self.places_deg[0]
        before = [target + b for b in self.magneto.backplate.range_deg]
        if before[1] < self.curve.before_top_deg(self.curve.top_mm) or before[0] > self.curve.reach_deg[0]:
            return np.nan  # the whole slot lies on the lobe's dwell or past it, or short of its foot
        levels = [float(self.scale[0] * self.curve.lift_mm(-max(0.0, x))) - self.wear_lift_mm for x in before]
        low_s, high_s = travel_deg
        if not low_s <= high_s:
            return np.nan
        # The eccentric's extremes may lie inside its travel, at odd quarter turns.
        quarters = [90.0 * q for q in range(ceil(low_s / 90.0), floor(high_s / 90.0) + 1) if q % 2]
        stops = self.stop_mm(np.array([low_s, high_s, *quarters]))
        # A hair above the base circle and below the top, so that the contacts do close and open.
        top = self.curve.top_mm * self.scale[0] - self.wear_lift_mm
        low = max(min(levels), float(stops.min()), -self.wear_lift_mm + _HAIR_MM)
        high = min(max(levels), float(stops.max()), top - _HAIR_MM)
        if not low <= high:
            return np.nan
        return float(top - min(max(top - gap_mm, low), high))


def _outside(value: float, low: float, high: float) -> bool:
    # A billionth of a degree is no reason to refuse: round trips at the very end of a slot stay legal.
    return not low - 1e-9 <= value <= high + 1e-9
