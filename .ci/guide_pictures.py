"""Pictures of the guide, made from the program itself: `python .ci/guide_pictures.py [FOLDER]`.

Runs offscreen, in the light theme. With pillow installed (it comes with the `benchmark` extra's matplotlib) they are
saved with a palette, at about a third of the size.
"""

from __future__ import annotations

import os
import sys
from collections.abc import Callable
from pathlib import Path

os.environ["QT_QPA_PLATFORM"] = "offscreen"
ROOT = Path(__file__).resolve().parents[1]
sys.path.insert(0, str(ROOT))

from PySide6.QtCore import Qt  # noqa: E402
from PySide6.QtGui import QPixmap  # noqa: E402
from PySide6.QtWidgets import QApplication, QWidget  # noqa: E402

from magview.bench import actions as do  # noqa: E402
from magview.bench.placing import new_bench  # noqa: E402
from magview.bench.timing import timing_plan  # noqa: E402
from magview.physics.trials.trial import Trial  # noqa: E402
from magview.spec.library import find_installation  # noqa: E402
from magview.ui.bench.panes import PANELS  # noqa: E402
from magview.ui.kit.look import Look  # noqa: E402
from magview.ui.kit.style import Outlined  # noqa: E402
from magview.ui.kit.theme import LIGHT, colours  # noqa: E402
from magview.ui.shell.window import MainWindow  # noqa: E402
from tests.windows import main_window  # noqa: E402

TARGET = ROOT / "resources" / "guide" / "pictures"
COLOURS = 256
KEPT: list[QWidget] = []
"""Windows of pictures taken: Qt may still have work with one that Python would already throw away."""


def settle() -> None:
    for _ in range(4):
        QApplication.processEvents()


def bench(name: str = "seven-radial-left", width: int = 1280, height: int = 720) -> MainWindow:
    window = main_window(new_bench(find_installation(name)))
    window.resize(width, height)
    window.furnish()
    window.bench_page.plots.wait()
    window.show()
    window.bench_page.pictures.breaker.setFocus(Qt.FocusReason.OtherFocusReason)
    settle()
    KEPT.append(window)
    return window


def posed(*acts: object, name: str = "seven-radial-left", width: int = 1280, height: int = 720) -> MainWindow:
    window = bench(name, width, height)
    for act in acts:
        window.model.send(act)
    settle()
    return window


def page(window: MainWindow, name: str, height: int = 0) -> QPixmap:
    """A page as far as it says something: its own height, not the window's."""
    window.bench_page.tabs.setCurrentIndex(list(PANELS).index(name))
    settle()
    panel: QWidget = window.bench_page.panel_of(name)  # type: ignore[assignment]
    panel.window().resize(window.width(), 1300)
    settle()
    shot = panel.grab()
    image = shot.toImage()
    ground = image.pixel(2, image.height() - 2)
    rows = range(image.height() - 1, 0, -1)
    used = next(y for y in rows if any(image.pixel(x, y) != ground for x in range(0, image.width(), 3)))
    return shot.copy(0, 0, shot.width(), min(height or shot.height(), used + 10))


def plot(sheet: str, *acts: object, prepare: Callable[[MainWindow], None] | None = None) -> QPixmap:
    window = posed(*acts, width=1180, height=900)
    if prepare is not None:
        prepare(window)
    window.bench_page.show_plots(True)
    window.bench_page.plots.choose(sheet)
    settle()
    window.bench_page.plots.setMinimumHeight(340)
    settle()
    shot = window.bench_page.plots.sheet(sheet).grab()
    window.close()
    return shot


def lift_dialog() -> QPixmap:
    import math
    import tempfile

    window = bench()
    rows = [
        (a, 0.36 * (0.5 + 0.5 * math.cos(math.pi * a / 30.0)) + 0.003 * math.sin(7.0 * a)) for a in range(-30, 31, 2)
    ]
    with tempfile.NamedTemporaryFile("w", suffix=".csv", delete=False) as file:
        file.write("angle;lift mm\n" + "".join(f"{a};{max(0.0, y):.3f}\n" for a, y in rows))
    path = Path(file.name)
    table = path.with_name("lift.csv")
    path.rename(table)
    dialog = window.bench_page.files.import_lift_from(table)
    dialog.resize(760, 480)
    dialog.unit.setCurrentIndex(dialog.unit.findText("mm"))
    settle()
    shot = dialog.grab()
    dialog.close()
    table.unlink()
    return shot


def practice(handed_in: bool) -> QPixmap:
    from magview.practice.actions import ConnectLamp, HandIn, LayStraightedge, Sight, TryBlades, TurnUntil
    from magview.practice.attempt import Session
    from magview.practice.library import find_exercise
    from magview.ui.practice.model import AttemptModel
    from magview.ui.practice.page import PracticePage

    window = PracticePage(AttemptModel(Session(find_exercise("gap-wrong"), 1)), Look(LIGHT))
    window.resize(1280, 720)
    window.show()
    for act in (LayStraightedge(True), Sight(0.0), ConnectLamp(True), TurnUntil("lamp"), TurnUntil("widest")):
        window.model.do(act)
    window.model.do(TryBlades((0.1, 0.35), "metric"))
    if handed_in:
        window.model.do(HandIn())
    settle()
    shot = window.grab()
    window.discard()
    return shot


