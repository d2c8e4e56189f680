"""Proof of a switch lead: the fault that the readings point at, and whether the lead is proved."""

from __future__ import annotations

from collections.abc import Collection
from dataclasses import replace

from magview.bench.apply_lead import with_fault
from magview.bench.state import circuit_with
from magview.physics.electric.circuit import Lead
from magview.practice import actions as do
from magview.practice import instruments
from magview.practice.evidence import Evidence, Track
from magview.practice.state import Practice, view
from magview.practice.words import side_words
from magview.spec.language import together, tr

Judgement = tuple[str, bool, bool, bool, str]
"""Thing, right, near, proved and reason."""


def lead_faults(room: Practice) -> list[str]:
    """True faults of the switch lead of the magneto in view, in the words of findings; none: sound."""
    lead = room.bench.lead
    faults = {
        "broken": lead.broken,
        "shorted": lead.shorted,
        "tab": not lead.tab_touches,
        "chafed": lead.chafed,
        "never-opens": lead.switch == "never-opens",
        "never-closes": lead.switch == "never-closes",
        "crossed": lead.crossed,
    }
    return [name for name, there in faults.items() if there]


def still_possible(track: Track, pool: Collection[str], upto: int) -> set[str]:
    """Those of some findings that no reading taken before step `upto`, and before anything was renewed, rules out."""
    last = min(upto, track.mended_at or upto)
    taken = [reading for reading in track.electrical if reading[0] < last]
    return {fault for fault in pool if all(_would_say(room, act, fault) == said for _, room, act, said in taken)}


def _would_say(room: Practice, act: do.Meter | None, fault: str) -> str:
    """Reading of an instrument in a room with this fault alone."""
    lead = room.bench.lead
    hands = Lead(
        plug_in=lead.plug_in, switch_on=lead.switch_on, other_on=lead.other_on, jumper=lead.jumper, paper=lead.paper
    )
    supposed = replace(room, bench=replace(room.bench, lead=_with(hands, fault)))
    match act:
        case None:  # in a whole turn the contacts open: only a grounded primary keeps the lamp dark
            return "dark" if circuit_with(supposed.bench, contacts_closed=False).grounded else "light"
        case do.MeterTerminal():
            return instruments.terminal_meter(supposed).plain
        case do.MeterSwitch():
            return instruments.switch_meter(supposed).plain
        case do.MeterLead():
            return instruments.meter(supposed).plain


def _with(lead: Lead, fault: str) -> Lead:
    return lead if fault == "sound" else with_fault(lead, fault, True)


def judge_lead(found: Evidence, room: Practice, track: Track) -> Judgement:
    """Judge whether the lead of the magneto in view is sound as left, and proved."""
    wrong = [_wrong(fault) for fault in lead_faults(room)]
    was = view(found.first, room.side).bench.lead
    mended = max((track.renewed.get(part, 0) for part in ("lead", "switch", "places")), default=0)
    read = [(lead, said) for index, lead, said in track.meter if index > mended]
    off = any(not lead.switch_on and said == "ground" for lead, said in read)
    on = any(lead.switch_on and said == "no ground" for lead, said in read)
    checks = {tr("the meter with the switch off and on"): off and on}
    if was.crossed:
        own = any(not lead.switch_on and lead.other_on and said == "ground" for lead, said in read)
        alone = any(lead.switch_on and not lead.other_on and said == "no ground" for lead, said in read)
        checks[tr("the meter with the other magneto's switch off and on")] = own and alone
    if was.shorted:
        inside = track.renewed.get("insulation", 0)
        checks[tr("the lamp lighting")] = any(o.index > inside for o in track.openings)
    if not was.tab_touches:
        new_tab = track.renewed.get("tab", 0)
        checks[tr("the lamp staying dark with the plug out")] = any(
            i > new_tab and not plug_in and shown == "dark" for i, plug_in, shown in track.steady
        )
    missing = [name for name, done in checks.items() if not done]
    how = (
        tr("not proved by {checks}", checks=together(missing))
        if missing
        else tr("proved by {checks}", checks=together(list(checks)))
    )
    told = together(wrong) if wrong else tr("the switch lead is sound")
    name = side_words(room, room.side)
    what = tr("{magneto}: switch lead sound", magneto=name[0].upper() + name[1:])
    return what, not wrong, False, not missing, f"{told[0].upper()}{told[1:]}; {how}."


def _wrong(fault: str) -> str:
    return {
        "broken": tr("the lead is broken inside"),
        "shorted": tr("the primary is shorted inside"),
        "tab": tr("the grounding tab does not touch the case"),
        "chafed": tr("the lead is chafed through to ground"),
        "never-opens": tr("the switch never opens"),
        "never-closes": tr("the switch never closes"),
        "crossed": tr("the leads of left and right are crossed"),
    }[fault]
