"""All that a scripted trainee has: acts go in, and what may be read comes out."""

from __future__ import annotations

from itertools import combinations

from magview.bench.blades import BLADES, JOINT_MM
from magview.practice import actions as do
from magview.practice import instruments
from magview.practice.attempt import Session
from magview.practice.exercise import Exercise
from magview.practice.state import Practice
from magview.spec.units import MM_PER_THOU


class Hands:
    """Acts in, readings out; a second passes with each act."""

    def __init__(self, exercise: Exercise, seed: int) -> None:
        self.session = Session(exercise, seed, "scripted trainee")
        self.exercise = exercise
        self._clock = 0.0

    def act(self, act: do.Act) -> str:
        """Do it; what an instrument then said, if any."""
        self._clock += 1.0
        said = self.session.send(act, self._clock).said
        return said.text if said is not None else ""

    def _room(self) -> Practice:
        return self.session.practice

    def lamp(self) -> str:
        return instruments.lamp(self._room()).text

    def sees_open(self) -> bool:
        """What the lamp says, by the kind that the data sheet names."""
        burns = {"open": "lit", "closed": "dark", "buzzer": "buzzes high"}
        return self.lamp() == burns[self.exercise.tray.lamp_kind]

    def edge(self) -> int | None:
        value = instruments.straightedge(self._room()).value
        return None if value is None else int(value)

    def mark(self) -> int | None:
        """The mark the edge stands at, as it is told: the only one where none is named."""
        said = instruments.straightedge(self._room())
        return None if said.value is None else int(dict(said.places).get("mark", 1))

    def disc(self) -> float:
        value = instruments.disc(self._room()).value
        assert value is not None
        return value

    def finger(self) -> int:
        value = instruments.finger(self._room()).value
        assert value is not None
        return int(value)

    # What hands know without an instrument.

    @property
    def lock_tight(self) -> bool:
        return self._room().bench.lock_tight

    @property
    def clamps_tight(self) -> bool:
        return self._room().bench.clamps_tight

    @property
    def edge_laid(self) -> bool:
        return self._room().edge_laid

    @property
    def side(self) -> str:
        return self._room().side

    @property
    def mounted(self) -> bool:
        return self._room().mounted


def stacks(sets: tuple[str, ...]) -> list[tuple[float, tuple[float, ...], str]]:
    """Thickness [mm], blades and set of every single blade and pair, thinnest first."""
    found = []
    for kind in sets:
        unit = MM_PER_THOU if kind == "inch" else 1.0
        singles = [(b,) for b in BLADES[kind]]
        pairs = list(combinations(BLADES[kind], 2))
        for stack in [*singles, *pairs]:
            found.append((sum(stack) * unit + JOINT_MM * (len(stack) - 1), stack, kind))
    return sorted(found)
