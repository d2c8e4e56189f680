"""The crank's scene, against the slider-crank worked out here."""

from __future__ import annotations

import math

import numpy as np
import pytest

from magview.drawing.crank_end import crank_end, engine_sense
from magview.drawing.crank_scene import DiscMark, crank_scene
from magview.drawing.scene import pieces_of
from magview.spec.library import find_installation

ENGINE = find_installation("seven-radial-left").engine


def extent(scene, part):
    """Least and greatest x and y of a part where it stands [mm]."""
    points = np.concatenate([group.put(o) for group, piece in pieces_of(scene, part) for o in piece.outlines])
    return points.min(axis=0), points.max(axis=0)


@pytest.mark.parametrize("crank", [-360.0, -120.0, -25.0, 0.0, 40.0, 181.0])
def test_rod_and_piston_stand_where_the_slider_crank_puts_them(crank):
    scene = crank_scene(ENGINE, crank)
    r, rod, a = ENGINE.stroke_mm / 2, ENGINE.rod_mm, math.radians(crank)
    pin_at = r * math.cos(a) + math.sqrt(rod**2 - (r * math.sin(a)) ** 2)
    low, high = extent(scene, "piston pin")
    assert (low + high) / 2 == pytest.approx((pin_at, 0.0), abs=1e-6)
    shank = scene.group("rod")
    big, small = shank.put(np.array([(0.0, 0.0), (rod, 0.0)]))
    y = -engine_sense(ENGINE) * r * math.sin(a)  # bearings are clockwise, y points up
    assert big == pytest.approx((r * math.cos(a), y), abs=1e-6)
    assert small == pytest.approx((pin_at, 0.0), abs=1e-6)


@pytest.mark.parametrize("crank", [-60.0, -30.0, -10.0, 0.0, 20.0])
def test_a_stop_meets_the_piston_at_its_angle_and_is_held_out_above_it(crank):
    scene = crank_scene(ENGINE, crank, stop_deg=30.0)
    crown, tip = extent(scene, "piston")[1][0], extent(scene, "piston stop")[0][0]
    assert tip - crown == pytest.approx(0.0, abs=1e-6) if abs(crank) <= 30.0 else tip > crown + 0.5


def test_readings_stand_under_the_pointer_and_a_disc_put_on_wrong_is_off_by_its_error():
    for error in (0.0, 4.0):
        scene = crank_scene(ENGINE, -30.0, disc_error_deg=error)
        (thirty,) = (
            w
            for w in scene.words
            if w.text == "30" and w.at[0] > 0 and abs(w.at[1]) < 0.1 * crank_end(ENGINE).disc_mm
        )
        assert abs(math.degrees(math.atan2(thirty.at[1], thirty.at[0]))) == pytest.approx(error, abs=1e-6)


def test_a_mark_s_line_is_where_the_crown_then_is_and_its_name_within_the_picture():
    marks = (DiscMark(25.0, "wanted", "planned", above=True), DiscMark(0.0, "opens", "ink", above=False))
    scene = crank_scene(ENGINE, -90.0, marks)
    left, bottom, right, top = scene.box
    for mark, piece in zip(marks, scene.group("marks").pieces, strict=True):
        crown = extent(crank_scene(ENGINE, -mark.btdc_deg), "piston")[1][0]
        assert piece.outlines[1][:, 0] == pytest.approx(crown)
        (word,) = (w for w in scene.words if w.text == mark.name)
        assert word.align == "right", "it reaches back over the crank, where there is room"
        assert left < word.at[0] <= right
        assert bottom < word.at[1] < top
