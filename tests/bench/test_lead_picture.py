"""The switch lead as drawn and told, against a truth table and against following the drawn lines."""

from __future__ import annotations

from dataclasses import replace
from itertools import product

import pytest
import shapely

from magview.bench.actions import TurnRotor
from magview.bench.apply import apply, new_bench
from magview.bench.lead_picture import HEIGHT, WIDTH, lead_picture, lead_words, meter_words
from magview.physics.circuit import Lead
from magview.spec.library import find_magneto

LEADS = [Lead(*flags) for flags in product((False, True), repeat=5)]
OPEN_DEG, CLOSED_DEG = 25.0, 60.0
"""Rotor angles of the seven-cylinder magneto on its first lobe, and between two."""


def bench(lead, rotor_deg=CLOSED_DEG):
    return replace(apply(new_bench(find_magneto("seven-radial")), TurnRotor(rotor_deg)), lead=lead)


def way_to_ground(lead):
    """Common practice: switch off grounds through a whole lead; with the plug out the spring tab does."""
    return (not lead.switch_on and not lead.broken) if lead.plug_in else lead.tab_touches


@pytest.mark.parametrize("lead", LEADS)
def test_it_is_dangerous_unless_the_lead_itself_grounds_it(lead):
    words, dangerous = lead_words(bench(lead))
    assert dangerous == (not way_to_ground(lead))
    if way_to_ground(lead):
        assert words.startswith("Grounded by the switch" if lead.plug_in else "Grounded by the spring tab")
        assert ("short" in words) == lead.shorted
    elif lead.shorted:
        assert words.startswith("Grounded only by a short") and "DANGER" in words
    elif lead.plug_in and lead.switch_on:
        assert words.startswith("Live: the switch is on.")
    else:
        assert words.startswith("DANGER: live with the ")
        assert ("broken inside" in words) == lead.plug_in and ("tab does not touch" in words) == (not lead.plug_in)


@pytest.mark.parametrize("lead", LEADS)
def test_the_meter_reads_the_lead_alone_and_only_with_the_plug_out(lead):
    words = meter_words(bench(lead))
    if lead.plug_in:
        assert "pull the plug" in words
    else:
        assert words.endswith(": no ground") == (lead.switch_on or lead.broken)


@pytest.mark.parametrize("lead", LEADS)
@pytest.mark.parametrize("rotor_deg", [OPEN_DEG, CLOSED_DEG])
def test_the_lamp_is_lit_where_nothing_grounds_it(lead, rotor_deg):
    lit = lead_picture(bench(lead, rotor_deg)).lamp_lit
    assert lit == (rotor_deg == OPEN_DEG and not way_to_ground(lead) and not lead.shorted)


def joined(picture, one, other):
    """Whether drawn wires and parts lead from one point to another; what gaps are drawn is wider than the lines."""
    lines = [shapely.LineString(s.points).buffer(0.6) for s in picture.strokes if s.kind in ("wire", "part")]
    pieces = shapely.get_parts(shapely.union_all(lines))
    a, b = (next(i for i, p in enumerate(pieces) if p.distance(shapely.Point(at)) < 1e-9) for at in (one, other))
    return a == b


@pytest.mark.parametrize("lead", LEADS)
@pytest.mark.parametrize("rotor_deg", [OPEN_DEG, CLOSED_DEG])
def test_the_drawn_lines_lead_where_the_current_goes(lead, rotor_deg):
    picture = lead_picture(bench(lead, rotor_deg))
    coil, contacts, switch = (12.0, 46.0), (26.0, 10.0), (84.0, 10.0)
    assert joined(picture, coil, contacts) == (rotor_deg == CLOSED_DEG)
    assert joined(picture, coil, switch) == (lead.plug_in and not lead.switch_on and not lead.broken)


@pytest.mark.parametrize("lead", LEADS)
def test_faults_are_drawn_as_faults_and_everything_is_within_the_picture(lead):
    picture = lead_picture(bench(lead))
    words = [word for word, _ in picture.words]
    assert ("broken inside" in words) == lead.broken and ("short" in words) == lead.shorted
    assert ("switch on" in words) == lead.switch_on and ("switch off" in words) != lead.switch_on
    assert sum(s.kind == "fault" for s in picture.strokes) == lead.broken + lead.shorted
    # Three grounds of three strokes each, and the short's own.
    assert sum(s.kind == "ground" for s in picture.strokes) == 9 + 3 * lead.shorted
    for stroke in picture.strokes:
        assert (stroke.points >= 0.0).all() and (stroke.points <= (WIDTH, HEIGHT)).all()
    assert len({at for _, at in picture.words}) == len(words), "no two words in one place"


def test_the_spring_tab_reaches_the_case_only_with_the_plug_out():
    def on_the_wall(lead):
        (tab,) = [
            s for s in lead_picture(bench(lead)).strokes if s.kind == "part" and tuple(s.points[0]) == (40.0, 44.0)
        ]
        return tab.points[-1][0] == 40.0

    assert on_the_wall(Lead(plug_in=False))
    assert not on_the_wall(Lead()) and not on_the_wall(Lead(plug_in=False, tab_touches=False))
