"""Primary circuit and switch lead against a network of resistors solved node by node, over every combination."""

from __future__ import annotations

import math
from dataclasses import fields
from itertools import product

import numpy as np
import pytest

from magview.physics.electric.circuit import PRIMARY_OHM, Lead, circuit

NAMES = [f.name for f in fields(Lead) if f.name != "switch"]
SWITCHES = ("sound", "never-opens", "never-closes")
LEADS = [
    Lead(**dict(zip(NAMES, flags, strict=True)), switch=switch)
    for flags in product((False, True), repeat=len(NAMES))
    for switch in SWITCHES
]

# The nodes: case, terminal, plug end of the lead, just before the break, just behind it, its end at the switch,
# this magneto's pole of the switch, the other magneto's.
CASE, TERMINAL, PLUG, MIDDLE, BEHIND, END, OWN, OTHER = range(8)
SMALL = 0.02


def branches(lead: Lead, closed: bool, tab: bool, primary: bool) -> list[tuple[int, int, float]]:
    """Every joint that there is, from node to node [Ω]: a drawing of the wiring, nothing worked out.

    Which pole of the switch stands closed is common sense of the trade: off is closed; a pole that is stuck stays.
    """
    joined = [
        (primary, TERMINAL, CASE, PRIMARY_OHM),
        (closed, TERMINAL, CASE, SMALL),
        (lead.shorted, TERMINAL, CASE, SMALL),
        (lead.jumper, TERMINAL, CASE, SMALL),
        (tab and lead.tab_touches and not lead.paper and not lead.plug_in, TERMINAL, CASE, SMALL),
        (lead.plug_in, TERMINAL, PLUG, 1e-9),
        (lead.chafed, PLUG, CASE, SMALL),
        (True, PLUG, MIDDLE, 0.05),
        (not lead.broken, MIDDLE, BEHIND, 1e-9),
        (True, BEHIND, END, 0.05),
        (not lead.crossed, END, OWN, 1e-9),
        (lead.crossed, END, OTHER, 1e-9),
    ]
    for pole, on in ((OWN, lead.switch_on), (OTHER, lead.other_on)):
        reached = (pole == OTHER) == lead.crossed
        stuck = lead.switch if reached else "sound"
        joined.append((stuck == "never-opens" or (stuck == "sound" and not on), pole, CASE, SMALL))
    return [(a, b, ohm) for there, a, b, ohm in joined if there]


def resistance(wires: list[tuple[int, int, float]], one: int, other: int) -> float:
    """What an ideal ohmmeter between two nodes reads [Ω]: Kirchhoff's current law at each node they reach."""
    reached = {one}
    while True:
        more = {b for a, b, _ in wires if a in reached} | {a for a, b, _ in wires if b in reached}
        if more <= reached:
            break
        reached |= more
    if other not in reached:
        return math.inf
    order = sorted(reached - {other})
    matrix = np.zeros((len(order), len(order)))
    for a, b, ohm in wires:
        if a not in reached:
            continue
        for here, there in ((a, b), (b, a)):
            if here != other:
                matrix[order.index(here), order.index(here)] += 1 / ohm
                if there != other:
                    matrix[order.index(here), order.index(there)] -= 1 / ohm
    current = np.zeros(len(order))
    current[order.index(one)] = 1.0
    return float(np.linalg.solve(matrix, current)[order.index(one)])


@pytest.mark.parametrize("tab", [False, True])
@pytest.mark.parametrize("closed", [False, True])
def test_every_combination_against_the_network(tab, closed):
    for lead in LEADS:
        now = circuit(lead, closed, tab)
        # Grounded: a way from the terminal to the case that goes neither by the winding nor by the contacts.
        grounded = math.isfinite(resistance(branches(lead, False, tab, primary=False), TERMINAL, CASE))
        assert now.grounded == grounded != now.live, lead
        assert now.lamp_sees_closed == (grounded or closed), lead
        assert now.live_though_off == (not grounded and not (lead.plug_in and lead.switch_on)), lead
        wires = branches(lead, closed, tab, primary=True)
        assert now.terminal_ohm == pytest.approx(resistance(wires, TERMINAL, CASE), abs=1e-6), lead
        # What a reading to a tenth says follows from the reading itself: the winding's own tenths, or fewer.
        alone = round(now.terminal_ohm, 1) == round(PRIMARY_OHM, 1)
        assert now.terminal_says == ("winding" if alone else "ground"), lead
        if not lead.plug_in:
            at_plug = resistance(wires, PLUG, CASE)
            assert now.lead_ohm == (pytest.approx(at_plug, abs=1e-6) if math.isfinite(at_plug) else math.inf), lead
            assert now.meter_sees_ground == math.isfinite(at_plug)


def test_a_pulled_lead_leaves_only_a_magneto_with_a_tab_grounded():
    """Common practice: a tab inside grounds the pulled magneto; without one the pulled lead makes it live."""
    out = Lead(plug_in=False)
    assert circuit(out, False, tab=True).grounded
    assert circuit(out, False, tab=False).live_though_off
    assert circuit(Lead(plug_in=False, paper=True), False, tab=True).live_though_off
    assert circuit(Lead(plug_in=False, jumper=True), False, tab=False).grounded_by == {"jumper"}


def test_with_the_jumper_on_light_and_meter_see_closed_whatever_the_contacts_do():
    for closed in (False, True):
        now = circuit(Lead(switch_on=True, jumper=True), closed, tab=False)
        assert now.lamp_sees_closed and now.terminal_ohm < 0.05 and not now.live


def test_an_ohmmeter_at_the_terminal_never_reads_an_open_circuit():
    """Common practice: the winding of about an ohm lies beside the contacts, so open and closed are an ohm apart."""
    live = Lead(switch_on=True)
    assert circuit(live, False, True).terminal_ohm == PRIMARY_OHM
    assert circuit(live, True, True).terminal_ohm < 0.05
    assert circuit(live, False, True, primary_ohm=0.6).terminal_ohm == 0.6
    assert circuit(live, False, True, primary_ohm=0.0).terminal_ohm == 0.0
    assert circuit(live, False, True, primary_ohm=0.2).terminal_says == "cannot-tell"
    assert all(circuit(lead, False, tab).terminal_ohm <= PRIMARY_OHM for lead in LEADS for tab in (False, True))


@pytest.mark.parametrize(
    ("fault", "off", "on"),
    [
        ({}, True, False),
        ({"broken": True}, False, False),
        ({"chafed": True}, True, True),
        ({"switch": "never-opens"}, True, True),
        ({"switch": "never-closes"}, False, False),
        ({"shorted": True}, True, False),
        ({"crossed": True}, True, True),  # the other switch stays off throughout…
        ({"crossed": True, "other_on": True}, False, False),  # …or on: this one does nothing
    ],
)
def test_what_the_meter_on_the_pulled_lead_reads_of_each_fault(fault, off, on):
    """By switch off and on; common practice for the sound lead, the rest follows from the wiring."""
    read = [circuit(Lead(plug_in=False, switch_on=s, **fault), True, True).meter_sees_ground for s in (False, True)]
    assert read == [off, on]
