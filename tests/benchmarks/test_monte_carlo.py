"""How fast a complete setting is judged by Monte Carlo. Skipped in ordinary runs; nothing here fails for being slow.

Run as the other benchmarks; the ratio is in the extra information.
"""

import time
from collections.abc import Callable
from typing import Any

import numpy as np
import pytest
from pytest_benchmark.fixture import BenchmarkFixture

from magview.physics.cam.setting import internal_timing
from magview.physics.uncertainty.instruments import instrument
from magview.physics.uncertainty.measurement import Judgement, Measurement, judge
from magview.physics.uncertainty.setting_uncertainty import InternalReadings, internal_measurement
from magview.spec.magneto import Magneto
from tests.magnetos import from_mechanism
from tests.reference import Mechanism

TRIALS = 1_000_000
KNOTS = 513
MECHANISM = Mechanism(
    "modified-sine", 9.0, 0.36, 27.0, 6.0, 27.0, 20.0, 17.0, 27.5, 1.8, 1, (0.0, 90.0, 180.0, 270.0)
)


@pytest.fixture(scope="module")
def magneto() -> Magneto:
    """With every input uncertain: play in the drive, a screw that creeps."""
    plain = from_mechanism(MECHANISM)
    worn = plain.condition.model_copy(update={"coupling_backlash_deg": 0.4, "screw_creep_deg": 3.0})
    return plain.model_copy(update={"condition": worn})


@pytest.fixture(scope="module")
def measurement(magneto: Magneto) -> Measurement:
    readings = InternalReadings(0.2, magneto.designed_setting.gap_mm, pip_mm=0.02, pip_half_width_mm=0.01)
    measured = internal_measurement(magneto, readings)
    for key in ("to-and-fro", "before-tightening"):
        measured = measured.using(instrument(key))
    assert all(item.spread > 0 for item in measured.inputs)
    return measured


def numpy_alone(magneto: Magneto, inputs: int) -> Callable[[], Any]:
    """As many random numbers, and one look-up in a table of the flank for each trial."""
    timing, rng = internal_timing(magneto), np.random.default_rng(1)
    cam_deg = np.linspace(-timing.curve.reach_deg[0], -3.0, KNOTS)
    lift = timing.curve.lift_mm(cam_deg)

    def work() -> Any:
        drawn = [rng.random(TRIALS) for _ in range(inputs)]
        return np.interp(lift[-1] - 0.2 - 0.05 * drawn[0], lift, cam_deg)

    return work


def best_of(rounds: int, work: Callable[[], Any]) -> float:
    times = []
    for _ in range(rounds):
        start = time.perf_counter()
        work()
        times.append(time.perf_counter() - start)
    return min(times)


@pytest.mark.benchmark(group="a million trials of a setting")
def test_a_million_trials(benchmark: BenchmarkFixture, magneto: Magneto, measurement: Measurement) -> None:
    """Ratio: drawing, measuring, intervals and verdicts of both quantities over numpy's draws and one look-up."""
    rng = np.random.default_rng(1)
    found = benchmark.pedantic(judge, args=(measurement, rng, TRIALS), rounds=7, warmup_rounds=1)
    assert isinstance(found, Judgement)
    if benchmark.stats is not None:
        yardstick = best_of(7, numpy_alone(magneto, len(measurement.inputs)))
        benchmark.extra_info["ratio"] = benchmark.stats.stats.min / yardstick


@pytest.mark.benchmark(group="a million trials of a setting")
def test_a_million_draws_and_look_ups(
    benchmark: BenchmarkFixture, magneto: Magneto, measurement: Measurement
) -> None:
    benchmark.pedantic(numpy_alone(magneto, len(measurement.inputs)), rounds=7, warmup_rounds=1)
