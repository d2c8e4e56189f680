"""Wear of heel and contacts against running hours: what a setting becomes, and when it leaves its limits.

Wear w at the heel lowers every lift at the contacts by w·K/A: later opening, smaller gap. Faces
that burn away meet later: earlier opening, larger gap. A pip leaves the gap as it is and takes its height off what a
feeler blade finds. All are taken to grow evenly, as running-in or a dry felt would not (common practice: an average
over the hours between two inspections).
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from enum import StrEnum
from math import inf, isfinite

import numpy as np
from numpy.typing import ArrayLike, NDArray

from magview.physics.cam.setting import InternalTiming, internal_timing
from magview.spec.language import marked, tr
from magview.spec.magneto import Magneto

Array = NDArray[np.float64]
Flags = NDArray[np.bool_]


class Limit(StrEnum):
    """Limit that a setting leaves as it wears."""

    OPENS_LATE = "opens late"
    OPENS_EARLY = "opens early"
    GAP_TOO_SMALL = "gap too small"
    GAP_TOO_WIDE = "gap too wide"
    BLADE_GAP_TOO_SMALL = "blade gap too small"
    NEVER_OPENS = "never opens"
    NEVER_CLOSES = "never closes"
    FIRES_LATE = "fires late"
    FIRES_EARLY = "fires early"


_HAIR_MM = _HAIR_DEG = 1e-9
"""A reading at the very limit must not fail for the last bit."""


@dataclass(frozen=True)
class WearRates:
    """Wear of heel and faces and growth of the pip [mm per 100 h], ≥ 0. Raises ValueError for anything else."""

    heel_mm_per_100h: float
    pip_mm_per_100h: float = 0.0
    faces_mm_per_100h: float = 0.0
    """Burnt off both contact faces together."""

    def __post_init__(self) -> None:
        for words, rate in (
            (marked("heel wear is {rate} mm per 100 h; it must be 0 or more"), self.heel_mm_per_100h),
            (marked("the pip's growth is {rate} mm per 100 h; it must be 0 or more"), self.pip_mm_per_100h),
            (marked("the faces burn by {rate} mm per 100 h; it must be 0 or more"), self.faces_mm_per_100h),
        ):
            if not (isfinite(rate) and rate >= 0.0):
                raise ValueError(tr(words, rate=rate))


USUAL_RATES = WearRates(0.004, 0.002, 0.002)
"""Invented, of the order that takes some hundreds of hours to show; only one's own inspections tell one's own."""


@dataclass(frozen=True)
class Firing:
    """Demand of the engine on its magneto now."""

    early_deg: float
    """Advance over what is wanted [crank deg]; below 0 late."""
    tolerance_deg: float
    """[crank deg], either way."""
    rotor_turns_per_crank_turn: float


@dataclass(frozen=True)
class Course:
    """A setting over the hours. Arrays have the hours' shape plus (lobes,), in firing order."""

    hours: Array
    """Running hours since it was set [h], their own shape."""
    opening_error_deg: Array
    """Rotor degrees from where the lobe should open, positive late; NaN where it never does."""
    gap_mm: Array
    """The true widest gap."""
    blade_gap_mm: Array
    """The thickest blade that passes: too small by the pip."""
    pip_mm: Array
    """The blade's error, the hours' shape."""
    timing_ok: Flags
    gap_ok: Flags
    """Of the true gap."""
    within_limits: Flags
    """The hours' shape: every lobe's true gap, and every judged lobe's opening."""


@dataclass(frozen=True)
class Leaving:
    """Time at which one limit is first left."""

    limit: Limit
    hours: float
    """Running hours since it was set [h]: 0 if it was outside from the start, infinity if it never leaves."""
    lobe: int
    """The first lobe to do so, by firing order from 1; 0 if none does."""


