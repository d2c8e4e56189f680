"""The bench's menus and tools: every action by name, key and mouse."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, QObject, Qt, Signal
from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtWidgets import QApplication, QToolBar, QWidget

from magview.bench.actions import HoldRotor, LetGo, LoadTrain, MountMagneto
from magview.bench.state import BenchState
from magview.spec.language import marked, tr
from magview.spec.library import find_magneto, shipped_names
from magview.ui.bench.comparing import Comparing
from magview.ui.bench.files import BenchFiles
from magview.ui.bench.filling import PICTURES, Filling
from magview.ui.bench.pictures import BenchPictures
from magview.ui.kit.bench_model import BenchModel
from magview.ui.kit.inputs import QuietCombo
from magview.ui.kit.look import Look
from magview.ui.pictures.breaker_view import BreakerView
from magview.ui.pictures.crank_view import CrankView
from magview.ui.pictures.drive_view import DriveView
from magview.ui.pictures.menus import PictureMenuMaker
from magview.ui.pictures.picture_view import PictureView

if TYPE_CHECKING:  # loaded when it is first asked for
    from magview.ui.bench.tools import BenchTools
    from magview.ui.bench.tray_room import TrayRoom
    from magview.ui.pictures.export import Drawn


class BenchMenus(PictureMenuMaker):
    """Menus and tools of the bench while it is in front; they follow the state."""

    own_wanted = Signal()
    plots_wanted = Signal(bool)
    circuit_wanted = Signal()
    """The picture of the switch lead is to be saved."""

    def __init__(
        self, page: QWidget, pictures: BenchPictures, model: BenchModel, files: BenchFiles, look: Look
    ) -> None:
        super().__init__(page)
        self._pictures, self._model, self._files, self._look = pictures, model, files, look
        self._build_menus()
        self._build_bar()
        made = page.findChildren(QAction, options=Qt.FindChildOption.FindDirectChildrenOnly)
        self._ticks = [a for a in made if a.isCheckable()]
        self.show_state(model.state)
        model.changed.connect(self.show_state)
        look.changed.connect(self._show_look)

    def _build_menus(self) -> None:
        pictures, files, keys = self._pictures, self._files, QKeySequence.StandardKey
        file, edit, bench, view = (
            self.menu(tr("&File"), "file"),
            self.menu(tr("&Edit"), "edit"),
            self.menu(tr("Ben&ch")),
            self.menu(tr("&View"), "view"),
        )
        self.act(file, tr("&Open magneto or installation…"), files.open_file, keys.Open)
        self.act(file, tr("&Save magneto as…"), files.save_file, keys.SaveAs)
        self.act(file, tr("A magneto of &your own…"), self.own_wanted.emit, None)
        self.act(file, tr("Lift from &measurements…"), files.import_lift, None)
        file.addSeparator()
        self._saving = file.addMenu(tr("Save a &picture"))
        shift = file.addMenu(tr("Print the &tooth-shift plan"))
        self.act(shift, tr("Print to PDF, &A4…"), partial(files.print_shift_plan, "a4"), keys.Print)
        self.act(shift, tr("Print to PDF, &Letter…"), partial(files.print_shift_plan, "letter"), None)
        self.act(shift, tr("As one large &screen"), partial(files.give_shift_plan, "screen"), None)
        self.act(shift, tr("Save for a &tablet…"), partial(files.give_shift_plan, "html"), None)

        self.undo_action = self.act(edit, tr("&Undo"), self._model.undo, keys.Undo)
        self.redo_action = self.act_redo(edit, self._model.redo)
        edit.aboutToShow.connect(self.name_steps)

        self.hold_action = self.check(bench, tr("&Hold the rotor"), self._hold, True, QKeySequence("H"))
        self.load_action = self.act(bench, tr("&Load the drive train against rotation"), self._load_train, None)
        self.mount_action = self.check(bench, tr("Magneto on the &engine"), self._mount, True, None)
        self.tray_action = self.act(bench, tr("To the &tray"), None, QKeySequence("T"))
        self.ease_actions = {
            True: self.act(bench, tr("Ease o&n until the light changes"), None, QKeySequence("Ctrl+Right")),
            False: self.act(bench, tr("Ease &back until the light changes"), None, QKeySequence("Ctrl+Left")),
        }
        self.compare_action = self.check(bench, tr("&Compare with now"), None, False, QKeySequence("K"))
        self.compare_action.setToolTip(tr("Keep this moment as a ghost in the pictures; again: forget it (K)"))
        self.check(bench, tr("&Snap to openings, lobes and marks"), self._snap, True, None)
        self.check(bench, tr("&Reduced motion"), self._reduce_motion, False, None)

        self.plots_action = self.check(view, tr("P&lots"), self._show_plots, False, QKeySequence("Ctrl+L"))
        self.show_tray_action = self.check(view, tr("Tra&y"), None, True, None)
        self._large = view.addMenu(tr("One pi&cture large"))
        view.addSeparator()
        self.check(view, tr("&Names of parts"), pictures.breaker.set_names, True, QKeySequence("N"))
        self.check(view, tr("See the breaker from the &drive end"), pictures.breaker.set_mirrored, False, None)
        self.turn_round_action = self.act(
            view, tr("See the coupling from the other &side"), pictures.drive.turn_round, QKeySequence("E")
        )
        self.check(view, tr("Draw the &gap 5× its size"), self._exaggerate, False, None)
        self.check(view, tr("&Follow the contacts when zoomed"), self._follow, False, None)
        view.addSeparator()
        self.zooming(view)

    def _build_bar(self) -> None:
        bar = self.bar = QToolBar(tr("Bench"))
        bar.setMovable(False)
        self.magnetos = QuietCombo()
        self.magnetos.setAccessibleName(tr("Magneto on the bench"))
        self.magnetos.setToolTip(tr("Magneto on the bench"))
        for name in shipped_names("magnetos"):
            self.magnetos.addItem(tr(find_magneto(name).name), name)
        self.magnetos.activated.connect(self._shipped_chosen)
        self.units = QuietCombo()
        self.units.setAccessibleName(tr("Unit of length"))
        self.units.setToolTip(tr("Unit of length"))
        self.units.addItems([tr("Millimetres"), tr("Inches")])
        self.units.setCurrentIndex(int(self._look.inches))
        self.units.currentIndexChanged.connect(self._unit_chosen)
        bar.addWidget(self.magnetos)
        bar.addWidget(self.units)
        for action in (self.undo_action, self.redo_action):
            bar.addAction(action)
            bar.widgetForAction(action).installEventFilter(self)
        bar.addAction(self.plots_action)
        bar.addAction(self.compare_action)

    def show_state(self, state: BenchState, old: BenchState | None = None) -> None:
        """Name what is on the bench, and say whether something can be undone."""
        store = self._model.store
        self.undo_action.setEnabled(store.undo_name is not None)
        self.redo_action.setEnabled(store.redo_name is not None)
        self.hold_action.setChecked(state.held)
        self.mount_action.setEnabled(state.engaged is not None)
        self.turn_round_action.setEnabled(state.engaged is not None)
        self.load_action.setEnabled(state.engaged is not None and state.engaged.mounted)
        self.mount_action.setChecked(state.engaged is not None and state.engaged.mounted)
        if old is not None and old.magneto == state.magneto:
            return
        index = self.magnetos.findText(tr(state.magneto.name))
        self.magnetos.setCurrentIndex(index)
        if index < 0:
            self.magnetos.setPlaceholderText(state.magneto.name)

    def list_pictures(self, filling: Filling) -> None:
        """An entry for each picture that fills the page with it, and one for the picture in hand."""
        self._filling = filling
        for name, words in PICTURES.items():
            self.act(self._saving, tr("{name}…", name=tr(words)), self._export_chosen, None).setData(name)
        self.act(self._saving, tr("Switch &lead…"), self.circuit_wanted.emit, None)
        self._saving.addSeparator()
        self.act(self._saving, tr("A &turn, animated…"), self._ask_turn, None)
        menu = self._large
        self.act(menu, tr("The picture &in hand, or all again"), self._fill_or_back, QKeySequence("Ctrl+Return"))
        menu.addSeparator()
        self._larges = {name: self.check(menu, tr(text), self._fill, False, None) for name, text in PICTURES.items()}
        filling.changed.connect(self._show_filled)

    def offer_comparing(self, comparing: Comparing) -> None:
        """Let a moment be kept and forgotten."""
        self.compare_action.toggled.connect(comparing.keep)

    def offer_tray(self, tools: BenchTools, room: TrayRoom) -> None:
        """Let the keyboard go to the tray, the part in hand be eased, and the tray be put away."""
        self.tray_action.triggered.connect(lambda: self._to_tray(tools, room))
        for forward, action in self.ease_actions.items():
            action.triggered.connect(partial(tools.ease, forward))
        self.show_tray_action.setChecked(room.wanted)
        self.show_tray_action.triggered.connect(room.show_tray)

    def _to_tray(self, tools: BenchTools, room: TrayRoom) -> None:
        if not room.isVisible():
            room.show_tray(True)
            self.show_tray_action.setChecked(True)
        tools.tray.take_keyboard()

    def _fill(self, on: bool) -> None:
        name = next(name for name, action in self._larges.items() if action is self.sender())
        self._filling.show(name if on else "")

    def _fill_or_back(self) -> None:
        self._filling.show("" if self._filling.shown else self._filling.in_hand())

    def _show_filled(self, shown: str) -> None:
        for name, action in self._larges.items():
            action.setChecked(name == shown)

    def name_steps(self) -> None:
        """Name what would be undone. Only when somebody looks: Qt keeps a little memory at every change of words,
        and a turning rotor changes them sixty times a second."""
        store = self._model.store
        for action, bare, named, name in (
            (self.undo_action, tr("&Undo"), marked("&Undo: {step}"), store.undo_name),
            (self.redo_action, tr("&Redo"), marked("&Redo: {step}"), store.redo_name),
        ):
            action.setText(bare if name is None else tr(named, step=name))
            action.setIconText(bare.replace("&", ""))
            action.setToolTip(action.text().replace("&", ""))

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """The pointer rests on a tool button: its words are made now."""
        if event.type() == QEvent.Type.ToolTip:
            self.name_steps()
        return super().eventFilter(watched, event)

    def _show_look(self) -> None:
        self.units.setCurrentIndex(int(self._look.inches))

    # -------------------------------------------------------------- choices

    def _export_chosen(self) -> None:
        action = self.sender()
        assert isinstance(action, QAction)
        self._files.export_file(self._drawn(action.data()))

    def _drawn(self, name: str) -> Drawn:
        picture: Drawn = getattr(self._pictures, name)
        return picture

    def _ask_turn(self) -> None:
        """Ask for a turn of a picture, offering the one in hand first."""
        first = self._filling.in_hand()
        names = sorted(PICTURES, key=lambda name: name != first)
        self._files.ask_turn({tr(PICTURES[name]).replace("&", ""): self._drawn(name) for name in names})

    def ticks(self) -> list[QAction]:
        """Every entry of the menus that is so or not, the same in every language."""
        return self._ticks

    def _shipped_chosen(self, index: int) -> None:
        self._files.place(self.magnetos.itemData(index))

    def _unit_chosen(self, index: int) -> None:
        self._look.inches = index == 1

    def _show_plots(self, on: bool) -> None:
        self.plots_wanted.emit(on)  # itself it would be given no argument

    def _hold(self, held: bool) -> None:
        self._model.send(HoldRotor() if held else LetGo())

    def _load_train(self) -> None:
        self._model.send(LoadTrain())

    def _mount(self, on: bool) -> None:
        self._model.send(MountMagneto(on))

    def _snap(self, on: bool) -> None:
        self._pictures.breaker.snaps = on

    def _reduce_motion(self, on: bool) -> None:
        self._model.reduced_motion = on

    def _exaggerate(self, on: bool) -> None:
        self._pictures.breaker.set_exaggeration(5.0 if on else 1.0)
        self._pictures.contact.show_state(self._model.state)

    def _follow(self, on: bool) -> None:
        self._pictures.breaker.follows_contacts = on
        self._pictures.breaker.show_state(self._model.state)

    def zoomed(self) -> PictureView:
        """The picture in hand, or the breaker end."""
        focused = QApplication.focusWidget()
        return focused if isinstance(focused, BreakerView | DriveView | CrankView) else self._pictures.breaker
