"""All that people read goes through `tr`: searched for in the source, and heard through a bracketing translator."""

from __future__ import annotations

import ast
import json
import random
import re
import string
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest

from magview.bench import actions as bench
from magview.bench.apply import apply, new_bench
from magview.bench.breaker_end import breaker_end
from magview.bench.crank_end import crank_end
from magview.bench.curves import csv_text as curve_csv
from magview.bench.curves import lobe_table
from magview.bench.describe import describe
from magview.bench.drive_end import drive_end
from magview.bench.lead_picture import lead_picture, lead_words, meter_words
from magview.bench.state import readings
from magview.bench.sureness import matters_words, outcome_words, read_internal
from magview.bench.tooth_steps import coupling_words, step_words, steps_between
from magview.bench.verdict import faults
from magview.bench.wear_words import expectation_words, leaving_words
from magview.bench.words import PARTS, move_words, setting_moves, short_words
from magview.job.document import Figures, Heading, Paragraph, SignatureLines, Table, document, footer
from magview.job.judge import finish
from magview.job.library import find_job, shipped_jobs
from magview.job.readings import csv_text, json_text
from magview.job.sheet import new_job
from magview.physics.advice import advise
from magview.physics.coupling import outside_tolerance, plan
from magview.physics.measurement import judge_linear
from magview.physics.setting import internal_timing
from magview.physics.setting_uncertainty import internal_measurement
from magview.physics.trials import Trial
from magview.physics.wear import WearRates
from magview.practice import actions as do
from magview.practice.attempt import Session, attempt_of
from magview.practice.debrief import debrief
from magview.practice.lesson_words import waiting_words
from magview.practice.library import find_exercise, find_lesson, shipped_exercises, shipped_lessons
from magview.practice.paper import goal_words, paper_lines
from magview.practice.report import debrief_text
from magview.practice.seen import seen
from magview.practice.words import act_words
from magview.spec import language
from magview.spec.base import SpecError
from magview.spec.files import dump_json, validate
from magview.spec.language import number, speak_through, tr
from magview.spec.library import find_installation, find_magneto, resources, shipped_names
from magview.spec.lift_table import parse_lift_table
from magview.spec.magneto import Magneto
from magview.spec.units import format_length, parse_angle_deg, parse_length_mm, parse_number
from tests.practice.trainee import Trainee

ROOMS = ("spec", "physics", "bench", "practice", "job", "classroom", "upkeep", "ui")
PACKAGE = Path(language.__file__).parents[1]

_WORD = re.compile(r"[^\W\d_]{2,}")
_UNITS = {"mm", "in", "µm", "um", "thou", "deg", "rpm", "magview", "Wb", "min"}
_PROPER = {"Python", "Qt", "Esc", "Fusion", "DejaVu Sans", "English", "Deutsch", "high contrast"}
"""Names of programs, keys, styles, fonts, languages in their own words, and of a theme in the settings."""
_BEFORE_QT = {"preflight.py"}
"""Tells a terminal why there can be no window, where no translator can be loaded."""
TREES = {
    path: ast.parse(path.read_text())
    for room in ROOMS
    for path in sorted((PACKAGE / room).glob("*.py"))
    if path.name not in _BEFORE_QT
}


# ---------------------------------------------------------------------- searched for in the source


def _strings(value: Any) -> Iterator[str]:
    if isinstance(value, str):
        yield value
    for part in value.values() if isinstance(value, dict) else value if isinstance(value, list | tuple) else ():
        yield from _strings(part)


def _name(call: ast.Call) -> str:
    return call.func.id if isinstance(call.func, ast.Name) else getattr(call.func, "attr", "")


def _spoken(tree: ast.AST) -> Iterator[ast.Call]:
    for node in ast.walk(tree):
        if isinstance(node, ast.Call) and _name(node) in ("tr", "marked") and isinstance(node.func, ast.Name):
            yield node


def _said(tree: ast.AST) -> set[str]:
    """What is marked or read out, as it stands, and the names that types allow: words that may serve as names."""
    found = {c.args[0].value for c in _spoken(tree) if c.args and isinstance(c.args[0], ast.Constant)}
    for node in ast.walk(tree):
        if isinstance(node, ast.Subscript) and isinstance(node.value, ast.Name) and node.value.id == "Literal":
            found |= {n.value for n in ast.walk(node.slice) if isinstance(n, ast.Constant)}
    return {text for text in found if isinstance(text, str)}


NAMES = set().union(*(_said(tree) for tree in TREES.values()))
RESOURCES = set(_strings([json.loads(path.read_text()) for path in resources().rglob("*.json")]))

_READ_BY_MACHINES = {
    "compile", "fullmatch", "split", "sub", "startswith", "removeprefix", "glob", "einsum", "exec", "AssertionError",
    "TypeError", "Formatter", "match",
}  # fmt: skip
"""What is called with patterns, prefixes, source text, or says what cannot happen."""

