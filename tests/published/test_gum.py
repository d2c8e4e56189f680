"""Worked examples of the GUM and its Supplement 1, by both ways.

JCGM 100:2008, *Guide to the expression of uncertainty in measurement*: annex G (table G.2) and example H.1, end-gauge
calibration. JCGM 101:2008, *Supplement 1: Propagation of distributions using a Monte Carlo method*: clause 7.9.2,
examples 9.2 (additive model), 9.3 (mass calibration) and 9.4 (comparison loss, uncorrelated). Printed values are
from memory; those of H.1 and the intervals of 9.2 were checked against public reproductions, and where a closed form
exists it stands beside them.
"""

import math

import numpy as np
import pytest
from scipy.stats import ncx2
from scipy.stats import t as t_distribution

from magview.bench.sureness import agreement_words
from magview.physics.uncertainty.monte_carlo import MonteCarlo, compare, monte_carlo, numerical_tolerance
from magview.physics.uncertainty.propagation import Input, Linear, coverage_factor, propagate, propagate_each

TRIALS = 1_000_000


def half(name: str, estimate: float, half_width: float, distribution="rectangular", dof=math.inf) -> Input:
    return Input(name, estimate, half_width, "half-width", distribution, dof)


def both(model, inputs, probability=0.95, second_order=False) -> tuple[Linear, MonteCarlo]:
    linear = propagate(model, inputs, probability, second_order=second_order)
    drawn = monte_carlo(model, inputs, TRIALS, np.random.default_rng(20), probability)
    assert isinstance(drawn, MonteCarlo)
    return linear, drawn


# ---------------------------------------------------------------------- GUM


END_GAUGE = [
    Input("length of the standard [mm]", 50.000623, 25e-6, dof=18),
    Input("difference, mean of five [mm]", 215e-6, 5.8e-6, dof=24),
    Input("comparator, random [mm]", 0.0, 3.9e-6, dof=5),
    Input("comparator, systematic [mm]", 0.0, 6.7e-6, dof=8),
    half("expansion of the standard [1/°C]", 11.5e-6, 2e-6),
    Input("mean temperature from 20 °C [°C]", -0.1, 0.2),
    half("cyclic variation of temperature [°C]", 0.0, 0.5, "arcsine"),
    half("difference of expansion [1/°C]", 0.0, 1e-6, dof=50),
    half("difference of temperature [°C]", 0.0, 0.05, dof=2),
]


def end_gauge(x: np.ndarray) -> np.ndarray:
    standard, d, d_random, d_systematic, expansion, mean, cyclic, d_expansion, d_temperature = x
    d = d + d_random + d_systematic
    return standard + d - standard * (d_expansion * (mean + cyclic) + expansion * d_temperature)


def test_end_gauge_by_first_order():
    """Table H.1 and H.1.6: 50.000 838 mm, u_c = 32 nm, ν_eff = 16, k = 2.92, U = 93 nm for 99 %."""
    found = propagate(end_gauge, END_GAUGE, 0.99)
    nm = 1e6
    assert found.estimate == pytest.approx(50.000838, abs=5e-10)
    assert found.standard_uncertainty * nm == pytest.approx(32, abs=0.5)
    assert found.standard_uncertainty**2 * nm**2 == pytest.approx(1002, abs=1)
    assert int(found.dof) == 16
    # The example cuts the degrees of freedom down; interpolated, k is a little smaller.
    cut = coverage_factor(0.99, int(found.dof))
    assert cut == pytest.approx(2.92, abs=0.005) and 2.89 < found.coverage_factor < cut
    # The example multiplies rounded values: 2.92 × 32 nm = 93 nm.
    assert round(cut * round(found.standard_uncertainty * nm)) == 93
    assert cut * found.standard_uncertainty * nm == pytest.approx(93, abs=0.6)


def test_end_gauge_contributions():
    """Table H.1 [nm]: standard 25, difference 9.7, then 2.9 and 16.6; expansion and temperature nothing."""
    lines = [line.uncertainty * 1e6 for line in propagate(end_gauge, END_GAUGE, 0.99).budget]
    assert lines[0] == pytest.approx(25, abs=0.05)
    assert math.hypot(*lines[1:4]) == pytest.approx(9.7, abs=0.05)
    assert lines[4:7] == pytest.approx([0, 0, 0], abs=1e-3)
    assert lines[7] == pytest.approx(2.9, abs=0.05)
    assert lines[8] == pytest.approx(16.6, abs=0.05)
    # u(θ) = 0.41 °C of the mean's 0.2 °C and of a cycle of ±0.5 °C, whose arcsine gives 0.35 °C (H.1.3.4).
    temperature = [item.standard_uncertainty for item in END_GAUGE[5:7]]
    assert temperature[1] == pytest.approx(0.35, abs=0.005)
    assert math.hypot(*temperature) == pytest.approx(0.41, abs=0.005)


