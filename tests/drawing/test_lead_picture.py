"""The switch lead as drawn and told, against a truth table and against following the drawn lines."""

from __future__ import annotations

import math
import re
from dataclasses import fields, replace
from itertools import product

import pytest
import shapely

from magview.bench.actions import (
    ChooseLamp,
    FitJumper,
    PlaceMagneto,
    PullPlug,
    SetLeadFault,
    SlipPaper,
    SwitchIgnition,
    SwitchOther,
    TurnRotor,
    ViewSide,
)
from magview.bench.apply import apply
from magview.bench.apply_lead import with_fault
from magview.bench.lead_words import (
    lamp_words,
    lead_meter_words,
    lead_words,
    other_words,
    position_word,
    tab_words,
    terminal_meter_words,
)
from magview.bench.placing import new_bench
from magview.bench.state import circuit_now
from magview.drawing.lead_picture import CONTACTS_X, FOOT, HEIGHT, RAIL, WIDTH, lead_picture, shows_other
from magview.physics.electric.circuit import Lead
from magview.spec.library import find_installation, find_magneto
from tests.counts import THOROUGH

NAMES = [f.name for f in fields(Lead) if f.name != "switch"]
LEADS = [
    Lead(**dict(zip(NAMES, flags, strict=True)), switch=switch)
    for flags in product((False, True), repeat=len(NAMES))
    for switch in ("sound", "never-opens", "never-closes")
]
FEW = LEADS[:: 23 if THOROUGH else 97]
"""For what takes long: a stride that shares no factor with the order's powers of two and three."""
OPEN_DEG, CLOSED_DEG = 25.0, 60.0
"""Rotor angles of the seven-cylinder magneto on its first lobe, and between two."""

WITH_TAB = apply(new_bench(find_magneto("seven-radial")), TurnRotor(CLOSED_DEG))
TABS = {
    tab: replace(WITH_TAB, magneto=WITH_TAB.magneto.model_copy(update={"grounding_tab": tab}))
    for tab in (True, False, None)
}


def bench(lead, tab=True, rotor_deg=CLOSED_DEG):
    return replace(TABS[tab], lead=lead, rotor_deg=rotor_deg)


def grounds(lead, tab):
    """Common practice, each way by itself: (meant to ground, grounds by a fault)."""
    switch = not (lead.other_on if lead.crossed else lead.switch_on)
    switch = {"sound": switch, "never-opens": True, "never-closes": False}[lead.switch]
    through = lead.plug_in and not lead.broken and switch
    own_off = not lead.switch_on and not lead.crossed
    meant = lead.jumper or (not lead.plug_in and tab is True and lead.tab_touches and not lead.paper)
    meant = meant or (through and own_off)
    return meant, through or lead.shorted or (lead.plug_in and lead.chafed)


@pytest.mark.parametrize("tab", [True, False, None])
def test_it_is_dangerous_unless_something_grounds_it_that_is_meant_to(tab):
    for lead in LEADS:
        words, dangerous = lead_words(bench(lead, tab))
        meant, fault = grounds(lead, tab)
        assert dangerous == (not meant), lead
        assert words.startswith("Grounded") == (meant or fault), lead
        assert ("live" in words.lower()) == (not meant), lead
        if meant:
            assert "DANGER" not in words and "No spark" in words
            assert ("A short inside" in words) == lead.shorted
            assert ("chafed" in words) == (lead.plug_in and lead.chafed)
        elif fault:
            assert words.startswith("Grounded only by ") and "DANGER" in words
        elif lead.plug_in and lead.switch_on:
            assert words.startswith("Live: the switch is on.")
        else:
            assert words.startswith("DANGER: live ")
            assert ("tab" in words) == (not lead.plug_in)
            papered = not lead.plug_in and tab is True and lead.paper
            assert ("Put the jumper on" in words) == (not papered)  # a danger says what to do
            assert ("Take the paper out" in words) == papered
            assert ("broken inside" in words) == (lead.plug_in and lead.broken)


def test_what_pulling_the_lead_does_is_said_of_each_kind_and_silent_counts_as_live():
    assert "LIVE" not in tab_words(TABS[True].magneto)
    for tab in (False, None):
        assert "LIVE" in tab_words(TABS[tab].magneto) and "jumper" in tab_words(TABS[tab].magneto)
    assert "does not say" in tab_words(TABS[None].magneto)


