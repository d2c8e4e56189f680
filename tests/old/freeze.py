"""Write the frozen files beside this page. Run once, when the format and the figures were settled; never again.

What stands here is as the program wrote it then. `test_old.py` opens each with the program as it is now.
"""

from __future__ import annotations

import json
import sys
from dataclasses import asdict
from datetime import UTC, datetime
from pathlib import Path

from magview.bench import actions as bench
from magview.bench.apply import apply
from magview.bench.placing import new_bench
from magview.bench.saved import dump_state
from magview.classroom.handed import dump_handed_in
from magview.classroom.sets import ClassSet, code_of, set_id, work_id
from magview.job.library import job_path, read_job
from magview.practice.attempt import Attempt, dump_attempt
from magview.practice.faults import drawn
from magview.practice.library import find_exercise, find_lesson, shipped_exercises, shipped_lessons
from magview.practice.marking import mark
from magview.spec.files import dump_json
from magview.spec.library import find_engine, find_installation, find_magneto, shipped_names
from tests.practice.trainee import Trainee

HERE = Path(__file__).parent


def main() -> None:
    """Write every kind of file, and twenty codes with what they draw."""
    for name in shipped_names("magnetos"):
        _write(f"magneto-{name}.json", dump_json(find_magneto(name)))
    for name in shipped_names("engines"):
        _write(f"engine-{name}.json", dump_json(find_engine(name)))
    for name in shipped_names("installations"):
        _write(f"installation-{name}.json", dump_json(find_installation(name)))
    for name in shipped_exercises():
        exercise = find_exercise(name)
        _write(f"exercises/{name}.{work_id(exercise)}.json", dump_json(exercise))
    for name in shipped_lessons():
        _write(f"lesson-{name}.json", dump_json(find_lesson(name)))
    _write("job.json", dump_json(read_job(job_path("seven-radial-left"))))
    state = new_bench(find_installation("seven-radial-left"))
    for action in (
        bench.SetBoth(1.5, -4.0),
        bench.ReadLamp("left", 23.0),
        bench.PaintMarks(),
        bench.MoveTeeth(2, -2),
    ):
        state = apply(state, action)
    _write("bench.json", dump_state(state))
    every = ClassSet(
        title="Frozen", seed=4711, each_their_own=True, pupils=("Ada", "Zoë"),
        exercises=(find_exercise("gap-wrong"), find_exercise("several-teeth-out")),
    )  # fmt: skip
    _write("class.json", dump_json(every))
    _attempts()
    _write("codes.json", json.dumps(_codes(), indent=1, ensure_ascii=False) + "\n")


def _attempts() -> None:
    """Solved ones with the marks they were given, and one that is not handed in."""
    marks = {}
    for name, seed in (("gap-wrong", 4), ("several-teeth-out", 4), ("switch-lead", 5), ("find-the-e-gap", 1)):
        attempt = Trainee(find_exercise(name), seed).work()
        _write(f"attempt-{name}.json", dump_attempt(attempt))
        found = mark(attempt)
        marks[f"attempt-{name}.json"] = {"percent": found.percent, "passed": found.passed}
    unfinished = Attempt(
        attempt.exercise, attempt.seed, "half way", attempt.version, attempt.events[:2], attempt.rules
    )
    _write("attempt-unfinished.json", dump_attempt(unfinished))
    of = ClassSet(seed=1, exercises=(attempt.exercise,))
    at = datetime(2026, 11, 30, 12, 0, tzinfo=UTC)
    _write("handed-in.json", dump_handed_in(attempt, set_id(of), 1, "Zoë", at, "0123456789abcdef"))
    _write("marks.json", json.dumps(marks, indent=1) + "\n")


def _codes() -> dict[str, list[dict[str, object]]]:
    names = shipped_exercises()
    found = {}
    for i in range(20):
        chosen = [names[(i + step * 7) % len(names)] for step in range(1 + i % 3)]
        of = ClassSet(
            seed=(i * 52_711) % 2**20, each_their_own=False, hints=i % 2 == 0,
            units=("own", "metric", "inch")[i % 3], minutes=None if i % 4 else 20,
            exercises=tuple(find_exercise(name) for name in dict.fromkeys(chosen)),
        )  # fmt: skip
        found[code_of(of)] = [
            {
                "exercise": of.exercise(n).name,
                "drawn": {side: asdict(drawn(of.exercise(n), of.seed_of(n), side)) for side in of.exercise(n).sides},
            }
            for n in range(1, len(of.exercises) + 1)
        ]
    return found


def _write(name: str, text: str) -> None:
    target = HERE / name
    target.parent.mkdir(exist_ok=True)
    target.write_text(text, encoding="utf-8")
    sys.stdout.write(f"{name}\n")


if __name__ == "__main__":
    main()
