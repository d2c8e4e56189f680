"""Effect of each action on the switch leads."""

from __future__ import annotations

from dataclasses import replace

from magview.bench.actions import (
    ChooseLamp,
    FitJumper,
    LeadAction,
    PullPlug,
    SetLeadFault,
    SlipPaper,
    SwitchIgnition,
    SwitchOther,
)
from magview.bench.state import BenchState, Side
from magview.physics.electric.circuit import Lead
from magview.spec.base import SpecError
from magview.spec.language import tr


def apply_to_lead(state: BenchState, action: LeadAction) -> BenchState:
    """The state after an action. Raises SpecError for an unknown fault."""
    lead = state.lead
    match action:
        case ChooseLamp(kind):
            return replace(state, lamp_kind=kind)
        case PullPlug(out):
            lead = replace(lead, plug_in=not out)
        case SwitchIgnition(on):
            lead = replace(lead, switch_on=on)
        case SwitchOther(on):
            lead = replace(lead, other_on=on)
        case FitJumper(on):
            lead = replace(lead, jumper=on)
        case SlipPaper(under):
            lead = replace(lead, paper=under)
        case SetLeadFault(fault, present):
            lead = with_fault(lead, fault, present)
    # The other lead goes to the same switch, and is crossed with this one or not.
    other = replace(state.other_lead, switch_on=lead.other_on, other_on=lead.switch_on, crossed=lead.crossed)
    return replace(state, lead=lead, other_lead=other)


def with_fault(lead: Lead, fault: str, present: bool) -> Lead:
    """A lead with a fault, or without it. Raises SpecError for an unknown fault."""
    match fault:
        case "shorted":
            return replace(lead, shorted=present)
        case "broken":
            return replace(lead, broken=present)
        case "chafed":
            return replace(lead, chafed=present)
        case "crossed":
            return replace(lead, crossed=present)
        case "tab":
            return replace(lead, tab_touches=not present)
        case "never-opens" | "never-closes":
            was_so = lead.switch == fault
            return replace(lead, switch=fault if present else "sound" if was_so else lead.switch)
    raise SpecError(
        tr(
            "“{fault}” is not a fault of the switch lead; it is shorted, broken, chafed, tab, never-opens, "
            "never-closes or crossed",
            fault=fault[:40],
        )
    )


def lead_in_view(state: BenchState, side: Side) -> BenchState:
    """The state with the lead of one side in view: the other magneto's takes its place."""
    if state.engaged is None or side == state.engaged.side:
        return state
    return replace(state, lead=state.other_lead, other_lead=state.lead)
