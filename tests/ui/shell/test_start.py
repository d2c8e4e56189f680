"""The order in which the window comes: pictures first, and nobody waits for the rest."""

from __future__ import annotations

import os
import subprocess
import sys

import pytest
from PySide6.QtCore import QEvent, QObject

from magview.bench.placing import new_bench
from magview.spec.library import find_installation
from magview.ui.pictures.picture_view import PictureView
from magview.ui.shell.window import MainWindow
from tests.hands import what_is_due
from tests.windows import main_window


class _AtPaint(QObject):
    """Notes, each time a picture is painted, how many pictures and pages of calculators stand."""

    def __init__(self, window: MainWindow) -> None:
        super().__init__()
        self.window = window
        self.stood: list[tuple[str, int, int]] = []

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if event.type() == QEvent.Type.Paint:
            pictures = len(self.window.findChildren(PictureView))
            for widget in (watched, watched.parent()):  # a scene is painted on its viewport
                self.stood.append((type(widget).__name__, pictures, self.window.tabs.count()))
        return False


def test_the_first_picture_waits_for_no_other_and_calculators_come_after_pictures(qtbot, qapp):
    window = main_window(new_bench(find_installation("seven-radial-left")))
    qtbot.addWidget(window)
    window.resize(1280, 900)
    watch = _AtPaint(window)
    qapp.installEventFilter(watch)
    window.show()
    qtbot.waitUntil(lambda: window.tabs.count() > 0)
    qapp.removeEventFilter(watch)
    first = {name: (pictures, tabs) for name, pictures, tabs in reversed(watch.stood)}
    assert first["BreakerView"] == (1, 0)
    assert [first[name][1] for name in ("ContactView", "DriveView", "ShaftView", "WhyHereView")] == [0, 0, 0, 0]
    qtbot.waitUntil(lambda: window.tabs.count() >= 3 and not window.furnishing)
    assert window.panel.isVisible()
    assert window.menus.undo_action.text() == "&Undo"


def test_the_pictures_hardly_move_when_the_rest_comes(qtbot):
    window = main_window(new_bench(find_installation("seven-radial-left")))
    qtbot.addWidget(window)
    window.resize(1280, 720)
    window.show()
    pictures = (window.breaker, window.pictures.beside)
    before = [(p.mapTo(window, p.rect().topLeft()), p.size()) for p in pictures]
    window.furnish()
    qtbot.waitUntil(lambda: not window.furnishing)
    what_is_due()
    for picture, (place, size) in zip(pictures, before, strict=True):
        moved = picture.mapTo(window, picture.rect().topLeft()) - place
        assert moved.manhattanLength() < 30
        assert abs(picture.width() - size.width()) < 30
        assert abs(picture.height() - size.height()) < 30


_FREED_AND_MADE = """
import ctypes, sys
from PySide6.QtGui import QImage
class Info(ctypes.Structure):
    names = "arena ordblks smblks hblks hblkhd usmblks fsmblks uordblks fordblks keepcost"
    _fields_ = [(name, ctypes.c_size_t) for name in names.split()]
tell = getattr(ctypes.CDLL(None), "mallinfo2", None)
if tell is None:
    print("another C library")
    raise SystemExit
tell.restype = Info
if sys.argv[1] == "as the program":
    from magview.ui.shell.app import return_large_blocks
    return_large_blocks()
QImage(2500, 2500, QImage.Format.Format_RGB32)  # made and freed: 25 MB, from which glibc learns
before = tell().hblkhd
picture = QImage(2000, 2000, QImage.Format.Format_RGB32)
print(tell().hblkhd - before >= 16_000_000)
"""


@pytest.mark.process
@pytest.mark.skipif(sys.platform != "linux", reason="about glibc")
@pytest.mark.parametrize(("how", "apart"), [("left alone", "False"), ("as the program", "True")])
def test_a_picture_lies_in_a_block_of_its_own_that_goes_back_to_the_system(how, apart):
    """malloc(3), mallopt(3): what is mapped by itself (`hblkhd`) is given back when it is freed."""
    found = subprocess.run(
        [sys.executable, "-c", _FREED_AND_MADE, how],
        capture_output=True, text=True, check=True, env={**os.environ, "QT_QPA_PLATFORM": "offscreen"},
    ).stdout.strip()  # fmt: skip
    if found == "another C library":
        pytest.skip(found)
    assert found == apart
