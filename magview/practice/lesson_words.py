"""What a lesson waits for, in words, and which part of the picture it is about."""

from __future__ import annotations

from magview.practice import actions as do
from magview.practice.lesson import LessonRun, LessonStep, Until
from magview.practice.predicates import Moment, holds
from magview.practice.state import Practice

_WORDS = {
    "rotor-let-go": ("the rotor to be let go", ""),
    "lamp-connected": ("the lamp across the contacts", "the lamp taken off"),
    "contacts-seen-opening": ("the lamp to go from dark to light while you turn with rotation", ""),
    "edge-square": ("the straightedge laid on and looked at square", "the eye away from square"),
    "lock-tight": ("the lock screw tight", "the lock screw slack"),
    "clamps-tight": ("the clamp screws tight", "the clamp screws slack"),
    "opening-at-mark": ("the contacts to open at the mark", ""),
    "gap-in-limits": ("the largest gap within its limits", ""),
    "switch-on": ("the switch on", "the switch off"),
    "plug-out": ("the plug pulled out", "the plug in"),
    "chocked": ("chocks at the wheels", "the chocks away"),
    "plugs-out": ("the spark plugs out", "the spark plugs in"),
    "proved": ("the lead proved: meter, plug out, switch off", ""),
    "stop-fitted": ("the piston stop in", "the piston stop out"),
    "disc-at-zero": ("the disc to read zero at top dead centre", ""),
    "marked": ("marks painted across the coupling", ""),
    "nuts-tight": ("the nuts tight", "the nuts off"),
    "magneto-on": ("the magneto on the engine", "the magneto off the engine"),
    "timing-in-limits": ("it to fire where it should", ""),
}
_ROTOR = {
    "neutral": "the rotor at neutral",
    "register": "the rotor at full register",
    "e-gap": "the rotor at the E-gap",
    "widest": "the contacts widest open",
}
_PARTS = {
    "rotor-near": "rotor",
    "rotor-let-go": "rotor",
    "edge-square": "step",
    "lock-tight": "lock screw",
    "clamps-tight": "clamp screw",
    "opening-at-mark": "backplate",
    "gap-in-limits": "contact screw",
    "contacts-seen-opening": "contacts",
    "lamp-connected": "contacts",
}


def waiting_words(until: Until) -> str:
    """What one condition of a step waits for."""
    what, value = until.what or "", until.value or 0.0
    match until.that:
        case "pointed-at":
            return f"the {what} to be pointed at"
        case "rotor-near":
            return _ROTOR[what]
        case "turned":
            name = "contact screw" if what == "screw" else "backplate"
            way = ("closer" if value > 0 else "wider") if what == "screw" else ("with" if value > 0 else "against")
            return f"the {name} turned {abs(value):g}° {way if what == 'screw' else f'{way} rotation'} or more"
        case "act":
            return f"this to be done: {what.replace('-', ' ')}"
        case "said":
            return f"the answer “{what}”"
        case "lamp-shows":
            return f"the lamp {what}"
        case "stop-met":
            return f"the piston to meet the stop {what} rotation"
        case "crank-near":
            return f"the crank {value:g}° before top dead centre"
        case "wrote":
            return f"a line in the notebook: {what.replace('-', ' ')}"
    yes, no = _WORDS[until.that]
    return yes if until.yes else no


def missing(step: LessonStep, act: do.Act, before: Practice, after: Practice) -> list[str]:
    """What of a step does not hold after an act, in words."""
    moment = Moment(before, after, act)
    return [
        waiting_words(u) for u in step.until if holds(u.that, moment, u.what, u.value, u.within) != u.yes
    ]  # fmt: skip


def wrong_words(step: LessonStep, act: do.Act, before: Practice, after: Practice) -> str:
    """One sentence on an act that was not what the step waits for; "" for a move on the way to it."""
    wanted = missing(step, act, before, after)
    if isinstance(act, do.PointAt):
        return f"That is the {act.part}. The step waits for {' and '.join(wanted)}."
    undone = _undone(step, act, before, after)
    if undone:
        return f"That undid {' and '.join(undone)}. The step waits for {' and '.join(wanted)}."
    return f"Not yet. The step waits for {' and '.join(wanted)}." if wanted else ""


def _undone(step: LessonStep, act: do.Act, before: Practice, after: Practice) -> list[str]:
    was = {waiting_words(u) for u in step.until if _held(u, act, before)}
    return [words for words in missing(step, act, before, after) if words in was]


def _held(until: Until, act: do.Act, room: Practice) -> bool:
    lasting = until.that in _WORDS and until.that not in ("rotor-let-go", "contacts-seen-opening")
    return lasting and holds(until.that, Moment(room, room, act), until.what, until.value, until.within) == until.yes


def part_of(step: LessonStep) -> str:
    """The part of the breaker end a step is about, by its name in the picture; "" where it is about none."""
    for until in step.until:
        if until.that == "pointed-at":
            return until.what or ""
        if until.that == "turned":
            return "contact screw" if until.what == "screw" else "backplate"
        if until.that in _PARTS:
            return _PARTS[until.that]
    return ""


def learnt(run: LessonRun) -> list[str]:
    """What was to be noticed on the way, in the order it was."""
    return [step.done for step in run.lesson.steps[: run.at] if step.done]
