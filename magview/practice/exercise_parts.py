"""Parts of an exercise: hidden faults, the tray, the condition as found, and the goals."""

from __future__ import annotations

from typing import Annotated, Literal, Self, get_args

from pydantic import Field, model_validator

from magview.bench.lead_words import LAMPS
from magview.bench.state import Side
from magview.physics.engine.timing_light import LampKind
from magview.spec.base import Model, Text
from magview.spec.fields import Choices, Quantity, may_say, said
from magview.spec.language import marked, tr

FaultKind = Literal[
    "opening",
    "gap",
    "plate",
    "creep",
    "lobe-low",
    "pip",
    "backlash",
    "teeth",
    "disc-teeth",
    "vernier",
    "disc-zero",
    "wrong-stroke",
    "rotor-at-neutral",
    "lead",
    "contacts",
    "dry-felt",
]
ContactGrade = Literal["frosted", "light", "mound", "pit"]
"""Look of the contacts' faces as found: dull grey and frosted; light marks, with no deep pit and no high mound;
a mound that stands well above its face; a deep pit."""
LeadFault = Literal[
    "sound", "broken", "shorted", "tab", "chafed", "never-opens", "never-closes", "crossed"
]  # fmt: skip
GoalKind = Literal[
    "e-gap",
    "opening",
    "gap",
    "contacts",
    "disc-zero",
    "timing",
    "synchronised",
    "lead",
    "marks",
    "secured",
    "reading",
]
Written = Literal["opening", "gap", "firing", "disc-zero", "lead"]

FAULT_LIMITS: dict[str, tuple[float, str]] = {
    "opening": (15.0, marked("rotor degrees, positive = opens late")),
    "gap": (1.0, marked("millimetres, positive = too wide; it opens at the E-gap all the same")),
    "plate": (15.0, marked("degrees the plate is off, positive with cam rotation")),
    "creep": (45.0, marked("degrees the contact screw goes along with its lock screw, positive = contacts closer")),
    "lobe-low": (0.5, marked("millimetres one lobe lifts less")),
    "pip": (0.5, marked("millimetres of pip on the contacts")),
    "backlash": (10.0, marked("rotor degrees of play in the coupling")),
    "teeth": (12.0, marked("whole teeth of B, the magneto flange on the disc, positive = fires early")),
    "disc-teeth": (12.0, marked("whole teeth of A, the disc on the drive flange, positive = fires early")),
    "vernier": (12.0, marked("whole vernier steps, positive = fires early")),
    "disc-zero": (45.0, marked("crank degrees the disc reads at top dead centre")),
    "contacts": (0.5, marked("millimetres a mound stands above its face")),
}
"""The largest size of each kind of fault that has one, and its unit and sign. The other kinds have no size."""

FAULTS: dict[str, str] = {
    "opening": marked("opens early or late"),
    "gap": marked("gap too wide or narrow"),
    "plate": marked("backplate off"),
    "creep": marked("lock screw carries the contact screw along"),
    "lobe-low": marked("a low lobe"),
    "pip": marked("pip on the contacts"),
    "backlash": marked("play in the coupling"),
    "teeth": marked("B: magneto flange on the disc, teeth out"),
    "disc-teeth": marked("A: disc on the drive flange, teeth out"),
    "vernier": marked("vernier steps out"),
    "disc-zero": marked("disc not at zero"),
    "wrong-stroke": marked("on the wrong stroke"),
    "rotor-at-neutral": marked("fitted at neutral"),
    "lead": marked("switch lead"),
    "contacts": marked("the contacts' faces"),
    "dry-felt": marked("a dry felt"),
}
"""Names of the kinds of fault."""

