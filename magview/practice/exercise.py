"""What an exercise is: the ``magview-exercise/1`` file.

A magneto, alone or on its engine; hidden faults given as ranges from which a seed draws; the instruments on the
tray; what counts as done, with weights; hints; a guide to the time it takes.
"""

from __future__ import annotations

from collections import Counter
from typing import Annotated, Literal, Self, get_args

from pydantic import Field, model_validator

from magview.bench.state import Side
from magview.physics.engine.timing_light import LampKind
from magview.spec.base import Model, Name, Text
from magview.spec.engine import Installation
from magview.spec.language import marked, number, tr
from magview.spec.magneto import Magneto

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
"""How the faces of the contacts are found: dull grey and frosted; light marks, with no deep pit and no high mound;
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
    "teeth": (12.0, marked("whole teeth at the magneto flange, positive = fires early")),
    "disc-teeth": (12.0, marked("whole teeth at the drive flange, positive = fires early")),
    "vernier": (12.0, marked("whole vernier steps, positive = fires early")),
    "disc-zero": (45.0, marked("crank degrees the disc reads at top dead centre")),
    "contacts": (0.5, marked("millimetres a mound stands above its face")),
}
"""The largest size of each kind of fault that has one, and its unit and sign. The other kinds have no size."""

NEED_ENGINE = ("backlash", "teeth", "disc-teeth", "vernier", "disc-zero", "wrong-stroke", "rotor-at-neutral")
GOALS_OF_ENGINE = ("disc-zero", "timing", "synchronised", "marks")


class Fault(Model):
    """One hidden fault, drawn for each magneto it is on. `chance`: how likely it is there at all."""

    kind: FaultKind
    side: Side | None = None
    """The magneto it is on; left out: on each."""
    size: tuple[float, float] = (0.0, 0.0)
    """From and to, never negative; unit by `FAULT_LIMITS`."""
    way: Literal["plus", "minus", "either"] = "plus"
    chance: Annotated[float, Field(gt=0.0, le=1.0)] = 1.0
    lobe: Annotated[int, Field(ge=1, le=36)] | None = None
    """Which lobe is low; left out: drawn."""
    among: Annotated[tuple[LeadFault | ContactGrade, ...], Field(max_length=8)] = ()
    """What the switch lead may suffer from, or how the contacts may look: one is drawn."""

    @property
    def sized(self) -> bool:
        """Whether a size is drawn for it."""
        return self.kind in FAULT_LIMITS and (self.kind != "contacts" or "mound" in self.among)

    @model_validator(mode="after")
    def _size_fits_kind(self) -> Self:
        low, high = self.size
        if not 0.0 <= low <= high:
            raise ValueError(
                tr(
                    "size is [{low}, {high}]; it must run upwards from 0 or more (way gives the sign)",
                    low=number(low, "g"),
                    high=number(high, "g"),
                )
            )
        if self.sized:
            most, unit = FAULT_LIMITS[self.kind]
            if not 0.0 < high <= most:
                raise ValueError(
                    tr(
                        "size of {kind} ends at {high}; it must be above 0 and at most {most} ({unit})",
                        kind=self.kind,
                        high=number(high, "g"),
                        most=number(most, "g"),
                        unit=tr(unit),
                    )
                )
            if self.kind in ("teeth", "disc-teeth", "vernier") and not (low.is_integer() and high.is_integer()):
                raise ValueError(
                    tr(
                        "size of {kind} is [{low}, {high}]; it must be whole numbers",
                        kind=self.kind,
                        low=number(low, "g"),
                        high=number(high, "g"),
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


class Tray(Model):
    """The instruments that lie ready. What is left out is not there."""

    straightedge: Literal["1/32 in", "1/64 in", "0.5 mm"] | None = None
    """The divisions of the marks on the rim."""
    lamp: bool = False
    lamp_kind: LampKind = "open"
    """What the timing light does: burns on open contacts, on closed ones, buzzes, or is a plain battery lamp that
    cannot tell them apart while the coil is connected."""
    blades: Annotated[tuple[Literal["inch", "metric"], ...], Field(max_length=2)] = ()
    disc_step_deg: Annotated[float, Field(ge=0.1, le=5.0)] | None = None
    """How finely the crank disc can be read [crank deg]."""
    stop: bool = False
    meter: bool = False


class Start(Model):
    """How the trainee finds things."""

    rotor: Literal["neutral", "anywhere", "e-gap"] = "neutral"
    """Off the engine; on it the crank stands anywhere."""
    mounted: bool = True
    switch_on: bool = False
    slack: bool = False
    """Lock and clamp screws."""
    marked: bool = False
    chocked: bool = False
    plugs_out: bool = False
    made_safe: bool = False
    """Fuel off, mixture cut off, throttle closed, hanging leads grounded or kept clear."""
    proved: bool = False
    """The switch lead has been proved by whoever handed the work over."""
    disc_at_zero: bool = False
    """The crank disc has been set by the stop already."""


class Goal(Model):
    """One thing that counts, with its weight."""

    goal: GoalKind
    weight: Annotated[float, Field(gt=0.0, le=100.0)]
    side: Side | None = None
    """The magneto; left out: each, the weight shared."""
    every_lobe: bool = False
    """gap: blades must have been tried on every lobe. opening: it must have been seen on every lobe (rules 2, where
    no other goal takes it)."""
    reading: Written | None = None
    within: Annotated[float, Field(gt=0.0, le=100.0)] | None = None
    """reading: how near to the truth what was written must be, in the reading's own unit."""

    @model_validator(mode="after")
    def _reading_is_whole(self) -> Self:
        if (self.goal == "reading") != (self.reading is not None):
            raise ValueError(tr('reading is for goal "reading", which needs it'))
        if (self.within is not None) != (self.reading not in (None, "lead")):
            raise ValueError(tr("within is for a reading in numbers, which needs it"))
        return self


