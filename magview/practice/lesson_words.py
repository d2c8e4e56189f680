"""Conditions of a lesson's steps in words, and the part of the picture they are about."""

from __future__ import annotations

from magview.practice import actions as do
from magview.practice.lesson import LessonRun, LessonStep, Until
from magview.practice.predicates import Moment, holds
from magview.practice.state import Feel, Practice
from magview.spec.language import marked, together, tr

_WORDS = {
    "rotor-let-go": (marked("the rotor to be let go"), ""),
    "lamp-connected": (marked("the lamp across the contacts"), marked("the lamp taken off")),
    "contacts-seen-opening": (marked("the lamp to go from dark to light while you turn with rotation"), ""),
    "edge-laid": (marked("the straightedge laid on"), marked("the straightedge off")),
    "edge-square": (marked("the straightedge laid on and looked at square"), marked("the eye away from square")),
    "lock-tight": (marked("the lock screw tight"), marked("the lock screw slack")),
    "clamps-tight": (marked("the clamp screws tight"), marked("the clamp screws slack")),
    "opening-at-mark": (marked("the contacts to open at the mark"), ""),
    "gap-in-limits": (marked("the largest gap within its limits"), ""),
    "switch-on": (marked("the switch on"), marked("the switch off")),
    "plug-out": (marked("the plug pulled out"), marked("the plug in")),
    "jumper-on": (marked("the jumper on"), marked("the jumper off")),
    "made-safe": (marked("fuel, mixture, throttle and hanging leads seen to"), ""),
    "chocked": (marked("chocks at the wheels"), marked("the chocks away")),
    "plugs-out": (marked("the spark plugs out"), marked("the spark plugs in")),
    "proved": (marked("the lead proved: meter, plug out, switch off"), ""),
    "stop-fitted": (marked("the piston stop in"), marked("the piston stop out")),
    "disc-at-zero": (marked("the disc to read zero at top dead centre"), ""),
    "marked": (marked("marks painted across the coupling"), ""),
    "nuts-tight": (marked("the nuts tight"), marked("the nuts off")),
    "magneto-on": (marked("the magneto on the engine"), marked("the magneto off the engine")),
    "timing-in-limits": (marked("it to fire where it should"), ""),
}
_LAMP = {
    "light": marked("the lamp light"),
    "dark": marked("the lamp dark"),
    "not connected": marked("the lamp not connected"),
}
_ROTOR = {
    "neutral": marked("the rotor at neutral"),
    "register": marked("the rotor at full register"),
    "e-gap": marked("the rotor at the E-gap"),
    "widest": marked("the contacts widest open"),
}
_TURNED = {
    ("screw", True): marked("the contact screw turned {angle}° closer or more"),
    ("screw", False): marked("the contact screw turned {angle}° wider or more"),
    ("plate", True): marked("the backplate turned {angle}° with rotation or more"),
    ("plate", False): marked("the backplate turned {angle}° against rotation or more"),
}
_PARTS = {
    "rotor-near": "rotor",
    "rotor-let-go": "rotor",
    "edge-laid": "step",
    "edge-square": "step",
    "lock-tight": "lock screw",
    "clamps-tight": "clamp screw",
    "opening-at-mark": "backplate",
    "gap-in-limits": "contact screw",
    "contacts-seen-opening": "contacts",
    "lamp-connected": "contacts",
}


_TABS = {
    "lamp-connected": "tray", "edge-laid": "tray", "edge-square": "tray",
    "stop-fitted": "tray", "disc-at-zero": "tray",
    "turned": "work", "lock-tight": "work", "clamps-tight": "work", "opening-at-mark": "work",
    "gap-in-limits": "work", "switch-on": "work", "plug-out": "work", "chocked": "work",
    "jumper-on": "work", "made-safe": "work", "plugs-out": "work",
    "marked": "work", "nuts-tight": "work", "magneto-on": "work", "timing-in-limits": "work",
    "wrote": "notebook",
}  # fmt: skip
"""Tab of what brings a condition about; turning is always in view."""
_ACT_TABS = {
    "try-blades": "tray", "meter-lead": "tray", "meter-terminal": "tray", "meter-switch": "tray",
    "feel-compression": "tray", "turn-disc": "tray",
    "inspect-contacts": "work", "dress-contacts": "work", "renew": "work", "leave-as-is": "work",
}  # fmt: skip


