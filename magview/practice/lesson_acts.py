"""Acts that bring about what a lesson's step waits for, and the controls that a lesson so needs at hand."""

from __future__ import annotations

from collections.abc import Sequence

from magview.bench import actions as bench
from magview.practice import actions as do
from magview.practice.attempt import name_of
from magview.practice.instruments import STEADY
from magview.practice.lesson import Lesson, LessonStep, Until
from magview.spec.language import marked

SCREW = (do.TurnScrew, bench.TightenLock)
PLATE = (do.TurnPlate, bench.TightenClamps)
LEAD = (bench.PullPlug, bench.SwitchIgnition, bench.SwitchOther, bench.FitJumper, bench.SlipPaper, do.Renew)
COUPLING = (do.Nuts, do.MoveTooth, bench.PaintMarks, do.Pin, do.Remove, do.Refit)

ACTS_OF: dict[str, tuple[type, ...]] = {
    "lock-tight": (bench.TightenLock,),
    "clamps-tight": (bench.TightenClamps,),
    "gap-in-limits": SCREW,
    "opening-at-mark": PLATE,
    "contacts-seen-opening": (bench.SwitchIgnition, bench.FitJumper),
    "lamp-shows": (bench.SwitchIgnition,),
    "said": LEAD,
    "proved": LEAD,
    "switch-on": (bench.SwitchIgnition,),
    "plug-out": (bench.PullPlug,),
    "jumper-on": (bench.FitJumper,),
    "made-safe": (do.MakeSafe,),
    "chocked": (do.Chock,),
    "plugs-out": (do.SparkPlugs, do.PlugLeads, do.MakeSafe),
    "stop-fitted": (do.FitStop,),
    "disc-at-zero": (do.TurnDisc,),
    "marked": COUPLING,
    "nuts-tight": COUPLING,
    "magneto-on": COUPLING,
    "timing-in-limits": COUPLING,
}
"""Of the acts that change something, those that each condition asks for; none where turning or looking does it."""

CHANGES: tuple[type, ...] = (
    *SCREW, *PLATE, *LEAD, *COUPLING, do.DressContacts, do.RenewContacts, do.Chock, do.MakeSafe, do.SparkPlugs,
    do.FitStop, do.TurnDisc,
)  # fmt: skip
"""Acts that change the magneto or make it live: one that no step asked for is pointed out."""


_TURNS: dict[str, tuple[type, ...]] = {
    "screw": (do.TurnScrew,), "plate": (do.TurnPlate,), "magneto-flange": (do.MoveTooth,),
    "toothed-disc": (do.MoveTooth,), "rotor": (),
}  # fmt: skip


def wanted(until: Until, act: do.Act) -> bool:
    """Whether an act is of the kind that a condition asks for."""
    if until.that == "act":
        return name_of(type(act)) == until.what
    if until.that in ("turned", "turned-here"):
        return isinstance(act, _TURNS.get(until.what or "", ()))
    return isinstance(act, ACTS_OF.get(until.that, ()))


# ---------------------------------------------------------------------- controls

TOOLS: dict[str, str] = {
    "parts": marked("Part"),
    "turn": marked("Turn"),
    "hold": marked("Hold the rotor"),
    "lamp": marked("Timing lamp on"),
    "edge": marked("Straightedge on"),
    "square": marked("Look square"),
    "lock": marked("Lock screw tight"),
    "clamps": marked("Clamp screws tight"),
    "screw": marked("Contact screw"),
    "plate": marked("Backplate"),
    "blades": marked("Feeler blades"),
    "look": marked("Look at the contacts"),
    "dress": marked("Dress the contacts"),
    "switch": marked("Switch at ON"),
    "plug": marked("Plug of the switch lead in"),
    "jumper": marked("Jumper on"),
    "meter": marked("Meter at the lead's plug"),
    "terminal": marked("Meter at the terminal"),
    "new-lead": marked("New switch lead"),
    "chocks": marked("Chocks at the wheels"),
    "fuel": marked("Fuel off"),
    "mixture": marked("Mixture cut off"),
    "throttle": marked("Throttle closed"),
    "leads": marked("Hanging leads grounded"),
    "plugs": marked("Spark plugs out"),
    "plug-leads": marked("Leads on the plugs"),
    "thumb": marked("Thumb over No. 1"),
    "stop": marked("Piston stop in"),
    "disc": marked("Disc on the crank"),
    "marks": marked("Paint marks"),
    "nuts": marked("Nuts tight"),
    "toothed-disc": marked("A: toothed disc"),
    "magneto-flange": marked("B: magneto flange"),
    "refit": marked("Put the magneto on as it stands"),
    "lift": marked("Lift the magneto off"),
    "leave-chocks": marked("Leave the chocks in"),
    "note": marked("Notebook"),
}
"""Every control a lesson can need, as it is labelled, in the order in which they stand."""

