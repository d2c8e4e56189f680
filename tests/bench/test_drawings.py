"""Coupling and crank as drawn, against counts and closed forms."""

from __future__ import annotations

import numpy as np
import pytest
import shapely

from magview.bench.crank_end import crank_end, crank_pose, disc_point
from magview.bench.drive_end import DISC_IN_MM, DISC_OUT_MM, drive_end
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
