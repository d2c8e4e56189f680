"""Next act for a measured setting, held against settings whose truth the program does not see."""

from __future__ import annotations

from collections import Counter

import numpy as np
import pytest

from magview.bench.next_act import Act, act_words, least_chance, next_act
from magview.physics.uncertainty.instruments import instrument
from magview.physics.uncertainty.measurement import judge, judge_linear
from magview.physics.uncertainty.setting_uncertainty import InternalReadings, internal_measurement
from magview.spec.library import find_magneto
from tests.benchmarks.next_act import COARSE, USUAL, read
from tests.wording import says

MAGNETO = find_magneto("seven-radial")


def test_left_alone_is_within_limits_nineteen_times_in_twenty_and_set_again_is_mostly_out():
    """400 settings: a share of 0.95 would be found below 0.90 among 130 or more less than once in 200 times."""
    rng, told, within = np.random.default_rng(11), Counter(), Counter()
    for _ in range(400):
        measurement, truth = read(rng, MAGNETO, USUAL)
        act = next_act(measurement, judge_linear(measurement)).act
        told[act] += 1
        within[act] += truth
    assert told[Act.LEAVE] > 40 and told[Act.SET] > 100
    assert within[Act.LEAVE] / told[Act.LEAVE] >= 0.90
    assert within[Act.SET] / told[Act.SET] <= 0.35, "more often out than within"


def test_finer_instruments_are_named_where_they_would_settle_it():
    middle = InternalReadings(0.0, 0.3, instruments=tuple(instrument(key) for key in COARSE))
    measurement = internal_measurement(MAGNETO, middle)
    found = next_act(measurement, judge_linear(measurement))
    assert found.act is Act.READ_AGAIN and found.tools
    for tool in found.tools:
        measurement = measurement.using(tool)
        assert tool.name in act_words(found)
    assert least_chance(judge_linear(measurement)) >= 0.95
    assert next_act(measurement, judge_linear(measurement)).act is Act.LEAVE


def test_a_reading_at_the_limit_is_set_nearer_to_the_middle():
    """Half of what is true of it lies beyond, however finely it is read."""
    finest = ("magnifier", "straightedge-clamped", "blades-0.01mm", "drag-compared", "lamp", "rotor-bar", "led-in",
              "after-tightening")  # fmt: skip
    low, high = MAGNETO.gap_limits_mm
    tools = tuple(instrument(key) for key in finest)
    at_limit = InternalReadings(0.0, high - 0.0051, instruments=tools)
    measurement = internal_measurement(MAGNETO, at_limit)
    found = next_act(measurement, judge_linear(measurement))
    assert found.act is Act.SET_NEARER and found.weakest.quantity.key == "gap"
    assert act_words(found) == says(
        "{name}: limits {low} to {high}. Finer instruments would not settle it.",
        name="Largest gap", low=f"{low:.3f} mm", high=f"{high:.3f} mm",
    )  # fmt: skip


def test_the_floor_of_the_chance_is_never_above_what_is_drawn():
    rng = np.random.default_rng(3)
    for _ in range(10):
        measurement, _ = read(rng, MAGNETO, USUAL)
        drawn = judge(measurement, np.random.default_rng(1), 5000)
        assert least_chance(judge_linear(measurement)) <= drawn.probability_in_limits + 0.03, "linear is not exact"
    assert least_chance(()) == pytest.approx(1.0)
