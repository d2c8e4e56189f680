"""Goals as they are told after the hand-in: a gauge with one's own reading against the truth, and one cause."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace

from magview.bench.state import Side
from magview.drawing.breaker_glass import seen_past_mm
from magview.practice import instruments
from magview.practice.evidence import Evidence, Tried
from magview.practice.exercise_parts import Goal
from magview.practice.goals import DISC_TOLERANCE_DEG, timing_error_deg
from magview.practice.marking import Marking, MarkingRow
from magview.practice.readings import UNITS, own_readings
from magview.practice.state import Feel, Practice, true_firing_deg, true_readings, view
from magview.practice.words import side_words
from magview.spec.language import format_angle, format_length, marked, number, tr
from magview.spec.units import digits_beside

HALF = 0.5
"""A reading rounded to a division cannot tell apart half a division to either side."""


@dataclass(frozen=True)
class Gauged:
    """A true value against its limits, and the bounds of one's own reading. All numbers in one unit."""

    value: float
    low: float
    high: float
    words: str
    ends: tuple[str, str]
    own: tuple[float, float] | None
    """Bounds of one's own last reading; None where nothing was read."""
    own_words: str


@dataclass(frozen=True)
class GoalTold:
    """One goal: points, gauge where it has one, and the sentence that says why."""

    what: str
    got: float
    """Points of 100."""
    of: float
    full: bool
    gauge: Gauged | None
    cause: str
    row: MarkingRow


def told_goals(found: Evidence, left: Practice, marking: Marking) -> tuple[GoalTold, ...]:
    """Every row of a marking. `left` is the state as left, after its first run."""
    whole = sum(row.weight for row in marking.rows)
    return tuple(_told(found, left, row, 100.0 / whole) for row in marking.rows)


def _told(found: Evidence, left: Practice, row: MarkingRow, points: float) -> GoalTold:
    goal, side, judged = row.goal, row.side, row.judged
    assert goal is not None and side is not None and judged is not None
    gauge = _gauged(found, left, goal, side)
    cause = judged.evidence
    if gauge is not None and judged.how:
        first = tr("Right, and proved") if judged.right and judged.proved else tr("Right, but not proved")
        how = _blades_lack(found, left, side) if goal.goal == "gap" and judged.right and judged.proved else ""
        how = how or judged.how
        cause = f"{first}: {how}." if judged.right else f"{how[0].upper()}{how[1:]}."
    return GoalTold(
        _title(left, goal, side, row.what), row.got * points, row.weight * points, row.full, gauge, cause, row
    )


_TITLES = {
    "gap": (marked("Largest gap"), marked("Largest gap, {name}")),
    "opening": (marked("Opening from the mark"), marked("Opening from the mark, {name}")),
    "timing": (marked("Fires before top dead centre"), marked("Fires before top dead centre, {name}")),
    "contacts": (marked("Contacts: the right decision"), marked("Contacts: the right decision, {name}")),
    "lead": (marked("Switch lead"), marked("Switch lead, {name}")),
    "marks": (marked("Paint marks on the coupling"), marked("Paint marks on the coupling, {name}")),
    "secured": (marked("Closed up"), marked("Closed up, {name}")),
}
"""Titles of a goal on one magneto, alone and beside another."""


def _title(room: Practice, goal: Goal, side: Side, otherwise: str) -> str:
    if goal.goal not in _TITLES:
        return otherwise
    alone, named = _TITLES[goal.goal]
    return tr(alone) if room.other is None else tr(named, name=side_words(room, side))


