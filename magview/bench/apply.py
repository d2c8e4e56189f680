"""Effect of each action on a state of the bench."""

from __future__ import annotations

import math
from dataclasses import replace
from typing import TypeVar

from magview.bench.actions import (
    Action,
    Advance,
    BurnFaces,
    CheckFirst,
    ChooseLamp,
    DropInspection,
    DropTrial,
    EngineAction,
    FitJumper,
    GrowPip,
    HoldRotor,
    LetGo,
    LoadTrain,
    MountMagneto,
    MoveTeeth,
    NoteAction,
    NoteInspection,
    NoteTrial,
    PaintMarks,
    PlaceInstallation,
    PlaceMagneto,
    PullPlug,
    ReadLamp,
    ReadTrials,
    RotorAction,
    ScrewAction,
    SetBoth,
    SetLeadFault,
    SettleRotor,
    SlipPaper,
    SwitchIgnition,
    SwitchOther,
    TightenClamps,
    TightenLock,
    TurnBackplate,
    TurnCrank,
    TurnRotor,
    TurnScrew,
    ViewSide,
    WantTiming,
    WearAction,
    WearHeel,
)
from magview.bench.apply_lead import apply_to_lead, lead_in_view
from magview.bench.lamp import checked, mounting_read
from magview.bench.placing import placed
from magview.bench.state import (
    BenchState,
    By,
    Engaged,
    Mounting,
    Side,
    crank_deg,
    mounting_of,
    shift_deg,
    swing_limits_deg,
    with_play,
)
from magview.physics.electric.magnet import friction_share, rest_deg, swing
from magview.physics.engine.play import Play
from magview.spec.base import SpecError
from magview.spec.language import marked, tr

T = TypeVar("T")

ROTOR_LIMIT_DEG = 1e6
"""Some 2,800 turns either way: beyond it a rotor angle is a slip of the keyboard, not a position."""

BTDC_LIMIT_DEG = 90.0
"""No engine is timed further from top dead centre."""

LAMP_LIMIT_DEG = 180.0
"""As far as a disc reads to either side: a lamp may change there, on a wrong stroke or by a slipped disc."""

MAX_NOTES = 200
"""Inspections or trials on one bench: more is not noted by anybody."""

MAX_WEAR_MM = 2.0
"""A heel or a contact worn further has long been thrown away."""

_SAME_DEG = 1e-6
"""Smallest move of a hand: a tight screw does not refuse a smaller one."""

MAX_STEPS = 20_000
"""Ten seconds of swing in one action: by then any rotor rests."""


def apply(state: BenchState, action: Action) -> BenchState:
    """The state after an action; a new value, the old one is left as it was.

    Raises
    ------
    SpecError : an angle is not finite or out of all reason, a screw is tight that must be slack, a magneto
        cannot be placed, or there is no engine for an action that needs one.
    """
    changed = _apply(state, action)
    hand = _TOUCHES.get(type(action))
    if hand is None or hand in changed.touched:
        return changed
    return replace(changed, touched=changed.touched | {hand})


_TOUCHES: dict[type, By] = {
    TurnBackplate: "setting", TurnScrew: "setting", SetBoth: "setting", TightenLock: "setting",
    TightenClamps: "setting", WearHeel: "wear", BurnFaces: "wear", GrowPip: "pip", PullPlug: "lead",
    SwitchIgnition: "lead", SwitchOther: "lead", FitJumper: "lead", SlipPaper: "lead",
    TurnCrank: "crank", TurnRotor: "crank",
}  # fmt: skip


