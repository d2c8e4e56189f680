"""Data of the adjustment window, as arrays and as a table."""

from __future__ import annotations

import numpy as np

from magview.bench.state import BenchState
from magview.curves.lift import Array, Table
from magview.physics.cam.adjustment_map import AdjustmentMap, adjustment_map
from magview.physics.cam.setting import internal_timing


def crossings(x: Array, values: Array, level: float) -> Array:
    """Points (m,) where a curve through x and values (n,) passes a level, in the unit of x: two if an eccentric is
    turned past its dead point."""
    above = values > level
    at = np.flatnonzero(above[1:] != above[:-1])
    return np.asarray(x[at] + (level - values[at]) / (values[at + 1] - values[at]) * (x[at + 1] - x[at]))


def window_map(
    state: BenchState,
    plates: int,
    screws: int,
    plate_span: tuple[float, float] | None = None,
    screw_span: tuple[float, float] | None = None,
) -> AdjustmentMap:
    """Readings over a part of slot and travel [deg], by default all of them, one for each pixel."""
    return adjustment_map(
        internal_timing(state.magneto),
        np.linspace(*(plate_span or state.magneto.backplate.range_deg), plates),
        np.linspace(*(screw_span or state.magneto.contact_screw.range_deg), screws),
    )


def telling_screw_span(state: BenchState) -> tuple[float, float]:
    """The part of the screw's travel in which the gap is near its limits: up to twice as far from their middle as
    either is wide [deg]. The present and the designed place are in it too."""
    low, high = state.magneto.contact_screw.range_deg
    screws = np.linspace(low, high, 721)
    _, gaps = internal_timing(state.magneto).opening_and_gap(0.0, screws)
    least, most = state.magneto.gap_limits_mm
    room = 2.0 * (most - least)
    near = screws[(gaps >= least - room) & (gaps <= most + room)]
    ends = np.array([*(near if near.size else screws), 0.0, state.screw_deg])
    margin = 0.05 * (ends.max() - ends.min())
    return max(low, float(ends.min() - margin)), min(high, float(ends.max() + margin))


def window_table(state: BenchState, points: int = 61) -> Table:
    """A coarse map as columns, one row a setting."""
    found = window_map(state, points, points)
    plate, screw = np.meshgrid(found.backplate_deg, found.screw_deg, indexing="ij")
    return [
        ("backplate, positive with rotation [deg]", plate.ravel()),
        ("contact screw, positive closer [deg]", screw.ravel()),
        ("opening error, positive late [rotor deg]", found.error_deg.ravel()),
        ("largest gap [mm]", np.asarray(found.gap_mm).ravel()),
        ("within limits", found.within_limits.ravel().astype(float)),
    ]
