"""A tooth shift planned, as a document of one page to take to the engine."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from itertools import zip_longest

from magview.bench.actions import CheckFirst, ReadLamp, ViewSide, WantTiming
from magview.bench.apply import apply
from magview.bench.conditions import CONDITION_WORDS, conditions_at_opening
from magview.bench.engine_words import move_outside_words, speed_words
from magview.bench.lamp import LOOK_FIRST_CHECKS, look_first, refuse_unasked
from magview.bench.lamp_words import LOOK_FIRST, standing_words
from magview.bench.placing import placed
from magview.bench.state import BenchState, Engaged, Mounting, Side, readings
from magview.bench.timing import timing_plan
from magview.bench.tooth_steps import steps_between, tooth_degrees
from magview.bench.words import direction_word, teeth_words, turned_words, way_words
from magview.drawing.coupling_on_paper import coupling_svg
from magview.job.document import POSITIONS, cautions
from magview.job.paper_pictures import how_drawn
from magview.job.parts import FIRING
from magview.job.words import shown
from magview.paper.blocks import (
    BOX,
    Block,
    Document,
    Heading,
    Paragraph,
    Picture,
    Pictures,
    SignatureLines,
    Table,
    working_foot,
)
from magview.paper.sizes import PaperSize
from magview.physics.engine.coupling import (
    Move,
    crank_advance_deg,
    mesh,
    rotor_shift_deg,
)
from magview.spec.base import SpecError
from magview.spec.engine import Installation
from magview.spec.language import format_angle, tr

_TRIED = (
    (83.0, False), (76.0, False), (68.0, False), (61.0, False),
    (61.0, True), (50.0, True), (40.0, True), (32.0, True), (28.0, True),
)  # fmt: skip
"""Width of a picture [mm], and whether the rest is tight."""

_PIXELS_A_MM = 3.62
"""Of a picture, so that type is of one size in all."""


@dataclass(frozen=True)
class ShiftPlan:
    """A move of one magneto's coupling from as found, on a bench that has an engine."""

    state: BenchState
    engaged: Engaged
    """The state's, with the magneto that is moved in view."""
    move: Move

    @property
    def found(self) -> Mounting:
        """The teeth as found, the painted marks where they then stand."""
        return replace(self.engaged.mounting, magneto_teeth=0, disc_teeth=0)

    @property
    def wanted(self) -> Mounting:
        """The teeth as wanted."""
        return self.after(self.move.magneto_teeth, self.move.disc_teeth)

    def after(self, magneto_teeth: int, disc_teeth: int) -> Mounting:
        """So many teeth from as found, positive with rotation."""
        return replace(self.found, magneto_teeth=magneto_teeth, disc_teeth=disc_teeth)

    @property
    def title(self) -> str:
        """The title of the page."""
        return tr("Tooth-shift plan: {magneto}", magneto=tr(self.state.magneto.name))


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
    return ShiftPlan(state, replace(state.engaged, side=side), chosen)


def plan_from(
    installation: Installation, reads_btdc_deg: float, wanted_btdc_deg: float, move: Move, *, checked: bool = False
) -> ShiftPlan:
    """The plan of an installation from a reading and the timing wanted [crank deg BTDC].

    `checked`: stroke, mark and finger were looked at. Raises SpecError.
    """
    side: Side = "right" if installation.position == "right" else "left"
    state = placed(installation)
    for act in (ViewSide(side), ReadLamp(side, reads_btdc_deg), WantTiming(side, wanted_btdc_deg)):
        state = apply(state, act)
    for check in LOOK_FIRST_CHECKS if checked else ():
        state = apply(state, CheckFirst(side, check, True))
    return plan_of(state, side, move)


def shift_documents(plan: ShiftPlan, size: PaperSize = "a4") -> Iterator[Document]:
    """The page with room, then ever tighter: the first that a page holds is the one to print."""
    for picture_mm, tight in _TRIED:
        blocks = tuple(_blocks(plan, picture_mm, tight))
        yield Document(plan.title, working_foot(plan.title), blocks, size, grey=True)


def _blocks(plan: ShiftPlan, picture_mm: float, tight: bool) -> Iterator[Block]:
    yield Heading(tr("Tooth-shift plan"), 1)
    yield cautions(*((tr(LOOK_FIRST),) if look_first(plan.state, plan.engaged.side) else ()))
    yield _what(plan)
    yield from _warnings(plan)
    yield _move(plan)
    yield _pictures(plan, picture_mm)
    slots = tr("The slots are those of the disc's marked tooth.")
    yield Paragraph(f"{how_drawn(plan.state)} {slots}", "small")
    yield _degrees(plan, tight)
    yield from _steps(plan)
    yield from _four(plan)
    yield from _afterwards()


