"""The bench: pictures first, then calculators and plots round them; and what is on it."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from functools import partial
from typing import TYPE_CHECKING, cast

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtGui import QFontInfo
from PySide6.QtWidgets import QMenu, QSplitter, QVBoxLayout, QWidget

from magview.bench.autosave import Autosave
from magview.bench.state import BenchState
from magview.spec.base import SpecError
from magview.spec.language import marked, tr
from magview.ui.bench import panes
from magview.ui.bench.page_tabs import PageTabs
from magview.ui.bench.panes import PANELS
from magview.ui.bench.pictures import BenchPictures, share
from magview.ui.bench.tray_room import TrayRoom
from magview.ui.kit.bench_model import BenchModel
from magview.ui.kit.cautions import CAUTION
from magview.ui.kit.look import Look
from magview.ui.kit.panes import Panel, TallPanel
from magview.ui.kit.place import Page

if TYPE_CHECKING:  # what comes after the first picture is imported then
    from magview.ui.bench.comparing import Comparing
    from magview.ui.bench.files import BenchFiles
    from magview.ui.bench.filling import Filling
    from magview.ui.bench.lead_panel import LeadPanel
    from magview.ui.bench.menus import BenchMenus
    from magview.ui.bench.setting_panel import SettingPanel
    from magview.ui.bench.timing_panel import TimingPanel
    from magview.ui.bench.trials_panel import TrialsPanel
    from magview.ui.bench.wear_panel import WearPanel
    from magview.ui.plots.budget import BudgetSheet
    from magview.ui.plots.judging import Judging
    from magview.ui.plots.pane import PlotPane
    from magview.ui.plots.trials import TrialsSheet
    from magview.ui.plots.wear import WearSheet

_PANEL_EM = 32.5
"""Width of the calculators."""

HANDLING = marked(
    "Drag the rotor or cam, the backplate, or the contact screw; or take one in hand with 1, 2, 3 and turn it with "
    "the arrow keys, Page Up and Page Down, or the wheel: ten times finer with Shift, coarser with Alt. A dragged "
    "rotor catches at contacts just open, top of lobe, E-gap and neutral; Alt lets it pass. Home puts the part in "
    "hand back. Space holds the rotor or lets it go. T goes to the tray: a number takes an instrument, "
    "Return puts it at the lit place; or drag it there. In the drive end, left and right move the magneto flange, up "
    "and down the disc, one tooth at a time. Ctrl and the wheel zoom, the middle button pans. A double click on a "
    "picture fills the window with it, Esc puts it back. Numbers can be typed with their unit: 1.5°, 13 thou, 0.33 "
    "mm.\n\nPositive angles go the way the rotor turns in service; a positive contact-screw angle brings the "
    "contacts closer."
)


class BenchPage(Page):
    """Pictures, calculators and plots. All it knows is in the model's state."""

    own_wanted = Signal()
    """A magneto of one's own is to be drafted."""
    furnished = Signal()
    """Everything is there."""

    def __init__(self, model: BenchModel, look: Look, autosave: Autosave | None = None) -> None:
        super().__init__(look)
        self.model, self._autosave = model, autosave
        self._answering = False
        """Whether the foot line says why something was refused: the next thing that is done takes it away."""
        model.setParent(self)
        self.pictures = BenchPictures(model, look)
        self._steps = self._furnish_stepwise()
        self._panels: dict[str, Panel] = {}
        self._panes: dict[str, TallPanel] = {}
        self.filling: Filling | None = None
        self.comparing: Comparing | None = None
        self._menus: BenchMenus | None = None
        self._files: BenchFiles | None = None
        self._plots: PlotPane | None = None
        self._judging: Judging | None = None
        # Kept a second after the last change, and not more often than that while something moves.
        self._keep_soon = QTimer(self)
        self._keep_soon.setSingleShot(True)
        self._keep_soon.setInterval(1000)
        self._keep_soon.timeout.connect(self._keep)
        self._lay_out()
        self.show_state(model.state)
        model.changed.connect(self.show_state)
        model.refused.connect(self._answer)
        self._was_projecting = False
        look.changed.connect(self._look_changed)

    # -------------------------------------------------------------- building

    def _lay_out(self) -> None:
        self.tabs = PageTabs()
        self.split = QSplitter(Qt.Orientation.Horizontal)
        self.split.addWidget(self.pictures)
        self.split.addWidget(self.tabs)
        share(self.split, (1, 0))
        self.tray_room = TrayRoom()
        self.tray_room.shared.connect(self._emphasise)
        self.fill(self.tray_room.beside(self.split))
        # About the room that the panel will need, so that the pictures hardly move when it comes.
        self.tabs.setMinimumWidth(round(_PANEL_EM * QFontInfo(self.font()).pixelSize()))
        self._emphasise()

    def furnishing(self) -> Iterator[None]:
        """Build what comes after the first picture, in steps that nobody waits for; each is done once."""
        return self._steps

    def furnish(self) -> None:
        """Build at once what has not come yet: somebody asks for it."""
        for _ in self._steps:
            pass

    def _furnish_stepwise(self) -> Iterator[None]:
        self.pictures.build_large()
        yield
        self.pictures.build_small()
        yield
        self._lay_tray()
        yield
        from magview.ui.bench.files import BenchFiles

        files = self._files = BenchFiles(self, self.model, self.look, lambda: self.timing.chosen_move())
        files.said.connect(self.said)
        yield
        from magview.ui.bench.menus import BenchMenus

        self._menus = BenchMenus(self, self.pictures, self.model, files, self.look)
        self.tools = self._menus.bar
        self._menus.own_wanted.connect(self.own_wanted)
        self._menus.plots_wanted.connect(self.show_plots)
        self._menus.circuit_wanted.connect(lambda: files.export_file(self.lead.diagram))
        yield
        for name in PANELS:
            self._panes[name] = TallPanel(partial(self._build, name))
        self._panes["setting"].panel()  # its width shares out the window
        yield
        for name, (title, meaning) in PANELS.items():
            self.tabs.add_page(self._panes[name], tr(title), tr(meaning))
        self.tabs.add_action(self.menus.plots_action)
        self.tabs.setMinimumWidth(0)
        self.tabs.currentChanged.connect(self._emphasise)
        self._emphasise()
        yield
        self._build_plots()
        from magview.ui.bench.filling import Filling

        self.filling = Filling(self, self)
        from magview.ui.bench.comparing import Comparing

        pictures = self.pictures
        others = (pictures.contact, pictures.drive, pictures.shaft, pictures.strip)
        self.comparing = Comparing(self.model, self.look, pictures.breaker, others)
        layout = self.layout()
        assert isinstance(layout, QVBoxLayout)
        layout.insertWidget(1, self.comparing.words)
        self.menus.list_pictures(self.filling)
        self.menus.offer_comparing(self.comparing)
        self.menus.offer_tray(self.instruments, self.tray_room)
        self.filling.changed.connect(self.tray_room.follow)
        self.tabs.currentChanged.connect(self.rearranged)
        self.plots.currentChanged.connect(self.rearranged)
        self.plots.made.connect(self.rearranged)
        self.rearranged.emit()
        yield
        self.plots.load()
        yield
        self.furnished.emit()

    def _lay_tray(self) -> None:
        from magview.ui.bench.tools import BenchTools

        tools = self.instruments = BenchTools(self.model, self.pictures.breaker, self.pictures.contact, self.look)
        self.tray_room.fill(tools.tray)
        tools.said.connect(self._answer)
        tools.breaker_wanted.connect(lambda: self._go_to("setting"))
        tools.stop_wanted.connect(lambda: self._go_to("timing", self.timing.stop.stops[0]))
        tools.stop_moved.connect(lambda reach: self.pictures.crank.set_stop(reach))
        tools.disc_wanted.connect(lambda: self._go_to("timing", self.pictures.crank))

    def _go_to(self, panel: str, widget: QWidget | None = None) -> None:
        if widget is not None or self._on_engine:
            self.show_panel(panel)
        if widget is not None:
            widget.setFocus(Qt.FocusReason.OtherFocusReason)

    def _build_plots(self) -> None:
        from magview.ui.plots.pane import PlotPane

        plots = self._plots = PlotPane(self.model, self.look)
        plots.said.connect(self.said)
        plots.made.connect(self._sheet_made)
        self.pictures.add_plots(plots)

    @property
    def plots(self) -> PlotPane:
        """The plots under the pictures."""
        if self._plots is None:
            self.furnish()
        assert self._plots is not None
        return self._plots

    @property
    def plots_wanted(self) -> bool:
        """Whether the plots stand below the pictures when all are shown."""
        return self.menus.plots_action.isChecked()

    @property
    def menus(self) -> BenchMenus:
        """Menus and tools."""
        if self._menus is None:
            self.furnish()
        assert self._menus is not None
        return self._menus

    @property
    def files(self) -> BenchFiles:
        """File actions."""
        if self._files is None:
            self.furnish()
        assert self._files is not None
        return self._files

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
        """Judgement of how sure the setting is; panel and plot share it."""
        if self._judging is None:
            from magview.ui.plots.judging import Judging

            self._judging = Judging(self)
        return self._judging

    def _build(self, name: str) -> Panel:
        model, look = self.model, self.look
        panel: Panel
        match name:
            case "setting":
                panel = panes.setting_panel(model, look)
            case "timing":
                panel = timing = panes.timing_panel(model, look)
                timing.previewed.connect(self.pictures.drive.preview)
                timing.plan.print_wanted.connect(self.files.give_shift_plan)
            case "lead":
                panel = panes.lead_panel(model, look)
            case "trials":
                panel = trials = panes.trials_panel(model, look)
                trials.said.connect(self.said)
            case "uncertainty":
                panel = panes.uncertainty_panel(model, look, self.judging)
            case _:
                panel = panes.wear_panel(model, look)
        self._panels[name] = panel
        return panel

    def show_panel(self, name: str) -> None:
        """Turn to a panel by its name."""
        self.panel_of(name)
        self.tabs.setCurrentWidget(self._panes[name])

    def panel_of(self, name: str) -> Panel:
        """A panel by its name, built now if it has not been seen yet."""
        if name not in self._panes:
            self.furnish()
        self._panes[name].panel()
        return self._panels[name]

    # -------------------------------------------------------------- what the window asks

    def heading(self) -> str:
        """The list of magnetos in the bar says it."""
        return ""

    def bar_menus(self) -> Sequence[QMenu]:
        """Files, steps, the bench, and how it is seen."""
        return self._menus.made if self._menus is not None else ()

    def help_words(self) -> str:
        """Keys, signs and cautions."""
        return f"{tr(HANDLING)}\n\n{tr(CAUTION)}"

    def halt(self) -> None:
        """End as it should: nothing is left to be found again."""
        self.model.halt()
        if self._plots is not None:
            self._plots.halt()
        for panel in self._panels.values():
            panel.halt()
        self._keep_soon.stop()
        if self._autosave is not None:
            self._autosave.forget()

    def given_away(self) -> Autosave | None:
        """Return what keeps the bench, for a page that takes this one's place."""
        autosave, self._autosave = self._autosave, None
        return autosave

    # -------------------------------------------------------------- showing

    def show_state(self, state: BenchState, old: BenchState | None = None) -> None:
        """Name what is on the bench."""
        if old is not None and self._autosave is not None and not self._keep_soon.isActive():
            self._keep_soon.start()
        if old is not None and self._answering:
            self._answering = False
            self.say("")
        if old is not None and old.magneto == state.magneto:
            return
        self.setWindowTitle(tr(state.magneto.name))

    def _answer(self, sentence: str) -> None:
        self._answering = True
        self.say(sentence)

    @property
    def _projecting(self) -> bool:
        return self.look.line_factor != 1.0

    @property
    def _on_engine(self) -> bool:
        """Whether the page in front is about timing to the engine: coupling and crank then have the room."""
        return self.tabs.currentIndex() == 1

    def _emphasise(self, _tab: int = 0) -> None:
        """Give the pictures that the work is on the larger share."""
        self.split.setSizes([self._width_left, self.split.width() - self._width_left])
        self._make_room()

    @property
    def _width_left(self) -> int:
        """Width that the calculators leave; before they come, that they will leave."""
        panel = 0 if self._projecting else max(self.tabs.minimumSizeHint().width(), self.tabs.minimumWidth())
        return max(0, self.split.width() - panel)

    def settle(self) -> None:
        """Share the room anew: the words have another size."""
        for i in range(self.tabs.count()):
            pane = self.tabs.widget(i)
            if isinstance(pane, TallPanel):
                pane.refit()
        self._emphasise()

    def _keep(self) -> None:
        if self._autosave is not None:
            try:
                self._autosave.keep(self.model.state)
            except SpecError as error:
                self.say(tr("The bench cannot be kept for after a crash: {error}", error=error))

    def _sheet_made(self, name: str, sheet: QWidget) -> None:
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
        if self.filling is not None:
            self.filling.show("")
        self.plots.setVisible(on)
        self._make_room()

    def _make_room(self) -> None:
        """Show the pictures that the page in front needs, or the one that fills all."""
        if self.filling is not None and self.filling.shown:
            self.filling.arrange()
            return
        self.pictures.make_room(self._on_engine, self._width_left)

    # -------------------------------------------------------------- looks

    def _look_changed(self) -> None:
        """For a class the calculators make room for the pictures."""
        if self._projecting != self._was_projecting:
            self._was_projecting = self._projecting
            self.tabs.setVisible(not self._projecting)
            self.pictures.breaker.setFocus()  # and not whatever field comes next: a key must not change the bench
