"""The drawings of a sheet on paper: the breaker end and the coupling, as found and as left."""

from __future__ import annotations

import math
from collections.abc import Iterator
from typing import Literal

from magview.bench.state import BenchState, Mounting, readings
from magview.bench.words import breaker_end_sense, direction_word
from magview.drawing import svg
from magview.drawing.coupling_on_paper import coupling_svg
from magview.job.from_bench import bench_as
from magview.job.parts import FIRING, LENGTH, MARK, MOVED, OPENING
from magview.job.sheet import Job
from magview.job.words import shown
from magview.paper.blocks import Block, Heading, Paragraph, Picture, Pictures
from magview.spec.base import SpecError
from magview.spec.language import marked, tr

BREAKER_MM, _COUPLING_MM = 86.0, 68.0
"""Width of a drawing on paper."""

_SAME_MM = 0.0005
"""Gaps are written to a thousandth of a millimetre."""

Side = Literal["as found", "as left"]
_SIDES: dict[Side, str] = {"as found": marked("As found"), "as left": marked("As left")}
_BREAKER_END: dict[Side, str] = {
    "as found": marked("Breaker end as found"),
    "as left": marked("Breaker end as left"),
}
_COUPLING: dict[Side, str] = {"as found": marked("Coupling as found"), "as left": marked("Coupling as left")}


def pictures(job: Job) -> Iterator[Block]:
    """Breaker end and coupling as found and as left, as far as the sheet has what they are drawn from."""
    try:
        drawn = {stage: p for stage in ("as_found", "internal_timing") if (p := _breaker(job, stage)) is not None}
        couplings = _couplings(job)
    except (SpecError, ValueError) as error:
        yield Paragraph(tr("No drawings: {error}", error=error), "small")
        return
    if drawn:
        yield Heading(tr(_BREAKER_ENDS[tuple(drawn)]), 3)
        yield Pictures(tuple(drawn.values()))
    if couplings:
        yield Heading(tr("As found and as left: coupling, seen from the drive end"), 3)
        yield Pictures(couplings[0])
        yield Paragraph(couplings[1], "small")


_BREAKER_ENDS = {
    ("as_found", "internal_timing"): marked("As found and as left: breaker end, contacts just opening"),
    ("as_found",): marked("As found: breaker end, contacts just opening"),
    ("internal_timing",): marked("As left: breaker end, contacts just opening"),
}
"""Over the drawings, by which there are."""


def _breaker(job: Job, stage: str) -> Picture | None:
    state = bench_as(job, stage)
    if state is None:
        return None
    side: Side = "as found" if stage == "as_found" else "as left"
    setting = getattr(job, stage)
    told = [
        tr("backplate {angle:+deg}", angle=setting.backplate_deg),
        tr("contact screw {angle:+deg}", angle=setting.screw_deg),
    ]
    if setting.opening_error_deg is not None:
        opens = shown(OPENING, setting.opening_error_deg)
        told.append(tr("opens {angle} against the E-gap", angle=opens))
    if setting.gap_mm is not None:
        told.append(tr("largest gap {gap}", gap=shown(LENGTH, setting.gap_mm)))
    drawn = readings(state)
    drawn_mm, offset_mm = float(drawn.max_gap_mm[0]), float(drawn.mark_offset_mm)
    if setting.mark_offset_mm is not None and _elsewhere(offset_mm, setting.mark_offset_mm):
        told.append(
            tr(
                "straightedge {read}; drawn is the opening that plate and screw give, {drawn}",
                read=shown(MARK, setting.mark_offset_mm),
                drawn=shown(MARK, offset_mm),
            )
        )
    # A sheet holds what a blade reads over the pip; older ones took the true gap from the bench.
    gaps_mm = drawn_mm, float(drawn.blade_gap_mm[0])
    if setting.gap_mm is not None and min(abs(gap - setting.gap_mm) for gap in gaps_mm) >= _SAME_MM:
        told.append(tr("drawn is the gap that plate and screw give, {gap}", gap=shown(LENGTH, drawn_mm)))
    seen = (
        tr("Seen from the breaker end, rotation clockwise.")
        if breaker_end_sense(state.magneto) > 0
        else tr("Seen from the breaker end, rotation anticlockwise.")
    )
    caption = f"{tr(_SIDES[side])}: {', '.join(told)}. {seen}"
    return Picture(BREAKER_MM, svg.breaker_svg(state, tr(_BREAKER_END[side])), caption=caption)


def _elsewhere(drawn_mm: float, read_mm: float) -> bool:
    """Whether the straightedge drawn stands beside the mark otherwise than it was read [mm], as one would see."""
    other_side = drawn_mm * read_mm < 0 and min(abs(drawn_mm), abs(read_mm)) >= _SEEN_MM
    return math.isfinite(drawn_mm) and (other_side or abs(drawn_mm - read_mm) >= _OFF_MM)


_SEEN_MM, _OFF_MM = 0.05, 0.3
"""At the rim: what is seen as beside the mark at all, and what is more than a rule's half division."""


def _couplings(job: Job) -> tuple[tuple[Picture, Picture], str] | None:
    """The coupling as found and as left, and what is said of both."""
    shift, state = job.tooth_shift, bench_as(job, "internal_timing") or bench_as(job, "as_found")
    if state is None or state.engaged is None or shift.moved_magneto_teeth is None or shift.moved_disc_teeth is None:
        return None
    found = _coupling(job, state, "as found", 0, 0)
    left = _coupling(job, state, "as left", shift.moved_magneto_teeth, shift.moved_disc_teeth)
    return (found, left), how_drawn(state)


def _coupling(job: Job, state: BenchState, side: Side, magneto: int, disc: int) -> Picture:
    assert state.engaged is not None
    mounting = Mounting(
        0.0, 0.0, 0.0, magneto, disc, job.marks.magneto_from_disc_teeth or 0, job.marks.disc_from_drive_teeth or 0
    )
    fires = job.tooth_shift.reads_btdc_deg if side == "as found" else job.tooth_shift.result_btdc_deg
    rotation = state.magneto.rotation
    told = [
        tr("magneto flange {teeth}", teeth=shown(MOVED, magneto, rotation=rotation)),
        tr("disc {teeth}", teeth=shown(MOVED, disc, rotation=rotation)),
    ]
    if fires is not None:
        told.append(tr("fires {angle}", angle=shown(FIRING, fires)))
    caption = f"{tr(_SIDES[side])}: {', '.join(told)}."
    drawn = coupling_svg(state, state.engaged, mounting, tr(_COUPLING[side]))
    return Picture(_COUPLING_MM, drawn, caption=caption)


def how_drawn(state: BenchState) -> str:
    """Note under every picture of the coupling."""
    seen = tr("Seen from the drive end, rotation {way}.", way=direction_word(1, state.magneto.rotation, "drive end"))
    return f"{seen} {tr('Thick lines: the painted marks.')}"
