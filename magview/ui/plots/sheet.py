"""Base of all plots: look, cursor, values under the pointer, copying, and saving as SVG, PNG or CSV.

pyqtgraph is imported here and in the sheets built on this alone: it takes longer to load than everything else
together, so the window loads it in the background once its pictures stand.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from functools import partial
from pathlib import Path

import pyqtgraph as pg
from PySide6.QtCore import QEvent, QLocale, QPointF, QSize, Qt, QTimer, Signal
from PySide6.QtGui import QColor, QFont, QFontMetrics, QGuiApplication, QKeyEvent, QPen, QResizeEvent, QShowEvent
from PySide6.QtWidgets import QHBoxLayout, QLabel, QPushButton, QSizePolicy, QVBoxLayout, QWidget

from magview.bench.actions import TurnRotor
from magview.bench.state import BenchState
from magview.curves.lift import Table, csv_text, cycle_deg
from magview.spec.base import SpecError
from magview.spec.files import write_text
from magview.spec.language import tr
from magview.spec.units import MM_PER_INCH
from magview.ui.kit.asking import ask_save
from magview.ui.kit.bench_model import BenchModel
from magview.ui.kit.look import Look
from magview.ui.pictures.export import written_beside
from magview.ui.pictures.picture_view import step_factor
from magview.ui.plots.export import plot_image, write_plot_svg

pg.setConfigOptions(antialias=True)

_SHARPNESS = 2.0
"""Pixels of a picture per pixel of the screen."""

LINES = {
    "present": Qt.PenStyle.SolidLine,
    "designed": Qt.PenStyle.DashLine,
    "before": Qt.PenStyle.DotLine,
    "limit": Qt.PenStyle.DashDotLine,
    "stop": Qt.PenStyle.DashDotDotLine,
}
"""Kind of a line, told by its strokes as well as by its colour."""


def _written(write: Callable[..., list[str]], point: str, *arguments: object) -> list[str]:
    """The numbers of an axis with the language's decimal sign."""
    return [text.replace(".", point) for text in write(*arguments)]


class RotorCursor(pg.InfiniteLine):  # type: ignore[misc]  # the library has no types
    """The rotor's angle as an upright line that can be dragged."""

    def __init__(self, sheet: PlotSheet) -> None:
        super().__init__(angle=90, movable=True)
        self._sheet = sheet
        self._gesture: int | None = None
        self.setZValue(50)
        self.sigDragged.connect(self._dragged)
        self.sigPositionChangeFinished.connect(self._let_go)

    def _dragged(self) -> None:
        if self._gesture is None:
            self._gesture = self._sheet.model.gesture()
            self._sheet.model.grip(True)  # a rotor in the hand does not swing
        self._sheet.turn_to(float(self.value()), self._gesture)
        self._sheet.show_cursor(self._sheet.model.state)  # past an end the rotor stays, and so does the line

    def _let_go(self) -> None:
        if self._gesture is not None:
            self._gesture = None
            self._sheet.model.grip(False)


