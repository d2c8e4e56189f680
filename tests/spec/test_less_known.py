"""Files that leave parts out: known by the manual only, adjusted without a toothed disc, with an impulse coupling."""

from __future__ import annotations

import json
from typing import Any

import pytest

from magview.bench.drive_words import adjusted_words, impulse_words
from magview.bench.placing import new_bench
from magview.bench.state import firing_btdc_deg, shift_deg
from magview.bench.timing import both_plan, timing_plan
from magview.own.drafts import Draft, asked, draft_of, file_data, needed
from magview.physics.cam.setting import internal_timing
from magview.spec.base import SpecError
from magview.spec.engine import Installation
from magview.spec.files import dump_json, parse_json, validate
from magview.spec.json_schema import schema_of
from magview.spec.library import find_installation, find_magneto, shipped_names
from magview.spec.magneto import Magneto
from magview.spec.manual import LEFT_OUT
from tests.magnetos import by_manual

SLOTS = {"kind": "slotted_flange", "travel_deg": 20.0}
GEAR = {"kind": "geared", "teeth": 30}


def installed(**other: Any) -> Installation:
    """The seven-cylinder one with other parts; None leaves one out."""
    data = json.loads(dump_json(find_installation("seven-radial-left"))) | other
    data = {name: value for name, value in data.items() if value is not None}
    return validate(Installation, parse_json(json.dumps(data).encode(), "it"), "it")


@pytest.mark.parametrize("name", shipped_names("magnetos"))
def test_a_magneto_known_by_its_manual_is_written_as_it_was_read(name):
    magneto = by_manual(find_magneto(name))
    text = json.loads(dump_json(magneto))
    assert not {"breaker", "contact_screw", "designed_setting"} & set(text)
    assert set(text["cam"]) <= {"turns_per_rotor_turn", "lobe_peaks_deg", "shaft", "turns_against_rotor"}
    assert validate(Magneto, parse_json(json.dumps(text).encode(), "it"), "it") == magneto


def test_nothing_is_computed_of_parts_that_no_one_gave():
    magneto = by_manual(find_magneto("seven-radial"))
    for act in (internal_timing, new_bench):
        with pytest.raises(SpecError, match="known by its manual only"):
            act(magneto)


@pytest.mark.parametrize("part", LEFT_OUT)
def test_a_part_that_no_manual_gives_is_refused_beside_it(part):
    whole = json.loads(dump_json(find_magneto("seven-radial")))
    data = json.loads(dump_json(by_manual(find_magneto("seven-radial"))))
    name, _, inner = part.partition(".")
    if inner:
        data[name][inner] = whole[name][inner]
    else:
        data[name] = whole[name]
    with pytest.raises(SpecError, match=f"{part} stands beside known"):
        validate(Magneto, parse_json(json.dumps(data).encode(), "it"), "it")


def test_the_schema_requires_no_part_that_may_be_left_out():
    schema = schema_of(Magneto)
    assert not set(schema["required"]) & set(LEFT_OUT)
    assert "profile" not in schema["$defs"]["Cam"]["required"]
    assert "coupling" not in schema_of(Installation)["required"]


def test_the_form_does_not_ask_for_what_a_manual_does_not_give():
    draft = draft_of(by_manual(find_magneto("nine-radial")))
    assert not any(path.startswith(LEFT_OUT) for path in asked(draft))
    assert not [path for path in needed(draft) if path not in draft.values]
    data = parse_json(json.dumps(file_data(draft)).encode(), "it")
    assert validate(Magneto, data, "it") == by_manual(find_magneto("nine-radial"))


@pytest.mark.parametrize("how", [SLOTS, GEAR])
def test_without_a_disc_no_teeth_are_planned_or_asked(how):
    item = installed(coupling=None, adjusted_by=how)
    state = new_bench(item)
    assert shift_deg(state.engaged, "left") == 0.0
    assert timing_plan(state, "left") == []
    assert both_plan(state) is None
    assert firing_btdc_deg(state, "left") == pytest.approx(item.engine.firing_btdc_deg.left)
    with pytest.raises(SpecError, match="teeth do not apply"):
        _ = item.disc
    assert "do not apply" in adjusted_words(item)
    asked_for = asked(draft_of(item))
    assert not any(path.startswith("coupling.") for path in asked_for)
    assert f"adjusted_by.{'travel_deg' if how is SLOTS else 'teeth'}" in asked_for


def test_what_a_tooth_or_the_slots_come_to_is_said_at_the_crank():
    """The rotor turns 7/4 as fast as the crank: 20° of slot are 11.43° of crank, a thirtieth turn 6.86°."""
    ratio = find_installation("seven-radial-left").rotor_turns_per_crank_turn
    for how, rotor in ((SLOTS, 20.0), (GEAR, 12.0)):
        assert f"{rotor / ratio:.2f}°" in adjusted_words(installed(coupling=None, adjusted_by=how))


def test_a_disc_beside_another_way_and_no_way_at_all_are_refused():
    with pytest.raises(SpecError, match="coupling stands beside adjusted_by of kind geared"):
        installed(adjusted_by=GEAR)
    with pytest.raises(SpecError, match="coupling is missing"):
        installed(coupling=None)
    assert installed(adjusted_by={"kind": "toothed_disc"}).toothed
    assert set(needed(Draft("installation"))) >= {"coupling.magneto_teeth", "coupling.drive_teeth"}


def test_an_impulse_coupling_is_a_danger_and_silence_is_none():
    assert impulse_words(installed()) == ""
    told = impulse_words(installed(impulse_coupling={"lag_deg": 25.0, "releases_above_rpm": 300.0}))
    assert told.startswith("⚠") and "sparks at hand speed" in told and "25" in told


@pytest.mark.parametrize(
    ("cam", "refused"),
    [
        ({"shaft": "rotor", "turns_per_rotor_turn": 0.5}, "shaft is rotor and turns_per_rotor_turn 0.5"),
        ({"turns_against_rotor": True}, "turns_against_rotor is true for a cam on the rotor's shaft"),
    ],
)
def test_a_cam_cannot_turn_otherwise_than_its_shaft(cam, refused):
    data = json.loads(dump_json(find_magneto("seven-radial")))
    data["cam"] |= cam
    with pytest.raises(SpecError, match=refused):
        validate(Magneto, parse_json(json.dumps(data).encode(), "it"), "it")
