"""The bench's tray: where each instrument lies, where it can go, and what it says there.

Straightedge, light and blades change nothing on the bench, so they are no part of its state: `Lying` says where they
are. Jumper and screws are of the bench, and go by its actions.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

from magview.bench.actions import Action, FitJumper, TightenClamps, TightenLock, TurnBackplate, TurnScrew
from magview.bench.apply import apply
from magview.bench.easing import STEPS_DEG, Eased, ease
from magview.bench.lead_words import LAMPS
from magview.bench.state import BenchState, gap_now_mm, lamp_burns_now
from magview.bench.tray import ON_THE_MAGNETO, Item, Spot, Thing, meter_spots, screw_spots
from magview.spec.base import SpecError
from magview.spec.language import marked, tr


@dataclass(frozen=True)
class Lying:
    """Instruments that are at the magneto."""

    straightedge: bool = True
    lamp: bool = False
    blades_mm: float | None = None
    """Thickness of the blades held at the contacts [mm]; None for none."""
    meter: str = ""
    """Place that a meter reads at; empty while it does not."""
    stop: bool = False
    """Whether the piston stop is in the plug hole of No. 1."""


STOP_REACH_DEG = 30.0
"""Angle from top dead centre at which the bench's piston stop meets the piston [crank deg]."""


def bench_things(state: BenchState, lying: Lying) -> tuple[Item, ...]:
    """Everything on the bench's tray now, by number."""
    on, engine = tr(ON_THE_MAGNETO), state.engaged is not None
    no_engine = "" if engine else tr(marked("no engine"))

    def laid(thing: Thing, there: bool, spot: Spot, remark: str = "") -> Item:
        return Item(thing, () if there else (spot,), on if there else "", remark=remark)

    return (
        laid(Thing.STRAIGHTEDGE, lying.straightedge, Spot("step", tr("along the step"), "step")),
        laid(Thing.LAMP, lying.lamp, Spot("lamp", tr("across the contacts"), "contacts"), tr(LAMPS[state.lamp_kind])),
        Item(Thing.BLADES, (Spot("contacts", tr("between the contacts"), "contacts"),)),
        Item(Thing.METER, meter_spots()),
        laid(Thing.JUMPER, state.lead.jumper, Spot("jumper", tr("terminal to ground"))),
        Item(Thing.SCREWDRIVER, screw_spots(state)),
        Item(Thing.STOP, on=tr("in No. {n}", n=1) if lying.stop and engine else "", why_not=no_engine),
        Item(Thing.DISC, on=tr("on the crank") if engine else "", why_not=no_engine),
    )


def lying_after(lying: Lying, thing: Thing, there: bool) -> Lying:
    """Places of things once straightedge, light or piston stop is put where it is used, or taken back."""
    match thing:
        case Thing.STRAIGHTEDGE:
            return replace(lying, straightedge=there)
        case Thing.STOP:
            return replace(lying, stop=there)
    return replace(lying, lamp=there)


def with_meter(lying: Lying, spot: str) -> Lying:
    """Places of things once the meter reads at a place; empty: taken away."""
    return replace(lying, meter=spot)


def with_blades(lying: Lying, thick_mm: float | None) -> Lying:
    """Places of things once blades so thick [mm] are held at the contacts; None: taken away."""
    return replace(lying, blades_mm=thick_mm)


def bench_act(state: BenchState, thing: Thing, spot: str) -> Action | None:
    """The bench's action that putting a thing at a place is, if it is one."""
    match thing, spot:
        case Thing.JUMPER, _:
            return FitJumper(not state.lead.jumper)
        case Thing.SCREWDRIVER, "lock":
            return TightenLock(not state.lock_tight)
        case Thing.SCREWDRIVER, "clamps":
            return TightenClamps(not state.clamps_tight)
    return None


def blades_go(state: BenchState, thick_mm: float) -> bool:
    """Whether blades go between the contacts as the rotor stands; a pip is in their way."""
    return thick_mm <= gap_now_mm(state) - state.magneto.condition.pip_height_mm + 1e-9


def blades_words(state: BenchState, blades: str, thick_mm: float) -> str:
    """Result of trying blades, in words."""
    if not gap_now_mm(state):
        return tr("At the contacts: {blades} stops, they are closed", blades=blades)
    if blades_go(state, thick_mm):
        return tr("At the contacts: {blades} goes", blades=blades)
    return tr("At the contacts: {blades} stops", blades=blades)


def eased_to_lamp(state: BenchState, lying: Lying, hand: str, forward: bool) -> Action:
    """The turn of backplate or contact screw, small step by small step, by which the light changes or it stops.

    Raises SpecError where the light is not clipped on, where the rotor is in hand, or where a screw holds the part.
    """
    if not lying.lamp:
        raise SpecError(
            tr("the timing light lies on the tray: clip it across the contacts first, with T, 2, then Return")
        )
    parts: dict[str, Eased] = {"plate": "plate", "screw": "screw"}
    if hand not in parts:
        raise SpecError(
            tr("the rotor is in hand: take the backplate (2) or the contact screw (3), or run the rotor with Run")
        )
    by = (1.0 if forward else -1.0) * STEPS_DEG[parts[hand]]

    def turned(now: BenchState) -> Action:
        return TurnBackplate(now.backplate_deg + by) if hand == "plate" else TurnScrew(now.screw_deg + by)

    after = ease(state, lambda now: apply(now, turned(now)), lamp_burns_now)
    return TurnBackplate(after.backplate_deg) if hand == "plate" else TurnScrew(after.screw_deg)
