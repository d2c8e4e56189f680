"""All that people read goes through `tr`: heard through a bracketing translator."""

from __future__ import annotations

import json
import random
from collections.abc import Iterator
from typing import Any

import pytest

from magview.bench import actions as bench
from magview.bench.advice_words import advice_words, disagreement_words
from magview.bench.apply import apply
from magview.bench.describe import describe
from magview.bench.engine_words import outside_words
from magview.bench.lead_words import lead_meter_words, lead_words, tab_words, terminal_meter_words
from magview.bench.placing import new_bench
from magview.bench.reach_words import out_of_reach_words
from magview.bench.state import readings
from magview.bench.sureness import matters_words, outcome_words, read_internal
from magview.bench.tooth_steps import coupling_words, step_words, steps_between
from magview.bench.verdict import faults
from magview.bench.wear_words import expectation_words, leaving_words
from magview.bench.words import move_words, setting_moves, short_words
from magview.curves.lift import csv_text as curve_csv
from magview.curves.lift import lobe_table
from magview.drawing.lead_picture import lead_picture
from magview.job.document import document
from magview.job.judge import finish
from magview.job.library import job_path, read_job, shipped_jobs
from magview.job.readings import csv_text, json_text
from magview.job.sheet import new_job
from magview.physics.cam.setting import internal_timing
from magview.physics.engine.coupling import plan
from magview.physics.trials.advice import advise
from magview.physics.trials.trial import Trial
from magview.physics.uncertainty.measurement import judge_linear
from magview.physics.uncertainty.setting_uncertainty import internal_measurement
from magview.physics.wear.prediction import WearRates
from magview.practice import actions as do
from magview.practice.attempt import Session, attempt_of
from magview.practice.debrief import debrief
from magview.practice.lesson_words import waiting_words
from magview.practice.library import find_exercise, find_lesson, shipped_exercises, shipped_lessons
from magview.practice.paper import goal_words, paper_lines
from magview.practice.report import debrief_text
from magview.practice.screen_words import seen
from magview.practice.words import act_words
from magview.spec import language
from magview.spec.base import SpecError
from magview.spec.files import dump_json, validate
from magview.spec.language import format_length, number, speak_through, tr
from magview.spec.library import find_installation, find_magneto, shipped_names
from magview.spec.lift_table import parse_lift_table
from magview.spec.magneto import Magneto
from magview.spec.parse import parse_angle_deg, parse_length_mm, parse_number
from tests.paper.words import texts_of
from tests.practice.trainee import Trainee
from tests.source_words import UNITS, WORD, in_resources, names, strings

HEARD: set[str] = set()


def _bracket(text: str) -> str:
    HEARD.add(text)
    return f"⟦{text}⟧"


@pytest.fixture
def bracketed() -> Iterator[None]:
    """Every text in brackets and decimal commas; what is read out must be known to whoever collects texts."""
    HEARD.clear()
    speak_through(_bracket, ",")
    yield
    speak_through(None)
    assert HEARD and names() | in_resources() >= HEARD


def outside(text: str) -> str:
    """What stands in no bracket."""
    depth, found = 0, []
    for sign in text:
        depth += (sign == "⟦") - (sign == "⟧")
        if depth == 0 and sign not in "⟦⟧":
            found.append(sign)
    assert depth == 0, text
    return "".join(found)


def english(texts: list[str], data: set[str] = frozenset()) -> list[str]:  # type: ignore[assignment]
    """Texts with words that were not translated, but for units and for what files or people brought."""
    found = []
    for text in texts:
        rest = outside(text)
        for known in sorted(data, key=len, reverse=True):
            rest = rest.replace(known, " ")
        if any(word not in UNITS for word in WORD.findall(rest)):
            found.append(text)
    return found


def refusal(call: Any, *arguments: Any) -> str:
    with pytest.raises(ValueError, match=r"\w") as caught:
        call(*arguments)
    return str(caught.value)


def test_english_again_afterwards() -> None:
    with pytest.raises(ZeroDivisionError), language.in_english():
        raise ZeroDivisionError
    speak_through(lambda text: "x", ",")
    with language.in_english():
        assert tr("one") == "one" and number(1.5) == "1.5"
    assert tr("one") == "x" and number(1.5, 2) == "1,50"
    speak_through(None)
    assert tr("one") == "one" and number(-0.5, "+.1f") == "-0.5"


