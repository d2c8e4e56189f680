"""The breaker end's scene, measured: what is drawn stands where the numbers say, for every magneto over a turn."""

from __future__ import annotations

import itertools
import math
from dataclasses import replace

import numpy as np
import pytest
import shapely

from magview.bench.placing import new_bench
from magview.drawing.breaker_end import breaker_layout
from magview.drawing.breaker_glass import EDGE_HEIGHT_MM
from magview.drawing.breaker_hero import Shown, breaker_scene
from magview.drawing.scene import Options, Scene, frame_of, glass_radius, hand_at, pieces_of
from magview.physics.cam.setting import InternalTiming, internal_timing
from magview.spec.library import find_installation, find_magneto, shipped_names

MAGNETOS = [find_magneto(name) for name in shipped_names("magnetos")]
SIZES = [(504, 447), (455, 400), (900, 800)]


def of_each(function):
    return pytest.mark.parametrize("magneto", MAGNETOS, ids=lambda m: m.name)(function)


def over_a_turn(magneto, steps: int = 37) -> np.ndarray:
    return np.linspace(0.0, 360.0 / magneto.cam.turns_per_rotor_turn, steps)


def rotor_way(magneto) -> int:
    """The breaker end sees the mirror image of what the file gives, which is as seen from the drive end."""
    return 1 if magneto.rotation == "anticlockwise" else -1


def cam_way(magneto) -> int:
    """Cam, plate and marks: a pair of outer gears between rotor and cam turns it the other way (common practice)."""
    return -rotor_way(magneto) if magneto.name.startswith("Nine") else rotor_way(magneto)


def bearing(point) -> float:
    return math.degrees(math.atan2(point[0], point[1])) % 360.0


def apart(a: float, b: float) -> float:
    return (a - b + 180.0) % 360.0 - 180.0


def drawn(scene: Scene, part: str, group: str, filled: str) -> list[np.ndarray]:
    """Outlines of a part in a group, of one fill, where the picture has them."""
    return [
        g.put(outline)
        for g, piece in pieces_of(scene, part)
        if g.name == group and piece.style.fill == filled
        for outline in piece.outlines
    ]


def edge_bearing(scene: Scene) -> float:
    """Bearing of the sight edge's reading end: the line of the straightedge, its end at the rim."""
    (line,) = (
        g.put(piece.outlines[0])
        for g, piece in pieces_of(scene, "straightedge")
        if g.name == "straightedge" and piece.style.line == "ink"
    )
    return bearing(line[np.argmax(np.hypot(*line.T))])


def mark_bearings(scene: Scene) -> list[float]:
    return [bearing(piece.outlines[0][0]) for g, piece in pieces_of(scene, "rim mark") if g.name == "case"]


@of_each
def test_the_gap_drawn_is_the_gap_computed(magneto):
    timing = internal_timing(magneto)
    arm = magneto.breaker.contact_arm_mm
    for rotor in over_a_turn(magneto):
        scene = breaker_scene(Shown(magneto, float(rotor), 1.0, -5.0))
        (fixed,) = drawn(scene, "contacts", "stop", "contact")
        (moving,) = drawn(scene, "contacts", "arm", "contact")
        # A block's corners: the fixed one's face is its outer edge, the moving one's its inner edge.
        gap = math.dist(fixed[2:].mean(axis=0), moving[:2].mean(axis=0))
        computed = float(timing.gap_mm(float(rotor), 1.0, -5.0))
        assert gap == pytest.approx(2 * arm * math.sin(computed / (2 * arm)), abs=1e-9)


@of_each
def test_ring_cam_plate_and_screw_turn_by_what_the_state_says(magneto):
    sense, ratio = cam_way(magneto), magneto.cam.turns_per_rotor_turn
    head = 1 if magneto.contact_screw.positive_is_clockwise else -1
    still = breaker_scene(Shown(magneto))
    for rotor, plate, screw in ((17.0, 0.0, 0.0), (123.0, 2.0, -9.0), (290.0, -3.0, 25.0)):
        scene = breaker_scene(Shown(magneto, rotor, plate, screw))
        turns = {"rotor": rotor_way(magneto) * rotor, "cam": sense * ratio * rotor, "plate": sense * plate}
        for group, degrees in turns.items():
            before, after = (s.group(group).put(s.group(group).pieces[-1].outlines[0])[1] for s in (still, scene))
            assert apart(bearing(after), bearing(before) + degrees) == pytest.approx(0.0, abs=1e-9)
        slot, slot_before = (s.group("contact screw") for s in (scene, still))
        across = [np.diff(g.put(g.pieces[0].outlines[0])[1:3], axis=0)[0] for g in (slot, slot_before)]
        turned = apart(bearing(across[0]), bearing(across[1]))
        assert turned == pytest.approx(head * screw + sense * plate, abs=1e-9)


