"""Data of the plot of wear, over running hours."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from magview.bench.state import BenchState, readings
from magview.bench.wear_words import firing_of
from magview.curves.lift import Array, Table
from magview.physics.wear.prediction import Course, WearRates, course


def wear_course(state: BenchState, rates: WearRates, until_h: float) -> Course:
    """The present setting over running hours from now to `until_h` [h]. Raises ValueError as `wear.course` does."""
    hours = np.linspace(0.0, until_h, 201)
    return course(state.magneto, state.backplate_deg, state.screw_deg, rates, hours)


def engine_limits_deg(state: BenchState) -> tuple[float, float] | None:
    """Opening errors of lobe 1 beyond which it fires too early, or too late [rotor deg]; None off the engine."""
    firing = firing_of(state)
    if firing is None:
        return None
    now = float(readings(state).e_gap_error_deg[0])
    turn, early, tolerance = firing.rotor_turns_per_crank_turn, firing.early_deg, firing.tolerance_deg
    return now + turn * (early - tolerance), now + turn * (early + tolerance)


def wear_table(found: Course, state: BenchState) -> Table:
    """Lobe 1 over the hours; on an engine with what that does to its timing, from how it fires now."""
    error = found.opening_error_deg[:, 0]
    columns: list[tuple[str, Array | NDArray[np.str_]]] = [
        ("running hours [h]", found.hours),
        ("opening error, positive late [rotor deg]", error),
        ("largest gap [mm]", found.gap_mm[:, 0]),
        ("thickest blade that passes [mm]", found.blade_gap_mm[:, 0]),
        ("within limits", found.within_limits.astype(float)),
    ]
    if firing := firing_of(state):
        early = firing.early_deg - (error - error[0]) / firing.rotor_turns_per_crank_turn
        columns.append(("fires earlier than wanted [crank deg]", early))
    return columns
