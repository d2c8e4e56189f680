"""A straight line through readings of known error, its level unknown anew after every setting: slope, values ahead.

Readings of one setting share a level that nobody knows; the slope is common to all. Weighted least squares with one
level a setting is the general least squares solution for cumulated differences of such readings, with their
covariance (JCGM 100:2008, H.3, is the case of one setting).
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import inf, sqrt

import numpy as np
from numpy.typing import ArrayLike, NDArray

from magview.physics.uncertainty.propagation import coverage_factor

Array = NDArray[np.float64]

_SUSPECT = 0.05
"""Scatter that the stated errors would exceed more rarely than this is believed before them."""

_LEAST = 1e-9
"""A half-width of 0 is taken for this: no reading is without error."""


@dataclass(frozen=True)
class StraightLine:
    """The line of the last setting, with what is unsure of it. One unit for hours, one for readings."""

    slope: float
    """[reading's unit / h]"""
    slope_u: float
    """Standard uncertainty of the slope."""
    middle_h: float
    """Weighted mean hours of the last setting's readings [h]: there value and slope are independent."""
    middle: float
    middle_u: float
    """Value at `middle_h` and its standard uncertainty."""
    dof: float
    """Degrees of freedom: infinite while the errors are as stated, else those of the scatter."""
    scatter: float
    """Scatter of the readings over what their stated errors explain [-]; 1 while it is believed that they do."""

    def factor(self, probability: float) -> float:
        """Coverage factor of a two-sided interval (Student's t)."""
        return coverage_factor(probability, self.dof)

    def value(self, hours: ArrayLike) -> Array:
        """The line itself at hours [h], any shape."""
        return np.asarray(self.middle + self.slope * (np.asarray(hours, dtype=float) - self.middle_h))

    def value_u(self, hours: ArrayLike) -> Array:
        """Standard uncertainty of the line at hours [h], any shape."""
        away = np.asarray(hours, dtype=float) - self.middle_h
        return np.asarray(np.hypot(self.middle_u, self.slope_u * away))


def straight_line(
    hours: ArrayLike, readings: ArrayLike, half_widths: ArrayLike, settings: Sequence[int] | None = None
) -> StraightLine | None:
    """Weighted least squares through readings, with a level of its own for every setting.

    Parameters
    ----------
    hours : when each was read [h], shape (n,).
    readings : what was read, shape (n,).
    half_widths : how far each may be out to either side (rectangular, GUM 4.3.7), shape (n,) or one for all.
    settings : which setting each reading belongs to, shape (n,); left out: all to one. The last reading's is last.

    Returns
    -------
    The line; None where no setting was read at two different hours.

    Notes
    -----
    The stated errors are taken as known, and the interval is the normal one, unless the readings scatter more than
    that allows (chi-square, 5 %): then spread and interval come from the scatter, by Student's t. With stated errors
    that hold, a stated 95 % holds 95 to 97 times in 100 (``python -m tests.benchmarks.calibration``).
    """
    h, y = np.asarray(hours, dtype=float), np.asarray(readings, dtype=float)
    u = np.broadcast_to(np.maximum(np.asarray(half_widths, dtype=float), _LEAST) / sqrt(3.0), h.shape)
    which = np.zeros(h.shape, dtype=int) if settings is None else np.asarray(settings)
    if h.size == 0:
        return None
    _, place = np.unique(which, return_inverse=True)
    weight = 1.0 / u**2
    total = np.bincount(place, weight)
    mean_h, mean_y = (np.bincount(place, weight * v) / total for v in (h, y))
    away_h, away_y = h - mean_h[place], y - mean_y[place]
    across = float((weight * away_h**2).sum())
    if not np.any(np.abs(away_h) > 1e-9):
        return None
    slope = float((weight * away_h * away_y).sum()) / across
    left = h.size - total.size - 1
    chi2 = float((weight * (away_y - slope * away_h) ** 2).sum())
    dof, scatter = inf, 1.0
    if left >= 1:
        from scipy.special import chdtri  # loads slowly, and two readings do not need it

        if chi2 > float(chdtri(left, _SUSPECT)):
            dof, scatter = float(left), sqrt(chi2 / left)
    last = place[-1]
    return StraightLine(
        slope=slope,
        slope_u=scatter / sqrt(across),
        middle_h=float(mean_h[last]),
        middle=float(mean_y[last]),
        middle_u=scatter / sqrt(float(total[last])),
        dof=dof,
        scatter=scatter,
    )
