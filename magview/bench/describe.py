"""Actions in words, for undo and for the record of what was done."""

from __future__ import annotations

from magview.bench.actions import (
    Action,
    Advance,
    DropInspection,
    DropTrial,
    GrowPip,
    HoldRotor,
    LetGo,
    MountMagneto,
    MoveTeeth,
    NoteInspection,
    NoteTrial,
    PaintMarks,
    PlaceInstallation,
    PlaceMagneto,
    PullPlug,
    ReadLamp,
    SetBoth,
    SetLeadFault,
    SettleRotor,
    SwitchIgnition,
    TightenClamps,
    TightenLock,
    TurnBackplate,
    TurnCrank,
    TurnRotor,
    TurnScrew,
    ViewSide,
    WantTiming,
    WearHeel,
)
from magview.bench.state import BenchState, crank_deg
from magview.bench.words import plate_move, screw_move, way_words

_FAULTS = {
    "shorted": "a short inside the magneto",
    "broken": "a break in the switch lead",
    "tab": "a bent spring tab",
}


def describe(action: Action, before: BenchState, after: BenchState) -> str:
    """What an action did between two states, as a person would say it: "Turn the backplate 1.50° with rotation"."""
    text = _text(action, before, after)
    return text[0].upper() + text[1:]


def _text(action: Action, before: BenchState, after: BenchState) -> str:
    match action:
        case PlaceMagneto() | PlaceInstallation():
            return f"place the {after.magneto.name}"
        case TurnRotor() | HoldRotor() | LetGo() | SettleRotor() | Advance():
            return _rotor_text(action, before, after)
        case TurnBackplate():
            return plate_move(after.magneto, after.backplate_deg - before.backplate_deg).split(" (")[0]
        case TurnScrew():
            return screw_move(after.magneto, after.screw_deg - before.screw_deg)
        case SetBoth():
            return "set backplate and contact screw"
        case TightenLock(tight) | TightenClamps(tight):
            which = "lock screw" if isinstance(action, TightenLock) else "clamp screws"
            return f"{'tighten' if tight else 'slacken'} the {which}"
        case PullPlug() | SwitchIgnition() | SetLeadFault():
            return _lead_text(action)
        case WearHeel() | GrowPip():
            return _wear_text(action, after)
        case NoteTrial() | DropTrial() | NoteInspection() | DropInspection():
            return _note_text(action)
        case _:
            return _engine_text(action, before, after)


def _rotor_text(
    action: TurnRotor | HoldRotor | LetGo | SettleRotor | Advance, before: BenchState, after: BenchState
) -> str:
    match action:
        case TurnRotor():
            return f"turn the rotor {_way(after.rotor_deg - before.rotor_deg)}"
        case HoldRotor():
            return "hold the rotor"
        case Advance():
            return "wait"
    return "let go of the rotor"


def _note_text(action: NoteTrial | DropTrial | NoteInspection | DropInspection) -> str:
    match action:
        case NoteTrial(trial):
            return f"note the trial at plate {trial.backplate_deg:+.2f}°"
        case NoteInspection(inspection):
            return f"note the inspection at {inspection.hours:g} h"
        case DropTrial(place):
            return f"strike out trial {place + 1}"
        case DropInspection(place):
            return f"strike out inspection {place + 1}"


def _wear_text(action: WearHeel | GrowPip, after: BenchState) -> str:
    if isinstance(action, WearHeel):
        return f"wear the heel to {after.magneto.condition.heel_wear_mm:.3f} mm"
    return f"grow a pip of {after.magneto.condition.pip_height_mm:.3f} mm"


def _lead_text(action: PullPlug | SwitchIgnition | SetLeadFault) -> str:
    match action:
        case PullPlug(out):
            return f"{'pull' if out else 'push in'} the switch lead's plug"
        case SwitchIgnition(on):
            return f"switch {'on' if on else 'off'}"
        case SetLeadFault(fault, present):
            return f"{'put in' if present else 'take away'} {_FAULTS.get(fault, fault)}"


def _engine_text(
    action: TurnCrank | MountMagneto | ReadLamp | WantTiming | MoveTeeth | PaintMarks | ViewSide,
    before: BenchState,
    after: BenchState,
) -> str:
    match action:
        case TurnCrank():
            turned = "" if before.engaged is None else f" {_way(crank_deg(after) - crank_deg(before))}"
            return f"turn the crank{turned}"
        case MountMagneto(on):
            return "refit the magneto by its marks" if on else "take the magneto off the engine"
        case ReadLamp(side, btdc_deg):
            return f"read the lamp: {side} fires {btdc_deg:.2f}° before top dead centre"
        case WantTiming(side, btdc_deg):
            return f"want {side} at {btdc_deg:.2f}° before top dead centre"
        case MoveTeeth():
            return _teeth_text(before, after)
        case PaintMarks():
            return "paint new marks on the coupling"
        case ViewSide(side):
            return f"look at the {side} magneto"


def _teeth_text(before: BenchState, after: BenchState) -> str:
    if before.engaged is None or after.engaged is None:
        return "move teeth"
    was, now = before.engaged.mounting, after.engaged.mounting
    moves = [
        f"{face} {way_words(teeth)}"
        for face, teeth in (
            ("magneto flange", now.magneto_teeth - was.magneto_teeth),
            ("disc", now.disc_teeth - was.disc_teeth),
        )
        if teeth
    ]
    return f"move the {' and the '.join(moves) if moves else 'coupling'}"


def _way(degrees: float) -> str:
    return f"{abs(degrees):.2f}° {'with' if degrees >= 0 else 'against'} rotation"
