"""Readings of the bench for other places: its state and what stands on its pages, built when asked."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import TYPE_CHECKING, cast

from magview.bench.state import BenchState
from magview.bench.sureness import INTERNAL_ROLES
from magview.physics.engine.coupling import Move
from magview.physics.uncertainty.instruments import Instrument, instrument
from magview.physics.uncertainty.measurement import Outcome
from magview.ui.kit.bench_model import BenchModel

if TYPE_CHECKING:  # loaded when it is first asked for
    from magview.ui.bench.page import BenchPage
    from magview.ui.bench.uncertainty_panel import UncertaintyPanel


class BenchReadings:
    """Reads the bench's pages for a job sheet."""

    def __init__(self, model: BenchModel, page: Callable[[], BenchPage]) -> None:
        """`page`: builds the bench's page where nobody has been there yet."""
        self._model, self._find = model, page

    @property
    def state(self) -> BenchState:
        """The bench as it stands."""
        return self._model.state

    @property
    def _page(self) -> BenchPage:
        return self._find()

    @property
    def _uncertainty(self) -> UncertaintyPanel:
        return cast("UncertaintyPanel", self._page.panel_of("uncertainty"))

    @property
    def tools(self) -> Sequence[Instrument]:
        """The instruments chosen for reading the internal timing."""
        return tuple(instrument(self._uncertainty.tools[role].currentData()) for role in INTERNAL_ROLES)

    @property
    def outcomes(self) -> Sequence[Outcome]:
        """Outcomes of the measurement on the Uncertainty page."""
        assert self._uncertainty is not None
        return self._page.judging.outcomes

    @property
    def stops(self) -> tuple[float, float] | None:
        """The stop readings of the Engine page; None until both were entered."""
        return self._page.timing.stop.read

    @property
    def move(self) -> Move | None:
        """The move chosen in the planner's list."""
        return self._page.timing.plan.chosen

    @property
    def wanted_gap_mm(self) -> float:
        """The gap wanted on the Internal page [mm]."""
        return self._page.panel.wanted.exact
