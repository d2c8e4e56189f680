"""Disks that fill up, folders that go, drives that are pulled out: one clear sentence, and nothing is lost."""

from __future__ import annotations

import contextlib
import errno
import os
import subprocess
import sys
import tempfile
import textwrap
from pathlib import Path

import pytest

from magview.job.library import read_job
from magview.job.sheet import new_job
from magview.job.store import JobStore
from magview.spec.base import SpecError
from tests.job.sheets import demo, drop, rpm_in, sentence

ROOT = Path(__file__).parents[2]


@pytest.mark.parametrize("call", ["fsync", "replace", "mkstemp", "chmod"])
@pytest.mark.parametrize("code", [errno.ENOSPC, errno.EIO, errno.EROFS, errno.EACCES])
def test_a_disk_that_fails_costs_nothing(store, path, monkeypatch, call, code):
    drop(store, 60.0)
    before = path.read_bytes()

    def fail(*_args, **_kwargs):
        raise OSError(code, os.strerror(code))

    with monkeypatch.context() as broken:
        broken.setattr(tempfile if call == "mkstemp" else os, call, fail)
        drop(store, 70.0)
        assert os.strerror(code) in sentence(store.trouble)
        assert "tried again with your next step" in store.trouble
        store.undo()
        store.redo()
        drop(store, 80.0)
        assert path.read_bytes() == before
        assert store.job.ground_run.drop_left_rpm == 80.0
    store.retry()
    assert store.trouble is None and rpm_in(path) == 80.0
    store.undo()
    assert rpm_in(path) == 70.0
    assert sorted(p.name for p in path.parent.iterdir()) == [".a-job.json.lock", "a-job.json"]


def test_the_next_step_writes_what_the_last_could_not(store, path, monkeypatch):
    with monkeypatch.context() as broken:
        broken.setattr(os, "fsync", lambda _: (_ for _ in ()).throw(OSError(errno.ENOSPC, "No space left on device")))
        drop(store, 60.0)
    drop(store, 70.0)
    assert store.trouble is None
    store.undo()
    assert rpm_in(path) == 60.0


def test_a_spare_folder_takes_a_copy_meanwhile(path, tmp_path, monkeypatch):
    spare = tmp_path / "spare"
    store = JobStore.create(path, new_job(), spare=spare)
    real = os.replace

    def fail(source, target):
        if Path(target).parent != spare:
            raise OSError(errno.EIO, "Input/output error")
        real(source, target)

    monkeypatch.setattr(os, "replace", fail)
    drop(store, 60.0)
    assert f"a copy is in {spare}" in sentence(store.trouble)
    assert rpm_in(spare / "a-job.json") == 60.0
    store.close()


def small_disk(tmp_path: Path) -> Path | None:
    """A file system of 128 kB, where this process may mount one."""
    place = tmp_path / "small"
    place.mkdir()
    done = subprocess.run(
        ["mount", "-t", "tmpfs", "-o", "size=128k", "tmpfs", str(place)], capture_output=True, check=False
    )
    return place if done.returncode == 0 else None


@pytest.mark.process
@pytest.mark.skipif(not hasattr(os, "geteuid") or os.geteuid() != 0, reason="mounting takes root")
def test_a_real_disk_that_fills_up(tmp_path):
    disk = small_disk(tmp_path)
    if disk is None:
        pytest.skip("this machine mounts nothing")
    try:
        path = disk / "a-job.json"
        store = JobStore.create(path, demo())
        drop(store, 60.0)
        assert store.trouble is None
        filler = disk / "filler"
        with filler.open("wb", buffering=0) as file, contextlib.suppress(OSError):
            while True:
                file.write(b"x" * 4096)
        drop(store, 70.0)
        assert "No space left on device" in sentence(store.trouble)
        assert rpm_in(path) == 60.0
        store.close()
        recovered = JobStore.open(path)
        assert recovered.job.ground_run.drop_left_rpm == 60.0
        drop(recovered, 80.0)
        filler.unlink()
        recovered.retry()
        assert recovered.trouble is None and rpm_in(path) == 80.0
        recovered.close()
    finally:
        subprocess.run(["umount", "-l", str(tmp_path / "small")], check=True)


@pytest.mark.process
@pytest.mark.skipif(not hasattr(os, "geteuid") or os.geteuid() != 0, reason="mounting takes root")
def test_a_drive_that_is_pulled_out_and_put_back(tmp_path):
    disk = small_disk(tmp_path)
    if disk is None:
        pytest.skip("this machine mounts nothing")
    path = disk / "a-job.json"
    store = JobStore.create(path, new_job())
    drop(store, 60.0)
    # Detached while a file on it is open, as a stick is: its folder is there, and is another place.
    subprocess.run(["umount", "-l", str(disk)], check=True)
    drop(store, 70.0)
    assert "its folder or drive is gone" in sentence(store.trouble)
    assert list(disk.iterdir()) == []  # not written where the stick used to be
    store.save_as(tmp_path / "b-job.json")
    assert store.trouble is None and rpm_in(tmp_path / "b-job.json") == 70.0
    store.close()


