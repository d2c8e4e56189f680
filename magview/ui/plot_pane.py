"""The plots under the pictures, one sheet at a time; each is built when it is first seen."""

from __future__ import annotations

import importlib
import threading
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import QLabel, QStackedWidget, QTabWidget, QWidget

from magview.ui.model import BenchModel
from magview.ui.theme import Theme

if TYPE_CHECKING:
    from magview.ui.plot_sheet import PlotSheet

SHEETS = {
    "lift": ("Lift and gap", "plot_lift", "LiftSheet"),
    "lobes": ("Lobes", "plot_lift", "LobeSheet"),
    "window": ("Window", "plot_window", "WindowSheet"),
    "coil": ("Coil", "plot_coil", "CoilSheet"),
    "pull": ("Magnet", "plot_coil", "PullSheet"),
    "coupling": ("Coupling", "plot_coupling", "CouplingSheet"),
    "trials": ("Trials", "plot_trials", "TrialsSheet"),
    "budget": ("Uncertainty", "plot_budget", "BudgetSheet"),
    "wear": ("Wear", "plot_wear", "WearSheet"),
}
"""What the tabs say, and where each sheet is found."""

_LOOK_MS = 20


class PlotPane(QTabWidget):
    """Sheets of plots. The library that draws them loads in the background, so that no hand waits for it."""

    said = Signal(str)
    """One sentence about what was done."""
    made = Signal(str, object)
    """A sheet has been built: its name, and itself."""

    def __init__(self, model: BenchModel, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._model, self._theme = model, theme
        self._inches, self._line_factor = False, 1.0
        self._built: dict[str, PlotSheet] = {}
        self._loading: threading.Thread | None = None
        self.setDocumentMode(True)
        self.setMinimumHeight(180)
        self._pages: dict[str, QStackedWidget] = {}
        for name, (title, _, _) in SHEETS.items():
            page = self._pages[name] = QStackedWidget()
            waiting = QLabel("The plots are coming…")
            waiting.setAlignment(Qt.AlignmentFlag.AlignCenter)
            page.addWidget(waiting)
            self.addTab(page, title)
        self._look = QTimer(self)
        self._look.setInterval(_LOOK_MS)
        self._look.timeout.connect(self._loaded)
        self.currentChanged.connect(self._chosen)

    def load(self) -> None:
        """Begin to load the plotting library beside everything else."""
        if self._loading is None:
            self._loading = threading.Thread(target=importlib.import_module, args=("pyqtgraph",), daemon=True)
            self._loading.start()
            self._look.start()

    def wait(self) -> None:
        """Wait for the library."""
        self._join()
        self._loaded()

    def _join(self) -> None:
        self.load()
        assert self._loading is not None
        self._loading.join()

    def halt(self) -> None:
        """The window closes."""
        self._look.stop()

    @property
    def ready(self) -> bool:
        """Whether the library is there."""
        return self._loading is not None and not self._loading.is_alive()

    def sheet(self, name: str) -> PlotSheet:
        """A sheet by its name, built now if it has not been seen yet; waits for the library if it must."""
        self._join()
        if name not in self._built:
            _, module, kind = SHEETS[name]
            made: PlotSheet = getattr(importlib.import_module(f"magview.ui.{module}"), kind)(self._model, self._theme)
            made.said.connect(self.said)
            made.set_inches(self._inches)
            made.set_line_factor(self._line_factor)
            self._pages[name].setCurrentIndex(self._pages[name].addWidget(made))
            self._built[name] = made
            self.made.emit(name, made)
        return self._built[name]

    def choose(self, name: str) -> PlotSheet:
        """Bring a sheet to the front."""
        self.setCurrentIndex(list(SHEETS).index(name))
        return self.sheet(name)

    def _loaded(self) -> None:
        if self.ready:
            self._look.stop()
            self._chosen()

    def _chosen(self, _: int = 0) -> None:
        if self.ready and self.isVisible():
            self.sheet(list(SHEETS)[self.currentIndex()])

    def showEvent(self, event: QShowEvent) -> None:
        """Seen for the first time: load, or build what is in front."""
        super().showEvent(event)
        self.load()
        self._chosen()

    def set_theme(self, theme: Theme) -> None:
        """Change colours."""
        self._theme = theme
        for sheet in self._built.values():
            sheet.set_theme(theme)

    def set_inches(self, inches: bool) -> None:
        """Show lengths in inches or in millimetres."""
        self._inches = inches
        for sheet in self._built.values():
            sheet.set_inches(inches)

    def set_line_factor(self, factor: float) -> None:
        """Draw lines thicker."""
        self._line_factor = factor
        for sheet in self._built.values():
            sheet.set_line_factor(factor)
