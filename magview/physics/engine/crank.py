"""Crank, rods and pistons: true top dead centres, piston drop and when each cylinder fires (guide: theory-engine).

Crank degrees count from cylinder 1's own firing top dead centre, positive the way the engine turns; a cycle is
720. Arrays "by cylinder number" have shape (cylinders,), cylinder 1 first.

References
----------
J. B. Heywood, *Internal Combustion Engine Fundamentals*, ch. 2: crank and rod. The articulated rods are plane
trigonometry on the same figure.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from fractions import Fraction
from functools import lru_cache
from typing import Literal

import numpy as np
from numpy.typing import ArrayLike, NDArray

from magview.spec.engine import Engine
from magview.spec.language import tr
from magview.spec.magneto import Magneto

Array = NDArray[np.float64]

_GRID = 720
"""Intervals a turn in which dead centres are sought before they are closed in on."""

_STROKES = np.array(["power", "exhaust", "intake", "compression"])


@dataclass(frozen=True)
class CamFiring:
    """Firing of each cylinder by a cam; arrays (cylinders,), by cylinder number."""

    crank_deg: Array
    """Angle at which the cylinder fires, from cylinder 1's firing top dead centre, 0 ≤ a < 720 [crank deg]."""
    btdc_deg: Array
    """The same before the cylinder's own firing top dead centre, larger = earlier [crank deg]."""
    piston_drop_mm: Array
    """Distance of its piston then below its top dead centre [mm], ≥ 0."""


def crank_slider_mm(crank_deg: ArrayLike, crank_mm: float, rod_mm: float) -> Array:
    """Piston pin's distance from the crank axis, x = r cos a + √(l² − r² sin² a) (Heywood, ch. 2).

    Parameters
    ----------
    crank_deg : crank angle a from top dead centre [deg], any shape.
    crank_mm : crank radius r, half the stroke [mm].
    rod_mm : rod length l > r [mm].
    """
    a = np.radians(np.asarray(crank_deg, dtype=float))
    return np.asarray(crank_mm * np.cos(a) + np.sqrt(rod_mm**2 - (crank_mm * np.sin(a)) ** 2))


# ---------------------------------------------------------------------- rods


@dataclass(frozen=True)
class _Rods:
    """All cylinders' rods in one form, arrays by cylinder number; angles in radians from cylinder 1's axis.

    A rod that sits on the crank pin itself, as the master's, has a knuckle radius of 0.
    """

    crank_mm: float
    master_rod_mm: float
    master_axis: float
    axis: Array
    rod_mm: Array
    knuckle_mm: Array
    knuckle: Array
    """Knuckle pin from the cylinder's own axis while the master rod lies along its own."""

    def piston(self, crank: Array, index: NDArray[np.int64]) -> tuple[Array, Array]:
        """Piston pin from the crank axis [mm], and its rate [mm/rad], for cylinder number − 1; broadcasts."""
        r, a = self.crank_mm, crank - self.master_axis
        swing = r / self.master_rod_mm * np.sin(a)
        tilt_rate = -r / self.master_rod_mm * np.cos(a) / np.sqrt(1 - swing**2)
        pin, radius = crank - self.axis[index], self.knuckle_mm[index]
        knuckle = self.knuckle[index] - np.arcsin(swing)
        along = r * np.cos(pin) + radius * np.cos(knuckle)
        across = r * np.sin(pin) + radius * np.sin(knuckle)
        along_rate = -r * np.sin(pin) - radius * np.sin(knuckle) * tilt_rate
        across_rate = r * np.cos(pin) + radius * np.cos(knuckle) * tilt_rate
        reach = np.sqrt(self.rod_mm[index] ** 2 - across**2)
        return along + reach, along_rate - across * across_rate / reach


@dataclass(frozen=True)
class _Centres:
    """Rods with their dead centres, by cylinder number; `top` in radians of crank from cylinder 1's axis."""

    rods: _Rods
    top: Array
    top_mm: Array
    fall_deg: Array
    """Crank degrees from top to bottom dead centre, 0 < a < 360."""


@lru_cache(maxsize=64)
def _centres(engine: Engine) -> _Centres:
    rods = _rods(engine)
    if engine.articulation is None:
        top, fall_deg = rods.axis, np.full(engine.cylinders, 180.0)
    else:
        top, bottom = _extremes(rods)
        fall_deg = np.degrees(bottom - top) % 360.0
    return _Centres(rods, top, rods.piston(top, np.arange(engine.cylinders))[0], fall_deg)