_SCHEMA_WORDS = {"description", "$comment", "$schema"}


def unspoken(tree: ast.AST, names: set[str] = NAMES) -> list[str]:
    """Words in a source that no translator would see.

    No words are: documentation, types, names (one lower-case token, keys of tables, fields of files, or what is
    marked or a type's choice elsewhere), units, markup and style sheets, source text in a module that compiles it,
    patterns, columns of tables of numbers (functions called …_table), the describing keys of JSON Schema.
    """
    above = {child: node for node in ast.walk(tree) for child in ast.iter_child_nodes(node)}
    compiles = any(isinstance(n, ast.Call) and _name(n) == "exec" for n in ast.walk(tree))
    found = []
    for node in ast.walk(tree):
        if isinstance(node, ast.JoinedStr):
            # A space for each place but for those within one word: such are fields and names of files.
            text = "".join(v.value if isinstance(v, ast.Constant) else "\0" for v in node.values)
        elif isinstance(node, ast.Constant) and isinstance(node.value, str):
            text = node.value
        else:
            continue
        if isinstance(above[node], ast.Expr | ast.JoinedStr | ast.FormattedValue) and isinstance(node, ast.Constant):
            continue
        if not (compiles or text in names or _no_words(text) or _for_machines(node, above)):
            found.append(f"line {node.lineno}: {text!r}")
    return found


def _no_words(text: str) -> bool:
    bare = re.sub(r"<[^>]*>?|[\w-]+=\"[^\"]*\"?|^[^<]*>", " ", text) if re.search(r"<|=\"", text) else text
    bare = re.sub(r"\w+\[[^\]]*\]", " ", bare)  # a field of a file
    words = [word for word in _WORD.findall(bare) if word not in _UNITS]
    if text in _PROPER or re.fullmatch(
        r"([A-Z]* ?\(\*\.[^()]*\)(;;)?)+|(\s*%\(\w+\)s)+", text
    ):  # kinds of file; a log's line
        return True
    if not words or re.search(r"\{[^{}]*:[^{}]*;\s*\}", text):
        return True
    return not re.search(r"\s", bare.strip()) and not re.fullmatch(r"[A-Z][a-z]+[.:]?", bare)


def _for_machines(node: ast.AST, above: dict[ast.AST, ast.AST]) -> bool:
    while node in above:
        child, node = node, above[node]
        if isinstance(node, ast.Call) and child is not node.func:
            if _name(node) in ("tr", "marked") or _name(node) in _READ_BY_MACHINES:
                return True
        elif (
            (isinstance(node, ast.Subscript) and child is node.slice)
            or (isinstance(node, ast.AnnAssign | ast.arg) and child is node.annotation)
            or (isinstance(node, ast.Dict) and child in node.keys)
        ):
            return True
        elif isinstance(node, ast.Dict) and child in node.values:
            key = node.keys[node.values.index(child)]  # type: ignore[arg-type]
            if isinstance(key, ast.Constant) and key.value in _SCHEMA_WORDS:
                return True
        elif isinstance(node, ast.FunctionDef) and re.fullmatch(r"[a-z]+_table", node.name):
            return True
    return False


@pytest.mark.parametrize("path", TREES, ids=lambda path: f"{path.parent.name}/{path.name}")
def test_all_words_of_the_source_are_seen_by_translators(path: Path) -> None:
    assert unspoken(TREES[path]) == []


@pytest.mark.parametrize(
    "planted",
    [
        'raise SpecError(f"the gap is {gap} mm wide")',
        'raise SpecError("the lamp is dark")',
        'return "Sideways"',
        'head = ("Date:", x)',
        "words = tr('Turn it') + (' and hold' if hold else '')",
        "tr('Turn it {way}', way='with rotation' if on else 'against rotation')",
        'page = f"<p>Read on</p>"',
        'TABLE = {"gap": "largest gap there is"}',
        "def told() -> str:\n    return f'{count} teeth left'",
    ],
)
def test_planted_words_are_found(planted: str) -> None:
    tree = ast.parse(planted)
    found = unspoken(tree)
    if "way=" in planted:  # words given to a place of a template
        assert glued(tree)
    else:
        assert found


@pytest.mark.parametrize(
    "harmless",
    ['"""Documentation of it."""', 'kind = "law"', 'x = f"{side}_btdc_deg"', 'x: Literal["drive end"] = "drive end"',
     'tr("Turn it {way}", way=way)', 're.compile(r"not a date")', 'x = f"{number(a, 2)} mm"',
     "x = f'<col style=\"width:{w}%\">'"],
)  # fmt: skip
def test_what_is_no_word_is_not_found(harmless: str) -> None:
    tree = ast.parse(harmless)
    assert unspoken(tree, NAMES | _said(tree)) == [] and glued(tree) == []


