"""A trainee's own readings against the truth of the moment they were written down."""

from __future__ import annotations

import math
from dataclasses import dataclass

from magview.bench.engine_words import disc_words
from magview.bench.state import Side
from magview.practice.evidence import Evidence, Track
from magview.practice.exercise_parts import Goal
from magview.practice.lead_proof import lead_faults, still_possible
from magview.practice.state import Note, Practice, true_firing_deg, true_readings, view
from magview.practice.words import FINDINGS, side_words
from magview.spec.language import marked, number, tr

UNITS = {"opening": "mm", "gap": "mm", "firing": "°", "disc-zero": "°"}


@dataclass(frozen=True)
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
        case "note" | "running-in":
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
    if note.kind == "disc-zero":
        return value, disc_words(0.0 - value, 3)
    return (value, f"{number(value, 3)} {UNITS[note.kind]}") if math.isfinite(value) else (None, tr("never opens"))


def lead_truth(room: Practice) -> str:
    """True condition of the switch lead of the magneto in view."""
    return next(iter(lead_faults(room)), "sound")


def judge_reading(found: Evidence, goal: Goal, side: Side) -> tuple[str, bool, bool, bool, str]:
    """Thing, right, near, proved and reason, for the last reading of a kind written of one magneto."""
    kind = goal.reading
    what = tr(_NAMES[str(kind)], magneto=side_words(found.last, side))
    written = [r for r in own_readings(found) if r.note.kind == kind and (r.note.side == side or kind == "disc-zero")]
    if not written:
        return what, False, False, False, tr("It was not written down.")
    last = written[-1]
    proved, how = _proved(found, last, found.tracks[side])
    if kind == "lead":
        right = last.note.text == last.true_text
        return (
            what,
            right,
            False,
            proved,
            tr(
                "Written: {text}; true: {truth}; {how}.",
                text=tr(FINDINGS[last.note.text]),
                truth=tr(FINDINGS[last.true_text]),
                how=how,
            ),
        )
    if last.error is None or goal.within is None or last.note.value is None:
        return what, False, False, proved, tr("There was nothing to read: the contacts never open; {how}.", how=how)
    unit, off = UNITS[str(kind)], abs(last.error)
    written_words = disc_words(0.0 - last.note.value) if kind == "disc-zero" else f"{number(last.note.value)} {unit}"
    told = tr(
        "Written: {value}; true: {truth}; {within} {unit} are allowed; {how}.",
        value=written_words,
        unit=unit,
        truth=last.true_text,
        within=goal.within,
        how=how,
    )
    return what, off <= goal.within + 1e-9, off <= 2 * goal.within, proved, told


_NAMES = {
    "opening": marked("Where the contacts open, as read, {magneto}"),
    "gap": marked("Largest gap, as read, {magneto}"),
    "firing": marked("Firing, as read, {magneto}"),
    "disc-zero": marked("The disc's zero, as read"),
    "lead": marked("What the switch lead suffers from, {magneto}"),
}


_PROOFS = {
    "opening": (
        marked("read with lamp and straightedge, looked at square before it was written"),
        marked("not read with lamp and straightedge, looked at square before it was written"),
    ),
    "gap": (
        marked("read with blades before it was written"),
        marked("not read with blades before it was written"),
    ),
    "firing": (
        marked("read with lamp, and a disc whose zero was found before it was written"),
        marked("not read with lamp, and a disc whose zero was found before it was written"),
    ),
    "disc-zero": (
        marked("read with the stop from both sides before it was written"),
        marked("not read with the stop from both sides before it was written"),
    ),
    "lead": (
        marked("read with meter and lamp before it was written"),
        marked("not read with meter and lamp before it was written"),
    ),
    "note": (
        marked("read with nothing before it was written"),
        marked("not read with nothing before it was written"),
    ),
}
"""By kind of reading: read so, and not."""


def _proved(found: Evidence, reading: OwnReading, track: Track) -> tuple[bool, str]:
    """Whether an instrument had shown it before it was written and since anything changed."""
    upto = reading.index

    def fresh(indices: list[int], since: int) -> bool:
        return any(since < i < upto for i in indices)

    changed = max((i for i in track.changed if i < upto), default=0)
    match reading.note.kind:
        case "opening":
            looks = [o.index for o in track.openings if o.forward and o.square and o.edge is not None]
            done = fresh(looks, changed)
        case "gap":
            done = fresh(_tried_alike(found, reading, track), changed)
        case "firing":
            looks = [o.index for o in track.openings if o.forward and o.disc is not None and o.first_cylinder]
            zero = found.both_stops(before=upto) or found.first.exercise.start.disc_at_zero
            done = fresh(looks, changed) and zero
        case "disc-zero":
            since = max((i for i in found.disc_moved if i < upto), default=0)
            done = found.both_stops(since, upto)
        case "lead":
            done = _lead_shown(found, reading, track)
        case _:
            done = True
    return done, tr(_PROOFS[str(reading.note.kind)][0 if done else 1])


def _tried_alike(found: Evidence, reading: OwnReading, track: Track) -> list[int]:
    """Steps in which blades were tried on the lobe written of, or on one with the same gap."""
    then = next(room for i, _, room in found.notes if i == reading.index)
    gaps = true_readings(view(then, reading.note.side).bench).max_gap_mm
    alike = {i + 1 for i, gap in enumerate(gaps) if abs(gap - gaps[reading.note.lobe - 1]) < 1e-3}
    return [t.index for t in track.tried if t.lobe in alike]


def _lead_shown(found: Evidence, reading: OwnReading, track: Track) -> bool:
    """Whether the readings taken leave this finding and no other of those that the exercise may hide."""
    pool = {name for fault in found.first.exercise.faults for name in fault.among} | {"sound", reading.note.text}
    return still_possible(track, pool, reading.index) == {reading.note.text}
