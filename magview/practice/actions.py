"""The closed list of what a trainee can do: the bench's own acts by hand, and those of the practice room.

Every move is by so much from where things stand, as a hand makes it: nobody can ask for an angle that only the
truth knows.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from magview.bench import actions as bench
from magview.bench.state import BenchState, Side, crank_deg
from magview.practice.state import Practice, ReadingKind, SafeThing
from magview.spec.base import SpecError
from magview.spec.language import tr


@dataclass(frozen=True)
class TurnRotor:
    """Turn the rotor by hand, off the engine [rotor deg], positive with rotation."""

    by_deg: float


@dataclass(frozen=True)
class TurnPropeller:
    """Turn the crank by the propeller [crank deg], positive with rotation; a piston stop ends it."""

    by_deg: float


@dataclass(frozen=True)
class TurnUntil:
    """Turn slowly, by rotor or propeller as the magneto is off or on, until something happens.

    "lamp": it lights or goes out; "mark": the straightedge comes in line; "widest": the contacts stand widest
    open, by eye; "stop": the piston meets its stop. A hand overshoots a little.
    """

    what: Literal["lamp", "mark", "widest", "stop"]
    forward: bool = True


@dataclass(frozen=True)
class TurnToReading:
    """Turn the propeller until the disc stands at a reading [crank deg before the disc's zero]."""

    reading_deg: float
    forward: bool = True


@dataclass(frozen=True)
class LetGo:
    """Let go of the rotor; the magnet takes it to rest."""


@dataclass(frozen=True)
class TurnPlate:
    """Turn the backplate [deg], positive with rotation."""

    by_deg: float


@dataclass(frozen=True)
class TurnScrew:
    """Turn the contact screw [deg], positive = contacts closer."""

    by_deg: float


@dataclass(frozen=True)
class LayStraightedge:
    """Lay the straightedge along the cam's step, or take it away."""

    on: bool


@dataclass(frozen=True)
class Sight:
    """Look over the straightedge from an angle [deg]; 0 is square on, positive from behind, negative from ahead."""

    eye_deg: float


@dataclass(frozen=True)
class ConnectLamp:
    """Clip the timing lamp across the contacts, or take it off."""

    on: bool


@dataclass(frozen=True)
class TryBlades:
    """Try one blade or a stack of a set: the numbers marked on them, thousandths of an inch or millimetres."""

    blades: tuple[float, ...]
    set: Literal["inch", "metric"] = "inch"


@dataclass(frozen=True)
class InspectContacts:
    """Look at the faces of the contacts."""


@dataclass(frozen=True)
class DressContacts:
    """Stone the contacts flat; it takes metal off."""


@dataclass(frozen=True)
class RenewContacts:
    """Fit a new pair of contacts: everything is then set anew."""


@dataclass(frozen=True)
class LeaveAsIs:
    """Decide that something stays as it is: the contacts as they look, or the chocks at the wheels."""

    what: Literal["contacts", "chocks"]


@dataclass(frozen=True)
class TakeCoilOff:
    """Take the coil's primary off the contacts, or put it on again."""

    off: bool


@dataclass(frozen=True)
class PressFelt:
    """Press a thumbnail to the felt that oils the cam."""


@dataclass(frozen=True)
class OilFelt:
    """Give the felt some drops of oil."""

    drops: int


@dataclass(frozen=True)
class MeterLead:
    """Hold the meter from the lead's plug to the case."""


@dataclass(frozen=True)
class MeterTerminal:
    """Hold the meter from the magneto's terminal to the case."""


@dataclass(frozen=True)
class MeterSwitch:
    """Take the lead off its end at the switch, hold the meter from this magneto's pole of the switch to ground, and
    join the lead on again."""


@dataclass(frozen=True)
class Renew:
    """Put a new part in: the switch lead, the grounding tab, the insulation inside the magneto, the ignition switch;
    or put both leads in their own places at the switch."""

    part: Literal["lead", "tab", "insulation", "switch", "places"]


@dataclass(frozen=True)
class Chock:
    """Put chocks at the wheels, or take them away."""

    on: bool


@dataclass(frozen=True)
class MakeSafe:
    """See to one more thing on the list of making safe, or undo it."""

    what: SafeThing
    done: bool


@dataclass(frozen=True)
class SparkPlugs:
    """Take the spark plugs out, one at least of each cylinder, or put them in."""

    out: bool


@dataclass(frozen=True)
class PlugLeads:
    """Put the leads on their spark plugs, or take them off."""

    on: bool


@dataclass(frozen=True)
class FitStop:
    """Screw the piston stop into No. 1, or take it out."""

    on: bool


@dataclass(frozen=True)
class TurnDisc:
    """Turn the disc on the crank [crank deg]; positive makes it read earlier (more before top dead centre)."""

    by_deg: float


@dataclass(frozen=True)
class FeelCompression:
    """Hold a thumb over No. 1's plug hole while the crank is rocked."""


@dataclass(frozen=True)
class Nuts:
    """Tighten the magneto's nuts, or take them off and draw it back from its drive."""

    tight: bool


@dataclass(frozen=True)
class Pin:
    """Put a pin through the flange that holds the rotor, or take it out."""

    on: bool


@dataclass(frozen=True)
class Remove:
    """Lift the magneto off the engine."""


@dataclass(frozen=True)
class Refit:
    """Put the magneto back: by its painted marks, or meshed as its rotor stands, to the nearest tooth."""

    by_marks: bool


@dataclass(frozen=True)
class MoveTooth:
    """Move one tooth: the magneto flange on the disc, or the disc on the drive flange. +1 with rotation."""

    face: Literal["magneto", "disc"]
    way: Literal[1, -1]


@dataclass(frozen=True)
class PointAt:
    """Point at a part of the picture by its name."""

    part: str


@dataclass(frozen=True)
class WriteReading:
    """Write a reading of one's own into the notebook: mm, crank degrees, or words for lead and note."""

    kind: ReadingKind
    value: float | None = None
    side: Side | None = None
    """Left out: the magneto in view."""
    text: str = ""
    lobe: int = 1


@dataclass(frozen=True)
class HandIn:
    """Done: from here the truth is shown and nothing more can be done."""


Turning = TurnRotor | TurnPropeller | TurnUntil | TurnToReading | LetGo | bench.HoldRotor | bench.LoadTrain
Setting = TurnPlate | TurnScrew | bench.TightenLock | bench.TightenClamps
Care = InspectContacts | DressContacts | RenewContacts | LeaveAsIs | TakeCoilOff | PressFelt | OilFelt
Tool = LayStraightedge | Sight | ConnectLamp | TryBlades | FitStop | TurnDisc | FeelCompression
Meter = MeterLead | MeterTerminal | MeterSwitch
LeadWork = bench.PullPlug | bench.SwitchIgnition | bench.SwitchOther | bench.FitJumper | bench.SlipPaper | Renew
Safety = Chock | MakeSafe | SparkPlugs | PlugLeads
EngineWork = Safety | Nuts | Pin | Remove | Refit | MoveTooth | bench.PaintMarks | bench.ViewSide
Act = Turning | Setting | Care | Tool | Meter | LeadWork | EngineWork | PointAt | WriteReading | HandIn

ACTS: tuple[type[Act], ...] = (
    TurnRotor, TurnPropeller, TurnUntil, TurnToReading, LetGo, bench.HoldRotor,
    bench.LoadTrain,
    TurnPlate, TurnScrew, bench.TightenLock, bench.TightenClamps,
    InspectContacts, DressContacts, RenewContacts, LeaveAsIs, TakeCoilOff, PressFelt, OilFelt,
    LayStraightedge, Sight, ConnectLamp, TryBlades, FitStop, TurnDisc, FeelCompression,
    MeterLead, MeterTerminal, MeterSwitch,
    bench.PullPlug, bench.SwitchIgnition, bench.SwitchOther, bench.FitJumper, bench.SlipPaper, Renew,
    Chock, MakeSafe, SparkPlugs, PlugLeads,
    Nuts, Pin, Remove, Refit, MoveTooth, bench.PaintMarks, bench.ViewSide,
    PointAt, WriteReading, HandIn,
)  # fmt: skip
"""Every kind of act."""


def from_bench(practice: Practice, action: bench.Action) -> Act | None:
    """The act of a hand that a picture's action stands for; None for one that does nothing here.

    The bench's pictures send angles to turn things to; a hand turns by so much. Raises SpecError for what only
    the bench allows (numbers typed in, faults put in, another magneto placed).
    """
    state = practice.bench
    match action:
        case bench.TurnRotor(to_deg):
            return _turned(practice, to_deg - state.rotor_deg)
        case bench.TurnCrank(to_deg) if state.engaged is not None:
            return TurnPropeller(to_deg - crank_deg(state))
        case bench.LetGo() | bench.SettleRotor():
            return LetGo()
        case bench.Advance():
            return None
        case bench.TurnBackplate(to_deg):
            return TurnPlate(to_deg - state.backplate_deg)
        case bench.TurnScrew(to_deg):
            return TurnScrew(to_deg - state.screw_deg)
        case bench.MountMagneto(on):
            return Refit(by_marks=True) if on else Remove()
        case bench.MoveTeeth(magneto_teeth, disc_teeth):
            return _tooth(state, magneto_teeth, disc_teeth)
        case (
            bench.HoldRotor()
            | bench.LoadTrain()
            | bench.TightenLock()
            | bench.TightenClamps()
            | bench.PullPlug()
            | bench.SwitchIgnition()
            | bench.SwitchOther()
            | bench.FitJumper()
            | bench.SlipPaper()
            | bench.PaintMarks()
            | bench.ViewSide()
        ):
            return action
    raise SpecError(tr("practice does not offer that: here hands and instruments do the work"))


def _turned(practice: Practice, rotor_deg: float) -> Act:
    engaged = practice.bench.engaged
    if engaged is not None and engaged.mounted:
        return TurnPropeller(rotor_deg / engaged.ratio)
    return TurnRotor(rotor_deg)


def _tooth(state: BenchState, magneto_teeth: int, disc_teeth: int) -> Act | None:
    if state.engaged is None:
        raise SpecError(tr("this magneto is not on an engine"))
    at = state.engaged.mounting
    moves = magneto_teeth - at.magneto_teeth, disc_teeth - at.disc_teeth
    match moves:
        case (0, 0):
            return None
        case (1 | -1, 0):
            return MoveTooth("magneto", 1 if moves[0] > 0 else -1)
        case (0, 1 | -1):
            return MoveTooth("disc", 1 if moves[1] > 0 else -1)
    raise SpecError(tr("the coupling is moved one tooth at a time, at one face"))
