"""Where values come from: sources of fields that there are, one each, and the published schema beside the reader."""

from __future__ import annotations

import copy
import json

import pytest
from jsonschema import Draft202012Validator

from magview.spec.base import SpecError
from magview.spec.engine import Engine, Installation
from magview.spec.files import dump_json, refusals, validate
from magview.spec.json_schema import schema_of
from magview.spec.library import find_engine, find_installation, find_magneto, shipped_names
from magview.spec.magneto import Magneto
from magview.spec.sources import Source, leaf_paths, noted
from tests.magnetos import plain

SHIPPED = [
    (model, find(name))
    for model, kind, find in (
        (Magneto, "magnetos", find_magneto),
        (Engine, "engines", find_engine),
        (Installation, "installations", find_installation),
    )
    for name in shipped_names(kind)
]


def leaves_of(data, path=""):
    """The names of what a file's JSON holds, parts gone into and lists not: a second way to them."""
    for name, value in data.items():
        here = f"{path}.{name}".lstrip(".")
        if isinstance(value, dict) and "format" not in value:
            yield from leaves_of(value, here)
        else:
            yield here


@pytest.mark.parametrize(("model", "item"), SHIPPED)
def test_every_value_of_a_shipped_file_can_have_a_source(model, item):
    data = json.loads(dump_json(item))
    del data["format"]
    data.pop("sources", None)
    if model is Installation:  # files of their own, with sources of their own
        data["magneto"] = data["engine"] = "x"
    names = set(leaves_of(data))
    assert names <= set(leaf_paths(model))
    told = tuple({"field": name, "origin": "measured", "note": "by hand"} for name in names)
    again = validate(model, {**dict(item), "sources": told}, "x")
    assert {s.field for s in again.sources} == names


@pytest.mark.parametrize(
    ("sources", "told"),
    [
        ([("e_gap", "manual")], "sources[0].field is “e_gap”; it must be the name of a field of this file"),
        ([("poles", "manual"), ("magneto.poles", "manual")], "sources[1].field is “magneto.poles”"),
        ([("poles", "manual"), ("cam", "measured"), ("poles", "assumed")],
         "sources[2].field is “poles”, which has a source already"),
        ([("sources", "manual")], "“sources”"),
        ([("poles", "hearsay")], '"manual", "measured", "worked-out", "assumed" or "shipped"'),
    ],
)  # fmt: skip
def test_a_source_of_nothing_and_a_second_one_are_refused(sources, told):
    data = plain(sources=tuple({"field": field, "origin": origin} for field, origin in sources))
    with pytest.raises(SpecError) as caught:
        validate(Magneto, data, "x")
    assert told in str(caught.value)


def test_a_whole_part_may_have_one_source():
    found = validate(Magneto, plain(sources=({"field": "cam.profile", "origin": "measured"},)), "x")
    assert found.sources == (Source(field="cam.profile", origin="measured"),)


def test_new_values_take_the_place_of_what_was_noted_of_them_and_within_them():
    old = tuple(
        Source(field=f, origin="manual", note="p. 1")
        for f in ("poles", "cam.profile.lift_mm", "cam.profile_of", "cam")
    )
    new = noted(old, ("cam.profile", "e_gap_deg"), "measured", "x" * 300)
    assert [s.field for s in new] == ["poles", "cam.profile_of", "cam", "cam.profile", "e_gap_deg"]
    assert {s.note for s in new[3:]} == {"x" * 200}, "a note has 200 characters at most"


@pytest.mark.parametrize(("model", "item"), SHIPPED)
def test_the_schema_takes_shipped_files_and_refuses_what_the_reader_refuses(model, item):
    """`jsonschema` is the second reading: it must refuse unknown names, empty ones and control signs as ours does."""
    schema = schema_of(model)
    Draft202012Validator.check_schema(schema)
    check, data = Draft202012Validator(schema), json.loads(dump_json(item))
    assert check.is_valid(data)
    assert not check.is_valid({**data, "strange": 1}) and not check.is_valid({**data, "format": "x"})
    if "name" in data:
        for name, fine in (("Ü · 1/2", True), ("two\nlines", False), ("bell\x07", False), ("", False)):
            assert check.is_valid({**data, "name": name}) == fine
            assert (refusals(model, {**dict(item), "name": name}) == []) == fine
    assert "\\p" not in json.dumps(schema), "not every dialect of regular expressions knows it"


def test_all_that_is_wrong_is_told_place_by_place_and_what_is_missing_is_not():
    data = copy.deepcopy(plain(poles=3))
    data["marks"]["radius_mm"] = -1.0
    del data["e_gap_deg"]
    assert refusals(Magneto, plain()) == []
    assert dict(refusals(Magneto, data)) == {
        ("poles",): "poles is 3; it must be a multiple of 2",
        ("marks", "radius_mm"): "marks.radius_mm is -1.0; it must be at least 0.001",
    }


@pytest.mark.parametrize(
    ("order", "told"),
    [((2, 1, 3, 4, 5, 6), "begins with 2; it must begin with cylinder 1"),
     ((1, 5, 3, 6, 2), "must name each cylinder from 1 to 6 once"),
     ((1, 5, 3, 6, 2, 2), "must name each cylinder from 1 to 6 once")],
)  # fmt: skip
def test_a_firing_order_begins_with_one_and_names_each_once(order, told):
    """Common practice: firing orders are counted from No. 1."""
    with pytest.raises(SpecError, match=told):
        validate(Engine, {**dict(find_engine("six-inline")), "firing_order": order}, "x")
