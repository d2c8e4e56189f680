"""Path of a setting on the adjustment window: limits, the way taken, and the short way with the same start."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from magview.bench.state import BenchState
from magview.curves.adjustment_window import crossings
from magview.curves.lift import Array, opening_limit_deg
from magview.physics.cam.setting import internal_timing

_SCREWS = 121

Point = tuple[float, float]


@dataclass(frozen=True)
class Leg:
    """A straight piece of the way [deg plate, deg screw]; `number`: of the card that holds it, 0 for none."""

    start: Point
    end: Point
    number: int = 0
    carried: bool = False
    """Not by hand: tightening took it along."""


@dataclass(frozen=True)
class SettingPath:
    """Limits over plate and screw, and the ways between them [deg]."""

    early: Array
    """(n, 2) Plate and screw where the contacts open just within the limit, early."""
    late: Array
    """(n, 2) The same, late."""
    gap_lines: tuple[tuple[float, float], ...]
    """Screw angle and gap [mm] of each gap limit that the screw reaches."""
    within: Array
    """(m, 2) Outline of the settings within both limits; empty where there is none."""
    legs: tuple[Leg, ...]
    short: tuple[Point, ...]
    found: Point
    left: Point


def setting_path(state: BenchState, legs: Sequence[Leg], short: Sequence[Point], found: Point) -> SettingPath:
    """The path of one magneto: `state` as left, the legs in their order, the corners of the short way."""
    left = legs[-1].end if legs else found
    screws_of = [p[1] for leg in legs for p in (leg.start, leg.end)] + [p[1] for p in short] + [found[1]]
    low_gap, high_gap = state.magneto.gap_limits_mm
    least, most = state.magneto.contact_screw.range_deg
    every = np.linspace(least, most, 721)
    timing = internal_timing(state.magneto)
    gaps = timing.readings(0.0, every).max_gap_mm
    room = 0.4 * (high_gap - low_gap)
    near = every[(gaps.min(axis=-1) >= low_gap - room) & (gaps.max(axis=-1) <= high_gap + room)]
    ends = np.array([*(near if near.size else screws_of), *screws_of])
    margin = max(1.0, 0.08 * (ends.max() - ends.min()))
    screws = np.linspace(max(least, ends.min() - margin), min(most, ends.max() + margin), _SCREWS)
    read = timing.readings(0.0, screws)
    errors = read.e_gap_error_deg[:, :1] if state.magneto.compensated else read.e_gap_error_deg
    bound, ratio = opening_limit_deg(state.magneto), timing.ratio
    early, late = (-bound - errors.min(axis=-1)) * ratio, (bound - errors.max(axis=-1)) * ratio
    right = read.gap_ok.all(axis=-1) & (early <= late)
    outline = np.array([*zip(early[right], screws[right], strict=True)])
    back = np.array([*zip(late[right], screws[right], strict=True)])[::-1] if right.any() else np.empty((0, 2))
    return SettingPath(
        np.column_stack([early, screws]),
        np.column_stack([late, screws]),
        tuple(_limits(screws, read.max_gap_mm, low_gap, high_gap)),
        np.vstack([outline, back]) if right.any() else np.empty((0, 2)),
        tuple(legs),
        tuple(short),
        found,
        left,
    )


def _limits(screws: Array, gaps: Array, low: float, high: float) -> list[tuple[float, float]]:
    """Screw angles at which the narrowest lobe reaches the lower limit and the widest the upper one."""
    found = []
    for limit, curve in ((low, gaps.min(axis=-1)), (high, gaps.max(axis=-1))):
        at = crossings(screws, curve, limit)
        found += [(float(screw), limit) for screw in at]
    return found