def _apply(state: BenchState, action: Action) -> BenchState:
    match action:
        case PlaceMagneto(item) | PlaceInstallation(item):
            # The same hands, with the same light.
            return replace(placed(item), trials_read=state.trials_read, lamp_kind=state.lamp_kind)
        case TurnRotor() | HoldRotor() | LetGo() | Advance() | SettleRotor():
            return _apply_to_rotor(state, action)
        case TurnBackplate() | TurnScrew() | SetBoth() | TightenLock() | TightenClamps():
            return _apply_to_screws(state, action)
        case PullPlug() | SwitchIgnition() | SwitchOther() | FitJumper() | SlipPaper():
            return apply_to_lead(state, action)
        case SetLeadFault() | ChooseLamp():
            return apply_to_lead(state, action)
        case WearHeel() | GrowPip() | BurnFaces():
            return _apply_wear(state, action)
        case NoteTrial() | DropTrial() | ReadTrials() | NoteInspection() | DropInspection():
            return _apply_note(state, action)
        case _:
            return _apply_to_engine(state, action)


def _apply_note(state: BenchState, action: NoteAction) -> BenchState:
    match action:
        case NoteTrial(trial):
            return replace(
                state,
                trials=_with(state.trials, trial, marked("there are {most} trials already; strike one out first")),
            )
        case DropTrial(place):
            return replace(
                state, trials=_without(state.trials, place, marked("there is no trial {place}; there are {count}"))
            )
        case ReadTrials(how):
            return replace(state, trials_read=how)
        case NoteInspection(inspection):
            return replace(
                state,
                inspections=_with(
                    state.inspections,
                    inspection,
                    marked("there are {most} inspections already; strike one out first"),
                ),
                inspected_at=(*state.inspected_at, (state.backplate_deg, state.screw_deg)),
            )
        case DropInspection(place):
            return replace(
                state,
                inspections=_without(
                    state.inspections, place, marked("there is no inspection {place}; there are {count}")
                ),
                inspected_at=state.inspected_at[:place] + state.inspected_at[place + 1 :],
            )


def _apply_wear(state: BenchState, action: WearAction) -> BenchState:
    magneto = state.magneto
    if not math.isfinite(action.to_mm):
        raise SpecError(tr("{to} is not a length; wear must be a finite number of millimetres", to=action.to_mm))
    millimetres = min(max(action.to_mm, 0.0), MAX_WEAR_MM)
    if isinstance(action, WearHeel) and magneto.breaker.heel_arm_mm is None:
        raise SpecError(tr("this magneto's file gives no heel arm, so it cannot be said what a worn heel does"))
    field = {WearHeel: "heel_wear_mm", GrowPip: "pip_height_mm", BurnFaces: "face_burn_mm"}[type(action)]
    worn = magneto.condition.model_copy(update={field: millimetres})
    return replace(state, magneto=magneto.model_copy(update={"condition": worn}))


def _apply_to_rotor(state: BenchState, action: RotorAction) -> BenchState:
    match action:
        case TurnRotor(to_deg):
            return _turn_rotor(
                state,
                _within(
                    to_deg,
                    (-ROTOR_LIMIT_DEG, ROTOR_LIMIT_DEG),
                    marked("the rotor's angle is {value}; it must be a finite number of degrees"),
                ),
            )
        case HoldRotor():
            return replace(state, held=True, speed_deg_s=0.0)
        case LetGo():
            return replace(state, held=False)
        case Advance(steps):
            if not 0 <= steps <= MAX_STEPS:
                raise SpecError(
                    tr(
                        "the clock cannot run {steps} steps; it takes 0 to {most} at a time",
                        steps=steps,
                        most=MAX_STEPS,
                    )
                )
            return _advance(state, steps)
        case SettleRotor():
            free = replace(state, held=False, speed_deg_s=0.0)
            if state.magneto.detent is None or state.magneto.detent.torque_nm == 0.0:
                return free
            held = friction_share(state.magneto.detent)
            return _rotor_at(free, rest_deg(state.magneto.poles, state.rotor_deg, swing_limits_deg(state), held))


def _turn_rotor(state: BenchState, to_deg: float) -> BenchState:
    """By hand. On the engine that is the propeller turning it, so the play is taken up on one side or the other."""
    engaged = state.engaged
    if engaged is not None and engaged.mounted and to_deg != state.rotor_deg:
        whole = Play(engaged.train_play_deg, state.magneto.condition.coupling_backlash_deg)
        state = replace(state, engaged=with_play(engaged, Play() if to_deg > state.rotor_deg else whole))
    return replace(state, rotor_deg=to_deg, speed_deg_s=0.0)


