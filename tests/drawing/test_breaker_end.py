"""The drawing against independent geometry: what is drawn touches where the mechanism touches."""

from __future__ import annotations

import numpy as np
import pytest
import shapely

from magview.bench.actions import TurnBackplate, TurnRotor, TurnScrew
from magview.bench.apply import apply
from magview.bench.placing import new_bench
from magview.bench.state import BenchState
from magview.drawing.breaker_end import PARENTS, breaker_end, pose
from magview.drawing.shapes import arc_slot, polar, rotate, wrap
from magview.physics.cam.breaker import linkage
from magview.spec.library import find_magneto, shipped_names

MAGNETOS = [find_magneto(name) for name in shipped_names("magnetos")]


def drawn(state: BenchState, part: str, material: str) -> np.ndarray:
    """The outline of a part where the picture puts it."""
    drawing, now = breaker_end(state.magneto), pose(state)
    shape = next(s for s in drawing.shapes if s.part == part and s.material == material)
    points = rotate(shape.outlines[0], now.turns_deg[shape.group], drawing.origins[shape.group])
    parent = PARENTS[shape.group]
    return points if parent is None else rotate(points, now.turns_deg[parent], drawing.origins[parent])


@pytest.mark.parametrize("magneto", MAGNETOS, ids=lambda m: m.name)
def test_the_drawn_heel_rides_the_drawn_cam_while_the_contacts_are_open(magneto):
    state = apply(apply(new_bench(magneto), TurnBackplate(1.3)), TurnScrew(-3.0))
    touching = clear = 0
    for rotor in np.linspace(0.0, 360.0 / magneto.cam.turns_per_rotor_turn, 90):
        state = apply(state, TurnRotor(float(rotor)))
        cam = shapely.Polygon(drawn(state, "cam", "cam"))
        heel_outline = drawn(state, "heel", "fibre")
        # The heel's rounded end, from the linkage's own triangle, not from the picture's code.
        apart = cam.distance(shapely.Polygon(heel_outline))
        overlap = cam.intersection(shapely.Polygon(heel_outline)).area
        assert overlap < 2e-3, "heel drawn into the cam"  # the drawn circle is a 48-sided polygon
        if pose(state).gap_mm > 0:
            touching += 1
            assert apart < 5e-3
        else:
            clear += 1
    assert touching > 5
    assert clear > 5


@pytest.mark.parametrize("magneto", MAGNETOS, ids=lambda m: m.name)
def test_the_drawn_lobe_meets_the_heel_at_the_top_of_the_lobe(magneto):
    from magview.physics.cam.setting import internal_timing

    timing, arms = internal_timing(magneto), linkage(magneto.cam.profile, magneto.breaker)
    state = apply(new_bench(magneto), TurnRotor(timing.first_peak_deg / timing.ratio))
    state = apply(state, TurnBackplate(0.0))
    mark = drawn(state, "cam", "mark").mean(axis=0)
    heel = drawn(state, "heel", "fibre")
    near = heel[np.argmin(np.hypot(*(heel - mark).T))]
    angle = abs(np.degrees(np.arctan2(*mark) - np.arctan2(*near)) + 180) % 360 - 180
    assert abs(angle) < np.degrees(np.arcsin(arms.heel_radius_mm / np.hypot(*near)))


@pytest.mark.parametrize("magneto", MAGNETOS, ids=lambda m: m.name)
def test_pieces_that_must_not_touch_do_not(magneto):
    """Over all plate and screw positions: bracket and clamps off the cam, all on the plate, clamps in their slots."""
    for plate in magneto.backplate.range_deg:
        for screw in magneto.contact_screw.range_deg:
            state = apply(apply(new_bench(magneto), TurnBackplate(plate)), TurnScrew(screw))
            cam = shapely.Point(0, 0).buffer(np.hypot(*drawn(state, "cam", "cam").T).max())
            bracket = shapely.Polygon(drawn(state, "contacts", "bracket"))
            assert bracket.distance(cam) > 0.2
            whole = shapely.Polygon(drawn(state, "backplate", "plate")).buffer(0.01)
            assert whole.contains(bracket)


@pytest.mark.parametrize("magneto", MAGNETOS, ids=lambda m: m.name)
def test_clamp_screws_stand_in_their_slots_at_both_ends(magneto):
    drawing = breaker_end(magneto)
    plate = next(s for s in drawing.shapes if s.part == "backplate" and s.filled)
    for end in magneto.backplate.range_deg:
        state = apply(new_bench(magneto), TurnBackplate(end))
        turn = pose(state).turns_deg["plate"]
        slots = [shapely.Polygon(rotate(o, turn)) for o in plate.outlines[2:]]
        screws = [s for s in drawing.shapes if s.part == "clamp screw" and s.material == "screw"]
        for slot, screw in zip(slots, screws, strict=True):
            assert slot.contains(shapely.Point(screw.outlines[0].mean(axis=0)))


@pytest.mark.parametrize("name", shipped_names("magnetos"))
def test_rotation_is_mirrored_between_the_ends(name):
    """Clockwise from the drive end is anticlockwise from the breaker end (common practice)."""
    magneto = find_magneto(name)
    state = apply(new_bench(magneto), TurnRotor(10.0))
    assert (pose(state).turns_deg["rotor"] > 0) == (magneto.rotation == "anticlockwise")


def test_outlines():
    assert polar(2.0, 90.0) == pytest.approx([2.0, 0.0])
    assert rotate(polar(1.0, 0.0), 90.0) == pytest.approx([1.0, 0.0])
    hull = shapely.Polygon(wrap([((0, 0), 1.0), ((5, 0), 1.0)]))
    assert hull.area == pytest.approx(10 + np.pi, rel=5e-3)
    slot = shapely.Polygon(arc_slot(10.0, -6.0, 6.0, 1.0))
    assert slot.is_valid
    assert slot.area == pytest.approx(20 * np.radians(12.0) + np.pi, rel=5e-3)


def test_wear_takes_the_heel_and_nothing_else():
    """The worn heel is drawn within the one as new; a pip is too small to be drawn."""
    magneto = find_magneto("seven-radial")

    def drawn(**condition):
        changed = magneto.condition.model_copy(update=condition)
        return breaker_end(magneto.model_copy(update={"condition": changed})).shapes

    new, worn, pipped = drawn(), drawn(heel_wear_mm=0.6), drawn(pip_height_mm=0.2)
    assert [s.part for s in worn] == [s.part for s in new]
    changed = [(a, b) for a, b in zip(new, worn, strict=True) if a is not b]
    assert {a.part for a, _ in changed} == {"heel"}
    for before, after in changed:
        whole, rest = (shapely.Polygon(s.outlines[0]) for s in (before, after))
        assert rest.area < whole.area and rest.difference(whole.buffer(0.05)).area < 1e-6
    for before, after in zip(new, pipped, strict=True):
        assert all(np.array_equal(a, b) for a, b in zip(before.outlines, after.outlines, strict=True))
