"""Advice for the next attempt: one line, and the lesson that teaches what lost most marks."""

from __future__ import annotations

from collections.abc import Sequence

from magview.practice import shelf
from magview.practice.marking import Marking, MarkingRow
from magview.practice.shelf import Heading
from magview.practice.told_goals import GoalTold
from magview.spec.language import marked, tr

ONE_LINE = 95
"""Letters that fit one line on a small screen."""

_WRONG = {
    "e-gap": marked("Turn with rotation until the straightedge is in line with the mark, and hold the rotor."),
    "opening": marked("Set the gap first, then turn the backplate until the contacts open at the mark."),
    "gap": marked("Turn the contact screw, tighten its lock screw, then try the blades again."),
    "contacts": marked("Look at the contacts and decide by the data sheet before you measure."),
    "disc-zero": marked("Meet the stop from both sides; set the disc to zero half-way between."),
    "timing": marked("Set inside first, then read the lamp with rotation and move the teeth."),
    "synchronised": marked("Time one magneto, then bring the other to the same reading."),
    "lead": marked("Renew the part that the readings name, then prove the lead again."),
    "marks": marked("Paint marks across the coupling before you take it apart."),
    "secured": marked("Go through the list of closing up before you hand in."),
    "reading": marked("Read the instrument twice, then write the reading down."),
}
_UNPROVED = {
    "e-gap": marked("Lay the straightedge on and look square over it."),
    "opening": marked("After the last screw is tight, watch the lamp and look square over the straightedge."),
    "gap": marked("After the last screw is tight, try blades on both limits at the largest gap."),
    "contacts": marked("Look at the contacts again after the work."),
    "disc-zero": marked("Meet the stop from both sides before you trust the disc."),
    "timing": marked("Read lamp and disc with rotation again after the last change."),
    "synchronised": marked("Read both magnetos again after the last change."),
    "lead": marked("Prove the lead again after the work."),
    "reading": marked("Take the reading with the instruments before you write it down."),
}
_LESSONS = {
    "danger": ("live-or-safe", "the-switch-lead"),
    "e-gap": ("neutral-and-e-gap",),
    "opening": ("plate-and-screw",),
    "gap": ("measuring-the-gap",),
    "contacts": ("contacts-and-lamp",),
    "disc-zero": ("top-dead-centre",),
    "timing": ("one-vernier-step",),
    "synchronised": ("several-teeth", "one-vernier-step"),
    "lead": ("live-or-safe", "the-switch-lead"),
    "marks": ("one-vernier-step",),
    "secured": ("lock-and-clamp-screws", "a-full-job"),
    "reading-gap": ("measuring-the-gap",),
    "reading-opening": ("contacts-and-lamp",),
    "reading-firing": ("one-vernier-step",),
    "reading-disc-zero": ("top-dead-centre",),
    "reading-lead": ("live-or-safe", "the-switch-lead"),
}
"""Lessons by the goal that lost most; the first of them that ships is the one."""


def worst(marking: Marking) -> MarkingRow | None:
    """The row that lost most marks; None where none was lost."""
    lost = [row for row in marking.rows if not row.full]
    return max(lost, key=lambda row: row.weight - row.got, default=None)


def next_time(marking: Marking, goals: Sequence[GoalTold]) -> str:
    """One line: the danger first, else the two goals that lost most."""
    if marking.dangers:
        return tr("Before all else: not again “{danger}”.", danger=marking.dangers[0].text)
    lost = sorted((goal for goal in goals if not goal.full), key=lambda goal: goal.got - goal.of)
    told = [words for words in (_advice(goal) for goal in lost) if words]
    if not told:
        return tr("The same order again, in less time.")
    both = " ".join(dict.fromkeys(told[:2]))
    return both if len(both) <= ONE_LINE else told[0]


def _advice(goal: GoalTold) -> str:
    judged, kind = goal.row.judged, goal.row.goal
    assert judged is not None and kind is not None
    table = _UNPROVED if judged.right and not judged.proved else _WRONG
    return tr(table[kind.goal]) if kind.goal in table else ""


def lesson_for(marking: Marking) -> Heading | None:
    """The lesson for what lost most marks; None where nothing was lost or no lesson ships for it."""
    row = worst(marking)
    if marking.dangers:
        key = "danger"
    elif row is None or row.goal is None:
        return None
    else:
        key = row.goal.goal if row.goal.reading is None else f"{row.goal.goal}-{row.goal.reading}"
    shipped = {lesson.id: lesson for lesson in shelf.lessons()}
    return next((shipped[name] for name in _LESSONS.get(key, ()) if name in shipped), None)
