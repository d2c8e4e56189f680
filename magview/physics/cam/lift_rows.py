"""Rows of a lift table before any curve: unwound angles, the two directions of turning, outliers, thinning."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

Array = NDArray[np.float64]
Flags = NDArray[np.bool_]

_MAX_REVERSALS = 20
"""More changes of direction than this and the rows are taken as in no order."""

_MAX_BACKLASH_DEG = 10.0


@dataclass
class Rows:
    """Angles [cam deg] and lifts [mm] in the order of the table, and which of them still count. All shape (n,)."""

    angle: Array
    lift: Array
    kept: Flags


def unwound_deg(angle: Array) -> Array:
    """Angles as read from a dial of 360° [deg], shape (n,), without its jumps from 359 to 0."""
    steps = np.diff(angle)
    if not np.any(np.abs(steps) > 180.0):
        return angle
    return np.asarray(angle[0] + np.r_[0.0, np.cumsum((steps + 180.0) % 360.0 - 180.0)])


def folded_deg(angle: Array, lift: Array) -> Array:
    """Angles of a cam turned more than once brought within half a turn of its highest part [deg], shape (n,)."""
    if np.ptp(angle) <= 360.0:
        return angle
    place = np.mod(angle, 360.0)
    steps = (place // 5.0).astype(int)
    # Medians of steps, so that no wild row is taken for the top.
    heights = [np.median(lift[steps == k]) if np.any(steps == k) else -np.inf for k in range(72)]
    top = 5.0 * int(np.argmax(heights)) + 2.5
    return np.asarray((angle - top + 180.0) % 360.0 - 180.0 + top)


def directions(angle: Array) -> Array:
    """+1 and −1 for rows taken while the angle [deg] grew and while it fell, shape (n,); all +1 if in no order."""
    sign = np.sign(np.diff(angle))
    for i in range(1, len(sign)):
        if sign[i] == 0:
            sign[i] = sign[i - 1]
    moving = sign[sign != 0]
    if not len(moving) or np.count_nonzero(np.diff(moving)) > _MAX_REVERSALS:
        return np.ones_like(angle)
    sign[sign == 0] = moving[0]
    # A row belongs to the move that led to it; the first to the one that leaves it.
    return np.asarray(np.r_[sign[0], sign])


def lay_branches_together(rows: Rows, way: Array) -> float:
    """Move the two directions of turning to their middle; say how far apart they were.

    Parameters
    ----------
    rows : changed in place.
    way : from `directions`, shape (n,).

    Returns
    -------
    How far the rows taken with a falling angle lie above those with a growing one [deg]; 0 for one direction.
    """
    curves = []
    for sign in (1, -1):
        chosen = rows.kept & (way == sign)
        x, y, _ = averaged(rows.angle[chosen], rows.lift[chosen], groups(rows.angle[chosen], 1e-6))
        if len(x) < 8 or np.ptp(y) < 0.5 * np.ptp(rows.lift):
            return 0.0
        curves.append((x, y))
    (x1, y1), (x2, y2) = curves
    low, high = max(x1[0], x2[0]), min(x1[-1], x2[-1])
    reach = min(_MAX_BACKLASH_DEG, 0.2 * (high - low))
    if not reach > 0:
        return 0.0
    at = np.linspace(low + reach / 2, high - reach / 2, 801)
    offsets = np.linspace(-reach, reach, 401)
    cost = np.array([np.mean((np.interp(at + d / 2, x2, y2) - np.interp(at - d / 2, x1, y1)) ** 2) for d in offsets])
    best = int(np.argmin(cost))
    offset = float(offsets[best])
    if 0 < best < len(cost) - 1:
        # The parabola through the three lowest. It bends: of equals `best` is the first, so before it is higher.
        before, here, after = cost[best - 1 : best + 2]
        offset += float((before - after) / (2 * (before - 2 * here + after)) * (offsets[1] - offsets[0]))
    rows.angle = rows.angle + np.where(way > 0, offset / 2, -offset / 2)
    return offset


def groups(angle: Array, apart: float) -> NDArray[np.intp]:
    """Group rows at the same angle, within `apart` [deg] from one to the next: numbers from 0, shape (n,)."""
    order = np.argsort(angle, kind="stable")
    found = np.zeros(len(angle), dtype=np.intp)
    if len(angle):
        found[order] = np.r_[0, np.cumsum(np.diff(angle[order]) > apart)]
    return found


def averaged(angle: Array, lift: Array, group: NDArray[np.intp]) -> tuple[Array, Array, Array]:
    """Groups of rows made one each: angles, lifts and how many rows, shape (m,); numbers without rows are skipped.

    `angle` [deg], `lift` [any unit] and `group`, from `groups`: shape (n,).
    """
    count = np.bincount(group)
    full = count > 0
    weight = count[full].astype(float)
    return np.bincount(group, angle)[full] / weight, np.bincount(group, lift)[full] / weight, weight


def thinned(rows: Rows, most: int) -> tuple[Array, Array, Array]:
    """The rows kept, in order of angle, as at most `most` averages: angles [deg], lifts [their unit] and how many
    rows each, shape (m,)."""
    x, y = rows.angle[rows.kept], rows.lift[rows.kept]
    group = groups(x, 1e-3 * np.ptp(x) / most)
    if group.max() >= most:
        group = np.minimum((x - x.min()) / np.ptp(x) * most, most - 1).astype(np.intp)
    return averaged(x, y, group)


def leave_out_outliers(rows: Rows) -> int:
    """Mark rows that lie far off their neighbours; say how many, at most a twentieth.

    A row is compared with the cubic through the two neighbours on either side, its own angle's other rows not among
    them. Worst first, as a wild row throws its neighbours off too. The two rows at either end are not judged.
    """
    scale, most, found = float(np.ptp(rows.lift)), max(1, len(rows.angle) // 20), 0
    while found < most:
        index = np.flatnonzero(rows.kept)
        x, y = rows.angle[index], rows.lift[index]
        group = groups(x, 0.3 * np.ptp(x) / len(x))
        if group.max() < 8:
            break
        off = np.abs(y - _by_neighbours(*averaged(x, y, group)[:2])[group])
        off[np.isnan(off)] = 0.0
        far = off > max(10.0 * 1.4826 * float(np.median(off)), 0.05 * scale)
        if not far.any():
            break
        # Only the worst within reach of each other's cubic.
        worst = np.zeros(group.max() + 5)
        np.maximum.at(worst, group + 2, off)
        around = np.max([worst[k : k + group.max() + 1] for k in range(5)], axis=0)
        far &= off >= around[group]
        rows.kept[index[far]] = False
        found += int(np.count_nonzero(far))
    return found


def _by_neighbours(x: Array, y: Array) -> Array:
    """At each of the points (n,), the cubic through the two points on either side; NaN for the two at either end."""
    at, out = x[2:-2], np.full_like(y, np.nan)
    near = [(x[k : len(x) - 4 + k], y[k : len(x) - 4 + k]) for k in (0, 1, 3, 4)]
    total = np.zeros_like(at)
    for i, (xi, yi) in enumerate(near):
        weight = np.ones_like(at)
        for j, (xj, _) in enumerate(near):
            if i != j:
                weight = weight * (at - xj) / (xi - xj)
        total += weight * yi
    out[2:-2] = total
    return out
