"""The switch lead as a circuit diagram: coil, contacts, capacitor, terminal and tab, lead, switch, jumper.

Contacts and switch are make contacts and the capacitor two plates, as in IEC 60617; a switch that is off is drawn
closed, because it is. Plain units, y up.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

import numpy as np

from magview.bench.lead_words import position_word
from magview.bench.state import BenchState, gap_now_mm, lamp_burns_now
from magview.drawing.shapes import Array, Point, circle
from magview.physics.electric.circuit import Lead
from magview.spec.language import tr

WIDTH, HEIGHT = 126.0, 66.0

RAIL, FOOT = 50.0, 14.0
"""Height of the ungrounded side, and of the grounds."""

COIL_X, CONTACTS_X, SHORT_X, CAPACITOR_X, TERMINAL_X, WALL_X = 8.0, 19.0, 27.0, 34.0, 44.0, 47.0
CHAFE_X, BREAK_X, OWN_X, OTHER_X = 72.0, 80.0, 99.0, 117.0
"""Places of the parts, from left to right."""

Kind = Literal["wire", "part", "fault", "ground"]


@dataclass(frozen=True)
class Stroke:
    """One line of the diagram."""

    points: Array
    """Shape (n, 2), in the diagram's own units: WIDTH by HEIGHT."""
    kind: Kind
    """Way of drawing it."""


@dataclass(frozen=True)
class LeadPicture:
    """The diagram of a state: lines, words with their places, and the light."""

    strokes: tuple[Stroke, ...]
    words: tuple[tuple[str, Point], ...]
    """Words, and where each begins."""
    anchors: dict[str, Point]
    """Points of the names of the parts."""
    lamp_lit: bool
    """Whether the timing light burns, or for a buzzer buzzes high."""


def lead_picture(state: BenchState) -> LeadPicture:
    """Draw the switch lead as it is now."""
    lead, tab = state.lead, state.magneto.grounding_tab is True
    plug = WALL_X + 1.0 if lead.plug_in else WALL_X + 12.0
    strokes = [
        *_inside(lead, gap_now_mm(state) > 0.0),
        *_socket(lead, tab),
        _part(*_box(plug, RAIL - 2.5, plug + 8, RAIL + 2.5)),
        *_lead(lead, plug + 8, shows_other(state)),
        *_switch(lead, shows_other(state)),
    ]  # fmt: skip
    if lead.plug_in:
        strokes.append(_wire((TERMINAL_X, RAIL), (plug + 8, RAIL)))
    else:
        strokes.append(_wire((TERMINAL_X, RAIL), (WALL_X, RAIL)))
    return LeadPicture(tuple(strokes), tuple(_words(state, plug, tab)), _anchors(plug, tab), lamp_burns_now(state))


def shows_other(state: BenchState) -> bool:
    """Whether the other magneto's pole of the switch is drawn: where there is another magneto, or something of it."""
    engaged = state.engaged
    two = engaged is not None and engaged.installation.position != "single"
    return two or state.lead.crossed or state.lead.other_on


# ---------------------------------------------------------------------- inside the magneto


def _inside(lead: Lead, open_now: bool) -> list[Stroke]:
    strokes = [
        _wire((COIL_X, RAIL - 8), (COIL_X, RAIL), (TERMINAL_X, RAIL)),
        _part(*_coil()),
        _wire((COIL_X, RAIL - 28), (COIL_X, FOOT)),
        *_ground((COIL_X, FOOT)),
        _wire((CONTACTS_X, RAIL), (CONTACTS_X, RAIL - 9)),
        *_make_contact(CONTACTS_X, RAIL - 9, open_now),
        _wire((CONTACTS_X, RAIL - 19), (CONTACTS_X, FOOT)),
        *_ground((CONTACTS_X, FOOT)),
        _wire((CAPACITOR_X, RAIL), (CAPACITOR_X, RAIL - 12.5)),
        _part((CAPACITOR_X - 3.5, RAIL - 12.5), (CAPACITOR_X + 3.5, RAIL - 12.5)),
        _part((CAPACITOR_X - 3.5, RAIL - 15.5), (CAPACITOR_X + 3.5, RAIL - 15.5)),
        _wire((CAPACITOR_X, RAIL - 15.5), (CAPACITOR_X, FOOT)),
        *_ground((CAPACITOR_X, FOOT)),
    ]
    if lead.shorted:
        strokes.append(_fault(*_zigzag((SHORT_X, RAIL), (SHORT_X, RAIL - 18))))
        strokes += _ground((SHORT_X, RAIL - 18))
    return strokes