def job_window() -> QPixmap:
    """The shipped sheet as one's own copy."""
    import shutil
    import tempfile

    from magview.job.library import job_path

    window = posed(*SETTING)
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "left-magneto.json"
        shutil.copy(job_path("seven-radial-left"), path)
        sheet = window.work.open_path(path)
        assert sheet is not None
        sheet.resize(1280, 720)
        sheet.show_page("internal_timing")
        settle()
        shot = sheet.grab()
        sheet.discard()
    return shot


def own_window() -> QPixmap:
    window = bench()
    window.places.bench.draft_own()
    settle()
    own = window.places.own.page
    assert own is not None
    own.resize(1280, 720)
    own.bases.setCurrentIndex(next(i for i in range(own.bases.count()) if own.bases.itemData(i) == "seven-radial"))
    own.begin_button.click()
    own.page(1)
    settle()
    return own.grab()


def class_set() -> QPixmap:
    from magview.practice.library import find_exercise

    window = bench()
    window.places.open_class("make")
    settle()
    maker = window.classes.pages["make"]
    for name in ("measure-the-gap", "gap-wrong", "switch-lead"):
        maker.fields.add_exercise(find_exercise(name))
    maker.resize(1280, 640)
    settle()
    return maker.grab()


def presenting() -> QPixmap:
    window = bench()
    window.present(True)
    assert window.presenter is not None
    for _ in range(9):
        window.presenter.name_next()
    window.presenter.spot.trigger()
    settle()
    shot = window.grab()
    window.present(False)
    return shot


SETTING = (do.TurnBackplate(1.5), do.TurnScrew(-4.0), do.TurnRotor(24.0))
LAMPS = (do.ReadLamp("left", 23.0), do.ReadLamp("right", 27.5))
TRIALS = tuple(do.NoteTrial(Trial.blades(b, go, go + 0.0254)) for b, go in ((0.0, 0.2794), (1.5, 0.3556)))


def on_engine() -> MainWindow:
    """The bench with coupling and crank in the room that timing to the engine gives them."""
    window = posed(*LAMPS)
    window.bench_page.tabs.setCurrentIndex(list(PANELS).index("timing"))
    settle()
    return window


def engine_page() -> QPixmap:
    window = on_engine()
    window.bench_page.timing.plan.table.selectRow(0)
    return page(window, "timing", 740)


def drive_end() -> QPixmap:
    window = on_engine()
    window.bench_page.pictures.drive.preview(timing_plan(window.model.state, "left")[0])
    settle()
    return _of(window, "drive")


def uncertainty_page() -> QPixmap:
    window = posed(do.TurnBackplate(0.4))
    window.bench_page.tabs.setCurrentIndex(list(PANELS).index("uncertainty"))
    settle()
    return page(window, "uncertainty")


PICTURES: dict[str, Callable[[], QPixmap]] = {
    "window": lambda: posed(*SETTING).grab(),
    "breaker-end": lambda: _of(posed(*SETTING, width=1280, height=760), "breaker"),
    "contacts": lambda: _of(posed(*SETTING), "contact"),
    "drive-end": drive_end,
    "crank": lambda: _of(on_engine(), "crank"),
    "internal-page": lambda: page(posed(*SETTING), "setting"),
    "engine-page": engine_page,
    "lead-page": lambda: page(posed(do.TurnRotor(24.0), do.SetLeadFault("broken", True)), "lead"),
    "trials-page": lambda: page(posed(*TRIALS), "trials"),
    "uncertainty-page": uncertainty_page,
    "wear-page": lambda: page(posed(do.TurnBackplate(0.4)), "wear"),
    "plot-lift": lambda: plot("lift", *SETTING),
    "plot-window": lambda: plot("window", *SETTING),
    "plot-coil": lambda: plot("coil", *SETTING),
    "plot-pull": lambda: plot("pull", do.TurnRotor(24.0)),
    "plot-coupling": lambda: plot("coupling", *LAMPS),
    "lift-dialog": lift_dialog,
    "practice": lambda: practice(False),
    "debrief": lambda: practice(True),
    "job-window": job_window,
    "own-window": own_window,
    "class-set": class_set,
    "presenting": presenting,
}


def _of(window: MainWindow, view: str) -> QPixmap:
    shot: QPixmap = getattr(window.bench_page.pictures, view).grab()
    return shot


def save(shot: QPixmap, path: Path) -> None:
    """As a PNG, with a palette where pillow is at hand."""
    shot.save(str(path))
    try:
        from PIL import Image
    except ImportError:
        return
    with Image.open(path) as full:
        small = full.convert("RGB").quantize(COLOURS, kmeans=1, dither=Image.Dither.NONE)
    small.save(path, optimize=True)


def main() -> None:
    """Take all pictures, or those named after the folder."""
    app = QApplication([])
    app.setStyle(Outlined())
    colours(LIGHT)
    folder = Path(sys.argv[1]) if len(sys.argv) > 1 else TARGET
    folder.mkdir(parents=True, exist_ok=True)
    for name in sys.argv[2:] or PICTURES:
        save(PICTURES[name](), folder / f"{name}.png")
        for window in app.topLevelWidgets():
            window.hide()
        sys.stdout.write(f"{name} {(folder / f'{name}.png').stat().st_size // 1000} kB\n")
    sys.stdout.flush()
    os._exit(0)


main()