def test_end_gauge_by_second_order():
    """H.1.7: two terms of second order, 11.7 nm and 1.7 nm, raise u_c from 32 nm to 34 nm."""
    first = propagate(end_gauge, END_GAUGE, 0.99)
    second = propagate(end_gauge, END_GAUGE, 0.99, second_order=True)
    assert second.standard_uncertainty * 1e6 == pytest.approx(34, abs=0.5)
    # l_S·u(δα)·u(θ) and l_S·u(α_S)·u(δθ), the only mixed derivatives that are not 0.
    terms = [50e6 * 1e-6 / math.sqrt(3) * math.hypot(0.2, 0.5 / math.sqrt(2)), 50e6 * 2e-6 * 0.05 / 3]
    assert terms == pytest.approx([11.7, 1.7], abs=0.06)
    added = second.standard_uncertainty**2 - first.standard_uncertainty**2
    assert added * 1e12 == pytest.approx(terms[0] ** 2 + terms[1] ** 2, rel=1e-4)
    assert second.dof == first.dof


@pytest.mark.parametrize(
    ("dof", "percent", "printed"),
    [
        (1, 95.0, 12.71),
        (2, 68.27, 1.32),
        (5, 99.0, 4.03),
        (10, 95.0, 2.23),
        (16, 99.0, 2.92),
        (50, 95.45, 2.05),
        (math.inf, 68.27, 1.000),
        (math.inf, 95.0, 1.960),
        (math.inf, 95.45, 2.000),
        (math.inf, 99.73, 3.000),
    ],
)
def test_coverage_factors(dof, percent, printed):
    """Table G.2."""
    assert coverage_factor(percent / 100, dof) == pytest.approx(printed, abs=0.006)


# ---------------------------------------------------------------------- Supplement 1


@pytest.mark.parametrize(
    ("u", "digits", "tolerance"), [(0.00035, 2, 0.000005), (0.00035, 1, 0.00005), (2.0, 1, 0.5), (0.996, 2, 0.05)]
)
def test_numerical_tolerance(u, digits, tolerance):
    """7.9.2, examples 1 to 3; a u of 0.996 is 1.0 to two digits."""
    assert numerical_tolerance(u, digits) == pytest.approx(tolerance, rel=1e-12)


def additive(x: np.ndarray) -> np.ndarray:
    return x.sum(axis=0)


def test_four_normal_inputs():
    """9.2.2: ±3.92 both ways."""
    linear, drawn = both(additive, [Input(f"X{i}", 0.0, 1.0) for i in range(4)])
    assert linear.standard_uncertainty == pytest.approx(2.0, abs=1e-9)
    assert linear.interval == pytest.approx((-3.92, 3.92), abs=0.005)
    assert drawn.standard_uncertainty == pytest.approx(2.0, abs=0.007)
    assert drawn.symmetric == pytest.approx((-3.92, 3.92), abs=0.02)
    assert compare(linear, drawn).agree
    assert compare(linear, drawn).enough_trials


def test_four_rectangular_inputs():
    """9.2.3: ±3.88 by Monte Carlo, exactly ±2√3(2 − ⁴√0.6); ±3.92 by the GUM, which two digits let pass."""
    linear, drawn = both(additive, [half(f"X{i}", 0.0, math.sqrt(3)) for i in range(4)])
    exact = 2 * math.sqrt(3) * (2 - 0.6**0.25)
    assert exact == pytest.approx(3.88, abs=0.005)
    assert linear.interval == pytest.approx((-3.92, 3.92), abs=0.005)
    # The ends' own standard error, four times: the exact ones lie within.
    assert drawn.symmetric == pytest.approx((-exact, exact), abs=4 * max(drawn.endpoint_error))
    assert max(drawn.endpoint_error) < 0.005
    assert drawn.shortest == pytest.approx((-exact, exact), abs=0.05)
    assert compare(linear, drawn).agree


def test_four_rectangular_inputs_of_which_one_is_wide():
    """9.2.4: one of them ten times as wide: ±17.0 by Monte Carlo, ±19.9 by the GUM, and they do not agree."""
    linear, drawn = both(additive, [half(f"X{i}", 0.0, math.sqrt(3) * w) for i, w in enumerate((1, 1, 1, 10))])
    assert linear.standard_uncertainty == pytest.approx(10.1, abs=0.05)
    assert linear.interval == pytest.approx((-19.9, 19.9), abs=0.05)
    assert drawn.symmetric == pytest.approx((-17.0, 17.0), abs=0.06)
    found = compare(linear, drawn)
    assert not found.agree
    assert "disagree" in agreement_words(found)


