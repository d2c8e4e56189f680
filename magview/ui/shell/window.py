"""The window: one bar, one menu bar, one foot line, and the places between them."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtGui import QCloseEvent, QFont, QPaintEvent
from PySide6.QtWidgets import QApplication, QMainWindow, QVBoxLayout, QWidget

from magview import __version__
from magview.spec.language import tr
from magview.ui.kit.look import Look
from magview.ui.kit.panes import first_size
from magview.ui.kit.place import Page
from magview.ui.kit.theme import Theme, colours
from magview.ui.kit.translation import language
from magview.ui.shell.bar import PlaceBar
from magview.ui.shell.places import Places

if TYPE_CHECKING:  # what comes after the first picture is imported then
    from magview.bench.autosave import Autosave
    from magview.ui.bench.page import BenchPage
    from magview.ui.classroom.room import ClassRoom
    from magview.ui.kit.bench_model import BenchModel
    from magview.ui.learn.place import LearnPlace
    from magview.ui.practice.place import PracticePlace
    from magview.ui.present.presenter import Presenter
    from magview.ui.shell.menus import CommonMenus
    from magview.ui.work.place import WorkPlace

_SAID_MS = 12_000
"""Time that a sentence stands at the foot."""


class MainWindow(QMainWindow):
    """Holds the places and shows one of them."""

    language_wanted = Signal(str)
    """The code of another language, or nothing for the desktop's own: whoever holds the window builds it anew."""

    def __init__(
        self,
        model: BenchModel | Callable[[], BenchModel],
        look: Look | None = None,
        autosave: Autosave | None = None,
        first: str = "bench",
    ) -> None:
        """`first`: the place to open at; `model`: the bench, or a function that makes it when it is needed."""
        super().__init__()
        self.look = look or Look()
        self._font = QApplication.font()
        self._coloured: Theme | None = None
        self._text_factor = 1.0
        self.spoken = language()
        """The code of the language this window's words are in."""
        self._common: CommonMenus | None = None
        self.presenter: Presenter | None = None
        self._fronted: Page | None = None
        self.places = Places(model, self.look, autosave, first)
        self.places.said.connect(self.say)
        self.places.turned.connect(self._show_front)
        self.places.rearranged.connect(self._settle_letters)
        self._lay_out()
        self._show_front()
        self._show_look()
        self.look.changed.connect(self._show_look)
        self._painted = False
        self._rest: Iterator[None] | None = self._furnishing()
        self.places.built.connect(self._place_built)

    # -------------------------------------------------------------- building

    def _lay_out(self) -> None:
        self.bar = PlaceBar()
        self.bar.chosen.connect(self.places.go)
        self.bar.home_wanted.connect(self._go_home)
        whole = QWidget()
        column = QVBoxLayout(whole)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(self.bar)
        column.addWidget(self.places, 1)
        self.setCentralWidget(whole)
        # About the room that menus and status bar will need, so that the pictures hardly move when they come.
        line = self.fontMetrics().height()
        self.setContentsMargins(0, round(1.5 * line), 0, round(1.6 * line))
        self.resize(first_size(QApplication.primaryScreen().availableGeometry().size()))

    def _furnishing(self) -> Iterator[None]:
        """Build what comes after the pictures, in steps that nobody waits for."""
        if self.places.has("bench"):  # the pictures beside the first one come before menus
            for _ in range(2):
                next(self.bench_page.furnishing(), None)
                yield
        import magview.ui.shell.menus

        yield
        common = self._common = magview.ui.shell.menus.CommonMenus(self, self.places, self.look)
        common.language_wanted.connect(self.language_wanted)
        common.present_wanted.connect(self.present)
        common.help_wanted.connect(self.show_help)
        common.reports_wanted.connect(self.show_fault_reports)
        # There from the start, so that the first sentence moves nothing; the window's frame is what is pulled at.
        self.statusBar().setSizeGripEnabled(False)
        self.setContentsMargins(0, 0, 0, 0)
        self._show_front()
        yield
        from magview.ui.kit.style import Outlined

        yield
        QApplication.setStyle(Outlined())
        if self.places.has("bench"):
            yield from self._bench_furnishing()

    def _bench_furnishing(self) -> Iterator[None]:
        for _ in self.bench_page.furnishing():
            self._show_front()
            yield

    def _place_built(self, name: str) -> None:
        """The bench comes later than the window: its pictures first, as when it is there from the start."""
        if name == "bench":
            self.bench_page.furnished.connect(self._show_front)
            if self._rest is None:
                self._rest = self._bench_furnishing()
                QTimer.singleShot(1, self, self._furnish_on)

    def furnish(self) -> None:
        """Build at once all that otherwise comes step by step after the first picture."""
        rest, self._rest = self._rest, None
        for _ in rest or ():
            pass

    def _furnish_on(self) -> None:
        if self._rest is not None and next(self._rest, self) is self:
            self._rest = None
        if self._rest is not None:
            QTimer.singleShot(1, self, self._furnish_on)

    def paintEvent(self, event: QPaintEvent) -> None:
        """The first picture stands: everything else may come."""
        super().paintEvent(event)
        if not self._painted:
            self._painted = True
            QTimer.singleShot(1, self, self._furnish_on)

    @property
    def furnishing(self) -> bool:
        """Whether something is still to come."""
        return self._rest is not None

    @property
    def common(self) -> CommonMenus:
        """The menus that are always there."""
        assert self._common is not None
        return self._common

    @property
    def model(self) -> BenchModel:
        """The bench's state."""
        return self.places.model

    @property
    def bench_page(self) -> BenchPage:
        """Page of the workbench in this window."""
        return self.places.bench.page

    @property
    def learn(self) -> LearnPlace:
        """Lessons."""
        return self.places.learn

    @property
    def practice(self) -> PracticePlace:
        """Exercises."""
        return self.places.practice

    @property
    def classes(self) -> ClassRoom:
        """The class."""
        return self.places.classes

    @property
    def work(self) -> WorkPlace:
        """Job sheets."""
        return self.places.work

    # -------------------------------------------------------------- showing

    def _show_front(self) -> None:
        """Name what is in front, and hang up its menus and tools."""
        places, page = self.places, self.places.front
        self.setWindowTitle(f"{page.windowTitle()} – magview")
        self.bar.show_place(places.name, page, page is places.place.home)
        if self._common is not None:
            self._common.show_page(page)
            self._settle_letters()
        if page is not self._fronted:
            self._fronted = page
            page.take_keyboard()

    def say(self, sentence: str) -> None:
        """Put one sentence where it is seen and does not stop the work; an empty one takes it away."""
        if sentence:
            self.statusBar().showMessage(sentence[0].upper() + sentence[1:], _SAID_MS)
        else:
            self.statusBar().clearMessage()

    def _settle_letters(self) -> None:
        if self._common is not None:
            self._common.settle_letters(self.places.front)

    def _go_home(self) -> None:
        self.places.place.go_home()

    def closeEvent(self, event: QCloseEvent) -> None:
        """Nothing that is under way is lost by a click; nothing is left to be found again."""
        if not self.places.may_close():
            event.ignore()
            return
        self.places.halt()
        super().closeEvent(event)

    def again(self) -> MainWindow:
        """A new window over the same bench, of the same size and looks, which also keeps it from now on."""
        QApplication.setFont(self._font)
        self.look.changed.disconnect(self._show_look)
        self.look.line_factor = 1.0
        new = type(self)(self.model, self.look, self.bench_page.given_away())
        new.setGeometry(self.geometry())
        new.setWindowState(self.windowState())
        return new

    # -------------------------------------------------------------- boxes

    def present(self, on: bool) -> None:
        """Name parts, freeze, compare: a bar under the bench with what a teacher needs, in projector mode."""
        self.places.go("bench")
        self.places.bench.go_home()
        if self.presenter is None:
            from magview.ui.present.presenter import Presenter

            self.presenter = Presenter(self.bench_page)
            self.presenter.changed.connect(self.common.present_action.setChecked)
        self.presenter.show(on)

    def show_help(self) -> None:
        """Keys and cautions of the page in front."""
        from PySide6.QtWidgets import QMessageBox

        box = QMessageBox(self)
        box.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        box.setWindowTitle(tr("Keys and cautions"))
        box.setText(f"magview {__version__}")
        box.setInformativeText(self.places.front.help_words())
        box.open()

    def show_fault_reports(self, after_fault: bool = False) -> None:
        """Show what went wrong in the program itself, on this computer."""
        from magview.ui.kit.crash_report_dialog import ReportDialog
        from magview.upkeep.places import report_folder

        dialog = ReportDialog(report_folder(), self, after_fault=after_fault)
        dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        dialog.open()

    # -------------------------------------------------------------- looks

    def _show_look(self) -> None:
        look = self.look
        if look.theme != self._coloured:
            self._coloured = look.theme
            colours(look.theme)
        if look.text_factor != self._text_factor:
            self._text_factor = look.text_factor
            font = QFont(self._font)
            font.setPointSizeF(self._font.pointSizeF() * look.text_factor)
            QApplication.setFont(font)