@pytest.mark.usefixtures("bracketed")
def test_readings_and_moves_are_heard() -> None:
    state = new_bench(find_installation(shipped_names("installations")[0]))
    engaged = state.engaged
    assert engaged is not None
    magneto, coupling = state.magneto, engaged.installation.coupling
    texts = [*faults(magneto, readings(state)), *setting_moves(magneto, 1.5, -2.0), short_words(3), short_words(-1)]
    texts += [lead_words(state)[0], lead_meter_words(state), terminal_meter_words(state), tab_words(state.magneto)]
    texts += [*(word for word, _ in lead_picture(state).words)]
    moves = plan(coupling.magneto_teeth, coupling.drive_teeth, engaged.ratio, 21.3, 25.0, most=3)
    texts += [word for move in moves for word in move_words(move, magneto.rotation, "drive end")]
    texts += [outside_words(moves, 1e-6), coupling_words(engaged)]
    texts += [step_words(step, magneto.rotation, engaged.mounting) for step in steps_between((0, 0), (2, -1))]
    rates = WearRates(0.05, 0.01)
    texts += [expectation_words(state, rates, 100.0), leaving_words(state, rates), format_length(0.25, True)]
    outcomes = judge_linear(internal_measurement(magneto, read_internal(state, ())))
    texts += [outcome_words(o) for o in outcomes] + [matters_words(o) for o in outcomes]
    assert len(texts) > 25 and english(texts) == []
    assert format_length(0.25, False) == "0,250 mm"


@pytest.mark.usefixtures("bracketed")
def test_actions_are_heard() -> None:
    state = new_bench(find_installation(shipped_names("installations")[0]))
    texts = []
    for action in (
        bench.TightenClamps(False), bench.TurnBackplate(1.0), bench.TightenLock(False), bench.TurnScrew(-3.0),
        bench.TurnCrank(20.0), bench.SwitchIgnition(True), bench.PullPlug(True), bench.SetLeadFault("tab", True),
        bench.MoveTeeth(1, -1), bench.MoveTeeth(0, 2), bench.WantTiming("left", 24.0), bench.PaintMarks(),
        bench.MountMagneto(False), bench.TurnRotor(5.0), bench.LetGo(), bench.GrowPip(0.05), bench.WearHeel(0.1),
    ):  # fmt: skip
        after = apply(state, action)
        texts.append(describe(action, state, after))
        state = after
    assert english(texts) == []


@pytest.mark.usefixtures("bracketed")
def test_refusals_are_heard() -> None:
    magneto = find_magneto("seven-radial")
    state = new_bench(magneto)
    tight = apply(state, bench.TightenClamps(True))
    data = json.loads(dump_json(magneto))
    texts = [
        refusal(parse_length_mm, "wide"), refusal(parse_length_mm, "3"), refusal(parse_angle_deg, "3 mm"),
        refusal(parse_number, "much"), refusal(apply, tight, bench.TurnBackplate(2.5)),
        refusal(apply, state, bench.MoveTeeth(1, 0)), refusal(apply, state, bench.TurnRotor(float("nan"))),
        refusal(parse_lift_table, "angle, lift"), refusal(advise, magneto, [], (0.0, 1.0)),
        refusal(finish, new_job(), "dead_centre"), refusal(find_magneto, "no-such"),
        out_of_reach_words(internal_timing(magneto).adjust(5.0)),
    ]  # fmt: skip
    for changed in ({"poles": 3}, {"name": 7}, {"e_gap_deg": "wide"}, {"e_gap_deg": 80.0}, {"bolts": 1},
                    {"rotation": "up"}, {"format": "other"}, {"backplate": {"range_deg": (3.0, 1.0)}}):  # fmt: skip
        texts.append(refusal(validate, Magneto, {**data, **changed}, "a.json"))
    texts.append(refusal(attempt_of, {"format": "other"}, "a.json"))
    fields = set(Magneto.model_fields) | {"range_deg", "bolts", "json", "no-such", *shipped_names("magnetos")}
    assert english(texts, fields) == []


@pytest.mark.usefixtures("bracketed")
def test_advice_is_heard() -> None:
    magneto = find_magneto("seven-radial")
    tried = [(0.0, 0.2, 0.23), (1.0, 0.1, 0.12), (1.0, 0.3, 0.33), (2.0, 0.15, 0.18)]
    texts = []
    for count in range(len(tried) + 1):
        advice = advise(magneto, [Trial.blades(*trial) for trial in tried[:count]])
        texts += [advice_words(advice), *disagreement_words(advice.fit)]
    assert len(texts) > len(tried) + 1 and english(texts) == []


