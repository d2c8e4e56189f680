"""Linear propagation and Monte Carlo: against closed forms, definitions by rank, and scipy's distributions."""

import math

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy import stats

from magview.bench.sureness import agreement_words
from magview.physics.uncertainty.monte_carlo import (
    Cancelled,
    MonteCarlo,
    compare,
    monte_carlo,
    numerical_tolerance,
    sample,
    summarise,
)
from magview.physics.uncertainty.propagation import Input, coverage_factor, propagate, propagate_each
from tests.counts import examples

FORMS = {
    "normal": (Input("x", 2.0, 0.3), stats.norm(2.0, 0.3)),
    "t": (Input("x", 2.0, 0.3, distribution="t", dof=5), stats.t(5, 2.0, 0.3)),
    "rectangular": (Input("x", 2.0, 0.3, "half-width", "rectangular"), stats.uniform(1.7, 0.6)),
    "triangular": (Input("x", 2.0, 0.3, "half-width", "triangular"), stats.triang(0.5, 1.7, 0.6)),
    "arcsine": (Input("x", 2.0, 0.3, "half-width", "arcsine"), stats.arcsine(1.7, 0.6)),
    "rectangular by its deviation": (Input("x", 2.0, 0.3, distribution="rectangular"), None),
}


# ---------------------------------------------------------------------- inputs


@pytest.mark.parametrize("form", [f for f in FORMS if FORMS[f][1] is not None])
def test_draws_have_the_form_they_should(form):
    """Kolmogorov–Smirnov: the largest distance of 20,000 draws exceeds 1.95/√n once in a thousand."""
    item, form_of = FORMS[form]
    out = np.empty(20_000)
    item.draw(np.random.default_rng(7), out)
    assert stats.kstest(out, form_of.cdf).statistic < 1.95 / math.sqrt(len(out))


@pytest.mark.parametrize("form", ["normal", "rectangular", "triangular", "arcsine"])
def test_standard_uncertainty_is_the_form_s_deviation(form):
    item, form_of = FORMS[form]
    assert item.standard_uncertainty == pytest.approx(form_of.std(), rel=1e-12)


def test_half_width_of_a_form_given_by_its_deviation():
    item = FORMS["rectangular by its deviation"][0]
    out = np.empty(50_000)
    item.draw(np.random.default_rng(1), out)
    assert item.standard_uncertainty == 0.3
    assert np.abs(out - 2.0).max() <= 0.3 * math.sqrt(3)
    assert np.abs(out - 2.0).max() > 0.299 * math.sqrt(3)


def test_between():
    item = Input.between("gap", 0.20, 0.25, "mm", "blades")
    assert (item.estimate, item.spread) == (pytest.approx(0.225), pytest.approx(0.025))
    assert (item.distribution, item.spread_is, item.unit, item.source) == (
        "rectangular",
        "half-width",
        "mm",
        "blades",
    )


def test_an_exact_input_draws_no_random_numbers():
    rng, other = np.random.default_rng(1), np.random.default_rng(1)
    out = np.empty(10)
    Input("x", 3.0, 0.0).draw(rng, out)
    assert np.all(out == 3.0)
    assert rng.random() == other.random()


@pytest.mark.parametrize(
    ("changes", "words"),
    [
        ({"spread": -1.0}, "no estimate"),
        ({"estimate": math.nan}, "no estimate"),
        ({"spread": math.inf}, "no estimate"),
        ({"dof": 0.5}, "at least 1"),
        ({"dof": math.nan}, "at least 1"),
        ({"spread_is": "half-width"}, "no half-width"),
        ({"distribution": "t"}, "needs its degrees of freedom"),
    ],
)
def test_numbers_that_make_no_distribution_are_refused(changes, words):
    with pytest.raises(ValueError, match=words):
        Input(**({"name": "x", "estimate": 1.0, "spread": 0.1} | changes))


# ---------------------------------------------------------------------- linear