def _socket(lead: Lead, tab: bool) -> list[Stroke]:
    """The case's wall with the terminal in it, the tab behind it, a jumper from terminal to ground."""
    strokes = [
        _part((WALL_X, RAIL + 8), (WALL_X, RAIL + 4)),
        _part((WALL_X, RAIL - 4), (WALL_X, FOOT)),
        *_ground((WALL_X, FOOT)),
        _part(*_ring((TERMINAL_X, RAIL))),
    ]
    if tab:
        rests = lead.plug_in is False and lead.tab_touches
        held_off = 1.6 if lead.paper else 0.0
        end = (WALL_X - held_off, RAIL - 9) if rests else (TERMINAL_X - 1.0, RAIL - 9)
        strokes.append(_part((TERMINAL_X, RAIL), (TERMINAL_X - 1.5, RAIL - 5), end))
        if lead.paper:
            strokes.append(_fault((WALL_X - 0.8, RAIL - 5), (WALL_X - 0.8, RAIL - 13)))
    if lead.jumper:
        x, y = TERMINAL_X - 12.0, RAIL + 12.0
        strokes.append(_part((TERMINAL_X, RAIL), (TERMINAL_X, y), (x, y), (x, y - 3)))
        strokes += _ground((x, y - 3))
    return strokes


# ---------------------------------------------------------------------- outside


def _lead(lead: Lead, start: float, other: bool) -> list[Stroke]:
    """From the plug to the switch: a chafe beside the plug, a break behind it; and the other magneto's lead."""
    end = OTHER_X if lead.crossed else OWN_X
    down = [(OWN_X - 9, RAIL), (end, RAIL - 8)] if lead.crossed else [(end, RAIL)]
    last = (end, RAIL - 10)
    if lead.broken:
        strokes = [
            _wire((start, RAIL), (BREAK_X - 2, RAIL)),
            _wire((BREAK_X + 2, RAIL), *down, last),
            _fault((BREAK_X - 2.5, RAIL + 3.5), (BREAK_X + 2.5, RAIL - 3.5)),
        ]
    else:
        strokes = [_wire((start, RAIL), *down, last)]
    if lead.chafed:
        strokes.append(_fault(*_zigzag((CHAFE_X, RAIL), (CHAFE_X, RAIL - 14))))
        strokes += _ground((CHAFE_X, RAIL - 14))
    if other:
        x = OWN_X if lead.crossed else OTHER_X
        over = [(OTHER_X, RAIL + 1), (x, RAIL - 8)] if lead.crossed else [(x, RAIL + 1)]
        strokes.append(_wire((OTHER_X, RAIL + 9), *over, (x, RAIL - 10)))
    return strokes


def _switch(lead: Lead, other: bool) -> list[Stroke]:
    """One pole for each magneto: closed to ground when off. A pole that sticks is marked."""
    poles = [(OWN_X, lead.switch_on, not lead.crossed)]
    if other:
        poles.append((OTHER_X, lead.other_on, lead.crossed))
    strokes = []
    for x, on, mine in poles:
        stuck = lead.switch if mine else "sound"
        open_now = stuck == "never-closes" or (stuck == "sound" and on)
        strokes += [
            *_make_contact(x, RAIL - 10, open_now),
            _wire((x, RAIL - 20), (x, FOOT)),
            *_ground((x, FOOT)),
        ]
        if stuck != "sound":
            strokes.append(_fault(*[(px + x + 4.5, py + RAIL - 15) for px, py in _CROSS]))
    return strokes


_CROSS = ((-1.6, -1.6), (1.6, 1.6), (0.0, 0.0), (-1.6, 1.6), (1.6, -1.6))