def _gauged(found: Evidence, left: Practice, goal: Goal, side: Side) -> Gauged | None:
    room = view(left, side)
    match goal.goal:
        case "gap":
            return _gap(found, room)
        case "opening":
            return _opening(found, room)
        case "e-gap":
            return _e_gap(view(found.last, side))
        case "timing":
            return _timing(found, room)
        case "disc-zero":
            limits = -DISC_TOLERANCE_DEG, DISC_TOLERANCE_DEG
            notes = [note.value for _, note, _ in found.notes if note.kind == "disc-zero" and note.value is not None]
            own = None if not notes or found.disc_moved else (notes[-1], notes[-1])
            disc = _in_degrees(left.disc_error_deg, *limits, own)
            met = found.both_stops() and own is None
            return replace(disc, own_words=tr("you: stop met from both sides")) if met else disc
        case "synchronised":
            return _synchronised(found, left)
        case "reading":
            return _reading(found, goal, side)
    return None


def _gap(found: Evidence, room: Practice) -> Gauged:
    low, high = room.bench.magneto.gap_limits_mm
    gaps = true_readings(room.bench).max_gap_mm.tolist()
    worst = max(gaps, key=lambda gap: max(low - gap, gap - high))
    own, reading = bracket(_tried(found, room.side, gaps.index(worst) + 1))
    words = tr("you: {reading}", reading=reading) if reading else tr("you did not measure it")
    return Gauged(worst, low, high, format_length(worst), (format_length(low), format_length(high)), own, words)


def _tried(found: Evidence, side: Side, lobe: int) -> list[Tried]:
    """Blades tried since the gap could last change: on the lobe, or on any where those leave no bracket."""
    track = found.tracks[side]
    now = [tried for tried in track.tried if tried.index > track.gap_at]
    on_it = [tried for tried in now if tried.lobe == lobe]
    return on_it if bracket(on_it)[0] is not None else now


def bracket(tried: list[Tried]) -> tuple[tuple[float, float] | None, str]:
    """Bounds of a gap that blades leave, and the two blades in words ("" without any); one bound is no bracket."""
    goes = [t for t in tried if t.feel is not Feel.NO_GO]
    stops = [t for t in tried if t.feel is Feel.NO_GO]
    thick = max((t.thick_mm for t in goes), default=None)
    close = min((t.thick_mm for t in stops), default=None)
    drag = [t.thick_mm + instruments.DRAG_MM for t in goes if t.feel is Feel.DRAG]
    bound = min([*drag, *([close] if close is not None else [])], default=None)
    said = []
    if thick is not None:
        said.append(
            tr("{blade} drags", blade=format_length(thick))
            if any(t.feel is Feel.DRAG and t.thick_mm == thick for t in goes)
            else tr("{blade} goes", blade=format_length(thick))
        )
    if close is not None:
        said.append(tr("{blade} does not go", blade=format_length(close)))
    own = (thick, bound) if thick is not None and bound is not None and thick <= bound else None
    return own, ", ".join(said)


def _blades_lack(found: Evidence, left: Practice, side: Side) -> str:
    """A sentence where a right gap was tried with blades that reach beyond its limits; marks stay as they are."""
    room = view(left, side)
    low, high = room.bench.magneto.gap_limits_mm
    gaps = true_readings(room.bench).max_gap_mm.tolist()
    lobe = gaps.index(max(gaps, key=lambda gap: max(low - gap, gap - high))) + 1
    own, _ = bracket(_tried(found, side, lobe))
    if own is None or (own[0] >= low - 1e-6 and own[1] <= high + 1e-6):
        return ""
    return tr(
        "right as it stands, but these blades do not prove it; take {low} and {high}",
        low=format_length(low),
        high=format_length(high),
    )


def _opening(found: Evidence, room: Practice) -> Gauged:
    marks = room.bench.magneto.marks
    value, allowed = float(true_readings(room.bench).mark_offset_mm), marks.tolerance_mm
    looks = [o for o in found.tracks[room.side].openings if o.edge is not None and o.edge.value is not None]
    if room.bench.magneto.compensated:
        looks = [o for o in looks if o.lobe == 1]
    edge = looks[-1].edge if looks else None
    return _on_the_rim(value, allowed, room, edge.value if edge is not None else None)


def _e_gap(room: Practice) -> Gauged | None:
    seen = instruments.edge_mm(room)
    if seen is None:
        return None
    value = seen[0] - seen_past_mm(room.eye_deg)
    return _on_the_rim(value, room.bench.magneto.marks.tolerance_mm, room, instruments.straightedge(room).value)