MASS = [
    Input("reference weight [mg]", 100_000.0, 0.050),
    Input("added small weight [mg]", 1.234, 0.020),
    Input.between("density of air [kg/m³]", 1.10, 1.30),
    Input.between("density of the weight [kg/m³]", 7000.0, 9000.0),
    Input.between("density of the reference [kg/m³]", 7950.0, 8050.0),
]


def mass_deviation(x: np.ndarray) -> np.ndarray:
    reference, added, air, weight, own = x
    return (reference + added) * (1 + (air - 1.2) * (1 / weight - 1 / own)) - 100_000.0


def test_mass_calibration():
    """9.3, table 5: GUM 1.2340, 0.0539, [1.1285, 1.3395]; second order 0.0750, [1.0870, 1.3810]; Monte Carlo 1.2341,
    0.0754, [1.0834, 1.3825]. First order fails, second order holds to one digit."""
    first, drawn = both(mass_deviation, MASS)
    second = propagate(mass_deviation, MASS, second_order=True)
    assert first.estimate == pytest.approx(1.2340, abs=5e-5)
    assert first.standard_uncertainty == pytest.approx(0.0539, abs=6e-5)
    assert first.interval == pytest.approx((1.1285, 1.3395), abs=1e-4)
    assert second.standard_uncertainty == pytest.approx(0.0750, abs=6e-5)
    assert second.interval == pytest.approx((1.0870, 1.3810), abs=1e-4)
    assert drawn.mean == pytest.approx(1.2341, abs=4e-4)
    assert drawn.standard_uncertainty == pytest.approx(0.0754, abs=3e-4)
    assert drawn.symmetric == pytest.approx((1.0834, 1.3825), abs=2e-3)
    assert not compare(first, drawn, significant_digits=1).agree
    assert compare(second, drawn, significant_digits=1).agree


@pytest.mark.parametrize(
    ("x1", "estimate", "u", "u_first"), [(0.0, 50, 50, 0), (0.010, 150, 112, 100), (0.050, 2550, 502, 500)]
)
def test_comparison_loss(x1, estimate, u, u_first):
    """9.4, table 6, in units of 1e-6: δY = X₁² + X₂² about (x₁, 0) with u = 0.005. First order misses the bias
    everywhere and at x₁ = 0 the uncertainty too; exactly, δY/u² is a noncentral χ² with two degrees of freedom."""
    inputs = [Input("X1", x1, 0.005), Input("X2", 0.0, 0.005)]
    linear, drawn = both(lambda x: (x**2).sum(axis=0) * 1e6, inputs)
    second = propagate(lambda x: (x**2).sum(axis=0) * 1e6, inputs, second_order=True)
    assert linear.standard_uncertainty == pytest.approx(u_first, abs=0.5)
    assert second.standard_uncertainty == pytest.approx(u, abs=0.5)
    assert drawn.mean == pytest.approx(estimate, abs=2)
    assert drawn.standard_uncertainty == pytest.approx(u, abs=1.5)
    exact = [25.0 * ncx2.ppf(p, 2, max((x1 / 0.005) ** 2, 1e-12)) for p in (0.025, 0.975)]
    assert drawn.symmetric == pytest.approx(exact, abs=5 * max(drawn.endpoint_error))
    assert not compare(linear, drawn, significant_digits=1).agree


def test_comparison_loss_at_zero_has_an_exponential_s_shortest_interval():
    """9.4, table 6: [0, 150]·1e-6; exactly 2u²·ln 20 = 149.8·1e-6."""
    inputs = [Input("X1", 0.0, 0.005), Input("X2", 0.0, 0.005)]
    _, drawn = both(lambda x: (x**2).sum(axis=0) * 1e6, inputs)
    assert drawn.shortest == pytest.approx((0.0, 50 * math.log(20)), abs=1.0)


# ---------------------------------------------------------------------- GUM H.2 and H.3: correlated inputs

IMPEDANCE = [
    Input("voltage [V]", 4.9990, 0.0032),
    Input("current [A]", 19.661e-3, 0.0095e-3),
    Input("phase [rad]", 1.04446, 0.00075),
]
IMPEDANCE_R = [[1.0, -0.36, 0.86], [-0.36, 1.0, -0.65], [0.86, -0.65, 1.0]]


def impedance(x: np.ndarray) -> np.ndarray:
    v, i, phi = x
    return np.stack([v / i * np.cos(phi), v / i * np.sin(phi), v / i])


