"""After the hand-in: the truth, one's own readings against it, the time line, the replay, and a shorter way."""

from __future__ import annotations

import math
from bisect import bisect_right
from collections.abc import Sequence
from dataclasses import dataclass

from magview import __version__
from magview.bench.engine_words import disc_words
from magview.bench.state import Side
from magview.curves.setting_path import SettingPath
from magview.physics.cam.lobes import cylinders_of_lobe
from magview.practice.actions import HandIn
from magview.practice.attempt import RULES, Attempt
from magview.practice.evidence import Evidence, evidence
from magview.practice.exercise import Exercise
from magview.practice.folded import Folded, fold
from magview.practice.marking import Marking, after_run, mark_evidence, not_marked
from magview.practice.method import method
from magview.practice.next_time import next_time
from magview.practice.readings import OwnReading, lead_truth, own_readings
from magview.practice.state import Practice, true_firing_deg, true_readings, view
from magview.practice.told_goals import GoalTold, told_goals
from magview.practice.way import FiringSteps, way
from magview.practice.words import FINDINGS, act_words, side_words
from magview.spec.base import SpecError
from magview.spec.engine import Engine
from magview.spec.language import format_angle, format_length, marked, number, tr
from magview.spec.library import find_installation, shipped_names
from magview.spec.units import digits_beside, length_digits


@dataclass(frozen=True)
class Truth:
    """One true value: as found, as left, and what was wanted, as text."""

    what: str
    as_found: str
    as_left: str
    wanted: str


@dataclass(frozen=True)
class DebriefLine:
    """One line of the time line."""

    at_s: float
    index: int
    """The state after it: `Replay.states[index]`."""
    words: str
    danger: str = ""


@dataclass(frozen=True)
class Replay:
    """The attempt again, to scrub through."""

    times_s: tuple[float, ...]
    """Times at which each state began; the first, as found, at 0."""
    states: tuple[Practice, ...]

    def index_at(self, at_s: float) -> int:
        """The state at a time [s]."""
        return max(bisect_right(self.times_s, at_s) - 1, 0)

    def way(self, cards: Sequence[Folded], side: Side) -> SettingPath | FiringSteps | None:
        """The way of one magneto from as found to as left; None where no setting is asked for."""
        return way(cards, self.states[0], after_run(self.states[-1]), side)

    def at(self, at_s: float) -> Practice:
        """The practice room as it stood at a time [s]."""
        return self.states[self.index_at(at_s)]


@dataclass(frozen=True)
class Debrief:
    """Everything that is said after the hand-in."""

    marking: Marking
    truths: tuple[Truth, ...]
    readings: tuple[OwnReading, ...]
    timeline: tuple[DebriefLine, ...]
    replay: Replay
    path: tuple[str, ...]
    """The efficient path with the trainee's own readings, step by step."""
    cards: tuple[Folded, ...]
    """The time line folded by act."""
    goals: tuple[GoalTold, ...]
    """The rows of the marking with their gauges; empty where nothing is marked."""
    next_time: str
    nothing_done: bool
    """Whether it was handed in as found."""
    truth_known: bool
    """Whether the truth of this code had been shown before it was handed in."""
    seconds: float
    """From the first act to the hand-in."""
    other_version: str
    """Said where another version of the program was used for the attempt: its replay may differ; else nothing."""


