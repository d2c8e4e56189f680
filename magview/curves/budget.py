"""Data of the plot of an uncertainty budget, as arrays and as a table."""

from __future__ import annotations

import math

import numpy as np

from magview.curves.lift import Array, Table
from magview.physics.uncertainty.measurement import Outcome


def density_curve(outcome: Outcome) -> tuple[Array, Array]:
    """The normal density of the linear result over ±4 standard uncertainties: values (n,) in the quantity's unit and
    density (n,) per unit. Both empty where nothing is unsure."""
    u, middle = outcome.linear.standard_uncertainty, outcome.linear.estimate
    if not u > 0.0:
        return np.empty(0), np.empty(0)
    x = np.linspace(-4.0, 4.0, 201)
    return middle + u * x, np.exp(-(x**2) / 2) / (u * math.sqrt(2 * math.pi))


def budget_table(outcome: Outcome) -> Table:
    """The budget in the order of the inputs."""
    lines, unit = outcome.linear.budget, outcome.quantity.unit
    return [
        ("input", np.array([line.input.name for line in lines])),
        ("unit of the input", np.array([line.input.unit for line in lines])),
        ("estimate [its unit]", np.array([line.input.estimate for line in lines])),
        ("standard uncertainty [its unit]", np.array([line.input.standard_uncertainty for line in lines])),
        (f"sensitivity [{unit} per unit]", np.array([line.sensitivity for line in lines])),
        (f"contribution [{unit}]", np.array([line.uncertainty for line in lines])),
        ("share of the variance [1]", np.array([line.share for line in lines])),
    ]