class PlotSheet(QWidget):
    """One sheet of plots. Sheets built on it draw what ``bench.curves`` computes, and only while they are seen."""

    said = Signal(str)
    """One sentence about what was done."""

    long_names = False
    """Whether words stand at the left axes instead of numbers."""

    title = ""
    """Subject of the sheet, for captions and file names."""

    def __init__(self, model: BenchModel, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.model, self.look = model, look
        self._stale = True
        self._shown_size = QSize()
        self.plots: list[pg.PlotItem] = []
        self.cursors: list[RotorCursor] = []
        self.legends: list[pg.LegendItem] = []
        self.canvas = pg.GraphicsLayoutWidget()
        self.canvas.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.canvas.setAccessibleName(tr(self.title))
        self.canvas.installEventFilter(self)
        self.controls = QHBoxLayout()
        self.reading = QLabel()
        self.reading.setAccessibleName(tr("Values under the pointer"))
        # Words that change under the pointer must not widen the window, nor move the plots: they have two lines.
        self.reading.setWordWrap(True)
        self.reading.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
        self.copy_button, self.save_button = QPushButton(tr("Cop&y")), QPushButton(tr("Save…"))
        self.copy_button.setToolTip(tr("Copy the plots as a picture"))
        self.save_button.setToolTip(tr("Save the plots as SVG or PNG, or their values as CSV"))
        self.copy_button.clicked.connect(self.copy)
        self.save_button.clicked.connect(self.save)
        foot = QHBoxLayout()
        foot.addLayout(self.controls)
        foot.addWidget(self.reading, 1)
        foot.addWidget(self.copy_button)
        foot.addWidget(self.save_button)
        column = QVBoxLayout(self)
        column.setContentsMargins(4, 2, 4, 2)
        column.setSpacing(2)
        column.addWidget(self.canvas, 1)
        column.addLayout(foot)
        self._rest: Iterator[None] | None = self._building()

    def _building(self) -> Iterator[None]:
        yield from self.build()
        self.canvas.scene().sigMouseMoved.connect(self._hovered)
        self.canvas.scene().sigMouseClicked.connect(self._clicked)
        self.model.changed.connect(self._changed)
        self.look.changed.connect(self.restyle)
        yield
        self._rest = None
        self.restyle()

    def build_on(self) -> bool:
        """Take one step more of the building; False once it is whole, and only then may it be shown."""
        if self._rest is not None:
            next(self._rest, None)
        return self._rest is not None

    # -------------------------------------------------------------- for sheets to fill in

    def build(self) -> Iterator[None]:
        """Make the plots, in steps that nobody waits for."""
        yield from ()

    def refresh(self, state: BenchState, old: BenchState | None) -> None:
        """Show a state; `old` is None when everything may have changed."""

    def span_deg(self, state: BenchState) -> float:
        """Rotor degrees that the plots with a cursor cover: a turn of the cam."""
        return cycle_deg(state.magneto)

    def words_at(self, plot: int, x: float, y: float) -> str:
        """The values under the pointer in one of the plots."""
        return ""

    def clicked_at(self, plot: int, x: float, y: float) -> None:
        """A click in one of the plots."""

    def double_clicked(self) -> None:
        """A double click in one of the plots."""

    def table(self) -> Table:
        """The values shown, as columns. Empty if there are none."""
        return []

    def colour(self) -> None:
        """Give the curves the theme's colours."""

    def summary(self) -> str:
        """Say what the plots show, for a reader that cannot see them and for the caption."""
        return ""

    # -------------------------------------------------------------- making plots

    def add_plot(self, row: int, column: int, x_title: str, y_title: str, cursor: bool = False) -> pg.PlotItem:
        """A plot with titled axes; with `cursor` the rotor's angle is drawn in it."""
        plot = self.canvas.addPlot(row=row, col=column, enableMenu=False)
        plot.hideButtons()
        plot.setMouseEnabled(x=False, y=False)
        plot.setLabel("bottom", x_title)
        plot.setLabel("left", y_title)
        point = QLocale().decimalPoint()
        for side in ("left", "bottom"):
            # Units stand in the title as they are; no kilo-degrees.
            axis = plot.getAxis(side)
            axis.enableAutoSIPrefix(False)
            if point != ".":
                axis.tickStrings = partial(_written, axis.tickStrings, point)
            # Numbers and grid are laid out when they change, not whenever the cursor passes.
            axis.setCacheMode(axis.CacheMode.DeviceCoordinateCache)
        plot.showGrid(x=True, y=True, alpha=0.18)
        self.plots.append(plot)
        if cursor:
            line = RotorCursor(self)
            plot.addItem(line, ignoreBounds=True)
            self.cursors.append(line)
        return plot

    def curve(self, plot: pg.PlotItem, kept: bool = True) -> pg.PlotCurveItem:
        """A curve; `kept`, it is painted anew only when it changes, not when something moves over it."""
        item = pg.PlotCurveItem()
        if kept:
            item.setCacheMode(item.CacheMode.DeviceCoordinateCache)
        plot.addItem(item, ignoreBounds=True)
        return item

    def word(self, plot: pg.PlotItem, anchor: tuple[float, float] = (0.0, 1.0)) -> pg.TextItem:
        """Words in a plot, at a place set later."""
        item = pg.TextItem(anchor=anchor)
        item.setZValue(60)
        plot.addItem(item, ignoreBounds=True)
        return item

    def turn_axis(self, plot: pg.PlotItem, whole_deg: float) -> None:
        """Give an axis of rotor angles its length, and ticks at parts of a turn that leave room for their numbers."""
        plot.setXRange(0.0, whole_deg, padding=0.0)
        room = plot.getViewBox().width() / max(self.fontMetrics().horizontalAdvance("000 "), 1)
        major = next(step for step in (45.0, 90.0, 180.0, 360.0, whole_deg) if whole_deg / step <= max(room, 1.0))
        plot.getAxis("bottom").setTickSpacing(major=major, minor=major / 3)

    def legend(self, plot: pg.PlotItem, entries: list[tuple[object, str]]) -> None:
        """Say along the top of a plot which line is which."""
        legend = pg.LegendItem(offset=(6, 1), colCount=len(entries), verSpacing=-6, horSpacing=10)
        legend.setParentItem(plot.getViewBox())
        for item, text in entries:
            legend.addItem(item, text)
        self.legends.append(legend)

    def pen(self, colour: str, kind: str = "present", wide: bool = False) -> QPen:
        """A pen of the theme; lines of one pixel are drawn fastest."""
        pen = QPen(QColor(colour), (2.0 if wide else 1.0) * self.look.line_factor, LINES[kind])
        pen.setCosmetic(True)
        return pen

    # -------------------------------------------------------------- lengths

    @property
    def length_unit(self) -> str:
        """The unit lengths are shown in."""
        return "in" if self.look.inches else "mm"

    @property
    def per_mm(self) -> float:
        """Millimetre in the unit shown."""
        return 1.0 / MM_PER_INCH if self.look.inches else 1.0

    @property
    def inches(self) -> bool:
        """Whether lengths are shown in inches."""
        return self.look.inches

    # -------------------------------------------------------------- state

    def turn_to(self, angle_deg: float, gesture: int | None) -> None:
        """Turn the rotor to an angle of the plot, within the cam turn it is in."""
        whole = self.span_deg(self.model.state)
        turns = self.model.state.rotor_deg // whole
        self.model.send(TurnRotor(turns * whole + min(max(angle_deg, 0.0), whole * (1 - 1e-9))), gesture)

    def _changed(self, state: BenchState, old: BenchState) -> None:
        if self.isVisible() and not self._stale:
            self._show(state, old)
        else:
            self._stale = True

    def showEvent(self, event: QShowEvent) -> None:
        """Catch up with what changed meanwhile; the first time one turn later, as being laid out takes one."""
        super().showEvent(event)
        if self._shown_size.isEmpty():
            QTimer.singleShot(1, self, self.catch_up)
        else:
            self.catch_up()

    def catch_up(self) -> None:
        """Show what is not shown yet."""
        if self._stale and self.isVisible():
            self._show(self.model.state, None)

    def _show(self, state: BenchState, old: BenchState | None) -> None:
        self._stale, self._shown_size = False, self.canvas.size()
        if self.cursors and (old is None or old.rotor_deg != state.rotor_deg or old.magneto != state.magneto):
            self.show_cursor(state)
        self.refresh(state, old)
        self.canvas.setAccessibleDescription(self.summary())

    def show_cursor(self, state: BenchState) -> None:
        """Put the cursors where the rotor stands."""
        at = state.rotor_deg % self.span_deg(state)
        for line in self.cursors:
            blocked = line.blockSignals(True)
            line.setValue(at)
            line.blockSignals(blocked)

    def again(self) -> None:
        """Draw everything anew."""
        if self.isVisible():
            self._show(self.model.state, None)
        else:
            self._stale = True

    # -------------------------------------------------------------- looks

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Ticks and pictures that depend on the room there is."""
        super().resizeEvent(event)
        QTimer.singleShot(1, self, self._resized)

    def _resized(self) -> None:
        if self._rest is None:  # half built it has nothing to fit
            self.resized()

    def resized(self) -> None:
        """The plots may have another size."""
        if self.canvas.size() != self._shown_size:
            self.again()

    def changeEvent(self, event: QEvent) -> None:
        """Type of another size."""
        super().changeEvent(event)
        if event.type() == QEvent.Type.FontChange and self.plots:
            self.restyle()

    def restyle(self) -> None:
        """Paper, axes and type as the theme and the window have them."""
        if self._rest is not None:
            return
        theme, font = self.look.theme, QFont(self.font())
        font.setPointSizeF(0.92 * font.pointSizeF())
        self.canvas.setBackground(theme.paper)
        size = f"{font.pointSizeF():.1f}pt"
        metrics = QFontMetrics(font)
        self.reading.setFixedHeight(2 * self.reading.fontMetrics().height())
        for plot in self.plots:
            # Room for title and numbers, given once: an axis that finds its own width has everything painted twice.
            if not self.long_names:
                plot.getAxis("left").setWidth(round(1.5 * metrics.height()) + metrics.horizontalAdvance("−0.000") + 8)
            plot.getAxis("bottom").setHeight(round(2.6 * metrics.height()) + 8)
            for side in ("left", "bottom"):
                axis = plot.getAxis(side)
                axis.setPen(pg.mkPen(theme.line))
                axis.setTextPen(pg.mkPen(theme.text))
                axis.setStyle(tickFont=font)
                axis.setLabel(axis.labelText, **{"color": theme.text, "font-size": size})
            for item in plot.items:
                if isinstance(item, pg.TextItem):
                    item.setFont(font)
        for legend in self.legends:
            for _, label in legend.items:
                label.setText(label.text, color=theme.text, size=size)
            legend.updateSize()
        for line in self.cursors:
            line.setPen(pg.mkPen(theme.hand, width=1.0 * self.look.line_factor))
            line.setHoverPen(pg.mkPen(theme.hand, width=3.0))
        self.colour()
        self.again()

    # -------------------------------------------------------------- pointer and keys

    def _place(self, at: QPointF) -> tuple[int, float, float] | None:
        for n, plot in enumerate(self.plots):
            if plot.isVisible() and plot.getViewBox().sceneBoundingRect().contains(at):
                point = plot.getViewBox().mapSceneToView(at)
                return n, point.x(), point.y()
        return None

    def _hovered(self, at: QPointF) -> None:
        place = self._place(at)
        self.reading.setText(self.words_at(*place) if place else "")

    def _clicked(self, event: object) -> None:
        # Signs take clicks for themselves; they stand for what is to be clicked, so it counts all the same.
        if event.button() != Qt.MouseButton.LeftButton:  # type: ignore[attr-defined]
            return
        place = self._place(event.scenePos())  # type: ignore[attr-defined]
        if place and event.double():  # type: ignore[attr-defined]
            self.double_clicked()
        elif place:
            self.clicked_at(*place)

    def eventFilter(self, watched: object, event: QEvent) -> bool:
        """With the keyboard on the plots, left and right turn the rotor as they do in the picture."""
        if event.type() == QEvent.Type.KeyPress and self.cursors:
            assert isinstance(event, QKeyEvent)
            way = {Qt.Key.Key_Left: -1.0, Qt.Key.Key_Right: 1.0}.get(Qt.Key(event.key()))
            if way is not None:
                self.model.send(TurnRotor(self.model.state.rotor_deg + way * step_factor(event.modifiers())))
                return True
        return False

    # -------------------------------------------------------------- taking away

    def copy(self) -> None:
        """Put the plots on the clipboard as a picture."""
        QGuiApplication.clipboard().setImage(plot_image(self.canvas, self.look.theme.paper, _SHARPNESS))
        self.said.emit(tr("The plots are copied."))

    def save(self) -> None:
        """Ask where, and save the plots or their values."""
        kinds = tr("SVG (*.svg);;PNG (*.png);;Values as CSV (*.csv)")
        name = self.title.lower().replace(" ", "-")
        path = ask_save(self, tr("Save the plots"), f"{name}.svg", kinds)
        if path is not None:
            self.save_to(path)

    def save_to(self, path: Path) -> None:
        """Save as the file's ending says; a failure is one sentence, and what stood there stays."""
        try:
            self._write(path)
        except SpecError as error:
            self.said.emit(str(error))
            return
        self.said.emit(tr("Saved {name}.", name=path.name))

    def _write(self, path: Path) -> None:
        kind = path.suffix.lower()
        if kind == ".csv":
            table = self.table()
            if not table:
                raise SpecError(tr("there are no values to save here"))
            write_text(path, csv_text(table))
        elif kind in (".svg", ".png"):
            with written_beside(path) as part:
                if kind == ".svg":
                    title = f"{tr(self.model.state.magneto.name)}: {tr(self.title)}. {self.summary()}"
                    write_plot_svg(self.canvas, part, title)
                elif not plot_image(self.canvas, self.look.theme.paper, _SHARPNESS).save(str(part)):
                    raise SpecError(tr("{name}: the picture could not be saved", name=path.name))
        else:
            raise SpecError(tr("{name}: plots are saved as .svg or .png, their values as .csv", name=path.name))
