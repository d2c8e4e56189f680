"""Predicates that a lesson can wait for, by name: each a question to an act and the states around it."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import get_args

from magview.bench.state import crank_deg
from magview.practice import actions as do
from magview.practice import instruments
from magview.practice.attempt import name_of
from magview.practice.goals import DISC_TOLERANCE_DEG, timing_error_deg
from magview.practice.state import SAFE_THINGS, Feel, Practice, ReadingKind, true_readings
from magview.spec.language import tr

NEEDS: dict[str, tuple[str, ...]] = {
    "pointed-at": ("what",),
    "rotor-near": ("what", "within"),
    "rotor-let-go": (),
    "turned": ("what", "value"),
    "turned-here": ("what", "value", "within"),
    "act": ("what",),
    "said": ("what",),
    "blade": ("what", "value"),
    "lamp-connected": (),
    "lamp-shows": ("what",),
    "contacts-seen-opening": (),
    "edge-laid": (),
    "edge-square": (),
    "lock-tight": (),
    "clamps-tight": (),
    "opening-at-mark": (),
    "gap-in-limits": (),
    "switch-on": (),
    "plug-out": (),
    "jumper-on": (),
    "made-safe": (),
    "chocked": (),
    "plugs-out": (),
    "proved": (),
    "stop-fitted": (),
    "stop-met": ("what",),
    "disc-at-zero": (),
    "crank-near": ("value", "within"),
    "disc-near": ("value", "within"),
    "marked": (),
    "nuts-tight": (),
    "magneto-on": (),
    "timing-in-limits": (),
    "wrote": ("what",),
}
"""Parameters of each predicate.

