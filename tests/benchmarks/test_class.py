"""How fast a class is gathered. Skipped in ordinary runs; nothing here fails for being slow.

Run with ``pytest tests/benchmarks/test_class.py --benchmark-only -o addopts=``. Baseline of the same run:
`json.loads` of the same thousand files, which every way of gathering has to do at least.
"""

from __future__ import annotations

import json
import time
import tracemalloc
from collections.abc import Callable
from pathlib import Path

import pytest
from pytest_benchmark.fixture import BenchmarkFixture

from magview.classroom.gather import Gatherer
from magview.classroom.summary import summarise
from tests.classroom.attempts import class_folder

COUNT = 1000


@pytest.fixture(scope="module")
def folder(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A thousand attempts at three exercises, most of them done to the end."""
    made = tmp_path_factory.mktemp("class")
    class_folder(made, COUNT)
    return made


def seconds(work: Callable[[], object]) -> float:
    start = time.perf_counter()
    work()
    return time.perf_counter() - start


@pytest.mark.benchmark(group="a class of a thousand attempts")
@pytest.mark.parametrize("how", ["marked alone", "marked in processes", "from the cache", "looked at again"])
def test_a_thousand(benchmark: BenchmarkFixture, folder: Path, tmp_path: Path, how: str) -> None:
    """Ratio (lower is better): gathering over `json.loads` of the same files, and its memory [MB]."""
    files = sorted(folder.glob("*.json"))
    loads = min(seconds(lambda: [json.loads(p.read_bytes()) for p in files]) for _ in range(3))
    gatherer = Gatherer(tmp_path / "marks", None if how == "marked in processes" else 0)
    if how in ("from the cache", "looked at again"):
        gatherer.gather(folder)
    if how == "from the cache":
        gatherer = Gatherer(tmp_path / "marks", 0)
    found = benchmark.pedantic(gatherer.gather, args=(folder,), rounds=1)
    assert len(found) == COUNT
    assert {r.state for r in found} == {"marked"}
    benchmark.extra_info["ratio to json.loads"] = round(benchmark.stats["min"] / loads, 2)
    benchmark.extra_info["json.loads [s]"] = round(loads, 3)
    benchmark.extra_info["summary [s]"] = round(seconds(lambda: summarise(found)), 3)
    if how == "from the cache":
        tracemalloc.start()
        Gatherer(tmp_path / "marks", 0).gather(folder)
        benchmark.extra_info["memory at most [MB]"] = round(tracemalloc.get_traced_memory()[1] / 1e6, 1)
        tracemalloc.stop()
