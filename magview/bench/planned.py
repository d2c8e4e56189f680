"""The planned move of a coupling: the state of the plan, and the acts A (disc) and B (magneto flange) in words.

One place for page, picture and paper: A is always the disc on the drive flange, B the magneto flange on the disc.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum

from magview.bench.engine_words import outside_words
from magview.bench.lamp import Standing, may_plan, standing, unanswered
from magview.bench.lamp_words import btdc_words, place_words
from magview.bench.state import BenchState, Mounting, Side, firing_btdc_deg, mounting_of, readings
from magview.bench.timing import timing_plan, timing_verdict
from magview.bench.words import direction_word, teeth_words, way_words
from magview.physics.engine.coupling import Move, nearest_firings, within_tolerance
from magview.spec.language import marked, tr
from magview.spec.magneto import Rotation


class Stage(Enum):
    """The plan's state."""

    NO_READING = "no-reading"
    ASKED = "asked"
    """So large an error that stroke, mark and finger are asked about first."""
    WAITING = "waiting"
    """The reading is out of date, or contradicts the acts before it."""
    RIGHT = "right"
    ASSUMED = "assumed"
    """Right only because a bench begins so: nobody has read the lamp."""
    UNREACHABLE = "unreachable"
    MOVES = "moves"
    TEETH_MOVED = "teeth-moved"
    """Teeth were moved by no move of the plan: it waits until the lamp was read, or the bench is as found again."""


@dataclass(frozen=True)
class Planned:
    """The plan of one magneto."""

    stage: Stage
    moves: tuple[Move, ...]
    """Best first; none where none is to be shown."""
    tolerance_deg: float

    def good(self, move: Move) -> bool:
        """Whether a move comes within the engine's tolerance."""
        return within_tolerance(move, self.tolerance_deg)


def planned(state: BenchState, side: Side, under_way: bool = True) -> Planned:
    """The plan of a magneto as it stands. Raises SpecError without an engine.

    `under_way`: whether teeth that stand elsewhere than as found are those of a planned move that is being made.
    """
    engaged = state.engaged
    assert engaged is not None
    tolerance, mounting = engaged.installation.engine.timing_tolerance_deg, mounting_of(engaged, side)
    if unanswered(state, side):
        return Planned(Stage.ASKED, (), tolerance)
    moves = tuple(timing_plan(state, side))
    if not moves:
        return Planned(Stage.NO_READING, (), tolerance)
    if not may_plan(state, side):
        return Planned(Stage.WAITING, moves, tolerance)
    if not under_way and standing(state, side) is Standing.TEETH_MOVED:
        return Planned(Stage.TEETH_MOVED, moves, tolerance)
    if timing_verdict(state, side) and (mounting.magneto_teeth, mounting.disc_teeth) == (0, 0):
        return Planned(Stage.RIGHT if mounting.lamp_read else Stage.ASSUMED, (), tolerance)
    return Planned(Stage.MOVES if within_tolerance(moves[0], tolerance) else Stage.UNREACHABLE, moves, tolerance)


_STAGES = {
    Stage.NO_READING: marked("There is no reading to plan from."),
    Stage.ASKED: marked("No moves are shown yet."),
    Stage.WAITING: marked("The moves wait: read the lamp again, then plan from what it reads."),
    Stage.TEETH_MOVED: marked(
        "The moves wait: they are counted from the teeth as found. Read the lamp again, or set the teeth back."
    ),
    Stage.RIGHT: marked("✓ Right: leave the teeth alone."),
    Stage.ASSUMED: marked("Read the lamp and enter what it says: then the moves stand here."),
}


def plan_words(state: BenchState, plan: Planned) -> str:
    """The plan's state in a sentence or two."""
    if plan.stage in _STAGES:
        return tr(_STAGES[plan.stage])
    if plan.stage is Stage.UNREACHABLE:
        outside = outside_words(plan.moves, plan.tolerance_deg)
        near = [btdc_words(move.result_btdc_deg) for move in nearest_firings(plan.moves)]
        if len(near) == 1:
            return tr("✗ No move comes within the tolerance: {outside}. Swing it or set it instead.", outside=outside)
        return tr(
            "✗ No move comes within the tolerance: nearest {one} or {other}, swing it or set it; {outside}.",
            one=near[0],
            other=near[1],
            outside=outside,
        )
    if readings(state).within_limits:
        return tr("✓ The first is within ±{tolerance}° of crank.", tolerance=plan.tolerance_deg)
    # With the contacts set wrongly the reading is not worth planning from.
    return tr(
        "By the present reading the first comes within ±{tolerance}° of crank; set the contacts first, read the "
        "lamp again, then plan.",
        tolerance=plan.tolerance_deg,
    )


def seen_words(rotation: Rotation) -> str:
    """The way that "with rotation" goes, from both places where one may stand."""
    return tr(
        "With rotation is {engine} as you stand at the engine, {magneto} seen from the magneto's drive end.",
        engine=direction_word(1, rotation, "engine"),
        magneto=direction_word(1, rotation, "drive end"),
    )


def counts(at: Mounting, move: Move) -> tuple[int, int]:
    """Teeth of A, which the disc still has to go on the drive flange, and of B, from its paint to the flange's."""
    return move.disc_teeth - at.disc_teeth, at.painted_magneto_teeth + move.magneto_teeth


def act_words(at: Mounting, move: Move, rotation: Rotation) -> tuple[str, ...]:
    """The acts A and B as instructions, those that still are to be done."""
    a, b = counts(at, move)
    acts = []
    if a:
        acts.append(tr("A: set the disc on again {teeth}.", teeth=teeth_words(a, rotation, "engine")))
    if move.magneto_teeth != at.magneto_teeth or a:
        words = marked("B: count {teeth} from the disc's paint to the magneto flange's.")
        in_line = marked("B: set the magneto flange's paint in line with the disc's.")
        acts.append(tr(words, teeth=way_words(b)) if b else tr(in_line))
    return tuple(acts)


_AFTER = {
    (True, True): marked("After A and B, read the lamp again before closing."),
    (True, False): marked("After A, read the lamp again before closing."),
    (False, True): marked("After B, read the lamp again before closing."),
    (False, False): marked("Back as found, read the lamp again before closing."),
}
"""By whether the disc is moved, and the magneto flange."""


def expected_words(state: BenchState, side: Side, move: Move) -> str:
    """The lamp now, and what to do once the acts are done; half-way through them no reading counts."""
    assert state.engaged is not None
    at = mounting_of(state.engaged, side)
    after = tr(_AFTER[move.disc_teeth != 0, move.magneto_teeth != 0])
    if (at.magneto_teeth, at.disc_teeth) != (0, 0):
        return f"{tr('Half-way no reading counts.')} {after}"
    return f"{tr('Lamp now {now}.', now=place_words(firing_btdc_deg(state, side)))} {after}"
