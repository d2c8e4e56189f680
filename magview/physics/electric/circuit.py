"""Primary circuit and switch lead: what grounds the primary, and what timing light and meter then read.

One side of the primary winding is grounded. Its other side, the terminal, is joined to the contacts, the capacitor,
the lead to the switch, a jumper, and in some magnetos to a tab that touches the case once the lead is off. Whatever
joins the terminal to ground, other than winding and contacts, keeps the primary current flowing as the contacts
open: no spark. The switch is closed when it is off (FAA-H-8083-32B, ch. 4, ignition switches).
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from enum import StrEnum
from typing import Literal

SwitchState = Literal["sound", "never-opens", "never-closes"]


class Way(StrEnum):
    """Paths from the terminal to ground."""

    JUMPER = "jumper"
    TAB = "tab"
    """The tab under a lead that is pulled."""
    SWITCH = "switch"
    """Lead and switch."""
    CHAFE = "chafe"
    """A lead that chafed through."""
    SHORT = "short"
    """A short inside."""


class TerminalSays(StrEnum):
    """Verdict of a meter at the terminal."""

    WINDING = "winding"
    GROUND = "ground"
    CANNOT_TELL = "cannot-tell"


SWITCH_POSITIONS: dict[str, tuple[bool, bool]] = {
    "off": (False, False), "right": (False, True), "left": (True, False), "both": (True, True),
}  # fmt: skip
"""The magnetos that are on in each position of an ignition switch for two: left, right (FAA-H-8083-32B, ch. 4)."""

PRIMARY_OHM = 1.0
"""A primary winding of which the file says nothing: about an ohm (common practice)."""

MIN_WINDING_OHM = 0.3
"""A meter that reads tenths of an ohm tells a winding of this much from ground through the whole lead."""

_TOUCH_OHM, _LEAD_OHM = 0.02, 0.1
"""Metal on metal, and the whole lead: small beside the winding, as on a real one (common practice)."""


@dataclass(frozen=True)
class Lead:
    """The switch lead, what is at its ends, and what may be wrong with it."""

    plug_in: bool = True
    switch_on: bool = False
    """This magneto's own switch."""
    tab_touches: bool = True
    """Whether the tab, where there is one, is sound: bent clear of the case it grounds nothing."""
    shorted: bool = False
    """A short inside the magneto: it grounds the primary whatever the lead does."""
    broken: bool = False
    """Broken inside: looks whole, and the switch no longer grounds the magneto."""
    chafed: bool = False
    """Worn through to ground beside the plug, before any break: grounded for good while it is plugged in."""
    switch: SwitchState = "sound"
    crossed: bool = False
    """Joined to the other magneto's switch, and the other's lead to this one's."""
    other_on: bool = False
    """The other magneto's switch."""
    jumper: bool = False
    """A wire clipped from the terminal to ground."""
    paper: bool = False
    """Paper between tab and case."""

    @property
    def switch_closed(self) -> bool:
        """Whether the switch joins this lead to ground."""
        if self.switch != "sound":
            return self.switch == "never-opens"
        return not (self.other_on if self.crossed else self.switch_on)

    @property
    def own_pole_closed(self) -> bool:
        """Whether this magneto's own pole of the switch, every lead off it, is closed to ground."""
        if self.crossed or self.switch == "sound":
            return not self.switch_on
        return self.switch == "never-opens"


@dataclass(frozen=True)
class Circuit:
    """State of the primary circuit, and the readings of instruments on it."""

    grounded_by: frozenset[Way]
    """Everything that grounds the primary."""
    live_though_off: bool
    """Live with the switch off or the plug out: the dangerous case."""
    lamp_sees_closed: bool
    """A timing light made for magnetos, across the contacts."""
    lead_ohm: float
    """Meter from the lead's plug end to the case, plug out: lead and switch alone [Ω]; infinite when open."""
    terminal_ohm: float
    """Meter from the terminal to the case [Ω]: with everything open it reads the winding, and never more."""
    terminal_says: TerminalSays
    """The meaning of that reading, to tenths of an ohm: the winding alone, contacts or something else
    beside it, or nothing where the winding is too small."""

    @property
    def grounded(self) -> bool:
        """The primary is grounded: no spark, and the timing light sees "closed" whatever the contacts do."""
        return bool(self.grounded_by)

    @property
    def live(self) -> bool:
        """A turn of the propeller can fire a plug."""
        return not self.grounded_by

    @property
    def meter_sees_ground(self) -> bool:
        """Meter from the lead's plug end to the case, plug out."""
        return math.isfinite(self.lead_ohm)


def circuit(lead: Lead, contacts_closed: bool, tab: bool, primary_ohm: float = PRIMARY_OHM) -> Circuit:
    """The circuit that results.

    Parameters
    ----------
    lead : lead, plug, switch, jumper and their faults.
    contacts_closed : whether the contacts touch.
    tab : whether a tab inside grounds the primary once the lead is off; where nobody knows, none does.
    primary_ohm : resistance of the primary winding [Ω].
    """
    along = {
        Way.CHAFE: _TOUCH_OHM if lead.chafed else math.inf,
        Way.SWITCH: _LEAD_OHM + _TOUCH_OHM if lead.switch_closed and not lead.broken else math.inf,
    }
    ways: dict[Way, bool] = {
        Way.JUMPER: lead.jumper,
        Way.TAB: tab and not lead.plug_in and lead.tab_touches and not lead.paper,
        Way.SWITCH: lead.plug_in and math.isfinite(along[Way.SWITCH]),
        Way.CHAFE: lead.plug_in and lead.chafed,
        Way.SHORT: lead.shorted,
    }
    grounded_by = frozenset(way for way, joined in ways.items() if joined)
    told = primary_ohm >= MIN_WINDING_OHM
    paths = [along.get(way, _TOUCH_OHM) for way in grounded_by]
    return Circuit(
        grounded_by=grounded_by,
        live_though_off=not grounded_by and (not lead.switch_on or not lead.plug_in),
        lamp_sees_closed=bool(grounded_by) or contacts_closed,
        lead_ohm=_side_by_side(list(along.values())),
        terminal_ohm=_side_by_side([primary_ohm, *paths, *([_TOUCH_OHM] if contacts_closed else [])]),
        terminal_says=(
            TerminalSays.CANNOT_TELL
            if not told
            else TerminalSays.GROUND
            if grounded_by or contacts_closed
            else TerminalSays.WINDING
        ),
    )


def _side_by_side(ohms: list[float]) -> float:
    """Resistances in parallel [Ω]."""
    if 0.0 in ohms:
        return 0.0
    through = sum(1.0 / ohm for ohm in ohms)
    return 1.0 / through if through else math.inf
