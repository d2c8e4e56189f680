"""The ignition switch's table, position by position, and what off and on mean.

FAA-H-8083-32B, Aviation Maintenance Technician Handbook – Powerplant, vol. 1, ch. 4, ignition switches: with the
switch off "a circuit is completed through the switch to ground", on is open, and so an off switch short-circuits the
contacts as if they were not there. FAA-H-8083-25 (Pilot's Handbook of Aeronautical Knowledge), ch. 7, ignition
system: a switch for two magnetos has OFF, R, L and BOTH, each letter naming the magneto that then fires; with one
selected the other is grounded.
"""

from __future__ import annotations

import pytest

from magview.physics.electric.circuit import SWITCH_POSITIONS, Lead, circuit

GROUNDED = {
    "off": {"left", "right"},
    "right": {"left"},
    "left": {"right"},
    "both": set(),
}
"""The magnetos that each position grounds."""


@pytest.mark.parametrize("position", GROUNDED)
@pytest.mark.parametrize("closed", [False, True])
def test_each_position_grounds_the_magnetos_of_the_table(position, closed):
    left_on, right_on = SWITCH_POSITIONS[position]
    sides = {
        "left": circuit(Lead(switch_on=left_on, other_on=right_on), closed, tab=False),
        "right": circuit(Lead(switch_on=right_on, other_on=left_on), closed, tab=False),
    }
    assert {side for side, now in sides.items() if now.grounded} == GROUNDED[position]
    for side, now in sides.items():
        assert now.live == (side not in GROUNDED[position])
        assert not now.live_though_off or position != "both"


def test_the_table_has_the_switchs_positions_and_no_others():
    assert set(SWITCH_POSITIONS) == set(GROUNDED)


@pytest.mark.parametrize("position", GROUNDED)
def test_an_ohmmeter_on_a_pulled_lead_reads_the_table(position):
    """The functional check of an ignition switch: lead off its magneto, ohmmeter from lead to airframe; closed in the
    positions that ground it, open in the others (general practice of switch checks, same chapter)."""
    left_on, right_on = SWITCH_POSITIONS[position]
    for side, own, other in (("left", left_on, right_on), ("right", right_on, left_on)):
        read = circuit(Lead(plug_in=False, switch_on=own, other_on=other), True, tab=False)
        assert read.meter_sees_ground == (side in GROUNDED[position])


def test_leads_crossed_left_and_right_swap_the_table():
    """What the check of each magneto in turn finds: the drop belongs to the other one."""
    for position, (left_on, right_on) in SWITCH_POSITIONS.items():
        left = circuit(Lead(switch_on=left_on, other_on=right_on, crossed=True), False, tab=False)
        right = circuit(Lead(switch_on=right_on, other_on=left_on, crossed=True), False, tab=False)
        swapped = {"off": "off", "both": "both", "left": "right", "right": "left"}[position]
        assert {side for side, now in (("left", left), ("right", right)) if now.grounded} == GROUNDED[swapped]


def test_the_off_switch_takes_the_contacts_out_of_the_circuit():
    for closed in (False, True):
        assert circuit(Lead(switch_on=False), closed, tab=False).lamp_sees_closed
    assert not circuit(Lead(switch_on=True), False, tab=False).lamp_sees_closed
