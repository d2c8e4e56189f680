"""The map of settings against single readings, one setting at a time."""

from __future__ import annotations

from itertools import product

import numpy as np
import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from magview.physics.cam.adjustment_map import AdjustmentMap, adjustment_map, way_deg
from magview.physics.cam.setting import InternalTiming, Readings, internal_timing
from magview.spec.library import find_magneto, shipped_names
from magview.spec.magneto import Magneto
from tests.counts import examples, sampled
from tests.magnetos import build, magnetos

SHIPPED = shipped_names("magnetos")


def one_by_one(timing: InternalTiming, plate: np.ndarray, screw: np.ndarray) -> list[list[Readings]]:
    return [[timing.readings(float(b), float(s)) for s in screw] for b in plate]


def compare(timing: InternalTiming, plate: np.ndarray, screw: np.ndarray) -> AdjustmentMap:
    """The map of a grid, after comparing it with every setting read alone."""
    found, alone = adjustment_map(timing, plate, screw), one_by_one(timing, plate, screw)
    error = np.array([[r.e_gap_error_deg[0] for r in row] for row in alone])
    np.testing.assert_allclose(found.error_deg, error, rtol=0, atol=1e-11 / min(timing.ratio, 1.0))
    np.testing.assert_array_equal(found.gap_mm, [[r.max_gap_mm[0] for r in row] for row in alone])
    np.testing.assert_array_equal(found.within_limits, [[bool(r.within_limits) for r in row] for row in alone])
    first = [[bool(r.timing_ok[0] and r.gap_ok[0]) for r in row] for row in alone]
    np.testing.assert_array_equal(found.lobe_1_ok, first)
    return found


def axes(magneto: Magneto, plates: int, screws: int) -> tuple[np.ndarray, np.ndarray]:
    return (
        np.linspace(*magneto.backplate.range_deg, plates),
        np.linspace(*magneto.contact_screw.range_deg, screws),
    )


def worn(magneto: Magneto, seed: int) -> Magneto:
    """The same with a worn heel (where the arm is known) and lobes of uneven height and place."""
    rng, lobes = np.random.default_rng(seed), len(magneto.cam.lobe_peaks_deg)
    condition = {
        "heel_wear_mm": 0.02 if magneto.breaker.heel_arm_mm else 0.0,
        "lobe_lift_error_mm": tuple(rng.uniform(-0.015, 0.015, lobes)),
        "lobe_angle_error_deg": tuple(rng.uniform(-0.3, 0.3, lobes)),
    }
    return magneto.model_copy(update={"condition": magneto.condition.model_copy(update=condition)})


@pytest.mark.parametrize(("name", "wear"), sampled(product(SHIPPED, [None, 1, 2]), 5))
def test_shipped_magnetos_new_and_worn(name, wear):
    magneto = find_magneto(name) if wear is None else worn(find_magneto(name), wear)
    timing = internal_timing(magneto)
    found = compare(timing, *axes(magneto, 23, 29))
    assert found.lobe_1_ok.any() and not found.lobe_1_ok.all()
    # Finer about the designed setting, where all limits meet.
    centre = timing.adjust(magneto.designed_setting.gap_mm)
    plate = (centre.backplate_deg if centre.reachable else 0.0) + np.linspace(-2, 2, 21)
    screw = (centre.screw_deg if centre.reachable else 0.0) + np.linspace(-12, 12, 21)
    assert compare(timing, plate, screw).within_limits.any()


@settings(max_examples=examples(60))
@given(magnetos(), st.integers(1, 5), st.integers(1, 7))
def test_magnetos_of_every_kind(magneto, plates, screws):
    """Worn or not, lobes in error, screws that leave contacts ajar or shut."""
    compare(InternalTiming(magneto), *axes(magneto, plates, screws))


def test_settings_on_the_very_limit_are_judged_as_alone():
    """Gaps at the limits and plates that put the straightedge on the mark's edge, a last bit to either side."""
    for errors in ((0.0,) * 4, (0.0, 0.2, -0.1, 0.0)):
        timing = InternalTiming(build(condition={"lobe_angle_error_deg": errors}))
        reach = np.degrees(np.arctan(0.8 / 36.0))
        plate, screw = [], []
        for gap in (0.1, 0.4):
            setting = timing.adjust(gap)
            assert setting.reachable
            screw += [setting.screw_deg + k * 1e-15 for k in range(-8, 9, 4)]
            for edge in (-reach, reach, reach - 0.2, 0.1 - reach):
                plate += [setting.backplate_deg + edge + k * 1e-15 for k in range(-20, 21, 5)]
        found = compare(timing, np.array(plate), np.array(screw))
        assert found.lobe_1_ok.any() and found.within_limits.any()
        # Some neighbours a hair apart do differ, or the edge was not met.
        assert np.any(np.diff(found.within_limits, axis=0) & (np.abs(np.diff(found.backplate_deg)) < 1e-12)[:, None])


