"""Fixtures and hands for tests of the job sheet's window: real keys, real clicks, and what is in the file."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from pathlib import Path
from typing import TYPE_CHECKING

import pytest

from tests.magnetos import on_the_published_coupling

if TYPE_CHECKING:
    from magview.ui.shell.window import MainWindow
    from magview.ui.work.sheet_page import JobPage


@pytest.fixture
def open_job(open_window, qtbot, tmp_path) -> Iterator[Callable[..., JobPage]]:
    """Open a new job sheet in the main window, or the one in a file; all are closed afterwards."""
    mains: list[MainWindow] = []

    def open_on(name: str = "", path: Path | None = None, size=(1280, 720)) -> JobPage:
        target = path or tmp_path / "a-job.json"

        def show_page(main: MainWindow) -> None:
            mains.append(main)
            assert main.work.open_path(target) if target.exists() else main.work.new(target)

        if mains:
            show_page(mains[-1])
        else:
            open_window(name or on_the_published_coupling(), first=show_page)
        page = mains[-1].work.sheets[-1]
        mains[-1].resize(*size)
        front(qtbot, page)
        return page

    yield open_on
    for page in mains[-1].work.sheets if mains else []:
        page.discard()
    mains.clear()


def front(qtbot, page) -> None:
    """Bring a page to the front, as a click on it in the list of what is under way does."""
    window = page.window()
    window.places.work.go_on_with(page)
    window.activateWindow()
    qtbot.waitUntil(lambda: window.isActiveWindow() and page.isVisible())


def choose_page(window, name: str) -> None:
    """Click a page's line in the list."""
    from PySide6.QtCore import Qt
    from PySide6.QtTest import QTest

    listing = window.contents.list
    item = listing.item(window.contents.pages.index(name))
    listing.scrollToItem(item)
    QTest.mouseClick(listing.viewport(), Qt.MouseButton.LeftButton, pos=listing.visualItemRect(item).center())
    assert window.page_name == name


def form_of(window, part: str):
    """The entries of a part, its page in front."""
    from magview.job.sheet import STAGES
    from magview.ui.work.sheet_page import END, HEAD

    name = part if part in STAGES else END if part == "next_check" else HEAD
    if window.page_name != name:
        choose_page(window, name)
    return next(form for form in window.page.forms() if form.part == part)


def write(window, part: str, field: str, text: str) -> None:
    """Type into a field, whatever is there, and leave it with Tab; a field of several lines too."""
    from PySide6.QtCore import Qt
    from PySide6.QtTest import QTest

    from magview.ui.kit.forms import DayEdit

    edit = form_of(window, part).edits[field]
    line = edit.line if isinstance(edit, DayEdit) else edit
    window.page.ensureWidgetVisible(line)
    line.setFocus()
    line.selectAll()
    QTest.keyClick(line, Qt.Key.Key_Delete)
    QTest.keyClicks(line, text)
    QTest.keyClick(line, Qt.Key.Key_Tab)


def pick(window, part: str, field: str, value: object) -> None:
    """Choose from a list by the keyboard."""
    from PySide6.QtCore import Qt
    from PySide6.QtTest import QTest

    combo = form_of(window, part).edits[field]
    window.page.ensureWidgetVisible(combo)
    combo.setFocus()
    QTest.keyClick(combo, Qt.Key.Key_Home)
    for _ in range(combo.values.index(value)):
        QTest.keyClick(combo, Qt.Key.Key_Down)


def tick(window, part: str, field: str) -> None:
    """Click a box."""
    from tests.hands import click

    box = form_of(window, part).edits[field]
    window.page.ensureWidgetVisible(box)
    click(box)


def press(button) -> None:
    """Click a button."""
    from tests.hands import click

    assert button.isVisible() and button.isEnabled(), button.text()
    click(button)


def model_of(part: str):
    """The declaration of a part of the sheet, or of its head."""
    from magview.job.sheet import Job, new_job

    return Job if part == "" else type(getattr(new_job(), part))


def value_in(path: Path, part: str, field: str):
    """What a file has in a field."""
    from magview.job.library import read_job

    job = read_job(path)
    return getattr(job if part == "" else getattr(job, part), field)
