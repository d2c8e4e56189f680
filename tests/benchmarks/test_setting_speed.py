"""How fast settings are read and found. Skipped in ordinary runs; nothing here fails for being slow.

Run with ``pytest tests/benchmarks --benchmark-only -o addopts=``. Each benchmark times its yardstick in the same
run and stores ``ratio`` in its extra information (``--benchmark-json``, or ``-v`` for the table by group).
"""

import time
from collections.abc import Callable
from typing import Any

import numpy as np
import pytest
from pytest_benchmark.fixture import BenchmarkFixture
from scipy.optimize import brentq

from magview.physics.cam.setting import InternalTiming
from tests.magnetos import from_mechanism
from tests.reference import Mechanism

COUNT = 1_000_000
KNOTS = 513
MECHANISM = Mechanism(
    "modified-sine", 9.0, 0.36, 27.0, 6.0, 27.0, 20.0, 17.0, 27.5, 1.8, 1, (0.0, 90.0, 180.0, 270.0)
)


@pytest.fixture(scope="module")
def timing() -> InternalTiming:
    return InternalTiming(from_mechanism(MECHANISM))


@pytest.fixture(scope="module")
def settings(timing: InternalTiming) -> tuple[np.ndarray, np.ndarray]:
    """Backplate and screw of a million settings, in no order, all of which open and close the contacts."""
    rng = np.random.default_rng(1)
    plate, screw = rng.uniform(-6, 6, COUNT), rng.uniform(-20, 20, COUNT)
    assert np.isfinite(timing.opening_and_gap(plate, screw)[0]).all()
    return plate, screw


def best_of(rounds: int, work: Callable[[], Any]) -> float:
    times = []
    for _ in range(rounds):
        start = time.perf_counter()
        work()
        times.append(time.perf_counter() - start)
    return min(times)


@pytest.mark.benchmark(group="a million settings")
def test_a_million_readings(benchmark: BenchmarkFixture, timing: InternalTiming, settings) -> None:
    """Ratio: readings over plain table look-ups (lower is better)."""
    benchmark.pedantic(timing.opening_and_gap, args=settings, rounds=7, warmup_rounds=1)
    look_up = table_look_up(timing, settings[1])
    if benchmark.stats is not None:
        benchmark.extra_info["ratio"] = benchmark.stats.stats.min / best_of(7, look_up)


@pytest.mark.benchmark(group="a million settings")
def test_a_million_plain_look_ups(benchmark: BenchmarkFixture, timing: InternalTiming, settings) -> None:
    benchmark.pedantic(table_look_up(timing, settings[1]), rounds=7, warmup_rounds=1)


def table_look_up(timing: InternalTiming, screw: np.ndarray) -> Callable[[], Any]:
    """numpy.interp with the same queries in the same order, on a table with as many knots as the flank has."""
    cam_deg = np.linspace(-timing.curve.reach_deg[0], -3.0, KNOTS)
    lift, stop = timing.curve.lift_mm(cam_deg), timing.stop_mm(screw)
    return lambda: np.interp(stop, lift, cam_deg)


@pytest.mark.benchmark(group="one adjustment")
def test_one_adjustment(benchmark: BenchmarkFixture, timing: InternalTiming) -> None:
    """Ratio: brute force over the closed form (higher is better)."""
    found = benchmark(timing.adjust, 0.2)
    plate, screw = adjust_by_brute_force(timing, 0.2)
    assert (found.backplate_deg, found.screw_deg) == pytest.approx((plate, screw), abs=5e-4)
    if benchmark.stats is not None:
        brute = best_of(5, lambda: adjust_by_brute_force(timing, 0.2))
        benchmark.extra_info["ratio"] = brute / benchmark.stats.stats.median


@pytest.mark.benchmark(group="one adjustment")
def test_one_adjustment_by_brute_force(benchmark: BenchmarkFixture, timing: InternalTiming) -> None:
    benchmark.pedantic(adjust_by_brute_force, args=(timing, 0.2), rounds=5, warmup_rounds=1)


def adjust_by_brute_force(timing: InternalTiming, gap_mm: float) -> tuple[float, float]:
    """Plate and screw by lowering the heel on the cam's polygon until brentq is content; the cam is built before."""
    magneto = timing.magneto
    top = float(MECHANISM.brute_lift(np.zeros(1))[0])

    def before_top(gap: float) -> float:
        return brentq(lambda a: float(MECHANISM.brute_lift(np.array([-a]))[0]) - (top - gap), 3.0, 30.0, xtol=1e-6)

    designed = magneto.designed_setting
    plate = designed.backplate_deg + before_top(gap_mm) - before_top(designed.gap_mm)
    return plate, float(np.degrees(np.arcsin((designed.gap_mm - gap_mm) / magneto.contact_screw.throw_mm)))
