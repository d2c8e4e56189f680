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
    # name, installation, width, height, scale, theme, stage
    ("adjustment-window", "seven-radial-left", 1920, 1080, "1", "light", "window"),
    ("internal-timing", "seven-radial-left", 1280, 720, "1", "light", "internal"),
    ("timing-to-the-engine", "seven-radial-left", 1280, 720, "1", "light", "engine"),
    ("trials", "seven-radial-left", 1280, 720, "1", "light", "trials"),
    ("practice", "gap-wrong", 1280, 720, "1", "light", "practice"),
    ("job-sheet", "seven-radial-left", 1280, 720, "1", "light", "job"),
    ("compensated-cam-dark", "nine-radial-left", 1280, 720, "1", "dark", "internal"),
    ("engine-1280-dark", "nine-radial-right", 1280, 720, "1", "dark", "engine"),
    ("internal-1920-light", "four-opposed-left", 1920, 1080, "1", "light", "internal"),
    ("engine-1920-light", "four-opposed-left", 1920, 1080, "1", "light", "engine"),
    ("internal-1920-dark", "traced-six-single", 1920, 1080, "1", "dark", "internal"),
    ("engine-1920-dark", "traced-six-single", 1920, 1080, "1", "dark", "engine"),
    ("internal-150-light", "nine-radial-left", 1280, 720, "1.5", "light", "internal"),
    ("engine-150-light", "seven-radial-left", 1280, 720, "1.5", "light", "engine"),
    ("lead-1280-light", "seven-radial-left", 1280, 720, "1", "light", "lead"),
    ("lead-1280-high-contrast", "nine-radial-left", 1280, 720, "1", "high contrast", "lead"),
    ("projector-1280-light", "seven-radial-left", 1280, 720, "1", "light", "projector"),
    ("projector-1920-dark", "four-opposed-left", 1920, 1080, "1", "dark", "projector"),
    ("text-200-1920-light", "nine-radial-left", 1920, 1080, "1", "light", "text"),
    ("zoom-1280-light", "seven-radial-left", 1280, 720, "1", "light", "zoom"),
    ("internal-150-dark", "seven-radial-left", 1280, 720, "1.5", "dark", "internal"),
    *(
        (f"{sheet}-{size}-{theme.replace(' ', '-')}{'-projected' if projected else ''}", "seven-radial-left",
         *wide, scale, theme, f"{sheet}{'+projected' if projected else ''}")
        for sheet in ("lift", "lobes", "window", "coil", "pull", "coupling", "trials", "budget", "wear")
        for size, wide, scale, theme, projected in (
            ("1280", (1280, 720), "1", "light", False),
            ("1280", (1280, 720), "1", "dark", False),
            ("150", (1280, 720), "1.5", "light", False),
            ("1920", (1920, 1080), "1", "light", True),
            ("1920", (1920, 1080), "1", "high contrast", False),
        )
    ),
]  # fmt: skip
_PANELS = {"lead": "lead", "engine": "timing", "trials": "trials", "budget": "uncertainty", "wear": "wear"}


