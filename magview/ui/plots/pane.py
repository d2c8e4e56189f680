"""The plots under the pictures, one sheet at a time; each is built when it is first seen."""

from __future__ import annotations

import importlib
import threading
import time
from collections.abc import Iterator
from typing import TYPE_CHECKING

from PySide6 import QtCore, QtGui, QtWidgets
from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import QLabel, QStackedWidget, QTabWidget, QWidget

from magview.spec.language import marked, tr
from magview.ui.kit.bench_model import BenchModel
from magview.ui.kit.look import Look
from magview.ui.kit.start_order import resume

if TYPE_CHECKING:
    from magview.ui.plots.sheet import PlotSheet

SHEETS = {
    "lift": (marked("Lift and gap"), "lift", "LiftSheet"),
    "lobes": (marked("Lobes"), "lift", "LobeSheet"),
    "window": (marked("Window"), "adjustment_window", "WindowSheet"),
    "coil": (marked("Coil"), "coil", "CoilSheet"),
    "pull": (marked("Magnet"), "coil", "PullSheet"),
    "coupling": (marked("Coupling"), "coupling", "CouplingSheet"),
    "trials": (marked("Trials"), "trials", "TrialsSheet"),
    "budget": (marked("Uncertainty"), "budget", "BudgetSheet"),
    "wear": (marked("Wear"), "wear", "WearSheet"),
}
"""Words on the tabs, and where each sheet is found."""

_LOOK_MS = 20

_FIRST = "magview.ui.plots.lift"
"""The first sheet's module brings the library with it."""

_SLICE_S = 0.008
"""Time that the window is kept waiting at once."""


def _touch_qt() -> Iterator[None]:
    """Name every class of Qt once, as the library does when it is imported.

    PySide builds a class when it is first named. Built here it takes the library's import the longest of its
    pauses, and no class is ever built by two threads at once.
    """
    for module in (QtCore, QtGui, QtWidgets):
        for name in dir(module):
            getattr(module, name)
            yield


class PlotPane(QTabWidget):
    """Sheets of plots. The library that draws them loads in the background, so that no hand waits for it."""

    said = Signal(str)
    """One sentence about what was done."""
    made = Signal(str, object)
    """A sheet has been built: its name, and itself."""

    def __init__(self, model: BenchModel, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._model, self.look = model, look
        self._begun: dict[str, PlotSheet] = {}
        self._built: dict[str, PlotSheet] = {}
        self._loading: threading.Thread | None = None
        self._touching: Iterator[None] | None = None
        self.ready = False
        """Whether the library is there."""
        self.setDocumentMode(True)
        self.setMinimumHeight(180)
        self._pages: dict[str, QStackedWidget] = {}
        for name, (title, _, _) in SHEETS.items():
            page = self._pages[name] = QStackedWidget()
            waiting = QLabel(tr("The plots are coming…"))
            waiting.setAlignment(Qt.AlignmentFlag.AlignCenter)
            page.addWidget(waiting)
            self.addTab(page, tr(title))
        self._look = QTimer(self)
        self._look.setInterval(_LOOK_MS)
        self._look.timeout.connect(self._loaded)
        self.currentChanged.connect(self._chosen)

    def load(self) -> None:
        """Begin to load the plotting library beside everything else."""
        if self._touching is None and not self.ready:
            self._touching = _touch_qt()
            self._touch_on()

    def _touch_on(self) -> None:
        """Do what must happen in this thread, in slices; then the rest of the import in another."""
        if self._touching is None or self._loading is not None or self.ready:
            return
        end = time.perf_counter() + _SLICE_S
        for _ in self._touching:
            if time.perf_counter() > end:
                QTimer.singleShot(1, self, self._touch_on)
                return
        self._loading = threading.Thread(target=importlib.import_module, args=(_FIRST,), daemon=True)
        self._loading.start()
        self._look.start()

    def wait(self) -> None:
        """Wait for the library."""
        self._join()
        self._loaded()

    def _join(self) -> None:
        if self._loading is not None:
            self._loading.join()
        importlib.import_module(_FIRST)
        self.ready = True

    def halt(self) -> None:
        """The window closes."""
        self._look.stop()

    def has(self, name: str) -> bool:
        """Whether a sheet is built and in its place."""
        return name in self._built

    def sheet(self, name: str) -> PlotSheet:
        """A sheet by its name, built now if it has not been seen yet; waits for the library if it must."""
        self._join()
        sheet = self._begin(name)
        while name not in self._built:
            self._build_on(name)
        sheet.catch_up()
        return sheet

    def _begin(self, name: str) -> PlotSheet:
        if name not in self._begun:
            _, module, kind = SHEETS[name]
            sheet = getattr(importlib.import_module(f"magview.ui.plots.{module}"), kind)
            # With a parent from the start: a half-built sheet then goes with its window, in Qt's order.
            made: PlotSheet = sheet(self._model, self.look, self)
            made.hide()
            made.said.connect(self.said)
            self._begun[name] = made
        return self._begun[name]

    def _build_on(self, name: str) -> None:
        made, page = self._begin(name), self._pages[name]
        if made.build_on():
            return
        if page.count() == 1:
            page.addWidget(made)
        else:
            page.setCurrentIndex(1)
            self._built[name] = made
            self.made.emit(name, made)
            QTimer.singleShot(0, resume)

    def choose(self, name: str) -> PlotSheet:
        """Bring a sheet to the front."""
        self.setCurrentIndex(list(SHEETS).index(name))
        return self.sheet(name)

    def _loaded(self) -> None:
        if self.ready or (self._loading is not None and not self._loading.is_alive()):
            self.ready = True
            self._look.stop()
            self._chosen()
            if not self.isVisible():
                resume()

    def _chosen(self, _: int = 0) -> None:
        """A step of building what is in front, and the next one when everything else has had its turn."""
        name = list(SHEETS)[self.currentIndex()]
        if self.ready and self.isVisible() and name not in self._built:
            self._build_on(name)
            QTimer.singleShot(1, self, self._chosen)

    def showEvent(self, event: QShowEvent) -> None:
        """Seen for the first time: load, or build what is in front."""
        super().showEvent(event)
        QTimer.singleShot(0, self, self.load)  # once the place for them is laid out and painted
        self._chosen()
