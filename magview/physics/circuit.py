"""Primary circuit and switch lead: what grounds it, what lamp and meter then show (guide: theory-coil)."""

from __future__ import annotations

from magview.spec.frozen import frozen


@frozen
class Lead:
    """The switch lead and what may be wrong with it.

    With its plug out a spring tab on the plug's socket grounds the primary on the case, so that a magneto
    with its lead off is safe – if the tab touches.
    """

    plug_in: bool = True
    switch_on: bool = False
    tab_touches: bool = True
    shorted: bool = False
    """A short inside the magneto: it grounds the primary whatever the lead does."""
    broken: bool = False
    """Broken inside: looks whole, and the switch no longer grounds the magneto."""


@frozen
class Circuit:
    """What the circuit does and what instruments say of it."""

    grounded: bool
    """The primary is grounded: no spark, and the timing lamp sees "closed" whatever the contacts do."""
    live: bool
    """A turn of the propeller can fire a plug."""
    live_though_off: bool
    """Live with the switch off or the plug out: the dangerous case."""
    lamp_sees_closed: bool
    """Timing lamp across the contacts."""
    meter_sees_ground: bool
    """Meter from the lead's plug end to the case, plug out: continuity through lead and switch."""


def circuit(lead: Lead, contacts_closed: bool) -> Circuit:
    """The circuit that results.

    Parameters
    ----------
    lead : lead, plug, switch and their faults.
    contacts_closed : whether the contacts touch.
    """
    through_switch = not lead.switch_on and not lead.broken
    grounded = lead.shorted or (through_switch if lead.plug_in else lead.tab_touches)
    return Circuit(
        grounded=grounded,
        live=not grounded,
        live_though_off=not grounded and (not lead.switch_on or not lead.plug_in),
        lamp_sees_closed=grounded or contacts_closed,
        meter_sees_ground=through_switch,
    )
