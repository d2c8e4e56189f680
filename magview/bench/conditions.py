"""The four things that agree at one instant when No. 1 fires: piston, magnet, contacts and finger.

Source: FAA-H-8083-32B, ch. 4 (internal timing, and timing of the magneto to the engine).
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from enum import Enum

from magview.bench.lamp_words import place_words
from magview.bench.state import BenchState, Side, crank_deg, firing_btdc_deg, opening_deg, readings, with_play
from magview.physics.cam.setting import internal_timing
from magview.physics.engine.crank import strokes
from magview.physics.engine.play import Play
from magview.physics.uncertainty.instruments import instrument
from magview.spec.language import marked, tr

_HAIR = 1e-9
"""Slack at a limit, so that a value at the limit does not fail for the last bit."""


class Condition(Enum):
    """One of the four, in the order of the handbook."""

    PISTON = "piston"
    MAGNET = "magnet"
    CONTACTS = "contacts"
    FINGER = "finger"


class Stroke(Enum):
    """The stroke of a piston."""

    POWER = "power"
    EXHAUST = "exhaust"
    INTAKE = "intake"
    COMPRESSION = "compression"


@dataclass(frozen=True)
class Verdict:
    """One of the four conditions judged; what does not belong to it is NaN, None or 0."""

    condition: Condition
    met: bool
    value: float
    """PISTON: No. 1's crank before top dead centre [crank deg]. MAGNET: rotor from the nearest E-gap [rotor deg],
    positive past it. CONTACTS: rotor from the nearest opening [rotor deg], positive past it. FINGER: finger from
    No. 1's outlet [finger deg], positive past it."""
    wanted: float
    allowed: float
    """Greatest distance of the value from what is wanted, in its unit."""
    stroke: Stroke | None = None
    """PISTON: the stroke that No. 1 is on."""
    number: int = 0
    """CONTACTS: the lobe that opens nearest. FINGER: the cylinder whose outlet is nearest."""


def conditions(state: BenchState) -> tuple[Verdict, Verdict, Verdict, Verdict]:
    """The four conditions of the magneto in view with crank and rotor where they stand now.

    Raises SpecError without an engine.
    """
    crank = crank_deg(state)
    return (_piston(state, crank), _magnet(state), _contacts(state), _finger(state))


def conditions_now(state: BenchState) -> tuple[Verdict, ...]:
    """The conditions as they stand that are known: without an engine those of magnet and contacts."""
    return conditions(state) if state.engaged is not None else (_magnet(state), _contacts(state))


def conditions_at_opening(state: BenchState, side: Side) -> tuple[Verdict, Verdict, Verdict, Verdict] | None:
    """The four conditions at the instant at which a magneto's contacts open for No. 1; None where they never do.

    Raises SpecError without an engine.
    """
    fires = firing_btdc_deg(state, side)
    engaged = state.engaged
    if engaged is None or math.isnan(fires):
        return None
    there = with_play(replace(engaged, side=side, off_crank_deg=None), Play())
    return conditions(replace(state, engaged=there, rotor_deg=opening_deg(state)))


def _piston(state: BenchState, crank: float) -> Verdict:
    engaged = state.engaged
    assert engaged is not None
    engine = engaged.installation.engine
    stroke = Stroke(str(strokes(engine, crank)))
    # −360 < btdc ≤ 360 about No. 1's firing top dead centre.
    btdc = 360.0 - (crank + 360.0) % 720.0
    wanted, allowed = engaged.mounting.wanted_btdc_deg, engine.timing_tolerance_deg
    # An engine may be timed so near to the top that its tolerance reaches past it.
    right_stroke = stroke is Stroke.COMPRESSION or (wanted - allowed < 0.0 and stroke is Stroke.POWER)
    met = right_stroke and abs(btdc - wanted) <= allowed + _HAIR
    return Verdict(Condition.PISTON, met, btdc, wanted, allowed, stroke)


