"""Lessons wait for the act: each shipped one can be gone through, and nothing else moves it on."""

from __future__ import annotations

import json

import pytest

from magview.bench import actions as bench
from magview.bench.advised import ORDERS
from magview.drawing.breaker_end import breaker_end
from magview.physics.engine.crank import true_tdc_from_stops
from magview.practice import actions as do
from magview.practice.closing import CLOSING
from magview.practice.instruments import disc, finger, lamp
from magview.practice.lesson import LessonRun, start_lesson, take
from magview.practice.lesson_words import done_words, tabs_of, waiting_words, wrong_words
from magview.practice.library import find_lesson, read_lesson, shipped_lessons
from magview.practice.predicates import NEEDS
from magview.practice.state import SAFE_THINGS
from magview.spec.base import SpecError
from magview.spec.library import resources

LAMP, MARK, WIDEST = do.TurnUntil("lamp"), do.TurnUntil("mark"), do.TurnUntil("widest")
LIST = [do.MakeSafe(thing, True) for thing in SAFE_THINGS]
SQUARE = [do.LayStraightedge(True), do.Sight(0.0)]


def light(run: LessonRun) -> list[do.Act]:
    """Until the lamp lights: out first where it burns."""
    return [LAMP, LAMP] if lamp(run.practice).text == "light" else [LAMP]


def opened_up(run: LessonRun) -> list[do.Act]:
    """Jumper off and switch on, for the reading."""
    acts: list[do.Act] = [bench.FitJumper(False), bench.SwitchIgnition(True)]
    for act in acts:
        run = take(run, act)
    return [*acts, *light(run)]


def to_first_cylinder(run: LessonRun) -> list[do.Act]:
    """Turn on until the lamp lights with the finger at No. 1, and write the disc down."""
    acts: list[do.Act] = []
    while True:
        more = light(run)
        for act in more:
            run = take(run, act)
        acts += more
        if finger(run.practice).value == 1.0:
            return [*acts, do.WriteReading("firing", disc(run.practice).value)]


def lit(run: LessonRun) -> list[do.Act]:
    """Switch on for the reading, and turn until the lamp lights."""
    on = bench.SwitchIgnition(True)
    return [on, *light(take(run, on))]


def live_to_first_cylinder(run: LessonRun) -> list[do.Act]:
    """Switch on for the reading, then as `to_first_cylinder`."""
    on = bench.SwitchIgnition(True)
    return [on, *to_first_cylinder(take(run, on))]


def zero(run: LessonRun) -> list[do.Act]:
    """Meet the stop both ways and set the disc by it."""
    acts: list[do.Act] = [do.TurnUntil("stop", True), do.TurnUntil("stop", False)]
    found = []
    for act in acts:
        run = take(run, act)
        found.append(disc(run.practice).value or 0.0)
    at_top = (true_tdc_from_stops(*found) + 180.0) % 360.0 - 180.0
    return [*acts, do.TurnDisc(-at_top)]


