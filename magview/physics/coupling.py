"""Timing a magneto to the engine at the toothed coupling (``model.md`` §6).

A disc with `magneto_teeth` teeth on one face and `drive_teeth` on the other sits between two flanges. Its
position (i, j): the magneto's flange moved i teeth with rotation relative to the disc, the disc moved j
teeth with rotation relative to the drive's flange. Teeth and shifts stay whole numbers and exact fractions
of a turn until the answer is made, so that moves which are equally good tie.
"""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction
from math import floor, isfinite, lcm

import numpy as np
from numpy.typing import NDArray

from magview.spec.engine import Installation
from magview.spec.frozen import frozen
from magview.spec.language import marked, number, tr

MAX_TEETH = 400
"""The most teeth on a face, as in the installation file: it bounds the planner's search."""

_SLACK_DEG = 1e-9
"""A reading at the very limit must not fail for the last bit."""


@frozen
class Move:
    """One way to move the coupling. Teeth positive with rotation; BTDC in crank degrees, larger = earlier."""

    magneto_teeth: int
    """The magneto's flange relative to the disc."""
    disc_teeth: int
    """The disc relative to the drive's flange."""
    rotor_shift_deg: float
    crank_advance_deg: float
    """Positive = the magneto fires earlier."""
    result_btdc_deg: float
    residual_deg: float
    """Result less wanted: positive = still early."""


@frozen
class Mesh:
    """What sits in what, for the drawing. Slots and teeth count from their painted mark, with rotation.

    In position (0, 0) the three marks stand in line. Angles are as moved, not wrapped to one turn.
    """

    disc_deg: float
    """The disc's mark from the drive flange's mark [deg], positive with rotation."""
    magneto_deg: float
    """The magneto flange's mark from the drive flange's mark [deg], positive with rotation."""
    magneto_slots: tuple[int, ...]
    """For each tooth on the disc's magneto face, the slot of the magneto's flange it sits in."""
    drive_slots: tuple[int, ...]
    """For each tooth on the disc's drive face, the slot of the drive's flange it sits in."""


@frozen
class Synchronising:
    """Two magnetos on one engine. Errors in crank degrees, reading less wanted: positive = early."""

    left_error_deg: float
    right_error_deg: float
    difference_deg: float
    """Left error less right error: 0 when a wanted stagger is kept."""
    left_ok: bool
    right_ok: bool
    synchronised: bool


# ---------------------------------------------------------------------- shifts


def rotor_shift(magneto_teeth: int, drive_teeth: int, i: int, j: int) -> Fraction:
    """How far position (i, j) carries the rotor ahead of (0, 0) [turn]: i/Nm + j/Nd, exact, not wrapped.

    Raises ValueError for a tooth count outside 1…MAX_TEETH.

    Examples
    --------
    >>> rotor_shift(17, 18, 1, -1)
    Fraction(1, 306)
    """
    _check_teeth(magneto_teeth, drive_teeth)
    return Fraction(i, magneto_teeth) + Fraction(j, drive_teeth)


def rotor_shift_deg(magneto_teeth: int, drive_teeth: int, i: int, j: int) -> float:
    """`rotor_shift` in degrees [deg], positive = with rotation."""
    return float(360 * rotor_shift(magneto_teeth, drive_teeth, i, j))


def crank_advance_deg(
    magneto_teeth: int, drive_teeth: int, i: int, j: int, rotor_turns_per_crank_turn: float | Fraction
) -> float:
    """What position (i, j) does to the firing [crank deg]: rotor shift ÷ speed ratio, positive = earlier."""
    ratio = _exact_ratio(rotor_turns_per_crank_turn)
    return float(360 * rotor_shift(magneto_teeth, drive_teeth, i, j) / ratio)


def finest_shift_deg(magneto_teeth: int, drive_teeth: int) -> float:
    """The step of which all reachable rotor shifts are whole multiples [rotor deg]: 360/lcm(Nm, Nd)."""
    _check_teeth(magneto_teeth, drive_teeth)
    return 360 / lcm(magneto_teeth, drive_teeth)


def mesh(magneto_teeth: int, drive_teeth: int, i: int, j: int) -> Mesh:
    """What sits in what in position (i, j). Raises ValueError for a tooth count outside 1…MAX_TEETH."""
    _check_teeth(magneto_teeth, drive_teeth)
    return Mesh(
        disc_deg=360 * j / drive_teeth,
        magneto_deg=rotor_shift_deg(magneto_teeth, drive_teeth, i, j),
        magneto_slots=tuple((tooth - i) % magneto_teeth for tooth in range(magneto_teeth)),
        drive_slots=tuple((tooth + j) % drive_teeth for tooth in range(drive_teeth)),
    )


# ---------------------------------------------------------------------- planner