def _rods(engine: Engine) -> _Rods:
    n, link, crank = engine.cylinders, engine.articulation, engine.stroke_mm / 2
    if link is None:
        # Only the even spacing of the firing matters: let each cylinder stand where its centre is due.
        axis = np.radians(_due_deg(engine) % 360.0)
        return _Rods(crank, engine.rod_mm, 0.0, axis, np.full(n, engine.rod_mm), np.zeros(n), np.zeros(n))
    axis, master = np.radians(np.arange(n) * 360.0 / n), link.master_cylinder - 1
    given = link.knuckle_angles_deg
    knuckle = np.zeros(n) if given is None else np.radians(given) + axis[master] - axis
    rod, radius = np.full(n, link.link_rod_mm), np.full(n, link.knuckle_radius_mm)
    rod[master], radius[master] = engine.rod_mm, 0.0
    return _Rods(crank, engine.rod_mm, float(axis[master]), axis, rod, radius, knuckle)


def _extremes(rods: _Rods) -> tuple[Array, Array]:
    """Crank angles [rad] of each cylinder's highest and lowest piston position."""
    every = np.arange(len(rods.axis))
    grid = np.linspace(0.0, 2 * np.pi, _GRID + 1)
    rate = rods.piston(grid, every[:, None])[1]
    rate[:, -1] = rate[:, 0]  # the seam must not lose a dead centre to rounding
    # A large knuckle circle can give several; all are closed in on, and the furthest is the true one.
    falls = (rate[:, :-1] > 0) & (rate[:, 1:] <= 0)
    who, start = np.nonzero(falls | (rate[:, :-1] < 0) & (rate[:, 1:] >= 0))
    highest = falls[who, start]
    angle = _zeros(
        lambda a: rods.piston(a, who)[1], grid[start], grid[start + 1], rate[who, start], rate[who, start + 1]
    )
    place = rods.piston(angle, who)[0]
    found = []
    for sign, these in ((1.0, highest), (-1.0, ~highest)):
        order = np.lexsort((sign * place[these], who[these]))
        found.append(angle[these][order[np.searchsorted(who[these][order], every, side="right") - 1]])
    return found[0], found[1]


def _zeros(f: Callable[[Array], Array], a: Array, b: Array, fa: Array, fb: Array) -> Array:
    """Zeros of `f`, one in each bracket [a, b] with fa·fb ≤ 0, to the last bits: Illinois' false position."""
    x = a
    for _ in range(100):  # eight or so do, where the crossing is plain
        last, x = x, b - fb * (b - a) / (fb - fa)
        fx = f(x)
        crossed = fx * fb < 0
        # The end that stays for a second time counts half, or it would stay for ever.
        a, fa = np.where(crossed, b, a), np.where(crossed, fb, fa / 2)
        b, fb = x, fx
        if np.all((np.abs(x - last) <= 1e-15) | (fx == 0.0)):
            break
    return np.asarray(x)


def _due_deg(engine: Engine) -> Array:
    """Return where each cylinder's firing centre is due by the firing order, evenly spaced; by cylinder number."""
    due = np.empty(engine.cylinders)
    due[np.array(engine.firing_order) - 1] = np.arange(engine.cylinders) * (720.0 / engine.cylinders)
    return due


def _cycle(crank_deg: Array) -> Array:
    wrapped = np.mod(crank_deg, 720.0)
    return np.asarray(np.where(wrapped >= 720.0, 0.0, wrapped))  # a hair below 0 rounds to 720


def _index(engine: Engine, cylinder: ArrayLike) -> NDArray[np.int64]:
    which = np.asarray(cylinder, dtype=np.int64)
    wrong = which[(which < 1) | (which > engine.cylinders)]
    if wrong.size:
        raise ValueError(
            tr(
                "there is no cylinder {cylinder}; the engine has 1 to {cylinders}",
                cylinder=wrong.flat[0],
                cylinders=engine.cylinders,
            )
        )
    return which - 1


# ---------------------------------------------------------------------- pistons


def top_dead_centre_deg(engine: Engine) -> Array:
    """Each cylinder's true firing top dead centre (cylinders,) [crank deg], 0 ≤ a < 720, by cylinder number.

    Cylinder 1's own is the zero. Each cylinder fires once in 720 and, of its two dead centres there, at the
    one nearer to its evenly spaced place in the firing order. Without articulated rods the places are even.
    The centre is the highest piston position, bracketed on the analytic rate to better than 1e-9°.
    """
    due = _due_deg(engine)
    if engine.articulation is None:
        return due
    top = np.degrees(_centres(engine).top)
    return _cycle(due + (top - top[0] - due + 180.0) % 360.0 - 180.0)


