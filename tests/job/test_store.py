"""A job on disk: nothing is lost, undo reaches back over sessions, and one clear sentence for every fault."""

from __future__ import annotations

import errno
import json
import os
import shutil
import subprocess
import sys
import tempfile
import textwrap
from pathlib import Path

import pytest
from hypothesis import settings
from hypothesis import strategies as st
from hypothesis.stateful import RuleBasedStateMachine, invariant, rule

from magview.bench.placing import new_bench
from magview.job import from_bench
from magview.job.library import read_job
from magview.job.sheet import change, change_in, new_job
from magview.job.store import JobStore
from magview.spec.base import SpecError
from magview.spec.files import MAX_BYTES
from magview.spec.library import find_installation
from tests.counts import examples
from tests.job.sheets import drop, rpm_in, sentence

ROOT = Path(__file__).parents[2]


def test_a_step_is_in_the_file_when_commit_returns(store, path):
    drop(store, 60.0)
    assert rpm_in(path) == 60.0 and store.trouble is None


def test_undo_and_redo_reach_back_over_sessions(store, path):
    for rpm in (10.0, 20.0, 30.0):
        drop(store, rpm)
    store.undo()
    store.close()
    later = JobStore.open(path)
    assert (later.undo_name, later.redo_name) == ("drop 20", "drop 30")
    later.redo()
    assert rpm_in(path) == 30.0
    for _ in range(5):
        later.undo()
    assert later.job == new_job("a") and later.undo_name is None
    assert rpm_in(path) is None
    later.close()
    last = JobStore.open(path)
    assert last.redo_name == "drop 10"
    drop(last, 99.0)  # what was undone is gone once another way is taken
    assert last.redo_name is None and last.undo_name == "drop 99"
    last.close()


def test_steps_have_names_and_times(path):
    store = JobStore.create(path, new_job(), now=lambda: "2026-11-25T10:00:00+00:00")
    drop(store, 1.0)
    store.commit(store.job, "nothing changed")
    assert store.steps == (("2026-11-25T10:00:00+00:00", "drop 1"),)
    store.close()


def test_taking_the_bench_over_and_back(store):
    before = store.job
    store.commit(
        from_bench.take_bench(store.job, new_bench(find_installation("seven-radial-left"))), "take the bench"
    )
    after = store.job
    store.undo()
    assert store.job == before
    store.redo()
    assert store.job == after


def test_listeners_hear_new_and_old_once(store):
    heard = []
    store.subscribe(lambda new, old: heard.append((new.ground_run.drop_left_rpm, old.ground_run.drop_left_rpm)))
    drop(store, 5.0)
    store.commit(store.job, "nothing")
    store.undo()
    assert heard == [(5.0, None), (None, 5.0)]


def test_a_file_that_is_there_is_not_started_anew(store, path):
    with pytest.raises(SpecError, match="is there already"):
        JobStore.create(path, new_job())
    with pytest.raises(SpecError, match="is there already"):
        store.save_as(shutil.copy(path, path.with_name("b-job.json")) and path.with_name("b-job.json"))


# ---------------------------------------------------------------------- two windows


def test_a_second_window_reads_and_says_so(store, path):
    drop(store, 60.0)
    second = JobStore.open(path)
    assert "is open in another window" in sentence(second.read_only)
    assert second.job.ground_run.drop_left_rpm == 60.0
    for act in (lambda: drop(second, 1.0), second.undo):
        with pytest.raises(SpecError, match="another window"):
            act()
    assert rpm_in(path) == 60.0
    # The first goes on, the second sees that, and takes over when the first has gone.
    drop(store, 70.0)
    assert second.changed_on_disk()
    store.close()
    second.reload()
    assert second.read_only is None and second.job.ground_run.drop_left_rpm == 70.0
    drop(second, 80.0)
    assert rpm_in(path) == 80.0
    second.close()


def test_a_second_window_can_go_on_in_a_file_of_its_own(store, path):
    drop(store, 60.0)
    second = JobStore.open(path)
    second.save_as(path.with_name("b-job.json"))
    drop(second, 1.0)
    assert (rpm_in(path), rpm_in(path.with_name("b-job.json"))) == (60.0, 1.0)
    assert second.undo_name == "drop 1"
    second.close()


@pytest.mark.process
def test_another_program_is_locked_out_too_and_let_in_after_a_kill(store, path):
    code = textwrap.dedent("""
        import sys
        from pathlib import Path
        from magview.job.store import JobStore
        store = JobStore.open(Path(sys.argv[1]))
        print(store.read_only or "ours", flush=True)
        sys.stdin.read()
    """)
    with subprocess.Popen(
        [sys.executable, "-c", code, str(path)], stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True, cwd=ROOT
    ) as other:
        assert other.stdout is not None
        assert "another window" in other.stdout.readline()
        other.kill()
    store.close()
    with subprocess.Popen(
        [sys.executable, "-c", code, str(path)], stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True, cwd=ROOT
    ) as other:
        assert other.stdout is not None
        assert other.stdout.readline().strip() == "ours"
        held = JobStore.open(path)
        assert held.read_only is not None
        held.close()
        other.kill()
    again = JobStore.open(path)
    assert again.read_only is None
    again.close()


