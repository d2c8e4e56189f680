"""Reports of faults: what they hold, what they must not hold, and how they are kept."""

from __future__ import annotations

import getpass
import os
import subprocess
import sys
import time
from dataclasses import dataclass
from pathlib import Path

import pytest

from magview.bench.actions import NoteTrial, TurnBackplate, TurnRotor
from magview.physics.trials.trial import Trial
from magview.spec.base import SpecError
from magview.spec.files import read_magneto
from magview.upkeep import reports
from magview.upkeep.trace import open_trace


def caught(call, *args) -> BaseException:
    try:
        call(*args)
    except Exception as error:
        return error
    raise AssertionError("nothing went wrong")


def test_a_report_says_what_where_and_with_which_versions():
    error = caught(reports.offered, None)
    text = reports.fault_text(error)
    assert "AttributeError" in text
    assert 'File "magview/upkeep/reports.py", line' in text
    assert "in offered" in text
    assert f"Python {sys.version.split()[0]}" in text
    assert "sent nowhere" in text or "nothing is sent" in text


@pytest.mark.parametrize("name", ["anna-smith.json", "Anna Smith.json", "Anna's left one.magview.json", "ñandú.json"])
@pytest.mark.parametrize("raised", [SpecError, FileNotFoundError, ValueError, KeyError])
def test_no_file_name_no_folder_no_typed_word_is_in_a_report(tmp_path, monkeypatch, name, raised):
    home = tmp_path / "anna smith"
    monkeypatch.setenv("HOME", str(home))
    monkeypatch.setenv("USERPROFILE", str(home))
    path = home / "work" / name
    typed = f"cannot take “Anna's own words” from {path}: line 3"

    def wrong() -> None:
        if raised is SpecError:
            read_magneto(path)
        elif raised is FileNotFoundError:
            path.read_text(encoding="utf-8")
        elif raised is KeyError:
            raise KeyError(str(path))
        else:
            raise ValueError(typed)

    text = reports.fault_text(caught(wrong))
    assert raised.__name__ in text
    for secret in ("anna", "Anna", "smith", "Smith", "own words", str(tmp_path), "left one", "ñandú"):
        assert secret not in text, text


def test_the_login_name_is_taken_out(monkeypatch):
    monkeypatch.setattr(getpass, "getuser", lambda: "wilhelmina")
    assert "wilhelmina" not in reports.scrubbed("RuntimeError: wilhelmina may not do that")
    assert "RuntimeError" in reports.scrubbed("RuntimeError: wilhelmina may not do that")


@dataclass(frozen=True)
class SignSheet:
    trainee: str
    teeth: int
    on: bool


def test_acts_are_told_by_kind_and_number_without_words():
    acts = [TurnBackplate(1.5), TurnRotor(3.0), TurnRotor(4.0), TurnRotor(24.25), SignSheet("Anna", 3, True)]
    text = reports.fault_text(ValueError("x"), acts)
    told = text[text.index("What was done last:") :].splitlines()[1:]
    assert [line.strip().split(":")[0] for line in told if line] == [
        "Turn backplate", "Turn rotor × 3", "Sign sheet",
    ]  # fmt: skip
    assert "1.5" in told[0] and "24.25" in told[1] and "3" in told[2] and "True" in told[2]
    assert "Anna" not in text


def test_only_the_last_acts_are_told():
    acts = [TurnBackplate(0.1) if i % 2 else TurnRotor(float(i)) for i in range(500)]
    told = reports.fault_text(ValueError("x"), acts).split("What was done last:")[1].strip().splitlines()
    assert len(told) == reports.MAX_ACTS
    assert "Turn backplate" in told[-1] and "498" in told[-2]


def test_acts_that_hold_a_whole_model_do_not_fill_the_report():
    text = reports.fault_text(ValueError("x"), [NoteTrial(Trial.blades(0.0, 0.2, 0.3))])
    assert "Note trial" in text


