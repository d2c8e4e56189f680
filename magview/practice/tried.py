"""Blades that were tried: at the place where the rotor stands, and at places before; and what follows from it."""

from __future__ import annotations

from dataclasses import dataclass, replace

from magview.bench.actions import ViewSide
from magview.bench.blades import thickness_mm
from magview.practice import actions as do
from magview.practice.attempt import Session
from magview.practice.state import Feel, Practice
from magview.spec.language import marked, number, tr

UNITS = {"inch": "thou", "metric": "mm"}
"""Units that the blades of a set are marked in."""

_MOST_ROWS = 20


@dataclass(frozen=True)
class Try:
    """One try, and how it felt."""

    blades: tuple[float, ...]
    kind: str
    feel: str

    @property
    def goes(self) -> bool:
        """Whether it went between the contacts."""
        return self.feel != Feel.NO_GO

    @property
    def words(self) -> str:
        """The blades as they are marked."""
        return " + ".join(number(blade) for blade in self.blades)


@dataclass(frozen=True)
class Tried:
    """Tries since anything last moved, and the rows before them, each with the magneto it was of."""

    now: tuple[Try, ...] = ()
    before: tuple[tuple[Try, ...], ...] = ()

    def after(self, act: do.Act, room: Practice) -> Tried:
        """With one more act looked at, and the room after it."""
        if isinstance(act, do.TryBlades) and room.said is not None:
            tried = Try(act.blades, act.set, room.said.words)
            others = tuple(t for t in self.now if (t.blades, t.kind) != (tried.blades, tried.kind))
            return replace(self, now=(*others, tried))
        moves = do.Turning | do.Setting | do.DressContacts | do.RenewContacts | do.Remove | do.Refit | ViewSide
        if self.now and isinstance(act, moves):
            return Tried((), (*self.before, self.now)[-_MOST_ROWS:])
        return self

    def felt(self, blade: float, kind: str) -> Try | None:
        """The try of one blade alone, where it was tried."""
        return next((t for t in self.now if t.blades == (blade,) and t.kind == kind), None)


def tried_in(session: Session) -> Tried:
    """Return all that an attempt under way has tried so far."""
    tried = Tried()
    for event, room in zip(session.attempt.events, session.states[1:], strict=True):
        tried = tried.after(event.act, room)
    return tried


FEELS: dict[str, str] = {Feel.GO: marked("goes"), Feel.DRAG: marked("drags"), Feel.NO_GO: marked("stops")}
"""Feel of a try, in one word."""


def follows(row: tuple[Try, ...]) -> str:
    """The one sentence that follows from a row of tries."""
    if not row:
        return tr("Nothing tried yet.")
    thick = sorted(((thickness_mm(t.kind, t.blades), t) for t in row), key=lambda pair: pair[0])
    went = [pair for pair in thick if pair[1].goes]
    stopped = [pair for pair in thick if not pair[1].goes]
    if went and stopped and went[-1][0] > stopped[0][0]:
        return tr("A thinner blade stopped where a thicker one went: try them again.")
    if went and stopped:
        return tr(
            "{low} goes, {high} does not: the gap lies between.", low=_named(went[-1][1]), high=_named(stopped[0][1])
        )
    if went:
        return tr("{low} goes: the gap is larger. Try a thicker blade.", low=_named(went[-1][1]))
    return tr("{high} does not go: the gap is smaller. Try a thinner blade.", high=_named(stopped[0][1]))


def _named(tried: Try) -> str:
    return f"{tried.words} {UNITS[tried.kind]}"