def test_words_and_meter_promise_what_the_model_gives():
    for lead, tab, rotor in product(FEW, (True, False), (OPEN_DEG, CLOSED_DEG)):
        state = bench(lead, tab, rotor)
        now = circuit_now(state)
        if "the lamp sees “closed” whatever the contacts do" in lead_words(state)[0]:
            assert circuit_now(bench(lead, tab, OPEN_DEG)).lamp_sees_closed
        at_lead, at_terminal = lead_meter_words(state), terminal_meter_words(state)
        if lead.plug_in:
            assert "pull the plug" in at_lead
        else:
            assert at_lead.endswith(": no ground") == math.isinf(now.lead_ohm)
            assert at_lead.endswith("Ω, ground") == math.isfinite(now.lead_ohm)
        (ohm,) = re.findall(r"([\d.]+) Ω", at_terminal)
        assert ohm == f"{now.terminal_ohm:.1f}"
        alone = now.live and rotor == OPEN_DEG
        assert at_terminal.endswith("the winding alone" if alone else ", ground")


def test_a_winding_too_small_for_the_meter_is_not_told_from_ground():
    magneto = WITH_TAB.magneto
    small = magneto.model_copy(update={"electrical": magneto.electrical.model_copy(update={"resistance_ohm": 0.1})})
    assert "cannot tell" in terminal_meter_words(replace(bench(Lead(switch_on=True)), magneto=small))


@pytest.mark.parametrize("rotor_deg", [OPEN_DEG, CLOSED_DEG])
def test_the_lamp_is_lit_where_the_contacts_are_open_and_nothing_grounds_it(rotor_deg):
    for lead, tab in product(FEW, (True, False, None)):
        lit = lead_picture(bench(lead, tab, rotor_deg)).lamp_lit
        assert lit == (rotor_deg == OPEN_DEG and not any(grounds(lead, tab)))


# By common practice: lights burn on open or on closed, or buzz high on open; a plain lamp burns through the winding.
BURNS = {"open": (True, False), "closed": (False, True), "buzzer": (True, False), "plain": (True, True)}


@pytest.mark.parametrize("kind", BURNS)
def test_each_kind_of_light_burns_and_tells_as_it_is_made(kind):
    for lead, tab, rotor_deg in product(FEW, TABS, (OPEN_DEG, CLOSED_DEG)):
        state = apply(bench(lead, tab, rotor_deg), ChooseLamp(kind))
        sees_open = rotor_deg == OPEN_DEG and not any(grounds(lead, tab))
        assert lead_picture(state).lamp_lit == BURNS[kind][0 if sees_open else 1]
        told = lamp_words(state)
        assert told.endswith("cannot tell" if kind == "plain" else "so open" if sees_open else "so closed")
        assert ("high" if lead_picture(state).lamp_lit else "low") in told or kind != "buzzer"


def test_the_light_stays_in_hand_when_another_magneto_comes_to_the_bench():
    state = apply(WITH_TAB, ChooseLamp("closed"))
    assert WITH_TAB.lamp_kind == "open"
    assert apply(state, PlaceMagneto(find_magneto("seven-radial"))).lamp_kind == "closed"
    assert apply(state, SwitchIgnition(True)).lamp_kind == "closed"


def grounded_by_the_drawing(state):
    """Whether the drawn lines lead from the terminal to a ground, by neither coil nor contacts. What gaps are drawn
    is wider than the lines."""
    lines = [
        shapely.LineString(s.points).buffer(0.35)
        for s in lead_picture(state).strokes
        # Paper and a mark at the switch are no wires; a short and a chafe are.
        if len(s.points) > 2 or s.kind != "fault"
        if not (abs(s.points[:, 0] - CONTACTS_X) < 6).all()
        if not (len(s.points) == 5 and s.kind == "fault")
    ]
    net = next(p for p in shapely.get_parts(shapely.union_all(lines)) if p.distance(shapely.Point(34.0, RAIL)) < 1e-9)
    # The coil too leads to ground: cut off at its foot.
    grounds = [s.points for s in lead_picture(state).strokes if s.kind == "ground" and s.points[0][0] > 10.0]
    return any(net.distance(shapely.Point(points.mean(axis=0))) < 1e-9 for points in grounds)


@pytest.mark.parametrize("tab", [True, False])
def test_the_drawn_lines_lead_where_the_current_goes(tab):
    for lead in FEW:
        state = bench(lead, tab, OPEN_DEG)
        assert grounded_by_the_drawing(state) == circuit_now(state).grounded, lead