def piston_drop_mm(engine: Engine, crank_deg: ArrayLike, cylinder: ArrayLike = 1) -> Array:
    """Return a piston's distance below its own true top dead centre [mm], ≥ 0.

    Parameters
    ----------
    engine : the engine.
    crank_deg : crank angle from cylinder 1's firing top dead centre [deg], any shape.
    cylinder : cylinder number [-], whole; broadcasts with `crank_deg`.

    Raises
    ------
    ValueError : no such cylinder.
    """
    index, centres = _index(engine, cylinder), _centres(engine)
    crank = np.radians(np.asarray(crank_deg, dtype=float)) + centres.top[0]
    return np.asarray(np.maximum(centres.top_mm[index] - centres.rods.piston(crank, index)[0], 0.0))


def strokes(engine: Engine, crank_deg: ArrayLike, cylinder: ArrayLike = 1) -> NDArray[np.str_]:
    """The stroke a cylinder is on: "power", "exhaust", "intake" or "compression".

    Parameters
    ----------
    engine : the engine.
    crank_deg : crank angle from cylinder 1's firing top dead centre [deg], any shape.
    cylinder : cylinder number [-], whole; broadcasts with `crank_deg`.

    Notes
    -----
    Strokes change at the cylinder's own true dead centres; at a centre the next one has begun.

    Examples
    --------
    >>> from magview.spec.library import find_engine
    >>> str(strokes(find_engine("four-opposed"), -25.0))
    'compression'
    """
    index, centres = _index(engine, cylinder), _centres(engine)
    # A centre counts as reached a hair before it, so that rounding does not leave it to the stroke before.
    after = _cycle(np.asarray(crank_deg, dtype=float) - top_dead_centre_deg(engine)[index] + 1e-9)
    bottom = centres.fall_deg[index]
    passed = (after >= bottom).astype(np.int64) + (after >= 360.0) + (after >= 360.0 + bottom)
    return np.asarray(_STROKES[passed])


def true_tdc_from_stops(first_deg: float, second_deg: float) -> float:
    """The disc's reading at true top dead centre, from a positive stop (common practice).

    Halfway, on the shorter arc, between the readings at which the piston meets the stop on either side;
    readings may straddle 0/360. Exact for a rod on the crank pin, such as the master rod; a link rod's piston
    does not rise and fall quite alike.

    Parameters
    ----------
    first_deg, second_deg : the two readings of the disc [deg], in either order.

    Returns
    -------
    The reading halfway [deg], 0 ≤ a < 360.

    Raises
    ------
    ValueError : equal readings; readings 180° apart, where either arc could be meant; or not finite.
    """
    arc = (second_deg - first_deg + 180.0) % 360.0 - 180.0
    if arc == 0.0:
        raise ValueError(
            tr(
                "both stop readings are {first}°; for the second the crank is turned to the stop the other way",
                first=first_deg,
            )
        )
    if not abs(arc) < 180.0 - 1e-9:  # false for NaN too
        raise ValueError(
            tr(
                "stop readings of {first}° and {second}° have no middle that can be told from its "
                "opposite; they must be numbers, and not 180° apart",
                first=first_deg,
                second=second_deg,
            )
        )
    middle = (first_deg + arc / 2) % 360.0
    return 0.0 if middle >= 360.0 else middle


# ---------------------------------------------------------------------- firing


def firing_table(engine: Engine) -> dict[Literal["left", "right"], Array]:
    """Return when each magneto should fire each cylinder (cylinders,) [crank deg], 0 ≤ a < 720, by cylinder number.

    The engine's BTDC before each cylinder's own true top dead centre: the ideal, which `firing_with_cam` sets
    against what a cam does.
    """
    top, btdc = top_dead_centre_deg(engine), engine.firing_btdc_deg
    return {"left": _cycle(top - btdc.left), "right": _cycle(top - btdc.right)}


