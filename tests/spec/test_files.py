"""Bad files are refused in one clear sentence; good ones survive writing, and a failed write spoils nothing."""

import copy
import errno
import json
import os
import random
import stat
import tracemalloc
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from magview.spec.base import SpecError
from magview.spec.engine import Installation
from magview.spec.files import (
    MAX_BYTES,
    read_bench_item,
    read_engine,
    read_installation,
    read_json,
    read_magneto,
    validate,
    write_model,
)
from magview.spec.library import resources, shipped_names
from magview.spec.magneto import Magneto
from tests.counts import examples
from tests.magnetos import magnetos, plain
from tests.spec.sentences import check_sentence
from tests.wording import says

READERS = {"magnetos": read_magneto, "engines": read_engine, "installations": read_installation}
SHIPPED = [(kind, name) for kind in READERS for name in shipped_names(kind)]


def refusal(path: Path, reader=read_magneto) -> str:
    with pytest.raises(SpecError) as caught:
        reader(path)
    text = str(caught.value)
    check_sentence(text)
    return text


def given_text(folder: Path, text: str | bytes, name: str = "mag.json") -> Path:
    path = folder / name
    path.write_bytes(text if isinstance(text, bytes) else text.encode("utf-8", "surrogatepass"))
    return path


def given_data(folder: Path, data: object) -> Path:
    return given_text(folder, json.dumps(data))


def changed(place: str, value: object) -> dict:
    """The plain file with one value put at a dotted place; an Ellipsis takes the place out."""
    data = json.loads(json.dumps(plain()))
    *parents, last = place.split(".")
    part = data
    for name in parents:
        part = part.setdefault(name, {})
    if value is ...:
        del part[last]
    else:
        part[last] = value
    return data


# ---------------------------------------------------------------------- what a person gets told


@pytest.mark.parametrize(
    ("place", "value", "field", "shown", "allowed"),
    [
        ("e_gap_deg", "11", "e_gap_deg", '"11"', "finite number of degrees"),
        ("e_gap_deg", True, "e_gap_deg", "true", "finite number of degrees"),
        ("e_gap_deg", None, "e_gap_deg", "null", "finite number of degrees"),
        ("e_gap_deg", [1], "e_gap_deg", "[1]", "finite number of degrees"),
        ("e_gap_deg", -1, "e_gap_deg", "-1", "above 0"),
        ("e_gap_deg", 46.0, "e_gap_deg", "46", "below 45"),
        ("e_gap_deg", 10**399, "e_gap_deg", "1000", "finite number"),
        ("marks.radius_mm", 0, "marks.radius_mm", "0", "at least 0.001"),
        ("marks.radius_mm", "1.4in", "marks.radius_mm", '"1.4in"', "finite number of millimetres"),
        ("marks.radius_in", 1.4, "marks.radius_in", "", "did you mean radius_mm?"),
        ("e_gap", 11, "e_gap", "", "did you mean e_gap_deg?"),
        ("zzz", 1, "zzz", "", "known here: backplate, breaker"),
        ("cam.profile.lift", 1, "cam.profile.lift", "", "did you mean lift_mm?"),
        ("contact_screw.lead_mm", 1, "contact_screw.lead_mm", "", "known"),
        ("breaker", ..., "breaker", "", "is missing"),
        ("cam.profile.rise_deg", ..., "cam.profile.rise_deg", "", "is missing"),
        ("breaker.pivot", ..., "breaker.pivot", "", "only a measured profile can do without"),
        ("poles", 4.0, "poles", "4.0", "whole number"),
        ("poles", 3, "poles", "3", "multiple of 2"),
        ("poles", 14, "poles", "14", "at most 12"),
        ("rotation", "left", "rotation", '"left"', '"clockwise" or "anticlockwise"'),
        ("name", "", "name", '""', "at least 1"),
        ("name", "x" * 500, "name", '"xxxx', "at most 120"),
        ("name", "\ud800", "name", "", "text"),
        ("name", [], "name", "[]", "be text"),
        ("name", "two\nlines", "name", "two", "one line of text"),
        ("gap_limits_mm", [0.3, 0.2], "gap_limits_mm", "[0.3, 0.2]", "first must be below the second"),
        ("gap_limits_mm", [0.1, 0.2, 0.3], "gap_limits_mm", "[0.1, 0.2, 0.3]", "at most 2 values"),
        ("gap_limits_mm", 0.2, "gap_limits_mm", "0.2", "be a list"),
        ("detent", "x", "detent", '"x"', "object in braces"),
        ("cam.profile", 3, "cam.profile", "3", "object in braces"),
        ("cam.profile.kind", "polar", "cam.profile.kind", '"polar"', '"law" or "measured"'),
        ("cam.profile.kind", [1], "cam.profile.kind", "[1]", '"law" or "measured"'),
        ("cam.profile.kind", ..., "cam.profile.kind", "", '"law" or "measured"'),
        ("contact_screw.kind", "wedge", "contact_screw.kind", '"wedge"', '"eccentric" or "threaded"'),
        ("contact_screw.positive_is_clockwise", 1, "positive_is_clockwise", "1", "true or false"),
        ("cam.profile.law", "cubic", "cam.profile.law", '"cubic"', '"modified-sine"'),
        (
            "format",
            "magview-magneto/2",
            "format",
            '"magview-magneto/2"',
            "newer magview wrote it; it is left as it was",
        ),
        ("format", "magview-magneto/0", "format", '"magview-magneto/0"', '"magview-magneto/1"'),
        ("format", "magview-engine/1", "format", '"magview-engine/1"', '"magview-magneto/1"'),
        ("format", 1, "format", "1", '"magview-magneto/1"'),
        ("format", "\ud800", "format", "", '"magview-magneto/1"'),
        ("format", ..., "format", "missing", '"magview-magneto/1"'),
        ("a\nb\x1b[31m", 1, "b", "", "not a known name"),
    ],
)
def test_refusal_names_file_field_value_and_what_is_allowed(tmp_path, place, value, field, shown, allowed):
    text = refusal(given_data(tmp_path, changed(place, value)))
    assert text.startswith("mag.json: ")
    for part in (field, shown, allowed):
        assert part in text