@pytest.mark.parametrize("name", ["several-teeth-out", "gap-wrong"])
def test_practice_is_heard(name: str) -> None:
    exercise = find_exercise(name)
    attempt = Trainee(exercise, 4).work()  # who works in English
    speak_through(_bracket, ",")
    try:
        told = debrief_text(attempt, debrief(attempt)).splitlines()
        looked = [v for v in vars(seen(attempt.states()[-1])).values() if isinstance(v, str)]
        papers = [text for line in paper_lines(exercise) for text in line] + goal_words(exercise)
    finally:
        speak_through(None)
    data = {attempt.trainee, *strings(json.loads(dump_json(exercise)))} - {""}
    assert english([*told, *looked, *papers], {text for text in data if " " in text}) == []


@pytest.mark.usefixtures("bracketed")
def test_lessons_wait_in_every_language() -> None:
    """What a step waits for compares what instruments answer in one tongue, whatever is shown."""
    steps = [step for name in shipped_lessons() for step in find_lesson(name).steps]
    assert english([waiting_words(until) for step in steps for until in step.until]) == []


@pytest.mark.usefixtures("bracketed")
def test_acts_in_practice_are_heard_done_or_refused() -> None:
    """Every act of a random trainee, on every exercise."""
    draw, texts = random.Random(7), []
    for name in shipped_exercises():
        session = Session(find_exercise(name), 3)
        for second in range(60):
            act = draw.choice(
                [
                    bench.TightenClamps(draw.random() < 0.5), bench.TightenLock(draw.random() < 0.5),
                    do.TurnPlate(draw.uniform(-9, 9)), do.TurnScrew(draw.uniform(-90, 90)),
                    do.TurnPropeller(draw.uniform(-400, 400)), do.TurnRotor(draw.uniform(-400, 400)),
                    do.TurnUntil(draw.choice(["lamp", "mark", "widest", "stop"]), draw.random() < 0.5),
                    do.ConnectLamp(True), do.LayStraightedge(True), do.TryBlades((8.0,), "inch"), do.MeterLead(),
                    do.FitStop(draw.random() < 0.5), do.SparkPlugs(draw.random() < 0.5), do.Nuts(draw.random() < 0.5),
                    do.Pin(draw.random() < 0.3), do.Remove(), do.Refit(draw.random() < 0.5), do.TurnDisc(1.0),
                    do.MoveTooth("disc", 1), bench.SlipPaper(draw.random() < 0.5), do.PointAt("rotor"),
                    do.InspectContacts(),
                    do.WriteReading("gap", 0.25), do.WriteReading("lead", None, "broken"), bench.SwitchIgnition(True),
                ]
            )  # fmt: skip
            before = session.practice
            try:
                after = session.send(act, float(second))
            except SpecError as error:
                texts.append(str(error))
            else:
                texts += [
                    act_words(act, before, after),
                    *(v for v in vars(seen(after)).values() if isinstance(v, str)),
                ]
    assert english(texts) == []


def test_marks_do_not_depend_on_the_language() -> None:
    attempt = Trainee(find_exercise("gap-wrong"), 4).work()
    there = debrief(attempt).marking
    speak_through(lambda text: f"⟦{text}⟧", ",")
    try:
        here = debrief(attempt).marking
    finally:
        speak_through(None)
    assert (here.percent, here.passed) == (there.percent, there.passed)
    assert [row.got for row in here.rows] == [row.got for row in there.rows]


@pytest.mark.parametrize("name", shipped_jobs())
def test_a_job_sheet_is_heard(name: str, bracketed: None) -> None:
    job = read_job(job_path(name))
    texts = texts_of(document(job))
    data = {text for text in strings(json.loads(dump_json(job))) if len(text) > 2}
    assert len(texts) > 100 and english(texts, data) == []


def test_files_for_machines_are_alike_in_every_language() -> None:
    job, state = read_job(job_path(shipped_jobs()[0])), new_bench(find_magneto("seven-radial"))
    written = csv_text(job), json_text(job), dump_json(job), curve_csv(lobe_table(state))
    speak_through(lambda text: f"⟦{text}⟧", ",")
    try:
        assert written == (csv_text(job), json_text(job), dump_json(job), curve_csv(lobe_table(state)))
    finally:
        speak_through(None)


def test_a_refusal_is_english_without_a_translator() -> None:
    with pytest.raises(SpecError, match=r"^“wide” is not a length: write a number and a unit, such as 0\.33mm"):
        parse_length_mm("wide")
