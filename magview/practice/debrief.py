"""After the hand-in: the truth, one's own readings against it, the time line, the replay, and a shorter way."""

from __future__ import annotations

import math
from bisect import bisect_right

from magview import __version__
from magview.bench.state import Side
from magview.practice.advice import efficient_path
from magview.practice.attempt import Attempt
from magview.practice.evidence import Evidence, evidence
from magview.practice.marking import Marking, after_run, mark_evidence
from magview.practice.readings import OwnReading, lead_truth, own_readings
from magview.practice.state import Practice, true_firing_deg, true_readings, view
from magview.practice.words import act_words, side_words
from magview.spec.base import SpecError
from magview.spec.frozen import frozen
from magview.spec.units import format_length


@frozen
class Truth:
    """One true value: as found, as left, and what was wanted, as text."""

    what: str
    as_found: str
    as_left: str
    wanted: str


@frozen
class Line:
    """One line of the time line."""

    at_s: float
    index: int
    """The state after it: `Replay.states[index]`."""
    words: str
    danger: str = ""


@frozen
class Replay:
    """The attempt again, to scrub through."""

    times_s: tuple[float, ...]
    """When each state began; the first, as found, at 0."""
    states: tuple[Practice, ...]

    def index_at(self, at_s: float) -> int:
        """The state at a time [s]."""
        return max(bisect_right(self.times_s, at_s) - 1, 0)

    def at(self, at_s: float) -> Practice:
        """The practice room as it stood at a time [s]."""
        return self.states[self.index_at(at_s)]


@frozen
class Debrief:
    """Everything that is said after the hand-in."""

    marking: Marking
    truths: tuple[Truth, ...]
    readings: tuple[OwnReading, ...]
    timeline: tuple[Line, ...]
    replay: Replay
    path: tuple[str, ...]
    """What an efficient path would have been, step by step."""
    seconds: float
    """From the first act to the hand-in."""
    other_version: str
    """Said where another version of the program was used for the attempt: its replay may differ; else nothing."""


def debrief(attempt: Attempt) -> Debrief:
    """The debrief of an attempt that has been handed in. Raises SpecError for one that has not: until then the truth
    is not to be had."""
    if not attempt.handed_in:
        raise SpecError("the attempt has not been handed in: until then nothing true is shown")
    states = attempt.states()
    found = evidence(attempt, states)
    marking = mark_evidence(found)
    dangers: dict[int, list[str]] = {}
    for danger in marking.dangers:
        dangers.setdefault(danger.index, []).append(danger.text)
    times = tuple(step.at_s for step in found.steps)
    return Debrief(
        marking=marking,
        truths=tuple(truths(found.first, after_run(found.last))),
        readings=tuple(own_readings(found)),
        timeline=tuple(_lines(found, dangers)),
        replay=Replay((0.0, *times), tuple(states)),
        path=tuple(efficient_path(found.first)),
        seconds=times[-1] - times[0],
        other_version=_other(attempt.version),
    )


def _other(version: str) -> str:
    if version == __version__:
        return ""
    return f"Done with version {version}, shown with {__version__}: what followed from an act may differ."


def _lines(found: Evidence, dangers: dict[int, list[str]]) -> list[Line]:
    return [
        Line(
            step.at_s,
            step.index,
            act_words(step.act, step.before, step.after),
            "; ".join(dangers.get(step.index, ())),
        )
        for step in found.steps
    ]


def truths(first: Practice, left: Practice) -> list[Truth]:
    """The true values of a room as found, and as left."""
    told: list[Truth] = []
    for side in first.sides:
        told += _of_magneto(view(first, side), view(left, side), side)
    if first.bench.engaged is not None:
        zero = (f"{first.disc_error_deg:+.2f}°", f"{left.disc_error_deg:+.2f}°")
        told.append(Truth("Disc at top dead centre of No. 1", *zero, "0°"))
    return told


def _of_magneto(first: Practice, left: Practice, side: Side) -> list[Truth]:
    name, magneto = side_words(first, side), first.bench.magneto
    was, now = true_readings(first.bench), true_readings(left.bench)
    low, high = magneto.gap_limits_mm
    tolerance = magneto.marks.tolerance_mm
    found = [
        Truth(
            f"Opening from the mark, {name}",
            _offset(float(was.mark_offset_mm)),
            _offset(float(now.mark_offset_mm)),
            f"within {tolerance:.2f} mm",
        ),
        Truth(
            f"Largest gap, {name}",
            _lobes(was.max_gap_mm.tolist()),
            _lobes(now.max_gap_mm.tolist()),
            f"{format_length(low, False)} to {format_length(high, False)}",
        ),
        Truth(
            f"Pip on the contacts, {name}",
            format_length(magneto.condition.pip_height_mm, False),
            format_length(left.bench.magneto.condition.pip_height_mm, False),
            "none",
        ),
        Truth(
            f"Lock screw carries the contact screw along, {name}",
            f"{magneto.condition.screw_creep_deg:+.1f}°",
            f"{left.bench.magneto.condition.screw_creep_deg:+.1f}°",
            "to be allowed for",
        ),
        Truth(f"Switch lead, {name}", lead_truth(first), lead_truth(left), "sound"),
    ]
    engaged = first.bench.engaged
    if engaged is not None:
        wanted, allowed = engaged.mounting.wanted_btdc_deg, engaged.installation.engine.timing_tolerance_deg
        found.append(
            Truth(
                f"Fires before top dead centre, {name}",
                _firing(first),
                _firing(left),
                f"{wanted:g}° within {allowed:g}°",
            )
        )
        play = magneto.condition.coupling_backlash_deg
        found.append(Truth(f"Play in the coupling, {name}", f"{play:.2f}°", f"{play:.2f}°", "taken up with rotation"))
    return found


def _offset(mm: float) -> str:
    if not math.isfinite(mm):
        return "never opens"
    return f"{abs(mm):.2f} mm {'past' if mm >= 0 else 'short'}"


def _lobes(gaps: list[float]) -> str:
    if max(gaps) - min(gaps) < 5e-4:
        return format_length(gaps[0], False)
    return ", ".join(f"{g:.3f}" for g in gaps) + " mm"


def _firing(room: Practice) -> str:
    if not room.mounted:
        return "off the engine"
    fires = true_firing_deg(room.bench)
    if not math.isfinite(fires):
        return "never"
    engaged = room.bench.engaged
    wrong = engaged is not None and abs(fires - engaged.mounting.wanted_btdc_deg) > 180.0
    return f"{fires:.2f}°" + (" (the wrong stroke)" if wrong else "")
