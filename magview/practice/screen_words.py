"""Text that may be on screen before the attempt is handed in.

The picture of the mechanism is the mechanism and may be shown; true numbers may not. `seen` gives every line of
text the screen may write of a state. The numbers behind them must be found nowhere: not on screen, in a tooltip, a
title, an accessible name or an exported picture.
"""

from __future__ import annotations

from dataclasses import dataclass

from magview.bench.state import other_circuit
from magview.practice import instruments
from magview.practice.draws import between
from magview.practice.state import (
    SAFE_THINGS,
    Practice,
)
from magview.practice.words import note_words
from magview.spec.language import marked, tr

_SCREWS = {
    (True, True): marked("lock screw tight, clamp screws tight"),
    (True, False): marked("lock screw tight, clamp screws slack"),
    (False, True): marked("lock screw slack, clamp screws tight"),
    (False, False): marked("lock screw slack, clamp screws slack"),
}
"""By lock screw tight, clamp screws tight."""


@dataclass(frozen=True)
class Seen:
    """Knowledge of eyes and hands about the magneto in view, as text; "" where there is none."""

    lamp: str
    straightedge: str
    eye: str
    disc: str
    finger: str
    said: str
    """Reading of an instrument after the last act."""
    plate: str
    screw: str
    teeth: str
    screws: str
    lead: str
    engine: str
    notebook: tuple[str, ...]


def seen(practice: Practice) -> Seen:
    """The text of a state. Nothing in it is finer than an instrument reads or a hand counts."""
    bench, seat, engaged = practice.bench, practice.seat, practice.bench.engaged
    return Seen(
        lamp=instruments.lamp(practice).text,
        straightedge=instruments.straightedge(practice).text,
        eye=_eye(practice) if practice.edge_laid else "",
        disc=instruments.disc(practice).text if engaged is not None else "",
        finger=instruments.finger(practice).text if engaged is not None else "",
        said=practice.said.line if practice.said is not None else "",
        plate=_turned("plate", seat.plate_turned_deg, 1),
        screw=_turned("screw", seat.screw_turned_deg, 0),
        teeth=_teeth(practice) if engaged is not None else "",
        screws=tr(_SCREWS[bench.lock_tight, bench.clamps_tight]),
        lead=_lead(practice),
        engine=_engine(practice) if engaged is not None else "",
        notebook=tuple(note_words(n) for n in practice.notebook),
    )


def hidden_parts(practice: Practice) -> frozenset[str]:
    """Names of the bench's drawn parts that must not be drawn now: scales that give the truth away, a straightedge
    that is not laid on, paint that nobody put there."""
    hidden = {"rotor scale", "plate scale"}
    if not practice.edge_laid:
        hidden.add("straightedge")
    if not practice.seat.marked:
        hidden.add("painted mark")
    return frozenset(hidden)


def drawn_aside_deg(practice: Practice) -> float:
    """By how much to draw the coupling turned [deg]: paint put on anywhere must not show where the crank stands."""
    return between(practice.seed, 20.0, 340.0, practice.side, "drawn", "coupling")


_TURNED = {
    ("plate", 0): marked("turned {angle:+.{digits}deg} since you came"),
    ("plate", 1): marked("turned {angle:+.{digits}deg} since you came (with rotation)"),
    ("plate", -1): marked("turned {angle:+.{digits}deg} since you came (against rotation)"),
    ("screw", 0): marked("turned {angle:+.{digits}deg} since you came"),
    ("screw", 1): marked("turned {angle:+.{digits}deg} since you came (closer)"),
    ("screw", -1): marked("turned {angle:+.{digits}deg} since you came (wider)"),
}
"""By part, and by sign as it is written."""


def _turned(part: str, degrees: float, digits: int) -> str:
    written = round(degrees, digits)
    return tr(_TURNED[part, (written > 0) - (written < 0)], angle=degrees, digits=digits)


def _eye(practice: Practice) -> str:
    if abs(practice.eye_deg) <= instruments.SQUARE_EYE_DEG:
        return tr("square over the edge")
    eye = abs(practice.eye_deg)
    if practice.eye_deg < 0:
        return tr("from {eye:.0deg} ahead with rotation", eye=eye)
    return tr("from {eye:.0deg} behind against rotation", eye=eye)


def _teeth(practice: Practice) -> str:
    """Teeth are counted by the marks: a disc that slipped unmarked shows nothing of it."""
    engaged = practice.bench.engaged
    if engaged is None or not practice.seat.marked:
        return tr("no marks to count by")
    i, j = engaged.mounting.marks_apart
    return (
        tr("by the marks: A disc {j:+d}, B magneto flange {i:+d} teeth", i=i, j=j)
        if (i or j)
        else tr("the marks stand in line")
    )


def _lead(practice: Practice) -> str:
    lead = practice.bench.lead
    parts = [
        tr("plug in") if lead.plug_in else tr("plug pulled"),
        *([tr("jumper on")] if lead.jumper else []),
        *([tr("paper under the grounding tab")] if lead.paper else []),
        tr("switch on") if lead.switch_on else tr("switch off"),
    ]
    if other_circuit(practice.bench) is not None:
        parts.append(tr("other magneto on") if lead.other_on else tr("other magneto off"))
    return ", ".join(parts)


def live_words(practice: Practice) -> str:
    """Knowledge of hands about the magneto on the engine: live by what stands open, or not proved; nothing once it is
    grounded and proved, and no word of what is hidden."""
    lead, tab = practice.bench.lead, practice.bench.magneto.grounding_tab is True
    if not practice.mounted or lead.jumper:
        return ""
    if not lead.plug_in and not tab:
        return tr("LIVE: the lead is off, and no tab grounds this magneto. Put the jumper on.")
    if not lead.plug_in and lead.paper:
        return tr("LIVE: paper lies under the tab. For the reading alone: arc clear, plugs out.")
    if lead.plug_in and lead.switch_on:
        return tr("LIVE: the switch is on. For the reading alone: arc clear, plugs out.")
    if not lead.plug_in or not practice.seat.proved:
        return tr("Counts as live: nothing that grounds it is proved. Prove the lead, or put the jumper on.")
    return ""


SEEN_TO = {
    "fuel": marked("fuel off"), "mixture": marked("mixture cut off"), "throttle": marked("throttle closed"),
    "leads": marked("hanging leads grounded"),
}  # fmt: skip


def _engine(practice: Practice) -> str:
    seat = practice.seat
    parts = [
        tr("wheels chocked") if practice.chocked else tr("no chocks"),
        tr("spark plugs out") if practice.plugs_out else tr("spark plugs in"),
        *([tr("the plugs' leads hang")] if practice.leads_hang else []),
        *(tr(SEEN_TO[thing]) for thing in SAFE_THINGS if thing in practice.seen_to),
        *([tr("piston stop in No. {cylinder}", cylinder=practice.timing_cylinder)] if practice.stop_fitted else []),
        tr("magneto on the engine") if practice.mounted else tr("magneto off the engine"),
        tr("nuts tight") if seat.nuts_tight else tr("nuts off"),
        *([tr("rotor pinned")] if seat.pinned else []),
        tr("coupling marked") if seat.marked else tr("no marks on the coupling"),
    ]
    return ", ".join(parts)
