"""The program at fault: a report is kept, one sentence said, the window goes on; offered at the next start."""

from __future__ import annotations

import faulthandler
import os
import subprocess
import sys
import textwrap
import threading
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QTimer, qWarning
from PySide6.QtWidgets import QMessageBox

from magview.bench.actions import TurnBackplate, TurnScrew
from magview.ui.kit.crash_report_dialog import ReportDialog
from magview.ui.kit.crash_reports import MOST_REPORTS, Mishaps
from magview.upkeep import reports
from tests.hands import what_is_due
from tests.wording import says


@pytest.fixture
def watched(tmp_path, qapp) -> Iterator[tuple[Mishaps, list[str]]]:
    """The hooks in place, and what they say; afterwards those of the tests are back."""
    before = sys.excepthook, threading.excepthook, sys.unraisablehook
    mishaps, said = Mishaps(tmp_path / "reports"), []
    mishaps.tell = said.append
    sys.excepthook, threading.excepthook = mishaps._uncaught, mishaps._in_thread  # noqa: SLF001
    yield mishaps, said
    sys.excepthook, threading.excepthook, sys.unraisablehook = before


def happen(qtbot, what: Callable[[], None]) -> None:
    QTimer.singleShot(0, what)
    what_is_due()


def fall() -> None:
    raise RuntimeError("a bolt fell")


def kept(tmp_path: Path) -> list[str]:
    return [p.read_text(encoding="utf-8") for p in reports.kept(tmp_path / "reports")]


def test_a_fault_in_a_slot_is_told_once_and_the_window_goes_on(qtbot, tmp_path, watched, open_window, capsys):
    mishaps, said = watched
    window = open_window()
    mishaps.tell = window.say
    window.model.send(TurnBackplate(1.25))
    happen(qtbot, fall)
    assert "A report was kept" in window.statusBar().currentMessage()
    (text,) = kept(tmp_path)
    assert "RuntimeError: a bolt fell" in text and "in fall" in text
    assert "Turn backplate" in text and "1.25" in text
    window.model.send(TurnBackplate(0.5))  # alive
    assert window.model.state.backplate_deg == 0.5
    for _ in range(5):
        happen(qtbot, fall)
    assert len(kept(tmp_path)) == 1  # the same place again is told no second time
    assert "Traceback" not in capsys.readouterr().err
    assert said == []


def test_a_report_has_the_acts_of_open_windows_alone(qtbot, tmp_path, watched, open_window):
    """Seen once in a whole run: a practice window of before, not yet thrown away, pushed the bench's acts out."""
    put_away, front = open_window(), open_window()
    for _ in range(300):
        put_away.model.send(TurnBackplate(1.0))
        put_away.model.send(TurnScrew(2.0))
    front.model.send(TurnBackplate(1.25))
    put_away.hide()
    happen(qtbot, fall)
    (text,) = kept(tmp_path)
    assert "Turn backplate" in text and "1.25" in text
    assert "Turn screw" not in text


def test_a_fault_in_a_thread_is_told_in_the_window(qtbot, tmp_path, watched, capsys):
    _, said = watched
    here = threading.get_ident()
    threads: list[int] = []
    watched[0].tell = lambda sentence: (said.append(sentence), threads.append(threading.get_ident()))
    thread = threading.Thread(target=fall)
    thread.start()
    thread.join()
    qtbot.waitUntil(lambda: bool(said))
    assert threads == [here]
    assert "a bolt fell" in kept(tmp_path)[0]


def test_a_program_in_pieces_does_not_report_for_ever(qtbot, tmp_path, watched, capsys):
    _, said = watched
    space: dict[str, Callable[[], None]] = {}
    for i in range(MOST_REPORTS + 4):
        exec(compile("\n" * i + "def fall(): raise RuntimeError('a bolt fell')", "<bolts>", "exec"), space)
        happen(qtbot, space["fall"])
    assert len(kept(tmp_path)) == len(said) == MOST_REPORTS


def test_where_no_report_can_be_kept_the_person_is_told_so(qtbot, tmp_path, watched, capsys):
    _, said = watched
    (tmp_path / "reports").write_text("in the way", encoding="utf-8")
    happen(qtbot, fall)
    assert len(said) == 1
    assert "No report of it could be kept" in said[0]
    assert "Traceback" not in capsys.readouterr().err


def test_what_goes_wrong_while_reporting_ends_as_python_ends_it(qtbot, tmp_path, watched, capsys):
    mishaps, _ = watched

    def tell(_: str) -> None:
        raise ValueError("no voice")

    mishaps.tell = tell
    happen(qtbot, fall)
    assert "a bolt fell" in kept(tmp_path)[0]
    assert "RuntimeError: a bolt fell" in capsys.readouterr().err


