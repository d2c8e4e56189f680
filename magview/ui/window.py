"""The window: pictures, calculator, and what is on the bench."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtGui import QAction, QActionGroup, QKeySequence
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
    QToolBar,
)

from magview import __version__
from magview.bench.state import BenchState, PlaceMagneto
from magview.spec.base import SpecError
from magview.spec.files import read_magneto, write_model
from magview.spec.library import find_magneto, shipped_names
from magview.ui.breaker_view import BreakerView
from magview.ui.contact_view import ContactView
from magview.ui.model import BenchModel
from magview.ui.setting_panel import CAUTION, SettingPanel
from magview.ui.theme import THEMES, Theme, dress, system_theme

_FILTER = "Magneto files (*.json);;All files (*)"


class MainWindow(QMainWindow):
    """The workbench. All it knows is in the model's state; it only arranges views and opens files."""

    def __init__(self, model: BenchModel, theme: Theme | None = None) -> None:
        super().__init__()
        self.model = model
        self._theme = theme or system_theme()
        model.setParent(self)
        self.breaker = BreakerView(model, self._theme)
        self.contact = ContactView(model, self.breaker, self._theme)
        self.panel = SettingPanel(model, self._theme)
        self._lay_out()
        self._build_actions()
        self._apply_theme()
        self.show_state(model.state)
        model.changed.connect(self.show_state)
        model.refused.connect(self.say)

    # -------------------------------------------------------------- building

    def _lay_out(self) -> None:
        pictures = QSplitter(Qt.Orientation.Vertical)
        pictures.addWidget(self.breaker)
        pictures.addWidget(self.contact)
        pictures.setStretchFactor(0, 4)
        pictures.setStretchFactor(1, 1)
        pictures.setCollapsible(0, False)
        scroll = QScrollArea()
        scroll.setWidget(self.panel)
        scroll.setWidgetResizable(True)
        scroll.setFrameShape(QScrollArea.Shape.NoFrame)
        scroll.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        scroll.setMinimumWidth(self.panel.minimumSizeHint().width() + scroll.verticalScrollBar().sizeHint().width())
        split = QSplitter(Qt.Orientation.Horizontal)
        split.addWidget(pictures)
        split.addWidget(scroll)
        split.setStretchFactor(0, 1)
        split.setStretchFactor(1, 0)
        split.setCollapsible(0, False)
        split.setCollapsible(1, False)
        self.setCentralWidget(split)
        self.resize(1180, 680)

    def _build_actions(self) -> None:
        files, view, help_menu = (self.menuBar().addMenu(t) for t in ("&File", "&View", "&Help"))
        self._act(files, "&Open magneto…", self.open_file, QKeySequence.StandardKey.Open)
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
        for view in (self.breaker, self.contact, self.panel):
            view.set_theme(self._theme)

    # -------------------------------------------------------------- doing

    def place(self, name: str) -> None:
        """Put a shipped magneto, or one from a file, on the bench; a bad file is refused in one sentence."""
        try:
            magneto = find_magneto(name)
        except SpecError as error:
            self._refuse(str(error))
            return
        self.model.send(PlaceMagneto(magneto))

    def open_file(self) -> None:
        """Ask for a file and put it on the bench."""
        path, _ = QFileDialog.getOpenFileName(self, "Open a magneto", "", _FILTER)
        if path:
            self.open_path(Path(path))

    def open_path(self, path: Path) -> None:
        """Put the magneto of a file on the bench, or say in one sentence why not; the old one then stays."""
        refusals: list[str] = []
        self.model.refused.connect(refusals.append)
        try:
            self.model.send(PlaceMagneto(read_magneto(path)))
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
        for view in (self.breaker, self.contact, self.panel):
            view.set_inches(index == 1)

    def _theme_chosen(self, action: QAction) -> None:
        self._theme = THEMES[action.data()]
        self._apply_theme()
