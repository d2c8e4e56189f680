"""Rates of wear against lines, simulated inspections and magnetos worn by as much."""

import math
import re

import numpy as np
import pytest
from scipy import stats

from magview.physics.cam.setting import InternalTiming
from magview.physics.wear.inspection import Inspection
from magview.physics.wear.prediction import WearRates, worn
from magview.physics.wear.rates import estimate_rates, hidden_mm_per_100h
from tests.counts import sampled
from tests.physics.wear.steady import RATES, RATIO, steady
from tests.wording import says


def seen(hours, gap, half=0.0127, **opening) -> Inspection:
    return Inspection(hours, gap, half, **opening)


def test_two_gaps_on_a_line():
    """0.25 mm and 0.20 mm, 100 h apart, each ±0.0127 mm: 0.05 mm/100 h; u = √2·0.0127/√3 over 100 h."""
    found = estimate_rates(steady(), 0.0, [seen(50.0, 0.25), seen(150.0, 0.20)])
    assert found.closing.mm_per_100h == pytest.approx(0.05)
    half = 1.959964 * math.sqrt(2 / 3) * 0.0127
    assert (found.closing.low, found.closing.high) == pytest.approx((0.05 - half, 0.05 + half), rel=1e-6)
    assert found.heel is None
    assert found.pip is None
    all_heel = found.closing.scaled(1 / RATIO)
    assert all_heel.mm_per_100h == pytest.approx(0.05 / RATIO)
    assert all_heel.high == pytest.approx(found.closing.high / RATIO)


def test_one_wrong_reading_in_five_widens_the_interval_until_it_holds_the_truth():
    hours = (0.0, 100.0, 200.0, 300.0, 400.0)
    line = [seen(h, 0.30 - 0.0002 * h, 0.001) for h in hours]
    spoilt = [*line[:4], seen(400.0, 0.30, 0.001)]
    right = estimate_rates(steady(), 0.0, line).closing
    assert right.mm_per_100h == pytest.approx(0.02)
    found = estimate_rates(steady(), 0.0, spoilt).closing
    # Least squares, spread from the scatter, Student's t with 3 degrees of freedom: against a statistics library.
    by_scipy = stats.linregress(hours, [-s.gap_mm for s in spoilt])
    assert found.mm_per_100h == pytest.approx(100 * by_scipy.slope)
    assert found.high - found.mm_per_100h == pytest.approx(100 * by_scipy.stderr * stats.t.ppf(0.975, 3))
    assert found.low < 0.02 < found.high and found.high - found.low > 10 * (right.high - right.low)


@pytest.mark.parametrize("count", sampled([2, 3, 5, 8], 1))
def test_the_interval_holds_the_truth_as_often_as_it_says(count):
    """2,000 simulated histories with rectangular readings: at least 95 % less three standard errors; a bounded sum of
    two is held more often than a normal one."""
    rng, hours, true = np.random.default_rng(4), np.linspace(0.0, 400.0, count), 0.03
    held = 0
    for _ in range(2000):
        gaps = 0.4 - true / 100 * hours + rng.uniform(-0.0127, 0.0127, count)
        rate = estimate_rates(steady(), 0.0, [seen(h, g) for h, g in zip(hours, gaps, strict=True)]).closing
        held += rate.low <= true <= rate.high
    assert held / 2000 > 0.95 - 3 * math.sqrt(0.95 * 0.05 / 2000)


def test_scatter_larger_than_the_readings_explain_widens_the_interval():
    rng, hours = np.random.default_rng(4), np.linspace(0.0, 400.0, 12)
    off = rng.normal(0.0, 0.02, 12)
    tight, wide = (
        estimate_rates(
            steady(), 0.0, [seen(h, 0.4 - 0.0003 * h + s * o, 0.001) for h, o in zip(hours, off, strict=True)]
        )
        for s in (0.0, 1.0)
    )
    assert tight.closing.high - tight.closing.low == pytest.approx(
        2 * 1.959964 * 100 * 0.001 / math.sqrt(3) / np.sqrt(((hours - 200) ** 2).sum()), rel=1e-6
    )
    assert wide.closing.high - wide.closing.low > 10 * (tight.closing.high - tight.closing.low)
    assert wide.closing.low < 0.03 < wide.closing.high