def test_ctrl_c_is_no_fault(tmp_path, watched, capsys):
    sys.excepthook(KeyboardInterrupt, KeyboardInterrupt(), None)
    assert kept(tmp_path) == []
    assert "KeyboardInterrupt" in capsys.readouterr().err


def test_watching_and_ending_leave_python_as_it_was(tmp_path, qapp, capsys):
    before = sys.excepthook, threading.excepthook, sys.unraisablehook
    fatal = faulthandler.is_enabled()
    mishaps = Mishaps(tmp_path / "reports")
    mishaps.watch()
    assert sys.excepthook == mishaps._uncaught and faulthandler.is_enabled()  # noqa: SLF001
    assert len(list((tmp_path / "reports").glob("trace-*"))) == 1
    qWarning("the belt slips")
    assert "the belt slips" in capsys.readouterr().err
    mishaps.end()
    assert sys.excepthook is sys.__excepthook__
    assert list((tmp_path / "reports").iterdir()) == []
    sys.excepthook, threading.excepthook, sys.unraisablehook = before
    if fatal:
        faulthandler.enable(sys.__stderr__)


# ---------------------------------------------------------------------- the dialog


@pytest.fixture
def dialog(qtbot, tmp_path) -> Iterator[Callable[..., ReportDialog]]:
    def show(**how: bool) -> ReportDialog:
        made = ReportDialog(tmp_path, **how)
        qtbot.addWidget(made)
        made.show()
        return made

    return show


def test_reports_are_shown_saved_and_deleted(tmp_path, dialog):
    for text in ("the first", "the second"):
        reports.keep(tmp_path, text)
    shown = dialog(after_fault=True)
    assert "sent nowhere" in shown.words.text()
    assert shown.text.toPlainText() == "the second"
    assert reports.not_offered(tmp_path) == []  # shown now: not offered again
    shown.choice.setCurrentIndex(1)
    assert shown.text.toPlainText() == "the first"
    shown.save(tmp_path / "elsewhere.txt")
    assert (tmp_path / "elsewhere.txt").read_text(encoding="utf-8") == "the first"
    shown.save(tmp_path / "no" / "where.txt")
    assert "cannot be written" in shown.answer.text()
    shown.delete_button.click()
    assert [p.read_text(encoding="utf-8") for p in reports.kept(tmp_path)] == ["the second"]
    shown.delete_button.click()
    assert reports.kept(tmp_path) == []
    assert shown.text.toPlainText() == says("There is no report.")
    assert not shown.save_button.isEnabled() and not shown.delete_button.isEnabled()
    shown.delete()  # nothing to delete, and nothing happens


def test_a_report_that_somebody_else_deleted_is_one_sentence(tmp_path, dialog):
    for text in ("one", "two"):
        reports.keep(tmp_path, text)
    shown = dialog()
    for path in reports.kept(tmp_path):
        path.unlink()
    shown.choice.setCurrentIndex(1)
    assert "cannot be read" in shown.answer.text()


def test_everything_in_the_dialog_is_reached_by_keyboard_and_named(tmp_path, dialog):
    from PySide6.QtCore import Qt

    reports.keep(tmp_path, "x")
    shown = dialog()
    for widget in (shown.choice, shown.text):
        assert widget.accessibleName()
    for widget in (shown.choice, shown.text, shown.save_button, shown.delete_button, shown.close_button):
        assert widget.focusPolicy() & Qt.FocusPolicy.TabFocus


# ---------------------------------------------------------------------- whole runs, each a process of its own

START = """
import resource, sys
from magview.spec.library import find_magneto
from magview.ui.shell import app

def then(window):
    print("SAID", window.statusBar().currentMessage())
    from PySide6.QtCore import QTimer
    from PySide6.QtWidgets import QApplication
    from magview.bench.actions import TurnBackplate
    from magview.ui.kit.crash_report_dialog import ReportDialog
    window.model.send(TurnBackplate(1.0))
    dialogs = [w for w in QApplication.topLevelWidgets() if isinstance(w, ReportDialog) and w.isVisible()]
    print("DIALOGS", len(dialogs))
    {then}
    QTimer.singleShot(1300, window, window.close)

{first}
raise SystemExit(app.run(find_magneto("seven-radial"), True, then))
"""


