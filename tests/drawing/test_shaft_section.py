"""Angles, teeth and flux of the shaft's pictures against the state, for every shipped magneto over two turns."""

from __future__ import annotations

import math
from dataclasses import replace
from itertools import pairwise

import numpy as np
import pytest

from magview.bench.placing import new_bench
from magview.bench.state import BenchState
from magview.bench.words import breaker_end_sense, cam_sense
from magview.curves.why_here import core_flux
from magview.drawing.breaker_hero import Shown
from magview.drawing.rotor_cut import (
    LEAST_FLUX,
    POLE_HALF,
    SHOE_HALF,
    leaving_deg,
    ribbon,
    ribbon_path,
    rotor_cut_scene,
)
from magview.drawing.scene import Options
from magview.drawing.shaft_layout import (
    AXLES,
    CAM,
    DISC,
    DISC_RADIUS,
    FINGER,
    IDLER_TEETH,
    PINION_TEETH,
    angles_of,
    at_no_1,
    finger_teeth,
    rotor_turns_per_crank_turn,
)
from magview.drawing.shaft_moving import Moving, joint, window_teeth
from magview.drawing.shaft_section import electrodes, names_below, shaft_scene
from magview.physics.electric.coil import static_flux_wb
from magview.spec.library import find_installation, find_magneto, shipped_names
from magview.spec.magneto import DistributorMarks

INSTALLATIONS = shipped_names("installations")
MAGNETOS = shipped_names("magnetos")


def on_engine(name: str, rotor_deg: float = 0.0) -> BenchState:
    return replace(new_bench(find_installation(name)), rotor_deg=rotor_deg)


def apart(a: float, b: float, whole: float = 360.0) -> float:
    """How far two angles are from one another [deg]."""
    return abs((a - b + whole / 2) % whole - whole / 2)


@pytest.mark.parametrize("name", INSTALLATIONS)
def test_every_part_turns_by_its_own_ratio(name):
    start, end = angles_of(on_engine(name, 0.0)), angles_of(on_engine(name, 36.0))
    state = on_engine(name)
    sense, k = breaker_end_sense(state.magneto), rotor_turns_per_crank_turn(state)
    assert end.rotor - start.rotor == pytest.approx(36.0 * sense)
    assert end.cam - start.cam == pytest.approx(
        36.0 * cam_sense(state.magneto) * state.magneto.cam.turns_per_rotor_turn
    )
    # The finger goes round once in two turns of the crank (common practice), by a pair of outer gears, which turn
    # opposite ways (any handbook of gears).
    assert end.finger - start.finger == pytest.approx(-36.0 * sense / (2.0 * k))
    for part in ("drive_flange", "disc", "magneto_flange"):
        assert apart(getattr(end, part) - getattr(start, part), 36.0 * sense) < 1e-9, "one shaft"


@pytest.mark.parametrize("name", INSTALLATIONS)
def test_the_finger_stands_at_no_1_when_the_rotor_stands_at_its_e_gap(name):
    state = on_engine(name)
    assert at_no_1(angles_of(replace(state, rotor_deg=state.magneto.e_gap_deg)))
    once = 360.0 * 2.0 * rotor_turns_per_crank_turn(state)  # rotor degrees in a turn of the finger
    assert at_no_1(angles_of(replace(state, rotor_deg=state.magneto.e_gap_deg + once)))
    assert not at_no_1(angles_of(replace(state, rotor_deg=state.magneto.e_gap_deg + once / 2)))


@pytest.mark.parametrize("name", INSTALLATIONS)
def test_the_gears_mesh_wherever_they_stand(name):
    for rotor in np.linspace(-360.0, 360.0, 41):
        state = on_engine(name, float(rotor))
        angles = angles_of(state)
        pinion, gear = 360.0 / PINION_TEETH, 360.0 / finger_teeth(state)
        # Where they touch: the top of one and the bottom of the other. A tooth of one meets a gap of the other.
        meeting = (angles.pinion / pinion + (angles.finger - 180.0) / gear) % 1.0
        assert meeting == pytest.approx(0.5, abs=1e-6)


