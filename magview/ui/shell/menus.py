"""Menus and tool bar: every action of the window by name, key and mouse."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, QObject, Qt
from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtWidgets import QApplication, QLabel, QToolBar

from magview.bench.actions import HoldRotor, LetGo, LoadTrain, MountMagneto
from magview.bench.state import BenchState
from magview.spec.language import marked, tr
from magview.spec.library import find_magneto, shipped_names
from magview.ui.kit import translation
from magview.ui.kit.inputs import QuietCombo
from magview.ui.kit.menu_maker import COLOURS, TEXT_SIZES
from magview.ui.kit.theme import THEMES
from magview.ui.pictures.breaker_view import BreakerView
from magview.ui.pictures.crank_view import CrankView
from magview.ui.pictures.drive_view import DriveView
from magview.ui.pictures.menus import PictureMenuMaker
from magview.ui.pictures.picture_view import PictureView

if TYPE_CHECKING:
    from magview.ui.shell.window import MainWindow


class Menus(PictureMenuMaker):
    """What hangs in the window's menu bar and tool bar, and follows the state."""

    def __init__(self, window: MainWindow) -> None:
        super().__init__(window)
        self.window: MainWindow = window
        self._build_menus()
        self._build_bar()
        made = window.findChildren(QAction, options=Qt.FindChildOption.FindDirectChildrenOnly)
        self._ticks = [a for a in made if a.isCheckable()]
        self.show_state(window.model.state)
        window.model.changed.connect(self.show_state)

    def _build_menus(self) -> None:
        window, keys = self.window, QKeySequence.StandardKey
        files, edit, bench, practice, job, view, help_menu = (
            window.menuBar().addMenu(t)
            for t in (
                tr("&File"),
                tr("&Edit"),
                tr("Ben&ch"),
                tr("&Practice"),
                tr("&Job"),
                tr("&View"),
                tr("&Help"),
            )
        )
        self.act(files, tr("&Open magneto or installation…"), window.open_file, keys.Open)
        self.act(files, tr("&Save magneto as…"), window.save_file, keys.SaveAs)
        self.act(files, tr("A magneto of &your own…"), window.draft_own, None)
        self.act(files, tr("Lift from &measurements…"), window.import_lift, None)
        files.addSeparator()
        for text, picture in (
            (tr("Save picture of the breaker end…"), window.breaker),
            (tr("Save picture of the drive end…"), window.drive),
            (tr("Save picture of the crank…"), window.crank),
        ):
            action = self.act(files, text, None, None)
            action.setData(picture)
            action.triggered.connect(self._export_chosen)
        shift = files.addMenu(tr("Print the &tooth-shift plan"))
        self.act(shift, tr("Print to PDF, &A4…"), partial(window.print_shift_plan, "a4"), None)
        self.act(shift, tr("Print to PDF, &Letter…"), partial(window.print_shift_plan, "letter"), None)
        self.act(files, tr("&Paper for a class…"), window.class_paper, None)
        files.addSeparator()
        self.act(files, tr("&Quit"), window.close, keys.Quit)

        self.undo_action = self.act(edit, tr("&Undo"), window.model.undo, keys.Undo)
        self.redo_action = self.act(edit, tr("&Redo"), window.model.redo, keys.Redo)
        edit.aboutToShow.connect(self.name_steps)

        self.hold_action = self.check(bench, tr("&Hold the rotor"), self._hold, True, QKeySequence("H"))
        self.load_action = self.act(bench, tr("&Load the drive train against rotation"), self._load_train, None)
        self.mount_action = self.check(bench, tr("Magneto on the &engine"), self._mount, True, None)
        self.check(bench, tr("&Snap to openings, lobes and marks"), self._snap, True, None)
        self.check(bench, tr("&Reduced motion"), self._reduce_motion, False, None)

        self.act(practice, tr("New &exercise…"), window.new_exercise, None)
        self.act(practice, tr("&Lessons…"), window.choose_lesson, None)
        self.act(practice, tr("&Open attempt…"), window.open_attempt, None)
        practice.addSeparator()
        self.act(practice, tr("&Join a class…"), partial(window.open_class, "join"), None)
        self.act(practice, tr("&Make a class set…"), partial(window.open_class, "make"), None)
        self.act(practice, tr("&Gather a class…"), partial(window.open_class, "gather"), None)
        self.act(practice, tr("Exercise e&ditor…"), partial(window.open_class, "editor"), None)

        self.act(job, tr("&New job sheet…"), window.new_job, None)
        self.act(job, tr("&Open job sheet…"), window.open_job, None)
        self.act(job, tr("Look at the &shipped job sheet"), window.open_shipped_job, None)
        job.addSeparator()
        self.notes_menu, self.recent_jobs = (
            job.addMenu(tr("No&te on the job sheet")),
            job.addMenu(tr("&Recent job sheets")),
        )
        job.aboutToShow.connect(window.fill_job_menus)

        self.plots_action = self.check(view, tr("P&lots"), window.show_plots, False, QKeySequence("Ctrl+L"))
        view.addSeparator()
        self.check(view, tr("&Names of parts"), window.breaker.set_names, True, QKeySequence("N"))
        self.check(view, tr("See the breaker from the &drive end"), window.breaker.set_mirrored, False, None)
        self.check(view, tr("Draw the &gap 5× its size"), self._exaggerate, False, None)
        self.check(view, tr("&Follow the contacts when zoomed"), self._follow, False, None)
        view.addSeparator()
        self.zooming(view)
        view.addSeparator()
        self.theme_actions = self.choice(
            view,
            [(tr(COLOURS[name]), name) for name in THEMES],
            window.look.theme.name,
            self._theme_chosen,
        )
        view.addSeparator()
        self.text_actions = self.choice(
            view.addMenu(tr("&Text size")),
            [(f"{n} %", n) for n in TEXT_SIZES],
            window.look.text_percent,
            self._text_chosen,
        )
        self.projector_action = self.check(view, tr("&Projector mode"), window.project, False, QKeySequence("F11"))
        self._languages = view.addMenu(tr("L&anguage"))
        self._languages.aboutToShow.connect(self._name_languages)
        self._languages.menuAction().setVisible(len(translation.FINISHED) > 1)

        self.present_action = self.check(view, tr("P&resent to a class"), window.present, False, QKeySequence("F5"))

        self.guide(help_menu)
        self.act(help_menu, tr("&Keys and cautions"), window.show_help, None)
        self.act(help_menu, tr("&Fault reports…"), window.show_fault_reports, None)

    def _build_bar(self) -> None:
        bar = QToolBar(tr("Bench"))
        bar.setObjectName("bench")
        bar.setMovable(False)
        self.window.addToolBar(bar)
        self.magnetos = QuietCombo()
        self.magnetos.setAccessibleName(tr("Magneto on the bench"))
        self.magnetos.setToolTip(tr("Magneto on the bench"))
        for name in shipped_names("magnetos"):
            self.magnetos.addItem(tr(find_magneto(name).name), name)
        self.magnetos.activated.connect(self._shipped_chosen)
        self.units = QuietCombo()
        self.units.setAccessibleName(tr("Unit of length"))
        self.units.addItems([tr("Millimetres"), tr("Inches")])
        self._show_unit()
        self.window.look.changed.connect(self._show_unit)
        self.units.currentIndexChanged.connect(self._unit_chosen)
        for text, widget in ((tr("Magneto"), self.magnetos), (tr("Lengths in"), self.units)):
            label = QLabel(f"  {text} " if widget is self.magnetos else f"   {text} ")
            label.setBuddy(widget)
            bar.addWidget(label)
            bar.addWidget(widget)
        bar.addSeparator()
        for action in (self.undo_action, self.redo_action):
            bar.addAction(action)
            bar.widgetForAction(action).installEventFilter(self)
        bar.addSeparator()
        bar.addAction(self.plots_action)

    def show_state(self, state: BenchState, old: BenchState | None = None) -> None:
        """Name what is on the bench, and say whether something can be undone."""
        store = self.window.model.store
        self.undo_action.setEnabled(store.undo_name is not None)
        self.redo_action.setEnabled(store.redo_name is not None)
        self.hold_action.setChecked(state.held)
        self.mount_action.setEnabled(state.engaged is not None)
        self.load_action.setEnabled(state.engaged is not None and state.engaged.mounted)
        self.mount_action.setChecked(state.engaged is not None and state.engaged.mounted)
        if old is not None and old.magneto == state.magneto:
            return
        index = self.magnetos.findText(tr(state.magneto.name))
        self.magnetos.setCurrentIndex(index)
        if index < 0:
            self.magnetos.setPlaceholderText(state.magneto.name)

    def name_steps(self) -> None:
        """Name what would be undone. Only when somebody looks: Qt keeps a little memory at every change of words,
        and a turning rotor changes them sixty times a second."""
        store = self.window.model.store
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

    # -------------------------------------------------------------- choices

    def _export_chosen(self) -> None:
        action = self.sender()
        assert isinstance(action, QAction)
        self.window.export_file(action.data())

    def _theme_chosen(self, action: QAction) -> None:
        self.window.look.theme = THEMES[action.data()]

    def _name_languages(self) -> None:
        """Only when somebody looks: what is chosen is read from the settings now."""
        if self._languages.isEmpty():
            own = tr("As the &desktop")
            options: list[tuple[str, object]] = [
                (own, ""),
                *((translation.LANGUAGES[code], code) for code in translation.FINISHED),
            ]
            self.choice(self._languages, options, translation.chosen() or "", self._language_chosen)

    def _language_chosen(self, action: QAction) -> None:
        self.window.language_wanted.emit(action.data())

    def ticks(self) -> list[QAction]:
        """Every entry of the menus that is so or not, the same in every language; not the languages themselves."""
        return self._ticks

    def _text_chosen(self, action: QAction) -> None:
        self.window.look.text_percent = action.data()

    def _shipped_chosen(self, index: int) -> None:
        self.window.place(self.magnetos.itemData(index))

    def _show_unit(self) -> None:
        self.units.setCurrentIndex(int(self.window.look.inches))

    def _unit_chosen(self, index: int) -> None:
        self.window.look.inches = index == 1

    def _hold(self, held: bool) -> None:
        self.window.model.send(HoldRotor() if held else LetGo())

    def _load_train(self) -> None:
        self.window.model.send(LoadTrain())

    def _mount(self, on: bool) -> None:
        self.window.model.send(MountMagneto(on))

    def _snap(self, on: bool) -> None:
        self.window.breaker.snaps = on

    def _reduce_motion(self, on: bool) -> None:
        self.window.model.reduced_motion = on

    def _exaggerate(self, on: bool) -> None:
        self.window.breaker.set_exaggeration(5.0 if on else 1.0)
        self.window.contact.show_state(self.window.model.state)

    def _follow(self, on: bool) -> None:
        self.window.breaker.follows_contacts = on
        self.window.breaker.show_state(self.window.model.state)

    def zoomed(self) -> PictureView:
        """The picture in hand, or the breaker end."""
        focused = QApplication.focusWidget()
        return focused if isinstance(focused, BreakerView | DriveView | CrankView) else self.window.breaker
