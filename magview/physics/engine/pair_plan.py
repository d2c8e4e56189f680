"""Teeth moved at both magnetos of an engine, so that each fires where it should and both fire together."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from math import floor, lcm

from magview.physics.engine.coupling import Move, as_written, check_teeth, check_timing, exact_ratio, move_to
from magview.physics.engine.meshing import Meshing, meshings
from magview.spec.language import tr


@dataclass(frozen=True)
class PairReading:
    """One magneto's coupling, where its lamp says that it fires, and where it should."""

    magneto_teeth: int
    drive_teeth: int
    rotor_turns_per_crank_turn: float | Fraction
    reads_btdc_deg: float
    wanted_btdc_deg: float


@dataclass(frozen=True)
class PairPlan:
    """A move for each of two magnetos."""

    left: Move
    right: Move
    difference_deg: float
    """Left residual less right residual [crank deg]: 0 when a wanted stagger is kept."""


Option = tuple[Fraction, Meshing]
"""A meshing, and how early it leaves the magneto [crank deg]."""


def plan_pair(
    left: PairReading, right: PairReading, timing_tolerance_deg: float, synchronising_tolerance_deg: float
) -> PairPlan | None:
    """The best pair of moves with which both magnetos are within both tolerances; None where there is none.

    Parameters
    ----------
    left, right : readings as `coupling.plan` takes them.
    timing_tolerance_deg : allowed error of each [crank deg], > 0.
    synchronising_tolerance_deg : allowed difference of the two errors [crank deg], > 0.

    Returns
    -------
    The pair that uses the smallest share of any of its three tolerances (each magneto's error, and their difference),
    then the one with the fewest teeth moved. A magneto that reads within its tolerance stays as it is where moving
    the other alone, or neither, puts both right.

    Notes
    -----
    The search is exact: numbers are taken as written, each magneto's moves in the order of their error, and every
    pair is looked at until an error alone uses a larger share than the best pair found.

    Raises
    ------
    ValueError : a number that `coupling.plan` refuses, or a tolerance that is not above 0.

    Examples
    --------
    Ten teeth on each face: steps of 36°. Both read 35° late, so a tooth each leaves both 1° early.

    >>> late = PairReading(10, 10, 1.0, -10.0, 25.0)
    >>> both = plan_pair(late, late, 2.0, 1.0)
    >>> both.left.magneto_teeth, both.right.magneto_teeth, both.left.residual_deg, both.difference_deg
    (1, 1, 1.0, 0.0)
    """
    for tolerance in (timing_tolerance_deg, synchronising_tolerance_deg):
        if not 0 < tolerance <= 360:
            raise ValueError(
                tr(
                    "the tolerance is {tolerance}° of crank; it must be above 0° and at most 360°",
                    tolerance=tolerance,
                )
            )
    timing, together = as_written(timing_tolerance_deg), as_written(synchronising_tolerance_deg)
    lefts, rights = _options(left, timing), _options(right, timing)
    stays = [[option for option in options if option[1].shift == 0] for options in (lefts, rights)]
    tries = (((stays[0], stays[1]),), ((stays[0], rights), (lefts, stays[1])), ((lefts, rights),))
    for sides in tries:
        found = [best for one, other in sides if (best := _best(one, other, timing, together)) is not None]
        if found:
            _, _, (left_off, left_to), (right_off, right_to) = min(found, key=lambda best: best[:2])
            return PairPlan(_move(left, left_to), _move(right, right_to), float(left_off - right_off))
    return None


def _options(reading: PairReading, tolerance: Fraction) -> list[Option]:
    """Every meshing that leaves a magneto within a tolerance [crank deg], by the size of its error."""
    check_teeth(reading.magneto_teeth, reading.drive_teeth)
    check_timing(reading.reads_btdc_deg, reading.wanted_btdc_deg)
    ratio = exact_ratio(reading.rotor_turns_per_crank_turn)
    change = as_written(reading.wanted_btdc_deg) - as_written(reading.reads_btdc_deg)
    steps = 2 * tolerance * ratio / 360 * lcm(reading.magneto_teeth, reading.drive_teeth)
    near = meshings(reading.magneto_teeth, reading.drive_teeth, change * ratio / 360, floor(steps) + 2)
    errors = [(360 * meshing.shift / ratio - change, meshing) for meshing in near]
    return [(error, meshing) for error, meshing in errors if abs(error) <= tolerance]


def _best(
    lefts: list[Option], rights: list[Option], timing: Fraction, together: Fraction
) -> tuple[Fraction, int, Option, Option] | None:
    """The pair within all tolerances with the smallest share of any, then the fewest teeth: share, teeth, pair."""
    best: tuple[Fraction, int, Option, Option] | None = None
    for left in lefts:
        alone = abs(left[0]) / timing
        if best is not None and alone > best[0]:
            break
        for right in rights:
            share = max(alone, abs(right[0]) / timing)
            if best is not None and share > best[0]:
                break
            share = max(share, abs(left[0] - right[0]) / together)
            teeth = sum(abs(n) for _, at in (left, right) for n in (at.magneto_teeth, at.disc_teeth))
            if share <= 1 and (best is None or (share, teeth) < best[:2]):
                best = share, teeth, left, right
    return best


def _move(reading: PairReading, meshing: Meshing) -> Move:
    ratio = exact_ratio(reading.rotor_turns_per_crank_turn)
    return move_to(meshing, ratio, as_written(reading.reads_btdc_deg), as_written(reading.wanted_btdc_deg))