def debrief(attempt: Attempt) -> Debrief:
    """The debrief of an attempt that has been handed in. Raises SpecError for one that has not: until then the truth
    is not to be had."""
    if not attempt.handed_in:
        raise SpecError(tr("the attempt has not been handed in: until then nothing true is shown"))
    states = attempt.states()
    found = evidence(attempt, states)
    marking = mark_evidence(found) if attempt.rules == RULES else not_marked(attempt.version)
    dangers: dict[int, list[str]] = {}
    for danger in marking.dangers:
        dangers.setdefault(danger.index, []).append(danger.text)
    times = tuple(step.at_s for step in found.steps)
    left = after_run(found.last)
    goals = told_goals(found, left, marking) if marking.rows else ()
    return Debrief(
        marking=marking,
        truths=tuple(truths(found.first, left)),
        readings=tuple(own_readings(found)),
        timeline=tuple(_lines(found, dangers)),
        replay=Replay((0.0, *times), tuple(states)),
        path=tuple(method(found)),
        cards=fold(found.steps, {index: "; ".join(told) for index, told in dangers.items()}),
        goals=goals,
        next_time=next_time(marking, goals) if goals else "",
        nothing_done=all(isinstance(step.act, HandIn) for step in found.steps),
        truth_known=attempt.truth_known,
        seconds=times[-1] - times[0],
        other_version=_other(attempt.version),
    )


def _other(version: str) -> str:
    if version == __version__:
        return ""
    return tr(
        "Done with version {version}, shown with {here}: what followed from an act may differ.",
        version=version,
        here=__version__,
    )