def _on_the_rim(value: float, allowed: float, room: Practice, divisions: float | None) -> Gauged:
    """A distance from a mark on the rim; `divisions`: as read by the straightedge."""
    digits = digits_beside(abs(value), None, allowed, 2) if math.isfinite(value) else 2
    marks = room.exercise.tray.straightedge
    own, words = None, tr("you did not measure it")
    if divisions is not None and marks is not None:
        step = instruments.DIVISIONS_MM[marks]
        read = divisions * step
        own = (read - HALF * step, read + HALF * step)
        words = tr("you: {reading}", reading=_past(read, 2) if divisions else tr("in line"))
    bound = number(allowed, f".{digits}f")
    ends = f"−{bound}", f"+{bound} mm"
    return Gauged(value, -allowed, allowed, _past(value, digits), ends, own, words)


def _past(mm: float, digits: int) -> str:
    if not math.isfinite(mm):
        return tr("never opens")
    words = marked("{offset:.{digits}mm} past") if mm >= 0 else marked("{offset:.{digits}mm} short")
    return tr(words, offset=abs(mm), digits=digits)


def _timing(found: Evidence, room: Practice) -> Gauged | None:
    engaged = room.bench.engaged
    if engaged is None or not math.isfinite(timing_error_deg(room)):
        return None
    wanted, allowed = engaged.mounting.wanted_btdc_deg, engaged.installation.engine.timing_tolerance_deg
    return _in_degrees(true_firing_deg(room.bench), wanted - allowed, wanted + allowed, _disc_read(found, room.side))


def _disc_read(found: Evidence, side: Side) -> tuple[float, float] | None:
    step = found.first.exercise.tray.disc_step_deg
    looks = [o.disc for o in found.tracks[side].openings if o.first_cylinder and o.disc is not None]
    values = [disc.value for disc in looks if disc.value is not None]
    if not values or step is None:
        return None
    return values[-1] - HALF * step, values[-1] + HALF * step


def _synchronised(found: Evidence, left: Practice) -> Gauged | None:
    engaged = left.bench.engaged
    errors = [timing_error_deg(view(left, side)) for side in left.sides]
    if engaged is None or not all(map(math.isfinite, errors)):
        return None
    reads = [_disc_read(found, side) for side in left.sides]
    one, other = reads[0], reads[-1]
    own = None
    if one is not None and other is not None:
        own = one[0] - other[1], one[1] - other[0]
    allowed = engaged.installation.engine.synchronising_tolerance_deg
    return _in_degrees(errors[0] - errors[-1], -allowed, allowed, own)


def _in_degrees(value: float, low: float, high: float, own: tuple[float, float] | None) -> Gauged:
    digits = digits_beside(value, low, high, 2)
    words = tr("you did not measure it")
    if own is not None:
        words = tr("you: {reading}", reading=format_angle((own[0] + own[1]) / 2))
    ends = format_angle(low, digits=digits), format_angle(high, digits=digits)
    return Gauged(value, low, high, format_angle(value, digits=digits), ends, own, words)


def _reading(found: Evidence, goal: Goal, side: Side) -> Gauged | None:
    kind = goal.reading
    if kind is None or kind == "lead" or goal.within is None:
        return None
    written = [r for r in own_readings(found) if r.note.kind == kind and (r.note.side == side or kind == "disc-zero")]
    if not written or written[-1].true_value is None or written[-1].note.value is None:
        return None
    truth, mine, within = written[-1].true_value, written[-1].note.value, goal.within
    unit = UNITS[kind]

    def said(value: float) -> str:
        return format_angle(value) if unit == "°" else format_length(value)

    own_words = tr("you: {reading}", reading=said(mine))
    ends = said(truth - within), said(truth + within)
    return Gauged(truth, truth - within, truth + within, said(truth), ends, (mine, mine), own_words)
