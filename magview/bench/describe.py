"""Actions in words, for undo and for the record of what was done."""

from __future__ import annotations

from magview.bench.actions import (
    Action,
    Advance,
    BurnFaces,
    CheckFirst,
    ChooseLamp,
    DropInspection,
    DropTrial,
    EngineAction,
    FitJumper,
    GrowPip,
    HoldRotor,
    LeadAction,
    LetGo,
    LoadTrain,
    MountMagneto,
    MoveTeeth,
    NoteAction,
    NoteInspection,
    NoteTrial,
    PaintMarks,
    PlaceInstallation,
    PlaceMagneto,
    PullPlug,
    ReadLamp,
    ReadTrials,
    SetBoth,
    SetLeadFault,
    SettleRotor,
    SlipPaper,
    SwitchIgnition,
    SwitchOther,
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
from magview.bench.lead_words import LAMPS
from magview.bench.state import BenchState, crank_deg
from magview.bench.words import plate_turn, screw_move, way_words
from magview.spec.language import marked, tr

_CHECKS = {
    ("reading", True): marked("note that the lamp was read again"),
    ("reading", False): marked("take back that the lamp was read again"),
    ("stroke", True): marked("note that the stroke was looked at"),
    ("stroke", False): marked("take back that the stroke was looked at"),
    ("mark", True): marked("note that disc and marks were looked at"),
    ("mark", False): marked("take back that disc and marks were looked at"),
    ("finger", True): marked("note that the finger was looked at"),
    ("finger", False): marked("take back that the finger was looked at"),
}

_FAULTS = {
    ("shorted", True): marked("put in a short inside the magneto"),
    ("shorted", False): marked("take away a short inside the magneto"),
    ("broken", True): marked("put in a break in the switch lead"),
    ("broken", False): marked("take away a break in the switch lead"),
    ("chafed", True): marked("chafe the switch lead through to ground"),
    ("chafed", False): marked("take away a chafe of the switch lead"),
    ("tab", True): marked("bend the grounding tab clear of the case"),
    ("tab", False): marked("bend the grounding tab back to the case"),
    ("never-opens", True): marked("put in a switch that never opens"),
    ("never-opens", False): marked("take away a switch that never opens"),
    ("never-closes", True): marked("put in a switch that never closes"),
    ("never-closes", False): marked("take away a switch that never closes"),
    ("crossed", True): marked("cross the switch leads of left and right"),
    ("crossed", False): marked("put the switch leads of left and right back in their places"),
}


def describe(action: Action, before: BenchState, after: BenchState) -> str:
    """Name an action between two states as a person would: "Turn the backplate 1.50° with rotation"."""
    text = _text(action, before, after)
    return text[0].upper() + text[1:]


def _text(action: Action, before: BenchState, after: BenchState) -> str:
    match action:
        case PlaceMagneto() | PlaceInstallation():
            return tr("place the {magneto}", magneto=after.magneto.name)
        case TurnRotor() | HoldRotor() | LetGo() | SettleRotor() | Advance():
            return _rotor_text(action, before, after)
        case TurnBackplate():
            return plate_turn(after.backplate_deg - before.backplate_deg)
        case TurnScrew():
            return screw_move(after.magneto, after.screw_deg - before.screw_deg)
        case SetBoth():
            return tr("set backplate and contact screw")
        case TightenLock(tight):
            return tr("tighten the lock screw") if tight else tr("slacken the lock screw")
        case TightenClamps(tight):
            return tr("tighten the clamp screws") if tight else tr("slacken the clamp screws")
        case PullPlug() | SwitchIgnition() | SwitchOther() | FitJumper() | SlipPaper():
            return _lead_text(action)
        case SetLeadFault() | ChooseLamp():
            return _lead_text(action)
        case WearHeel() | GrowPip() | BurnFaces():
            return _wear_text(action, after)
        case NoteTrial() | DropTrial() | ReadTrials() | NoteInspection() | DropInspection():
            return _note_text(action)
        case _:
            return _engine_text(action, before, after)


def _rotor_text(
    action: TurnRotor | HoldRotor | LetGo | SettleRotor | Advance, before: BenchState, after: BenchState
) -> str:
    match action:
        case TurnRotor():
            turned = after.rotor_deg - before.rotor_deg
            angle = abs(turned)
            if turned >= 0:
                return tr("turn the rotor {angle:deg} with rotation", angle=angle)
            return tr("turn the rotor {angle:deg} against rotation", angle=angle)
        case HoldRotor():
            return tr("hold the rotor")
        case Advance():
            return tr("wait")
    return tr("let go of the rotor")


def _note_text(action: NoteAction) -> str:
    match action:
        case NoteTrial(trial):
            return tr("note the trial at plate {backplate:+deg}", backplate=trial.backplate_deg)
        case NoteInspection(inspection):
            return tr("note the inspection at {hours} h", hours=inspection.hours)
        case DropTrial(place):
            return tr("strike out trial {place}", place=place + 1)
        case ReadTrials():
            return tr("say how trials are read")
        case DropInspection(place):
            return tr("strike out inspection {place}", place=place + 1)


def _wear_text(action: WearHeel | GrowPip | BurnFaces, after: BenchState) -> str:
    if isinstance(action, WearHeel):
        return tr("wear the heel to {heel_wear:mm}", heel_wear=after.magneto.condition.heel_wear_mm)
    if isinstance(action, BurnFaces):
        return tr("burn the faces by {face_burn:mm}", face_burn=after.magneto.condition.face_burn_mm)
    return tr("grow a pip of {pip_height:mm}", pip_height=after.magneto.condition.pip_height_mm)


def _lead_text(action: LeadAction) -> str:
    match action:
        case PullPlug(out):
            return tr("pull the switch lead's plug") if out else tr("push in the switch lead's plug")
        case SwitchIgnition(on):
            return tr("switch on") if on else tr("switch off")
        case SwitchOther(on):
            return tr("switch the other magneto on") if on else tr("switch the other magneto off")
        case FitJumper(on):
            return tr("clip the jumper on") if on else tr("take the jumper off")
        case SlipPaper(under):
            return tr("slip paper under the grounding tab") if under else tr("take the paper from the grounding tab")
        case SetLeadFault(fault, present):
            return tr(_FAULTS[fault, present])
        case ChooseLamp(kind):
            return tr("take a timing light: {kind}", kind=tr(LAMPS[kind]))


def _engine_text(
    action: EngineAction,
    before: BenchState,
    after: BenchState,
) -> str:
    match action:
        case TurnCrank():
            return _crank_text(before, after)
        case LoadTrain():
            return tr("load the drive train against rotation")
        case MountMagneto(on):
            return tr("refit the magneto by its marks") if on else tr("take the magneto off the engine")
        case ReadLamp() | WantTiming() | CheckFirst():
            return _lamp_text(action)
        case MoveTeeth():
            return _teeth_text(before, after)
        case PaintMarks():
            return tr("paint new marks on the coupling")
        case ViewSide(side):
            return tr("look at the left magneto") if side == "left" else tr("look at the right magneto")


def _crank_text(before: BenchState, after: BenchState) -> str:
    if before.engaged is None:
        return tr("turn the crank")
    turned = crank_deg(after) - crank_deg(before)
    angle = abs(turned)
    if turned >= 0:
        return tr("turn the crank {angle:deg} with rotation", angle=angle)
    return tr("turn the crank {angle:deg} against rotation", angle=angle)


def _lamp_text(action: ReadLamp | WantTiming | CheckFirst) -> str:
    match action:
        case ReadLamp(side, btdc_deg):
            if side == "left":
                return tr("read the lamp: left fires {btdc:deg} before top dead centre", btdc=btdc_deg)
            return tr("read the lamp: right fires {btdc:deg} before top dead centre", btdc=btdc_deg)
        case CheckFirst(_, what, done):
            return tr(_CHECKS[what, done])
        case WantTiming(side, btdc_deg):
            if side == "left":
                return tr("want left at {btdc:deg} before top dead centre", btdc=btdc_deg)
            return tr("want right at {btdc:deg} before top dead centre", btdc=btdc_deg)


def _teeth_text(before: BenchState, after: BenchState) -> str:
    if before.engaged is None or after.engaged is None:
        return tr("move teeth")
    was, now = before.engaged.mounting, after.engaged.mounting
    flange = way_words(now.magneto_teeth - was.magneto_teeth) if now.magneto_teeth != was.magneto_teeth else ""
    disc = way_words(now.disc_teeth - was.disc_teeth) if now.disc_teeth != was.disc_teeth else ""
    if flange and disc:
        return tr("move A, the disc, {disc} and B, the magneto flange, {flange}", flange=flange, disc=disc)
    if flange:
        return tr("move B, the magneto flange, {teeth}", teeth=flange)
    return tr("move A, the disc, {teeth}", teeth=disc) if disc else tr("move the coupling")
