"""What instruments would read of a bench, and how sure that is, in words: divisions and blades counted by hand."""

from __future__ import annotations

import math
import re

import numpy as np
import pytest

from magview.bench.actions import TurnBackplate, WearHeel
from magview.bench.apply import apply
from magview.bench.placing import new_bench
from magview.bench.sureness import (
    ENGINE_ROLES,
    INTERNAL_ROLES,
    ROLE_WORDS,
    improvement_words,
    matters_words,
    outcome_words,
    percent_words,
    read_engine,
    read_internal,
    tool_for,
    value_words,
)
from magview.physics.uncertainty.instruments import INSTRUMENTS, instrument
from magview.physics.uncertainty.measurement import improve, judge_linear
from magview.physics.uncertainty.setting_uncertainty import engine_measurement, internal_measurement
from magview.spec.base import SpecError
from magview.spec.language import lengths_in
from magview.spec.library import find_installation
from tests.magnetos import in_thousandths, on_the_published_coupling


@pytest.fixture
def bench():
    return new_bench(in_thousandths())


@pytest.fixture
def engaged():
    return new_bench(on_the_published_coupling())


def test_without_a_choice_it_is_the_coarsest_instrument():
    for role in (*INTERNAL_ROLES, *ENGINE_ROLES):
        widest = max(i.half_width for i in INSTRUMENTS if i.role == role)
        assert tool_for(role, ()).half_width == widest
        assert role in ROLE_WORDS
    assert tool_for("rule", [instrument("disc-1deg"), instrument("rule-64ths")]).key == "rule-64ths"


def test_a_straightedge_is_read_to_the_division_and_a_gap_by_the_blade_that_passes(bench):
    """1.5° late at the 36 mm rim is 36·tan 1.5° = 0.943 mm; the gap stays the designed 0.2286 mm."""
    late = apply(bench, TurnBackplate(1.5))
    coarse = read_internal(late, ())
    assert (coarse.mark_offset_mm, coarse.blade_mm) == (1.0, 0.2), "whole millimetres, blades each 0.05 mm"
    tools = [instrument(key) for key in ("magnifier", "blades-0.01mm")]
    fine = read_internal(late, tools)
    assert (fine.mark_offset_mm, fine.blade_mm) == (pytest.approx(0.9), pytest.approx(0.22))
    assert set(tools) < set(fine.instruments) and len(fine.instruments) == len(INTERNAL_ROLES)
    thou = read_internal(late, [instrument("blades-thou")])
    assert thou.blade_mm == pytest.approx(9 * 0.0254), "a gap of exactly nine thou lets nine thou pass"


def test_contacts_that_never_open_cannot_be_read(bench, engaged):
    for read, state in ((read_internal, bench), (read_engine, engaged)):
        with pytest.raises(SpecError, match="never open and close"):
            read(apply(state, WearHeel(0.5)), ())


def test_the_disc_is_read_to_its_division_at_both_magnetos(engaged):
    """1° of plate is 1° of rotor later (cam on its shaft), 1/0.875 of crank: 25 − 1.143 = 23.857° on both."""
    late = apply(engaged, TurnBackplate(1.0))
    assert (read_engine(late, ()).left_deg, read_engine(late, ()).right_deg) == (24.0, 24.0)
    fine = read_engine(late, [instrument("disc-tenth-deg")])
    assert fine.left_deg == pytest.approx(23.9)
    assert fine.gap_mm == pytest.approx(0.2286)
    single = read_engine(new_bench(find_installation("traced-six-single")), ())
    assert single.right_deg is None, "there is no second magneto to read"


def test_the_engine_cannot_be_read_where_there_is_none(bench):
    with pytest.raises(SpecError, match="not on an engine"):
        read_engine(bench, ())


def test_the_engines_readings_are_judged_as_they_were_taken(engaged):
    found = judge_linear(engine_measurement(engaged.engaged.installation, read_engine(engaged, ())))
    assert outcome_words(found[0]).startswith("Left magneto fires: ")
    assert "25.00°" not in outcome_words(found[0]), "the lamp answers late and the play is not taken up"


def test_values_have_as_many_places_as_such_a_measurement():
    assert value_words(0.2286, "mm") == "0.229 mm"
    lengths_in("in")
    assert value_words(0.2286, "mm") == "0.0090 in"
    assert value_words(-0.001, "deg") == "0.00°"


@pytest.mark.parametrize(
    ("probability", "words"),
    [(0.0, "under 1 %"), (0.004, "under 1 %"), (0.006, "1 %"), (0.5, "50 %"), (0.994, "99 %"), (0.996, "over 99 %"),
     (1.0, "over 99 %")],
)  # fmt: skip
def test_nothing_is_said_to_be_impossible_or_certain(probability, words):
    assert percent_words(probability) == words


def test_a_quantity_is_told_with_its_spread_limits_and_chance(bench):
    """Nine thou pass, ten do not: the gap is most likely 9.5 thou = 0.241 mm; 0.203 to 0.254 mm are allowed."""
    tools = [instrument(key) for key in ("blades-thou", "after-tightening", "led-in", "lamp")]
    opening, gap = judge_linear(internal_measurement(bench.magneto, read_internal(bench, tools)))
    words = outcome_words(gap)
    assert "0.241 mm ±" in words and "limits 0.203 mm to 0.254 mm" in words and words[0].isupper()
    lengths_in("in")
    assert "0.0095 in ±" in outcome_words(gap)
    assert words.endswith(f"{percent_words(gap.probability_in_limits)} likely within them.")
    # Of the opening's readings (half-widths of rectangles, so their squares compare): the rule to 1 mm ±0.5 mm and
    # the straightedge ±0.2 mm at 36 mm, hands ±0.25°, and next to nothing by the lamp.
    rule, edge = math.degrees(0.5 / 36.0), math.degrees(0.2 / 36.0)
    share = 100 * rule**2 / (rule**2 + edge**2 + 0.25**2)
    found = re.fullmatch(r"What matters most: straightedge from the mark, (\d+) % of .* \(rule to 1 mm: .*\)\.",
                         matters_words(opening))  # fmt: skip
    assert found is not None and float(found[1]) == pytest.approx(share, abs=1.5)


def test_a_better_instrument_is_told_by_name_with_both_chances(bench):
    measurement = internal_measurement(bench.magneto, read_internal(bench, ()))
    found = improve(measurement, np.random.default_rng(1), 2000, instead=instrument("magnifier"))
    words = improvement_words(found)
    assert words.startswith("With magnifier with a scale to 0.1 mm instead of rule to 1 mm: ")
    after, before = found.after.probability_in_limits, found.before.probability_in_limits
    assert words.endswith(f"{percent_words(after)} likely all in limits, now {percent_words(before)}.")