def course(magneto: Magneto, backplate_deg: float, screw_deg: float, rates: WearRates, hours: ArrayLike) -> Course:
    """The course of a setting over its running hours.

    Parameters
    ----------
    magneto : the magneto, its condition as it was when it was set.
    backplate_deg, screw_deg : the setting [deg].
    rates : wear of heel and faces and growth of the pip from then on.
    hours : running hours since it was set [h], any shape, ≥ 0.

    Raises
    ------
    ValueError : hours below 0 or not finite, or heel wear of a magneto whose file does not say where the heel sits.
    """
    at = np.asarray(hours, dtype=float)
    if not np.all((at >= 0.0) & np.isfinite(at)):
        raise ValueError(tr("hours since the setting must be 0 or more, and finite"))
    timing, condition = internal_timing(magneto), magneto.condition
    # Burning lowers the stop, wear the lift: what one takes of the other is all that shows.
    lost = (timing.wear_lift_mm + _lift_rate(magneto, rates) * at)[..., None]
    stop = timing.stop_mm(screw_deg)
    level = (stop + lost) / timing.scale
    level = np.where(level > 0.0, level, np.nan)
    opens = (timing.peaks_deg - timing.curve.before_top_deg(level) + backplate_deg) / timing.ratio
    gap = np.maximum(timing.curve.top_mm + timing.lift_errors_mm - lost - stop, 0.0)
    error = opens - timing.places_deg
    pip = condition.pip_height_mm + rates.pip_mm_per_100h / 100.0 * at
    blade = np.maximum(gap - pip[..., None], 0.0)
    low, high = magneto.gap_limits_mm
    timing_ok = np.abs(timing.mark_offset_mm(error)) <= magneto.marks.tolerance_mm
    gap_ok = (gap >= low - _HAIR_MM) & (gap <= high + _HAIR_MM)
    return Course(
        hours=at,
        opening_error_deg=error,
        gap_mm=gap,
        blade_gap_mm=blade,
        pip_mm=pip,
        timing_ok=timing_ok,
        gap_ok=gap_ok,
        within_limits=np.asarray(gap_ok.all(axis=-1) & timing_ok[..., _judged(magneto)].all(axis=-1)),
    )


def leavings(
    magneto: Magneto, backplate_deg: float, screw_deg: float, rates: WearRates, firing: Firing | None = None
) -> tuple[Leaving, ...]:
    """Return when each limit is first left, soonest first; closed form, so that nothing is searched for.

    Parameters
    ----------
    magneto : the magneto, its condition as it was when it was set.
    backplate_deg, screw_deg : the setting [deg].
    rates : wear of heel and faces and growth of the pip from then on.
    firing : what the engine asks of lobe 1; None for a magneto off its engine.

    Notes
    -----
    "blade gap too small" is what a feeler blade would report, sooner than the true gap by the pip. "opens late"
    holds no lobe that never opens: that limit has its own line. Raises ValueError as `course` does.
    """
    timing, (low, high) = internal_timing(magneto), magneto.gap_limits_mm
    closes, pip_rate = _lift_rate(magneto, rates), rates.pip_mm_per_100h / 100.0
    start = course(magneto, backplate_deg, screw_deg, rates, 0.0)
    gap, error, judged = start.gap_mm, start.opening_error_deg, _judged(magneto)
    level = float(timing.stop_mm(screw_deg)) + timing.wear_lift_mm

    def up_to(error_deg: Array | float) -> Array:
        """Rise of the level of the opening [mm] at which a lobe opens so late; ±infinity if it never does."""
        before = timing.peaks_deg + backplate_deg - timing.ratio * (timing.places_deg + error_deg)
        rise = timing.scale * timing.curve.lift_mm(-before) - level
        # Past the foot it never closes, past the top it never opens, each a limit of its own.
        rise = np.where(before <= timing.curve.before_top_deg(timing.curve.top_mm), inf, rise)
        return np.where(before >= timing.curve.reach_deg[0], -inf, rise)

    def either_way(late_deg: Array | float, early_deg: Array | float) -> tuple[Array, Array]:
        """Rise and fall of the level [mm] at which lobes open so late, or so early [rotor deg]."""
        gone = np.isnan(error)
        return np.where(gone, inf, up_to(late_deg)), np.where(gone, inf, -up_to(early_deg))

    late = _rim_deg(timing)
    rise, fall = either_way(late, -late)
    ok = start.timing_ok | np.isnan(error)
    found = [
        _first(Limit.OPENS_LATE, _kept(rise, ok, error > 0.0)[judged], closes),
        _first(Limit.OPENS_EARLY, _kept(fall, ok, error < 0.0)[judged], -closes),
        _first(Limit.GAP_TOO_SMALL, _room(gap, low), closes),
        _first(Limit.GAP_TOO_WIDE, _room(2.0 * high - gap, high), -closes),
        _first(Limit.BLADE_GAP_TOO_SMALL, _room(start.blade_gap_mm, low), closes + pip_rate),
        _first(Limit.NEVER_OPENS, np.where(gap > 0.0, gap, -1.0), closes),
        _first(Limit.NEVER_CLOSES, np.array([level if level > 0.0 else -1.0]), -closes),
    ]
    if firing is not None:
        turn = firing.rotor_turns_per_crank_turn
        to_late, to_early = firing.tolerance_deg + firing.early_deg, firing.tolerance_deg - firing.early_deg
        rise, fall = either_way(error + turn * to_late, error - turn * to_early)
        found += [
            _first(Limit.FIRES_LATE, np.maximum(rise[:1], 0.0) if to_late >= -_HAIR_DEG else _OUT, closes),
            _first(Limit.FIRES_EARLY, np.maximum(fall[:1], 0.0) if to_early >= -_HAIR_DEG else _OUT, -closes),
        ]
    return tuple(sorted(found, key=lambda leaving: leaving.hours))


