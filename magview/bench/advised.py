"""Advice on a setting: turns of plate and screw after which tightening lands the setting where it should be."""

from __future__ import annotations

from dataclasses import dataclass, replace

from magview.bench.actions import Action, TightenClamps, TightenLock, TurnBackplate, TurnScrew
from magview.bench.reach_words import out_of_reach_words
from magview.bench.state import BenchState, readings
from magview.bench.verdict import faults, late_words
from magview.bench.words import plate_move, screw_move
from magview.physics.cam.setting import Readings, internal_timing
from magview.spec.language import format_angle, format_length, marked, tr

ORDERS = marked(
    "Gap by the contact screw first, then opening by the backplate ends in one pass: the plate never changes the "
    "gap. Opening by the screw, then gap by the plate repeats: the screw changes both. Both orders are used."
)
"""The two orders of work and the reason, in the same words wherever the bench or the guide advises."""

_CHECK = marked("Read opening and gap again.")

_MOVED_DEG = 0.005
"""Less than this is no move: it would be written 0.00°."""


@dataclass(frozen=True)
class Advised:
    """Angles to turn plate and screw to [deg], and where the screw stands once its lock screw is tight [deg].

    With `reachable` false the angles are NaN or beyond what can be turned to, and `reason` says why.
    """

    gap_mm: float
    backplate_deg: float
    screw_deg: float
    lands_deg: float
    reachable: bool
    reason: str

    @property
    def creeps_deg(self) -> float:
        """Angle by which tightening still carries the screw [deg], positive = contacts closer."""
        return self.lands_deg - self.screw_deg


def advised(state: BenchState, gap_mm: float) -> Advised:
    """Return where plate and screw belong for a largest gap [mm] with the opening at the E-gap, both screws tight.

    A screw that has to be turned, or whose lock screw is slack, will be carried along by the magneto's creep when
    that is tightened, so it is set as much to the other side. One that is tight and right stays untouched.
    """
    timing, creep = internal_timing(state.magneto), state.magneto.condition.screw_creep_deg
    stays = timing.adjust(gap_mm)
    if stays.reachable and state.lock_tight and abs(stays.screw_deg - state.screw_deg) < _MOVED_DEG:
        return Advised(gap_mm, stays.backplate_deg, state.screw_deg, state.screw_deg, True, "")
    answer = timing.adjust(gap_mm, creep)
    turn_to = answer.screw_deg - creep
    return Advised(
        gap_mm, answer.backplate_deg, turn_to, answer.screw_deg, answer.reachable, out_of_reach_words(answer)
    )


@dataclass(frozen=True)
class Act:
    """One act of the advice: an instruction, and the bench's action that carries it out."""

    words: str
    action: Action | None
    """None for reading something."""


def advised_words(state: BenchState, plan: Advised) -> str:
    """The plan as what is to be done from here, in a few sentences."""
    gap = format_length(plan.gap_mm)
    if not plan.reachable:
        return tr(
            "Plate and screw cannot give a largest gap of {gap} with opening at the E-gap: {reason}.",
            gap=gap,
            reason=plan.reason,
        )
    acts = advised_acts(state, plan)
    if acts:
        return " ".join(act.words for act in acts)
    creep = creep_words(plan)
    if not creep:
        return tr("Nothing to turn: the contacts open at the E-gap and the largest gap is {gap}.", gap=gap)
    return tr(
        "Nothing to turn: {creep}; then the contacts open at the E-gap and the largest gap is {gap}.",
        creep=tr("tightening the lock screw brings the contact screw to {angle}", angle=_at(plan.lands_deg)),
        gap=gap,
    )


def advised_acts(state: BenchState, plan: Advised) -> tuple[Act, ...]:
    """The acts of a plan within reach, the first to be done first; none where nothing is to be turned.

    Gap by the screw first: the plate, turned after it, leaves the gap alone. Each ends tight.
    """
    plate, screw = plan.backplate_deg - state.backplate_deg, plan.screw_deg - state.screw_deg
    turned, swung = abs(screw) >= _MOVED_DEG, abs(plate) >= _MOVED_DEG
    acts: list[Act] = []
    if not plan.reachable or not (turned or swung):
        return ()
    if turned:
        if state.lock_tight:
            acts.append(Act(tr("Slacken the lock screw."), TightenLock(False)))
        acts.append(Act(_sentence(screw_move(state.magneto, screw)), TurnScrew(plan.screw_deg)))
    if turned or not state.lock_tight:
        tight = tr("Tighten the lock screw.")
        if creep_words(plan):
            words = marked("Tighten the lock screw: that brings the contact screw from {angle} to {lands}.")
            tight = tr(words, angle=_at(plan.screw_deg), lands=_at(plan.lands_deg))
        acts.append(Act(tight, TightenLock(True)))
    if swung:
        if state.clamps_tight:
            acts.append(Act(tr("Slacken the clamp screws."), TightenClamps(False)))
        acts.append(Act(_sentence(plate_move(state.magneto, plate)), TurnBackplate(plan.backplate_deg)))
    if swung or not state.clamps_tight:
        acts.append(Act(tr("Tighten the clamp screws."), TightenClamps(True)))
    return (*acts, Act(tr(_CHECK), None))


def _sentence(words: str) -> str:
    return f"{words[0].upper()}{words[1:]}."


def tightened(state: BenchState) -> Readings | None:
    """The readings once a slack lock screw is tightened; None where that moves nothing."""
    creep = state.magneto.condition.screw_creep_deg
    if state.lock_tight or abs(creep) < _MOVED_DEG:
        return None
    low, high = state.magneto.contact_screw.range_deg
    return readings(replace(state, screw_deg=min(max(state.screw_deg + creep, low), high)))


def slack_words(state: BenchState) -> str:
    """A setting in limits whose slack lock screw will still carry it along: where it then stands; else nothing."""
    then = tightened(state)
    if then is None or faults(state.magneto, readings(state)):
        return ""
    words = marked(
        "Right as it stands; the lock screw is slack and tightening it moves the contact screw {creep:+deg}: "
        "largest gap then {gap:length}, contacts open {opens}, {verdict}."
    )
    return tr(
        words,
        creep=state.magneto.condition.screw_creep_deg,
        gap=float(then.max_gap_mm[0]),
        opens=late_words(then),
        verdict=tr("out of limits") if faults(state.magneto, then) else tr("within limits"),
    )


def creep_words(plan: Advised) -> str:
    """Say where to set the contact screw and where tightening brings it; nothing where tightening moves nothing."""
    if abs(plan.creeps_deg) < _MOVED_DEG:
        return ""
    return tr("set to {angle}, tightening brings it to {lands}", angle=_at(plan.screw_deg), lands=_at(plan.lands_deg))


def _at(screw_deg: float) -> str:
    return format_angle(screw_deg, True)