def test_lobe_1_may_pass_where_another_fails():
    high = {"lobe_lift_error_mm": (0.0, 0.1, 0.0, 0.0)}
    timing = InternalTiming(build(gap_limits_mm=(0.2, 0.3), condition=high))
    found = compare(timing, np.array([0.0]), np.array([0.0, 4.0]))
    assert found.lobe_1_ok.all() and not found.within_limits.any()
    # Also where its straightedge lies on the mark's very edge and the setting is judged alone.
    edge = float(np.degrees(np.arctan(0.8 / 36.0)))
    on_edge = compare(timing, np.array([s * edge + k * 1e-15 for s in (-1, 1) for k in (-8, 0, 8)]), np.array([0.0]))
    assert on_edge.lobe_1_ok.any() and not on_edge.lobe_1_ok.all() and not on_edge.within_limits.any()


def test_screws_that_leave_the_contacts_ajar_or_shut():
    screw = {"kind": "threaded", "lead_mm": 1.0, "range_deg": (-720.0, 720.0), "positive_is_clockwise": True}
    timing = InternalTiming(build(contact_screw=screw, condition={"lobe_lift_error_mm": (0.0, 0.1, 0.0, 0.0)}))
    # Ajar; as designed; lobe 2 alone opens; shut.
    found = compare(timing, np.array([-1.0, 0.0, 1.0]), np.array([-400.0, 0.0, 108.0, 400.0]))
    assert np.isnan(found.error_deg).any(axis=0).tolist() == [True, False, True, True]
    assert np.isnan(found.e_gap_backplate_deg).tolist() == [True, False, True, True]
    assert not found.lobe_1_ok[:, [0, 2, 3]].any()


@settings(max_examples=examples(60))
@given(magnetos(), st.floats(0, 1))
def test_the_curve_of_the_e_gap_opens_there(magneto, share):
    timing = InternalTiming(magneto)
    low, high = magneto.contact_screw.range_deg
    screw = np.array([low + share * (high - low)])
    plate = adjustment_map(timing, [0.0], screw).e_gap_backplate_deg
    assume(np.isfinite(plate[0]))
    read = timing.readings(plate, screw)
    assert read.e_gap_error_deg[0, 0] == pytest.approx(0.0, abs=1e-9)


@settings(max_examples=examples(60))
@given(magnetos(), st.floats(0.05, 0.95))
def test_every_adjustment_lies_on_the_curve(magneto, share):
    timing = InternalTiming(magneto)
    wanted = share * (timing.curve.top_mm + timing.lift_errors_mm[0])
    there = timing.adjust(wanted)
    assume(there.reachable)
    found = adjustment_map(timing, [there.backplate_deg], [there.screw_deg])
    assert found.e_gap_backplate_deg[0] == pytest.approx(there.backplate_deg, abs=1e-6)
    assert found.gap_mm[0, 0] == pytest.approx(wanted, abs=1e-9)


def test_the_way_moves_the_plate_and_then_the_screw():
    timing = InternalTiming(build())
    there = timing.adjust(0.3)
    corners = way_deg(-2.0, 5.0, there)
    assert corners == ((-2.0, 5.0), (there.backplate_deg, 5.0), (there.backplate_deg, there.screw_deg))
    # The first leg leaves the gap alone; the last corner has the gap asked for and opens at the E-gap.
    gaps = [float(timing.readings(*corner).max_gap_mm[0]) for corner in corners]
    assert gaps == pytest.approx([gaps[0], gaps[0], 0.3], abs=1e-12)
    assert float(timing.readings(*corners[2]).e_gap_error_deg[0]) == pytest.approx(0.0, abs=1e-9)


def test_no_way_leads_out_of_reach():
    there = InternalTiming(build(backplate={"range_deg": (-1.0, 1.0)})).adjust(0.35)
    assert not there.reachable
    with pytest.raises(ValueError, match="out of reach"):
        way_deg(0.0, 0.0, there)


def test_refuses_what_is_no_axis():
    timing = InternalTiming(build())
    with pytest.raises(ValueError, match=r"backplate_deg has shape \(\); an axis"):
        adjustment_map(timing, 0.0, [0.0])
    with pytest.raises(ValueError, match="screw_deg holds a value that is not finite"):
        adjustment_map(timing, [0.0], [0.0, np.nan])


def test_the_axes_are_the_map_s_own():
    plate = np.array([0.0, 1.0])
    found = adjustment_map(InternalTiming(build()), plate, [0.0])
    plate[0] = 5.0
    assert found.backplate_deg.tolist() == [0.0, 1.0]