def test_openings_tell_heel_from_pip():
    """Inspections of a magneto worn step by step, read without error: both rates come back."""
    magneto, plate, screw = steady(condition={"heel_wear_mm": 0.01, "pip_height_mm": 0.005}), 0.5, 4.0
    inspections = []
    for hours in (0.0, 120.0, 210.0, 300.0):
        read = InternalTiming(worn(magneto, RATES, hours)).readings(plate, screw)
        inspections.append(
            seen(
                hours,
                float(read.blade_gap_mm[0]),
                0.005,
                opening_error_deg=float(read.e_gap_error_deg[0]),
                opening_half_width_deg=0.2,
            )
        )
    found = estimate_rates(magneto, plate, inspections)
    assert found.closing.mm_per_100h == pytest.approx(0.02 * RATIO + 0.015, rel=1e-6)
    assert found.heel.mm_per_100h == pytest.approx(0.02, rel=1e-6)
    assert found.pip.mm_per_100h == pytest.approx(0.015, rel=1e-5)
    assert found.heel.low < 0.02 < found.heel.high
    lift_half = (found.heel.high - found.heel.low) / 2 * RATIO
    gap_half = (found.closing.high - found.closing.low) / 2
    assert (found.pip.high - found.pip.low) / 2 == pytest.approx(math.hypot(lift_half, gap_half))


@pytest.mark.parametrize("hours", [(), (10.0,), (10.0, 10.0)])
def test_a_rate_takes_two_different_hours(hours):
    with pytest.raises(ValueError, match="two different hours"):
        estimate_rates(steady(), 0.0, [seen(h, 0.2) for h in hours])


@pytest.mark.parametrize(
    ("reading", "told"),
    [
        ({"hours": -1.0}, "hours lie between 0 and 100000"),
        ({"hours": 100_001.0}, "an inspection at 100001 h"),
        ({"hours": math.nan}, "hours lie between"),
        ({"gap_mm": -0.01}, says("the gap is {value} mm; it must lie between 0 and 100", value=-0.01)),
        ({"gap_mm": 101.0}, "the gap is 101 mm"),
        ({"gap_half_width_mm": -0.01}, "the gap's half-width is -0.01 mm"),
        ({"gap_half_width_mm": math.inf}, "the gap's half-width is inf mm"),
        ({"opening_error_deg": 91.0}, says("the opening's error is {value}°; it must lie within 90°", value=91)),
        ({"opening_error_deg": math.nan}, "the opening's error is nan°"),
        ({"opening_half_width_deg": -91.0}, "the opening's half-width is -91°"),
    ],
)
def test_an_inspection_that_cannot_be_is_refused(reading, told):
    with pytest.raises(ValueError, match=re.escape(told)):
        Inspection(**{"hours": 50.0, "gap_mm": 0.2, "gap_half_width_mm": 0.01, **reading})


def test_an_inspection_at_the_very_limits_is_taken():
    seen = Inspection(100_000.0, 100.0, 100.0, -90.0, 90.0)
    assert Inspection(0.0, 0.0, 0.0) != seen and seen.opening_error_deg == -90.0


def test_wear_that_burning_hides_leaves_gap_and_opening_where_they_are():
    """Second method: a magneto worn by both reads as one that is not worn."""
    magneto, faces = steady(), 0.01
    hidden = hidden_mm_per_100h(magneto, faces)
    both = InternalTiming(worn(magneto, WearRates(hidden, 0.0, faces), 300.0)).readings(0.0, 0.0)
    new = InternalTiming(magneto).readings(0.0, 0.0)
    np.testing.assert_allclose(both.max_gap_mm, new.max_gap_mm, atol=1e-9)
    np.testing.assert_allclose(both.e_gap_error_deg, new.e_gap_error_deg, atol=1e-6)
