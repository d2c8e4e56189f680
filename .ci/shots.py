"""Pictures of the real program: `python .ci/shots.py FOLDER` for looking at, no argument for the README's.

Runs offscreen unless a platform is chosen with QT_QPA_PLATFORM. Each picture is a fresh process, because
the scale factor is read once at start.
"""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

ROOT = Path(__file__).resolve().parents[1]
README_PICTURES = ROOT / "resources" / "pictures"
SHOTS = [
    # name, magneto, width, height, scale, theme
    ("bench-1280-light", "seven-radial", 1280, 720, "1", "light"),
    ("bench-1280-dark", "nine-radial", 1280, 720, "1", "dark"),
    ("bench-1920-light", "four-opposed", 1920, 1080, "1", "light"),
    ("bench-1920-dark", "traced-six", 1920, 1080, "1", "dark"),
    ("bench-150-light", "nine-radial", 1280, 720, "1.5", "light"),
    ("bench-150-dark", "seven-radial", 1280, 720, "1.5", "dark"),
]


def take(target: Path, magneto: str, width: int, height: int, theme: str) -> None:
    """Open the window in this process, pose it, save what it shows."""
    from PySide6.QtCore import Qt
    from PySide6.QtWidgets import QApplication

    from magview.bench.state import TurnBackplate, TurnRotor, TurnScrew, new_bench
    from magview.spec.library import find_magneto
    from magview.ui.model import BenchModel
    from magview.ui.theme import THEMES
    from magview.ui.window import MainWindow

    app = QApplication([])
    window = MainWindow(BenchModel(new_bench(find_magneto(magneto))), THEMES[theme])
    scale = float(os.environ.get("QT_SCALE_FACTOR", "1"))
    window.resize(round(width / scale), round(height / scale))
    for action in (TurnBackplate(1.5), TurnScrew(-4.0), TurnRotor(24.0)):
        window.model.send(action)
    window.show()
    window.breaker.setFocus(Qt.FocusReason.OtherFocusReason)
    app.processEvents()
    app.processEvents()
    window.grab().save(str(target))


def main() -> None:
    """Take all pictures, or the one named by the second argument in this process."""
    if len(sys.argv) > 2:
        _, target, magneto, width, height, theme = sys.argv
        take(Path(target), magneto, int(width), int(height), theme)
        return
    folder = Path(sys.argv[1]) if len(sys.argv) > 1 else README_PICTURES
    folder.mkdir(parents=True, exist_ok=True)
    chosen = SHOTS if len(sys.argv) > 1 else SHOTS[:2]
    for name, magneto, width, height, scale, theme in chosen:
        environment = {"QT_QPA_PLATFORM": "offscreen", **os.environ, "QT_SCALE_FACTOR": scale}
        target = folder / f"{name}.png"
        command = [sys.executable, __file__, str(target), magneto, str(width), str(height), theme]
        subprocess.run(command, check=True, env=environment, cwd=ROOT)
        sys.stdout.write(f"{target}\n")


main()
