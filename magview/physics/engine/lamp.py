"""Expected reading of the timing lamp after contacts and teeth were moved, and causes of another reading.

A magneto fires where its contacts open. A later opening of the contacts fires later, teeth moved with rotation fire
earlier, and the gears turn degrees of the rotor into degrees of the crank (guide: theory-coupling). So a lamp reading
taken before either of them was changed is out of date, and what the lamp reads afterwards is known beforehand.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from enum import Enum
from math import isfinite

from magview.physics.engine.coupling import crank_advance_deg
from magview.spec.language import tr

LOOK_FIRST_DEG = 5.0
"""A magneto further out than this [crank deg] was seldom timed so: stroke, mark and finger are looked at first."""

ASK_FIRST_DEG = 90.0
"""Further out than a quarter turn of the crank [crank deg] no teeth are planned before they have been looked at."""

MAX_TEETH_BEYOND = 6
"""Teeth on both faces together that a reading is explained by: more would explain any reading."""

MAX_TEETH_NAMED = 3
"""So many ways of moving teeth are named for one reading, those with the fewest teeth."""


class Cause(Enum):
    """A possible cause of a reading of the lamp."""

    NOTHING = "nothing"
    NOT_MOVED = "not-moved"
    WRONG_WAY = "wrong-way"
    WRONG_FACE = "wrong-face"
    ONE_FACE = "one-face"
    MISCOUNTED = "miscounted"
    CONTACTS_AS_BEFORE = "contacts-as-before"
    AGAINST_ROTATION = "against-rotation"
    OTHER_LOBE = "other-lobe"
    OTHER_CYLINDER = "other-cylinder"
    OTHER_STROKE = "other-stroke"
    TEETH = "teeth"
    OPENING = "opening"
    DISC = "disc"


_MISTAKES = (Cause.NOT_MOVED, Cause.WRONG_WAY, Cause.WRONG_FACE, Cause.ONE_FACE, Cause.MISCOUNTED)
_ORDER = {
    Cause.NOTHING: 0,
    **dict.fromkeys((*_MISTAKES, Cause.CONTACTS_AS_BEFORE), 1),
    Cause.AGAINST_ROTATION: 2,
    **dict.fromkeys((Cause.OTHER_LOBE, Cause.OTHER_CYLINDER, Cause.OTHER_STROKE), 3),
    Cause.TEETH: 4, Cause.OPENING: 5, Cause.DISC: 6,
}  # fmt: skip
"""Best first: what an act just done would do if done wrongly, then what needs fewest things to have moved. A slipped
disc explains any reading, so it comes last."""


@dataclass(frozen=True)
class Explanation:
    """One thing that would make the lamp read so."""

    cause: Cause
    reads_btdc_deg: float
    """The lamp's reading by this cause [crank deg BTDC]."""
    left_deg: float
    """The reading less that: what it leaves unexplained [crank deg]."""
    magneto_teeth: int = 0
    """Teeth of the magneto flange, positive with rotation: in truth moved by a mistake, else beyond those entered."""
    disc_teeth: int = 0
    amount_deg: float = 0.0
    """Change of opening [rotor deg, positive late], or slip of the disc [crank deg, positive reads earlier]."""
    lobe: int = 0
    """Number of the lobe that was read, from 1; 0 where it is no matter of lobes."""


@dataclass(frozen=True)
class Elsewhere:
    """Another opening that could be taken for the one wanted."""

    cause: Cause
    reads_btdc_deg: float
    lobe: int


@dataclass(frozen=True)
class Foretold:
    """Expected reading of the lamp, and the acts it follows from."""

    btdc_deg: float
    """[crank deg BTDC]"""
    magneto_teeth: int = 0
    """Teeth moved since the reading before, positive with rotation."""
    disc_teeth: int = 0
    opening_deg: float = 0.0
    """Change of the opening since the reading before [rotor deg], positive = later."""


def lamp_after_deg(
    before_btdc_deg: float,
    rotor_turns_per_crank_turn: float,
    *,
    opening_change_deg: float = 0.0,
    rotor_shift_deg: float = 0.0,
) -> float:
    """Reading of the lamp after contacts or teeth were moved [crank deg BTDC] (common practice; plain gearing).

    Parameters
    ----------
    before_btdc_deg : what it read before [crank deg BTDC], larger = earlier.
    rotor_turns_per_crank_turn : speed ratio [-].
    opening_change_deg : opening now less opening when it was read, of the lobe in play [rotor deg], positive = later.
    rotor_shift_deg : how far teeth moved since carry the rotor ahead [rotor deg], positive = with rotation.

    Raises
    ------
    ValueError : a ratio that is not above 0, or an angle that is not finite.

    Examples
    --------
    The contacts open 1.5° later on a rotor at one and a half times crank speed: the lamp reads 1° less.

    >>> lamp_after_deg(20.0, 1.5, opening_change_deg=1.5)
    19.0
    """
    if not rotor_turns_per_crank_turn > 0:
        raise ValueError(
            tr("the rotor turns {ratio} times per crank turn; it must be above 0", ratio=rotor_turns_per_crank_turn)
        )
    after = before_btdc_deg + (rotor_shift_deg - opening_change_deg) / rotor_turns_per_crank_turn
    if not isfinite(after):
        raise ValueError(tr("the lamp would read {value}; it must be a finite number of degrees", value=after))
    return after


