"""A mechanic between the bench and the job sheet: mouse and keys in both places of the window."""

from __future__ import annotations

import time
from pathlib import Path

from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from magview.job.feeds import FEEDS
from magview.spec.engine import Installation
from magview.ui.bench.panes import PANELS
from magview.ui.shell.window import MainWindow
from magview.ui.work.sheet_page import JobPage
from tests.hands import click
from tests.job_windows import choose_page, press
from tests.windows import workbench


def wait_for(condition) -> None:
    """Let the program work until something is so."""
    end = time.monotonic() + 20
    while not condition():
        assert time.monotonic() < end, "waited in vain"
        QApplication.processEvents()


class Mechanic:
    """Hands on the bench and on the sheet that is open in another place of the window."""

    def __init__(self, main: MainWindow) -> None:
        self.main = main

    @property
    def sheet(self) -> JobPage:
        return self.main.work.sheets[-1]

    def at_bench(self) -> None:
        self._go(Qt.Key.Key_5, self.main.bench_page)

    def at_sheet(self) -> None:
        self._go(Qt.Key.Key_4, self.sheet)

    def _go(self, key: Qt.Key, page) -> None:
        """Go to a place of the window by Ctrl and its number."""
        self._front(self.main)
        if not page.isVisible():
            QTest.keyClick(self.main, key, Qt.KeyboardModifier.ControlModifier)
        wait_for(page.isVisible)

    @staticmethod
    def _front(window) -> None:
        window.activateWindow()
        wait_for(window.isActiveWindow)

    def menu(self, window, *keys: Qt.Key) -> None:
        """Open a menu by Alt and its letter, then choose by letters."""
        self._front(window)
        QTest.keyClick(window, keys[0], Qt.KeyboardModifier.AltModifier)
        for key in keys[1:]:
            popup = QApplication.activePopupWidget()
            assert popup is not None, "no menu is open"
            QTest.keyClick(popup, key)

    def tab(self, name: str) -> None:
        """Bring a calculator to the front by a click on its tab, or by its entry behind More."""
        tabs, index = self.main.tabs, list(PANELS).index(name)
        if tabs.isTabVisible(index):
            bar = tabs.tabBar()
            QTest.mouseClick(bar, Qt.MouseButton.LeftButton, pos=bar.tabRect(index).center())
        else:
            # A click on More would wait for its menu.
            entries = {action.text(): action for action in tabs.more.menu().actions()}
            entries[tabs.tabText(index)].trigger()
        assert tabs.currentIndex() == index

    def spin(self, spin, text: str) -> None:
        """Type a quantity into a field of the bench."""
        self.at_bench()
        spin.setFocus()
        spin.selectAll()
        QTest.keyClicks(spin.lineEdit(), text)
        QTest.keyClick(spin.lineEdit(), Qt.Key.Key_Return)

    def box(self, check) -> None:
        """Tick a box of the bench."""
        self.at_bench()
        QTest.mouseClick(check, Qt.MouseButton.LeftButton, pos=QPoint(8, check.height() // 2))

    def button(self, button) -> None:
        """Press a button of the bench."""
        self.at_bench()
        self.main.tabs.currentWidget().ensureWidgetVisible(button)
        click(button)

    def note(self, key: str) -> None:
        """Note something of the bench on the sheet by one press there."""
        self.at_sheet()
        wanted = next(f for f in FEEDS if f.key == key)
        if self.sheet.page_name != wanted.page:
            choose_page(self.sheet, wanted.page)
        press(self.sheet.page.feeds.buttons[key])
        assert self.sheet.bar.said.text().startswith("✓ Noted"), self.sheet.bar.said.text()

    def done(self, stage: str) -> None:
        """Mark a stage as done."""
        self.at_sheet()
        if self.sheet.page_name != stage:
            choose_page(self.sheet, stage)
        press(self.sheet.bar.done)
        assert self.sheet.bar.said.text().startswith("✓ Done"), self.sheet.bar.said.text()


def open_bench(installation: Installation) -> MainWindow:
    """The main window in a process of its own."""
    from magview.bench.placing import new_bench
    from magview.ui.kit.bench_model import BenchModel
    from magview.ui.kit.look import Look
    from magview.ui.kit.theme import LIGHT

    main = workbench()(BenchModel(new_bench(installation)), Look(LIGHT))
    main.furnish()
    main.show()
    Mechanic(main).at_bench()
    return main


def chosen_file(path: Path):
    """A file dialog in which this file is chosen."""
    return staticmethod(lambda *_args, **_kwargs: (str(path), ""))
