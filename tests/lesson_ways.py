"""Ways through each shipped lesson: the acts that a learner needs, step by step."""

from __future__ import annotations

import pytest

from magview.bench import actions as bench
from magview.practice import actions as do
from magview.practice.instruments import lamp
from magview.practice.lesson_run import LessonRun, answer, go_on, start_lesson, take
from magview.practice.lesson_words import stand_words
from magview.practice.library import find_lesson
from magview.practice.state import SAFE_THINGS
from magview.spec.base import SpecError

LAMP, MARK, WIDEST = do.TurnUntil("lamp"), do.TurnUntil("mark"), do.TurnUntil("widest")
LIST = [do.MakeSafe(thing, True) for thing in SAFE_THINGS]
SQUARE = [do.LayStraightedge(True), do.Sight(0.0)]


def light(run: LessonRun) -> list[do.Act]:
    """Until the lamp lights: out first where it burns."""
    return [LAMP, LAMP] if lamp(run.practice).text == "lit" else [LAMP]


# One entry a step: the acts that a learner needs for it, or what finds them from where the lesson stands.
WAYS: dict[str, list] = {
    "neutral-and-e-gap": [
        [do.TurnRotor(45.0)],
        [do.LetGo()],
        [do.LayStraightedge(True)],
        [do.Sight(0.0)],
        [MARK],
        [],
        [do.LetGo()],
    ],
    "contacts-and-lamp": [
        [do.ConnectLamp(True)],
        [LAMP],
        [bench.SwitchIgnition(True)],
        light,
        [LAMP],
        [do.LayStraightedge(True)],
        [do.Sight(0.0)],
        light,
        [bench.SwitchIgnition(False)],
        [],
    ],
    "live-or-safe": [
        [do.Chock(True)],
        LIST,
        [bench.FitJumper(True)],
        [bench.PullPlug(True)],
        [do.MeterLead()],
        [bench.SwitchIgnition(True)],
        [do.MeterLead()],
        [bench.SwitchIgnition(False), bench.PullPlug(False)],
        [bench.FitJumper(False)],
        [bench.PullPlug(True)],
        [do.MeterTerminal()],
        [],
    ],
    "measuring-the-gap": [
        [WIDEST],
        [do.TryBlades((0.3,), "metric")],
        [do.TryBlades((0.36,), "metric")],
        [do.TryBlades((0.32,), "metric")],
        [do.TurnRotor(12.0)],
        [do.TryBlades((0.3,), "metric")],
        [WIDEST],
        [do.InspectContacts()],
        [],
    ],
    "plate-and-screw": [
        [WIDEST],
        [bench.TightenLock(False)],
        [do.TurnScrew(4.0)],
        [bench.TightenLock(True)],
        [bench.TightenClamps(False)],
        [do.TurnPlate(-2.0)],
        [bench.TightenClamps(True)],
        [],
    ],
    "order-of-work": [
        [WIDEST],
        [bench.TightenLock(False)],
        [do.TurnScrew(5.0)],
        [bench.TightenLock(True)],
        [bench.TightenClamps(False)],
        [do.TurnPlate(-2.75)],
        [bench.TightenClamps(True)],
        [],
    ],
    "lock-and-clamp-screws": [
        [WIDEST],
        [bench.TightenLock(False)],
        [bench.TightenLock(True)],
        [bench.TightenLock(False)],
        [do.TurnScrew(-4.0)],
        [bench.TightenLock(True)],
        [bench.TightenClamps(False)],
        [bench.TightenClamps(True)],
        [],
    ],
    "top-dead-centre": [
        lambda run: [do.FitStop(True)],
        [do.TurnUntil("stop", True)],
        [do.TurnUntil("stop", False)],
        [do.WriteReading("disc-zero", 9.0)],
        [do.TurnDisc(-9.0)],
        [do.FitStop(False)],
        [],
    ],
    "lobes-and-cylinders": [[WIDEST], [WIDEST], [WIDEST, WIDEST, WIDEST], [], [], []],
    "one-vernier-step": [
        [bench.PaintMarks()],
        [do.Nuts(False)],
        [do.MoveTooth("disc", 1)],
        [do.MoveTooth("magneto", -1)],
        [do.Nuts(True)],
        [do.ConnectLamp(True)],
        [bench.SwitchIgnition(True)],
        light,
        [bench.SwitchIgnition(False)],
        [],
    ],
    "several-teeth": [
        [do.TurnToReading(27.0)],
        [do.FeelCompression()],
        [do.TurnToReading(27.0)],
        [bench.PaintMarks()],
        [do.Nuts(False)],
        [do.MoveTooth("disc", 1)] * 3,
        [do.MoveTooth("magneto", -1)] * 3,
        [do.Nuts(True)],
        [],
    ],
    "a-full-job": [
        [bench.PaintMarks()],
        [do.ConnectLamp(True), bench.SwitchIgnition(True)],
        light,
        [bench.SwitchIgnition(False), bench.TightenClamps(False)],
        [do.TurnPlate(-3.0)],
        [bench.TightenClamps(True)],
        [bench.SwitchIgnition(True)],
        light,
        [bench.SwitchIgnition(False), do.ConnectLamp(False)],
        [do.SparkPlugs(False)],
        [bench.PullPlug(True), do.MeterLead()],
        [bench.PullPlug(False)],
    ],
}


def ways(name: str) -> list:
    if name == "what-the-parts-are":
        return [[do.PointAt(u.what or "") for u in step.until] for step in find_lesson(name).steps]
    return WAYS[name]


def guessed(run: LessonRun, choice: int = 0) -> LessonRun:
    """Every question of the step answered."""
    for question in range(len(run.step.ask)):
        run = answer(run, question, choice)
    return run


def played(name: str, upto: int | None = None) -> LessonRun:
    """A lesson gone through to a step, or to its end."""
    run = start_lesson(find_lesson(name))
    for number, way in enumerate(ways(name)[:upto]):
        assert run.at == number, f"step {number}: {run.lesson.steps[number].title}"
        run = one_step(run, way)
    return run


def one_step(run: LessonRun, way) -> LessonRun:
    step, number = run.step, run.at
    if run.step_done:
        return go_on(run)  # so already, which it says
    run = take(run, do.PointAt("the ceiling"))
    assert not run.step_done, f"step {number} did not wait"
    if step.ask and step.until:
        with pytest.raises(SpecError, match="answer first"):
            take(run, do.TurnRotor(1.0))
    run = guessed(run)
    for deed in way(run) if callable(way) else way:
        assert not run.step_done, f"step {number} was done before {deed}"
        run = take(run, deed)
        if run.step_done:
            break
    assert run.step_done, f"step {number}: {stand_words(run)}"
    with pytest.raises(SpecError, match="press Next step"):
        take(run, do.TurnRotor(1.0))
    return go_on(run)
