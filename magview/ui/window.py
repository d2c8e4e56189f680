"""The window: pictures, calculators, menus, and what is on the bench."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, QTimer
from PySide6.QtGui import QAction, QActionGroup, QCloseEvent, QFont, QKeySequence, QResizeEvent
from PySide6.QtWidgets import (
    QApplication,
    QFileDialog,
    QLabel,
    QMainWindow,
    QMenu,
    QMessageBox,
    QSplitter,
    QTabWidget,
    QToolBar,
)

from magview import __version__
from magview.bench.actions import HoldRotor, LetGo, MountMagneto, PlaceInstallation, PlaceMagneto
from magview.bench.autosave import Autosave
from magview.bench.state import BenchState
from magview.spec.base import SpecError
from magview.spec.files import read_bench_item, write_model
from magview.spec.library import find_installation, find_magneto, shipped_installation_of, shipped_names
from magview.spec.magneto import Magneto
from magview.ui.breaker_view import BreakerView
from magview.ui.contact_view import ContactView
from magview.ui.crank_view import CrankView
from magview.ui.drive_view import DriveView
from magview.ui.inputs import QuietCombo
from magview.ui.model import BenchModel
from magview.ui.panes import TallPanel, column
from magview.ui.picture_view import PictureView
from magview.ui.setting_panel import CAUTION, SettingPanel
from magview.ui.theme import THEMES, Theme, dress, system_theme

if TYPE_CHECKING:  # panels behind others are imported when they are first seen
    from magview.ui.lead_panel import LeadPanel
    from magview.ui.timing_panel import TimingPanel

_FILTER = "Magneto and installation files (*.json);;All files (*)"
_PICTURES = "SVG (*.svg);;PDF (*.pdf);;PNG (*.png)"
_TEXT_SIZES = (100, 125, 150, 200)
_PROJECTED = 1.6
"""Type and lines on a projector, against the desk."""

HANDLING = (
    "Drag the rotor or cam, the backplate, or the contact screw; or take one in hand with 1, 2, 3 and turn it with "
    "the arrow keys, Page Up and Page Down, or the wheel: ten times finer with Shift, coarser with Alt. A dragged "
    "rotor catches at contacts just open, top of lobe, E-gap and neutral; Alt lets it pass. Double-click puts a part "
    "back. Space holds the rotor or lets it go. In the drive end, left and right move the magneto flange, up and "
    "down the disc, one tooth at a time. Ctrl and the wheel zoom, the middle button pans. Numbers can be typed with "
    "their unit: 1.5°, 9 thou, 0.23 mm.\n\nPositive angles go the way the rotor turns in service; a positive "
    "contact-screw angle brings the contacts closer."
)


class MainWindow(QMainWindow):
    """The workbench. All it knows is in the model's state; it only arranges views and opens files."""

    def __init__(self, model: BenchModel, theme: Theme | None = None, autosave: Autosave | None = None) -> None:
        super().__init__()
        self.model = model
        self._theme = theme or system_theme()
        self._autosave = autosave
        self._font = QApplication.font()
        self._text_percent, self._projecting = 100, False
        self._answering = False
        """Whether the status bar says why something was refused: the next thing that is done takes it away."""
        model.setParent(self)
        self.breaker = BreakerView(model, self._theme)
        self.contact = ContactView(model, self.breaker, self._theme)
        self.drive = DriveView(model, self._theme)
        self.crank = CrankView(model, self._theme)
        self.panel = SettingPanel(model, self._theme)
        self._timing: TimingPanel | None = None
        self._lead: LeadPanel | None = None
        self._lay_out()
        self._build_menus()
        self._build_bar()
        self._apply_theme()
        self.show_state(model.state)
        model.changed.connect(self.show_state)
        model.refused.connect(self._answer)
        self.statusBar()  # there from the start, so that the first sentence moves nothing
        # Kept a second after the last change, and not more often than that while something moves.
        self._keep_soon = QTimer(self)
        self._keep_soon.setSingleShot(True)
        self._keep_soon.setInterval(1000)
        self._keep_soon.timeout.connect(self._keep)

    # -------------------------------------------------------------- building

    def _lay_out(self) -> None:
        self.tabs = QTabWidget()
        self.tabs.setDocumentMode(True)
        self._timing_pane, self._lead_pane = TallPanel(self._build_timing), TallPanel(self._build_lead)
        for pane, title in (
            (TallPanel(lambda: self.panel), "&Internal timing"),
            (self._timing_pane, "To the en&gine"),
            (self._lead_pane, "Switch &lead"),
        ):
            self.tabs.addTab(pane, title)
        first = self.tabs.widget(0)
        assert isinstance(first, TallPanel)
        first.panel()  # its width shares out the window
        self.split = QSplitter(Qt.Orientation.Horizontal)
        self.split.addWidget(column(self.breaker, self.contact))
        self.split.addWidget(column(self.drive, self.crank))
        self.split.addWidget(self.tabs)
        for i, stretch in enumerate((3, 2, 0)):
            self.split.setStretchFactor(i, stretch)
            self.split.setCollapsible(i, False)
        self.setCentralWidget(self.split)
        self.tabs.currentChanged.connect(self._emphasise)
        room = QApplication.primaryScreen().availableGeometry()
        self.resize(min(1280, room.width()), min(720, room.height()))
        self._emphasise(0)

    @property
    def timing(self) -> TimingPanel:
        """The panel of timing to the engine."""
        self._timing_pane.panel()
        assert self._timing is not None
        return self._timing

    @property
    def lead(self) -> LeadPanel:
        """The panel of the switch lead."""
        self._lead_pane.panel()
        assert self._lead is not None
        return self._lead

    def _build_timing(self) -> TimingPanel:
        from magview.ui.timing_panel import TimingPanel

        panel = TimingPanel(self.model, self._theme)
        panel.previewed.connect(self.drive.preview)
        panel.set_inches(self.units.currentIndex() == 1)
        self._timing = panel
        return panel

    def _build_lead(self) -> LeadPanel:
        from magview.ui.lead_panel import LeadPanel

        self._lead = LeadPanel(self.model, self._theme)
        return self._lead

    def _build_menus(self) -> None:
        keys = QKeySequence.StandardKey
        files, edit, bench, view, help_menu = (
            self.menuBar().addMenu(t) for t in ("&File", "&Edit", "Ben&ch", "&View", "&Help")
        )
        self._act(files, "&Open magneto or installation…", self.open_file, keys.Open)
        self._act(files, "&Save magneto as…", self.save_file, keys.SaveAs)
        files.addSeparator()
        for text, picture in (("breaker end", self.breaker), ("drive end", self.drive), ("crank", self.crank)):
            action = self._act(files, f"Save picture of the {text}…", None, None)
            action.setData(picture)
            action.triggered.connect(self._export_chosen)
        files.addSeparator()
        self._act(files, "&Quit", self.close, keys.Quit)

        self.undo_action = self._act(edit, "&Undo", self.model.undo, keys.Undo)
        self.redo_action = self._act(edit, "&Redo", self.model.redo, keys.Redo)

        self.hold_action = self._check(bench, "&Hold the rotor", self._hold, True, QKeySequence("H"))
        self.mount_action = self._check(bench, "Magneto on the &engine", self._mount, True, None)
        self._check(bench, "&Snap to openings, lobes and marks", self._snap, True, None)
        self._check(bench, "&Reduced motion", self._reduce_motion, False, None)

        self._check(view, "&Names of parts", self.breaker.set_names, True, QKeySequence("N"))
        self._check(view, "See the breaker from the &drive end", self.breaker.set_mirrored, False, None)
        self._check(view, "Draw the &gap 5× its size", self._exaggerate, False, None)
        self._check(view, "&Follow the contacts when zoomed", self._follow, False, None)
        view.addSeparator()
        self._act(view, "Zoom &in", self._zoom_in, keys.ZoomIn)
        self._act(view, "Zoom &out", self._zoom_out, keys.ZoomOut)
        self._act(view, "&Whole picture", self._zoom_whole, QKeySequence("Ctrl+0"))
        view.addSeparator()
        self.theme_actions = self._choice(
            view, [(f"{name.capitalize()} colours", name) for name in THEMES], self._theme.name, self._theme_chosen
        )
        view.addSeparator()
        self.text_actions = self._choice(
            view.addMenu("&Text size"), [(f"{n} %", n) for n in _TEXT_SIZES], 100, self._text_chosen
        )
        self.projector_action = self._check(view, "&Projector mode", self.project, False, QKeySequence("F11"))

        self._act(help_menu, "&Keys and cautions", self.show_help, keys.HelpContents)

    def _build_bar(self) -> None:
        bar = QToolBar("Bench")
        bar.setObjectName("bench")
        bar.setMovable(False)
        self.addToolBar(bar)
        self.magnetos = QuietCombo()
        self.magnetos.setAccessibleName("Magneto on the bench")
        self.magnetos.setToolTip("Magneto on the bench")
        for name in shipped_names("magnetos"):
            self.magnetos.addItem(find_magneto(name).name, name)
        self.magnetos.activated.connect(self._shipped_chosen)
        self.units = QuietCombo()
        self.units.setAccessibleName("Unit of length")
        self.units.addItems(["Millimetres", "Inches"])
        self.units.currentIndexChanged.connect(self._unit_chosen)
        for text, widget in (("  Magneto ", self.magnetos), ("   Lengths in ", self.units)):
            label = QLabel(text)
            label.setBuddy(widget)
            bar.addWidget(label)
            bar.addWidget(widget)
        bar.addSeparator()
        bar.addAction(self.undo_action)
        bar.addAction(self.redo_action)

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

    def _check(
        self, menu: QMenu, text: str, slot: Callable[[bool], object], on: bool, key: QKeySequence | None
    ) -> QAction:
        action = self._act(menu, text, None, key)
        action.setCheckable(True)
        action.setChecked(on)
        action.triggered.connect(slot)
        return action

    def _choice(
        self, menu: QMenu, options: list[tuple[str, object]], chosen: object, slot: Callable[[QAction], object]
    ) -> QActionGroup:
        group = QActionGroup(self)
        for text, data in options:
            action = self._act(menu, text, None, None)
            action.setCheckable(True)
            action.setChecked(data == chosen)
            action.setData(data)
            group.addAction(action)
        group.triggered.connect(slot)
        return group

    # -------------------------------------------------------------- showing

    def show_state(self, state: BenchState, old: BenchState | None = None) -> None:
        """Name what is on the bench, and what can be undone."""
        store = self.model.store
        for action, verb, name in (
            (self.undo_action, "Undo", store.undo_name), (self.redo_action, "Redo", store.redo_name)
        ):  # fmt: skip
            action.setEnabled(name is not None)
            action.setText(f"&{verb}" if name is None else f"&{verb}: {name}")
            action.setIconText(verb)
            action.setToolTip(action.text().replace("&", ""))
        self.hold_action.setChecked(state.held)
        self.mount_action.setEnabled(state.engaged is not None)
        self.mount_action.setChecked(state.engaged is not None and state.engaged.mounted)
        if old is not None and self._autosave is not None and not self._keep_soon.isActive():
            self._keep_soon.start()
        if old is not None and self._answering:
            self._answering = False
            self.statusBar().clearMessage()
        if old is not None and old.magneto == state.magneto:
            return
        self.setWindowTitle(f"{state.magneto.name} – magview")
        index = self.magnetos.findText(state.magneto.name)
        self.magnetos.setCurrentIndex(index)
        if index < 0:
            self.magnetos.setPlaceholderText(state.magneto.name)

    def _answer(self, sentence: str) -> None:
        self._answering = True
        self.say(sentence)

    def say(self, sentence: str) -> None:
        """Put one sentence where it is seen and does not stop the work."""
        self.statusBar().showMessage(sentence[0].upper() + sentence[1:], 12_000)

    @property
    def _pictures(self) -> tuple[BreakerView, DriveView, CrankView]:
        return self.breaker, self.drive, self.crank

    def _apply_theme(self) -> None:
        app = QApplication.instance()
        assert isinstance(app, QApplication)
        dress(app, self._theme)
        for view in (self.breaker, self.contact, self.drive, self.crank, self.panel, self._timing, self._lead):
            if view is not None:
                view.set_theme(self._theme)

    def _emphasise(self, tab: int) -> None:
        """Give the picture that the work is on the larger share."""
        panel = 0 if self._projecting else self.tabs.minimumSizeHint().width()
        room = max(0, self.split.width() - panel)
        share = 0.38 if tab == 1 else 0.62
        self.split.setSizes([round(room * share), round(room * (1 - share)), panel])

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Share the width anew."""
        super().resizeEvent(event)
        self._emphasise(self.tabs.currentIndex())

    def closeEvent(self, event: QCloseEvent) -> None:
        """End as it should: nothing is left to be found again."""
        self.model.halt()
        self._keep_soon.stop()
        if self._autosave is not None:
            self._autosave.forget()
        super().closeEvent(event)

    def _keep(self) -> None:
        if self._autosave is not None:
            try:
                self._autosave.keep(self.model.state)
            except SpecError as error:
                self.say(f"The bench cannot be kept for after a crash: {error}")

    # -------------------------------------------------------------- files

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
            self._refuse(refusals[0] if path.name in refusals[0] else f"{path.name}: {refusals[0]}")

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

    def _export_chosen(self) -> None:
        action = self.sender()
        assert isinstance(action, QAction)
        path, kind = QFileDialog.getSaveFileName(self, "Save the picture", "picture.svg", _PICTURES)
        if path:
            target = Path(path)
            if not target.suffix:
                target = target.with_suffix(f".{kind.split('.')[-1].rstrip(')')}")
            self.export(action.data(), target)

    def export(self, view: PictureView, path: Path) -> None:
        """Save a picture with scale bar and caption."""
        state = self.model.state
        caption = (
            f"{state.magneto.name}. {view.accessibleDescription()} magview {__version__}: a training and planning "
            "aid; the maker's current manual governs."
        )
        from magview.ui.export import export_picture

        try:
            export_picture(view, path, caption, self._theme)
        except SpecError as error:
            self._refuse(str(error))
            return
        self.say(f"Saved {path.name}.")

    def show_help(self) -> None:
        """Keys, signs and cautions."""
        box = QMessageBox(self)
        box.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        box.setWindowTitle("Keys and cautions")
        box.setText(f"magview {__version__}")
        box.setInformativeText(f"{HANDLING}\n\n{CAUTION}")
        box.open()

    def _refuse(self, sentence: str) -> None:
        box = QMessageBox(QMessageBox.Icon.Warning, "magview", sentence, QMessageBox.StandardButton.Ok, self)
        box.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        box.open()

    # -------------------------------------------------------------- choices

    def project(self, on: bool) -> None:
        """Large type and thick lines for a class; the calculators make room for the pictures."""
        self._projecting = on
        self.projector_action.setChecked(on)
        self.tabs.setVisible(not on)
        self.breaker.setFocus()  # and not whatever field comes next: a key must not change the bench
        for view in self._pictures:
            view.set_line_factor(_PROJECTED if on else 1.0)
        self._apply_text()

    def _text_chosen(self, action: QAction) -> None:
        self._text_percent = action.data()
        self._apply_text()

    def _apply_text(self) -> None:
        font = QFont(self._font)
        factor = self._text_percent / 100.0 * (_PROJECTED if self._projecting else 1.0)
        font.setPointSizeF(self._font.pointSizeF() * factor)
        QApplication.setFont(font)
        QTimer.singleShot(0, self, self._settle)  # once every word has its new size

    def _settle(self) -> None:
        for i in range(self.tabs.count()):
            pane = self.tabs.widget(i)
            if isinstance(pane, TallPanel):
                pane.refit()
        self._emphasise(self.tabs.currentIndex())

    def _theme_chosen(self, action: QAction) -> None:
        self._theme = THEMES[action.data()]
        self._apply_theme()

    def _shipped_chosen(self, index: int) -> None:
        self.place(self.magnetos.itemData(index))

    def _unit_chosen(self, index: int) -> None:
        for view in (self.breaker, self.contact, self.crank, self.panel, self._timing):
            if view is not None:
                view.set_inches(index == 1)

    def _hold(self, held: bool) -> None:
        self.model.send(HoldRotor() if held else LetGo())

    def _mount(self, on: bool) -> None:
        self.model.send(MountMagneto(on))

    def _snap(self, on: bool) -> None:
        self.breaker.snaps = on

    def _reduce_motion(self, on: bool) -> None:
        self.model.reduced_motion = on

    def _exaggerate(self, on: bool) -> None:
        self.breaker.set_exaggeration(5.0 if on else 1.0)
        self.contact.show_state(self.model.state)

    def _follow(self, on: bool) -> None:
        self.breaker.follows_contacts = on
        self.breaker.show_state(self.model.state)

    def _zoomed(self) -> PictureView:
        focused = QApplication.focusWidget()
        return focused if isinstance(focused, BreakerView | DriveView | CrankView) else self.breaker

    def _zoom_in(self) -> None:
        self._zoomed().zoom_by(1.25)

    def _zoom_out(self) -> None:
        self._zoomed().zoom_by(0.8)

    def _zoom_whole(self) -> None:
        self._zoomed().whole()
