"""A tooth shift planned, as a document of one page to take to the engine."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from fractions import Fraction
from itertools import groupby

from magview.bench.actions import CheckFirst, ReadLamp, ViewSide, WantTiming
from magview.bench.apply import apply
from magview.bench.conditions import CONDITION_WORDS, conditions_at_opening
from magview.bench.engine_words import move_outside_words, speed_words
from magview.bench.lamp import LOOK_FIRST_CHECKS, refuse_unasked
from magview.bench.lamp_words import LOOK_FIRST, btdc_words, standing_words
from magview.bench.placing import placed
from magview.bench.shift_plan import (
    FACES,
    ShiftPlan,
    act_a,
    act_b,
    check_words,
    start_words,
    with_or_against,
)
from magview.bench.state import BenchState, Engaged, Side, readings
from magview.bench.timing import timing_plan
from magview.bench.tooth_steps import steps_between, tooth_degrees
from magview.drawing.shift_boxes import WIDTH_MM, boxes_svg
from magview.drawing.shift_views import views_svg
from magview.job.document import cautions
from magview.job.parts import FIRING
from magview.job.sheet import CAUTIONS
from magview.job.words import shown
from magview.paper.blocks import (
    BOX,
    Block,
    Document,
    Heading,
    NewPage,
    Paragraph,
    Picture,
    Pictures,
    Table,
    letters,
    working_foot,
)
from magview.paper.sizes import PaperSize
from magview.physics.engine.coupling import Move, crank_advance_deg
from magview.spec.base import SpecError
from magview.spec.engine import Installation
from magview.spec.language import marked, tr
from magview.spec.magneto import Rotation

_TRIED = (
    (66.0, 0), (60.0, 0), (60.0, 1), (54.0, 1), (48.0, 1), (42.0, 1), (36.0, 1), (42.0, 2), (36.0, 2), (30.0, 2),
    (24.0, 2), (24.0, 3),
)  # fmt: skip
"""Height of a view [mm], and how tight the rest is.

