"""Run as a process: writes attempts into a folder until it is done or killed. For the tests of handing in."""

from __future__ import annotations

import multiprocessing
import sys
from pathlib import Path


def write(folder: str, pupil: str, count: int, told: bool = False) -> None:
    """Write so many attempts, each under a name of its own; `told`: a full stop is printed after each."""
    from magview.classroom.desk import prepare
    from magview.classroom.handed import write_new
    from tests.classroom.attempts import a_set, done

    of = a_set("gap-wrong")
    attempt = done(of, 1, pupil, "idle")
    for _ in range(count):
        write_new(Path(folder), *prepare(of, 1, pupil, attempt))
        if told:
            sys.stdout.write(".\n")
            sys.stdout.flush()


def wait_and_write(barrier: object, folder: str, pupil: str, count: int) -> None:
    """One of many, who begin at once."""
    barrier.wait(100)
    write(folder, pupil, count)


def many(folder: str, processes: int, count: int) -> None:
    """So many processes; every ten names come again."""
    # Forked where that can be had: thirty times importing numpy is no part of what is tried here.
    context = multiprocessing.get_context("fork" if "fork" in multiprocessing.get_all_start_methods() else "spawn")
    write(folder, "First", 1)
    barrier = context.Barrier(processes)
    each = [
        context.Process(target=wait_and_write, args=(barrier, folder, f"Pupil {i % 10}", count))
        for i in range(processes)
    ]
    for process in each:
        process.start()
    for process in each:
        process.join()
    sys.exit(max(abs(process.exitcode or 0) for process in each))


if __name__ == "__main__":
    sys.path.insert(0, str(Path(__file__).resolve().parents[2]))
    if sys.argv[1] == "many":
        many(sys.argv[2], int(sys.argv[3]), int(sys.argv[4]))
    write(sys.argv[2], sys.argv[3], 10_000, told=True)