def test_the_contacts_are_drawn_as_they_stand_and_the_capacitor_apart():
    for rotor, closed in ((OPEN_DEG, False), (CLOSED_DEG, True)):
        lines = [
            shapely.LineString(s.points).buffer(0.35)
            for s in lead_picture(bench(Lead(switch_on=True), True, rotor)).strokes
        ]
        pieces = shapely.get_parts(shapely.union_all(lines))
        top, foot, plate = (
            next(i for i, p in enumerate(pieces) if p.distance(shapely.Point(at)) < 1e-9)
            for at in ((CONTACTS_X, RAIL - 5), (CONTACTS_X, FOOT + 2), (34.0, FOOT + 5))
        )
        coil_foot = next(i for i, p in enumerate(pieces) if p.distance(shapely.Point(8.0, FOOT + 1)) < 1e-9)
        assert (top == foot) == closed and coil_foot == top and plate != top


def test_faults_are_drawn_as_faults_and_everything_is_within_the_picture():
    for lead, tab in product(FEW, (True, False)):
        picture = lead_picture(bench(lead, tab))
        words = [word for word, _ in picture.words]
        for word, there in (
            ("broken inside", lead.broken), ("short", lead.shorted), ("chafed through", lead.chafed),
            ("leads crossed", lead.crossed), ("jumper", lead.jumper), ("paper", lead.paper and tab),
            ("never opens", lead.switch == "never-opens"), ("never closes", lead.switch == "never-closes"),
            ("grounding tab", tab), ("no grounding tab", not tab), ("capacitor", True),
            ("other magneto", shows_other(bench(lead, tab))),
        ):  # fmt: skip
            assert (word in words) == there
        faults = lead.broken + lead.shorted + lead.chafed + (lead.switch != "sound") + (lead.paper and tab)
        assert sum(s.kind == "fault" for s in picture.strokes) == faults
        for stroke in picture.strokes:
            assert (stroke.points >= 0.0).all() and (stroke.points <= (WIDTH, HEIGHT)).all()
        assert len({at for _, at in picture.words}) == len(words), "no two words in one place"
        assert ("grounding tab" in picture.anchors) == tab


def test_an_engine_of_two_magnetos_shows_the_switchs_position():
    left, right = (new_bench(find_installation(f"nine-radial-{side}")) for side in ("left", "right"))
    for own, other, at_left, at_right in (
        (False, False, "OFF", "OFF"), (True, False, "LEFT", "RIGHT"),
        (False, True, "RIGHT", "LEFT"), (True, True, "BOTH", "BOTH"),
    ):  # fmt: skip
        lead = Lead(switch_on=own, other_on=other)
        assert position_word(replace(left, lead=lead)) == f"switch at {at_left}"
        assert position_word(replace(right, lead=lead)) == f"switch at {at_right}"
    assert shows_other(left) and not shows_other(new_bench(find_installation("traced-six-single")))
    assert position_word(bench(Lead(switch_on=True))) == "switch on"


def test_jumper_paper_and_the_other_switch_are_acts_of_the_bench():
    state = TABS[True]
    assert apply(state, FitJumper(True)).lead.jumper and not apply(state, FitJumper(False)).lead.jumper
    assert apply(state, SlipPaper(True)).lead.paper and apply(state, SwitchOther(True)).lead.other_on
    stuck = with_fault(Lead(), "never-opens", True)
    assert with_fault(stuck, "never-closes", True).switch == "never-closes"
    assert with_fault(stuck, "never-closes", False) == stuck
    assert with_fault(stuck, "never-opens", False) == Lead()


def test_two_leads_go_to_one_switch_and_each_keeps_its_own_plug_and_jumper():
    state = new_bench(find_installation("nine-radial-left"))
    for action in (SwitchIgnition(True), PullPlug(True), FitJumper(True), SetLeadFault("crossed", True)):
        state = apply(state, action)
    assert position_word(state) == "switch at LEFT" and "LIVE" in other_words(state)
    right = apply(state, ViewSide("right"))
    assert position_word(right) == "switch at LEFT", "looking at the other magneto turns no switch"
    assert right.lead == Lead(other_on=True, crossed=True) and "LIVE" not in other_words(right)
    assert lead_words(right)[0].startswith("DANGER: live with its own switch off: the leads are crossed")
    assert "LIVE" in other_words(apply(right, ViewSide("left"))) and apply(right, ViewSide("left")) == state
    both = apply(apply(right, SwitchOther(True)), SwitchIgnition(True))
    assert position_word(both) == position_word(apply(both, ViewSide("left"))) == "switch at BOTH"
    assert other_words(TABS[True]) == ""
