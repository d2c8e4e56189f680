"""The window: pictures first, then calculators, menus and plots round them; and what is on the bench."""

from __future__ import annotations

from collections.abc import Iterator
from functools import partial
from typing import TYPE_CHECKING, cast

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtGui import QCloseEvent, QFont, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import QApplication, QSplitter, QTabWidget

from magview.bench.autosave import Autosave
from magview.bench.state import BenchState
from magview.spec.base import SpecError
from magview.spec.language import tr
from magview.ui.kit.bench_model import BenchModel
from magview.ui.kit.look import Look
from magview.ui.kit.panes import Panel, TallPanel, column, first_size
from magview.ui.kit.theme import colours
from magview.ui.kit.translation import language
from magview.ui.pictures.breaker_view import BreakerView
from magview.ui.pictures.contact_view import ContactView
from magview.ui.pictures.crank_view import CrankView
from magview.ui.pictures.drive_view import DriveView
from magview.ui.shell.doors import Doors
from magview.ui.shell.panes import PANELS

if TYPE_CHECKING:  # what comes after the first picture is imported then
    from magview.ui.bench.lead_panel import LeadPanel
    from magview.ui.bench.setting_panel import SettingPanel
    from magview.ui.bench.timing_panel import TimingPanel
    from magview.ui.bench.trials_panel import TrialsPanel
    from magview.ui.bench.wear_panel import WearPanel
    from magview.ui.plots.budget import BudgetSheet
    from magview.ui.plots.judging import Judging
    from magview.ui.plots.pane import PlotPane
    from magview.ui.plots.trials import TrialsSheet
    from magview.ui.plots.wear import WearSheet
    from magview.ui.present.presenter import Presenter
    from magview.ui.shell.menus import Menus

_ROOMY, _SHARED = 56, 38
"""From these heights on [lines of type] all pictures have room with the plots, and the two large ones."""

_PROJECTED = 1.6
"""Type and lines on a projector, against the desk."""


def _share(splitter: QSplitter, stretches: tuple[int, ...]) -> None:
    for i, stretch in enumerate(stretches):
        splitter.setStretchFactor(i, stretch)
        splitter.setCollapsible(i, False)


