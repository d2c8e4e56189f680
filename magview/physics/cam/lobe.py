"""One lobe drawn through scattered rows: smoothed, set on its base circle, its flanks made to rise throughout.

References
----------
P. Craven, G. Wahba, "Smoothing noisy data with spline functions", Numer. Math. 31 (1979) 377–403: the spline's
parameter by generalised cross-validation.
"""

from __future__ import annotations

from collections.abc import Callable

import numpy as np
from numpy.typing import NDArray

from magview.physics.cam.lift_rows import Rows, thinned
from magview.spec.base import SpecError
from magview.spec.language import Message, marked, number, tr

Array = NDArray[np.float64]

MIN_TOP_MM, MAX_TOP_MM = 0.02, 20.0
"""Contact lift of a lobe that is taken for one."""

_GRID = 4001
_MAX_KNOTS = 1000
"""The spline's cost grows with its knots; more rows than these are averaged."""

_FLANK_POINTS = 72

_MAX_NOISE = 0.1
"""Share of the lift, as a standard deviation, beyond which foot and top are lost."""


class Lobe:
    """A lobe as the rows show it.

    Parameters
    ----------
    rows : one lobe's rows, directions laid together, wild ones marked.
    closed_below_mm : lift below which nothing was seen, for gaps [mm]; None when the base circle was.
    own_deg : from cam degrees to the table's own angle, for what is said.

    Raises
    ------
    SpecError : no single lobe from base circle to base circle, upside down, or no sensible height.
    """

    def __init__(self, rows: Rows, closed_below_mm: float | None, own_deg: Callable[[float], float]) -> None:
        self.warnings: list[Message] = []
        """Warnings about the rows, sentences."""
        x, y, weight = thinned(rows, _MAX_KNOTS)
        self._grid = np.linspace(x[0], x[-1], _GRID)
        curve = _spline(x, y, weight)
        self._smooth = curve(self._grid)
        self._own = own_deg
        off = rows.lift[rows.kept] - curve(rows.angle[rows.kept])
        self.noise_mm = 1.4826 * float(np.median(np.abs(off)))
        """Scatter about the spline, robust standard deviation [mm]."""
        self._check_one_hump()
        self._top = int(np.argmax(self._smooth))
        self._feet = [0, _GRID - 1]
        self._base = self._bases(rows) if closed_below_mm is None else (0.0, 0.0)
        span = float(self._smooth[self._top]) - sum(self._base) / 2
        # A spline swings over the ends of a level top: what is as good as level is one.
        high = self._smooth >= self._smooth[self._top] - min(max(0.003 * span, 2 * self.noise_mm), 0.01 * span)
        self._peak = float(self._smooth[high].mean())
        self.top_mm = self._peak - sum(self._base) / 2
        """Lift at the top [mm]."""
        _check_height(self.top_mm)
        self._lift = np.minimum(self.above_base_mm(self._grid, self._smooth), self.top_mm)
        left, right = np.flatnonzero(high)[[0, -1]]
        self.level_deg = (float(self._grid[left]), float(self._grid[right]))
        """Beginning and end of the top [cam deg]."""
        self.middle_deg = sum(self.level_deg) / 2
        """The top of the lobe [cam deg]."""
        self._say_what_is_thin(rows, closed_below_mm)

    def above_base_mm(self, angle: Array, lift: Array) -> Array:
        """Lifts over the base circle of their own side of the top, made to meet at the top [mm]; any one shape."""
        base = np.where(angle < self._grid[self._top], *self._base)
        return np.asarray((lift - base) * self.top_mm / (self._peak - base))

    def flank(self, side: int) -> tuple[Array, Array]:
        """Angles [cam deg] and lifts [mm] from the foot to near the top of the rise (side −1) or the fall (+1), (n,).

        Rising throughout. The lowest part, lost in noise or not seen, is the parabola that leaves the base circle
        level and meets the rest at its slope.
        """
        before, after = self._feet
        part = slice(before, self._top + 1) if side < 0 else slice(after, self._top - 1, -1)
        x, s = self._grid[part], self._lift[part]
        s = (np.maximum.accumulate(s) + np.minimum.accumulate(s[::-1])[::-1]) / 2
        lowest = min(max(0.01 * self.top_mm, 1.5 * self.noise_mm), 0.08 * self.top_mm)
        first = int(np.searchsorted(s, lowest))
        end = self.level_deg[0 if side < 0 else 1]
        inward = np.sign(end - x[first]) or 1.0
        width = abs(end - x[first])
        ahead = min(first + max(10, (len(s) - first) // 50), len(s) - 1)
        slope = (s[ahead] - s[first]) / max(abs(x[ahead] - x[first]), 1e-9)
        foot = min(2 * s[first] / max(slope, 1e-12), 0.35 * width)
        t = np.linspace(0.0, 1.0, 8)
        low = (x[first] - inward * foot * (1 - t), s[first] * t**2)
        at = np.linspace(x[first], end, _FLANK_POINTS)[1:-1]
        order = slice(None) if inward > 0 else slice(None, None, -1)
        return np.r_[low[0], at], np.r_[low[1], np.interp(at, x[order], s[order])]

    # ------------------------------------------------------------------ what the rows must be

    def _check_one_hump(self) -> None:
        g, span = self._smooth, float(np.ptp(self._smooth))
        _check_height(span)
        tops = _tops(g, max(0.15 * span, 6 * self.noise_mm))
        middle = (g.max() + g.min()) / 2
        if len(tops) == 2 and tops[0] < int(np.argmin(g)) < tops[1] and min(g[0], g[-1]) > middle:
            raise SpecError(
                tr("the readings stand high off the lobe and fall on it: say that the dial falls with lift")
            )
        if len(tops) > 1:
            places = ", ".join(f"{number(self._own(float(self._grid[i])), '.4g')}°" for i in tops[:8])
            raise SpecError(
                tr(
                    "the table shows {count} tops, near {places}; it must show one lobe, from base "
                    "circle to base circle",
                    count=len(tops),
                    places=places,
                )
            )
        if self.noise_mm > _MAX_NOISE * span:
            raise SpecError(
                tr(
                    "the readings scatter by {noise:.3g} mm about any smooth curve, {share:.0f} % of the lift; "
                    "at most {most} % is taken for a lobe",
                    noise=self.noise_mm,
                    share=100 * self.noise_mm / span,
                    most=100 * _MAX_NOISE,
                )
            )
        top = int(np.argmax(g))
        if max(g[: top + 1].min(), g[top:].min()) > g.max() - 0.5 * span:
            raise SpecError(tr("the table covers one side of the lobe only; it must go over the top and down again"))

    def _bases(self, rows: Rows) -> tuple[float, float]:
        """The level of the base circle before and after the top [mm]."""
        span = float(np.ptp(self._smooth))
        steepest = float(np.abs(np.diff(self._smooth)).max())
        found: list[float | None] = []
        for side in (-1, 1):
            outward = self._smooth[: self._top + 1][::-1] if side < 0 else self._smooth[self._top :]
            near = outward <= outward.min() + max(0.02 * span, 3 * self.noise_mm)
            reach = int(np.argmax(near))
            foot = self._top + side * reach
            outside = rows.kept & ((rows.angle - self._grid[foot]) * side >= 0)
            flat = abs(outward[-1] - outward[-81]) / 80 < 0.2 * steepest
            if np.count_nonzero(outside) < 3 and not flat:
                found.append(None)
                continue
            self._feet[max(side, 0)] = foot
            level = float(np.median(rows.lift[outside])) if outside.any() else float(outward.min())
            uneven = float(np.ptp(outward[reach:]))
            if uneven > max(0.04 * span, 4 * self.noise_mm):
                words = (
                    marked("The base circle before the lobe is uneven by {uneven:mm}.")
                    if side < 0
                    else marked("The base circle after the lobe is uneven by {uneven:mm}.")
                )
                self.warnings.append(Message(words, {"uneven": uneven}))
            found.append(level)
        left, right = found
        if left is None and right is None:
            raise SpecError(
                tr("neither end of the table lies on the base circle; measure from base circle to base circle")
            )
        if left is None:
            self.warnings.append(Message("The table begins on the flank; its foot is drawn, not measured."))
        if right is None:
            self.warnings.append(Message("The table ends on the flank; its foot is drawn, not measured."))
        if left is None or right is None:
            both = left if left is not None else right
            assert both is not None
            return both, both
        if abs(left - right) > max(0.02 * span, 3 * self.noise_mm):
            words = (
                marked(
                    "The base circle reads {difference:mm} more after the lobe than before it (the dial slipped, or "
                    "the cam runs out); each flank was taken from its own side."
                )
                if right > left
                else marked(
                    "The base circle reads {difference:mm} more before the lobe than after it (the dial slipped, or "
                    "the cam runs out); each flank was taken from its own side."
                )
            )
            self.warnings.append(Message(words, {"difference": abs(left - right)}))
        return left, right

    def _say_what_is_thin(self, rows: Rows, closed_below_mm: float | None) -> None:
        angle, lift = rows.angle[rows.kept], self.above_base_mm(rows.angle, rows.lift)[rows.kept]
        on_flank = (lift > 0.05 * self.top_mm) & (lift < 0.95 * self.top_mm)
        for words, side in (
            (marked("Only {count} rows lie on the rise; between them it is a guess."), angle < self.middle_deg),
            (marked("Only {count} rows lie on the fall; between them it is a guess."), angle >= self.middle_deg),
        ):
            count = int(np.count_nonzero(on_flank & side))
            if count < 5:
                self.warnings.append(Message(words, {"count": count}))
        if self.noise_mm > 0.02 * self.top_mm:
            self.warnings.append(
                Message(
                    "The readings scatter by {noise:mm} about the curve, {share:.0f} % of the lift.",
                    {"noise": self.noise_mm, "share": 100 * self.noise_mm / self.top_mm},
                )
            )
        if closed_below_mm is not None:
            self.warnings.append(
                Message(
                    "Below {lift:mm} of lift the contacts were closed; the foot is drawn, not measured.",
                    {"lift": closed_below_mm},
                )
            )


def _check_height(lift_mm: float) -> None:
    if not MIN_TOP_MM <= lift_mm <= MAX_TOP_MM:
        raise SpecError(
            tr(
                "the table's lift comes to {lift:.4g} mm at the contacts, and {least} to "
                "{most} mm is allowed: are its unit and the kind of reading right?",
                lift=lift_mm,
                least=MIN_TOP_MM,
                most=MAX_TOP_MM,
            )
        )


def _tops(height: Array, rise: float) -> list[int]:
    """Indices of the tops that stand at least `rise` over the dips on either side, or over the ends."""
    from scipy.signal import find_peaks  # few need it and it loads slowly

    # An end may be a top. Of several as high to the last bit, a slope far below any reading leaves one the highest.
    outside = float(height.min()) - 2 * rise
    slope = np.linspace(0.0, 1e-6 * rise, len(height))
    found, _ = find_peaks(np.r_[outside, height + slope, outside], prominence=rise)
    return [int(i) - 1 for i in found]


def _spline(x: Array, y: Array, weight: Array) -> Callable[[Array], Array]:
    # Loaded here because few need it and it loads slowly.
    from scipy.interpolate import PchipInterpolator, make_smoothing_spline

    step = (x[-1] - x[0]) / (len(x) - 1)
    scale = float(np.ptp(y)) or 1.0
    try:
        # In steps and spans of the data, where the numbers are of one size.
        smooth = make_smoothing_spline((x - x[0]) / step, (y - y[0]) / scale, weight)
        fits = bool(np.isfinite(smooth((x - x[0]) / step)).all())
    except (ValueError, np.linalg.LinAlgError):
        fits = False
    if not fits:
        return PchipInterpolator(x, y)
    return lambda at: np.asarray(y[0] + scale * smooth((at - x[0]) / step))