class StoryByWay(Model):
    """What is told besides, by the way in which a fault was drawn. It must not give a number away."""

    fault: FaultKind
    plus: Text
    minus: Text
    none: Text = ""
    """Where the fault was not drawn."""


class Exercise(Model):
    """An exercise as its file describes it."""

    format: Literal["magview-exercise/1"]
    rules: Literal[1, 2] = 1
    """By which rules it is drawn and marked. 2: contacts are graded and the right decision counts, dressing takes
    metal off, plugs taken out leave their leads hanging, and closed up means all that was opened or clipped on."""
    name: Name
    level: Annotated[int, Field(ge=1, le=5)]
    story: Text
    """What the trainee is told of the case."""
    story_by_way: StoryByWay | None = None
    """What is told after it, as the fault's way was drawn (on the first magneto that has it)."""
    task: Text
    """What is to be done."""
    hints: Annotated[tuple[Text, ...], Field(max_length=12)] = ()
    minutes: Annotated[float, Field(gt=0.0, le=600.0)]
    """A guide; time is not marked."""
    magneto: Magneto | None = None
    installation: Installation | None = None
    both_sides: bool = False
    """The engine's two magnetos, alike but for their faults."""
    start: Start = Start()
    tray: Tray
    faults: Annotated[tuple[Fault, ...], Field(max_length=40)] = ()
    goals: Annotated[tuple[Goal, ...], Field(min_length=1, max_length=30)]
    pass_percent: Annotated[float, Field(ge=1.0, le=100.0)] = 80.0
    dressing_allowed: Annotated[tuple[Literal["light", "mound"], ...], Field(max_length=2)] = ()
    """What this manual gives a procedure and limits to dress; left out: it gives none, and nothing is dressed."""
    felt_drops: Annotated[int, Field(ge=1, le=20)] | None = None
    """Drops of oil that this manual gives a felt that is found dry; left out: the felt is not asked for."""

    @property
    def sides(self) -> tuple[Side, ...]:
        """The magnetos to work on; ("left",) for one that stands for itself."""
        if self.both_sides:
            return ("left", "right")
        return ("right",) if self.installation is not None and self.installation.position == "right" else ("left",)

    @property
    def unit(self) -> Magneto:
        """The magneto, as its own file has it."""
        if self.installation is not None:
            return self.installation.magneto
        assert self.magneto is not None  # the validator saw to it
        return self.magneto

    @model_validator(mode="after")
    def _fits_together(self) -> Self:
        if (self.magneto is None) == (self.installation is None):
            raise ValueError(tr("magneto or installation: an exercise has one of the two"))
        if self.both_sides and (self.installation is None or self.installation.position == "single"):
            raise ValueError(tr("both_sides needs an installation with two magnetos"))
        if self.installation is None:
            for i, fault in enumerate(self.faults):
                if fault.kind in NEED_ENGINE:
                    raise ValueError(
                        tr("faults[{i}].kind is {kind}, which needs an installation", i=i, kind=fault.kind)
                    )
            for i, goal in enumerate(self.goals):
                if goal.goal in GOALS_OF_ENGINE or goal.reading in ("firing", "disc-zero"):
                    raise ValueError(
                        tr("goals[{i}] is {goal} of an engine, which needs an installation", i=i, goal=goal.goal)
                    )
        self._check_sides()
        self._check_rules()
        self._check_lead()
        return self

    def _check_rules(self) -> None:
        kinds = {fault.kind for fault in self.faults}
        if {"pip", "contacts"} <= kinds:
            raise ValueError(tr("faults has both pip and contacts; contacts draws a mound of its own"))
        if "dry-felt" in kinds and self.felt_drops is None:
            raise ValueError(
                tr("faults has dry-felt, which needs felt_drops: how much oil the manual gives a dry felt")
            )
        if self.rules < 2:
            return
        for i, goal in enumerate(self.goals):
            taken = goal.goal == "gap" or (goal.goal == "opening" and not self.unit.compensated)
            if goal.every_lobe and not taken:
                raise ValueError(
                    tr(
                        "goals[{i}].every_lobe is true for {goal}; it is for gap, and for opening where the cam is "
                        "not compensated",
                        i=i,
                        goal=goal.goal,
                    )
                )

    def _check_lead(self) -> None:
        for i, fault in enumerate(self.faults):
            if "tab" in fault.among and self.unit.grounding_tab is False:
                raise ValueError(tr("faults[{i}].among has tab, and this magneto has no grounding tab", i=i))
            alone = self.installation is None or self.installation.position == "single"
            if "crossed" in fault.among and alone:
                raise ValueError(tr("faults[{i}].among has crossed, which needs an engine with two magnetos", i=i))

    def _check_sides(self) -> None:
        given = [(tr("faults[{i}]", i=i), f.side) for i, f in enumerate(self.faults)]
        given += [(tr("goals[{i}]", i=i), g.side) for i, g in enumerate(self.goals)]
        for what, side in given:
            if side is not None and side not in self.sides:
                raise ValueError(
                    tr("{what}.side is {side}, a magneto this exercise does not have", what=what, side=side)
                )
        lobes = len(self.unit.cam.lobe_peaks_deg)
        for i, fault in enumerate(self.faults):
            if fault.lobe is not None and fault.lobe > lobes:
                raise ValueError(
                    tr("faults[{i}].lobe is {lobe}; the cam has {lobes}", i=i, lobe=fault.lobe, lobes=lobes)
                )
        if any(g.goal == "synchronised" for g in self.goals) and not self.both_sides:
            raise ValueError(tr("goals: synchronised needs both_sides"))
        # One draw for each kind and magneto: a second of the same name would be drawn alike.
        drawn = Counter((f.kind, side) for f in self.faults for side in self.sides if f.side in (None, side))
        twice = next((f"{kind} ({side})" for (kind, side), n in drawn.items() if n > 1), None)
        if twice is not None:
            raise ValueError(tr("faults has {twice} twice; give each kind once for a magneto", twice=twice))
