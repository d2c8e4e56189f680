"""Fixtures for tests of practice windows, and everything a window says, gathered for searching."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator
from typing import TYPE_CHECKING

import pytest

if TYPE_CHECKING:
    from magview.practice.state import Practice
    from magview.ui.practice.page import PracticePage
    from magview.ui.shell.window import MainWindow


@pytest.fixture
def open_practice(qtbot, open_window) -> Iterator[Callable[..., PracticePage]]:
    """Open a shipped exercise or lesson in the main window; a second passes with each look at the clock."""
    from itertools import count

    from PySide6.QtCore import QTimer
    from shiboken6 import isValid

    from magview.practice.attempt import Session
    from magview.practice.lesson_run import start_lesson
    from magview.practice.library import find_exercise, find_lesson, shipped_lessons
    from magview.ui.learn.model import LessonModel
    from magview.ui.learn.page import LessonPage
    from magview.ui.practice.model import AttemptModel
    from magview.ui.practice.page import PracticePage

    opened: list[PracticePage] = []

    def open_on(name: str, seed: int = 3, size: tuple[int, int] = (1280, 720), keeper=None) -> PracticePage:
        def show_page(main: MainWindow) -> None:
            if name in shipped_lessons():
                page = LessonPage(LessonModel(start_lesson(find_lesson(name))), main.look)
                main.learn.show_page(page)
            else:
                model = AttemptModel(Session(find_exercise(name), seed, "A. Trainee"), count(1).__next__)
                page = PracticePage(model, main.look, keeper)
                main.practice.show_page(page)
            opened.append(page)

        open_window(size=size, first=show_page)
        page = opened[-1]
        qtbot.waitUntil(page.isVisible)
        return page

    yield open_on
    timers = []
    for page in filter(isValid, opened):
        page.halt()
        timers += [t for t in page.findChildren(QTimer) if t.isActive()]
    opened.clear()
    assert not timers, "a page left a timer running"


NUMBER = re.compile(r"\d+(?:[.,]\d+)?")
SVG_WORDS = re.compile(r"<(?:text|title|desc)[^>]*>(.*?)</(?:text|title|desc)>", re.DOTALL)


def said_by(window) -> list[str]:
    """Every text of a page: widgets' words and tips, items of lists and tables, the accessible tree, titles; and
    what the window round it says of it."""
    from PySide6.QtGui import QAccessible, QAction
    from PySide6.QtWidgets import QWidget

    texts: list[str] = []
    main = window.window()
    round_it = [main.statusBar(), main.bar, *main.bar.findChildren(QWidget)]
    texts.append(main.windowTitle())
    for widget in [window, *window.findChildren(QWidget), *round_it]:
        texts += [
            widget.toolTip(), widget.whatsThis(), widget.statusTip(), widget.windowTitle(),
            widget.accessibleName(), widget.accessibleDescription(), *_words_of(widget),
        ]  # fmt: skip
    for action in [*window.findChildren(QAction), *main.menuBar().actions()]:
        texts += [action.text(), action.toolTip(), action.statusTip()]
    _walk(QAccessible.queryAccessibleInterface(window), texts)
    return [t for t in texts if t]


def _words_of(widget) -> list[str]:
    """What a kind of widget has besides what all have."""
    from PySide6.QtCore import QAbstractListModel
    from PySide6.QtWidgets import QAbstractItemView, QComboBox, QGraphicsView, QSlider, QTabWidget

    if isinstance(widget, QGraphicsView):
        return []  # its text is asked of what it saves
    asked = (getattr(widget, name, None) for name in ("text", "title", "placeholderText", "currentMessage"))
    words = [str(ask()) for ask in asked if callable(ask)]
    match widget:
        case QComboBox():
            words += [widget.itemText(i) for i in range(widget.count())]
        case QSlider():
            words.append(str(widget.value()))
        case QTabWidget():
            words += [widget.tabText(i) + widget.tabToolTip(i) for i in range(widget.count())]
        case QAbstractItemView() if widget.model() is not None:
            model = widget.model()
            # A list keeps its count of columns to itself.
            columns = 1 if isinstance(model, QAbstractListModel) else model.columnCount()
            # The words shown, as tip, as "what's this", as accessible text and description.
            cells = [model.index(y, x) for y in range(model.rowCount()) for x in range(columns)]
            words += [str(cell.data(role) or "") for cell in cells for role in (0, 3, 5, 11, 12)]
    return words


def _walk(interface, texts: list[str], depth: int = 0) -> None:
    """What a screen reader is told, down the accessible tree."""
    from PySide6.QtGui import QAccessible

    if interface is None or not interface.isValid() or depth > 30:
        return
    texts.extend(interface.text(kind) for kind in QAccessible.Text if kind != QAccessible.Text.UserText)
    for i in range(interface.childCount()):
        _walk(interface.child(i), texts, depth + 1)


def exported_by(window, folder) -> list[str]:
    """The words in every picture the window can save."""
    import html

    texts: list[str] = []
    for i, view in enumerate(window.views()):
        path = folder / f"picture-{i}.svg"
        window.export(view, path)
        texts += [html.unescape(w) for w in SVG_WORDS.findall(path.read_text(encoding="utf-8"))]
    return texts


def true_numbers(practice: Practice) -> dict[str, set[str]]:
    """The secrets of a state as anybody would write them: 2 to 4 decimals, lengths in millimetres and in inches."""
    from tests.secrets_of import secrets

    written: dict[str, set[str]] = {}
    for name, value in secrets(practice).items():
        # Nought and the quarters of a degree that the disc reads stand everywhere by themselves.
        if value != value or abs(value) < 0.005:
            continue
        forms = [value]
        if "_mm" in name:
            forms += [value / 25.4, value / 0.0254]
        for form in forms:
            for decimals in (2, 3, 4):
                text = f"{abs(form):.{decimals}f}"
                if float(text) * 4 % 1:
                    written.setdefault(text, set()).add(name)
    return written


def leaks(texts: list[str], practice: Practice, harmless: set[str]) -> set[tuple[str, str]]:
    """True numbers found in texts, with the secret each is; `harmless` stand on paper or in the own notebook."""
    hidden = true_numbers(practice)
    found = {n.replace(",", ".") for text in texts for n in NUMBER.findall(text)}
    return {(n, name) for n in found & set(hidden) - harmless for name in hidden[n]}
