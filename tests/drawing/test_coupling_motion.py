"""How a move is shown being made, and its arrows, against the coupling's own arithmetic."""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise, product

import numpy as np
import pytest

from magview.bench.actions import MoveTeeth
from magview.bench.apply import apply
from magview.bench.placing import new_bench
from magview.bench.timing import timing_plan
from magview.drawing.coupling_motion import MOST_MS, TOOTH_MS, TeethMotion
from magview.drawing.coupling_scene import after_move, coupling_scene
from magview.drawing.drive_end import drive_pose
from magview.physics.engine.coupling import Move
from magview.spec.engine import Coupling
from magview.spec.library import find_installation, shipped_names

TEETH = sorted({(c.magneto_teeth, c.drive_teeth) for c in (
    find_installation(name).coupling for name in shipped_names("installations")
)} | {(19, 20), (16, 20), (18, 23), (11, 11)})  # fmt: skip
WAYS = ("clockwise", "anticlockwise")


def bench(teeth: tuple[int, int], rotation: str):
    found = find_installation("seven-radial-left")
    magneto = found.magneto.model_copy(update={"rotation": rotation})
    coupling = Coupling(magneto_teeth=teeth[0], drive_teeth=teeth[1])
    return new_bench(found.model_copy(update={"magneto": magneto, "coupling": coupling}))


def motion_of(state, i: int, j: int) -> TeethMotion:
    moved = apply(state, MoveTeeth(i, j))
    coupling = state.engaged.installation.coupling
    return TeethMotion(coupling, drive_pose(state, state.engaged), drive_pose(moved, moved.engaged))


@pytest.mark.parametrize("rotation", WAYS)
@pytest.mark.parametrize("teeth", TEETH)
def test_first_the_disc_with_its_flange_then_the_flange_alone(teeth, rotation):
    state = bench(teeth, rotation)
    sense = 1 if rotation == "clockwise" else -1
    for i, j in ((0, 3), (2, 0), (3, -2), (-1, 1)):
        motion = motion_of(state, i, j)
        assert motion.spans_ms == pytest.approx((abs(j) * TOOTH_MS, abs(i) * TOOTH_MS))
        start = motion.at(0.0)
        between = motion.at(motion.spans_ms[0])
        # A: the disc goes j of the drive's teeth, and its flange with it.
        assert between.disc - start.disc == pytest.approx(sense * j * 360.0 / teeth[1])
        assert between.hub - between.disc == pytest.approx(start.hub - start.disc)
        # B: the flange goes i of the magneto's teeth, and the disc no more.
        end = motion.at(motion.total_ms)
        assert end.disc == pytest.approx(between.disc)
        assert end.hub - between.hub == pytest.approx(sense * i * 360.0 / teeth[0])
        assert end.flange == start.flange == pytest.approx(motion.end.flange)
        assert (end.disc, end.hub) == pytest.approx((motion.end.disc, motion.end.hub))


def test_each_tooth_rests_before_the_next_and_none_goes_back():
    motion = motion_of(bench((17, 18), "clockwise"), 2, 3)
    discs = [motion.at(ms).disc for ms in np.arange(0.0, motion.total_ms + 1.0, 25.0)]
    assert all(b >= a - 1e-9 for a, b in pairwise(discs))
    for tooth in range(4):
        assert motion.at(tooth * TOOTH_MS).disc - discs[0] == pytest.approx(tooth * 20.0)
        just_before, just_after = (motion.at(tooth * TOOTH_MS + ms).disc for ms in (-10.0, 10.0))
        assert abs(just_after - just_before) < 0.3


def test_many_teeth_take_no_longer_than_a_person_waits():
    assert motion_of(bench((17, 18), "clockwise"), 0, 16).spans_ms == (MOST_MS, 0.0)


def arrows(state, i: int, j: int, at_engine: bool) -> list[np.ndarray]:
    """Every line and head of the counts of a move."""
    move = Move(i, j, 0.0, 0.0, 20.0, 0.0)
    groups = [g for g in coupling_scene(state, move=move, at_engine=at_engine).groups if g.name == "counts"]
    return [outline for g in groups for piece in g.pieces for outline in piece.outlines]


PAIRS = [(i, j) for i, j in product(range(-3, 4), repeat=2) if (i, j) > (0, 0)]


@pytest.mark.parametrize("at_engine", [False, True])
@pytest.mark.parametrize("rotation", WAYS)
@pytest.mark.parametrize("teeth", TEETH)
def test_opposite_moves_never_have_equal_arrows(teeth, rotation, at_engine):
    """Also half a turn on, where both end at the same place, and from teeth that were moved before."""
    half = (teeth[0] // 2, 0), (0, teeth[1] // 2)
    for state in (bench(teeth, rotation), apply(bench(teeth, rotation), MoveTeeth(1, -2))):
        for i, j in (*PAIRS[::4], *half):
            one, other = arrows(state, i, j, at_engine), arrows(state, -i, -j, at_engine)
            alike = len(one) == len(other) and all(
                a.shape == b.shape and np.allclose(a, b) for a, b in zip(one, other, strict=True)
            )
            assert one or other
            assert not alike, (i, j)


@pytest.mark.parametrize("rotation", WAYS)
def test_parts_being_moved_are_drawn_where_they_are_seen_and_the_arrows_stay(rotation):
    state = bench((17, 18), rotation)
    move = timing_plan(state, "left")[3]
    motion = TeethMotion(
        state.engaged.installation.coupling, drive_pose(state, state.engaged), after_move(state, state.engaged, move)
    )
    still = coupling_scene(state, move=move)
    seen = motion.at(0.4 * motion.total_ms)
    moving = coupling_scene(state, move=move, seen=seen)
    turned = {g.name: g.turns[0].bearing_deg for g in moving.groups if g.name in ("drive flange", "disc")}
    assert turned == pytest.approx({"drive flange": seen.flange, "disc": seen.disc})
    hub = next(g for g in moving.groups if g.name == "magneto flange")
    assert hub.turns[0].bearing_deg == pytest.approx(seen.hub)
    for one, other in zip(still.group("counts").pieces, moving.group("counts").pieces, strict=True):
        assert all(np.allclose(a, b) for a, b in zip(one.outlines, other.outlines, strict=True))


def test_a_move_broken_off_goes_on_from_where_it_is():
    motion = motion_of(bench((17, 18), "clockwise"), 0, 2)
    half_way = motion.at(0.3 * motion.total_ms)
    on = replace(motion, start=half_way)
    assert on.at(0.0).disc == pytest.approx(half_way.disc)
    assert on.at(on.total_ms).disc == pytest.approx(motion.end.disc)
    assert on.total_ms <= motion.total_ms
