"""Files and class codes of earlier versions: each opens, and a code draws the faults it drew.

The files beside this one were written by `freeze.py` and are never written again.
"""

from __future__ import annotations

import json
from dataclasses import asdict
from pathlib import Path

import pytest

from magview.bench.saved import load_state
from magview.bench.state import firing_btdc_deg, readings
from magview.classroom.results import result_of
from magview.classroom.sets import code_of, read_set, set_of_code, work_id
from magview.job.document import document
from magview.job.library import read_job
from magview.practice.attempt import RULES, Session, read_attempt
from magview.practice.debrief import debrief
from magview.practice.faults import begin, drawn
from magview.practice.library import find_exercise, read_exercise, read_lesson, shipped_exercises
from magview.practice.marking import mark
from magview.spec.files import parse_json, read_engine, read_installation, read_magneto
from magview.spec.library import resources

HERE = Path(__file__).parent
CODES = json.loads((HERE / "codes.json").read_text(encoding="utf-8"))
MARKS = json.loads((HERE / "marks.json").read_text(encoding="utf-8"))


def files(pattern: str) -> list[Path]:
    found = sorted(HERE.glob(pattern))
    assert found, pattern
    return found


@pytest.mark.parametrize(
    ("pattern", "read"),
    [
        ("magneto-*.json", read_magneto), ("engine-*.json", read_engine), ("installation-*.json", read_installation),
        ("exercises/*.json", read_exercise), ("lesson-*.json", read_lesson), ("class.json", read_set),
        ("attempt-*.json", read_attempt), ("job.json", read_job), ("bench.json", load_state),
    ],
)  # fmt: skip
def test_every_kind_opens(pattern, read):
    for path in files(pattern):
        assert read(path) is not None


def test_a_code_of_every_kind_was_kept():
    assert len(CODES) == 20


@pytest.mark.parametrize("code", CODES)
def test_a_code_draws_the_faults_it_drew(code):
    of = set_of_code(code)
    assert code_of(of) == code
    assert len(of.exercises) == len(CODES[code])
    for number, kept in enumerate(CODES[code], 1):
        for side, faults in kept["drawn"].items():
            now = json.loads(json.dumps(asdict(drawn(of.exercise(number), of.seed_of(number), side))))
            assert {name: now[name] for name in faults} == faults
        begin(of.exercise(number), of.seed_of(number))


@pytest.mark.parametrize("name", MARKS)
def test_an_attempt_keeps_its_mark_or_says_that_it_is_not_marked_again(name):
    attempt = read_attempt(HERE / name)
    found = mark(attempt)
    if attempt.rules == RULES:
        assert {"percent": found.percent, "passed": found.passed} == MARKS[name]
    else:
        assert not found.marked and "not marked again" in found.verdict
    assert debrief(attempt).replay.states, "it can be looked at"


def test_what_a_class_handed_in_is_listed():
    raw = (HERE / "handed-in.json").read_bytes()
    result = result_of(raw, "handed-in.json", parse_json)
    assert result.pupil == "Zoë"
    assert result.state == ("marked" if RULES == 1 else "earlier")


def test_an_unfinished_attempt_can_be_gone_on_with():
    session = Session.resume(read_attempt(HERE / "attempt-unfinished.json"))
    assert session.practice.acts > 0


def test_the_kept_bench_reads_as_it_did():
    state = load_state(HERE / "bench.json")
    assert (state.backplate_deg, state.screw_deg) == (1.5, -4.0)
    assert readings(state).max_gap_mm[0] == pytest.approx(0.33 + 0.034878, abs=1e-5)  # 0.5 mm · sin 4°
    assert firing_btdc_deg(state, "left") == pytest.approx(23.0 + 2 * 360 / 306 / 0.875, abs=1e-9)


def test_the_signed_sheet_opens_and_prints():
    job = read_job(HERE / "job.json")
    assert job.signature is not None and document(job).blocks


def test_an_exercise_changed_since_then_is_kept_for_its_codes():
    """`.ci/retire_exercises.py` puts it there."""
    now = {name: work_id(find_exercise(name)) for name in shipped_exercises()}
    for path in files("exercises/*.json"):
        name, known_by = path.stem.rsplit(".", 1)
        assert now.get(name) == known_by or (resources() / "exercises" / "old" / "1" / path.name).exists(), name
