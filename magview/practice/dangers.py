"""Acts that could hurt somebody, told from the room before and after: the list of making safe.

Common practice, with FAA-H-8083-32B ch. 4 for what the switch does: fuel, mixture, throttle, hanging leads, chocks; a
magneto is grounded and proved, or it is the one being read, plugs out and lamp on; a lead is pulled where a tab or a
jumper grounds the magneto, and nowhere else.
"""

from __future__ import annotations

from collections.abc import Iterator

from magview.bench import actions as bench
from magview.bench.state import crank_deg, other_circuit
from magview.practice import actions as do
from magview.practice.state import SAFE_THINGS, Practice, true_circuit, view
from magview.spec.language import marked

DANGERS = {
    "pulled": marked("pulled the lead of a magneto that no tab and no jumper then grounded: that made it live"),
    "chocks": marked("turned the propeller with no chocks at the wheels"),
    "list": marked("turned the propeller before fuel, mixture, throttle and hanging leads were all seen to"),
    "live": marked("turned the propeller with a live magneto and the spark plugs in"),
    "pressed": marked("pressed the rotor of a live magneto round with the spark plugs in"),
    "idle": marked("turned the propeller with a live magneto that was not being read: plugs out is not enough"),
    "unproved": marked("turned the propeller with a magneto neither proved to be grounded nor under a jumper"),
}
"""Name of each dangerous act, by its kind."""


def dangers_of(act: do.Act, before: Practice, after: Practice) -> Iterator[str]:
    """Kinds of danger in an act."""
    if before.bench.engaged is None:
        return
    if act == bench.PullPlug(True) and before.bench.lead.plug_in and before.mounted:
        # Whether a tab that there is touches, nobody can know before; that there is none, the data sheet says.
        if before.bench.magneto.grounding_tab is not True and true_circuit(after.bench).live:
            yield "pulled"
        return
    if isinstance(act, bench.LoadTrain):
        # The crank stands still, the rotor does not: it may spark.
        if not before.plugs_out and true_circuit(before.bench).live:
            yield "pressed"
        return
    if isinstance(act, do.Turning) and abs(crank_deg(after.bench) - crank_deg(before.bench)) >= 1e-9:
        yield from _of_turning(before)


def _of_turning(room: Practice) -> Iterator[str]:
    if not room.chocked:
        yield "chocks"
    if not room.seen_to.issuperset(SAFE_THINGS):
        yield "list"
    rooms = [seen for side in room.sides if (seen := view(room, side)).mounted]
    live = [seen for seen in rooms if true_circuit(seen.bench).live]
    beside = other_circuit(room.bench)
    elsewhere = room.other is None and beside is not None and beside.live
    if (live or elsewhere) and not room.plugs_out:
        yield "live"
    elif elsewhere or any(not _being_read(room, seen) for seen in live):
        yield "idle"
    elif not all(_being_read(room, seen) or grounded_for_sure(seen) for seen in rooms):
        yield "unproved"


def _being_read(room: Practice, seen: Practice) -> bool:
    """Whether the lamp is on this magneto and nothing is left in that it could fire with full force."""
    return seen.side == room.side and room.lamp_on and room.plugs_out


def grounded_for_sure(room: Practice) -> bool:
    """Whether the magneto in view is grounded by what was proved, or by a jumper."""
    lead = room.bench.lead
    return lead.jumper or (room.seat.proved and lead.plug_in and not lead.switch_on)
