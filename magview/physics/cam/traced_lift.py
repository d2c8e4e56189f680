"""From a table of angles and dial readings to a lobe's lift: backlash, outliers, smoothing, and honest warnings.

The lift of one lobe is sought from base circle to base circle. Readings are turned into lift at the contacts, the two
directions of turning are laid over each other, what lies far off is left out, and a smoothing spline whose parameter
generalised cross-validation chooses goes through the rest; each flank is then made to rise throughout.
"""

from __future__ import annotations

from dataclasses import dataclass
from math import isfinite
from typing import Literal

import numpy as np
from numpy.typing import NDArray
from pydantic import ValidationError

from magview.physics.cam.breaker import lift_curve
from magview.physics.cam.lift_rows import (
    Rows,
    directions,
    folded_deg,
    lay_branches_together,
    leave_out_outliers,
    unwound_deg,
)
from magview.physics.cam.lobe import MAX_TOP_MM, Lobe
from magview.spec.base import SpecError
from magview.spec.breaker import Breaker
from magview.spec.cam import Cam, MeasuredProfile
from magview.spec.files import refusal, validate
from magview.spec.language import Message, marked, tr
from magview.spec.lift_table import LiftTable
from magview.spec.magneto import Magneto
from magview.spec.sources import noted
from magview.spec.units import MM_PER_INCH, MM_PER_THOU

Array = NDArray[np.float64]
Flags = NDArray[np.bool_]

MIN_PLACES = 7
"""Different angles, at the least."""

_UNITS = {"mm": 1.0, "in": MM_PER_INCH, "thou": MM_PER_THOU}


@dataclass(frozen=True)
class Measuring:
    """The meaning of the two columns of a table. Raises ValueError for impossible ratios and stops."""

    angle: Literal["cam", "rotor"] = "cam"
    turns_per_rotor_turn: float = 1.0
    """Cam turns per rotor turn [-], for rotor angles."""
    with_rotation: bool = True
    """The angle grows as the rotor turns in service."""
    unit: Literal["mm", "in", "thou"] = "mm"
    reading: Literal["contact-lift", "gap", "heel-dial"] = "contact-lift"
    falls: bool = False
    """The dial's reading falls as the contacts lift."""
    stop_mm: float = 0.0
    """Contact lift at which the contacts just touch [mm], for gaps."""
    contact_per_heel: float = 1.0
    """Contact arm over heel arm K/A [-], for a dial at the heel."""

    def __post_init__(self) -> None:
        for value, words in (
            (self.turns_per_rotor_turn, marked("the cam's turns per rotor turn is {value}; it must be 0.01 to 100")),
            (self.contact_per_heel, marked("the contact arm over the heel arm is {value}; it must be 0.01 to 100")),
        ):
            if not (isfinite(value) and 0.01 <= value <= 100.0):
                raise ValueError(tr(words, value=value))
        if not (isfinite(self.stop_mm) and 0.0 <= self.stop_mm <= MAX_TOP_MM):
            raise ValueError(
                tr(
                    "the stop is {stop} mm; it must be 0 to {most} mm",
                    stop=self.stop_mm,
                    most=MAX_TOP_MM,
                )
            )


@dataclass(frozen=True)
class MeasuredLift:
    """A lobe's lift from a table. Angles in cam degrees past the top, lift at the contacts in millimetres."""

    profile: MeasuredProfile
    raw_angle_deg: Array
    raw_lift_mm: Array
    """The table's rows (n,), in their order; those without a gap to tell the lift by are not among them."""
    kept: Flags
    """The rows that the curve was drawn through (n,)."""
    residual_mm: Array
    """Row less curve (n,)."""
    smooth_angle_deg: Array
    smooth_lift_mm: Array
    """The profile, finely sampled (m,)."""
    noise_mm: float
    """Standard deviation of the rows kept about the curve, robust [mm]."""
    backlash_deg: float
    """Distance between the two directions of turning [cam deg]; 0 when it was turned one way."""
    top_at_deg: float
    """Angle of the lobe's top, in the table's own angle [deg]."""
    warnings: tuple[Message, ...]
    """Warnings about the table, sentences."""


