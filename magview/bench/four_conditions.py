"""The four things that agree when No. 1 fires, as a page shows them: judged, unknown, or not at that instant yet.

Unknown is never right: a piston without a reading of the lamp that stands, and a finger without an engine.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from enum import Enum

from magview.bench.conditions import (
    CONDITION_WORDS,
    Condition,
    Verdict,
    conditions_at_opening,
    conditions_now,
    verdict_words,
)
from magview.bench.lamp import SHOWN_DEG, Standing, standing
from magview.bench.lamp_words import NOT_READ, btdc_words, short_place_words, should_words
from magview.bench.state import BenchState, Side, firing_btdc_deg
from magview.spec.language import format_angle, marked, tr


class Judged(Enum):
    """The judgement on one of the four."""

    RIGHT = "right"
    WRONG = "wrong"
    UNKNOWN = "unknown"
    ELSEWHERE = "elsewhere"
    """Not so, and the rotor does not stand where contacts open: nothing is asked of it here."""


@dataclass(frozen=True)
class Told:
    """One of the four in words."""

    condition: Condition
    judged: Judged
    name: str
    figure: str
    """In a few words, with its number."""
    words: str
    """In whole words, with the limit, or the reason why it is not known."""


_NO_ENGINE = marked("no engine")
_UNKNOWN = {
    Standing.NOT_READ: NOT_READ,
    Standing.NEVER_OPENS: marked("With this setting the contacts never open and close: there is no timing to read."),
    Standing.CONTRADICTED: marked("The lamp's reading contradicts the acts before it: look, and read it again."),
}
"""Reasons why nobody knows where the piston stands when the contacts open."""

_OFF = marked("not on the engine")
_OFF_WORDS = marked("The magneto is off the engine: crank and rotor turn each for itself.")

_GAP_WORDS = {True: marked("opened {angle:deg} ago"), False: marked("open in {angle:deg}")}
_E_GAP_WORDS = {True: marked("{angle:deg} late"), False: marked("{angle:deg} early")}
"""For a narrow box; the whole words are in its tip."""


_EVERY_LOBE = (Condition.MAGNET, Condition.CONTACTS)
"""Judged wherever contacts open."""


def four_now(state: BenchState) -> tuple[Told, ...]:
    """The four with crank and rotor as they stand; without an engine piston and finger are not known."""
    found = {one.condition: one for one in conditions_now(state)}
    contacts = found[Condition.CONTACTS]
    side = state.engaged.side if state.engaged is not None else None
    # Contacts that open on another lobe fire another cylinder: nothing is asked of No. 1's piston and finger there.
    judging = {c: contacts.met and (contacts.number == 1 or c in _EVERY_LOBE) for c in Condition}
    return tuple(_told(state, side, c, found.get(c), judging[c]) for c in Condition)


def four_at_opening(state: BenchState, side: Side) -> tuple[Told, ...]:
    """The four at the instant at which a magneto's contacts open for No. 1. Raises SpecError without an engine."""
    found = conditions_at_opening(state, side)
    by_kind = {} if found is None else {one.condition: one for one in found}
    return tuple(
        _told(state, side, condition, by_kind.get(condition), True, at_opening=True) for condition in Condition
    )


def _told(
    state: BenchState, side: Side | None, condition: Condition, verdict: Verdict | None, judging: bool,
    *, at_opening: bool = False,
) -> Told:  # fmt: skip
    name = tr("Piston No. 1") if condition is Condition.PISTON else tr(CONDITION_WORDS[condition])
    if state.engaged is None and condition in (Condition.PISTON, Condition.FINGER):
        return Told(condition, Judged.UNKNOWN, name, tr(_NO_ENGINE), tr("This magneto is not on an engine."))
    if verdict is None:
        never = tr("they never open") if condition is Condition.CONTACTS else "–"
        judged = Judged.WRONG if condition is Condition.CONTACTS else Judged.UNKNOWN
        return Told(condition, judged, name, never, tr(_UNKNOWN[Standing.NEVER_OPENS]))
    figure, words = _figure(verdict), _with_tolerance(verdict)
    if condition is Condition.PISTON and not at_opening and state.engaged is not None and not state.engaged.mounted:
        return Told(condition, Judged.UNKNOWN, name, tr(_OFF), tr(_OFF_WORDS))
    if condition is Condition.PISTON and side is not None:
        now = standing(state, side)
        if now in (Standing.OUT_OF_DATE, Standing.TEETH_MOVED):
            expected = firing_btdc_deg(state, side)
            if at_opening:  # the old figure is no figure any more; the expected one is to be read
                name, figure = tr("Piston No. 1, out of date"), tr("expect {angle}", angle=btdc_words(expected))
            return Told(condition, Judged.UNKNOWN, name, figure, should_words(expected))
        if now is not Standing.STANDS:
            return Told(condition, Judged.UNKNOWN, name, figure, f"{words}. {tr(_UNKNOWN[now])}")
    if verdict.met:
        return Told(condition, Judged.RIGHT, name, figure, words)
    return Told(condition, Judged.WRONG if judging else Judged.ELSEWHERE, name, figure, words)


def _with_tolerance(verdict: Verdict) -> str:
    """A condition in whole words, with its tolerance where those do not say it."""
    words, allowed = verdict_words(verdict), verdict.allowed
    match verdict.condition:
        case Condition.CONTACTS:
            return tr("{words}; ±{allowed:deg} of rotor counts as opening", words=words, allowed=allowed)
        case Condition.FINGER:
            return tr("{words}; ±{allowed:deg} of the finger counts as at No. 1", words=words, allowed=allowed)
        case Condition.MAGNET if abs(verdict.value) < SHOWN_DEG:
            return tr("{words}, ±{allowed:deg} of rotor allowed", words=words, allowed=allowed)
    return words


def _figure(verdict: Verdict) -> str:
    value, angle = verdict.value, abs(verdict.value)
    match verdict.condition:
        case Condition.PISTON:
            return short_place_words(value)
        case Condition.MAGNET:
            return tr("at the E-gap") if angle < SHOWN_DEG else tr(_E_GAP_WORDS[value > 0], angle=angle)
        case Condition.CONTACTS:
            if math.isnan(value):
                return tr("they never open")
            if verdict.met:
                return tr("just opening, lobe {lobe}", lobe=verdict.number)
            return tr(_GAP_WORDS[value > 0], angle=angle)
    where = tr("at No. {cylinder}", cylinder=verdict.number)
    return where if angle < SHOWN_DEG or not verdict.met else f"{where}, {format_angle(value, True)}"
