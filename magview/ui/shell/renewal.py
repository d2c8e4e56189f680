"""The workbench built anew over the same bench, when another language is chosen."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication

from magview.spec.language import tr
from magview.ui.kit.translation import LANGUAGES, choose, speak
from magview.ui.plots.pane import SHEETS
from magview.ui.shell.window import MainWindow


def renewed(window: MainWindow, code: str | None) -> MainWindow:
    """Keep the choice of a language (None: the desktop's) and speak it: returns the window that shows it now.

    While anything is under way, work in it would be lost: then it is spoken from the next start.
    """
    choose(code)
    if others_open(window):
        code = speak(code)  # for this one sentence
        window.say(tr("{language} from the next start: other work is open now.", language=LANGUAGES[code]))
        speak(window.spoken)
        return window
    spoken = speak(code)
    if spoken == window.spoken:
        return window
    window.furnish()
    new = window.again()
    new.show()
    new.furnish()
    _follow(window, new)
    window.close()
    window.deleteLater()
    return new


def others_open(window: MainWindow) -> bool:
    """Whether something is under way in the window, or stands beside it."""
    return bool(window.places.open_pages) or any(
        w.isVisible() and w is not window and w.windowType() in (Qt.WindowType.Window, Qt.WindowType.Dialog)
        for w in QApplication.topLevelWidgets()
    )


def _follow(old: MainWindow, new: MainWindow) -> None:
    """Take over how the old window was looked at."""
    was_page, page = old.bench_page, new.bench_page
    for was, now in zip(was_page.menus.ticks(), page.menus.ticks(), strict=True):
        # Of a group the chosen one is triggered; the others follow.
        if was.isChecked() != now.isChecked() and (was.isChecked() or now.actionGroup() is None):
            now.trigger()
    page.tabs.setCurrentIndex(was_page.tabs.currentIndex())
    if was_page.plots.isVisibleTo(was_page):
        page.plots.choose(list(SHEETS)[was_page.plots.currentIndex()])
    new.places.go(old.places.name)