@pytest.mark.process
@pytest.mark.skipif(sys.platform == "win32", reason="limits of a process are Unix")
def test_a_write_that_stops_half_way(tmp_path):
    """The kernel cuts the write off in the middle of the file: what was there stands."""
    code = textwrap.dedent("""
        import resource, signal, sys
        from pathlib import Path
        from magview.job.sheet import change_in, new_job
        from magview.job.store import JobStore
        signal.signal(signal.SIGXFSZ, signal.SIG_IGN)
        path = Path(sys.argv[1])
        store = JobStore.create(path, new_job("small"))
        resource.setrlimit(resource.RLIMIT_FSIZE, (2000, resource.RLIM_INFINITY))
        store.commit(change_in(store.job, "remarks", text="x" * 3900), "much text")
        print(store.trouble)
        print(sorted(p.name for p in path.parent.iterdir()))
    """)
    path = tmp_path / "a-job.json"
    done = subprocess.run(
        [sys.executable, "-c", code, str(path)], capture_output=True, text=True, cwd=ROOT, check=True, timeout=60
    )
    trouble, left = done.stdout.splitlines()
    assert "cannot be written: File too large" in trouble
    assert "part" not in left and left == "['.a-job.json.lock', 'a-job.json']"
    assert read_job(path) == new_job("small")


@pytest.mark.process
@pytest.mark.skipif(sys.platform == "win32", reason="folders of Windows know no such mode")
def test_a_folder_that_takes_no_files_is_read_only_with_a_sentence(tmp_path):
    """In a process without root's rights, which mind no modes."""
    code = textwrap.dedent("""
        import filelock, os, sys
        from pathlib import Path
        from magview.job.library import job_path, read_job
        from magview.job.sheet import change_in
        from magview.job.store import JobStore
        from magview.spec.base import SpecError
        read_job(job_path("seven-radial-left"))  # all that Python loads late is loaded
        if os.geteuid() == 0:
            os.seteuid(65534)
        store = JobStore.open(Path(sys.argv[1]))
        print(store.read_only)
        try:
            store.commit(change_in(store.job, "remarks", text="x"), "x")
        except SpecError as error:
            print(error)
        store.save_as(Path(sys.argv[2]))
        store.commit(change_in(store.job, "remarks", text="elsewhere"), "x")
        print(store.trouble)
    """)
    with tempfile.TemporaryDirectory() as base:
        closed, open_ = Path(base) / "closed", Path(base) / "open"
        for folder in (closed, open_):
            folder.mkdir()
        JobStore.create(closed / "a-job.json", new_job("kept")).close()
        os.chmod(base, 0o755)
        os.chmod(open_, 0o777)
        os.chmod(closed, 0o555)
        try:
            done = subprocess.run(
                [sys.executable, "-c", code, str(closed / "a-job.json"), str(open_ / "b-job.json")],
                capture_output=True, text=True, cwd=ROOT, check=False, timeout=60,
            )  # fmt: skip
            assert done.returncode == 0, done.stderr
            first, second, third = done.stdout.splitlines()
            assert "can only be read: its folder takes no files (Permission denied)" in first
            assert second == first and third == "None"
            assert read_job(closed / "a-job.json").title == "kept"
            assert read_job(open_ / "b-job.json").remarks.text == "elsewhere"
        finally:
            os.chmod(closed, 0o755)


def test_a_folder_that_has_gone_and_come_back(store, path, tmp_path):
    drop(store, 60.0)
    away = tmp_path.with_name(tmp_path.name + "-away")
    tmp_path.rename(away)
    drop(store, 70.0)
    assert "its folder or drive is gone; put it back, or save elsewhere" in sentence(store.trouble)
    assert not tmp_path.exists()
    away.rename(tmp_path)
    drop(store, 80.0)
    assert store.trouble is None and rpm_in(path) == 80.0


def test_a_file_that_was_deleted_is_written_again(store, path):
    drop(store, 60.0)
    path.unlink()
    drop(store, 70.0)
    assert store.trouble is None and rpm_in(path) == 70.0


@pytest.mark.parametrize("what", ["missing", "folder", "empty", "foreign", "newer"])
def test_what_is_no_job_is_refused_and_left_as_it_was(tmp_path, what):
    path = tmp_path / "x-job.json"
    text = {"empty": "", "foreign": "[1]", "newer": '{"format": "magview-job/2"}'}.get(what)
    if what == "folder":
        path.mkdir()
    elif text is not None:
        path.write_text(text, encoding="utf-8")
    with pytest.raises(SpecError) as caught:
        JobStore.open(path)
    sentence(str(caught.value))
    assert [p.name for p in tmp_path.iterdir()] == ([] if what == "missing" else ["x-job.json"])
    assert text is None or path.read_text(encoding="utf-8") == text
    if what == "newer":
        assert "a newer magview wrote it" in str(caught.value)


def test_half_written_files_of_a_kill_are_swept_and_others_are_not(tmp_path):
    path = tmp_path / "a-job.json"
    JobStore.create(path, new_job()).close()
    ours, theirs = tmp_path / ".a-job.json.ab12_xyz", (".b-job.json.ab12_xyz", ".a-job.json.notes", "a-job.json.bak")
    ours.write_text("half")
    for name in theirs:
        (tmp_path / name).write_text("keep")
    JobStore.open(path).close()
    assert sorted(p.name for p in tmp_path.iterdir()) == sorted([*theirs, "a-job.json"])
