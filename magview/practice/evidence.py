"""Evidence of an attempt's steps: the looks taken, their instruments and order, and the dangerous acts.

A check counts for the state it was made in: turning a screw, tightening it, or moving a tooth makes it stale.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, field

from magview.bench import actions as bench
from magview.bench.blades import thickness_mm
from magview.bench.state import BenchState, Side, crank_deg
from magview.physics.electric.circuit import Lead
from magview.practice import actions as do
from magview.practice import instruments
from magview.practice.attempt import Attempt
from magview.practice.contacts import Decision
from magview.practice.dangers import DANGERS, dangers_of
from magview.practice.state import Feel, Note, Practice, Said, true_gap_mm, true_readings
from magview.spec.language import tr

SLOW_DEG = 3.0
"""A single turn of the hand longer than this [rotor deg] jumps over what the lamp would show."""

WIDEST_MM = 0.008
"""Blades tried this near to a lobe's largest gap measure it."""


@dataclass(frozen=True)
class EvidenceStep:
    """One event with the states around it; `index` counts from 1, 0 is the state as found."""

    index: int
    at_s: float
    act: do.Act
    before: Practice
    after: Practice


@dataclass(frozen=True)
class Opening:
    """The contacts were seen to open."""

    index: int
    lobe: int
    forward: bool
    edge: Said | None
    """Reading of the straightedge then; None where it was not laid on."""
    square: bool
    disc: Said | None
    """Reading of the disc then; None where the magneto was off the engine."""
    first_cylinder: bool
    """Whether the finger stood at the timing cylinder, which is No. 1 in most engines."""


@dataclass(frozen=True)
class Tried:
    """Blades tried where a lobe holds the contacts widest."""

    index: int
    lobe: int
    thick_mm: float
    feel: Feel


@dataclass
class Track:
    """Acts on one magneto and looks at it."""

    set_at: int = 0
    """Last step that moved plate, screw or contacts, or tightened what holds them."""
    set_why: str = ""
    gap_at: int = 0
    """Last of them that could change the gap too: the backplate alone never does."""
    gap_why: str = ""
    meshed_at: int = 0
    """Last step that moved a tooth or refitted the magneto."""
    meshed_why: str = ""
    changed: list[int] = field(default_factory=list)
    """All such steps."""
    renewed: dict[str, int] = field(default_factory=dict)
    """Last step in which a part of the switch lead was renewed, by the part."""
    mended_at: int | None = None
    """First step in which any of them was: what was read before is of the lead as found."""
    disturbed_at: int | None = None
    """First step that took the coupling apart, and…"""
    marked_first: bool = True
    """…whether it was marked by then."""
    openings: list[Opening] = field(default_factory=list)
    tried: list[Tried] = field(default_factory=list)
    meter: list[tuple[int, Lead, str]] = field(default_factory=list)
    """Step, how the lead stood, what the meter at its plug said."""
    electrical: list[tuple[int, Practice, do.Meter | None, str]] = field(default_factory=list)
    """Step, the room then, which meter (None: the lamp), what it said: for a lamp "dark" where nothing lit it in a
    whole turn, else "light"."""
    steady: list[tuple[int, bool, str]] = field(default_factory=list)
    """Step, plug in, what the lamp showed all the way round."""
    contacts: list[tuple[int, str]] = field(default_factory=list)
    decided: list[tuple[int, Decision]] = field(default_factory=list)
    """Step and what was decided of the contacts."""
    due: list[int] = field(default_factory=list)
    """Steps in which it was noted that new contacts are due to be looked at after running in."""


@dataclass(frozen=True)
class Danger:
    """An act that could hurt somebody, when it was first done, and how often."""

    kind: str
    at_s: float
    index: int
    text: str
    times: int = 1


@dataclass
class Evidence:
    """Everything the steps of an attempt prove."""

    steps: list[EvidenceStep]
    tracks: dict[Side, Track]
    stops: list[tuple[int, bool]] = field(default_factory=list)
    """Step and way in which the piston met its stop."""
    disc_moved: list[int] = field(default_factory=list)
    notes: list[tuple[int, Note, Practice]] = field(default_factory=list)
    dangers: dict[str, Danger] = field(default_factory=dict)
    turned_at: int = 0
    """Last step that turned the crank."""
    chocks_at: int = 0
    """Last step that put chocks in, took them away, or left them deliberately."""

    @property
    def first(self) -> Practice:
        """As found."""
        return self.steps[0].before

    @property
    def last(self) -> Practice:
        """As left."""
        return self.steps[-1].after

    def both_stops(self, since: int = 0, before: int | None = None) -> bool:
        """Whether the piston met its stop from both sides within some steps."""
        ways = {forward for index, forward in self.stops if index > since and (before is None or index < before)}
        return len(ways) == 2


