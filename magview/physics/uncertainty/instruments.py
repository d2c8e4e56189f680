"""Instruments for readings, and how far each may be out: generic instruments as data.

Half-widths that follow from a scale's division are "resolution"; the others are "common practice": what careful
hands are trusted with, without a published source, and to be replaced by one's own figures where there are any.
"""

from __future__ import annotations

from dataclasses import dataclass
from math import degrees, floor, hypot
from typing import Literal

from magview.spec.language import marked
from magview.spec.units import MM_PER_INCH, MM_PER_THOU

Role = Literal[
    "straightedge",
    "rule",
    "blade",
    "feel",
    "opening",
    "rotor turning",
    "crank turning",
    "disc",
    "lead-in",
    "tightening",
]
"""Purpose of an instrument or a habit; a reading takes one for each role it needs."""


@dataclass(frozen=True)
class Instrument:
    """An instrument, or a habit of the hands. What is true lies anywhere within `offset` ± `half_width` of
    what is read: rectangular (GUM 4.3.7)."""

    key: str
    role: Role
    name: str
    offset: float
    """Correction to add to a reading [`unit`]."""
    half_width: float
    """Half-width within which the true value then lies [`unit`]."""
    unit: Literal["mm", "deg", "of the play", "of the creep"]
    basis: str
    """Origin of the half-width."""


def _scale(key: str, role: Role, name: str, division: float, unit: Literal["mm", "deg"]) -> Instrument:
    return Instrument(
        key,
        role,
        name,
        0.0,
        division / 2,
        unit,
        marked("resolution: read to the nearest division, half of one to each side"),
    )


def _blades(key: str, name: str, step_mm: float) -> Instrument:
    # Go and no-go: the gap lies anywhere between the thickest blade that passes and the next.
    return Instrument(
        key,
        "blade",
        name,
        step_mm / 2,
        step_mm / 2,
        "mm",
        marked("resolution: between the blade that passes and the next"),
    )


_PRACTICE = marked("common practice")

INSTRUMENTS: tuple[Instrument, ...] = (
    # Laying the straightedge along the cam's step [mm at the rim].
    Instrument("straightedge-hand", "straightedge", marked("straightedge held by hand"), 0.0, 0.2, "mm", _PRACTICE),
    Instrument(
        "straightedge-clamped", "straightedge", marked("straightedge clamped to the cam"), 0.0, 0.1, "mm", _PRACTICE
    ),
    # Reading its distance from the rim mark [mm].
    _scale("rule-1mm", "rule", marked("rule to 1 mm"), 1.0, "mm"),
    _scale("rule-32nds", "rule", marked("rule to thirty-seconds of an inch"), MM_PER_INCH / 32, "mm"),
    _scale("rule-half-mm", "rule", marked("rule to 0.5 mm"), 0.5, "mm"),
    _scale("rule-64ths", "rule", marked("rule to 1/64 in"), MM_PER_INCH / 64, "mm"),
    _scale("magnifier", "rule", marked("magnifier with a scale to 0.1 mm"), 0.1, "mm"),
    # Feeler blades in the widest gap [mm].
    _blades("blades-0.05mm", marked("blades in steps of 0.05 mm"), 0.05),
    _blades("blades-thou", marked("blades in steps of 0.001 in"), MM_PER_THOU),
    _blades("blades-half-thou", marked("blades in steps of 0.0005 in"), MM_PER_THOU / 2),
    _blades("blades-0.01mm", marked("blades in steps of 0.01 mm"), 0.01),
    # Drag that counts as passing [mm].
    Instrument("drag-one-blade", "feel", marked("drag judged by one blade"), 0.0, 0.005, "mm", _PRACTICE),
    Instrument("drag-compared", "feel", marked("drag compared with the next blade's"), 0.0, 0.0025, "mm", _PRACTICE),
    # The gap between the contacts when it says that they part [mm]: always after they have.
    Instrument("paper", "opening", marked("strip of thin paper, just free"), 0.02, 0.01, "mm", _PRACTICE),
    Instrument("meter", "opening", marked("ohmmeter across the contacts"), 0.004, 0.004, "mm", _PRACTICE),
    Instrument("lamp", "opening", marked("timing lamp"), 0.002, 0.002, "mm", _PRACTICE),
    # Stopping where it says so [rotor deg], [crank deg].
    Instrument("rotor-hand", "rotor turning", marked("rotor turned by hand"), 0.0, 0.25, "deg", _PRACTICE),
    Instrument(
        "rotor-bar",
        "rotor turning",
        marked("rotor turned with a bar, against a stop"),
        0.0,
        0.1,
        "deg",
        _PRACTICE,
    ),
    Instrument("crank-hand", "crank turning", marked("propeller turned by hand"), 0.0, 0.25, "deg", _PRACTICE),
    Instrument("crank-tapped", "crank turning", marked("propeller tapped round"), 0.0, 0.1, "deg", _PRACTICE),
    # Crank angle [crank deg].
    _scale("disc-1deg", "disc", marked("disc to 1°"), 1.0, "deg"),
    _scale("disc-half-deg", "disc", marked("disc to 0.5°"), 0.5, "deg"),
    _scale("disc-tenth-deg", "disc", marked("angle indicator to 0.1°"), 0.1, "deg"),
    # Approaching the opening, as a share of the play.
    Instrument(
        "to-and-fro",
        "lead-in",
        marked("turned to and fro"),
        0.5,
        0.5,
        "of the play",
        marked("anywhere within the play"),
    ),
    Instrument(
        "led-in",
        "lead-in",
        marked("always led in with rotation"),
        0.0,
        0.0,
        "of the play",
        marked("the play is taken up"),
    ),
    # When it was read, as a share of what the lock screw may carry along.
    Instrument(
        "before-tightening",
        "tightening",
        marked("read before tightening"),
        0.0,
        1.0,
        "of the creep",
        marked("either way, as the file"),
    ),
    Instrument(
        "after-tightening",
        "tightening",
        marked("read again after tightening"),
        0.0,
        0.0,
        "of the creep",
        marked("as found"),
    ),
)
"""Role by role, from the coarsest to the finest."""


