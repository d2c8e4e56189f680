"""Fixtures for tests that open windows; Qt is imported only when one is asked for."""

from __future__ import annotations

import gc
from collections.abc import Callable, Iterator
from functools import cache
from typing import TYPE_CHECKING, Any

import pytest

if TYPE_CHECKING:
    from pytestqt.qtbot import QtBot

    from magview.bench.state import BenchState
    from magview.spec.engine import Installation
    from magview.spec.magneto import Magneto
    from magview.ui.shell.window import MainWindow


class Reached:
    """What tests reach for by name in a window, wherever it is: the bench's page, its files, the places."""

    def __init__(self, *parts: Callable[[], object]) -> None:
        self._parts = parts

    def __getattr__(self, name: str) -> Any:
        for part in self._parts:
            found = getattr(part(), name, None)
            if found is not None:
                return found
        raise AttributeError(name)


def main_window(state: BenchState, **given: object) -> MainWindow:
    """A main window in light colours, whose bench and places can be reached through it."""
    from magview.ui.kit.bench_model import BenchModel
    from magview.ui.kit.look import Look
    from magview.ui.kit.theme import LIGHT

    return workbench()(BenchModel(state), Look(LIGHT), **given)


@cache
def workbench() -> type[MainWindow]:
    """The class of such windows."""
    from magview.ui.shell.window import MainWindow

    class Workbench(MainWindow):
        """The program's window."""

        def __getattr__(self, name: str) -> Any:
            if name.startswith("__") or "places" not in self.__dict__:
                raise AttributeError(name)
            page = self.places.bench.page
            if name == "menus":
                return Reached(lambda: page.menus, lambda: self.common)
            return getattr(
                Reached(
                    lambda: page,
                    lambda: page.pictures,
                    lambda: page.files,
                    lambda: self.places,
                    lambda: self.places.bench,
                    lambda: self.common,
                ),
                name,
            )

    return Workbench


@pytest.fixture
def open_window(qtbot: QtBot) -> Iterator[Callable[..., MainWindow]]:
    """Open the main window on a shipped magneto; afterwards no window and no running timer may be left."""
    from PySide6.QtCore import QEvent, QTimer
    from PySide6.QtWidgets import QApplication, QStatusBar

    from magview.bench.placing import new_bench
    from magview.spec.library import find_installation, find_magneto, shipped_names

    opened: list[MainWindow] = []

    def open_on(
        name: str | Installation | Magneto = "seven-radial",
        size: tuple[int, int] = (1280, 720),
        first: Callable[[MainWindow], object] | None = None,
    ) -> MainWindow:
        """`first` puts a page in front before the window is seen: the bench need not be painted then."""
        if isinstance(name, str):
            item = find_installation(name) if name in shipped_names("installations") else find_magneto(name)
        else:
            item = name
        window = main_window(new_bench(item))
        window.resize(*size)
        opened.append(window)
        if first is not None:
            first(window)
            window.show()
        window.furnish()
        window.bench_page.plots.wait()
        window.show()
        qtbot.waitUntil(window.isVisible)
        window.activateWindow()
        qtbot.waitUntil(window.isActiveWindow)
        return window

    yield open_on
    # A status bar runs Qt's own timer until its message has been up long enough.
    timers = [
        t for w in opened for t in w.findChildren(QTimer) if t.isActive() and not isinstance(t.parent(), QStatusBar)
    ]
    for window in opened:
        window.look.line_factor, window.look.text_percent = 1.0, 100  # the type is the application's
        for page in window.places.open_pages:
            page.discard()
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
