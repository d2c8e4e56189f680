"""Coupling and crank as drawn, against counts and closed forms."""

from __future__ import annotations

import numpy as np
import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st

from magview.drawing.crank_end import crank_end, crank_pose, disc_point
from magview.drawing.drive_end import DISC_IN_MM, DISC_OUT_MM, drive_end
from magview.drawing.shapes import circle, hatching
from magview.spec.engine import Coupling
from magview.spec.library import find_engine, shipped_names


@pytest.mark.parametrize(("magneto", "drive"), [(19, 20), (1, 1), (2, 3), (40, 39), (12, 12), (400, 399)])
def test_every_part_has_its_teeth_and_they_fit(magneto, drive):
    shapes = {s.part: s for s in drive_end(Coupling(magneto_teeth=magneto, drive_teeth=drive)) if s.filled}
    hole = shapely.Polygon(shapes["drive flange"].outlines[1])
    outer, inner = (shapely.Polygon(o) for o in shapes["disc"].outlines)
    hub = shapely.Polygon(shapes["magneto flange"].outlines[0])
    for outline in (hole, outer, inner, hub):
        assert outline.is_valid
    assert hole.contains(outer), "the disc does not fit into the drive flange"
    assert inner.contains(hub), "the magneto flange does not fit into the disc"
    rings = (
        (hole, DISC_OUT_MM, drive), (outer, DISC_OUT_MM, drive),
        (inner, DISC_IN_MM, magneto), (hub, DISC_IN_MM, magneto),
    )  # fmt: skip
    for outline, radius, count in rings:
        # The outline crosses its pitch circle twice a tooth.
        circle = shapely.Point(0, 0).buffer(radius, quad_segs=1024).exterior
        crossings = outline.exterior.intersection(circle)
        assert len(shapely.get_parts(crossings)) == 2 * count


@pytest.mark.parametrize("name", shipped_names("engines"))
def test_the_drawn_rod_keeps_its_length(name):
    """Crank pin to piston pin is the rod at every angle (No. 1 has its rod on the crank pin in all of these)."""
    engine = find_engine(name)
    assert crank_end(engine).true_rod
    for crank in np.linspace(-360.0, 360.0, 97):
        now = crank_pose(engine, float(crank))
        assert np.hypot(now.piston[0] - now.pin[0], now.piston[1] - now.pin[1]) == pytest.approx(
            engine.rod_mm, abs=1e-6
        )


@pytest.mark.parametrize("name", shipped_names("engines"))
def test_a_reading_of_the_disc_is_under_the_pointer_when_the_crank_is_there(name):
    engine = find_engine(name)
    assert disc_point(engine, 10.0, 25.0, -25.0) == pytest.approx([10.0, 0.0])
    # Before that the mark has still to come: it lies against the engine's rotation from the pointer.
    below = disc_point(engine, 10.0, 25.0, -40.0)[1] > 0
    assert below == (engine.rotation == "clockwise")


def test_strokes_in_words():
    engine = find_engine("four-opposed")
    assert crank_pose(engine, -25.0).stroke == "compression"
    assert crank_pose(engine, -25.0).btdc_deg == pytest.approx(25.0)
    assert crank_pose(engine, 25.0).stroke == "power"
    assert crank_pose(engine, 335.0).stroke == "exhaust"
    assert crank_pose(engine, -335.0).stroke == "intake"


@given(st.floats(-180.0, 180.0), st.floats(0.2, 3.0))
def test_hatching_lies_inside_and_measures_the_area(bearing, pitch):
    # Cavalieri: the length of parallel lines times their pitch is the area, here of a ring, π (R² − r²).
    ring = (circle((3.0, -2.0), 20.0, 360), circle((3.0, -2.0), 8.0, 360))
    lines = hatching(ring, bearing, pitch)
    length = np.linalg.norm(lines[:, 1] - lines[:, 0], axis=1).sum()
    assert length * pitch == pytest.approx(np.pi * (20.0**2 - 8.0**2), rel=0.01 + 0.03 * pitch)
    middles = np.linalg.norm(lines.mean(axis=1) - (3.0, -2.0), axis=1)
    assert np.all(middles < 20.0 + 1e-9)
    ends = np.linalg.norm(lines - (3.0, -2.0), axis=2)
    assert np.all((np.abs(ends - 20.0) < 0.01) | (np.abs(ends - 8.0) < 0.01))
    along = lines[:, 1] - lines[:, 0]
    along = along[np.linalg.norm(along, axis=1) > 1e-6]  # a line that only touches has no direction
    turned = np.degrees(np.arctan2(along[:, 0], along[:, 1])) - bearing
    np.testing.assert_allclose((turned + 90.0) % 180.0, 90.0, atol=1e-6)


def test_a_piece_narrower_than_the_pitch_may_have_no_line():
    assert hatching((circle((0.5, 0.0), 0.2, 36),), 0.0, 1.0).shape == (0, 2, 2)
