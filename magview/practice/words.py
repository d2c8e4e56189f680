"""Acts in words, for the record of an attempt: moves as a hand knows them, no true numbers."""

from __future__ import annotations

from magview.bench import actions as bench
from magview.bench.describe import describe
from magview.bench.state import Side
from magview.bench.words import plate_move, screw_move, way_words
from magview.practice import actions as do
from magview.practice.state import Note, Practice
from magview.spec.units import MM_PER_INCH

_UNTIL = {
    "lamp": "until the lamp changes",
    "mark": "until the straightedge comes in line",
    "widest": "until the contacts stand widest open",
    "stop": "until the piston meets the stop",
}
_READINGS = {
    "opening": "straightedge past the mark as the contacts open",
    "gap": "largest gap",
    "firing": "fires before top dead centre",
    "disc-zero": "disc reads at top dead centre",
    "lead": "switch lead",
    "note": "note",
}


def side_words(practice: Practice, side: Side) -> str:
    """ "the left magneto" where there are two, else "the magneto"."""
    return f"the {side} magneto" if practice.other is not None else "the magneto"


def note_words(note: Note) -> str:
    """A line of the notebook: what, which, how much."""
    name = _READINGS[note.kind]
    if note.value is None:
        return f"{name}: {note.text}"
    if note.kind in ("opening", "gap"):
        number = f"{note.value:.3f} mm ({note.value / MM_PER_INCH:.4f} in)"
    else:
        number = f"{note.value:g}°"
    where = f", lobe {note.lobe}" if note.kind == "gap" else ""
    return f"{name}{where}: {number}" + (f" – {note.text}" if note.text else "")


def act_words(act: do.Act, before: Practice, after: Practice) -> str:
    """What an act did, as a person would say it, with what an instrument said to it."""
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
    if isinstance(act, do.Tool):
        return _tool(act)
    if isinstance(act, do.LeadWork):
        return _lead(act, before, after)
    match act:
        case do.PointAt(part):
            return f"point at {part[:60]}"
        case do.WriteReading():
            return f"write down – {note_words(after.notebook[-1])}"
        case do.HandIn():
            return "hand in"
        case _:
            return _engine(act)


def _turning(act: do.Turning, after: Practice) -> str:
    what = "the propeller" if after.mounted else "the rotor"
    match act:
        case do.TurnRotor(by_deg):
            return f"turn the rotor {_way(by_deg)}"
        case do.TurnPropeller(by_deg):
            return f"turn the propeller {_way(by_deg)}"
        case do.TurnUntil(until, forward):
            return f"turn {what} {'with' if forward else 'against'} rotation {_UNTIL[until]}"
        case do.TurnToReading(reading_deg, forward):
            return f"turn the propeller {'with' if forward else 'against'} rotation to {reading_deg:g}° on the disc"
        case do.LetGo():
            return "let go of the rotor"
    return "hold the rotor"


def _setting(act: do.Setting, before: Practice, after: Practice) -> str:
    magneto = after.bench.magneto
    match act:
        case do.TurnPlate():
            return plate_move(magneto, after.bench.backplate_deg - before.bench.backplate_deg)
        case do.TurnScrew():
            return screw_move(magneto, after.bench.screw_deg - before.bench.screw_deg)
        case do.InspectContacts():
            return "look at the contacts"
        case do.DressContacts():
            return "dress the contacts"
        case _:
            return describe(act, before.bench, after.bench)


def _tool(act: do.Tool) -> str:
    match act:
        case do.LayStraightedge(on):
            return "lay the straightedge on" if on else "take the straightedge away"
        case do.Sight(eye_deg):
            return "look square over the straightedge" if eye_deg == 0 else f"look from {eye_deg:g}° to the side"
        case do.ConnectLamp(on):
            return "clip the lamp across the contacts" if on else "take the lamp off"
        case do.TryBlades(blades, kind):
            unit = "thou" if kind == "inch" else "mm"
            return f"try {' + '.join(f'{b:g}' for b in blades)} {unit}"
        case do.MeterLead():
            return "meter from the lead's plug to the case"
        case do.FitStop(on):
            return "screw the piston stop in" if on else "take the piston stop out"
        case do.TurnDisc(by_deg):
            return f"turn the disc on the crank {abs(by_deg):.2f}° {'earlier' if by_deg >= 0 else 'later'}"
    return "thumb over No. 1's plug hole"


def _lead(act: do.LeadWork, before: Practice, after: Practice) -> str:
    match act:
        case do.SlipPaper(under):
            return f"{'slip paper under' if under else 'take the paper from'} the spring tab"
        case do.Renew(part):
            return f"put in a new {part}" if part != "insulation" else "renew the insulation inside"
        case _:
            return describe(act, before.bench, after.bench)


def _engine(act: do.EngineWork) -> str:
    match act:
        case do.Chock(on):
            return "chock the wheels" if on else "take the chocks away"
        case do.SparkPlugs(out):
            return f"{'take the spark plugs out' if out else 'put the spark plugs in'}"
        case do.Nuts(tight):
            return "tighten the magneto's nuts" if tight else "take the nuts off and draw the magneto back"
        case do.Pin(on):
            return "pin the rotor" if on else "take the pin out"
        case do.Remove():
            return "lift the magneto off"
        case do.Refit(by_marks):
            return f"refit the magneto {'by its marks' if by_marks else 'as its rotor stands'}"
        case do.MoveTooth(face, way):
            face_words = "the magneto flange on the disc" if face == "magneto" else "the disc on the drive flange"
            return f"move {face_words} {way_words(way)}"
        case bench.PaintMarks():
            return "paint marks across the coupling"
        case bench.ViewSide(side):
            return f"go to the {side} magneto"


def _way(degrees: float) -> str:
    return f"{abs(degrees):.1f}° {'with' if degrees >= 0 else 'against'} rotation"
