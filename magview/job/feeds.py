"""Values from bench, planner, trials and uncertainty for the job sheet: one action each."""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from typing import Protocol

from magview.bench.state import BenchState, Side, opening_deg, same_but_worn
from magview.bench.sureness import NEVER_OPENS
from magview.job import from_bench
from magview.job.sheet import Job
from magview.physics.cam.setting import internal_timing
from magview.physics.engine.coupling import Move
from magview.physics.uncertainty.instruments import Instrument
from magview.physics.uncertainty.measurement import Outcome
from magview.spec.base import SpecError
from magview.spec.language import marked, tr


class Source(Protocol):
    """Workbench as the job sheet sees it."""

    @property
    def state(self) -> BenchState:
        """The bench as it stands."""
        ...

    @property
    def tools(self) -> Sequence[Instrument]:
        """The instruments chosen for reading the internal timing."""
        ...

    @property
    def outcomes(self) -> Sequence[Outcome]:
        """Outcomes of the last measurement; empty where none was judged."""
        ...

    @property
    def stops(self) -> tuple[float, float] | None:
        """The disc's readings at the two stops [crank deg]; None until the page that takes them was used."""
        ...

    @property
    def move(self) -> Move | None:
        """The move chosen in the planner's list; None where none is."""
        ...

    @property
    def wanted_gap_mm(self) -> float:
        """The largest gap that the contacts are to be set to [mm]."""
        ...


@dataclass(frozen=True)
class Feed:
    """One action: what it is called, the page that shows its result, and what it does."""

    key: str
    title: str
    page: str
    tip: str
    take: Callable[[Job, Source], Job]

    @property
    def words(self) -> str:
        """Name for people."""
        return tr(self.title)


def noted(job: Job, feed: Feed, source: Source) -> Job:
    """The sheet with what this feed has. Raises SpecError, in one sentence, where it has nothing."""
    described = job.described
    if feed.key != "bench" and described is not None and not same_but_worn(described, source.state.magneto):
        raise SpecError(
            tr(
                "the bench has “{bench}” on it and this sheet is of “{sheet}”: put that one on the bench, or take "
                "over magneto and limits anew",
                bench=source.state.magneto.name,
                sheet=described.name,
            )
        )
    return feed.take(job, source)


def _opens(source: Source) -> BenchState:
    if not math.isfinite(opening_deg(source.state)):
        raise SpecError(tr(NEVER_OPENS))
    return source.state


def _on_engine(source: Source) -> BenchState:
    state = _opens(source)
    if state.engaged is None:
        raise SpecError(tr("this magneto is not on an engine: open an installation on the bench first"))
    return state


_BEGUN_WITH = marked(
    "the bench still has the setting it began with, which nobody has read: set plate and screw as they are first"
)


def _set(source: Source) -> BenchState:
    """A setting that somebody made or took over; what a bench begins with is no reading."""
    state = _opens(source)
    if "setting" not in state.touched:
        raise SpecError(tr(_BEGUN_WITH))
    return state


def _found(by_instruments: bool) -> Callable[[Job, Source], Job]:
    def take(job: Job, source: Source) -> Job:
        state = _opens(source)
        if "setting" in state.touched:
            return from_bench.as_found(job, state, source.tools if by_instruments else ())
        engaged = state.engaged
        if engaged is not None and (engaged.left.lamp_read or engaged.right.lamp_read):
            return from_bench.timing_found(job, state)
        raise SpecError(tr(_BEGUN_WITH))

    return take


def _lead(job: Job, source: Source) -> Job:
    if "lead" not in source.state.touched:
        raise SpecError(tr("neither plug nor switch has been moved on the bench yet: the lead has not been tried"))
    return from_bench.switch_lead(job, source.state)


def _side(source: Source) -> Side:
    engaged = _on_engine(source).engaged
    assert engaged is not None
    return engaged.side


def _stops(job: Job, source: Source) -> Job:
    stops = source.stops
    if stops is None:
        raise SpecError(tr("no stop readings were entered yet; they belong on the Engine page of the bench"))
    return from_bench.dead_centre(job, *stops, disc=job.dead_centre.disc)


def _stroke(job: Job, source: Source) -> Job:
    state = _on_engine(source)
    if "crank" not in state.touched:
        raise SpecError(tr("the crank has not been turned on the bench yet: set it as the engine's stands first"))
    return from_bench.stroke(job, state)