def explain(
    reads_btdc_deg: float,
    foretold: Foretold,
    uncertainty_deg: float,
    magneto_teeth: int,
    drive_teeth: int,
    rotor_turns_per_crank_turn: float,
    *,
    opening_room_deg: tuple[float, float] = (0.0, 0.0),
    play_deg: float = 0.0,
    elsewhere: Iterable[Elsewhere] = (),
) -> list[Explanation]:
    """Causes of a reading, best first; only those that leave no more unexplained than a reading can be out.

    Parameters
    ----------
    reads_btdc_deg : what the lamp reads now [crank deg BTDC].
    foretold : what it should read, and the acts since the reading before.
    uncertainty_deg : how far two readings of one thing may be apart [crank deg], ≥ 0.
    magneto_teeth, drive_teeth : teeth of the disc's two faces [-].
    rotor_turns_per_crank_turn : speed ratio [-].
    opening_room_deg : how much earlier (≤ 0) and later (≥ 0) plate and screw can bring the opening [rotor deg].
    play_deg : what a reading led in against rotation reads too early [crank deg], ≥ 0.
    elsewhere : other openings that could be taken for the one wanted.
    """
    ratio, expected, slack = rotor_turns_per_crank_turn, foretold.btdc_deg, uncertainty_deg + 1e-9
    made = foretold.magneto_teeth, foretold.disc_teeth

    def teeth_deg(i: int, j: int) -> float:
        return crank_advance_deg(magneto_teeth, drive_teeth, i, j, ratio)

    off = reads_btdc_deg - expected
    nothing = Explanation(Cause.NOTHING, expected, off)
    if abs(off) <= slack:
        return [nothing]
    as_found = expected - teeth_deg(*made)
    found = []
    for cause, (i, j) in _mistakes(made):
        then = as_found + teeth_deg(i, j)
        found.append(Explanation(cause, then, reads_btdc_deg - then, i, j))
    if foretold.opening_deg:
        then = lamp_after_deg(expected, ratio, opening_change_deg=-foretold.opening_deg)
        found.append(Explanation(Cause.CONTACTS_AS_BEFORE, then, reads_btdc_deg - then))
    if play_deg > 0.0:
        then = expected + play_deg
        found.append(Explanation(Cause.AGAINST_ROTATION, then, reads_btdc_deg - then))
    found += [
        Explanation(other.cause, other.reads_btdc_deg, reads_btdc_deg - other.reads_btdc_deg, lobe=other.lobe)
        for other in elsewhere
    ]
    # A move that leaves the error as if nothing had moved explains nothing.
    found = [e for e in found if abs(e.left_deg) <= min(slack, 0.999 * abs(off))]
    mistaken = {(e.magneto_teeth - made[0], e.disc_teeth - made[1]) for e in found if e.cause in _MISTAKES}
    beyond = [
        Explanation(Cause.TEETH, expected + teeth_deg(i, j), off - teeth_deg(i, j), i, j)
        for i, j in _few_teeth()
        if (i, j) not in mistaken and abs(off - teeth_deg(i, j)) <= slack
    ]
    found += sorted(beyond, key=_rank)[:MAX_TEETH_NAMED]
    change = -off * ratio
    if opening_room_deg[0] <= change <= opening_room_deg[1]:
        found.append(Explanation(Cause.OPENING, reads_btdc_deg, 0.0, amount_deg=change))
    found.append(Explanation(Cause.DISC, reads_btdc_deg, 0.0, amount_deg=off))
    return sorted(found, key=_rank)


def _rank(explanation: Explanation) -> tuple[int, int, float]:
    teeth = abs(explanation.magneto_teeth) + abs(explanation.disc_teeth) if explanation.cause is Cause.TEETH else 0
    return _ORDER[explanation.cause], teeth, abs(explanation.left_deg)


def _mistakes(made: tuple[int, int]) -> Iterator[tuple[Cause, tuple[int, int]]]:
    """Yield the ways to make a move wrongly, with the teeth that were then moved in truth; each pair once."""
    i, j = made
    if made == (0, 0):
        return
    seen = {made}
    for cause, teeth in (
        (Cause.NOT_MOVED, (0, 0)),
        (Cause.WRONG_WAY, (-i, -j)), (Cause.WRONG_WAY, (-i, j)), (Cause.WRONG_WAY, (i, -j)),
        (Cause.WRONG_FACE, (j, i)),
        (Cause.ONE_FACE, (i, 0)), (Cause.ONE_FACE, (0, j)),
        (Cause.MISCOUNTED, (i + 1, j)), (Cause.MISCOUNTED, (i - 1, j)),
        (Cause.MISCOUNTED, (i, j + 1)), (Cause.MISCOUNTED, (i, j - 1)),
    ):  # fmt: skip
        if teeth not in seen:
            seen.add(teeth)
            yield cause, teeth


def _few_teeth() -> Iterator[tuple[int, int]]:
    most = MAX_TEETH_BEYOND
    return (
        (i, j) for i in range(-most, most + 1) for j in range(-(most - abs(i)), most - abs(i) + 1) if (i, j) != (0, 0)
    )