@pytest.mark.parametrize("name", MAGNETOS)
def test_what_is_on_one_shaft_turns_one_way(name):
    """Cam and finger on the distributor's shaft turn alike, in section and breaker end."""
    magneto = find_magneto(name)
    for against in (True, False) if magneto.cam.on_distributor else (False,):
        cam = magneto.cam.model_copy(update={"turns_against_rotor": against})
        at = new_bench(magneto.model_copy(update={"cam": cam}))
        start, end = (angles_of(replace(at, rotor_deg=rotor)) for rotor in (0.0, 20.0))
        section, hero = end.cam - start.cam, Shown(at.magneto, 20.0).pose.turns_deg["cam"]
        assert section == pytest.approx(hero)
        if at.magneto.cam.on_distributor:
            assert end.finger - start.finger == pytest.approx(section)
            assert (section * (end.rotor - start.rotor) < 0.0) == against
        else:
            assert section == pytest.approx(end.rotor - start.rotor)
            assert (end.finger - start.finger) * section < 0.0
        electrode = [cylinder for _, cylinder in electrodes(at.engaged)]
        assert electrode[0] == 1


def test_a_gear_between_makes_the_distributors_shaft_turn_the_rotors_way():
    """Old files have no word on it: their cam turns the rotor's way, which takes three gears in a row."""
    found = find_installation("nine-radial-left")
    cam = found.magneto.cam.model_copy(update={"turns_against_rotor": False})
    silent = found.model_copy(update={"magneto": found.magneto.model_copy(update={"cam": cam})})
    for rotor in (0.0, 13.0, 200.0):
        state = replace(new_bench(silent), rotor_deg=rotor)
        angles = angles_of(state)
        pinion, idler, gear = (360.0 / n for n in (PINION_TEETH, IDLER_TEETH, finger_teeth(state)))
        assert (angles.pinion / pinion + (angles.idler - 180.0) / idler) % 1.0 == pytest.approx(0.5, abs=1e-6)
        assert (angles.idler / idler + (angles.finger - 180.0) / gear) % 1.0 == pytest.approx(0.5, abs=1e-6)
        small, between, large = Moving(state, angles, AXLES).gear_radii
        assert small + 2.0 * between + large == pytest.approx(AXLES)
        assert (between / small, large / small) == pytest.approx(
            (IDLER_TEETH / PINION_TEETH, finger_teeth(state) / PINION_TEETH)
        )


@pytest.mark.parametrize("name", INSTALLATIONS)
def test_each_joint_has_its_own_number_of_teeth_at_the_discs_angle(name):
    coupling = on_engine(name).engaged.installation.coupling
    for teeth in (coupling.drive_teeth, coupling.magneto_teeth):
        for turned in (0.0, 3.7, 111.0):
            points = np.array(joint(teeth, turned, DISC_RADIUS, DISC[0], 4.0))
            edges = np.degrees(np.arccos(np.clip(-points[1:-1:2, 1] / DISC_RADIUS, -1.0, 1.0)))
            assert abs(len(edges) - teeth) <= 1, "half the round shows half of two edges a tooth"
            expected = (turned + 90.0 / teeth - 180.0) % (180.0 / teeth)
            assert all(apart(edge, expected, 180.0 / teeth) < 1e-6 for edge in edges)


