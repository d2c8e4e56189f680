"""The faces of the contacts: how they look, what dressing and renewing do to them, and the right decision.

Dull grey and frosted is as it should be; small irregularities do no harm; a high mound or a deep pit ends a pair.
Contacts are in general not dressed, unless the maker's manual gives procedure and limits (FAA AC 43.13-1B, ch. 8
sect. 1, par. 8-19). Dressing takes metal off: the gap is wider and opens earlier. A new pair loses the setting, and
is looked at again after running in.
"""

from __future__ import annotations

from dataclasses import replace
from typing import Literal

from magview.bench.actions import TightenLock, TurnScrew
from magview.bench.apply import apply as apply_to_bench
from magview.practice.draws import between
from magview.practice.exercise import Exercise
from magview.practice.state import Faces, Practice, Said
from magview.spec.language import marked, tr

PIP_MM = 0.004
"""Least height of a pip."""

STONED_MM = (0.02, 0.04)
"""Metal that a careful hand with a stone takes off both faces together [mm]."""

Decision = Literal["leave", "dress", "renew"]

LOOKS: dict[Faces, str] = {
    "frosted": marked("dull grey and frosted all over"),
    "light": marked("light marks: small pits and humps, none of them deep or high"),
    "mound": marked("a mound that stands well above its face, and a pit in the other"),
    "pit": marked("a deep pit, and burnt round it"),
    "dressed": marked("bright and flat from the stone"),
    "new": marked("new and flat"),
}
"""The faces as they look."""

FACES_WORDS: dict[str, str] = {
    "frosted": marked("contacts dull grey and frosted, as they should be"),
    "light": marked("light marks on the contacts"),
    "mound": marked("a mound on the contacts"),
    "pit": marked("a deep pit in the contacts"),
}
"""The grades in the words of a key."""

_BEST: dict[str, Decision] = {"frosted": "leave", "light": "leave", "mound": "renew", "pit": "renew"}


def faces_found(drawn: str, pip_mm: float) -> Faces:
    """Return the look of the faces as found: as drawn, else by the pip alone."""
    for grade in ("frosted", "light", "mound", "pit"):
        if drawn == grade:
            return grade
    return "mound" if pip_mm > PIP_MM else "frosted"


def look(practice: Practice) -> Said:
    """The faces of the contacts, by eye."""
    if practice.exercise.rules >= 2:
        return Said("contacts", LOOKS[practice.seat.faces])
    worn = practice.bench.magneto.condition.pip_height_mm > PIP_MM
    return Said(
        "contacts", marked("a pip stands on one contact, a pit in the other") if worn else marked("clean and flat")
    )


def dress(practice: Practice) -> Practice:
    """Stone the faces flat. Metal comes off; a deep pit is deeper than any stone may go, and stays."""
    condition = practice.bench.magneto.condition
    changes = {"pip_height_mm": 0.0}
    faces: Faces = "pit" if practice.seat.faces == "pit" else "dressed"
    if practice.exercise.rules >= 2:
        taken = between(practice.seed, *STONED_MM, "hand", str(practice.acts), "stone")
        changes["face_burn_mm"] = condition.face_burn_mm + taken
    return _with(practice, changes, faces)


def renew(practice: Practice) -> Practice:
    """Fit a new pair, its arm with it: the contact screw stands where it came to, its lock slack."""
    low, high = practice.bench.magneto.contact_screw.range_deg
    new = _with(practice, {"pip_height_mm": 0.0, "face_burn_mm": 0.0, "heel_wear_mm": 0.0}, "new")
    bench = apply_to_bench(new.bench, TightenLock(False))
    room = (high - low) / 4  # well inside its travel, and far from where it was
    to = between(practice.seed, low + room, high - room, "hand", str(practice.acts), "fitted")
    return replace(new, bench=apply_to_bench(bench, TurnScrew(to)))


def _with(practice: Practice, changes: dict[str, float], faces: Faces) -> Practice:
    bench = practice.bench
    condition = bench.magneto.condition.model_copy(update=changes)
    magneto = bench.magneto.model_copy(update={"condition": condition})
    return replace(practice, bench=replace(bench, magneto=magneto), seat=replace(practice.seat, faces=faces))


# ---------------------------------------------------------------------- the right decision


def allowed(exercise: Exercise, grade: Faces) -> frozenset[Decision]:
    """The right decisions for a grade as found, by this exercise's manual.

    Faces that do no harm are left; a pit is renewed; a mound is renewed, or dressed where the manual gives procedure
    and limits. Light marks may be dressed where it does.
    """
    right = {_BEST[grade]}
    if grade in exercise.dressing_allowed:
        right.add("dress")
    return frozenset(right)


def best(exercise: Exercise, grade: Faces) -> Decision:
    """Decision of a careful hand for a grade as found: nothing that need not be done."""
    return "dress" if grade == "mound" and "mound" in exercise.dressing_allowed else _BEST[grade]


_MANUAL = {
    (): marked("the manual gives no procedure to dress them: leave them, or renew them"),
    ("light",): marked("the manual lets light marks be dressed, no mound and no pit"),
    ("mound",): marked("the manual gives procedure and limits to dress a mound; a deep pit is renewed"),
    ("light", "mound"): marked(
        "the manual gives procedure and limits to dress light marks and a mound; a deep pit is renewed"
    ),
}


def manual_words(exercise: Exercise) -> str:
    """The data sheet's sentence on dressing."""
    return tr(_MANUAL[tuple(sorted(exercise.dressing_allowed))])


RIGHTLY: dict[tuple[str, Decision], str] = {
    ("frosted", "leave"): marked("dull grey and frosted is as it should be"),
    ("light", "leave"): marked("small irregularities do no harm"),
    ("light", "dress"): marked("the manual lets light marks be dressed"),
    ("mound", "dress"): marked("the manual gives procedure and limits for a mound"),
    ("mound", "renew"): marked("a mound that stands high ends a pair"),
    ("pit", "renew"): marked("a deep pit ends a pair"),
}
"""Reason why a decision is right."""

WRONGLY: dict[tuple[str, Decision], str] = {
    ("frosted", "dress"): marked("frosted faces are as they should be: the stone took good metal off"),
    ("frosted", "renew"): marked("frosted faces are as they should be: a good pair was thrown away"),
    ("light", "dress"): marked("small irregularities do no harm, and the manual gives no procedure to dress them"),
    ("light", "renew"): marked("small irregularities do no harm: a good pair was thrown away"),
    ("mound", "leave"): marked("a mound that stands high was left: blades ride on it, and it burns on"),
    ("mound", "dress"): marked("the manual gives no procedure to dress a mound: the pair is renewed"),
    ("pit", "leave"): marked("a deep pit was left: the pair is renewed"),
    ("pit", "dress"): marked("no stone takes a deep pit out: the pair is renewed"),
}
"""Reason why it is wrong."""