1 is without the degrees of a tooth, 2 with paragraphs joined, 3 in small type, for a page with every warning on it.
"""

PLANNING_AID = marked(
    "Planning aid. The manual governs. The work is released by a person who holds the licence for it."
)


def plan_of(state: BenchState, side: Side, move: Move | None = None) -> ShiftPlan:
    """The plan of a bench for one magneto: the planner's first move unless another is given.

    Raises SpecError without an engine, or where the contacts never open and close.
    """
    if state.engaged is None:
        raise SpecError(tr("this magneto is not on an engine: there is no coupling to move"))
    refuse_unasked(state, side)
    chosen = move or next(iter(timing_plan(state, side, most=1)), None)
    if chosen is None:
        raise SpecError(tr("with this setting the contacts never open and close, so there is nothing to plan"))
    engaged = replace(state.engaged, side=side)
    installation, found = engaged.installation, replace(engaged.mounting, magneto_teeth=0, disc_teeth=0)
    flange_from_disc, disc_from_drive = found.marks_apart
    return ShiftPlan(
        installation.disc.magneto_teeth, installation.disc.drive_teeth, engaged.ratio, chosen, found.reads_btdc_deg,
        found.wanted_btdc_deg, installation.engine.timing_tolerance_deg, state.magneto.rotation, state.magneto.name,
        installation.engine.name, "single" if installation.position == "single" else side, flange_from_disc,
        disc_from_drive, tuple(_warnings(state, engaged)), tuple(_conditions(state, engaged)),
    )  # fmt: skip


def plan_from(
    installation: Installation, reads_btdc_deg: float, wanted_btdc_deg: float, move: Move, *,
    checked: bool = False, of_side: Side | None = None,
) -> ShiftPlan:  # fmt: skip
    """The plan of an installation from a reading and the timing wanted [crank deg BTDC].

    `checked`: stroke, mark and finger were looked at. `of_side`: of two magnetos this one, else the file's own.
    Raises SpecError.
    """
    side: Side = of_side or ("right" if installation.position == "right" else "left")
    state = placed(installation)
    for act in (ViewSide(side), ReadLamp(side, reads_btdc_deg), WantTiming(side, wanted_btdc_deg)):
        state = apply(state, act)
    for check in LOOK_FIRST_CHECKS if checked else ():
        state = apply(state, CheckFirst(side, check, True))
    return plan_of(state, side, move)


def plan_typed(
    magneto_teeth: int, drive_teeth: int, rotor_turns_per_crank_turn: float | Fraction, reads_btdc_deg: float,
    wanted_btdc_deg: float, move: Move, *, tolerance_deg: float | None = None, rotation: Rotation | None = None,
    name: str = "", position: str = "",
) -> ShiftPlan:  # fmt: skip
    """The plan of a coupling by its teeth and speed ratio alone: no cam, no file. Angles in crank degrees BTDC."""
    return ShiftPlan(
        magneto_teeth, drive_teeth, rotor_turns_per_crank_turn, move, reads_btdc_deg, wanted_btdc_deg, tolerance_deg,
        rotation, name, position=position,
    )  # fmt: skip


def shift_documents(plan: ShiftPlan, size: PaperSize = "a4") -> Iterator[Document]:
    """The page with room, then ever tighter: the first that a page holds is the one to print."""
    for view_mm, tight in _TRIED:
        yield Document(
            plan.title, working_foot(plan.title), tuple(shift_blocks(plan, view_mm, tight)), size, grey=True
        )


def pair_documents(left: ShiftPlan, right: ShiftPlan, size: PaperSize = "a4") -> Iterator[Document]:
    """A page for each of two magnetos, with room, then ever tighter: the first of two pages is the one to print."""
    title = tr("Tooth-shift plans, left and right")
    for view_mm, tight in _TRIED:
        pages = *shift_blocks(left, view_mm, tight), NewPage(), *shift_blocks(right, view_mm, tight)
        yield Document(title, working_foot(title), pages, size, grey=True)


def shift_blocks(plan: ShiftPlan, view_mm: float, tight: int = 0) -> Iterator[Block]:
    """The blocks of one plan, each view so high; a sheet of both magnetos may take them as they are."""
    blocks = _blocks(plan, view_mm, tight)
    if tight > 2:
        blocks = (replace(b, kind="small") if isinstance(b, Paragraph) and b.kind == "plain" else b for b in blocks)
    return _joined(blocks) if tight > 1 else blocks


def _joined(blocks: Iterator[Block]) -> Iterator[Block]:
    """The same words with less room between them: paragraphs of a kind that follow one another are one."""
    for kind, group in groupby(blocks, lambda block: block.kind if isinstance(block, Paragraph) else None):
        if kind is None:
            yield from group
        else:
            yield Paragraph("  ".join(letters(block.text) for block in group if isinstance(block, Paragraph)), kind)


def _blocks(plan: ShiftPlan, view_mm: float, tight: int) -> Iterator[Block]:
    yield Heading(_title(plan), 1, mark=_aim(plan))
    yield Paragraph(_identity(), "small")
    if plan.magneto or plan.engine:
        yield Paragraph(" · ".join(filter(None, (tr(plan.magneto), tr(plan.engine)))), "small")
    yield Paragraph(_warning(), "warning")
    yield cautions(*((tr(LOOK_FIRST),) if plan.far_off else ()))
    yield from (Paragraph(words, "warning") for words in all_warnings(plan))
    if not plan.moves:
        yield Paragraph(tr("Leave the teeth alone."), "warning")
    else:
        yield from _moves(plan, view_mm, tight)
    yield from _afterwards(plan)


def _title(plan: ShiftPlan) -> str:
    if plan.position in ("left", "right"):
        return (
            tr("Tooth-shift plan: left magneto") if plan.position == "left" else tr("Tooth-shift plan: right magneto")
        )
    return tr("Tooth-shift plan")


def _aim(plan: ShiftPlan) -> str:
    if plan.tolerance_deg is None:
        return shown(FIRING, plan.wanted_btdc_deg)
    return f"{shown(FIRING, plan.wanted_btdc_deg)}, {tr('±{tolerance}°', tolerance=plan.tolerance_deg)}"


def _identity() -> str:
    line = "_" * 9
    return tr(
        "Registration {line} Engine, serial {line} Hours {line} Magneto, serial {line} Manual, page {line} "
        "Date {line}",
        line=line,
    )  # fmt: skip


def _warning() -> str:
    return kept_together(
        tr(
            "WARNING Treat the propeller as live, by both magnetos. {box} switch OFF {box} left lead proved "
            "{box} right lead proved {box} plugs out, leads grounded {box} chocks, arc clear",
            box=BOX,
        )
    )


def kept_together(words: str) -> str:
    """Words whose boxes do not part from what follows them."""
    return words.replace(f"{BOX} ", f"{BOX}\u00a0")


def safety_words() -> tuple[str, ...]:
    """The warning with its boxes, and every caution."""
    return _warning(), *(tr(caution) for caution in CAUTIONS)


def unknown_rotation_words() -> str:
    """Said in place of arrows."""
    return kept_together(
        tr(
            "Rotation not given, so no arrows: find which way the magneto turns as you stand at the engine, and mark "
            "it. WITH is that way. {box} ↻ {box} ↺",
            box=BOX,
        )
    )


def all_warnings(plan: ShiftPlan) -> tuple[str, ...]:
    """Warnings that stand over the numbers, the plan's own among them."""
    outside = "" if plan.tolerance_deg is None else move_outside_words(plan.move, plan.tolerance_deg)
    if not outside:
        return plan.warnings
    return (tr("✗ This move does not reach it: {outside}.", outside=outside), *plan.warnings)


