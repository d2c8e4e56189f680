"""Turning rotor and propeller by hand: play taken up, the piston's stop, and stopping when something is seen."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import replace
from functools import lru_cache
from typing import Literal

from magview.bench.actions import TurnBackplate, TurnCrank
from magview.bench.actions import TurnRotor as BenchTurnRotor
from magview.bench.actions import TurnScrew as TurnScrewTo
from magview.bench.apply import apply
from magview.bench.easing import STEPS_DEG, Eased, ease
from magview.bench.state import Engaged, crank_deg
from magview.drawing.breaker_glass import seen_past_mm
from magview.physics.cam.setting import internal_timing
from magview.physics.engine.dead_centre import stop_reach_deg, timing_centre_deg
from magview.physics.engine.play import Play
from magview.practice.actions import TurnPlate, TurnScrew
from magview.practice.draws import between
from magview.practice.instruments import (
    DIVISIONS_MM,
    STEADY,
    lamp,
    light,
    shows_open,
    true_disc_deg,
)
from magview.practice.state import Practice, Said, true_circuit, true_readings
from magview.spec.base import SpecError
from magview.spec.engine import Engine
from magview.spec.language import marked, tr

MAX_TURN_DEG = 3600.0
"""Ten turns at a time."""

_HAIR_DEG = 1e-3
"""An event this near counts as passed already, and…"""

_BY_EYE_DEG = 1.05
"""…what is found by eye, this near."""

_CREEP_DEG = 0.05
_MAX_CREEPS = 40
"""A shallow flank needs a little more before the lamp tells: size and number of these steps."""


def turn_rotor(practice: Practice, by_deg: float) -> Practice:
    """Turn the rotor of a magneto that is off the engine. Raises SpecError for one that is on it, or pinned."""
    if practice.mounted:
        raise SpecError(tr("the magneto is on the engine: turn the propeller, or lift it off"))
    if practice.seat.pinned:
        raise SpecError(tr("the rotor is pinned: take the pin out first"))
    bench = apply(practice.bench, BenchTurnRotor(practice.bench.rotor_deg + reasonable(by_deg, MAX_TURN_DEG)))
    return replace(practice, bench=replace(bench, held=True))


def turn_propeller(practice: Practice, by_deg: float) -> Practice:
    """Turn the crank, and what is meshed with it. A fitted piston stop ends the turn, and says so."""
    engaged = turnable(practice)
    crank = crank_deg(practice.bench)
    to, said = crank + reasonable(by_deg, MAX_TURN_DEG), None
    if practice.stop_fitted:
        low, high = _free_arc(practice, engaged, crank)
        if not low <= to <= high:
            to, said = min(max(to, low), high), Said("stop", marked("the piston meets the stop"))
    other = practice.other
    if other is not None and other.mounted:
        coupling = other.magneto.condition.coupling_backlash_deg
        play = Play(other.train_deg, other.play_deg).turned(
            engaged.ratio * (to - crank), engaged.train_play_deg, coupling
        )
        other = replace(other, play_deg=play.rotor_ahead_deg, train_deg=play.flange_ahead_deg)
    bench = apply(practice.bench, TurnCrank(to))
    return replace(practice, bench=replace(bench, held=bench.held or engaged.mounted), other=other, said=said)


def turnable(practice: Practice) -> Engaged:
    """The engine whose propeller can be turned now. Raises SpecError where it cannot."""
    engaged = practice.bench.engaged
    if engaged is None:
        raise SpecError(tr("there is no engine here: turn the rotor"))
    other = practice.other
    seats = [(practice.seat, engaged.mounted)] + ([(other.seat, other.mounted)] if other is not None else [])
    for seat, mounted in seats:
        if mounted and not seat.nuts_tight:
            raise SpecError(
                tr("a magneto is drawn back from its drive: tighten its nuts before turning the propeller")
            )
        if mounted and seat.pinned:
            raise SpecError(tr("a pin holds a magneto's rotor: take it out before turning the propeller"))
    return engaged


def until(practice: Practice, what: Literal["lamp", "mark", "widest", "stop"], forward: bool) -> Practice:
    """Turn slowly until something happens; by the propeller where the magneto is on the engine."""
    match what:
        case "stop":
            return _until_stop(practice, forward)
        case "lamp":
            return _until_lamp(practice, forward)
        case "mark":
            return _until_mark(practice, forward)
        case "widest":
            bench, timing = practice.bench, internal_timing(practice.bench.magneto)
            tops = (timing.peaks_deg + bench.backplate_deg) / timing.ratio
            by_eye = between(practice.seed, -0.5, 0.5, "hand", str(practice.acts), "widest")
            return _to_rotor(practice, _next(practice, tops.tolist(), forward, _BY_EYE_DEG) + by_eye)
    raise SpecError(tr("“{what}” is nothing to turn to: lamp, mark, widest or stop", what=str(what)[:40]))


_OVER_DEG: dict[Eased, float] = {"plate": 0.03, "screw": 0.3}
"""Angle that a hand that eases a part goes on after the lamp has changed [deg], at most."""


def eased(practice: Practice, part: Eased, forward: bool) -> TurnPlate | TurnScrew:
    """The turn of backplate or contact screw by which a slow hand sees the lamp change, or comes to the end.

    Raises SpecError where the lamp is not clipped on, or the part is held by its screws.
    """
    if light(practice) is None:
        raise SpecError(tr("clip the lamp across the contacts first"))
    way, plate = (1.0 if forward else -1.0), part == "plate"

    def turned(room: Practice, by: float) -> Practice:
        if plate:
            return replace(room, bench=apply(room.bench, TurnBackplate(room.bench.backplate_deg + by)))
        return replace(room, bench=apply(room.bench, TurnScrewTo(room.bench.screw_deg + by)))

    after = ease(practice, lambda room: turned(room, way * STEPS_DEG[part]), light)
    over = between(practice.seed, 0.0, _OVER_DEG[part], "hand", str(practice.acts), "ease")
    after = turned(after, way * over)
    if plate:
        return TurnPlate(after.bench.backplate_deg - practice.bench.backplate_deg)
    return TurnScrew(after.bench.screw_deg - practice.bench.screw_deg)


def to_reading(practice: Practice, reading_deg: float, forward: bool) -> Practice:
    """Turn the propeller until the disc stands at a reading, as near as the pointer can be seen."""
    step = practice.exercise.tray.disc_step_deg
    if step is None:
        raise SpecError(tr("there is no disc on the crank to read"))
    turnable(practice)
    wanted = reasonable(reading_deg, 180.0)
    wanted += between(practice.seed, -step / 4, step / 4, "hand", str(practice.acts), "pointer")
    way = 1.0 if forward else -1.0
    # Where the disc stands at the reading already, the next time it does is a turn further on.
    by = (way * (true_disc_deg(practice) - wanted) - step) % 360.0 + step
    return turn_propeller(practice, way * by)


def reasonable(value: float, most: float) -> float:
    """A finite number no larger than `most` either way. Raises SpecError."""
    if not abs(value) <= most:
        raise SpecError(
            tr(
                "{value} is not a move a hand makes; it must lie within ±{most}",
                value=value,
                most=most,
            )
        )
    return float(value)


def free_of_stop(practice: Practice) -> bool:
    """Whether the piston leaves room for the stop to be screwed in."""
    engaged = practice.bench.engaged
    assert engaged is not None
    crank = crank_deg(practice.bench)
    low, high = _free_arc(practice, engaged, crank)
    return low <= crank <= high


def _until_stop(practice: Practice, forward: bool) -> Practice:
    if not practice.stop_fitted:
        raise SpecError(tr("no piston stop is fitted"))
    return turn_propeller(practice, 400.0 if forward else -400.0)


def _until_lamp(practice: Practice, forward: bool) -> Practice:
    before = light(practice)
    if before is None:
        raise SpecError(tr("clip the lamp across the contacts first"))
    found, way = true_readings(practice.bench), 1.0 if forward else -1.0
    angles = [a for a in (*found.opens_deg.tolist(), *found.closes_deg.tolist()) if math.isfinite(a)]
    turn = 360.0 / practice.bench.magneto.cam.turns_per_rotor_turn
    idle = not angles or true_circuit(practice.bench).grounded or shows_open(practice) is None
    if idle:  # nothing will change: that too is seen only by turning right round
        after = _to_rotor(practice, practice.bench.rotor_deg + way * turn)
        steady = Said("lamp", STEADY[lamp(practice).words])
        return after if after.said is not None else replace(after, said=steady)
    over = between(practice.seed, 0.03, 0.15, "hand", str(practice.acts), "overshoot")
    after = _to_rotor(practice, _next(practice, angles, forward) + way * over)
    for _ in range(_MAX_CREEPS):
        if light(after) != before or after.said is not None:
            break
        after = _to_rotor(after, after.bench.rotor_deg + way * _CREEP_DEG)
    return after


def _until_mark(practice: Practice, forward: bool) -> Practice:
    marks = practice.exercise.tray.straightedge
    if not practice.edge_laid or marks is None:
        raise SpecError(tr("lay the straightedge along the cam's step first"))
    timing, radius = internal_timing(practice.bench.magneto), practice.bench.magneto.marks.radius_mm
    by_eye = DIVISIONS_MM[marks] * between(practice.seed, -0.25, 0.25, "hand", str(practice.acts), "mark")
    seen = math.degrees(math.atan((by_eye - seen_past_mm(practice.eye_deg)) / radius)) / timing.ratio
    places = (timing.places_deg + seen).tolist()
    return _to_rotor(practice, _next(practice, places, forward, _BY_EYE_DEG))


def _next(practice: Practice, angles: Sequence[float], forward: bool, near_deg: float = _HAIR_DEG) -> float:
    """The next of some rotor angles that come again every turn of the cam, in the direction of turning."""
    turn = 360.0 / practice.bench.magneto.cam.turns_per_rotor_turn
    way, here = (1.0 if forward else -1.0), practice.bench.rotor_deg
    return here + way * min((way * (a - here) - near_deg) % turn + near_deg for a in angles)


def _to_rotor(practice: Practice, to_deg: float) -> Practice:
    """The rotor at an angle, turned there directly or by the propeller, all play between taken up."""
    by, engaged = to_deg - practice.bench.rotor_deg, practice.bench.engaged
    if engaged is None or not engaged.mounted:
        return turn_rotor(practice, by)
    whole = practice.bench.magneto.condition.coupling_backlash_deg + engaged.train_play_deg
    idle = engaged.play.deg if by >= 0 else engaged.play.deg - whole
    return turn_propeller(practice, (by + idle) / engaged.ratio)


def _free_arc(practice: Practice, engaged: Engaged, crank: float) -> tuple[float, float]:
    """Between which crank angles the piston clears its stop, round the bottom dead centre nearest [crank deg]."""
    engine = engaged.installation.engine
    after, before = _reach(engine, practice.stop_reach_deg)
    top = timing_centre_deg(engine)
    turn = math.floor((crank - top - after + 1e-9) / 360.0) * 360.0 + top
    return turn + after, turn + 360.0 - before


@lru_cache(maxsize=256)
def _reach(engine: Engine, reach_deg: float) -> tuple[float, float]:
    """Angles at which the piston meets the stop after and before top dead centre [crank deg], at the same drop."""
    return stop_reach_deg(engine, reach_deg)
