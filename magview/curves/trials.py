"""Data of the plot of trials, as arrays and as a table."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from magview.curves.lift import Array, Table
from magview.physics.trials.advice import Advice
from magview.physics.trials.flank import Flank


@dataclass(frozen=True)
class TrialsCurve:
    """Largest gap against the plate, set to open at the E-gap each time; arrays (n,)."""

    backplate_deg: Array
    file_mm: Array
    """As the file has it; NaN where it never works."""
    gap_mm: Array
    """As the trials tell."""
    low_mm: Array
    high_mm: Array
    """It lies between these 19 times in 20, errors of setting included."""


def trials_curve(advice: Advice) -> TrialsCurve:
    """The curves of some trials over the slot, and as far as was tried."""
    fit = advice.fit
    low, high = fit.magneto.backplate.range_deg
    plates = np.linspace(min([low, *fit.plates]), max([high, *fit.plates]), 241)
    there = fit.predict(plates, as_set=True)
    return TrialsCurve(plates, Flank(fit.magneto).gap_mm(plates), there.gap_mm, there.low_mm, there.high_mm)


def trials_table(found: TrialsCurve) -> Table:
    """The curves as columns."""
    return [
        ("backplate, positive with rotation [deg]", found.backplate_deg),
        ("largest gap as the file has it [mm]", found.file_mm),
        ("largest gap through the trials [mm]", found.gap_mm),
        ("19 times in 20, low [mm]", found.low_mm),
        ("19 times in 20, high [mm]", found.high_mm),
    ]