@of_each
def test_each_lobe_has_a_mark_at_its_own_place_as_wide_as_its_tolerance(magneto):
    scene = breaker_scene(Shown(magneto))
    marks, sense = mark_bearings(scene), cam_way(magneto)
    lobes = len(magneto.cam.lobe_peaks_deg)
    assert len(marks) == lobes
    # Uneven lobes have uneven marks: each as far on as its lobe fires after the first.
    peaks = magneto.cam.lobe_peaks_deg if magneto.compensated else [i * 360.0 / lobes for i in range(lobes)]
    for mark, peak in zip(marks, peaks, strict=True):
        assert apart(mark, marks[0] + sense * peak) == pytest.approx(0.0, abs=1e-6)
    bands = [piece.outlines[0] for _, piece in pieces_of(scene, "tolerance")]
    assert len(bands) == lobes
    half = math.degrees(math.atan(magneto.marks.tolerance_mm / magneto.marks.radius_mm))
    for band, mark in zip(bands, marks, strict=False):
        wide = [apart(bearing(p), mark) for p in band]
        assert (min(wide), max(wide)) == pytest.approx((-half, half), abs=1e-9)


def test_the_marks_of_the_compensated_cam_are_not_evenly_spaced():
    marks = mark_bearings(breaker_scene(Shown(find_magneto("nine-radial"))))
    steps = [abs(apart(b, a)) for a, b in itertools.pairwise(marks)]
    assert max(steps) - min(steps) > 3.0


@of_each
def test_the_straightedge_is_at_its_mark_exactly_at_the_e_gap(magneto):
    scene = breaker_scene(Shown(magneto, magneto.e_gap_deg))
    assert apart(edge_bearing(scene), mark_bearings(scene)[0]) == pytest.approx(0.0, abs=1e-9)
    late = breaker_scene(Shown(magneto, magneto.e_gap_deg + 2.0))
    past = cam_way(magneto) * apart(edge_bearing(late), mark_bearings(late)[0])
    assert past == pytest.approx(2.0 * magneto.cam.turns_per_rotor_turn, abs=1e-9)


@of_each
def test_the_bar_lies_against_the_face_of_the_raised_half(magneto):
    """The raised half lies from the step on with rotation; the bar is on the other side of its own sight edge."""
    for rotor in (0.0, 47.0, 200.0):
        scene = breaker_scene(Shown(magneto, rotor))
        (raised,) = drawn(scene, "step", "cam", "steel_low")
        (bar,) = drawn(scene, "straightedge", "straightedge", "steel_high")
        edge, sense = edge_bearing(scene), cam_way(magneto)
        for point in raised[1:-1]:
            assert 0.0 < sense * apart(bearing(point), edge) < 180.0
        assert sense * apart(bearing(bar.mean(axis=0) + bar[0]), edge) < 0.0
        half = shapely.Polygon(raised)
        assert half.intersection(shapely.Polygon(bar)).area < 1e-6 * half.area