def tabs_of(step: LessonStep) -> tuple[str, ...]:
    """Return the tabs that a step needs: "tray", "work" or "notebook", each once, in this order."""
    found = set()
    for until in step.until:
        if until.that == "act":
            found.add(_ACT_TABS.get(until.what or "", ""))
        elif until.that == "proved":
            found |= {"tray", "work"}
        elif until.that == "said":
            found.add("" if until.what in _STEADY else "tray")
        else:
            found.add(_TABS.get(until.that, ""))
    return tuple(tab for tab in ("tray", "work", "notebook") if tab in found)


def waiting_words(until: Until) -> str:
    """The act that one condition of a step waits for."""
    what, value = until.what or "", until.value or 0.0
    match until.that:
        case "pointed-at":
            return tr("the {part} to be pointed at", part=tr(what))
        case "rotor-near":
            return tr(_ROTOR[what])
        case "turned":
            return tr(_TURNED[what, value > 0], angle=abs(value))
        case "act":
            return tr("this to be done: {act}", act=what.replace("-", " "))
        case "said":
            return _asked_words(what)
        case "lamp-shows":
            return tr(_LAMP[what])
        case "stop-met":
            return (
                tr("the piston to meet the stop with rotation")
                if what == "with"
                else tr("the piston to meet the stop against rotation")
            )
        case "crank-near":
            return tr("the crank {value}° before top dead centre", value=value)
        case "wrote":
            return tr("a line in the notebook: {act}", act=what.replace("-", " "))
    yes, no = _WORDS[until.that]
    return tr(yes if until.yes else no)


_STEADY = ("dark all the way round", "light all the way round")
"""Words of the lamp where nothing changes in a whole turn."""


def _asked_words(answer: str) -> str:
    """The instrument to use. Its reading is for the learner to find, but for blades: they are picked by
    what they shall say."""
    if answer in tuple(Feel):
        return tr("the answer “{answer}”", answer=tr(answer))
    if answer in _STEADY:
        return tr("the lamp to be watched all the way round")
    if answer.endswith("ground"):
        return tr("what the meter says")
    return tr("what an instrument says")


def missing(step: LessonStep, act: do.Act, before: Practice, after: Practice) -> list[str]:
    """Conditions of a step that do not hold after an act, in words."""
    moment = Moment(before, after, act)
    return [
        waiting_words(u) for u in step.until if holds(u.that, moment, u.what, u.value, u.within) != u.yes
    ]  # fmt: skip


def wrong_words(step: LessonStep, act: do.Act, before: Practice, after: Practice) -> str:
    """One sentence on an act that was not what the step waits for; "" for a move on the way to it."""
    wanted = missing(step, act, before, after)
    if isinstance(act, do.PointAt) and act.part == part_of(step):
        return tr(
            "That is the {part}; to click on it does nothing here. The step waits for {wanted}.",
            part=tr(act.part),
            wanted=together(wanted),
        )
    if isinstance(act, do.PointAt):
        return tr("That is the {part}. The step waits for {wanted}.", part=tr(act.part), wanted=together(wanted))
    undone = _undone(step, act, before, after)
    if undone:
        return tr(
            "That undid {undone}. The step waits for {wanted}.", undone=together(undone), wanted=together(wanted)
        )
    return tr("Not yet. The step waits for {wanted}.", wanted=together(wanted)) if wanted else ""


def _undone(step: LessonStep, act: do.Act, before: Practice, after: Practice) -> list[str]:
    was = {waiting_words(u) for u in step.until if _held(u, act, before)}
    return [words for words in missing(step, act, before, after) if words in was]


def _held(until: Until, act: do.Act, room: Practice) -> bool:
    lasting = until.that in _WORDS and until.that not in ("rotor-let-go", "contacts-seen-opening")
    return lasting and holds(until.that, Moment(room, room, act), until.what, until.value, until.within) == until.yes


def step_done(number: int, step: LessonStep, already: bool = False) -> str:
    """Sentence that a step, counted from 0, is done, and what to notice; `already`: it was so before it began."""
    words = tr("Step {step}: so already.", step=number + 1) if already else tr("Step {step}: done.", step=number + 1)
    return f"{words} {tr(step.done)}" if step.done else words


def done_words(run: LessonRun, since: int) -> str:
    """Sentences on the steps done since one of them waited."""
    steps = run.lesson.steps
    return " ".join(step_done(n, steps[n], n > since) for n in range(since, run.at))


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
    """Things to notice on the way, in their order."""
    return [tr(step.done) for step in run.lesson.steps[: run.at] if step.done]
