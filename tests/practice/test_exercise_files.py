"""Exercise files: the shipped ones are sound, and what cannot be an exercise is refused in one sentence."""

from __future__ import annotations

import json
from dataclasses import replace

import pytest

from magview.bench.apply_lead import with_fault
from magview.bench.state import firing_btdc_deg
from magview.physics.electric.circuit import circuit
from magview.practice.exercise import Exercise
from magview.practice.faults import begin
from magview.practice.lead_proof import lead_faults
from magview.practice.library import find_exercise, find_lesson, read_exercise, shipped_exercises
from magview.practice.paper import limit_lines
from magview.practice.state import true_readings, view
from magview.spec.base import SpecError
from magview.spec.files import dump_json, write_model
from magview.spec.library import resources
from tests.wording import says


def plain(name: str = "several-teeth-out") -> dict:
    return json.loads((resources() / "exercises" / f"{name}.json").read_text(encoding="utf-8"))


def refusal(tmp_path, data: object) -> str:
    path = tmp_path / "e.json"
    path.write_text(json.dumps(data), encoding="utf-8")
    with pytest.raises(SpecError) as caught:
        read_exercise(path)
    text = str(caught.value)
    assert text.isprintable() and text.startswith("e.json: ") and "pydantic" not in text.lower()
    return text


@pytest.mark.parametrize("name", shipped_exercises())
def test_shipped_exercises_survive_writing_and_read_well(name, tmp_path):
    exercise = find_exercise(name)
    write_model(tmp_path / "again.json", exercise)
    again = read_exercise(tmp_path / "again.json")
    assert again == exercise and dump_json(again) == dump_json(exercise)
    assert exercise.story.endswith(".") and exercise.task.endswith(".")
    assert all(hint.endswith((".", "?")) for hint in exercise.hints) and exercise.hints
    # Nothing in the text tells what is drawn.
    assert not any(str(f.size[1]) in exercise.story + exercise.task for f in exercise.faults if f.size[1] > 1)


@pytest.mark.parametrize(
    ("change", "says"),
    [
        ({"format": "magview-exercise/2"}, "a newer magview wrote it"),
        ({"level": 6}, says("{field} is {found}; it must be at most {le:g}", field="level", found=6, le=5)),
        ({"tray": {"lump": True}}, "did you mean lamp?"),
        ({"goals": []}, "goals"),
        ({"installation": None}, "an exercise has one of the two"),
        ({"installation": "no-such-engine"}, "no-such-engine"),
        ({"both_sides": True, "installation": "traced-six-single"}, "two magnetos"),
        ({"faults": [{"kind": "gap", "size": [0.3, 0.1]}]}, "faults[0]: size is [0.3, 0.1]"),
        ({"faults": [{"kind": "gap", "size": [0.1, 3.0]}]}, "at most 1 (millimetres"),
        ({"faults": [{"kind": "teeth", "size": [0.5, 2.0]}]}, "whole numbers"),
        ({"faults": [{"kind": "lead"}]}, "among is for kind lead"),
        ({"installation": "nine-radial-left", "faults": [{"kind": "lead", "among": ["tab"]}]}, "no grounding tab"),
        ({"installation": "traced-six-single", "faults": [{"kind": "lead", "among": ["crossed"]}]}, "two magnetos"),
        ({"faults": [{"kind": "pip", "size": [0.0, 0.1], "way": "minus"}]}, "way of pip"),
        ({"faults": [{"kind": "wrong-stroke", "size": [0.0, 1.0]}]}, "is there or is not"),
        ({"faults": [{"kind": "gap", "size": [0.0, 0.1]}] * 2}, "gap (left) twice"),
        ({"faults": [{"kind": "gap", "size": [0.0, 0.1], "side": "right"}]}, "does not have"),
        ({"faults": [{"kind": "lobe-low", "size": [0.0, 0.1], "lobe": 9}]}, "the cam has 4"),
        ({"goals": [{"goal": "reading", "weight": 1.0}]}, "reading is for goal"),
        ({"goals": [{"goal": "reading", "weight": 1.0, "reading": "gap"}]}, "within is for a reading in numbers"),
        ({"goals": [{"goal": "synchronised", "weight": 1.0}]}, "needs both_sides"),
        ({"goals": [{"goal": "timing", "weight": 0.0}]}, "above 0"),
    ],
)
def test_what_is_no_exercise_is_refused_in_one_sentence(tmp_path, change, says):
    assert says in refusal(tmp_path, {**plain(), **change})


def test_what_needs_an_engine_is_refused_on_the_bench(tmp_path):
    bench = plain("gap-wrong")
    assert "needs an installation" in refusal(tmp_path, {**bench, "goals": [{"goal": "timing", "weight": 1.0}]})
    fault = {"kind": "teeth", "size": [1.0, 1.0]}
    assert "needs an installation" in refusal(tmp_path, {**bench, "faults": [fault]})


def test_unknown_names_say_what_there_is():
    with pytest.raises(SpecError, match="find-the-e-gap"):
        find_exercise("find-the-f-gap")
    with pytest.raises(SpecError, match="shipped lessons"):
        find_lesson("nothing")


# ---------------------------------------------------------------------- faults put in are the faults drawn


def built(**changes: object) -> Exercise:
    data = {**plain(), "installation": find_exercise("several-teeth-out").installation.model_dump(), **changes}
    from magview.spec.files import validate

    return validate(Exercise, _tuples(data), "test")


