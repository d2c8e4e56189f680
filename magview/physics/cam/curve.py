"""A rising piecewise cubic with a fast, exact inverse: one flank of the contact-lift curve."""

from __future__ import annotations

from bisect import bisect_right
from math import nan

import numpy as np
from numpy.typing import ArrayLike, NDArray

from magview.spec.language import tr

Array = NDArray[np.float64]

_BLOCK = 1 << 14
"""Queries per block: small enough that a block's working arrays stay in the processor's cache."""


class RisingCubic:
    """A shape-preserving piecewise cubic Hermite curve y(x) through strictly rising knots.

    Parameters
    ----------
    x, y : knots, shape (n,), both strictly increasing, n ≥ 2.
    slope : dy/dx at the knots, shape (n,). Slopes that would make a piece turn back are lowered to three
        times the lesser neighbouring secant, which is sufficient for a monotone piece.

    Raises
    ------
    ValueError : x or y does not increase, or there are fewer than two knots.

    References
    ----------
    F. N. Fritsch, R. E. Carlson, "Monotone piecewise cubic interpolation", SIAM J. Numer. Anal. 17 (1980)
    238–246.
    """

    def __init__(self, x: Array, y: Array, slope: Array) -> None:
        h, rise = np.diff(x), np.diff(y)
        if not (len(x) >= 2 and np.all(h > 0) and np.all(rise > 0)):
            raise ValueError(tr("the knots of a rising curve must increase in x and in y"))
        secant = rise / h
        cap = 3.0 * np.minimum(np.r_[secant[0], secant], np.r_[secant, secant[-1]])
        m = np.clip(slope, 0.0, cap)
        m0, m1 = m[:-1] * h, m[1:] * h
        self.x, self.y = x, y
        self._h = h
        # y = y0 + t (c1 + t (c2 + t c3)) with 0 ≤ t ≤ 1 over each piece.
        self._c1, self._c2, self._c3 = m0, 3 * rise - 2 * m0 - m1, m0 + m1 - 2 * rise
        self._rise = rise
        self._knots_x = x.tolist()
        self._knots_y, self._first_y, self._last_y = y.tolist(), float(y[0]), float(y[-1])
        self._pieces: list[tuple[float, ...]] = list(
            zip(*(a.tolist() for a in (x[:-1], h, y[:-1], self._c1, self._c2, self._c3)), strict=True)
        )

    def __call__(self, x: ArrayLike) -> Array:
        """y at x, any shape; held at the end values outside the knots; NaN stays NaN."""
        x = np.asarray(x, dtype=float)
        inside = np.clip(x, self.x[0], self.x[-1])
        i = np.clip(np.searchsorted(self.x, inside, side="right") - 1, 0, len(self._h) - 1)
        t = (inside - self.x[i]) / self._h[i]
        return np.asarray(self.y[i] + t * (self._c1[i] + t * (self._c2[i] + t * self._c3[i])))

    def of_one(self, x: float) -> float:
        """y at one x, as a call gives it, in plain numbers: numpy's ways cost more than the sum."""
        i = min(max(bisect_right(self._knots_x, x) - 1, 0), len(self._pieces) - 1)
        x0, h, y0, c1, c2, c3 = self._pieces[i]
        t = min(max((x - x0) / h, 0.0), 1.0)
        return y0 + t * (c1 + t * (c2 + t * c3))

    def inverse(self, y: ArrayLike) -> Array:
        """x at which the curve reaches y, any shape; NaN where y lies outside the knots."""
        if isinstance(y, float):  # one reading at a time: numpy's ways cost more than the sum
            return np.asarray(self._inverse_of_one(y))
        y = np.asarray(y, dtype=float)
        flat = y.ravel()
        out = np.empty_like(flat)
        for start in range(0, len(flat), _BLOCK):
            block = slice(start, start + _BLOCK)
            out[block] = self._inverse(flat[block])
        return out.reshape(y.shape)

    def _inverse_of_one(self, y: float) -> float:
        """As `_inverse`, in plain numbers: Newton kept between the ends of the piece."""
        if not self._first_y <= y <= self._last_y:
            return nan
        i = min(bisect_right(self._knots_y, y) - 1, len(self._pieces) - 1)
        x0, h, y0, c1, c2, c3 = self._pieces[i]
        rest, low, high = y - y0, 0.0, 1.0
        t = min(max(rest / (c1 + c2 + c3), 0.0), 1.0)
        for _ in range(80):
            short = t * (c1 + t * (c2 + t * c3)) - rest
            if short == 0.0:
                break
            low, high = (t, high) if short < 0.0 else (low, t)
            slope = c1 + t * (2 * c2 + 3 * t * c3)
            after = t - short / slope if slope > 0.0 else low
            if not low < after < high:  # level ends, where Newton runs out of the piece
                after = (low + high) / 2
            if abs(after - t) < 1e-15:
                break
            t = after
        return float(x0 + t * h)

    def _inverse(self, y: Array) -> Array:
        i = np.searchsorted(self.y, y, side="right") - 1
        np.clip(i, 0, len(self._h) - 1, out=i)
        c1, c2, c3, rest = self._c1[i], self._c2[i], self._c3[i], y - self.y[i]
        t = rest / self._rise[i]
        inside = (t >= 0.0) & (t <= 1.0)  # false for NaN
        # Newton from the secant's guess: pieces are short, so the bulk is done in three rounds.
        with np.errstate(divide="ignore", invalid="ignore"):
            for _ in range(3):
                step = (t * (c1 + t * (c2 + t * c3)) - rest) / (c1 + t * (2 * c2 + 3 * t * c3))
                t = np.clip(t - step, 0.0, 1.0)
        slow = np.flatnonzero(inside & ~(np.abs(step) < 1e-9))
        if slow.size:  # pieces that start or end level: there the root is nearly multiple
            t[slow] = _bisect(c1[slow], c2[slow], c3[slow], rest[slow])
        x = self.x[i] + t * self._h[i]
        x[~inside] = np.nan
        return np.asarray(x)


def _bisect(c1: Array, c2: Array, c3: Array, rest: Array) -> Array:
    low, high = np.zeros_like(rest), np.ones_like(rest)
    for _ in range(53):
        t = (low + high) / 2
        short = t * (c1 + t * (c2 + t * c3)) < rest
        low, high = np.where(short, t, low), np.where(short, high, t)
    return np.asarray((low + high) / 2)