def test_locks_are_taken_away(store, path):
    assert sorted(p.name for p in path.parent.iterdir()) == [".a-job.json.lock", "a-job.json"]
    store.close()
    assert [p.name for p in path.parent.iterdir()] == ["a-job.json"]


# ---------------------------------------------------------------------- changed underneath


def test_what_another_program_wrote_is_left_and_nothing_here_is_lost(store, path):
    drop(store, 60.0)
    other = json.loads(path.read_text(encoding="utf-8"))
    other["title"] = "theirs"
    path.write_text(json.dumps(other), encoding="utf-8")
    drop(store, 70.0)
    assert "changed by another program" in sentence(store.trouble)
    assert store.job.ground_run.drop_left_rpm == 70.0
    assert read_job(path).title == "theirs"
    store.save_as(path.with_name("mine-job.json"))
    assert store.trouble is None
    assert (rpm_in(path), rpm_in(store.path)) == (60.0, 70.0)


def test_theirs_can_be_taken_or_mine_kept(store, path):
    drop(store, 60.0)
    path.write_text(json.dumps({"format": "magview-job/1", "title": "theirs"}), encoding="utf-8")
    drop(store, 70.0)
    store.reload()
    assert store.trouble is None and store.job.title == "theirs"
    path.write_text(json.dumps({"format": "magview-job/1", "title": "again theirs"}), encoding="utf-8")
    drop(store, 80.0)
    store.save_as(path)  # mine
    assert store.trouble is None and rpm_in(path) == 80.0


# ---------------------------------------------------------------------- bounds


def test_a_history_never_makes_a_file_too_large_to_read(store, path):
    text = "x" * 4000
    for i in range(150):  # some 8 kB a step, 1.2 MB in all
        store.commit(change_in(store.job, "remarks", text=f"{i} {text}"[:4000]), f"remark {i}")
    assert path.stat().st_size < MAX_BYTES
    assert store.undo_name == "remark 149" and 80 < len(store.steps) < 150
    assert read_job(path).remarks.text.startswith("149 ")
    for _ in range(10):
        store.undo()
    assert store.redo_name == "remark 140" and path.stat().st_size < MAX_BYTES


def test_a_damaged_history_is_refused_and_the_sheet_stands(store, path):
    drop(store, 60.0)
    data = json.loads(path.read_text(encoding="utf-8"))
    data["history"]["steps"][0]["before"] = {"ground_run": {"drop_left_rpm": "sixty"}}
    store.close()
    path.write_text(json.dumps(data), encoding="utf-8")
    again = JobStore.open(path)
    with pytest.raises(SpecError, match="history is damaged"):
        again.undo()
    assert again.job.ground_run.drop_left_rpm == 60.0
    drop(again, 61.0)
    again.undo()
    assert rpm_in(path) == 60.0
    again.close()


class Work(RuleBasedStateMachine):
    """Commits, undo, redo, faults, and new sessions against a plain list of what the sheet was."""

    def __init__(self) -> None:
        super().__init__()
        self.folder = tempfile.TemporaryDirectory()
        self.path = Path(self.folder.name) / "a-job.json"
        self.store = JobStore.create(self.path, new_job())
        self.was, self.at = [None], 0

    @rule(rpm=st.integers(1, 9999))
    def step(self, rpm):
        if self.was[self.at] != rpm:
            drop(self.store, float(rpm))
            self.was, self.at = [*self.was[: self.at + 1], float(rpm)], self.at + 1

    @rule()
    def back(self):
        self.store.undo()
        self.at = max(0, self.at - 1)

    @rule()
    def forward(self):
        self.store.redo()
        self.at = min(len(self.was) - 1, self.at + 1)

    @rule()
    def again(self):
        self.store.retry()
        if self.store.trouble is None:
            self.store.close()
            self.store = JobStore.open(self.path)

    @rule(rpm=st.integers(1, 9999))
    def step_on_a_full_disk(self, rpm):
        with pytest.MonkeyPatch.context() as broken:
            broken.setattr(os, "fsync", lambda _: (_ for _ in ()).throw(OSError(errno.ENOSPC, "No space left")))
            self.step(rpm)

    @invariant()
    def the_sheet_is_what_it_was(self):
        assert self.store.job.ground_run.drop_left_rpm == self.was[self.at]
        if self.store.trouble is None:
            assert rpm_in(self.path) == self.was[self.at]

    def teardown(self):
        self.store.close()
        self.folder.cleanup()


TestWork = Work.TestCase
TestWork.settings = settings(max_examples=examples(15), stateful_step_count=20, deadline=None)


def test_large_parts_come_and_go(store, path):
    big = find_installation("traced-six-single")
    store.commit(change(store.job, installation=big), "a measured profile")
    store.commit(change(store.job, installation=None), "away")
    store.undo()
    assert read_job(path).installation == big
