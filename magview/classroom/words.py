"""Steps, faults, dangers and errors in words, in the present language."""

from __future__ import annotations

from magview.classroom.results import Error, FaultFound, Result, State, StepResult
from magview.practice.exercise_parts import FAULTS, GOALS, READINGS
from magview.spec.language import marked, tr

DANGERS = {
    "unmarked": marked("took the magneto off unmarked"),
    "chocks": marked("turned the propeller with no chocks at the wheels"),
    "live": marked("turned the propeller with a live magneto and the plugs in"),
    "unproved": marked("turned the propeller without proving that each magneto is grounded"),
    "pulled": marked("made a magneto live by pulling its lead"),
    "list": marked("turned the propeller before everything was made safe"),
    "pressed": marked("pressed the rotor of a live magneto round with the plugs in"),
    "idle": marked("turned the propeller with a live magneto that was not being read"),
    "jumper": marked("handed in with the jumper on"),
    "slack": marked("handed in with screws or nuts slack"),
    "switch": marked("handed in with the switch on"),
}
ERRORS: dict[Error, str] = {
    Error.WRONG: marked("{step}: wrong"),
    Error.NEAR: marked("{step}: nearly right"),
    Error.UNPROVED: marked("{step}: right, not proved by instruments"),
}


def sided(words: str, side: str | None) -> str:
    """With the magneto named where there are two."""
    if side is None:
        return words
    return tr("{what} (left)", what=words) if side == "left" else tr("{what} (right)", what=words)


def step_words(step: StepResult) -> str:
    """Name of a step of the rubric."""
    return sided(tr(READINGS[step.reading]) if step.reading is not None else tr(GOALS[step.goal]), step.side)


def fault_words(fault: FaultFound) -> str:
    """Name of a fault."""
    return sided(tr(FAULTS[fault.kind]), fault.side)


def danger_words(kind: str) -> str:
    """Name of a dangerous act."""
    return tr(DANGERS.get(kind.split("-")[0], "{kind}"), kind=kind)


def state_words(result: Result) -> str:
    """Passed or not, or why a file does not count."""
    match result.state:
        case State.MARKED:
            return tr("passed") if result.passed else tr("not passed")
        case State.EARLIER:
            return tr("earlier version, not marked again")
        case State.NEWER:
            return tr("newer version")
        case State.UNFINISHED:
            return tr("not handed in")
        case State.DAMAGED:
            return tr("damaged")
