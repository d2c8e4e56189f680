"""The bench's pictures, and how they share the room: large ones above, a row of small ones below, then the plots."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QSplitter, QWidget

from magview.ui.kit.bench_model import BenchModel
from magview.ui.kit.look import Look
from magview.ui.kit.panes import column
from magview.ui.pictures.breaker_view import BreakerView

if TYPE_CHECKING:  # what comes after the first picture is imported then
    from magview.ui.pictures.contact_view import ContactView
    from magview.ui.pictures.crank_view import CrankView
    from magview.ui.pictures.drive_view import DriveView
    from magview.ui.pictures.shaft_view import ShaftView
    from magview.ui.pictures.why_here_view import WhyHereView

_UPPER = 0.64
"""The large pictures' share of the height; …"""
_PLOTS = 0.45
"""… that of the plots where they are shown; …"""
_CRANK = 0.45
"""… and the crank's share of the width below, beside the shaft."""

_HERO_PX, _ROW_PX = 404, 176
"""Height that the breaker end wants, and height that is left to the row below for it."""

_ROOMY, _SHARED = 56, 38
"""From these heights on [lines of type] all pictures have room with the plots, and the two large ones."""


class BenchPictures(QSplitter):
    """All pictures of the bench; those after the breaker end are built when they are first asked for."""

    def __init__(self, model: BenchModel, look: Look) -> None:
        super().__init__(Qt.Orientation.Vertical)
        self._model, self._look = model, look
        self.breaker = BreakerView(model, look)
        # Plain widgets keep the room of the pictures that come after the first.
        self.beside = column(QWidget(), QWidget())
        """Close-up and drive end, beside the breaker end."""
        self._large: tuple[ContactView, DriveView] | None = None
        self._small: tuple[CrankView, ShaftView, WhyHereView] | None = None
        self._plots: QWidget | None = None
        self.above = QSplitter(Qt.Orientation.Horizontal)
        self.above.addWidget(self.breaker)
        self.above.addWidget(self.beside)
        self.row = QSplitter(Qt.Orientation.Horizontal)
        for _ in range(3):
            self.row.addWidget(QWidget())
        self.addWidget(self.above)
        self.addWidget(self.row)
        share(self.above, (1, 1))
        share(self, (2, 1))

    def build_large(self) -> tuple[ContactView, DriveView]:
        """Build the close-up and the drive end, once."""
        if self._large is None:
            from magview.ui.pictures.contact_view import ContactView
            from magview.ui.pictures.drive_view import DriveView

            self._large = (
                ContactView(self._model, self.breaker, self._look),
                DriveView(self._model, self._look),
            )
            _put(self.beside, self._large)
        return self._large

    def build_small(self) -> tuple[CrankView, ShaftView, WhyHereView]:
        """Build crank, shaft and strip, once."""
        if self._small is None:
            from magview.ui.pictures.crank_view import CrankView
            from magview.ui.pictures.shaft_view import ShaftView
            from magview.ui.pictures.why_here_view import WhyHereView

            model, look = self._model, self._look
            shaft = ShaftView(model, look)
            self._small = CrankView(model, look), shaft, WhyHereView(model, look)
            shaft.pointed.connect(self.breaker.point_out)
            shaft.pointed.connect(self.drive.light)
            self.breaker.lit.connect(shaft.light)
            self.drive.lit.connect(shaft.light)
            _put(self.row, self._small)
            share(self.row, (1, 2, 1))
        return self._small

    def add_plots(self, plots: QWidget) -> None:
        """Put the plots below, hidden until they are wanted."""
        self._plots = plots
        plots.hide()
        self.addWidget(plots)
        share(self, (2, 1, 1))

    @property
    def contact(self) -> ContactView:
        """The close-up of the contacts."""
        return self.build_large()[0]

    @property
    def drive(self) -> DriveView:
        """The coupling and its marks."""
        return self.build_large()[1]

    @property
    def crank(self) -> CrankView:
        """The timing cylinder with its disc."""
        return self.build_small()[0]

    @property
    def shaft(self) -> ShaftView:
        """The magneto's one shaft from the side."""
        return self.build_small()[1]

    @property
    def strip(self) -> WhyHereView:
        """The curves of why the contacts open here."""
        return self.build_small()[2]

    # -------------------------------------------------------------- sharing of the room

    def make_room(self, engine: bool, width: int) -> None:
        """Show the pictures that the work needs in this width, coupling and crank for work on the engine.

        Plots take the room of the row, then of all pictures.
        """
        plots = self._plots is not None and self._plots.isVisibleTo(self)
        line, height = self.fontMetrics().height(), self.window().height()
        small = not plots or height >= _ROOMY * line
        self.breaker.setVisible(not engine)
        _show(self.beside, 0, not engine and small)
        _show(self.row, 0, engine)
        _show(self.row, 2, not engine)
        tall = height >= _SHARED * line
        self.row.setVisible(tall and (small if engine else not plots))
        self.above.setVisible(not plots or tall)
        self._share_out(width, plots, engine)

    def _share_out(self, width: int, plots: bool, engine: bool) -> None:
        height = self.height()
        rest = _PLOTS if plots else 1.0 - _UPPER if self.row.isVisibleTo(self) else 0.0
        above = round((1.0 - rest) * height)
        if not (plots or engine):  # in a small window the row below gives way to the breaker end
            above = max(above, min(_HERO_PX, height - _ROW_PX))
        self.setSizes([above, height - above, height - above])
        hero = round(min(0.62 * width, 1.14 * above))
        self.above.setSizes([hero, width - hero])
        self.row.setSizes([round(_CRANK * width), round(0.64 * width), round(0.36 * width)])


def share(splitter: QSplitter, stretches: tuple[int, ...]) -> None:
    """Let a splitter's widgets grow so, and let none be dragged to nothing."""
    for i, stretch in enumerate(stretches):
        splitter.setStretchFactor(i, stretch)
        splitter.setCollapsible(i, False)


def _put(splitter: QSplitter, pictures: Sequence[QWidget]) -> None:
    """Put pictures in the places that plain widgets kept for them."""
    sizes = splitter.sizes()
    for i, picture in enumerate(pictures):
        before = splitter.replaceWidget(i, picture)
        if before is not None:
            before.deleteLater()
    splitter.setSizes(sizes)


def _show(splitter: QSplitter, place: int, on: bool) -> None:
    widget = splitter.widget(place)
    assert widget is not None
    widget.setVisible(on)
