"""What is said of a setting out of limits, set out of them by known amounts."""

from __future__ import annotations

import math

import numpy as np
import pytest

from magview.bench.actions import TurnBackplate, TurnScrew, WearHeel
from magview.bench.apply import apply
from magview.bench.placing import new_bench
from magview.bench.state import readings
from magview.bench.verdict import blade_words, faults, judged_words, mark_words, never_words
from magview.spec.breaker import EccentricScrew
from magview.spec.library import find_magneto, shipped_names
from tests.magnetos import build, plain
from tests.wording import says


def bench(name, **condition):
    magneto = find_magneto(name)
    return new_bench(magneto.model_copy(update={"condition": magneto.condition.model_copy(update=condition)}))


def found(state):
    return faults(state.magneto, readings(state))


@pytest.mark.parametrize("name", shipped_names("magnetos"))
def test_a_magneto_as_designed_has_no_fault(name):
    assert found(bench(name)) == []


def test_the_plate_alone_puts_every_opening_out_and_leaves_the_gap():
    """3° at the 36 mm rim is 36·tan 3° = 1.9 mm beside the mark; 0.79 mm is allowed."""
    assert found(apply(bench("seven-radial"), TurnBackplate(3.0))) == [says("opening of every lobe")]


def test_one_lobe_out_of_its_place_is_named():
    assert found(bench("seven-radial", lobe_angle_error_deg=(0.0, 2.0, 0.0, 0.0))) == ["opening of lobe 2"]
    assert found(bench("seven-radial", lobe_angle_error_deg=(0.0, 2.0, 0.0, -2.0))) == [
        says("opening of lobe {lobes}", lobes="2, 4")
    ]


def test_one_lobe_too_high_has_its_gap_named_and_all_have_theirs_in_one():
    # 0.03 mm more on lobe 3: 0.2286 + 0.03 is above 0.254 mm, the most allowed.
    assert "gap of lobe 3" in found(bench("seven-radial", lobe_lift_error_mm=(0.0, 0.0, 0.04, 0.0)))
    # Heel wear w takes w·27.5/17 off each gap: 0.02 mm leaves 0.196 mm, below 0.2032 mm.
    assert "gap of every lobe" in found(apply(bench("seven-radial"), WearHeel(0.02)))


def test_a_compensated_cam_is_judged_on_lobe_1_and_never_said_to_be_wrong_on_every_lobe():
    """Common practice: the lobes of a compensated cam stand apart by design; only No. 1's opening is set."""
    nine = bench("nine-radial")
    assert found(apply(nine, TurnBackplate(2.0))) == ["opening of lobe 1"]
    others = (0.0, 3.0, *(0.0,) * 7)
    assert found(bench("nine-radial", lobe_angle_error_deg=others)) == []
    assert "lobe 1" in judged_words(nine.magneto)
    assert judged_words(find_magneto("seven-radial")) == ""


def test_a_cam_with_one_lobe_speaks_of_that_lobe():
    one = build(poles=2, cam={**plain()["cam"], "turns_per_rotor_turn": 2.0, "lobe_peaks_deg": (0.0,)})
    state = apply(new_bench(one), TurnBackplate(6.0))
    assert found(state) == ["opening of lobe 1"]
    assert found(apply(new_bench(one), WearHeel(0.2)))[-1] == "gap of lobe 1"


def test_contacts_that_never_open_stay_closed_and_those_that_never_close_stay_open():
    state = bench("seven-radial")
    assert never_words(readings(state)) == ""
    worn = apply(state, WearHeel(0.5))  # 0.81 mm of lift lost, of 0.58 mm there are
    assert never_words(readings(worn), 2) == says("never: they stay closed")
    screw = state.magneto.contact_screw
    assert isinstance(screw, EccentricScrew)
    wide = state.magneto.model_copy(update={"contact_screw": screw.model_copy(update={"throw_mm": 2.0})})
    assert never_words(readings(apply(new_bench(wide), TurnScrew(-60.0)))) == says("never: they stay open")


def test_the_straightedges_side_of_the_mark():
    assert mark_words("1/32 in", 0.79) == "1/32 in past"
    assert mark_words("1/32 in", -0.79) == "1/32 in short"
    assert mark_words("0.000 mm", 0.0004) == "0.000 mm", "no side where nothing is to be seen"
    assert mark_words("x", math.nan) == "–"
    assert np.isnan(readings(apply(bench("seven-radial"), WearHeel(0.5))).mark_offset_mm)


@pytest.mark.parametrize(("pip_mm", "short"), [(0.0, False), (0.02, False), (0.05, True)])
def test_a_pip_that_makes_the_blade_read_too_little_is_said(pip_mm, short):
    """By hand: 0.330 mm less 0.050 mm is 0.280 mm by blades, and 0.300 mm is the least allowed."""
    state = bench("seven-radial", pip_height_mm=pip_mm)
    assert found(state) == []
    said = blade_words(state.magneto, readings(state))
    assert said.startswith("✗ By blades the gap of lobe 1, 2, 3, 4 is too small") if short else said == ""
