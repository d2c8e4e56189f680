"""An exercise that is being written: what a seed draws, what the pupil reads, and what may have been forgotten."""

from __future__ import annotations

from html import escape

from magview.classroom.key import faults_of, side_word
from magview.classroom.results import SHOWN_BY
from magview.practice.debrief import truths
from magview.practice.exercise import Exercise
from magview.practice.exercise_parts import FAULTS, GOALS
from magview.practice.faults import begin
from magview.practice.paper import goal_words, paper_lines
from magview.practice.story import story
from magview.spec.language import tr

_NEEDED = {
    "opening": ("lamp", "straightedge"),
    "e-gap": ("straightedge",),
    "gap": ("blades",),
    "disc-zero": ("stop", "disc_step_deg"),
    "timing": ("lamp", "disc_step_deg"),
    "synchronised": ("lamp", "disc_step_deg"),
    "lead": ("meter", "lamp"),
    "firing": ("lamp", "disc_step_deg"),
}
"""Instruments that prove each goal or reading, by the tray's fields."""


def preview_html(exercise: Exercise, seed: int) -> str:
    """HTML of what is hidden for a seed and what the pupil is told. Raises SpecError for faults that the magneto
    cannot have."""
    room = begin(exercise, seed)
    hidden = []
    for fault in faults_of(exercise, seed):
        side = side_word(fault.side, exercise)
        hidden.append(f"{side}: {fault.words}" if side else fault.words)
    guide = tr("About {minutes} minutes; {percent} % are needed.",
               minutes=f"{exercise.minutes:g}", percent=f"{exercise.pass_percent:g}")  # fmt: skip
    parts = [
        _head(tr("Hidden, for this seed")),
        _list(hidden or [tr("no fault")]),
        _head(tr("As found")),
        _table([(t.what, t.as_found) for t in truths(room, room)]),
        _head(tr("What the pupil reads")),
        f"<p><b>{escape(tr(exercise.name))}</b></p>",
        _text(story(exercise, seed)),
        f"<b>{_text(tr(exercise.task))}</b>",
        _list(goal_words(exercise)),
        _text(guide),
        _table(paper_lines(exercise)),
    ]  # fmt: skip
    if exercise.hints:
        parts += [_head(tr("Hints, one at a time")), _list([tr(hint) for hint in exercise.hints])]
    return "".join(parts)


def advice(exercise: Exercise) -> list[str]:
    """Gaps of a valid exercise: a goal nothing on the tray can prove, a fault no goal asks for."""
    told = []
    for goal in exercise.goals:
        wanted = goal.reading or goal.goal
        if not all(getattr(exercise.tray, name) for name in _NEEDED.get(wanted, ())):
            words = tr(GOALS.get(wanted, wanted))
            told.append(tr("Nothing on the tray can prove “{goal}”.", goal=words))
    asked = {g.reading or g.goal for g in exercise.goals}
    for fault in exercise.faults:
        if not asked & set(SHOWN_BY[fault.kind]):
            told.append(tr("No goal asks for “{fault}”.", fault=tr(FAULTS[fault.kind])))
    return list(dict.fromkeys(told))


def _head(words: str) -> str:
    return f"<h4>{escape(words)}</h4>"


def _text(words: str) -> str:
    return "".join(f"<p>{escape(line)}</p>" for line in words.splitlines() if line.strip())


def _list(lines: list[str]) -> str:
    return f"<ul>{''.join(f'<li>{escape(line)}</li>' for line in lines)}</ul>"


def _table(rows: list[tuple[str, str]]) -> str:
    cells = (f"<tr><td>{escape(a)}\u00a0\u00a0</td><td>{escape(b)}</td></tr>" for a, b in rows)
    return f"<table>{''.join(cells)}</table>"
