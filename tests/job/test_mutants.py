"""Ten thousand damaged files: each is read or refused in one sentence, and whatever is read can be worked with."""

from __future__ import annotations

import json
import math
import os
import random
from pathlib import Path

import numpy as np
import pytest

from magview.bench.reach_words import out_of_reach_words
from magview.job import judge
from magview.job.history import drift_of
from magview.job.library import job_path, read_job
from magview.job.readings import csv_text, json_text
from magview.job.sheet import change_in, signature_holds
from magview.job.store import JobStore
from magview.physics.cam.setting import internal_timing
from magview.practice.attempt import dump_attempt, read_attempt
from magview.practice.library import find_exercise
from magview.spec.base import SpecError
from magview.spec.files import read_magneto
from magview.spec.library import resources
from tests.counts import examples
from tests.job.sheets import html_text
from tests.mutants import mutant
from tests.practice.trainee import Trainee
from tests.spec.sentences import check_sentence

MUTANTS = int(os.environ.get("MAGVIEW_MUTANTS", examples(240)))
"""Of all three kinds together; 10,000 with MAGVIEW_MUTANTS=10000: some minutes."""


def memory_mb() -> float:
    """What this process has resident now."""
    pages = Path("/proc/self/statm")
    return int(pages.read_text().split()[1]) * 4096 / 1e6 if pages.exists() else 0.0


def survive(path: Path, raw: bytes, use) -> bool:
    """Whether a file was taken; anything but a plain refusal fails the test."""
    path.write_bytes(raw)
    try:
        use(path)
        taken = True
    except SpecError as error:
        check_sentence(str(error))
        taken = False
    return taken


def use_job(path: Path) -> None:
    """All that the program does with a sheet."""
    job = read_job(path)
    judge.progress(job)
    signature_holds(job)
    assert "<script>alert" not in html_text(job, "a4", drift_of([job, job]))
    json.loads(json_text(job))
    csv_text(job)
    store = JobStore.open(path)
    try:
        for act in (store.undo, store.redo, lambda: store.commit(change_in(store.job, "remarks", text="on"), "on")):
            try:
                act()
            except SpecError as error:
                check_sentence(str(error))
        assert read_job(path) is not None
    finally:
        store.close()


def use_magneto(path: Path) -> None:
    magneto = read_magneto(path)
    timing = internal_timing(magneto)
    found = timing.readings(magneto.designed_setting.backplate_deg, 0.0)
    assert not np.isinf(found.max_gap_mm).any()
    result = timing.adjust(math.fsum(magneto.gap_limits_mm) / 2)
    assert result.reachable or out_of_reach_words(result)


def use_attempt(path: Path) -> None:
    attempt = read_attempt(path)
    attempt.states()


def seeds() -> dict[str, tuple[list[object], object]]:
    """Sound files of each kind, and what is done with one."""
    job = json.loads(job_path("seven-radial-left").read_text(encoding="utf-8"))
    step = {"name": "step", "at": "2026-10-14", "before": {"remarks": {"state": "done", "text": "was"}},
            "after": {"remarks": job["remarks"]}}  # fmt: skip
    with_history = {**job, "history": {"steps": [step] * 5, "done": 5}}
    small = {"format": "magview-job/1", "title": "small", "as_found": {"gap_mm": 0.2}}
    magnetos = [json.loads(p.read_text(encoding="utf-8")) for p in (resources() / "magnetos").glob("*.json")]
    attempts = [json.loads(dump_attempt(Trainee(find_exercise(n), 1).work())) for n in ("gap-wrong", "pips")]
    return {
        "job": ([job, with_history, small], use_job),
        "magneto": (magnetos, use_magneto),
        "attempt": (attempts, use_attempt),
    }


@pytest.mark.parametrize("kind", ["job", "magneto", "attempt"])
def test_damaged_files_are_refused_in_a_sentence_or_worked_with(kind, tmp_path):
    sound, use = seeds()[kind]
    for i, data in enumerate(sound):  # what is not damaged is taken
        assert survive(tmp_path / f"sound{i}-{kind}.json", json.dumps(data).encode(), use)
    before, taken = memory_mb(), 0
    count = MUTANTS // 3
    for n in range(count):
        rng = random.Random(f"{kind} {n}")
        taken += survive(tmp_path / f"x-{kind}.json", mutant(rng.choice(sound), rng), use)
    grown = memory_mb() - before
    assert grown < 300.0
    print(f"{kind}: {count} damaged files, {taken} taken, {grown:.0f} MB more resident")  # noqa: T201
    # The damage must be neither so small that all is taken nor so great that nothing is.
    assert 0.02 * count < taken < 0.6 * count