LEADS: dict[str, str] = {
    "sound": marked("sound"),
    "chafed": marked("lead chafed through"),
    "never-opens": marked("switch never opens"),
    "never-closes": marked("switch never closes"),
    "crossed": marked("leads crossed"),
    "broken": marked("broken"),
    "shorted": marked("shorted"),
    "tab": marked("tab"),
}
GRADES: dict[str, str] = {
    "frosted": marked("frosted"),
    "light": marked("light marks"),
    "mound": marked("mound"),
    "pit": marked("deep pit"),
}
GOALS: dict[str, str] = {
    "e-gap": marked("rotor held at the E-gap"),
    "opening": marked("contacts open at the mark"),
    "gap": marked("largest gap within its limits"),
    "contacts": marked("contacts clean and flat"),
    "disc-zero": marked("disc set to top dead centre"),
    "timing": marked("timed to the engine"),
    "synchronised": marked("both magnetos together"),
    "lead": marked("switch lead sound and proved"),
    "marks": marked("coupling marked first"),
    "secured": marked("everything tight and closed up"),
    "reading": marked("a reading, as written down"),
}
READINGS: dict[str, str] = {
    "opening": marked("opening, as written down"),
    "gap": marked("largest gap, as written down"),
    "firing": marked("firing, as written down"),
    "disc-zero": marked("disc's zero, as written down"),
    "lead": marked("switch lead, as written down"),
}

FAULT_UNITS: dict[str, str] = {
    "opening": marked("rotor °"),
    "gap": marked("mm"),
    "plate": marked("°"),
    "creep": marked("°"),
    "lobe-low": marked("mm"),
    "pip": marked("mm"),
    "backlash": marked("rotor °"),
    "teeth": marked("teeth"),
    "disc-teeth": marked("teeth"),
    "vernier": marked("steps"),
    "disc-zero": marked("crank °"),
    "contacts": marked("mm"),
}
"""The unit of each kind of fault that has a size, as it stands in a label."""

READING_UNITS = {"opening": marked("mm"), "gap": marked("mm"), "firing": marked("°"), "disc-zero": marked("°")}
"""The unit that each reading in numbers is written down in."""

WAYS: dict[str, tuple[str, str]] = {
    "opening": (marked("late"), marked("early")),
    "gap": (marked("too wide"), marked("too narrow")),
    "plate": (marked("with cam rotation"), marked("against cam rotation")),
    "creep": (marked("closer"), marked("wider")),
    "teeth": (marked("early"), marked("late")),
    "disc-teeth": (marked("early"), marked("late")),
    "vernier": (marked("early"), marked("late")),
    "disc-zero": (marked("before its zero"), marked("after its zero")),
}
"""Faults that have a sign, and in words what is plus and what is minus."""

NEED_ENGINE = ("backlash", "teeth", "disc-teeth", "vernier", "disc-zero", "wrong-stroke", "rotor-at-neutral")
GOALS_OF_ENGINE = ("disc-zero", "timing", "synchronised", "marks")


_EACH = Choices(((None, marked("each magneto")), ("left", marked("left")), ("right", marked("right"))))