@pytest.mark.parametrize("number", ["NaN", "Infinity", "-Infinity", "1e999", "-1e999", "1" * 5000])
@pytest.mark.parametrize("place", ["e_gap_deg", "cam.profile.lift_mm", "backplate.range_deg"])
def test_numbers_that_are_none_are_refused_by_name(tmp_path, number, place):
    value = ["X", 1] if place.endswith("range_deg") else "X"
    text = refusal(given_text(tmp_path, json.dumps(changed(place, value)).replace('"X"', number)))
    assert place in text and "must be a finite number" in text
    assert "infinite" in text or "not a number" in text


@pytest.mark.parametrize(
    ("content", "told"),
    [
        (b"", "line 1, column 1: not JSON"),
        (b"{", "not JSON"),
        (b'{"a": 1}}', "line 1, column 9: not JSON"),
        (b'{"a": 1,\n "b": }', "line 2, column 7: not JSON"),
        (bytes(range(256)) * 40, "not a text file (byte 128 is not UTF-8)"),
        (b"\x89PNG\r\n\x1a\n\0\0\0", "not a text file (byte 0"),
        (b"\0" * 5000, "not JSON"),
        ('{"format": 1}'.encode("utf-16"), "not a text file"),
        (b"[1, 2]", "must be one JSON object in braces"),
        (b"null", "must be one JSON object in braces"),
        (b'{"format": "magview-magneto/1", "name": "a", "name": "b"}', "“name” is given twice"),
        (b'{"marks": {"a\\nb": 1, "a\\nb": 1}}', "is given twice"),
        (b"[" * 900_000, "nested too deeply"),
        (b'{"a":' * 300_000, "nested too deeply"),
        (b'{"format":"magview-magneto/1","name":' + b"[" * 800 + b"]" * 800 + b"}", ""),
    ],
)
def test_what_is_no_json_object_is_refused(tmp_path, content, told):
    assert told in refusal(given_text(tmp_path, content))


def test_a_byte_order_mark_does_no_harm(tmp_path):
    assert read_magneto(given_text(tmp_path, "\ufeff" + json.dumps(plain()))).name == "Test magneto"


def test_what_cannot_be_read_is_refused(tmp_path, monkeypatch):
    assert "cannot be read: No such file" in refusal(tmp_path / "missing.json")
    assert refusal(tmp_path) == f"{tmp_path.name}: cannot be read: it is not a file"
    assert "cannot be read" in refusal(tmp_path / "nul\0byte.json")
    assert "cannot be read" in refusal(tmp_path / ("long" * 200))
    assert "cannot be read" in refusal(tmp_path / "line\nbreak.json")
    os.symlink("loop.json", tmp_path / "loop.json")
    assert "cannot be read" in refusal(tmp_path / "loop.json")
    os.mkfifo(tmp_path / "pipe.json")
    assert "it is not a file" in refusal(tmp_path / "pipe.json")  # and does not wait for a writer
    assert "it is not a file" in refusal(Path("/dev/zero"))

    def denied(*_args, **_kwargs):
        raise PermissionError(errno.EACCES, "Permission denied")

    path = given_data(tmp_path, plain())
    monkeypatch.setattr(Path, "open", denied)
    assert refusal(path) == "mag.json: cannot be read: Permission denied"