def measured_lift(table: LiftTable, how: Measuring) -> MeasuredLift:
    """The lift of one lobe from a table.

    Parameters
    ----------
    table : angle and reading of one lobe, from base circle to base circle, turned one way or both.
    how : what its columns are.

    Raises
    ------
    SpecError : one sentence for a table no lobe can be had from.
    """
    warnings: list[Message] = []
    if table.columns > 2:
        warnings.append(
            Message("The table has {columns} columns; two of them were used.", {"columns": table.columns})
        )
    own = (1.0 if how.with_rotation else -1.0) * (how.turns_per_rotor_turn if how.angle == "rotor" else 1.0)
    turned = unwound_deg(np.array(table.angle)) * own
    lift, seen = _as_lift(np.array(table.reading), how)
    way = directions(turned)
    rows = Rows(folded_deg(turned, lift)[seen], lift[seen], np.ones(np.count_nonzero(seen), dtype=bool))
    _check_enough(rows)
    backlash = lay_branches_together(rows, way[seen])
    if abs(backlash) >= 0.02:
        warnings.append(
            Message(
                "Turned both ways, the readings lie {backlash:deg} of cam apart, as backlash makes them; "
                "the middle of the two was taken.",
                {"backlash": abs(backlash)},
            )
        )
    outliers = leave_out_outliers(rows)
    if outliers:
        warnings.append(
            Message(
                "{outliers} of {count} rows, far off their neighbours, were left out.",
                {"outliers": outliers, "count": len(rows.angle)},
            )
        )
    lobe = Lobe(rows, None if seen.all() else how.stop_mm, lambda x: x / own)
    warnings += lobe.warnings
    profile = _profile(lobe)
    curve = lift_curve.__wrapped__(profile, Breaker(contact_arm_mm=1.0))  # the arm is of no account to a traced lift
    angle, level = rows.angle - lobe.middle_deg, lobe.above_base_mm(rows.angle, rows.lift)
    fine = np.linspace(profile.angle_deg[0], profile.angle_deg[-1], 1001)
    return MeasuredLift(
        profile=profile,
        raw_angle_deg=angle,
        raw_lift_mm=level,
        kept=rows.kept,
        residual_mm=level - curve.lift_mm(angle),
        smooth_angle_deg=fine,
        smooth_lift_mm=curve.lift_mm(fine),
        noise_mm=lobe.noise_mm,
        backlash_deg=abs(backlash),
        top_at_deg=float(lobe.middle_deg / own),
        warnings=tuple(warnings),
    )


def with_measured_lift(magneto: Magneto, lift: MeasuredLift) -> Magneto:
    """The magneto with its lobes' lift as measured. Raises SpecError where the two do not go together."""
    try:
        cam = Cam.model_validate({**dict(magneto.cam), "profile": lift.profile})
    except ValidationError as error:
        raise SpecError(tr("the measured lift: {reason}", reason=error.errors()[0]["ctx"]["error"])) from error
    sources = noted(magneto.sources, ("cam.profile",), "measured", tr("table of the lift"))
    return validate(Magneto, {**dict(magneto), "cam": cam, "sources": sources}, tr("the measured lift"))


def _as_lift(reading: Array, how: Measuring) -> tuple[Array, Flags]:
    """Readings as lift at the contacts [mm], and which rows tell any: closed contacts do not. Both (n,)."""
    lift = reading * _UNITS[how.unit] * (-1.0 if how.falls else 1.0)
    if how.reading == "heel-dial":
        lift = lift * how.contact_per_heel
    if how.reading == "gap" and how.stop_mm > 0:
        return lift + how.stop_mm, lift > 0
    return lift, np.ones(len(lift), dtype=bool)


def _check_enough(rows: Rows) -> None:
    places = len(np.unique(np.round(rows.angle, 6)))
    if places < MIN_PLACES:
        raise SpecError(
            tr(
                "the table tells the lift at {places} different angles; it must be at {least} or more, better at 20",
                places=places,
                least=MIN_PLACES,
            )
        )


def _profile(lobe: Lobe) -> MeasuredProfile:
    """The file's profile: a few dozen knots on either flank, rounded, strictly rising and falling."""
    rise, fall = (_knots(*lobe.flank(side), lobe.top_mm) for side in (-1, 1))
    first, last = lobe.level_deg
    top = round(lobe.top_mm, 6)
    level = [(first, top), (last, top)] if last - first > 1e-3 else [((first + last) / 2, top)]
    points = [*rise, *level, *fall[::-1]]
    angles = tuple(round(float(a) - lobe.middle_deg, 4) for a, _ in points)
    try:
        return MeasuredProfile.model_validate(
            {"kind": "measured", "angle_deg": angles, "contact_lift_mm": tuple(float(s) for _, s in points)}
        )
    except ValidationError as error:
        reason = refusal(MeasuredProfile, error)
        raise SpecError(tr("no lobe can be drawn through the table: {reason}", reason=reason)) from error


def _knots(angle: Array, lift: Array, top_mm: float) -> list[tuple[float, float]]:
    """Knots of a flank from its foot (lift 0) to short of the top, as they are written in the file."""
    kept = [(float(angle[0]), 0.0)]
    for a, s in zip(angle[1:].tolist(), np.round(lift[1:], 6).tolist(), strict=True):
        if s > kept[-1][1] and abs(a - kept[-1][0]) > 1e-3 and s < round(top_mm, 6):
            kept.append((a, s))
    return kept
