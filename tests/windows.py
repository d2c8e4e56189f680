"""Fixtures for tests that open windows; Qt is imported only when one is asked for."""

from __future__ import annotations

import gc
from collections.abc import Callable, Iterator
from typing import TYPE_CHECKING

import pytest

if TYPE_CHECKING:
    from pytestqt.qtbot import QtBot

    from magview.spec.engine import Installation
    from magview.spec.magneto import Magneto
    from magview.ui.shell.window import MainWindow


@pytest.fixture
def open_window(qtbot: QtBot) -> Iterator[Callable[..., MainWindow]]:
    """Open the main window on a shipped magneto; afterwards no window and no running timer may be left."""
    from PySide6.QtCore import QEvent, QTimer
    from PySide6.QtWidgets import QApplication, QStatusBar

    from magview.bench.placing import new_bench
    from magview.spec.library import find_installation, find_magneto, shipped_names
    from magview.ui.kit.bench_model import BenchModel
    from magview.ui.kit.look import Look
    from magview.ui.kit.theme import LIGHT
    from magview.ui.shell.window import MainWindow

    opened: list[MainWindow] = []

    def open_on(
        name: str | Installation | Magneto = "seven-radial", size: tuple[int, int] = (1280, 720)
    ) -> MainWindow:
        if isinstance(name, str):
            item = find_installation(name) if name in shipped_names("installations") else find_magneto(name)
        else:
            item = name
        window = MainWindow(BenchModel(new_bench(item)), Look(LIGHT))
        window.resize(*size)
        window.furnish()
        window.plots.wait()
        window.show()
        qtbot.waitUntil(window.isVisible)
        window.activateWindow()
        qtbot.waitUntil(window.isActiveWindow)
        opened.append(window)
        return window

    yield open_on
    # A status bar runs Qt's own timer until its message has been up long enough.
    timers = [
        t for w in opened for t in w.findChildren(QTimer) if t.isActive() and not isinstance(t.parent(), QStatusBar)
    ]
    for window in opened:
        window.close()
        window.deleteLater()
    opened.clear()
    QApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete.value)
    QApplication.processEvents()
    gc.collect()
    gc.freeze()  # what is left stays; the next test need not look through it again
    assert not timers, "a window left a timer running"
    left = [w for w in QApplication.topLevelWidgets() if w.isVisible()]
    assert not left, f"windows left open: {left}"
