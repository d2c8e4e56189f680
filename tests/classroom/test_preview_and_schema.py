"""What is published of the file formats holds for files; the preview shows what is drawn and what is read."""

from __future__ import annotations

import json
from html import unescape

import jsonschema
import pytest

from magview.classroom.key import faults_of
from magview.classroom.preview import advice, preview_html
from magview.classroom.schema import MODELS, schema
from magview.classroom.sets import write_set
from magview.practice.exercise_parts import Tray
from magview.practice.library import find_exercise, shipped_exercises
from magview.spec.library import resources
from tests.classroom.attempts import a_set, done, handed
from tests.counts import sampled
from tests.wording import says


def validator(kind):
    found = schema(kind)
    jsonschema.Draft202012Validator.check_schema(found)
    return jsonschema.Draft202012Validator(found)


@pytest.mark.parametrize("kind", MODELS)
def test_a_schema_is_one(kind):
    assert validator(kind).schema["title"] == f"magview-{kind}/1"
    assert not validator(kind).is_valid({})


@pytest.mark.parametrize("name", sampled(shipped_exercises(), 4))
def test_shipped_exercises_fit_the_schema(name):
    validator("exercise").validate(json.loads((resources() / "exercises" / f"{name}.json").read_text("utf-8")))


def test_sets_and_handed_in_files_fit_their_schemas(tmp_path):
    of = a_set("gap-wrong", "both-everything-wrong", pupils=("Zoë",), minutes=30)
    write_set(tmp_path / "set.json", of)
    data = json.loads((tmp_path / "set.json").read_text("utf-8"))
    validator("class").validate(data)
    validator("class").validate({**data, "exercises": ["pips", "own.json"]})
    assert not validator("class").is_valid({**data, "seed": -1})
    text = handed(of, 1, "Zoë", done(of, 1, "Zoë", "idle"))[1]
    validator("handed-in").validate(json.loads(text))
    assert not validator("handed-in").is_valid({**json.loads(text), "digest": "x"})


@pytest.mark.parametrize("name", shipped_exercises())
def test_the_preview_shows_what_is_hidden_and_what_is_read(name):
    exercise = find_exercise(name)
    html = unescape(preview_html(exercise, 7))
    assert all(f.words in html for f in faults_of(exercise, 7))
    assert exercise.task.splitlines()[0] in html


@pytest.mark.parametrize("name", shipped_exercises())
def test_a_shipped_exercise_asks_for_all_it_hides_and_its_tray_can_prove_it(name):
    assert advice(find_exercise(name)) == []


def test_where_pips_may_be_clean_contacts_are_asked_for():
    hiding = [
        e for e in map(find_exercise, shipped_exercises()) if any(f.kind in ("pip", "contacts") for f in e.faults)
    ]
    assert hiding
    assert all(any(g.goal == "contacts" for g in e.goals) for e in hiding)


def test_text_is_not_taken_for_html():
    exercise = find_exercise("gap-wrong").model_copy(update={"story": "<b>a & b</b>"})
    assert "&lt;b&gt;a &amp; b&lt;/b&gt;" in preview_html(exercise, 7)


def test_what_may_have_been_forgotten():
    exercise = find_exercise("gap-wrong")
    assert advice(exercise) == []
    bare = exercise.model_copy(update={"tray": Tray(lamp=True, straightedge="0.5 mm")})
    assert advice(bare) == ["Nothing on the tray can prove “largest gap within its limits”."]
    only_gap = exercise.model_copy(update={"goals": tuple(g for g in exercise.goals if g.goal == "gap")})
    assert advice(only_gap) == [says("No goal asks for “{fault}”.", fault="opens early or late")]


@pytest.mark.parametrize(
    "path", sampled(sorted((resources() / "lessons").glob("*.json")), 3), ids=lambda path: path.stem
)
def test_shipped_lessons_are_valid_by_the_published_schema(path):
    data = json.loads(path.read_text(encoding="utf-8"))
    check = validator("lesson")
    assert list(check.iter_errors(data)) == []
    assert not check.is_valid(data | {"unheard_of": 1})