def test_size_is_bounded_before_reading(tmp_path):
    text = json.dumps(plain())
    read_magneto(given_text(tmp_path, text + " " * (MAX_BYTES - len(text))))
    assert "larger than 2 MB" in refusal(given_text(tmp_path, text + " " * (MAX_BYTES + 1 - len(text))))
    huge = tmp_path / "huge.json"
    with huge.open("wb") as file:
        file.truncate(200_000_000)
    tracemalloc.start()
    try:
        assert "larger than 2 MB" in refusal(huge)
        assert tracemalloc.get_traced_memory()[1] < 10 * MAX_BYTES
    finally:
        tracemalloc.stop()


@pytest.mark.parametrize(
    "make",
    [
        lambda: {**plain(), "condition": {"lobe_angle_error_deg": [""] * 400_000}},
        lambda: {**plain(), **{f"k{i}": 0 for i in range(120_000)}},
        lambda: {**plain(), "k" * 1_900_000: 0},
        lambda: {**plain(), "format": "k" * 1_900_000},
        lambda: {**plain(), "cam": [[[]] * 200_000]},
    ],
)
def test_a_full_size_file_of_rubbish_is_refused(tmp_path, make):
    path = given_data(tmp_path, make())
    assert path.stat().st_size > MAX_BYTES / 3
    refusal(path)


def test_a_list_too_long_for_any_file_is_refused_before_each_value_is(tmp_path):
    data = {**plain(), "condition": {"lobe_angle_error_deg": [""] * 400_000}}
    assert says("holds a list of {count} values; at most {most} are read", count=400000, most=25000) in refusal(
        given_data(tmp_path, data)
    )
    profile = {"kind": "measured", "angle_deg": [0.0] * 20_001, "contact_lift_mm": [0.0] * 9}
    data = {**plain(), "cam": {**plain()["cam"], "profile": profile}}
    assert "cam.profile.angle_deg" in refusal(given_data(tmp_path, data))


def test_a_name_given_twice_among_very_many_is_found_quickly(tmp_path):
    # A search that compares each with each takes minutes.
    names = ",".join(f'"k{i}":0' for i in range(150_000))
    assert "“z” is given twice" in refusal(given_text(tmp_path, f'{{{names},"z":0,"z":0}}'))


# ---------------------------------------------------------------------- engines and installations


def test_engine_refusals_stay_short(tmp_path):
    engine = read_json(resources() / "engines" / f"{shipped_names('engines')[0]}.json")
    for order in ([1] * 20_000, [10**3000, 2], [2, 1], []):
        text = refusal(given_data(tmp_path, {**engine, "firing_order": order}), read_engine)
        assert "firing_order" in text


@pytest.mark.parametrize(
    "magneto", ["absent.json", "", "a\nb.json", "a\0b", "\ud800.json", "x" * 100_000, "..", "mag.json", 3, None, []]
)
def test_installation_with_a_bad_magneto_is_refused(tmp_path, magneto):
    data = copy.deepcopy(read_json(resources() / "installations" / f"{shipped_names('installations')[0]}.json"))
    refusal(given_data(tmp_path, {**data, "magneto": magneto}), read_installation)


def test_installation_may_hold_its_parts_or_name_their_files(tmp_path):
    name = shipped_names("installations")[0]
    shipped = read_installation(resources() / "installations" / f"{name}.json")
    write_model(tmp_path / "whole.json", shipped)
    assert read_installation(tmp_path / "whole.json") == shipped
    (tmp_path / "parts").mkdir()
    write_model(tmp_path / "parts" / "m.json", shipped.magneto)
    write_model(tmp_path / "parts" / "e.json", shipped.engine)
    parts = {**json.loads((tmp_path / "whole.json").read_text()), "magneto": "parts/m.json", "engine": "parts/e.json"}
    assert read_installation(given_data(tmp_path, parts)) == shipped
    bad = json.loads((tmp_path / "parts" / "m.json").read_text()) | {"poles": 3}
    given_text(tmp_path / "parts", json.dumps(bad), "m.json")
    assert refusal(tmp_path / "mag.json", read_installation).startswith("m.json: poles is 3;")