# One entry a step: the acts that a learner needs for it, or what finds them from where the lesson stands.
WAYS: dict[str, list] = {
    "neutral-and-e-gap": [[do.TurnRotor(45.0)], [do.LetGo()], SQUARE, [MARK], [do.LetGo()]],
    "contacts-and-lamp": [
        [do.ConnectLamp(True)],
        [LAMP],
        [bench.SwitchIgnition(True)],
        light,
        [WIDEST],
        [LAMP],
        lambda run: [*SQUARE, *light(run)],
    ],
    "measuring-the-gap": [
        [WIDEST],
        [do.TryBlades((0.2,), "metric")],
        [do.TryBlades((0.4,), "metric")],
        # 0.375 mm and a pip of 0.05: 0.325 is left, which 0.32 just fills.
        [do.TryBlades((0.32,), "metric")],
        [do.InspectContacts()],
        [do.DressContacts()],
        [do.TryBlades((0.35,), "metric"), do.TryBlades((0.3, 0.07), "metric"), do.WriteReading("gap", 0.375)],
    ],
    "plate-and-screw": [
        [bench.TightenLock(False)],
        [do.TurnScrew(3.6)],
        [bench.TightenLock(True)],
        [WIDEST, do.TryBlades((9,))],
        [bench.TightenClamps(False)],
        [do.TurnPlate(-1.2)],
        [do.TurnPlate(-2.6), bench.TightenClamps(True)],
        lambda run: [do.ConnectLamp(True), *SQUARE, LAMP, LAMP],
        [do.ConnectLamp(False), do.LayStraightedge(False), bench.SwitchIgnition(False)],
    ],
    "top-dead-centre": [
        [do.Chock(True)],
        LIST,
        [bench.FitJumper(True)],
        [do.SparkPlugs(True)],
        [do.TurnPropeller(90.0), do.FitStop(True)],
        [do.TurnUntil("stop", True)],
        [do.TurnUntil("stop", False)],
        [do.WriteReading("disc-zero", 9.0)],
        [do.TurnDisc(-9.0)],
        [do.FitStop(False)],
        [bench.FitJumper(False)],
    ],
    "no-grounding-tab": [
        [do.Chock(True)],
        LIST,
        [bench.FitJumper(True)],
        [bench.PullPlug(True)],
        [do.MeterLead()],
        [bench.SwitchIgnition(True), do.MeterLead()],
        [bench.SwitchIgnition(False), bench.PullPlug(False)],
        [do.SparkPlugs(True)],
        [do.ConnectLamp(True), LAMP],
        opened_up,
        [bench.SwitchIgnition(False)],
        [bench.FitJumper(True), bench.SwitchIgnition(True), do.MeterTerminal()],
        [bench.SwitchIgnition(False), bench.FitJumper(False)],
    ],
    "the-switch-lead": [
        [do.Chock(True)],
        LIST,
        [bench.PullPlug(True)],
        [do.MeterLead()],
        [do.Renew("lead")],
        [do.MeterLead()],
        [bench.SwitchIgnition(True), do.MeterLead()],
        [bench.SwitchIgnition(False), bench.PullPlug(False)],
    ],
    "one-vernier-step": [
        [do.ConnectLamp(True)],
        to_first_cylinder,
        [bench.SwitchIgnition(False), bench.PaintMarks()],
        [do.Nuts(False)],
        [do.MoveTooth("magneto", -1), do.MoveTooth("disc", 1)] * 3,
        [do.Nuts(True)],
        lit,
        [bench.SwitchIgnition(False)],
    ],
    "a-full-job": [
        [do.Chock(True)],
        LIST,
        [bench.PullPlug(True), do.MeterLead(), do.Renew("lead"), do.MeterLead()],
        [bench.PullPlug(False)],
        [do.SparkPlugs(True)],
        [do.ConnectLamp(True), bench.SwitchIgnition(True)],
        lambda run: [*SQUARE, *light(run)],
        [bench.SwitchIgnition(False), WIDEST, do.TryBlades((9,))],
        [bench.TightenClamps(False), do.TurnPlate(-3.0), bench.TightenClamps(True)],
        lit,
        lambda run: [
            bench.SwitchIgnition(False),
            do.TurnPropeller(-disc(run.practice).value + 90.0),
            do.FitStop(True),
        ],
        [do.FitStop(False)],
        live_to_first_cylinder,
        [bench.SwitchIgnition(False), bench.PaintMarks()],
        [do.Nuts(False), *[do.MoveTooth("magneto", -1), do.MoveTooth("disc", 1)] * 4, do.Nuts(True)],
        lit,
        [do.ConnectLamp(False), do.LayStraightedge(False), bench.SwitchIgnition(False)],
        [do.SparkPlugs(False)],
        [bench.PullPlug(True), do.MeterLead()],
        [bench.PullPlug(False)],
        [do.LeaveAsIs("chocks")],
    ],
}


def ways(name: str) -> list:
    if name == "what-the-parts-are":
        return [[do.PointAt(step.until[0].what or "")] for step in find_lesson(name).steps]
    return WAYS[name]


