"""The published schemas, read by a program that is not ours: shipped files are valid, wrong ones are not."""

from __future__ import annotations

import json
import re

import pytest
from jsonschema import Draft202012Validator

from magview.job.schema import MODELS, schema, schema_text
from magview.spec.library import resources

FOLDERS = {"magneto": "magnetos", "engine": "engines", "installation": "installations", "job": "jobs"}
SHIPPED = [(kind, path) for kind, folder in FOLDERS.items() for path in sorted((resources() / folder).glob("*.json"))]


@pytest.mark.parametrize("kind", MODELS)
def test_a_schema_is_one(kind):
    Draft202012Validator.check_schema(json.loads(schema_text(kind)))
    assert schema(kind)["title"] == f"magview-{kind}/1"


def test_patterns_are_read_alike_everywhere():
    patterns = re.findall(r'"pattern": ("[^"]*")', "".join(schema_text(kind) for kind in MODELS))
    assert patterns
    for pattern in patterns:
        one_line = re.compile(json.loads(pattern))
        assert one_line.search("Ärger 7 °") and not one_line.search("a\nb") and not one_line.search("\x00")


@pytest.mark.parametrize(("kind", "path"), SHIPPED, ids=[p.stem for _, p in SHIPPED])
def test_shipped_files_are_valid(kind, path):
    assert list(Draft202012Validator(schema(kind)).iter_errors(json.loads(path.read_text(encoding="utf-8")))) == []


@pytest.mark.parametrize("kind", FOLDERS)
@pytest.mark.parametrize("wrong", ["extra", "format", "type"])
def test_wrong_files_are_not(kind, wrong):
    path = next(p for k, p in SHIPPED if k == kind)
    data = json.loads(path.read_text(encoding="utf-8"))
    if wrong == "extra":
        data["unheard_of"] = 1
    elif wrong == "format":
        data["format"] = "something/1"
    else:
        name = "name" if kind in ("magneto", "engine") else "coupling" if kind == "installation" else "title"
        data[name] = 12
    assert not Draft202012Validator(schema(kind)).is_valid(data)


def test_a_skipped_stage_and_units_are_described():
    parts = schema("job")["$defs"]
    assert parts["AsFound"]["properties"]["gap_mm"]["title"] == "Largest gap"
    assert parts["Closing"]["properties"]["state"]["enum"] == ["open", "done", "skipped"]
