"""The lock beside a file: one holder at a time, none after a kill, and no hindrance where a drive has no locks."""

import errno
import os
import subprocess
import sys
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path

import pytest

from magview.spec.lock import Held, Lock

HOLDER = """
import sys
from pathlib import Path
from magview.spec.lock import Lock
lock = Lock(Path(sys.argv[1]))
print("held", flush=True)
sys.stdin.read()
"""


def test_one_holder_at_a_time_and_no_file_left(tmp_path):
    path = tmp_path / "a.lock"
    first = Lock(path)
    with pytest.raises(Held):
        Lock(path)
    first.release()
    assert not path.exists() and not first.held
    second = Lock(path)
    assert second.held
    second.let_go()
    assert path.exists()
    Lock(path).release()


def test_a_lock_left_by_a_killed_process_does_not_block(tmp_path):
    path = tmp_path / "a.lock"
    with subprocess.Popen(
        [sys.executable, "-c", HOLDER, str(path)], stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True
    ) as other:
        assert other.stdout is not None and other.stdout.readline() == "held\n"
        with pytest.raises(Held):
            Lock(path)
        other.kill()
    assert path.exists()
    Lock(path).release()


def test_a_lock_that_is_taken_away_while_others_wait_has_one_holder(tmp_path):
    path, inside, most = tmp_path / "a.lock", [], []

    def work(_: int) -> None:
        for _ in range(40):
            while True:
                try:
                    lock = Lock(path)
                except Held:
                    continue
                break
            inside.append(1)
            most.append(len(inside))
            inside.pop()
            lock.release()

    with ThreadPoolExecutor(4) as pool:
        list(pool.map(work, range(4)))
    assert len(most) == 160 and max(most) == 1


@pytest.mark.skipif(sys.platform == "win32", reason="flock is Unix")
@pytest.mark.parametrize("code", [errno.ENOSYS, errno.ENOLCK, errno.EOPNOTSUPP])
def test_a_drive_that_knows_no_locks_keeps_nobody_out(tmp_path, monkeypatch, code):
    import fcntl

    def none(*_: object) -> None:
        raise OSError(code, os.strerror(code))

    monkeypatch.setattr(fcntl, "flock", none)
    first, second = Lock(tmp_path / "a.lock"), Lock(tmp_path / "a.lock")
    assert not first.held and not second.held
    first.release()
    second.release()


def test_where_no_file_can_be_written_the_system_says_why(tmp_path):
    with pytest.raises(FileNotFoundError):
        Lock(tmp_path / "absent" / "a.lock")
    assert not (tmp_path / "absent").exists()
    (tmp_path / "b.lock").mkdir()
    with pytest.raises(OSError, match="directory"):
        Lock(tmp_path / "b.lock")


@pytest.mark.skipif(sys.platform == "win32" or os.geteuid() == 0, reason="root may write anywhere")
def test_a_folder_that_may_only_be_read(tmp_path):
    tmp_path.chmod(0o500)
    try:
        with pytest.raises(PermissionError):
            Lock(tmp_path / "a.lock")
    finally:
        tmp_path.chmod(0o700)


def test_a_drive_mounted_for_reading_only(tmp_path, monkeypatch):
    def read_only(*_: object, **__: object) -> int:
        raise OSError(errno.EROFS, os.strerror(errno.EROFS))

    with monkeypatch.context() as broken:
        broken.setattr(os, "open", read_only)
        with pytest.raises(OSError, match=os.strerror(errno.EROFS)):
            Lock(Path(tmp_path / "a.lock"))