def _trials(job: Job, source: Source) -> Job:
    made = source.state.trials
    if not made:
        raise SpecError(tr("no trial has been made on the bench yet; they are noted on its Trials page"))
    return from_bench.trials(
        job, (from_bench.trial(t.backplate_deg, t.gap_low_mm, t.gap_high_mm, t.opening_error_deg) for t in made)
    )


def _planned(job: Job, source: Source) -> Job:
    gap = source.wanted_gap_mm
    return from_bench.planned_setting(job, internal_timing(source.state.magneto).adjust(gap), gap)


def _uncertainty(stage: str) -> Callable[[Job, Source], Job]:
    def take(job: Job, source: Source) -> Job:
        found = source.outcomes
        internal = any(outcome.quantity.key == "gap" for outcome in found)
        if not found or internal != (stage == "internal_timing"):
            raise SpecError(
                tr("the bench's Uncertainty page does not show internal timing; choose it there first")
                if stage == "internal_timing"
                else tr("the bench's Uncertainty page does not show timing to the engine; choose it there first")
            )
        if internal:
            _set(source)
            return from_bench.uncertainty(job, found)
        return from_bench.uncertainty(job, from_bench.of_readings(_on_engine(source), found))

    return take


FEEDS: tuple[Feed, ...] = (
    Feed("bench", marked("Magneto, engine and limits"), "",
         marked("What is on the bench, and the limits its files give"),
         lambda job, s: from_bench.take_bench(job, s.state)),
    Feed("lead", marked("Switch lead as it stands"), "switch_lead",
         marked("What meter and lamp say on the bench with plug and switch as they are now"),
         _lead),
    Feed("stops", marked("Stop readings"), "dead_centre", marked("The two stop readings of the Engine page"), _stops),
    Feed("stroke", marked("Stroke of No. 1 now"), "dead_centre",
         marked("Set the crank before No. 1 fires: its stroke there is noted"), _stroke),
    Feed("found", marked("As found"), "as_found",
         marked("Setting as it was put on the bench, timing as the lamp was read"),
         _found(by_instruments=False)),
    Feed("found-read", marked("As found, by instruments"), "as_found",
         marked("As the instruments chosen on the Uncertainty page read it"),
         _found(by_instruments=True)),
    Feed("contacts", marked("Wear and pips"), "contacts", marked("As they were set on the bench"),
         lambda job, s: from_bench.contacts(job, s.state)),
    Feed("trials", marked("Trials made"), "internal_timing", marked("All trials on the bench's list"), _trials),
    Feed("planned", marked("Setting planned"), "internal_timing",
         marked("Where backplate and screw belong for the gap wanted on the Internal page"), _planned),
    Feed("left", marked("As left"), "internal_timing", marked("The setting as the bench has it now"),
         lambda job, s: from_bench.internal_timing(job, _set(s))),
    Feed("left-read", marked("As left, by instruments"), "internal_timing",
         marked("As the instruments chosen on the Uncertainty page read it"),
         lambda job, s: from_bench.internal_timing(job, _set(s), s.tools)),
    Feed("sure-internal", marked("How sure the setting is"), "internal_timing",
         marked("What the Uncertainty page shows of internal timing"), _uncertainty("internal_timing")),
    Feed("lobes", marked("Every lobe"), "lobes", marked("Opening, gap and dwell of each lobe"),
         lambda job, s: from_bench.lobes(job, _set(s))),
    Feed("marks", marked("Marks as painted"), "marks", marked("How the coupling's marks stand apart"),
         lambda job, s: from_bench.marks(job, s.state)),
    Feed("teeth", marked("Tooth shift planned"), "tooth_shift",
         marked("Reading as found, timing wanted, and the move chosen in the planner, or its first"),
         lambda job, s: from_bench.tooth_plan(job, _on_engine(s), _side(s), s.move)),
    Feed("moved", marked("Tooth shift made"), "tooth_shift",
         marked("Teeth moved; where it fires then, the lamp has to tell"),
         lambda job, s: from_bench.tooth_result(job, _on_engine(s), _side(s))),
    Feed("sync", marked("Synchronising"), "synchronising",
         marked("Where the lamp was read to say that the magnetos fire"),
         lambda job, s: from_bench.synchronising(job, _on_engine(s))),
    Feed("sure-engine", marked("How sure the timing is"), "synchronising",
         marked("What the Uncertainty page shows of timing to the engine"), _uncertainty("synchronising")),
)  # fmt: skip
"""In the order of the stages."""


def feeds_of(page: str) -> tuple[Feed, ...]:
    """The feeds whose result a page shows."""
    return tuple(feed for feed in FEEDS if feed.page == page)