# ---------------------------------------------------------------------- fuzz

ODD = [
    *(None, True, False, 0, -1, 1, 2, 4.0, -0.0, 1e-300, 1e300, 10**40, 0.5, 360.0, 1e6, float("nan"), float("inf")),
    *("", "x", "10", "law", "measured", "eccentric", "clockwise", "\0", "\ud800", "\u2028", "a" * 300),
    *(
        [],
        [0.0],
        [[]],
        [0.0, 0.0],
        [0, 1e9],
        list(range(40)),
        {},
        {"kind": "law"},
        {"kind": "measured"},
        {"kind": {}},
    ),
]


def spoil(rng: random.Random, data: dict) -> None:
    """Change, drop, double or swap one value at some depth."""
    places = []

    def walk(node: object) -> None:
        if isinstance(node, dict | list):
            for key in node if isinstance(node, dict) else range(len(node)):
                places.append((node, key))
                walk(node[key])

    walk(data)
    node, key = rng.choice(places)
    kind = rng.randrange(5)
    if kind == 0:
        del node[key]
    elif kind == 1 and isinstance(node[key], int | float):
        node[key] *= rng.choice([-1, 0, 1e-6, 0.1, 0.99, 1.01, 3, 1e3, 1e200])
    elif kind == 2:
        other, there = rng.choice(places)
        node[key] = copy.deepcopy(other[there])
    elif kind == 3 and isinstance(node, dict):
        node[str(key)[:-1] or "?"] = node[key]
    else:
        node[key] = copy.deepcopy(rng.choice(ODD))


@pytest.mark.parametrize(("kind", "name"), SHIPPED)
def test_spoilt_files_raise_spec_errors_only(tmp_path, kind, name):
    reader = READERS[kind]
    write_model(tmp_path / "good.json", reader(resources() / kind / f"{name}.json"))
    good = json.loads((tmp_path / "good.json").read_text())
    rng = random.Random(f"{kind}/{name}")
    refused = 0
    for _ in range(120):
        data = copy.deepcopy(good)
        for _ in range(rng.choice([1, 1, 2, 4])):
            spoil(rng, data)
        path = given_data(tmp_path, data)
        try:
            reader(path)
        except SpecError as error:
            refused += 1
            check_sentence(str(error).removeprefix("mag.json: "))
    assert refused > 60


def test_spoilt_bytes_raise_spec_errors_only(tmp_path):
    good = json.dumps(plain()).encode()
    rng = random.Random(7)
    for _ in range(400):
        data = bytearray(good)
        for _ in range(rng.choice([1, 2, 8])):
            at = rng.randrange(len(data))
            data[at : at + rng.choice([0, 1, 1, 20])] = rng.choice(
                [b"", b"\0", b"\xff", b"{", b"]", b'"', b"9", b"-", b"e"]
            )
        try:
            read_magneto(given_text(tmp_path, bytes(data)))
        except SpecError as error:
            check_sentence(str(error))


# ---------------------------------------------------------------------- writing


@settings(max_examples=examples(60), deadline=None)
@given(magneto=magnetos())
def test_what_is_written_reads_back_equal(tmp_path_factory, magneto):
    path = tmp_path_factory.mktemp("round") / "mag.json"
    write_model(path, magneto)
    assert read_magneto(path) == magneto


@settings(max_examples=examples(60), deadline=None)
@given(
    name=st.text(st.characters(exclude_categories=["Cc", "Cs"]), min_size=1, max_size=120),
    notes=st.text(max_size=400),
)
def test_any_text_survives(tmp_path_factory, name, notes):
    path = tmp_path_factory.mktemp("text") / "mag.json"
    write_model(path, read_of(plain(name=name, notes=notes), path))
    again = read_magneto(path)
    assert (again.name, again.notes) == (name, notes)


def read_of(data: dict, path: Path) -> Magneto:
    return read_magneto(given_data(path.parent, data))


@pytest.mark.parametrize("step", ["fsync", "replace", "chmod", "fdopen"])
def test_a_failed_write_leaves_the_old_file_and_nothing_else(tmp_path, monkeypatch, step):
    path = given_data(tmp_path, plain(name="Old"))
    old = path.read_bytes()
    new = read_of(plain(name="New"), tmp_path / "x")
    path.write_bytes(old)

    def full(*_args, **_kwargs):
        raise OSError(errno.ENOSPC, "No space left on device")

    monkeypatch.setattr(os, step, full)
    with pytest.raises(SpecError) as caught:
        write_model(path, new)
    assert str(caught.value) == "mag.json: cannot be written: No space left on device"
    assert path.read_bytes() == old
    assert sorted(p.name for p in tmp_path.iterdir()) == ["mag.json"]


