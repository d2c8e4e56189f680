"""Timing a magneto to the engine at the toothed coupling (guide: theory-coupling).

A disc with `magneto_teeth` teeth on one face and `drive_teeth` on the other sits between two flanges. Its
position (i, j): the magneto's flange moved i teeth with rotation relative to the disc, the disc moved j
teeth with rotation relative to the drive's flange. Teeth and shifts stay whole numbers and exact fractions
of a turn until the answer is made, so that moves which are equally good tie.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction
from math import isfinite, lcm

from magview.physics.engine.meshing import Meshing, meshings
from magview.spec.engine import Installation
from magview.spec.language import marked, tr

MAX_TEETH = 400
"""The most teeth on a face, as in the installation file: it bounds the planner's search."""

_SLACK_DEG = 1e-9
"""A reading at the very limit must not fail for the last bit."""


@dataclass(frozen=True)
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


@dataclass(frozen=True)
class Mesh:
    """The slot that each tooth sits in. Slots and teeth count from their painted mark, with rotation.

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


@dataclass(frozen=True)
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
    """Return the rotor's lead at position (i, j) over (0, 0) [turn]: i/Nm + j/Nd, exact, not wrapped.

    Raises ValueError for a tooth count outside 1…MAX_TEETH.

    Examples
    --------
    >>> rotor_shift(17, 18, 1, -1)
    Fraction(1, 306)
    """
    check_teeth(magneto_teeth, drive_teeth)
    return Fraction(i, magneto_teeth) + Fraction(j, drive_teeth)


def rotor_shift_deg(magneto_teeth: int, drive_teeth: int, i: int, j: int) -> float:
    """`rotor_shift` in degrees [deg], positive = with rotation."""
    return float(360 * rotor_shift(magneto_teeth, drive_teeth, i, j))


def crank_advance_deg(
    magneto_teeth: int, drive_teeth: int, i: int, j: int, rotor_turns_per_crank_turn: float | Fraction
) -> float:
    """Change of the firing in position (i, j) [crank deg]: rotor shift ÷ speed ratio, positive = earlier."""
    ratio = exact_ratio(rotor_turns_per_crank_turn)
    return float(360 * rotor_shift(magneto_teeth, drive_teeth, i, j) / ratio)


def finest_shift_deg(magneto_teeth: int, drive_teeth: int) -> float:
    """The step of which all reachable rotor shifts are whole multiples [rotor deg]: 360/lcm(Nm, Nd)."""
    check_teeth(magneto_teeth, drive_teeth)
    return 360 / lcm(magneto_teeth, drive_teeth)


def mesh(magneto_teeth: int, drive_teeth: int, i: int, j: int) -> Mesh:
    """Slots of the teeth in position (i, j). Raises ValueError for a tooth count outside 1…MAX_TEETH."""
    check_teeth(magneto_teeth, drive_teeth)
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
    Every meshing of the coupling at most once: shifts of the rotor −180° < shift ≤ 180°, each by the fewest teeth,
    in the order of `meshings`: by |residual|, then by teeth moved, then by teeth of the disc, then the later firing.

    Notes
    -----
    No shift goes beyond half a turn: a whole turn of the rotor would move the finger. Ranking is exact: numbers are
    taken as written (22.1 is 221/10), and a ratio within 1e-12 of a fraction with a denominator up to 24, the
    largest that cylinders/(2·poles) can have, is that fraction.

    Raises
    ------
    ValueError : a number outside the bounds above.
    """
    check_teeth(magneto_teeth_count, drive_teeth_count)
    if most < 1:
        raise ValueError(tr("the list of moves must be allowed at least 1 move, not {most}", most=most))
    check_timing(reads_btdc_deg, wanted_btdc_deg)
    ratio = exact_ratio(rotor_turns_per_crank_turn)
    reads, wanted = as_written(reads_btdc_deg), as_written(wanted_btdc_deg)
    near = (wanted - reads) * ratio / 360
    found = meshings(magneto_teeth_count, drive_teeth_count, near, most)
    return [move_to(meshing, ratio, reads, wanted) for meshing in found]


