"""The closed list of what a person can do at the bench."""

from __future__ import annotations

from dataclasses import dataclass

from magview.bench.state import Check, Side
from magview.physics.engine.timing_light import LampKind
from magview.physics.trials.trial import HowRead, Trial
from magview.physics.wear.inspection import Inspection
from magview.spec.engine import Installation
from magview.spec.magneto import Magneto


@dataclass(frozen=True)
class PlaceMagneto:
    """Put a magneto on the bench as it was designed to be set, with the rotor held at the E-gap."""

    magneto: Magneto


@dataclass(frozen=True)
class PlaceInstallation:
    """Put a magneto on the bench together with its engine and coupling, timed as wanted."""

    installation: Installation


@dataclass(frozen=True)
class TurnRotor:
    """Turn the rotor to an angle from the neutral before No. 1 fires [deg], positive in service."""

    to_deg: float


@dataclass(frozen=True)
class HoldRotor:
    """Take hold of the rotor where it is."""


@dataclass(frozen=True)
class LetGo:
    """Let go of the rotor; from now on the magnet has it."""


@dataclass(frozen=True)
class Advance:
    """Let the state's clock run for a number of fixed steps."""

    steps: int


@dataclass(frozen=True)
class SettleRotor:
    """Let go, and look again when the rotor rests."""


@dataclass(frozen=True)
class TurnBackplate:
    """Turn the backplate to an angle [deg], positive with cam rotation; it stops at the slot's end."""

    to_deg: float


@dataclass(frozen=True)
class TurnScrew:
    """Turn the contact screw to an angle [deg], positive = contacts closer; it stops at its travel's end."""

    to_deg: float


@dataclass(frozen=True)
class SetBoth:
    """Put backplate and contact screw where an adjustment says [deg]."""

    backplate_deg: float
    screw_deg: float


@dataclass(frozen=True)
class TightenLock:
    """Tighten (or slacken) the lock screw; tightening carries the contact screw along by its creep."""

    tight: bool


@dataclass(frozen=True)
class TightenClamps:
    """Tighten (or slacken) the backplate's clamp screws."""

    tight: bool


@dataclass(frozen=True)
class PullPlug:
    """Pull the switch lead's plug out of the magneto, or push it in."""

    out: bool


@dataclass(frozen=True)
class SwitchIgnition:
    """Switch the ignition on or off."""

    on: bool


@dataclass(frozen=True)
class SwitchOther:
    """Switch the other magneto of the engine on or off."""

    on: bool


@dataclass(frozen=True)
class FitJumper:
    """Clip a jumper from the magneto's terminal to ground, or take it off."""

    on: bool


@dataclass(frozen=True)
class SlipPaper:
    """Slip paper under the grounding tab, so that it does not ground the primary; or take it out."""

    under: bool


@dataclass(frozen=True)
class ChooseLamp:
    """Take a timing light of this kind for the contacts."""

    kind: LampKind


@dataclass(frozen=True)
class SetLeadFault:
    """Give the switch lead a fault, or take it away: "shorted", "broken", "chafed", "tab", "never-opens",
    "never-closes" or "crossed"."""

    fault: str
    present: bool


@dataclass(frozen=True)
class TurnCrank:
    """Turn the crank to an angle from No. 1's firing top dead centre [crank deg]; a mounted rotor goes with it."""

    to_deg: float


@dataclass(frozen=True)
class LoadTrain:
    """Press the rotor against rotation, the crank held, until drive train and coupling have no play left."""


@dataclass(frozen=True)
class MountMagneto:
    """Put the magneto on the engine by its marks, or take it off."""

    on: bool


@dataclass(frozen=True)
class ReadLamp:
    """Enter where the lamp says a magneto fires [crank deg BTDC]; its teeth count as found from here."""

    side: Side
    btdc_deg: float


@dataclass(frozen=True)
class CheckFirst:
    """Say that something was looked at again for the lamp's present reading, or take that back."""

    side: Side
    what: Check
    done: bool


@dataclass(frozen=True)
class WantTiming:
    """Say where a magneto should fire [crank deg BTDC]."""

    side: Side
    btdc_deg: float


@dataclass(frozen=True)
class MoveTeeth:
    """Move the coupling to a position from as found: magneto flange on the disc, disc on the drive flange."""

    magneto_teeth: int
    disc_teeth: int


@dataclass(frozen=True)
class PaintMarks:
    """Paint new marks in line across drive flange, disc and magneto flange."""


@dataclass(frozen=True)
class ViewSide:
    """Look at the other magneto's coupling."""

    side: Side


@dataclass(frozen=True)
class WearHeel:
    """Say how far the heel of the breaker arm is worn [mm]: what if, or what was measured."""

    to_mm: float


@dataclass(frozen=True)
class GrowPip:
    """Say how high a pip stands on the contacts [mm]."""

    to_mm: float


@dataclass(frozen=True)
class BurnFaces:
    """Say how much the contact faces have burnt away, both together [mm]."""

    to_mm: float


@dataclass(frozen=True)
class NoteTrial:
    """Note a trial: the largest gap read with the plate here and the opening set at the E-gap."""

    trial: Trial


@dataclass(frozen=True)
class DropTrial:
    """Strike a trial out, by its place in the list from 0."""

    place: int


@dataclass(frozen=True)
class ReadTrials:
    """Say in what the plate is read at trials, and how closely plate, opening and blades are."""

    how: HowRead


@dataclass(frozen=True)
class NoteInspection:
    """Note what was read of this setting at so many hours."""

    inspection: Inspection


@dataclass(frozen=True)
class DropInspection:
    """Strike an inspection out, by its place in the list from 0."""

    place: int


EngineAction = (
    TurnCrank | LoadTrain | MountMagneto | ReadLamp | CheckFirst | WantTiming | MoveTeeth | PaintMarks | ViewSide
)
RotorAction = TurnRotor | HoldRotor | LetGo | Advance | SettleRotor
LeadAction = PullPlug | SwitchIgnition | SwitchOther | FitJumper | SlipPaper | SetLeadFault | ChooseLamp
ScrewAction = TurnBackplate | TurnScrew | SetBoth | TightenLock | TightenClamps
NoteAction = NoteTrial | DropTrial | ReadTrials | NoteInspection | DropInspection
WearAction = WearHeel | GrowPip | BurnFaces
MovesRotor = (
    TurnRotor | HoldRotor | LetGo | SettleRotor | TurnCrank | LoadTrain | MountMagneto | MoveTeeth | ReadLamp
    | ViewSide | PlaceMagneto | PlaceInstallation
)  # fmt: skip
"""Actions by which a hand takes the rotor over from a run."""
Action = (
    PlaceMagneto | PlaceInstallation | NoteAction | WearAction | RotorAction | ScrewAction | LeadAction | EngineAction
)
