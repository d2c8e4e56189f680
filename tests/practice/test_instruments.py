"""Instruments read like real ones: rounded, gripped, leant over, and fooled by a grounded coil."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from magview.bench import actions as bench
from magview.bench.blades import thickness_mm
from magview.bench.state import crank_deg
from magview.practice import actions as do
from magview.practice import contacts, instruments
from magview.practice.apply import apply
from magview.practice.faults import begin
from magview.practice.library import find_exercise
from magview.practice.state import Practice
from magview.spec.base import SpecError
from tests.wording import says


def room(name: str, seed: int = 1, **start: object) -> Practice:
    return replace(begin(find_exercise(name), seed), **start)


def acted(practice: Practice, *acts: do.Act) -> Practice:
    for act in acts:
        practice = apply(practice, act)
    return practice


def rotor_at(practice: Practice, deg: float) -> Practice:
    return replace(practice, bench=replace(practice.bench, rotor_deg=deg))


# ---------------------------------------------------------------------- straightedge


@given(st.floats(-20.0, 20.0), st.floats(-25.0, 25.0))
def test_straightedge_reads_whole_divisions_of_the_rim_with_parallax(away, eye):
    """Rim radius 36 mm, E-gap 11°, divisions of 0.5 mm; the edge lies 2 mm above the rim: plane trigonometry.

    An eye ahead reads short: reading = true − height · tan of the eye's angle. The room counts from behind.
    """
    practice = replace(rotor_at(room("find-the-e-gap"), 11.0 + away), edge_laid=True, eye_deg=-eye)
    true = 36.0 * math.tan(math.radians(away)) - 2.0 * math.tan(math.radians(eye))
    said = instruments.straightedge(practice)
    assert said.value == int(said.value)
    assert abs(said.value * 0.5 - true) <= 0.25 + 1e-9
    side = "in line" if said.value == 0 else ("past" if said.value > 0 else "short")
    assert side in said.text


def test_half_millimetre_marks_and_what_is_out_of_sight():
    practice = replace(room("when-do-they-open"), edge_laid=True, eye_deg=0.0)
    # 32 mm rim: 2° are 1.117 mm, which is two divisions of half a millimetre.
    assert instruments.straightedge(rotor_at(practice, 15.0)).text == says(
        "{size} {unit} past the mark (mark {mark})", size=1, unit="mm", mark=1
    )
    assert instruments.straightedge(rotor_at(practice, 193.0)).text == says(
        "in line with the mark (mark {mark})", mark=2
    )
    assert instruments.straightedge(rotor_at(practice, 13.0 + 80.0)).value is None
    assert instruments.straightedge(replace(practice, edge_laid=False)).text == "not laid on"


def test_whoever_lays_it_on_leans_to_one_side_until_he_looks_square():
    practice = acted(room("find-the-e-gap"), do.LayStraightedge(True))
    assert 12.0 <= abs(practice.eye_deg) <= 25.0
    assert acted(practice, do.Sight(0.0)).eye_deg == 0.0


# ---------------------------------------------------------------------- lamp, meter


def test_a_grounded_primary_looks_closed_to_the_lamp():
    practice = acted(room("when-do-they-open"), do.ConnectLamp(True), do.TurnUntil("widest"))
    assert instruments.lamp(practice).text == "dark"  # the switch is off
    burning = instruments.lamp(acted(practice, bench.SwitchIgnition(True)))
    assert (burning.text, burning.plain) == (says("lit"), "light"), "files and rules keep their word"
    assert instruments.lamp(acted(practice, bench.PullPlug(True))).text == "dark"  # the tab grounds it
    assert instruments.lamp(acted(practice, bench.PullPlug(True), bench.SlipPaper(True))).text == "lit"
    assert instruments.lamp(acted(practice, do.ConnectLamp(False))).text == "not connected"


@pytest.mark.parametrize(
    ("broken", "switch_on", "says"),
    [(False, False, "ground"), (False, True, "no ground"), (True, False, "no ground"), (True, True, "no ground")],
)
def test_the_meter_sees_lead_and_switch(broken, switch_on, says):
    practice = room("switch-lead")
    lead = replace(practice.bench.lead, broken=broken, switch_on=switch_on, plug_in=False)
    practice = replace(practice, bench=replace(practice.bench, lead=lead))
    assert instruments.meter(practice).text == says
    assert acted(practice, do.MeterLead()).seat.proved == (says == "ground" and not switch_on)
    with pytest.raises(SpecError, match="pull the plug"):
        instruments.meter(replace(practice, bench=replace(practice.bench, lead=replace(lead, plug_in=True))))


# ---------------------------------------------------------------------- blades


def with_gap(gap_mm: float, pip_mm: float = 0.0) -> Practice:
    """The magneto set to a gap by its own closed form, widest open, with a pip on the contacts."""
    practice = acted(room("measure-the-gap"), bench.TightenLock(False))
    condition = practice.bench.magneto.condition.model_copy(update={"pip_height_mm": pip_mm})
    magneto = practice.bench.magneto.model_copy(update={"condition": condition})
    screw = -math.degrees(math.asin((gap_mm - 0.33) / 0.5))  # designed for 0.33 mm at 0°, throw 0.5 mm
    state = replace(practice.bench, magneto=magneto, screw_deg=screw)
    return acted(replace(practice, bench=state), do.TurnUntil("widest"))


def test_go_drag_no_go():
    """A gap of 0.240 mm: 9 thou = 0.2286 mm goes with 0.0114 mm to spare, 10 thou = 0.254 mm does not."""
    practice = with_gap(0.240)
    assert instruments.blades(practice, "inch", (9,)).text == "go"
    assert instruments.blades(practice, "inch", (10,)).text == "no-go"
    assert instruments.blades(practice, "metric", (0.09, 0.15)).text == "no-go"  # 0.242 with the film between them
    assert instruments.blades(practice, "metric", (0.08, 0.15)).text == "drag"  # 0.232
    assert instruments.blades(practice, "metric", (0.25,)).text == "no-go"


def test_a_pip_is_in_the_way():
    assert instruments.blades(with_gap(0.260, pip_mm=0.05), "inch", (9,)).text == "no-go"
    clean = acted(with_gap(0.260, pip_mm=0.05), do.DressContacts())
    assert instruments.blades(clean, "inch", (9,)).text == "go"
    assert contacts.look(clean).text == "clean and flat"
    assert "pip" in contacts.look(with_gap(0.260, pip_mm=0.05)).text


@pytest.mark.parametrize(
    ("kind", "stack"), [("inch", (11,)), ("inch", (9, 9)), ("inch", ()), ("inch", (2, 3, 4, 5)), ("brass", (1,))]
)
def test_a_set_has_the_blades_it_has(kind, stack):
    with pytest.raises(SpecError):
        thickness_mm(kind, stack)


def test_thickness_of_a_stack():
    """1 thou = 0.0254 mm exactly (international yard and pound agreement, 1959); 2 µm of film a joint."""
    assert thickness_mm("inch", (9,)) == pytest.approx(0.2286, abs=1e-12)
    assert thickness_mm("inch", (1.5, 7)) == pytest.approx(8.5 * 0.0254 + 0.002, abs=1e-12)
    assert thickness_mm("metric", (0.1, 0.15, 0.05)) == pytest.approx(0.304, abs=1e-12)


# ---------------------------------------------------------------------- engine


@given(st.floats(-400.0, 400.0), st.floats(-30.0, 30.0))
def test_the_disc_reads_quarter_degrees_before_its_own_zero(crank, error):
    practice = begin(find_exercise("true-dead-centre"), 1)
    engaged = practice.bench.engaged
    assert engaged is not None
    state = replace(practice.bench, engaged=replace(engaged, off_crank_deg=crank))
    value = instruments.disc(replace(practice, bench=state, disc_error_deg=error)).value
    assert value is not None and (value * 4).is_integer()
    away = (value - (error - crank) + 180.0) % 360.0 - 180.0
    assert abs(away) <= 0.125 + 1e-9


def test_the_stop_method_finds_dead_centre_to_the_discs_reading():
    """Half-way between the two stops is top dead centre, of a rod on the crank pin exactly (common practice)."""
    for seed in range(10):
        practice = acted(room("true-dead-centre", seed), do.Chock(True), do.SparkPlugs(True))
        while not practice.stop_fitted:
            try:
                practice = acted(practice, do.FitStop(True))
            except SpecError:
                practice = acted(practice, do.TurnPropeller(90.0))
        readings = []
        for forward in (True, False):
            practice = acted(practice, do.TurnUntil("stop", forward))
            readings.append(instruments.true_disc_deg(practice))
            stopped = crank_deg(practice.bench)
            assert crank_deg(acted(practice, do.TurnPropeller(5.0 if forward else -5.0)).bench) == stopped
        half = sum(readings) / 2 + (180.0 if abs(readings[0] - readings[1]) > 180.0 else 0.0)
        assert (half - practice.disc_error_deg + 180.0) % 360.0 - 180.0 == pytest.approx(0.0, abs=0.01)


def test_finger_and_compression_tell_the_stroke():
    """Firing order 1-3-2-4, two sparks a crank turn: at its firing point 24° before top dead centre No. 1's electrode
    is under the finger on compression, No. 2's on exhaust."""
    practice = acted(begin(find_exercise("true-dead-centre"), 2), do.Chock(True), do.SparkPlugs(True))
    crank = crank_deg(practice.bench)
    firing = acted(practice, do.TurnPropeller(-24.0 - crank))
    assert instruments.finger(firing).value == 1.0
    assert instruments.compression(firing).text.startswith("pressure")
    round_once = acted(firing, do.TurnPropeller(360.0))
    assert instruments.finger(round_once).value == 2.0
    assert instruments.compression(round_once).text == "no pressure"
    with pytest.raises(SpecError, match="plug"):
        instruments.compression(replace(firing, plugs_out=False))
