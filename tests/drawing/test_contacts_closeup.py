"""The close-up, measured at the ends of its own measures: lift, lever, gap and blade against the physics."""

from __future__ import annotations

import math
import re

import numpy as np
import pytest
import shapely

from magview.drawing.breaker_end import breaker_layout, pose_at
from magview.drawing.breaker_hero import Shown
from magview.drawing.contacts_closeup import FACTOR, closeup_scene
from magview.drawing.scene import Measure, Options, Scene, pieces_of
from magview.physics.cam.setting import internal_timing
from magview.spec.library import find_magneto, shipped_names

MAGNETOS = [find_magneto(name) for name in shipped_names("magnetos")]
KNOWN = [magneto for magneto in MAGNETOS if magneto.breaker.heel_arm_mm is not None]


def of_each(magnetos):
    return pytest.mark.parametrize("magneto", magnetos, ids=lambda m: m.name)


def over_a_lobe(magneto) -> np.ndarray:
    return np.linspace(0.0, 360.0 / magneto.poles, 46)


def worn(magneto, **condition):
    return magneto.model_copy(update={"condition": magneto.condition.model_copy(update=condition)})


def measured(scene: Scene, name: str) -> Measure:
    return next(measure for measure in scene.measures if measure.name == name)


def outline(scene: Scene, part: str, group: str) -> np.ndarray:
    """The filled outline of a part in a group, where the picture has it."""
    g, piece = next((g, p) for g, p in pieces_of(scene, part) if g.name == group and p.style.fill)
    return g.put(piece.outlines[0])


@of_each(MAGNETOS)
def test_the_cam_drawn_larger_carries_the_heel_drawn_larger(magneto):
    """Heel and cam touch while the contacts are open, and only then, as they do in the magneto."""
    touching = clear = 0
    for rotor in over_a_lobe(magneto):
        scene = closeup_scene(Shown(magneto, float(rotor), 0.7, -3.0))
        cam, heel = (shapely.Polygon(outline(scene, *key)) for key in (("cam", "cam"), ("heel", "arm")))
        apart, overlap = cam.distance(heel), cam.intersection(heel).area
        assert overlap < 0.02
        if pose_at(magneto, float(rotor), 0.7, -3.0).gap_mm:
            touching += 1
            assert apart < 0.03
        else:
            clear += 1
    assert touching > 3
    assert clear > 3


@of_each(MAGNETOS)
def test_the_gap_measure_is_the_gap_as_many_times_as_it_says(magneto):
    timing, arm, seen = internal_timing(magneto), magneto.breaker.contact_arm_mm, 0
    for rotor in over_a_lobe(magneto):
        scene = closeup_scene(Shown(magneto, float(rotor), 0.7, -3.0))
        gap = float(timing.gap_mm(float(rotor), 0.7, -3.0))
        found = [m for m in scene.measures if m.name == "gap"]
        assert bool(found) == (gap > 0.0005)
        for measure in found:
            seen += 1
            assert measure.shows_mm == pytest.approx(gap, abs=1e-12)
            # An arc round the pivot; the arrow is its chord.
            assert measure.drawn_mm == pytest.approx(2 * arm * math.sin(FACTOR * gap / (2 * arm)), abs=1e-9)
            fixed, moving = outline(scene, "contacts", "stop"), outline(scene, "contacts", "arm")
            assert math.dist(measure.start, fixed[2:].mean(axis=0)) < 1e-9
            assert math.dist(measure.end, moving[:2].mean(axis=0)) < 1e-9
    assert seen > 3


@of_each(KNOWN)
def test_the_heels_arrow_ends_at_the_heel_and_at_what_it_is_up_from(magneto):
    timing, breaker = internal_timing(magneto), magneto.breaker
    for rotor in over_a_lobe(magneto):
        lift, stop = float(timing.lift_mm(float(rotor), 0.7)), float(timing.stop_mm(-3.0))
        scene = closeup_scene(Shown(magneto, float(rotor), 0.7, -3.0))
        measure, lever = measured(scene, "heel"), breaker.contact_arm_mm / breaker.heel_arm_mm
        wanted = lift / lever if lift >= stop else (stop - lift) / lever
        assert measure.shows_mm == pytest.approx(wanted, abs=1e-12)
        # Both ends are exact; the heel swings on its arm, the arrow is straight: two hundredths longer or shorter.
        assert measure.drawn_mm / FACTOR == pytest.approx(wanted, rel=0.02, abs=0.004)
        heel, pivot = outline(scene, "heel", "arm"), np.array(measured(scene, "contact_arm").witnesses[0][1])
        outwards = np.array(measure.end) - np.array(measure.start)
        level = np.array(measure.witnesses[1][1]) - np.array(measure.witnesses[1][0])
        if lift >= stop:
            base = breaker_layout(magneto).arms.base_pitch_radius_mm - breaker.heel_radius_mm
            beside = np.dot(measure.start, level) / np.hypot(*level)
            assert math.hypot(*measure.start) == pytest.approx(math.hypot(base, beside), abs=1e-6)
        # The level that it ends at is the heel's tip: nothing of the heel is nearer to the cam.
        up = np.array([-level[1], level[0]]) / np.hypot(*level)
        up = up if np.dot(up, outwards) > 0 or not outwards.any() else -up
        assert ((heel - np.array(measure.end)) @ up).min() == pytest.approx(0.0, abs=0.02)
        assert np.hypot(*(heel.mean(axis=0) - pivot)) < 2 * breaker.heel_arm_mm


