"""Timing lights: what each kind shows of contacts that touch or stand apart.

The contacts lie across the coil's primary winding, which is about an ohm. A battery and a lamp see hardly any
difference between an ohm and contacts that touch; a light made for magnetos tells them apart, and burns on open or
on closed, or buzzes, by its make (common practice).
"""

from __future__ import annotations

from typing import Literal

LampKind = Literal["open", "closed", "buzzer", "plain"]
"""Lights when the contacts are open; lights when they are closed; buzzes, higher when they are open; or a plain
battery lamp or ohmmeter."""


def lamp_tells(kind: LampKind, coil_connected: bool) -> bool:
    """Whether it can tell open contacts from closed ones with the coil's primary connected, or taken off."""
    return kind != "plain" or not coil_connected


def lamp_burns(kind: LampKind, sees_closed: bool, coil_connected: bool) -> bool:
    """Whether it burns, or for a buzzer buzzes high.

    Parameters
    ----------
    kind : the light's kind.
    sees_closed : the contacts touch, or something else grounds the primary.
    coil_connected : the primary winding is connected across the contacts.
    """
    if kind == "plain":
        return sees_closed or coil_connected  # current flows through contacts, or through the winding
    return sees_closed == (kind == "closed")
