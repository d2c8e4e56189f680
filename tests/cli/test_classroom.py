"""The class on the command line: a code, its key, a folder gathered."""

from __future__ import annotations

import json

import pytest

from magview.classroom.key import answer_key
from magview.classroom.sets import code_of, set_of_code
from magview.cli.main import main
from magview.practice.attempt import dump_attempt
from tests.classroom.attempts import a_set, class_folder, done
from tests.cli.told import run


def test_a_code_and_back(capsys):
    code, out, _ = run(
        capsys, "class", "code", "gap-wrong", "pips", "--seed", "7", "--minutes", "40", "--each-their-own"
    )
    assert code == 0
    first = out.splitlines()[0]
    of = set_of_code(first)
    assert (of.seed, of.minutes, of.each_their_own) == (7, 40, True)
    assert [e.name for e in of.exercises] == [e.name for e in a_set("gap-wrong", "pips").exercises]
    code, again, _ = run(capsys, "class", "code", first.lower())
    assert again == out


def test_without_a_seed_each_code_is_another(capsys):
    assert len({run(capsys, "class", "code", "pips")[1].splitlines()[0] for _ in range(4)}) > 1


def test_own_exercises_need_the_file(capsys, tmp_path):
    own = a_set("pips").exercises[0].model_copy(update={"name": "Own"})
    from magview.spec.files import write_model

    write_model(tmp_path / "own.json", own)
    code, out, _ = run(capsys, "class", "code", str(tmp_path / "own.json"))
    assert (code, "needs its file" in out) == (1, True)
    target = str(tmp_path / "set.json")
    code, out, _ = run(capsys, "class", "code", str(tmp_path / "own.json"), "--save", target, "--pupil", "Zoë")
    assert code == 0
    assert json.loads((tmp_path / "set.json").read_text("utf-8"))["pupils"] == ["Zoë"]
    assert "Own" in run(capsys, "class", "key", target)[1]


def test_the_key(capsys, tmp_path):
    of = a_set("gap-wrong", each_their_own=True)
    code, out, _ = run(capsys, "class", "key", code_of(of), "--pupil", "Zoë", "--csv", str(tmp_path / "key.csv"))
    (entry,) = answer_key(of, ["Zoë"])
    assert code == 0
    for told in (out, (tmp_path / "key.csv").read_text("utf-8")):
        assert all(f.words in told for f in entry.faults)


def test_gathering(capsys, tmp_path):
    folder = tmp_path / "in"
    of = class_folder(folder, 6)
    table = tmp_path / "out.csv"
    words = ("gather", str(folder), "--set", code_of(of), "--csv", str(table), "--cache", str(tmp_path / "cache"))
    code, out, _ = run(capsys, "class", *words)
    assert code == 0
    assert out.startswith("6 attempts count, of 6 files.")
    assert len(table.read_text("utf-8").splitlines()) == 7
    (folder / "bad.json").write_text("{")
    code, out, err = run(capsys, "class", *words)
    assert code == 1
    assert "bad.json" in err


def test_a_saved_attempt_is_handed_in(capsys, tmp_path):
    of = a_set("gap-wrong")
    (tmp_path / "a.json").write_text(dump_attempt(done(of, 1, "Zoë", "idle")), encoding="utf-8")
    share = tmp_path / "share"
    share.mkdir()
    code, out, _ = run(
        capsys, "class", "hand-in", str(tmp_path / "a.json"), code_of(of), str(share), "--pupil", "Zoë"
    )
    assert code == 0
    assert [p.name in out for p in share.iterdir()] == [True]


@pytest.mark.parametrize(
    ("words", "says"),
    [
        (("key", "KAAJ-R6D3-BJQA-VP7K"), "mistyped"),
        (("key", code_of(a_set(each_their_own=True))), "name the pupils"),
        (("code", "no-such"), "neither a file"),
        (("code", "8K2M-4TXN"), "mistyped"),
        (("code", "pips", "--seed", "-1"), "--seed"),
        (("code", "pips", "--minutes", "0"), "minutes"),
        (("gather", "/no/such/folder"), "cannot be read"),
    ],
)
def test_bad_input_gets_one_sentence(capsys, words, says):
    code, _, err = run(capsys, "class", *words)
    assert code == 2
    assert says in err
    assert err.count("\n") == 1


def test_the_schema_of_the_class_is_published(capsys):
    assert main(["schema", "class"]) == 0
    assert json.loads(capsys.readouterr().out)["title"] == "magview-class/1"
