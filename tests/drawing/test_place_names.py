"""Names round the parts, checked by another geometry: on no part, on no word, no leader over anything."""

from __future__ import annotations

from itertools import combinations

import numpy as np
import pytest
import shapely
from shapely import LineString, Polygon

from magview.drawing.breaker_end import breaker_layout
from magview.drawing.breaker_hero import Shown, breaker_scene
from magview.drawing.place_names import Placed, lines_cross, place_names
from magview.drawing.scene import Options, frame_of
from magview.physics.cam.setting import internal_timing
from magview.spec.library import find_magneto, shipped_names

MAGNETOS = [find_magneto(name) for name in shipped_names("magnetos")]
SIZES = [(504, 447), (455, 400), (900, 800)]
EM = 12.0


def measure(longer: float = 1.0):
    """About as wide as common type is; a stand-in for languages with longer words."""
    return lambda text, px, bold: longer * len(text) * px * (0.66 if bold else 0.58)


def placed(magneto, size, plate=0.0, longer=1.0, options=Options(), asked=""):  # noqa: B008
    scene = breaker_scene(Shown(magneto, 20.0, plate), options)
    frame = frame_of(scene, *size, EM)
    return frame, place_names(scene.plan, frame, size, EM, measure(longer), asked)


def box_of(place: Placed) -> Polygon:
    return shapely.box(*place.box)


def parts_px(magneto, frame, plate, rotors) -> list[tuple[str, Polygon]]:
    """What is drawn on the plate at some rotor angles, in pixels; gradients' shadows and lines are no parts."""
    wanted = {"breaker arm", "heel", "contacts", "bracket", "contact screw", "lock screw", "pivot", "clamp screw"}
    found = []
    for rotor in rotors:
        scene = breaker_scene(Shown(magneto, rotor, plate))
        for group in scene.groups:
            for piece in group.pieces:
                cam = piece.part == "cam" and piece.style.fill == "steel"
                if (piece.part in wanted and piece.closed and piece.style.fill) or cam:
                    found += [(piece.part, Polygon(frame.of(group.put(o))).buffer(0)) for o in piece.outlines]
    return found


MAY = {
    "gap": {"contacts", "bracket", "breaker arm"},
    "contact screw": {"bracket"},
    "lock screw": {"bracket"},
    "pivot": {"breaker arm"},
    "heel": {"breaker arm"},
}
"""What a part sits on, or is hidden by: its leader has to cross that."""


@pytest.mark.parametrize("longer", [1.0, 1.35])
@pytest.mark.parametrize("size", SIZES, ids=str)
@pytest.mark.parametrize("magneto", MAGNETOS, ids=lambda m: m.name)
def test_no_name_on_a_part_or_a_word_and_no_leader_over_anything(magneto, size, longer):
    top = internal_timing(magneto).first_peak_deg / magneto.cam.turns_per_rotor_turn
    for plate in (0.0, magneto.backplate.range_deg[0]):
        frame, names = placed(magneto, size, plate, longer)
        parts = parts_px(magneto, frame, plate, (0.0, top))
        compartment = breaker_layout(magneto).plate * frame.scale
        assert len(names) >= 3
        for one in names:
            box = box_of(one)
            corners = np.array(box.exterior.coords) - (frame.left, frame.top)
            assert np.hypot(*corners.T).max() <= compartment
            for part, outline in parts:
                assert not box.intersects(outline), f"{one.name.part} on {part}"
                if one.leader is None or part == one.name.part or part in MAY.get(one.name.part, ()):
                    continue
                line = LineString([one.leader[:2], one.leader[2:]])
                assert line.intersection(outline).length < 2.5, f"{one.name.part}'s leader over {part}"
        for one, other in combinations(names, 2):
            assert not box_of(one).intersects(box_of(other))
            for a, b in ((one, other), (other, one)):
                if a.leader is not None:
                    line = LineString([a.leader[:2], a.leader[2:]])
                    assert not line.intersects(box_of(b))
                    if b.leader is not None:
                        assert not line.intersects(LineString([b.leader[:2], b.leader[2:]]))


@pytest.mark.parametrize("magneto", MAGNETOS, ids=lambda m: m.name)
def test_the_gap_comes_before_all_others(magneto):
    for size in SIZES:
        _, names = placed(magneto, size)
        assert names[0].name.part == "gap"


def test_names_stay_while_the_rotor_turns_and_the_plate_hardly_does():
    magneto = MAGNETOS[0]
    plans = [
        breaker_scene(Shown(magneto, rotor, plate)).plan for rotor, plate in ((0.0, 0.0), (77.0, 0.4), (9.0, -0.9))
    ]
    assert plans[0] is plans[1] is plans[2]
    assert breaker_scene(Shown(magneto, 0.0, 3.0)).plan is not plans[0]


def test_leaders_follow_their_parts_though_the_names_stay():
    magneto = MAGNETOS[0]
    tips = [breaker_scene(Shown(magneto, 0.0, plate)).tips["contact screw"][0] for plate in (0.0, 0.5)]
    turned = np.degrees(np.arctan2(*tips[1]) - np.arctan2(*tips[0]))
    assert abs(turned) == pytest.approx(0.5, abs=1e-9)


@pytest.mark.parametrize("magneto", MAGNETOS, ids=lambda m: m.name)
def test_what_is_pointed_at_is_named_wherever_it_is_and_moves_no_other_name(magneto):
    size = (300, 280)
    _, few = placed(magneto, size)
    left_out = {name.part for name in breaker_scene(Shown(magneto)).plan.names} - {p.name.part for p in few}
    assert left_out
    for part in left_out:
        _, names = placed(magneto, size, asked=part)
        assert [p.box for p in names[:-1]] == [p.box for p in few]
        assert names[-1].name.part == part
        assert names[-1].over
        assert shapely.box(0, 0, *size).contains(box_of(names[-1]))


def test_a_name_asked_for_stands_on_no_part_where_there_is_room_beside_them():
    size = (586, 400)
    magneto = next(m for m in MAGNETOS if len(m.cam.lobe_peaks_deg) == 4)
    options = Options(hovering="contacts")
    frame, names = placed(magneto, size, options=options, asked="contacts")
    plan = breaker_scene(Shown(magneto), options).plan
    box = box_of(next(p for p in names if p.name.part == "contacts"))
    assert not [o.part for o in plan.obstacles if shapely.Polygon(frame.of(o.outline)).intersects(box)]


def test_without_names_only_what_is_pointed_at_is_named():
    magneto = MAGNETOS[0]
    for hovering, wanted in (("", ["gap"]), ("spring", ["gap", "spring"])):
        plan = breaker_scene(Shown(magneto), Options(names=False, hovering=hovering)).plan
        assert [name.part for name in plan.names] == wanted


def test_lines_that_cross():
    assert lines_cross((0, 0, 10, 10), (0, 10, 10, 0))
    assert not lines_cross((0, 0, 4, 4), (0, 10, 10, 0))
    assert not lines_cross((0, 0, 10, 0), (0, 1, 10, 1))