def evidence(attempt: Attempt, states: Sequence[Practice] | None = None) -> Evidence:
    """Walk an attempt from end to end; `states` as its own `states()` gives them, where they are at hand.

    Raises SpecError for an attempt whose events cannot follow one another.
    """
    states = attempt.states() if states is None else states
    pairs = zip(attempt.events, states, states[1:], strict=False)
    steps = [EvidenceStep(i, e.at_s, e.act, before, after) for i, (e, before, after) in enumerate(pairs, start=1)]
    if not steps:  # an empty attempt is one of no steps, as found and as left
        steps = [EvidenceStep(0, 0.0, bench.HoldRotor(), states[0], states[0])]
    found = Evidence(steps, {side: Track() for side in states[0].sides})
    for step in steps:
        _setting(found, step)
        _coupling(found, step)
        _lamp(found, step)
        _instruments(found, step)
        _electrical(found, step)
        _danger(found, step)
    return found


# ---------------------------------------------------------------------- what makes checks stale


def _setting(found: Evidence, step: EvidenceStep) -> None:
    old, new, track = step.before.bench, step.after.bench, found.tracks[step.before.side]
    match step.act:
        case bench.TightenLock(True):
            why = tr("the lock screw was tightened")
        case bench.TightenClamps(True):
            why = tr("the clamp screws were tightened")
        case do.DressContacts():
            why = tr("the contacts were dressed")
        case do.RenewContacts():
            why = tr("the contacts were renewed")
        case do.TurnPlate() if old.backplate_deg != new.backplate_deg:
            why = tr("the backplate was turned")
        case do.TurnScrew() if old.screw_deg != new.screw_deg:
            why = tr("the contact screw was turned")
        case _:
            return
    track.set_at, track.set_why = step.index, why
    track.changed.append(step.index)
    if not isinstance(step.act, do.TurnPlate | bench.TightenClamps):
        track.gap_at, track.gap_why = step.index, why


def _coupling(found: Evidence, step: EvidenceStep) -> None:
    track = found.tracks[step.before.side]
    match step.act:
        case do.MoveTooth():
            track.meshed_at, track.meshed_why = step.index, tr("a tooth was moved")
            track.changed.append(step.index)
        case do.Refit():
            track.meshed_at, track.meshed_why = step.index, tr("the magneto was refitted")
            track.changed.append(step.index)
        case do.TurnDisc():
            found.disc_moved.append(step.index)
    if isinstance(step.act, do.MoveTooth | do.Remove) and track.disturbed_at is None:
        track.disturbed_at, track.marked_first = step.index, step.before.seat.marked


# ---------------------------------------------------------------------- what was seen


def _lamp(found: Evidence, step: EvidenceStep) -> None:
    before, after = step.before, step.after
    if not isinstance(step.act, do.TurnRotor | do.TurnPropeller | do.TurnUntil):
        return
    track, moved = found.tracks[after.side], after.bench.rotor_deg - before.bench.rotor_deg
    if after.said is not None and after.said.instrument == "lamp":
        shown = instruments.shows_open(after)
        if shown is not None:
            track.steady.append((step.index, after.bench.lead.plug_in, "light" if shown else "dark"))
            track.electrical.append((step.index, after, None, "light" if shown else "dark"))
        return
    if instruments.shows_open(before) or instruments.shows_open(after):
        track.electrical.append((step.index, after, None, "light"))
    slow = isinstance(step.act, do.TurnUntil) or abs(moved) <= SLOW_DEG
    if not slow or not before.lamp_on:
        return
    both = instruments.shows_open(before), instruments.shows_open(after)
    # Turning with rotation it shows them open as they open; against rotation it changes back at the same place.
    if both not in ((False, True), (True, False)) or (both[1] is True) != (moved > 0):
        return
    opens = true_readings(after.bench).opens_deg
    turn = 360.0 / after.bench.magneto.cam.turns_per_rotor_turn
    away = [abs((after.bench.rotor_deg - o + turn / 2) % turn - turn / 2) for o in opens.tolist()]
    lobe = away.index(min((a for a in away if math.isfinite(a)), default=away[0])) + 1
    mounted = after.mounted
    track.openings.append(
        Opening(
            step.index,
            lobe,
            moved > 0,
            instruments.straightedge(after) if after.edge_laid else None,
            abs(after.eye_deg) <= instruments.SQUARE_EYE_DEG,
            instruments.disc(after) if mounted else None,
            not mounted or instruments.finger(after).value == after.timing_cylinder,
        )
    )


