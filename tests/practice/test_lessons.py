"""Lessons wait for the act: each shipped one can be gone through, and nothing else moves it on."""

from __future__ import annotations

import json
import re

import pytest

from magview.bench import actions as bench
from magview.bench.advised import ORDERS
from magview.drawing.breaker_end import breaker_end
from magview.practice import actions as do
from magview.practice.closing import CLOSING
from magview.practice.lesson_acts import TOOLS, tools_for
from magview.practice.lesson_run import start_lesson, take
from magview.practice.lesson_words import foretold_words, waiting_words
from magview.practice.library import find_lesson, read_lesson, shipped_lessons
from magview.practice.predicates import NEEDS
from magview.spec.base import SpecError
from magview.spec.library import resources
from tests.lesson_ways import guessed, played, ways


@pytest.mark.parametrize("name", shipped_lessons())
def test_each_lesson_can_be_gone_through_and_waits_for_each_act(name):
    run = played(name)
    assert len(ways(name)) == len(run.lesson.steps)
    assert run.done and run.step is None
    asked = sum(len(step.ask) for step in run.lesson.steps)
    assert run.foretold[1] == asked
    assert bool(foretold_words(run)) == bool(asked)


VERBS = frozenset(
    {
        "Answer", "Tick", "Click", "Turn", "Let", "Lay", "Look", "Slacken", "Tighten", "Clip", "Switch", "Take",
        "Put", "Push", "Pull", "Prove", "Meter", "Try", "Write", "Move", "Paint", "Fit", "Measure", "Draw", "Feel",
    }
)  # fmt: skip


@pytest.mark.parametrize("name", shipped_lessons())
def test_an_instruction_is_one_act_of_at_most_twenty_words(name):
    """By the rules for plain English: verb first, at most 20 words; a sentence that explains at most 25."""
    lesson = find_lesson(name)
    assert 6 <= len(lesson.steps) <= 12
    for step in lesson.steps:
        assert len(step.text.split()) <= 20 and step.text.split()[0] in VERBS, step.text
        assert len(re.findall(r"[.:]\s", step.text)) <= 1, step.text
        for sentence in re.split(r"(?<=[.!?:])\s+", f"{step.how} {step.done} {step.hint}"):
            assert len(sentence.split()) <= 25, sentence
        assert step.done, f"{step.title}: every step says why"
    assert any(step.ask and step.until for step in lesson.steps) or name == "what-the-parts-are"
    assert lesson.steps[-1].ask, "a question at the end"


@pytest.mark.parametrize("name", ["order-of-work", "a-full-job"])
def test_the_orders_of_work_are_said_as_everywhere(name):
    assert ORDERS in find_lesson(name).text


def test_the_closing_list_is_said_as_everywhere():
    lesson = find_lesson("a-full-job")
    told = " ".join(step.done for step in lesson.steps).lower()
    assert not [words for words in CLOSING.values() if words not in told]
    assert lesson.exercise.unit.grounding_tab is True and "tab grounds it" in told


def test_enough_lessons_in_an_order():
    names = shipped_lessons()
    assert len(names) == 13
    assert names[0] == "what-the-parts-are" and names[-1] == "a-full-job"
    assert [find_lesson(n).number for n in names] == list(range(1, len(names) + 1))


def test_the_parts_pointed_at_are_parts_of_the_picture():
    lesson = find_lesson("what-the-parts-are")
    parts = breaker_end(lesson.exercise.unit).anchors
    assert {until.what for step in lesson.steps for until in step.until} <= set(parts)


def test_what_cannot_be_done_moves_nothing_on():
    run = guessed(played("plate-and-screw", 2))
    run = take(run, bench.TightenLock(True))
    with pytest.raises(SpecError, match="lock screw is tight"):
        take(run, do.TurnScrew(3.0))
    with pytest.raises(SpecError, match="not handed in"):
        take(run, do.HandIn())
    assert run.at == 2


# ---------------------------------------------------------------------- files


def refusal(tmp_path, change: dict) -> str:
    path = resources() / "lessons" / "neutral-and-e-gap.json"
    data = json.loads(path.read_text(encoding="utf-8"))
    data["steps"][0]["until"][0].update(change)
    bad = tmp_path / "l.json"
    bad.write_text(json.dumps({**data, "steps": data["steps"]}), encoding="utf-8")
    with pytest.raises(SpecError) as caught:
        read_lesson(bad)
    return str(caught.value)


@pytest.mark.parametrize(
    ("change", "says"),
    [
        ({"that": "weather-fine"}, "steps[0].until[0].that"),
        ({"what": "lunch"}, "for rotor-near it must be neutral, register, e-gap, widest"),
        ({"value": 3.0}, "value is not for rotor-near"),
        ({"that": "lamp-connected"}, "is not for lamp-connected"),
        ({"that": "crank-near"}, "for crank-near"),
        ({"wen": True}, "wen is not a known name"),
    ],
)
def test_a_lesson_that_waits_for_nothing_known_is_refused(tmp_path, change, says):
    assert says in refusal(tmp_path, change)


def test_every_predicate_is_used_or_at_least_answers():
    """Each can be asked of any moment of any lesson, and says yes or no."""
    from magview.practice.apply import apply
    from magview.practice.predicates import Moment, holds

    for name in ("a-full-job", "plate-and-screw"):
        before = start_lesson(find_lesson(name)).practice
        act = do.PointAt("cam")
        moment = Moment(before, apply(before, act), act)
        for predicate, needs in NEEDS.items():
            what = {"rotor-near": "neutral", "turned": "plate"}.get(predicate, "cam") if "what" in needs else None
            assert holds(predicate, moment, what, 10.0, 2.0) in (True, False)


def test_a_step_has_the_controls_that_it_needs():
    """A step that waits for a thing to be handled has its control; one that only asks has none."""
    for name in shipped_lessons():
        for step in find_lesson(name).steps:
            assert bool(tools_for(step)) == bool(step.until), step.title
            assert set(tools_for(step)) <= set(TOOLS)


def test_waiting_does_not_tell_what_is_to_be_found_out():
    """No step says beforehand what its instrument will say, but for blades, which are picked by it."""
    for name in shipped_lessons():
        for until in (u for step in find_lesson(name).steps for u in step.until if u.that == "said"):
            told = waiting_words(until)
            assert (until.what in told) == (until.what in ("go", "drag", "no-go")), told
