"""What is closed is gone: a workbench that is open all day must not keep every window and file it once had.

Objects are counted; how much memory the system calls the program's own says little (`tests/soak/driver.py`).
"""

from __future__ import annotations

import gc
import weakref
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QEvent, QLocale, QObject, QSettings, QTranslator
from PySide6.QtWidgets import QApplication, QWidget
from shiboken6 import isValid

from magview.bench.placing import new_bench
from magview.practice.library import find_exercise, find_lesson
from magview.practice.state import true_gap_mm, true_readings
from magview.spec.files import read_magneto
from magview.spec.language import speak_through
from magview.spec.library import find_installation, resources
from magview.spec.magneto import Magneto
from magview.ui.bench.panes import PANELS
from magview.ui.classroom.room import ClassRoom
from magview.ui.kit import translation
from magview.ui.kit.theme import DARK
from magview.ui.plots.pane import SHEETS
from magview.ui.shell.renewal import renewed
from magview.ui.shell.window import MainWindow
from tests.counts import sampled
from tests.windows import main_window


def swept() -> None:
    """What was to be deleted is."""
    for _ in range(3):
        QApplication.processEvents()
        QApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete.value)
        gc.collect()


def alive(kind: type) -> int:
    """How many objects of a class there are."""
    swept()
    return sum(type(thing) is kind for thing in gc.get_objects())


def _lift_table(main: MainWindow, folder: Path) -> QWidget:
    table = folder / "lift.csv"
    table.write_text("\n".join(f"{a},{max(0.0, 1.0 - abs(a % 90 - 45) / 30):.3f}" for a in range(0, 360, 5)))
    return main.import_lift_from(table)


def _box(show: Callable[[], None]) -> QWidget | None:
    show()
    return QApplication.activeModalWidget()


WINDOWS: dict[str, Callable[[MainWindow, Path], QWidget | None]] = {
    "a job sheet": lambda main, folder: main.work.new(folder / "a-job.json"),
    "the shipped job sheet": lambda main, _: main.work.open_shipped(),
    "a pupil's desk": lambda main, _: main.classes.open("join"),
    "a class made": lambda main, _: main.classes.open("make"),
    "what was handed in": lambda main, _: main.classes.open("gather"),
    "the exercise editor": lambda main, _: main.classes.open("editor"),
    "the guided editor": lambda main, _: main.own.open(),
    "the guide": lambda main, _: main.places.open_guide_window(),
    "an exercise": lambda main, _: main.practice.begin(find_exercise("gap-wrong"), 7),
    "a lesson": lambda main, _: main.learn.begin(find_lesson("plate-and-screw")),
    "the list of exercises": lambda main, _: main.practice.choose(),
    "paper for a class": lambda main, _: main.class_paper(),
    "a table of the lift": _lift_table,
    "keys and cautions": lambda main, _: _box(main.show_help),
    "fault reports": lambda main, _: _box(main.show_fault_reports),
}


@pytest.mark.parametrize("name", sampled(WINDOWS, 5))
def test_a_closed_window_is_gone(name: str, open_window: Callable[..., MainWindow], tmp_path: Path) -> None:
    main = open_window("seven-radial-left")
    main.places._classes = ClassRoom(main.practice, tmp_path / "home")  # noqa: SLF001
    window = WINDOWS[name](main, tmp_path)
    assert window is not None
    QApplication.processEvents()
    main.look.theme = DARK  # what everything open hears of
    QApplication.processEvents()
    parts = [part for part in window.findChildren(QWidget) if type(part).__module__.startswith("magview.")]
    seen, seen_parts = weakref.ref(window), [(type(part).__name__, weakref.ref(part)) for part in parts]
    parts.clear()
    getattr(window, "discard", window.close)()
    del window
    swept()
    assert [name for name, part in seen_parts if part() is not None] == []
    left = seen()
    assert left is None, f"kept by {[type(r) for r in gc.get_referrers(left)]}, valid: {isValid(left)}"


@pytest.fixture
def english_again(qapp: QApplication, tmp_path: Path) -> Iterator[None]:
    """A language chosen in a test is not the next one's."""
    QSettings.setPath(QSettings.Format.IniFormat, QSettings.Scope.UserScope, str(tmp_path / "settings"))
    locale = QLocale()
    yield
    translation.speak("en")
    QLocale.setDefault(locale)
    speak_through(None)


def _workbench() -> MainWindow:
    window = main_window(new_bench(find_installation("seven-radial-left")))
    window.furnish()
    window.plots.wait()
    window.show()
    return window


@pytest.mark.usefixtures("english_again")
def test_a_workbench_whose_language_is_left_is_gone_with_all_its_parts() -> None:
    window = _workbench()
    model = window.model
    window.show_plots(True)
    parts: list[QObject] = [window, window.bench_page, window.bench_page.menus, window.common]
    parts += [window.plots, window.judging]
    parts += [window.breaker, window.contact, window.drive, window.crank]
    parts += [window.plots.choose(name) for name in SHEETS]
    parts += [window.panel_of(name) for name in PANELS]
    window.present(True)
    window.present(False)
    assert window.presenter is not None
    parts.append(window.presenter)
    QApplication.processEvents()
    seen = [(type(part).__name__, weakref.ref(part)) for part in parts]
    parts.clear()
    window = renewed(window, "de")
    swept()
    try:
        assert window.model is model and isValid(model)
        assert [name for name, part in seen if part() is not None] == []
    finally:
        window.close()
        window.deleteLater()
        del window
        swept()


@pytest.mark.usefixtures("english_again")
def test_the_words_of_a_language_left_are_gone() -> None:
    def round_the_languages() -> int:
        for code in translation.LANGUAGES:
            translation.speak(code)
        return alive(QTranslator)

    assert round_the_languages() == round_the_languages() == round_the_languages()


def test_magnetos_of_exercises_long_closed_are_gone() -> None:
    def look_at(count: int) -> int:
        for _ in range(count):
            magneto = read_magneto(resources() / "magnetos" / "seven-radial.json")  # another object each time
            bench = new_bench(magneto)
            true_readings(bench)
            true_gap_mm(bench)
        del magneto, bench
        return alive(Magneto)

    assert look_at(100) == look_at(200)  # a few may be kept, but not more for more