@of_each(KNOWN)
def test_the_levers_are_measured_at_their_own_axes(magneto):
    for rotor in over_a_lobe(magneto)[::5]:
        scene = closeup_scene(Shown(magneto, float(rotor)))
        assert measured(scene, "contact_arm").drawn_mm == pytest.approx(magneto.breaker.contact_arm_mm, abs=1e-9)
        heel_arm = measured(scene, "heel_arm")
        assert heel_arm.drawn_mm == pytest.approx(magneto.breaker.heel_arm_mm, abs=1e-9)
        # The far witness ends in the middle of the heel's rounding.
        heel = np.array(heel_arm.witnesses[1][1])
        away = np.hypot(*(outline(scene, "heel", "arm") - heel).T)
        assert away.min() == pytest.approx(magneto.breaker.heel_radius_mm, abs=0.01)


@of_each(MAGNETOS)
def test_the_heel_reaches_the_opening_circle_as_the_contacts_part(magneto):
    layout = breaker_layout(magneto)
    timing = internal_timing(magneto)
    opens = float(timing.readings(0.7, -3.0).opens_deg[0])
    scene = closeup_scene(Shown(magneto, opens, 0.7, -3.0))
    (circle,) = (g.put(p.outlines[0]) for g, p in pieces_of(scene, "opening circle"))
    heel = outline(scene, "heel", "arm")
    assert np.hypot(*heel.T).min() == pytest.approx(np.hypot(*circle.T).mean(), abs=0.02)
    (base,) = (g.put(p.outlines[0]) for g, p in pieces_of(scene, "base circle"))
    assert np.hypot(*base.T) == pytest.approx(layout.arms.base_pitch_radius_mm - layout.arms.heel_radius_mm)


def values(scene: Scene) -> list[float]:
    return [eval_fraction(term.text) for term in scene.total]


def eval_fraction(text: str) -> float:
    number = re.match(r"[\d./]+", text)
    assert number is not None
    above, _, below = number.group().partition("/")
    return float(above) / float(below or 1)


@pytest.mark.parametrize("inches", [False, True])
@of_each(KNOWN)
def test_the_sum_as_written_comes_out_as_written(magneto, inches):
    """heel up × lever − free = gap: with the digits that are written, to what two of them can be rounded by."""
    unit, worst = (0.0001, 0.0) if inches else (0.001, 0.0)
    for rotor in np.linspace(0.0, 360.0 / magneto.poles, 200):
        scene = closeup_scene(Shown(magneto, float(rotor)), Options(inches=inches))
        if scene.total[-1].text == "closed":
            continue
        up, lever, free, gap = values(scene)
        worst = max(worst, abs(up * lever - free - gap))
    assert 0.0 < worst < 2.0 * unit + (0.002 if inches else 0.0)


def test_a_traced_lift_has_no_lever_to_tell_of():
    scene = closeup_scene(Shown(find_magneto("traced-six"), 25.0))
    assert [m.name for m in scene.measures] == ["contact_arm", "heel", "gap"]
    assert "traced" in scene.total[0].meanings[0]
    lift, free, gap = values(scene)
    assert lift - free == pytest.approx(gap, abs=0.0015)
    assert not re.search(r"\d", measured(scene, "heel").text)


@of_each(MAGNETOS)
def test_a_blade_goes_where_it_is_no_thicker_than_the_gap_without_the_pip(magneto):
    top = internal_timing(magneto).first_peak_deg / magneto.cam.turns_per_rotor_turn
    for pip in (0.0, 0.04):
        rough = worn(magneto, pip_height_mm=pip)
        gap = float(internal_timing(rough).gap_mm(top, 0.0, 0.0))
        for thick in (gap - pip - 0.01, gap - pip + 0.01):
            scene = closeup_scene(Shown(rough, top), blade_mm=thick)
            (group, piece), goes = pieces_of(scene, "blade")[0], thick <= gap - pip
            blade = group.put(piece.outlines[0])
            assert math.dist(blade[0], blade[3]) == pytest.approx(FACTOR * thick, rel=1e-6)
            word = next(w for w in scene.words if w.role == "planned")
            assert word.text.endswith("goes" if goes else "stops")
            between = shapely.Polygon(blade)
            for part in ("stop", "arm"):
                block = shapely.Polygon(outline(scene, "contacts", part))
                assert between.intersection(block).area < 0.12 * block.area
            middle = np.mean([measured(scene, "gap").start, measured(scene, "gap").end], axis=0)
            assert between.contains(shapely.Point(middle)) == goes or pip > 0.0


def test_closed_contacts_take_no_blade():
    scene = closeup_scene(Shown(find_magneto("seven-radial"), 0.0))
    assert not pieces_of(scene, "blade")
    assert scene.total[-1].text == "closed"


