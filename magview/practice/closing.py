"""Closed up means closed up: what was opened, taken off or clipped on is as it was, and what must be seen to is."""

from __future__ import annotations

from magview.practice.evidence import Evidence, Track
from magview.practice.state import Practice
from magview.spec.language import marked

CLOSING = {
    "lamp": marked("timing light off the contacts"),
    "straightedge": marked("straightedge off"),
    "coil": marked("coil on the contacts"),
    "paper": marked("paper out"),
    "felt": marked("felt oiled as the manual says"),
    "plugs": marked("spark plugs in"),
    "plug-leads": marked("leads on their plugs"),
    "lead-proved": marked("switch lead proved again"),
    "chocks": marked("chocks taken away or left deliberately"),
}
"""Checks besides screws, nuts, plug and switch, by id."""


def closed_up(found: Evidence, room: Practice, track: Track) -> list[tuple[str, bool]]:
    """Each thing that belongs to this exercise, in words not yet read out, and whether it is so.

    Off the engine only what lies on the magneto itself counts. The lead is proved again where there is a meter:
    seen grounded with the switch off, after the last act that set the contacts, meshed the coupling or renewed it.
    """
    exercise, seat, engine = room.exercise, room.seat, room.bench.engaged is not None
    goals = {goal.goal for goal in exercise.goals}
    done: dict[str, bool] = {"paper": not room.bench.lead.paper}
    if exercise.tray.lamp:
        done |= {"lamp": not room.lamp_on, "coil": not seat.coil_off}
    if exercise.tray.straightedge is not None and "e-gap" not in goals:
        done["straightedge"] = not room.edge_laid
    if exercise.felt_drops is not None:
        done["felt"] = seat.oil_drops == (exercise.felt_drops if seat.felt_dry else 0)
    if engine:
        done |= {"plugs": not room.plugs_out, "plug-leads": not room.leads_hang}
        done["chocks"] = found.chocks_at > found.turned_at
        if exercise.tray.meter:
            done["lead-proved"] = seat.proved and _proved_since(track)
    return [(words, done[name]) for name, words in CLOSING.items() if name in done]


def _proved_since(track: Track) -> bool:
    renewed = (track.renewed.get(part, 0) for part in ("lead", "switch", "places"))
    since = max(track.set_at, track.meshed_at, *renewed)
    return any(index > since and not lead.switch_on and said == "ground" for index, lead, said in track.meter)
