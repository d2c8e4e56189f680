"""Kill a program that saves a job, again and again, and look at what it left. Run by `test_kills`.

    python -m tests.job.kills FOLDER COUNT SEED

A child is forked for each kill, commits step after step and tells each one that it has committed. Prints one line of
JSON: how many kills, how many came while a file was half written, and what went wrong (nothing, it is hoped).
"""

from __future__ import annotations

import json
import os
import random
import select
import signal
import sys
from pathlib import Path

from magview.bench.placing import new_bench
from magview.job import from_bench
from magview.job.sheet import change_in, new_job
from magview.job.store import JobStore
from magview.spec.library import find_installation


def main() -> None:
    """Kill and look."""
    folder, count, rng = Path(sys.argv[1]), int(sys.argv[2]), random.Random(int(sys.argv[3]))
    job = from_bench.take_bench(new_job("kills"), new_bench(find_installation("seven-radial-left")))
    wrong: list[str] = []
    half_written = between = 0
    path = folder / "killed-job.json"
    JobStore.create(path, job).close()
    for kill in range(count):
        if kill % 25 == 24:  # a file of one's own now and then: a long history takes longer to write
            path.unlink()
            JobStore.create(path, job).close()
        told = one_kill(path, rng)
        leftovers = [p.name for p in folder.iterdir() if p.name not in (path.name, f".{path.name}.lock")]
        half_written += bool(leftovers)
        try:
            store = JobStore.open(path)
            problem, uncertain = judge(store, told)
            between += uncertain
            store.close()
        except Exception as error:
            problem = f"{type(error).__name__}: {error}"
        if problem:
            wrong.append(f"kill {kill} after step {told}: {problem}")
        left = [p.name for p in folder.iterdir() if p != path]
        if left:
            wrong.append(f"kill {kill}: left behind {left}")
    sys.stdout.write(
        json.dumps({"kills": count, "half_written": half_written, "not_told": between, "wrong": wrong}) + "\n"
    )


def judge(store: JobStore, told: int) -> tuple[str, bool]:
    """What is wrong with what was found, if anything; and whether a step was in the file before it was told."""
    if store.read_only is not None:
        return store.read_only, False
    found = store.job.ground_run.drop_left_rpm
    if found not in (told, told + 1):
        return f"step {found} is in the file", False
    if store.undo_name != f"step {found:.0f}":
        return f"{store.undo_name} would be undone", False
    store.undo()
    store.redo()
    if store.job.ground_run.drop_left_rpm != found or store.trouble:
        return f"undone and done again it is {store.job.ground_run.drop_left_rpm}, {store.trouble}", False
    return "", found == told + 1


def one_kill(path: Path, rng: random.Random) -> int:
    """Kill a child at a random moment; the last step it told."""
    reader, writer = os.pipe()
    child = os.fork()
    if child == 0:
        os.close(reader)
        try:
            commit_for_ever(path, writer)
        finally:
            os._exit(1)
    os.close(writer)
    told, buffer = -1, b""
    wait = rng.randrange(1, 4)
    while told < 0 or wait > 0:
        chunk = os.read(reader, 65536)
        if not chunk:
            break
        buffer += chunk
        *lines, buffer = buffer.split(b"\n")
        wait -= len(lines)
        if lines:
            told = int(lines[-1])
    for _ in range(rng.randrange(4000)):  # anywhere within a step, or the next: so many looks at what is there
        os.listdir(path.parent)
    os.kill(child, signal.SIGKILL)
    os.waitpid(child, 0)
    while select.select([reader], [], [], 0)[0] and (chunk := os.read(reader, 65536)):
        buffer += chunk
    os.close(reader)
    *lines, _ = buffer.split(b"\n")
    return int(lines[-1]) if lines else told


def commit_for_ever(path: Path, writer: int) -> None:
    """Step after step, each told once it is committed."""
    store = JobStore.open(path)
    step = int(store.job.ground_run.drop_left_rpm or 0)
    while True:
        step += 1
        store.commit(change_in(store.job, "ground_run", drop_left_rpm=float(step)), f"step {step}")
        if store.trouble:
            os._exit(3)
        os.write(writer, f"{step}\n".encode())


if __name__ == "__main__":
    main()
