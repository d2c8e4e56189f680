"""Where parts stood before, over a scene of now."""

from __future__ import annotations

import numpy as np
import pytest

from magview.bench.actions import TurnBackplate, TurnRotor, TurnScrew
from magview.bench.apply import apply
from magview.bench.placing import new_bench
from magview.drawing.breaker_hero import Shown, breaker_scene
from magview.drawing.contacts_closeup import closeup_scene
from magview.drawing.coupling_scene import coupling_scene
from magview.drawing.ghost import HOLLOW, with_ghost
from magview.drawing.scene import Carrier
from magview.spec.library import find_installation

BENCH = new_bench(find_installation("seven-radial-left"))


def ghosts(scene):
    return {group.name.removesuffix("-before"): group for group in scene.groups if group.name.endswith("-before")}


@pytest.mark.parametrize("draw", [
    lambda state: breaker_scene(Shown.of(state)),
    lambda state: closeup_scene(Shown.of(state)),
    coupling_scene,
], ids=["breaker", "closeup", "coupling"])  # fmt: skip
def test_what_has_not_moved_has_no_ghost(draw):
    assert not ghosts(with_ghost(draw(BENCH), draw(BENCH)))


def test_the_ghost_stands_where_the_part_stood_hollow():
    before = breaker_scene(Shown.of(BENCH))
    now = breaker_scene(Shown.of(apply(BENCH, TurnScrew(25.0))))
    shown = ghosts(with_ghost(now, before))
    assert "stop" in shown and not {"cam", "bracket", "straightedge"} & set(shown), "only the screw has been turned"
    then = before.group("stop")
    for piece in shown["stop"].pieces:
        assert piece.style == HOLLOW and not piece.style.fill
        where = Carrier.of(shown["stop"].turns).put(piece.outlines[0])
        stood = [then.put(outline) for p in then.pieces for outline in p.outlines]
        assert any(np.array_equal(where, outline) for outline in stood)
        moved = [now.group("stop").put(outline) for p in now.group("stop").pieces for outline in p.outlines]
        assert not any(len(o) == len(where) and np.allclose(where, o, atol=1e-3) for o in moved)


def test_a_turned_plate_or_rotor_shows_what_it_carried():
    before = breaker_scene(Shown.of(BENCH))
    plate = ghosts(with_ghost(breaker_scene(Shown.of(apply(BENCH, TurnBackplate(3.0)))), before))
    assert {"stop", "arm"} <= set(plate) and "cam" not in plate
    rotor = ghosts(with_ghost(breaker_scene(Shown.of(apply(BENCH, TurnRotor(5.0)))), before))
    assert {"cam", "straightedge"} <= set(rotor) and "stop" not in rotor


def test_the_closeup_shows_where_the_contacts_parted():
    before = closeup_scene(Shown.of(BENCH))
    now = closeup_scene(Shown.of(apply(BENCH, TurnScrew(25.0))))
    circle = ghosts(with_ghost(now, before))["core"].pieces[0].outlines[0]
    opening = next(p for p in before.group("core").pieces if p.part == "opening circle").outlines[0]
    assert np.array_equal(circle, opening)