def instrument(key: str) -> Instrument:
    """The instrument of a key. Raises KeyError for one that is not there."""
    return _BY_KEY[key]


def instruments(role: Role) -> tuple[Instrument, ...]:
    """All instruments for a role, coarsest first."""
    return tuple(i for i in INSTRUMENTS if i.role == role)


def finer(than: Instrument) -> Instrument | None:
    """The next finer instrument for the same role; None if it is the finest."""
    better = [i for i in instruments(than.role) if i.half_width < than.half_width]
    return max(better, key=lambda i: i.half_width, default=None)


def one_reading(key: str, rim_radius_mm: float = 40.0, cam_turns_per_rotor_turn: float = 1.0) -> float:
    """Return the half-width of one whole reading, by its instrument: instrument and hands together in square.

    Parameters
    ----------
    key : blades [mm], a rule at the rim mark [rotor deg], or a disc on the crank [crank deg].
    rim_radius_mm, cam_turns_per_rotor_turn : of the magneto whose mark the rule is held to [mm], [-].

    Returns
    -------
    A half-width: blades with their drag, rule with straightedge and turning by hand, disc with turning by hand and
    its zero.

    Raises
    ------
    KeyError : an instrument for none of the three.

    Examples
    --------
    >>> [round(one_reading(key), 3) for key in ("blades-thou", "rule-half-mm", "disc-1deg")]
    [0.015, 0.522, 0.685]
    """
    main = _BY_KEY[key]
    match main.role:
        case "blade":
            # Two are judged by their drag: the one that passes and the next, which does not.
            drag = _BY_KEY["drag-one-blade"].half_width
            return hypot(main.half_width, drag, drag)
        case "rule":
            edge = hypot(main.half_width, _BY_KEY["straightedge-hand"].half_width)
            at_rim = degrees(edge / rim_radius_mm) / cam_turns_per_rotor_turn
            return hypot(at_rim, _BY_KEY["rotor-hand"].half_width)
        case "disc":
            once = hypot(main.half_width, _BY_KEY["crank-hand"].half_width)
            # The disc's zero is halfway between two such readings, at the stop.
            return hypot(once, once / 2**0.5)
    raise KeyError(key)


_BY_KEY = {i.key: i for i in INSTRUMENTS}


def passing_blade_mm(gap_mm: float, step_mm: float) -> float:
    """The thickest blade that passes a gap [mm], of blades in equal steps [mm]."""
    return floor(gap_mm / step_mm + 1e-9) * step_mm