def plan(
    magneto_teeth_count: int,
    drive_teeth_count: int,
    rotor_turns_per_crank_turn: float | Fraction,
    reads_btdc_deg: float,
    wanted_btdc_deg: float,
    most: int = 20,
) -> list[Move]:
    """The moves that bring the firing nearest to where it is wanted, best first.

    Parameters
    ----------
    magneto_teeth_count, drive_teeth_count : teeth of the disc's two faces [-], 1…MAX_TEETH.
    rotor_turns_per_crank_turn : speed ratio k [-], 0.05…20.
    reads_btdc_deg, wanted_btdc_deg : firing before top dead centre [crank deg], larger = earlier, ±3600.
    most : length of the list at most [-], ≥ 1.

    Returns
    -------
    Moves over −N/2 < i, j ≤ N/2 on each face, by |residual|, then by teeth moved |i| + |j|, then by teeth
    at the magneto |i|, then the later firing, then the lower i.

    Notes
    -----
    The search is exhaustive. No shift is wrapped: a whole turn of the rotor would move the finger. Ranking is
    exact: numbers are taken as written (22.1 is 221/10), and a ratio within 1e-12 of a fraction with a
    denominator up to 24, the largest that cylinders/(2·poles) can have, is that fraction.

    Raises
    ------
    ValueError : a number outside the bounds above.
    """
    _check_teeth(magneto_teeth_count, drive_teeth_count)
    if most < 1:
        raise ValueError(tr("the list of moves must be allowed at least 1 move, not {most}", most=most))
    for words, value in (
        (marked("the reading is {value}° before top dead centre; it must lie within ±3600°"), reads_btdc_deg),
        (marked("the wanted timing is {value}° before top dead centre; it must lie within ±3600°"), wanted_btdc_deg),
    ):
        if not abs(value) <= 3600:
            raise ValueError(tr(words, value=number(value)))
    ratio = _exact_ratio(rotor_turns_per_crank_turn)
    reads, wanted = _exact(reads_btdc_deg), _exact(wanted_btdc_deg)

    unit = lcm(magneto_teeth_count, drive_teeth_count)
    i = np.repeat(_teeth(magneto_teeth_count), drive_teeth_count)
    j = np.tile(_teeth(drive_teeth_count), magneto_teeth_count)
    shift = i * (unit // magneto_teeth_count) + j * (unit // drive_teeth_count)  # in lcm-ths of a turn
    rank = _distance_rank(shift, (wanted - reads) * ratio * unit / 360)
    # Only those that can enter the list are sorted.
    last = min(most, rank.size) - 1
    near = np.flatnonzero(rank <= np.partition(rank, last)[last])
    i, j, shift, rank = i[near], j[near], shift[near], rank[near]
    order = np.lexsort((i, shift, abs(i), abs(i) + abs(j), rank))[:most]

    moves = []
    for n in order.tolist():
        turned = 360 * Fraction(int(shift[n]), unit)
        result = reads + turned / ratio
        moves.append(
            Move(
                magneto_teeth=int(i[n]),
                disc_teeth=int(j[n]),
                rotor_shift_deg=float(turned),
                crank_advance_deg=float(turned / ratio),
                result_btdc_deg=float(result),
                residual_deg=float(result - wanted),
            )
        )
    return moves


def outside_tolerance(moves: Sequence[Move], timing_tolerance_deg: float) -> str | None:
    """Say so if even the best of the planner's moves misses the tolerance [crank deg]; None if it meets it."""
    residual = moves[0].residual_deg
    if abs(residual) <= timing_tolerance_deg + _SLACK_DEG:
        return None
    places = {"residual": number(abs(residual), 2), "tolerance": number(timing_tolerance_deg)}
    if residual > 0:
        return tr(
            "the nearest this coupling comes is {residual}° of crank early, outside the tolerance of {tolerance}°",
            **places,
        )
    return tr(
        "the nearest this coupling comes is {residual}° of crank late, outside the tolerance of {tolerance}°",
        **places,
    )


def _teeth(count: int) -> NDArray[np.int64]:
    """The moves −N/2 < i ≤ N/2: each way of meshing once, by the shorter way round."""
    return np.arange(-((count - 1) // 2), count // 2 + 1, dtype=np.int64)


def _distance_rank(shift: NDArray[np.int64], target: Fraction) -> NDArray[np.int64]:
    """Whole numbers in the order of |shift − target|, equal where the distances are equal."""
    whole = floor(target)
    part = target - whole
    # Two ranks a step on each side; which side is nearer, or neither, depends on the fraction alone.
    below, above = (0, 2) if part == 0 else (int(2 * part > 1), int(2 * part < 1))
    return np.where(shift <= whole, 2 * (whole - shift) + below, 2 * (shift - whole - 1) + above)


def _exact(value: float) -> Fraction:
    return Fraction(str(float(value)))


def _exact_ratio(rotor_turns_per_crank_turn: float | Fraction) -> Fraction:
    ratio = rotor_turns_per_crank_turn
    if not 0.05 <= ratio <= 20:
        raise ValueError(
            tr(
                "the rotor turns {ratio} times per crank turn; it must be 0.05 to 20 times",
                ratio=number(float(ratio), "g"),
            )
        )
    if isinstance(ratio, Fraction):
        return ratio
    written = _exact(ratio)
    near = written.limit_denominator(24)
    return near if abs(near - written) <= Fraction(1, 10**12) else written


def _check_teeth(magneto_teeth: int, drive_teeth: int) -> None:
    for words, count in (
        (marked("the coupling has {count} teeth at the magneto; it must have 1 to {most}"), magneto_teeth),
        (marked("the coupling has {count} teeth at the drive; it must have 1 to {most}"), drive_teeth),
    ):
        if not 1 <= count <= MAX_TEETH:
            raise ValueError(tr(words, count=count, most=MAX_TEETH))


# ---------------------------------------------------------------------- drive


def speed_ratio(cylinders: int, poles: int) -> Fraction:
    """Rotor turns per crank turn of a four-stroke engine fired once per flux reversal: cylinders/(2·poles).

    Standard in aircraft powerplant textbooks (from memory). Raises ValueError for a number below 1.
    """
    if cylinders < 1 or poles < 1:
        raise ValueError(
            tr(
                "{cylinders} cylinders and {poles} poles have no speed ratio; both must be at least 1",
                cylinders=cylinders,
                poles=poles,
            )
        )
    return Fraction(cylinders, 2 * poles)


def speed_mismatch(installation: Installation) -> str | None:
    """Say so if the speed ratio does not suit the cylinders and poles; None if it does.

    A ratio written to three decimals or more is taken for the fraction it stands for.
    """
    cylinders, poles = installation.engine.cylinders, installation.magneto.poles
    needed, given = speed_ratio(cylinders, poles), installation.rotor_turns_per_crank_turn
    if abs(given - needed) <= 0.0005:
        return None
    return tr(
        "rotor_turns_per_crank_turn is {given}; {cylinders} cylinders and {poles} poles need "
        "{cylinders}/{twice}, which is {needed}",
        given=number(given, "g"),
        cylinders=cylinders,
        poles=poles,
        twice=2 * poles,
        needed=number(float(needed), ".6g"),
    )


def rotor_ahead_deg(ahead_deg: float, drive_step_deg: float, backlash_deg: float) -> float:
    """Take up the play of the coupling: how far the rotor is ahead of the drive after the drive has moved.

    Parameters
    ----------
    ahead_deg : the rotor ahead of the drive before the step [rotor deg], 0…backlash.
    drive_step_deg : the drive's step [rotor deg], positive with rotation. ±infinity is an approach from far.
    backlash_deg : play of the coupling [rotor deg], ≥ 0.

    Returns
    -------
    0 once the drive pushes the rotor along with rotation, the whole play once it pulls it back, between them
    while the rotor stands and the drive crosses the play [rotor deg]. The rotor's own step is the drive's
    step plus what this grows by.
    """
    return min(max(ahead_deg - drive_step_deg, 0.0), backlash_deg)


def synchronise(
    left_btdc_deg: float,
    right_btdc_deg: float,
    *,
    wanted_left_deg: float,
    wanted_right_deg: float,
    timing_tolerance_deg: float,
    synchronising_tolerance_deg: float,
) -> Synchronising:
    """Judge two magnetos, each against its own timing and both against each other.

    Parameters
    ----------
    left_btdc_deg, right_btdc_deg : readings before top dead centre [crank deg], larger = earlier.
    wanted_left_deg, wanted_right_deg : what they should read [crank deg]; they may differ (stagger).
    timing_tolerance_deg : allowed error of each [crank deg].
    synchronising_tolerance_deg : allowed difference of the two errors [crank deg].

    Raises
    ------
    ValueError : a reading that is not a finite number.
    """
    for words, value in (
        (marked("the left magneto's reading is {value}; it must be a number of degrees"), left_btdc_deg),
        (marked("the right magneto's reading is {value}; it must be a number of degrees"), right_btdc_deg),
    ):
        if not isfinite(value):
            raise ValueError(tr(words, value=value))
    left, right = left_btdc_deg - wanted_left_deg, right_btdc_deg - wanted_right_deg
    return Synchronising(
        left_error_deg=left,
        right_error_deg=right,
        difference_deg=left - right,
        left_ok=abs(left) <= timing_tolerance_deg + _SLACK_DEG,
        right_ok=abs(right) <= timing_tolerance_deg + _SLACK_DEG,
        synchronised=abs(left - right) <= synchronising_tolerance_deg + _SLACK_DEG,
    )