@pytest.mark.parametrize("name", shipped_lessons())
def test_each_lesson_can_be_gone_through_and_waits_for_each_act(name):
    lesson = find_lesson(name)
    run = start_lesson(lesson)
    assert len(ways(name)) == len(lesson.steps)
    for number, way in enumerate(ways(name)):
        assert run.at == number, f"step {number}: {lesson.steps[number].title}"
        assert run.step == lesson.steps[number]
        run = take(run, do.PointAt("the ceiling"))  # not what it waits for
        assert run.at == number, f"step {number} was not waited for"
        acts = way(run) if callable(way) else way
        for act in acts:
            assert run.at == number, f"step {number} was reached before {act}"
            run = take(run, act)
            if run.at > number:
                break
        if name == "a-full-job" and lesson.steps[number].title == "Dead centre":
            for act in zero(run):
                run = take(run, act)
    assert run.done and run.step is None
    assert take(run, do.PointAt("cam")).done


@pytest.mark.parametrize("name", ["plate-and-screw", "a-full-job"])
def test_the_orders_of_work_and_the_closing_list_are_said_as_everywhere(name):
    lesson = find_lesson(name)
    told = " ".join([lesson.text, *(f"{step.text} {step.done}" for step in lesson.steps)]).lower()
    assert ORDERS.lower() in told
    on_engine = {"plugs", "plug-leads", "lead-proved", "chocks"} if lesson.exercise.installation is None else set()
    assert not [words for key, words in CLOSING.items() if key not in on_engine and words not in told]
    assert ("tab grounds it" in told) is (name == "a-full-job" and lesson.exercise.unit.grounding_tab is True)


def test_enough_lessons_in_an_order():
    names = shipped_lessons()
    assert len(names) >= 6
    assert names[0] == "what-the-parts-are" and names[-1] == "a-full-job"
    assert [find_lesson(n).number for n in names] == list(range(1, len(names) + 1))


def test_the_parts_pointed_at_are_parts_of_the_picture():
    lesson = find_lesson("what-the-parts-are")
    parts = breaker_end(lesson.exercise.unit).anchors
    assert {step.until[0].what for step in lesson.steps} <= set(parts)


def test_what_cannot_be_done_moves_nothing_on():
    run = start_lesson(find_lesson("plate-and-screw"))
    with pytest.raises(SpecError, match="lock screw is tight"):
        take(run, do.TurnScrew(3.0))
    with pytest.raises(SpecError, match="not handed in"):
        take(run, do.HandIn())
    assert run.at == 0


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


def test_a_step_done_is_named_by_its_number():
    run = take(start_lesson(find_lesson("contacts-and-lamp")), do.ConnectLamp(True))
    assert done_words(run, 0) == "Step 1: done."
    run = take(run, LAMP)
    assert done_words(run, 1).startswith("Step 2: done. The contacts opened and closed")


def test_what_a_step_needs_is_said_to_lie_where_it_lies():
    """A step that waits for a thing to be handled names a tab; one that waits for turning or pointing names none."""
    free = {"pointed-at", "rotor-near", "rotor-let-go", "lamp-shows", "contacts-seen-opening", "stop-met"}
    for name in shipped_lessons():
        for step in find_lesson(name).steps:
            turning = all(u.that in free or "all the way" in (u.what or "") for u in step.until)
            assert bool(tabs_of(step)) != turning, step.title
    steps = find_lesson("contacts-and-lamp").steps
    assert [tabs_of(s) for s in steps] == [("tray",), (), ("work",), (), (), (), ("tray",)]


def test_a_step_that_is_so_already_is_passed_with_words():
    early = start_lesson(find_lesson("top-dead-centre"))
    for act in (*LIST, do.Chock(True)):
        early = take(early, act)
    assert early.at == 2
    assert done_words(early, 0).startswith("Step 1: done. Step 2: so already. No single act")


def test_waiting_does_not_tell_what_is_to_be_found_out():
    """No step says beforehand what its instrument will say, but for blades, which are picked by it."""
    for name in shipped_lessons():
        for until in (u for step in find_lesson(name).steps for u in step.until if u.that == "said"):
            told = waiting_words(until)
            assert (until.what in told) == (until.what in ("go", "drag", "no-go")), told
    run = take(start_lesson(find_lesson("contacts-and-lamp")), do.ConnectLamp(True))
    act = do.TurnRotor(20.0)
    told = wrong_words(run.step, act, run.practice, take(run, act).practice)
    assert told == "Not yet. The step waits for the lamp to be watched all the way round."
