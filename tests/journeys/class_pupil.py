"""A pupil at a machine of their own, run as a process: joins by the menu, does the exercise, hands in.

``python class_pupil.py CODE NAME FOLDER HOME``; every act is a mouse or a key event. Says "handed in" at the end.
"""

from __future__ import annotations

import os
import sys
import time
from pathlib import Path


def main(code: str, name: str, folder: str, home: str) -> None:
    """Sit down and work."""
    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    from PySide6.QtCore import Qt
    from PySide6.QtTest import QTest
    from PySide6.QtWidgets import QApplication

    app = QApplication([])
    from magview.bench.autosave import Autosave
    from magview.bench.placing import new_bench
    from magview.spec.library import find_magneto
    from magview.ui.kit.bench_model import BenchModel
    from magview.ui.kit.look import Look
    from magview.ui.kit.theme import LIGHT
    from tests.hands import click
    from tests.journeys.window_trainee import WindowTrainee
    from tests.windows import workbench

    def wait(until) -> None:
        end = time.monotonic() + 60.0
        while not until():
            assert time.monotonic() < end, "waited in vain"
            app.processEvents()

    main_window = workbench()(
        BenchModel(new_bench(find_magneto("seven-radial"))), Look(LIGHT), Autosave(Path(home) / "bench")
    )
    main_window.furnish()
    main_window.show()
    wait(main_window.isVisible)
    menu = next(m for m in main_window.menuBar().actions() if "ractice" in m.text()).menu()
    next(a for a in menu.actions() if "oin a class" in a.text()).trigger()
    desk = main_window.classes.pages["join"]
    wait(desk.isActiveWindow)
    for field, words in ((desk.code, code), (desk.name.lineEdit(), name), (desk.folder, folder)):
        field.setFocus()
        field.selectAll()
        QTest.keyClicks(field, words)
    click(desk.start)
    wait(lambda: main_window.practice.attempts)
    window = main_window.practice.attempts[0]
    wait(window.isActiveWindow)
    WindowTrainee(window).work()
    wait(lambda: not main_window.classes.courier.busy)
    QTest.keyClick(desk, Qt.Key.Key_Tab)
    assert "Handed in" in desk.exercises.words(0, 1), desk.exercises.words(0, 1)
    window.close()
    main_window.close()
    wait(lambda: not main_window.practice.attempts and not main_window.classes.pages)
    sys.stdout.write("handed in\n")
    sys.stdout.flush()
    os._exit(0)  # no teardown of a test's windows is tried here


if __name__ == "__main__":
    sys.path.insert(0, str(Path(__file__).resolve().parents[2]))
    main(*sys.argv[1:5])
