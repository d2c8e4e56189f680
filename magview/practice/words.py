"""Acts in words, for the record of an attempt: moves as a hand knows them, no true numbers."""

from __future__ import annotations

from magview.bench import actions as bench
from magview.bench.describe import describe
from magview.bench.engine_words import disc_words
from magview.bench.state import Side
from magview.bench.words import plate_move, screw_move, seen_words
from magview.practice import actions as do
from magview.practice.state import Note, Practice, SafeThing
from magview.spec.language import marked, number, tr, tr_n

_UNTIL = {
    ("lamp", True, True): marked("turn the propeller with rotation until the lamp changes"),
    ("lamp", True, False): marked("turn the propeller against rotation until the lamp changes"),
    ("lamp", False, True): marked("turn the rotor with rotation until the lamp changes"),
    ("lamp", False, False): marked("turn the rotor against rotation until the lamp changes"),
    ("mark", True, True): marked("turn the propeller with rotation until the straightedge comes in line"),
    ("mark", True, False): marked("turn the propeller against rotation until the straightedge comes in line"),
    ("mark", False, True): marked("turn the rotor with rotation until the straightedge comes in line"),
    ("mark", False, False): marked("turn the rotor against rotation until the straightedge comes in line"),
    ("widest", True, True): marked("turn the propeller with rotation until the contacts stand widest open"),
    ("widest", True, False): marked("turn the propeller against rotation until the contacts stand widest open"),
    ("widest", False, True): marked("turn the rotor with rotation until the contacts stand widest open"),
    ("widest", False, False): marked("turn the rotor against rotation until the contacts stand widest open"),
    ("stop", True, True): marked("turn the propeller with rotation until the piston meets the stop"),
    ("stop", True, False): marked("turn the propeller against rotation until the piston meets the stop"),
    ("stop", False, True): marked("turn the rotor with rotation until the piston meets the stop"),
    ("stop", False, False): marked("turn the rotor against rotation until the piston meets the stop"),
}
"""By what to turn to, whether the magneto is on the engine, and the way."""

_SIDES = {"left": marked("the left magneto"), "right": marked("the right magneto")}
_SAFE: dict[tuple[SafeThing, bool], str] = {
    ("fuel", True): marked("turn the fuel off"),
    ("fuel", False): marked("turn the fuel on"),
    ("mixture", True): marked("cut the mixture off"),
    ("mixture", False): marked("set the mixture rich"),
    ("throttle", True): marked("close the throttle"),
    ("throttle", False): marked("open the throttle"),
    ("leads", True): marked("ground the hanging plug leads and keep them clear"),
    ("leads", False): marked("let the plug leads hang"),
}
_RENEWED = {
    "lead": marked("put in a new lead"),
    "tab": marked("put in a new tab"),
    "switch": marked("put in a new ignition switch"),
    "places": marked("put both leads in their own places at the switch"),
    "insulation": marked("renew the insulation inside"),
}
_MOVED = {
    ("disc", 1): marked("A: move the disc on the drive flange 1 tooth with rotation"),
    ("disc", -1): marked("A: move the disc on the drive flange 1 tooth against rotation"),
    ("magneto", 1): marked("B: move the magneto flange on the disc 1 tooth with rotation"),
    ("magneto", -1): marked("B: move the magneto flange on the disc 1 tooth against rotation"),
}
_READINGS = {
    "opening": marked("straightedge past the mark as the contacts open"),
    "gap": marked("largest gap"),
    "firing": marked("fires before top dead centre"),
    "disc-zero": marked("disc reads at top dead centre"),
    "lead": marked("switch lead"),
    "note": marked("note"),
    "running-in": marked("new contacts: look at them again after running in"),
}

FINDINGS = {
    "sound": marked("sound"),
    "broken": marked("broken"),
    "shorted": marked("shorted"),
    "tab": marked("tab"),
    "chafed": marked("chafed through to ground"),
    "never-opens": marked("switch that never opens"),
    "never-closes": marked("switch that never closes"),
    "crossed": marked("crossed with the other magneto's"),
}
"""Faults of a switch lead, by the finding written down."""


def side_words(practice: Practice, side: Side) -> str:
    """ "the left magneto" where there are two, else "the magneto"."""
    return tr(_SIDES[side]) if practice.other is not None else tr("the magneto")


def note_words(note: Note) -> str:
    """A line of the notebook: what, which, how much."""
    name = tr(_READINGS[note.kind])
    if note.kind == "running-in":
        return name
    if note.value is None:
        return f"{name}: {tr(FINDINGS[note.text]) if note.kind == 'lead' else note.text}"
    if note.kind in ("opening", "gap"):
        value = tr("{length:mm} ({length:in})", length=note.value)
    elif note.kind == "disc-zero":
        value = disc_words(0.0 - note.value)
    else:
        value = f"{number(note.value)}°"
    if note.kind == "gap":
        name = tr("largest gap, lobe {lobe}", lobe=note.lobe)
    return f"{name}: {value}" + (f" – {note.text}" if note.text else "")


def act_words(act: do.Act, before: Practice, after: Practice) -> str:
    """Name an act as a person would, with the reading of an instrument after it."""
    text = _words(act, before, after)
    text = text[0].upper() + text[1:]
    if after.said is None:
        return text
    return f"{text}: {after.said.text}"