def test_the_finger_is_filled_on_the_near_side_and_dashed_on_the_far_one():
    """Bearings run from the top by way of the far side, so it is far between 0° and 180° and near from there on."""
    state = on_engine(INSTALLATIONS[0])
    once = 360.0 * 2.0 * rotor_turns_per_crank_turn(state)  # rotor degrees in a turn of the finger
    sides = []
    for rotor in state.magneto.e_gap_deg + once * np.arange(24) / 24:
        turned = replace(state, rotor_deg=float(rotor))
        finger = angles_of(turned).finger % 360.0
        blade = next(
            p
            for p in shaft_scene(turned).group("turning").pieces
            if p.part == "finger" and p.outlines[0][0, 0] == FINGER[0] + 0.6
        )
        far = 1e-6 < finger < 180.0 - 1e-6
        sides.append(far)
        assert ((blade.style.fill == ""), bool(blade.style.dash)) == (far, far), finger
        tip = blade.outlines[0][:, 1]
        reach = tip[np.argmax(np.abs(tip - AXLES))] - AXLES
        assert reach == pytest.approx(17.0 * math.cos(math.radians(finger)), abs=1e-9)
    assert sides.count(True) == 11, "of 24 bearings two are the edges, which count as near"


def test_the_painted_tooth_is_in_the_middle_of_the_window_at_no_1_only():
    state = on_engine("seven-radial-left")
    at = replace(state, rotor_deg=state.magneto.e_gap_deg)
    teeth = finger_teeth(at)
    middle = dict(window_teeth(angles_of(at).finger, teeth))[0]
    assert middle == pytest.approx(30.5)
    away = dict(window_teeth(angles_of(replace(at, rotor_deg=at.rotor_deg + 200.0)).finger, teeth))
    assert 0 not in away


def test_the_files_own_mark_is_named_in_the_window():
    state = on_engine("seven-radial-left")
    marks = DistributorMarks(window_mark="red tooth")
    marked = replace(state, magneto=state.magneto.model_copy(update={"distributor": marks}))
    for at, word in ((state, "mark in window: No. 1"), (marked, "red tooth in window: No. 1")):
        scene = shaft_scene(replace(at, rotor_deg=at.magneto.e_gap_deg))
        assert word in [w.text for w in scene.words]


@pytest.mark.parametrize("on", [True, False])
@pytest.mark.parametrize("up", [0.0, AXLES])
def test_names_below_stand_in_the_order_of_their_parts(on, up):
    names = names_below(on, up)
    for row in (0, 1):
        mine = [n for n in names if n.row == row]
        assert [n.x for n in mine] == sorted(n.x for n in mine)
        # A name that does not fit its room is not written: rooms that do not meet keep names apart at every size.
        for one, other in pairwise(mine):
            assert one.x + one.room_mm / 2 <= other.x - other.room_mm / 2


@pytest.mark.parametrize("name", MAGNETOS)
def test_without_an_engine_there_is_no_coupling_and_one_electrode(name):
    scene = shaft_scene(replace(new_bench(find_magneto(name)), engaged=None))
    parts = {piece.part for group in scene.groups for piece in group.pieces}
    assert not parts & {"drive flange", "disc", "magneto flange", "engine"}
    assert sum(piece.part == "electrode" for piece in scene.group("distributor").pieces) == 1
    assert "without an engine" in scene.description


@pytest.mark.parametrize("name", MAGNETOS)
def test_a_cam_of_another_ratio_is_drawn_on_the_distributors_shaft(name):
    state = new_bench(find_magneto(name))
    cam = next(
        p for p in shaft_scene(state).group("turning").pieces if p.part == "cam" and p.outlines[0][0, 0] == CAM[0]
    )
    assert cam.outlines[0][:, 1].mean() == pytest.approx(
        AXLES if state.magneto.cam.turns_per_rotor_turn != 1.0 else 0.0, abs=1e-9
    )


# ---------------------------------------------------------------------- the cut


def north_share(poles: int, rotor_bearing: float, shoe_deg: float) -> float:
    """How much more of a shoe's face lies over north poles than over south poles, by counting [share]."""
    half = SHOE_HALF * 360.0 / poles
    faces = np.linspace(shoe_deg - half, shoe_deg + half, 721)
    pole = np.round((faces - rotor_bearing) / (360.0 / poles)).astype(int)
    over = np.abs(faces - rotor_bearing - pole * 360.0 / poles) <= POLE_HALF * 360.0 / poles
    return float(np.mean(np.where(over, np.where(pole % 2 == 0, 1.0, -1.0), 0.0)))