_OF_CONDITION: dict[str, tuple[str, ...]] = {
    "pointed-at": ("parts",), "rotor-near": ("turn",), "rotor-let-go": ("hold",),
    "lamp-shows": ("turn", "lamp"),
    "contacts-seen-opening": ("turn", "lamp"), "lamp-connected": ("lamp",), "edge-laid": ("edge",),
    "edge-square": ("edge", "square"), "lock-tight": ("lock",), "clamps-tight": ("clamps",),
    "opening-at-mark": ("plate", "clamps"), "gap-in-limits": ("screw", "lock"), "switch-on": ("switch",),
    "plug-out": ("plug",), "jumper-on": ("jumper",), "made-safe": ("fuel", "mixture", "throttle", "leads"),
    "chocked": ("chocks",), "plugs-out": ("plugs",), "proved": ("meter",),
    "stop-fitted": ("stop",), "stop-met": ("turn",), "disc-at-zero": ("disc",),
    "crank-near": ("turn",), "disc-near": ("turn",),
    "marked": ("marks",), "nuts-tight": ("nuts",), "magneto-on": ("lift", "refit"),
    "timing-in-limits": ("toothed-disc", "magneto-flange"), "wrote": ("note",),
}  # fmt: skip
_OF_ACT: dict[str, tuple[str, ...]] = {
    "try-blades": ("blades",), "inspect-contacts": ("look",), "dress-contacts": ("dress",),
    "meter-lead": ("meter",), "meter-terminal": ("terminal",), "feel-compression": ("thumb", "turn"),
    "leave-as-is": ("leave-chocks",), "turn-disc": ("disc",), "move-tooth": ("toothed-disc", "magneto-flange"),
    "refit": ("refit",), "remove": ("lift",), "plug-leads": ("plug-leads",), "renew": ("new-lead",),
    "turn-propeller": ("turn",), "turn-rotor": ("turn",), "turn-until": ("turn",), "let-go": ("hold",),
    "hold-rotor": ("hold",),
}  # fmt: skip
_BLADES = ("go", "drag", "no-go")


def tools_of(until: Until) -> tuple[str, ...]:
    """The controls that bring one condition about."""
    what = until.what or ""
    match until.that:
        case "turned" | "turned-here":
            return ("turn",) if what == "rotor" else (what,)
        case "blade":
            return ("blades",)
        case "act":
            return _OF_ACT.get(what, ())
        case "said" if what in _BLADES:
            return ("blades",)
        case "said" if what.startswith("pressure") or what == "no pressure":
            return ("thumb",)
        case "said" if what in STEADY.values():
            return ("turn", "lamp")
        case "said":
            return ("meter", "terminal") if what.endswith("ground") else ()
    return _OF_CONDITION.get(until.that, ())


def tools_for(step: LessonStep) -> tuple[str, ...]:
    """The controls of one step."""
    return tools_toward(step.until)


def tools_toward(waited: Sequence[Until]) -> tuple[str, ...]:
    """The controls that bring conditions about; a rotor that is to be let go then turns by itself."""
    found = {tool for until in waited for tool in tools_of(until)}
    return _in_order(found - {"turn"} if any(until.that == "rotor-let-go" for until in waited) else found)


def tools_in(lesson: Lesson) -> tuple[str, ...]:
    """The controls of a whole lesson: the same from its first step to its last, so that nothing moves."""
    found = {tool for step in lesson.steps for tool in tools_for(step)}
    if "meter" in found and any(fault.kind == "lead" for fault in lesson.exercise.faults):
        found |= {"new-lead", "plug", "switch"}  # what the meter says may call for them
    return _in_order(found)


def _in_order(found: set[str]) -> tuple[str, ...]:
    return tuple(tool for tool in TOOLS if tool in found)
