"""Arrows and paint of a tooth shift: residues and mirrored bearings as a second method."""

from __future__ import annotations

from fractions import Fraction

import pytest

from magview.bench.shift_plan import ShiftPlan
from magview.drawing.shift_views import paint_bearings
from magview.job.shift_plan import plan_typed
from magview.physics.engine.coupling import plan
from magview.spec.library import find_installation, shipped_names

ROTATIONS = ("clockwise", "anticlockwise")
COUPLINGS = sorted(
    {(17, 18), (19, 20), (10, 10), (1, 2)}
    | {
        (of.coupling.magneto_teeth, of.coupling.drive_teeth)
        for of in map(find_installation, shipped_names("installations"))
        if of.coupling is not None
    }
)


def moves(magneto: int, drive: int, rotation) -> list[ShiftPlan]:
    """Plans of all meshings of a coupling."""
    found = plan(magneto, drive, Fraction(1), 0.0, 27.0, most=400)
    return [plan_typed(magneto, drive, Fraction(1), 0.0, 27.0, move, rotation=rotation) for move in found]


@pytest.mark.parametrize("rotation", ROTATIONS)
@pytest.mark.parametrize(("magneto", "drive"), COUPLINGS)
def test_opposite_moves_never_get_equal_arrows(magneto, drive, rotation):
    """Seen from the engine a magneto turns as its drive end does in a mirror (plain geometry)."""
    mirrored = -1 if rotation == "clockwise" else 1
    plans = moves(magneto, drive, rotation)
    assert plans
    for of in plans:
        a, b = of.move.disc_teeth, of.move.magneto_teeth
        for teeth in (a, b):
            way = (teeth > 0) - (teeth < 0)
            assert of.clockwise(teeth, "engine") == way * mirrored == -of.clockwise(teeth, "drive end")
        if a * b < 0:
            assert {of.sign(a, "engine"), of.sign(b, "engine")} == {"↻", "↺"}
        if a * b > 0:
            assert of.sign(a, "engine") == of.sign(b, "engine")


@pytest.mark.parametrize("rotation", ROTATIONS)
@pytest.mark.parametrize(("magneto", "drive"), COUPLINGS)
def test_the_paint_ends_where_residues_say(magneto, drive, rotation):
    """Counted in steps of 1/(Nm·Nd) of a turn, whole numbers modulo a turn."""
    turn = magneto * drive
    for of in moves(magneto, drive, rotation):
        shift = (of.move.disc_teeth * magneto + of.move.magneto_teeth * drive) % turn
        for viewpoint in ("engine", "drive end"):
            at, sense = paint_bearings(of, viewpoint), of.clockwise(1, viewpoint)
            steps = round(sense * (at.flange_wanted - at.flange_found) * turn / 360.0) % turn
            assert steps == shift
        one, other = paint_bearings(of, "engine"), paint_bearings(of, "drive end")
        assert (one.disc_wanted, one.flange_wanted) == (-other.disc_wanted, -other.flange_wanted)


def test_without_a_rotation_there_is_no_arrow():
    of = moves(17, 18, None)[0]
    assert {of.sign(teeth, seen) for teeth in (3, -3, 0) for seen in ("engine", "drive end")} == {""}