def _what(plan: ShiftPlan) -> Table:
    engaged, state, move = plan.engaged, plan.state, plan.move
    engine, position = engaged.installation.engine, engaged.installation.position
    side = position if position == "single" else engaged.side
    turns = direction_word(1, state.magneto.rotation, "drive end")
    tolerance = tr("±{tolerance}°", tolerance=engine.timing_tolerance_deg)
    rows = (
        (tr("Magneto"), f"{tr(state.magneto.name)}, {tr(POSITIONS[side])}"),
        (tr("Rotation"), tr("{way} seen from the drive end", way=turns)),
        (tr("Engine"), tr(engine.name)),
        (tr("Teeth"), tr("{magneto} at the magneto, {drive} at the drive",
                         magneto=engaged.installation.disc.magneto_teeth,
                         drive=engaged.installation.disc.drive_teeth)),
        (tr("Lamp reads"), shown(FIRING, engaged.mounting.reads_btdc_deg)),
        (tr("Wanted"), f"{shown(FIRING, engaged.mounting.wanted_btdc_deg)}, {tolerance}"),
        (tr("Expected"), shown(FIRING, round(move.result_btdc_deg, 9))),
        (tr("Off by"), format_angle(move.residual_deg, True)),
    )  # fmt: skip
    pairs = zip(rows[::2], rows[1::2], strict=True)
    return Table((), tuple((*left, *right) for left, right in pairs), (1.4, 3.1, 1.3, 3.2))


def _move(plan: ShiftPlan) -> Table:
    rotation, move = plan.state.magneto.rotation, plan.move
    rows = (
        (tr("A disc on the drive flange"), teeth_words(move.disc_teeth, rotation, "drive end")),
        (tr("B magneto flange on the disc"), teeth_words(move.magneto_teeth, rotation, "drive end")),
    )
    return Table((), rows, (1.4, 2.2), frozenset((0, 1)))  # what is done must catch the eye


def _warnings(plan: ShiftPlan) -> Iterator[Block]:
    state, engaged, side = plan.state, plan.engaged, plan.engaged.side
    outside = move_outside_words(plan.move, engaged.installation.engine.timing_tolerance_deg)
    if outside:
        yield Paragraph(tr("✗ This move does not reach it: {outside}.", outside=outside), "warning")
    if not readings(state).within_limits:
        words = tr("⚠ The internal timing is out of limits: put that right first, no tooth makes up for it.")
        yield Paragraph(words, "warning")
    mismatch = speed_words(engaged.installation)
    if mismatch:
        yield Paragraph(tr("⚠ The installation does not fit together: {mismatch}.", mismatch=mismatch), "warning")
    if doubt := standing_words(state, side):
        yield Paragraph(doubt, "warning")


def _pictures(plan: ShiftPlan, width_mm: float) -> Pictures:
    found = []
    for title, at in ((tr("Coupling as found"), plan.found), (tr("Coupling as wanted"), plan.wanted)):
        magneto, drive = _slots(plan, at)
        where = tr("magneto slot {magneto}, drive slot {drive}", magneto=magneto, drive=drive)
        drawn = coupling_svg(plan.state, plan.engaged, at, title, round(_PIXELS_A_MM * width_mm))
        found.append(Picture(width_mm, drawn, caption=f"{title}: {where}."))
    return Pictures(tuple(found))


def _degrees(plan: ShiftPlan, tight: bool) -> Block:
    coupling, ratio = plan.engaged.installation.disc, plan.engaged.ratio
    magneto, drive = coupling.magneto_teeth, coupling.drive_teeth
    if tight:
        return Paragraph(tooth_degrees(magneto, drive, ratio), "small")

    def row(words: str, sum_words: str, i: int, j: int) -> tuple[str, str, str]:
        rotor, crank = rotor_shift_deg(magneto, drive, i, j), crank_advance_deg(magneto, drive, i, j, ratio)
        return words, f"{sum_words} = {format_angle(rotor, digits=3)}", format_angle(crank, digits=3)

    rows = (
        row(tr("A disc on the drive flange"), f"360°/{drive}", 0, 1),
        row(tr("B magneto flange on the disc"), f"360°/{magneto}", 1, 0),
        row(tr("A one against, B one with rotation"), f"360°/{magneto} − 360°/{drive}", 1, -1),
    )
    head = (tr("One tooth with rotation, so much earlier"), tr("at the rotor"), tr("at the crank"))
    return Table(head, rows, (4.6, 3.2, 1.4), align="lrr")


