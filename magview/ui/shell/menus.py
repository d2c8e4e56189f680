"""The menus that are there whatever is in front, and the menu bar put together with those of the page in front."""

from __future__ import annotations

from collections.abc import Iterator
from functools import partial

from PySide6.QtCore import Signal
from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtWidgets import QAbstractButton, QLabel, QMainWindow, QMenu, QTabBar, QWidget

from magview.spec.language import tr
from magview.ui.kit import translation
from magview.ui.kit.look import PROJECTED, Look
from magview.ui.kit.menu_maker import COLOURS, TEXT_SIZES, MenuMaker
from magview.ui.kit.place import Page
from magview.ui.kit.settings import put_start_away, start_put_away
from magview.ui.kit.theme import THEMES
from magview.ui.shell.places import PLACES, Places


class CommonMenus(MenuMaker):
    """The places, what can be begun in them, how everything looks, and help."""

    language_wanted = Signal(str)
    present_wanted = Signal(bool)
    help_wanted = Signal()
    reports_wanted = Signal()

    def __init__(self, window: QMainWindow, places: Places, look: Look) -> None:
        super().__init__(window)
        self._window, self._places, self._look = window, places, look
        self.file, self.view = QMenu(tr("&File"), window), QMenu(tr("&View"), window)
        """For pages that bring none."""
        self.quit_action = self.act(QMenu(window), tr("&Quit"), window.close, QKeySequence.StandardKey.Quit)
        self._build_places()
        self._build_looks()
        self._build_help()
        self._titles = {menu: menu.title() for menu in (self.file, self.view, *self.made)}
        look.changed.connect(self._show_look)

    def _build_places(self) -> None:
        places = self._places
        self._go = QMenu(tr("Go to"), self._window)
        practice, job = self.menu(tr("&Practice")), self.menu(tr("&Job"))
        for number, (name, words) in enumerate(PLACES.items(), 1):
            self.act(self._go, tr(words), partial(places.go, name), QKeySequence(f"Ctrl+{number}"))
        self._go.addSeparator()
        self.away_action = self.check(self._go, tr("Open on the bench from now &on"), put_start_away, False, None)
        self._go.aboutToShow.connect(self.fill_places)
        self.home_action = self.act(self._go, tr("&Back to where it begins"), self._go_home, QKeySequence("Alt+Home"))

        self.act(practice, tr("New &exercise…"), lambda: places.practice.choose(), None)
        self.act(practice, tr("&Lessons…"), lambda: places.learn.choose(), None)
        self.act(practice, tr("&Open attempt…"), lambda: places.practice.ask_attempt(), None)
        practice.addSeparator()
        self.act(practice, tr("&Join a class…"), partial(places.open_class, "join"), None)
        self.act(practice, tr("&Make a class set…"), partial(places.open_class, "make"), None)
        self.act(practice, tr("&Gather a class…"), partial(places.open_class, "gather"), None)
        self.act(practice, tr("Exercise e&ditor…"), partial(places.open_class, "editor"), None)
        self.act(practice, tr("&Paper for a class…"), places.class_paper, None)

        self.act(job, tr("&New job sheet…"), lambda: places.work.ask_new(), None)
        self.act(job, tr("&Open job sheet…"), lambda: places.work.ask_open(), None)
        self.act(job, tr("Look at the &shipped job sheet"), lambda: places.work.open_shipped(), None)
        self.act(job, tr("Blank form for the pencil, &A4…"), lambda: places.work.ask_blank("a4"), None)
        self.act(job, tr("Blank form for the pencil, &Letter…"), lambda: places.work.ask_blank("letter"), None)
        self.act(job, tr("Limits &cards"), lambda: places.work.open_cards(), None)
        job.addSeparator()
        self.notes_menu, self.recent_jobs = (
            job.addMenu(tr("No&te on the job sheet")),
            job.addMenu(tr("&Recent job sheets")),
        )
        job.aboutToShow.connect(self.fill_job_menus)

    def _build_looks(self) -> None:
        look, looks = self._look, QMenu(self._window)
        looks.addMenu(self._go)
        looks.addSeparator()
        self.theme_actions = self.choice(
            looks, [(tr(COLOURS[name]), name) for name in THEMES], look.theme.name, self._theme_chosen
        )
        looks.addSeparator()
        self.text_actions = self.choice(
            looks.addMenu(tr("&Text size")),
            [(tr("{n} %", n=n), n) for n in TEXT_SIZES],
            look.text_percent,
            self._text_chosen,
        )
        self.projector_action = self.check(looks, tr("&Projector mode"), self._project, False, QKeySequence("F11"))
        self._languages = looks.addMenu(tr("L&anguage"))
        self._languages.aboutToShow.connect(self._name_languages)
        self._languages.menuAction().setVisible(len(translation.FINISHED) > 1)
        self.present_action = self.check(looks, tr("P&resent to a class"), self._present, False, QKeySequence("F5"))
        self._looks = looks.actions()

    def _build_help(self) -> None:
        menu = self.menu(tr("&Help"), "help")
        places = self._places
        self.act(menu, tr("&Guide"), lambda: places.open_guide(), QKeySequence.StandardKey.HelpContents)
        self.act(
            menu, tr("Guide in a &window of its own"), lambda: places.open_guide_window(), QKeySequence("Shift+F1")
        )
        self.act(menu, tr("&Keys and cautions"), self.help_wanted.emit, None)
        self.act(menu, tr("&Fault reports…"), self.reports_wanted.emit, None)

    # -------------------------------------------------------------- the menu bar

    def show_page(self, page: Page) -> None:
        """Hang up the menus of a page among the common ones: keys of what is not in front are dead."""
        own = list(page.bar_menus())
        by_name = {menu.objectName(): menu for menu in own if menu.objectName()}
        file, view = by_name.get("file", self.file), by_name.get("view", self.view)
        self._complete(file, [self.quit_action])
        self._complete(view, self._looks)
        *places, help_menu = self.made
        shown = [file, *(menu for menu in own if menu not in (file, view)), *places, view, help_menu]
        bar = self._window.menuBar()
        if [action.menu() for action in bar.actions()] != shown:
            bar.clear()
            for menu in shown:
                bar.addMenu(menu)

    def settle_letters(self, page: Page) -> None:
        """Menus give way: one whose letter a page answers to takes another of its title, or none."""
        own = page.bar_menus()
        taken = {_letter(text) for text in (*_texts(page), *(menu.title() for menu in own))}
        for action in self._window.menuBar().actions():
            menu = action.menu()
            title = self._titles.get(menu) if isinstance(menu, QMenu) and menu not in own else None
            if isinstance(menu, QMenu) and title is not None:
                words = _free(title, taken)
                taken.add(_letter(words))
                if menu.title() != words:
                    menu.setTitle(words)

    def _complete(self, menu: QMenu, actions: list[QAction]) -> None:
        """The window's own entries, below those of the page."""
        if actions[0] in menu.actions():
            return
        if menu.actions():
            menu.addSeparator()
        menu.addActions(actions)

    # -------------------------------------------------------------- choices

    def fill_places(self) -> None:
        """Say where the program opens; the start page may have changed it."""
        self.away_action.setChecked(start_put_away())

    def fill_job_menus(self) -> None:
        """Fill the job menu with what it offers now."""
        self._places.work.fill(self.notes_menu, self.recent_jobs)

    def _go_home(self) -> None:
        self._places.place.go_home()

    def _theme_chosen(self, action: QAction) -> None:
        self._look.theme = THEMES[action.data()]

    def _text_chosen(self, action: QAction) -> None:
        self._look.text_percent = action.data()

    def _present(self, on: bool) -> None:
        self.present_wanted.emit(on)  # itself it would be given no argument

    def _project(self, on: bool) -> None:
        self._look.line_factor = PROJECTED if on else 1.0

    def _show_look(self) -> None:
        self.projector_action.setChecked(self._look.line_factor != 1.0)

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
        self.language_wanted.emit(action.data())


def _texts(page: Page) -> Iterator[str]:
    """Everything on a page that may answer to Alt, whether it is seen now or not."""
    for widget in page.findChildren(QWidget):
        if isinstance(widget, QTabBar):
            yield from (widget.tabText(i) for i in range(widget.count()))
        elif isinstance(widget, QAbstractButton) or (isinstance(widget, QLabel) and widget.buddy() is not None):
            yield widget.text()


def _letter(text: str) -> str:
    """The letter that a text answers to; nothing if it has none."""
    return QKeySequence.mnemonic(text).toString().rpartition("+")[2]


def _free(title: str, taken: set[str]) -> str:
    """A title with its own letter, or the first of its letters that is not taken, or none."""
    if _letter(title) not in taken:
        return title
    bare = title.replace("&", "")
    at = next((i for i, letter in enumerate(bare) if letter.upper() not in taken), None)
    return bare if at is None else f"{bare[:at]}&{bare[at:]}"
