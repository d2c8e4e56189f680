"""A trainee's own readings against the truth of the moment they were written down."""

from __future__ import annotations

import math

from magview.bench.state import Side
from magview.practice.evidence import Evidence, Track
from magview.practice.exercise import Goal
from magview.practice.state import Note, Practice, true_firing_deg, true_readings, view
from magview.practice.words import side_words
from magview.spec.frozen import frozen

UNITS = {"opening": "mm", "gap": "mm", "firing": "°", "disc-zero": "°"}


@frozen
class OwnReading:
    """One line of the notebook, with what was true when it was written; None for a note in words."""

    index: int
    at_s: float
    note: Note
    true_value: float | None
    true_text: str

    @property
    def error(self) -> float | None:
        """Written less true, in the reading's own unit."""
        if self.note.value is None or self.true_value is None:
            return None
        return self.note.value - self.true_value


def own_readings(found: Evidence) -> list[OwnReading]:
    """Every line of the notebook against the truth of its moment."""
    times = {step.index: step.at_s for step in found.steps}
    return [OwnReading(i, times[i], note, *_truth(found, note, then)) for i, note, then in found.notes]


def _truth(found: Evidence, note: Note, then: Practice) -> tuple[float | None, str]:
    room = view(then, note.side)
    match note.kind:
        case "lead":  # a finding is of what was found, also when it is written after the repair
            return None, lead_truth(view(found.first, note.side))
        case "note":
            return None, ""
        case "disc-zero":
            value = then.disc_error_deg
        case "firing":
            value = true_firing_deg(room.bench) if room.bench.engaged is not None else math.nan
        case "gap":
            value = float(true_readings(room.bench).max_gap_mm[note.lobe - 1])
        case "opening":
            magneto = room.bench.magneto
            error = float(true_readings(room.bench).e_gap_error_deg[note.lobe - 1])
            value = magneto.marks.radius_mm * math.tan(math.radians(error * magneto.cam.turns_per_rotor_turn))
    return (value, f"{value:.3f} {UNITS[note.kind]}") if math.isfinite(value) else (None, "never opens")


def lead_truth(room: Practice) -> str:
    """What the switch lead of the magneto in view truly is."""
    lead = room.bench.lead
    if lead.broken:
        return "broken"
    if lead.shorted:
        return "shorted"
    return "sound" if room.seat.tab_sound else "tab"


def judge_reading(found: Evidence, goal: Goal, side: Side) -> tuple[str, bool, bool, bool, str]:
    """What, right, near, proved and why, for the last reading of a kind written of one magneto."""
    kind = goal.reading
    what = f"{_NAMES[str(kind)]}, {side_words(found.last, side)}" if kind != "disc-zero" else _NAMES["disc-zero"]
    written = [r for r in own_readings(found) if r.note.kind == kind and (r.note.side == side or kind == "disc-zero")]
    if not written:
        return what, False, False, False, "It was not written down."
    last = written[-1]
    proved, how = _proved(found, last, found.tracks[side])
    if kind == "lead":
        right = last.note.text == last.true_text
        return what, right, False, proved, f"Written: {last.note.text}; true: {last.true_text}; {how}."
    if last.error is None or goal.within is None or last.note.value is None:
        return what, False, False, proved, f"There was nothing to read: the contacts never open; {how}."
    unit, off = UNITS[str(kind)], abs(last.error)
    told = f"Written: {last.note.value:g} {unit}; true: {last.true_text}; {goal.within:g} {unit} are allowed; {how}."
    return what, off <= goal.within + 1e-9, off <= 2 * goal.within, proved, told


_NAMES = {
    "opening": "Where the contacts open, as read",
    "gap": "Largest gap, as read",
    "firing": "Firing, as read",
    "disc-zero": "The disc's zero, as read",
    "lead": "What the switch lead suffers from",
}


def _proved(found: Evidence, reading: OwnReading, track: Track) -> tuple[bool, str]:
    """Whether an instrument had shown it before it was written and since anything changed."""
    upto = reading.index

    def fresh(indices: list[int], since: int) -> bool:
        return any(since < i < upto for i in indices)

    changed = max((i for i in track.changed if i < upto), default=0)
    match reading.note.kind:
        case "opening":
            looks = [o.index for o in track.openings if o.forward and o.square and o.edge is not None]
            done, by = fresh(looks, changed), "lamp and straightedge, looked at square"
        case "gap":
            done, by = fresh(_tried_alike(found, reading, track), changed), "blades"
        case "firing":
            looks = [o.index for o in track.openings if o.forward and o.disc is not None and o.first_cylinder]
            zero = found.both_stops(before=upto) or found.first.exercise.start.disc_at_zero
            done, by = fresh(looks, changed) and zero, "lamp, and a disc whose zero was found"
        case "disc-zero":
            since = max((i for i in found.disc_moved if i < upto), default=0)
            done, by = found.both_stops(since, upto), "the stop from both sides"
        case "lead":
            done, by = _lead_shown(reading, track), "meter and lamp"
        case _:
            done, by = True, "nothing"
    return done, f"{'read with' if done else 'not read with'} {by} before it was written"


def _tried_alike(found: Evidence, reading: OwnReading, track: Track) -> list[int]:
    """Steps in which blades were tried on the lobe written of, or on one with the same gap."""
    then = next(room for i, _, room in found.notes if i == reading.index)
    gaps = true_readings(view(then, reading.note.side).bench).max_gap_mm
    alike = {i + 1 for i, gap in enumerate(gaps) if abs(gap - gaps[reading.note.lobe - 1]) < 1e-3}
    return [t.index for t in track.tried if t.lobe in alike]


def _lead_shown(reading: OwnReading, track: Track) -> bool:
    upto = reading.index
    metered = {(on, said) for i, on, said in track.meter if i < upto}
    match reading.note.text:
        case "broken":
            return (False, "no ground") in metered
        case "sound":
            return {(False, "ground"), (True, "no ground")} <= metered
        case "shorted":
            return any(i < upto and shown == "dark" for i, _, shown in track.steady)
        case _:
            return any(o.index < upto for o in track.openings)