def _magnet(state: BenchState) -> Verdict:
    magneto = state.magneto
    period = 360.0 / magneto.poles
    past = (state.rotor_deg - magneto.e_gap_deg + period / 2) % period - period / 2
    allowed = math.degrees(math.atan(magneto.marks.tolerance_mm / magneto.marks.radius_mm))
    allowed /= magneto.cam.turns_per_rotor_turn
    return Verdict(Condition.MAGNET, abs(past) <= allowed + _HAIR, past, 0.0, allowed)


def _contacts(state: BenchState) -> Verdict:
    turn = 360.0 / state.magneto.cam.turns_per_rotor_turn
    # As near as a hand turns the rotor: nobody stops nearer to where the lamp changes.
    allowed = instrument("rotor-hand").half_width
    past, lobe = math.nan, 0
    for number_, opens in enumerate(readings(state).opens_deg.tolist(), 1):
        away = (state.rotor_deg - opens + turn / 2) % turn - turn / 2
        if not abs(away) >= abs(past):  # true of the first too, where nothing is known yet
            past, lobe = (away, number_) if math.isfinite(away) else (past, lobe)
    return Verdict(Condition.CONTACTS, abs(past) <= allowed + _HAIR, past, 0.0, allowed, number=lobe)


def _finger(state: BenchState) -> Verdict:
    engaged = state.engaged
    assert engaged is not None
    engine = engaged.installation.engine
    # The finger turns once in two crank turns, geared to the rotor; it stands at No. 1 where lobe 1 should open.
    place = float(internal_timing(state.magneto).places_deg[0])
    finger = (state.rotor_deg - place) / (2.0 * engaged.ratio) % 360.0
    pitch = 360.0 / engine.cylinders
    outlet = round(finger / pitch) % engine.cylinders
    past = (finger + 180.0) % 360.0 - 180.0
    nearest = engine.firing_order[outlet]
    return Verdict(Condition.FINGER, nearest == 1, past, 0.0, pitch / 2, number=nearest)


# ---------------------------------------------------------------------- in words

CONDITION_WORDS = {
    Condition.PISTON: marked("Piston"),
    Condition.MAGNET: marked("Magnet"),
    Condition.CONTACTS: marked("Contacts"),
    Condition.FINGER: marked("Finger"),
}

STROKE_WORDS = {
    Stroke.POWER: marked("on the power stroke"),
    Stroke.EXHAUST: marked("on the exhaust stroke"),
    Stroke.INTAKE: marked("on the intake stroke"),
    Stroke.COMPRESSION: marked("on the compression stroke"),
}


def verdict_words(verdict: Verdict) -> str:
    """One condition as a line: what was found, and the limit where it has one."""
    found, allowed = abs(verdict.value), verdict.allowed
    match verdict.condition:
        case Condition.PISTON:
            assert verdict.stroke is not None
            return tr(
                "{found} {stroke}; wanted {wanted}, ±{allowed:deg}",
                found=place_words(verdict.value),
                stroke=tr(STROKE_WORDS[verdict.stroke]),
                wanted=place_words(verdict.wanted),
                allowed=allowed,
            )
        case Condition.MAGNET if abs(verdict.value) < 0.005:
            return tr("at the E-gap")
        case Condition.MAGNET if verdict.value > 0:
            return tr("{found:deg} of rotor past the E-gap, {allowed:deg} allowed", found=found, allowed=allowed)
        case Condition.MAGNET:
            return tr("{found:deg} of rotor short of the E-gap, {allowed:deg} allowed", found=found, allowed=allowed)
        case Condition.CONTACTS if verdict.met:
            return tr("just opening on lobe {lobe}", lobe=verdict.number)
        case Condition.CONTACTS if verdict.value != verdict.value:
            return tr("they never open")
        case Condition.CONTACTS:
            return tr("{found:deg} of rotor from the opening of lobe {lobe}", found=found, lobe=verdict.number)
        case Condition.FINGER if verdict.met:
            return tr("at No. 1")
    return tr("at No. {cylinder}, not at No. 1", cylinder=verdict.number)
