"""How fast the map of settings is made. Skipped in ordinary runs; nothing here fails for being slow.

Run with ``pytest tests/benchmarks/test_adjustment_map.py --benchmark-only -o addopts=``. Baseline of the same run: a
loop of scalar `readings` calls over the pixels. A whole map so would take most of a minute, so the loop runs over
SAMPLE pixels spread over the map and its time is scaled by their number.
"""

from __future__ import annotations

import time
from collections.abc import Callable

import numpy as np
import pytest
from pytest_benchmark.fixture import BenchmarkFixture

from magview.physics.cam.adjustment_map import adjustment_map
from magview.physics.cam.setting import InternalTiming, Readings, internal_timing
from magview.spec.library import find_magneto

SIDE = 400
SAMPLE = 200
ROUNDS = 9


@pytest.fixture(scope="module", params=["seven-radial", "nine-radial"])
def timing(request: pytest.FixtureRequest) -> InternalTiming:
    """Four lobes that are all judged; nine lobes of a compensated cam."""
    return internal_timing(find_magneto(request.param))


def axes(timing: InternalTiming) -> tuple[np.ndarray, np.ndarray]:
    magneto = timing.magneto
    return tuple(np.linspace(*r, SIDE) for r in (magneto.backplate.range_deg, magneto.contact_screw.range_deg))


@pytest.mark.benchmark(group="a map of 400 × 400 settings")
def test_a_map(benchmark: BenchmarkFixture, timing: InternalTiming) -> None:
    """Ratios, best of rounds taken in turns (higher is better): the loop, scaled to all pixels, over the map; and
    `readings` given the whole grid at once over the map."""
    plate, screw = axes(timing)
    pixels = np.random.default_rng(1).integers(0, SIDE, (SAMPLE, 2)).tolist()

    def loop() -> list[Readings]:
        return [timing.readings(plate[i], screw[j]) for i, j in pixels]

    found = benchmark.pedantic(adjustment_map, args=(timing, plate, screw), rounds=ROUNDS, warmup_rounds=2)
    for (i, j), read in zip(pixels, loop(), strict=True):
        assert bool(read.within_limits) == bool(found.within_limits[i, j])
        assert read.e_gap_error_deg[0] == pytest.approx(found.error_deg[i, j], abs=1e-10, nan_ok=True)
    if benchmark.stats is not None:
        maps, loops, grids = [], [], []
        for _ in range(ROUNDS):  # in turns: the machine's speed drifts
            maps.append(seconds(lambda: adjustment_map(timing, plate, screw)))
            loops.append(seconds(loop) * SIDE**2 / SAMPLE)
            grids.append(seconds(lambda: timing.readings(plate[:, None], screw)))
        benchmark.extra_info["loop_s"] = min(loops)
        benchmark.extra_info["ratio"] = min(loops) / min(maps)
        benchmark.extra_info["ratio_to_grid"] = min(grids) / min(maps)


def seconds(work: Callable[[], object]) -> float:
    start = time.perf_counter()
    work()
    return time.perf_counter() - start
