"""The rooms of the house at run time: no Qt below ui, nothing slow on the way to the first picture."""

from __future__ import annotations

import pkgutil
import subprocess
import sys
from pathlib import Path

import magview


def python(code: str) -> None:
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, timeout=60, check=False)
    assert done.returncode == 0, done.stderr


def test_everything_below_the_window_works_where_qt_cannot_be_imported():
    names = [m.name for m in pkgutil.walk_packages(magview.__path__, "magview.") if ".ui" not in m.name]
    names.remove("magview.__main__")
    assert "magview.physics.setting" in names
    python(
        "import sys\n"
        "class Wall:\n"
        "    def find_spec(self, name, path=None, target=None):\n"
        "        if name.split('.')[0] in ('PySide6', 'shiboken6', 'pyqtgraph'):\n"
        "            raise ImportError(name)\n"
        "sys.meta_path.insert(0, Wall())\n"
        f"import {', '.join(names)}\n"
    )


def test_the_window_starts_without_the_slow_libraries():
    """pyqtgraph costs 0.6 s and scipy 0.7 s: neither is loaded before something needs it."""
    python(
        "import os, sys\n"
        "os.environ['QT_QPA_PLATFORM'] = 'offscreen'\n"
        "from PySide6.QtWidgets import QApplication\n"
        "from magview.bench.apply import new_bench\n"
        "from magview.spec.library import DEFAULT_MAGNETO, find_magneto\n"
        "from magview.ui.model import BenchModel\n"
        "from magview.ui.window import MainWindow\n"
        "app = QApplication([])\n"
        "window = MainWindow(BenchModel(new_bench(find_magneto(DEFAULT_MAGNETO))))\n"
        "window.show(); app.processEvents()\n"
        "slow = [m for m in ('scipy', 'pyqtgraph', 'shapely', 'matplotlib') if m in sys.modules]\n"
        "assert not slow, slow\n"
    )


def test_the_contributors_guide_names_every_module():
    guide = (Path(__file__).parents[1] / "DEVELOPERS.md").read_text(encoding="utf-8")
    for module in pkgutil.walk_packages(magview.__path__, "magview."):
        file = f"`{module.name.rsplit('.')[-1]}.py`"
        if not module.ispkg and module.name != "magview.__main__":
            assert file in guide or f"`magview/{module.name.rsplit('.')[-1]}.py`" in guide, module.name
