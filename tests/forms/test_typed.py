"""What people type, for every number of every model: read back as written, refused with an example that is taken."""

from __future__ import annotations

import re

import pytest
from hypothesis import given
from hypothesis import strategies as st

from magview.classroom.sets import ClassSet
from magview.forms.entry import NUMERIC, Kind, entries_of, entry_of
from magview.forms.typed import allowed, bounds, outside, read, rounded, unit_words, written
from magview.job.checklists import Closing
from magview.job.entries import entries_in
from magview.job.parts import Limits, ReadingErrors
from magview.job.sheet import STAGES, Job
from magview.job.stages import AsFound, DeadCentre, InternalTiming, TrialRecord
from magview.practice.exercise import Exercise
from magview.practice.exercise_parts import Fault, Goal, Tray
from magview.spec.base import SpecError
from magview.spec.engine import Engine, Installation
from magview.spec.fields import parts_of
from magview.spec.limits import LimitsCard
from magview.spec.magneto import Magneto
from tests.wording import says

FILES = [entry for model in (Magneto, Engine, Installation) for entry in entries_of(model).values()]
STAGE_MODELS = [parts_of(Job.model_fields[name].annotation)[0] for name in STAGES]
SHEET = [entry for model in (*STAGE_MODELS, Limits, ReadingErrors) for entry in entries_in("part", model)]
CLASS = [entry_of(model, name) for model in (Exercise, Fault, Goal, Tray, ClassSet) for name in model.model_fields
         if name != "format"]  # fmt: skip
NUMBERS = [e for e in (*FILES, *SHEET, *CLASS) if e.kind in (Kind.NUMBER, Kind.WHOLE)]

_OF_NOTHING_THAT_TURNS = ("breaker.pivot_bearing_deg", "articulation.knuckle_angles_deg")
"""Directions in which a part stands."""


def inside(entry):
    """Numbers that an entry takes."""
    found = bounds(entry)
    low, high = found.get("ge", found.get("gt", -400.0)), found.get("le", found.get("lt", 400.0))
    if entry.kind is Kind.WHOLE:
        return st.integers(int(low), int(high))
    return st.floats(low, high, exclude_min="gt" in found, exclude_max="lt" in found)


@given(st.data())
def test_what_is_written_exactly_is_read_as_the_same(data):
    entry = data.draw(st.sampled_from(NUMBERS))
    value = data.draw(inside(entry))
    assert read(entry, written(entry, value)) == pytest.approx(value, rel=1e-9, abs=1e-12)


@given(st.data(), st.booleans())
def test_what_is_shown_rounded_is_read_as_near_as_it_is_shown(data, inches):
    entry = data.draw(st.sampled_from([e for e in NUMBERS if e.quantity.scale == 1.0]))
    value = data.draw(inside(entry))
    # Half of the last digit shown: 0.0001 mm or in, 0.01°.
    near = 0.006 if entry.is_angle else 0.0013 if inches and entry.is_length else 0.00006
    assert read(entry, rounded(entry, value, inches), inches) == pytest.approx(value, rel=1e-9, abs=near)


@pytest.mark.parametrize("entry", [e for e in NUMBERS if "le" in bounds(e)], ids=lambda e: e.path)
@pytest.mark.parametrize("inches", [False, True])
def test_a_number_out_of_bounds_is_refused_with_the_bounds_and_an_example_that_is_taken(entry, inches):
    most = bounds(entry)["le"]
    assert outside(entry, most, inches) == ""
    told = outside(entry, type(most)(most + 1), inches)
    assert rounded(entry, most, inches) in told
    example = read(entry, told.rpartition("such as ")[2], inches)
    assert outside(entry, example, inches) == "", told


@pytest.mark.parametrize("entry", NUMBERS, ids=lambda e: e.path)
def test_what_is_no_number_is_refused_with_an_example_that_is_taken(entry):
    with pytest.raises(SpecError, match="“wide”") as caught:
        read(entry, "wide")
    example = re.search(r"such as ([^,]*?)(?:,| or |$)", str(caught.value))[1]
    assert isinstance(read(entry, example), float | int)


