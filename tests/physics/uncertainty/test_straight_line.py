"""A straight line with a level for every setting: against a statistics library and general least squares."""

from __future__ import annotations

import numpy as np
import pytest
from scipy import stats

from magview.physics.uncertainty.straight_line import straight_line
from tests.benchmarks.calibration import (
    blades,
    drift_coverage,
    normal,
    rectangular,
    unknown,
    wear_coverage,
)
from tests.counts import sampled


def test_one_setting_with_unknown_spread_is_ordinary_least_squares_and_student_s_t():
    hours, y = np.array([0.0, 50.0, 80.0, 200.0, 260.0]), np.array([1.0, 1.4, 0.7, 2.1, 1.9])
    line, by_scipy = straight_line(hours, y, 1e-6), stats.linregress(hours, y)
    assert line is not None and line.dof == 3.0
    assert (line.slope, line.slope_u) == pytest.approx((by_scipy.slope, by_scipy.stderr))
    assert float(line.value(0.0)) == pytest.approx(by_scipy.intercept)
    assert float(line.value_u(0.0)) == pytest.approx(by_scipy.intercept_stderr)
    assert line.factor(0.95) == pytest.approx(stats.t.ppf(0.975, 3))


def test_as_long_as_the_stated_errors_explain_the_scatter_they_are_believed():
    hours, y = np.array([0.0, 100.0, 200.0]), np.array([0.0, 0.1, 0.2])
    line = straight_line(hours, y, 0.3)
    assert line is not None and np.isinf(line.dof) and line.scatter == 1.0
    assert line.slope_u == pytest.approx(0.3 / 3**0.5 / np.sqrt(((hours - 100.0) ** 2).sum()))
    assert line.factor(0.95) == pytest.approx(1.959964, abs=1e-6)


def test_less_sure_readings_count_less():
    """Weighted means of two readings each, as 1/u²: any textbook's."""
    line = straight_line([0.0, 0.0, 100.0, 100.0], [0.0, 1.0, 2.0, 2.0], [1.0, 2.0, 1.0, 1.0])
    assert line is not None
    assert line.slope == pytest.approx((2.0 - (4.0 * 0.0 + 1.0 * 1.0) / 5.0) / 100.0)


@pytest.mark.parametrize("hours", [[], [10.0], [10.0, 10.0]])
def test_no_line_without_two_hours_of_one_setting(hours):
    assert straight_line(hours, [1.0] * len(hours), 0.1) is None
    assert straight_line([0.0, 100.0], [1.0, 2.0], 0.1, [0, 1]) is None, "each alone in its setting"


# A short run of the benchmark: bounds of some four standard errors at 300 histories.


@pytest.mark.parametrize(("kind", "draw"), [("gap", blades), ("opening", rectangular), ("firing", normal)])
@pytest.mark.parametrize("sheets", [2, 6])
def test_what_is_said_of_drift_holds_as_often_as_it_says(kind, draw, sheets):
    held = drift_coverage(300, 7, kind, sheets, draw)
    assert 0.90 <= held["slope"] <= 0.995 and 0.90 <= held["next reading"] <= 0.995
    assert held["safe date"] >= 0.95


def test_it_holds_too_where_nobody_said_how_well_they_read():
    held = drift_coverage(300, 7, "gap", 4, unknown)
    assert 0.90 <= held["slope"] <= 0.995 and 0.90 <= held["next reading"] <= 0.995
    assert held["safe date"] >= 0.95


@pytest.mark.parametrize(("inspections", "draw"), sampled([(2, rectangular), (3, unknown), (5, normal)], 1))
def test_what_is_said_of_wear_holds_as_often_as_it_says(inspections, draw):
    held = wear_coverage(200, 7, inspections, draw, draw)
    assert all(share >= 0.88 for share in held.values()) and held["closing"] <= 0.995
