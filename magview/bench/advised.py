"""Advice on a setting: turns of plate and screw after which tightening lands the setting where it should be."""

from __future__ import annotations

from dataclasses import dataclass
from functools import reduce

from magview.bench.reach_words import out_of_reach_words
from magview.bench.state import BenchState
from magview.bench.words import setting_moves
from magview.physics.cam.setting import internal_timing
from magview.spec.language import format_angle, format_length, marked, tr

ORDERS = marked(
    "Gap by the contact screw first, then opening by the backplate ends in one pass: the plate never changes the "
    "gap. Opening by the screw, then gap by the plate repeats: the screw changes both. Both orders are used."
)
"""The two orders of work and the reason, in the same words wherever the bench or the guide advises."""

_CHECK = marked(
    "Plate and screw both move the opening, only the screw moves the gap: check both again after tightening."
)

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


def advised_words(state: BenchState, plan: Advised) -> str:
    """The plan as what is to be done from here, a sentence or three."""
    gap = format_length(plan.gap_mm)
    if not plan.reachable:
        return tr(
            "A largest gap of {gap} with opening at the E-gap cannot be had: {reason}.", gap=gap, reason=plan.reason
        )
    plate, screw = plan.backplate_deg - state.backplate_deg, plan.screw_deg - state.screw_deg
    moves = setting_moves(state.magneto, plate, screw)
    creep = creep_words(plan)
    if not moves:
        if not creep:
            return tr("Nothing: the contacts open at the E-gap and the largest gap is {gap}.", gap=gap)
        return tr(
            "Nothing to turn: {creep}; then the contacts open at the E-gap and the largest gap is {gap}.",
            creep=tr("tightening the lock screw brings the contact screw to {angle}", angle=_at(plan.lands_deg)),
            gap=gap,
        )
    return " ".join(advised_steps(state, plan))


def advised_steps(state: BenchState, plan: Advised) -> tuple[str, ...]:
    """The acts of a plan that can be had, the first to be done first; none where nothing is to be turned."""
    plate, screw = plan.backplate_deg - state.backplate_deg, plan.screw_deg - state.screw_deg
    moves = setting_moves(state.magneto, plate, screw) if plan.reachable else []
    if not moves:
        return ()
    creep = creep_words(plan)
    # Gap by the screw first: the plate, turned after it, leaves the gap alone.
    turned, swung = abs(screw) >= _MOVED_DEG, abs(plate) >= _MOVED_DEG
    parts = []
    if turned:
        parts.append(_then([tr("slacken the lock screw")] * state.lock_tight + moves[:1]))
    if creep and turned:
        parts = [tr("{moves}; contact screw: {creep}", moves=parts[0], creep=creep)]
    elif creep:
        parts = [tr("contact screw: {creep}", creep=creep)]
    if swung:
        parts.append(_then([tr("slacken the clamp screws")] * state.clamps_tight + moves[-1:]))
    return (*(f"{part[0].upper()}{part[1:]}." for part in parts), tr(_CHECK))


def _then(moves: list[str]) -> str:
    return reduce(lambda first, then: tr("{first}, then {then}", first=first, then=then), moves)


def creep_words(plan: Advised) -> str:
    """Say where to set the contact screw and where tightening brings it; nothing where tightening moves nothing."""
    if abs(plan.creeps_deg) < _MOVED_DEG:
        return ""
    return tr("set to {angle}, tightening brings it to {lands}", angle=_at(plan.screw_deg), lands=_at(plan.lands_deg))


def _at(screw_deg: float) -> str:
    return format_angle(screw_deg, True)