def test_reports_are_kept_offered_once_and_the_oldest_go(tmp_path):
    folder = tmp_path / "reports"
    made = [reports.keep(folder, f"{i}") for i in range(reports.MAX_KEPT + 3)]
    kept = reports.kept(folder)
    assert len(kept) == reports.MAX_KEPT
    assert kept[0] == made[-1] and made[0] not in kept  # the newest first
    assert [p.read_text(encoding="utf-8") for p in kept[:2]] == ["22", "21"]
    assert reports.not_offered(folder) == kept
    shown = reports.offered(kept[0])
    assert shown.read_text(encoding="utf-8") == "22"
    assert kept[0] not in reports.not_offered(folder)
    assert reports.kept(folder)[0] == shown
    assert reports.offered(shown) == shown


def test_reports_are_in_order_over_the_turn_of_a_second(tmp_path, monkeypatch):
    """A clock that is past the second when it is looked at again."""
    moments = iter([1_000_000_000_999_999_000, 1_000_000_001_000_001_000])
    monkeypatch.setattr(reports.time, "time_ns", lambda: next(moments))
    made = [reports.keep(tmp_path, text) for text in ("first", "second")]
    assert reports.kept(tmp_path) == made[::-1]


def test_a_folder_that_cannot_be_used_is_one_sentence_or_no_reports(tmp_path):
    (tmp_path / "file").write_text("", encoding="utf-8")
    with pytest.raises(SpecError, match="nothing can be kept"):
        reports.keep(tmp_path / "file" / "reports", "text")
    assert reports.kept(tmp_path / "file") == []
    assert open_trace(tmp_path / "file") is None
    reports.gather_traces(tmp_path / "nowhere")


@pytest.mark.process
def test_a_program_ended_by_a_bad_access_leaves_a_report(tmp_path):
    """A real one, in a process of its own: the second method is the system's own word, its exit code."""
    code = (
        "import ctypes, faulthandler, sys\n"
        "from pathlib import Path\n"
        "from magview.upkeep.trace import open_trace\n"
        "trace = open_trace(Path(sys.argv[1]))\n"
        "faulthandler.enable(trace.file)\n"
        "def fall(): ctypes.string_at(0)\n"
        "fall()\n"
    )
    done = subprocess.run([sys.executable, "-c", code, tmp_path], capture_output=True, check=False, timeout=60)
    assert done.returncode not in (0, 1)
    reports.gather_traces(tmp_path)
    (found,) = reports.not_offered(tmp_path)
    text = found.read_text(encoding="utf-8")
    assert "in fall" in text and "Versions:\n  magview" in text
    assert list(tmp_path.iterdir()) == [found]


def test_a_living_programs_empty_trace_is_let_be_and_an_old_one_goes(tmp_path):
    trace = open_trace(tmp_path)
    assert trace is not None
    reports.gather_traces(tmp_path)
    assert trace.path.exists()
    long_ago = time.time() - 40 * 86_400
    os.utime(trace.path, (long_ago, long_ago))
    if os.name != "nt":
        reports.gather_traces(tmp_path)
        assert not trace.path.exists()
    trace.discard()
    assert reports.kept(tmp_path) == []


def test_a_trace_that_cannot_become_a_report_is_kept_for_the_next_start(tmp_path, monkeypatch):
    (tmp_path / "trace-1-1.txt").write_text("Fatal Python error: Aborted\n", encoding="utf-8")

    def full(*_: object) -> Path:
        raise SpecError("no space")

    with monkeypatch.context() as broken:
        broken.setattr(reports, "keep", full)
        reports.gather_traces(tmp_path)
    assert [p.name for p in tmp_path.iterdir()] == ["trace-1-1.txt"]
    reports.gather_traces(tmp_path)
    assert "Aborted" in reports.kept(tmp_path)[0].read_text(encoding="utf-8")