def _lines(found: Evidence, dangers: dict[int, list[str]]) -> list[DebriefLine]:
    return [
        DebriefLine(
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
        found, after = (disc_words(0.0 - room.disc_error_deg, 2) for room in (first, left))
        what = tr("Disc at top dead centre of No. {cylinder}", cylinder=first.timing_cylinder)
        told.append(Truth(what, found, after, "0°"))
    return told


_OF_ONE = {
    "opening": (marked("Opening from the mark"), marked("Opening from the mark, {name}")),
    "gap": (marked("Largest gap"), marked("Largest gap, {name}")),
    "pip": (marked("Pip on the contacts"), marked("Pip on the contacts, {name}")),
    "creep": (
        marked("Lock screw carries the contact screw along"),
        marked("Lock screw carries the contact screw along, {name}"),
    ),
    "lead": (marked("Switch lead"), marked("Switch lead, {name}")),
    "fires": (marked("Fires before top dead centre"), marked("Fires before top dead centre, {name}")),
    "play": (marked("Play in the coupling"), marked("Play in the coupling, {name}")),
}
"""Titles of a magneto's values, and titles with its side where there are two."""


def _what(room: Practice, side: Side, of: str) -> str:
    alone, named = _OF_ONE[of]
    return tr(alone) if room.other is None else tr(named, name=side_words(room, side))


def _creep(degrees: float) -> str:
    if round(degrees, 1) == 0.0:
        return tr("not at all")
    by = abs(degrees)
    return tr("{angle:.1deg} closer", angle=by) if degrees > 0 else tr("{angle:.1deg} wider", angle=by)


def _of_magneto(first: Practice, left: Practice, side: Side) -> list[Truth]:
    magneto = first.bench.magneto
    was, now = true_readings(first.bench), true_readings(left.bench)
    low, high = magneto.gap_limits_mm
    tolerance = magneto.marks.tolerance_mm
    gaps = was.max_gap_mm.tolist(), now.max_gap_mm.tolist()
    digits = max(length_digits(g, low, high, False) for lobes in gaps for g in lobes)
    offsets = float(was.mark_offset_mm), float(now.mark_offset_mm)
    places = max(digits_beside(abs(mm), None, tolerance, 2) for mm in offsets)
    creeps = magneto.condition.screw_creep_deg, left.bench.magneto.condition.screw_creep_deg
    found = [
        Truth(
            _what(first, side, "opening"),
            _offset(offsets[0], places),
            _offset(offsets[1], places),
            tr("within {tolerance:.{places}mm}", tolerance=tolerance, places=places),
        ),
        Truth(
            _what(first, side, "gap"),
            _lobes(gaps[0], digits),
            _lobes(gaps[1], digits),
            tr("{low:.{digits}mm} to {high:.{digits}mm}", low=low, high=high, digits=digits),
        ),
        *_low_lobes(first, side),
        Truth(
            _what(first, side, "pip"),
            format_length(magneto.condition.pip_height_mm, False),
            format_length(left.bench.magneto.condition.pip_height_mm, False),
            tr("none"),
        ),
        Truth(
            _what(first, side, "creep"),
            _creep(creeps[0]),
            _creep(creeps[1]),
            tr("to be allowed for") if any(round(creep, 1) for creep in creeps) else "–",
        ),
        Truth(
            _what(first, side, "lead"),
            tr(FINDINGS[lead_truth(first)]),
            tr(FINDINGS[lead_truth(left)]),
            tr("sound"),
        ),
    ]
    engaged = first.bench.engaged
    if engaged is not None:
        wanted, allowed = engaged.mounting.wanted_btdc_deg, engaged.installation.engine.timing_tolerance_deg
        found.append(
            Truth(
                _what(first, side, "fires"),
                _firing(first),
                _firing(left),
                tr("{wanted}° within {allowed}°", wanted=wanted, allowed=allowed),
            )
        )
        play = magneto.condition.coupling_backlash_deg
        found.append(
            Truth(
                _what(first, side, "play"),
                format_angle(play),
                format_angle(play),
                tr("taken up with rotation"),
            )
        )
    return found


def _low_lobes(room: Practice, side: Side) -> list[Truth]:
    """Name the cylinders that each low lobe fires; nothing where no engine is known."""
    cam, engine = room.bench.magneto.cam, _engine_of(room.exercise)
    if engine is None:
        return []
    told = []
    for lobe, error in enumerate(room.bench.magneto.condition.lobe_lift_error_mm, start=1):
        if error < 0.0:
            fires = _cylinders(
                cylinders_of_lobe(len(cam.lobe_peaks_deg), engine.firing_order, lobe), engine.cylinders
            )
            alone, named = tr("Low lobe {lobe} fires"), tr("Low lobe {lobe} fires, {name}")
            what = (alone if room.other is None else named).format(lobe=lobe, name=side_words(room, side))
            told.append(Truth(what, fires, fires, "–"))
    return told


def _engine_of(exercise: Exercise) -> Engine | None:
    """The exercise's engine; for a magneto by itself, that of a shipped installation with such a cam and magnet."""
    if exercise.installation is not None:
        return exercise.installation.engine
    unit = exercise.unit
    shipped = (find_installation(name) for name in shipped_names("installations"))
    same = (one for one in shipped if (one.magneto.cam, one.magneto.poles) == (unit.cam, unit.poles))
    found = next(same, None)
    return None if found is None else found.engine


def _cylinders(fired: tuple[int, ...], of: int) -> str:
    if len(fired) == of > 1:
        return tr("every cylinder in turn")
    if len(fired) == 1:
        return tr("cylinder {number} alone", number=fired[0])
    return tr("cylinders {numbers}, in turn", numbers=", ".join(map(str, fired)))


def _offset(mm: float, digits: int) -> str:
    if not math.isfinite(mm):
        return tr("never opens")
    side = marked("{offset:.{digits}mm} past") if mm >= 0 else marked("{offset:.{digits}mm} short")
    return tr(side, offset=abs(mm), digits=digits)


def _lobes(gaps: list[float], digits: int) -> str:
    if max(gaps) - min(gaps) < 0.5 * 10.0**-digits:
        return format_length(gaps[0], False, digits)
    return f"{', '.join(number(g, digits) for g in gaps)} mm"


def _firing(room: Practice) -> str:
    if not room.mounted:
        return tr("off the engine")
    fires = true_firing_deg(room.bench)
    if not math.isfinite(fires):
        return tr("never")
    engaged = room.bench.engaged
    assert engaged is not None
    wanted, allowed = engaged.mounting.wanted_btdc_deg, engaged.installation.engine.timing_tolerance_deg
    text = format_angle(fires, digits=digits_beside(fires, wanted - allowed, wanted + allowed, 2))
    return tr("{fires} (the wrong stroke)", fires=text) if abs(fires - wanted) > 180.0 else text