def run(home: Path, then: str = "", first: str = "") -> subprocess.CompletedProcess[str]:
    folders = {f"XDG_{name}_HOME": str(home / name.lower()) for name in ("DATA", "STATE", "CACHE", "CONFIG")}
    code = textwrap.dedent(START).replace("{then}", then).replace("{first}", first)
    environment = {**os.environ, **folders, "HOME": str(home), "QT_QPA_PLATFORM": "offscreen"}
    return subprocess.run(
        [sys.executable, "-c", code], capture_output=True, text=True, check=False, timeout=90, env=environment
    )


@pytest.mark.process
def test_all_that_is_written_is_in_the_persons_own_folders(tmp_path):
    done = run(tmp_path)
    assert (done.returncode, "SAID \n" in done.stdout, "Traceback" in done.stderr) == (0, True, False), done.stderr
    files = {p.relative_to(tmp_path).as_posix() for p in tmp_path.rglob("*") if p.is_file()}
    assert files == {"state/magview/log/magview.log"}  # what was kept for after a crash is gone with a good end
    folders = {p.relative_to(tmp_path).parts[0] for p in tmp_path.iterdir()}
    assert folders <= {"data", "state", "cache", "config"}


@pytest.mark.process
def test_a_fault_is_offered_at_the_next_start_and_only_once(tmp_path):
    fault = "QTimer.singleShot(0, window, lambda: 1 / 0)"
    done = run(tmp_path, fault)
    assert done.returncode == 0
    assert "a report of a fault" in done.stderr and "Traceback" not in done.stderr
    assert "DIALOGS 0" in done.stdout
    (report,) = reports.kept(tmp_path / "state/magview/reports")
    assert "ZeroDivisionError" in report.read_text(encoding="utf-8")
    assert "ZeroDivisionError" in (tmp_path / "state/magview/log/magview.log").read_text(encoding="utf-8")
    assert "DIALOGS 1" in run(tmp_path).stdout
    assert "DIALOGS 0" in run(tmp_path).stdout


@pytest.mark.process
@pytest.mark.skipif(not sys.platform.startswith("linux"), reason="signals and limits as Linux has them")
def test_a_program_ended_by_the_system_is_offered_at_the_next_start(tmp_path):
    done = run(tmp_path, "import ctypes; ctypes.string_at(0)")
    assert done.returncode == -11  # SIGSEGV, as signal(7) numbers it
    again = run(tmp_path)
    assert "DIALOGS 1" in again.stdout
    (report,) = reports.kept(tmp_path / "state/magview/reports")
    assert "Segmentation fault" in report.read_text(encoding="utf-8")


@pytest.mark.process
@pytest.mark.skipif(not sys.platform.startswith("linux"), reason="signals and limits as Linux has them")
@pytest.mark.parametrize("broken", ["home below a file", "full disk", "full disk with work left by a killed program"])
def test_where_nothing_can_be_kept_it_starts_and_says_so(tmp_path, broken):
    home, first = tmp_path, ""
    if broken == "home below a file":
        (tmp_path / "file").write_text("", encoding="utf-8")
        home = tmp_path / "file"
    else:  # no file may grow: every write fails, as on a full disk, whoever one is
        first = "resource.setrlimit(resource.RLIMIT_FSIZE, (0, 0))"
    if broken.endswith("killed program"):
        assert run(home, "window.bench_page._keep(); import os; os._exit(9)").returncode == 9
        assert list((home / "data/magview/bench").glob("bench-*.json"))
    done = run(home, first=first)
    assert done.returncode == 0, done.stderr
    said = next(line for line in done.stdout.splitlines() if line.startswith("SAID"))
    assert says("Your work is not kept for after a crash: {reason}", reason="nothing can be kept in") in said
    assert "Traceback" not in done.stderr
    if broken.endswith("killed program"):  # and what was there still is
        assert "not kept" in said
        assert any(p.stat().st_size for p in (home / "data/magview/bench").glob("bench-*.json"))


@pytest.mark.process
@pytest.mark.skipif(os.name == "nt" or os.geteuid() == 0, reason="nothing is forbidden to root")
def test_in_a_read_only_home_it_starts_and_says_so(tmp_path):
    tmp_path.chmod(0o500)
    done = run(tmp_path)
    tmp_path.chmod(0o700)
    assert done.returncode == 0
    assert "Your work is not kept" in done.stdout


def test_the_help_menu_shows_the_reports(open_window, monkeypatch, tmp_path):
    monkeypatch.setattr("magview.upkeep.places.report_folder", lambda: tmp_path)
    window = open_window()
    window.show_fault_reports()
    (dialog,) = window.findChildren(ReportDialog)
    assert dialog.text.toPlainText() == says("There is no report.")
    assert not window.findChildren(QMessageBox)
    dialog.close()
