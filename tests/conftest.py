"""Set before any test module loads: no screen is needed, and Qt comes in only where a test asks for it."""

import gc
import os
import sys
from collections.abc import Iterator

import pytest
from hypothesis import settings

from magview.spec.language import lengths_in, speak_through

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

# No timed assertion in ordinary tests: a first import inside an example must not fail it.
settings.register_profile("short", deadline=None, max_examples=20)
settings.register_profile("thorough", deadline=None, max_examples=100)
settings.load_profile("short")

# Loading the tests makes millions of objects that stay: nothing is to be found among them.
gc.disable()

pytest_plugins = ["tests.windows", "tests.practice_windows", "tests.job_windows", "tests.plot_windows"]


@pytest.fixture(autouse=True)
def english_and_millimetres() -> Iterator[None]:
    """Words and lengths are written as at the start, whatever the test before chose."""
    yield
    speak_through(None)
    lengths_in("mm")


@pytest.fixture(autouse=True)
def settings_of_its_own(tmp_path_factory: pytest.TempPathFactory) -> Iterator[None]:
    """No test reads what a person or another test chose; Qt is asked only where it is loaded by now."""
    core = sys.modules.get("PySide6.QtCore")
    if core is None:
        yield
        return
    folder = tmp_path_factory.getbasetemp() / "settings"
    ini, user = core.QSettings.Format.IniFormat, core.QSettings.Scope.UserScope
    core.QSettings.setPath(ini, user, str(folder))
    yield
    core.QSettings.setPath(ini, user, str(folder))  # some tests choose a place of their own
    if folder.exists():
        kept = core.QSettings(ini, user, "magview", "magview")
        kept.clear()
        kept.sync()


def pytest_collection_finish() -> None:
    """Let the garbage collector in again, and keep what is loaded by now out of its sight: window tests call it."""
    gc.enable()
    gc.collect()
    gc.freeze()
