"""The ways in which the coupling's disc and flanges can sit in one another, each once, by the fewest teeth moved.

Nm teeth at the magneto's flange, Nd at the drive's (guide: theory-coupling). Teeth and shifts are whole numbers and
exact fractions of a turn, so that what is equally far really ties.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from math import floor, gcd, lcm


@dataclass(frozen=True)
class Meshing:
    """One way for disc and flanges to sit in one another, by the fewest teeth moved from as found."""

    shift: Fraction
    """Lead of the rotor over as found [turn], −1/2 < shift ≤ 1/2."""
    magneto_teeth: int
    """The magneto's flange relative to the disc, positive with rotation."""
    disc_teeth: int
    """The disc relative to the drive's flange, positive with rotation."""


def meshings(magneto_teeth: int, drive_teeth: int, near: Fraction, most: int) -> list[Meshing]:
    """The ways the coupling can mesh, nearest to a shift of the rotor first.

    Parameters
    ----------
    magneto_teeth, drive_teeth : teeth of the disc's two faces [-], ≥ 1.
    near : the shift wanted [turn of the rotor], any.
    most : length of the list at most [-], ≥ 1.

    Returns
    -------
    Of the lcm(Nm, Nd) meshings, each once, those nearest to `near`: by distance, then by teeth moved |i| + |j|, then
    by teeth of the disc |j|, then the smaller shift.

    Notes
    -----
    All shifts are whole multiples of 1/lcm(Nm, Nd) of a turn, and each multiple is reached: Bézout's identity for
    Nd/gcd and Nm/gcd, which have no common factor. So the list needs no search.

    Examples
    --------
    >>> [(m.magneto_teeth, m.disc_teeth) for m in meshings(2, 3, Fraction(0), most=6)]
    [(0, 0), (-1, 1), (1, -1), (0, -1), (0, 1), (1, 0)]
    """
    unit = lcm(magneto_teeth, drive_teeth)
    lowest, highest = -((unit - 1) // 2), unit // 2  # in units of 1/lcm of a turn: each meshing once
    target = near * unit
    middle = min(max(floor(target), lowest), highest)
    found = []
    for step in range(max(lowest, middle - most), min(highest, middle + most) + 1):
        i, j = _fewest_teeth(step, magneto_teeth, drive_teeth)
        # |step − target| in whole numbers, which are quicker than fractions.
        away = abs(step * target.denominator - target.numerator)
        found.append((away, abs(i) + abs(j), abs(j), step, i, j))
    return [Meshing(Fraction(step, unit), i, j) for _, _, _, step, i, j in sorted(found)[:most]]


def _fewest_teeth(step: int, magneto_teeth: int, drive_teeth: int) -> tuple[int, int]:
    """The pair i/Nm + j/Nd = step/lcm with the fewest teeth moved, |i| < Nm, |j| < Nd, ties to the smaller |j|.

    With a = Nd/gcd and b = Nm/gcd the pairs are the solutions of i·a + j·b = step: from one to the next i grows by b
    and j falls by a. |i| + |j| is convex along them and least beside the zero of the one that changes faster.
    """
    common = gcd(magneto_teeth, drive_teeth)
    a, b = drive_teeth // common, magneto_teeth // common
    if a < b:
        first = step * pow(a, -1, b) % b
        pairs = [(i, (step - i * a) // b) for i in (first, first - b)]
    else:
        first = step * pow(b, -1, a) % a
        pairs = [((step - j * b) // a, j) for j in (first, first - a)]
    # Of two neighbours at least one lies within a whole turn of each face.
    return min(
        (pair for pair in pairs if abs(pair[0]) < magneto_teeth and abs(pair[1]) < drive_teeth),
        key=lambda pair: (abs(pair[0]) + abs(pair[1]), abs(pair[1])),
    )