def take(target: Path, installation: str, width: int, height: int, theme: str, stage: str) -> None:
    """Open the window in this process, pose it, save what it shows."""
    from PySide6.QtCore import Qt
    from PySide6.QtWidgets import QApplication, QWidget

    from magview.bench.actions import (
        MoveTeeth,
        NoteTrial,
        ReadLamp,
        SetLeadFault,
        TurnBackplate,
        TurnRotor,
        TurnScrew,
    )
    from magview.bench.placing import new_bench
    from magview.job.sheet import STAGES
    from magview.physics.trials.trial import Trial
    from magview.spec.library import find_installation
    from magview.ui.bench.panes import PANELS
    from magview.ui.kit.look import PROJECTED
    from magview.ui.kit.theme import THEMES
    from magview.ui.plots.pane import SHEETS
    from tests.windows import main_window

    app = QApplication([])
    window = main_window(new_bench(find_installation(installation)))
    window.look.theme = THEMES[theme]
    scale = float(os.environ.get("QT_SCALE_FACTOR", "1"))
    window.resize(round(width / scale), round(height / scale))
    window.furnish()
    window.plots.wait()
    window.show()
    stage, _, projected = stage.partition("+")
    found = (ReadLamp("left", 23.0), ReadLamp("right", 27.5))
    actions = {
        "lead": (TurnRotor(24.0), SetLeadFault("broken", True)),
        "engine": (*found, MoveTeeth(1, -1)),
        "coupling": found,
        "trials": tuple(
            NoteTrial(Trial.blades(plate, go, go + 0.0254)) for plate, go in ((0.0, 0.2794), (1.5, 0.3556))
        ),
        "wear": (TurnBackplate(0.4),),
    }.get(stage, (TurnBackplate(1.5), TurnScrew(-4.0), TurnRotor(24.0)))
    window.breaker.setFocus(Qt.FocusReason.OtherFocusReason)
    for action in actions:
        window.model.send(action)
    window.tabs.setCurrentIndex(list(PANELS).index(_PANELS.get(stage, "setting")))
    if stage in SHEETS:
        window.show_plots(True)
        window.plots.choose(stage)
        if projected:
            window.look.line_factor = PROJECTED
        for _ in range(3):
            app.processEvents()
    app.processEvents()
    if stage == "projector":
        window.look.line_factor = PROJECTED
        window.breaker.set_exaggeration(5.0)
    elif stage == "text":
        window.look.text_percent = 200
    elif stage == "zoom":
        window.breaker.follows_contacts = True
        window.breaker.zoom_by(5.0)
        window.breaker.show_state(window.model.state)
    app.processEvents()
    if stage == "engine":
        window.timing.plan.table.selectRow(0)
    app.processEvents()
    if window.plots.isVisible():
        window.plots.sheet(list(SHEETS)[window.plots.currentIndex()])  # built now, not when there is time
        app.processEvents()
    shown: QWidget = window
    if stage == "job":
        window.places.go("work")
        sheet = window.work.open_shipped()
        sheet.contents.list.setCurrentRow(1 + list(STAGES).index("as_found"))
        for _ in range(3):
            app.processEvents()
    app.processEvents()
    shown.grab().save(str(target))


def take_practice(target: Path, exercise: str, width: int, height: int, theme: str) -> None:
    """Open an exercise in this process, use its instruments, save what the window shows."""
    from PySide6.QtWidgets import QApplication

    from magview.practice.actions import ConnectLamp, LayStraightedge, Sight, TryBlades, TurnUntil
    from magview.practice.attempt import Session
    from magview.practice.library import find_exercise
    from magview.ui.kit.look import Look
    from magview.ui.kit.style import Outlined
    from magview.ui.kit.theme import THEMES, colours
    from magview.ui.practice.model import AttemptModel
    from magview.ui.practice.page import PracticePage

    app = QApplication([])
    app.setStyle(Outlined())
    colours(THEMES[theme])
    window = PracticePage(AttemptModel(Session(find_exercise(exercise), 1)), Look(THEMES[theme]))
    window.resize(width, height)
    window.show()
    for act in (LayStraightedge(True), Sight(0.0), ConnectLamp(True), TurnUntil("lamp"), TurnUntil("widest")):
        window.model.do(act)
    for blades in ((0.3,), (0.35,), (0.1, 0.35)):
        window.model.do(TryBlades(blades, "metric"))
    for _ in range(3):
        app.processEvents()
    window.grab().save(str(target))
    window.discard()


def main() -> None:
    """Take all pictures, or the one named by the second argument in this process."""
    if len(sys.argv) > 2:
        _, target, installation, width, height, theme, stage = sys.argv
        if stage == "practice":
            take_practice(Path(target), installation, int(width), int(height), theme)
            return
        take(Path(target), installation, int(width), int(height), theme, stage)
        return
    folder = Path(sys.argv[1]) if len(sys.argv) > 1 else README_PICTURES
    folder.mkdir(parents=True, exist_ok=True)
    chosen = SHOTS if len(sys.argv) > 1 else SHOTS[:6]
    for name, installation, width, height, scale, theme, stage in chosen:
        environment = {"QT_QPA_PLATFORM": "offscreen", **os.environ, "QT_SCALE_FACTOR": scale}
        target = folder / f"{name}.png"
        command = [sys.executable, __file__, str(target), installation, str(width), str(height), theme, stage]
        subprocess.run(command, check=True, env=environment, cwd=ROOT)
        sys.stdout.write(f"{target}\n")


main()