def firing_with_cam(
    engine: Engine,
    magneto: Magneto,
    rotor_turns_per_crank_turn: float | Fraction,
    btdc_no1_deg: float,
    opens_deg: ArrayLike | None = None,
) -> CamFiring:
    """Return when each cylinder fires with a given cam, in the cycle in which lobe 1 fires cylinder 1.

    Parameters
    ----------
    engine, magneto : the engine and the magneto whose cam it is.
    rotor_turns_per_crank_turn : speed ratio [-].
    btdc_no1_deg : where cylinder 1 fires before top dead centre [crank deg].
    opens_deg : rotor degrees at which each lobe opens the contacts, shape (lobes,), as
        `InternalTiming.readings` gives them; left out: the lobes' places as new. Only differences count.

    Raises
    ------
    ValueError : a cam that does not give as many sparks in two crank turns as the engine has cylinders, or
        openings that are not one per lobe.
    """
    n, ratio, speed = engine.cylinders, magneto.cam.turns_per_rotor_turn, float(rotor_turns_per_crank_turn)
    peaks = np.array(magneto.cam.lobe_peaks_deg)
    opens = peaks / ratio if opens_deg is None else np.asarray(opens_deg, dtype=float)
    if opens.shape != peaks.shape:
        raise ValueError(
            tr(
                "there are {count} openings; there must be one for each of the {lobes} lobes",
                count=opens.size,
                lobes=peaks.size,
            )
        )
    sparks = 2 * speed * ratio * peaks.size
    if not abs(sparks - n) < 0.01:
        raise ValueError(
            tr(
                "the cam gives {sparks:.4g} sparks in two crank turns; the engine needs {n}",
                sparks=sparks,
                n=n,
            )
        )
    turns, lobe = np.divmod(np.arange(n), peaks.size)
    rotor = opens[lobe] - opens[0] + turns * (360.0 / ratio)
    crank = np.empty(n)
    crank[np.array(engine.firing_order) - 1] = rotor / speed - btdc_no1_deg
    btdc = (top_dead_centre_deg(engine) - crank + 360.0) % 720.0 - 360.0
    return CamFiring(_cycle(crank), btdc, piston_drop_mm(engine, crank, np.arange(1, n + 1)))


def compensated_lobe_peaks_deg(engine: Engine, btdc_deg: float, cam_turns_per_crank_turn: float = 0.5) -> Array:
    """Lobe places that fire every cylinder at the piston position at which cylinder 1 fires.

    One lobe per cylinder, spaced for each cylinder's piston position (FAA-H-8083-32, ch. 4).

    Parameters
    ----------
    engine : the engine.
    btdc_deg : where cylinder 1 fires before top dead centre [crank deg], −90…90; below 0 = after it.
    cam_turns_per_crank_turn : speed of the cam [-]; one lobe per cylinder takes half crank speed.

    Returns
    -------
    Cam degrees from the top of lobe 1, in firing order, shape (cylinders,); the first is 0.

    Raises
    ------
    ValueError : a BTDC outside ±90, or a cylinder whose piston does not reach that position.
    """
    if not abs(btdc_deg) <= 90.0:
        raise ValueError(tr("the timing is {btdc}° before top dead centre; it must lie within ±90°", btdc=btdc_deg))
    top, which = top_dead_centre_deg(engine), np.arange(1, engine.cylinders + 1)
    wanted, side = float(piston_drop_mm(engine, -btdc_deg)), -1.0 if btdc_deg > 0 else 1.0
    low, high = np.zeros(engine.cylinders), np.full(engine.cylinders, 180.0)
    short = piston_drop_mm(engine, top + side * high, which) < wanted
    if short.any():
        raise ValueError(
            tr(
                "the piston of cylinder {cylinder} does not reach {wanted:.4g} mm below top dead centre",
                cylinder=which[short][0],
                wanted=wanted,
            )
        )
    for _ in range(60):  # from half a turn to the last bit
        middle = (low + high) / 2
        short = piston_drop_mm(engine, top + side * middle, which) < wanted
        low, high = np.where(short, middle, low), np.where(short, high, middle)
    fires = top + side * high
    order = np.array(engine.firing_order) - 1
    # From cylinder 1's own BTDC, so that it stays 0 to the last bit.
    return _cycle(fires[order] - fires[0]) * cam_turns_per_crank_turn


@dataclass(frozen=True)
class OrderMismatch:
    """A cylinder that cannot fire in its place of the firing order, and how far its piston is from the top [deg]."""

    cylinder: int
    away_deg: float


def firing_order_mismatch(engine: Engine) -> OrderMismatch | None:
    """The worst cylinder of a firing order that does not suit one row on one crank pin; None if the order does.

    Each cylinder's axis stands at (number − 1)·360/n, so its top dead centre must fall within half a firing
    interval of its place in the order.
    """
    away = (top_dead_centre_deg(engine) - _due_deg(engine) + 360.0) % 720.0 - 360.0
    worst = int(np.argmax(np.abs(away)))
    if abs(away[worst]) <= 360.0 / engine.cylinders:
        return None
    return OrderMismatch(worst + 1, abs(float(away[worst])))