class MainWindow(Doors):
    """The workbench. All it knows is in the model's state; it only arranges views and opens files."""

    projected = Signal(bool)
    """Whether the type is large now for a class."""
    language_wanted = Signal(str)
    """The code of another language, or nothing for the desktop's own: whoever holds the window builds it anew."""

    def __init__(self, model: BenchModel, look: Look | None = None, autosave: Autosave | None = None) -> None:
        super().__init__(model, autosave)
        self.look = look or Look()
        self._font = QApplication.font()
        self._coloured, self._text_factor, self._projecting = self.look.theme, 1.0, False
        self.spoken = language()
        """The code of the language this window's words are in."""
        self._answering = False
        """Whether the status bar says why something was refused: the next thing that is done takes it away."""
        model.setParent(self)
        self.breaker = BreakerView(model, self.look)
        self.contact = ContactView(model, self.breaker, self.look)
        self.drive = DriveView(model, self.look)
        self.crank = CrankView(model, self.look)
        self._panels: dict[str, Panel] = {}
        self._panes: dict[str, TallPanel] = {}
        self._menus: Menus | None = None
        self._plots: PlotPane | None = None
        self._judging: Judging | None = None
        self.presenter: Presenter | None = None
        # Kept a second after the last change, and not more often than that while something moves.
        self._keep_soon = QTimer(self)
        self._keep_soon.setSingleShot(True)
        self._keep_soon.setInterval(1000)
        self._keep_soon.timeout.connect(self._keep)
        self._lay_out()
        colours(self.look.theme)
        self._look_changed()
        self.look.changed.connect(self._look_changed)
        self.show_state(model.state)
        model.changed.connect(self.show_state)
        model.refused.connect(self._answer)
        self._painted = False
        self._rest: Iterator[None] | None = self._furnishing()

    # -------------------------------------------------------------- building

    def _lay_out(self) -> None:
        self.tabs = QTabWidget()
        self.tabs.setDocumentMode(True)
        self.split = QSplitter(Qt.Orientation.Horizontal)
        # The pictures above, the plots below them when they are wanted, the calculators beside both.
        self.pictures = QSplitter(Qt.Orientation.Horizontal)
        self.breaker_column, self.drive_column = column(self.breaker, self.contact), column(self.drive, self.crank)
        self.pictures.addWidget(self.breaker_column)
        self.pictures.addWidget(self.drive_column)
        self.bench = QSplitter(Qt.Orientation.Vertical)
        self.bench.addWidget(self.pictures)
        self.split.addWidget(self.bench)
        self.split.addWidget(self.tabs)
        for splitter, stretches in ((self.pictures, (3, 2)), (self.split, (1, 0))):
            _share(splitter, stretches)
        self.setCentralWidget(self.split)
        # About the room that menus, panel and status bar will need, so that the pictures hardly move when they come.
        metrics = self.fontMetrics()
        self.tabs.setMinimumWidth(71 * metrics.averageCharWidth())
        self.setContentsMargins(0, round(3.5 * metrics.height()), 0, round(1.6 * metrics.height()))
        self.resize(first_size(QApplication.primaryScreen().availableGeometry().size()))
        self._emphasise(0)

    def _furnishing(self) -> Iterator[None]:
        """What comes after the pictures, in steps that nobody waits for."""
        import magview.ui.shell.menus

        yield
        self._menus = magview.ui.shell.menus.Menus(self)
        self.statusBar()  # there from the start, so that the first sentence moves nothing
        self.setContentsMargins(0, 0, 0, 0)
        yield
        from magview.ui.kit.style import Outlined

        yield
        QApplication.setStyle(Outlined())
        import magview.ui.bench.setting_panel

        yield
        for name in PANELS:
            self._panes[name] = TallPanel(partial(self._build, name))
        self._panes["setting"].panel()  # its width shares out the window
        yield
        for name, (title, meaning, _) in PANELS.items():
            self.tabs.addTab(self._panes[name], tr(title))
            self.tabs.setTabToolTip(self.tabs.count() - 1, tr(meaning))
        self.tabs.setMinimumWidth(0)
        self.tabs.currentChanged.connect(self._emphasise)
        self._emphasise(0)
        yield
        self._build_plots()
        yield
        if self.height() >= _ROOMY * self.fontMetrics().height():
            self.show_plots(True)
        yield
        self.plots.load()
        yield

    def _build_plots(self) -> None:
        from magview.ui.plots.pane import PlotPane

        plots = self._plots = PlotPane(self.model, self.look)
        plots.said.connect(self.say)
        plots.made.connect(self._sheet_made)
        plots.hide()
        self.bench.addWidget(plots)
        _share(self.bench, (3, 2))

    @property
    def plots(self) -> PlotPane:
        """The plots under the pictures."""
        assert self._plots is not None
        return self._plots

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
    def menus(self) -> Menus:
        """Menus and tool bar."""
        assert self._menus is not None
        return self._menus

    @property
    def panel(self) -> SettingPanel:
        """The panel of internal timing."""
        return cast("SettingPanel", self.panel_of("setting"))

    @property
    def timing(self) -> TimingPanel:
        """The panel of timing to the engine."""
        return cast("TimingPanel", self.panel_of("timing"))

    @property
    def lead(self) -> LeadPanel:
        """The panel of the switch lead."""
        return cast("LeadPanel", self.panel_of("lead"))

    @property
    def judging(self) -> Judging:
        """What is known of how sure the setting is; panel and plot share it."""
        if self._judging is None:
            from magview.ui.plots.judging import Judging

            self._judging = Judging(self)
        return self._judging

    def _build(self, name: str) -> Panel:
        panel = PANELS[name][2](self)
        self._panels[name] = panel
        return panel

    def panel_of(self, name: str) -> Panel:
        """A panel by its name, built now if it has not been seen yet."""
        self._panes[name].panel()
        return self._panels[name]

    # -------------------------------------------------------------- showing

    def show_state(self, state: BenchState, old: BenchState | None = None) -> None:
        """Name what is on the bench."""
        if old is not None and self._autosave is not None and not self._keep_soon.isActive():
            self._keep_soon.start()
        if old is not None and self._answering:
            self._answering = False
            self.statusBar().clearMessage()
        if old is not None and old.magneto == state.magneto:
            return
        self.setWindowTitle(f"{tr(state.magneto.name)} – magview")

    def _answer(self, sentence: str) -> None:
        self._answering = True
        self.say(sentence)

    def say(self, sentence: str) -> None:
        """Put one sentence where it is seen and does not stop the work."""
        self.statusBar().showMessage(sentence[0].upper() + sentence[1:], 12_000)

    def _emphasise(self, tab: int) -> None:
        """Give the picture that the work is on the larger share."""
        panel = 0 if self._projecting else self.tabs.minimumSizeHint().width()
        room = max(0, self.split.width() - panel)
        share = 0.38 if tab == 1 else 0.62
        self.split.setSizes([room, panel])
        self.pictures.setSizes([round(room * share), round(room * (1 - share))])

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Share the width anew."""
        super().resizeEvent(event)
        self._emphasise(self.tabs.currentIndex())
        self._make_room()

    def closeEvent(self, event: QCloseEvent) -> None:
        """End as it should: nothing is left to be found again."""
        self.model.halt()
        if self._plots is not None:
            self._plots.halt()
        for panel in self._panels.values():
            panel.halt()
        self._keep_soon.stop()
        self.close_doors()
        if self._autosave is not None:
            self._autosave.forget()
        super().closeEvent(event)

    def _keep(self) -> None:
        if self._autosave is not None:
            try:
                self._autosave.keep(self.model.state)
            except SpecError as error:
                self.say(tr("The bench cannot be kept for after a crash: {error}", error=error))

    def again(self) -> MainWindow:
        """A new window over the same bench, of the same size and colours, which also keeps it from now on."""
        self.look.changed.disconnect(self._look_changed)
        QApplication.setFont(self._font)
        self.look.text_percent, self.look.line_factor = 100, 1.0  # the new window's menus set them again
        new = MainWindow(self.model, self.look, self._autosave)
        self._autosave = None
        new.setGeometry(self.geometry())
        new.setWindowState(self.windowState())
        return new

    # -------------------------------------------------------------- choices

    def project(self, on: bool) -> None:
        """Large type and thick lines for a class; the calculators make room for the pictures."""
        self._projecting = on
        self.projected.emit(on)
        self.menus.projector_action.setChecked(on)
        self.tabs.setVisible(not on)
        self.breaker.setFocus()  # and not whatever field comes next: a key must not change the bench
        self.look.line_factor = _PROJECTED if on else 1.0

    def present(self, on: bool) -> None:
        """Name parts, freeze, compare: a bar with what a teacher needs, in projector mode."""
        if self.presenter is None:
            from magview.ui.present.presenter import Presenter

            self.presenter = Presenter(self)
        self.presenter.show(on)

    def _sheet_made(self, name: str, sheet: object) -> None:
        """A sheet that shows what a panel knows follows that panel."""
        if name == "budget":
            self.panel_of("uncertainty")
            cast("BudgetSheet", sheet).follow(self.judging)
        elif name == "trials":
            cast("TrialsSheet", sheet).follow(cast("TrialsPanel", self.panel_of("trials")))
        elif name == "wear":
            cast("WearSheet", sheet).follow(cast("WearPanel", self.panel_of("wear")))

    def show_plots(self, on: bool) -> None:
        """Put the plots under the pictures, or take them away; the small pictures make room for them."""
        self.menus.plots_action.setChecked(on)
        self.plots.setVisible(on)
        self._make_room()

    def _make_room(self) -> None:
        """Where pictures and plots have not room together, the small pictures go, then all of them."""
        on = self._plots is not None and self._plots.isVisibleTo(self)
        line = self.fontMetrics().height()
        roomy = not on or self.height() >= _ROOMY * line
        self.contact.setVisible(roomy)
        self.crank.setVisible(roomy)
        self.pictures.setVisible(not on or self.height() >= _SHARED * line)
        if on:
            height = self.bench.height()
            self.bench.setSizes([round(0.55 * height), round(0.45 * height)])

    def _look_changed(self) -> None:
        look = self.look
        if look.theme != self._coloured:
            self._coloured = look.theme
            colours(look.theme)
        if look.text_factor != self._text_factor:
            self._text_factor = look.text_factor
            font = QFont(self._font)
            font.setPointSizeF(self._font.pointSizeF() * look.text_factor)
            QApplication.setFont(font)
            QTimer.singleShot(0, self, self._settle)  # once every word has its new size

    def _settle(self) -> None:
        for i in range(self.tabs.count()):
            pane = self.tabs.widget(i)
            if isinstance(pane, TallPanel):
                pane.refit()
        self._emphasise(self.tabs.currentIndex())
        self._make_room()
