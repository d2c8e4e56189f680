"""What the plot of wear shows, over running hours."""

from __future__ import annotations

import numpy as np

from magview.bench.curves import Table
from magview.bench.state import BenchState
from magview.physics.wear import Course, WearRates, course


def wear_course(state: BenchState, rates: WearRates, until_h: float) -> Course:
    """The present setting over running hours from now to `until_h` [h]. Raises ValueError as `wear.course` does."""
    hours = np.linspace(0.0, until_h, 201)
    return course(state.magneto, state.backplate_deg, state.screw_deg, rates, hours)


def wear_table(found: Course) -> Table:
    """Lobe 1 over the hours."""
    return [
        ("running hours [h]", found.hours),
        ("opening error, positive late [rotor deg]", found.opening_error_deg[:, 0]),
        ("largest gap [mm]", found.gap_mm[:, 0]),
        ("thickest blade that passes [mm]", found.blade_gap_mm[:, 0]),
        ("within limits", found.within_limits.astype(float)),
    ]