@pytest.mark.parametrize("entry", NUMBERS, ids=lambda e: e.path)
def test_nothing_is_not_read(entry):
    assert read(entry, "") is None and read(entry, "  ") is None and written(entry, None) == ""


def test_every_entry_is_of_a_kind_and_has_its_choices():
    for entry in (*FILES, *SHEET, *CLASS):
        assert entry.kind in Kind and entry.label
        if entry.kind in (Kind.CHOICE, Kind.CHOICES):
            assert entry.choices and all(isinstance(words, str) and words for _, words in entry.choices)
        if entry.kind in NUMERIC and entry.unit == "°" and entry.path not in _OF_NOTHING_THAT_TURNS:
            assert entry.quantity.of or entry.end is not None, f"{entry.path}: degrees of what?"


@pytest.mark.parametrize(
    ("model", "name", "kind"),
    [
        (AsFound, "gap_mm", Kind.NUMBER), (AsFound, "finger_at_no_1", Kind.CHOICE),
        (DeadCentre, "stroke", Kind.CHOICE), (Closing, "pins_fitted", Kind.TICK),
        (AsFound, "note", Kind.TEXT), (AsFound, "by", Kind.LINE),
        (InternalTiming, "trials", Kind.ROWS), (InternalTiming, "uncertainty", Kind.TOLD), (Job, "day", Kind.DAY),
        (Job, "invented", Kind.TICK), (Exercise, "hints", Kind.TEXTS), (Exercise, "dressing_allowed", Kind.CHOICES),
        (Exercise, "faults", Kind.ROWS), (Engine, "firing_order", Kind.WHOLES), (Installation, "engine", Kind.FILE),
    ],
)  # fmt: skip
def test_the_kind_of_entry_follows_from_the_model(model, name, kind):
    assert entry_of(model, name).kind is kind


@pytest.mark.parametrize(
    ("model", "name", "text", "value"),
    [
        (AsFound, "opening_error_deg", "1,5° early", -1.5), (AsFound, "mark_offset_mm", "0.8 late", 0.8),
        (AsFound, "left_btdc_deg", "3 ATDC", -3.0), (Job, "day", "25 Nov 2026", "2026-11-25"),
        (Fault, "chance", "35 %", 0.35), (TrialRecord, "gap_low_mm", "9 thou", 0.2286),
    ],
)  # fmt: skip
def test_entries_are_read_with_their_unit_and_side(model, name, text, value):
    found = read(entry_of(model, name), text)
    assert found == (value if isinstance(value, str) else pytest.approx(value))


@pytest.mark.parametrize(
    ("text", "values"),
    [
        ("0.30 to 0.36", (0.30, 0.36)), ("0.30-0.36 mm", (0.30, 0.36)), ("0,30–0,36", (0.30, 0.36)),
        ("0.30mm - 0.36mm", (0.30, 0.36)), ("12thou-14thou", (0.3048, 0.3556)), ("0.3; 0.36", (0.30, 0.36)),
    ],
)  # fmt: skip
def test_a_range_is_read_as_manuals_write_it(text, values):
    assert read(entry_of(LimitsCard, "gap_limits_mm"), text) == pytest.approx(values)


def test_a_sign_within_a_list_is_no_range():
    assert read(entries_of(Magneto)["cam.lobe_peaks_deg"], "0 -2") == (0.0, -2.0)


def test_unit_and_way_stand_in_the_label():
    assert unit_words(entry_of(AsFound, "mark_offset_mm"), inches=True) == "in, + late"
    assert unit_words(entry_of(AsFound, "left_btdc_deg")) == says("crank ° before top dead centre")
    assert unit_words(entry_of(AsFound, "backplate_deg")) == says("°, + with rotation")
    assert allowed(entry_of(Fault, "chance")) == says("Allowed: above {low}, up to {high}.", low="0 %", high="100 %")