def move_to(meshing: Meshing, ratio: Fraction, reads: Fraction, wanted: Fraction) -> Move:
    """The move to a meshing, and what it does: speed ratio k [-], reading and wish [crank deg BTDC], all exact."""
    advance = 360 * meshing.shift / ratio
    return Move(
        magneto_teeth=meshing.magneto_teeth,
        disc_teeth=meshing.disc_teeth,
        rotor_shift_deg=float(360 * meshing.shift),
        crank_advance_deg=float(advance),
        result_btdc_deg=float(reads + advance),
        residual_deg=float(reads + advance - wanted),
    )


def teeth_moved(move: Move) -> int:
    """Teeth on both faces together [-]."""
    return abs(move.magneto_teeth) + abs(move.disc_teeth)


def nearest_firings(moves: Sequence[Move]) -> tuple[Move, ...]:
    """Of the planner's moves the nearest one on either side of the timing wanted, nearest first.

    One alone where the coupling reaches nothing on the other side; one that meets the timing counts as late.
    """
    late = [m for m in moves if m.residual_deg <= 0][:1]
    early = [m for m in moves if m.residual_deg > 0][:1]
    return tuple(sorted(late + early, key=lambda m: abs(m.residual_deg)))


def within_tolerance(move: Move, timing_tolerance_deg: float) -> bool:
    """Whether a move brings the firing within a tolerance [crank deg] of where it is wanted."""
    return abs(move.residual_deg) <= timing_tolerance_deg + _SLACK_DEG


def as_written(value: float) -> Fraction:
    """A number as its decimals say, exactly: 22.1 is 221/10."""
    return Fraction(str(float(value)))


def exact_ratio(rotor_turns_per_crank_turn: float | Fraction) -> Fraction:
    """The fraction that a speed ratio [-] stands for, as `plan` takes it. Raises ValueError outside 0.05…20."""
    ratio = rotor_turns_per_crank_turn
    if not 0.05 <= ratio <= 20:
        raise ValueError(
            tr(
                "the rotor turns {ratio} times per crank turn; it must be 0.05 to 20 times",
                ratio=float(ratio),
            )
        )
    if isinstance(ratio, Fraction):
        return ratio
    written = as_written(ratio)
    near = written.limit_denominator(24)
    return near if abs(near - written) <= Fraction(1, 10**12) else written


def check_timing(reads_btdc_deg: float, wanted_btdc_deg: float) -> None:
    """Raise ValueError for a reading or a wish [crank deg BTDC] beyond ±3600."""
    for words, value in (
        (marked("the reading is {value}° before top dead centre; it must lie within ±3600°"), reads_btdc_deg),
        (marked("the wanted timing is {value}° before top dead centre; it must lie within ±3600°"), wanted_btdc_deg),
    ):
        if not abs(value) <= 3600:
            raise ValueError(tr(words, value=value))


def check_teeth(magneto_teeth: int, drive_teeth: int) -> None:
    """Raise ValueError for a tooth count outside 1…MAX_TEETH."""
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


@dataclass(frozen=True)
class SpeedMismatch:
    """A speed ratio that does not suit cylinders and poles [rotor turns per crank turn]."""

    given: float
    cylinders: int
    poles: int
    needed: Fraction


def speed_mismatch(installation: Installation) -> SpeedMismatch | None:
    """The mismatch of a speed ratio that does not suit the cylinders and poles; None if it does.

    A ratio written to three decimals or more is taken for the fraction it stands for.
    """
    cylinders, poles = installation.engine.cylinders, installation.magneto.poles
    needed, given = speed_ratio(cylinders, poles), installation.rotor_turns_per_crank_turn
    if abs(given - needed) <= 0.0005:
        return None
    return SpeedMismatch(given, cylinders, poles, needed)


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