def _tuples(value):
    if isinstance(value, list | tuple):
        return tuple(_tuples(v) for v in value)
    return {k: _tuples(v) for k, v in value.items()} if isinstance(value, dict) else value


def test_without_faults_the_magneto_is_right():
    room = begin(built(faults=[]), 7)
    now = true_readings(room.bench)
    assert abs(float(now.mark_offset_mm)) < 1e-3
    assert float(now.max_gap_mm[0]) == pytest.approx(0.33, abs=1e-5)
    # Within half of the finest step of 17 and 18 teeth: 360/306/0.875/2 = 0.67° of crank.
    assert abs(_fires(room.bench) - 27.0) <= 0.6723


def _fires(state) -> float:
    return (firing_btdc_deg(state, state.engaged.side) + 360.0) % 720.0 - 360.0


@pytest.mark.parametrize("way", ["plus", "minus"])
def test_each_fault_has_the_size_and_sign_it_says(way):
    sign = 1.0 if way == "plus" else -1.0
    free = begin(built(faults=[]), 7)

    def one(kind: str, size: float, **more: object):
        fault = {"kind": kind, "size": [size, size], "way": way, **more}
        return begin(built(faults=[fault]), 7)

    opens = float(true_readings(one("opening", 3.0).bench).opens_deg[0])
    assert opens == pytest.approx(11.0 + sign * 3.0, abs=1e-5)
    gap = float(true_readings(one("gap", 0.04).bench).max_gap_mm[0])
    assert gap == pytest.approx(0.33 + sign * 0.04, abs=1e-5)
    plate = one("plate", 2.0).bench.backplate_deg
    assert plate == pytest.approx(free.bench.backplate_deg + sign * 2.0, abs=1e-6)
    assert one("creep", 4.0).bench.magneto.condition.screw_creep_deg == sign * 4.0
    # Vernier: 360·(1/17 − 1/18)/0.875 of crank a step; teeth: 360/17/0.875 and 360/18/0.875; positive earlier.
    for kind, step in (("vernier", 360 / 306), ("teeth", 360 / 17), ("disc-teeth", 360 / 18)):
        moved = _fires(one(kind, 2.0).bench) - _fires(free.bench)
        assert moved == pytest.approx(sign * 2 * step / 0.875, abs=1e-5)
    assert one("disc-zero", 9.0).disc_error_deg == sign * 9.0


def test_the_other_faults():
    free = begin(built(faults=[]), 7)
    neutral = begin(built(faults=[{"kind": "rotor-at-neutral"}]), 7)
    # The rotor stood 11° short of where it belongs: late by 11/0.875 of crank.
    assert _fires(neutral.bench) - _fires(free.bench) == pytest.approx(-11.0 / 0.875, abs=1e-5)
    stroke = begin(built(faults=[{"kind": "wrong-stroke"}]), 7)
    assert abs(_fires(stroke.bench) - _fires(free.bench)) == pytest.approx(360.0, abs=1e-5)
    low = begin(built(faults=[{"kind": "lobe-low", "size": [0.03, 0.03], "lobe": 3}]), 7)
    gaps = true_readings(low.bench).max_gap_mm
    assert gaps.tolist() == pytest.approx([0.33, 0.33, 0.3, 0.33], abs=1e-5)
    for name, field in (("broken", "broken"), ("shorted", "shorted"), ("chafed", "chafed")):
        lead = begin(built(faults=[{"kind": "lead", "among": [name]}]), 7).bench.lead
        assert getattr(lead, field)
    assert not begin(built(faults=[{"kind": "lead", "among": ["tab"]}]), 7).bench.lead.tab_touches
    for name in ("never-opens", "never-closes"):
        assert begin(built(faults=[{"kind": "lead", "among": [name]}]), 7).bench.lead.switch == name
    crossed = begin(built(faults=[{"kind": "lead", "among": ["crossed"]}]), 7)
    assert crossed.bench.lead.crossed and crossed.bench.other_lead.crossed


def test_faults_of_one_side_stay_there():
    room = begin(find_exercise("left-and-right-apart"), 3)
    left, right = _fires(view(room, "left").bench), _fires(view(room, "right").bench)
    assert left > 25.0 + 1.0 and right < 25.0 - 1.0


@pytest.mark.parametrize("name", shipped_exercises())
def test_where_the_lamp_is_needed_a_hint_says_what_grounds_it(name):
    """Where the coil is grounded, or would be by one turn of the switch, the lamp stays dark without a word."""
    exercise = find_exercise(name)
    if not exercise.tray.lamp:
        assert not any("lamp" in hint for hint in exercise.hints)
        return
    told = exercise.hints if name.startswith("switch-lead") else exercise.hints[:1]
    assert any("lamp" in hint and "switch" in hint for hint in told)
    lead = replace(begin(exercise, 1).bench.lead, switch_on=False, other_on=False)
    for fault in lead_faults(begin(exercise, 1)):
        lead = with_fault(lead, fault, False)
    assert circuit(lead, contacts_closed=False, tab=False).lamp_sees_closed, (
        "as the hint says: with the switch off it stays dark"
    )


def test_the_task_names_the_limits_of_what_it_judges_alone():
    assert limit_lines(find_exercise("find-the-e-gap")) == [
        says("edge within {tolerance:.3g} mm of its mark", tolerance=0.6)
    ]
    assert limit_lines(find_exercise("measure-the-gap")) == limit_lines(find_exercise("when-do-they-open")) == []
    assert len(limit_lines(find_exercise("gap-wrong"))) == 2