def test_a_product_has_the_sum_of_relative_variances():
    """u²(ab)/(ab)² = u²(a)/a² + u²(b)/b² to first order; exactly with + u²(a)u²(b)/(ab)² (Goodman 1960)."""
    inputs = [Input("a", 3.0, 0.1, dof=4), Input("b", 5.0, 0.2, dof=9), Input("c", 1.0, 0.0)]
    first = propagate(lambda x: x[0] * x[1] * x[2], inputs)
    relative = math.hypot(0.1 / 3, 0.2 / 5)
    assert first.standard_uncertainty == pytest.approx(15 * relative, rel=1e-9)
    assert [line.sensitivity for line in first.budget] == pytest.approx([5, 3, 0], rel=1e-9)
    assert [line.share for line in first.budget] == pytest.approx([0.25 / 0.61, 0.36 / 0.61, 0], rel=1e-9)
    second = propagate(lambda x: x[0] * x[1] * x[2], inputs, second_order=True)
    assert second.standard_uncertainty**2 == pytest.approx(0.61 + 0.1**2 * 0.2**2, rel=1e-9)
    assert sum(line.share for line in second.budget) == pytest.approx(0.61 / 0.6104, rel=1e-9)
    # Welch–Satterthwaite by hand, and k there.
    dof = 0.61**2 / (0.25**2 / 4 + 0.36**2 / 9)
    assert first.dof == pytest.approx(dof, rel=1e-9)
    assert first.coverage_factor == pytest.approx(stats.t.ppf(0.975, dof), rel=1e-9)
    assert first.expanded_uncertainty == pytest.approx(first.coverage_factor * first.standard_uncertainty)


def test_second_order_of_powers():
    """Exact moments of normal inputs: var x² = 4x²u² + 2u⁴. Of sin x the note's terms are ½sin² − cos² times u⁴."""
    x, u = 1.3, 0.2
    square = propagate(lambda v: v[0] ** 2, [Input("x", x, u)], second_order=True)
    assert square.standard_uncertainty**2 == pytest.approx(4 * x**2 * u**2 + 2 * u**4, rel=1e-9)
    sine = propagate(lambda v: np.sin(v[0]), [Input("x", x, u)], second_order=True)
    more = (math.sin(x) ** 2 / 2 - math.cos(x) ** 2) * u**4
    assert sine.standard_uncertainty**2 == pytest.approx(math.cos(x) ** 2 * u**2 + more, rel=1e-4)


def test_second_order_terms_that_leave_no_variance_are_refused():
    with pytest.raises(ValueError, match="does not hold"):
        propagate(lambda v: v[0] - v[0] ** 3 / 6, [Input("x", 0.0, 2.0)], second_order=True)


def test_sensitivities_may_be_supplied():
    asked = []

    def model(x):
        asked.append(x.shape)
        return x[0] - 4 * x[1]

    inputs = [Input("a", 1.0, 0.3), Input("b", 2.0, 0.1)]
    given_slopes = propagate(model, inputs, sensitivities=[1.0, -4.0])
    found = propagate(model, inputs)
    assert given_slopes.standard_uncertainty == pytest.approx(0.5)
    assert found.standard_uncertainty == pytest.approx(0.5, rel=1e-9)
    assert given_slopes.estimate == -7.0
    assert given_slopes.matters_most.input.name == "b"
    assert len(asked) == 2  # once for each propagation: all points at a time


def test_several_quantities_are_those_taken_alone():
    inputs = [Input("a", 1.0, 0.3), Input("b", 2.0, 0.1, dof=3)]
    models = [lambda x: x[0] * x[1], lambda x: x[0] / x[1]]
    together = propagate_each(lambda x: np.stack([m(x) for m in models]), inputs, 0.9, second_order=True)
    assert together == tuple(propagate(m, inputs, 0.9, second_order=True) for m in models)


@settings(max_examples=examples(50))
@given(st.lists(st.tuples(st.floats(0.01, 5), st.floats(0.01, 3), st.integers(1, 60)), min_size=1, max_size=6))
def test_effective_degrees_of_freedom_lie_between_the_least_and_the_sum(rows):
    """GUM G.4.1, note 1."""
    inputs = [Input(f"x{i}", 0.0, u, dof=dof) for i, (_, u, dof) in enumerate(rows)]
    slopes = [(-1) ** i * c for i, (c, _, _) in enumerate(rows)]
    found = propagate(lambda x: np.array(slopes) @ x, inputs, sensitivities=slopes)
    dofs = [dof for _, _, dof in rows]
    assert min(dofs) * (1 - 1e-9) <= found.dof <= sum(dofs) * (1 + 1e-9)


def test_nothing_uncertain_is_certain():
    found = propagate(lambda x: x[0] + 1, [Input("x", 1.0, 0.0)])
    assert (found.standard_uncertainty, found.expanded_uncertainty, found.budget[0].share) == (0, 0, 0)
    assert math.isinf(found.dof)
    assert (found.probability_between(1.9, 2.1), found.probability_between(2.1, 3.0)) == (1.0, 0.0)