def _rotor_at(state: BenchState, to_deg: float) -> BenchState:
    """By the magnet. On the engine friction holds the drive train, so what the rotor moves is the coupling's play."""
    engaged = state.engaged
    if engaged is not None and engaged.mounted:
        backlash = state.magneto.condition.coupling_backlash_deg
        play = min(max(engaged.play_deg + to_deg - state.rotor_deg, 0.0), backlash)
        state = replace(state, engaged=replace(engaged, play_deg=play))
    return replace(state, rotor_deg=to_deg)


def _advance(state: BenchState, steps: int) -> BenchState:
    detent = state.magneto.detent
    if state.held or detent is None or steps == 0:
        return state
    angle, speed = swing(
        detent, state.magneto.poles, state.rotor_deg, state.speed_deg_s, steps, swing_limits_deg(state)
    )
    return replace(_rotor_at(state, angle), speed_deg_s=speed, clock_steps=state.clock_steps + steps)


def _apply_to_screws(state: BenchState, action: ScrewAction) -> BenchState:
    match action:
        case TurnBackplate(to_deg):
            return _turn_plate(state, to_deg)
        case TurnScrew(to_deg):
            return _turn_screw(state, to_deg)
        case SetBoth(backplate_deg, screw_deg):
            return _turn_screw(_turn_plate(state, backplate_deg), screw_deg)
        case TightenLock(tight):
            creep = state.magneto.condition.screw_creep_deg if tight and not state.lock_tight else 0.0
            low, high = state.magneto.contact_screw.range_deg
            return replace(state, lock_tight=tight, screw_deg=min(max(state.screw_deg + creep, low), high))
        case TightenClamps(tight):
            return replace(state, clamps_tight=tight)


def _turn_plate(state: BenchState, to_deg: float) -> BenchState:
    angle = _within(
        to_deg,
        state.magneto.backplate.range_deg,
        marked("the backplate's angle is {value}; it must be a finite number of degrees"),
    )
    if state.clamps_tight and abs(angle - state.backplate_deg) < _SAME_DEG:
        return state
    if state.clamps_tight:
        raise SpecError(tr("the clamp screws are tight: slacken them before turning the backplate"))
    return replace(state, backplate_deg=angle)


def _turn_screw(state: BenchState, to_deg: float) -> BenchState:
    angle = _within(
        to_deg,
        state.magneto.contact_screw.range_deg,
        marked("the contact screw's angle is {value}; it must be a finite number of degrees"),
    )
    if state.lock_tight and abs(angle - state.screw_deg) < _SAME_DEG:
        return state
    if state.lock_tight:
        raise SpecError(tr("the lock screw is tight: slacken it before turning the contact screw"))
    return replace(state, screw_deg=angle)


def _apply_to_engine(state: BenchState, action: EngineAction) -> BenchState:
    engaged = state.engaged
    if engaged is None:
        raise SpecError(tr("this magneto is not on an engine: open an installation first"))
    match action:
        case TurnCrank(to_deg):
            limits = (-ROTOR_LIMIT_DEG / engaged.ratio, ROTOR_LIMIT_DEG / engaged.ratio)
            return _turn_crank(
                state,
                engaged,
                _within(
                    to_deg, limits, marked("the crank's angle is {value}; it must be a finite number of degrees")
                ),
            )
        case MountMagneto(on):
            return _mount(state, engaged, on)
        case LoadTrain():
            return _load_train(state, engaged)
        case ReadLamp(side, btdc_deg):
            return _read_lamp(state, engaged, side, btdc_deg)
        case CheckFirst(side, what, done):
            return _with_mounting(state, engaged, side, checked(mounting_of(engaged, side), what, done))
        case PaintMarks():
            at = engaged.mounting
            painted = replace(
                at, painted_magneto_teeth=-at.magneto_teeth, painted_disc_teeth=-at.disc_teeth, painted=True
            )
            return _with_mounting(state, engaged, engaged.side, painted)
        case WantTiming(side, btdc_deg):
            wanted = _within(
                btdc_deg,
                (-BTDC_LIMIT_DEG, BTDC_LIMIT_DEG),
                marked("the wanted timing is {value}; it must be a finite number of degrees"),
            )
            return _with_mounting(state, engaged, side, replace(mounting_of(engaged, side), wanted_btdc_deg=wanted))
        case MoveTeeth(magneto_teeth, disc_teeth):
            coupling = engaged.installation.disc
            if abs(magneto_teeth) >= coupling.magneto_teeth or abs(disc_teeth) >= coupling.drive_teeth:
                raise SpecError(
                    tr("a whole turn of teeth brings the coupling back to where it was, with the finger off")
                )
            moved = replace(engaged.mounting, magneto_teeth=magneto_teeth, disc_teeth=disc_teeth)
            return _with_mounting(state, engaged, engaged.side, moved)
        case ViewSide(side):
            return _with_crank(lead_in_view(state, side), replace(engaged, side=side), crank_deg(state))


