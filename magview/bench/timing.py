"""Timing to the engine of a bench state: errors, verdicts, plan, synchronising."""

from __future__ import annotations

import math
from dataclasses import dataclass

from magview.bench.state import BenchState, Side, firing_btdc_deg, mounting_of
from magview.bench.words import move_words
from magview.physics.engine.coupling import Move, Synchronising, plan, synchronise
from magview.physics.engine.crank import piston_drop_mm
from magview.physics.engine.pair_plan import PairPlan, PairReading, plan_pair
from magview.spec.language import tr

SIDES: tuple[Side, ...] = ("left", "right")


@dataclass(frozen=True)
class TimingError:
    """Distance of a magneto's firing from where it is wanted, three ways; positive = early."""

    crank_deg: float
    rotor_deg: float
    piston_mm: float
    """Travel of No. 1's piston between the two places, over the top where they lie on either side of it."""
    fires_mm: float
    """No. 1's piston below its top where it fires [mm]; negative = after top dead centre."""
    wanted_mm: float
    """The same where it is wanted."""


def timing_error(state: BenchState, side: Side) -> TimingError | None:
    """The error of one magneto now; None where the contacts never open and close."""
    engaged = state.engaged
    fires = firing_btdc_deg(state, side)
    if engaged is None or math.isnan(fires):
        return None
    wanted = (engaged.left if side == "left" else engaged.right).wanted_btdc_deg
    drop = piston_drop_mm(engaged.installation.engine, [-fires, -wanted])
    # The same height stands on either side of the top: which side it is must not be lost.
    at, meant = math.copysign(float(drop[0]), fires), math.copysign(float(drop[1]), wanted)
    return TimingError(fires - wanted, (fires - wanted) * engaged.ratio, at - meant, at, meant)


def timing_verdict(state: BenchState, side: Side) -> bool:
    """Whether one magneto fires within the engine's tolerance of where it is wanted."""
    error = timing_error(state, side)
    if error is None or state.engaged is None:
        return False
    # A hair of slack: a reading at the very limit must not fail for the last bit.
    return abs(error.crank_deg) <= state.engaged.installation.engine.timing_tolerance_deg + 1e-9


def timing_plan(state: BenchState, side: Side, most: int = 12) -> list[Move]:
    """The planner's moves for one magneto from as found, best first; empty without a reading."""
    engaged = state.engaged
    found = firing_btdc_deg(state, side, as_found=True)
    if engaged is None or engaged.installation.coupling is None or math.isnan(found):
        return []
    wanted = (engaged.left if side == "left" else engaged.right).wanted_btdc_deg
    coupling = engaged.installation.coupling
    # The reading went through the rotor's angle and back; a billionth of a degree must not part two ties.
    return plan(
        coupling.magneto_teeth, coupling.drive_teeth, engaged.ratio, round(found, 9), wanted, most=most
    )  # fmt: skip


def both_plan(state: BenchState) -> PairPlan | None:
    """The best pair of moves of both magnetos from as found; None without a reading or a pair in limits."""
    engaged = state.engaged
    if engaged is None or engaged.installation.coupling is None:
        return None
    coupling, engine = engaged.installation.disc, engaged.installation.engine
    found = {side: firing_btdc_deg(state, side, as_found=True) for side in SIDES}
    if any(math.isnan(fires) for fires in found.values()):
        return None
    left, right = (
        PairReading(
            coupling.magneto_teeth,
            coupling.drive_teeth,
            engaged.ratio,
            round(found[side], 9),  # as in `timing_plan`
            mounting_of(engaged, side).wanted_btdc_deg,
        )
        for side in SIDES
    )
    return plan_pair(left, right, engine.timing_tolerance_deg, engine.synchronising_tolerance_deg)


def both_words(state: BenchState) -> str:
    """Moves that put both magnetos right together, in words; empty where both are right as they stand."""
    result, engaged = synchronising(state), state.engaged
    if result is None or engaged is None or (result.left_ok and result.right_ok and result.synchronised):
        return ""
    found = both_plan(state)
    if engaged.installation.coupling is None:
        return ""
    if found is None:
        return tr("No pair of moves brings both magnetos within their tolerance and within that of synchronising.")
    rotation = state.magneto.rotation
    left, right = (move_words(move, rotation, "drive end") for move in (found.left, found.right))
    return tr(
        "Both together, from as found. Left: A disc {left_disc}, B magneto flange {left_flange}; it then fires "
        "{left:deg}. Right: A disc {right_disc}, B magneto flange {right_flange}; it then fires {right:deg}.",
        left_disc=left[0],
        left_flange=left[1],
        left=found.left.result_btdc_deg,
        right_disc=right[0],
        right_flange=right[1],
        right=found.right.result_btdc_deg,
    )


def synchronising(state: BenchState) -> Synchronising | None:
    """Left against right now; None without an engine or where the contacts never open and close."""
    engaged = state.engaged
    if engaged is None:
        return None
    left, right = firing_btdc_deg(state, "left"), firing_btdc_deg(state, "right")
    if math.isnan(left) or math.isnan(right):
        return None
    engine = engaged.installation.engine
    return synchronise(
        left,
        right,
        wanted_left_deg=engaged.left.wanted_btdc_deg,
        wanted_right_deg=engaged.right.wanted_btdc_deg,
        timing_tolerance_deg=engine.timing_tolerance_deg,
        synchronising_tolerance_deg=engine.synchronising_tolerance_deg,
    )
