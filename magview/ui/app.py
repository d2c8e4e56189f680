"""Starting Qt and the window."""

from __future__ import annotations

import os
import signal
import sys
from pathlib import Path

from PySide6.QtCore import QMessageLogContext, QStandardPaths, QTimer, QtMsgType, qInstallMessageHandler
from PySide6.QtWidgets import QApplication

from magview.bench.apply import new_bench
from magview.bench.autosave import Autosave
from magview.spec.engine import Installation
from magview.spec.magneto import Magneto
from magview.ui.model import BenchModel
from magview.ui.window import MainWindow


def run(item: Magneto | Installation, recover: bool = True) -> int:
    """Open the window on a magneto, alone or on its engine, and stay until it is closed; returns the exit code.

    `recover`: show instead the bench that a killed program left, if there is one.
    """
    qInstallMessageHandler(_message)
    app = QApplication.instance() or QApplication(sys.argv[:1])
    assert isinstance(app, QApplication)
    app.setApplicationName("magview")
    app.setApplicationDisplayName("magview")
    # Each person's own place for what programs keep; the platform says where.
    place = QStandardPaths.writableLocation(QStandardPaths.StandardLocation.AppLocalDataLocation)
    autosave = Autosave(Path(place) / "bench") if place else None
    found = autosave.recover() if autosave is not None and recover else None
    window = MainWindow(BenchModel(found or new_bench(item)), autosave=autosave)
    window.show()
    if found is not None:
        window.say("The program had not been closed as it should; the bench is as you left it.")
    if recover and autosave is not None and any(autosave.folder.glob("attempt-*.json")):
        QTimer.singleShot(0, window, lambda: window.practice.recover())
    # Ctrl+C in the terminal ends the program; Python only sees it while Python code runs.
    signal.signal(signal.SIGINT, signal.SIG_DFL)
    if os.environ.get("MAGVIEW_QUIT_AFTER_MS"):  # for checks that the installed program starts
        QTimer.singleShot(int(os.environ["MAGVIEW_QUIT_AFTER_MS"]), app, app.quit)
    code: int = app.exec()
    return code


def _message(kind: QtMsgType, context: QMessageLogContext, text: str) -> None:
    if sys.stderr is not None:  # a window without a console has none
        sys.stderr.write(f"{text}\n")
    if kind == QtMsgType.QtFatalMsg:
        # Qt would abort the process; the preflight names what is missing, this is the net below it.
        os._exit(2)
