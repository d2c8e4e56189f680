"""Instruments on a tray, as values: which things there are, where each can go, where each is, and the right hand.

The left hand holds the rotor; the right hand holds one thing, or some blades together. Who offers a tray says for
each thing where it can go now, or why it does not belong here.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace
from enum import StrEnum

from magview.bench.blades import MOST_BLADES
from magview.bench.state import BenchState
from magview.spec.language import marked, tr


class Thing(StrEnum):
    """A kind of thing on a tray."""

    STRAIGHTEDGE = "straightedge"
    LAMP = "lamp"
    BLADES = "blades"
    METER = "meter"
    JUMPER = "jumper"
    SCREWDRIVER = "screwdriver"
    STOP = "stop"
    DISC = "disc"


NUMBERS: dict[Thing, int] = {thing: number for number, thing in enumerate(Thing, 1)}
"""The key that takes each thing in hand; the same on every tray."""

NAMES: dict[Thing, str] = {
    Thing.STRAIGHTEDGE: marked("Straightedge"),
    Thing.LAMP: marked("Timing light"),
    Thing.BLADES: marked("Feeler blades"),
    Thing.METER: marked("Meter"),
    Thing.JUMPER: marked("Jumper"),
    Thing.SCREWDRIVER: marked("Screwdrivers"),
    Thing.STOP: marked("Piston stop"),
    Thing.DISC: marked("Crank disc"),
}


@dataclass(frozen=True)
class Spot:
    """A place where a thing can be put."""

    name: str
    words: str
    """The act of putting it there, for the place's own label."""
    part: str = ""
    """The part of the breaker end that it is at; empty for a place beside the picture."""


@dataclass(frozen=True)
class Item:
    """A thing as it lies on the tray now."""

    thing: Thing
    spots: tuple[Spot, ...] = ()
    """Places that it can go to now, the likeliest first."""
    on: str = ""
    """Place where it is in use, in words; empty while it lies on the tray."""
    why_not: str = ""
    """Reason that it does not belong here, in words; then it goes nowhere."""
    remark: str = ""
    """Something to be known of it, such as how a light burns."""

    @property
    def name(self) -> str:
        """Its name."""
        return tr(NAMES[self.thing])


@dataclass(frozen=True)
class RightHand:
    """Contents of the right hand: nothing, one thing, or up to three blades of one set."""

    thing: Thing | None = None
    blades: tuple[float, ...] = ()

    def taking(self, thing: Thing) -> RightHand:
        """After taking a thing: it takes the place of what was held. Blades are chosen one by one."""
        return RightHand(thing, self.blades if thing is Thing.BLADES is self.thing else ())

    def taking_blade(self, blade: float, together: bool = False) -> RightHand:
        """After taking a blade: it replaces those held, or is held together with them; taken again, it goes back."""
        held = self.blades if self.thing is Thing.BLADES else ()
        if not together:
            return RightHand(Thing.BLADES, (blade,))
        if blade in held:
            left = tuple(b for b in held if b != blade)
            return RightHand(Thing.BLADES, left) if left else RightHand()
        if len(held) >= MOST_BLADES:
            return self
        return RightHand(Thing.BLADES, tuple(sorted((*held, blade))))

    def beside(self, blades: tuple[float, ...], way: int) -> RightHand:
        """With the next thicker (+1) or thinner (−1) blade of a set in place of the one held."""
        if self.thing is not Thing.BLADES or len(self.blades) != 1:
            return self
        at = blades.index(self.blades[0]) + way
        return replace(self, blades=(blades[min(max(at, 0), len(blades) - 1)],))


def item_of(items: Iterable[Item], thing: Thing) -> Item | None:
    """A tray's thing, if it lies there."""
    return next((item for item in items if item.thing is thing), None)


ON_THE_MAGNETO = marked("on the magneto")


def meter_spots() -> tuple[Spot, ...]:
    """Places that a meter reads at, all against the case or ground."""
    return (
        Spot("lead", tr("plug of the lead to case")),
        Spot("terminal", tr("terminal to case")),
    )


def screw_spots(state: BenchState) -> tuple[Spot, ...]:
    """The screws, with what a screwdriver would do to each now."""
    lock = tr("slacken the lock screw") if state.lock_tight else tr("tighten the lock screw")
    clamps = tr("slacken the clamp screws") if state.clamps_tight else tr("tighten the clamp screws")
    return Spot("lock", lock, "lock screw"), Spot("clamps", clamps, "clamp screw")
