"""The window with its frame on a screen of 1280×720, under a real window manager."""

from __future__ import annotations

import os
import shutil
import subprocess
import sys

import pytest

_SCREEN = """
import os, subprocess, sys
manager = subprocess.Popen(["openbox"], stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
from PySide6.QtWidgets import QApplication
app = QApplication([])
from PySide6.QtCore import QTimer
from magview.bench.placing import laid_out
from magview.spec.library import first_shipped
from magview.ui.kit.bench_model import BenchModel
from magview.ui.kit.strip import Foot
from magview.ui.shell.window import MainWindow
window = MainWindow(BenchModel(laid_out(first_shipped())), first=sys.argv[1])

def look():
    if window.furnishing or window.frameGeometry() == window.geometry():
        QTimer.singleShot(100, look)
        return
    frame, screen = window.frameGeometry(), app.primaryScreen().availableGeometry()
    feet = [window.statusBar(), *(window.places.front.findChildren(Foot) if sys.argv[1] == "start" else ())]
    under = max(foot.mapToGlobal(foot.rect().bottomLeft()).y() for foot in feet)
    print(screen.contains(frame), under <= screen.bottom(), frame.size().toTuple(), screen.size().toTuple())
    window.close()
    app.quit()

window.show()
QTimer.singleShot(100, look)
app.exec()
manager.terminate()
manager.wait()
"""


@pytest.mark.process
@pytest.mark.skipif(not shutil.which("xvfb-run") or not shutil.which("openbox"), reason="needs Xvfb and openbox")
@pytest.mark.parametrize("first", ["start", "bench"])
def test_frame_and_foot_line_are_on_a_small_screen(first, tmp_path):
    environment = {**os.environ, "HOME": str(tmp_path), "QT_QPA_PLATFORM": "xcb"}
    found = subprocess.run(
        ["xvfb-run", "-a", "-s", "-screen 0 1280x720x24", sys.executable, "-c", _SCREEN, first],
        capture_output=True, text=True, check=True, env=environment, timeout=120,
    ).stdout.splitlines()  # fmt: skip
    assert found[-1].startswith("True True "), found
    assert "(1280, 720)" in found[-1]