@pytest.mark.parametrize("name", MAGNETOS)
def test_the_magnets_flux_leaves_through_the_shoe_over_a_north_pole(name):
    magneto = find_magneto(name)
    sense, coil = breaker_end_sense(magneto), magneto.electrical
    for rotor in np.linspace(-360.0, 360.0, 145):
        if coil is not None:
            flux = float(static_flux_wb(coil, magneto.poles, rotor)) / coil.peak_flux_wb
        else:
            flux = -math.sin(math.radians(magneto.poles / 2 * rotor))
        if abs(flux) > LEAST_FLUX:
            assert north_share(magneto.poles, sense * rotor, leaving_deg(magneto.poles, flux, sense)) > 0.0


@pytest.mark.parametrize("name", MAGNETOS)
def test_the_ribbon_is_as_wide_as_the_flux_is_strong(name):
    state = replace(new_bench(find_magneto(name)), rotor_deg=30.0)
    flux, _ = core_flux(state)
    pieces = [p for p in rotor_cut_scene(state).group("flux").pieces if p.style.fill_alpha == 0.47]
    if abs(flux) <= LEAST_FLUX:
        assert not pieces
        return
    (piece,) = pieces
    n = len(piece.outlines[0]) // 2
    one, other = piece.outlines[0][:n], piece.outlines[0][n:][::-1]
    middle = n // 2  # in the core, between two corners
    across = np.hypot(*((one[middle - 1] + one[middle]) / 2 - (other[middle - 1] + other[middle]) / 2))
    assert across == pytest.approx(7.2 * abs(flux))


@pytest.mark.parametrize("poles", [2, 4, 6])
def test_a_ribbon_keeps_its_width_at_every_corner(poles):
    middle = ribbon_path(poles)
    outline = ribbon(middle, 3.0)
    n = len(middle)
    for side, sign in ((outline[:n], 1.0), (outline[n:][::-1], -1.0)):
        for i in range(n - 1):
            step = middle[i + 1] - middle[i]
            normal = np.array([-step[1], step[0]]) / np.hypot(*step)
            assert (side[i] - middle[i]) @ normal == pytest.approx(1.5 * sign)


def test_practice_shows_no_share_of_the_flux():
    state = on_engine("seven-radial-left", 24.0)
    for numbers in (True, False):
        scene = rotor_cut_scene(state, Options(numbers=numbers))
        assert any("%" in word.text for word in scene.words) == numbers
        assert ("%" in scene.description) == numbers


def test_without_electrical_values_the_cut_says_that_it_is_assumed():
    plain = find_magneto("seven-radial").model_copy(update={"electrical": None})
    assert rotor_cut_scene(new_bench(plain)).assumed


@pytest.mark.parametrize("name", MAGNETOS)
def test_the_cut_shows_a_shoe_for_every_pole_and_the_capacitor_of_the_file(name):
    """Shoes stand half a pitch from neutral's poles, evenly round the rotor, as at the breaker end."""
    magneto = find_magneto(name)
    scene = rotor_cut_scene(new_bench(magneto))
    iron = [p for p in scene.group("iron").pieces if p.part == "pole shoe"]
    faces = [p.outlines[0] for p in iron if np.isclose(np.hypot(*p.outlines[0].T).min(), 20.8)]
    middles = sorted(math.degrees(math.atan2(*face.mean(axis=0))) % 360.0 for face in faces)
    assert middles == pytest.approx([(i + 0.5) * 360.0 / magneto.poles for i in range(magneto.poles)])
    drawn = {p.part for p in scene.group("iron").pieces}
    assert ("capacitor" in drawn) == (magneto.capacitor_uf is not None)
    bare = rotor_cut_scene(new_bench(magneto.model_copy(update={"capacitor_uf": None})))
    assert "capacitor" not in {p.part for p in bare.group("iron").pieces}
