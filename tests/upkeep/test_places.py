"""Where things are kept, the log, and folders that take nothing."""

from __future__ import annotations

import errno
import logging
import os
import stat
import sys

import pytest

from magview.spec.base import SpecError
from magview.spec.formats import kind_of
from magview.upkeep import places
from magview.upkeep.log import FILE, MAX_BYTES, OLD_ONES, close_log, open_log


@pytest.fixture
def log(tmp_path):
    yield tmp_path / "log"
    close_log()


@pytest.mark.skipif(not sys.platform.startswith("linux"), reason="the XDG folders are Linux's")
def test_the_folders_are_where_the_xdg_variables_say(monkeypatch, tmp_path):
    """XDG Base Directory Specification 0.8: data in XDG_DATA_HOME; logs and history in XDG_STATE_HOME."""
    monkeypatch.setenv("XDG_DATA_HOME", str(tmp_path / "data"))
    monkeypatch.setenv("XDG_STATE_HOME", str(tmp_path / "state"))
    assert places.work_folder() == tmp_path / "data" / "magview" / "bench"
    assert places.class_folder() == tmp_path / "data" / "magview" / "class"
    for folder in (places.log_folder(), places.report_folder()):
        assert folder.is_relative_to(tmp_path / "state" / "magview")
    monkeypatch.delenv("XDG_DATA_HOME")
    monkeypatch.delenv("XDG_STATE_HOME")
    monkeypatch.setenv("HOME", str(tmp_path / "home"))
    assert places.work_folder() == tmp_path / "home/.local/share/magview/bench"
    assert places.class_folder() == tmp_path / "home/.local/share/magview/class"
    assert places.log_folder().is_relative_to(tmp_path / "home/.local/state/magview")


def test_a_folder_that_takes_things_is_no_trouble_and_left_empty(tmp_path):
    assert places.trouble_with(tmp_path / "new" / "one") is None
    assert list((tmp_path / "new" / "one").iterdir()) == []


@pytest.mark.parametrize("code", [errno.ENOSPC, errno.EROFS, errno.EACCES, errno.EDQUOT])
@pytest.mark.parametrize("call", ["fsync", "fdopen"])
def test_a_disk_that_takes_nothing_is_one_sentence(tmp_path, monkeypatch, code, call):
    def fail(handle: int, *_: object) -> None:
        if call == "fdopen":
            os.close(handle)
        raise OSError(code, os.strerror(code))

    with monkeypatch.context() as broken:
        broken.setattr(os, call, fail)
        trouble = places.trouble_with(tmp_path)
    assert os.strerror(code) in trouble and str(tmp_path) in trouble and "\n" not in trouble
    assert list(tmp_path.iterdir()) == []


@pytest.mark.skipif(os.name == "nt" or os.geteuid() == 0, reason="nothing is forbidden to root")
def test_a_forbidden_folder_is_one_sentence(tmp_path):
    tmp_path.chmod(stat.S_IRUSR | stat.S_IXUSR)
    assert "denied" in places.trouble_with(tmp_path / "new")
    tmp_path.chmod(stat.S_IRWXU)


def test_a_place_below_a_file_is_one_sentence(tmp_path):
    (tmp_path / "file").write_text("", encoding="utf-8")
    assert str(tmp_path / "file" / "new") in places.trouble_with(tmp_path / "file" / "new")


def test_the_log_turns_over_and_stays_small(log):
    open_log(log)
    for i in range(3_000):
        logging.getLogger("magview").warning("%d %s", i, "x" * 500)
    close_log()
    files = sorted(log.iterdir())
    assert [f.name for f in files] == [FILE, *(f"{FILE}.{n}" for n in range(1, OLD_ONES + 1))]
    assert all(f.stat().st_size <= MAX_BYTES for f in files)
    assert "2999" in (log / FILE).read_text(encoding="utf-8")


def test_a_log_that_cannot_be_written_says_nothing(tmp_path, capsys, log):
    (tmp_path / "file").write_text("", encoding="utf-8")
    open_log(tmp_path / "file")  # no folder
    logging.getLogger("magview").warning("one")
    open_log(log)
    log.rmdir()
    log.write_text("in the way", encoding="utf-8")  # a folder no more
    logging.getLogger("magview").warning("two")
    assert capsys.readouterr() == ("", "")


def test_what_is_no_file_of_ours_is_refused_in_one_sentence(tmp_path):
    for i, text in enumerate(
        ('{"format": "other/1"}', "[1]", "{}", '{"format": "magview-teapot/1"}', '{"format": 7}')
    ):
        path = tmp_path / f"{i}.json"
        path.write_text(text, encoding="utf-8")
        with pytest.raises(SpecError, match=f"{i}.json: is not a file of this program"):
            kind_of(path)