def _words(act: do.Act, before: Practice, after: Practice) -> str:
    if isinstance(act, do.Turning):
        return _turning(act, after)
    if isinstance(act, do.Setting):
        return _setting(act, before, after)
    if isinstance(act, do.Care):
        return _care(act)
    if isinstance(act, do.Tool):
        return _tool(act, before.timing_cylinder)
    if isinstance(act, do.Meter):
        return tr(_METERED[type(act)])
    if isinstance(act, do.LeadWork):
        return _lead(act, before, after)
    match act:
        case do.PointAt(part):
            return tr("point at {part}", part=tr(part[:60]))
        case do.WriteReading():
            return tr("write down – {note}", note=note_words(after.notebook[-1]))
        case do.HandIn():
            return tr("hand in")
        case _:
            return _engine(act, after)


def _turning(act: do.Turning, after: Practice) -> str:
    match act:
        case do.TurnRotor(by_deg):
            return (
                tr("turn the rotor {angle:.1deg} with rotation", angle=abs(by_deg))
                if by_deg >= 0
                else tr("turn the rotor {angle:.1deg} against rotation", angle=abs(by_deg))
            )
        case do.TurnPropeller(by_deg):
            return (
                tr("turn the propeller {angle:.1deg} with rotation", angle=abs(by_deg))
                if by_deg >= 0
                else tr("turn the propeller {angle:.1deg} against rotation", angle=abs(by_deg))
            )
        case do.TurnUntil(until, forward):
            return tr(_UNTIL[until, after.mounted, forward])
        case do.TurnToReading(reading_deg, forward):
            reading = reading_deg
            return (
                tr("turn the propeller with rotation to {reading}° on the disc", reading=reading)
                if forward
                else tr("turn the propeller against rotation to {reading}° on the disc", reading=reading)
            )
        case do.LetGo():
            return tr("let go of the rotor")
        case bench.LoadTrain():
            return tr("load the drive train against rotation")
    return tr("hold the rotor")


def _setting(act: do.Setting, before: Practice, after: Practice) -> str:
    magneto = after.bench.magneto
    match act:
        case do.TurnPlate():
            return plate_move(magneto, after.bench.backplate_deg - before.bench.backplate_deg)
        case do.TurnScrew():
            return screw_move(magneto, after.bench.screw_deg - before.bench.screw_deg)
    return describe(act, before.bench, after.bench)


_METERED: dict[type, str] = {
    do.MeterLead: marked("meter from the lead's plug to the case"),
    do.MeterTerminal: marked("meter from the magneto's terminal to the case"),
    do.MeterSwitch: marked("meter at the switch alone, the lead taken off it"),
}


_CARE = {
    do.InspectContacts: marked("look at the contacts"),
    do.DressContacts: marked("dress the contacts"),
    do.RenewContacts: marked("fit a new pair of contacts"),
    do.PressFelt: marked("press a thumbnail to the felt"),
}


def _care(act: do.Care) -> str:
    match act:
        case do.LeaveAsIs(what):
            return (
                tr("leave the contacts as they are") if what == "contacts" else tr("leave the chocks where they are")
            )
        case do.TakeCoilOff(off):
            return tr("take the coil off the contacts") if off else tr("put the coil on the contacts again")
        case do.OilFelt(drops):
            return tr_n("give the felt {count} drop of oil", "give the felt {count} drops of oil", count=drops)
    return tr(_CARE[type(act)])


def _tool(act: do.Tool, cylinder: int) -> str:
    match act:
        case do.LayStraightedge(on):
            return tr("lay the straightedge on") if on else tr("take the straightedge away")
        case do.Sight(eye_deg):
            if eye_deg == 0:
                return tr("look square over the straightedge")
            eye = abs(eye_deg)
            if eye_deg < 0:
                return tr("look from {eye}° ahead with rotation", eye=eye)
            return tr("look from {eye}° behind against rotation", eye=eye)
        case do.ConnectLamp(on):
            return tr("clip the lamp across the contacts") if on else tr("take the lamp off")
        case do.TryBlades(blades, kind):
            unit = "thou" if kind == "inch" else "mm"
            return tr("try {blades} {unit}", blades=" + ".join(number(b) for b in blades), unit=unit)
        case do.FitStop(on):
            return tr("screw the piston stop in") if on else tr("take the piston stop out")
        case do.TurnDisc(by_deg):
            by = abs(by_deg)
            return (
                tr("turn the disc on the crank {by:deg} earlier", by=by)
                if by_deg >= 0
                else tr("turn the disc on the crank {by:deg} later", by=by)
            )
    return tr("thumb over the plug hole of No. {cylinder}", cylinder=cylinder)


def _lead(act: do.LeadWork, before: Practice, after: Practice) -> str:
    match act:
        case do.Renew(part):
            return tr(_RENEWED[part])
        case _:
            return describe(act, before.bench, after.bench)


def _engine(act: do.EngineWork, after: Practice) -> str:
    match act:
        case do.Chock(on):
            return tr("chock the wheels") if on else tr("take the chocks away")
        case do.MakeSafe(what, done):
            return tr(_SAFE[what, done])
        case do.SparkPlugs(out):
            return tr("take the spark plugs out") if out else tr("put the spark plugs in")
        case do.PlugLeads(on):
            return tr("put the leads on their plugs") if on else tr("take the leads off their plugs")
        case do.Nuts(tight):
            return tr("tighten the magneto's nuts") if tight else tr("take the nuts off and draw the magneto back")
        case do.Pin(on):
            return tr("pin the rotor") if on else tr("take the pin out")
        case do.Remove():
            return tr("lift the magneto off")
        case do.Refit(by_marks):
            return tr("refit the magneto by its marks") if by_marks else tr("refit the magneto as its rotor stands")
        case do.MoveTooth(face, way):
            return seen_words(tr(_MOVED[face, way]), way, after.bench.magneto.rotation, "drive end")
        case bench.PaintMarks():
            return tr("paint marks across the coupling")
        case bench.ViewSide(side):
            return tr("go to the left magneto") if side == "left" else tr("go to the right magneto")