def _steps(plan: ShiftPlan) -> Iterator[Block]:
    yield Heading(tr("One tooth at a time, seen from the drive end: check the slot, then tick"), 3)
    # All steps at one face go the same way.
    disc = _face_words(plan, tr("A disc on the drive flange"), plan.move.disc_teeth)
    flange = _face_words(plan, tr("B magneto flange on the disc"), plan.move.magneto_teeth)
    head = (disc, tr("Drive slot")), (flange, tr("Magneto slot"))
    halves = (0.45, 0.6, 4.9, 1.4)
    rows = tuple((*left, *right) for left, right in _step_rows(plan))
    yield Table(("", "", *head[0], "", "", *head[1]), rows, (*halves, *halves))


def _face_words(plan: ShiftPlan, face: str, teeth: int) -> str:
    if teeth == 0:
        return face
    each = turned_words(1 if teeth > 0 else -1, plan.state.magneto.rotation, "drive end")
    return tr("{face}: {each}", face=face, each=each)


Half = tuple[str, str, str, str]
"""One step: a box, its number, what to do, the slot to check."""


def _step_rows(plan: ShiftPlan) -> list[tuple[Half, Half]]:
    """Steps of A, the disc, at the left and of B, the magneto flange, at the right, each down in their order.

    A step at one face leaves the other face's slot as it is, so that one slot is checked with each.
    """
    none: Half = ("", "", "", "")
    found = tr("as found, marks painted")
    magneto, drive = _slots(plan, plan.found)
    disc: list[Half] = [(BOX, "", found, drive)]
    flange: list[Half] = [(BOX, "", found, magneto)]
    for place, step in enumerate(steps_between((0, 0), (plan.move.magneto_teeth, plan.move.disc_teeth)), 1):
        magneto, drive = _slots(plan, plan.after(step.magneto_teeth, step.disc_teeth))
        words = way_words(step.teeth)
        if step.face == "disc":
            disc.append((BOX, f"{place}.", words, drive))
        else:
            flange.append((BOX, f"{place}.", words, magneto))
    return list(zip_longest(disc, flange, fillvalue=none))


def _slots(plan: ShiftPlan, at: Mounting) -> tuple[str, str]:
    """The slots that the disc's marked tooth sits in: of the magneto flange, of the drive flange."""
    coupling = plan.engaged.installation.disc
    now = mesh(coupling.magneto_teeth, coupling.drive_teeth, *at.marks_apart)
    return (
        tr("{slot} of {teeth}", slot=now.magneto_slots[0] + 1, teeth=coupling.magneto_teeth),
        tr("{slot} of {teeth}", slot=now.drive_slots[0] + 1, teeth=coupling.drive_teeth),
    )


def _four(plan: ShiftPlan) -> Iterator[Block]:
    """The four conditions by the readings as found, and boxes to look at them again."""
    found = conditions_at_opening(replace(plan.state, engaged=_as_found(plan)), plan.engaged.side)
    if found is None:
        return
    names = [tr(CONDITION_WORDS[one.condition]) for one in found]
    judged = " ".join(f"{'✓' if one.met else '✗'} {name}" for one, name in zip(found, names, strict=True))
    again = " ".join(f"{BOX} {name}" for name in names)
    words = tr("When No. 1's contacts open, as found: {judged}. Afterwards: {again}.", judged=judged, again=again)
    yield Paragraph(words, "small")


def _as_found(plan: ShiftPlan) -> Engaged:
    if plan.engaged.side == "left":
        return replace(plan.engaged, left=plan.found)
    return replace(plan.engaged, right=plan.found)


def _afterwards() -> Iterator[Block]:
    yield Paragraph(
        tr(
            "{box} Tightened and secured. {box} Plugs out, arc clear: jumper off for the reading alone. "
            "{box} Lamp read again, the propeller turned with rotation to take up the play. {box} Jumper on again. "
            "The new reading counts, not the expected one. {box} At closing: jumper off for good. "
            "{box} After closing: each switch lead proved again.",
            box=BOX,
        )
    )
    yield SignatureLines((
        (tr("Lamp reads afterwards, ° before top dead centre"), ""), (tr("Name"), ""), (tr("Date"), ""),
        (tr("Signature"), ""),
    ))  # fmt: skip