def test_simultaneous_resistance_and_reactance():
    """H.2, tables H.3 and H.4: R 127.732, X 219.847, |Z| 254.260 Ω; 0.071, 0.295, 0.236 Ω; their correlations."""
    found = propagate_each(impedance, IMPEDANCE, correlation=IMPEDANCE_R)
    assert [f.estimate for f in found] == pytest.approx([127.732, 219.847, 254.260], abs=6e-4)
    assert [f.standard_uncertainty for f in found] == pytest.approx([0.071, 0.295, 0.236], abs=1.5e-3)
    rows = np.array([[line.sensitivity * line.input.spread for line in f.budget] for f in found])
    covariance = rows @ np.array(IMPEDANCE_R) @ rows.T
    scale = np.sqrt(np.diag(covariance))
    r = covariance / np.outer(scale, scale)
    # From the printed, rounded correlations of V, I and φ.
    assert [r[0, 1], r[0, 2], r[1, 2]] == pytest.approx([-0.588, -0.485, 0.993], abs=0.02)


def test_correlated_draws_agree_with_propagation():
    linear = propagate(lambda x: impedance(x)[1], IMPEDANCE, correlation=IMPEDANCE_R)
    drawn = monte_carlo(
        lambda x: impedance(x)[1], IMPEDANCE, TRIALS, np.random.default_rng(2), correlation=IMPEDANCE_R
    )
    assert isinstance(drawn, MonteCarlo)
    assert drawn.standard_uncertainty == pytest.approx(linear.standard_uncertainty, rel=5e-3)
    assert drawn.mean == pytest.approx(linear.estimate, abs=5e-3)


def test_calibration_line_at_thirty_degrees():
    """H.3, table H.6: intercept −0.1712(29) °C, slope 0.002 18(67), r −0.930; at 30 °C −0.1494 °C with 0.0041 °C and
    9 degrees of freedom."""
    t = np.array([21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.010, 26.511]) - 20.0
    b = np.array([-171, -169, -166, -159, -164, -165, -156, -157, -159, -161, -160]) / 1000.0
    (slope, intercept), covariance = np.polyfit(t, b, 1, cov=True)
    u = np.sqrt(np.diag(covariance))
    r = covariance[0, 1] / u[0] / u[1]
    assert (round(intercept, 4), round(slope, 5), round(r, 3)) == (-0.1712, 0.00218, -0.930)
    inputs = [Input("intercept", intercept, u[1], dof=9), Input("slope", slope, u[0], dof=9)]
    found = propagate(lambda x: x[0] + x[1] * 10.0, inputs, correlation=[[1.0, r], [r, 1.0]])
    assert found.estimate == pytest.approx(-0.1494, abs=6e-5)
    assert found.standard_uncertainty == pytest.approx(0.0041, abs=6e-5)
    assert found.dof == pytest.approx(9.0)


@pytest.mark.parametrize(
    ("r", "says"),
    [
        ([[1.0, 0.5], [0.4, 1.0]], "symmetric"), ([[1.0, 1.5], [1.5, 1.0]], "symmetric"), ([[1.0]], "symmetric"),
        ([[2.0, 0.0], [0.0, 1.0]], "symmetric"), ([[1.0, 0.5], [0.5, 1.0]], "must be normal"),
    ],
)  # fmt: skip
def test_what_are_no_correlations_is_refused(r, says):
    with pytest.raises(ValueError, match=says):
        propagate(lambda x: x[0] + x[1], [Input("a", 1.0, 0.1), half("b", 1.0, 0.1)], correlation=r)


def test_degrees_of_freedom_are_not_cut_down():
    """G.4.1, note 1: a broken number may be interpolated; Student's t by scipy."""
    found = propagate(lambda x: x[0] + x[1], [Input("a", 0.0, 1.0, dof=18.9987), Input("b", 0.0, 1e-9)], 0.95)
    assert found.coverage_factor == pytest.approx(float(t_distribution.ppf(0.975, 18.9987)), rel=1e-9)


# ---------------------------------------------------------------------- JCGM 106:2012, probability of conformity


def test_one_sided_tolerance_of_a_breakdown_voltage():
    """7.4, example: y = −5.47 V, u = 0.05 V, upper limit −5.40 V: p = Φ(1.40) = 0.92 (from memory)."""
    found = propagate(lambda x: x[0], [Input("voltage [V]", -5.47, 0.05)])
    assert found.probability_between(-math.inf, -5.40) == pytest.approx(0.92, abs=0.005)


def test_two_sided_tolerance_of_a_kinematic_viscosity():
    """7.5, example: 12.5 to 16.3 mm²/s, y = 13.6, u = 1.8: p = Φ(1.5) − Φ(−0.61) = 0.66 (from memory)."""
    found = propagate(lambda x: x[0], [Input("viscosity [mm²/s]", 13.6, 1.8)])
    assert found.probability_between(12.5, 16.3) == pytest.approx(0.66, abs=0.005)