# fmt: off
class Fault(Model):
    """One hidden fault, drawn for each magneto it is on. `chance`: how likely it is there at all."""

    kind: Annotated[FaultKind, Choices(tuple(FAULTS.items())), said(
        marked("Fault"), marked("The fault, hidden from the trainee."))]
    side: Annotated[Side | None, _EACH, said(
        marked("On which magneto"), marked("The magneto it is on; left out: on each."))] = None
    size: Annotated[
        tuple[Annotated[float, said(marked("Size from"))], Annotated[float, said(marked("Size to"))]],
        said(marked("Size"), marked("From and to, never negative; the kind gives the unit.")),
    ] = (0.0, 0.0)
    way: Annotated[
        Literal["plus", "minus", "either"],
        Choices((("plus", marked("plus")), ("minus", marked("minus")), ("either", marked("either")))),
        said(marked("Which way"), marked("The sign of the size: plus, minus, or drawn."))] = "plus"
    chance: Annotated[float, Field(gt=0.0, le=1.0), Quantity("%", scale=100.0), said(
        marked("How likely it is there"), marked("Drawn for each magneto. In the file 1 is always."))] = 1.0
    lobe: Annotated[Annotated[int, Field(ge=1, le=36)] | None, said(
        marked("Which lobe"), marked("Which lobe is low; left out: drawn."))] = None
    among: Annotated[
        tuple[LeadFault | ContactGrade, ...], Field(max_length=8), Choices((*LEADS.items(), *GRADES.items())), said(
            marked("One of"),
            marked("What the switch lead may suffer from, or how the contacts may look: one is drawn."))] = ()
    # fmt: on

    @property
    def sized(self) -> bool:
        """Whether a size is drawn for it."""
        return "size" in fields_of_fault(self.kind, self.among)

    @model_validator(mode="after")
    def _size_fits_kind(self) -> Self:
        low, high = self.size
        if not 0.0 <= low <= high:
            raise ValueError(
                tr(
                    "size is [{low}, {high}]; it must run upwards from 0 or more (way gives the sign)",
                    low=low,
                    high=high,
                )
            )
        if self.sized:
            most, unit = FAULT_LIMITS[self.kind]
            if not 0.0 < high <= most:
                raise ValueError(
                    tr(
                        "size of {kind} ends at {high}; it must be above 0 and at most {most} ({unit})",
                        kind=self.kind,
                        high=high,
                        most=most,
                        unit=tr(unit),
                    )
                )
            if self.kind in ("teeth", "disc-teeth", "vernier") and not (low.is_integer() and high.is_integer()):
                raise ValueError(
                    tr(
                        "size of {kind} is [{low}, {high}]; it must be whole numbers",
                        kind=self.kind,
                        low=low,
                        high=high,
                    )
                )
        elif high != 0.0:
            raise ValueError(tr("size is not for {kind}, which is there or is not", kind=self.kind))
        self._check_among()
        if self.kind in ("pip", "lobe-low", "backlash", "contacts") and self.way != "plus":
            raise ValueError(tr('way of {kind} must be left out or "plus"', kind=self.kind))
        return self

    def _check_among(self) -> None:
        allowed: tuple[str, ...] = {"lead": get_args(LeadFault), "contacts": get_args(ContactGrade)}.get(
            self.kind, ()
        )
        if bool(allowed) == bool(self.among) and set(self.among) <= set(allowed):
            return
        if self.kind == "contacts":
            raise ValueError(tr("among of kind contacts must be a list of frosted, light, mound, pit"))
        known = ", ".join(get_args(LeadFault))
        raise ValueError(tr("among is for kind lead, which needs it: a list of {known}", known=known))


def fields_of_fault(kind: str, among: tuple[str, ...]) -> tuple[str, ...]:
    """The fields that a kind of fault has; of the contacts only a mound has a size."""
    own = {
        "size": kind in FAULT_LIMITS and (kind != "contacts" or "mound" in among),
        "way": kind in WAYS,
        "lobe": kind == "lobe-low",
        "among": kind in ("lead", "contacts"),
    }
    return ("kind", "side", *(name for name, has in own.items() if has), "chance")


def fields_of_goal(goal: str, reading: str | None) -> tuple[str, ...]:
    """The fields that a goal has."""
    own = {
        "every_lobe": goal in ("gap", "opening"),
        "reading": goal == "reading",
        "within": goal == "reading" and reading not in (None, "lead"),
    }
    return ("goal", "weight", "side", *(name for name, has in own.items() if has))


class Tray(Model):
    """The instruments that lie ready. What is left out is not there."""

    straightedge: Annotated[
        Literal["1/32 in", "1/64 in", "0.5 mm"] | None,
        Choices(
            ((None, marked("none")), ("1/32 in", "1/32 in"), ("1/64 in", "1/64 in"), ("0.5 mm", "0.5 mm")),
        ),
    ] = may_say(
        marked("Straightedge"), marked("The divisions of the marks on the rim.")
    )
    lamp: bool = may_say(marked("timing lamp"), marked("Whether a timing light lies ready."), False)
    lamp_kind: Annotated[LampKind, Choices(tuple(LAMPS.items()))] = may_say(
        marked("Timing light"),
        marked("Its effect. A plain battery lamp cannot tell the contacts while the coil is connected."),
        "open",
    )
    blades: Annotated[
        tuple[Literal["inch", "metric"], ...],
        Field(max_length=2),
        Choices((("inch", marked("blades in inches")), ("metric", marked("metric blades")))),
    ] = may_say(marked("Blades"), marked("The sets of feeler blades that lie ready."), ())
    disc_step_deg: Annotated[float, Field(ge=0.1, le=5.0), Quantity("°", "crank")] | None = may_say(
        marked("Crank disc, read to"), marked("How finely the crank disc can be read.")
    )
    stop: bool = may_say(marked("piston stop"), marked("Whether a positive stop lies ready."), False)
    meter: bool = may_say(
        marked("meter for the switch lead"), marked("Whether a meter for the switch lead lies ready."), False
    )