def test_a_write_into_no_folder_is_refused(tmp_path):
    magneto = read_of(plain(), tmp_path / "x")
    with pytest.raises(SpecError, match=r"^m\.json: cannot be written: No such file or directory$"):
        write_model(tmp_path / "absent" / "m.json", magneto)
    (tmp_path / "folder.json").mkdir()
    with pytest.raises(SpecError, match=r"^folder\.json: cannot be written: "):
        write_model(tmp_path / "folder.json", magneto)
    assert sorted(p.name for p in tmp_path.iterdir()) == ["folder.json", "mag.json"]


def test_writing_keeps_a_file_s_permissions_and_gives_new_ones_the_usual(tmp_path):
    magneto = read_of(plain(), tmp_path / "x")
    os.chmod(tmp_path / "mag.json", 0o640)
    write_model(tmp_path / "mag.json", magneto)
    assert stat.S_IMODE((tmp_path / "mag.json").stat().st_mode) == 0o640
    mask = os.umask(0o027)
    try:
        write_model(tmp_path / "new.json", magneto)
    finally:
        os.umask(mask)
    assert stat.S_IMODE((tmp_path / "new.json").stat().st_mode) == 0o640
    assert not [p for p in tmp_path.iterdir() if p.name.startswith(".")]


def test_a_refusal_in_french_keeps_a_space_before_its_signs():
    told = str(SpecError("l'ouverture\u00a0: « 5\u202f»\x00"))
    assert told == "l'ouverture : « 5 »\ufffd"


@pytest.mark.parametrize("kind", ["magnetos", "installations"])
def test_what_goes_on_the_bench_is_read_as_what_it_says_it_is(kind):
    for name in shipped_names(kind):
        path = resources() / kind / f"{name}.json"
        assert read_bench_item(path) == READERS[kind](path)


@pytest.mark.parametrize("content", ["[]", '"magview-installation/1"', '{"format": "magview-engine/1"}', "{}"])
def test_what_is_neither_is_refused_as_no_magneto(tmp_path, content):
    assert "magview-magneto" in refusal(given_text(tmp_path, content), read_bench_item)


@pytest.mark.parametrize("content", ["[]", "3", '"x"', "null"])
def test_an_installation_that_is_no_object_is_refused(tmp_path, content):
    assert "holds no magview-installation object" in refusal(given_text(tmp_path, content), read_installation)


def test_a_name_that_is_not_known_within_a_list_is_told_with_its_place(tmp_path):
    sources = [{"field": "poles", "origin": "manual"}, {"field": "e_gap_deg", "origin": "manual", "page": 3}]
    told = refusal(given_data(tmp_path, {**plain(), "sources": sources}))
    assert told.startswith("mag.json: sources[1].page is not a known name")
    assert "(known here: field, note, origin)" in told


def test_what_a_program_hands_over_is_refused_in_a_sentence_though_it_is_no_json():
    """A magneto where the engine belongs, as objects: nothing that JSON could show."""
    whole = read_installation(resources() / "installations" / f"{shipped_names('installations')[0]}.json")
    with pytest.raises(SpecError, match=r"^mine: engine is .*; it must be an object in braces$") as caught:
        validate(Installation, {**dict(whole), "engine": whole.magneto}, "mine")
    check_sentence(str(caught.value))


@pytest.mark.parametrize(
    ("changes", "told"),
    [
        (
            {"arrangement": "inline"},
            says("articulation is for a radial engine; this one is {arrangement}", arrangement="inline"),
        ),
        ({"cylinders": 5, "firing_order": [1, 3, 5, 2, 4]}, "articulation.master_cylinder is 7; the engine has 5"),
    ],
)
def test_link_rods_of_an_engine_that_cannot_have_them_are_refused(tmp_path, changes, told):
    """Common practice: one master rod, in one of the cylinders, of a radial engine."""
    data = json.loads((resources() / "engines" / "seven-radial.json").read_text(encoding="utf-8"))
    data["articulation"] = {**data["articulation"], "master_cylinder": 7}
    assert told in refusal(given_data(tmp_path, {**data, **changes}), read_engine)
