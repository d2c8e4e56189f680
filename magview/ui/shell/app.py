"""Starting Qt and the window."""

from __future__ import annotations

import contextlib
import os
import signal
import sys
from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, QTimer
from PySide6.QtWidgets import QApplication

from magview.bench.autosave import Autosave
from magview.spec.engine import Installation
from magview.spec.language import tr
from magview.spec.library import first_shipped, resources
from magview.spec.magneto import Magneto
from magview.ui.kit.crash_reports import Mishaps, note
from magview.ui.kit.settings import keep_inches, kept_inches, start_put_away
from magview.ui.kit.translation import speak
from magview.ui.shell.window import MainWindow
from magview.upkeep import places

if TYPE_CHECKING:
    from PySide6.QtGui import QIcon

    from magview.ui.kit.bench_model import BenchModel

APP_ID = "magview"
"""Ties windows to the desktop entry (Linux) and to one button of the task bar (Windows)."""

ICON_SIZES = (16, 32, 48, 128)

_M_MMAP_THRESHOLD, _LARGE_BYTES = -3, 2_000_000
"""The C library's number (malloc.h), and a size between a window's picture and the arrays of a plot."""


def run(
    item: Magneto | Installation | None,
    recover: bool = True,
    then: Callable[[MainWindow], None] | None = None,
    first: str = "bench",
) -> int:
    """Open the window on a magneto, alone or on its engine, and stay until it is closed; returns the exit code.

    None is the first one that ships; it is read when somebody goes to the bench.

    `recover`: show instead the bench that a killed program left, if there is one. `then`: what to do once the
    window is complete. `first`: the place to open at, where no bench is found again.
    """
    mishaps = Mishaps(places.report_folder())
    mishaps.watch()
    try:
        return _run(item, recover, then, first, mishaps)
    finally:
        mishaps.end()


def _run(
    item: Magneto | Installation | None,
    recover: bool,
    then: Callable[[MainWindow], None] | None,
    first: str,
    mishaps: Mishaps,
) -> int:
    _name_for_taskbar()
    return_large_blocks()
    app = QApplication.instance() or QApplication(sys.argv[:1])
    assert isinstance(app, QApplication)
    app.setApplicationName("magview")
    app.setApplicationDisplayName("magview")
    app.setDesktopFileName(APP_ID)
    autosave = Autosave(places.work_folder())
    found = autosave.recover() if recover else None
    speak()
    if found is not None or (first == "start" and start_put_away()):
        first = "bench"

    def model() -> BenchModel:
        from magview.bench.placing import laid_out
        from magview.ui.kit.bench_model import BenchModel

        return BenchModel(found or laid_out(item or first_shipped()))

    window = MainWindow(model, autosave=autosave, first=first)
    look = window.look
    look.inches = kept_inches()
    look.changed.connect(lambda: keep_inches(look.inches))
    mishaps.tell = _teller(window)
    held = [window]

    def renew(code: str) -> None:
        from magview.ui.shell.renewal import renewed

        new = renewed(held[0], code or None)
        if new is not held[0]:
            new.language_wanted.connect(renew, Qt.ConnectionType.QueuedConnection)
            held[0] = new
            mishaps.tell = _teller(new)

    # Queued: the menu that was clicked goes with its window.
    window.language_wanted.connect(renew, Qt.ConnectionType.QueuedConnection)
    window.show()
    QTimer.singleShot(0, window, lambda: app.setWindowIcon(_icon()))  # reading pictures takes 8 ms
    if found is not None:
        window.say(tr("The program had not been closed as it should; the bench is as you left it."))
    elif recover and any(autosave.folder.glob("own-*.json")):
        window.say(tr("Drafts of a magneto of your own wait for you: File, A magneto of your own…"))
    if recover and any(autosave.folder.glob("attempt-*.json")):
        QTimer.singleShot(0, window, lambda: window.practice.recover())
    _once_complete(window, then)
    if any((autosave.folder.parent / "class" / "outbox").glob("*.json")):
        QTimer.singleShot(0, window, lambda: held[0].classes.deliver_waiting())
    # Ctrl+C in the terminal ends the program; Python only sees it while Python code runs.
    signal.signal(signal.SIGINT, signal.SIG_DFL)
    if os.environ.get("MAGVIEW_QUIT_AFTER_MS"):  # for checks that the installed program starts
        QTimer.singleShot(int(os.environ["MAGVIEW_QUIT_AFTER_MS"]), app, app.quit)
    code: int = app.exec()
    return code


def return_large_blocks() -> None:
    """Have what pictures took given back to the system once they are gone.

    glibc learns from the first freed picture to keep blocks of that size for itself; in an hour of opening and
    closing windows it came to hold 270 MB that nobody used. Other C libraries are left as they are.
    """
    if sys.platform == "linux":
        import ctypes

        with contextlib.suppress(AttributeError, OSError):
            ctypes.CDLL(None).mallopt(_M_MMAP_THRESHOLD, _LARGE_BYTES)


def _name_for_taskbar() -> None:
    if sys.platform == "win32":  # else Windows shows all of Python's programs as one, with Python's icon
        import ctypes

        with contextlib.suppress(AttributeError, OSError):
            ctypes.windll.shell32.SetCurrentProcessExplicitAppUserModelID(APP_ID)


def _icon() -> QIcon:
    from PySide6.QtGui import QIcon  # with 150 names of icons; nobody waits for it here

    icon = QIcon()
    for size in ICON_SIZES:
        icon.addFile(str(resources() / "icons" / f"magview-{size}.png"))
    return icon


def _teller(window: MainWindow) -> Callable[[str], None]:
    """Says something in the window that is in front, if it is one of ours that can."""

    def tell(sentence: str) -> None:
        say = getattr(QApplication.activeWindow(), "say", window.say)
        say(sentence)

    return tell


def _once_complete(window: MainWindow, then: Callable[[MainWindow], None] | None) -> None:
    """Do what nobody waits for: the log, what stands in the way of keeping things, reports of an earlier fault."""

    def look() -> None:
        if window.furnishing:
            QTimer.singleShot(50, window, look)
            return
        _after_start(window)
        if then is not None:
            then(window)

    QTimer.singleShot(50, window, look)


def _after_start(window: MainWindow) -> None:
    from magview.upkeep import reports
    from magview.upkeep.log import open_log

    open_log(places.log_folder())
    note(20, "; ".join(f"{name} {number}" for name, number in reports.versions()))
    trouble = places.trouble_with(places.work_folder())
    if trouble is not None:
        note(30, reports.scrubbed(trouble))
        window.say(tr("Your work is not kept for after a crash: {reason}", reason=trouble))
    folder: Path = places.report_folder()
    reports.gather_traces(folder)
    if reports.not_offered(folder):
        window.show_fault_reports(after_fault=True)
