"""The window: pictures, calculator, and what is on the bench."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import QEvent, QObject, Qt
from PySide6.QtGui import QAction, QActionGroup, QKeySequence, QResizeEvent
from PySide6.QtWidgets import (
    QApplication,
    QComboBox,
    QFileDialog,
    QLabel,
    QMainWindow,
    QMenu,
    QMessageBox,
    QScrollArea,
    QSplitter,
    QTabWidget,
    QToolBar,
    QWidget,
)

from magview import __version__
from magview.bench.actions import PlaceInstallation, PlaceMagneto
from magview.bench.state import BenchState
from magview.spec.base import SpecError
from magview.spec.files import read_bench_item, write_model
from magview.spec.library import find_installation, find_magneto, shipped_installation_of, shipped_names
from magview.spec.magneto import Magneto
from magview.ui.breaker_view import BreakerView
from magview.ui.contact_view import ContactView
from magview.ui.crank_view import CrankView
from magview.ui.drive_view import DriveView
from magview.ui.model import BenchModel
from magview.ui.setting_panel import CAUTION, SettingPanel
from magview.ui.theme import THEMES, Theme, dress, system_theme
from magview.ui.timing_panel import TimingPanel

_FILTER = "Magneto and installation files (*.json);;All files (*)"


class MainWindow(QMainWindow):
    """The workbench. All it knows is in the model's state; it only arranges views and opens files."""

    def __init__(self, model: BenchModel, theme: Theme | None = None) -> None:
        super().__init__()
        self.model = model
        self._theme = theme or system_theme()
        model.setParent(self)
        self.breaker = BreakerView(model, self._theme)
        self.contact = ContactView(model, self.breaker, self._theme)
        self.drive = DriveView(model, self._theme)
        self.crank = CrankView(model, self._theme)
        self.panel = SettingPanel(model, self._theme)
        self.timing = TimingPanel(model, self._theme)
        self.timing.previewed.connect(self.drive.preview)
        self._lay_out()
        self._build_actions()
        self._apply_theme()
        self.show_state(model.state)
        model.changed.connect(self.show_state)
        model.refused.connect(self.say)

    # -------------------------------------------------------------- building

    def _lay_out(self) -> None:
        self.tabs = QTabWidget()
        self.tabs.setDocumentMode(True)
        for panel, title in ((self.panel, "&Internal timing"), (self.timing, "Timing to the en&gine")):
            self.tabs.addTab(_TallPanel(panel), title)
        self.split = QSplitter(Qt.Orientation.Horizontal)
        self.split.addWidget(_column(self.breaker, self.contact))
        self.split.addWidget(_column(self.drive, self.crank))
        self.split.addWidget(self.tabs)
        for i, stretch in enumerate((3, 2, 0)):
            self.split.setStretchFactor(i, stretch)
            self.split.setCollapsible(i, False)
        self.setCentralWidget(self.split)
        self.tabs.currentChanged.connect(self._emphasise)
        self.resize(1280, 720)
        self._emphasise(0)

    def _build_actions(self) -> None:
        files, view, help_menu = (self.menuBar().addMenu(t) for t in ("&File", "&View", "&Help"))
        self._act(files, "&Open magneto or installation…", self.open_file, QKeySequence.StandardKey.Open)
        self._act(files, "&Save magneto as…", self.save_file, QKeySequence.StandardKey.SaveAs)
        files.addSeparator()
        self._act(files, "&Quit", self.close, QKeySequence.StandardKey.Quit)
        self.names_action = self._act(view, "&Names of parts", None, QKeySequence("N"))
        self.names_action.setCheckable(True)
        self.names_action.setChecked(True)
        self.names_action.toggled.connect(self.breaker.set_names)
        view.addSeparator()
        self.theme_actions = QActionGroup(self)
        for name in THEMES:
            action = self._act(view, f"{name.capitalize()} colours", None, None)
            action.setCheckable(True)
            action.setChecked(name == self._theme.name)
            action.setData(name)
            self.theme_actions.addAction(action)
        self.theme_actions.triggered.connect(self._theme_chosen)
        self._act(help_menu, "&Keys and cautions", self.show_help, QKeySequence.StandardKey.HelpContents)

        bar = QToolBar("Bench")
        bar.setObjectName("bench")
        bar.setMovable(False)
        self.addToolBar(bar)
        self.magnetos = QComboBox()
        self.magnetos.setAccessibleName("Magneto on the bench")
        self.magnetos.setToolTip("Magneto on the bench")
        for name in shipped_names("magnetos"):
            self.magnetos.addItem(find_magneto(name).name, name)
        self.magnetos.activated.connect(self._shipped_chosen)
        self.units = QComboBox()
        self.units.setAccessibleName("Unit of length")
        self.units.addItems(["Millimetres", "Inches"])
        self.units.currentIndexChanged.connect(self._unit_chosen)
        for text, widget in (("  Magneto ", self.magnetos), ("   Lengths in ", self.units)):
            label = QLabel(text)
            label.setBuddy(widget)
            bar.addWidget(label)
            bar.addWidget(widget)

    def _act(
        self,
        menu: QMenu,
        text: str,
        slot: Callable[[], object] | None,
        key: QKeySequence | QKeySequence.StandardKey | None,
    ) -> QAction:
        action = QAction(text, self)
        if key is not None:
            action.setShortcut(key)
        if slot is not None:
            action.triggered.connect(slot)
        menu.addAction(action)
        return action

    # -------------------------------------------------------------- showing

    def show_state(self, state: BenchState, old: BenchState | None = None) -> None:
        """Name what is on the bench."""
        if old is not None and old.magneto == state.magneto:
            return
        self.setWindowTitle(f"{state.magneto.name} – magview")
        index = self.magnetos.findText(state.magneto.name)
        self.magnetos.setCurrentIndex(index)
        if index < 0:
            self.magnetos.setPlaceholderText(state.magneto.name)

    def say(self, sentence: str) -> None:
        """Put one sentence where it is seen and does not stop the work."""
        self.statusBar().showMessage(sentence, 12_000)

    def _apply_theme(self) -> None:
        app = QApplication.instance()
        assert isinstance(app, QApplication)
        dress(app, self._theme)
        for view in (self.breaker, self.contact, self.drive, self.crank, self.panel, self.timing):
            view.set_theme(self._theme)

    def _emphasise(self, tab: int) -> None:
        """Give the picture that the work is on the larger share."""
        panel = self.tabs.minimumSizeHint().width()
        room = max(0, self.split.width() - panel)
        share = 0.62 if tab == 0 else 0.38
        self.split.setSizes([round(room * share), round(room * (1 - share)), panel])

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Share the width anew."""
        super().resizeEvent(event)
        self._emphasise(self.tabs.currentIndex())

    # -------------------------------------------------------------- doing

    def place(self, name: str) -> None:
        """Put a shipped magneto on the bench, on its shipped engine."""
        installation = shipped_installation_of(name)
        if installation is None:
            self.model.send(PlaceMagneto(find_magneto(name)))
        else:
            self.model.send(PlaceInstallation(find_installation(installation)))

    def open_file(self) -> None:
        """Ask for a file and put it on the bench."""
        path, _ = QFileDialog.getOpenFileName(self, "Open a magneto or an installation", "", _FILTER)
        if path:
            self.open_path(Path(path))

    def open_path(self, path: Path) -> None:
        """Put a file's magneto or installation on the bench, or say in one sentence why not."""
        refusals: list[str] = []
        self.model.refused.connect(refusals.append)
        try:
            item = read_bench_item(path)
            self.model.send(PlaceMagneto(item) if isinstance(item, Magneto) else PlaceInstallation(item))
        except SpecError as error:
            refusals.append(str(error))
        finally:
            self.model.refused.disconnect(refusals.append)
        if refusals:
            self._refuse(refusals[0])

    def save_file(self) -> None:
        """Ask where, and write the magneto there."""
        path, _ = QFileDialog.getSaveFileName(self, "Save the magneto", "magneto.json", _FILTER)
        if path:
            self.save_path(Path(path))

    def save_path(self, path: Path) -> None:
        """Write the magneto on the bench; a file that cannot be written is left as it was."""
        try:
            write_model(path, self.model.state.magneto)
        except SpecError as error:
            self._refuse(str(error))
            return
        self.say(f"Saved {path.name}.")

    def show_help(self) -> None:
        """Keys, signs and cautions."""
        box = QMessageBox(self)
        box.setWindowTitle("Keys and cautions")
        box.setText(f"magview {__version__}")
        box.setInformativeText(
            "Drag the rotor or cam, the backplate, or the contact screw; or take one in hand with 1, 2, 3 and turn "
            "it with the arrow keys, Page Up and Page Down, or the wheel. Shift turns ten times finer. Numbers can "
            "be typed with their unit: 1.5°, 9 thou, 0.23 mm.\n\nPositive angles go the way the rotor turns in "
            f"service; a positive contact-screw angle brings the contacts closer.\n\n{CAUTION}"
        )
        box.open()

    def _refuse(self, sentence: str) -> None:
        box = QMessageBox(QMessageBox.Icon.Warning, "magview", sentence, QMessageBox.StandardButton.Ok, self)
        box.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        box.open()

    def _shipped_chosen(self, index: int) -> None:
        self.place(self.magnetos.itemData(index))

    def _unit_chosen(self, index: int) -> None:
        for view in (self.breaker, self.contact, self.crank, self.panel, self.timing):
            view.set_inches(index == 1)

    def _theme_chosen(self, action: QAction) -> None:
        self._theme = THEMES[action.data()]
        self._apply_theme()


class _TallPanel(QScrollArea):
    """A panel that scrolls up and down only: it is always as wide as its words need."""

    def __init__(self, panel: QWidget) -> None:
        super().__init__()
        self._panel = panel
        self.setWidget(panel)
        self.setWidgetResizable(True)
        self.setFrameShape(QScrollArea.Shape.NoFrame)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        panel.installEventFilter(self)
        self._widen()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Words have changed: give them the width they need."""
        if event.type() == QEvent.Type.LayoutRequest:
            self._widen()
        return super().eventFilter(watched, event)

    def _widen(self) -> None:
        needed = self._panel.minimumSizeHint().width() + self.verticalScrollBar().sizeHint().width()
        # It never shrinks again, so that the pictures do not jump while numbers change.
        self.setMinimumWidth(max(self.minimumWidth(), needed))


def _column(upper: QWidget, lower: QWidget) -> QSplitter:
    """Two pictures one above the other, the upper one the larger."""
    column = QSplitter(Qt.Orientation.Vertical)
    column.addWidget(upper)
    column.addWidget(lower)
    column.setStretchFactor(0, 5)
    column.setStretchFactor(1, 2)
    column.setSizes([500, 200])
    column.setCollapsible(0, False)
    return column
