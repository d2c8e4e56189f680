"""The common vocabulary of the pictures: turning, fitting, taking hold."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from magview.drawing.scene import Carrier, Frame, Glass, Hand, Scene, Turn, frame_of, glass_radius, hand_at, inside
from magview.drawing.shapes import circle, rotate

ANGLES = st.floats(-720.0, 720.0)
PLACES = st.tuples(st.floats(-50.0, 50.0), st.floats(-50.0, 50.0))


@given(st.lists(st.tuples(ANGLES, PLACES), max_size=4), PLACES)
def test_several_turns_made_one_are_each_turn_in_order(turns, point):
    one_by_one = np.array([point])
    for degrees, about in turns:
        one_by_one = rotate(one_by_one, degrees, about)
    together = Carrier.of(Turn(degrees, about) for degrees, about in turns).put(np.array([point]))
    assert together == pytest.approx(one_by_one, abs=1e-9)


@given(st.floats(0.1, 50.0), PLACES, st.booleans(), PLACES)
def test_a_pixel_goes_back_to_where_it_came_from(scale, corner, mirrored, point):
    frame = Frame(scale, *corner, mirrored)
    x, y = frame.of(np.array(point)).tolist()
    assert frame.at(point) == pytest.approx((x, y))
    assert frame.back(x, y) == pytest.approx(point, abs=1e-6)


@given(st.floats(150.0, 2000.0), st.floats(150.0, 1500.0), st.floats(9.0, 30.0))
def test_the_whole_box_is_seen_and_room_is_kept_above_and_below(width, height, em):
    scene = Scene("box", (-10.0, -5.0, 30.0, 8.0), (), margins_em=(2.0, 3.0))
    frame = frame_of(scene, width, height, em)
    corners = frame.of(np.array([(-10.0, -5.0), (30.0, 8.0)]))
    assert corners[:, 0].min() >= -1e-6
    assert corners[:, 0].max() <= width + 1e-6
    assert corners[:, 1].min() >= 2.0 * em - 1e-6
    assert corners[:, 1].max() <= height - 3.0 * em + 1e-6


@given(st.floats(240.0, 1200.0), st.floats(240.0, 1200.0))
def test_a_glass_in_the_corner_never_lies_on_the_round_middle(width, height):
    glass = Glass("bottom-right", Scene("glass", (-1, -1, 1, 1), ()), 1.0, 34.0, 0.072)
    scene = Scene("round", (-10.0, -10.0, 10.0, 10.0), (), glasses=(glass,), round_mm=10.0)
    frame, radius = frame_of(scene, width, height, 12.0), glass_radius(glass, width, height)
    away = np.hypot(width - radius - 10.0 - frame.left, height - radius - 10.0 - frame.top)
    assert away >= radius + 10.0 * frame.scale


def test_a_small_part_is_taken_hold_of_within_a_fingers_width():
    big = Hand("plate", "backplate_deg", circle((0.0, 0.0), 30.0), (0.0, 0.0), 1.0)
    small = Hand("screw", "screw_deg", circle((10.0, 0.0), 1.0), (10.0, 0.0), 1.0)
    scene = Scene("hands", (-30, -30, 30, 30), (), hands=(big, small))
    assert hand_at(scene, (12.3, 0.0), 5.0) is small  # 11.5 px off its middle, 6.5 px outside of it
    assert hand_at(scene, (12.5, 0.0), 5.0) is big
    assert hand_at(scene, (10.9, 0.0), 100.0) is small
    assert hand_at(scene, (40.0, 0.0), 5.0) is None


@given(st.floats(-2.0, 2.0), st.floats(-2.0, 2.0))
def test_inside_a_square(x, y):
    square = np.array([(-1.0, -1.0), (1.0, -1.0), (1.0, 1.0), (-1.0, 1.0)])
    if abs(abs(x) - 1.0) > 1e-9 and abs(abs(y) - 1.0) > 1e-9:
        assert inside(square, (x, y)) == (abs(x) < 1.0 and abs(y) < 1.0)