@of_each
def test_rotor_and_shoes_lie_in_a_band_round_the_compartment(magneto):
    scene, poles = breaker_scene(Shown(magneto)), magneto.poles
    rim = max(float(np.hypot(*piece.outlines[0].T).max()) for _, piece in pieces_of(scene, "rim") if _.name == "case")
    ring = np.concatenate([piece.outlines[0] for _, piece in pieces_of(scene, "rotor")][:poles])
    shoes = [piece.outlines[0] for _, piece in pieces_of(scene, "pole shoe")]
    radii = np.hypot(*ring.T) / rim
    assert (radii.min(), radii.max()) == pytest.approx((1.025, 1.105))
    radii = np.hypot(*np.concatenate(shoes).T) / rim
    assert (radii.min(), radii.max()) == pytest.approx((1.125, 1.195))
    # At full register a pole is under a shoe: half a pitch from where it stands at neutral.
    middles = [bearing(shoe[: len(shoe) // 2].mean(axis=0)) for shoe in shoes]
    assert sorted(middles) == pytest.approx(sorted((180.0 + 360.0 * i) / poles for i in range(poles)), abs=1e-6)


@pytest.mark.parametrize("size", SIZES)
@of_each
def test_sizes_on_screen(magneto, size):
    """The compartment fills the picture's height, the cam can be seen, hands are no smaller than a finger needs."""
    scene = breaker_scene(Shown(magneto))
    frame = frame_of(scene, *size, 12.0)
    layout = breaker_layout(magneto)
    assert 2 * layout.rim_outer * frame.scale >= 0.82 * size[1]
    if size != (455, 400):
        assert layout.lobe_top * frame.scale >= 43.0
    for hand in scene.hands:
        middle = (hand.outline.min(axis=0) + hand.outline.max(axis=0)) / 2
        for off in (-11.9, 11.9) if hand.part == "contact screw" else ():
            found = hand_at(scene, (middle[0] + off / frame.scale, middle[1]), frame.scale)
            assert found is not None
            assert found.part == hand.part
    (glass,) = scene.glasses
    radius = glass_radius(glass, *size)
    away = math.dist((size[0] - radius - 10, size[1] - radius - 10), (frame.left, frame.top))
    assert away > radius + 1.195 * layout.rim_outer * frame.scale


@of_each
def test_hands_take_hold_of_what_is_drawn_and_turn_it_the_way_they_go(magneto):
    scene = breaker_scene(Shown(magneto, 20.0, 1.0, 5.0))
    sense = cam_way(magneto)
    ring, slot = (
        scene.group(name).put(scene.group(name).pieces[0].outlines[0]) for name in ("rotor", "contact screw")
    )
    for part, at, value in (
        ("rotor", ring[[len(ring) // 4, 3 * len(ring) // 4]].mean(axis=0), "rotor_deg"),
        ("cam", (0.0, 0.3), "rotor_deg"),
        ("contact screw", slot.mean(axis=0), "screw_deg"),
    ):
        hand = hand_at(scene, (float(at[0]), float(at[1])), 5.0)
        assert hand is not None
        assert (hand.part, hand.value) == (part, value)
    by_part = {hand.part: hand for hand in scene.hands}
    assert by_part["rotor"].per_bearing == rotor_way(magneto)
    assert by_part["cam"].per_bearing == pytest.approx(sense / magneto.cam.turns_per_rotor_turn)
    assert by_part["backplate"].per_bearing == sense
    assert hand_at(scene, (1e3, 1e3), 5.0) is None


# ---------------------------------------------------------------------- what is read


@of_each
def test_the_edge_is_read_in_millimetres_near_its_mark_and_in_degrees_further_off(magneto):
    c, radius = magneto.cam.turns_per_rotor_turn, magneto.marks.radius_mm

    def read(past_cam_deg: float) -> str:
        scene = breaker_scene(Shown(magneto, magneto.e_gap_deg + past_cam_deg / c))
        return next(w for w in scene.corners if w.corner == "bottom-left").lines[-1].wordings[0]

    for degrees in (0.7, -1.1):
        mm = abs(radius * math.tan(math.radians(degrees)))
        assert read(degrees) == f"edge {mm:.2f} mm {'past' if degrees > 0 else 'short of'} mark 1"
    at_opening = breaker_scene(Shown(magneto, float(InternalTiming(magneto).readings(0.0, 0.0).opens_deg[0])))
    told = next(w for w in at_opening.corners if w.corner == "bottom-left").lines[0].wordings
    assert told == ("contacts just touching", "just touching")
    for nothing in (0.0, 0.002, -0.002):
        assert read(nothing) == "edge at mark 1"
    beyond = math.degrees(math.atan(3.0 / radius)) + 0.5
    assert read(beyond) == f"edge {beyond:.1f}° past mark 1"


@of_each
def test_an_eye_ahead_of_the_edge_sees_it_short(magneto):
    """reading = true + height · tan(eye), the eye's angle positive from behind; the glass shows what is seen."""

    def seen(eye: float) -> tuple[float, list[float]]:
        scene = breaker_scene(Shown(magneto, magneto.e_gap_deg), Options(eye_deg=eye)).glasses[0].scene
        lines = [piece for _, piece in pieces_of(scene, "straightedge") if piece.style.line and not piece.closed]
        at = {piece.style.line: piece.outlines[0][0][0] * cam_way(magneto) for piece in lines}
        return at["ink"], [at[role] for role in at if role != "ink"]

    square, foot = seen(0.0)
    assert square == pytest.approx(0.0, abs=1e-9)
    assert foot == []
    for eye in (-12.0, 9.0):
        edge, foot = seen(eye)
        assert edge == pytest.approx(EDGE_HEIGHT_MM * math.tan(math.radians(eye)))
        assert foot == pytest.approx([0.0], abs=1e-9)
    assert seen(-12.0)[0] < 0.0


@of_each
@pytest.mark.parametrize("mirrored", [False, True])
def test_the_glass_shows_the_edge_on_the_side_where_the_picture_has_it(magneto, mirrored):
    """The picture turned until its mark points up is the glass: edge, bar and number on the same sides."""
    radius, ratio = magneto.marks.radius_mm, magneto.cam.turns_per_rotor_turn
    for mm, eye in ((-0.4, 0.0), (0.25, 0.0), (2.9, 0.0), (-2.9, 0.0), (0.3, -6.0), (-0.2, 8.0)):
        rotor = magneto.e_gap_deg + math.degrees(math.atan(mm / radius)) / ratio
        scene = breaker_scene(Shown(magneto, rotor), Options(eye_deg=eye, mirrored=mirrored))
        (bar,) = drawn(scene, "straightedge", "straightedge", "steel_high")
        (number,) = (word for word in scene.words if word.disc)
        (mark,) = (m for m in mark_bearings(scene) if abs(apart(bearing(number.at), m)) < 10.0)
        up = math.radians(mark)
        turned = np.array([(math.cos(up), -math.sin(up)), (math.sin(up), math.cos(up))])
        edge, back = bar[:2] @ turned.T, bar[2:] @ turned.T
        at_rim = np.interp(radius, edge[::-1, 1], edge[::-1, 0])
        glass = scene.glasses[0].scene
        half = scene.glasses[0].half_mm
        seen = [p for _, p in pieces_of(glass, "straightedge") if p.style.line == "ink" and not p.closed]
        if abs(at_rim) < 1.1 * half:
            assert seen[0].outlines[0][0][0] == pytest.approx(at_rim, abs=0.02)
            (small,) = (p for _, p in pieces_of(glass, "straightedge") if p.style.fill == "steel_high")
            side = small.outlines[0][:, 0].mean() - seen[0].outlines[0][0][0]
            assert np.sign(side) == np.sign(back[:, 0].mean() - edge[:, 0].mean())
        else:
            (arrow,) = (p for _, p in pieces_of(glass, "straightedge") if p.style.fill == "ink")
            assert np.sign(arrow.outlines[0][:, 0].mean()) == np.sign(at_rim)
        (told,) = (word for word in glass.words if word.disc)
        assert told.text == number.text
        assert np.sign(told.at[0]) == np.sign((turned @ np.array(number.at))[0]), "its number stands before the mark"
        past = "past" if mm > 0 else "short of"
        told_so = next(w for w in scene.corners if w.corner == "bottom-left").lines[-1].wordings[0]
        assert told_so == f"edge {abs(mm):.2f} mm {past} mark {number.text}"


@of_each
def test_the_whole_bar_is_drawn_where_the_eye_sees_it(magneto):
    """Moved sideways by height · tan(eye), parallel to itself; its own mark stays where it is."""
    for rotor, eye in ((0.0, 20.0), (130.0, -31.0)):
        square, beside = (breaker_scene(Shown(magneto, rotor), Options(eye_deg=e)) for e in (0.0, eye))
        (bar,), (seen,) = (drawn(s, "straightedge", "straightedge", "steel_high") for s in (square, beside))
        edge, with_rotation = bar[0] - bar[1], cam_way(magneto)
        ahead = with_rotation * np.array([edge[1], -edge[0]]) / math.hypot(*edge)
        moved = EDGE_HEIGHT_MM * math.tan(math.radians(eye))
        assert seen - bar == pytest.approx(np.outer(np.ones(4), moved * ahead), abs=1e-3)
        assert mark_bearings(square) == mark_bearings(beside)


def test_the_mark_read_is_the_nearest_and_its_number_stands_in_a_disc():
    magneto = find_magneto("nine-radial")
    for lobe, place in enumerate(internal_timing(magneto).places_deg.tolist(), 1):
        scene = breaker_scene(Shown(magneto, place + 1.0))
        assert [word.text for word in scene.words if word.disc] == [str(lobe)]


# ---------------------------------------------------------------------- absence and options


def texts(scene: Scene) -> str:
    corners = [text for corner in scene.corners for line in corner.lines for text in line.wordings]
    names = [name.text for name in scene.plan.names] + [text for text, _ in scene.readings.values()]
    return " ".join([*corners, *names, *(word.text for word in scene.words), scene.description])


@of_each
def test_without_numbers_nothing_true_is_told(magneto):
    shown = Shown(magneto, 33.3, 1.0, 4.0)
    scene = breaker_scene(shown, Options(numbers=False, hidden=frozenset({"rotor scale", "plate scale"})))
    told = texts(scene)
    assert "mm" not in told
    assert "°" not in told
    (glass,) = scene.glasses
    assert not glass.tells_factor
    assert "tolerance" not in {piece.part for group in glass.scene.groups for piece in group.pieces}
    hidden = {"rotor scale", "plate scale", "tolerance"}
    assert not any(piece.part in hidden for group in scene.groups for piece in group.pieces)
    assert "E-gap" not in [word.text for word in scene.words]


@of_each
def test_assumed_proportions_are_said_across_the_picture_and_tell_no_gap(magneto):
    scene = breaker_scene(replace(Shown(magneto, 33.3), assumed=True))
    assert scene.assumed == "assumed"
    assert "mm" not in texts(scene).replace("edge", "")
    assert "gap" not in [name.part for name in scene.plan.names]
    assert "assumed" in scene.description


def test_a_measured_lift_says_that_arm_and_heel_are_plain():
    head = breaker_scene(Shown(find_magneto("traced-six"))).corners[0]
    assert any("plain" in text for line in head.lines for text in line.wordings)


@pytest.mark.parametrize("name", shipped_names("installations"))
def test_neither_engine_nor_electrical_values_are_needed(name):
    """The picture is the same on an engine and off it, with electrical values and without them."""
    engaged = new_bench(find_installation(name))
    alone = new_bench(find_installation(name).magneto.model_copy(update={"electrical": None}))
    scenes = [breaker_scene(Shown.of(state)) for state in (engaged, alone)]
    assert [g.turns for g in scenes[0].groups] == [g.turns for g in scenes[1].groups]
    assert texts(scenes[0]) == texts(scenes[1])


@of_each
def test_what_does_not_move_is_the_very_same_from_frame_to_frame(magneto):
    one, two = breaker_scene(Shown(magneto, 3.0)), breaker_scene(Shown(magneto, 71.0))
    for a, b in zip(one.groups, two.groups, strict=True):
        assert a.pieces is b.pieces
        if a.layer != "moving":
            assert a.turns == b.turns
    assert one.plan is two.plan
    turned = breaker_scene(Shown(magneto, 3.0, 1.5))
    assert all(g.turns == () for g in turned.groups if g.layer == "ground")


def test_reduced_motion_leaves_the_chevrons_out():
    magneto = MAGNETOS[0]
    assert breaker_scene(Shown(magneto)).group("chevrons").pieces
    assert not breaker_scene(Shown(magneto), Options(still_motion=True)).group("chevrons").pieces


def test_lengths_are_written_in_the_unit_chosen():
    shown = Shown(find_magneto("seven-radial"), 30.0)
    inch, metric = (breaker_scene(shown, Options(inches=inches)) for inches in (True, False))
    assert inch.readings["gap"][0].endswith(" in")
    assert metric.readings["gap"][0].endswith(" mm")
    mm, inches = (float(scene.readings["gap"][0].split()[0]) for scene in (metric, inch))
    assert mm == pytest.approx(inches * 25.4, abs=0.5 * 0.0001 * 25.4 + 0.0005)


@pytest.mark.parametrize(("past", "side"), [(-22.4, "before neutral"), (22.4, "past neutral")])
def test_the_side_of_neutral_is_a_word_and_no_sign(past, side):
    scene = breaker_scene(Shown.of(replace(new_bench(find_installation("seven-radial-left")), rotor_deg=past)))
    angle, words = next(corner for corner in scene.corners if corner.corner == "top-right").lines
    assert angle.wordings == ("22.4°",) and words.wordings[0] == f"rotor {side}"