@of_each(KNOWN)
def test_a_worn_heel_is_seen_to_have_lost_what_it_lost_and_still_rides_the_cam(magneto):
    thin, touching, clear = worn(magneto, heel_wear_mm=0.05), 0, 0
    timing, lever = internal_timing(thin), magneto.breaker.contact_arm_mm / magneto.breaker.heel_arm_mm
    for rotor in over_a_lobe(magneto)[::3]:
        scene = closeup_scene(Shown(thin, float(rotor)))
        cam, heel = (shapely.Polygon(outline(scene, *key)) for key in (("cam", "cam"), ("heel", "arm")))
        assert cam.intersection(heel).area < 0.02
        # Closed contacts hold the arm: the heel stands off the cam by the lift that is missing, or on a flank less.
        off = max(0.0, float(timing.stop_mm(0.0) - timing.lift_mm(float(rotor), 0.0))) / lever
        assert (off == 0.0) == (pose_at(thin, float(rotor), 0.0, 0.0).gap_mm > 0.0)
        touching, clear = touching + (off == 0.0), clear + (off > 0.0)
        # The model takes wear off the tip alone; on a flank a smaller heel touches a little beside it.
        beside = (0.5 if off else 0.3) * FACTOR * 0.05
        assert 0.7 * FACTOR * off - beside < cam.distance(heel) < FACTOR * off + beside
        before = next(g.put(p.outlines[0]) for g, p in pieces_of(scene, "heel") if p.style.line == "bad")
        lost = shapely.Polygon(before).difference(heel).area
        assert lost > 0.3
    assert touching > 3
    assert clear > 3


@of_each(MAGNETOS)
def test_a_low_lobe_has_its_right_outline_beside_it(magneto):
    lobes = len(magneto.cam.lobe_peaks_deg)
    low = worn(magneto, lobe_lift_error_mm=(-0.1,) + (0.0,) * (lobes - 1))
    (piece,) = (p for _, p in pieces_of(closeup_scene(Shown(low)), "cam") if p.style.line == "bad")
    apart = max(np.hypot(*line.T).max() for line in piece.outlines)
    base = breaker_layout(magneto).arms.base_pitch_radius_mm - breaker_layout(magneto).arms.heel_radius_mm
    assert apart > base + 0.5 * FACTOR * 0.1
    assert not any(p.style.line == "bad" for _, p in pieces_of(closeup_scene(Shown(magneto)), "cam"))


@pytest.mark.parametrize("grade", ["frosted", "light", "mound", "pit"])
def test_each_grade_of_faces_looks_its_own(grade):
    shown = Shown(find_magneto("seven-radial"), 30.0)
    (glass,) = closeup_scene(shown, grade=grade).glasses
    others = [closeup_scene(shown, grade=g).glasses[0] for g in ("frosted", "light", "mound", "pit") if g != grade]

    def looks(one):
        return [(p.style, len(p.outlines)) for p in one.scene.groups[0].pieces]

    assert all(looks(glass) != looks(other) for other in others)
    assert closeup_scene(shown).glasses == ()


def test_a_pip_stands_on_the_face_as_high_as_it_is():
    rough = worn(find_magneto("seven-radial"), pip_height_mm=0.03)
    pieces = [p for g, p in pieces_of(closeup_scene(Shown(rough)), "contacts") if g.name == "stop"]
    block, pip = pieces[0].outlines[0], pieces[-1].outlines[0]
    out = (block[2:] - block[:2]).mean(axis=0)
    height = ((pip - block[2:].mean(axis=0)) @ (out / np.hypot(*out))).max()
    assert height == pytest.approx(FACTOR * 0.03, rel=1e-6)


@pytest.mark.parametrize("options", [Options(numbers=False), Options()])
def test_without_numbers_or_with_assumed_proportions_nothing_is_measured(options):
    shown = Shown(find_magneto("seven-radial"), 30.0, assumed=options.numbers)
    scene = closeup_scene(shown, options)
    assert scene.measures == ()
    assert scene.total == ()
    assert not pieces_of(scene, "blade")
    assert not re.search(r"\d\.\d", scene.description)
    assert (scene.assumed == "assumed") == shown.assumed


@of_each(MAGNETOS)
def test_what_does_not_move_is_kept(magneto):
    one, two = closeup_scene(Shown(magneto, 3.0)), closeup_scene(Shown(magneto, 31.0))
    for a, b in zip(one.groups, two.groups, strict=True):
        if a.name not in ("core", "ghost", "blade"):
            assert all(p is q for p, q in zip(a.pieces, b.pieces, strict=True))


@pytest.mark.parametrize("name", shipped_names("magnetos"))
def test_the_whole_base_circle_is_seen(name):
    scene = closeup_scene(Shown(find_magneto(name), 0.0))
    (base,) = (piece for group in scene.groups for piece in group.pieces if piece.part == "base circle")
    low, high = base.outlines[0].min(axis=0), base.outlines[0].max(axis=0)
    assert scene.box[0] <= low[0] and scene.box[1] <= low[1]
    assert high[0] <= scene.box[2] and high[1] <= scene.box[3]