def _warnings(state: BenchState, engaged: Engaged) -> Iterator[str]:
    if not readings(state).within_limits:
        yield tr("⚠ The internal timing is out of limits: put that right first, no tooth makes up for it.")
    mismatch = speed_words(engaged.installation)
    if mismatch:
        yield tr("⚠ The installation does not fit together: {mismatch}.", mismatch=mismatch)
    if doubt := standing_words(state, engaged.side):
        yield doubt


def _conditions(state: BenchState, engaged: Engaged) -> Iterator[tuple[str, bool]]:
    found = replace(engaged.mounting, magneto_teeth=0, disc_teeth=0)
    as_found = replace(engaged, left=found) if engaged.side == "left" else replace(engaged, right=found)
    for one in conditions_at_opening(replace(state, engaged=as_found), engaged.side) or ():
        yield tr(CONDITION_WORDS[one.condition]), one.met


def _moves(plan: ShiftPlan, view_mm: float, tight: int) -> Iterator[Block]:
    yield Paragraph(before_words())
    if plan.rotation is None:
        yield Heading(tr("As you stand at the engine. First all of A, then B"), 3)
    else:
        yield Heading(tr("Both large arrows: as you stand at the engine. First all of A, then B"), 3)
    yield Pictures((Picture(WIDTH_MM, boxes_svg(plan)),))
    if plan.rotation is None:
        yield Paragraph(unknown_rotation_words(), "warning")
    heads = (tr("A disc: {way}", way=_short(plan, 0)), tr("B magneto flange: {way}", way=_short(plan, 1)))
    yield Table(heads, ((f"{BOX} {act_a(plan)}", f"{BOX} {act_b(plan)}"),), (1.0, 1.0))
    if plan.rotation is not None:
        yield Pictures((Picture(WIDTH_MM, views_svg(plan, view_mm)),))
    yield Paragraph(f"{start_words(plan)} {tr('Check by the paint:')} {check_words(plan)}")
    yield Paragraph(in_hand_words(), "small")
    if not tight:
        yield Paragraph(tooth_degrees(plan.magneto_teeth, plan.drive_teeth, plan.rotor_turns_per_crank_turn), "small")
    yield Paragraph(each_words(plan), "small")