def _mount(state: BenchState, engaged: Engaged, on: bool) -> BenchState:
    if on == engaged.mounted:
        return state
    crank = crank_deg(state)
    if on:
        return _with_crank(state, with_play(replace(engaged, off_crank_deg=None), Play()), crank)
    return replace(state, engaged=with_play(replace(engaged, off_crank_deg=crank), Play()))


def _load_train(state: BenchState, engaged: Engaged) -> BenchState:
    if not engaged.mounted:
        raise SpecError(tr("the magneto is off the engine: there is no drive train to load"))
    return _with_crank(state, with_play(engaged, Play()), crank_deg(state))


def _read_lamp(state: BenchState, engaged: Engaged, side: Side, btdc_deg: float) -> BenchState:
    reads = _within(
        btdc_deg,
        (-LAMP_LIMIT_DEG, LAMP_LIMIT_DEG),
        marked("the lamp's reading is {value}; it must be a finite number of degrees"),
    )
    return _with_mounting(state, engaged, side, mounting_read(state, side, reads))


def _turn_crank(state: BenchState, engaged: Engaged, crank: float) -> BenchState:
    if not engaged.mounted:
        return replace(state, engaged=replace(engaged, off_crank_deg=crank))
    step = engaged.ratio * (crank - crank_deg(state))
    play = engaged.play.turned(step, engaged.train_play_deg, state.magneto.condition.coupling_backlash_deg)
    return _with_crank(state, with_play(engaged, play), crank)


def _with_crank(state: BenchState, engaged: Engaged, crank: float) -> BenchState:
    """The crank at an angle, and a mounted rotor where the coupling then has it."""
    if not engaged.mounted:
        return replace(state, engaged=replace(engaged, off_crank_deg=crank))
    rotor = engaged.mounting.phase_deg + shift_deg(engaged, engaged.side) + engaged.ratio * crank + engaged.play.deg
    return replace(state, engaged=engaged, rotor_deg=rotor, speed_deg_s=0.0)


def _with_mounting(state: BenchState, engaged: Engaged, side: Side, mounting: Mounting) -> BenchState:
    """The crank stays where it is; what was done to the coupling moves the rotor."""
    changed = replace(engaged, left=mounting) if side == "left" else replace(engaged, right=mounting)
    return _with_crank(state, changed, crank_deg(state))


def _with(notes: tuple[T, ...], note: T, words: str) -> tuple[T, ...]:
    if len(notes) >= MAX_NOTES:
        raise SpecError(tr(words, most=MAX_NOTES))
    return (*notes, note)


def _without(notes: tuple[T, ...], place: int, words: str) -> tuple[T, ...]:
    if not 0 <= place < len(notes):
        raise SpecError(tr(words, place=place + 1, count=len(notes)))
    return notes[:place] + notes[place + 1 :]


def _within(value: float, limits: tuple[float, float], words: str) -> float:
    if not math.isfinite(value):
        raise SpecError(tr(words, value=value))
    return min(max(float(value), limits[0]), limits[1])