def glued(tree: ast.AST) -> list[str]:
    """Calls of tr and marked that no collector can read, or with words, not values, for a template's places."""
    found = []
    for call in _spoken(tree):
        first = call.args[0] if len(call.args) == 1 else None
        literal = isinstance(first, ast.Constant) and isinstance(first.value, str)
        if first is None or isinstance(first, ast.JoinedStr | ast.BinOp) or (_name(call) == "marked" and not literal):
            found.append(f"line {call.lineno}: not one literal: {ast.unparse(call)[:80]}")
        if literal and not first.value.strip():  # type: ignore[union-attr]
            found.append(f"line {call.lineno}: empty")
        for keyword in call.keywords:
            spoken = {n for c in _spoken(keyword.value) for n in ast.walk(c)}
            for node in ast.walk(keyword.value):
                words = node.value if isinstance(node, ast.Constant) and node not in spoken else None
                if isinstance(words, str) and words not in NAMES and re.search(r"[^\W\d_]{2,}\s+[^\W\d_]{2,}", words):
                    found.append(f"line {call.lineno}: words for a place: {words!r}")
    return found


@pytest.mark.parametrize("path", TREES, ids=lambda path: f"{path.parent.name}/{path.name}")
def test_texts_are_whole_literals_and_their_places_are_filled(path: Path) -> None:
    assert glued(TREES[path]) == []
    for call in _spoken(TREES[path]):
        text = call.args[0]
        if isinstance(text, ast.Constant) and _name(call) == "tr" and all(k.arg for k in call.keywords):
            places = (
                {name for _, name, _, _ in string.Formatter().parse(text.value) if name} if call.keywords else set()
            )
            assert places == {k.arg for k in call.keywords}, f"line {call.lineno}"


def test_every_drawn_part_has_its_words() -> None:
    drawn = set()
    for name in shipped_names("installations"):
        item = find_installation(name)
        picture = breaker_end(item.magneto)
        shapes = (*picture.shapes, *drive_end(item.coupling), *crank_end(item.engine).shapes)
        drawn |= {shape.part for shape in shapes} | set(picture.anchors)
    assert drawn and drawn <= set(PARTS)


# ---------------------------------------------------------------------- heard


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
    assert HEARD and HEARD <= NAMES | RESOURCES


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
        if any(word not in _UNITS for word in _WORD.findall(rest)):
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
    texts += [lead_words(state)[0], meter_words(state), *(word for word, _ in lead_picture(state).words)]
    moves = plan(coupling.magneto_teeth, coupling.drive_teeth, engaged.ratio, 21.3, 25.0, most=3)
    texts += [word for move in moves for word in move_words(move, magneto.rotation, "drive end")]
    texts += [outside_tolerance(moves, 1e-6) or "", coupling_words(engaged)]
    texts += [step_words(step, magneto.rotation, engaged.mounting) for step in steps_between((0, 0), (2, -1))]
    rates = WearRates(0.05, 0.01)
    texts += [expectation_words(state, rates, 100.0, False), leaving_words(state, rates), format_length(0.25, True)]
    outcomes = judge_linear(internal_measurement(magneto, read_internal(state, ())))
    texts += [outcome_words(o, False) for o in outcomes] + [matters_words(o) for o in outcomes]
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
        internal_timing(magneto).adjust(5.0).reason,
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
        texts += [advice.reason, *advice.warnings]
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
    data = {attempt.trainee, *_strings(json.loads(dump_json(exercise)))} - {""}
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
                    do.MoveTooth("disc", 1), do.SlipPaper(draw.random() < 0.5), do.PointAt("rotor"),
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
    job = find_job(name)
    texts = [footer(job)]
    for block in document(job):
        match block:
            case Heading(text, _, mark):
                texts += [text, mark]
            case Paragraph(text):
                texts.append(text)
            case Table():
                texts += [*block.head, *(cell for row in block.rows for cell in row)]
            case Figures(pictures):
                texts += [caption for _, caption in pictures]
            case SignatureLines(lines):
                texts += [what for what, _ in lines]
    data = {text for text in _strings(json.loads(dump_json(job))) if len(text) > 2}
    assert len(texts) > 100 and english(texts, data) == []


def test_files_for_machines_are_alike_in_every_language() -> None:
    job, state = find_job(shipped_jobs()[0]), new_bench(find_magneto("seven-radial"))
    written = csv_text(job), json_text(job), dump_json(job), curve_csv(lobe_table(state))
    speak_through(lambda text: f"⟦{text}⟧", ",")
    try:
        assert written == (csv_text(job), json_text(job), dump_json(job), curve_csv(lobe_table(state)))
    finally:
        speak_through(None)


def test_a_refusal_is_english_without_a_translator() -> None:
    with pytest.raises(SpecError, match=r"^“wide” is not a length: write a number and a unit, such as 0\.23mm"):
        parse_length_mm("wide")