def _words(state: BenchState, plug: float, tab: bool) -> list[tuple[str, Point]]:
    lead = state.lead
    words = [
        (tr("coil"), (0.5, RAIL - 35.0)),
        (tr("contacts"), (CONTACTS_X - 11.0, FOOT - 9.0)),
        (tr("capacitor"), (CAPACITOR_X - 4.0, FOOT - 9.0)),
        (tr("plug"), (plug + 1, RAIL + 4.5)),
        (tr("lead"), (86.0 if not lead.crossed else 82.0, RAIL + 2.5)),
        (position_word(state), (OWN_X - 16.0, FOOT - 9.0)),
        (tr("grounding tab") if tab else tr("no grounding tab"), (WALL_X + 4.5, FOOT - 1.0)),
    ]
    if shows_other(state):
        words.append((tr("other magneto"), (OTHER_X - 23.0, RAIL + 10.5)))
    if lead.jumper:
        words.append((tr("jumper"), (TERMINAL_X + 2.0, RAIL + 11.0)))
    if lead.paper and tab:
        words.append((tr("paper"), (WALL_X + 2.0, RAIL - 15.0)))
    if lead.shorted:
        words.append((tr("short"), (SHORT_X - 3.0, RAIL - 28.0)))
    if lead.broken:
        words.append((tr("broken inside"), (BREAK_X - 9.0, RAIL + 7.0)))
    if lead.chafed:
        words.append((tr("chafed through"), (CHAFE_X - 9.0, RAIL - 21.5)))
    if lead.crossed:
        words.append((tr("leads crossed"), (OWN_X - 34.0, RAIL - 26.5)))
    if lead.switch != "sound":
        words.append((
            tr("never opens") if lead.switch == "never-opens" else tr("never closes"), (OWN_X - 27.0, RAIL - 31.5)
        ))  # fmt: skip
    return words


def _anchors(plug: float, tab: bool) -> dict[str, Point]:
    anchors = {
        "coil": (COIL_X, RAIL - 18),
        "contacts": (CONTACTS_X, RAIL - 14),
        "capacitor": (CAPACITOR_X, RAIL - 14),
        "plug": (plug + 4, RAIL + 2.5),
        "lead": (86.0, RAIL),
        "switch": (OWN_X, RAIL - 15),
    }
    if tab:
        anchors["grounding tab"] = (TERMINAL_X - 1.2, RAIL - 6)
    return anchors


# ---------------------------------------------------------------------- symbols


def _wire(*points: Point) -> Stroke:
    return Stroke(np.array(points, dtype=float), "wire")


def _part(*points: Point) -> Stroke:
    return Stroke(np.array(points, dtype=float), "part")


def _fault(*points: Point) -> Stroke:
    return Stroke(np.array(points, dtype=float), "fault")


def _make_contact(x: float, top: float, open_now: bool) -> list[Stroke]:
    """A make contact ten units high below `top`: a blade on its hinge, straight when closed, aside when open."""
    tip = (x - 4.5, top - 1.5) if open_now else (x, top)
    return [_part((x, top - 10), tip), _part((x - 1.2, top), (x + 1.2, top))]


def _ground(at: Point) -> list[Stroke]:
    x, y = at
    return [
        Stroke(np.array([(x - w, y - d), (x + w, y - d)], dtype=float), "ground")
        for w, d in ((3.2, 0.0), (2.0, 1.5), (0.8, 3.0))
    ]


def _box(left: float, bottom: float, right: float, top: float) -> list[Point]:
    return [(left, top), (right, top), (right, bottom), (left, bottom), (left, top)]


def _ring(at: Point) -> list[Point]:
    return [(float(x), float(y)) for x, y in circle(at, 0.8, 16)]


def _zigzag(start: Point, end: Point) -> list[Point]:
    t = np.linspace(0.0, 1.0, 6)
    aside = np.array([0.0, 1.5, -1.5, 1.5, -1.5, 0.0])
    return [
        (float(x + s), float(y))
        for x, y, s in zip(start[0] + t * (end[0] - start[0]), start[1] + t * (end[1] - start[1]), aside, strict=True)
    ]


def _coil() -> list[Point]:
    t = np.linspace(0.0, 1.0, 121)
    x, y = COIL_X + 3.0 * np.sin(12 * np.pi * t), RAIL - 8.0 - 20.0 * t
    return [(float(a), float(b)) for a, b in zip(x, y, strict=True)]