@dataclass(frozen=True)
class Lasting:
    """Hours that a gap lasts, set with its opening at the E-gap."""

    gap_mm: float
    hours: float
    """Running hours until gap, opening or the engine's timing truly leaves its limits; infinity if none does."""
    limit: Limit | None
    """The limit that is left first."""


def lasting(
    magneto: Magneto, gaps_mm: Sequence[float], rates: WearRates, firing: Firing | None = None
) -> list[Lasting]:
    """Return how long settings with these largest gaps [mm] would last, those out of reach left out.

    Each opens at the E-gap to begin with and, on an engine, fires as wanted. Raises ValueError as `course` does.
    """
    timing, found = internal_timing(magneto), []
    wanted = None if firing is None else Firing(0.0, firing.tolerance_deg, firing.rotor_turns_per_crank_turn)
    for gap in gaps_mm:
        to = timing.adjust(gap)
        if not to.reachable:
            continue
        true = [
            leaving
            for leaving in leavings(magneto, to.backplate_deg, to.screw_deg, rates, wanted)
            if leaving.limit is not Limit.BLADE_GAP_TOO_SMALL
        ]
        found.append(Lasting(gap, true[0].hours, true[0].limit if isfinite(true[0].hours) else None))
    return found


def worn(magneto: Magneto, rates: WearRates, hours: float) -> Magneto:
    """The magneto after so many hours [h], for the bench: its file's condition with the wear added.

    Raises ValueError as `course` does, and for wear that no file may hold (10 mm).
    """
    _lift_rate(magneto, rates)
    now = magneto.condition
    heel = now.heel_wear_mm + rates.heel_mm_per_100h / 100.0 * hours
    faces = now.face_burn_mm + rates.faces_mm_per_100h / 100.0 * hours
    pip = now.pip_height_mm + rates.pip_mm_per_100h / 100.0 * hours
    if not (hours >= 0.0 and max(heel, pip, faces) <= 10.0):
        raise ValueError(
            tr(
                "after {hours} h the heel would have lost {heel:.3g} mm and the faces {faces:.3g} mm, "
                "and the pip be {pip:.3g} mm high",
                hours=hours,
                heel=heel,
                faces=faces,
                pip=pip,
            )
        )
    condition = now.model_copy(update={"heel_wear_mm": heel, "pip_height_mm": pip, "face_burn_mm": faces})
    return magneto.model_copy(update={"condition": condition})


def _lift_rate(magneto: Magneto, rates: WearRates) -> float:
    """Lift lost at the contacts, less what the faces burn [mm/h]: above 0 the gap closes and opens later."""
    arm, burns = magneto.breaker.heel_arm_mm, rates.faces_mm_per_100h / 100.0
    if arm is None:
        if rates.heel_mm_per_100h:
            raise ValueError(tr("breaker.heel_arm_mm is missing in the magneto's file: it tells what heel wear does"))
        return -burns
    return rates.heel_mm_per_100h / 100.0 * magneto.breaker.contact_arm_mm / arm - burns


def _rim_deg(timing: InternalTiming) -> float:
    """The largest opening error that the rim marks allow [rotor deg]."""
    marks = timing.magneto.marks
    return float(np.degrees(np.arctan(marks.tolerance_mm / marks.radius_mm))) / timing.ratio


_OUT = np.array([-1.0])


def _kept(room: Array, inside: Flags, this_side: Flags) -> Array:
    """Room [mm] to one end: none of a lobe that is outside at this end, never below 0 for one that is inside."""
    return np.where(inside, np.maximum(room, 0.0), np.where(this_side, -1.0, np.maximum(room, 0.0)))


def _judged(magneto: Magneto) -> slice:
    return slice(0, 1) if magneto.compensated else slice(None)


def _room(gap_mm: Array, low_mm: float) -> Array:
    room = gap_mm - low_mm
    return np.where(np.abs(room) <= _HAIR_MM, 0.0, room)


def _first(limit: Limit, left: Array, rate: float) -> Leaving:
    """Return when the first lobe uses up what it has left [mm] at a rate [mm/h]; below 0 it is outside already."""
    lobe = int(np.argmin(left))
    least = float(left[lobe])
    if least < 0.0:
        return Leaving(limit, 0.0, lobe + 1)
    hours = least / rate if rate > 0.0 else inf
    return Leaving(limit, hours, lobe + 1 if isfinite(hours) else 0)
