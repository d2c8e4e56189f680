"""Data of the plots of lift and lobes, as arrays, and the parts that all plots share.

Computed here and in ``curves_….py``, a module for each other sheet, so that the window starts without what they need;
drawn in ``ui``. Every plot can be written as a table.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from magview.bench.state import BenchState, readings
from magview.physics.cam.setting import InternalTiming, internal_timing
from magview.spec import tables
from magview.spec.magneto import Condition, Magneto

Array = NDArray[np.float64]
Table = Sequence[tuple[str, Array | NDArray[np.str_]]]
"""Columns of one length, each with its header: the quantity and, in brackets, its unit."""

_STEP_DEG = 0.25
"""Between points of a curve over a turn [rotor deg]: finer than a pixel on any screen."""

_MAX_POINTS = 8_000
"""On a cam so slow that its turn takes many turns of the rotor, no screen shows more."""


@dataclass(frozen=True)
class Setting:
    """A magneto with backplate and contact screw: what a lift or gap curve belongs to."""

    magneto: Magneto
    backplate_deg: float
    screw_deg: float

    @property
    def timing(self) -> InternalTiming:
        """The internal timing of the magneto."""
        return internal_timing(self.magneto)

    @property
    def stop_mm(self) -> float:
        """Contact lift at which the contacts just touch [mm]."""
        return float(self.timing.stop_mm(self.screw_deg))


def setting_of(state: BenchState) -> Setting:
    """The present setting."""
    return Setting(state.magneto, state.backplate_deg, state.screw_deg)


def designed_setting(magneto: Magneto) -> Setting:
    """As the maker meant it: nothing worn, the plate where the file says, the screw at 0."""
    new = magneto.model_copy(update={"condition": Condition()})
    return Setting(new, magneto.designed_setting.backplate_deg, 0.0)


def cycle_deg(magneto: Magneto) -> float:
    """Rotor angle after which the contacts' play begins anew: a turn of the cam [deg]."""
    return 360.0 / magneto.cam.turns_per_rotor_turn


def turn_deg(magneto: Magneto) -> Array:
    """Rotor angles (n,) [deg] over one turn of the cam, ends included."""
    whole = cycle_deg(magneto)
    return np.linspace(0.0, whole, min(round(whole / _STEP_DEG), _MAX_POINTS) + 1)


# ---------------------------------------------------------------------- lift and gap


@dataclass(frozen=True)
class LiftCurves:
    """Contact lift and gap over a turn of the cam; arrays (n,)."""

    rotor_deg: Array
    lift_mm: Array
    gap_mm: Array


def lift_curves(setting: Setting) -> LiftCurves:
    """Lift and gap of a setting at every rotor angle of a cam turn."""
    angles = turn_deg(setting.magneto)
    lift = setting.timing.lift_mm(angles, setting.backplate_deg)
    return LiftCurves(angles, lift, np.maximum(lift - setting.stop_mm, 0.0))


def open_spans_deg(state: BenchState) -> list[tuple[float, float]]:
    """Rotor angles within one cam turn between which the contacts stand open, cut at its ends [deg]."""
    result, whole, timing = readings(state), cycle_deg(state.magneto), internal_timing(state.magneto)
    if timing.stop_mm(state.screw_deg) + timing.wear_lift_mm < 0.0:
        return [(0.0, whole)]  # held apart even where the heel hangs over the base circle
    spans: list[tuple[float, float]] = []
    for opens, closes in zip(result.opens_deg, result.closes_deg, strict=True):
        if not (math.isfinite(opens) and math.isfinite(closes)):
            continue
        start = opens % whole
        end = start + closes - opens
        spans.append((start, min(end, whole)))
        if end > whole:
            spans.append((0.0, end - whole))
    return sorted(spans)


def lift_table(present: Setting, before: Setting | None) -> Table:
    """The curves as columns."""
    now, designed = lift_curves(present), lift_curves(designed_setting(present.magneto))
    columns = [
        ("rotor angle past neutral [deg]", now.rotor_deg),
        ("contact lift [mm]", now.lift_mm),
        ("gap [mm]", now.gap_mm),
        ("gap as designed [mm]", designed.gap_mm),
    ]
    if before is not None:
        columns.append(("gap before [mm]", lift_curves(before).gap_mm))
    return columns


# ---------------------------------------------------------------------- lobes


def lobe_table(state: BenchState) -> Table:
    """Opening error, offset at the rim and largest gap of every lobe, in firing order."""
    result = readings(state)
    return [
        ("lobe in firing order", np.arange(1, len(result.opens_deg) + 1, dtype=float)),
        ("opens [rotor deg]", result.opens_deg),
        ("opening error, positive late [rotor deg]", result.e_gap_error_deg),
        ("largest gap [mm]", result.max_gap_mm),
        ("thickest blade that passes [mm]", result.blade_gap_mm),
        ("dwell [rotor deg]", result.dwell_deg),
    ]


def opening_limit_deg(magneto: Magneto) -> float:
    """Opening error at which the straightedge stands at its tolerance from the mark [rotor deg]."""
    marks = magneto.marks
    return math.degrees(math.atan(marks.tolerance_mm / marks.radius_mm)) / magneto.cam.turns_per_rotor_turn


# ---------------------------------------------------------------------- for any plot


def round_levels(low: float, high: float, most: int = 7) -> Array:
    """Round numbers (n,) between two values, in their unit: what contours are drawn at.

    Not more than `most` steps, each 1, 2 or 5 times a power of ten; none unless both are finite and `high` is above.
    """
    if not (math.isfinite(low) and math.isfinite(high) and high > low):
        return np.empty(0)
    rough = (high - low) / most
    power = 10.0 ** math.floor(math.log10(rough))
    step = next(f * power for f in (1.0, 2.0, 5.0, 10.0) if f * power >= rough * (1 - 1e-9))
    return np.asarray(step * np.arange(math.ceil(low / step - 1e-9), math.floor(high / step + 1e-9) + 1))


def csv_text(table: Table) -> str:
    """A table as comma-separated values, one header line with units."""
    columns = (values.tolist() for _, values in table)
    return tables.csv_text([[header for header, _ in table], *zip(*columns, strict=True)])