@pytest.mark.parametrize("dof", [3, math.inf])
def test_probability_between_limits(dof):
    found = propagate(lambda x: 2 * x[0], [Input("x", 1.0, 0.5, dof=dof)])
    form = stats.norm() if math.isinf(dof) else stats.t(3)
    assert found.probability_between(1.5, 4.0) == pytest.approx(form.cdf(2.0) - form.cdf(-0.5), rel=1e-9)
    assert found.probability_between(-math.inf, math.inf) == 1.0


@pytest.mark.parametrize(("probability", "dof"), [(0.0, 5), (1.0, 5), (0.95, 0.5), (math.nan, 5)])
def test_no_coverage_factor(probability, dof):
    with pytest.raises(ValueError, match="no coverage factor"):
        coverage_factor(probability, dof)


# ---------------------------------------------------------------------- Monte Carlo


def by_definition(values, probability):
    """JCGM 101 7.7 to the letter, with ranks counted from 1."""
    y = [math.nan, *sorted(values)]
    m = len(values)
    q = int(probability * m + 0.5)
    r = int((m - q) / 2 + 0.5)
    symmetric = (y[r], y[r + q])
    best = min(range(1, m - q + 1), key=lambda k: y[k + q] - y[k])
    return symmetric, y[best + q] - y[best]


@settings(max_examples=examples(100))
@given(st.integers(0, 2**32 - 1), st.integers(45, 400), st.sampled_from([0.3, 0.5, 0.68, 0.9, 0.95]))
def test_intervals_are_those_of_the_ranks(seed, count, probability):
    values = np.random.default_rng(seed).gamma(1.5, size=count)
    found = summarise(values.copy(), probability)
    symmetric, width = by_definition(values.tolist(), probability)
    assert found.symmetric == symmetric
    assert found.shortest[1] - found.shortest[0] == pytest.approx(width, rel=1e-12)
    assert found.mean == pytest.approx(np.mean(values))
    assert found.standard_uncertainty == pytest.approx(np.std(values, ddof=1))
    assert found.shortest[1] - found.shortest[0] <= found.symmetric[1] - found.symmetric[0] + 1e-12


def test_errors_of_the_ends_are_what_repeating_shows():
    """The ends of 200 runs scatter by what one run says of itself."""
    rng = np.random.default_rng(3)
    runs = [summarise(rng.standard_normal(4000)) for _ in range(200)]
    scatter = np.std([run.symmetric for run in runs], axis=0, ddof=1)
    said = np.mean([run.endpoint_error for run in runs], axis=0)
    np.testing.assert_allclose(said, scatter, rtol=0.2)  # 200 runs know a deviation to 5 %


def test_trials_without_a_number_are_outside_and_counted():
    values = np.r_[np.linspace(0.0, 1.0, 900), np.full(100, np.nan)]
    found = summarise(values, 0.9)
    assert (found.trials, found.failed) == (1000, 100)
    assert found.mean == pytest.approx(0.5)
    assert found.probability_between(-1.0, 2.0) == pytest.approx(0.9)
    assert found.probability_between(0.25, 0.75) == pytest.approx(0.45)
    assert found.probability_between(2.0, 3.0) == 0.0
    nothing = summarise(np.full(50, np.nan))
    assert nothing.failed == 50
    assert math.isnan(nothing.mean)
    assert nothing.probability_between(-1.0, 1.0) == 0.0
    for interval in (nothing.symmetric, nothing.shortest, nothing.endpoint_error):
        assert np.isnan(interval).tolist() == [True, True]
    assert (nothing.trials, nothing.probability) == (50, 0.95)
    with pytest.raises(ValueError, match="too few"):
        summarise(np.full(50, np.nan), 0.0)


def test_the_fewest_trials_for_an_interval():
    """Of 20 values one may stay out of 95 %: the symmetric interval takes all (JCGM 101 7.7), nothing is spare."""
    found = summarise(np.arange(20.0), 0.95)
    assert found.symmetric == found.shortest == (0.0, 19.0)
    assert found.endpoint_error == (0.0, 0.0)
    # Of 40 two may: an end may as well be its neighbour.
    assert summarise(np.arange(40.0), 0.95).endpoint_error == (0.5, 0.5)


@pytest.mark.parametrize(("count", "probability"), [(100, 0.5), (1000, 0.3), (1000, 0.1)])
def test_errors_of_evenly_spaced_ends_are_those_of_a_rank(count, probability):
    """A rank's own deviation is a binomial's, √(n·p·(1 − p)); values one apart make ranks of values."""
    tail = (1 - probability) / 2
    deviation = math.sqrt(count * tail * (1 - tail))
    found = summarise(np.random.default_rng(1).permutation(np.arange(float(count))), probability)
    assert found.endpoint_error == pytest.approx((deviation, deviation), abs=0.6)