# The field `marked` hides the function of that name from the class's annotations and from the fields below it.
_Rotor = Annotated[
    Literal["neutral", "anywhere", "e-gap"],
    Choices((("neutral", marked("at neutral")), ("anywhere", marked("anywhere")), ("e-gap", marked("at the E-gap")))),
]
_CHOCKED = may_say(marked("wheels chocked"), marked("Chocks stand at the wheels."), False)
_PLUGS_OUT = may_say(marked("spark plugs out"), marked("At least one from every cylinder."), False)
_MADE_SAFE = may_say(
        marked("fuel, mixture, throttle, leads seen to"),
        marked("Fuel off, mixture cut off, throttle closed, hanging leads grounded or kept clear."),
        False,
    )
_PROVED = may_say(
        marked("switch lead proved"), marked("By whoever handed the work over."), False
    )
_DISC_AT_ZERO = may_say(
        marked("disc at zero"), marked("The crank disc has been set by the stop already."), False
    )


class Start(Model):
    """Condition as the trainee finds it."""

    rotor: _Rotor = may_say(
        marked("Rotor, off the engine"), marked("On the engine the crank stands anywhere."), "neutral"
    )
    mounted: bool = may_say(marked("magneto on the engine"), marked("Off it, it lies on the bench."), True)
    switch_on: bool = may_say(marked("switch on"), marked("Whether the ignition switch stands at ON."), False)
    slack: bool = may_say(marked("screws slack"), marked("Lock screw and clamp screws."), False)
    marked: bool = may_say(marked("coupling marked"), marked("Paint marks stand on the coupling."), False)
    chocked: bool = _CHOCKED
    plugs_out: bool = _PLUGS_OUT
    made_safe: bool = _MADE_SAFE
    proved: bool = _PROVED
    disc_at_zero: bool = _DISC_AT_ZERO


class Goal(Model):
    """One thing that counts, with its weight."""

    goal: Annotated[GoalKind, Choices(tuple(GOALS.items()))] = Field(
        title=marked("Goal"), description=marked("The goal.")
    )
    weight: Annotated[float, Field(gt=0.0, le=100.0)] = Field(
        title=marked("Weight"), description=marked("Its share of the marks, beside the other goals' weights.")
    )
    side: Annotated[Side | None, _EACH] = may_say(
        marked("On which magneto"), marked("The magneto; left out: each, the weight shared.")
    )
    every_lobe: bool = may_say(
        marked("on every lobe"),
        marked(
            "For gap: blades must have been tried on every lobe. For opening: it must have been seen on every lobe "
            "(rules 2, where no other goal takes it)."
        ),
        False,
    )
    reading: Annotated[Written | None, Choices(tuple(READINGS.items()))] = may_say(
        marked("Reading"), marked("For goal reading: what is to be written down.")
    )
    within: Annotated[float, Field(gt=0.0, le=100.0)] | None = may_say(
        marked("Within"), marked("How near to the truth it must be, in the reading's own unit.")
    )

    @model_validator(mode="after")
    def _reading_is_whole(self) -> Self:
        if (self.goal == "reading") != (self.reading is not None):
            raise ValueError(tr('reading is for goal "reading", which needs it'))
        if (self.within is not None) != (self.reading not in (None, "lead")):
            raise ValueError(tr("within is for a reading in numbers, which needs it"))
        return self


class StoryByWay(Model):
    """Further sentences, by the way in which a fault was drawn. None may give a number away."""

    fault: Annotated[FaultKind, Choices(tuple(FAULTS.items()))] = Field(
        title=marked("Story goes on by the way of"), description=marked("The fault whose way decides what is told.")
    )
    plus: Text = Field(title=marked("If plus"), description=marked("Told where the fault was drawn with a plus."))
    minus: Text = Field(title=marked("If minus"), description=marked("Told where the fault was drawn with a minus."))
    none: Text = may_say(marked("If it was not drawn"), marked("Told where the fault was not drawn."), "")