def _instruments(found: Evidence, step: EvidenceStep) -> None:
    after, track = step.after, found.tracks[step.after.side]
    said = after.said
    if said is not None and said.instrument == "stop" and isinstance(step.act, do.Turning):
        crank = crank_deg(after.bench) - crank_deg(step.before.bench)
        found.stops.append((step.index, crank > 0))
    match step.act:
        case do.TryBlades(stack, kind) if said is not None:
            lobe = _lobe_at(after.bench)
            if lobe is not None:
                track.tried.append(Tried(step.index, lobe, thickness_mm(kind, stack), Feel(said.plain)))
        case do.InspectContacts() if said is not None:
            track.contacts.append((step.index, said.plain))
        case do.WriteReading(kind):
            found.notes.append((step.index, after.notebook[-1], after))
            if kind == "running-in":
                found.tracks[after.notebook[-1].side].due.append(step.index)
        case do.DressContacts() | do.RenewContacts() | do.LeaveAsIs("contacts"):
            track.decided.append((step.index, _DECIDED[type(step.act)]))
        case do.Chock() | do.LeaveAsIs("chocks"):
            found.chocks_at = step.index
    if isinstance(step.act, do.Turning) and _crank_moved(step):
        found.turned_at = step.index


def _electrical(found: Evidence, step: EvidenceStep) -> None:
    track, said = found.tracks[step.after.side], step.after.said
    if isinstance(step.act, do.Meter) and said is not None:
        track.electrical.append((step.index, step.after, step.act, said.plain))
        if isinstance(step.act, do.MeterLead):
            track.meter.append((step.index, step.after.bench.lead, said.plain))
    elif isinstance(step.act, do.Renew):
        track.renewed[step.act.part] = step.index
        for seen in found.tracks.values():  # a switch, or two leads' places, are of both magnetos
            seen.mended_at = seen.mended_at or step.index


_DECIDED: dict[type, Decision] = {do.DressContacts: "dress", do.RenewContacts: "renew", do.LeaveAsIs: "leave"}


def _crank_moved(step: EvidenceStep) -> bool:
    before, after = step.before.bench, step.after.bench
    return before.engaged is not None and abs(crank_deg(after) - crank_deg(before)) >= 1e-9


def _lobe_at(state: BenchState) -> int | None:
    """The lobe that holds the contacts at its largest gap now; None where the rotor stands elsewhere."""
    found, turn = true_readings(state), 360.0 / state.magneto.cam.turns_per_rotor_turn
    middles = ((found.opens_deg + found.closes_deg) / 2).tolist()
    away = [abs((state.rotor_deg - m + turn / 2) % turn - turn / 2) for m in middles if math.isfinite(m)]
    if len(away) < len(middles):  # a lobe that never opens or never closes has no gap to measure
        return None
    lobe = away.index(min(away))
    return lobe + 1 if true_gap_mm(state) >= float(found.max_gap_mm[lobe]) - WIDEST_MM else None


# ---------------------------------------------------------------------- danger


def _danger(found: Evidence, step: EvidenceStep) -> None:
    before = step.before
    if isinstance(step.act, do.Remove) and not before.seat.marked:
        _flag(found, step, "unmarked", tr("took the magneto off with no marks across its coupling"))
    for kind in dangers_of(step.act, before, step.after):
        _flag(found, step, kind, tr(DANGERS[kind]))


def _flag(found: Evidence, step: EvidenceStep, kind: str, text: str) -> None:
    seen = found.dangers.get(kind)
    found.dangers[kind] = (
        Danger(kind, step.at_s, step.index, text)
        if seen is None
        else Danger(kind, seen.at_s, seen.index, text, seen.times + 1)
    )