@pytest.mark.parametrize(("count", "probability"), [(5, 0.95), (100, 0.999), (100, 0.0), (100, 1.0)])
def test_too_few_trials_for_the_interval(count, probability):
    with pytest.raises(ValueError, match="too few"):
        summarise(np.arange(float(count)), probability)


def test_the_same_generator_gives_the_same_values():
    inputs = [Input("a", 0.0, 1.0), Input.between("b", 0.0, 1.0)]
    one, other = (sample(lambda x: x[0] * x[1], inputs, 70_000, np.random.default_rng(5)) for _ in range(2))
    assert isinstance(one, np.ndarray)
    assert one.shape == (1, 70_000)
    np.testing.assert_array_equal(one, other)


def test_quantities_are_drawn_together():
    values = sample(lambda x: np.stack([x[0], -2 * x[0]]), [Input("a", 0.0, 1.0)], 1000, np.random.default_rng(5))
    np.testing.assert_array_equal(values[1], -2 * values[0])


def test_progress_rises_to_one():
    seen = []
    found = monte_carlo(
        lambda x: x[0], [Input("a", 0.0, 1.0)], 100_000, np.random.default_rng(1), progress=seen.append
    )
    assert isinstance(found, MonteCarlo)
    assert seen[-1] == 1.0
    assert len(seen) >= 3
    assert seen == sorted(seen)


def test_a_run_can_be_stopped_between_chunks():
    calls = []
    found = monte_carlo(
        lambda x: x[0],
        [Input("a", 0.0, 1.0)],
        1_000_000,
        np.random.default_rng(1),
        progress=calls.append,
        should_stop=lambda: len(calls) == 2,
    )
    assert found == Cancelled(calls[1])
    assert 0 < calls[1] < 0.2


def test_what_progress_raises_comes_through():
    def interrupt(_):
        raise KeyboardInterrupt

    with pytest.raises(KeyboardInterrupt):
        monte_carlo(lambda x: x[0], [Input("a", 0.0, 1.0)], 1000, np.random.default_rng(1), progress=interrupt)


def test_no_trials_tell_nothing():
    with pytest.raises(ValueError, match="at least 1"):
        sample(lambda x: x[0], [Input("a", 0.0, 1.0)], 0, np.random.default_rng(1))


# ---------------------------------------------------------------------- both


def test_a_near_linear_model_agrees_and_a_bent_one_does_not():
    """x² far from 0 is nearly straight; at 0 it is a χ² of one degree of freedom."""
    for x, agree in ((100.0, True), (0.0, False)):
        inputs = [Input("x", x, 1.0)]
        linear = propagate(lambda v: v[0] ** 2, inputs)
        drawn = monte_carlo(lambda v: v[0] ** 2, inputs, 200_000, np.random.default_rng(2))
        found = compare(linear, drawn, significant_digits=1)
        assert found.agree is agree
        assert ("disagree" in agreement_words(found)) is not agree
    assert drawn.symmetric == pytest.approx(stats.chi2(1).ppf([0.025, 0.975]), abs=5 * max(drawn.endpoint_error))


def test_few_trials_are_said_to_be_few():
    inputs = [Input("x", 0.0, 1.0)]
    linear = propagate(lambda v: v[0], inputs)
    few, many = (summarise(sample(lambda v: v[0], inputs, n, np.random.default_rng(2))[0]) for n in (1000, 10**6))
    assert not compare(linear, few).enough_trials
    assert "more trials" in agreement_words(compare(linear, few))
    assert compare(linear, many).enough_trials
    # δ = 0.05; of 20,000 normal trials the ends are known to √(0.025·0.975/20,000)/φ(1.96) = 0.019 > δ/5.
    some = summarise(sample(lambda v: v[0], inputs, 20_000, np.random.default_rng(2))[0])
    assert max(some.endpoint_error) == pytest.approx(0.019, abs=0.004)
    assert not compare(linear, some).enough_trials


def test_exact_values_agree_and_other_probabilities_are_refused():
    inputs = [Input("x", 25.1, 0.0)]
    linear = propagate(lambda v: v[0] / 3, inputs)
    drawn = monte_carlo(lambda v: v[0] / 3, inputs, 1000, np.random.default_rng(2))
    assert compare(linear, drawn).agree
    with pytest.raises(ValueError, match="cannot be compared"):
        compare(propagate(lambda v: v[0], inputs, 0.99), drawn)
    with pytest.raises(ValueError, match="no digits"):
        numerical_tolerance(0.0)