rotor-near: what is neutral, register, e-gap or widest; within, rotor degrees. turned: what is plate or screw;
value, degrees since as found, at least so far that way. turned-here: the same since the step began, and within so
much of it, also of the rotor, or teeth of a face of the coupling. act: what is an act's name in an attempt's file.
said: the words an instrument's answer begins with. lamp-shows: light or dark. stop-met: with or against rotation.
crank-near: value, degrees before No. 1's firing top dead centre. disc-near: value, what the disc reads. blade: how
a blade or stack, value mm thick by its marks, feels. wrote: a kind of reading;
of disc-zero it must be right, too.
"""

WHATS: dict[str, tuple[str, ...]] = {
    "rotor-near": ("neutral", "register", "e-gap", "widest"),
    "turned": ("plate", "screw"),
    "turned-here": ("plate", "screw", "rotor", "magneto-flange", "toothed-disc"),
    "blade": tuple(Feel),
    "stop-met": ("with", "against"),
    "lamp-shows": ("light", "dark", "not connected"),
    "act": tuple(name_of(kind) for kind in do.ACTS),
    "wrote": get_args(ReadingKind),
}
"""Allowed words of `what`, for predicates that take only certain words."""


@dataclass(frozen=True)
class Moment:
    """An act and the states around it."""

    before: Practice
    after: Practice
    act: do.Act
    began: Practice | None = None
    """The room as the step found it; None where nobody kept it."""
    steady_deg: float = 0.0
    """Degrees that the rotor has been turned while the lamp showed no change."""

    @property
    def turned_with(self) -> bool:
        """Whether the act turned crank and rotor with rotation, or meant to."""
        match self.act:
            case do.TurnUntil(_, forward) | do.TurnToReading(_, forward):
                return forward
            case do.TurnRotor(by_deg) | do.TurnPropeller(by_deg):
                return by_deg > 0
        return False


def holds(name: str, moment: Moment, what: str | None, value: float | None, within: float | None) -> bool:
    """Whether a predicate is true of a moment."""
    if name in LASTING:
        return stands(name, moment.after, what, value, within)
    if name == "turned-here":
        since = moment.began or moment.before
        turned = turned_deg(moment.after, what or "") - turned_deg(since, what or "")
        return abs(turned - (value or 0.0)) <= (within or 0.0)
    if name == "blade":
        act, said = moment.act, moment.after.said
        return (
            isinstance(act, do.TryBlades) and act.set == "metric" and said is not None and said.plain == what
            and abs(sum(act.blades) - (value or 0.0)) < 1e-6
        )  # fmt: skip
    return _of_acts(name, moment, what or "")


_STATES: dict[str, Callable[[Practice], bool]] = {
    "lamp-connected": lambda p: p.lamp_on,
    "edge-laid": lambda p: p.edge_laid,
    "edge-square": lambda p: p.edge_laid and abs(p.eye_deg) <= instruments.SQUARE_EYE_DEG,
    "lock-tight": lambda p: p.bench.lock_tight,
    "clamps-tight": lambda p: p.bench.clamps_tight,
    "switch-on": lambda p: p.bench.lead.switch_on,
    "plug-out": lambda p: not p.bench.lead.plug_in,
    "jumper-on": lambda p: p.bench.lead.jumper,
    "made-safe": lambda p: p.seen_to.issuperset(SAFE_THINGS),
    "chocked": lambda p: p.chocked,
    "plugs-out": lambda p: p.plugs_out,
    "proved": lambda p: p.seat.proved,
    "stop-fitted": lambda p: p.stop_fitted,
    "disc-at-zero": lambda p: abs(p.disc_error_deg) <= DISC_TOLERANCE_DEG,
    "marked": lambda p: p.seat.marked,
    "nuts-tight": lambda p: p.seat.nuts_tight,
    "magneto-on": lambda p: p.mounted,
    "gap-in-limits": lambda p: bool(true_readings(p.bench).gap_ok.all()),
    "opening-at-mark": lambda p: _opening_at_mark(p),
    "timing-in-limits": lambda p: _timing_in_limits(p),
}


LASTING = frozenset({*_STATES, "lamp-shows", "rotor-near", "turned", "crank-near", "disc-near"})
"""Those that a room answers by itself, whatever the act was."""


def stands(name: str, room: Practice, what: str | None, value: float | None, within: float | None) -> bool:
    """Whether a lasting predicate is true of a room."""
    if name in _STATES:
        return _STATES[name](room)
    match name:
        case "lamp-shows":
            return instruments.lamp(room).plain == what
        case "rotor-near":
            return abs(rotor_past_deg(room, what or "")) <= (within or 0.0)
        case "turned":
            turned, least = turned_deg(room, what or ""), value or 0.0
            return turned >= least if least >= 0 else turned <= least
        case "crank-near":
            return _crank_away_deg(room, value or 0.0) <= (within or 0.0)
        case "disc-near":
            reads = instruments.true_disc_deg(room) if room.bench.engaged is not None else float("inf")
            return abs(reads - (value or 0.0)) <= (within or 0.0)
    raise ValueError(tr("“{name}” is no predicate", name=name))


def _opening_at_mark(room: Practice) -> bool:
    ok = true_readings(room.bench).timing_ok
    return bool((ok[:1] if room.bench.magneto.compensated else ok).all())


def _timing_in_limits(room: Practice) -> bool:
    engaged = room.bench.engaged
    return engaged is not None and abs(timing_error_deg(room)) <= engaged.installation.engine.timing_tolerance_deg


def _of_acts(name: str, moment: Moment, what: str) -> bool:
    act, after = moment.act, moment.after
    match name:
        case "pointed-at":
            return isinstance(act, do.PointAt) and act.part == what
        case "rotor-let-go":
            return isinstance(act, do.LetGo)
        case "act":
            return name_of(type(act)) == what
        case "said":
            turn = 360.0 / after.bench.magneto.cam.turns_per_rotor_turn
            if what == instruments.STEADY.get(instruments.lamp(after).plain) and abs(moment.steady_deg) >= turn:
                return True  # turned right round by hand, which answers nothing in words
            return after.said is not None and after.said.plain.startswith(what)
        case "stop-met":
            met = after.said is not None and after.said.instrument == "stop"
            return met and moment.turned_with == (what == "with")
        case "contacts-seen-opening":
            seen = instruments.shows_open(moment.before), instruments.shows_open(after)
            return seen == (False, True) and after.bench.rotor_deg > moment.before.bench.rotor_deg
        case "wrote":
            if not isinstance(act, do.WriteReading) or act.kind != what:
                return False
            # By a reading with the wrong sign the disc would be turned the wrong way at the next step.
            off = abs((act.value or 0.0) - after.disc_error_deg) > DISC_TOLERANCE_DEG
            return what != "disc-zero" or not off
    raise ValueError(tr("“{name}” is no predicate", name=name))


def turned_deg(room: Practice, what: str) -> float:
    """Return the turn of screw or plate since as found [deg], where the rotor stands [deg], or a face's teeth."""
    match what:
        case "rotor":
            return room.bench.rotor_deg
        case "magneto-flange" | "toothed-disc":
            engaged = room.bench.engaged
            at = engaged.mounting if engaged is not None else None
            return 0.0 if at is None else float(at.magneto_teeth if what == "magneto-flange" else at.disc_teeth)
    return room.seat.screw_turned_deg if what == "screw" else room.seat.plate_turned_deg


def rotor_past_deg(room: Practice, what: str) -> float:
    """Return how far the rotor stands past the nearest such place [deg]; infinite where there is none."""
    bench = room.bench
    pitch = 360.0 / bench.magneto.poles
    if what == "widest":
        now = true_readings(bench)
        places = ((now.opens_deg + now.closes_deg) / 2).tolist()
        pitch = 360.0 / bench.magneto.cam.turns_per_rotor_turn
    else:
        places = [{"neutral": 0.0, "register": pitch / 2, "e-gap": bench.magneto.e_gap_deg}.get(what, float("nan"))]
    past = [(bench.rotor_deg - place + pitch / 2) % pitch - pitch / 2 for place in places]
    return min((p for p in past if p == p), key=abs, default=float("inf"))


def _crank_away_deg(room: Practice, btdc_deg: float) -> float:
    if room.bench.engaged is None:
        return float("inf")
    return abs((-crank_deg(room.bench) - btdc_deg + 360.0) % 720.0 - 360.0)
