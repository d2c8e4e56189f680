"""A file that somebody double-clicks or names on the command line: what opens it, by what it says it is."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from magview.spec.base import SpecError
from magview.spec.formats import kind_of
from magview.spec.language import tr
from magview.ui.shell.window import MainWindow


def open_in(window: MainWindow, path: Path) -> None:
    """Open any of our files in the place it belongs to, or say in one sentence why not."""
    try:
        kind = kind_of(path)
        refused = _REFUSED.get(kind)
        if refused is not None:
            raise SpecError(refused(path))
        OPENERS[kind](window, path)
    except SpecError as error:
        say_why_not(window, str(error))


def say_why_not(window: MainWindow, sentence: str) -> None:
    """Say in one sentence why a file was not opened; nothing waits for the answer."""
    from magview.ui.kit.asking import refuse

    refuse(window, sentence)


def _bench(window: MainWindow, path: Path) -> None:
    window.places.go("bench")
    window.places.bench.go_home()
    window.bench_page.files.open_path(path)


def _exercise(window: MainWindow, path: Path) -> None:
    window.places.go("practise")
    window.practice.choose().add_file(path)


def _lesson(window: MainWindow, path: Path) -> None:
    from magview.practice.library import read_lesson

    window.learn.begin(read_lesson(path))


def _attempt(window: MainWindow, path: Path) -> None:
    window.practice.open_path(path)


def _job(window: MainWindow, path: Path) -> None:
    window.work.open_path(path)


def _limits(window: MainWindow, path: Path) -> None:
    window.work.open_card(path)


def _class(window: MainWindow, path: Path) -> None:
    from magview.ui.classroom.desk import ClassDesk

    desk = window.classes.open("join")
    assert isinstance(desk, ClassDesk)
    desk.open_path(path)


OPENERS: dict[str, Callable[[MainWindow, Path], None]] = {
    "magneto": _bench,
    "installation": _bench,
    "exercise": _exercise,
    "lesson": _lesson,
    "attempt": _attempt,
    "job": _job,
    "limits": _limits,
    "class": _class,
}
"""Functions that open each kind of file."""


def _no_engine(path: Path) -> str:
    return tr(
        "{file} is an engine, and the bench holds a magneto: open an installation, which has both, or see "
        "the engine with `magview engine {file}`",
        file=path.name,
    )


def _no_kept_bench(path: Path) -> str:
    return tr(
        "{file} is a bench that the program keeps for itself and finds again after a crash; it is not to be opened",
        file=path.name,
    )


_REFUSED: dict[str, Callable[[Path], str]] = {"engine": _no_engine, "bench": _no_kept_bench}
"""Reason why the others are not opened."""