def _short(plan: ShiftPlan, face: int) -> str:
    return f"{abs(plan.teeth(FACES[face]))} {with_or_against(plan.teeth(FACES[face]))}"


def before_words() -> str:
    """Boxes before the first tooth."""
    return kept_together(
        tr(
            "The crank stays where it is. {box} No. 1 on compression {box} crank came with rotation {box} paint on "
            "all three {box} play taken up. {box} A second person holds the rotor",
            box=BOX,
        )
    )


def in_hand_words() -> str:
    """Two ways for the magneto flange while the disc is moved."""
    return tr(
        "Magneto slid back but in mesh: the magneto flange goes with the disc. Magneto off: count B from the paint "
        "on the disc."
    )


def each_words(plan: ShiftPlan) -> str:
    """The lamp expected after each tooth, while the magneto flange goes with the disc."""
    told = after_each(plan)
    parts = [f"{face}: {', '.join(btdc_words(angle) for angle in told[face])}" for face in FACES if told[face]]
    return tr("Expected after each tooth, magneto flange in mesh: {readings}.", readings="; ".join(parts))


def after_each(plan: ShiftPlan) -> dict[str, list[float]]:
    """The lamp expected after each tooth [crank deg BTDC]: all of A, then B."""
    told: dict[str, list[float]] = {face: [] for face in FACES}
    for step in steps_between((0, 0), (plan.move.magneto_teeth, plan.move.disc_teeth)):
        advance = crank_advance_deg(
            plan.magneto_teeth, plan.drive_teeth, step.magneto_teeth, step.disc_teeth, plan.rotor_turns_per_crank_turn
        )
        told["A" if step.face == "disc" else "B"].append(plan.reads_btdc_deg + advance)
    return told


def _afterwards(plan: ShiftPlan) -> Iterator[Block]:
    if plan.conditions:
        judged = " ".join(f"{'✓' if met else '✗'} {name}" for name, met in plan.conditions)
        again = " ".join(f"{BOX} {name}" for name, _ in plan.conditions)
        words = tr("When No. 1's contacts open, as found: {judged}. Afterwards: {again}.", judged=judged, again=again)
        yield Paragraph(words, "small")
    else:
        names = " ".join(f"{BOX} {tr(name)}" for name in CONDITION_WORDS.values())
        yield Paragraph(tr("When No. 1's contacts open, look at all four: {again}.", again=names), "small")
    yield Heading(expected_words(plan), 3)
    yield Paragraph(closing_words())
    yield Paragraph(
        tr(
            "Lamp reads afterwards ________°  Not in limits? Second move: A ____ with / against  "
            "B ____ with / against"
        )
    )
    yield Paragraph(tr("Name ______________  Checked by another person ______________  Date ________"))
    yield Paragraph(tr(PLANNING_AID), "small")


def expected_words(plan: ShiftPlan) -> str:
    """The reading expected in the end, with the reading as found."""
    return tr(
        "Then the lamp must read {after} (was {before})",
        before=btdc_words(plan.reads_btdc_deg), after=shown(FIRING, round(plan.move.result_btdc_deg, 9)),
    )  # fmt: skip


def closing_words() -> str:
    """Boxes after the last tooth."""
    return kept_together(
        tr(
            "{box} Tightened and secured. {box} Plugs out, arc clear: jumper off for the reading alone. "
            "{box} Lamp read again, the propeller turned with rotation to take up the play. {box} Jumper on again. "
            "The new reading counts, not the expected one. {box} At closing: jumper off for good. "
            "{box} After closing: each switch lead proved again.",
            box=BOX,
        )
    )
